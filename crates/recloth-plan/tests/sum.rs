//! `recloth sum`: every function through it, and lines as they are typed at the table.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "a test may panic")]

use std::process::Command;

use recloth_doors::{Given, Got};
use recloth_plan::sum::{Told, sum};
use recloth_table::{FUNCTIONS, Function};
use serde_json::Value;

/// Answers a line as a shell without quotes would pass it, but for `'...'`.
fn typed(line: &str) -> Told {
    let (mut words, mut word, mut quoted) = (Vec::new(), String::new(), false);
    for sign in line.chars() {
        match sign {
            '\'' => quoted = !quoted,
            ' ' if !quoted => words.push(std::mem::take(&mut word)),
            sign => word.push(sign),
        }
    }
    words.push(word);
    sum(&words, 80)
}

/// The line has an answer that says all this.
fn says(line: &str, wanted: &[&str]) {
    let told = typed(line);
    assert_eq!((told.code, told.err.as_str()), (0, ""), "{line}");
    let out = told.out.split_whitespace().collect::<Vec<_>>().join(" ");
    for wanted in wanted {
        assert!(
            out.contains(wanted),
            "{line}: no `{wanted}` in\n{}",
            told.out
        );
    }
}

/// The line has no answer, and the complaint says all this.
fn fails(line: &str, wanted: &[&str]) {
    let told = typed(line);
    assert_eq!((told.code, told.out.as_str()), (2, ""), "{line}");
    let err = told.err.split_whitespace().collect::<Vec<_>>().join(" ");
    for wanted in wanted {
        assert!(
            err.contains(wanted),
            "{line}: no `{wanted}` in\n{}",
            told.err
        );
    }
}

fn json(line: &str) -> Value {
    let told = typed(&format!("{line} --json"));
    assert_eq!(told.err, "", "{line}");
    assert_eq!(told.out.lines().count(), 1, "{line}");
    serde_json::from_str(&told.out).unwrap()
}

fn example(function: &Function) -> String {
    let help = typed(&format!("{} --help", function.name)).out;
    let start = format!("  recloth sum {} ", function.name);
    let line = help
        .lines()
        .find(|line| line.starts_with(&start))
        .expect("an example");
    line.trim_start()
        .strip_prefix("recloth sum ")
        .unwrap()
        .to_owned()
}

#[test]
fn every_function_gives_its_base_row() {
    for table in recloth_doors::tables() {
        let name = &table.function.name;
        let row = &table.rows[0];
        let function = recloth_table::find(name).unwrap();
        let line = json(&example(function));
        assert_eq!(line["function"], **name);
        for ((argument, given), spec) in function
            .arguments
            .iter()
            .zip(&row.given)
            .zip(&table.function.inputs)
        {
            let read = &line["arguments"][argument.name];
            let wanted = match given {
                Given::Number(value) => Value::from(*value),
                Given::Count(value) => Value::from(*value),
                Given::Text(value) => Value::from(value.as_str()),
                Given::Numbers(value) => Value::from(value.clone()),
                Given::Counts(value) => Value::from(value.clone()),
            };
            assert_eq!(*read, wanted, "{name}: {}", spec["name"]);
        }
        let got = recloth_doors::call(name, &row.given).unwrap().unwrap();
        for (((column, _), wanted), got) in table.function.outputs.iter().zip(&row.wanted).zip(got)
        {
            let answer = &line["answer"][column];
            // The same bits as a call without text between, and what the check value says.
            let direct = match &got {
                Got::Number(value) => Value::from(*value),
                Got::Whole(value) => Value::from(*value),
                Got::Text(value) => Value::from(value.as_str()),
                Got::Numbers(values) => Value::from(values.clone()),
            };
            assert_eq!(*answer, direct, "{name}: {column}");
            if wanted.is_empty() {
                continue;
            }
            match answer {
                Value::String(text) => assert_eq!(text, wanted, "{name}: {column}"),
                Value::Number(_) => near(answer, wanted, row.tolerance, name),
                Value::Array(items) => {
                    let words: Vec<&str> = wanted.split_whitespace().collect();
                    assert_eq!(words.len(), items.len(), "{name}: {column}");
                    for (item, word) in items.iter().zip(words) {
                        near(item, word, row.tolerance, name);
                    }
                }
                other => panic!("{name}: {column} is {other}"),
            }
        }
    }
}

fn near(answer: &Value, wanted: &str, tolerance: Option<f64>, name: &str) {
    let (answer, wanted) = (answer.as_f64().unwrap(), wanted.parse::<f64>().unwrap());
    let off = (answer - wanted).abs();
    assert!(
        off <= tolerance.unwrap_or(0.0),
        "{name}: {answer}, not {wanted}"
    );
}

#[test]
fn every_help_teaches_and_its_example_is_what_comes_out() {
    for function in FUNCTIONS {
        let help = typed(&format!("{} --help", function.name));
        assert_eq!((help.code, help.err.as_str()), (0, ""), "{}", function.name);
        for argument in function.arguments {
            assert!(
                help.out.contains(&format!("\n  {}: ", argument.name)),
                "{}",
                function.name
            );
        }
        for part in [
            "\nArguments\n",
            "\nAnswer\n",
            "\nErrors\n",
            "\nSource\n",
            "\nExample\n",
        ] {
            assert!(help.out.contains(part), "{}: {part}", function.name);
        }
        let words = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        let ran = typed(&example(function));
        assert_eq!(ran.code, 0, "{}: {}", function.name, ran.err);
        assert!(
            words(&help.out).ends_with(&words(&ran.out)),
            "{}",
            function.name
        );
        assert!(
            help.out.lines().all(|line| !line.ends_with(' ')),
            "{}",
            function.name
        );
    }
}

#[test]
fn the_list_has_every_function_on_one_line() {
    let list = typed("");
    // An empty word is none.
    assert_eq!(sum(&[], 80), list);
    for function in FUNCTIONS {
        let start = format!("  {} ", function.name);
        assert_eq!(
            list.out
                .lines()
                .filter(|line| line.starts_with(&start))
                .count(),
            1,
            "{start}"
        );
    }
    assert!(
        list.out.lines().all(|line| line.chars().count() <= 80),
        "{}",
        list.out
    );
    let one = typed("fullness").out;
    assert!(
        one.contains("  gathers ") && !one.contains("circle_skirt"),
        "{one}"
    );
    assert!(typed("--help").out.contains("28 1/2 in"));
}

#[test]
fn lengths_come_back_in_the_unit_typed() {
    says(
        "circle_skirt waist=28 1/2in length=60cm fraction=0.5",
        &[
            "waist = 28 1/2 in (723.9 mm)",
            "waist_radius 9 1/8 in 230.42 mm Radius of the waist edge",
            "Lengths in inches, as for waist, the first one given.",
        ],
    );
    says(
        "circle_skirt waist=71,5cm length=60cm",
        &["waist_radius 11,4 cm 113,8 mm", "fraction = 1 by default"],
    );
    says(
        "circle skirt 'waist=28½\"' --length=600",
        &["waist_radius 4½\" 115.21 mm"],
    );
    says(
        "Circle-Skirt waist = 710 length = 600 fraction = 1/2",
        &["waist_radius 226 mm", "waist = 710 mm"],
    );
    says(
        "circle_skirt waist=2ft 3in length=1 m",
        &["waist_radius 4 1/4 in", "hem_radius 3 ft 7 5/8 in"],
    );
    says(
        "circle_skirt length=60cm waist=28in",
        &["Lengths in centimetres, as for length, the first one given."],
    );
}

#[test]
fn other_quantities_come_back_in_theirs() {
    says("cloth_mass length=2m width=1,4m gsm=180", &["504 g"]);
    says("hip_waist_drop waist=980 hip=940", &["-40 mm"]);
    says(
        "mix_temperature volumes_ml=3l;2l temperatures_c=20C,140F",
        &["36 °C", "°C"],
    );
    says("dimensional_change before=500 after=485", &["-3 %"]);
}

#[test]
fn one_argument_alone_needs_no_name_and_help_no_hyphens() {
    says("tex_from_denier 180", &["denier = 180", "20 tex"]);
    says("parse_length 31 3/8 in", &["text = 31 3/8 in", "796.92 mm"]);
    says(
        "tex_from_cotton_count 40 plies=2",
        &["plies = 2", "29.53 tex"],
    );
    fails(
        "cap_for_ease 45cm 3",
        &["armhole, character 6: 3 has no unit"],
    );
    fails("circle_skirt waist=2ft 3 length=1m", &["3 has no unit"]);
    fails("dart 30 100", &["`30 100` has no name"]);
    assert_eq!(typed("dart help"), typed("dart --help"));
    assert_eq!(typed("help"), typed("-h"));
}

#[test]
fn lists_are_parted_as_people_part_them() {
    for list in [
        "lengths=10.4,10.4,10.2",
        "lengths=10.4mm, 10.4mm, 10.2mm",
        "'lengths=10,4; 10,4; 10,2'",
        "lengths=10.4 10.4 10.2",
        "lengths=10.4 lengths=10.4 lengths=10.2",
        "'lengths=1,04cm; 1,04cm; 1,02cm'",
    ] {
        let line = json(&format!("round_set {list}"));
        assert_eq!(
            line["arguments"]["lengths"],
            serde_json::json!([10.4, 10.4, 10.2]),
            "{list}"
        );
        assert_eq!(
            line["answer"]["tapes"],
            serde_json::json!([11.0, 10.0, 10.0]),
            "{list}"
        );
    }
    fails(
        "round_set lengths=71,5cm",
        &["some items have a unit", "'71,5cm; 60cm'"],
    );
    fails("round_set lengths=", &["lengths has 0 items"]);
    fails(
        "round_set lengths=10,,20",
        &["lengths: a length is missing"],
    );
}

#[test]
fn slips_are_told_with_what_was_meant() {
    fails(
        "cirlce_skirt waist=71cm",
        &["no function cirlce_skirt", "is circle_skirt meant?"],
    );
    fails("pleats", &["is one of these meant: box_pleats,"]);
    fails(
        "largest_rectangle outline=1,2",
        &["largest_rectangle works on outlines", "from Rust or Python"],
    );
    fails(
        "quilt",
        &["no function quilt", "recloth sum lists them all"],
    );
    fails(
        "circle_skirt wiast=71cm length=60cm",
        &[
            "no argument wiast",
            "is waist meant?",
            "waist, length, fraction",
        ],
    );
    fails(
        "circle_skirt 71cm 60cm",
        &["`71cm 60cm` has no name", "waist=... length=..."],
    );
    fails(
        "circle_skirt",
        &[
            "waist, length are missing",
            "a length, 1 to 100000 mm",
            "For example: recloth sum circle_skirt waist=710mm",
        ],
    );
    fails("circle_skirt waist=71cm", &["length is missing"]);
    fails(
        "circle_skirt waist=71cm waist=72cm length=1m",
        &["waist is given twice"],
    );
    fails("waist=71cm", &["which function?"]);
    fails(
        "circle_skirt waist=71cm length=60cm --jsn",
        &["--jsn is no option", "--json"],
    );
    fails(
        "format_length length=1m style=inch_eigth",
        &[
            "`inch_eigth` is not one of the choices",
            "is inch_eighth meant?",
        ],
    );
}

#[test]
fn values_that_will_not_do_name_the_argument_and_what_would() {
    fails(
        "circle_skirt waist=28 1/2 length=60cm",
        &["waist", "28.5 has no unit", "28.5 in = 723.9 mm"],
    );
    fails(
        "circle_skirt waist=1,234mm length=60cm",
        &["waist", "may be 1.234 or 1234"],
    );
    fails(
        "circle_skirt waist=71 zm length=60cm",
        &["waist, character 4: cannot be read from here"],
    );
    fails(
        "circle_skirt waist= length=60cm",
        &["waist: a length is missing"],
    );
    fails(
        "circle_skirt waist=-5cm length=60cm",
        &[
            "waist = -50 is not between 1 and 100000",
            "In centimetres: 0.1 cm to 10000.0 cm.",
        ],
    );
    fails(
        "circle_skirt waist=71cm length=60cm fraction=half",
        &[
            "fraction: this cannot be read as a number",
            "a number, 0.01 to 4",
        ],
    );
    fails(
        "circle_skirt waist=71cm length=60cm fraction=nan",
        &["fraction = NaN is not a finite number"],
    );
    fails(
        "circle_skirt_longest waist=710 fraction=1 cloth_width=1400 pieces=2.5",
        &["pieces = 2.5 is not a whole number"],
    );
    fails(
        "circle_skirt_longest waist=710 fraction=1 cloth_width=1400 pieces=-1",
        &["pieces = -1 is not between 1 and 64"],
    );
    fails(
        "circle_skirt_longest waist=28in fraction=1 cloth_width=7in pieces=1",
        &["cloth_width", "In inches: at least 9 in."],
    );
    fails("bath_volume mass_g=1 gallon", &["mass_g"]);
}

#[test]
fn what_is_dangerous_is_refused_and_cautions_are_printed() {
    let line = "bleach_dilution volume_ml=10l target_pct=0.05% stock_pct=5% minutes=10 fibre=linen finish=plain swatch=passed in_bath=";
    says(
        &format!("{line}water only"),
        &[
            "bleach_ml 0.1 l 100 ml",
            "Cautions: - ",
            "open, gloves and eye protection",
        ],
    );
    fails(
        &format!("{line}acid"),
        &[
            "in_bath",
            "water_only: Water and nothing else.",
            "Refused naming in_bath",
        ],
    );
    fails(
        &format!("{line}vinegar"),
        &[
            "`vinegar` is not one of the choices",
            "acid: An acid: vinegar",
        ],
    );
    let refused = json(&format!("{line}ammonia"));
    assert_eq!(refused["error"]["core"]["argument"], "in_bath");
    let doubted = json("girth_doubts girth=71");
    assert!(
        doubted["doubts"][0].as_str().unwrap().contains("inches"),
        "{doubted}"
    );
    assert!(
        json("circle_skirt waist=1")["error"]["text"]
            .as_str()
            .unwrap()
            .contains("length is missing")
    );
}

#[test]
fn what_the_readme_shows_is_what_comes_out() {
    let readme = include_str!("../../../README.md");
    let line = readme
        .lines()
        .find_map(|line| line.strip_prefix("$ recloth sum "))
        .unwrap();
    let told = typed(line);
    assert!(
        readme.contains(&format!("{line}\n{}```", told.out)),
        "{}",
        told.out
    );
}

/// The program itself: words, streams and exit status; arguments as odd as a slip of the hand makes them.
#[test]
fn the_command_answers_as_the_library_does() {
    let run = |words: &[&str]| {
        let ran = Command::new(env!("CARGO_BIN_EXE_recloth"))
            .arg("sum")
            .args(words)
            .output()
            .unwrap();
        let text = |bytes| String::from_utf8(bytes).unwrap();
        (ran.status.code(), text(ran.stdout), text(ran.stderr))
    };
    let (code, out, err) = run(&["cap_for_ease", "armhole=45cm", "ease_pct=", "-3"]);
    assert_eq!((code, err.as_str()), (Some(0), ""), "{out}");
    let (code, out, _) = run(&["circle_skirt", "waist=28", "1/2in", "length=60cm", "--json"]);
    assert_eq!(code, Some(0));
    assert!(
        out.starts_with("{\"function\":\"circle_skirt\"") && out.ends_with("}\n"),
        "{out}"
    );
    let (code, out, err) = run(&["circle_skirt", "--waist=-1"]);
    assert_eq!((code, out.as_str()), (Some(2), ""));
    assert!(
        err.starts_with("recloth sum circle_skirt: length is missing\n"),
        "{err}"
    );
    assert!(run(&["dart", "-h"]).1.starts_with("dart: "));
    assert!(run(&[]).1.contains("  circle_skirt "));
}
