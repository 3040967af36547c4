//! The whole book is built twice: in process, and with the preprocessor as a command, as an installed mdbook does it.

#![allow(clippy::unwrap_used, reason = "a test may panic")]

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use mdbook_driver::MDBook;
use mdbook_driver::config::Config;
use recloth_book::preprocess::Recloth;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// Builds into a folder of this test's own and reads the pages back.
fn pages(folder: &str, command: &str, in_process: bool) -> BTreeMap<String, String> {
    let build_dir = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(folder);
    let mut config = Config::from_disk(root().join("book.toml")).unwrap();
    config.build.build_dir = build_dir.clone();
    config.set("preprocessor.recloth.command", command).unwrap();
    let mut book = MDBook::load_with_config(root(), config).unwrap();
    if in_process {
        book.with_preprocessor(Recloth);
    }
    book.build().unwrap();
    fs::read_dir(build_dir)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| {
            path.extension()
                .is_some_and(|extension| extension == "html")
        })
        .map(|path| {
            let name = path.file_name().unwrap().to_str().unwrap().to_owned();
            (name, fs::read_to_string(path).unwrap())
        })
        .collect()
}

#[test]
fn both_ways_to_build_give_the_same_pages_and_none_asks_the_network() {
    // In process the command is never run, so a wrong one does not matter.
    let in_process = pages("in-process", "false", true);
    let command = format!("{} preprocess", env!("CARGO_BIN_EXE_recloth-book"));
    let by_command = pages("by-command", &command, false);
    assert!(in_process.len() > recloth_book::PAGES.len());
    for (name, page) in &in_process {
        assert!(by_command[name] == *page, "{name} differs");
        assert!(!page.contains("{{#"), "{name} has a directive left");
        for wanted in ["src=", "href="] {
            for link in page.split(wanted).skip(1) {
                let outside = link.starts_with("\"http") || link.starts_with("\"//");
                assert!(!outside, "{name}: {}", &link[..link.len().min(60)]);
            }
        }
    }
    let skirts = &in_process["circle-skirts.html"];
    assert!(skirts.contains("<mfrac>") && skirts.contains("class=\"doors\""));
}
