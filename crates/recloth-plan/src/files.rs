//! Files into a folder: all of them or none, and nothing there that recloth did not make is touched.

use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::{fmt, fs, io};

use crate::Plan;

/// Name of the file that lists what was made; it comes first in the list of files.
pub(crate) const PLAN: &str = "plan.json";

/// Why the files could not be written. Nothing of the new plan is left behind.
#[derive(Debug)]
pub struct WriteError {
    path: PathBuf,
    wrong: String,
    right: &'static str,
}

impl fmt::Display for WriteError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "{}: {}\n  {}",
            self.path.display(),
            self.wrong,
            self.right
        )
    }
}

impl std::error::Error for WriteError {}

fn cannot(path: &Path, what: &str, error: &io::Error) -> WriteError {
    let right = match error.kind() {
        io::ErrorKind::PermissionDenied | io::ErrorKind::ReadOnlyFilesystem => {
            "Choose a folder that you may write in."
        }
        io::ErrorKind::StorageFull => "Make room, or choose a folder on another disk.",
        io::ErrorKind::NotFound => "Make the folder above it first, or choose another.",
        _ => "Choose another folder.",
    };
    WriteError {
        path: path.to_owned(),
        wrong: format!("{what}: {error}"),
        right,
    }
}

/// Writes the plan's files into a folder, which is made where it is not there.
///
/// A plan written there before is replaced, by the list of files in its `plan.json`. Other files in the folder stay as
/// they are; where one of them has a name that the plan needs, nothing is written. All files are first written beside
/// the place and then moved, so that a full disk leaves the old plan whole.
///
/// # Errors
/// [`WriteError`], with the path, what is wrong and what would be right.
pub fn write(plan: &Plan, folder: &Path) -> Result<(), WriteError> {
    let files = plan.files().map_err(|error| WriteError {
        path: folder.to_owned(),
        wrong: format!("the plan cannot be drawn: {error}"),
        right: "A piece is larger than paper can be tiled for: look at its measures.",
    })?;
    write_files(&files, folder)
}

fn write_files(files: &[(String, Vec<u8>)], folder: &Path) -> Result<(), WriteError> {
    // Without the dots and slashes that lead nowhere (`out/.`), so that its last part is its name.
    let folder = &folder.components().collect::<PathBuf>();
    match fs::metadata(folder) {
        Ok(found) if found.is_dir() => {
            let old = made_before(folder);
            for (name, _) in files {
                let path = folder.join(name);
                let Ok(there) = path.symlink_metadata() else {
                    continue;
                };
                if there.is_dir() {
                    return Err(WriteError {
                        path,
                        wrong: String::from("is a folder, and the plan needs a file of that name"),
                        right: "Move it away, or choose another folder.",
                    });
                }
                if !old.contains(name) {
                    return Err(WriteError {
                        path,
                        wrong: String::from(
                            "is there already, and no plan in this folder lists it",
                        ),
                        right: "Move it away, or choose another folder.",
                    });
                }
            }
            let staged = Staged::new(folder.join(".recloth-unfinished"), files)?;
            // First what the new plan has not: stopped at any moment, the list that is there names all that is there.
            clear(&old, files, folder);
            staged.move_into(files, folder)?;
            Ok(())
        }
        Ok(_) => Err(WriteError {
            path: folder.to_owned(),
            wrong: String::from("is a file, not a folder"),
            right: "Give a folder, one that is there or one to be made.",
        }),
        Err(error) if error.kind() == io::ErrorKind::NotFound => {
            let mut beside = OsString::from(".");
            beside.push(folder.file_name().unwrap_or_default());
            beside.push(".recloth-unfinished");
            let staged = Staged::new(folder.with_file_name(beside), files)?;
            fs::rename(&staged.at, folder).map_err(|e| cannot(folder, "cannot be made", &e))
        }
        Err(error) => Err(cannot(folder, "cannot be looked at", &error)),
    }
}

/// Removes what the old plan had and the new one has not.
fn clear(old: &[String], files: &[(String, Vec<u8>)], folder: &Path) {
    for name in old
        .iter()
        .filter(|name| !files.iter().any(|(new, _)| new == *name))
    {
        // That it is already gone is no fault.
        let _ = fs::remove_file(folder.join(name));
    }
}

/// Names listed by the plan that was written there before; only names that a plan can have.
fn made_before(folder: &Path) -> Vec<String> {
    let Ok(text) = fs::read_to_string(folder.join(PLAN)) else {
        return Vec::new();
    };
    let Ok(plan) = serde_json::from_str::<serde_json::Value>(&text) else {
        return Vec::new();
    };
    if plan["made_by"] != "recloth" {
        return Vec::new();
    }
    let names = plan["files"]
        .as_array()
        .map(Vec::as_slice)
        .unwrap_or_default();
    names
        .iter()
        .filter_map(|name| name.as_str())
        .filter(|name| can_be_made(name))
        .map(str::to_owned)
        .collect()
}

/// Whether a plan can have a file of this name: a list that someone has changed must not make us remove theirs.
fn can_be_made(name: &str) -> bool {
    let drawing = || {
        let stem = name.strip_prefix("pieces/")?.strip_suffix(".svg")?;
        let number = stem.split_once('-').map_or(stem, |(number, _)| number);
        let plain = |c: char| c.is_ascii_alphanumeric() || c == '-';
        Some(number.bytes().all(|b| b.is_ascii_digit()) && stem.chars().all(plain))
    };
    [
        "plan.json",
        "worksheet.html",
        "sheets-a4.pdf",
        "sheets-letter.pdf",
    ]
    .contains(&name)
        || drawing() == Some(true)
}

/// A directory of finished files on its way to its place; removed when it is dropped before.
struct Staged {
    at: PathBuf,
}

impl Drop for Staged {
    fn drop(&mut self) {
        // After the move it is not there any more; before it, an error is already being told.
        let _ = fs::remove_dir_all(&self.at);
    }
}

impl Staged {
    fn new(at: PathBuf, files: &[(String, Vec<u8>)]) -> Result<Staged, WriteError> {
        // Left by a run that was stopped: its name is ours alone.
        let _ = fs::remove_dir_all(&at);
        fs::create_dir(&at).map_err(|e| cannot(&at, "cannot be made", &e))?;
        let staged = Staged { at };
        for (name, bytes) in files {
            let path = staged.at.join(name);
            if let Some(parent) = path.parent() {
                fs::create_dir_all(parent).map_err(|e| cannot(parent, "cannot be made", &e))?;
            }
            fs::write(&path, bytes).map_err(|e| cannot(&path, "cannot be written", &e))?;
        }
        Ok(staged)
    }

    fn move_into(&self, files: &[(String, Vec<u8>)], folder: &Path) -> Result<(), WriteError> {
        for (name, _) in files {
            if let Some(parent) = folder.join(name).parent() {
                fs::create_dir_all(parent).map_err(|e| cannot(parent, "cannot be made", &e))?;
            }
        }
        for (name, _) in files {
            let path = folder.join(name);
            fs::rename(self.at.join(name), &path)
                .map_err(|e| cannot(&path, "cannot be written", &e))?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The files of a plan of these drawings.
    fn plan_of(drawings: &[&str]) -> Vec<(String, Vec<u8>)> {
        let names: Vec<String> = [PLAN, "worksheet.html"]
            .map(str::to_owned)
            .into_iter()
            .chain(drawings.iter().map(|name| format!("pieces/{name}.svg")))
            .collect();
        let list = serde_json::json!({ "made_by": "recloth", "files": names }).to_string();
        let content = |name: String| (name.clone(), [list.as_str(), &name].concat().into_bytes());
        let mut files: Vec<_> = names.into_iter().map(content).collect();
        files[0].1 = list.clone().into_bytes();
        files
    }

    fn there(folder: &Path) -> Vec<String> {
        let names = |at: PathBuf| fs::read_dir(at).unwrap().map(|e| e.unwrap().file_name());
        let top = names(folder.to_owned()).map(|name| name.into_string().unwrap());
        let drawings = names(folder.join("pieces"));
        let drawings = drawings.map(|name| format!("pieces/{}", name.into_string().unwrap()));
        let mut all: Vec<String> = top
            .filter(|name| name != "pieces")
            .chain(drawings)
            .collect();
        all.sort();
        all
    }

    #[test]
    fn a_run_stopped_at_any_moment_is_no_hindrance_to_the_next() {
        let (first, second) = (plan_of(&["01-bib", "02-skirt"]), plan_of(&["01-apron"]));
        // Stopped with this many files moved; before the first, with the old ones cleared away or not.
        for (moved, cleared) in [(0, false), (0, true), (1, true), (2, true), (3, true)] {
            for next in [&first, &second] {
                let dir = tempfile::TempDir::new().unwrap();
                let folder = dir.path().join("out");
                write_files(&first, &folder).unwrap();
                let staged = Staged::new(folder.join(".recloth-unfinished"), &second).unwrap();
                if cleared {
                    clear(&made_before(&folder), &second, &folder);
                }
                staged.move_into(&second[..moved], &folder).unwrap();
                std::mem::forget(staged);
                write_files(next, &folder).unwrap();
                let mut wanted: Vec<String> = next.iter().map(|(name, _)| name.clone()).collect();
                wanted.sort();
                assert_eq!(there(&folder), wanted, "{moved} moved");
            }
        }
    }

    #[test]
    fn only_names_of_a_plan_are_taken_from_a_list() {
        for name in [
            "plan.json",
            "sheets-a4.pdf",
            "pieces/01-bib.svg",
            "pieces/02.svg",
        ] {
            assert!(can_be_made(name), "{name}");
        }
        for name in [
            "notes.txt",
            "pieces/my.svg",
            "pieces/01-../x.svg",
            "/etc/x",
            "pieces/01-é.svg",
            "../plan.json",
        ] {
            assert!(!can_be_made(name), "{name}");
        }
    }
}
