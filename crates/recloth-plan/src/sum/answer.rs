//! An answer in words: what was read, then a line a number, then doubts and cautions.

use recloth::tape::Rounding;
use recloth::{Error, ErrorKind};
use recloth_table::{Answer, Argument, Function, Given, Got, Kind};

use super::Wrong;
use super::quantity::{Tape, plain};
use super::read::{Read, Typed};
use super::wording::{self, sentences, shown_unit};

/// The answer as the terminal shows it, lines no wider than `width` where they can be.
pub(super) fn text(function: &Function, read: &Read, got: &[Got], width: usize) -> String {
    let mut out = format!("{}: {}\n", function.name, function.summary);
    out = textwrap::fill(&out, width);
    let mut given = Vec::new();
    for ((argument, value), defaulted) in function
        .arguments
        .iter()
        .zip(&read.given)
        .zip(&read.defaulted)
    {
        let note = if *defaulted { " by default" } else { "" };
        given.push(format!(
            "{} = {}{note}",
            argument.name,
            echo(argument, value, &read.typed)
        ));
    }
    push_paragraph(&mut out, &format!("With {}.", given.join("; ")), width);
    if read.typed.mixed
        && let Some(tape) = read.typed.tape
    {
        push_paragraph(
            &mut out,
            &format!(
                "Lengths in {}, as for {}, the first one given.",
                tape.name, read.typed.first
            ),
            width,
        );
    }
    out.push('\n');
    let rows: Vec<[String; 4]> = function
        .answers
        .iter()
        .zip(got)
        .filter(|(answer, _)| answer.unit != "bits")
        .map(|(answer, got)| row(function, answer, got, &read.typed))
        .collect();
    push_rows(&mut out, &rows, width);
    let sets = function
        .answers
        .iter()
        .zip(got)
        .filter_map(|(answer, got)| match got {
            Got::Whole(set) if answer.unit == "bits" => Some((answer.name, *set)),
            _ => None,
        });
    for (name, set) in sets {
        let title = if name == "cautions" {
            "Cautions"
        } else {
            "Doubts"
        };
        let sentences = sentences(name, set);
        if !out.ends_with("\n\n") {
            out.push('\n');
        }
        if sentences.is_empty() {
            out.push_str(&format!("No {}.\n", title.to_lowercase()));
            continue;
        }
        out.push_str(&format!("{title}:\n"));
        for sentence in sentences {
            push_item(&mut out, sentence, width);
        }
    }
    out
}

fn push_paragraph(out: &mut String, text: &str, width: usize) {
    let options = textwrap::Options::new(width)
        .initial_indent("  ")
        .subsequent_indent("  ");
    out.push_str(&textwrap::fill(text, options));
    out.push('\n');
}

fn push_item(out: &mut String, text: &str, width: usize) {
    let options = textwrap::Options::new(width)
        .initial_indent("  - ")
        .subsequent_indent("    ");
    out.push_str(&textwrap::fill(text, options));
    out.push('\n');
}

/// Name, value in the unit typed, value in the library's unit, meaning; columns as wide as they must be.
fn push_rows(out: &mut String, rows: &[[String; 4]], width: usize) {
    let wide = |column: usize| {
        rows.iter()
            .map(|row| textwrap::core::display_width(&row[column]))
            .max()
            .unwrap_or(0)
    };
    // A list may be long; it is let run on.
    let widths = [wide(0), wide(1).min(18), wide(2).min(18)];
    for row in rows {
        let mut line = String::from(" ");
        for (cell, wide) in row.iter().zip(widths) {
            if wide > 0 {
                let pad = wide.saturating_sub(textwrap::core::display_width(cell));
                line.push_str(&format!(" {cell}{}  ", " ".repeat(pad)));
            }
        }
        let indent = textwrap::core::display_width(&line) + 1;
        // Too narrow a column of words is worse than a long line.
        if indent + 24 > width {
            out.push_str(line.trim_end());
            out.push('\n');
            push_wrapped(out, &row[3], 6, width);
        } else {
            let rest = " ".repeat(indent);
            let options = textwrap::Options::new(width)
                .initial_indent(&rest)
                .subsequent_indent(&rest);
            let text = textwrap::fill(&row[3], options);
            line.push_str(text.get(indent - 1..).unwrap_or_default());
            out.push_str(line.trim_end());
            out.push('\n');
        }
    }
}

fn push_wrapped(out: &mut String, text: &str, indent: usize, width: usize) {
    let indent = " ".repeat(indent);
    let options = textwrap::Options::new(width)
        .initial_indent(&indent)
        .subsequent_indent(&indent);
    out.push_str(&textwrap::fill(text, options));
    out.push('\n');
}

fn row(function: &Function, answer: &Answer, got: &Got, typed: &Typed) -> [String; 4] {
    // A lone number is called by the function's name.
    let name = if answer.name == "value" {
        function.name
    } else {
        answer.name
    };
    let (shown, base) = match got {
        Got::Number(value) => both(&[*value], answer.unit, typed),
        Got::Numbers(values) => both(values, answer.unit, typed),
        Got::Whole(value) => (None, value.to_string()),
        Got::Text(text) => (None, text.clone()),
    };
    [
        name.to_owned(),
        shown.unwrap_or_default(),
        base,
        answer.meaning.trim_end_matches('.').to_owned(),
    ]
}

/// Values in the unit that was typed, if another than the library's was, and in the library's.
fn both(values: &[f64], unit: &str, typed: &Typed) -> (Option<String>, String) {
    // A ratio is multiplied by what may be long; of the others the second decimal is seldom read.
    let decimals = if unit == "1" { 4 } else { 2 };
    let list = |words: Vec<String>| words.join(if typed.comma { "; " } else { ", " });
    let numbers = |values: &mut dyn Iterator<Item = f64>, unit: &str| {
        format!(
            "{}{unit}",
            list(
                values
                    .map(|value| plain(value, decimals, typed.comma))
                    .collect()
            )
        )
    };
    let base = numbers(&mut values.iter().copied(), &shown_unit(unit));
    let shown = if unit == "mm" {
        // One that the tape cannot show leaves the others alone.
        typed.tape.map(|tape| {
            list(
                values
                    .iter()
                    .map(|&value| tape.print(value).unwrap_or_else(|| "-".into()))
                    .collect(),
            )
        })
    } else {
        typed.unit(unit).map(|unit| {
            let name = if unit.name() == "%" {
                "%".into()
            } else {
                format!(" {}", unit.name())
            };
            numbers(&mut values.iter().map(|&value| unit.count(value)), &name)
        })
    };
    (shown, base)
}

/// A value as it was understood: in the unit typed and in the library's.
fn echo(argument: &Argument, value: &Given, typed: &Typed) -> String {
    let (shown, base) = match value {
        Given::Number(value) => both(&[*value], argument.unit, typed),
        Given::Numbers(values) => both(values, argument.unit, typed),
        Given::Count(value) => (None, value.to_string()),
        Given::Counts(values) => (
            None,
            values
                .iter()
                .map(u32::to_string)
                .collect::<Vec<_>>()
                .join(", "),
        ),
        Given::Text(text) => (None, text.clone()),
    };
    match shown {
        Some(shown) if shown != "-" => format!("{shown} ({base})"),
        _ => base,
    }
}

/// The core's error, then what would do.
pub(super) fn wrong(function: &Function, read: &Read, error: &Error) -> Wrong {
    let mut wrong = Wrong::new(error.to_string());
    let argument = function
        .arguments
        .iter()
        .find(|argument| argument.name == error.argument());
    if let Some(argument) = argument {
        wrong = wrong.with(wording::argument(argument));
        if argument.unit == "mm"
            && error.kind() != ErrorKind::Count
            && let Some(tape) = read.typed.tape
            && let Some(limits) = limits(error, tape)
        {
            wrong = wrong.with(format!("In {}: {limits}.", tape.name));
        }
        if let Kind::Choice(choice) = argument.kind {
            for variant in choice.variants {
                wrong = wrong.with(format!("{}: {}", variant.word, variant.meaning));
            }
        }
    }
    if matches!(error.kind(), ErrorKind::Refused | ErrorKind::NoSolution) {
        wrong = wrong.with(wording::plain(function.errors));
    }
    wrong
}

fn limits(error: &Error, tape: Tape) -> Option<String> {
    let least = tape.limit(error.min(), Rounding::Up);
    let most = tape.limit(error.max(), Rounding::Down);
    match (least, most) {
        (Some(least), Some(most)) => Some(format!("{least} to {most}")),
        (Some(least), None) => Some(format!("at least {least}")),
        (None, Some(most)) => Some(format!("at most {most}")),
        (None, None) => None,
    }
}
