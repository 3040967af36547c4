//! Lays as JSON lines in, each with its `parts`, `panels` and `lay`; the checker's complaints as JSON lines out: for
//! `tests/oracle/spoilt.py`.
#![allow(clippy::print_stdout)]

use std::error::Error;
use std::io::stdin;

use recloth_lay::{Lay, Panel, Part, check};
use serde_json::{Value, from_str, from_value, json};

fn main() -> Result<(), Box<dyn Error>> {
    for line in stdin().lines() {
        let mut row: Value = from_str(&line?)?;
        let mut taken = |key: &str| row[key].take();
        let parts: Vec<Part> = from_value(taken("parts"))?;
        let panels: Vec<Panel> = from_value(taken("panels"))?;
        let lay: Lay = from_value(taken("lay"))?;
        println!(
            "{}",
            json!(check(&parts, &panels, &lay).err().unwrap_or_default())
        );
    }
    Ok(())
}
