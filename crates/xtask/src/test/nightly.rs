//! What only a nightly compiler has, pinned by its date: an interpreter that sees undefined behaviour, and counts of branches.

use std::{
    ffi::OsStr,
    process::{Command, Stdio},
};

use super::run::{Context, Count, counted, quiet};

/// The nightly, by date.
pub(crate) const NIGHTLY: &str = "nightly-2026-05-20";

/// Installs the nightly with what is wanted of it, where it is not there.
pub(crate) fn install(context: &Context) -> Result<(), String> {
    let mut found = nightly(context, "cargo", ["miri", "--version"]);
    found.stdout(Stdio::null()).stderr(Stdio::null());
    if found.status().is_ok_and(|status| status.success()) {
        return Ok(());
    }
    let words =
        format!("toolchain install {NIGHTLY} --profile minimal -c miri,rust-src,llvm-tools");
    quiet(context.command("rustup", words.split(' ')))
        .map_err(|what| format!("there is no {NIGHTLY} with miri, rust-src and llvm-tools: {what}"))
}

/// A program of the nightly.
pub(crate) fn nightly<S: AsRef<OsStr>>(
    context: &Context,
    program: &str,
    words: impl IntoIterator<Item = S>,
) -> Command {
    let mut command = context.command("rustup", ["run", NIGHTLY, program]);
    command.args(words);
    // What the cargo that started this program says of itself would be taken for the nightly's.
    for name in [
        "CARGO",
        "RUSTC",
        "RUSTDOC",
        "RUSTC_WRAPPER",
        "RUSTUP_TOOLCHAIN",
    ] {
        command.env_remove(name);
    }
    command
}

/// The machine that is interpreted: big-endian, and without the assembler that libm has for more common ones.
const MACHINE: &str = "s390x-unknown-linux-gnu";

/// What takes a minute and more to interpret: shapes, and tests of many numbers.
const SLOW: &[&str] = &[
    "draft::",
    "outline::",
    "panel::",
    "every_screen_colour",
    "no_other_split",
    "scaled_root_to_a_unit",
    "sums_of_inches_are_on_their_limits",
    "no_other_number_comes_nearer",
    "exact_brings_back_every_number",
    "nonsense_gets_an_answer_or_an_error",
    "rounded_sets_add_up",
    "rounding_up_and_down",
    "whole_graduations",
];

/// The core's own tests but the slow ones, interpreted.
pub(crate) fn miri(context: &Context) -> Result<Count, String> {
    if let Err(what) = install(context) {
        return Ok(Count::skipped(&what));
    }
    let mut command = nightly(
        context,
        "cargo",
        [
            "miri", "test", "-p", "recloth", "--lib", "--target", MACHINE,
        ],
    );
    command.arg("--");
    for slow in SLOW {
        command.args(["--skip", slow]);
    }
    command.env("MIRIFLAGS", "-Zmiri-disable-isolation");
    counted(command)
}
