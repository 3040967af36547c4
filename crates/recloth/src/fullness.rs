//! Gathers and pleats.
