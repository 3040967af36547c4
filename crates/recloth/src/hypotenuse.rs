//! The long side of a right triangle.

/// `√(a² + b²)`. Lengths here are at most 1e7 mm, so squares neither overflow nor lose what counts, and need no scaling:
/// the root is within one unit of its last digit, and several rows at once can be worked.
#[inline]
pub(crate) fn hypotenuse(a: f64, b: f64) -> f64 {
    libm::sqrt(a * a + b * b)
}

#[cfg(test)]
mod tests {
    use super::hypotenuse;

    #[test]
    fn sides_of_whole_triangles_are_exact() {
        for (a, b, c) in [
            (3.0, 4.0, 5.0),
            (5.0, 12.0, 13.0),
            (20.0, 21.0, 29.0),
            (-3.0, 4.0, 5.0),
        ] {
            assert_eq!(hypotenuse(a, b), c);
        }
        assert_eq!(hypotenuse(0.0, 1e7), 1e7);
        assert_eq!(hypotenuse(0.0, 0.0), 0.0);
    }

    #[test]
    fn it_is_the_scaled_root_to_a_unit_of_the_last_digit() {
        let mut a = 1e-4;
        while a < 1e7 {
            let mut b = 1e-4;
            while b < 1e7 {
                let (own, scaled) = (hypotenuse(a, b), libm::hypot(a, b));
                assert!((own - scaled).abs() <= scaled * f64::EPSILON, "{a}, {b}");
                b *= 1.37;
            }
            a *= 1.61;
        }
    }
}
