//! The two fronts of a waistcoat whose button line is moved out of the centre.

use recloth::Error;
use recloth::opening::off_centre_opening;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{circle, dimension, ring, words};

const SCALE: f64 = 4.6;
const FRONT: f64 = 510.0;
const SHIFT: f64 = 60.0;
const EXTENSION: f64 = 18.0;
const ALLOWANCE: f64 = 12.0;
const DART: f64 = 95.0;
/// Height of the strip of each front that is drawn.
const HIGH: f64 = 88.0;
const DART_LONG: f64 = 60.0;

/// A front, its button line at x = 0: its name, its place up the page, and on which hand its side seam lies.
struct Front {
    name: &'static str,
    y: f64,
    side: f64,
    to_line: f64,
    cut: f64,
    dart: f64,
}

pub(super) fn drawing() -> Result<Drawing, Error> {
    let found = off_centre_opening(FRONT, SHIFT, EXTENSION, ALLOWANCE, 340.0, DART)?;
    let mut drawing = Drawing::new("Two fronts that open to one side");
    draw(
        &mut drawing,
        &Front {
            name: "narrow",
            y: 190.0,
            side: -1.0,
            to_line: found.narrow_to_line,
            cut: found.narrow_cut,
            dart: found.dart_to_narrow,
        },
    );
    draw(
        &mut drawing,
        &Front {
            name: "wide",
            y: 0.0,
            side: 1.0,
            to_line: found.wide_to_line,
            cut: found.wide_cut,
            dart: found.dart_to_wide,
        },
    );
    // One button line for both, and one centre.
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    drawing.segment(Pen::Fold, at(0.0, -10.0), at(0.0, 190.0 + HIGH + 10.0));
    drawing.segment(
        Pen::Construction,
        at(SHIFT, -10.0),
        at(SHIFT, 190.0 + HIGH + 10.0),
    );
    words(&mut drawing, "buttons", at(-28.0, 190.0 + HIGH + 20.0));
    words(
        &mut drawing,
        "centre front",
        at(SHIFT + 46.0, 190.0 + HIGH + 20.0),
    );
    dimension(
        &mut drawing,
        at(0.0, 250.0),
        at(SHIFT, 250.0),
        &format!("{SHIFT}"),
        4.0,
    );
    Ok(drawing)
}

fn draw(drawing: &mut Drawing, front: &Front) {
    let at = |x: f64, y: f64| Point::new(front.side * x / SCALE, (front.y + y) / SCALE);
    let (side, edge) = (front.to_line, front.to_line - front.cut);
    let corners = [at(side, 0.0), at(edge, 0.0), at(edge, HIGH), at(side, HIGH)];
    drawing
        .area(Tone::Cloth, ring(&corners))
        .polygon(Pen::Cut, &corners);
    let seam = side - ALLOWANCE;
    drawing.segment(Pen::Seam, at(seam, 0.0), at(seam, HIGH));
    for y in [20.0, 66.0] {
        drawing.line(Pen::Mark, circle(at(0.0, y), 7.5 / SCALE));
    }
    drawing.polyline(
        Pen::Seam,
        &[
            at(front.dart - 10.0, 0.0),
            at(front.dart, DART_LONG),
            at(front.dart + 10.0, 0.0),
        ],
    );
    words(drawing, front.name, at(side - 46.0, HIGH - 16.0));
    for (from, to, below) in [(0.0, front.dart, -16.0), (edge, side, -46.0)] {
        let text = format!("{:.0}", to - from);
        let words_side = -4.0 * front.side;
        dimension(drawing, at(from, below), at(to, below), &text, words_side);
    }
}
