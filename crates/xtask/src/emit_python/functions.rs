//! `_functions.py`: every function with names, defaults and named results.

use std::fmt::Write as _;

use super::{
    NOTE,
    docstring::docstring,
    exported, listed, parameters,
    record::{is_record, parts, record_name, records},
};
use crate::{
    emit::Code,
    spec::{Function, Kind, Spec},
    vectors::Base,
};

/// `_functions.py`.
pub(crate) fn functions(spec: &Spec, base: &Base) -> Code {
    let mut code = format!(
        "{NOTE}\"\"\"Every function of the core, with names, defaults and named results.\"\"\"\n\n\
         from collections import namedtuple\nfrom enum import IntEnum\n\nfrom . import _call, _core, _numbers\n\n_new = tuple.__new__\n"
    );
    for choice in &spec.choices {
        let _ = writeln!(
            code,
            "\n\nclass {}(IntEnum):\n    \"\"\"{}\"\"\"\n",
            choice.name, choice.summary
        );
        for variant in &choice.variants {
            let _ = writeln!(
                code,
                "    #: {}\n    {} = {}",
                variant.meaning,
                variant.word.to_uppercase(),
                variant.value
            );
        }
        let _ = writeln!(code, "\n\n{}.__module__ = \"recloth\"", choice.name);
    }
    for (name, function) in records(spec) {
        let parts = parts(function);
        let fields: Vec<_> = parts
            .iter()
            .map(|part| format!("\"{}\"", part.name))
            .collect();
        let summary = if function.answer.summary.is_empty() {
            format!("The answer of :func:`{}`.", function.name)
        } else {
            function.answer.summary.clone()
        };
        let _ = writeln!(
            code,
            "\n\n{name} = namedtuple(\"{name}\", [{}], module=\"recloth\")\n{name}.__doc__ = {}",
            fields.join(", "),
            quoted(&summary)
        );
        for part in &parts {
            let _ = writeln!(
                code,
                "{name}.{}.__doc__ = {}",
                part.name,
                quoted(&part.meaning)
            );
        }
    }
    for function in &spec.functions {
        define(function, base, &mut code);
    }
    let _ = writeln!(code, "\n\n__all__ = [\n{}]", listed(&exported(spec)));
    Code::text(code)
}

fn quoted(text: &str) -> String {
    format!("\"{}\"", text.replace('\\', "\\\\").replace('"', "\\\""))
}

fn define(function: &Function, base: &Base, code: &mut String) {
    let name = &function.name;
    let _ = writeln!(
        code,
        "\n\ndef {name}({}):\n    \"\"\"{}\"\"\"",
        parameters(function, |_| String::new(), false),
        docstring(function, base, "    ")
    );
    for argument in function.inputs() {
        let given = &argument.name;
        let read = match &argument.kind {
            Kind::Choice(choice) => format!("_call.choice({choice}, "),
            Kind::Numbers => "_numbers.list_of(".into(),
            Kind::Counts => "_numbers.wholes_of(".into(),
            Kind::Text => "_call.text_of(".into(),
            // `scalars` reads them, where they are no floats already.
            _ if function.is_scalar() => continue,
            _ => "_numbers.number(".into(),
        };
        let _ = writeln!(
            code,
            "    {given} = {read}{given}, \"{name}\", \"{given}\")"
        );
    }
    let inputs: Vec<&str> = function
        .inputs()
        .map(|argument| argument.name.as_str())
        .collect();
    let given = inputs.join(", ");
    let record = if is_record(function) {
        record_name(function)
    } else {
        "None".into()
    };
    let one = if is_record(function) {
        format!("_new({record}, _core.one_{name}({given}))")
    } else {
        format!("_core.one_{name}({given})")
    };
    if !function.is_scalar() {
        let _ = writeln!(code, "    return {one}");
        return;
    }
    let plain: Vec<_> = function
        .inputs()
        .filter(|argument| argument.kind == Kind::Number)
        .map(|argument| format!("type({}) is float", argument.name))
        .collect();
    let whole: Vec<_> = function
        .inputs()
        .filter(|argument| argument.kind == Kind::Count)
        .map(|argument| format!("type({}) is int", argument.name))
        .collect();
    let test = plain
        .into_iter()
        .chain(whole)
        .collect::<Vec<_>>()
        .join(" and ");
    let _ = writeln!(
        code,
        "    if {test}:\n        return {one}\n    return _call.scalars(\"{name}\", {record}, ({},), ({given},))",
        inputs
            .iter()
            .map(|name| format!("\"{name}\""))
            .collect::<Vec<_>>()
            .join(", ")
    );
}
