//! The C section: the header and the library as a C and as a C++ program see them.

use std::{os::unix::fs::symlink, path::PathBuf, process::Command};

use super::run::{Context, Count, counted, output, quiet};
use crate::abi;

pub(crate) const STRICT: &[&str] = &["-Wall", "-Wextra", "-Wpedantic", "-Werror", "-g"];
const SANITIZED: &[&str] = &[
    "-fsanitize=address,undefined",
    "-fno-sanitize-recover=all",
    "-fno-omit-frame-pointer",
];

/// Builds the library; where it lies, under its soname too, for by that programs ask for it.
pub(crate) fn library(context: &Context) -> Result<PathBuf, String> {
    quiet(context.cargo("build --quiet -p recloth-c"))?;
    let folder = context.target.join("debug");
    let link = folder.join(abi::soname(env!("CARGO_PKG_VERSION")));
    if !link.exists() {
        symlink("librecloth.so", &link).map_err(|error| format!("{}: {error}", link.display()))?;
    }
    Ok(folder)
}

/// Compiles one program against the shared or the static library.
pub(crate) fn compile(
    context: &Context,
    compiler: &[&str],
    flags: &[&str],
    source: &str,
    shared: bool,
) -> Result<PathBuf, String> {
    let library = library(context)?;
    let folder = context.target.join("tests/c");
    std::fs::create_dir_all(&folder).map_err(|error| error.to_string())?;
    let stem = source
        .rsplit('/')
        .next()
        .unwrap_or(source)
        .trim_end_matches(".c");
    let kind = if shared { "shared" } else { "static" };
    let sanitized = if flags.is_empty() { "" } else { "-sanitized" };
    let program = folder.join(format!("{stem}-{}-{kind}{sanitized}", compiler[0]));
    let mut command = context.command(compiler[0], &compiler[1..]);
    command
        .args(STRICT)
        .args(flags)
        .arg("-Ibindings/c/include")
        .arg(source)
        // `-x c++` must not hold for the archive too.
        .args(["-x", "none"]);
    if shared {
        command
            .arg(format!("-L{}", library.display()))
            .arg("-lrecloth")
            .arg(format!("-Wl,-rpath,{}", library.display()));
    } else {
        command
            .arg(library.join("librecloth.a"))
            .args(["-lpthread", "-ldl"]);
    }
    command.args(["-lm", "-o"]).arg(&program);
    quiet(command)?;
    Ok(program)
}

const C99: &[&str] = &["gcc", "-std=c99"];
const CPP17: &[&str] = &["g++", "-x", "c++", "-std=c++17"];

/// The program that reads tests/vectors, plain and shared: the C door.
pub(crate) fn vectors(context: &Context) -> Result<PathBuf, String> {
    compile(context, C99, &[], "bindings/c/tests/vectors.c", true)
}

/// The program that answers jobs of lays.
pub(crate) fn lay_jobs(context: &Context) -> Result<PathBuf, String> {
    compile(context, C99, &[], "bindings/c/tests/lay_jobs.c", true)
}

pub(crate) fn tests(context: &Context) -> Result<Count, String> {
    for (name, package) in [("gcc", "gcc libc6-dev"), ("g++", "g++")] {
        if let Err(what) = context.program(name, package) {
            return Ok(Count::skipped(&what));
        }
    }
    let source = "bindings/c/tests/vectors.c";
    let mut count = Count::default();
    for (compiler, flags, shared) in [
        (C99, &[][..], true),
        (C99, SANITIZED, false),
        (CPP17, SANITIZED, false),
    ] {
        let program = compile(context, compiler, flags, source, shared)?;
        count = count + counted(context.command(program, ["check", "tests/vectors"]))?;
    }
    let program = compile(
        context,
        C99,
        SANITIZED,
        "bindings/c/tests/boundary.c",
        false,
    )?;
    count = count + counted(context.command(program, [""; 0]))?;
    let program = compile(context, C99, SANITIZED, "bindings/c/tests/shapes.c", false)?;
    let folder = context.fresh("plan-by-c")?;
    count = count + counted(context.command(program, [folder]))?;
    let sources = ["bindings/c/tests/handles.c", "bindings/c/tests/lays.c"];
    for source in sources {
        for compiler in [C99, CPP17] {
            let program = compile(context, compiler, SANITIZED, source, false)?;
            count = count + counted(context.command(program, [""; 0]))?;
        }
    }
    Ok(count + unfreed(context, &sources)?)
}

/// Whatever handles and texts hold is freed, and none of it is touched where it should not be, as valgrind sees library and
/// program: the tests of handles and of lays, and the examples.
fn unfreed(context: &Context, tests: &[&str]) -> Result<Count, String> {
    if let Err(what) = context.program("valgrind", "valgrind") {
        return Ok(Count::skipped(&what));
    }
    let watched = |source: &str| -> Result<Command, String> {
        let program = compile(context, C99, &[], source, false)?;
        let mut command = context.command("valgrind", VALGRIND);
        command.arg(program);
        Ok(command)
    };
    let mut count = Count::default();
    for source in tests {
        count = count + counted(watched(source)?)?;
    }
    let mut example = watched("bindings/c/examples/panel_cut_line.c")?;
    let drawn = output(&mut example)?;
    let points = drawn.lines().count() - 1;
    if !drawn.starts_with(&format!("{points} points")) || points < 6 {
        return Err(format!("the example prints no cut line: {drawn}"));
    }
    let laid = output(&mut watched("bindings/c/examples/lay_on_cloth.c")?)?;
    if !laid.contains("mm of cloth 900 mm wide") || !laid.ends_with("proved\n") {
        return Err(format!("the example prints no lay: {laid}"));
    }
    let deepest = output(&mut watched("bindings/c/examples/deepest_pockets.c")?)?;
    if deepest != "210.0 mm deep\nproved\n" {
        return Err(format!("the example prints no depth of 420 / 2: {deepest}"));
    }
    Ok(count + Count::passed(3))
}

const VALGRIND: [&str; 5] = [
    "--quiet",
    "--suppressions=bindings/c/tests/valgrind.supp",
    "--leak-check=full",
    "--errors-for-leak-kinds=definite,indirect,possible",
    "--error-exitcode=9",
];
