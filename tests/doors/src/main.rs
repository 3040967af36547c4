//! Writes the calls at the ends of ranges as CSV files, and prints what Rust answers to each row of
//! the folders named, and to the jobs of lays, for comparison with the other doors. Says how many rows of the reference list the check values meet.
#![allow(clippy::print_stdout, reason = "a command prints")]

use std::{env, error::Error, fs, path::Path};

use recloth_doors::{Given, boundaries, call, cell, lays, line, references, tables};

fn main() -> Result<(), Box<dyn Error>> {
    let words: Vec<String> = env::args().skip(1).collect();
    match words.iter().map(String::as_str).collect::<Vec<_>>()[..] {
        ["calls", folder] => write_calls(Path::new(folder)),
        ["answers"] => {
            for table in tables() {
                for row in &table.rows {
                    answer(&table.function.name, &row.id, &row.given);
                }
            }
            for call in boundaries::calls() {
                answer(&call.function, &call.id, &call.given);
            }
            Ok(())
        }
        ["lays"] => {
            for line in lays::lines()? {
                println!("{line}");
            }
            Ok(())
        }
        ["references"] => {
            println!("reference rows met: {}", references::met(&tables()).len());
            Ok(())
        }
        _ => Err("recloth-doors calls FOLDER | answers | lays | references".into()),
    }
}

fn answer(name: &str, id: &str, given: &[Given]) {
    if let Some(answer) = call(name, given) {
        println!("{}", line(name, id, &answer));
    }
}

/// One file a function: id and inputs, nothing more.
fn write_calls(folder: &Path) -> Result<(), Box<dyn Error>> {
    fs::create_dir_all(folder)?;
    let calls = boundaries::calls();
    for table in tables() {
        let name = &table.function.name;
        let mut writer = csv::Writer::from_path(folder.join(format!("{name}.csv")))?;
        let headings = table
            .function
            .inputs
            .iter()
            .filter_map(|argument| argument["name"].as_str());
        writer.write_record(std::iter::once("id").chain(headings))?;
        for call in calls.iter().filter(|call| &call.function == name) {
            let cells = call.given.iter().map(cell);
            writer.write_record(std::iter::once(call.id.clone()).chain(cells))?;
        }
        writer.flush()?;
    }
    Ok(())
}
