//! Rows of buttons by pitch, button stands, worked buttonholes, zips and lacing.

use crate::Error;
use crate::dust::{above, past, short_of};
use crate::hypotenuse::hypotenuse;

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
#[inline]
pub fn spacing_by_pitch(first: f64, last: f64, pitch: f64) -> Result<SpacingByPitch, Error> {
    let first = Error::check("first", first, 0.0, 1e5)?;
    let last = Error::check("last", last, 0.0, 1e5)?;
    let wanted = Error::check("pitch", pitch, 1.0, 1e5)?;
    if last <= first {
        return Err(Error::no_solution("last", last, past(first), f64::NAN));
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

/// The strip beyond a button line.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ButtonStand {
    /// From the button line to the finished edge (mm).
    pub extension: f64,
    /// From the button's rim to the finished edge (mm).
    pub past_rim: f64,
    /// How far the two sides lie over each other when buttoned (mm).
    pub overlap: f64,
}

/// Button stand for a button: from the line it sits on to the finished edge.
///
/// `extension = share · diameter`, `past_rim = extension - diameter / 2`, `overlap = 2 · extension`. Authors differ: half the
/// diameter brings the rim to the very edge, a machine manual asks for at least three quarters, others for the whole; for a
/// button of 20 mm that is 10, 15 or 20 mm. Both sides have the same stand, and a waistband's overlap must equal it. A facing
/// or a turn behind it is extra.
///
/// | argument   | unit | range   | default | meaning                       |
/// |------------|------|---------|---------|-------------------------------|
/// | `diameter` | mm   | 1..=200 | -       | diameter of the button        |
/// | `share`    | 1    | 0.5..=3 | 0.75    | extension over diameter       |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Sewing-machine manual, model 1288 (at least 3/4 of the diameter); a half to the whole is common practice, no source.
/// `tests/vectors/button_stand.csv`.
///
/// # Examples
/// ```
/// use recloth::fastening::button_stand;
/// let front = button_stand(20.0, 0.75)?;
/// assert_eq!((front.extension, front.past_rim, front.overlap), (15.0, 5.0, 30.0));
/// assert_eq!(button_stand(20.0, 0.4).unwrap_err().argument(), "share");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn button_stand(diameter: f64, share: f64) -> Result<ButtonStand, Error> {
    let diameter = Error::check("diameter", diameter, 1.0, 200.0)?;
    let share = Error::check("share", share, 0.5, 3.0)?;
    let extension = share * diameter;
    Ok(ButtonStand {
        extension,
        past_rim: extension - diameter / 2.0,
        overlap: 2.0 * extension,
    })
}

/// Largest button for a stand there is.
///
/// [`button_stand`] the other way: `diameter = extension / share`. An old front keeps its stand; a button larger than the
/// stand allows hangs over the edge.
///
/// | argument    | unit | range   | default | meaning                                   |
/// |-------------|------|---------|---------|-------------------------------------------|
/// | `extension` | mm   | 1..=600 | -       | from the button line to the finished edge |
/// | `share`     | 1    | 0.5..=3 | 0.75    | extension over diameter                   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Diameter of the button (mm).
///
/// # Source
/// As [`button_stand`].
///
/// # Examples
/// ```
/// use recloth::fastening::button_for_stand;
/// assert_eq!(button_for_stand(15.0, 0.75)?, 20.0);
/// assert_eq!(button_for_stand(0.0, 0.75).unwrap_err().argument(), "extension");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn button_for_stand(extension: f64, share: f64) -> Result<f64, Error> {
    let extension = Error::check("extension", extension, 1.0, 600.0)?;
    let share = Error::check("share", share, 0.5, 3.0)?;
    Ok(extension / share)
}

/// A zip for an opening.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ZipLength {
    /// Length needed, top stop to bottom stop (mm).
    pub needed: f64,
    /// Length to buy, the next that is sold (mm).
    pub buy: f64,
    /// What that is too long, to be taken off by a new bottom stop (mm).
    pub shorten: f64,
    /// Top stop from the raw edge at the top (mm).
    pub top_stop: f64,
    /// Bottom stop from the raw edge at the top (mm).
    pub bottom_stop: f64,
}

/// Zip for an opening: its length from stop to stop, and where the stops lie.
///
/// `needed = opening - gap + beyond`, bought in the next length that is sold. The gap leaves room above the slider for a hook
/// or for the turn of a facing; where the teeth end at a band's seam it is small. A concealed zip is sewn before the seam
/// below it and must run on beyond the opening, or its slider cannot be brought down past the last stitch. A zip is shortened
/// at the bottom, by a bar of stitches over the teeth; an open-ended one at the top only. Whether the opening passes the hip
/// is asked of [`head_opening`](crate::neck::head_opening).
///
/// | argument     | unit | range               | default | meaning                                                 |
/// |--------------|------|---------------------|---------|---------------------------------------------------------|
/// | `opening`    | mm   | 10..=5e3            | -       | seam line at the top to the lower end of the opening    |
/// | `gap`        | mm   | 0..=500, < opening  | 6       | seam line at the top down to the top stop               |
/// | `beyond`     | mm   | 0..=500             | 0       | what the zip runs on below the opening; some 25 if concealed |
/// | `allowance`  | mm   | 0..=1e3             | 15      | raw edge to seam line at the top                        |
/// | `graduation` | mm   | 1..=1e3             | 20      | step between the lengths that are sold                  |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is the whole opening.
///
/// # Source
/// Arithmetic; the defaults are common practice, no source. `tests/vectors/zip_length.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::fastening::zip_length;
/// let skirt = zip_length(200.0, 6.0, 0.0, 15.0, 20.0)?;
/// assert_eq!((skirt.needed, skirt.buy, skirt.shorten), (194.0, 200.0, 6.0));
/// assert_eq!((skirt.top_stop, skirt.bottom_stop), (21.0, 215.0));
/// assert_eq!(zip_length(200.0, 200.0, 0.0, 15.0, 20.0).unwrap_err().argument(), "gap");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn zip_length(
    opening: f64,
    gap: f64,
    beyond: f64,
    allowance: f64,
    graduation: f64,
) -> Result<ZipLength, Error> {
    let opening = Error::check("opening", opening, 10.0, 5e3)?;
    let gap = Error::check("gap", gap, 0.0, 500.0)?;
    let beyond = Error::check("beyond", beyond, 0.0, 500.0)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let graduation = Error::check("graduation", graduation, 1.0, 1e3)?;
    if !above(opening, gap) {
        return Err(Error::no_solution("gap", gap, 0.0, short_of(opening)));
    }
    let needed = opening - gap + beyond;
    // Lengths given in inches may pass a whole step by a rounding.
    let buy = graduation * libm::ceil(needed / graduation * (1.0 - 1e-12));
    Ok(ZipLength {
        needed,
        buy,
        shorten: (buy - needed).max(0.0),
        top_stop: allowance + gap,
        bottom_stop: allowance + opening + beyond,
    })
}

/// Opening that a zip there is serves.
///
/// [`zip_length`] the other way: `opening = zip + gap - beyond`. For a zip saved from the old garment: run it a hundred times
/// first, and see that both stops hold.
///
/// | argument | unit | range    | default | meaning                                                  |
/// |----------|------|----------|---------|----------------------------------------------------------|
/// | `zip`    | mm   | 10..=5e3 | -       | length of the zip, top stop to bottom stop               |
/// | `gap`    | mm   | 0..=500  | 6       | seam line at the top down to the top stop                |
/// | `beyond` | mm   | 0..=500  | 0       | what the zip runs on below the opening                   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `beyond` when nothing of the opening is left.
///
/// # Returns
/// Seam line at the top to the lower end of the opening (mm).
///
/// # Source
/// As [`zip_length`].
///
/// # Examples
/// ```
/// use recloth::fastening::zip_opening;
/// assert_eq!(zip_opening(200.0, 6.0, 25.0)?, 181.0);
/// assert_eq!(zip_opening(20.0, 6.0, 30.0).unwrap_err().max().round(), 26.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn zip_opening(zip: f64, gap: f64, beyond: f64) -> Result<f64, Error> {
    let zip = Error::check("zip", zip, 10.0, 5e3)?;
    let gap = Error::check("gap", gap, 0.0, 500.0)?;
    let beyond = Error::check("beyond", beyond, 0.0, 500.0)?;
    if !above(zip + gap, beyond) {
        return Err(Error::no_solution(
            "beyond",
            beyond,
            0.0,
            short_of(zip + gap),
        ));
    }
    Ok(zip + gap - beyond)
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
#[inline]
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
#[inline]
pub fn lacing(pairs: u32, pitch: f64, gap: f64, tail: f64) -> Result<f64, Error> {
    let pairs = f64::from(Error::check_count("pairs", pairs, 1, 100)?);
    let pitch = Error::check("pitch", pitch, 1.0, 1e3)?;
    let gap = Error::check("gap", gap, 0.0, 1e4)?;
    let tail = Error::check("tail", tail, 0.0, 1e4)?;
    Ok(gap + 2.0 * (pairs - 1.0) * hypotenuse(gap, pitch) + 2.0 * tail)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::closure::even_spacing;

    #[test]
    fn a_zip_bought_to_measure_serves_its_opening() {
        for (opening, gap, beyond) in [(200.0, 6.0, 0.0), (355.6, 12.7, 25.4), (558.8, 0.0, 25.0)] {
            let zip = zip_length(opening, gap, beyond, 15.0, 25.4).unwrap();
            let back = zip_opening(zip.needed, gap, beyond).unwrap();
            approx::assert_abs_diff_eq!(back, opening, epsilon = 1e-9);
            assert!(zip.shorten < 25.4);
            approx::assert_abs_diff_eq!(zip.bottom_stop - zip.top_stop, zip.needed, epsilon = 1e-9);
        }
        // 7 in is sold by the inch, and not bought an inch longer for a rounding.
        assert_eq!(
            zip_length(7.0 * 25.4, 0.0, 0.0, 15.0, 25.4).unwrap().buy,
            7.0 * 25.4
        );
    }

    #[test]
    fn a_button_comes_back_from_its_stand() {
        for share in [0.5, 0.75, 1.0] {
            let stand = button_stand(18.5, share).unwrap();
            assert_eq!(button_for_stand(stand.extension, share), Ok(18.5));
        }
    }

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
