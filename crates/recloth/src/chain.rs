//! Chains of lengths: one unknown, and how errors add up.

use crate::Error;

/// The unknown of a chain of lengths, and how sure it is.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LengthChain {
    /// The length sought (mm).
    pub value: f64,
    /// What the known terms with a plus add up to (mm).
    pub plus: f64,
    /// What the known terms with a minus take away (mm).
    pub minus: f64,
    /// How far the value is off at worst, for each mm that every known length may be off (1).
    pub worst_per_mm: f64,
    /// How far the value is off in the usual case, for each mm that every known length may be off (1).
    pub likely_per_mm: f64,
}

/// How far a row of equal seams may be off.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ToleranceStack {
    /// When every error falls the same way (mm).
    pub worst: f64,
    /// When they fall by chance: the root of the sum of their squares (mm).
    pub likely: f64,
}

/// How far a set of unlike terms may be off.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ToleranceStackList {
    /// When every error falls the same way (mm).
    pub worst: f64,
    /// When they fall by chance: the root of the sum of their squares (mm).
    pub likely: f64,
    /// Index of the term that adds most, of equals the first (count).
    pub largest: u32,
    /// What that term adds to the worst case (mm).
    pub largest_part: f64,
}

/// The one unknown of a chain of lengths.
///
/// The chain is `total = factor · length + factor · length + …`: a factor of 1 for a length that adds, -1 for a seam
/// allowance that is lost, 2 for one that is lost or won on both edges, 0.5 for half a girth. `unknown` is the index of
/// the length sought, or the number of lengths when the total is sought. What stands in the unknown's place is not used,
/// but must be in range: write 0.
///
/// | argument  | unit  | range                        | default | meaning                                       |
/// |-----------|-------|------------------------------|---------|-----------------------------------------------|
/// | `lengths` | mm    | 0..=1e5 each, 1..=1000 items | -       | the lengths                                   |
/// | `factors` | 1     | -100..=100 each, as lengths  | -       | how many times each counts, minus where lost  |
/// | `total`   | mm    | 0..=1e10                     | -       | what they come to                             |
/// | `unknown` | count | 0..=1000                     | -       | index of the length sought; their number: total |
///
/// # Errors
/// `NotFinite`, `OutOfRange` or `Count`, naming the argument. `NoSolution` naming `unknown`: there is no such length;
/// `factors`: the one at the unknown is below 1e-6 either way; `total`: the answer would be negative, with the totals
/// that would do (or the sum itself, where the total is sought).
///
/// # Source
/// Arithmetic; errors as in [`tolerance_stack`].
///
/// # Examples
/// ```
/// use recloth::chain::length_chain;
/// // A panel of 640 whose hem is kept, less a seam allowance of 10, and a band finished 35 deep.
/// let skirt = length_chain(&[640.0, 10.0, 35.0], &[1.0, -1.0, 1.0], 0.0, 3)?;
/// assert_eq!(skirt.value, 665.0);
/// // How deep must the band be for a skirt of 680?
/// let band = length_chain(&[640.0, 10.0, 0.0], &[1.0, -1.0, 1.0], 680.0, 2)?;
/// assert_eq!(band.value, 50.0);
/// let error = length_chain(&[640.0, 10.0, 0.0], &[1.0, -1.0, 1.0], 600.0, 2).unwrap_err();
/// assert_eq!(error.to_string(), "total = 600 leaves no solution: it must be at least 630");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn length_chain(
    lengths: &[f64],
    factors: &[f64],
    total: f64,
    unknown: u32,
) -> Result<LengthChain, Error> {
    let count = lengths.len();
    let lengths = Error::check_list("lengths", lengths, 0.0, 1e5, (1, 1000))?;
    let factors = Error::check_list("factors", factors, -100.0, 100.0, (count, count))?;
    let total = Error::check("total", total, 0.0, 1e10)?;
    let unknown = Error::check_count("unknown", unknown, 0, 1000)? as usize;
    if unknown > count {
        return Err(Error::no_solution(
            "unknown",
            unknown as f64,
            0.0,
            count as f64,
        ));
    }

    let (mut plus, mut minus) = (0.0, 0.0);
    let (mut worst, mut squares) = (0.0, 0.0);
    for (index, (length, factor)) in lengths.iter().zip(factors).enumerate() {
        if index != unknown {
            let term = factor * length;
            if term >= 0.0 {
                plus += term;
            } else {
                minus -= term;
            }
            worst += factor.abs();
            squares += factor * factor;
        }
    }
    let Some(&factor) = factors.get(unknown) else {
        // The total is sought.
        let value = plus - minus;
        if value < -dust(plus + minus) {
            return Err(Error::no_solution("total", value, 0.0, f64::NAN));
        }
        return Ok(LengthChain {
            value: value.max(0.0),
            plus,
            minus,
            worst_per_mm: worst,
            likely_per_mm: libm::sqrt(squares),
        });
    };
    let size = factor.abs();
    if size < 1e-6 {
        return Err(Error::no_solution("factors", factor, 1e-6, f64::NAN).at_index(unknown));
    }
    let rest = plus - minus;
    let value = (total - rest) / factor;
    if value < -dust(plus + minus + total) / size {
        let (min, max) = if factor > 0.0 {
            (rest, f64::NAN)
        } else {
            (f64::NAN, rest)
        };
        return Err(Error::no_solution("total", total, min, max));
    }
    Ok(LengthChain {
        // Adding zero turns -0 into 0.
        value: value.max(0.0) + 0.0,
        plus,
        minus,
        // The total is one of the known lengths.
        worst_per_mm: (worst + 1.0) / size,
        likely_per_mm: libm::sqrt(squares + 1.0) / size,
    })
}

/// How sure the unknown of a chain of lengths is, and which term does most to it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ChainShares {
    /// The length sought (mm).
    pub value: f64,
    /// How far it is off when every error falls the same way (mm).
    pub worst: f64,
    /// How far it is off when they fall by chance: the root of the sum of their squares (mm).
    pub likely: f64,
    /// Index of the term whose error moves it most, of equals the first; their number is the total (count).
    pub largest: u32,
    /// What that term's error adds to the worst case (mm).
    pub largest_part: f64,
}

/// Each term's part in a chain of lengths and in its error.
///
/// The chain and its unknown are those of [`length_chain`]; each length has besides how far it may be off. `parts` says
/// what each term adds to the total, `factor · length`, minus where it is lost; the unknown's own part among them.
/// `misses` says how far each term's error alone moves the unknown: `|factor| · error / |factor of the unknown|`. They add
/// up to the worst case, the total's own among them; the unknown's own is 0. The largest of them is where a second
/// measuring pays.
///
/// | argument      | unit  | range                        | default | meaning                                         |
/// |---------------|-------|------------------------------|---------|-------------------------------------------------|
/// | `lengths`     | mm    | 0..=1e5 each, 1..=1000 items | -       | the lengths                                     |
/// | `factors`     | 1     | -100..=100 each, as lengths  | -       | how many times each counts, minus where lost    |
/// | `errors`      | mm    | 0..=1000 each, as lengths    | -       | how far each may be off                         |
/// | `total`       | mm    | 0..=1e10                     | -       | what they come to                               |
/// | `unknown`     | count | 0..=1000                     | -       | index of the length sought; their number: total |
/// | `parts`       | mm    | out, as lengths              | -       | what each adds to the total                     |
/// | `misses`      | mm    | out, as lengths              | -       | how far the error of each moves the unknown     |
/// | `total_error` | mm    | 0..=1000                     | 0       | how far the total may be off                    |
///
/// # Errors
/// `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` as [`length_chain`].
///
/// # Source
/// Arithmetic; errors that fall by chance add as the root of the sum of their squares: JCGM 100:2008, *Guide to the
/// expression of uncertainty in measurement*, 5.1.2. `tests/vectors/length_chain_shares.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::chain::length_chain_shares;
/// // A skirt of 680: a panel of 640 to 2 mm, a seam that takes 10 to 1 mm from both edges, and a band.
/// let (mut parts, mut misses) = ([0.0; 3], [0.0; 3]);
/// let (lengths, factors, errors) = ([640.0, 10.0, 0.0], [1.0, -2.0, 1.0], [2.0, 1.0, 0.0]);
/// let band = length_chain_shares(&lengths, &factors, &errors, 680.0, 2, &mut parts, &mut misses, 3.0)?;
/// assert_eq!((band.value, parts), (60.0, [640.0, -20.0, 60.0]));
/// assert_eq!((band.worst, misses), (7.0, [2.0, 2.0, 0.0]));
/// // The total asked for is the least sure of all.
/// assert_eq!((band.largest, band.largest_part), (3, 3.0));
/// let long = length_chain_shares(&lengths, &factors, &[2.0], 680.0, 2, &mut parts, &mut misses, 3.0);
/// assert_eq!(long.unwrap_err().argument(), "errors");
/// # Ok::<(), recloth::Error>(())
/// ```
#[allow(
    clippy::too_many_arguments,
    reason = "a chain with its errors, and two lists to fill"
)]
#[inline]
pub fn length_chain_shares(
    lengths: &[f64],
    factors: &[f64],
    errors: &[f64],
    total: f64,
    unknown: u32,
    parts: &mut [f64],
    misses: &mut [f64],
    total_error: f64,
) -> Result<ChainShares, Error> {
    let count = lengths.len();
    Error::check_list("lengths", lengths, 0.0, 1e5, (1, 1000))?;
    Error::check_list("factors", factors, -100.0, 100.0, (count, count))?;
    Error::check_list("errors", errors, 0.0, 1000.0, (count, count))?;
    let total = Error::check("total", total, 0.0, 1e10)?;
    Error::check_count("unknown", unknown, 0, 1000)?;
    Error::check_room("parts", parts.len(), count)?;
    Error::check_room("misses", misses.len(), count)?;
    let total_error = Error::check("total_error", total_error, 0.0, 1000.0)?;
    let value = length_chain(lengths, factors, total, unknown)?.value;

    let sought = unknown as usize;
    let size = factors.get(sought).map_or(1.0, |factor| factor.abs());
    let total_miss = if sought < count {
        total_error / size
    } else {
        0.0
    };
    let (mut worst, mut squares) = (0.0, 0.0);
    let (mut largest, mut largest_part) = (0, 0.0);
    for (index, (&length, (&factor, &error))) in
        lengths.iter().zip(factors.iter().zip(errors)).enumerate()
    {
        let known = index != sought;
        let miss = if known {
            factor.abs() * error / size
        } else {
            0.0
        };
        // Adding zero turns -0 into 0.
        parts[index] = factor * (if known { length } else { value }) + 0.0;
        misses[index] = miss;
        worst += miss;
        squares += miss * miss;
        if miss > largest_part {
            (largest, largest_part) = (index, miss);
        }
    }
    if total_miss > largest_part {
        (largest, largest_part) = (count, total_miss);
    }
    Ok(ChainShares {
        value,
        worst: worst + total_miss,
        likely: libm::sqrt(squares + total_miss * total_miss),
        largest: largest as u32,
        largest_part,
    })
}

/// What rounding may leave of a sum that should be nothing, for terms of this size together.
#[inline]
fn dust(size: f64) -> f64 {
    size * 1e-12
}

/// How far a girth made of equal seams may be off.
///
/// A seam sewn `error_each` beside its line takes that much from both of its edges: `worst = 2 · seams · error_each`,
/// `likely = 2 · error_each · √seams`. Where the ease at the waist is less than the worst case, try on before the band is
/// cut.
///
/// | argument     | unit  | range    | default | meaning                                      |
/// |--------------|-------|----------|---------|----------------------------------------------|
/// | `seams`      | count | 0..=1000 | -       | number of seams, darts counted as one each   |
/// | `error_each` | mm    | 0..=100  | 1       | how far beside its line a seam may be sewn   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Worst case by arithmetic; independent errors add as the root of the sum of their squares: JCGM 100:2008, *Guide to the
/// expression of uncertainty in measurement*, 5.1.2.
///
/// # Examples
/// ```
/// use recloth::chain::tolerance_stack;
/// let waist = tolerance_stack(6, 1.0)?;
/// assert_eq!(waist.worst, 12.0);
/// assert!((waist.likely - 4.9).abs() < 0.01);
/// assert_eq!(tolerance_stack(6, -1.0).unwrap_err().argument(), "error_each");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn tolerance_stack(seams: u32, error_each: f64) -> Result<ToleranceStack, Error> {
    let seams = f64::from(Error::check_count("seams", seams, 0, 1000)?);
    let error_each = Error::check("error_each", error_each, 0.0, 100.0)?;
    Ok(ToleranceStack {
        worst: 2.0 * error_each * seams,
        likely: 2.0 * error_each * libm::sqrt(seams),
    })
}

/// How far a length made of unlike terms may be off, and which of them adds most.
///
/// Each term's error counts once for each of its edges: 2 for a seam, 1 for a fold or a raw edge, 0 for a term that is
/// sure.
///
/// | argument | unit  | range                        | default | meaning                              |
/// |----------|-------|------------------------------|---------|--------------------------------------|
/// | `errors` | mm    | 0..=1000 each, 1..=1000 items | -      | how far each term may be off         |
/// | `edges`  | count | 0..=100 each, as errors      | -       | how many times each error counts     |
///
/// # Errors
/// `NotFinite`, `OutOfRange` or `Count`, naming the argument.
///
/// # Source
/// As [`tolerance_stack`].
///
/// # Examples
/// ```
/// use recloth::chain::tolerance_stack_list;
/// // Four seams to a millimetre, and a band cut to two.
/// let waist = tolerance_stack_list(&[1.0, 1.0, 1.0, 1.0, 2.0], &[2, 2, 2, 2, 1])?;
/// assert_eq!((waist.worst, waist.largest), (10.0, 0));
/// assert!(tolerance_stack_list(&[], &[]).is_err());
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn tolerance_stack_list(errors: &[f64], edges: &[u32]) -> Result<ToleranceStackList, Error> {
    let errors = Error::check_list("errors", errors, 0.0, 1000.0, (1, 1000))?;
    let edges = Error::check_count_list("edges", edges, 0, 100, (errors.len(), errors.len()))?;
    let (mut worst, mut squares) = (0.0, 0.0);
    let (mut largest, mut largest_part) = (0, 0.0);
    for (index, (error, &edges)) in (0..).zip(errors.iter().zip(edges)) {
        let part = error * f64::from(edges);
        worst += part;
        squares += part * part;
        if part > largest_part {
            (largest, largest_part) = (index, part);
        }
    }
    Ok(ToleranceStackList {
        worst,
        likely: libm::sqrt(squares),
        largest,
        largest_part,
    })
}

#[cfg(test)]
mod tests {
    extern crate std;
    use std::string::ToString;

    use super::*;

    #[test]
    fn an_answer_below_nothing_says_which_totals_would_do() {
        let says = |lengths: &[f64], factors: &[f64], total, unknown| {
            length_chain(lengths, factors, total, unknown)
                .unwrap_err()
                .to_string()
        };
        // 640 and a band: no less than 640. 640 less a band: no more.
        assert_eq!(
            says(&[640.0, 0.0], &[1.0, 1.0], 600.0, 1),
            "total = 600 leaves no solution: it must be at least 640"
        );
        assert_eq!(
            says(&[640.0, 0.0], &[1.0, -1.0], 650.0, 1),
            "total = 650 leaves no solution: it must be at most 640"
        );
        assert_eq!(
            says(&[10.0, 640.0], &[1.0, -1.0], 0.0, 2),
            "total = -630 leaves no solution: it must be at least 0"
        );
        assert_eq!(
            says(&[640.0], &[1.0], 0.0, 2),
            "unknown = 2 leaves no solution: it must be between 0 and 1"
        );
    }

    #[test]
    fn parts_make_the_total_and_misses_the_worst_case() {
        let (lengths, factors) = ([640.0, 10.0, 35.0, 118.65], [1.0, -2.0, 0.5, 3.0]);
        let errors = [2.0, 0.5, 1.0, 0.25];
        for unknown in 0..=4 {
            let (mut parts, mut misses) = ([0.0; 4], [0.0; 5]);
            let total = length_chain(&lengths, &factors, 0.0, 4).unwrap().value;
            let shares = length_chain_shares(
                &lengths,
                &factors,
                &errors,
                total,
                unknown,
                &mut parts,
                &mut misses,
                1.5,
            )
            .unwrap();
            approx::assert_abs_diff_eq!(parts.iter().sum::<f64>(), total, epsilon = 1e-9);
            let own = if unknown < 4 {
                1.5 / factors[unknown as usize].abs()
            } else {
                0.0
            };
            let sum: f64 = misses.iter().sum();
            approx::assert_abs_diff_eq!(sum + own, shares.worst, epsilon = 1e-12);
            assert!(shares.likely <= shares.worst && shares.largest_part <= shares.likely);
            // Errors of 1 everywhere are what `length_chain` says for each mm.
            let same = length_chain_shares(
                &lengths,
                &factors,
                &[1.0; 4],
                total,
                unknown,
                &mut parts,
                &mut misses,
                1.0,
            )
            .unwrap();
            let chain = length_chain(&lengths, &factors, total, unknown).unwrap();
            approx::assert_abs_diff_eq!(same.worst, chain.worst_per_mm, epsilon = 1e-12);
            approx::assert_abs_diff_eq!(same.likely, chain.likely_per_mm, epsilon = 1e-12);
        }
    }

    #[test]
    fn whichever_is_sought_the_chain_closes() {
        let lengths = [640.0, 10.0, 35.0, 118.65];
        let factors = [1.0, -2.0, 0.5, 3.0];
        let total = length_chain(&lengths, &factors, 0.0, 4).unwrap().value;
        for (unknown, length) in (0..).zip(lengths) {
            let found = length_chain(&lengths, &factors, total, unknown).unwrap();
            assert!((found.value - length).abs() < 1e-9, "{unknown}: {found:?}");
        }
    }
}
