//! Cloth by the length: all pieces on a strip of given width, as short as can be found.

mod cloth;
mod hunt;
mod matched;
mod unit;

use core::ops::ControlFlow;
use std::time::Instant;

use crate::bounds::area;
use crate::valid::check_inputs;
use crate::{
    Alone, Answer, Error, Faces, Fit, Hand, Lay, Panel, Part, Progress, Repeat, Together, check,
};
use cloth::Cloth;
use hunt::{Hunt, STREAMS};
use unit::units;

/// Cloth of one width, from the bolt, without flaws. It lies along the x axis from 0, its selvedges at y = 0 and at its
/// width; the grain runs along it, and a nap from the cut end on.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Strip {
    /// Usable width between the selvedges (mm, 1 to 1e5).
    pub width: f64,
    /// How many of its sides may show.
    #[cfg_attr(feature = "serde", serde(default))]
    pub faces: Faces,
    /// Whether it has a nap, pile or one-way print.
    #[cfg_attr(feature = "serde", serde(default))]
    pub nap: bool,
    /// Whether it is cut folded lengthwise in the middle, right sides together, selvedge on selvedge, so that both layers are
    /// cut at once.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "core::ops::Not::not")
    )]
    pub folded: bool,
    /// How a stripe, check or print repeats on it, if one does: along the cloth and across it. Where on the print the points to
    /// match lie is chosen by the search.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "Option::is_none")
    )]
    pub repeat: Option<Repeat>,
}

impl Strip {
    /// One-faced cloth without nap or repeat, cut opened.
    pub fn new(width: f64) -> Strip {
        Strip {
            width,
            faces: Faces::One,
            nap: false,
            folded: false,
            repeat: None,
        }
    }

    /// So much of the cloth, as a panel: for [`check()`](crate::check()), or to draw.
    ///
    /// # Errors
    /// As of [`Panel::new`]: a length or width that no panel has.
    pub fn panel(&self, length: f64) -> Result<Panel, recloth::Error> {
        let corners = [
            (0.0, 0.0),
            (length, 0.0),
            (length, self.width),
            (0.0, self.width),
        ];
        let panel = Panel::new("strip", corners)?.with_grain_deg(0.0)?;
        let panel = panel.with_repeat(self.repeat)?;
        Ok(panel.with_faces(self.faces).with_nap(self.nap))
    }
}

/// How to look for a short strip.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(default, deny_unknown_fields)
)]
pub struct StripOptions {
    /// Least distance between the cut lines of two pieces (mm, 0 to 1000). It is not kept from the edges of the cloth.
    pub spacing: f64,
    /// Number the search's chances start from.
    pub seed: u64,
    /// How many evaluations to stop after. One is a glance at how two pieces lie; a million take some tenths of a second.
    pub budget: u64,
    /// Seconds to stop after, if that is sooner (0 to 1e6). How far the search comes in a time depends on the machine, so
    /// then the lay does too.
    pub seconds: Option<f64>,
    /// Threads to work with; 0 for as many as there are processors. The lay does not depend on it.
    pub threads: usize,
}

impl Default for StripOptions {
    /// No spacing, seed 1, some ten seconds of an ordinary processor, and as many threads as there are processors.
    fn default() -> StripOptions {
        StripOptions {
            spacing: 0.0,
            seed: 1,
            budget: 50_000_000,
            seconds: None,
            threads: 0,
        }
    }
}

/// All pieces on a strip.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct StripLay {
    /// Length of cloth it takes (mm).
    pub length: f64,
    /// Share of that cloth which the pieces cover (0 to 1).
    pub density: f64,
    /// Where they lie, on `strip.panel(length)`, opened; with the fold where the cloth is cut folded. Confirmed by the checker.
    pub lay: Lay,
    /// How many evaluations were made.
    pub evaluations: u64,
    /// Whether the time was up before the budget was.
    pub out_of_time: bool,
}

impl StripLay {
    /// The lay as [`fit`](crate::fit()) answers of one panel, the strip of this length: each piece has its place, and all have
    /// one together.
    pub fn as_fit(&self, parts: &[Part]) -> Fit {
        let mut alone: Vec<Alone> = Vec::new();
        for (part, _) in parts.iter().enumerate() {
            for hand in Hand::BOTH {
                let placements = &self.lay.placements;
                let first = (placements.iter()).find(|at| (at.part, at.hand) == (part, hand));
                alone.extend(first.map(|&placement| Alone {
                    part,
                    hand,
                    panel: 0,
                    answer: Answer::Fits(placement),
                }));
            }
        }
        Fit {
            alone,
            together: Together::Fit,
            lay: self.lay.clone(),
            shares: vec![self.density],
            share: self.density,
            evaluations: self.evaluations,
            out_of_time: self.out_of_time,
        }
    }
}

/// All pieces on a strip of cloth, as short as was found.
///
/// The first lay is loose; then the strip is made shorter step by step, pieces that lie over each other are driven apart,
/// and a lay that stays stuck is upset. The same inputs, seed and budget give the same lay on every machine, unless
/// `seconds` ends the search.
///
/// Cloth that is [folded](Strip::folded) is laid on one layer, and opened in the answer:
/// - two of a part, one of each hand, are cut as a pair; two alike where the part is its own mirror image, its seam line too,
///   about a line along or square to its grain, or where one may lie face down: on two-faced cloth, or where either side may show;
/// - a part with a [fold](Part::fold) lies on the fold of the cloth; but where more want to than the fold is long, two are
///   cut as a pair;
/// - of an odd one, what is cut from the other layer is spare.
///
/// Half the spacing is kept from the fold by what does not lie on it.
///
/// # Errors
/// A value outside its range, an outline that touches or crosses itself, or more than 2000 pieces, naming the part or
/// option; `NoSolution` for `width` where a part is too wide for the cloth, or shows both sides of one-faced cloth; for `fold`
/// where a part's grain does not run along its fold, within its tolerance, on folded cloth; for `matches` where points cannot
/// all match, saying how far they miss; for `repeat` where no way to match was found that has room across the cloth, or the
/// cloth is folded: its layers are matched by hand.
///
/// # Examples
/// ```
/// use recloth_lay::{Part, Strip, StripOptions, check, strip};
/// // An invented skirt: four gores from cloth 1400 mm wide.
/// let gore = Part { as_drawn: 4, ..Part::new("gore", [(0.0, 0.0), (420.0, 0.0), (300.0, 800.0), (120.0, 800.0)]) };
/// let cloth = Strip::new(1400.0);
/// let options = StripOptions { budget: 2_000_000, ..StripOptions::default() };
/// let found = strip(&[gore.clone()], &cloth, &options)?;
/// assert!(found.length < 900.0 && found.density > 0.75);
/// assert_eq!(check(&[gore], &[cloth.panel(found.length)?], &found.lay), Ok(()));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn strip(parts: &[Part], strip: &Strip, options: &StripOptions) -> Result<StripLay, Error> {
    strip_with(parts, strip, options, |_| ControlFlow::Continue(()))
}

/// As [`strip()`]; says how far it has come, many times a second, and stops at [`ControlFlow::Break`] with the best so far:
/// before the first lay is found, with the pieces one after the other.
///
/// # Errors
/// As [`strip()`].
pub fn strip_with(
    parts: &[Part],
    strip: &Strip,
    options: &StripOptions,
    mut progress: impl FnMut(Progress) -> ControlFlow<()>,
) -> Result<StripLay, Error> {
    let start = options.seconds.map(|_| Instant::now());
    check_options(strip, options)?;
    check_inputs(parts, &[])?;
    let one = strip.panel(1.0);
    let one = one.map_err(|error| Error::new("strip", error))?;
    let pieces: u32 = (parts.iter())
        .map(|part| part.count(Hand::AsDrawn) + part.count(Hand::Mirrored))
        .sum();
    recloth::Error::check_items("parts", pieces as usize, 0, 2000)
        .map_err(|error| Error::new("pieces of all parts", error))?;
    let units = units(parts, strip, &one);
    let threads = match options.threads {
        0 => std::thread::available_parallelism().map_or(1, usize::from),
        threads => threads,
    }
    .min(STREAMS);
    let cloth = Cloth::new(parts, &units, strip, options.spacing, threads)?;
    // Of what is cut through both layers one is laid.
    let covered: f64 = units.iter().map(|unit| unit.covers(parts)).sum();
    let layers = if strip.folded { 2.0 } else { 1.0 };
    let hunt = Hunt::new(&cloth, options.seed, covered, strip.width / layers);
    let mut hunt = hunt.ok_or_else(|| no_room(strip))?;
    let mut out_of_time = false;
    while !units.is_empty() && hunt.work < options.budget && !hunt.is_done() {
        let by_work = hunt.work as f64 / options.budget as f64;
        let by_time = match (start, options.seconds) {
            (Some(start), Some(seconds)) => start.elapsed().as_secs_f64() / seconds.max(1e-9),
            _ => 0.0,
        };
        out_of_time = by_time >= 1.0;
        let done = by_work.max(by_time).min(1.0);
        let said = progress(Progress {
            done,
            best: hunt.best.as_ref().map(|_| hunt.length),
        });
        // When the time is up, the first lay is still looked for, however long that takes.
        if said.is_break() || (out_of_time && hunt.best.is_some()) {
            break;
        }
        hunt.stint(done, threads);
    }
    let found = hunt
        .best
        .take()
        .map(|poses| cloth.lay(parts, &units, &poses, options.spacing));
    // A search stopped before its first lay still gives one, and so would a search whose rounding let something through.
    let (lay, length) = found
        .filter(|(lay, length)| {
            let panel = strip.panel(*length);
            panel.is_ok_and(|panel| check(parts, &[panel], lay).is_ok())
        })
        .unwrap_or_else(|| cloth.without_search(parts, &units, strip, options.spacing));
    let cut: f64 = (lay.placements.iter())
        .map(|at| area(&parts[at.part].outline))
        .sum();
    Ok(StripLay {
        length,
        density: match length > 0.0 {
            true => cut / (length * strip.width),
            false => 0.0,
        },
        lay,
        evaluations: hunt.work,
        out_of_time,
    })
}

/// The error of cloth on which no choice of where the pieces match was found that leaves each of them a place.
fn no_room(strip: &Strip) -> Error {
    let across = strip.repeat.map_or(f64::NAN, |repeat| repeat.across);
    let none = recloth::Error::no_solution("repeat", across, f64::NAN, f64::NAN);
    Error::new("strip", none)
}

fn check_options(strip: &Strip, options: &StripOptions) -> Result<(), Error> {
    let of = |name: &'static str| move |error| Error::new(name, error);
    recloth::Error::check("width", strip.width, 1.0, 1e5).map_err(of("strip"))?;
    if let Some(repeat) = strip.repeat {
        repeat.checked().map_err(of("strip"))?;
    }
    recloth::Error::check("spacing", options.spacing, 0.0, 1000.0).map_err(of("options"))?;
    if let Some(seconds) = options.seconds {
        recloth::Error::check("seconds", seconds, 0.0, 1e6).map_err(of("options"))?;
    }
    Ok(())
}
