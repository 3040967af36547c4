//! The same calls through Rust, C and Python: every answer equal bit for bit.

use std::{collections::BTreeMap, fs};

use super::{
    c, python,
    run::{Context, Count, output, quiet},
};

pub(crate) fn tests(context: &Context) -> Result<Count, String> {
    let folder = context.fresh("doors")?;
    let calls = folder.join("calls");
    let mut command = context.cargo("run --quiet -p recloth-doors -- calls");
    quiet({
        command.arg(&calls);
        command
    })?;
    let rust = output(&mut context.cargo("run --quiet -p recloth-doors -- answers"))?;
    let program = c::vectors(context)?;
    let c = output(
        context
            .command(program, ["answers", "tests/vectors"])
            .arg(&calls),
    )?;
    python::package(context)?;
    let python = output(
        context
            .command(
                context.python()?,
                ["tests/doors/answers.py", "tests/vectors"],
            )
            .arg(&calls)
            .env("PYTHONDONTWRITEBYTECODE", "1"),
    )?;
    let rust = lines("Rust", &rust)?;
    let mut failed = 0;
    for (door, answers) in [
        ("C", lines("C", &c)?),
        ("Python", lines("Python", &python)?),
    ] {
        for (call, answer) in &rust {
            let other = answers.get(call);
            if other != Some(answer) {
                failed += 1;
                let other = other.map_or("nothing", |other| other);
                println!("{call}: Rust gives {answer}, {door} gives {other}");
            }
        }
        if answers.len() != rust.len() {
            return Err(format!(
                "{} calls through Rust, {} through {door}",
                rust.len(),
                answers.len()
            ));
        }
    }
    fs::write(
        folder.join("rust.txt"),
        rust.values().cloned().collect::<Vec<_>>().join("\n"),
    )
    .map_err(|error| error.to_string())?;
    println!("{} calls through Rust, C and Python", rust.len());
    Ok(Count {
        passed: 2 * rust.len() as u32 - failed,
        failed,
        skipped: 0,
    })
}

/// `function, id` -> answer.
fn lines(door: &str, text: &str) -> Result<BTreeMap<String, String>, String> {
    let mut answers = BTreeMap::new();
    for line in text.lines() {
        let mut words = line.splitn(3, '\t');
        let (Some(name), Some(id), Some(answer)) = (words.next(), words.next(), words.next())
        else {
            return Err(format!("{door} printed `{line}`"));
        };
        if answers
            .insert(format!("{name} {id}"), answer.to_owned())
            .is_some()
        {
            return Err(format!("{door} answered {name} {id} twice"));
        }
    }
    if answers.is_empty() {
        return Err(format!("{door} answered nothing"));
    }
    Ok(answers)
}
