//! Cloth by the length with a repeat: where its pieces may lie so that they match, and rows of them.

use kurbo::{Point, Vec2};

use super::cloth::Cloth;
use super::unit::Unit;
use crate::chance::Chance;
use crate::crowd::{Attitude, Pose, Room};
use crate::links::{Links, Mismatch};
use crate::phase::{Phases, Ties};
use crate::search::Kind;
use crate::{Error, Part, Strip};

/// What ties the attitudes of a strip.
pub(super) struct Matched {
    pub(super) ties: Ties,
    /// The attitudes of each kind of piece.
    pub(super) kinds: Vec<Vec<usize>>,
    /// The longer of the two repeats.
    pub(super) longest: f64,
}

impl Cloth {
    /// Room for all repeats, beyond what the pieces take (mm).
    pub(super) fn slack(&self) -> f64 {
        self.matched.as_ref().map_or(0.0, |matched| matched.longest)
    }

    /// Where on the print the points meet, on so much cloth: as they did, or with a group of them elsewhere, or all anew;
    /// `None` where no choice was found that leaves every piece a place.
    pub(super) fn phases(
        &self,
        length: f64,
        base: Option<&Phases>,
        chance: &mut Chance,
    ) -> Option<Phases> {
        let Some(Matched { ties, kinds, .. }) = &self.matched else {
            return Some(Phases::default());
        };
        let rooms: Vec<Option<Room>> = self.rooms(length);
        let as_it_was = base.filter(|base| ties.suit(kinds, &rooms, base));
        if as_it_was.is_some() && chance.share() < 0.5 {
            return as_it_was.cloned();
        }
        base.and_then(|base| ties.choose(kinds, &rooms, Some(base), chance))
            .or_else(|| as_it_was.cloned())
            .or_else(|| ties.choose(kinds, &rooms, None, chance))
    }

    /// The room of every attitude on so much cloth, unless it is longer.
    pub(super) fn rooms(&self, length: f64) -> Vec<Option<Room>> {
        let room = |(index, shape): (usize, &Attitude)| {
            // A piece tilted one way may be longer than the other, and than the cloth.
            let short = shape.high.x - shape.low.x <= length * (1.0 + 1e-9);
            short.then(|| self.room(index, length))
        };
        let shapes = self.table.attitudes.iter();
        shapes.enumerate().map(room).collect()
    }

    /// The pieces in rows across the cloth, the longest first, each at the next place where it matches.
    pub(super) fn in_matched_rows(&self, matched: &Matched, spacing: f64) -> Option<Vec<Pose>> {
        // A little more than the spacing, which rounding cannot use up.
        let spacing = spacing * (1.0 + 1e-9) + 1e-6;
        let long = |stance: usize| {
            let shape = &self.table.attitudes[stance];
            shape.high.x - shape.low.x
        };
        let longest = (0..self.table.attitudes.len())
            .map(long)
            .fold(0.0, f64::max);
        let length = longest + matched.longest;
        let phases = self.phases(length, None, &mut Chance::new(0))?;
        let rooms = self.rooms(length);
        let mut chosen: Vec<(usize, Room)> = Vec::with_capacity(self.ways.len());
        for own in &self.ways {
            let placed = |&stance: &usize| {
                let room = matched.ties.room(stance, rooms[stance]?, &phases)?;
                Some((stance, room))
            };
            chosen.push(own.iter().find_map(placed)?);
        }
        let mut order: Vec<usize> = (0..chosen.len()).collect();
        order.sort_by(|&a, &b| long(chosen[b].0).total_cmp(&long(chosen[a].0)));
        let mut poses: Vec<Pose> = (chosen.iter())
            .map(|&(stance, _)| Pose {
                stance,
                shift: Point::ORIGIN,
            })
            .collect();
        let (mut along, mut across, mut end) = (0.0, 0.0, 0.0_f64);
        for piece in order {
            let (stance, room) = chosen[piece];
            let shape = &self.table.attitudes[stance];
            // The first place from here on: within a repeat along, and as far across as there is cloth.
            let from = |along: f64, across: f64| {
                let low = room.low + Vec2::new(along, across);
                let high = Point::new(low.x + matched.longest, room.high.y);
                match room.grid {
                    _ if low.y > high.y => None,
                    Some(grid) => grid.nearest(low, low, high),
                    None => Some(low),
                }
            };
            let place = from(along, across).or_else(|| {
                (along, across) = (end + spacing, 0.0);
                from(along, across)
            })?;
            poses[piece].shift = place;
            across = place.y + shape.high.y + spacing;
            end = end.max(place.x + shape.high.x);
        }
        Some(poses)
    }
}

/// The error of points that cannot all match.
pub(super) fn unmatched(parts: &[Part], mismatch: &Mismatch) -> Error {
    let [first, other] = mismatch.parts.map(|part| &parts[part].name);
    let which = if mismatch.across { "across" } else { "along" };
    let of = format!(
        "part {other:?} at {:?}, {} mm off {first:?} {which} the repeat of {} mm however it is matched elsewhere",
        mismatch.name, mismatch.off, mismatch.repeat
    );
    let nan = f64::NAN;
    let error = recloth::Error::no_solution("matches", mismatch.off, nan, nan);
    Error::new(of, error)
}

/// What ties the pieces, where cloth and pieces have something to match.
pub(super) fn links(parts: &[Part], units: &[Unit], strip: &Strip) -> Result<Option<Links>, Error> {
    let Some(repeat) = strip.repeat else {
        return Ok(None);
    };
    let mut kinds: Vec<(Kind, u32)> = Vec::new();
    for kind in units.iter().map(Unit::kind) {
        match kinds.iter_mut().find(|(other, _)| *other == kind) {
            Some((_, count)) => *count += 1,
            None => kinds.push((kind, 1)),
        }
    }
    let links = Links::new(parts, &kinds);
    // Two layers are matched by hand before they are cut, and then lie no longer selvedge on selvedge.
    let tied = |part: &Part| !part.matches.is_empty();
    if strip.folded && parts.iter().any(tied) {
        let length = repeat.along.max(repeat.across);
        let none = recloth::Error::no_solution("repeat", length, f64::NAN, f64::NAN);
        return Err(Error::new(
            "strip: folded, its layers cannot be matched",
            none,
        ));
    }
    Ok((!links.is_empty()).then_some(links))
}
