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
    spec::{Answer, AnswerKind, Argument, Field, Function, Kind, Spec},
    vectors::Base,
};

/// `__init__.pyi`: the part written by hand, then every function.
pub(crate) fn stub(spec: &Spec, hand: &str, base: &Base) -> Code {
    let mut code = format!(
        "{NOTE}from collections.abc import Sequence\nfrom enum import IntEnum\n\
         from typing import Any, Generic, NamedTuple, TypeVar, overload\n\n\
         import numpy as np\nfrom numpy._typing import _ArrayLikeFloat_co\nfrom numpy.typing import NDArray\n\n{hand}\n\
         _N = TypeVar(\"_N\")\n_C = TypeVar(\"_C\")\n_B = TypeVar(\"_B\")\n"
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
            format!(", Generic[{}]", join(&function.answer, |var| var.name))
        } else {
            String::new()
        };
        let _ = writeln!(code, "\nclass {name}(NamedTuple{generic}):");
        for part in parts {
            let var = type_var(part.rust_type);
            let ty = match (part.list, function.is_scalar()) {
                (true, _) => "NDArray[np.float64]",
                (_, true) => var.name,
                (_, false) => var.one,
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

/// What stands for an answer of one Rust type in a generic record, and what it is for numbers and for arrays.
pub(super) struct TypeVar {
    rust_type: &'static str,
    name: &'static str,
    one: &'static str,
    many: &'static str,
}

const TYPE_VARS: [TypeVar; 3] = [
    TypeVar {
        rust_type: "f64",
        name: "_N",
        one: "float",
        many: "NDArray[np.float64]",
    },
    TypeVar {
        rust_type: "u32",
        name: "_C",
        one: "int",
        many: "NDArray[np.uint32]",
    },
    TypeVar {
        rust_type: "u64",
        name: "_B",
        one: "int",
        many: "NDArray[np.uint64]",
    },
];

fn type_var(rust_type: &str) -> &'static TypeVar {
    let known = TYPE_VARS.iter().find(|var| var.rust_type == rust_type);
    known.unwrap_or(&TYPE_VARS[0])
}

/// One word for each type of the record, in the order of the variables.
fn join(answer: &Answer, word: impl Fn(&TypeVar) -> &'static str) -> String {
    let used = |var: &&TypeVar| {
        let mut types = answer.fields.iter().map(Field::rust_type);
        types.any(|ty| ty == var.rust_type)
    };
    let words: Vec<_> = TYPE_VARS.iter().filter(used).map(word).collect();
    words.join(", ")
}

/// The named tuple of a function, with these types for its numbers, counts and bits.
pub(super) fn of_generic(function: &Function, word: impl Fn(&TypeVar) -> &'static str) -> String {
    let types = join(&function.answer, word);
    format!("{}[{types}]", record_name(function))
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
        let word = |var: &TypeVar| if many { var.many } else { var.one };
        let returns = if is_record(function) {
            of_generic(function, word)
        } else {
            join(&function.answer, word)
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
