//! The functions of numbers, lists and texts of one file of the core, as their descriptions say them.

use arbitrary::Result;
use recloth::{Error, ErrorKind};
use recloth_table::{Argument, FUNCTIONS, Function, Given, Got, Items, Kind};

use crate::input::Input;

/// Calls one function of a module with anything its arguments can be given, and holds the answer against its description.
pub(crate) fn target(module: &str, input: &mut Input) -> Result<()> {
    let functions: Vec<&Function> = FUNCTIONS.iter().filter(|f| f.module == module).collect();
    assert!(!functions.is_empty(), "no target {module}");
    let function = functions[input.index(functions.len())?];
    let mut given: Vec<Given> = Vec::new();
    for (argument, example) in function.arguments.iter().zip(function.example) {
        let value = value(function, argument, example, &given, input)?;
        given.push(value);
    }
    let (Some(answer), Some(again)) = (function.call(&given), function.call(&given)) else {
        return Ok(());
    };
    let told = || format!("{}({given:?}) gives {answer:?}", function.name);
    assert_eq!(bits(&answer), bits(&again), "twice: {}", told());
    match &answer {
        Ok(answers) => {
            for got in answers {
                match got {
                    Got::Number(number) => assert!(number.is_finite(), "{}", told()),
                    Got::Numbers(numbers) => {
                        assert!(numbers.iter().all(|n| n.is_finite()), "{}", told());
                    }
                    Got::Whole(whole) => assert!(*whole < 1 << 53, "{}", told()),
                    Got::Text(text) => assert!(!text.is_empty(), "{}", told()),
                }
            }
            assert_eq!(first_bad(function, &given), None, "{}", told());
        }
        Err(error) => {
            let named = |argument: &&Argument| argument.name == error.argument();
            assert!(function.arguments.iter().any(|a| named(&a)), "{}", told());
            assert!(!error.to_string().is_empty(), "{}", told());
            // A text is read where it stands among the arguments; what else it must be, no table says.
            if !function
                .arguments
                .iter()
                .any(|a| matches!(a.kind, Kind::Text))
            {
                let kind = ErrorKind::NotFinite;
                let alone = [kind, ErrorKind::OutOfRange, ErrorKind::Count].contains(&error.kind());
                let found = alone.then(|| (error.argument(), error.kind(), error.at()));
                let bad = first_bad(function, &given);
                if bad.is_some() || error.kind() == kind {
                    assert_eq!(found, bad, "{}", told());
                }
            }
        }
    }
    Ok(())
}

fn bits(answer: &std::result::Result<Vec<Got>, Error>) -> Vec<String> {
    let number = |number: &f64| format!("{:x}", number.to_bits());
    match answer {
        Ok(answers) => answers
            .iter()
            .map(|got| match got {
                Got::Number(value) => number(value),
                Got::Whole(value) => value.to_string(),
                Got::Text(text) => text.clone(),
                Got::Numbers(values) => values.iter().map(number).collect(),
            })
            .collect(),
        Err(error) => vec![format!("{error:?}")],
    }
}

/// The first argument that is wrong by itself, in the order of the table: what the core must say, whatever follows.
fn first_bad(
    function: &Function,
    given: &[Given],
) -> Option<(&'static str, ErrorKind, Option<u32>)> {
    let pairs = || function.arguments.iter().zip(given);
    let length_of = |name: &str| {
        let (_, value) = pairs().find(|(argument, _)| argument.name == name)?;
        Some(items(value))
    };
    pairs().find_map(|(argument, value)| {
        let allowed = match argument.items {
            Some(Items::Between(least, most)) => least as usize..=most as usize,
            Some(Items::As(other)) => length_of(other)?..=length_of(other)?,
            None => 0..=usize::MAX,
        };
        let wrong = |kind| Some((argument.name, kind, None));
        match value {
            Given::Number(number) => wrong(bad(argument, *number)?),
            Given::Count(count) => wrong(bad(argument, f64::from(*count))?),
            Given::Text(_) => None,
            _ if !allowed.contains(&items(value)) => wrong(ErrorKind::Count),
            Given::Numbers(numbers) => first(argument, numbers.iter().copied()),
            Given::Counts(counts) => first(argument, counts.iter().copied().map(f64::from)),
        }
    })
}

fn first(
    argument: &Argument,
    mut values: impl Iterator<Item = f64>,
) -> Option<(&'static str, ErrorKind, Option<u32>)> {
    let at = |(index, value)| Some((argument.name, bad(argument, value)?, Some(index)));
    (0..).zip(&mut values).find_map(at)
}

fn bad(argument: &Argument, number: f64) -> Option<ErrorKind> {
    let [low, high] = argument.range?;
    if !number.is_finite() {
        Some(ErrorKind::NotFinite)
    } else if (low..=high).contains(&number) {
        None
    } else {
        Some(ErrorKind::OutOfRange)
    }
}

fn items(value: &Given) -> usize {
    match value {
        Given::Numbers(numbers) => numbers.len(),
        Given::Counts(counts) => counts.len(),
        _ => 1,
    }
}

fn value(
    function: &Function,
    argument: &Argument,
    example: &str,
    before: &[Given],
    input: &mut Input,
) -> Result<Given> {
    let example = Given::read(argument.kind, example);
    if input.once_in(3)?
        && let Some(example) = &example
    {
        return Ok(example.clone());
    }
    let range = argument.range.unwrap_or([0.0, 1e6]);
    let near: Vec<f64> = before.iter().flat_map(numbers).collect();
    let count = |input: &mut Input| -> Result<u32> {
        Ok(match input.index(8)? {
            0 => range[0] as u32,
            1 => range[1] as u32,
            2 => (range[1] as u32).saturating_add(1),
            3 => (range[0] as u32).saturating_sub(1),
            4 => u32::MAX,
            _ => input.number(range, &near)? as u32,
        })
    };
    let length = |input: &mut Input| -> Result<usize> {
        Ok(match argument.items {
            _ if input.once_in(10)? => input.index(70)?,
            Some(Items::As(other)) => function
                .arguments
                .iter()
                .position(|argument| argument.name == other)
                .and_then(|index| before.get(index))
                .map_or(0, items),
            Some(Items::Between(least, most)) => {
                let least = least as usize;
                match input.index(8)? {
                    0 => least,
                    1 => least.saturating_sub(1),
                    2 if most <= 1000 => most as usize,
                    3 if most <= 1000 => most as usize + 1,
                    _ => least + input.index(12)?,
                }
            }
            None => 1,
        })
    };
    Ok(match argument.kind {
        Kind::Number => Given::Number(input.number(range, &near)?),
        Kind::Count => Given::Count(count(input)?),
        Kind::Text => {
            let like = match &example {
                Some(Given::Text(text)) => text,
                _ => "",
            };
            Given::Text(input.text(like)?)
        }
        Kind::Choice(choice) => {
            let variant = input.index(choice.variants.len())?;
            Given::Text(choice.variants[variant].word.to_owned())
        }
        Kind::Numbers => {
            let count = length(input)?;
            let number = |_| input.number(range, &near);
            Given::Numbers((0..count).map(number).collect::<Result<_>>()?)
        }
        Kind::Counts => {
            let length = length(input)?;
            Given::Counts((0..length).map(|_| count(input)).collect::<Result<_>>()?)
        }
    })
}

fn numbers(given: &Given) -> Vec<f64> {
    match given {
        Given::Number(number) => vec![*number],
        Given::Numbers(numbers) => numbers.clone(),
        _ => Vec::new(),
    }
}
