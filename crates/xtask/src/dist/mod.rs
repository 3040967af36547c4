//! `cargo xtask dist`: what is handed out, made below `target/dist` and tried as those who get it would.

use std::{path::Path, time::Instant};

use crate::test::run::{Context, Count};

mod packages;
mod prefix;
mod python;

type Part = (&'static str, fn(&Context) -> Result<Count, String>);

const PARTS: &[Part] = &[
    ("crates", packages::whole),
    ("c", prefix::whole),
    ("python", python::whole),
];

/// Makes and tries the parts named, or all.
pub(crate) fn dist(root: &Path, wanted: &[&str]) -> Result<(), String> {
    let known: Vec<&str> = PARTS.iter().map(|(name, _)| *name).collect();
    if let Some(unknown) = wanted.iter().find(|name| !known.contains(name)) {
        return Err(format!("no part {unknown}; there are {}", known.join(", ")));
    }
    let context = Context::new(root)?;
    let mut total = Count::default();
    for (name, part) in PARTS {
        if wanted.is_empty() || wanted.contains(name) {
            let begun = Instant::now();
            println!("== {name}");
            total = total + part(&context)?;
            println!("== {name}: {:.0} s", begun.elapsed().as_secs_f64());
        }
    }
    println!(
        "{} passed, {} failed, {} skipped",
        total.passed, total.failed, total.skipped
    );
    if total.failed > 0 || total.skipped > 0 {
        return Err("not everything could be made and tried".into());
    }
    Ok(())
}

/// The quick parts: what the packages hold, a C prefix of the library the tests use, and one wheel in one new environment.
pub(crate) fn tests(context: &Context) -> Result<Count, String> {
    Ok(packages::quick(context)? + prefix::quick(context)? + python::quick(context)?)
}
