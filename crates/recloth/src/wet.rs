//! Baths: liquor and what goes into it.
