//! What may be given: every part is checked here before anything is computed from it; a panel is checked as it is made.

use kurbo::Point;
use recloth::ErrorKind;
use robust::{Coord, orient2d};

use crate::part::{check_line, check_symmetry};
use crate::shape::{bounds, length};
use crate::{Error, Panel, Part};

/// Largest coordinate (mm). Rounding at this size is 10 000 times finer than the tolerance of the checker.
const REACH: f64 = 1e5;
/// Least width or height of an outline (mm), the larger of the two. Anything smaller is a spot.
const SMALLEST: f64 = 0.01;
/// How far outside its cut line a seam line may lie (mm): curves of the two are straight runs, each by itself.
const OUTSIDE: f64 = 1.0;
const POINTS: usize = 5000;
const LIST: usize = 1000;

/// An error unless parts and panels can be laid.
pub(crate) fn check_inputs(parts: &[Part], panels: &[Panel]) -> Result<(), Error> {
    number("parts", "parts", parts.len())?;
    number("panels", "panels", panels.len())?;
    for part in parts {
        check_part(part).map_err(|error| Error::new(format!("part {:?}", part.name), error))?;
    }
    Ok(())
}

fn number(of: &str, argument: &'static str, items: usize) -> Result<(), Error> {
    recloth::Error::check_items(argument, items, 0, LIST).map_err(|error| Error::new(of, error))
}

pub(crate) fn check_part(part: &Part) -> Result<(), recloth::Error> {
    check_ring(&part.outline)?;
    check_seam(part)?;
    recloth::Error::check("grain_deg", part.grain_deg, -360.0, 360.0)?;
    recloth::Error::check("tilt_deg", part.tilt_deg, 0.0, 180.0)?;
    recloth::Error::check_count("as_drawn", part.as_drawn, 0, 1000)?;
    recloth::Error::check_count("mirrored", part.mirrored, 0, 1000)?;
    if let Some(line) = part.fold {
        check_line(line, REACH)?;
        check_symmetry(&part.outline, line)?;
    }
    recloth::Error::check_items("matches", part.matches.len(), 0, LIST)?;
    for (index, point) in part.matches.iter().enumerate() {
        for value in [point.at.x, point.at.y] {
            recloth::Error::check("matches", value, -REACH, REACH)
                .map_err(|error| error.at_index(index))?;
        }
    }
    Ok(())
}

/// An error unless there is no seam line, or one that lies within the cut line.
pub(crate) fn check_seam(part: &Part) -> Result<(), recloth::Error> {
    if part.seam.is_empty() {
        return Ok(());
    }
    check_ring_of("seam", &part.seam)?;
    let n = part.outline.len();
    let edges = || (0..n).map(|i| (part.outline[i], part.outline[(i + 1) % n]));
    for (index, &p) in part.seam.iter().enumerate() {
        let crossed = edges()
            .filter(|&(a, b)| (a.y <= p.y) != (b.y <= p.y))
            .filter(|&(a, b)| (side(a, b, p) > 0) == (b.y > a.y))
            .count();
        if crossed % 2 == 1 {
            continue;
        }
        let out = edges()
            .map(|(a, b)| {
                let (run, to) = (b - a, p - a);
                let far = (to.dot(run) / run.hypot2().max(f64::MIN_POSITIVE)).clamp(0.0, 1.0);
                length(to - run * far)
            })
            .fold(f64::INFINITY, f64::min);
        if out > OUTSIDE {
            let error = recloth::Error::no_solution("seam", out, f64::NAN, OUTSIDE);
            return Err(error.at_index(index));
        }
    }
    Ok(())
}

/// An error unless the ring is simple and large enough to see. Repeated points count as one.
pub(crate) fn check_ring(points: &[Point]) -> Result<(), recloth::Error> {
    check_ring_of("outline", points)
}

fn check_ring_of(argument: &'static str, points: &[Point]) -> Result<(), recloth::Error> {
    recloth::Error::check_items(argument, points.len(), 3, POINTS)?;
    for (index, p) in points.iter().enumerate() {
        for value in [p.x, p.y] {
            recloth::Error::check(argument, value, -REACH, REACH)
                .map_err(|error| error.at_index(index))?;
        }
    }
    let bad = |index: usize| {
        Err(
            recloth::Error::new(ErrorKind::Outline, argument, f64::NAN, f64::NAN, f64::NAN)
                .at_index(index),
        )
    };
    // Index of each point that differs from the one before it.
    let kept: Vec<usize> = (0..points.len())
        .filter(|&i| points[i] != points[(i + points.len() - 1) % points.len()])
        .collect();
    let n = kept.len();
    let (low, high) = bounds(points);
    if n < 3 || (high.x - low.x).max(high.y - low.y) < SMALLEST {
        return bad(0);
    }
    let edge = |i: usize| (points[kept[i]], points[kept[(i + 1) % n]]);
    for i in 0..n {
        let (a, b) = edge(i);
        let (_, c) = edge((i + 1) % n);
        if side(a, b, c) == 0 && (b - a).dot(c - b) < 0.0 {
            return bad(kept[(i + 1) % n]);
        }
        let last = if i == 0 { n - 1 } else { n };
        for j in i + 2..last {
            if meet((a, b), edge(j)) {
                return bad(kept[i]);
            }
        }
    }
    Ok(())
}

/// On which side of the line from a to b the point c lies: 1 left, -1 right, 0 on it, exactly.
pub(crate) fn side(a: Point, b: Point, c: Point) -> i32 {
    let at = |p: Point| Coord { x: p.x, y: p.y };
    let area = orient2d(at(a), at(b), at(c));
    i32::from(area > 0.0) - i32::from(area < 0.0)
}

/// Whether two closed segments have a point in common, exactly.
pub(crate) fn meet((a, b): (Point, Point), (c, d): (Point, Point)) -> bool {
    let apart = |a: f64, b: f64, c: f64, d: f64| a.max(b) < c.min(d) || c.max(d) < a.min(b);
    !apart(a.x, b.x, c.x, d.x)
        && !apart(a.y, b.y, c.y, d.y)
        && side(a, b, c) * side(a, b, d) <= 0
        && side(c, d, a) * side(c, d, b) <= 0
}
