//! Chlorine bleach: how strong, how long, and how it is stopped. Nothing here answers without its cautions.
//!
//! What else is in the bath is asked for, and anything but water is refused: with acid, bleach gives chlorine gas, with
//! ammonia chloramines, with alcohol chloroform (Washington State Department of Health; NFPA, 2020), and peroxide cancels
//! it. Labels, local rules and qualified advice come before anything here.

use crate::Error;
use crate::doubt::{
    BEYOND_TESTED, CHLORINE_ALONE, CHLORINE_COLD, LABEL_FIRST, NEUTRALISER_APART, PERCENT_SMALL,
    PURITY_UNLIKELY, STRENGTH_BEYOND_USUAL, SWATCH_FIRST, TIME_BEYOND_USUAL, VOLUME_SMALL, when,
};
use crate::dust::past;
use crate::fibre::{Fibre, Finish, LONGEST_BLEACH_MIN, Swatch, refused, refuses_chlorine};

/// The cautions of every bleach bath.
const BLEACH: u64 = LABEL_FIRST | CHLORINE_COLD | CHLORINE_ALONE | SWATCH_FIRST;

/// Strongest bath offered, available chlorine (%): a public health unit's "strong" is 0.45.
const STRONGEST_PCT: f64 = 0.6;
/// Stronger than this is beyond what is usual (%).
const USUAL_PCT: f64 = 0.46;
/// What bottles of bleach hold, hypochlorite or available chlorine (%).
const USUAL_BOTTLE_PCT: core::ops::RangeInclusive<f64> = 1.0..=15.0;
/// Rinsed goods carry less than this (%): the strongest usual bath, thinned by one rinse in four times what they hold.
const USUAL_RINSED_PCT: f64 = 0.1;
/// Least volume of a bath; a swatch takes 75 ml (ml).
const LEAST_ML: f64 = 50.0;

#[inline]
fn bottle_doubts(pct: f64) -> u64 {
    when(!USUAL_BOTTLE_PCT.contains(&pct), STRENGTH_BEYOND_USUAL)
}

/// What else is in a bath, or was and has not been rinsed out of the goods and the vessel.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[repr(i32)]
pub enum InBath {
    /// Not known.
    Unknown = 0,
    /// Water and nothing else.
    WaterOnly = 1,
    /// An acid: vinegar, descaler, cleaners for toilets, drains or rust, a dishwasher's rinse.
    Acid = 2,
    /// Ammonia, many glass cleaners, urine.
    Ammonia = 3,
    /// Alcohol, spirit, sanitiser.
    Alcohol = 4,
    /// Peroxide or another oxygen bleach.
    Peroxide = 5,
    /// Thiosulfate, sulfite or another neutraliser.
    Neutraliser = 6,
    /// Anything else: detergent, dye, mordant.
    Other = 7,
}

/// Strength of a bottle of bleach.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AvailableChlorine {
    /// Available chlorine by mass (%).
    pub available_pct: f64,
    /// Available chlorine in grams in 100 ml, which the trade also calls percent (%).
    pub trade_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Available chlorine of bleach from the sodium hypochlorite on its label.
///
/// `available = NaOCl · 70.906 / 74.442`. Labels mix three percentages: sodium hypochlorite by mass, available chlorine by
/// mass, and grams of available chlorine in 100 ml; a bottle marked 10 or 12.5 usually means the last. Which one a label
/// means changes the answer by up to a fifth. A public health table that takes 5 % hypochlorite as 5 % available chlorine
/// is 5 % off, on purpose. Bleach weakens in store: an old bottle is weaker than its label, never stronger. Outside 1 to
/// 15 % the strength is doubted: 0.05 may be a share for 5 %.
///
/// | argument           | unit | range     | default | meaning                              |
/// |--------------------|------|-----------|---------|--------------------------------------|
/// | `naocl_pct`        | %    | 0.1..=20  | -       | sodium hypochlorite by mass          |
/// | `specific_gravity` | 1    | 1..=1.3   | 1.1     | mass of a millilitre of it (g)       |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Molar masses of Cl2 and NaOCl. *Handbook of Chlorination*, Van Nostrand Reinhold 1972, after a supplier's product
/// profile (trade percent). A specific gravity of 1.1: a worked example on a pool-chemistry forum. Bottles of 1 to 15 %:
/// common practice, no source.
///
/// # Examples
/// ```
/// use recloth::{bleach::available_chlorine, doubt::CHLORINE_ALONE};
/// let bottle = available_chlorine(5.25, 1.1)?;
/// assert!((bottle.available_pct - 5.0006).abs() < 1e-4);
/// assert_ne!(bottle.cautions & CHLORINE_ALONE, 0);
/// assert_eq!(available_chlorine(50.0, 1.1).unwrap_err().argument(), "naocl_pct");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn available_chlorine(
    naocl_pct: f64,
    specific_gravity: f64,
) -> Result<AvailableChlorine, Error> {
    let naocl_pct = Error::check("naocl_pct", naocl_pct, 0.1, 20.0)?;
    let specific_gravity = Error::check("specific_gravity", specific_gravity, 1.0, 1.3)?;
    let available_pct = naocl_pct * (CHLORINE / 74.442);
    Ok(AvailableChlorine {
        available_pct,
        trade_pct: available_pct * specific_gravity,
        doubts: bottle_doubts(naocl_pct),
        cautions: BLEACH,
    })
}

/// A bleach bath mixed from a bottle.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BleachDilution {
    /// Bleach from the bottle (ml).
    pub bleach_ml: f64,
    /// Cold water it is added to (ml).
    pub water_ml: f64,
    /// Parts of water to one of bleach (1).
    pub parts_water: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Bleach and water for a bath of a given strength, for a given cloth and time.
///
/// `bleach = volume · target / stock`, both as available chlorine. "1 : 100" in public health tables is 1 part in 100, that
/// is 1 + 99. The bleach goes into the cold water. A bath is made for a time: `minutes` is how long the goods may stay in
/// at most, by the product's label and by your swatch, and sooner when the colour is reached. Test first: 15 ml bleach in
/// 60 ml water on a hidden seam for a minute, or better a row of timed swatches ([`bleach_time`]).
///
/// Usual are a target up to 0.46 %, a bottle of 1 to 15 %, up to 30 minutes and at least 50 ml; beyond that there are doubts.
///
/// | argument     | unit   | range                | default | meaning                                         |
/// |--------------|--------|----------------------|---------|-------------------------------------------------|
/// | `volume_ml`  | ml     | 1..=1e6              | -       | volume of the bath                              |
/// | `target_pct` | %      | 0.001..=0.6, <= stock_pct | -  | available chlorine wanted                       |
/// | `stock_pct`  | %      | 0.1..=20             | -       | available chlorine of the bottle                |
/// | `minutes`    | min    | 0.1..=60             | -       | longest that the goods stay in                  |
/// | `fibre`      | choice | -                    | -       | the most delicate fibre in the goods, thread and trims included |
/// | `finish`     | choice | -                    | -       | what was done to the cloth                      |
/// | `swatch`     | choice | -                    | -       | how a swatch stood the same bath                |
/// | `in_bath`    | choice | -                    | -       | what else is in the bath                        |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `target_pct` when the bottle is weaker. `Refused`
/// naming `in_bath` for anything but water; naming `fibre`, `finish` or `swatch` for what bleach ruins, and for the
/// unknown until a swatch has passed.
///
/// # Source
/// WHO, *Infection Prevention and Control of Epidemic- and Pandemic-Prone Acute Respiratory Infections in Health Care*,
/// 2014, Annex G (dilution; 30 minutes of immersion, above which there is a doubt). Northwestern Health Unit, Ontario
/// (everyday strengths: 0.01 to 0.45 %). Test on a hidden seam: a supplier's laundry sheet. Bottles of 1 to 15 %: common
/// practice, no source.
///
/// # Examples
/// ```
/// use recloth::{ErrorKind, bleach::{InBath, bleach_dilution}, fibre::{Fibre, Finish, Swatch}};
/// let bath = |fibre, in_bath| {
///     bleach_dilution(10_000.0, 0.05, 5.0, 10.0, fibre, Finish::Plain, Swatch::Passed, in_bath)
/// };
/// assert!((bath(Fibre::Linen, InBath::WaterOnly)?.bleach_ml - 100.0).abs() < 1e-9);
/// assert_eq!(bath(Fibre::Linen, InBath::Acid).unwrap_err().kind(), ErrorKind::Refused);
/// assert_eq!(bath(Fibre::Silk, InBath::WaterOnly).unwrap_err().argument(), "fibre");
/// # Ok::<(), recloth::Error>(())
/// ```
#[allow(clippy::too_many_arguments)] // each choice is one that must not be forgotten
#[inline]
pub fn bleach_dilution(
    volume_ml: f64,
    target_pct: f64,
    stock_pct: f64,
    minutes: f64,
    fibre: Fibre,
    finish: Finish,
    swatch: Swatch,
    in_bath: InBath,
) -> Result<BleachDilution, Error> {
    let volume = Error::check("volume_ml", volume_ml, 1.0, 1e6)?;
    let target = Error::check("target_pct", target_pct, 0.001, STRONGEST_PCT)?;
    let stock = Error::check("stock_pct", stock_pct, 0.1, 20.0)?;
    let minutes = Error::check("minutes", minutes, 0.1, 60.0)?;
    refuse(fibre, finish, swatch, in_bath)?;
    if target > stock {
        return Err(Error::no_solution("target_pct", target, 0.001, stock));
    }
    let bleach_ml = volume * target / stock;
    Ok(BleachDilution {
        bleach_ml,
        water_ml: volume - bleach_ml,
        parts_water: stock / target - 1.0,
        doubts: bottle_doubts(stock)
            | when(target > USUAL_PCT, STRENGTH_BEYOND_USUAL)
            | when(minutes > LONGEST_BLEACH_MIN, TIME_BEYOND_USUAL)
            | when(volume < LEAST_ML, VOLUME_SMALL),
        cautions: BLEACH,
    })
}

/// Time in the bleach, from timed swatches.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BleachTime {
    /// Time to the shade wanted (min).
    pub time_min: f64,
    /// Time for the next swatch: the time found, but never more than twice the longest swatch (min).
    pub next_swatch_min: f64,
    /// Share of the way to the floor gone in a minute, as a rate: the shade falls by e^-rate (1).
    pub rate: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Time in the bleach to a wanted depth of shade, from swatches taken out at known times.
///
/// The shade, K/S ([`k_over_s`](crate::shade::k_over_s)), is taken to fall to a floor by a constant share a minute:
/// `ln(shade - floor)` is a straight line in time, fitted by least squares. Swatches of the same cloth, in the same
/// strength and warmth, rinsed, neutralised and dried before they are judged. `swatch` tells how they stood it: pull each
/// one wet; at the first weakness stop, whatever the colour. A time beyond the longest swatch is a guess: test it. A shade at
/// or below the floor will not be reached at all: choose to dye over it.
///
/// | argument    | unit   | range                       | default | meaning                                      |
/// |-------------|--------|-----------------------------|---------|----------------------------------------------|
/// | `times_min` | min    | 0..=60 each, 2..=50 items   | -       | time of each swatch, rising; 0 is not bleached |
/// | `shades`    | 1      | 0.001..=500 each, as times_min | -    | depth of shade K/S of each                   |
/// | `target`    | 1      | 0.001..=500                 | -       | depth of shade wanted                        |
/// | `limit_min` | min    | 0.1..=60                    | -       | longest time that the product's label allows |
/// | `fibre`     | choice | -                           | -       | the most delicate fibre in the goods         |
/// | `finish`    | choice | -                           | -       | what was done to the cloth                   |
/// | `swatch`    | choice | -                           | -       | how the swatches stood it, pulled wet        |
/// | `in_bath`   | choice | -                           | -       | what else is in the bath                     |
/// | `floor`     | 1      | 0..=500                     | 0       | depth of shade that bleach does not take away |
///
/// # Errors
/// `NotFinite`, `OutOfRange` or `Count`, naming the argument. `Refused` as for [`bleach_dilution`], and naming `swatch`
/// unless the swatches have passed. `NoSolution` naming `times_min` (not rising), `shades` (at or below the floor, or not
/// falling), `target` (at or below the floor; or not reached within `limit_min`, `min` being the shade reached then).
///
/// # Source
/// First-order fading, fitted to the user's own swatches. WHO 2014, Annex G: 30 minutes of immersion; a time or a swatch
/// longer than that is doubted.
///
/// # Examples
/// ```
/// use recloth::{bleach::{InBath, bleach_time}, fibre::{Fibre, Finish, Swatch}};
/// let time = |target, limit| {
///     let (times, shades) = ([0.0, 10.0], [4.0, 2.4]);
///     bleach_time(&times, &shades, target, limit, Fibre::Linen, Finish::Plain, Swatch::Passed, InBath::WaterOnly, 0.0)
/// };
/// let plan = time(1.0, 30.0)?;
/// assert!((plan.time_min - 27.1).abs() < 0.05 && plan.next_swatch_min == 20.0);
/// assert_eq!(time(1.0, 15.0).unwrap_err().argument(), "target");
/// # Ok::<(), recloth::Error>(())
/// ```
#[allow(clippy::too_many_arguments)] // each choice is one that must not be forgotten
#[inline]
pub fn bleach_time(
    times_min: &[f64],
    shades: &[f64],
    target: f64,
    limit_min: f64,
    fibre: Fibre,
    finish: Finish,
    swatch: Swatch,
    in_bath: InBath,
    floor: f64,
) -> Result<BleachTime, Error> {
    let times = Error::check_list("times_min", times_min, 0.0, 60.0, (2, 50))?;
    let items = (times.len(), times.len());
    let shades = Error::check_list("shades", shades, 0.001, 500.0, items)?;
    let target = Error::check("target", target, 0.001, 500.0)?;
    let limit = Error::check("limit_min", limit_min, 0.1, 60.0)?;
    let floor = Error::check("floor", floor, 0.0, 500.0)?;
    refuse(fibre, finish, swatch, in_bath)?;
    if swatch != Swatch::Passed {
        return Err(refused("swatch", swatch as i32));
    }
    for (index, pair) in times.windows(2).enumerate() {
        // Closer swatches than a second tell nothing.
        if pair[1] < pair[0] + 1.0 / 60.0 {
            let least = pair[0] + 1.0 / 60.0;
            let error = Error::no_solution("times_min", pair[1], least, 60.0);
            return Err(error.at_index(index + 1));
        }
    }
    for (index, &shade) in shades.iter().enumerate() {
        if shade <= floor {
            let error = Error::no_solution("shades", shade, past(floor), f64::NAN);
            return Err(error.at_index(index));
        }
    }
    if target <= floor {
        return Err(Error::no_solution("target", target, past(floor), f64::NAN));
    }

    let count = times.len() as f64;
    let above = |shade: f64| libm::log(shade - floor);
    let mean_time = times.iter().sum::<f64>() / count;
    let mean_log = shades.iter().map(|&shade| above(shade)).sum::<f64>() / count;
    let (mut spread, mut fall) = (0.0, 0.0);
    for (&time, &shade) in times.iter().zip(shades) {
        spread += (time - mean_time) * (time - mean_time);
        fall -= (time - mean_time) * (above(shade) - mean_log);
    }
    let rate = fall / spread;
    let last = shades.len() - 1;
    if rate <= 1e-9 {
        // No one shade is to blame for a line that does not fall, so no bound is named.
        let error = Error::no_solution("shades", shades[last], f64::NAN, f64::NAN);
        return Err(error.at_index(last));
    }
    let start = mean_log + rate * mean_time;
    let time_min = ((start - above(target)) / rate).max(0.0);
    // The shade reached at the limit takes the limit, give or take a rounding.
    if time_min > limit * (1.0 + 1e-9) {
        let reached = floor + libm::exp(start - rate * limit);
        return Err(Error::no_solution("target", target, reached, f64::NAN));
    }
    let time_min = time_min.min(limit);
    let longest = times[last];
    Ok(BleachTime {
        time_min,
        next_swatch_min: time_min.min(2.0 * longest),
        rate,
        doubts: when(
            time_min.max(longest) > LONGEST_BLEACH_MIN,
            TIME_BEYOND_USUAL,
        ),
        cautions: BLEACH | when(time_min > longest, BEYOND_TESTED),
    })
}

/// What takes the last chlorine away, and what it turns into: the same salt has more than one answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[repr(i32)]
pub enum Reaction {
    /// Sodium thiosulfate crystals (pentahydrate) to tetrathionate: the safe upper figure.
    ThiosulfateToTetrathionate = 0,
    /// Sodium thiosulfate crystals (pentahydrate) to sulfate and sulfur.
    ThiosulfateToSulfur = 1,
    /// Sodium thiosulfate crystals (pentahydrate) to sulfate.
    ThiosulfateToSulfate = 2,
    /// Sodium bisulfite to sulfate.
    Bisulfite = 3,
    /// Sodium metabisulfite to sulfate.
    Metabisulfite = 4,
    /// Sodium sulfite to sulfate.
    Sulfite = 5,
    /// Ascorbic acid (vitamin C).
    AscorbicAcid = 6,
    /// Hydrogen peroxide, to oxygen: it froths.
    Peroxide = 7,
}

/// How far the goods are from the bleach.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[repr(i32)]
pub enum Stage {
    /// Still in the bleach.
    InBleach = 0,
    /// Out of it and drained, not rinsed.
    Drained = 1,
    /// Drained and rinsed, in a fresh bath.
    FreshBath = 2,
}

/// A neutralising bath.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Neutraliser {
    /// Available chlorine the goods still carry (g).
    pub chlorine_g: f64,
    /// Neutraliser to weigh out, excess included (g).
    pub amount_g: f64,
    /// Grams of the pure stuff for a gram of available chlorine, excess left out (1).
    pub ratio: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Neutraliser for the chlorine that goods still carry after draining and rinsing.
///
/// `amount = carried · chlorine / 100 · ratio · (1 + excess / 100) / (purity / 100)`. The ratio is that of the reaction named:
/// for thiosulfate crystals 7.00, 3.50 or 0.875 by what it ends as, which strength and acidity decide, so the largest is the
/// safe one. A test of field doses at pH 7 asked about a tenth more than the others' sums, hence the excess. Anhydrous
/// thiosulfate: 0.637 times as much. It is a separate bath of fresh water, and rinsing well is the main thing: this is for
/// the rest. Fibre is not asked here, as goods that ought never have met bleach need it most.
///
/// Doubted are liquor of more than 0.1 % (rinse again first), peroxide of more than 50 % and any purity of 1 % or less, and
/// an excess below 1 %.
///
/// | argument       | unit   | range        | default | meaning                                                   |
/// |----------------|--------|--------------|---------|-----------------------------------------------------------|
/// | `carried_ml`   | ml     | 0..=1e6      | -       | liquor that the goods carry after rinsing                 |
/// | `chlorine_pct` | %      | 0..=0.6      | -       | available chlorine in it, grams in 100 ml                 |
/// | `reaction`     | choice | -            | -       | what takes the chlorine away, and to what                 |
/// | `stage`        | choice | -            | -       | how far the goods are from the bleach                     |
/// | `in_bath`      | choice | -            | -       | what else is in the fresh bath                            |
/// | `purity_pct`   | %      | 0.1..=100    | 100     | share of the pure stuff: 3 for household peroxide         |
/// | `excess_pct`   | %      | 0..=100      | 10      | more than the reaction asks                               |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `Refused` naming `stage` unless the goods have been drained and rinsed;
/// naming `in_bath` for anything but water: sulfite and thiosulfate with acid give sulfur dioxide.
///
/// # Source
/// Molar masses. Hach support document TE213 (7.0 mg of thiosulfate crystals for 1 mg of chlorine). AWWA, *Disinfection of
/// Pipelines and Storage Facilities Field Guide*, table 7-2 (field doses). Where doubts begin: common practice, no source.
///
/// # Examples
/// ```
/// use recloth::{ErrorKind, bleach::{InBath, Reaction, Stage, neutraliser}};
/// let bath = |stage, in_bath| {
///     neutraliser(500.0, 0.02, Reaction::ThiosulfateToTetrathionate, stage, in_bath, 100.0, 0.0)
/// };
/// assert!((bath(Stage::FreshBath, InBath::WaterOnly)?.amount_g - 0.7).abs() < 1e-3);
/// assert_eq!(bath(Stage::InBleach, InBath::WaterOnly).unwrap_err().kind(), ErrorKind::Refused);
/// assert_eq!(bath(Stage::FreshBath, InBath::Acid).unwrap_err().argument(), "in_bath");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn neutraliser(
    carried_ml: f64,
    chlorine_pct: f64,
    reaction: Reaction,
    stage: Stage,
    in_bath: InBath,
    purity_pct: f64,
    excess_pct: f64,
) -> Result<Neutraliser, Error> {
    let carried = Error::check("carried_ml", carried_ml, 0.0, 1e6)?;
    let chlorine_pct = Error::check("chlorine_pct", chlorine_pct, 0.0, STRONGEST_PCT)?;
    let purity_pct = Error::check("purity_pct", purity_pct, 0.1, 100.0)?;
    let excess_pct = Error::check("excess_pct", excess_pct, 0.0, 100.0)?;
    if stage != Stage::FreshBath {
        return Err(refused("stage", stage as i32));
    }
    if in_bath != InBath::WaterOnly {
        return Err(refused("in_bath", in_bath as i32));
    }
    let chlorine_g = carried * chlorine_pct / 100.0;
    let ratio = reaction.ratio();
    let purest = if reaction == Reaction::Peroxide {
        50.0
    } else {
        100.0
    };
    Ok(Neutraliser {
        chlorine_g,
        amount_g: chlorine_g * ratio * (1.0 + excess_pct / 100.0) / (purity_pct / 100.0),
        ratio,
        doubts: when(chlorine_pct > USUAL_RINSED_PCT, STRENGTH_BEYOND_USUAL)
            | when(purity_pct <= 1.0 || purity_pct > purest, PURITY_UNLIKELY)
            | when(excess_pct > 0.0 && excess_pct < 1.0, PERCENT_SMALL),
        cautions: LABEL_FIRST | CHLORINE_COLD | CHLORINE_ALONE | NEUTRALISER_APART,
    })
}

/// Molar mass of Cl2 (g/mol).
const CHLORINE: f64 = 70.906;

impl Reaction {
    /// Grams for a gram of available chlorine: moles of each, and the molar mass.
    fn ratio(self) -> f64 {
        let (moles, molar) = match self {
            Reaction::ThiosulfateToTetrathionate => (2.0, 248.184),
            Reaction::ThiosulfateToSulfur => (1.0, 248.184),
            Reaction::ThiosulfateToSulfate => (0.25, 248.184),
            Reaction::Bisulfite => (1.0, 104.061),
            Reaction::Metabisulfite => (0.5, 190.106),
            Reaction::Sulfite => (1.0, 126.043),
            Reaction::AscorbicAcid => (1.0, 176.124),
            Reaction::Peroxide => (1.0, 34.015),
        };
        moles * molar / CHLORINE
    }
}

/// Refuses bleach on what it ruins, and in any company but water. The gas comes first.
#[inline]
fn refuse(fibre: Fibre, finish: Finish, swatch: Swatch, in_bath: InBath) -> Result<(), Error> {
    if in_bath != InBath::WaterOnly {
        return Err(refused("in_bath", in_bath as i32));
    }
    match refuses_chlorine(fibre, finish, swatch) {
        Some((argument, choice)) => Err(refused(argument, choice)),
        None => Ok(()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ErrorKind;

    const COMPANY: [InBath; 7] = [
        InBath::Unknown,
        InBath::Acid,
        InBath::Ammonia,
        InBath::Alcohol,
        InBath::Peroxide,
        InBath::Neutraliser,
        InBath::Other,
    ];

    #[test]
    fn bleach_goes_with_nothing_but_water() {
        for in_bath in COMPANY {
            for swatch in [Swatch::Untried, Swatch::Passed] {
                let (linen, plain) = (Fibre::Linen, Finish::Plain);
                let bath = bleach_dilution(1e3, 0.05, 5.0, 5.0, linen, plain, swatch, in_bath);
                let error = bath.unwrap_err();
                assert_eq!(
                    (error.kind(), error.argument()),
                    (ErrorKind::Refused, "in_bath")
                );
                let swatches = ([0.0, 5.0], [4.0, 3.0]);
                let time = bleach_time(
                    &swatches.0,
                    &swatches.1,
                    2.0,
                    30.0,
                    linen,
                    plain,
                    swatch,
                    in_bath,
                    0.0,
                );
                assert_eq!(time.unwrap_err().kind(), ErrorKind::Refused);
            }
        }
    }

    #[test]
    fn no_neutraliser_before_the_fresh_bath_or_with_anything_in_it() {
        let reaction = Reaction::Metabisulfite;
        for stage in [Stage::InBleach, Stage::Drained] {
            let bath = neutraliser(500.0, 0.02, reaction, stage, InBath::WaterOnly, 100.0, 10.0);
            assert_eq!(bath.unwrap_err().argument(), "stage");
        }
        for in_bath in COMPANY {
            let bath = neutraliser(
                500.0,
                0.02,
                reaction,
                Stage::FreshBath,
                in_bath,
                100.0,
                10.0,
            );
            assert_eq!(bath.unwrap_err().kind(), ErrorKind::Refused);
        }
    }

    #[test]
    fn anhydrous_thiosulfate_is_the_published_share_of_its_crystals() {
        // 4.460, 2.230 and 0.557 g of Na2S2O3 (molar mass 158.107) for a gram of chlorine.
        for (reaction, anhydrous) in [
            (Reaction::ThiosulfateToTetrathionate, 4.460),
            (Reaction::ThiosulfateToSulfur, 2.230),
            (Reaction::ThiosulfateToSulfate, 0.557),
        ] {
            let crystals = reaction.ratio();
            approx::assert_abs_diff_eq!(crystals * 158.107 / 248.184, anhydrous, epsilon = 6e-4);
            // The share as the documentation rounds it, to three digits.
            approx::assert_relative_eq!(crystals * 0.637, anhydrous, max_relative = 1e-3);
        }
    }

    #[test]
    fn every_answer_about_bleach_carries_its_cautions() {
        let (linen, plain, passed) = (Fibre::Linen, Finish::Plain, Swatch::Passed);
        let water = InBath::WaterOnly;
        let bath = bleach_dilution(1e3, 0.05, 5.0, 5.0, linen, plain, passed, water).unwrap();
        let (times, shades) = ([0.0, 5.0], [4.0, 3.0]);
        let time = bleach_time(&times, &shades, 2.0, 30.0, linen, plain, passed, water, 0.0);
        let bottle = available_chlorine(5.0, 1.1).unwrap();
        for cautions in [bath.cautions, time.unwrap().cautions, bottle.cautions] {
            assert_eq!(cautions & BLEACH, BLEACH);
        }
    }
}
