//! A function as its doc comment describes it.

use recloth::Error;

use crate::{Given, Got};

/// A file of the core: functions of one concept.
#[derive(Clone, Copy, Debug)]
pub struct Module {
    /// Its name in Rust.
    pub name: &'static str,
    /// What it is about, in one sentence.
    pub summary: &'static str,
}

/// One function.
#[derive(Clone, Copy, Debug)]
pub struct Function {
    /// Its name, the same in every language.
    pub name: &'static str,
    /// The module it is in.
    pub module: &'static str,
    /// What it answers, in one sentence.
    pub summary: &'static str,
    /// The formula, and what else there is to know; may be empty.
    pub description: &'static str,
    /// What it is given, in order.
    pub arguments: &'static [Argument],
    /// What it answers, in order.
    pub answers: &'static [Answer],
    /// Which errors it gives.
    pub errors: &'static str,
    /// Where formula and habits come from.
    pub source: &'static str,
    /// Arguments that have an answer, as [`Given::read`] reads them: the first row of its check values.
    pub example: &'static [&'static str],
    pub(crate) call: fn(&[Given]) -> Result<Vec<Got>, Error>,
}

impl Function {
    /// Its answers, in order, or the core's error; None when the values are not one of the right kind for each argument.
    pub fn call(&self, given: &[Given]) -> Option<Result<Vec<Got>, Error>> {
        let mut pairs = self.arguments.iter().zip(given);
        (self.arguments.len() == given.len()
            && pairs.all(|(argument, value)| value.is(argument.kind)))
        .then(|| (self.call)(given))
    }
}

/// One argument.
#[derive(Clone, Copy, Debug)]
pub struct Argument {
    /// Its name, the same in every language.
    pub name: &'static str,
    /// What is given for it.
    pub kind: Kind,
    /// Its unit: `mm`, `deg`, `%`, `g`, `gsm`, `ml`, `min`, `degC`; `1` for a plain ratio, `count`, `text`, `choice`.
    pub unit: &'static str,
    /// Least and largest value, both allowed; of each item in a list.
    pub range: Option<[f64; 2]>,
    /// Conditions between arguments, as `< waist`.
    pub conditions: &'static [&'static str],
    /// How many items, of a list.
    pub items: Option<Items>,
    /// What is taken when nothing is given.
    pub default: Option<Default>,
    /// What it means.
    pub meaning: &'static str,
}

/// What is given for an argument.
#[derive(Clone, Copy, Debug)]
pub enum Kind {
    /// A number.
    Number,
    /// A whole number from 0.
    Count,
    /// A text.
    Text,
    /// The word of one variant.
    Choice(&'static Choice),
    /// A list of numbers.
    Numbers,
    /// A list of whole numbers from 0.
    Counts,
}

/// How many items a list has.
#[derive(Clone, Copy, Debug)]
pub enum Items {
    /// From so many to so many.
    Between(u32, u32),
    /// As many as this other list.
    As(&'static str),
}

/// What is taken for an argument that is not given.
#[derive(Clone, Copy, Debug)]
pub enum Default {
    /// A number or a count.
    Number(f64),
    /// The word of a choice.
    Word(&'static str),
}

/// A closed list of choices.
#[derive(Clone, Copy, Debug)]
pub struct Choice {
    /// Its name in Rust.
    pub name: &'static str,
    /// What is chosen.
    pub summary: &'static str,
    /// The choices, in order of number.
    pub variants: &'static [Variant],
}

/// One choice.
#[derive(Clone, Copy, Debug)]
pub struct Variant {
    /// The word for it.
    pub word: &'static str,
    /// What it means.
    pub meaning: &'static str,
}

/// One part of an answer.
#[derive(Clone, Copy, Debug)]
pub struct Answer {
    /// Its name, the same in every language; `value` where there is but one number or text.
    pub name: &'static str,
    /// Its unit, as for an argument, or `mm2`, `tex`, or `bits` for a set of doubts or cautions.
    pub unit: &'static str,
    /// What it means.
    pub meaning: &'static str,
}
