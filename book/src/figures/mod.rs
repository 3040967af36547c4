//! The figures of the book, drawn by recloth: `recloth-book figures` writes them to `book/figures`, where the pages
//! find them. They are committed, and a test draws them again.

mod band_sections;
mod bath_lots;
mod bias;
mod binder_dips;
mod binding;
mod bleach_time;
mod body_panels;
mod buttonhole;
mod cap;
mod changed_piece;
mod circle_skirt;
mod corner_kinds;
mod corners;
mod cover_mark;
mod dart;
mod drafts;
mod draw;
mod elastic;
mod facing_and_lining;
mod flared_hem;
mod folded;
mod gape;
mod gathers;
mod gore;
mod gusset;
mod house_coat_lay;
mod lacing;
mod level_line;
mod lining;
mod matched_lay;
mod must_give;
mod notch_forms;
mod notches_and_marks;
mod offsets;
mod panel_parts;
mod panel_photo;
mod pleats;
mod repeats;
mod shrinkage;
mod side_opening;
mod tape;
mod tape_triangle;
mod trued_up;
mod waistcoat_back;
mod walked;

use std::path::Path;
use std::{fs, io};

use recloth::Error;
use recloth_sheet::{Drawing, svg};

/// What draws one figure.
type Draw = fn() -> Result<Drawing, Error>;

/// Every figure: its name, and what draws it.
const FIGURES: &[(&str, Draw)] = &[
    ("band-sections", band_sections::drawing),
    ("bath-lots", bath_lots::drawing),
    ("bias", bias::drawing),
    ("binder-dips", binder_dips::drawing),
    ("binding", binding::drawing),
    ("bleach-time", bleach_time::drawing),
    ("body-panels", body_panels::drawing),
    ("buttonhole", buttonhole::drawing),
    ("cap", cap::drawing),
    ("changed-piece", changed_piece::drawing),
    ("circle-skirt", circle_skirt::drawing),
    ("corner-kinds", corner_kinds::drawing),
    ("corners", corners::drawing),
    ("cover-mark", cover_mark::drawing),
    ("dart", dart::drawing),
    ("drafts-bands", drafts::bands),
    ("drafts-skirts", drafts::skirts),
    ("drafts-tops", drafts::tops),
    ("drafts-wide-skirts", drafts::wide_skirts),
    ("elastic", elastic::drawing),
    ("facing-and-lining", facing_and_lining::drawing),
    ("flared-hem", flared_hem::drawing),
    ("folded", folded::drawing),
    ("gape", gape::drawing),
    ("gathers", gathers::drawing),
    ("gore", gore::drawing),
    ("gusset", gusset::drawing),
    ("house-coat-lay", house_coat_lay::drawing),
    ("lacing", lacing::drawing),
    ("level-line", level_line::drawing),
    ("lining", lining::drawing),
    ("notch-forms", notch_forms::drawing),
    ("notches-and-marks", notches_and_marks::drawing),
    ("matched-lay", matched_lay::drawing),
    ("must-give-changed", must_give::changed),
    ("must-give-refused", must_give::refused),
    ("offsets", offsets::drawing),
    ("panel-parts", panel_parts::drawing),
    ("panel-photo", panel_photo::drawing),
    ("pleats", pleats::drawing),
    ("repeats", repeats::drawing),
    ("shrinkage", shrinkage::drawing),
    ("side-opening", side_opening::drawing),
    ("tape", tape::drawing),
    ("tape-triangle", tape_triangle::drawing),
    ("trued-up", trued_up::drawing),
    ("waistcoat-back", waistcoat_back::drawing),
    ("walked", walked::drawing),
];

/// Every figure as the name of its file and the text in it.
///
/// # Errors
/// The error of the function that drew it.
pub fn all() -> Result<Vec<(String, String)>, Error> {
    FIGURES
        .iter()
        .map(|(name, draw)| Ok((format!("{name}.svg"), svg(&draw()?)?)))
        .collect()
}

/// Writes every figure into `folder`.
///
/// # Errors
/// What went wrong in drawing or writing.
pub fn write(folder: &Path) -> io::Result<()> {
    fs::create_dir_all(folder)?;
    for (name, text) in all().map_err(io::Error::other)? {
        fs::write(folder.join(name), text)?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;
    use std::fs;
    use std::path::PathBuf;

    fn folder() -> PathBuf {
        PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("figures")
    }

    #[test]
    fn the_committed_figures_are_what_is_drawn_now() {
        let drawn = super::all().unwrap();
        for (name, text) in &drawn {
            let committed = fs::read_to_string(folder().join(name)).unwrap();
            assert!(
                committed == *text,
                "{name} differs: run `cargo xtask figures`"
            );
        }
        let names: BTreeSet<String> = drawn.into_iter().map(|(name, _)| name).collect();
        let files: BTreeSet<String> = fs::read_dir(folder())
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        assert_eq!(names, files);
    }
}
