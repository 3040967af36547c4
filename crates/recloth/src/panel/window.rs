//! The search behind the rectangles: cloth cut into slabs across the grain, and windows that run through them.
//!
//! Stations are the corners' places across the grain. Between two neighbouring stations the cloth is a stack of *cells*,
//! each between two straight lines. A rectangle starts in one cell, ends in another, and passes cells that join; all that
//! the cells between ask of it is one lowest and one highest level. What is left is a small problem in two unknowns
//! (where it starts, where it ends), and its best is always on one of ten lines: see [`best_between`].

use alloc::{vec, vec::Vec};

use kurbo::Point;

/// A rectangle: `x` across the grain and `y` along it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Span {
    pub(super) x: [f64; 2],
    pub(super) y: [f64; 2],
}

/// Cloth between two stations, from a straight line below to one above (values at the two stations).
#[derive(Clone, Copy)]
struct Cell {
    low: [f64; 2],
    high: [f64; 2],
}

struct Slab {
    x: [f64; 2],
    cells: Vec<Cell>,
}

/// The largest rectangle in the first ring and in no other, if there is any cloth.
pub(super) fn largest(rings: &[Vec<Point>]) -> Option<Span> {
    let slabs = slabs(rings);
    let mut aim = Largest {
        end: slabs.last()?.x[1],
        area: 0.0,
        span: None,
    };
    search(&slabs, &mut aim);
    aim.span
}

/// The tallest rectangle as wide as asked in the first ring and in no other, if there is one.
pub(super) fn tallest(rings: &[Vec<Point>], width: f64) -> Option<Span> {
    let mut aim = Tallest {
        width,
        height: 0.0,
        span: None,
    };
    search(&slabs(rings), &mut aim);
    aim.span
}

/// Where a rectangle starts or ends across the grain: a slab and the cell in it.
type End = ([f64; 2], Cell);

/// What is sought, and the best of it so far.
trait Aim {
    /// Whether a rectangle that starts in a slab at `from`, ends in one at `to` and is at most so high may be better.
    fn promises(&self, from: [f64; 2], to: [f64; 2], height: f64) -> bool;
    /// Whether one that runs on beyond the slab at `to` may be better.
    fn runs_on(&self, from: [f64; 2], to: [f64; 2], height: f64) -> bool;
    /// Tries those that start in the first cell, end in the last and lie between two levels.
    fn between(&mut self, first: End, last: End, low: f64, high: f64);
}

/// The greatest area.
struct Largest {
    /// The last station.
    end: f64,
    area: f64,
    span: Option<Span>,
}

impl Aim for Largest {
    fn promises(&self, from: [f64; 2], to: [f64; 2], height: f64) -> bool {
        (to[1] - from[0]) * height > self.area
    }

    fn runs_on(&self, from: [f64; 2], _: [f64; 2], height: f64) -> bool {
        (self.end - from[0]) * height > self.area
    }

    fn between(&mut self, first: End, last: End, low: f64, high: f64) {
        best_between(first, last, low, high, self);
    }
}

/// The greatest height at one width.
struct Tallest {
    width: f64,
    height: f64,
    span: Option<Span>,
}

impl Aim for Tallest {
    fn promises(&self, from: [f64; 2], to: [f64; 2], height: f64) -> bool {
        to[0] - from[1] <= self.width && self.width <= to[1] - from[0] && height > self.height
    }

    fn runs_on(&self, from: [f64; 2], to: [f64; 2], height: f64) -> bool {
        to[1] - from[1] <= self.width && height > self.height
    }

    fn between(&mut self, first: End, last: End, low: f64, high: f64) {
        tallest_between(first, last, low, high, self);
    }
}

/// Tries every rectangle: from each cell to each that it reaches.
fn search(slabs: &[Slab], aim: &mut impl Aim) {
    for (index, slab) in slabs.iter().enumerate() {
        for cell in &slab.cells {
            walk(&slabs[index..], *cell, aim);
        }
    }
}

/// Tries every rectangle that starts in `start`, a cell of the first slab.
fn walk(slabs: &[Slab], start: Cell, aim: &mut impl Aim) {
    let from = slabs[0].x;
    // Place in `slabs`, the cell there, and the levels the cells before it leave.
    let mut open = vec![(0, start, f64::NEG_INFINITY, f64::INFINITY)];
    while let Some((index, cell, low, high)) = open.pop() {
        let to = slabs[index].x;
        let floor = low
            .max(start.low[0].min(start.low[1]))
            .max(cell.low[0].min(cell.low[1]));
        let ceiling = high
            .min(start.high[0].max(start.high[1]))
            .min(cell.high[0].max(cell.high[1]));
        if aim.promises(from, to, ceiling - floor) {
            aim.between((from, start), (to, cell), low, high);
        }
        let (low, high) = (low.max(cell.low[1]), high.min(cell.high[1]));
        if !aim.runs_on(from, to, high - low) {
            continue;
        }
        for next in slabs.get(index + 1).map_or(&[][..], |slab| &slab.cells) {
            let (low, high) = (low.max(next.low[0]), high.min(next.high[0]));
            if low < high {
                open.push((index + 1, *next, low, high));
            }
        }
    }
}

/// A linear function of one unknown: `at` at 0, `slope` for each step.
#[derive(Clone, Copy)]
struct Linear {
    at: f64,
    slope: f64,
}

impl Linear {
    fn constant(at: f64) -> Linear {
        Linear { at, slope: 0.0 }
    }

    /// Through a value at each of two places.
    fn through(x: [f64; 2], y: [f64; 2]) -> Linear {
        let slope = (y[1] - y[0]) / (x[1] - x[0]);
        Linear {
            at: y[0] - slope * x[0],
            slope,
        }
    }

    fn of(self, inner: Linear) -> Linear {
        Linear {
            at: self.at + self.slope * inner.at,
            slope: self.slope * inner.slope,
        }
    }

    /// Where it takes this value.
    fn reaches(self, value: f64) -> f64 {
        (value - self.at) / self.slope
    }

    /// Where two of them are equal.
    fn meets(self, other: Linear) -> f64 {
        (other.at - self.at) / (self.slope - other.slope)
    }
}

/// Value at `x` of the line through two points; exact at the ends.
fn between(x: f64, xs: [f64; 2], ys: [f64; 2]) -> f64 {
    if x == xs[1] {
        ys[1]
    } else {
        ys[0] + (x - xs[0]) / (xs[1] - xs[0]) * (ys[1] - ys[0])
    }
}

/// Lowest and highest level of a rectangle from one place in its first cell to one in its last, between two others.
fn levels(
    ((xs1, cell1), x1): (End, f64),
    ((xs2, cell2), x2): (End, f64),
    low: f64,
    high: f64,
) -> (f64, f64) {
    let bottom = low
        .max(between(x1, xs1, cell1.low))
        .max(between(x2, xs2, cell2.low));
    let top = high
        .min(between(x1, xs1, cell1.high))
        .min(between(x2, xs2, cell2.high));
    (bottom, top)
}

/// Tries the rectangles from `x1` in the first cell to `x2` in the last, between `low` and `high`.
///
/// Its top is the least of three levels: the first cell's line at `x1`, `high`, and the last cell's line at `x2`; its
/// bottom the greatest of three. Area is (x2 - x1)(top - bottom), and where one level of each three decides, a product of
/// two linear functions of (x1, x2), which has no strict maximum in the open. So the best lies on a line where `x1` or
/// `x2` is at an end of its slab, or where two levels are equal: ten lines at most. On each line the best is where again
/// two levels are equal, at an end, or where the slope of one of nine products is 0.
fn best_between(first: End, last: End, low: f64, high: f64, best: &mut Largest) {
    let ((xs1, cell1), (xs2, cell2)) = (first, last);
    let mut attempt = |x1: f64, x2: f64| {
        let (x1, x2) = (x1.clamp(xs1[0], xs1[1]), x2.clamp(xs2[0], xs2[1]));
        let (bottom, top) = levels((first, x1), (last, x2), low, high);
        let area = (x2 - x1) * (top - bottom);
        // Two negative sides would make a positive area.
        if x2 > x1 && top > bottom && area > best.area {
            best.area = area;
            best.span = Some(Span {
                x: [x1, x2],
                y: [bottom, top],
            });
        }
    };
    let (low1, high1) = (
        Linear::through(xs1, cell1.low),
        Linear::through(xs1, cell1.high),
    );
    let (low2, high2) = (
        Linear::through(xs2, cell2.low),
        Linear::through(xs2, cell2.high),
    );
    let unknown = Linear {
        at: 0.0,
        slope: 1.0,
    };
    let mut lines: Vec<(Linear, Linear)> = Vec::with_capacity(10);
    for x1 in [xs1[0], xs1[1], high1.reaches(high), low1.reaches(low)] {
        lines.push((Linear::constant(x1), unknown));
    }
    for x2 in [xs2[0], xs2[1], high2.reaches(high), low2.reaches(low)] {
        lines.push((unknown, Linear::constant(x2)));
    }
    for (line1, line2) in [(high1, high2), (low1, low2)] {
        if line1.slope != 0.0 {
            let x1 = Linear {
                at: (line2.at - line1.at) / line1.slope,
                slope: line2.slope / line1.slope,
            };
            lines.push((x1, unknown));
        } else {
            lines.push((unknown, Linear::constant(line2.reaches(line1.at))));
        }
    }
    for (x1, x2) in lines {
        let tops = [high1.of(x1), Linear::constant(high), high2.of(x2)];
        let bottoms = [low1.of(x1), Linear::constant(low), low2.of(x2)];
        let mut at = |place: f64| {
            let (x1, x2) = (x1.at + x1.slope * place, x2.at + x2.slope * place);
            // An infinite or undefined place is of lines that do not meet.
            if x1.is_finite() && x2.is_finite() {
                attempt(x1, x2);
            }
        };
        for end in if x2.slope == 0.0 { xs1 } else { xs2 } {
            at(end);
        }
        for three in [tops, bottoms] {
            at(three[0].meets(three[1]));
            at(three[1].meets(three[2]));
            at(three[2].meets(three[0]));
        }
        let (width, growth) = (x2.at - x1.at, x2.slope - x1.slope);
        for top in tops {
            for bottom in bottoms {
                let (height, gain) = (top.at - bottom.at, top.slope - bottom.slope);
                at(-(growth * height + gain * width) / (2.0 * growth * gain));
            }
        }
    }
}

/// Tries the rectangles of the width asked from `x1` in the first cell to `x1 + width` in the last, between `low` and
/// `high`.
///
/// Height is the least of three linear functions of `x1` less the greatest of three, so it is concave, and its greatest is
/// at an end of where `x1` may lie or where two of either three are equal.
fn tallest_between(first: End, last: End, low: f64, high: f64, best: &mut Tallest) {
    let ((xs1, cell1), (xs2, cell2)) = (first, last);
    let width = best.width;
    let ends = [xs1[0].max(xs2[0] - width), xs1[1].min(xs2[1] - width)];
    let shifted = Linear {
        at: width,
        slope: 1.0,
    };
    let tops = [
        Linear::through(xs1, cell1.high),
        Linear::constant(high),
        Linear::through(xs2, cell2.high).of(shifted),
    ];
    let bottoms = [
        Linear::through(xs1, cell1.low),
        Linear::constant(low),
        Linear::through(xs2, cell2.low).of(shifted),
    ];
    let mut attempt = |x1: f64| {
        // Where two levels do not meet the place is not a number or infinite, and no place in the cell.
        if !(ends[0]..=ends[1]).contains(&x1) {
            return;
        }
        let x2 = (x1 + width).clamp(xs2[0], xs2[1]);
        let (bottom, top) = levels((first, x1), (last, x2), low, high);
        if x2 > x1 && top - bottom > best.height {
            best.height = top - bottom;
            best.span = Some(Span {
                x: [x1, x2],
                y: [bottom, top],
            });
        }
    };
    ends.into_iter().for_each(&mut attempt);
    for three in [tops, bottoms] {
        attempt(three[0].meets(three[1]));
        attempt(three[1].meets(three[2]));
        attempt(three[2].meets(three[0]));
    }
}

/// The cloth inside the first ring and outside the others, slab by slab.
fn slabs(rings: &[Vec<Point>]) -> Vec<Slab> {
    // Edges from left to right; those along the grain bound no cell.
    let mut edges: Vec<(Point, Point, usize)> = Vec::new();
    for (index, ring) in rings.iter().enumerate() {
        for (a, b) in super::ring::edges(ring) {
            if a.x < b.x {
                edges.push((a, b, index));
            } else if b.x < a.x {
                edges.push((b, a, index));
            }
        }
    }
    let mut stations: Vec<f64> = rings.iter().flatten().map(|point| point.x).collect();
    stations.extend(crossings(&edges));
    stations.sort_by(f64::total_cmp);
    // 0 and -0 are one station.
    stations.dedup_by(|a, b| a == b);
    let mut stacks: Vec<Vec<([f64; 2], usize)>> =
        vec![Vec::new(); stations.len().saturating_sub(1)];
    for &(a, b, ring) in &edges {
        let (first, end) = (
            stations.partition_point(|&x| x < a.x),
            stations.partition_point(|&x| x < b.x),
        );
        let pairs = stations[first..=end].windows(2);
        for (stack, x) in stacks[first..end].iter_mut().zip(pairs) {
            let y = [x[0], x[1]].map(|x| between(x, [a.x, b.x], [a.y, b.y]));
            stack.push((y, ring));
        }
    }
    let mut inside = vec![false; rings.len()];
    stacks
        .iter_mut()
        .zip(stations.windows(2))
        .map(|(stack, x)| {
            stack.sort_by(|(a, _), (b, _)| (a[0] + a[1]).total_cmp(&(b[0] + b[1])));
            inside.fill(false);
            let mut holes = 0;
            let mut floor = None;
            let mut cells = Vec::new();
            for &(y, ring) in stack.iter() {
                inside[ring] = !inside[ring];
                if ring > 0 {
                    holes = if inside[ring] { holes + 1 } else { holes - 1 };
                }
                let cloth = inside[0] && holes == 0;
                match floor {
                    None if cloth => floor = Some(y),
                    Some(low) if !cloth => {
                        cells.push(Cell { low, high: y });
                        floor = None;
                    }
                    _ => {}
                }
            }
            Slab {
                x: [x[0], x[1]],
                cells,
            }
        })
        .collect()
}

/// Where edges of different rings cross: a hole may overlap the edge of the panel or another hole.
fn crossings(edges: &[(Point, Point, usize)]) -> Vec<f64> {
    let mut places = Vec::new();
    for (index, &(a, b, ring)) in edges.iter().enumerate() {
        for &(c, d, other) in &edges[index + 1..] {
            if ring != other && super::ring::cross(a, b, c, d) {
                let (along, across) = (b - a, d - c);
                let share = (c - a).cross(across) / along.cross(across);
                let x = a.x + share * along.x;
                if x.is_finite() {
                    places.push(x.clamp(a.x.max(c.x), b.x.min(d.x)));
                }
            }
        }
    }
    places
}
