//! Cloth in the wash: dimensional change and skew.

use crate::Error;
use crate::doubt::{CHANGE_LARGE, CLOTH_GROWS, LINING_SHOWS, PERCENT_SMALL, when};
use crate::dust::above;

/// Beyond this a change is doubted (%): the largest typical value in a fibre trader's table is 10.
const LARGE_PCT: f64 = 15.0;
/// Less than this no tape shows on a marked distance of half a metre (%); 0.05 may be a share.
const SMALL_PCT: f64 = 0.2;

/// Dimensional change of cloth in the wash, in percent; minus is shrinkage.
///
/// `change = 100 · (after - before) / before`. A shrinkage stated as 8.57 % is a change of -8.57. Mark at least 350 mm apart, 50 mm from the edges, along each grain.
///
/// | argument | unit | range   | default | meaning                               |
/// |----------|------|---------|---------|---------------------------------------|
/// | `before` | mm   | 1..=1e6 | -       | distance of the marks before washing  |
/// | `after`  | mm   | 1..=1e6 | -       | distance of the marks after washing   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Change (%).
///
/// # Source
/// ISO 5077:2007 and AATCC 135 (formula). `tests/vectors/dimensional_change.csv` has published rows.
///
/// # Examples
/// ```
/// use recloth::cloth::dimensional_change;
/// assert!((dimensional_change(350.0, 320.0)? + 8.57).abs() < 0.005);
/// assert_eq!(dimensional_change(0.0, 320.0).unwrap_err().argument(), "before");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn dimensional_change(before: f64, after: f64) -> Result<f64, Error> {
    let before = Error::check("before", before, 1.0, 1e6)?;
    let after = Error::check("after", after, 1.0, 1e6)?;
    Ok(100.0 * (after - before) / before)
}

/// A length to cut so that washing brings it to size.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CutForChange {
    /// Length to cut (mm).
    pub cut: f64,
    /// What is added; negative for cloth that grows (mm).
    pub added: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Length to cut so that washing brings it to a finished length.
///
/// `cut = finished / (1 + change / 100)`. Adding the percentage to the finished length is the usual slip and comes out
/// short. Shrink cloth before cutting where you can; this is for what cannot be shrunk first.
///
/// A change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.
///
/// | argument     | unit | range     | default | meaning                                       |
/// |--------------|------|-----------|---------|-----------------------------------------------|
/// | `finished`   | mm   | 0..=1e6   | -       | length wanted after washing                   |
/// | `change_pct` | %    | -90..=100 | -       | dimensional change: shrinkage of 5 % is -5    |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// ISO 5077:2007 (definition), solved for the length before. `tests/vectors/cut_for_change.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::{cloth::cut_for_change, doubt::CLOTH_GROWS};
/// assert!((cut_for_change(600.0, -5.0)?.cut - 631.58).abs() < 0.005);
/// assert_eq!(cut_for_change(600.0, 5.0)?.doubts, CLOTH_GROWS);
/// assert_eq!(cut_for_change(600.0, -100.0).unwrap_err().argument(), "change_pct");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn cut_for_change(finished: f64, change_pct: f64) -> Result<CutForChange, Error> {
    let finished = Error::check("finished", finished, 0.0, 1e6)?;
    let change_pct = check_change("change_pct", change_pct)?;
    let cut = before(finished, change_pct);
    Ok(CutForChange {
        cut,
        added: cut - finished,
        doubts: change_doubts(change_pct),
    })
}

/// A shell and its lining, washed.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ShrinkPair {
    /// Shell after washing, if it is sewn as given (mm).
    pub shell_after: f64,
    /// Lining after washing, if it is sewn as given (mm).
    pub lining_after: f64,
    /// How far the lining then hangs below the shell; negative above (mm).
    pub below: f64,
    /// Shell to cut so that washing leaves the length given (mm).
    pub shell_cut: f64,
    /// Lining to cut so that washing leaves the length given (mm).
    pub lining_cut: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// What washing does to a shell and its lining, and how to cut both for it.
///
/// Both lengths run from the same upper seam. Sewn as given, each becomes `length · (1 + change / 100)`; to have them as
/// given after washing, each is cut `length / (1 + change / 100)`. Ask once for the length and once for the width.
///
/// A change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.
///
/// | argument             | unit | range     | default | meaning                                    |
/// |----------------------|------|-----------|---------|--------------------------------------------|
/// | `shell`              | mm   | 0..=1e6   | -       | finished shell                             |
/// | `lining`             | mm   | 0..=1e6   | -       | finished lining                            |
/// | `shell_change_pct`   | %    | -90..=100 | -       | dimensional change of the shell's cloth    |
/// | `lining_change_pct`  | %    | -90..=100 | -       | dimensional change of the lining's cloth   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// ISO 5077:2007 (definition). `tests/vectors/shrink_pair.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::{cloth::shrink_pair, doubt::LINING_SHOWS};
/// let skirt = shrink_pair(600.0, 580.0, -5.0, -1.0)?;
/// assert!((skirt.below - 4.2).abs() < 1e-9);
/// assert_eq!(skirt.doubts, LINING_SHOWS);
/// assert_eq!(shrink_pair(600.0, -1.0, -5.0, -1.0).unwrap_err().argument(), "lining");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn shrink_pair(
    shell: f64,
    lining: f64,
    shell_change_pct: f64,
    lining_change_pct: f64,
) -> Result<ShrinkPair, Error> {
    let shell = Error::check("shell", shell, 0.0, 1e6)?;
    let lining = Error::check("lining", lining, 0.0, 1e6)?;
    let shell_change_pct = check_change("shell_change_pct", shell_change_pct)?;
    let lining_change_pct = check_change("lining_change_pct", lining_change_pct)?;
    let shell_after = after(shell, shell_change_pct);
    let lining_after = after(lining, lining_change_pct);
    let below = lining_after - shell_after;
    let shows = if above(below, 0.0) { LINING_SHOWS } else { 0 };
    Ok(ShrinkPair {
        shell_after,
        lining_after,
        below,
        shell_cut: before(shell, shell_change_pct),
        lining_cut: before(lining, lining_change_pct),
        doubts: change_doubts(shell_change_pct) | change_doubts(lining_change_pct) | shows,
    })
}

/// Cloth after several washes.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Washes {
    /// Length after all washes (mm).
    pub after: f64,
    /// Change from the first length to the last (%).
    pub change_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Length after several washes, of which the first usually takes most.
///
/// Changes multiply, they do not add: `after = length · (1 + first / 100) · (1 + later / 100)^(washes - 1)`. Wash a sample
/// until two measures agree: no rule foretells how many times that is.
///
/// A first change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.
///
/// | argument    | unit  | range     | default | meaning                                      |
/// |-------------|-------|-----------|---------|----------------------------------------------|
/// | `length`    | mm    | 0..=1e6   | -       | length before any wash                       |
/// | `first_pct` | %     | -90..=100 | -       | change in the first wash: shrinkage negative |
/// | `later_pct` | %     | -90..=100 | -       | change in each wash after it                 |
/// | `washes`    | count | 0..=1000  | -       | how many washes                              |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `washes` when the length grows past all bounds.
///
/// # Source
/// ISO 5077:2007 (definition of a change), repeated. `tests/vectors/washes.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::cloth::washes;
/// let skirt = washes(600.0, -5.0, -1.0, 3)?;
/// assert!((skirt.after - 558.657).abs() < 1e-9);
/// assert!((skirt.change_pct + 6.8905).abs() < 1e-9);
/// assert_eq!(washes(600.0, -100.0, 0.0, 1).unwrap_err().argument(), "first_pct");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn washes(length: f64, first_pct: f64, later_pct: f64, washes: u32) -> Result<Washes, Error> {
    let length = Error::check("length", length, 0.0, 1e6)?;
    let first_pct = check_change("first_pct", first_pct)?;
    let later_pct = check_change("later_pct", later_pct)?;
    let washes = Error::check_count("washes", washes, 0, 1000)?;
    let mut factor = 1.0;
    for wash in 0..washes {
        factor = after(factor, if wash == 0 { first_pct } else { later_pct });
        if factor > 1e6 {
            let most = f64::from(wash);
            return Err(Error::no_solution("washes", f64::from(washes), 0.0, most));
        }
    }
    let change_pct = 100.0 * (factor - 1.0);
    let grows = if change_pct > 0.0 { CLOTH_GROWS } else { 0 };
    Ok(Washes {
        after: length * factor,
        change_pct,
        doubts: grows
            | (if washes > 0 {
                change_doubts(first_pct)
            } else {
                0
            })
            | (if washes > 1 {
                // A later wash may well change little.
                change_doubts(later_pct) & !PERCENT_SMALL
            } else {
                0
            }),
    })
}

/// Skew of cloth: how far a weft thread has run off square, in percent of the width.
///
/// `skew = 100 · shift / width`. Pull or follow one weft thread across; measure along the selvedge how far its far end
/// lies from square. Positive and negative are the two ways it may lean.
///
/// | argument | unit | range       | default | meaning                                          |
/// |----------|------|-------------|---------|--------------------------------------------------|
/// | `shift`  | mm   | -1e5..=1e5  | -       | along the selvedge, from square to the thread    |
/// | `width`  | mm   | 1..=1e5     | -       | width of the cloth, square across                |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Skew (%).
///
/// # Source
/// ASTM D3882 (formula from memory).
///
/// # Examples
/// ```
/// use recloth::cloth::skew;
/// assert_eq!(skew(42.0, 1400.0)?, 3.0);
/// assert_eq!(skew(42.0, 0.0).unwrap_err().argument(), "width");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn skew(shift: f64, width: f64) -> Result<f64, Error> {
    let shift = Error::check("shift", shift, -1e5, 1e5)?;
    let width = Error::check("width", width, 1.0, 1e5)?;
    Ok(100.0 * shift / width)
}

/// Skew of a square marked on the cloth, from its two diagonals after washing, in percent.
///
/// `skew = 200 · (first - second) / (first + second)`. For a small skew it is the shift of a side in percent of the side,
/// as [`skew`] gives; of a large one it falls short by a quarter of the square: 9.975 for a side shifted by 10 %.
///
/// | argument | unit | range    | default | meaning                       |
/// |----------|------|----------|---------|-------------------------------|
/// | `first`  | mm   | 1..=1e5  | -       | one diagonal of the square    |
/// | `second` | mm   | 1..=1e5  | -       | the other                     |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Skew (%).
///
/// # Source
/// AATCC 179, the way by diagonals (formula from memory).
///
/// # Examples
/// ```
/// use recloth::cloth::skew_diagonals;
/// assert_eq!(skew_diagonals(360.0, 340.0)?, 40.0 / 7.0);
/// assert_eq!(skew_diagonals(0.0, 340.0).unwrap_err().argument(), "first");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn skew_diagonals(first: f64, second: f64) -> Result<f64, Error> {
    let first = Error::check("first", first, 1.0, 1e5)?;
    let second = Error::check("second", second, 1.0, 1e5)?;
    Ok(200.0 * (first - second) / (first + second))
}

#[inline]
fn check_change(argument: &'static str, change_pct: f64) -> Result<f64, Error> {
    Error::check(argument, change_pct, -90.0, 100.0)
}

#[inline]
fn after(length: f64, change_pct: f64) -> f64 {
    length * (1.0 + change_pct / 100.0)
}

#[inline]
fn before(length: f64, change_pct: f64) -> f64 {
    length / (1.0 + change_pct / 100.0)
}

#[inline]
fn change_doubts(change_pct: f64) -> u64 {
    let size = libm::fabs(change_pct);
    when(change_pct > 0.0, CLOTH_GROWS)
        | when(size > LARGE_PCT, CHANGE_LARGE)
        | when(size > 0.0 && size < SMALL_PCT, PERCENT_SMALL)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_cut_for_a_change_washes_to_size() {
        for change in [-40.0, -8.5, -0.1, 0.0, 3.0, 100.0] {
            let cut = cut_for_change(600.0, change).unwrap().cut;
            let washed = shrink_pair(cut, cut, change, change).unwrap();
            approx::assert_relative_eq!(washed.shell_after, 600.0, max_relative = 1e-14);
            let measured = dimensional_change(cut, washed.shell_after).unwrap();
            approx::assert_abs_diff_eq!(measured, change, epsilon = 1e-12);
        }
    }

    #[test]
    fn adding_the_percentage_comes_out_short() {
        let cut = cut_for_change(600.0, -5.0).unwrap().cut;
        assert!(cut > 600.0 * 1.05 + 1.5);
    }
}
