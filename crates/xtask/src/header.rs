//! `recloth.h` from the C sources, by cbindgen.

use std::path::Path;

/// The header's text.
pub(crate) fn header(root: &Path) -> Result<String, String> {
    let folder = root.join("bindings/c");
    let config = cbindgen::Config::from_file(folder.join("cbindgen.toml"))?;
    let mut builder = cbindgen::Builder::new().with_config(config);
    for source in ["boundary.rs", "generated.rs"] {
        builder = builder.with_src(folder.join("src").join(source));
    }
    let bindings = builder.generate().map_err(|error| error.to_string())?;
    let mut bytes = Vec::new();
    bindings.write(&mut bytes);
    let text = String::from_utf8(bytes).map_err(|error| error.to_string())?;
    // What Rust calls safety, a C reader takes as part of the description.
    Ok(text.replace("\n// # Safety\n", "\n"))
}
