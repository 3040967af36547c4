//! A brief in, a plan out: pieces, lays, sheets, worksheet and the order of work.
//!
//! A brief is a TOML text: who it is for, what cloth there is, what to make of it. [`plan()`] works everything out
//! without touching a file; [`Plan::files`] gives what is written, [`write()`] writes it into a folder. The command
//! `recloth plan BRIEF --into FOLDER` does the three in turn. `book/demo/house-coat.toml` is a whole brief.
//!
//! [`sum::sum`] answers one function of the library from words as they are typed: the command
//! `recloth sum circle_skirt waist=71cm length=60cm`.
#![forbid(unsafe_code)]

mod baths;
mod brief;
mod cloth;
mod components;
mod files;
mod garment;
mod giving;
mod laying;
mod left;
mod measure;
mod nearest;
pub mod order;
mod outputs;
mod plan;
mod steps;
pub mod sum;
mod worksheet;

pub use baths::{BathAmount, BathPlan};
pub use brief::BriefError;
pub use cloth::{Cloth, Flaw};
pub use components::{Bears, Component};
pub use files::{WriteError, write};
pub use giving::Given;
pub use laying::{Bought, Laid};
pub use order::order_check;
pub use plan::{CutPiece, Plan, SEARCH, plan, plan_with};
/// The lay's own types, as [`Laid`] holds them.
pub use recloth_lay;
