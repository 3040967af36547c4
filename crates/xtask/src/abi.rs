//! What programs compiled against `recloth.h` rely on, a declaration a line: `bindings/c/abi.txt`. Its first line is the
//! library's soname.

use std::{fs, path::Path};

/// Where the list is.
pub(crate) const LIST: &str = "bindings/c/abi.txt";

/// The soname of a version. What a caret of cargo takes as compatible has one soname: `1.2.3` is `librecloth.so.1`,
/// `0.1.2` is `librecloth.so.0.1`.
pub(crate) fn soname(version: &str) -> String {
    let mut parts = version.split('.');
    let (major, minor) = (parts.next().unwrap_or("0"), parts.next().unwrap_or("0"));
    if major == "0" {
        format!("librecloth.so.0.{minor}")
    } else {
        format!("librecloth.so.{major}")
    }
}

/// The list of a header for a version.
pub(crate) fn list(header: &str, version: &str) -> String {
    let mut lines = declarations(header);
    lines.sort();
    lines.insert(0, soname(version));
    lines.join("\n") + "\n"
}

/// What of a known list a new one lacks, while both have one soname: programs that are compiled would break.
pub(crate) fn broken<'a>(known: &'a str, new: &str) -> Vec<&'a str> {
    if known.lines().next() != new.lines().next() {
        return Vec::new();
    }
    let kept: Vec<&str> = new.lines().collect();
    known.lines().filter(|line| !kept.contains(line)).collect()
}

/// An error where the new list breaks what the committed one promises.
pub(crate) fn promise(root: &Path, new: &str) -> Result<(), String> {
    let known = fs::read_to_string(root.join(LIST)).unwrap_or_default();
    let broken = broken(&known, new);
    if broken.is_empty() {
        return Ok(());
    }
    Err(format!(
        "programs compiled against {} would break; raise the version so that the soname changes, or, where no version with \
         it was ever released, remove {LIST} and generate again:\n{}",
        soname_of(&known),
        broken.join("\n")
    ))
}

/// The soname a list begins with.
pub(crate) fn soname_of(list: &str) -> &str {
    list.lines().next().unwrap_or_default()
}

/// The functions in a list.
pub(crate) fn functions<'a>(list: &'a str) -> Vec<&'a str> {
    let name = |line: &'a str| {
        let before = line.strip_prefix("function ")?.split('(').next()?;
        before.rsplit([' ', '*']).next()
    };
    list.lines().filter_map(name).collect()
}

/// Every declaration of a header as one line: functions, structs whole, and each constant and choice with its number.
fn declarations(header: &str) -> Vec<String> {
    let code: Vec<&str> = header
        .lines()
        .map(|line| line.split("//").next().unwrap_or_default().trim())
        .filter(|line| !line.is_empty())
        .collect();
    let mut found: Vec<String> = code
        .iter()
        .filter_map(|line| line.strip_prefix("#define "))
        .filter(|define| define.contains(' '))
        .map(|define| format!("constant {define}"))
        .collect();
    let code: Vec<&str> = code
        .into_iter()
        .filter(|line| !line.starts_with(['#', '*', '/']))
        .collect();
    let code = code.join(" ").replace("extern \"C\" {", "");
    let (mut depth, mut start) = (0, 0);
    for (index, letter) in code.char_indices() {
        match letter {
            '{' => depth += 1,
            '}' if depth > 0 => depth -= 1,
            ';' if depth == 0 => {
                found.extend(lines(code[start..index].trim()));
                start = index + 1;
            }
            _ => {}
        }
    }
    found
}

/// One declaration: an enum is a line each, so that a new choice breaks nothing.
fn lines(declaration: &str) -> Vec<String> {
    let words: Vec<&str> = declaration.split_whitespace().collect();
    let one = words.join(" ");
    if !one.starts_with("enum") && !one.starts_with("typedef enum") {
        let kind = if one.starts_with("typedef") {
            "type"
        } else {
            "function"
        };
        return vec![format!("{kind} {one}")];
    }
    let inside = one.split(['{', '}']).nth(1).unwrap_or_default();
    let choices = inside
        .split(',')
        .map(str::trim)
        .filter(|choice| !choice.is_empty());
    choices.map(|choice| format!("choice {choice}")).collect()
}

#[cfg(test)]
mod tests {
    use super::{broken, functions, list, soname};

    const HEADER: &str = "#define RECLOTH_MM 1.0\n// A comment; with a { brace.\ntypedef struct {\n  // Width (mm).\n  \
        double width;\n} recloth_a_t;\nenum recloth_kind\n{\n  RECLOTH_KIND_ONE = 0,\n};\n\
        recloth_status recloth_a(double x,\n                         recloth_a_t *out);\nconst char *recloth_version(void);\n";

    #[test]
    fn every_declaration_is_a_line() {
        assert_eq!(
            list(HEADER, "0.3.1"),
            "librecloth.so.0.3\nchoice RECLOTH_KIND_ONE = 0\nconstant RECLOTH_MM 1.0\n\
             function const char *recloth_version(void)\n\
             function recloth_status recloth_a(double x, recloth_a_t *out)\n\
             type typedef struct { double width; } recloth_a_t\n"
        );
        assert_eq!(
            functions(&list(HEADER, "1.0.0")),
            ["recloth_version", "recloth_a"]
        );
        assert_eq!(
            (soname("1.4.2"), soname("0.1.9")),
            ("librecloth.so.1".into(), "librecloth.so.0.1".into())
        );
    }

    #[test]
    fn a_field_more_breaks_and_a_function_more_does_not() {
        let known = list(HEADER, "0.1.0");
        let more = HEADER.replace(
            "recloth_version(void);",
            "recloth_version(void);\nint recloth_b(void);",
        );
        assert!(broken(&known, &list(&more, "0.1.1")).is_empty());
        let wider = HEADER.replace("double width;", "double width; double height;");
        assert_eq!(broken(&known, &list(&wider, "0.1.1")).len(), 1);
        assert!(broken(&known, &list(&wider, "0.2.0")).is_empty());
    }
}
