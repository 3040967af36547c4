//! Skirts cut from part of a ring.

use core::f64::consts::TAU;

use crate::Error;

/// A skirt cut from part of a ring: where to set the compass, and how long the hem comes out.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CircleSkirt {
    /// Radius of the waist edge (mm).
    pub waist_radius: f64,
    /// Radius of the hem edge (mm).
    pub hem_radius: f64,
    /// Length of the hem edge (mm).
    pub hem_length: f64,
}

/// Radii of a skirt cut from part of a ring.
///
/// The waist edge is an arc: `waist = 2π · fraction · waist_radius`. A fraction above 1 is made of several sectors.
///
/// | argument   | unit | range     | default | meaning                                        |
/// |------------|------|-----------|---------|------------------------------------------------|
/// | `waist`    | mm   | 1..=1e5   | -       | finished waist edge, ease included             |
/// | `length`   | mm   | 0..=1e5   | -       | waist edge to hem edge, no allowances          |
/// | `fraction` | 1    | 0.01..=4  | 1       | part of a full ring: 0.5 is a half circle      |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arc length of a sector. `tests/vectors/circle_skirt.csv` has published and hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::{skirt::circle_skirt, units::CM};
/// let skirt = circle_skirt(71.0 * CM, 60.0 * CM, 0.5)?;
/// assert!((skirt.waist_radius - 226.0).abs() < 0.01);
/// assert!((skirt.hem_length - 2595.0).abs() < 0.1);
/// assert_eq!(circle_skirt(f64::NAN, 600.0, 1.0).unwrap_err().argument(), "waist");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn circle_skirt(waist: f64, length: f64, fraction: f64) -> Result<CircleSkirt, Error> {
    let waist = Error::check("waist", waist, 1.0, 1e5)?;
    let length = Error::check("length", length, 0.0, 1e5)?;
    let fraction = Error::check("fraction", fraction, 0.01, 4.0)?;
    let turn = TAU * fraction;
    let waist_radius = waist / turn;
    let hem_radius = waist_radius + length;
    Ok(CircleSkirt {
        waist_radius,
        hem_radius,
        hem_length: turn * hem_radius,
    })
}
