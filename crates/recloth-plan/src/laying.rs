//! The lay: pieces of each cloth onto its panels, and what proves that a piece cannot lie there.

use core::ops::ControlFlow;

use recloth::quantity::cloth_to_buy;
use recloth::units::YARD;
use recloth_lay::{
    Answer, Bound, Faces, Fit, Flaw, Leftover, Options, Panel, Part, Progress, Repeat, Strip,
    StripOptions, Together, fit_with, strip_with,
};
use serde::Serialize;

use crate::brief::{self, Brief, BriefError};
use crate::cloth::Cloth;
use crate::giving::{Given, give};
use crate::left::left;
use crate::measure::Tape;
use crate::plan::{CutPiece, Plan, TOLERANCE};

/// The lay of one cloth.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[non_exhaustive]
pub struct Laid {
    /// Name of the cloth.
    pub cloth: String,
    /// Number of the piece that each part is.
    pub pieces: Vec<usize>,
    /// The parts as they were laid.
    pub parts: Vec<Part>,
    /// Index in [`Plan::panels`] of the panel that each lay panel is a part of; empty where the cloth is bought.
    pub panel_of: Vec<usize>,
    /// The panels as they were laid on.
    pub panels: Vec<Panel>,
    /// What fits where.
    pub fit: Fit,
    /// What must give, where not all of them fit and the brief allows something.
    pub given: Option<Given>,
    /// What the lay leaves, parts with a rectangle on grain at least 5 cm wide; where something gives, what is left then.
    pub left: Vec<Leftover>,
    /// Why that could not be worked out.
    #[serde(skip)]
    pub(crate) left_unknown: Option<String>,
    /// What to buy, where the cloth is bought for these pieces.
    pub bought: Option<Bought>,
}

/// Cloth that is bought by the length.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[non_exhaustive]
pub struct Bought {
    /// Width between the selvedges, as it is bought (mm).
    pub width: f64,
    /// Length that the pieces take, as it is bought: what the wash takes is in it (mm).
    pub length: f64,
    /// Length to ask for: to the next 10 cm, or eighth of a yard where inches are printed (mm).
    pub ask: f64,
    /// Whether it is cut folded: lengthwise, right sides together, selvedges together.
    pub folded: bool,
}

/// Told of a search: the cloth, and how far it is. A break ends that search with the best so far.
pub(crate) type Tell<'a> = &'a mut dyn FnMut(&str, Progress) -> ControlFlow<()>;

/// A panel or piece that no lay can be made with.
fn no_lay(file: &str, cloth: &str, error: &impl std::fmt::Display) -> BriefError {
    BriefError::new(
        file,
        None,
        format!("the lay of the {cloth}: {error}"),
        "Look at the measures of that panel or piece; lengths in this message are in mm.",
    )
}

/// Lays every cloth that pieces are cut from.
pub(crate) fn lay(
    brief: &Brief,
    cloths: &[Cloth],
    pieces: &[CutPiece],
    options: &StripOptions,
    tell: Tell<'_>,
) -> Result<Vec<Laid>, BriefError> {
    let mut lays = Vec::new();
    for (index, kind) in brief.cloths.iter().enumerate() {
        let of_cloth: Vec<&CutPiece> = pieces
            .iter()
            .filter(|piece| piece.piece.cutting().cloth == kind.name)
            .collect();
        if of_cloth.is_empty() {
            continue;
        }
        if let Some(width) = kind.bought_width {
            lays.push(bought(brief, kind, width, &of_cloth, options, tell)?);
            continue;
        }
        let (mut panels, mut panel_of) = (Vec::new(), Vec::new());
        for (place, cloth) in cloths
            .iter()
            .enumerate()
            .filter(|(_, cloth)| cloth.cloth_index == index)
        {
            // Flaws that may lie under something stay on the panel, for the lay to judge piece by piece.
            let hidden = cloth.flaws.iter().filter(|flaw| !flaw.under.is_empty());
            let hidden: Vec<Flaw> = hidden
                .map(|flaw| Flaw {
                    what: flaw.what.clone(),
                    under: flaw.under.clone(),
                    ..Flaw::new(flaw.outline.iter().copied(), 0.0)
                })
                .collect();
            for (part, usable) in cloth.usable.iter().enumerate() {
                let name = match part {
                    0 => cloth.name.clone(),
                    _ => format!("{}, part {}", cloth.name, part + 1),
                };
                let faces = if kind.two_faced {
                    Faces::Two
                } else {
                    Faces::One
                };
                let panel = Panel::new(name, usable.outline.iter().copied())
                    .and_then(|panel| panel.with_holes(usable.holes.clone()))
                    .and_then(|panel| panel.with_flaws(hidden.clone()))
                    .map_err(|error| {
                        let of = format!("panel \"{}\": {error}", cloth.name);
                        no_lay(&brief.file, &kind.name, &of)
                    })?;
                panels.push(panel.with_faces(faces).with_nap(kind.one_way));
                panel_of.push(place);
            }
        }
        if panels.is_empty() {
            let name = of_cloth[0].piece.name();
            return Err(BriefError::new(
                &brief.file,
                None,
                format!(
                    "the {name} is cut from \"{}\", but no panel is of that cloth",
                    kind.name
                ),
                format!(
                    "Add [[panels]] with cloth = \"{}\", or give another cloth.",
                    kind.name
                ),
            ));
        }
        let with_seam = panels.iter().any(|panel| !panel.flaws().is_empty());
        let parts = parts(brief, kind, &of_cloth, with_seam)?;
        let search = Options {
            budget: options.budget.saturating_mul(PANELS),
            seed: options.seed,
            seconds: options.seconds,
            threads: options.threads,
            ..Options::default()
        };
        let fit = fit_with(&parts, &panels, &search, |so_far| tell(&kind.name, so_far))
            .map_err(|error| no_lay(&brief.file, &kind.name, &error))?;
        let fits = fit.together == Together::Fit;
        let mut tell = |so_far| tell(&kind.name, so_far);
        let given = give(
            brief,
            &kind.name,
            (&parts, &panels),
            fits,
            &search,
            &mut tell,
        )?;
        let shown = given.as_ref().and_then(Given::changed);
        let (left, left_unknown) = match shown {
            Some((_, parts, fit)) => left(parts, &panels, fit),
            None => left(&parts, &panels, &fit),
        };
        lays.push(Laid {
            cloth: kind.name.clone(),
            pieces: of_cloth.iter().map(|piece| piece.number).collect(),
            parts,
            panel_of,
            panels,
            fit,
            given,
            left,
            left_unknown,
            bought: None,
        });
    }
    Ok(lays)
}

/// Panels are searched with so many times the budget of a strip: a few seconds where not everything fits, far less where it
/// does. The number has no source.
const PANELS: u64 = if cfg!(fuzzing) { 10 } else { 30 };

/// The lay of cloth that is bought by the length, after the wash.
fn bought(
    brief: &Brief,
    kind: &brief::Cloth,
    width: f64,
    pieces: &[&CutPiece],
    options: &StripOptions,
    tell: Tell<'_>,
) -> Result<Laid, BriefError> {
    let (along_pct, across_pct) = kind.change_pct;
    let washed = Strip {
        width: width * (1.0 + across_pct / 100.0),
        faces: if kind.two_faced {
            Faces::Two
        } else {
            Faces::One
        },
        nap: kind.one_way,
        folded: kind.cut_folded,
        // The print shrinks with the cloth.
        repeat: kind.repeat.map(|repeat| {
            Repeat::new(
                repeat.along * (1.0 + along_pct / 100.0),
                repeat.across * (1.0 + across_pct / 100.0),
            )
        }),
    };
    let parts = matching(brief, kind, pieces, parts(brief, kind, pieces, false)?)?;
    let found = strip_with(&parts, &washed, options, |so_far| tell(&kind.name, so_far))
        .map_err(|error| no_lay(&brief.file, &kind.name, &error))?;
    let panel = washed
        .panel(found.length)
        .map_err(|error| no_lay(&brief.file, &kind.name, &error))?;
    let length = found.length / (1.0 + along_pct / 100.0);
    let graduation = match brief.tape.is_metric() {
        true => 100.0,
        false => YARD / 8.0,
    };
    let ask = cloth_to_buy(length, 0.0, 0.0, graduation)
        .map_err(|error| no_lay(&brief.file, &kind.name, &error))?;
    let fit = found.as_fit(&parts);
    let panels = vec![panel.with_name(format!("{}, bought", kind.name))];
    let (left, left_unknown) = left(&parts, &panels, &fit);
    Ok(Laid {
        cloth: kind.name.clone(),
        pieces: pieces.iter().map(|piece| piece.number).collect(),
        fit,
        given: None,
        left,
        left_unknown,
        parts,
        panel_of: Vec::new(),
        panels,
        bought: Some(Bought {
            width,
            length,
            ask,
            folded: kind.cut_folded,
        }),
    })
}

/// The pieces as they are laid; of one on a fold the whole. The seam line is asked for where flaws may lie under something;
/// other flaws are taken off the panels.
fn parts(
    brief: &Brief,
    kind: &brief::Cloth,
    pieces: &[&CutPiece],
    with_seam: bool,
) -> Result<Vec<Part>, BriefError> {
    let part = |piece: &&CutPiece| {
        let mut part = Part::of(&piece.piece, TOLERANCE).map_err(|error| {
            let of = piece.piece.sentence(&error);
            no_lay(&brief.file, &kind.name, &of)
        })?;
        if !with_seam {
            part.seam.clear();
        }
        Ok(Part {
            tilt_deg: kind.tilt_deg,
            role: piece.role.clone(),
            ..part
        })
    };
    pieces.iter().map(part).collect()
}

/// The parts with the notches at which their cloth is to match.
fn matching(
    brief: &Brief,
    kind: &brief::Cloth,
    pieces: &[&CutPiece],
    mut parts: Vec<Part>,
) -> Result<Vec<Part>, BriefError> {
    let notches = |piece: &CutPiece| -> Vec<String> {
        let edges = piece.piece.edges().iter();
        let notches = edges.flat_map(|edge| &edge.notches);
        notches.map(|notch| notch.name.clone()).collect()
    };
    for name in &kind.match_notches {
        let mut found = false;
        for (part, piece) in parts.iter_mut().zip(pieces) {
            if notches(piece).contains(name) {
                found = true;
                let matching = part.clone().matching_notch(&piece.piece, name);
                *part = matching.map_err(|error| no_lay(&brief.file, &kind.name, &error))?;
            }
        }
        if !found {
            let mut there: Vec<String> = pieces.iter().flat_map(|piece| notches(piece)).collect();
            there.sort();
            there.dedup();
            return Err(BriefError::new(
                &brief.file,
                None,
                format!("no piece of the {} has a notch \"{name}\"", kind.name),
                match there.is_empty() {
                    true => {
                        "Its pieces have no notches: take match_notches and the repeat away.".into()
                    }
                    false => format!("Notches of its pieces are: {}.", there.join(", ")),
                },
            ));
        }
    }
    Ok(parts)
}

impl Plan {
    /// What proves that a piece can lie on no panel: what is wrong, what would be right. None where it can, or may.
    pub(crate) fn proof(&self, number: usize) -> Option<(String, String)> {
        let (laid, part) = self.lays.iter().find_map(|laid| {
            Some((laid, laid.pieces.iter().position(|&piece| piece == number)?))
        })?;
        let mut bounds = Vec::new();
        for alone in laid.fit.alone.iter().filter(|alone| alone.part == part) {
            match alone.answer {
                Answer::Cannot(bound) => bounds.push((alone.panel, bound)),
                _ => return None,
            }
        }
        // The nearest miss says most: the panel that is short by least.
        let (panel, bound) = bounds
            .iter()
            .min_by(|a, b| short(&a.1).total_cmp(&short(&b.1)))
            .map(|(panel, bound)| (laid.panels[*panel].name(), bound))?;
        let piece = self.piece(number);
        let name = piece.piece.name();
        let (why, right) = bound_words(bound, &self.tape);
        Some((
            format!(
                "the {name} is larger than every panel of {}: on the {panel}, the nearest, {why}",
                laid.cloth
            ),
            right,
        ))
    }
}

fn short(bound: &Bound) -> f64 {
    bound.short_by().unwrap_or(f64::INFINITY)
}

/// A bound in words, and the least change that would help.
fn bound_words(bound: &Bound, tape: &Tape) -> (String, String) {
    match *bound {
        Bound::Across { needed, there } => (
            format!(
                "it needs {} across the grain and there are {}",
                tape.text(needed),
                tape.text(there)
            ),
            format!(
                "Make it {} narrower, or give a wider panel.",
                tape.text(needed - there)
            ),
        ),
        Bound::Along { needed, there } => (
            format!(
                "it needs {} along the grain and there are {}",
                tape.text(needed),
                tape.text(there)
            ),
            format!(
                "Make it {} shorter, or give a longer panel.",
                tape.text(needed - there)
            ),
        ),
        Bound::Area { .. } => (
            String::from("it has more area than the whole panel"),
            String::from("Make it smaller, or give a larger panel."),
        ),
        Bound::OneFace => (
            String::from("both of its sides show, and the cloth has one right side"),
            String::from("Give a cloth with right_side = \"both sides\"."),
        ),
        _ => (
            String::from("it has no place at any tilt that its grain allows"),
            String::from("Make it smaller, or allow its grain more tilt (tilt_deg of the cloth)."),
        ),
    }
}
