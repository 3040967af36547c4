//! One piece of elastic at rest, worn, and passing the hips, above the edge of its casing.

use recloth::Error;
use recloth::elastic::elastic;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Label, Pen, Tone};

use super::draw::{WORDS, ring};

/// A way round, laid out flat.
const SCALE: f64 = 5.0;
const DEEP: f64 = 4.0;
const STEP: f64 = 13.5;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let (girth, widest) = (530.0, 580.0);
    let band = elastic(girth, widest, 40.0, 12.0)?;
    let rows = [
        (band.round, format!("at rest {}", band.round)),
        (
            girth,
            format!("worn {girth}: {:.1} % longer", band.worn_pct),
        ),
        (
            widest,
            format!("passing {widest}: {:.1} % longer", band.passing_pct),
        ),
        (widest, format!("edge of the casing, {widest} at least")),
    ];
    let mut drawing = Drawing::new("Elastic at rest, worn and passing the hips");
    for (number, (length, text)) in rows.iter().enumerate() {
        let (y, end) = (-STEP * number as f64, length / SCALE);
        let corners = [(0.0, y), (end, y), (end, y + DEEP), (0.0, y + DEEP)].map(Point::from);
        let is_cloth = number == 3;
        let (tone, pen) = if is_cloth {
            (Tone::Cloth, Pen::Cut)
        } else {
            (Tone::Piece, Pen::Mark)
        };
        drawing.area(tone, ring(&corners)).polygon(pen, &corners);
        // The same fifteen marks, further apart with every pull.
        if !is_cloth {
            for mark in 1..15 {
                let x = end * f64::from(mark) / 15.0;
                drawing.segment(Pen::Construction, Point::new(x, y), Point::new(x, y + DEEP));
            }
        }
        drawing.label(Label::new(text.as_str(), (0.0, y - WORDS - 0.6), WORDS));
    }
    Ok(drawing)
}
