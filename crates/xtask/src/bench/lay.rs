//! Lays against a peer, by the share of the cloth that is covered after a time.

use std::process::Command;

use serde::Deserialize;

use super::Figure;
use crate::test::run::{Context, output, quiet};

/// Seconds after which lays are compared.
const TIMES: [&str; 3] = ["2", "10", "60"];

/// Seconds for each puzzle, and how many of each sort.
const PUZZLES: [(&str, &str); 3] = [("1", "10"), ("10", "10"), ("60", "5")];

/// A peer, for this bench alone.
const PEER: &str = "spyrrow==0.9.0";

pub(super) fn figures(context: &Context) -> Result<Vec<Figure>, String> {
    let python = context.python()?;
    let install = [
        "-m",
        "pip",
        "install",
        "--quiet",
        "--disable-pip-version-check",
        PEER,
    ];
    quiet(context.command(python, install))?;
    quiet(context.cargo("build --quiet --release -p recloth-lay --example strip_lay"))?;
    let program = context.target.join("release/examples/strip_lay");
    let mut command = context.command(python, ["tests/bench/lay.py"]);
    command.arg(program).args(TIMES);
    let printed = output(&mut command)?;
    let mut figures: Vec<Figure> =
        serde_json::from_str(&printed).map_err(|error| format!("tests/bench/lay.py: {error}"))?;
    quiet(context.cargo("build --quiet --release -p recloth-lay --example puzzles"))?;
    for (seconds, each) in PUZZLES {
        figures.push(puzzles(context, seconds, each)?);
    }
    Ok(figures)
}

/// What the program of puzzles prints.
#[derive(Deserialize)]
struct Solved {
    made: u32,
    solved: f64,
    near_misses: u32,
    refused: f64,
}

/// Panels cut up into pieces, and how many are put together again.
fn puzzles(context: &Context, seconds: &str, each: &str) -> Result<Figure, String> {
    let program = context.target.join("release/examples/puzzles");
    let printed = output(Command::new(program).args([seconds, each]))?;
    let solved: Solved =
        serde_json::from_str(&printed).map_err(|error| format!("puzzles: {error}"))?;
    let near_misses = match solved.near_misses {
        0 => String::new(),
        count => format!(
            "; of {count} near misses {:.2} refused with a proof, none laid",
            solved.refused
        ),
    };
    Ok(Figure {
        name: format!("puzzles_{seconds}s_share"),
        ours: solved.solved,
        peer: None,
        ratio: None,
        unit: "share of the puzzles".into(),
        what: format!(
            "{} panels cut up into 4 to 12 pieces, put together again{near_misses}",
            solved.made
        ),
        goal: Some(0.95),
    })
}
