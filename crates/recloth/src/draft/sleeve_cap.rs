//! The cap of a sleeve: a curve of given lengths in front and behind over a given width.

use kurbo::{Point, Vec2};

use crate::outline::Curve;

/// The part of a half's width that steers its lower end, in front and behind: a front is scooped out more.
/// Common practice, no source.
const LOWER: [f64; 2] = [0.55, 0.45];
/// The same at the crown.
const CROWN: f64 = 0.5;

/// Two curves: from the front underarm up to the crown, and from there down to the back underarm.
#[derive(Clone, Copy, Debug)]
pub(super) struct Cap {
    pub(super) front: Curve,
    pub(super) back: Curve,
    /// How high the crown lies above the underarm.
    pub(super) height: f64,
}

impl Cap {
    /// The cap whose front underarm is the origin and whose back one lies `width` to the left. It leaves the underarms by
    /// these slopes (radians, upward), so that it is square to the seams there. Nothing where no height gives the lengths.
    pub(super) fn new(width: f64, lengths: [f64; 2], slopes: [f64; 2]) -> Option<Cap> {
        let half = |side: usize, width: f64, height: f64| {
            let (sin, cos) = libm::sincos(slopes[side]);
            let lower = width * LOWER[side];
            Curve::cubic(
                (0.0, 0.0),
                (lower * cos, lower * sin),
                (width * (1.0 - CROWN), height),
                (width, height),
            )
        };
        // The width of a half as long as asked, at a height.
        let wide = |side: usize, height: f64| {
            let (mut low, mut high) = (0.0, lengths[side]);
            for _ in 0..50 {
                let middle = (low + high) / 2.0;
                if half(side, middle, height).length() < lengths[side] {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            (low + high) / 2.0
        };
        let both = |height: f64| [wide(0, height), wide(1, height)];
        let (mut low, mut high) = (0.0, lengths[0].min(lengths[1]));
        let short = both(low);
        if short[0] + short[1] < width {
            return None;
        }
        for _ in 0..50 {
            let middle = (low + high) / 2.0;
            let found = both(middle);
            if found[0] + found[1] > width {
                low = middle;
            } else {
                high = middle;
            }
        }
        let height = (low + high) / 2.0;
        let found = both(height);
        // Both halves end in one crown, whatever rounding says.
        let crown = Point::new(-found[0], height);
        let mirror = |curve: Curve, at: Point, sign: f64| match curve {
            Curve::Cubic(c) => {
                let put = |p: Point| at + Vec2::new(sign * p.x, p.y);
                Curve::cubic(put(c.p0), put(c.p1), put(c.p2), put(c.p3))
            }
            other => other,
        };
        let front = mirror(half(0, found[0], height), Point::ORIGIN, -1.0);
        let back = mirror(half(1, found[1], height), Point::new(-width, 0.0), 1.0).reversed();
        Some(Cap {
            front: front.between(Point::ORIGIN, crown),
            back: back.between(crown, Point::new(-width, 0.0)),
            height,
        })
    }

    /// The cap turned and shifted to lie from one underarm to the other.
    pub(super) fn laid(&self, front: Point, back: Point) -> Cap {
        let along = front - back;
        let size = libm::hypot(along.x, along.y);
        let (cos, sin) = (along.x / size, along.y / size);
        let motion = kurbo::Affine::new([cos, sin, -sin, cos, front.x, front.y]);
        Cap {
            front: self
                .front
                .moved(motion, false)
                .between(front, motion * self.front.end()),
            back: self
                .back
                .moved(motion, false)
                .between(motion * self.front.end(), back),
            height: self.height,
        }
    }
}
