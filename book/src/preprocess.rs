//! The preprocessor: the additions of a page, one after another.

use std::path::Path;

use mdbook_preprocessor::book::{Book, BookItem, Chapter, SectionNumber};
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
                outcome = add_pages(chapter, &context.root);
            }
        });
        book.for_each_chapter_mut(|chapter| {
            if outcome.is_ok() {
                outcome = expand(chapter, &context.root);
            }
        });
        outcome.map(|()| book)
    }
}

/// Below the page with the index of functions, a page for each file of the core.
fn add_pages(chapter: &mut Chapter, root: &Path) -> Result<()> {
    let pages = crate::reference::pages(&chapter.content, root).map_err(Error::msg)?;
    let mut parents = chapter.parent_names.clone();
    parents.push(chapter.name.clone());
    for (index, page) in pages.into_iter().enumerate() {
        let file = format!("functions/{}.md", page.name);
        let mut below = Chapter::new(&page.name, page.text, file, parents.clone());
        below.number = chapter.number.as_ref().map(|number| {
            let mut number = number.to_vec();
            number.push(index as u32 + 1);
            SectionNumber::new(number)
        });
        chapter.sub_items.push(BookItem::Chapter(below));
    }
    Ok(())
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
        .and_then(|text| crate::reference::expand(&text, root))
        .and_then(|text| crate::maths::expand(&text))
        .and_then(|text| crate::doors::expand(&text, &page))
        .and_then(|text| crate::figure::expand(&text, &root.join("figures")))
        .map_err(|reason| Error::msg(format!("{page}.md: {reason}")))?;
    Ok(())
}
