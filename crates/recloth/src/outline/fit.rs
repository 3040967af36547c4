//! Cubics fitted by arcs that meet with the same tangent.

use alloc::vec::Vec;
use kurbo::{CubicBez, ParamCurve, Point, Vec2};

use super::curve::{Curve, cubic_tangent};
use super::segment::Segment;
use super::vector::{cross, dot, length};

/// Lines and arcs within `tolerance` of the curve (both ways), added to `segments`.
pub(crate) fn fit(curve: &Curve, tolerance: f64, segments: &mut Vec<Segment>) {
    match curve {
        Curve::Segment(segment) => segments.push(*segment),
        Curve::Cubic(cubic) => {
            // Starting from quarters, so that an S or a loop cannot pass for its chord.
            for quarter in 0..4 {
                let from = f64::from(quarter) / 4.0;
                fit_part(cubic, from, from + 0.25, tolerance, 0, segments);
            }
        }
    }
}

fn fit_part(c: &CubicBez, from: f64, to: f64, tolerance: f64, depth: u32, out: &mut Vec<Segment>) {
    let (a, b) = (c.eval(from), c.eval(to));
    if length(b - a) < 1e-9 && depth >= 2 {
        return;
    }
    let pair = biarc(a, cubic_tangent(c, from), b, cubic_tangent(c, to));
    // 20 halvings reach lengths where chord and curve are the same.
    if depth >= 20 || pair.is_some_and(|pair| is_near(c, from, to, &pair, tolerance)) {
        match pair {
            Some([first, second]) if depth < 20 => {
                for part in [first, second] {
                    if part.start != part.end {
                        out.push(part);
                    }
                }
            }
            _ => out.push(Segment::line(a, b)),
        }
        return;
    }
    let middle = (from + to) / 2.0;
    fit_part(c, from, middle, tolerance, depth + 1, out);
    fit_part(c, middle, to, tolerance, depth + 1, out);
}

/// Two arcs from `a` to `b` with these tangents, of equal tangent length (K. M. Bolton, *Biarc curves*, Computer-Aided
/// Design 7(2), 1975). None where they would turn back.
fn biarc(a: Point, ta: Vec2, b: Point, tb: Vec2) -> Option<[Segment; 2]> {
    let v = b - a;
    let t = ta + tb;
    let along = dot(v, t);
    let reach = dot(v, v);
    let root = libm::sqrt(along * along + 2.0 * (1.0 - dot(ta, tb)).max(0.0) * reach);
    let d = reach / (along + root);
    if !(along + root > 0.0 && d <= 10.0 * libm::sqrt(reach)) {
        return None;
    }
    let middle = a + (v + (ta - tb) * d) * 0.5;
    let bulge = |tangent: Vec2, chord: Vec2| {
        let turn = cross(tangent, chord);
        let b = turn / (length(chord) + dot(tangent, chord));
        // What rises less than a millionth of a millimetre over its chord is a line.
        if (b * length(chord)).abs() < 1e-9 {
            0.0
        } else {
            b
        }
    };
    let first = Segment::arc(a, middle, bulge(ta, middle - a));
    let second = Segment::arc(middle, b, -bulge(-tb, middle - b));
    let tame = |s: &Segment| s.bulge.is_finite() && s.bulge.abs() < 1.0;
    (tame(&first) && tame(&second)).then_some([first, second])
}

/// Whether points of the part lie within the tolerance of the arcs, one after the other in the direction of the chord: else it
/// folds back.
fn is_near(c: &CubicBez, from: f64, to: f64, pair: &[Segment; 2], tolerance: f64) -> bool {
    const SAMPLES: u32 = 9;
    let (joint, way) = (pair[0].end, pair[0].end_tangent());
    let chord = pair[1].end - pair[0].start;
    let mut last = pair[0].start;
    (1..=SAMPLES).all(|i| {
        let t = from + (to - from) * f64::from(i) / f64::from(SAMPLES + 1);
        let point = c.eval(t);
        let arc = &pair[usize::from(dot(point - joint, way) > 0.0)];
        let in_order = dot(point - last, chord) >= 0.0;
        last = point;
        in_order && arc.side(point).0.abs() <= 0.9 * tolerance
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn arcs_stay_within_the_tolerance_and_meet_with_one_tangent() {
        let cubics = [
            CubicBez::new((0.0, 0.0), (0.0, 120.0), (80.0, 150.0), (200.0, 150.0)),
            CubicBez::new((0.0, 0.0), (150.0, 0.0), (-50.0, 100.0), (100.0, 100.0)),
            CubicBez::new((0.0, 0.0), (100.0, 0.0), (100.0, 2.0), (0.0, 2.0)),
        ];
        for (cubic, tolerance) in cubics.iter().flat_map(|c| [(c, 0.5), (c, 0.01), (c, 1e-4)]) {
            let mut segments = Vec::new();
            fit(&Curve::Cubic(*cubic), tolerance, &mut segments);
            assert!(
                segments.len() < 800,
                "{} segments at {tolerance}",
                segments.len()
            );
            for pair in segments.windows(2) {
                assert_eq!(pair[0].end, pair[1].start);
                let (a, b) = (pair[0].end_tangent(), pair[1].start_tangent());
                assert!(
                    cross(a, b).abs() < 1e-5 && dot(a, b) > 0.0,
                    "kink {}",
                    cross(a, b)
                );
            }
            for i in 0..=3000 {
                let point = cubic.eval(f64::from(i) / 3000.0);
                let nearest = segments
                    .iter()
                    .map(|s| s.nearest(point).0)
                    .fold(f64::INFINITY, f64::min);
                assert!(nearest <= tolerance, "{nearest} > {tolerance}");
            }
        }
    }

    #[test]
    fn odd_cubics_end_without_panic() {
        for cubic in [
            CubicBez::new((0.0, 0.0), (0.0, 0.0), (0.0, 0.0), (0.0, 0.0)),
            CubicBez::new((0.0, 0.0), (100.0, 100.0), (0.0, 100.0), (100.0, 0.0)),
            CubicBez::new((0.0, 0.0), (0.0, 0.0), (100.0, 0.0), (100.0, 0.0)),
            CubicBez::new((0.0, 0.0), (100.0, 0.0), (-100.0, 0.0), (10.0, 0.0)),
        ] {
            let mut segments = Vec::new();
            fit(&Curve::Cubic(cubic), 0.1, &mut segments);
            assert!(segments.len() < 1000, "{}", segments.len());
        }
    }
}
