//! Machines without an operating system: the core for wasm32, and the C library for a Cortex-M0
//! linked into a C program against recloth.h.

use std::path::{Path, PathBuf};

use super::{
    c::STRICT,
    run::{Context, Count, output, quiet},
};

const WASM: &str = "wasm32-unknown-unknown";
pub(crate) const CORTEX: &str = "thumbv6m-none-eabi";

/// The most flash one sum may take, its error, its doubts and all it stands on included: a guard against growth. The aim
/// of the bench `flash` is lower.
const ONE_SUM: u64 = 5 * 1024;

/// Builds the C library without std for a machine, with more words for cargo; where it lies.
pub(crate) fn archive(context: &Context, target: &str, words: &str) -> Result<PathBuf, String> {
    quiet(context.cargo(&format!(
        "rustc --quiet --profile device -p recloth-c --no-default-features --target {target} \
         --crate-type staticlib {words}"
    )))?;
    Ok(context.target.join(target).join("device/librecloth.a"))
}

/// Links a C program with the library for a Cortex-M0.
pub(crate) fn link(
    context: &Context,
    source: &Path,
    archive: &Path,
    program: &Path,
) -> Result<(), String> {
    // zig, from requirements.txt, is a C compiler for every target that needs nothing installed.
    let mut link = context.command(context.python()?, ["-m", "ziglang", "cc"]);
    link.args(["-target", "thumb-freestanding-eabi", "-mcpu=cortex_m0"])
        .args(STRICT)
        .args(["-std=c99", "-Os", "-nostdlib", "-Wl,--gc-sections"])
        .args(["-Ibindings/c/include", "-Wl,--entry=main", "-o"])
        .args([program, source, archive]);
    quiet(link)
}

/// What a program takes of flash: code, constants and the first values of its variables.
pub(crate) fn flash(context: &Context, program: &Path) -> Result<u64, String> {
    let table = output(context.command("size", ["--format=berkeley"]).arg(program))?;
    let numbers: Vec<u64> = table
        .lines()
        .nth(1)
        .into_iter()
        .flat_map(str::split_whitespace)
        .map_while(|word| word.parse().ok())
        .collect();
    match numbers[..] {
        [text, data, ..] => Ok(text + data),
        _ => Err(format!("size printed {table}")),
    }
}

pub(crate) fn tests(context: &Context) -> Result<Count, String> {
    for target in [WASM, CORTEX] {
        if let Err(what) = context.rust_target(target) {
            return Ok(Count::skipped(&format!(
                "no compiler target {target}: {what}"
            )));
        }
    }
    for features in ["--no-default-features", ""] {
        quiet(context.cargo(&format!(
            "build --quiet --release -p recloth --target {WASM} {features}"
        )))?;
    }
    let archive = archive(context, CORTEX, "")?;
    let program = context.fresh("device")?.join("program.elf");
    let source = Path::new("bindings/c/tests/device.c");
    link(context, source, &archive, &program)?;
    let symbols = output(context.command("nm", [&program]).arg("--defined-only"))?;
    for name in ["main", "recloth_circle_skirt"] {
        if !symbols
            .lines()
            .any(|line| line.ends_with(&format!(" {name}")))
        {
            return Err(format!("{name} is not in the linked program"));
        }
    }
    let taken = flash(context, &program)?;
    println!("one sum on a Cortex-M0: {taken} bytes of flash");
    if taken > ONE_SUM {
        return Err(format!("one sum takes more than {ONE_SUM} bytes of flash"));
    }
    Ok(Count::passed(4))
}
