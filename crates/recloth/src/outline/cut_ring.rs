//! A ring of edges and its parallel to one side, each edge at its own distance: what cut lines and seam lines are made of.

use alloc::vec::Vec;
use kurbo::Point;

use super::cross::crossings;
use super::cut_line::{CutNotch, CutSegment};
use super::edge::{Corner, Edge, NOTCH_DEPTH, NOTCH_SHARE, Notch, Role};
use super::fit::fit;
use super::parallel::{Bit, Part, parallel};
use super::ring;
use super::segment::Segment;
use super::vector::{left, length, right};
use crate::Error;

/// Of how many edges it is tried whether theirs is the allowance that lies across a lost edge.
const MOST_TRIED: usize = 32;
/// A ring that holds less is none (mm²).
const NO_AREA: f64 = 1e-6;

/// How wide the allowance of an edge is on the side looked at.
pub(crate) type Width<'a> = dyn Fn(&Edge) -> f64 + 'a;

/// The side of its edges on which a parallel lies: the cloth is to their left.
#[derive(Clone, Copy, PartialEq)]
pub(crate) enum Side {
    Left,
    Right,
}

/// The outline of a piece, counter-clockwise, or of what is cut out of it, clockwise.
#[derive(Clone, Copy)]
pub(crate) struct CutRing<'a> {
    edges: &'a [Edge],
    cutout: bool,
}

/// A parallel ring, and the corners that could not be made as asked.
#[derive(Default)]
pub(crate) struct Parallel {
    /// In the direction of the edges; empty where there is none.
    pub(crate) segments: Vec<CutSegment>,
    pub(crate) unmade: Vec<Error>,
}

impl<'a> CutRing<'a> {
    pub(crate) fn outline(edges: &'a [Edge]) -> CutRing<'a> {
        CutRing {
            edges,
            cutout: false,
        }
    }

    pub(crate) fn cutout(edges: &'a [Edge]) -> CutRing<'a> {
        CutRing {
            edges,
            cutout: true,
        }
    }

    /// The parallel on one side, with one corner treatment in place of the edges' own, if one is given. On the left the
    /// edges' own treatments are not asked for: they are those of outward corners.
    pub(crate) fn parallel(
        &self,
        tolerance: f64,
        side: Side,
        width: &Width,
        corner: Option<Corner>,
    ) -> Parallel {
        let mut parts = self.parts(tolerance / 2.0, width);
        let back = side == Side::Left;
        let corner = if back {
            Some(corner.unwrap_or_default())
        } else {
            corner
        };
        if back {
            // Walked the other way, so that the parallel lies to the right, and what lies to the left is covered.
            reverse(&mut parts);
        }
        for part in &mut parts {
            part.corner = part.corner.map(|own| corner.unwrap_or(own));
        }
        // A ring that runs counter-clockwise covers its inside, one that runs clockwise all but its inside.
        let around = self.cutout == back;
        let (rings, unmade) = parallel(&parts, if around { 0 } else { 1 });
        let area = |bits: &[Bit]| ring::area(bits.iter().map(|bit| &bit.segment));
        let mut rings: Vec<(f64, Vec<Bit>)> = rings
            .into_iter()
            .map(|bits| (area(&bits), bits))
            .filter(|(area, _)| {
                if around {
                    *area > 0.0
                } else {
                    *area < -NO_AREA
                }
            })
            .collect();
        // Of gaps closed on all sides nothing is wanted; but a ring that falls apart is none.
        rings.sort_by(|a, b| b.0.total_cmp(&a.0));
        let whole = around || rings.len() == 1;
        let Some((_, bits)) = rings.into_iter().next().filter(|_| whole) else {
            return Parallel::default();
        };
        let long = bits
            .into_iter()
            .filter(|bit| length(bit.segment.end - bit.segment.start) > 0.0);
        let mut segments: Vec<CutSegment> = long
            .map(|Bit { segment, edge }| CutSegment { segment, edge })
            .collect();
        if back {
            segments.reverse();
            for part in &mut segments {
                part.segment = part.segment.reversed();
            }
        }
        Parallel { segments, unmade }
    }

    /// The parallel at the widths given, if it leaves something of every edge; else an error that names the edge whose
    /// allowance is too wide and the largest that would do, if none were wider, to 0.1 mm.
    pub(crate) fn whole(
        &self,
        tolerance: f64,
        side: Side,
        width: fn(&Edge) -> f64,
    ) -> Result<Parallel, Error> {
        let ring = |width: &Width| self.parallel(tolerance, side, width, None);
        let parallel = ring(&width);
        let Some(lost) = self.first_lost(&parallel.segments, &width) else {
            return Ok(parallel);
        };
        let still_lost = |width: &Width| self.first_lost(&ring(width).segments, width);
        let widest = self.edges.iter().map(width).fold(0.0, f64::max);
        let (mut low, mut high) = (0.0, widest);
        for _ in 0..14 {
            let middle = (low + high) / 2.0;
            if still_lost(&|edge: &Edge| width(edge).min(middle)).is_none() {
                low = middle;
            } else {
                high = middle;
            }
        }
        let most = libm::floor(low * 10.0) / 10.0;
        // The edge that is lost, if its own allowance is too wide; else the one that lies across it: alone narrowed, it
        // gives the lost edge back. Where it takes several, the widest.
        let edges = self.edges;
        let wide = |index: &usize| width(&edges[*index]) > most;
        let across = |index: &usize| {
            let narrower = |edge: &Edge| {
                let own = core::ptr::eq(edge, &edges[*index]);
                if own { most } else { width(edge) }
            };
            still_lost(&narrower) != Some(lost)
        };
        let index = Some(lost)
            .filter(wide)
            .or_else(|| (0..edges.len()).filter(wide).take(MOST_TRIED).find(across))
            .or_else(|| (0..edges.len()).find(|&index| width(&edges[index]) == widest))
            .unwrap_or(lost);
        let allowance = edges[index].allowance;
        Err(Error::no_solution("allowance", allowance, 0.0, most).at_index(index))
    }

    /// The first edge that has nothing left though it is too long to be covered from its corners; of a ring that is gone
    /// altogether, the edge with the widest allowance.
    fn first_lost(&self, segments: &[CutSegment], width: &Width) -> Option<usize> {
        let edges = self.edges;
        if segments.is_empty() {
            let mut widest = 0;
            for (index, edge) in edges.iter().enumerate() {
                if width(edge) > width(&edges[widest]) {
                    widest = index;
                }
            }
            return Some(widest);
        }
        let mut left = alloc::vec![false; edges.len()];
        for edge in segments.iter().filter_map(|part| part.edge) {
            left[edge] = true;
        }
        (0..edges.len()).find(|&index| !left[index] && !self.may_vanish(index, width))
    }

    /// Whether allowances that meet at both ends of an edge may cover all of it: each covers at most its own width.
    fn may_vanish(&self, index: usize, width: &Width) -> bool {
        let count = self.edges.len();
        let beside = [index + count - 1, index, index + 1];
        let widths = beside.map(|index| width(&self.edges[index % count]));
        self.edges[index].length() <= 2.0 * widths.into_iter().fold(0.0, f64::max)
    }

    /// The ring in lines and arcs, with the distance of each part's parallel.
    fn parts(&self, tolerance: f64, distance: &Width) -> Vec<Part> {
        let mut parts = Vec::new();
        let mut segments = Vec::new();
        for (index, edge) in self.edges.iter().enumerate() {
            fit(&edge.curve, tolerance, &mut segments);
            let distance = distance(edge);
            parts.extend(segments.drain(..).map(|segment| Part {
                edge: index,
                segment,
                distance,
                corner: None,
                fold: edge.role == Role::Fold,
            }));
            if let Some(last) = parts.last_mut() {
                last.corner = Some(edge.corner);
            }
        }
        parts
    }

    /// The notches, moved square to their edges to where they first meet the parallel on that side.
    pub(crate) fn carry(
        &self,
        segments: &[CutSegment],
        side: Side,
        distance: impl Fn(&Edge) -> f64,
    ) -> Vec<CutNotch> {
        let mut carried = Vec::new();
        let mut reach = None;
        for (index, edge) in self.edges.iter().enumerate() {
            for notch in &edge.notches {
                let (seam, along) = edge.curve.at(notch.distance);
                let out = match side {
                    Side::Left => left(along),
                    Side::Right => right(along),
                };
                let mut cut = seam;
                if distance(edge) > 0.0 {
                    let reach = *reach.get_or_insert_with(|| {
                        let boxes = segments.iter().map(|part| part.segment.bounds());
                        let all = boxes.reduce(|a, b| a.union(b)).unwrap_or_default();
                        1.0 + all.width() + all.height()
                    });
                    let ray = Segment::line(seam, seam + out * reach);
                    let mut nearest = f64::INFINITY;
                    for part in segments {
                        crossings(&ray, &part.segment, |point: Point, far, _| {
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

/// The same parts walked the other way, each with the corner at its new end.
fn reverse(parts: &mut [Part]) {
    parts.reverse();
    for part in parts.iter_mut() {
        part.segment = part.segment.reversed();
    }
    let corners: Vec<Option<Corner>> = parts.iter().map(|part| part.corner).collect();
    let count = parts.len();
    for (index, part) in parts.iter_mut().enumerate() {
        part.corner = corners[(index + 1) % count].map(Corner::reversed);
    }
}

/// How deep a notch is cut where the cut line lies so far from the seam line.
fn depth(notch: &Notch, room: f64) -> f64 {
    let usual = (NOTCH_SHARE * room).min(NOTCH_DEPTH);
    notch.depth.map_or(usual, |depth| depth.min(room))
}
