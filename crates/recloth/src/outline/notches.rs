//! Notches of two pieces that are sewn together: which meet, and new ones set on both.

use alloc::string::String;
use alloc::vec::Vec;

use super::edge::{Edge, Notch};
use super::piece::Piece;
use super::place::{NOTHING, Place};
use super::walk::Way;
use crate::Error;

/// A notch by its name, on one piece or on both.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NotchMatch {
    /// Its name.
    pub name: String,
    /// Where it is on this piece; none if it is only on the other.
    pub here: Option<Place>,
    /// Where it is on the other piece; none if it is only on this one.
    pub there: Option<Place>,
    /// How many marks it has on this piece; 0 where it is not.
    pub marks: u32,
    /// How many marks it has on the other piece; 0 where it is not.
    pub other_marks: u32,
}

impl NotchMatch {
    /// Whether it is on both pieces, with as many marks.
    pub fn matches(&self) -> bool {
        self.here.is_some() && self.there.is_some() && self.marks == self.other_marks
    }
}

/// A notch to be set on two rows of edges that are sewn together.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PairedNotch {
    /// Its name on both.
    pub name: String,
    /// How far along the other edges it is (mm), from where the walk starts.
    pub distance: f64,
    /// What these edges are eased in by up to there (mm, -1000 to 1000; negative where they are stretched): it is
    /// `distance + ease` along them.
    pub ease: f64,
    /// How many marks side by side, 1 to 3.
    pub marks: u32,
}

impl Piece {
    /// Pairs the notches of this piece with those of another by their names, the first of a name with the first: in the
    /// order of this piece's edges, then those that only the other has. Where they are to meet, and how far off they are,
    /// a [`Piece::walk`] along the seam tells.
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Edge, Piece};
    /// let strip = |names: [&str; 2]| {
    ///     let corners = [(0.0, 0.0), (300.0, 0.0), (300.0, 50.0), (0.0, 50.0)];
    ///     let side = |i: usize| Edge::seam("side", Curve::line(corners[i], corners[(i + 1) % 4]), 10.0);
    ///     let bottom = side(0).notch(names[0], 100.0, 1).notch(names[1], 200.0, 2);
    ///     Piece::new("strip", [bottom].into_iter().chain((1..4).map(side)).collect())
    /// };
    /// let found = strip(["front", "back"])?.match_notches(&strip(["front", "hip"])?);
    /// let told: Vec<_> = found.iter().map(|n| (n.name.as_str(), n.matches())).collect();
    /// assert_eq!(told, [("front", true), ("back", false), ("hip", false)]);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn match_notches(&self, other: &Piece) -> Vec<NotchMatch> {
        let mut found: Vec<NotchMatch> = all_notches(self)
            .map(|(place, notch)| NotchMatch {
                name: notch.name.clone(),
                here: Some(place),
                there: None,
                marks: notch.marks,
                other_marks: 0,
            })
            .collect();
        for (place, notch) in all_notches(other) {
            let alone = |one: &&mut NotchMatch| {
                one.here.is_some() && one.there.is_none() && one.name == notch.name
            };
            match found.iter_mut().find(alone) {
                Some(one) => {
                    one.there = Some(place);
                    one.other_marks = notch.marks;
                }
                None => found.push(NotchMatch {
                    name: notch.name.clone(),
                    here: None,
                    there: Some(place),
                    marks: 0,
                    other_marks: notch.marks,
                }),
            }
        }
        found
    }

    /// Sets notches that meet on edges of this piece and of another, which are walked along each other as by
    /// [`Piece::walk`]: at equal distances from where the walk starts, but for the ease asked for.
    ///
    /// # Errors
    /// - `Count`: no `edges` or `other_edges`, not 1 to 1000 `notches`; `OutOfRange`: no such `edge`;
    /// - with the index of the notch: `NotFinite`, `OutOfRange`: its `distance` (0 to the length of the other edges), its
    ///   `ease`, `distance + ease` off these edges (`along`), its `marks`; `NoSolution`: one of these edges has a notch of
    ///   that name already (`name`).
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Edge, PairedNotch, Piece, Way};
    /// let strip = |length: f64| {
    ///     let corners = [(0.0, 0.0), (length, 0.0), (length, 50.0), (0.0, 50.0)];
    ///     let side = |i: usize| Edge::seam("side", Curve::line(corners[i], corners[(i + 1) % 4]), 10.0);
    ///     Piece::new("strip", (0..4).map(side).collect())
    /// };
    /// let notch = |name: &str, distance, ease| PairedNotch { name: name.into(), distance, ease, marks: 1 };
    /// // 12 more on the first, all of it between 100 and 250.
    /// let notches = [notch("from", 100.0, 0.0), notch("to", 250.0, 12.0)];
    /// let [cap, armhole] = strip(312.0)?.pair_notches(&[0], &strip(300.0)?, &[0], Way::Against, &notches)?;
    /// let eased: Vec<f64> = cap.walk(&[0], &armhole, &[0], Way::Against)?.sections().iter().map(|s| s.difference).collect();
    /// assert_eq!(eased, [0.0, 12.0, 0.0]);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn pair_notches(
        &self,
        edges: &[usize],
        other: &Piece,
        other_edges: &[usize],
        way: Way,
        notches: &[PairedNotch],
    ) -> Result<[Piece; 2], Error> {
        let walk = self.walk(edges, other, other_edges, way)?;
        Error::check_items("notches", notches.len(), 1, 1000)?;
        let [mut mine, mut theirs] = [self.clone(), other.clone()];
        for (index, notch) in notches.iter().enumerate() {
            let set = || -> Result<[Piece; 2], Error> {
                let far = Error::check("distance", notch.distance, 0.0, walk.other_length)?;
                let ease = Error::check("ease", notch.ease, -1e3, 1e3)?;
                let here = Error::check("along", far + ease, 0.0, walk.length)?;
                Error::check_count("marks", notch.marks, 1, 3)?;
                Ok([
                    mine.notched(edges, here, Way::Along, notch)?,
                    theirs.notched(other_edges, far, way, notch)?,
                ])
            };
            [mine, theirs] = set().map_err(|error| error.at_index(index))?;
        }
        Ok([mine, theirs])
    }

    /// The piece with a notch so far along a row of its edges.
    fn notched(
        &self,
        row: &[usize],
        distance: f64,
        way: Way,
        notch: &PairedNotch,
    ) -> Result<Piece, Error> {
        let mut edges: Vec<Edge> = self.edges().to_vec();
        let named = |edge: &usize| edges[*edge].notches.iter().any(|n| n.name == notch.name);
        if row.iter().any(named) {
            let nan = f64::NAN;
            return Err(Error::no_solution("name", nan, nan, nan));
        }
        let mut left = distance;
        for (index, &edge) in row.iter().enumerate() {
            let span = edges[edge].length();
            if left > span + NOTHING && index + 1 < row.len() {
                left -= span;
                continue;
            }
            let along = match way {
                Way::Along => left.min(span),
                Way::Against => (span - left).max(0.0),
            };
            let notches = &mut edges[edge].notches;
            let at = notches.partition_point(|one| one.distance <= along);
            notches.insert(at, Notch::new(notch.name.as_str(), along, notch.marks));
            break;
        }
        self.remade(edges, self.marks().to_vec(), self.grain())
    }
}

/// Every notch of a piece, with its place.
fn all_notches(piece: &Piece) -> impl Iterator<Item = (Place, &Notch)> {
    let edges = piece.edges().iter().enumerate();
    edges.flat_map(|(edge, one)| {
        one.notches.iter().map(move |notch| {
            let distance = notch.distance;
            (Place { edge, distance }, notch)
        })
    })
}
