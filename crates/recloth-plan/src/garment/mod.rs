//! Garments: from measures to pieces, to the sums that must meet, and to the steps of the make.

mod draw;
mod pinafore;
mod pocket;
mod waistcoat;
mod wrap_skirt;

use recloth::body::{girth_doubts, neck_bust_doubts, waist_hip_doubts};
use recloth::doubt::DOUBTS;
use recloth::outline::Piece;

use crate::brief::{Brief, BriefError, Garment, Make};
use crate::order::{Kind, Step};

/// The role of pieces that are lining, under which a flaw of the cloth does not show.
pub(crate) const LINING: &str = "lining";

/// Lengths that are sewn or laid together: they must add up on the tape.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Sum {
    pub(crate) what: String,
    pub(crate) terms: Vec<(String, f64)>,
}

/// What a garment is made of.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Draft {
    pub(crate) pieces: Vec<Piece>,
    /// Names of pieces that are laid out with the others but cut later.
    pub(crate) later: Vec<String>,
    /// Names of pieces that are lining.
    pub(crate) linings: Vec<String>,
    pub(crate) sums: Vec<Sum>,
    pub(crate) steps: Vec<Step>,
    /// The garment whose seams must still be open when this one is sewn to it.
    pub(crate) onto: Option<String>,
    pub(crate) doubts: Vec<String>,
    pub(crate) cautions: Vec<&'static str>,
}

impl Draft {
    /// Adds this garment's steps to those of the garments before it.
    pub(crate) fn add_steps(&mut self, all: &mut Vec<Step>) {
        let place = self.onto.as_ref().and_then(|onto| {
            all.iter()
                .position(|step| step.work == *onto && step.kind == Kind::Join)
        });
        let place = place.unwrap_or(all.len());
        all.splice(place..place, self.steps.drain(..));
    }
}

/// Why a garment cannot be drafted: what is wrong, what would be right.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Impossible {
    pub(crate) wrong: String,
    pub(crate) right: String,
}

impl Impossible {
    pub(crate) fn new(wrong: impl Into<String>, right: impl Into<String>) -> Impossible {
        Impossible {
            wrong: wrong.into(),
            right: right.into(),
        }
    }
}

impl From<recloth::Error> for Impossible {
    fn from(error: recloth::Error) -> Impossible {
        Impossible::new(
            format!("its measures cannot be drafted: {error}"),
            "Look at the measures of this garment and of the person it is for; lengths in this message are in mm.",
        )
    }
}

/// Drafts one garment of the brief.
pub(crate) fn draft(brief: &Brief, make: &Make) -> Result<Draft, BriefError> {
    let draft = match &make.garment {
        Garment::WrapSkirt(skirt) => wrap_skirt::draft(brief, make, skirt),
        Garment::Waistcoat(waistcoat) => waistcoat::draft(brief, make, waistcoat),
        Garment::Pinafore(pinafore) => pinafore::draft(brief, make, pinafore),
        Garment::Pocket(pocket) => pocket::draft(brief, make, pocket),
    };
    draft.map_err(|impossible| {
        brief.error(
            &make.span,
            format!("the {} cannot be drafted: {}", make.name, impossible.wrong),
            impossible.right,
        )
    })
}

/// Doubts on the measures of each person, alone and in pairs: where a slip costs most.
pub(crate) fn body_doubts(brief: &Brief) -> Vec<String> {
    let mut doubts = Vec::new();
    for person in &brief.people {
        let mut bits = 0;
        for girth in ["waist", "hip", "bust"]
            .iter()
            .filter_map(|girth| person.get(girth))
        {
            bits |= girth_doubts(girth).unwrap_or(0);
        }
        if let (Some(waist), Some(hip)) = (person.get("waist"), person.get("hip")) {
            bits |= waist_hip_doubts(waist, hip).unwrap_or(0);
        }
        if let (Some(neck), Some(bust)) = (person.get("neck"), person.get("bust")) {
            bits |= neck_bust_doubts(neck, bust).unwrap_or(0);
        }
        let told = DOUBTS.iter().filter(|bit| bits & bit.bit != 0);
        doubts.extend(told.map(|bit| format!("{}: {}", person.name, bit.text)));
    }
    doubts
}
