//! What was typed for each argument, read as its kind and unit ask.

use recloth::ErrorKind;
use recloth::tape;
use recloth_table::{Argument, Choice, Default, Function, Given, Kind};

use super::Wrong;
use super::quantity::{self, Tape, Unit};
use super::wording;
use crate::nearest::nearest;

/// The values for a function, and the units they were typed in.
#[derive(Debug)]
pub(super) struct Read {
    pub(super) given: Vec<Given>,
    pub(super) typed: Typed,
    /// Which arguments were not typed: their defaults are taken.
    pub(super) defaulted: Vec<bool>,
}

/// The units of what was typed: answers are printed in them.
#[derive(Debug, Default)]
pub(super) struct Typed {
    /// Of the first length with a unit.
    pub(super) tape: Option<Tape>,
    /// Whether lengths were typed in several units.
    pub(super) mixed: bool,
    /// The argument that had that first length.
    pub(super) first: &'static str,
    /// Of the first quantity of each of the library's units.
    units: Vec<(&'static str, &'static Unit)>,
    /// Whether decimals were marked by a comma.
    pub(super) comma: bool,
    lengths: usize,
}

impl Typed {
    /// The unit in which a quantity of the library's unit is printed besides, if another was typed.
    pub(super) fn unit(&self, base: &str) -> Option<&'static Unit> {
        self.units
            .iter()
            .find(|(known, _)| *known == base)
            .map(|(_, unit)| *unit)
            .filter(|unit| !unit.is_base())
    }

    fn note_length(&mut self, argument: &'static str, text: &str, has_unit: bool) {
        if !has_unit {
            return;
        }
        let tape = Tape::of(text);
        self.lengths += 1;
        if self.lengths == 1 {
            (self.tape, self.first) = (tape, argument);
        } else {
            self.mixed |= self.tape.map(|tape| tape.name) != tape.map(|tape| tape.name);
        }
    }
}

/// Reads every argument of `function` from pairs of name and value.
pub(super) fn read(function: &'static Function, pairs: &[(String, String)]) -> Result<Read, Wrong> {
    let names = || function.arguments.iter().map(|argument| argument.name);
    for (name, _) in pairs {
        if !names().any(|known| known == name) {
            let meant = nearest(name, names());
            let meant = meant.map_or_else(String::new, |meant| format!("; is {meant} meant?"));
            let all: Vec<&str> = names().collect();
            return Err(
                Wrong::new(format!("there is no argument {name}{meant}")).with(format!(
                    "{} takes {}.",
                    function.name,
                    all.join(", ")
                )),
            );
        }
    }
    let mut typed = Typed::default();
    let mut values: Vec<Option<Given>> = vec![None; function.arguments.len()];
    // In the order typed: the first length decides how lengths are printed.
    for (name, text) in pairs {
        let places = function.arguments.iter().zip(&mut values);
        for (argument, place) in places.filter(|(argument, _)| argument.name == name) {
            let is_list = matches!(argument.kind, Kind::Numbers | Kind::Counts);
            if place.is_none() && is_list {
                let texts = pairs.iter().filter(|(other, _)| other == name);
                *place = Some(list(
                    argument,
                    texts.map(|(_, text)| text.as_str()),
                    &mut typed,
                )?);
            } else if place.is_none() {
                *place = Some(one(argument, text, &mut typed)?);
            } else if !is_list {
                return Err(Wrong::new(format!("{name} is given twice")));
            }
        }
    }
    let mut read = Read {
        given: Vec::new(),
        typed,
        defaulted: values.iter().map(Option::is_none).collect(),
    };
    let mut missing = Vec::new();
    for (argument, value) in function.arguments.iter().zip(values) {
        let value = value.or_else(|| {
            argument
                .default
                .map(|default| default_value(argument, default))
        });
        match value {
            Some(value) => read.given.push(value),
            None => missing.push(argument),
        }
    }
    if missing.is_empty() {
        return Ok(read);
    }
    let mut wrong = Wrong::new(match missing[..] {
        [one] => format!("{} is missing", one.name),
        _ => format!(
            "{} are missing",
            missing
                .iter()
                .map(|argument| argument.name)
                .collect::<Vec<_>>()
                .join(", ")
        ),
    });
    for argument in missing {
        wrong = wrong.with(wording::argument(argument));
    }
    Err(wrong)
}

fn default_value(argument: &Argument, default: Default) -> Given {
    match default {
        Default::Word(word) => Given::Text(word.to_owned()),
        Default::Number(value) => match argument.kind {
            // A default lies in the range of its argument, which is that of a u32.
            Kind::Count => Given::Count(value as u32),
            _ => Given::Number(value),
        },
    }
}

fn one(argument: &'static Argument, text: &str, typed: &mut Typed) -> Result<Given, Wrong> {
    Ok(match argument.kind {
        Kind::Text => Given::Text(text.to_owned()),
        Kind::Choice(choice) => Given::Text(word(argument, choice, text)?.to_owned()),
        Kind::Count => Given::Count(count(argument, text)?),
        _ => Given::Number(item(argument, text, typed)?.0),
    })
}

/// Items parted by semicolons, else by commas, else by spaces; or the argument given several times.
fn list<'a>(
    argument: &'static Argument,
    values: impl Iterator<Item = &'a str>,
    typed: &mut Typed,
) -> Result<Given, Wrong> {
    let mut texts: Vec<&str> = Vec::new();
    for value in values.filter(|value| !value.is_empty()) {
        let mark = if value.contains(';') { ';' } else { ',' };
        for part in value.split(mark).map(str::trim) {
            let alone = match argument.kind {
                Kind::Counts => count(argument, part).is_ok(),
                _ => item(argument, part, &mut Typed::default()).is_ok(),
            };
            if alone || !part.contains(char::is_whitespace) {
                texts.push(part);
            } else {
                texts.extend(part.split_whitespace());
            }
        }
    }
    if let Kind::Counts = argument.kind {
        let counts: Result<_, Wrong> = texts.iter().map(|text| count(argument, text)).collect();
        return Ok(Given::Counts(counts?));
    }
    let mut with_unit = None;
    let mut numbers = Vec::new();
    for text in texts {
        let (value, has_unit) = item(argument, text, typed)?;
        // 71,5cm would be 71 mm and 5 cm: a comma meant for decimals.
        if *with_unit.get_or_insert(has_unit) != has_unit {
            return Err(Wrong::new(format!("{}: some items have a unit and some have none", argument.name)).with(
                "A comma parts items. Where it marks decimals, part the items by semicolons, in quotes: '71,5cm; 60cm'."
                    .into(),
            ));
        }
        numbers.push(value);
    }
    Ok(Given::Numbers(numbers))
}

/// One number with its unit, in the library's, and whether it had one.
fn item(argument: &'static Argument, text: &str, typed: &mut Typed) -> Result<(f64, bool), Wrong> {
    let name = argument.name;
    if argument.unit == "mm" {
        let (value, has_unit) = length(text).map_err(|what| Wrong::new(format!("{name}{what}")))?;
        typed.note_length(name, text, has_unit);
        typed.comma |= text.contains(',');
        return Ok((value, has_unit));
    }
    let (value, unit) = quantity::quantity(text, argument.unit).map_err(|what| {
        Wrong::new(format!("{name}: {what}")).with(format!(
            "`{text}` was given. {}",
            wording::argument(argument)
        ))
    })?;
    typed.comma |= text.contains(',');
    if let Some(unit) = unit
        && typed.units.iter().all(|(known, _)| *known != argument.unit)
    {
        typed.units.push((argument.unit, unit));
    }
    Ok((value, unit.is_some()))
}

/// A length, and whether it had a unit; without one it is in mm, but for a fraction, which must be meant in inches.
/// What is wrong begins where the argument's name ends.
fn length(text: &str) -> Result<(f64, bool), String> {
    let text = text.replace('\u{2013}', "-");
    let says = |error: recloth::Error| error.to_string().replacen("text", "", 1);
    match tape::parse_length(&text) {
        Ok(value) => Ok((value, true)),
        Err(error) if error.kind() == ErrorKind::NoUnit && is_decimal(&text) => {
            match tape::parse_length(&format!("{text} mm")) {
                Ok(value) => Ok((value, false)),
                Err(error) => Err(says(error)),
            }
        }
        Err(_) if text.trim().is_empty() => Err(": a length is missing".into()),
        Err(error) => Err(says(error)),
    }
}

/// One number without a fraction or a unit: not `45cm 3`, of which only the end has none.
fn is_decimal(text: &str) -> bool {
    let part = |sign: char| sign.is_ascii_digit() || ".,-+eE\u{2212}".contains(sign);
    text.trim().chars().all(part)
}

fn count(argument: &'static Argument, text: &str) -> Result<u32, Wrong> {
    let name = argument.name;
    let value = quantity::number(text)
        .map_err(|what| Wrong::new(format!("{name}: {what}")).with(wording::argument(argument)))?;
    let fits = value >= 0.0 && value <= f64::from(u32::MAX);
    if !value.is_finite() || value != value.floor() {
        Err(
            Wrong::new(format!("{name} = {value} is not a whole number"))
                .with(wording::argument(argument)),
        )
    } else if !fits {
        let range = argument.range.map_or_else(String::new, |[low, high]| {
            format!(" between {low} and {high}")
        });
        Err(Wrong::new(format!("{name} = {value} is not{range}")).with(wording::argument(argument)))
    } else {
        Ok(value as u32)
    }
}

fn word(
    argument: &'static Argument,
    choice: &'static Choice,
    text: &str,
) -> Result<&'static str, Wrong> {
    let tidy = text.trim().to_lowercase().replace([' ', '-'], "_");
    let words = || choice.variants.iter().map(|variant| variant.word);
    words().find(|word| *word == tidy).ok_or_else(|| {
        let meant = nearest(&tidy, words());
        let meant = meant.map_or_else(String::new, |meant| format!("; is {meant} meant?"));
        let mut wrong = Wrong::new(format!(
            "{}: `{text}` is not one of the choices{meant}",
            argument.name
        ));
        for variant in choice.variants {
            wrong = wrong.with(format!("{}: {}", variant.word, variant.meaning));
        }
        wrong
    })
}
