//! An answer or an error as one line of JSON: lengths in mm, every number to its last bit.

use recloth_table::{Function, Given, Got};
use serde::Serialize;
use serde::ser::{SerializeMap, Serializer};

use super::Wrong;
use super::read::Read;
use super::wording::sentences;

#[derive(Serialize)]
struct Line<'a> {
    function: Option<&'a str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    arguments: Option<Arguments<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    answer: Option<Answers<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    doubts: Option<Vec<&'static str>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    cautions: Option<Vec<&'static str>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    error: Option<Failure<'a>>,
}

#[derive(Serialize)]
struct Failure<'a> {
    text: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    core: Option<&'a recloth::Error>,
}

struct Arguments<'a>(&'a Function, &'a [Given]);

impl Serialize for Arguments<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(None)?;
        for (argument, given) in self.0.arguments.iter().zip(self.1) {
            match given {
                Given::Number(value) => map.serialize_entry(argument.name, value)?,
                Given::Count(value) => map.serialize_entry(argument.name, value)?,
                Given::Text(value) => map.serialize_entry(argument.name, value)?,
                Given::Numbers(value) => map.serialize_entry(argument.name, value)?,
                Given::Counts(value) => map.serialize_entry(argument.name, value)?,
            }
        }
        map.end()
    }
}

struct Answers<'a>(&'a Function, &'a [Got]);

impl Serialize for Answers<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(None)?;
        for (answer, got) in self.0.answers.iter().zip(self.1) {
            match got {
                Got::Number(value) => map.serialize_entry(answer.name, value)?,
                Got::Whole(value) => map.serialize_entry(answer.name, value)?,
                Got::Text(value) => map.serialize_entry(answer.name, value)?,
                Got::Numbers(value) => map.serialize_entry(answer.name, value)?,
            }
        }
        map.end()
    }
}

/// The line of an answer.
pub(super) fn answer(function: &Function, read: &Read, got: &[Got]) -> String {
    let said = |cautions: bool| {
        let mut sets = function.answers.iter().zip(got);
        sets.find_map(|(answer, got)| match got {
            Got::Whole(set) if answer.unit == "bits" && (answer.name == "cautions") == cautions => {
                Some(sentences(answer.name, *set))
            }
            _ => None,
        })
    };
    line(&Line {
        function: Some(function.name),
        arguments: Some(Arguments(function, &read.given)),
        answer: Some(Answers(function, got)),
        doubts: said(false),
        cautions: said(true),
        error: None,
    })
}

/// The line of an error.
pub(super) fn error(wrong: &Wrong) -> String {
    line(&Line {
        function: wrong.function,
        arguments: None,
        answer: None,
        doubts: None,
        cautions: None,
        error: Some(Failure {
            text: wrong.what.clone(),
            core: wrong.core.as_ref(),
        }),
    })
}

fn line(line: &Line) -> String {
    // Names are texts and numbers are numbers: this cannot fail.
    serde_json::to_string(line).map_or_else(
        |error| format!("{{\"error\":\"{error}\"}}\n"),
        |text| text + "\n",
    )
}
