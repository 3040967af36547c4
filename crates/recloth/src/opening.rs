//! Openings off the centre line.
