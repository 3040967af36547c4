//! Paper and pages.

use recloth::Error;

use crate::Drawing;

/// A size of paper, upright.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[non_exhaustive]
pub enum Paper {
    /// 210 x 297 mm (ISO 216).
    #[default]
    A4,
    /// 8.5 x 11 in: 215.9 x 279.4 mm.
    Letter,
    /// 297 x 420 mm (ISO 216).
    A3,
    /// Any other size (mm), each 100 to 5000; wider than high for paper laid across.
    Custom {
        /// Width (mm).
        width: f64,
        /// Height (mm).
        height: f64,
    },
}

impl Paper {
    /// Width and height (mm).
    ///
    /// # Errors
    /// `NotFinite` or `OutOfRange` naming `paper_width` or `paper_height`.
    pub fn size(self) -> Result<(f64, f64), Error> {
        let (width, height) = match self {
            Paper::A4 => (210.0, 297.0),
            Paper::Letter => (215.9, 279.4),
            Paper::A3 => (297.0, 420.0),
            Paper::Custom { width, height } => (width, height),
        };
        Ok((
            Error::check("paper_width", width, 100.0, 5000.0)?,
            Error::check("paper_height", height, 100.0, 5000.0)?,
        ))
    }
}

/// One page: a drawing on paper, with its origin in the lower left corner.
#[derive(Clone, Debug, PartialEq)]
pub struct Page {
    /// Width (mm).
    pub width: f64,
    /// Height (mm).
    pub height: f64,
    /// What is on it.
    pub drawing: Drawing,
}
