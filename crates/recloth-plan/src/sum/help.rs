//! What teaches: the list of functions, and the page of one.

use recloth_table::{FUNCTIONS, Function, Given, Kind, MODULES, Module};

use recloth::tape::{Style, format_length};

use super::wording::{self, plain};

/// How values are written; `recloth sum --help` ends with it.
pub(super) const WRITING: &str = "\
Write NAME, then argument=value for each argument, in any order; spaces need no quotes.
  lengths      71cm  71,5 cm  710  28 1/2 in  28½\"  2ft 3in  (a number without a unit is mm; marks of inches and
               feet need quotes in most shells: '28½\"')
  masses       250  250g  1,5kg  9oz            volumes       500  500ml  3l
  times        90  90min  1.5h  30s             temperatures  40  40C  104F
  percentages  -3  -3%  3,5%                    numbers       0.5  0,5  1/2  50%
  choices      one of the words the help of NAME lists
  lists        lengths=10cm,20cm,30cm  or  lengths=10cm lengths=20cm; with decimal commas '10,5cm; 20cm'
Answers come in the library's units (mm, g, ml, min, °C), lengths and the like also in the unit typed; where several
were typed, in that of the first. With --json: one line, for programs.
Exit status: 0 there is an answer (its doubts and cautions are part of it), 2 there is none.
";

/// Ends a sentence that is cut short.
const MORE: &str = " ...";

/// Every function, by file, or those of one file.
pub(super) fn list(only: Option<&Module>, width: usize) -> String {
    let mut out = String::new();
    let longest = FUNCTIONS
        .iter()
        .map(|function| function.name.len())
        .max()
        .unwrap_or(0);
    for module in MODULES
        .iter()
        .filter(|module| only.is_none_or(|only| only.name == module.name))
    {
        if !out.is_empty() {
            out.push('\n');
        }
        out.push_str(&textwrap::fill(
            &format!("{}: {}", module.name, plain(module.summary)),
            width,
        ));
        out.push('\n');
        for function in FUNCTIONS
            .iter()
            .filter(|function| function.module == module.name)
        {
            let first = format!("  {:<longest$}  ", function.name);
            // One line each: the page of the function has the rest.
            let room = width.saturating_sub(first.len()).max(24);
            let summary = plain(function.summary);
            let summary = summary.trim_end_matches('.');
            let (line, more) = if textwrap::core::display_width(summary) <= room {
                (summary.to_owned(), "")
            } else {
                let lines = textwrap::wrap(summary, room - MORE.len());
                (
                    lines
                        .first()
                        .map_or_else(String::new, |line| line.to_string()),
                    MORE,
                )
            };
            out.push_str(&format!("{first}{line}{more}\n"));
        }
    }
    out.push_str(
        "\nrecloth sum NAME --help explains one, recloth sum --help how to write values.\n",
    );
    out
}

/// The page of one function; `ran` gives what its example prints.
pub(super) fn page(function: &Function, ran: &str, width: usize) -> String {
    let mut out = String::new();
    push(
        &mut out,
        &format!("{}: {}", function.name, function.summary),
        0,
        width,
    );
    if !function.description.is_empty() {
        out.push('\n');
        push_text(&mut out, function.description, 0, width);
    }
    out.push_str("\nArguments\n");
    for argument in function.arguments {
        let default = wording::default(argument)
            .map_or_else(String::new, |default| format!("; {default} if not given"));
        push(
            &mut out,
            &format!("{}: {}", argument.name, argument.meaning),
            2,
            width,
        );
        push(
            &mut out,
            &format!("{}{default}", wording::kind(argument)),
            6,
            width,
        );
        if let Kind::Choice(choice) = argument.kind {
            for variant in choice.variants {
                push(
                    &mut out,
                    &format!("{}: {}", variant.word, variant.meaning),
                    8,
                    width,
                );
            }
        }
    }
    out.push_str("\nAnswer\n");
    for answer in function.answers {
        let unit = wording::shown_unit(answer.unit);
        let unit = if unit.is_empty() {
            unit
        } else {
            format!(" ({})", unit.trim())
        };
        let meaning = answer.meaning.trim_end_matches('.');
        let name = if answer.name == "value" {
            function.name
        } else {
            answer.name
        };
        push(&mut out, &format!("{name}: {meaning}{unit}"), 2, width);
    }
    out.push_str("\nErrors\n");
    push_text(&mut out, function.errors, 2, width);
    out.push_str("\nSource\n");
    push_text(&mut out, function.source, 2, width);
    out.push_str(&format!("\nExample\n  {}\n\n", example(function)));
    for line in ran.lines() {
        out.push_str(format!("    {line}").trim_end());
        out.push('\n');
    }
    out
}

/// A line that can be typed, of arguments that have an answer.
pub(super) fn example(function: &Function) -> String {
    let mut line = format!("recloth sum {}", function.name);
    for (name, value) in example_pairs(function) {
        // Letters, digits and these marks mean nothing to a shell.
        let safe = |sign: char| sign.is_alphanumeric() || ",.%+-_/".contains(sign);
        let quote = if value.chars().all(safe) { "" } else { "'" };
        line.push_str(&format!(" {name}={quote}{value}{quote}"));
    }
    line
}

/// Names and values of that line.
pub(super) fn example_pairs(function: &Function) -> Vec<(String, String)> {
    let cells = function.arguments.iter().zip(function.example);
    cells
        .map(|(argument, cell)| {
            let number = |value: f64| match argument.unit {
                // A length by the library's own style, which marks three decimals so that they are none of thousands.
                "mm" => format_length(value, Style::Exact)
                    .map_or_else(|_| value.to_string(), |text| text.as_str().replace(' ', "")),
                "1" | "count" => value.to_string(),
                "degC" => format!("{value}C"),
                unit => format!("{value}{unit}"),
            };
            let value = match Given::read(argument.kind, cell) {
                Some(Given::Number(value)) => number(value),
                Some(Given::Count(value)) => value.to_string(),
                Some(Given::Numbers(values)) => {
                    values.into_iter().map(number).collect::<Vec<_>>().join(",")
                }
                Some(Given::Counts(values)) => values
                    .iter()
                    .map(u32::to_string)
                    .collect::<Vec<_>>()
                    .join(","),
                Some(Given::Text(text)) => text,
                None => (*cell).to_owned(),
            };
            (argument.name.to_owned(), value)
        })
        .collect()
}

fn push(out: &mut String, text: &str, indent: usize, width: usize) {
    let first = " ".repeat(indent);
    let rest = " ".repeat(indent + 2);
    let options = textwrap::Options::new(width)
        .initial_indent(&first)
        .subsequent_indent(if indent == 0 { "" } else { &rest });
    out.push_str(&textwrap::fill(&plain(text), options));
    out.push('\n');
}

/// Paragraphs filled again to this width; items of a list keep their lines.
fn push_text(out: &mut String, text: &str, indent: usize, width: usize) {
    for (number, paragraph) in text.split("\n\n").enumerate() {
        if number > 0 {
            out.push('\n');
        }
        let mut items: Vec<String> = Vec::new();
        for line in paragraph.lines() {
            match items.last_mut() {
                Some(last) if !line.starts_with(['-', '|']) => {
                    last.push(' ');
                    last.push_str(line.trim());
                }
                _ => items.push(line.to_owned()),
            }
        }
        for item in items {
            let space = " ".repeat(indent);
            let options = textwrap::Options::new(width)
                .initial_indent(&space)
                .subsequent_indent(&space);
            out.push_str(&textwrap::fill(&plain(&item), options));
            out.push('\n');
        }
    }
}
