//! Values as they are passed by name: what a function is given, and what it gives.

use crate::Kind;

/// One argument.
#[derive(Clone, Debug, PartialEq)]
pub enum Given {
    /// A number.
    Number(f64),
    /// A count.
    Count(u32),
    /// A text, or the word of a choice.
    Text(String),
    /// A list of numbers.
    Numbers(Vec<f64>),
    /// A list of counts.
    Counts(Vec<u32>),
}

/// One answer.
#[derive(Clone, Debug, PartialEq)]
pub enum Got {
    /// A number.
    Number(f64),
    /// A count or a set of bits.
    Whole(u64),
    /// A text.
    Text(String),
    /// A list of numbers.
    Numbers(Vec<f64>),
}

impl Given {
    /// Reads plain text, as check values have it: decimal numbers with a point, items of a list parted by spaces.
    pub fn read(kind: Kind, text: &str) -> Option<Given> {
        let words = text.split_whitespace();
        Some(match kind {
            Kind::Number => Given::Number(text.parse().ok()?),
            Kind::Count => Given::Count(text.parse().ok()?),
            Kind::Text => Given::Text(text.to_owned()),
            Kind::Choice(choice) => {
                let variant = choice
                    .variants
                    .iter()
                    .find(|variant| variant.word == text)?;
                Given::Text(variant.word.to_owned())
            }
            Kind::Numbers => Given::Numbers(words.map(str::parse).collect::<Result<_, _>>().ok()?),
            Kind::Counts => Given::Counts(words.map(str::parse).collect::<Result<_, _>>().ok()?),
        })
    }

    /// Whether this can be given for an argument of that kind.
    pub(crate) fn is(&self, kind: Kind) -> bool {
        match (self, kind) {
            (Given::Number(_), Kind::Number)
            | (Given::Count(_), Kind::Count)
            | (Given::Text(_), Kind::Text)
            | (Given::Numbers(_), Kind::Numbers)
            | (Given::Counts(_), Kind::Counts) => true,
            (Given::Text(word), Kind::Choice(choice)) => {
                choice.variants.iter().any(|variant| variant.word == word)
            }
            _ => false,
        }
    }

    // What the generated calls read, once `is` has said yes for every argument: the other arms are never taken.

    pub(crate) fn number(&self) -> f64 {
        match self {
            Given::Number(value) => *value,
            _ => f64::NAN,
        }
    }

    pub(crate) fn count(&self) -> u32 {
        match self {
            Given::Count(value) => *value,
            _ => 0,
        }
    }

    pub(crate) fn text(&self) -> &str {
        match self {
            Given::Text(text) => text,
            _ => "",
        }
    }

    pub(crate) fn numbers(&self) -> &[f64] {
        match self {
            Given::Numbers(values) => values,
            _ => &[],
        }
    }

    pub(crate) fn counts(&self) -> &[u32] {
        match self {
            Given::Counts(values) => values,
            _ => &[],
        }
    }

    /// Room for a list to fill that has `plus` items more than this one, or than this count says. A count beyond `most`
    /// is out of range and fills nothing.
    pub(crate) fn room(&self, plus: isize, most: u32) -> Vec<f64> {
        let count = match self {
            Given::Numbers(values) => values.len(),
            Given::Counts(values) => values.len(),
            Given::Count(count) if *count <= most => *count as usize,
            _ => 0,
        };
        vec![0.0; count.saturating_add_signed(plus)]
    }
}
