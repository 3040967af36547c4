//! Paths made of points, and of the lines and arcs of pieces.

use kurbo::{BezPath, PathEl, Point};
use recloth::outline::{Curve, CutSegment, Segment};

/// A path of straight lines through points.
pub(crate) fn open_path(points: &[Point]) -> BezPath {
    let first = points.iter().take(1).map(|&point| PathEl::MoveTo(point));
    let rest = points.iter().skip(1).map(|&point| PathEl::LineTo(point));
    first.chain(rest).collect()
}

/// A path of straight lines through points and back to the first.
pub(crate) fn closed_path(points: &[Point]) -> BezPath {
    let mut path = open_path(points);
    if !points.is_empty() {
        path.push(PathEl::ClosePath);
    }
    path
}

/// The path with every point mapped.
pub(crate) fn map_path(path: &BezPath, map: impl Fn(Point) -> Point) -> BezPath {
    path.elements()
        .iter()
        .map(|element| match *element {
            PathEl::MoveTo(p) => PathEl::MoveTo(map(p)),
            PathEl::LineTo(p) => PathEl::LineTo(map(p)),
            PathEl::QuadTo(a, p) => PathEl::QuadTo(map(a), map(p)),
            PathEl::CurveTo(a, b, p) => PathEl::CurveTo(map(a), map(b), map(p)),
            PathEl::ClosePath => PathEl::ClosePath,
        })
        .collect()
}

/// The wanted parts of a closed line, each run of neighbours as one sub-path.
pub(crate) fn runs(parts: &[CutSegment], wanted: &dyn Fn(&CutSegment) -> bool) -> BezPath {
    let mut path = BezPath::new();
    let Some(first) = parts.iter().position(|part| !wanted(part)) else {
        // The whole ring.
        for (index, part) in parts.iter().enumerate() {
            if index == 0 {
                path.move_to(part.segment.start);
            }
            append(&mut path, &part.segment);
        }
        if !parts.is_empty() {
            path.close_path();
        }
        return path;
    };
    let mut drawing = false;
    for part in parts[first..].iter().chain(&parts[..first]) {
        if wanted(part) {
            if !drawing {
                path.move_to(part.segment.start);
            }
            append(&mut path, &part.segment);
        }
        drawing = wanted(part);
    }
    path
}

/// The path about the origin, `scale` times as large.
pub(crate) fn scaled(path: &BezPath, scale: f64) -> BezPath {
    map_path(path, |point| (point.to_vec2() * scale).to_point())
}

/// The curve of an edge or mark.
pub(crate) fn curve_path(curve: &Curve) -> BezPath {
    let mut path = BezPath::new();
    path.move_to(curve.start());
    match curve {
        Curve::Segment(segment) => append(&mut path, segment),
        Curve::Cubic(cubic) => path.curve_to(cubic.p1, cubic.p2, cubic.p3),
    }
    path
}

/// Adds a line or arc to a path that ends where it starts; arcs as cubics that each turn at most 22.5°, which stray from
/// the arc by less than a five-millionth of its radius.
pub(crate) fn append(path: &mut BezPath, segment: &Segment) {
    if segment.is_line() {
        path.line_to(segment.end);
        return;
    }
    let parts = (segment.sweep_deg().abs() / 22.5).ceil().clamp(1.0, 16.0) as u32;
    let step = segment.length() / f64::from(parts);
    for part in 0..parts {
        let mut arc = segment.part(step * f64::from(part), step * f64::from(part + 1));
        if part + 1 == parts {
            arc.end = segment.end;
        }
        // Handles of 4/3 tan(sweep/4) radii along the tangents: the usual cubic for an arc.
        // By the chord: the radius of an arc all but straight is beyond all numbers.
        let chord = arc.end - arc.start;
        let reach = libm::hypot(chord.x, chord.y) * (1.0 + arc.bulge * arc.bulge) / 3.0;
        path.curve_to(
            arc.start + arc.start_tangent() * reach,
            arc.end - arc.end_tangent() * reach,
            arc.end,
        );
    }
}
