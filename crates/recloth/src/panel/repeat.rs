//! Stripes, checks and prints that come again and again.

use kurbo::Point;

use crate::Error;

/// The shortest and the longest repeat (mm).
const LENGTHS: (f64, f64) = (1.0, 2e3);
/// Largest coordinate of where one begins (mm), as of outlines.
const REACH: f64 = 1e5;

/// How a stripe, check or print repeats on a panel. One of the two lengths at least is not 0.
///
/// Printed and woven cloth is rarely true: measure over several repeats and divide.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Repeat {
    /// Length of the repeat along the lengthwise grain (mm, 1 to 2000; 0 where there is none, as on lengthwise stripes).
    #[cfg_attr(feature = "serde", serde(default))]
    pub along: f64,
    /// Length of the repeat across the grain (mm, 1 to 2000; 0 where there is none, as on stripes across the cloth).
    #[cfg_attr(feature = "serde", serde(default))]
    pub across: f64,
    /// A point of the cloth where a repeat begins (mm, each coordinate -1e5 to 1e5).
    #[cfg_attr(feature = "serde", serde(default))]
    pub from: Point,
}

impl Repeat {
    /// A repeat along the grain and across it (mm, 0 for none), from the origin.
    pub fn new(along: f64, across: f64) -> Repeat {
        Repeat {
            along,
            across,
            from: Point::ORIGIN,
        }
    }

    /// The same, beginning at this point.
    pub fn beginning_at(self, from: impl Into<Point>) -> Repeat {
        Repeat {
            from: from.into(),
            ..self
        }
    }

    /// The repeat, if it can be one.
    ///
    /// # Errors
    /// `NotFinite` or `OutOfRange` naming `along`, `across` or `from`; `NoSolution` naming `along`: both are 0.
    pub fn checked(self) -> Result<Repeat, Error> {
        for (name, length) in [("along", self.along), ("across", self.across)] {
            if length != 0.0 {
                Error::check(name, length, LENGTHS.0, LENGTHS.1)?;
            }
        }
        Error::check("from", self.from.x, -REACH, REACH)?;
        Error::check("from", self.from.y, -REACH, REACH)?;
        if self.along == 0.0 && self.across == 0.0 {
            return Err(Error::no_solution("along", 0.0, LENGTHS.0, LENGTHS.1));
        }
        Ok(self)
    }
}
