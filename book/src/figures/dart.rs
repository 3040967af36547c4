//! A dart with its roof: the waist edge mirrored over the fold.

use recloth::Error;
use recloth::dart::dart;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{dimension, ring, words};

const SCALE: f64 = 1.4;
const INTAKE: f64 = 30.0;
const LENGTH: f64 = 110.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let found = dart(INTAKE, LENGTH)?;
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    let half = INTAKE / 2.0;
    // Folded, the roof lies on the waist edge: it leaves the leg as steeply as the edge turns.
    let peak = half * libm::tan(found.angle_deg.to_radians());
    let (left, right, point, roof) = (
        at(-half, 0.0),
        at(half, 0.0),
        at(0.0, -LENGTH),
        at(0.0, peak),
    );
    let (side, centre, low) = (-75.0, 75.0, -135.0);

    let mut drawing = Drawing::new("A dart at the waist");
    let cloth = [
        at(side, low),
        at(centre, low),
        at(centre, 0.0),
        right,
        roof,
        left,
        at(side, 0.0),
    ];
    drawing.area(Tone::Cloth, ring(&cloth));
    drawing.polyline(Pen::Seam, &[at(side, low), at(side, 0.0), left]);
    drawing.polyline(Pen::Seam, &[right, at(centre, 0.0), at(centre, low)]);
    drawing.polyline(Pen::Cut, &[left, roof, right]);
    drawing.polyline(Pen::Seam, &[left, point, right]);
    drawing.segment(Pen::Fold, roof, point);
    // The waist edge carried on, to show the kink.
    drawing.segment(Pen::Construction, left, right);
    dimension(
        &mut drawing,
        at(-half, 14.0),
        at(half, 14.0),
        "intake w",
        4.0,
    );
    dimension(
        &mut drawing,
        at(34.0, 0.0),
        at(34.0, -LENGTH),
        "length L",
        10.0,
    );
    drawing.segment(Pen::Construction, point, at(38.0, -LENGTH));
    words(&mut drawing, "leg", at(-18.0, -50.0));
    words(&mut drawing, "waist", at(-52.0, -6.0));
    words(&mut drawing, "fold", at(5.5, -30.0));
    Ok(drawing)
}
