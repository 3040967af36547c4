//! A corner from the two ends of a base, and where it may lie when the readings are out.

use recloth::Error;
use recloth::panel::trilaterate;
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{arc, dimension, ring, words};

const SCALE: f64 = 4.0;
const BASE: f64 = 500.0;
const FROM_START: f64 = 300.0;
const FROM_END: f64 = 400.0;
/// Far more than a tape errs, so that the kite can be seen.
const ERROR: f64 = 20.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let corner = |more_start: f64, more_end: f64| {
        trilaterate(BASE, FROM_START + more_start, FROM_END + more_end)
            .map(|found| Point::new(found.along / SCALE, found.across / SCALE))
    };
    let (start, end) = (Point::ZERO, Point::new(BASE / SCALE, 0.0));
    let apex = corner(0.0, 0.0)?;
    let kite = ring(&[
        corner(ERROR, ERROR)?,
        corner(-ERROR, ERROR)?,
        corner(-ERROR, -ERROR)?,
        corner(ERROR, -ERROR)?,
    ]);

    let mut drawing = Drawing::new("A corner found by two tape readings");
    drawing.area(Tone::Cloth, ring(&[start, end, apex]));
    drawing
        .area(Tone::Piece, kite.clone())
        .line(Pen::Flaw, kite);
    drawing.polygon(Pen::Panel, &[start, end, apex]);
    // The swing of the tape about either end.
    for (centre, radius) in [(start, FROM_START), (end, FROM_END)] {
        let out = apex - centre;
        let angle = libm::atan2(out.y, out.x).to_degrees();
        let mut swing = BezPath::new();
        arc(
            &mut swing,
            centre,
            radius / SCALE,
            angle - 11.0,
            angle + 11.0,
        );
        drawing.line(Pen::Construction, swing);
    }
    let foot = Point::new(apex.x, 0.0);
    dimension(&mut drawing, foot, apex, "y", -4.0);
    let below = |point: Point| Point::new(point.x, -5.0);
    dimension(&mut drawing, below(start), below(foot), "x", -4.0);
    dimension(
        &mut drawing,
        Point::new(0.0, -14.0),
        Point::new(end.x, -14.0),
        "base c",
        -4.0,
    );
    words(
        &mut drawing,
        "b",
        Point::new(apex.x / 2.0 - 5.0, apex.y / 2.0 + 3.0),
    );
    words(
        &mut drawing,
        "a",
        Point::new((apex.x + end.x) / 2.0 + 4.0, apex.y / 2.0 + 4.0),
    );
    words(&mut drawing, "start", Point::new(-7.0, 0.0));
    words(&mut drawing, "end", Point::new(end.x + 7.0, 0.0));
    Ok(drawing)
}
