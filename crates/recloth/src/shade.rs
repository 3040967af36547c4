//! Depth of shade by Kubelka and Munk: what dye over cloth comes to, and how deep it must be to hide a mark.
//!
//! The theory's one-constant form, for opaque cloth. It holds for one wavelength, and roughly for a band of them such as
//! the red, green or blue light of a picture ([`linear_light`](crate::colour::linear_light)).

use crate::Error;
use crate::colour::{difference, lightness};

/// The deepest shade reckoned with: K/S of a reflectance of 1 %. Cloth is hardly ever darker.
const DEEPEST: f64 = 49.005;

/// K/S, the depth of shade, of a reflectance.
///
/// `K/S = (1 - R)² / (2 R)`. Depths add up where reflectances do not: cloth and dyes each give their own. Near black it grows
/// without bounds, so small errors of R are large ones of K/S.
///
/// | argument      | unit | range     | default | meaning                                       |
/// |---------------|------|-----------|---------|-----------------------------------------------|
/// | `reflectance` | 1    | 0.001..=1 | -       | share of the light that comes back            |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// K/S (1).
///
/// # Source
/// E. Allen, "Colorant Formulation and Shading", in *Optical Radiation Measurements* vol. 2, Academic Press 1980, eq. 19.
///
/// # Examples
/// ```
/// use recloth::shade::k_over_s;
/// assert_eq!(k_over_s(0.5)?, 0.25);
/// assert_eq!(k_over_s(0.0).unwrap_err().argument(), "reflectance");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn k_over_s(reflectance: f64) -> Result<f64, Error> {
    Ok(depth(check_reflectance("reflectance", reflectance)?))
}

/// Reflectance of a depth of shade K/S: [`k_over_s`] turned round.
///
/// `R = 1 + K/S - √((K/S)² + 2 K/S)`, worked as the reciprocal of `1 + K/S + √(...)`, which loses no digits near black.
///
/// | argument   | unit | range    | default | meaning         |
/// |------------|------|----------|---------|-----------------|
/// | `k_over_s` | 1    | 0..=500  | -       | depth of shade  |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Reflectance (1).
///
/// # Source
/// E. Allen, "Colorant Formulation and Shading", in *Optical Radiation Measurements* vol. 2, Academic Press 1980, eq. 20.
///
/// # Examples
/// ```
/// use recloth::shade::reflectance;
/// assert!((reflectance(0.25)? - 0.5).abs() < 1e-15);
/// assert_eq!(reflectance(-0.1).unwrap_err().argument(), "k_over_s");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn reflectance(k_over_s: f64) -> Result<f64, Error> {
    Ok(returned(Error::check("k_over_s", k_over_s, 0.0, 500.0)?))
}

/// Strength of a dyeing against another, by their depths of shade, in percent.
///
/// | argument   | unit | range       | default | meaning                            |
/// |------------|------|-------------|---------|------------------------------------|
/// | `k_over_s` | 1    | 0..=500     | -       | depth of shade of the dyeing       |
/// | `standard` | 1    | 1e-6..=500  | -       | depth of shade it is held against  |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Relative strength (%).
///
/// # Source
/// Common practice in dye houses: the ratio of K/S, both measured at the same wavelength.
///
/// # Examples
/// ```
/// use recloth::shade::relative_strength;
/// assert!((relative_strength(17.46, 11.85)? - 147.34).abs() < 0.005);
/// assert_eq!(relative_strength(17.46, 0.0).unwrap_err().argument(), "standard");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn relative_strength(k_over_s: f64, standard: f64) -> Result<f64, Error> {
    let k_over_s = Error::check("k_over_s", k_over_s, 0.0, 500.0)?;
    let standard = Error::check("standard", standard, 1e-6, 500.0)?;
    Ok(100.0 * k_over_s / standard)
}

/// What a dye over cloth may come to, from pale to deep.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Overdye {
    /// Reflectance where the dye takes least (1).
    pub pale: f64,
    /// Reflectance where the dye takes most (1).
    pub deep: f64,
    /// Lightness L* of a grey of the pale reflectance (1).
    pub pale_l: f64,
    /// Lightness L* of a grey of the deep reflectance (1).
    pub deep_l: f64,
}

/// Reflectance of cloth dyed over the colour it has, as a band from pale to deep.
///
/// Depths of shade add up: `K/S = (K/S of the ground) + (K/S of the dye)`. Give the dye's as a low and a high, from swatches
/// on white cloth of the same fibre: water, heat, mordant and the next batch all move it. Ask once for each of red, green
/// and blue light. A dye only takes light away, so no part gets lighter. Not foretold: a fibre that takes dye otherwise, a
/// finish, a ground that bleeds, hues that alkali or iron turn. Judge dry cloth, by daylight.
///
/// | argument    | unit | range            | default | meaning                                  |
/// |-------------|------|------------------|---------|------------------------------------------|
/// | `ground`    | 1    | 0.001..=1        | -       | reflectance of the cloth as it is        |
/// | `low`       | 1    | 0..=100          | -       | least that the dye adds, K/S             |
/// | `high`      | 1    | 0..=100, >= low  | -       | most that the dye adds, K/S              |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `high` when it is less than `low`.
///
/// # Source
/// E. Allen, as for [`k_over_s`]; the sum of depths is the one-constant theory's.
///
/// # Examples
/// ```
/// use recloth::shade::overdye;
/// let skirt = overdye(0.5, 0.2, 0.875)?;
/// assert!((skirt.pale - 0.4).abs() < 1e-12 && (skirt.deep - 0.25).abs() < 1e-12);
/// assert_eq!(overdye(0.5, 0.875, 0.2).unwrap_err().argument(), "high");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn overdye(ground: f64, low: f64, high: f64) -> Result<Overdye, Error> {
    let ground = depth(check_reflectance("ground", ground)?);
    let low = Error::check("low", low, 0.0, 100.0)?;
    let high = Error::check("high", high, 0.0, 100.0)?;
    if high < low {
        return Err(Error::no_solution("high", high, low, f64::NAN));
    }
    let (pale, deep) = (returned(ground + low), returned(ground + high));
    Ok(Overdye {
        pale,
        deep,
        pale_l: lightness(pale),
        deep_l: lightness(deep),
    })
}

/// A mark dyed over until it no longer shows.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CoverMark {
    /// Colour difference of mark and ground as they are, CIEDE2000 (1).
    pub now: f64,
    /// Depth that the dye must add to both, K/S; 0 when nothing is needed (1).
    pub depth: f64,
    /// Reflectance of the ground then (1).
    pub ground_after: f64,
    /// Reflectance of the mark then (1).
    pub mark_after: f64,
    /// Colour difference then (1).
    pub after: f64,
}

/// Depth of dye that brings a mark within a limit of its ground.
///
/// Mark and ground are taken as greys of their reflectance, the dye as adding the same K/S to both; the depth is where
/// CIEDE2000 of the two first comes down to the limit. A mark of another hue than the ground shows longer than this says.
/// Grease, wax, resin and scorch take dye otherwise: the forecast is void, so try the dye on the mark's own kind first. A
/// ground that fades will show it again. Where no depth will do, hide the mark or recut.
///
/// | argument | unit | range     | default | meaning                                              |
/// |----------|------|-----------|---------|------------------------------------------------------|
/// | `ground` | 1    | 0.001..=1 | -       | reflectance of the cloth around the mark             |
/// | `mark`   | 1    | 0.001..=1 | -       | reflectance of the mark                              |
/// | `limit`  | 1    | 0.01..=50 | 1       | colour difference that may remain                    |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `limit` when cloth dyed as dark as cloth gets
/// (a reflectance of 1 %) still shows the mark; `min` is then the difference that remains.
///
/// # Source
/// E. Allen and G. Sharma, as for [`k_over_s`] and [`ciede2000`](crate::colour::ciede2000). A limit of 1 is common practice,
/// no source: about what is just seen.
///
/// # Examples
/// ```
/// use recloth::shade::cover_mark;
/// let worn = cover_mark(0.55, 0.42, 1.0)?;
/// assert!((worn.now - 5.97).abs() < 0.005 && worn.depth > 1.0);
/// assert_eq!(cover_mark(0.55, 0.42, 0.0).unwrap_err().argument(), "limit");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn cover_mark(ground: f64, mark: f64, limit: f64) -> Result<CoverMark, Error> {
    let ground = depth(check_reflectance("ground", ground)?);
    let mark = depth(check_reflectance("mark", mark)?);
    let limit = Error::check("limit", limit, 0.01, 50.0)?;
    let apart = |added: f64| {
        let grey = |k: f64| [lightness(returned(k + added)), 0.0, 0.0];
        difference(grey(ground), grey(mark))
    };
    // The difference need not fall all the way, as lightness counts most at 50: so by small steps first, then by halving.
    const STEPS: u32 = 400;
    let step = |index: u32| {
        let share = f64::from(index) / f64::from(STEPS);
        DEEPEST * share * share * share
    };
    let mut added = 0.0;
    if apart(0.0) > limit {
        let Some(first) = (1..=STEPS).find(|&index| apart(step(index)) <= limit) else {
            return Err(Error::no_solution("limit", limit, apart(DEEPEST), f64::NAN));
        };
        let (mut shows, mut hidden) = (step(first - 1), step(first));
        loop {
            let middle = shows + (hidden - shows) / 2.0;
            if middle <= shows || middle >= hidden {
                break;
            }
            if apart(middle) > limit {
                shows = middle;
            } else {
                hidden = middle;
            }
        }
        added = hidden;
    }
    Ok(CoverMark {
        now: apart(0.0),
        depth: added,
        ground_after: returned(ground + added),
        mark_after: returned(mark + added),
        after: apart(added),
    })
}

#[inline]
fn check_reflectance(argument: &'static str, value: f64) -> Result<f64, Error> {
    Error::check(argument, value, 0.001, 1.0)
}

#[inline]
fn depth(reflectance: f64) -> f64 {
    let lost = 1.0 - reflectance;
    lost * lost / (2.0 * reflectance)
}

#[inline]
fn returned(depth: f64) -> f64 {
    1.0 / (1.0 + depth + libm::sqrt(depth * depth + 2.0 * depth))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_reflectance_comes_back_from_its_depth() {
        for share in [0.001, 0.01, 0.2, 0.5, 0.99, 1.0] {
            let back = reflectance(k_over_s(share).unwrap()).unwrap();
            approx::assert_relative_eq!(back, share, max_relative = 1e-13);
        }
    }

    #[test]
    fn a_mark_covered_shows_no_more_than_asked_and_a_shade_less_shows_more() {
        for (ground, mark) in [(0.55, 0.42), (0.8, 0.7), (0.3, 0.6), (0.95, 0.2)] {
            for limit in [0.5, 1.0, 3.0] {
                let Ok(covered) = cover_mark(ground, mark, limit) else {
                    continue;
                };
                assert!(covered.after <= limit);
                let less = covered.depth * (1.0 - 1e-6);
                let grey = |r: f64| lightness(returned(depth(r) + less));
                let shows = difference([grey(ground), 0.0, 0.0], [grey(mark), 0.0, 0.0]);
                assert!(covered.depth == 0.0 || shows > limit);
            }
        }
    }
}
