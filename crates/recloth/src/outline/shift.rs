//! Edges moved parallel to themselves: let out, taken in, lengthened, shortened.

use alloc::vec::Vec;

use super::curve::Curve;
use super::cut_line::CutSegment;
use super::edge::{Corner, Edge};
use super::piece::Piece;
use super::place::NOTHING;
use super::segment::Segment;
use super::vector::{cross, dot};
use crate::Error;

/// How near arcs follow the parallel of a cubic (mm).
pub(crate) const FINE: f64 = 0.02;

impl Piece {
    /// Moves edges parallel to themselves by so much (mm, -1000 to 1000): outward to let out or lengthen, inward, negative,
    /// to take in or shorten. Their neighbours run on, or are cut off, where they meet the moved edge; corners stay pointed.
    ///
    /// Lines and arcs keep their kind; the parallel of a cubic is none, and becomes arcs within 0.02 mm (`name 1`,
    /// `name 2`). Notches go with their edge, square across; marks and grain stay.
    ///
    /// # Errors
    /// - `Count`: not 1 to 1000 `edges`; `OutOfRange`: no such `edge`, or `by`; `NotFinite`: `by`;
    /// - `NoSolution` naming `by`: an edge, with its index, would have nothing left;
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
        for (index, &edge) in edges.iter().enumerate() {
            Error::check("edge", edge as f64, 0.0, all.len() as f64 - 1.0)
                .map_err(|error| error.at_index(index))?;
            if all[edge].role == super::Role::Fold {
                let nan = f64::NAN;
                return Err(Error::no_solution("edge", edge as f64, nan, nan).at_index(index));
            }
        }
        let moved = |edge: &Edge| {
            let one = all.iter().position(|other| core::ptr::eq(edge, other));
            if one.is_some_and(|index| edges.contains(&index)) {
                by.abs()
            } else {
                0.0
            }
        };
        let runs_on = Corner::Pointed {
            limit: f64::INFINITY,
        };
        let ring = if by < 0.0 {
            self.inner_with(FINE, &moved, runs_on)
        } else {
            self.outer_with(FINE, &moved, Some(runs_on))
        };
        let mut rebuilt = self.rebuilt(&ring);
        for (index, edge) in all.iter().enumerate() {
            let parts: Vec<usize> = (0..rebuilt.len())
                .filter(|&i| rebuilt[i].0 == index)
                .collect();
            if parts.is_empty() {
                let nan = f64::NAN;
                return Err(Error::no_solution("by", by, nan, nan).at_index(index));
            }
            if let Some(&last) = parts.last() {
                rebuilt[last].1.corner = edge.corner;
            }
            for notch in &edge.notches {
                let point = edge.curve.at(notch.distance).0;
                let mut best = (parts[0], (f64::INFINITY, 0.0));
                for &part in &parts {
                    let near = rebuilt[part].1.curve.nearest(point);
                    if near.0 < best.1.0 {
                        best = (part, near);
                    }
                }
                let mut notch = notch.clone();
                notch.distance = best.1.1;
                rebuilt[best.0].1.notches.push(notch);
            }
        }
        let edges = rebuilt.into_iter().map(|(_, edge)| edge).collect();
        self.remade(edges, self.marks().to_vec(), self.grain())
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

/// Whether a line goes on where the segment before it was going.
fn runs_on(before: &Segment, next: &Segment) -> bool {
    const ASIDE: f64 = 1e-5;
    let (a, b) = (before.end_tangent(), next.start_tangent());
    next.is_line() && cross(a, b).abs() * next.length() < ASIDE && dot(a, b) > 0.0
}
