//! A panel photographed aslant beside a sheet of paper, and as it truly lies.

use recloth::Error;
use recloth::panel::Panel;
use recloth_sheet::kurbo::{BezPath, Point, Vec2};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{ring, words};

/// Corners of the sheet and of the panel in the picture.
const SHEET: [(f64, f64); 4] = [(0.0, 0.0), (400.0, 0.0), (320.0, 240.0), (80.0, 240.0)];
const SEEN: [(f64, f64); 4] = [
    (-130.0, -40.0),
    (560.0, -60.0),
    (400.0, 330.0),
    (10.0, 330.0),
];
const TRUTH: [(f64, f64); 4] = [(0.0, 0.0), (210.0, 0.0), (210.0, 297.0), (0.0, 297.0)];

pub(super) fn drawing() -> Result<Drawing, Error> {
    let yoke = Panel::from_photo(
        "yoke",
        &SHEET.map(Point::from),
        &TRUTH.map(Point::from),
        &SEEN.map(Point::from),
    )?;
    let path = |points: &[Point], scale: f64, by: Vec2| -> BezPath {
        let place = |point: &Point| (point.to_vec2() / scale + by).to_point();
        ring(&points.iter().map(place).collect::<Vec<_>>())
    };
    let mut drawing = Drawing::new("A panel in a photograph, and as it lies");
    let seen = Vec2::new(18.0, 20.0);
    let panel = path(&SEEN.map(Point::from), 9.0, seen);
    drawing
        .area(Tone::Cloth, panel.clone())
        .line(Pen::Panel, panel);
    let sheet = path(&SHEET.map(Point::from), 9.0, seen);
    drawing
        .area(Tone::Paper, sheet.clone())
        .line(Pen::Cut, sheet);
    // The frame of the picture.
    let frame = [(0.0, 6.0), (86.0, 6.0), (86.0, 64.0), (0.0, 64.0)].map(Point::from);
    drawing.polygon(Pen::Construction, &frame);
    let lies = Vec2::new(122.0, 18.0);
    let panel = path(yoke.outline(), 7.5, lies);
    drawing
        .area(Tone::Cloth, panel.clone())
        .line(Pen::Panel, panel);
    let sheet = path(&TRUTH.map(Point::from), 7.5, lies);
    drawing
        .area(Tone::Paper, sheet.clone())
        .line(Pen::Cut, sheet);
    for (text, x) in [("seen", 43.0), ("as it lies", 136.0)] {
        words(&mut drawing, text, Point::new(x, 0.0));
    }
    for (x, y) in [(40.0, 32.0), (136.0, 38.0)] {
        words(&mut drawing, "sheet", Point::new(x, y));
    }
    Ok(drawing)
}
