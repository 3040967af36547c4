//! Marks inside a piece: darts, drill points, lines, buttonholes.

use alloc::string::String;
use kurbo::{Affine, Point};

use super::curve::Curve;
use super::vector::length;

/// A dart: folded so that its legs meet, from its opening on an edge to its point.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Dart {
    /// Name.
    pub name: String,
    /// Where it ends, inside the piece.
    pub point: Point,
    /// Ends of its two legs, on the outline.
    pub legs: [Point; 2],
}

impl Dart {
    /// Width taken in at the edge (mm).
    pub fn intake(&self) -> f64 {
        length(self.legs[1] - self.legs[0])
    }

    /// Lengths of the two legs, which are sewn together (mm).
    pub fn leg_lengths(&self) -> [f64; 2] {
        self.legs.map(|leg| length(leg - self.point))
    }
}

/// A mark inside a piece. Plain data: [`Piece::with_marks`](super::Piece::with_marks) checks it.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[non_exhaustive]
pub enum Mark {
    /// A dart.
    Dart(Dart),
    /// A drill point, or a button.
    Drill {
        /// Name.
        name: String,
        /// Where.
        at: Point,
    },
    /// A line to be marked: where to fold, to sew a pocket on, to slash.
    Line {
        /// Name.
        name: String,
        /// Where it runs.
        curve: Curve,
    },
    /// A buttonhole: the slit from one end to the other.
    Buttonhole {
        /// Name.
        name: String,
        /// Ends of the slit.
        ends: [Point; 2],
    },
}

impl Mark {
    /// The mark's name.
    pub fn name(&self) -> &str {
        match self {
            Mark::Dart(dart) => &dart.name,
            Mark::Drill { name, .. } | Mark::Line { name, .. } | Mark::Buttonhole { name, .. } => {
                name
            }
        }
    }

    /// The mark after a rigid motion; `flips` where the motion mirrors.
    pub(crate) fn moved(&self, motion: Affine, flips: bool) -> Mark {
        match self.clone() {
            Mark::Dart(dart) => Mark::Dart(Dart {
                point: motion * dart.point,
                legs: dart.legs.map(|leg| motion * leg),
                ..dart
            }),
            Mark::Drill { name, at } => Mark::Drill {
                name,
                at: motion * at,
            },
            Mark::Line { name, curve } => Mark::Line {
                name,
                curve: curve.moved(motion, flips),
            },
            Mark::Buttonhole { name, ends } => Mark::Buttonhole {
                name,
                ends: ends.map(|end| motion * end),
            },
        }
    }

    /// The points that place it, and the bulge of its curve if it has one.
    pub(crate) fn numbers(&self) -> ([Point; 4], f64) {
        match self {
            Mark::Dart(d) => ([d.point, d.legs[0], d.legs[1], d.point], 0.0),
            Mark::Drill { at, .. } => ([*at; 4], 0.0),
            Mark::Line { curve, .. } => curve.numbers(),
            Mark::Buttonhole { ends, .. } => ([ends[0], ends[1], ends[0], ends[1]], 0.0),
        }
    }
}
