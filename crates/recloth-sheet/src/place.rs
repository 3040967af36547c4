//! Finding room for text inside an outline, clear of what is drawn there.

use kurbo::{Point, Rect, Vec2};

use crate::Label;
use crate::font::{ASCENT, DESCENT, text_width};
use crate::ink::{crosses, edges, inside};

/// The inside of an outline, and what already takes room there.
#[derive(Debug, Default)]
pub(crate) struct Room {
    /// The outline, holes included (even-odd rule).
    outline: Vec<Vec<Point>>,
    /// What else text must keep clear of: open lines.
    taken: Vec<(Point, Point)>,
}

/// An upright or turned rectangle for text.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Plot {
    pub(crate) centre: Point,
    pub(crate) width: f64,
    pub(crate) height: f64,
    pub(crate) angle_deg: f64,
}

impl Plot {
    /// The plot's own axes: along its width, and up.
    fn axes(&self) -> (Vec2, Vec2) {
        let (sin, cos) = match self.angle_deg {
            0.0 => (0.0, 1.0),
            90.0 => (1.0, 0.0),
            -90.0 => (-1.0, 0.0),
            angle => libm::sincos(angle.to_radians()),
        };
        (Vec2::new(cos, sin), Vec2::new(-sin, cos))
    }

    fn corners(&self) -> [Point; 4] {
        let (along, up) = self.axes();
        let (along, up) = (along * (self.width / 2.0), up * (self.height / 2.0));
        [
            self.centre - along - up,
            self.centre + along - up,
            self.centre + along + up,
            self.centre - along + up,
        ]
    }

    /// Whether a straight line has a part in the plot.
    fn meets(&self, from: Point, to: Point) -> bool {
        let (along, up) = self.axes();
        let turn = |p: Point| {
            let v = p - self.centre;
            Point::new(v.dot(along), v.dot(up))
        };
        let (x, y) = (self.width / 2.0, self.height / 2.0);
        crosses(turn(from), turn(to), Rect::new(-x, -y, x, y))
    }
}

impl Room {
    /// The inside of outlines.
    pub(crate) fn new(outline: Vec<Vec<Point>>) -> Room {
        Room {
            outline,
            taken: Vec::new(),
        }
    }

    /// Keeps clear of a line.
    pub(crate) fn take_line(&mut self, points: &[Point]) {
        self.taken
            .extend(points.windows(2).map(|ends| (ends[0], ends[1])));
    }

    /// Keeps clear of a closed outline.
    pub(crate) fn take_ring(&mut self, points: &[Point]) {
        self.take_line(points);
        if let (Some(first), Some(last)) = (points.first(), points.last()) {
            self.taken.push((*last, *first));
        }
    }

    /// Keeps clear of a plot.
    pub(crate) fn take(&mut self, plot: &Plot) {
        let corners = plot.corners();
        self.take_ring(&corners);
        self.taken.push((corners[0], corners[2]));
        self.taken.push((corners[1], corners[3]));
    }

    /// Whether a plot lies inside, clear of everything.
    pub(crate) fn is_free(&self, plot: &Plot) -> bool {
        inside(&self.outline, plot.centre)
            && !edges(&self.outline).any(|(from, to)| plot.meets(from, to))
            && !self.taken.iter().any(|&(from, to)| plot.meets(from, to))
    }

    /// The place nearest the middle of the outline where a plot of this size is free.
    pub(crate) fn find(&self, width: f64, height: f64, angle_deg: f64) -> Option<Plot> {
        const STEPS: u32 = 32;
        let points = || self.outline.iter().flatten();
        let first = points().next()?;
        let bounds = points().fold(Rect::from_points(*first, *first), |rect, &point| {
            rect.union_pt(point)
        });
        let middle = bounds.center();
        let mut places: Vec<Point> = (0..=STEPS)
            .flat_map(|i| (0..=STEPS).map(move |j| (i, j)))
            .map(|(i, j)| {
                let part = |k: u32| f64::from(k) / f64::from(STEPS);
                bounds.origin() + Vec2::new(bounds.width() * part(i), bounds.height() * part(j))
            })
            .collect();
        // A stable sort, so that the same outline always gives the same place.
        let far = |p: &Point| (*p - middle).hypot2();
        places.sort_by(|a, b| far(a).total_cmp(&far(b)));
        places
            .into_iter()
            .map(|centre| Plot {
                centre,
                width,
                height,
                angle_deg,
            })
            .find(|plot| self.is_free(plot))
    }

    /// Sets lines of text inside at a turn and takes the room it needs. None where there is no room.
    pub(crate) fn text(
        &mut self,
        lines: &[String],
        size: f64,
        angle_deg: f64,
    ) -> Option<Vec<Label>> {
        let (width, height) = extent(lines, size);
        let plot = self.find(width, height, angle_deg)?;
        self.take(&plot);
        Some(set(lines, size, &plot))
    }
}

/// Height of a line of text as a part of its size.
const LEAD: f64 = 1.3;

/// Width and height of lines of text, with a little air.
pub(crate) fn extent(lines: &[String], size: f64) -> (f64, f64) {
    let width = lines
        .iter()
        .map(|line| text_width(line, size))
        .fold(0.0, f64::max);
    let height = size * (ASCENT + DESCENT + LEAD * (lines.len().max(1) - 1) as f64);
    (width + size * 0.5, height + size * 0.3)
}

/// The lines of text centred in a plot.
pub(crate) fn set(lines: &[String], size: f64, plot: &Plot) -> Vec<Label> {
    let (_, up) = plot.axes();
    let middle = (lines.len().max(1) - 1) as f64 / 2.0;
    lines
        .iter()
        .enumerate()
        .map(|(index, line)| {
            let at = plot.centre + up * ((middle - index as f64) * LEAD * size);
            Label::new(line.clone(), at, size)
                .turned(plot.angle_deg)
                .centred()
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square(a: f64, b: f64) -> Vec<Point> {
        [(a, a), (b, a), (b, b), (a, b)].map(Point::from).to_vec()
    }

    #[test]
    fn text_keeps_inside_and_clear() {
        let mut room = Room::new(vec![square(0.0, 100.0), square(40.0, 60.0)]);
        room.take_line(&[Point::new(0.0, 20.0), Point::new(100.0, 20.0)]);
        for _ in 0..3 {
            let labels = room.text(&["Pocket".into()], 5.0, 0.0).unwrap();
            for corner in labels[0].corners() {
                assert!((0.0..100.0).contains(&corner.x) && (20.0..100.0).contains(&corner.y));
                let hole = 40.0..60.0;
                assert!(!(hole.contains(&corner.x) && hole.contains(&corner.y)));
            }
        }
        // Two texts never lie on each other.
        let plots: Vec<Plot> = (0..2)
            .map(|_| {
                let plot = room.find(10.0, 5.0, 0.0).unwrap();
                room.take(&plot);
                plot
            })
            .collect();
        let apart = plots[0].centre - plots[1].centre;
        assert!(apart.x.abs() >= 10.0 || apart.y.abs() >= 5.0);
    }

    #[test]
    fn narrow_room_turns_the_text_and_no_room_gives_none() {
        let strip: Vec<Point> = [(0.0, 0.0), (8.0, 0.0), (8.0, 200.0), (0.0, 200.0)]
            .map(Point::from)
            .to_vec();
        let mut room = Room::new(vec![strip]);
        let name = ["Waistband".to_owned()];
        assert_eq!(room.text(&name, 4.0, 0.0), None);
        let labels = room.text(&name, 4.0, 90.0).unwrap();
        assert_eq!(labels[0].angle_deg, 90.0);
        assert_eq!(room.text(&name, 20.0, 90.0), None);
        assert!(Room::default().find(1.0, 1.0, 0.0).is_none());
    }
}
