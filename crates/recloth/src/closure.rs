//! Buttonholes, buttons, loops and their spacing.

use core::f64::consts::PI;

use crate::Error;
use crate::doubt::{ELASTIC_BATH, HOLE_NEAR_SEAM, LOOP_LOOSE, LOOP_TIGHT, PITCH_UNEVEN};
use crate::dust::{above, below, past, short_of};

/// The least distance from the last hole to the end of its edge without a doubt (mm): common practice, no source.
const NEAR_SEAM: f64 = 12.0;
/// Two pitches that differ by more than this look uneven (mm): 1/8 in, a custom clothiers' judging standard.
const UNEVEN: f64 = 3.2;
/// A loop longer than needed by more than this opens by itself (mm): common practice, no source.
const LOOSE: f64 = 2.0;

/// Length of the slit for a flat button.
///
/// `slit = diameter + thickness + ease`. Authors differ on the ease: a machine manual has none, others add 3 mm (1/8 in)
/// for the cloth; a bound buttonhole needs none. For a square button use its diagonal as diameter. A ball needs half its
/// way round instead: wrap a strip of paper round it and halve that. Always try the button in a slit in a scrap of the
/// same layers before cutting: a slit cannot be made shorter.
///
/// | argument    | unit | range   | default | meaning                                  |
/// |-------------|------|---------|---------|------------------------------------------|
/// | `diameter`  | mm   | 1..=200 | -       | diameter of the button                   |
/// | `thickness` | mm   | 0..=100 | -       | thickness of the button at its thickest  |
/// | `ease`      | mm   | 0..=20  | 0       | extra for the thickness of the cloth     |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Length of the slit (mm).
///
/// # Source
/// Sewing-machine manual, models 5147/5144 (diameter and thickness). `tests/vectors/buttonhole.csv` has published rows.
///
/// # Examples
/// ```
/// use recloth::{closure::buttonhole, units::INCH};
/// assert_eq!(buttonhole(1.0 * INCH, 0.25 * INCH, 0.0)?, 1.25 * INCH);
/// assert_eq!(buttonhole(0.0, 3.0, 0.0).unwrap_err().argument(), "diameter");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn buttonhole(diameter: f64, thickness: f64, ease: f64) -> Result<f64, Error> {
    let diameter = Error::check("diameter", diameter, 1.0, 200.0)?;
    let thickness = Error::check("thickness", thickness, 0.0, 100.0)?;
    let ease = Error::check("ease", ease, 0.0, 20.0)?;
    Ok(diameter + thickness + ease)
}

/// The button for a slit there is, and how far a cross hole lets the front out.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ButtonForHole {
    /// Largest diameter of a flat button (mm).
    pub diameter: f64,
    /// How far the front is let out when a hole meant to start past the line is centred on it; negative lets it in (mm).
    pub creep: f64,
}

/// Largest flat button for a slit, and the creep of a cross hole.
///
/// `diameter = slit - thickness`. The button sits at the end of a cross hole: a hole that is centred on the line instead
/// of starting `start` beyond it lets the front out by `slit / 2 - start`. A hole that runs along the edge does not creep.
///
/// | argument    | unit | range            | default | meaning                                                  |
/// |-------------|------|------------------|---------|----------------------------------------------------------|
/// | `slit`      | mm   | 1..=300          | -       | length of the slit                                       |
/// | `thickness` | mm   | 0..=100, < slit  | -       | thickness of the button at its thickest                  |
/// | `start`     | mm   | 0..=300, <= slit | 3       | where a cross hole should start, past the line to the edge |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `thickness` or `start` when it is not within the
/// slit.
///
/// # Source
/// The buttonhole rule backwards; start of 3 mm (1/8 in) by a sewing-machine manual, model 1288.
/// `tests/vectors/button_for_hole.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::closure::button_for_hole;
/// let button = button_for_hole(22.0, 3.5, 3.0)?;
/// assert_eq!((button.diameter, button.creep), (18.5, 8.0));
/// assert_eq!(button_for_hole(3.0, 3.5, 3.0).unwrap_err().argument(), "thickness");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn button_for_hole(slit: f64, thickness: f64, start: f64) -> Result<ButtonForHole, Error> {
    let slit = Error::check("slit", slit, 1.0, 300.0)?;
    let thickness = Error::check("thickness", thickness, 0.0, 100.0)?;
    let start = Error::check("start", start, 0.0, 300.0)?;
    if thickness >= slit {
        return Err(Error::no_solution(
            "thickness",
            thickness,
            0.0,
            short_of(slit),
        ));
    }
    if above(start, slit) {
        return Err(Error::no_solution("start", start, 0.0, slit));
    }
    Ok(ButtonForHole {
        diameter: slit - thickness,
        creep: slit / 2.0 - start,
    })
}

/// The holes that stay on an edge that is shortened.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HolesLeft {
    /// Number of holes left (count).
    pub count: u32,
    /// Place of the last of them, from the same end as the first (mm).
    pub last: f64,
    /// From the last hole to the new end of the edge (mm).
    pub to_end: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Buttonholes left on an edge that is shortened.
///
/// `count = floor((edge - first) / pitch) + 1`.
///
/// | argument | unit | range           | default | meaning                                             |
/// |----------|------|-----------------|---------|-----------------------------------------------------|
/// | `edge`   | mm   | 1..=1e5         | -       | finished length of the edge after shortening        |
/// | `first`  | mm   | 0..=1e5, <= edge | -      | first hole from the end that stays                  |
/// | `pitch`  | mm   | 1..=1e5         | -       | from hole to hole                                   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `first` when it lies beyond the edge.
///
/// # Source
/// Arithmetic; the 12 mm behind the doubt are common practice, no source. `tests/vectors/holes_left.csv` has hand-worked
/// rows.
///
/// # Examples
/// ```
/// use recloth::closure::holes_left;
/// let holes = holes_left(610.0, 30.0, 90.0)?;
/// assert_eq!((holes.count, holes.last, holes.to_end), (7, 570.0, 40.0));
/// assert_eq!(holes_left(20.0, 30.0, 90.0).unwrap_err().argument(), "first");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn holes_left(edge: f64, first: f64, pitch: f64) -> Result<HolesLeft, Error> {
    let edge = Error::check("edge", edge, 1.0, 1e5)?;
    let first = Error::check("first", first, 0.0, 1e5)?;
    let pitch = Error::check("pitch", pitch, 1.0, 1e5)?;
    if above(first, edge) {
        return Err(Error::no_solution("first", first, 0.0, edge));
    }
    // Lengths given in inches may miss a whole number of pitches by a rounding.
    let steps = libm::floor((edge - first).max(0.0) / pitch * (1.0 + 1e-12));
    let last = first + steps * pitch;
    let to_end = (edge - last).max(0.0);
    Ok(HolesLeft {
        count: steps as u32 + 1,
        last,
        to_end,
        doubts: if below(to_end, NEAR_SEAM) {
            HOLE_NEAR_SEAM
        } else {
            0
        },
    })
}

/// Pitch of buttons or holes spaced evenly.
///
/// `pitch = (last - first) / (count - 1)`.
///
/// | argument | unit  | range           | default | meaning                                    |
/// |----------|-------|-----------------|---------|--------------------------------------------|
/// | `first`  | mm    | 0..=1e5         | -       | place of the first, from the edge's start  |
/// | `last`   | mm    | 0..=1e5, > first | -      | place of the last                          |
/// | `count`  | count | 2..=1000        | -       | how many                                   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `last` when it is not beyond `first`.
///
/// # Returns
/// From middle to middle of neighbours (mm).
///
/// # Source
/// Arithmetic. `tests/vectors/even_spacing.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::closure::even_spacing;
/// assert_eq!(even_spacing(30.0, 570.0, 7)?, 90.0);
/// assert_eq!(even_spacing(30.0, 30.0, 7).unwrap_err().argument(), "last");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn even_spacing(first: f64, last: f64, count: u32) -> Result<f64, Error> {
    let first = Error::check("first", first, 0.0, 1e5)?;
    let last = Error::check("last", last, 0.0, 1e5)?;
    let count = Error::check_count("count", count, 2, 1000)?;
    if last <= first {
        return Err(Error::no_solution("last", last, past(first), f64::NAN));
    }
    Ok((last - first) / f64::from(count - 1))
}

/// Buttons spaced through one fixed place.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SpacingThrough {
    /// From middle to middle before the fixed place (mm).
    pub pitch_before: f64,
    /// From middle to middle after the fixed place (mm).
    pub pitch_after: f64,
    /// Which of the places is the fixed one, from 0 (count).
    pub fixed: u32,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Places of buttons from a first to a last, one of them at a place that must be met.
///
/// The bust line, or a waist seam, fixes one button. The places before it are even among themselves, and so are those
/// after it; how many go on each side is chosen so that the two pitches differ least (on a tie, fewer before). Where they
/// differ too much to please, move the first or the last, or change the number.
///
/// | argument  | unit  | range                    | default | meaning                                   |
/// |-----------|-------|--------------------------|---------|-------------------------------------------|
/// | `first`   | mm    | 0..=1e5                  | -       | place of the first, from the edge's start |
/// | `last`    | mm    | 0..=1e5, > first         | -       | place of the last                         |
/// | `through` | mm    | 0..=1e5, > first, < last | -       | place that one of them must have          |
/// | `count`   | count | 3..=1000                 | -       | how many, the first and last included     |
/// | `places`  | mm    | out, as count            | -       | the places, in order                      |
///
/// # Errors
/// `NotFinite`, `OutOfRange` or `Room`, naming the argument. `NoSolution` naming `last` or `through` when the three are
/// not in order.
///
/// # Source
/// Arithmetic; the doubt at 3.2 mm (1/8 in) is the placement tolerance of a custom clothiers' judging standard.
/// `tests/vectors/spacing_through.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::closure::spacing_through;
/// let mut places = [0.0; 7];
/// let spacing = spacing_through(20.0, 500.0, 200.0, 7, &mut places)?;
/// assert_eq!(places, [20.0, 110.0, 200.0, 275.0, 350.0, 425.0, 500.0]);
/// assert_eq!((spacing.fixed, spacing.pitch_before, spacing.pitch_after), (2, 90.0, 75.0));
/// let error = spacing_through(20.0, 500.0, 20.0, 7, &mut places).unwrap_err();
/// assert_eq!(error.argument(), "through");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn spacing_through(
    first: f64,
    last: f64,
    through: f64,
    count: u32,
    places: &mut [f64],
) -> Result<SpacingThrough, Error> {
    let first = Error::check("first", first, 0.0, 1e5)?;
    let last = Error::check("last", last, 0.0, 1e5)?;
    let through = Error::check("through", through, 0.0, 1e5)?;
    let count = Error::check_count("count", count, 3, 1000)?;
    Error::check_room("places", places.len(), count as usize)?;
    if last <= first {
        return Err(Error::no_solution("last", last, past(first), f64::NAN));
    }
    if through <= first || through >= last {
        return Err(Error::no_solution(
            "through",
            through,
            past(first),
            short_of(last),
        ));
    }
    let steps = f64::from(count - 1);
    let pitches = |before: f64| {
        (
            (through - first) / before,
            (last - through) / (steps - before),
        )
    };
    let unevenness = |before: f64| {
        let (above, below) = pitches(before);
        libm::fabs(above - below)
    };
    // One pitch falls and the other rises with the number before, so the best is next to where they would be equal.
    let low = libm::floor(steps * ((through - first) / (last - first))).clamp(1.0, steps - 1.0);
    let high = (low + 1.0).min(steps - 1.0);
    let before = if below(unevenness(high), unevenness(low)) {
        high
    } else {
        low
    };
    let (pitch_before, pitch_after) = pitches(before);
    let fixed = before as u32;
    for (index, place) in (0..count).zip(places.iter_mut()) {
        // Each side is counted from its outer end, and the three given places are met exactly.
        *place = if index < fixed {
            first + f64::from(index) * pitch_before
        } else if index == fixed {
            through
        } else {
            last - f64::from(count - 1 - index) * pitch_after
        };
    }
    let uneven = above(libm::fabs(pitch_before - pitch_after), UNEVEN);
    Ok(SpacingThrough {
        pitch_before,
        pitch_after,
        fixed,
        doubts: if uneven { PITCH_UNEVEN } else { 0 },
    })
}

/// The shape of a button.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
#[repr(i32)]
pub enum ButtonShape {
    /// A disc: the loop goes over both faces.
    Flat = 0,
    /// A ball: the loop goes over its greatest circle.
    Ball = 1,
}

/// A loop for a button.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ButtonLoop {
    /// Length of the loop that shows (mm).
    pub visible: f64,
    /// Length to cut (mm).
    pub cut: f64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Loop of cord that just passes over a button.
///
/// The way round the button is `P = 2 · (diameter + thickness)` for a flat one, `π · diameter` for a ball; the middle of
/// the cord lies half its thickness further out all round, and its ends are sewn `gap` apart:
/// `visible = (P + π · cord - gap) / (1 + stretch)`, `cut = visible + 2 · seam`. For a loop
/// there is, see [`loop_slack`]. Try one before cutting all.
///
/// | argument    | unit   | range   | default | meaning                                                     |
/// |-------------|--------|---------|---------|-------------------------------------------------------------|
/// | `diameter`  | mm     | 1..=200 | -       | diameter of the button                                      |
/// | `thickness` | mm     | 0..=100 | -       | thickness of a flat button; not used for a ball             |
/// | `cord`      | mm     | 0..=50  | -       | thickness of the cord                                       |
/// | `gap`       | mm     | 0..=500 | 0       | between the loop's two ends where they are sewn             |
/// | `stretch`   | 1      | 0..=3   | 0       | how much the cord may stretch: 0.3 is 30 %                  |
/// | `seam`      | mm     | 0..=200 | 12      | length into the seam at each end                            |
/// | `shape`     | choice | -       | flat    | shape of the button                                         |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is as wide as the way round.
///
/// # Source
/// Plane geometry. `tests/vectors/button_loop.csv` has hand-worked rows. Any stretch raises the caution `ELASTIC_BATH`.
///
/// # Examples
/// ```
/// use recloth::closure::{ButtonShape, button_loop};
/// let cord = button_loop(10.0, 3.0, 1.5, 4.0, 0.0, 12.0, ButtonShape::Flat)?;
/// assert!((cord.visible - 26.7).abs() < 0.05);
/// let error = button_loop(10.0, 3.0, 1.5, 40.0, 0.0, 12.0, ButtonShape::Flat).unwrap_err();
/// assert_eq!(error.argument(), "gap");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn button_loop(
    diameter: f64,
    thickness: f64,
    cord: f64,
    gap: f64,
    stretch: f64,
    seam: f64,
    shape: ButtonShape,
) -> Result<ButtonLoop, Error> {
    let diameter = Error::check("diameter", diameter, 1.0, 200.0)?;
    let thickness = Error::check("thickness", thickness, 0.0, 100.0)?;
    let cord = Error::check("cord", cord, 0.0, 50.0)?;
    let gap = Error::check("gap", gap, 0.0, 500.0)?;
    let stretch = Error::check("stretch", stretch, 0.0, 3.0)?;
    let seam = Error::check("seam", seam, 0.0, 200.0)?;
    let visible = loop_that_passes(diameter, thickness, cord, gap, stretch, shape)?;
    Ok(ButtonLoop {
        visible,
        cut: visible + 2.0 * seam,
        cautions: if stretch > 0.0 { ELASTIC_BATH } else { 0 },
    })
}

#[inline]
fn loop_that_passes(
    diameter: f64,
    thickness: f64,
    cord: f64,
    gap: f64,
    stretch: f64,
    shape: ButtonShape,
) -> Result<f64, Error> {
    let button = match shape {
        ButtonShape::Flat => 2.0 * (diameter + thickness),
        ButtonShape::Ball => PI * diameter,
    };
    let round = button + PI * cord;
    if gap >= round {
        return Err(Error::no_solution("gap", gap, 0.0, short_of(round)));
    }
    Ok((round - gap) / (1.0 + stretch))
}

/// A loop there is, compared with the one that just passes over its button.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LoopSlack {
    /// What the loop is longer than the one that just passes; negative when it is too short (mm).
    pub slack: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Slack of a loop there is, or of one chosen, on a button.
///
/// `slack = length - visible`, where `visible` is what [`button_loop`] gives for the same button.
///
/// | argument    | unit   | range   | default | meaning                                           |
/// |-------------|--------|---------|---------|---------------------------------------------------|
/// | `length`    | mm     | 1..=2e3 | -       | length of the loop that shows, not stretched      |
/// | `diameter`  | mm     | 1..=200 | -       | diameter of the button                            |
/// | `thickness` | mm     | 0..=100 | -       | thickness of a flat button; not used for a ball   |
/// | `cord`      | mm     | 0..=50  | -       | thickness of the cord                             |
/// | `gap`       | mm     | 0..=500 | 0       | between the loop's two ends where they are sewn   |
/// | `stretch`   | 1      | 0..=3   | 0       | how much the cord may stretch: 0.3 is 30 %        |
/// | `shape`     | choice | -       | flat    | shape of the button                               |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is as wide as the way round.
///
/// # Source
/// Plane geometry; the 2 mm behind the doubt `LOOP_LOOSE` are common practice, no source. `tests/vectors/loop_slack.csv`
/// has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::{closure::{ButtonShape, loop_slack}, doubt::LOOP_LOOSE};
/// let chosen = loop_slack(30.0, 10.0, 3.0, 1.5, 4.0, 0.0, ButtonShape::Flat)?;
/// assert!((chosen.slack - 3.29).abs() < 0.005);
/// assert_eq!(chosen.doubts, LOOP_LOOSE);
/// let error = loop_slack(0.0, 10.0, 3.0, 1.5, 4.0, 0.0, ButtonShape::Flat).unwrap_err();
/// assert_eq!(error.argument(), "length");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn loop_slack(
    length: f64,
    diameter: f64,
    thickness: f64,
    cord: f64,
    gap: f64,
    stretch: f64,
    shape: ButtonShape,
) -> Result<LoopSlack, Error> {
    let length = Error::check("length", length, 1.0, 2e3)?;
    let diameter = Error::check("diameter", diameter, 1.0, 200.0)?;
    let thickness = Error::check("thickness", thickness, 0.0, 100.0)?;
    let cord = Error::check("cord", cord, 0.0, 50.0)?;
    let gap = Error::check("gap", gap, 0.0, 500.0)?;
    let stretch = Error::check("stretch", stretch, 0.0, 3.0)?;
    let slack = length - loop_that_passes(diameter, thickness, cord, gap, stretch, shape)?;
    let doubts = if above(slack, LOOSE) {
        LOOP_LOOSE
    } else if below(slack, 0.0) {
        LOOP_TIGHT
    } else {
        0
    };
    Ok(LoopSlack { slack, doubts })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_button_comes_back_from_its_hole() {
        let slit = buttonhole(18.5, 3.5, 0.0).unwrap();
        assert_eq!(button_for_hole(slit, 3.5, 3.0).unwrap().diameter, 18.5);
    }

    #[test]
    fn the_loop_that_just_passes_has_no_slack() {
        for shape in [ButtonShape::Flat, ButtonShape::Ball] {
            let exact = button_loop(11.43, 2.6, 1.2, 3.5, 0.15, 12.0, shape).unwrap();
            let own = loop_slack(exact.visible, 11.43, 2.6, 1.2, 3.5, 0.15, shape).unwrap();
            assert_eq!((own.slack, own.doubts), (0.0, 0));
        }
    }

    #[test]
    fn no_other_split_is_more_even() {
        let mut places = [0.0; 9];
        for through in 21..500 {
            let through = f64::from(through);
            let best = spacing_through(20.0, 500.0, through, 9, &mut places).unwrap();
            let difference = (best.pitch_before - best.pitch_after).abs();
            for before in 1..8 {
                let above = (through - 20.0) / f64::from(before);
                let below = (500.0 - through) / f64::from(8 - before);
                assert!((above - below).abs() >= difference - 1e-9);
            }
            assert_eq!(places[best.fixed as usize], through);
            assert_eq!((places[0], places[8]), (20.0, 500.0));
            assert!(places.windows(2).all(|pair| pair[0] < pair[1]));
        }
    }

    #[test]
    fn a_fixed_button_on_the_even_spacing_changes_nothing() {
        let mut places = [0.0; 7];
        let spacing = spacing_through(30.0, 570.0, 210.0, 7, &mut places).unwrap();
        let pitch = even_spacing(30.0, 570.0, 7).unwrap();
        assert_eq!((spacing.pitch_before, spacing.pitch_after), (pitch, pitch));
        assert_eq!(places, [30.0, 120.0, 210.0, 300.0, 390.0, 480.0, 570.0]);
    }

    #[test]
    fn only_as_many_places_are_written_as_asked() {
        let mut places = [-1.0; 5];
        spacing_through(0.0, 90.0, 30.0, 4, &mut places).unwrap();
        assert_eq!(places, [0.0, 30.0, 60.0, 90.0, -1.0]);
        let mut short = [-1.0; 3];
        assert!(spacing_through(0.0, 90.0, 30.0, 4, &mut short).is_err());
        assert_eq!(short, [-1.0; 3]);
    }

    #[test]
    fn what_an_error_asks_for_would_do() {
        let holes = |first| holes_left(610.0, first, 90.0);
        assert!(holes(holes(700.0).unwrap_err().max()).is_ok());
        let start = |start| button_for_hole(22.0, 3.5, start);
        assert!(start(start(30.0).unwrap_err().max()).is_ok());
        let gap = |gap| button_loop(10.0, 3.0, 1.5, gap, 0.0, 12.0, ButtonShape::Flat);
        let widest = gap(100.0).unwrap_err().max();
        assert!(gap(widest).is_ok() && gap(widest + 1.1e-6).is_err());
    }
}
