//! The Python door against NumPy and plain Python.

use super::Figure;
use crate::test::{
    python::package,
    run::{Context, output},
};

pub(super) fn figures(context: &Context) -> Result<Vec<Figure>, String> {
    package(context)?;
    let printed = output(&mut context.command(context.python()?, ["tests/bench/doors.py"]))?;
    serde_json::from_str(&printed).map_err(|error| format!("tests/bench/doors.py: {error}"))
}
