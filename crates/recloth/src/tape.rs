//! Lengths as they are written on a tape: reading, printing and rounding them.

mod parse;
mod print;

use crate::{Error, units::INCH};

pub use print::LengthText;

/// Longest length that is read, printed or rounded (mm), either way of zero: ten kilometres, a cone of thread.
const LONGEST: f64 = 1e7;

/// Grams in a pound, exact by the international yard and pound agreement (1959).
const GRAMS_PER_POUND: f64 = 453.59237;

/// How a length is printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[repr(i32)]
pub enum Style {
    /// Millimetres with every digit: reading it gives the same number, to the last bit.
    Exact = 0,
    /// Whole millimetres: `797 mm`.
    Mm = 1,
    /// Half millimetres: `58.5 mm`.
    MmHalf = 2,
    /// Centimetres to the millimetre: `58.4 cm`.
    Cm = 3,
    /// Centimetres to the millimetre with a decimal comma: `58,4 cm`.
    CmComma = 4,
    /// Metres to the centimetre: `1.20 m`.
    Metre = 5,
    /// Metres to the centimetre with a decimal comma: `1,20 m`.
    MetreComma = 6,
    /// Inches and halves: `31 1/2 in`.
    InchHalf = 7,
    /// Inches and quarters: `31 1/4 in`.
    InchQuarter = 8,
    /// Inches and eighths: `31 3/8 in`.
    InchEighth = 9,
    /// Inches and sixteenths: `31 3/16 in`.
    InchSixteenth = 10,
    /// Inches and thirty-seconds: `31 3/32 in`.
    InchThirtySecond = 11,
    /// Inches and eighths as one sign, with the inch mark: `31⅜"`.
    InchMark = 12,
    /// Feet, inches and eighths: `2 ft 3 1/8 in`.
    FootEighth = 13,
    /// Yards, inches and eighths: `2 yd 4 1/8 in`.
    YardEighth = 14,
}

/// Which graduation a length is rounded to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[repr(i32)]
pub enum Rounding {
    /// The nearer graduation; from the middle, the one further from zero.
    Nearest = 0,
    /// The next graduation that is not less.
    Up = 1,
    /// The next graduation that is not more.
    Down = 2,
}

/// A set of lengths rounded together.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct RoundedSet {
    /// Sum of the rounded lengths, which is the rounded sum (mm).
    pub total: f64,
    /// Most that any length was changed, up or down (mm).
    pub largest_change: f64,
}

/// A length as it is written.
///
/// Whole and mixed numbers, fractions (`3/8`, `⅜`, `3⁄8`, `31-3/8`), a decimal point or comma, a leading minus sign
/// for the whole. Units: mm, cm, m; in, `"`, ft, `'`, yd; their names in full, one or many; upper or lower case, so `M`
/// is metres; a full stop after an abbreviation. Spaces of any width or none. Several units in one length, each once,
/// larger first, all metric or all imperial: `2 ft 3 1/8 in`, `1 m 20 cm`.
///
/// A number without a unit is refused, zero too, and so are thousands marks: `1,234` may be either. A fraction is less
/// than one, for `313/8` is more likely `31 3/8` without its space. At most 64 characters.
///
/// Metric lengths are correctly rounded; imperial ones are counted in inches, then multiplied by 25.4 once, so that
/// `31 3/8 in` is `31.375 * INCH`.
///
/// | argument | unit | range | default | meaning             |
/// |----------|------|-------|---------|---------------------|
/// | `text`   | text | -     | -       | a length as written |
///
/// # Errors
/// `Syntax`: it cannot be read, from the character at `at`. `NoUnit`: `value` has several readings. `TwoReadings`: a
/// mark after which it may be `min` or `max`; if these are equal, it is a thousands mark. `OutOfRange`: the length is
/// over 1e7 mm either way.
///
/// # Returns
/// The length (mm).
///
/// # Source
/// 1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 36 in, exact by the international yard and pound agreement of 1959.
///
/// # Examples
/// ```
/// use recloth::{ErrorKind, tape::parse_length, units::INCH};
/// assert_eq!(parse_length("31 3/8 in")?, 31.375 * INCH);
/// assert_eq!(parse_length("31⅜\"")?, 31.375 * INCH);
/// assert_eq!(parse_length("58,4cm")?, 584.0);
/// let error = parse_length("28").unwrap_err();
/// assert_eq!(error.kind(), ErrorKind::NoUnit);
/// assert_eq!(
///     error.to_string(),
///     "text, character 1: 28 has no unit: 28 mm, 28 cm = 280 mm, or 28 in = 711.2 mm?"
/// );
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn parse_length(text: &str) -> Result<f64, Error> {
    parse::length(text)
}

/// A length as text, rounded to the nearest graduation of the style.
///
/// From the middle between two graduations it is rounded away from zero. [`parse_length`] reads every style, and gives
/// back the same number when the length is a whole number of the style's graduations, or for the style `exact` always.
/// Fractions are reduced, and a part that is nothing is left out. `exact` writes very small numbers with an exponent,
/// and a fourth decimal where three could be taken for thousands: `796.9250 mm`.
///
/// | argument | unit   | range      | default | meaning            |
/// |----------|--------|------------|---------|--------------------|
/// | `length` | mm     | -1e7..=1e7 | -       | the length         |
/// | `style`  | choice | -          | exact   | how to print it    |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// The length as text.
///
/// # Source
/// Tape fractions: nearest is `round(inches · n) / n`, then reduced. Common practice, no source.
///
/// # Examples
/// ```
/// use recloth::tape::{Style, format_length};
/// assert_eq!(format_length(796.925, Style::InchEighth)?.as_str(), "31 3/8 in");
/// assert_eq!(format_length(688.0, Style::FootEighth)?.to_string(), "2 ft 3 1/8 in");
/// assert!(format_length(f64::NAN, Style::Cm).is_err());
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn format_length(length: f64, style: Style) -> Result<LengthText, Error> {
    let length = Error::check("length", length, -LONGEST, LONGEST)?;
    print::length(length, style)
}

/// A length rounded to a graduation of the tape.
///
/// A length within a thousand-millionth of a graduation, or of the middle between two, counts as being there: binary
/// arithmetic leaves that much dust.
///
/// | argument     | unit   | range      | default | meaning                                    |
/// |--------------|--------|------------|---------|--------------------------------------------|
/// | `length`     | mm     | -1e7..=1e7 | -       | the length                                 |
/// | `graduation` | mm     | 0.001..=1e4 | 1      | distance between two marks: 3.175 is 1/8 in |
/// | `way`        | choice | -          | nearest | which graduation                           |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// The rounded length (mm).
///
/// # Source
/// Common practice, no source: to the nearest mark for a seam, up for cloth to buy, down for cloth there is.
///
/// # Examples
/// ```
/// use recloth::tape::{Rounding, round_to};
/// assert_eq!(round_to(796.0, 25.4 / 8.0, Rounding::Nearest)?, 796.925);
/// assert_eq!(round_to(796.0, 5.0, Rounding::Down)?, 795.0);
/// assert_eq!(round_to(796.0, 0.0, Rounding::Up).unwrap_err().argument(), "graduation");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn round_to(length: f64, graduation: f64, way: Rounding) -> Result<f64, Error> {
    let length = Error::check("length", length, -LONGEST, LONGEST)?;
    let graduation = check_graduation(graduation)?;
    let count = graduations(length, graduation);
    let whole = match way {
        Rounding::Nearest => libm::round(count),
        Rounding::Up => libm::ceil(count),
        Rounding::Down => libm::floor(count),
    };
    // Adding zero turns -0 into 0.
    Ok(whole * graduation + 0.0)
}

/// Lengths rounded so that the rounded lengths add up to the rounded sum.
///
/// Each is rounded down; what is then missing from the rounded sum is given, a graduation each, to the lengths that lost
/// most, of equals to the earlier. Where two edges are sewn together, round one and give the other the same lengths.
///
/// | argument     | unit | range                          | default | meaning                                     |
/// |--------------|------|--------------------------------|---------|---------------------------------------------|
/// | `lengths`    | mm   | 0..=1e5 each, 1..=1000 items   | -       | the lengths                                 |
/// | `graduation` | mm   | 0.001..=1e4                    | 1       | distance between two marks: 3.175 is 1/8 in |
/// | `tapes`      | mm   | out, as lengths                | -       | the rounded lengths                         |
///
/// # Errors
/// `NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room` when `tapes` is too short.
///
/// # Source
/// The method of largest remainders (Hamilton), as used to share out whole seats by votes.
///
/// # Examples
/// ```
/// use recloth::tape::round_set;
/// let mut tapes = [0.0; 3];
/// let set = round_set(&[10.4, 10.4, 10.2], 1.0, &mut tapes)?;
/// assert_eq!(tapes, [11.0, 10.0, 10.0]);
/// assert_eq!(set.total, 31.0);
/// assert_eq!(round_set(&[10.4, -1.0], 1.0, &mut tapes).unwrap_err().at(), Some(1));
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn round_set(lengths: &[f64], graduation: f64, tapes: &mut [f64]) -> Result<RoundedSet, Error> {
    let lengths = Error::check_list("lengths", lengths, 0.0, 1e5, (1, 1000))?;
    let graduation = check_graduation(graduation)?;
    Error::check_room("tapes", tapes.len(), lengths.len())?;
    let tapes = &mut tapes[..lengths.len()];

    // The tapes hold whole graduations until the end.
    let (mut whole, mut lost) = (0.0, 0.0);
    for (tape, &length) in tapes.iter_mut().zip(lengths) {
        let count = graduations(length, graduation);
        *tape = libm::floor(count);
        whole += *tape;
        lost += count - *tape;
    }
    let missing = libm::round(graduations(lost, 1.0));
    // Parts of a graduation in whole thousand-millionths, so that equals are equal.
    let part = |count: f64, tape: f64| libm::round((count - tape) * 1e9);
    for _ in 0..missing as u32 {
        let mut neediest = None;
        let mut most = 0.0;
        for (index, (&tape, &length)) in tapes.iter().zip(lengths).enumerate() {
            let part = part(graduations(length, graduation), tape);
            // One that has been given a graduation has a part below zero, or exactly zero.
            if part > most {
                (neediest, most) = (Some(index), part);
            }
        }
        if let Some(index) = neediest {
            tapes[index] += 1.0;
        }
    }
    let mut largest_change: f64 = 0.0;
    for (tape, &length) in tapes.iter_mut().zip(lengths) {
        *tape *= graduation;
        largest_change = largest_change.max((*tape - length).abs());
    }
    Ok(RoundedSet {
        total: (whole + missing) * graduation,
        largest_change,
    })
}

/// Diameter of a button from its size in lines.
///
/// A button line is the fortieth part of an inch: `diameter = 0.635 · lines`. It is not the watchmaker's line of
/// 2.26 mm, nor the eleventh of an inch by which hat ribbon is sold.
///
/// | argument | unit | range    | default | meaning                        |
/// |----------|------|----------|---------|--------------------------------|
/// | `lines`  | 1    | 1..=1000 | -       | size of the button, in lines   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// The diameter (mm).
///
/// # Source
/// US Tariff Act of 1922, 42 Stat. ch. 356, par. 1410: a line is one fortieth of an inch.
///
/// # Examples
/// ```
/// use recloth::tape::button_diameter;
/// assert_eq!(button_diameter(22.0)?, 13.97);
/// assert!(button_diameter(0.0).is_err());
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn button_diameter(lines: f64) -> Result<f64, Error> {
    let lines = Error::check("lines", lines, 1.0, 1000.0)?;
    Ok(lines * (INCH / 40.0))
}

fn check_graduation(graduation: f64) -> Result<f64, Error> {
    Error::check("graduation", graduation, 0.001, 1e4)
}

/// `length` in graduations. What lies on a graduation or midway, but for the dust of binary arithmetic, is put there:
/// 0.7 / 0.1 is a hair below 7 and must not be rounded down to 6.
fn graduations(length: f64, graduation: f64) -> f64 {
    let count = length / graduation;
    let half = libm::round(count * 2.0) / 2.0;
    if (count - half).abs() <= 1e-9 + count.abs() * 1e-15 {
        half
    } else {
        count
    }
}

/// Length of one stitch from the number of stitches in an inch.
///
/// `length = 25.4 / stitches`. Pages that pair 2.5 to 3 mm with 10 to 12 stitches are not consistent: 3 mm is 8.5.
///
/// | argument              | unit | range      | default | meaning              |
/// |-----------------------|------|------------|---------|----------------------|
/// | `stitches_per_inch`   | 1    | 0.5..=200  | -       | stitches in one inch |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Length of one stitch (mm).
///
/// # Source
/// 1 in = 25.4 mm, exact by the international yard and pound agreement of 1959.
///
/// # Examples
/// ```
/// use recloth::tape::stitch_length;
/// assert!((stitch_length(10.16)? - 2.5).abs() < 1e-12);
/// assert_eq!(stitch_length(0.0).unwrap_err().argument(), "stitches_per_inch");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn stitch_length(stitches_per_inch: f64) -> Result<f64, Error> {
    let stitches = Error::check("stitches_per_inch", stitches_per_inch, 0.5, 200.0)?;
    Ok(INCH / stitches)
}

/// Linear density of a yarn or thread from its denier.
///
/// Tex is grams a kilometre, denier grams in nine kilometres: `tex = denier / 9`. A larger number is a thicker yarn.
///
/// | argument | unit | range       | default | meaning              |
/// |----------|------|-------------|---------|----------------------|
/// | `denier` | 1    | 0.01..=1e6  | -       | grams in 9 kilometres |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Linear density (tex).
///
/// # Source
/// Definitions of the units. Groen Kennisnet wiki, HNPE 7.1.6, yarn numbering (conversion table).
///
/// # Examples
/// ```
/// use recloth::tape::tex_from_denier;
/// assert_eq!(tex_from_denier(180.0)?, 20.0);
/// assert_eq!(tex_from_denier(-180.0).unwrap_err().argument(), "denier");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn tex_from_denier(denier: f64) -> Result<f64, Error> {
    Ok(Error::check("denier", denier, 0.01, 1e6)? / 9.0)
}

/// Linear density of a yarn or thread from its cotton count (Ne).
///
/// The cotton count is how many hanks of 840 yards weigh a pound: `tex = 590.54 · plies / count`. A larger number is a
/// thinner yarn. A thread marked 40/2 is two plies of count 40. A convention that counts the moisture in has 583.1 in
/// place of 590.54, which is 1.3 % less: do not mix the two.
///
/// | argument       | unit  | range      | default | meaning                                |
/// |----------------|-------|------------|---------|----------------------------------------|
/// | `cotton_count` | 1     | 0.1..=1000 | -       | cotton count of one ply                |
/// | `plies`        | count | 1..=24     | 1       | equal plies twisted together           |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Linear density of the plied yarn, take-up in twisting left out (tex).
///
/// # Source
/// Definition: 453.59237 g in 840 yards of 0.9144 m. NIMI, *Shawl Weaving Artisan*, p. 72 (20 tex is 29.525).
///
/// # Examples
/// ```
/// use recloth::tape::tex_from_cotton_count;
/// assert!((tex_from_cotton_count(40.0, 2)? - 29.5).abs() < 0.05);
/// assert_eq!(tex_from_cotton_count(40.0, 0).unwrap_err().argument(), "plies");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn tex_from_cotton_count(cotton_count: f64, plies: u32) -> Result<f64, Error> {
    let count = Error::check("cotton_count", cotton_count, 0.1, 1000.0)?;
    let plies = f64::from(Error::check_count("plies", plies, 1, 24)?);
    Ok(GRAMS_PER_POUND / (840.0 * 0.9144) * 1000.0 * plies / count)
}

/// Linear density of a yarn or thread from its metric count (Nm).
///
/// The metric count is how many metres weigh a gram: `tex = 1000 · plies / count`. A larger number is a thinner yarn.
///
/// | argument       | unit  | range      | default | meaning                      |
/// |----------------|-------|------------|---------|------------------------------|
/// | `metric_count` | 1     | 0.1..=2000 | -       | metric count of one ply      |
/// | `plies`        | count | 1..=24     | 1       | equal plies twisted together |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Linear density of the plied yarn, take-up in twisting left out (tex).
///
/// # Source
/// Definitions of the units. Groen Kennisnet wiki, HNPE 7.1.6, yarn numbering (conversion table).
///
/// # Examples
/// ```
/// use recloth::tape::tex_from_metric_count;
/// assert_eq!(tex_from_metric_count(50.0, 1)?, 20.0);
/// assert_eq!(tex_from_metric_count(f64::NAN, 1).unwrap_err().argument(), "metric_count");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn tex_from_metric_count(metric_count: f64, plies: u32) -> Result<f64, Error> {
    let count = Error::check("metric_count", metric_count, 0.1, 2000.0)?;
    let plies = f64::from(Error::check_count("plies", plies, 1, 24)?);
    Ok(1000.0 * plies / count)
}

#[cfg(test)]
mod tests;
