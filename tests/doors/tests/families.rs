//! Functions that solve one sum for different unknowns give each other's numbers back: every good row of the one is solved
//! back by the other.
#![allow(clippy::print_stdout, reason = "a test says how much it tested")]

use std::collections::BTreeMap;

use recloth::ErrorKind;
use recloth_doors::{Function, Given, Got, Table, call, tables};

/// `(argument or answer of the one that solves back, what stands for it in the first)`; `=15` is the number 15.
type Pairs = &'static [(&'static str, &'static str)];

/// The first function, the one that solves back, what that is given, and what must come out.
const BACK: &[(&str, &str, Pairs, Pairs)] = &[
    (
        "gathers",
        "gather_ratio",
        &[("flat", "flat"), ("finished", "finished")],
        &[("ratio", "ratio")],
    ),
    (
        "gather_ratio",
        "gathers",
        &[("finished", "finished"), ("ratio", "ratio")],
        &[("flat", "flat")],
    ),
    (
        "bias_square",
        "bias_strip_length",
        &[("side", "value"), ("width", "width")],
        &[("value", "length")],
    ),
    (
        "bias_strip_length",
        "bias_square",
        &[("length", "value"), ("width", "width")],
        &[("value", "side")],
    ),
    (
        "straight_band",
        "straight_band_depth",
        &[
            ("cut_width", "cut_width"),
            ("allowance", "allowance"),
            ("turn", "turn"),
            ("make", "make"),
        ],
        &[("value", "depth")],
    ),
    (
        "button_stand",
        "button_for_stand",
        &[("extension", "extension"), ("share", "share")],
        &[("value", "diameter")],
    ),
    (
        "button_for_stand",
        "button_stand",
        &[("diameter", "value"), ("share", "share")],
        &[("extension", "extension")],
    ),
    (
        "zip_length",
        "zip_opening",
        &[("zip", "needed"), ("gap", "gap"), ("beyond", "beyond")],
        &[("value", "opening")],
    ),
    (
        "zip_opening",
        "zip_length",
        &[
            ("opening", "value"),
            ("gap", "gap"),
            ("beyond", "beyond"),
            ("allowance", "=15"),
            ("graduation", "=20"),
        ],
        &[("needed", "zip")],
    ),
    (
        "hem_on_curve",
        "deepest_hem",
        &[("radius", "radius"), ("excess_pct", "excess_pct")],
        &[("value", "depth")],
    ),
    (
        "deepest_hem",
        "hem_on_curve",
        &[("radius", "radius"), ("depth", "value"), ("hem", "=1000")],
        &[("excess_pct", "excess_pct")],
    ),
    (
        "cap_ease",
        "cap_for_ease",
        &[("armhole", "armhole"), ("ease_pct", "ease_pct")],
        &[("value", "cap")],
    ),
    (
        "cap_for_ease",
        "cap_ease",
        &[("armhole", "armhole"), ("cap", "value")],
        &[("ease_pct", "ease_pct")],
    ),
    (
        "dimensional_change",
        "cut_for_change",
        &[("finished", "after"), ("change_pct", "value")],
        &[("cut", "before")],
    ),
    (
        "dart_turned",
        "dart_turned",
        &[("intake", "value"), ("leg", "new_leg"), ("new_leg", "leg")],
        &[("value", "intake")],
    ),
    (
        "button_loop",
        "loop_slack",
        &[
            ("length", "visible"),
            ("diameter", "diameter"),
            ("thickness", "thickness"),
            ("cord", "cord"),
            ("gap", "gap"),
            ("stretch", "stretch"),
            ("shape", "shape"),
        ],
        &[("slack", "=0")],
    ),
    (
        "k_over_s",
        "reflectance",
        &[("k_over_s", "value")],
        &[("value", "reflectance")],
    ),
    (
        "reflectance",
        "k_over_s",
        &[("reflectance", "value")],
        &[("value", "k_over_s")],
    ),
    (
        "linear_light",
        "screen_level",
        &[("light", "value")],
        &[("value", "level")],
    ),
    (
        "screen_level",
        "linear_light",
        &[("level", "value")],
        &[("value", "light")],
    ),
    (
        "xyz_from_srgb",
        "srgb_from_xyz",
        &[("x", "x"), ("y", "y"), ("z", "z")],
        &[("red", "red"), ("green", "green"), ("blue", "blue")],
    ),
    (
        "lab_from_srgb",
        "srgb_from_lab",
        &[("l", "l"), ("a", "a"), ("b", "b")],
        &[("red", "red"), ("green", "green"), ("blue", "blue")],
    ),
    (
        "xyz_from_lab",
        "lab_from_xyz",
        &[
            ("x", "x"),
            ("y", "y"),
            ("z", "z"),
            ("white_x", "=0.3127"),
            ("white_y", "=0.329"),
        ],
        &[("l", "l"), ("a", "a"), ("b", "b")],
    ),
];

/// Families in which every answer holds all numbers of the sum, so that each solves back each other.
const SETS: &[[&str; 4]] = &[
    [
        "knife_pleats",
        "knife_pleats_depth",
        "knife_pleats_count",
        "knife_pleats_finished",
    ],
    [
        "box_pleats",
        "box_pleats_depth",
        "box_pleats_count",
        "box_pleats_finished",
    ],
];

/// Numbers this near are the same: what the sums of two functions may lose.
const NEAR: f64 = 1e-9;

#[test]
fn every_unknown_is_solved_back() {
    let tables: BTreeMap<String, Table> = tables()
        .into_iter()
        .map(|table| (table.function.name.clone(), table))
        .collect();
    let mut solved = 0;
    let mut failures = Vec::new();
    for &(first, back, given, wanted) in BACK {
        solved += solve_back(
            &tables[first],
            &tables[back].function,
            given,
            Some(wanted),
            &mut failures,
        );
    }
    for set in SETS {
        for first in set {
            for back in set.iter().filter(|back| *back != first) {
                solved += solve_back(
                    &tables[*first],
                    &tables[*back].function,
                    &[],
                    None,
                    &mut failures,
                );
            }
        }
    }
    assert!(failures.is_empty(), "{}", failures.join("\n"));
    println!("{solved} rows solved back");
    assert!(solved > 200, "only {solved} rows");
}

/// Solves each good row of a table back; without `wanted`, under the same names and all answers. Returns how many were.
fn solve_back(
    table: &Table,
    back: &Function,
    given: Pairs,
    wanted: Option<Pairs>,
    failures: &mut Vec<String>,
) -> u32 {
    let first = &table.function;
    let mut solved = 0;
    for row in table.rows.iter().filter(|row| row.status == 0) {
        let answers = call(&first.name, &row.given)
            .expect("the function is known")
            .expect("a good row");
        let inputs = first
            .inputs
            .iter()
            .filter_map(|input| input["name"].as_str());
        let mut known: BTreeMap<&str, Given> = inputs.zip(row.given.iter().cloned()).collect();
        for ((name, _), got) in first.outputs.iter().zip(&answers) {
            let value = match got {
                Got::Number(value) => Given::Number(*value),
                Got::Whole(value) => Given::Count(*value as u32),
                _ => continue,
            };
            known.insert(name, value);
        }
        let find = |name: &str| match name.strip_prefix('=') {
            Some(number) => Given::Number(number.parse().expect("a number")),
            None => known[name].clone(),
        };
        let arguments: Vec<Given> = back
            .inputs
            .iter()
            .filter_map(|input| input["name"].as_str())
            .map(|name| {
                find(
                    given
                        .iter()
                        .find(|pair| pair.0 == name)
                        .map_or(name, |pair| pair.1),
                )
            })
            .collect();
        let answers = match call(&back.name, &arguments).expect("the function is known") {
            Ok(answers) => answers,
            // Beyond the other's range, which is a little narrower at some ends.
            Err(error) if error.kind() == ErrorKind::OutOfRange => continue,
            Err(error) => {
                failures.push(format!(
                    "{} {} by {}: {error}",
                    first.name, row.id, back.name
                ));
                continue;
            }
        };
        solved += 1;
        for ((name, _), got) in back.outputs.iter().zip(&answers) {
            let wanted = match wanted {
                None => find(name),
                Some(pairs) => match pairs.iter().find(|pair| pair.0 == name) {
                    Some(pair) => find(pair.1),
                    None => continue,
                },
            };
            let same = match (&wanted, got) {
                (Given::Number(wanted), Got::Number(got)) => {
                    (wanted - got).abs() <= NEAR * wanted.abs().max(1.0)
                }
                (Given::Count(wanted), Got::Whole(got)) => u64::from(*wanted) == *got,
                _ => false,
            };
            if !same {
                failures.push(format!(
                    "{} {} by {}: {name} is {got:?}, not {wanted:?}",
                    first.name, row.id, back.name
                ));
            }
        }
    }
    if solved == 0 {
        failures.push(format!(
            "{} by {}: no row was solved back",
            first.name, back.name
        ));
    }
    solved
}
