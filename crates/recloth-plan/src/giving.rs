//! Where not all pieces of a cloth fit: the least change that the brief allows, and its words.

use core::ops::ControlFlow;

use kurbo::{Point, Vec2};
use recloth_lay::{
    Amount, Change, Fit, Give, LeastChange, Made, Needed, Options, Panel, Part, Progress,
    least_change_with,
};
use serde::Serialize;

use crate::brief::{Brief, BriefError, GiveKind, MayGive};
use crate::laying::Laid;
use crate::measure::Tape;
use crate::nearest::nearest;
use crate::plan::{CutPiece, Plan};

/// What may give of the pieces of one cloth, and what is found to.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[non_exhaustive]
pub struct Given {
    /// What the brief allows, as it was looked for.
    pub allowed: Vec<Change>,
    /// The least of it that was found to do.
    pub least: LeastChange,
}

impl Given {
    /// What gives, the parts then and how they fit, where that was found.
    pub fn changed(&self) -> Option<(&[Made], &[Part], &Fit)> {
        match &self.least.answer {
            Needed::Changed { made, parts, fit } => Some((made, parts, fit)),
            _ => None,
        }
    }
}

/// Sees that every change is of a piece that the plan has, and can be made.
pub(crate) fn check_gives(brief: &Brief, pieces: &[CutPiece]) -> Result<(), BriefError> {
    for give in &brief.may_give {
        let names = pieces.iter().map(|piece| piece.piece.name());
        let Some(piece) = (pieces.iter()).find(|piece| piece.piece.name() == give.piece.value)
        else {
            let right = match nearest(&give.piece.value, names.clone()) {
                Some(meant) => format!("Is \"{meant}\" meant?"),
                None => format!(
                    "It may be: {}.",
                    names
                        .map(|name| format!("\"{name}\""))
                        .collect::<Vec<_>>()
                        .join(", ")
                ),
            };
            let wrong = format!("\"piece\" cannot be \"{}\"", give.piece.value);
            return Err(brief.error(&give.piece.span, wrong, right));
        };
        let cloth = piece.piece.cutting().cloth.as_str();
        let of = brief.cloths.iter().find(|kind| kind.name == cloth);
        let error = |wrong: String, right: &str| Err(brief.error(&give.span, wrong, right));
        if of.is_some_and(|kind| kind.bought_width.is_some()) {
            return error(
                format!(
                    "the {} may give, but \"{cloth}\" is bought by the length",
                    give.piece.value
                ),
                "As much is bought as its pieces take: take this [[may_give]] away.",
            );
        }
        let tilt = of.map_or(0.0, |kind| kind.tilt_deg);
        if let GiveKind::Tilt { to_deg } = give.kind
            && to_deg <= tilt
        {
            return error(
                format!(
                    "the {} may lie {tilt} degrees off grain already",
                    give.piece.value
                ),
                "Give more than tilt_deg of its cloth, or take this [[may_give]] away.",
            );
        }
    }
    Ok(())
}

/// The least change of those that the brief allows the pieces of this cloth; none where it allows none.
pub(crate) fn give(
    brief: &Brief,
    cloth: &str,
    (parts, panels): (&[Part], &[Panel]),
    fits: bool,
    options: &Options,
    tell: &mut dyn FnMut(Progress) -> ControlFlow<()>,
) -> Result<Option<Given>, BriefError> {
    let (mut allowed, mut of): (Vec<Change>, Vec<&MayGive>) = (Vec::new(), Vec::new());
    for give in &brief.may_give {
        let Some(part) = parts.iter().position(|part| part.name == give.piece.value) else {
            continue;
        };
        let kind = kind(&parts[part], give.kind, brief.allowances.seam);
        allowed.push(Change { part, kind });
        of.push(give);
    }
    if allowed.is_empty() {
        return Ok(None);
    }
    // Where all fits, it is only seen that each can be made, so that a slip does not wait for the day it matters.
    let options = match fits {
        true => Options {
            budget: 0,
            ..*options
        },
        false => *options,
    };
    let found = least_change_with(parts, panels, &allowed, &options, tell);
    let least = found.map_err(|error| {
        let change = (0..of.len()).find(|index| {
            let rest = error.of().strip_prefix(&format!("change {index}"));
            rest.is_some_and(|rest| rest.is_empty() || rest.starts_with(','))
        });
        let wrong = format!("the {cloth}: {error}");
        let right = "It must lie within the piece, and leave it whole: distances run along the grain from its lower end \
                     as cut; lengths in this message are in mm.";
        match change {
            Some(index) => brief.error(&of[index].span, wrong, right),
            None => BriefError::new(&brief.file, None, wrong, right),
        }
    })?;
    Ok((!fits).then_some(Given { allowed, least }))
}

/// A change in the axes of the part.
fn kind(part: &Part, kind: GiveKind, allowance: f64) -> Give {
    let (low, high) = ends(part);
    match kind {
        GiveKind::Tilt { to_deg } => Give::Tilt { to_deg },
        GiveKind::Join { from, to } => Give::Join {
            across_deg: part.grain_deg,
            from: low + from,
            to: low + to,
            allowance,
        },
        GiveKind::Shorter { most, at } => Give::Shorter {
            toward_deg: match part.grain_deg {
                grain if grain > 0.0 => grain - 180.0,
                grain => grain + 180.0,
            },
            beyond: -(low + at.unwrap_or((high - low) / 2.0)),
            most,
        },
    }
}

/// How far a part reaches along its grain.
fn ends(part: &Part) -> (f64, f64) {
    let (sin, cos) = libm::sincos(part.grain_deg.to_radians());
    let along = |point: &Point| point.to_vec2().dot(Vec2::new(cos, sin));
    let reach = part.outline.iter().map(along);
    reach.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| {
        (low.min(at), high.max(at))
    })
}

impl Laid {
    /// The number of the piece that a part is, and which half of it: of a lay in which something gives, joined pieces come as
    /// two parts behind those given.
    pub(crate) fn piece_of(&self, parts: &[Part], part: usize) -> (usize, &'static str) {
        if let Some(&number) = self.pieces.get(part) {
            return (number, "");
        }
        let name = &parts[part].name;
        let whole = |half: &str| {
            let whole = name.strip_suffix(half)?;
            self.parts.iter().position(|part| part.name == whole)
        };
        let halves = [(", half 1", " half 1"), (", half 2", " half 2")];
        let found = halves
            .into_iter()
            .find_map(|(half, label)| Some((self.pieces[whole(half)?], label)));
        found.unwrap_or((self.pieces[0], ""))
    }
}

impl Plan {
    /// For a cloth of which something must give: each change that was made, in words.
    pub fn given(&self, laid: &Laid) -> Vec<String> {
        let Some(given) = &laid.given else {
            return Vec::new();
        };
        let changed = given.changed();
        let made = changed.map_or(&[][..], |(made, ..)| made);
        made.iter()
            .map(|made| words(&self.tape, &laid.parts, &given.allowed, made))
            .collect()
    }
}

/// A change in words; what is taken away is rounded up to the tape, so that the piece still fits.
fn words(tape: &Tape, parts: &[Part], allowed: &[Change], made: &Made) -> String {
    let name = &made.part;
    let some = |pieces: u32, of: u32| match of {
        1 => String::new(),
        _ => format!("{pieces} of {of} "),
    };
    // The search goes by tenths of a millimetre: one of them is no reason for a whole graduation more.
    let up = |length: f64, most: f64| {
        let whole = ((length - 0.1) / tape.graduation - 1e-9).ceil() * tape.graduation;
        tape.text(whole.min(most))
    };
    match (&made.amount, &allowed[made.change].kind) {
        (Amount::Tilt { to_deg }, _) => {
            let degrees = format!("{:.1}", (to_deg * 10.0).ceil() / 10.0);
            let degrees = degrees.trim_end_matches(".0");
            format!("the {name}: its grain tilted by up to {degrees} degrees")
        }
        (
            Amount::Join {
                pieces,
                of,
                from_end,
                ..
            },
            Give::Join { allowance, .. },
        ) => format!(
            "the {name}: {}joined across the grain, the seam {} from its lower end as cut, {} of allowance on each half",
            some(*pieces, *of),
            tape.text(*from_end),
            tape.text(*allowance)
        ),
        (Amount::Shorter { by }, Give::Shorter { beyond, most, .. }) => {
            let low = ends(&parts[allowed[made.change].part]).0;
            format!(
                "the {name}: {} shorter, taken out {} above its lower end as cut",
                up(*by, *most),
                tape.text(-beyond - low)
            )
        }
        _ => made.to_string(),
    }
}
