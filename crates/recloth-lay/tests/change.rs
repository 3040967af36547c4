//! What must give: cases worked by hand. Every lay found is judged by the checker.

use core::ops::ControlFlow;

use kurbo::Point;
use recloth_lay::{
    Amount, Change, Error, Give, Made, Needed, Options, Outward, Panel, Part, Shortage, Step,
    Values, check, largest_with, least_change, least_change_with, longest,
};

fn rectangle(width: f64, height: f64) -> Vec<Point> {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
        .map(Point::from)
        .into()
}

fn cloth(width: f64, height: f64) -> Panel {
    Panel::new("cloth", rectangle(width, height)).expect("a good panel")
}

fn shorter(part: usize, beyond: f64, most: f64) -> Change {
    let toward_deg = 90.0;
    let kind = Give::Shorter {
        toward_deg,
        beyond,
        most,
    };
    Change { part, kind }
}

fn join(part: usize, from: f64, to: f64) -> Change {
    let kind = Give::Join {
        across_deg: 90.0,
        from,
        to,
        allowance: 10.0,
    };
    Change { part, kind }
}

/// The answer, after its lay has passed the checker.
fn needed(parts: &[Part], panels: &[Panel], changes: &[Change]) -> Needed {
    let options = Options {
        budget: 60_000_000,
        ..Options::default()
    };
    let found = least_change(parts, panels, changes, &options).expect("good input");
    assert!(found.evaluations <= options.budget);
    match &found.answer {
        Needed::Nothing(fit) => assert_eq!(check(parts, panels, &fit.lay), Ok(())),
        Needed::Changed { parts, fit, .. } => {
            assert_eq!(check(parts, panels, &fit.lay), Ok(()));
            assert!(fit.lay.unplaced.is_empty());
        }
        Needed::Never { .. } | Needed::Undecided => {}
    }
    found.answer
}

fn made(parts: &[Part], panels: &[Panel], changes: &[Change]) -> Vec<Made> {
    match needed(parts, panels, changes) {
        Needed::Changed { made, .. } => made,
        other => panic!("{other:?}"),
    }
}

fn words(made: &[Made]) -> Vec<String> {
    made.iter().map(Made::to_string).collect()
}

#[test]
fn what_fits_needs_nothing() {
    let band = [Part::new("band", rectangle(60.0, 640.0))];
    let answer = needed(&band, &[cloth(60.0, 640.0)], &[shorter(0, 300.0, 100.0)]);
    assert!(matches!(answer, Needed::Nothing(_)), "{answer:?}");
}

#[test]
fn a_piece_is_shortened_by_what_is_missing() {
    // 712.3 long on 700: short by 12.3.
    let skirt = [Part::new("skirt back", rectangle(400.0, 712.3))];
    let found = made(&skirt, &[cloth(400.0, 700.0)], &[shorter(0, 500.0, 40.0)]);
    assert_eq!(found[0].amount, Amount::Shorter { by: 12.3 });
    assert_eq!(words(&found), ["skirt back: 12.3 mm shorter"]);
    // Where a tenth is not enough to say, it is the next tenth.
    let skirt = [Part::new("skirt back", rectangle(400.0, 712.34))];
    let found = made(&skirt, &[cloth(400.0, 700.0)], &[shorter(0, 500.0, 40.0)]);
    assert_eq!(words(&found), ["skirt back: 12.4 mm shorter"]);
}

#[test]
fn the_grain_is_tilted_as_far_as_it_must_be() {
    // A strip 60 by 300 cut 3 degrees off grain, so that it lies on the cloth at that tilt alone.
    let (sin, cos) = libm::sincos(3.0_f64.to_radians());
    let turned = rectangle(60.0, 300.0)
        .iter()
        .map(|p| Point::new(cos * p.x - sin * p.y, sin * p.x + cos * p.y))
        .collect::<Vec<_>>();
    let scrap = [Panel::new("scrap", turned).expect("a good panel")];
    let strip = [Part::new("strip", rectangle(60.0, 300.0))];
    let tilt = |to_deg: f64| Change {
        part: 0,
        kind: Give::Tilt { to_deg },
    };
    let found = made(&strip, &scrap, &[tilt(10.0)]);
    assert_eq!(words(&found), ["strip: grain tilted by up to 3 degrees"]);
    // 2.9 degrees are too few, and that is proved.
    let answer = needed(&strip, &scrap, &[tilt(2.9)]);
    assert!(matches!(answer, Needed::Never { .. }), "{answer:?}");
}

#[test]
fn a_band_is_joined_of_two_scraps() {
    // 640 are needed; scraps of 420 and 260 less two allowances of 10 are 660: 20 to spare. Half 1 reaches 250 on the shorter,
    // half 2 begins at 640 - 410 = 230 on the longer: the middle is 240, 10 to spare on either. (So it is at 400, the other
    // way round, as near the middle of the band; the nearer to its end is taken.)
    let band = [Part::new("band", rectangle(60.0, 640.0))];
    let scraps = [cloth(60.0, 420.0), cloth(60.0, 260.0)];
    let Needed::Changed { made, parts, fit } = needed(&band, &scraps, &[join(0, 50.0, 590.0)])
    else {
        panic!("not joined")
    };
    assert_eq!(words(&made), ["band: joined, 240 mm from its end"]);
    let heights: Vec<f64> = fit
        .lay
        .placements
        .iter()
        .map(|placement| {
            let outline = &parts[placement.part].outline;
            let high = outline.iter().fold(f64::MIN, |high, p| high.max(p.y));
            let low = outline.iter().fold(f64::MAX, |low, p| low.min(p.y));
            scraps[placement.panel].bounds().height() - (high - low)
        })
        .collect();
    assert_eq!(heights, [10.0, 10.0]);
    assert_eq!(heights.iter().sum::<f64>(), 20.0);
    let names: Vec<&str> = parts.iter().map(|part| part.name.as_str()).collect();
    assert_eq!(names, ["band", "band, half 1", "band, half 2"]);
    assert_eq!(parts[0].as_drawn, 0);
    // Only where nothing is to spare: 410 + 250 - 20 = 640, at 240. A tenth less on either scrap is too little.
    let just = [cloth(60.0, 410.0), cloth(60.0, 250.0)];
    let found = self::made(&band, &just, &[join(0, 50.0, 590.0)]);
    assert_eq!(words(&found), ["band: joined, 240 mm from its end"]);
    let short = [cloth(60.0, 409.9), cloth(60.0, 250.0)];
    let answer = needed(&band, &short, &[join(0, 50.0, 590.0)]);
    assert!(
        matches!(answer, Needed::Undecided | Needed::Never { .. }),
        "{answer:?}"
    );
}

#[test]
fn as_few_as_may_be_are_joined() {
    // One of two bands has a whole place; both joined would fit nowhere, for halves of 410 and 250 make 660 a pair.
    let bands = [Part {
        as_drawn: 2,
        ..Part::new("band", rectangle(60.0, 640.0))
    }];
    let panels = [cloth(60.0, 640.0), cloth(60.0, 420.0), cloth(60.0, 260.0)];
    let found = made(&bands, &panels, &[join(0, 100.0, 540.0)]);
    assert_eq!(words(&found), ["band: 1 of 2 joined, 240 mm from its end"]);
    // Two long panels and no scraps: nothing is joined.
    let answer = needed(
        &bands,
        &[cloth(60.0, 640.0), cloth(60.0, 640.0)],
        &[join(0, 100.0, 540.0)],
    );
    assert!(matches!(answer, Needed::Nothing(_)));
}

#[test]
fn what_she_minds_least_gives_first_and_what_is_not_needed_stays() {
    let skirt = Part::new("skirt", rectangle(400.0, 710.0));
    let panels = [cloth(400.0, 700.0)];
    let fewer = Change {
        part: 0,
        kind: Give::Fewer { by: 1 },
    };
    let tilt = Change {
        part: 0,
        kind: Give::Tilt { to_deg: 1.0 },
    };
    // The order decides, not the size.
    let found = made(
        std::slice::from_ref(&skirt),
        &panels,
        &[shorter(0, 500.0, 50.0), fewer.clone()],
    );
    assert_eq!(words(&found), ["skirt: 10 mm shorter"]);
    let found = made(
        std::slice::from_ref(&skirt),
        &panels,
        &[fewer, shorter(0, 500.0, 50.0)],
    );
    assert_eq!(words(&found), ["skirt: 1 fewer of 1"]);
    // A tilt is no help, and stays as it was.
    let found = made(&[skirt], &panels, &[tilt, shorter(0, 500.0, 50.0)]);
    assert_eq!(found[0].change, 1);
    assert_eq!(words(&found), ["skirt: 10 mm shorter"]);
}

#[test]
fn two_changes_are_made_where_one_is_not_enough() {
    // 30 too long; the hem gives 20, then the waist the other 10.
    let skirt = Part::new("skirt", rectangle(400.0, 730.0));
    let waist = Change {
        part: 0,
        kind: Give::Shorter {
            toward_deg: -90.0,
            beyond: -100.0,
            most: 20.0,
        },
    };
    let found = made(
        &[skirt],
        &[cloth(400.0, 700.0)],
        &[shorter(0, 500.0, 20.0), waist],
    );
    assert_eq!(
        words(&found),
        ["skirt: 20 mm shorter", "skirt: 10 mm shorter"]
    );
}

#[test]
fn steps_replacements_and_fewer() {
    // Allowance of 15, or 10, or 6 on every side of 100 by 100, on a scrap of 122.
    let pocket = Part::new("pocket", rectangle(130.0, 130.0));
    let steps = [(5.0, 120.0), (9.0, 112.0)].map(|(amount, side)| Step {
        amount,
        outline: rectangle(side, side),
    });
    let narrower = Change {
        part: 0,
        kind: Give::Smaller {
            name: "narrower seam allowance".into(),
            steps: steps.into(),
        },
    };
    let found = made(
        &[pocket],
        &[cloth(122.0, 122.0)],
        std::slice::from_ref(&narrower),
    );
    assert_eq!(words(&found), ["pocket: narrower seam allowance, by 5 mm"]);

    // A waistband 900 long on three scraps of 320: sections of 320 each.
    let waistband = Part::new("waistband", rectangle(80.0, 900.0));
    let section = Part {
        as_drawn: 3,
        ..Part::new("section", rectangle(80.0, 320.0))
    };
    let sections = Change {
        part: 0,
        kind: Give::Instead {
            name: "in three sections".into(),
            parts: vec![section],
        },
    };
    let scraps = [cloth(80.0, 320.0), cloth(80.0, 320.0), cloth(80.0, 320.0)];
    let Needed::Changed { made, parts, .. } = needed(&[waistband], &scraps, &[sections]) else {
        panic!("not replaced")
    };
    assert_eq!(words(&made), ["waistband: in three sections"]);
    assert_eq!((parts[0].as_drawn, parts[1].as_drawn), (0, 3));

    // Four of five belt loops.
    let loops = Part {
        as_drawn: 5,
        ..Part::new("belt loop", rectangle(30.0, 80.0))
    };
    let fewer = Change {
        part: 0,
        kind: Give::Fewer { by: 3 },
    };
    let found = self::made(&[loops], &[cloth(120.0, 80.0)], &[fewer]);
    assert_eq!(words(&found), ["belt loop: 1 fewer of 5"]);
}

#[test]
fn a_mirrored_piece_is_replaced_by_mirrored_pieces() {
    let triangle = |size: f64| vec![(0.0, 0.0), (size, 0.0), (0.0, size)];
    let flap = Part {
        as_drawn: 0,
        mirrored: 1,
        ..Part::new("flap", triangle(300.0))
    };
    let half = Part::new("half flap", triangle(200.0));
    let halves = Change {
        part: 0,
        kind: Give::Instead {
            name: "in two".into(),
            parts: vec![
                half.clone(),
                Part {
                    name: "other half".into(),
                    ..half
                },
            ],
        },
    };
    let Needed::Changed { parts, .. } = needed(&[flap], &[cloth(200.0, 400.0)], &[halves]) else {
        panic!("not replaced")
    };
    let hands: Vec<(u32, u32)> = parts
        .iter()
        .map(|part| (part.as_drawn, part.mirrored))
        .collect();
    assert_eq!(hands, [(0, 0), (0, 1), (0, 1)]);
}

#[test]
fn what_can_never_do_is_proved_without_a_search() {
    let proved = |parts: &[Part], panels: &[Panel], changes: &[Change]| {
        let found = least_change(parts, panels, changes, &Options::default()).expect("good input");
        assert_eq!(found.evaluations, 0);
        match found.answer {
            Needed::Never { shortage, .. } => shortage,
            other => panic!("{other:?}"),
        }
    };
    let skirt = || Part::new("skirt", rectangle(400.0, 760.0));
    let panels = [cloth(400.0, 700.0)];
    // 50 shorter it is still 710 long.
    let shortage = proved(&[skirt()], &panels, &[shorter(0, 500.0, 50.0)]);
    assert!(matches!(shortage, Shortage::NoPanel { part: 0, .. }));
    // Another part gives, this one does not.
    let pocket = Part::new("pocket", rectangle(100.0, 100.0));
    let fewer = Change {
        part: 1,
        kind: Give::Fewer { by: 1 },
    };
    let shortage = proved(&[skirt(), pocket], &panels, &[fewer]);
    assert!(matches!(shortage, Shortage::NoPanel { part: 0, .. }));
    // Joined anywhere, it keeps 500 mm on one side of the seam, and is as wide; parts 1 and 2 are what stays on either.
    let wide = Part::new("wide", rectangle(410.0, 600.0));
    let shortage = proved(&[wide], &panels, &[join(0, 500.0, 550.0)]);
    assert!(matches!(shortage, Shortage::NoPanel { part: 1, .. }));
    // Joined anywhere, narrow enough, but more than there is: 60 x 640 = 38 400 against 30 000 and 6 000.
    let band = Part::new("band", rectangle(60.0, 640.0));
    let scraps = [cloth(60.0, 500.0), cloth(60.0, 100.0)];
    let Shortage::Area {
        needed_mm2,
        there_mm2,
        ..
    } = proved(&[band], &scraps, &[join(0, 50.0, 590.0)])
    else {
        panic!("not by area")
    };
    assert_eq!((needed_mm2, there_mm2), (38_400.0, 36_000.0));
    // Shortened by 100 of 760, and fewer by one of three: 2 x 400 x 660 on 400 x 1300.
    let three = Part {
        as_drawn: 3,
        ..skirt()
    };
    let fewer = Change {
        part: 0,
        kind: Give::Fewer { by: 1 },
    };
    let changes = [shorter(0, 500.0, 100.0), fewer];
    let Shortage::Area { needed_mm2, .. } = proved(&[three], &[cloth(400.0, 1300.0)], &changes)
    else {
        panic!("not by area")
    };
    assert_eq!(needed_mm2, 528_000.0);
}

/// A skirt wide at the hem, hem above: shortened, it is wider than before at each height, so that a proof about the shortest
/// need not hold for those between. Seen from the hem it lies within them.
#[test]
fn a_flare_that_can_never_do_is_proved_from_its_hem() {
    let flared = Part::new(
        "flared",
        [(100.0, 0.0), (300.0, 0.0), (410.0, 600.0), (-10.0, 600.0)],
    );
    let answer = needed(
        &[flared],
        &[cloth(400.0, 700.0)],
        &[shorter(0, 500.0, 100.0)],
    );
    assert!(matches!(answer, Needed::Never { .. }), "{answer:?}");
    // A bulge that moves with the hem, and one that stays: neither lies within the other, so nothing is proved by
    // shortening, and the piece counts by its area alone.
    let twisted = Part::new(
        "twisted",
        [
            (0.0, 0.0),
            (200.0, 0.0),
            (410.0, 200.0),
            (200.0, 300.0),
            (200.0, 600.0),
            (-10.0, 500.0),
            (0.0, 300.0),
        ],
    );
    let found = least_change(
        &[twisted],
        &[cloth(400.0, 700.0)],
        &[shorter(0, 350.0, 100.0)],
        &Options {
            budget: 2_000_000,
            ..Options::default()
        },
    )
    .expect("good input");
    assert_eq!(found.answer, Needed::Undecided);
}

#[test]
fn nothing_found_and_nothing_proved_is_undecided() {
    // Two triangles that fill a square as a pair, but not both as drawn on one-faced cloth with a nap.
    let triangle = Part {
        as_drawn: 2,
        ..Part::new("triangle", [(0.0, 0.0), (100.0, 0.0), (0.0, 100.0)])
    };
    let square = [cloth(100.0, 100.0).with_nap(true)];
    let tilt = Change {
        part: 0,
        kind: Give::Tilt { to_deg: 5.0 },
    };
    assert_eq!(needed(&[triangle], &square, &[tilt]), Needed::Undecided);
}

#[test]
fn the_same_comes_out_twice() {
    let parts = [
        Part {
            as_drawn: 3,
            ..Part::new(
                "gore",
                [(0.0, 0.0), (150.0, 0.0), (110.0, 330.0), (40.0, 330.0)],
            )
        },
        Part::new("band", rectangle(60.0, 400.0)),
    ];
    let panels = [cloth(300.0, 320.0), cloth(170.0, 300.0), cloth(60.0, 250.0)];
    let changes = [
        shorter(0, 200.0, 40.0),
        join(1, 100.0, 300.0),
        shorter(1, 200.0, 100.0),
    ];
    let first = needed(&parts, &panels, &changes);
    assert!(matches!(first, Needed::Changed { .. }), "{first:?}");
    assert_eq!(needed(&parts, &panels, &changes), first);
}

#[test]
fn a_bad_change_is_named() {
    let parts = [
        Part {
            tilt_deg: 2.0,
            ..Part::new("skirt", rectangle(400.0, 700.0))
        },
        // Open above: a line at 100 meets both legs.
        Part::new(
            "cup",
            [
                (0.0, 0.0),
                (200.0, 0.0),
                (200.0, 300.0),
                (150.0, 300.0),
                (150.0, 40.0),
                (50.0, 40.0),
                (50.0, 300.0),
                (0.0, 300.0),
            ],
        ),
        Part::new(
            "notched",
            [
                (0.0, 0.0),
                (100.0, 0.0),
                (100.0, 180.0),
                (80.0, 200.0),
                (100.0, 220.0),
                (100.0, 300.0),
                (0.0, 300.0),
            ],
        ),
    ];
    let complaint = |part: usize, kind: Give| {
        let changes = [
            Change {
                part: 0,
                kind: Give::Fewer { by: 1 },
            },
            Change { part, kind },
        ];
        least_change(&parts, &[cloth(10.0, 10.0)], &changes, &Options::default())
            .unwrap_err()
            .to_string()
    };
    let shorter = |part, beyond, most| shorter(part, beyond, most).kind;
    let join = |part, from, to| join(part, from, to).kind;
    let said = [
        (
            complaint(7, Give::Fewer { by: 1 }),
            "change 1: part = 7 leaves no solution: it must be between 0 and 2",
        ),
        (
            complaint(0, Give::Fewer { by: 2 }),
            "change 1, of \"skirt\": by = 2 is not 1",
        ),
        (
            complaint(0, Give::Tilt { to_deg: 2.0 }),
            "change 1, of \"skirt\": to_deg = 2 leaves no solution: it must be more than 2",
        ),
        (
            complaint(1, join(1, 20.0, 100.0)),
            "change 1, of \"cup\": to = 100 leaves no solution: it must be at least 0.000001 and less than 40",
        ),
        (
            complaint(1, join(1, 60.0, 100.0)),
            "change 1, of \"cup\": from = 60 leaves no solution: it must be at least 0.000001 and less than 40",
        ),
        (
            complaint(0, join(0, 300.0, 200.0)),
            "change 1, of \"skirt\": to = 200 leaves no solution: it must be at least 300",
        ),
        (
            complaint(0, shorter(0, 700.0, 10.0)),
            "change 1, of \"skirt\": beyond = 700 leaves no solution: it must be at least 0 and less than 700",
        ),
        // The top comes down past the notch at 220.
        (
            complaint(2, shorter(2, 250.0, 120.0)),
            "change 1, of \"notched\": most = 120 leaves no solution: it must be at most 80",
        ),
        (
            complaint(
                0,
                Give::Smaller {
                    name: "narrower".into(),
                    steps: vec![
                        Step {
                            amount: 5.0,
                            outline: rectangle(390.0, 690.0),
                        },
                        Step {
                            amount: 5.0,
                            outline: rectangle(380.0, 680.0),
                        },
                    ],
                },
            ),
            "change 1, of \"skirt\": steps[1] = 5 leaves no solution: it must be more than 5",
        ),
        (
            complaint(
                0,
                Give::Instead {
                    name: "in two".into(),
                    parts: vec![Part::new(
                        "bow",
                        [(0.0, 0.0), (9.0, 9.0), (9.0, 0.0), (0.0, 9.0)],
                    )],
                },
            ),
            "change 1, of \"skirt\", part \"bow\": outline: the outline crosses itself or has no area (at 0)",
        ),
        (
            complaint(0, shorter(0, f64::NAN, 10.0)),
            "change 1, of \"skirt\": beyond = NaN is not a finite number",
        ),
    ];
    for (told, wanted) in said {
        assert_eq!(told, wanted);
    }
}

#[cfg(feature = "serde")]
#[test]
fn changes_and_answers_go_out_and_come_back_as_json() {
    use recloth_lay::LeastChange;
    let text = r#"[
        {"part": 0, "kind": {"tilt": {"to_deg": 3}}},
        {"part": 0, "kind": {"join": {"across_deg": 90, "from": 100, "to": 540, "allowance": 10}}},
        {"part": 0, "kind": {"shorter": {"toward_deg": 90, "beyond": 300, "most": 40}}},
        {"part": 0, "kind": {"fewer": {"by": 1}}}
    ]"#;
    let changes: Vec<Change> = serde_json::from_str(text).unwrap();
    let again = serde_json::to_string(&changes).unwrap();
    assert_eq!(
        serde_json::from_str::<Vec<Change>>(&again).unwrap(),
        changes
    );
    let band = [Part::new("band", rectangle(60.0, 640.0))];
    let scraps = [cloth(60.0, 420.0), cloth(60.0, 260.0)];
    let found = least_change(&band, &scraps, &changes, &Options::default()).unwrap();
    let text = serde_json::to_string(&found).unwrap();
    assert_eq!(serde_json::from_str::<LeastChange>(&text).unwrap(), found);
    assert!(serde_json::from_str::<Change>(r#"{"part": 0, "kind": {"shrink": {}}}"#).is_err());
}

#[test]
fn the_search_for_a_change_is_watched_and_stopped() {
    // Ells that leave much over, wanted once too often: the search would run to its end.
    let ell = [
        (0.0, 0.0),
        (90.0, 0.0),
        (90.0, 30.0),
        (30.0, 30.0),
        (30.0, 90.0),
        (0.0, 90.0),
    ];
    let ells = [Part {
        as_drawn: 60,
        either_way: true,
        ..Part::new("ell", ell)
    }];
    let cloth = [Panel::new(
        "back",
        [(0.0, 0.0), (600.0, 0.0), (600.0, 500.0), (0.0, 500.0)],
    )
    .unwrap()];
    let changes = [Change {
        part: 0,
        kind: Give::Tilt { to_deg: 1.0 },
    }];
    let options = Options {
        budget: u64::MAX,
        ..Options::default()
    };
    let mut told: Vec<f64> = Vec::new();
    let found = least_change_with(&ells, &cloth, &changes, &options, |so_far| {
        told.push(so_far.done);
        match told.len() < 30 {
            true => ControlFlow::Continue(()),
            false => ControlFlow::Break(()),
        }
    })
    .unwrap();
    assert!(matches!(found.answer, Needed::Undecided));
    assert!(
        told.is_sorted() && told.len() >= 30 && told.len() < 60,
        "{told:?}"
    );
}

#[test]
fn what_the_time_left_untried_is_said() {
    let skirt = [Part::new(
        "skirt",
        [(0.0, 0.0), (380.0, 0.0), (300.0, 650.0), (80.0, 650.0)],
    )];
    let cloth = [Panel::new(
        "back",
        [(0.0, 0.0), (400.0, 0.0), (400.0, 700.0), (0.0, 700.0)],
    )
    .unwrap()];
    let hem = Outward {
        part: 0,
        beyond: -100.0,
        most: 200.0,
        opposite: true,
    };
    let none = Options {
        seconds: Some(0.0),
        ..Options::default()
    };
    let found = longest(&skirt, hem, &cloth, &none).unwrap();
    assert!(found.out_of_time && found.value.is_none() && found.refused.is_none());
    let found = longest(&skirt, hem, &cloth, &Options::default()).unwrap();
    assert!(!found.out_of_time && found.value == Some(50.0));
    let found = least_change(&skirt, &cloth, &[], &none).unwrap();
    assert!(found.out_of_time && matches!(found.answer, Needed::Undecided));
    let found = least_change(&skirt, &cloth, &[], &Options::default()).unwrap();
    assert!(!found.out_of_time && matches!(found.answer, Needed::Nothing(_)));
}

#[test]
fn no_more_parts_are_made_once_a_search_is_stopped() {
    let mut made = 0;
    // More ells than are soon found a place: the search is stopped at its first glance.
    let parts_at = |_| -> Result<_, Error> {
        made += 1;
        let ell = [
            (0.0, 0.0),
            (90.0, 0.0),
            (90.0, 30.0),
            (30.0, 30.0),
            (30.0, 90.0),
            (0.0, 90.0),
        ];
        Ok(vec![Part {
            as_drawn: 60,
            ..Part::new("ell", ell)
        }])
    };
    let cloth = [Panel::new("back", rectangle(600.0, 500.0)).unwrap()];
    let values = Values {
        low: 0.0,
        high: 8.0,
        step: 1.0,
    };
    let stop = |_| ControlFlow::Break(());
    largest_with(values, parts_at, &cloth, &Options::default(), stop).unwrap();
    assert_eq!(made, 1);
}
