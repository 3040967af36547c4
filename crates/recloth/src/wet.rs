//! Baths: liquor and what goes into it.

use crate::Error;
use crate::doubt::{
    BATH_RATIO, BATHS_DIFFER, CHLORINE_ALONE, HEAT_BEYOND_USUAL, HOT_BATH, LABEL_FIRST, MASS_SMALL,
    OWF_LARGE, PERCENT_SMALL, POWDER, SHARE_LARGE, STRENGTH_BEYOND_USUAL, VOLUME_SMALL, when,
};

/// Doubts on a mass of goods: a swatch weighs some grams.
#[inline]
pub(crate) fn mass_doubts(mass_g: f64) -> u64 {
    when(mass_g < 2.0, MASS_SMALL)
}

/// Doubts on a liquor ratio.
#[inline]
fn ratio_doubts(ratio: f64) -> u64 {
    when(!(3.0..=40.0).contains(&ratio), BATH_RATIO)
}

/// Doubts on a pick-up: cloth spun dry still holds more than a tenth of its mass.
#[inline]
pub(crate) fn pick_up_doubts(pick_up_pct: f64) -> u64 {
    when(pick_up_pct > 0.0 && pick_up_pct < 10.0, PERCENT_SMALL)
}

/// What goes into a bath.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Owf {
    /// Mass to weigh out (g).
    pub amount_g: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Mass of a dye, mordant or assistant from its percentage on weight of fibre.
///
/// `amount = mass · pct / 100`, the mass being that of the dry goods. Say of a plant dyestuff whether it is weighed
/// fresh, frozen or dry: the percentages differ by several times. Not for bleach, whose strength and time decide. Above 100 %
/// or below 0.1 %, and for goods of less than 2 g, there are doubts.
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
/// E. M. Mairet, *A Book on Vegetable Dyes*, 1916, and *Vegetable Dyes*, 1924 (recipes by weight of wool and cotton). Where doubts begin: common practice, no source.
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
#[inline]
pub fn owf(mass_g: f64, pct: f64) -> Result<Owf, Error> {
    let mass_g = Error::check("mass_g", mass_g, 0.01, 1e6)?;
    let pct = Error::check("pct", pct, 0.0, 1000.0)?;
    Ok(Owf {
        amount_g: mass_g * pct / 100.0,
        doubts: mass_doubts(mass_g)
            | when(pct > 100.0, OWF_LARGE)
            | when(pct > 0.0 && pct < 0.1, PERCENT_SMALL),
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
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
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
#[inline]
pub fn bath_volume(mass_g: f64, ratio: f64) -> Result<BathVolume, Error> {
    let mass_g = Error::check("mass_g", mass_g, 0.01, 1e6)?;
    let ratio = Error::check("ratio", ratio, 1.0, 200.0)?;
    Ok(BathVolume {
        volume_ml: mass_g * ratio,
        doubts: mass_doubts(mass_g) | ratio_doubts(ratio),
        cautions: LABEL_FIRST | HOT_BATH,
    })
}

/// Goods shared out over several baths, no garment split.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Batches {
    /// Baths needed, shared out as given (count).
    pub batches: u32,
    /// Fewest that any sharing out could need, by total mass (count).
    pub least: u32,
    /// Most that the vessel takes at once (g).
    pub capacity_g: f64,
    /// Heaviest bath (g).
    pub heaviest_g: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Which garment goes into which bath, when one vessel does not hold all.
///
/// The vessel takes `vessel · fill / ratio` of dry goods. The heaviest garment is placed first, each into the first bath
/// with room (first fit decreasing); where `batches` is `least`, no sharing out needs fewer. A garment is never split, and
/// pieces that are to be one garment belong into one bath: give them as one mass. Two baths seldom match in shade.
///
/// | argument    | unit | range                           | default | meaning                                        |
/// |-------------|------|---------------------------------|---------|------------------------------------------------|
/// | `masses_g`  | g    | 0.01..=1e6 each, 1..=100 items  | -       | dry mass of each garment                       |
/// | `vessel_ml` | ml   | 1..=1e8                         | -       | what the vessel holds to the brim              |
/// | `ratio`     | 1    | 1..=200                         | -       | liquor to goods, by mass                       |
/// | `numbers`   | 1    | out, as masses_g                | -       | number of each garment's bath, from 1          |
/// | `fill`      | 1    | 0.1..=1                         | 0.75    | part of the vessel filled with liquor; the rest is goods and room to stir |
///
/// # Errors
/// `NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room` when `numbers` is too short. `NoSolution` naming
/// `vessel_ml` when it does not take the heaviest garment; its `min` is the least vessel that would.
///
/// # Source
/// Arithmetic; first fit decreasing is a usual method. Three quarters full is common practice, no source.
///
/// # Examples
/// ```
/// use recloth::{doubt::BATHS_DIFFER, wet::batches};
/// let mut numbers = [0.0; 4];
/// let plan = batches(&[170.0, 380.0, 120.0, 200.0], 12_000.0, 18.0, &mut numbers, 0.75)?;
/// assert_eq!((plan.batches, plan.least, plan.capacity_g), (2, 2, 500.0));
/// assert_eq!(numbers, [2.0, 1.0, 1.0, 2.0]);
/// assert_ne!(plan.cautions & BATHS_DIFFER, 0);
/// assert_eq!(batches(&[700.0], 12_000.0, 18.0, &mut numbers, 0.75).unwrap_err().argument(), "vessel_ml");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn batches(
    masses_g: &[f64],
    vessel_ml: f64,
    ratio: f64,
    numbers: &mut [f64],
    fill: f64,
) -> Result<Batches, Error> {
    let masses = Error::check_list("masses_g", masses_g, 0.01, 1e6, (1, 100))?;
    let vessel = Error::check("vessel_ml", vessel_ml, 1.0, 1e8)?;
    let ratio = Error::check("ratio", ratio, 1.0, 200.0)?;
    Error::check_room("numbers", numbers.len(), masses.len())?;
    let fill = Error::check("fill", fill, 0.1, 1.0)?;
    let capacity_g = vessel * fill / ratio;
    // Goods that fill the vessel exactly are not refused for a rounding.
    let room = capacity_g * (1.0 + 1e-11);
    let heaviest = masses.iter().fold(0.0, |most: f64, &mass| most.max(mass));
    if heaviest > room {
        let least = heaviest * ratio / fill;
        return Err(Error::no_solution("vessel_ml", vessel, least, f64::NAN));
    }

    let numbers = &mut numbers[..masses.len()];
    // 0 is a garment not yet placed.
    numbers.fill(0.0);
    let load = |numbers: &[f64], bath: f64| -> f64 {
        let of_bath = masses.iter().zip(numbers).filter(|(_, at)| **at == bath);
        of_bath.map(|(mass, _)| mass).sum()
    };
    let mut baths: u32 = 0;
    for _ in 0..masses.len() {
        let mut next: Option<usize> = None;
        for (index, &mass) in masses.iter().enumerate() {
            if numbers[index] == 0.0 && next.is_none_or(|heaviest| mass > masses[heaviest]) {
                next = Some(index);
            }
        }
        let Some(next) = next else { break };
        let first = (1..=baths).find(|&bath| load(numbers, f64::from(bath)) + masses[next] <= room);
        let bath = first.unwrap_or_else(|| {
            baths += 1;
            baths
        });
        numbers[next] = f64::from(bath);
    }
    let heaviest_g = (1..=baths).fold(0.0, |most: f64, bath| {
        most.max(load(numbers, f64::from(bath)))
    });
    let total: f64 = masses.iter().sum();
    Ok(Batches {
        batches: baths,
        least: libm::ceil(total / room).max(1.0) as u32,
        capacity_g,
        heaviest_g,
        doubts: mass_doubts(total) | ratio_doubts(ratio),
        cautions: LABEL_FIRST | HOT_BATH | when(baths > 1, BATHS_DIFFER),
    })
}

/// One liquor shared over several baths.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LiquorShares {
    /// All baths together, topped up (ml).
    pub bath_ml: f64,
    /// Fresh water to top all of them up (ml).
    pub water_ml: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// A pooled liquor shared by dry mass, and the water that brings every bath to one liquor ratio.
///
/// `share = pooled · mass / (sum of masses)`, topped up to `mass · ratio`. So all goods have the same dye for their mass in
/// the same liquor; they still seldom match, as no two baths heat alike.
///
/// | argument     | unit | range                           | default | meaning                                |
/// |--------------|------|---------------------------------|---------|----------------------------------------|
/// | `masses_g`   | g    | 0.01..=1e6 each, 1..=100 items  | -       | dry mass of each bath's goods          |
/// | `pooled_ml`  | ml   | 0..=1e9                         | -       | liquor to share                        |
/// | `ratio`      | 1    | 1..=200                         | -       | liquor to goods, by mass               |
/// | `shares_ml`  | ml   | out, as masses_g                | -       | pooled liquor for each bath            |
/// | `waters_ml`  | ml   | out, as masses_g                | -       | water added to each bath               |
///
/// # Errors
/// `NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room`. `NoSolution` naming `pooled_ml` when there is more of
/// it than the ratio asks for.
///
/// # Source
/// Proportion. `tests/vectors/liquor_shares.csv` has a hand-worked row.
///
/// # Examples
/// ```
/// use recloth::wet::liquor_shares;
/// let (mut shares, mut waters) = ([0.0; 2], [0.0; 2]);
/// let plan = liquor_shares(&[380.0, 170.0], 7000.0, 20.0, &mut shares, &mut waters)?;
/// assert!((shares[0] - 4836.36).abs() < 0.01 && (shares[1] - 2163.64).abs() < 0.01);
/// assert_eq!(plan.bath_ml, 11_000.0);
/// let error = liquor_shares(&[380.0], 9000.0, 20.0, &mut shares, &mut waters).unwrap_err();
/// assert_eq!(error.argument(), "pooled_ml");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn liquor_shares(
    masses_g: &[f64],
    pooled_ml: f64,
    ratio: f64,
    shares_ml: &mut [f64],
    waters_ml: &mut [f64],
) -> Result<LiquorShares, Error> {
    let masses = Error::check_list("masses_g", masses_g, 0.01, 1e6, (1, 100))?;
    let pooled = Error::check("pooled_ml", pooled_ml, 0.0, 1e9)?;
    let ratio = Error::check("ratio", ratio, 1.0, 200.0)?;
    Error::check_room("shares_ml", shares_ml.len(), masses.len())?;
    Error::check_room("waters_ml", waters_ml.len(), masses.len())?;
    let total: f64 = masses.iter().sum();
    let bath_ml = total * ratio;
    if pooled > bath_ml {
        return Err(Error::no_solution("pooled_ml", pooled, 0.0, bath_ml));
    }
    for (index, &mass) in masses.iter().enumerate() {
        shares_ml[index] = pooled * (mass / total);
        waters_ml[index] = (mass * ratio - shares_ml[index]).max(0.0);
    }
    Ok(LiquorShares {
        bath_ml,
        water_ml: bath_ml - pooled,
        doubts: mass_doubts(total) | ratio_doubts(ratio),
        cautions: LABEL_FIRST | HOT_BATH | when(masses.len() > 1, BATHS_DIFFER),
    })
}

/// Several liquors of the same stuff poured together.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PooledStrength {
    /// Strength, in the unit of the strengths given (%).
    pub strength_pct: f64,
    /// Volume (ml).
    pub volume_ml: f64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Strength of several liquors of one and the same stuff poured together.
///
/// `strength = sum(volume · strength) / sum(volume)`. Only for liquors of the same dye, mordant or binder: nothing is ever
/// poured to bleach, and unlike baths are not mixed to be rid of them.
///
/// | argument        | unit | range                         | default | meaning                         |
/// |-----------------|------|-------------------------------|---------|---------------------------------|
/// | `volumes_ml`    | ml   | 0.01..=1e8 each, 1..=100 items | -      | volume of each liquor           |
/// | `strengths_pct` | %    | 0..=100 each, as volumes_ml   | -       | strength of each                |
///
/// # Errors
/// `NotFinite`, `OutOfRange` or `Count`, naming the argument.
///
/// # Source
/// Balance of mass, volumes taken to add up.
///
/// # Examples
/// ```
/// use recloth::wet::pooled_strength;
/// let pooled = pooled_strength(&[4000.0, 3000.0], &[0.5, 1.2])?;
/// assert!((pooled.strength_pct - 0.8).abs() < 1e-12);
/// assert_eq!(pooled_strength(&[4000.0], &[-1.0]).unwrap_err().argument(), "strengths_pct");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn pooled_strength(volumes_ml: &[f64], strengths_pct: &[f64]) -> Result<PooledStrength, Error> {
    let volumes = Error::check_list("volumes_ml", volumes_ml, 0.01, 1e8, (1, 100))?;
    let items = (volumes.len(), volumes.len());
    let strengths = Error::check_list("strengths_pct", strengths_pct, 0.0, 100.0, items)?;
    let volume_ml: f64 = volumes.iter().sum();
    let held: f64 = volumes.iter().zip(strengths).map(|(v, s)| v * s).sum();
    Ok(PooledStrength {
        strength_pct: held / volume_ml,
        volume_ml,
        cautions: LABEL_FIRST | POWDER | CHLORINE_ALONE,
    })
}

/// Temperature of a bath put together.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct MixTemperature {
    /// Temperature before the pot and the air have taken their part (degC).
    pub temperature_c: f64,
    /// Volume of liquor (ml).
    pub volume_ml: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Temperature of liquors of several temperatures poured together, with the goods.
///
/// `T = sum(m c T) / sum(m c)`, water and liquor at 4.18 J/(g °C) and a gram a millilitre. What the vessel takes is left
/// out, so the bath comes out nearer the room's temperature than this: measure it. Pour hot into cold, slowly. Goods warmer
/// than 40 °C are doubted (68 may be in Fahrenheit), and so is less than 50 ml in all.
///
/// | argument              | unit | range                          | default | meaning                             |
/// |-----------------------|------|--------------------------------|---------|-------------------------------------|
/// | `volumes_ml`          | ml   | 0.01..=1e8 each, 1..=100 items | -       | volume of each liquor               |
/// | `temperatures_c`      | degC | 0..=100 each, as volumes_ml    | -       | temperature of each                 |
/// | `goods_g`             | g    | 0..=1e6                        | 0       | dry mass of the goods               |
/// | `goods_temperature_c` | degC | 0..=100                        | 20      | temperature of the goods            |
/// | `goods_heat`          | 1    | 0.5..=4.5                      | 1.3     | specific heat of the goods, J/(g °C) |
///
/// # Errors
/// `NotFinite`, `OutOfRange` or `Count`, naming the argument.
///
/// # Source
/// Balance of heat. Cotton 1.22 to 1.35 J/(g °C): table of specific heats in a text on the physics of textile fibres. Water
/// 4.18: from memory. Wet goods: give the liquor they hold as one of the liquors. Where doubts begin: common practice, no
/// source.
///
/// # Examples
/// ```
/// use recloth::wet::mix_temperature;
/// let bath = mix_temperature(&[3000.0, 1000.0], &[20.0, 100.0], 0.0, 20.0, 1.3)?;
/// assert_eq!(bath.temperature_c, 40.0);
/// assert_eq!(mix_temperature(&[3000.0], &[120.0], 0.0, 20.0, 1.3).unwrap_err().argument(), "temperatures_c");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn mix_temperature(
    volumes_ml: &[f64],
    temperatures_c: &[f64],
    goods_g: f64,
    goods_temperature_c: f64,
    goods_heat: f64,
) -> Result<MixTemperature, Error> {
    const WATER_HEAT: f64 = 4.18;
    let volumes = Error::check_list("volumes_ml", volumes_ml, 0.01, 1e8, (1, 100))?;
    let items = (volumes.len(), volumes.len());
    let temperatures = Error::check_list("temperatures_c", temperatures_c, 0.0, 100.0, items)?;
    let goods_g = Error::check("goods_g", goods_g, 0.0, 1e6)?;
    let goods_c = Error::check("goods_temperature_c", goods_temperature_c, 0.0, 100.0)?;
    let goods_heat = Error::check("goods_heat", goods_heat, 0.5, 4.5)?;
    let volume_ml: f64 = volumes.iter().sum();
    let warmth: f64 = volumes.iter().zip(temperatures).map(|(v, t)| v * t).sum();
    // In water's measure: the goods count as this many grams of water.
    let goods = goods_g * goods_heat / WATER_HEAT;
    Ok(MixTemperature {
        temperature_c: (warmth + goods * goods_c) / (volume_ml + goods),
        volume_ml,
        doubts: when(goods_c > 40.0, HEAT_BEYOND_USUAL) | when(volume_ml < 50.0, VOLUME_SMALL),
        cautions: LABEL_FIRST | HOT_BATH,
    })
}

/// Liquor that goods carry out of a bath.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CarriedLiquor {
    /// Liquor carried (ml).
    pub carried_ml: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Liquor that goods carry out of a bath.
///
/// `carried = mass · pick_up / 100`, a litre taken as a kilogram. Weigh the goods dripping, drained and wrung: that is the
/// pick-up, and it differs by several times. It decides how often to rinse. Cloth spun dry holds more than 10 %, so less is
/// doubted. Let hot goods cool before wringing.
///
/// | argument      | unit | range      | default | meaning                                       |
/// |---------------|------|------------|---------|-----------------------------------------------|
/// | `mass_g`      | g    | 0.01..=1e6 | -       | dry mass of the goods                         |
/// | `pick_up_pct` | %    | 0..=1000   | -       | liquor held, on the dry mass                  |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Definition of pick-up. `tests/vectors/carried_liquor.csv` has hand-worked rows. Where doubts begin: common practice, no
/// source.
///
/// # Examples
/// ```
/// use recloth::wet::carried_liquor;
/// assert_eq!(carried_liquor(380.0, 90.0)?.carried_ml, 342.0);
/// assert_eq!(carried_liquor(380.0, -90.0).unwrap_err().argument(), "pick_up_pct");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn carried_liquor(mass_g: f64, pick_up_pct: f64) -> Result<CarriedLiquor, Error> {
    let mass_g = Error::check("mass_g", mass_g, 0.01, 1e6)?;
    let pick_up_pct = Error::check("pick_up_pct", pick_up_pct, 0.0, 1000.0)?;
    Ok(CarriedLiquor {
        carried_ml: mass_g * pick_up_pct / 100.0,
        doubts: mass_doubts(mass_g) | pick_up_doubts(pick_up_pct),
        cautions: LABEL_FIRST | HOT_BATH,
    })
}

/// Rinses, as a range.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Rinses {
    /// Rinses where the goods carry least (count).
    pub rinses_low: u32,
    /// Rinses where the goods carry most (count).
    pub rinses_high: u32,
    /// Share of the first liquor left after the most rinses, where the goods carry most (1).
    pub left: f64,
    /// Fresh water for the most rinses (ml).
    pub water_ml: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Most rinses counted: beyond this, wring better or take more water.
const MOST_RINSES: u32 = 100;

/// Rinses that thin the liquor carried over to a share of what it was, as a range.
///
/// Each rinse leaves `carried / (carried + fresh)` of it. What the goods carry between rinses is the main term and is never
/// known well: give a low and a high. It tells of the liquor between the fibres only; what the fibre itself holds leaves
/// in its own time, so rinse until the water runs clear, or has no smell, whatever is printed here. Less fresh water than the
/// goods carry is doubted (litres?), and so is a share above a half (1 for 1 %?). The first rinse after a hot bath is warm.
///
/// | argument          | unit | range                     | default | meaning                                  |
/// |-------------------|------|---------------------------|---------|------------------------------------------|
/// | `carried_low_ml`  | ml   | 0.01..=1e7                | -       | least liquor carried from bath to bath   |
/// | `carried_high_ml` | ml   | 0.01..=1e7, >= carried_low_ml | -   | most liquor carried                      |
/// | `fresh_ml`        | ml   | 0.01..=1e8                | -       | fresh water each rinse                   |
/// | `share_left`      | 1    | 1e-9..=1                  | 0.01    | share of the liquor that may be left     |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `carried_high_ml` when it is less than the low;
/// naming `fresh_ml` when more than 100 rinses would be needed.
///
/// # Source
/// Balance of mass, each rinse fully mixed. `tests/vectors/rinses.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::wet::rinses;
/// let plan = rinses(300.0, 1000.0, 5000.0, 0.01)?;
/// assert_eq!((plan.rinses_low, plan.rinses_high), (2, 3));
/// assert_eq!(rinses(300.0, 1000.0, 0.0, 0.01).unwrap_err().argument(), "fresh_ml");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn rinses(
    carried_low_ml: f64,
    carried_high_ml: f64,
    fresh_ml: f64,
    share_left: f64,
) -> Result<Rinses, Error> {
    let low = Error::check("carried_low_ml", carried_low_ml, 0.01, 1e7)?;
    let high = Error::check("carried_high_ml", carried_high_ml, 0.01, 1e7)?;
    let fresh = Error::check("fresh_ml", fresh_ml, 0.01, 1e8)?;
    let share_left = Error::check("share_left", share_left, 1e-9, 1.0)?;
    if high < low {
        return Err(Error::no_solution("carried_high_ml", high, low, f64::NAN));
    }
    // A share met but for a rounding is met.
    let enough = share_left * (1.0 + 1e-11);
    let count = |carried: f64| {
        let factor = carried / (carried + fresh);
        let (mut times, mut left) = (0, 1.0);
        while left > enough && times < MOST_RINSES {
            left *= factor;
            times += 1;
        }
        (times, left)
    };
    let (rinses_low, _) = count(low);
    let (rinses_high, left) = count(high);
    if left > enough {
        let factor = libm::pow(share_left, 1.0 / f64::from(MOST_RINSES));
        let least = high * (1.0 / factor - 1.0);
        return Err(Error::no_solution("fresh_ml", fresh, least, f64::NAN));
    }
    Ok(Rinses {
        rinses_low,
        rinses_high,
        left,
        water_ml: f64::from(rinses_high) * fresh,
        doubts: when(fresh < high, VOLUME_SMALL) | when(share_left > 0.5, SHARE_LARGE),
        cautions: LABEL_FIRST | HOT_BATH,
    })
}

/// A measure of stock solution.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct StockVolume {
    /// Stock solution to measure out (ml).
    pub stock_ml: f64,
    /// What that holds (g).
    pub amount_g: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Volume of a stock solution for a percentage on weight of fibre.
///
/// `stock = mass · pct / stock_pct`, the stock in grams in 100 ml. For dye, mordant or assistant; not for bleach. Usual is a
/// stock of 0.05 to 50; outside it, and as for [`owf`], there are doubts.
///
/// | argument    | unit | range       | default | meaning                                |
/// |-------------|------|-------------|---------|----------------------------------------|
/// | `mass_g`    | g    | 0.01..=1e6  | -       | dry mass of the goods                  |
/// | `pct`       | %    | 0..=1000    | -       | percentage on weight of fibre          |
/// | `stock_pct` | %    | 0.001..=100 | -       | grams in 100 ml of the stock           |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// R. Sohel, textile calculation pages, 2014-12 to 2015-04. Where doubts begin: common practice, no source.
///
/// # Examples
/// ```
/// use recloth::wet::stock_volume;
/// assert_eq!(stock_volume(5.0, 2.0, 0.5)?.stock_ml, 20.0);
/// assert_eq!(stock_volume(5.0, 2.0, 0.0).unwrap_err().argument(), "stock_pct");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn stock_volume(mass_g: f64, pct: f64, stock_pct: f64) -> Result<StockVolume, Error> {
    let goods = owf(mass_g, pct)?;
    let stock_pct = Error::check("stock_pct", stock_pct, 0.001, 100.0)?;
    Ok(StockVolume {
        stock_ml: 100.0 * goods.amount_g / stock_pct,
        amount_g: goods.amount_g,
        doubts: goods.doubts | stock_doubts(stock_pct),
        cautions: goods.cautions,
    })
}

/// Volume of a stock solution for so many grams in a litre of bath.
///
/// `stock = mass · ratio · grams / (10 · stock_pct)`: salt, soda and other assistants go by the bath, not by the goods. Usual
/// are up to 100 g of salt; more than 150 g in a litre, and a stock outside 0.05 to 50, are doubted.
///
/// | argument    | unit | range       | default | meaning                                |
/// |-------------|------|-------------|---------|----------------------------------------|
/// | `mass_g`    | g    | 0.01..=1e6  | -       | dry mass of the goods                  |
/// | `ratio`     | 1    | 1..=200     | -       | liquor to goods, by mass               |
/// | `grams`     | 1    | 0..=500     | -       | grams in a litre of bath               |
/// | `stock_pct` | %    | 0.001..=100 | -       | grams in 100 ml of the stock           |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// R. Sohel, textile calculation pages, 2014-12 and 2015-01. Where doubts begin: common practice, no source.
///
/// # Examples
/// ```
/// use recloth::wet::assistant_volume;
/// assert_eq!(assistant_volume(5.0, 10.0, 20.0, 25.0)?.stock_ml, 4.0);
/// assert_eq!(assistant_volume(5.0, 0.1, 20.0, 25.0).unwrap_err().argument(), "ratio");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn assistant_volume(
    mass_g: f64,
    ratio: f64,
    grams: f64,
    stock_pct: f64,
) -> Result<StockVolume, Error> {
    let bath = bath_volume(mass_g, ratio)?;
    let grams = Error::check("grams", grams, 0.0, 500.0)?;
    let stock_pct = Error::check("stock_pct", stock_pct, 0.001, 100.0)?;
    let amount_g = bath.volume_ml * grams / 1000.0;
    Ok(StockVolume {
        stock_ml: 100.0 * amount_g / stock_pct,
        amount_g,
        doubts: bath.doubts | stock_doubts(stock_pct) | when(grams > 150.0, STRENGTH_BEYOND_USUAL),
        cautions: bath.cautions | POWDER,
    })
}

/// Doubts on the strength of a stock: 0.01 may be a share, and little dissolves to more than half its water.
#[inline]
fn stock_doubts(stock_pct: f64) -> u64 {
    when(stock_pct < 0.05, PERCENT_SMALL) | when(stock_pct > 50.0, STRENGTH_BEYOND_USUAL)
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
            let all = list.iter().fold(0u64, |seen, known| seen | known.bit);
            assert_eq!(all.count_ones() as usize, list.len());
        }
    }
}
