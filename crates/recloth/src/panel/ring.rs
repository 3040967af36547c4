//! Closed rings of points: simple or not, which way round, what lies inside. Every answer is exact.

use alloc::vec::Vec;

use kurbo::Point;
use robust::{Coord, orient2d};

use crate::{Error, ErrorKind};

/// The farthest a point may lie from the origin along either axis (mm).
const FARTHEST: f64 = 1e5;

/// The most points a ring may have.
const MOST_POINTS: usize = 10_000;

/// A simple polygon, counter-clockwise, no point repeated.
pub(super) struct Ring {
    /// The corners.
    pub(super) points: Vec<Point>,
    /// For each edge (from its corner to the next) its index in the list as given.
    pub(super) edges: Vec<usize>,
}

/// Where a point lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Place {
    Inside,
    Border,
    Outside,
}

impl Ring {
    /// The ring through `given`, when it is a simple polygon. `at` is the place of the ring in a list of rings; without
    /// it an error gives the place of the point.
    pub(super) fn new(
        argument: &'static str,
        given: &[Point],
        at: Option<usize>,
    ) -> Result<Ring, Error> {
        check_points(argument, given, 3, at)?;
        let mut points: Vec<Point> = Vec::with_capacity(given.len());
        let mut edges = Vec::with_capacity(given.len());
        for (index, &point) in given.iter().enumerate() {
            // A repeated point starts no edge until the last of its kind.
            if point != given[(index + 1) % given.len()] {
                points.push(point);
                edges.push(index);
            }
        }
        let wrong = |index: usize| {
            let place = at.unwrap_or(edges.get(index).copied().unwrap_or(0));
            Error::new(ErrorKind::Outline, argument, f64::NAN, f64::NAN, f64::NAN).at_index(place)
        };
        if points.len() < 3 {
            return Err(wrong(0));
        }
        if let Some(index) = first_fault(&points) {
            return Err(wrong(index));
        }
        if !is_counter_clockwise(&points) {
            points.reverse();
            edges.reverse();
            // Reversed, the edge from a corner is the one that led to it.
            edges.rotate_left(1);
        }
        Ok(Ring { points, edges })
    }
}

/// An error unless there are enough points, each finite and in range.
pub(super) fn check_points(
    argument: &'static str,
    points: &[Point],
    least: usize,
    at: Option<usize>,
) -> Result<(), Error> {
    Error::check_items(argument, points.len(), least, MOST_POINTS).map_err(|error| match at {
        Some(index) => error.at_index(index),
        None => error,
    })?;
    for (index, point) in points.iter().enumerate() {
        for value in [point.x, point.y] {
            Error::check(argument, value, -FARTHEST, FARTHEST)
                .map_err(|error| error.at_index(at.unwrap_or(index)))?;
        }
    }
    Ok(())
}

/// The edges of a ring, in order.
pub(super) fn edges(points: &[Point]) -> impl Iterator<Item = (Point, Point)> + '_ {
    let next = points.iter().cycle().skip(1);
    points.iter().copied().zip(next.copied())
}

/// Which side of the line from `a` to `b` the point lies on: positive left, negative right, 0 on the line.
pub(super) fn side(a: Point, b: Point, point: Point) -> f64 {
    let coord = |p: Point| Coord { x: p.x, y: p.y };
    orient2d(coord(a), coord(b), coord(point))
}

/// Whether two segments share a point.
pub(super) fn meet(a: Point, b: Point, c: Point, d: Point) -> bool {
    boxes_meet(a, b, c, d)
        && !apart(side(a, b, c), side(a, b, d))
        && !apart(side(c, d, a), side(c, d, b))
}

/// Whether two segments cross at a point inside both.
pub(super) fn cross(a: Point, b: Point, c: Point, d: Point) -> bool {
    let opposite =
        |first: f64, second: f64| (first > 0.0 && second < 0.0) || (first < 0.0 && second > 0.0);
    boxes_meet(a, b, c, d)
        && opposite(side(a, b, c), side(a, b, d))
        && opposite(side(c, d, a), side(c, d, b))
}

/// Where a point lies in a ring.
pub(super) fn place(ring: &[Point], point: Point) -> Place {
    let mut inside = false;
    for (a, b) in edges(ring) {
        if meet(a, b, point, point) {
            return Place::Border;
        }
        if (a.y > point.y) != (b.y > point.y) && (side(a, b, point) > 0.0) == (b.y > a.y) {
            inside = !inside;
        }
    }
    if inside {
        Place::Inside
    } else {
        Place::Outside
    }
}

/// Area of a ring, positive when counter-clockwise.
pub(super) fn area(points: &[Point]) -> f64 {
    let Some(&origin) = points.first() else {
        return 0.0;
    };
    edges(points)
        .map(|(a, b)| (a - origin).cross(b - origin))
        .sum::<f64>()
        / 2.0
}

/// Both on one side of a line, neither on it.
fn apart(first: f64, second: f64) -> bool {
    (first > 0.0 && second > 0.0) || (first < 0.0 && second < 0.0)
}

/// Whether the boxes round two segments share a point.
fn boxes_meet(a: Point, b: Point, c: Point, d: Point) -> bool {
    a.x.min(b.x) <= c.x.max(d.x)
        && c.x.min(d.x) <= a.x.max(b.x)
        && a.y.min(b.y) <= c.y.max(d.y)
        && c.y.min(d.y) <= a.y.max(b.y)
}

/// The first edge that turns back on the one before or meets another, if there is one.
fn first_fault(points: &[Point]) -> Option<usize> {
    let count = points.len();
    let at = |index: usize| points[index % count];
    for i in 0..count {
        let (a, b, c) = (at(i), at(i + 1), at(i + 2));
        if side(a, b, c) == 0.0 && before(a, b) == before(c, b) {
            return Some(i);
        }
        // Neighbours share their corner; every other pair must share nothing.
        for j in i + 2..count {
            if (j + 1) % count != i && meet(a, b, at(j), at(j + 1)) {
                return Some(i);
            }
        }
    }
    None
}

/// Order by x, then y.
fn before(a: Point, b: Point) -> bool {
    (a.x, a.y) < (b.x, b.y)
}

/// Which way a simple ring runs: exactly, by the turn at its leftmost (of these its lowest) corner, which is convex.
fn is_counter_clockwise(points: &[Point]) -> bool {
    let mut first = 0;
    for index in 1..points.len() {
        if before(points[index], points[first]) {
            first = index;
        }
    }
    let count = points.len();
    side(
        points[(first + count - 1) % count],
        points[first],
        points[(first + 1) % count],
    ) > 0.0
}
