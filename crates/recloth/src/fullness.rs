//! Gathers and pleats.

use crate::Error;
use crate::doubt::{GATHERS_LARGE, GATHERS_SCANT, PLEATS_OVERLAP, when};
use crate::dust::{above, below, short_of};
use crate::tier::breadths;

/// The least ratio of gathers without a doubt: common practice, no source.
const SCANT: f64 = 1.2;
/// More than this is rare even in sheer cloth: common practice, no source.
const RARE: f64 = 4.0;

/// Doubts on a strip over its line.
#[inline]
pub(crate) fn ratio_doubts(ratio: f64) -> u64 {
    when(below(ratio, SCANT), GATHERS_SCANT) | when(above(ratio, RARE), GATHERS_LARGE)
}

/// A strip to be gathered.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Gathers {
    /// Length of the strip before gathering, without allowances (mm).
    pub flat: f64,
    /// What the gathers take up (mm).
    pub taken_up: f64,
    /// Strip over line: 1.5 is half as much again (1).
    pub ratio: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

impl Gathers {
    fn new(flat: f64, finished: f64, ratio: f64) -> Gathers {
        Gathers {
            flat,
            taken_up: (flat - finished).max(0.0),
            ratio,
            doubts: ratio_doubts(ratio),
        }
    }
}

/// Strip to cut for gathers of a given ratio.
///
/// `flat = finished · ratio`. About 1.5 for a flounce, 2 for a ruche or heavy curtain, up to 3 for sheer cloth; gather a
/// sample of the cloth itself.
///
/// A ratio below 1.2 or above 4 is doubted (common practice, no source).
///
/// | argument   | unit | range   | default | meaning                                        |
/// |------------|------|---------|---------|------------------------------------------------|
/// | `finished` | mm   | 1..=1e6 | -       | line that the gathers are sewn to              |
/// | `ratio`    | 1    | 1..=20  | -       | strip over line; "100 % fullness" is a ratio of 2 |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Ratios: C. C. Ingalls, *Text-Book on Domestic Art*, 1911 (flounce 1 1/2); *The New Dressmaker*, Butterick, 1921
/// (ruche 2); I. Crouch, Extension Circular A-249, North Dakota, 1956 (draperies 2); a booklet on draperies (sheer
/// curtains 3). The doubt below 1.2 is common practice, no source.
///
/// # Examples
/// ```
/// use recloth::fullness::gathers;
/// let puff = gathers(240.0, 1.75)?;
/// assert_eq!((puff.flat, puff.taken_up), (420.0, 180.0));
/// assert_eq!(gathers(240.0, 0.5).unwrap_err().argument(), "ratio");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn gathers(finished: f64, ratio: f64) -> Result<Gathers, Error> {
    let finished = Error::check("finished", finished, 1.0, 1e6)?;
    let ratio = Error::check("ratio", ratio, 1.0, 20.0)?;
    Ok(Gathers::new(finished * ratio, finished, ratio))
}

/// Ratio of gathers that a strip there is gives on a line.
///
/// `ratio = flat / finished`.
///
/// A ratio below 1.2 or above 4 is doubted (common practice, no source).
///
/// | argument   | unit | range               | default | meaning                                    |
/// |------------|------|---------------------|---------|--------------------------------------------|
/// | `flat`     | mm   | 1..=2e7             | -       | length of the strip, without allowances    |
/// | `finished` | mm   | 1..=1e6, <= flat    | -       | line that the gathers are sewn to          |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when the strip is shorter than that.
///
/// # Source
/// Arithmetic. `tests/vectors/gather_ratio.csv` has published and hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::{doubt::GATHERS_SCANT, fullness::gather_ratio};
/// assert_eq!(gather_ratio(600.0, 400.0)?.ratio, 1.5);
/// assert_eq!(gather_ratio(440.0, 400.0)?.doubts, GATHERS_SCANT);
/// assert_eq!(gather_ratio(300.0, 400.0).unwrap_err().argument(), "finished");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn gather_ratio(flat: f64, finished: f64) -> Result<Gathers, Error> {
    let flat = Error::check("flat", flat, 1.0, 2e7)?;
    let finished = Error::check("finished", finished, 1.0, 1e6)?;
    if above(finished, flat) {
        return Err(Error::no_solution("finished", finished, 1.0, flat));
    }
    Ok(Gathers::new(flat, finished, flat / finished))
}

/// A strip to be gathered, divided over the sections of its line.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct GatherSections {
    /// Length of the line, all sections together (mm).
    pub finished: f64,
    /// Strip over line, the same in every section (1).
    pub ratio: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Parts of a strip between its marks, so that gathers are even from notch to notch.
///
/// Each section of the line takes its share of the strip: `flat · length / sum of lengths`. Quarter marks of a strip fall on
/// quarter marks of the line only where these are evenly spaced: on a waist whose front is wider than its back they are not.
///
/// A ratio below 1.2 or above 4 is doubted (common practice, no source).
///
/// | argument  | unit | range                       | default | meaning                                           |
/// |-----------|------|-----------------------------|---------|---------------------------------------------------|
/// | `lengths` | mm   | 1..=1e5 each, 1..=100 items | -       | sections of the line between its notches, in order |
/// | `flat`    | mm   | 1..=2e7                     | -       | length of the strip, without allowances           |
/// | `flats`   | mm   | out, as lengths             | -       | part of the strip for each section                |
///
/// # Errors
/// `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `flat` when the strip is shorter
/// than its line.
///
/// # Source
/// Proportion. `tests/vectors/gather_sections.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::fullness::gather_sections;
/// let mut flats = [0.0; 3];
/// let skirt = gather_sections(&[200.0, 340.0, 180.0], 1080.0, &mut flats)?;
/// assert_eq!((flats, skirt.ratio), ([300.0, 510.0, 270.0], 1.5));
/// assert_eq!(gather_sections(&[200.0], 180.0, &mut flats).unwrap_err().argument(), "flat");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn gather_sections(
    lengths: &[f64],
    flat: f64,
    flats: &mut [f64],
) -> Result<GatherSections, Error> {
    let lengths = Error::check_list("lengths", lengths, 1.0, 1e5, (1, 100))?;
    let flat = Error::check("flat", flat, 1.0, 2e7)?;
    Error::check_room("flats", flats.len(), lengths.len())?;
    let finished: f64 = lengths.iter().sum();
    if below(flat, finished) {
        return Err(Error::no_solution("flat", flat, finished, f64::NAN));
    }
    for (place, &length) in flats.iter_mut().zip(lengths) {
        *place = flat * length / finished;
    }
    let strip = Gathers::new(flat, finished, flat / finished);
    Ok(GatherSections {
        finished,
        ratio: strip.ratio,
        doubts: strip.doubts,
    })
}

/// Strips for a ruffle.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Ruffle {
    /// Length of the joined strip before gathering (mm).
    pub flat: f64,
    /// Width to cut each strip (mm).
    pub cut_width: f64,
    /// Number of strips (count).
    pub strips: u32,
    /// Cloth that the strips take, lying side by side (mm).
    pub cloth_length: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Strips to cut for a ruffle along an edge.
///
/// `flat = edge · ratio`, `cut_width = depth + allowance + hem`, and as many strips as their length, less an allowance at both
/// ends, makes that up: `strips = ceil(flat / (strip - 2 · allowance))`. A ruffle along an edge with ends has one join fewer
/// and narrow hems instead. Strips across the cloth gather softly, along the selvedge crisply; on the bias no hem frays.
///
/// A ratio below 1.2 or above 4 is doubted (common practice, no source).
///
/// | argument    | unit | range    | default | meaning                                                   |
/// |-------------|------|----------|---------|-----------------------------------------------------------|
/// | `edge`      | mm   | 1..=1e5  | -       | edge that it is sewn to                                   |
/// | `ratio`     | 1    | 1..=10   | -       | strip over edge                                           |
/// | `depth`     | mm   | 1..=1e4  | -       | finished depth, seam to hem edge                          |
/// | `strip`     | mm   | 10..=1e5 | -       | length of one strip: the cloth's width, or a scrap's length |
/// | `allowance` | mm   | 0..=1e3  | -       | seam allowance at the gathered edge and each join         |
/// | `hem`       | mm   | 0..=1e3  | -       | hem allowance, turn included                              |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the whole strip, or so
/// much that there would be more than 100000 strips.
///
/// # Source
/// Arithmetic. Ratio: C. C. Ingalls, *Text-Book on Domestic Art*, 1911 (1 1/2); 1.5 to 3 by weight and fullness,
/// stitchcoach.blogspot.com, 2017. The doubt is that of [`gathers`].
///
/// # Examples
/// ```
/// use recloth::fullness::ruffle;
/// let hem = ruffle(1200.0, 1.5, 80.0, 620.0, 10.0, 15.0)?;
/// assert_eq!((hem.flat, hem.cut_width, hem.strips, hem.cloth_length), (1800.0, 105.0, 3, 315.0));
/// assert_eq!(ruffle(1200.0, 1.5, 80.0, 20.0, 10.0, 15.0).unwrap_err().argument(), "allowance");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn ruffle(
    edge: f64,
    ratio: f64,
    depth: f64,
    strip: f64,
    allowance: f64,
    hem: f64,
) -> Result<Ruffle, Error> {
    let edge = Error::check("edge", edge, 1.0, 1e5)?;
    let ratio = Error::check("ratio", ratio, 1.0, 10.0)?;
    let depth = Error::check("depth", depth, 1.0, 1e4)?;
    let strip = Error::check("strip", strip, 10.0, 1e5)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let hem = Error::check("hem", hem, 0.0, 1e3)?;
    let gathered = Gathers::new(edge * ratio, edge, ratio);
    let strips = breadths(gathered.flat, strip, allowance)?.count;
    let cut_width = depth + allowance + hem;
    Ok(Ruffle {
        flat: gathered.flat,
        cut_width,
        strips,
        cloth_length: f64::from(strips) * cut_width,
        doubts: gathered.doubts,
    })
}

/// A set of equal knife pleats.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct KnifePleats {
    /// Width before pleating, without allowances (mm).
    pub flat: f64,
    /// Width when pleated (mm).
    pub finished: f64,
    /// Number of pleats (count).
    pub count: u32,
    /// Width of each pleat that shows (mm).
    pub show: f64,
    /// Depth of each pleat's underlay, fold to fold (mm).
    pub depth: f64,
    /// Cloth that each pleat takes up, twice its depth (mm).
    pub intake: f64,
    /// Cloth that all pleats take up (mm).
    pub taken_up: f64,
    /// Flat over finished: 3 where pleats just touch (1).
    pub ratio: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

impl KnifePleats {
    fn new(flat: f64, finished: f64, count: u32, depth: f64) -> KnifePleats {
        let show = finished / f64::from(count);
        // Touching pleats worked back from other numbers may miss by a rounding.
        let overlap = depth > show * (1.0 + 1e-9);
        KnifePleats {
            flat,
            finished,
            count,
            show,
            depth,
            intake: 2.0 * depth,
            taken_up: flat - finished,
            ratio: flat / finished,
            doubts: if overlap { PLEATS_OVERLAP } else { 0 },
        }
    }
}

/// Cloth for knife pleats of a given number and depth.
///
/// `flat = finished + 2 · count · depth`. The four functions of knife pleats each find one of `flat`, `finished`, `count`
/// and `depth` from the others, and give the same answer. Tucks are the same sum.
///
/// | argument   | unit  | range    | default | meaning                                     |
/// |------------|-------|----------|---------|---------------------------------------------|
/// | `finished` | mm    | 1..=1e6  | -       | width when pleated                          |
/// | `count`    | count | 1..=1000 | -       | number of pleats                            |
/// | `depth`    | mm    | 0.1..=1e4 | -      | depth of each pleat's underlay, fold to fold |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// L. I. Baldt, *Clothing for Women*, 1916 (tucks: twice the depth times the number).
///
/// # Examples
/// ```
/// use recloth::fullness::knife_pleats;
/// let touching = knife_pleats(720.0, 24, 30.0)?;
/// assert_eq!((touching.flat, touching.ratio), (2160.0, 3.0));
/// assert_eq!(knife_pleats(720.0, 24, 0.0).unwrap_err().argument(), "depth");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn knife_pleats(finished: f64, count: u32, depth: f64) -> Result<KnifePleats, Error> {
    let finished = Error::check("finished", finished, 1.0, 1e6)?;
    let count = Error::check_count("count", count, 1, 1000)?;
    let depth = Error::check("depth", depth, 0.1, 1e4)?;
    let flat = finished + 2.0 * f64::from(count) * depth;
    Ok(KnifePleats::new(flat, finished, count, depth))
}

/// Depth of a given number of knife pleats that bring cloth there is to a width.
///
/// `depth = (flat - finished) / (2 · count)`.
///
/// | argument   | unit  | range           | default | meaning                                    |
/// |------------|-------|-----------------|---------|--------------------------------------------|
/// | `flat`     | mm    | 1..=1e8         | -       | width before pleating, without allowances  |
/// | `finished` | mm    | 1..=1e6, < flat | -       | width when pleated                         |
/// | `count`    | count | 1..=1000        | -       | number of pleats                           |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat.
///
/// # Source
/// I. D. Conover, *A Complete Course in Dressmaking*, vol. 5, 1921 (year from memory): in a pleated skirt, what is to be
/// pleated away, shared by the pleats. `tests/vectors/knife_pleats_depth.csv` has its numbers.
///
/// # Examples
/// ```
/// use recloth::{fullness::knife_pleats_depth, units::INCH};
/// let hem = knife_pleats_depth(44.0 * INCH, 27.5 * INCH, 8)?;
/// assert!((hem.intake - 2.0625 * INCH).abs() < 1e-9);
/// assert_eq!(knife_pleats_depth(700.0, 720.0, 8).unwrap_err().argument(), "finished");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn knife_pleats_depth(flat: f64, finished: f64, count: u32) -> Result<KnifePleats, Error> {
    let flat = Error::check("flat", flat, 1.0, 1e8)?;
    let finished = Error::check("finished", finished, 1.0, 1e6)?;
    let count = Error::check_count("count", count, 1, 1000)?;
    if finished >= flat {
        return Err(Error::no_solution(
            "finished",
            finished,
            1.0,
            short_of(flat),
        ));
    }
    let depth = (flat - finished) / (2.0 * f64::from(count));
    Ok(KnifePleats::new(flat, finished, count, depth))
}

/// Number of knife pleats of at least a given depth that bring cloth there is to a width.
///
/// The whole number that `(flat - finished) / (2 · depth)` holds, and then the depth at which they take up exactly what
/// there is: the depth wanted or a little more.
///
/// | argument   | unit | range           | default | meaning                                    |
/// |------------|------|-----------------|---------|--------------------------------------------|
/// | `flat`     | mm   | 1..=1e8         | -       | width before pleating, without allowances  |
/// | `finished` | mm   | 1..=1e6, < flat | -       | width when pleated                         |
/// | `depth`    | mm   | 0.1..=1e4       | -       | least depth of each pleat's underlay       |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat; naming
/// `depth` when there is not enough for one pleat, or so much that there would be more than 1000.
///
/// # Source
/// A booklet on draperies (pinch pleats: 91 in at 7 in each is 13). `tests/vectors/knife_pleats_count.csv`.
///
/// # Examples
/// ```
/// use recloth::fullness::knife_pleats_count;
/// let pleats = knife_pleats_count(1500.0, 700.0, 30.0)?;
/// assert_eq!(pleats.count, 13);
/// assert!((pleats.depth - 30.77).abs() < 0.005);
/// assert_eq!(knife_pleats_count(720.0, 700.0, 30.0).unwrap_err().argument(), "depth");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn knife_pleats_count(flat: f64, finished: f64, depth: f64) -> Result<KnifePleats, Error> {
    let flat = Error::check("flat", flat, 1.0, 1e8)?;
    let finished = Error::check("finished", finished, 1.0, 1e6)?;
    let depth = Error::check("depth", depth, 0.1, 1e4)?;
    if finished >= flat {
        return Err(Error::no_solution(
            "finished",
            finished,
            1.0,
            short_of(flat),
        ));
    }
    let half = (flat - finished) / 2.0;
    // Lengths given in inches may miss a whole number by a rounding.
    let count = libm::floor(half / depth * (1.0 + 1e-12));
    if !(1.0..=1000.0).contains(&count) {
        return Err(Error::no_solution("depth", depth, half / 1000.0, half));
    }
    Ok(KnifePleats::new(flat, finished, count as u32, half / count))
}

/// Width to which a given number of knife pleats brings cloth there is.
///
/// `finished = flat - 2 · count · depth`.
///
/// | argument | unit  | range     | default | meaning                                      |
/// |----------|-------|-----------|---------|----------------------------------------------|
/// | `flat`   | mm    | 1..=1e8   | -       | width before pleating, without allowances    |
/// | `count`  | count | 1..=1000  | -       | number of pleats                             |
/// | `depth`  | mm    | 0.1..=1e4 | -       | depth of each pleat's underlay, fold to fold |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when the pleats take up all the cloth.
///
/// # Source
/// Arithmetic. `tests/vectors/knife_pleats_finished.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::fullness::knife_pleats_finished;
/// assert_eq!(knife_pleats_finished(2160.0, 24, 30.0)?.finished, 720.0);
/// assert_eq!(knife_pleats_finished(2160.0, 24, 50.0).unwrap_err().max().round(), 45.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn knife_pleats_finished(flat: f64, count: u32, depth: f64) -> Result<KnifePleats, Error> {
    let flat = Error::check("flat", flat, 1.0, 1e8)?;
    let count = Error::check_count("count", count, 1, 1000)?;
    let depth = Error::check("depth", depth, 0.1, 1e4)?;
    let finished = flat - 2.0 * f64::from(count) * depth;
    if !above(finished, 0.0) {
        let largest = flat / (2.0 * f64::from(count));
        return Err(Error::no_solution(
            "depth",
            depth,
            f64::NAN,
            short_of(largest),
        ));
    }
    Ok(KnifePleats::new(flat, finished, count, depth))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ratio_comes_back() {
        for ratio in [1.0, 1.2, 1.75, 3.0, 20.0] {
            let strip = gathers(381.0, ratio).unwrap();
            assert_eq!(gather_ratio(strip.flat, 381.0).unwrap().ratio, ratio);
        }
    }

    #[test]
    fn sections_share_the_whole_strip() {
        let mut flats = [0.0; 4];
        gather_sections(&[190.5, 171.45, 190.5, 201.0], 1300.0, &mut flats).unwrap();
        approx::assert_abs_diff_eq!(flats.iter().sum::<f64>(), 1300.0, epsilon = 1e-9);
        assert_eq!(flats[0], flats[2]);
    }

    #[test]
    fn each_of_the_four_finds_what_the_others_were_given() {
        for (count, depth) in [(1, 0.5), (7, 12.0), (24, 30.0), (1000, 3.175)] {
            let pleats = knife_pleats(720.0, count, depth).unwrap();
            let by_depth = knife_pleats_depth(pleats.flat, 720.0, count).unwrap();
            approx::assert_relative_eq!(by_depth.depth, depth, max_relative = 1e-12);
            let by_count = knife_pleats_count(pleats.flat, 720.0, depth).unwrap();
            assert_eq!(by_count.count, count);
            let by_finished = knife_pleats_finished(pleats.flat, count, depth).unwrap();
            approx::assert_relative_eq!(by_finished.finished, 720.0, max_relative = 1e-12);
        }
    }

    #[test]
    fn what_an_error_asks_for_would_do() {
        let count = |depth| knife_pleats_count(1e5, 700.0, depth);
        let least = count(1.0).unwrap_err().min();
        assert_eq!(count(least).unwrap().count, 1000);
        let deepest = |depth| knife_pleats_count(1500.0, 700.0, depth);
        let largest = deepest(500.0).unwrap_err().max();
        assert_eq!(deepest(largest).unwrap().count, 1);
        let finished = |depth| knife_pleats_finished(2160.0, 24, depth);
        let largest = finished(60.0).unwrap_err().max();
        assert!(finished(largest).is_ok() && finished(largest + 1.1e-6).is_err());
    }
}
