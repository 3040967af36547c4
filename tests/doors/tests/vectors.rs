//! Every row of every CSV through Rust.
#![allow(clippy::print_stdout, reason = "a test says how much it tested")]

use std::collections::BTreeSet;

use recloth_doors::{Got, Row, call, tables};

#[test]
fn every_row_comes_out_as_written() {
    let mut failures = Vec::new();
    let mut rows = 0;
    for table in tables() {
        let name = &table.function.name;
        for row in &table.rows {
            rows += 1;
            let answer = call(name, &row.given).expect("the function is known");
            let problem = match answer {
                Ok(answers) if row.status == 0 => compare(row, &answers),
                Ok(answers) => Some(format!("gave {answers:?}, not status {}", row.status)),
                Err(error) if error.kind().code() != row.status => Some(format!(
                    "gave `{error}` ({:?}), not status {}",
                    error.kind(),
                    row.status
                )),
                Err(error) if !row.comment.starts_with(&format!("{}:", error.argument())) => {
                    Some(format!(
                        "named `{}`; the comment says `{}`",
                        error.argument(),
                        row.comment
                    ))
                }
                Err(_) => None,
            };
            if let Some(problem) = problem {
                failures.push(format!("{name}, row {}: {problem}", row.id));
            }
        }
    }
    assert!(rows > 0, "no rows were read");
    assert!(
        failures.is_empty(),
        "{} of {rows} rows:\n{}",
        failures.len(),
        failures.join("\n")
    );
    println!("{rows} rows of vectors through Rust");
}

fn compare(row: &Row, answers: &[Got]) -> Option<String> {
    assert_eq!(row.wanted.len(), answers.len(), "{}", row.id);
    for (wanted, got) in row.wanted.iter().zip(answers) {
        if wanted.is_empty() {
            continue;
        }
        let close = |wanted: &str, got: f64| {
            let Ok(wanted) = wanted.parse::<f64>() else {
                return false;
            };
            match row.tolerance {
                None => wanted.to_bits() == got.to_bits() || (wanted.is_nan() && got.is_nan()),
                Some(tolerance) => (wanted - got).abs() <= tolerance,
            }
        };
        let good = match got {
            Got::Number(value) => close(wanted, *value),
            Got::Whole(value) => wanted.parse() == Ok(*value),
            Got::Text(text) => wanted == text,
            Got::Numbers(values) => {
                let words: Vec<&str> = wanted.split_whitespace().collect();
                words.len() == values.len()
                    && words
                        .iter()
                        .zip(values)
                        .all(|(word, value)| close(word, *value))
            }
        };
        if !good {
            return Some(format!("gave {got:?}, not {wanted}"));
        }
    }
    None
}

#[test]
fn every_row_has_a_source_and_every_id_is_its_own() {
    for table in tables() {
        let name = &table.function.name;
        assert_eq!(
            table.rows.first().map(|row| row.id.as_str()),
            Some("base"),
            "{name}"
        );
        let mut ids = BTreeSet::new();
        for row in &table.rows {
            assert!(
                ids.insert(&row.id),
                "{name}: the id {} stands twice",
                row.id
            );
            assert!(!row.source.is_empty(), "{name}, row {}: no source", row.id);
            let checked = row.status != 0 || row.wanted.iter().any(|cell| !cell.is_empty());
            assert!(checked, "{name}, row {}: nothing is checked", row.id);
        }
    }
}
