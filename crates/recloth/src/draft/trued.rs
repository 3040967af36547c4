//! A row of curves made one.

use crate::outline::Curve;

/// One smooth curve for a row of them, from the start of the first to the end of the last, as long as asked if it can be.
pub(super) fn trued(row: &[Curve], wanted: f64) -> Option<Curve> {
    let (first, last) = (row.first()?, row.last()?);
    let (start, end) = (first.start(), last.end());
    let chord = libm::hypot(end.x - start.x, end.y - start.y);
    let curve = |reach: f64| {
        Curve::cubic(
            start,
            start + first.start_tangent() * reach,
            end - last.end_tangent() * reach,
            end,
        )
    };
    // The longer it is steered the longer it is.
    let (mut low, mut high) = (0.05 * chord, 1.5 * chord);
    for _ in 0..40 {
        let middle = (low + high) / 2.0;
        if curve(middle).length() < wanted {
            low = middle;
        } else {
            high = middle;
        }
    }
    let reach = (low + high) / 2.0;
    let near = (curve(reach).length() - wanted).abs() < 0.5;
    Some(curve(if near { reach } else { chord / 3.0 }))
}
