//! The crates as the registry takes them.

use std::collections::BTreeMap;

use serde_json::Value;

use crate::test::run::{Context, Count, output, quiet};

/// What no crate hands out: it belongs to the tests, and some of it is not ours to give under this licence.
const KEPT: &[&str] = &["vectors", "bench", "oracle", "tests/", ".csv"];

/// Every crate is packed, and built from what is packed, those it stands on first; nothing is sent.
pub(crate) fn whole(context: &Context) -> Result<Count, String> {
    let count = quick(context)?;
    // What is not committed is refused: it could not be told from what is.
    quiet(context.cargo("publish --quiet --workspace --dry-run"))?;
    Ok(count + Count::passed(1))
}

/// Every crate says what the registry asks, and holds its sources, its licence and nothing of the tests.
pub(crate) fn quick(context: &Context) -> Result<Count, String> {
    let mut failed = Vec::new();
    let crates = publishable(context)?;
    for (name, package) in &crates {
        for field in ["description", "license", "readme", "rust_version"] {
            if package[field].as_str().is_none_or(str::is_empty) {
                failed.push(format!("{name} has no {field}"));
            }
        }
        for field in ["keywords", "categories", "authors"] {
            if package[field].as_array().is_none_or(Vec::is_empty) {
                failed.push(format!("{name} has no {field}"));
            }
        }
        let files =
            output(&mut context.cargo(&format!("package --quiet --list --allow-dirty -p {name}")))?;
        for wanted in ["LICENSE", "README.md", "src/lib.rs", "Cargo.toml"] {
            if !files.lines().any(|file| file == wanted) {
                failed.push(format!("{name} is packed without {wanted}"));
            }
        }
        for file in files.lines() {
            if KEPT.iter().any(|kept| file.contains(kept)) {
                failed.push(format!("{name} is packed with {file}"));
            }
        }
    }
    if crates.len() < 5 {
        failed.push(format!("only {} crates are to be published", crates.len()));
    }
    if failed.is_empty() {
        Ok(Count::passed(crates.len() as u32))
    } else {
        Err(failed.join("\n"))
    }
}

/// The crates of the workspace that are published, by name.
fn publishable(context: &Context) -> Result<BTreeMap<String, Value>, String> {
    let text = output(&mut context.cargo("metadata --no-deps --format-version 1"))?;
    let metadata: Value = serde_json::from_str(&text).map_err(|error| error.to_string())?;
    let packages = metadata["packages"].as_array().cloned().unwrap_or_default();
    Ok(packages
        .into_iter()
        // `publish = false` is an empty list of registries.
        .filter(|package| package["publish"].is_null())
        .filter_map(|package| Some((package["name"].as_str()?.to_owned(), package)))
        .collect())
}
