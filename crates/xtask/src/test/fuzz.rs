//! Bytes at random into every public function, under libFuzzer: the targets of tests/fuzz.

use std::{
    fs,
    path::{Path, PathBuf},
    sync::Mutex,
    thread,
    time::Instant,
};

use super::run::{Context, Count, output, quiet};

/// How long each target runs in the tests (s): some two minutes in all.
const SHORT: u32 = 3;
/// How long each runs when nothing else is said.
const LONG: u32 = 60;

/// What makes a compiler count the ways taken, and check sums besides. None needs a nightly.
const COUNTED: &str = "-Cpasses=sancov-module -Cllvm-args=-sanitizer-coverage-level=4 \
    -Cllvm-args=-sanitizer-coverage-inline-8bit-counters -Cllvm-args=-sanitizer-coverage-pc-table \
    -Cllvm-args=-sanitizer-coverage-trace-compares --cfg=fuzzing -Cdebug-assertions=yes \
    -Coverflow-checks=yes";

/// Quick to build, for a few seconds; or fast, for a long run.
#[derive(Clone, Copy)]
enum Build {
    Quick,
    Fast,
}

/// Each target for a few seconds.
pub(crate) fn tests(context: &Context) -> Result<Count, String> {
    if let Err(what) = context.program("c++", "g++") {
        return Ok(Count::skipped(&what));
    }
    Ok(reached(context)? + campaign(context, Build::Quick, SHORT, &[])?)
}

/// `cargo xtask fuzz [SECONDS] [TARGET]...`: all targets, or these, for so long each.
pub(crate) fn fuzz(root: &Path, words: &[&str]) -> Result<(), String> {
    let (seconds, wanted) = match words.split_first() {
        Some((first, rest)) if first.parse::<u32>().is_ok() => {
            (first.parse().unwrap_or(LONG), rest)
        }
        _ => (LONG, words),
    };
    match campaign(&Context::new(root)?, Build::Fast, seconds, wanted)?.failed {
        0 => Ok(()),
        failed => Err(format!("{failed} targets found something")),
    }
}

/// Runs targets, as many at a time as there are processors.
fn campaign(
    context: &Context,
    build: Build,
    seconds: u32,
    wanted: &[&str],
) -> Result<Count, String> {
    let program = program(context, build)?;
    let known = output(&mut context.command(&program, [""; 0]))?;
    let known: Vec<&str> = known.lines().collect();
    if let Some(unknown) = wanted.iter().find(|name| !known.contains(name)) {
        let known = known.join(", ");
        return Err(format!("no target {unknown}; there are {known}"));
    }
    let chosen = |name: &&str| wanted.is_empty() || wanted.contains(name);
    let waiting: Mutex<Vec<&str>> =
        Mutex::new(known.iter().copied().rev().filter(chosen).collect());
    let next = || waiting.lock().ok()?.pop();
    let begun = Instant::now();
    let total = thread::scope(|scope| {
        let at_once = thread::available_parallelism().map_or(1, usize::from);
        let workers: Vec<_> = (0..at_once)
            .map(|_| {
                scope.spawn(|| {
                    let mut count = Count::default();
                    while let Some(target) = next() {
                        count = count + run(context, &program, target, seconds)?;
                    }
                    Ok::<Count, String>(count)
                })
            })
            .collect();
        let fallen = || Err("a thread fell over".to_owned());
        workers
            .into_iter()
            .try_fold(Count::default(), |sum, worker| {
                Ok::<Count, String>(sum + worker.join().unwrap_or_else(|_| fallen())?)
            })
    })?;
    println!("{} s in all", begun.elapsed().as_secs());
    Ok(total)
}

/// The targets' program, built where the ordinary builds are not disturbed.
fn program(context: &Context, build: Build) -> Result<PathBuf, String> {
    let (flag, place) = match build {
        Build::Quick => ("", "debug"),
        Build::Fast => ("--release", "release"),
    };
    let machine = output(&mut context.command("rustc", ["--print", "host-tuple"]))?;
    let machine = machine.trim();
    let folder = context.target.join("fuzz");
    // For a target that is named, the flags are not those of build scripts too.
    let mut build = context.cargo(&format!(
        "build --quiet {flag} -p recloth-fuzz --features libfuzzer --target {machine}"
    ));
    build
        .arg("--target-dir")
        .arg(&folder)
        .env("RUSTFLAGS", COUNTED);
    quiet(build)?;
    Ok(folder.join(machine).join(place).join("fuzz"))
}

/// One target: what it learns stays below `target/fuzz`, what it finds is shown.
fn run(context: &Context, program: &Path, target: &str, seconds: u32) -> Result<Count, String> {
    let folder = context.target.join("fuzz");
    let (learnt, found) = (folder.join("corpus").join(target), folder.join("found"));
    for folder in [&learnt, &found] {
        fs::create_dir_all(folder).map_err(|error| format!("{}: {error}", folder.display()))?;
    }
    let mut fuzz = context.command(program, ["-len_control=0", "-max_len=1000", "-timeout=60"]);
    fuzz.arg(format!("-max_total_time={seconds}"))
        .arg(format!("-artifact_prefix={}/{target}-", found.display()))
        .arg(learnt)
        .env("RECLOTH_TARGET", target);
    let seeds = context.root.join("tests/fuzz/seeds").join(target);
    if seeds.is_dir() {
        fuzz.arg(seeds);
    }
    let run = fuzz
        .output()
        .map_err(|error| format!("{target}: {error}"))?;
    let text = String::from_utf8_lossy(&run.stderr);
    let done = text.lines().rfind(|line| line.starts_with("Done "));
    if let (true, Some(done)) = (run.status.success(), done) {
        println!("{target}: {done}");
        return Ok(Count::passed(1));
    }
    let from = text
        .find("panicked at")
        .unwrap_or(text.len().saturating_sub(4000));
    println!(
        "{target} found something: {}",
        text.get(from..).unwrap_or(&text)
    );
    Ok(Count {
        failed: 1,
        ..Count::default()
    })
}

/// The measures that the target of drafts starts from.
const SAMPLES: &str = "crates/recloth/tests/drafts/samples.rs";

/// Every public function of shapes is called by name in a target, and every draft has a sample that a target varies; those of
/// numbers are reached through the table.
fn reached(context: &Context) -> Result<Count, String> {
    let samples = context.root.join(SAMPLES);
    let mut targets =
        fs::read_to_string(&samples).map_err(|error| format!("{}: {error}", samples.display()))?;
    read(&context.root.join("tests/fuzz/src"), &mut |_, text| {
        targets.push_str(text);
        Ok(())
    })?;
    let mut count = Count::default();
    for folder in ["outline", "draft", "panel"] {
        let folder = context.root.join("crates/recloth/src").join(folder);
        read(&folder, &mut |path, text| {
            let file = syn::parse_file(text).map_err(|error| format!("{path}: {error}"))?;
            for called in calls(&file) {
                if called.iter().any(|call| targets.contains(call)) {
                    count.passed += 1;
                } else {
                    println!("no target of tests/fuzz has `{}`, of {path}", called[0]);
                    count.failed += 1;
                }
            }
            Ok(())
        })?;
    }
    Ok(count)
}

/// What calls each public function of a file, free or of a type, looks like: any of these.
fn calls(file: &syn::File) -> Vec<Vec<String>> {
    let public = |visibility: &syn::Visibility| matches!(visibility, syn::Visibility::Public(_));
    let by_name = |name: &syn::Ident| {
        let before = [".", "::", " "].iter();
        before.map(|before| format!("{before}{name}(")).collect()
    };
    let mut calls = Vec::new();
    for item in &file.items {
        match item {
            syn::Item::Fn(function) if public(&function.vis) => {
                calls.push(by_name(&function.sig.ident));
            }
            syn::Item::Impl(of) => {
                for item in &of.items {
                    let syn::ImplItem::Fn(method) = item else {
                        continue;
                    };
                    let name = &method.sig.ident;
                    match &*of.self_ty {
                        _ if !public(&method.vis) => {}
                        // All drafts have a method of this name: it is their measures that tell them apart.
                        syn::Type::Path(kind) if name == "draft" => {
                            let kind = kind.path.segments.last().map(|last| &last.ident);
                            calls.extend(kind.map(|kind| vec![format!("Measures::{kind}(")]));
                        }
                        _ => calls.push(by_name(name)),
                    }
                }
            }
            _ => {}
        }
    }
    calls
}

/// Every Rust file of a folder, in order of name.
fn read(
    folder: &Path,
    each: &mut impl FnMut(&str, &str) -> Result<(), String>,
) -> Result<(), String> {
    let wrong = |error: std::io::Error| format!("{}: {error}", folder.display());
    let mut paths: Vec<PathBuf> = fs::read_dir(folder)
        .map_err(wrong)?
        .map(|entry| Ok(entry?.path()))
        .collect::<std::io::Result<_>>()
        .map_err(wrong)?;
    paths.sort();
    for path in paths
        .iter()
        .filter(|path| path.extension().is_some_and(|end| end == "rs"))
    {
        each(
            &path.display().to_string(),
            &fs::read_to_string(path).map_err(wrong)?,
        )?;
    }
    Ok(())
}
