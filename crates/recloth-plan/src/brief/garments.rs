//! What is to be made.

use std::ops::Range;

use super::{BriefError, Cloth, Person, Table, panels};

/// A garment to make.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Make {
    /// What the maker calls it; unique.
    pub(crate) name: String,
    /// Index of its cloth.
    pub(crate) cloth: usize,
    pub(crate) garment: Garment,
    pub(crate) span: Range<usize>,
}

/// The garments there are, with their measures (mm).
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Garment {
    WrapSkirt(WrapSkirt),
    Waistcoat(Waistcoat),
    Pinafore(Pinafore),
    Pocket(Pocket),
}

/// A wrap skirt with darts and a waistband in sections.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct WrapSkirt {
    pub(crate) waist: f64,
    pub(crate) hip: f64,
    pub(crate) hip_depth: f64,
    pub(crate) waist_ease: f64,
    pub(crate) hip_ease: f64,
    pub(crate) length: f64,
    pub(crate) overlap: f64,
    pub(crate) facing: f64,
    pub(crate) back_darts: u32,
    pub(crate) front_darts: u32,
    pub(crate) dart_length: f64,
    pub(crate) largest_dart: f64,
    pub(crate) band_depth: f64,
    /// How much shorter the band's top edge is than its bottom edge, in all.
    pub(crate) band_taper: f64,
    pub(crate) band_curved: bool,
    /// How much wider each quarter is at the hem than at the hip.
    pub(crate) flare: f64,
    pub(crate) buttons: Buttons,
}

/// A lined waistcoat with a buttoned front.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Waistcoat {
    pub(crate) bust: f64,
    pub(crate) neck: f64,
    pub(crate) shoulder: f64,
    pub(crate) back_length: f64,
    pub(crate) across_back: f64,
    pub(crate) armhole_depth: f64,
    pub(crate) ease: f64,
    pub(crate) below_waist: f64,
    pub(crate) neck_depth: f64,
    /// Index of the lining's cloth.
    pub(crate) lining: usize,
    pub(crate) buttons: Buttons,
}

/// A child's pinafore: bib, straps, band, gathered skirt, ruffle.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Pinafore {
    pub(crate) waist: f64,
    pub(crate) ease: f64,
    pub(crate) skirt_length: f64,
    pub(crate) skirt_panels: u32,
    pub(crate) fullness: f64,
    pub(crate) bib_width: f64,
    pub(crate) bib_height: f64,
    pub(crate) strap_length: f64,
    pub(crate) strap_width: f64,
    pub(crate) band_depth: f64,
    pub(crate) band_overlap: f64,
    pub(crate) ruffle_depth: f64,
    pub(crate) ruffle_fullness: f64,
    pub(crate) ruffle_pieces: u32,
    pub(crate) buttons: Buttons,
}

/// A patch pocket.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Pocket {
    pub(crate) width: f64,
    pub(crate) height: f64,
    pub(crate) hem: f64,
    pub(crate) corner_radius: f64,
    pub(crate) count: u32,
    /// Name of the garment it is sewn to.
    pub(crate) on: String,
}

/// The buttons of one opening.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Buttons {
    pub(crate) count: u32,
    pub(crate) diameter: f64,
    pub(crate) thickness: f64,
}

/// Lengths a garment may have (mm): common sense, generous; no source.
const LONG: (f64, f64) = (20.0, 2500.0);
const SHORT: (f64, f64) = (0.0, 600.0);
const EASE: (f64, f64) = (-100.0, 600.0);

/// Measures of a body and what is possible for one (mm): from a baby to well past the largest of ANSUR II (C. C. Gordon
/// et al., 2012 Anthropometric Survey, NATICK/TR-15/007), generous.
const MEASURES: &[(&str, (f64, f64))] = &[
    ("waist", (300.0, 2500.0)),
    ("hip", (300.0, 2500.0)),
    ("hip_depth", (50.0, 400.0)),
    ("bust", (300.0, 2500.0)),
    ("neck", (180.0, 700.0)),
    ("shoulder", (40.0, 250.0)),
    ("back_length", (120.0, 700.0)),
    ("across_back", (150.0, 700.0)),
    ("armhole_depth", (70.0, 400.0)),
];

pub(super) fn people(top: &Table<'_>) -> Result<Vec<Person>, BriefError> {
    let mut people = Vec::new();
    for (name, table) in top.named_tables("people", "person")? {
        let mut measures = Vec::new();
        for &(measure, range) in MEASURES {
            if let Some(length) = table.opt_length(measure, range)? {
                measures.push((measure, length));
            }
        }
        table.done()?;
        people.push(Person {
            name,
            measures,
            span: table.span.clone(),
        });
    }
    Ok(people)
}

/// The person a garment is for.
struct Wearer<'a> {
    table: &'a Table<'a>,
    person: &'a Person,
}

impl Wearer<'_> {
    fn measure(&self, measure: &str) -> Result<f64, BriefError> {
        self.person.get(measure).ok_or_else(|| {
            self.table.error(
                &self.person.span,
                format!(
                    "[people.{}] has no \"{measure}\", which {} needs",
                    self.person.name, self.table.what
                ),
                format!("Add {measure} = \"...\", a length with its unit."),
            )
        })
    }
}

pub(super) fn make(
    top: &Table<'_>,
    people: &[Person],
    cloths: &[Cloth],
) -> Result<Vec<Make>, BriefError> {
    let mut make: Vec<Make> = Vec::new();
    for table in top.tables("make", "garment")? {
        let garment = table.choice(
            "garment",
            &[
                ("wrap skirt", 0),
                ("waistcoat", 1),
                ("pinafore", 2),
                ("patch pocket", 3),
            ],
        )?;
        let name = match table.opt_text("name")? {
            Some(name) => name,
            None => table.text("garment")?,
        };
        if make.iter().any(|other| other.name == name.value) {
            return Err(table.error(
                &name.span,
                format!("two garments are both called \"{}\"", name.value),
                "Give one of them another name = \"...\".",
            ));
        }
        let cloth_names = cloths.iter().map(|cloth| cloth.name.as_str());
        let cloth = panels::named(&table, "cloth", cloth_names.clone(), "[cloths.NAME]")?;
        let wearer = || {
            let names = people.iter().map(|person| person.name.as_str());
            let person = panels::named(&table, "for", names, "[people.NAME]")?;
            Ok(Wearer {
                table: &table,
                person: &people[person],
            })
        };
        let garment = match garment {
            0 => Garment::WrapSkirt(wrap_skirt(&table, &wearer()?)?),
            1 => {
                let lining = panels::named(&table, "lining", cloth_names, "[cloths.NAME]")?;
                Garment::Waistcoat(waistcoat(&table, &wearer()?, lining)?)
            }
            2 => Garment::Pinafore(pinafore(&table, &wearer()?)?),
            _ => {
                let names = make.iter().map(|other| other.name.as_str());
                let on =
                    panels::named(&table, "on", names, "garment of that name above the pocket")?;
                Garment::Pocket(pocket(&table, make[on].name.clone())?)
            }
        };
        table.done()?;
        make.push(Make {
            name: name.value,
            cloth,
            garment,
            span: table.span.clone(),
        });
    }
    Ok(make)
}

fn buttons(table: &Table<'_>, most: u32) -> Result<Buttons, BriefError> {
    Ok(Buttons {
        count: table.count("buttons", (1, most), 1)?,
        diameter: table.length("button_across", (6.0, 60.0))?,
        thickness: table
            .opt_length("button_thick", (0.5, 20.0))?
            .unwrap_or(3.0),
    })
}

fn wrap_skirt(table: &Table<'_>, wearer: &Wearer<'_>) -> Result<WrapSkirt, BriefError> {
    Ok(WrapSkirt {
        waist: wearer.measure("waist")?,
        hip: wearer.measure("hip")?,
        hip_depth: wearer.measure("hip_depth")?,
        waist_ease: table.opt_length("waist_ease", EASE)?.unwrap_or(12.7),
        hip_ease: table.opt_length("hip_ease", EASE)?.unwrap_or(50.8),
        length: table.length("length", LONG)?,
        overlap: table.length("overlap", SHORT)?,
        facing: table.opt_length("facing", (5.0, 150.0))?.unwrap_or(31.75),
        back_darts: table.count("back_darts", (0, 4), 1)?,
        front_darts: table.count("front_darts", (0, 4), 1)?,
        dart_length: table.length("dart_length", (20.0, 300.0))?,
        largest_dart: table.length("largest_dart", (5.0, 80.0))?,
        band_depth: table.length("band_depth", (10.0, 150.0))?,
        band_taper: table.opt_length("band_taper", SHORT)?.unwrap_or(0.0),
        band_curved: table
            .opt_choice("band_sections", &[("straight", false), ("curved", true)])?
            .unwrap_or(false),
        flare: table.opt_length("flare", SHORT)?.unwrap_or(0.0),
        buttons: buttons(table, 4)?,
    })
}

fn waistcoat(
    table: &Table<'_>,
    wearer: &Wearer<'_>,
    lining: usize,
) -> Result<Waistcoat, BriefError> {
    Ok(Waistcoat {
        bust: wearer.measure("bust")?,
        neck: wearer.measure("neck")?,
        shoulder: wearer.measure("shoulder")?,
        back_length: wearer.measure("back_length")?,
        across_back: wearer.measure("across_back")?,
        armhole_depth: wearer.measure("armhole_depth")?,
        ease: table.length("ease", EASE)?,
        below_waist: table
            .opt_length("below_waist", (-200.0, 600.0))?
            .unwrap_or(0.0),
        neck_depth: table.length("neck_depth", (60.0, 500.0))?,
        lining,
        buttons: buttons(table, 12)?,
    })
}

fn pinafore(table: &Table<'_>, wearer: &Wearer<'_>) -> Result<Pinafore, BriefError> {
    Ok(Pinafore {
        waist: wearer.measure("waist")?,
        ease: table.opt_length("ease", EASE)?.unwrap_or(25.4),
        skirt_length: table.length("skirt_length", LONG)?,
        skirt_panels: table.count("skirt_panels", (1, 8), 2)?,
        fullness: table.number("fullness", (1.0, 4.0))?,
        bib_width: table.length("bib_width", (60.0, 600.0))?,
        bib_height: table.length("bib_height", (60.0, 600.0))?,
        strap_length: table.length("strap_length", (100.0, 1500.0))?,
        strap_width: table.length("strap_width", (10.0, 120.0))?,
        band_depth: table.length("band_depth", (10.0, 150.0))?,
        band_overlap: table
            .opt_length("band_overlap", (0.0, 200.0))?
            .unwrap_or(38.1),
        ruffle_depth: table.length("ruffle_depth", (15.0, 400.0))?,
        ruffle_fullness: table.number("ruffle_fullness", (1.0, 4.0))?,
        ruffle_pieces: table.count("ruffle_pieces", (1, 24), 2)?,
        buttons: buttons(table, 6)?,
    })
}

fn pocket(table: &Table<'_>, on: String) -> Result<Pocket, BriefError> {
    Ok(Pocket {
        width: table.length("width", (30.0, 500.0))?,
        height: table.length("height", (30.0, 600.0))?,
        hem: table.opt_length("hem", (0.0, 150.0))?.unwrap_or(25.4),
        corner_radius: table
            .opt_length("corner_radius", (0.0, 250.0))?
            .unwrap_or(0.0),
        count: table.count("count", (1, 8), 1)?,
        on,
    })
}
