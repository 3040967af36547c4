//! Sleeves: the cap against its armhole, and puffs.

use crate::Error;
use crate::doubt::{CAP_FULL, CAP_SHORT, when};
use crate::dust::{above, below, short_of};
use crate::fullness::ratio_doubts;

/// How a sleeve cap compares with its armhole.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CapEase {
    /// What the cap is longer; negative when it is too short to be sewn in (mm).
    pub ease: f64,
    /// The same over the armhole (%).
    pub ease_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Ease of a sleeve cap in its armhole.
///
/// `ease = cap - armhole`. Walk both along their seam lines, front and back apart, since a right total can hide a front that
/// is short. A shirt or a dropped shoulder has 0 to 2 %, a set-in sleeve in soft cloth 3 to 6 %; more than about 6 % in firm
/// cloth gathers (common practice, no source).
///
/// A cap shorter than its armhole is doubted, for the two may have changed places, and so is more than 10 % of ease,
/// which gathers (common practice, no source).
///
/// | argument  | unit | range   | default | meaning                                      |
/// |-----------|------|---------|---------|----------------------------------------------|
/// | `armhole` | mm   | 1..=1e5 | -       | seam line of the armhole, or of a section of it |
/// | `cap`     | mm   | 1..=1e5 | -       | seam line of the cap, or of the same section |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic. `tests/vectors/cap_ease.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::sleeve::cap_ease;
/// let sleeve = cap_ease(440.0, 452.0)?;
/// assert_eq!(sleeve.ease, 12.0);
/// assert!((sleeve.ease_pct - 2.7).abs() < 0.05);
/// assert_eq!(cap_ease(440.0, 0.0).unwrap_err().argument(), "cap");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn cap_ease(armhole: f64, cap: f64) -> Result<CapEase, Error> {
    let armhole = Error::check("armhole", armhole, 1.0, 1e5)?;
    let cap = Error::check("cap", cap, 1.0, 1e5)?;
    let ease = cap - armhole;
    Ok(CapEase {
        ease,
        ease_pct: 100.0 * ease / armhole,
        doubts: when(below(ease, 0.0), CAP_SHORT) | when(above(ease, armhole / 10.0), CAP_FULL),
    })
}

/// Length that a sleeve cap must have for a wanted ease.
///
/// `armhole · (1 + ease_pct / 100)`. Where the cap there is is short of it, raise the cap (by half of what is short, as a
/// first guess, then walk it again), widen it, or lift the underarm of the armhole.
///
/// | argument   | unit | range     | default | meaning                       |
/// |------------|------|-----------|---------|-------------------------------|
/// | `armhole`  | mm   | 1..=1e5   | -       | seam line of the armhole      |
/// | `ease_pct` | %    | -20..=100 | 4       | wanted ease over the armhole  |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Seam line of the cap (mm).
///
/// # Source
/// Arithmetic; the default ease is common practice, no source. `tests/vectors/cap_for_ease.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::sleeve::cap_for_ease;
/// assert!((cap_for_ease(440.0, 4.0)? - 457.6).abs() < 1e-9);
/// assert_eq!(cap_for_ease(0.0, 4.0).unwrap_err().argument(), "armhole");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn cap_for_ease(armhole: f64, ease_pct: f64) -> Result<f64, Error> {
    let armhole = Error::check("armhole", armhole, 1.0, 1e5)?;
    let ease_pct = Error::check("ease_pct", ease_pct, -20.0, 100.0)?;
    Ok(armhole * (1.0 + ease_pct / 100.0))
}

/// Widest sleeve that a cap of a given length and height can have.
///
/// `2 · √((cap / 2)² - height²)`, as if each half of the cap were straight. The line curves, so the sleeve is narrower than
/// this: a bound, not a width to cut to. The bound shrinks as the cap is raised.
///
/// | argument | unit | range   | default | meaning                                    |
/// |----------|------|---------|---------|--------------------------------------------|
/// | `cap`    | mm   | 1..=1e5 | -       | seam line of the whole cap                 |
/// | `height` | mm   | 0..=1e5 | -       | underarm line up to the top of the cap     |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `height` when it is half the cap or more.
///
/// # Returns
/// Upper bound of the width at the underarm line (mm).
///
/// # Source
/// Plane geometry. `tests/vectors/cap_width_bound.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::sleeve::cap_width_bound;
/// assert_eq!(cap_width_bound(500.0, 150.0)?, 400.0);
/// assert_eq!(cap_width_bound(500.0, 250.0).unwrap_err().max().round(), 250.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn cap_width_bound(cap: f64, height: f64) -> Result<f64, Error> {
    let cap = Error::check("cap", cap, 1.0, 1e5)?;
    let height = Error::check("height", height, 0.0, 1e5)?;
    let half = cap / 2.0;
    if height >= half {
        return Err(Error::no_solution("height", height, 0.0, short_of(half)));
    }
    // As a product, which keeps the digits of a cap hardly longer than its height.
    Ok(2.0 * libm::sqrt((half - height) * (half + height)))
}

/// A cap slashed and spread for a puff.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PuffSpread {
    /// Zone after spreading, before gathering (mm).
    pub flat: f64,
    /// What spreading adds in all (mm).
    pub added: f64,
    /// How far each slash opens (mm).
    pub spread_each: f64,
    /// The ratio that the strip to be let in allows (1).
    pub strip_ratio: f64,
    /// `GATHERS_SCANT` or `GATHERS_LARGE` when the smaller of the ratios asked for looks like a mistake (bits).
    pub doubts: u64,
}

/// Spread of a sleeve cap that is slashed and opened for gathers between two notches.
///
/// `flat = zone · ratio`, `spread_each = (flat - zone) / slashes`. Where the sleeve is cut already, a strip is let in instead,
/// on the sleeve's own grain: one as wide as `strip` allows a ratio of `(zone + strip) / zone`. A sleeve still to be cut needs
/// none. How much the cap is raised as well is taste: fold it in paper first.
///
/// | argument  | unit  | range   | default | meaning                                                    |
/// |-----------|-------|---------|---------|------------------------------------------------------------|
/// | `zone`    | mm    | 1..=1e4 | -       | seam line between the notches, where the gathers go        |
/// | `ratio`   | 1     | 1..=10  | -       | zone after spreading over before                           |
/// | `slashes` | count | 1..=100 | -       | number of slashes                                          |
/// | `strip`   | mm    | 0..=1e5 | 0       | cloth there is to let in, allowances taken off; 0: none    |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic; the doubt below 1.2 is common practice, no source. `tests/vectors/puff_spread.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::sleeve::puff_spread;
/// let puff = puff_spread(240.0, 1.75, 6, 100.0)?;
/// assert_eq!((puff.flat, puff.added, puff.spread_each), (420.0, 180.0, 30.0));
/// assert!((puff.strip_ratio - 1.42).abs() < 0.005);
/// assert_eq!(puff_spread(240.0, 1.75, 0, 100.0).unwrap_err().argument(), "slashes");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn puff_spread(zone: f64, ratio: f64, slashes: u32, strip: f64) -> Result<PuffSpread, Error> {
    let zone = Error::check("zone", zone, 1.0, 1e4)?;
    let ratio = Error::check("ratio", ratio, 1.0, 10.0)?;
    let slashes = f64::from(Error::check_count("slashes", slashes, 1, 100)?);
    let strip = Error::check("strip", strip, 0.0, 1e5)?;
    let flat = zone * ratio;
    let added = flat - zone;
    let strip_ratio = (zone + strip) / zone;
    Ok(PuffSpread {
        flat,
        added,
        spread_each: added / slashes,
        strip_ratio,
        doubts: ratio_doubts(if strip > 0.0 {
            ratio.min(strip_ratio)
        } else {
            ratio
        }),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_cap_for_an_ease_has_that_ease() {
        for pct in [-3.0, 0.0, 2.7, 6.0] {
            let cap = cap_for_ease(443.5, pct).unwrap();
            let found = cap_ease(443.5, cap).unwrap().ease_pct;
            approx::assert_abs_diff_eq!(found, pct, epsilon = 1e-12);
        }
    }

    #[test]
    fn a_higher_cap_bounds_a_narrower_sleeve() {
        let mut last = f64::MAX;
        for height in [0.0, 50.0, 130.0, 225.9] {
            let bound = cap_width_bound(452.0, height).unwrap();
            assert!(bound < last && bound <= 452.0);
            last = bound;
        }
    }
}
