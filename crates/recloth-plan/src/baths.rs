//! Baths: how much of what, how much liquor, in how many lots, and what to beware of.

use recloth::doubt::{BATHS_DIFFER, Bit, CAUTIONS, DOUBTS, ELASTIC_BATH};
use recloth::wet::{bath_volume, owf};
use serde::Serialize;

use crate::brief::{Bath, BathKind, Brief, Fibre};
use crate::components::{Component, component};

/// What goes into a bath.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[non_exhaustive]
pub struct BathAmount {
    /// What it is.
    pub what: String,
    /// On the weight of the dry goods (%).
    pub owf_pct: f64,
    /// For all of the goods (g).
    pub mass_g: f64,
}

/// One bath, worked out.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[non_exhaustive]
pub struct BathPlan {
    /// What it is: scour, tannin, mordant or dye.
    pub what: &'static str,
    /// Name of the cloth.
    pub cloth: String,
    /// Dry goods (g).
    pub dry_g: f64,
    /// Liquor for all of the goods (ml).
    pub volume_ml: f64,
    /// Lots that the pot asks for; one where no pot is given.
    pub lots: u32,
    /// What goes in.
    pub with: Vec<BathAmount>,
    /// How it is done, in order.
    pub how: Vec<&'static str>,
    /// Doubts about its amounts.
    pub doubts: Vec<String>,
    /// What can hurt in it, and what it can ruin.
    pub cautions: Vec<String>,
    /// Every part of the old garment in this bath.
    pub components: Vec<Component>,
}

impl BathKind {
    pub(crate) fn name(self) -> &'static str {
        match self {
            BathKind::Scour => "scour",
            BathKind::Tannin => "tannin",
            BathKind::Mordant => "mordant",
            BathKind::Dye => "dye",
        }
    }

    /// Common practice, no source; amounts and times of the product's label go before.
    fn how(self) -> &'static [&'static str] {
        match self {
            BathKind::Scour => &[
                "Weigh the cloth dry. Wet it out, put it in warm liquor and bring it slowly to a simmer.",
                "Keep it moving for an hour, let it cool in the liquor, rinse until the water runs clear.",
            ],
            BathKind::Tannin => &[
                "Dissolve the tannin in hot water, put the wetted cloth in warm, keep it under, and leave it as long as \
                 the recipe says. Squeeze; do not rinse.",
            ],
            BathKind::Mordant => &[
                "Dissolve each powder in hot water by itself. Add the soda to the alum a little at a time in a tall pot: \
                 it froths.",
                "Put the wetted cloth in, keep it under and moving, warm slowly, and let it cool in the liquor. Rinse once.",
            ],
            BathKind::Dye => &[
                "Soak and simmer the plant matter first, strain it off, and let the liquor cool to warm.",
                "Put the wetted cloth in all at once, warm slowly, keep it moving; take it out a shade deeper than \
                 wanted, for wet cloth looks darker.",
                "The colour is a band from pale to deep, never one swatch: dry the swatch before judging.",
            ],
        }
    }
}

/// What the core's cautions leave unsaid of a bath.
pub(crate) const BATH_CAUTIONS: &[&str] = &[
    "Fill a pot no more than three quarters, lift with tongs, and let hot liquor cool before wringing.",
    "Powders (alum, soda, tannin, dyes) are not to be breathed or to get into eyes: no draught over the scales; wet the \
     powder at once, and keep the windows open while the pot simmers.",
    "Pots, spoons and scales for baths are never used for food again. Keep powders named, closed and out of reach.",
    "Never mix a bath with bleach or with any cleaner. Pour spent liquor away as local rules say.",
];

pub(crate) fn bath_plan(brief: &Brief, bath: &Bath) -> Result<BathPlan, recloth::Error> {
    let volume = bath_volume(bath.dry_g, bath.ratio)?;
    let volume_ml = volume.volume_ml;
    let (mut doubts, mut cautions) = (volume.doubts, volume.cautions);
    // A pot holds three quarters of its measure with room to move the cloth: common practice, no source.
    let lots = bath
        .pot_ml
        .map_or(1.0, |pot| (volume_ml / (0.75 * pot)).ceil().max(1.0));
    let mut with = Vec::new();
    for amount in &bath.with {
        let owf = owf(bath.dry_g, amount.owf_pct)?;
        doubts |= owf.doubts;
        cautions |= owf.cautions;
        with.push(BathAmount {
            what: amount.what.clone(),
            owf_pct: amount.owf_pct,
            mass_g: owf.amount_g,
        });
    }
    let cloth = &brief.cloths[bath.cloth];
    let stays = brief.parts.iter().filter(|part| part.stays);
    if lots > 1.0 {
        cautions |= BATHS_DIFFER;
    }
    if brief
        .parts
        .iter()
        .any(|part| matches!(part.fibre, Fibre::Elastane | Fibre::Rubber))
    {
        cautions |= ELASTIC_BATH;
    }
    let told =
        |bits: u64, known: &'static [Bit]| known.iter().filter(move |bit| bits & bit.bit != 0);
    let mut components = vec![component(&cloth.name, cloth.fibre, cloth.sure, bath.kind)];
    components.extend(stays.map(|part| component(&part.name, part.fibre, part.sure, bath.kind)));
    Ok(BathPlan {
        what: bath.kind.name(),
        cloth: cloth.name.clone(),
        dry_g: bath.dry_g,
        volume_ml,
        lots: lots as u32,
        with,
        how: bath.kind.how().to_vec(),
        doubts: told(doubts, DOUBTS)
            .map(|bit| format!("The {} bath: {}", bath.kind.name(), bit.text))
            .collect(),
        cautions: told(cautions, CAUTIONS)
            .map(|bit| bit.text.to_owned())
            .collect(),
        components,
    })
}
