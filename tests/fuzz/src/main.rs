//! One target under libFuzzer: its name is in the environment variable `RECLOTH_TARGET`. Without one, the names of all
//! are printed.
#![no_main]
#![allow(clippy::print_stdout, reason = "a command prints")]

use std::{env, process, sync::OnceLock};

static TARGET: OnceLock<String> = OnceLock::new();

libfuzzer_sys::fuzz_target!(
    init: {
        let Ok(target) = env::var("RECLOTH_TARGET") else {
            println!("{}", recloth_fuzz::targets().join("\n"));
            process::exit(0);
        };
        TARGET.get_or_init(|| target);
    },
    |data: &[u8]| recloth_fuzz::run(TARGET.get().map_or("", String::as_str), data)
);
