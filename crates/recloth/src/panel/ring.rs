//! Closed rings of points: simple or not, which way round, what lies inside. Every answer is exact.

use alloc::vec::Vec;

use kurbo::Point;
use robust::{Coord, orient2d};

use crate::{Error, ErrorKind};

/// The farthest a point may lie from the origin along either axis (mm).
const FARTHEST: f64 = 1e5;

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
    /// The ring through `given`, when it is a simple polygon of at most `most` points. `at` is the place of the ring in a
    /// list of rings; without it an error gives the place of the point.
    pub(super) fn new(
        argument: &'static str,
        given: &[Point],
        most: usize,
        at: Option<usize>,
    ) -> Result<Ring, Error> {
        check_points(argument, given, (3, most), at)?;
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
    items: (usize, usize),
    at: Option<usize>,
) -> Result<(), Error> {
    Error::check_items(argument, points.len(), items.0, items.1).map_err(|error| match at {
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

#[cfg(test)]
mod tests {
    use super::*;

    const SQUARE: [(f64, f64); 4] = [(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)];

    fn points(list: &[(f64, f64)]) -> Vec<Point> {
        list.iter().map(|&point| Point::from(point)).collect()
    }

    fn ring(list: &[(f64, f64)]) -> Result<Ring, Error> {
        Ring::new("outline", &points(list), 100, None)
    }

    #[test]
    fn a_ring_is_counter_clockwise_and_remembers_the_edges_given() {
        let same = ring(&SQUARE).unwrap();
        assert_eq!(
            (same.points, same.edges),
            (points(&SQUARE), alloc::vec![0, 1, 2, 3])
        );
        let mut reversed = SQUARE;
        reversed.reverse();
        let turned = ring(&reversed).unwrap();
        assert_eq!(turned.points, points(&SQUARE));
        // Given (0,10) (10,10) (10,0) (0,0), the edge from (0,0) to (10,0) led from the third to the fourth.
        assert_eq!(turned.edges, [2, 1, 0, 3]);
        // Repeated corners start no edge, first and last included.
        let repeated = ring(&[
            SQUARE[0], SQUARE[1], SQUARE[1], SQUARE[2], SQUARE[3], SQUARE[0],
        ])
        .unwrap();
        assert_eq!(
            (repeated.points.len(), repeated.edges),
            (4, alloc::vec![0, 2, 3, 4])
        );
    }

    #[test]
    fn what_is_no_ring_is_refused_where_it_fails() {
        let fault = |list: &[(f64, f64)]| {
            let error = ring(list).err().unwrap();
            (error.kind(), error.at())
        };
        // Crossed, flat, a spike, a corner on an edge, a corner on a corner.
        let crossed = [(0.0, 0.0), (10.0, 10.0), (10.0, 0.0), (0.0, 10.0)];
        assert_eq!(fault(&crossed), (ErrorKind::Outline, Some(0)));
        assert_eq!(
            fault(&[(0.0, 0.0), (5.0, 0.0), (10.0, 0.0)]).0,
            ErrorKind::Outline
        );
        let spike = [
            (0.0, 0.0),
            (10.0, 0.0),
            (20.0, 0.0),
            (10.0, 0.0),
            (0.0, 10.0),
        ];
        assert_eq!(fault(&spike).0, ErrorKind::Outline);
        let on_edge = [
            (0.0, 0.0),
            (10.0, 0.0),
            (10.0, 10.0),
            (5.0, 0.0),
            (0.0, 10.0),
        ];
        assert_eq!(fault(&on_edge).0, ErrorKind::Outline);
        let on_corner = [
            (0.0, 0.0),
            (4.0, 4.0),
            (8.0, 0.0),
            (8.0, 8.0),
            (4.0, 4.0),
            (0.0, 8.0),
        ];
        assert_eq!(fault(&on_corner).0, ErrorKind::Outline);
        assert_eq!(
            fault(&[(0.0, 0.0), (10.0, f64::NAN), (0.0, 10.0)]),
            (ErrorKind::NotFinite, Some(1))
        );
        assert_eq!(fault(&SQUARE[..2]), (ErrorKind::Count, None));
        assert_eq!(fault(&[(1.0, 1.0); 5]).0, ErrorKind::Outline);
        // A straight corner is none the worse.
        assert!(ring(&[(0.0, 0.0), (5.0, 0.0), (10.0, 0.0), (0.0, 10.0)]).is_ok());
    }

    #[test]
    fn places_are_told_to_the_last_bit() {
        let slope = points(&[(0.0, 0.0), (3.0, 1.0), (0.0, 9.0)]);
        let above = f64::from_bits((1.0_f64 / 3.0).to_bits() + 1);
        let below = f64::from_bits((1.0_f64 / 3.0).to_bits() - 1);
        // 1/3 itself is rounded down.
        assert_eq!(place(&slope, Point::new(1.0, 1.0 / 3.0)), Place::Outside);
        assert_eq!(place(&slope, Point::new(1.0, below)), Place::Outside);
        assert_eq!(place(&slope, Point::new(1.0, above)), Place::Inside);
        assert_eq!(place(&slope, Point::new(1.5, 0.5)), Place::Border);
        assert_eq!(place(&slope, Point::new(3.0, 1.0)), Place::Border);
        // A ray through a corner counts once.
        assert_eq!(place(&slope, Point::new(0.5, 1.0)), Place::Inside);
        assert_eq!(place(&slope, Point::new(-0.5, 1.0)), Place::Outside);
    }

    #[test]
    fn areas_have_a_sign() {
        let mut square = points(&SQUARE);
        assert_eq!(area(&square), 100.0);
        square.reverse();
        assert_eq!(area(&square), -100.0);
        assert_eq!(area(&[]), 0.0);
    }
}
