//! Rows of buttons by pitch, worked buttonholes and lacing.

use crate::Error;

/// Buttons or holes at nearly a wanted pitch.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SpacingByPitch {
    /// Number of buttons, the first and last included (count).
    pub count: u32,
    /// From middle to middle of neighbours (mm).
    pub pitch: f64,
}

/// Number of buttons whose even spacing comes nearest to a wanted pitch.
///
/// Of the two whole numbers of spaces about `(last - first) / pitch` the one is taken whose pitch differs less from that
/// wanted; on a tie the closer spacing. Two buttons at least.
///
/// | argument | unit | range            | default | meaning                                   |
/// |----------|------|------------------|---------|-------------------------------------------|
/// | `first`  | mm   | 0..=1e5          | -       | place of the first, from the edge's start |
/// | `last`   | mm   | 0..=1e5, > first | -       | place of the last                         |
/// | `pitch`  | mm   | 1..=1e5          | 90      | pitch wanted                              |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `last` when it is not beyond `first`.
///
/// # Source
/// Arithmetic. A pitch of about 3 1/2 in is usual on a blouse (sunjournal.com; sewing.about.com); the default is that, in
/// round millimetres. One button belongs at the bust line: see [`spacing_through`](crate::closure::spacing_through).
///
/// # Examples
/// ```
/// use recloth::fastening::spacing_by_pitch;
/// let front = spacing_by_pitch(20.0, 500.0, 90.0)?;
/// assert_eq!((front.count, front.pitch), (6, 96.0));
/// assert_eq!(spacing_by_pitch(20.0, 20.0, 90.0).unwrap_err().argument(), "last");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn spacing_by_pitch(first: f64, last: f64, pitch: f64) -> Result<SpacingByPitch, Error> {
    let first = Error::check("first", first, 0.0, 1e5)?;
    let last = Error::check("last", last, 0.0, 1e5)?;
    let wanted = Error::check("pitch", pitch, 1.0, 1e5)?;
    if last <= first {
        return Err(Error::no_solution("last", last, first, f64::NAN));
    }
    let length = last - first;
    let fewer = libm::floor(length / wanted).max(1.0);
    let more = fewer + 1.0;
    // A wider pitch misses by `length / fewer - wanted`, a closer one by `wanted - length / more`. Where even one space is
    // closer than wanted, there is no wider one.
    let wide_miss = length / fewer - wanted;
    let close_miss = wanted - length / more;
    // Lengths given in inches may miss a tie, or an exact fit, by a rounding.
    let spaces = if close_miss <= wide_miss * (1.0 + 1e-12) {
        more
    } else {
        fewer
    };
    Ok(SpacingByPitch {
        count: spaces as u32 + 1,
        pitch: length / spaces,
    })
}

/// A buttonhole worked in zigzag by machine.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ZigzagButtonhole {
    /// Length over all, bars included (mm).
    pub length: f64,
    /// Width over all (mm).
    pub width: f64,
    /// Stitches of the two sides together (count).
    pub stitches: u32,
}

/// Size over all of a buttonhole worked in zigzag: two beads and two bars about a slit.
///
/// `length = slit + 2 · bar`, `width = 2 · bead + gap`, and each side takes `ceil(slit / spacing)` stitches. It is the slit that
/// the button passes ([`buttonhole`](crate::closure::buttonhole)); the whole must lie on the button stand. Work one on a
/// scrap of the same layers. Cut from both ends towards the middle, a pin across each bar.
///
/// | argument  | unit | range     | default | meaning                                       |
/// |-----------|------|-----------|---------|-----------------------------------------------|
/// | `slit`    | mm   | 1..=300   | -       | length of the slit                            |
/// | `bead`    | mm   | 0.1..=20  | 2       | width of the zigzag on each side              |
/// | `gap`     | mm   | 0..=10    | 0.5     | between the two sides, where it is cut        |
/// | `bar`     | mm   | 0..=20    | 2       | length of the bar at each end                 |
/// | `spacing` | mm   | 0.05..=10 | 0.4     | stitch length of the zigzag                   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic; the defaults are from memory of home machines, no source: measure a hole of your own. Only a bound hole is
/// otherwise: at most 6 mm wide, each welt 3 mm (frkbustad.blogspot.com, 2010).
///
/// # Examples
/// ```
/// use recloth::fastening::zigzag_buttonhole;
/// let hole = zigzag_buttonhole(22.0, 2.0, 0.5, 2.0, 0.4)?;
/// assert_eq!((hole.length, hole.width, hole.stitches), (26.0, 4.5, 110));
/// assert_eq!(zigzag_buttonhole(22.0, 0.0, 0.5, 2.0, 0.4).unwrap_err().argument(), "bead");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn zigzag_buttonhole(
    slit: f64,
    bead: f64,
    gap: f64,
    bar: f64,
    spacing: f64,
) -> Result<ZigzagButtonhole, Error> {
    let slit = Error::check("slit", slit, 1.0, 300.0)?;
    let bead = Error::check("bead", bead, 0.1, 20.0)?;
    let gap = Error::check("gap", gap, 0.0, 10.0)?;
    let bar = Error::check("bar", bar, 0.0, 20.0)?;
    let spacing = Error::check("spacing", spacing, 0.05, 10.0)?;
    // Decimals divided may pass a whole number by a rounding.
    let side = libm::ceil(slit / spacing * (1.0 - 1e-12));
    Ok(ZigzagButtonhole {
        length: slit + 2.0 * bar,
        width: 2.0 * bead + gap,
        stitches: 2 * side as u32,
    })
}

/// Length of lace for a laced opening.
///
/// Crosswise lacing, with one bar straight across at the start: each of the `pairs - 1` steps takes two slanting stretches,
/// `lace = gap + 2 · (pairs - 1) · √(gap² + pitch²) + 2 · tail`. Give the gap at its widest, when the garment is put on, or the
/// lace must be drawn out each time. No lace at a child's neck or hood.
///
/// | argument | unit  | range   | default | meaning                                           |
/// |----------|-------|---------|---------|---------------------------------------------------|
/// | `pairs`  | count | 1..=100 | -       | pairs of eyelets                                  |
/// | `pitch`  | mm    | 1..=1e3 | -       | from eyelet to eyelet along one side              |
/// | `gap`    | mm    | 0..=1e4 | -       | across from eyelet to eyelet of a pair            |
/// | `tail`   | mm    | 0..=1e4 | 250     | each end left over for a bow                      |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Length of lace (mm).
///
/// # Source
/// Plane geometry; the thickness of cloth and lace is left out. The tail for a bow is common practice, no source.
/// `tests/vectors/lacing.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::fastening::lacing;
/// assert_eq!(lacing(9, 30.0, 40.0, 250.0)?, 1340.0);
/// assert_eq!(lacing(0, 30.0, 40.0, 250.0).unwrap_err().argument(), "pairs");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn lacing(pairs: u32, pitch: f64, gap: f64, tail: f64) -> Result<f64, Error> {
    let pairs = f64::from(Error::check_count("pairs", pairs, 1, 100)?);
    let pitch = Error::check("pitch", pitch, 1.0, 1e3)?;
    let gap = Error::check("gap", gap, 0.0, 1e4)?;
    let tail = Error::check("tail", tail, 0.0, 1e4)?;
    Ok(gap + 2.0 * (pairs - 1.0) * libm::hypot(gap, pitch) + 2.0 * tail)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::closure::even_spacing;

    #[test]
    fn no_other_number_comes_nearer() {
        for last in 30..900 {
            let length = f64::from(last) - 20.0;
            let best = spacing_by_pitch(20.0, f64::from(last), 90.0).unwrap();
            let miss = (best.pitch - 90.0).abs();
            for count in 2..20 {
                let pitch = length / f64::from(count - 1);
                assert!((pitch - 90.0).abs() >= miss - 1e-9, "{last} {count}");
            }
            let even = even_spacing(20.0, f64::from(last), best.count).unwrap();
            assert_eq!(even, best.pitch);
        }
    }
}
