//! Outlines parted by a line, and moved back or out beyond one.

use kurbo::{Point, Vec2};
use recloth::{Error, ErrorKind};

use crate::lay::sin_cos_deg;
use crate::shape::ring;
use crate::valid::check_ring;

/// A corner this near a line is on it (mm).
const ON: f64 = 1e-9;
/// How far within a limit a line must stay to part corners or an outline (mm).
pub(crate) const WITHIN: f64 = 1e-6;

/// Unit vector in a direction (deg).
pub(crate) fn direction(angle_deg: f64) -> Vec2 {
    let (sin, cos) = sin_cos_deg(angle_deg);
    Vec2::new(cos, sin)
}

/// The least and the most that points reach along a direction.
pub(crate) fn reach(points: &[Point], along: Vec2) -> (f64, f64) {
    points
        .iter()
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), p| {
            let far = along.dot(p.to_vec2());
            (low.min(far), high.max(far))
        })
}

/// The outline with all corners further along than `beyond` moved by `out` along the direction.
pub(crate) fn moved(points: &[Point], along: Vec2, beyond: f64, out: f64) -> Vec<Point> {
    let shift = along * out;
    points
        .iter()
        .map(|&p| match along.dot(p.to_vec2()) > beyond {
            true => p + shift,
            false => p,
        })
        .collect()
}

/// So many tenths of a millimetre, but at most so much.
pub(crate) fn tenths(most: f64, count: u32) -> f64 {
    (f64::from(count) / 10.0).min(most)
}

/// An error unless some corners stay, some move, and the outline stays one when they do: by `most`, out where `sign` is 1,
/// back where it is -1.
pub(crate) fn check_moved(
    points: &[Point],
    along: Vec2,
    beyond: f64,
    (most, sign): (f64, f64),
) -> Result<(), Error> {
    let (low, high) = reach(points, along);
    if beyond < low || beyond >= high {
        return Err(Error::no_solution("beyond", beyond, low, high - WITHIN));
    }
    let good = |count: u32| check_ring(&moved(points, along, beyond, sign * tenths(most, count)));
    let all = (most * 10.0).ceil() as u32;
    let Err(error) = good(all) else {
        return Ok(());
    };
    if error.kind() != ErrorKind::Outline {
        return Err(error);
    }
    let (mut does, mut not) = (0, all);
    while not - does > 1 {
        let middle = does.midpoint(not);
        match good(middle).is_ok() {
            true => does = middle,
            false => not = middle,
        }
    }
    let max = match does {
        0 => f64::NAN,
        count => tenths(most, count),
    };
    Err(Error::no_solution("most", most, f64::NAN, max))
}

/// How far each corner lies beyond a line, 0 on it.
fn heights(points: &[Point], along: Vec2, at: f64) -> Vec<f64> {
    points
        .iter()
        .map(|p| along.dot(p.to_vec2()) - at)
        .map(|height| if height.abs() < ON { 0.0 } else { height })
        .collect()
}

/// Where a ring passes a line outwards, and where back: the index of the corner before. None unless it does so once.
fn passes(heights: &[f64]) -> Option<(usize, usize)> {
    let n = heights.len();
    let beyond = |i: usize| heights[i % n] >= 0.0;
    let mut out = (0..n).filter(|&i| !beyond(i) && beyond(i + 1));
    let mut back = (0..n).filter(|&i| beyond(i) && !beyond(i + 1));
    match (out.next(), out.next(), back.next()) {
        (Some(out), None, Some(back)) => Some((out, back)),
        _ => None,
    }
}

/// The stretches along a direction in which every line square to it parts the outline in exactly two.
pub(crate) fn stretches(outline: &[Point], along: Vec2) -> Vec<(f64, f64)> {
    let ring = ring(outline);
    let mut levels: Vec<f64> = ring.iter().map(|p| along.dot(p.to_vec2())).collect();
    levels.sort_by(f64::total_cmp);
    levels.dedup_by(|b, a| *b - *a < 2.0 * ON);
    let mut stretches: Vec<(f64, f64)> = Vec::new();
    for pair in levels.windows(2) {
        let (low, high) = (pair[0], pair[1]);
        if passes(&heights(&ring, along, low.midpoint(high))).is_none() {
            continue;
        }
        match stretches.last_mut() {
            Some(last) if last.1 == low => last.1 = high,
            _ => stretches.push((low, high)),
        }
    }
    stretches
}

/// The two halves of an outline parted by a line square to a direction, the one before it first, each with a strip of
/// allowance along the cut. None where the line does not part it in exactly two, or leaves an outline that is none.
pub(crate) fn halves(
    outline: &[Point],
    along: Vec2,
    at: f64,
    allowance: f64,
) -> Option<[Vec<Point>; 2]> {
    let ring = ring(outline);
    let heights = heights(&ring, along, at);
    let n = ring.len();
    let (out, back) = passes(&heights)?;
    // Where the edge from a corner before the line (or beyond it) to the next meets it.
    let meets = |i: usize| {
        let j = (i + 1) % n;
        match (heights[i], heights[j]) {
            (0.0, _) => ring[i],
            (_, 0.0) => ring[j],
            (a, b) => ring[i].lerp(ring[j], a / (a - b)),
        }
    };
    let (start, end) = (meets(out), meets(back));
    let run = |from: usize, to: usize| {
        let steps = (to + n - from) % n;
        (0..=steps).map(move |k| (from + k) % n)
    };
    let before: Vec<Point> = run((back + 1) % n, out).map(|i| ring[i]).collect();
    // Where the outline steps back along the line itself, that step is none of the cut.
    let mut beyond: Vec<usize> = run((out + 1) % n, back).collect();
    let steps_back = |from: usize, to: usize, way: Vec2| {
        heights[from] == 0.0 && heights[to] == 0.0 && (ring[to] - ring[from]).dot(way) > 0.0
    };
    let (mut first, mut last) = (start, end);
    while beyond.len() > 1 && steps_back(beyond[0], beyond[1], end - start) {
        beyond.remove(0);
        first = ring[beyond[0]];
    }
    while beyond.len() > 1
        && steps_back(
            beyond[beyond.len() - 1],
            beyond[beyond.len() - 2],
            start - end,
        )
    {
        beyond.pop();
        last = ring[beyond[beyond.len() - 1]];
    }
    let strip = along * allowance;
    let mut near = before;
    near.push(start);
    if allowance > 0.0 {
        near.extend([first, first + strip, last + strip, last]);
    }
    near.push(end);
    let mut far = vec![first];
    far.extend(beyond.iter().map(|&i| ring[i]));
    far.push(last);
    if allowance > 0.0 {
        far.extend([last - strip, first - strip]);
    }
    let halves = [near, far].map(|half| crate::shape::ring(&half));
    halves
        .iter()
        .all(|half| check_ring(half).is_ok())
        .then_some(halves)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bounds::area;

    const UP: Vec2 = Vec2::new(0.0, 1.0);

    fn points(list: &[(f64, f64)]) -> Vec<Point> {
        list.iter().copied().map(Point::from).collect()
    }

    /// An upright L: 200 wide up to 100, 80 wide up to 300. Area 200 x 100 + 80 x 200 = 36 000.
    fn ell() -> Vec<Point> {
        points(&[
            (0.0, 0.0),
            (200.0, 0.0),
            (200.0, 100.0),
            (80.0, 100.0),
            (80.0, 300.0),
            (0.0, 300.0),
        ])
    }

    /// A U, open above: legs 50 wide and 300 high, floor 40 high and 200 wide.
    fn cup() -> Vec<Point> {
        points(&[
            (0.0, 0.0),
            (200.0, 0.0),
            (200.0, 300.0),
            (150.0, 300.0),
            (150.0, 40.0),
            (50.0, 40.0),
            (50.0, 300.0),
            (0.0, 300.0),
        ])
    }

    #[test]
    fn halves_make_up_the_whole_and_their_strips() {
        // (place, length of the cut): within the foot, within the leg, and where the outline steps along the line.
        for (at, cut) in [(30.0, 200.0), (250.0, 80.0), (100.0, 80.0)] {
            for mirrored in [false, true] {
                let shape: Vec<Point> = ell()
                    .into_iter()
                    .map(|p| Point::new(if mirrored { -p.x } else { p.x }, p.y))
                    .collect();
                let [near, far] = halves(&shape, UP, at, 0.0).expect("two halves");
                assert!((area(&near) + area(&far) - 36_000.0).abs() < 1e-6);
                assert_eq!(reach(&near, UP), (0.0, at));
                assert_eq!(reach(&far, UP), (at, 300.0));
                let [near, far] = halves(&shape, UP, at, 10.0).expect("two halves");
                let strips = 2.0 * 10.0 * cut;
                assert!((area(&near) + area(&far) - 36_000.0 - strips).abs() < 1e-6);
                assert_eq!(reach(&near, UP), (0.0, at + 10.0));
                assert_eq!(reach(&far, UP), (at - 10.0, 300.0));
            }
        }
        // The same L upside down: now the far half is the wider one at the step.
        let over: Vec<Point> = ell()
            .into_iter()
            .map(|p| Point::new(p.x, 300.0 - p.y))
            .collect();
        let [near, far] = halves(&over, UP, 200.0, 10.0).expect("two halves");
        assert!((area(&near) - (80.0 * 200.0 + 800.0)).abs() < 1e-6);
        assert!((area(&far) - (200.0 * 100.0 + 800.0)).abs() < 1e-6);
    }

    #[test]
    fn a_line_across_two_legs_parts_no_outline_in_two() {
        assert_eq!(stretches(&cup(), UP), [(0.0, 40.0)]);
        assert!(halves(&cup(), UP, 100.0, 0.0).is_none());
        assert!(halves(&cup(), UP, 20.0, 5.0).is_some());
        assert!(halves(&cup(), UP, 0.0, 0.0).is_none());
        assert!(halves(&cup(), UP, 301.0, 0.0).is_none());
        // Seen from the side, every line meets one leg, or the floor between them.
        assert_eq!(stretches(&cup(), Vec2::new(1.0, 0.0)), [(0.0, 200.0)]);
        assert_eq!(stretches(&ell(), UP), [(0.0, 300.0)]);
    }

    #[test]
    fn corners_beyond_a_line_move() {
        assert_eq!(reach(&moved(&ell(), UP, 200.0, -50.0), UP), (0.0, 250.0));
        assert_eq!(area(&moved(&ell(), UP, 200.0, -50.0)), 32_000.0);
        // Corners on the line stay.
        assert_eq!(area(&moved(&ell(), UP, 100.0, 50.0)), 40_000.0);
    }
}
