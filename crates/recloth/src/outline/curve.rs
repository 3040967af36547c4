//! The curve of an edge: a line, an arc or a cubic Bézier, measured by its own length.

use kurbo::{Affine, CubicBez, ParamCurve, Point, Rect, Vec2};

use super::segment::Segment;
use super::vector::{cross, length, unit};

/// The curve of an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Curve {
    /// A line or a circular arc.
    Segment(Segment),
    /// A cubic Bézier curve.
    Cubic(CubicBez),
}

impl Curve {
    /// A straight line.
    pub fn line(start: impl Into<Point>, end: impl Into<Point>) -> Curve {
        Curve::Segment(Segment::line(start, end))
    }

    /// A circular arc by its ends and bulge (see [`Segment`]).
    pub fn arc(start: impl Into<Point>, end: impl Into<Point>, bulge: f64) -> Curve {
        Curve::Segment(Segment::arc(start, end, bulge))
    }

    /// A cubic Bézier by its ends and the two points that steer it.
    pub fn cubic(
        start: impl Into<Point>,
        first: impl Into<Point>,
        second: impl Into<Point>,
        end: impl Into<Point>,
    ) -> Curve {
        Curve::Cubic(CubicBez {
            p0: start.into(),
            p1: first.into(),
            p2: second.into(),
            p3: end.into(),
        })
    }

    /// Where it starts.
    pub fn start(&self) -> Point {
        match self {
            Curve::Segment(segment) => segment.start,
            Curve::Cubic(cubic) => cubic.p0,
        }
    }

    /// Where it ends.
    pub fn end(&self) -> Point {
        match self {
            Curve::Segment(segment) => segment.end,
            Curve::Cubic(cubic) => cubic.p3,
        }
    }

    /// Moves the start to `point`, which is as good as there already.
    pub(crate) fn set_start(&mut self, point: Point) {
        match self {
            Curve::Segment(segment) => segment.start = point,
            Curve::Cubic(cubic) => cubic.p0 = point,
        }
    }

    /// The same curve between ends that are as good as its own.
    pub(crate) fn between(mut self, start: Point, end: Point) -> Curve {
        self.set_start(start);
        match &mut self {
            Curve::Segment(segment) => segment.end = end,
            Curve::Cubic(cubic) => cubic.p3 = end,
        }
        self
    }

    /// The same, walked the other way.
    pub fn reversed(&self) -> Curve {
        match self {
            Curve::Segment(segment) => Curve::Segment(segment.reversed()),
            Curve::Cubic(c) => Curve::Cubic(CubicBez::new(c.p3, c.p2, c.p1, c.p0)),
        }
    }

    /// Length (mm), true to 1e-9 of itself or better.
    pub fn length(&self) -> f64 {
        match self {
            Curve::Segment(segment) => segment.length(),
            Curve::Cubic(cubic) => cubic_length(cubic, 1.0),
        }
    }

    /// Point and direction (of length 1) at a distance from the start (mm), held to the curve's ends.
    pub fn at(&self, distance: f64) -> (Point, Vec2) {
        match self {
            Curve::Segment(segment) => segment.at(distance.max(0.0).min(segment.length())),
            Curve::Cubic(cubic) => {
                let t = cubic_parameter(cubic, distance);
                (cubic.eval(t), cubic_tangent(cubic, t))
            }
        }
    }

    /// Direction at the start, of length 1.
    pub fn start_tangent(&self) -> Vec2 {
        match self {
            Curve::Segment(segment) => segment.start_tangent(),
            Curve::Cubic(cubic) => cubic_tangent(cubic, 0.0),
        }
    }

    /// Direction at the end, of length 1.
    pub fn end_tangent(&self) -> Vec2 {
        match self {
            Curve::Segment(segment) => segment.end_tangent(),
            Curve::Cubic(cubic) => cubic_tangent(cubic, 1.0),
        }
    }

    /// The part from one distance to another (mm from the start, held to its ends).
    pub fn part(&self, from: f64, to: f64) -> Curve {
        match self {
            Curve::Segment(segment) => {
                let span = segment.length();
                let (from, to) = (from.max(0.0).min(span), to.max(0.0).min(span));
                let mut part = segment.part(from, to);
                // The ends themselves, so that neighbours still meet.
                if from == 0.0 {
                    part.start = segment.start;
                }
                if to == span {
                    part.end = segment.end;
                }
                Curve::Segment(part)
            }
            Curve::Cubic(cubic) => {
                let ends = [from, to].map(|distance| cubic_parameter(cubic, distance));
                Curve::Cubic(cubic_part(cubic, ends))
            }
        }
    }

    /// How far a point is from the curve (mm), and the place nearest to it, as a distance from the start (mm).
    pub fn nearest(&self, point: impl Into<Point>) -> (f64, f64) {
        let point = point.into();
        match self {
            Curve::Segment(segment) => segment.nearest(point),
            Curve::Cubic(cubic) => {
                let t = cubic_nearest(cubic, point);
                (length(cubic.eval(t) - point), cubic_length(cubic, t))
            }
        }
    }

    /// Its share of the signed area of the ring it belongs to (mm²), exact for cubics too.
    pub(crate) fn area_share(&self) -> f64 {
        match self {
            Curve::Segment(segment) => segment.area_share(),
            Curve::Cubic(c) => {
                let [a, b, c, d] = [c.p0, c.p1, c.p2, c.p3].map(Point::to_vec2);
                (6.0 * cross(a, b)
                    + 3.0 * (cross(a, c) + cross(b, c) + cross(b, d))
                    + 6.0 * cross(c, d)
                    + cross(a, d))
                    / 20.0
            }
        }
    }

    /// The smallest upright box that holds it.
    pub fn bounds(&self) -> Rect {
        match self {
            Curve::Segment(segment) => segment.bounds(),
            Curve::Cubic(c) => {
                let mut bounds = Rect::from_points(c.p0, c.p3);
                for axis in [|p: Point| p.x, |p: Point| p.y] {
                    let [a, b, c4, d] = [c.p0, c.p1, c.p2, c.p3].map(axis);
                    let (first, second, third) = (b - a, c4 - b, d - c4);
                    for t in
                        quadratic_roots(first - 2.0 * second + third, 2.0 * (second - first), first)
                    {
                        if t > 0.0 && t < 1.0 {
                            bounds = bounds.union_pt(c.eval(t));
                        }
                    }
                }
                bounds
            }
        }
    }

    /// The curve after a rigid motion; `flips` where the motion mirrors.
    pub(crate) fn moved(&self, motion: Affine, flips: bool) -> Curve {
        match self {
            Curve::Segment(s) => Curve::Segment(Segment::arc(
                motion * s.start,
                motion * s.end,
                if flips { -s.bulge } else { s.bulge },
            )),
            Curve::Cubic(c) => Curve::Cubic(CubicBez::new(
                motion * c.p0,
                motion * c.p1,
                motion * c.p2,
                motion * c.p3,
            )),
        }
    }

    /// The curve shifted.
    pub(crate) fn shifted(&self, by: Vec2) -> Curve {
        self.moved(Affine::translate(by), false)
    }

    /// The numbers that describe it, for checking.
    pub(crate) fn numbers(&self) -> ([Point; 4], f64) {
        match self {
            Curve::Segment(s) => ([s.start, s.end, s.start, s.end], s.bulge),
            Curve::Cubic(c) => ([c.p0, c.p1, c.p2, c.p3], 0.0),
        }
    }
}

/// Real roots of `a t² + b t + c`, written so that nothing cancels; NaN where there is none.
pub(crate) fn quadratic_roots(a: f64, b: f64, c: f64) -> [f64; 2] {
    let root = libm::sqrt(b * b - 4.0 * a * c);
    let half = -0.5 * (b + if b < 0.0 { -root } else { root });
    [c / half, half / a]
}

/// Derivative by the parameter.
pub(crate) fn cubic_derivative(c: &CubicBez, t: f64) -> Vec2 {
    let s = 1.0 - t;
    (c.p1 - c.p0) * (3.0 * s * s) + (c.p2 - c.p1) * (6.0 * s * t) + (c.p3 - c.p2) * (3.0 * t * t)
}

/// Direction at `t`, of length 1. Where the curve stands still, the direction in which it moves off or arrives.
pub(crate) fn cubic_tangent(c: &CubicBez, t: f64) -> Vec2 {
    let size = length(c.p1 - c.p0) + length(c.p2 - c.p1) + length(c.p3 - c.p2);
    let first = cubic_derivative(c, t);
    if length(first) > 1e-9 * size {
        return unit(first);
    }
    let (a, b, d) = (c.p1 - c.p0, c.p2 - c.p1, c.p3 - c.p2);
    let second = (b - a) * (1.0 - t) + (d - b) * t;
    let way = if t > 0.5 { -1.0 } else { 1.0 };
    if length(second) > 1e-9 * size {
        return unit(second * way);
    }
    unit(c.p3 - c.p0)
}

/// Nodes and weights of the 8-point Gauss-Legendre rule on -1..1, positive half
/// (Abramowitz and Stegun, *Handbook of Mathematical Functions*, 1964, table 25.4).
const GAUSS: [(f64, f64); 4] = [
    (0.183_434_642_495_649_8, 0.362_683_783_378_362),
    (0.525_532_409_916_329, 0.313_706_645_877_887_3),
    (0.796_666_477_413_626_7, 0.222_381_034_453_374_48),
    (0.960_289_856_497_536_3, 0.101_228_536_290_376_26),
];

fn gauss(c: &CubicBez, from: f64, to: f64) -> f64 {
    let (middle, half) = ((from + to) / 2.0, (to - from) / 2.0);
    let speed = |t: f64| {
        let d = cubic_derivative(c, t);
        libm::sqrt(d.x * d.x + d.y * d.y)
    };
    let mut sum = 0.0;
    for (node, weight) in GAUSS {
        sum += weight * (speed(middle - half * node) + speed(middle + half * node));
    }
    sum * half
}

/// Length from the start to parameter `to`, by halving until the halves agree with the whole.
fn cubic_length(c: &CubicBez, to: f64) -> f64 {
    let hull = length(c.p1 - c.p0) + length(c.p2 - c.p1) + length(c.p3 - c.p2);
    halve(c, 0.0, to, gauss(c, 0.0, to), hull * 1e-11, 0)
}

fn halve(c: &CubicBez, from: f64, to: f64, whole: f64, tolerance: f64, depth: u32) -> f64 {
    let middle = (from + to) / 2.0;
    let (a, b) = (gauss(c, from, middle), gauss(c, middle, to));
    let sum = a + b;
    // At a cusp the halves never agree; there what is left after 30 halvings is below any length. Nor do they where a
    // point is not finite, and then halving would not end in a lifetime.
    if (sum - whole).abs() <= tolerance || depth >= 30 || !sum.is_finite() {
        return sum;
    }
    halve(c, from, middle, a, tolerance, depth + 1) + halve(c, middle, to, b, tolerance, depth + 1)
}

/// Parameter at a distance from the start: Newton's steps, kept inside a bracket that only shrinks.
fn cubic_parameter(c: &CubicBez, distance: f64) -> f64 {
    let whole = cubic_length(c, 1.0);
    if distance.is_nan() || distance <= 0.0 {
        return 0.0;
    }
    if distance >= whole {
        return 1.0;
    }
    let (mut low, mut high) = (0.0, 1.0);
    let mut t = distance / whole;
    for _ in 0..60 {
        let miss = cubic_length(c, t) - distance;
        if miss.abs() <= 1e-11 * whole {
            break;
        }
        if miss > 0.0 {
            high = t;
        } else {
            low = t;
        }
        let step = t - miss / length(cubic_derivative(c, t));
        t = if step > low && step < high {
            step
        } else {
            (low + high) / 2.0
        };
    }
    t
}

/// The part between two parameters: the same curve, with steering points a third along its new ends' derivatives.
fn cubic_part(c: &CubicBez, [from, to]: [f64; 2]) -> CubicBez {
    let third = (to - from) / 3.0;
    let (start, end) = (c.eval(from), c.eval(to));
    CubicBez::new(
        if from == 0.0 { c.p0 } else { start },
        start + cubic_derivative(c, from) * third,
        end - cubic_derivative(c, to) * third,
        if to == 1.0 { c.p3 } else { end },
    )
}

/// Parameter of the place nearest to a point: the best of even steps, then narrowed by thirds.
fn cubic_nearest(c: &CubicBez, point: Point) -> f64 {
    const STEPS: u32 = 64;
    let away = |t: f64| {
        let gap = c.eval(t) - point;
        gap.x * gap.x + gap.y * gap.y
    };
    let place = |step: u32| f64::from(step) / f64::from(STEPS);
    let mut best = 0;
    for step in 1..=STEPS {
        if away(place(step)) < away(place(best)) {
            best = step;
        }
    }
    let (mut low, mut high) = (place(best.saturating_sub(1)), place((best + 1).min(STEPS)));
    for _ in 0..80 {
        let third = (high - low) / 3.0;
        if away(low + third) <= away(high - third) {
            high -= third;
        } else {
            low += third;
        }
    }
    // The ends are reached exactly.
    let mut nearest = (low + high) / 2.0;
    for end in [0.0, 1.0] {
        if away(end) <= away(nearest) {
            nearest = end;
        }
    }
    nearest
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq as close;

    /// The cubic with steering points 4/3 tan(90°/4) of the radius along: a quarter circle to 2.8e-4 of its radius.
    fn quarter() -> CubicBez {
        let k = 0.552_284_749_830_793_4 * 100.0;
        CubicBez::new((100.0, 0.0), (100.0, k), (k, 100.0), (0.0, 100.0))
    }

    #[test]
    fn a_cubic_without_end_has_no_length_and_takes_no_time() {
        for odd in [f64::NAN, f64::INFINITY, 1e308] {
            for point in 0..4 {
                let mut x = [0.0, 1.0, 2.0, 3.0];
                x[point] = odd;
                let curve = Curve::cubic((x[0], 0.0), (x[1], 9.0), (x[2], 9.0), (x[3], 0.0));
                assert!(!curve.length().is_finite(), "{x:?}");
                let (at, _) = curve.at(5.0);
                assert!(point > 0 || odd == 1e308 || !at.x.is_finite(), "{x:?}");
            }
        }
    }

    #[test]
    fn a_cubic_is_as_long_as_a_fine_polyline() {
        // Independent: 100 000 chords, whose sum is short by the order of 1e-10 of itself.
        let steep = CubicBez::new((0.0, 0.0), (300.0, 10.0), (-200.0, 20.0), (100.0, 30.0));
        for cubic in [quarter(), steep] {
            let mut sum = 0.0;
            let mut last = cubic.p0;
            for i in 1..=100_000 {
                let next = cubic.eval(f64::from(i) / 1e5);
                sum += length(next - last);
                last = next;
            }
            close!(Curve::Cubic(cubic).length(), sum, epsilon = 1e-6);
        }
        // A straight cubic is exact; so is one that doubles back on itself.
        close!(
            Curve::cubic((0.0, 0.0), (1.0, 0.0), (2.0, 0.0), (3.0, 0.0)).length(),
            3.0,
            epsilon = 1e-12
        );
    }

    #[test]
    fn distance_along_a_cubic_comes_back() {
        let curve = Curve::Cubic(quarter());
        let whole = curve.length();
        let (middle, tangent) = curve.at(whole / 2.0);
        close!(middle.x, middle.y, epsilon = 1e-8);
        close!(tangent.x, -tangent.y, epsilon = 1e-9);
        assert_eq!(curve.at(-5.0).0, curve.start());
        assert_eq!(curve.at(1e9).0, curve.end());
        assert_eq!(curve.at(f64::NAN).0, curve.start());
    }

    #[test]
    fn area_of_a_cubic_ring_is_near_the_circle() {
        // A quarter disc: the curve's share; the radii from the origin add nothing.
        let share = Curve::Cubic(quarter()).area_share();
        close!(
            share,
            core::f64::consts::PI * 2500.0,
            epsilon = 10000.0 * 3e-4
        );
        let line = Curve::cubic((1.0, 0.0), (1.0, 1.0), (1.0, 2.0), (1.0, 3.0));
        close!(line.area_share(), 1.5, epsilon = 1e-12);
    }

    #[test]
    fn bounds_hold_the_belly_of_a_cubic() {
        // x(t) = 3·40(1-t)²t + 3·40(1-t)t² = 120 t(1-t), largest 30 at the middle.
        let b = Curve::cubic((0.0, 0.0), (40.0, 0.0), (40.0, 10.0), (0.0, 10.0)).bounds();
        close!(b.x1, 30.0, epsilon = 1e-12);
        assert_eq!((b.x0, b.y0, b.y1), (0.0, 0.0, 10.0));
    }

    #[test]
    fn a_tangent_exists_where_the_cubic_stands_still() {
        let c = CubicBez::new((0.0, 0.0), (0.0, 0.0), (10.0, 0.0), (10.0, 10.0));
        close!(cubic_tangent(&c, 0.0).x, 1.0, epsilon = 1e-12);
        let stands = CubicBez::new((1.0, 1.0), (1.0, 1.0), (1.0, 1.0), (1.0, 1.0));
        assert_eq!(cubic_tangent(&stands, 0.5), Vec2::ZERO);
    }
}
