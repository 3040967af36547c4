//! Every function of the core called by its name with values read from text: the Rust side of the
//! check that Rust, C and Python give the same bits.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    reason = "this crate is a test"
)]

pub mod boundaries;
pub mod lays;
pub mod references;
mod table;
mod value;

pub use recloth_table::{Given, Got};
pub use table::{Function, Row, Table, root, spec, tables};
pub use value::{call, cell, line, read};
