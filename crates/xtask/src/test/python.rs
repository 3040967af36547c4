//! The Python sections: the package, its stubs, the independent programs and the book's blocks.

use std::{fs, process::Command};

use super::run::{Context, Count, counted, quiet};

/// Builds the package into the project's environment.
pub(crate) fn package(context: &Context) -> Result<(), String> {
    let python = context.python()?;
    let mut command = context.command(python, ["-m", "maturin", "develop", "--quiet", "--release"]);
    command
        .current_dir(context.root.join("bindings/python"))
        .env("VIRTUAL_ENV", context.target.join("venv"));
    quiet(command)
}

fn pytest(context: &Context) -> Result<Command, String> {
    let mut command = context.command(
        context.python()?,
        [
            "-m",
            "pytest",
            "--quiet",
            "--strict-markers",
            "-p",
            "no:cacheprovider",
        ],
    );
    command.env("PYTHONDONTWRITEBYTECODE", "1");
    Ok(command)
}

pub(crate) fn tests(context: &Context) -> Result<Count, String> {
    package(context)?;
    let mut command = pytest(context)?;
    command.arg("bindings/python/tests");
    counted(command)
}

/// The stubs say what the package is.
pub(crate) fn stubs(context: &Context) -> Result<Count, String> {
    let mut command = context.command(
        context.python()?,
        ["-m", "mypy.stubtest", "recloth", "--allowlist"],
    );
    command.arg(context.root.join("bindings/python/stubs/allow.txt"));
    command.current_dir(context.target.join("venv"));
    quiet(command)?;
    let mut command = context.command(
        context.python()?,
        [
            "-m",
            "mypy",
            "--strict",
            "--no-incremental",
            "bindings/python/tests/typed.py",
        ],
    );
    command.env("MYPY_CACHE_DIR", context.target.join("mypy"));
    quiet(command)?;
    Ok(Count::passed(2))
}

/// Each program of tests/oracle recomputes the exact rows by its own means.
pub(crate) fn oracles(context: &Context) -> Result<Count, String> {
    let folder = context.root.join("tests/oracle");
    let mut names: Vec<String> = fs::read_dir(&folder)
        .map_err(|error| format!("tests/oracle: {error}"))?
        .filter_map(|entry| entry.ok()?.file_name().into_string().ok())
        .filter(|name| name.ends_with(".py") && name != "common.py")
        .collect();
    names.sort();
    let mut count = Count::default();
    for name in names {
        let mut command = context.command(context.python()?, [folder.join(&name)]);
        command.env("PYTHONDONTWRITEBYTECODE", "1");
        println!("{name}:");
        count = count
            + match super::run::output(&mut command) {
                Ok(text) => {
                    print!("{text}");
                    Count::passed(1)
                }
                Err(what) => {
                    println!("{what}");
                    Count {
                        failed: 1,
                        ..Count::default()
                    }
                }
            };
    }
    Ok(count)
}

/// The book builds, and its Python and C blocks run, the README's too. Rust blocks and figures are
/// in `rust`.
pub(crate) fn book(context: &Context) -> Result<Count, String> {
    quiet(context.cargo("run --quiet -p recloth-book -- build"))?;
    package(context)?;
    let library = super::c::library(context)?;
    let mut count = Count::passed(1);
    for words in [
        &["book"][..],
        &[
            "-p",
            "book.conftest",
            "README.md",
            "bindings/python/README.md",
        ],
    ] {
        let mut command = pytest(context)?;
        command.args(words).env("RECLOTH_LIBRARY", &library);
        count = count + counted(command)?;
    }
    Ok(count)
}
