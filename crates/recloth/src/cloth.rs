//! Cloth in the wash: dimensional change.
