//! A curved hem that is kept, and the line at an even height above it.

use recloth::Error;
use recloth::arc::{arc_from_rise, level_line};
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{arc, dimension, polar, words};

const SCALE: f64 = 6.4;
const CHORD: f64 = 480.0;
const RISE: f64 = 20.0;
const HEIGHT: f64 = 580.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let hem = arc_from_rise(CHORD, RISE)?;
    let line = level_line(hem.radius, HEIGHT, CHORD)?;
    let centre = Point::new(0.0, hem.radius / SCALE);
    let half = hem.angle_deg / 2.0;
    let (low, high) = (hem.radius / SCALE, line.radius / SCALE);
    let (from, to) = (-90.0 - half, -90.0 + half);

    let mut panel = BezPath::new();
    arc(&mut panel, centre, low, from, to);
    arc(&mut panel, centre, high, to, from);
    panel.close_path();
    let mut drawing = Drawing::new("A level line above a curved hem");
    drawing.area(Tone::Cloth, panel.clone());
    // The cloth that goes on above the line.
    for angle in [from, to] {
        drawing.segment(
            Pen::Panel,
            polar(centre, low, angle),
            polar(centre, high - 12.0, angle),
        );
    }
    let mut kept = BezPath::new();
    arc(&mut kept, centre, low, from, to);
    drawing.line(Pen::Panel, kept);
    let mut level = BezPath::new();
    arc(&mut level, centre, high, from, to);
    drawing.line(Pen::Cut, level);

    for (radius, bow, text) in [(low, RISE, "chord c"), (high, line.sag, "")] {
        let ends = [from, to].map(|angle| polar(centre, radius, angle));
        drawing.segment(Pen::Construction, ends[0], ends[1]);
        let above = ends[0].y + 3.6;
        words(&mut drawing, text, Point::new(ends[0].x / 2.0, above));
        drawing.segment(
            Pen::Mark,
            Point::new(0.0, ends[0].y - bow / SCALE),
            Point::new(0.0, ends[0].y),
        );
        words(&mut drawing, &format!("{bow:.0}"), Point::new(0.0, above));
    }
    dimension(
        &mut drawing,
        polar(centre, low, -90.0 + half * 0.6),
        polar(centre, high, -90.0 + half * 0.6),
        "580",
        -5.5,
    );
    words(&mut drawing, "the hem, kept", Point::new(0.0, -5.0));
    words(
        &mut drawing,
        "level",
        polar(centre, high + 4.5, -90.0 - half * 0.6),
    );
    Ok(drawing)
}
