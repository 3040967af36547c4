//! Anything at all into every public function: none may panic, hang, or say what its description does not allow.
//!
//! A target takes bytes and makes calls of them. `cargo xtask fuzz` runs each under libFuzzer, which looks for bytes that
//! take a new way; the tests of this crate run each on what is in `seeds` and on random bytes, with any compiler. What
//! fuzzing finds becomes a check value, a test, or a file of `seeds`.

mod brief;
mod draft;
mod edit;
mod function;
mod input;
mod lay;
mod length;
mod panel;
mod piece;
mod sum;
mod vary;

use arbitrary::{Result, Unstructured};
use input::Input;

type Target = fn(&mut Input) -> Result<()>;

/// Targets beside those that call the functions of one file of the core.
const SHAPES: &[(&str, Target)] = &[
    ("brief", brief::target),
    ("draft", draft::target),
    ("lay", lay::target),
    ("length", length::target),
    ("piece", piece::target),
    ("sum", sum::target),
    ("usable_panel", panel::target),
];

/// The names of all targets: one a file of the core with functions of numbers, and those of shapes and texts.
pub fn targets() -> Vec<&'static str> {
    let files = recloth_table::MODULES.iter().map(|module| module.name);
    files.chain(SHAPES.iter().map(|(name, _)| *name)).collect()
}

/// Runs a target on these bytes.
///
/// # Panics
/// When there is no such target, and where a finding is.
pub fn run(target: &str, data: &[u8]) {
    let mut input = Input(Unstructured::new(data));
    let shape = SHAPES.iter().find(|(name, _)| *name == target);
    // Bytes that make no call are no finding.
    let _ = match shape {
        Some((_, run)) => run(&mut input),
        None => function::target(target, &mut input),
    };
}
