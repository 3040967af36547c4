//! Solids of a binder on the cloth after each dip, from a weak binder to a strong one.

use recloth::Error;
use recloth::dye::binder_solids;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Label, Pen, Tone};

use super::draw::{WORDS, ring, words};

/// Millimetres of the page to one percent on weight of fibre.
const PERCENT: f64 = 24.0;
const STEP: f64 = 11.0;
const DEEP: f64 = 7.0;
const DIPS: u32 = 4;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let mut drawing = Drawing::new("Solids of a binder on cloth after each dip");
    let foot = -STEP * f64::from(DIPS) - 3.0;
    for dips in 1..=DIPS {
        let laid = binder_solids(3.0, 6.0, 5.0, 90.0, dips)?;
        let low = -STEP * f64::from(dips);
        let (from, to) = (laid.owf_low_pct * PERCENT, laid.owf_high_pct * PERCENT);
        let band = |from: f64, to: f64| {
            [
                Point::new(from, low),
                Point::new(to, low),
                Point::new(to, low + DEEP),
                Point::new(from, low + DEEP),
            ]
        };
        drawing
            .area(Tone::Piece, ring(&band(0.0, from)))
            .area(Tone::Cloth, ring(&band(from, to)))
            .polygon(Pen::Mark, &band(0.0, to))
            .segment(
                Pen::Mark,
                Point::new(from, low),
                Point::new(from, low + DEEP),
            );
        let name = if dips == 1 {
            "1 dip".to_string()
        } else {
            format!("{dips} dips")
        };
        drawing.label(Label::new(
            name,
            (-15.0, low + (DEEP - WORDS * 0.73) / 2.0),
            WORDS,
        ));
        words(
            &mut drawing,
            &format!("{:.2} to {:.2} %", laid.owf_low_pct, laid.owf_high_pct),
            Point::new(to + 17.0, low + DEEP / 2.0),
        );
    }
    drawing.segment(Pen::Mark, Point::new(0.0, foot), Point::new(0.0, 0.0));
    drawing.segment(
        Pen::Mark,
        Point::new(0.0, foot),
        Point::new(4.0 * PERCENT, foot),
    );
    for percent in [0.0, 1.0, 2.0, 3.0, 4.0] {
        let x = percent * PERCENT;
        drawing.segment(Pen::Mark, Point::new(x, foot - 1.3), Point::new(x, foot));
        words(
            &mut drawing,
            &format!("{percent} %"),
            Point::new(x, foot - 4.6),
        );
    }
    Ok(drawing)
}
