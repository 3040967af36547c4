//! A stretch of a tape with a length between two of its eighths.

use recloth::Error;
use recloth::tape::{Rounding, Style, format_length, round_to};
use recloth::units::INCH;
use recloth_sheet::kurbo::{Point, Vec2};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{ring, words};

/// Five times as large as it is.
const SCALE: f64 = 0.2;
/// What the tape shows (mm).
const FROM: f64 = 653.0;
const TO: f64 = 677.0;
/// A panel of 25 1/4 in less half an inch, and a band of 36 mm.
const LENGTH: f64 = 25.25 * INCH - 0.5 * INCH + 36.0;
const WIDE: f64 = 26.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let at = |length: f64, y: f64| Point::new((length - FROM) / SCALE, y);
    let mut drawing = Drawing::new("A stretch of a tape");
    drawing.area(
        Tone::Cloth,
        ring(&[at(FROM, 0.0), at(TO, 0.0), at(TO, WIDE), at(FROM, WIDE)]),
    );
    for y in [0.0, WIDE] {
        drawing.segment(Pen::Panel, at(FROM, y), at(TO, y));
    }
    let mut mm = FROM + 1.0;
    while mm < TO {
        let long = if mm % 5.0 == 0.0 { 7.0 } else { 4.0 };
        drawing.segment(Pen::Mark, at(mm, WIDE), at(mm, WIDE - long));
        if mm % 10.0 == 0.0 {
            words(&mut drawing, &format!("{mm} mm"), at(mm, WIDE - 9.5));
        }
        mm += 1.0;
    }
    let eighth = INCH / 8.0;
    let mut mark = round_to(FROM, eighth, Rounding::Up)?;
    while mark < TO {
        let quarter = (mark / eighth).round() % 2.0 == 0.0;
        let long = if quarter { 7.0 } else { 4.0 };
        drawing.segment(Pen::Mark, at(mark, 0.0), at(mark, long));
        let text = format_length(mark, Style::InchEighth)?;
        let text = text.as_str().trim_end_matches(" in");
        words(&mut drawing, text, at(mark, -4.0));
        mark += eighth;
    }

    drawing.segment(Pen::Cut, at(LENGTH, 0.0), at(LENGTH, WIDE + 5.0));
    words(
        &mut drawing,
        &format!("{LENGTH:.2} mm"),
        at(LENGTH, WIDE + 8.0),
    );
    words(&mut drawing, "inches", at(FROM + 1.4, 9.5));
    let foot = Point::new(at(LENGTH, 0.0).x, -10.0);
    drawing.segment(
        Pen::Mark,
        foot - Vec2::new(0.0, 1.3),
        foot + Vec2::new(0.0, 1.3),
    );
    for (way, text, side) in [
        (Rounding::Down, "down, and nearest", -17.0),
        (Rounding::Up, "up", 6.0),
    ] {
        let to = at(round_to(LENGTH, eighth, way)?, -10.0);
        drawing.segment(Pen::Construction, foot, to);
        drawing.segment(
            Pen::Mark,
            to - Vec2::new(0.0, 1.3),
            to + Vec2::new(0.0, 1.3),
        );
        words(&mut drawing, text, Point::new(to.x + side, -10.0));
    }
    Ok(drawing)
}
