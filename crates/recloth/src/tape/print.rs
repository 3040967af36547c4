//! Printing a length in a style.

use core::fmt::{self, Write};

use arrayvec::ArrayString;

use super::{Style, graduations};
use crate::{Error, ErrorKind, units::INCH};

/// A printed length: a short text that needs no allocator.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct LengthText(ArrayString<32>);

impl LengthText {
    /// The text.
    pub fn as_str(&self) -> &str {
        self.0.as_str()
    }
}

impl fmt::Display for LengthText {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.as_str())
    }
}

impl AsRef<str> for LengthText {
    fn as_ref(&self) -> &str {
        self.as_str()
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for LengthText {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.as_str())
    }
}

/// `length`, which is in range, as text.
pub(super) fn length(length: f64, style: Style) -> Result<LengthText, Error> {
    let mut text = ArrayString::new();
    write(&mut text, length, style)
        // The longest, -0.000012345678901234567 mm, has room to spare.
        .map_err(|_| {
            Error::new(
                ErrorKind::Room,
                "style",
                text.len() as f64,
                f64::NAN,
                f64::NAN,
            )
        })?;
    Ok(LengthText(text))
}

fn write(text: &mut ArrayString<32>, length: f64, style: Style) -> fmt::Result {
    use Style::*;
    let graduation = match style {
        Exact => return exact(text, length),
        Mm | Cm | CmComma => 1.0,
        MmHalf => 0.5,
        Metre | MetreComma => 10.0,
        InchHalf => INCH / 2.0,
        InchQuarter => INCH / 4.0,
        InchEighth | InchMark | FootEighth | YardEighth => INCH / 8.0,
        InchSixteenth => INCH / 16.0,
        InchThirtySecond => INCH / 32.0,
    };
    let count = libm::round(graduations(length.abs(), graduation));
    if length < 0.0 && count > 0.0 {
        text.write_char('-')?;
    }
    // At most 2e7 half millimetres.
    let count = count as u32;
    match style {
        Exact | Mm => write!(text, "{count} mm"),
        MmHalf if count % 2 == 1 => write!(text, "{}.5 mm", count / 2),
        MmHalf => write!(text, "{} mm", count / 2),
        Cm => write!(text, "{}.{} cm", count / 10, count % 10),
        CmComma => write!(text, "{},{} cm", count / 10, count % 10),
        Metre => write!(text, "{}.{:02} m", count / 100, count % 100),
        MetreComma => write!(text, "{},{:02} m", count / 100, count % 100),
        InchHalf => larger_and_inches(text, count, 2, None),
        InchQuarter => larger_and_inches(text, count, 4, None),
        InchEighth => larger_and_inches(text, count, 8, None),
        InchSixteenth => larger_and_inches(text, count, 16, None),
        InchThirtySecond => larger_and_inches(text, count, 32, None),
        FootEighth => larger_and_inches(text, count, 8, Some(("ft", 12))),
        YardEighth => larger_and_inches(text, count, 8, Some(("yd", 36))),
        InchMark => {
            const SIGNS: [&str; 8] = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];
            if count >= 8 || count == 0 {
                write!(text, "{}", count / 8)?;
            }
            write!(text, "{}\"", SIGNS[(count % 8) as usize])
        }
    }
}

/// Every digit of a length in millimetres, and no more than it takes to read it back.
fn exact(text: &mut ArrayString<32>, length: f64) -> fmt::Result {
    if length != 0.0 && length.abs() < 1e-5 {
        return write!(text, "{length:e} mm");
    }
    write!(text, "{length}")?;
    // 1.234 could be taken for 1234: a fourth decimal says that it is not.
    let (whole, decimals) = text.split_once('.').unwrap_or((text, ""));
    if decimals.len() == 3 && whole.trim_start_matches('-').len() <= 3 {
        text.write_char('0')?;
    }
    text.write_str(" mm")
}

/// So many parts of an inch, `parts` to the inch, as the larger unit, inches and a reduced fraction.
fn larger_and_inches(
    text: &mut ArrayString<32>,
    count: u32,
    parts: u32,
    larger: Option<(&str, u32)>,
) -> fmt::Result {
    let mut rest = count;
    if let Some((name, inches)) = larger {
        let whole = rest / (inches * parts);
        rest %= inches * parts;
        if whole > 0 {
            write!(text, "{whole} {name}")?;
            if rest == 0 {
                return Ok(());
            }
            text.write_char(' ')?;
        }
    }
    let (whole, mut numerator, mut denominator) = (rest / parts, rest % parts, parts);
    if whole > 0 || numerator == 0 {
        write!(text, "{whole} ")?;
    }
    if numerator > 0 {
        // Parts to the inch are a power of two.
        while numerator % 2 == 0 {
            numerator /= 2;
            denominator /= 2;
        }
        write!(text, "{numerator}/{denominator} ")?;
    }
    text.write_str("in")
}
