//! The Python door: its Rust half (`library`) and its Python half, one file an emitted file.

use crate::spec::{Argument, Default, Function, Kind, Spec};

mod docstring;
mod functions;
mod library;
mod record;
mod stub;
mod ufuncs;

pub(crate) use functions::functions;
pub(crate) use library::library;
pub(crate) use stub::stub;
pub(crate) use ufuncs::{ufuncs, ufuncs_stub};

/// The first line of every generated Python file.
const NOTE: &str =
    "# Written by `cargo xtask generate` from the doc comments of the core; do not edit.\n";

/// The parameters of a `def`, each followed by what `annotate` says of it.
fn parameters(function: &Function, annotate: impl Fn(&Argument) -> String, stub: bool) -> String {
    let parameters: Vec<_> = function
        .inputs()
        .map(|argument| {
            let ty = annotate(argument);
            let equals = if ty.is_empty() { "=" } else { " = " };
            let default = match &argument.default {
                None => String::new(),
                Some(_) if stub => format!("{equals}..."),
                Some(Default::Number(value)) => {
                    format!("{equals}{}", number(*value, &argument.kind))
                }
                Some(Default::Word(word)) => format!("{equals}\"{word}\""),
            };
            format!("{}{ty}{default}", argument.name)
        })
        .collect();
    parameters.join(", ")
}

fn number(value: f64, kind: &Kind) -> String {
    if *kind == Kind::Count {
        format!("{value}")
    } else {
        format!("{value:?}")
    }
}

/// Every generated name: choices, records and functions.
fn exported(spec: &Spec) -> Vec<String> {
    let choices = spec.choices.iter().map(|choice| choice.name.clone());
    let records = record::records(spec).into_iter().map(|(name, _)| name);
    let functions = spec.functions.iter().map(|function| function.name.clone());
    choices.chain(records).chain(functions).collect()
}

fn listed(names: &[String]) -> String {
    names
        .iter()
        .map(|name| format!("    \"{name}\",\n"))
        .collect()
}
