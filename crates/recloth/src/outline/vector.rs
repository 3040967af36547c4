//! Plain vector arithmetic on libm, so that no kurbo method that may use std is called.

use kurbo::Vec2;

use crate::hypotenuse::hypotenuse;

/// Length of a vector.
#[inline]
pub(crate) fn length(v: Vec2) -> f64 {
    hypotenuse(v.x, v.y)
}

/// The vector at length 1; a zero vector stays zero.
#[inline]
pub(crate) fn unit(v: Vec2) -> Vec2 {
    let size = length(v);
    if size > 0.0 {
        Vec2::new(v.x / size, v.y / size)
    } else {
        Vec2::ZERO
    }
}

/// Scalar product.
pub(crate) fn dot(a: Vec2, b: Vec2) -> f64 {
    a.x * b.x + a.y * b.y
}

/// Area of the parallelogram, positive where `b` is to the left of `a`.
pub(crate) fn cross(a: Vec2, b: Vec2) -> f64 {
    a.x * b.y - a.y * b.x
}

/// A quarter turn to the left.
pub(crate) fn left(v: Vec2) -> Vec2 {
    Vec2::new(-v.y, v.x)
}

/// A quarter turn to the right.
pub(crate) fn right(v: Vec2) -> Vec2 {
    Vec2::new(v.y, -v.x)
}
