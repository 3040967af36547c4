//! Waistbands: straight, shaped and in sections.
