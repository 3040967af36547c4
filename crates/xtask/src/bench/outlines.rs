//! Cut lines against shapely and cavalier_contours, and what operations on pieces cost.

use std::fs;

use super::Figure;
use crate::test::run::{Context, output};

pub(super) fn figures(context: &Context) -> Result<Vec<Figure>, String> {
    let printed = output(&mut context.cargo("bench --quiet -p recloth-peers --bench outlines"))?;
    let folder = context.target.join("bench");
    let file = folder.join("outlines.txt");
    fs::create_dir_all(&folder)
        .and_then(|()| fs::write(&file, printed))
        .map_err(|error| format!("{}: {error}", file.display()))?;
    let program = context.root.join("tests/bench/outlines.py");
    let printed = output(&mut context.command(context.python()?, [program, file]))?;
    serde_json::from_str(&printed).map_err(|error| format!("tests/bench/outlines.py: {error}"))
}
