//! `cargo xtask bench`: how fast and how large, where it can be against a peer in the same run.

use std::{fs, path::Path};

use serde::{Deserialize, Serialize};

use crate::test::run::Context;

mod calls;
mod doors;
mod flash;
mod lay;
mod outlines;

/// One figure, and that of the peer where there is one.
#[derive(Debug, Deserialize, Serialize)]
struct Figure {
    name: String,
    ours: f64,
    peer: Option<f64>,
    /// Ours by the peer's.
    ratio: Option<f64>,
    unit: String,
    /// What is compared; for the reader of the table.
    #[serde(default, skip_serializing)]
    what: String,
    /// The ratio, or without a peer the figure, that is aimed at.
    #[serde(default, skip_serializing)]
    goal: Option<f64>,
}

type Bench = (&'static str, fn(&Context) -> Result<Vec<Figure>, String>);

const BENCHES: &[Bench] = &[
    ("doors", doors::figures),
    ("calls", calls::figures),
    ("outlines", outlines::figures),
    ("flash", flash::figures),
    ("lay", lay::figures),
];

/// Runs the benches named, or all; prints a table and writes `target/bench.json`.
pub(crate) fn bench(root: &Path, wanted: &[&str]) -> Result<(), String> {
    let known: Vec<&str> = BENCHES.iter().map(|(name, _)| *name).collect();
    if let Some(unknown) = wanted.iter().find(|name| !known.contains(name)) {
        let known = known.join(", ");
        return Err(format!("no bench {unknown}; there are {known}"));
    }
    let context = Context::new(root)?;
    let mut figures = Vec::new();
    for (name, bench) in BENCHES {
        if wanted.is_empty() || wanted.contains(name) {
            figures.extend(bench(&context)?);
        }
    }
    println!(
        "{:44} {:>10} {:>10} {:>6} {:>8}  what",
        "name", "ours", "peer", "ratio", "goal"
    );
    for figure in &figures {
        let number = |value: Option<f64>, places| {
            value.map_or("-".into(), |value| format!("{value:.places$}"))
        };
        println!(
            "{:44} {:>10} {:>10} {:>6} {:>8}  {}, {}",
            figure.name,
            number(Some(figure.ours), 2),
            number(figure.peer, 2),
            number(figure.ratio, 2),
            number(figure.goal, 2),
            figure.unit,
            figure.what
        );
    }
    let path = context.target.join("bench.json");
    let text = serde_json::to_string_pretty(&figures).map_err(|error| error.to_string())?;
    fs::write(&path, text + "\n").map_err(|error| format!("{}: {error}", path.display()))
}
