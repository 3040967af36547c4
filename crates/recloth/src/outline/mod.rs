//! Pieces made of edges: allowances, corners, notches, walking, mirroring.
//!
//! A [`Piece`] is a closed ring of [`Edge`]s. The drawn lines are the truth; cut lines are derived from them.

#[allow(dead_code)] // its callers, the cut line, come next
mod cross;
mod curve;
mod edge;
mod fit;
mod mark;
mod piece;
#[allow(dead_code)]
mod ring;
#[allow(dead_code)]
mod segment;
mod vector;

pub use curve::Curve;
pub use edge::{Corner, Drawn, Edge, Notch, POINT_LIMIT, Role};
pub use mark::{Dart, Mark};
pub use piece::{Cutting, Hand, Piece, sentence};
pub use segment::Segment;

#[cfg(test)]
mod tests;
