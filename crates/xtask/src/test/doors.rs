//! The same calls through Rust, C and Python: every answer equal bit for bit.

use std::{collections::BTreeMap, path::Path};

use super::{
    c, python,
    run::{Context, Count, output, quiet},
};

pub(crate) fn tests(context: &Context) -> Result<Count, String> {
    let folder = context.fresh("doors")?;
    let calls = folder.join("calls");
    let reference = Reference::new(context, &calls)?;
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
    let count = reference.compare("C", &c)? + reference.compare("Python", &python)?;
    let met = output(&mut context.cargo("run --quiet -p recloth-doors -- references"))?;
    print!("{met}");
    Ok(count)
}

/// What Rust answers on this machine to every call.
pub(crate) struct Reference {
    answers: BTreeMap<String, String>,
}

impl Reference {
    /// Writes the calls that are not in `tests/vectors` to a folder, and answers them and those.
    pub(crate) fn new(context: &Context, calls: &Path) -> Result<Reference, String> {
        let mut command = context.cargo("run --quiet -p recloth-doors -- calls");
        command.arg(calls);
        quiet(command)?;
        let rust = output(&mut context.cargo("run --quiet -p recloth-doors -- answers"))?;
        let answers = lines("Rust", &rust)?;
        println!("{} calls through Rust", answers.len());
        Ok(Reference { answers })
    }

    /// Compares what another door or machine printed, bit for bit.
    pub(crate) fn compare(&self, door: &str, printed: &str) -> Result<Count, String> {
        let others = lines(door, printed)?;
        let mut failed = 0;
        for (call, answer) in &self.answers {
            let other = others.get(call);
            if other != Some(answer) {
                failed += 1;
                let other = other.map_or("nothing", |other| other);
                println!("{call}: Rust gives {answer}, {door} gives {other}");
            }
        }
        let calls = self.answers.len();
        if others.len() != calls {
            let others = others.len();
            return Err(format!("{calls} calls through Rust, {others} by {door}"));
        }
        println!(
            "{door}: {} of {calls} answers are the same",
            calls as u32 - failed
        );
        Ok(Count {
            passed: calls as u32 - failed,
            failed,
            skipped: 0,
        })
    }
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
