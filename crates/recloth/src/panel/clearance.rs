//! The proof that what is kept of a panel keeps clear of every edge and flaw, from the coordinates as returned.

use alloc::{vec, vec::Vec};

use kurbo::Point;

use super::ring::{self, Place};

/// What the arithmetic of a distance may be out by (mm): coordinates are below 1e5, so their last bit is about 1e-11.
const NOISE: f64 = 1e-9;

/// An old edge, or an edge of a flaw, and how far to stay from it.
#[derive(Clone, Copy)]
pub(super) struct Barrier {
    pub(super) from: Point,
    pub(super) to: Point,
    /// The distance asked for; 0 means do not cross.
    pub(super) clear: f64,
    /// A little more, added where rounding would come too near.
    pub(super) extra: f64,
}

/// For each barrier, whether some part of `kept` (outlines and holes) comes too near. The first `outline` barriers are
/// the edges of the panel itself, which must contain all that is kept.
pub(super) fn too_near(kept: &[Vec<Point>], barriers: &[Barrier], outline: &[Point]) -> Vec<bool> {
    let mut near = vec![false; barriers.len()];
    for ring in kept {
        for (a, b) in ring::edges(ring) {
            for (flag, barrier) in near.iter_mut().zip(barriers) {
                *flag = *flag || intrudes(a, b, barrier);
            }
            if ring::place(outline, a) == Place::Outside {
                let (edge, off) = nearest(a, &barriers[..outline.len()]);
                near[edge] |= off > NOISE;
            }
        }
    }
    // With no edge near it, a flaw could still lie whole inside what is kept.
    for (flag, barrier) in near.iter_mut().zip(barriers).skip(outline.len()) {
        *flag = *flag || encloses(kept, barrier.from);
    }
    near
}

/// Whether a point is strictly inside what is kept: inside an odd number of its rings, and on none.
fn encloses(kept: &[Vec<Point>], point: Point) -> bool {
    let mut inside = false;
    for ring in kept {
        match ring::place(ring, point) {
            Place::Inside => inside = !inside,
            Place::Border => return false,
            Place::Outside => {}
        }
    }
    inside
}

/// Whether the segment comes nearer to the barrier than it may.
fn intrudes(a: Point, b: Point, barrier: &Barrier) -> bool {
    let (c, d, clear) = (barrier.from, barrier.to, barrier.clear);
    let gap =
        |a0: f64, a1: f64, c0: f64, c1: f64| (a0.min(a1) - c0.max(c1)).max(c0.min(c1) - a0.max(a1));
    if gap(a.x, b.x, c.x, d.x) > clear || gap(a.y, b.y, c.y, d.y) > clear {
        return false;
    }
    let crossing = ring::cross(a, b, c, d);
    let reach = [
        distance(a, c, d),
        distance(b, c, d),
        distance(c, a, b),
        distance(d, a, b),
    ]
    .into_iter()
    .fold(f64::INFINITY, f64::min);
    if clear > 0.0 {
        crossing || reach < clear - NOISE
    } else {
        // Touching is allowed: how deep is the crossing?
        crossing && reach > NOISE
    }
}

/// Distance from a point to a segment.
fn distance(point: Point, from: Point, to: Point) -> f64 {
    let (along, off) = (to - from, point - from);
    let length = along.dot(along);
    let share = if length > 0.0 {
        (off.dot(along) / length).clamp(0.0, 1.0)
    } else {
        0.0
    };
    let rest = off - share * along;
    libm::hypot(rest.x, rest.y)
}

/// The barrier nearest to a point, and how near.
fn nearest(point: Point, barriers: &[Barrier]) -> (usize, f64) {
    let mut best = (0, f64::INFINITY);
    for (index, barrier) in barriers.iter().enumerate() {
        let off = distance(point, barrier.from, barrier.to);
        if off < best.1 {
            best = (index, off);
        }
    }
    best
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square(low: f64, high: f64) -> Vec<Point> {
        [(low, low), (high, low), (high, high), (low, high)]
            .map(Point::from)
            .to_vec()
    }

    fn barriers(ring: &[Point], clear: f64) -> Vec<Barrier> {
        ring::edges(ring)
            .map(|(from, to)| Barrier {
                from,
                to,
                clear,
                extra: 0.0,
            })
            .collect()
    }

    #[test]
    fn each_way_of_coming_too_near_is_seen() {
        let outline = square(0.0, 100.0);
        let near =
            |kept: &[Vec<Point>], clear: f64| too_near(kept, &barriers(&outline, clear), &outline);
        assert_eq!(near(&[square(10.0, 90.0)], 10.0), [false; 4]);
        assert_eq!(near(&[square(10.0, 90.0)], 10.0 + 1e-6), [true; 4]);
        assert_eq!(near(core::slice::from_ref(&outline), 0.0), [false; 4]);
        // Past every edge, and wholly past one.
        assert_eq!(near(&[square(-1e-6, 100.0 + 1e-6)], 0.0), [true; 4]);
        let mut beside = square(10.0, 90.0);
        beside.iter_mut().for_each(|point| point.x += 100.0);
        assert_eq!(near(&[beside], 0.0), [false, true, false, false]);
    }

    #[test]
    fn a_flaw_left_whole_inside_is_seen() {
        let outline = square(0.0, 100.0);
        let flaw = square(40.0, 60.0);
        let mut all = barriers(&outline, 0.0);
        all.extend(barriers(&flaw, 0.0));
        let flawed = |kept: &[Vec<Point>]| too_near(kept, &all, &outline)[4..].contains(&true);
        assert!(flawed(core::slice::from_ref(&outline)));
        assert!(!flawed(&[outline.clone(), flaw.clone()]));
        assert!(!flawed(&[outline.clone(), square(30.0, 70.0)]));
        assert!(flawed(&[outline.clone(), square(41.0, 59.0)]));
    }
}
