//! Places on the outline of a piece, and the runs of edges between them.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use kurbo::{Line, Point};

use super::curve::Curve;
use super::edge::{Corner, Edge, Notch, Role};
use super::mark::Mark;
use super::piece::Piece;
use crate::Error;

/// Lengths below this are nothing: two places so near are one (mm).
pub(crate) const NOTHING: f64 = 1e-6;

/// A place on the outline: so far along an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Place {
    /// Index of the edge.
    pub edge: usize,
    /// Distance from the start of the edge along it (mm).
    pub distance: f64,
}

impl Piece {
    /// The place on the outline nearest to a point, and how far from it the point is (mm).
    pub fn place(&self, point: impl Into<Point>) -> (Place, f64) {
        let point = point.into();
        let mut best = (
            Place {
                edge: 0,
                distance: 0.0,
            },
            f64::INFINITY,
        );
        for (edge, one) in self.edges().iter().enumerate() {
            let (off, distance) = one.curve.nearest(point);
            if off < best.1 {
                best = (Place { edge, distance }, off);
            }
        }
        best
    }

    /// The point at a place, which has been checked.
    pub(crate) fn point_at(&self, place: Place) -> Point {
        self.edges()[place.edge].curve.at(place.distance).0
    }

    /// A place that a cut which opens may start or end at: on an edge there is, and not within a fold.
    pub(crate) fn check_place(&self, argument: &'static str, place: Place) -> Result<Place, Error> {
        let edges = self.edges();
        let last = edges.len() as f64 - 1.0;
        Error::check(argument, place.edge as f64, 0.0, last)?;
        let edge = &edges[place.edge];
        let span = edge.length();
        let distance = Error::check(argument, place.distance, 0.0, span + NOTHING)?.min(span);
        let within = distance > NOTHING && distance < span - NOTHING;
        if edge.role == Role::Fold && within {
            return Err(
                Error::no_solution(argument, distance, f64::NAN, f64::NAN).at_index(place.edge)
            );
        }
        Ok(Place { distance, ..place })
    }

    /// How far along the whole outline a place is (mm), from the start of the first edge.
    pub(crate) fn along(&self, place: Place) -> f64 {
        let before: f64 = self.edges()[..place.edge].iter().map(Edge::length).sum();
        before + place.distance
    }

    /// Index of the edge that ends at or runs through a place.
    pub(crate) fn edge_before(&self, place: Place) -> usize {
        let count = self.edges().len();
        let within = place.distance > NOTHING;
        if within {
            place.edge
        } else {
            (place.edge + count - 1) % count
        }
    }

    /// Index of the edge that starts at or runs through a place.
    pub(crate) fn edge_after(&self, place: Place) -> usize {
        let edges = self.edges();
        let within = place.distance < edges[place.edge].length() - NOTHING;
        if within {
            place.edge
        } else {
            (place.edge + 1) % edges.len()
        }
    }

    /// A piece with the name and the cutting instruction of this one. Its edges are numbered where they are parts of
    /// one, and begin where those of this piece do, if that edge is still there.
    pub(crate) fn remade(
        &self,
        mut edges: Vec<Edge>,
        marks: Vec<Mark>,
        grain: Option<Line>,
    ) -> Result<Piece, Error> {
        let first = &self.edges()[0].name;
        if let Some(start) = edges.iter().position(|edge| edge.name == *first) {
            edges.rotate_left(start);
        }
        number_parts(&mut edges, self.edges());
        let piece = Piece::new(self.name(), edges)?
            .with_marks(marks)?
            .with_cutting(self.cutting().clone())?;
        match grain {
            Some(grain) => piece.with_grain(grain),
            None => Ok(piece),
        }
    }

    /// The edges from one place forward to another, those cut through in part; nothing from a place to itself.
    pub(crate) fn run(&self, from: Place, to: Place) -> Vec<Edge> {
        if (self.along(from) - self.along(to)).abs() <= NOTHING {
            return Vec::new();
        }
        let count = self.edges().len();
        let mut run = Vec::new();
        let straight_on = from.edge == to.edge && from.distance < to.distance;
        let mut index = from.edge;
        let mut start = from.distance;
        for step in 0..=count {
            let edge = &self.edges()[index];
            let last = index == to.edge && (straight_on || step > 0);
            let end = if last { to.distance } else { edge.length() };
            if end - start > NOTHING {
                run.push(part(edge, start, end));
            }
            if last {
                break;
            }
            index = (index + 1) % count;
            start = 0.0;
        }
        run
    }
}

/// A part of an edge, with the notches on it; one right at a cut goes with what follows.
pub(crate) fn part(edge: &Edge, from: f64, to: f64) -> Edge {
    let span = edge.length();
    let whole = to >= span - NOTHING;
    let mut part = edge.clone();
    if from > 0.0 || !whole {
        part.curve = edge.curve.part(from, if whole { span } else { to });
    }
    part.notches.retain(|notch| {
        notch.distance >= from - NOTHING && (whole || notch.distance < to - NOTHING)
    });
    for notch in &mut part.notches {
        notch.distance = (notch.distance - from).max(0.0);
    }
    if !whole {
        part.corner = Corner::default();
    }
    part
}

/// An edge straight across an opened gap, like the edge it opened in.
pub(crate) fn across(like: &Edge, start: Point, end: Point) -> Edge {
    Edge {
        curve: Curve::line(start, end),
        corner: Corner::default(),
        notches: Vec::new(),
        ..like.clone()
    }
}

/// An edge redrawn along other curves, numbered if they are several. Its notches go to where `there` puts their points, or
/// as near as the curves come.
pub(crate) fn redrawn(
    edge: &Edge,
    curves: Vec<Curve>,
    there: impl Fn(Point) -> Point,
) -> Vec<Edge> {
    let count = curves.len();
    let mut parts: Vec<Edge> = curves
        .into_iter()
        .enumerate()
        .map(|(index, curve)| Edge {
            curve,
            name: if count > 1 {
                format!("{} {}", edge.name, index + 1)
            } else {
                edge.name.clone()
            },
            corner: if index + 1 == count {
                edge.corner
            } else {
                Corner::default()
            },
            notches: Vec::new(),
            ..edge.clone()
        })
        .collect();
    for notch in &edge.notches {
        pin(notch, there(edge.curve.at(notch.distance).0), &mut parts);
    }
    parts
}

/// Puts a notch where one of these edges comes nearest to a point.
pub(crate) fn pin<'a>(notch: &Notch, point: Point, edges: impl IntoIterator<Item = &'a mut Edge>) {
    let mut best: Option<(&mut Edge, (f64, f64))> = None;
    for edge in edges {
        let near = edge.curve.nearest(point);
        if best.as_ref().is_none_or(|(_, (off, _))| near.0 < *off) {
            best = Some((edge, near));
        }
    }
    if let Some((edge, (_, distance))) = best {
        edge.notches.push(Notch {
            distance,
            ..notch.clone()
        });
    }
}

/// Edges that came of one edge are told apart: `hem 1`, `hem 2`.
fn number_parts(edges: &mut [Edge], before: &[Edge]) {
    let count = |edges: &[Edge], name: &str| edges.iter().filter(|e| e.name == name).count();
    let split: Vec<String> = before
        .iter()
        .map(|edge| edge.name.clone())
        .filter(|name| count(before, name) == 1 && count(edges, name) > 1)
        .collect();
    for name in split {
        let parts = edges.iter_mut().filter(|edge| edge.name == name);
        for (index, edge) in parts.enumerate() {
            edge.name = format!("{name} {}", index + 1);
        }
    }
}
