//! The cut line of a piece, and its seam line where cloth is already cut.

use alloc::string::String;
use alloc::vec::Vec;
use kurbo::{BezPath, Point, Rect};

use super::cut_ring::{CutRing, Side, Width};
use super::edge::{Corner, Edge, NotchForm};
use super::mark::Mark;
use super::piece::Piece;
use super::ring;
use super::segment::Segment;
use crate::Error;

/// A part of a cut line.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct CutSegment {
    /// The line or arc.
    pub segment: Segment,
    /// Index of the edge it is parallel to; none in a corner.
    pub edge: Option<usize>,
}

/// A notch carried from the seam line to the cut line.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct CutNotch {
    /// Index of its edge.
    pub edge: usize,
    /// Its name.
    pub name: String,
    /// How many marks side by side.
    pub marks: u32,
    /// How it is cut.
    pub form: NotchForm,
    /// How far it is cut in from the cut line (mm), short of the seam line; 0 where the cut line is the seam line, and it is
    /// only marked.
    pub depth: f64,
    /// Where it is on the drawn line.
    pub seam: Point,
    /// Where it is on the cut line.
    pub cut: Point,
}

/// A closed ring of lines and arcs, counter-clockwise: the line to cut a piece along. What is cut out of the piece has rings
/// of its own, clockwise.
///
/// Made by [`Piece::cut_line`].
#[derive(Clone, Debug)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct CutLine {
    segments: Vec<CutSegment>,
    notches: Vec<CutNotch>,
    cutouts: Vec<CutLine>,
    unmade: Vec<Error>,
}

/// Equal lines; what was not made follows from the piece.
impl PartialEq for CutLine {
    fn eq(&self, other: &CutLine) -> bool {
        self.segments == other.segments
            && self.notches == other.notches
            && self.cutouts == other.cutouts
    }
}

impl CutLine {
    /// Its lines and arcs; each starts exactly where the one before ends.
    pub fn segments(&self) -> &[CutSegment] {
        &self.segments
    }

    /// The notches, edge by edge.
    pub fn notches(&self) -> &[CutNotch] {
        &self.notches
    }

    /// The lines along which the cut-outs of the piece are cut, in their order among its marks: clockwise, for the cloth lies
    /// to the left of them too. Indices of edges are those of the cut-out's.
    pub fn cutouts(&self) -> &[CutLine] {
        &self.cutouts
    }

    /// The corners that could not be made as asked, and are pointed instead: each as the error it would be, `at` the edge to
    /// change, with the values that would do; [`Piece::sentence`] puts it into words. It names
    /// - `corner_deg`: the corner's inner angle is too sharp or too flat for the treatment (0 to 180);
    /// - `distance`, `radius`: of a trimmed or rounded corner;
    /// - `allowance`: of a turned hem whose mirrored end would reach beyond the edge beside it, or into the piece.
    pub fn unmade(&self) -> &[Error] {
        &self.unmade
    }

    fn ring(&self) -> impl Iterator<Item = &Segment> {
        self.segments.iter().map(|part| &part.segment)
    }

    /// Area of the cloth within (mm²), less its cut-outs; of a cut-out, the area cut away.
    pub fn area(&self) -> f64 {
        ring::area(self.ring()).abs() - self.cutouts.iter().map(CutLine::area).sum::<f64>()
    }

    /// Length of the whole line, with the cut-outs (mm).
    pub fn length(&self) -> f64 {
        let cutouts = self.cutouts.iter().map(CutLine::length);
        self.ring().map(Segment::length).sum::<f64>() + cutouts.sum::<f64>()
    }

    /// The smallest upright box that holds it.
    pub fn bounds(&self) -> Rect {
        let mut boxes = self.ring().map(Segment::bounds);
        let first = boxes.next().unwrap_or(Rect::ZERO);
        boxes.fold(first, |all, one| all.union(one))
    }

    /// Whether a point lies inside, and in no cut-out.
    pub fn contains(&self, point: impl Into<Point>) -> bool {
        let point = point.into();
        ring::winding(self.ring(), point) != 0
            && !self.cutouts.iter().any(|cutout| cutout.contains(point))
    }

    /// Distance of a point from the line (mm).
    pub fn distance(&self, point: impl Into<Point>) -> f64 {
        let point = point.into();
        let cutouts = self.cutouts.iter().map(|cutout| cutout.distance(point));
        self.ring()
            .map(|segment| segment.nearest(point).0)
            .chain(cutouts)
            .fold(f64::INFINITY, f64::min)
    }

    /// The corners of a polygon whose sides are chords within `tolerance` of the line (mm, at least 1e-6); the first
    /// corner is not repeated. Cut-outs are left out: each can be flattened itself.
    pub fn flatten(&self, tolerance: f64) -> Vec<Point> {
        let mut points = Vec::new();
        for segment in self.ring() {
            segment.flatten_into(tolerance.max(1e-6), &mut points);
        }
        points
    }

    /// The line as a path for drawing, the cut-outs after it; arcs become cubics within `tolerance` (mm, at least 1e-9).
    pub fn path(&self, tolerance: f64) -> BezPath {
        let mut path = segments_path(self.ring(), tolerance);
        for cutout in &self.cutouts {
            path.extend(cutout.path(tolerance));
        }
        path
    }
}

/// A closed path of lines, and of cubics for arcs.
pub(crate) fn segments_path<'a>(
    ring: impl IntoIterator<Item = &'a Segment>,
    tolerance: f64,
) -> BezPath {
    let mut path = BezPath::new();
    for segment in ring {
        if path.elements().is_empty() {
            path.move_to(segment.start);
        }
        if segment.is_line() {
            path.line_to(segment.end);
            continue;
        }
        segment.as_cubics(tolerance.max(1e-9), |[_, first, second, end]| {
            path.curve_to(first, second, end);
        });
    }
    path.close_path();
    path
}

impl Piece {
    /// The line to cut along: every edge at its allowance outside the seam line, or where it is drawn if it is
    /// [already cut](super::Drawn::Cut), joined by the corner treatments. What is cut out of the piece is cut along a ring of
    /// its own, inside the cut-out's by the allowances of its edges.
    ///
    /// Lines and arcs have exact parallels. Cubics are first fitted by arcs within half of `tolerance` (mm, 0.001 to
    /// 10). Where the allowances of far-apart edges, or of a tight inward curve, run into each other, the cut line is
    /// trimmed to what keeps every allowance whole, so that no point of it is nearer to an edge than that edge's
    /// allowance, but for corners squared, stepped, mirrored, trimmed, cut off or on a fold, and for the ends of an inward curve tighter
    /// than its allowance, where that reaches no farther than the curve's centre. A gap that the allowances close altogether
    /// is closed. A corner that cannot be made as asked is pointed, and said to be so by [`CutLine::unmade`].
    ///
    /// Allowances that meet at both ends of a short edge may cover it: so of an edge no longer than twice the widest of its
    /// own allowance and those beside it nothing need be left. Any other edge that is lost is an error.
    ///
    /// # Errors
    /// - `NotFinite`, `OutOfRange`: `tolerance`;
    /// - `NoSolution`: nothing is left of the cut line of an edge, which is longer than that: its own or another's
    ///   `allowance` is too wide. `max` is the largest that would do, to 0.1 mm, if none were wider; `at` is
    ///   the index of the edge to change, and [`Piece::sentence`] names it;
    /// - `NoSolution` naming `cutout`, `at` the index of the mark: an allowance of that cut-out is too wide to leave an
    ///   opening, or would part it in two. `value` is the widest of its allowances, `max` the largest that would do.
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Edge, Piece};
    /// let corners = [(0.0, 0.0), (300.0, 0.0), (300.0, 50.0), (0.0, 50.0)];
    /// let edges = (0..4)
    ///     .map(|i| Edge::seam("side", Curve::line(corners[i], corners[(i + 1) % 4]), 10.0))
    ///     .collect();
    /// let cut = Piece::new("strip", edges)?.cut_line(0.1)?;
    /// assert_eq!(cut.bounds().width(), 320.0);
    /// assert_eq!(cut.area(), 320.0 * 70.0);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn cut_line(&self, tolerance: f64) -> Result<CutLine, Error> {
        self.lines(tolerance, Side::Right, Edge::outside)
    }

    /// The line to sew along: the drawn line, or inside it by the allowance where an edge is
    /// [already cut](super::Drawn::Cut). Its notches lie on the drawn line (`seam`) and on this one (`cut`).
    ///
    /// # Errors
    /// As [`Piece::cut_line`]: an `allowance` that leaves nothing of its edge, or makes the piece fall apart.
    pub fn seam_line(&self, tolerance: f64) -> Result<CutLine, Error> {
        self.lines(tolerance, Side::Left, Edge::inside)
    }

    /// The outline's line on one side, and those of the cut-outs.
    fn lines(&self, tolerance: f64, side: Side, width: fn(&Edge) -> f64) -> Result<CutLine, Error> {
        let tolerance = Error::check("tolerance", tolerance, 1e-3, 10.0)?;
        let line = |ring: CutRing| -> Result<CutLine, Error> {
            let parallel = ring.whole(tolerance, side, width)?;
            Ok(CutLine {
                notches: ring.carry(&parallel.segments, side, width),
                segments: parallel.segments,
                cutouts: Vec::new(),
                unmade: parallel.unmade,
            })
        };
        let mut outline = line(CutRing::outline(self.edges()))?;
        for (index, mark) in self.marks().iter().enumerate() {
            let Mark::Cutout(cutout) = mark else { continue };
            let named = |error: Error| {
                Error::no_solution("cutout", error.value(), f64::NAN, error.max()).at_index(index)
            };
            outline
                .cutouts
                .push(line(CutRing::cutout(&cutout.edges)).map_err(named)?);
        }
        Ok(outline)
    }

    /// The parallel outside the drawn ring, with one corner treatment in place of the edges' own; empty where there is none.
    pub(crate) fn outer_with(
        &self,
        tolerance: f64,
        width: &Width,
        corner: Option<Corner>,
    ) -> Vec<CutSegment> {
        let ring = CutRing::outline(self.edges());
        ring.parallel(tolerance, Side::Right, width, corner)
            .segments
    }

    /// The parallel inside the drawn ring, with this treatment of inward corners; empty where there is none, or several rings.
    pub(crate) fn inner_with(
        &self,
        tolerance: f64,
        width: &Width,
        corner: Corner,
    ) -> Vec<CutSegment> {
        let ring = CutRing::outline(self.edges());
        ring.parallel(tolerance, Side::Left, width, Some(corner))
            .segments
    }
}
