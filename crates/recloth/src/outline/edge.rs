//! An edge of a piece: its curve, what it is for, and how its allowance is cut.

use alloc::string::String;
use alloc::vec::Vec;

use super::curve::Curve;

/// What an edge is for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Role {
    /// Sewn to another edge.
    #[default]
    Seam,
    /// Turned up and fastened to the piece itself.
    Hem,
    /// Laid to a fold of the cloth: straight, and without allowance.
    Fold,
    /// Left open, faced or bound.
    Opening,
}

/// What the drawn curve of an edge is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Drawn {
    /// The seam line: the cut line lies outside it by the allowance.
    #[default]
    Seam,
    /// The cut line, as of cloth already cut: the seam line lies inside it by the allowance.
    Cut,
}

/// How the allowances of an edge and the next are joined at an outward corner. At an inward corner they simply meet, and where
/// edges run on smoothly, turning by less than 0.1°, there is no corner.
///
/// A corner too sharp or too flat for what is asked, or where a mirrored end would cut into the piece, is made a pointed one,
/// and [`CutLine::unmade`](super::CutLine::unmade) says so.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Corner {
    /// Both cut lines run on until they meet; no farther from the corner than `limit` times the larger allowance
    /// (1 to 100), where the point is cut off square. Beside a fold, beyond which nothing can be cut, the other edge's cut line
    /// ends on the fold's line.
    Pointed {
        /// Largest distance of the point from the corner, in larger allowances.
        limit: f64,
    },
    /// The allowance of this edge ends square to this edge, where its seam line reaches the next edge's cut line. If it has
    /// none, it is there that the next edge's cut line begins.
    SquaredToThis,
    /// The allowance of the next edge ends square to the next edge, where its seam line reaches this edge's cut line.
    SquaredToNext,
    /// This edge is a turned hem: the next edge's cut line is mirrored about it, so that the hem folds back onto the
    /// piece.
    MirroredOnThis,
    /// The next edge is a turned hem: this edge's cut line is mirrored about it, so that the hem folds back onto the
    /// piece.
    MirroredOnNext,
    /// The allowance of this edge ends square to it at the corner, in a step, and the next edge's cut line runs on until it
    /// meets that end: an extension or a wide hem that ends early. The corner turns by less than a right angle.
    SteppedOnThis,
    /// The allowance of the next edge ends square to it at the corner, in a step, and this edge's cut line runs on until it
    /// meets that end.
    SteppedOnNext,
    /// Cut off square across, at a distance from the corner of the seam lines (mm, 0 to 1000) along the line that halves it:
    /// to take bulk out of a corner that is turned. It may take from both allowances, but not from the piece.
    Trimmed {
        /// Distance from the corner of the seam lines (mm).
        distance: f64,
    },
    /// Rounded between both cut lines, by an arc of this radius (mm, 0 to 1000) that takes nothing from either allowance.
    Rounded {
        /// Radius of the cut line (mm).
        radius: f64,
    },
}

/// Largest point of a corner unless said otherwise: 4 allowances, which leaves corners down to 29° whole. It is the
/// initial value of `stroke-miterlimit` in the W3C's SVG.
pub const POINT_LIMIT: f64 = 4.0;

impl Default for Corner {
    fn default() -> Corner {
        Corner::Pointed { limit: POINT_LIMIT }
    }
}

impl Corner {
    /// The same corner seen by one who walks the ring the other way.
    pub(crate) fn reversed(self) -> Corner {
        match self {
            Corner::Pointed { limit } => Corner::Pointed { limit },
            Corner::SquaredToThis => Corner::SquaredToNext,
            Corner::SquaredToNext => Corner::SquaredToThis,
            Corner::MirroredOnThis => Corner::MirroredOnNext,
            Corner::MirroredOnNext => Corner::MirroredOnThis,
            Corner::SteppedOnThis => Corner::SteppedOnNext,
            Corner::SteppedOnNext => Corner::SteppedOnThis,
            Corner::Trimmed { distance } => Corner::Trimmed { distance },
            Corner::Rounded { radius } => Corner::Rounded { radius },
        }
    }
}

/// A notch: a place on an edge that meets one on another.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Notch {
    /// Notches that meet have the same name.
    pub name: String,
    /// Distance from the start of the edge along it (mm).
    pub distance: f64,
    /// How many marks side by side, 1 to 3.
    pub marks: u32,
    /// How it is cut.
    #[cfg_attr(feature = "serde", serde(default))]
    pub form: NotchForm,
    /// How far it is cut in from the cut line (mm), 0 to the allowance of its edge; none for [`NOTCH_SHARE`] of the allowance,
    /// at most [`NOTCH_DEPTH`].
    #[cfg_attr(feature = "serde", serde(default))]
    pub depth: Option<f64>,
}

impl Notch {
    /// A slit at a distance from the start of the edge (mm).
    pub fn new(name: impl Into<String>, distance: f64, marks: u32) -> Notch {
        Notch {
            name: name.into(),
            distance,
            marks,
            form: NotchForm::Slit,
            depth: None,
        }
    }
}

/// How a notch is cut.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum NotchForm {
    /// A snip into the allowance, square to the edge.
    #[default]
    Slit,
    /// A wedge cut out of the allowance, as wide at the cut line as it is deep.
    Wedge,
}

/// Depth of a notch unless said otherwise, as a share of the allowance it is cut into: short of the seam. Common practice, no
/// source.
pub const NOTCH_SHARE: f64 = 0.6;
/// Largest depth of a notch unless said otherwise (mm). Common practice, no source.
pub const NOTCH_DEPTH: f64 = 6.0;

/// An edge of a piece. Plain data: [`Piece::new`](super::Piece::new) checks it.
///
/// ```
/// use recloth::outline::{Corner, Curve, Edge};
/// let hem = Edge::hem("hem", Curve::line((0.0, 0.0), (300.0, 0.0)), 40.0)
///     .corner(Corner::MirroredOnThis)
///     .notch("centre", 150.0, 1);
/// assert_eq!(hem.allowance, 40.0);
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Edge {
    /// Name, for people and for finding it.
    pub name: String,
    /// Where it runs.
    pub curve: Curve,
    /// What it is for.
    #[cfg_attr(feature = "serde", serde(default))]
    pub role: Role,
    /// Width of its seam or hem allowance (mm), 0 to 1000.
    #[cfg_attr(feature = "serde", serde(default))]
    pub allowance: f64,
    /// Whether the curve is the seam line or already the cut line.
    #[cfg_attr(feature = "serde", serde(default))]
    pub drawn: Drawn,
    /// How its allowance joins that of the next edge, at this edge's end.
    #[cfg_attr(feature = "serde", serde(default))]
    pub corner: Corner,
    /// Notches on it.
    #[cfg_attr(feature = "serde", serde(default))]
    pub notches: Vec<Notch>,
}

impl Edge {
    /// An edge with a role and an allowance (mm), drawn as the seam line, with pointed corners.
    pub fn new(name: impl Into<String>, curve: Curve, role: Role, allowance: f64) -> Edge {
        Edge {
            name: name.into(),
            curve,
            role,
            allowance,
            drawn: Drawn::Seam,
            corner: Corner::default(),
            notches: Vec::new(),
        }
    }

    /// An edge to be sewn, with its seam allowance (mm).
    pub fn seam(name: impl Into<String>, curve: Curve, allowance: f64) -> Edge {
        Edge::new(name, curve, Role::Seam, allowance)
    }

    /// An edge to be turned up, with its hem allowance (mm).
    pub fn hem(name: impl Into<String>, curve: Curve, allowance: f64) -> Edge {
        Edge::new(name, curve, Role::Hem, allowance)
    }

    /// An edge laid to a fold of the cloth.
    pub fn fold(name: impl Into<String>, curve: Curve) -> Edge {
        Edge::new(name, curve, Role::Fold, 0.0)
    }

    /// An edge left open, with an allowance for its facing or 0 (mm).
    pub fn opening(name: impl Into<String>, curve: Curve, allowance: f64) -> Edge {
        Edge::new(name, curve, Role::Opening, allowance)
    }

    /// The same edge, with the curve as its cut line.
    pub fn already_cut(mut self) -> Edge {
        self.drawn = Drawn::Cut;
        self
    }

    /// The same edge, with this corner at its end.
    pub fn corner(mut self, corner: Corner) -> Edge {
        self.corner = corner;
        self
    }

    /// The same edge, with one more notch, a slit, at a distance from its start (mm).
    pub fn notch(mut self, name: impl Into<String>, distance: f64, marks: u32) -> Edge {
        self.notches.push(Notch::new(name, distance, marks));
        self
    }

    /// The same edge, with one more notch, a wedge, at a distance from its start (mm).
    pub fn wedge(mut self, name: impl Into<String>, distance: f64, marks: u32) -> Edge {
        self = self.notch(name, distance, marks);
        if let Some(notch) = self.notches.last_mut() {
            notch.form = NotchForm::Wedge;
        }
        self
    }

    /// Length of the drawn curve (mm).
    pub fn length(&self) -> f64 {
        self.curve.length()
    }

    /// Keeps notches that were cut into another allowance within this one.
    pub(crate) fn shallow_notches(&mut self) {
        for notch in &mut self.notches {
            notch.depth = notch.depth.map(|depth| depth.min(self.allowance));
        }
    }

    /// How far the cut line lies outside the drawn curve (mm).
    pub fn outside(&self) -> f64 {
        match self.drawn {
            Drawn::Seam => self.allowance,
            Drawn::Cut => 0.0,
        }
    }

    /// How far the seam line lies inside the drawn curve (mm).
    pub fn inside(&self) -> f64 {
        match self.drawn {
            Drawn::Seam => 0.0,
            Drawn::Cut => self.allowance,
        }
    }

    /// The same edge walked the other way; its corner is still that of its old end.
    pub(crate) fn reversed(mut self) -> Edge {
        let length = self.length();
        self.curve = self.curve.reversed();
        for notch in &mut self.notches {
            // Rounding may put a notch at the end just before the start.
            notch.distance = (length - notch.distance).max(0.0);
        }
        self.notches.reverse();
        self
    }
}

/// The same ring of edges, walked the other way.
pub(crate) fn reversed_ring(edges: Vec<Edge>) -> Vec<Edge> {
    let mut corners: Vec<Corner> = edges.iter().map(|e| e.corner.reversed()).collect();
    corners.reverse();
    // After turning round, an edge ends where it began: at the corner of the edge that was before it.
    corners.rotate_left(1);
    edges
        .into_iter()
        .rev()
        .zip(corners)
        .map(|(edge, corner)| edge.reversed().corner(corner))
        .collect()
}
