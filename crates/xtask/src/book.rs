//! The book: built, and its figures drawn, by the crate `recloth-book`, so that only this command waits for mdBook to
//! be compiled.

use std::{path::Path, process::Command};

/// Runs `recloth-book COMMAND`.
pub(crate) fn book(root: &Path, command: &str) -> Result<(), String> {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let status = Command::new(cargo)
        .args(["run", "--quiet", "--package", "recloth-book", "--", command])
        .current_dir(root)
        .status()
        .map_err(|error| format!("cargo: {error}"))?;
    if status.success() {
        Ok(())
    } else {
        Err(format!("recloth-book {command} failed"))
    }
}
