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
    let mut pages = BTreeMap::new();
    for inside in ["", "functions/"] {
        for entry in fs::read_dir(build_dir.join(inside)).unwrap() {
            let path = entry.unwrap().path();
            let name = path.file_name().unwrap().to_str().unwrap();
            if name.ends_with(".html") {
                pages.insert(
                    format!("{inside}{name}"),
                    fs::read_to_string(&path).unwrap(),
                );
            }
        }
    }
    pages
}

/// What a link from this page leads to: a page and a place on it.
fn target<'a>(from: &str, link: &'a str) -> (String, &'a str) {
    let (file, place) = link.split_once('#').unwrap_or((link, ""));
    let file = match (file, file.strip_prefix("../"), from.rsplit_once('/')) {
        ("", ..) => from.to_owned(),
        (_, Some(file), _) => file.to_owned(),
        (file, None, Some((folder, _))) => format!("{folder}/{file}"),
        (file, None, None) => file.to_owned(),
    };
    (file, place)
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
    // Every link between pages leads to a page and a place that are there, but for the page that holds all of them.
    let mut links = 0;
    for (name, page) in in_process.iter().filter(|(name, _)| *name != "print.html") {
        let main = &page[page.find("<main>").unwrap_or(0)..page.find("</main>").unwrap_or(0)];
        for link in main
            .split("href=\"")
            .skip(1)
            .filter_map(|rest| rest.split('"').next())
        {
            let (file, place) = target(name, link);
            if !file.ends_with(".html") {
                continue;
            }
            links += 1;
            let there = in_process
                .get(&file)
                .is_some_and(|page| place.is_empty() || page.contains(&format!("id=\"{place}\"")));
            assert!(there, "{name}: {link} leads nowhere");
        }
    }
    assert!(links > 500, "{links} links");
    let skirts = &in_process["circle-skirts.html"];
    assert!(skirts.contains("<mfrac>") && skirts.contains("class=\"doors\""));
}
