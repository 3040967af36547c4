//! A laced opening, its lace drawn as it runs.

use recloth::Error;
use recloth::fastening::lacing;
use recloth_sheet::kurbo::{Point, Vec2};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{circle, dimension, ring, words};

const SCALE: f64 = 1.6;
const PAIRS: u32 = 5;
const PITCH: f64 = 30.0;
const GAP: f64 = 40.0;
const TAIL: f64 = 250.0;
/// From the eyelets to the edge, and from the edge inwards.
const EDGE: f64 = 10.0;
const DEEP: f64 = 38.0;
/// How much of each end is drawn.
const DRAWN: f64 = 45.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let lace = lacing(PAIRS, PITCH, GAP, TAIL)?;
    let high = f64::from(PAIRS - 1) * PITCH;
    // The lower left eyelet is the origin.
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    let eyelet = |side: u32, pair: u32| at(f64::from(side) * GAP, f64::from(pair) * PITCH);

    let mut drawing = Drawing::new("A laced opening");
    for (edge, far) in [(EDGE, -DEEP), (GAP - EDGE, GAP + DEEP)] {
        let side = [
            at(edge, -22.0),
            at(edge, high + 22.0),
            at(far, high + 22.0),
            at(far, -22.0),
        ];
        drawing.area(Tone::Cloth, ring(&side));
        drawing.segment(Pen::Panel, side[0], side[1]);
    }

    drawing.segment(Pen::Mark, eyelet(0, 0), eyelet(1, 0));
    for pair in 1..PAIRS {
        drawing.segment(Pen::Mark, eyelet(0, pair - 1), eyelet(1, pair));
        drawing.segment(Pen::Mark, eyelet(1, pair - 1), eyelet(0, pair));
    }
    for (side, way) in [(0, 1.0), (1, -1.0)] {
        let start = eyelet(side, PAIRS - 1);
        let end = start + Vec2::new(way * 12.0, 42.0) / 45.0 * DRAWN / SCALE;
        drawing.segment(Pen::Mark, start, end);
        for pair in 0..PAIRS {
            let hole = circle(eyelet(side, pair), 2.6 / SCALE);
            drawing.area(Tone::Paper, hole.clone()).line(Pen::Cut, hole);
        }
    }

    dimension(&mut drawing, at(0.0, -12.0), at(GAP, -12.0), "", 0.0);
    words(&mut drawing, "gap 40", at(GAP / 2.0, -29.0));
    dimension(
        &mut drawing,
        at(GAP + 24.0, PITCH),
        at(GAP + 24.0, 2.0 * PITCH),
        "",
        0.0,
    );
    words(&mut drawing, "pitch 30", at(GAP + 56.0, 1.5 * PITCH));
    let slant = libm::hypot(GAP, PITCH);
    words(
        &mut drawing,
        &format!("slant {slant:.0}"),
        at(-56.0, 2.5 * PITCH),
    );
    drawing.segment(
        Pen::Construction,
        at(-38.0, 2.5 * PITCH),
        at(GAP * 0.25 - 2.0, 2.25 * PITCH),
    );
    words(&mut drawing, "250 each", at(GAP / 2.0, high + 52.0));
    words(
        &mut drawing,
        &format!("together {lace:.0}"),
        at(GAP / 2.0, -42.0),
    );
    Ok(drawing)
}
