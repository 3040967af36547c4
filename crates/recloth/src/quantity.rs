//! How much cloth: mass, other widths, repeats, what to buy.

use crate::Error;
use crate::doubt::{CLOTH_NARROW, when};

/// Grams in an ounce, exact by the international yard and pound agreement (1959).
const OUNCE_G: f64 = 28.349523125;
/// Square metres in a square yard, exact.
const SQUARE_YARD_M2: f64 = 0.83612736;

/// Mass of cloth per square metre from ounces per square yard.
///
/// `gsm = ounces · 33.9057`. Ounces *per running yard* are another thing: divide them by the width in yards first.
///
/// | argument | unit | range       | default | meaning                   |
/// |----------|------|-------------|---------|---------------------------|
/// | `ounces` | 1    | 0.01..=1000 | -       | ounces in one square yard |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Mass per area (gsm).
///
/// # Source
/// Definitions of ounce and yard. NIST SP 811, appendix B.8 (3.390575e-2 kg/m2; figure from memory).
///
/// # Examples
/// ```
/// use recloth::quantity::gsm_from_ounces;
/// assert!((gsm_from_ounces(6.0)? - 203.4345).abs() < 1e-4);
/// assert_eq!(gsm_from_ounces(0.0).unwrap_err().argument(), "ounces");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn gsm_from_ounces(ounces: f64) -> Result<f64, Error> {
    Ok(Error::check("ounces", ounces, 0.01, 1000.0)? * (OUNCE_G / SQUARE_YARD_M2))
}

/// Mass of a rectangle of cloth.
///
/// `mass = length · width · gsm`. Weigh a cut square of known sides to find the mass per area of cloth you have.
///
/// | argument | unit | range      | default | meaning                    |
/// |----------|------|------------|---------|----------------------------|
/// | `length` | mm   | 0..=1e7    | -       | length of the cloth        |
/// | `width`  | mm   | 0..=1e5    | -       | width of the cloth         |
/// | `gsm`    | gsm  | 0.1..=1e4  | -       | grams in one square metre  |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Mass (g).
///
/// # Source
/// Arithmetic. `tests/vectors/cloth_mass.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::quantity::cloth_mass;
/// assert_eq!(cloth_mass(2000.0, 1400.0, 150.0)?, 420.0);
/// assert_eq!(cloth_mass(2000.0, -1400.0, 150.0).unwrap_err().argument(), "width");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn cloth_mass(length: f64, width: f64, gsm: f64) -> Result<f64, Error> {
    let length = Error::check("length", length, 0.0, 1e7)?;
    let width = Error::check("width", width, 0.0, 1e5)?;
    let gsm = Error::check("gsm", gsm, 0.1, 1e4)?;
    Ok(length * width * gsm / 1e6)
}

/// A length of cloth turned into one of another width: a range, for a layout does not scale.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WidthConversion {
    /// Length of the same area (mm).
    pub by_area: f64,
    /// Least that the printed tables give, 0.9 times the area's (mm).
    pub low: f64,
    /// Most that the printed tables give, 1.12 times the area's (mm).
    pub high: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Length of cloth of one width that does for a length of another, as a range.
///
/// `by_area = length · width / new_width`. Tables handed down for this follow no formula: over all their cells they give
/// 0.90 to 1.12 times the area's length, and so does this. It is for a guess before buying; lay the pieces to know. A
/// piece wider than the new cloth is not seen here.
///
/// Cloth narrower than 200 mm is doubted: 150 may be in centimetres.
///
/// | argument    | unit | range     | default | meaning                        |
/// |-------------|------|-----------|---------|--------------------------------|
/// | `length`    | mm   | 0..=1e6   | -       | length that is enough          |
/// | `width`     | mm   | 10..=1e5  | -       | width of that cloth            |
/// | `new_width` | mm   | 10..=1e5  | -       | width of the cloth to be had   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// The extension services' table as copied at sewwithsarah.com, greenspun.com and hookedonsewing.com (credited to Rutgers
/// Cooperative Extension, from memory); the range is that of its cells.
///
/// # Examples
/// ```
/// use recloth::quantity::width_conversion;
/// let wide = width_conversion(2000.0, 900.0, 1500.0)?;
/// assert_eq!(wide.by_area, 1200.0);
/// assert!(wide.low < 1100.0 && wide.high > 1300.0);
/// assert_eq!(width_conversion(2000.0, 900.0, 0.0).unwrap_err().argument(), "new_width");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn width_conversion(length: f64, width: f64, new_width: f64) -> Result<WidthConversion, Error> {
    let length = Error::check("length", length, 0.0, 1e6)?;
    let width = Error::check("width", width, 10.0, 1e5)?;
    let new_width = Error::check("new_width", new_width, 10.0, 1e5)?;
    let by_area = length * width / new_width;
    Ok(WidthConversion {
        by_area,
        low: 0.9 * by_area,
        high: 1.12 * by_area,
        doubts: when(width.min(new_width) < 200.0, CLOTH_NARROW),
    })
}

/// Equal lengths cut so that a pattern matches.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Repeats {
    /// Whole repeats in one length (count).
    pub repeats: u32,
    /// Length to cut each (mm).
    pub each: f64,
    /// All lengths together (mm).
    pub total: f64,
    /// What is cut off and lies idle, all lengths together (mm).
    pub waste: f64,
}

/// Lengths rounded up to whole repeats of the pattern, so that all of them begin at the same place in it.
///
/// `each = repeat · ceil(length / repeat)`. The first cut may have to move to where the pattern is wanted: buy one repeat
/// more than the total.
///
/// | argument | unit  | range           | default | meaning                                |
/// |----------|-------|-----------------|---------|----------------------------------------|
/// | `length` | mm    | 1..=1e5         | -       | length needed, allowances included     |
/// | `repeat` | mm    | 1..=1e4         | -       | height of the pattern's repeat         |
/// | `count`  | count | 1..=1000        | 1       | how many lengths                       |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic; common practice, no source. One repeat more: sew4home.com.
///
/// # Examples
/// ```
/// use recloth::quantity::repeats;
/// let skirt = repeats(720.0, 320.0, 4)?;
/// assert_eq!((skirt.repeats, skirt.each, skirt.total), (3, 960.0, 3840.0));
/// assert_eq!(repeats(720.0, 0.0, 4).unwrap_err().argument(), "repeat");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn repeats(length: f64, repeat: f64, count: u32) -> Result<Repeats, Error> {
    let length = Error::check("length", length, 1.0, 1e5)?;
    let repeat = Error::check("repeat", repeat, 1.0, 1e4)?;
    let count = f64::from(Error::check_count("count", count, 1, 1000)?);
    let whole = whole_up(length, repeat);
    let each = whole * repeat;
    Ok(Repeats {
        repeats: whole as u32,
        each,
        total: each * count,
        waste: (each - length).max(0.0) * count,
    })
}

/// Length of cloth to buy, with what repeats and nap take, rounded up to what the shop cuts.
///
/// `length + repeat + extra`, up to a whole graduation. For cloth with a nap, or printed one way, all pieces lie the same
/// way up; a table's length that let them lie both ways needs more: a quarter of a yard (228.6 mm) is the habit, and a
/// lay of the real pieces is better than the habit. Cloth that shrinks: lengthen first.
///
/// | argument     | unit | range      | default | meaning                                            |
/// |--------------|------|------------|---------|----------------------------------------------------|
/// | `length`     | mm   | 0..=1e6    | -       | length the pieces take                             |
/// | `repeat`     | mm   | 0..=1e4    | 0       | one repeat of the pattern, bought to match it      |
/// | `extra`      | mm   | 0..=1e5    | 0       | for nap, for doubt: 228.6 is a quarter of a yard   |
/// | `graduation` | mm   | 1..=1e4    | 100     | what the shop cuts by: 114.3 is an eighth of a yard |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Length to buy (mm).
///
/// # Source
/// Extra for nap: sewwithsarah.com; a repeat more, half a yard in doubt: sew4home.com. Habits, so arguments here.
///
/// # Examples
/// ```
/// use recloth::quantity::cloth_to_buy;
/// assert_eq!(cloth_to_buy(2130.0, 0.0, 0.0, 100.0)?, 2200.0);
/// assert_eq!(cloth_to_buy(2130.0, 320.0, 228.6, 100.0)?, 2700.0);
/// assert_eq!(cloth_to_buy(2130.0, -1.0, 0.0, 100.0).unwrap_err().argument(), "repeat");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn cloth_to_buy(length: f64, repeat: f64, extra: f64, graduation: f64) -> Result<f64, Error> {
    let length = Error::check("length", length, 0.0, 1e6)?;
    let repeat = Error::check("repeat", repeat, 0.0, 1e4)?;
    let extra = Error::check("extra", extra, 0.0, 1e5)?;
    let graduation = Error::check("graduation", graduation, 1.0, 1e4)?;
    Ok(graduation * whole_up(length + repeat + extra, graduation))
}

/// How many of `part` cover `length`; a whole number missed by the rounding of binary counts as whole.
#[inline]
fn whole_up(length: f64, part: f64) -> f64 {
    let parts = length / part;
    libm::ceil(parts * (1.0 - 1e-11))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_in_whole_repeats_are_left_alone() {
        // 0.7 / 0.1 is above 7 in binary, and so with tenths of an inch.
        for whole in 1..=60u32 {
            let length = f64::from(whole) * 2.54;
            assert_eq!(repeats(length, 2.54, 1).unwrap().repeats, whole);
        }
    }

    #[test]
    fn what_is_bought_is_enough() {
        for step in 0..500u32 {
            let length = f64::from(step) * 7.3;
            let bought = cloth_to_buy(length, 0.0, 0.0, 114.3).unwrap();
            assert!(bought > length - 1e-6 && bought < length + 114.3);
        }
    }
}
