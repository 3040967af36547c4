//! `recloth-book build` writes the book to `target/book`; `preprocess` is the same preprocessor as a command for an
//! installed mdbook; `figures` draws the figures again; `missing` prints the functions that no worked example calls.

use std::error::Error;
use std::io::{self, Write};
use std::path::Path;
use std::process::ExitCode;

use mdbook_driver::MDBook;
use mdbook_preprocessor::{Preprocessor, parse_input};
use recloth_book::coverage;
use recloth_book::figures;
use recloth_book::preprocess::Recloth;

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let outcome = match words[..] {
        ["build"] => build(root),
        ["figures"] => figures::write(&root.join("figures")).map_err(Into::into),
        ["missing"] => coverage::missing(root)
            .and_then(|names| {
                let written = io::stdout().write_all(names.as_bytes());
                written.map_err(|error| error.to_string())
            })
            .map_err(Into::into),
        ["preprocess"] => preprocess(),
        // mdBook asks whether a renderer is known: every one is.
        ["preprocess", "supports", _] => Ok(()),
        _ => Err("usage: recloth-book build | figures | missing | preprocess".into()),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            say(&format!("recloth-book: {error}"));
            ExitCode::from(2)
        }
    }
}

#[expect(
    clippy::print_stderr,
    reason = "the one place where this command speaks"
)]
fn say(line: &str) {
    eprintln!("{line}");
}

fn build(root: &Path) -> Result<(), Box<dyn Error>> {
    let mut book = MDBook::load(root).map_err(|error| format!("{error:#}"))?;
    book.with_preprocessor(Recloth);
    book.build().map_err(|error| format!("{error:#}"))?;
    let page = book.build_dir_for("html").join("index.html");
    // Without the `..` of the place it is built from.
    let page = page.canonicalize().unwrap_or(page);
    say(&format!("book: {}", page.display()));
    Ok(())
}

fn preprocess() -> Result<(), Box<dyn Error>> {
    let (context, book) = parse_input(io::stdin())?;
    let book = Recloth.run(&context, book)?;
    serde_json::to_writer(io::stdout(), &book)?;
    Ok(())
}
