//! Rounding dust: what binary arithmetic leaves of lengths that should be equal.
//!
//! 17 1/8 in - 11 1/8 in - 1 in is a hair below 5 in. Such a hair must neither refuse a piece that just fits nor raise a
//! doubt, so limits are compared with these.

/// Two lengths (mm) less apart than this are equal: far above the dust of a few sums to 100 m, far below any tape.
pub(crate) const DUST: f64 = 1e-9;

/// Whether `value` is below `limit` by more than dust.
#[inline]
pub(crate) fn below(value: f64, limit: f64) -> bool {
    limit - value > DUST
}

/// Whether `value` is above `limit` by more than dust.
#[inline]
pub(crate) fn above(value: f64, limit: f64) -> bool {
    value - limit > DUST
}

/// What an error says would do where a limit itself would not: a millionth of a millimetre short of it, more than dust.
const SHORT: f64 = 1e-6;

/// The most that is below a limit which is itself no solution.
#[inline]
pub(crate) const fn short_of(limit: f64) -> f64 {
    limit - SHORT
}

/// The least that is past a limit which is itself no solution.
#[inline]
pub(crate) const fn past(limit: f64) -> f64 {
    limit + SHORT
}

/// The round number that a bound lies just short of or just past, if there is one: an error names that.
#[inline]
pub(crate) fn open_limit(bound: f64) -> Option<f64> {
    let limit = libm::round(bound * 1e4) / 1e4;
    let apart = libm::fabs(bound - limit) / SHORT;
    (limit != 0.0 && 0.98 < apart && apart < 1.02).then_some(limit)
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

    #[test]
    fn a_limit_that_is_no_solution_is_told_from_one_that_is() {
        for limit in [250.0, 31.375 * INCH, -710.0, 1e5] {
            assert!(below(short_of(limit), limit) && above(past(limit), limit));
            assert!((open_limit(short_of(limit)).unwrap() - limit).abs() < 1e-9);
            assert!((open_limit(past(limit)).unwrap() - limit).abs() < 1e-9);
            assert_eq!(open_limit(limit), None);
        }
        assert_eq!(open_limit(f64::NAN), None);
        assert_eq!(open_limit(f64::INFINITY), None);
        assert_eq!(open_limit(1e-6), None);
    }
}
