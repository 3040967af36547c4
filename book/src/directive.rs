//! Directives of the form `{{#WORD …}}`, wherever they stand in a page.

/// `text` with every directive of this word replaced by what `answer` makes of the rest of it.
///
/// # Errors
/// The error of `answer`, with the directive before it; a directive that is not closed.
pub fn expand(
    text: &str,
    word: &str,
    answer: impl Fn(&str) -> Result<String, String>,
) -> Result<String, String> {
    let open = format!("{{{{#{word} ");
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some((before, inner)) = rest.split_once(&open) {
        let Some((inner, after)) = inner.split_once("}}") else {
            return Err(format!("{open}… is not closed by }}}}"));
        };
        out.push_str(before);
        out.push_str(&answer(inner).map_err(|reason| format!("{open}{inner}}}}}: {reason}"))?);
        rest = after;
    }
    out.push_str(rest);
    Ok(out)
}
