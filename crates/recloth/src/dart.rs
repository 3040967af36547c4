//! Darts.

use crate::Error;
use crate::doubt::{DART_LONG, DART_WIDE, DARTS_CLOSE};

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
}

/// Leg and angle of a dart from its intake and the length of its centre line.
///
/// `leg = √((intake / 2)² + length²)` and `angle = 2 · atan(intake / (2 · length))`.
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
pub fn dart(intake: f64, length: f64) -> Result<Dart, Error> {
    let intake = Error::check("intake", intake, 0.0, 1e4)?;
    let length = Error::check("length", length, 1.0, 1e4)?;
    Ok(legs(intake, length))
}

fn legs(intake: f64, length: f64) -> Dart {
    let half = intake / 2.0;
    Dart {
        leg: libm::hypot(half, length),
        angle_deg: 2.0 * libm::atan2(half, length).to_degrees(),
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
    pub doubts: u32,
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
    if wanted_width > panel_width {
        return Err(Error::no_solution(
            "wanted_width",
            wanted_width,
            1.0,
            panel_width,
        ));
    }
    let darts = f64::from(count);
    let surplus = panel_width - wanted_width;
    let each = surplus / darts;
    let (intake_each, leftover) = if each <= largest_intake {
        (each, 0.0)
    } else {
        (largest_intake, surplus - darts * largest_intake)
    };
    let Dart { leg, angle_deg } = legs(intake_each, length);
    let mut doubts = 0;
    if intake_each > WIDE {
        doubts |= DART_WIDE;
    }
    if length > LONG {
        doubts |= DART_LONG;
    }
    if count > 1 && wanted_width / (darts + 1.0) < CLOSE {
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
pub fn dart_turned(intake: f64, leg: f64, new_leg: f64) -> Result<f64, Error> {
    let intake = Error::check("intake", intake, 0.0, 1e4)?;
    let leg = Error::check("leg", leg, 1.0, 1e4)?;
    let new_leg = Error::check("new_leg", new_leg, 1.0, 1e4)?;
    if intake > 2.0 * leg {
        return Err(Error::no_solution("intake", intake, 0.0, 2.0 * leg));
    }
    Ok(intake * new_leg / leg)
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
}
