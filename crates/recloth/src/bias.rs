//! Strips cut on the bias.

use core::f64::consts::SQRT_2;

use crate::Error;

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
pub fn bias_square(length: f64, width: f64) -> Result<f64, Error> {
    let length = Error::check("length", length, 1.0, 1e7)?;
    let width = Error::check("width", width, 0.1, 1e4)?;
    if width > length {
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
pub fn bias_strip_length(side: f64, width: f64) -> Result<f64, Error> {
    let side = Error::check("side", side, 1.0, 1e5)?;
    let width = Error::check("width", width, 0.1, 1e4)?;
    if width > side {
        return Err(Error::no_solution("width", width, 0.1, side));
    }
    Ok(side * side / width)
}

/// How a binding is folded over an edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
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
/// `count · strip - (count - 1) · join >= length`. Strips joined on the straight grain, at 45°, lose their own width and
/// the two allowances at each join; straight strips joined end to end lose the two allowances.
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
pub fn binding_strips(length: f64, strip: f64, join: f64) -> Result<BindingStrips, Error> {
    let length = Error::check("length", length, 1.0, 1e6)?;
    let strip = Error::check("strip", strip, 10.0, 1e5)?;
    let join = Error::check("join", join, 0.0, 1e4)?;
    // The first strip counts whole, each further one without its join. Lengths given in inches may pass a whole number
    // by a rounding.
    let further = libm::ceil((length - strip) / (strip - join) * (1.0 - 1e-12)).max(0.0);
    if join >= strip || further > MOST_FURTHER {
        let largest = strip - (length - strip).max(0.0) / MOST_FURTHER;
        return Err(Error::no_solution("join", join, 0.0, largest));
    }
    let joined = strip + further * (strip - join);
    Ok(BindingStrips {
        count: further as u32 + 1,
        spare: (joined - length).max(0.0),
    })
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
        assert!(strips(largest * (1.0 - 1e-9)).is_ok() && strips(largest * (1.0 + 1e-9)).is_err());
        assert_eq!(bias_square(50.0, 60.0).unwrap_err().max(), 50.0);
    }
}
