//! A bound neck: the finished edge and the seam that sews the binding on.

use recloth::Error;
use recloth::binding::{EdgeCurve, curved_binding};
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{arc, dimension, polar, words};

const RADIUS: f64 = 100.0;
const WIDTH: f64 = 8.0;
/// How far the cloth is drawn beyond the seam.
const CLOTH: f64 = 26.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let (from, to): (f64, f64) = (180.0, 270.0);
    let edge = (to - from).to_radians() * RADIUS;
    let bound = curved_binding(edge, RADIUS, WIDTH, EdgeCurve::Inward)?;
    let mut drawing = Drawing::new("A bound neck");
    let curve = |radius: f64| {
        let mut path = BezPath::new();
        arc(&mut path, Point::ZERO, radius, from, to);
        path
    };
    let mut cloth = curve(RADIUS + CLOTH);
    arc(&mut cloth, Point::ZERO, RADIUS, to, from);
    cloth.close_path();
    drawing.area(Tone::Cloth, cloth);
    drawing.line(Pen::Fold, curve(RADIUS));
    drawing.line(Pen::Seam, curve(RADIUS + WIDTH));
    dimension(
        &mut drawing,
        Point::ZERO,
        polar(Point::ZERO, RADIUS, 225.0),
        "",
        0.0,
    );
    words(&mut drawing, "radius 100", Point::new(-29.0, -46.0));
    words(
        &mut drawing,
        &format!("edge {edge:.0}"),
        polar(Point::ZERO, RADIUS - 12.0, 200.0),
    );
    words(
        &mut drawing,
        &format!("seam {:.0}", bound.seam),
        polar(Point::ZERO, RADIUS + 17.0, 247.0),
    );
    Ok(drawing)
}
