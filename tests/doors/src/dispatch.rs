//! Written by `cargo xtask generate` from the doc comments of the core; do not edit.
use crate::value::{Given, Got, room};
use recloth::Error;
fn circle_skirt(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer =
        recloth::skirt::circle_skirt(given[0].number(), given[1].number(), given[2].number())?;
    Ok(vec![
        Got::Number(answer.waist_radius),
        Got::Number(answer.hem_radius),
        Got::Number(answer.hem_length),
    ])
}
/// Calls a function by its name; None when there is no such function.
pub fn call(name: &str, given: &[Given]) -> Option<Result<Vec<Got>, Error>> {
    Some(match name {
        "circle_skirt" => circle_skirt(given),
        _ => return None,
    })
}
