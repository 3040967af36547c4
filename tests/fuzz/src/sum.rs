//! One function of the library from words as they are typed.

use arbitrary::Result;
use recloth_table::FUNCTIONS;

use crate::input::Input;

pub(crate) fn target(input: &mut Input) -> Result<()> {
    let function = &FUNCTIONS[input.index(FUNCTIONS.len())?];
    let mut words = vec![input.text(function.name)?];
    for (argument, example) in function.arguments.iter().zip(function.example) {
        let unit = if input.once_in(2)? { argument.unit } else { "" };
        let like = format!("{}={example}{unit}", argument.name);
        words.push(input.text(&like)?);
    }
    if input.once_in(8)? {
        words.push("--json".into());
    }
    let width = input.0.int_in_range(0..=120)?;
    let told = recloth_plan::sum::sum(&words, width);
    assert!([0, 2].contains(&told.code), "{words:?}: {}", told.code);
    let (none, said) = if told.code == 0 {
        (&told.err, &told.out)
    } else {
        (&told.out, &told.err)
    };
    // With --json an error is told as an answer is.
    let json = words.iter().any(|word| word == "--json");
    assert!(json || none.is_empty() && !said.is_empty(), "{words:?}");
    Ok(())
}
