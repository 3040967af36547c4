//! A line or a circular arc: what a cut line is made of.

use core::f64::consts::{FRAC_PI_2, TAU};

use alloc::vec::Vec;
use kurbo::{Point, Rect, Vec2};

use super::vector::{cross, dot, left, length, right, unit};

/// A straight line or a circular arc, from `start` to `end`.
///
/// `bulge` is the tangent of a quarter of the arc's sweep: 0 is a line, 1 a half circle, positive turns
/// counter-clockwise from `start` to `end` (the arc lies to the right of its chord), negative clockwise. The height of
/// the arc over its chord is `bulge · chord / 2`. Ends are stored as they are, so neighbours meet exactly, and a
/// parallel arc has the same bulge. Lengths in mm, y up.
///
/// ```
/// use recloth::outline::Segment;
/// let quarter = Segment::about((0.0, 0.0), 100.0, 0.0, 90.0);
/// assert!((quarter.length() - 157.07963).abs() < 1e-5);
/// assert!((quarter.bulge - 0.41421356).abs() < 1e-8);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Segment {
    /// Where it starts (mm).
    pub start: Point,
    /// Where it ends (mm).
    pub end: Point,
    /// Tangent of a quarter of the sweep, -1000 to 1000; 0 for a line.
    #[cfg_attr(feature = "serde", serde(default))]
    pub bulge: f64,
}

impl Segment {
    /// A straight line.
    pub fn line(start: impl Into<Point>, end: impl Into<Point>) -> Segment {
        Segment::arc(start, end, 0.0)
    }

    /// An arc by its ends and bulge.
    pub fn arc(start: impl Into<Point>, end: impl Into<Point>, bulge: f64) -> Segment {
        Segment {
            start: start.into(),
            end: end.into(),
            bulge,
        }
    }

    /// An arc about a centre: radius (mm), angle of its start from the x axis and sweep (degrees, counter-clockwise
    /// positive, under 360).
    pub fn about(centre: impl Into<Point>, radius: f64, start_deg: f64, sweep_deg: f64) -> Segment {
        let centre = centre.into();
        let at = |angle_deg: f64| {
            let (sin, cos) = sincos_deg(angle_deg);
            centre + Vec2::new(cos, sin) * radius
        };
        Segment::arc(
            at(start_deg),
            at(start_deg + sweep_deg),
            libm::tan(sweep_deg.to_radians() / 4.0),
        )
    }

    /// The arc through three points, or the line if they are in line.
    pub fn through(
        start: impl Into<Point>,
        via: impl Into<Point>,
        end: impl Into<Point>,
    ) -> Segment {
        let (start, via, end) = (start.into(), via.into(), end.into());
        let (to, from) = (via - start, end - via);
        // The tangent of the arc's quarter sweep is that of half the turn at `via`.
        let sum = length(to) * length(from) + dot(to, from);
        let turn = cross(to, from);
        let bulge = if turn == 0.0 { 0.0 } else { turn / sum };
        Segment::arc(start, end, bulge)
    }

    /// Whether it is straight.
    pub fn is_line(&self) -> bool {
        self.bulge == 0.0
    }

    /// The same, walked the other way.
    pub fn reversed(&self) -> Segment {
        Segment::arc(self.end, self.start, -self.bulge)
    }

    /// Length (mm).
    pub fn length(&self) -> f64 {
        let chord = length(self.end - self.start);
        if self.bulge == 0.0 {
            return chord;
        }
        let b = self.bulge.abs();
        chord * (1.0 + b * b) * (libm::atan(b) / b)
    }

    /// Sweep in radians, counter-clockwise positive.
    pub(crate) fn sweep(&self) -> f64 {
        4.0 * libm::atan(self.bulge)
    }

    /// Sweep (degrees), counter-clockwise positive; 0 for a line.
    pub fn sweep_deg(&self) -> f64 {
        self.sweep().to_degrees()
    }

    /// One over the radius (1/mm), positive where it turns counter-clockwise; 0 for a line.
    pub fn curvature(&self) -> f64 {
        let chord = length(self.end - self.start);
        if self.bulge == 0.0 || chord == 0.0 {
            return 0.0;
        }
        4.0 * self.bulge / (chord * (1.0 + self.bulge * self.bulge))
    }

    /// Radius (mm); infinite for a line.
    pub fn radius(&self) -> f64 {
        1.0 / self.curvature().abs()
    }

    /// Centre; none for a line.
    pub fn centre(&self) -> Option<Point> {
        let curvature = self.curvature();
        (curvature != 0.0).then(|| self.start + left(self.start_tangent()) * (1.0 / curvature))
    }

    /// The chord's direction turned by half the sweep, backward for the start and forward for the end.
    fn tangent(&self, turn: f64) -> Vec2 {
        let chord = unit(self.end - self.start);
        let b = turn * self.bulge;
        let scale = 1.0 / (1.0 + b * b);
        let (sin, cos) = (2.0 * b * scale, (1.0 - b * b) * scale);
        chord * cos + left(chord) * sin
    }

    /// Direction at the start, of length 1.
    pub fn start_tangent(&self) -> Vec2 {
        self.tangent(-1.0)
    }

    /// Direction at the end, of length 1.
    pub fn end_tangent(&self) -> Vec2 {
        self.tangent(1.0)
    }

    /// Point and direction at a distance (mm) from the start, which may run past the ends.
    pub fn at(&self, distance: f64) -> (Point, Vec2) {
        let tangent = self.start_tangent();
        let half = distance * self.curvature() / 2.0;
        let (sin, cos) = libm::sincos(half);
        let reach = if half.abs() < 1e-4 {
            1.0 - half * half / 6.0
        } else {
            sin / half
        };
        let chord = tangent * cos + left(tangent) * sin;
        let there = chord * cos + left(chord) * sin;
        (self.start + chord * (distance * reach), there)
    }

    /// The middle.
    pub fn middle(&self) -> Point {
        let chord = self.end - self.start;
        self.start + chord * 0.5 + right(chord) * (self.bulge / 2.0)
    }

    /// The part from one distance to another (mm from the start).
    pub fn part(&self, from: f64, to: f64) -> Segment {
        let bulge = if self.bulge == 0.0 {
            0.0
        } else {
            libm::tan(self.curvature() * (to - from) / 4.0)
        };
        Segment::arc(self.at(from).0, self.at(to).0, bulge)
    }

    /// Its share of the signed area of the ring it belongs to (mm²).
    pub(crate) fn area_share(&self) -> f64 {
        let (a, z) = (self.start.to_vec2(), self.end.to_vec2());
        let chord = z - a;
        let b = self.bulge;
        let b2 = b * b;
        // Area between chord and arc over chord²: exact, and its series where the exact form cancels.
        let cap = if b.abs() < 1e-3 {
            b * (1.0 / 3.0 + b2 / 15.0 - b2 * b2 / 105.0)
        } else {
            ((1.0 + b2) * (1.0 + b2) * libm::atan(b) - b * (1.0 - b2)) / (8.0 * b2)
        };
        cross(a, z) / 2.0 + cap * dot(chord, chord)
    }

    /// An upright box that holds it, soon found: that of its chord and of the chord moved to its middle; of more than half a
    /// circle, that of the whole.
    pub(crate) fn hull(&self) -> Rect {
        let bounds = Rect::from_points(self.start, self.end);
        if self.bulge == 0.0 {
            return bounds;
        }
        if self.bulge.abs() > 1.0 {
            let diameter = 2.0 * self.radius();
            return bounds.inflate(diameter, diameter);
        }
        let rise = right(self.end - self.start) * (self.bulge / 2.0);
        bounds.union(bounds + rise)
    }

    /// The part of its line or circle between two points on it, as far round as it is or less.
    pub(crate) fn between(&self, start: Point, end: Point) -> Segment {
        if self.bulge == 0.0 {
            return Segment::line(start, end);
        }
        if self.bulge.abs() > 1.0 {
            let part = self.part(self.along(start), self.along(end));
            return Segment::arc(start, end, part.bulge);
        }
        // Half the part's sweep has this sine.
        let sin = (self.curvature() * length(end - start) / 2.0).clamp(-1.0, 1.0);
        Segment::arc(start, end, sin / (1.0 + libm::sqrt(1.0 - sin * sin)))
    }

    /// The smallest upright box that holds it.
    pub fn bounds(&self) -> Rect {
        let mut bounds = Rect::from_points(self.start, self.end);
        if self.bulge == 0.0 {
            return bounds;
        }
        let tangent = self.start_tangent();
        let (sweep, span) = (self.sweep().abs(), self.length());
        let way = if self.bulge > 0.0 { 1.0 } else { -1.0 };
        let first = libm::atan2(tangent.y, tangent.x);
        for quarter in 0..4 {
            // Turn until the arc runs along an axis: there it is farthest out.
            let mut turn = way * (f64::from(quarter) * FRAC_PI_2 - first);
            while turn < 0.0 {
                turn += TAU;
            }
            while turn >= TAU {
                turn -= TAU;
            }
            if turn < sweep {
                bounds = bounds.union_pt(self.at(span * turn / sweep).0);
            }
        }
        bounds
    }

    /// Parallel at `distance` to its right (mm), with the normals at its ends given, so that neighbours that share one
    /// meet exactly. An arc that turns to its right about a radius of `distance` or less shrinks to its centre.
    pub(crate) fn parallel_between(&self, distance: f64, first: Vec2, last: Vec2) -> Segment {
        let radius = self.radius();
        if self.bulge < 0.0 && radius <= distance {
            let centre = self.start + right(self.start_tangent()) * radius;
            return Segment::line(centre, centre);
        }
        Segment::arc(
            self.start + first * distance,
            self.end + last * distance,
            self.bulge,
        )
    }

    /// How far `point` lies to the right of the endless line or circle (mm), and the direction in which that grows.
    pub(crate) fn side(&self, point: Point) -> (f64, Vec2) {
        let k = self.curvature();
        let q = point - self.start;
        let normal = left(self.start_tangent());
        let e = k / 2.0 * dot(q, q) - dot(q, normal);
        let root = libm::sqrt((1.0 + 2.0 * k * e).max(0.0));
        (2.0 * e / (1.0 + root), unit(q * k - normal))
    }

    /// Distance from the start along the endless line or circle to `point`, which lies on it (mm).
    pub(crate) fn along(&self, point: Point) -> f64 {
        let q = point - self.start;
        let tangent = self.start_tangent();
        if self.bulge == 0.0 {
            return dot(q, tangent);
        }
        let way = if self.bulge > 0.0 { 1.0 } else { -1.0 };
        let half = libm::atan2(way * cross(tangent, q), dot(tangent, q));
        if half.abs() > FRAC_PI_2 {
            // Over half a circle on; a point just behind the start is almost a whole circle on.
            return 2.0 * half * self.radius();
        }
        let stretch = if half.abs() < 1e-4 {
            1.0 + half * half / 6.0
        } else {
            half / libm::sin(half)
        };
        length(q) * stretch
    }

    /// Distance from `point` to the nearest point of the segment, and where along it that is (mm).
    pub fn nearest(&self, point: Point) -> (f64, f64) {
        let span = self.length();
        let (aside, out) = self.side(point);
        let foot = self.along(point - out * aside);
        let ends = (length(point - self.start), length(point - self.end));
        if foot > 0.0 && foot < span && aside.abs() <= ends.0.min(ends.1) {
            (aside.abs(), foot)
        } else if ends.0 <= ends.1 {
            (ends.0, 0.0)
        } else {
            (ends.1, span)
        }
    }

    /// Adds points after the start, up to and with the end, so that no chord is farther than `tolerance` from the arc.
    pub(crate) fn flatten_into(&self, tolerance: f64, points: &mut Vec<Point>) {
        if self.bulge != 0.0 {
            let parts =
                self.parts(libm::acos((1.0 - tolerance * self.curvature().abs()).max(0.0)) * 2.0);
            let span = self.length();
            points.extend((1..parts).map(|i| self.at(span * f64::from(i) / f64::from(parts)).0));
        }
        points.push(self.end);
    }

    /// Calls `found` with the ends and steering points of cubics that follow the arc within `tolerance` (mm), in order.
    pub(crate) fn as_cubics(&self, tolerance: f64, mut found: impl FnMut([Point; 4])) {
        // A cubic over an arc of angle a, steered 4/3 tan(a/4) of the radius along its tangents, strays outward by
        // r · 4/27 · sin⁶(a/4) / cos²(a/4) at most; cos²(22.5°) is over 0.85.
        let sixth = tolerance / self.radius() * (27.0 / 4.0) * 0.85;
        let largest = (4.0 * libm::cbrt(libm::sqrt(sixth))).min(FRAC_PI_2);
        let parts = self.parts(largest);
        let span = self.length();
        let at = |index: u32| span * f64::from(index) / f64::from(parts);
        let mut start = self.start;
        for part in 0..parts {
            let mut arc = self.part(at(part), at(part + 1));
            arc.start = start;
            if part + 1 == parts {
                arc.end = self.end;
            }
            found(arc.as_cubic());
            start = arc.end;
        }
    }

    /// Ends and steering points of one cubic with the same ends and tangents; near it for a quarter circle or less.
    pub(crate) fn as_cubic(&self) -> [Point; 4] {
        // A third of the chord and a little: by the radius, an arc all but straight would have none.
        let reach = length(self.end - self.start) * (1.0 + self.bulge * self.bulge) / 3.0;
        let first = self.start + self.start_tangent() * reach;
        let second = self.end - self.end_tangent() * reach;
        [self.start, first, second, self.end]
    }

    /// Number of equal parts that each sweep at most `largest` radians; from 1 to 100 000.
    pub(crate) fn parts(&self, largest: f64) -> u32 {
        let parts = libm::ceil(self.sweep().abs() / largest);
        if parts > 1.0 {
            parts.min(1e5) as u32
        } else {
            1
        }
    }
}

/// Sine and cosine of an angle in degrees, exact at whole quarter turns.
pub(crate) fn sincos_deg(angle_deg: f64) -> (f64, f64) {
    let quarters = angle_deg / 90.0;
    if quarters == libm::floor(quarters) && quarters.abs() < 1e9 {
        return match (quarters as i64).rem_euclid(4) {
            0 => (0.0, 1.0),
            1 => (1.0, 0.0),
            2 => (0.0, -1.0),
            _ => (-1.0, 0.0),
        };
    }
    libm::sincos(angle_deg.to_radians())
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq as close;
    use core::f64::consts::PI;

    #[test]
    fn a_quarter_circle_is_measured() {
        for (start, sweep) in [(0.0, 90.0), (30.0, -90.0), (200.0, 270.0), (-10.0, 1e-4)] {
            let arc = Segment::about((7.0, -3.0), 100.0, start, sweep);
            let span = 100.0 * f64::to_radians(sweep).abs();
            close!(arc.length(), span, epsilon = 1e-9);
            close!(arc.radius(), 100.0, epsilon = 1e-4);
            close!(arc.sweep_deg(), sweep, epsilon = 1e-9);
            let (end, tangent) = arc.at(arc.length());
            close!(length(end - arc.end), 0.0, epsilon = 1e-9);
            close!(length(tangent - arc.end_tangent()), 0.0, epsilon = 1e-9);
            let (middle, _) = arc.at(arc.length() / 2.0);
            close!(length(middle - arc.middle()), 0.0, epsilon = 1e-9);
            close!(arc.along(middle), span / 2.0, epsilon = 1e-9);
            let through = Segment::through(arc.start, middle, arc.end);
            close!(through.bulge, arc.bulge, epsilon = 1e-6);
        }
    }

    #[test]
    fn area_of_caps_is_the_textbook_one_and_joins_its_series() {
        // Sector less triangle: r²/2 (θ - sin θ), with the chord through the origin so that it adds nothing.
        for sweep_deg in [0.2_f64, 0.3, 10.0, 90.0, 180.0, 300.0] {
            let arc = Segment::about((0.0, 0.0), 100.0, 0.0, sweep_deg);
            let moved = Segment::arc(Point::ZERO, Point::ZERO + (arc.end - arc.start), arc.bulge);
            let sweep = sweep_deg.to_radians();
            let cap = 5000.0 * (sweep - libm::sin(sweep));
            assert!(
                (moved.area_share() - cap).abs() <= 1e-9 * cap + 2e-12 * 5000.0,
                "{sweep_deg}"
            );
        }
    }

    #[test]
    fn bounds_reach_the_far_side_of_an_arc() {
        let b = Segment::about((0.0, 0.0), 10.0, -60.0, 120.0).bounds();
        close!(b.x1, 10.0, epsilon = 1e-12);
        close!(b.x0, 5.0, epsilon = 1e-12);
        close!(b.y1, 10.0 * libm::sqrt(0.75), epsilon = 1e-12);
        let back = Segment::about((0.0, 0.0), 10.0, 60.0, -120.0).bounds();
        close!(back.x1, 10.0, epsilon = 1e-12);
    }

    #[test]
    fn nearest_point_and_side() {
        let arc = Segment::about((0.0, 0.0), 10.0, 0.0, 90.0);
        let (far, along) = arc.nearest(Point::new(20.0, 20.0));
        close!(far, libm::sqrt(800.0) - 10.0, epsilon = 1e-12);
        close!(along, 10.0 * PI / 4.0, epsilon = 1e-12);
        close!(
            arc.nearest(Point::new(-3.0, -4.0)).0,
            libm::sqrt(185.0),
            epsilon = 1e-12
        );
        // Right of a counter-clockwise arc is outside it.
        assert!(arc.side(Point::new(20.0, 20.0)).0 > 0.0);
        assert!(arc.reversed().side(Point::new(20.0, 20.0)).0 < 0.0);
    }

    #[test]
    fn parallels_keep_the_bulge_and_shrink_to_the_centre() {
        let inside = Segment::about((0.0, 0.0), 10.0, 90.0, -90.0);
        let (first, last) = (right(inside.start_tangent()), right(inside.end_tangent()));
        let parallel = |distance| inside.parallel_between(distance, first, last);
        let near = parallel(4.0);
        close!(near.radius(), 6.0, epsilon = 1e-12);
        assert_eq!(near.bulge, inside.bulge);
        let gone = parallel(12.0);
        assert_eq!(gone.start, gone.end);
        close!(length(gone.start.to_vec2()), 0.0, epsilon = 1e-12);
    }
}
