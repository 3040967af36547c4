//! What each part of the old garment does in a bath: bears it or not, takes the colour or not.
//!
//! Colour by fibre: University of Borås, *Textile chemistry*, classes of dye by fibre (natural mordant dyes: protein
//! easily, cellulose with tannin or alum, polyester not). What bears heat, alkali and alum: common practice, no source.
//! An unknown fibre is treated as the most delicate there is.

use serde::Serialize;

use crate::brief::{BathKind, Fibre, Sureness};

/// Whether a part can go into a bath.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
#[non_exhaustive]
pub enum Bears {
    /// It bears the bath.
    Yes,
    /// It may: a swatch or snip decides.
    Swatch,
    /// Take it off first.
    No,
}

impl Bears {
    /// In words.
    pub fn words(self) -> &'static str {
        match self {
            Bears::Yes => "bears it",
            Bears::Swatch => "swatch first",
            Bears::No => "take off first",
        }
    }
}

/// One part in one bath.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[non_exhaustive]
pub struct Component {
    /// The part or cloth.
    pub part: String,
    /// Its fibre as far as it is known.
    pub fibre: String,
    /// Whether it can go in.
    pub bears: Bears,
    /// What it does there.
    pub why: &'static str,
}

/// What a fibre does in a bath.
fn fibre_in_bath(fibre: Fibre, bath: BathKind) -> (Bears, &'static str) {
    use BathKind::{Dye, Mordant, Scour, Tannin};
    match (fibre, bath) {
        (Fibre::Linen | Fibre::Cotton | Fibre::Viscose, Scour) => (
            Bears::Yes,
            "a plant fibre: bears hot soda; viscose is weak while wet",
        ),
        (Fibre::Linen | Fibre::Cotton | Fibre::Viscose, Tannin | Mordant) => (
            Bears::Yes,
            "a plant fibre: takes alum best over tannin or with soda",
        ),
        (Fibre::Linen | Fibre::Cotton | Fibre::Viscose, Dye) => (
            Bears::Yes,
            "a plant fibre: takes the colour where it was mordanted",
        ),
        (Fibre::Wool | Fibre::Silk, Scour) => (Bears::No, "soda and heat harm animal fibres"),
        (Fibre::Wool | Fibre::Silk, _) => (
            Bears::Swatch,
            "takes the colour deeper than linen; felts or dulls with heat and stirring",
        ),
        (Fibre::Polyester, Dye) => (
            Bears::Swatch,
            "bears the bath but keeps its own colour; heat sets its creases",
        ),
        (Fibre::Polyester, _) => (
            Bears::Swatch,
            "bears the bath and takes nothing from it; heat sets its creases",
        ),
        (Fibre::Nylon | Fibre::Acrylic, _) => (
            Bears::Swatch,
            "heat sets its creases; takes colour unevenly or not",
        ),
        (Fibre::Acetate, _) => (Bears::No, "heat dulls and shrinks it"),
        (Fibre::Elastane | Fibre::Rubber, _) => (
            Bears::No,
            "heat takes its stretch, and bleach would ruin it",
        ),
        (Fibre::Metal, _) => (
            Bears::No,
            "rust and other metal salts darken and spot the colour",
        ),
        (Fibre::Leather, _) => (Bears::No, "hardens and shrinks in hot water"),
        (Fibre::Plastic, _) => (Bears::Swatch, "may soften, cloud or stain with heat"),
        (Fibre::Shell, _) => (Bears::No, "alum is sour and eats its shine"),
        (Fibre::Unknown, _) => (
            Bears::No,
            "unknown: treated as the most delicate until a swatch has passed",
        ),
    }
}

/// One part in one bath; what is only suspected never does better than a swatch.
pub(crate) fn component(part: &str, fibre: Fibre, sure: Sureness, bath: BathKind) -> Component {
    let (bears, why) = match sure {
        Sureness::Unknown => fibre_in_bath(Fibre::Unknown, bath),
        _ => fibre_in_bath(fibre, bath),
    };
    let bears = if sure == Sureness::Suspected {
        bears.max(Bears::Swatch)
    } else {
        bears
    };
    let name = crate::brief::fibre_name(fibre);
    let fibre = match sure {
        Sureness::Known => name.to_owned(),
        Sureness::Suspected => format!("{name}, suspected"),
        Sureness::Unknown if fibre == Fibre::Unknown => name.to_owned(),
        Sureness::Unknown => format!("{name}? unknown"),
    };
    Component {
        part: part.to_owned(),
        fibre,
        bears,
        why,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_unknown_is_the_most_delicate_and_the_suspected_is_never_sure() {
        let bears = |fibre, sure| component("x", fibre, sure, BathKind::Dye).bears;
        assert_eq!(bears(Fibre::Linen, Sureness::Known), Bears::Yes);
        assert_eq!(bears(Fibre::Linen, Sureness::Suspected), Bears::Swatch);
        assert_eq!(bears(Fibre::Linen, Sureness::Unknown), Bears::No);
        assert_eq!(bears(Fibre::Unknown, Sureness::Known), Bears::No);
        assert_eq!(bears(Fibre::Elastane, Sureness::Suspected), Bears::No);
    }

    /// The house-coat: polyester neither takes the dye nor is harmed by it, elastic is.
    #[test]
    fn polyester_keeps_its_colour_and_elastic_comes_off() {
        let lining = component("lining", Fibre::Polyester, Sureness::Known, BathKind::Dye);
        assert!(lining.why.contains("keeps its own colour"));
        assert_eq!(
            component("elastic", Fibre::Elastane, Sureness::Known, BathKind::Dye).bears,
            Bears::No
        );
    }
}
