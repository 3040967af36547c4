//! A front whose neck gapes, and the side dart that takes the gape.

use recloth::Error;
use recloth::dart::dart_from_gape;
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{arc, polar, words};

const SCALE: f64 = 3.6;
const GAPE: f64 = 12.0;
const GAPE_DISTANCE: f64 = 160.0;
const DART_LEG: f64 = 200.0;
/// The fold and the dart are drawn so many times too wide, or nobody would see them.
const WIDER: f64 = 3.0;
/// Middle of the fold and of the dart, seen from the bust point (degrees).
const TO_NECK: f64 = 118.0;
const TO_SIDE: f64 = -25.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let found = dart_from_gape(GAPE, GAPE_DISTANCE, DART_LEG)?;
    let half = WIDER * found.angle_deg / 2.0;
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    let bust = at(0.0, 0.0);
    let from_bust = |distance: f64, angle_deg: f64| polar(bust, distance / SCALE, angle_deg);
    let neck = [TO_NECK + half, TO_NECK - half].map(|angle| from_bust(GAPE_DISTANCE, angle));
    let side = [TO_SIDE + half, TO_SIDE - half].map(|angle| from_bust(DART_LEG, angle));

    // The front: centre front on the left, side seam on the right, cut from the side to the bust point.
    let (low, shoulder) = (-170.0, [at(-40.0, 300.0), at(75.0, 265.0)]);
    let underarm = at(180.0, 60.0);
    let mut front = BezPath::new();
    front.move_to(at(-105.0, low));
    front.line_to(at(-105.0, 20.0));
    front.line_to(neck[0]);
    front.line_to(bust);
    front.line_to(neck[1]);
    front.line_to(shoulder[0]);
    front.line_to(shoulder[1]);
    front.curve_to(at(70.0, 170.0), at(90.0, 80.0), underarm);
    front.line_to(side[0]);
    front.line_to(bust);
    front.line_to(side[1]);
    front.line_to(at(175.0, low));
    front.close_path();

    let mut drawing = Drawing::new("A gape at the neck becomes a dart at the side");
    drawing
        .area(Tone::Cloth, front.clone())
        .line(Pen::Seam, front);
    drawing.line(Pen::Mark, super::draw::circle(bust, 0.8));
    let radius = 70.0 / SCALE;
    for middle in [TO_NECK, TO_SIDE] {
        let mut angle = BezPath::new();
        arc(&mut angle, bust, radius, middle - half, middle + half);
        drawing.line(Pen::Mark, angle);
    }
    words(
        &mut drawing,
        "gape g",
        from_bust(GAPE_DISTANCE + 32.0, TO_NECK + 6.0),
    );
    words(&mut drawing, "intake", from_bust(DART_LEG + 36.0, TO_SIDE));
    words(&mut drawing, "r", from_bust(105.0, TO_NECK + half + 8.0));
    words(&mut drawing, "R", from_bust(130.0, TO_SIDE + half + 7.0));
    words(&mut drawing, "bust point", at(-38.0, -16.0));
    words(&mut drawing, "centre front", at(-62.0, low + 14.0));
    words(&mut drawing, "side", at(158.0, low + 14.0));
    words(&mut drawing, "neck", at(-92.0, 190.0));
    Ok(drawing)
}
