//! What a lay leaves: areas and rectangles worked by hand.

use std::f64::consts::PI;

use kurbo::Point;
use recloth_lay::{
    Flaw, Hand, Lay, Leftover, LeftoverOptions, Options, Panel, Part, Placement, fit, leftovers,
};

fn rectangle(width: f64, height: f64) -> Vec<Point> {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
        .map(Point::from)
        .into()
}

fn cloth() -> Panel {
    Panel::new("cloth", rectangle(400.0, 700.0)).expect("a good panel")
}

/// One piece of each part on the only panel, shifted so.
fn lay(shifts: &[(f64, f64)]) -> Lay {
    let placement = |(part, &shift): (usize, &(f64, f64))| Placement {
        part,
        hand: Hand::AsDrawn,
        panel: 0,
        mirrored: false,
        turn_deg: 0.0,
        shift: shift.into(),
    };
    Lay {
        placements: shifts.iter().enumerate().map(placement).collect(),
        ..Lay::default()
    }
}

fn left(parts: &[Part], panel: Panel, lay: &Lay) -> Vec<Leftover> {
    leftovers(parts, &[panel], lay, &LeftoverOptions::default()).expect("good input")
}

/// Area by the shoelace formula, holes taken off.
fn shoelace(shape: &Leftover) -> f64 {
    let area = |points: &[Point]| -> f64 {
        let next = points.iter().cycle().skip(1);
        points
            .iter()
            .zip(next)
            .map(|(p, q)| p.x * q.y - q.x * p.y)
            .sum::<f64>()
            / 2.0
    };
    // Holes run the other way, so theirs is negative.
    area(&shape.outline) + shape.holes.iter().map(|hole| area(hole)).sum::<f64>()
}

fn sides(shape: &Leftover) -> Vec<(f64, f64)> {
    let neat = |length: f64| (length * 100.0).round() / 100.0;
    shape
        .rectangles
        .iter()
        .map(|r| (neat(r.width), neat(r.height)))
        .collect()
}

#[test]
fn a_piece_in_the_middle_leaves_a_frame() {
    // 100 x 100 at 150, 200 on 400 x 700: 280 000 - 10 000.
    let parts = [Part::new("pocket", rectangle(100.0, 100.0))];
    let left = left(&parts, cloth(), &lay(&[(150.0, 200.0)]));
    assert_eq!((left.len(), left[0].holes.len(), left[0].panel), (1, 1, 0));
    assert!((left[0].area_mm2 - 270_000.0).abs() < 0.1);
    assert!((shoelace(&left[0]) - 270_000.0).abs() < 0.1);
    // Above it 400 x 400; below it 400 x 200; beside it 150 x 100 twice, of which the third is one.
    assert_eq!(
        sides(&left[0]),
        [(400.0, 400.0), (400.0, 200.0), (150.0, 100.0)]
    );
}

#[test]
fn a_band_across_leaves_two_shapes_the_larger_first() {
    // 400 x 50 across at 500: 400 x 500 below, 400 x 150 above.
    let parts = [Part::new("band", rectangle(400.0, 50.0))];
    let left = left(&parts, cloth(), &lay(&[(0.0, 500.0)]));
    let areas: Vec<f64> = left.iter().map(|shape| shape.area_mm2.round()).collect();
    assert_eq!(areas, [200_000.0, 60_000.0]);
    assert_eq!(sides(&left[1]), [(400.0, 150.0)]);
    assert_eq!(shoelace(&left[0]).round(), 200_000.0);
}

#[test]
fn flaws_with_their_margins_are_not_left() {
    // A stain 20 x 20 with 10 mm: 20 x 20 + 4 x 20 x 10 + a circle of 10.
    let stain = Flaw::new(
        [
            (100.0, 100.0),
            (120.0, 100.0),
            (120.0, 120.0),
            (100.0, 120.0),
        ],
        10.0,
    );
    let stained = cloth().with_flaws(vec![stain]).expect("a good flaw");
    let left = left(&[], stained, &Lay::default());
    let taken = 400.0 + 800.0 + PI * 100.0;
    // The corners are cut outside the arc, by at most 0.05 mm over a quarter of its 15.7.
    let over = 280_000.0 - left[0].area_mm2 - taken;
    assert!((0.0..3.2).contains(&over), "{over}");
    // A stain beside the cloth, 4 mm off, whose margin of 10 reaches 6 mm in along 100: a strip of 6 x 100, and at its
    // ends a little of the round corners, less than 8 x 6 each.
    let beside = Flaw::new(
        [(-50.0, 100.0), (-4.0, 100.0), (-4.0, 200.0), (-50.0, 200.0)],
        10.0,
    );
    let stained = cloth()
        .with_flaws(vec![beside.clone()])
        .expect("a good flaw");
    let left = self::left(&[], stained, &Lay::default());
    let taken = 280_000.0 - left[0].area_mm2;
    assert!((600.0..700.0).contains(&taken), "{taken}");
    // With a margin of 3 it does not reach.
    let near = Flaw {
        margin: 3.0,
        ..beside
    };
    let left = self::left(
        &[],
        cloth().with_flaws(vec![near]).expect("a good flaw"),
        &Lay::default(),
    );
    assert_eq!(left[0].area_mm2, 280_000.0);
}

#[test]
fn a_slit_without_margin_still_parts_the_cloth() {
    let slit = Flaw::new([(0.0, 300.0), (400.0, 300.0)], 0.0);
    let left = left(
        &[],
        cloth().with_flaws(vec![slit]).expect("a good flaw"),
        &Lay::default(),
    );
    assert_eq!(left.len(), 2);
    assert_eq!(sides(&left[0]), [(400.0, 399.9)]);
    assert_eq!(sides(&left[1]), [(400.0, 299.9)]);
}

#[test]
fn cloth_that_is_used_up_leaves_nothing() {
    let parts = [Part::new("all", rectangle(400.0, 700.0))];
    assert_eq!(left(&parts, cloth(), &lay(&[(0.0, 0.0)])), []);
    let halves = [
        Part::new("left", rectangle(200.0, 700.0)),
        Part::new("right", rectangle(200.0, 700.0)),
    ];
    assert_eq!(
        left(&halves, cloth(), &lay(&[(0.0, 0.0), (200.0, 0.0)])),
        []
    );
    // A spot in the middle to be kept clear of by 500, or by more than is cut away with round corners.
    for margin in [500.0, 5000.0] {
        let spot = Flaw::new([(200.0, 350.0)], margin);
        let cloth = cloth().with_flaws(vec![spot]).expect("a good flaw");
        assert_eq!(left(&[], cloth, &Lay::default()), []);
    }
    let far = Flaw::new([(20_000.0, 0.0), (20_001.0, 0.0)], 5000.0);
    let cloth = cloth().with_flaws(vec![far]).expect("a good flaw");
    assert_eq!(left(&[], cloth, &Lay::default())[0].area_mm2, 280_000.0);
}

#[test]
fn holes_outside_or_over_the_edge_do_no_harm() {
    // One wholly outside, one half over the edge: 50 x 100 of it on the cloth.
    let at = |x: f64| {
        vec![
            (x, 100.0),
            (x + 100.0, 100.0),
            (x + 100.0, 200.0),
            (x, 200.0),
        ]
    };
    let holes = [500.0, 350.0].map(|x| at(x).into_iter().map(Point::from).collect());
    let holed = cloth().with_holes(holes.into()).expect("good holes");
    let left = left(&[], holed, &Lay::default());
    assert!((left[0].area_mm2 - 275_000.0).abs() < 0.1);
    assert_eq!(left[0].holes.len(), 0);
}

#[test]
fn rectangles_lie_on_the_grain_and_are_as_many_and_as_wide_as_asked() {
    let cloth = cloth().with_grain_deg(0.0).expect("a good grain");
    let parts = [Part::new("pocket", rectangle(100.0, 100.0))];
    let lay = lay(&[(150.0, 200.0)]);
    let with = |rectangles: u32, least: f64| {
        let options = LeftoverOptions { rectangles, least };
        leftovers(&parts, std::slice::from_ref(&cloth), &lay, &options).expect("good input")
    };
    // Across the page is now along the grain.
    let all = with(100, 50.0);
    assert_eq!(
        sides(&all[0]),
        [
            (400.0, 400.0),
            (200.0, 400.0),
            (100.0, 150.0),
            (100.0, 150.0)
        ]
    );
    assert_eq!(sides(&with(100, 101.0)[0]).len(), 2);
    assert_eq!(sides(&with(1, 0.0)[0]).len(), 1);
    assert_eq!(sides(&with(0, 0.0)[0]), []);
}

#[test]
fn what_is_laid_and_what_is_left_make_up_the_cloth() {
    let gore = Part {
        as_drawn: 3,
        tilt_deg: 3.0,
        ..Part::new(
            "gore",
            [(0.0, 0.0), (150.0, 0.0), (110.0, 330.0), (40.0, 330.0)],
        )
    };
    let cloth = cloth();
    let parts = [gore];
    let found = fit(&parts, std::slice::from_ref(&cloth), &Options::default()).expect("good input");
    let left = left(&parts, cloth, &found.lay);
    // (150 + 70) / 2 x 330 = 36 300 each.
    let all: f64 = left.iter().map(shoelace).sum();
    assert!((all + 3.0 * 36_300.0 - 280_000.0).abs() < 5.0, "{all}");
}

#[test]
fn a_placement_of_nothing_is_an_error() {
    let parts = [Part::new("pocket", rectangle(100.0, 100.0))];
    let said = |lay: &Lay, options: &LeftoverOptions| {
        leftovers(&parts, &[cloth()], lay, options)
            .unwrap_err()
            .to_string()
    };
    let options = LeftoverOptions::default();
    assert_eq!(
        said(&lay(&[(0.0, 0.0), (200.0, 200.0)]), &options),
        "placement 1: part = 1 leaves no solution: it must be 0"
    );
    let mut elsewhere = lay(&[(0.0, 0.0)]);
    elsewhere.placements[0].panel = 4;
    assert_eq!(
        said(&elsewhere, &options),
        "placement 0: panel = 4 leaves no solution: it must be 0"
    );
    let many = LeftoverOptions {
        rectangles: 101,
        ..options
    };
    assert_eq!(
        said(&Lay::default(), &many),
        "options: rectangles = 101 is not between 0 and 100"
    );
}

#[cfg(feature = "serde")]
#[test]
fn shapes_go_out_and_come_back_as_json() {
    let left = left(&[], cloth(), &Lay::default());
    let text = serde_json::to_string(&left).unwrap();
    assert_eq!(serde_json::from_str::<Vec<Leftover>>(&text).unwrap(), left);
    let options: LeftoverOptions = serde_json::from_str(r#"{"least": 5}"#).unwrap();
    assert_eq!((options.rectangles, options.least), (3, 5.0));
}
