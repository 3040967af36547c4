//! Which functions stand in a worked example of the book, in all three languages.
//!
//! A function stands in an example where a block of a hand-written page calls it: `NAME(` in Rust, on a line the reader
//! sees; `recloth.NAME(` in Python, or `NAME(` with the name imported; `recloth_NAME(` in C.

use std::fs;
use std::path::Path;

use pulldown_cmark::{CodeBlockKind, Event, Parser, Tag, TagEnd};
use serde_json::Value;

/// The fence's word of each language, in the order of the tabs.
const LANGUAGES: [&str; 3] = ["rust", "python", "c"];

/// A line a function that lacks an example: its name, a colon and the languages without one. In order of name; empty
/// when nothing is missing.
///
/// # Errors
/// A sentence, where a page or `spec.json` cannot be read.
pub fn missing(root: &Path) -> Result<String, String> {
    let examples = examples(root)?;
    let spec: Value = serde_json::from_str(&read(&root.join("../bindings/spec.json"))?)
        .map_err(|error| format!("spec.json: {error}"))?;
    let mut out = String::new();
    let names = spec["functions"].as_array().into_iter().flatten();
    for name in names.filter_map(|function| function["name"].as_str()) {
        let lacks: Vec<&str> = LANGUAGES
            .into_iter()
            .filter(|&language| {
                let mut blocks = examples.0.iter().flat_map(|page| &page.blocks);
                !blocks.any(|block| block.calls(language, name))
            })
            .collect();
        if !lacks.is_empty() {
            out.push_str(&format!("{name}: {}\n", lacks.join(" ")));
        }
    }
    Ok(out)
}

/// The worked examples of the book, by page.
pub struct Examples(Vec<Page>);

struct Page {
    file: &'static str,
    title: String,
    blocks: Vec<Block>,
}

impl Examples {
    /// File and title of the pages that call the function, in the order of the book.
    pub fn of(&self, name: &str) -> impl Iterator<Item = (&str, &str)> {
        self.0
            .iter()
            .filter(move |page| {
                page.blocks
                    .iter()
                    .any(|block| block.calls(block.language, name))
            })
            .map(|page| (page.file, page.title.as_str()))
    }
}

/// The examples of every page.
///
/// # Errors
/// A sentence, where a page cannot be read.
pub fn examples(root: &Path) -> Result<Examples, String> {
    let mut pages = Vec::new();
    for file in crate::PAGES {
        let text = read(&root.join("pages").join(file))?;
        let title = text.lines().find_map(|line| line.strip_prefix("# "));
        let title = title.unwrap_or(file).to_owned();
        let mut blocks = Vec::new();
        push_blocks(&mut blocks, &text);
        pages.push(Page {
            file,
            title,
            blocks,
        });
    }
    Ok(Examples(pages))
}

fn read(path: &Path) -> Result<String, String> {
    fs::read_to_string(path).map_err(|error| format!("{}: {error}", path.display()))
}

/// One fenced block, without its comments and hidden lines.
struct Block {
    language: &'static str,
    code: String,
    /// Names that this page has imported from the package, in Python.
    imported: Vec<String>,
}

fn push_blocks(blocks: &mut Vec<Block>, page: &str) {
    let mut open: Option<Block> = None;
    let mut imported = Vec::new();
    for event in Parser::new(page) {
        match event {
            Event::Start(Tag::CodeBlock(CodeBlockKind::Fenced(info))) => {
                let word = info.split([',', ' ']).next().unwrap_or_default();
                open = LANGUAGES
                    .into_iter()
                    .find(|&known| known == word)
                    .map(|language| Block {
                        language,
                        code: String::new(),
                        imported: Vec::new(),
                    });
            }
            Event::Text(text) => {
                if let Some(block) = &mut open {
                    for line in text.lines() {
                        block.code.push_str(shown(block.language, line));
                        block.code.push('\n');
                    }
                }
            }
            Event::End(TagEnd::CodeBlock) => {
                if let Some(mut block) = open.take() {
                    if block.language == "python" {
                        push_imports(&mut imported, &block.code);
                        block.imported.clone_from(&imported);
                    }
                    blocks.push(block);
                }
            }
            _ => {}
        }
    }
}

/// A line without its comment; nothing of one that Rust's doctests hide. Signs in a text are not looked for: cut short
/// by them, a line can only be found to call less.
fn shown<'a>(language: &str, line: &'a str) -> &'a str {
    let comment = if language == "python" { "#" } else { "//" };
    if language == "rust" && line.trim_start().starts_with('#') {
        return "";
    }
    line.split(comment).next().unwrap_or_default()
}

fn push_imports(imported: &mut Vec<String>, code: &str) {
    for rest in code.split("from recloth import ").skip(1) {
        let names = match rest.strip_prefix('(') {
            Some(rest) => rest.split(')').next(),
            None => rest.lines().next(),
        };
        let names = names
            .unwrap_or_default()
            .split(',')
            .map(|name| name.trim().to_owned());
        imported.extend(names);
    }
}

impl Block {
    fn calls(&self, language: &str, name: &str) -> bool {
        if self.language != language {
            return false;
        }
        match language {
            "c" => calls(&self.code, &format!("recloth_{name}"), &[]),
            "python" => {
                calls(&self.code, &format!("recloth.{name}"), &["."])
                    || self.imported.iter().any(|known| known == name)
                        && calls(&self.code, name, &[".", "def "])
            }
            _ => calls(&self.code, name, &[".", "fn "]),
        }
    }
}

/// Whether `code` has `name(` as a whole word that follows none of `not_after`.
fn calls(code: &str, name: &str, not_after: &[&str]) -> bool {
    code.match_indices(&format!("{name}(")).any(|(at, _)| {
        let before = &code[..at];
        !before.ends_with(|sign: char| sign.is_alphanumeric() || sign == '_')
            && !not_after.iter().any(|end| before.ends_with(end))
    })
}

#[cfg(test)]
mod tests {
    use std::path::Path;

    use super::{missing, push_blocks};

    #[test]
    fn every_function_stands_in_an_example_of_each_language() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR"));
        let missing = missing(root).unwrap();
        assert!(
            missing.is_empty(),
            "no page of the book calls these:\n{missing}"
        );
    }

    #[test]
    fn only_a_call_that_is_seen_counts() {
        let page = "dart(1)\n\n```rust\nuse recloth::dart::dart;\n# dart(1.0, 2.0);\n// dart(1.0)\nlet a = dart::share(1.0)?;\n```\n\n\
                    ```python\nimport recloth\nfrom recloth import (share,\n    tucks)\nrecloth.gore(1)  # recloth.gather(1)\nshare(2)\nx.tucks(3)\nflounce(1)\n```\n\n\
                    ```c\nrecloth_gore(1, &x, NULL);\nrecloth_tier_each(1);\n```\n\n```text\nrecloth_share(1)\n```\n";
        let mut blocks = Vec::new();
        push_blocks(&mut blocks, page);
        assert_eq!(blocks.len(), 3);
        let calls = |language, name| blocks.iter().any(|block| block.calls(language, name));
        for (language, name, wanted) in [
            ("rust", "share", true),
            ("rust", "dart", false),
            ("rust", "are", false),
            ("python", "gore", true),
            ("python", "share", true),
            ("python", "gather", false),
            ("python", "tucks", false),
            ("python", "flounce", false),
            ("c", "gore", true),
            ("c", "tier", false),
            ("c", "share", false),
        ] {
            assert_eq!(calls(language, name), wanted, "{language} {name}");
        }
    }
}
