//! Every function of `recloth` by its name: described, and called with plain values.
//!
//! For programs that learn only when they run which function is wanted, as a command line does. The table is generated
//! from the same doc comments as every door.
//!
//! ```
//! use recloth_table::{Given, Got, find};
//! let function = find("circle_skirt").ok_or("no such function")?;
//! assert_eq!(function.arguments[0].unit, "mm");
//! let given = [710.0, 600.0, 0.5].map(Given::Number);
//! let answers = function.call(&given).ok_or("three numbers")??;
//! assert!(matches!(answers[0], Got::Number(radius) if (radius - 226.0).abs() < 0.01));
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```
#![forbid(unsafe_code)]

mod function;
#[rustfmt::skip]
mod generated;
mod value;

pub use function::{Answer, Argument, Choice, Default, Function, Items, Kind, Module, Variant};
pub use generated::{FUNCTIONS, MODULES, SHAPES};
pub use value::{Given, Got};

/// The function of this name.
pub fn find(name: &str) -> Option<&'static Function> {
    FUNCTIONS.iter().find(|function| function.name == name)
}

#[cfg(test)]
mod tests {
    use super::{FUNCTIONS, Given, Kind, MODULES, find};

    #[test]
    fn a_call_with_values_of_another_kind_gives_nothing() {
        let function = find("circle_skirt").unwrap();
        let number = Given::Number(1.0);
        assert!(function.call(&[]).is_none());
        assert!(function.call(&[number.clone(), number.clone()]).is_none());
        let text = Given::Text("1".into());
        assert!(function.call(&[number.clone(), number, text]).is_none());
        assert!(find("no_such_function").is_none());
        let style = |word: &str| [Given::Number(584.0), Given::Text(word.into())];
        let format = find("format_length").unwrap();
        assert!(format.call(&style("cm")).unwrap().is_ok());
        assert!(format.call(&style("furlong")).is_none());
    }

    #[test]
    fn every_function_has_its_module_and_an_example_of_its_kinds() {
        assert!(FUNCTIONS.len() > 100);
        for function in FUNCTIONS {
            assert!(
                MODULES.iter().any(|module| module.name == function.module),
                "{}",
                function.name
            );
            assert_eq!(function.arguments.len(), function.example.len());
            for (argument, cell) in function.arguments.iter().zip(function.example) {
                let given = Given::read(argument.kind, cell);
                assert!(given.is_some(), "{}: {}", function.name, argument.name);
                assert!(
                    !matches!(argument.kind, Kind::Choice(choice) if choice.variants.is_empty())
                );
            }
        }
    }
}
