//! What is marked on a piece: notches, darts, drill points, lines, buttonholes.

use kurbo::{BezPath, Point, Vec2};
use recloth::outline::{CutLine, Dart, LineKind, Mark, NOTCH_SHARE, NotchForm, Segment};

use super::{NOTCH, Sketch, unit, write};
use crate::ink::flatten;
use crate::path::{append, curve_path, scaled};
use crate::{Drawing, Pen};

impl Sketch<'_> {
    /// Notches, from the cut line towards the seam.
    pub(super) fn notches(&mut self, cut: &CutLine) {
        let mut drawing = Drawing::new("");
        let mut names = Vec::new();
        let notches = self
            .piece
            .edges()
            .iter()
            .enumerate()
            .flat_map(|(index, edge)| edge.notches.iter().map(move |notch| (index, notch)));
        for ((edge, notch), carried) in notches.zip(cut.notches()) {
            let Some((_, outward)) = self.piece.at(edge, notch.distance) else {
                continue;
            };
            let (from, seam) = (self.place(carried.cut), self.place(carried.seam));
            let to_seam = libm::hypot(seam.x - from.x, seam.y - from.y);
            // Where cut line and seam line are one, the notch is only a mark on the piece.
            let reach = if to_seam <= 0.1 {
                NOTCH / 2.0
            } else if notch.depth.is_some() {
                carried.depth * self.options.scale
            } else {
                (to_seam * NOTCH_SHARE).min(NOTCH)
            };
            let along = Vec2::new(-outward.y, outward.x);
            // Wedges are as wide as they are deep, and stand a little apart.
            let (half, pitch) = match carried.form {
                NotchForm::Slit => (0.0, 2.5),
                NotchForm::Wedge => (reach / 2.0, (1.2 * reach).max(2.5)),
            };
            for mark in 0..carried.marks {
                let middle = f64::from(mark) - f64::from(carried.marks.saturating_sub(1)) / 2.0;
                let outer = from + along * (middle * pitch);
                let tip = outer - outward * reach;
                let sides = [outer - along * half, tip, outer + along * half];
                match carried.form {
                    NotchForm::Slit => drawing.segment(Pen::Notch, outer, tip),
                    NotchForm::Wedge => drawing.polyline(Pen::Notch, &sides),
                };
                self.room.take_line(&sides);
            }
            names.push((seam, outward, notch.name.clone()));
        }
        for (seam, outward, name) in names {
            let lines = [name];
            if let Some((plot, size)) = self.beside(seam, outward * -1.0, 0.0, &lines) {
                write(&mut drawing, &lines, size, &plot);
            }
        }
        self.finish("notches", "Notches", drawing);
    }

    /// Darts, drill points, lines and buttonholes.
    pub(super) fn marks(&mut self) {
        let mut drawing = Drawing::new("");
        let mut names: Vec<(Point, Vec2, String)> = Vec::new();
        let right = Vec2::new(1.0, 0.0);
        for mark in self.piece.marks() {
            let name = mark.name().to_owned();
            match mark {
                Mark::Dart(dart) => {
                    let tip = self.dart(&mut drawing, dart);
                    names.push((tip.0, tip.1, name));
                }
                Mark::Drill { at, .. } => {
                    let at = self.place(*at);
                    self.drill(&mut drawing, at);
                    names.push((at + right * 1.5, right, name));
                }
                Mark::Line { kind, curve, .. } => {
                    let path = curve_path(curve);
                    let path = scaled(&path, self.options.scale);
                    for line in flatten(&path) {
                        self.room.take_line(&line);
                    }
                    let (pen, what) = match kind {
                        LineKind::Fold => (Pen::Fold, "fold"),
                        LineKind::Placement => (Pen::Placement, "place"),
                        LineKind::Slash => (Pen::Slash, "slash"),
                        LineKind::Stitching => (Pen::Seam, "stitch"),
                        LineKind::Stripe => (Pen::Stripe, "stripe"),
                        _ => (Pen::Mark, ""),
                    };
                    drawing.line(pen, path);
                    let (middle, along) = curve.at(curve.length() / 2.0);
                    let name = match name.as_str() {
                        "" => what.to_owned(),
                        said if said.contains(what) => name,
                        _ => format!("{name} ({what})"),
                    };
                    names.push((self.place(middle), Vec2::new(-along.y, along.x), name));
                }
                Mark::Buttonhole { ends, .. } => {
                    let ends = ends.map(|end| self.place(end));
                    let along = unit(ends[1] - ends[0]);
                    let tick = Vec2::new(-along.y, along.x) * 2.0;
                    drawing.segment(Pen::Mark, ends[0], ends[1]);
                    for end in ends {
                        drawing.segment(Pen::Mark, end - tick, end + tick);
                        self.room.take_line(&[end - tick, end + tick]);
                    }
                    self.room.take_line(&ends);
                    names.push((ends[1] + along * 1.5, along, name));
                }
                // Its lines are drawn with those of the outline; its name stands in the opening.
                Mark::Cutout(cutout) => {
                    let boxes = cutout.edges.iter().map(|edge| edge.curve.bounds());
                    if let Some(bounds) = boxes.reduce(|a, b| a.union(b)) {
                        names.push((self.place(bounds.center()), right, name));
                    }
                }
                _ => {}
            }
        }
        for (at, way, name) in names {
            let lines = [name];
            if let Some((plot, size)) = self.beside(at, way, 0.0, &lines) {
                write(&mut drawing, &lines, size, &plot);
            }
        }
        self.finish("marks", "Darts and marks", drawing);
    }

    /// A dart: its legs are sewn, its middle is folded, its point is a drill point. Gives where its name may stand.
    fn dart(&mut self, drawing: &mut Drawing, dart: &Dart) -> (Point, Vec2) {
        let point = self.place(dart.point);
        let legs = dart.legs.map(|leg| self.place(leg));
        let middle = legs[0].midpoint(legs[1]);
        drawing.polyline(Pen::Seam, &[legs[0], point, legs[1]]);
        drawing.segment(Pen::Construction, middle, point);
        self.room.take_line(&[legs[0], point, legs[1]]);
        self.room.take_line(&[middle, point]);
        self.drill(drawing, point);
        let way = unit(point - middle);
        (point + way * 1.5, way)
    }

    /// A drill point: a ring with its middle marked.
    fn drill(&mut self, drawing: &mut Drawing, at: Point) {
        let half = Segment::about(at, 1.5, 0.0, 180.0);
        let other = Segment::about(at, 1.5, 180.0, 180.0);
        let mut ring = BezPath::new();
        ring.move_to(half.start);
        append(&mut ring, &half);
        append(&mut ring, &other);
        ring.close_path();
        drawing.line(Pen::Mark, ring);
        for arm in [Vec2::new(0.6, 0.0), Vec2::new(0.0, 0.6)] {
            drawing.segment(Pen::Mark, at - arm, at + arm);
        }
        let arm = Vec2::new(1.5, 1.5);
        self.room.take_line(&[at - arm, at + arm]);
    }
}
