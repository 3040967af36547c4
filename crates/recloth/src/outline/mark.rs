//! Marks inside a piece: darts, drill points, lines, buttonholes, and what is cut out of it.

use alloc::string::String;
use alloc::vec::Vec;
use kurbo::{Affine, Point, Vec2};

use super::curve::Curve;
use super::edge::{Edge, reversed_ring};
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

/// What a line marked inside a piece is for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
#[non_exhaustive]
pub enum LineKind {
    /// Any other line: its name says what for.
    #[default]
    Plain,
    /// Where the piece is folded or pressed.
    Fold,
    /// Where another part is laid or sewn on.
    Placement,
    /// Where it is stitched.
    Stitching,
    /// Where it is slashed when it is made up, as for a welt or a placket.
    Slash,
    /// Where a stripe of the cloth must lie.
    Stripe,
}

/// A closed ring of edges within a piece, inside which the cloth is cut away: a keyhole, a window, an eyelet. Each edge has its
/// own allowance, which lies inside the ring where the edge is a seam line. As of a piece the cloth lies to the left of every
/// edge, so the ring runs clockwise; one given counter-clockwise is turned round.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Cutout {
    /// Name.
    pub name: String,
    /// Its edges, each starting where the one before ends.
    pub edges: Vec<Edge>,
}

impl Cutout {
    /// Area cut away, within its drawn lines (mm²).
    pub fn area(&self) -> f64 {
        let shares = self.edges.iter().map(|edge| edge.curve.area_share());
        shares.sum::<f64>().abs()
    }

    /// The same cut-out after a rigid motion.
    fn moved(&self, motion: Affine, flips: bool) -> Cutout {
        let moved = self.edges.iter().map(|edge| Edge {
            curve: edge.curve.moved(motion, flips),
            ..edge.clone()
        });
        let edges = moved.collect();
        Cutout {
            name: self.name.clone(),
            edges: if flips { reversed_ring(edges) } else { edges },
        }
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
        /// What it is for.
        #[cfg_attr(feature = "serde", serde(default))]
        kind: LineKind,
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
    /// What is cut out of the piece.
    Cutout(Cutout),
}

impl Mark {
    /// The mark's name.
    pub fn name(&self) -> &str {
        match self {
            Mark::Dart(dart) => &dart.name,
            Mark::Cutout(cutout) => &cutout.name,
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
            Mark::Line { name, kind, curve } => Mark::Line {
                name,
                kind,
                curve: curve.moved(motion, flips),
            },
            Mark::Buttonhole { name, ends } => Mark::Buttonhole {
                name,
                ends: ends.map(|end| motion * end),
            },
            Mark::Cutout(cutout) => Mark::Cutout(cutout.moved(motion, flips)),
        }
    }

    /// The mark shifted.
    pub(crate) fn shifted(&self, by: Vec2) -> Mark {
        self.moved(Affine::translate(by), false)
    }

    /// The points that place it, and the bulge of its curve if it has one. A cut-out's edges are checked as edges are.
    pub(crate) fn numbers(&self) -> (Vec<Point>, f64) {
        let curve_numbers = |curve: &Curve| {
            let (points, bulge) = curve.numbers();
            (points.to_vec(), bulge)
        };
        match self {
            Mark::Dart(d) => ([d.point, d.legs[0], d.legs[1]].to_vec(), 0.0),
            Mark::Drill { at, .. } => ([*at].to_vec(), 0.0),
            Mark::Line { curve, .. } => curve_numbers(curve),
            Mark::Buttonhole { ends, .. } => (ends.to_vec(), 0.0),
            Mark::Cutout(cutout) => {
                let points = cutout.edges.iter().map(|edge| edge.curve.numbers().0);
                (points.flatten().collect(), 0.0)
            }
        }
    }
}
