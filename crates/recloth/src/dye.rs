//! Plant dyes and their binders: always from a low to a high, for the stuff itself varies.

use crate::Error;
use crate::doubt::{
    HOT_BATH, LABEL_FIRST, OWF_LARGE, PERCENT_SMALL, POWDER, STRENGTH_BEYOND_USUAL, when,
};
use crate::wet::{mass_doubts, pick_up_doubts};

/// Solids of a binder laid on cloth.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BinderSolids {
    /// Solids in the diluted binder, least (%).
    pub bath_low_pct: f64,
    /// Solids in the diluted binder, most (%).
    pub bath_high_pct: f64,
    /// Solids on weight of fibre after all dips, least (%).
    pub owf_low_pct: f64,
    /// Solids on weight of fibre after all dips, most (%).
    pub owf_high_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.
///
/// `bath = solids / (1 + parts)`; each dip, dried between, leaves `bath · pick_up / 100` on weight of fibre. Homemade soymilk
/// holds about 10 % of bean, bought 3 to 6 % of solids: the two are not the same measure, so read the label. A binder of
/// food goes off: make it fresh, keep it cool, throw it away when it smells, and tell those who have an allergy to it. Solids
/// outside 0.1 to 20 % and a pick-up below 10 % are doubted.
///
/// | argument        | unit  | range                     | default | meaning                                    |
/// |-----------------|-------|---------------------------|---------|--------------------------------------------|
/// | `low_pct`       | %     | 0.01..=50                 | -       | solids of the binder undiluted, least      |
/// | `high_pct`      | %     | 0.01..=50, >= low_pct     | -       | solids of the binder undiluted, most       |
/// | `parts_water`   | 1     | 0..=100                   | -       | parts of water to one of binder            |
/// | `pick_up_pct`   | %     | 1..=500                   | -       | liquor held after wringing, on dry mass    |
/// | `dips`          | count | 1..=50                    | -       | dips, dried between                        |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `high_pct` when it is less than `low_pct`.
///
/// # Source
/// Arithmetic. Strengths and 1 part to 5 of water: vickifearon.com; rachelbakewell; tondro.com, 2009. Where doubts begin:
/// common practice, no source.
///
/// # Examples
/// ```
/// use recloth::dye::binder_solids;
/// let coat = binder_solids(3.0, 6.0, 5.0, 90.0, 4)?;
/// assert!((coat.owf_low_pct - 1.8).abs() < 1e-12 && (coat.owf_high_pct - 3.6).abs() < 1e-12);
/// assert_eq!(binder_solids(6.0, 3.0, 5.0, 90.0, 4).unwrap_err().argument(), "high_pct");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn binder_solids(
    low_pct: f64,
    high_pct: f64,
    parts_water: f64,
    pick_up_pct: f64,
    dips: u32,
) -> Result<BinderSolids, Error> {
    let low = Error::check("low_pct", low_pct, 0.01, 50.0)?;
    let high = Error::check("high_pct", high_pct, 0.01, 50.0)?;
    let parts = Error::check("parts_water", parts_water, 0.0, 100.0)?;
    let pick_up = Error::check("pick_up_pct", pick_up_pct, 1.0, 500.0)?;
    let dips = f64::from(Error::check_count("dips", dips, 1, 50)?);
    if high < low {
        return Err(Error::no_solution("high_pct", high, low, f64::NAN));
    }
    let (bath_low_pct, bath_high_pct) = (low / (1.0 + parts), high / (1.0 + parts));
    let laid = |bath: f64| bath * pick_up / 100.0 * dips;
    Ok(BinderSolids {
        bath_low_pct,
        bath_high_pct,
        owf_low_pct: laid(bath_low_pct),
        owf_high_pct: laid(bath_high_pct),
        doubts: pick_up_doubts(pick_up)
            | when(low < 0.1, PERCENT_SMALL)
            | when(high > 20.0, STRENGTH_BEYOND_USUAL),
        cautions: LABEL_FIRST,
    })
}

/// How plant matter is when it is weighed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[repr(i32)]
pub enum Basis {
    /// Fresh, or frozen fresh: with its water.
    Fresh = 0,
    /// Dried.
    Dry = 1,
}

/// Plant matter to collect.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlantDyestuff {
    /// Least to weigh out, as it is at hand (g).
    pub low_g: f64,
    /// Most to weigh out, as it is at hand (g).
    pub high_g: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Plant matter for a dye bath, as a range, from a recipe weighed fresh or dry.
///
/// `mass · pct / 100`, low and high; where the recipe weighs it otherwise than it is at hand, turned by the range of fresh
/// to dry. Frozen counts as fresh. Season, soil, part of the plant and water decide the colour more than the scale: dye a
/// swatch. More extractions of the same matter give paler baths of another hue, so they are not added up here. Not every
/// plant is harmless: know what it is, never cook it in vessels for food. Below 1 %, above 100 % of what is dry at hand, and
/// for goods of less than 2 g, there are doubts.
///
/// | argument             | unit   | range                      | default | meaning                                    |
/// |----------------------|--------|----------------------------|---------|--------------------------------------------|
/// | `mass_g`             | g      | 0.01..=1e6                 | -       | dry mass of the goods                      |
/// | `low_pct`            | %      | 0.1..=2000                 | -       | percentage on weight of fibre, least       |
/// | `high_pct`           | %      | 0.1..=2000, >= low_pct     | -       | percentage on weight of fibre, most        |
/// | `recipe`             | choice | -                          | -       | how the recipe weighs it                   |
/// | `at_hand`            | choice | -                          | -       | how it is at hand                          |
/// | `fresh_per_dry_low`  | 1      | 1..=20                     | 3       | grams fresh that dry to one, least         |
/// | `fresh_per_dry_high` | 1      | 1..=20, >= fresh_per_dry_low | 8     | grams fresh that dry to one, most          |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming the high of a range that is less than its low.
///
/// # Source
/// Arithmetic. Percentages: E. M. Mairet, *A Book on Vegetable Dyes*, 1916 (madder 50 % on wool, bark 100 %); twice the
/// fibre's mass of fresh leaves: northernwisconsin.com. 3 to 8 g fresh to one dry: from memory, common practice; weigh,
/// dry and weigh again to know yours.
///
/// # Examples
/// ```
/// use recloth::dye::{Basis, plant_dyestuff};
/// let leaves = plant_dyestuff(400.0, 50.0, 100.0, Basis::Dry, Basis::Fresh, 3.0, 8.0)?;
/// assert_eq!((leaves.low_g, leaves.high_g), (600.0, 3200.0));
/// let error = plant_dyestuff(400.0, 100.0, 50.0, Basis::Dry, Basis::Dry, 3.0, 8.0).unwrap_err();
/// assert_eq!(error.argument(), "high_pct");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn plant_dyestuff(
    mass_g: f64,
    low_pct: f64,
    high_pct: f64,
    recipe: Basis,
    at_hand: Basis,
    fresh_per_dry_low: f64,
    fresh_per_dry_high: f64,
) -> Result<PlantDyestuff, Error> {
    let mass_g = Error::check("mass_g", mass_g, 0.01, 1e6)?;
    let low = Error::check("low_pct", low_pct, 0.1, 2000.0)?;
    let high = Error::check("high_pct", high_pct, 0.1, 2000.0)?;
    let wet_low = Error::check("fresh_per_dry_low", fresh_per_dry_low, 1.0, 20.0)?;
    let wet_high = Error::check("fresh_per_dry_high", fresh_per_dry_high, 1.0, 20.0)?;
    if high < low {
        return Err(Error::no_solution("high_pct", high, low, f64::NAN));
    }
    if wet_high < wet_low {
        let argument = "fresh_per_dry_high";
        return Err(Error::no_solution(argument, wet_high, wet_low, f64::NAN));
    }
    let (low, high) = (mass_g * low / 100.0, mass_g * high / 100.0);
    let (low_g, high_g) = match (recipe, at_hand) {
        (Basis::Dry, Basis::Fresh) => (low * wet_low, high * wet_high),
        (Basis::Fresh, Basis::Dry) => (low / wet_high, high / wet_low),
        (Basis::Fresh, Basis::Fresh) | (Basis::Dry, Basis::Dry) => (low, high),
    };
    // More than the goods weigh is only usual for matter weighed fresh.
    let large = at_hand == Basis::Dry && high_g > mass_g;
    Ok(PlantDyestuff {
        low_g,
        high_g,
        doubts: mass_doubts(mass_g) | when(large, OWF_LARGE) | when(low_pct < 1.0, PERCENT_SMALL),
        cautions: LABEL_FIRST | POWDER | HOT_BATH,
    })
}
