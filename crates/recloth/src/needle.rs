//! Machine needles: sizes, blades, and the thread that goes with them.

use crate::Error;

/// Metric number of a machine needle from its US size.
///
/// `metric = 60 + 5 · (us_size - 8)`: 8 is 60, 11 is 75, 18 is 110. The number is the blade's diameter in hundredths of a
/// millimetre ([`needle_blade`]). From 19 up the two scales no longer run together, so these sizes are not offered; read the
/// packet.
///
/// | argument  | unit  | range  | default | meaning                       |
/// |-----------|-------|--------|---------|-------------------------------|
/// | `us_size` | count | 8..=18 | -       | the smaller number on a packet |
///
/// # Errors
/// `OutOfRange`, naming the argument.
///
/// # Returns
/// Metric number, hundredths of a millimetre (1).
///
/// # Source
/// apparelscience.com, needle number system; pairs as commonly printed on packets. `tests/vectors/needle_metric.csv` has
/// them all.
///
/// # Examples
/// ```
/// use recloth::needle::needle_metric;
/// assert_eq!(needle_metric(12)?, 80.0);
/// assert_eq!(needle_metric(80).unwrap_err().max(), 18.0);
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn needle_metric(us_size: u32) -> Result<f64, Error> {
    let us_size = Error::check_count("us_size", us_size, 8, 18)?;
    Ok(60.0 + 5.0 * (f64::from(us_size) - 8.0))
}

/// A machine needle's blade.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NeedleBlade {
    /// Diameter of the blade above the scarf (mm).
    pub blade: f64,
    /// Thickest thread that runs freely in its long groove (mm).
    pub thread: f64,
}

/// Blade of a machine needle, and the thickest thread for it, from its metric number.
///
/// `blade = metric / 100`, `thread = 0.4 · blade`. A thread too thick for its needle frays and skips; a needle too thick for
/// its cloth leaves holes that stay, which old seams of silk, leather and coated cloth show for ever. A broken needle can
/// fly: change a bent one at once.
///
/// | argument | unit  | range    | default | meaning                                              |
/// |----------|-------|----------|---------|------------------------------------------------------|
/// | `metric` | count | 20..=300 | -       | the larger number on a packet, 80 of 80/12           |
///
/// # Errors
/// `OutOfRange`, naming the argument.
///
/// # Source
/// DIN 5325:1953 (the number), as told at apparelscience.com; a needle maker's dictionary, schmetzneedles.com, "long groove"
/// (thread at most 40 % of the needle).
///
/// # Examples
/// ```
/// use recloth::needle::needle_blade;
/// let fine = needle_blade(75)?;
/// assert_eq!((fine.blade, fine.thread), (0.75, 0.3));
/// assert_eq!(needle_blade(11).unwrap_err().argument(), "metric");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn needle_blade(metric: u32) -> Result<NeedleBlade, Error> {
    let metric = f64::from(Error::check_count("metric", metric, 20, 300)?);
    Ok(NeedleBlade {
        blade: metric / 100.0,
        // Not 0.4 times the blade, which would round twice.
        thread: metric / 250.0,
    })
}
