//! Where a drawing has ink: curves flattened, and what touches a rectangle.

use kurbo::{BezPath, ParamCurve, PathEl, PathSeg, Point, Rect};

use crate::{Pen, Shape};

/// How far a flattened curve may lie from the true one (mm).
const TOLERANCE: f64 = 0.01;

/// The path as straight lines: one list of points a sub-path, a closed one ending where it began.
///
/// Finite coordinates are needed: [`Drawing::check`](crate::Drawing::check).
pub(crate) fn flatten(path: &BezPath) -> Vec<Vec<Point>> {
    let mut lines: Vec<Vec<Point>> = Vec::new();
    let mut start = Point::ZERO;
    let mut at = Point::ZERO;
    for element in path.elements() {
        let segment = match *element {
            PathEl::MoveTo(point) => {
                lines.push(vec![point]);
                (start, at) = (point, point);
                continue;
            }
            PathEl::LineTo(end) => PathSeg::Line(kurbo::Line::new(at, end)),
            PathEl::QuadTo(a, end) => PathSeg::Quad(kurbo::QuadBez::new(at, a, end)),
            PathEl::CurveTo(a, b, end) => PathSeg::Cubic(kurbo::CubicBez::new(at, a, b, end)),
            PathEl::ClosePath => PathSeg::Line(kurbo::Line::new(at, start)),
        };
        if lines.is_empty() || matches!(lines.last(), Some(line) if line.is_empty()) {
            lines.push(vec![at]);
        }
        if let Some(line) = lines.last_mut() {
            let steps = steps(&segment);
            line.extend((1..steps).map(|i| segment.eval(f64::from(i) / f64::from(steps))));
            line.push(segment.end());
        }
        at = segment.end();
        if matches!(element, PathEl::ClosePath) {
            // What follows a close without a move begins a new sub-path at the start of this one.
            lines.push(Vec::new());
        }
    }
    lines.retain(|line| !line.is_empty());
    lines
}

/// Into how many pieces of equal parameter to cut a segment: a chord of a curve lies within `h²/8 · max |B″|` of it.
fn steps(segment: &PathSeg) -> u32 {
    let bend = match segment {
        PathSeg::Line(_) => return 1,
        PathSeg::Quad(q) => 2.0 * length(q.p0.to_vec2() - q.p1.to_vec2() * 2.0 + q.p2.to_vec2()),
        PathSeg::Cubic(c) => {
            let first = length(c.p0.to_vec2() - c.p1.to_vec2() * 2.0 + c.p2.to_vec2());
            let second = length(c.p1.to_vec2() - c.p2.to_vec2() * 2.0 + c.p3.to_vec2());
            6.0 * first.max(second)
        }
    };
    (bend / (8.0 * TOLERANCE)).sqrt().ceil().clamp(1.0, 2000.0) as u32
}

fn length(v: kurbo::Vec2) -> f64 {
    libm::hypot(v.x, v.y)
}

/// The least upright rectangle round a path drawn with a line `2 · half` wide.
pub(crate) fn bounds_of(path: &BezPath, half: f64) -> Option<Rect> {
    let curved = path
        .elements()
        .iter()
        .any(|element| matches!(element, PathEl::QuadTo(..) | PathEl::CurveTo(..)));
    let room = half + if curved { TOLERANCE } else { 0.0 };
    let mut points = flatten(path).into_iter().flatten();
    let first = points.next()?;
    let bounds = points.fold(Rect::from_points(first, first), |rect, point| {
        rect.union_pt(point)
    });
    Some(bounds.inflate(room, room))
}

/// What a drawing inks, as straight lines and filled outlines.
#[derive(Debug, Default)]
pub(crate) struct Ink {
    /// Lines, with half their width.
    lines: Vec<(Vec<Point>, f64)>,
    /// Areas and boxes of labels, each a set of outlines (even-odd rule).
    areas: Vec<Vec<Vec<Point>>>,
    /// Outlines that will be cut out of the paper.
    cut: Vec<Vec<Vec<Point>>>,
}

impl Ink {
    /// The ink of shapes.
    pub(crate) fn of(shapes: &[Shape]) -> Ink {
        let mut ink = Ink::default();
        shapes.iter().for_each(|shape| ink.add(shape));
        ink
    }

    fn add(&mut self, shape: &Shape) {
        match shape {
            Shape::Line { pen, path } => {
                let lines = flatten(path);
                if *pen == Pen::Cut {
                    self.cut.push(lines.clone());
                }
                let half = pen.width() / 2.0;
                self.lines
                    .extend(lines.into_iter().map(|line| (line, half)));
            }
            Shape::Area { path, .. } => self.areas.push(flatten(path)),
            Shape::Label(label) if label.text.is_empty() => {}
            Shape::Label(label) => self.areas.push(vec![label.corners().to_vec()]),
            Shape::Group(group) => group.shapes.iter().for_each(|shape| self.add(shape)),
        }
    }

    /// Whether any ink is in the rectangle.
    pub(crate) fn touches(&self, rect: Rect) -> bool {
        let lines = |line: &[Point], half: f64| {
            let room = rect.inflate(half, half);
            match line {
                [point] => room.contains(*point),
                _ => line.windows(2).any(|ends| crosses(ends[0], ends[1], room)),
            }
        };
        self.lines.iter().any(|(line, half)| lines(line, *half))
            || self.areas.iter().any(|area| covers(area, rect))
    }

    /// Whether the rectangle has part of the paper that will be cut out: it holds the piece together even if nothing is
    /// drawn on it.
    pub(crate) fn holds(&self, rect: Rect) -> bool {
        self.cut.iter().any(|area| covers(area, rect))
    }
}

/// Whether an area (even-odd rule) has a part in the rectangle.
fn covers(area: &[Vec<Point>], rect: Rect) -> bool {
    edges(area).any(|(from, to)| crosses(from, to, rect)) || inside(area, rect.center())
}

/// The edges of outlines, each closed.
pub(crate) fn edges(area: &[Vec<Point>]) -> impl Iterator<Item = (Point, Point)> {
    area.iter().flat_map(|line| {
        let next = line.iter().cycle().skip(1);
        line.iter().copied().zip(next.copied())
    })
}

/// Whether a point lies inside outlines (even-odd rule).
pub(crate) fn inside(area: &[Vec<Point>], point: Point) -> bool {
    edges(area)
        .filter(|(from, to)| (from.y > point.y) != (to.y > point.y))
        .filter(|(from, to)| {
            let across = from.x + (point.y - from.y) / (to.y - from.y) * (to.x - from.x);
            across > point.x
        })
        .count()
        % 2
        == 1
}

/// Whether a straight line has a part in the rectangle: cut to each side in turn, something is left.
pub(crate) fn crosses(from: Point, to: Point, rect: Rect) -> bool {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let (mut enter, mut leave) = (0.0_f64, 1.0_f64);
    for (run, room) in [
        (-dx, from.x - rect.x0),
        (dx, rect.x1 - from.x),
        (-dy, from.y - rect.y0),
        (dy, rect.y1 - from.y),
    ] {
        if run == 0.0 {
            if room < 0.0 {
                return false;
            }
        } else if run < 0.0 {
            enter = enter.max(room / run);
        } else {
            leave = leave.min(room / run);
        }
    }
    enter <= leave
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Drawing;

    fn rect(x0: f64, y0: f64, x1: f64, y1: f64) -> Rect {
        Rect::new(x0, y0, x1, y1)
    }

    #[test]
    fn flattened_curves_stay_within_the_tolerance() {
        let mut path = BezPath::new();
        path.move_to((0.0, 0.0));
        path.curve_to((0.0, 300.0), (400.0, 300.0), (400.0, 0.0));
        path.quad_to((200.0, -300.0), (0.0, 0.0));
        path.close_path();
        let lines = flatten(&path);
        assert_eq!(lines.len(), 1);
        let cubic = kurbo::CubicBez::new((0.0, 0.0), (0.0, 300.0), (400.0, 300.0), (400.0, 0.0));
        for i in 0..=1000 {
            let point = cubic.eval(f64::from(i) / 1000.0);
            let near = lines[0]
                .windows(2)
                .map(|ends| {
                    let (run, to) = (ends[1] - ends[0], point - ends[0]);
                    let t = (to.dot(run) / run.dot(run)).clamp(0.0, 1.0);
                    length(to - run * t)
                })
                .fold(f64::INFINITY, f64::min);
            assert!(near <= TOLERANCE, "{near}");
        }
    }

    #[test]
    fn a_close_without_a_move_starts_again_at_the_start() {
        let mut path = BezPath::new();
        path.move_to((1.0, 2.0));
        path.line_to((5.0, 2.0));
        path.close_path();
        path.line_to((1.0, 9.0));
        let ends: Vec<Point> = flatten(&path)[1].clone();
        assert_eq!(ends, [Point::new(1.0, 2.0), Point::new(1.0, 9.0)]);
    }

    #[test]
    fn ink_is_found_where_it_is() {
        let mut drawing = Drawing::new("");
        let square = [(0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0)].map(Point::from);
        drawing.polygon(Pen::Cut, &square);
        let ink = Ink::of(&drawing.shapes);
        assert!(ink.touches(rect(-5.0, 40.0, 5.0, 60.0)));
        assert!(
            ink.touches(rect(100.2, 40.0, 110.0, 60.0)),
            "half the line's width"
        );
        assert!(!ink.touches(rect(100.3, 40.0, 110.0, 60.0)));
        assert!(!ink.touches(rect(40.0, 40.0, 60.0, 60.0)));
        assert!(ink.holds(rect(40.0, 40.0, 60.0, 60.0)));
        assert!(!ink.holds(rect(140.0, 40.0, 160.0, 60.0)));
        assert!(!ink.touches(rect(101.0, 101.0, 110.0, 110.0)));
    }
}
