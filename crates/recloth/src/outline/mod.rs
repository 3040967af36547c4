//! Pieces made of edges: allowances, corners, notches, walking, mirroring.
