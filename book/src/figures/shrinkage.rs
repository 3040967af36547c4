//! The lower ends of a shell and its lining, before and after the wash.

use recloth::Error;
use recloth::cloth::{cut_for_change, dimensional_change};
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{dimension, ring, words};

pub fn drawing() -> Result<Drawing, Error> {
    Ok(Drawing::new(""))
}
