//! The nearest value that does, found by trying: for errors that say what would do.

/// How finely it is found (mm).
const FINE: f64 = 0.01;

/// The nearest value within a range that does, by ever longer steps both ways and then halving.
pub(crate) fn nearest(
    value: f64,
    (least, most): (f64, f64),
    does: &dyn Fn(f64) -> bool,
) -> Option<f64> {
    let one_way = |sign: f64| -> Option<f64> {
        let mut miss = value;
        let mut step = 0.25;
        loop {
            let tried = (value + sign * step).clamp(least, most);
            if does(tried) {
                return Some(closer(miss, tried, does));
            }
            if tried == least || tried == most {
                return None;
            }
            miss = tried;
            step *= 1.6;
        }
    };
    match (one_way(-1.0), one_way(1.0)) {
        (Some(low), Some(high)) if high - value < value - low => Some(high),
        (low, high) => low.or(high),
    }
}

/// Between a value that does not do and one that does, one that does, to the next hundredth of a millimetre.
fn closer(mut miss: f64, mut good: f64, does: &dyn Fn(f64) -> bool) -> f64 {
    while (good - miss).abs() > FINE {
        let middle = (good + miss) / 2.0;
        if does(middle) {
            good = middle;
        } else {
            miss = middle;
        }
    }
    // A round number, if one as near does.
    let round = [1.0, 0.1].map(|unit| libm::round(good / unit) * unit);
    let up = if good > miss { libm::ceil } else { libm::floor };
    let near = |tidy: &f64| (tidy - good).abs() <= FINE && does(*tidy);
    let tidy = round.into_iter().chain([up(good / FINE) * FINE]).find(near);
    tidy.unwrap_or(good)
}
