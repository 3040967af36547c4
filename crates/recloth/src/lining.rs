//! Linings.

use crate::Error;
use crate::dust::{above, short_of};

/// Length of a lining that is sewn to the top of the shell's hem, with a fold.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LiningLength {
    /// Lining from its upper seam to the seam at the top of the hem, without allowances (mm).
    pub seam_to_seam: f64,
    /// The shell's own distance between these two seams (mm).
    pub straight: f64,
    /// What the lining is longer by, which lies in the fold (mm).
    pub spare: f64,
    /// Depth of the fold, from the hem's top seam down (mm).
    pub fold: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Length of a lining that hangs in a fold over the shell's hem.
///
/// The fold ends `clearance` above the finished edge and runs back up to the top of the hem:
/// `seam_to_seam = (length - clearance) + (hem_depth - clearance)`, `fold = hem_depth - clearance`. Width and shrinkage
/// are other questions; a lining without walking room needs a slit.
///
/// The length is doubted as [`body_length_doubts`](crate::body::body_length_doubts) does.
///
/// | argument    | unit | range                | default | meaning                                               |
/// |-------------|------|----------------------|---------|-------------------------------------------------------|
/// | `length`    | mm   | 1..=1e5              | -       | finished shell, upper seam to hem edge                |
/// | `hem_depth` | mm   | 0..=1e4, <= length   | -       | finished depth of the shell's hem                     |
/// | `clearance` | mm   | 0..=1e4, < hem_depth | -       | lining's fold above the hem edge                      |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hem_depth` when the hem is deeper than the
/// shell is long; naming `clearance` when no fold is left: then the lining hangs free ([`lining_free_length`]).
///
/// # Source
/// Arithmetic on the fold's path; the construction is common practice, no source. `tests/vectors/lining_length.csv` has
/// hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::lining::lining_length;
/// let lining = lining_length(560.0, 45.0, 20.0)?;
/// assert_eq!((lining.seam_to_seam, lining.straight, lining.spare, lining.fold), (565.0, 515.0, 50.0, 25.0));
/// assert_eq!(lining_length(560.0, 20.0, 20.0).unwrap_err().argument(), "clearance");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn lining_length(length: f64, hem_depth: f64, clearance: f64) -> Result<LiningLength, Error> {
    let length = Error::check("length", length, 1.0, 1e5)?;
    let hem_depth = Error::check("hem_depth", hem_depth, 0.0, 1e4)?;
    let clearance = Error::check("clearance", clearance, 0.0, 1e4)?;
    if above(hem_depth, length) {
        return Err(Error::no_solution("hem_depth", hem_depth, 0.0, length));
    }
    if clearance >= hem_depth {
        return Err(Error::no_solution(
            "clearance",
            clearance,
            0.0,
            short_of(hem_depth),
        ));
    }
    let fold = hem_depth - clearance;
    Ok(LiningLength {
        seam_to_seam: (length - clearance) + fold,
        straight: (length - hem_depth).max(0.0),
        spare: 2.0 * fold,
        fold,
        doubts: crate::body::along_body(length),
    })
}

/// Length to cut a lining that hangs free of the shell's hem, below its upper seam line.
///
/// `length - clearance + hem`.
///
/// | argument    | unit | range             | default | meaning                                              |
/// |-------------|------|-------------------|---------|------------------------------------------------------|
/// | `length`    | mm   | 1..=1e5           | -       | finished shell, upper seam to hem edge               |
/// | `clearance` | mm   | 0..=1e4, < length | -       | lining's hem edge above the shell's                  |
/// | `hem`       | mm   | 0..=1e4           | -       | all the cloth of the lining's own hem, turn included |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `clearance` when nothing of the lining is left.
///
/// # Returns
/// Upper seam line to the lower cut edge (mm).
///
/// # Source
/// Arithmetic. `tests/vectors/lining_free_length.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::lining::lining_free_length;
/// assert_eq!(lining_free_length(560.0, 20.0, 35.0)?, 575.0);
/// assert_eq!(lining_free_length(560.0, 560.0, 35.0).unwrap_err().argument(), "clearance");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn lining_free_length(length: f64, clearance: f64, hem: f64) -> Result<f64, Error> {
    let length = Error::check("length", length, 1.0, 1e5)?;
    let clearance = Error::check("clearance", clearance, 0.0, 1e4)?;
    let hem = Error::check("hem", hem, 0.0, 1e4)?;
    if clearance >= length {
        return Err(Error::no_solution(
            "clearance",
            clearance,
            0.0,
            short_of(length),
        ));
    }
    Ok(length - clearance + hem)
}

/// Width to cut a lining panel that meets a facing.
///
/// `width = (panel - facing) · (1 + ease_pct / 100) + pleat`, between seam lines: the lining must never be what strains, so it
/// is wider than what it lines. A pleat at the centre back gives room to reach. Panels without a facing have `facing = 0`.
///
/// | argument   | unit | range            | default | meaning                                                 |
/// |------------|------|------------------|---------|---------------------------------------------------------|
/// | `panel`    | mm   | 1..=1e5          | -       | finished shell panel, seam line to edge                 |
/// | `facing`   | mm   | 0..=1e5, < panel | 0       | finished facing, edge to the seam that joins the lining |
/// | `ease_pct` | %    | 0..=50           | 2       | what the lining is wider than what it lines             |
/// | `pleat`    | mm   | 0..=1e4          | 0       | cloth of a pleat, both layers of its fold               |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `facing` when it is as wide as the panel.
///
/// # Returns
/// Width of the lining panel between seam lines (mm).
///
/// # Source
/// Arithmetic; the ease is common practice, no source. `tests/vectors/lining_width.csv` has hand-worked rows. What washing
/// takes of shell and lining is another question: [`shrink_pair`](crate::cloth::shrink_pair).
///
/// # Examples
/// ```
/// use recloth::lining::lining_width;
/// assert_eq!(lining_width(260.0, 60.0, 2.0, 0.0)?, 204.0);
/// assert_eq!(lining_width(260.0, 260.0, 2.0, 0.0).unwrap_err().argument(), "facing");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn lining_width(panel: f64, facing: f64, ease_pct: f64, pleat: f64) -> Result<f64, Error> {
    let panel = Error::check("panel", panel, 1.0, 1e5)?;
    let facing = Error::check("facing", facing, 0.0, 1e5)?;
    let ease_pct = Error::check("ease_pct", ease_pct, 0.0, 50.0)?;
    let pleat = Error::check("pleat", pleat, 0.0, 1e4)?;
    if facing >= panel {
        return Err(Error::no_solution("facing", facing, 0.0, short_of(panel)));
    }
    Ok((panel - facing) * (1.0 + ease_pct / 100.0) + pleat)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_lining_is_the_straight_distance_and_the_fold_twice() {
        for (length, hem_depth, clearance) in
            [(560.0, 45.0, 20.0), (45.0, 45.0, 0.0), (900.0, 60.0, 59.0)]
        {
            let lining = lining_length(length, hem_depth, clearance).unwrap();
            assert_eq!(lining.seam_to_seam, lining.straight + 2.0 * lining.fold);
            assert_eq!(lining.spare, lining.seam_to_seam - lining.straight);
        }
    }
}
