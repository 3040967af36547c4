//! The cut line of a piece, and its seam line where cloth is already cut.

use alloc::string::String;
use alloc::vec::Vec;
use kurbo::{BezPath, Point, Rect};

use super::cross::crossings;
use super::edge::{Corner, Edge, NOTCH_DEPTH, NOTCH_SHARE, Notch, NotchForm};
use super::parallel::{Bit, Part, raw, trim};
use super::piece::Piece;
use super::ring;
use super::segment::Segment;
use super::vector::{left, length};
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

/// A closed ring of lines and arcs, counter-clockwise: the line to cut a piece along.
///
/// Made by [`Piece::cut_line`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct CutLine {
    segments: Vec<CutSegment>,
    notches: Vec<CutNotch>,
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

    fn ring(&self) -> impl Iterator<Item = &Segment> {
        self.segments.iter().map(|part| &part.segment)
    }

    /// Area inside (mm²).
    pub fn area(&self) -> f64 {
        ring::area(self.ring())
    }

    /// Length of the whole line (mm).
    pub fn length(&self) -> f64 {
        self.ring().map(Segment::length).sum()
    }

    /// The smallest upright box that holds it.
    pub fn bounds(&self) -> Rect {
        let mut boxes = self.ring().map(Segment::bounds);
        let first = boxes.next().unwrap_or(Rect::ZERO);
        boxes.fold(first, |all, one| all.union(one))
    }

    /// Whether a point lies inside.
    pub fn contains(&self, point: impl Into<Point>) -> bool {
        ring::winding(self.ring(), point.into()) != 0
    }

    /// Distance of a point from the line (mm).
    pub fn distance(&self, point: impl Into<Point>) -> f64 {
        let point = point.into();
        self.ring()
            .map(|segment| segment.nearest(point).0)
            .fold(f64::INFINITY, f64::min)
    }

    /// The corners of a polygon whose sides are chords within `tolerance` of the line (mm, at least 1e-6); the first
    /// corner is not repeated.
    pub fn flatten(&self, tolerance: f64) -> Vec<Point> {
        let mut points = Vec::new();
        for segment in self.ring() {
            segment.flatten_into(tolerance.max(1e-6), &mut points);
        }
        points
    }

    /// The line as a path for drawing; arcs become cubics within `tolerance` (mm, at least 1e-9).
    pub fn path(&self, tolerance: f64) -> BezPath {
        segments_path(self.ring(), tolerance)
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

/// Of how many edges it is tried whether theirs is the allowance that lies across a lost edge.
const MOST_TRIED: usize = 32;

/// How wide the allowance of an edge is on the side looked at.
pub(crate) type Width<'a> = dyn Fn(&Edge) -> f64 + 'a;

impl Piece {
    /// The line to cut along: every edge at its allowance outside the seam line, or where it is drawn if it is
    /// [already cut](super::Drawn::Cut), joined by the corner treatments.
    ///
    /// Lines and arcs have exact parallels. Cubics are first fitted by arcs within half of `tolerance` (mm, 0.001 to
    /// 10). Where the allowances of far-apart edges, or of a tight inward curve, run into each other, the cut line is
    /// trimmed to what keeps every allowance whole, so that no point of it is nearer to an edge than that edge's
    /// allowance, but for corners squared, mirrored or cut off, and for the ends of an inward curve tighter than its
    /// allowance, where that reaches no farther than the curve's centre. A gap that the allowances close altogether is
    /// closed.
    ///
    /// # Errors
    /// - `NotFinite`, `OutOfRange`: `tolerance`;
    /// - `NoSolution`: nothing is left of the cut line of an edge, which is longer than twice its allowance: its own or
    ///   another's `allowance` is too wide. `max` is the largest that would do, to 0.1 mm, if none were wider; `at` is
    ///   the index of the edge to change, and [`Piece::sentence`] names it.
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
        let tolerance = check_tolerance(tolerance)?;
        let segments = self.whole(Edge::outside, |width| self.outer(tolerance, width))?;
        let mut line = CutLine {
            segments,
            notches: Vec::new(),
        };
        line.notches = self.carry(&line, 1.0, Edge::outside);
        Ok(line)
    }

    /// The line to sew along: the drawn line, or inside it by the allowance where an edge is
    /// [already cut](super::Drawn::Cut). Its notches lie on the drawn line (`seam`) and on this one (`cut`).
    ///
    /// # Errors
    /// As [`Piece::cut_line`]: an `allowance` that leaves nothing of its edge, or makes the piece fall apart.
    pub fn seam_line(&self, tolerance: f64) -> Result<CutLine, Error> {
        let tolerance = check_tolerance(tolerance)?;
        let segments = self.whole(Edge::inside, |width| self.inner(tolerance, width))?;
        let mut line = CutLine {
            segments,
            notches: Vec::new(),
        };
        line.notches = self.carry(&line, -1.0, Edge::inside);
        Ok(line)
    }

    /// The parallel outside the drawn ring; empty where there is none.
    fn outer(&self, tolerance: f64, width: &Width) -> Vec<CutSegment> {
        self.outer_with(tolerance, width, None)
    }

    /// The same, with one corner treatment in place of the edges' own.
    pub(crate) fn outer_with(
        &self,
        tolerance: f64,
        width: &Width,
        corner: Option<Corner>,
    ) -> Vec<CutSegment> {
        let mut parts = self.parts(tolerance / 2.0, width);
        for part in &mut parts {
            part.corner = part.corner.map(|own| corner.unwrap_or(own));
        }
        trim(&raw(&parts), 0)
            .into_iter()
            .map(|bits| (ring::area(bits.iter().map(|bit| &bit.segment)), bits))
            .max_by(|a, b| a.0.total_cmp(&b.0))
            .filter(|(area, _)| *area > 0.0)
            .map(|(_, bits)| cut_segments(bits))
            .unwrap_or_default()
    }

    /// The parallel inside the drawn ring; empty where there is none, or several rings.
    pub(crate) fn inner(&self, tolerance: f64, width: &Width) -> Vec<CutSegment> {
        self.inner_with(tolerance, width, Corner::default())
    }

    /// The same, with this treatment of inward corners.
    pub(crate) fn inner_with(
        &self,
        tolerance: f64,
        width: &Width,
        corner: Corner,
    ) -> Vec<CutSegment> {
        let mut parts = self.parts(tolerance / 2.0, width);
        // Walked the other way the piece's inside lies to the right, and everything but the piece is covered.
        parts.reverse();
        for part in &mut parts {
            part.segment = part.segment.reversed();
        }
        let ends: Vec<bool> = parts.iter().map(|part| part.corner.is_some()).collect();
        let count = parts.len();
        for (index, part) in parts.iter_mut().enumerate() {
            part.corner = ends[(index + 1) % count].then_some(corner);
        }
        let mut rings: Vec<Vec<Bit>> = trim(&raw(&parts), 1)
            .into_iter()
            .map(|bits| {
                let turn = |bit: Bit| Bit {
                    segment: bit.segment.reversed(),
                    ..bit
                };
                bits.into_iter().rev().map(turn).collect::<Vec<_>>()
            })
            .filter(|bits| ring::area(bits.iter().map(|bit| &bit.segment)) > 1e-6)
            .collect();
        match rings.len() {
            1 => cut_segments(rings.remove(0)),
            _ => Vec::new(),
        }
    }

    /// What `ring` makes of the allowances, if it leaves something of every edge; else an error that names the edge whose
    /// allowance is too wide and the largest that would do, if none were wider, to 0.1 mm.
    fn whole(
        &self,
        width: fn(&Edge) -> f64,
        ring: impl Fn(&Width) -> Vec<CutSegment>,
    ) -> Result<Vec<CutSegment>, Error> {
        let segments = ring(&width);
        let Some(lost) = self.first_lost(&segments, &width) else {
            return Ok(segments);
        };
        let edges = self.edges();
        let widest = edges.iter().map(width).fold(0.0, f64::max);
        let (mut low, mut high) = (0.0, widest);
        for _ in 0..14 {
            let middle = (low + high) / 2.0;
            let narrower = |edge: &Edge| width(edge).min(middle);
            if self.first_lost(&ring(&narrower), &narrower).is_none() {
                low = middle;
            } else {
                high = middle;
            }
        }
        let most = libm::floor(low * 10.0) / 10.0;
        // The edge that is lost, if its own allowance is too wide; else the one that lies across it: alone narrowed, it
        // gives the lost edge back. Where it takes several, the widest.
        let wide = |index: &usize| width(&edges[*index]) > most;
        let across = |index: &usize| {
            let narrower = |edge: &Edge| {
                let own = core::ptr::eq(edge, &edges[*index]);
                if own { most } else { width(edge) }
            };
            self.first_lost(&ring(&narrower), &narrower) != Some(lost)
        };
        let index = Some(lost)
            .filter(wide)
            .or_else(|| (0..edges.len()).filter(wide).take(MOST_TRIED).find(across))
            .or_else(|| (0..edges.len()).find(|&index| width(&edges[index]) == widest))
            .unwrap_or(lost);
        let allowance = edges[index].allowance;
        Err(Error::no_solution("allowance", allowance, 0.0, most).at_index(index))
    }

    /// The first edge that has nothing left and is too long for that to be a matter of its corners; of a ring that is
    /// gone altogether, the edge with the widest allowance.
    fn first_lost(&self, segments: &[CutSegment], width: &Width) -> Option<usize> {
        let edges = self.edges();
        if segments.is_empty() {
            let mut widest = 0;
            for (index, edge) in edges.iter().enumerate() {
                if width(edge) > width(&edges[widest]) {
                    widest = index;
                }
            }
            return Some(widest);
        }
        (0..edges.len()).find(|&index| {
            edges[index].length() > 2.0 * width(&edges[index])
                && segments.iter().all(|part| part.edge != Some(index))
        })
    }

    /// The drawn ring in lines and arcs, with the distance of each part's parallel.
    fn parts(&self, tolerance: f64, distance: &Width) -> Vec<Part> {
        let segments = self.segments(tolerance);
        let count = segments.len();
        let ends = |index: usize| index + 1 == count || segments[index + 1].0 != segments[index].0;
        segments
            .iter()
            .enumerate()
            .map(|(index, &(edge, segment))| Part {
                edge,
                segment,
                distance: distance(&self.edges()[edge]),
                corner: ends(index).then_some(self.edges()[edge].corner),
            })
            .collect()
    }

    /// The notches, moved along the normal to where it first meets the line; `way` is 1 outward, -1 inward.
    fn carry(&self, line: &CutLine, way: f64, distance: impl Fn(&Edge) -> f64) -> Vec<CutNotch> {
        let bounds = line.bounds();
        let reach = 1.0 + bounds.width() + bounds.height();
        let mut carried = Vec::new();
        for (index, edge) in self.edges().iter().enumerate() {
            for notch in &edge.notches {
                let (seam, along) = edge.curve.at(notch.distance);
                let out = -left(along) * way;
                let mut cut = seam;
                if distance(edge) > 0.0 {
                    let ray = Segment::line(seam, seam + out * reach);
                    let mut nearest = f64::INFINITY;
                    for segment in line.ring() {
                        crossings(&ray, segment, |point, far, _| {
                            if far < nearest {
                                nearest = far;
                                cut = point;
                            }
                        });
                    }
                }
                carried.push(CutNotch {
                    edge: index,
                    name: notch.name.clone(),
                    marks: notch.marks,
                    form: notch.form,
                    depth: depth(notch, length(cut - seam)),
                    seam,
                    cut,
                });
            }
        }
        carried
    }
}

fn check_tolerance(tolerance: f64) -> Result<f64, Error> {
    Error::check("tolerance", tolerance, 1e-3, 10.0)
}

/// How deep a notch is cut where the cut line lies so far from the seam line.
fn depth(notch: &Notch, room: f64) -> f64 {
    let usual = (NOTCH_SHARE * room).min(NOTCH_DEPTH);
    notch.depth.map_or(usual, |depth| depth.min(room))
}

fn cut_segments(bits: Vec<Bit>) -> Vec<CutSegment> {
    bits.into_iter()
        .filter(|bit| length(bit.segment.end - bit.segment.start) > 0.0)
        .map(|bit| CutSegment {
            segment: bit.segment,
            edge: bit.edge,
        })
        .collect()
}
