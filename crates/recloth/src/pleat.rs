//! Box and inverted pleats, and tucks.

use crate::Error;
use crate::doubt::PLEATS_OVERLAP;
use crate::dust::{above, below, short_of};

/// A set of equal box pleats, or of inverted ones.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BoxPleats {
    /// Width before pleating, without allowances (mm).
    pub flat: f64,
    /// Width when pleated (mm).
    pub finished: f64,
    /// Number of pleats (count).
    pub count: u32,
    /// Width from pleat to pleat (mm).
    pub show: f64,
    /// Depth of each of a pleat's two folds (mm).
    pub depth: f64,
    /// Cloth that each pleat takes up, four times its depth (mm).
    pub intake: f64,
    /// Cloth that all pleats take up (mm).
    pub taken_up: f64,
    /// Flat over finished: 3 where the folds just meet behind (1).
    pub ratio: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

impl BoxPleats {
    fn new(flat: f64, finished: f64, count: u32, depth: f64) -> BoxPleats {
        let show = finished / f64::from(count);
        // Pleats that just meet, worked back from other numbers, may miss by a rounding.
        let overlap = 2.0 * depth > show * (1.0 + 1e-9);
        BoxPleats {
            flat,
            finished,
            count,
            show,
            depth,
            intake: 4.0 * depth,
            taken_up: flat - finished,
            ratio: flat / finished,
            doubts: if overlap { PLEATS_OVERLAP } else { 0 },
        }
    }
}

/// Cloth for box pleats, or inverted ones, of a given number and depth.
///
/// A box pleat is two knife pleats folded away from each other, an inverted pleat two folded towards each other: the same
/// cloth seen from its two faces. `flat = finished + 4 · count · depth`. The folds meet behind a box pleat when `depth` is
/// half of `show`, and then the cloth is three times the width. The four functions each find one of `flat`, `finished`,
/// `count` and `depth`, as those of [`knife_pleats`](crate::fullness::knife_pleats) do.
///
/// | argument   | unit  | range     | default | meaning                                        |
/// |------------|-------|-----------|---------|------------------------------------------------|
/// | `finished` | mm    | 1..=1e6   | -       | width when pleated                             |
/// | `count`    | count | 1..=1000  | -       | number of box or inverted pleats               |
/// | `depth`    | mm    | 0.1..=1e4 | -       | depth of each of a pleat's two folds           |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic. `tests/vectors/box_pleats.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::pleat::box_pleats;
/// let touching = box_pleats(720.0, 12, 30.0)?;
/// assert_eq!((touching.flat, touching.ratio, touching.doubts), (2160.0, 3.0, 0));
/// assert_eq!(box_pleats(720.0, 12, 0.0).unwrap_err().argument(), "depth");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn box_pleats(finished: f64, count: u32, depth: f64) -> Result<BoxPleats, Error> {
    let finished = Error::check("finished", finished, 1.0, 1e6)?;
    let count = Error::check_count("count", count, 1, 1000)?;
    let depth = Error::check("depth", depth, 0.1, 1e4)?;
    let flat = finished + 4.0 * f64::from(count) * depth;
    Ok(BoxPleats::new(flat, finished, count, depth))
}

/// Depth of a given number of box pleats that bring cloth there is to a width.
///
/// `depth = (flat - finished) / (4 · count)`.
///
/// | argument   | unit  | range           | default | meaning                                    |
/// |------------|-------|-----------------|---------|--------------------------------------------|
/// | `flat`     | mm    | 1..=1e8         | -       | width before pleating, without allowances  |
/// | `finished` | mm    | 1..=1e6, < flat | -       | width when pleated                         |
/// | `count`    | count | 1..=1000        | -       | number of box or inverted pleats           |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat.
///
/// # Source
/// Arithmetic. `tests/vectors/box_pleats_depth.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::pleat::box_pleats_depth;
/// assert_eq!(box_pleats_depth(2160.0, 720.0, 12)?.depth, 30.0);
/// assert_eq!(box_pleats_depth(700.0, 720.0, 12).unwrap_err().argument(), "finished");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn box_pleats_depth(flat: f64, finished: f64, count: u32) -> Result<BoxPleats, Error> {
    let flat = Error::check("flat", flat, 1.0, 1e8)?;
    let finished = Error::check("finished", finished, 1.0, 1e6)?;
    let count = Error::check_count("count", count, 1, 1000)?;
    if finished >= flat {
        return Err(Error::no_solution(
            "finished",
            finished,
            1.0,
            short_of(flat),
        ));
    }
    let depth = (flat - finished) / (4.0 * f64::from(count));
    Ok(BoxPleats::new(flat, finished, count, depth))
}

/// Number of box pleats of at least a given depth that bring cloth there is to a width.
///
/// The whole number that `(flat - finished) / (4 · depth)` holds, and then the depth at which they take up exactly what
/// there is.
///
/// | argument   | unit | range           | default | meaning                                    |
/// |------------|------|-----------------|---------|--------------------------------------------|
/// | `flat`     | mm   | 1..=1e8         | -       | width before pleating, without allowances  |
/// | `finished` | mm   | 1..=1e6, < flat | -       | width when pleated                         |
/// | `depth`    | mm   | 0.1..=1e4       | -       | least depth of each of a pleat's two folds |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat; naming
/// `depth` when there is not enough for one pleat, or so much that there would be more than 1000.
///
/// # Source
/// Arithmetic. `tests/vectors/box_pleats_count.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::pleat::box_pleats_count;
/// let pleats = box_pleats_count(1500.0, 700.0, 30.0)?;
/// assert_eq!(pleats.count, 6);
/// assert!((pleats.depth - 33.33).abs() < 0.005);
/// assert_eq!(box_pleats_count(720.0, 700.0, 30.0).unwrap_err().argument(), "depth");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn box_pleats_count(flat: f64, finished: f64, depth: f64) -> Result<BoxPleats, Error> {
    let flat = Error::check("flat", flat, 1.0, 1e8)?;
    let finished = Error::check("finished", finished, 1.0, 1e6)?;
    let depth = Error::check("depth", depth, 0.1, 1e4)?;
    if finished >= flat {
        return Err(Error::no_solution(
            "finished",
            finished,
            1.0,
            short_of(flat),
        ));
    }
    let quarter = (flat - finished) / 4.0;
    // Lengths given in inches may miss a whole number by a rounding.
    let count = libm::floor(quarter / depth * (1.0 + 1e-12));
    if !(1.0..=1000.0).contains(&count) {
        let (least, most) = (quarter / 1000.0, quarter);
        return Err(Error::no_solution("depth", depth, least, most));
    }
    let deep = quarter / count;
    Ok(BoxPleats::new(flat, finished, count as u32, deep))
}

/// Width to which a given number of box pleats brings cloth there is.
///
/// `finished = flat - 4 · count · depth`.
///
/// | argument | unit  | range     | default | meaning                                    |
/// |----------|-------|-----------|---------|--------------------------------------------|
/// | `flat`   | mm    | 1..=1e8   | -       | width before pleating, without allowances  |
/// | `count`  | count | 1..=1000  | -       | number of box or inverted pleats           |
/// | `depth`  | mm    | 0.1..=1e4 | -       | depth of each of a pleat's two folds       |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when the pleats take up all the cloth.
///
/// # Source
/// Arithmetic. `tests/vectors/box_pleats_finished.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::pleat::box_pleats_finished;
/// assert_eq!(box_pleats_finished(2160.0, 12, 30.0)?.finished, 720.0);
/// assert_eq!(box_pleats_finished(2160.0, 12, 50.0).unwrap_err().max().round(), 45.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn box_pleats_finished(flat: f64, count: u32, depth: f64) -> Result<BoxPleats, Error> {
    let flat = Error::check("flat", flat, 1.0, 1e8)?;
    let count = Error::check_count("count", count, 1, 1000)?;
    let depth = Error::check("depth", depth, 0.1, 1e4)?;
    let finished = flat - 4.0 * f64::from(count) * depth;
    if !above(finished, 0.0) {
        let largest = flat / (4.0 * f64::from(count));
        return Err(Error::no_solution(
            "depth",
            depth,
            f64::NAN,
            short_of(largest),
        ));
    }
    Ok(BoxPleats::new(flat, finished, count, depth))
}

/// Cloth added at a seam for an inverted pleat.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SeamPleat {
    /// Added to the edge whose seam lies in the nearer inner fold (mm).
    pub first_edge: f64,
    /// Added to the edge that makes the rest of the pleat (mm).
    pub next_edge: f64,
    /// Both together, less the seam: what the pleat takes up (mm).
    pub intake: f64,
}

/// Cloth added at the two edges of a seam that is to hold an inverted pleat.
///
/// The first edge gets one depth and its allowance, the next one three depths and its allowance: the seam then lies hidden
/// in an inner fold, not in the middle of the underlay. At a gored seam both are added along the slanted edge.
///
/// | argument    | unit | range     | default | meaning                                   |
/// |-------------|------|-----------|---------|-------------------------------------------|
/// | `depth`     | mm   | 0.1..=1e4 | -       | depth of each of the pleat's two folds    |
/// | `allowance` | mm   | 0..=1e3   | -       | seam allowance of each edge               |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// L. I. Baldt, *Clothing for Women*, 1916, Outer Garments pt 4 (inverted pleat at a gored seam: 1 pleat width and a seam on
/// the first edge, 3 and a seam on the next). A pleat that deepens to the hem is asked for twice, at the waist and at the
/// hem: the same author adds 2 to 3 in at the waist for a back pleat and twice that at the hem.
///
/// # Examples
/// ```
/// use recloth::pleat::seam_pleat;
/// let pleat = seam_pleat(50.0, 10.0)?;
/// assert_eq!((pleat.first_edge, pleat.next_edge, pleat.intake), (60.0, 160.0, 200.0));
/// assert_eq!(seam_pleat(0.0, 10.0).unwrap_err().argument(), "depth");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn seam_pleat(depth: f64, allowance: f64) -> Result<SeamPleat, Error> {
    let depth = Error::check("depth", depth, 0.1, 1e4)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    Ok(SeamPleat {
        first_edge: depth + allowance,
        next_edge: 3.0 * depth + allowance,
        intake: 4.0 * depth,
    })
}

/// A set of equal tucks.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Tucks {
    /// Width before tucking, without allowances (mm).
    pub flat: f64,
    /// Cloth that all tucks take up (mm).
    pub taken_up: f64,
    /// From fold line to fold line on the flat cloth (mm).
    pub fold_pitch: f64,
    /// What shows between a tuck's fold and the next one's stitching; 0 for blind tucks (mm).
    pub gap: f64,
    /// Width left beside the first and the last stitching, together (mm).
    pub margin: f64,
    /// `PLEATS_OVERLAP` when tucks lie over each other (bits).
    pub doubts: u64,
}

/// Cloth and marking for tucks stitched an even distance apart.
///
/// `flat = finished + 2 · count · depth`; fold lines are marked `spacing + 2 · depth` apart on the flat cloth. A tuck covers
/// its depth of the spacing: blind tucks have `spacing = depth`. Tuck the cloth first, then cut the piece from it.
///
/// | argument   | unit  | range     | default | meaning                                       |
/// |------------|-------|-----------|---------|-----------------------------------------------|
/// | `finished` | mm    | 1..=1e5   | -       | width when tucked                             |
/// | `count`    | count | 1..=1000  | -       | number of tucks                               |
/// | `depth`    | mm    | 0.1..=1e3 | -       | depth of each tuck, stitching to fold         |
/// | `spacing`  | mm    | 0.1..=1e4 | -       | from stitching to stitching when tucked       |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `spacing` when the tucks do not fit in the width.
///
/// # Source
/// L. I. Baldt, *Clothing for Women*, 1916, Decoration pt 4 (twice the depth times the number).
/// `tests/vectors/tucks.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::pleat::tucks;
/// let front = tucks(150.0, 8, 5.0, 15.0)?;
/// assert_eq!((front.flat, front.fold_pitch, front.gap, front.margin), (230.0, 25.0, 10.0, 45.0));
/// assert_eq!(tucks(100.0, 8, 5.0, 15.0).unwrap_err().argument(), "spacing");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn tucks(finished: f64, count: u32, depth: f64, spacing: f64) -> Result<Tucks, Error> {
    let finished = Error::check("finished", finished, 1.0, 1e5)?;
    let count = f64::from(Error::check_count("count", count, 1, 1000)?);
    let depth = Error::check("depth", depth, 0.1, 1e3)?;
    let spacing = Error::check("spacing", spacing, 0.1, 1e4)?;
    let margin = finished - (count - 1.0) * spacing;
    if below(margin, 0.0) {
        let most = finished / (count - 1.0);
        return Err(Error::no_solution("spacing", spacing, f64::NAN, most));
    }
    let taken_up = 2.0 * count * depth;
    let overlap = count > 1.0 && above(depth, spacing);
    Ok(Tucks {
        flat: finished + taken_up,
        taken_up,
        fold_pitch: spacing + 2.0 * depth,
        gap: spacing - depth,
        margin: margin.max(0.0),
        doubts: if overlap { PLEATS_OVERLAP } else { 0 },
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fullness::knife_pleats;

    #[test]
    fn a_box_pleat_is_two_knife_pleats() {
        for (count, depth) in [(1, 0.5), (7, 12.0), (24, 30.0)] {
            let boxes = box_pleats(720.0, count, depth).unwrap();
            assert_eq!(
                boxes.flat,
                knife_pleats(720.0, 2 * count, depth).unwrap().flat
            );
            let by_depth = box_pleats_depth(boxes.flat, 720.0, count).unwrap();
            approx::assert_relative_eq!(by_depth.depth, depth, max_relative = 1e-12);
            let by_count = box_pleats_count(boxes.flat, 720.0, depth).unwrap();
            assert_eq!(by_count.count, count);
            let by_finished = box_pleats_finished(boxes.flat, count, depth).unwrap();
            approx::assert_relative_eq!(by_finished.finished, 720.0, max_relative = 1e-12);
        }
    }

    #[test]
    fn what_an_error_asks_for_would_do() {
        let count = |depth| box_pleats_count(1e5, 700.0, depth);
        assert_eq!(count(count(0.1).unwrap_err().min()).unwrap().count, 1000);
        let scant = |depth| box_pleats_count(740.0, 700.0, depth);
        assert_eq!(scant(scant(30.0).unwrap_err().max()).unwrap().count, 1);
        let most = tucks(100.0, 8, 5.0, 15.0).unwrap_err().max();
        assert!(tucks(100.0, 8, 5.0, most).is_ok());
    }

    #[test]
    fn folds_and_gaps_make_up_the_spacing() {
        let front = tucks(150.0, 8, 5.0, 15.0).unwrap();
        // Marked and folded: 7 pitches less 7 intakes is the tucked distance.
        assert_eq!(7.0 * (front.fold_pitch - 10.0) + front.margin, 150.0);
    }
}
