//! Drawings of pieces and lays, at true scale, written as SVG and as PDF.
//!
//! A [`Drawing`] is a list of shapes in millimetres, y up. [`svg()`] writes it for the screen and the browser. For paper,
//! [`sheets()`] cuts drawings into pages of home-printer paper with a cover (test squares, page map) and marks that show
//! how the pages join, [`Drawing::page`] makes one page as large as the drawing, and [`pdf()`] writes pages.
//!
//! ```
//! use recloth_sheet::{Drawing, Paper, Pen, SheetOptions, kurbo::Point, pdf, sheets, svg};
//! let mut square = Drawing::new("Pocket");
//! let corners = [(0.0, 0.0), (300.0, 0.0), (300.0, 200.0), (0.0, 200.0)].map(Point::from);
//! square.polygon(Pen::Cut, &corners);
//! assert!(svg(&square)?.contains("width=\"300.5mm\"")); // the line is 0.5 mm wide
//!
//! let options = SheetOptions { paper: Paper::Letter, ..SheetOptions::default() };
//! let sheets = sheets("Pocket", &[square], &options)?;
//! assert_eq!(sheets.pages.len(), 1 + 2); // the cover, and two pages side by side
//! assert!(pdf("Pocket", &sheets.pages)?.starts_with(b"%PDF"));
//! # Ok::<(), recloth::Error>(())
//! ```
//!
//! The same drawing gives the same bytes on every run: nothing is stamped with a time or a random number.
#![forbid(unsafe_code)]

mod cover;
mod drawing;
mod font;
mod hatch;
mod ink;
mod join;
mod lay;
mod paper;
mod path;
mod pdf;
mod pen;
mod piece;
mod place;
mod sheets;
mod svg;

pub use drawing::{Anchor, Drawing, Group, Label, Shape};
pub use font::text_width;
/// Points, rectangles and paths of a drawing are those of this crate.
pub use kurbo;
pub use lay::{LayPanel, LayPiece, lay_drawing};
pub use paper::{Page, Paper};
pub use pdf::pdf;
pub use pen::{Pen, Tone};
pub use piece::{PieceOptions, piece_drawing};
pub use sheets::{SheetOptions, Sheets, Tile, Tiling, sheets, tile_count};
pub use svg::{Background, svg, svg_on};
