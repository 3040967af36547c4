//! The Rust sections.

use std::{collections::BTreeMap, fs, path::Path};

use super::run::{Context, Count, counted, quiet};
use crate::generate;

/// What is generated is what would be generated now.
pub(crate) fn generated(context: &Context) -> Result<Count, String> {
    generate::generate(&context.root, true)?;
    Ok(Count::passed(1))
}

pub(crate) fn format(context: &Context) -> Result<Count, String> {
    quiet(context.cargo("fmt --all --check"))?;
    Ok(Count::passed(1))
}

pub(crate) fn clippy(context: &Context) -> Result<Count, String> {
    let lines = [
        "clippy --quiet --workspace --all-targets -- -D warnings",
        "clippy --quiet -p recloth --no-default-features -- -D warnings",
    ];
    for line in lines {
        quiet(context.cargo(line))?;
    }
    Ok(Count::passed(lines.len() as u32))
}

/// Unit tests, integration tests and doc tests of every crate, the book's Rust among them.
pub(crate) fn tests(context: &Context) -> Result<Count, String> {
    counted(context.cargo("test --workspace --no-fail-fast"))
}

/// The core without an allocator, and everything that serialises.
pub(crate) fn features(context: &Context) -> Result<Count, String> {
    let bare = counted(context.cargo("test -p recloth --no-default-features"))?;
    let serde = counted(context.cargo("test -p recloth --features serde --lib"))?;
    let lay = counted(context.cargo("test -p recloth-lay --features serde"))?;
    Ok(bare + serde + lay)
}

pub(crate) fn documentation(context: &Context) -> Result<Count, String> {
    let mut command = context.cargo("doc --quiet --workspace --no-deps --document-private-items");
    command.env("RUSTDOCFLAGS", "-D warnings");
    quiet(command)?;
    Ok(Count::passed(1))
}

/// The main command on the demo, twice: the same bytes.
pub(crate) fn demo(context: &Context) -> Result<Count, String> {
    let folder = context.fresh("demo")?;
    for into in ["once", "again"] {
        let mut command =
            context.cargo("run --quiet --release -- plan book/demo/house-coat.toml --into");
        command.arg(folder.join(into));
        quiet(command)?;
    }
    let (once, again) = (files(&folder.join("once"))?, files(&folder.join("again"))?);
    for name in ["plan.json", "worksheet.html"] {
        if !once.contains_key(name) {
            return Err(format!("the demo's plan has no {name}"));
        }
    }
    if !once.keys().any(|name| name.ends_with(".pdf")) {
        return Err("the demo's plan has no sheets".into());
    }
    for (name, bytes) in &once {
        if bytes.is_empty() || again.get(name) != Some(bytes) {
            return Err(format!("{name} is empty or differs from run to run"));
        }
    }
    Ok(Count::passed(once.len() as u32))
}

fn files(folder: &Path) -> Result<BTreeMap<String, Vec<u8>>, String> {
    let wrong = |error: std::io::Error| format!("{}: {error}", folder.display());
    let mut files = BTreeMap::new();
    for entry in fs::read_dir(folder).map_err(wrong)? {
        let path = entry.map_err(wrong)?.path();
        let name = path
            .file_name()
            .unwrap_or_default()
            .to_string_lossy()
            .into_owned();
        if path.is_dir() {
            let inner = self::files(&path)?;
            files.extend(
                inner
                    .into_iter()
                    .map(|(file, bytes)| (format!("{name}/{file}"), bytes)),
            );
        } else {
            files.insert(name, fs::read(&path).map_err(wrong)?);
        }
    }
    Ok(files)
}
