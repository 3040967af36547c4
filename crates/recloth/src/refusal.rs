//! Why a bath is refused: what would come of it, a sentence for each choice that is turned away.
//!
//! Gases: Washington State Department of Health; NFPA Safety Source, 2020. What bleach ruins: the sources of
//! [`component_check`](crate::fibre::component_check).

use crate::bleach::{InBath, Stage};
use crate::fibre::{Fibre, Finish, Swatch};

/// The reason for refusing this choice of this argument. An error holds no more than these two, in every door.
#[inline]
pub(crate) fn reason(argument: &str, choice: f64) -> Option<&'static str> {
    let same =
        |&&(name, value, _): &&(&str, i32, _)| name == argument && f64::from(value) == choice;
    REASONS.iter().find(same).map(|&(_, _, text)| text)
}

#[rustfmt::skip] // one choice a line
const REASONS: &[(&str, i32, &str)] = &[
    ("in_bath", InBath::Unknown as i32, "what is in the bath must be known, for acid, ammonia and alcohol give poisonous gas with bleach"),
    ("in_bath", InBath::Acid as i32, "acid sets free chlorine gas from bleach, and sulfur dioxide from sulfite or thiosulfate"),
    ("in_bath", InBath::Ammonia as i32, "ammonia and chlorine bleach give chloramines, which are poisonous gases"),
    ("in_bath", InBath::Alcohol as i32, "alcohol and chlorine bleach give chloroform, which is poisonous"),
    ("in_bath", InBath::Peroxide as i32, "peroxide cancels bleach, and froths; the bath takes one thing and water"),
    ("in_bath", InBath::Neutraliser as i32, "a neutraliser cancels bleach, with heat; it is a bath of its own, after draining and rinsing"),
    ("in_bath", InBath::Other as i32, "the bath takes one thing and water: detergents, dyes and mordants may hold acid or ammonia"),
    ("stage", Stage::InBleach as i32, "a neutraliser is never poured into bleach: drain and rinse first, then take a fresh bath"),
    ("stage", Stage::Drained as i32, "a neutraliser never meets bleach: rinse first, then take a fresh bath"),
    ("fibre", Fibre::Unknown as i32, "a fibre not known counts as the most delicate until a swatch has passed"),
    ("fibre", Fibre::Acrylic as i32, "chlorine bleach may weaken acrylic: not before a swatch has passed"),
    ("fibre", Fibre::Polyamide as i32, "chlorine bleach yellows and weakens polyamide"),
    ("fibre", Fibre::Acetate as i32, "chlorine bleach ruins acetate"),
    ("fibre", Fibre::Elastane as i32, "chlorine bleach ruins elastane: it loses its stretch and yellows"),
    ("fibre", Fibre::Rubber as i32, "chlorine bleach ruins rubber and elastic"),
    ("fibre", Fibre::Wool as i32, "chlorine bleach ruins wool: it yellows, hardens and dissolves"),
    ("fibre", Fibre::Silk as i32, "chlorine bleach ruins silk: it yellows and dissolves"),
    ("fibre", Fibre::Mohair as i32, "chlorine bleach ruins mohair and other hair: it yellows, hardens and dissolves"),
    ("fibre", Fibre::Leather as i32, "chlorine bleach ruins leather and fur"),
    ("finish", Finish::Unknown as i32, "a finish not known is refused until a swatch has passed"),
    ("finish", Finish::NotFast as i32, "chlorine bleach takes a colour out that is not fast"),
    ("finish", Finish::FlameRetardant as i32, "chlorine bleach takes away what keeps the cloth from burning"),
    ("finish", Finish::Resin as i32, "a resin finish may hold chlorine, yellow and weaken the cloth: not before a swatch has passed"),
    ("swatch", Swatch::Untried as i32, "no swatch has passed yet"),
    ("swatch", Swatch::Failed as i32, "the swatch has failed, and so would the goods"),
];

#[cfg(test)]
mod tests {
    extern crate std;
    use super::*;
    use crate::bleach::{Reaction, bleach_dilution, neutraliser};
    use std::string::ToString;

    const FIBRES: [Fibre; 14] = [
        Fibre::Unknown,
        Fibre::Cotton,
        Fibre::Linen,
        Fibre::Viscose,
        Fibre::Polyester,
        Fibre::Acrylic,
        Fibre::Polyamide,
        Fibre::Acetate,
        Fibre::Elastane,
        Fibre::Rubber,
        Fibre::Wool,
        Fibre::Silk,
        Fibre::Mohair,
        Fibre::Leather,
    ];
    const FINISHES: [Finish; 5] = [
        Finish::Unknown,
        Finish::Plain,
        Finish::NotFast,
        Finish::FlameRetardant,
        Finish::Resin,
    ];
    const SWATCHES: [Swatch; 3] = [Swatch::Untried, Swatch::Passed, Swatch::Failed];
    const BATHS: [InBath; 8] = [
        InBath::Unknown,
        InBath::WaterOnly,
        InBath::Acid,
        InBath::Ammonia,
        InBath::Alcohol,
        InBath::Peroxide,
        InBath::Neutraliser,
        InBath::Other,
    ];

    #[test]
    fn every_refusal_says_why() {
        let mut refusals = 0;
        for fibre in FIBRES {
            for finish in FINISHES {
                for swatch in SWATCHES {
                    for in_bath in BATHS {
                        let bath =
                            bleach_dilution(1e3, 0.05, 5.0, 5.0, fibre, finish, swatch, in_bath);
                        if let Err(error) = bath {
                            refusals += 1;
                            assert!(reason(error.argument(), error.value()).is_some(), "{error}");
                        }
                    }
                }
            }
        }
        assert!(refusals > 1000);
        for stage in [Stage::InBleach, Stage::Drained, Stage::FreshBath] {
            for in_bath in BATHS {
                let reaction = Reaction::Bisulfite;
                let bath = neutraliser(500.0, 0.02, reaction, stage, in_bath, 100.0, 10.0);
                if let Err(error) = bath {
                    assert!(reason(error.argument(), error.value()).is_some(), "{error}");
                }
            }
        }
    }

    #[test]
    fn what_is_only_ruinous_is_not_called_dangerous() {
        let says = |fibre, in_bath| {
            let (plain, passed) = (Finish::Plain, Swatch::Passed);
            let bath = bleach_dilution(1e3, 0.05, 5.0, 5.0, fibre, plain, passed, in_bath);
            bath.unwrap_err().to_string()
        };
        assert_eq!(
            says(Fibre::Wool, InBath::WaterOnly),
            "fibre: refused: chlorine bleach ruins wool: it yellows, hardens and dissolves"
        );
        assert_eq!(
            says(Fibre::Linen, InBath::Acid),
            "in_bath: refused: acid sets free chlorine gas from bleach, and sulfur dioxide from sulfite or thiosulfate"
        );
        assert!(says(Fibre::Wool, InBath::Ammonia).contains("poisonous"));
    }

    #[test]
    fn no_choice_has_two_reasons() {
        for (at, &(argument, choice, _)) in REASONS.iter().enumerate() {
            let same =
                |&&(other, number, _): &&(&str, i32, &str)| other == argument && number == choice;
            assert_eq!(REASONS.iter().position(|row| same(&row)), Some(at));
        }
    }
}
