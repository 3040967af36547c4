//! `cargo xtask generate`: spec.json and everything made from it.

use std::{fs, path::Path};

use crate::{abi, emit_c, emit_python, emit_table, header, parse, vectors::Base};

/// Writes every generated file; with `check`, compares instead and names what differs.
pub(crate) fn generate(root: &Path, check: bool) -> Result<(), String> {
    let spec = parse::read(root)?;
    let base = Base::read(root, &spec)?;
    let json = serde_json::to_string_pretty(&spec).map_err(|error| error.to_string())?;
    let hand = root.join("bindings/python/stubs/hand.pyi");
    let hand = fs::read_to_string(&hand).map_err(|error| format!("hand.pyi: {error}"))?;
    let python = "bindings/python/python/recloth";
    let files = [
        ("bindings/spec.json".to_owned(), Ok(json + "\n")),
        (
            "bindings/c/src/generated.rs".to_owned(),
            emit_c::library(&spec).0,
        ),
        (
            "bindings/c/tests/dispatch.h".to_owned(),
            emit_c::dispatch(&spec).0,
        ),
        (
            "bindings/python/src/generated.rs".to_owned(),
            emit_python::library(&spec).0,
        ),
        (
            format!("{python}/_functions.py"),
            emit_python::functions(&spec, &base).0,
        ),
        (format!("{python}/ufuncs.py"), emit_python::ufuncs(&spec).0),
        (
            format!("{python}/ufuncs.pyi"),
            emit_python::ufuncs_stub(&spec).0,
        ),
        (
            format!("{python}/__init__.pyi"),
            emit_python::stub(&spec, &hand, &base).0,
        ),
        (
            "crates/recloth-table/src/generated.rs".to_owned(),
            emit_table::table(&spec, &base).0,
        ),
    ];
    let mut stale = Vec::new();
    for (name, text) in files {
        settle(
            root,
            &name,
            &text.map_err(|error| format!("{name}: {error}"))?,
            check,
            &mut stale,
        )?;
    }
    // The header is read from the C sources, so it comes last.
    if stale.is_empty() {
        let header = header::header(root, &spec)?;
        let list = abi::list(&header, env!("CARGO_PKG_VERSION"));
        abi::promise(root, &list)?;
        settle(
            root,
            "bindings/c/include/recloth.h",
            &header,
            check,
            &mut stale,
        )?;
        settle(root, abi::LIST, &list, check, &mut stale)?;
    }
    if stale.is_empty() {
        println!(
            "{} functions, {} choices, {} shapes: generated files are {}",
            spec.functions.len(),
            spec.choices.len(),
            spec.shapes.len(),
            if check { "up to date" } else { "written" }
        );
        Ok(())
    } else {
        Err(format!(
            "not up to date, run `cargo xtask generate`: {}",
            stale.join(", ")
        ))
    }
}

fn settle(
    root: &Path,
    name: &str,
    text: &str,
    check: bool,
    stale: &mut Vec<String>,
) -> Result<(), String> {
    let path = root.join(name);
    let same = fs::read_to_string(&path).is_ok_and(|known| known == text);
    if same {
        return Ok(());
    }
    if check {
        stale.push(name.to_owned());
        return Ok(());
    }
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).map_err(|error| format!("{name}: {error}"))?;
    }
    fs::write(&path, text).map_err(|error| format!("{name}: {error}"))
}
