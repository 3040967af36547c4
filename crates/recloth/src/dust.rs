//! Rounding dust: what binary arithmetic leaves of lengths that should be equal.
//!
//! 17 1/8 in - 11 1/8 in - 1 in is a hair below 5 in. Such a hair must neither refuse a piece that just fits nor raise a
//! doubt, so limits are compared with these.

/// Two lengths (mm) less apart than this are equal: far above the dust of a few sums to 100 m, far below any tape.
pub(crate) const DUST: f64 = 1e-9;

/// Whether `value` is below `limit` by more than dust.
pub(crate) fn below(value: f64, limit: f64) -> bool {
    limit - value > DUST
}

/// Whether `value` is above `limit` by more than dust.
pub(crate) fn above(value: f64, limit: f64) -> bool {
    value - limit > DUST
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::INCH;

    #[test]
    fn sums_of_inches_are_on_their_limits() {
        let (mut raw, mut cases) = (0, 0);
        for a in 1..200 {
            for b in 1..a {
                let eighths = |count: i32| f64::from(count) / 8.0 * INCH;
                let (sum, limit) = (eighths(a) - eighths(b), eighths(a - b));
                cases += 1;
                raw += usize::from(sum < limit);
                assert!(!below(sum, limit) && !above(sum, limit));
                assert!(below(sum - 1e-6, limit) && above(sum + 1e-6, limit));
            }
        }
        // Without it many would be short.
        assert!(raw > cases / 10);
    }
}
