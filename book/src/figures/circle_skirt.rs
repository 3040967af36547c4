//! A half-circle skirt from its middle: waist radius, length, hem.

use recloth::Error;
use recloth::skirt::circle_skirt;
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{arc, dimension, polar, words};

/// One millimetre of the page for so many of cloth.
const SCALE: f64 = 13.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let skirt = circle_skirt(710.0, 600.0, 0.5)?;
    let (waist, hem) = (skirt.waist_radius / SCALE, skirt.hem_radius / SCALE);
    let middle = Point::ZERO;

    let mut ring = BezPath::new();
    arc(&mut ring, middle, waist, 0.0, 180.0);
    arc(&mut ring, middle, hem, 180.0, 0.0);
    ring.close_path();

    let mut drawing = Drawing::new("A half-circle skirt");
    drawing
        .area(Tone::Cloth, ring.clone())
        .line(Pen::Seam, ring);
    drawing.segment(
        Pen::Construction,
        polar(middle, waist, 180.0),
        polar(middle, waist, 0.0),
    );
    drawing.segment(Pen::Mark, Point::new(-1.5, 0.0), Point::new(1.5, 0.0));
    drawing.segment(Pen::Mark, Point::new(0.0, -1.5), Point::new(0.0, 1.5));
    dimension(&mut drawing, middle, polar(middle, waist, 55.0), "r", 3.0);
    dimension(
        &mut drawing,
        polar(middle, waist, 55.0),
        polar(middle, hem, 55.0),
        "length L",
        9.0,
    );
    words(&mut drawing, "waist W", polar(middle, waist + 4.5, 118.0));
    words(&mut drawing, "hem", polar(middle, hem - 4.5, 118.0));
    words(&mut drawing, "middle of the ring", Point::new(0.0, -5.0));
    Ok(drawing)
}
