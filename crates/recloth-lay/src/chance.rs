//! Seeded chance: the same numbers from the same seed, on every machine and in every version.

/// SplitMix64 (Steele, Lea, Flood: Fast Splittable Pseudorandom Number Generators, 2014, figure 16). Kept here because
/// a lay is part of a plan that must come out the same in every version.
pub(crate) struct Chance(u64);

impl Chance {
    pub(crate) fn new(seed: u64) -> Chance {
        Chance(seed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// At least 0, less than 1.
    pub(crate) fn share(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// One of `0..count`; 0 where there is none.
    pub(crate) fn pick(&mut self, count: usize) -> usize {
        ((self.share() * count as f64) as usize).min(count.saturating_sub(1))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_those_of_the_paper() {
        // First outputs for seed 1234567, as printed on Rosetta Code, "Pseudo-random numbers/Splitmix64" (from memory).
        let mut chance = Chance::new(1_234_567);
        assert_eq!(chance.next(), 6_457_827_717_110_365_317);
        assert_eq!(chance.next(), 3_203_168_211_198_807_973);
    }

    #[test]
    fn picks_are_in_range() {
        let mut chance = Chance::new(0);
        assert_eq!(chance.pick(0), 0);
        assert!((0..1000).all(|_| chance.pick(3) < 3));
    }
}
