//! A piece cut in two along a line or a curve, with allowances on both sides.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use kurbo::{Affine, Line, Point, Rect};

use super::cross::{boxes_meet, crossings};
use super::curve::Curve;
use super::edge::Edge;
use super::fit::fit;
use super::mark::Mark;
use super::piece::Piece;
use super::place::NOTHING;
use super::region::{Region, share_marks};
use super::segment::Segment;
use crate::Error;

/// How near arcs follow cubics where the cut is crossed with the outline (mm).
const FINE: f64 = 1e-6;

/// The seam that joins the two parts of a split piece again.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct NewSeam {
    /// Name of the edge in both parts.
    pub name: String,
    /// Its seam allowance in both (mm), 0 to 1000.
    pub allowance: f64,
    /// Where both are notched: distances from the start of the cut along it (mm). Named as the edge, with numbers.
    pub notches: Vec<f64>,
}

impl Piece {
    /// Cuts the piece in two along a line or curve that crosses its outline twice: a yoke, a princess line, a seam where
    /// the cloth is too narrow. The part to the left of the cut comes first. Both get the seam's edge with its allowance and
    /// its notches; marks go to the part they lie in, and lines are cut in two. What of the cut lies outside the piece is
    /// not used. The grain line stays parallel; the part that it does not lie in gets a copy in its middle.
    ///
    /// # Errors
    /// - `NoSolution`: `cut` does not cross the outline exactly twice (its value is the number of crossings); a dart or a
    ///   buttonhole that it runs through (`mark`, with its index: close or turn the dart first);
    /// - `NotFinite`, `OutOfRange`: the `cut` (coordinates -1e6 to 1e6), its `bulge` (-1000 to 1000), the seam's `allowance`, a notch off the cut (`notches`, with its index);
    /// - `Count`: over 1000 `notches`.
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Edge, NewSeam, Piece, Way};
    /// let corners = [(0.0, 0.0), (300.0, 0.0), (300.0, 600.0), (0.0, 600.0)];
    /// let edges = (0..4).map(|i| Edge::seam(["hem", "side", "waist", "centre"][i], Curve::line(corners[i], corners[(i + 1) % 4]), 10.0)).collect();
    /// let skirt = Piece::new("skirt", edges)?;
    /// let seam = NewSeam { name: "yoke".into(), allowance: 12.0, notches: vec![100.0] };
    /// let [yoke, lower] = skirt.split(&Curve::line((-50.0, 450.0), (350.0, 450.0)), &seam)?;
    /// assert_eq!(yoke.area() + lower.area(), skirt.area());
    /// assert_eq!(yoke.bounds().y0, 450.0);
    /// let edge = |piece: &Piece| piece.edge("yoke").unwrap();
    /// let walk = yoke.walk(&[edge(&yoke)], &lower, &[edge(&lower)], Way::Against)?;
    /// assert_eq!((walk.difference, walk.notches[0].difference()), (0.0, Some(0.0)));
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn split(&self, cut: &Curve, seam: &NewSeam) -> Result<[Piece; 2], Error> {
        Error::check("allowance", seam.allowance, 0.0, 1e3)?;
        Error::check_items("notches", seam.notches.len(), 0, 1000)?;
        let (points, bulge) = cut.numbers();
        for value in points.iter().flat_map(|point| [point.x, point.y]) {
            Error::check("cut", value, -1e6, 1e6)?;
        }
        Error::check("bulge", bulge, -1e3, 1e3)?;
        let whole = cut.length();
        Error::check("cut", whole, NOTHING, 1e6)?;
        let found = self.crossed(cut);
        let &[from, to] = found.as_slice() else {
            return Err(Error::no_solution("cut", found.len() as f64, 2.0, 2.0));
        };
        let within = cut.part(from, to);
        let span = within.length();
        let mut edge = Edge::seam(seam.name.as_str(), within, seam.allowance);
        for (index, &distance) in seam.notches.iter().enumerate() {
            Error::check("notches", distance, 0.0, span).map_err(|e| e.at_index(index))?;
            edge = edge.notch(format!("{} {}", seam.name, index + 1), distance, 1);
        }
        let [start, end] = [within.start(), within.end()].map(|point| self.place(point).0);
        let mut border = Vec::new();
        fit(&within, FINE, &mut border);
        let back: Vec<Segment> = border.iter().rev().map(Segment::reversed).collect();
        let regions = [
            Region::new(self.run(end, start), &border, Affine::IDENTITY),
            Region::new(self.run(start, end), &back, Affine::IDENTITY),
        ];
        let shared = share_marks(self, &regions, &border, None)?;
        let part = |index: usize| -> Result<Piece, Error> {
            let seam = if index == 0 {
                edge.clone()
            } else {
                edge.clone().reversed()
            };
            let mut edges = regions[index].edges.clone();
            let (first, last) = (edges.first(), edges.last());
            let (Some(first), Some(last)) = (first, last) else {
                return Err(Error::no_solution("cut", 2.0, 2.0, 2.0));
            };
            let curve = seam.curve.between(last.curve.end(), first.curve.start());
            edges.push(Edge { curve, ..seam });
            let marks = shared.iter().filter(|(region, _)| *region == index);
            let marks: Vec<Mark> = marks.map(|(_, mark)| mark.clone()).collect();
            let piece = self.remade(edges, marks, None)?;
            let name = format!("{} {}", self.name(), index + 1);
            let piece = piece.with_name(name);
            let Some(grain) = self.grain() else {
                return Ok(piece);
            };
            let grain = grain_within(&regions[index], grain, &piece);
            piece.with_grain(grain)
        };
        Ok([part(0)?, part(1)?])
    }

    /// Where a curve crosses the outline, as distances along the curve (mm), in order.
    fn crossed(&self, cut: &Curve) -> Vec<f64> {
        let mut bits = Vec::new();
        fit(cut, FINE, &mut bits);
        let mut places = Vec::new();
        let outline: Vec<(Segment, Rect)> = self
            .segments(FINE)
            .into_iter()
            .map(|(_, side)| (side, side.bounds()))
            .collect();
        let mut before = 0.0;
        for bit in &bits {
            let bounds = bit.bounds();
            for (side, _) in outline
                .iter()
                .filter(|(_, other)| boxes_meet(&bounds, other))
            {
                crossings(bit, side, |_, along, _| places.push(before + along));
            }
            before += bit.length();
        }
        places.sort_by(f64::total_cmp);
        // A corner is crossed with both its edges.
        places.dedup_by(|a, b| (*a - *b).abs() <= 10.0 * FINE);
        places
    }
}

/// The grain line where its middle lies in the part, else shifted to the middle of the part's box.
fn grain_within(region: &Region, grain: Line, piece: &Piece) -> Line {
    let middle = grain.p0.midpoint(grain.p1);
    if region.outside(middle) == 0.0 {
        return grain;
    }
    let by = piece.bounds().center() - middle;
    let shifted = |point: Point| point + by;
    Line::new(shifted(grain.p0), shifted(grain.p1))
}
