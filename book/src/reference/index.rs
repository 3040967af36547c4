//! The index: every function with its first sentence, by file; then choices, doubts, cautions and errors.

use std::fmt::Write;

use super::spec::{Spec, cell, minus};

pub(super) fn index(spec: &Spec) -> String {
    let mut out = String::new();
    for module in &spec.modules {
        let _ = writeln!(
            out,
            "## {0}\n\n{1} [In full](functions/{0}.md).\n\n| function | what it answers |\n|---|---|",
            module.name, module.summary
        );
        for function in spec
            .functions
            .iter()
            .filter(|function| function.module == module.name)
        {
            let _ = writeln!(
                out,
                "| [`{0}`](functions/{1}.md#{0}) | {2} |",
                function.name,
                module.name,
                cell(&function.summary)
            );
        }
        out.push('\n');
    }
    let _ = writeln!(
        out,
        "## Outlines\n\nThese take outlines, so their doors are written by hand.\n\n\
         | function | file | what it answers |\n|---|---|---|"
    );
    for shape in &spec.shapes {
        let _ = writeln!(
            out,
            "| `{}` | {} | {} |",
            shape.name,
            shape.module,
            cell(&shape.summary)
        );
    }
    let _ = writeln!(out, "\n## Choices\n");
    for choice in &spec.choices {
        let _ = writeln!(
            out,
            "### {}\n\n{}\n\n| choice | number | meaning |\n|---|---|---|",
            choice.name, choice.summary
        );
        for variant in &choice.variants {
            let _ = writeln!(
                out,
                "| `{}` | {} | {} |",
                variant.word,
                variant.value,
                cell(&variant.meaning)
            );
        }
        out.push('\n');
    }
    for (title, bits) in [("Doubts", &spec.doubts), ("Cautions", &spec.cautions)] {
        let _ = writeln!(
            out,
            "## {title}\n\n| bit | name | what it says |\n|---|---|---|"
        );
        for bit in bits {
            let _ = writeln!(
                out,
                "| {} | `{}` | {} |",
                bit.bit,
                bit.name,
                cell(&bit.text)
            );
        }
        out.push('\n');
    }
    let _ = writeln!(
        out,
        "## Errors\n\n| number | name | meaning |\n|---|---|---|"
    );
    for status in &spec.statuses {
        let _ = writeln!(
            out,
            "| {} | `{}` | {} |",
            minus(&status.code.to_string()),
            status.name,
            cell(&status.text)
        );
    }
    out
}
