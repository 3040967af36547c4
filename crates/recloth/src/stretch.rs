//! Cloth that gives: how far, and how much smaller than the body it is cut.

use crate::Error;
use crate::body::limb;
use crate::doubt::{PERCENT_SMALL, when};
use crate::dust::{above, below};

/// Stretch of cloth from a marked length and the same length pulled out, in percent.
///
/// `stretch = 100 · (pulled - relaxed) / relaxed`. Fold the cloth across the way it is to stretch, mark 100 mm away from
/// the edge, and pull until it resists, not until it can go no further. Let go and measure again: what stays longer will
/// bag at knee and elbow.
///
/// | argument  | unit | range                | default | meaning                        |
/// |-----------|------|----------------------|---------|--------------------------------|
/// | `relaxed` | mm   | 1..=1e5              | -       | distance of the marks at rest  |
/// | `pulled`  | mm   | 1..=1e6, >= relaxed  | -       | distance of the marks pulled   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `pulled` when it is less than `relaxed`.
///
/// # Returns
/// Stretch (%).
///
/// # Source
/// Definition; the way to test is common practice, no source.
///
/// # Examples
/// ```
/// use recloth::stretch::stretch_pct;
/// assert_eq!(stretch_pct(100.0, 135.0)?, 35.0);
/// assert_eq!(stretch_pct(100.0, 90.0).unwrap_err().argument(), "pulled");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn stretch_pct(relaxed: f64, pulled: f64) -> Result<f64, Error> {
    let relaxed = Error::check("relaxed", relaxed, 1.0, 1e5)?;
    let pulled = Error::check("pulled", pulled, 1.0, 1e6)?;
    if below(pulled, relaxed) {
        return Err(Error::no_solution("pulled", pulled, relaxed, f64::NAN));
    }
    Ok(100.0 * (pulled - relaxed).max(0.0) / relaxed)
}

/// A garment smaller than the body it is worn on.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NegativeEase {
    /// Finished girth of the garment at rest (mm).
    pub girth: f64,
    /// Girth less the body's, so negative (mm).
    pub ease: f64,
    /// Furthest girth that the cloth stretches to (mm).
    pub furthest: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Girth of a garment of stretching cloth, from the share of its stretch that wearing is to use.
///
/// Worn, the garment is stretched to the body: `girth · (1 + share · stretch / 100) = body`. Taking `share · stretch`
/// percent off the body's girth instead gives a smaller garment that uses more of the stretch than was meant. It must also
/// go over the widest part on its way: `girth · (1 + stretch / 100)` must reach that. Seams and elastic stretch less than
/// the cloth: try a stitch that gives.
///
/// A body girth below 110 mm, less than a child's wrist (from memory), is doubted, and a stretch below 5 %: 0.5 may
/// be a share.
///
/// | argument      | unit | range           | default | meaning                                          |
/// |---------------|------|-----------------|---------|--------------------------------------------------|
/// | `body`        | mm   | 10..=1e5        | -       | girth of the body where it is worn               |
/// | `stretch_pct` | %    | 0..=500         | -       | stretch of the cloth the way it goes round       |
/// | `widest`      | mm   | 0..=1e5         | 0       | widest girth it is pulled over; 0: not asked     |
/// | `share`       | 1    | 0..=1           | 0.5     | part of the stretch used in wear                 |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `widest` when the cloth does not stretch so far:
/// choose a smaller share, or an opening.
///
/// # Source
/// Proportion. A share of one half is common practice, no source; swimwear uses more, a loose top less.
///
/// # Examples
/// ```
/// use recloth::stretch::negative_ease;
/// let cuff = negative_ease(180.0, 50.0, 210.0, 0.5)?;
/// assert_eq!((cuff.girth, cuff.ease, cuff.furthest), (144.0, -36.0, 216.0));
/// assert_eq!(negative_ease(180.0, 50.0, 230.0, 0.5).unwrap_err().argument(), "widest");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn negative_ease(
    body: f64,
    stretch_pct: f64,
    widest: f64,
    share: f64,
) -> Result<NegativeEase, Error> {
    let body = Error::check("body", body, 10.0, 1e5)?;
    let stretch = Error::check("stretch_pct", stretch_pct, 0.0, 500.0)? / 100.0;
    let widest = Error::check("widest", widest, 0.0, 1e5)?;
    let share = Error::check("share", share, 0.0, 1.0)?;
    let girth = body / (1.0 + share * stretch);
    let furthest = girth * (1.0 + stretch);
    if above(widest, furthest) {
        return Err(Error::no_solution("widest", widest, f64::NAN, furthest));
    }
    Ok(NegativeEase {
        girth,
        ease: girth - body,
        furthest,
        doubts: limb(body) | when(stretch > 0.0 && stretch < 0.05, PERCENT_SMALL),
    })
}
