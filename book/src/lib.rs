//! The book of Recloth as a crate: every Rust block of every page is a doctest of it, and its preprocessor turns a
//! page as written into a page as read.
//!
//! A page is Markdown with six additions, each handled by one module:
//! - [`vector`]: `{{#vector FUNCTION ROW COLUMN DECIMALS}}`, a number out of the CSV row the tests check;
//! - [`brief`]: `{{#brief PATH}}`, what the demo's brief says;
//! - [`mod@reference`]: `{{#reference}}`, the index of every function; the pages below it are made from their doc comments;
//! - [`maths`]: LaTeX between dollar signs, shown as MathML;
//! - [`doors`]: one example in Rust, Python and C in consecutive fenced blocks, shown as tabs;
//! - [`figure`]: `{{#figure NAME Caption.}}`, a drawing made by recloth.

pub mod brief;
pub mod coverage;
pub mod directive;
pub mod doors;
pub mod figure;
pub mod figures;
pub mod maths;
pub mod preprocess;
pub mod reference;
pub mod vector;

macro_rules! pages {
    ($($file:literal => $name:ident),* $(,)?) => {
        /// The file of every page, as `SUMMARY.md` must list them.
        pub const PAGES: &[&str] = &[$($file),*];
        $(#[cfg(doctest)] #[doc = include_str!(concat!("../pages/", $file))] mod $name {})*
    };
}

/// What the README shows is run as the pages are.
#[cfg(doctest)]
#[doc = include_str!("../../README.md")]
mod readme {}

pages! {
    "introduction.md" => introduction,
    "installing.md" => installing,
    "house-coat.md" => house_coat,
    "reading-the-tape.md" => reading_the_tape,
    "measures-of-a-body.md" => measures_of_a_body,
    "measuring-a-panel.md" => measuring_a_panel,
    "offsets-and-photographs.md" => offsets_and_photographs,
    "allowances-and-corners.md" => allowances_and_corners,
    "seams-hems-and-thread.md" => seams_hems_and_thread,
    "darts.md" => darts,
    "darts-moved.md" => darts_moved,
    "waistbands.md" => waistbands,
    "opening-to-one-side.md" => opening_to_one_side,
    "curved-edges.md" => curved_edges,
    "circle-skirts.md" => circle_skirts,
    "gores-tiers-and-wraps.md" => gores_tiers_and_wraps,
    "gathers.md" => gathers,
    "pleats-and-tucks.md" => pleats_and_tucks,
    "elastic-and-ribbing.md" => elastic_and_ribbing,
    "bias.md" => bias,
    "necks-and-sleeves.md" => necks_and_sleeves,
    "buttonholes.md" => buttonholes,
    "closures.md" => closures,
    "zips-stands-and-bindings.md" => zips_stands_and_bindings,
    "shrinkage.md" => shrinkage,
    "spreadsheets.md" => spreadsheets,
    "linings.md" => linings,
    "letting-in-and-down.md" => letting_in_and_down,
    "how-much-cloth.md" => how_much_cloth,
    "what-must-give.md" => what_must_give,
    "baths.md" => baths,
    "bleaching.md" => bleaching,
    "dyeing.md" => dyeing,
    "colour.md" => colour,
    "pieces-and-cut-lines.md" => pieces_and_cut_lines,
    "notches-and-marks.md" => notches_and_marks,
    "changing-a-piece.md" => changing_a_piece,
    "facings-and-linings.md" => facings_and_linings,
    "walking-seams.md" => walking_seams,
    "panels-as-shapes.md" => panels_as_shapes,
    "drafts.md" => drafts,
    "functions.md" => functions,
    "changes.md" => changes,
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;
    use std::fs;
    use std::path::Path;

    use super::PAGES;

    /// Each page that asks a question answers it in all three languages, says where it got it from, and ends with exercises
    /// whose answers are run.
    #[test]
    fn every_chapter_has_all_its_parts() {
        let pages = Path::new(env!("CARGO_MANIFEST_DIR")).join("pages");
        let mut chapters = 0;
        for page in PAGES {
            let text = fs::read_to_string(pages.join(page)).unwrap();
            if !text.contains("\n## The question\n") {
                continue;
            }
            chapters += 1;
            for part in [
                "{{#figure ",
                "\n## The reasoning\n",
                "\n$$",
                "\n## The example\n",
                "\n```rust\n",
                "\n```python\n",
                "\n```c\n",
                "\n## By hand\n",
                "\n## Where it stops being true\n",
                "\n## Sources\n",
                "\n## Exercises\n",
                "\n### Answers\n\n```python\n",
            ] {
                assert!(text.contains(part), "{page} lacks `{}`", part.trim());
            }
        }
        assert!(chapters >= 8, "{chapters} chapters");
    }

    #[test]
    fn the_summary_lists_the_tested_pages_and_no_other() {
        let listed: BTreeSet<&str> = include_str!("../pages/SUMMARY.md")
            .split("](")
            .skip(1)
            .filter_map(|rest| rest.split(')').next())
            .collect();
        let tested: BTreeSet<&str> = PAGES.iter().copied().collect();
        assert!(!tested.is_empty());
        assert_eq!(listed, tested);
    }
}
