//! Pieces onto the panels there are: what fits, where, and what proves that it cannot.
//!
//! The cloth of an old garment is a handful of odd panels, with holes, stains and slits, and there is no more of it. A
//! [`Panel`] is what there is, a [`Part`] is what is wanted, with its grain and how far that may be tilted, how many of
//! each hand, and which side shows.
//!
//! - [`fit()`] looks for places. For each piece alone on each panel, and for all together, it says *fits*, with the place;
//!   *cannot*, with what proves it; or *undecided*. Not to have found a place is never *cannot*.
//! - [`least_change`] finds what must give where not all pieces fit: shorter, tilted, joined, fewer.
//! - [`largest()`], [`longest`] and [`fullest`] find how large a measure may be so that all still fit.
//! - [`leftovers`] gives what a lay leaves, and the largest rectangles in it.
//!   Few pieces that fill their panels are found by filling corner after corner, many by driving overlaps out; one call
//!   tries both, within a budget, or a time, on as many threads as there are.
//! - [`strip()`] lays pieces on cloth by the length, as short as it finds.
//! - [`check()`] proves a lay right or says all that is wrong with it. It is separate code, exact in its decisions, and
//!   works on any lay, wherever it comes from. Every place that `fit` gives has passed it.
//! - [`placed`] gives the outline as it lies, to draw or to cut.
//!
//! Lengths are millimetres, angles degrees counter-clockwise, y runs up the page.
//!
//! ```
//! use recloth_lay::{Flaw, Options, Panel, Part, Together, check, fit, placed};
//!
//! // An invented house-coat: one front, with a scorch mark, and a sleeve that narrows to the cuff.
//! let front = Panel::new("front", [(0.0, 0.0), (480.0, 0.0), (430.0, 900.0), (40.0, 900.0)])?
//!     .with_flaws(vec![Flaw::new([(300.0, 500.0), (340.0, 500.0), (320.0, 560.0)], 10.0)])?;
//! let sleeve = Panel::new("sleeve", [(0.0, 0.0), (260.0, 0.0), (380.0, 420.0), (-120.0, 420.0)])?;
//! // A pair of waistcoat fronts and a pocket.
//! let waistcoat = Part {
//!     mirrored: 1,
//!     tilt_deg: 3.0,
//!     ..Part::new("waistcoat front", [(0.0, 0.0), (215.0, 0.0), (225.0, 230.0), (130.0, 470.0), (0.0, 300.0)])
//! };
//! let pocket = Part::new("pocket", [(0.0, 0.0), (140.0, 0.0), (140.0, 160.0), (0.0, 160.0)]);
//!
//! let (parts, panels) = ([waistcoat, pocket], [front, sleeve]);
//! let found = fit(&parts, &panels, &Options::default())?;
//! assert_eq!(found.together, Together::Fit);
//! assert_eq!(check(&parts, &panels, &found.lay), Ok(()));
//! for placement in &found.lay.placements {
//!     let cut = placed(&parts[placement.part].outline, placement);
//!     println!("{} on {}: {cut:?}", parts[placement.part].name, panels[placement.panel].name());
//! }
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```
//!
//! # Features
//! - `serde`: Serialize and Deserialize for what goes in and what comes out.
#![forbid(unsafe_code)]

mod bounds;
mod chance;
mod change;
mod check;
mod clash;
mod cleave;
mod crowd;
mod error;
mod everywhere;
mod fit;
mod grid;
mod inner;
mod jigsaw;
mod largest;
mod lay;
mod leftover;
mod links;
mod matched;
mod matching;
mod near;
mod overlap;
mod pack;
mod part;
mod phase;
mod positions;
mod search;
mod shape;
mod shortage;
mod strip;
mod together;
mod trials;
mod valid;
mod watch;

pub use bounds::Bound;
pub use change::{
    Amount, Change, Give, LeastChange, Made, Needed, Step, least_change, least_change_with,
};
pub use check::{Complaint, DEPTH, TILT, check};
pub use error::Error;
pub use fit::{Alone, Answer, Fit, Options, Together, fit, fit_with};
pub use largest::{
    Largest, Outward, Values, fullest, fullest_with, largest, largest_with, longest, longest_with,
};
pub use lay::{Fold, Lay, Placement, Unplaced, placed};
pub use leftover::{Leftover, LeftoverOptions, leftovers};
pub use matching::{MatchPoint, MatchSide};
pub use part::{Hand, Part, Shows};
pub use recloth::panel::{Faces, Flaw, Panel, PanelRectangle, Repeat, SEAM_ALLOWANCE};
pub use shortage::Shortage;
pub use strip::{Strip, StripLay, StripOptions, strip, strip_with};
pub use watch::Progress;
