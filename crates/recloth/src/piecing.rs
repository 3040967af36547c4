//! A length made of scraps joined end to end.

use crate::Error;
use crate::dust::{above, past};

/// Scraps joined to one length.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PiecedLength {
    /// Length of all scraps joined, free ends raw (mm).
    pub joined: f64,
    /// What that is longer than needed; negative when it does not reach (mm).
    pub spare: f64,
    /// Number of joins when all are used (count).
    pub joins: u32,
    /// Fewest scraps that reach, the longest taken first; 0 when all together do not (count).
    pub fewest: u32,
}

/// Length that scraps give when they are joined end to end, and how few of them reach.
///
/// Each join takes an allowance off both its scraps: `joined = sum of lengths - 2 · allowance · (scraps - 1)`. Two allowances
/// a join are easily forgotten, and then the strip is short when it is too late. Count in `needed` what its own ends take.
/// Keep joins off dart points, pockets and the middle of a back; under a band, in gathers or at a seam they are not seen.
/// Grain, face and nap must run alike in all scraps.
///
/// | argument    | unit | range                      | default | meaning                                      |
/// |-------------|------|----------------------------|---------|----------------------------------------------|
/// | `lengths`   | mm   | 1..=1e5 each, 1..=100 items | -      | the scraps, raw edge to raw edge             |
/// | `allowance` | mm   | 0..=1e3                    | -       | seam allowance at each edge of a join        |
/// | `needed`    | mm   | 1..=1e6                    | -       | length needed, allowances of its ends included |
///
/// # Errors
/// `NotFinite`, `OutOfRange` or `Count`, naming the argument. `NoSolution` naming `lengths` and the scrap that two allowances
/// would swallow: leave it out.
///
/// # Source
/// Arithmetic. `tests/vectors/pieced_length.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::piecing::pieced_length;
/// let band = pieced_length(&[420.0, 260.0], 10.0, 640.0)?;
/// assert_eq!((band.joined, band.spare, band.joins), (660.0, 20.0, 1));
/// // A third scrap is not needed.
/// assert_eq!(pieced_length(&[130.0, 420.0, 260.0], 10.0, 640.0)?.fewest, 2);
/// let error = pieced_length(&[420.0, 18.0], 10.0, 430.0).unwrap_err();
/// assert_eq!(error.to_string(), "lengths[1] = 18 leaves no solution: it must be more than 20");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn pieced_length(lengths: &[f64], allowance: f64, needed: f64) -> Result<PiecedLength, Error> {
    let lengths = Error::check_list("lengths", lengths, 1.0, 1e5, (1, 100))?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let needed = Error::check("needed", needed, 1.0, 1e6)?;
    let join = 2.0 * allowance;
    let swallowed = lengths.iter().position(|&length| !above(length, join));
    if let Some(index) = swallowed.filter(|_| lengths.len() > 1) {
        return Err(
            Error::no_solution("lengths", lengths[index], past(join), f64::NAN).at_index(index),
        );
    }
    let joins = lengths.len() - 1;
    let joined = lengths.iter().sum::<f64>() - join * joins as f64;
    Ok(PiecedLength {
        joined,
        spare: joined - needed,
        joins: joins as u32,
        fewest: fewest(lengths, join, needed),
    })
}

/// How many of the scraps reach, the longest first; 0 when none do.
#[inline]
fn fewest(lengths: &[f64], join: f64, needed: f64) -> u32 {
    // The first scrap counts whole, each further one without its join.
    let (mut count, mut joined) = (0, join);
    let mut last = (f64::INFINITY, 0);
    // Without room to sort in, the next in order is sought each time: shorter, or as long and further on.
    while let Some(next) = (0..lengths.len())
        .map(|index| (lengths[index], index))
        .filter(|&(length, index)| length < last.0 || (length == last.0 && index > last.1))
        .reduce(|best, other| if other.0 > best.0 { other } else { best })
    {
        count += 1;
        joined += next.0 - join;
        last = next;
        if !above(needed, joined) {
            return count;
        }
    }
    0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fewest_is_the_least_number_over_every_choice() {
        let lengths = [130.0, 420.0, 95.0, 260.0, 260.0, 310.0];
        for needed in (50..1500).step_by(7) {
            let needed = f64::from(needed);
            let answer = pieced_length(&lengths, 10.0, needed).unwrap();
            let mut least = 0;
            for choice in 1..1_u32 << lengths.len() {
                let count = choice.count_ones();
                let sum: f64 = (0..lengths.len())
                    .filter(|index| choice >> index & 1 == 1)
                    .map(|index| lengths[index])
                    .sum();
                let reaches = sum - 20.0 * f64::from(count - 1) >= needed;
                if reaches && (least == 0 || count < least) {
                    least = count;
                }
            }
            assert_eq!(answer.fewest, least, "{needed}");
            assert_eq!(answer.fewest == 0, answer.spare < 0.0);
        }
    }
}
