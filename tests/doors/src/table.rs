//! The CSV files of check values, read by the columns spec.json gives.

use std::{fs, path::PathBuf};

use serde_json::Value;

use crate::{Given, read as read_value};

/// The root of the checkout.
pub fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// `bindings/spec.json`.
pub fn spec() -> Value {
    let text = fs::read_to_string(root().join("bindings/spec.json")).expect("spec.json");
    serde_json::from_str(&text).expect("spec.json is JSON")
}

/// One function as spec.json describes it.
#[derive(Clone, Debug)]
pub struct Function {
    /// Its name.
    pub name: String,
    /// Its inputs: every argument but the lists to fill.
    pub inputs: Vec<Value>,
    /// Its outputs: name, and true for a list.
    pub outputs: Vec<(String, bool)>,
}

impl Function {
    fn read(value: &Value) -> Function {
        let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
        let arguments = value["arguments"].as_array().expect("arguments");
        let is_fill = |argument: &&Value| argument["kind"] == "fill";
        let fills = arguments
            .iter()
            .filter(is_fill)
            .map(|fill| (text(&fill["name"]), true));
        let fields = value["answer"]["fields"].as_array().expect("fields");
        let fields = fields.iter().map(|field| (text(&field["name"]), false));
        Function {
            name: text(&value["name"]),
            inputs: arguments
                .iter()
                .filter(|argument| !is_fill(argument))
                .cloned()
                .collect(),
            outputs: fills.chain(fields).collect(),
        }
    }
}

/// The check values of one function.
#[derive(Clone, Debug)]
pub struct Table {
    /// The function.
    pub function: Function,
    /// Its rows.
    pub rows: Vec<Row>,
}

/// One row.
#[derive(Clone, Debug)]
pub struct Row {
    /// Its id, unique in the file.
    pub id: String,
    /// The inputs.
    pub given: Vec<Given>,
    /// 0 or the number of the error.
    pub status: i32,
    /// The outputs as written, blank where not checked.
    pub wanted: Vec<String>,
    /// Absolute tolerance; None asks for equal bits.
    pub tolerance: Option<f64>,
    /// Where the values come from.
    pub source: String,
    /// What the row is for; of an error, the argument named comes first.
    pub comment: String,
}

/// Every function's table, in the order of spec.json; panics at a row that cannot be read.
pub fn tables() -> Vec<Table> {
    let spec = spec();
    let functions = spec["functions"].as_array().expect("functions");
    functions
        .iter()
        .map(|function| read(Function::read(function)))
        .collect()
}

fn read(function: Function) -> Table {
    let name = format!("tests/vectors/{}.csv", function.name);
    let text =
        fs::read_to_string(root().join(&name)).unwrap_or_else(|error| panic!("{name}: {error}"));
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let mut rows = Vec::new();
    for record in reader.records() {
        let record = record.unwrap_or_else(|error| panic!("{name}: {error}"));
        let id = record[0].to_owned();
        let mut cells = record.iter().skip(1).map(str::to_owned);
        let mut next = || {
            cells
                .next()
                .unwrap_or_else(|| panic!("{name}, {id}: too few cells"))
        };
        let given = function
            .inputs
            .iter()
            .map(|argument| {
                let cell = next();
                read_value(&argument["kind"], &cell)
                    .unwrap_or_else(|what| panic!("{name}, {id}, {}: {what}", argument["name"]))
            })
            .collect();
        let status = next();
        let status = status
            .parse()
            .unwrap_or_else(|_| panic!("{name}, {id}: status {status}"));
        let wanted = function.outputs.iter().map(|_| next()).collect();
        let tolerance = next();
        let tolerance = match tolerance.as_str() {
            "exact" | "" => None,
            number => Some(
                number
                    .parse()
                    .unwrap_or_else(|_| panic!("{name}, {id}: tolerance {number}")),
            ),
        };
        rows.push(Row {
            given,
            status,
            wanted,
            tolerance,
            source: next(),
            comment: next(),
            id: id.clone(),
        });
    }
    Table { function, rows }
}
