//! Waistbands: straight, folded, shaped and in sections.

use core::f64::consts::TAU;

use crate::Error;
use crate::doubt::BAND_FLARED;
use crate::dust::{above, past, short_of};

/// How a straight band gets its two layers.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
#[repr(i32)]
pub enum BandMake {
    /// One strip folded along its upper edge.
    Folded = 0,
    /// Two strips, an outer and an inner, joined along the upper edge.
    Faced = 1,
}

/// The strip a straight band is cut from.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct StraightBand {
    /// Length to cut, allowances included (mm).
    pub cut_length: f64,
    /// Width to cut, allowances included (mm).
    pub cut_width: f64,
    /// How many such strips (count).
    pub strips: u32,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Strip to cut for a straight band.
///
/// Folded: `cut_width = 2 · depth + 2 · allowance + turn`, one strip. Faced: `cut_width = depth + 2 · allowance + turn`,
/// two strips. `cut_length = waist + overlap + 2 · allowance`. The turn is the cloth that the upper edge takes by its
/// own thickness; fold or sew a sample to learn it.
///
/// The waist is doubted as [`girth_doubts`](crate::body::girth_doubts) does.
///
/// | argument    | unit   | range   | default | meaning                                              |
/// |-------------|--------|---------|---------|------------------------------------------------------|
/// | `waist`     | mm     | 1..=1e5 | -       | finished length round the waist, ease included       |
/// | `overlap`   | mm     | 0..=1e4 | -       | what runs on past the opening, at both ends together |
/// | `depth`     | mm     | 1..=1e4 | -       | finished depth                                       |
/// | `allowance` | mm     | 0..=1e3 | -       | seam allowance at each edge and each end             |
/// | `turn`      | mm     | 0..=100 | 0       | cloth taken by the thickness of the upper edge       |
/// | `make`      | choice | -       | folded  | how the band gets its two layers                     |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic; the turn is common practice, no source. `tests/vectors/straight_band.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::band::{BandMake, straight_band};
/// let band = straight_band(710.0, 30.0, 25.0, 10.0, 2.0, BandMake::Folded)?;
/// assert_eq!((band.cut_length, band.cut_width, band.strips), (760.0, 72.0, 1));
/// let error = straight_band(710.0, 30.0, 0.0, 10.0, 2.0, BandMake::Folded).unwrap_err();
/// assert_eq!(error.argument(), "depth");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn straight_band(
    waist: f64,
    overlap: f64,
    depth: f64,
    allowance: f64,
    turn: f64,
    make: BandMake,
) -> Result<StraightBand, Error> {
    let waist = Error::check("waist", waist, 1.0, 1e5)?;
    let overlap = Error::check("overlap", overlap, 0.0, 1e4)?;
    let depth = Error::check("depth", depth, 1.0, 1e4)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let turn = Error::check("turn", turn, 0.0, 100.0)?;
    let (layers, strips) = match make {
        BandMake::Folded => (2.0, 1),
        BandMake::Faced => (1.0, 2),
    };
    Ok(StraightBand {
        cut_length: waist + overlap + 2.0 * allowance,
        cut_width: layers * depth + 2.0 * allowance + turn,
        strips,
        doubts: crate::body::trunk(waist),
    })
}

/// Finished depth of a straight band from a strip there is.
///
/// Folded: `depth = (cut_width - 2 · allowance - turn) / 2`. Faced: `depth = cut_width - 2 · allowance - turn`. A strip
/// drawn without allowances still loses them to its seams, which is the usual slip.
///
/// | argument    | unit   | range   | default | meaning                                        |
/// |-------------|--------|---------|---------|------------------------------------------------|
/// | `cut_width` | mm     | 1..=1e5 | -       | width of the strip from raw edge to raw edge   |
/// | `allowance` | mm     | 0..=1e3 | -       | seam allowance at each long edge               |
/// | `turn`      | mm     | 0..=100 | 0       | cloth taken by the thickness of the upper edge |
/// | `make`      | choice | -       | folded  | how the band gets its two layers               |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when the allowances and the turn
/// leave nothing of the strip.
///
/// # Returns
/// Finished depth of the band (mm).
///
/// # Source
/// Arithmetic. `tests/vectors/straight_band_depth.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::band::{BandMake, straight_band_depth};
/// assert_eq!(straight_band_depth(50.0, 10.0, 0.0, BandMake::Faced)?, 30.0);
/// assert_eq!(straight_band_depth(50.0, 10.0, 0.0, BandMake::Folded)?, 15.0);
/// let error = straight_band_depth(50.0, 30.0, 0.0, BandMake::Folded).unwrap_err();
/// assert_eq!((error.argument(), error.max().round()), ("allowance", 25.0));
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn straight_band_depth(
    cut_width: f64,
    allowance: f64,
    turn: f64,
    make: BandMake,
) -> Result<f64, Error> {
    let cut_width = Error::check("cut_width", cut_width, 1.0, 1e5)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let turn = Error::check("turn", turn, 0.0, 100.0)?;
    let left = cut_width - 2.0 * allowance - turn;
    if !above(left, 0.0) {
        return Err(Error::no_solution(
            "allowance",
            allowance,
            f64::NAN,
            short_of((cut_width - turn) / 2.0),
        ));
    }
    Ok(match make {
        BandMake::Folded => left / 2.0,
        BandMake::Faced => left,
    })
}

/// The strip a folded band is cut from, with its lines.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct FoldedBand {
    /// Width to cut, raw edge to raw edge (mm).
    pub cut_width: f64,
    /// Fold line from the raw edge that is sewn to the garment (mm).
    pub fold_line: f64,
    /// From the fold to the raw edge of the inner layer (mm).
    pub inner: f64,
}

/// Width of a strip that is folded along its middle to a band, a cuff or a placket, and where its fold lies.
///
/// `cut_width = 2 · depth + 2 · allowance + turn + past`, `fold_line = allowance + depth + turn / 2`. The turn is the cloth
/// that the fold takes by its thickness, half from either side. An inner layer that is caught by stitching in the seam from
/// the right side must reach `past` below it; sewn down by hand, 0. Interfacing ends at the fold line or goes over it as the
/// cloth asks. For the strip's length see [`straight_band`]; for the depth of a strip there is,
/// [`straight_band_depth`] of its width less `past`.
///
/// | argument    | unit | range   | default | meaning                                         |
/// |-------------|------|---------|---------|-------------------------------------------------|
/// | `depth`     | mm   | 1..=1e4 | -       | finished depth                                  |
/// | `allowance` | mm   | 0..=1e3 | -       | seam allowance at each long edge                |
/// | `turn`      | mm   | 0..=100 | 0       | cloth taken by the thickness of the fold        |
/// | `past`      | mm   | 0..=100 | 0       | what the inner layer reaches past the seam      |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic; the turn is common practice, no source: fold a sample to learn it. `tests/vectors/folded_band.csv` has
/// hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::band::folded_band;
/// let band = folded_band(25.0, 10.0, 2.0, 0.0)?;
/// assert_eq!((band.cut_width, band.fold_line, band.inner), (72.0, 36.0, 36.0));
/// assert_eq!(folded_band(0.0, 10.0, 2.0, 0.0).unwrap_err().argument(), "depth");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn folded_band(depth: f64, allowance: f64, turn: f64, past: f64) -> Result<FoldedBand, Error> {
    let depth = Error::check("depth", depth, 1.0, 1e4)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let turn = Error::check("turn", turn, 0.0, 100.0)?;
    let past = Error::check("past", past, 0.0, 100.0)?;
    let outer = allowance + depth + turn / 2.0;
    Ok(FoldedBand {
        cut_width: 2.0 * outer + past,
        fold_line: outer,
        inner: outer + past,
    })
}

/// A band cut as part of a ring.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ShapedBand {
    /// Radius of the upper, shorter edge (mm).
    pub inner_radius: f64,
    /// Radius of the lower, longer edge (mm).
    pub outer_radius: f64,
    /// Angle of the sector (deg).
    pub angle_deg: f64,
    /// Height of the lower edge's arc above the straight line between its ends (mm).
    pub sagitta: f64,
    /// Area of the band (mm2).
    pub area_mm2: f64,
}

/// Part of a ring for a shaped band, or for any cone or frustum.
///
/// `outer_radius = lower · depth / (lower - upper)`, `inner_radius = outer_radius - depth`, angle in radians
/// `(lower - upper) / depth`. For a straight band there is no such ring: see [`straight_band`]. A band that flares
/// upwards is the same ring turned over: give its longer edge as `lower`.
///
/// | argument | unit | range            | default | meaning                                                 |
/// |----------|------|------------------|---------|---------------------------------------------------------|
/// | `lower`  | mm   | 1..=1e5          | -       | finished length of the lower edge                       |
/// | `upper`  | mm   | 0..=1e5, < lower | -       | finished length of the upper edge                       |
/// | `depth`  | mm   | 1..=1e4          | -       | from edge to edge, measured along the cloth             |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `upper` when it is not below `lower`, or so far
/// below that the sector would be more than a full ring.
///
/// # Source
/// Unrolled frustum: E. M. Longfield, *Sheet Metal Drafting*, 1921 (slant height, area by the mean of the two
/// circumferences); `tests/vectors/shaped_band.csv` has published and hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::band::shaped_band;
/// let band = shaped_band(700.0, 676.0, 50.0)?;
/// assert!((band.outer_radius - 1458.33).abs() < 0.01);
/// assert!((band.angle_deg - 27.50).abs() < 0.01);
/// assert_eq!(shaped_band(700.0, 700.0, 50.0).unwrap_err().argument(), "upper");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn shaped_band(lower: f64, upper: f64, depth: f64) -> Result<ShapedBand, Error> {
    let lower = Error::check("lower", lower, 1.0, 1e5)?;
    let upper = Error::check("upper", upper, 0.0, 1e5)?;
    let depth = Error::check("depth", depth, 1.0, 1e4)?;
    let ring = Ring::new("upper", lower, upper, depth)?;
    Ok(ShapedBand {
        inner_radius: ring.inner,
        outer_radius: ring.outer,
        angle_deg: ring.angle.to_degrees(),
        sagitta: ring.sagitta(lower),
        area_mm2: (lower + upper) / 2.0 * depth,
    })
}

/// Whether two edges differ by no more than the sum of a hundred sections may be rounded by.
#[inline]
fn same(lower: f64, upper: f64) -> bool {
    (lower - upper).abs() <= 1e-12 * lower
}

/// The part of a ring whose arcs are `lower` and `upper` long.
struct Ring {
    inner: f64,
    outer: f64,
    angle: f64,
}

impl Ring {
    fn new(argument: &'static str, lower: f64, upper: f64, depth: f64) -> Result<Ring, Error> {
        let angle = ((lower - upper) / depth).min(TAU);
        if same(lower, upper) || upper > lower || above(lower - upper, TAU * depth) {
            let least = lower - TAU * depth;
            let least = if least > 0.0 { least } else { f64::NAN };
            return Err(Error::no_solution(argument, upper, least, short_of(lower)));
        }
        // Not `outer - depth`, which would lose the last digits of a small inner radius.
        Ok(Ring {
            inner: upper * depth / (lower - upper),
            outer: lower * depth / (lower - upper),
            angle,
        })
    }

    /// Height of a piece of the lower edge over its chord: `R (1 - cos(arc / 2R))`, written without that difference,
    /// which loses all digits when the radius is large.
    fn sagitta(&self, arc: f64) -> f64 {
        let sine = libm::sin(arc / (4.0 * self.outer));
        2.0 * self.outer * sine * sine
    }
}

/// Which ends of a band in sections are cut square to the lower edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
#[repr(i32)]
pub enum SquareEnds {
    /// Neither end: the band closes in a ring, or both ends slant.
    Neither = 0,
    /// The first section's free end.
    First = 1,
    /// The last section's free end.
    Last = 2,
    /// Both free ends.
    Both = 3,
}

impl SquareEnds {
    const fn first(self) -> bool {
        matches!(self, SquareEnds::First | SquareEnds::Both)
    }

    const fn last(self) -> bool {
        matches!(self, SquareEnds::Last | SquareEnds::Both)
    }
}

/// A band of straight sections with slanted ends.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SectionedBand {
    /// What each slanted end takes from the upper edge; negative where the band flares (mm).
    pub slant: f64,
    /// Angle of a slanted end from the square (deg).
    pub end_angle_deg: f64,
    /// Kink at each join: a peak of the lower edge and a notch of the upper; 0 without a join (deg).
    pub join_kink_deg: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Upper edges of a band made of straight sections that slant at their joins.
///
/// What the upper edge is shorter by is shared by the slanted ends: `slant = (sum of lengths - top) / slanted ends`, at
/// the angle `atan(slant / depth)` from the square. At each join the lower edge peaks, and the upper edge notches, by
/// twice that angle, so the edges are trued to a curve or the band is cut curved ([`curved_band`]). A side seam runs on
/// straight into the band only if the end's angle equals the skirt's side seam's angle from the square at the waist. An
/// end that overlaps must be square.
///
/// | argument  | unit   | range                        | default | meaning                                        |
/// |-----------|--------|------------------------------|---------|------------------------------------------------|
/// | `lengths` | mm     | 1..=1e5 each, 1..=100 items  | -       | finished lower edge of each section, in order  |
/// | `depth`   | mm     | 1..=1e4                      | -       | finished depth, square to the lower edge       |
/// | `top`     | mm     | 1..=1e7                      | -       | finished upper edge of all sections together   |
/// | `ends`    | choice | -                            | -       | which free ends are square                     |
/// | `tops`    | mm     | out, as lengths              | -       | finished upper edge of each section            |
///
/// # Errors
/// `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `top` when one section has
/// both ends square and a different top; naming `lengths` when a section is shorter than its slants.
///
/// # Source
/// Plane geometry. `tests/vectors/sectioned_band.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::band::{SquareEnds, sectioned_band};
/// let mut tops = [0.0; 3];
/// let band = sectioned_band(&[140.0, 330.0, 230.0], 50.0, 676.0, SquareEnds::Both, &mut tops)?;
/// assert_eq!((band.slant, tops), (6.0, [134.0, 318.0, 224.0]));
/// assert!((band.join_kink_deg - 13.69).abs() < 0.005);
/// let error = sectioned_band(&[5.0, 695.0], 50.0, 676.0, SquareEnds::Both, &mut tops).unwrap_err();
/// assert_eq!(error.to_string(), "lengths[0] = 5 leaves no solution: it must be more than 19");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn sectioned_band(
    lengths: &[f64],
    depth: f64,
    top: f64,
    ends: SquareEnds,
    tops: &mut [f64],
) -> Result<SectionedBand, Error> {
    let lengths = Error::check_list("lengths", lengths, 1.0, 1e5, (1, 100))?;
    let depth = Error::check("depth", depth, 1.0, 1e4)?;
    let top = Error::check("top", top, 1.0, 1e7)?;
    Error::check_room("tops", tops.len(), lengths.len())?;

    let bottom: f64 = lengths.iter().sum();
    let square = u32::from(ends.first()) + u32::from(ends.last());
    let slanted = 2.0 * lengths.len() as f64 - f64::from(square);
    let slant = if same(bottom, top) {
        0.0
    } else if slanted > 0.0 {
        (bottom - top) / slanted
    } else {
        return Err(Error::no_solution("top", top, bottom, bottom));
    };
    let last = lengths.len() - 1;
    let slanted_of = |index: usize| {
        let first = !(index == 0 && ends.first());
        let last = !(index == last && ends.last());
        f64::from(u32::from(first) + u32::from(last))
    };
    for (index, &length) in lengths.iter().enumerate() {
        let own = slanted_of(index);
        if length <= own * slant {
            // A longer section has more to lose, of which its own ends take their part.
            let least = own * (bottom - length - top) / (slanted - own);
            return Err(
                Error::no_solution("lengths", length, past(least), f64::NAN).at_index(index)
            );
        }
    }
    for (index, (place, &length)) in tops.iter_mut().zip(lengths).enumerate() {
        *place = length - slanted_of(index) * slant;
    }
    let end_angle_deg = libm::atan2(slant, depth).to_degrees();
    Ok(SectionedBand {
        slant,
        end_angle_deg,
        join_kink_deg: if last > 0 { 2.0 * end_angle_deg } else { 0.0 },
        doubts: if slant < 0.0 { BAND_FLARED } else { 0 },
    })
}

/// A band in sections whose edges are arcs about one centre.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CurvedBand {
    /// Radius of the upper, shorter edge (mm).
    pub inner_radius: f64,
    /// Radius of the lower, longer edge (mm).
    pub outer_radius: f64,
    /// Angle of all sections together (deg).
    pub angle_deg: f64,
    /// Height of the longest section's lower arc above the straight line between its ends (mm).
    pub sagitta: f64,
}

/// Upper edges of a band in sections, each cut as an arc, so that the joins have no kink.
///
/// All sections are parts of one ring with `outer_radius = bottom · depth / (bottom - top)`, where `bottom` is the sum of
/// the lengths; each top is its length times `top / bottom`. Every end lies on a radius, square to both edges; an end
/// that overlaps is a piece of its own.
///
/// | argument  | unit | range                       | default | meaning                                       |
/// |-----------|------|-----------------------------|---------|-----------------------------------------------|
/// | `lengths` | mm   | 1..=1e5 each, 1..=100 items | -       | finished lower edge of each section, in order |
/// | `depth`   | mm   | 1..=1e4                     | -       | finished depth, along the radius              |
/// | `top`     | mm   | 1..=1e7                     | -       | finished upper edge of all sections together  |
/// | `tops`    | mm   | out, as lengths             | -       | finished upper edge of each section           |
///
/// # Errors
/// `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `top` when it is not below the
/// sum of the lengths, or so far below that the sections would be more than a full ring.
///
/// # Source
/// Arc length of a sector. `tests/vectors/curved_band.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::band::curved_band;
/// let mut tops = [0.0; 3];
/// let band = curved_band(&[140.0, 330.0, 230.0], 50.0, 676.0, &mut tops)?;
/// assert!((tops[1] - 318.7).abs() < 0.05 && (band.sagitta - 9.32).abs() < 0.01);
/// assert_eq!(curved_band(&[350.0; 2], 50.0, 700.0, &mut tops).unwrap_err().argument(), "top");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn curved_band(
    lengths: &[f64],
    depth: f64,
    top: f64,
    tops: &mut [f64],
) -> Result<CurvedBand, Error> {
    let lengths = Error::check_list("lengths", lengths, 1.0, 1e5, (1, 100))?;
    let depth = Error::check("depth", depth, 1.0, 1e4)?;
    let top = Error::check("top", top, 1.0, 1e7)?;
    Error::check_room("tops", tops.len(), lengths.len())?;
    let bottom: f64 = lengths.iter().sum();
    let ring = Ring::new("top", bottom, top, depth)?;
    for (place, &length) in tops.iter_mut().zip(lengths) {
        *place = length * top / bottom;
    }
    let longest = lengths.iter().copied().fold(0.0, f64::max);
    Ok(CurvedBand {
        inner_radius: ring.inner,
        outer_radius: ring.outer,
        angle_deg: ring.angle.to_degrees(),
        sagitta: ring.sagitta(longest),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const ENDS: [SquareEnds; 4] = [
        SquareEnds::Neither,
        SquareEnds::First,
        SquareEnds::Last,
        SquareEnds::Both,
    ];

    #[test]
    fn depth_of_the_strip_comes_back() {
        for make in [BandMake::Folded, BandMake::Faced] {
            let band = straight_band(710.0, 30.0, 42.0, 12.0, 1.5, make).unwrap();
            assert_eq!(
                straight_band_depth(band.cut_width, 12.0, 1.5, make),
                Ok(42.0)
            );
        }
    }

    #[test]
    fn both_ways_to_a_folded_band_agree() {
        for (depth, allowance, turn, past) in [(25.0, 10.0, 2.0, 0.0), (31.75, 15.875, 1.5, 3.0)] {
            let band = folded_band(depth, allowance, turn, past).unwrap();
            let strip =
                straight_band(710.0, 30.0, depth, allowance, turn, BandMake::Folded).unwrap();
            approx::assert_abs_diff_eq!(band.cut_width, strip.cut_width + past, epsilon = 1e-12);
            approx::assert_abs_diff_eq!(
                band.fold_line + band.inner,
                band.cut_width,
                epsilon = 1e-12
            );
            let back =
                straight_band_depth(band.cut_width - past, allowance, turn, BandMake::Folded);
            approx::assert_abs_diff_eq!(back.unwrap(), depth, epsilon = 1e-12);
        }
    }

    #[test]
    fn ring_has_the_edges_asked_for() {
        let band = shaped_band(700.0, 676.0, 50.0).unwrap();
        let turn = band.angle_deg.to_radians();
        approx::assert_abs_diff_eq!(band.outer_radius * turn, 700.0, epsilon = 1e-9);
        approx::assert_abs_diff_eq!(band.inner_radius * turn, 676.0, epsilon = 1e-9);
        approx::assert_abs_diff_eq!(band.outer_radius - band.inner_radius, 50.0, epsilon = 1e-9);
    }

    #[test]
    fn tops_add_up_to_the_top_wherever_ends_are_square() {
        let lengths = [140.0, 330.0, 230.0];
        for ends in ENDS {
            let mut tops = [0.0; 3];
            sectioned_band(&lengths, 50.0, 676.0, ends, &mut tops).unwrap();
            approx::assert_abs_diff_eq!(tops.iter().sum::<f64>(), 676.0, epsilon = 1e-9);
            curved_band(&lengths, 50.0, 676.0, &mut tops).unwrap();
            approx::assert_abs_diff_eq!(tops.iter().sum::<f64>(), 676.0, epsilon = 1e-9);
        }
    }

    #[test]
    fn one_section_with_square_ends_is_a_rectangle_or_nothing() {
        let mut tops = [0.0];
        assert!(sectioned_band(&[700.0], 50.0, 700.0, SquareEnds::Both, &mut tops).is_ok());
        assert_eq!(tops, [700.0]);
        let error = sectioned_band(&[700.0], 50.0, 690.0, SquareEnds::Both, &mut tops).unwrap_err();
        assert_eq!((error.argument(), error.min()), ("top", 700.0));
    }

    #[test]
    fn nothing_is_written_on_an_error() {
        let mut tops = [-1.0; 2];
        assert!(sectioned_band(&[350.0; 3], 50.0, 676.0, SquareEnds::Both, &mut tops).is_err());
        assert!(sectioned_band(&[695.0, 5.0], 50.0, 676.0, SquareEnds::Both, &mut tops).is_err());
        assert!(curved_band(&[350.0; 2], 50.0, 700.0, &mut tops).is_err());
        assert_eq!(tops, [-1.0; 2]);
    }

    #[test]
    fn what_an_error_asks_for_would_do() {
        let depth = |allowance| straight_band_depth(50.0, allowance, 2.0, BandMake::Folded);
        let largest = depth(40.0).unwrap_err().max();
        assert!(depth(largest).is_ok() && depth(largest + 1e-6).is_err());
        let band = |upper| shaped_band(700.0, upper, 50.0);
        let least = band(1.0).unwrap_err().min();
        assert!(band(least).is_ok() && band(least - 1e-6).is_err());
        let largest = band(710.0).unwrap_err().max();
        assert!(band(largest).is_ok() && band(largest + 1e-6).is_err());
        // Where even a cone fits, there is no least.
        assert!(shaped_band(300.0, 310.0, 50.0).unwrap_err().min().is_nan());
        let mut tops = [0.0; 2];
        let mut section =
            |length| sectioned_band(&[length, 695.0], 50.0, 676.0, SquareEnds::Both, &mut tops);
        let least = section(5.0).unwrap_err().min();
        assert!(section(least).is_ok() && section(least - 1e-6).is_err());
    }
}
