//! Walking one edge along another: do they match, length and notch for notch?

use alloc::string::String;
use alloc::vec::Vec;

use super::edge::Edge;
use super::piece::Piece;
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
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
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
}

/// A notch met on a walk. Distances are from where the walk starts.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
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
    /// the other's run `way`. Notches are paired by name, the first with the first.
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
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn walk(
        &self,
        edges: &[usize],
        other: &Piece,
        other_edges: &[usize],
        way: Way,
    ) -> Result<Walk, Error> {
        let (length, mine) = row(self, "edges", edges, Way::Along)?;
        let (other_length, others) = row(other, "other_edges", other_edges, way)?;
        let mut notches: Vec<WalkNotch> = mine
            .into_iter()
            .map(|(name, distance)| WalkNotch {
                name,
                distance: Some(distance),
                other: None,
            })
            .collect();
        for (name, distance) in others {
            let partner = notches.iter_mut().find(|notch| {
                notch.distance.is_some() && notch.other.is_none() && notch.name == name
            });
            match partner {
                Some(notch) => notch.other = Some(distance),
                None => notches.push(WalkNotch {
                    name,
                    distance: None,
                    other: Some(distance),
                }),
            }
        }
        Ok(Walk {
            length,
            other_length,
            difference: length - other_length,
            notches,
        })
    }
}

/// Length of a row of edges and its notches, in the order met.
fn row(
    piece: &Piece,
    argument: &'static str,
    edges: &[usize],
    way: Way,
) -> Result<(f64, Vec<(String, f64)>), Error> {
    Error::check_items(argument, edges.len(), 1, 1000)?;
    let last = piece.edges().len() - 1;
    let mut length = 0.0;
    let mut notches = Vec::new();
    for (index, &edge) in edges.iter().enumerate() {
        Error::check("edge", edge as f64, 0.0, last as f64).map_err(|e| e.at_index(index))?;
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
    Ok((length, notches))
}
