//! Strips cut on the bias.
