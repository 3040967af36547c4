//! Drafts of every kind, from measures near good ones and far from them.

use std::sync::OnceLock;

use arbitrary::Result;
use recloth::draft::{Draft, DraftLining, Measures, NamedBy};
use recloth::outline::{LiningDarts, LiningHem, Piece};
use serde_json::Value;

use crate::{edit::edit, input::Input, piece};

#[path = "../../../crates/recloth/tests/drafts/samples.rs"]
mod samples;

/// Words that may stand in each other's place.
const WORDS: &[&[&str]] = &[
    &["fold", "seam"],
    &["folded", "faced"],
    &["neither", "first", "last", "both"],
    &["single", "double"],
    &["v", "square"],
    &["kept", "gathered"],
];

/// Good measures of every kind, as JSON.
fn samples() -> &'static [Value] {
    static SAMPLES: OnceLock<Vec<Value>> = OnceLock::new();
    SAMPLES.get_or_init(|| {
        let written = samples::all()
            .into_iter()
            .map(|(_, measures)| serde_json::to_value(measures).expect("measures can be written"));
        written.collect()
    })
}

/// A draft of measures near good ones, or none.
pub(crate) fn draft(input: &mut Input) -> Result<Option<Draft>> {
    let samples = samples();
    let mut measures = samples[input.index(samples.len())?].clone();
    vary(&mut measures, input)?;
    let Ok(measures) = serde_json::from_value::<Measures>(measures) else {
        return Ok(None);
    };
    let drafted = measures.draft();
    Ok(drafted
        .inspect_err(|error| {
            assert!(!error.argument().is_empty(), "{error} from {measures:?}");
            assert!(!error.to_string().is_empty());
        })
        .ok())
}

/// Turns every measure a little, some of them far; words, lists and the pieces given too, now and then.
fn vary(measures: &mut Value, input: &mut Input) -> Result<()> {
    match measures {
        Value::Number(number) => {
            let good = number.as_f64().unwrap_or_default();
            let other = if input.once_in(8)? {
                input.number([0.0, 2.0 * good], &[good])?
            } else {
                good * (0.9 + 0.2 * input.share()?)
            };
            *measures = if number.is_u64() {
                Value::from(other.round() as u32)
            } else {
                Value::from(other)
            };
        }
        Value::String(word) => {
            let others = WORDS.iter().find(|words| words.contains(&word.as_str()));
            if let Some(others) = others {
                *word = others[input.index(others.len())?].into();
            }
        }
        Value::Bool(yes) => *yes = input.once_in(2)?,
        Value::Array(items) => {
            for item in items.iter_mut() {
                vary(item, input)?;
            }
            if input.once_in(8)? {
                items.resize(input.index(20)?, Value::from(100.0));
            }
        }
        // A piece that is given.
        Value::Object(fields) if fields.contains_key("edges") => {
            if input.once_in(4)? {
                edit(measures, 3, input)?;
            }
        }
        Value::Object(fields) => {
            for field in fields.values_mut() {
                vary(field, input)?;
            }
        }
        Value::Null => {}
    }
    Ok(())
}

/// One good piece of a draft, so that operations have something to work on.
pub(crate) fn piece(input: &mut Input) -> Result<Option<Piece>> {
    let mut pieces = draft(input)?.map_or(Vec::new(), |draft| draft.pieces);
    if pieces.is_empty() {
        return Ok(None);
    }
    let index = input.index(pieces.len())?;
    Ok(Some(pieces.swap_remove(index)))
}

/// What a draft gives holds, and every piece of it is a good one.
pub(crate) fn target(input: &mut Input) -> Result<()> {
    let Some(draft) = draft(input)? else {
        return Ok(());
    };
    assert!(draft.doubts < 1 << 53 && draft.cautions < 1 << 53);
    assert!(!draft.pieces.is_empty());
    for check in &draft.checks {
        assert!(check.found.abs() <= check.within, "{check:?}");
    }
    for length in &draft.lengths {
        assert!(
            length.length.is_finite() && length.length >= 0.0,
            "{length:?}"
        );
    }
    for drafted in &draft.pieces {
        piece::check(drafted);
    }
    for name in draft.pieces.iter().map(Piece::name) {
        assert!(draft.piece(name).is_some());
    }
    line(&draft, input)
}

/// The lining of a draft, or of some of its pieces.
fn line(draft: &Draft, input: &mut Input) -> Result<()> {
    let seams = draft.seams.iter().map(|seam| seam.name.clone());
    let edges = draft.pieces.iter().flat_map(Piece::edges);
    let names: Vec<String> = seams.chain(edges.map(|edge| edge.name.clone())).collect();
    let by = |input: &mut Input, most: f64| -> Result<Vec<NamedBy>> {
        (0..input.index(3)?)
            .map(|_| {
                Ok(NamedBy {
                    piece: String::new(),
                    edge: names[input.index(names.len())?].clone(),
                    by: input.number([0.0, most], &[0.0, most])?,
                })
            })
            .collect()
    };
    let pieces = draft.pieces.iter().map(Piece::name);
    let some = input.once_in(2)?;
    let asked = DraftLining {
        pieces: pieces.skip(1).filter(|_| some).map(str::to_owned).collect(),
        cloth: "lining".into(),
        facings: by(input, 50.0)?,
        ease: by(input, 5.0)?,
        pleats: by(input, 30.0)?,
        hem: *input.0.choose(&[
            LiningHem::Level,
            LiningHem::Free {
                clearance: 20.0,
                allowance: 15.0,
            },
            LiningHem::Jump {
                depth: 40.0,
                clearance: 20.0,
            },
        ])?,
        darts: *input.0.choose(&[LiningDarts::Tucks, LiningDarts::Sewn])?,
        allowance: 10.0,
        shell_change_pct: [0.0; 2],
        lining_change_pct: [input.number([-10.0, 0.0], &[0.0])?, 0.0],
    };
    match draft.lining(&asked) {
        Ok(lined) => {
            assert_eq!(lined.draft.pieces.len(), lined.linings.len());
            for piece in &lined.draft.pieces {
                piece::check(piece);
            }
            for check in &lined.draft.checks {
                assert!(check.found.abs() <= check.within, "{check:?}");
            }
        }
        Err(error) => assert!(!error.to_string().is_empty()),
    }
    Ok(())
}
