//! Chains of lengths: one unknown, and how errors add up.
