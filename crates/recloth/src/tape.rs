//! Lengths as they are written on a tape: reading, printing and rounding them.
