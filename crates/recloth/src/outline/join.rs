//! Two pieces joined along a seam to be cut as one.

use alloc::format;
use alloc::vec::Vec;
use kurbo::Point;

use super::curve::Curve;
use super::edge::Edge;
use super::mark::Mark;
use super::mirror::laying;
use super::piece::Piece;
use super::vector::length;
use crate::Error;

/// Steps at which two edges are compared.
const STEPS: u32 = 64;

/// Two pieces laid together along a seam.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Joined {
    /// The one piece.
    pub piece: Piece,
    /// The farthest that the two edges lie apart or over each other where they were laid together (mm).
    pub gap: f64,
}

impl Piece {
    /// Lays another piece along an edge of this one and makes one piece of both, without the seam: to draft over a seam, to
    /// true an edge that runs across it, or to cut without it. The other piece is turned and shifted, never stretched, so
    /// that its edge starts where this one ends.
    ///
    /// Marks of both stay; name, grain and cutting instruction are this piece's. Edges of the other whose names this piece
    /// has too get its name after theirs.
    ///
    /// # Errors
    /// - `OutOfRange`: no such `edge` or `other_edge`; `tolerance` (0 to 1000 mm); edges whose lengths differ by more than
    ///   it (`difference`, signed), or whose shapes do (`gap`): they cannot be laid flat together;
    /// - `NotFinite`: `tolerance`; `Outline`: the pieces would lie over each other.
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Edge, Piece};
    /// let square = |name: &str| {
    ///     let corners = [(0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0)];
    ///     let side = |i: usize| Edge::seam(["foot", "right", "top", "left"][i], Curve::line(corners[i], corners[(i + 1) % 4]), 10.0);
    ///     Piece::new(name, (0..4).map(side).collect())
    /// };
    /// let joined = square("left")?.join(1, &square("other")?, 3, 0.1)?;
    /// assert_eq!((joined.piece.area(), joined.gap), (20_000.0, 0.0));
    /// assert_eq!(joined.piece.edges()[1].name, "foot, other");
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn join(
        &self,
        edge: usize,
        other: &Piece,
        other_edge: usize,
        tolerance: f64,
    ) -> Result<Joined, Error> {
        let tolerance = Error::check("tolerance", tolerance, 0.0, 1e3)?;
        let last = |piece: &Piece| piece.edges().len() as f64 - 1.0;
        Error::check("edge", edge as f64, 0.0, last(self))?;
        Error::check("other_edge", other_edge as f64, 0.0, last(other))?;
        let seam = &self.edges()[edge].curve;
        let theirs = &other.edges()[other_edge].curve;
        // Rounding alone must not keep two edges apart.
        let within = tolerance.max(1e-6);
        Error::check(
            "difference",
            seam.length() - theirs.length(),
            -within,
            within,
        )?;
        let motion = laying(theirs.start(), theirs.end(), seam.end(), seam.start());
        let other = other.transformed(motion, false);
        let gap = apart(seam, &other.edges()[other_edge].curve.reversed());
        Error::check("gap", gap, 0.0, within)?;

        let count = self.edges().len();
        let mut edges: Vec<Edge> = (1..count)
            .map(|step| self.edges()[(edge + step) % count].clone())
            .collect();
        let taken: Vec<&str> = self.edges().iter().map(|edge| edge.name.as_str()).collect();
        let count = other.edges().len();
        edges.extend((1..count).map(|step| {
            let mut one = other.edges()[(other_edge + step) % count].clone();
            if taken.contains(&one.name.as_str()) {
                one.name = format!("{}, {}", one.name, other.name());
            }
            one
        }));
        // Where the edges differ a little the other piece gives way.
        let count = edges.len();
        for index in 0..count {
            let end = edges[index].curve.end();
            let next = &mut edges[(index + 1) % count].curve;
            if length(next.start() - end) <= within {
                next.set_start(end);
            }
        }
        let marks: Vec<Mark> = [self.marks(), other.marks()].concat();
        let piece = self.remade(edges, marks, self.grain())?;
        Ok(Joined { piece, gap })
    }
}

/// The farthest that two curves lie apart, at equal shares of their lengths (mm).
pub(crate) fn apart(a: &Curve, b: &Curve) -> f64 {
    let (whole_a, whole_b) = (a.length(), b.length());
    let at = |curve: &Curve, whole: f64, step: u32| -> Point {
        curve.at(whole * f64::from(step) / f64::from(STEPS)).0
    };
    (0..=STEPS)
        .map(|step| length(at(a, whole_a, step) - at(b, whole_b, step)))
        .fold(0.0, f64::max)
}
