//! Notches at full size: one, two and three slits, and a wedge.

use recloth::Error;
use recloth::outline::{Curve, Edge, Piece};
use recloth_sheet::kurbo::{Point, Rect};
use recloth_sheet::{Drawing, Group};

use super::draw::{pattern, words};

pub(super) fn drawing() -> Result<Drawing, Error> {
    let corners = [(0.0, 0.0), (150.0, 0.0), (150.0, 60.0), (0.0, 60.0)];
    let line = |from: usize| Curve::line(corners[from], corners[(from + 1) % 4]);
    let top = Edge::seam("top", line(2), 10.0)
        .notch("one", 130.0, 1)
        .notch("two", 95.0, 2)
        .notch("three", 60.0, 3)
        .wedge("wedge", 25.0, 1);
    let piece = Piece::new(
        "notches",
        vec![
            Edge::seam("foot", line(0), 10.0),
            Edge::seam("right", line(1), 10.0),
            top,
            Edge::seam("left", line(3), 10.0),
        ],
    )?;
    let mut cut = Drawing::new("");
    pattern(&mut cut, &piece, 1.0, Point::ORIGIN)?;
    let mut drawing = Drawing::new("Notches at full size");
    drawing.group(Group {
        id: String::new(),
        title: String::new(),
        clip: Some(Rect::new(0.0, 44.0, 150.0, 71.0)),
        shapes: cut.shapes,
    });
    for (text, x) in [
        ("one", 20.0),
        ("two", 55.0),
        ("three", 90.0),
        ("a wedge", 125.0),
    ] {
        words(&mut drawing, text, Point::new(x, 54.0));
    }
    Ok(drawing)
}
