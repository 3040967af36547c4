//! What the C library takes of a device's flash: a program for a Cortex-M0 that calls one function, or
//! every function of numbers, less one that calls none.

use std::fs;

use serde_json::Value;

use super::Figure;
use crate::test::{
    device::{CORTEX, archive, flash, link},
    run::Context,
};

const BARE: &str = "int main(void) { return 0; }\n";

pub(super) fn figures(context: &Context) -> Result<Vec<Figure>, String> {
    context.rust_target(CORTEX)?;
    let folder = context.target.join("bench");
    let measured = |name: &str, text: &str, words: &str| {
        let source = folder.join(format!("{name}.c"));
        fs::create_dir_all(&folder)
            .and_then(|()| fs::write(&source, text))
            .map_err(|error| format!("{}: {error}", source.display()))?;
        let program = source.with_extension("elf");
        link(
            context,
            &source,
            &archive(context, CORTEX, words)?,
            &program,
        )?;
        flash(context, &program)
    };
    let read = |name: &str| {
        fs::read_to_string(context.root.join(name)).map_err(|error| format!("{name}: {error}"))
    };
    let spec = serde_json::from_str(&read("bindings/spec.json")?).map_err(|e| e.to_string())?;
    let names = functions_of_numbers(&spec);
    let bare = measured("bare", BARE, "")?;
    let one = measured("one", &read("bindings/c/tests/device.c")?, "")?;
    // Calls cost less space than code in place, once there are many: all of it is built as small as can be.
    let all = measured(
        "all",
        &calls_all(&names),
        "--config profile.device.opt-level=\"z\"",
    )?;
    let figure = |name: &str, bytes: u64, goal, what| Figure {
        name: name.into(),
        ours: (bytes - bare) as f64 / 1024.0,
        peer: None,
        ratio: None,
        unit: "KiB".into(),
        what,
        goal: Some(goal),
    };
    Ok(vec![
        figure(
            "flash_one_kib",
            one,
            4.0,
            "circle_skirt, its doubts and its error".into(),
        ),
        figure(
            "flash_all_kib",
            all,
            64.0,
            format!("{} functions", names.len()),
        ),
    ])
}

/// Those that take numbers, counts and choices and answer with numbers.
fn functions_of_numbers(spec: &Value) -> Vec<&str> {
    let scalar = |argument: &Value| {
        argument["kind"] == "number" || argument["kind"] == "count" || argument["kind"].is_object()
    };
    spec["functions"]
        .as_array()
        .into_iter()
        .flatten()
        .filter(|function| function["answer"]["kind"] != "text")
        .filter(|function| {
            function["arguments"]
                .as_array()
                .into_iter()
                .flatten()
                .all(scalar)
        })
        .filter_map(|function| function["name"].as_str())
        .collect()
}

/// A program from which none of these can be left out.
fn calls_all(names: &[&str]) -> String {
    let table: String = names
        .iter()
        .map(|name| format!("  (function *)recloth_{name},\n"))
        .collect();
    format!(
        "#include \"recloth.h\"\n\ntypedef void function(void);\nstatic function *const all[] = {{\n\
         {table}}};\nvolatile unsigned which;\n\nint main(void) {{\n  all[which]();\n  return 0;\n}}\n"
    )
}
