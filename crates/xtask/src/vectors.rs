//! The base rows of `tests/vectors`, which docstrings show as examples.

use std::{collections::BTreeMap, fs, path::Path};

use crate::spec::{AnswerKind, Function, Spec};

/// The base row of each function: heading and cell.
pub(crate) struct Base(BTreeMap<String, Vec<(String, String)>>);

impl Base {
    /// Reads the base row of every function of the spec; a function without one is an error.
    pub(crate) fn read(root: &Path, spec: &Spec) -> Result<Base, String> {
        let mut rows = BTreeMap::new();
        for function in &spec.functions {
            let name = format!("tests/vectors/{}.csv", function.name);
            let text =
                fs::read_to_string(root.join(&name)).map_err(|error| format!("{name}: {error}"))?;
            let mut reader = csv::Reader::from_reader(text.as_bytes());
            let headings = reader
                .headers()
                .map_err(|error| format!("{name}: {error}"))?
                .clone();
            let row = reader
                .records()
                .next()
                .transpose()
                .map_err(|error| format!("{name}: {error}"))?;
            let row = row.filter(|row| row.get(0) == Some("base"));
            let row =
                row.ok_or_else(|| format!("{name}: the first row must have the id `base`"))?;
            let wanted: Vec<&str> = std::iter::once("id")
                .chain(function.inputs().map(|argument| argument.name.as_str()))
                .chain(["status"])
                .chain(function.fills().map(|argument| argument.name.as_str()))
                .chain(
                    function
                        .answer
                        .fields
                        .iter()
                        .map(|field| field.name.as_str()),
                )
                .chain(["tolerance", "source", "comment"])
                .collect();
            if !headings.iter().eq(wanted.iter().copied()) {
                return Err(format!("{name}: the headings must be {}", wanted.join(",")));
            }
            let cells = headings
                .iter()
                .zip(&row)
                .map(|(a, b)| (a.to_owned(), b.to_owned()));
            rows.insert(function.name.clone(), cells.collect());
        }
        Ok(Base(rows))
    }

    /// What the base row of a function has below a heading; nothing where there is no such heading.
    pub(crate) fn cell(&self, function: &Function, heading: &str) -> &str {
        let row = self.0.get(&function.name).into_iter().flatten();
        let mut cells = row.filter(|(known, _)| known == heading);
        cells.next().map_or("", |(_, cell)| cell)
    }

    /// `circle_skirt(waist=710, length=600, fraction=0.5) gives waist_radius 226.00 (by hand)`.
    pub(crate) fn example(&self, function: &Function) -> Option<String> {
        self.0.get(&function.name)?;
        let cell = |name: &str| self.cell(function, name);
        let given: Vec<_> = function
            .inputs()
            .map(|argument| {
                let value = cell(&argument.name);
                let value = match argument.kind {
                    crate::spec::Kind::Numbers | crate::spec::Kind::Counts => {
                        format!(
                            "[{}]",
                            value.split_whitespace().collect::<Vec<_>>().join(", ")
                        )
                    }
                    crate::spec::Kind::Text | crate::spec::Kind::Choice(_) => format!("'{value}'"),
                    _ => value.to_owned(),
                };
                format!("{}={value}", argument.name)
            })
            .collect();
        let got: Vec<_> = function
            .fills()
            .map(|fill| &fill.name)
            .chain(function.answer.fields.iter().map(|field| &field.name))
            .filter(|name| !cell(name).is_empty())
            .map(|name| match function.answer.kind {
                AnswerKind::Record => format!("{name} {}", cell(name)),
                _ if name == "value" => cell(name).to_owned(),
                _ => format!("{name} {}", cell(name)),
            })
            .collect();
        Some(format!(
            "{}({}) gives {}",
            function.name,
            given.join(", "),
            got.join(", ")
        ))
    }
}
