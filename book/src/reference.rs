//! The reference: `{{#reference}}` stands for every function, choice, doubt, caution and error of `bindings/spec.json`,
//! which is made from the core's doc comments.

use std::fmt::Write;
use std::fs;
use std::path::Path;

use serde::Deserialize;
use serde_json::Value;

/// The line that is replaced.
const DIRECTIVE: &str = "{{#reference}}";

#[derive(Deserialize)]
struct Spec {
    statuses: Vec<Status>,
    doubts: Vec<Bit>,
    cautions: Vec<Bit>,
    choices: Vec<Choice>,
    functions: Vec<Function>,
}

#[derive(Deserialize)]
struct Status {
    code: i32,
    name: String,
    text: String,
}

#[derive(Deserialize)]
struct Bit {
    bit: u64,
    name: String,
    text: String,
}

#[derive(Deserialize)]
struct Choice {
    name: String,
    summary: String,
    variants: Vec<Variant>,
}

#[derive(Deserialize)]
struct Variant {
    word: String,
    value: i32,
    meaning: String,
}

#[derive(Deserialize)]
struct Function {
    name: String,
    module: String,
    summary: String,
    #[serde(default)]
    description: String,
    arguments: Vec<Argument>,
    answer: Answer,
    errors: String,
    source: String,
}

#[derive(Deserialize)]
struct Argument {
    name: String,
    kind: Value,
    unit: String,
    range: Option<[f64; 2]>,
    #[serde(default)]
    conditions: Vec<String>,
    default: Option<Value>,
    items: Option<Items>,
    meaning: String,
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum Items {
    Between([u64; 2]),
    As { other: String, plus: i64 },
}

#[derive(Deserialize)]
struct Answer {
    fields: Vec<Field>,
}

#[derive(Deserialize)]
struct Field {
    name: String,
    unit: String,
    meaning: String,
}

/// `text` with the reference set in, from the description of every function in `spec`.
///
/// # Errors
/// A sentence, where the description cannot be read.
pub fn expand(text: &str, spec: &Path) -> Result<String, String> {
    if !text.contains(DIRECTIVE) {
        return Ok(text.to_owned());
    }
    let file = fs::read_to_string(spec).map_err(|error| format!("spec.json: {error}"))?;
    let spec: Spec = serde_json::from_str(&file).map_err(|error| format!("spec.json: {error}"))?;
    Ok(text.replace(DIRECTIVE, &reference(&spec)))
}

fn reference(spec: &Spec) -> String {
    let mut out = String::new();
    let mut modules: Vec<&str> = spec
        .functions
        .iter()
        .map(|function| &*function.module)
        .collect();
    modules.sort_unstable();
    modules.dedup();
    for module in modules {
        let _ = writeln!(out, "## {module}\n");
        for function in spec
            .functions
            .iter()
            .filter(|function| function.module == module)
        {
            push_function(&mut out, function);
        }
    }
    let _ = writeln!(out, "## Choices\n");
    for choice in &spec.choices {
        let _ = writeln!(out, "### {}\n\n{}\n", choice.name, choice.summary);
        let _ = writeln!(out, "| choice | number | meaning |\n|---|---|---|");
        for variant in &choice.variants {
            let _ = writeln!(
                out,
                "| `{}` | {} | {} |",
                variant.word,
                variant.value,
                cell(&variant.meaning)
            );
        }
        out.push('\n');
    }
    for (title, bits) in [("Doubts", &spec.doubts), ("Cautions", &spec.cautions)] {
        let _ = writeln!(
            out,
            "## {title}\n\n| bit | name | what it says |\n|---|---|---|"
        );
        for bit in bits {
            let _ = writeln!(
                out,
                "| {} | `{}` | {} |",
                bit.bit,
                bit.name,
                cell(&bit.text)
            );
        }
        out.push('\n');
    }
    let _ = writeln!(
        out,
        "## Errors\n\n| number | name | meaning |\n|---|---|---|"
    );
    for status in &spec.statuses {
        let _ = writeln!(
            out,
            "| {} | `{}` | {} |",
            minus(&status.code.to_string()),
            status.name,
            cell(&status.text)
        );
    }
    out
}

fn push_function(out: &mut String, function: &Function) {
    let arguments: Vec<&str> = function
        .arguments
        .iter()
        .filter(|argument| !argument.is_filled())
        .map(|argument| &*argument.name)
        .collect();
    let _ = writeln!(
        out,
        "### {0}\n\n{1}\n\n`{0}({2})`\n\n{3}\n",
        function.name,
        function.summary,
        arguments.join(", "),
        function.description
    );
    let _ = writeln!(
        out,
        "| argument | unit | range | default | meaning |\n|---|---|---|---|---|"
    );
    for argument in function
        .arguments
        .iter()
        .filter(|argument| !argument.is_filled())
    {
        let _ = writeln!(
            out,
            "| `{}` | {} | {} | {} | {} |",
            argument.name,
            argument.unit,
            argument.span(),
            argument.default_text(),
            cell(&argument.meaning)
        );
    }
    let _ = writeln!(out, "\n| answer | unit | meaning |\n|---|---|---|");
    for argument in function
        .arguments
        .iter()
        .filter(|argument| argument.is_filled())
    {
        let _ = writeln!(
            out,
            "| `{}` | {}, {} | {} |",
            argument.name,
            argument.unit,
            argument.span(),
            cell(&argument.meaning)
        );
    }
    for field in &function.answer.fields {
        let _ = writeln!(
            out,
            "| `{}` | {} | {} |",
            field.name,
            field.unit,
            cell(&field.meaning)
        );
    }
    let _ = writeln!(
        out,
        "\n**Errors.** {}\n\n**Source.** {}\n",
        function.errors, function.source
    );
}

impl Argument {
    /// A list that the function fills is part of the answer.
    fn is_filled(&self) -> bool {
        self.kind == "fill"
    }

    /// Range, conditions and number of items, as a reader wants them.
    fn span(&self) -> String {
        let mut parts = Vec::new();
        if let Some(choice) = self.kind.get("choice").and_then(Value::as_str) {
            parts.push(format!("one of `{choice}`"));
        }
        if let Some([low, high]) = self.range {
            parts.push(minus(&format!("{low} to {high}")));
        }
        parts.extend(self.conditions.iter().map(|condition| cell(condition)));
        match &self.items {
            Some(Items::Between([least, most])) => parts.push(format!("{least} to {most} of them")),
            Some(Items::As { other, plus: 0 }) => parts.push(format!("as many as `{other}`")),
            Some(Items::As { other, plus }) => {
                let (more, word) = (
                    plus.unsigned_abs(),
                    if *plus > 0 { "more" } else { "fewer" },
                );
                parts.push(format!("{more} {word} than `{other}`"));
            }
            None => {}
        }
        parts.join("; ")
    }

    fn default_text(&self) -> String {
        match &self.default {
            Some(Value::String(word)) => format!("`{word}`"),
            Some(Value::Number(number)) => minus(
                &number
                    .as_f64()
                    .map_or_else(String::new, |value| value.to_string()),
            ),
            _ => String::new(),
        }
    }
}

/// Text that can stand in a cell of a table.
fn cell(text: &str) -> String {
    text.replace('|', "\\|")
        .replace('<', "&lt;")
        .replace('\n', " ")
}

/// Numbers with a minus sign as print has it.
fn minus(text: &str) -> String {
    text.replace('-', "−")
}

#[cfg(test)]
mod tests {
    use std::path::PathBuf;

    use super::{DIRECTIVE, expand};

    #[test]
    fn every_function_stands_in_the_reference() {
        let spec = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../bindings/spec.json");
        let out = expand(DIRECTIVE, &spec).unwrap();
        let known: serde_json::Value =
            serde_json::from_str(&std::fs::read_to_string(spec).unwrap()).unwrap();
        let functions = known["functions"].as_array().unwrap();
        assert!(functions.len() > 50);
        for function in functions {
            let heading = format!("\n### {}\n", function["name"].as_str().unwrap());
            assert_eq!(out.matches(&heading).count(), 1, "{heading}");
        }
        assert!(
            out.contains("| `waist` | mm | 1 to 100000 |  | finished waist edge"),
            "{out}"
        );
    }
}
