//! The cloth there is: cloths, and the panels measured by tape.

use std::ops::Range;

use recloth::panel::{Repeat, SEAM_ALLOWANCE};

use super::{At, BriefError, Sureness, Table, work};
use crate::garment::LINING;

/// A kind of cloth in the heap.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Cloth {
    pub(crate) name: String,
    pub(crate) fibre: super::Fibre,
    pub(crate) sure: Sureness,
    /// Both faces look alike, so that a piece may be turned over.
    pub(crate) two_faced: bool,
    /// A nap, pile or one-way print.
    pub(crate) one_way: bool,
    /// How far a piece's grain may lie off the cloth's (degrees).
    pub(crate) tilt_deg: f64,
    /// Width between the selvedges of cloth that is bought by the length (mm); none where there are panels.
    pub(crate) bought_width: Option<f64>,
    /// Bought cloth is folded lengthwise when it is cut.
    pub(crate) cut_folded: bool,
    /// How a stripe, check or print repeats on cloth that is bought (mm).
    pub(crate) repeat: Option<Repeat>,
    /// Names of the notches at which it runs on across the seams.
    pub(crate) match_notches: Vec<String>,
    /// Change in the wash before cutting, along and across the grain (%; minus is shrinkage).
    pub(crate) change_pct: (f64, f64),
}

/// A panel as the tape found it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct GivenPanel {
    pub(crate) name: String,
    /// Index of its cloth.
    pub(crate) cloth: usize,
    pub(crate) corners: Corners,
    pub(crate) grain: Grain,
    /// Lost all round: worn, frayed, pricked edges (mm), one for each edge.
    pub(crate) losses: Vec<f64>,
    pub(crate) flaws: Vec<GivenFlaw>,
    pub(crate) span: Range<usize>,
}

/// How the corners were found. Edge `i` runs from corner `i` to the next.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Corners {
    /// Points along and up (mm), anticlockwise.
    Points(Vec<(f64, f64)>),
    /// Letters anticlockwise, and tape readings between them.
    Readings {
        letters: Vec<char>,
        readings: Vec<Reading>,
    },
}

impl Corners {
    /// How many there are.
    fn count(&self) -> usize {
        match self {
            Corners::Points(points) => points.len(),
            Corners::Readings { letters, .. } => letters.len(),
        }
    }
}

/// One tape reading between two corners.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Reading {
    pub(crate) from: usize,
    pub(crate) to: usize,
    pub(crate) length: f64,
    pub(crate) span: Range<usize>,
}

/// Which way the warp runs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Grain {
    /// Degrees anticlockwise from the first edge.
    Angle(f64),
    /// From one corner to another.
    Between(usize, usize),
}

/// A scorch, stain, hole or worn place: a rectangle round it, in the panel's own directions.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct GivenFlaw {
    pub(crate) what: String,
    /// Its middle: along the first edge from the first corner, and square up from it (mm).
    pub(crate) at: (f64, f64),
    pub(crate) wide: f64,
    pub(crate) high: f64,
    /// How far to keep clear of it (mm).
    pub(crate) clear: f64,
    /// Roles of pieces it does not matter for; of none, it is cut away.
    pub(crate) under: Vec<String>,
}

/// A panel of a garment is within this (mm): a fingertip to six metres.
const SIDE: (f64, f64) = (5.0, 6000.0);
/// Ribbon to the widest sheeting.
const BOLT: (f64, f64) = (10.0, 6000.0);
/// The repeats that cloth may have (mm).
const REPEAT: (f64, f64) = (1.0, 2000.0);
const PLACE: (f64, f64) = (-6000.0, 6000.0);
const LOSS: (f64, f64) = (0.0, 500.0);

pub(super) fn cloths(top: &Table<'_>) -> Result<Vec<Cloth>, BriefError> {
    let mut cloths = Vec::new();
    for (name, table) in top.named_tables("cloths", "cloth")? {
        let (fibre, sure) = work::fibre(&table)?;
        let bought_width = table.opt_length("bought_width", BOLT)?;
        let cut_folded = table.flag("cut_folded", false)?;
        if cut_folded && bought_width.is_none() {
            return Err(table.error(
                &table.span,
                format!("\"{name}\" is cut folded, but not bought by the length"),
                "Add its bought_width, or take cut_folded away: panels are cut opened.",
            ));
        }
        let (repeat, match_notches) = repeat(&table, bought_width.is_some())?;
        let two_faced = table.choice("right_side", &[("one side", false), ("both sides", true)])?;
        cloths.push(Cloth {
            name,
            fibre,
            sure,
            two_faced,
            one_way: table.flag("one_way", false)?,
            tilt_deg: table.opt_number("tilt_deg", (0.0, 90.0))?.unwrap_or(0.0),
            bought_width,
            cut_folded,
            repeat,
            match_notches,
            change_pct: (
                -table
                    .opt_number("shrinks_along_pct", (-10.0, 40.0))?
                    .unwrap_or(0.0),
                -table
                    .opt_number("shrinks_across_pct", (-10.0, 40.0))?
                    .unwrap_or(0.0),
            ),
        });
        table.done()?;
    }
    Ok(cloths)
}

/// How bought cloth repeats, and at which notches that is matched.
fn repeat(table: &Table<'_>, is_bought: bool) -> Result<(Option<Repeat>, Vec<String>), BriefError> {
    let along = table.opt_length("repeat_along", REPEAT)?;
    let across = table.opt_length("repeat_across", REPEAT)?;
    let names = table.texts("match_notches")?;
    let repeats = along.is_some() || across.is_some();
    for key in ["repeat_along", "repeat_across", "match_notches"] {
        if table.has(key) && !is_bought {
            return Err(table.error(
                &table.place(key),
                format!("{key} is of cloth that is bought by the length"),
                "Add bought_width, or take it out; lay panels that repeat with recloth's fit.",
            ));
        }
    }
    if repeats == names.is_empty() && (repeats || !names.is_empty()) {
        let key = if repeats {
            "repeat_along"
        } else {
            "match_notches"
        };
        return Err(table.error(
            &table.place(key),
            "cloth that repeats needs the notches at which it is to match, and they need a repeat",
            "Give both: repeat_along or repeat_across, and match_notches = [\"side\"].",
        ));
    }
    let repeat = Repeat::new(along.unwrap_or(0.0), across.unwrap_or(0.0));
    Ok((
        repeats.then_some(repeat),
        names.into_iter().map(|name| name.value).collect(),
    ))
}

pub(super) fn panels(top: &Table<'_>, cloths: &[Cloth]) -> Result<Vec<GivenPanel>, BriefError> {
    let mut panels: Vec<GivenPanel> = Vec::new();
    for table in top.tables("panels", "panel")? {
        let name = table.text("name")?;
        if panels.iter().any(|other| other.name == name.value) {
            return Err(table.error(
                &name.span,
                format!("two panels are both called \"{}\"", name.value),
                "Give each its own name: \"left sleeve\", \"right sleeve\".",
            ));
        }
        let cloth = named(
            &table,
            "cloth",
            cloths.iter().map(|cloth| cloth.name.as_str()),
            "[cloths.NAME]",
        )?;
        if cloths[cloth].bought_width.is_some() {
            return Err(table.error(
                &table.span,
                format!(
                    "the panel \"{}\" is of \"{}\", which is bought by the length",
                    name.value, cloths[cloth].name
                ),
                "Take bought_width from that cloth, or the panel from the brief.",
            ));
        }
        let (corners, letters) = corners(&table)?;
        let grain = grain(&table, &letters)?;
        let losses = losses(&table, corners.count(), &letters)?;
        let flaws = flaws(&table)?;
        table.done()?;
        let span = table.span.clone();
        panels.push(GivenPanel {
            name: name.value,
            cloth,
            corners,
            grain,
            losses,
            flaws,
            span,
        });
    }
    Ok(panels)
}

/// The index of the name under this key among those the brief gives elsewhere.
pub(super) fn named<'n>(
    table: &Table<'_>,
    key: &'static str,
    names: impl Iterator<Item = &'n str> + Clone,
    where_given: &str,
) -> Result<usize, BriefError> {
    let text = table.text(key)?;
    match names.clone().position(|name| name == text.value) {
        Some(index) => Ok(index),
        None if names.clone().next().is_none() => Err(table.error(
            &text.span,
            format!(
                "\"{key}\" is \"{}\", but the brief has no {where_given}",
                text.value
            ),
            format!("Add {}.", where_given.replace("NAME", &text.value)),
        )),
        None => Err(table.not_offered(key, &text, names)),
    }
}

fn corners(table: &Table<'_>) -> Result<(Corners, Vec<char>), BriefError> {
    let ways = [
        table.has("across") || table.has("along"),
        table.has("corners"),
        table.has("outline"),
    ];
    if ways.iter().filter(|way| **way).count() != 1 {
        return Err(table.error(
            &table.span,
            format!("{} is measured in {} ways, not one", table.what, ["no", "", "two", "three"][ways.iter().filter(|way| **way).count()]),
            "Give a rectangle (across and along the grain), or corners and readings between them, or an outline.",
        ));
    }
    if ways[0] {
        let (across, along) = (table.length("across", SIDE)?, table.length("along", SIDE)?);
        let points = vec![(0.0, 0.0), (across, 0.0), (across, along), (0.0, along)];
        return Ok((Corners::Points(points), letters(4)));
    }
    if let Some(points) = table.opt_points("outline", PLACE)? {
        if points.len() < 3 || points.len() > 500 {
            return Err(table.error(
                &table.place("outline"),
                format!("the outline of {} has {} points", table.what, points.len()),
                "Give 3 to 500 points, anticlockwise, each [along, up].",
            ));
        }
        let letters = letters(points.len());
        return Ok((Corners::Points(points), letters));
    }
    let text = table.text("corners")?;
    let letters: Vec<char> = text.value.chars().filter(|c| !c.is_whitespace()).collect();
    let twice = letters
        .iter()
        .enumerate()
        .any(|(i, c)| letters[..i].contains(c));
    if letters.len() < 3
        || letters.len() > 26
        || twice
        || !letters.iter().all(char::is_ascii_uppercase)
    {
        return Err(table.error(
            &text.span,
            format!("corners cannot be \"{}\"", text.value),
            "Give each corner one capital letter, anticlockwise: corners = \"ABCD\".",
        ));
    }
    let mut readings: Vec<Reading> = Vec::new();
    for (name, length) in table.lettered("readings", SIDE)? {
        let (from, to) = pair(table, &name, &letters)?;
        if readings
            .iter()
            .any(|r| (r.from, r.to) == (from, to) || (r.to, r.from) == (from, to))
        {
            return Err(table.error(
                &name.span,
                format!("the reading {} is given twice", name.value),
                "Keep one of the two; measure again if they differ.",
            ));
        }
        readings.push(Reading {
            from,
            to,
            length,
            span: name.span,
        });
    }
    Ok((
        Corners::Readings {
            letters: letters.clone(),
            readings,
        },
        letters,
    ))
}

/// A, B, C … for the corners of a rectangle or outline; beyond Z an edge has no letters.
fn letters(count: usize) -> Vec<char> {
    ('A'..='Z').take(count).collect()
}

/// Two letters to two corners.
fn pair(
    table: &Table<'_>,
    name: &At<String>,
    letters: &[char],
) -> Result<(usize, usize), BriefError> {
    let at: Vec<Option<usize>> = name
        .value
        .chars()
        .map(|c| letters.iter().position(|letter| *letter == c))
        .collect();
    match at[..] {
        [Some(from), Some(to)] if from != to => Ok((from, to)),
        _ => Err(table.error(
            &name.span,
            format!(
                "\"{}\" does not name two corners of {}",
                name.value, table.what
            ),
            format!(
                "Write two of the letters {}, as in AB.",
                letters.iter().collect::<String>()
            ),
        )),
    }
}

fn grain(table: &Table<'_>, letters: &[char]) -> Result<Grain, BriefError> {
    if let Some(text) = table.opt_text("grain")? {
        let (from, to) = pair(table, &text, letters)?;
        if table.has("grain_deg") {
            return Err(table.error(
                &table.place("grain_deg"),
                format!("{} has both grain and grain_deg", table.what),
                "Keep the one that was measured.",
            ));
        }
        return Ok(Grain::Between(from, to));
    }
    Ok(Grain::Angle(
        table
            .opt_number("grain_deg", (-360.0, 360.0))?
            .unwrap_or(90.0),
    ))
}

/// One loss for each edge; of an outline with more corners than letters, only the first edges can be named.
fn losses(table: &Table<'_>, count: usize, letters: &[char]) -> Result<Vec<f64>, BriefError> {
    let all = table.opt_length("loss", LOSS)?.unwrap_or(0.0);
    let mut losses = vec![all; count];
    for (name, loss) in table.lettered("losses", LOSS)? {
        let (from, to) = pair(table, &name, letters)?;
        let edge = if (from + 1) % count == to {
            from
        } else if (to + 1) % count == from {
            to
        } else {
            return Err(table.error(
                &name.span,
                format!("{} is not an edge of {}", name.value, table.what),
                "An edge joins two neighbouring corners.",
            ));
        };
        losses[edge] = loss;
    }
    Ok(losses)
}

/// Under what a flaw may lie: the roles of pieces, and what lies between cut line and seam line.
const ROLES: &[&str] = &[SEAM_ALLOWANCE, LINING];

fn flaws(table: &Table<'_>) -> Result<Vec<GivenFlaw>, BriefError> {
    let mut flaws = Vec::new();
    for flaw in table.tables("flaws", "flaw")? {
        let under = flaw.texts("under")?;
        for role in &under {
            if !ROLES.contains(&role.value.as_str()) {
                return Err(flaw.not_offered("under", role, ROLES.iter().copied()));
            }
        }
        flaws.push(GivenFlaw {
            under: under.into_iter().map(|role| role.value).collect(),
            what: flaw.text("what")?.value,
            at: flaw.point("at", PLACE)?,
            wide: flaw.length("wide", (0.5, 3000.0))?,
            high: flaw.length("high", (0.5, 3000.0))?,
            clear: flaw.opt_length("clear", LOSS)?.unwrap_or(0.0),
        });
        flaw.done()?;
    }
    Ok(flaws)
}
