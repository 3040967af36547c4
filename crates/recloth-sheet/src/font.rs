//! The one font: DejaVu Sans, shipped with the crate and embedded (the letters used) in every PDF.

use std::ops::Range;

use unicode_bidi::{BidiInfo, Level};

/// The font file; its licence lies beside it.
pub(crate) const FONT: &[u8] = include_bytes!("../fonts/DejaVuSans.ttf");

/// Height of a capital letter as a part of the text size.
pub(crate) const CAPITAL: f64 = 0.73;
/// How far letters reach below the base line, as a part of the text size.
pub(crate) const DESCENT: f64 = 0.24;
/// How far accents reach above the base line, as a part of the text size.
pub(crate) const ASCENT: f64 = 0.93;

/// Width of a line of text (mm) whose size is `size` mm, as it is set in a PDF.
///
/// Browsers set the SVG in their own sans-serif, which is most often a little narrower.
///
/// ```
/// let width = recloth_sheet::text_width("11", 10.0);
/// assert_eq!(width, 2.0 * 10.0 * 1303.0 / 2048.0); // this font's digits are 1303/2048 of the size wide
/// ```
pub fn text_width(text: &str, size: f64) -> f64 {
    let Some(face) = rustybuzz::Face::from_slice(FONT, 0) else {
        return 0.0; // The shipped font is readable: a test sees to it.
    };
    let advance = |(run, leftward): (Range<usize>, bool)| -> i64 {
        let mut buffer = rustybuzz::UnicodeBuffer::new();
        buffer.push_str(&text[run]);
        buffer.guess_segment_properties();
        buffer.set_direction(match leftward {
            true => rustybuzz::Direction::RightToLeft,
            false => rustybuzz::Direction::LeftToRight,
        });
        rustybuzz::shape(&face, &[], buffer)
            .glyph_positions()
            .iter()
            .map(|glyph| i64::from(glyph.x_advance))
            .sum()
    };
    let advance: i64 = runs(text).into_iter().map(advance).sum();
    advance as f64 / f64::from(face.units_per_em()) * size
}

/// The runs of one writing direction, as they stand from left to right, and whether each is written leftward.
///
/// By the Unicode bidirectional algorithm (UAX #9), in a line written rightward as a browser sets the SVG. Without it
/// the digits beside a Hebrew or Arabic name are set in reverse: 25 cm for 52 cm.
pub(crate) fn runs(text: &str) -> Vec<(Range<usize>, bool)> {
    let bidi = BidiInfo::new(text, Some(Level::ltr()));
    let mut runs = Vec::new();
    for paragraph in &bidi.paragraphs {
        let (levels, ranges) = bidi.visual_runs(paragraph, paragraph.range.clone());
        let leftward = |run: &Range<usize>| levels.get(run.start).is_some_and(Level::is_rtl);
        runs.extend(ranges.into_iter().map(|run| (run.clone(), leftward(&run))));
    }
    runs
}

/// Breaks text at spaces into lines at most `width` wide; a single longer word stays whole.
pub(crate) fn wrap(text: &str, size: f64, width: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        match lines.last_mut() {
            Some(line) if text_width(&format!("{line} {word}"), size) <= width => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

/// The text, or its beginning and an ellipsis where it is wider than `width`.
pub(crate) fn shorten(text: &str, size: f64, width: f64) -> String {
    if text_width(text, size) <= width {
        return text.to_owned();
    }
    let ends: Vec<usize> = text.char_indices().map(|(end, _)| end).take(500).collect();
    let begin = |count: usize| match ends.get(count) {
        Some(&end) => format!("{}…", text[..end].trim_end()),
        None => String::new(),
    };
    // More letters are wider, so the most that fit are found by halving; 0 stands for none at all.
    let (mut fits, mut wide) = (0, ends.len());
    while wide - fits > 1 {
        let middle = (fits + wide) / 2;
        if text_width(&begin(middle), size) <= width {
            fits = middle;
        } else {
            wide = middle;
        }
    }
    let short = begin(fits);
    if text_width(&short, size) <= width {
        short
    } else {
        String::new()
    }
}

/// Letters of a name or an instruction that are drawn: more could not be read on a piece.
const DRAWN: usize = 120;

/// The text, or its first letters and an ellipsis where it is longer than a drawing can show.
pub(crate) fn clip(text: &str) -> String {
    match text.char_indices().nth(DRAWN) {
        Some((end, _)) => format!("{}…", text[..end].trim_end()),
        None => text.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_font_has_the_letters_of_the_trade() {
        let face = rustybuzz::Face::from_slice(FONT, 0).unwrap();
        for letter in "ABCxyz0189öüäßèéçñłőžčşøæåЖΩ⅛¼⅜½⅝¾⅞″′–—·×°%²→…½".chars()
        {
            assert!(face.glyph_index(letter).is_some(), "{letter}");
        }
    }

    #[test]
    fn digits_beside_leftward_letters_keep_their_order() {
        let in_order = |text: &str| {
            let run = |(run, leftward): (Range<usize>, bool)| (text[run].to_owned(), leftward);
            runs(text).into_iter().map(run).collect::<Vec<_>>()
        };
        let run = |text: &str, leftward: bool| (text.to_owned(), leftward);
        assert_eq!(in_order("Pocket: 10 mm"), [run("Pocket: 10 mm", false)]);
        assert_eq!(in_order(""), []);
        // By hand after UAX #9: letters leftward, digits rightward and to their left, what follows rightward again.
        assert_eq!(
            in_order("כיס 25 cm"),
            [run("25", false), run("כיס ", true), run(" cm", false)]
        );
        assert_eq!(
            in_order("2. כיס bib"),
            [run("2. ", false), run("כיס", true), run(" bib", false)]
        );
        let parts = text_width("כיס ", 4.0) + text_width("25", 4.0) + text_width(" cm", 4.0);
        assert!((text_width("כיס 25 cm", 4.0) - parts).abs() < 1e-9);
    }

    #[test]
    fn widths_add_up_and_scale() {
        assert_eq!(text_width("", 4.0), 0.0);
        // DejaVu Sans: the digits are 1303 units of 2048 wide (the font's own hmtx table).
        assert_eq!(text_width("11", 10.0), 2.0 * 13030.0 / 2048.0);
    }

    #[test]
    fn wraps_and_shortens_to_the_width() {
        let lines = wrap("one two three four five six", 4.0, 30.0);
        assert!(lines.len() > 1);
        assert_eq!(lines.join(" "), "one two three four five six");
        assert!(lines.iter().all(|line| text_width(line, 4.0) <= 30.0));
        let short = shorten("a very long name of a piece", 4.0, 20.0);
        assert!(short.ends_with('…') && text_width(&short, 4.0) <= 20.0);
        assert_eq!(shorten("Pocket", 4.0, 200.0), "Pocket");
        assert_eq!(shorten("Pocket", 4.0, 0.0), "");
        assert_eq!(shorten("", 4.0, -1.0), "");
        // The most letters that fit: one more does not.
        for width in [5.0, 7.5, 17.0, 41.0] {
            let text = "a very long name of a piece, łő ⅜";
            let short = shorten(text, 4.0, width);
            let kept = short.chars().count() - 1;
            let more: String = text.chars().take(kept + 1).chain(['…']).collect();
            assert!(text_width(&short, 4.0) <= width, "{short}");
            assert!(
                text_width(&more, 4.0) > width || more.contains(" …"),
                "{short}"
            );
        }
    }

    #[test]
    fn a_name_too_long_to_read_is_clipped() {
        assert_eq!(clip("Pocket"), "Pocket");
        let long = clip(&"é ".repeat(5000));
        assert!(long.chars().count() <= DRAWN + 1 && long.ends_with("é…"));
    }
}
