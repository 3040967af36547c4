//! The page of one file of the core: each function with its table, and how right it is.

use std::fmt::Write;
use std::path::Path;

use super::spec::{Function, Module, Spec, cell};
use super::{Page, accuracy};
use crate::coverage::{self, Examples};

pub(super) fn pages(spec: &Spec, root: &Path) -> Result<Vec<Page>, String> {
    let tables = recloth_doors::tables();
    let examples = coverage::examples(root)?;
    let page = |module: &Module| {
        let mut text = format!("# {}\n\n{}\n", module.name, module.summary);
        for function in spec
            .functions
            .iter()
            .filter(|function| function.module == module.name)
        {
            push_function(&mut text, spec, function, &examples);
            if let Some(table) = tables
                .iter()
                .find(|table| table.function.name == function.name)
            {
                text.push_str(&accuracy::how_right(table, spec));
            }
        }
        Page {
            name: module.name.clone(),
            text,
        }
    };
    Ok(spec.modules.iter().map(page).collect())
}

fn push_function(out: &mut String, spec: &Spec, function: &Function, examples: &Examples) {
    let given = || {
        function
            .arguments
            .iter()
            .filter(|argument| !argument.is_filled())
    };
    let names: Vec<&str> = given().map(|argument| &*argument.name).collect();
    let _ = writeln!(
        out,
        "\n## {0}\n\n{1}\n\n`{0}({2})`\n\n{3}\n",
        function.name,
        linked(&function.summary, spec),
        names.join(", "),
        linked(&function.description, spec)
    );
    let _ = writeln!(
        out,
        "| | name | unit | range | if not given | meaning |\n|---|---|---|---|---|---|"
    );
    let mut first = "given";
    for argument in given() {
        let _ = writeln!(
            out,
            "| {first} | `{}` | {} | {} | {} | {} |",
            argument.name,
            argument.unit,
            argument.span(),
            argument.default_text(),
            cell(&argument.meaning)
        );
        first = "";
    }
    first = "answer";
    for argument in function
        .arguments
        .iter()
        .filter(|argument| argument.is_filled())
    {
        let _ = writeln!(
            out,
            "| {first} | `{}` | {} | {} |  | {} |",
            argument.name,
            argument.unit,
            argument.span(),
            cell(&argument.meaning)
        );
        first = "";
    }
    for field in &function.answer.fields {
        let linked = match (&*field.unit, &*field.name) {
            ("bits", "cautions") => "[bits](../functions.md#cautions)",
            ("bits", _) => "[bits](../functions.md#doubts)",
            (unit, _) => unit,
        };
        let _ = writeln!(
            out,
            "| {first} | `{}` | {linked} |  |  | {} |",
            field.name,
            cell(&field.meaning)
        );
        first = "";
    }
    let _ = writeln!(
        out,
        "\n**Errors.** {}\n\n**Source.** {}\n",
        linked(&function.errors, spec),
        linked(&function.source, spec)
    );
    let pages: Vec<String> = examples
        .of(&function.name)
        .map(|(file, title)| format!("[{title}](../{file})"))
        .collect();
    if !pages.is_empty() {
        let _ = writeln!(out, "**Worked examples.** {}.\n", pages.join(", "));
    }
}

/// A function's name in a link of the documentation, as a link of the book; other such links as plain code.
fn linked(text: &str, spec: &Spec) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some((before, after)) = rest.split_once("[`") {
        let Some((name, after)) = after.split_once("`]") else {
            break;
        };
        out.push_str(before);
        let _ = match spec.functions.iter().find(|function| function.name == name) {
            Some(function) => write!(out, "[`{name}`]({}.md#{name})", function.module),
            None => write!(out, "`{name}`"),
        };
        rest = after;
    }
    out.push_str(rest);
    out
}
