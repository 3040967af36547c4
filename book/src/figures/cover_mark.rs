//! Lightness of a ground and of a mark on it as dye is added to both, and where the eye no longer parts them.

use recloth::Error;
use recloth::shade::{cover_mark, overdye};
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{circle, words};

const GROUND: f64 = 0.55;
const MARK: f64 = 0.42;
/// Millimetres of the page to a unit of K/S, and to a unit of L*.
const DEPTH: f64 = 31.0;
const LIGHT: f64 = 1.1;
const DEEPEST: f64 = 3.5;
/// The axis of lightness begins here.
const DARK: f64 = 35.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let at = |depth: f64, l: f64| Point::new(depth * DEPTH, (l - DARK) * LIGHT);
    let mut drawing = Drawing::new("Lightness of a ground and its mark as dye is added");
    drawing
        .segment(Pen::Mark, at(0.0, DARK), at(DEEPEST, DARK))
        .segment(Pen::Mark, at(0.0, DARK), at(0.0, 85.0));
    for l in [40.0, 50.0, 60.0, 70.0, 80.0] {
        drawing.segment(Pen::Mark, at(-0.04, l), at(0.0, l));
        words(&mut drawing, &format!("{l}"), at(-0.16, l));
    }
    for depth in [0.0, 1.0, 2.0, 3.0] {
        drawing.segment(Pen::Mark, at(depth, DARK - 1.2), at(depth, DARK));
        words(&mut drawing, &format!("{depth}"), at(depth, DARK - 4.0));
    }
    words(&mut drawing, "L*", at(-0.16, 86.0));
    words(
        &mut drawing,
        "depth of the dye, K/S",
        at(DEEPEST / 2.0, DARK - 9.0),
    );

    for (reflectance, pen) in [(GROUND, Pen::Cut), (MARK, Pen::Seam)] {
        let mut curve = BezPath::new();
        for part in 0..=70 {
            let depth = DEEPEST * f64::from(part) / 70.0;
            let point = at(depth, overdye(reflectance, depth, depth)?.pale_l);
            if part == 0 {
                curve.move_to(point);
            } else {
                curve.line_to(point);
            }
        }
        drawing.line(pen, curve);
    }
    for (number, limit) in [50.0, 2.5, 1.0].into_iter().enumerate() {
        let cover = cover_mark(GROUND, MARK, limit)?;
        let light = overdye(GROUND, cover.depth, cover.depth)?.pale_l;
        let dark = overdye(MARK, cover.depth, cover.depth)?.pale_l;
        let (top, low) = (at(cover.depth, light), at(cover.depth, dark));
        drawing.segment(Pen::Construction, low, top);
        for end in [low, top] {
            drawing.area(Tone::Solid, circle(end, 0.9));
        }
        let text = format!("{:.1} apart", cover.after);
        let beside = if number == 0 {
            at(0.42, 78.0)
        } else {
            at(cover.depth + 0.12, light + 4.5)
        };
        words(&mut drawing, &text, beside);
    }
    words(&mut drawing, "the linen", at(1.75, 54.0));
    words(&mut drawing, "the worn place", at(0.95, 45.5));
    Ok(drawing)
}
