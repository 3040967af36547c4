//! Body measures: sharing a girth over panels, and doubts on measures.
