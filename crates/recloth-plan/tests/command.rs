//! The command, from the outside: what it writes, what it says, how it ends.

use std::path::{Path, PathBuf};
use std::process::Command;

use tempfile::TempDir;

/// A small brief that is good; tests spoil one line of it.
const GOOD: &str = include_str!("../src/example.toml");

struct Ran {
    code: i32,
    out: String,
    err: String,
    dir: TempDir,
}

impl Ran {
    fn folder(&self) -> PathBuf {
        self.dir.path().join("out")
    }

    /// Everything in the directory besides the brief.
    fn written(&self) -> Vec<String> {
        let entries = std::fs::read_dir(self.dir.path()).expect("the directory is there");
        let names = entries.map(|entry| {
            entry
                .expect("an entry")
                .file_name()
                .to_string_lossy()
                .into_owned()
        });
        names.filter(|name| name != "brief.toml").collect()
    }
}

fn command(brief: &Path, into: &Path) -> (i32, String, String) {
    command_with(brief, into, &[])
}

fn command_with(brief: &Path, into: &Path, options: &[&str]) -> (i32, String, String) {
    let ran = Command::new(env!("CARGO_BIN_EXE_recloth"))
        .current_dir(brief.parent().expect("a directory"))
        .args(["plan", "brief.toml", "--into"])
        .arg(into)
        .args(options)
        .output()
        .expect("the command runs");
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).expect("UTF-8");
    (
        ran.status.code().expect("it ends by itself"),
        text(ran.stdout),
        text(ran.stderr),
    )
}

fn run(brief: &str) -> Ran {
    run_with(brief, &[])
}

fn run_with(brief: &str, options: &[&str]) -> Ran {
    let dir = TempDir::new().expect("a directory");
    let path = dir.path().join("brief.toml");
    std::fs::write(&path, brief).expect("the brief is written");
    let (code, out, err) = command_with(&path, &dir.path().join("out"), options);
    Ran {
        code,
        out,
        err,
        dir,
    }
}

/// The good brief with one text in place of another.
fn spoilt(good: &str, bad: &str) -> String {
    assert!(GOOD.contains(good), "{good}");
    GOOD.replacen(good, bad, 1)
}

fn line_of(brief: &str, text: &str) -> usize {
    brief
        .lines()
        .position(|line| line.contains(text))
        .expect("the line is there")
        + 1
}

/// The brief is refused: status 2, the line of `at`, both sentences, and nothing written.
fn refused(brief: &str, at: &str, wrong: &str, right: &str) {
    let ran = run(brief);
    let start = format!("brief.toml:{}: ", line_of(brief, at));
    assert_eq!(ran.code, 2, "{}", ran.err);
    assert!(ran.err.starts_with(&start), "{start}\n{}", ran.err);
    assert!(ran.err.contains(wrong), "{}", ran.err);
    assert!(ran.err.contains(right), "{}", ran.err);
    assert_eq!(ran.out, "");
    assert_eq!(ran.written(), Vec::<String>::new());
}

#[test]
fn a_good_brief_is_planned_and_summed_up() {
    let ran = run(GOOD);
    assert_eq!((ran.code, ran.err.as_str()), (0, ""));
    for said in [
        "Everything fits: all 12 pieces",
        "shirt back",
        "worksheet.html",
        "sheets-a4.pdf",
        "cannot be undone",
        "No doubts.",
    ] {
        assert!(ran.out.contains(said), "{said}\n{}", ran.out);
    }
    for file in [
        "worksheet.html",
        "sheets-a4.pdf",
        "sheets-letter.pdf",
        "plan.json",
        "pieces/01-pinafore-bib.svg",
    ] {
        assert!(ran.folder().join(file).is_file(), "{file}");
    }
}

#[test]
fn the_help_shows_a_brief_and_what_is_written() {
    let ran = Command::new(env!("CARGO_BIN_EXE_recloth"))
        .args(["plan", "--help"])
        .output()
        .expect("it runs");
    let help = String::from_utf8(ran.stdout).expect("UTF-8");
    assert!(ran.status.success());
    for said in [
        "[[panels]]",
        "readings = ",
        "worksheet.html",
        "Exit status",
        "pieces/*.svg",
    ] {
        assert!(help.contains(said), "{said}\n{help}");
    }
}

#[test]
fn slips_in_a_brief_are_told_with_line_and_remedy() {
    refused(
        &spoilt("seam = \"1 cm\"", "seam = \"1 cm"),
        "seam = \"1 cm",
        "not TOML",
        "quotes",
    );
    refused(
        &spoilt("skirt_length =", "skirt_lenght ="),
        "skirt_lenght",
        "unknown key \"skirt_lenght\"",
        "\"skirt_length\" meant?",
    );
    refused(
        &spoilt("loss = \"5 mm\"", "colour = \"blue\""),
        "colour",
        "unknown key \"colour\"",
        "It may have: across, along",
    );
    refused(
        &spoilt("waist = \"53 cm\"", "waist = \"53\""),
        "waist = ",
        "53 has no unit: 53 mm, 53 cm = 530 mm",
        "72,5 cm",
    );
    refused(
        &spoilt("waist = \"53 cm\"", "waist = 53"),
        "waist = ",
        "a bare number, not a length",
        "with its unit",
    );
    refused(
        &spoilt("waist = \"53 cm\"", "waist = \"1 mm\""),
        "waist = ",
        "cannot be 1 mm",
        "between 300 mm (11 3/4 in) and 2500 mm",
    );
    refused(
        &spoilt("waist = \"53 cm\"", "wiast = \"53 cm\""),
        "wiast",
        "unknown key \"wiast\"",
        "\"waist\" meant?",
    );
    refused(
        &spoilt("waist = \"53 cm\"\n", ""),
        "[people.Ida]",
        "[people.Ida] has no \"waist\"",
        "Add waist",
    );
    refused(
        &spoilt("for = \"Ida\"", "for = \"Ada\""),
        "for = ",
        "cannot be \"Ada\"",
        "\"Ida\" meant?",
    );
    refused(
        &spoilt("garment = \"pinafore\"", "garment = \"pinafor\""),
        "garment = ",
        "cannot be \"pinafor\"",
        "\"pinafore\" meant?",
    );
    refused(
        &spoilt("ruffle_pieces = 4", "ruffle_pieces = 2.5"),
        "ruffle_pieces",
        "not a whole number",
        "between 1 and 24",
    );
    refused(
        &spoilt("ruffle_fullness = 1.4", "ruffle_fullness = nan"),
        "ruffle_fullness",
        "out of range",
        "between 1 and 4",
    );
    refused(
        &spoilt("\"CD 60 cm\"", "\"CD 60 cm\", \"DC 61 cm\""),
        "readings",
        "DC is given twice",
        "measure again",
    );
    refused(
        &spoilt("\"AB 60 cm\", ", ""),
        "[[panels]]",
        "has no reading AB",
        "measure it",
    );
    refused(
        &spoilt("\"AC 92,2 cm\"", "\"AC 192 cm\""),
        "readings",
        "make no triangle",
        "between",
    );
    refused(
        &spoilt("at = [\"50 cm\"", "at = [\"5 m\""),
        "[[panels]]",
        "cannot be used",
        "ink lies outside",
    );
    refused(
        &spoilt("bib_width = \"17 cm\"", "bib_width = \"60 cm\""),
        "[[make]]",
        "wider than the waist",
        "smaller bib_width",
    );
    refused(
        &spoilt("fibre = \"cotton\"", "fibre = \"coton\""),
        "fibre = ",
        "cannot be \"coton\"",
        "\"cotton\" meant?",
    );
}

#[test]
fn a_key_that_is_known_is_never_called_a_slip_of_another() {
    // bib_height is right and bib_widht is not; and with neither slip there, the table lacks bib_width.
    refused(
        &spoilt("bib_width =", "bib_widht ="),
        "bib_widht",
        "unknown key \"bib_widht\"",
        "\"bib_width\" meant?",
    );
    refused(
        &spoilt("bib_width = \"17 cm\"\n", ""),
        "[[make]]",
        "has no \"bib_width\"",
        "Add bib_width",
    );
    refused(
        &spoilt("grain = \"AD\"", "grain = \"AD\"\ngrain_deg = 90"),
        "grain_deg",
        "both grain and grain_deg",
        "Keep the one",
    );
}

#[test]
fn a_reading_without_its_space_or_length_is_told() {
    for bad in ["AB60 cm", "AB", "", "AB60cm"] {
        refused(
            &spoilt("AB 60 cm", bad),
            "readings",
            &format!("\"readings\" of panel \"shirt back\" cannot be \"{bad}\""),
            "\"AB 22 1/2 in\"",
        );
    }
}

#[test]
fn a_text_longer_than_can_be_printed_is_refused() {
    let long = "x ".repeat(600);
    for (good, at) in [
        ("A pinafore from a shirt", "title"),
        ("shirt front", "name ="),
        ("Measures invented.", "note"),
    ] {
        let bad = spoilt(good, &long);
        let ran = run(&bad);
        let start = format!(
            "brief.toml:{}: \"{}\"",
            line_of(&bad, &long),
            at.trim_end_matches(" =")
        );
        assert_eq!(ran.code, 2, "{at}");
        assert!(
            ran.err.starts_with(&start) && ran.err.contains("1200 letters"),
            "{}",
            ran.err
        );
        assert!(ran.err.len() < 500, "{}", ran.err);
    }
}

#[test]
fn weights_with_a_mark_of_thousands_are_refused() {
    let bath = "[[baths]]\nwhat = \"dye\"\ncloth = \"shirting\"\ndry_weight = \"1,234 g\"\nlitres_per_kg = 20\n";
    refused(
        &format!("{GOOD}\n{bath}"),
        "1,234 g",
        "cannot be read as a weight",
        "mark for thousands",
    );
}

#[test]
fn bleach_is_refused_politely() {
    let bath = "[[baths]]\nwhat = \"bleach\"\ncloth = \"shirting\"\ndry_weight = \"300 g\"\nlitres_per_kg = 20\n";
    refused(
        &format!("{GOOD}\n{bath}"),
        "what = \"bleach\"",
        "plans no bleach yet",
        "swatch test",
    );
    let dye = bath.replace("\"bleach\"", "\"dye\"")
        + "with = [{ what = \"Javel water\", percent_of_weight = 5 }]\n";
    refused(
        &format!("{GOOD}\n{dye}"),
        "Javel",
        "plans no bleach yet",
        "label",
    );
}

#[test]
fn a_step_of_no_garment_is_told() {
    let step = "[[steps]]\nname = \"sign it\"\nkind = \"hem\"\nof = \"pinafor\"\n";
    refused(
        &format!("{GOOD}\n{step}"),
        "of = \"pinafor\"",
        "cannot be \"pinafor\"",
        "\"pinafore\" meant?",
    );
}

#[test]
fn steps_in_a_ring_are_told_in_words() {
    let steps = "[[steps]]\nname = \"sign it\"\nkind = \"hem\"\nafter = [\"date it\"]\n\
                 [[steps]]\nname = \"date it\"\nkind = \"hem\"\nafter = [\"sign it\"]\n";
    refused(
        &format!("{GOOD}\n{steps}"),
        "[[steps]]",
        "\"date it\" comes before \"sign it\"",
        "\"after\"",
    );
}

#[test]
fn a_piece_larger_than_everything_is_named_with_its_bound() {
    let brief = spoilt("skirt_length = \"30 cm\"", "skirt_length = \"150 cm\"");
    let ran = run(&brief);
    assert_eq!(ran.code, 2);
    let start = format!(
        "brief.toml:{}: the pinafore skirt is larger than every panel",
        line_of(&brief, "[[make]]")
    );
    assert!(ran.err.starts_with(&start), "{}", ran.err);
    assert!(
        ran.err.contains("along the grain") && ran.err.contains("shorter"),
        "{}",
        ran.err
    );
    // The plan is whole, so that its drawing can be looked at.
    assert!(ran.folder().join("worksheet.html").is_file());
    assert!(
        ran.out
            .contains("2 of 2, pinafore skirt: larger than every panel"),
        "{}",
        ran.out
    );
}

#[test]
fn a_change_that_helps_is_told_and_ends_with_one() {
    let brief = spoilt("strap_length = \"52 cm\"", "strap_length = \"76 cm\"")
        + "\n[[may_give]]\npiece = \"pinafore strap\"\njoin_from = \"10 cm\"\njoin_to = \"60 cm\"\n";
    let ran = run(&brief);
    // 78 cm as cut lie on no panel: with the join that is no error any more.
    assert_eq!((ran.code, ran.err.as_str()), (1, ""));
    for said in [
        "All of it fits if this gives: the pinafore strap: 2 of 2 joined",
        "Left of the shirting: ",
    ] {
        assert!(ran.out.contains(said), "{said}\n{}", ran.out);
    }
    let json = std::fs::read_to_string(ran.folder().join("plan.json")).expect("there");
    let json: serde_json::Value = serde_json::from_str(&json).expect("JSON");
    let made = &json["lays"][0]["given"]["least"]["answer"]["changed"]["made"];
    assert_eq!(made[0]["amount"]["join"]["pieces"], 2, "{made}");
}

#[test]
fn too_much_for_the_cloth_ends_with_one() {
    let more = spoilt("ruffle_pieces = 4", "ruffle_pieces = 8\nskirt_panels = 8");
    let ran = run(&more.replace("fullness = 1.6", "fullness = 4"));
    assert_eq!((ran.code, ran.err.as_str()), (1, ""));
    assert!(
        ran.out.contains("pieces have a place. Without one:"),
        "{}",
        ran.out
    );
    assert!(ran.out.contains("more area than the panels"), "{}", ran.out);
    assert!(ran.folder().join("worksheet.html").is_file());
}

#[test]
fn names_that_look_like_markup_stay_text() {
    let brief = spoilt(
        "A pinafore from a shirt",
        "<b>Öl & \\u0001 \\\"Łódź\\\"</script>",
    )
    .replace("name = \"shirt back\"", "name = \"../<back> & 'co'\"")
    .replace(
        "garment = \"pinafore\"",
        "garment = \"pinafore\"\nname = \"../../<i>Ida's\"",
    );
    let ran = run(&brief);
    assert_eq!((ran.code, ran.err.as_str()), (0, ""));
    let page = std::fs::read_to_string(ran.folder().join("worksheet.html")).expect("there");
    assert!(
        page.contains("&lt;b&gt;Öl &amp;") && !page.contains("<b>Öl"),
        "{}",
        &page[..400]
    );
    let page = scraper::Html::parse_document(&page);
    assert_eq!(page.errors, Vec::<String>::new());
    // No name leads out of the folder.
    assert_eq!(ran.written(), ["out"]);
    for entry in std::fs::read_dir(ran.folder().join("pieces")).expect("there") {
        let text = std::fs::read_to_string(entry.expect("an entry").path()).expect("UTF-8");
        roxmltree::Document::parse(&text).expect("XML");
    }
}

#[test]
fn a_brief_that_cannot_be_read_is_told() {
    let dir = TempDir::new().expect("a directory");
    let (code, out, err) = command(&dir.path().join("brief.toml"), &dir.path().join("out"));
    assert_eq!((code, out.as_str()), (2, ""));
    assert!(
        err.starts_with("brief.toml: the brief cannot be read") && err.contains("Give the path"),
        "{err}"
    );

    std::fs::write(
        dir.path().join("brief.toml"),
        b"title = \"x\"\nnote = \"\xff\"\n",
    )
    .expect("written");
    let (code, _, err) = command(&dir.path().join("brief.toml"), &dir.path().join("out"));
    assert_eq!(code, 2);
    assert!(
        err.starts_with("brief.toml:2: the brief is not text in UTF-8"),
        "{err}"
    );
    assert!(!dir.path().join("out").exists());
}

#[test]
fn a_folder_that_cannot_be_written_leaves_nothing() {
    let dir = TempDir::new().expect("a directory");
    let brief = dir.path().join("brief.toml");
    std::fs::write(&brief, GOOD).expect("written");
    let (code, _, err) = command(&brief, &brief);
    assert_eq!(code, 2);
    assert!(err.contains("is a file, not a folder"), "{err}");
    let (code, _, err) = command(&brief, &dir.path().join("not/there/out"));
    assert_eq!(code, 2);
    assert!(err.contains("Make the folder above it first"), "{err}");
    let left = std::fs::read_dir(dir.path()).expect("there").count();
    assert_eq!(left, 1);
}

#[test]
fn a_second_run_replaces_its_own_files_and_no_others() {
    let ran = run(GOOD);
    let note = ran.folder().join("my notes.txt");
    std::fs::write(&note, "keep").expect("written");
    let stale = ran.folder().join("pieces/01-pinafore-bib.svg");
    let brief = ran.dir.path().join("brief.toml");
    std::fs::write(
        &brief,
        spoilt(
            "garment = \"pinafore\"",
            "garment = \"pinafore\"\nname = \"apron\"",
        ),
    )
    .expect("written");
    assert_eq!(command(&brief, &ran.folder()).0, 0);
    assert!(!stale.exists(), "what the new plan has not is gone");
    assert!(ran.folder().join("pieces/01-apron-bib.svg").is_file());
    assert_eq!(std::fs::read_to_string(&note).expect("still there"), "keep");

    // A file in the way that no plan made: nothing is written.
    let before = std::fs::read(ran.folder().join("plan.json")).expect("there");
    std::fs::write(&stale, "mine").expect("written");
    std::fs::write(&brief, GOOD).expect("written");
    let (code, _, err) = command(&brief, &ran.folder());
    assert_eq!(code, 2);
    assert!(
        err.contains("01-pinafore-bib.svg: is there already"),
        "{err}"
    );
    assert_eq!(std::fs::read_to_string(&stale).expect("there"), "mine");
    assert_eq!(
        std::fs::read(ran.folder().join("plan.json")).expect("there"),
        before
    );
    assert!(!ran.folder().join(".recloth-unfinished").exists());
}

#[test]
fn a_changed_list_of_files_takes_nothing_of_the_makers() {
    let ran = run(GOOD);
    let list = ran.folder().join("plan.json");
    let text = std::fs::read_to_string(&list).expect("there");
    let changed = text.replacen(
        "\"files\": [",
        "\"files\": [\"my notes.txt\", \"../brief.toml\", \"pieces/my.svg\",",
        1,
    );
    assert_ne!(text, changed);
    std::fs::write(&list, changed).expect("written");
    let mine = ["my notes.txt", "pieces/my.svg"].map(|name| ran.folder().join(name));
    for path in &mine {
        std::fs::write(path, "keep").expect("written");
    }
    let brief = ran.dir.path().join("brief.toml");
    assert_eq!(command(&brief, &ran.folder()).0, 0);
    assert!(mine.iter().all(|path| path.is_file()) && brief.is_file());
}

#[test]
fn a_folder_in_the_place_of_a_file_leaves_the_old_plan_whole() {
    let ran = run(GOOD);
    let page = ran.folder().join("worksheet.html");
    std::fs::remove_file(&page).expect("there");
    std::fs::create_dir(&page).expect("made");
    let list = ran.folder().join("plan.json");
    let before = std::fs::metadata(&list).expect("there").modified().ok();
    let (code, _, err) = command(&ran.dir.path().join("brief.toml"), &ran.folder());
    assert_eq!(code, 2);
    assert!(err.contains("worksheet.html: is a folder"), "{err}");
    assert_eq!(
        std::fs::metadata(&list).expect("there").modified().ok(),
        before
    );
}

#[test]
fn dots_that_lead_nowhere_name_the_same_folder() {
    let dir = TempDir::new().expect("a directory");
    let brief = dir.path().join("brief.toml");
    std::fs::write(&brief, GOOD).expect("written");
    assert_eq!(command(&brief, Path::new("./out/./")).0, 0);
    assert_eq!(command(&brief, Path::new("out/.")).0, 0);
    assert!(dir.path().join("out/worksheet.html").is_file());
}

/// The good brief with its cloth bought by the length, in place of the panels there are.
fn bought() -> String {
    let (before, rest) = GOOD.split_once("[[panels]]").expect("there are panels");
    let (_, make) = rest.split_once("[[make]]").expect("something is made");
    let cloth = before.replacen(
        "[cloths.shirting]",
        "[cloths.shirting]\nbought_width = \"90 cm\"\nshrinks_along_pct = 4\nshrinks_across_pct = 2",
        1,
    );
    format!("{cloth}[[make]]{make}")
}

#[test]
fn cloth_bought_by_the_length_says_how_much_to_ask_for() {
    let ran = run(&bought());
    assert_eq!((ran.code, ran.err.as_str()), (0, ""), "{}", ran.out);
    let plan: serde_json::Value =
        serde_json::from_slice(&std::fs::read(ran.folder().join("plan.json")).expect("a plan"))
            .expect("JSON");
    let laid = &plan["lays"][0];
    let number = |value: &serde_json::Value| value.as_f64().expect("a number");
    let (bought, panel) = (&laid["bought"], &laid["panels"][0]["outline"]);
    // 90 cm less 2 % in the wash.
    assert!((number(&panel[2]["y"]) - 882.0).abs() < 1e-9);
    let washed = number(&panel[2]["x"]);
    // The wash takes 4 of every 100 bought.
    assert!((number(&bought["length"]) * 0.96 - washed).abs() < 1e-9);
    let ask = number(&bought["ask"]);
    assert!(
        ask % 100.0 == 0.0
            && ask >= number(&bought["length"])
            && ask < number(&bought["length"]) + 100.0
    );
    assert_eq!(
        laid["fit"]["lay"]["placements"].as_array().map(Vec::len),
        Some(12)
    );
    // As little cloth as is found: four fifths of it are covered.
    assert!(
        number(&laid["fit"]["share"]) > 0.75,
        "{}",
        laid["fit"]["share"]
    );
    let asked = format!(
        "Ask for {:.1} cm of shirting, 90.0 cm wide between the selvedges",
        ask / 10.0
    );
    assert!(ran.out.contains(&asked), "{asked}\n{}", ran.out);
    assert!(
        ran.out.contains("cm of shirting to be bought"),
        "{}",
        ran.out
    );
    let page = std::fs::read_to_string(ran.folder().join("worksheet.html")).expect("a worksheet");
    assert!(page.contains(&asked) && page.contains("shirting, bought"));
}

#[test]
fn cloth_cut_folded_is_laid_folded_and_says_how_to_fold_it() {
    let brief = bought().replace(
        "bought_width = \"90 cm\"",
        "bought_width = \"150 cm\"\ncut_folded = true",
    );
    let ran = run_with(&brief, &["--budget", "2000000"]);
    assert_eq!((ran.code, ran.err.as_str()), (0, ""), "{}", ran.out);
    let plan: serde_json::Value =
        serde_json::from_slice(&std::fs::read(ran.folder().join("plan.json")).expect("a plan"))
            .expect("JSON");
    let laid = &plan["lays"][0];
    assert_eq!(laid["bought"]["folded"], true);
    // 150 cm less 2 % in the wash, folded in the middle.
    let fold = &laid["fit"]["lay"]["folds"][0];
    for end in ["from", "to"] {
        let height = fold[end]["y"].as_f64().expect("a number");
        assert!((height - 735.0).abs() < 1e-9, "{height}");
    }
    assert_eq!(
        laid["fit"]["lay"]["placements"].as_array().map(Vec::len),
        Some(12)
    );
    let how = "fold it lengthwise, right sides together, selvedges together.";
    assert!(ran.out.contains(how), "{}", ran.out);
    let page = std::fs::read_to_string(ran.folder().join("worksheet.html")).expect("a worksheet");
    assert!(page.contains(how) && page.contains("through both layers"));
}

#[test]
fn only_what_is_bought_is_cut_folded() {
    let brief = spoilt("[cloths.shirting]", "[cloths.shirting]\ncut_folded = true");
    refused(
        &brief,
        "[cloths.shirting]",
        "is cut folded, but not bought by the length",
        "bought_width",
    );
    // What goes onto the cloth opened only says so.
    let brief = bought().replace(
        "bought_width = \"90 cm\"",
        "bought_width = \"90 cm\"\ncut_folded = true",
    );
    let ran = run(&brief);
    assert_eq!((ran.code, ran.written().len()), (2, 0), "{}", ran.out);
    assert!(ran.err.contains("though it fits opened"), "{}", ran.err);
}

/// A waistcoat of an invented check, bought by the length.
const CHECKED: &str = r#"
title = "A waistcoat of checked cotton"
print_in = "centimetres"
[allowances]
seam = "1 cm"
hem = "3 cm"
[people.Marta]
waist = "75 cm"
bust = "93 cm"
neck = "37 cm"
shoulder = "12 cm"
back_length = "41 cm"
across_back = "35 cm"
armhole_depth = "21 cm"
[cloths.check]
fibre = "cotton"
fibre_is = "known"
right_side = "one side"
bought_width = "90 cm"
shrinks_along_pct = 4
[cloths.plain]
fibre = "cotton"
fibre_is = "known"
right_side = "both sides"
bought_width = "140 cm"
[[make]]
garment = "waistcoat"
for = "Marta"
cloth = "check"
lining = "plain"
ease = "9 cm"
below_waist = "8 cm"
neck_depth = "23 cm"
buttons = 5
button_across = "15 mm"
"#;

#[test]
fn bought_cloth_with_a_repeat_matches_at_the_notches_that_are_named() {
    let with = |keys: &str| {
        let width = "bought_width = \"90 cm\"";
        CHECKED.replacen(width, &format!("{width}\n{keys}"), 1)
    };
    let quick = ["--budget", "500000"];
    let checked = with("repeat_along = \"8 cm\"\nmatch_notches = [\"side\"]");
    let ran = run_with(&checked, &quick);
    assert_eq!((ran.code, ran.err.as_str()), (0, ""), "{}", ran.out);
    let plan: serde_json::Value =
        serde_json::from_slice(&std::fs::read(ran.folder().join("plan.json")).expect("a plan"))
            .expect("JSON");
    let laid = &plan["lays"][0];
    // The wash takes 4 % of the print too.
    let along = laid["panels"][0]["repeat"]["along"].as_f64();
    assert!((along.expect("a repeat") - 76.8).abs() < 1e-9);
    let parts = laid["parts"].as_array().expect("parts");
    let matches = |part: &&serde_json::Value| part["matches"].is_array();
    assert_eq!(parts.iter().filter(matches).count(), 2, "{parts:?}");

    let ran = run(&with("repeat_along = \"8 cm\"\nmatch_notches = [\"knee\"]"));
    assert_eq!((ran.code, ran.written().len()), (2, 0));
    let said = ["has a notch \"knee\"", "side, waist"];
    assert!(
        said.iter().all(|said| ran.err.contains(said)),
        "{}",
        ran.err
    );
    for half in ["repeat_across = \"8 cm\"", "match_notches = [\"side\"]"] {
        let ran = run(&with(half));
        assert_eq!((ran.code, ran.written().len()), (2, 0));
        assert!(ran.err.contains("Give both"), "{}", ran.err);
    }
    let panels = spoilt(
        "[cloths.shirting]",
        "[cloths.shirting]\nrepeat_along = \"8 cm\"",
    );
    refused(
        &panels,
        "repeat_along",
        "is of cloth that is bought",
        "bought_width",
    );
    let folded = run(&checked.replacen("right_side", "cut_folded = true\nright_side", 1));
    assert_eq!(folded.code, 2);
    assert!(folded.err.contains("folded"), "{}", folded.err);
}

#[test]
fn what_is_bought_has_no_panels() {
    let brief = spoilt(
        "[cloths.shirting]",
        "[cloths.shirting]\nbought_width = \"90 cm\"",
    );
    refused(
        &brief,
        "[[panels]]",
        "is bought by the length",
        "bought_width",
    );
    let brief = bought().replace("\"90 cm\"", "\"20 cm\"");
    let ran = run(&brief);
    assert_eq!((ran.code, ran.written().len()), (2, 0));
    assert!(ran.err.contains("the lay of the shirting"), "{}", ran.err);
}

#[test]
fn an_interrupt_leaves_nothing_half_written() {
    let dir = tempfile::tempdir().expect("a folder");
    std::fs::write(dir.path().join("brief.toml"), bought()).expect("a brief");
    let mut running = Command::new(env!("CARGO_BIN_EXE_recloth"))
        .args(["plan", "brief.toml", "--into", "out", "--seconds", "60"])
        .args(["--budget", "18446744073709551615"])
        .current_dir(dir.path())
        .stderr(std::process::Stdio::piped())
        .spawn()
        .expect("the command runs");
    std::thread::sleep(std::time::Duration::from_secs(1));
    let kill = Command::new("kill")
        .args(["-INT", &running.id().to_string()])
        .status();
    assert!(kill.is_ok_and(|status| status.success()));
    let status = running.wait().expect("it ends");
    assert_eq!(status.code(), Some(130));
    let left: Vec<_> = std::fs::read_dir(dir.path())
        .expect("a folder")
        .map(|entry| entry.expect("an entry").file_name())
        .collect();
    assert_eq!(left, ["brief.toml"]);
}

#[test]
fn the_seed_and_the_budget_say_where_the_search_goes() {
    let dir = tempfile::tempdir().expect("a folder");
    std::fs::write(dir.path().join("brief.toml"), bought()).expect("a brief");
    let plan = |into: &str, options: &[&str]| {
        let ran = Command::new(env!("CARGO_BIN_EXE_recloth"))
            .args(["plan", "brief.toml", "--into", into])
            .args(options)
            .current_dir(dir.path())
            .output()
            .expect("the command runs");
        assert_eq!(ran.status.code(), Some(0));
        std::fs::read(dir.path().join(into).join("plan.json")).expect("a plan")
    };
    let (one, again) = (
        plan("one", &["--budget", "300000"]),
        plan("again", &["--budget", "300000", "--seed", "1"]),
    );
    let other = plan("other", &["--budget", "300000", "--seed", "2"]);
    assert!(one == again && one != other);
}
