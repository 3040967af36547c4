//! Elastic, casings, shirring and ribbing.

use crate::Error;
use crate::doubt::ELASTIC_BATH;
use crate::dust::{below, short_of};

/// Elastic for an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Elastic {
    /// Way round the joined elastic, not stretched (mm).
    pub round: f64,
    /// Length to cut, with its overlap (mm).
    pub cut: f64,
    /// Stretch when worn (%).
    pub worn_pct: f64,
    /// Stretch when the widest part passes through (%).
    pub passing_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Always `ELASTIC_BATH` (bits).
    pub cautions: u64,
}

/// Length of elastic for a waist or a cuff, and the stretch asked of it.
///
/// `round = girth - shorter`, `cut = round + overlap`. Elastics differ: pin it round the body before cutting, and see that
/// its own full stretch is more than `passing_pct`. The casing's edge must itself be as long as the widest part. Never
/// round a throat; for children's clothes see the safety standards that hold where you are.
///
/// A girth below 110 mm, less than a child's wrist (from memory), is doubted.
///
/// | argument  | unit | range            | default | meaning                                                   |
/// |-----------|------|------------------|---------|-----------------------------------------------------------|
/// | `girth`   | mm   | 1..=1e5          | -       | girth of the body where it sits                           |
/// | `widest`  | mm   | 1..=1e5, >= girth | -      | girth that it must pass over, as the hip for a waist      |
/// | `shorter` | mm   | 0..=1e4, < girth | 75      | what the elastic is shorter than the girth                |
/// | `overlap` | mm   | 0..=1e3          | 12.7    | overlap where its ends are joined                         |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `widest` when it is less than the girth; naming
/// `shorter` when no elastic is left.
///
/// # Source
/// A step-by-step sewing column, hastingstribune.com, 2020 (waist less 2 to 4 in for a snug one, and 1/2 in of overlap);
/// the default of 75 mm, 3 in, is the middle of its range.
///
/// # Examples
/// ```
/// use recloth::elastic::elastic;
/// let waist = elastic(720.0, 980.0, 70.0, 12.0)?;
/// assert_eq!((waist.round, waist.cut), (650.0, 662.0));
/// assert!((waist.passing_pct - 50.77).abs() < 0.005);
/// assert_eq!(elastic(720.0, 700.0, 70.0, 12.0).unwrap_err().argument(), "widest");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn elastic(girth: f64, widest: f64, shorter: f64, overlap: f64) -> Result<Elastic, Error> {
    let girth = Error::check("girth", girth, 1.0, 1e5)?;
    let widest = Error::check("widest", widest, 1.0, 1e5)?;
    let shorter = Error::check("shorter", shorter, 0.0, 1e4)?;
    let overlap = Error::check("overlap", overlap, 0.0, 1e3)?;
    if below(widest, girth) {
        return Err(Error::no_solution("widest", widest, girth, f64::NAN));
    }
    if shorter >= girth {
        return Err(Error::no_solution("shorter", shorter, 0.0, short_of(girth)));
    }
    let round = girth - shorter;
    Ok(Elastic {
        round,
        cut: round + overlap,
        worn_pct: 100.0 * shorter / round,
        passing_pct: 100.0 * (widest - round) / round,
        doubts: crate::body::limb(girth),
        cautions: ELASTIC_BATH,
    })
}

/// A casing turned down at an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Casing {
    /// From the fold to the lower stitching (mm).
    pub depth: f64,
    /// Allowance beyond the fold (mm).
    pub allowance: f64,
}

/// Depth and allowance of a casing for elastic or a cord.
///
/// `depth = width + ease + heading`, `allowance = depth + turn_in`. A tunnel that is too wide lets the elastic roll, one too
/// narrow does not let it through. A heading stands above a second line of stitching.
///
/// | argument  | unit | range   | default | meaning                                            |
/// |-----------|------|---------|---------|----------------------------------------------------|
/// | `width`   | mm   | 1..=500 | -       | width of the elastic, or of the cord pressed flat  |
/// | `ease`    | mm   | 0..=100 | 3.2     | what the tunnel is wider                           |
/// | `turn_in` | mm   | 0..=100 | 6.4     | turned in at the raw edge                          |
/// | `heading` | mm   | 0..=500 | 0       | stands above the tunnel                            |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// A magazine's tutorial, allpeoplequilt.com (1/4 in turned in, then 1 3/4 in down, for elastic of 1 1/2 in); 1/8 to 1/4 in
/// wider than the elastic.
///
/// # Examples
/// ```
/// use recloth::{elastic::casing, units::INCH};
/// let tunnel = casing(1.5 * INCH, 0.25 * INCH, 0.25 * INCH, 0.0)?;
/// assert!((tunnel.allowance - 2.0 * INCH).abs() < 1e-9);
/// assert_eq!(casing(0.0, 3.2, 6.4, 0.0).unwrap_err().argument(), "width");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn casing(width: f64, ease: f64, turn_in: f64, heading: f64) -> Result<Casing, Error> {
    let width = Error::check("width", width, 1.0, 500.0)?;
    let ease = Error::check("ease", ease, 0.0, 100.0)?;
    let turn_in = Error::check("turn_in", turn_in, 0.0, 100.0)?;
    let heading = Error::check("heading", heading, 0.0, 500.0)?;
    let depth = width + ease + heading;
    Ok(Casing {
        depth,
        allowance: depth + turn_in,
    })
}

/// Cloth drawn up by rows of elastic thread.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Shirring {
    /// Width before shirring, without allowances (mm).
    pub flat: f64,
    /// Flat over finished (1).
    pub ratio: f64,
    /// Number of rows (count).
    pub rows: u32,
    /// All rows together, as sewn on the flat cloth (mm).
    pub stitching: f64,
    /// Always `ELASTIC_BATH` (bits).
    pub cautions: u64,
}

/// Cloth and rows for shirring with elastic thread.
///
/// `flat = finished · 100 / drawn_pct`, and `rows = floor(depth / pitch) + 1`, the first and last at the edges of the depth.
/// How far it draws up depends on cloth, tension and number of rows, and steam draws it further: shirr a square of known
/// width and measure.
///
/// | argument    | unit | range              | default | meaning                                              |
/// |-------------|------|--------------------|---------|------------------------------------------------------|
/// | `finished`  | mm   | 1..=1e5            | -       | width when drawn up, not stretched                   |
/// | `depth`     | mm   | 0..=1e4            | -       | from the first row to the last                       |
/// | `pitch`     | mm   | 1..=1e3            | 10      | from row to row                                      |
/// | `drawn_pct` | %    | 10..=100           | 55      | what the cloth draws up to                           |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// To 50 or 60 % of its width: common practice, no source; the default is the middle. `tests/vectors/shirring.csv`.
///
/// # Examples
/// ```
/// use recloth::elastic::shirring;
/// let bodice = shirring(330.0, 120.0, 10.0, 55.0)?;
/// assert_eq!((bodice.flat, bodice.rows, bodice.stitching), (600.0, 13, 7800.0));
/// assert_eq!(shirring(330.0, 120.0, 0.0, 55.0).unwrap_err().argument(), "pitch");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn shirring(finished: f64, depth: f64, pitch: f64, drawn_pct: f64) -> Result<Shirring, Error> {
    let finished = Error::check("finished", finished, 1.0, 1e5)?;
    let depth = Error::check("depth", depth, 0.0, 1e4)?;
    let pitch = Error::check("pitch", pitch, 1.0, 1e3)?;
    let drawn_pct = Error::check("drawn_pct", drawn_pct, 10.0, 100.0)?;
    let flat = finished * 100.0 / drawn_pct;
    // Lengths given in inches may miss a whole number by a rounding.
    let rows = libm::floor(depth / pitch * (1.0 + 1e-12)) + 1.0;
    Ok(Shirring {
        flat,
        ratio: flat / finished,
        rows: rows as u32,
        stitching: rows * flat,
        cautions: ELASTIC_BATH,
    })
}

/// A folded strip of ribbing.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Ribbing {
    /// Way round the joined strip, not stretched (mm).
    pub round: f64,
    /// Length to cut, along the way it stretches (mm).
    pub cut_length: f64,
    /// Width to cut, folded in two when sewn (mm).
    pub cut_width: f64,
    /// Stretch that it is sewn on with (%).
    pub stretch_pct: f64,
}

/// Strip of ribbing for a neck, a cuff or a waist.
///
/// `round = edge · share`, joined with an allowance at both ends; folded along its middle, `cut_width = 2 · depth + 2 ·
/// allowance`. A round neck takes less than a waist, lest it stand away. Ribbings differ: pin a strip round the edge first.
/// A neck must still pass over the head, see
/// [`head_opening`](crate::neck::head_opening).
///
/// | argument    | unit | range    | default | meaning                                         |
/// |-------------|------|----------|---------|-------------------------------------------------|
/// | `edge`      | mm   | 1..=1e5  | -       | edge that it is sewn to                         |
/// | `depth`     | mm   | 1..=1e3  | -       | finished depth                                  |
/// | `allowance` | mm   | 0..=100  | -       | seam allowance at each edge and end             |
/// | `share`     | 1    | 0.3..=1  | 0.8     | strip over edge                                 |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic; a share of 0.75 to 0.9 is common practice, no source. `tests/vectors/ribbing.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::elastic::ribbing;
/// let cuff = ribbing(250.0, 60.0, 7.0, 0.8)?;
/// assert_eq!((cuff.cut_length, cuff.cut_width, cuff.stretch_pct), (214.0, 134.0, 25.0));
/// assert_eq!(ribbing(250.0, 60.0, 7.0, 1.2).unwrap_err().argument(), "share");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn ribbing(edge: f64, depth: f64, allowance: f64, share: f64) -> Result<Ribbing, Error> {
    let edge = Error::check("edge", edge, 1.0, 1e5)?;
    let depth = Error::check("depth", depth, 1.0, 1e3)?;
    let allowance = Error::check("allowance", allowance, 0.0, 100.0)?;
    let share = Error::check("share", share, 0.3, 1.0)?;
    let round = edge * share;
    Ok(Ribbing {
        round,
        cut_length: round + 2.0 * allowance,
        cut_width: 2.0 * depth + 2.0 * allowance,
        stretch_pct: 100.0 * (edge - round) / round,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn stretched_as_told_each_reaches_its_edge() {
        let waist = elastic(720.0, 980.0, 70.0, 12.0).unwrap();
        let stretched = |pct: f64| waist.round * (1.0 + pct / 100.0);
        approx::assert_abs_diff_eq!(stretched(waist.worn_pct), 720.0, epsilon = 1e-9);
        approx::assert_abs_diff_eq!(stretched(waist.passing_pct), 980.0, epsilon = 1e-9);
        let cuff = ribbing(250.0, 60.0, 7.0, 0.72).unwrap();
        let reach = cuff.round * (1.0 + cuff.stretch_pct / 100.0);
        approx::assert_abs_diff_eq!(reach, 250.0, epsilon = 1e-9);
    }

    #[test]
    fn rows_fill_the_depth() {
        for depth in [0.0, 9.9, 10.0, 127.0] {
            let rows = f64::from(shirring(330.0, depth, 10.0, 55.0).unwrap().rows);
            assert!((rows - 1.0) * 10.0 <= depth && rows * 10.0 > depth);
        }
    }
}
