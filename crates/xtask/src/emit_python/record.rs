//! What a function's answer is in Python: a number, or a named tuple of parts.

use crate::spec::{AnswerKind, Function, Spec, with_detail};

/// The compiled ufunc of one part. No name in the core has two underscores in a row, so none is mistaken for a
/// function's: `knife_pleats__count` is a part, `knife_pleats_count` a function.
pub(super) fn ufunc_name(function: &Function, field: &str) -> String {
    if function.answer.kind == AnswerKind::Record {
        format!("{}__{field}", function.name)
    } else {
        function.name.clone()
    }
}

/// The answer has several parts, so it is a named tuple in Python.
pub(super) fn is_record(function: &Function) -> bool {
    function.answer.kind == AnswerKind::Record || function.fills().next().is_some()
}

/// The name of the named tuple.
pub(super) fn record_name(function: &Function) -> String {
    match &function.answer.record {
        Some(record) => record.clone(),
        None => function.name.split('_').map(capital).collect(),
    }
}

fn capital(word: &str) -> String {
    let mut letters = word.chars();
    letters.next().map_or(String::new(), |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

/// One part of an answer: its name, its type and what it means.
pub(super) struct Part {
    pub(super) name: String,
    pub(super) list: bool,
    /// `f64`, `u32` or `u64`.
    pub(super) rust_type: &'static str,
    pub(super) meaning: String,
}

pub(super) fn parts(function: &Function) -> Vec<Part> {
    let fills = function.fills().map(|fill| Part {
        name: fill.name.clone(),
        list: true,
        rust_type: "f64",
        meaning: with_detail(&fill.meaning, &fill.unit, ""),
    });
    let fields = function.answer.fields.iter().map(|field| Part {
        name: field.name.clone(),
        list: false,
        rust_type: field.rust_type(),
        meaning: with_detail(&field.meaning, &field.unit, ""),
    });
    fills.chain(fields).collect()
}

/// Records in the order met, each with a function that returns it.
pub(super) fn records(spec: &Spec) -> Vec<(String, &Function)> {
    let mut found: Vec<(String, &Function)> = Vec::new();
    for function in &spec.functions {
        if is_record(function) {
            let name = record_name(function);
            if !found.iter().any(|(known, _)| *known == name) {
                found.push((name, function));
            }
        }
    }
    found
}
