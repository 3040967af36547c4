//! Where a shape may lie: the free positions of one shape among convex obstacles.
//!
//! A position is the shift of the shape. Against the straight sides of the panel's hull the positions are a convex
//! region; against an obstacle the forbidden ones are the sum of the obstacle and the shape through the origin. A shape
//! pushed as far as it goes in some direction lies at a corner of that region, at a corner of a sum, or where the sides
//! of two of them cross, so these are all the positions that need be tried.

use kurbo::{Point, Vec2};

use crate::shape::{Convex, TOUCH, bounds, inward, length, turn};

/// The positions that keep a shape within a convex ring, counter-clockwise. Empty where it does not fit.
///
/// A shape that just fits has hardly any, so all are given a little play.
pub(crate) fn within(hull: &[Point], shape_hull: &[Point]) -> Vec<Point> {
    let n = hull.len();
    let (low, high) = bounds(hull);
    let reach = 4.0 * (length(high - low) + length(high.to_vec2()) + length(low.to_vec2())) + 1e6;
    let mut region = vec![
        Point::new(-reach, -reach),
        Point::new(reach, -reach),
        Point::new(reach, reach),
        Point::new(-reach, reach),
    ];
    for i in 0..n {
        let Some((square, least)) = inward(hull[i], hull[(i + 1) % n]) else {
            continue;
        };
        let lowest = shape_hull
            .iter()
            .fold(f64::INFINITY, |low, p| low.min(square.dot(p.to_vec2())));
        region = clip(&region, square, least - lowest - TOUCH);
        if region.is_empty() {
            break;
        }
    }
    region
}

/// The part of a convex ring where `square · p >= least`.
fn clip(ring: &[Point], square: Vec2, least: f64) -> Vec<Point> {
    let n = ring.len();
    let height = |p: Point| square.dot(p.to_vec2()) - least;
    let mut kept = Vec::with_capacity(n + 1);
    for i in 0..n {
        let (p, q) = (ring[i], ring[(i + 1) % n]);
        let (a, b) = (height(p), height(q));
        if a >= 0.0 {
            kept.push(p);
        }
        if (a >= 0.0) != (b >= 0.0) {
            kept.push(p.lerp(q, a / (a - b)));
        }
    }
    kept.dedup();
    kept
}

/// Positions forbidden by one obstacle: the sums of its convex parts and the shape's, and what can be seen of their
/// sides from outside.
pub(crate) struct Blocked {
    sums: Vec<Convex>,
    sides: Vec<(Point, Point)>,
    low: Point,
    high: Point,
}

impl Blocked {
    pub(crate) fn new(sums: Vec<Convex>, work: &mut u64) -> Blocked {
        let mut sides = Vec::new();
        let mut covered: Vec<(f64, f64)> = Vec::new();
        for (index, sum) in sums.iter().enumerate() {
            let n = sum.points.len();
            *work += (4 * n * sums.len()) as u64;
            for i in 0..n {
                let (a, b) = (sum.points[i], sum.points[(i + 1) % n]);
                covered.clear();
                let others = sums.iter().enumerate().filter(|(other, _)| *other != index);
                covered.extend(others.filter_map(|(_, other)| other.covers((a, b))));
                covered.sort_by(|x, y| x.0.total_cmp(&y.0));
                let mut from = 0.0;
                for &(low, high) in covered.iter().chain([&(1.0, 1.0)]) {
                    if low > from {
                        sides.push((a.lerp(b, from), a.lerp(b, low)));
                    }
                    from = high.max(from);
                }
            }
        }
        let corners: Vec<Point> = sums.iter().flat_map(|sum| [sum.low, sum.high]).collect();
        let (low, high) = bounds(&corners);
        Blocked {
            sums,
            sides,
            low,
            high,
        }
    }

    /// The sums and their sides.
    pub(crate) fn into_parts(self) -> (Vec<Convex>, Vec<(Point, Point)>) {
        (self.sums, self.sides)
    }
}

/// What an obstacle forbids, where the obstacle lies.
#[derive(Clone, Copy)]
pub(crate) struct Forbidden<'a> {
    pub(crate) blocked: &'a Blocked,
    pub(crate) shift: Vec2,
}

impl Forbidden<'_> {
    fn low(&self) -> Point {
        self.blocked.low + self.shift
    }

    fn high(&self) -> Point {
        self.blocked.high + self.shift
    }

    fn holds(&self, p: Point) -> bool {
        self.blocked
            .sums
            .iter()
            .any(|sum| sum.holds(p - self.shift))
    }

    /// Sides that come near a box.
    fn sides_near(&self, low: Point, high: Point) -> Vec<(Point, Point)> {
        self.blocked
            .sides
            .iter()
            .map(|side| (side.0 + self.shift, side.1 + self.shift))
            .filter(|side| {
                let (side_low, side_high) = bounds(&[side.0, side.1]);
                !apart(side_low, side_high, low, high)
            })
            .collect()
    }
}

/// Whether two boxes are apart.
fn apart(a_low: Point, a_high: Point, b_low: Point, b_high: Point) -> bool {
    a_low.x > b_high.x + TOUCH
        || b_low.x > a_high.x + TOUCH
        || a_low.y > b_high.y + TOUCH
        || b_low.y > a_high.y + TOUCH
}

/// The free position that is furthest against `push`, if there is one. Adds the work done to `work`.
pub(crate) fn furthest(
    region: &[Point],
    forbidden: &[Forbidden<'_>],
    push: Vec2,
    work: &mut u64,
) -> Option<Point> {
    if region.is_empty() {
        return None;
    }
    let (low, high) = bounds(region);
    let near: Vec<Forbidden<'_>> = forbidden
        .iter()
        .copied()
        .filter(|other| !apart(other.low(), other.high(), low, high))
        .collect();
    let n = region.len();
    let in_region = |p: Point| {
        (0..n).all(|i| {
            let (a, b) = (region[i], region[(i + 1) % n]);
            turn(a, b, p) >= -TOUCH * length(b - a)
        })
    };
    let mut tries: Vec<(f64, Point)> = Vec::new();
    let mut add = |p: Point| tries.push((push.dot(p.to_vec2()), p));
    region.iter().for_each(|&p| add(p));
    let border: Vec<(Point, Point)> = (0..n).map(|i| (region[i], region[(i + 1) % n])).collect();
    let sides: Vec<Vec<(Point, Point)>> = near
        .iter()
        .map(|other| other.sides_near(low, high))
        .collect();
    for (index, own) in sides.iter().enumerate() {
        for &side in own {
            for end in [side.0, side.1] {
                if in_region(end) {
                    add(end);
                }
            }
            border
                .iter()
                .filter_map(|&edge| crossing(side, edge))
                .for_each(&mut add);
        }
        *work += (own.len() * n) as u64;
        for (other, edges) in near.iter().zip(&sides).skip(index + 1) {
            let (low, high) = (other.low(), other.high());
            if apart(near[index].low(), near[index].high(), low, high) {
                continue;
            }
            *work += own.len() as u64;
            for &side in own {
                let (side_low, side_high) = bounds(&[side.0, side.1]);
                if apart(side_low, side_high, low, high) {
                    continue;
                }
                *work += edges.len() as u64;
                for &edge in edges {
                    if let Some(p) = crossing(side, edge)
                        && in_region(p)
                    {
                        add(p);
                    }
                }
            }
        }
    }
    *work += (tries.len() * 4) as u64;
    tries.sort_by(|a, b| {
        a.0.total_cmp(&b.0)
            .then(a.1.x.total_cmp(&b.1.x))
            .then(a.1.y.total_cmp(&b.1.y))
    });
    tries.into_iter().map(|(_, p)| p).find(|&p| {
        *work += near.len() as u64;
        !near.iter().any(|other| other.holds(p))
    })
}

/// Where two segments cross, ends included; `None` for parallel ones, whose ends are tried by themselves.
fn crossing((a, b): (Point, Point), (c, d): (Point, Point)) -> Option<Point> {
    let (along, other) = (b - a, d - c);
    let area = along.cross(other);
    if area == 0.0 {
        return None;
    }
    let to = c - a;
    let (far, far_other) = (to.cross(other) / area, to.cross(along) / area);
    let within = |far: f64| (-1e-9..=1.0 + 1e-9).contains(&far);
    (within(far) && within(far_other)).then(|| a + along * far)
}
