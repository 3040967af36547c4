//! Darts.

use crate::Error;
use crate::doubt::{DART_FLAT, DART_LONG, DART_WIDE, DARTS_CLOSE, when};
use crate::dust::{above, below};
use crate::fullness::ratio_doubts;
use crate::hypotenuse::hypotenuse;

/// The widest single dart without a doubt (mm): 1 1/4 in, common practice, no source.
const WIDE: f64 = 32.0;
/// The longest dart without a doubt (mm): 7 in, the hip line below the waist (Butterick, *The New Dressmaker*, 1921).
const LONG: f64 = 178.0;
/// The least distance between two darts without a doubt (mm): common practice, no source.
const CLOSE: f64 = 25.0;

/// A dart with two equal legs.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Dart {
    /// Length of each leg, edge to point (mm).
    pub leg: f64,
    /// Angle at the point, which is also the kink of a straight edge when the dart is closed (deg).
    pub angle_deg: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Leg and angle of a dart from its intake and the length of its centre line.
///
/// `leg = √((intake / 2)² + length²)` and `angle = 2 · atan(intake / (2 · length))`.
///
/// A dart wider than it is long is doubted: the two may have changed places.
///
/// | argument | unit | range    | default | meaning                                            |
/// |----------|------|----------|---------|----------------------------------------------------|
/// | `intake` | mm   | 0..=1e4  | -       | width taken up at the edge                         |
/// | `length` | mm   | 1..=1e4  | -       | edge to point along the middle of the dart, not the leg |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Plane geometry. `tests/vectors/dart.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::dart::dart;
/// let hip_dart = dart(30.0, 110.0)?;
/// assert!((hip_dart.angle_deg - 15.53).abs() < 0.005);
/// assert!((hip_dart.leg - 111.02).abs() < 0.005);
/// assert_eq!(dart(30.0, 0.0).unwrap_err().argument(), "length");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn dart(intake: f64, length: f64) -> Result<Dart, Error> {
    let intake = Error::check("intake", intake, 0.0, 1e4)?;
    let length = Error::check("length", length, 1.0, 1e4)?;
    Ok(legs(intake, length))
}

#[inline]
fn legs(intake: f64, length: f64) -> Dart {
    let half = intake / 2.0;
    Dart {
        leg: hypotenuse(half, length),
        angle_deg: 2.0 * libm::atan2(half, length).to_degrees(),
        doubts: when(above(intake, length), DART_FLAT),
    }
}

/// Darts that bring a given panel to a wanted width, and what is left for the side seam.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct DartInPanel {
    /// Intake of each dart (mm).
    pub intake_each: f64,
    /// Width still to be taken, at the side seam (mm).
    pub leftover: f64,
    /// Length of each leg (mm).
    pub leg: f64,
    /// Kink of the straight edge at each closed dart; the edge is trued there before cutting (deg).
    pub kink_deg: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Darts that bring a panel there is to the width wanted.
///
/// The panel's own width leads, not the difference of two body measures: what must go is `panel_width - wanted_width`,
/// shared evenly by the darts but no more than `largest_intake` each; the rest goes to the side seam.
/// `kink = 2 · atan(intake / (2 · length))`.
///
/// | argument         | unit  | range                   | default | meaning                                  |
/// |------------------|-------|-------------------------|---------|------------------------------------------|
/// | `panel_width`    | mm    | 1..=1e5                 | -       | width there is at the edge, between seam lines |
/// | `wanted_width`   | mm    | 1..=1e5, <= panel_width | -       | finished width at the edge, ease included |
/// | `count`          | count | 1..=16                  | -       | number of darts                          |
/// | `largest_intake` | mm    | 0..=1e4                 | -       | the most that one dart may take          |
/// | `length`         | mm    | 1..=1e4                 | -       | edge to point along the middle of a dart |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `wanted_width` when the panel is narrower than
/// that: it must be pieced or let out.
///
/// # Source
/// Arithmetic and plane geometry. The limits behind the doubts: `DART_LONG` Butterick, *The New Dressmaker*, 1921 (hip
/// line 7 in below the waist); `DART_WIDE` and `DARTS_CLOSE` common practice, no source.
///
/// # Examples
/// ```
/// use recloth::dart::dart_in_panel;
/// let one = dart_in_panel(242.0, 190.0, 1, 30.0, 110.0)?;
/// assert_eq!((one.intake_each, one.leftover), (30.0, 22.0));
/// let two = dart_in_panel(242.0, 190.0, 2, 30.0, 110.0)?;
/// assert_eq!((two.intake_each, two.leftover), (26.0, 0.0));
/// let narrow = dart_in_panel(180.0, 190.0, 1, 30.0, 110.0).unwrap_err();
/// assert_eq!((narrow.argument(), narrow.max()), ("wanted_width", 180.0));
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn dart_in_panel(
    panel_width: f64,
    wanted_width: f64,
    count: u32,
    largest_intake: f64,
    length: f64,
) -> Result<DartInPanel, Error> {
    let panel_width = Error::check("panel_width", panel_width, 1.0, 1e5)?;
    let wanted_width = Error::check("wanted_width", wanted_width, 1.0, 1e5)?;
    let count = Error::check_count("count", count, 1, 16)?;
    let largest_intake = Error::check("largest_intake", largest_intake, 0.0, 1e4)?;
    let length = Error::check("length", length, 1.0, 1e4)?;
    if above(wanted_width, panel_width) {
        return Err(Error::no_solution(
            "wanted_width",
            wanted_width,
            1.0,
            panel_width,
        ));
    }
    let darts = f64::from(count);
    let surplus = (panel_width - wanted_width).max(0.0);
    let each = surplus / darts;
    let (intake_each, leftover) = if above(each, largest_intake) {
        (largest_intake, surplus - darts * largest_intake)
    } else {
        (each.min(largest_intake), 0.0)
    };
    let Dart {
        leg,
        angle_deg,
        mut doubts,
    } = legs(intake_each, length);
    if above(intake_each, WIDE) {
        doubts |= DART_WIDE;
    }
    if above(length, LONG) {
        doubts |= DART_LONG;
    }
    if count > 1 && below(wanted_width / (darts + 1.0), CLOSE) {
        doubts |= DARTS_CLOSE;
    }
    Ok(DartInPanel {
        intake_each,
        leftover,
        leg,
        kink_deg: angle_deg,
        doubts,
    })
}

/// Intake of a dart that is turned about its point to an edge at another distance.
///
/// Turning keeps the angle, so the intake grows with the leg: `intake · new_leg / leg`.
///
/// | argument  | unit | range    | default | meaning                                        |
/// |-----------|------|----------|---------|------------------------------------------------|
/// | `intake`  | mm   | 0..=1e4  | -       | width of the dart at the edge where it is now  |
/// | `leg`     | mm   | 1..=1e4  | -       | edge to point along the leg where it is now    |
/// | `new_leg` | mm   | 1..=1e4  | -       | edge to point along the leg in its new place   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `intake` when it is more than `2 · leg`: no
/// such dart closes.
///
/// # Returns
/// Width of the dart at the new edge (mm).
///
/// # Source
/// Similar triangles. `tests/vectors/dart_turned.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::dart::dart_turned;
/// assert_eq!(dart_turned(30.0, 120.0, 80.0)?, 20.0);
/// assert_eq!(dart_turned(300.0, 120.0, 80.0).unwrap_err().max(), 240.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn dart_turned(intake: f64, leg: f64, new_leg: f64) -> Result<f64, Error> {
    let intake = Error::check("intake", intake, 0.0, 1e4)?;
    let leg = Error::check("leg", leg, 1.0, 1e4)?;
    let new_leg = Error::check("new_leg", new_leg, 1.0, 1e4)?;
    if above(intake, 2.0 * leg) {
        return Err(Error::no_solution("intake", intake, 0.0, 2.0 * leg));
    }
    Ok(intake * new_leg / leg)
}

/// A dart with a point at each end, widest between them.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct DoubleDart {
    /// Length of each upper leg (mm).
    pub upper_leg: f64,
    /// Length of each lower leg (mm).
    pub lower_leg: f64,
    /// Angle at the upper point (deg).
    pub upper_angle_deg: f64,
    /// Angle at the lower point (deg).
    pub lower_angle_deg: f64,
    /// How far each leg turns where the dart is widest, where its fold is snipped (deg).
    pub bend_deg: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Legs and angles of a dart with a point at each end, as at the waist of a dress.
///
/// Each half is a dart of its own: `leg = √((intake / 2)² + length²)`, `angle = 2 · atan(intake / (2 · length))`. Where
/// the two meet each leg turns by half the sum of the two angles; the fold of the sewn dart is snipped there, or it
/// pulls. The upper and lower legs need not be alike, but the two legs of one half must be, or the side seams hang askew.
///
/// | argument | unit | range   | default | meaning                                          |
/// |----------|------|---------|---------|--------------------------------------------------|
/// | `intake` | mm   | 0..=1e4 | -       | width taken up where the dart is widest          |
/// | `upper`  | mm   | 1..=1e4 | -       | from there to the upper point, along the middle  |
/// | `lower`  | mm   | 1..=1e4 | -       | from there to the lower point, along the middle  |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Plane geometry. The limits behind the doubts are those of [`dart_in_panel`]; `DART_LONG` asks after `lower`, which
/// runs from the waist to the hip. `tests/vectors/double_dart.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::dart::double_dart;
/// let waist = double_dart(25.0, 150.0, 120.0)?;
/// assert!((waist.bend_deg - 10.71).abs() < 0.005);
/// assert_eq!(double_dart(25.0, 0.0, 120.0).unwrap_err().argument(), "upper");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn double_dart(intake: f64, upper: f64, lower: f64) -> Result<DoubleDart, Error> {
    let intake = Error::check("intake", intake, 0.0, 1e4)?;
    let upper = Error::check("upper", upper, 1.0, 1e4)?;
    let lower = Error::check("lower", lower, 1.0, 1e4)?;
    let (higher, deeper) = (legs(intake, upper), legs(intake, lower));
    let mut doubts = higher.doubts | deeper.doubts;
    if above(intake, WIDE) {
        doubts |= DART_WIDE;
    }
    if above(lower, LONG) {
        doubts |= DART_LONG;
    }
    Ok(DoubleDart {
        upper_leg: higher.leg,
        lower_leg: deeper.leg,
        upper_angle_deg: higher.angle_deg,
        lower_angle_deg: deeper.angle_deg,
        bend_deg: (higher.angle_deg + deeper.angle_deg) / 2.0,
        doubts,
    })
}

/// A dart that takes up what an edge gapes.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct DartFromGape {
    /// Width of the dart at its own edge (mm).
    pub intake: f64,
    /// Angle at the point (deg).
    pub angle_deg: f64,
}

/// Dart that takes up the gape of an edge, turned to another edge.
///
/// Pin the gape to a fold that runs out at the bust point; a dart of the same angle elsewhere takes it:
/// `intake = gape · dart_leg / gape_distance`. A dart that is there already is widened by so much. Pin and count one
/// side only: a fold pinned over the middle is shared by both. The edge is afterwards shorter by the gape.
///
/// | argument        | unit | range   | default | meaning                                                |
/// |-----------------|------|---------|---------|--------------------------------------------------------|
/// | `gape`          | mm   | 0..=1e4 | -       | what is pinned out at the edge, on one side            |
/// | `gape_distance` | mm   | 1..=1e4 | -       | from there to the bust point                           |
/// | `dart_leg`      | mm   | 1..=1e4 | -       | bust point to the edge where the dart is to be         |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gape` when it is more than twice its distance.
///
/// # Source
/// Similar triangles; both distances are legs, from the bust point, although the sewn dart ends short of it.
/// `tests/vectors/dart_from_gape.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::dart::dart_from_gape;
/// assert_eq!(dart_from_gape(10.0, 180.0, 144.0)?.intake, 8.0);
/// assert_eq!(dart_from_gape(10.0, 0.0, 144.0).unwrap_err().argument(), "gape_distance");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn dart_from_gape(gape: f64, gape_distance: f64, dart_leg: f64) -> Result<DartFromGape, Error> {
    let gape = Error::check("gape", gape, 0.0, 1e4)?;
    let gape_distance = Error::check("gape_distance", gape_distance, 1.0, 1e4)?;
    let dart_leg = Error::check("dart_leg", dart_leg, 1.0, 1e4)?;
    if above(gape, 2.0 * gape_distance) {
        return Err(Error::no_solution("gape", gape, 0.0, 2.0 * gape_distance));
    }
    Ok(DartFromGape {
        intake: gape * dart_leg / gape_distance,
        angle_deg: 2.0 * libm::asin((gape / (2.0 * gape_distance)).min(1.0)).to_degrees(),
    })
}

/// Width of a dart between its point and its edge.
///
/// `width = intake · distance / leg`: what is lost there when the dart is closed, or gained when it is opened.
///
/// | argument   | unit | range           | default | meaning                                 |
/// |------------|------|-----------------|---------|-----------------------------------------|
/// | `intake`   | mm   | 0..=1e4         | -       | width of the dart at the edge           |
/// | `leg`      | mm   | 1..=1e4         | -       | edge to point along the leg             |
/// | `distance` | mm   | 0..=1e4, <= leg | -       | from the point along the leg            |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `intake` when it is more than `2 · leg`: no
/// such dart closes; naming `distance` when it is beyond the edge.
///
/// # Returns
/// Width of the dart there (mm).
///
/// # Source
/// Similar triangles. Straight legs only: a curved dart is narrower or wider than this between its ends.
/// `tests/vectors/dart_width_at.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::dart::dart_width_at;
/// assert_eq!(dart_width_at(26.0, 100.0, 50.0)?, 13.0);
/// assert_eq!(dart_width_at(26.0, 100.0, 120.0).unwrap_err().max(), 100.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn dart_width_at(intake: f64, leg: f64, distance: f64) -> Result<f64, Error> {
    let intake = Error::check("intake", intake, 0.0, 1e4)?;
    let leg = Error::check("leg", leg, 1.0, 1e4)?;
    let distance = Error::check("distance", distance, 0.0, 1e4)?;
    if above(intake, 2.0 * leg) {
        return Err(Error::no_solution("intake", intake, 0.0, 2.0 * leg));
    }
    if above(distance, leg) {
        return Err(Error::no_solution("distance", distance, 0.0, leg));
    }
    Ok(intake * (distance / leg))
}

/// What takes up as much of an edge as a dart does.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct DartEquivalent {
    /// Ease of the seam, if it is eased in (%).
    pub ease_pct: f64,
    /// Ratio of the gathers, if it is gathered (1).
    pub gather_ratio: f64,
    /// Depth of each tuck or pleat, if it is folded (mm).
    pub tuck_depth: f64,
    /// `GATHERS_SCANT` or `GATHERS_LARGE` when as gathers it would look like a mistake (bits).
    pub doubts: u64,
}

/// Ease, gathers or tucks that take up as much as a dart, along a stretch of its edge.
///
/// `ease = 100 · intake / finished`, `ratio = (finished + intake) / finished`, `depth = intake / (2 · tucks)`. They take
/// the same length of the edge, but not to the same point: ease and gathers give a soft fullness below, tucks are open
/// at their ends. Firm cloth eases in by some 4 to 6 %, soft wool by more: common practice, no source.
///
/// | argument   | unit  | range   | default | meaning                                                 |
/// |------------|-------|---------|---------|---------------------------------------------------------|
/// | `intake`   | mm    | 0..=1e4 | -       | width of the dart at the edge                           |
/// | `finished` | mm    | 1..=1e5 | -       | stretch of the edge that takes it, as it is to be sewn  |
/// | `tucks`    | count | 1..=100 | 1       | number of tucks or pleats                               |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic; tucks by L. I. Baldt, *Clothing for Women*, 1916 (twice the depth times the number). The doubt is
/// [`gathers`](crate::fullness::gathers)'s own, and on the gathers alone.
///
/// # Examples
/// ```
/// use recloth::{dart::dart_equivalent, doubt::GATHERS_SCANT};
/// let along_the_shoulder = dart_equivalent(12.0, 120.0, 2)?;
/// assert_eq!((along_the_shoulder.ease_pct, along_the_shoulder.tuck_depth), (10.0, 3.0));
/// assert_eq!(along_the_shoulder.doubts, GATHERS_SCANT);
/// assert_eq!(dart_equivalent(12.0, 0.0, 2).unwrap_err().argument(), "finished");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn dart_equivalent(intake: f64, finished: f64, tucks: u32) -> Result<DartEquivalent, Error> {
    let intake = Error::check("intake", intake, 0.0, 1e4)?;
    let finished = Error::check("finished", finished, 1.0, 1e5)?;
    let tucks = f64::from(Error::check_count("tucks", tucks, 1, 100)?);
    let gather_ratio = (finished + intake) / finished;
    Ok(DartEquivalent {
        ease_pct: 100.0 * intake / finished,
        gather_ratio,
        tuck_depth: intake / (2.0 * tucks),
        doubts: ratio_doubts(gather_ratio),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_the_darts_and_the_side_take_is_what_must_go() {
        for count in 1..=16 {
            for largest in [0.0, 5.0, 12.5, 30.0, 400.0] {
                let panel = dart_in_panel(242.0, 190.0, count, largest, 110.0).unwrap();
                let taken = f64::from(count) * panel.intake_each + panel.leftover;
                approx::assert_abs_diff_eq!(taken, 52.0, epsilon = 1e-12);
                assert!(panel.intake_each <= largest && panel.leftover >= 0.0);
            }
        }
    }

    #[test]
    fn a_dart_turned_away_and_back_is_the_same() {
        let there = dart_turned(26.0, 100.0, 70.0).unwrap();
        approx::assert_abs_diff_eq!(there, 18.2, epsilon = 1e-12);
        let back = dart_turned(there, 70.0, 100.0).unwrap();
        approx::assert_abs_diff_eq!(back, 26.0, epsilon = 1e-12);
    }

    #[test]
    fn a_dart_of_twice_the_size_has_the_same_angle() {
        let (small, large) = (dart(30.0, 110.0).unwrap(), dart(60.0, 220.0).unwrap());
        assert_eq!(small.angle_deg, large.angle_deg);
        assert_eq!(2.0 * small.leg, large.leg);
    }

    #[test]
    fn a_double_dart_is_two_darts_on_one_base() {
        let double = double_dart(25.0, 150.0, 120.0).unwrap();
        assert_eq!(double.upper_leg, dart(25.0, 150.0).unwrap().leg);
        assert_eq!(double.lower_angle_deg, dart(25.0, 120.0).unwrap().angle_deg);
    }

    #[test]
    fn the_gape_turned_has_the_angle_of_the_fold() {
        let turned = dart_from_gape(10.0, 180.0, 144.0).unwrap();
        assert_eq!(turned.intake, dart_turned(10.0, 180.0, 144.0).unwrap());
        // A chord of 8 at 144 has the same angle as one of 10 at 180.
        let same = dart_from_gape(turned.intake, 144.0, 180.0).unwrap();
        approx::assert_abs_diff_eq!(same.angle_deg, turned.angle_deg, epsilon = 1e-12);
    }
}
