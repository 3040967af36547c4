//! Body measures: sharing a girth over panels, and doubts on measures.
//!
//! Where the tape goes is where authors differ. The waist is midway between the lowest rib and the hip bone by ISO 8559-1,
//! where a belt settles by the trade, at the navel in the army survey of 2012 that stands behind the doubts; the hip tape
//! goes 5 to 7 in below the waist. So every measure here is the caller's own, taken where the garment is to sit.
//!
//! Lone measures betray a slip of the unit; pairs betray one measure taken twice, by half, or in the other's place. A
//! doubt is a question, never an error: bodies differ more than tables.

use crate::{
    Error,
    doubt::{
        BODY_LENGTH_LARGE, BODY_LENGTH_SMALL, FRONT_BACK_APART, GIRTH_LARGE, GIRTH_SMALL,
        HIP_FAR_OVER_WAIST, LIMB_SMALL, NECK_OVER_HALF_BUST, WAIST_OVER_HIP, when,
    },
    dust::{above, below, past, short_of},
};

/// One panel's share of a girth.
///
/// `share = (girth + ease) / parts`, inside the seams. Ease is negative in cloth that stretches.
///
/// For doubts on the girth see [`girth_doubts`].
///
/// | argument | unit  | range      | default | meaning                       |
/// |----------|-------|------------|---------|-------------------------------|
/// | `girth`  | mm    | 1..=1e5    | -       | girth of the body             |
/// | `ease`   | mm    | -1e4..=1e4 | 0       | what the garment has more     |
/// | `parts`  | count | 1..=64     | 4       | number of equal panels        |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `ease`: it takes the whole girth away.
///
/// # Returns
/// The width of each panel inside the seams (mm).
///
/// # Source
/// Arithmetic; `tests/vectors/share.csv` has published rows.
///
/// # Examples
/// ```
/// use recloth::body::share;
/// assert_eq!(share(1000.0, 60.0, 4)?, 265.0);
/// assert_eq!(share(1000.0, 60.0, 0).unwrap_err().argument(), "parts");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn share(girth: f64, ease: f64, parts: u32) -> Result<f64, Error> {
    let girth = Error::check("girth", girth, 1.0, 1e5)?;
    let ease = Error::check("ease", ease, -1e4, 1e4)?;
    let parts = f64::from(Error::check_count("parts", parts, 1, 64)?);
    if girth + ease <= 0.0 {
        return Err(Error::no_solution("ease", ease, past(-girth), f64::NAN));
    }
    Ok((girth + ease) / parts)
}

/// Width of the panels still to be made, when the others are given.
///
/// `remaining = (girth + ease - other_width) / parts + intake`, inside the seams: what the given panels leave of the
/// girth, shared over the rest, and the darts or pleats of each added.
///
/// For doubts on the girth see [`girth_doubts`].
///
/// | argument      | unit  | range      | default | meaning                                         |
/// |---------------|-------|------------|---------|-------------------------------------------------|
/// | `girth`       | mm    | 1..=1e5    | -       | girth of the body                               |
/// | `ease`        | mm    | -1e4..=1e4 | -       | what the garment has more                       |
/// | `other_width` | mm    | 0..=1e5    | -       | the given panels together, inside seams and darts |
/// | `parts`       | count | 1..=64     | 1       | number of panels still to be made, all equal    |
/// | `intake`      | mm    | 0..=1e4    | 0       | darts or pleats in each of them                 |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `ease`: it takes the whole girth away;
/// `other_width`: the given panels leave nothing.
///
/// # Returns
/// The width of each remaining panel inside the seams (mm).
///
/// # Source
/// Arithmetic; `tests/vectors/remaining_width.csv` has published rows.
///
/// # Examples
/// ```
/// use recloth::body::remaining_width;
/// // Waist 720 and ease 20; two fronts of 205 are kept; each of two backs has a dart of 25.
/// assert_eq!(remaining_width(720.0, 20.0, 2.0 * 205.0, 2, 25.0)?, 190.0);
/// let error = remaining_width(720.0, 20.0, 800.0, 2, 0.0).unwrap_err();
/// assert_eq!(error.to_string(), "other_width = 800 leaves no solution: it must be less than 740");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn remaining_width(
    girth: f64,
    ease: f64,
    other_width: f64,
    parts: u32,
    intake: f64,
) -> Result<f64, Error> {
    let girth = Error::check("girth", girth, 1.0, 1e5)?;
    let ease = Error::check("ease", ease, -1e4, 1e4)?;
    let other_width = Error::check("other_width", other_width, 0.0, 1e5)?;
    let parts = f64::from(Error::check_count("parts", parts, 1, 64)?);
    let intake = Error::check("intake", intake, 0.0, 1e4)?;
    let wanted = girth + ease;
    if wanted <= 0.0 {
        return Err(Error::no_solution("ease", ease, past(-girth), f64::NAN));
    }
    if !below(other_width, wanted) {
        return Err(Error::no_solution(
            "other_width",
            other_width,
            f64::NAN,
            short_of(wanted),
        ));
    }
    Ok((wanted - other_width) / parts + intake)
}

/// Doubts on the girth of a trunk: chest, waist or hip.
///
/// Below 300 mm (`GIRTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`GIRTH_LARGE`) taken twice.
///
/// | argument | unit | range   | default | meaning                     |
/// |----------|------|---------|---------|-----------------------------|
/// | `girth`  | mm   | 1..=1e5 | -       | girth of chest, waist or hip |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// The doubts (bits).
///
/// # Source
/// Thresholds are common practice, no source, set well outside the 5th and 95th percentiles of chest, waist and hip,
/// 710 to 1207 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007, 2014.
///
/// # Examples
/// ```
/// use recloth::{body::girth_doubts, doubt::GIRTH_SMALL};
/// assert_eq!(girth_doubts(710.0)?, 0);
/// assert_eq!(girth_doubts(71.0)?, GIRTH_SMALL);
/// assert!(girth_doubts(0.0).is_err());
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn girth_doubts(girth: f64) -> Result<u64, Error> {
    let girth = Error::check("girth", girth, 1.0, 1e5)?;
    Ok(trunk(girth))
}

/// Doubts on a girth of a trunk that is in range.
#[inline]
pub(crate) fn trunk(girth: f64) -> u64 {
    when(girth < 300.0, GIRTH_SMALL) | when(girth > 2000.0, GIRTH_LARGE)
}

/// Doubts on a girth that may be a limb's. Of wrists the 5th percentile of women is 138 mm (Gordon et al., 2014, as
/// above); a child's of 110 is from memory.
#[inline]
pub(crate) fn limb(girth: f64) -> u64 {
    when(girth < 110.0, LIMB_SMALL)
}

/// Doubts on a length of the body: back length, shoulder, sleeve, skirt.
///
/// Below 100 mm (`BODY_LENGTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`BODY_LENGTH_LARGE`) it is
/// longer than a tall person. A length over 100 cm given in centimetres passes unseen.
///
/// | argument | unit | range   | default | meaning              |
/// |----------|------|---------|---------|----------------------|
/// | `length` | mm   | 1..=1e5 | -       | a length of the body |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// The doubts (bits).
///
/// # Source
/// Thresholds are common practice, no source, set outside the 5th percentile of women's shoulder length, 120 mm, and the
/// 95th of men's stature, 1870 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*,
/// NATICK/TR-15/007, 2014.
///
/// # Examples
/// ```
/// use recloth::{body::body_length_doubts, doubt::BODY_LENGTH_SMALL};
/// assert_eq!(body_length_doubts(425.0)?, 0);
/// assert_eq!(body_length_doubts(42.5)?, BODY_LENGTH_SMALL);
/// assert!(body_length_doubts(-425.0).is_err());
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn body_length_doubts(length: f64) -> Result<u64, Error> {
    let length = Error::check("length", length, 1.0, 1e5)?;
    Ok(along_body(length))
}

/// Doubts on a length of the body that is in range.
#[inline]
pub(crate) fn along_body(length: f64) -> u64 {
    when(length < 100.0, BODY_LENGTH_SMALL) | when(length > 2000.0, BODY_LENGTH_LARGE)
}

/// Doubts on a waist and a hip together.
///
/// A waist above the hip (`WAIST_OVER_HIP`) may be the two in each other's place, and is also the shape of some bodies.
/// A hip more than 450 mm above the waist (`HIP_FAR_OVER_WAIST`) may be half a waist.
///
/// | argument | unit | range   | default | meaning        |
/// |----------|------|---------|---------|----------------|
/// | `waist`  | mm   | 1..=1e5 | -       | girth of waist |
/// | `hip`    | mm   | 1..=1e5 | -       | girth of hip   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// The doubts (bits).
///
/// # Source
/// Thresholds are common practice, no source. Hip less waist is 57 to 252 mm for women and -21 to 164 mm for men (5th and
/// 95th percentiles, from the data of Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*,
/// NATICK/TR-15/007, 2014; waist taken at the navel): more than one man in twenty has the first doubt.
///
/// # Examples
/// ```
/// use recloth::{body::waist_hip_doubts, doubt::WAIST_OVER_HIP};
/// assert_eq!(waist_hip_doubts(720.0, 980.0)?, 0);
/// assert_eq!(waist_hip_doubts(980.0, 720.0)?, WAIST_OVER_HIP);
/// assert_eq!(waist_hip_doubts(720.0, f64::NAN).unwrap_err().argument(), "hip");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn waist_hip_doubts(waist: f64, hip: f64) -> Result<u64, Error> {
    let waist = Error::check("waist", waist, 1.0, 1e5)?;
    let hip = Error::check("hip", hip, 1.0, 1e5)?;
    Ok(waist_and_hip(waist, hip))
}

/// Doubts on a waist and a hip that are in range, together.
#[inline]
fn waist_and_hip(waist: f64, hip: f64) -> u64 {
    when(waist > hip, WAIST_OVER_HIP) | when(above(hip - waist, 450.0), HIP_FAR_OVER_WAIST)
}

/// Doubts on the waist and the hip of a skirt, alone and together.
#[inline]
pub(crate) fn skirt(waist: f64, hip: f64) -> u64 {
    trunk(waist) | trunk(hip) | waist_and_hip(waist, hip)
}

/// Doubts on a front and a back at one level, together.
///
/// One more than one and a half times the other (`FRONT_BACK_APART`) may be whole against half.
///
/// | argument | unit | range   | default | meaning            |
/// |----------|------|---------|---------|--------------------|
/// | `front`  | mm   | 1..=1e5 | -       | width of the front |
/// | `back`   | mm   | 1..=1e5 | -       | width of the back  |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// The doubts (bits).
///
/// # Source
/// Common practice, no source: whole against half gives 2, and a threshold of 1.5 leaves room for a full bust or seat.
///
/// # Examples
/// ```
/// use recloth::{body::front_back_doubts, doubt::FRONT_BACK_APART};
/// assert_eq!(front_back_doubts(500.0, 440.0)?, 0);
/// assert_eq!(front_back_doubts(500.0, 220.0)?, FRONT_BACK_APART);
/// assert!(front_back_doubts(500.0, 0.0).is_err());
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn front_back_doubts(front: f64, back: f64) -> Result<u64, Error> {
    let front = Error::check("front", front, 1.0, 1e5)?;
    let back = Error::check("back", back, 1.0, 1e5)?;
    Ok(when(
        above(front, 1.5 * back) || above(back, 1.5 * front),
        FRONT_BACK_APART,
    ))
}

/// Doubts on a neck and a bust together.
///
/// A neck of more than half the bust (`NECK_OVER_HALF_BUST`) may be the two in each other's place, or half a bust.
///
/// | argument | unit | range   | default | meaning                |
/// |----------|------|---------|---------|------------------------|
/// | `neck`   | mm   | 1..=1e5 | -       | girth of neck          |
/// | `bust`   | mm   | 1..=1e5 | -       | girth of bust or chest |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// The doubts (bits).
///
/// # Source
/// Common practice, no source. The 95th percentile of neck is below half the 5th of chest, women 363 and 824 mm, men 443
/// and 922 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007, 2014.
///
/// # Examples
/// ```
/// use recloth::{body::neck_bust_doubts, doubt::NECK_OVER_HALF_BUST};
/// assert_eq!(neck_bust_doubts(340.0, 920.0)?, 0);
/// assert_eq!(neck_bust_doubts(340.0, 460.0)?, NECK_OVER_HALF_BUST);
/// assert!(neck_bust_doubts(0.5, 920.0).is_err());
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn neck_bust_doubts(neck: f64, bust: f64) -> Result<u64, Error> {
    let neck = Error::check("neck", neck, 1.0, 1e5)?;
    let bust = Error::check("bust", bust, 1.0, 1e5)?;
    Ok(when(neck > bust / 2.0, NECK_OVER_HALF_BUST))
}

/// How much larger a hip is than a waist.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HipWaistDrop {
    /// Hip less waist; negative where the waist is larger (mm).
    pub drop: f64,
    /// Doubts raised, as by `waist_hip_doubts` (bits).
    pub doubts: u64,
}

/// What the hip is larger than the waist, which may be less than nothing.
///
/// `drop = hip - waist`. On a body whose waist is the larger there is nothing to dart: panels hang straight from the waist, or
/// flare from the hip to it. What darts take in a panel there is follows from the panel, not from this
/// ([`dart_in_panel`](crate::dart::dart_in_panel)).
///
/// | argument | unit | range   | default | meaning        |
/// |----------|------|---------|---------|----------------|
/// | `hip`    | mm   | 1..=1e5 | -       | girth of hip   |
/// | `waist`  | mm   | 1..=1e5 | -       | girth of waist |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic. From the data of Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007: women
/// 57 to 252 mm, men -21 to 164 mm (5th and 95th percentiles), waist taken at the navel.
///
/// # Examples
/// ```
/// use recloth::{body::hip_waist_drop, doubt::WAIST_OVER_HIP};
/// assert_eq!(hip_waist_drop(980.0, 720.0)?.drop, 260.0);
/// let man = hip_waist_drop(1000.0, 1010.0)?;
/// assert_eq!((man.drop, man.doubts), (-10.0, WAIST_OVER_HIP));
/// assert_eq!(hip_waist_drop(980.0, 0.0).unwrap_err().argument(), "waist");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn hip_waist_drop(hip: f64, waist: f64) -> Result<HipWaistDrop, Error> {
    let hip = Error::check("hip", hip, 1.0, 1e5)?;
    let waist = Error::check("waist", waist, 1.0, 1e5)?;
    Ok(HipWaistDrop {
        drop: hip - waist,
        doubts: waist_and_hip(waist, hip),
    })
}
