//! A sample of every draft, of invented measures: the pieces as they are cut, without their words.

use recloth::Error;
use recloth::outline::Piece;
use recloth_sheet::kurbo::{Point, Rect};
use recloth_sheet::{Drawing, Label, text_width};

use super::draw::{WORDS, pattern, words};

#[path = "../../../crates/recloth/tests/drafts/samples.rs"]
mod samples;

/// Width of a figure, room between pieces, and height of a line of words (mm on the page).
const WIDE: f64 = 190.0;
const GAP: f64 = 7.0;
const LINE: f64 = 6.0;

pub(super) fn skirts() -> Result<Drawing, Error> {
    let names = [
        "skirt panel",
        "panel lining",
        "darted skirt",
        "off-centre front",
        "wrap skirt",
        "gored skirt",
    ];
    sheet("Skirts with seams from waist to hem", &names, 16.0)
}

pub(super) fn wide_skirts() -> Result<Drawing, Error> {
    let names = ["circle sector", "tiered skirt", "gathered strip"];
    sheet("Skirts from sectors and from strips", &names, 18.0)
}

pub(super) fn bands() -> Result<Drawing, Error> {
    let names = [
        "straight band",
        "shaped band",
        "sectioned band",
        "curved band",
        "edge band",
        "binding",
        "patch pocket",
    ];
    sheet("Bands, a binding and a pocket", &names, 8.0)
}

pub(super) fn tops() -> Result<Drawing, Error> {
    let names = [
        "V neck top",
        "square neck top",
        "sleeve",
        "recut sleeve",
        "puffed sleeve",
        "pinafore",
    ];
    sheet("Tops, sleeves and a pinafore", &names, 12.0)
}

/// The drafts of these names one after another, each begun below its name, in rows as wide as the page.
fn sheet(title: &str, names: &[&str], scale: f64) -> Result<Drawing, Error> {
    let mut drawing = Drawing::new(title);
    let (mut x, mut y, mut low) = (0.0, 0.0, 0.0_f64);
    for (name, measures) in samples::all() {
        if !names.contains(&name) {
            continue;
        }
        let cells = measures
            .draft()?
            .pieces
            .into_iter()
            .map(|piece| Cell::new(piece, scale))
            .collect::<Result<Vec<Cell>, Error>>()?;
        let together: f64 = cells.iter().map(|cell| cell.wide + GAP).sum();
        if x > 0.0 && x + together > WIDE {
            (x, y) = (0.0, low - 2.0 * LINE);
        }
        drawing.label(Label::new(name, Point::new(x, y), WORDS * 1.3));
        let mut top = y - LINE;
        for cell in cells {
            if x > 0.0 && x + cell.wide > WIDE {
                (x, top) = (0.0, low - LINE);
            }
            let bounds = cell.bounds;
            let middle = x + cell.wide / 2.0;
            let at = Point::new(middle - bounds.center().x, top - bounds.y1);
            pattern(&mut drawing, &cell.piece, scale, at)?;
            let below = top - bounds.height() - LINE / 1.5;
            words(&mut drawing, cell.piece.name(), Point::new(middle, below));
            low = low.min(below);
            x += cell.wide + GAP;
        }
        x += GAP;
    }
    Ok(drawing)
}

/// A piece and its room.
struct Cell {
    piece: Piece,
    /// Of its cut line, on the page.
    bounds: Rect,
    /// With its name below.
    wide: f64,
}

impl Cell {
    fn new(piece: Piece, scale: f64) -> Result<Cell, Error> {
        let cut = piece.cut_line(0.05)?.bounds();
        let bounds = Rect::new(cut.x0, cut.y0, cut.x1, cut.y1).scale_from_origin(1.0 / scale);
        let wide = bounds.width().max(text_width(piece.name(), WORDS));
        Ok(Cell {
            piece,
            bounds,
            wide,
        })
    }
}
