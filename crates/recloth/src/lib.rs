//! The arithmetic and geometry of remaking clothes.
//!
//! Every length is an `f64` in millimetres; anything else carries its unit in its name. Plain functions, one file per
//! concept, named as the trade names them. Results are structs with named fields; errors are one [`Error`].
//!
//! ```
//! use recloth::{skirt::circle_skirt, units::CM};
//! let skirt = circle_skirt(71.0 * CM, 60.0 * CM, 0.5)?;
//! assert_eq!((skirt.waist_radius * 10.0).round() / 10.0, 226.0);
//! # Ok::<(), recloth::Error>(())
//! ```
//!
//! # Features
//! - `alloc` (default): shapes (pieces, cut lines, drafts, usable panels). Without it no allocator is needed.
//! - `serde`: serialisation of results and shapes.
#![no_std]
#![forbid(unsafe_code)]
#![warn(missing_docs)]

#[cfg(feature = "alloc")]
extern crate alloc;

pub mod alteration;
pub mod arc;
pub mod band;
pub mod bias;
pub mod binding;
pub mod bleach;
pub mod body;
pub mod chain;
pub mod closure;
pub mod cloth;
pub mod colour;
pub mod dart;
pub mod doubt;
#[cfg(feature = "alloc")]
pub mod draft;
mod dust;
pub mod dye;
pub mod ease;
pub mod elastic;
pub mod error;
pub mod fastening;
pub mod fibre;
pub mod fullness;
pub mod gore;
mod hypotenuse;
pub mod lining;
pub mod nap;
pub mod neck;
pub mod needle;
pub mod offsets;
pub mod opening;
#[cfg(feature = "alloc")]
pub mod outline;
pub mod panel;
pub mod photo;
pub mod piecing;
pub mod pleat;
pub mod quantity;
mod refusal;
pub mod seam;
#[cfg(feature = "alloc")]
mod seek;
pub mod shade;
pub mod skirt;
pub mod sleeve;
pub mod stretch;
pub mod tape;
pub mod thread;
pub mod tier;
pub mod units;
pub mod wet;

pub use error::{Error, ErrorKind};

/// The version of this crate, as every door reports it.
pub const VERSION: &str = env!("CARGO_PKG_VERSION");
