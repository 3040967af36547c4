//! The Rust dispatcher of the tests: every function called by its name with values read from text.

use std::fmt::Write as _;

use crate::{
    emit::{Code, HEADER},
    spec::{AnswerKind, Function, Items, Kind, Spec},
};

/// `tests/doors/src/dispatch.rs`.
pub(crate) fn dispatch(spec: &Spec) -> Code {
    let mut code = String::from(HEADER);
    code.push_str("use recloth::Error;\nuse crate::value::{self, Given, Got};\n");
    for choice in &spec.choices {
        let _ = writeln!(
            code,
            "fn read_{}(given: &Given) -> recloth::{}::{} {{\nmatch given.text() {{",
            crate::spec::snake(&choice.name),
            choice.module,
            choice.name
        );
        for variant in &choice.variants {
            let _ = writeln!(
                code,
                "\"{}\" => recloth::{}::{}::{},",
                variant.word, choice.module, choice.name, variant.name
            );
        }
        let _ = writeln!(
            code,
            "other => panic!(\"{{other}} is no choice of {}\"),\n}}\n}}",
            choice.name
        );
    }
    for function in &spec.functions {
        one(function, &mut code);
    }
    code.push_str(
        "/// Calls a function by its name; None when there is no such function.\n\
         pub fn call(name: &str, given: &[Given]) -> Option<Result<Vec<Got>, Error>> {\n\
         Some(match name {\n",
    );
    for function in &spec.functions {
        let _ = writeln!(code, "\"{0}\" => {0}(given),", function.name);
    }
    code.push_str("_ => return None,\n})\n}\n");
    Code::rust(code)
}

fn one(function: &Function, code: &mut String) {
    let _ = writeln!(
        code,
        "fn {}(given: &[Given]) -> Result<Vec<Got>, Error> {{",
        function.name
    );
    let mut passed = Vec::new();
    let mut place = 0;
    for argument in &function.arguments {
        let value = match &argument.kind {
            Kind::Number => format!("given[{place}].number()"),
            Kind::Count => format!("given[{place}].count()"),
            Kind::Text => format!("given[{place}].text()"),
            Kind::Numbers => format!("given[{place}].numbers()"),
            Kind::Counts => format!("given[{place}].counts()"),
            Kind::Choice(name) => format!("read_{}(&given[{place}])", crate::spec::snake(name)),
            Kind::Fill => {
                if let Some(Items::As { other, plus }) = &argument.items {
                    let at = function
                        .inputs()
                        .position(|input| &input.name == other)
                        .unwrap_or(0);
                    let _ = writeln!(
                        code,
                        "let mut {} = vec![0.0; value::room(&given[{at}], {plus})];",
                        argument.name
                    );
                }
                passed.push(format!("&mut {}", argument.name));
                continue;
            }
        };
        passed.push(value);
        place += 1;
    }
    let _ = writeln!(
        code,
        "let answer = {}({})?;",
        function.path(),
        passed.join(", ")
    );
    code.push_str("Ok(vec![");
    for fill in function.fills() {
        let _ = write!(code, "Got::Numbers({}), ", fill.name);
    }
    match function.answer.kind {
        AnswerKind::Number => code.push_str("Got::Number(answer)"),
        AnswerKind::Count => code.push_str("Got::Count(answer)"),
        AnswerKind::Text => code.push_str("Got::Text(answer.to_string())"),
        AnswerKind::Record => {
            for field in &function.answer.fields {
                let kind = if field.whole { "Count" } else { "Number" };
                let _ = write!(code, "Got::{kind}(answer.{}), ", field.name);
            }
        }
    }
    code.push_str("])\n}\n");
}
