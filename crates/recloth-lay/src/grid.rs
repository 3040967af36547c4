//! Shifts that keep to a grid of places, along one direction and across it, or along or across alone.

use kurbo::{Point, Vec2};

/// How far outside its room a place may be for rounding (mm): well within what the checker lets pass.
const EDGE: f64 = 1e-8;
/// Lines looked at on either side of a place before all of them are.
const NEAR: i64 = 3;

/// Places a step apart on an axis.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Line {
    pub(crate) offset: f64,
    pub(crate) step: f64,
}

/// Lines across an axis, lines along it, or the points where both meet.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Grid {
    /// A unit vector.
    pub(crate) axis: Vec2,
    pub(crate) along: Option<Line>,
    pub(crate) across: Option<Line>,
}

impl Line {
    fn index(&self, value: f64) -> i64 {
        ((value - self.offset) / self.step).round() as i64
    }

    fn at(&self, index: i64) -> f64 {
        self.offset + index as f64 * self.step
    }

    /// The place nearest to a value, of those from `low` to `high`.
    fn nearest(&self, value: f64, low: f64, high: f64) -> Option<f64> {
        let place = self.at(self.index(value.max(low).min(high)));
        let inside = |place: f64| place >= low - EDGE && place <= high + EDGE;
        [place, place - self.step, place + self.step]
            .into_iter()
            .find(|&place| inside(place))
    }
}

impl Grid {
    fn beside(&self) -> Vec2 {
        Vec2::new(-self.axis.y, self.axis.x)
    }

    /// The place of the grid in an upright box that is nearest to a point; `None` where the box has none.
    pub(crate) fn nearest(&self, p: Point, low: Point, high: Point) -> Option<Point> {
        // Lines one way, and on each of them anywhere or on the lines the other way.
        let (lines, square, run, others) = match (self.along, self.across) {
            (Some(along), across) => (along, self.axis, self.beside(), across),
            (None, Some(across)) => (across, self.beside(), self.axis, None),
            (None, None) => return Some(clamp(p, low, high)),
        };
        let p = clamp(p, low, high);
        let middle = lines.index(square.dot(p.to_vec2()));
        let on_line = |index: i64| {
            let from = (square * lines.at(index)).to_point();
            let (start, end) = stretch(from, run, low, high)?;
            let far = run.dot(p.to_vec2());
            let far = match others {
                Some(others) => others.nearest(far, start, end)?,
                None => far.max(start).min(end),
            };
            Some(from + run * far)
        };
        let nearest = |indices: core::ops::RangeInclusive<i64>| {
            let mut best: Option<(f64, Point)> = None;
            for place in indices.filter_map(on_line) {
                let apart = (place - p).hypot2();
                if best.is_none_or(|(least, _)| apart < least) {
                    best = Some((apart, place));
                }
            }
            best.map(|(_, place)| place)
        };
        nearest(middle - NEAR..=middle + NEAR).or_else(|| {
            let corners = [
                low,
                high,
                Point::new(low.x, high.y),
                Point::new(high.x, low.y),
            ];
            let fars = corners.map(|corner| lines.index(square.dot(corner.to_vec2())));
            let first = fars.into_iter().min()?;
            nearest(first - 1..=fars.into_iter().max()? + 1)
        })
    }

    /// A step no shorter than to the next place, along the axis and across it.
    pub(crate) fn steps(&self, step: f64) -> [Vec2; 2] {
        let least = |line: Option<Line>| line.map_or(step, |line| step.max(line.step));
        [
            self.axis * least(self.along),
            self.beside() * least(self.across),
        ]
    }
}

fn clamp(p: Point, low: Point, high: Point) -> Point {
    Point::new(p.x.min(high.x).max(low.x), p.y.min(high.y).max(low.y))
}

/// From where to where a line through a point runs within an upright box.
fn stretch(from: Point, run: Vec2, low: Point, high: Point) -> Option<(f64, f64)> {
    let (mut start, mut end) = (f64::NEG_INFINITY, f64::INFINITY);
    for (at, step, low, high) in [
        (from.x, run.x, low.x, high.x),
        (from.y, run.y, low.y, high.y),
    ] {
        if step == 0.0 {
            if at < low - EDGE || at > high + EDGE {
                return None;
            }
            continue;
        }
        let (one, other) = ((low - at) / step, (high - at) / step);
        start = start.max(one.min(other));
        end = end.min(one.max(other));
    }
    (start <= end + EDGE).then_some((start, end.max(start)))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn point(x: f64, y: f64) -> Point {
        Point::new(x, y)
    }

    #[test]
    fn places_of_a_grid_along_the_axes() {
        let line = |offset, step| Some(Line { offset, step });
        let grid = |along, across| Grid {
            axis: Vec2::new(0.0, 1.0),
            along,
            across,
        };
        let (low, high) = (point(0.0, 0.0), point(100.0, 100.0));
        // y is 5, 35, 65 or 95; x is anything.
        let rows = grid(line(5.0, 30.0), None);
        assert_eq!(
            rows.nearest(point(12.0, 48.0), low, high),
            Some(point(12.0, 35.0))
        );
        assert_eq!(
            rows.nearest(point(-9.0, 400.0), low, high),
            Some(point(0.0, 95.0))
        );
        // Across the y axis is -x: x is -3, 37, 77.
        let both = grid(line(5.0, 30.0), line(3.0, 40.0));
        assert_eq!(
            both.nearest(point(1.0, 52.0), low, high),
            Some(point(37.0, 65.0))
        );
        // Between two rows there is none.
        assert_eq!(
            rows.nearest(point(0.0, 0.0), point(0.0, 36.0), point(9.0, 64.0)),
            None
        );
        assert_eq!(
            rows.steps(7.0),
            [Vec2::new(0.0, 30.0), Vec2::new(-7.0, 0.0)]
        );
    }

    #[test]
    fn places_of_a_slanting_grid() {
        // Along (3, 4) / 5 every 10 mm, across it every 5 mm: 10 along is (6, 8), 5 across (-4, 3).
        let grid = Grid {
            axis: Vec2::new(0.6, 0.8),
            along: Some(Line {
                offset: 0.0,
                step: 10.0,
            }),
            across: Some(Line {
                offset: 0.0,
                step: 5.0,
            }),
        };
        let found = grid.nearest(point(2.5, 10.0), point(0.0, 0.0), point(50.0, 50.0));
        assert!((found.expect("a place") - point(2.0, 11.0)).hypot2() < 1e-18);
        // The nearest, (2, 11), is left of this room: next is (8, 19) - (-4, 3) = (12, 16) or (10, 5).
        let found = grid.nearest(point(2.5, 10.0), point(9.0, 0.0), point(50.0, 50.0));
        assert!((found.expect("a place") - point(10.0, 5.0)).hypot2() < 1e-18);
        assert_eq!(
            grid.nearest(point(1.0, 1.0), point(0.5, 0.5), point(1.5, 1.5)),
            None
        );
    }
}
