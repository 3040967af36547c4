//! Points of pieces that must meet at the same place of a print.

use kurbo::{Point, Vec2};
use recloth::outline::Piece;

use crate::cleave::moved;
use crate::{Hand, Part};

/// A point of a part that meets those of the same name, so that a stripe, check or print runs on across the seam.
///
/// It lies on the seam line, not on the cut line: there the pieces meet.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct MatchPoint {
    /// Points that meet have the same name.
    pub name: String,
    /// Where it is, on the axes of the outline (mm, each coordinate -1e5 to 1e5).
    pub at: Point,
    /// Which pieces it meets, where the print repeats across the grain.
    #[cfg_attr(feature = "serde", serde(default))]
    pub side: MatchSide,
}

/// Which pieces a point meets across the grain. Along the grain all points of a name meet, those of both hands: the print is
/// level all round.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum MatchSide {
    /// Those of its own hand: the side seams of a left front and a left back. A mirrored piece meets the print mirrored, so
    /// the right ones need not have it where the left ones have.
    #[default]
    Own,
    /// Those of the other hand: it is on the half of a piece cut on a fold that mirrors the drawn one.
    Other,
    /// Those of both hands, which the seam joins, as at a centre back. All points of this name then meet.
    Both,
    /// None: it is level with them and no more, as are all points but one of a slanting seam, from which stripes along the
    /// grain run out at an angle.
    Level,
}

/// Whom a point meets across the grain.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Meets {
    Hand(Hand),
    Both,
}

impl MatchPoint {
    /// Whom it meets across the grain, on a piece of this hand; `None` for nobody.
    pub(crate) fn meets(&self, hand: Hand) -> Option<Meets> {
        match (self.side, hand) {
            (MatchSide::Level, _) => None,
            (MatchSide::Both, _) => Some(Meets::Both),
            (MatchSide::Own, hand) => Some(Meets::Hand(hand)),
            (MatchSide::Other, Hand::AsDrawn) => Some(Meets::Hand(Hand::Mirrored)),
            (MatchSide::Other, Hand::Mirrored) => Some(Meets::Hand(Hand::AsDrawn)),
        }
    }
}

impl Part {
    /// The part with one more point to match, of its own hand.
    ///
    /// ```
    /// use recloth_lay::Part;
    /// let gore = Part::new("gore", [(0.0, 0.0), (420.0, 0.0), (300.0, 800.0), (120.0, 800.0)]).matching("hip", (315.0, 600.0));
    /// assert_eq!(gore.matches.len(), 1);
    /// ```
    pub fn matching(mut self, name: impl Into<String>, at: impl Into<Point>) -> Part {
        self.matches.push(MatchPoint {
            name: name.into(),
            at: at.into(),
            side: MatchSide::Own,
        });
        self
    }

    /// The part of this piece with one of the piece's notches to match, by its name: each notch of that name, where it is on
    /// the seam line. Of a piece on a fold those of both halves.
    ///
    /// # Errors
    /// As of [`Piece::unfold`]; `NoSolution` naming `notch`: the piece has none of that name.
    ///
    /// ```
    /// use recloth::outline::{Curve, Edge, Piece};
    /// use recloth_lay::Part;
    /// let corners = [(0.0, 0.0), (300.0, 0.0), (300.0, 600.0), (0.0, 600.0), (0.0, 0.0)];
    /// let side = |ends: &[(f64, f64)]| Edge::seam("side", Curve::line(ends[0], ends[1]), 15.0);
    /// let mut edges: Vec<Edge> = corners.windows(2).map(side).collect();
    /// edges[1] = edges[1].clone().notch("hip", 400.0, 1);
    /// let piece = Piece::new("skirt panel", edges)?;
    /// let part = Part::of(&piece, 0.05)?.matching_notch(&piece, "hip")?;
    /// assert_eq!(part.matches[0].at, (300.0, 400.0).into());
    /// assert!(part.matching_notch(&piece, "knee").is_err());
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn matching_notch(mut self, piece: &Piece, name: &str) -> Result<Part, recloth::Error> {
        let whole = piece.unfold()?;
        // Opened out, the fold is gone and every other edge is there twice, the drawn ones first.
        let drawn = match piece.fold() {
            Some(_) => piece.edges().len() - 1,
            None => piece.edges().len(),
        };
        let before = self.matches.len();
        for (index, edge) in whole.edges().iter().enumerate() {
            for notch in edge.notches.iter().filter(|notch| notch.name == name) {
                let (at, _) = edge.curve.at(notch.distance);
                self.matches.push(MatchPoint {
                    name: name.into(),
                    at,
                    side: match index < drawn {
                        true => MatchSide::Own,
                        false => MatchSide::Other,
                    },
                });
            }
        }
        match self.matches.len() > before {
            true => Ok(self),
            false => Err(recloth::Error::no_solution(
                "notch",
                f64::NAN,
                f64::NAN,
                f64::NAN,
            )),
        }
    }
}

/// The points to match of a part whose corners beyond a line have moved, moved with them.
pub(crate) fn move_matches(part: &mut Part, along: Vec2, beyond: f64, out: f64) {
    for point in &mut part.matches {
        point.at = moved(&[point.at], along, beyond, out)[0];
    }
}
