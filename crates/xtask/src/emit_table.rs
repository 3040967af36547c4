//! The table of every function: descriptions as constants, and a call by name with plain values.

use std::fmt::Write as _;

use crate::{
    emit::{Code, HEADER},
    spec::{AnswerKind, Argument, Default, Field, Function, Items, Kind, Spec, snake},
    vectors::Base,
};

/// `crates/recloth-table/src/generated.rs`.
pub(crate) fn table(spec: &Spec, base: &Base) -> Code {
    let mut code = String::from(HEADER);
    code.push_str(
        "use recloth::Error;\n\
         use crate::{Answer, Argument, Choice, Default, Function, Given, Got, Items, Kind, Module, Variant};\n",
    );
    for choice in &spec.choices {
        let path = format!("recloth::{}::{}", choice.module, choice.name);
        let _ = writeln!(
            code,
            "static {}: Choice = Choice {{ name: {:?}, summary: {:?}, variants: &[",
            constant(&choice.name),
            choice.name,
            choice.summary
        );
        for variant in &choice.variants {
            let _ = writeln!(
                code,
                "Variant {{ word: {:?}, meaning: {:?} }},",
                variant.word, variant.meaning
            );
        }
        let _ = writeln!(
            code,
            "] }};\nfn read_{}(given: &Given) -> {path} {{\nmatch given.text() {{",
            snake(&choice.name)
        );
        // The last for every other word too: `Function::call` lets none through.
        let (last, others) = choice.variants.split_last().unzip();
        for variant in others.into_iter().flatten() {
            let _ = writeln!(code, "{:?} => {path}::{},", variant.word, variant.name);
        }
        if let Some(variant) = last {
            let _ = writeln!(code, "_ => {path}::{},", variant.name);
        }
        code.push_str("}\n}\n");
    }
    for function in &spec.functions {
        call(function, &mut code);
    }
    code.push_str(
        "/// Every file of the core with functions, in the order of the work.\npub static MODULES: &[Module] = &[\n",
    );
    for module in &spec.modules {
        let _ = writeln!(
            code,
            "Module {{ name: {:?}, summary: {:?} }},",
            module.name, module.summary
        );
    }
    code.push_str(
        "];\n/// Functions of outlines, which take more than plain values: names and first sentences.\n\
         pub static SHAPES: &[(&str, &str)] = &[\n",
    );
    for shape in &spec.shapes {
        let _ = writeln!(code, "({:?}, {:?}),", shape.name, shape.summary);
    }
    code.push_str(
        "];\n/// Every function, in order of name.\npub static FUNCTIONS: &[Function] = &[\n",
    );
    for function in &spec.functions {
        describe(function, base, &mut code);
    }
    code.push_str("];\n");
    Code::rust(code)
}

fn constant(name: &str) -> String {
    snake(name).to_uppercase()
}

fn describe(function: &Function, base: &Base, code: &mut String) {
    let _ = writeln!(
        code,
        "Function {{ name: {:?}, module: {:?}, summary: {:?}, description: {:?}, arguments: &[",
        function.name, function.module, function.summary, function.description
    );
    for argument in function.inputs() {
        describe_argument(argument, code);
    }
    code.push_str("], answers: &[\n");
    let fills = function
        .fills()
        .map(|fill| (&fill.name, &fill.unit, &fill.meaning));
    let fields = function.answer.fields.iter();
    for (name, unit, meaning) in
        fills.chain(fields.map(|field| (&field.name, &field.unit, &field.meaning)))
    {
        let _ = writeln!(
            code,
            "Answer {{ name: {name:?}, unit: {unit:?}, meaning: {meaning:?} }},"
        );
    }
    let example: Vec<&str> = function
        .inputs()
        .map(|argument| base.cell(function, &argument.name))
        .collect();
    let _ = writeln!(
        code,
        "], errors: {:?}, source: {:?}, example: &{example:?}, call: {} }},",
        function.errors, function.source, function.name
    );
}

fn describe_argument(argument: &Argument, code: &mut String) {
    let kind = match &argument.kind {
        Kind::Choice(choice) => format!("Choice(&{})", constant(choice)),
        Kind::Number => "Number".into(),
        Kind::Count => "Count".into(),
        Kind::Text => "Text".into(),
        Kind::Numbers | Kind::Fill => "Numbers".into(),
        Kind::Counts => "Counts".into(),
    };
    let items = match &argument.items {
        None => "None".into(),
        Some(Items::Between([least, most])) => format!("Some(Items::Between({least}, {most}))"),
        Some(Items::As { other, .. }) => format!("Some(Items::As({other:?}))"),
    };
    let default = match &argument.default {
        None => "None".into(),
        Some(Default::Number(value)) => format!("Some(Default::Number({value:?}))"),
        Some(Default::Word(word)) => format!("Some(Default::Word({word:?}))"),
    };
    let _ = writeln!(
        code,
        "Argument {{ name: {:?}, kind: Kind::{kind}, unit: {:?}, range: {:?}, conditions: &{:?}, items: {items}, \
         default: {default}, meaning: {:?} }},",
        argument.name, argument.unit, argument.range, argument.conditions, argument.meaning
    );
}

fn call(function: &Function, code: &mut String) {
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
            Kind::Choice(name) => format!("read_{}(&given[{place}])", snake(name)),
            Kind::Fill => {
                if let Some(Items::As { other, plus }) = &argument.items {
                    let (at, of) = function
                        .inputs()
                        .enumerate()
                        .find(|(_, input)| &input.name == other)
                        .map_or((0, None), |(at, input)| (at, input.range));
                    let most = of.map_or(0, |[_, high]| high as u32);
                    let _ = writeln!(
                        code,
                        "let mut {} = given[{at}].room({plus}, {most});",
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
    let got = |value: &str, field: &Field| match field.rust_type() {
        "f64" => format!("Got::Number({value}), "),
        "u32" => format!("Got::Whole({value}.into()), "),
        _ => format!("Got::Whole({value}), "),
    };
    match function.answer.kind {
        AnswerKind::Text => code.push_str("Got::Text(answer.to_string())"),
        AnswerKind::Record => {
            for field in &function.answer.fields {
                code.push_str(&got(&format!("answer.{}", field.name), field));
            }
        }
        _ => code.push_str(&got("answer", &function.answer.fields[0])),
    }
    code.push_str("])\n}\n");
}
