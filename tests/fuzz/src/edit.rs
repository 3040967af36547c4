//! Good JSON, with a little of it changed.

use arbitrary::Result;
use serde_json::{Value, json};

use crate::input::Input;

/// Changes up to so many values, wherever they stand.
pub(crate) fn edit(value: &mut Value, most: usize, input: &mut Input) -> Result<()> {
    for _ in 0..input.index(most + 1)? {
        let mut places = Vec::new();
        find(value, &mut String::new(), &mut places);
        let place = &places[input.index(places.len())?];
        let Some(value) = value.pointer_mut(place) else {
            continue;
        };
        match value {
            Value::Number(number) => {
                let near = number.as_f64().unwrap_or_default();
                *value = json!(input.number([near - 50.0, near + 50.0], &[near, -near])?);
            }
            Value::String(text) => *text = input.text(text)?,
            Value::Bool(yes) => *yes = !*yes,
            Value::Null => *value = json!(1.0),
            Value::Array(items) => {
                let at = input.index(items.len() + 1)?;
                match input.index(3)? {
                    0 if at < items.len() => drop(items.remove(at)),
                    1 if at < items.len() => items.insert(at, items[at].clone()),
                    2 if at < items.len() => items.swap(0, at),
                    _ => items.clear(),
                }
            }
            Value::Object(fields) => {
                let names: Vec<String> = fields.keys().cloned().collect();
                if !names.is_empty() {
                    fields.remove(&names[input.index(names.len())?]);
                }
            }
        }
    }
    Ok(())
}

/// The places of all values, in the order they stand in.
fn find(value: &Value, path: &mut String, places: &mut Vec<String>) {
    places.push(path.clone());
    let length = path.len();
    let mut inside = |name: &str, value: &Value| {
        path.push('/');
        path.push_str(name);
        find(value, path, places);
        path.truncate(length);
    };
    match value {
        Value::Array(items) => {
            let numbered = items.iter().enumerate();
            numbered.for_each(|(index, item)| inside(&index.to_string(), item));
        }
        Value::Object(fields) => fields.iter().for_each(|(name, field)| inside(name, field)),
        _ => {}
    }
}
