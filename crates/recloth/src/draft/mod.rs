//! Pieces drafted from measures.
