//! Two side seams walked along each other, from notch to notch.

use recloth::Error;
use recloth::outline::{Curve, Edge, PairedNotch, Piece, Way};
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen};

use super::draw::{pattern, words};

const SCALE: f64 = 3.6;
/// Between the two pieces (mm on the page).
const GAP: f64 = 44.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let half = |name: &str, width: f64, side: f64| {
        let corners = [(0.0, 0.0), (width, 0.0), (width, side), (0.0, side)];
        let names = ["hem", "side", "top", "centre"];
        let line = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
        Piece::new(
            name,
            (0..4)
                .map(|i| Edge::seam(names[i], line(i), 15.0))
                .collect(),
        )
    };
    // Ease is drawn four times too large, or nobody would see it.
    let paired = |name: &str, distance: f64, ease: f64, marks: u32| PairedNotch {
        name: name.into(),
        distance,
        ease,
        marks,
    };
    let notches = [paired("hip", 60.0, 0.0, 1), paired("bust", 180.0, 24.0, 2)];
    let [back, front] = half("back", 90.0, 324.0)?.pair_notches(
        &[1],
        &half("front", 90.0, 300.0)?,
        &[1],
        Way::Along,
        &notches,
    )?;
    let front = front.mirror().shifted((90.0, 0.0));
    let mut drawing = Drawing::new("Two seams walked from notch to notch");
    pattern(&mut drawing, &back, SCALE, Point::ORIGIN)?;
    let right = 90.0 / SCALE + GAP;
    pattern(&mut drawing, &front, SCALE, Point::new(right, 0.0))?;
    let stops = [(0.0, 0.0), (60.0, 60.0), (204.0, 180.0), (324.0, 300.0)];
    for (on_back, on_front) in stops {
        drawing.segment(
            Pen::Construction,
            Point::new(90.0 / SCALE, on_back / SCALE),
            Point::new(right, on_front / SCALE),
        );
    }
    let middle = 90.0 / SCALE + GAP / 2.0;
    for (text, up) in [
        ("60 on 60", 28.0),
        ("126 on 120", 120.0),
        ("120 on 120", 248.0),
    ] {
        words(&mut drawing, text, Point::new(middle, up / SCALE));
    }
    words(&mut drawing, "back", Point::new(12.0, 42.0));
    words(&mut drawing, "front", Point::new(right + 13.0, 42.0));
    Ok(drawing)
}
