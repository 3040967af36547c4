//! Calls made from spec.json and base rows: one argument at a time at an end of its range, past it,
//! NaN and infinite; lists item by item, and one item too many or too few.

use recloth::ErrorKind;
use serde_json::Value;

use crate::{Given, call, tables};

/// One call, and what must come of it.
#[derive(Clone, Debug)]
pub struct Call {
    /// The function.
    pub function: String,
    /// What is varied: an id for the call.
    pub id: String,
    /// The arguments.
    pub given: Vec<Given>,
    /// The argument varied.
    pub argument: String,
    /// The error it must be, or None at an end of the range: an answer, or no solution.
    pub wanted: Option<ErrorKind>,
}

impl Call {
    /// What is wrong with the answer, if anything.
    pub fn failure(&self) -> Option<String> {
        let answer = call(&self.function, &self.given)?;
        let good = match (&answer, self.wanted) {
            (Ok(_), None) => true,
            (Err(error), None) => error.kind() == ErrorKind::NoSolution,
            (Ok(_), Some(_)) => false,
            (Err(error), Some(kind)) => error.kind() == kind && error.argument() == self.argument,
        };
        (!good).then(|| {
            let wanted = self
                .wanted
                .map_or("an answer or NoSolution".into(), |kind| {
                    format!("{} of {}", kind.name(), self.argument)
                });
            format!("{}, {}: {answer:?}, not {wanted}", self.function, self.id)
        })
    }
}

/// Every call.
pub fn calls() -> Vec<Call> {
    let mut calls = Vec::new();
    for table in tables() {
        let base = &table.rows.first().expect("a base row").given;
        for (place, argument) in table.function.inputs.iter().enumerate() {
            vary(&table.function.name, base, place, argument, &mut calls);
        }
    }
    calls
}

fn vary(function: &str, base: &[Given], place: usize, argument: &Value, calls: &mut Vec<Call>) {
    let name = argument["name"].as_str().expect("name");
    let mut add = |id: String, value: Given, wanted: Option<ErrorKind>| {
        let mut given = base.to_vec();
        given[place] = value;
        calls.push(Call {
            function: function.to_owned(),
            id: format!("{name} {id}"),
            given,
            argument: name.to_owned(),
            wanted,
        });
    };
    let range = || {
        let range = argument["range"].as_array().expect("range");
        (
            range[0].as_f64().expect("low"),
            range[1].as_f64().expect("high"),
        )
    };
    // The next number outside: the range is inclusive to the last bit.
    let numbers = |(low, high): (f64, f64)| {
        [
            ("at its least", low, None),
            ("at its most", high, None),
            ("below", low.next_down(), Some(ErrorKind::OutOfRange)),
            ("above", high.next_up(), Some(ErrorKind::OutOfRange)),
            ("NaN", f64::NAN, Some(ErrorKind::NotFinite)),
            ("infinite", f64::INFINITY, Some(ErrorKind::NotFinite)),
            (
                "minus infinite",
                f64::NEG_INFINITY,
                Some(ErrorKind::NotFinite),
            ),
        ]
    };
    let counts = |(low, high): (f64, f64)| {
        let (low, high) = (low as u32, high as u32);
        let mut counts = vec![("at its least", low, None), ("at its most", high, None)];
        counts.extend(
            low.checked_sub(1)
                .map(|low| ("below", low, Some(ErrorKind::OutOfRange))),
        );
        counts.extend(
            high.checked_add(1)
                .map(|high| ("above", high, Some(ErrorKind::OutOfRange))),
        );
        counts
    };
    match &base[place] {
        Given::Number(_) => {
            for (id, value, wanted) in numbers(range()) {
                add(id.to_owned(), Given::Number(value), wanted);
            }
        }
        Given::Count(_) => {
            for (id, value, wanted) in counts(range()) {
                add(id.to_owned(), Given::Count(value), wanted);
            }
        }
        Given::Numbers(items) => {
            for at in 0..items.len() {
                for (id, value, wanted) in numbers(range()) {
                    let mut items = items.clone();
                    items[at] = value;
                    add(format!("item {at} {id}"), Given::Numbers(items), wanted);
                }
            }
            for (id, list, wanted) in lengths(items, &argument["items"]) {
                add(id, Given::Numbers(list), wanted);
            }
        }
        Given::Counts(items) => {
            for at in 0..items.len() {
                for (id, value, wanted) in counts(range()) {
                    let mut items = items.clone();
                    items[at] = value;
                    add(format!("item {at} {id}"), Given::Counts(items), wanted);
                }
            }
            for (id, list, wanted) in lengths(items, &argument["items"]) {
                add(id, Given::Counts(list), wanted);
            }
        }
        Given::Text(_) => {}
    }
}

/// The list with too few and too many items.
fn lengths<T: Clone>(items: &[T], rule: &Value) -> Vec<(String, Vec<T>, Option<ErrorKind>)> {
    let grown = |count: usize| -> Vec<T> { items.iter().cycle().take(count).cloned().collect() };
    let mut lists = Vec::new();
    if let Some(ends) = rule["between"].as_array() {
        let least = ends[0].as_u64().expect("least") as usize;
        let most = ends[1].as_u64().expect("most") as usize;
        if least > 0 && !items.is_empty() {
            lists.push((format!("of {}", least - 1), grown(least - 1)));
        }
        if !items.is_empty() {
            lists.push((format!("of {}", most + 1), grown(most + 1)));
        }
    } else if !items.is_empty() {
        lists.push(("one short".to_owned(), grown(items.len() - 1)));
        lists.push(("one long".to_owned(), grown(items.len() + 1)));
    }
    lists
        .into_iter()
        .map(|(id, list)| (id, list, Some(ErrorKind::Count)))
        .collect()
}
