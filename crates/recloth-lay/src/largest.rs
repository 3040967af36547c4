//! The largest value of a measure at which all pieces still fit.

use core::ops::ControlFlow;

use crate::cleave::{check_moved, direction, moved};
use crate::fit::check_all;
use crate::matching::move_matches;
use crate::trials::Trials;
use crate::watch::Listener;
use crate::{Error, Fit, Options, Panel, Part, Progress, Shortage, Together};

/// What one trial may use of the budget that is left; and how little is not worth a trial.
const SHARE: u64 = 8;
const LEAST: u64 = 1000;

/// The values of a measure that are tried.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Values {
    /// The least (-1e6 to 1e6).
    pub low: f64,
    /// The largest (at least the least, to 1e6).
    pub high: f64,
    /// From one to the next (1e-6 to 1e6, at most 1e9 in all).
    pub step: f64,
}

/// The largest value found to fit, and the least proved not to.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct Largest {
    /// The largest value at which all pieces were found to fit; `None` where there is none.
    pub value: Option<f64>,
    /// The parts at that value.
    pub parts: Vec<Part>,
    /// How they fit.
    pub fit: Option<Box<Fit>>,
    /// The least value tried at which it is proved that not all pieces have a place together.
    pub refused: Option<f64>,
    /// What proves it.
    pub shortage: Option<Shortage>,
    /// How many evaluations were made.
    pub evaluations: u64,
    /// Whether the time was up before all was tried.
    #[cfg_attr(feature = "serde", serde(default))]
    pub out_of_time: bool,
}

/// The largest value of a measure at which all pieces fit, as far as is found.
///
/// `parts_at` makes the parts of a value, by a draft or otherwise. The largest value is tried, then the least, then those
/// between by halves, as many as it takes to tell two neighbours apart; then again by halves for the least value proved
/// impossible. Between the two neither is known.
///
/// It is taken for granted, not proved, that what fits at a value fits at every smaller one, and what is impossible at one
/// is at every larger one. So it is where the pieces of a value lie within those of any larger. Where they do not, the value
/// found still fits and the one refused is still impossible, but a larger one that fits may be missed.
///
/// `options.budget` is for everything together. The same inputs give the same answer on every machine.
///
/// # Errors
/// Naming `low`, `high` or `step`; as of [`fit`](crate::fit()); and the first of `parts_at`, which ends the search.
///
/// # Examples
/// ```
/// use recloth_lay::{Options, Panel, Part, Values, largest};
/// // The longest belt, 60 wide, that can be cut from an invented panel on its diagonal: tilted by up to 45 degrees.
/// let cloth = [Panel::new("back", [(0.0, 0.0), (400.0, 0.0), (400.0, 400.0), (0.0, 400.0)])?];
/// let belt = |length: f64| -> Result<_, Box<dyn std::error::Error>> {
///     let outline = [(0.0, 0.0), (60.0, 0.0), (60.0, length), (0.0, length)];
///     Ok(vec![Part { tilt_deg: 45.0, ..Part::new("belt", outline) }])
/// };
/// let values = Values { low: 300.0, high: 600.0, step: 0.5 };
/// let found = largest(values, belt, &cloth, &Options { budget: 20_000_000, ..Options::default() })?;
/// // At 45 degrees (length + 60) / √2 = 400.
/// assert_eq!(found.value, Some(505.5));
/// assert!(found.refused.unwrap() > 505.5);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn largest<E: From<Error>>(
    values: Values,
    parts_at: impl FnMut(f64) -> Result<Vec<Part>, E>,
    panels: &[Panel],
    options: &Options,
) -> Result<Largest, E> {
    largest_with(values, parts_at, panels, options, |_| {
        ControlFlow::Continue(())
    })
}

/// As [`largest`]; says how far it has come, many times a second, with nothing for the best, and stops at
/// [`ControlFlow::Break`] with what it has.
///
/// # Errors
/// As [`largest`].
pub fn largest_with<E: From<Error>>(
    values: Values,
    parts_at: impl FnMut(f64) -> Result<Vec<Part>, E>,
    panels: &[Panel],
    options: &Options,
    mut progress: impl FnMut(Progress) -> ControlFlow<()>,
) -> Result<Largest, E> {
    let steps = values.check()?;
    check_all(&[], panels, options)?;
    let mut hunt = Hunt {
        values,
        parts_at,
        trials: Trials::new(panels, options, &mut progress),
        best: None,
        refused: None,
    };
    hunt.try_step(steps)?;
    if hunt.best.is_none() && steps > 0 {
        hunt.try_step(0)?;
    }
    // The largest that fits lies from `fits` on, before `not`.
    if let Some((mut fits, ..)) = hunt.best {
        let mut not = steps;
        while not > fits + 1 {
            let middle = fits.midpoint(not);
            match hunt.try_step(middle)? {
                true => fits = middle,
                false => not = middle,
            }
        }
    }
    // The least that is refused lies after `open`.
    let mut open = hunt.best.as_ref().map_or(0, |(step, ..)| *step);
    while let Some((refused, _)) = hunt.refused
        && refused > open + 1
    {
        let middle = open.midpoint(refused);
        hunt.try_step(middle)?;
        if hunt
            .refused
            .as_ref()
            .is_some_and(|(step, _)| *step > middle)
        {
            open = middle;
        }
    }
    let at = |step: u32| values.at(step);
    let (value, parts, fit) = match hunt.best {
        Some((step, parts, fit)) => (Some(at(step)), parts, Some(Box::new(fit))),
        None => (None, Vec::new(), None),
    };
    let (refused, shortage) = hunt.refused.unzip();
    Ok(Largest {
        value,
        parts,
        fit,
        refused: refused.map(at),
        shortage,
        evaluations: hunt.trials.used(),
        out_of_time: hunt.trials.out_of_time(),
    })
}

impl Values {
    /// The number of steps from the least to the largest.
    fn check(&self) -> Result<u32, Error> {
        use recloth::Error as E;
        let of = |error: E| Error::new("values", error);
        E::check("low", self.low, -1e6, 1e6).map_err(of)?;
        E::check("high", self.high, -1e6, 1e6).map_err(of)?;
        E::check("step", self.step, 1e-6, 1e6).map_err(of)?;
        let span = self.high - self.low;
        if span < 0.0 {
            return Err(of(E::no_solution("high", self.high, self.low, f64::NAN)));
        }
        let steps = span / self.step;
        if steps > 1e9 {
            return Err(of(E::no_solution("step", self.step, span / 1e9, f64::NAN)));
        }
        // What is a whole number of steps but for rounding, is.
        Ok((steps - 1e-9).ceil().max(0.0) as u32)
    }

    fn at(&self, step: u32) -> f64 {
        // Tenths and hundredths are divided, so that 123 tenths are 12.3.
        let parts = (1.0 / self.step).round();
        let off = match (parts * self.step - 1.0).abs() < 1e-12 {
            true => f64::from(step) / parts,
            false => f64::from(step) * self.step,
        };
        (self.low + off).min(self.high)
    }
}

struct Hunt<'a, F> {
    values: Values,
    parts_at: F,
    trials: Trials<'a>,
    /// The largest step found to fit, its parts and how they fit.
    best: Option<(u32, Vec<Part>, Fit)>,
    /// The least step proved not to, and the proof.
    refused: Option<(u32, Shortage)>,
}

impl<F> Hunt<'_, F> {
    fn try_step<E: From<Error>>(&mut self, step: u32) -> Result<bool, E>
    where
        F: FnMut(f64) -> Result<Vec<Part>, E>,
    {
        if self.trials.is_over() {
            return Ok(false);
        }
        let parts = (self.parts_at)(self.values.at(step))?;
        let budget = match self.trials.left {
            0..LEAST => 0,
            left => (left / SHARE).max(LEAST),
        };
        let found = self.trials.fit(&parts, budget)?;
        match &found.together {
            Together::Fit => {
                if self.best.as_ref().is_none_or(|(best, ..)| *best <= step) {
                    self.best = Some((step, parts, found));
                }
                return Ok(true);
            }
            Together::Cannot(shortage) => {
                if self.refused.as_ref().is_none_or(|(least, _)| *least > step) {
                    self.refused = Some((step, shortage.clone()));
                }
            }
            Together::Undecided => {}
        }
        Ok(false)
    }
}

/// An end or side of a part that may move out.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Outward {
    /// Index of the part.
    pub part: usize,
    /// Corners further out than this move: the distance from the origin of the part's axes in the direction they move in
    /// (mm).
    pub beyond: f64,
    /// How far at most (mm, 0.1 to 1e5).
    pub most: f64,
    /// Whether the end is the one that the grain points away from, the side the one to its left.
    #[cfg_attr(feature = "serde", serde(default))]
    pub opposite: bool,
}

/// How much longer a part can be, all pieces fitting: corners beyond a line move out along its grain, to 0.1 mm.
///
/// Of which end, and how far, says `outward`; `value` of the answer is the length gained (mm). It is found by [`largest`],
/// with what that takes for granted. All pieces of the part become longer alike.
///
/// # Errors
/// As of [`fit`](crate::fit()); naming `part`, `beyond` (no corner lies beyond it, or all do), `most` (out of range, or the
/// outline would cross itself; then `max` would do).
///
/// # Examples
/// ```
/// use recloth_lay::{Options, Outward, Panel, Part, longest};
/// let cloth = [Panel::new("back", [(0.0, 0.0), (400.0, 0.0), (400.0, 700.0), (0.0, 700.0)])?];
/// let skirt = [Part::new("skirt", [(0.0, 0.0), (380.0, 0.0), (300.0, 650.0), (80.0, 650.0)])];
/// // Its hem is at the foot of the grain line, below y = 100, which is -100 in the direction downwards.
/// let hem = Outward { part: 0, beyond: -100.0, most: 200.0, opposite: true };
/// let found = longest(&skirt, hem, &cloth, &Options::default())?;
/// assert_eq!((found.value, found.refused), (Some(50.0), Some(50.1)));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn longest(
    parts: &[Part],
    outward: Outward,
    panels: &[Panel],
    options: &Options,
) -> Result<Largest, Error> {
    longest_with(parts, outward, panels, options, |_| {
        ControlFlow::Continue(())
    })
}

/// As [`longest`], watched and stopped as [`largest_with`] is.
///
/// # Errors
/// As [`longest`].
pub fn longest_with(
    parts: &[Part],
    outward: Outward,
    panels: &[Panel],
    options: &Options,
    mut progress: impl FnMut(Progress) -> ControlFlow<()>,
) -> Result<Largest, Error> {
    further(parts, outward, 0.0, panels, options, &mut progress)
}

/// How much wider a part can be, all pieces fitting: corners beyond a line move out across its grain, to the right of it or
/// to its left, to 0.1 mm. Otherwise as [`longest`].
///
/// # Errors
/// As of [`longest`].
///
/// # Examples
/// ```
/// use recloth_lay::{Options, Outward, Panel, Part, fullest};
/// let cloth = [Panel::new("back", [(0.0, 0.0), (400.0, 0.0), (400.0, 700.0), (0.0, 700.0)])?];
/// let skirt = [Part::new("skirt", [(0.0, 0.0), (380.0, 0.0), (300.0, 650.0), (80.0, 650.0)])];
/// let side = Outward { part: 0, beyond: 190.0, most: 100.0, opposite: false };
/// assert_eq!(fullest(&skirt, side, &cloth, &Options::default())?.value, Some(20.0));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn fullest(
    parts: &[Part],
    outward: Outward,
    panels: &[Panel],
    options: &Options,
) -> Result<Largest, Error> {
    fullest_with(parts, outward, panels, options, |_| {
        ControlFlow::Continue(())
    })
}

/// As [`fullest`], watched and stopped as [`largest_with`] is.
///
/// # Errors
/// As [`fullest`].
pub fn fullest_with(
    parts: &[Part],
    outward: Outward,
    panels: &[Panel],
    options: &Options,
    mut progress: impl FnMut(Progress) -> ControlFlow<()>,
) -> Result<Largest, Error> {
    further(parts, outward, -90.0, panels, options, &mut progress)
}

fn further(
    parts: &[Part],
    outward: Outward,
    off_grain_deg: f64,
    panels: &[Panel],
    options: &Options,
    listener: &mut Listener<'_>,
) -> Result<Largest, Error> {
    use recloth::Error as E;
    check_all(parts, panels, options)?;
    let Some(part) = parts.get(outward.part) else {
        let last = parts.len() as f64 - 1.0;
        let none = E::no_solution("part", outward.part as f64, 0.0, last);
        return Err(Error::new("outward", none));
    };
    let back_deg = if outward.opposite { 180.0 } else { 0.0 };
    let along = direction(part.grain_deg + off_grain_deg + back_deg);
    let checked = E::check("beyond", outward.beyond, -1e6, 1e6)
        .and_then(|_| E::check("most", outward.most, 0.1, 1e5))
        .and_then(|most| check_moved(&part.outline, along, outward.beyond, (most, 1.0)));
    checked.map_err(|error| Error::new(format!("outward, of {:?}", part.name), error))?;
    let values = Values {
        low: 0.0,
        high: outward.most,
        step: 0.1,
    };
    let parts_at = |by: f64| {
        let mut parts = parts.to_vec();
        let part = &mut parts[outward.part];
        for line in [&mut part.outline, &mut part.seam] {
            *line = moved(line, along, outward.beyond, by);
        }
        part.drop_lost_fold();
        move_matches(part, along, outward.beyond, by);
        Ok(parts)
    };
    largest_with(values, parts_at, panels, options, listener)
}
