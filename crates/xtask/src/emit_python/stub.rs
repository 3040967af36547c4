//! `__init__.pyi`: the stub of the package.

use std::fmt::Write as _;

use super::{
    NOTE,
    docstring::docstring,
    exported, listed, parameters,
    record::{is_record, parts, record_name, records},
};
use crate::{
    emit::Code,
    spec::{Answer, AnswerKind, Argument, Function, Kind, Spec},
    vectors::Base,
};

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

/// The named tuple of a function, with these types for its numbers and its whole numbers.
pub(super) fn of_generic(function: &Function, number: &str, whole: &str) -> String {
    let inner = match generic(&function.answer) {
        ", Generic[_N, _W]" => format!("{number}, {whole}"),
        ", Generic[_W]" => whole.to_owned(),
        _ => number.to_owned(),
    };
    format!("{}[{inner}]", record_name(function))
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
            of_generic(function, number, whole)
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
