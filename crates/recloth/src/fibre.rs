//! What fibres bear and what colour they take; an unknown fibre counts as the most delicate.

use crate::Error;
use crate::ErrorKind;
use crate::doubt::{
    CHLORINE_ALONE, CHLORINE_COLD, ELASTIC_BATH, HEAT_BEYOND_USUAL, HOT_BATH, LABEL_FIRST,
    SWATCH_FIRST, TIME_BEYOND_USUAL, when,
};

/// What a cloth, thread or trim is made of. A blend counts as its most delicate part: ask for each.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[repr(i32)]
pub enum Fibre {
    /// Not known, or only guessed.
    Unknown = 0,
    /// Cotton.
    Cotton = 1,
    /// Linen.
    Linen = 2,
    /// Viscose and its kin.
    Viscose = 3,
    /// Polyester.
    Polyester = 4,
    /// Acrylic.
    Acrylic = 5,
    /// Polyamide (nylon).
    Polyamide = 6,
    /// Acetate and triacetate.
    Acetate = 7,
    /// Elastane (spandex).
    Elastane = 8,
    /// Rubber, and elastic of any kind.
    Rubber = 9,
    /// Wool.
    Wool = 10,
    /// Silk.
    Silk = 11,
    /// Mohair and other hair.
    Mohair = 12,
    /// Leather and fur.
    Leather = 13,
}

/// What was done to a cloth that a bath might undo.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[repr(i32)]
pub enum Finish {
    /// Not known.
    Unknown = 0,
    /// Known to have no finish, and its colour is fast, or it has none.
    Plain = 1,
    /// Its colour is not fast.
    NotFast = 2,
    /// A flame-retardant finish.
    FlameRetardant = 3,
    /// A resin finish, such as against creases.
    Resin = 4,
}

/// How a swatch or hidden part of this very cloth stood the same bath for the same time, wet strength tried by pulling.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[repr(i32)]
pub enum Swatch {
    /// Not tried yet.
    Untried = 0,
    /// It kept its strength and did what was wanted.
    Passed = 1,
    /// It weakened, yellowed or bled.
    Failed = 2,
}

/// The bath a part is to go through.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[repr(i32)]
pub enum Bath {
    /// Water, with or without a mild detergent.
    Water = 0,
    /// Chlorine bleach (sodium hypochlorite).
    ChlorineBleach = 1,
    /// A direct dye.
    Direct = 2,
    /// A reactive dye.
    Reactive = 3,
    /// An acid dye.
    Acid = 4,
    /// A vat dye, indigo included.
    Vat = 5,
    /// A sulphur dye.
    Sulphur = 6,
    /// An azoic dye.
    Azoic = 7,
    /// A metal-complex dye.
    MetalComplex = 8,
    /// A disperse dye.
    Disperse = 9,
    /// A basic dye.
    Basic = 10,
    /// A natural dye on a mordant.
    Natural = 11,
}

/// The part bears the bath.
const BEARS: u32 = 0;
/// It may: a swatch decides.
const DOUBT: u32 = 1;
/// It does not: take the part out first, or choose another bath.
const REFUSE: u32 = 2;

/// What one part of a garment makes of a bath.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ComponentCheck {
    /// 0: it bears the bath; 1: a swatch decides; 2: it does not, so take it off first (count).
    pub bears: u32,
    /// Colour it takes in this bath: 0 none, 1 some or not sure, 2 well (count).
    pub colour: u32,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}

/// Whether one part of a garment bears a bath, and whether it takes colour there.
///
/// Ask for every part: shell, lining, thread, interfacing, elastic, buttons; the garment bears what its weakest part bears. A
/// fibre not known is refused bleach and heat until a swatch has passed, and is never said to take colour well. What bleach
/// ruins whatever the swatch (wool, silk, hair, leather, elastane, acetate, polyamide, rubber; colours not fast;
/// flame-retardant finishes) stays refused. Thread and lining of polyester come out of a plant dye as they went in.
///
/// Usual are chlorine bleach up to 30 °C and 30 minutes, other baths up to 40 °C for an unknown fibre, 60 °C for rubber,
/// elastane, acetate and leather and 4 hours above 60 °C for any; beyond that there are doubts.
///
/// To find a fibre out, a burn test tells the family only, and nothing of a blend, a coated or a fused cloth: a snip the
/// size of a thread, in tweezers, over water or a metal tray, window open, hair tied back, no child near.
///
/// | argument        | unit   | range     | default | meaning                                     |
/// |-----------------|--------|-----------|---------|---------------------------------------------|
/// | `fibre`         | choice | -         | -       | what the part is made of                    |
/// | `finish`        | choice | -         | -       | what was done to it                         |
/// | `swatch`        | choice | -         | -       | how a swatch of it stood the same bath      |
/// | `bath`          | choice | -         | -       | the bath                                    |
/// | `temperature_c` | degC   | 0..=100   | -       | hottest it gets                             |
/// | `minutes`       | min    | 0..=1440  | -       | longest it stays in                         |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `Choice`, from a door that passes numbers.
///
/// # Source
/// Colour: University of Borås, *Textile chemistry*, dye classes. Chlorine: laundry guides that agree (wool, silk, mohair,
/// leather, spandex, colours not fast); thespruce.com, howtodothings.com (acetate, elastic, flame-retardant). From memory:
/// polyamide and resin finishes; where heat and time are beyond what is usual (30 minutes of bleach: WHO 2014, Annex G).
///
/// # Examples
/// ```
/// use recloth::fibre::{Bath, Fibre, Finish, Swatch, component_check};
/// let bleach = |fibre| component_check(fibre, Finish::Plain, Swatch::Untried, Bath::ChlorineBleach, 20.0, 10.0);
/// assert_eq!(bleach(Fibre::Cotton)?.bears, 1);
/// assert_eq!(bleach(Fibre::Polyester)?.bears, 0);
/// assert_eq!(bleach(Fibre::Rubber)?.bears, 2);
/// let hot = component_check(Fibre::Linen, Finish::Plain, Swatch::Passed, Bath::Natural, 120.0, 60.0);
/// assert_eq!(hot.unwrap_err().argument(), "temperature_c");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn component_check(
    fibre: Fibre,
    finish: Finish,
    swatch: Swatch,
    bath: Bath,
    temperature_c: f64,
    minutes: f64,
) -> Result<ComponentCheck, Error> {
    let temperature = Error::check("temperature_c", temperature_c, 0.0, 100.0)?;
    let minutes = Error::check("minutes", minutes, 0.0, 1440.0)?;
    let chlorine = bath == Bath::ChlorineBleach;
    let hottest = usual_heat(fibre, bath);
    let longest = if chlorine {
        LONGEST_BLEACH_MIN
    } else if temperature > 60.0 {
        LONGEST_HOT_MIN
    } else {
        f64::INFINITY
    };
    let mut cautions = LABEL_FIRST | when(temperature > 40.0, HOT_BATH);
    if matches!(fibre, Fibre::Elastane | Fibre::Rubber) {
        cautions |= ELASTIC_BATH;
    }
    let bears = if chlorine {
        cautions |= CHLORINE_COLD | CHLORINE_ALONE | SWATCH_FIRST;
        if refuses_chlorine(fibre, finish, swatch).is_some() || temperature > hottest {
            REFUSE
        } else if fibre == Fibre::Polyester || swatch == Swatch::Passed {
            BEARS
        } else {
            DOUBT
        }
    } else {
        let delicate = matches!(fibre, Fibre::Wool | Fibre::Mohair | Fibre::Silk);
        if swatch == Swatch::Failed || (temperature > hottest && swatch != Swatch::Passed) {
            REFUSE
        } else if swatch == Swatch::Passed {
            BEARS
        } else if fibre == Fibre::Unknown || finish != Finish::Plain || delicate {
            DOUBT
        } else {
            BEARS
        }
    };
    if bears == DOUBT {
        cautions |= SWATCH_FIRST;
    }
    Ok(ComponentCheck {
        bears,
        colour: takes(fibre, bath),
        doubts: when(temperature > hottest, HEAT_BEYOND_USUAL)
            | when(minutes > longest, TIME_BEYOND_USUAL),
        cautions,
    })
}

/// Longest that chlorine bleach is usually left on (min): WHO 2014, Annex G, immersion.
pub(crate) const LONGEST_BLEACH_MIN: f64 = 30.0;
/// Longest that goods usually stay in a hot bath (min): common practice, no source.
const LONGEST_HOT_MIN: f64 = 240.0;

/// Hottest that this bath usually is for this fibre (degC). Chlorine: "cold water, never heat" on supplier's sheets; the
/// figures from memory.
#[inline]
fn usual_heat(fibre: Fibre, bath: Bath) -> f64 {
    match (bath, fibre) {
        (Bath::ChlorineBleach, _) => 30.0,
        (_, Fibre::Unknown) => 40.0,
        (_, Fibre::Rubber | Fibre::Elastane | Fibre::Acetate | Fibre::Leather) => 60.0,
        _ => 100.0,
    }
}

/// The argument for which chlorine bleach is refused: `fibre`, `finish` or `swatch`.
#[inline]
pub(crate) fn refuses_chlorine(
    fibre: Fibre,
    finish: Finish,
    swatch: Swatch,
) -> Option<(&'static str, i32)> {
    let tried = swatch == Swatch::Passed;
    let fibre_bears = match fibre {
        Fibre::Cotton | Fibre::Linen | Fibre::Viscose | Fibre::Polyester => true,
        Fibre::Unknown | Fibre::Acrylic => tried,
        Fibre::Polyamide
        | Fibre::Acetate
        | Fibre::Elastane
        | Fibre::Rubber
        | Fibre::Wool
        | Fibre::Silk
        | Fibre::Mohair
        | Fibre::Leather => false,
    };
    let finish_bears = match finish {
        Finish::Plain => true,
        Finish::Unknown | Finish::Resin => tried,
        Finish::NotFast | Finish::FlameRetardant => false,
    };
    if !fibre_bears {
        Some(("fibre", fibre as i32))
    } else if !finish_bears {
        Some(("finish", finish as i32))
    } else if swatch == Swatch::Failed {
        Some(("swatch", swatch as i32))
    } else {
        None
    }
}

/// A refusal: dangerous, or ruinous, whatever the numbers.
#[inline]
pub(crate) fn refused(argument: &'static str, choice: i32) -> Error {
    let choice = f64::from(choice);
    Error::new(ErrorKind::Refused, argument, choice, f64::NAN, f64::NAN)
}

/// Colour taken: 0 none, 1 some, 2 well.
#[inline]
fn takes(fibre: Fibre, bath: Bath) -> u32 {
    use Fibre::{
        Acetate, Acrylic, Cotton, Linen, Mohair, Polyamide, Polyester, Silk, Unknown, Viscose, Wool,
    };
    let cellulose = matches!(fibre, Cotton | Linen | Viscose);
    // Mohair is not in the table: it is a protein as wool is.
    let wool = matches!(fibre, Wool | Mohair);
    let protein = wool || fibre == Silk;
    let (well, some) = match bath {
        Bath::Water | Bath::ChlorineBleach => return 0,
        Bath::Direct => (cellulose, protein),
        Bath::Reactive => (cellulose, protein),
        Bath::Acid => (protein || fibre == Polyamide, false),
        Bath::Vat => (cellulose, protein || fibre == Polyamide),
        Bath::Sulphur | Bath::Azoic => (cellulose, false),
        Bath::MetalComplex => (wool || fibre == Polyamide, false),
        Bath::Disperse => (matches!(fibre, Polyester | Acetate | Polyamide), false),
        Bath::Basic => (fibre == Acrylic, false),
        Bath::Natural => (protein, cellulose || fibre == Polyamide),
    };
    if well {
        2
    } else if some
        || matches!(
            fibre,
            Unknown | Fibre::Leather | Fibre::Rubber | Fibre::Elastane
        )
    {
        1
    } else {
        0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const FINISHES: [Finish; 5] = [
        Finish::Unknown,
        Finish::Plain,
        Finish::NotFast,
        Finish::FlameRetardant,
        Finish::Resin,
    ];

    #[test]
    fn no_swatch_lets_bleach_onto_what_it_ruins() {
        for swatch in [Swatch::Untried, Swatch::Passed, Swatch::Failed] {
            for finish in FINISHES {
                for fibre in [
                    Fibre::Polyamide,
                    Fibre::Acetate,
                    Fibre::Elastane,
                    Fibre::Rubber,
                    Fibre::Wool,
                    Fibre::Silk,
                    Fibre::Mohair,
                    Fibre::Leather,
                ] {
                    let found =
                        component_check(fibre, finish, swatch, Bath::ChlorineBleach, 20.0, 5.0);
                    assert_eq!(found.unwrap().bears, REFUSE);
                    assert_eq!(refuses_chlorine(fibre, finish, swatch).unwrap().0, "fibre");
                }
            }
            for finish in [Finish::NotFast, Finish::FlameRetardant] {
                let refusal = refuses_chlorine(Fibre::Cotton, finish, swatch);
                assert_eq!(refusal.unwrap().0, "finish");
            }
        }
    }

    #[test]
    fn the_unknown_is_refused_until_a_swatch_has_passed() {
        let unknown = |swatch| refuses_chlorine(Fibre::Unknown, Finish::Unknown, swatch);
        assert!(unknown(Swatch::Untried).is_some() && unknown(Swatch::Failed).is_some());
        assert_eq!(unknown(Swatch::Passed), None);
        let finish = |swatch| refuses_chlorine(Fibre::Cotton, Finish::Unknown, swatch);
        assert!(finish(Swatch::Untried).is_some() && finish(Swatch::Passed).is_none());
    }
}
