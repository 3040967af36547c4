//! Every target on its seeds and on random bytes, with any compiler.

#[path = "../../../crates/recloth/tests/random/mod.rs"]
mod random;

use recloth_fuzz::{run, targets};
use std::{collections::BTreeSet, fs, path::Path};

#[test]
fn seeds_and_random_bytes_find_nothing() {
    let seeds = Path::new(env!("CARGO_MANIFEST_DIR")).join("seeds");
    let mut random = random::Random(2026);
    for target in targets() {
        for seed in fs::read_dir(seeds.join(target)).into_iter().flatten() {
            run(
                target,
                &fs::read(seed.expect("a file").path()).expect("a file"),
            );
        }
        // A brief takes long.
        let tries = if target == "brief" { 3 } else { 40 };
        for _ in 0..tries {
            let count = random.between(0.0, 600.0) as usize;
            let bytes: Vec<u8> = (0..count)
                .map(|_| random.between(0.0, 256.0) as u8)
                .collect();
            run(target, &bytes);
        }
    }
}

#[test]
fn names_are_unique_and_seeds_have_targets() {
    let names: BTreeSet<_> = targets().into_iter().collect();
    assert_eq!(names.len(), targets().len());
    let seeds = Path::new(env!("CARGO_MANIFEST_DIR")).join("seeds");
    for folder in fs::read_dir(seeds).expect("seeds") {
        let name = folder.expect("a folder").file_name();
        assert!(
            names.contains(name.to_str().expect("a plain name")),
            "{name:?}"
        );
    }
}
