//! What parts become by changes of given amounts.

use kurbo::Vec2;

use super::{Amount, Change, Give, Made};
use crate::cleave::{WITHIN, check_moved, direction, halves, moved, reach, stretches, tenths};
use crate::matching::move_matches;
use crate::valid::check_part;
use crate::{Error, MatchPoint, Part};

/// Steps of a tilt in a degree.
const TILTS: f64 = 100.0;

/// How far each change goes, in its own steps from 0, and where each join lies.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Amounts {
    pub(super) steps: Vec<u32>,
    pub(super) places: Vec<f64>,
}

/// Pieces of a part, of both hands.
pub(super) fn pieces(part: &Part) -> u32 {
    part.as_drawn + part.mirrored
}

/// The most steps a change can go.
pub(super) fn most_steps(part: &Part, give: &Give) -> u32 {
    match give {
        Give::Tilt { to_deg } => ((to_deg - part.tilt_deg) * TILTS).ceil() as u32,
        Give::Shorter { most, .. } => (most * 10.0).ceil() as u32,
        Give::Smaller { steps, .. } => steps.len() as u32,
        Give::Join { .. } | Give::Instead { .. } => pieces(part),
        Give::Fewer { by } => *by,
    }
}

/// How far the grain may be tilted after so many steps (deg).
fn tilted(part: &Part, to_deg: f64, steps: u32) -> f64 {
    (part.tilt_deg + f64::from(steps) / TILTS).min(to_deg)
}

/// Takes so many pieces from a part, as drawn first, in turn: how many of each hand.
fn take(part: &mut Part, count: u32) -> [u32; 2] {
    let mut taken = [0, 0];
    for _ in 0..count.min(pieces(part)) {
        if part.as_drawn >= part.mirrored {
            part.as_drawn -= 1;
            taken[0] += 1;
        } else {
            part.mirrored -= 1;
            taken[1] += 1;
        }
    }
    taken
}

/// The two halves of a part parted at a place, its seam line too, if it has one.
pub(super) fn joined(part: &Part, along: Vec2, at: f64, allowance: f64) -> Option<[Part; 2]> {
    let [before, beyond] = halves(&part.outline, along, at, allowance)?;
    let [seam_before, seam_beyond] = match part.seam.is_empty() {
        true => [Vec::new(), Vec::new()],
        false => halves(&part.seam, along, at, 0.0)?,
    };
    // A point to match stays on the half it lies on.
    let is_beyond = |point: &MatchPoint| point.at.to_vec2().dot(along) >= at;
    let (matches_beyond, matches_before) = part.matches.iter().cloned().partition(is_beyond);
    let half = |number: u32, outline, seam, matches| Part {
        name: format!("{}, half {number}", part.name),
        outline,
        seam,
        fold: None,
        matches,
        ..part.clone()
    };
    Some([
        half(1, before, seam_before, matches_before),
        half(2, beyond, seam_beyond, matches_beyond),
    ])
}

/// A part by the changes of its own that are not of single pieces: tilt and outline.
pub(super) fn shaped(part: &Part, own: &[(&Give, u32)]) -> Option<Part> {
    let mut part = part.clone();
    let (tilt_deg, given) = (part.tilt_deg, part.clone());
    for &(give, steps) in own.iter().filter(|(_, steps)| *steps > 0) {
        match give {
            Give::Tilt { to_deg } => {
                part.tilt_deg = part.tilt_deg.max(tilted(&given, *to_deg, steps));
            }
            Give::Smaller { steps: list, .. } => {
                part.outline = list.get(steps as usize - 1)?.outline.clone();
            }
            _ => {}
        }
    }
    for &(give, steps) in own.iter().filter(|(_, steps)| *steps > 0) {
        if let Give::Shorter {
            toward_deg,
            beyond,
            most,
        } = give
        {
            let (along, back) = (direction(*toward_deg), -tenths(*most, steps));
            for line in [&mut part.outline, &mut part.seam] {
                *line = moved(line, along, *beyond, back);
            }
            move_matches(&mut part, along, *beyond, back);
        }
    }
    part.drop_lost_fold();
    let same = part.outline == given.outline && part.tilt_deg == tilt_deg;
    (same || check_part(&part).is_ok()).then_some(part)
}

/// The changes of one part with their steps.
pub(super) fn own(
    changes: &[Change],
    part: usize,
    steps: impl Fn(usize) -> u32,
) -> Vec<(&Give, u32)> {
    changes
        .iter()
        .enumerate()
        .filter(|(_, change)| change.part == part)
        .map(|(index, change)| (&change.kind, steps(index)))
        .collect()
}

/// All parts after the changes: those given first, then halves and replacements in the order of the changes. None where
/// that leaves an outline that is none.
pub(super) fn apply(parts: &[Part], changes: &[Change], amounts: &Amounts) -> Option<Vec<Part>> {
    let mut whole = Vec::with_capacity(parts.len());
    for (index, part) in parts.iter().enumerate() {
        whole.push(shaped(
            part,
            &own(changes, index, |change| amounts.steps[change]),
        )?);
    }
    let mut others: Vec<Vec<Part>> = vec![Vec::new(); changes.len()];
    // Of two changes that want the same piece the later has it: it is allowed only since the earlier was not enough.
    for (index, change) in changes.iter().enumerate().rev() {
        let steps = amounts.steps[index];
        let part = &mut whole[change.part];
        match &change.kind {
            Give::Fewer { .. } => {
                take(part, steps);
            }
            Give::Join {
                across_deg,
                allowance,
                ..
            } if steps > 0 => {
                let along = direction(*across_deg);
                let [as_drawn, mirrored] = take(part, steps);
                let two = joined(part, along, amounts.places[index], *allowance)?;
                others[index].extend(two.map(|half| Part {
                    as_drawn,
                    mirrored,
                    ..half
                }));
            }
            Give::Instead { parts, .. } if steps > 0 => {
                let [as_drawn, mirrored] = take(part, steps);
                for one in parts {
                    others[index].push(Part {
                        as_drawn: one.as_drawn * as_drawn + one.mirrored * mirrored,
                        mirrored: one.mirrored * as_drawn + one.as_drawn * mirrored,
                        ..one.clone()
                    });
                }
            }
            _ => {}
        }
    }
    whole.extend(others.into_iter().flatten());
    Some(whole)
}

/// A change in words and numbers.
pub(super) fn made(
    parts: &[Part],
    changes: &[Change],
    amounts: &Amounts,
    changed: &[Part],
) -> Vec<Made> {
    let amount = |index: usize, change: &Change| {
        let (part, steps) = (&parts[change.part], amounts.steps[index]);
        let of = pieces(part);
        match &change.kind {
            Give::Tilt { to_deg } => Amount::Tilt {
                to_deg: tilted(part, *to_deg, steps),
            },
            Give::Join { across_deg, .. } => {
                let at = amounts.places[index];
                let outline = &changed[change.part].outline;
                let (end, _) = reach(outline, direction(*across_deg));
                Amount::Join {
                    pieces: steps,
                    of,
                    at,
                    from_end: at - end,
                }
            }
            Give::Shorter { most, .. } => Amount::Shorter {
                by: tenths(*most, steps),
            },
            Give::Smaller { name, steps: list } => {
                let step = steps as usize - 1;
                Amount::Smaller {
                    step,
                    by: list[step].amount,
                    name: name.clone(),
                }
            }
            Give::Instead { name, .. } => Amount::Instead {
                pieces: steps,
                of,
                name: name.clone(),
            },
            Give::Fewer { .. } => Amount::Fewer { by: steps, of },
        }
    };
    changes
        .iter()
        .enumerate()
        .filter(|(index, _)| amounts.steps[*index] > 0)
        .map(|(index, change)| Made {
            change: index,
            part: parts[change.part].name.clone(),
            amount: amount(index, change),
        })
        .collect()
}

/// An error unless every change can be made.
pub(super) fn check_changes(parts: &[Part], changes: &[Change]) -> Result<(), Error> {
    recloth::Error::check_items("changes", changes.len(), 0, 100)
        .map_err(|error| Error::new("changes", error))?;
    for (index, change) in changes.iter().enumerate() {
        let Some(part) = parts.get(change.part) else {
            let last = parts.len() as f64 - 1.0;
            let error = recloth::Error::no_solution("part", change.part as f64, 0.0, last);
            return Err(Error::new(format!("change {index}"), error));
        };
        let of = format!("change {index}, of {:?}", part.name);
        check_give(part, &change.kind).map_err(|error| match error {
            Wrong::Here(error) => Error::new(of.clone(), error),
            Wrong::Of(name, error) => Error::new(format!("{of}, part {name:?}"), error),
        })?;
    }
    Ok(())
}

/// What is wrong with a change, or with a part that would take another's place.
enum Wrong {
    Here(recloth::Error),
    Of(String, recloth::Error),
}

impl From<recloth::Error> for Wrong {
    fn from(error: recloth::Error) -> Wrong {
        Wrong::Here(error)
    }
}

fn check_give(part: &Part, give: &Give) -> Result<(), Wrong> {
    use recloth::Error as E;
    match give {
        Give::Tilt { to_deg } => {
            E::check("to_deg", *to_deg, 0.0, 180.0)?;
            if *to_deg <= part.tilt_deg {
                return Err(E::no_solution("to_deg", *to_deg, part.tilt_deg, f64::NAN).into());
            }
        }
        Give::Join {
            across_deg,
            from,
            to,
            allowance,
        } => {
            let across_deg = E::check("across_deg", *across_deg, -360.0, 360.0)?;
            E::check("from", *from, -1e6, 1e6)?;
            E::check("to", *to, -1e6, 1e6)?;
            E::check("allowance", *allowance, 0.0, 1000.0)?;
            if from > to {
                return Err(E::no_solution("to", *to, *from, f64::NAN).into());
            }
            check_join(part, direction(across_deg), (*from, *to))?;
        }
        Give::Shorter {
            toward_deg,
            beyond,
            most,
        } => {
            let toward_deg = E::check("toward_deg", *toward_deg, -360.0, 360.0)?;
            E::check("beyond", *beyond, -1e6, 1e6)?;
            E::check("most", *most, 0.1, 1e5)?;
            let along = direction(toward_deg);
            check_moved(&part.outline, along, *beyond, (*most, -1.0))?;
            check_part(&Part {
                outline: moved(&part.outline, along, *beyond, -most),
                seam: moved(&part.seam, along, *beyond, -most),
                fold: None,
                ..part.clone()
            })?;
        }
        Give::Smaller { steps, .. } => {
            E::check_items("steps", steps.len(), 1, 100)?;
            let mut last = f64::NEG_INFINITY;
            for (index, step) in steps.iter().enumerate() {
                let here = |error: E| error.at_index(index);
                E::check("steps", step.amount, 0.0, 1e5).map_err(here)?;
                if step.amount <= last {
                    return Err(here(E::no_solution("steps", step.amount, last, f64::NAN)).into());
                }
                last = step.amount;
                check_part(&Part {
                    outline: step.outline.clone(),
                    fold: None,
                    ..part.clone()
                })?;
            }
        }
        Give::Instead { parts, .. } => {
            E::check_items("parts", parts.len(), 1, 100)?;
            for part in parts {
                check_part(part).map_err(|error| Wrong::Of(part.name.clone(), error))?;
            }
        }
        Give::Fewer { by } => {
            E::check_count("by", *by, 1, pieces(part))?;
        }
    }
    Ok(())
}

/// An error unless every line from `from` to `to` parts the outline in two.
fn check_join(part: &Part, along: Vec2, (from, to): (f64, f64)) -> Result<(), recloth::Error> {
    let apart = |stretch: &(f64, f64)| (from - stretch.0).abs() + (to - stretch.1).abs();
    let stretches = stretches(&part.outline, along)
        .into_iter()
        .map(|(low, high)| (low + WITHIN, high - WITHIN))
        .filter(|(low, high)| low < high);
    let nearest = stretches.reduce(|best, other| {
        let shared = |(low, high): (f64, f64)| to.min(high) - from.max(low);
        let better = shared(other) > shared(best)
            || (shared(other) == shared(best) && apart(&other) < apart(&best));
        if better { other } else { best }
    });
    match nearest {
        Some((low, high)) if from < low || from > high => {
            Err(recloth::Error::no_solution("from", from, low, high))
        }
        Some((low, high)) if to > high => Err(recloth::Error::no_solution("to", to, low, high)),
        Some(_) => Ok(()),
        None => Err(recloth::Error::no_solution(
            "from",
            from,
            f64::NAN,
            f64::NAN,
        )),
    }
}
