//! Values as the tests pass them, and the line of text that stands for one call in every door.

use recloth::Error;
use recloth_table::{Given, Got};
use serde_json::Value;

/// Calls a function by its name; None when there is no such function, or it takes other values.
pub fn call(name: &str, given: &[Given]) -> Option<Result<Vec<Got>, Error>> {
    recloth_table::find(name)?.call(given)
}

/// Reads a cell of a CSV as the kind of argument spec.json says.
pub fn read(kind: &Value, cell: &str) -> Result<Given, String> {
    let number = |text: &str| {
        text.parse::<f64>()
            .map_err(|_| format!("{text} is not a number"))
    };
    let count = |text: &str| {
        text.parse::<u32>()
            .map_err(|_| format!("{text} is not a count"))
    };
    Ok(match kind.as_str() {
        Some("number") => Given::Number(number(cell)?),
        Some("count") => Given::Count(count(cell)?),
        Some("numbers") => Given::Numbers(
            cell.split_whitespace()
                .map(number)
                .collect::<Result<_, _>>()?,
        ),
        Some("counts") => Given::Counts(
            cell.split_whitespace()
                .map(count)
                .collect::<Result<_, _>>()?,
        ),
        _ => Given::Text(cell.to_owned()),
    })
}

/// The cell that reads back as this value.
pub fn cell(given: &Given) -> String {
    let list = |words: Vec<String>| words.join(" ");
    match given {
        Given::Number(value) => format!("{value:?}"),
        Given::Count(value) => value.to_string(),
        Given::Text(text) => text.clone(),
        Given::Numbers(values) => list(values.iter().map(|value| format!("{value:?}")).collect()),
        Given::Counts(values) => list(values.iter().map(u32::to_string).collect()),
    }
}

/// One call as every door prints it: name, id, status, then the answers with the bits of each number
/// (every NaN alike), or the argument named and the place in it.
pub fn line(name: &str, id: &str, answer: &Result<Vec<Got>, Error>) -> String {
    match answer {
        Ok(answers) => {
            let words: Vec<String> = answers.iter().map(word).collect();
            format!("{name}\t{id}\t0\t{}", words.join("\t"))
        }
        Err(error) => {
            let at = error.at().map_or("-".to_owned(), |at| at.to_string());
            format!(
                "{name}\t{id}\t{}\t{}\t{at}",
                error.kind().code(),
                error.argument()
            )
        }
    }
}

fn word(got: &Got) -> String {
    let bits = |value: &f64| {
        if value.is_nan() {
            "nan".to_owned()
        } else {
            format!("{:016x}", value.to_bits())
        }
    };
    match got {
        Got::Number(value) => bits(value),
        Got::Whole(value) => value.to_string(),
        Got::Text(text) => text.clone(),
        Got::Numbers(values) => values.iter().map(bits).collect::<Vec<_>>().join(" "),
    }
}
