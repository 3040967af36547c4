//! What the vectors cannot carry: round trips over whole ranges, signs no CSV holds, and heaps of nonsense.

extern crate std;
use std::{
    string::{String, ToString},
    vec::Vec,
};

use super::*;
use crate::ErrorKind;

/// Numerical Recipes' 64-bit linear congruential step; the upper half is used.
struct Dice(u64);

impl Dice {
    fn roll(&mut self) -> u32 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 32) as u32
    }
}

fn printed(length: f64, style: Style) -> String {
    format_length(length, style).unwrap().to_string()
}

#[track_caller]
fn comes_back(length: f64, style: Style) {
    let text = printed(length, style);
    let back = parse_length(&text).unwrap();
    assert_eq!(
        back.to_bits(),
        length.to_bits(),
        "{length:?} as {style:?} is {text}, read as {back:?}"
    );
}

#[test]
fn whole_graduations_come_back_to_the_bit() {
    for k in 0..=100_000_u32 {
        let k = f64::from(k);
        comes_back(k, Style::Mm);
        comes_back(k / 2.0, Style::MmHalf);
        comes_back(k, Style::Cm);
        comes_back(k, Style::CmComma);
        comes_back(k * 10.0, Style::Metre);
        comes_back(k * 10.0, Style::MetreComma);
    }
    for (style, parts) in [
        (Style::InchHalf, 2.0),
        (Style::InchQuarter, 4.0),
        (Style::InchEighth, 8.0),
        (Style::InchSixteenth, 16.0),
        (Style::InchThirtySecond, 32.0),
        (Style::InchMark, 8.0),
        (Style::FootEighth, 8.0),
        (Style::YardEighth, 8.0),
    ] {
        // To 1e5 mm, by both of the natural expressions.
        let mut k = 0.0;
        while k / parts * INCH <= 1e5 {
            comes_back(k / parts * INCH, style);
            comes_back(k * (INCH / parts), style);
            comes_back(-(k + 1.0) / parts * INCH, style);
            k += 1.0;
        }
    }
}

#[test]
fn exact_brings_back_every_number() {
    let mut dice = Dice(1);
    for _ in 0..200_000 {
        // Any sign, exponent and digits; those out of range are passed over.
        let length = f64::from_bits(u64::from(dice.roll()) << 32 | u64::from(dice.roll()));
        if length.abs() <= LONGEST {
            comes_back(length, Style::Exact);
        }
        // Lengths a sewing room meets, with one to nine decimals.
        let places = [1e1, 1e2, 1e3, 1e4, 1e5, 1e9][(dice.roll() % 6) as usize];
        let length = f64::from(dice.roll()) / places;
        if length <= LONGEST {
            comes_back(length, Style::Exact);
            comes_back(-length, Style::Exact);
        }
    }
    for length in [
        0.0,
        -0.0,
        5e-324,
        f64::MIN_POSITIVE,
        1e-5,
        9.999e-6,
        1e7,
        -1e7,
        1.234,
        123.456,
    ] {
        comes_back(length, Style::Exact);
    }
    // The longest there can be.
    comes_back(-1.234_567_890_123_456_7e-5, Style::Exact);
    comes_back(-2.225_073_858_507_201_4e-308, Style::Exact);
}

#[test]
fn three_decimals_are_not_printed_as_thousands() {
    assert_eq!(printed(796.925, Style::Exact), "796.9250 mm");
    assert_eq!(printed(-1.234, Style::Exact), "-1.2340 mm");
    assert_eq!(printed(1234.567, Style::Exact), "1234.567 mm");
}

#[test]
fn every_fraction_sign_is_its_fraction() {
    // Unicode: U+00BC..U+00BE, U+2150..U+215E, U+2189, with the values of the Unicode Character Database.
    for (sign, numerator, denominator) in [
        ('\u{bc}', 1, 4),
        ('\u{bd}', 1, 2),
        ('\u{be}', 3, 4),
        ('\u{2150}', 1, 7),
        ('\u{2151}', 1, 9),
        ('\u{2152}', 1, 10),
        ('\u{2153}', 1, 3),
        ('\u{2154}', 2, 3),
        ('\u{2155}', 1, 5),
        ('\u{2156}', 2, 5),
        ('\u{2157}', 3, 5),
        ('\u{2158}', 4, 5),
        ('\u{2159}', 1, 6),
        ('\u{215a}', 5, 6),
        ('\u{215b}', 1, 8),
        ('\u{215c}', 3, 8),
        ('\u{215d}', 5, 8),
        ('\u{215e}', 7, 8),
        ('\u{2189}', 0, 3),
    ] {
        let sign_alone = parse_length(&std::format!("{sign}in")).unwrap();
        let written = parse_length(&std::format!("{numerator}/{denominator} in")).unwrap();
        let slashed = parse_length(&std::format!("{numerator}\u{2044}{denominator} in")).unwrap();
        assert_eq!(
            sign_alone,
            f64::from(numerator) / f64::from(denominator) * INCH
        );
        assert_eq!((written, slashed), (sign_alone, sign_alone));
        let mixed = parse_length(&std::format!("7 {sign}\u{2033}")).unwrap();
        assert_eq!(
            mixed,
            parse_length(&std::format!("7-{numerator}/{denominator}\"")).unwrap()
        );
    }
}

#[test]
fn spaces_of_any_width_part_or_do_not_part() {
    for space in [
        "", " ", "\t", "\u{a0}", "\u{2009}", "\u{202f}", "\u{2007}", "\u{3000}", "  \n",
    ] {
        let text = std::format!("{space}2{space}ft{space}3{space}\u{215b}{space}in{space}");
        assert_eq!(parse_length(&text).unwrap(), 27.125 * INCH, "{text:?}");
    }
}

#[test]
fn control_characters_and_long_texts_are_refused_where_they_begin() {
    for (text, at) in [
        ("2 in\0", 4),
        ("2\u{7}in", 1),
        ("\u{feff}2 in", 0),
        ("⅜⅜ in", 1),
    ] {
        let error = parse_length(text).unwrap_err();
        assert_eq!(
            (error.kind(), error.at()),
            (ErrorKind::Syntax, Some(at)),
            "{text:?}"
        );
    }
    let nines = |count| std::format!("{} in", "9".repeat(count));
    assert_eq!(
        parse_length(&nines(61)).unwrap_err().kind(),
        ErrorKind::OutOfRange
    );
    let error = parse_length(&nines(62)).unwrap_err();
    assert_eq!((error.kind(), error.at()), (ErrorKind::Syntax, Some(64)));
    assert_eq!(
        parse_length("1e999 mm").unwrap_err().kind(),
        ErrorKind::OutOfRange
    );
}

/// Nothing panics, and the character named is in the text or just behind it.
#[test]
fn nonsense_gets_an_answer_or_an_error_with_a_place() {
    const BITS: &[&str] = &[
        "0",
        "1",
        "31",
        "3",
        "8",
        "/",
        "3/8",
        "⅜",
        "\u{2044}",
        ".",
        ",",
        "-",
        "\u{2212}",
        " ",
        "\u{a0}",
        "in",
        "ft",
        "yd",
        "m",
        "cm",
        "mm",
        "'",
        "\"",
        "\u{2033}",
        "e",
        "1e9",
        "é",
        "x",
        "1,234",
        "9999999999",
        "\0",
    ];
    let mut dice = Dice(2);
    let mut good = 0;
    for _ in 0..200_000 {
        let mut text = String::new();
        for _ in 0..dice.roll() % 12 {
            text.push_str(BITS[dice.roll() as usize % BITS.len()]);
        }
        match parse_length(&text) {
            Ok(length) => {
                good += 1;
                assert!(length.abs() <= LONGEST);
                // What was understood is understood again.
                comes_back(length, Style::Exact);
            }
            Err(error) => {
                let at = error.at().unwrap_or(0) as usize;
                assert!(at <= text.chars().count(), "{text:?}: {error}");
                assert!(!error.to_string().is_empty());
            }
        }
    }
    assert!(good > 1000, "only {good} texts were lengths");
}

#[test]
fn rounded_sets_add_up_and_move_nothing_by_a_graduation() {
    let mut dice = Dice(3);
    for round in 0..2_000 {
        let graduation = [1.0, 0.5, 3.175, 1.5875, 0.1, 25.4][round % 6];
        let lengths: Vec<f64> = (0..=dice.roll() % 20)
            .map(|_| f64::from(dice.roll() % 10_000) / 10.0)
            .collect();
        let mut tapes = std::vec![0.0; lengths.len()];
        let set = round_set(&lengths, graduation, &mut tapes).unwrap();
        let sum: f64 = lengths.iter().sum();
        assert!((tapes.iter().sum::<f64>() - set.total).abs() < 1e-6);
        assert!((set.total - sum).abs() <= graduation / 2.0 + 1e-6);
        assert!(set.largest_change < graduation);
        for (tape, length) in tapes.iter().zip(&lengths) {
            assert!((tape - length).abs() <= set.largest_change);
        }
    }
}

#[test]
fn a_set_of_equals_gives_to_the_earlier_however_the_dust_falls() {
    // 10.4 - 10 and 20.4 - 20 differ in their last bits.
    let mut tapes = [0.0; 4];
    for lengths in [[20.4, 10.4, 30.4, 40.4], [10.4, 40.4, 20.4, 30.4]] {
        round_set(&lengths, 1.0, &mut tapes).unwrap();
        assert_eq!(
            tapes,
            [
                lengths[0] + 0.6,
                lengths[1] + 0.6,
                lengths[2] - 0.4,
                lengths[3] - 0.4
            ]
            .map(libm::round)
        );
    }
}

#[test]
fn rounding_up_and_down_leaves_a_graduation_where_it_is() {
    for (graduation, to) in [(0.1, 20_000), (3.175, 20_000), (0.7, 20_000), (25.4, 4_000)] {
        for k in -to..=to {
            let on = f64::from(k) * graduation;
            for way in [Rounding::Nearest, Rounding::Up, Rounding::Down] {
                assert_eq!(
                    round_to(on, graduation, way).unwrap(),
                    on,
                    "{k} x {graduation} {way:?}"
                );
            }
        }
    }
    assert!(
        round_to(-0.2, 1.0, Rounding::Nearest)
            .unwrap()
            .is_sign_positive()
    );
}

#[test]
fn a_set_without_room_is_refused_and_left_alone() {
    let mut tapes = [-1.0; 2];
    let error = round_set(&[1.0, 2.0, 3.0], 1.0, &mut tapes).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument(), error.min()),
        (ErrorKind::Room, "tapes", 3.0)
    );
    assert!(round_set(&[1.0, f64::NAN], 1.0, &mut tapes).is_err());
    assert_eq!(tapes, [-1.0; 2]);
}

/// Characters counted by hand, from 0.
#[test]
fn a_text_that_cannot_be_read_says_from_which_character() {
    for (text, at) in [
        ("", 0),
        ("-", 1),
        ("about 3 in", 0),
        ("3 ells", 2),
        ("½ ells", 2),
        ("3 in wide", 5),
        ("3/0 in", 2),
        ("3/1001 in", 2),
        ("3 9/8 in", 2),
        ("313/8 in", 0),
        ("31 30 in", 3),
        ("31.5 3/8 in", 5),
        ("1,23,456 mm", 4),
        ("28. in", 2),
        ("3 in 2 ft", 7),
        ("1 m 3 in", 6),
        ("2 ft.5 in", 4),
        ("3\u{a0}in, 4 in", 4),
    ] {
        let error = parse_length(text).unwrap_err();
        assert_eq!(
            (error.kind(), error.at()),
            (ErrorKind::Syntax, Some(at)),
            "{text:?}"
        );
        assert!(error.value().is_nan());
    }
}

#[test]
fn a_number_without_unit_is_named_with_its_place() {
    for (text, value, at) in [
        ("28", 28.0, 0),
        (" 31 3/8 ", 31.375, 1),
        ("2' 3", 3.0, 3),
        ("2′ ⅓", 1.0 / 3.0, 3),
        ("-58,4", 58.4, 1),
    ] {
        let error = parse_length(text).unwrap_err();
        assert_eq!(
            (error.kind(), error.value(), error.at()),
            (ErrorKind::NoUnit, value, Some(at)),
            "{text:?}"
        );
    }
}

#[test]
fn a_thousands_mark_is_named_with_both_readings() {
    for (text, decimal, whole, at) in [
        ("1,234 in", 1.234, 1234.0, 1),
        ("  12.345 m", 12.345, 12_345.0, 4),
        ("2 ft 1,500 in", 1.5, 1500.0, 6),
        ("1,234.5 mm", 1234.5, 1234.5, 1),
        ("1.234.567,8 mm", 1_234_567.8, 1_234_567.8, 1),
    ] {
        let error = parse_length(text).unwrap_err();
        let found = (error.kind(), error.min(), error.max(), error.at());
        assert_eq!(
            found,
            (ErrorKind::TwoReadings, decimal, whole, Some(at)),
            "{text:?}"
        );
    }
}

#[test]
fn a_button_line_is_no_other_line() {
    // The French line of watch and hat makers is 2.2558291 mm, hat ribbon is sold by 11.26 to the inch (Gates, 1915).
    let line = button_diameter(1.0).unwrap();
    for other in [2.2558291, 25.4 / 11.26] {
        assert!(other > 3.5 * line, "{other} is not {line}");
    }
}
