//! An edge measured on a garment whose dart is sewn, as it runs with the dart open.

use alloc::vec;
use alloc::vec::Vec;
use kurbo::{Point, Vec2};

use super::curve::Curve;
use super::edge::Edge;
use super::mark::Dart;
use super::place::{NOTHING, redrawn};
use super::region::pieces_of;
use super::segment::Segment;
use super::swing::legs_in_order;
use super::vector::{cross, dot, left, length, unit};
use crate::Error;

/// How near cubics follow arcs (mm).
const FINE: f64 = 1e-3;
/// How far to either side the level of the dart's point is looked for (mm).
const FAR: f64 = 4e5;

impl Dart {
    /// Edges of a garment that was measured flat with this dart sewn, as they run where it is open: above the level of its
    /// point every part of them moves away from the dart, square to its middle, by a share of its width at that level. So
    /// side and armhole of a garment that fits, measured or traced from a piece without the dart, can be copied onto a piece
    /// that has it ([`Piece::copy_edge`](super::Piece::copy_edge)). The share is what of the dart opens towards these edges:
    /// all of it where the centre stays.
    ///
    /// A line stays one and becomes two where it passes the dart's point; an arc that moves becomes a cubic, or several
    /// (`name 1`, `name 2`). Notches go along.
    ///
    /// # Errors
    /// - `Count`: not 1 to 1000 `edges`; `NotFinite`, `OutOfRange`: `share` (0 to 1); `legs` that differ by more than 0.001;
    /// - `NoSolution`: a `dart` that is no longer than 0.001; `edges`, with the index of one that crosses the middle of the
    ///   dart above its point, or lies on another side of it than those before: open it by
    ///   [`Piece::open_dart`](super::Piece::open_dart).
    ///
    /// # Source
    /// Geometry: [`dart_width_at`](crate::dart::dart_width_at), level by level.
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Dart, measured_edge};
    /// // Half a back measured with its dart sewn: 235 wide at the hip, 190 above it 175 at the waist.
    /// let side = measured_edge("side", &[(235.0, 0.0).into(), (175.0, 190.0).into()], false)?;
    /// let dart = Dart { name: "waist".into(), point: (90.0, 70.0).into(), legs: [(102.5, 190.0).into(), (77.5, 190.0).into()] };
    /// let open = dart.opened(&side, 1.0)?;
    /// // With the dart of 25 open the waist is 200; below its point nothing moves.
    /// let waist = open[1].curve.end();
    /// assert!(open.len() == 2 && (waist.x - 200.0).abs() < 1e-9 && waist.y == 190.0);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn opened(&self, edges: &[Edge], share: f64) -> Result<Vec<Edge>, Error> {
        let share = Error::check("share", share, 0.0, 1.0)?;
        Error::check_items("edges", edges.len(), 1, 1000)?;
        let legs = legs_in_order(self)?;
        let middle = legs[0].midpoint(legs[1]) - self.point;
        let depth = length(middle);
        let nan = f64::NAN;
        if depth.is_nan() || depth <= 1e-3 {
            return Err(Error::no_solution("dart", depth, 1e-3, nan));
        }
        let axis = unit(middle);
        let aside = left(axis);
        let rate = share * self.intake() / depth;
        let rise = |point: Point| dot(point - self.point, axis);
        // On which side of the dart what lies above its point is.
        let mut side = 0.0;
        let level = [Segment::line(
            self.point - aside * FAR,
            self.point + aside * FAR,
        )];
        let mut opened: Vec<Edge> = Vec::new();
        for (index, edge) in edges.iter().enumerate() {
            let mut curves: Vec<Curve> = Vec::new();
            for part in pieces_of(&edge.curve, &level) {
                let half = part.at(part.length() / 2.0).0;
                if rise(half) <= 0.0 {
                    curves.push(part);
                    continue;
                }
                for point in [part.start(), half, part.end()] {
                    let off = cross(axis, point - self.point);
                    if off.abs() <= NOTHING || rise(point) <= NOTHING {
                        continue;
                    }
                    if side * off < 0.0 {
                        return Err(Error::no_solution("edges", off, nan, nan).at_index(index));
                    }
                    side = libm::copysign(1.0, off);
                }
                let sheared = |point: Point| point + aside * (side * rate * rise(point));
                curves.extend(mapped(&part, &sheared));
            }
            for at in 1..curves.len() {
                let end = curves[at - 1].end();
                curves[at].set_start(end);
            }
            let there = |point: Point| point + aside * (side * rate * rise(point).max(0.0));
            let mut parts = redrawn(edge, curves, there);
            if let (Some(last), Some(first)) = (opened.last(), parts.first_mut()) {
                let end: Point = last.curve.end();
                let gap: Vec2 = first.curve.start() - end;
                // What followed each other still does, to the last bit.
                if length(gap) <= NOTHING {
                    first.curve.set_start(end);
                }
            }
            opened.extend(parts);
        }
        Ok(opened)
    }
}

/// A curve whose points all move by one shear.
fn mapped(curve: &Curve, moved: &impl Fn(Point) -> Point) -> Vec<Curve> {
    let cubic = |[a, b, c, d]: [Point; 4]| Curve::cubic(a, b, c, d);
    match curve {
        Curve::Segment(s) if s.is_line() => vec![Curve::line(moved(s.start), moved(s.end))],
        Curve::Segment(s) => {
            let mut cubics = Vec::new();
            s.as_cubics(FINE, |points| cubics.push(cubic(points.map(moved))));
            cubics
        }
        Curve::Cubic(c) => vec![cubic([c.p0, c.p1, c.p2, c.p3].map(moved))],
    }
}
