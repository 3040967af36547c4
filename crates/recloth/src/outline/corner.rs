//! How two allowances are joined at an outward corner.

use alloc::vec;
use alloc::vec::Vec;
use arrayvec::ArrayVec;
use kurbo::{Point, Vec2};

use super::cross::crossings;
use super::edge::{Corner, POINT_LIMIT};
use super::mirror::reflection;
use super::segment::Segment;
use super::vector::{dot, length, unit};
use crate::Error;

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

/// Two arms with the cut lines they are the ends of, walked away from the corner, each segment with the index of its part.
pub(crate) struct Corners<'a> {
    pub(crate) at: Point,
    pub(crate) this: (Arm, &'a [(usize, Segment)]),
    pub(crate) next: (Arm, &'a [(usize, Segment)]),
}

/// Where a cut line is left before its end: on this part, at this point.
pub(crate) type Stop = (usize, Point);

/// How the cut line goes round a corner.
#[derive(Clone, Debug, Default)]
pub(crate) struct Joint {
    /// Where the first cut line is left; at its end if nowhere.
    pub(crate) leave: Option<Stop>,
    /// Points between, each with the bulge of the leg that leads to it; 0 to the first.
    pub(crate) path: Vec<(Point, f64)>,
    /// Where the second cut line is met; at its start if nowhere.
    pub(crate) meet: Option<Stop>,
    /// Whether it is by way of the corner itself, an inward one, where the cut lines cross.
    pub(crate) inward: bool,
}

impl Joint {
    /// By way of these points.
    pub(crate) fn straight(points: &[Point]) -> Joint {
        Joint {
            path: points.iter().map(|&point| (point, 0.0)).collect(),
            ..Joint::default()
        }
    }

    pub(crate) fn reversed(self) -> Joint {
        let Joint {
            leave,
            mut path,
            meet,
            inward,
        } = self;
        path.reverse();
        // A leg led to its end; now it leads to its start.
        for index in (1..path.len()).rev() {
            path[index].1 = -path[index - 1].1;
        }
        if let Some(first) = path.first_mut() {
            first.1 = 0.0;
        }
        Joint {
            leave: meet,
            path,
            meet: leave,
            inward,
        }
    }
}

/// One or two points.
pub(crate) type Points = ArrayVec<Point, 2>;

fn one(point: Point) -> Points {
    let mut points = Points::new();
    points.push(point);
    points
}

fn two(first: Point, second: Point) -> Points {
    Points::from([first, second])
}

/// Why a corner cannot be made as asked, and which of the two edges that is about.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Unmade {
    pub(crate) error: Error,
    /// Whether it is about the edge after the corner.
    pub(crate) next: bool,
}

/// Corners that turn by less than this (as a sine) run on smoothly, and are joined as pointed ones whatever is asked: 0.1°.
pub(crate) const SMOOTH: f64 = 0.001_745;
/// Longer than any piece (mm).
const FAR: f64 = 1e6;

/// The corner as asked.
///
/// # Errors
/// `corner_deg` (the inner angle of the corner), `distance`, `radius` or `allowance`, with what would do.
pub(crate) fn treated(corners: &Corners, corner: Corner) -> Result<Joint, Unmade> {
    let Corners { at, this, next } = *corners;
    let (a, b) = (this.0, next.0);
    let of_this = |error: Error| Unmade { error, next: false };
    match corner {
        Corner::Pointed { limit } => Ok(Joint::straight(&pointed(at, a, b, limit))),
        Corner::SquaredToThis => squared(at, a, next).map_err(of_this),
        Corner::SquaredToNext => squared(at, b, this).map(Joint::reversed).map_err(of_this),
        Corner::SteppedOnThis => stepped(at, a, b).map_err(of_this),
        Corner::SteppedOnNext => stepped(at, b, a).map(Joint::reversed).map_err(of_this),
        Corner::Trimmed { distance } => trimmed(at, this, next, distance).map_err(of_this),
        Corner::Rounded { radius } => rounded(at, a, b, radius).map_err(of_this),
        Corner::MirroredOnNext => mirrored(at, this, next, true),
        Corner::MirroredOnThis => mirrored(at, next, this, false).map(Joint::reversed),
    }
}

/// The same at an inward corner, where both parallels simply cross and what is past is trimmed: by way of the corner
/// itself. Only where an edge itself is moved, and its parallel would end short of its neighbour, it runs on past it.
pub(crate) fn inward(at: Point, this: Arm, next: Arm, corner: Corner) -> Points {
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
            return two(past, at);
        }
        if let Some(past) = runs_on(next, this) {
            return two(at, past);
        }
    }
    one(at)
}

/// Sine and cosine of the angle by which the ring turns at the corner.
fn turn(a: Arm, b: Arm) -> (f64, f64) {
    (dot(a.along, b.out), dot(a.out, b.out))
}

/// The error of a corner whose inner angle must have a sine of at least `least`, on either side of a right angle or, where
/// `blunt`, only beyond it.
fn too_sharp(a: Arm, b: Arm, least: f64, blunt: bool) -> Error {
    let (sin, cos) = turn(a, b);
    let inner_deg = libm::atan2(sin, -cos).to_degrees();
    let limit_deg = libm::asin(least.min(1.0)).to_degrees();
    let (min, max) = if blunt {
        (180.0 - limit_deg, 180.0)
    } else {
        (limit_deg, 180.0 - limit_deg)
    };
    Error::no_solution("corner_deg", inner_deg, min, max)
}

/// Both cut lines run on until they meet.
pub(crate) fn pointed(at: Point, a: Arm, b: Arm, limit: f64) -> Points {
    let (sin, cos) = turn(a, b);
    let (a_end, b_end) = (a.end(at), b.end(at));
    // How far each cut line runs past its square end to the point where both meet.
    let a_run = (b.width - a.width * cos) / sin;
    let b_run = (a.width - b.width * cos) / sin;
    // No limit is asked where an edge itself is moved: the other runs on, well past where both meet, and what it passes is
    // trimmed.
    let past = limit.is_infinite() && a_run.min(b_run) > -100.0 * a.width.max(b.width);
    if past && b_run < 0.0 && b.width > 0.0 {
        return one(a_end + a.along * (1.5 * a_run + b.width));
    }
    if past && a_run < 0.0 && a.width > 0.0 {
        return one(b_end + b.along * (1.5 * b_run + a.width));
    }
    // Where one allowance is so much wider that the other's cut line runs into its end: a step.
    if b_run < 0.0 {
        return one(a_end + a.along * (a.width * sin / cos));
    }
    if a_run < 0.0 {
        return one(b_end + b.along * (b.width * sin / cos));
    }
    let point = a_end + a.along * a_run;
    let farthest = limit * a.width.max(b.width);
    let reach = length(point - at);
    if reach <= farthest {
        return one(point);
    }
    let out = if reach < FAR {
        unit(point - at)
    } else {
        unit(a.along + b.along)
    };
    let cut_off = |arm: Arm| {
        let end = arm.end(at);
        end + arm.along * ((farthest - dot(end - at, out)) / dot(arm.along, out))
    };
    two(cut_off(a), cut_off(b))
}

/// Where a line first meets a cut line that is walked away from the corner.
fn met(line: &Segment, cut_line: &[(usize, Segment)]) -> Option<Stop> {
    cut_line.iter().find_map(|&(part, segment)| {
        let mut first: Option<(f64, Point)> = None;
        crossings(&segment, line, |point, along, _| {
            if first.is_none_or(|(least, _)| along < least) {
                first = Some((along, point));
            }
        });
        first.map(|(_, point)| (part, point))
    })
}

/// At a blunt corner the cut line of `b` is met on the line of `a`, run on, beyond which it has no business: where `a` lies on a
/// fold, or has no allowance. None at a sharp one, where it runs on, and where it ends before.
pub(crate) fn ended_on(at: Point, a: Arm, b: Arm, b_line: &[(usize, Segment)]) -> Option<Joint> {
    let (sin, cos) = turn(a, b);
    if cos <= 1e-12 || b.width <= 0.0 {
        return None;
    }
    // On a straight line they meet before this.
    let ray = Segment::line(at, at + a.along * (2.0 * b.width / sin));
    let stop = met(&ray, b_line)?;
    Some(Joint {
        path: vec![(stop.1, 0.0)],
        meet: Some(stop),
        ..Joint::default()
    })
}

/// The allowance of `a` ends square to `a`, where its seam line, run on, reaches the cut line of `b`.
fn squared(at: Point, a: Arm, b: (Arm, &[(usize, Segment)])) -> Result<Joint, Error> {
    let (b, b_line) = b;
    let (sin, cos) = turn(a, b);
    let largest = POINT_LIMIT * a.width.max(b.width);
    let run = b.width / sin;
    let least = b.width / libm::sqrt(largest * largest - a.width * a.width);
    if !(run.is_finite() && libm::hypot(run, a.width) <= largest * (1.0 + 1e-9)) {
        return Err(too_sharp(a, b, least, false));
    }
    if let Some(joint) = ended_on(at, a, b, b_line).filter(|_| a.width <= 0.0) {
        return Ok(joint);
    }
    let mut inner = at + a.along * run;
    // At a blunt corner that is beyond the end of b's allowance: on its cut line, wherever that runs.
    let blunt = cos > 1e-12 && b.width > 0.0;
    if blunt {
        let ray = Segment::line(at, at + a.along * (2.0 * largest));
        let short =
            || Error::no_solution("corner_deg", libm::atan2(sin, -cos).to_degrees(), 0.0, 90.0);
        inner = met(&ray, b_line).ok_or_else(short)?.1;
    }
    let outer = inner + a.out * a.width;
    // At a blunt one the corner in between closes the join.
    let points = [outer, inner, at];
    Ok(Joint::straight(&points[..if blunt { 3 } else { 2 }]))
}

/// The allowance of `a` ends square at the corner; the cut line of `b` runs on until it meets that end.
fn stepped(at: Point, a: Arm, b: Arm) -> Result<Joint, Error> {
    let (_, cos) = turn(a, b);
    let largest = POINT_LIMIT * a.width.max(b.width);
    let run = if b.width > 0.0 { b.width / cos } else { 0.0 };
    if !(cos > 1e-9 && run <= largest * (1.0 + 1e-9)) {
        // The cosine of the turn must be at least this.
        let least = b.width / largest;
        return Err(too_sharp(a, b, libm::sqrt(1.0 - least * least), true));
    }
    Ok(Joint::straight(&[at + a.out * run]))
}

/// Both cut lines run on, or are left, at a line square across the corner.
fn trimmed(
    at: Point,
    a: (Arm, &[(usize, Segment)]),
    b: (Arm, &[(usize, Segment)]),
    distance: f64,
) -> Result<Joint, Error> {
    let (sin, cos) = turn(a.0, b.0);
    let out = unit(a.0.out + b.0.out);
    let a_run = (b.0.width - a.0.width * cos) / sin;
    let b_run = (a.0.width - b.0.width * cos) / sin;
    let point = a.0.end(at) + a.0.along * a_run;
    let most = dot(point - at, out);
    if !(a_run >= 0.0 && b_run >= 0.0 && distance <= most) {
        let most = if a_run.min(b_run) >= 0.0 {
            most
        } else {
            f64::NAN
        };
        return Err(Error::no_solution("distance", distance, f64::NAN, most));
    }
    // Where an edge is too short for the line to meet its allowance, what would reach its end.
    let mut least: f64 = 0.0;
    // Long enough to meet any edge where it can, and no longer, which would cost digits.
    let far = |line: &[(usize, Segment)]| {
        let ends = line.iter().map(|(_, segment)| length(segment.end - at));
        ends.fold(length(point - at), f64::max)
    };
    let across = Vec2::new(-out.y, out.x) * far(a.1).max(far(b.1));
    let line = Segment::line(at + out * distance - across, at + out * distance + across);
    let mut cut_off = |(arm, cut_line): (Arm, &[(usize, Segment)])| {
        let end = arm.end(at);
        let run = (distance - dot(end - at, out)) / dot(arm.along, out);
        if run >= 0.0 {
            return (None, end + arm.along * run);
        }
        let stop = met(&line, cut_line);
        if let (None, Some((_, last))) = (stop, cut_line.last()) {
            least = least.max(dot(last.end - at, out));
        }
        (stop, stop.map_or(end, |(_, point)| point))
    };
    let ((leave, first), (meet, second)) = (cut_off(a), cut_off(b));
    if least > 0.0 {
        return Err(Error::no_solution("distance", distance, least, most));
    }
    Ok(Joint {
        leave,
        meet,
        ..Joint::straight(&[first, second])
    })
}

/// An arc between both cut lines, which it meets at or past their square ends, so that it takes nothing from them.
fn rounded(at: Point, a: Arm, b: Arm, radius: f64) -> Result<Joint, Error> {
    let (sin, cos) = turn(a, b);
    let run = |arm: Arm, other: Arm, radius: f64| {
        ((other.width - radius) - (arm.width - radius) * cos) / sin
    };
    let most = |arm: Arm, other: Arm| (other.width - arm.width * cos) / (1.0 - cos);
    let most = most(a, b).min(most(b, a));
    let largest = POINT_LIMIT * a.width.max(b.width);
    let reach = |radius: f64| {
        let centre = a.out * (a.width - radius) + a.along * run(a, b, radius);
        length(centre) + radius
    };
    // Written so that what is no number is refused too; the largest radius itself is let through.
    let within = radius <= most + 1e-9;
    if !(within && reach(radius) <= largest * (1.0 + 1e-9)) {
        let (mut low, mut high) = (0.0, most);
        for _ in 0..50 {
            let middle = (low + high) / 2.0;
            if reach(middle) <= largest {
                high = middle;
            } else {
                low = middle;
            }
        }
        let (least, most) = if most >= 0.0 {
            (if reach(0.0) <= largest { 0.0 } else { high }, most)
        } else {
            (f64::NAN, f64::NAN)
        };
        return Err(Error::no_solution("radius", radius, least, most));
    }
    let first = a.end(at) + a.along * run(a, b, radius).max(0.0);
    let second = b.end(at) + b.along * run(b, a, radius).max(0.0);
    // The tangent of a quarter of the turn, from that of its half.
    let half = sin / (1.0 + cos);
    Ok(Joint {
        path: vec![
            (first, 0.0),
            (second, half / (1.0 + libm::sqrt(1.0 + half * half))),
        ],
        ..Joint::default()
    })
}

/// The cut line of `side` runs on, or is left, at the line on which the `hem` is folded; from there its mirror image runs to
/// the cut line of the hem. `hem_is_next` where the hem comes after the corner.
fn mirrored(
    at: Point,
    side: (Arm, &[(usize, Segment)]),
    hem: (Arm, &[(usize, Segment)]),
    hem_is_next: bool,
) -> Result<Joint, Unmade> {
    let ((side, side_line), (hem, hem_line)) = (side, hem);
    let (sin, cos) = turn(side, hem);
    let largest = POINT_LIMIT * side.width.max(hem.width);
    let of = |error: Error, hem: bool| Unmade {
        error,
        next: hem == hem_is_next,
    };
    // Both ends of the mirror image of a straight side lie within the limit from this sine on.
    let least = (side.width + hem.width) / libm::sqrt(largest * largest - hem.width * hem.width);
    let sharp = || Unmade {
        error: too_sharp(side, hem, least, false),
        next: false,
    };
    let near = side.width / sin <= largest;
    if !near {
        return Err(sharp());
    }
    let mut leave = None;
    let mut walked: Vec<Segment> = Vec::new();
    let mut rest = side_line;
    if cos > 1e-12 && side.width > 0.0 {
        let ray = Segment::line(at, at + hem.along * (2.0 * largest));
        let stop = met(&ray, side_line).ok_or_else(sharp)?;
        let index = side_line.iter().position(|(part, _)| *part == stop.0);
        let index = index.unwrap_or(0);
        let segment = side_line[index].1;
        let from = segment.along(stop.1);
        let mut part = segment.part(from, segment.length());
        (part.start, part.end) = (stop.1, segment.end);
        walked.push(part);
        rest = &side_line[index + 1..];
        leave = Some(stop);
    } else {
        let end = side.end(at);
        let on_fold = end - side.along * (side.width * cos / sin);
        let mut run = Segment::line(on_fold, end);
        // Straight edges run on in one line.
        if let Some((_, first)) = rest.first().filter(|(_, first)| first.is_line()) {
            run.end = first.end;
            rest = &rest[1..];
        }
        walked.push(run);
    }
    walked.extend(rest.iter().map(|(_, segment)| *segment));
    let mirror = reflection(at, at + hem.along);
    let on_hem = Segment::line(hem.end(at), hem.end(at) + hem.along * (2.0 * largest));
    let mut path = Vec::new();
    let mut deepest: f64 = 0.0;
    for segment in walked {
        let image = Segment::arc(mirror * segment.start, mirror * segment.end, -segment.bulge);
        if path.is_empty() {
            path.push((image.start, 0.0));
        }
        // The first place on the mirror image where it meets the hem's cut line, or that line run on.
        let mut first: Option<(f64, Point, Option<usize>)> = None;
        let ends = hem_line.iter().map(|&(part, line)| (Some(part), line));
        for (part, line) in ends.chain([(None, on_hem)]) {
            crossings(&image, &line, |point, along, _| {
                if first.is_none_or(|(least, ..)| along < least) {
                    first = Some((along, point, part));
                }
            });
        }
        let Some((along, point, part)) = first else {
            if length(image.end - image.start) > 0.0 {
                path.push((image.end, image.bulge));
            }
            deepest = deepest.max(dot(image.end - at, hem.out));
            continue;
        };
        path.push((point, image.part(0.0, along).bulge));
        let near = path
            .iter()
            .all(|&(point, _)| length(point - at) <= largest * (1.0 + 1e-9));
        let joint = Joint {
            leave,
            path,
            meet: part.map(|part| (part, point)),
            inward: false,
        };
        return if near { Ok(joint) } else { Err(sharp()) };
    }
    // The side is too short for its mirror image to reach across the hem.
    let error = Error::no_solution("allowance", hem.width, f64::NAN, deepest);
    Err(of(error, true))
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
        let joint = made(turn_deg, this, next, corner).expect("a corner");
        joint.path.iter().map(|(p, _)| (p.x, p.y)).collect()
    }

    /// A corner of two straight edges 200 long.
    fn made(turn_deg: f64, this: f64, next: f64, corner: Corner) -> Result<Joint, Unmade> {
        let (a, b) = arms(turn_deg, this, next);
        let line = |arm: Arm| {
            let end = arm.end(Point::ORIGIN);
            [(0, Segment::line(end, end - arm.along * 200.0))]
        };
        let (this, next) = (line(a), line(b));
        let corners = Corners {
            at: Point::ORIGIN,
            this: (a, &this),
            next: (b, &next),
        };
        treated(&corners, corner)
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
    fn needles_and_flat_corners_are_near_or_refused_with_what_would_do() {
        let all = [
            Corner::default(),
            Corner::SquaredToThis,
            Corner::SquaredToNext,
            Corner::MirroredOnThis,
            Corner::MirroredOnNext,
            Corner::SteppedOnThis,
            Corner::SteppedOnNext,
            Corner::Trimmed { distance: 12.0 },
            Corner::Rounded { radius: 5.0 },
        ];
        for corner in all {
            for turn_deg in [1e-7, 1e-3, 1.0, 89.0, 91.0, 179.0, 179.999, 180.0 - 1e-7] {
                for (this, next) in [(10.0, 10.0), (0.0, 10.0), (10.0, 0.0), (40.0, 10.0)] {
                    let joint = match made(turn_deg, this, next, corner) {
                        Ok(joint) => joint,
                        Err(Unmade { error, .. }) => {
                            assert_ne!(corner, Corner::default());
                            let out = |bound: f64, sign: f64| {
                                bound.is_nan() || sign * (error.value() - bound) < 1e-9
                            };
                            let would_do = out(error.min(), -1.0) && out(error.max(), 1.0);
                            let none = error.min().is_nan() && error.max().is_nan();
                            assert!(!would_do || none, "{corner:?} {turn_deg}: {error}");
                            continue;
                        }
                    };
                    for (point, _) in joint.path {
                        let far = length(point.to_vec2());
                        assert!(far <= 6.0 * this.max(next), "{corner:?} {turn_deg}: {far}");
                    }
                }
            }
        }
    }

    fn refused(turn_deg: f64, this: f64, next: f64, corner: Corner) -> (&'static str, f64, f64) {
        let error = made(turn_deg, this, next, corner)
            .expect_err("no corner")
            .error;
        (error.argument(), error.min(), error.max())
    }

    // By hand. An extension 40 wide ends where the edge turns by 30°: the other's cut line, at 10, meets its end 10 / cos 30°
    // = 11.547 from the corner. At a right angle it runs beside that end and never meets it.
    #[test]
    fn an_extension_that_ends_early_is_stepped() {
        let step = joined(30.0, 40.0, 10.0, Corner::SteppedOnThis);
        assert_points(&step, &[(0.0, -11.547005383792516)]);
        // As the next edge's: its end runs out along (sin 30°, -cos 30°).
        let step = joined(30.0, 10.0, 40.0, Corner::SteppedOnNext);
        assert_points(&step, &[(5.773502691896258, -10.0)]);
        // Within 4 of the larger allowance the other's must meet the end: 10 / cos of the turn at most 160, so the inner
        // angle at least 90° + asin (10 / 160) = 93.583°.
        let (argument, min, max) = refused(90.0, 40.0, 10.0, Corner::SteppedOnThis);
        assert_eq!((argument, max), ("corner_deg", 180.0));
        close!(min, 93.583_321_69, epsilon = 1e-6);
        assert_eq!(joined(86.3, 40.0, 10.0, Corner::SteppedOnThis).len(), 1);
    }

    // By hand. A right angle with 10 and 10: its point is 14.142 from the corner. Cut across at 10, the line x - y = 14.142
    // meets y = -10 at x = 4.142. At 5 it takes from the allowances: x - y = 7.071 meets y = -10 at x = -2.929.
    #[test]
    fn a_corner_trimmed_square_across() {
        let off = joined(90.0, 10.0, 10.0, Corner::Trimmed { distance: 10.0 });
        let r = 10.0 * core::f64::consts::SQRT_2 - 10.0;
        assert_points(&off, &[(r, -10.0), (10.0, -r)]);
        let taken = made(90.0, 10.0, 10.0, Corner::Trimmed { distance: 5.0 }).expect("a corner");
        let x = 10.0 - 5.0 * core::f64::consts::SQRT_2;
        assert_eq!(taken.path.len(), 2);
        close!(taken.path[0].0.x, -x, epsilon = 1e-9);
        close!(taken.path[1].0.y, x, epsilon = 1e-9);
        assert!(taken.leave.is_some() && taken.meet.is_some());
        // Nothing to trim beyond the point.
        let (argument, _, max) = refused(90.0, 10.0, 10.0, Corner::Trimmed { distance: 15.0 });
        assert_eq!(argument, "distance");
        close!(max, 10.0 * core::f64::consts::SQRT_2, epsilon = 1e-9);
    }

    // By hand. A right angle with 10 and 15: the point is (15, -10). With a radius of 8 the arc touches y = -10 at x = 7 and
    // x = 15 at y = -2. Rounder than 10 it would take from the second allowance.
    #[test]
    fn a_rounded_corner_touches_both_cut_lines() {
        let round = made(90.0, 10.0, 15.0, Corner::Rounded { radius: 8.0 }).expect("a corner");
        let points: Vec<(f64, f64)> = round.path.iter().map(|(p, _)| (p.x, p.y)).collect();
        assert_points(&points, &[(7.0, -10.0), (15.0, -2.0)]);
        let arc = Segment::arc(round.path[0].0, round.path[1].0, round.path[1].1);
        close!(arc.radius(), 8.0, epsilon = 1e-12);
        assert_eq!(
            refused(90.0, 10.0, 15.0, Corner::Rounded { radius: 11.0 }).0,
            "radius"
        );
        close!(
            refused(90.0, 10.0, 15.0, Corner::Rounded { radius: 11.0 }).2,
            10.0,
            epsilon = 1e-9
        );
        // Round about the corner itself, at any angle: radius and allowances alike.
        for turn_deg in [10.0, 90.0, 170.0, 179.999] {
            let round = made(turn_deg, 10.0, 10.0, Corner::Rounded { radius: 10.0 });
            for (point, _) in round.expect("a corner").path {
                close!(length(point.to_vec2()), 10.0, epsilon = 1e-9);
            }
        }
        // At an inner angle of 10° a radius of 5 would reach 5 / sin 5° + 5 = 62.4, past 40; by hand r of at least
        // (10 / sin 5° - 40) / (1 / sin 5° - 1) = 7.136.
        let (_, min, max) = refused(170.0, 10.0, 10.0, Corner::Rounded { radius: 5.0 });
        let inner = 1.0 / libm::sin(5.0_f64.to_radians());
        close!(min, (10.0 * inner - 40.0) / (inner - 1.0), epsilon = 1e-6);
        close!(max, 10.0, epsilon = 1e-9);
    }

    // By hand. Squared within 4 allowances of 10: 10 / sin of the inner angle and 10 make at most 40, so its sine is at least
    // 1 / √15: from 14.96° to 165.04°.
    #[test]
    fn what_is_too_sharp_or_too_flat_says_what_would_do() {
        for turn_deg in [170.0, 10.0] {
            let (argument, min, max) = refused(turn_deg, 10.0, 10.0, Corner::SquaredToThis);
            assert_eq!(argument, "corner_deg");
            close!(min, 14.963_217, epsilon = 1e-6);
            close!(max, 180.0 - 14.963_217, epsilon = 1e-6);
        }
        assert!(made(165.0, 10.0, 10.0, Corner::SquaredToThis).is_ok());
        assert!(made(15.0, 10.0, 10.0, Corner::SquaredToNext).is_ok());
    }

    // By hand. A facing 60 deep folded at an edge that a neck of radius 80 meets square, its allowance 10: the neck's cut line
    // has radius 70, and so has its mirror image. At the facing's edge, 60 past the fold, it stands at 70 less the rise
    // 70 - √(70² - 60²) = 33.944.
    #[test]
    fn a_folded_facing_has_the_mirrored_curve_of_the_neck() {
        let fold = Arm {
            along: Vec2::new(0.0, 1.0),
            out: Vec2::new(1.0, 0.0),
            width: 60.0,
        };
        let neck = Arm {
            along: Vec2::new(1.0, 0.0),
            out: Vec2::new(0.0, 1.0),
            width: 10.0,
        };
        let fold_line = [(0, Segment::line((60.0, 0.0), (60.0, -300.0)))];
        let neck_line = [(1, Segment::about((0.0, 80.0), 70.0, 270.0, -90.0))];
        let corners = Corners {
            at: Point::ORIGIN,
            this: (fold, &fold_line),
            next: (neck, &neck_line),
        };
        let joint = treated(&corners, Corner::MirroredOnThis).expect("a corner");
        let top = joint.path[0].0;
        close!(top.x, 60.0, epsilon = 1e-9);
        close!(
            top.y,
            80.0 - libm::sqrt(70.0 * 70.0 - 60.0 * 60.0),
            epsilon = 1e-9
        );
        close!(joint.path[joint.path.len() - 1].0.y, 10.0, epsilon = 1e-9);
        let arc = Segment::arc(joint.path[0].0, joint.path[1].0, joint.path[1].1);
        close!(arc.radius(), 70.0, epsilon = 1e-9);
        // A facing deeper than the neck is wide cannot be mirrored so: 70 is the most.
        let deep = [(0, Segment::line((75.0, 0.0), (75.0, -300.0)))];
        let corners = Corners {
            this: (
                Arm {
                    width: 75.0,
                    ..fold
                },
                &deep,
            ),
            ..corners
        };
        let Unmade { error, next } = treated(&corners, Corner::MirroredOnThis).expect_err("deep");
        assert_eq!((error.argument(), next), ("allowance", false));
        close!(error.max(), 70.0, epsilon = 1e-9);
    }
}
