//! Whether a ring of lines and arcs is simple, in the plain cases that a cut line mostly is: without trigonometry.

use kurbo::{Point, Rect, Vec2};

use super::cross::{boxes_meet, candidates};
use super::segment::Segment;
use super::vector::{cross, dot, left, length};

/// Nearer than this two points of neighbours are the one they share (mm).
const SHARED: f64 = 1e-7;
/// Shorter bits are looked at the long way (mm).
const SHORT: f64 = 1e-5;

/// A segment with what is asked of it again and again.
pub(crate) struct Known {
    pub(crate) segment: Segment,
    pub(crate) bounds: Rect,
    start: Vec2,
    end: Vec2,
    curvature: f64,
}

impl Known {
    pub(crate) fn new(segment: Segment) -> Known {
        Known {
            segment,
            bounds: segment.hull(),
            start: segment.start_tangent(),
            end: segment.end_tangent(),
            curvature: segment.curvature(),
        }
    }
}

/// Whether a point of the line or circle of a segment lies on the segment, not quite at an end.
fn holds(segment: &Segment, point: Point) -> bool {
    let Segment { start, end, bulge } = *segment;
    let chord = end - start;
    if bulge == 0.0 {
        let along = dot(point - start, chord);
        return along > 0.0 && along < dot(chord, chord);
    }
    // A counter-clockwise arc lies to the right of its chord.
    cross(chord, point - start) * bulge < 0.0
}

/// Whether no two segments of a ring meet but where neighbours share an end. In doubt the answer is no.
pub(crate) fn is_simple(ring: &[Known]) -> bool {
    let count = ring.len();
    if count < 3 {
        return false;
    }
    for (i, a) in ring.iter().enumerate() {
        if length(a.segment.end - a.segment.start) < SHORT {
            return false;
        }
        if !apart(a, &ring[(i + 1) % count]) {
            return false;
        }
        // Neighbours have been looked at: those after the next, but for the one before the first.
        let last = if i == 0 { count - 1 } else { count };
        for b in &ring[(i + 2).min(last)..last] {
            if boxes_meet(&a.bounds, &b.bounds) && may_meet(&a.segment, &b.segment) {
                return false;
            }
        }
    }
    true
}

/// Whether two segments meet, or come so near to it that it must be looked at the long way.
pub(crate) fn may_meet(a: &Segment, b: &Segment) -> bool {
    let [first, second] = candidates(a, b);
    if !(first.x.is_finite() || second.x.is_finite()) {
        // Parallels and circles about one centre may lie in each other.
        let off = |point: Point| a.side(point).0.abs() < SHORT;
        return off(b.start) || off(b.end) || off(b.middle());
    }
    [first, second]
        .into_iter()
        .any(|point| point.x.is_finite() && nearly_holds(a, point) && nearly_holds(b, point))
}

/// Whether a point of the line or circle of a segment lies on the segment or just past an end.
fn nearly_holds(segment: &Segment, point: Point) -> bool {
    let chord = segment.end - segment.start;
    let slack = SHARED * length(chord);
    if segment.bulge == 0.0 {
        let along = dot(point - segment.start, chord);
        return along > -slack && along < dot(chord, chord) + slack;
    }
    let way = if segment.bulge > 0.0 { 1.0 } else { -1.0 };
    way * cross(chord, point - segment.start) < slack
}

/// Whether a segment and the next share only the point between them.
fn apart(a: &Known, b: &Known) -> bool {
    let at = b.segment.start;
    if at != a.segment.end {
        return false;
    }
    // Where they fold back on each other.
    if dot(a.end, b.start) < 0.0 && cross(a.end, b.start).abs() < 1e-6 {
        return false;
    }
    let Some(other) = other_crossing(a, b) else {
        return true;
    };
    let away = at + other;
    length(other) < SHARED || !(holds(&a.segment, away) && holds(&b.segment, away))
}

/// From the point where one segment ends and the next starts to where their lines or circles meet again.
fn other_crossing(a: &Known, b: &Known) -> Option<Vec2> {
    match (a.curvature == 0.0, b.curvature == 0.0) {
        (true, true) => None,
        // k/2 q² = q · n, with q along the line.
        (true, false) => Some(a.end * (2.0 * dot(a.end, left(b.start)) / b.curvature)),
        (false, true) => Some(b.start * (2.0 * dot(b.start, left(a.end)) / a.curvature)),
        (false, false) => {
            // The shared point's mirror image about the line through both centres.
            let (m, n) = (left(a.end), left(b.start));
            let axis = n * a.curvature - m * b.curvature;
            let size = dot(axis, axis);
            (size > 1e-24).then(|| left(axis) * (2.0 * dot(left(n), m) / size))
        }
    }
}

/// The one point within two segments at which they cross. None if there is no such point, or another.
pub(crate) fn only_crossing(a: &Segment, b: &Segment) -> Option<Point> {
    let mut found = None;
    for point in candidates(a, b) {
        let real = point.x.is_finite() && point.y.is_finite();
        if real && holds(a, point) && holds(b, point) {
            if found.is_some() {
                return None;
            }
            found = Some(point);
        }
    }
    found
}
