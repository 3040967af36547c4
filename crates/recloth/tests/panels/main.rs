//! Panels of cloth: made in each way, cut down to what is usable, refused where they are none. Figures are worked by hand
//! beside each check; the cloth is invented.

#![allow(clippy::unwrap_used)] // a test may panic

mod made;
mod path;
#[path = "../random/mod.rs"]
mod random;
mod usable;

/// How far apart two points are.
fn apart(p: kurbo::Point, q: impl Into<kurbo::Point>) -> f64 {
    let between = p - q.into();
    libm::hypot(between.x, between.y)
}
