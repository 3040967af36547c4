//! One gore: three widths, the slanted side, and the hem curved up to its ends.

use recloth::Error;
use recloth::gore::gore;
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{dimension, words};

const SCALE: f64 = 7.0;
const LENGTH: f64 = 670.0;
const HIP_DEPTH: f64 = 200.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let one = gore(760.0, 1050.0, 2000.0, LENGTH, HIP_DEPTH, 4)?;
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    let (waist, hip, hem) = (
        one.waist_width / 2.0,
        one.hip_width / 2.0,
        one.hem_width / 2.0,
    );
    // The end of the hem lies up the slanted side, by what that is longer than the middle.
    let slant = at(hem, -LENGTH);
    let along = at(hip, -HIP_DEPTH) - slant;
    let up = slant + along / libm::hypot(along.x, along.y) * (one.hem_rise / SCALE);

    // The hem through its middle and both risen ends, as one parabola.
    let mut outline = BezPath::new();
    outline.move_to(at(-waist, 0.0));
    outline.line_to(at(-hip, -HIP_DEPTH));
    outline.line_to(Point::new(-up.x, up.y));
    outline.quad_to(Point::new(0.0, 2.0 * slant.y - up.y), up);
    outline.line_to(at(hip, -HIP_DEPTH));
    outline.line_to(at(waist, 0.0));
    outline.close_path();

    let mut drawing = Drawing::new("A gore");
    drawing
        .area(Tone::Cloth, outline.clone())
        .line(Pen::Seam, outline);
    drawing.segment(Pen::Grain, at(0.0, -30.0), at(0.0, -LENGTH + 30.0));
    drawing.segment(Pen::Construction, at(-hip, -HIP_DEPTH), at(hip, -HIP_DEPTH));
    // Straight on to the level of the hem's middle.
    let left = Point::new(-slant.x, slant.y);
    drawing.polyline(
        Pen::Construction,
        &[up, slant, left, Point::new(-up.x, up.y)],
    );
    words(&mut drawing, "waist", at(-45.0, 22.0));
    words(&mut drawing, "hip", at(-60.0, -180.0));
    words(&mut drawing, "hem", at(-120.0, -LENGTH - 26.0));
    words(&mut drawing, "side", at(hip + 105.0, -HIP_DEPTH - 180.0));
    let beside = at(28.0, 0.0).to_vec2();
    dimension(&mut drawing, up + beside, slant + beside, "", 0.0);
    words(
        &mut drawing,
        &format!("{:.0} off", one.hem_rise),
        slant.midpoint(up) + at(88.0, 0.0).to_vec2(),
    );
    dimension(
        &mut drawing,
        at(-hem - 30.0, 0.0),
        at(-hem - 30.0, -LENGTH),
        "length",
        -9.0,
    );
    Ok(drawing)
}
