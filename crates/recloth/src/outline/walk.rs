//! Walking one edge along another: do they match, length and notch for notch?

use core::f64::consts::PI;

use alloc::string::String;
use alloc::vec::Vec;

use super::edge::{Edge, Role};
use super::piece::Piece;
use super::swing::angle;
use crate::Error;

/// Which way the other edges run where both are sewn together.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Way {
    /// The start of one meets the end of the other, as of two pieces drawn with the same side up.
    #[default]
    Against,
    /// Start meets start, as where one of the two pieces is cut mirrored.
    Along,
}

/// Two rows of edges walked along each other.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct Walk {
    /// Length of these edges (mm).
    pub length: f64,
    /// Length of the other edges (mm).
    pub other_length: f64,
    /// `length - other_length` (mm): what must be eased in, if positive.
    pub difference: f64,
    /// The notches in the order met, then those that only the other edges have.
    pub notches: Vec<WalkNotch>,
    /// Kink of the edges that run on across the seam where the walk starts, once it is sewn (degrees): 0 where they run
    /// on smoothly, positive for a peak, negative for a dent. None where one of them lies on a fold.
    pub start_kink_deg: Option<f64>,
    /// The same where the walk ends.
    pub end_kink_deg: Option<f64>,
}

/// A part of a walk, from one notch that both sides have, or the start, to the next, or the end.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WalkSection {
    /// Name of the notch at its end; none at the end of the walk.
    pub to: Option<String>,
    /// Length of these edges (mm).
    pub length: f64,
    /// Length of the other edges (mm); negative where their notches come in another order.
    pub other_length: f64,
    /// `length - other_length` (mm): what must be eased in, if positive, or stretched, if negative.
    pub difference: f64,
}

impl WalkSection {
    /// The ease as a share of the other edges (%), negative where these must be stretched; none where those have no
    /// length there.
    pub fn ease_pct(&self) -> Option<f64> {
        let eased = self.other_length > 0.0;
        eased.then(|| 100.0 * self.difference / self.other_length)
    }
}

impl Walk {
    /// The walk from notch to notch: where the ease lies.
    pub fn sections(&self) -> Vec<WalkSection> {
        let paired = self
            .notches
            .iter()
            .filter_map(|notch| Some((Some(notch.name.clone()), notch.distance?, notch.other?)));
        let mut last = (0.0, 0.0);
        paired
            .chain([(None, self.length, self.other_length)])
            .map(|(to, distance, other)| {
                let (length, other_length) = (distance - last.0, other - last.1);
                last = (distance, other);
                WalkSection {
                    to,
                    length,
                    other_length,
                    difference: length - other_length,
                }
            })
            .collect()
    }
}

/// A notch met on a walk. Distances are from where the walk starts.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct WalkNotch {
    /// Its name.
    pub name: String,
    /// Where it is on these edges (mm); none if it is not there.
    pub distance: Option<f64>,
    /// Where it is on the other edges (mm); none if it is not there.
    pub other: Option<f64>,
}

impl WalkNotch {
    /// `distance - other` (mm); none where the notch is on one side only.
    pub fn difference(&self) -> Option<f64> {
        Some(self.distance? - self.other?)
    }
}

impl Piece {
    /// Walks edges of this piece along edges of another, by the drawn lines. Edges are listed in the order they are met;
    /// the other's run `way`. Notches are paired by name, the first with the first. At both ends it is asked whether the
    /// edges beside the seam run on smoothly once it is sewn.
    ///
    /// # Errors
    /// `Count`: no `edges` or `other_edges`. `OutOfRange`: no such `edge`.
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Edge, Piece, Way};
    /// let strip = |length: f64| {
    ///     let corners = [(0.0, 0.0), (length, 0.0), (length, 50.0), (0.0, 50.0)];
    ///     let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
    ///     let bottom = Edge::seam("bottom", side(0), 10.0).notch("middle", length / 2.0, 1);
    ///     let rest = (1..4).map(|i| Edge::seam("other", side(i), 10.0));
    ///     Piece::new("strip", [bottom].into_iter().chain(rest).collect())
    /// };
    /// let walk = strip(300.0)?.walk(&[0], &strip(290.0)?, &[0], Way::Against)?;
    /// assert_eq!(walk.difference, 10.0);
    /// assert_eq!(walk.notches[0].difference(), Some(5.0));
    /// assert_eq!(walk.sections()[0].difference, 5.0);
    /// // Both strips end square to the seam, so their ends run on in one line.
    /// assert_eq!((walk.start_kink_deg, walk.end_kink_deg), (Some(0.0), Some(0.0)));
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn walk(
        &self,
        edges: &[usize],
        other: &Piece,
        other_edges: &[usize],
        way: Way,
    ) -> Result<Walk, Error> {
        let walked = |piece, argument, edges: &[usize]| -> Result<Vec<Walked<'_>>, Error> {
            Error::check_items(argument, edges.len(), 1, 1000)?;
            let last = Piece::edges(piece).len() as f64 - 1.0;
            for (index, &edge) in edges.iter().enumerate() {
                Error::check("edge", edge as f64, 0.0, last).map_err(|e| e.at_index(index))?;
            }
            Ok(edges.iter().map(|&edge| (piece, edge)).collect())
        };
        let mine = walked(self, "edges", edges)?;
        Ok(walk_rows(
            &mine,
            &walked(other, "other_edges", other_edges)?,
            way,
        ))
    }
}

/// An edge walked, which there is: the piece and the index.
pub(crate) type Walked<'a> = (&'a Piece, usize);

/// Walks rows of edges, of one piece or of several that are sewn together, along each other. Neither is empty.
pub(crate) fn walk_rows(mine: &[Walked<'_>], others: &[Walked<'_>], way: Way) -> Walk {
    let (length, met) = row(mine, Way::Along);
    let (other_length, other_met) = row(others, way);
    let mut notches: Vec<WalkNotch> = met
        .into_iter()
        .map(|(name, distance)| WalkNotch {
            name,
            distance: Some(distance),
            other: None,
        })
        .collect();
    for (name, distance) in other_met {
        let partner = notches
            .iter_mut()
            .find(|notch| notch.distance.is_some() && notch.other.is_none() && notch.name == name);
        match partner {
            Some(notch) => notch.other = Some(distance),
            None => notches.push(WalkNotch {
                name,
                distance: None,
                other: Some(distance),
            }),
        }
    }
    let before = |&(piece, edge): &Walked<'_>| piece.corner_before(edge);
    let after = |&(piece, edge): &Walked<'_>| piece.corner_after(edge);
    let (first, last) = (others.first(), others.last());
    let (start, end) = match way {
        Way::Against => (first.and_then(after), last.and_then(before)),
        Way::Along => (first.and_then(before), last.and_then(after)),
    };
    Walk {
        length,
        other_length,
        difference: length - other_length,
        notches,
        start_kink_deg: kink_deg(mine.first().and_then(before), start),
        end_kink_deg: kink_deg(mine.last().and_then(after), end),
    }
}

/// Kink of the edge that two corners make when they are sewn side by side, from their inner angles (radians).
pub(crate) fn kink(corner: f64, other: f64) -> f64 {
    PI - corner - other
}

fn kink_deg(corner: Option<f64>, other: Option<f64>) -> Option<f64> {
    Some(kink(corner?, other?).to_degrees())
}

impl Piece {
    /// Inner angle of the corner where an edge starts, in radians; none beside a fold.
    pub(crate) fn corner_before(&self, edge: usize) -> Option<f64> {
        let count = self.edges().len();
        self.inner_angle((edge + count - 1) % count, edge, (edge + count - 1) % count)
    }

    /// Inner angle of the corner where an edge ends, in radians; none beside a fold.
    pub(crate) fn corner_after(&self, edge: usize) -> Option<f64> {
        let next = (edge + 1) % self.edges().len();
        self.inner_angle(edge, next, next)
    }

    fn inner_angle(&self, first: usize, second: usize, neighbour: usize) -> Option<f64> {
        let [a, b] = [first, second].map(|index| &self.edges()[index].curve);
        let turn = angle(a.end_tangent(), b.start_tangent());
        (self.edges()[neighbour].role != Role::Fold).then_some(PI - turn)
    }
}

/// Length of a row of edges and its notches, in the order met.
fn row(edges: &[Walked<'_>], way: Way) -> (f64, Vec<(String, f64)>) {
    let mut length = 0.0;
    let mut notches = Vec::new();
    for &(piece, edge) in edges {
        let edge: &Edge = &piece.edges()[edge];
        let span = edge.length();
        let mut here: Vec<(String, f64)> = edge
            .notches
            .iter()
            .map(|notch| {
                let distance = match way {
                    Way::Along => notch.distance,
                    Way::Against => span - notch.distance,
                };
                (notch.name.clone(), length + distance)
            })
            .collect();
        here.sort_by(|a, b| a.1.total_cmp(&b.1));
        notches.append(&mut here);
        length += span;
    }
    (length, notches)
}
