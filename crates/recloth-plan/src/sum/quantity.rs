//! Numbers and what they are of: reading them with any usual unit, printing them in the unit that was typed.

use recloth::tape::{self, Rounding, Style};

/// A unit other than those of length: so many of the library's unit.
#[derive(Debug, PartialEq)]
pub(super) struct Unit {
    /// As it is typed, in small letters; the first is how it is printed.
    names: &'static [&'static str],
    /// How many of the library's unit it is: a multiplier and a divisor, so that 1/60 loses nothing.
    size: (f64, f64),
    /// What is added after that (degC).
    plus: f64,
}

const fn unit(names: &'static [&'static str], times: f64, per: f64) -> Unit {
    let size = (times, per);
    Unit {
        names,
        size,
        plus: 0.0,
    }
}

/// Grams in an ounce, a sixteenth of the pound of 453.59237 g: exact by the international yard and pound agreement (1959).
const OUNCE: f64 = 28.349523125;
/// Square metres in a square yard, 0.9144 · 0.9144: exact by the same.
const SQUARE_YARD: f64 = 0.83612736;

/// Of each of the library's units, all that is read; the library's own comes first.
const UNITS: &[(&str, &[Unit])] = &[
    (
        "g",
        &[
            unit(&["g", "gram", "grams"], 1.0, 1.0),
            unit(&["kg", "kilo", "kilos"], 1000.0, 1.0),
            unit(&["mg"], 1.0, 1000.0),
            unit(&["oz", "ounce", "ounces"], OUNCE, 1.0),
            unit(&["lb", "lbs", "pound", "pounds"], OUNCE * 16.0, 1.0),
        ],
    ),
    (
        "ml",
        &[
            unit(
                &[
                    "ml",
                    "millilitre",
                    "millilitres",
                    "milliliter",
                    "milliliters",
                    "cc",
                    "cm3",
                ],
                1.0,
                1.0,
            ),
            unit(&["cl"], 10.0, 1.0),
            unit(&["dl"], 100.0, 1.0),
            unit(&["l", "litre", "litres", "liter", "liters"], 1000.0, 1.0),
        ],
    ),
    (
        "gsm",
        &[
            unit(&["gsm", "g/m2", "g/m²"], 1.0, 1.0),
            unit(&["oz/yd2", "oz/yd²"], OUNCE, SQUARE_YARD),
        ],
    ),
    ("%", &[unit(&["%", "percent", "per cent"], 1.0, 1.0)]),
    (
        "min",
        &[
            unit(&["min", "mins", "minute", "minutes"], 1.0, 1.0),
            unit(&["s", "sec", "secs", "second", "seconds"], 1.0, 60.0),
            unit(&["h", "hr", "hrs", "hour", "hours"], 60.0, 1.0),
        ],
    ),
    ("deg", &[unit(&["°", "deg", "degree", "degrees"], 1.0, 1.0)]),
    (
        "degC",
        &[
            unit(&["°C", "°c", "c", "degc", "deg c", "celsius"], 1.0, 1.0),
            // °C = (°F - 32) · 5 / 9, by definition.
            Unit {
                names: &["°F", "°f", "f", "degf", "deg f", "fahrenheit"],
                size: (5.0, 9.0),
                plus: -160.0 / 9.0,
            },
        ],
    ),
    ("tex", &[unit(&["tex"], 1.0, 1.0)]),
    (
        "mm2",
        &[
            unit(&["mm²", "mm2"], 1.0, 1.0),
            unit(&["cm²", "cm2"], 100.0, 1.0),
            unit(&["m²", "m2"], 1e6, 1.0),
            unit(&["in²", "in2"], 645.16, 1.0),
            unit(&["yd²", "yd2"], SQUARE_YARD * 1e6, 1.0),
        ],
    ),
    ("1", &[unit(&[""], 1.0, 1.0), unit(&["%"], 1.0, 100.0)]),
];

/// Measures of volume that are not the same everywhere (US and British law).
const TWO_SIZES: &[&str] = &[
    "gal", "gallon", "gallons", "quart", "quarts", "qt", "pint", "pints", "pt", "cup", "cups",
    "oz", "fl oz", "floz",
];

impl Unit {
    /// How it is printed.
    pub(super) fn name(&self) -> &'static str {
        self.names[0]
    }

    fn to_base(&self, value: f64) -> f64 {
        value * self.size.0 / self.size.1 + self.plus
    }

    /// How many of this unit a number of the library's unit is.
    pub(super) fn count(&self, value: f64) -> f64 {
        (value - self.plus) * self.size.1 / self.size.0
    }

    /// Whether it is the library's own.
    pub(super) fn is_base(&self) -> bool {
        self.size == (1.0, 1.0) && self.plus == 0.0
    }
}

/// The units of one kind, the library's own first; none where it has no name, as a count or a choice.
pub(super) fn units(base: &str) -> &'static [Unit] {
    UNITS
        .iter()
        .find(|(name, _)| *name == base)
        .map_or(&[], |(_, units)| units)
}

/// A number with its unit or without one, in the library's unit; and the unit if one was typed.
pub(super) fn quantity(text: &str, base: &str) -> Result<(f64, Option<&'static Unit>), String> {
    let small = text.trim().to_lowercase();
    let mut best: Option<(&str, &'static Unit)> = None;
    for unit in units(base) {
        for name in unit.names.iter().filter(|name| !name.is_empty()) {
            let Some(rest) = small.strip_suffix(&name.to_lowercase()) else {
                continue;
            };
            // `c` must not be found at the end of another word.
            let whole =
                !rest.ends_with(char::is_alphabetic) || !name.starts_with(char::is_alphabetic);
            if whole && best.is_none_or(|(shorter, _)| rest.len() < shorter.len()) {
                best = Some((&small[..rest.len()], unit));
            }
        }
    }
    if let Some((rest, unit)) = best {
        return Ok((unit.to_base(number(rest)?), Some(unit)));
    }
    if base == "ml" && TWO_SIZES.iter().any(|name| small.ends_with(name)) {
        return Err(
            "this measure has one size in America and another in Britain; give ml or l".into(),
        );
    }
    Ok((number(&small)?, None))
}

/// A number: `0.5`, `0,5`, `½`, `1 1/2`. In a plain number a point marks decimals; a comma before three digits may mark
/// thousands, and is refused as it is in a length.
pub(super) fn number(text: &str) -> Result<f64, String> {
    let text = text.trim().replace(['\u{2212}', '\u{2013}'], "-");
    if let Ok(value) = text.parse::<f64>() {
        return Ok(value);
    }
    // The grammar of a length reads all that people write; millimetres leave the number as it is.
    tape::parse_length(&format!("{text} mm")).map_err(|error| match error.kind() {
        recloth::ErrorKind::TwoReadings => error.to_string().replacen("text, ", "", 1),
        _ if text.is_empty() => "a number is missing".into(),
        _ => "this cannot be read as a number; one is written like 12, 0.5, 0,5 or 1 1/2".into(),
    })
}

/// A number to read: so many decimals, or four digits of a small one, and no idle zeros.
pub(super) fn plain(value: f64, decimals: usize, comma: bool) -> String {
    if !value.is_finite() {
        return "none".into();
    }
    let size = value.abs();
    let (mut digits, mut least) = (3, 1.0);
    while size > 0.0 && size < least && digits < 12 {
        digits += 1;
        least /= 10.0;
    }
    let decimals = if size < 1.0 {
        decimals.max(digits)
    } else {
        decimals
    };
    let text = format!("{value:.decimals$}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    let text = if text == "-0" { "0" } else { text };
    if comma {
        text.replace('.', ",")
    } else {
        text.to_owned()
    }
}

/// How lengths are printed besides mm: as the first length with a unit was typed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Tape {
    style: Style,
    /// Finer styles for what this one would spoil.
    finer: &'static [Style],
    graduation: f64,
    /// The unit's name, many.
    pub(super) name: &'static str,
}

impl Tape {
    /// The style of a length as it was typed; None for mm, and for a length without unit.
    pub(super) fn of(text: &str) -> Option<Tape> {
        let comma = text.contains(',');
        let small = text.to_lowercase();
        let word: String = small
            .chars()
            .skip_while(|letter| !letter.is_alphabetic())
            .take_while(|letter| letter.is_alphabetic())
            .collect();
        const EIGHTH: f64 = 25.4 / 8.0;
        let inches = &[Style::InchSixteenth, Style::InchThirtySecond];
        let tape = |style, finer, graduation, name| {
            Some(Tape {
                style,
                finer,
                graduation,
                name,
            })
        };
        match word.as_str() {
            _ if word.starts_with("mm") || word.starts_with("milli") => None,
            _ if word.starts_with('c') => tape(
                if comma { Style::CmComma } else { Style::Cm },
                &[],
                1.0,
                "centimetres",
            ),
            _ if word.starts_with('m') => tape(
                if comma {
                    Style::MetreComma
                } else {
                    Style::Metre
                },
                &[],
                10.0,
                "metres",
            ),
            _ if word.starts_with('i') => tape(Style::InchEighth, inches, EIGHTH, "inches"),
            _ if word.starts_with('f') => {
                tape(Style::FootEighth, inches, EIGHTH, "feet and inches")
            }
            _ if word.starts_with('y') => {
                tape(Style::YardEighth, inches, EIGHTH, "yards and inches")
            }
            _ if text.contains(['"', '\u{2033}', '\u{201d}']) || text.contains("''") => {
                tape(Style::InchMark, inches, EIGHTH, "inches")
            }
            _ if text.contains(['\'', '\u{2032}', '\u{2019}']) => {
                tape(Style::FootEighth, inches, EIGHTH, "feet and inches")
            }
            _ => None,
        }
    }

    /// The length as that tape shows it. Where the nearest mark would be 2 % off or more, on a finer tape; None where
    /// the finest spoils it still, or the length is beyond what is printed.
    pub(super) fn print(self, length: f64) -> Option<String> {
        let styles = std::iter::once(&self.style).chain(self.finer);
        styles
            .filter_map(|&style| Some(tape::format_length(length, style).ok()?.as_str().to_owned()))
            .find(|text| {
                tape::parse_length(text)
                    .is_ok_and(|shown| (shown - length).abs() <= length.abs() * 0.02)
            })
    }

    /// A limit in this unit, rounded to where it still holds.
    pub(super) fn limit(self, length: f64, way: Rounding) -> Option<String> {
        let length = tape::round_to(length, self.graduation, way).ok()?;
        Some(
            tape::format_length(length, self.style)
                .ok()?
                .as_str()
                .to_owned(),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::{Tape, number, plain, quantity};

    #[test]
    fn usual_units_are_read() {
        let read = |text, base| quantity(text, base).map(|(value, _)| value);
        assert_eq!(read("250", "g"), Ok(250.0));
        assert_eq!(read("1,5 kg", "g"), Ok(1500.0));
        assert_eq!(read("2lb", "g"), Ok(907.18474));
        assert_eq!(read("3 L", "ml"), Ok(3000.0));
        assert_eq!(read("90 s", "min"), Ok(1.5));
        assert_eq!(read("1 1/2 h", "min"), Ok(90.0));
        assert_eq!(read("40°C", "degC"), Ok(40.0));
        assert!((read("104 F", "degC").unwrap() - 40.0).abs() < 1e-12);
        assert_eq!(read("-3,5 %", "%"), Ok(-3.5));
        assert_eq!(read("50%", "1"), Ok(0.5));
        assert_eq!(read("180 g/m2", "gsm"), Ok(180.0));
        // 1 oz/yd2 is 33.906 g/m2 (28.349523125 / 0.83612736).
        assert!((read("1 oz/yd2", "gsm").unwrap() - 33.906).abs() < 1e-3);
        assert!(read("1 gallon", "ml").unwrap_err().contains("Britain"));
        for bad in ["", "kg", "two kg", "1 kgg", "5 oz/yd2"] {
            assert!(read(bad, "g").is_err(), "{bad}");
        }
    }

    #[test]
    fn numbers_as_people_write_them() {
        for (text, wanted) in [
            ("0,5", 0.5),
            ("½", 0.5),
            ("1 1/2", 1.5),
            ("\u{2212}3", -3.0),
            ("1.125", 1.125),
        ] {
            assert_eq!(number(text), Ok(wanted), "{text}");
        }
        for text in ["", "x", "1,234", "5/4", "1 2"] {
            assert!(number(text).is_err(), "{text}");
        }
        for (value, wanted) in [
            (226.0000191, "226"),
            (0.0012345, "0.001234"),
            (-0.001, "-0.001"),
            (0.0, "0"),
            (f64::NAN, "none"),
        ] {
            assert_eq!(plain(value, 2, false), wanted);
        }
        assert_eq!(plain(71.25, 2, true), "71,25");
    }

    #[test]
    fn a_length_is_shown_as_it_was_typed() {
        let shown = |typed: &str, length| Tape::of(typed).and_then(|tape| tape.print(length));
        assert_eq!(shown("28 1/2in", 230.4).as_deref(), Some("9 1/8 in"));
        assert_eq!(shown("28½\"", 230.4).as_deref(), Some("9⅛\""));
        assert_eq!(shown("71,5cm", 226.0).as_deref(), Some("22,6 cm"));
        assert_eq!(shown("2 ft", 688.0).as_deref(), Some("2 ft 3 1/8 in"));
        assert_eq!(shown("28in", 2.4).as_deref(), Some("3/32 in"));
        assert_eq!(shown("28in", 0.3), None);
        assert_eq!(shown("710 mm", 226.0), None);
        assert_eq!(shown("710", 226.0), None);
    }
}
