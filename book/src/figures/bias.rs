//! Bias strips in a square of cloth.

use recloth::Error;
use recloth::bias::{bias_along_selvedge, bias_square};
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{dimension, ring, words};

const SCALE: f64 = 4.0;
const WIDTH: f64 = 40.0;
const LENGTH: f64 = 3000.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let along = bias_along_selvedge(WIDTH)? / SCALE;
    let side = bias_square(LENGTH, WIDTH)? / SCALE;
    // The strips run from the left edge, the selvedge, at 45 degrees upwards: a line begins `rise` above the corner.
    let ends = |rise: f64| {
        let from = Point::new((-rise).max(0.0), rise.max(0.0));
        let to = Point::new((side - rise).min(side), (side + rise).min(side));
        (from, to)
    };
    let count = (side / along).floor();
    let mut drawing = Drawing::new("Bias strips in a square");
    let square = [(0.0, 0.0), (side, 0.0), (side, side), (0.0, side)].map(Point::from);
    drawing.area(Tone::Cloth, ring(&square));
    let (low, high) = (ends(along), ends(2.0 * along));
    drawing.area(Tone::Piece, ring(&[low.0, low.1, high.1, high.0]));
    let mut number = -count;
    while number <= count {
        let (from, to) = ends(number * along);
        drawing.segment(Pen::Cut, from, to);
        number += 1.0;
    }
    drawing.polygon(Pen::Panel, &square);
    dimension(
        &mut drawing,
        Point::new(-5.0, along),
        Point::new(-5.0, 2.0 * along),
        "s",
        4.0,
    );
    // Straight across the strip, at its middle.
    let foot = Point::new(side / 2.0 - along, side / 2.0);
    let across = Point::new(foot.x - along / 2.0, foot.y + along / 2.0);
    dimension(&mut drawing, foot, across, "", 0.0);
    words(
        &mut drawing,
        "w",
        Point::new(foot.x - along / 4.0 + 4.0, foot.y + along / 4.0 + 2.0),
    );
    words(&mut drawing, "selvedge", Point::new(-13.0, side * 0.8));
    dimension(
        &mut drawing,
        Point::new(0.0, -5.0),
        Point::new(side, -5.0),
        "side of the square",
        -4.0,
    );
    Ok(drawing)
}
