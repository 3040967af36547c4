//! A diamond gusset: seam line and cut edge.

use recloth::Error;
use recloth::gore::gusset;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen};

use super::draw::{dimension, words};

pub(super) fn drawing() -> Result<Drawing, Error> {
    let added = 120.0;
    let diamond = gusset(100.0, added, 10.0)?;
    let mut drawing = Drawing::new("A diamond gusset with its allowances");
    let corners = |long: f64, short: f64| {
        [
            Point::new(long / 2.0, 0.0),
            Point::new(0.0, short / 2.0),
            Point::new(-long / 2.0, 0.0),
            Point::new(0.0, -short / 2.0),
        ]
    };
    let seam = corners(diamond.long_diagonal, added);
    drawing.polygon(Pen::Cut, &corners(diamond.cut_long, diamond.cut_short));
    drawing.polygon(Pen::Seam, &seam);
    dimension(&mut drawing, seam[2], seam[0], "", 0.0);
    words(&mut drawing, "160 long", Point::new(38.0, -5.0));
    dimension(&mut drawing, seam[3], seam[1], "", 0.0);
    words(&mut drawing, "adds 120", Point::new(16.0, 24.0));
    words(&mut drawing, "slit 100", Point::new(-56.0, 46.0));
    let below = -diamond.cut_short / 2.0 - 8.0;
    dimension(
        &mut drawing,
        Point::new(-diamond.cut_long / 2.0, below),
        Point::new(diamond.cut_long / 2.0, below),
        "cut 193.3",
        -4.5,
    );
    Ok(drawing)
}
