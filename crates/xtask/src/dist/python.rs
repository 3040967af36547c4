//! The Python package as it is installed: a wheel for every Python from 3.10, and sources that build it by themselves.

use std::{
    collections::BTreeMap,
    env, fs,
    path::{Path, PathBuf},
    process::Command,
};

use crate::test::run::{Context, Count, counted, output, quiet};

const PACKAGE: &str = "bindings/python";
/// What is asked of an installed package.
const ASKED: &str = "bindings/python/tests/installed.py";

/// The wheel in a new environment of every Python there is, and the sources built away from the repository.
pub(crate) fn whole(context: &Context) -> Result<Count, String> {
    let folder = context.target.join("dist/python");
    if folder.exists() {
        fs::remove_dir_all(&folder).map_err(|error| format!("{}: {error}", folder.display()))?;
    }
    let (wheel, sources) = (wheel(context, &folder)?, sources(context, &folder)?);
    let mut count = Count::passed(2);
    let pythons = pythons();
    for (version, python) in &pythons {
        count = count + tried(context, version, python, &wheel)?;
    }
    let (version, python) = pythons.last_key_value().ok_or("no Python from 3.10")?;
    // Where nothing of the repository is near.
    let away = env::temp_dir().join(format!("recloth-sources-{}", std::process::id()));
    fs::create_dir_all(&away).map_err(|error| format!("{}: {error}", away.display()))?;
    let copy = away.join(sources.file_name().unwrap_or_default());
    fs::copy(&sources, &copy).map_err(|error| format!("{}: {error}", copy.display()))?;
    let built = tried(context, &format!("{version}-sources"), python, &copy);
    fs::remove_dir_all(&away).map_err(|error| format!("{}: {error}", away.display()))?;
    Ok(count + built?)
}

/// One wheel in one new environment, and what the sources hold.
pub(crate) fn quick(context: &Context) -> Result<Count, String> {
    let folder = context.fresh("wheel")?;
    let wheel = wheel(context, &folder)?;
    sources(context, &folder)?;
    Ok(Count::passed(2) + tried(context, "default", Path::new("python3"), &wheel)?)
}

/// Builds the wheel, one for all Pythons: its name says so.
fn wheel(context: &Context, folder: &Path) -> Result<PathBuf, String> {
    let made = maturin(context, &["build", "--release", "--quiet"], folder, ".whl")?;
    let name = made
        .file_name()
        .unwrap_or_default()
        .to_string_lossy()
        .into_owned();
    if !name.contains("-cp310-abi3-") {
        return Err(format!("{name} is not for every Python from 3.10"));
    }
    Ok(made)
}

/// Packs the sources: the package's and those of the crates it stands on, and nothing of the tests of those.
fn sources(context: &Context, folder: &Path) -> Result<PathBuf, String> {
    let made = maturin(context, &["sdist"], folder, ".tar.gz")?;
    let files = output(context.command("tar", ["--list", "--file"]).arg(&made))?;
    for wanted in [
        "/LICENSE",
        "/Cargo.lock",
        "/crates/recloth/src/lib.rs",
        "/PKG-INFO",
        "/recloth/py.typed",
    ] {
        if !files.lines().any(|file| file.ends_with(wanted)) {
            return Err(format!("{} has no {wanted}", made.display()));
        }
    }
    if let Some(file) = files
        .lines()
        .find(|file| file.contains("/vectors/") || file.contains("/bench/"))
    {
        return Err(format!("{} holds {file}", made.display()));
    }
    Ok(made)
}

fn maturin(
    context: &Context,
    words: &[&str],
    folder: &Path,
    ending: &str,
) -> Result<PathBuf, String> {
    let mut command = context.command(context.python()?, ["-m", "maturin"]);
    command
        .args(words)
        .arg("--out")
        .arg(folder)
        .current_dir(context.root.join(PACKAGE));
    quiet(command)?;
    fs::read_dir(folder)
        .map_err(|error| format!("{}: {error}", folder.display()))?
        .filter_map(|entry| Some(entry.ok()?.path()))
        .find(|path| path.to_string_lossy().ends_with(ending))
        .ok_or_else(|| format!("maturin left no {ending}"))
}

/// Installs something into a new environment of a Python and asks it there, away from the repository.
fn tried(context: &Context, name: &str, python: &Path, package: &Path) -> Result<Count, String> {
    println!(
        "Python {name}: {}",
        package.file_name().unwrap_or_default().to_string_lossy()
    );
    let folder = context.fresh(&format!("pythons/{name}"))?;
    quiet(context.command(python, [Path::new("-m"), Path::new("venv"), &folder]))?;
    let python = folder.join("bin/python");
    let mut install = context.command(
        &python,
        [
            "-m",
            "pip",
            "install",
            "--quiet",
            "--disable-pip-version-check",
        ],
    );
    install.arg(package).current_dir(&folder);
    // The sources' own build is kept apart, but kept: a second try is quick.
    install.env("CARGO_TARGET_DIR", context.target.join("dist/sources"));
    quiet(install)?;
    let mut ask = context.command(&python, ["-I"]);
    ask.arg(context.root.join(ASKED)).current_dir(&folder);
    counted(ask)
}

/// Every Python from 3.10 there is, by version: those on the path, and those of pyenv, which are not.
fn pythons() -> BTreeMap<String, PathBuf> {
    let path = env::var_os("PATH").unwrap_or_default();
    let home = env::home_dir().unwrap_or_default();
    let kept = fs::read_dir(home.join(".pyenv/versions"));
    let kept = kept
        .into_iter()
        .flatten()
        .filter_map(|entry| Some(entry.ok()?.path().join("bin")));
    let mut found = BTreeMap::new();
    for folder in env::split_paths(&path).chain(kept) {
        for minor in 10..30 {
            let python = folder.join(format!("python3.{minor}"));
            if python.is_file() && version(&python).is_some_and(|is| is == format!("3.{minor}")) {
                found.entry(format!("3.{minor}")).or_insert(python);
            }
        }
    }
    found
}

/// The version a program says it has; none where it is but a stand-in for one that is not there.
fn version(python: &Path) -> Option<String> {
    let ask = "import sys, venv, ensurepip; print('%d.%d' % sys.version_info[:2])";
    let run = Command::new(python).args(["-c", ask]).output().ok()?;
    let said = String::from_utf8(run.stdout).ok()?;
    run.status.success().then(|| said.trim().to_owned())
}
