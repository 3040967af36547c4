//! Lengths cut from a print that repeats: each begins where the pattern does.

use recloth::Error;
use recloth::quantity::repeats;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{circle, dimension, ring, words};

const SCALE: f64 = 29.0;
const LENGTH: f64 = 720.0;
const REPEAT: f64 = 320.0;
const COUNT: u32 = 4;
const WIDTH: f64 = 800.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let print = repeats(LENGTH, REPEAT, COUNT)?;
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    let band =
        |from: f64, to: f64| ring(&[at(from, 0.0), at(to, 0.0), at(to, WIDTH), at(from, WIDTH)]);

    let mut drawing = Drawing::new("Lengths cut at whole repeats of a print");
    drawing.area(Tone::Cloth, band(0.0, print.total));
    for length in 0..COUNT {
        let start = f64::from(length) * print.each;
        drawing.hatch(&band(start + LENGTH, start + print.each), 1.6);
    }
    // The print: a large dot where each repeat begins.
    for repeat in 0..COUNT * print.repeats {
        let start = f64::from(repeat) * REPEAT;
        let middle = at(start + REPEAT / 2.0, WIDTH / 2.0);
        drawing.area(Tone::Piece, circle(middle, 3.6)).segment(
            Pen::Construction,
            at(start, 0.0),
            at(start, WIDTH),
        );
    }
    for length in 0..COUNT {
        let start = f64::from(length) * print.each;
        for x in [start, start + LENGTH] {
            drawing.segment(Pen::Cut, at(x, 0.0), at(x, WIDTH));
        }
    }
    drawing.line(Pen::Panel, band(0.0, print.total));

    let mut below = |from: f64, to: f64, y: f64, text: String| {
        dimension(&mut drawing, at(from, y), at(to, y), "", 0.0);
        words(&mut drawing, &text, at((from + to) / 2.0, y - 130.0));
    };
    below(0.0, LENGTH, -100.0, format!("{LENGTH}"));
    below(
        print.each,
        2.0 * print.each,
        -100.0,
        format!("{} repeats, {}", print.repeats, print.each),
    );
    below(
        2.0 * print.each + LENGTH,
        3.0 * print.each,
        -100.0,
        format!("{}", print.each - LENGTH),
    );
    below(0.0, print.total, -380.0, format!("{}", print.total));
    Ok(drawing)
}
