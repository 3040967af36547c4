//! How deep one shape lies in another: the least shift that parts them.

use kurbo::Point;

use crate::positions::Blocked;
use crate::shape::{Convex, TOUCH, bounds};

/// How many sides are measured side by side.
const LANES: usize = 4;

/// A few sides, coordinate by coordinate.
#[derive(Clone, Copy)]
struct Sides {
    x: [f64; LANES],
    y: [f64; LANES],
    run_x: [f64; LANES],
    run_y: [f64; LANES],
    /// One by the square of the length.
    scale: [f64; LANES],
}

/// The shifts at which a shape lies over an obstacle.
pub(crate) struct Clash {
    sums: Vec<Convex>,
    sides: Vec<Sides>,
    pub(crate) low: Point,
    pub(crate) high: Point,
}

impl Clash {
    /// From the sums of their convex parts. Adds the work done to `work`.
    pub(crate) fn new(sums: Vec<Convex>, work: &mut u64) -> Clash {
        let (sums, seen) = Blocked::new(sums, work).into_parts();
        let sides = seen
            .chunks(LANES)
            .map(|few| {
                // Short of four the last is measured again.
                let side = |lane: usize| few[lane.min(few.len() - 1)];
                let of = |value: fn((Point, Point)) -> f64| {
                    core::array::from_fn(|lane| value(side(lane)))
                };
                Sides {
                    x: of(|(a, _)| a.x),
                    y: of(|(a, _)| a.y),
                    run_x: of(|(a, b)| b.x - a.x),
                    run_y: of(|(a, b)| b.y - a.y),
                    scale: of(|(a, b)| 1.0 / (b - a).hypot2().max(f64::MIN_POSITIVE)),
                }
            })
            .collect();
        let corners: Vec<Point> = sums.iter().flat_map(|sum| [sum.low, sum.high]).collect();
        let (low, high) = bounds(&corners);
        Clash {
            sums,
            sides,
            low,
            high,
        }
    }

    /// As [`Clash::depth`], for a position that may be far off.
    pub(crate) fn depth_near(&self, p: Point) -> f64 {
        match p.x > self.low.x && p.x < self.high.x && p.y > self.low.y && p.y < self.high.y {
            true => self.depth(p),
            false => 0.0,
        }
    }

    /// The least shift (mm) that brings the shape from this position clear of the obstacle; 0 where it is clear.
    pub(crate) fn depth(&self, p: Point) -> f64 {
        if !self.sums.iter().any(|sum| sum.holds(p)) {
            return 0.0;
        }
        let mut least = [f64::INFINITY; LANES];
        for few in &self.sides {
            for (lane, least) in least.iter_mut().enumerate() {
                let (x, y) = (p.x - few.x[lane], p.y - few.y[lane]);
                let along = (x * few.run_x[lane] + y * few.run_y[lane]) * few.scale[lane];
                let along = along.clamp(0.0, 1.0);
                let (x, y) = (x - along * few.run_x[lane], y - along * few.run_y[lane]);
                *least = least.min(x * x + y * y);
            }
        }
        let square = least
            .iter()
            .fold(f64::INFINITY, |least, &square| least.min(square));
        // What is inside by less than a touch is not inside; so this is more.
        square.sqrt().max(TOUCH)
    }
}
