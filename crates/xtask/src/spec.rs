//! The one description of every function, as `bindings/spec.json` holds it.

use serde::Serialize;

/// Everything the doors are generated from.
#[derive(Debug, Serialize)]
pub(crate) struct Spec {
    pub(crate) version: String,
    pub(crate) statuses: Vec<Status>,
    pub(crate) doubts: Vec<Bit>,
    pub(crate) cautions: Vec<Bit>,
    pub(crate) choices: Vec<Choice>,
    /// Files of the core with functions, in the order of the work.
    pub(crate) modules: Vec<Module>,
    pub(crate) functions: Vec<Function>,
    /// Functions and types of outlines and pieces: their doors are written by hand.
    pub(crate) shapes: Vec<Shape>,
}

#[derive(Debug, Serialize)]
pub(crate) struct Status {
    pub(crate) code: i32,
    pub(crate) name: String,
    pub(crate) text: String,
}

#[derive(Debug, Serialize)]
pub(crate) struct Bit {
    pub(crate) bit: u64,
    pub(crate) name: String,
    pub(crate) text: String,
}

/// A file of the core.
#[derive(Debug, Serialize)]
pub(crate) struct Module {
    pub(crate) name: String,
    pub(crate) summary: String,
}

/// A closed list of choices: an enum of the core.
#[derive(Clone, Debug, Serialize)]
pub(crate) struct Choice {
    pub(crate) name: String,
    pub(crate) module: String,
    pub(crate) summary: String,
    pub(crate) variants: Vec<Variant>,
}

#[derive(Clone, Debug, Serialize)]
pub(crate) struct Variant {
    /// As in Rust: `Nearest`.
    pub(crate) name: String,
    /// As in a table, a CSV or Python: `nearest`.
    pub(crate) word: String,
    pub(crate) value: i32,
    pub(crate) meaning: String,
}

#[derive(Clone, Debug, Serialize)]
pub(crate) struct Function {
    pub(crate) name: String,
    pub(crate) module: String,
    pub(crate) summary: String,
    pub(crate) description: String,
    pub(crate) arguments: Vec<Argument>,
    pub(crate) answer: Answer,
    pub(crate) errors: String,
    pub(crate) source: String,
    pub(crate) example: String,
}

#[derive(Clone, Debug, Serialize)]
pub(crate) struct Argument {
    pub(crate) name: String,
    pub(crate) kind: Kind,
    pub(crate) unit: String,
    /// Least and largest value, of each item in a list.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) range: Option<[f64; 2]>,
    /// Conditions between arguments, as `< waist`.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(crate) conditions: Vec<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) items: Option<Items>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) default: Option<Default>,
    pub(crate) meaning: String,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Kind {
    Number,
    Count,
    Text,
    Choice(String),
    Numbers,
    Counts,
    /// A list the caller gives and the function fills.
    Fill,
}

/// How many items a list has.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Items {
    Between([u32; 2]),
    /// As many as another list has, or as a count says, plus this number.
    As {
        other: String,
        plus: i32,
    },
}

#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(untagged)]
pub(crate) enum Default {
    Number(f64),
    Word(String),
}

#[derive(Clone, Debug, Serialize)]
pub(crate) struct Answer {
    pub(crate) kind: AnswerKind,
    /// The core's struct, for a record.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) record: Option<String>,
    #[serde(skip_serializing_if = "String::is_empty")]
    pub(crate) summary: String,
    pub(crate) fields: Vec<Field>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum AnswerKind {
    Number,
    Count,
    Text,
    Record,
}

#[derive(Clone, Debug, Serialize)]
pub(crate) struct Field {
    pub(crate) name: String,
    pub(crate) whole: bool,
    pub(crate) unit: String,
    pub(crate) meaning: String,
}

#[derive(Debug, Serialize)]
pub(crate) struct Shape {
    pub(crate) name: String,
    pub(crate) module: String,
    pub(crate) summary: String,
}

impl Function {
    /// Arguments a caller gives: all but the lists to fill.
    pub(crate) fn inputs(&self) -> impl Iterator<Item = &Argument> {
        self.arguments
            .iter()
            .filter(|argument| argument.kind != Kind::Fill)
    }

    /// Lists the function fills.
    pub(crate) fn fills(&self) -> impl Iterator<Item = &Argument> {
        self.arguments
            .iter()
            .filter(|argument| argument.kind == Kind::Fill)
    }

    /// Every argument is one number, count or choice, and so is every answer: it can be a ufunc.
    pub(crate) fn is_scalar(&self) -> bool {
        self.answer.kind != AnswerKind::Text
            && self.arguments.iter().all(|argument| {
                matches!(argument.kind, Kind::Number | Kind::Count | Kind::Choice(_))
            })
    }

    /// The path of the function in Rust.
    pub(crate) fn path(&self) -> String {
        format!("recloth::{}::{}", self.module, self.name)
    }
}

impl Field {
    /// Its type in Rust: sets of bits are wider than counts.
    pub(crate) fn rust_type(&self) -> &'static str {
        match (self.whole, self.is_bits()) {
            (false, _) => "f64",
            (true, false) => "u32",
            (true, true) => "u64",
        }
    }

    pub(crate) fn is_bits(&self) -> bool {
        self.unit == "bits"
    }
}

impl Argument {
    /// The range in words: `1 to 100000 mm`.
    pub(crate) fn span(&self) -> String {
        let mut words = Vec::new();
        if let Some([low, high]) = self.range {
            words.push(format!("{} to {}", plain(low), plain(high)));
        }
        words.extend(self.conditions.iter().cloned());
        match &self.items {
            Some(Items::Between([least, most])) => words.push(format!("{least} to {most} items")),
            Some(Items::As { other, plus: 0 }) => words.push(format!("as many as {other}")),
            Some(Items::As { other, plus }) if *plus > 0 => {
                words.push(format!("{plus} more than {other}"));
            }
            Some(Items::As { other, plus }) => {
                words.push(format!("{} fewer than {other}", -plus));
            }
            None => {}
        }
        words.join(", ")
    }
}

/// The unit as it stands behind a meaning; blank for a plain ratio, a text, a choice or a count.
pub(crate) fn shown_unit(unit: &str) -> &str {
    if matches!(unit, "1" | "text" | "choice" | "count") {
        ""
    } else {
        unit
    }
}

/// `meaning (mm, 1 to 100)`, without what is blank.
pub(crate) fn with_detail(meaning: &str, unit: &str, span: &str) -> String {
    let detail: Vec<_> = [shown_unit(unit), span]
        .into_iter()
        .filter(|part| !part.is_empty())
        .collect();
    if detail.is_empty() {
        meaning.to_owned()
    } else {
        format!("{meaning} ({})", detail.join(", "))
    }
}

/// A number as a person writes it.
pub(crate) fn plain(value: f64) -> String {
    format!("{value}")
}

/// `CircleSkirt` as `circle_skirt`.
pub(crate) fn snake(name: &str) -> String {
    let mut words = String::new();
    for (index, letter) in name.chars().enumerate() {
        if letter.is_uppercase() && index > 0 {
            words.push('_');
        }
        words.extend(letter.to_lowercase());
    }
    words
}
