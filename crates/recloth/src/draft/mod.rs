//! Pieces drafted from measures.
//!
//! Each draft is a struct of measures (mm) with a method `draft`, which gives pieces drawn as seam lines, with named
//! edges, roles, allowances, notches and a cutting instruction, or an error that names the measure to change. y points
//! up; waists are at the top, hems at the bottom, centres at the left.
//!
//! ```
//! use recloth::draft::{Allowances, Centre, SkirtPanel};
//! let front = SkirtPanel {
//!     name: "front".into(),
//!     panel_width: 242.0,
//!     waist: 190.0,
//!     hip: 250.0,
//!     hip_depth: 200.0,
//!     length: 600.0,
//!     hem_width: 290.0,
//!     darts: 1,
//!     largest_intake: 30.0,
//!     dart_length: 110.0,
//!     side_rise: 12.0,
//!     centre: Centre::Fold,
//!     allowances: Allowances { seam: 15.0, hem: 40.0 },
//! };
//! let piece = &front.draft()?.pieces[0];
//! let waist: f64 = piece.edges().iter().filter(|e| e.name.starts_with("waist")).map(|e| e.length()).sum();
//! assert!((waist - 190.0).abs() < 1e-9);
//! let wide = SkirtPanel { waist: 250.0, ..front };
//! assert_eq!(wide.draft().unwrap_err().to_string(), "waist = 250 leaves no solution: it must be between 1 and 242");
//! # Ok::<(), recloth::Error>(())
//! ```

mod binding;
mod circle_sector;
mod darted_skirt;
mod edge_band;
mod gathered_strip;
mod gored_skirt;
mod lining;
mod measured;
mod measures;
mod neck_top;
mod off_centre_front;
mod panel_lining;
mod patch_pocket;
mod pinafore;
mod puffed_sleeve;
mod result;
mod run_past;
mod sectioned_band;
mod shaped_band;
mod skirt_panel;
mod sleeve;
mod sleeve_cap;
mod straight_band;
mod tiered_skirt;
mod trued;
mod waist_line;
mod wrap_skirt;
mod yoke;

use alloc::vec;

use crate::outline::Piece;
use measured::{Dial, Dials};

pub use binding::Binding;
pub use circle_sector::CircleSector;
pub use darted_skirt::DartedSkirt;
pub use edge_band::EdgeBand;
pub use gathered_strip::GatheredStrip;
pub use gored_skirt::GoredSkirt;
pub use lining::{DraftLining, LinedDraft, LinedPiece, NamedBy};
pub use measures::Measures;
pub use neck_top::{NeckShape, NeckTop};
pub use off_centre_front::OffCentreFront;
pub use panel_lining::{Hang, PanelLining};
pub use patch_pocket::PatchPocket;
pub use pinafore::Pinafore;
pub use puffed_sleeve::{PuffHem, PuffedSleeve};
pub use result::{Check, CheckKind, Draft, EdgeName, NamedLength, Seam};
pub use sectioned_band::SectionedBand;
pub use shaped_band::ShapedBand;
pub use skirt_panel::{Centre, SkirtPanel};
pub use sleeve::{Armhole, RecutSleeve, Sleeve};
pub use straight_band::StraightBand;
pub use tiered_skirt::TieredSkirt;
pub use wrap_skirt::WrapSkirt;

/// Allowances by role.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Allowances {
    /// Of every seam (mm), 0 to 1000.
    pub seam: f64,
    /// Of the hem (mm), 0 to 1000.
    pub hem: f64,
}

impl Default for Allowances {
    /// Seams 15 mm, as home patterns have (common practice, no source); hem 40 mm, near the 1 1/2 in of a straight or
    /// A-line skirt (common practice, no source); far too deep for a circle skirt.
    fn default() -> Allowances {
        Allowances {
            seam: 15.0,
            hem: 40.0,
        }
    }
}

impl Allowances {
    fn dials(&mut self) -> Dials<'_> {
        vec![
            ("seam", Dial::Number(&mut self.seam, 0.0, 1e3)),
            ("hem", Dial::Number(&mut self.hem, 0.0, 1e3)),
        ]
    }
}

/// An upright grain line in the middle of a piece drafted upright.
pub(crate) fn upright(piece: Piece) -> Result<Piece, crate::Error> {
    let bounds = piece.bounds();
    let (x, y) = (bounds.center().x, bounds.center().y);
    let half = bounds.height() * 0.3;
    piece.with_grain_within(kurbo::Line::new((x, y - half), (x, y + half)))
}

#[cfg(test)]
mod tests;
