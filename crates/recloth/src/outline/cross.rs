//! Where two segments cross or touch.

use kurbo::{Point, Rect};

use super::curve::quadratic_roots;
use super::segment::Segment;
use super::vector::{cross, dot, left, length};

/// Two points nearer than this are one (mm).
pub(crate) const NEAR: f64 = 1e-8;

/// Calls `found` with every point that both segments share: crossings, touches, and the ends of shared stretches.
/// With the point come its distances along the first and the second.
pub(crate) fn crossings(a: &Segment, b: &Segment, mut found: impl FnMut(Point, f64, f64)) {
    // Ends first: they give exact points, also where the segments run together.
    for (end, along) in [(a.start, 0.0), (a.end, a.length())] {
        let (distance, other) = b.nearest(end);
        if distance <= NEAR {
            found(end, along, other);
        }
    }
    for (end, along) in [(b.start, 0.0), (b.end, b.length())] {
        let (distance, other) = a.nearest(end);
        if distance <= NEAR {
            found(end, other, along);
        }
    }
    let mut take = |point: Point| {
        if !(point.x.is_finite() && point.y.is_finite()) {
            return;
        }
        let (s, t) = (a.along(point), b.along(point));
        if s > 0.0 && s < a.length() && t > 0.0 && t < b.length() {
            found(point, s, t);
        }
    };
    candidates(a, b).into_iter().for_each(&mut take);
}

/// Where the endless lines or whole circles of two segments cross; not finite where they do not.
pub(crate) fn candidates(a: &Segment, b: &Segment) -> [Point; 2] {
    let none = Point::new(f64::NAN, f64::NAN);
    match (a.is_line(), b.is_line()) {
        (true, true) => {
            let (u, v) = (a.end - a.start, b.end - b.start);
            let turn = cross(u, v);
            // Lines that turn less than this apart over their lengths share ends or nothing.
            if turn.abs() > 1e-14 * length(u) * length(v) {
                return [a.start + u * (cross(b.start - a.start, v) / turn), none];
            }
            [none; 2]
        }
        (true, false) => line_and_circle(a.start, a.end, b),
        (false, true) => line_and_circle(b.start, b.end, a),
        (false, false) => {
            // The line through the crossings of both circles: k_b · E_a - k_a · E_b = 0, which no longer has a square.
            let (ka, kb) = (a.curvature(), b.curvature());
            let h = b.start - a.start;
            let (na, nb) = (left(a.start_tangent()), left(b.start_tangent()));
            let normal = nb * ka - na * kb + h * (ka * kb);
            let size = dot(normal, normal);
            if size <= 1e-30 {
                return [none; 2];
            }
            let height = ka * kb / 2.0 * dot(h, h) + ka * dot(h, nb);
            let foot = a.start + normal * (height / size);
            let along = left(normal) * (1.0 / libm::sqrt(size));
            let tighter = if ka.abs() >= kb.abs() { a } else { b };
            line_and_circle(foot, foot + along, tighter)
        }
    }
}

/// Crossings of the endless line through two points with the whole circle of an arc; not finite where there is none.
fn line_and_circle(from: Point, to: Point, arc: &Segment) -> [Point; 2] {
    let u = (to - from) * (1.0 / length(to - from));
    let k = arc.curvature();
    let q = from - arc.start;
    let normal = left(arc.start_tangent());
    let a = k / 2.0;
    let b = k * dot(q, u) - dot(u, normal);
    let c = a * dot(q, q) - dot(q, normal);
    // A line that misses the circle by less than NEAR touches it.
    let miss = (4.0 * a * c - b * b) / (4.0 * a.abs());
    if miss > 0.0 && miss <= NEAR {
        let touch = from + u * (-b / (2.0 * a));
        return [touch, touch];
    }
    quadratic_roots(a, b, c).map(|t| from + u * t)
}

/// Whether two boxes come within `NEAR` of each other.
pub(crate) fn boxes_meet(a: &Rect, b: &Rect) -> bool {
    a.x0 <= b.x1 + NEAR && b.x0 <= a.x1 + NEAR && a.y0 <= b.y1 + NEAR && b.y0 <= a.y1 + NEAR
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::vec::Vec;

    fn points(a: &Segment, b: &Segment) -> Vec<Point> {
        let mut list: Vec<Point> = Vec::new();
        crossings(a, b, |point, s, t| {
            assert!(length(a.at(s).0 - point) < 1e-6 && length(b.at(t).0 - point) < 1e-6);
            if list.iter().all(|p| length(*p - point) > 1e-6) {
                list.push(point);
            }
        });
        list
    }

    #[test]
    fn known_crossings() {
        let level = Segment::line((-20.0, 6.0), (20.0, 6.0));
        let round = Segment::about((0.0, 0.0), 10.0, -90.0, 350.0);
        assert_eq!(points(&level, &round).len(), 2);
        assert!(
            points(&level, &round)
                .iter()
                .all(|p| (p.x.abs() - 8.0).abs() < 1e-9)
        );
        // Half of it is crossed once, and a line above the top not at all; at the top it touches.
        let half = Segment::about((0.0, 0.0), 10.0, -90.0, 180.0);
        assert_eq!(points(&level, &half).len(), 1);
        assert!(points(&Segment::line((-5.0, 10.1), (5.0, 10.1)), &round).is_empty());
        assert_eq!(
            points(&Segment::line((-5.0, 10.0), (5.0, 10.0)), &round).len(),
            1
        );
        // Two circles of radius 10 whose centres are 16 apart meet at x = 8, y = ±6.
        let other = Segment::about((16.0, 0.0), 10.0, 0.0, 355.0);
        let both = points(&Segment::about((0.0, 0.0), 10.0, 90.0, -355.0), &other);
        assert_eq!(both.len(), 2);
        assert!(
            both.iter()
                .all(|p| (p.x - 8.0).abs() < 1e-9 && (p.y.abs() - 6.0).abs() < 1e-9)
        );
    }

    #[test]
    fn an_arc_that_is_almost_straight_is_crossed_where_it_is() {
        // 1 m long, 1 µm high: its radius is over 100 km.
        let flat = Segment::arc((0.0, 0.0), (1000.0, 0.0), -2e-6);
        let up = Segment::line((500.0, -1.0), (500.0, 1.0));
        let at = points(&flat, &up);
        assert_eq!(at.len(), 1);
        assert!((at[0].y - 1e-3).abs() < 1e-9, "{at:?}");
        let dip = Segment::arc((0.0, 5e-4), (1000.0, 5e-4), 1e-6);
        let both = points(&flat, &dip);
        assert_eq!(both.len(), 2, "{both:?}");
    }

    #[test]
    fn shared_stretches_give_their_ends() {
        let a = Segment::line((0.0, 0.0), (10.0, 0.0));
        let b = Segment::line((15.0, 0.0), (4.0, 0.0));
        assert_eq!(points(&a, &b).len(), 2);
        let c = Segment::about((0.0, 0.0), 10.0, 0.0, 90.0);
        let d = Segment::about((0.0, 0.0), 10.0, 120.0, -90.0);
        assert_eq!(points(&c, &d).len(), 2);
    }
}
