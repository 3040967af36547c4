//! The invented house-coat, from the brief in the book to the files on the table.

use std::path::Path;

use recloth_lay::{Together, check};
use recloth_plan::{Plan, plan, recloth_lay};

fn brief() -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../book/demo/house-coat.toml");
    std::fs::read_to_string(path).expect("the brief is in the book")
}

fn house_coat() -> Plan {
    plan(&brief(), "house-coat.toml").expect("the brief is good")
}

#[test]
fn all_pieces_are_laid_and_the_checker_agrees() {
    let plan = house_coat();
    assert_eq!(plan.unplaced(), []);
    assert!(plan.too_large().is_empty());
    assert_eq!(plan.lays.len(), 2);
    let mut placed = 0;
    for laid in &plan.lays {
        assert_eq!(laid.fit.together, Together::Fit, "{}", laid.cloth);
        assert_eq!(
            check(&laid.parts, &laid.panels, &laid.fit.lay),
            Ok(()),
            "{}",
            laid.cloth
        );
        placed += laid.fit.lay.placements.len();
    }
    assert_eq!(placed, plan.count() as usize);
    assert!(plan.answer().starts_with("Everything fits"));
}

#[test]
fn the_same_brief_gives_the_same_bytes() {
    let (once, again) = (house_coat().files().unwrap(), house_coat().files().unwrap());
    assert_eq!(once.len(), 4 + house_coat().pieces.len());
    for ((name, first), (_, second)) in once.iter().zip(&again) {
        assert!(first == second, "{name}");
    }
}
