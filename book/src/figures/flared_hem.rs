//! A slice of a flared hem: its raw edge, its fold, and the line that the raw edge comes to lie on.

use recloth::Error;
use recloth::seam::hem_on_curve;
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{arc, polar, words};

const SCALE: f64 = 3.0;
const RADIUS: f64 = 840.0;
const DEPTH: f64 = 40.0;
/// Half the angle of the slice (degrees).
const HALF: f64 = 12.5;
const DOWN: f64 = 270.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let slice = 2.0 * HALF.to_radians() * RADIUS;
    let hem = hem_on_curve(RADIUS, DEPTH, slice)?;
    let centre = Point::new(0.0, RADIUS / SCALE);
    let curve = |radius: f64| {
        let mut path = BezPath::new();
        arc(&mut path, centre, radius / SCALE, DOWN - HALF, DOWN + HALF);
        path
    };
    let (raw, line, top) = (RADIUS + DEPTH, RADIUS - DEPTH, RADIUS - 95.0);

    let mut drawing = Drawing::new("A slice of a flared hem");
    let mut cloth = curve(raw);
    arc(&mut cloth, centre, top / SCALE, DOWN + HALF, DOWN - HALF);
    cloth.close_path();
    drawing.area(Tone::Cloth, cloth.clone());
    drawing.line(Pen::Construction, cloth);
    drawing.line(Pen::Cut, curve(raw));
    drawing.line(Pen::Fold, curve(RADIUS));
    drawing.line(Pen::Seam, curve(line));

    // Each on the inner side of its line, at the middle.
    let mut name = |radius: f64, text: String| {
        words(
            &mut drawing,
            &text,
            polar(centre, radius / SCALE - 3.4, DOWN),
        );
    };
    name(raw, format!("raw edge, {:.0}", hem.raw_edge));
    name(RADIUS, format!("fold, {slice:.0}"));
    name(
        line,
        format!("where it is to lie, {:.0}", hem.raw_edge - hem.excess),
    );
    Ok(drawing)
}
