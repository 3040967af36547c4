//! Rings, exact in what they decide.

use std::cell::OnceCell;

use kurbo::{Point, Vec2};
use robust::{Coord, orient2d};

use super::DEPTH;

/// A stretch shorter than this between two touching stretches counts as touching (mm).
const STRETCH: f64 = 1e-7;

/// A closed ring, or a spot (one edge without length) or a slit (one edge), which have no inside.
pub(crate) struct Ring {
    closed: bool,
    edges: Vec<Edge>,
    low: Point,
    high: Point,
    /// Points a little inside every edge of the ring that is long enough, to tell apart two rings that share all their
    /// edges. Each is further from the ring than twice [`DEPTH`].
    inner: OnceCell<Vec<Point>>,
}

impl Ring {
    pub(crate) fn new(points: &[Point]) -> Ring {
        let n = points.len();
        let all = || (0..n).map(|i| Edge::new(points[i], points[(i + 1) % n]));
        let mut edges: Vec<Edge> = all().filter(|edge| edge.length > 0.0).collect();
        if edges.is_empty() || n < 3 {
            // A spot, a slit, or a ring so small that its points coincide where it lies.
            edges = all().take(1).collect();
        }
        let low = points
            .iter()
            .fold(Point::new(f64::INFINITY, f64::INFINITY), |low, p| {
                Point::new(low.x.min(p.x), low.y.min(p.y))
            });
        let high = points.iter().fold(
            Point::new(f64::NEG_INFINITY, f64::NEG_INFINITY),
            |high, p| Point::new(high.x.max(p.x), high.y.max(p.y)),
        );
        Ring {
            closed: n > 2,
            edges,
            low,
            high,
            inner: OnceCell::new(),
        }
    }

    fn inner(&self) -> &[Point] {
        self.inner.get_or_init(|| {
            self.edges
                .iter()
                .filter(|edge| edge.length > 8.0 * DEPTH)
                .flat_map(|edge| {
                    let middle = edge.at(edge.length / 2.0);
                    let square = edge.square() * (4.0 * DEPTH);
                    [middle + square, middle - square]
                })
                .filter(|&p| self.holds(p) && self.distance(p) > 2.0 * DEPTH)
                .collect()
        })
    }

    /// Whether the point is inside, for a point that is not on the edge: how often a ray to the right crosses the ring.
    /// Exact.
    fn holds(&self, p: Point) -> bool {
        let at = |p: Point| Coord { x: p.x, y: p.y };
        let mut inside = false;
        if !self.closed
            || p.x < self.low.x
            || p.x > self.high.x
            || p.y < self.low.y
            || p.y > self.high.y
        {
            return false;
        }
        for edge in &self.edges {
            let (a, b) = (edge.start, edge.end);
            if (a.y <= p.y) != (b.y <= p.y) {
                let area = orient2d(at(a), at(b), at(p));
                if (b.y > a.y) == (area > 0.0) && area != 0.0 {
                    inside = !inside;
                }
            }
        }
        inside
    }

    fn distance(&self, p: Point) -> f64 {
        self.edges
            .iter()
            .fold(f64::INFINITY, |least, edge| least.min(edge.distance(p)))
    }

    /// A point of each stretch of the edge that is further than [`DEPTH`] from this ring.
    fn clear_points(&self, edge: &Edge) -> Vec<Point> {
        self.points_clear(edge, DEPTH)
    }

    /// A point of each stretch of the edge that is further than `reach` from this ring.
    fn points_clear(&self, edge: &Edge, reach: f64) -> Vec<Point> {
        let mut near: Vec<(f64, f64)> = self
            .edges
            .iter()
            .filter(|other| edge.may_be_within(other, reach))
            .filter_map(|other| edge.within(other, reach))
            .collect();
        if edge.length <= STRETCH {
            return match near.is_empty() {
                true => vec![edge.at(edge.length / 2.0)],
                false => Vec::new(),
            };
        }
        near.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut points = Vec::new();
        let mut from = 0.0;
        for (low, high) in near.into_iter().chain([(edge.length, edge.length)]) {
            if low - from > STRETCH {
                points.push(edge.at(from + (low - from) / 2.0));
            }
            from = high.max(from);
        }
        points
    }

    /// A point of this ring's edge that intrudes on the other.
    fn intrudes(&self, other: &Ring) -> Option<Point> {
        self.edges
            .iter()
            .filter(|edge| edge.may_be_in(other))
            .flat_map(|edge| other.clear_points(edge))
            .find(|&p| other.holds(p) && other.distance(p) > DEPTH)
    }

    /// A point of both that intrudes on both.
    pub(super) fn overlaps(&self, other: &Ring) -> Option<Point> {
        if self.apart(other, -DEPTH) {
            return None;
        }
        let shared = |a: &Ring, b: &Ring| {
            a.inner()
                .iter()
                .copied()
                .find(|&p| b.holds(p) && b.distance(p) > DEPTH)
        };
        self.intrudes(other)
            .or_else(|| other.intrudes(self))
            .or_else(|| shared(self, other))
            .or_else(|| shared(other, self))
    }

    /// A point of this ring further than [`DEPTH`] outside the other.
    pub(super) fn leaves(&self, other: &Ring) -> Option<Point> {
        let outside = |p: &Point| !other.holds(*p) && other.distance(*p) > DEPTH;
        self.edges
            .iter()
            .flat_map(|edge| other.clear_points(edge))
            .find(outside)
            .or_else(|| other.intrudes(self))
            .or_else(|| self.inner().iter().copied().find(outside))
    }

    /// How far the edges of two rings lie apart where that is more than `reach`: of the stretches seen, the furthest.
    pub(crate) fn strays(&self, other: &Ring, reach: f64) -> Option<f64> {
        let off = |a: &Ring, b: &Ring| {
            (a.edges.iter())
                .flat_map(|edge| b.points_clear(edge, reach))
                .map(|p| b.distance(p))
                .fold(0.0, f64::max)
        };
        let far = off(self, other).max(off(other, self));
        (far > reach).then_some(far)
    }

    /// Whether two rings are the same within [`DEPTH`].
    pub(crate) fn is_same(&self, other: &Ring) -> bool {
        let near = |a: Point, b: Point| (a.x - b.x).abs().max((a.y - b.y).abs()) <= DEPTH;
        near(self.low, other.low)
            && near(self.high, other.high)
            && self.strays(other, DEPTH).is_none()
    }

    /// The distance between the edges of two rings that do not overlap, if it is less than `least`.
    pub(super) fn nearer(&self, other: &Ring, least: f64) -> Option<f64> {
        if least <= DEPTH || self.apart(other, least) {
            return None;
        }
        let mut distance = f64::INFINITY;
        for a in &self.edges {
            for b in &other.edges {
                if a.may_be_within(b, least) {
                    distance = distance.min(a.gap(b));
                }
            }
        }
        (distance < least - DEPTH).then_some(distance)
    }

    /// Whether the boxes round the rings are at least `gap` apart.
    fn apart(&self, other: &Ring, gap: f64) -> bool {
        self.high.x + gap <= other.low.x
            || other.high.x + gap <= self.low.x
            || self.high.y + gap <= other.low.y
            || other.high.y + gap <= self.low.y
    }
}

/// A straight edge with its length and direction.
struct Edge {
    start: Point,
    end: Point,
    length: f64,
    along: Vec2,
}

impl Edge {
    fn new(start: Point, end: Point) -> Edge {
        let run = end - start;
        let length = libm::hypot(run.x, run.y);
        let along = if length > 0.0 {
            run / length
        } else {
            Vec2::new(1.0, 0.0)
        };
        Edge {
            start,
            end,
            length,
            along,
        }
    }

    /// The point this far along.
    fn at(&self, far: f64) -> Point {
        self.start + self.along * far
    }

    /// Unit direction square to the edge.
    fn square(&self) -> Vec2 {
        Vec2::new(-self.along.y, self.along.x)
    }

    fn may_be_within(&self, other: &Edge, gap: f64) -> bool {
        let apart =
            |a: f64, b: f64, c: f64, d: f64| a.max(b) + gap < c.min(d) || c.max(d) + gap < a.min(b);
        !apart(self.start.x, self.end.x, other.start.x, other.end.x)
            && !apart(self.start.y, self.end.y, other.start.y, other.end.y)
    }

    /// Whether some point of the edge may be inside the ring, by their boxes.
    fn may_be_in(&self, ring: &Ring) -> bool {
        self.start.x.max(self.end.x) > ring.low.x
            && self.start.x.min(self.end.x) < ring.high.x
            && self.start.y.max(self.end.y) > ring.low.y
            && self.start.y.min(self.end.y) < ring.high.y
    }

    /// Distance of a point from the edge.
    fn distance(&self, p: Point) -> f64 {
        let to = p - self.start;
        let far = to.dot(self.along);
        if far <= 0.0 {
            libm::hypot(to.x, to.y)
        } else if far >= self.length {
            let to = p - self.end;
            libm::hypot(to.x, to.y)
        } else {
            self.along.cross(to).abs()
        }
    }

    /// Distance of two edges that do not cross; two that do are taken for 0 apart.
    fn gap(&self, other: &Edge) -> f64 {
        let at = |p: Point| Coord { x: p.x, y: p.y };
        let side = |edge: &Edge, p: Point| orient2d(at(edge.start), at(edge.end), at(p));
        let parted = |edge: &Edge, other: &Edge| {
            let (a, b) = (side(edge, other.start), side(edge, other.end));
            (a > 0.0 && b < 0.0) || (a < 0.0 && b > 0.0)
        };
        if parted(self, other) && parted(other, self) {
            return 0.0;
        }
        self.distance(other.start)
            .min(self.distance(other.end))
            .min(other.distance(self.start))
            .min(other.distance(self.end))
    }

    /// The part of this edge within `reach` of another, as distances along this one.
    fn within(&self, other: &Edge, reach: f64) -> Option<(f64, f64)> {
        let mut span: Option<(f64, f64)> = None;
        let mut add = |low: f64, high: f64| {
            let (low, high) = (low.max(0.0), high.min(self.length));
            if low <= high {
                span = Some(match span {
                    None => (low, high),
                    Some((a, b)) => (a.min(low), b.max(high)),
                });
            }
        };
        // The round ends.
        for end in [other.start, other.end] {
            let to = end - self.start;
            let (far, off) = (to.dot(self.along), self.along.cross(to));
            let half = reach * reach - off * off;
            if half >= 0.0 {
                let half = half.sqrt();
                add(far - half, far + half);
            }
        }
        // The straight part: where this edge is beside the other and within reach of its line.
        let to = self.start - other.start;
        let beside = clip(
            to.dot(other.along),
            self.along.dot(other.along),
            0.0,
            other.length,
        );
        let close = clip(
            other.along.cross(to),
            other.along.cross(self.along),
            -reach,
            reach,
        );
        if let (Some(a), Some(b)) = (beside, close) {
            add(a.0.max(b.0), a.1.min(b.1));
        }
        span
    }
}

/// Where `start + slope * s` is within `low..=high`.
fn clip(start: f64, slope: f64, low: f64, high: f64) -> Option<(f64, f64)> {
    if slope == 0.0 {
        return (low <= start && start <= high).then_some((f64::NEG_INFINITY, f64::INFINITY));
    }
    let (a, b) = ((low - start) / slope, (high - start) / slope);
    Some((a.min(b), a.max(b)))
}
