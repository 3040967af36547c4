//! The brief: what there is, who it is for, what to make of it, in TOML.
//!
//! Lengths are texts with their unit (`"28 1/2 in"`, `"72,5 cm"`); everything in here is millimetres. A key that is not
//! known is an error that names the nearest one.

mod error;
mod garments;
mod gives;
mod panels;
mod reader;
mod work;

pub use error::BriefError;
pub(crate) use garments::{Buttons, Garment, Make, Pinafore, Pocket, Waistcoat, WrapSkirt};
pub(crate) use gives::{GiveKind, MayGive};
pub(crate) use panels::{Cloth, Corners, GivenFlaw, GivenPanel, Grain, Reading};
pub(crate) use reader::{At, Source, Table};
pub(crate) use work::{Bath, BathKind, Fibre, OldPart, Sureness, fibre_name};

use std::ops::Range;

use crate::measure::{self, Tape};
use crate::order::Step;

/// A measured person (mm); the garments say which measures they need.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Person {
    pub(crate) name: String,
    pub(crate) measures: Vec<(&'static str, f64)>,
    pub(crate) span: Range<usize>,
}

impl Person {
    pub(crate) fn get(&self, measure: &str) -> Option<f64> {
        self.measures
            .iter()
            .find(|(name, _)| *name == measure)
            .map(|(_, value)| *value)
    }
}

/// What every edge of a kind is given beyond its seam line (mm).
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Allowances {
    pub(crate) seam: f64,
    pub(crate) hem: f64,
}

/// A brief, read and checked key by key.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Brief {
    pub(crate) file: String,
    text: String,
    pub(crate) title: String,
    pub(crate) note: String,
    pub(crate) tape: Tape,
    pub(crate) allowances: Allowances,
    pub(crate) people: Vec<Person>,
    pub(crate) cloths: Vec<Cloth>,
    pub(crate) panels: Vec<GivenPanel>,
    pub(crate) parts: Vec<OldPart>,
    pub(crate) make: Vec<Make>,
    pub(crate) may_give: Vec<MayGive>,
    pub(crate) baths: Vec<Bath>,
    pub(crate) steps: Vec<Step>,
    pub(crate) steps_span: Option<Range<usize>>,
}

/// The longest brief that is read: a large one is a hundredth of this.
const LONGEST: usize = 1_000_000;

impl Brief {
    /// An error at a place of the brief.
    pub(crate) fn error(
        &self,
        span: &Range<usize>,
        wrong: impl Into<String>,
        right: impl Into<String>,
    ) -> BriefError {
        Source {
            file: &self.file,
            text: &self.text,
        }
        .error(span, wrong, right)
    }

    /// Reads a brief; `file` is its name in messages.
    pub(crate) fn read(text: &str, file: &str) -> Result<Brief, BriefError> {
        if text.len() > LONGEST {
            return Err(BriefError::new(
                file,
                None,
                format!("the brief is {} bytes long", text.len()),
                format!("A brief is at most {LONGEST} bytes; is this the right file?"),
            ));
        }
        let source = Source { file, text };
        let document = source.parse()?;
        let top = Table::new(source, document.get_ref(), 0..0, "the brief");
        let title = top.text("title")?.value;
        let note = top
            .opt_text("note")?
            .map_or(String::new(), |note| note.value);
        let (style, graduation) = top.choice("print_in", measure::STYLES)?;
        let allowances = match top.opt_table("allowances", "[allowances]")? {
            None => {
                return Err(BriefError::new(
                    file,
                    None,
                    "the brief has no [allowances]",
                    "Add [allowances] with seam = \"1/2 in\" and hem = \"1 1/4 in\".",
                ));
            }
            Some(table) => {
                let allowances = Allowances {
                    seam: table.length("seam", (0.0, 60.0))?,
                    hem: table.length("hem", (0.0, 200.0))?,
                };
                table.done()?;
                allowances
            }
        };
        let people = garments::people(&top)?;
        let cloths = panels::cloths(&top)?;
        let panels = panels::panels(&top, &cloths)?;
        let parts = work::parts(&top)?;
        let make = garments::make(&top, &people, &cloths)?;
        let may_give = gives::may_give(&top)?;
        let baths = work::baths(&top, &cloths)?;
        let steps = work::steps(&top, &make)?;
        let steps_span = top.has("steps").then(|| top.place("steps"));
        top.done()?;
        for (empty, what, right) in [
            (
                panels.is_empty() && cloths.iter().all(|cloth| cloth.bought_width.is_none()),
                "panel",
                "Add [[panels]] with name, cloth and its measures; or give a cloth its bought_width.",
            ),
            (
                make.is_empty(),
                "garment to make",
                "Add [[make]] with garment = \"wrap skirt\" and its measures.",
            ),
        ] {
            if empty {
                return Err(BriefError::new(
                    file,
                    None,
                    format!("the brief has no {what}"),
                    right,
                ));
            }
        }
        Ok(Brief {
            file: file.to_owned(),
            text: text.to_owned(),
            title,
            note,
            tape: Tape { style, graduation },
            allowances,
            people,
            cloths,
            panels,
            parts,
            make,
            may_give,
            baths,
            steps,
            steps_span,
        })
    }
}
