//! Random numbers, the same on every machine.

/// A linear congruential generator (D. E. Knuth, *The Art of Computer Programming*, vol. 2, section 3.3.4, line 26), of
/// which the high bits are used.
pub(crate) struct Random(pub(crate) u64);

impl Random {
    /// The next number from 0 to below 1.
    pub(crate) fn unit(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }

    /// A number from `low` to below `high`.
    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.unit()
    }
}
