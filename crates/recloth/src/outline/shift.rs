//! Edges moved parallel to themselves: let out, taken in, lengthened, shortened.

use alloc::vec;
use alloc::vec::Vec;
use kurbo::{Affine, Point};

use super::cross::crossings;
use super::curve::Curve;
use super::cut_line::CutSegment;
use super::edge::{Corner, Edge, Role};
use super::fit::fit;
use super::mark::{Dart, Mark};
use super::piece::Piece;
use super::place::{NOTHING, pin};
use super::region::Region;
use super::segment::Segment;
use super::vector::{cross, dot, length};
use crate::Error;

/// How near arcs follow the parallel of a cubic (mm).
pub(crate) const FINE: f64 = 0.02;
/// Edges beside one that moves run on until they meet it.
pub(crate) const RUNS_ON: Corner = Corner::Pointed {
    limit: f64::INFINITY,
};
/// How far an edge may run on where its neighbour moves outward, in distances moved.
const FARTHEST: f64 = 10.0;

impl Piece {
    /// Moves edges parallel to themselves by so much (mm, -1000 to 1000): outward to let out or lengthen, inward, negative,
    /// to take in or shorten. Their neighbours run on, or are cut off, where they meet the moved edge; corners stay pointed.
    ///
    /// Lines and arcs keep their kind; the parallel of a cubic is none, and becomes arcs within 0.02 mm (`name 1`,
    /// `name 2`). Notches go with their edge, square across; legs of darts run on or are cut off to meet it; other marks and
    /// grain stay.
    ///
    /// # Errors
    /// - `Count`: not 1 to 1000 `edges`; `OutOfRange`: no such `edge`, or `by`; `NotFinite`: `by`;
    /// - `NoSolution` naming `by`: an edge, with its index, would have nothing left; or is so nearly in line with its neighbour
    ///   that it would run on past ten times as much, or out of the piece, before both meet: move both;
    /// - `NoSolution` naming `edge`, with its index: it lies on a fold.
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Edge, Piece};
    /// let corners = [(0.0, 0.0), (200.0, 0.0), (170.0, 300.0), (0.0, 300.0)];
    /// let side = |i: usize| Edge::seam(["hem", "side", "waist", "centre"][i], Curve::line(corners[i], corners[(i + 1) % 4]), 10.0);
    /// let panel = Piece::new("panel", (0..4).map(side).collect())?;
    /// // Lengthened by 100, the slanting side runs on: 10 wider at the new hem.
    /// let longer = panel.shift_edges(&[0], 100.0)?;
    /// assert_eq!(longer.edges().len(), 4);
    /// assert!((longer.edges()[0].length() - 210.0).abs() < 1e-9);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn shift_edges(&self, edges: &[usize], by: f64) -> Result<Piece, Error> {
        Error::check_items("edges", edges.len(), 1, 1000)?;
        let by = Error::check("by", by, -1e3, 1e3)?;
        let all = self.edges();
        let mut each = vec![0.0; all.len()];
        for (index, &edge) in edges.iter().enumerate() {
            Error::check("edge", edge as f64, 0.0, all.len() as f64 - 1.0)
                .map_err(|error| error.at_index(index))?;
            if all[edge].role == Role::Fold {
                let nan = f64::NAN;
                return Err(Error::no_solution("edge", edge as f64, nan, nan).at_index(index));
            }
            each[edge] = by;
        }
        let shifted = self.shifted_by(&each)?;
        let edges: Vec<Edge> = shifted.into_iter().map(|(_, edge)| edge).collect();
        let marks = self.marks_on(edges.iter());
        self.remade(edges, marks, self.grain())
    }

    /// The edges after each has moved outward by its own distance (mm), each with the index of the edge it came of.
    ///
    /// # Errors
    /// `NoSolution` naming `by`: an edge, with its index, would have nothing left. `Outline`.
    pub(crate) fn shifted_by(&self, by: &[f64]) -> Result<Vec<(usize, Edge)>, Error> {
        let own: Vec<usize> = (0..by.len()).collect();
        let outward: Vec<f64> = by.iter().map(|by| by.max(0.0)).collect();
        let moved: Vec<(usize, Edge)> = if outward.iter().any(|by| *by > 0.0) {
            self.shifted_one_way(&outward, 1.0, &own)?
        } else {
            own.into_iter().zip(self.edges().iter().cloned()).collect()
        };
        if by.iter().all(|by| *by >= 0.0) {
            return Ok(moved);
        }
        let (owners, edges): (Vec<usize>, Vec<Edge>) = moved.into_iter().unzip();
        let inward: Vec<f64> = owners.iter().map(|&owner| (-by[owner]).max(0.0)).collect();
        Piece::new(self.name(), edges)?.shifted_one_way(&inward, -1.0, &owners)
    }

    /// The same where all that move do so outward (`way` 1) or inward (`way` -1), by distances that are not negative.
    /// Edges that are parts of one have the same owner.
    fn shifted_one_way(
        &self,
        by: &[f64],
        way: f64,
        owners: &[usize],
    ) -> Result<Vec<(usize, Edge)>, Error> {
        let all = self.edges();
        let width = |edge: &Edge| {
            let one = all.iter().position(|other| core::ptr::eq(edge, other));
            one.map_or(0.0, |index| by[index])
        };
        let (ring, reach) = if way < 0.0 {
            (self.inner_with(FINE, &width, RUNS_ON), 2.0 * FINE)
        } else {
            let widest = by.iter().copied().fold(0.0, f64::max);
            let ring = self.outer_with(FINE, &width, Some(RUNS_ON));
            (ring, FARTHEST * widest)
        };
        if let Some(at) = self.strays(&ring, reach) {
            let near = ring[at..].iter().chain(&ring[..at]);
            let index = near.rev().find_map(|part| part.edge).unwrap_or(0);
            let nan = f64::NAN;
            let far = Error::no_solution("by", way * by[index], nan, nan);
            return Err(far.at_index(owners[index]));
        }
        let mut rebuilt = self.rebuilt(&ring);
        for (index, edge) in all.iter().enumerate() {
            if by[index] == 0.0 && matches!(edge.curve, Curve::Cubic(_)) {
                restore(&mut rebuilt, index, edge);
            }
            if let Some(last) = last_part(&rebuilt, index) {
                rebuilt[last].1.corner = edge.corner;
            } else if rebuilt
                .iter()
                .all(|(part, _)| owners[*part] != owners[index])
            {
                let nan = f64::NAN;
                let lost = Error::no_solution("by", way * by[index], nan, nan);
                return Err(lost.at_index(owners[index]));
            }
        }
        for (index, edge) in all.iter().enumerate() {
            for notch in &edge.notches {
                let own = |part: usize| owners[part] == owners[index];
                let parts = rebuilt.iter_mut().filter(|(part, _)| own(*part));
                let point = edge.curve.at(notch.distance).0;
                pin(notch, point, parts.map(|(_, edge)| edge));
            }
        }
        for (part, _) in &mut rebuilt {
            *part = owners[*part];
        }
        Ok(rebuilt)
    }

    /// Where a ring of parallels lies farther outside the piece than this (mm): there an edge almost in line with a neighbour
    /// that moved has run on far.
    pub(crate) fn strays(&self, ring: &[CutSegment], reach: f64) -> Option<usize> {
        let piece = Region::new(self.edges().to_vec(), &[], Affine::IDENTITY);
        let strays = |part: &CutSegment| piece.outside(part.segment.end) > reach;
        ring.iter().position(strays)
    }

    /// The marks, for a piece whose edges have moved to these: the legs of darts run on, or are cut off, to meet them.
    pub(crate) fn marks_on<'a>(&self, edges: impl Iterator<Item = &'a Edge>) -> Vec<Mark> {
        let mut outline = Vec::new();
        for edge in edges {
            fit(&edge.curve, 1e-4, &mut outline);
        }
        let relaid = |mark: &Mark| match mark.clone() {
            Mark::Dart(dart) => Mark::Dart(Dart {
                legs: dart.legs.map(|leg| leg_on(dart.point, leg, &outline)),
                ..dart
            }),
            other => other,
        };
        self.marks().iter().map(relaid).collect()
    }

    /// A ring of parallels as edges like those of this piece, each with the index of its edge. What a corner adds goes to
    /// the edge that it runs on from, else to the next.
    pub(crate) fn rebuilt(&self, ring: &[CutSegment]) -> Vec<(usize, Edge)> {
        let count = ring.len();
        let Some(start) = ring.iter().position(|part| part.edge.is_some()) else {
            return Vec::new();
        };
        let mut parts: Vec<(usize, Segment)> = Vec::new();
        for step in 0..count {
            let CutSegment { segment, edge } = ring[(start + step) % count];
            let owner = edge.or_else(|| {
                let (last, before) = parts.last()?;
                let onward = runs_on(before, &segment);
                let next = (1..count).find_map(|ahead| ring[(start + step + ahead) % count].edge);
                if onward { Some(*last) } else { next }
            });
            let Some(owner) = owner else { continue };
            match parts.last_mut() {
                Some((last, before))
                    if *last == owner
                        && before.is_line()
                        && segment.is_line()
                        && runs_on(before, &segment) =>
                {
                    before.end = segment.end;
                }
                _ => parts.push((owner, segment)),
            }
        }
        // The ring was cut open within an edge, if its ends are of one.
        if let (Some((first, head)), Some((last, tail))) =
            (parts.first().copied(), parts.last().copied())
            && parts.len() > 1
            && first == last
            && head.is_line()
            && tail.is_line()
            && runs_on(&tail, &head)
        {
            parts[0].1.start = tail.start;
            parts.pop();
        }
        let edge = |(owner, segment): (usize, Segment)| {
            let like = &self.edges()[owner];
            let edge = Edge {
                curve: Curve::Segment(segment),
                corner: Corner::default(),
                notches: Vec::new(),
                ..like.clone()
            };
            (owner, edge)
        };
        let whole = |(_, segment): &(usize, Segment)| segment.length() > NOTHING;
        parts.into_iter().filter(whole).map(edge).collect()
    }
}

/// The part of an edge after which the ring goes on with another, or is done.
fn last_part(rebuilt: &[(usize, Edge)], index: usize) -> Option<usize> {
    let count = rebuilt.len();
    let own = |at: usize| rebuilt[at % count].0 == index;
    let ends = (0..count).find(|&at| own(at) && !own(at + 1));
    ends.or_else(|| (0..count).rfind(|&at| own(at)))
}

/// Puts a cubic back in place of the arcs that followed it from end to end.
fn restore(rebuilt: &mut Vec<(usize, Edge)>, index: usize, edge: &Edge) {
    let Some(last) = last_part(rebuilt, index) else {
        return;
    };
    // Its parts at the end of the list, so that none comes after the list begins anew.
    rebuilt.rotate_left(last + 1);
    let at = |a: Point, b: Point| length(a - b) <= NOTHING;
    let own = |part: &(usize, Edge)| part.0 == index;
    let first = rebuilt
        .iter()
        .position(|part| own(part) && at(part.1.curve.start(), edge.curve.start()));
    let last = rebuilt
        .iter()
        .rposition(|part| own(part) && at(part.1.curve.end(), edge.curve.end()));
    if let (Some(first), Some(last)) = (first, last)
        && first <= last
    {
        let ends = (rebuilt[first].1.curve.start(), rebuilt[last].1.curve.end());
        rebuilt.drain(first + 1..=last);
        rebuilt[first].1.curve = edge.curve.between(ends.0, ends.1);
    }
}

/// Where the line of a dart's leg meets the outline nearest to where it ended.
pub(crate) fn leg_on(point: Point, leg: Point, outline: &[Segment]) -> Point {
    let line = Segment::line(point, point + (leg - point) * 4.0);
    let mut best = (f64::INFINITY, leg);
    for segment in outline {
        if segment.nearest(leg).0 < NOTHING {
            return leg;
        }
        crossings(segment, &line, |met, _, _| {
            let off = length(met - leg);
            if off < best.0 {
                best = (off, met);
            }
        });
    }
    best.1
}

/// Whether a line goes on where the segment before it was going.
fn runs_on(before: &Segment, next: &Segment) -> bool {
    const ASIDE: f64 = 1e-5;
    let (a, b) = (before.end_tangent(), next.start_tangent());
    next.is_line() && cross(a, b).abs() * next.length() < ASIDE && dot(a, b) > 0.0
}
