//! Sewing thread.

use crate::Error;

/// Stitch types whose thread is known from their path, numbered as in ISO 4915.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
#[repr(i32)]
pub enum StitchType {
    /// Type 101, single-thread chain stitch.
    ChainSingle = 0,
    /// Type 301, plain lockstitch.
    Lock = 1,
    /// Type 401, two-thread chain stitch.
    ChainDouble = 2,
}

/// Thread that a seam takes for its length, from the path of the stitch.
///
/// `ratio = c + 2 · thickness / stitch_length`, with `c` 3 for type 101, 2 for 301, 4 for 401: along the seam on both
/// faces, and through it twice a stitch. The path is drawn tight: makers' rounded ratios are higher, 2.5 for type 301 where
/// thin cloth gives 2.2 here, and 5 for type 101 where it gives 3.1. Overedge stitches have published formulas that disagree, and are left
/// out: for them, unpick a length of seam and measure, or take a maker's ratio.
///
/// | argument        | unit   | range      | default | meaning                                  |
/// |-----------------|--------|------------|---------|------------------------------------------|
/// | `stitch_length` | mm     | 0.1..=100  | -       | length of one stitch                     |
/// | `thickness`     | mm     | 0..=100    | -       | all layers of the seam, pressed          |
/// | `stitch`        | choice | -          | lock    | type of the stitch                       |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Thread over seam, all threads together (1).
///
/// # Source
/// A. K. Das, *textilecalculation* blog, 2015 (101, 301); Union Special's chart in a bulletin of American & Efird, 2008
/// (401). Ratios: Coats, *Standard Stitch Type Classification* (101 5, 103 4.5, 301 2.5).
///
/// # Examples
/// ```
/// use recloth::{thread::{StitchType, thread_ratio}, units::INCH};
/// let seam = thread_ratio(INCH / 10.0, 0.01 * INCH, StitchType::Lock)?;
/// assert!((seam - 2.2).abs() < 1e-12);
/// assert_eq!(thread_ratio(0.0, 0.5, StitchType::Lock).unwrap_err().argument(), "stitch_length");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn thread_ratio(stitch_length: f64, thickness: f64, stitch: StitchType) -> Result<f64, Error> {
    let stitch_length = Error::check("stitch_length", stitch_length, 0.1, 100.0)?;
    let thickness = Error::check("thickness", thickness, 0.0, 100.0)?;
    let faces = match stitch {
        StitchType::ChainSingle => 3.0,
        StitchType::Lock => 2.0,
        StitchType::ChainDouble => 4.0,
    };
    Ok(faces + 2.0 * thickness / stitch_length)
}

/// Thread for a seam, waste included.
///
/// `thread = seam · ratio · (1 + waste_pct / 100)`. The ratio is measured on an unpicked length, or taken from
/// [`thread_ratio`] or a maker's table; for one thread of several, give that thread's own. Wind on more than this:
/// tension, thickness and the stitch's length all change it.
///
/// | argument    | unit | range    | default | meaning                                        |
/// |-------------|------|----------|---------|------------------------------------------------|
/// | `seam`      | mm   | 0..=1e8  | -       | length of all seams of this kind               |
/// | `ratio`     | 1    | 0.1..=100 | 2.5    | thread over seam                               |
/// | `waste_pct` | %    | 0..=500  | 15      | for ends, tests and what is left on the bobbin |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Length of thread (mm).
///
/// # Source
/// Arithmetic. Ratio 2.5 for a lockstitch: Coats, *Standard Stitch Type Classification*. Waste of 10 to 15 % by Coats, 15
/// to 20 % by American & Efird; in home sewing with many short seams it is more (common practice, no source).
///
/// # Examples
/// ```
/// use recloth::thread::thread_for_seam;
/// assert_eq!(thread_for_seam(2200.0, 2.5, 0.0)?, 5500.0);
/// assert_eq!(thread_for_seam(2200.0, 0.0, 15.0).unwrap_err().argument(), "ratio");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn thread_for_seam(seam: f64, ratio: f64, waste_pct: f64) -> Result<f64, Error> {
    let seam = Error::check("seam", seam, 0.0, 1e8)?;
    let ratio = Error::check("ratio", ratio, 0.1, 100.0)?;
    let waste_pct = Error::check("waste_pct", waste_pct, 0.0, 500.0)?;
    Ok(seam * ratio * (1.0 + waste_pct / 100.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_shorter_stitch_takes_more_thread() {
        for stitch in [
            StitchType::ChainSingle,
            StitchType::Lock,
            StitchType::ChainDouble,
        ] {
            let (long, short) = (
                thread_ratio(3.0, 1.0, stitch),
                thread_ratio(2.0, 1.0, stitch),
            );
            assert!(short.unwrap() > long.unwrap());
        }
    }
}
