//! Arcs, and cones unrolled.

use core::f64::consts::PI;

use crate::Error;
use crate::dust::{above, short_of};
use crate::hypotenuse::hypotenuse;

/// An arc drawn from its chord and its rise.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ArcFromRise {
    /// Radius of the arc (mm).
    pub radius: f64,
    /// Length along the arc (mm).
    pub length: f64,
    /// Angle from end to end, seen from the centre (deg).
    pub angle_deg: f64,
}

/// Radius and length of the curve that rises so far over its chord.
///
/// `radius = (chord² / 4 + rise²) / (2 · rise)`, angle `4 · atan(2 · rise / chord)`, length their product. For a waist,
/// hem or yoke edge on a panel there is: lay a ruler across its ends and measure the rise in the middle, where the curve
/// is near enough an arc. A rise above half the chord is more than a half ring.
///
/// | argument | unit | range     | default | meaning                                     |
/// |----------|------|-----------|---------|---------------------------------------------|
/// | `chord`  | mm   | 1..=1e5   | -       | straight from end to end                    |
/// | `rise`   | mm   | 0.1..=1e5 | -       | height of the curve over the chord's middle |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Plane geometry. *The Practical Designer*, women's volume, Rosenfeld 1918, lesson 73 has a waist so drafted; see
/// `tests/vectors/arc_from_rise.csv`.
///
/// # Examples
/// ```
/// use recloth::{arc::arc_from_rise, units::INCH};
/// let waist = arc_from_rise(12.5 * INCH, 1.5 * INCH)?;
/// assert!((waist.length / INCH - 12.975).abs() < 0.001);
/// assert_eq!(arc_from_rise(300.0, 0.0).unwrap_err().argument(), "rise");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn arc_from_rise(chord: f64, rise: f64) -> Result<ArcFromRise, Error> {
    let chord = Error::check("chord", chord, 1.0, 1e5)?;
    let rise = Error::check("rise", rise, 0.1, 1e5)?;
    let half = chord / 2.0;
    let radius = (half * half + rise * rise) / (2.0 * rise);
    let angle = 4.0 * libm::atan2(rise, half);
    Ok(ArcFromRise {
        radius,
        length: radius * angle,
        angle_deg: angle.to_degrees(),
    })
}

/// A cone, or a part of one between two level cuts, unrolled.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Frustum {
    /// From edge to edge along the cloth (mm).
    pub slant: f64,
    /// Radius of the upper, smaller edge, laid flat (mm).
    pub inner_radius: f64,
    /// Radius of the lower, larger edge, laid flat (mm).
    pub outer_radius: f64,
    /// Angle of the sector (deg).
    pub angle_deg: f64,
    /// Area of the sector, without allowances (mm2).
    pub area_mm2: f64,
}

/// Part of a ring that rolls up to a cone, or to a part of one, of given diameters and height.
///
/// `slant = √(((lower - upper) / 2)² + height²)`, `outer_radius = lower · slant / (lower - upper)`, `inner_radius = upper ·
/// slant / (lower - upper)`, `angle = 180° · (lower - upper) / slant`. Hats, shades, flared cuffs and the tops of bags
/// are measured so; where the edges and the slant are measured along the cloth use
/// [`shaped_band`](crate::band::shaped_band), which is the same ring.
///
/// | argument         | unit | range                     | default | meaning                                  |
/// |------------------|------|---------------------------|---------|------------------------------------------|
/// | `lower_diameter` | mm   | 1..=1e5                   | -       | diameter of the larger end               |
/// | `upper_diameter` | mm   | 0..=1e5, < lower_diameter | -       | diameter of the smaller end; 0 is a cone |
/// | `height`         | mm   | 0..=1e5                   | -       | from end to end, straight up             |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `upper_diameter` when it is not the smaller: turn
/// the shape over, and a tube of two equal ends is a rectangle.
///
/// # Source
/// E. M. Longfield, *Sheet Metal Drafting*, 1921 (slant height; lateral area by half the sum of the circumferences);
/// Math Forum, *Building a Cone* (radii and angle). `tests/vectors/frustum.csv` has their numbers.
///
/// # Examples
/// ```
/// use recloth::{arc::frustum, units::INCH};
/// let shade = frustum(8.0 * INCH, 5.0 * INCH, 4.0 * INCH)?;
/// assert!((shade.outer_radius / INCH - 11.392).abs() < 0.001 && (shade.angle_deg - 126.4).abs() < 0.01);
/// assert_eq!(frustum(200.0, 200.0, 100.0).unwrap_err().argument(), "upper_diameter");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn frustum(lower_diameter: f64, upper_diameter: f64, height: f64) -> Result<Frustum, Error> {
    let lower = Error::check("lower_diameter", lower_diameter, 1.0, 1e5)?;
    let upper = Error::check("upper_diameter", upper_diameter, 0.0, 1e5)?;
    let height = Error::check("height", height, 0.0, 1e5)?;
    if upper >= lower {
        return Err(Error::no_solution(
            "upper_diameter",
            upper,
            0.0,
            short_of(lower),
        ));
    }
    let taper = lower - upper;
    let slant = hypotenuse(taper / 2.0, height);
    Ok(Frustum {
        slant,
        inner_radius: upper * slant / taper,
        outer_radius: lower * slant / taper,
        angle_deg: 180.0 * taper / slant,
        area_mm2: PI * (lower + upper) / 2.0 * slant,
    })
}

/// A hem level with a kept edge, and how far a straight cut would miss it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LevelLine {
    /// Radius of the line (mm).
    pub radius: f64,
    /// Straight across from end to end of the line (mm).
    pub chord: f64,
    /// How far the line bows below its chord (mm).
    pub sag: f64,
    /// Length along the line (mm).
    pub length: f64,
}

/// Line at an even height above a curved hem that is kept.
///
/// Height is measured from the hem on its radius, so the line is an arc about the same centre: `radius = hem_radius -
/// height`, its chord shrinks alike, and `sag = radius - √(radius² - chord² / 4)`. A straight cut through its ends would
/// leave the panel too long by the sag in the middle; one through its middle, too short at the sides. Radius and chord of
/// the hem come from [`arc_from_rise`]. The panel is a sector of less than half a ring.
///
/// | argument     | unit | range                        | default | meaning                                    |
/// |--------------|------|------------------------------|---------|--------------------------------------------|
/// | `hem_radius` | mm   | 1..=1e6                      | -       | radius of the hem that is kept             |
/// | `height`     | mm   | 0..=1e5, < hem_radius        | -       | height of the line above the hem           |
/// | `hem_chord`  | mm   | 1..=1e5                      | -       | straight across from end to end of the hem |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `height` when it reaches the centre; naming
/// `hem_chord` when it is more than twice the radius.
///
/// # Source
/// Plane geometry. `tests/vectors/level_line.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::arc::level_line;
/// let top = level_line(1500.0, 600.0, 500.0)?;
/// assert_eq!((top.radius, top.chord), (900.0, 300.0));
/// assert!((top.sag - 12.6).abs() < 0.05);
/// assert_eq!(level_line(1500.0, 1500.0, 500.0).unwrap_err().argument(), "height");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn level_line(hem_radius: f64, height: f64, hem_chord: f64) -> Result<LevelLine, Error> {
    let hem_radius = Error::check("hem_radius", hem_radius, 1.0, 1e6)?;
    let height = Error::check("height", height, 0.0, 1e5)?;
    let hem_chord = Error::check("hem_chord", hem_chord, 1.0, 1e5)?;
    if height >= hem_radius {
        return Err(Error::no_solution(
            "height",
            height,
            0.0,
            short_of(hem_radius),
        ));
    }
    if above(hem_chord, 2.0 * hem_radius) {
        let most = 2.0 * hem_radius;
        return Err(Error::no_solution("hem_chord", hem_chord, 1.0, most));
    }
    let radius = hem_radius - height;
    let half_angle = libm::asin((hem_chord / (2.0 * hem_radius)).min(1.0));
    // `radius (1 - cos)` without the difference, which loses the digits of a flat curve.
    let sine = libm::sin(half_angle / 2.0);
    Ok(LevelLine {
        radius,
        chord: hem_chord * radius / hem_radius,
        sag: 2.0 * radius * sine * sine,
        length: 2.0 * radius * half_angle,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::band::shaped_band;

    #[test]
    fn half_a_ring_rises_by_its_radius() {
        let half = arc_from_rise(200.0, 100.0).unwrap();
        approx::assert_abs_diff_eq!(half.radius, 100.0, epsilon = 1e-12);
        approx::assert_abs_diff_eq!(half.length, 100.0 * PI, epsilon = 1e-9);
    }

    #[test]
    fn a_frustum_is_the_shaped_band_of_its_girths() {
        let cone = frustum(203.2, 127.0, 101.6).unwrap();
        let band = shaped_band(203.2 * PI, 127.0 * PI, cone.slant).unwrap();
        approx::assert_relative_eq!(cone.outer_radius, band.outer_radius, max_relative = 1e-12);
        approx::assert_relative_eq!(cone.angle_deg, band.angle_deg, max_relative = 1e-12);
        approx::assert_relative_eq!(cone.area_mm2, band.area_mm2, max_relative = 1e-12);
    }

    #[test]
    fn a_line_at_no_height_is_the_hem() {
        let hem = arc_from_rise(500.0, 21.0).unwrap();
        let line = level_line(hem.radius, 0.0, 500.0).unwrap();
        approx::assert_abs_diff_eq!(line.sag, 21.0, epsilon = 1e-9);
        approx::assert_abs_diff_eq!(line.length, hem.length, epsilon = 1e-9);
    }
}
