//! Machines without an operating system: the core for wasm32, and the C library for a Cortex-M0
//! linked into a C program against recloth.h.

use std::path::PathBuf;

use super::run::{Context, Count, output, quiet};

const WASM: &str = "wasm32-unknown-unknown";
const CORTEX: &str = "thumbv6m-none-eabi";

/// Builds the C library without std for a machine; where it lies.
pub(crate) fn archive(context: &Context, target: &str) -> Result<PathBuf, String> {
    quiet(context.cargo(&format!(
        "rustc --quiet --profile device -p recloth-c --no-default-features --target {target} \
         --crate-type staticlib"
    )))?;
    Ok(context.target.join(target).join("device/librecloth.a"))
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
    let archive = archive(context, CORTEX)?;
    let program = context.fresh("device")?.join("program.elf");
    // zig, from requirements.txt, is a C compiler for every target that needs nothing installed.
    let mut link = context.command(context.python()?, ["-m", "ziglang", "cc"]);
    link.args([
        "-target",
        "thumb-freestanding-eabi",
        "-mcpu=cortex_m0",
        "-std=c99",
        "-Os",
        "-g",
    ])
    .args([
        "-Wall",
        "-Wextra",
        "-Wpedantic",
        "-Werror",
        "-nostdlib",
        "-Wl,--gc-sections",
    ])
    .args(["-Ibindings/c/include", "-Wl,--entry=main", "-o"])
    .arg(&program)
    .arg("bindings/c/tests/device.c")
    .arg(archive);
    quiet(link)?;
    let symbols = output(context.command("nm", [&program]).arg("--defined-only"))?;
    for name in ["main", "recloth_circle_skirt"] {
        if !symbols
            .lines()
            .any(|line| line.ends_with(&format!(" {name}")))
        {
            return Err(format!("{name} is not in the linked program"));
        }
    }
    let size = output(context.command("size", [&program]).arg("--format=sysv"))?;
    let bytes = |section: &str| {
        let line = size.lines().find(|line| line.starts_with(section))?;
        line.split_whitespace().nth(1)?.parse::<u64>().ok()
    };
    if let (Some(text), Some(constants)) = (bytes(".text"), bytes(".rodata")) {
        println!("one sum on a Cortex-M0: {text} bytes of code, {constants} of constants");
    }
    Ok(Count::passed(3))
}
