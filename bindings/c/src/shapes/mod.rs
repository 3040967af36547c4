//! Shapes behind handles: pieces, panels and drafts. Each function borrows the handles it is given, changes none, and hands
//! out new ones, which their owner frees.

pub mod change;
pub mod derived;
pub mod draft;
mod handle;
pub mod lay;
pub mod operation;
pub mod panel;
pub mod piece;
pub mod search;
