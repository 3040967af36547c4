//! Running commands, counting what they tested, and setting up what they need.

use std::{
    env,
    ffi::OsStr,
    fs,
    io::{BufRead, BufReader},
    ops::Add,
    path::{Path, PathBuf},
    process::{Command, Stdio},
    sync::OnceLock,
};

/// How many checks passed, failed, and could not be run.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Count {
    pub(crate) passed: u32,
    pub(crate) failed: u32,
    pub(crate) skipped: u32,
}

impl Count {
    /// This many passed.
    pub(crate) fn passed(passed: u32) -> Count {
        Count {
            passed,
            ..Count::default()
        }
    }

    /// One that could not be run, named aloud.
    pub(crate) fn skipped(what: &str) -> Count {
        println!("SKIPPED: {what}");
        Count {
            skipped: 1,
            ..Count::default()
        }
    }

    /// Reads the closing line of a test runner: `test result: ok. 3 passed; ...` or `3 passed in 1 s`.
    fn read(line: &str) -> Count {
        let line = line.trim_matches(['=', ' ']);
        let closing = line.starts_with("test result:")
            || line
                .split([' ', ','])
                .next()
                .is_some_and(|word| word.parse::<u32>().is_ok());
        if !closing {
            return Count::default();
        }
        let words: Vec<&str> = line
            .split([' ', ',', ';'])
            .filter(|word| !word.is_empty())
            .collect();
        let number = |what: &[&str]| {
            words
                .windows(2)
                .filter(|pair| what.contains(&pair[1]))
                .filter_map(|pair| pair[0].parse::<u32>().ok())
                .sum()
        };
        Count {
            passed: number(&["passed"]),
            failed: number(&["failed", "error", "errors"]),
            skipped: number(&["ignored", "skipped", "xfailed"]),
        }
    }
}

impl Add for Count {
    type Output = Count;

    fn add(self, other: Count) -> Count {
        Count {
            passed: self.passed + other.passed,
            failed: self.failed + other.failed,
            skipped: self.skipped + other.skipped,
        }
    }
}

/// Where everything is.
pub(crate) struct Context {
    pub(crate) root: PathBuf,
    /// The one target directory, shared by all sections.
    pub(crate) target: PathBuf,
    pub(crate) ci: bool,
    venv: OnceLock<Result<PathBuf, String>>,
}

impl Context {
    pub(crate) fn new(root: &Path) -> Result<Context, String> {
        let root = root
            .canonicalize()
            .map_err(|error| format!("{}: {error}", root.display()))?;
        let target = env::var_os("CARGO_TARGET_DIR").map_or(root.join("target"), PathBuf::from);
        fs::create_dir_all(&target).map_err(|error| format!("{}: {error}", target.display()))?;
        let ci = env::var("CI").is_ok_and(|value| value == "true");
        Ok(Context {
            root,
            target,
            ci,
            venv: OnceLock::new(),
        })
    }

    /// A command that runs at the root with the shared target directory.
    pub(crate) fn command<I, S>(&self, program: impl AsRef<OsStr>, arguments: I) -> Command
    where
        I: IntoIterator<Item = S>,
        S: AsRef<OsStr>,
    {
        let mut command = Command::new(program);
        command
            .args(arguments)
            .current_dir(&self.root)
            .env("CARGO_TARGET_DIR", &self.target)
            // Set by the cargo that started this program; another package would see the wrong ones.
            .env_remove("CARGO_MANIFEST_DIR");
        command
    }

    /// Cargo, with words separated by blanks.
    pub(crate) fn cargo(&self, words: &str) -> Command {
        self.command(
            env::var_os("CARGO").unwrap_or("cargo".into()),
            words.split_whitespace(),
        )
    }

    /// The Python of the project's own environment, made on first use from tests/requirements.txt.
    pub(crate) fn python(&self) -> Result<&Path, String> {
        self.venv
            .get_or_init(|| {
                let folder = self.target.join("venv");
                let python = folder.join("bin/python");
                let wanted = fs::read_to_string(self.root.join("tests/requirements.txt"))
                    .map_err(|error| format!("tests/requirements.txt: {error}"))?;
                let stamp = folder.join("requirements.txt");
                if fs::read_to_string(&stamp).is_ok_and(|known| known == wanted) {
                    return Ok(python);
                }
                println!("setting up Python below {}", folder.display());
                let venv = ["-m", "venv", "--clear"].map(OsStr::new);
                quiet(self.command("python3", venv.into_iter().chain([folder.as_os_str()])))?;
                quiet(
                    self.command(
                        &python,
                        [
                            "-m",
                            "pip",
                            "install",
                            "--quiet",
                            "--disable-pip-version-check",
                            "-r",
                        ]
                        .into_iter()
                        .chain(["tests/requirements.txt"]),
                    ),
                )?;
                fs::write(&stamp, wanted).map_err(|error| error.to_string())?;
                Ok(python)
            })
            .as_deref()
            .map_err(Clone::clone)
    }

    /// Adds a compiler target; an error when rustup cannot.
    pub(crate) fn rust_target(&self, target: &str) -> Result<(), String> {
        quiet(self.command("rustup", ["target", "add", target]))
    }

    /// Finds a program (with the words it must take), installing its Debian package where that is
    /// allowed: as root under CI.
    pub(crate) fn program(&self, name: &str, package: &str) -> Result<(), String> {
        static UPDATED: OnceLock<Result<(), String>> = OnceLock::new();
        let found = || {
            let mut words = name.split_whitespace();
            Command::new(words.next().unwrap_or_default())
                .args(words)
                .arg("--version")
                .output()
                .is_ok_and(|run| run.status.success())
        };
        if found() {
            return Ok(());
        }
        let options = "-o DPkg::Lock::Timeout=300 -y --no-install-recommends";
        let line = format!("apt-get install {options} {package}");
        let root = Command::new("id")
            .arg("-u")
            .output()
            .is_ok_and(|run| run.stdout.trim_ascii() == b"0");
        if !(self.ci && root) {
            return Err(format!("{name} is missing: {line}"));
        }
        let apt = |words: &str| {
            let mut command = self.command("apt-get", words.split_whitespace());
            command.env("DEBIAN_FRONTEND", "noninteractive");
            quiet(command)
        };
        UPDATED.get_or_init(|| apt("update -q")).clone()?;
        apt(line.trim_start_matches("apt-get "))?;
        if found() {
            Ok(())
        } else {
            Err(format!("{name} is missing after: {line}"))
        }
    }

    /// A fresh empty folder below the target directory.
    pub(crate) fn fresh(&self, name: &str) -> Result<PathBuf, String> {
        let folder = self.target.join("tests").join(name);
        if folder.exists() {
            fs::remove_dir_all(&folder)
                .map_err(|error| format!("{}: {error}", folder.display()))?;
        }
        fs::create_dir_all(&folder).map_err(|error| format!("{}: {error}", folder.display()))?;
        Ok(folder)
    }
}

/// Runs a command; its output is shown only when it fails.
pub(crate) fn quiet(mut command: Command) -> Result<(), String> {
    output(&mut command).map(drop)
}

/// What a command prints; on failure all it printed is shown.
pub(crate) fn output(command: &mut Command) -> Result<String, String> {
    let run = command
        .stdin(Stdio::null())
        .output()
        .map_err(|error| format!("{}: {error}", shown(command)))?;
    if run.status.success() {
        return String::from_utf8(run.stdout).map_err(|error| error.to_string());
    }
    print!(
        "{}{}",
        String::from_utf8_lossy(&run.stdout),
        String::from_utf8_lossy(&run.stderr)
    );
    Err(format!("{} ended with {}", shown(command), run.status))
}

/// Runs a test runner, passing its output on and adding up its closing lines.
pub(crate) fn counted(mut command: Command) -> Result<Count, String> {
    let mut child = command
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|error| format!("{}: {error}", shown(&command)))?;
    let mut count = Count::default();
    if let Some(stdout) = child.stdout.take() {
        for line in BufReader::new(stdout).lines() {
            let line = line.map_err(|error| error.to_string())?;
            println!("{line}");
            count = count + Count::read(&line);
        }
    }
    let status = child.wait().map_err(|error| error.to_string())?;
    if !status.success() && count.failed == 0 {
        return Err(format!("{} ended with {status}", shown(&command)));
    }
    Ok(count)
}

fn shown(command: &Command) -> String {
    let words = std::iter::once(command.get_program()).chain(command.get_args());
    let words: Vec<_> = words.map(|word| word.to_string_lossy()).collect();
    words.join(" ")
}

#[cfg(test)]
mod tests {
    use super::Count;

    #[test]
    fn closing_lines_are_read_and_others_are_not() {
        let read = |line| {
            let count = Count::read(line);
            (count.passed, count.failed, count.skipped)
        };
        let cargo =
            "test result: FAILED. 12 passed; 2 failed; 1 ignored; 0 measured; 3 filtered out";
        assert_eq!(read(cargo), (12, 2, 1));
        assert_eq!(
            read("===== 3 failed, 27 passed, 1 skipped, 2 warnings in 1.59s ====="),
            (27, 3, 1)
        );
        assert_eq!(read("5 passed in 0.1s"), (5, 0, 0));
        assert_eq!(read("7 passed, 0 failed"), (7, 0, 0));
        assert_eq!(read("he said that 5 passed"), (0, 0, 0));
    }
}
