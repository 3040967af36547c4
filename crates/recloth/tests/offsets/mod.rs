//! How far cut lines lie from the true parallels of lines, arcs and cubics: dense sampling of the curves themselves.

use kurbo::{CubicBez, ParamCurve, Point, Vec2};
use recloth::outline::{Curve, Edge, Piece};

const ALLOWANCE: f64 = 10.0;
const SAMPLES: u32 = 20_000;
/// Every so many of them are looked at first.
const STRIDE: usize = 50;

/// A curve from (0, 0) to (200, 0), below whose chord a cut line is laid.
pub(crate) fn curves() -> [(&'static str, Curve); 7] {
    let ends = [(0.0, 0.0), (200.0, 0.0)];
    let cubic = |first, second| Curve::cubic(ends[0], first, second, ends[1]);
    [
        ("line", Curve::line(ends[0], ends[1])),
        ("arc, outward", Curve::arc(ends[0], ends[1], 0.4)),
        ("arc, inward", Curve::arc(ends[0], ends[1], -0.4)),
        ("armhole", cubic((10.0, 90.0), (120.0, 100.0))),
        ("hip", cubic((60.0, -30.0), (150.0, -45.0))),
        ("S", cubic((90.0, 60.0), (110.0, -60.0))),
        ("hook", cubic((20.0, -5.0), (260.0, -120.0))),
    ]
}

/// What a cut line within a tolerance comes to.
pub(crate) struct Found {
    /// The farthest that it and the true parallel lie apart, either way (mm).
    pub(crate) worst: f64,
    /// How many lines and arcs it has along the curve.
    pub(crate) segments: usize,
    /// How many corners those have as a polygon within the tolerance.
    pub(crate) points: usize,
}

/// Compares the cut line of a curve with its true parallel.
pub(crate) fn found(curve: Curve, tolerance: f64) -> Found {
    let rest = [(200.0, 0.0), (200.0, 300.0), (0.0, 300.0), (0.0, 0.0)];
    let sides = rest
        .windows(2)
        .map(|ends| Edge::seam("side", Curve::line(ends[0], ends[1]), ALLOWANCE));
    let edges = [Edge::seam("curve", curve, ALLOWANCE)]
        .into_iter()
        .chain(sides);
    let piece = Piece::new("piece", edges.collect()).expect("a piece");
    let cut = piece.cut_line(tolerance).expect("a cut line");
    let along: Vec<_> = cut
        .segments()
        .iter()
        .filter(|part| part.edge == Some(0))
        .map(|part| part.segment)
        .collect();
    let curve_points: Vec<(Point, Vec2)> = (0..=SAMPLES)
        .map(|step| true_point(&curve, f64::from(step) / f64::from(SAMPLES)))
        .collect();
    let mut worst: f64 = 0.0;
    // From the true parallel to the cut line, where that has not been cut off at a corner.
    for &(point, out) in curve_points.iter().step_by(10) {
        let parallel = point + out * ALLOWANCE;
        let nearest = along
            .iter()
            .map(|segment| segment.nearest(parallel))
            .fold((f64::INFINITY, 0.0), |a, b| if b.0 < a.0 { b } else { a });
        let ends = [along[0].start, along[along.len() - 1].end].map(|end| distance(end, parallel));
        if nearest.0 < ends[0].min(ends[1]) {
            worst = worst.max(nearest.0);
        }
    }
    // And from the cut line to the curve, by the chords between its points.
    for segment in &along {
        let length = segment.length();
        for step in 0..=40 {
            let point = segment.at(length * f64::from(step) / 40.0).0;
            worst = worst.max((off_curve(point, &curve_points) - ALLOWANCE).abs());
        }
    }
    let mut points = 0;
    for segment in &along {
        // A chord over an arc of sweep a lies r (1 - cos a/2) from it.
        let most = if segment.is_line() {
            f64::INFINITY
        } else {
            2.0 * libm::acos((1.0 - tolerance / segment.radius()).max(-1.0))
        };
        points += (segment.sweep_deg().to_radians().abs() / most)
            .ceil()
            .max(1.0) as usize;
    }
    Found {
        worst,
        segments: along.len(),
        points,
    }
}

/// A point of the curve and the direction outward, from the curve's own equation.
fn true_point(curve: &Curve, t: f64) -> (Point, Vec2) {
    let (point, along) = match curve {
        Curve::Cubic(cubic) => (cubic.eval(t), derivative(cubic, t)),
        Curve::Segment(segment) if segment.is_line() => (
            segment.start.lerp(segment.end, t),
            segment.end - segment.start,
        ),
        Curve::Segment(segment) => {
            // About its centre, on the upright through the middle of the chord: a quarter of the sweep has the bulge's tangent.
            let sweep = 4.0 * libm::atan(segment.bulge);
            let radius = 100.0 / libm::sin(sweep / 2.0);
            let centre = Point::new(100.0, radius * libm::cos(sweep / 2.0));
            let angle = libm::atan2(-centre.y, -centre.x) + sweep * t;
            let (sin, cos) = libm::sincos(angle);
            let arm = Vec2::new(cos, sin);
            (
                centre + arm * radius.abs(),
                Vec2::new(-sin, cos) * sweep.signum(),
            )
        }
    };
    let size = libm::hypot(along.x, along.y);
    (point, Vec2::new(along.y / size, -along.x / size))
}

fn derivative(c: &CubicBez, t: f64) -> Vec2 {
    let s = 1.0 - t;
    (c.p1 - c.p0) * (s * s) + (c.p2 - c.p1) * (2.0 * s * t) + (c.p3 - c.p2) * (t * t)
}

fn distance(a: Point, b: Point) -> f64 {
    libm::hypot(a.x - b.x, a.y - b.y)
}

/// How far a point is from the curve, by the chords between its points.
fn off_curve(point: Point, curve: &[(Point, Vec2)]) -> f64 {
    let near = (0..curve.len()).step_by(STRIDE);
    let near =
        near.min_by(|&a, &b| distance(point, curve[a].0).total_cmp(&distance(point, curve[b].0)));
    let near = near.expect("points");
    let around = &curve[near.saturating_sub(2 * STRIDE)..(near + 2 * STRIDE).min(curve.len())];
    let chords = around
        .windows(2)
        .map(|ends| to_chord(point, ends[0].0, ends[1].0));
    chords.fold(f64::INFINITY, f64::min)
}

fn to_chord(point: Point, a: Point, b: Point) -> f64 {
    let along = b - a;
    let part = ((point - a).dot(along) / along.dot(along)).clamp(0.0, 1.0);
    distance(point, a + along * part)
}
