//! Slanting lines over an area: shading that prints well and takes little ink.

use kurbo::{BezPath, Point};

use crate::ink::{edges, flatten};

/// At most this many lines over one area.
const MOST_LINES: f64 = 3000.0;

/// Lines at 45° over an area (even-odd rule), `spacing` mm apart, or as far as keeps them few enough.
///
/// The lines lie at whole numbers of spacings from the origin, so that those of neighbouring areas meet.
pub(crate) fn hatch(path: &BezPath, spacing: f64) -> BezPath {
    let area = flatten(path);
    let mut lines = BezPath::new();
    // u grows across the lines, v along them; both are √2 times the true distance.
    let across = |p: Point| p.y - p.x;
    let (low, high) = area
        .iter()
        .flatten()
        .map(|&point| across(point))
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), u| {
            (low.min(u), high.max(u))
        });
    if !(low < high && low.is_finite() && high.is_finite() && spacing > 0.0) {
        return lines;
    }
    let step = (spacing * core::f64::consts::SQRT_2).max((high - low) / MOST_LINES);
    let first = (low / step).ceil();
    let count = ((high / step).floor() - first).clamp(-1.0, MOST_LINES) as i64;
    for k in 0..=count {
        let u = (first + k as f64) * step;
        let mut along: Vec<f64> = edges(&area)
            .filter(|(from, to)| (across(*from) > u) != (across(*to) > u))
            .map(|(from, to)| {
                let t = (u - across(from)) / (across(to) - across(from));
                let point = from + (to - from) * t;
                point.x + point.y
            })
            .collect();
        along.sort_by(f64::total_cmp);
        for ends in along.chunks_exact(2) {
            let at = |v: f64| Point::new((v - u) / 2.0, (v + u) / 2.0);
            lines.move_to(at(ends[0]));
            lines.line_to(at(ends[1]));
        }
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::path::closed_path;

    #[test]
    fn lines_cover_a_square_and_leave_its_hole() {
        let square = |a: f64, b: f64| [(a, a), (b, a), (b, b), (a, b)].map(Point::from);
        let mut path = closed_path(&square(0.0, 100.0));
        path.extend(closed_path(&square(40.0, 60.0)).elements().iter().copied());
        let lines = flatten(&hatch(&path, 2.0));
        // Total length times spacing is the area, but for the ends of the lines: 100² - 20² = 9600.
        let total: f64 = lines
            .iter()
            .map(|ends| libm::hypot(ends[1].x - ends[0].x, ends[1].y - ends[0].y))
            .sum();
        assert!((total * 2.0 - 9600.0).abs() < 200.0, "{total}");
        for ends in &lines {
            let middle = ends[0].midpoint(ends[1]);
            assert!(!(40.0..60.0).contains(&middle.x) || !(40.0..60.0).contains(&middle.y));
        }
    }

    #[test]
    fn odd_areas_give_few_or_no_lines() {
        assert!(hatch(&BezPath::new(), 2.0).elements().is_empty());
        let line = closed_path(&[Point::ZERO, Point::new(5.0, 5.0)]);
        assert!(hatch(&line, 2.0).elements().is_empty());
        let huge = closed_path(&[Point::ZERO, Point::new(1e6, 0.0), Point::new(0.0, 1e6)]);
        assert!(flatten(&hatch(&huge, 0.001)).len() <= 3001);
        assert!(hatch(&huge, f64::NAN).elements().is_empty());
    }
}
