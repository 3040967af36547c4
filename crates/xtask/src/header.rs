//! `recloth.h` from the C sources, by cbindgen.

use std::path::Path;

use crate::spec::{Spec, snake};

/// The files with what C sees.
const SOURCES: [&str; 12] = [
    "boundary.rs",
    "generated.rs",
    "outline.rs",
    "plan.rs",
    "shapes/piece.rs",
    "shapes/operation.rs",
    "shapes/derived.rs",
    "shapes/panel.rs",
    "shapes/draft.rs",
    "shapes/search.rs",
    "shapes/change.rs",
    "shapes/lay.rs",
];
/// Choices of functions written by hand.
const CHOICES: [&str; 3] = ["recloth_corner", "recloth_drawn", "recloth_way"];

/// The header's text. Choices cross as plain numbers, so no function names their types: they are asked for.
pub(crate) fn header(root: &Path, spec: &Spec) -> Result<String, String> {
    let folder = root.join("bindings/c");
    let config = cbindgen::Config::from_file(folder.join("cbindgen.toml"))?;
    let mut builder = cbindgen::Builder::new().with_config(config);
    for source in SOURCES {
        builder = builder.with_src(folder.join("src").join(source));
    }
    for choice in &spec.choices {
        builder = builder.include_item(format!("recloth_{}", snake(&choice.name)));
    }
    for choice in CHOICES {
        builder = builder.include_item(choice);
    }
    let bindings = builder.generate().map_err(|error| error.to_string())?;
    let mut bytes = Vec::new();
    bindings.write(&mut bytes);
    let text = String::from_utf8(bytes).map_err(|error| error.to_string())?;
    // What Rust calls safety, a C reader takes as part of the description.
    Ok(text.replace("\n// # Safety\n", "\n"))
}
