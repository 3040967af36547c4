//! How two allowances are joined at an outward corner.

use alloc::vec;
use alloc::vec::Vec;
use kurbo::{Point, Vec2};

use super::edge::{Corner, POINT_LIMIT};
use super::vector::{dot, length, unit};

/// One of the two allowances that meet at a corner.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Arm {
    /// Direction of the seam line towards the corner, of length 1.
    pub(crate) along: Vec2,
    /// Direction outward, square to it.
    pub(crate) out: Vec2,
    /// Width of the allowance (mm).
    pub(crate) width: f64,
}

impl Arm {
    /// Where its cut line ends square to the corner.
    pub(crate) fn end(&self, corner: Point) -> Point {
        corner + self.out * self.width
    }
}

/// Points of the cut line between the square end of `this` arm and that of the `next`, at an outward corner.
pub(crate) fn join(at: Point, this: Arm, next: Arm, corner: Corner) -> Vec<Point> {
    let largest = this.width.max(next.width);
    let within = |points: &[Point], limit: f64| {
        points
            .iter()
            .all(|&p| length(p - at) <= limit * largest * (1.0 + 1e-9))
    };
    let turned_round = |mut points: Vec<Point>| {
        points.reverse();
        points
    };
    let special = match corner {
        Corner::Pointed { limit } => return pointed(at, this, next, limit),
        Corner::SquaredToThis => squared(at, this, next),
        Corner::SquaredToNext => turned_round(squared(at, next, this)),
        Corner::MirroredOnNext => mirrored(at, this, next),
        Corner::MirroredOnThis => turned_round(mirrored(at, next, this)),
        _ => return pointed(at, this, next, POINT_LIMIT),
    };
    if within(&special, POINT_LIMIT) {
        special
    } else {
        pointed(at, this, next, POINT_LIMIT)
    }
}

/// The same at an inward corner, where both parallels simply cross and what is past is trimmed: by way of the corner
/// itself. Only where an edge itself is moved, and its parallel would end short of its neighbour, it runs on past it.
pub(crate) fn inward(at: Point, this: Arm, next: Arm, corner: Corner) -> Vec<Point> {
    let (sin, cos) = turn(this, next);
    let runs_on = |arm: Arm, other: Arm| {
        let run = (other.width - arm.width * cos) / sin;
        // Well past, and also where it would just reach: the neighbour may curve away.
        let wanted = run.abs() < 100.0 * arm.width && arm.width > other.width;
        let past = run > -0.5 * arm.width;
        (wanted && past).then(|| arm.end(at) + arm.along * (1.5 * run.max(0.0) + arm.width))
    };
    if corner
        == (Corner::Pointed {
            limit: f64::INFINITY,
        })
    {
        if let Some(past) = runs_on(this, next) {
            return vec![past, at];
        }
        if let Some(past) = runs_on(next, this) {
            return vec![at, past];
        }
    }
    vec![at]
}

/// Sine and cosine of the angle by which the ring turns at the corner.
fn turn(a: Arm, b: Arm) -> (f64, f64) {
    (dot(a.along, b.out), dot(a.out, b.out))
}

fn pointed(at: Point, a: Arm, b: Arm, limit: f64) -> Vec<Point> {
    let (sin, cos) = turn(a, b);
    let (a_end, b_end) = (a.end(at), b.end(at));
    // How far each cut line runs past its square end to the point where both meet.
    let a_run = (b.width - a.width * cos) / sin;
    let b_run = (a.width - b.width * cos) / sin;
    // No limit is asked where an edge itself is moved: the other runs on, well past where both meet, and what it passes is
    // trimmed.
    let past = limit.is_infinite() && a_run.min(b_run) > -100.0 * a.width.max(b.width);
    if past && b_run < 0.0 && b.width > 0.0 {
        return vec![a_end + a.along * (1.5 * a_run + b.width)];
    }
    if past && a_run < 0.0 && a.width > 0.0 {
        return vec![b_end + b.along * (1.5 * b_run + a.width)];
    }
    // Where one allowance is so much wider that the other's cut line runs into its end: a step.
    if b_run < 0.0 {
        return vec![a_end + a.along * (a.width * sin / cos)];
    }
    if a_run < 0.0 {
        return vec![b_end + b.along * (b.width * sin / cos)];
    }
    let point = a_end + a.along * a_run;
    let farthest = limit * a.width.max(b.width);
    let reach = length(point - at);
    if reach <= farthest {
        return vec![point];
    }
    let out = if reach < 1e6 {
        unit(point - at)
    } else {
        unit(a.along + b.along)
    };
    let cut_off = |arm: Arm| {
        let end = arm.end(at);
        end + arm.along * ((farthest - dot(end - at, out)) / dot(arm.along, out))
    };
    vec![cut_off(a), cut_off(b)]
}

/// The allowance of `a` ends square to `a`, where its seam line, run on, reaches the cut line of `b`.
fn squared(at: Point, a: Arm, b: Arm) -> Vec<Point> {
    let (sin, cos) = turn(a, b);
    let inner = at + a.along * (b.width / sin);
    let outer = inner + a.out * a.width;
    if cos > 0.0 {
        // At a blunt corner that point lies beyond the end of b's allowance; the corner in between closes the join.
        vec![outer, inner, at]
    } else {
        vec![outer, inner]
    }
}

/// The cut line of `side` runs on to the line on which the `hem` is folded, and is mirrored about it.
fn mirrored(at: Point, side: Arm, hem: Arm) -> Vec<Point> {
    let (sin, cos) = turn(side, hem);
    let on_fold = side.end(at) - side.along * (side.width * cos / sin);
    let onward = side.along + hem.along * (2.0 * cos);
    vec![on_fold, on_fold + onward * (hem.width / sin)]
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq as close;

    /// Arms of a corner at the origin: one coming along the x axis, the next leaving at an angle to the left.
    fn arms(turn_deg: f64, this: f64, next: f64) -> (Arm, Arm) {
        let (sin, cos) = libm::sincos(turn_deg.to_radians());
        let this = Arm {
            along: Vec2::new(1.0, 0.0),
            out: Vec2::new(0.0, -1.0),
            width: this,
        };
        let next = Arm {
            along: Vec2::new(-cos, -sin),
            out: Vec2::new(sin, -cos),
            width: next,
        };
        (this, next)
    }

    fn joined(turn_deg: f64, this: f64, next: f64, corner: Corner) -> Vec<(f64, f64)> {
        let (a, b) = arms(turn_deg, this, next);
        join(Point::ORIGIN, a, b, corner)
            .iter()
            .map(|p| (p.x, p.y))
            .collect()
    }

    fn assert_points(points: &[(f64, f64)], wanted: &[(f64, f64)]) {
        assert_eq!(points.len(), wanted.len(), "{points:?}");
        for (p, w) in points.iter().zip(wanted) {
            close!(p.0, w.0, epsilon = 1e-9);
            close!(p.1, w.1, epsilon = 1e-9);
        }
    }

    // By hand. Right angle: the lines y = -10 and x = 15 meet at (15, -10).
    #[test]
    fn right_angles() {
        for corner in [
            Corner::default(),
            Corner::SquaredToThis,
            Corner::SquaredToNext,
        ] {
            let points = joined(90.0, 10.0, 15.0, corner);
            assert!(
                points
                    .iter()
                    .any(|p| (p.0 - 15.0).abs() < 1e-9 && (p.1 + 10.0).abs() < 1e-9)
            );
        }
        // The side's cut line x = 15 runs straight down through the hem line to the hem's cut line.
        let hem = joined(90.0, 40.0, 15.0, Corner::MirroredOnThis);
        assert_points(&hem, &[(15.0, -40.0), (15.0, 0.0)]);
    }

    // By hand. Turn 120° (an inner angle of 60°), both 10: the point is 10 / sin 30° = 20 from the corner.
    #[test]
    fn sharp_corners() {
        let point = joined(120.0, 10.0, 10.0, Corner::default());
        assert_points(&point, &[(10.0 * libm::sqrt(3.0), -10.0)]);
        // Cut off at 1.5 allowances: the cut runs square to the direction of the point, (√3/2, -1/2), at 15.
        let off = joined(120.0, 10.0, 10.0, Corner::Pointed { limit: 1.5 });
        assert_eq!(off.len(), 2);
        for (x, y) in &off {
            close!(x * libm::sqrt(0.75) - y * 0.5, 15.0, epsilon = 1e-9);
        }
        close!(off[0].1, -10.0, epsilon = 1e-12);
        // Squared to this: the seam line y = 0 meets the next cut line at 10 / sin 120° = 11.547, there square to it.
        let square = joined(120.0, 10.0, 10.0, Corner::SquaredToThis);
        assert_points(
            &square,
            &[(11.547005383792516, -10.0), (11.547005383792516, 0.0)],
        );
    }

    // By hand. This edge is a hem 30 wide, the next a side at an inner angle of 60° with an allowance of 10. The side's
    // cut line leaves the hem line at x = 10/sin 60° = 11.547; on the piece it leans back by 1/tan 60° = 0.57735 for
    // each 1 of height, so below the hem line its mirror image does the same: at 30, 11.547 - 17.3205 = -5.7735.
    #[test]
    fn a_turned_hem_at_a_leaning_side() {
        let hem = joined(120.0, 30.0, 10.0, Corner::MirroredOnThis);
        assert_points(
            &hem,
            &[(-5.773502691896258, -30.0), (11.547005383792516, 0.0)],
        );
        // The side as this edge, the hem next, is the mirror image of that.
        let other = joined(120.0, 10.0, 30.0, Corner::MirroredOnNext);
        assert_eq!(other.len(), 2);
        // Folding back means: distance from the corner is the same for the mirrored point and the point on the piece.
        close!(
            length(Vec2::from(other[0])),
            length(Vec2::from(hem[1])),
            epsilon = 1e-9
        );
        close!(
            length(Vec2::from(other[1])),
            length(Vec2::from(hem[0])),
            epsilon = 1e-9
        );
    }

    #[test]
    fn unequal_widths_at_a_blunt_corner_make_a_step() {
        // Turn 10°, 10 then 50: the first cut line runs into the end of the second allowance, 10 tan 10° past its own.
        let step = joined(10.0, 10.0, 50.0, Corner::default());
        assert_points(&step, &[(10.0 * libm::tan(10.0_f64.to_radians()), -10.0)]);
        assert_eq!(joined(10.0, 50.0, 10.0, Corner::default()).len(), 1);
    }

    #[test]
    fn needles_and_flat_corners_stay_finite_and_near() {
        let all = [
            Corner::default(),
            Corner::SquaredToThis,
            Corner::SquaredToNext,
            Corner::MirroredOnThis,
            Corner::MirroredOnNext,
        ];
        for corner in all {
            for turn_deg in [1e-7, 1e-3, 1.0, 89.0, 91.0, 179.0, 179.999, 180.0 - 1e-7] {
                for (this, next) in [(10.0, 10.0), (0.0, 10.0), (10.0, 0.0), (40.0, 10.0)] {
                    for (x, y) in joined(turn_deg, this, next, corner) {
                        assert!(
                            libm::hypot(x, y) <= 6.0 * this.max(next),
                            "{corner:?} {turn_deg}"
                        );
                    }
                }
            }
        }
    }
}
