//! What pieces may give where not all of them fit.

use super::{At, BriefError, Table};
use std::ops::Range;

/// One change that the maker would allow; the list goes from what she minds least.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct MayGive {
    /// Name of the piece.
    pub(crate) piece: At<String>,
    pub(crate) kind: GiveKind,
    pub(crate) span: Range<usize>,
}

/// What is given. Distances run along the grain, from the lower end of the piece as it is cut (mm).
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum GiveKind {
    /// Its grain may be tilted so far either way (degrees).
    Tilt { to_deg: f64 },
    /// One join across the grain, within these.
    Join { from: f64, to: f64 },
    /// Shorter by so much at most, taken out at a line; half-way up where none is given.
    Shorter { most: f64, at: Option<f64> },
}

/// Where a piece may be joined or taken in (mm): as long as a panel.
const ALONG: (f64, f64) = (1.0, 6000.0);

pub(super) fn may_give(top: &Table<'_>) -> Result<Vec<MayGive>, BriefError> {
    let mut gives = Vec::new();
    for table in top.tables("may_give", "change")? {
        let piece = table.text("piece")?;
        let tilt = table.opt_number("tilt_to_deg", (0.01, 180.0))?;
        let most = table.opt_length("shorter_by", (0.5, 2500.0))?;
        let at = table.opt_length("shorter_at", ALONG)?;
        let joined = table.has("join_from") || table.has("join_to");
        let kinds = [tilt.is_some(), joined, most.is_some() || at.is_some()];
        if kinds.iter().filter(|kind| **kind).count() != 1 {
            let (says, right) = match kinds.contains(&true) {
                true => (
                    "says more than one thing",
                    "Write a [[may_give]] of its own for each, what you mind least first.",
                ),
                false => (
                    "says nothing that may give",
                    "Add tilt_to_deg = a number, or join_from and join_to, or shorter_by = \"...\".",
                ),
            };
            return Err(table.error(
                &table.span,
                format!("the [[may_give]] of \"{}\" {says}", piece.value),
                right,
            ));
        }
        let kind = if let Some(to_deg) = tilt {
            GiveKind::Tilt { to_deg }
        } else if joined {
            let (from, to) = (
                table.length("join_from", ALONG)?,
                table.length("join_to", ALONG)?,
            );
            if to < from {
                return Err(table.error(
                    &table.place("join_to"),
                    "\"join_to\" is nearer to the lower end than \"join_from\"",
                    "Both run along the grain from the lower end of the piece: exchange them.",
                ));
            }
            GiveKind::Join { from, to }
        } else {
            let most = match most {
                Some(most) => most,
                None => table.length("shorter_by", (0.5, 2500.0))?,
            };
            GiveKind::Shorter { most, at }
        };
        table.done()?;
        gives.push(MayGive {
            piece,
            kind,
            span: table.span.clone(),
        });
    }
    Ok(gives)
}
