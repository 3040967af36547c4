//! The Rust half of the Python door: `src/generated.rs`, what is compiled into `recloth._core`.

use std::fmt::Write as _;

use super::record::{is_record, ufunc_name};
use crate::{
    emit::{Code, HEADER},
    spec::{AnswerKind, Argument, Field, Function, Items, Kind, Spec, plain, snake, with_detail},
};

/// `bindings/python/src/generated.rs`.
pub(crate) fn library(spec: &Spec) -> Code {
    let mut code = String::from(HEADER);
    code.push_str(
        "use numpy::{IntoPyArray, PyReadonlyArray1};\n\
         use pyo3::{prelude::*, IntoPyObjectExt};\n\
         use recloth::Error;\n\
         use crate::{door, ufunc::{Scalar, Type, add_every, add_one, add_status}};\n",
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

/// The ranges of a function whose arguments are plain numbers, as Rust has them.
fn ranges(function: &Function) -> String {
    let range = |argument: &Argument| match (&argument.kind, argument.range) {
        (Kind::Number, Some([low, high])) => Some(format!("[{low:?}, {high:?}]")),
        _ => None,
    };
    let all: Option<Vec<String>> = function.inputs().map(range).collect();
    all.map_or_else(
        || "None".into(),
        |all| format!("Some([{}])", all.join(", ")),
    )
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
    let types: Vec<_> = function
        .answer
        .fields
        .iter()
        .map(|field| match field.rust_type() {
            "f64" => "Type::Number",
            "u32" => "Type::Count",
            _ => "Type::Bits",
        })
        .collect();
    // In braces it is no value, so that an argument may have its name.
    let _ = writeln!(
        code,
        "/// `{path}`.\n#[allow(non_camel_case_types)]\nstruct {name} {{}}\n\
         impl Scalar<{inputs}, {outputs}> for {name} {{\n\
         const TYPES: [Type; {outputs}] = [{}];\n\
         const RANGES: Option<[[f64; 2]; {inputs}]> = {};\n\
         #[inline]\nfn call(given: [f64; {inputs}]) -> Result<[f64; {outputs}], Error> {{\n\
         let [{}] = given;",
        types.join(", "),
        ranges(function),
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
            .map(|field| wide(&format!("answer.{}", field.name), field))
            .collect(),
        _ => vec![wide("answer", &function.answer.fields[0])],
    };
    let _ = writeln!(code, "Ok([{}])\n}}\n}}", values.join(", "));
    let parameters: Vec<_> = function
        .inputs()
        .map(|argument| {
            // An int has no bound in Python; `scalars` of `_call.py` makes floats of all else.
            let read = match argument.kind {
                Kind::Count => "#[pyo3(from_py_with = door::number)] ",
                _ => "",
            };
            format!("{read}{}: f64", argument.name)
        })
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
                format!("answer[{place}] as u64")
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

/// Every answer crosses as a float: a set of bits too, which has at most 53.
fn wide(value: &str, field: &Field) -> String {
    match field.rust_type() {
        "f64" => value.to_owned(),
        "u32" => format!("f64::from({value})"),
        _ => format!("{value} as f64"),
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
        "add_every::<{name}, {inputs}, {outputs}>(module, c\"all_{name}\")?;\n\
         add_status::<{name}, {inputs}, {outputs}>(module, c\"status_{name}\")?;"
    );
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
