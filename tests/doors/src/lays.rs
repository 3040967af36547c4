//! Lays: the jobs of `tests/doors/lays` through Rust.

use std::{error::Error, fs, path::PathBuf};

use recloth_lay::{Options, Panel, Part, Strip, StripOptions, fit, strip};
use serde_json::{Value, json};

/// How many threads each lay by the length is worked out with: the answer must not depend on it.
pub const THREADS: [usize; 3] = [1, 2, 7];

/// The files of jobs in the order of their names, each with its name.
fn jobs() -> Result<Vec<(String, Value)>, Box<dyn Error>> {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("lays");
    let mut jobs = Vec::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        let name = path.file_stem().ok_or("a file without a name")?;
        let name = name.to_string_lossy().into_owned();
        jobs.push((name, serde_json::from_str(&fs::read_to_string(&path)?)?));
    }
    jobs.sort_by(|one, other| one.0.cmp(&other.0));
    Ok(jobs)
}

/// A line a job and number of threads: `fit` or `strip`, the job's name, what comes out.
///
/// # Errors
/// A job that cannot be read.
pub fn lines() -> Result<Vec<String>, Box<dyn Error>> {
    let mut lines = Vec::new();
    for (name, job) in jobs()? {
        let parts: Vec<Part> = serde_json::from_value(job["parts"].clone())?;
        if let Some(panels) = job.get("panels") {
            let panels: Vec<Panel> = serde_json::from_value(panels.clone())?;
            let options = job.get("options").cloned().unwrap_or_else(|| json!({}));
            let options: Options = serde_json::from_value(options)?;
            let fit = fit(&parts, &panels, &options);
            let told = told(fit, |fit| {
                ordered(&parts, ("panels", &panels), ("fit", &fit))
            })?;
            lines.push(format!("fit\t{name}\t{told}"));
            continue;
        }
        let cloth: Strip = serde_json::from_value(job["strip"].clone())?;
        let options: StripOptions = serde_json::from_value(job["options"].clone())?;
        for threads in THREADS {
            let found = strip(&parts, &cloth, &StripOptions { threads, ..options });
            let told = told(found, |found| {
                ordered(&parts, ("strip", &cloth), ("found", &found))
            })?;
            lines.push(format!("strip\t{name}-{threads}\t{told}"));
        }
    }
    Ok(lines)
}

/// The answer, or the status and the argument at fault.
fn told<T>(
    answer: Result<T, recloth_lay::Error>,
    text: impl FnOnce(T) -> Result<String, serde_json::Error>,
) -> Result<String, serde_json::Error> {
    match answer {
        Ok(answer) => text(answer),
        Err(error) => {
            let error = error.error();
            Ok(format!("{} {}", error.kind().code(), error.argument()))
        }
    }
}

/// The parts, the cloth and what was found, in this order, as every door writes them.
fn ordered(
    parts: &[Part],
    cloth: (&str, &impl serde::Serialize),
    found: (&str, &impl serde::Serialize),
) -> Result<String, serde_json::Error> {
    Ok(format!(
        "{{\"parts\":{},\"{}\":{},\"{}\":{}}}",
        serde_json::to_string(parts)?,
        cloth.0,
        serde_json::to_string(cloth.1)?,
        found.0,
        serde_json::to_string(found.1)?,
    ))
}
