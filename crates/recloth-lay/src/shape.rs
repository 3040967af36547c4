//! Shapes for the search: outlines made simpler on the safe side, convex parts, and sums of convex shapes.
//!
//! Rounding here costs a position at worst, never a wrong answer: every lay goes through the checker.

use earcut::Earcut;
use kurbo::{Point, Vec2};

use crate::lay::sin_cos_deg;

/// Depth up to which the search lets shapes touch (mm), far above rounding and far below the checker's tolerance.
pub(crate) const TOUCH: f64 = 1e-9;

/// Sides of the polygon that stands for a disc.
const DISC: usize = 16;

/// Twice the signed area of a triangle: positive when a, b, c run counter-clockwise.
pub(crate) fn turn(a: Point, b: Point, c: Point) -> f64 {
    (b - a).cross(c - a)
}

/// Signed area, positive counter-clockwise.
pub(crate) fn signed_area(points: &[Point]) -> f64 {
    let Some(&origin) = points.first() else {
        return 0.0;
    };
    points
        .windows(2)
        .map(|pair| turn(origin, pair[0], pair[1]))
        .sum::<f64>()
        / 2.0
}

/// Length of a vector.
pub(crate) fn length(v: Vec2) -> f64 {
    libm::hypot(v.x, v.y)
}

/// Lowest and highest corner of the box round some points.
pub(crate) fn bounds(points: &[Point]) -> (Point, Point) {
    points.iter().fold(
        (
            Point::new(f64::INFINITY, f64::INFINITY),
            Point::new(f64::NEG_INFINITY, f64::NEG_INFINITY),
        ),
        |(low, high), p| {
            (
                Point::new(low.x.min(p.x), low.y.min(p.y)),
                Point::new(high.x.max(p.x), high.y.max(p.y)),
            )
        },
    )
}

/// The ring counter-clockwise, without repeated points.
pub(crate) fn ring(points: &[Point]) -> Vec<Point> {
    let mut ring: Vec<Point> = points.to_vec();
    ring.dedup();
    while ring.len() > 1 && ring.first() == ring.last() {
        ring.pop();
    }
    if signed_area(&ring) < 0.0 {
        ring.reverse();
    }
    ring
}

/// The convex hull, counter-clockwise, without points along its sides (Andrew's monotone chain).
pub(crate) fn hull(points: &[Point]) -> Vec<Point> {
    let mut sorted = points.to_vec();
    sorted.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    sorted.dedup();
    if sorted.len() < 3 {
        return sorted;
    }
    let chain = |points: &mut dyn Iterator<Item = Point>| {
        let mut chain: Vec<Point> = Vec::new();
        for p in points {
            while chain.len() > 1 && turn(chain[chain.len() - 2], chain[chain.len() - 1], p) <= 0.0
            {
                chain.pop();
            }
            chain.push(p);
        }
        chain.pop();
        chain
    };
    let mut hull = chain(&mut sorted.iter().copied());
    hull.extend(chain(&mut sorted.iter().rev().copied()));
    hull
}

/// A simpler ring that covers the given counter-clockwise ring: bays are filled and corners built out, the shallowest
/// first. Up to 16 points are kept exactly; more only as far as the loss is small.
pub(crate) fn cover(points: &[Point]) -> Vec<Point> {
    covered(points, |corners| match corners {
        0..=12 => 1e-10,
        13..=16 if points.len() <= 16 => 1e-10,
        13..=16 => 2e-3,
        17..=24 => 4e-3,
        25..=48 => 1e-2,
        _ => f64::INFINITY,
    })
}

/// As `cover`, but closer: up to 24 points exactly.
pub(crate) fn close_cover(points: &[Point]) -> Vec<Point> {
    covered(points, |corners| match corners {
        0..=24 => 1e-10,
        25..=40 => 5e-4,
        41..=64 => 2e-3,
        _ => f64::INFINITY,
    })
}

/// A ring that covers another, each change at most as deep, in sizes of the ring, as `allowed` for its number of corners.
fn covered(points: &[Point], allowed: impl Fn(usize) -> f64) -> Vec<Point> {
    let mut ring = points.to_vec();
    let (low, high) = bounds(&ring);
    let size = length(high - low);
    loop {
        if ring.len() <= 3 {
            break;
        }
        let allowed = allowed(ring.len()) * size;
        let mut changes: Vec<(f64, usize, Option<Point>)> = Vec::new();
        let n = ring.len();
        for i in 0..n {
            let (a, b, c, d) = (
                ring[i],
                ring[(i + 1) % n],
                ring[(i + 2) % n],
                ring[(i + 3) % n],
            );
            let base = length(c - a);
            let bend = turn(a, b, c);
            if bend <= 0.0 {
                // Fill the bay at b.
                changes.push((-bend / base.max(f64::MIN_POSITIVE), i, None));
            } else if turn(b, c, d) > 0.0 {
                // Build out the edge from b to c, where its neighbours meet beyond it.
                let across = (b - a).cross(c - d);
                if across < 0.0 {
                    let far = (c - b).cross(c - d) / across;
                    let corner = b + (b - a) * far;
                    let rise = turn(b, corner, c).abs() / length(c - b).max(f64::MIN_POSITIVE);
                    if far >= 0.0 && rise.is_finite() {
                        changes.push((rise, i, Some(corner)));
                    }
                }
            }
        }
        changes.retain(|change| change.0 <= allowed);
        changes.sort_by(|x, y| x.0.total_cmp(&y.0).then(x.1.cmp(&y.1)));
        let Some(&(_, i, corner)) = changes
            .iter()
            .find(|change| is_free(&ring, change.1, change.2))
        else {
            break;
        };
        match corner {
            None => {
                ring.remove((i + 1) % n);
            }
            Some(corner) => {
                ring[(i + 1) % n] = corner;
                ring.remove((i + 2) % n);
            }
        }
    }
    ring
}

/// Whether the triangle that a change of `cover` adds is free of the rest of the ring.
fn is_free(ring: &[Point], i: usize, corner: Option<Point>) -> bool {
    let n = ring.len();
    let (a, b, c) = (ring[i], ring[(i + 1) % n], ring[(i + 2) % n]);
    let (triangle, own): ([Point; 3], &[usize]) = match corner {
        None => ([a, c, b], &[0, 1, 2]),
        Some(corner) => ([b, corner, c], &[1, 2]),
    };
    let inside = |p: Point| {
        turn(triangle[0], triangle[1], p) >= 0.0
            && turn(triangle[1], triangle[2], p) >= 0.0
            && turn(triangle[2], triangle[0], p) >= 0.0
    };
    let inside_back = |p: Point| {
        turn(triangle[0], triangle[1], p) <= 0.0
            && turn(triangle[1], triangle[2], p) <= 0.0
            && turn(triangle[2], triangle[0], p) <= 0.0
    };
    let crosses = |p: Point, q: Point, r: Point, s: Point| {
        turn(p, q, r) * turn(p, q, s) <= 0.0 && turn(r, s, p) * turn(r, s, q) <= 0.0
    };
    (0..n).all(|step| {
        let (p, q) = (ring[(i + step) % n], ring[(i + step + 1) % n]);
        let vertex = own.contains(&step) || !(inside(p) || inside_back(p));
        let edge = match corner {
            // The edges from a to b to c to d touch the triangle; the others must not.
            Some(corner) if step > 2 => !crosses(b, corner, p, q) && !crosses(corner, c, p, q),
            _ => true,
        };
        vertex && edge
    })
}

/// Convex parts of a simple counter-clockwise ring.
pub(crate) fn convex_parts(ring: &[Point]) -> Vec<Vec<Point>> {
    let mut corners: Vec<u32> = Vec::new();
    Earcut::new().earcut(ring.iter().map(|p| [p.x, p.y]), &[], &mut corners);
    let mut parts: Vec<Vec<usize>> = corners
        .chunks_exact(3)
        .map(|t| {
            let t = [t[0] as usize, t[1] as usize, t[2] as usize];
            match turn(ring[t[0]], ring[t[1]], ring[t[2]]) < 0.0 {
                true => vec![t[0], t[2], t[1]],
                false => t.to_vec(),
            }
        })
        .collect();
    // Join parts over a shared edge while the result stays convex.
    let mut first = 0;
    while first < parts.len() {
        let joined = (first + 1..parts.len())
            .find_map(|second| Some((second, join(ring, &parts[first], &parts[second])?)));
        match joined {
            Some((second, part)) => {
                parts[first] = part;
                parts.remove(second);
            }
            None => first += 1,
        }
    }
    parts
        .iter()
        .map(|part| part.iter().map(|&i| ring[i]).collect())
        .collect()
}

/// Two convex parts as one, if they share an edge and the whole is convex.
fn join(ring: &[Point], a: &[usize], b: &[usize]) -> Option<Vec<usize>> {
    let (n, m) = (a.len(), b.len());
    for i in 0..n {
        let (from, to) = (a[i], a[(i + 1) % n]);
        if let Some(j) = (0..m).find(|&j| b[j] == to && b[(j + 1) % m] == from) {
            // All of a from the end of the shared edge round to its start, then the rest of b.
            let mut part: Vec<usize> = (1..=n).map(|k| a[(i + k) % n]).collect();
            part.extend((2..m).map(|k| b[(j + k) % m]));
            let k = part.len();
            let convex = (0..k).all(|i| {
                turn(
                    ring[part[i]],
                    ring[part[(i + 1) % k]],
                    ring[part[(i + 2) % k]],
                ) >= 0.0
            });
            return convex.then_some(part);
        }
    }
    None
}

/// A convex shape with the inward directions of its sides.
#[derive(Clone, Debug)]
pub(crate) struct Convex {
    pub(crate) points: Vec<Point>,
    /// Unit vector inwards, and its product with a point of the side.
    sides: Vec<(Vec2, f64)>,
    pub(crate) low: Point,
    pub(crate) high: Point,
}

impl Convex {
    /// From counter-clockwise points.
    pub(crate) fn new(points: Vec<Point>) -> Convex {
        let n = points.len();
        let sides = (0..n)
            .filter_map(|i| inward(points[i], points[(i + 1) % n]))
            .collect();
        let (low, high) = bounds(&points);
        Convex {
            points,
            sides,
            low,
            high,
        }
    }

    /// Whether a point is inside by more than [`TOUCH`].
    pub(crate) fn holds(&self, p: Point) -> bool {
        p.x > self.low.x
            && p.x < self.high.x
            && p.y > self.low.y
            && p.y < self.high.y
            && self
                .sides
                .iter()
                .all(|(square, least)| square.dot(p.to_vec2()) - least > TOUCH)
    }

    /// The inward directions of its sides, each with its product with a point of the side.
    pub(crate) fn sides(&self) -> &[(Vec2, f64)] {
        &self.sides
    }

    /// The stretch of a segment that is inside, not merely on the edge, as shares of its length.
    pub(crate) fn covers(&self, (a, b): (Point, Point)) -> Option<(f64, f64)> {
        if a.x.max(b.x) <= self.low.x
            || a.x.min(b.x) >= self.high.x
            || a.y.max(b.y) <= self.low.y
            || a.y.min(b.y) >= self.high.y
        {
            return None;
        }
        let (mut from, mut to) = (0.0_f64, 1.0_f64);
        for (square, least) in &self.sides {
            let least = least + TOUCH / 4.0;
            let (start, end) = (
                square.dot(a.to_vec2()) - least,
                square.dot(b.to_vec2()) - least,
            );
            if start <= 0.0 && end <= 0.0 {
                return None;
            }
            if start < 0.0 {
                from = from.max(start / (start - end));
            } else if end < 0.0 {
                to = to.min(start / (start - end));
            }
        }
        (from < to).then_some((from, to))
    }
}

/// Unit vector to the left of an edge, and its product with a point of the edge.
pub(crate) fn inward(from: Point, to: Point) -> Option<(Vec2, f64)> {
    let run = to - from;
    let size = length(run);
    (size > 0.0).then(|| {
        let square = Vec2::new(-run.y / size, run.x / size);
        (square, square.dot(from.to_vec2()))
    })
}

/// All sums of a point of one convex shape and a point of another, both counter-clockwise.
pub(crate) fn sum(a: &[Point], b: &[Point]) -> Vec<Point> {
    let lowest = |points: &[Point]| {
        (0..points.len())
            .min_by(|&i, &j| {
                let (p, q) = (points[i], points[j]);
                p.y.total_cmp(&q.y).then(p.x.total_cmp(&q.x))
            })
            .unwrap_or(0)
    };
    let (n, m) = (a.len(), b.len());
    let (start_a, start_b) = (lowest(a), lowest(b));
    let at = |points: &[Point], start: usize, step: usize| points[(start + step) % points.len()];
    let (mut i, mut j) = (0, 0);
    let mut points = Vec::with_capacity(n + m);
    while i < n || j < m {
        let (p, q) = (at(a, start_a, i), at(b, start_b, j));
        points.push(p + q.to_vec2());
        let bend = (at(a, start_a, i + 1) - p).cross(at(b, start_b, j + 1) - q);
        let (step_a, step_b) = (
            j >= m || (i < n && bend >= 0.0),
            i >= n || (j < m && bend <= 0.0),
        );
        i += usize::from(step_a && i < n);
        j += usize::from(step_b && j < m);
    }
    points
}

/// The shape mirrored through the origin, as a position of one shape against another asks for.
pub(crate) fn through_origin(points: &[Point]) -> Vec<Point> {
    points.iter().map(|p| Point::new(-p.x, -p.y)).collect()
}

/// A polygon round a disc about the origin, with sides square to the axes.
pub(crate) fn disc(radius: f64) -> Vec<Point> {
    let step = 360.0 / DISC as f64;
    let (_, cos) = sin_cos_deg(step / 2.0);
    (0..DISC)
        .map(|i| {
            let (sin, cos_i) = sin_cos_deg(step * (i as f64 + 0.5));
            Point::new(radius / cos * cos_i, radius / cos * sin)
        })
        .collect()
}
