//! What is laid at a time: a piece; on folded cloth what is cut through both layers at once.

use kurbo::{Point, Vec2};

use crate::bounds::{area, grain_turn, ways};
use crate::check::TILT;
use crate::lay::half_turns;
use crate::part::{axis, mirror};
use crate::search::Kind;
use crate::shape::{bounds, signed_area};
use crate::{Error, Faces, Hand, Panel, Part, Placement, Shows, Strip, placed};

/// Share of the cloth that pieces are taken to cover where the folded edge is shared out. The number has no source.
const COVERED: f64 = 0.8;

/// How a unit is cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Cut {
    /// One piece; on folded cloth what is cut from the other layer is spare.
    Single,
    /// A piece, and one of this hand from the other layer.
    Pair(Hand),
    /// One piece that lies on the fold.
    OnFold,
}

/// What is laid at a time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Unit {
    pub(super) part: usize,
    /// Hand of the piece, of a pair the one on the layer that the search lays on.
    pub(super) hand: Hand,
    pub(super) cut: Cut,
    /// A line in which the part is its own mirror image: of two alike, one may lie where the image of the other does.
    axis: Option<[Point; 2]>,
}

/// All units of some parts.
pub(super) fn units(parts: &[Part], strip: &Strip, panel: &Panel) -> Vec<Unit> {
    let mut units = Vec::new();
    for (part, wanted) in parts.iter().enumerate() {
        let axis = match (strip.folded, wanted.fold) {
            (false, _) => None,
            (true, Some(fold)) => Some(fold),
            // In a line square to the grain its image would point the other way.
            (true, None) => axis(wanted, !strip.nap || wanted.either_way),
        };
        let unit = |hand: Hand, cut: Cut| Unit {
            part,
            hand,
            cut,
            axis,
        };
        let each = |cut: Cut| {
            let of = move |hand: Hand| (0..wanted.count(hand)).map(move |_| unit(hand, cut));
            Hand::BOTH.into_iter().flat_map(of)
        };
        match (strip.folded, wanted.fold) {
            (false, _) => units.extend(each(Cut::Single)),
            (true, Some(_)) => units.extend(each(Cut::OnFold)),
            (true, None) => {
                let pairs = wanted.as_drawn.min(wanted.mirrored);
                units.extend((0..pairs).map(|_| unit(Hand::AsDrawn, Cut::Pair(Hand::Mirrored))));
                // Two alike are a pair where the mirror image is the same, or one of them may lie face down.
                let either = panel.faces() == Faces::Two || wanted.shows == Shows::Either;
                let alike = either || axis.is_some();
                for hand in Hand::BOTH {
                    let left = wanted.count(hand) - pairs;
                    let pairs = if alike { left / 2 } else { 0 };
                    units.extend((0..pairs).map(|_| unit(hand, Cut::Pair(hand))));
                    units.extend((2 * pairs..left).map(|_| unit(hand, Cut::Single)));
                }
            }
        }
    }
    if strip.folded {
        share_fold(parts, strip, panel, &mut units);
    }
    units
}

/// Where more pieces want to lie on the fold than it is likely to be long, takes some from it, the longest first, and cuts
/// them as pairs: that takes as much cloth, and no fold.
fn share_fold(parts: &[Part], strip: &Strip, panel: &Panel, units: &mut Vec<Unit>) {
    let covered: f64 = units.iter().map(|unit| unit.covers(parts)).sum();
    let length = covered / (strip.width / 2.0) / COVERED;
    // Length and width of each part as it lies on the fold.
    let sizes: Vec<Option<Vec2>> = (parts.iter().enumerate())
        .map(|(part, of)| {
            let hand = Hand::AsDrawn;
            let unit = Unit {
                part,
                hand,
                cut: Cut::OnFold,
                axis: Some(of.fold?),
            };
            let &(mirrored, turn_deg) = unit.on_fold(of, panel).ok()?.first()?;
            let at = unit.lying(hand, mirrored, turn_deg);
            let (low, high) = bounds(&placed(&of.outline, &at));
            Some(high - low)
        })
        .collect();
    let size = |unit: &Unit| match unit.cut {
        Cut::OnFold => sizes[unit.part],
        _ => None,
    };
    while units
        .iter()
        .filter_map(size)
        .map(|size| size.x)
        .sum::<f64>()
        > length
    {
        let longest = (0..parts.len())
            .filter_map(|part| Some((part, sizes[part]?)))
            .filter(|(_, size)| size.y <= strip.width / 2.0)
            .filter(|(part, _)| {
                let on = |unit: &&Unit| unit.part == *part && unit.cut == Cut::OnFold;
                units.iter().filter(on).count() > 1
            })
            .max_by(|(_, a), (_, b)| a.x.total_cmp(&b.x));
        let Some((part, _)) = longest else { break };
        let on = |unit: &Unit| unit.part == part && unit.cut == Cut::OnFold;
        // The last is of the other hand where there are both.
        let Some(last) = units.iter().rposition(on) else {
            break;
        };
        let other = units.remove(last).hand;
        if let Some(first) = units.iter_mut().find(|unit| on(unit)) {
            first.cut = Cut::Pair(other);
        }
    }
}

impl Unit {
    /// What the search lays of it.
    pub(super) fn kind(&self) -> Kind {
        Kind {
            part: self.part,
            hand: self.hand,
        }
    }

    /// Area it covers of the layer that it is laid on (mm²).
    pub(super) fn covers(&self, parts: &[Part]) -> f64 {
        let whole = area(&parts[self.part].outline);
        match self.cut {
            Cut::OnFold => whole / 2.0,
            _ => whole,
        }
    }

    /// The hands that the piece laid may have, and whether its outline is then mirrored; of a pair it may be either.
    pub(super) fn sides(&self, part: &Part, panel: &Panel) -> Vec<(Hand, bool)> {
        let hands = match self.cut {
            Cut::Pair(other) if other != self.hand => vec![self.hand, other],
            _ => vec![self.hand],
        };
        let mut sides: Vec<(Hand, bool)> = Vec::new();
        for hand in hands {
            for mirrored in ways(part, hand, panel) {
                if sides.iter().all(|(_, other)| *other != mirrored) {
                    sides.push((hand, mirrored));
                }
            }
        }
        sides
    }

    /// A placement that is not yet shifted.
    pub(super) fn lying(&self, hand: Hand, mirrored: bool, turn_deg: f64) -> Placement {
        Placement {
            part: self.part,
            hand,
            panel: 0,
            mirrored,
            turn_deg,
            shift: Vec2::ZERO,
        }
    }

    /// Whether the outline is mirrored, and the turns that lay the fold of the part along the cloth (deg), its grain within
    /// its tolerance.
    ///
    /// # Errors
    /// The least angle by which the grain would be off.
    pub(super) fn on_fold(&self, part: &Part, panel: &Panel) -> Result<Vec<(bool, f64)>, f64> {
        let [a, b] = part.fold.unwrap_or_default();
        // It is its own mirror image: turned over it lies in the same places.
        let Some((_, mirrored)) = self.sides(part, panel).first().copied() else {
            return Ok(Vec::new());
        };
        let run = b - a;
        let fold_deg = libm::atan2(run.y, run.x) * (180.0 / core::f64::consts::PI);
        let along = match mirrored {
            true => fold_deg - 180.0,
            false => -fold_deg,
        };
        let square = grain_turn(part, panel, mirrored);
        let off = |turn: f64| {
            (part.turned(panel.nap()).iter())
                .map(|half| half_turns(turn - square - half).abs())
                .fold(f64::INFINITY, f64::min)
        };
        let turns = [along, along + 180.0].map(half_turns);
        let lies: Vec<(bool, f64)> = (turns.into_iter())
            .filter(|&turn| off(turn) <= part.tilt_deg + TILT / 2.0)
            .map(|turn| (mirrored, turn))
            .collect();
        match lies.is_empty() {
            true => Err(off(turns[0]).min(off(turns[1]))),
            false => Ok(lies),
        }
    }

    /// What the unit gives where its piece lies so, on cloth folded at half of `width`: the piece, and its twin if it has one.
    pub(super) fn cut(&self, at: Placement, width: f64) -> Vec<Placement> {
        let Cut::Pair(other) = self.cut else {
            return vec![at];
        };
        // Of a pair that was turned over, the other hand lies below.
        let other = match at.hand == self.hand {
            true => other,
            false => self.hand,
        };
        match self.axis {
            Some(axis) if other == at.hand => vec![at, alike(at, axis, width)],
            _ => vec![at, twin(at, other, width)],
        }
    }
}

/// The mirror image of a placement in the line y = `width` / 2.
fn twin(at: Placement, hand: Hand, width: f64) -> Placement {
    Placement {
        hand,
        mirrored: !at.mirrored,
        turn_deg: half_turns(180.0 - at.turn_deg),
        shift: Vec2::new(at.shift.x, width - at.shift.y),
        ..at
    }
}

/// The placement of a part that is its own mirror image in `axis`, the same side up, where the mirror image of `at` lies.
fn alike(at: Placement, axis: [Point; 2], width: f64) -> Placement {
    let run = axis[1] - axis[0];
    let axis_deg = libm::atan2(run.y, run.x) * (180.0 / core::f64::consts::PI);
    // Mirrored in its axis first, then in the fold of the cloth: a turn, and a shift that follows from where the origin goes.
    let turn_deg = match at.mirrored {
        true => 2.0 * axis_deg - at.turn_deg,
        false => -2.0 * axis_deg - at.turn_deg,
    };
    let image = placed(&[mirror(Point::ORIGIN, axis)], &twin(at, at.hand, width));
    Placement {
        turn_deg: half_turns(turn_deg),
        shift: image[0].to_vec2(),
        ..at
    }
}

/// What of convex shapes lies below a level line.
pub(super) fn below(shapes: &[Vec<Point>], line: f64) -> Vec<Vec<Point>> {
    let clipped = |shape: &Vec<Point>| {
        let mut kept = Vec::with_capacity(shape.len() + 1);
        for (index, &p) in shape.iter().enumerate() {
            let before = shape[(index + shape.len() - 1) % shape.len()];
            if (p.y < line) != (before.y < line) && p.y != line && before.y != line {
                let far = (line - before.y) / (p.y - before.y);
                kept.push(Point::new(before.x + far * (p.x - before.x), line));
            }
            if p.y <= line {
                kept.push(p);
            }
        }
        kept
    };
    (shapes.iter().map(clipped))
        .filter(|shape| signed_area(shape) > 1e-9)
        .collect()
}

/// Where the fold of a part lies when it is placed so: its height.
pub(super) fn fold_height(part: &Part, at: &Placement) -> f64 {
    let ends = placed(&part.fold.unwrap_or_default(), at);
    (ends[0].y + ends[1].y) / 2.0
}

/// An error of a part on the strip.
pub(super) fn refused(part: &Part, strip: &Strip, more: &str, error: recloth::Error) -> Error {
    let folded = if strip.folded { "folded " } else { "" };
    Error::new(
        format!("part {:?} on the {folded}strip{more}", part.name),
        error,
    )
}
