//! Tiers, flounces and the breadths of cloth they are joined from.

use core::f64::consts::TAU;

use crate::Error;
use crate::dust::{above, short_of};
use crate::fullness::ratio_doubts;

/// Breadths of cloth sewn into a ring.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Breadths {
    /// Number of breadths, which is also the number of seams (count).
    pub count: u32,
    /// Way round when all are joined at their full width (mm).
    pub round: f64,
    /// What that is more than wanted: gather it in, or cut the last breadth narrower (mm).
    pub spare: f64,
}

/// Number of breadths of cloth that a ring of a given length takes.
///
/// Each breadth gives its width less an allowance at both sides, and as many seams as breadths close the ring:
/// `count = ceil(flat / (cloth_width - 2 · allowance))`.
///
/// | argument      | unit | range   | default | meaning                                              |
/// |---------------|------|---------|---------|------------------------------------------------------|
/// | `flat`        | mm   | 1..=1e6 | -       | way round before gathering or pleating               |
/// | `cloth_width` | mm   | 1..=1e5 | -       | width of the cloth, or length of each strip there is |
/// | `allowance`   | mm   | 0..=1e3 | 0       | seam allowance at each join                          |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the whole width, or so
/// much that there would be more than 100000 breadths.
///
/// # Source
/// Arithmetic. C. C. Ingalls, *Text-Book on Domestic Art*, 1911, "Kilted or Pleated Skirt" (4 yd round from 36 in cloth).
///
/// # Examples
/// ```
/// use recloth::{tier::breadths, units::INCH};
/// assert_eq!(breadths(144.0 * INCH, 36.0 * INCH, 0.0)?.count, 4);
/// assert_eq!(breadths(144.0 * INCH, 36.0 * INCH, 10.0)?.count, 5);
/// assert_eq!(breadths(3000.0, 20.0, 10.0).unwrap_err().argument(), "allowance");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn breadths(flat: f64, cloth_width: f64, allowance: f64) -> Result<Breadths, Error> {
    const MOST: f64 = 1e5;
    let flat = Error::check("flat", flat, 1.0, 1e6)?;
    let cloth_width = Error::check("cloth_width", cloth_width, 1.0, 1e5)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let largest = ((cloth_width - flat / MOST) / 2.0).max(0.0);
    let refused = Err(Error::no_solution(
        "allowance",
        allowance,
        0.0,
        short_of(largest),
    ));
    let each = cloth_width - 2.0 * allowance;
    if !above(each, 0.0) {
        return refused;
    }
    // Lengths given in inches may pass a whole number by a rounding.
    let count = libm::ceil(flat / each * (1.0 - 1e-12)).max(1.0);
    if count > MOST {
        return refused;
    }
    let round = count * each;
    Ok(Breadths {
        count: count as u32,
        round,
        spare: (round - flat).max(0.0),
    })
}

/// Tiers, each gathered to the one above.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Tiers {
    /// Way round the last tier, which is the hem (mm).
    pub hem: f64,
    /// Hem over the top edge (1).
    pub ratio: f64,
    /// All tiers together, as one strip (mm).
    pub strip: f64,
    /// `GATHERS_SCANT` when any tier is gathered by less than 1.2, `GATHERS_LARGE` by more than 4 (bits).
    pub doubts: u64,
}

/// Way round each tier of a tiered skirt.
///
/// Each tier is the one above times its ratio, the first the top edge times the first ratio, so that the fullness
/// multiplies: three tiers of 1.5 make a hem of 3.375 times the waist. How the length is shared over the tiers is
/// taste. Allowances and joins are extra ([`breadths`]).
///
/// | argument | unit | range                     | default | meaning                                     |
/// |----------|------|---------------------------|---------|---------------------------------------------|
/// | `top`    | mm   | 1..=1e5                   | -       | edge that the first tier is gathered to     |
/// | `ratios` | 1    | 1..=10 each, 1..=12 items | -       | tier over the one above, from the top down  |
/// | `flats`  | mm   | out, as ratios            | -       | way round each tier before gathering        |
///
/// # Errors
/// `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `ratios` when a tier would be
/// more than 10 km round.
///
/// # Source
/// Arithmetic; a flounce is 1 1/2 times its line by C. C. Ingalls, *Text-Book on Domestic Art*, 1911.
/// `tests/vectors/tiers.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::tier::tiers;
/// let mut flats = [0.0; 3];
/// let skirt = tiers(800.0, &[1.5, 1.5, 2.0], &mut flats)?;
/// assert_eq!((flats, skirt.hem, skirt.strip), ([1200.0, 1800.0, 3600.0], 3600.0, 6600.0));
/// assert_eq!(tiers(800.0, &[0.9], &mut flats).unwrap_err().argument(), "ratios");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn tiers(top: f64, ratios: &[f64], flats: &mut [f64]) -> Result<Tiers, Error> {
    const LONGEST: f64 = 1e7;
    let top = Error::check("top", top, 1.0, 1e5)?;
    let ratios = Error::check_list("ratios", ratios, 1.0, 10.0, (1, 12))?;
    Error::check_room("flats", flats.len(), ratios.len())?;
    let mut hem = top;
    for (index, &ratio) in ratios.iter().enumerate() {
        if hem * ratio > LONGEST {
            let most = LONGEST / hem;
            return Err(Error::no_solution("ratios", ratio, 1.0, most).at_index(index));
        }
        hem *= ratio;
    }
    let (mut hem, mut strip, mut doubts) = (top, 0.0, 0);
    for (place, &ratio) in flats.iter_mut().zip(ratios) {
        hem *= ratio;
        strip += hem;
        *place = hem;
        doubts |= ratio_doubts(ratio);
    }
    Ok(Tiers {
        hem,
        ratio: hem / top,
        strip,
        doubts,
    })
}

/// A flounce cut from rings.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Flounce {
    /// Radius of the seam line that is sewn on (mm).
    pub inner_radius: f64,
    /// Radius of the finished hem (mm).
    pub outer_radius: f64,
    /// Finished hem of all rings joined (mm).
    pub hem: f64,
    /// Hem over edge: how much it ripples (1).
    pub ratio: f64,
    /// Side of the square of cloth that each ring takes, without hem allowance (mm).
    pub square: f64,
}

/// Rings for a flounce that lies flat along its edge and ripples at its hem.
///
/// Each full ring is cut open, and joined to the next or to itself: of its way round it loses an allowance at both cuts.
/// `inner_radius = (edge / rings + 2 · allowance) / 2π`, `hem = rings · (2π · outer_radius - 2 · allowance)`. More rings
/// make it fuller, with a smaller hole. The seam's own allowance lies inside the inner radius and is snipped to lie
/// along the edge. For a part of one ring, see [`circle_skirt`](crate::skirt::circle_skirt).
///
/// | argument    | unit  | range   | default | meaning                                              |
/// |-------------|-------|---------|---------|------------------------------------------------------|
/// | `edge`      | mm    | 1..=1e6 | -       | edge that the flounce is sewn to, all round          |
/// | `depth`     | mm    | 1..=1e4 | -       | finished depth, seam to hem                          |
/// | `rings`     | count | 1..=200 | -       | number of full rings                                 |
/// | `allowance` | mm    | 0..=100 | 0       | seam allowance at each cut                           |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arc length of a ring. `tests/vectors/flounce.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::tier::flounce;
/// let ripple = flounce(1200.0, 120.0, 3, 10.0)?;
/// assert!((ripple.inner_radius - 66.85).abs() < 0.005 && (ripple.ratio - 2.885).abs() < 0.001);
/// assert_eq!(flounce(1200.0, 0.0, 3, 10.0).unwrap_err().argument(), "depth");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn flounce(edge: f64, depth: f64, rings: u32, allowance: f64) -> Result<Flounce, Error> {
    let edge = Error::check("edge", edge, 1.0, 1e6)?;
    let depth = Error::check("depth", depth, 1.0, 1e4)?;
    let rings = f64::from(Error::check_count("rings", rings, 1, 200)?);
    let allowance = Error::check("allowance", allowance, 0.0, 100.0)?;
    let inner_radius = (edge / rings + 2.0 * allowance) / TAU;
    let outer_radius = inner_radius + depth;
    // The hem is the edge and what the depth adds: no difference of long ways round.
    let hem = edge + rings * TAU * depth;
    Ok(Flounce {
        inner_radius,
        outer_radius,
        hem,
        ratio: hem / edge,
        square: 2.0 * outer_radius,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_breadth_fewer_would_not_do() {
        for flat in [1.0, 899.0, 900.0, 901.0, 12345.6] {
            let ring = breadths(flat, 920.0, 10.0).unwrap();
            let joined = f64::from(ring.count) * 900.0;
            assert!(joined >= flat && (ring.count == 1 || joined - 900.0 < flat));
            assert_eq!(ring.spare, joined - flat);
        }
        let least = breadths(1e6, 20.0, 10.0).unwrap_err().max();
        assert!(breadths(1e6, 20.0, least - 1e-9).is_ok());
    }

    #[test]
    fn nothing_is_written_on_an_error() {
        let mut flats = [-1.0; 12];
        assert!(tiers(1e5, &[10.0; 4], &mut flats).is_err());
        assert_eq!(flats, [-1.0; 12]);
    }

    #[test]
    fn the_rings_of_a_flounce_make_its_edge() {
        let ripple = flounce(1200.0, 120.0, 3, 10.0).unwrap();
        let edge = 3.0 * (TAU * ripple.inner_radius - 20.0);
        let hem = 3.0 * (TAU * ripple.outer_radius - 20.0);
        approx::assert_abs_diff_eq!(edge, 1200.0, epsilon = 1e-9);
        approx::assert_abs_diff_eq!(hem, ripple.hem, epsilon = 1e-9);
    }
}
