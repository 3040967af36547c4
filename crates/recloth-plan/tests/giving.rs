//! What may give where pieces do not fit, and what is left: briefs with cases worked by hand. All measures are invented.

use core::ops::ControlFlow;

use recloth_lay::{Amount, Needed, StripOptions, check};
use recloth_plan::{BriefError, Plan, SEARCH, plan_with};

const GOOD: &str = include_str!("../src/example.toml");

fn planned(brief: &str) -> Result<Plan, BriefError> {
    let options = StripOptions {
        budget: 300_000,
        ..SEARCH
    };
    plan_with(brief, "brief.toml", &options, &mut |_, _| {
        ControlFlow::Continue(())
    })
}

/// The good brief with straps of 76 cm, 78 as cut, where the longest panel has 69; and what may give.
fn long_straps(gives: &str) -> String {
    assert!(GOOD.contains("strap_length = \"52 cm\""));
    GOOD.replace("strap_length = \"52 cm\"", "strap_length = \"76 cm\"") + gives
}

fn worksheet(plan: &Plan) -> String {
    let files = plan.files().expect("it can be drawn");
    let (_, page) = files
        .into_iter()
        .find(|(name, _)| name == "worksheet.html")
        .expect("it is there");
    String::from_utf8(page).expect("UTF-8")
}

#[test]
fn a_piece_gives_as_little_as_does() {
    let plan = planned(&long_straps(
        "\n[[may_give]]\npiece = \"pinafore strap\"\nshorter_by = \"12 cm\"\n",
    ))
    .unwrap();
    // 78 - 69 = 9 cm, taken out half-way up.
    let said = "the pinafore strap: 9.0 cm shorter, taken out 39.0 cm above its lower end as cut";
    let laid = &plan.lays[0];
    assert_eq!(plan.given(laid), [said]);
    let all = format!("All of it fits if this gives: {said}.");
    assert!(plan.answer().contains(&all), "{}", plan.answer());
    // What helps is told, so it is no error.
    assert!(plan.too_large().is_empty() && !plan.unplaced().is_empty());
    let (made, parts, fit) = laid.given.as_ref().unwrap().changed().unwrap();
    assert!(matches!(made[0].amount, Amount::Shorter { by } if (by - 90.0).abs() < 0.11));
    assert_eq!(check(parts, &laid.panels, &fit.lay), Ok(()));
    assert_eq!(plan.changed_panels(laid).len(), 2);
    let page = worksheet(&plan);
    assert!(page.contains(said) && page.contains("all of it, once something gives"));
    assert_eq!(page.matches("<figure>").count(), 4);
}

#[test]
fn what_is_minded_least_gives_first_and_halves_are_named() {
    let plan = planned(&long_straps(
        "\n[[may_give]]\npiece = \"pinafore strap\"\njoin_from = \"10 cm\"\njoin_to = \"60 cm\"\n\
         \n[[may_give]]\npiece = \"pinafore strap\"\nshorter_by = \"12 cm\"\n",
    ))
    .unwrap();
    let laid = &plan.lays[0];
    let [said] = &plan.given(laid)[..] else {
        panic!("one change")
    };
    // Within 10 and 60 cm; the middle of it where both halves have room to spare.
    assert!(
        said.starts_with("the pinafore strap: 2 of 2 joined across the grain, the seam 35.0 cm")
            && said.ends_with("1.0 cm of allowance on each half"),
        "{said}"
    );
    let labels: Vec<String> = plan
        .changed_panels(laid)
        .iter()
        .flat_map(|panel| panel.pieces.iter().map(|piece| piece.label.clone()))
        .collect();
    for half in ["4 half 1", "4 half 2"] {
        assert_eq!(labels.iter().filter(|label| *label == half).count(), 2);
    }
}

#[test]
fn what_is_not_enough_is_said() {
    let plan = planned(&long_straps(
        "\n[[may_give]]\npiece = \"pinafore strap\"\nshorter_by = \"2 cm\"\n",
    ))
    .unwrap();
    let least = &plan.lays[0].given.as_ref().unwrap().least;
    assert!(matches!(least.answer, Needed::Never { .. }));
    assert!(
        plan.answer()
            .contains("It is proved that what may give is not enough."),
        "{}",
        plan.answer()
    );
    assert_eq!(plan.too_large().len(), 1);
    assert!(plan.given(&plan.lays[0]).is_empty() && plan.changed_panels(&plan.lays[0]).is_empty());
}

#[test]
fn nothing_gives_where_all_fits_and_what_is_left_is_listed() {
    let plan = planned(&format!(
        "{GOOD}\n[[may_give]]\npiece = \"pinafore skirt\"\nshorter_by = \"5 cm\"\n"
    ))
    .unwrap();
    let laid = &plan.lays[0];
    assert!(laid.given.is_none() && plan.answer().starts_with("Everything fits"));
    let left = plan.rectangles_left(laid);
    assert!(!left.is_empty() && left.iter().all(|(_, r)| r.width.min(r.height) >= 50.0));
    assert!(left.is_sorted_by(|a, b| a.1.area_mm2 >= b.1.area_mm2));
    // No more is left than the panels less the pieces.
    let area: f64 = left.iter().map(|(_, r)| r.area_mm2).sum();
    let panels: f64 = laid.panels.iter().map(|panel| panel.area_mm2()).sum();
    assert!(area < panels * (1.0 - laid.fit.share) + 1.0, "{area}");
    let drawn = plan.lay_panels(laid);
    let outlines: usize = drawn.iter().map(|panel| panel.left.len()).sum();
    assert_eq!(outlines, left.len());
    let line = plan.left_over(laid).unwrap();
    assert!(line.starts_with("Left of the shirting: "), "{line}");
    assert!(worksheet(&plan).contains("Left over, of each part"));
}

#[test]
fn what_the_book_shows_can_be_read() {
    let page = include_str!("../../../book/pages/what-must-give.md");
    let (_, after) = page.split_once("```toml\n").unwrap();
    let (gives, _) = after.split_once("```").unwrap();
    assert_eq!(gives.matches("[[may_give]]").count(), 3);
    let plan = planned(&format!("{GOOD}\n{gives}")).unwrap();
    assert!(plan.answer().starts_with("Everything fits"));
}

#[test]
fn slips_in_what_may_give_are_told() {
    for (give, wrong, right) in [
        (
            "piece = \"pinafore strop\"\nshorter_by = \"2 cm\"",
            "\"piece\" cannot be \"pinafore strop\"",
            "Is \"pinafore strap\" meant?",
        ),
        (
            "piece = \"pinafore strap\"\nshorter_bye = \"2 cm\"\ntilt_to_deg = 3",
            "unknown key \"shorter_bye\"",
            "\"shorter_by\" meant?",
        ),
        (
            "piece = \"pinafore strap\"",
            "says nothing that may give",
            "Add tilt_to_deg",
        ),
        (
            "piece = \"pinafore strap\"\nshorter_by = \"2 cm\"\ntilt_to_deg = 3",
            "says more than one thing",
            "of its own for each",
        ),
        (
            "piece = \"pinafore strap\"\njoin_from = \"20 cm\"",
            "has no \"join_to\"",
            "Add join_to",
        ),
        (
            "piece = \"pinafore strap\"\njoin_from = \"20 cm\"\njoin_to = \"10 cm\"",
            "nearer to the lower end",
            "exchange them",
        ),
        (
            "piece = \"pinafore strap\"\nshorter_by = \"2\"",
            "cannot be read as a length",
            "with its unit",
        ),
        (
            "piece = \"pinafore strap\"\ntilt_to_deg = 300",
            "\"tilt_to_deg\" is out of range",
            "between",
        ),
        // Even where all fits: the strap is 54 cm long as cut.
        (
            "piece = \"pinafore strap\"\njoin_from = \"20 cm\"\njoin_to = \"90 cm\"",
            "the shirting: change 0",
            "within the piece",
        ),
        (
            "piece = \"pinafore strap\"\nshorter_by = \"2 cm\"\nshorter_at = \"60 cm\"",
            "beyond",
            "within the piece",
        ),
    ] {
        let brief = format!("{GOOD}\n[[may_give]]\n{give}\n");
        let error = planned(&brief).unwrap_err();
        assert!(error.wrong().contains(wrong), "{give}\n{error}");
        assert!(error.right().contains(right), "{give}\n{error}");
        let first = GOOD.lines().count() + 2;
        assert!(error.line().is_some_and(|line| line >= first), "{error}");
    }
    let tilted = GOOD.replace(
        "fibre_is = \"known\" ",
        "tilt_deg = 5\nfibre_is = \"known\" ",
    ) + "\n[[may_give]]\npiece = \"pinafore strap\"\ntilt_to_deg = 5\n";
    let error = planned(&tilted).unwrap_err();
    assert!(
        error.wrong().contains("5 degrees off grain already"),
        "{error}"
    );
}

#[test]
fn a_flaw_may_lie_under_a_seam_allowance() {
    let clear = "clear = \"5 mm\" }";
    assert!(GOOD.contains(clear));
    let brief = |under: &str| GOOD.replace(clear, &format!("clear = \"5 mm\", under = {under} }}"));
    let plan = planned(&brief("[\"seam allowance\", \"lining\"]")).unwrap();
    // It is not cut away, but stays for the lay to judge: 2 + 2 x 0.5 cm wide.
    let laid = &plan.lays[0];
    let back = &laid.panels[0];
    assert!(back.holes().is_empty() && back.flaws().len() == 1);
    assert_eq!(back.flaws()[0].under, ["seam allowance", "lining"]);
    assert_eq!(back.flaws()[0].outline.len(), 4);
    assert!(laid.parts.iter().all(|part| part.seam.len() >= 4));
    assert_eq!(check(&laid.parts, &laid.panels, &laid.fit.lay), Ok(()));
    assert_eq!(plan.lay_panels(laid)[0].flaws.len(), 1);
    let error = planned(&brief("[\"linning\"]")).unwrap_err();
    assert!(
        error.wrong().contains("\"under\" cannot be \"linning\""),
        "{error}"
    );
    assert!(error.right().contains("\"lining\" meant?"), "{error}");
    let line = GOOD.lines().position(|line| line.contains(clear));
    assert_eq!(error.line(), line.map(|line| line + 1));
}
