//! The Python door: `src/generated.rs`, `_functions.py`, `ufuncs.py` and their stubs.

use std::fmt::Write as _;

use crate::{
    emit::{Code, HEADER},
    spec::{
        Answer, AnswerKind, Argument, Default, Function, Items, Kind, Spec, plain, snake,
        with_detail,
    },
    vectors::Base,
};

const NOTE: &str =
    "# Written by `cargo xtask generate` from the doc comments of the core; do not edit.\n";

/// `bindings/python/src/generated.rs`.
pub(crate) fn library(spec: &Spec) -> Code {
    let mut code = String::from(HEADER);
    code.push_str(
        "use numpy::{IntoPyArray, PyReadonlyArray1};\n\
         use pyo3::{prelude::*, IntoPyObjectExt};\n\
         use recloth::Error;\n\
         use crate::{door, ufunc::{Scalar, add_every, add_one}};\n",
    );
    for choice in &spec.choices {
        let path = format!("recloth::{}::{}", choice.module, choice.name);
        let _ = writeln!(
            code,
            "fn read_{}(argument: &'static str, value: f64) -> ({path}, Option<Error>) {{\nmatch value {{",
            snake(&choice.name)
        );
        for variant in &choice.variants {
            let _ = writeln!(
                code,
                "{}.0 => ({path}::{}, None),",
                variant.value, variant.name
            );
        }
        let _ = writeln!(
            code,
            "_ => ({path}::{}, Some(door::bad_choice(argument, value))),\n}}\n}}",
            choice.variants[0].name
        );
    }
    let mut adds = String::new();
    for function in &spec.functions {
        if function.is_scalar() {
            scalar(function, &mut code);
            scalar_adds(function, &mut adds);
        } else {
            list(function, &mut code);
        }
        let _ = writeln!(
            adds,
            "module.add_function(wrap_pyfunction!(one_{}, module)?)?;",
            function.name
        );
    }
    let _ = writeln!(
        code,
        "/// Adds everything generated to the compiled module.\n\
         pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {{\n{adds}Ok(())\n}}"
    );
    Code::rust(code)
}

fn names(function: &Function) -> Vec<&str> {
    function
        .arguments
        .iter()
        .map(|argument| argument.name.as_str())
        .collect()
}

/// Reads counts and choices from floats; says which names may be bad.
fn reads(
    function: &Function,
    value: impl Fn(usize, &str) -> String,
    code: &mut String,
) -> Vec<String> {
    let mut bad = Vec::new();
    for (place, argument) in function.inputs().enumerate() {
        let name = &argument.name;
        match &argument.kind {
            Kind::Count => {
                let stand_in = argument.range.map_or(0.0, |range| range[0]) as u32;
                let _ = writeln!(
                    code,
                    "let ({name}, {name}_bad) = door::count(\"{name}\", {}, {stand_in});",
                    value(place, name)
                );
                bad.push(format!("{name}_bad"));
            }
            Kind::Choice(choice) => {
                let _ = writeln!(
                    code,
                    "let ({name}, {name}_bad) = read_{}(\"{name}\", {});",
                    snake(choice),
                    value(place, name)
                );
                bad.push(format!("{name}_bad"));
            }
            _ => {}
        }
    }
    bad
}

fn scalar(function: &Function, code: &mut String) {
    let name = &function.name;
    let inputs = function.arguments.len();
    let outputs = function.answer.fields.len();
    let whole: Vec<_> = function
        .answer
        .fields
        .iter()
        .map(|field| field.whole.to_string())
        .collect();
    // In braces it is no value, so that an argument may have its name.
    let _ = writeln!(
        code,
        "/// `{path}`.\n#[allow(non_camel_case_types)]\nstruct {name} {{}}\n\
         impl Scalar<{inputs}, {outputs}> for {name} {{\n\
         const WHOLE: [bool; {outputs}] = [{}];\n\
         #[inline]\nfn call(given: [f64; {inputs}]) -> Result<[f64; {outputs}], Error> {{\n\
         let [{}] = given;",
        whole.join(", "),
        names(function).join(", "),
        path = function.path(),
    );
    let bad = reads(function, |_, name| name.to_owned(), code);
    let call = format!("{}({})", function.path(), names(function).join(", "));
    if bad.is_empty() {
        let _ = writeln!(code, "let answer = {call}?;");
    } else {
        let _ = writeln!(
            code,
            "let answer = door::settle({call}, &{:?}, &[{}])?;",
            names(function),
            bad.join(", ")
        );
    }
    let values: Vec<_> = match function.answer.kind {
        AnswerKind::Record => function
            .answer
            .fields
            .iter()
            .map(|field| wide(&format!("answer.{}", field.name), field.whole))
            .collect(),
        _ => vec![wide("answer", function.answer.fields[0].whole)],
    };
    let _ = writeln!(code, "Ok([{}])\n}}\n}}", values.join(", "));
    let parameters: Vec<_> = names(function)
        .iter()
        .map(|name| format!("{name}: f64"))
        .collect();
    let _ = writeln!(
        code,
        "#[pyfunction]\n#[allow(clippy::too_many_arguments)]\nfn one_{name}<'py>(py: Python<'py>, {}) -> PyResult<Bound<'py, PyAny>> {{\n\
         let answer = {name}::call([{}]).map_err(|error| door::raise(py, \"{name}\", &error))?;",
        parameters.join(", "),
        names(function).join(", ")
    );
    let values: Vec<_> = function
        .answer
        .fields
        .iter()
        .enumerate()
        .map(|(place, field)| {
            if field.whole {
                format!("answer[{place}] as u32")
            } else {
                format!("answer[{place}]")
            }
        })
        .collect();
    if function.answer.kind == AnswerKind::Record {
        tuple(&values, code);
    } else {
        let _ = writeln!(code, "{}.into_bound_py_any(py)", paren(&values[0]));
    }
    code.push_str("}\n");
}

fn paren(value: &str) -> String {
    format!("({value})")
}

fn wide(value: &str, whole: bool) -> String {
    if whole {
        format!("f64::from({value})")
    } else {
        value.to_owned()
    }
}

/// Returns the values as one tuple.
fn tuple(values: &[String], code: &mut String) {
    if (2..=12).contains(&values.len()) {
        let _ = writeln!(code, "({}).into_bound_py_any(py)", values.join(", "));
    } else {
        let values: Vec<_> = values
            .iter()
            .map(|value| format!("({value}).into_bound_py_any(py)?"))
            .collect();
        let _ = writeln!(
            code,
            "Ok(pyo3::types::PyTuple::new(py, [{}])?.into_any())",
            values.join(", ")
        );
    }
}

fn scalar_adds(function: &Function, adds: &mut String) {
    let name = &function.name;
    let inputs = function.arguments.len();
    let outputs = function.answer.fields.len();
    for (place, field) in function.answer.fields.iter().enumerate() {
        let ufunc = ufunc_name(function, &field.name);
        let doc = format!(
            "{}\n\n{}.\nInputs: {}.\nNaN, with the invalid flag raised, where there is an error.",
            function.summary,
            with_detail(&field.meaning, &field.unit, ""),
            function
                .arguments
                .iter()
                .map(brief)
                .collect::<Vec<_>>()
                .join("; "),
        );
        let _ = writeln!(
            adds,
            "add_one::<{name}, {inputs}, {outputs}, {place}>(module, c\"{ufunc}\", c{doc:?})?;"
        );
    }
    let _ = writeln!(
        adds,
        "add_every::<{name}, {inputs}, {outputs}>(module, c\"all_{name}\")?;"
    );
}

fn ufunc_name(function: &Function, field: &str) -> String {
    if function.answer.kind == AnswerKind::Record {
        format!("{}_{field}", function.name)
    } else {
        function.name.clone()
    }
}

fn brief(argument: &Argument) -> String {
    with_detail(&argument.name, &argument.unit, &argument.span())
}

/// A function with lists or text: one call at a time.
fn list(function: &Function, code: &mut String) {
    let name = &function.name;
    let parameters: Vec<_> = function
        .inputs()
        .map(|argument| {
            let ty = match argument.kind {
                Kind::Text => "&str",
                Kind::Numbers => "PyReadonlyArray1<'py, f64>",
                Kind::Counts => "PyReadonlyArray1<'py, u32>",
                _ => "f64",
            };
            format!("{}: {ty}", argument.name)
        })
        .collect();
    let _ = writeln!(
        code,
        "#[pyfunction]\n#[allow(clippy::too_many_arguments)]\nfn one_{name}<'py>(py: Python<'py>, {}) -> PyResult<Bound<'py, PyAny>> {{",
        parameters.join(", ")
    );
    for argument in function.inputs() {
        if matches!(argument.kind, Kind::Numbers | Kind::Counts) {
            let _ = writeln!(code, "let {0} = {0}.as_slice()?;", argument.name);
        }
    }
    let bad = reads(function, |_, name| name.to_owned(), code);
    for fill in function.fills() {
        if let Some(Items::As { other, plus }) = &fill.items {
            let of = function
                .arguments
                .iter()
                .find(|argument| &argument.name == other);
            let (count, most) = match of {
                Some(Argument {
                    kind: Kind::Count,
                    range: Some([_, high]),
                    ..
                }) => (format!("{other} as usize"), plain(*high)),
                _ => (format!("{other}.len()"), "usize::MAX".into()),
            };
            let _ = writeln!(
                code,
                "let mut {} = vec![0.0; door::room({count}, {plus}, {most})];",
                fill.name
            );
        }
    }
    let given: Vec<_> = function
        .arguments
        .iter()
        .map(|argument| match argument.kind {
            Kind::Fill => format!("&mut {}", argument.name),
            _ => argument.name.clone(),
        })
        .collect();
    let call = format!("{}({})", function.path(), given.join(", "));
    let answer = if bad.is_empty() {
        call
    } else {
        format!(
            "door::settle({call}, &{:?}, &[{}])",
            names(function),
            bad.join(", ")
        )
    };
    let _ = writeln!(
        code,
        "let answer = {answer}.map_err(|error| door::raise(py, \"{name}\", &error))?;"
    );
    let mut values: Vec<_> = function
        .fills()
        .map(|fill| format!("{}.into_pyarray(py)", fill.name))
        .collect();
    match function.answer.kind {
        AnswerKind::Text => values.push("answer.as_str()".into()),
        AnswerKind::Record => {
            values.extend(
                function
                    .answer
                    .fields
                    .iter()
                    .map(|field| format!("answer.{}", field.name)),
            );
        }
        _ => values.push("answer".into()),
    }
    if is_record(function) {
        tuple(&values, code);
    } else {
        let _ = writeln!(code, "{}.into_bound_py_any(py)", values[0]);
    }
    code.push_str("}\n");
}

/// The answer has several parts, so it is a named tuple in Python.
fn is_record(function: &Function) -> bool {
    function.answer.kind == AnswerKind::Record || function.fills().next().is_some()
}

/// The name of the named tuple.
fn record_name(function: &Function) -> String {
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
struct Part {
    name: String,
    list: bool,
    whole: bool,
    meaning: String,
}

fn parts(function: &Function) -> Vec<Part> {
    let fills = function.fills().map(|fill| Part {
        name: fill.name.clone(),
        list: true,
        whole: false,
        meaning: with_detail(&fill.meaning, &fill.unit, ""),
    });
    let fields = function.answer.fields.iter().map(|field| Part {
        name: field.name.clone(),
        list: false,
        whole: field.whole,
        meaning: with_detail(&field.meaning, &field.unit, ""),
    });
    fills.chain(fields).collect()
}

/// Records in the order met, each with a function that returns it.
fn records(spec: &Spec) -> Vec<(String, &Function)> {
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

/// `_functions.py`.
pub(crate) fn functions(spec: &Spec, base: &Base) -> Code {
    let mut code = format!(
        "{NOTE}\"\"\"Every function of the core, with names, defaults and named results.\"\"\"\n\n\
         from collections import namedtuple\nfrom enum import IntEnum\n\nfrom . import _call, _core\n\n_new = tuple.__new__\n"
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

fn define(function: &Function, base: &Base, code: &mut String) {
    let name = &function.name;
    let _ = writeln!(
        code,
        "\n\ndef {name}({}):\n    \"\"\"{}\"\"\"",
        parameters(function, |_| String::new(), false),
        docstring(function, base, "    ")
    );
    for argument in function.inputs() {
        let argument_name = &argument.name;
        let _ = match &argument.kind {
            Kind::Choice(choice) => writeln!(
                code,
                "    {argument_name} = _call.choice({choice}, {argument_name}, \"{name}\", \"{argument_name}\")"
            ),
            Kind::Numbers => writeln!(
                code,
                "    {argument_name} = _call.numbers_of({argument_name}, \"{name}\", \"{argument_name}\")"
            ),
            Kind::Counts => writeln!(
                code,
                "    {argument_name} = _call.counts_of({argument_name}, \"{name}\", \"{argument_name}\")"
            ),
            Kind::Text => writeln!(
                code,
                "    {argument_name} = _call.text_of({argument_name}, \"{name}\", \"{argument_name}\")"
            ),
            _ => Ok(()),
        };
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

/// A docstring in NumPy's form, without its quotes.
fn docstring(function: &Function, base: &Base, indent: &str) -> String {
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
        } else if part.whole {
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

fn scalar_functions(spec: &Spec) -> impl Iterator<Item = &Function> {
    spec.functions
        .iter()
        .filter(|function| function.is_scalar())
}

/// `ufuncs.py`.
pub(crate) fn ufuncs(spec: &Spec) -> Code {
    let mut code = format!(
        "{NOTE}\"\"\"Each answer of each function of numbers as a NumPy ufunc of one output.\n\n\
         Inputs are positional. An error gives NaN and raises the invalid flag, so that\n\
         ``np.errstate`` decides what becomes of it. They take masked arrays, pandas, polars,\n\
         dask and xarray columns.\n\"\"\"\n\nfrom ._core import (\n"
    );
    let names = ufunc_names(spec);
    for name in &names {
        let _ = writeln!(code, "    {name},");
    }
    code.push_str(")\n\n__all__ = [\n");
    for name in &names {
        let _ = writeln!(code, "    \"{name}\",");
    }
    code.push_str("]\n");
    Code::text(code)
}

fn ufunc_names(spec: &Spec) -> Vec<String> {
    scalar_functions(spec)
        .flat_map(|function| {
            function
                .answer
                .fields
                .iter()
                .map(|field| ufunc_name(function, &field.name))
        })
        .collect()
}

/// `ufuncs.pyi`.
pub(crate) fn ufuncs_stub(spec: &Spec) -> Code {
    let mut code = format!("{NOTE}import numpy as np\n\n");
    let names = ufunc_names(spec);
    for name in &names {
        let _ = writeln!(code, "{name}: np.ufunc");
    }
    let _ = writeln!(
        code,
        "\n__all__ = [\n{}]",
        names
            .iter()
            .map(|name| format!("    \"{name}\",\n"))
            .collect::<String>()
    );
    Code::text(code)
}

/// `__init__.pyi`: the part written by hand, then every function.
pub(crate) fn stub(spec: &Spec, hand: &str, base: &Base) -> Code {
    let mut code = format!(
        "{NOTE}from collections.abc import Sequence\nfrom enum import IntEnum\n\
         from typing import Any, Generic, NamedTuple, TypeVar, overload\n\n\
         import numpy as np\nfrom numpy._typing import _ArrayLikeFloat_co\nfrom numpy.typing import NDArray\n\n{hand}\n\
         _N = TypeVar(\"_N\")\n_W = TypeVar(\"_W\")\n"
    );
    for choice in &spec.choices {
        let _ = writeln!(code, "\nclass {}(IntEnum):", choice.name);
        for variant in &choice.variants {
            let _ = writeln!(
                code,
                "    {} = {}",
                variant.word.to_uppercase(),
                variant.value
            );
        }
    }
    for (name, function) in records(spec) {
        let parts = parts(function);
        let generic = if function.is_scalar() {
            generic(&function.answer)
        } else {
            ""
        };
        let _ = writeln!(code, "\nclass {name}(NamedTuple{generic}):");
        for part in parts {
            let ty = match (part.list, part.whole, function.is_scalar()) {
                (true, ..) => "NDArray[np.float64]",
                (_, true, true) => "_W",
                (_, false, true) => "_N",
                (_, true, false) => "int",
                (_, false, false) => "float",
            };
            // Two names that every tuple has as methods.
            let hides = matches!(part.name.as_str(), "count" | "index");
            let ignore = if hides {
                "  # type: ignore[assignment]"
            } else {
                ""
            };
            let _ = writeln!(code, "    {}: {ty}{ignore}", part.name);
        }
    }
    for function in &spec.functions {
        stub_function(function, base, &mut code);
    }
    let mut all: Vec<String> = hand
        .lines()
        .filter_map(hand_name)
        .map(str::to_owned)
        .collect();
    all.extend(exported(spec));
    all.sort_unstable();
    all.dedup();
    let _ = writeln!(code, "\n__all__ = [\n{}]", listed(&all));
    Code::text(code)
}

/// The public name that a line of the part written by hand declares, if it declares one.
fn hand_name(line: &str) -> Option<&str> {
    let rest = line
        .strip_prefix("def ")
        .or(line.strip_prefix("class "))
        .unwrap_or(line);
    if let Some(module) = line.strip_prefix("from . import ") {
        return module.split(" as ").next();
    }
    let end = rest.find(|letter: char| !letter.is_alphanumeric() && letter != '_')?;
    let declares = rest.len() < line.len() || rest[end..].starts_with(": ");
    let hidden = rest.starts_with('_') && !rest.starts_with("__");
    (declares && end > 0 && !hidden).then(|| &rest[..end])
}

/// Every generated name: choices, records and functions.
fn exported(spec: &Spec) -> Vec<String> {
    let choices = spec.choices.iter().map(|choice| choice.name.clone());
    let records = records(spec).into_iter().map(|(name, _)| name);
    let functions = spec.functions.iter().map(|function| function.name.clone());
    choices.chain(records).chain(functions).collect()
}

fn listed(names: &[String]) -> String {
    names
        .iter()
        .map(|name| format!("    \"{name}\",\n"))
        .collect()
}

fn generic(answer: &Answer) -> &'static str {
    match (
        answer.fields.iter().any(|field| !field.whole),
        answer.fields.iter().any(|field| field.whole),
    ) {
        (true, true) => ", Generic[_N, _W]",
        (false, true) => ", Generic[_W]",
        _ => ", Generic[_N]",
    }
}

fn stub_function(function: &Function, base: &Base, code: &mut String) {
    let name = &function.name;
    let doc = docstring(function, base, "    ");
    if !function.is_scalar() {
        let returns = if is_record(function) {
            record_name(function)
        } else {
            match function.answer.kind {
                AnswerKind::Text => "str".into(),
                AnswerKind::Count => "int".into(),
                _ => "float".into(),
            }
        };
        let annotate = |argument: &Argument| match &argument.kind {
            Kind::Text => ": str".to_owned(),
            Kind::Count => ": int".into(),
            Kind::Choice(choice) => format!(": {choice} | str | int"),
            Kind::Numbers => ": Sequence[float] | NDArray[Any]".into(),
            Kind::Counts => ": Sequence[int] | NDArray[Any]".into(),
            _ => ": float".into(),
        };
        let _ = writeln!(
            code,
            "\ndef {name}({}) -> {returns}:\n    \"\"\"{doc}\"\"\"",
            parameters(function, annotate, true)
        );
        return;
    }
    for many in [false, true] {
        let annotate = |argument: &Argument| match (&argument.kind, many) {
            (Kind::Choice(choice), _) => format!(": {choice} | str | int"),
            (Kind::Count, false) => ": int".into(),
            (_, false) => ": float".into(),
            (_, true) => ": _ArrayLikeFloat_co".into(),
        };
        let number = if many { "NDArray[np.float64]" } else { "float" };
        let whole = if many { "NDArray[np.uint32]" } else { "int" };
        let returns = if is_record(function) {
            let inner = match generic(&function.answer) {
                ", Generic[_N, _W]" => format!("{number}, {whole}"),
                ", Generic[_W]" => whole.to_owned(),
                _ => number.to_owned(),
            };
            format!("{}[{inner}]", record_name(function))
        } else if function.answer.kind == AnswerKind::Count {
            whole.into()
        } else {
            number.into()
        };
        // A float is array-like too: the first overload that fits is meant.
        let ignore = if many {
            ""
        } else {
            "  # type: ignore[overload-overlap]"
        };
        let body = if many {
            format!("\n    \"\"\"{doc}\"\"\"")
        } else {
            " ...".to_owned()
        };
        let _ = writeln!(
            code,
            "\n@overload\ndef {name}({}) -> {returns}:{body}{ignore}",
            parameters(function, annotate, true)
        );
    }
}
