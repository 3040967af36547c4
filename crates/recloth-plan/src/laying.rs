//! The lay: pieces of each cloth onto its panels, and what proves that a piece cannot lie there.

use recloth::outline::Hand;
use recloth_lay::{Answer, Bound, Faces, Fit, Options, Panel, Part, fit};
use serde::Serialize;

use crate::brief::{Brief, BriefError};
use crate::cloth::Cloth;
use crate::measure::Tape;
use crate::plan::{CutPiece, Plan};

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
    /// Index in [`Plan::panels`] of the panel that each lay panel is a part of.
    pub panel_of: Vec<usize>,
    /// The panels as they were laid on.
    pub panels: Vec<Panel>,
    /// What fits where.
    pub fit: Fit,
}

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
        let (mut panels, mut panel_of) = (Vec::new(), Vec::new());
        for (place, cloth) in cloths
            .iter()
            .enumerate()
            .filter(|(_, cloth)| cloth.cloth_index == index)
        {
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
        let parts: Vec<Part> = of_cloth
            .iter()
            .map(|piece| part(piece, kind.tilt_deg))
            .collect();
        let fit = fit(
            &parts,
            &panels,
            &Options {
                budget: BUDGET,
                ..Options::default()
            },
        )
        .map_err(|error| no_lay(&brief.file, &kind.name, &error))?;
        lays.push(Laid {
            cloth: kind.name.clone(),
            pieces: of_cloth.iter().map(|piece| piece.number).collect(),
            parts,
            panel_of,
            panels,
            fit,
        });
    }
    Ok(lays)
}

/// Evaluations of the search: a few seconds where not everything fits, far less where it does.
const BUDGET: u64 = if cfg!(fuzzing) {
    1_000_000
} else {
    300_000_000
};

fn part(piece: &CutPiece, tilt_deg: f64) -> Part {
    let cutting = piece.piece.cutting();
    let mirrored = match cutting.hand {
        Hand::Mirrored => cutting.count / 2,
        Hand::Identical => 0,
    };
    Part {
        grain_deg: piece.piece.grain_deg(),
        tilt_deg,
        as_drawn: cutting.count - mirrored,
        mirrored,
        ..Part::new(piece.piece.name(), piece.outline.iter().copied())
    }
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
