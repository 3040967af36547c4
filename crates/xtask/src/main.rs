//! `cargo xtask`: what the project does to itself.
#![allow(
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "a command prints"
)]

use std::{env, path::PathBuf, process::ExitCode};

mod abi;
mod bench;
mod book;
mod coverage;
mod dist;
mod emit;
mod emit_c;
mod emit_python;
mod emit_table;
mod generate;
mod header;
mod parse;
mod spec;
mod test;
mod vectors;

const HELP: &str = "\
cargo xtask COMMAND

  generate          write bindings/spec.json and all that is made from the core's doc comments
  generate --check  say what is not up to date
  bench [NAME]...   time doors and calls, measure flash: all, or these; not part of the tests
  book              build the book into target/book
  figures           draw the book's figures again
  coverage          lines and branches of the core that its tests run; writes target/coverage.txt
  dist [PART]...    what is handed out, made and tried below target/dist: crates, c, python
  fuzz [SECONDS] [TARGET]...  bytes at random into every public function: all targets, or these, a minute each
  test [SECTION]... run every test, or these sections; sets up what it needs below target/
";

fn main() -> ExitCode {
    let words: Vec<String> = env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let root = root();
    let done = match words[..] {
        ["generate"] => generate::generate(&root, false),
        ["generate", "--check"] => generate::generate(&root, true),
        ["book"] => book::book(&root, "build"),
        ["figures"] => book::book(&root, "figures"),
        ["bench", ref names @ ..] => bench::bench(&root, names),
        ["coverage"] => coverage::coverage(&root),
        ["dist", ref parts @ ..] => dist::dist(&root, parts),
        ["fuzz", ref words @ ..] => test::fuzz::fuzz(&root, words),
        ["test", ref sections @ ..] => test::test(&root, sections),
        _ => Err(HELP.to_owned()),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}

/// The root of the checkout.
fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../..")
}
