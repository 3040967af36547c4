//! Seams and hems: allowances on curves, turned hems, drawn and cut sizes, turning through, thread.

use core::f64::consts::{FRAC_PI_2, PI};

use crate::Error;
use crate::dust::{above, short_of};

/// Cloth that a curved hem has too much of when it is turned up.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HemOnCurve {
    /// What the raw edge is longer than the line it lies on when turned up (%).
    pub excess_pct: f64,
    /// The same over the whole hem, to be eased, shrunk or folded away (mm).
    pub excess: f64,
    /// Length of the raw edge before turning (mm).
    pub raw_edge: f64,
}

/// Fullness to ease into a hem that is turned up on a flared edge.
///
/// The raw edge lies at `radius + depth`; turned up it must lie at `radius - depth`. So it is too long by
/// `100 · 2 · depth / (radius - depth)` percent of where it lies, and over a hem of length `hem` by
/// `2 · depth · hem / radius`. Radius is that of the hem edge laid flat: [`circle_skirt`](crate::skirt::circle_skirt) or
/// [`arc_from_rise`](crate::arc::arc_from_rise) give it.
///
/// | argument | unit | range            | default | meaning                                       |
/// |----------|------|------------------|---------|-----------------------------------------------|
/// | `radius` | mm   | 1..=1e6          | -       | radius of the finished hem edge, laid flat    |
/// | `depth`  | mm   | 0..=1e4, < radius | -      | depth of the hem                              |
/// | `hem`    | mm   | 1..=1e6          | 1000    | length of the finished hem edge               |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when it reaches the centre.
///
/// # Source
/// Arcs about one centre. T. Johnson, *It's Fun to Sew a Cotton School Dress*, gives 1 1/2 in for a flared skirt and 1/4 in
/// or a rolled hem for a full circle, where by this sum (radius 761) 1/4 in leaves 1.7 % and 1 1/2 in would leave 10.5 %.
///
/// # Examples
/// ```
/// use recloth::seam::hem_on_curve;
/// let flared = hem_on_curve(840.0, 40.0, 2000.0)?;
/// assert_eq!(flared.excess_pct, 10.0);
/// assert!((flared.excess - 190.48).abs() < 0.005);
/// assert_eq!(hem_on_curve(40.0, 40.0, 2000.0).unwrap_err().argument(), "depth");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn hem_on_curve(radius: f64, depth: f64, hem: f64) -> Result<HemOnCurve, Error> {
    let radius = Error::check("radius", radius, 1.0, 1e6)?;
    let depth = Error::check("depth", depth, 0.0, 1e4)?;
    let hem = Error::check("hem", hem, 1.0, 1e6)?;
    if depth >= radius {
        return Err(Error::no_solution("depth", depth, 0.0, short_of(radius)));
    }
    Ok(HemOnCurve {
        excess_pct: 200.0 * depth / (radius - depth),
        excess: 2.0 * depth * hem / radius,
        raw_edge: hem * (radius + depth) / radius,
    })
}

/// Deepest hem on a flared edge that can still be eased in.
///
/// [`hem_on_curve`] the other way: `depth = radius · pct / (200 + pct)`.
///
/// | argument     | unit | range      | default | meaning                                              |
/// |--------------|------|------------|---------|------------------------------------------------------|
/// | `radius`     | mm   | 1..=1e6    | -       | radius of the finished hem edge, laid flat           |
/// | `excess_pct` | %    | 0..=100    | 5       | fullness that the cloth eases or shrinks away        |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Depth of the hem (mm).
///
/// # Source
/// Arcs about one centre. How much a cloth eases is habit: firm cotton some 3 to 5 %, wool that shrinks under steam 10 %
/// and more (common practice, no source); try a hand's breadth.
///
/// # Examples
/// ```
/// use recloth::seam::deepest_hem;
/// assert_eq!(deepest_hem(840.0, 10.0)?, 40.0);
/// assert_eq!(deepest_hem(0.0, 10.0).unwrap_err().argument(), "radius");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn deepest_hem(radius: f64, excess_pct: f64) -> Result<f64, Error> {
    let radius = Error::check("radius", radius, 1.0, 1e6)?;
    let excess_pct = Error::check("excess_pct", excess_pct, 0.0, 100.0)?;
    Ok(radius * excess_pct / (200.0 + excess_pct))
}

/// Snips or notches that let a curved allowance lie flat.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SnipSpacing {
    /// From snip to snip along the seam line (mm).
    pub spacing: f64,
    /// How far a straight fold between two snips leaves the curve (mm).
    pub flat: f64,
}

/// Distance between the snips of a curved seam allowance.
///
/// Turned under, an allowance along an inward curve such as a neckline is too short and each snip opens; along an
/// outward one it is too long and each notch cut out closes. Either way a stretch of seam `s` opens or closes by
/// `2 · allowance · s / radius` at the raw edge, so `spacing = opening · radius / (2 · allowance)`. A turned edge is
/// nearly straight between snips and leaves the curve there by `spacing² / (8 · radius)`. Staystitch first, snip to a
/// thread's breadth from it and no further. The blades are sharp: cut away from the hand that holds.
///
/// | argument    | unit | range     | default | meaning                                            |
/// |-------------|------|-----------|---------|----------------------------------------------------|
/// | `radius`    | mm   | 1..=1e6   | -       | radius of the seam line                            |
/// | `allowance` | mm   | 0.1..=1e3 | -       | seam allowance, after trimming                     |
/// | `opening`   | mm   | 0.1..=100 | 3       | how far a snip may open, or how wide a notch is    |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `opening` when the spacing would be more than a
/// quarter ring, where it would no longer be small.
///
/// # Source
/// Arcs about one centre; the opening of 3 mm is common practice, no source. `tests/vectors/snip_spacing.csv` has
/// hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::seam::snip_spacing;
/// let neck = snip_spacing(80.0, 10.0, 3.0)?;
/// assert_eq!(neck.spacing, 12.0);
/// assert_eq!(neck.flat, 0.225);
/// assert_eq!(snip_spacing(80.0, 0.0, 3.0).unwrap_err().argument(), "allowance");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn snip_spacing(radius: f64, allowance: f64, opening: f64) -> Result<SnipSpacing, Error> {
    let radius = Error::check("radius", radius, 1.0, 1e6)?;
    let allowance = Error::check("allowance", allowance, 0.1, 1e3)?;
    let opening = Error::check("opening", opening, 0.1, 100.0)?;
    let most = PI * allowance;
    if above(opening, most) {
        return Err(Error::no_solution("opening", opening, f64::NAN, most));
    }
    let spacing = opening * radius / (2.0 * allowance);
    Ok(SnipSpacing {
        spacing,
        flat: spacing * spacing / (8.0 * radius),
    })
}

/// Cloth for a turned hem.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TurnedHem {
    /// Hem allowance, from the finished edge to the raw edge (mm).
    pub allowance: f64,
    /// Length to cut, with that allowance and no other (mm).
    pub cut_length: f64,
}

/// Allowance and cut length for a hem that is turned up, its raw edge turned in.
///
/// `allowance = depth + turn_in + folds · roll`: two folds, or one where nothing is turned in. A hem of two equal turns,
/// as for sheer cloth, has `turn_in = depth`. The roll is the cloth that each fold takes by its thickness; fold a sample
/// to learn it.
///
/// | argument  | unit | range             | default | meaning                                                |
/// |-----------|------|-------------------|---------|--------------------------------------------------------|
/// | `length`  | mm   | 1..=1e5           | -       | finished length, upper edge or seam line to hem edge   |
/// | `depth`   | mm   | 0..=1e4           | -       | finished depth of the hem                              |
/// | `turn_in` | mm   | 0..=1e4, <= depth | 6       | turned in at the raw edge; 0 where it is overcast or bound |
/// | `roll`    | mm   | 0..=100           | 0       | cloth that each fold takes by its thickness            |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `turn_in` when it is deeper than the hem.
///
/// # Source
/// Arithmetic; a turn of 1/4 in by L. I. Baldt, *Clothing for Women*, 1916, "Simple Dress of Wool" (6 mm here). Depths are
/// habit, and authors differ: T. Johnson, *It's Fun to Sew a Cotton School Dress*, 2 to 3 in on moderate flare, 1 1/2 in on
/// more, 1/4 in or a rolled hem on a circle; bellasunshinedesigns.com 1 1/2 to 2 in straight, 1 1/2 A-line, 1 half circle, 1/2
/// circle. What a flare bears, [`hem_on_curve`] says.
///
/// # Examples
/// ```
/// use recloth::seam::turned_hem;
/// let hem = turned_hem(600.0, 40.0, 6.0, 0.0)?;
/// assert_eq!((hem.allowance, hem.cut_length), (46.0, 646.0));
/// assert_eq!(turned_hem(600.0, 5.0, 6.0, 0.0).unwrap_err().argument(), "turn_in");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn turned_hem(length: f64, depth: f64, turn_in: f64, roll: f64) -> Result<TurnedHem, Error> {
    let length = Error::check("length", length, 1.0, 1e5)?;
    let depth = Error::check("depth", depth, 0.0, 1e4)?;
    let turn_in = Error::check("turn_in", turn_in, 0.0, 1e4)?;
    let roll = Error::check("roll", roll, 0.0, 100.0)?;
    if above(turn_in, depth) {
        return Err(Error::no_solution("turn_in", turn_in, 0.0, depth));
    }
    let folds = if turn_in > 0.0 { 2.0 } else { 1.0 };
    let allowance = depth + turn_in + folds * roll;
    Ok(TurnedHem {
        allowance,
        cut_length: length + allowance,
    })
}

/// Finished and cut width of a drawn piece.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CutState {
    /// Width between the seam lines (mm).
    pub finished: f64,
    /// Width between the cut edges (mm).
    pub cut: f64,
}

/// Finished and cut width of a piece, from what its two edges are drawn as.
///
/// An edge drawn as cut line loses its allowance to the seam, one drawn as seam line has it added:
/// `finished = drawn - cut_edges · allowance`, `cut = drawn + (2 - cut_edges) · allowance`. Which of the two a drawing
/// shows is the costliest question of all: a drawn line taken for the other is wrong by two allowances a seam.
///
/// | argument    | unit  | range   | default | meaning                                            |
/// |-------------|-------|---------|---------|----------------------------------------------------|
/// | `drawn`     | mm    | 1..=1e5 | -       | width as drawn, edge to edge                       |
/// | `allowance` | mm    | 0..=1e3 | -       | seam allowance at each edge                        |
/// | `cut_edges` | count | 0..=2   | -       | how many of the two edges are drawn as cut line    |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when nothing is left between the
/// seams.
///
/// # Source
/// Arithmetic. How wide an allowance is, is habit, so there is no default: 5/8 in in home patterns (common practice, no
/// source), 1/2 in on straight seams and 1/4 in on curves in industry (course cards on ASTM D6193), 3/8 in in Butterick's
/// patterns of 1916, 1 in on the long seams of a wool bodice by L. I. Baldt, 1916. Taken for one another, a 1/4 and a 5/8 in
/// allowance are 3/4 in (19 mm) apart over the two edges of one piece. For a band folded along its middle see
/// [`straight_band_depth`](crate::band::straight_band_depth).
/// `tests/vectors/cut_state.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::seam::cut_state;
/// let strip = cut_state(50.0, 10.0, 2)?;
/// assert_eq!((strip.finished, strip.cut), (30.0, 50.0));
/// let half = cut_state(190.0, 10.0, 0)?;
/// assert_eq!((half.finished, half.cut), (190.0, 210.0));
/// assert_eq!(cut_state(20.0, 10.0, 2).unwrap_err().argument(), "allowance");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn cut_state(drawn: f64, allowance: f64, cut_edges: u32) -> Result<CutState, Error> {
    let drawn = Error::check("drawn", drawn, 1.0, 1e5)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let cut_edges = f64::from(Error::check_count("cut_edges", cut_edges, 0, 2)?);
    let finished = drawn - cut_edges * allowance;
    if !above(finished, 0.0) {
        let most = drawn / cut_edges;
        return Err(Error::no_solution(
            "allowance",
            allowance,
            0.0,
            short_of(most),
        ));
    }
    Ok(CutState {
        finished,
        cut: drawn + (2.0 - cut_edges) * allowance,
    })
}

/// A bundle of cloth that is to pass through an opening.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TurnThrough {
    /// Diameter of the bundle (mm).
    pub diameter: f64,
    /// Least flat width of an opening that it passes (mm).
    pub least_opening: f64,
    /// What the opening is wider than that; negative when the bundle does not pass (mm).
    pub spare: f64,
}

/// Whether a garment part can be turned right side out through an opening: an estimate.
///
/// The widest part, gathered in the hand, is a round bundle of its layers' section, of which cloth fills a share
/// `packing`: `diameter = √(4 · width · thickness / (π · packing))`. An opening of flat width `w` is `2 · w` round, and
/// passes it when `2 · w >= π · diameter`. Find the narrowest place on the way: a shoulder seam, a strap, the gap left in
/// a lining; and that there is a way: a ring closed on itself cannot be turned.
///
/// | argument    | unit | range     | default | meaning                                              |
/// |-------------|------|-----------|---------|------------------------------------------------------|
/// | `width`     | mm   | 1..=1e5   | -       | widest part that must pass, laid flat                |
/// | `thickness` | mm   | 0.01..=1e3 | -      | all its layers together, pressed                     |
/// | `opening`   | mm   | 1..=1e5   | -       | flat width of the narrowest place on the way         |
/// | `packing`   | 1    | 0.1..=1   | 0.5     | share of the bundle that is cloth                    |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Plane geometry; the packing of a half is a guess from memory, so the answer is an estimate: try with a scrap of as many
/// layers. `tests/vectors/turn_through.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::seam::turn_through;
/// let front = turn_through(250.0, 1.6, 60.0, 0.5)?;
/// assert!((front.diameter - 31.9).abs() < 0.05 && (front.least_opening - 50.1).abs() < 0.05);
/// assert!(turn_through(250.0, 1.6, 45.0, 0.5)?.spare < 0.0);
/// assert_eq!(turn_through(250.0, 0.0, 60.0, 0.5).unwrap_err().argument(), "thickness");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn turn_through(
    width: f64,
    thickness: f64,
    opening: f64,
    packing: f64,
) -> Result<TurnThrough, Error> {
    let width = Error::check("width", width, 1.0, 1e5)?;
    let thickness = Error::check("thickness", thickness, 0.01, 1e3)?;
    let opening = Error::check("opening", opening, 1.0, 1e5)?;
    let packing = Error::check("packing", packing, 0.1, 1.0)?;
    let diameter = libm::sqrt(4.0 * width * thickness / (PI * packing));
    let least_opening = FRAC_PI_2 * diameter;
    Ok(TurnThrough {
        diameter,
        least_opening,
        spare: opening - least_opening,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_deepest_hem_has_the_fullness_asked_for() {
        for pct in [0.5, 5.0, 12.0, 100.0] {
            let depth = deepest_hem(900.0, pct).unwrap();
            let hem = hem_on_curve(900.0, depth, 1000.0).unwrap();
            approx::assert_relative_eq!(hem.excess_pct, pct, max_relative = 1e-12);
            // The same in mm: what the raw edge has more than the line it comes to lie on.
            let line = 1000.0 * (900.0 - depth) / 900.0;
            approx::assert_abs_diff_eq!(hem.excess, hem.raw_edge - line, epsilon = 1e-9);
        }
    }

    #[test]
    fn the_widest_opening_is_a_quarter_ring() {
        let most = snip_spacing(80.0, 1.0, 50.0).unwrap_err().max();
        let spacing = snip_spacing(80.0, 1.0, most - 1e-9).unwrap().spacing;
        approx::assert_abs_diff_eq!(spacing, 80.0 * FRAC_PI_2, epsilon = 1e-6);
    }

    #[test]
    fn the_cut_width_drawn_again_gives_the_same_seam() {
        for edges in [0, 1, 2] {
            let first = cut_state(120.0, 12.0, edges).unwrap();
            let again = cut_state(first.cut, 12.0, 2).unwrap();
            assert_eq!(first, again);
        }
    }

    #[test]
    fn an_opening_of_the_least_width_has_nothing_to_spare() {
        let least = turn_through(250.0, 1.6, 60.0, 0.5).unwrap().least_opening;
        assert_eq!(turn_through(250.0, 1.6, least, 0.5).unwrap().spare, 0.0);
    }
}
