//! The one font: DejaVu Sans, shipped with the crate and embedded (the letters used) in every PDF.

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
    let mut buffer = rustybuzz::UnicodeBuffer::new();
    buffer.push_str(text);
    buffer.guess_segment_properties();
    let advance: i64 = rustybuzz::shape(&face, &[], buffer)
        .glyph_positions()
        .iter()
        .map(|glyph| i64::from(glyph.x_advance))
        .sum();
    advance as f64 / f64::from(face.units_per_em()) * size
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
    let mut kept: Vec<char> = text.chars().take(500).collect();
    while kept.pop().is_some() {
        let short: String = kept.iter().collect::<String>().trim_end().to_owned() + "…";
        if text_width(&short, size) <= width {
            return short;
        }
    }
    String::new()
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
    }
}
