//! Pieces onto the panels there are.
#![forbid(unsafe_code)]

mod check;
mod error;
mod lay;
mod panel;
mod part;
mod valid;

pub use check::{Complaint, DEPTH, TILT, check};
pub use error::Error;
pub use lay::{Lay, Placement, Unplaced, placed};
pub use panel::{Faces, Flaw, Panel};
pub use part::{Hand, Part, Shows};
