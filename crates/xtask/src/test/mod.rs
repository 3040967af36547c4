//! `cargo xtask test`: every test of the project, with what they need set up below `target/`.

use std::{path::Path, time::Instant};

pub(crate) mod c;
mod deny;
pub(crate) mod device;
mod doors;
pub(crate) mod fuzz;
mod machines;
pub(crate) mod nightly;
pub(crate) mod python;
pub(crate) mod run;
mod rust;

use run::{Context, Count};

use crate::dist;

type Section = (&'static str, fn(&Context) -> Result<Count, String>);

/// In the order in which a fault is best found: quick and general first.
const SECTIONS: &[Section] = &[
    ("generated", rust::generated),
    ("format", rust::format),
    ("clippy", rust::clippy),
    ("rust", rust::tests),
    ("features", rust::features),
    ("deny", deny::tests),
    ("miri", nightly::miri),
    ("documentation", rust::documentation),
    ("c", c::tests),
    ("device", device::tests),
    ("python", python::tests),
    ("stubs", python::stubs),
    ("doors", doors::tests),
    ("machines", machines::tests),
    ("oracles", python::oracles),
    ("book", python::book),
    ("demo", rust::demo),
    ("dist", dist::tests),
    ("fuzz", fuzz::tests),
];

/// Runs the sections named, or all; prints a line and its time a section, and totals.
pub(crate) fn test(root: &Path, wanted: &[&str]) -> Result<(), String> {
    let known: Vec<&str> = SECTIONS.iter().map(|(name, _)| *name).collect();
    if let Some(unknown) = wanted.iter().find(|name| !known.contains(name)) {
        return Err(format!(
            "no section {unknown}; there are {}",
            known.join(", ")
        ));
    }
    let context = Context::new(root)?;
    let start = Instant::now();
    let (mut total, mut failed_sections) = (Count::default(), Vec::new());
    for (name, section) in SECTIONS {
        if !wanted.is_empty() && !wanted.contains(name) {
            continue;
        }
        let begun = Instant::now();
        println!("== {name}");
        let (count, state) = match section(&context) {
            Ok(count) if count.failed > 0 => (count, "FAILED".to_owned()),
            Ok(count) if count == Count::default() => {
                let count = Count { failed: 1, ..count };
                (count, "FAILED: nothing was run".to_owned())
            }
            Ok(count) if count.skipped > 0 && context.ci => {
                let count = Count {
                    failed: count.failed + 1,
                    ..count
                };
                (count, "FAILED: nothing may be skipped under CI".to_owned())
            }
            Ok(count) => (count, "ok".to_owned()),
            Err(message) => (
                Count {
                    failed: 1,
                    ..Count::default()
                },
                format!("FAILED: {message}"),
            ),
        };
        if count.failed > 0 {
            failed_sections.push(*name);
        }
        println!(
            "== {name}: {} passed, {} failed, {} skipped in {:.1} s: {state}",
            count.passed,
            count.failed,
            count.skipped,
            begun.elapsed().as_secs_f64()
        );
        total = total + count;
    }
    println!("\nall sections in {:.0} s", start.elapsed().as_secs_f64());
    println!(
        "{} passed, {} failed, {} skipped",
        total.passed, total.failed, total.skipped
    );
    if failed_sections.is_empty() {
        Ok(())
    } else {
        Err(format!("failed: {}", failed_sections.join(", ")))
    }
}
