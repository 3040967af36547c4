//! The parallel of a ring, each part at its own distance, trimmed where it runs into itself.
//!
//! Every part of the seam line has a band beside it as wide as its allowance; corners add theirs. The raw ring is the sum
//! of the borders of the piece, the bands and the corners, so it goes round a point as often as these cover it.
//! It is cut where it crosses itself, and those pieces are kept that have something covered to their left and nothing
//! to their right: no point of them lies inside a band, so none is nearer to a part than that part's allowance.

use alloc::vec::Vec;
use kurbo::{Point, Rect, Vec2};

use super::corner::{
    Arm, Corners, Joint, Points, SMOOTH, Unmade, ended_on, inward, pointed, treated,
};
use super::cross::{boxes_meet, crossings};
use super::edge::{Corner, POINT_LIMIT};
use super::ring::{self, winding_boxed};
use super::segment::Segment;
use super::simple::{Known, is_simple, may_meet, only_crossing};
use super::vector::{cross, dot, left, length, right, unit};
use crate::Error;

/// A part of the ring a parallel is made of.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Part {
    /// Which edge it belongs to.
    pub(crate) edge: usize,
    /// The part of the seam line.
    pub(crate) segment: Segment,
    /// Distance of its parallel, to the right (mm).
    pub(crate) distance: f64,
    /// The corner at its end; none where the edge goes on.
    pub(crate) corner: Option<Corner>,
    /// Whether it lies on a fold of the cloth.
    pub(crate) fold: bool,
}

/// A part of a parallel, with the edge it is parallel to; none in a corner.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Bit {
    pub(crate) segment: Segment,
    pub(crate) edge: Option<usize>,
}

/// Below this a join is skipped (mm).
const SHORTEST: f64 = 1e-9;
/// How far to the sides of a part is looked to see what it borders (mm).
const ASIDE: f64 = 1e-7;
/// A spike narrower than this is cut off (mm).
const SPIKE: f64 = 1e-5;
/// Parts are linked over gaps up to this (mm), which crossings at a small angle leave.
const LINK: f64 = 1e-3;

/// The closed rings around what lies beside and within a ring of parts, covered side to the left, and the corners that could
/// not be made as asked, each as the error that names the edge to change. `base` is added to how often each point is
/// covered: 0 for a ring that runs counter-clockwise, 1 for one that runs clockwise.
pub(crate) fn parallel(parts: &[Part], base: i32) -> (Vec<Vec<Bit>>, Vec<Error>) {
    let (drawn, unmade) = Drawn::new(parts);
    let rings = match drawn.plain(parts, base) {
        Some(ring) => Vec::from([ring]),
        None => trim(&without_spikes(Drawn::new(parts).0.ring(parts)), base),
    };
    (rings, unmade)
}

/// The parallels of all parts and the joints between them.
struct Drawn {
    lines: Vec<Line>,
    joints: Vec<(Arm, Joint, Arm)>,
}

impl Drawn {
    fn new(parts: &[Part]) -> (Drawn, Vec<Error>) {
        let count = parts.len();
        let mut firsts: Vec<_> = parts
            .iter()
            .map(|p| right(p.segment.start_tangent()))
            .collect();
        let mut lasts: Vec<_> = parts
            .iter()
            .map(|p| right(p.segment.end_tangent()))
            .collect();
        // Where the ring goes on smoothly both parts share one normal, so that their parallels meet exactly.
        for i in 0..count {
            let next = (i + 1) % count;
            let smooth = if parts[i].corner.is_some() {
                1e-9
            } else {
                1e-4
            };
            if cross(lasts[i], firsts[next]).abs() < smooth && dot(lasts[i], firsts[next]) > 0.0 {
                let shared = unit(lasts[i] + firsts[next]);
                (lasts[i], firsts[next]) = (shared, shared);
            }
        }
        let mut lines: Vec<Line> = (0..count)
            .map(|i| {
                let Part {
                    segment, distance, ..
                } = parts[i];
                Line {
                    segment: segment.parallel_between(distance, firsts[i], lasts[i]),
                    state: [End::Square; 2],
                }
            })
            .collect();
        let mut unmade = Vec::new();
        let mut joints = Vec::with_capacity(count);
        for i in 0..count {
            let next = (i + 1) % count;
            let this = Arm {
                along: left(lasts[i]),
                out: lasts[i],
                width: parts[i].distance,
            };
            let after = Arm {
                along: right(firsts[next]),
                out: firsts[next],
                width: parts[next].distance,
            };
            let joint = joint(parts, &lines, i, [this, after], &mut unmade);
            stop(parts, &mut lines, i, &joint);
            joints.push((this, joint, after));
        }
        (Drawn { lines, joints }, unmade)
    }

    /// All in one closed ring, which may cross itself.
    fn ring(&self, parts: &[Part]) -> Vec<Bit> {
        let Drawn { lines, joints } = self;
        let mut chain = Chain::default();
        chain.bits.reserve(3 * lines.len());
        for (i, (this, joint, after)) in joints.iter().enumerate() {
            let (line, next) = (&lines[i], &lines[(i + 1) % lines.len()]);
            let corner = parts[i].segment.end;
            if line.state != [End::Gone; 2] {
                chain.to(line.segment.start);
                chain.run(line.segment, parts[i].edge);
            }
            if line.state[1] == End::Square {
                chain.to(this.end(corner));
            }
            for &(point, bulge) in &joint.path {
                chain.bend(point, bulge);
            }
            if next.state[0] == End::Square {
                chain.to(after.end(corner));
            }
        }
        chain.close()
    }

    /// The ring where it only crosses itself at inward corners, beside each in a loop within it, and is simple without them, as
    /// most are. What such a loop goes round is covered by the ring too, so that nothing else need be asked.
    fn plain(mut self, parts: &[Part], base: i32) -> Option<Vec<Bit>> {
        let drawn = &mut self;
        let count = parts.len();
        let mut loops = Vec::new();
        for (i, part) in parts.iter().enumerate() {
            let (this, joint, after) = &mut drawn.joints[i];
            if !joint.inward {
                continue;
            }
            let next = (i + 1) % count;
            let (a, b) = (drawn.lines[i].segment, drawn.lines[next].segment);
            let at = part.segment.end;
            let ends = [this.end(at), after.end(at)];
            if ends != [a.end, b.start] || i == next {
                return None;
            }
            let met = only_crossing(&a, &b)?;
            let (a_left, b_left) = (a.between(a.start, met), b.between(met, b.end));
            // Turning to the right there, the ring has the loop to its left, within it.
            if cross(a_left.end_tangent(), b_left.start_tangent()) >= 0.0 {
                return None;
            }
            joint.path.clear();
            (drawn.lines[i].segment, drawn.lines[next].segment) = (a_left, b_left);
            (drawn.lines[i].state[1], drawn.lines[next].state[0]) = (End::Cut, End::Cut);
            let loose = [a.between(met, a.end), b.between(b.start, met)];
            let square = [Segment::line(ends[0], at), Segment::line(at, ends[1])];
            loops.push((met, loose, square));
        }
        let ring = drawn.ring(parts);
        let known: Vec<Known> = ring.iter().map(|bit| Known::new(bit.segment)).collect();
        let around = ring::area(ring.iter().map(|bit| &bit.segment)) > 0.0;
        if around != (base == 0) || !is_simple(&known) {
            return None;
        }
        let clear = |(met, loose, square): &(Point, [Segment; 2], [Segment; 2])| {
            let hits = |side: &Segment, but: bool| {
                let bounds = side.hull();
                let beside = |one: &Segment| but && (one.end == *met || one.start == *met);
                known.iter().any(|one| {
                    boxes_meet(&bounds, &one.bounds)
                        && !beside(&one.segment)
                        && may_meet(side, &one.segment)
                })
            };
            !(loose.iter().any(|side| hits(side, true))
                || square.iter().any(|side| hits(side, false)))
        };
        loops.iter().all(clear).then_some(ring)
    }
}

/// The parallel of a part, and how it starts and ends.
#[derive(Clone, Copy)]
struct Line {
    segment: Segment,
    state: [End; 2],
}

#[derive(Clone, Copy, PartialEq)]
enum End {
    /// Square to the end of the part.
    Square,
    /// Before that, where a corner leaves or meets it.
    Cut,
    /// A corner takes all of it.
    Gone,
}

/// How the parallels of a part and the next are joined.
fn joint(
    parts: &[Part],
    lines: &[Line],
    index: usize,
    [this, after]: [Arm; 2],
    unmade: &mut Vec<Error>,
) -> Joint {
    let count = parts.len();
    let next = (index + 1) % count;
    let at = parts[index].segment.end;
    let corner = parts[index].corner.unwrap_or_default();
    let turn = cross(this.out, after.out);
    let straight = |points: Points| Joint::straight(&points);
    if turn < -1e-9 || (turn < 0.0 && dot(this.out, after.out) > 0.0) {
        let points = inward(at, this, after, corner);
        return Joint {
            inward: points.len() == 1,
            ..straight(points)
        };
    }
    let turns = turn > 1e-9 || dot(this.out, after.out) < 0.0;
    if !turns || this.width.max(after.width) <= 0.0 {
        return Joint::default();
    }
    if let Corner::Pointed { limit } = corner {
        // What would be cut beyond a fold is not there to be cut.
        let folds = [index, next].map(|part| parts[part].fold && limit.is_finite());
        let folded = match folds {
            [true, _] => ended_on(at, this, after, &edge_line(parts, lines, next, false)),
            [_, true] => ended_on(at, after, this, &edge_line(parts, lines, index, true))
                .map(Joint::reversed),
            _ => None,
        };
        return folded.unwrap_or_else(|| straight(pointed(at, this, after, limit)));
    }
    let smooth = turn < SMOOTH && dot(this.out, after.out) > 0.0;
    if smooth {
        return straight(pointed(at, this, after, POINT_LIMIT));
    }
    let away = match corner {
        Corner::Rounded { .. } | Corner::SteppedOnThis | Corner::SteppedOnNext => {
            Default::default()
        }
        _ => [
            edge_line(parts, lines, index, true),
            edge_line(parts, lines, next, false),
        ],
    };
    let corners = Corners {
        at,
        this: (this, &away[0]),
        next: (after, &away[1]),
    };
    let made = treated(&corners, corner).and_then(|joint| {
        let (hem, is_next) = match corner {
            Corner::MirroredOnThis => (this, false),
            Corner::MirroredOnNext => (after, true),
            _ => return Ok(joint),
        };
        match runs_into(parts, &joint, at, hem.out) {
            Some(depth) => Err(Unmade {
                error: Error::no_solution("allowance", hem.width, f64::NAN, depth),
                next: is_next,
            }),
            None => Ok(joint),
        }
    });
    made.unwrap_or_else(|Unmade { error, next: other }| {
        let edge = parts[if other { next } else { index }].edge;
        unmade.push(error.at_index(edge));
        straight(pointed(at, this, after, POINT_LIMIT))
    })
}

/// The cut line of the edge of a part, walked from that part: backward to the start of the edge, or forward to its end.
fn edge_line(parts: &[Part], lines: &[Line], from: usize, back: bool) -> Vec<(usize, Segment)> {
    let count = parts.len();
    let mut walked = Vec::new();
    let mut index = from;
    for _ in 0..count {
        let before = (index + count - 1) % count;
        let Line { segment, state } = lines[index];
        if state != [End::Gone; 2] && length(segment.end - segment.start) > 0.0 {
            let segment = if back { segment.reversed() } else { segment };
            walked.push((index, segment));
        }
        let last = if back { before } else { index };
        if parts[last].corner.is_some() {
            break;
        }
        index = if back { before } else { (index + 1) % count };
    }
    walked
}

/// Leaves and meets the parallels where a joint says, at the corner that ends this part.
fn stop(parts: &[Part], lines: &mut [Line], index: usize, joint: &Joint) {
    let count = parts.len();
    if let Some((part, point)) = joint.leave {
        let mut gone = index;
        while gone != part {
            lines[gone].state = [End::Gone; 2];
            gone = (gone + count - 1) % count;
        }
        let Line { segment, state } = &mut lines[part];
        let start = segment.start;
        *segment = segment.part(0.0, segment.along(point));
        (segment.start, segment.end, state[1]) = (start, point, End::Cut);
    }
    if let Some((part, point)) = joint.meet {
        let mut gone = (index + 1) % count;
        while gone != part {
            lines[gone].state = [End::Gone; 2];
            gone = (gone + 1) % count;
        }
        let Line { segment, state } = &mut lines[part];
        let end = segment.end;
        *segment = segment.part(segment.along(point), segment.length());
        (segment.start, segment.end, state[0]) = (point, end, End::Cut);
    }
}

/// Whether the legs of a joint meet the piece anywhere but at the corner itself: a mirrored corner takes from the
/// allowances, and must not take from the piece. Then how far outward from the hem's fold they first do (mm).
fn runs_into(parts: &[Part], joint: &Joint, corner: Point, out: Vec2) -> Option<f64> {
    let mut depth: Option<f64> = None;
    for pair in joint.path.windows(2) {
        let leg = Segment::arc(pair[0].0, pair[1].0, pair[1].1);
        let bounds = leg.bounds();
        for part in parts {
            if !boxes_meet(&bounds, &part.segment.bounds()) {
                continue;
            }
            crossings(&leg, &part.segment, |point, _, _| {
                if length(point - corner) > LINK {
                    let at = dot(point - corner, out).max(0.0);
                    depth = Some(depth.map_or(at, |least: f64| least.min(at)));
                }
            });
        }
    }
    depth
}

/// A ring in the making.
#[derive(Default)]
struct Chain {
    bits: Vec<Bit>,
    at: Option<Point>,
}

impl Chain {
    /// A straight join to a point.
    fn to(&mut self, point: Point) {
        self.bend(point, 0.0);
    }

    /// A join to a point, by an arc of this bulge.
    fn bend(&mut self, point: Point, bulge: f64) {
        match self.at {
            Some(at) if length(point - at) > SHORTEST => {
                self.bits.push(Bit {
                    segment: Segment::arc(at, point, bulge),
                    edge: None,
                });
                self.at = Some(point);
            }
            Some(_) => {}
            None => self.at = Some(point),
        }
    }

    /// A part parallel to an edge.
    fn run(&mut self, mut segment: Segment, edge: usize) {
        if length(segment.end - segment.start) <= SHORTEST {
            return;
        }
        if let Some(at) = self.at {
            segment.start = at;
        }
        self.at = Some(segment.end);
        self.bits.push(Bit {
            segment,
            edge: Some(edge),
        });
    }

    fn close(mut self) -> Vec<Bit> {
        if let (Some(first), Some(at)) = (self.bits.first().map(|bit| bit.segment.start), self.at) {
            self.to(first);
            // What is too short for a join is closed by the last bit's end.
            if let Some(last) = self.bits.last_mut().filter(|_| self.at == Some(at)) {
                last.segment.end = first;
            }
        }
        self.bits
    }
}

/// The ring without lines that run on into one that comes back along them, one of both a corner's: an edge that ends
/// square to its neighbour leaves such a spike along it. It covers nothing, and borders nothing that can be told from it.
fn without_spikes(mut ring: Vec<Bit>) -> Vec<Bit> {
    while let Some(at) = (0..ring.len()).find(|&at| folds_back(&ring, at)) {
        let next = (at + 1) % ring.len();
        let (a, b) = (ring[at].segment, ring[next].segment);
        if b.length() <= a.length() {
            ring[at].segment.end = b.end;
            ring.remove(next);
        } else {
            ring[next].segment.start = a.start;
            ring.remove(at);
        }
    }
    ring
}

fn folds_back(ring: &[Bit], at: usize) -> bool {
    let (a, b) = (&ring[at], &ring[(at + 1) % ring.len()]);
    let corner = ring.len() > 3 && (a.edge.is_none() || b.edge.is_none());
    if !(corner && a.segment.is_line() && b.segment.is_line()) {
        return false;
    }
    let (u, v) = (a.segment.end_tangent(), b.segment.start_tangent());
    let shorter = a.segment.length().min(b.segment.length());
    dot(u, v) < 0.0 && cross(u, v).abs() * shorter < SPIKE
}

/// A stretch of one bit of a raw ring between two crossings.
#[derive(Clone, Copy)]
struct Stretch {
    bit: usize,
    from: f64,
    to: f64,
    segment: Segment,
}

/// The closed rings around what a raw ring covers, covered side to the left. `base` is added to how often each point is
/// covered.
fn trim(raw: &[Bit], base: i32) -> Vec<Vec<Bit>> {
    let boxed: Vec<(Segment, Rect)> = raw
        .iter()
        .map(|bit| (bit.segment, bit.segment.hull()))
        .collect();
    let borders: Vec<Stretch> = stretches(&boxed)
        .into_iter()
        .filter(|stretch| {
            let (middle, along) = stretch.segment.at(stretch.segment.length() / 2.0);
            let covered = |side| winding_boxed(&boxed, middle + side * ASIDE) + base;
            covered(right(along)) <= 0 && covered(left(along)) >= 1
        })
        .collect();
    link(borders)
        .into_iter()
        .map(|loop_| merge(raw, loop_))
        .collect()
}

/// Every bit cut at every point it shares with another.
fn stretches(boxed: &[(Segment, Rect)]) -> Vec<Stretch> {
    let mut cuts: Vec<Vec<(f64, Point)>> = boxed
        .iter()
        .map(|(s, _)| Vec::from([(0.0, s.start), (s.length(), s.end)]))
        .collect();
    for i in 0..boxed.len() {
        for j in i + 1..boxed.len() {
            if boxes_meet(&boxed[i].1, &boxed[j].1) {
                crossings(&boxed[i].0, &boxed[j].0, |point, s, t| {
                    cuts[i].push((s, point));
                    cuts[j].push((t, point));
                });
            }
        }
    }
    let mut all = Vec::new();
    for (bit, mut cuts) in cuts.into_iter().enumerate() {
        cuts.sort_by(|a, b| a.0.total_cmp(&b.0));
        let whole = boxed[bit].0;
        // Cuts closer together than can be told apart are one; those at the ends are the ends.
        let span = whole.length();
        cuts.retain(|cut| cut.0 == 0.0 || cut.0 == span || (cut.0 > ASIDE && cut.0 < span - ASIDE));
        let mut last = cuts[0];
        for cut in cuts.into_iter().skip(1) {
            if cut.0 - last.0 > ASIDE {
                let bulge = whole.part(last.0, cut.0).bulge;
                all.push(Stretch {
                    bit,
                    from: last.0,
                    to: cut.0,
                    segment: Segment::arc(last.1, cut.1, bulge),
                });
                last = cut;
            }
        }
    }
    all
}

/// Links stretches end to start into closed rings.
fn link(mut left_over: Vec<Stretch>) -> Vec<Vec<Stretch>> {
    let mut rings = Vec::new();
    while let Some(first) = left_over.pop() {
        let mut ring = Vec::from([first]);
        loop {
            let last = ring[ring.len() - 1].segment;
            let home = length(first.segment.start - last.end);
            // The nearest start; of several at one place the one most to the right, which keeps a hole that touches the
            // border a ring of its own.
            let mut best: Option<(usize, f64, f64)> = None;
            for (index, stretch) in left_over.iter().enumerate() {
                let gap = length(stretch.segment.start - last.end);
                if gap > LINK {
                    continue;
                }
                let turn = angle(last, stretch.segment);
                let better = best.is_none_or(|(_, other, other_turn)| {
                    gap < other - 1e-6 || (gap <= other + 1e-6 && turn < other_turn)
                });
                if better {
                    best = Some((index, gap, turn));
                }
            }
            let closes = home <= LINK
                && best.is_none_or(|(_, gap, turn)| {
                    home < gap - 1e-6 || (home <= gap + 1e-6 && angle(last, first.segment) <= turn)
                });
            if closes {
                rings.push(ring);
                break;
            }
            match best {
                Some((index, ..)) => ring.push(left_over.swap_remove(index)),
                // A stray stretch, along which two borders lie closer together than can be told apart.
                None => break,
            }
        }
    }
    rings
}

/// Turn from the end of one segment to the start of the next, in radians, left positive.
fn angle(from: Segment, to: Segment) -> f64 {
    let (a, b) = (from.end_tangent(), to.start_tangent());
    libm::atan2(cross(a, b), dot(a, b))
}

/// Joins again what belongs to one bit, and closes what gaps there are.
fn merge(raw: &[Bit], ring: Vec<Stretch>) -> Vec<Bit> {
    let mut merged: Vec<Stretch> = Vec::new();
    for stretch in ring {
        match merged.last_mut() {
            Some(last) if last.bit == stretch.bit && last.to == stretch.from => {
                last.to = stretch.to;
                last.segment.end = stretch.segment.end;
            }
            _ => merged.push(stretch),
        }
    }
    if merged.len() > 1 {
        let (first, last) = (merged[0], merged[merged.len() - 1]);
        if first.bit == last.bit && last.to == first.from {
            merged[0].from = last.from;
            merged[0].segment.start = last.segment.start;
            merged.pop();
        }
    }
    let count = merged.len();
    let starts: Vec<Point> = merged.iter().map(|s| s.segment.start).collect();
    let mut bits = Vec::with_capacity(count);
    for (index, stretch) in merged.into_iter().enumerate() {
        let whole = &raw[stretch.bit];
        let mut segment = stretch.segment;
        segment.bulge = whole.segment.part(stretch.from, stretch.to).bulge;
        let next = starts[(index + 1) % count];
        let gap = length(next - segment.end);
        if gap <= 1e-6 {
            segment.end = next;
        }
        bits.push(Bit {
            segment,
            edge: whole.edge,
        });
        if gap > 1e-6 {
            bits.push(Bit {
                segment: Segment::line(segment.end, next),
                edge: None,
            });
        }
    }
    bits
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A star of arcs, no two alike: every other one with deep inward corners, the rest with shallow ones.
    fn star(seed: u32) -> Vec<Part> {
        let share = |of: u32| f64::from((of * 7919 + seed * 104_729) % 1009) / 1009.0;
        let count = 5 + seed % 6;
        let deep = if seed.is_multiple_of(2) { 40.0 } else { 200.0 };
        let corner = |index: u32| {
            let index = index % count;
            let angle = (f64::from(index) + 0.6 * share(index)) / f64::from(count);
            let (sin, cos) = libm::sincos(angle * core::f64::consts::TAU);
            Point::new(cos, sin).to_vec2() * (230.0 - deep * share(index + 50))
        };
        let part = |index: u32| Part {
            edge: index as usize,
            segment: Segment::arc(
                corner(index).to_point(),
                corner(index + 1).to_point(),
                0.6 * (share(index + 100) - 0.5),
            ),
            distance: [0.0, 6.0, 10.0, 25.0][(index + seed) as usize % 4],
            corner: Some(Corner::default()),
            fold: false,
        };
        (0..count).map(part).collect()
    }

    #[test]
    fn a_ring_that_seems_plain_is_what_the_long_way_finds() {
        let area = |bits: &[Bit]| ring::area(bits.iter().map(|bit| &bit.segment));
        let (mut tried, mut plain) = (0, 0);
        for seed in 0..400 {
            let parts = star(seed);
            let drawn: Vec<Segment> = parts.iter().map(|part| part.segment).collect();
            if ring::self_crossing(&drawn).is_some() || ring::area(&drawn) <= 0.0 {
                continue;
            }
            tried += 1;
            let Some(short) = Drawn::new(&parts).0.plain(&parts, 0) else {
                continue;
            };
            plain += 1;
            let long = trim(&without_spikes(Drawn::new(&parts).0.ring(&parts)), 0);
            let largest = long.iter().map(|bits| area(bits)).fold(0.0, f64::max);
            assert!(
                (area(&short) - largest).abs() < 1e-3,
                "{seed}: {} {largest}",
                area(&short)
            );
        }
        assert!(tried > 200 && plain > 40, "{plain} of {tried}");
    }
}
