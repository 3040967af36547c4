//! A command line taken apart: the function's name, then `argument=value` as often as one likes.
//!
//! Quotes are forgotten at the table, so the words of a line are joined again: a value goes on until the next name with
//! its equals sign, and `waist=28 1/2in` needs no quotes.

/// Name and value of an argument.
pub(super) type Pair = (String, String);

/// What was typed.
#[derive(Debug, Default, PartialEq)]
pub(super) struct Line {
    /// The words before the first argument.
    pub(super) head: Vec<String>,
    /// Name and value of each argument, in order.
    pub(super) pairs: Vec<Pair>,
    /// Options: words that begin with two hyphens and have no equals sign, and `-h`.
    pub(super) options: Vec<String>,
}

impl Line {
    /// Takes the words apart; there is no wrong line.
    pub(super) fn read(words: &[String]) -> Line {
        let is_option = |word: &&String| {
            *word == "-h" || word.starts_with("--") && word.len() > 2 && !word.contains('=')
        };
        let options = words.iter().filter(is_option).cloned().collect();
        let rest: Vec<&str> = words
            .iter()
            .filter(|word| !is_option(word))
            .map(String::as_str)
            .collect();
        let text = rest.join(" ");
        let mut parts = text.split('=');
        let (mut before, mut next) = name_at_end(parts.next().unwrap_or_default());
        let mut line = Line {
            options,
            ..Line::default()
        };
        let mut parts = parts.peekable();
        if parts.peek().is_none() {
            // No equals sign at all: the last word is no name of an argument.
            before = &text;
        }
        line.head = before.split_whitespace().map(str::to_owned).collect();
        while let Some(part) = parts.next() {
            let (value, name) = if parts.peek().is_some() {
                name_at_end(part)
            } else {
                (part, "")
            };
            line.pairs.push((tidy_name(next), tidy_value(value)));
            next = name;
        }
        line
    }
}

/// Everything before the last word, and that word, which is a name.
fn name_at_end(text: &str) -> (&str, &str) {
    let text = text.trim_end();
    // Arguments may be parted by commas too.
    let parts = |sign: char| sign.is_whitespace() || matches!(sign, ',' | ';');
    let start = text.rfind(parts).map_or(0, |at| {
        at + text[at..].chars().next().map_or(1, char::len_utf8)
    });
    (&text[..start], &text[start..])
}

/// A value without the comma that parts it from the next name.
fn tidy_value(value: &str) -> String {
    value
        .trim()
        .trim_end_matches([',', ';'])
        .trim_end()
        .to_owned()
}

/// A name as the library writes it: `--Cloth-Width` is `cloth_width`.
pub(super) fn tidy_name(name: &str) -> String {
    name.trim_start_matches('-')
        .to_lowercase()
        .replace('-', "_")
}

#[cfg(test)]
mod tests {
    use super::Line;

    fn read(text: &str) -> Line {
        // As a shell parts it: quotes in the text are not looked at.
        Line::read(&text.split(' ').map(str::to_owned).collect::<Vec<_>>())
    }

    #[test]
    fn a_line_comes_apart_as_it_was_meant() {
        let line = read("circle_skirt waist=28 1/2in --length = 60 cm Fraction=0.5 --json");
        assert_eq!(line.head, ["circle_skirt"]);
        let pairs: Vec<(&str, &str)> = line.pairs.iter().map(|(a, b)| (&**a, &**b)).collect();
        // `--length` with its equals sign apart is an option that is not known; joined it is an argument.
        assert_eq!(line.options, ["--length", "--json"]);
        assert_eq!(pairs[0].0, "waist");
        let line = read("circle skirt waist = 28 1/2in --cloth-width=-5cm fraction= 0.5");
        assert_eq!(line.head, ["circle", "skirt"]);
        let wanted = [
            ("waist", "28 1/2in"),
            ("cloth_width", "-5cm"),
            ("fraction", "0.5"),
        ];
        let wanted = wanted.map(|(a, b)| (a.to_owned(), b.to_owned()));
        assert_eq!(line.pairs, wanted);
        let line = read("circle_skirt waist=71,5cm,length=60cm; fraction=1");
        let wanted = [("waist", "71,5cm"), ("length", "60cm"), ("fraction", "1")];
        assert_eq!(
            line.pairs,
            wanted.map(|(a, b)| (a.to_owned(), b.to_owned()))
        );
        assert_eq!(read("dart 30 100").head, ["dart", "30", "100"]);
        assert_eq!(read("dart =").pairs, [("dart".to_owned(), String::new())]);
        for odd in [
            "",
            "=",
            "==",
            " = = ",
            "--",
            "-h",
            "½=½",
            "a=\u{3000}b=\u{3000}",
        ] {
            read(odd);
        }
    }
}
