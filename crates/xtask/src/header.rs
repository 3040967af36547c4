//! `recloth.h` from the C sources, by cbindgen.

use std::{fs, path::Path};

/// The files with what C sees.
const SOURCES: [&str; 4] = ["boundary.rs", "generated.rs", "outline.rs", "plan.rs"];

use crate::spec::{Spec, snake};

/// The header's text. Choices cross as plain numbers, so no function names their types: they are asked for.
pub(crate) fn header(root: &Path, spec: &Spec) -> Result<String, String> {
    let folder = root.join("bindings/c");
    let mut config = cbindgen::Config::from_file(folder.join("cbindgen.toml"))?;
    let mut sources = Vec::new();
    for name in SOURCES {
        let path = folder.join("src").join(name);
        let text = fs::read_to_string(&path).map_err(|error| format!("{name}: {error}"))?;
        // Choices go in as plain integers, so no function mentions their type.
        config.export.include.extend(choices(&text));
        sources.push(path);
    }
    let mut builder = cbindgen::Builder::new().with_config(config);
    for path in sources {
        builder = builder.with_src(path);
    }
    for choice in &spec.choices {
        builder = builder.include_item(format!("recloth_{}", snake(&choice.name)));
    }
    let bindings = builder.generate().map_err(|error| error.to_string())?;
    let mut bytes = Vec::new();
    bindings.write(&mut bytes);
    let text = String::from_utf8(bytes).map_err(|error| error.to_string())?;
    // What Rust calls safety, a C reader takes as part of the description.
    Ok(text.replace("\n// # Safety\n", "\n"))
}

/// Names of the enums of a source.
fn choices(source: &str) -> impl Iterator<Item = String> {
    source
        .lines()
        .filter_map(|line| line.strip_prefix("pub enum "))
        .filter_map(|rest| rest.split_whitespace().next())
        .map(str::to_owned)
}
