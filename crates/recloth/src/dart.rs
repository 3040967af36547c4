//! Darts.
