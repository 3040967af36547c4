//! What the old garment is made of, the baths it is to have, and steps of the maker's own.

use std::ops::Range;

use super::{BriefError, Cloth, Make, Table, panels};
use crate::measure;
use crate::order::{Kind, Step};

/// A fibre, as far as it matters to a bath.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Fibre {
    Linen,
    Cotton,
    Viscose,
    Wool,
    Silk,
    Polyester,
    Nylon,
    Acrylic,
    Acetate,
    Elastane,
    Rubber,
    Metal,
    Leather,
    Plastic,
    Shell,
    Unknown,
}

pub(crate) const FIBRES: &[(&str, Fibre)] = &[
    ("linen", Fibre::Linen),
    ("cotton", Fibre::Cotton),
    ("viscose", Fibre::Viscose),
    ("wool", Fibre::Wool),
    ("silk", Fibre::Silk),
    ("polyester", Fibre::Polyester),
    ("nylon", Fibre::Nylon),
    ("acrylic", Fibre::Acrylic),
    ("acetate", Fibre::Acetate),
    ("elastane", Fibre::Elastane),
    ("rubber", Fibre::Rubber),
    ("metal", Fibre::Metal),
    ("leather", Fibre::Leather),
    ("plastic", Fibre::Plastic),
    ("shell", Fibre::Shell),
    ("unknown", Fibre::Unknown),
];

/// The fibre's name, as a brief writes it.
pub(crate) fn fibre_name(fibre: Fibre) -> &'static str {
    FIBRES
        .iter()
        .find(|(_, known)| *known == fibre)
        .map_or("unknown", |(name, _)| name)
}

/// How surely the fibre is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Sureness {
    Known,
    Suspected,
    Unknown,
}

/// A part of the old garment besides its cloth.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct OldPart {
    pub(crate) name: String,
    pub(crate) fibre: Fibre,
    pub(crate) sure: Sureness,
    /// Stays on the cloth through the baths.
    pub(crate) stays: bool,
}

/// What a bath does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum BathKind {
    Scour,
    Tannin,
    Mordant,
    Dye,
}

/// Something put into a bath, by the weight of the dry goods (%).
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Amount {
    pub(crate) what: String,
    pub(crate) owf_pct: f64,
}

/// One bath.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Bath {
    pub(crate) kind: BathKind,
    /// Index of the cloth.
    pub(crate) cloth: usize,
    /// Dry goods (g).
    pub(crate) dry_g: f64,
    /// Litres of liquor to a kilogram of dry goods.
    pub(crate) ratio: f64,
    /// What the pot holds with room to stir (ml), where it is given.
    pub(crate) pot_ml: Option<f64>,
    pub(crate) with: Vec<Amount>,
}

pub(super) fn fibre(table: &Table<'_>) -> Result<(Fibre, Sureness), BriefError> {
    let fibre = table.choice("fibre", FIBRES)?;
    let sure = table.opt_choice(
        "fibre_is",
        &[
            ("known", Sureness::Known),
            ("suspected", Sureness::Suspected),
            ("unknown", Sureness::Unknown),
        ],
    )?;
    // Nothing said is not known: a label may lie, and a guess is a guess.
    let sure = if fibre == Fibre::Unknown {
        Sureness::Unknown
    } else {
        sure.unwrap_or(Sureness::Suspected)
    };
    Ok((fibre, sure))
}

pub(super) fn parts(top: &Table<'_>) -> Result<Vec<OldPart>, BriefError> {
    let mut parts = Vec::new();
    for table in top.tables("parts", "part")? {
        let name = table.text("name")?.value;
        let (fibre, sure) = fibre(&table)?;
        parts.push(OldPart {
            name,
            fibre,
            sure,
            stays: table.flag("stays_on", false)?,
        });
        table.done()?;
    }
    Ok(parts)
}

/// Words that mean a chlorine or other bleach, in a bath's kind or contents.
const BLEACH: &[&str] = &[
    "bleach",
    "chlorite",
    "chlorine",
    "naocl",
    "javel",
    "peroxide",
    "percarbonate",
    "perborate",
    "hydrosulphite",
    "hydrosulfite",
    "dithionite",
];

fn no_bleach(table: &Table<'_>, span: &Range<usize>, text: &str) -> Result<(), BriefError> {
    let lower = text.to_lowercase();
    if BLEACH.iter().any(|word| lower.contains(word)) {
        return Err(table.error(
            span,
            format!("\"{text}\": recloth plans no bleach yet"),
            "Its cautions, its time and its swatch test come first, and are not written. Leave the bath out; if you \
             bleach all the same, go by the product's label, the care label and local rules.",
        ));
    }
    Ok(())
}

pub(super) fn baths(top: &Table<'_>, cloths: &[Cloth]) -> Result<Vec<Bath>, BriefError> {
    let mut baths = Vec::new();
    for table in top.tables("baths", "bath")? {
        if let Some(what) = table.opt_text("what")? {
            no_bleach(&table, &what.span, &what.value)?;
        }
        let kind = table.choice(
            "what",
            &[
                ("scour", BathKind::Scour),
                ("tannin", BathKind::Tannin),
                ("mordant", BathKind::Mordant),
                ("dye", BathKind::Dye),
            ],
        )?;
        let cloth = panels::named(
            &table,
            "cloth",
            cloths.iter().map(|c| c.name.as_str()),
            "[cloths.NAME]",
        )?;
        let dry = table.text("dry_weight")?;
        let dry_g = measure::parse_mass(&dry.value)
            .filter(|grams| (1.0..=1e5).contains(grams))
            .ok_or_else(|| {
                table.error(
                    &dry.span,
                    format!("dry_weight cannot be read as a weight: \"{}\"", dry.value),
                    "Write it with its unit: dry_weight = \"850 g\", \"1,2 kg\", \"2 lb\" or \"12 oz\", 1 g to 100 kg, and without a \
                     mark for thousands.",
                )
            })?;
        let ratio = table.number("litres_per_kg", (3.0, 200.0))?;
        let pot_ml = table
            .opt_number("pot_litres", (0.5, 1000.0))?
            .map(|litres| litres * 1000.0);
        let mut with = Vec::new();
        for amount in table.tables("with", "amount")? {
            let what = amount.text("what")?;
            no_bleach(&amount, &what.span, &what.value)?;
            with.push(Amount {
                what: what.value,
                owf_pct: amount.number("percent_of_weight", (0.01, 1000.0))?,
            });
            amount.done()?;
        }
        table.done()?;
        baths.push(Bath {
            kind,
            cloth,
            dry_g,
            ratio,
            pot_ml,
            with,
        });
    }
    Ok(baths)
}

pub(super) fn steps(top: &Table<'_>, make: &[Make]) -> Result<Vec<Step>, BriefError> {
    let kinds: Vec<(&str, Kind)> = Kind::ALL.iter().map(|kind| (kind.name(), *kind)).collect();
    let mut steps = Vec::new();
    for table in top.tables("steps", "step")? {
        let name = table.text("name")?;
        no_bleach(&table, &name.span, &name.value)?;
        let kind = table.choice("kind", &kinds)?;
        let of = match table.opt_text("of")? {
            None => String::new(),
            Some(_) => {
                let names = make.iter().map(|make| make.name.as_str());
                make[panels::named(&table, "of", names, "garment of that name")?]
                    .name
                    .clone()
            }
        };
        let mut step = Step::new(name.value, kind, of).why("the brief asks for it");
        for after in table.texts("after")? {
            step = step.after(after.value);
        }
        steps.push(step);
        table.done()?;
    }
    Ok(steps)
}
