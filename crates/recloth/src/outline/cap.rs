//! The cap of a dart: what its mouth must be so that the folded dart ends in the edge it is sewn into.

use alloc::format;
use alloc::vec::Vec;
use kurbo::Point;

use super::cross::crossings;
use super::curve::Curve;
use super::fit::fit;
use super::mirror::reflection;
use super::piece::Piece;
use super::place::across;
use super::segment::Segment;
use super::swing::{about, angle, legs_in_order};
use crate::Error;

/// How near arcs follow a cubic where the middle of the dart meets the edge (mm).
const FINE: f64 = 1e-6;

impl Piece {
    /// Gives the mouth of a dart its cap: folded, and pressed onto the edge `onto`, the dart ends in that edge's line.
    /// The edge must be that before the mouth or that after it.
    ///
    /// The dart folds along its leg and along its middle. Its first half lies on the edge mirrored about the leg, its
    /// second half turned back by the dart's whole angle, so the cap is the end of the edge so moved, twice.
    ///
    /// # Errors
    /// - `NoSolution`: no `dart` of that name; `onto` is not an edge beside its mouth, or does not reach the middle of
    ///   the folded dart;
    /// - `OutOfRange`: legs whose lengths differ (`legs`, at most 0.001).
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Dart, Edge, Mark, Piece};
    /// // A top with a dart 20 wide and 100 deep, its legs' ends level with the top.
    /// let corners = [(0.0, 0.0), (200.0, 0.0), (200.0, 200.0), (110.0, 200.0), (90.0, 200.0), (0.0, 200.0)];
    /// let names = ["hem", "side", "top side", "mouth", "top centre", "centre"];
    /// let edges = (0..6).map(|i| Edge::seam(names[i], Curve::line(corners[i], corners[(i + 1) % 6]), 10.0)).collect();
    /// let dart = Mark::Dart(Dart { name: "waist".into(), point: (100.0, 100.0).into(), legs: [(110.0, 200.0).into(), (90.0, 200.0).into()] });
    /// let top = Piece::new("top", edges)?.with_marks(vec![dart])?;
    /// let capped = top.cap_dart("waist", 4)?;
    /// // The cap rises in the middle to where the edge, at 100 · cos a, would be: 100 / cos 2a of the dart's half angle a.
    /// let peak = capped.edges()[3].curve.end();
    /// let a = f64::atan(0.1);
    /// assert!((peak.y - 100.0 - 100.0 / f64::cos(2.0 * a)).abs() < 1e-9);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn cap_dart(&self, dart: &str, onto: usize) -> Result<Piece, Error> {
        let (_, dart) = self.dart(dart)?;
        let [from, to] = legs_in_order(dart)?;
        let pivot = dart.point;
        let turn = angle(from - pivot, to - pivot);
        let [start, end] = [from, to].map(|leg| self.place(leg).0);
        let no_edge = Error::no_solution("onto", onto as f64, f64::NAN, f64::NAN);
        let mut edges = self.run(end, start);
        let (Some(first), Some(last)) = (edges.first(), edges.last()) else {
            return Err(no_edge);
        };
        // The edge that the folded dart lies on, walked away from the leg that it meets, and the turn that way.
        let (edge, leg, away) = if onto == self.edge_before(start) {
            (last.curve.reversed(), from, -turn)
        } else if onto == self.edge_after(end) {
            (first.curve, to, turn)
        } else {
            return Err(no_edge);
        };
        let reach = meets(&edge, pivot, about(pivot, away / 2.0) * leg).ok_or(no_edge)?;
        let lies = edge.part(0.0, reach);
        let near = lies.moved(reflection(pivot, leg), true);
        let far = lies.moved(about(pivot, -away), false);
        let caps = if away < 0.0 {
            [near, far.reversed()]
        } else {
            [far, near.reversed()]
        };
        let like = self.edges()[self.edge_after(start)].clone();
        let mut at = from;
        for (index, curve) in caps.into_iter().enumerate() {
            let end = if index == 0 { curve.end() } else { to };
            let mut cap = across(&like, at, end);
            cap.name = format!("cap {} {}", dart.name, index + 1);
            cap.curve = curve.between(at, end);
            at = end;
            edges.push(cap);
        }
        if let Some(cap) = edges.last_mut() {
            cap.corner = like.corner;
        }
        self.remade(edges, self.marks().to_vec(), self.grain())
    }
}

/// Where the ray from the dart's point through another point first meets an edge, as a distance along the edge (mm).
fn meets(edge: &Curve, pivot: Point, through: Point) -> Option<f64> {
    let mut bits = Vec::new();
    fit(edge, FINE, &mut bits);
    let ray = Segment::line(pivot, pivot + (through - pivot) * 4.0);
    let (mut before, mut first) = (0.0, None);
    for bit in &bits {
        crossings(bit, &ray, |_, along, _| {
            let at = before + along;
            if at > 0.0 && first.is_none_or(|least| at < least) {
                first = Some(at);
            }
        });
        before += bit.length();
    }
    first
}
