//! A piece cut into regions that are moved apart, and what becomes of its marks.

use alloc::vec::Vec;
use core::cell::OnceCell;
use kurbo::{Affine, Line, Point};

use super::cross::crossings;
use super::curve::Curve;
use super::edge::Edge;
use super::fit::fit;
use super::mark::{Cutout, Dart, Mark};
use super::piece::Piece;
use super::ring;
use super::segment::Segment;
use crate::{Error, ErrorKind};

/// How near arcs follow a cubic where it is asked on which side a mark lies (mm).
const FINE: f64 = 1e-3;

/// A part of a piece between cuts, and how it moves.
pub(crate) struct Region {
    /// The edges of the piece that border it, in order, as they were.
    pub(crate) edges: Vec<Edge>,
    /// The cuts that close it.
    cut: Vec<Segment>,
    /// Its whole border, once it is asked for: a piece without marks and grain never needs it.
    border: OnceCell<Vec<Segment>>,
    /// Where it goes: a turn and a shift.
    pub(crate) motion: Affine,
}

impl Region {
    /// A region of these edges, closed by these cuts, each a list of corners from the end of the edges on.
    pub(crate) fn new(edges: Vec<Edge>, cut: &[Segment], motion: Affine) -> Region {
        Region {
            edges,
            cut: cut.to_vec(),
            border: OnceCell::new(),
            motion,
        }
    }

    fn border(&self) -> &[Segment] {
        self.border.get_or_init(|| {
            let mut border = Vec::new();
            for edge in &self.edges {
                fit(&edge.curve, FINE, &mut border);
            }
            border.extend_from_slice(&self.cut);
            border
        })
    }

    /// The edges where they go.
    pub(crate) fn moved(&self) -> impl Iterator<Item = Edge> {
        self.edges.iter().map(|edge| Edge {
            curve: edge.curve.moved(self.motion, false),
            ..edge.clone()
        })
    }

    /// Length of its edges (mm).
    pub(crate) fn length(&self) -> f64 {
        self.edges.iter().map(Edge::length).sum()
    }

    /// How far outside it a point lies (mm); 0 within.
    pub(crate) fn outside(&self, point: Point) -> f64 {
        let border = self.border();
        if ring::winding(border, point) != 0 {
            return 0.0;
        }
        let off = border.iter().map(|part| part.nearest(point).0);
        off.fold(f64::INFINITY, f64::min)
    }
}

/// The region that holds a point, or else the nearest.
fn holding(regions: &[Region], point: Point) -> usize {
    let mut best = (0, f64::INFINITY);
    for (index, region) in regions.iter().enumerate() {
        let off = region.outside(point);
        if off < best.1 {
            best = (index, off);
        }
    }
    best.0
}

/// The marks of a piece, each with the region it lies in, as they were. Lines are cut where a cut crosses them; the
/// dart named `but` is left out.
///
/// # Errors
/// `NoSolution`, argument `mark`, `at` its index: a dart, a buttonhole or a cut-out that a cut runs through.
pub(crate) fn share_marks(
    piece: &Piece,
    regions: &[Region],
    cuts: &[Segment],
    but: Option<usize>,
) -> Result<Vec<(usize, Mark)>, Error> {
    let mut shared = Vec::new();
    for (index, mark) in piece.marks().iter().enumerate() {
        if but == Some(index) {
            continue;
        }
        let cut = || {
            let nan = f64::NAN;
            Err(Error::new(ErrorKind::NoSolution, "mark", nan, nan, nan).at_index(index))
        };
        match mark {
            Mark::Drill { at, .. } => shared.push((holding(regions, *at), mark.clone())),
            Mark::Line { name, kind, curve } => {
                for curve in pieces_of(curve, cuts) {
                    let region = holding(regions, curve.at(curve.length() / 2.0).0);
                    let (name, kind) = (name.clone(), *kind);
                    shared.push((region, Mark::Line { name, kind, curve }));
                }
            }
            Mark::Cutout(Cutout { edges, .. }) => {
                let mut ring = Vec::new();
                for edge in edges {
                    fit(&edge.curve, FINE, &mut ring);
                }
                if ring::meet(&ring, cuts) {
                    return cut();
                }
                shared.push((holding(regions, ring[0].start), mark.clone()));
            }
            Mark::Buttonhole { ends, .. } => {
                if pieces_of(&Curve::line(ends[0], ends[1]), cuts).len() > 1 {
                    return cut();
                }
                let middle = ends[0].midpoint(ends[1]);
                shared.push((holding(regions, middle), mark.clone()));
            }
            Mark::Dart(Dart { point, legs, .. }) => {
                let through = legs
                    .iter()
                    .any(|leg| pieces_of(&Curve::line(*point, *leg), cuts).len() > 1);
                if through {
                    return cut();
                }
                let inside = *point + (legs[0].midpoint(legs[1]) - *point) * 0.5;
                shared.push((holding(regions, inside), mark.clone()));
            }
        }
    }
    Ok(shared)
}

/// Those of these marks that lie within a ring of edges; of a line, what of it does.
pub(crate) fn marks_within(marks: Vec<Mark>, edges: &[Edge]) -> Vec<Mark> {
    let region = Region::new(edges.to_vec(), &[], Affine::IDENTITY);
    let within = |point: Point| region.outside(point) < FINE;
    let mut kept = Vec::new();
    for mark in marks {
        match mark {
            Mark::Line { name, kind, curve } => {
                let parts = pieces_of(&curve, region.border()).into_iter();
                let inside = parts.filter(|part| within(part.at(part.length() / 2.0).0));
                kept.extend(inside.map(|curve| Mark::Line {
                    name: name.clone(),
                    kind,
                    curve,
                }));
            }
            Mark::Cutout(cutout) => {
                let mut ring = Vec::new();
                for edge in &cutout.edges {
                    fit(&edge.curve, FINE, &mut ring);
                }
                if within(ring[0].start) && !ring::meet(&ring, region.border()) {
                    kept.push(Mark::Cutout(cutout));
                }
            }
            other => {
                if other.numbers().0.into_iter().all(within) {
                    kept.push(other);
                }
            }
        }
    }
    kept
}

/// The marks of `share_marks`, each moved with its region.
pub(crate) fn moved_marks(shared: Vec<(usize, Mark)>, regions: &[Region]) -> Vec<Mark> {
    let moved = |(region, mark): (usize, Mark)| mark.moved(regions[region].motion, false);
    shared.into_iter().map(moved).collect()
}

/// The grain line, moved with the region that holds its middle.
pub(crate) fn moved_grain(piece: &Piece, regions: &[Region]) -> Option<Line> {
    let grain = piece.grain()?;
    let motion = regions[holding(regions, grain.p0.midpoint(grain.p1))].motion;
    Some(Line::new(motion * grain.p0, motion * grain.p1))
}

/// A curve cut where any of the cuts crosses it.
pub(crate) fn pieces_of(curve: &Curve, cuts: &[Segment]) -> Vec<Curve> {
    let mut bits = Vec::new();
    fit(curve, FINE, &mut bits);
    let mut places = Vec::new();
    let mut before = 0.0;
    for bit in &bits {
        for cut in cuts {
            crossings(bit, cut, |_, along, _| places.push(before + along));
        }
        before += bit.length();
    }
    let whole = curve.length();
    places.retain(|place| *place > FINE && *place < whole - FINE);
    places.sort_by(f64::total_cmp);
    places.dedup_by(|a, b| (*a - *b).abs() < FINE);
    let mut pieces = Vec::new();
    let mut start = 0.0;
    for place in places {
        pieces.push(curve.part(start, place));
        start = place;
    }
    pieces.push(curve.part(start, whole));
    pieces
}
