//! One finished edge and the strips that gather into it.

use recloth::Error;
use recloth::fullness::gathers;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Label, Pen, Tone};

use super::draw::{WORDS, ring, words};

const SCALE: f64 = 4.5;
const FINISHED: f64 = 240.0;
const DEEP: f64 = 8.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let mut drawing = Drawing::new("A finished edge and strips of different fullness");
    let mut row = |length: f64, y: f64, text: &str, tone: Tone| {
        let end = length / SCALE;
        let corners = [
            Point::new(0.0, y),
            Point::new(end, y),
            Point::new(end, y + DEEP),
            Point::new(0.0, y + DEEP),
        ];
        drawing
            .area(tone, ring(&corners))
            .polygon(Pen::Cut, &corners);
        // Quarter marks: matched, they spread the fullness evenly.
        for quarter in 1..4 {
            let x = end * f64::from(quarter) / 4.0;
            drawing.segment(
                Pen::Notch,
                Point::new(x, y + DEEP),
                Point::new(x, y + DEEP - 2.2),
            );
        }
        drawing.label(Label::new(text, (0.0, y - WORDS - 0.6), WORDS));
    };
    row(FINISHED, 0.0, "the finished edge, 240 mm", Tone::Piece);
    for (number, ratio) in [1.5, 1.75, 2.5].into_iter().enumerate() {
        let length = gathers(FINISHED, ratio)?.flat;
        let y = -18.0 * (number as f64 + 1.0);
        row(
            length,
            y,
            &format!("{ratio} times: {length} mm of strip"),
            Tone::Cloth,
        );
    }
    words(&mut drawing, "quarter marks", Point::new(76.0, 5.0));
    Ok(drawing)
}
