//! The preprocessor: the additions of a page, one after another.

use std::path::Path;

use mdbook_preprocessor::book::{Book, Chapter};
use mdbook_preprocessor::errors::{Error, Result};
use mdbook_preprocessor::{Preprocessor, PreprocessorContext};

/// The book's preprocessor, for mdBook in process or as a command.
pub struct Recloth;

impl Preprocessor for Recloth {
    fn name(&self) -> &str {
        "recloth"
    }

    fn run(&self, context: &PreprocessorContext, mut book: Book) -> Result<Book> {
        let mut outcome = Ok(());
        book.for_each_chapter_mut(|chapter| {
            if outcome.is_ok() {
                outcome = expand(chapter, &context.root);
            }
        });
        outcome.map(|()| book)
    }
}

/// One page as written made a page as read; `root` is the book's folder.
fn expand(chapter: &mut Chapter, root: &Path) -> Result<()> {
    let page = chapter
        .path
        .as_deref()
        .and_then(Path::file_stem)
        .and_then(|stem| stem.to_str())
        .unwrap_or("page")
        .to_owned();
    // Figures last: what they set in is finished and nothing of it is Markdown.
    chapter.content = crate::vector::expand(&chapter.content, &root.join("../tests/vectors"))
        .and_then(|text| crate::brief::expand(&text, &root.join("demo/house-coat.toml")))
        .and_then(|text| crate::reference::expand(&text, &root.join("../bindings/spec.json")))
        .and_then(|text| crate::maths::expand(&text))
        .and_then(|text| crate::doors::expand(&text, &page))
        .and_then(|text| crate::figure::expand(&text, &root.join("figures")))
        .map_err(|reason| Error::msg(format!("{page}.md: {reason}")))?;
    Ok(())
}
