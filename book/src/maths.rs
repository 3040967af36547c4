//! Formulas: LaTeX between dollar signs becomes MathML, which browsers show without script or font.

use pulldown_cmark::{Event, Options, Parser, Tag, TagEnd};
use pulldown_latex::config::DisplayMode;
use pulldown_latex::{RenderConfig, Storage, push_mathml};

/// `text` with `$…$` and `$$…$$` replaced by MathML; code is left alone.
///
/// # Errors
/// A sentence with the formula that cannot be read.
pub fn expand(text: &str) -> Result<String, String> {
    let options = Options::ENABLE_MATH | Options::ENABLE_TABLES;
    let mut out = String::with_capacity(text.len());
    let mut done = 0;
    let mut in_code = false;
    for (event, range) in Parser::new_ext(text, options).into_offset_iter() {
        let (latex, display_mode) = match event {
            Event::InlineMath(latex) => (latex, DisplayMode::Inline),
            Event::DisplayMath(latex) => (latex, DisplayMode::Block),
            Event::Start(Tag::CodeBlock(_)) => {
                in_code = true;
                continue;
            }
            Event::End(TagEnd::CodeBlock) => {
                in_code = false;
                continue;
            }
            // A formula with unbalanced braces is no formula to Markdown, and would be printed as typed.
            Event::Text(words) if !in_code && words.contains('$') => {
                return Err(format!("a dollar sign that encloses no formula: `{words}`"));
            }
            _ => continue,
        };
        out.push_str(&text[done..range.start]);
        out.push_str(&mathml(&latex, display_mode)?);
        done = range.end;
    }
    out.push_str(&text[done..]);
    Ok(out)
}

fn mathml(latex: &str, display_mode: DisplayMode) -> Result<String, String> {
    let storage = Storage::new();
    let events: Vec<_> = pulldown_latex::Parser::new(latex, &storage).collect();
    if let Some(error) = events.iter().find_map(|event| event.as_ref().err()) {
        return Err(format!("formula `{latex}`: {error}"));
    }
    let config = RenderConfig {
        display_mode,
        ..RenderConfig::default()
    };
    let mut out = String::new();
    push_mathml(&mut out, events.into_iter(), config)
        .map_err(|error| format!("formula `{latex}`: {error}"))?;
    // Markdown still reads what stands between the tags: no line may end there, no mark may mean emphasis.
    Ok(out
        .replace(['\n', '\r'], "")
        // The converter escapes its own no-break space a second time.
        .replace("&amp;nbsp;", "\u{a0}")
        .replace("&nbsp;", "\u{a0}")
        .replace('*', "&#42;")
        .replace('_', "&#95;"))
}

#[cfg(test)]
mod tests {
    use super::expand;

    #[test]
    fn formulas_become_mathml_and_code_stays() {
        let text = "The radius $r = \\frac{W}{2\\pi f}$ of `$a$`.\n\n$$h = 2\\pi f (r + L)$$\n\n```text\n$x$\n```\n";
        let out = expand(text).unwrap();
        assert!(out.contains("<math display=\"inline\">"), "{out}");
        assert!(out.contains("<mfrac>"), "{out}");
        assert!(out.contains("<math display=\"block\">"), "{out}");
        assert!(out.contains("`$a$`") && out.contains("\n$x$\n"), "{out}");
        assert!(!out.contains("\\frac"), "{out}");
        let percent = expand("$100\\ \\%$").unwrap();
        assert!(
            percent.contains('\u{a0}') && !percent.contains("nbsp"),
            "{percent}"
        );
    }

    #[test]
    fn a_bad_formula_is_an_error() {
        for text in ["$\\frac{1$", "$\\nosuchcommand$", "a lone $ sign"] {
            assert!(expand(text).is_err(), "{text}");
        }
        // What stands in a code block or a code span may hold any sign.
        assert!(expand("`$` and\n\n```text\n$\n```\n").is_ok());
    }
}
