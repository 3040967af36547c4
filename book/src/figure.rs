//! Figures: `{{#figure NAME Caption.}}` on a line of its own becomes the drawing `figures/NAME.svg`, inline, so that
//! the page is whole in one file.

use std::fs;
use std::path::Path;

const OPEN: &str = "{{#figure ";

/// `text` with every figure set in, from the SVG files in `figures`.
///
/// # Errors
/// A sentence naming the figure, where it has no file or no caption.
pub fn expand(text: &str, figures: &Path) -> Result<String, String> {
    let mut out = String::with_capacity(text.len());
    for line in text.lines() {
        match line
            .strip_prefix(OPEN)
            .and_then(|rest| rest.strip_suffix("}}"))
        {
            Some(words) => out.push_str(&figure(words, figures)?),
            None => out.push_str(line),
        }
        out.push('\n');
    }
    Ok(out)
}

fn figure(words: &str, figures: &Path) -> Result<String, String> {
    let Some((name, caption)) = words.split_once(' ') else {
        return Err(format!("figure `{words}` has no caption"));
    };
    let file = figures.join(format!("{name}.svg"));
    let svg = fs::read_to_string(&file).map_err(|error| format!("figure `{name}`: {error}"))?;
    let Some(start) = svg.find("<svg") else {
        return Err(format!("figure `{name}` is no SVG"));
    };
    // Ids are made this figure's own, as several figures stand in one page. A blank line would end the HTML block.
    let svg: String = own_ids(&svg[start..], name)
        .lines()
        .filter(|line| !line.trim().is_empty())
        .map(|line| format!("{line}\n"))
        .collect();
    let caption = caption.trim();
    Ok(format!(
        "<figure class=\"drawing\" role=\"group\" aria-label=\"{}\">\n{svg}<figcaption>{}</figcaption>\n</figure>",
        escape(caption),
        escape(caption),
    ))
}

fn own_ids(svg: &str, name: &str) -> String {
    svg.replace(" id=\"", &format!(" id=\"{name}-"))
        .replace("url(#", &format!("url(#{name}-"))
        .replace("href=\"#", &format!("href=\"#{name}-"))
        .replace("aria-labelledby=\"", &format!("aria-labelledby=\"{name}-"))
}

fn escape(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
        .replace('"', "&quot;")
}

#[cfg(test)]
mod tests {
    use super::{figure, own_ids};
    use std::path::Path;

    #[test]
    fn ids_are_made_the_figures_own() {
        assert_eq!(
            own_ids("<a id=\"x\"/><b fill=\"url(#x)\"/>", "f"),
            "<a id=\"f-x\"/><b fill=\"url(#f-x)\"/>"
        );
    }

    #[test]
    fn a_missing_figure_and_a_missing_caption_are_errors() {
        let here = Path::new(env!("CARGO_MANIFEST_DIR"));
        assert!(
            figure("nosuch Words.", here)
                .unwrap_err()
                .contains("nosuch")
        );
        assert!(figure("nosuch", here).unwrap_err().contains("caption"));
    }
}
