//! Cut lines lie within the tolerance of the true parallels, at every tolerance, and finer ones take more arcs.

mod offsets;

use offsets::{curves, found};

#[test]
fn the_worst_error_is_within_the_tolerance() {
    for (name, curve) in curves() {
        let mut last = 0;
        for tolerance in [1.0, 0.1, 0.01, 0.001] {
            let found = found(curve, tolerance);
            // Chords in place of the curve itself are within 1e-6 of it.
            assert!(
                found.worst <= tolerance + 1e-6,
                "{name} at {tolerance}: {}",
                found.worst
            );
            assert!(
                found.segments >= last && found.segments <= 200,
                "{name}: {}",
                found.segments
            );
            assert!(found.points >= found.segments, "{name}");
            last = found.segments;
        }
    }
}

#[test]
fn lines_and_arcs_have_exact_parallels_of_one_segment() {
    for (name, curve) in curves().into_iter().take(3) {
        let found = found(curve, 1.0);
        assert_eq!(found.segments, 1, "{name}");
        assert!(found.worst < 1e-5, "{name}: {}", found.worst);
    }
}
