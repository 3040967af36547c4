//! Arguments and bits in words.

use recloth::doubt::{CAUTIONS, DOUBTS};
use recloth_table::{Argument, Default, Items, Kind};

use super::quantity::plain as digits;

/// `waist: finished waist edge, ease included (a length, 1 to 100000 mm)`.
pub(super) fn argument(argument: &Argument) -> String {
    format!(
        "{}: {} ({})",
        argument.name,
        argument.meaning,
        kind(argument)
    )
}

/// What is to be given: kind, unit, range and conditions.
pub(super) fn kind(argument: &Argument) -> String {
    let one = match (argument.kind, argument.unit) {
        (Kind::Text, _) => return "a text".into(),
        (Kind::Choice(choice), _) => {
            let words: Vec<&str> = choice.variants.iter().map(|variant| variant.word).collect();
            return format!("one of {}", words.join(", "));
        }
        (Kind::Count | Kind::Counts, _) => "whole number",
        (_, "mm") => "length",
        (_, "g") => "mass",
        (_, "ml") => "volume",
        (_, "min") => "time",
        (_, "degC") => "temperature",
        (_, "deg") => "angle",
        (_, "%") => "percentage",
        (_, "gsm") => "mass of a square metre",
        _ => "number",
    };
    let mut words = vec![match argument.kind {
        Kind::Numbers | Kind::Counts => format!("a list of {}", many(one)),
        _ => format!("a{} {one}", if one.starts_with('a') { "n" } else { "" }),
    }];
    if let Some([low, high]) = argument.range {
        let unit = shown_unit(argument.unit);
        words.push(format!(
            "{} to {}{unit}",
            digits(low, 2, false),
            digits(high, 2, false)
        ));
    }
    words.extend(argument.conditions.iter().map(|condition| {
        let (sign, other) = condition.split_once(' ').unwrap_or(("", condition));
        let sign = match sign {
            "<" => "less than",
            "<=" => "not more than",
            ">" => "more than",
            ">=" => "not less than",
            other => other,
        };
        format!("{sign} {other}")
    }));
    match argument.items {
        Some(Items::Between(least, most)) if least == most => {
            words.push(format!("{least} of them"))
        }
        Some(Items::Between(least, most)) => words.push(format!("{least} to {most} of them")),
        Some(Items::As(other)) => words.push(format!("as many as {other}")),
        None => {}
    }
    words.join(", ")
}

fn many(one: &str) -> String {
    match one {
        "mass" => "masses".into(),
        "mass of a square metre" => "masses of a square metre".into(),
        _ => format!("{one}s"),
    }
}

/// A unit behind a number, with the space before it; nothing for a plain number.
pub(super) fn shown_unit(unit: &str) -> String {
    match unit {
        "1" | "count" | "text" | "choice" | "bits" => String::new(),
        "deg" => "°".into(),
        "degC" => " °C".into(),
        "mm2" => " mm²".into(),
        unit => format!(" {unit}"),
    }
}

/// What is taken when the argument is not given; nothing where it must be.
pub(super) fn default(argument: &Argument) -> Option<String> {
    argument.default.map(|default| match default {
        Default::Number(value) => {
            format!("{}{}", digits(value, 2, false), shown_unit(argument.unit))
        }
        Default::Word(word) => word.to_owned(),
    })
}

/// The sentences of a set of bits: cautions where its name says so, else doubts.
pub(super) fn sentences(name: &str, set: u64) -> Vec<&'static str> {
    let bits = if name == "cautions" { CAUTIONS } else { DOUBTS };
    bits.iter()
        .filter(|bit| set & bit.bit != 0)
        .map(|bit| bit.text)
        .collect()
}

/// Without the marks of a doc comment: backquotes, emphasis, links within the documentation.
pub(super) fn plain(text: &str) -> String {
    text.replace("[`", "")
        .replace("`]", "")
        .replace(['`', '*'], "")
}
