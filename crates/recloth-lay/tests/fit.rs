//! The search, judged by the checker and by puzzles whose answers are known from how they were made.

mod coat;

use coat::house_coat;
use kurbo::Point;
use recloth_lay::{
    Answer, Bound, Faces, Fit, Flaw, Hand, Options, Panel, Part, Shortage, Shows, Together, check,
    fit,
};

/// A good panel.
fn cloth<P: Into<Point>>(name: &str, outline: impl IntoIterator<Item = P>) -> Panel {
    Panel::new(name, outline).expect("a good panel")
}

fn rectangle(width: f64, height: f64) -> Vec<Point> {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
        .map(Point::from)
        .into()
}

fn points(list: &[(f64, f64)]) -> Vec<Point> {
    list.iter().copied().map(Point::from).collect()
}

/// Turned about the origin, then moved, by plain arithmetic that owes nothing to the library.
fn moved(outline: &[Point], turn_deg: f64, x: f64, y: f64) -> Vec<Point> {
    let (sin, cos) = libm::sincos(turn_deg * std::f64::consts::PI / 180.0);
    outline
        .iter()
        .map(|p| Point::new(cos * p.x - sin * p.y + x, sin * p.x + cos * p.y + y))
        .collect()
}

/// The answers, after everything placed has passed the checker.
fn found(parts: &[Part], panels: &[Panel]) -> Fit {
    found_with(
        parts,
        panels,
        &Options {
            budget: 30_000_000,
            ..Options::default()
        },
    )
}

fn found_with(parts: &[Part], panels: &[Panel], options: &Options) -> Fit {
    let found = fit(parts, panels, options).expect("good input");
    assert_eq!(check(parts, panels, &found.lay), Ok(()));
    assert_eq!(found.lay.spacing, options.spacing);
    for row in &found.alone {
        if let Answer::Fits(placement) = row.answer {
            assert_eq!(
                (placement.part, placement.hand, placement.panel),
                (row.part, row.hand, row.panel)
            );
        }
    }
    found
}

fn only(found: &Fit) -> Answer {
    assert_eq!(found.alone.len(), 1);
    found.alone[0].answer
}

#[test]
fn no_pieces_fit_and_no_panels_hold_nothing() {
    let none = found(&[], &[]);
    assert_eq!(
        (none.together, none.lay.placements.len(), none.share),
        (Together::Fit, 0, 0.0)
    );
    let bare = found(&[], &[cloth("cloth", rectangle(10.0, 10.0))]);
    assert_eq!((bare.together, bare.shares), (Together::Fit, vec![0.0]));
    let lost = found(&[Part::new("a", rectangle(10.0, 10.0))], &[]);
    assert_eq!(
        lost.together,
        Together::Cannot(Shortage::NoPanel {
            part: 0,
            hand: Hand::AsDrawn
        })
    );
    assert_eq!(lost.lay.unplaced.len(), 1);
    let unwanted = Part {
        as_drawn: 0,
        ..Part::new("a", rectangle(10.0, 10.0))
    };
    assert_eq!(found(&[unwanted], &[]).together, Together::Fit);
}

#[test]
fn a_piece_equal_to_its_panel_fits_and_a_tenth_more_cannot() {
    // An odd shape with a bay, so that neither box nor hull is the shape.
    let shape = points(&[
        (0.0, 0.0),
        (300.0, 20.0),
        (280.0, 200.0),
        (180.0, 150.0),
        (160.0, 320.0),
        (10.0, 300.0),
    ]);
    let panels = [cloth("cloth", shape.clone())];
    let same = found(
        &[Part::new("a", moved(&shape, 0.0, 1234.5, -77.3))],
        &panels,
    );
    assert!(matches!(only(&same), Answer::Fits(_)));
    assert!((same.share - 1.0).abs() < 1e-12);
    let larger: Vec<Point> = shape.iter().map(|p| Point::new(p.x * 1.001, p.y)).collect();
    let larger = found(&[Part::new("a", larger)], &panels);
    assert!(
        matches!(only(&larger), Answer::Cannot(Bound::Across { .. })),
        "{larger:?}"
    );
}

#[test]
fn a_piece_of_many_corners_equal_to_its_panel_needs_no_search() {
    let corner = |k: u32| {
        let (sin, cos) = libm::sincos(f64::from(k) * core::f64::consts::TAU / 900.0);
        let (bay, _) = libm::sincos(3.0 * f64::from(k) * core::f64::consts::TAU / 900.0);
        let far = 200.0 + 60.0 * bay;
        Point::new(far * cos + 17.0, far * sin - 3.0)
    };
    let shape: Vec<Point> = (0..900).map(corner).collect();
    let options = Options {
        budget: 1000,
        ..Options::default()
    };
    let piece = [Part::new("a", moved(&shape, 0.0, 1234.5, -77.3))];
    let found = found_with(&piece, &[cloth("cloth", shape)], &options);
    assert!(matches!(only(&found), Answer::Fits(_)));
    // Not even a negative nought where nothing lies.
    let nothing = found_with(&[], &[cloth("cloth", rectangle(9.0, 9.0))], &options);
    assert!(nothing.share.is_sign_positive() && nothing.shares[0].is_sign_positive());
}

#[test]
fn panels_cut_in_two_to_six_go_together_again() {
    let strip = points(&[(0.0, 0.0), (600.0, 0.0), (640.0, 400.0), (0.0, 400.0)]);
    let puzzles: [&[&[(f64, f64)]]; 5] = [
        &[
            &[(0.0, 0.0), (250.0, 0.0), (310.0, 400.0), (0.0, 400.0)],
            &[(250.0, 0.0), (600.0, 0.0), (640.0, 400.0), (310.0, 400.0)],
        ],
        &[
            &[(0.0, 0.0), (250.0, 0.0), (250.0, 220.0), (0.0, 220.0)],
            &[(0.0, 220.0), (250.0, 220.0), (250.0, 400.0), (0.0, 400.0)],
            &[(250.0, 0.0), (600.0, 0.0), (640.0, 400.0), (250.0, 400.0)],
        ],
        &[
            // A notched piece and the tongue that fills its notch.
            &[
                (0.0, 0.0),
                (300.0, 0.0),
                (300.0, 150.0),
                (200.0, 150.0),
                (200.0, 250.0),
                (300.0, 250.0),
                (300.0, 400.0),
                (0.0, 400.0),
            ],
            &[
                (300.0, 0.0),
                (600.0, 0.0),
                (640.0, 400.0),
                (300.0, 400.0),
                (300.0, 250.0),
                (200.0, 250.0),
                (200.0, 150.0),
                (300.0, 150.0),
            ],
        ],
        &[
            &[(0.0, 0.0), (200.0, 0.0), (200.0, 400.0)],
            &[(0.0, 0.0), (200.0, 400.0), (0.0, 400.0)],
            &[(200.0, 0.0), (600.0, 0.0), (400.0, 200.0), (200.0, 200.0)],
            &[
                (200.0, 200.0),
                (400.0, 200.0),
                (400.0, 400.0),
                (200.0, 400.0),
            ],
            &[(600.0, 0.0), (640.0, 400.0), (400.0, 400.0), (400.0, 200.0)],
        ],
        &[
            &[(0.0, 0.0), (200.0, 0.0), (200.0, 150.0), (0.0, 150.0)],
            &[(200.0, 0.0), (420.0, 0.0), (420.0, 150.0), (200.0, 150.0)],
            &[(420.0, 0.0), (600.0, 0.0), (615.0, 150.0), (420.0, 150.0)],
            &[(0.0, 150.0), (310.0, 150.0), (310.0, 290.0), (0.0, 290.0)],
            &[
                (310.0, 150.0),
                (615.0, 150.0),
                (629.0, 290.0),
                (310.0, 290.0),
            ],
            &[(0.0, 290.0), (629.0, 290.0), (640.0, 400.0), (0.0, 400.0)],
        ],
    ];
    for (index, puzzle) in puzzles.iter().enumerate() {
        // Each piece is drawn somewhere else, with its own grain direction.
        let parts: Vec<Part> = puzzle
            .iter()
            .enumerate()
            .map(|(i, outline)| Part {
                grain_deg: 90.0 + 17.0 * i as f64,
                ..Part::new(
                    format!("piece {i}"),
                    moved(&points(outline), 17.0 * i as f64, -50.0, 33.0 * i as f64),
                )
            })
            .collect();
        let panels = [cloth("cloth", strip.clone()).with_nap(true)];
        let found = found(&parts, &panels);
        assert_eq!(
            found.together,
            Together::Fit,
            "puzzle {index}: {:?}",
            found.lay.unplaced
        );
        if index != 4 {
            assert!(found.share > 0.99, "puzzle {index} fills the panel");
        }
    }
}

#[test]
fn too_wide_too_long_too_large() {
    let panels = [cloth("cloth", rectangle(200.0, 300.0))];
    let bound = |part: Part| match only(&found(&[part], &panels)) {
        Answer::Cannot(bound) => bound,
        answer => panic!("{answer:?}"),
    };
    assert_eq!(
        bound(Part::new("a", rectangle(201.5, 10.0))),
        Bound::Across {
            needed: 201.5,
            there: 200.0
        }
    );
    assert_eq!(
        bound(Part::new("a", rectangle(10.0, 302.0))).short_by(),
        Some(2.0)
    );
    // A diamond panel: its box is 200 by 300, its area half.
    let diamond = [cloth(
        "cloth",
        points(&[(100.0, 0.0), (200.0, 150.0), (100.0, 300.0), (0.0, 150.0)]),
    )];
    let large = found(&[Part::new("a", rectangle(180.0, 180.0))], &diamond);
    let Answer::Cannot(Bound::Area {
        needed_mm2,
        there_mm2,
    }) = only(&large)
    else {
        panic!("{large:?}")
    };
    assert_eq!((needed_mm2, there_mm2), (32_400.0, 30_000.0));
    // Its widest square is 120 (120 / 200 + 120 / 300 = 1): a little more is excluded everywhere.
    let most = found(&[Part::new("a", rectangle(120.0, 120.0))], &diamond);
    assert!(matches!(only(&most), Answer::Fits(_)), "{most:?}");
    let more = found(&[Part::new("a", rectangle(121.0, 121.0))], &diamond);
    assert_eq!(only(&more), Answer::Cannot(Bound::Everywhere));
}

#[test]
fn tilt_lets_a_long_strip_in_and_is_part_of_every_proof() {
    // 505 long in a panel 300 by 500: by tilting t, 505 cos t + 20 sin t is least at the ends of the tolerance.
    // At 12 degrees it is 493.97 + 4.16 = 498.13 (by hand); at 4 degrees 503.77 + 1.40 = 505.17.
    let panels = [cloth("cloth", rectangle(300.0, 500.0))];
    let strip = |tilt_deg| Part {
        tilt_deg,
        ..Part::new("strip", rectangle(20.0, 505.0))
    };
    assert!(matches!(
        only(&found(&[strip(12.0)], &panels)),
        Answer::Fits(_)
    ));
    let Answer::Cannot(Bound::Along { needed, .. }) = only(&found(&[strip(4.0)], &panels)) else {
        panic!()
    };
    // Straight is better than tilted by 4 degrees.
    assert!((needed - 505.0).abs() < 1e-9, "{needed}");
    // Without any tolerance for grain it may lie across.
    let across = Part {
        tilt_deg: 90.0,
        ..Part::new("across", rectangle(500.0, 300.0))
    };
    assert!(matches!(only(&found(&[across], &panels)), Answer::Fits(_)));
}

#[test]
fn grain_directions_of_part_and_panel_are_brought_together() {
    // Cloth drawn lying on its side, piece drawn at a slant.
    let panels = [cloth("cloth", rectangle(500.0, 120.0))
        .with_grain_deg(0.0)
        .expect("a good angle")];
    let part = Part {
        grain_deg: 90.0 + 31.0,
        ..Part::new("a", moved(&rectangle(120.0, 500.0), 31.0, 5.0, 7.0))
    };
    assert!(matches!(only(&found(&[part], &panels)), Answer::Fits(_)));
    let upright = Part::new("a", rectangle(500.0, 120.0));
    assert!(matches!(
        only(&found(&[upright], &panels)),
        Answer::Cannot(Bound::Across { .. })
    ));
}

#[test]
fn flaws_and_holes_are_kept_clear_and_proved_against() {
    // 100 wide; a spot in the middle with a margin leaves 60 above and below it.
    let flawed = |flaw| {
        cloth("cloth", rectangle(100.0, 140.0))
            .with_flaws(vec![flaw])
            .expect("a good flaw")
    };
    let mut panel = flawed(Flaw::new([(50.0, 70.0)], 10.0));
    let part = |height: f64| {
        [Part {
            as_drawn: 2,
            ..Part::new("a", rectangle(100.0, height))
        }]
    };
    assert_eq!(
        found(&part(60.0), std::slice::from_ref(&panel)).together,
        Together::Fit
    );
    let more = found(&part(61.0), std::slice::from_ref(&panel));
    assert_eq!(only(&more), Answer::Cannot(Bound::Everywhere));
    // A slit up the middle parts the panel.
    panel = flawed(Flaw::new([(50.0, 0.0), (50.0, 140.0)], 0.0));
    let halves = [Part {
        as_drawn: 2,
        ..Part::new("a", rectangle(50.0, 140.0))
    }];
    assert_eq!(
        found(&halves, std::slice::from_ref(&panel)).together,
        Together::Fit
    );
    let wide = found(
        &[Part::new("a", rectangle(51.0, 20.0))],
        std::slice::from_ref(&panel),
    );
    assert_eq!(only(&wide), Answer::Cannot(Bound::Everywhere));
    // A hole in the middle leaves a frame 30 wide.
    let hole = moved(&rectangle(40.0, 80.0), 0.0, 30.0, 30.0);
    panel = cloth("cloth", rectangle(100.0, 140.0))
        .with_holes(vec![hole])
        .expect("a good hole");
    let frame = [
        Part {
            as_drawn: 2,
            ..Part::new("side", rectangle(30.0, 140.0))
        },
        Part {
            as_drawn: 2,
            ..Part::new("end", rectangle(40.0, 30.0))
        },
    ];
    let full = found(&frame, std::slice::from_ref(&panel));
    assert_eq!(full.together, Together::Fit);
    assert!((full.share - 1.0).abs() < 1e-12);
}

#[test]
fn pairs_need_both_hands() {
    // Two right-angled triangles of one hand make a rectangle by turning end for end; a mirrored pair does not fit
    // into it on one-faced cloth, but does on two-faced cloth, where either may be turned over.
    let triangle = points(&[(0.0, 0.0), (100.0, 0.0), (0.0, 300.0)]);
    let same = [Part {
        as_drawn: 2,
        ..Part::new("a", triangle.clone())
    }];
    let pair = [Part {
        mirrored: 1,
        ..Part::new("a", triangle.clone())
    }];
    let one = [cloth("cloth", rectangle(100.0, 300.0))];
    let two = [one[0].clone().with_faces(Faces::Two)];
    assert_eq!(found(&same, &one).together, Together::Fit);
    assert_eq!(found(&pair, &two).together, Together::Fit);
    assert_ne!(found(&pair, &one).together, Together::Fit);
    // With a nap, turning end for end is out, unless the piece does not mind.
    let nap = [one[0].clone().with_nap(true)];
    assert_ne!(found(&same, &nap).together, Together::Fit);
    let careless = [Part {
        either_way: true,
        ..same[0].clone()
    }];
    assert_eq!(found(&careless, &nap).together, Together::Fit);
    // A panel of the piece's own shape takes the hand as drawn only, or with the wrong side showing the other.
    let own = [cloth("cloth", triangle.clone())];
    let hand = |as_drawn, mirrored, shows| {
        only(&found(
            &[Part {
                as_drawn,
                mirrored,
                shows,
                ..Part::new("a", triangle.clone())
            }],
            &own,
        ))
    };
    assert!(matches!(hand(1, 0, Shows::Right), Answer::Fits(_)));
    assert_eq!(hand(0, 1, Shows::Right), Answer::Cannot(Bound::Everywhere));
    assert!(matches!(hand(0, 1, Shows::Wrong), Answer::Fits(_)));
    assert!(matches!(hand(0, 1, Shows::Either), Answer::Fits(_)));
    assert_eq!(hand(1, 0, Shows::Both), Answer::Cannot(Bound::OneFace));
}

#[test]
fn shortages_of_several_pieces_are_proved() {
    let panels = [
        cloth("a", rectangle(100.0, 100.0)),
        cloth("b", rectangle(50.0, 200.0)),
    ];
    // Together more area than cloth.
    let many = [Part {
        as_drawn: 21,
        ..Part::new("a", rectangle(20.0, 50.0))
    }];
    assert!(matches!(
        found(&many, &panels).together,
        Together::Cannot(Shortage::Area { .. })
    ));
    // Enough in all, but the wide pieces can go on the first panel only.
    let wide = [Part {
        as_drawn: 3,
        ..Part::new("a", rectangle(90.0, 40.0))
    }];
    let short = found(&wide, &panels);
    let Together::Cannot(Shortage::Area {
        panels: only,
        needed_mm2,
        ..
    }) = short.together
    else {
        panic!()
    };
    assert_eq!((only, needed_mm2), (vec![0], 10_800.0));
    assert_eq!(short.lay.placements.len(), 2);
    // Three pieces of over half a panel on two panels, with area to spare.
    let large = [Part {
        as_drawn: 3,
        ..Part::new("a", rectangle(50.0, 110.0))
    }];
    let two = [
        cloth("a", rectangle(100.0, 105.0)),
        cloth("b", rectangle(60.0, 150.0)),
        cloth("c", rectangle(55.0, 150.0)),
    ];
    let few = found(&large, &two);
    assert_eq!(
        few.together,
        Together::Cannot(Shortage::TooFew {
            pieces: 3,
            taken: 2
        })
    );
}

#[test]
fn what_was_cut_from_a_panel_is_never_refused() {
    // A quadrilateral cut across at random, its halves drawn turned and mirrored at random, with the grain and the
    // tolerance that bring them back. Fits or undecided; no bound may say that they cannot.
    let mut state = 1_u32;
    let mut next = |low: f64, high: f64| {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223); // Numerical Recipes, 1992, "quick and dirty"
        low + (high - low) * f64::from(state >> 8) / f64::from(1_u32 << 24)
    };
    let mut fitted = 0;
    for case in 0..60 {
        let cloth_deg = next(-180.0, 180.0);
        let corner = |x: f64, y: f64, next: &mut dyn FnMut(f64, f64) -> f64| {
            (x + next(-60.0, 60.0), y + next(-60.0, 60.0))
        };
        let (a, b) = (corner(0.0, 0.0, &mut next), corner(400.0, 0.0, &mut next));
        let (c, d) = (
            corner(400.0, 300.0, &mut next),
            corner(0.0, 300.0, &mut next),
        );
        let between =
            |p: (f64, f64), q: (f64, f64), t: f64| (p.0 + t * (q.0 - p.0), p.1 + t * (q.1 - p.1));
        let (low, high) = (between(a, b, next(0.2, 0.8)), between(d, c, next(0.2, 0.8)));
        let halves = [vec![a, low, high, d], vec![low, b, c, high]];
        let parts: Vec<Part> = halves
            .iter()
            .map(|half| {
                let (turn, tilt_deg) = (next(-180.0, 180.0), next(0.0, 15.0));
                let tilt = tilt_deg * next(-1.0, 1.0);
                let mirrored = next(0.0, 1.0) < 0.5;
                let sign = if mirrored { -1.0 } else { 1.0 };
                let outline: Vec<Point> = moved(&points(half), -turn, 0.0, 0.0)
                    .into_iter()
                    .map(|p| Point::new(sign * p.x + 11.0, p.y - 7.0))
                    .collect();
                let lying = cloth_deg + tilt - turn;
                Part {
                    grain_deg: (if mirrored { 180.0 - lying } else { lying }) % 360.0,
                    tilt_deg,
                    as_drawn: u32::from(!mirrored),
                    mirrored: u32::from(mirrored),
                    ..Part::new(format!("half of {case}"), outline)
                }
            })
            .collect();
        let panel = cloth("cloth", points(&[a, b, c, d]))
            .with_nap(case % 2 == 0)
            .with_grain_deg(cloth_deg)
            .expect("a good angle");
        let options = Options {
            budget: 1_000_000,
            ..Options::default()
        };
        let found = found_with(&parts, &[panel], &options);
        assert!(
            !matches!(found.together, Together::Cannot(_)),
            "{case}: {:?}",
            found.together
        );
        for row in &found.alone {
            assert!(!matches!(row.answer, Answer::Cannot(_)), "{case}: {row:?}");
        }
        fitted += usize::from(found.together == Together::Fit);
    }
    // Tilted by an odd angle the perfect fit is found by the edges of the panel.
    assert!(fitted > 20, "{fitted}");
}

#[test]
fn pieces_lie_on_grain_where_there_is_room() {
    // A panel with a slanting side, along which the search likes to lay its pieces.
    let panels = [cloth(
        "cloth",
        points(&[(0.0, 0.0), (500.0, 0.0), (470.0, 500.0), (0.0, 500.0)]),
    )];
    let parts = [Part {
        as_drawn: 5,
        tilt_deg: 5.0,
        ..Part::new("strip", rectangle(70.0, 450.0))
    }];
    let found = found(&parts, &panels);
    assert_eq!(found.together, Together::Fit);
    for placement in &found.lay.placements {
        assert!([0.0, 180.0].contains(&placement.turn_deg), "{placement:?}");
    }
}

#[test]
fn spacing_is_kept() {
    let panels = [cloth("cloth", rectangle(210.0, 100.0))];
    let parts = [Part {
        as_drawn: 2,
        ..Part::new("a", rectangle(100.0, 100.0))
    }];
    let options = |spacing| Options {
        spacing,
        budget: 10_000_000,
        ..Options::default()
    };
    assert_eq!(
        found_with(&parts, &panels, &options(10.0)).together,
        Together::Fit
    );
    assert_eq!(
        found_with(&parts, &panels, &options(10.1)).together,
        Together::Cannot(Shortage::TooFew {
            pieces: 2,
            taken: 1
        })
    );
}

#[test]
fn the_same_seed_gives_the_same_lay_and_the_order_of_panels_names_them() {
    let (parts, panels) = house_coat();
    let options = Options {
        budget: 150_000_000,
        ..Options::default()
    };
    let first = found_with(&parts, &panels, &options);
    assert_eq!(first, found_with(&parts, &panels, &options));
    let other = found_with(&parts, &panels, &Options { seed: 2, ..options });
    assert_ne!(first.lay, other.lay);
    let rows: Vec<(usize, Hand, usize)> = first
        .alone
        .iter()
        .map(|row| (row.part, row.hand, row.panel))
        .collect();
    let mut sorted = rows.clone();
    sorted.sort_unstable();
    assert_eq!(rows, sorted);
}

#[test]
fn a_hundred_and_twenty_pieces_end_within_the_budget() {
    let panels = [
        cloth(
            "sheet",
            points(&[
                (0.0, 0.0),
                (1400.0, 0.0),
                (1400.0, 900.0),
                (700.0, 1000.0),
                (0.0, 900.0),
            ]),
        ),
        cloth("scrap", rectangle(300.0, 300.0)),
    ];
    let parts = [
        Part {
            as_drawn: 40,
            tilt_deg: 3.0,
            ..Part::new(
                "kite",
                points(&[(0.0, 0.0), (60.0, 40.0), (0.0, 150.0), (-60.0, 40.0)]),
            )
        },
        Part {
            as_drawn: 40,
            mirrored: 40,
            ..Part::new("patch", rectangle(70.0, 90.0))
        },
    ];
    let options = Options {
        budget: 60_000_000,
        ..Options::default()
    };
    let found = found_with(&parts, &panels, &options);
    assert_eq!(found.together, Together::Fit);
    let starved = found_with(
        &parts,
        &panels,
        &Options {
            budget: 0,
            ..options
        },
    );
    assert!(starved.evaluations < 3_000_000, "{}", starved.evaluations);
    assert_ne!(starved.together, Together::Fit);
}

#[test]
fn bad_input_is_named() {
    let says = |part: Part, panel: Panel, options: Options| {
        fit(&[part], &[panel], &options)
            .expect_err("bad input")
            .to_string()
    };
    let part = || Part::new("pocket", rectangle(10.0, 10.0));
    let panel = || cloth("left back", rectangle(50.0, 50.0));
    let default = Options::default;
    let mut wild = part();
    wild.outline[2].y = f64::INFINITY;
    assert_eq!(
        says(wild, panel(), default()),
        "part \"pocket\": outline[2] = inf is not a finite number"
    );
    assert_eq!(
        says(
            Part {
                tilt_deg: -1.0,
                ..part()
            },
            panel(),
            default()
        ),
        "part \"pocket\": tilt_deg = -1 is not between 0 and 180"
    );
    assert_eq!(
        says(
            part(),
            panel(),
            Options {
                spacing: -0.5,
                ..default()
            }
        ),
        "options: spacing = -0.5 is not between 0 and 1000"
    );
    let crowd: Vec<Part> = (0..3)
        .map(|_| Part {
            as_drawn: 1000,
            ..part()
        })
        .collect();
    assert!(
        fit(&crowd, &[panel()], &default())
            .unwrap_err()
            .to_string()
            .contains("3000 items")
    );
}

#[test]
fn an_invented_house_coat_becomes_skirt_waistcoat_and_pinafore() {
    let (parts, panels) = house_coat();
    let found = found_with(&parts, &panels, &Options::default());
    assert_eq!(found.together, Together::Fit, "{:?}", found.lay.unplaced);
}

#[test]
fn a_piece_that_may_lie_across_fits_where_it_could_not_along() {
    let shape =
        |width: f64, height: f64| [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)];
    let cloth = [Panel::new("front", shape(500.0, 200.0)).unwrap()];
    let band = Part::new("band", shape(60.0, 480.0));
    let found = fit(std::slice::from_ref(&band), &cloth, &Options::default()).unwrap();
    assert!(matches!(
        found.alone[0].answer,
        Answer::Cannot(Bound::Along { .. })
    ));
    let across = [Part {
        crosswise: true,
        ..band
    }];
    let found = fit(&across, &cloth, &Options::default()).unwrap();
    assert_eq!(found.together, Together::Fit);
    assert_eq!(check(&across, &cloth, &found.lay), Ok(()));
    // Its shorter way is too long for the cloth's length.
    let long = [Part {
        crosswise: true,
        ..Part::new("sash", shape(210.0, 520.0))
    }];
    let found = fit(&long, &cloth, &Options::default()).unwrap();
    assert_eq!(
        found.alone[0].answer,
        Answer::Cannot(Bound::Along {
            needed: 210.0,
            there: 200.0
        })
    );
}
