//! `bindings/spec.json` as the reference reads it.

use serde::Deserialize;
use serde_json::Value;

#[derive(Deserialize)]
pub(super) struct Spec {
    pub(super) statuses: Vec<Status>,
    pub(super) doubts: Vec<Bit>,
    pub(super) cautions: Vec<Bit>,
    pub(super) choices: Vec<Choice>,
    pub(super) modules: Vec<Module>,
    pub(super) functions: Vec<Function>,
    pub(super) shapes: Vec<Shape>,
}

#[derive(Deserialize)]
pub(super) struct Module {
    pub(super) name: String,
    pub(super) summary: String,
}

#[derive(Deserialize)]
pub(super) struct Shape {
    pub(super) name: String,
    pub(super) module: String,
    pub(super) summary: String,
}

#[derive(Deserialize)]
pub(super) struct Status {
    pub(super) code: i32,
    pub(super) name: String,
    pub(super) text: String,
}

#[derive(Deserialize)]
pub(super) struct Bit {
    pub(super) bit: u64,
    pub(super) name: String,
    pub(super) text: String,
}

#[derive(Deserialize)]
pub(super) struct Choice {
    pub(super) name: String,
    pub(super) summary: String,
    pub(super) variants: Vec<Variant>,
}

#[derive(Deserialize)]
pub(super) struct Variant {
    pub(super) word: String,
    pub(super) value: i32,
    pub(super) meaning: String,
}

#[derive(Deserialize)]
pub(super) struct Function {
    pub(super) name: String,
    pub(super) module: String,
    pub(super) summary: String,
    #[serde(default)]
    pub(super) description: String,
    pub(super) arguments: Vec<Argument>,
    pub(super) answer: Answer,
    pub(super) errors: String,
    pub(super) source: String,
}

#[derive(Deserialize)]
pub(super) struct Argument {
    pub(super) name: String,
    pub(super) kind: Value,
    pub(super) unit: String,
    pub(super) range: Option<[f64; 2]>,
    #[serde(default)]
    pub(super) conditions: Vec<String>,
    pub(super) default: Option<Value>,
    pub(super) items: Option<Items>,
    pub(super) meaning: String,
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum Items {
    Between([u64; 2]),
    As { other: String, plus: i64 },
}

#[derive(Deserialize)]
pub(super) struct Answer {
    pub(super) fields: Vec<Field>,
}

#[derive(Deserialize)]
pub(super) struct Field {
    pub(super) name: String,
    pub(super) unit: String,
    pub(super) meaning: String,
}

impl Spec {
    /// The doubts or cautions whose set a part of an answer is; None where it is no set.
    pub(super) fn names_of_bits(&self, function: &str, field: &str) -> Option<&[Bit]> {
        let function = self.functions.iter().find(|known| known.name == function)?;
        let field = function
            .answer
            .fields
            .iter()
            .find(|known| known.name == field)?;
        (field.unit == "bits").then_some(if field.name == "cautions" {
            &self.cautions
        } else {
            &self.doubts
        })
    }
}

impl Argument {
    /// A list that the function fills is part of the answer.
    pub(super) fn is_filled(&self) -> bool {
        self.kind == "fill"
    }

    /// Range, conditions and number of items, as a reader wants them.
    pub(super) fn span(&self) -> String {
        let mut parts = Vec::new();
        if let Some(choice) = self.kind.get("choice").and_then(Value::as_str) {
            parts.push(format!("one of [`{choice}`](../functions.md#choices)"));
        }
        if let Some([low, high]) = self.range {
            parts.push(minus(&format!("{low} to {high}")));
        }
        parts.extend(self.conditions.iter().map(|condition| cell(condition)));
        match &self.items {
            Some(Items::Between([least, most])) if least == most => {
                parts.push(format!("{least} of them"));
            }
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

    pub(super) fn default_text(&self) -> String {
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
pub(super) fn cell(text: &str) -> String {
    text.replace('|', "\\|")
        .replace('<', "&lt;")
        .replace('\n', " ")
}

/// Numbers with a minus sign as print has it.
pub(super) fn minus(text: &str) -> String {
    text.replace('-', "−")
}
