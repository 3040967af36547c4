//! The lower end of a lined skirt, from its edge: the hem turned up, and the lining's fold above it.

use recloth::Error;
use recloth::lining::lining_length;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen};

use super::draw::{dimension, words};

const LENGTH: f64 = 670.0;
const HEM: f64 = 45.0;
const CLEARANCE: f64 = 20.0;
/// Only the lowest part is drawn, at true scale.
const ABOVE: f64 = 82.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let lining = lining_length(LENGTH, HEM, CLEARANCE)?;
    let mut drawing = Drawing::new("A lining that hangs in a fold over the hem");
    // From left to right: the shell, its hem, the lining that comes back up, the lining that comes down.
    let (shell, hem, up, down) = (0.0, 5.0, 9.0, 14.0);
    let top = HEM;
    drawing.polyline(
        Pen::Panel,
        &[
            Point::new(shell, ABOVE),
            Point::ZERO,
            Point::new(hem, 0.0),
            Point::new(hem, top),
        ],
    );
    let fold = top - lining.fold;
    drawing.polyline(
        Pen::Mark,
        &[
            Point::new(down, ABOVE),
            Point::new(down, fold),
            Point::new(up, fold),
            Point::new(up, top),
            Point::new(hem, top),
        ],
    );
    words(&mut drawing, "linen", Point::new(-8.0, ABOVE - 8.0));
    words(&mut drawing, "lining", Point::new(down + 9.0, ABOVE - 8.0));
    words(&mut drawing, "seam", Point::new(up + 1.0, top + 4.0));
    let out = -20.0;
    dimension(
        &mut drawing,
        Point::new(out, 0.0),
        Point::new(out, top),
        &format!("hem {HEM}"),
        9.0,
    );
    let right = down + 8.0;
    for (from, to, text) in [
        (fold, top, format!("fold {}", lining.fold)),
        (0.0, fold, format!("clearance {CLEARANCE}")),
    ] {
        dimension(
            &mut drawing,
            Point::new(right, from),
            Point::new(right, to),
            &text,
            -14.0,
        );
    }
    for (from, height) in [(hem, 0.0), (down, fold), (up + 7.0, top)] {
        drawing.segment(
            Pen::Construction,
            Point::new(from + 1.0, height),
            Point::new(right + 2.0, height),
        );
    }
    drawing.segment(
        Pen::Construction,
        Point::new(out - 2.0, top),
        Point::new(hem, top),
    );
    drawing.segment(Pen::Construction, Point::new(out - 2.0, 0.0), Point::ZERO);
    Ok(drawing)
}
