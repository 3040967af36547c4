//! Pieces made of edges: allowances, corners, notches, walking, mirroring.
//!
//! A [`Piece`] is a closed ring of [`Edge`]s. The drawn lines are the truth; cut lines are derived from them.
//!
//! ```
//! use recloth::outline::{Curve, Edge, Piece};
//! // A pocket flap, point down, its upper edge on a fold: 120 wide, 50 deep at the sides, 80 at the point.
//! let flap = Piece::new("flap", vec![
//!     Edge::seam("left slope", Curve::line((0.0, 30.0), (60.0, 0.0)), 8.0),
//!     Edge::seam("right slope", Curve::line((60.0, 0.0), (120.0, 30.0)), 8.0),
//!     Edge::seam("right", Curve::line((120.0, 30.0), (120.0, 80.0)), 8.0),
//!     Edge::fold("top", Curve::line((120.0, 80.0), (0.0, 80.0))),
//!     Edge::seam("left", Curve::line((0.0, 80.0), (0.0, 30.0)), 8.0),
//! ])?;
//! let cut = flap.cut_line(0.1)?;
//! assert_eq!(cut.bounds().width(), 136.0);
//! // Folded open: twice the seam lines' area, and its own mirror image.
//! let whole = flap.unfold()?;
//! assert_eq!(whole.area(), 2.0 * flap.area());
//! assert!(!whole.handed(0.01)?);
//! let polygon = whole.cut_line(0.1)?.flatten(0.1); // for laying out
//! let path = cut.path(0.01); // for drawing
//! assert!(polygon.len() >= 8 && path.elements().len() >= 6);
//! # Ok::<(), recloth::Error>(())
//! ```

mod cap;
mod copy_edge;
mod corner;
mod cross;
mod curve;
mod cut_line;
mod cut_ring;
mod edge;
mod extend;
mod facing;
mod fit;
mod grain;
mod join;
mod lining;
mod mark;
mod mirror;
mod notches;
mod opened;
mod parallel;
mod piece;
mod place;
mod region;
mod ring;
mod scale;
mod segment;
mod shift;
mod simple;
mod split;
mod spread;
mod swing;
mod symmetry;
mod true_up;
mod vector;
mod walk;

pub use copy_edge::{Copied, CopyFit, measured_edge};
pub use curve::Curve;
pub use cut_line::{CutLine, CutNotch, CutSegment};
pub use edge::{
    Corner, Drawn, Edge, NOTCH_DEPTH, NOTCH_SHARE, Notch, NotchForm, POINT_LIMIT, Role,
};
pub use facing::Facing;
pub use join::Joined;
pub use lining::{EdgeBy, Lined, Lines, Lining, LiningDarts, LiningHem, LiningSeam};
pub use mark::{Cutout, Dart, LineKind, Mark};
pub use notches::{NotchMatch, PairedNotch};
pub use piece::{Cutting, Hand, Piece, sentence};
pub use place::Place;
pub use segment::Segment;
pub use split::NewSeam;
pub use spread::Slash;
pub use swing::Opening;
pub use symmetry::Symmetry;
pub use true_up::{EdgeEnd, Kept, Meeting, TruedEdge, TruedUp, true_up};
pub use walk::{Walk, WalkNotch, WalkSection, Way};
pub(crate) use walk::{Walked, walk_rows};

#[cfg(test)]
mod tests;
