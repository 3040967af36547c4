//! A piece to be cut.

mod fold;

use kurbo::Point;
use recloth::outline::{self, Piece};
use recloth::panel::SEAM_ALLOWANCE;

use crate::valid::check_seam;
use crate::{Flaw, MatchPoint};
pub(crate) use fold::{axis, check_line, check_symmetry, mirror, mirrored};

/// One of the two mirror images a piece is cut in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum Hand {
    /// The piece as its outline is drawn, seen from the side that shows.
    AsDrawn,
    /// The mirror image.
    Mirrored,
}

impl Hand {
    /// Both hands, as drawn first.
    pub const BOTH: [Hand; 2] = [Hand::AsDrawn, Hand::Mirrored];

    pub(crate) fn words(self) -> &'static str {
        match self {
            Hand::AsDrawn => "as drawn",
            Hand::Mirrored => "mirrored",
        }
    }
}

/// Which side of the cloth may show on the finished garment. It matters on one-faced cloth only.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum Shows {
    /// The right side: on one-faced cloth the piece lies face up.
    #[default]
    Right,
    /// The wrong side: on one-faced cloth the piece lies face down, so its outline is turned over.
    Wrong,
    /// Either side, as for an interlining or a pocket bag.
    Either,
    /// Both sides, as for an unlined turn-back cuff: only two-faced cloth will do.
    Both,
}

/// A piece to be cut: its cut line, its grain, and how many of each hand.
///
/// The outline is the cut line as straight runs, seen from the side that shows, in mm, y up the page; either
/// direction round; the first point may be repeated at the end. It must not touch or cross itself.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Part {
    /// What the maker calls it; used in messages.
    pub name: String,
    /// The cut line: 3 to 5000 points (mm, each coordinate -1e5 to 1e5).
    pub outline: Vec<Point>,
    /// Direction of the grain line on the outline, counter-clockwise from the x axis (deg, -360 to 360).
    #[cfg_attr(feature = "serde", serde(default = "up_the_page"))]
    pub grain_deg: f64,
    /// How far the grain may be tilted either way (deg, 0 to 180).
    #[cfg_attr(feature = "serde", serde(default))]
    pub tilt_deg: f64,
    /// How many as drawn (0 to 1000).
    #[cfg_attr(feature = "serde", serde(default = "one"))]
    pub as_drawn: u32,
    /// How many mirrored (0 to 1000).
    #[cfg_attr(feature = "serde", serde(default))]
    pub mirrored: u32,
    /// Which side of the cloth may show.
    #[cfg_attr(feature = "serde", serde(default))]
    pub shows: Shows,
    /// Whether the piece may be turned end for end on cloth with a nap or one-way print; on other cloth it always may.
    #[cfg_attr(feature = "serde", serde(default))]
    pub either_way: bool,
    /// Whether the grain may also run across the cloth, as for a pocket or a facing of plain cloth. On cloth with a nap or
    /// one-way print it may only where the piece may be turned end for end too.
    #[cfg_attr(feature = "serde", serde(default))]
    pub crosswise: bool,
    /// What it is on the garment, where flaws may lie that name it ([`Flaw::under`](crate::Flaw)): "facing", "pocket bag";
    /// empty for outer cloth.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "String::is_empty")
    )]
    pub role: String,
    /// Its seam line, on the same axes: none, or 3 to 5000 points (mm), each within the cut line or at most 1 mm outside it. A
    /// flaw that may lie under "seam allowance" is kept from it instead of from the cut line.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "Vec::is_empty")
    )]
    pub seam: Vec<Point>,
    /// A line, on the same axes, about which the whole outline is symmetrical (within 5e-7 mm), by two of its points (mm): on
    /// folded cloth it may lie on the fold. The outline is the whole all the same; on cloth without a fold this changes nothing.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "Option::is_none")
    )]
    pub fold: Option<[Point; 2]>,
    /// Points that must meet those of the same name at the same place of the print, on cloth with a repeat (up to 1000).
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "Vec::is_empty")
    )]
    pub matches: Vec<MatchPoint>,
}

/// What a flaw keeps a part from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Kept {
    /// Nothing: it does not matter under this part.
    Nothing,
    /// Its seam line.
    Seam,
    /// Its cut line.
    Whole,
}

#[cfg(feature = "serde")]
fn up_the_page() -> f64 {
    90.0
}

#[cfg(feature = "serde")]
fn one() -> u32 {
    1
}

impl Part {
    /// A part cut once as drawn, right side showing, grain straight up the page and not to be tilted.
    ///
    /// ```
    /// use recloth_lay::Part;
    /// let pocket = Part { tilt_deg: 2.0, as_drawn: 1, mirrored: 1, ..Part::new("pocket", [(0.0, 0.0), (150.0, 0.0), (150.0, 180.0)]) };
    /// assert_eq!(pocket.grain_deg, 90.0);
    /// ```
    pub fn new<P: Into<Point>>(
        name: impl Into<String>,
        outline: impl IntoIterator<Item = P>,
    ) -> Part {
        Part {
            name: name.into(),
            outline: outline.into_iter().map(Into::into).collect(),
            grain_deg: 90.0,
            tilt_deg: 0.0,
            as_drawn: 1,
            mirrored: 0,
            shows: Shows::Right,
            either_way: false,
            crosswise: false,
            role: String::new(),
            seam: Vec::new(),
            fold: None,
            matches: Vec::new(),
        }
    }

    /// What of it must keep clear of a flaw.
    pub(crate) fn kept_from(&self, flaw: &Flaw) -> Kept {
        if flaw.may_lie_under(&self.role) {
            Kept::Nothing
        } else if !self.seam.is_empty() && flaw.may_lie_under(SEAM_ALLOWANCE) {
            Kept::Seam
        } else {
            Kept::Whole
        }
    }

    /// A piece as it is laid: its cut line, seam line, grain and how many of each hand; of a piece on a fold the whole, its
    /// own mirror image, and the fold.
    ///
    /// `tolerance` is how near curves are followed (mm, 0.001 to 10). The seam line is left out where that is so coarse that
    /// it would lie more than 1 mm outside the cut line.
    ///
    /// # Errors
    /// As of [`Piece::unfold`] and [`Piece::cut_line`].
    ///
    /// ```
    /// use recloth::outline::{Curve, Edge, Piece};
    /// use recloth_lay::Part;
    /// let corners = [(0.0, 0.0), (130.0, 0.0), (130.0, 150.0), (0.0, 150.0), (0.0, 0.0)];
    /// let side = |ends: &[(f64, f64)]| Edge::seam("side", Curve::line(ends[0], ends[1]), 10.0);
    /// let part = Part::of(&Piece::new("pocket", corners.windows(2).map(side).collect())?, 0.05)?;
    /// assert_eq!((part.name.as_str(), part.as_drawn, part.mirrored), ("pocket", 1, 0));
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn of(piece: &Piece, tolerance: f64) -> Result<Part, recloth::Error> {
        let whole = piece.unfold()?;
        let fold = piece.fold().map(|edge| {
            let line = piece.edges()[edge].curve;
            [line.start(), line.end()]
        });
        let mut outline = whole.cut_line(tolerance)?.flatten(tolerance);
        if let Some(line) = fold {
            outline = fold::evened(&outline, line)?;
        }
        let cutting = piece.cutting();
        let mirrored = match cutting.hand {
            outline::Hand::Mirrored => cutting.count / 2,
            outline::Hand::Identical => 0,
        };
        let mut part = Part {
            grain_deg: piece.grain_deg(),
            as_drawn: cutting.count - mirrored,
            mirrored,
            seam: whole.seam_line(tolerance)?.flatten(tolerance),
            fold,
            ..Part::new(piece.name(), outline)
        };
        if check_seam(&part).is_err() {
            part.seam.clear();
        }
        Ok(part)
    }

    /// The turns, from its grain on the panel's grain, at which it may lie untilted (deg).
    pub(crate) fn turned(&self, nap: bool) -> &'static [f64] {
        match (nap && !self.either_way, self.crosswise) {
            (true, _) => &[0.0],
            (false, false) => &[0.0, 180.0],
            (false, true) => &[0.0, 180.0, 90.0, -90.0],
        }
    }

    /// How many of this hand are wanted.
    pub fn count(&self, hand: Hand) -> u32 {
        match hand {
            Hand::AsDrawn => self.as_drawn,
            Hand::Mirrored => self.mirrored,
        }
    }
}
