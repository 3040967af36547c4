//! Area that two rings share, for bounds.
//!
//! A ring is the signed sum of the triangles from one point to its sides, so what two rings share is the signed sum of what
//! their triangles share; and these are convex. It needs no care for sides that touch, coincide or nearly do: what they
//! add is as small as they are near.

use kurbo::Point;

use crate::shape::{bounds, signed_area, turn};

/// Area within both of two simple rings (mm²), whichever way they run; to about 1e-9 of the larger.
pub(crate) fn shared_area(one: &[Point], other: &[Point]) -> f64 {
    let (low, high) = bounds(one);
    let (theirs_low, theirs_high) = bounds(other);
    if low.x > theirs_high.x
        || theirs_low.x > high.x
        || low.y > theirs_high.y
        || theirs_low.y > high.y
    {
        return 0.0;
    }
    // About the middle of the smaller, so that most triangles are small.
    let about = low.midpoint(high);
    let from = |ring: &[Point]| -> Vec<([Point; 3], f64)> {
        let sides = (0..ring.len()).map(|i| (ring[i], ring[(i + 1) % ring.len()]));
        let triangles = sides.filter_map(|(a, b)| match turn(about, a, b) {
            way if way > 0.0 => Some(([about, a, b], 1.0)),
            way if way < 0.0 => Some(([about, b, a], -1.0)),
            _ => None,
        });
        triangles.collect()
    };
    let (ours, theirs) = (from(one), from(other));
    let mut sum = 0.0;
    for (triangle, sign) in &ours {
        for (by, other_sign) in &theirs {
            sum += sign * other_sign * signed_area(&clipped(triangle, by));
        }
    }
    sum.abs()
}

/// What of a convex ring lies within a triangle, both counter-clockwise: cut by one side after the other (Sutherland and
/// Hodgman, Reentrant Polygon Clipping, Communications of the ACM 17, 1974).
fn clipped(ring: &[Point], by: &[Point; 3]) -> Vec<Point> {
    let mut left = ring.to_vec();
    for i in 0..3 {
        let (a, b) = (by[i], by[(i + 1) % 3]);
        let mut next = Vec::with_capacity(left.len() + 1);
        for (k, &p) in left.iter().enumerate() {
            let q = left[(k + 1) % left.len()];
            let (here, there) = (turn(a, b, p), turn(a, b, q));
            if here >= 0.0 {
                next.push(p);
            }
            if (here > 0.0) != (there > 0.0) && here != 0.0 && there != 0.0 {
                next.push(p.lerp(q, here / (here - there)));
            }
        }
        left = next;
    }
    left
}

#[cfg(test)]
mod tests {
    use kurbo::Point;

    use super::shared_area;

    fn ring(points: &[(f64, f64)]) -> Vec<Point> {
        points.iter().copied().map(Point::from).collect()
    }

    #[test]
    fn what_two_rings_share_is_that_worked_by_hand() {
        let square = ring(&[(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)]);
        // A U, 10 wide and 10 high, with a gap 4 wide from the top down to 2: it shares with the square below it, moved up by
        // 5, its two legs of 3 by 5.
        let u = ring(&[
            (0.0, 0.0),
            (10.0, 0.0),
            (10.0, 10.0),
            (7.0, 10.0),
            (7.0, 2.0),
            (3.0, 2.0),
            (3.0, 10.0),
            (0.0, 10.0),
        ]);
        let up =
            |by: f64| -> Vec<Point> { square.iter().map(|p| Point::new(p.x, p.y + by)).collect() };
        for (one, other, shared) in [
            (&square, &square, 100.0),
            (&square, &up(5.0), 50.0),
            (&square, &up(10.0), 0.0),
            (&square, &up(11.0), 0.0),
            (&square, &u, 68.0),
            (&u, &up(5.0), 30.0),
            (&u, &u, 68.0),
            // Clear of each other within each other's bounds: the gap.
            (&u, &ring(&[(3.0, 2.0), (7.0, 2.0), (5.0, 9.0)]), 0.0),
        ] {
            for (a, b) in [(one, other), (other, one)] {
                let backwards: Vec<Point> = b.iter().rev().copied().collect();
                for b in [b, &backwards] {
                    let found = shared_area(a, b);
                    assert!((found - shared).abs() < 1e-9, "{found}, not {shared}");
                }
            }
        }
    }
}
