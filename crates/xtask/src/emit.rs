//! What the emitters share.

use std::fmt::Write as _;

/// The first line of every generated Rust file.
pub(crate) const HEADER: &str =
    "//! Written by `cargo xtask generate` from the doc comments of the core; do not edit.\n\n";

/// A generated file's text.
pub(crate) struct Code(pub(crate) Result<String, String>);

impl Code {
    /// Rust source, laid out by prettyplease so that it does not depend on a formatter's version.
    pub(crate) fn rust(source: String) -> Code {
        Code(match syn::parse_file(&source) {
            // prettyplease keeps no plain comments: the note is an inner doc comment.
            Ok(file) => Ok(prettyplease::unparse(&file)),
            Err(error) => {
                let line = error.span().start().line;
                Err(format!(
                    "generated Rust does not parse: {error} in `{}`",
                    source
                        .lines()
                        .nth(line.saturating_sub(1))
                        .unwrap_or_default()
                ))
            }
        })
    }

    /// Any other text.
    pub(crate) fn text(source: String) -> Code {
        Code(Ok(source))
    }
}

/// Text as Rust doc comment lines.
pub(crate) fn doc_lines(text: &str, code: &mut String) {
    for line in text.lines() {
        let _ = if line.is_empty() {
            writeln!(code, "///")
        } else {
            writeln!(code, "/// {line}")
        };
    }
}
