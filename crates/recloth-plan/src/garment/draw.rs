//! Small helps for drawing pieces.

use recloth::Error;
use recloth::closure::buttonhole;
use recloth::outline::{Curve, Cutting, Edge, Hand, Piece};
use recloth::units::INCH;

use crate::brief::Buttons;
use crate::measure::Tape;

/// The sides of a rectangular piece, anticlockwise from the lower one: name, and role and allowance by a function.
pub(crate) type Side<'a> = (&'a str, fn(String, Curve, f64) -> Edge, f64);

/// A rectangle, its grain straight up or along its width.
pub(crate) fn rectangle(
    name: &str,
    (width, height): (f64, f64),
    sides: [Side<'_>; 4],
    grain_along_width: bool,
) -> Result<Piece, Error> {
    let corners = [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)];
    let edges = (0..4).map(|i| {
        let (side, make, allowance) = sides[i];
        make(
            side.to_owned(),
            Curve::line(corners[i], corners[(i + 1) % 4]),
            allowance,
        )
    });
    let piece = Piece::new(name, edges.collect())?;
    // Off the middle, where the name stands.
    if grain_along_width {
        grain(
            piece,
            (0.1 * width, 0.25 * height),
            (0.4 * width, 0.25 * height),
        )
    } else {
        grain(
            piece,
            (0.2 * width, 0.25 * height),
            (0.2 * width, 0.75 * height),
        )
    }
}

/// The piece with a grain line from one point to another.
pub(crate) fn grain(piece: Piece, from: (f64, f64), to: (f64, f64)) -> Result<Piece, Error> {
    piece.with_grain(kurbo::Line::new(from, to))
}

/// The piece with how many, from which cloth.
pub(crate) fn cut(
    piece: Piece,
    count: u32,
    hand: Hand,
    cloth: &str,
    interfacing: Option<&str>,
) -> Result<Piece, Error> {
    piece.with_cutting(Cutting {
        count,
        hand,
        cloth: cloth.to_owned(),
        interfacing: interfacing.map(str::to_owned),
    })
}

/// The buttonholes of one opening in words, for the step that works them: how many and how long.
pub(crate) fn buttonholes(tape: &Tape, buttons: &Buttons) -> Result<String, Error> {
    let slit = tape.text(buttonhole(buttons.diameter, buttons.thickness, 0.0)?);
    Ok(match buttons.count {
        1 => format!("work the buttonhole, {slit} long (try it on a scrap)"),
        count => format!("work the {count} buttonholes, {slit} long (try one on a scrap)"),
    })
}

/// A quarter of an inch, the small change of the trade.
pub(crate) const QUARTER: f64 = INCH / 4.0;
