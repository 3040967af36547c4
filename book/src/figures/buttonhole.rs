//! A cross buttonhole at the opening edge, and the button done up.

use recloth::Error;
use recloth::closure::button_for_hole;
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{arc, circle, dimension, ring, words};

/// Twice as large as it is.
const SCALE: f64 = 0.5;
const SLIT: f64 = 22.0;
const THICKNESS: f64 = 3.5;
const START: f64 = 3.0;
/// From the centre line to the finished edge.
const STAND: f64 = 18.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let diameter = button_for_hole(SLIT, THICKNESS, START)?.diameter;
    // The centre line is at x = 0, the opening edge on the right.
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    let (top, low, far) = (24.0, -24.0, -42.0);

    let mut drawing = Drawing::new("A cross buttonhole at the opening edge");
    let front = [at(far, low), at(STAND, low), at(STAND, top), at(far, top)];
    drawing.area(Tone::Cloth, ring(&front));
    drawing.segment(Pen::Panel, at(STAND, low), at(STAND, top));
    drawing.segment(Pen::Fold, at(0.0, low), at(0.0, top));

    // Done up, the button rests against the outer end of the hole: its shank stands on the centre line.
    let button = circle(at(0.0, 0.0), diameter / 2.0 / SCALE);
    drawing
        .area(Tone::Paper, button.clone())
        .line(Pen::Construction, button);
    for x in [-1.6, 1.6] {
        drawing.line(Pen::Construction, circle(at(x, 0.0), 0.7 / SCALE));
    }

    // The slit, with its worked bars.
    let (inner, outer, half) = (START - SLIT, START, 1.2);
    let mut worked = BezPath::new();
    arc(&mut worked, at(outer, 0.0), half / SCALE, -90.0, 90.0);
    arc(&mut worked, at(inner, 0.0), half / SCALE, 90.0, 270.0);
    worked.close_path();
    drawing
        .area(Tone::Piece, worked.clone())
        .line(Pen::Mark, worked);
    drawing.segment(Pen::Cut, at(inner, 0.0), at(outer, 0.0));

    dimension(
        &mut drawing,
        at(inner, -14.0),
        at(outer, -14.0),
        "hole 22",
        -4.0,
    );
    dimension(&mut drawing, at(0.0, 12.5), at(START, 12.5), "", 0.0);
    words(&mut drawing, "start 3", at(9.0, 12.5));
    let radius = diameter / 2.0;
    dimension(&mut drawing, at(-radius, 18.5), at(radius, 18.5), "", 0.0);
    words(&mut drawing, &format!("button {diameter}"), at(-22.0, 18.5));
    words(&mut drawing, "centre line", at(0.0, low - 3.0));
    words(&mut drawing, "edge", at(STAND, low - 3.0));
    Ok(drawing)
}
