//! Values as the tests pass them, and the line of text that stands for one call in every door.

use recloth::Error;

/// One argument.
#[derive(Clone, Debug, PartialEq)]
pub enum Given {
    /// A number.
    Number(f64),
    /// A count.
    Count(u32),
    /// A text, or the word of a choice.
    Text(String),
    /// A list of numbers.
    Numbers(Vec<f64>),
    /// A list of counts.
    Counts(Vec<u32>),
}

/// One answer.
#[derive(Clone, Debug, PartialEq)]
pub enum Got {
    /// A number.
    Number(f64),
    /// A count or a set of bits.
    Count(u32),
    /// A text.
    Text(String),
    /// A list of numbers.
    Numbers(Vec<f64>),
}

impl Given {
    /// Reads a cell of a CSV as the kind of argument spec.json says.
    pub fn read(kind: &serde_json::Value, cell: &str) -> Result<Given, String> {
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
    pub fn cell(&self) -> String {
        let list = |words: Vec<String>| words.join(" ");
        match self {
            Given::Number(value) => format!("{value:?}"),
            Given::Count(value) => value.to_string(),
            Given::Text(text) => text.clone(),
            Given::Numbers(values) => {
                list(values.iter().map(|value| format!("{value:?}")).collect())
            }
            Given::Counts(values) => list(values.iter().map(u32::to_string).collect()),
        }
    }

    pub(crate) fn number(&self) -> f64 {
        match self {
            Given::Number(value) => *value,
            other => panic!("{other:?} is not a number"),
        }
    }

    pub(crate) fn count(&self) -> u32 {
        match self {
            Given::Count(value) => *value,
            other => panic!("{other:?} is not a count"),
        }
    }

    pub(crate) fn text(&self) -> &str {
        match self {
            Given::Text(text) => text,
            other => panic!("{other:?} is not a text"),
        }
    }

    pub(crate) fn numbers(&self) -> &[f64] {
        match self {
            Given::Numbers(values) => values,
            other => panic!("{other:?} is not a list"),
        }
    }

    pub(crate) fn counts(&self) -> &[u32] {
        match self {
            Given::Counts(values) => values,
            other => panic!("{other:?} is not a list of counts"),
        }
    }
}

/// How many items a list to fill has: what its argument says, but never more than a test needs.
pub(crate) fn room(given: &Given, plus: i32) -> usize {
    let count = match given {
        Given::Numbers(values) => values.len(),
        Given::Counts(values) => values.len(),
        Given::Count(count) if *count <= 100_000 => *count as usize,
        _ => 0,
    };
    count.saturating_add_signed(plus as isize)
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
        Got::Count(value) => value.to_string(),
        Got::Text(text) => text.clone(),
        Got::Numbers(values) => values.iter().map(bits).collect::<Vec<_>>().join(" "),
    }
}
