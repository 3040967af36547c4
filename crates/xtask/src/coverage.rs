//! `cargo xtask coverage`: which lines and branches of the core its tests run, a line a file, and those they do not.

use std::{collections::BTreeMap, fs, path::Path};

use serde_json::Value;

use crate::test::{
    nightly::{self, NIGHTLY, nightly as tool},
    run::{Context, output, quiet},
};

/// The crates whose tests are the core's.
const TESTS: &str = "test -p recloth -p recloth-doors --features recloth/serde --lib --tests";

/// Of one file.
#[derive(Default)]
struct File {
    lines: u32,
    missed: Vec<u32>,
    branches: u32,
    untaken: Vec<u32>,
}

pub(crate) fn coverage(root: &Path) -> Result<(), String> {
    let context = Context::new(root)?;
    nightly::install(&context)?;
    let folder = context.target.join("coverage");
    let profiles = context.fresh("profiles")?;
    let cargo = |more: &[&str]| {
        let mut command = tool(
            &context,
            "cargo",
            TESTS.split(' ').chain(more.iter().copied()),
        );
        command
            .arg("--target-dir")
            .arg(&folder)
            .env(
                "RUSTFLAGS",
                "-Cinstrument-coverage -Zcoverage-options=branch",
            )
            .env("LLVM_PROFILE_FILE", profiles.join("%p-%m.profraw"));
        command
    };
    let built = output(&mut cargo(&["--no-run", "--message-format", "json"]))?;
    quiet(cargo(&["--no-fail-fast"]))?;
    let programs: Vec<String> = built
        .lines()
        .filter_map(|line| serde_json::from_str::<Value>(line).ok())
        .filter_map(|message| message["executable"].as_str().map(str::to_owned))
        .collect();

    let sysroot = output(&mut tool(&context, "rustc", ["--print", "sysroot"]))?;
    let machine = output(&mut tool(&context, "rustc", ["--print", "host-tuple"]))?;
    let tools = Path::new(sysroot.trim())
        .join("lib/rustlib")
        .join(machine.trim())
        .join("bin");
    let merged = folder.join("all.profdata");
    let mut merge = context.command(
        tools.join("llvm-profdata"),
        ["merge", "--sparse", "--output"],
    );
    merge.arg(&merged).arg(&profiles);
    quiet(merge)?;
    let mut export = context.command(tools.join("llvm-cov"), ["export", "--format=lcov"]);
    export.arg(format!("--instr-profile={}", merged.display()));
    for program in &programs {
        export.arg("--object").arg(program);
    }
    export
        .arg("--sources")
        .arg(context.root.join("crates/recloth/src"));
    let files = read(
        &output(&mut export)?,
        &context.root.join("crates/recloth/src"),
    );
    if files.is_empty() {
        return Err(format!("{NIGHTLY} counted nothing"));
    }
    let table = table(&files);
    let place = context.target.join("coverage.txt");
    fs::write(&place, &table).map_err(|error| format!("{}: {error}", place.display()))?;
    print!("{table}");
    Ok(())
}

/// Reads what llvm-cov exports (the format of lcov): `SF:` a file, `DA:line,count`, `BRDA:line,block,branch,count`.
fn read(text: &str, sources: &Path) -> BTreeMap<String, File> {
    let mut files: BTreeMap<String, File> = BTreeMap::new();
    let mut name = None;
    for line in text.lines() {
        if let Some(path) = line.strip_prefix("SF:") {
            let path = Path::new(path)
                .strip_prefix(sources)
                .unwrap_or(Path::new(path));
            let path = path.display().to_string();
            // Tests are not what is tested.
            name = (!path.ends_with("tests.rs")).then_some(path);
        }
        let Some(name) = &name else { continue };
        let file = files.entry(name.clone()).or_default();
        let cells = |rest: &str| -> Vec<String> { rest.split(',').map(str::to_owned).collect() };
        if let Some([number, count]) = line.strip_prefix("DA:").map(cells).as_deref() {
            file.lines += 1;
            if count == "0" {
                file.missed.extend(number.parse::<u32>());
            }
        } else if let Some([number, _, _, count]) = line.strip_prefix("BRDA:").map(cells).as_deref()
        {
            file.branches += 1;
            if count == "0" || count == "-" {
                file.untaken.extend(number.parse::<u32>());
            }
        }
    }
    files
}

fn table(files: &BTreeMap<String, File>) -> String {
    let mut text = format!(
        "{:32} {:>13} {:>13}  not run; branches not taken\n",
        "file", "lines", "branches"
    );
    let share = |missed: usize, all: u32| {
        let run = all as usize - missed;
        let share = if all == 0 {
            100.0
        } else {
            100.0 * run as f64 / f64::from(all)
        };
        format!("{run}/{all} {share:5.1}%")
    };
    let mut sum = File::default();
    for (name, file) in files {
        text.push_str(&format!(
            "{name:32} {:>17} {:>17}  {}; {}\n",
            share(file.missed.len(), file.lines),
            share(file.untaken.len(), file.branches),
            ranges(&file.missed),
            ranges(&file.untaken),
        ));
        sum.lines += file.lines;
        sum.branches += file.branches;
        sum.missed.extend(&file.missed);
        sum.untaken.extend(&file.untaken);
    }
    text.push_str(&format!(
        "{:32} {:>17} {:>17}\n",
        "all",
        share(sum.missed.len(), sum.lines),
        share(sum.untaken.len(), sum.branches)
    ));
    text
}

/// Line numbers, those that follow each other as `3-7`.
fn ranges(lines: &[u32]) -> String {
    let mut parts: Vec<(u32, u32)> = Vec::new();
    for &line in lines {
        match parts.last_mut() {
            Some((_, last)) if line <= *last + 1 => *last = line,
            _ => parts.push((line, line)),
        }
    }
    let words = parts.iter().map(|(from, to)| {
        if from == to {
            from.to_string()
        } else {
            format!("{from}-{to}")
        }
    });
    words.collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::{read, table};
    use std::path::Path;

    #[test]
    fn lines_and_branches_are_counted_by_file() {
        let text = "SF:/x/src/a.rs\nDA:1,4\nDA:2,0\nDA:3,0\nBRDA:1,0,0,3\nBRDA:1,0,1,-\nend_of_record\n\
            SF:/x/src/outline/tests.rs\nDA:1,0\nend_of_record\n";
        let table = table(&read(text, Path::new("/x/src")));
        let rows: Vec<Vec<&str>> = table
            .lines()
            .map(|row| row.split_whitespace().collect())
            .collect();
        assert_eq!(
            rows[1],
            ["a.rs", "1/3", "33.3%", "1/2", "50.0%", "2-3;", "1"]
        );
        assert_eq!(rows[2], ["all", "1/3", "33.3%", "1/2", "50.0%"]);
    }
}
