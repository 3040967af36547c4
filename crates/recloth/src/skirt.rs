//! Skirts cut from part of a ring.

use core::f64::consts::{FRAC_PI_2, PI, TAU};

use crate::Error;
use crate::body;
use crate::doubt::{CLOTH_NARROW, when};
use crate::dust::{above, below};

/// A skirt cut from part of a ring: where to set the compass, and how long the hem comes out.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CircleSkirt {
    /// Radius of the waist edge (mm).
    pub waist_radius: f64,
    /// Radius of the hem edge (mm).
    pub hem_radius: f64,
    /// Length of the hem edge (mm).
    pub hem_length: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Radii of a skirt cut from part of a ring.
///
/// The waist edge is an arc: `waist = 2π · fraction · waist_radius`. A fraction above 1 is made of several sectors.
///
/// The waist is doubted as [`girth_doubts`](crate::body::girth_doubts) does, the length as
/// [`body_length_doubts`](crate::body::body_length_doubts): 71 may be in centimetres.
///
/// | argument   | unit | range     | default | meaning                                        |
/// |------------|------|-----------|---------|------------------------------------------------|
/// | `waist`    | mm   | 1..=1e5   | -       | finished waist edge, ease included             |
/// | `length`   | mm   | 0..=1e5   | -       | waist edge to hem edge, no allowances          |
/// | `fraction` | 1    | 0.01..=4  | 1       | part of a full ring: 0.5 is a half circle      |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arc length of a sector. `tests/vectors/circle_skirt.csv` has published and hand-worked rows. Handed-down tables that
/// divide the girth by 7 rather than by 2π hide a seam allowance in the radius: a square-dance handout gives 4 in where a
/// girth of 28 in has 4.456, so 11.6 mm less. This function never does: take the allowance off the radius yourself.
///
/// # Examples
/// ```
/// use recloth::{skirt::circle_skirt, units::CM};
/// let skirt = circle_skirt(71.0 * CM, 60.0 * CM, 0.5)?;
/// assert!((skirt.waist_radius - 226.0).abs() < 0.01);
/// assert!((skirt.hem_length - 2595.0).abs() < 0.1);
/// assert_eq!(circle_skirt(f64::NAN, 600.0, 1.0).unwrap_err().argument(), "waist");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn circle_skirt(waist: f64, length: f64, fraction: f64) -> Result<CircleSkirt, Error> {
    let waist = Error::check("waist", waist, 1.0, 1e5)?;
    let length = Error::check("length", length, 0.0, 1e5)?;
    let fraction = Error::check("fraction", fraction, 0.01, 4.0)?;
    Ok(ring_part(waist, length, fraction))
}

#[inline]
fn ring_part(waist: f64, length: f64, fraction: f64) -> CircleSkirt {
    let turn = TAU * fraction;
    let waist_radius = waist / turn;
    let hem_radius = waist_radius + length;
    CircleSkirt {
        waist_radius,
        hem_radius,
        hem_length: turn * hem_radius,
        // A skirt of no length is a question, not a slip.
        doubts: body::trunk(waist) | when(above(length, 0.0), body::along_body(length)),
    }
}

/// A skirt cut from part of a ring, in equal pieces, from cloth of a given width.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CircleSkirtOnCloth {
    /// Part of a full ring (1).
    pub fraction: f64,
    /// Waist edge to hem edge (mm).
    pub length: f64,
    /// Radius of the waist edge (mm).
    pub waist_radius: f64,
    /// Radius of the hem edge (mm).
    pub hem_radius: f64,
    /// Length of the hem edge, all pieces together (mm).
    pub hem_length: f64,
    /// Angle of one piece (deg).
    pub piece_angle_deg: f64,
    /// Cloth one piece takes along the grain (mm).
    pub cloth_length: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

impl CircleSkirtOnCloth {
    fn new(
        waist: f64,
        length: f64,
        fraction: f64,
        cloth_width: f64,
        pieces: f64,
    ) -> CircleSkirtOnCloth {
        let skirt = ring_part(waist, length, fraction);
        let angle = TAU * fraction / pieces;
        CircleSkirtOnCloth {
            fraction,
            length,
            waist_radius: skirt.waist_radius,
            hem_radius: skirt.hem_radius,
            hem_length: skirt.hem_length,
            piece_angle_deg: angle.to_degrees(),
            cloth_length: along(angle, skirt.waist_radius, skirt.hem_radius),
            doubts: skirt.doubts | when(cloth_width < 200.0, CLOTH_NARROW),
        }
    }
}

/// Width of cloth that one piece takes, for a hem radius of 1. How it lies is told at `circle_skirt_longest`.
#[inline]
fn across(angle: f64) -> f64 {
    if angle < FRAC_PI_2 {
        libm::sin(angle)
    } else if angle <= PI {
        1.0
    } else {
        1.0 - libm::cos(angle / 2.0)
    }
}

/// Length of cloth that one piece takes, lying as for `across`.
#[inline]
fn along(angle: f64, waist_radius: f64, hem_radius: f64) -> f64 {
    if angle < FRAC_PI_2 {
        hem_radius - waist_radius * libm::cos(angle)
    } else if angle <= PI {
        hem_radius * (1.0 - libm::cos(angle))
    } else {
        2.0 * hem_radius
    }
}

/// Longest skirt of a given part of a ring that cloth of a given width allows.
///
/// The part of a ring is cut in equal pieces, sectors of `angle = 360° · fraction / pieces`. A piece up to a half ring
/// lies with one straight edge along the selvedge and takes, of the width, `hem_radius · sin(angle)` up to a quarter
/// ring and `hem_radius` from there to a half ring. A larger piece lies with its middle straight across the cloth and
/// takes `hem_radius · (1 - cos(angle / 2))`: a full ring without a seam takes twice its hem radius. Folding changes
/// nothing: a full ring cut through four layers is one piece, and `cloth_width` is the width before folding.
///
/// Other ways to lay a piece may save cloth but turn its grain, and pieces may be nested: these are not counted. Seam
/// and hem allowances are the caller's: take them off the cloth's width first.
///
/// Doubts as for [`circle_skirt`], and on cloth narrower than 200 mm.
///
/// | argument      | unit  | range              | default | meaning                                             |
/// |---------------|-------|--------------------|---------|-----------------------------------------------------|
/// | `waist`       | mm    | 1..=1e5            | -       | finished waist edge, ease included                  |
/// | `fraction`    | 1     | 0.01..=4, <= pieces | -      | part of a full ring: 0.5 is a half circle           |
/// | `cloth_width` | mm    | 1..=1e5            | -       | width between the selvedges, less allowances        |
/// | `pieces`      | count | 1..=64             | 2       | equal pieces the part of a ring is cut in           |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `fraction` when one piece would be more than a
/// full ring; naming `cloth_width` when the waist edge alone is wider than the cloth.
///
/// # Source
/// Plane geometry. `tests/vectors/circle_skirt_longest.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::skirt::circle_skirt_longest;
/// let two_quarters = circle_skirt_longest(710.0, 0.5, 1400.0, 2)?;
/// assert!((two_quarters.length - 1174.0).abs() < 0.01);
/// let whole_ring = circle_skirt_longest(710.0, 1.0, 1400.0, 1)?;
/// assert!((whole_ring.length - 587.0).abs() < 0.01);
/// assert_eq!(circle_skirt_longest(710.0, 1.0, 200.0, 1).unwrap_err().argument(), "cloth_width");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn circle_skirt_longest(
    waist: f64,
    fraction: f64,
    cloth_width: f64,
    pieces: u32,
) -> Result<CircleSkirtOnCloth, Error> {
    let waist = Error::check("waist", waist, 1.0, 1e5)?;
    let fraction = Error::check("fraction", fraction, 0.01, 4.0)?;
    let cloth_width = Error::check("cloth_width", cloth_width, 1.0, 1e5)?;
    let pieces = f64::from(Error::check_count("pieces", pieces, 1, 64)?);
    if fraction > pieces {
        return Err(Error::no_solution("fraction", fraction, 0.01, pieces));
    }
    let waist_radius = waist / (TAU * fraction);
    let across = across(TAU * fraction / pieces);
    let length = cloth_width / across - waist_radius;
    if below(length, 0.0) {
        return Err(Error::no_solution(
            "cloth_width",
            cloth_width,
            waist_radius * across,
            f64::NAN,
        ));
    }
    let length = length.max(0.0);
    Ok(CircleSkirtOnCloth::new(
        waist,
        length,
        fraction,
        cloth_width,
        pieces,
    ))
}

/// Largest part of a ring from which cloth of a given width gives a skirt of a given length.
///
/// The fullest skirt that fits, up to four full rings: pieces and their lay are those of [`circle_skirt_longest`], so
/// each piece's width across the cloth, `(waist / (2π · fraction) + length) · across(angle)`, is at most `cloth_width`.
/// There is no formula for the fraction; it is found by halving to the last bit, on the side that fits. A skirt that is
/// less full need not fit: a smaller fraction has a larger radius.
///
/// Doubts as for [`circle_skirt`], and on cloth narrower than 200 mm.
///
/// | argument      | unit  | range   | default | meaning                                        |
/// |---------------|-------|---------|---------|------------------------------------------------|
/// | `waist`       | mm    | 1..=1e5 | -       | finished waist edge, ease included             |
/// | `length`      | mm    | 0..=1e5 | -       | waist edge to hem edge, no allowances          |
/// | `cloth_width` | mm    | 1..=1e5 | -       | width between the selvedges, less allowances   |
/// | `pieces`      | count | 1..=64  | 2       | equal pieces the part of a ring is cut in      |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `cloth_width` when no part of a ring from 0.01
/// up fits; its `min` is the least width that would do.
///
/// # Source
/// Plane geometry. `tests/vectors/circle_skirt_fraction.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::skirt::circle_skirt_fraction;
/// // Two full rings would be 1313 mm wide, each from one piece.
/// assert_eq!(circle_skirt_fraction(710.0, 600.0, 1400.0, 2)?.fraction, 2.0);
/// let skirt = circle_skirt_fraction(710.0, 600.0, 900.0, 2)?;
/// assert!(skirt.fraction > 1.0 && skirt.fraction < 2.0);
/// assert_eq!(circle_skirt_fraction(710.0, 600.0, 200.0, 2).unwrap_err().argument(), "cloth_width");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn circle_skirt_fraction(
    waist: f64,
    length: f64,
    cloth_width: f64,
    pieces: u32,
) -> Result<CircleSkirtOnCloth, Error> {
    let waist = Error::check("waist", waist, 1.0, 1e5)?;
    let length = Error::check("length", length, 0.0, 1e5)?;
    let cloth_width = Error::check("cloth_width", cloth_width, 1.0, 1e5)?;
    let pieces = f64::from(Error::check_count("pieces", pieces, 1, 64)?);

    let width =
        |fraction: f64| (waist / (TAU * fraction) + length) * across(TAU * fraction / pieces);
    let fits = |fraction: f64| width(fraction) <= cloth_width;
    let nearly_fits = |fraction: f64| !above(width(fraction), cloth_width);
    // From a sliver to pieces of a half ring the width rises at most once and then falls, and so it does from there to
    // full rings. So on each stretch, where the fuller end does not fit and the other does, there is one crossing.
    let fullest = pieces.min(4.0);
    let half_rings = (pieces / 2.0).min(fullest);
    let sliver = 0.01;
    let fraction = if nearly_fits(fullest) {
        fullest
    } else if nearly_fits(half_rings) {
        last_that_fits(half_rings, fullest, fits)
    } else if nearly_fits(sliver) {
        last_that_fits(sliver, half_rings, fits)
    } else {
        let least = width(fullest).min(width(half_rings)).min(width(sliver));
        return Err(Error::no_solution(
            "cloth_width",
            cloth_width,
            least,
            f64::NAN,
        ));
    };
    Ok(CircleSkirtOnCloth::new(
        waist,
        length,
        fraction,
        cloth_width,
        pieces,
    ))
}

/// Halves the stretch between a value that fits and one that does not until no number lies between.
#[inline]
fn last_that_fits(good: f64, bad: f64, fits: impl Fn(f64) -> bool) -> f64 {
    let (mut good, mut bad) = (good, bad);
    loop {
        let middle = good + (bad - good) / 2.0;
        if middle <= good || middle >= bad {
            return good;
        }
        if fits(middle) {
            good = middle;
        } else {
            bad = middle;
        }
    }
}

/// Widths of a wrap skirt's parts.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WrapSkirt {
    /// Back at the waist, side seam to side seam (mm).
    pub back_waist: f64,
    /// Back at the hip (mm).
    pub back_hip: f64,
    /// Each front at the waist, side seam to its finished edge (mm).
    pub front_waist: f64,
    /// Each front at the hip (mm).
    pub front_hip: f64,
    /// Waist edge of all three parts, which is the length of its band without ties (mm).
    pub waist_edge: f64,
    /// How far each front reaches past the centre line, as a share of half a front (%).
    pub wrap_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Widths of a skirt with a back and two fronts that lap over each other.
///
/// A back of half the girth, and fronts of a quarter and half the overlap each: `front = girth / 4 + overlap / 2`. The
/// overlap runs straight down, the same at waist and hip; facings or hems of the two front edges are extra. The skirt
/// opens when a step spreads the hem by more than the overlap there, so sit and stride in it, pinned, before cutting. The
/// lap must equal that of the band, and of the bodice where there is one.
///
/// Waist and hip are doubted alone and together, as [`girth_doubts`](crate::body::girth_doubts) and
/// [`waist_hip_doubts`](crate::body::waist_hip_doubts) do.
///
/// | argument  | unit | range            | default | meaning                                         |
/// |-----------|------|------------------|---------|-------------------------------------------------|
/// | `waist`   | mm   | 1..=1e5          | -       | finished waist, ease included, darts closed     |
/// | `hip`     | mm   | 1..=1e5          | -       | finished hip, ease included                     |
/// | `overlap` | mm   | 0..=1e5, <= waist | -      | how far one front lies over the other           |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `overlap` when it goes more than once round.
///
/// # Source
/// Arithmetic. `tests/vectors/wrap_skirt.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::skirt::wrap_skirt;
/// let skirt = wrap_skirt(720.0, 1020.0, 240.0)?;
/// assert_eq!((skirt.back_waist, skirt.front_waist, skirt.front_hip), (360.0, 300.0, 375.0));
/// assert_eq!(skirt.waist_edge, 960.0);
/// assert_eq!(wrap_skirt(720.0, 1020.0, 800.0).unwrap_err().max(), 720.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn wrap_skirt(waist: f64, hip: f64, overlap: f64) -> Result<WrapSkirt, Error> {
    let waist = Error::check("waist", waist, 1.0, 1e5)?;
    let hip = Error::check("hip", hip, 1.0, 1e5)?;
    let overlap = Error::check("overlap", overlap, 0.0, 1e5)?;
    if above(overlap, waist) {
        return Err(Error::no_solution("overlap", overlap, 0.0, waist));
    }
    Ok(WrapSkirt {
        back_waist: waist / 2.0,
        back_hip: hip / 2.0,
        front_waist: waist / 4.0 + overlap / 2.0,
        front_hip: hip / 4.0 + overlap / 2.0,
        waist_edge: waist + overlap,
        wrap_pct: 200.0 * overlap / waist,
        doubts: body::skirt(waist, hip),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::INCH;

    #[test]
    fn a_table_that_divides_by_seven_is_not_this_skirt() {
        // A square-dance circle skirt handout: girth and radius in inches, girth / 7 rounded up to eighths.
        for (girth, radius) in [
            (25.0, 3.625),
            (28.0, 4.0),
            (35.0, 5.0),
            (42.0, 6.0),
            (49.0, 7.0),
        ] {
            let skirt = circle_skirt(girth * INCH, 600.0, 1.0).unwrap();
            assert!(skirt.waist_radius > (radius + 0.3) * INCH);
        }
    }

    #[test]
    fn longest_takes_the_whole_width_and_fraction_gives_it_back() {
        for pieces in [1, 2, 3, 8] {
            for fraction in [0.1, 0.26, 0.6, 0.75, 0.9] {
                let longest = circle_skirt_longest(710.0, fraction, 2400.0, pieces).unwrap();
                let angle = TAU * fraction / f64::from(pieces);
                approx::assert_abs_diff_eq!(
                    longest.hem_radius * across(angle),
                    2400.0,
                    epsilon = 1e-9
                );
                // Never less full than the skirt known to fit, a hair's breadth allowed.
                let back =
                    circle_skirt_fraction(710.0, longest.length * (1.0 - 1e-12), 2400.0, pieces)
                        .unwrap();
                assert!(back.fraction >= fraction);
                assert!(back.hem_radius * across(back.piece_angle_deg.to_radians()) < 2400.0001);
            }
        }
    }

    #[test]
    fn no_fuller_skirt_fits() {
        for pieces in [1, 2, 4, 12] {
            for cloth in [400.0, 700.0, 900.0, 1150.0, 1400.0, 1600.0] {
                let Ok(skirt) = circle_skirt_fraction(710.0, 600.0, cloth, pieces) else {
                    continue;
                };
                let fullest = f64::from(pieces).min(4.0);
                for step in 1..=200 {
                    let more = (fullest - skirt.fraction) * f64::from(step) / 200.0;
                    let fuller = skirt.fraction + more;
                    let angle = TAU * fuller / f64::from(pieces);
                    let width = (710.0 / (TAU * fuller) + 600.0) * across(angle);
                    assert!(more == 0.0 || width > cloth, "{pieces} {cloth} {fuller}");
                }
            }
        }
    }

    #[test]
    fn width_taken_has_no_step_where_the_lay_changes() {
        for angle in [FRAC_PI_2, PI] {
            let (before, after) = (angle - 1e-9, angle + 1e-9);
            approx::assert_abs_diff_eq!(across(before), across(after), epsilon = 1e-8);
            approx::assert_abs_diff_eq!(
                along(before, 0.4, 1.0),
                along(after, 0.4, 1.0),
                epsilon = 1e-8
            );
        }
    }

    #[test]
    fn the_width_an_error_asks_for_is_the_least_that_does() {
        for pieces in [1, 2, 5] {
            let longest = |cloth| circle_skirt_longest(710.0, 0.75, cloth, pieces);
            let least = longest(1.0).unwrap_err().min();
            assert!(longest(least).is_ok() && longest(least - 1e-6).is_err());
            for length in [0.0, 20.0, 600.0] {
                let fullest = |cloth| circle_skirt_fraction(710.0, length, cloth, pieces);
                let least = fullest(1.0).unwrap_err().min();
                assert!(fullest(least).is_ok() && fullest(least - 1e-6).is_err());
            }
        }
    }

    #[test]
    fn the_parts_of_a_wrap_skirt_go_round_and_lap() {
        let skirt = wrap_skirt(720.0, 1020.0, 240.0).unwrap();
        assert_eq!(skirt.back_waist + 2.0 * skirt.front_waist, 720.0 + 240.0);
        assert_eq!(skirt.back_hip + 2.0 * skirt.front_hip, 1020.0 + 240.0);
    }
}
