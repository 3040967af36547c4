//! Mirror images: the whole of a piece on a fold, and whether a piece differs from its mirror image.

use alloc::format;
use alloc::vec::Vec;
use kurbo::{Affine, Point, Vec2};

use super::edge::{Corner, Edge, reversed_ring};
use super::mark::Mark;
use super::piece::Piece;
use super::vector::{cross, dot, length, unit};
use crate::Error;

impl Piece {
    /// The whole piece of one cut on a fold: the drawn half and its mirror image about the fold. Edges of the mirrored
    /// half have ", mirrored" after their names. A piece without a fold is returned as it is.
    ///
    /// # Errors
    /// `Outline`: the half lies on both sides of its fold, so that the halves would overlap.
    pub fn unfold(&self) -> Result<Piece, Error> {
        let Some(fold) = self.fold() else {
            return Ok(self.clone());
        };
        let line = self.edges()[fold].curve;
        let motion = reflection(line.start(), line.end());
        let count = self.edges().len();
        let mut half: Vec<Edge> = (1..count)
            .map(|step| self.edges()[(fold + step) % count].clone())
            .collect();
        // On the fold both halves run on into each other.
        if let Some(last) = half.last_mut() {
            last.corner = Corner::default();
        }
        let mirrored = reversed_ring(
            half.iter()
                .map(|edge| Edge {
                    name: format!("{}, mirrored", edge.name),
                    curve: edge.curve.moved(motion, true),
                    ..edge.clone()
                })
                .collect(),
        );
        half.extend(mirrored);
        let mut marks = self.marks().to_vec();
        for mark in self.marks() {
            let other = mark.moved(motion, true);
            // A mark across the fold is its own mirror image.
            if !same_mark(mark, &other, 1e-3) {
                marks.push(other);
            }
        }
        let piece = Piece::new(self.name(), half)?
            .with_marks(marks)?
            .with_cutting(self.cutting().clone())?;
        match self.grain() {
            Some(grain) => piece.with_grain(grain),
            None => Ok(piece),
        }
    }

    /// Whether the piece differs from its mirror image, so that left and right are not the same: by its outline or by
    /// what its edges, notches and marks say (names apart), farther than `tolerance` (mm). The grain line must fall on
    /// itself too. A piece on a fold is its own mirror image. In doubt, as where the halves have different edges, the
    /// answer is yes.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange`: `tolerance` is not 0 to 1000.
    pub fn handed(&self, tolerance: f64) -> Result<bool, Error> {
        let tolerance = Error::check("tolerance", tolerance, 0.0, 1e3)?;
        if self.fold().is_some() {
            return Ok(false);
        }
        let other = self.mirror();
        Ok(!(0..self.edges().len()).any(|shift| self.is_same(&other, shift, tolerance)))
    }

    /// Whether `other`, moved so that its edge `shift` lies on this one's first, is the same piece.
    fn is_same(&self, other: &Piece, shift: usize, tolerance: f64) -> bool {
        let count = self.edges().len();
        let pair = |index: usize| {
            (
                &self.edges()[index],
                &other.edges()[(index + shift) % count],
            )
        };
        let places = |edge: &Edge| {
            let span = edge.length();
            [0.0, 0.25, 0.5, 0.75].map(|part| edge.curve.at(part * span).0)
        };
        let (mut mine, mut theirs) = (Vec::new(), Vec::new());
        for (a, b) in (0..count).map(pair) {
            let alike = a.role == b.role
                && a.drawn == b.drawn
                && a.corner == b.corner
                && (a.allowance - b.allowance).abs() <= tolerance
                && (a.length() - b.length()).abs() <= tolerance.max(1e-9)
                && a.notches.len() == b.notches.len();
            if !alike {
                return false;
            }
            mine.extend(places(a));
            theirs.extend(places(b));
            for (n, m) in a.notches.iter().zip(&b.notches) {
                if (n.marks, n.form, n.depth) != (m.marks, m.form, m.depth) {
                    return false;
                }
                mine.push(a.curve.at(n.distance).0);
                theirs.push(b.curve.at(m.distance).0);
            }
        }
        // Laid on by the first point and by the one farthest from it.
        let far = |point: &Point| length(*point - mine[0]);
        let mut farthest = 0;
        for (index, point) in mine.iter().enumerate() {
            if far(point) > far(&mine[farthest]) {
                farthest = index;
            }
        }
        let motion = laying(theirs[0], theirs[farthest], mine[0], mine[farthest]);
        // Rounding alone must not make a piece handed.
        let tolerance = tolerance.max(1e-6);
        let near = |a: Point, b: Point| length(a - b) <= tolerance;
        let grain = match (self.grain(), other.grain()) {
            (Some(a), Some(b)) => {
                let lies = unit((motion * b.p1) - (motion * b.p0));
                let along = a.p1 - a.p0;
                cross(lies, along).abs() <= tolerance
            }
            _ => true,
        };
        let mut unmatched: Vec<Mark> = other
            .marks()
            .iter()
            .map(|m| m.moved(motion, false))
            .collect();
        grain
            && mine.iter().zip(&theirs).all(|(&a, &b)| near(a, motion * b))
            && self.marks().iter().all(|mark| {
                let found = unmatched.iter().position(|m| same_mark(mark, m, tolerance));
                found.map(|index| unmatched.swap_remove(index)).is_some()
            })
    }
}

/// Reflection about the line through two points.
pub(crate) fn reflection(a: Point, b: Point) -> Affine {
    let u = unit(b - a);
    let (c, s) = (u.x * u.x - u.y * u.y, 2.0 * u.x * u.y);
    let turned = Vec2::new(c * a.x + s * a.y, s * a.x - c * a.y);
    Affine::new([c, s, s, -c, a.x - turned.x, a.y - turned.y])
}

/// The turn and shift that lays `from` on `to`, and the direction to `from_far` on that to `to_far`.
pub(crate) fn laying(from: Point, from_far: Point, to: Point, to_far: Point) -> Affine {
    let (u, v) = (unit(from_far - from), unit(to_far - to));
    let (c, s) = (dot(u, v), cross(u, v));
    let turned = Vec2::new(c * from.x - s * from.y, s * from.x + c * from.y);
    Affine::new([c, s, -s, c, to.x - turned.x, to.y - turned.y])
}

/// Whether two marks say the same in the same place, whichever end they begin at.
pub(crate) fn same_mark(a: &Mark, b: &Mark, tolerance: f64) -> bool {
    let near = |p: Point, q: Point| length(p - q) <= tolerance;
    let both_ways = |p: [Point; 2], q: [Point; 2]| {
        (near(p[0], q[0]) && near(p[1], q[1])) || (near(p[0], q[1]) && near(p[1], q[0]))
    };
    match (a, b) {
        (Mark::Dart(a), Mark::Dart(b)) => near(a.point, b.point) && both_ways(a.legs, b.legs),
        (Mark::Drill { at: a, .. }, Mark::Drill { at: b, .. }) => near(*a, *b),
        (Mark::Buttonhole { ends: a, .. }, Mark::Buttonhole { ends: b, .. }) => both_ways(*a, *b),
        (
            Mark::Line { kind, curve: a, .. },
            Mark::Line {
                kind: other,
                curve: b,
                ..
            },
        ) if kind == other => {
            let points = |c: &super::Curve| {
                let span = c.length();
                [0.0, 0.25, 0.5, 0.75, 1.0].map(|part| c.at(part * span).0)
            };
            let (p, q) = (points(a), points(b));
            (0..5).all(|i| near(p[i], q[i])) || (0..5).all(|i| near(p[i], q[4 - i]))
        }
        (Mark::Cutout(a), Mark::Cutout(b)) => same_ring(&a.edges, &b.edges, tolerance),
        _ => false,
    }
}

/// Whether two rings have the same edges in the same places, whichever they begin with.
fn same_ring(a: &[Edge], b: &[Edge], tolerance: f64) -> bool {
    let near = |p: Point, q: Point| length(p - q) <= tolerance;
    let alike = |a: &Edge, b: &Edge| {
        let middle = |edge: &Edge| edge.curve.at(edge.length() / 2.0).0;
        a.drawn == b.drawn
            && a.corner == b.corner
            && (a.allowance - b.allowance).abs() <= tolerance
            && near(a.curve.start(), b.curve.start())
            && near(middle(a), middle(b))
    };
    a.len() == b.len()
        && (0..b.len())
            .any(|shift| (0..a.len()).all(|index| alike(&a[index], &b[(index + shift) % b.len()])))
}
