//! The C door: `bindings/c/src/generated.rs` and the dispatcher of its test.

use std::fmt::Write as _;

use crate::{
    emit::{Code, HEADER, doc_lines},
    spec::{Answer, AnswerKind, Argument, Function, Kind, Spec, snake, with_detail},
};

/// The Rust source of the generated C functions.
pub(crate) fn library(spec: &Spec) -> Code {
    let mut code = String::from(HEADER);
    code.push_str(
        "use core::ffi::c_char;\n\
         use recloth::Error;\n\
         use crate::boundary as door;\n         use crate::boundary::recloth_error_t;\n",
    );
    statuses(spec, &mut code);
    bits(spec, &mut code);
    choices(spec, &mut code);
    let mut records = Vec::new();
    for function in &spec.functions {
        if let Some(record) = &function.answer.record
            && !records.contains(record)
        {
            records.push(record.clone());
            record_type(record, &function.answer, &mut code);
        }
    }
    for function in &spec.functions {
        export(function, &mut code);
    }
    texts(spec, &mut code);
    argument_names(spec, &mut code);
    Code::rust(code)
}

fn statuses(spec: &Spec, code: &mut String) {
    code.push_str(
        "/// What a function returns: 0 for success, else the kind of error. The numbers never change.\n\
         #[derive(Clone, Copy, Debug, PartialEq, Eq)]\n#[repr(i32)]\n\
         pub enum recloth_status {\n/// Success.\nOk = 0,\n",
    );
    for status in &spec.statuses {
        let _ = writeln!(
            code,
            "/// {}.\n{} = {},",
            capital(&status.text),
            status.name,
            status.code
        );
    }
    code.push_str("}\n\nimpl From<recloth::ErrorKind> for recloth_status {\nfn from(kind: recloth::ErrorKind) -> Self {\nmatch kind {\n");
    for status in &spec.statuses {
        let _ = writeln!(
            code,
            "recloth::ErrorKind::{0} => recloth_status::{0},",
            status.name
        );
    }
    code.push_str("_ => recloth_status::Panic,\n}\n}\n}\n");
}

fn bits(spec: &Spec, code: &mut String) {
    for (prefix, set) in [("DOUBT", &spec.doubts), ("CAUTION", &spec.cautions)] {
        for bit in set {
            let _ = writeln!(
                code,
                "/// {}\npub const RECLOTH_{prefix}_{}: u64 = {};",
                bit.text, bit.name, bit.bit
            );
        }
    }
}

fn choices(spec: &Spec, code: &mut String) {
    for choice in &spec.choices {
        let name = snake(&choice.name);
        let _ = writeln!(
            code,
            "/// {}\n#[derive(Clone, Copy, Debug, PartialEq, Eq)]\n#[repr(i32)]\npub enum recloth_{name} {{",
            choice.summary
        );
        for variant in &choice.variants {
            let _ = writeln!(
                code,
                "/// {}\n{} = {},",
                variant.meaning, variant.name, variant.value
            );
        }
        let _ = writeln!(
            code,
            "}}\nfn read_{name}(argument: &'static str, value: i32) -> (recloth::{module}::{choice}, Option<Error>) {{\nmatch value {{",
            module = choice.module,
            choice = choice.name
        );
        for variant in &choice.variants {
            let _ = writeln!(
                code,
                "{} => (recloth::{}::{}::{}, None),",
                variant.value, choice.module, choice.name, variant.name
            );
        }
        let first = &choice.variants[0].name;
        let _ = writeln!(
            code,
            "_ => (recloth::{}::{}::{first}, Some(door::bad_choice(argument, value))),\n}}\n}}",
            choice.module, choice.name
        );
    }
}

fn record_type(record: &str, answer: &Answer, code: &mut String) {
    let _ = writeln!(
        code,
        "/// {}\n#[derive(Clone, Copy, Debug, PartialEq)]\n#[repr(C)]\npub struct recloth_{}_t {{",
        answer.summary,
        snake(record)
    );
    for field in &answer.fields {
        let _ = writeln!(
            code,
            "/// {}.\npub {}: {},",
            with_detail(&field.meaning, &field.unit, ""),
            field.name,
            field.rust_type()
        );
    }
    code.push_str("}\n");
}

fn export(function: &Function, code: &mut String) {
    doc_lines(&function.summary, code);
    if !function.description.is_empty() {
        code.push_str("///\n");
        doc_lines(&function.description, code);
    }
    code.push_str("///\n");
    for argument in &function.arguments {
        let _ = writeln!(
            code,
            "/// - `{}`: {}",
            argument.name,
            argument_text(argument)
        );
    }
    if function.answer.kind == AnswerKind::Text {
        code.push_str(
            "/// - `text`: receives the answer and a closing NUL; 64 bytes hold every answer.\n",
        );
    }
    if function.answer.kind != AnswerKind::Record {
        let field = &function.answer.fields[0];
        let _ = writeln!(
            code,
            "/// - `out`: receives the answer. {}.",
            with_detail(&field.meaning, &field.unit, "")
        );
    } else {
        code.push_str("/// - `out`: receives the answer.\n");
    }
    code.push_str("/// - `error`: on failure what was wrong; may be NULL.\n///\n");
    code.push_str("/// Nothing but `error` is written on failure.\n///\n/// # Safety\n");
    code.push_str(
        "/// Each pointer is NULL or valid for its count of items, and no list overlaps another.\n",
    );
    let _ = write!(
        code,
        "#[unsafe(no_mangle)]\npub unsafe extern \"C\" fn recloth_{}(",
        function.name
    );
    for argument in &function.arguments {
        let name = &argument.name;
        let _ = match &argument.kind {
            Kind::Number => write!(code, "{name}: f64, "),
            Kind::Count => write!(code, "{name}: u32, "),
            Kind::Choice(_) => write!(code, "{name}: i32, "),
            Kind::Text => write!(code, "{name}: *const c_char, "),
            Kind::Numbers => write!(code, "{name}: *const f64, {name}_count: usize, "),
            Kind::Counts => write!(code, "{name}: *const u32, {name}_count: usize, "),
            Kind::Fill => write!(code, "{name}: *mut f64, {name}_count: usize, "),
        };
    }
    let _ = match function.answer.kind {
        AnswerKind::Number | AnswerKind::Count => {
            write!(code, "out: *mut {}", function.answer.fields[0].rust_type())
        }
        AnswerKind::Text => write!(code, "out: *mut c_char, out_count: usize"),
        AnswerKind::Record => write!(
            code,
            "out: *mut recloth_{}_t",
            snake(function.answer.record.as_deref().unwrap_or_default())
        ),
    };
    code.push_str(
        ", error: *mut recloth_error_t) -> recloth_status {\n\
         // SAFETY: the caller's promise above.\nunsafe { door::boundary(error, || {\ndoor::not_null(\"out\", out)?;\n",
    );
    let mut bad = Vec::new();
    for argument in &function.arguments {
        let name = &argument.name;
        let _ = match &argument.kind {
            Kind::Number | Kind::Count => Ok(()),
            Kind::Choice(choice) => {
                bad.push(name.clone());
                writeln!(
                    code,
                    "let ({name}, {name}_bad) = read_{}(\"{name}\", {name});",
                    snake(choice)
                )
            }
            Kind::Text => writeln!(code, "let {name} = door::text(\"{name}\", {name})?;"),
            Kind::Numbers | Kind::Counts => {
                writeln!(
                    code,
                    "let {name} = door::list(\"{name}\", {name}, {name}_count)?;"
                )
            }
            Kind::Fill => {
                writeln!(
                    code,
                    "let {name} = door::list_to_fill(\"{name}\", {name}, {name}_count)?;"
                )
            }
        };
    }
    let names: Vec<_> = function
        .arguments
        .iter()
        .map(|argument| argument.name.as_str())
        .collect();
    let call = format!("{}({})", function.path(), names.join(", "));
    if bad.is_empty() {
        let _ = writeln!(code, "let answer = {call}?;");
    } else {
        // A choice that is none of those offered is an error in its place among the arguments.
        let _ = writeln!(
            code,
            "let answer = door::settle({call}, &{names:?}, &[{}])?;",
            bad.iter()
                .map(|name| format!("{name}_bad"))
                .collect::<Vec<_>>()
                .join(", ")
        );
    }
    let _ = match function.answer.kind {
        AnswerKind::Number | AnswerKind::Count => writeln!(code, "out.write(answer);"),
        AnswerKind::Text => writeln!(
            code,
            "door::write_text(\"out\", answer.as_str(), out, out_count)?;"
        ),
        AnswerKind::Record => {
            let record = snake(function.answer.record.as_deref().unwrap_or_default());
            let fields: Vec<_> = function
                .answer
                .fields
                .iter()
                .map(|field| format!("{0}: answer.{0}", field.name))
                .collect();
            writeln!(
                code,
                "out.write(recloth_{record}_t {{ {} }});",
                fields.join(", ")
            )
        }
    };
    code.push_str("Ok(())\n}) }\n}\n");
}

fn argument_text(argument: &Argument) -> String {
    let meaning = &argument.meaning;
    match &argument.kind {
        Kind::Text => format!("{meaning} (UTF-8, closed by a NUL)."),
        Kind::Choice(name) => format!("{meaning} (one of `recloth_{}`).", snake(name)),
        Kind::Fill => format!(
            "filled: {}.",
            with_detail(meaning, &argument.unit, &argument.span())
        ),
        _ => format!(
            "{}.",
            with_detail(meaning, &argument.unit, &argument.span())
        ),
    }
}

/// The constant strings of statuses, doubts and cautions.
fn texts(spec: &Spec, code: &mut String) {
    let set = |bits: &[crate::spec::Bit]| -> Vec<(i128, String)> {
        bits.iter()
            .map(|bit| (i128::from(bit.bit), bit.text.clone()))
            .collect()
    };
    let mut statuses = vec![(0, "success".to_owned())];
    statuses.extend(
        spec.statuses
            .iter()
            .map(|status| (i128::from(status.code), status.text.clone())),
    );
    let tables = [
        (
            "status",
            "status",
            "i32",
            "One general sentence for a status; NULL for a number that is none.",
            statuses,
        ),
        (
            "doubt",
            "bit",
            "u64",
            "The sentence of one doubt; NULL when the bit is none.",
            set(&spec.doubts),
        ),
        (
            "caution",
            "bit",
            "u64",
            "The sentence of one caution; NULL when the bit is none.",
            set(&spec.cautions),
        ),
    ];
    for (name, argument, ty, what, rows) in tables {
        let _ = writeln!(
            code,
            "/// {what} A constant string.\n#[unsafe(no_mangle)]\npub extern \"C\" fn recloth_{name}_text({argument}: {ty}) -> *const c_char {{\nmatch {argument} {{"
        );
        for (number, text) in rows {
            let _ = writeln!(code, "{number} => c{text:?}.as_ptr(),");
        }
        code.push_str("_ => core::ptr::null(),\n}\n}\n");
    }
}

/// Every argument name, so that an error that went out through C can be put into words again.
fn argument_names(spec: &Spec, code: &mut String) {
    let mut names: Vec<&str> = spec
        .functions
        .iter()
        .flat_map(|function| &function.arguments)
        .map(|argument| argument.name.as_str())
        .collect();
    names.extend(["out", "edges", "brief", "piece", "tolerance", "name"]);
    names.sort_unstable();
    names.dedup();
    let _ = writeln!(code, "pub(crate) const ARGUMENTS: &[&str] = &{names:?};");
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

/// `bindings/c/tests/dispatch.h`: every function called by its name with cells of text.
pub(crate) fn dispatch(spec: &Spec) -> Code {
    let mut code = String::from(
        "/* Written by `cargo xtask generate`; do not edit. Calls every function by its name. */\n\n",
    );
    for choice in &spec.choices {
        let name = snake(&choice.name);
        let words: Vec<_> = choice
            .variants
            .iter()
            .map(|variant| format!("\"{}\"", variant.word))
            .collect();
        let _ = writeln!(
            code,
            "static const char *const {name}_words[] = {{{}, NULL}};",
            words.join(", ")
        );
    }
    for function in &spec.functions {
        let name = &function.name;
        let _ = writeln!(
            code,
            "\nstatic recloth_status call_{name}(const cell_t *in, outcome_t *got, recloth_error_t *error) {{"
        );
        let mut given = Vec::new();
        let mut index = 0;
        let mut fills = 0;
        let mut body = String::new();
        for argument in &function.arguments {
            match &argument.kind {
                Kind::Number => given.push(format!("in[{index}].number")),
                Kind::Count => given.push(format!("(uint32_t)in[{index}].number")),
                Kind::Choice(choice) => {
                    given.push(format!("word(in[{index}].text, {}_words)", snake(choice)));
                }
                Kind::Text => given.push(format!("in[{index}].text")),
                Kind::Numbers => given.push(format!("in[{index}].numbers, in[{index}].count")),
                Kind::Counts => given.push(format!("in[{index}].counts, in[{index}].count")),
                Kind::Fill => {
                    let room = match &argument.items {
                        Some(crate::spec::Items::As { other, plus }) => {
                            let at = function
                                .inputs()
                                .position(|input| &input.name == other)
                                .unwrap_or(0);
                            let input = function.inputs().nth(at);
                            let of = match input.map(|input| &input.kind) {
                                Some(Kind::Count) => format!("in[{at}].number"),
                                _ => format!("(double)in[{at}].count"),
                            };
                            format!("room_for({of}, {plus})")
                        }
                        _ => "0".into(),
                    };
                    let _ = writeln!(body, "  size_t {}_count = {room};", argument.name);
                    let _ = writeln!(
                        body,
                        "  double *{} = got_list(got, {}_count);",
                        argument.name, argument.name
                    );
                    given.push(format!("{0}, {0}_count", argument.name));
                    fills += 1;
                    continue;
                }
            }
            index += 1;
        }
        let _ = fills;
        match function.answer.kind {
            AnswerKind::Number | AnswerKind::Count => {
                let ty = match function.answer.fields[0].rust_type() {
                    "f64" => "double",
                    "u32" => "uint32_t",
                    _ => "uint64_t",
                };
                let _ = writeln!(body, "  {ty} out = 0;");
            }
            AnswerKind::Text => body.push_str("  char out[64] = \"\";\n"),
            AnswerKind::Record => {
                let _ = writeln!(
                    body,
                    "  recloth_{}_t out;",
                    snake(function.answer.record.as_deref().unwrap_or_default())
                );
            }
        }
        let out = if function.answer.kind == AnswerKind::Text {
            "out, sizeof out"
        } else {
            "&out"
        };
        let comma = if given.is_empty() { "" } else { ", " };
        code.push_str(&body);
        let _ = writeln!(
            code,
            "  recloth_status status = recloth_{name}({}{comma}{out}, error);\n  if (status != RECLOTH_STATUS_OK) return status;",
            given.join(", ")
        );
        match function.answer.kind {
            AnswerKind::Number => code.push_str("  got_number(got, out);\n"),
            AnswerKind::Count => code.push_str("  got_count(got, out);\n"),
            AnswerKind::Text => code.push_str("  got_text(got, out);\n"),
            AnswerKind::Record => {
                for field in &function.answer.fields {
                    let put = if field.whole {
                        "got_count"
                    } else {
                        "got_number"
                    };
                    let _ = writeln!(code, "  {put}(got, out.{});", field.name);
                }
            }
        }
        code.push_str("  return status;\n}\n");
    }
    code.push_str("\nstatic const function_t functions[] = {\n");
    for function in &spec.functions {
        let kinds: String = function
            .inputs()
            .map(|argument| match argument.kind {
                Kind::Number | Kind::Count => 'n',
                Kind::Choice(_) | Kind::Text => 't',
                Kind::Numbers => 'l',
                Kind::Counts => 'c',
                Kind::Fill => ' ',
            })
            .collect();
        let outputs = function.fills().count() + function.answer.fields.len();
        let _ = writeln!(
            code,
            "  {{\"{0}\", \"{kinds}\", {outputs}, call_{0}}},",
            function.name
        );
    }
    code.push_str("  {NULL, NULL, 0, NULL},\n};\n");
    Code::text(code)
}
