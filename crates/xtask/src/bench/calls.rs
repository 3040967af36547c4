//! What a call costs in Rust.

use super::Figure;
use crate::test::run::{Context, output};

pub(super) fn figures(context: &Context) -> Result<Vec<Figure>, String> {
    let printed = output(&mut context.cargo("bench --quiet -p recloth --bench calls"))?;
    printed.lines().map(read).collect()
}

/// Reads `circle_skirt 2.6`.
fn read(line: &str) -> Result<Figure, String> {
    let (name, nanoseconds) = line
        .split_once(' ')
        .and_then(|(name, rest)| Some((name, rest.parse().ok()?)))
        .ok_or_else(|| format!("the bench printed `{line}`"))?;
    Ok(Figure {
        name: format!("rust_call {name}"),
        ours: nanoseconds,
        peer: None,
        ratio: None,
        unit: "ns".into(),
        what: "one call in Rust, checks included".into(),
        goal: None,
    })
}
