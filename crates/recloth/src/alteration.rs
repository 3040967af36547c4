//! Taking in and letting out, strips let in, hems let down, and the step from size to size.

use crate::Error;
use crate::body::limb;
use crate::dust::{above, below};

/// What is taken in at the seams of a garment.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TakeIn {
    /// What the garment is too wide by (mm).
    pub excess: f64,
    /// Taken at each edge, beyond its old seam line (mm).
    pub each: f64,
    /// Taken at all edges together (mm).
    pub taken: f64,
    /// Left for darts or the centre back (mm).
    pub leftover: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// What to take in at each edge of a garment that is too wide, and what is left over.
///
/// `excess = garment - (body + ease)`, shared evenly by the edges but no more than `limit` each, beyond which side seams leave
/// the body's side and armholes lose their shape. A seam has two edges: both sides are four. A fold pinned out of the cloth
/// takes twice its depth: pinned 8, taken 16. Taken in at the armhole, the sleeve must be taken in too; at the hem, see that
/// the step is still wide enough.
///
/// A body below 110 mm, less than a child's wrist (from memory), is doubted.
///
/// | argument  | unit  | range      | default | meaning                                           |
/// |-----------|-------|------------|---------|---------------------------------------------------|
/// | `garment` | mm    | 1..=1e5    | -       | finished garment at this level, all round         |
/// | `body`    | mm    | 1..=1e5    | -       | body at this level, all round                     |
/// | `ease`    | mm    | -1e4..=1e4 | -       | what the garment is to have more than the body    |
/// | `edges`   | count | 1..=64     | 4       | edges that share it, two to a seam                |
/// | `limit`   | mm    | 0..=1e4    | 20      | the most that each edge may take                  |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `garment` when it is narrower than body and ease: it
/// must be let out ([`let_out`]).
///
/// # Source
/// Arithmetic; the limit is common practice, no source. `tests/vectors/take_in.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::alteration::take_in;
/// let dress = take_in(1120.0, 960.0, 60.0, 4, 20.0)?;
/// assert_eq!((dress.each, dress.taken, dress.leftover), (20.0, 80.0, 20.0));
/// assert_eq!(take_in(1000.0, 960.0, 60.0, 4, 20.0).unwrap_err().min(), 1020.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn take_in(
    garment: f64,
    body: f64,
    ease: f64,
    edges: u32,
    limit: f64,
) -> Result<TakeIn, Error> {
    let garment = Error::check("garment", garment, 1.0, 1e5)?;
    let body = Error::check("body", body, 1.0, 1e5)?;
    let ease = Error::check("ease", ease, -1e4, 1e4)?;
    let edges = f64::from(Error::check_count("edges", edges, 1, 64)?);
    let limit = Error::check("limit", limit, 0.0, 1e4)?;
    let excess = garment - (body + ease);
    if below(excess, 0.0) {
        let least = body + ease;
        return Err(Error::no_solution("garment", garment, least, f64::NAN));
    }
    let excess = excess.max(0.0);
    let (each, taken) = shared(excess, edges, limit);
    Ok(TakeIn {
        excess,
        each,
        taken,
        leftover: excess - taken,
        doubts: limb(body),
    })
}

/// What of an amount each edge takes, up to a limit, and all together.
#[inline]
fn shared(amount: f64, edges: f64, limit: f64) -> (f64, f64) {
    let each = amount / edges;
    if !above(each, limit) {
        (each, amount)
    } else {
        (limit, edges * limit)
    }
}

/// What the allowances of a garment give when they are let out.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LetOut {
    /// What the garment is too narrow by (mm).
    pub lacking: f64,
    /// Let out at each edge (mm).
    pub each: f64,
    /// Let out at all edges together (mm).
    pub gained: f64,
    /// Still lacking: a strip or a gusset must give it (mm).
    pub short_by: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// What to let out at each edge of a garment that is too narrow, and what is still short.
///
/// `lacking = body + ease - garment`, shared evenly by the edges but no more than `allowance - keep` each. Look first: old seam
/// lines, needle holes, a faded or worn fold and snips that reach into the allowance may show, and then it is worth nothing.
///
/// A body below 110 mm, less than a child's wrist (from memory), is doubted.
///
/// | argument    | unit  | range           | default | meaning                                           |
/// |-------------|-------|-----------------|---------|---------------------------------------------------|
/// | `garment`   | mm    | 1..=1e5         | -       | finished garment at this level, all round         |
/// | `body`      | mm    | 1..=1e5         | -       | body at this level, all round                     |
/// | `ease`      | mm    | -1e4..=1e4      | -       | what the garment is to have more than the body    |
/// | `allowance` | mm    | 0..=1e3         | -       | allowance there is inside each seam, sound cloth  |
/// | `edges`     | count | 1..=64          | 4       | edges that can be let out, two to a seam          |
/// | `keep`      | mm    | 0..=1e3, <= allowance | 5 | allowance that each edge must keep                |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `garment` when it is wide enough already; naming `keep`
/// when it is more than the allowance.
///
/// # Source
/// Arithmetic; what must be kept is common practice, no source. `tests/vectors/let_out.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::alteration::let_out;
/// let skirt = let_out(700.0, 720.0, 20.0, 12.0, 4, 5.0)?;
/// assert_eq!((skirt.each, skirt.gained, skirt.short_by), (7.0, 28.0, 12.0));
/// assert_eq!(let_out(760.0, 720.0, 20.0, 12.0, 4, 5.0).unwrap_err().argument(), "garment");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn let_out(
    garment: f64,
    body: f64,
    ease: f64,
    allowance: f64,
    edges: u32,
    keep: f64,
) -> Result<LetOut, Error> {
    let garment = Error::check("garment", garment, 1.0, 1e5)?;
    let body = Error::check("body", body, 1.0, 1e5)?;
    let ease = Error::check("ease", ease, -1e4, 1e4)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let edges = f64::from(Error::check_count("edges", edges, 1, 64)?);
    let keep = Error::check("keep", keep, 0.0, 1e3)?;
    let lacking = body + ease - garment;
    if below(lacking, 0.0) {
        let most = body + ease;
        return Err(Error::no_solution("garment", garment, f64::NAN, most));
    }
    if above(keep, allowance) {
        return Err(Error::no_solution("keep", keep, 0.0, allowance));
    }
    let lacking = lacking.max(0.0);
    let (each, gained) = shared(lacking, edges, (allowance - keep).max(0.0));
    Ok(LetOut {
        lacking,
        each,
        gained,
        short_by: lacking - gained,
        doubts: limb(body),
    })
}

/// The step from size to size.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SizeStep {
    /// From one size to the next, all round (mm).
    pub step: f64,
    /// The same at each edge of the pattern (mm).
    pub each_edge: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Step from one size to the next, all round and at each edge of the pattern.
///
/// `step = (larger - smaller) / steps`, `each_edge = step / edges`. Even steps only: in published series the step itself grows
/// in the larger sizes, and lengths do not grow as girths do.
///
/// A girth below 110 mm, less than a child's wrist (from memory), is doubted.
///
/// | argument  | unit  | range               | default | meaning                                     |
/// |-----------|-------|---------------------|---------|---------------------------------------------|
/// | `smaller` | mm    | 1..=1e5             | -       | girth of the smaller size                   |
/// | `larger`  | mm    | 1..=1e5, >= smaller | -       | girth of the larger size                    |
/// | `steps`   | count | 1..=100             | 1       | number of steps from one to the other       |
/// | `edges`   | count | 1..=64              | 4       | edges that share a step, two to a seam      |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `larger` when it is the smaller.
///
/// # Source
/// Arithmetic. EN 13402-3's series steps by 40 mm, then 60 mm, in bust (from memory). `tests/vectors/size_step.csv`.
///
/// # Examples
/// ```
/// use recloth::alteration::size_step;
/// let bust = size_step(760.0, 1040.0, 7, 4)?;
/// assert_eq!((bust.step, bust.each_edge), (40.0, 10.0));
/// assert_eq!(size_step(760.0, 720.0, 1, 4).unwrap_err().argument(), "larger");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn size_step(smaller: f64, larger: f64, steps: u32, edges: u32) -> Result<SizeStep, Error> {
    let smaller = Error::check("smaller", smaller, 1.0, 1e5)?;
    let larger = Error::check("larger", larger, 1.0, 1e5)?;
    let steps = f64::from(Error::check_count("steps", steps, 1, 100)?);
    let edges = f64::from(Error::check_count("edges", edges, 1, 64)?);
    if below(larger, smaller) {
        return Err(Error::no_solution("larger", larger, smaller, f64::NAN));
    }
    let step = (larger - smaller).max(0.0) / steps;
    Ok(SizeStep {
        step,
        each_edge: step / edges,
        doubts: limb(smaller),
    })
}

/// A strip let into a garment that is too narrow.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct InsertStrip {
    /// Width of each strip between its seam lines, as it shows (mm).
    pub finished: f64,
    /// Width to cut each strip (mm).
    pub cut_width: f64,
    /// Cloth that all strips take side by side (mm).
    pub cloth: f64,
}

/// Where a strip is let in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
#[repr(i32)]
pub enum InsertPlace {
    /// A seam that is opened: its edges have their allowances.
    Seam = 0,
    /// A cut through the cloth: its edges lose theirs to the new seams.
    Slash = 1,
}

/// Strip to let into a garment for what is lacking in its width.
///
/// Each strip must add its share, `lacking / strips`. In an opened seam the old edges are sewn on their old lines, and it
/// shows just that. In a cut through the cloth both new edges lose an allowance, which the strip replaces as well:
/// `finished = lacking / strips + 2 · allowance`. In both places `cut_width = finished + 2 · allowance`: a strip cut for a
/// seam and let into a slash is two allowances short. Cut it on the garment's own grain, of cloth washed as often. What can
/// be let out first, [`let_out`] says.
///
/// | argument    | unit   | range     | default | meaning                                      |
/// |-------------|--------|-----------|---------|----------------------------------------------|
/// | `lacking`   | mm     | 0.1..=1e4 | -       | what the garment is too narrow by, all round |
/// | `allowance` | mm     | 0..=1e3   | -       | seam allowance at each edge                  |
/// | `strips`    | count  | 1..=64    | 1       | number of strips that share it               |
/// | `place`     | choice | -         | seam    | where they are let in                        |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic. `tests/vectors/insert_strip.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::alteration::{InsertPlace, insert_strip};
/// let sides = insert_strip(60.0, 10.0, 2, InsertPlace::Seam)?;
/// assert_eq!((sides.finished, sides.cut_width, sides.cloth), (30.0, 50.0, 100.0));
/// let slashes = insert_strip(60.0, 10.0, 2, InsertPlace::Slash)?;
/// assert_eq!((slashes.finished, slashes.cut_width), (50.0, 70.0));
/// assert_eq!(insert_strip(0.0, 10.0, 2, InsertPlace::Seam).unwrap_err().argument(), "lacking");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn insert_strip(
    lacking: f64,
    allowance: f64,
    strips: u32,
    place: InsertPlace,
) -> Result<InsertStrip, Error> {
    let lacking = Error::check("lacking", lacking, 0.1, 1e4)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let strips = f64::from(Error::check_count("strips", strips, 1, 64)?);
    let lost = match place {
        InsertPlace::Seam => 0.0,
        InsertPlace::Slash => 2.0 * allowance,
    };
    let finished = lacking / strips + lost;
    let cut_width = finished + 2.0 * allowance;
    Ok(InsertStrip {
        finished,
        cut_width,
        cloth: strips * cut_width,
    })
}

/// A hem that is let down.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HemLetDown {
    /// Cloth left below the new edge for its hem or facing (mm).
    pub left: f64,
    /// The old edge's crease above the new edge (mm).
    pub crease: f64,
    /// The old hem's stitching above the new edge (mm).
    pub stitching: f64,
    /// The most it can be lowered with a hem of its own (mm).
    pub longest: f64,
    /// The most it can be lowered with a facing sewn on (mm).
    pub longest_faced: f64,
}

/// What is left for a hem that is let down, and where its old crease and stitching will show.
///
/// The old hem holds `hem_depth + turn_in` of cloth below its edge. Lowered by `lowered_by`, the new edge has
/// `left = hem_depth + turn_in - lowered_by` for its hem; with less than `keep`, a facing is sewn on (a false hem), which
/// needs `seam`. The old crease lies `lowered_by` above the new edge on the right side, and the old stitching
/// `hem_depth + lowered_by`: a crease that has worn or faded stays, and is covered by a tuck, a braid or stitching, or the hem
/// is left. Unpick and press a hand's breadth before deciding.
///
/// | argument     | unit | range                | default | meaning                                            |
/// |--------------|------|----------------------|---------|----------------------------------------------------|
/// | `hem_depth`  | mm   | 0..=1e3              | -       | depth of the old hem as it is sewn                 |
/// | `turn_in`    | mm   | 0..=1e3, <= hem_depth | -      | turned in at its raw edge; 0 where it is overcast  |
/// | `lowered_by` | mm   | 0..=2e3              | -       | what the garment is to be longer                   |
/// | `keep`       | mm   | 0..=1e3              | 20      | least for a hem of its own, its turn included      |
/// | `seam`       | mm   | 0..=1e3              | 6       | least for the seam of a facing                     |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `turn_in` when it is deeper than the hem; naming
/// `lowered_by` when not even a facing can be sewn on, with the most as `max`; naming `seam` when the old hem holds less.
///
/// # Source
/// Arithmetic; what is least is common practice, no source. `tests/vectors/hem_let_down.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::alteration::hem_let_down;
/// let skirt = hem_let_down(50.0, 6.0, 30.0, 20.0, 6.0)?;
/// assert_eq!((skirt.left, skirt.crease, skirt.stitching), (26.0, 30.0, 80.0));
/// assert_eq!((skirt.longest, skirt.longest_faced), (36.0, 50.0));
/// assert_eq!(hem_let_down(50.0, 6.0, 60.0, 20.0, 6.0).unwrap_err().max(), 50.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn hem_let_down(
    hem_depth: f64,
    turn_in: f64,
    lowered_by: f64,
    keep: f64,
    seam: f64,
) -> Result<HemLetDown, Error> {
    let hem_depth = Error::check("hem_depth", hem_depth, 0.0, 1e3)?;
    let turn_in = Error::check("turn_in", turn_in, 0.0, 1e3)?;
    let lowered_by = Error::check("lowered_by", lowered_by, 0.0, 2e3)?;
    let keep = Error::check("keep", keep, 0.0, 1e3)?;
    let seam = Error::check("seam", seam, 0.0, 1e3)?;
    if above(turn_in, hem_depth) {
        return Err(Error::no_solution("turn_in", turn_in, 0.0, hem_depth));
    }
    let held = hem_depth + turn_in;
    if above(seam, held) {
        return Err(Error::no_solution("seam", seam, 0.0, held));
    }
    let longest_faced = (held - seam).max(0.0);
    if above(lowered_by, longest_faced) {
        return Err(Error::no_solution(
            "lowered_by",
            lowered_by,
            0.0,
            longest_faced,
        ));
    }
    Ok(HemLetDown {
        left: held - lowered_by,
        crease: lowered_by,
        stitching: hem_depth + lowered_by,
        longest: (held - keep).max(0.0),
        longest_faced,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_is_lost_between_edges_and_leftover() {
        for (edges, limit) in [(1, 0.0), (4, 20.0), (4, 25.0), (64, 1e4)] {
            let dress = take_in(1120.0, 960.0, 60.0, edges, limit).unwrap();
            assert_eq!(dress.taken + dress.leftover, dress.excess);
            approx::assert_abs_diff_eq!(dress.each * f64::from(edges), dress.taken, epsilon = 1e-9);
            assert!(dress.each <= limit && dress.leftover >= 0.0);
        }
    }

    #[test]
    fn a_garment_that_just_fits_needs_neither() {
        assert_eq!(take_in(1020.0, 960.0, 60.0, 4, 20.0).unwrap().each, 0.0);
        assert_eq!(
            let_out(1020.0, 960.0, 60.0, 12.0, 4, 5.0).unwrap().each,
            0.0
        );
    }
}
