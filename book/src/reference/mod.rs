//! The reference, from `bindings/spec.json`, which is made from the core's doc comments: `{{#reference}}` stands for the
//! index of every function, with choices, doubts, cautions and errors; a page for each file of the core comes below it.

use std::fs;
use std::path::Path;

mod accuracy;
mod index;
mod page;
mod spec;

use spec::Spec;

/// The line that is replaced by the index.
const DIRECTIVE: &str = "{{#reference}}";

/// One page of the reference.
pub struct Page {
    /// The file of the core it is about, which is its name too: `tape`.
    pub name: String,
    /// Its Markdown.
    pub text: String,
}

fn read(root: &Path) -> Result<Spec, String> {
    let path = root.join("../bindings/spec.json");
    let file = fs::read_to_string(path).map_err(|error| format!("spec.json: {error}"))?;
    serde_json::from_str(&file).map_err(|error| format!("spec.json: {error}"))
}

/// `text` with the index set in, from the book's folder.
///
/// # Errors
/// A sentence, where the description cannot be read.
pub fn expand(text: &str, root: &Path) -> Result<String, String> {
    if !text.contains(DIRECTIVE) {
        return Ok(text.to_owned());
    }
    Ok(text.replace(DIRECTIVE, &index::index(&read(root)?)))
}

/// The pages that belong below the page with the index; none where `text` has none.
///
/// # Errors
/// A sentence, where the description or a page of the book cannot be read.
pub fn pages(text: &str, root: &Path) -> Result<Vec<Page>, String> {
    if !text.contains(DIRECTIVE) {
        return Ok(Vec::new());
    }
    page::pages(&read(root)?, root)
}

#[cfg(test)]
mod tests {
    use std::path::Path;

    use super::{DIRECTIVE, expand, pages, read};

    #[test]
    fn every_function_stands_on_the_page_of_its_file_and_in_the_index() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR"));
        let index = expand(DIRECTIVE, root).unwrap();
        let pages = pages(DIRECTIVE, root).unwrap();
        let spec = read(root).unwrap();
        assert!(spec.functions.len() > 50);
        for function in &spec.functions {
            let link = format!("(functions/{}.md#{})", function.module, function.name);
            assert_eq!(index.matches(&link).count(), 1, "{link}");
            let page = pages
                .iter()
                .find(|page| page.name == function.module)
                .unwrap();
            let heading = format!("\n## {}\n", function.name);
            assert_eq!(page.text.matches(&heading).count(), 1, "{heading}");
        }
        assert_eq!(pages.len(), spec.modules.len());
        let skirts = &pages.iter().find(|page| page.name == "skirt").unwrap().text;
        for wanted in [
            "| given | `waist` | mm | 1 to 100000 |  | finished waist edge",
            "| answer | `waist_radius` | mm |",
            // Ours, theirs, the difference, the tolerance.
            "| 710, 600, 0.5 | `waist_radius` | 226.00 | 226.00 | ",
            "(../circle-skirts.md)",
        ] {
            assert!(skirts.contains(wanted), "{wanted}\n{skirts}");
        }
    }

    #[test]
    fn words_and_sets_are_the_same_as_what_they_are_held_to() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR"));
        let mut compared = 0;
        for page in pages(DIRECTIVE, root).unwrap() {
            assert!(!page.text.contains("| differs |"), "{}", page.name);
            assert!(!page.text.contains(DIRECTIVE), "{}", page.name);
            compared += page.text.matches("| exact |").count();
        }
        assert!(compared > 20, "{compared}");
        assert!(pages("no directive", root).unwrap().is_empty());
    }
}
