//! Linings.
