//! The same calls through Rust, C and Python: every answer equal bit for bit.

use std::{collections::BTreeMap, fs, path::Path};

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
    let count = count + lays(context)?;
    let met = output(&mut context.cargo("run --quiet -p recloth-doors -- references"))?;
    print!("{met}");
    Ok(count)
}

/// The jobs of `tests/doors/lays` through all three, cloth by the length with several numbers of threads.
fn lays(context: &Context) -> Result<Count, String> {
    let rust = output(&mut context.cargo("run --quiet -p recloth-doors -- lays"))?;
    let reference = Reference {
        answers: lines("Rust", &rust)?,
    };
    let folder = context.root.join("tests/doors/lays");
    let mut c = context.command(c::lay_jobs(context)?, [""; 0]);
    for entry in fs::read_dir(&folder).map_err(|error| error.to_string())? {
        c.arg(entry.map_err(|error| error.to_string())?.path());
    }
    let mut python = context.command(context.python()?, ["tests/doors/lays.py"]);
    python.arg(&folder).env("PYTHONDONTWRITEBYTECODE", "1");
    let count = reference.compare("C", &output(&mut c)?)?
        + reference.compare("Python", &output(&mut python)?)?;
    Ok(count + reference.same_for_all_threads())
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

    /// Lays of one job by different numbers of threads, `NAME-1` and `NAME-2`, are the same.
    fn same_for_all_threads(&self) -> Count {
        let mut count = Count::default();
        for (call, answer) in &self.answers {
            let Some(alone) = call.rsplit_once('-').map(|(job, _)| format!("{job}-1")) else {
                continue;
            };
            match self.answers.get(&alone) {
                Some(other) if other == answer => count = count + Count::passed(1),
                Some(_) => {
                    count.failed += 1;
                    println!("{call}: not the lay of one thread");
                }
                None => {}
            }
        }
        count
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
