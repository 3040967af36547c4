//! One example, three languages: consecutive fenced blocks of Rust, Python and C become a set of tabs.
//!
//! A `text` block right after a block shows what that block prints and stays with it. The tabs are radio buttons and
//! style alone, so they work without script; printed, or without style, the languages follow one another.

/// The languages that have a tab: the fence's word and the tab's name.
const LANGUAGES: &[(&str, &str)] = &[("rust", "Rust"), ("python", "Python"), ("c", "C")];

/// One fenced block, or the lines between two.
struct Part<'a> {
    /// The fence's first word; nothing for ordinary text.
    language: Option<&'a str>,
    lines: Vec<&'a str>,
}

/// `text` with every run of two or more languages made a set of tabs. `page` keeps the ids of one page apart from
/// those of another, as all pages are also printed as one.
///
/// # Errors
/// A sentence, where a fence is not closed.
pub fn expand(text: &str, page: &str) -> Result<String, String> {
    let mut parts = split(text)?.into_iter().peekable();
    let mut out = String::with_capacity(text.len());
    let mut sets = 0;
    while let Some(part) = parts.next() {
        let Some(name) = part.language.and_then(tab_name) else {
            push_lines(&mut out, &part.lines);
            continue;
        };
        let mut set = vec![(name, vec![part])];
        let mut gap: Vec<Part> = Vec::new();
        while let Some(next) = parts.peek() {
            let blank =
                next.language.is_none() && next.lines.iter().all(|line| line.trim().is_empty());
            let language = next.language;
            let tab = language.and_then(tab_name);
            let taken = set.iter().any(|(name, _)| Some(*name) == tab);
            if !blank && language != Some("text") && (tab.is_none() || taken) {
                break;
            }
            let Some(next) = parts.next() else { break };
            if blank {
                gap.push(next);
            } else if let Some(name) = tab {
                gap.clear();
                set.push((name, vec![next]));
            } else {
                gap.clear();
                if let Some((_, parts)) = set.last_mut() {
                    parts.push(next);
                }
            }
        }
        sets += 1;
        push_set(&mut out, &set, &format!("{page}-{sets}"));
        for part in gap {
            push_lines(&mut out, &part.lines);
        }
    }
    Ok(out)
}

fn tab_name(language: &str) -> Option<&'static str> {
    LANGUAGES
        .iter()
        .find(|(word, _)| *word == language)
        .map(|(_, name)| *name)
}

fn push_lines(out: &mut String, lines: &[&str]) {
    for line in lines {
        out.push_str(line);
        out.push('\n');
    }
}

fn push_set(out: &mut String, set: &[(&str, Vec<Part>)], id: &str) {
    let push_parts = |out: &mut String, parts: &[Part]| {
        for part in parts {
            push_lines(out, &part.lines);
            out.push('\n');
        }
    };
    if let [(_, parts)] = set {
        push_parts(out, parts);
        return;
    }
    out.push_str("<fieldset class=\"doors\"><legend>The same example in each language</legend>\n");
    for (number, (name, _)) in set.iter().enumerate() {
        let checked = if number == 0 { " checked" } else { "" };
        out.push_str(&format!(
            "<input type=\"radio\" name=\"doors-{id}\" id=\"doors-{id}-{number}\"{checked}>\
             <label for=\"doors-{id}-{number}\">{name}</label>\n"
        ));
    }
    for (name, parts) in set {
        out.push_str(&format!(
            "<div class=\"door\">\n<p class=\"door-name\">{name}</p>\n\n"
        ));
        push_parts(out, parts);
        out.push_str("</div>\n");
    }
    out.push_str("</fieldset>\n\n");
}

/// The text as fenced blocks and what lies between them. Fences are three backticks at the start of a line.
fn split(text: &str) -> Result<Vec<Part<'_>>, String> {
    let mut parts = Vec::new();
    let mut open: Option<Part> = None;
    let mut between: Vec<&str> = Vec::new();
    for line in text.lines() {
        match (open.take(), line.strip_prefix("```")) {
            (None, Some(info)) => {
                if !between.is_empty() {
                    parts.push(Part {
                        language: None,
                        lines: std::mem::take(&mut between),
                    });
                }
                let language = info.split([',', ' ']).next().unwrap_or_default();
                open = Some(Part {
                    language: Some(language),
                    lines: vec![line],
                });
            }
            (None, None) => between.push(line),
            (Some(mut part), fence) => {
                part.lines.push(line);
                match fence {
                    Some(_) => parts.push(part),
                    None => open = Some(part),
                }
            }
        }
    }
    if let Some(part) = open {
        return Err(format!("`{}` is not closed", part.lines[0]));
    }
    if !between.is_empty() {
        parts.push(Part {
            language: None,
            lines: between,
        });
    }
    Ok(parts)
}

#[cfg(test)]
mod tests {
    use super::expand;

    #[test]
    fn three_languages_become_tabs_and_output_stays_with_its_block() {
        let text = "Before.\n\n```rust\na\n```\n\n```python\nb\n```\n\n```text\n1\n```\n\n```c\nc\n```\n\nAfter.\n";
        let out = expand(text, "p").unwrap();
        assert_eq!(out.matches("<input").count(), 3);
        assert_eq!(out.matches("class=\"door\"").count(), 3);
        assert_eq!(out.matches(" checked").count(), 1);
        let python = out.split("<div class=\"door\">").nth(2).unwrap();
        assert!(python.contains("```python\nb\n```") && python.contains("```text\n1\n```"));
        assert!(
            out.starts_with("Before.") && out.ends_with("\nAfter.\n"),
            "{out}"
        );
    }

    #[test]
    fn one_language_and_the_same_language_twice_stay_blocks() {
        let text = "```rust\na\n```\n\n```rust\nb\n```\n";
        let out = expand(text, "p").unwrap();
        assert!(!out.contains("<fieldset"));
        assert_eq!(out.matches("```rust").count(), 2);
    }

    #[test]
    fn sets_of_one_page_have_ids_of_their_own() {
        let text = "```rust\na\n```\n```c\nb\n```\n\nText.\n\n```rust\na\n```\n```c\nb\n```\n";
        let out = expand(text, "p").unwrap();
        assert!(out.contains("id=\"doors-p-1-0\"") && out.contains("id=\"doors-p-2-0\""));
    }

    #[test]
    fn an_open_fence_is_an_error() {
        assert!(expand("```rust\na\n", "p").unwrap_err().contains("```rust"));
    }
}
