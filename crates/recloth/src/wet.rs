//! Baths: liquor and what goes into it.

use crate::Error;
use crate::doubt::{BATH_RATIO, HOT_BATH, LABEL_FIRST, OWF_LARGE, POWDER};

/// What goes into a bath.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Owf {
    /// Mass to weigh out (g).
    pub amount_g: f64,
    /// Doubts raised (bits).
    pub doubts: u32,
    /// Cautions raised (bits).
    pub cautions: u32,
}

/// Mass of a dye, mordant or assistant from its percentage on weight of fibre.
///
/// `amount = mass · pct / 100`, the mass being that of the dry goods. Say of a plant dyestuff whether it is weighed
/// fresh, frozen or dry: the percentages differ by several times. Not for bleach, whose strength and time decide.
///
/// | argument | unit | range     | default | meaning                                     |
/// |----------|------|-----------|---------|---------------------------------------------|
/// | `mass_g` | g    | 0.01..=1e6 | -      | dry mass of the goods                       |
/// | `pct`    | %    | 0..=1000  | -       | percentage on weight of fibre               |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// E. M. Mairet, *A Book on Vegetable Dyes*, 1916, and *Vegetable Dyes*, 1924 (recipes by weight of wool and cotton).
///
/// # Examples
/// ```
/// use recloth::{doubt::POWDER, wet::owf};
/// let alum = owf(380.0, 15.0)?;
/// assert_eq!(alum.amount_g, 57.0);
/// assert_ne!(alum.cautions & POWDER, 0);
/// assert_eq!(owf(0.0, 15.0).unwrap_err().argument(), "mass_g");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn owf(mass_g: f64, pct: f64) -> Result<Owf, Error> {
    let mass_g = Error::check("mass_g", mass_g, 0.01, 1e6)?;
    let pct = Error::check("pct", pct, 0.0, 1000.0)?;
    Ok(Owf {
        amount_g: mass_g * pct / 100.0,
        doubts: if pct > 100.0 { OWF_LARGE } else { 0 },
        cautions: LABEL_FIRST | POWDER,
    })
}

/// A bath for goods of a given mass.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BathVolume {
    /// Volume of liquor (ml).
    pub volume_ml: f64,
    /// Doubts raised (bits).
    pub doubts: u32,
    /// Cautions raised (bits).
    pub cautions: u32,
}

/// Volume of a bath from the dry mass of goods and the liquor ratio.
///
/// `volume = mass · ratio`, a litre of liquor taken as a kilogram: 20 is 20 litres a kilogram, often written 1:20. The
/// vessel must hold more than this: the goods, and room to stir.
///
/// | argument | unit | range     | default | meaning                                     |
/// |----------|------|-----------|---------|---------------------------------------------|
/// | `mass_g` | g    | 0.01..=1e6 | -      | dry mass of the goods                       |
/// | `ratio`  | 1    | 1..=200   | -       | liquor to goods, by mass                    |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// R. Sohel, textile calculation pages, 2015 (5 g at 1:10 is 50 ml). The doubt's 3 to 40: the smallest ratio of an
/// equipment page and above the largest home recipe seen (37.6); common practice.
///
/// # Examples
/// ```
/// use recloth::wet::bath_volume;
/// assert_eq!(bath_volume(380.0, 20.0)?.volume_ml, 7600.0);
/// assert_eq!(bath_volume(380.0, 0.5).unwrap_err().argument(), "ratio");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn bath_volume(mass_g: f64, ratio: f64) -> Result<BathVolume, Error> {
    let mass_g = Error::check("mass_g", mass_g, 0.01, 1e6)?;
    let ratio = Error::check("ratio", ratio, 1.0, 200.0)?;
    let usual = (3.0..=40.0).contains(&ratio);
    Ok(BathVolume {
        volume_ml: mass_g * ratio,
        doubts: if usual { 0 } else { BATH_RATIO },
        cautions: LABEL_FIRST | HOT_BATH,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::doubt::{CAUTIONS, DOUBTS};

    #[test]
    fn every_bath_carries_its_cautions_whatever_the_numbers() {
        for mass in [0.01, 380.0, 1e6] {
            assert_eq!(owf(mass, 0.0).unwrap().cautions, LABEL_FIRST | POWDER);
            assert_eq!(
                bath_volume(mass, 1.0).unwrap().cautions,
                LABEL_FIRST | HOT_BATH
            );
        }
    }

    #[test]
    fn bits_are_distinct() {
        for list in [DOUBTS, CAUTIONS] {
            let all = list.iter().fold(0u32, |seen, known| seen | known.bit);
            assert_eq!(all.count_ones() as usize, list.len());
        }
    }
}
