//! Lays against a peer, by the share of the cloth that is covered after a time.

use super::Figure;
use crate::test::run::{Context, output, quiet};

/// Seconds after which lays are compared.
const TIMES: [&str; 3] = ["2", "10", "60"];

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
    serde_json::from_str(&printed).map_err(|error| format!("tests/bench/lay.py: {error}"))
}
