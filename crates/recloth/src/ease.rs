//! Wearing ease: what a garment has more than the body, as authors give it.

use crate::Error;
use crate::body::trunk;
use crate::units::INCH;

/// Where on a garment of woven cloth the ease is asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
#[repr(i32)]
pub enum EasePlace {
    /// The bust of a bodice or a dress.
    Bust = 0,
    /// The waist of a dress or a bodice.
    DressWaist = 1,
    /// The waist of a skirt or of trousers, which holds them up.
    SkirtWaist = 2,
    /// The hip of any garment.
    Hip = 3,
    /// The chest of a man's shirt, from fitted to classic.
    ShirtChest = 4,
}

/// Ease that authors give, from the least of them to the most.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WearingEase {
    /// The least that an author gives, all round (mm).
    pub low: f64,
    /// The most that an author gives, all round (mm).
    pub high: f64,
    /// Finished girth with the least (mm).
    pub garment_low: f64,
    /// Finished girth with the most (mm).
    pub garment_high: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Wearing ease of woven cloth, all round, as a range over the authors, and the girths it makes.
///
/// `garment = body + ease`. Ease is what is needed to breathe, sit and reach; what the style has more is taste. Authors differ by as much as an inch:
///
/// - bust: 1 1/2 to 2 in (Robinson), 2 1/2 in (one cited in an encyclopedia), 2 to 3 in (a tailor's notes);
/// - waist of a dress: 3/4 to 1 in, 1 in, 1 to 2 in, in that order;
/// - waist of a skirt or trousers: 1/2 to 3/4 in (Robinson; the others do not tell it apart);
/// - hip: 2 to 2 3/4 in, 3 in, 2 to 3 in;
/// - a man's shirt at the chest: 1 1/2 to 2 1/2 in fitted, up to 3 in classic (Robinson).
///
/// The best ease is that of a garment that fits: measure it and take the body's girth off. Thick cloth and a lining need
/// more, cloth that stretches less ([`negative_ease`](crate::stretch::negative_ease)).
///
/// A girth below 300 mm or above 2000 mm is doubted.
///
/// | argument | unit   | range   | default | meaning                  |
/// |----------|--------|---------|---------|--------------------------|
/// | `body`   | mm     | 1..=1e5 | -       | girth of the body there  |
/// | `place`  | choice | -       | -       | where it is asked        |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// S. Robinson, costume text, Central Washington University, ch. 16; an encyclopedia's article "Ease (sewing)", first of its
/// two cited sources; vintagetailor.blogspot.com, 2012. `tests/vectors/wearing_ease.csv` has each.
///
/// # Examples
/// ```
/// use recloth::{ease::{EasePlace, wearing_ease}, units::INCH};
/// let hip = wearing_ease(38.0 * INCH, EasePlace::Hip)?;
/// assert_eq!((hip.low, hip.high), (2.0 * INCH, 3.0 * INCH));
/// assert!((hip.garment_high - 41.0 * INCH).abs() < 1e-9);
/// assert_eq!(wearing_ease(0.0, EasePlace::Hip).unwrap_err().argument(), "body");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn wearing_ease(body: f64, place: EasePlace) -> Result<WearingEase, Error> {
    let body = Error::check("body", body, 1.0, 1e5)?;
    let (low, high) = match place {
        EasePlace::Bust | EasePlace::ShirtChest => (1.5, 3.0),
        EasePlace::DressWaist => (0.75, 2.0),
        EasePlace::SkirtWaist => (0.5, 0.75),
        EasePlace::Hip => (2.0, 3.0),
    };
    let (low, high) = (low * INCH, high * INCH);
    Ok(WearingEase {
        low,
        high,
        garment_low: body + low,
        garment_high: body + high,
        doubts: trunk(body),
    })
}
