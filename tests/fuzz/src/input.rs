//! Bytes as numbers and texts, the awkward ones among them more often than chance has it.

use arbitrary::{Result, Unstructured};

const SPECIAL: &[f64] = &[
    0.0,
    -0.0,
    1.0,
    -1.0,
    f64::NAN,
    f64::INFINITY,
    f64::NEG_INFINITY,
    f64::MIN_POSITIVE,
    5e-324,
    f64::EPSILON,
    1e-9,
    1e9,
    f64::MAX,
    f64::MIN,
];

/// What is left of the bytes.
pub(crate) struct Input<'a>(pub(crate) Unstructured<'a>);

impl Input<'_> {
    /// An index below `count`, which is not 0.
    pub(crate) fn index(&mut self, count: usize) -> Result<usize> {
        self.0.choose_index(count)
    }

    /// True once in so many.
    pub(crate) fn once_in(&mut self, count: u8) -> Result<bool> {
        self.0.ratio(1, count)
    }

    /// A share from 0 to 1.
    pub(crate) fn share(&mut self) -> Result<f64> {
        Ok(f64::from(self.0.arbitrary::<u16>()?) / f64::from(u16::MAX))
    }

    /// A number, most often within a range: its ends, what lies next to them, and values `near` it among others.
    pub(crate) fn number(&mut self, [low, high]: [f64; 2], near: &[f64]) -> Result<f64> {
        Ok(match self.0.int_in_range(0..=15)? {
            0 => low,
            1 => high,
            2 => low.next_down(),
            3 => high.next_up(),
            4 => low.next_up(),
            5 => *self.0.choose(SPECIAL)?,
            6 => f64::from_bits(self.0.arbitrary()?),
            7 | 8 if !near.is_empty() => *self.0.choose(near)?,
            9 | 10 if !near.is_empty() => self.0.choose(near)? * (0.5 + self.share()?),
            // Of each size alike, where the range has several.
            11 | 12 if low >= 0.0 => {
                let low = low.max(high * 1e-6);
                low * libm::pow(high / low, self.share()?)
            }
            _ => low + (high - low) * self.share()?,
        })
    }

    /// A text: one given, with a little of it changed, or any.
    pub(crate) fn text(&mut self, like: &str) -> Result<String> {
        let mut letters: Vec<char> = like.chars().collect();
        if self.once_in(4)? {
            return Ok(self.0.arbitrary::<&str>()?.to_owned());
        }
        for _ in 0..self.index(4)? {
            let at = self.index(letters.len() + 1)?;
            let letter = *self.0.choose(&[
                '0', '1', '9', ' ', '.', ',', '/', '-', '"', '½', 'ß', '\u{0}', '\u{2044}', '=',
                '\n', 'e',
            ])?;
            match self.index(3)? {
                0 => letters.insert(at, letter),
                1 if at < letters.len() => drop(letters.remove(at)),
                _ if at < letters.len() => letters[at] = letter,
                _ => letters.push(letter),
            }
        }
        Ok(letters.into_iter().collect())
    }
}
