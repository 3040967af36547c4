//! Lengths and weights as the plan writes and reads them.

use recloth::tape::{Style, format_length, round_set};
use recloth::units::INCH;

/// The styles a brief may print in, each with its graduation (mm).
pub(crate) const STYLES: &[(&str, (Style, f64))] = &[
    ("millimetres", (Style::Mm, 1.0)),
    ("centimetres", (Style::Cm, 1.0)),
    ("centimetres, decimal comma", (Style::CmComma, 1.0)),
    ("quarters of an inch", (Style::InchQuarter, INCH / 4.0)),
    ("eighths of an inch", (Style::InchEighth, INCH / 8.0)),
    ("sixteenths of an inch", (Style::InchSixteenth, INCH / 16.0)),
];

/// Prints lengths in the brief's own style.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Tape {
    pub(crate) style: Style,
    pub(crate) graduation: f64,
}

impl Tape {
    /// Whether lengths are printed in millimetres or centimetres.
    pub(crate) fn is_metric(&self) -> bool {
        matches!(self.style, Style::Mm | Style::Cm | Style::CmComma)
    }

    /// One length, to the nearest graduation.
    pub(crate) fn text(&self, length: f64) -> String {
        format_length(length, self.style)
            .map_or_else(|_| format!("{length} mm"), |text| text.to_string())
    }

    /// Lengths rounded together, so that they add up to the rounded sum; the sum comes last.
    pub(crate) fn set(&self, lengths: &[f64]) -> (Vec<f64>, f64) {
        let mut tapes = vec![0.0; lengths.len()];
        match round_set(lengths, self.graduation, &mut tapes) {
            Ok(set) => (tapes, set.total),
            Err(_) => (lengths.to_vec(), lengths.iter().sum()),
        }
    }
}

/// A length in both systems: `610 mm (24 in)`.
pub(crate) fn both(length: f64) -> String {
    let write =
        |style| format_length(length, style).map_or(String::from("?"), |text| text.to_string());
    format!("{} ({})", write(Style::Mm), write(Style::InchEighth))
}

/// Grams of an avoirdupois ounce, exact (international yard and pound agreement, 1959: 1 lb = 0.45359237 kg).
const OUNCE: f64 = 28.349523125;

/// A weight in grams: `850 g`, `1,2 kg`, `2 lb`, `12 oz`. As with lengths, a mark before three last digits may be one of
/// thousands and is refused: dye is weighed by this.
pub(crate) fn parse_mass(text: &str) -> Option<f64> {
    let text = text.trim();
    let unit_at = text.find(|c: char| c.is_ascii_alphabetic())?;
    let (number, unit) = text.split_at(unit_at);
    let number = number.trim().replace(',', ".");
    if !number.chars().all(|c| c.is_ascii_digit() || c == '.') {
        return None;
    }
    let thousands = number.split_once('.').is_some_and(|(whole, rest)| {
        rest.len() == 3 && (1..=3).contains(&whole.len()) && !whole.starts_with('0')
    });
    if thousands {
        return None;
    }
    let grams = match unit {
        "g" => 1.0,
        "kg" => 1000.0,
        "oz" => OUNCE,
        "lb" => 16.0 * OUNCE,
        _ => return None,
    };
    number.parse::<f64>().ok().map(|number| number * grams)
}

/// A weight as scales show it.
pub(crate) fn mass_text(grams: f64) -> String {
    if grams < 10.0 {
        format!("{grams:.1} g")
    } else {
        format!("{grams:.0} g")
    }
}

/// A volume as a jug shows it.
pub(crate) fn volume_text(millilitres: f64) -> String {
    if millilitres < 1000.0 {
        format!("{millilitres:.0} ml")
    } else {
        format!("{:.1} litres", millilitres / 1000.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn weights_are_read_with_their_unit_only() {
        assert_eq!(parse_mass("850 g"), Some(850.0));
        assert_eq!(parse_mass("1,2kg"), Some(1200.0));
        assert_eq!(parse_mass("2 lb"), Some(907.18474));
        assert_eq!(parse_mass("0,375 kg"), Some(375.0));
        assert_eq!(parse_mass("1234 g"), Some(1234.0));
        for wrong in [
            "850",
            "g",
            "1.2.3 kg",
            "-3 g",
            "3 stone",
            "",
            "nan g",
            "1e3 g",
            "1,234 g",
            "12.500 kg",
        ] {
            assert_eq!(parse_mass(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn a_set_adds_up_in_eighths() {
        let tape = Tape {
            style: Style::InchEighth,
            graduation: INCH / 8.0,
        };
        // By hand: 10.4, 10.4 and 10.2 graduations make 31 (F23 of the worked functions, in eighths).
        let eighths = [10.4, 10.4, 10.2].map(|n| n * INCH / 8.0);
        let (tapes, total) = tape.set(&eighths);
        assert_eq!(
            tapes.iter().map(|t| tape.text(*t)).collect::<Vec<_>>(),
            ["1 3/8 in", "1 1/4 in", "1 1/4 in"]
        );
        assert_eq!(tape.text(total), "3 7/8 in");
        assert_eq!(both(609.6), "610 mm (24 in)");
    }
}
