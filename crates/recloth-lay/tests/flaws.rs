//! Flaws that may lie under some pieces, or under seam allowances: cases worked by hand.

use kurbo::Point;
use recloth_lay::{
    Answer, Bound, Change, Complaint, Flaw, Give, Hand, Lay, Needed, Options, Outward, Panel, Part,
    Placement, SEAM_ALLOWANCE, Shortage, Together, check, fit, least_change, longest,
};

fn rectangle_at(x: f64, y: f64, width: f64, height: f64) -> Vec<Point> {
    [
        (x, y),
        (x + width, y),
        (x + width, y + height),
        (x, y + height),
    ]
    .map(Point::from)
    .into()
}

fn rectangle(width: f64, height: f64) -> Vec<Point> {
    rectangle_at(0.0, 0.0, width, height)
}

/// 100 by 100 cut, with 10 mm of allowance all round.
fn square() -> Part {
    Part {
        seam: rectangle_at(10.0, 10.0, 80.0, 80.0),
        ..Part::new("square", rectangle(100.0, 100.0))
    }
}

fn cloth(width: f64, flaw: Flaw) -> Panel {
    Panel::new("cloth", rectangle(width, 100.0))
        .and_then(|panel| panel.with_flaws(vec![flaw]))
        .expect("a good panel")
}

fn at(x: f64) -> Lay {
    Lay {
        placements: vec![Placement {
            part: 0,
            hand: Hand::AsDrawn,
            panel: 0,
            mirrored: false,
            turn_deg: 0.0,
            shift: (x, 0.0).into(),
        }],
        ..Lay::default()
    }
}

fn strip(from: f64, to: f64, margin: f64) -> Flaw {
    Flaw::new(rectangle_at(from, 0.0, to - from, 100.0), margin).under([SEAM_ALLOWANCE])
}

#[test]
fn a_stain_does_not_matter_under_the_roles_it_names() {
    let stain =
        Flaw::new(rectangle_at(30.0, 30.0, 40.0, 40.0), 5.0).under(["pocket bag", "facing"]);
    let panel = [cloth(100.0, stain)];
    let part = |role: &str| {
        [Part {
            role: role.into(),
            ..square()
        }]
    };
    for role in ["pocket bag", "facing"] {
        assert_eq!(check(&part(role), &panel, &at(0.0)), Ok(()));
    }
    for role in ["", "collar", "Facing", SEAM_ALLOWANCE] {
        let found = check(&part(role), &panel, &at(0.0)).unwrap_err();
        assert!(
            matches!(found[..], [Complaint::OnFlaw { flaw: 0, .. }]),
            "{found:?}"
        );
    }
    // Outer cloth has no name that a flaw could give.
    let nameless = [cloth(100.0, Flaw::new([(50.0, 50.0)], 0.0).under([""]))];
    assert!(check(&part(""), &nameless, &at(0.0)).is_err());
}

#[test]
fn a_flaw_under_the_allowance_may_touch_the_seam_line_and_no_more() {
    // The strip ends at 10, where the seam line of a piece at 0 begins.
    let panel = [cloth(150.0, strip(0.0, 10.0, 0.0))];
    assert_eq!(check(&[square()], &panel, &at(0.0)), Ok(()));
    let found = check(
        &[square()],
        &[cloth(150.0, strip(0.0, 10.01, 0.0))],
        &at(0.0),
    )
    .unwrap_err();
    assert!(
        matches!(found[..], [Complaint::OnFlaw { flaw: 0, .. }]),
        "{found:?}"
    );
    // A piece without a seam line is kept from it whole; so is any from a flaw that names no allowance.
    let bare = Part::new("bare", rectangle(100.0, 100.0));
    assert!(check(std::slice::from_ref(&bare), &panel, &at(0.0)).is_err());
    assert_eq!(check(&[bare], &panel, &at(10.0)), Ok(()));
    let plain = Flaw::new(rectangle(10.0, 100.0), 0.0);
    assert!(check(&[square()], &[cloth(150.0, plain)], &at(0.0)).is_err());
    // The margin is kept from the seam line: 3 from a strip that ends at 7.
    assert_eq!(
        check(&[square()], &[cloth(150.0, strip(0.0, 7.0, 3.0))], &at(0.0)),
        Ok(())
    );
    let found = check(
        &[square()],
        &[cloth(150.0, strip(0.0, 7.01, 3.0))],
        &at(0.0),
    )
    .unwrap_err();
    let [Complaint::NearFlaw { distance, .. }] = found[..] else {
        panic!("{found:?}")
    };
    assert!((distance - 2.99).abs() < 1e-9);
    // Mirrored and turned the seam line goes with the piece: now 5 are free at its left, 15 at its right.
    let uneven = Part {
        seam: rectangle_at(15.0, 10.0, 80.0, 80.0),
        mirrored: 1,
        as_drawn: 0,
        ..square()
    };
    let mut over = at(100.0);
    (over.placements[0].hand, over.placements[0].mirrored) = (Hand::Mirrored, true);
    let five = [cloth(150.0, strip(0.0, 5.0, 0.0))];
    assert_eq!(check(std::slice::from_ref(&uneven), &five, &over), Ok(()));
    let more = [cloth(150.0, strip(0.0, 5.01, 0.0))];
    assert!(check(&[uneven], &more, &over).is_err());
}

#[test]
fn fit_lays_pieces_over_flaws_that_do_not_matter() {
    let found = |parts: &[Part], panel: Panel| {
        let panels = [panel];
        let options = Options {
            budget: 30_000_000,
            ..Options::default()
        };
        let found = fit(parts, &panels, &options).expect("good input");
        assert_eq!(check(parts, &panels, &found.lay), Ok(()));
        found
    };
    // Just as large as the cloth, whose left 10 mm are stained.
    let whole = found(&[square()], cloth(100.0, strip(0.0, 10.0, 0.0)));
    assert_eq!(whole.together, Together::Fit);
    // Without a seam line it has no place there: the stain takes 10 x 100 of the cloth.
    let bare = Part::new("bare", rectangle(100.0, 100.0));
    let none = found(&[bare], cloth(100.0, strip(0.0, 10.0, 0.0)));
    let (needed_mm2, there_mm2) = (10_000.0, 9_000.0);
    assert_eq!(
        none.alone[0].answer,
        Answer::Cannot(Bound::Area {
            needed_mm2,
            there_mm2
        })
    );
    // A strip 11 wide lies 1 mm within the seam line, wherever the piece lies: that is excluded, not by area.
    let none = found(&[square()], cloth(100.0, strip(0.0, 11.0, 0.0)));
    assert_eq!(none.alone[0].answer, Answer::Cannot(Bound::Everywhere));
    // And a margin of 2 from a strip of 9.
    let none = found(&[square()], cloth(100.0, strip(0.0, 9.0, 2.0)));
    assert_eq!(none.alone[0].answer, Answer::Cannot(Bound::Everywhere));

    // Cloth for two squares, a stain in the left one: the pocket bag goes there, and all the area is of use.
    let stain = Flaw::new(rectangle_at(20.0, 20.0, 60.0, 60.0), 0.0).under(["pocket bag"]);
    let bag = Part {
        role: "pocket bag".into(),
        ..Part::new("bag", rectangle(100.0, 100.0))
    };
    let outer = Part::new("outer", rectangle(100.0, 100.0));
    let both = found(&[outer.clone(), bag], cloth(200.0, stain.clone()));
    assert_eq!(both.together, Together::Fit);
    let bag_at = both
        .lay
        .placements
        .iter()
        .find(|at| at.part == 1)
        .expect("the bag");
    assert!(
        (-1e-6..=100.0 + 1e-6).contains(&bag_at.shift.x),
        "{bag_at:?}"
    );
    let two = Part {
        as_drawn: 2,
        ..outer
    };
    let short = found(&[two], cloth(200.0, stain));
    // 20 000 of 20 000 - 3 600 mm².
    assert!(matches!(
        short.together,
        Together::Cannot(Shortage::Area {
            there_mm2: 16_400.0,
            ..
        })
    ));
}

#[test]
fn a_seam_line_outside_the_cut_line_is_refused() {
    let said = |seam: Vec<Point>| {
        let part = Part { seam, ..square() };
        fit(&[part], &[], &Options::default())
            .unwrap_err()
            .to_string()
    };
    assert_eq!(
        said(rectangle_at(10.0, 10.0, 92.0, 80.0)),
        "part \"square\": seam[1] = 2 leaves no solution: it must be at most 1"
    );
    assert_eq!(
        said(
            [(10.0, 10.0), (90.0, 90.0), (90.0, 10.0), (10.0, 90.0)]
                .map(Point::from)
                .into()
        ),
        "part \"square\": seam: the outline crosses itself or has no area (at 0)"
    );
    // Half a millimetre is what two flattened curves may differ by.
    let part = Part {
        seam: rectangle_at(10.0, 10.0, 90.5, 80.0),
        ..square()
    };
    assert!(fit(&[part], &[], &Options::default()).is_ok());
}

#[test]
fn a_piece_keeps_its_seam_line_when_it_gives() {
    // Joined at 60: the halves' seam lines end at the join, 10 mm within their allowance there.
    let scraps = [
        Panel::new("one", rectangle(100.0, 70.0)).expect("a good panel"),
        Panel::new("other", rectangle(100.0, 50.0)).expect("a good panel"),
    ];
    let join = Give::Join {
        across_deg: 90.0,
        from: 60.0,
        to: 60.0,
        allowance: 10.0,
    };
    let changes = [Change {
        part: 0,
        kind: join,
    }];
    let found = least_change(&[square()], &scraps, &changes, &Options::default()).unwrap();
    let Needed::Changed { parts, .. } = found.answer else {
        panic!("not joined")
    };
    let box_of = |points: &[Point]| {
        let low = points.iter().fold(f64::MAX, |low, p| low.min(p.y));
        let high = points.iter().fold(f64::MIN, |high, p| high.max(p.y));
        (low, high)
    };
    assert_eq!(
        (box_of(&parts[1].outline), box_of(&parts[1].seam)),
        ((0.0, 70.0), (10.0, 60.0))
    );
    assert_eq!(
        (box_of(&parts[2].outline), box_of(&parts[2].seam)),
        ((50.0, 100.0), (60.0, 90.0))
    );

    // Shorter by 20 and longer by 20: both lines move.
    let shorter = |beyond: f64| {
        [Change {
            part: 0,
            kind: Give::Shorter {
                toward_deg: 90.0,
                beyond,
                most: 30.0,
            },
        }]
    };
    let short = [Panel::new("short", rectangle(100.0, 80.0)).expect("a good panel")];
    let found = least_change(&[square()], &short, &shorter(50.0), &Options::default()).unwrap();
    let Needed::Changed { parts, .. } = found.answer else {
        panic!("not shortened")
    };
    assert_eq!(
        (box_of(&parts[0].outline), box_of(&parts[0].seam)),
        ((0.0, 80.0), (10.0, 70.0))
    );
    let long = [Panel::new("long", rectangle(100.0, 120.0)).expect("a good panel")];
    let outward = Outward {
        part: 0,
        beyond: 50.0,
        most: 100.0,
        opposite: false,
    };
    let found = longest(&[square()], outward, &long, &Options::default()).unwrap();
    assert_eq!(box_of(&found.parts[0].seam), (10.0, 110.0));
    // Beyond 95 the cut line alone would move, into the seam line.
    let error = least_change(&[square()], &short, &shorter(95.0), &Options::default()).unwrap_err();
    assert_eq!(
        error.to_string(),
        "change 0, of \"square\": seam[2] = 20 leaves no solution: it must be at most 1"
    );
}

#[cfg(feature = "serde")]
#[test]
fn json_from_before_is_read_and_none_is_written_that_says_nothing() {
    let outline = r#"[{"x":0.0,"y":0.0},{"x":100.0,"y":0.0},{"x":0.0,"y":50.0}]"#;
    let text = format!(r#"{{"name":"pocket","outline":{outline}}}"#);
    let part: Part = serde_json::from_str(&text).unwrap();
    assert_eq!((part.role.as_str(), part.seam.len()), ("", 0));
    let written = serde_json::to_string(&part).unwrap();
    assert!(
        !written.contains("role") && !written.contains("seam"),
        "{written}"
    );
    let flaw: Flaw = serde_json::from_str(r#"{"outline":[{"x":1.0,"y":2.0}]}"#).unwrap();
    assert!(flaw.under.is_empty());
    assert!(!serde_json::to_string(&flaw).unwrap().contains("under"));
    let flaw = flaw.under(["facing"]);
    let written = serde_json::to_string(&flaw).unwrap();
    assert_eq!(serde_json::from_str::<Flaw>(&written).unwrap(), flaw);
    let written = serde_json::to_string(&square()).unwrap();
    assert_eq!(serde_json::from_str::<Part>(&written).unwrap(), square());
}
