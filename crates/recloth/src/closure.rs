//! Buttonholes, buttons, loops and their spacing.
