//! Docstrings, the same in the functions and in their stubs.

use std::fmt::Write as _;

use super::record::{is_record, parts};
use crate::{
    spec::{AnswerKind, Default, Function, Kind, plain, with_detail},
    vectors::Base,
};

/// A docstring in NumPy's form, without its quotes.
pub(super) fn docstring(function: &Function, base: &Base, indent: &str) -> String {
    let mut text = function.summary.clone();
    if !function.description.is_empty() {
        let _ = write!(text, "\n\n{}", function.description);
    }
    text.push_str("\n\nParameters\n----------\n");
    for argument in function.inputs() {
        let ty = match (&argument.kind, function.is_scalar()) {
            (Kind::Number, true) => "array_like",
            (Kind::Count, true) => "array_like of int",
            (Kind::Number, false) => "float",
            (Kind::Count, false) => "int",
            (Kind::Text, _) => "str",
            (Kind::Choice(name), _) => name,
            (Kind::Numbers, _) => "sequence of float",
            _ => "sequence of int",
        };
        let default = match &argument.default {
            Some(Default::Number(value)) => format!(", default {}", plain(*value)),
            Some(Default::Word(word)) => format!(", default \"{word}\""),
            None => String::new(),
        };
        let span = argument.span();
        let meaning = with_detail(&argument.meaning, &argument.unit, &span);
        let _ = writeln!(text, "{} : {ty}{default}\n    {meaning}", argument.name);
    }
    text.push_str("\nReturns\n-------\n");
    for part in parts(function) {
        let ty = if part.list {
            "array"
        } else if part.rust_type != "f64" {
            "int"
        } else {
            "float"
        };
        if function.answer.kind == AnswerKind::Text {
            let _ = writeln!(text, "str\n    {}", part.meaning);
        } else if is_record(function) {
            let _ = writeln!(text, "{} : {ty}\n    {}", part.name, part.meaning);
        } else {
            let _ = writeln!(text, "{ty}\n    {}", part.meaning);
        }
    }
    let _ = write!(
        text,
        "\nRaises\n------\nReclothError\n{}\n",
        indented(&function.errors, "    ")
    );
    let _ = write!(text, "\nNotes\n-----\nSource: {}\n", function.source);
    if let Some(example) = base.example(function) {
        let _ = write!(text, "\nExample: {example}\n");
    }
    let text = text.replace('\\', "\\\\").replace("\"\"\"", "'''");
    let mut lines = text.lines();
    let mut done = lines.next().unwrap_or_default().to_owned();
    for line in lines {
        done.push('\n');
        if !line.trim().is_empty() {
            done.push_str(indent);
            done.push_str(line);
        }
    }
    done.push('\n');
    done.push_str(indent);
    done
}

fn indented(text: &str, indent: &str) -> String {
    text.lines()
        .map(|line| format!("{indent}{line}"))
        .collect::<Vec<_>>()
        .join("\n")
}
