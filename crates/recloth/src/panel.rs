//! Panels measured by tape: corners, area, what is usable, and the rectangles in it.
