//! What the demo's brief says, quoted in the story: `{{#brief people/Marta/waist}}` stands for that value of
//! `demo/house-coat.toml`.
//!
//! A step into a list is a number from 0, or the `name` (or `garment`, or `what`) of one of its tables.

use std::fs;
use std::path::Path;

use toml::{Table, Value};

use crate::directive;

/// `text` with every `{{#brief …}}` replaced, from the brief in `file`.
///
/// # Errors
/// A sentence naming the directive, where the brief has no such value.
pub fn expand(text: &str, file: &Path) -> Result<String, String> {
    directive::expand(text, "brief", |path| {
        let brief = fs::read_to_string(file).map_err(|error| error.to_string())?;
        let brief: Table = brief.parse().map_err(|error| format!("{error}"))?;
        quote(&Value::Table(brief), path)
    })
}

fn quote(brief: &Value, path: &str) -> Result<String, String> {
    let mut value = brief;
    for step in path.split('/') {
        value = match value {
            Value::Table(table) => table.get(step),
            Value::Array(list) => match step.parse::<usize>() {
                Ok(place) => list.get(place),
                Err(_) => list.iter().find(|item| is_called(item, step)),
            },
            _ => None,
        }
        .ok_or_else(|| format!("the brief has no `{step}` there"))?;
    }
    match value {
        Value::String(text) => Ok(text.clone()),
        Value::Integer(number) => Ok(number.to_string()),
        Value::Float(number) => Ok(number.to_string()),
        _ => Err("names no single value".into()),
    }
}

fn is_called(item: &Value, name: &str) -> bool {
    ["name", "garment", "what"]
        .iter()
        .any(|key| item.get(key).and_then(Value::as_str) == Some(name))
}

#[cfg(test)]
mod tests {
    use super::quote;

    #[test]
    fn values_are_found_by_key_number_and_name() {
        let brief = "[a]\nwaist = \"29 1/2 in\"\n[[make]]\ngarment = \"skirt\"\nbuttons = 2\nof = [\"x\", \"y\"]\n";
        let brief = toml::Value::Table(brief.parse().unwrap());
        for (path, wanted) in [
            ("a/waist", "29 1/2 in"),
            ("make/skirt/buttons", "2"),
            ("make/0/of/1", "y"),
        ] {
            assert_eq!(quote(&brief, path).unwrap(), wanted);
        }
        for path in ["a/bust", "make/coat", "make/9", "a", "a/waist/x"] {
            assert!(quote(&brief, path).is_err(), "{path}");
        }
    }
}
