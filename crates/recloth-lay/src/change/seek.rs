//! The search for the least change.

use super::apply::{Amounts, apply, check_changes, joined, made, most_steps, own, pieces, shaped};
use super::never::{staying, too_much};
use super::{Change, Give, LeastChange, Needed};
use crate::bounds::quick;
use crate::cleave::direction;
use crate::fit::{check_all, quick_shortage};
use crate::trials::Trials;
use crate::watch::Listener;
use crate::{Error, Fit, Hand, Options, Panel, Part, Shortage, Together};

/// What one trial may use of the budget that is left; and how little is not worth a trial.
const SHARE: u64 = 8;
const LEAST: u64 = 1000;
/// How many numbers of joined and replaced pieces are tried together, and places of a join: at most so many where a half
/// uses up a panel, and so many evenly spread.
const NUMBERS: usize = 64;
const EXACT: usize = 12;
const SPREAD: u32 = 9;

struct Seek<'a> {
    parts: &'a [Part],
    panels: &'a [Panel],
    changes: &'a [Change],
    options: &'a Options,
    trials: Trials<'a>,
    most: Vec<u32>,
}

/// A trial in which all pieces fit.
struct Found {
    amounts: Amounts,
    parts: Vec<Part>,
    fit: Fit,
}

pub(super) fn seek(
    parts: &[Part],
    panels: &[Panel],
    changes: &[Change],
    options: &Options,
    listener: &mut Listener<'_>,
) -> Result<LeastChange, Error> {
    check_all(parts, panels, options)?;
    check_changes(parts, changes)?;
    let mut heard = |so_far| listener(so_far);
    let mut seek = Seek {
        parts,
        panels,
        changes,
        options,
        trials: Trials::new(panels, options, &mut heard),
        most: changes
            .iter()
            .map(|change| most_steps(&parts[change.part], &change.kind))
            .collect(),
    };
    let answer = seek.answer()?;
    Ok(LeastChange {
        answer,
        evaluations: seek.trials.used(),
        out_of_time: seek.trials.out_of_time(),
    })
}

impl Seek<'_> {
    fn answer(&mut self) -> Result<Needed, Error> {
        let kept = staying(self.parts, self.changes);
        let shortage = quick_shortage(&kept, self.panels, self.options)
            .or_else(|| too_much(self.parts, self.panels, self.changes));
        if let Some(shortage) = shortage {
            return Ok(Needed::Never {
                parts: kept,
                shortage,
            });
        }
        let none = Amounts {
            steps: vec![0; self.changes.len()],
            places: vec![0.0; self.changes.len()],
        };
        if let Some(found) = self.trial(none)? {
            return Ok(Needed::Nothing(Box::new(found.fit)));
        }
        for count in 1..=self.changes.len() {
            if let Some(found) = self.with_first(count)? {
                let found = self.leave_out(found, count)?;
                let found = self.bring_down(found)?;
                let found = self.centre(found)?;
                return Ok(Needed::Changed {
                    made: made(self.parts, self.changes, &found.amounts, &found.parts),
                    parts: found.parts,
                    fit: Box::new(found.fit),
                });
            }
        }
        Ok(match self.shortage(&kept)? {
            Some(shortage) => Needed::Never {
                parts: kept,
                shortage,
            },
            None => Needed::Undecided,
        })
    }

    /// A proof that some parts have no place together, by looking everywhere too.
    fn shortage(&mut self, parts: &[Part]) -> Result<Option<Shortage>, Error> {
        if self.trials.is_over() || self.trials.left < LEAST {
            return Ok(None);
        }
        let found = self.trials.fit(parts, self.trials.left)?;
        Ok(match found.together {
            Together::Cannot(shortage) => Some(shortage),
            Together::Fit | Together::Undecided => None,
        })
    }

    fn trial(&mut self, amounts: Amounts) -> Result<Option<Found>, Error> {
        let Some(parts) = apply(self.parts, self.changes, &amounts) else {
            return Ok(None);
        };
        if self.trials.is_over() || self.trials.left < LEAST {
            return Ok(None);
        }
        let fit = self
            .trials
            .fit(&parts, (self.trials.left / SHARE).max(LEAST))?;
        Ok((fit.together == Together::Fit).then_some(Found {
            amounts,
            parts,
            fit,
        }))
    }

    /// Whether a change is of single pieces, so that more of it need not help.
    fn by_piece(&self, change: usize) -> bool {
        matches!(
            self.changes[change].kind,
            Give::Join { .. } | Give::Instead { .. }
        )
    }

    /// The first changes at their fullest; joins and replacements in all numbers, as few as may be of the last.
    fn with_first(&mut self, count: usize) -> Result<Option<Found>, Error> {
        let mut steps = vec![0; self.changes.len()];
        steps[..count].copy_from_slice(&self.most[..count]);
        let numbers: Vec<usize> = (0..count).filter(|&change| self.by_piece(change)).collect();
        for &change in &numbers {
            if change + 1 == count {
                steps[change] = self.most[change].min(1);
            }
        }
        for _ in 0..NUMBERS {
            if self.claimed(&steps)
                && let Some(found) = self.try_places(&steps)?
            {
                return Ok(Some(found));
            }
            // The next combination: the numbers of earlier changes go down, that of the last goes up.
            let mut more = false;
            for &change in &numbers {
                let last = change + 1 == count;
                let end = if last { self.most[change] } else { 0 };
                if steps[change] != end {
                    if last {
                        steps[change] += 1;
                    } else {
                        steps[change] -= 1;
                    }
                    more = true;
                    break;
                }
                steps[change] = self.most[change].min(if last { 1 } else { u32::MAX });
            }
            if !more {
                break;
            }
        }
        Ok(None)
    }

    /// Whether all pieces that joins and replacements ask for are there: any other numbers come to the same as some of these.
    fn claimed(&self, steps: &[u32]) -> bool {
        self.parts.iter().enumerate().all(|(index, part)| {
            let sum = |of: &dyn Fn(usize) -> bool| -> u32 {
                (0..steps.len())
                    .filter(|&change| self.changes[change].part == index && of(change))
                    .map(|change| steps[change])
                    .sum()
            };
            let fewer = sum(&|change| matches!(self.changes[change].kind, Give::Fewer { .. }));
            let there = pieces(part) - fewer.min(pieces(part));
            sum(&|change| self.by_piece(change)) <= there
        })
    }

    /// These steps, the joins at the places where they may fit, in turn: all at once, then one by one.
    fn try_places(&mut self, steps: &[u32]) -> Result<Option<Found>, Error> {
        let joins: Vec<(usize, Vec<f64>)> = (0..steps.len())
            .filter(|&change| steps[change] > 0)
            .filter_map(|change| Some((change, self.places(change, steps)?)))
            .collect();
        let mut places = vec![0.0; steps.len()];
        let rounds = joins.iter().map(|(_, list)| list.len()).max().unwrap_or(1);
        for round in 0..rounds {
            for (change, list) in &joins {
                places[*change] = list[round.min(list.len() - 1)];
            }
            if let Some(found) = self.trial_at(steps, &places)? {
                return Ok(Some(found));
            }
        }
        if joins.len() < 2 {
            return Ok(None);
        }
        for (alone, list) in &joins {
            for &place in &list[1..] {
                for (change, list) in &joins {
                    places[*change] = if change == alone { place } else { list[0] };
                }
                if let Some(found) = self.trial_at(steps, &places)? {
                    return Ok(Some(found));
                }
            }
        }
        Ok(None)
    }

    fn trial_at(&mut self, steps: &[u32], places: &[f64]) -> Result<Option<Found>, Error> {
        self.trial(Amounts {
            steps: steps.to_vec(),
            places: places.to_vec(),
        })
    }

    /// For each panel how far half 1 may reach there, and how near half 2 may begin, by quick bounds.
    fn ends(&self, change: usize, steps: &[u32]) -> Option<Vec<[Option<f64>; 2]>> {
        let Change { part, kind } = &self.changes[change];
        let Give::Join {
            across_deg,
            from,
            to,
            allowance,
        } = kind
        else {
            return None;
        };
        let along = direction(*across_deg);
        let part = shaped(
            &self.parts[*part],
            &own(self.changes, *part, |change| steps[change]),
        )?;
        let fits = |panel: &Panel, half: usize, at: f64| {
            joined(&part, along, at, *allowance).is_some_and(|two| {
                Hand::BOTH
                    .iter()
                    .any(|&hand| part.count(hand) > 0 && quick(&two[half], hand, panel).is_none())
            })
        };
        let ends = self.panels.iter().map(|panel| {
            [
                furthest(*from, *to, |at| fits(panel, 0, at)),
                furthest(*to, *from, |at| fits(panel, 1, at)),
            ]
        });
        Some(ends.collect())
    }

    /// Where a join may lie: the middle, where each half just uses up a panel, and evenly spread.
    fn places(&self, change: usize, steps: &[u32]) -> Option<Vec<f64>> {
        let Give::Join { from, to, .. } = self.changes[change].kind else {
            return None;
        };
        let ends = self.ends(change, steps)?;
        let middle = from.midpoint(to);
        let mut exact: Vec<f64> = Vec::new();
        for high in ends.iter().filter_map(|end| end[0]) {
            for low in ends.iter().filter_map(|end| end[1]) {
                if low <= high {
                    exact.push(tidy(low, high));
                }
            }
        }
        exact.sort_by(|a, b| {
            let off = |at: &f64| (at - middle).abs();
            off(a).total_cmp(&off(b)).then(a.total_cmp(b))
        });
        exact.dedup();
        exact.truncate(EXACT);
        let spread = (0..SPREAD).map(|i| {
            let share = (f64::from(i) + 0.5) / f64::from(SPREAD);
            from + (to - from) * share
        });
        let mut places = vec![tidy(from, to)];
        for at in exact.into_iter().chain(spread) {
            if places.iter().all(|other| (other - at).abs() > 0.05) {
                places.push(at);
            }
        }
        Some(places)
    }

    /// Every seam in the middle of where both halves may end on the panels they lie on, if all still fits.
    fn centre(&mut self, mut found: Found) -> Result<Found, Error> {
        let mut index = self.parts.len();
        for change in 0..self.changes.len() {
            let steps = found.amounts.steps[change];
            let half = index;
            index += match (&self.changes[change].kind, steps) {
                (Give::Join { .. }, 1..) => 2,
                (Give::Instead { parts, .. }, 1..) => parts.len(),
                _ => continue,
            };
            let Some(ends) = self.ends(change, &found.amounts.steps) else {
                continue;
            };
            let end = |half: usize, which: usize| {
                let at = found.fit.lay.placements.iter().find(|at| at.part == half)?;
                ends[at.panel][which]
            };
            if let (Some(high), Some(low)) = (end(half, 0), end(half + 1, 1))
                && low <= high
            {
                let mut amounts = found.amounts.clone();
                amounts.places[change] = tidy(low, high);
                if amounts != found.amounts {
                    found = self.trial(amounts)?.unwrap_or(found);
                }
            }
        }
        Ok(found)
    }

    /// Without the changes that are not needed, the last first.
    fn leave_out(&mut self, mut found: Found, count: usize) -> Result<Found, Error> {
        // Without the last of them not all pieces fit.
        for change in (0..count - 1).rev() {
            let mut amounts = found.amounts.clone();
            if amounts.steps[change] > 0 {
                amounts.steps[change] = 0;
                found = self.trial(amounts)?.unwrap_or(found);
            }
        }
        Ok(found)
    }

    /// Every amount as small as is found to fit, the last first.
    fn bring_down(&mut self, mut found: Found) -> Result<Found, Error> {
        for change in (0..self.changes.len()).rev() {
            let now = found.amounts.steps[change];
            if self.by_piece(change) {
                for fewer in 1..now {
                    let mut steps = found.amounts.steps.clone();
                    steps[change] = fewer;
                    if let Some(less) = self.try_places(&steps)? {
                        found = less;
                        break;
                    }
                }
                continue;
            }
            let (mut not, mut does) = (0, now);
            while does > not + 1 {
                let middle = not.midpoint(does);
                let mut amounts = found.amounts.clone();
                amounts.steps[change] = middle;
                match self.trial(amounts)? {
                    Some(less) => (found, does) = (less, middle),
                    None => not = middle,
                }
            }
        }
        Ok(found)
    }
}

/// The place furthest from `start` towards `end` that does, if the start does.
fn furthest(start: f64, end: f64, does: impl Fn(f64) -> bool) -> Option<f64> {
    if !does(start) {
        return None;
    }
    if does(end) {
        return Some(end);
    }
    let (mut good, mut bad) = (start, end);
    for _ in 0..40 {
        let middle = good.midpoint(bad);
        match does(middle) {
            true => good = middle,
            false => bad = middle,
        }
    }
    Some(good)
}

/// The middle of a stretch, on a whole millimetre or a tenth where one lies near within it.
fn tidy(low: f64, high: f64) -> f64 {
    let middle = low.midpoint(high);
    [1.0, 10.0]
        .map(|parts| (middle * parts).round() / parts)
        .into_iter()
        .find(|&at| low <= at && at <= high)
        .unwrap_or(middle)
}
