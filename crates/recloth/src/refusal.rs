//! Why a bath is refused: what would come of it, a sentence for each choice that is turned away.
//!
//! Gases: Washington State Department of Health, *Dangers of Mixing Bleach with Cleaners*; NFPA, 2020. What bleach ruins:
//! the sources of [`component_check`](crate::fibre::component_check).

use crate::bleach::{InBath, Stage};
use crate::fibre::{Fibre, Finish, Swatch};

/// The reason for refusing this choice of this argument. An error holds no more than these two, in every door.
pub(crate) fn reason(argument: &str, choice: f64) -> Option<&'static str> {
    let same = |&&(name, value, _): &&(&str, i32, _)| name == argument && f64::from(value) == choice;
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
