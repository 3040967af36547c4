//! The two halves of a piece compared, and their middle.

use alloc::vec::Vec;
use kurbo::{Line, Point};

use super::curve::Curve;
use super::edge::{Edge, reversed_ring};
use super::join::apart;
use super::mark::Mark;
use super::mirror::{reflection, same_mark};
use super::piece::Piece;
use super::place::NOTHING;
use super::vector::length;
use crate::Error;

/// How far two halves differ, and the half between them.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Symmetry {
    /// The middle of both halves, on a fold along the axis.
    pub half: Piece,
    /// The farthest that a point of one half lies from its fellow in the other, mirrored (mm).
    pub largest: f64,
    /// Index of the edge of this piece where that is.
    pub edge: usize,
    /// Indices of the marks that have no fellow in the other half, mirrored, within the tolerance; one across the axis may be
    /// its own.
    pub alone: Vec<usize>,
}

impl Piece {
    /// Folds a piece along an axis that runs from corner to corner and compares its halves: a worn garment, or a panel
    /// measured on both sides, is seldom the same left and right. The half to the left of the axis is kept where it is;
    /// each of its edges is taken halfway to its fellow on the right.
    ///
    /// Nothing is averaged silently: what differs by more than `tolerance` (mm) is refused, with where and by how much.
    /// Marks of the left half are kept as they are; those of the right half are left out, and what has no fellow in the other
    /// half is listed.
    ///
    /// # Errors
    /// - `NotFinite`, `OutOfRange`: `tolerance` (0 to 1000); an end of the `axis` that is no corner (its distance from one,
    ///   at most 0.001 mm); halves that differ by more (`difference`, `at` is the edge of the left half);
    /// - `NoSolution` naming `axis`: the halves have different numbers of edges, or edges of different kinds that face each
    ///   other.
    pub fn symmetrise(&self, axis: Line, tolerance: f64) -> Result<Symmetry, Error> {
        let tolerance = Error::check("tolerance", tolerance, 0.0, 1e3)?;
        let mut ends = [0, 0];
        for (end, point) in ends.iter_mut().zip([axis.p0, axis.p1]) {
            *end = self.corner_at(point)?;
        }
        let unequal = Error::no_solution("axis", f64::NAN, f64::NAN, f64::NAN);
        let count = self.edges().len();
        let round = |from: usize, to: usize| {
            (0..(to + count - from) % count).map(move |step| (from + step) % count)
        };
        // To the left of the axis the ring comes back from its end to its start.
        let left: Vec<usize> = round(ends[1], ends[0]).collect();
        let right: Vec<usize> = round(ends[0], ends[1]).collect();
        if left.is_empty() || left.len() != right.len() {
            return Err(unequal);
        }
        let motion = reflection(axis.p0, axis.p1);
        let mirrored = reversed_ring(
            right
                .iter()
                .map(|&index| {
                    let edge = self.edges()[index].clone();
                    Edge {
                        curve: edge.curve.moved(motion, true),
                        ..edge
                    }
                })
                .collect(),
        );
        let (mut half, mut largest, mut edge) = (Vec::new(), 0.0, left[0]);
        for (&index, fellow) in left.iter().zip(&mirrored) {
            let mine = &self.edges()[index];
            let gap = apart(&mine.curve, &fellow.curve);
            if gap > largest {
                (largest, edge) = (gap, index);
            }
            let curve = between(&mine.curve, &fellow.curve).ok_or(unequal)?;
            // Notches keep their share of the edge.
            let share = curve.length() / mine.length();
            let mut notches = mine.notches.clone();
            for notch in &mut notches {
                notch.distance *= share;
            }
            half.push(Edge {
                curve,
                notches,
                ..mine.clone()
            });
        }
        Error::check("difference", largest, 0.0, tolerance.max(NOTHING))
            .map_err(|error| error.at_index(edge))?;
        let start = half[half.len() - 1].curve.end();
        let end = half[0].curve.start();
        half.push(Edge::fold("axis", Curve::line(start, end)));
        // Where a half's end lies off the axis its fellow lies as far off on the other side.
        let within = |mark: &&Mark| {
            let (points, _) = mark.numbers();
            let off = |point: &Point| (axis.p1 - axis.p0).cross(*point - axis.p0) >= -NOTHING;
            points.iter().all(off)
        };
        let marks = self.marks().iter().filter(within).cloned().collect();
        let near = tolerance.max(NOTHING);
        let alone = |index: &usize| {
            let other = self.marks()[*index].moved(motion, true);
            let mut marks = self.marks().iter();
            !marks.any(|mark| same_mark(mark, &other, near))
        };
        let alone = (0..self.marks().len()).filter(alone).collect();
        let half = self.remade(half, marks, self.grain())?;
        Ok(Symmetry {
            half,
            largest,
            edge,
            alone,
        })
    }

    /// Index of the edge that starts at a point.
    fn corner_at(&self, point: Point) -> Result<usize, Error> {
        let away = |index: usize| length(self.edges()[index].curve.start() - point);
        let mut best = 0;
        for index in 1..self.edges().len() {
            if away(index) < away(best) {
                best = index;
            }
        }
        Error::check("axis", away(best), 0.0, 1e-3)?;
        Ok(best)
    }
}

/// The curve halfway between two of one kind.
fn between(a: &Curve, b: &Curve) -> Option<Curve> {
    match (a, b) {
        (Curve::Segment(a), Curve::Segment(b)) => Some(Curve::arc(
            a.start.midpoint(b.start),
            a.end.midpoint(b.end),
            (a.bulge + b.bulge) / 2.0,
        )),
        (Curve::Cubic(a), Curve::Cubic(b)) => Some(Curve::cubic(
            a.p0.midpoint(b.p0),
            a.p1.midpoint(b.p1),
            a.p2.midpoint(b.p2),
            a.p3.midpoint(b.p3),
        )),
        _ => None,
    }
}
