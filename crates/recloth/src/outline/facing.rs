//! A facing: a band along edges of a piece, to be sewn there and turned under.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::curve::Curve;
use super::cut_line::CutSegment;
use super::edge::{Edge, Role};
use super::piece::Piece;
use super::place::NOTHING;
use super::region::marks_within;
use super::shift::{FINE, RUNS_ON};
use crate::Error;

/// A facing asked for.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Facing {
    /// Name of the piece.
    pub name: String,
    /// How deep it is, square to the faced edges (mm), 1 to 1000. About 50 is common practice, no source.
    pub depth: f64,
    /// By how much its faced edges lie within those of the piece (mm), 0 to 10, so that the seam rolls under and does not
    /// show: 1 to 2 for middling cloth is common practice, no source.
    pub roll: f64,
    /// Allowance of its inner edge (mm), 0 to 1000: what is turned in or overcast.
    pub inner_allowance: f64,
}

impl Piece {
    /// The facing of edges that follow each other around the piece: a band of even depth along them, ended by the edges
    /// beside them, with their allowances. Its inner edges are named `inner`, and open. Notches and grain are the piece's (the
    /// grain line shifted where it lies beyond the facing), and so are marks that lie on the facing, of a line what of it
    /// does; a dart that ends beyond it is left out: close it first. Corner treatments at the ends are not carried.
    ///
    /// # Errors
    /// - `Count`: not 1 to all but one of the `edges`; `OutOfRange`: no such `edge`, or one that does not follow the one
    ///   before (`at` is its place in the list); `depth`, `roll`, `inner_allowance`; `NotFinite`;
    /// - `NoSolution` naming `depth`: the piece is too narrow for it there, or the band would fall apart.
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Edge, Facing, Piece};
    /// // Half a front with a round neck, its centre on a fold.
    /// let front = Piece::new("front", vec![
    ///     Edge::hem("hem", Curve::line((0.0, 0.0), (250.0, 0.0)), 30.0),
    ///     Edge::seam("side", Curve::line((250.0, 0.0), (250.0, 500.0)), 15.0),
    ///     Edge::seam("shoulder", Curve::line((250.0, 500.0), (80.0, 500.0)), 15.0),
    ///     Edge::seam("neck", Curve::arc((80.0, 500.0), (0.0, 420.0), -0.41421356), 10.0),
    ///     Edge::fold("centre", Curve::line((0.0, 420.0), (0.0, 0.0))),
    /// ])?;
    /// let facing = Facing { name: "neck facing".into(), depth: 50.0, roll: 0.0, inner_allowance: 6.0 };
    /// let facing = front.facing(&[3], &facing)?;
    /// // A quarter of a ring between the radii 80 and 130.
    /// assert!((facing.area() - (130.0_f64.powi(2) - 80.0_f64.powi(2)) * std::f64::consts::FRAC_PI_4).abs() < 0.01);
    /// assert!(facing.fold().is_some());
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn facing(&self, edges: &[usize], facing: &Facing) -> Result<Piece, Error> {
        let all = self.edges();
        let count = all.len();
        Error::check_items("edges", edges.len(), 1, count - 1)?;
        for (index, &edge) in edges.iter().enumerate() {
            let follows = index == 0 || edge == (edges[index - 1] + 1) % count;
            let highest = if follows { count as f64 - 1.0 } else { -1.0 };
            Error::check("edge", edge as f64, 0.0, highest).map_err(|e| e.at_index(index))?;
        }
        let depth = Error::check("depth", facing.depth, 1.0, 1e3)?;
        let roll = Error::check("roll", facing.roll, 0.0, 10.0)?;
        Error::check("inner_allowance", facing.inner_allowance, 0.0, 1e3)?;
        let faced = |edge: &Edge| {
            let index = all.iter().position(|other| core::ptr::eq(edge, other));
            index.is_some_and(|index| edges.contains(&index))
        };
        let width = |edge: &Edge| if faced(edge) { depth } else { 0.0 };
        let ring = self.inner_with(FINE, &width, RUNS_ON);
        let too_deep = Error::no_solution("depth", depth, f64::NAN, f64::NAN);
        if self.strays(&ring, 2.0 * FINE).is_some() {
            return Err(too_deep);
        }
        // The band's inner border: what of the ring is parallel to faced edges, with the corners between.
        let beside = |part: &CutSegment| part.edge.is_some_and(|edge| !edges.contains(&edge));
        let count = ring.len();
        let first = (0..count)
            .find(|&at| !beside(&ring[at]) && beside(&ring[(at + count - 1) % count]))
            .ok_or(too_deep)?;
        let turned: Vec<CutSegment> = (0..count)
            .map(|step| ring[(first + step) % count])
            .collect();
        let end = turned.iter().position(beside).ok_or(too_deep)?;
        if !turned[end..].iter().all(beside) {
            return Err(too_deep);
        }
        let inner = &turned[..end];
        let (Some(head), Some(tail)) = (inner.first(), inner.last()) else {
            return Err(too_deep);
        };
        let (start, stop) = (
            self.place(head.segment.start).0,
            self.place(tail.segment.end).0,
        );
        let mut band = self.run(start, stop);
        // What a corner adds may be a rounding only.
        let whole = |part: &&CutSegment| part.segment.length() > NOTHING;
        for part in inner.iter().rev().filter(whole) {
            let mut edge = Edge::new(
                "inner",
                Curve::Segment(part.segment.reversed()),
                Role::Opening,
                facing.inner_allowance,
            );
            if let Some(last) = band.last() {
                edge.curve.set_start(last.curve.end());
            }
            band.push(edge);
        }
        if let (Some(first), Some(last)) =
            (band.first().map(|edge| edge.curve.start()), band.last_mut())
        {
            let start = last.curve.start();
            last.curve = last.curve.between(start, first);
        }
        let inners = band.iter().filter(|edge| edge.name == "inner").count();
        if inners > 1 {
            let parts = band.iter_mut().filter(|edge| edge.name == "inner");
            for (index, edge) in parts.enumerate() {
                edge.name = format!("inner {}", index + 1);
            }
        }
        let band = self
            .remade(band, Vec::new(), self.grain())?
            .with_name(facing.name.as_str());
        let rolled = if roll == 0.0 {
            band
        } else {
            let names: Vec<&str> = edges.iter().map(|&edge| all[edge].name.as_str()).collect();
            let outer: Vec<usize> = (0..band.edges().len())
                .filter(|&index| names.contains(&band.edges()[index].name.as_str()))
                .collect();
            band.shift_edges(&outer, -roll)?
        };
        let marks = marks_within(self.marks_on(rolled.edges().iter()), rolled.edges());
        let faced = rolled.with_marks(marks)?;
        match self.grain() {
            Some(grain) => faced.with_grain_within(grain),
            None => Ok(faced),
        }
    }
}
