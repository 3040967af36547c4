//! A picture of panels of cloth with the pieces that lie on them.

use kurbo::{BezPath, Point, Rect, Vec2};
use recloth::{Error, panel::Panel};

use crate::drawing::Group;
use crate::font::{clip, shorten, wrap};
use crate::path::{closed_path, open_path};
use crate::place::{Plot, Room, extent, set};
use crate::{Drawing, Label, Pen, Shape, Tone};

/// A panel of cloth with the pieces on it, all in one system of coordinates (mm).
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LayPanel {
    /// Its name.
    pub name: String,
    /// What else to say of it: its size, say. May be empty.
    pub note: String,
    /// Its edge, at least three points.
    pub outline: Vec<Point>,
    /// Holes.
    pub holes: Vec<Vec<Point>>,
    /// Flaws: one point is a spot, two are a slit, more an area.
    pub flaws: Vec<Vec<Point>>,
    /// Direction of the warp, counter-clockwise from the x axis (degrees, -360 to 360).
    pub grain_deg: f64,
    /// Where it is folded when it is cut, by two points of the line.
    pub fold: Option<[Point; 2]>,
    /// The pieces.
    pub pieces: Vec<LayPiece>,
    /// What is left to be used, drawn lightly.
    pub left: Vec<Vec<Point>>,
}

impl From<&Panel> for LayPanel {
    /// The panel with nothing on it yet.
    fn from(panel: &Panel) -> LayPanel {
        let flaws = panel.flaws().iter().map(|flaw| flaw.outline.clone());
        LayPanel {
            name: panel.name().to_owned(),
            note: String::new(),
            outline: panel.outline().to_vec(),
            holes: panel.holes().to_vec(),
            flaws: flaws.collect(),
            grain_deg: panel.grain_deg(),
            fold: None,
            pieces: Vec::new(),
            left: Vec::new(),
        }
    }
}

/// A piece where it lies.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LayPiece {
    /// What to write on it: its name, and that it lies face down, say.
    pub label: String,
    /// Its cut line where it lies on the panel.
    pub outline: Vec<Point>,
    /// Direction of its grain line there (degrees, -360 to 360); none draws no arrow.
    pub grain_deg: Option<f64>,
}

const NAME: f64 = 4.0;
const NOTE: f64 = 3.0;
/// Text on a piece: the first size with room is taken.
const SIZES: [f64; 5] = [3.8, 3.2, 2.7, 2.2, 1.8];
/// Room between panels.
const GAP: f64 = 10.0;
/// Room for the words beside the scale bar (mm), as `500 mm, scale 1 : 10.5`.
const BAR_WORDS: f64 = 36.0;

/// Panels drawn to one scale, side by side and in rows, within a width, none higher than `height` (mm on paper).
///
/// The scale is 1 : 1 where there is room, otherwise 1 to a whole or half number; a bar says it. Cloth is grey, pieces are
/// white, flaws are hatched. Coordinates of the drawing are those of the paper.
///
/// # Errors
/// `NotFinite` or `OutOfRange` naming `width` or `height` (40 to 5000 mm), `coordinate` (within 1e5 of the origin) or
/// `grain_deg`; `Count` naming `panels` unless there are 1 to 100, or `outline` where one has fewer than 3 points.
pub fn lay_drawing(
    title: &str,
    panels: &[LayPanel],
    width: f64,
    height: f64,
) -> Result<Drawing, Error> {
    let width = Error::check("width", width, 40.0, 5000.0)?;
    let height = Error::check("height", height, 40.0, 5000.0)?;
    Error::check_items("panels", panels.len(), 1, 100)?;
    for (index, panel) in panels.iter().enumerate() {
        check(panel).map_err(|error| error.at_index(index))?;
    }
    let scale = panels
        .iter()
        .map(|panel| {
            let bounds = panel.bounds();
            (bounds.width() / width).max(bounds.height() / height)
        })
        .fold(1.0, |a: f64, b| a.max((b * 2.0).ceil() / 2.0));

    let mut drawing = Drawing::new(title);
    let mut keys = Vec::new();
    let (mut x, mut y, mut row_height) = (0.0, 0.0, 0.0_f64);
    for panel in panels {
        let bounds = panel.bounds();
        let size = Vec2::new(bounds.width() / scale, bounds.height() / scale);
        // A name may be wider than its panel.
        let wide = size.x.max(40.0_f64.min(width));
        if x > 0.0 && x + wide > width {
            (x, y, row_height) = (0.0, y - row_height - GAP, 0.0);
        }
        let head = NAME * 1.6
            + if panel.note.is_empty() {
                0.0
            } else {
                NOTE * 1.4
            };
        let corner = Point::new(x, y - head);
        let place =
            |p: Point| corner + Vec2::new((p.x - bounds.x0) / scale, (p.y - bounds.y1) / scale);
        let mut group = panel.draw(&place, &mut keys);
        group.label(Label::new(
            shorten(&panel.name, NAME, wide),
            Point::new(x, y - NAME),
            NAME,
        ));
        if !panel.note.is_empty() {
            let at = Point::new(x, y - NAME * 1.3 - NOTE);
            group.label(Label::new(shorten(&panel.note, NOTE, wide), at, NOTE));
        }
        drawing.group(Group {
            title: panel.name.clone(),
            shapes: group.shapes,
            ..Group::default()
        });
        row_height = row_height.max(head + size.y);
        x += wide + GAP;
    }
    // The longest round bar that leaves room for its words: were the drawing wider than it should be, whoever puts it
    // on a page would shrink it, and the scale it states would be false.
    let bar = [500.0, 200.0, 100.0, 50.0, 20.0, 10.0]
        .into_iter()
        .find(|bar| bar / scale <= width - BAR_WORDS)
        .unwrap_or(5.0);
    drawing.scale_bar(bar, scale);
    let below = drawing.bounds().map_or(0.0, |bounds| bounds.y0) - 2.0;
    for (index, key) in keys.iter().enumerate() {
        let at = Point::new(0.0, below - NOTE * 1.4 * (index + 1) as f64);
        let text = shorten(&format!("{} = {key}", index + 1), NOTE, width);
        drawing.label(Label::new(text, at, NOTE));
    }
    Ok(drawing)
}

impl LayPanel {
    fn bounds(&self) -> Rect {
        bounds_of_points(&self.outline)
    }

    /// Where the line of the fold runs within the box of the panel.
    fn fold_within(&self) -> Option<[Point; 2]> {
        let [a, b] = self.fold?;
        let (bounds, run) = (self.bounds(), b - a);
        let (mut low, mut high) = (f64::NEG_INFINITY, f64::INFINITY);
        for (start, slope, least, most) in [
            (a.x, run.x, bounds.x0, bounds.x1),
            (a.y, run.y, bounds.y0, bounds.y1),
        ] {
            if slope == 0.0 {
                if start < least || start > most {
                    return None;
                }
                continue;
            }
            let (p, q) = ((least - start) / slope, (most - start) / slope);
            low = low.max(p.min(q));
            high = high.min(p.max(q));
        }
        (low < high && low.is_finite() && high.is_finite()).then(|| [a + run * low, a + run * high])
    }

    /// The panel on paper. Names of pieces too small to bear them go to `keys`, their numbers (from 1) on the pieces.
    fn draw(&self, place: &impl Fn(Point) -> Point, keys: &mut Vec<String>) -> Drawing {
        let ring = |points: &[Point]| -> Vec<Point> { points.iter().map(|&p| place(p)).collect() };
        let mut drawing = Drawing::new("");
        let outline = ring(&self.outline);
        let holes: Vec<Vec<Point>> = self.holes.iter().map(|hole| ring(hole)).collect();
        let mut cloth: BezPath = closed_path(&outline);
        for hole in &holes {
            cloth.extend(closed_path(hole));
        }
        drawing
            .area(Tone::Cloth, cloth.clone())
            .line(Pen::Panel, cloth);

        for left in &self.left {
            drawing.line(Pen::Construction, closed_path(&ring(left)));
        }
        let pieces: Vec<Vec<Point>> = self
            .pieces
            .iter()
            .map(|piece| ring(&piece.outline))
            .collect();
        for piece in &pieces {
            let path = closed_path(piece);
            drawing.area(Tone::Paper, path.clone()).line(Pen::Cut, path);
        }
        let flaws: Vec<Vec<Point>> = self.flaws.iter().map(|flaw| ring(flaw)).collect();
        for flaw in &flaws {
            draw_flaw(&mut drawing, flaw);
        }
        let fold = self.fold_within().map(|ends| ends.map(place));
        if let Some([from, to]) = fold {
            drawing.segment(Pen::Fold, from, to);
        }
        // What no words may lie over.
        let taken = || {
            flaws
                .iter()
                .map(Vec::as_slice)
                .chain(fold.iter().map(<[Point; 2]>::as_slice))
        };

        let mut free = vec![outline];
        free.extend(holes);
        free.extend(pieces.iter().cloned());
        let mut around = Room::new(free);
        taken().for_each(|mark| around.take_ring(mark));
        arrow(
            &mut drawing,
            &mut around,
            self.grain_deg,
            &[22.0, 16.0, 11.0, 7.0],
        );

        for (piece, outline) in self.pieces.iter().zip(pieces) {
            let piece_bounds = bounds_of_points(&outline);
            let mut room = Room::new(vec![outline]);
            taken().for_each(|mark| room.take_ring(mark));
            if !label(&mut drawing, &mut room, &piece.label) {
                keys.push(piece.label.clone());
                let key = keys.len().to_string();
                if !label(&mut drawing, &mut room, &key) {
                    beside(&mut drawing, &mut around, &piece_bounds, &key);
                }
            }
            if let Some(grain_deg) = piece.grain_deg {
                arrow(&mut drawing, &mut room, grain_deg, &[14.0, 10.0, 6.0]);
            }
        }
        drawing
    }
}

/// Writes on a piece: in one line or several, level or turned, in the largest size with room. False where there is none.
fn label(drawing: &mut Drawing, room: &mut Room, text: &str) -> bool {
    let text = &clip(text);
    for size in SIZES {
        for angle_deg in [0.0, 90.0] {
            for width in [f64::INFINITY, 40.0, 25.0, 15.0] {
                let lines = wrap(text, size, width);
                if let Some(labels) = room.text(&lines, size, angle_deg) {
                    drawing.shapes.extend(labels.into_iter().map(Shape::Label));
                    return true;
                }
            }
        }
    }
    false
}

/// Writes the number of a piece too small for it beside the piece: on free cloth if there is some, otherwise to its right.
fn beside(drawing: &mut Drawing, around: &mut Room, piece: &Rect, key: &str) {
    let lines = [key.to_owned()];
    let (width, height) = extent(&lines, NOTE);
    let (aside, above) = (
        (piece.width() + width) / 2.0,
        (piece.height() + height) / 2.0,
    );
    let plots = [(aside, 0.0), (-aside, 0.0), (0.0, above), (0.0, -above)].map(|away| Plot {
        centre: piece.center() + Vec2::from(away) * 1.1,
        width,
        height,
        angle_deg: 0.0,
    });
    let plot = plots
        .iter()
        .find(|plot| around.is_free(plot))
        .unwrap_or(&plots[0]);
    around.take(plot);
    drawing
        .shapes
        .extend(set(&lines, NOTE, plot).into_iter().map(Shape::Label));
}

/// The least upright rectangle round points.
fn bounds_of_points(points: &[Point]) -> Rect {
    let first = points.first().copied().unwrap_or_default();
    points
        .iter()
        .fold(Rect::from_points(first, first), |rect, &point| {
            rect.union_pt(point)
        })
}

/// A grain arrow with a head at each end, of the first length with room.
fn arrow(drawing: &mut Drawing, room: &mut Room, angle_deg: f64, lengths: &[f64]) {
    let Some(plot) = lengths
        .iter()
        .find_map(|&length| room.find(length, 3.0, angle_deg))
    else {
        return;
    };
    room.take(&plot);
    let (sin, cos) = libm::sincos(angle_deg.to_radians());
    let half = Vec2::new(cos, sin) * (plot.width / 2.0);
    grain_arrow(drawing, plot.centre - half, plot.centre + half, 2.5);
}

/// A grain line with a head of this length at each end.
pub(crate) fn grain_arrow(drawing: &mut Drawing, from: Point, to: Point, head: f64) {
    let along = to - from;
    let length = libm::hypot(along.x, along.y);
    if length == 0.0 {
        return;
    }
    let along = along * (1.0 / length);
    // On a short line smaller heads, so that a line is seen between them.
    let head = head.min(length * 0.3);
    let aside = Vec2::new(-along.y, along.x) * (head * 0.3);
    let inner = along * (head * 0.9).min(length / 2.0);
    drawing.segment(Pen::Grain, from + inner, to - inner);
    for (tip, back) in [(from, along), (to, along * -1.0)] {
        let base = tip + back * head;
        drawing.area(Tone::Solid, closed_path(&[tip, base + aside, base - aside]));
    }
}

fn draw_flaw(drawing: &mut Drawing, flaw: &[Point]) {
    match flaw {
        [] => {}
        [spot] => {
            let (x, y) = (Vec2::new(1.4, 1.4), Vec2::new(1.4, -1.4));
            drawing.segment(Pen::Mark, *spot - x, *spot + x);
            drawing.segment(Pen::Mark, *spot - y, *spot + y);
        }
        [_, _] => {
            drawing.line(Pen::Mark, open_path(flaw));
        }
        _ => {
            let path = closed_path(flaw);
            drawing.hatch(&path, 1.2).line(Pen::Flaw, path);
        }
    }
}

fn check(panel: &LayPanel) -> Result<(), Error> {
    Error::check("grain_deg", panel.grain_deg, -360.0, 360.0)?;
    Error::check_items("outline", panel.outline.len(), 3, 100_000)?;
    let pieces = panel.pieces.iter().map(|piece| &piece.outline);
    for outline in pieces.clone() {
        Error::check_items("outline", outline.len(), 3, 100_000)?;
    }
    for piece in &panel.pieces {
        if let Some(grain_deg) = piece.grain_deg {
            Error::check("grain_deg", grain_deg, -360.0, 360.0)?;
        }
    }
    let all = [&panel.outline]
        .into_iter()
        .chain(&panel.holes)
        .chain(&panel.left)
        .chain(&panel.flaws)
        .chain(pieces);
    for point in all.flatten().chain(panel.fold.iter().flatten()) {
        Error::check("coordinate", point.x, -1e5, 1e5)?;
        Error::check("coordinate", point.y, -1e5, 1e5)?;
    }
    Ok(())
}
