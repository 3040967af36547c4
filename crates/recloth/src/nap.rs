//! Cloth with a nap, or printed one way: what it takes that all pieces lie the same way up.

use crate::Error;
use crate::doubt::{CLOTH_NARROW, when};
use crate::dust::above;

/// Panels wider at one end, laid across the cloth all one way up, or turned every other.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NapLayout {
    /// Panels side by side when all lie one way up (count).
    pub across_one_way: u32,
    /// Panels side by side when every other is turned upside down (count).
    pub across_turned: u32,
    /// Length of cloth when all lie one way up (mm).
    pub length_one_way: f64,
    /// Length of cloth when every other is turned (mm).
    pub length_turned: f64,
    /// What the nap takes: the one length less the other (mm).
    pub nap_extra: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Length of cloth for equal tapered panels with a nap and without.
///
/// All one way up, each panel takes its wide end of the cloth's width: `floor(cloth_width / wide)` side by side. Turned
/// every other, a narrow end lies beside each wide one and `n` panels take `wide + (n - 1) · (wide + narrow) / 2`. Either
/// way a row takes the panel's length, and there are as many rows as the count asks. On napped cloth (velvet, corduroy,
/// brushed cloth, some satins) and one-way prints a turned panel is of another shade: it cannot be put right afterwards. The
/// habit of a quarter of a yard more for a nap is sometimes nothing and sometimes a whole row: count.
///
/// Cloth below 200 mm is doubted: no cloth is woven so narrow (from memory).
///
/// | argument      | unit  | range            | default | meaning                                              |
/// |---------------|-------|------------------|---------|------------------------------------------------------|
/// | `wide`        | mm    | 1..=1e5          | -       | width of a panel at its wide end, allowances included |
/// | `narrow`      | mm    | 0..=1e5, <= wide | -       | width at its narrow end, allowances included         |
/// | `length`      | mm    | 1..=1e5          | -       | length of a panel, allowances included               |
/// | `count`       | count | 1..=1000         | -       | number of panels                                     |
/// | `cloth_width` | mm    | 1..=1e5, >= wide | -       | width of the cloth between its selvedges             |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `narrow` when it is the wider end; naming
/// `cloth_width` when one panel is wider.
///
/// # Source
/// Plane geometry of trapezia with level ends; rows are not nested in each other. A quarter of a yard for one-way cloth:
/// sewwithsarah.com. `tests/vectors/nap_layout.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::nap::nap_layout;
/// let gores = nap_layout(400.0, 180.0, 720.0, 6, 1400.0)?;
/// assert_eq!((gores.across_one_way, gores.across_turned), (3, 4));
/// assert_eq!((gores.length_one_way, gores.length_turned), (1440.0, 1440.0));
/// // Eight of them: the nap takes a row.
/// assert_eq!(nap_layout(400.0, 180.0, 720.0, 8, 1400.0)?.nap_extra, 720.0);
/// assert_eq!(nap_layout(400.0, 180.0, 720.0, 8, 350.0).unwrap_err().min(), 400.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn nap_layout(
    wide: f64,
    narrow: f64,
    length: f64,
    count: u32,
    cloth_width: f64,
) -> Result<NapLayout, Error> {
    let wide = Error::check("wide", wide, 1.0, 1e5)?;
    let narrow = Error::check("narrow", narrow, 0.0, 1e5)?;
    let length = Error::check("length", length, 1.0, 1e5)?;
    let count = f64::from(Error::check_count("count", count, 1, 1000)?);
    let cloth_width = Error::check("cloth_width", cloth_width, 1.0, 1e5)?;
    if above(narrow, wide) {
        return Err(Error::no_solution("narrow", narrow, 0.0, wide));
    }
    if above(wide, cloth_width) {
        return Err(Error::no_solution(
            "cloth_width",
            cloth_width,
            wide,
            f64::NAN,
        ));
    }
    // Lengths given in inches may miss a whole number of panels by a rounding.
    let whole = |room: f64, each: f64| libm::floor(room.max(0.0) / each * (1.0 + 1e-12));
    let across_one_way = whole(cloth_width, wide).max(1.0);
    let across_turned = 1.0 + whole(cloth_width - wide, (wide + narrow) / 2.0);
    let long = |across: f64| libm::ceil(count / across) * length;
    let (length_one_way, length_turned) = (long(across_one_way), long(across_turned));
    Ok(NapLayout {
        across_one_way: across_one_way as u32,
        across_turned: across_turned as u32,
        length_one_way,
        length_turned,
        nap_extra: length_one_way - length_turned,
        doubts: when(cloth_width < 200.0, CLOTH_NARROW),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{INCH, YARD};

    #[test]
    fn turning_never_takes_more_and_a_rectangle_gains_nothing() {
        for step in 0..400u32 {
            let narrow = f64::from(step);
            let layout = nap_layout(400.0, narrow, 700.0, 11, 1500.0).unwrap();
            assert!(layout.nap_extra >= 0.0);
            assert!(layout.across_turned >= layout.across_one_way);
        }
        let even = nap_layout(300.0, 300.0, 700.0, 11, 1500.0).unwrap();
        assert_eq!((even.across_one_way, even.across_turned), (5, 5));
    }

    /// K-14 and K-18: a hem of 2 1/2 to 3 yd, and 3 1/4 yd of 54 in cloth for a walking skirt 42 in long (*Every Woman's
    /// Encyclopaedia* v1 p. 637). How it was laid is not told: with five gores of that hem and a few inches for hem and seams
    /// the length must lie between the two ways of laying them.
    #[test]
    fn the_published_length_lies_between_the_two_ways() {
        let (hem, waist) = (3.0 * YARD / 5.0 + INCH, 24.0 * INCH / 5.0 + INCH);
        let gores = nap_layout(hem, waist, 45.0 * INCH, 5, 54.0 * INCH).unwrap();
        let published = 3.25 * YARD;
        assert!(gores.length_turned < published && published < gores.length_one_way);
    }
}
