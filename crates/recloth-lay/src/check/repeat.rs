//! Whether a print runs on across the seams: points of one name at the same place of the repeat.
//!
//! What is asked, and of which pieces, is said at [`check`](crate::check()). A tilted piece is judged like any other, by
//! its points: there the print meets, and leaves them at a bend.

use std::collections::{BTreeMap, BTreeSet};

use kurbo::{Point, Vec2};

use super::{DEPTH, TILT};
use crate::lay::{half_turns, sin_cos_deg};
use crate::matching::Meets;
use crate::{Complaint, MatchPoint, Panel, Part, Placement, Repeat, placed};

/// A match point as it lies.
struct Met<'a> {
    index: usize,
    part: &'a Part,
    panel: &'a Panel,
    repeat: Repeat,
    placement: &'a Placement,
    point: &'a MatchPoint,
    /// How far along the grain of the panel and across it from where a repeat begins (mm).
    far: Vec2,
}

/// All that is wrong between points of the same name; every point is compared with the first laid of those it meets.
pub(super) fn check_repeat<'a>(
    laid: impl Iterator<Item = (usize, &'a Part, &'a Panel, &'a Placement)>,
    complaints: &mut Vec<Complaint>,
) {
    let mut met: Vec<Met<'_>> = Vec::new();
    for (index, part, panel, placement) in laid {
        if let Some(repeat) = panel.repeat() {
            met.extend(part.matches.iter().map(|point| Met {
                index,
                part,
                panel,
                repeat,
                placement,
                point,
                far: far(panel, repeat, placed(&[point.at], placement)[0]),
            }));
        }
    }
    let joined: BTreeSet<&str> = (met.iter())
        .filter(|one| one.meets() == Some(Meets::Both))
        .map(|one| one.point.name.as_str())
        .collect();
    let mut first_along: BTreeMap<&str, &Met<'_>> = BTreeMap::new();
    let mut first_across: BTreeMap<(&str, Meets), &Met<'_>> = BTreeMap::new();
    for one in &met {
        let name = one.point.name.as_str();
        let along = *first_along.entry(name).or_insert(one);
        let across = one.meets().map(|meets| match joined.contains(name) {
            true => Meets::Both,
            false => meets,
        });
        let across = across.map(|meets| *first_across.entry((name, meets)).or_insert(one));
        check_pair(one, along, across, complaints);
    }
}

/// A point against the first it meets along the grain, and the first it meets across, if it does; either may be itself.
fn check_pair(
    one: &Met<'_>,
    along: &Met<'_>,
    across: Option<&Met<'_>>,
    complaints: &mut Vec<Complaint>,
) {
    let lengths = |met: &Met<'_>| (met.repeat.along, met.repeat.across);
    let name = || one.point.name.clone();
    if lengths(along) != lengths(one) {
        complaints.push(Complaint::OtherRepeat {
            name: name(),
            first: along.index,
            second: one.index,
            panel: along.panel.name().to_owned(),
            other: one.panel.name().to_owned(),
        });
        return;
    }
    let names = |first: &Met<'_>| (first.part.name.clone(), one.part.name.clone());
    let mut turned = false;
    for (first, is_across) in [(Some(along), false), (across, true)] {
        let Some(first) = first else { continue };
        if first.own_repeat(is_across) == 0.0 || lengths(first) != lengths(one) {
            continue;
        }
        let (part, other) = names(first);
        if !one.lies_as(first) {
            if !turned {
                complaints.push(Complaint::OtherWay {
                    name: name(),
                    first: first.index,
                    second: one.index,
                    part,
                    other,
                });
            }
            turned = true;
        } else if is_across && one.placement.face_down() != first.placement.face_down() {
            complaints.push(Complaint::OtherFace {
                name: name(),
                first: first.index,
                second: one.index,
                part,
                other,
            });
        } else if let Some((off, repeat)) = off(first, one, is_across) {
            let (name, first, second) = (name(), first.index, one.index);
            complaints.push(match is_across {
                false => Complaint::OffAlong {
                    name,
                    first,
                    second,
                    part,
                    other,
                    off,
                    repeat,
                },
                true => Complaint::OffAcross {
                    name,
                    first,
                    second,
                    part,
                    other,
                    off,
                    repeat,
                },
            });
        }
    }
}

impl Met<'_> {
    fn meets(&self) -> Option<Meets> {
        self.point.meets(self.placement.hand)
    }

    /// How far the grain of the piece is turned from that of the panel (deg, -180 excluded to 180).
    fn off_deg(&self) -> f64 {
        let grain_deg = match self.placement.mirrored {
            true => 180.0 - self.part.grain_deg,
            false => self.part.grain_deg,
        };
        half_turns(grain_deg + self.placement.turn_deg - self.panel.grain_deg())
    }

    /// Whether its grain runs across the cloth rather than along it.
    fn crosswise(&self) -> bool {
        let off = self.off_deg().abs();
        off > 45.0 && off < 135.0
    }

    /// The repeat along its own grain, or across it (mm).
    fn own_repeat(&self, across: bool) -> f64 {
        match across == self.crosswise() {
            true => self.repeat.along,
            false => self.repeat.across,
        }
    }

    /// Whether its grain points where that of the other does, as near as their tilts let it.
    fn lies_as(&self, first: &Met<'_>) -> bool {
        let apart = half_turns(self.off_deg() - first.off_deg()).abs();
        apart <= self.part.tilt_deg + first.part.tilt_deg + 2.0 * TILT
    }
}

/// How far a point is along the grain of a panel and across it from where a repeat begins.
fn far(panel: &Panel, repeat: Repeat, at: Point) -> Vec2 {
    let (sin, cos) = sin_cos_deg(panel.grain_deg());
    let from = at - repeat.from;
    Vec2::new(cos * from.x + sin * from.y, cos * from.y - sin * from.x)
}

/// How far two points are from the same place of the repeat along (or across) the grain of the first, and that repeat, if
/// that is more than touching.
fn off(first: &Met<'_>, other: &Met<'_>, across: bool) -> Option<(f64, f64)> {
    let apart = other.far - first.far;
    let apart = match across == first.crosswise() {
        true => apart.x,
        false => apart.y,
    };
    let repeat = first.own_repeat(across);
    let off = (apart - (apart / repeat).round() * repeat).abs();
    (off > DEPTH).then_some((off, repeat))
}
