//! One shaped band twice: in straight sections with slanted ends, and in parts of one ring.

use recloth::Error;
use recloth::band::{SquareEnds, curved_band, sectioned_band};
use recloth_sheet::kurbo::{BezPath, Point, Vec2};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{arc, polar, ring, words};

const SCALE: f64 = 6.5;
const LENGTHS: [f64; 3] = [150.0, 330.0, 280.0];
const DEPTH: f64 = 38.0;
const TOP: f64 = 740.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let mut drawing = Drawing::new("A band in straight and in curved sections");
    straight(&mut drawing)?;
    curved(&mut drawing)?;
    Ok(drawing)
}

/// The sections joined: each turned by the kink against the one before.
fn straight(drawing: &mut Drawing) -> Result<(), Error> {
    let mut tops = [0.0; 3];
    let band = sectioned_band(&LENGTHS, DEPTH, TOP, SquareEnds::Both, &mut tops)?;
    let mut start = Point::new(-360.0 / SCALE, 12.0);
    for (number, (length, top)) in LENGTHS.into_iter().zip(tops).enumerate() {
        // The middle section lies level.
        let turn_deg = band.join_kink_deg * (number as f64 - 1.0);
        let (sin, cos) = libm::sincos(turn_deg.to_radians());
        let (along, up) = (Vec2::new(cos, sin) / SCALE, Vec2::new(-sin, cos) / SCALE);
        let first_slant = if number == 0 { 0.0 } else { band.slant };
        let end = start + along * length;
        let upper = start + up * DEPTH + along * first_slant;
        let corners = [start, end, upper + along * top, upper];
        drawing
            .area(Tone::Cloth, ring(&corners))
            .polygon(Pen::Seam, &corners);
        let middle = start + along * (length / 2.0);
        words(drawing, &format!("{top}"), middle + up * (DEPTH / 2.0));
        words(drawing, &format!("{length}"), middle - up * 22.0);
        start = end;
    }
    Ok(())
}

/// The sections as parts of one ring.
fn curved(drawing: &mut Drawing) -> Result<(), Error> {
    let mut tops = [0.0; 3];
    let band = curved_band(&LENGTHS, DEPTH, TOP, &mut tops)?;
    let (outer, inner) = (band.outer_radius / SCALE, band.inner_radius / SCALE);
    let centre = Point::new(0.0, outer - 24.0);
    let mut from = -90.0 - band.angle_deg / 2.0;
    for (length, top) in LENGTHS.into_iter().zip(tops) {
        let to = from + (length / band.outer_radius).to_degrees();
        let mut section = BezPath::new();
        arc(&mut section, centre, outer, from, to);
        arc(&mut section, centre, inner, to, from);
        section.close_path();
        drawing
            .area(Tone::Cloth, section.clone())
            .line(Pen::Seam, section);
        let middle = (from + to) / 2.0;
        words(
            drawing,
            &format!("{top:.1}"),
            polar(centre, (outer + inner) / 2.0, middle),
        );
        words(
            drawing,
            &format!("{length}"),
            polar(centre, outer + 3.4, middle),
        );
        from = to;
    }
    Ok(())
}
