//! The same cloth in knife pleats and in box pleats, seen from its edge.

use recloth::Error;
use recloth::fullness::knife_pleats_count;
use recloth::pleat::box_pleats_count;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen};

use super::draw::{dimension, words};

const SCALE: f64 = 3.0;
/// From layer to layer, on the page.
const GAP: f64 = 2.2;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let knife = knife_pleats_count(900.0, 380.0, 30.0)?;
    let boxes = box_pleats_count(900.0, 380.0, 30.0)?;
    let mut drawing = Drawing::new("Knife pleats and box pleats of the same cloth");

    // Forward on top, back beneath, forward again at the bottom, and up between this pleat and the next.
    let (show, depth) = (knife.show / SCALE, knife.depth / SCALE);
    let mut cloth = vec![Point::ZERO];
    for number in 1..=knife.count {
        let end = f64::from(number) * show;
        cloth.extend([
            Point::new(end, 0.0),
            Point::new(end, -GAP),
            Point::new(end - depth, -GAP),
            Point::new(end - depth, -2.0 * GAP),
            Point::new(end, -2.0 * GAP),
        ]);
        if number < knife.count {
            cloth.push(Point::new(end + 1.5, 0.0));
        }
    }
    drawing.polyline(Pen::Cut, &cloth);
    let end = 2.0 * show;
    dimension(
        &mut drawing,
        Point::new(end - show, 4.0),
        Point::new(end, 4.0),
        "",
        0.0,
    );
    words(
        &mut drawing,
        &format!("shows {}", knife.show),
        Point::new(end - show / 2.0, 6.5),
    );
    dimension(
        &mut drawing,
        Point::new(end - depth, -9.0),
        Point::new(end, -9.0),
        "",
        0.0,
    );
    words(
        &mut drawing,
        &format!("deep {}", knife.depth),
        Point::new(end - depth / 2.0, -14.0),
    );

    let (show, depth, top) = (boxes.show / SCALE, boxes.depth / SCALE, -27.0);
    let mut cloth = Vec::new();
    for number in 0..boxes.count {
        let (start, end) = (f64::from(number) * show, f64::from(number + 1) * show);
        cloth.extend([
            Point::new(start, top - 2.0 * GAP),
            Point::new(start + depth, top - 2.0 * GAP),
            Point::new(start + depth, top - GAP),
            Point::new(start, top - GAP),
            Point::new(start, top),
            Point::new(end, top),
            Point::new(end, top - GAP),
            Point::new(end - depth, top - GAP),
            Point::new(end - depth, top - 2.0 * GAP),
            Point::new(end, top - 2.0 * GAP),
        ]);
    }
    drawing.polyline(Pen::Cut, &cloth);
    dimension(
        &mut drawing,
        Point::new(show, top + 4.0),
        Point::new(2.0 * show, top + 4.0),
        "",
        0.0,
    );
    words(
        &mut drawing,
        &format!("shows {}", boxes.show),
        Point::new(1.5 * show, top + 6.5),
    );
    dimension(
        &mut drawing,
        Point::new(0.0, top - 10.0),
        Point::new(boxes.finished / SCALE, top - 10.0),
        "finished 380",
        -4.5,
    );
    Ok(drawing)
}
