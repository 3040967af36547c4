//! What fits, where, and what proves that something does not.

use core::ops::ControlFlow;

use crate::bounds::{Bound, area, quick};
use crate::everywhere::{Outcome, look};
use crate::matched::never;
use crate::search::{Kind, Search};
use crate::shortage::{Shortage, shortage};
use crate::together::together;
use crate::valid::check_inputs;
use crate::watch::{Listener, Watch};
use crate::{Complaint, Error, Hand, Lay, Panel, Part, Placement, Progress, Unplaced, check};

/// How to look.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(default, deny_unknown_fields)
)]
pub struct Options {
    /// Least distance between the cut lines of two pieces (mm, 0 to 1000). It is not kept from the panel's edge.
    pub spacing: f64,
    /// Number the search's chances start from: the same seed gives the same lay, another may give a better one.
    pub seed: u64,
    /// How many evaluations to stop after. One is a glance at one position, or at two edges that may hold a piece in
    /// place; a million take some hundredths of a second. What is begun is finished, so a little more may be used.
    pub budget: u64,
    /// Seconds to stop after, if that is sooner (0 to 1e6). How far the search comes in a time depends on the machine, so
    /// then the lay does too.
    pub seconds: Option<f64>,
    /// Threads to work with; 0 for as many as there are processors. The lay does not depend on it.
    pub threads: usize,
}

impl Default for Options {
    /// No spacing, seed 1, about two seconds of an ordinary processor, and as many threads as there are processors.
    fn default() -> Options {
        Options {
            spacing: 0.0,
            seed: 1,
            budget: 200_000_000,
            seconds: None,
            threads: 0,
        }
    }
}

/// Whether one piece, by itself, has a place on one panel.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum Answer {
    /// Yes: here, as the checker has confirmed.
    Fits(Placement),
    /// No, and this proves it.
    Cannot(Bound),
    /// No place was found and none was excluded.
    Undecided,
}

/// The answer for one part, hand and panel.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct Alone {
    /// Index of the part.
    pub part: usize,
    /// Which hand.
    pub hand: Hand,
    /// Index of the panel.
    pub panel: usize,
    /// The answer.
    pub answer: Answer,
}

impl Alone {
    /// The place, if the piece fits.
    pub fn placement(&self) -> Option<Placement> {
        match self.answer {
            Answer::Fits(placement) => Some(placement),
            _ => None,
        }
    }
}

/// Whether all pieces have a place together.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum Together {
    /// Yes: the lay has them all.
    Fit,
    /// No, and this proves it.
    Cannot(Shortage),
    /// The lay found has not all of them, and nothing proves that none has.
    Undecided,
}

/// The answers of [`fit`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct Fit {
    /// For each part and wanted hand, for each panel: whether the piece alone has a place there.
    pub alone: Vec<Alone>,
    /// Whether all have a place together.
    pub together: Together,
    /// The best lay found, confirmed by the checker.
    pub lay: Lay,
    /// Share of each panel that the lay covers (0 to 1), holes and flaws not counted where that is certain.
    pub shares: Vec<f64>,
    /// Share of all panels together that the lay covers (0 to 1).
    pub share: f64,
    /// How many evaluations were made.
    pub evaluations: u64,
    /// Whether the time was up before the budget was.
    #[cfg_attr(feature = "serde", serde(default))]
    pub out_of_time: bool,
}

/// Which pieces fit on which panels, where all of them go together, or what proves that they cannot.
///
/// Placements are always confirmed by [`check`](crate::check()); *cannot* always names its proof; failing to find a
/// place is *undecided*. The same inputs, seed and budget give the same answer on every machine.
///
/// # Errors
/// A value outside its range, an outline that touches or crosses itself, or more than 2000 pieces, naming the part,
/// panel or option.
///
/// # Examples
/// ```
/// use recloth_lay::{Answer, Bound, Options, Panel, Part, Together, fit};
/// let rectangle = |width: f64, height: f64| [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)];
/// let cloth = [Panel::new("skirt back", rectangle(400.0, 700.0))?];
/// let pair = Part { as_drawn: 1, mirrored: 1, ..Part::new("pocket", rectangle(200.0, 700.0)) };
/// let found = fit(&[pair], &cloth, &Options::default())?;
/// assert_eq!((found.together, found.lay.placements.len(), found.share), (Together::Fit, 2, 1.0));
///
/// let band = [Part::new("band", rectangle(60.0, 710.0))];
/// let found = fit(&band, &cloth, &Options::default())?;
/// let Answer::Cannot(bound) = found.alone[0].answer else { unreachable!() };
/// assert_eq!(bound, Bound::Along { needed: 710.0, there: 700.0 });
/// assert_eq!(bound.short_by(), Some(10.0));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn fit(parts: &[Part], panels: &[Panel], options: &Options) -> Result<Fit, Error> {
    fit_with(parts, panels, options, |_| ControlFlow::Continue(()))
}

/// As [`fit()`]; says how far it has come, many times a second, and stops at [`ControlFlow::Break`] with what it has.
///
/// # Errors
/// As [`fit()`].
pub fn fit_with(
    parts: &[Part],
    panels: &[Panel],
    options: &Options,
    mut progress: impl FnMut(Progress) -> ControlFlow<()>,
) -> Result<Fit, Error> {
    fit_until(parts, panels, options, false, &mut progress)
}

/// As [`fit_with`]; where a proof is enough, nothing is looked for once not all pieces can have a place together.
pub(crate) fn fit_until(
    parts: &[Part],
    panels: &[Panel],
    options: &Options,
    proof_is_enough: bool,
    progress: &mut Listener<'_>,
) -> Result<Fit, Error> {
    let (kinds, pieces) = check_all(parts, panels, options)?;
    let shares = vec![0.0; panels.len()];
    let cannot = |alone: Vec<Alone>, shortage: Shortage, evaluations: u64| Fit {
        alone,
        together: Together::Cannot(shortage),
        lay: proven(parts, panels, options.spacing, Vec::new()),
        shares,
        share: 0.0,
        evaluations,
        out_of_time: false,
    };
    if proof_is_enough {
        let alone = quick_answers(parts, panels, &kinds);
        if let Some(shortage) = shortage_of(parts, panels, &kinds, &pieces, &alone, options.spacing)
        {
            return Ok(cannot(alone, shortage, 0));
        }
    }
    let mut watch = Watch::new(options.budget, options.seconds, progress);
    let mut search = Search::new(parts, panels, options.spacing);
    watch.give(0, 0.5);
    let alone = answers(&mut search, parts, panels, &kinds, &mut watch);
    let shortage = shortage_of(parts, panels, &kinds, &pieces, &alone, options.spacing);
    if proof_is_enough && let Some(shortage) = shortage {
        return Ok(cannot(alone, shortage, search.work));
    }
    let answer = |kind: Kind, panel: usize| {
        let row = kinds.iter().position(|&other| other == kind);
        row.map_or(Answer::Undecided, |row| {
            alone[row * panels.len() + panel].answer
        })
    };
    let may = |kind: Kind, panel: usize| !matches!(answer(kind, panel), Answer::Cannot(_));
    let single = match (&pieces[..], alone.iter().find_map(Alone::placement)) {
        ([_], Some(placement)) => Some((vec![placement], Vec::new())),
        _ => None,
    };
    let (placements, mut left) = single.unwrap_or_else(|| {
        let hopeless = shortage.is_some();
        together(&mut search, &pieces, &may, hopeless, options, &mut watch)
    });
    let mut found = placements;
    // A piece of more corners than the search looks at may still have its proven place on a panel that is empty.
    left.retain(|&piece| {
        let kind = pieces[piece];
        let empty = (0..panels.len()).find_map(|panel| {
            match (
                answer(kind, panel),
                found.iter().any(|at| at.panel == panel),
            ) {
                (Answer::Fits(placement), false) => Some(placement),
                _ => None,
            }
        });
        found.extend(empty);
        empty.is_none()
    });
    let lay = proven(parts, panels, options.spacing, found);

    let used = |panel: usize| {
        lay.placements
            .iter()
            .filter(|placement| placement.panel == panel)
            .map(|placement| area(&parts[placement.part].outline))
            .sum::<f64>()
    };
    // The sum of nothing is -0.
    let share = |used: f64, of: f64| match of > 0.0 {
        true => (used / of).min(1.0) + 0.0,
        false => 0.0,
    };
    let shares: Vec<f64> = (0..panels.len())
        .map(|panel| share(used(panel), search.usable[panel]))
        .collect();
    let all = share(
        (0..panels.len()).map(used).sum(),
        search.usable.iter().sum(),
    );
    let together = match (lay.unplaced.is_empty(), shortage) {
        (true, _) => Together::Fit,
        (false, Some(shortage)) => Together::Cannot(shortage),
        (false, None) => Together::Undecided,
    };
    Ok(Fit {
        alone,
        together,
        lay,
        shares,
        share: all,
        evaluations: search.work,
        out_of_time: watch.out_of_time,
    })
}

/// The kinds of pieces wanted and the pieces themselves, unless something given cannot be used.
pub(crate) fn check_all(
    parts: &[Part],
    panels: &[Panel],
    options: &Options,
) -> Result<(Vec<Kind>, Vec<Kind>), Error> {
    check_inputs(parts, panels)?;
    check_options(options)?;
    let kinds: Vec<Kind> = (0..parts.len())
        .flat_map(|part| Hand::BOTH.map(|hand| Kind { part, hand }))
        .filter(|kind| parts[kind.part].count(kind.hand) > 0)
        .collect();
    let pieces: Vec<Kind> = kinds
        .iter()
        .flat_map(|&kind| (0..parts[kind.part].count(kind.hand)).map(move |_| kind))
        .collect();
    recloth::Error::check_items("parts", pieces.len(), 0, 2000)
        .map_err(|error| Error::new("pieces of all parts", error))?;
    Ok((kinds, pieces))
}

/// The table by quick bounds alone.
fn quick_answers(parts: &[Part], panels: &[Panel], kinds: &[Kind]) -> Vec<Alone> {
    let each = |&kind: &Kind| {
        (panels.iter().enumerate()).map(move |(panel, cloth)| Alone {
            part: kind.part,
            hand: kind.hand,
            panel,
            answer: quick(&parts[kind.part], kind.hand, cloth)
                .map_or(Answer::Undecided, Answer::Cannot),
        })
    };
    kinds.iter().flat_map(each).collect()
}

/// A proof, by quick bounds alone, that not all pieces have a place together.
pub(crate) fn quick_shortage(
    parts: &[Part],
    panels: &[Panel],
    options: &Options,
) -> Option<Shortage> {
    let (kinds, pieces) = check_all(parts, panels, options).ok()?;
    let alone = quick_answers(parts, panels, &kinds);
    shortage_of(parts, panels, &kinds, &pieces, &alone, options.spacing)
}

/// A proof by a table that not all pieces have a place together.
fn shortage_of(
    parts: &[Part],
    panels: &[Panel],
    kinds: &[Kind],
    pieces: &[Kind],
    alone: &[Alone],
    spacing: f64,
) -> Option<Shortage> {
    let may = |kind: Kind, panel: usize| {
        let row = kinds.iter().position(|&other| other == kind);
        row.is_none_or(|row| !matches!(alone[row * panels.len() + panel].answer, Answer::Cannot(_)))
    };
    shortage(parts, panels, pieces, &may, spacing).or_else(|| {
        let missed = never(parts, panels, pieces)?;
        Some(Shortage::Unmatched {
            name: missed.name,
            part: missed.parts[0],
            other: missed.parts[1],
            across: missed.across,
            off: missed.off,
            repeat: missed.repeat,
        })
    })
}

fn check_options(options: &Options) -> Result<(), Error> {
    let of = |error| Error::new("options", error);
    recloth::Error::check("spacing", options.spacing, 0.0, 1000.0).map_err(of)?;
    if let Some(seconds) = options.seconds {
        recloth::Error::check("seconds", seconds, 0.0, 1e6).map_err(of)?;
    }
    Ok(())
}

/// The table of pieces and panels: quick bounds, then the search, then the proof by exclusion for what is still open.
fn answers(
    search: &mut Search<'_>,
    parts: &[Part],
    panels: &[Panel],
    kinds: &[Kind],
    watch: &mut Watch<'_>,
) -> Vec<Alone> {
    let confirmed = |placement: Placement| {
        let part = Part {
            as_drawn: u32::from(placement.hand == Hand::AsDrawn),
            mirrored: u32::from(placement.hand == Hand::Mirrored),
            ..parts[placement.part].clone()
        };
        let lay = Lay {
            placements: vec![Placement {
                part: 0,
                panel: 0,
                ..placement
            }],
            ..Lay::default()
        };
        check(
            &[part],
            core::slice::from_ref(&panels[placement.panel]),
            &lay,
        )
        .is_ok()
    };
    let mut alone = Vec::with_capacity(kinds.len() * panels.len());
    for &kind in kinds {
        for (panel, cloth) in panels.iter().enumerate() {
            let answer = match quick(&parts[kind.part], kind.hand, cloth) {
                Some(bound) => Answer::Cannot(bound),
                None if watch.is_over(search.work) => Answer::Undecided,
                None => search
                    .alone(kind, panel, &confirmed)
                    .map_or(Answer::Undecided, Answer::Fits),
            };
            alone.push(Alone {
                part: kind.part,
                hand: kind.hand,
                panel,
                answer,
            });
        }
    }
    let mut open = alone
        .iter()
        .filter(|row| row.answer == Answer::Undecided)
        .count() as u64;
    for row in alone
        .iter_mut()
        .filter(|row| row.answer == Answer::Undecided)
    {
        let each = watch.left(search.work) / open.max(1);
        open -= 1;
        let (part, panel) = (
            (row.part, &parts[row.part]),
            (row.panel, &panels[row.panel]),
        );
        row.answer = match look(part, row.hand, panel, each, &mut search.work, watch) {
            Outcome::Nowhere => Answer::Cannot(Bound::Everywhere),
            Outcome::Place(placement) if confirmed(placement) => Answer::Fits(placement),
            Outcome::Place(_) | Outcome::Unknown => Answer::Undecided,
        };
    }
    alone
}

/// The lay that the checker confirms: all placements, or as many of them, in turn, as it accepts.
fn proven(parts: &[Part], panels: &[Panel], spacing: f64, placements: Vec<Placement>) -> Lay {
    let with = |placements: Vec<Placement>| {
        let mut unplaced = Vec::new();
        for (part, wanted) in parts.iter().enumerate() {
            for hand in Hand::BOTH {
                let there = placements
                    .iter()
                    .filter(|placement| placement.part == part && placement.hand == hand)
                    .count();
                let count = wanted.count(hand).saturating_sub(there as u32);
                if count > 0 {
                    unplaced.push(Unplaced { part, hand, count });
                }
            }
        }
        Lay {
            placements,
            unplaced,
            spacing,
            folds: Vec::new(),
        }
    };
    let whole = with(placements);
    let Err(complaints) = check(parts, panels, &whole) else {
        return whole;
    };
    // The search's rounding has let something through: keep what is right.
    if complaints
        .iter()
        .any(|complaint| matches!(complaint, Complaint::Input(_)))
    {
        return with(Vec::new());
    }
    let mut kept: Vec<Placement> = Vec::new();
    for placement in whole.placements {
        kept.push(placement);
        if check(parts, panels, &with(kept.clone())).is_err() {
            kept.pop();
        }
    }
    with(kept)
}
