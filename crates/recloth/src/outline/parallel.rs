//! The parallel of a ring, each part at its own distance, trimmed where it runs into itself.
//!
//! Every part of the seam line has a band beside it as wide as its allowance; corners add theirs. The raw ring is the sum
//! of the borders of the piece, the bands and the corners, so it goes round a point as often as these cover it.
//! It is cut where it crosses itself, and those pieces are kept that have something covered to their left and nothing
//! to their right: no point of them lies inside a band, so none is nearer to a part than that part's allowance.

use alloc::vec::Vec;
use kurbo::{Point, Rect};

use super::corner::{Arm, inward, join};
use super::cross::{boxes_meet, crossings};
use super::edge::Corner;
use super::ring::winding_boxed;
use super::segment::Segment;
use super::vector::{cross, dot, left, length, right, unit};

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

/// The parallels of all parts and the joins between them, in one closed ring that may cross itself.
pub(crate) fn raw(parts: &[Part]) -> Vec<Bit> {
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
    let mut chain = Chain::default();
    for i in 0..count {
        let (part, next) = (parts[i], parts[(i + 1) % count]);
        let offset = part
            .segment
            .parallel_between(part.distance, firsts[i], lasts[i]);
        chain.to(offset.start);
        chain.run(offset, part.edge);
        let (out, next_out) = (lasts[i], firsts[(i + 1) % count]);
        let this = Arm {
            along: left(out),
            out,
            width: part.distance,
        };
        let after = Arm {
            along: right(next_out),
            out: next_out,
            width: next.distance,
        };
        let corner = part.segment.end;
        chain.to(this.end(corner));
        let turn = cross(out, next_out);
        if turn < -1e-9 || (turn < 0.0 && dot(out, next_out) > 0.0) {
            for point in inward(corner, this, after, part.corner.unwrap_or_default()) {
                chain.to(point);
            }
        } else if (turn > 1e-9 || dot(out, next_out) < 0.0)
            && part.distance.max(next.distance) > 0.0
        {
            let treatment = part.corner.unwrap_or_default();
            let mut points = join(corner, this, after, treatment);
            if treatment.takes_away() && runs_into(parts, corner, this, &points, after) {
                points = join(corner, this, after, Corner::default());
            }
            for point in points {
                chain.to(point);
            }
        }
        chain.to(after.end(corner));
    }
    chain.close()
}

/// Whether a mirrored corner meets the piece anywhere but at the corner itself: it takes from the allowances, and must not
/// take from the piece.
fn runs_into(parts: &[Part], corner: Point, this: Arm, points: &[Point], next: Arm) -> bool {
    let mut from = this.end(corner);
    points.iter().chain([&next.end(corner)]).any(|&to| {
        let side = Segment::line(from, to);
        from = to;
        let bounds = side.bounds();
        length(side.end - side.start) > SHORTEST
            && parts.iter().any(|part| {
                let mut meets = false;
                if boxes_meet(&bounds, &part.segment.bounds()) {
                    crossings(&side, &part.segment, |point, _, _| {
                        meets |= length(point - corner) > LINK;
                    });
                }
                meets
            })
    })
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
        match self.at {
            Some(at) if length(point - at) > SHORTEST => {
                self.bits.push(Bit {
                    segment: Segment::line(at, point),
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
        without_spikes(self.bits)
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
pub(crate) fn trim(raw: &[Bit], base: i32) -> Vec<Vec<Bit>> {
    let boxed: Vec<(Segment, Rect)> = raw
        .iter()
        .map(|bit| (bit.segment, bit.segment.bounds()))
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
