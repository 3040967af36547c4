//! The range of every argument, as the description states it, tested from the base row of its CSV.
#![allow(clippy::print_stdout, reason = "a test says how much it tested")]

use recloth_doors::boundaries;

#[test]
fn every_range_is_as_described() {
    let calls = boundaries::calls();
    assert!(!calls.is_empty(), "no calls were made");
    let failures: Vec<String> = calls.iter().filter_map(boundaries::Call::failure).collect();
    assert!(
        failures.is_empty(),
        "{} of {}:\n{}",
        failures.len(),
        calls.len(),
        failures.join("\n")
    );
    println!("{} calls at and past the ends of ranges", calls.len());
}
