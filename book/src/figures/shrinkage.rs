//! The lower ends of a shell and its lining, before and after the wash.

use recloth::Error;
use recloth::cloth::shrink_pair;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{dimension, ring, words};

const SHELL: f64 = 600.0;
const LINING: f64 = 580.0;
/// The lengths are cut short at the top: only what lies below this much is drawn, at true scale.
const ABOVE: f64 = 545.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let washed = shrink_pair(SHELL, LINING, -5.0, -1.0)?;
    let mut drawing = Drawing::new("Shell and lining before and after the wash");
    let mut strip = |x: f64, length: f64, tone: Tone, name: &str| {
        let low = ABOVE - length;
        // A torn upper end: the strip goes on.
        let outline = [
            (x, 0.0),
            (x, low),
            (x + 22.0, low),
            (x + 22.0, 0.0),
            (x + 15.0, 2.5),
            (x + 7.0, -2.5),
        ]
        .map(Point::from);
        drawing.area(tone, ring(&outline));
        drawing.polygon(Pen::Construction, &outline);
        drawing.segment(Pen::Cut, outline[1], outline[2]);
        words(&mut drawing, name, Point::new(x + 11.0, 6.5));
        low
    };
    let before = (
        strip(0.0, SHELL, Tone::Cloth, "shell"),
        strip(24.0, LINING, Tone::Piece, "lining"),
    );
    let after = (
        strip(74.0, washed.shell_after, Tone::Cloth, "shell"),
        strip(98.0, washed.lining_after, Tone::Piece, "lining"),
    );
    words(&mut drawing, "before", Point::new(23.0, 12.5));
    words(&mut drawing, "after", Point::new(97.0, 12.5));
    for (x, (shell, lining), gap) in [(48.0, before, LINING - SHELL), (122.0, after, washed.below)]
    {
        drawing.segment(
            Pen::Construction,
            Point::new(x - 26.0, shell),
            Point::new(x + 3.0, shell),
        );
        drawing.segment(
            Pen::Construction,
            Point::new(x - 2.0, lining),
            Point::new(x + 3.0, lining),
        );
        let text = format!("{:.1}", gap.abs());
        dimension(
            &mut drawing,
            Point::new(x + 1.5, lining),
            Point::new(x + 1.5, shell),
            "",
            0.0,
        );
        words(
            &mut drawing,
            &text,
            Point::new(x + 8.5, (shell + lining) / 2.0),
        );
    }
    Ok(drawing)
}
