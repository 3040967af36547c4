//! Strips cut on the bias.

use core::f64::consts::{PI, SQRT_2};

use crate::Error;
use crate::dust::{above, below, short_of};

/// Distance along the selvedge between the cuts of a true bias strip.
///
/// A strip of width `w`, measured square to its edges, lies at 45° to the selvedge and meets it over `w · √2`. The old
/// rule of a third more comes out 6 % short.
///
/// | argument | unit | range     | default | meaning                                    |
/// |----------|------|-----------|---------|--------------------------------------------|
/// | `width`  | mm   | 0.1..=1e5 | -       | width of the strip, square to its edges    |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Distance along the selvedge, and equally across the cloth (mm).
///
/// # Source
/// L. I. Baldt, *Clothing for Women*, 1916, ch. XXII, table of measures along the selvage: every row within 0.08 in.
///
/// # Examples
/// ```
/// use recloth::{bias::bias_along_selvedge, units::INCH};
/// assert!((bias_along_selvedge(1.5 * INCH)? - 2.1213 * INCH).abs() < 0.001);
/// assert_eq!(bias_along_selvedge(0.0).unwrap_err().argument(), "width");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn bias_along_selvedge(width: f64) -> Result<f64, Error> {
    let width = Error::check("width", width, 0.1, 1e5)?;
    Ok(width * SQRT_2)
}

/// Side of the square of cloth that holds a bias strip of a given length and width.
///
/// `side = √(length · width)`: the strip's area as a square, which the continuous tube comes near to. It is the least:
/// add 25 to 50 mm (1 to 2 in) for the seams, more if the strip is pieced from separate strips.
///
/// | argument | unit | range               | default | meaning                                       |
/// |----------|------|---------------------|---------|-----------------------------------------------|
/// | `length` | mm   | 1..=1e7             | -       | length of strip needed, joins included        |
/// | `width`  | mm   | 0.1..=1e4, <= length | -      | cut width of the strip, square to its edges   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `width` when it is more than the length: the
/// two are swapped.
///
/// # Returns
/// Side of the square, without seams (mm).
///
/// # Source
/// Equal areas. `tests/vectors/bias_square.csv` has published and hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::{bias::bias_square, units::{INCH, YARD}};
/// assert!((bias_square(10.0 * YARD, 3.0 * INCH)? - 32.86 * INCH).abs() < 0.01 * INCH);
/// assert_eq!(bias_square(76.2, 9144.0).unwrap_err().argument(), "width");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn bias_square(length: f64, width: f64) -> Result<f64, Error> {
    let length = Error::check("length", length, 1.0, 1e7)?;
    let width = Error::check("width", width, 0.1, 1e4)?;
    if above(width, length) {
        return Err(Error::no_solution("width", width, 0.1, length));
    }
    Ok(libm::sqrt(length * width))
}

/// Length of bias strip that a square of cloth gives.
///
/// `length = side² / width`, the other way of [`bias_square`]. It is the most: seams and end triangles take from it (72
/// in by the sum, a 12 in square has given about 60 in of 2 in strip). Take the seams' allowances off the side first.
///
/// | argument | unit | range              | default | meaning                                     |
/// |----------|------|--------------------|---------|---------------------------------------------|
/// | `side`   | mm   | 1..=1e5            | -       | side of the square, less its seams          |
/// | `width`  | mm   | 0.1..=1e4, <= side | -       | cut width of the strip, square to its edges |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `width` when it is more than the side.
///
/// # Returns
/// Length of the strip, at most (mm).
///
/// # Source
/// Equal areas. `tests/vectors/bias_strip_length.csv` has published rows.
///
/// # Examples
/// ```
/// use recloth::{bias::bias_strip_length, units::INCH};
/// assert!((bias_strip_length(20.0 * INCH, 2.0 * INCH)? - 200.0 * INCH).abs() < 1e-9);
/// assert_eq!(bias_strip_length(50.0, 508.0).unwrap_err().max(), 50.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn bias_strip_length(side: f64, width: f64) -> Result<f64, Error> {
    let side = Error::check("side", side, 1.0, 1e5)?;
    let width = Error::check("width", width, 0.1, 1e4)?;
    if above(width, side) {
        return Err(Error::no_solution("width", width, 0.1, side));
    }
    Ok(side * side / width)
}

/// How a binding is folded over an edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
#[repr(i32)]
pub enum BindingFold {
    /// One layer: both long edges are turned in.
    Single = 0,
    /// Two layers, French binding: the strip is folded along its middle, both raw edges sewn in one seam.
    Double = 1,
}

/// Width to cut a binding of a given finished width.
///
/// Single: `2 · finished + 2 · turn + thickness`. Double: `2 · (2 · finished + turn + thickness)`. With a turn as wide as
/// the binding shows these are the 4 and 6 times that are usually told. Bias narrows when it is stretched on: try a
/// short piece.
///
/// | argument    | unit   | range     | default | meaning                                                      |
/// |-------------|--------|-----------|---------|--------------------------------------------------------------|
/// | `finished`  | mm     | 0.5..=1e3 | -       | width that shows on one side                                 |
/// | `turn`      | mm     | 0..=1e3   | -       | single: turned in at each long edge; double: seam allowance  |
/// | `thickness` | mm     | 0..=100   | 0       | way round the edge itself: the thickness of what is bound    |
/// | `fold`      | choice | -         | single  | how it is folded                                             |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Width to cut (mm).
///
/// # Source
/// The layers added up; 4 and 6 times are common practice, no source. `tests/vectors/binding_width.csv` has hand-worked
/// rows.
///
/// # Examples
/// ```
/// use recloth::bias::{BindingFold, binding_width};
/// assert_eq!(binding_width(8.0, 8.0, 0.0, BindingFold::Single)?, 32.0);
/// assert_eq!(binding_width(8.0, 8.0, 0.0, BindingFold::Double)?, 48.0);
/// assert_eq!(binding_width(0.0, 8.0, 0.0, BindingFold::Single).unwrap_err().argument(), "finished");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn binding_width(
    finished: f64,
    turn: f64,
    thickness: f64,
    fold: BindingFold,
) -> Result<f64, Error> {
    let finished = Error::check("finished", finished, 0.5, 1e3)?;
    let turn = Error::check("turn", turn, 0.0, 1e3)?;
    let thickness = Error::check("thickness", thickness, 0.0, 100.0)?;
    Ok(match fold {
        BindingFold::Single => 2.0 * finished + 2.0 * turn + thickness,
        BindingFold::Double => 2.0 * (2.0 * finished + turn + thickness),
    })
}

/// The most strips after the first: a binding of more is a slip.
const MOST_FURTHER: f64 = 99_999.0;

/// Strips to join for a binding.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BindingStrips {
    /// Number of strips (count).
    pub count: u32,
    /// What the joined strips are longer than needed (mm).
    pub spare: f64,
}

/// Number of strips of one length to join for a binding.
///
/// Each join takes `join` off the two strips together: `count` is the least with
/// `count · strip - (count - 1) · join >= length`. Strips with square ends, crossed and joined from corner to corner at 45°,
/// lose their own width at each join; with ends cut at 45°, √2 times the two allowances; joined end to end, the two
/// allowances.
///
/// | argument | unit | range            | default | meaning                                              |
/// |----------|------|------------------|---------|------------------------------------------------------|
/// | `length` | mm   | 1..=1e6          | -       | length of binding needed, corners and ends included  |
/// | `strip`  | mm   | 10..=1e5         | -       | length of each strip, measured along one edge        |
/// | `join`   | mm   | 0..=1e4, < strip | 0       | length lost at each join                             |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `join` when it takes a whole strip, or so much
/// that more than 100000 strips are needed.
///
/// # Source
/// Arithmetic. `tests/vectors/binding_strips.csv` has published and hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::{bias::binding_strips, units::INCH};
/// let strips = binding_strips(114.0 * INCH, 45.0 * INCH, 0.0)?;
/// assert_eq!(strips.count, 3);
/// assert_eq!(binding_strips(3000.0, 40.0, 40.0).unwrap_err().argument(), "join");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn binding_strips(length: f64, strip: f64, join: f64) -> Result<BindingStrips, Error> {
    let length = Error::check("length", length, 1.0, 1e6)?;
    let strip = Error::check("strip", strip, 10.0, 1e5)?;
    let join = Error::check("join", join, 0.0, 1e4)?;
    let largest = strip - (length - strip).max(0.0) / MOST_FURTHER;
    let refused = Err(Error::no_solution("join", join, 0.0, short_of(largest)));
    let each = strip - join;
    if !above(each, 0.0) {
        return refused;
    }
    // The first strip counts whole, each further one without its join. Lengths given in inches may pass a whole number
    // by a rounding.
    let further = libm::ceil((length - strip) / each * (1.0 - 1e-12)).max(0.0);
    if further > MOST_FURTHER {
        return refused;
    }
    let joined = strip + further * each;
    Ok(BindingStrips {
        count: further as u32 + 1,
        spare: (joined - length).max(0.0),
    })
}

/// Bias strips cut from a rectangle and joined.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BiasStrips {
    /// Number of strips (count).
    pub strips: u32,
    /// Length of the longest, along its shorter edge (mm).
    pub longest: f64,
    /// All strips joined on the straight grain, what the joins take left off (mm).
    pub joined: f64,
    /// Share of the cloth in them before joining (%).
    pub kept_pct: f64,
}

/// Strips that a rectangle gives when it is cut across at 45°, and their length when joined.
///
/// The first cut runs from a corner, and the others lie `strip · √2` apart along the selvedge to both sides of it. Between the
/// two corners' cuts the strips are full, `√2` times the shorter side; in the two end triangles each is shorter than the one
/// before. Strips shorter than `shortest`, or than a join takes, are left out. Ends are cut on the straight grain, and each
/// join takes `2 · √2 · allowance` along the strip. Fewer, longer pieces come from [`bias_tube`].
///
/// | argument    | unit | range     | default | meaning                                            |
/// |-------------|------|-----------|---------|----------------------------------------------------|
/// | `length`    | mm   | 10..=1e5  | -       | one side of the rectangle, on grain                |
/// | `width`     | mm   | 10..=1e5  | -       | the other side                                     |
/// | `strip`     | mm   | 1..=1e4   | -       | width of a strip, square to its edges              |
/// | `allowance` | mm   | 0..=100   | 6       | seam allowance at each join                        |
/// | `shortest`  | mm   | 0..=1e5   | 100     | shortest strip worth joining                       |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `strip` when the cloth holds none so wide; naming
/// `allowance` when a join takes the longest strip; naming `shortest` when no strip is as long as that, with the longest as
/// `max`.
///
/// # Source
/// Plane geometry. `tests/vectors/bias_strips.csv` has published and hand-worked rows: a tutorial gets about 60 in of 2 in strips
/// from a 12 in square, where its area would give 72.
///
/// # Examples
/// ```
/// use recloth::bias::bias_strips;
/// let scrap = bias_strips(700.0, 300.0, 40.0, 6.0, 100.0)?;
/// assert_eq!(scrap.strips, 15);
/// assert!((scrap.longest - 424.26).abs() < 0.01 && (scrap.joined - 4549.1).abs() < 0.1);
/// assert_eq!(bias_strips(700.0, 300.0, 40.0, 6.0, 500.0).unwrap_err().argument(), "shortest");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn bias_strips(
    length: f64,
    width: f64,
    strip: f64,
    allowance: f64,
    shortest: f64,
) -> Result<BiasStrips, Error> {
    let length = Error::check("length", length, 10.0, 1e5)?;
    let width = Error::check("width", width, 10.0, 1e5)?;
    let strip = Error::check("strip", strip, 1.0, 1e4)?;
    let allowance = Error::check("allowance", allowance, 0.0, 100.0)?;
    let shortest = Error::check("shortest", shortest, 0.0, 1e5)?;
    let (long, short) = if length < width {
        (width, length)
    } else {
        (length, width)
    };
    let pitch = strip * SQRT_2;
    let join = 2.0 * SQRT_2 * allowance;
    // Lengths given in inches may miss a whole number by a rounding.
    let full = libm::floor((long - short) / pitch * (1.0 + 1e-12));
    // A strip is as long as the shorter of its cuts, which in a corner is √2 times that cut's distance from it.
    let full_length = short * SQRT_2;
    let from_first = short;
    let from_last = long - full * pitch;
    let corner = |from: f64, index: f64| (from - index * pitch) * SQRT_2;
    let longest = if full > 0.0 {
        full_length
    } else {
        corner(from_first, 1.0).max(corner(from_last, 1.0)).max(0.0)
    };
    if longest <= 0.0 {
        let widest = short_of(long / SQRT_2);
        return Err(Error::no_solution("strip", strip, f64::NAN, widest));
    }
    if longest <= join {
        let most = short_of(longest / (2.0 * SQRT_2));
        return Err(Error::no_solution("allowance", allowance, 0.0, most));
    }
    if below(longest, shortest) {
        return Err(Error::no_solution("shortest", shortest, f64::NAN, longest));
    }
    let (mut strips, mut sum) = (full, full * full_length);
    for from in [from_first, from_last] {
        let mut index = 1.0;
        while corner(from, index) > join && !below(corner(from, index), shortest) {
            strips += 1.0;
            sum += corner(from, index);
            index += 1.0;
        }
    }
    Ok(BiasStrips {
        strips: strips as u32,
        longest,
        joined: sum - (strips - 1.0) * join,
        kept_pct: 100.0 * sum * strip / (length * width),
    })
}

/// One long bias strip cut from a tube.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BiasTube {
    /// Turns of the strip round the tube (count).
    pub turns: u32,
    /// Length of the strip (mm).
    pub length: f64,
    /// What is left over along the long side, less than one turn (mm).
    pub leftover: f64,
}

/// One long bias strip from a rectangle sewn to a slanted tube.
///
/// A corner is cut off at 45° and sewn to the other end; the slanted piece is marked in strips, its long sides are sewn
/// together one strip out of step, and the spiral is cut. Both seams cross every turn on the straight grain. The first seam
/// takes two allowances of the long side, the second two of the short: `turns = floor((long - 2 · allowance) / (strip · √2))`,
/// `length = turns · (short - 2 · allowance) · √2`. Area alone, `long · short / strip`, promises up to one turn more.
///
/// | argument    | unit | range    | default | meaning                                          |
/// |-------------|------|----------|---------|--------------------------------------------------|
/// | `length`    | mm   | 10..=1e5 | -       | one side of the rectangle, on grain              |
/// | `width`     | mm   | 10..=1e5 | -       | the other side                                   |
/// | `strip`     | mm   | 1..=1e4  | -       | width of the strip, square to its edges          |
/// | `allowance` | mm   | 0..=100  | 6       | allowance of both seams                          |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the short side; naming `strip`
/// when not one turn is had.
///
/// # Source
/// Plane geometry. A tutorial counts area, and only one allowance off each side: 22 in square, 3 in strips, 1/4 in: 157.7 in,
/// where five whole turns give 152. `tests/vectors/bias_tube.csv` has published and hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::{bias::bias_tube, units::INCH};
/// let tube = bias_tube(22.0 * INCH, 22.0 * INCH, 3.0 * INCH, 0.25 * INCH)?;
/// assert_eq!(tube.turns, 5);
/// assert!((tube.length / INCH - 152.0).abs() < 0.05);
/// assert_eq!(bias_tube(60.0, 60.0, 50.0, 6.0).unwrap_err().argument(), "strip");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn bias_tube(length: f64, width: f64, strip: f64, allowance: f64) -> Result<BiasTube, Error> {
    let length = Error::check("length", length, 10.0, 1e5)?;
    let width = Error::check("width", width, 10.0, 1e5)?;
    let strip = Error::check("strip", strip, 1.0, 1e4)?;
    let allowance = Error::check("allowance", allowance, 0.0, 100.0)?;
    let along = length.max(width) - 2.0 * allowance;
    let across = length.min(width) - 2.0 * allowance;
    if across <= 0.0 {
        let most = length.min(width) / 2.0;
        return Err(Error::no_solution(
            "allowance",
            allowance,
            0.0,
            short_of(most),
        ));
    }
    let pitch = strip * SQRT_2;
    // Lengths given in inches may miss a whole number by a rounding.
    let turns = libm::floor(along / pitch * (1.0 + 1e-12));
    if turns < 1.0 {
        let widest = along / SQRT_2;
        return Err(Error::no_solution("strip", strip, f64::NAN, widest));
    }
    Ok(BiasTube {
        turns: turns as u32,
        length: turns * across * SQRT_2,
        leftover: (along - turns * pitch).max(0.0),
    })
}

/// Width of the strip that covers a cord for piping.
///
/// `π · (cord + thickness) + 2 · allowance`: once round the cord in the middle of the cloth, and an allowance on both sides.
/// Stitched close to the cord, it is a little more than is covered, which the stitching needs. Shrink cotton cord first.
///
/// | argument    | unit | range    | default | meaning                            |
/// |-------------|------|----------|---------|------------------------------------|
/// | `cord`      | mm   | 0..=200  | -       | diameter of the cord               |
/// | `allowance` | mm   | 0..=1e3  | -       | seam allowance beside it           |
/// | `thickness` | mm   | 0..=20   | 0       | thickness of the strip's cloth     |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when there is neither cord nor allowance.
///
/// # Returns
/// Width to cut, square to the edges (mm).
///
/// # Source
/// Plane geometry. `tests/vectors/piping_width.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::bias::piping_width;
/// assert!((piping_width(4.0, 10.0, 0.0)? - 32.57).abs() < 0.005);
/// assert_eq!(piping_width(-4.0, 10.0, 0.0).unwrap_err().argument(), "cord");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn piping_width(cord: f64, allowance: f64, thickness: f64) -> Result<f64, Error> {
    let cord = Error::check("cord", cord, 0.0, 200.0)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let thickness = Error::check("thickness", thickness, 0.0, 20.0)?;
    let width = PI * (cord + thickness) + 2.0 * allowance;
    if width <= 0.0 {
        return Err(Error::no_solution("allowance", allowance, 0.0, f64::NAN));
    }
    Ok(width)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn square_and_length_give_each_other_back() {
        for (length, width) in [(2000.0, 30.0), (9144.0, 76.2), (50.0, 49.0)] {
            let side = bias_square(length, width).unwrap();
            let back = bias_strip_length(side, width).unwrap();
            approx::assert_relative_eq!(back, length, max_relative = 1e-12);
        }
    }

    #[test]
    fn one_strip_fewer_would_not_do() {
        for length in [1.0, 40.0, 900.0, 2000.0, 12345.6] {
            for (strip, join) in [(900.0, 0.0), (900.0, 52.0), (50.0, 49.0)] {
                let strips = binding_strips(length, strip, join).unwrap();
                let joined = |count: f64| count * strip - (count - 1.0) * join;
                let count = f64::from(strips.count);
                assert!(joined(count) >= length);
                assert!(strips.count == 1 || joined(count - 1.0) < length);
                approx::assert_abs_diff_eq!(joined(count) - length, strips.spare, epsilon = 1e-9);
            }
        }
    }

    #[test]
    fn the_rule_of_a_third_more_is_six_percent_short() {
        let true_bias = bias_along_selvedge(100.0).unwrap();
        let short = 1.0 - (100.0 * 4.0 / 3.0) / true_bias;
        assert!(short > 0.05 && short < 0.06);
    }

    #[test]
    fn what_an_error_asks_for_would_do() {
        let strips = |join| binding_strips(1e6, 20.0, join);
        let largest = strips(19.0).unwrap_err().max();
        assert!(strips(largest).is_ok() && strips(largest + 2e-6).is_err());
        assert_eq!(bias_square(50.0, 60.0).unwrap_err().max(), 50.0);
    }

    #[test]
    fn no_more_cloth_is_had_than_there_is() {
        for (length, width) in [
            (700.0, 300.0),
            (300.0, 700.0),
            (304.8, 304.8),
            (2000.0, 60.0),
        ] {
            for strip in [10.0, 25.4, 40.0] {
                let cut = bias_strips(length, width, strip, 6.0, 20.0).unwrap();
                assert!(cut.kept_pct > 0.0 && cut.kept_pct <= 100.0);
                let tube = bias_tube(length, width, strip, 6.0).unwrap();
                assert!(tube.length * strip <= (length - 12.0) * (width - 12.0) * (1.0 + 1e-12));
            }
        }
        let (one, other) = (
            bias_strips(700.0, 300.0, 40.0, 6.0, 20.0),
            bias_strips(300.0, 700.0, 40.0, 6.0, 20.0),
        );
        assert_eq!(one, other);
    }

    #[test]
    fn narrow_strips_without_joins_use_nearly_all() {
        let cut = bias_strips(1000.0, 600.0, 1.0, 0.0, 0.0).unwrap();
        assert!(cut.kept_pct > 99.0);
    }

    #[test]
    fn the_bounds_an_error_names_would_do() {
        let strips = |shortest| bias_strips(700.0, 300.0, 40.0, 6.0, shortest);
        assert!(strips(strips(500.0).unwrap_err().max()).is_ok());
        // No strip, then none longer than its join: neither is mended by a shorter shortest.
        let scrap = |strip, allowance| bias_strips(100.0, 60.0, strip, allowance, 0.0);
        let error = scrap(80.0, 6.0).unwrap_err();
        assert_eq!(error.argument(), "strip");
        assert_eq!(scrap(error.max(), 0.0).unwrap().strips, 1);
        let error = scrap(60.0, 20.0).unwrap_err();
        assert_eq!(error.argument(), "allowance");
        assert_eq!(scrap(60.0, error.max()).unwrap().strips, 1);
        let tube = |strip| bias_tube(60.0, 60.0, strip, 6.0);
        assert_eq!(tube(tube(50.0).unwrap_err().max()).unwrap().turns, 1);
    }
}
