//! Lengths as people write them.

use arbitrary::Result;
use recloth::tape::{Style, format_length, parse_length};

use crate::input::Input;

/// Each style with its graduation (mm), half of which printing may cost.
const STYLES: &[(Style, f64)] = &[
    (Style::Exact, 0.0),
    (Style::Mm, 1.0),
    (Style::MmHalf, 0.5),
    (Style::Cm, 1.0),
    (Style::CmComma, 1.0),
    (Style::Metre, 10.0),
    (Style::MetreComma, 10.0),
    (Style::InchHalf, 25.4 / 2.0),
    (Style::InchQuarter, 25.4 / 4.0),
    (Style::InchEighth, 25.4 / 8.0),
    (Style::InchSixteenth, 25.4 / 16.0),
    (Style::InchThirtySecond, 25.4 / 32.0),
    (Style::InchMark, 25.4 / 8.0),
    (Style::FootEighth, 25.4 / 8.0),
    (Style::YardEighth, 25.4 / 8.0),
];

/// The longest length that is read (mm).
const MOST: f64 = 1e7;

/// What is read can be printed in every style, and what is printed can be read.
pub(crate) fn target(input: &mut Input) -> Result<()> {
    let text = String::from_utf8_lossy(input.0.bytes(input.0.len())?).into_owned();
    let Ok(length) = parse_length(&text).map_err(|error| error.to_string()) else {
        return Ok(());
    };
    assert!(length.abs() <= MOST, "{text:?} is {length}");
    if length.abs() > MOST - 25.4 {
        // Rounded up it may be more than is read.
        return Ok(());
    }
    for (style, graduation) in STYLES {
        let Ok(printed) = format_length(length, *style) else {
            panic!("{text:?} is {length}, which is not printed in {style:?}");
        };
        let back = parse_length(printed.as_str());
        let within = graduation / 2.0 + 1e-9;
        let near = back.is_ok_and(|back| back == length || (back - length).abs() <= within);
        assert!(
            near,
            "{text:?} is {length}, in {style:?} {printed}: {back:?}"
        );
    }
    Ok(())
}
