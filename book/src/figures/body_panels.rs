//! A skirt opened at its centre front: two given fronts, and the backs that make up the girth.

use recloth::Error;
use recloth::body::{remaining_width, share};
use recloth::tape::{Style, format_length};
use recloth::units::INCH;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{dimension, ring, words};

const SCALE: f64 = 7.2;
const FRONT: f64 = 7.25 * INCH;
const DART: f64 = 1.25 * INCH;
const DART_LENGTH: f64 = 5.0 * INCH;
const HIP_DEPTH: f64 = 7.75 * INCH;
/// Between the panels (mm of cloth).
const APART: f64 = 34.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let back = remaining_width(29.5 * INCH, 0.5 * INCH, 2.0 * FRONT, 2, DART)?;
    let hip = share(39.5 * INCH, 2.0 * INCH, 4)?;
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    let inches = |length: f64| format_length(length, Style::InchEighth);
    let mut drawing = Drawing::new("Four panels of a skirt, from waist to hip");

    // The centre front, and the centre back, of each panel stands upright; its side seam slants.
    let panels = [
        ("front, given", FRONT + DART, true),
        ("back", back, false),
        ("back", back, true),
        ("front, given", FRONT + DART, false),
    ];
    for (number, (name, waist, upright_left)) in panels.into_iter().enumerate() {
        let left = (hip + APART) * number as f64;
        let start = if upright_left {
            left
        } else {
            left + hip - waist
        };
        let corners = [
            at(left, 0.0),
            at(left + hip, 0.0),
            at(start + waist, HIP_DEPTH),
            at(start, HIP_DEPTH),
        ];
        let tone = if name == "back" {
            Tone::Piece
        } else {
            Tone::Cloth
        };
        drawing
            .area(tone, ring(&corners))
            .polygon(Pen::Seam, &corners);
        let middle = start + waist / 2.0;
        drawing.polyline(
            Pen::Seam,
            &[
                at(middle - DART / 2.0, HIP_DEPTH),
                at(middle, HIP_DEPTH - DART_LENGTH),
                at(middle + DART / 2.0, HIP_DEPTH),
            ],
        );
        let above = HIP_DEPTH + 24.0;
        dimension(
            &mut drawing,
            at(start, above),
            at(start + waist, above),
            inches(waist)?.as_str(),
            4.0,
        );
        words(&mut drawing, name, at(left + hip / 2.0, 24.0));
        dimension(
            &mut drawing,
            at(left, -24.0),
            at(left + hip, -24.0),
            inches(hip)?.as_str(),
            -4.0,
        );
    }
    Ok(drawing)
}
