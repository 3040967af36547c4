//! Gored skirts, and godets and gussets let in.

use core::f64::consts::PI;

use crate::Error;
use crate::body;
use crate::doubt::{BODY_LENGTH_SMALL, when};
use crate::dust::{above, below, past, short_of};
use crate::hypotenuse::hypotenuse;

/// One of several equal gores.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Gore {
    /// Width at the waist (mm).
    pub waist_width: f64,
    /// Width at the hip (mm).
    pub hip_width: f64,
    /// Width at the hem (mm).
    pub hem_width: f64,
    /// Length of each side edge, waist to hip to hem (mm).
    pub side_length: f64,
    /// Lean of each side edge below the hip; negative where it tapers in (deg).
    pub flare_deg: f64,
    /// What each side edge is longer than the middle, taken off at the hem's ends so that it hangs level (mm).
    pub hem_rise: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.
///
/// Each width is the whole by the number of gores. A side edge runs over two slopes, `√(((hip - waist) / 2)² +
/// hip_depth²) + √(((hem - hip) / 2)² + (length - hip_depth)²)` for widths of one gore, and is longer than the middle: the
/// hem is curved up by `hem_rise` at its ends. The break at the hip is rounded off when the pattern is drawn.
///
/// Waist, hip and length are doubted as the functions of [`body`] do, and a hip less than 50 mm below
/// the waist.
///
/// | argument    | unit  | range             | default | meaning                                              |
/// |-------------|-------|-------------------|---------|------------------------------------------------------|
/// | `waist`     | mm    | 1..=1e5           | -       | finished waist, ease included                        |
/// | `hip`       | mm    | 1..=1e5           | -       | finished hip, ease included                          |
/// | `hem`       | mm    | 1..=1e6           | -       | finished way round the hem                           |
/// | `length`    | mm    | 1..=1e5           | -       | waist to hem along the middle of a gore              |
/// | `hip_depth` | mm    | 0..=1e4, < length | -       | waist to hip along the middle of a gore              |
/// | `count`     | count | 1..=64            | -       | number of gores                                      |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hip_depth` when it is not above the hem.
///
/// # Source
/// Plane geometry. How far below the waist the hip lies is where authors differ, so `hip_depth` has no default: 5 to 7 in by
/// L. I. Baldt, *Clothing for Women*, 1916, 6 in by I. D. Conover, *A Complete Course in Dressmaking*, v. 5, 7 in by *The New
/// Dressmaker*, Butterick, 1921. On a gore flared as in the example the side edge changes by 0.2 mm from 5 to 7 in: it is the
/// width there, not the length, that a slip spoils. `tests/vectors/gore.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::gore::gore;
/// let sixth = gore(720.0, 1020.0, 1980.0, 700.0, 200.0, 6)?;
/// assert_eq!((sixth.waist_width, sixth.hip_width, sixth.hem_width), (120.0, 170.0, 330.0));
/// assert!((sixth.hem_rise - 7.9).abs() < 0.05);
/// assert_eq!(gore(720.0, 1020.0, 1980.0, 180.0, 200.0, 6).unwrap_err().argument(), "hip_depth");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn gore(
    waist: f64,
    hip: f64,
    hem: f64,
    length: f64,
    hip_depth: f64,
    count: u32,
) -> Result<Gore, Error> {
    let waist = Error::check("waist", waist, 1.0, 1e5)?;
    let hip = Error::check("hip", hip, 1.0, 1e5)?;
    let hem = Error::check("hem", hem, 1.0, 1e6)?;
    let length = Error::check("length", length, 1.0, 1e5)?;
    let hip_depth = Error::check("hip_depth", hip_depth, 0.0, 1e4)?;
    let count = f64::from(Error::check_count("count", count, 1, 64)?);
    if hip_depth >= length {
        return Err(Error::no_solution(
            "hip_depth",
            hip_depth,
            0.0,
            short_of(length),
        ));
    }
    let above = (hip - waist) / (2.0 * count);
    let below = (hem - hip) / (2.0 * count);
    let skirt = length - hip_depth;
    let side_length = hypotenuse(above, hip_depth) + hypotenuse(below, skirt);
    Ok(Gore {
        waist_width: waist / count,
        hip_width: hip / count,
        hem_width: hem / count,
        side_length,
        flare_deg: libm::atan2(below, skirt).to_degrees(),
        hem_rise: (side_length - length).max(0.0),
        doubts: body::skirt(waist, hip)
            | body::along_body(length)
            | when(hip_depth > 0.0 && hip_depth < 50.0, BODY_LENGTH_SMALL),
    })
}

/// Widths of half a five-gored skirt by a handed-down rule: half the front, a side gore and a back.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct FiveGores {
    /// Half the front gore at the waist (mm).
    pub front_waist: f64,
    /// Side gore at the waist (mm).
    pub side_waist: f64,
    /// Back gore at the waist, its gathers included (mm).
    pub back_waist: f64,
    /// Half the front gore at the hip (mm).
    pub front_hip: f64,
    /// Side gore at the hip (mm).
    pub side_hip: f64,
    /// Back gore at the hip (mm).
    pub back_hip: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Widths of a five-gored skirt's half pattern by a handed-down rule.
///
/// At the waist: front an eighth, side a sixth of it, the back what is left of half. At the hip, 6 in below: the front 1 in
/// wider than above, the side half as wide again, the back what is left of half the hip. The rule is for a full skirt of
/// its time, 2 1/2 to 3 yd round the hem, with its fullness at the back: for gores alike use [`gore`]. Seams are extra.
///
/// Waist and hip are doubted as the functions of [`body`] do.
///
/// | argument | unit | range   | default | meaning                       |
/// |----------|------|---------|---------|-------------------------------|
/// | `waist`  | mm   | 1..=1e5 | -       | finished waist, ease included |
/// | `hip`    | mm   | 1..=1e5 | -       | finished hip, ease included   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hip` when nothing of it is left for the back.
///
/// # Source
/// C. C. Ingalls, *Text-Book on Domestic Art*, 1911, "Five-Gored Underskirt: Proportions".
///
/// # Examples
/// ```
/// use recloth::{gore::five_gores, units::INCH};
/// let half = five_gores(24.0 * INCH, 40.0 * INCH)?;
/// assert!((half.back_waist / INCH - 5.0).abs() < 1e-9 && (half.back_hip / INCH - 10.0).abs() < 1e-9);
/// assert_eq!(five_gores(600.0, 300.0).unwrap_err().argument(), "hip");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn five_gores(waist: f64, hip: f64) -> Result<FiveGores, Error> {
    let waist = Error::check("waist", waist, 1.0, 1e5)?;
    let hip = Error::check("hip", hip, 1.0, 1e5)?;
    let front_waist = waist / 8.0;
    let side_waist = waist / 6.0;
    let front_hip = front_waist + crate::units::INCH;
    let side_hip = waist / 4.0;
    let back_hip = hip / 2.0 - front_hip - side_hip;
    if !above(back_hip, 0.0) {
        let least = 2.0 * (front_hip + side_hip);
        return Err(Error::no_solution("hip", hip, past(least), f64::NAN));
    }
    Ok(FiveGores {
        front_waist,
        side_waist,
        back_waist: waist / 2.0 - front_waist - side_waist,
        front_hip,
        side_hip,
        back_hip,
        doubts: body::skirt(waist, hip),
    })
}

/// A godet: a sector let into a seam or a slit.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Godet {
    /// Angle at the point (deg).
    pub angle_deg: f64,
    /// Straight across the hem from side to side, which is the cloth's width that it takes (mm).
    pub chord: f64,
    /// How far the hem bows below that (mm).
    pub sagitta: f64,
    /// What all godets add to the hem (mm).
    pub added: f64,
}

/// Sector for a godet of a given length and hem.
///
/// `angle = hem / length` in radians, `chord = 2 · length · sin(angle / 2)`. Its two sides are as long as the slit; the
/// hem is an arc, or it hangs in a point. A godet of more than half a ring is cut in two parts.
///
/// | argument | unit  | range   | default | meaning                                          |
/// |----------|-------|---------|---------|--------------------------------------------------|
/// | `length` | mm    | 1..=1e4 | -       | slit from its point to the finished hem          |
/// | `hem`    | mm    | 1..=1e5 | -       | finished hem of one godet, along its arc         |
/// | `count`  | count | 1..=64  | 1       | number of godets                                 |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hem` when it is more than half a ring.
///
/// # Source
/// Arc length of a sector. `tests/vectors/godet.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::gore::godet;
/// let insert = godet(300.0, 471.24, 4)?;
/// assert!((insert.angle_deg - 90.0).abs() < 0.001 && (insert.chord - 424.26).abs() < 0.01);
/// assert_eq!(godet(300.0, 1000.0, 4).unwrap_err().argument(), "hem");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn godet(length: f64, hem: f64, count: u32) -> Result<Godet, Error> {
    let length = Error::check("length", length, 1.0, 1e4)?;
    let hem = Error::check("hem", hem, 1.0, 1e5)?;
    let count = f64::from(Error::check_count("count", count, 1, 64)?);
    if above(hem, PI * length) {
        return Err(Error::no_solution("hem", hem, 1.0, PI * length));
    }
    let angle = hem / length;
    let sine = libm::sin(angle / 4.0);
    Ok(Godet {
        angle_deg: angle.to_degrees(),
        chord: 2.0 * length * libm::sin(angle / 2.0),
        sagitta: 2.0 * length * sine * sine,
        added: hem * count,
    })
}

/// A diamond let into two slits.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Gusset {
    /// Angle at each slit's end (deg).
    pub angle_deg: f64,
    /// From slit's end to slit's end (mm).
    pub long_diagonal: f64,
    /// Cut from point to point the long way, allowances included (mm).
    pub cut_long: f64,
    /// Cut from point to point the short way, allowances included (mm).
    pub cut_short: f64,
}

/// Diamond gusset for two slits that meet in a seam, as under an arm.
///
/// Its four sides are as long as the slits, its short diagonal is what the opened slits add across:
/// `angle = 2 · asin(added / (2 · slit))`, `long_diagonal = √(4 · slit² - added²)`. Cut, an allowance all round makes the long
/// way `2 · allowance / sin(angle / 2)` longer and the short way `2 · allowance / cos(angle / 2)`: sharp points need much
/// cloth. Face the slit's end before it is cut, for it has no allowance there; cut last and only after a try in scrap cloth.
/// The gusset lies on the bias where slits are on grain.
///
/// | argument    | unit | range     | default | meaning                                      |
/// |-------------|------|-----------|---------|----------------------------------------------|
/// | `slit`      | mm   | 1..=1e4   | -       | length of each slit, seam to its end         |
/// | `added`     | mm   | 0.1..=2e4 | -       | what is to be added across, where they meet  |
/// | `allowance` | mm   | 0..=100   | 10      | seam allowance all round the gusset          |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `added` when it is as much as both slits.
///
/// # Source
/// Plane geometry of a rhombus. `tests/vectors/gusset.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::gore::gusset;
/// let underarm = gusset(100.0, 120.0, 10.0)?;
/// assert_eq!(underarm.long_diagonal, 160.0);
/// assert!((underarm.angle_deg - 73.74).abs() < 0.005);
/// assert!((underarm.cut_long - 193.33).abs() < 0.005 && (underarm.cut_short - 145.0).abs() < 0.005);
/// assert_eq!(gusset(100.0, 200.0, 10.0).unwrap_err().max().round(), 200.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn gusset(slit: f64, added: f64, allowance: f64) -> Result<Gusset, Error> {
    let slit = Error::check("slit", slit, 1.0, 1e4)?;
    let added = Error::check("added", added, 0.1, 2e4)?;
    let allowance = Error::check("allowance", allowance, 0.0, 100.0)?;
    let both = 2.0 * slit;
    if !below(added, both) {
        return Err(Error::no_solution("added", added, f64::NAN, short_of(both)));
    }
    // A difference of squares as a product: no digits are lost where the diamond is almost flat.
    let long_diagonal = libm::sqrt((both - added) * (both + added));
    Ok(Gusset {
        angle_deg: 2.0 * libm::atan2(added, long_diagonal).to_degrees(),
        long_diagonal,
        cut_long: long_diagonal + 2.0 * allowance * both / added,
        cut_short: added + 2.0 * allowance * both / long_diagonal,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gores_make_up_the_skirt() {
        for count in [1, 4, 6, 9] {
            let one = gore(720.0, 1020.0, 1980.0, 700.0, 200.0, count).unwrap();
            let all = f64::from(count);
            approx::assert_abs_diff_eq!(one.hem_width * all, 1980.0, epsilon = 1e-9);
            approx::assert_abs_diff_eq!(one.side_length - one.hem_rise, 700.0, epsilon = 1e-9);
        }
    }

    #[test]
    fn a_straight_gore_has_level_hem() {
        let straight = gore(900.0, 900.0, 900.0, 700.0, 200.0, 4).unwrap();
        assert_eq!((straight.hem_rise, straight.flare_deg), (0.0, 0.0));
    }

    #[test]
    fn the_five_make_half_the_waist_and_half_the_hip() {
        let half = five_gores(700.0, 1000.0).unwrap();
        let waist = half.front_waist + half.side_waist + half.back_waist;
        let hip = half.front_hip + half.side_hip + half.back_hip;
        approx::assert_abs_diff_eq!(waist, 350.0, epsilon = 1e-9);
        approx::assert_abs_diff_eq!(hip, 500.0, epsilon = 1e-9);
        let least = five_gores(600.0, 300.0).unwrap_err().min();
        assert!(five_gores(600.0, least).is_ok() && five_gores(600.0, least - 1e-6).is_err());
    }

    #[test]
    fn half_a_ring_is_the_widest_godet() {
        let half = godet(300.0, 300.0 * PI, 1).unwrap();
        approx::assert_abs_diff_eq!(half.chord, 600.0, epsilon = 1e-9);
        approx::assert_abs_diff_eq!(half.sagitta, 300.0, epsilon = 1e-9);
    }
}
