//! Random measures over the ranges of bodies: each gives a draft that is sound, or an error whose bound does.

use recloth::draft::*;
use recloth::{Error, ErrorKind};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;

use super::random::Random;
use super::{samples, sound};

/// How many sets of measures of each draft are tried; `RECLOTH_SWEEP` asks for more.
fn rounds() -> u32 {
    std::env::var("RECLOTH_SWEEP")
        .ok()
        .and_then(|text| text.parse().ok())
        .unwrap_or(40)
}

/// The numbers of a draft by their names, whatever they lie in, but those of given pieces.
fn numbers<'a>(value: &'a mut Value, found: &mut Vec<(String, &'a mut Value)>) {
    let Value::Object(fields) = value else { return };
    for (name, field) in fields.iter_mut() {
        match field {
            Value::Number(_) => found.push((name.clone(), field)),
            Value::Object(inner) if inner.contains_key("edges") => {}
            Value::Object(_) => numbers(field, found),
            _ => {}
        }
    }
}

fn with<T: DeserializeOwned>(value: &Value) -> Option<T> {
    serde_json::from_value(value.clone()).ok()
}

/// The same measures with one of another value.
fn changed(value: &Value, name: &str, to: f64) -> Value {
    let mut copy = value.clone();
    let mut found = Vec::new();
    numbers(&mut copy, &mut found);
    let name = if name == "hem_allowance" { "hem" } else { name };
    // The last: the allowances come after the measures.
    if let Some((_, number)) = found.into_iter().rfind(|(one, _)| one == name) {
        *number = if number.is_u64() {
            Value::from(to as u64)
        } else {
            Value::from(to)
        };
    }
    copy
}

/// Tries a draft with every measure changed at random by up to `spread` of itself, now and then wildly.
fn sweep<T: Serialize + DeserializeOwned>(
    name: &str,
    sample: &T,
    spread: f64,
    draft: impl Fn(&T) -> Result<Draft, Error>,
) {
    let mut random = Random(name.bytes().map(u64::from).sum());
    let (mut made, mut refused, mut bounded) = (0, Vec::new(), 0);
    // Slashing is the slowest of what drafts do.
    let rounds = if name == "puff" {
        rounds() / 4
    } else {
        rounds()
    };
    for round in 0..rounds {
        let mut value = serde_json::to_value(sample).expect(name);
        let mut found = Vec::new();
        numbers(&mut value, &mut found);
        let wild = round % 4 == 3;
        for (name, number) in found {
            // Hardly more than one value is allowed.
            if name == "stay_ratio" {
                continue;
            }
            let share = random.between(1.0 - spread, 1.0 + spread);
            let wildly = wild && random.unit() < 0.2;
            let factor = if wildly {
                random.between(0.0, 6.0)
            } else {
                share
            };
            let old = number.as_f64().expect("a number");
            *number = if number.is_u64() {
                Value::from((old * factor).round() as u64)
            } else {
                Value::from(old * factor)
            };
        }
        let measures: T = with(&value).expect(name);
        match draft(&measures) {
            Ok(draft) => {
                made += 1;
                sound(&draft);
            }
            Err(error) => {
                refused.push(error.argument());
                assert!(!error.argument().is_empty());
                assert!(error.value().is_finite(), "{name}: {error}: {value}");
                if error.kind() != ErrorKind::NoSolution {
                    continue;
                }
                for bound in [error.min(), error.max()]
                    .into_iter()
                    .filter(|bound| bound.is_finite())
                {
                    bounded += 1;
                    let other: T = with(&changed(&value, error.argument(), bound)).expect(name);
                    // It no longer stops the draft: another measure may.
                    if let Err(next) = draft(&other) {
                        assert_ne!(
                            next.argument(),
                            error.argument(),
                            "{name}: {error}, then {next}: {value}"
                        );
                    }
                }
            }
        }
    }
    assert!(
        made * 4 > rounds,
        "{name}: {made} made, {bounded} bounds tried, refused: {refused:?}"
    );
}

#[test]
fn skirts_of_random_measures() {
    sweep("skirt panel", &samples::panel(), 0.2, SkirtPanel::draft);
    sweep(
        "darted skirt",
        &samples::darted_skirt(),
        0.12,
        DartedSkirt::draft,
    );
    sweep(
        "off-centre front",
        &samples::off_centre_front(),
        0.12,
        OffCentreFront::draft,
    );
    sweep("wrap skirt", &samples::wrap_skirt(), 0.12, WrapSkirt::draft);
    sweep(
        "gored skirt",
        &samples::gored_skirt(),
        0.2,
        GoredSkirt::draft,
    );
    sweep(
        "circle",
        &samples::circle_sector(),
        0.3,
        CircleSector::draft,
    );
    sweep("tiers", &samples::tiered_skirt(), 0.3, TieredSkirt::draft);
}

#[test]
fn bands_of_random_measures() {
    sweep(
        "shaped band",
        &samples::shaped_band(),
        0.03,
        ShapedBand::draft,
    );
    sweep("edge band", &samples::edge_band(), 0.2, EdgeBand::draft);
    sweep("pocket", &samples::patch_pocket(), 0.3, PatchPocket::draft);
}

#[test]
fn tops_of_random_measures() {
    sweep(
        "neck",
        &samples::neck_top(NeckShape::V),
        0.3,
        NeckTop::draft,
    );
    sweep(
        "square neck",
        &samples::neck_top(NeckShape::Square),
        0.3,
        NeckTop::draft,
    );
    sweep("sleeve", &samples::sleeve(), 0.25, Sleeve::draft);
    sweep(
        "recut sleeve",
        &samples::recut_sleeve(),
        0.5,
        RecutSleeve::draft,
    );
    sweep("pinafore", &samples::pinafore(), 0.12, Pinafore::draft);
}

#[test]
fn puffs_of_random_measures() {
    for hem in [PuffHem::Kept, PuffHem::Gathered] {
        sweep(
            "puff",
            &samples::puffed_sleeve(hem),
            0.2,
            PuffedSleeve::draft,
        );
    }
}
