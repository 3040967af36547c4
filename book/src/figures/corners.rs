//! A flared panel whose corners show three treatments, and the hem turned up.

use recloth::Error;
use recloth::outline::{Corner, Curve, Edge, Piece};
use recloth_sheet::kurbo::{Affine, BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{ring, words};

const SCALE: f64 = 3.2;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let corners = [(0.0, 0.0), (300.0, 0.0), (260.0, 280.0), (40.0, 280.0)];
    let line = |from: usize| Curve::line(corners[from], corners[(from + 1) % 4]);
    let panel = Piece::new(
        "panel",
        vec![
            Edge::hem("hem", line(0), 50.0).corner(Corner::MirroredOnThis),
            Edge::seam("right side", line(1), 20.0),
            Edge::seam("waist", line(2), 20.0).corner(Corner::SquaredToNext),
            Edge::seam("left side", line(3), 20.0),
        ],
    )?;
    let small = Affine::scale(1.0 / SCALE);
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    let seam: BezPath = ring(&corners.map(Point::from));
    let cut = panel.cut_line(0.01)?.path(0.01);

    let mut drawing = Drawing::new("Three corners");
    drawing.area(Tone::Cloth, small * cut.clone());
    drawing
        .line(Pen::Cut, small * cut)
        .line(Pen::Seam, small * seam);
    for (text, x, y) in [
        ("pointed", 305.0, 308.0),
        ("squared to the side", 5.0, 312.0),
        ("mirrored", 352.0, -28.0),
        ("pointed", -58.0, -28.0),
        ("side", 255.0, 150.0),
        ("side", 45.0, 150.0),
        ("waist", 150.0, 265.0),
        ("fold of the hem", 150.0, 14.0),
    ] {
        words(&mut drawing, text, at(x, y));
    }
    Ok(drawing)
}
