//! Pieces made of edges: allowances, corners, notches, walking, mirroring.
//!
//! A [`Piece`] is a closed ring of [`Edge`]s. The drawn lines are the truth; cut lines are derived from them.

mod corner;
mod cross;
mod curve;
mod cut_line;
mod edge;
mod fit;
mod mark;
mod mirror;
mod parallel;
mod piece;
mod ring;
mod segment;
mod vector;
mod walk;

pub use curve::Curve;
pub use cut_line::{CutLine, CutNotch, CutSegment};
pub use edge::{Corner, Drawn, Edge, Notch, POINT_LIMIT, Role};
pub use mark::{Dart, Mark};
pub use piece::{Cutting, Hand, Piece, sentence};
pub use segment::Segment;
pub use walk::{Walk, WalkNotch, Way};

#[cfg(test)]
mod tests;
