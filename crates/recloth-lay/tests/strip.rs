//! Cloth by the length.

use std::ops::ControlFlow;

use recloth::ErrorKind;
use recloth_lay::{Faces, Hand, Part, Strip, StripOptions, check, strip, strip_with};

fn rectangle(width: f64, height: f64) -> [(f64, f64); 4] {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
}

/// An invented waistcoat and skirt: fronts in a pair, gores, a collar, a band and pockets.
fn garment() -> Vec<Part> {
    let front = [
        (0.0, 0.0),
        (215.0, 0.0),
        (225.0, 230.0),
        (130.0, 470.0),
        (0.0, 300.0),
    ];
    let gore = [(0.0, 0.0), (420.0, 0.0), (300.0, 800.0), (120.0, 800.0)];
    // A hollow: pieces may lie in it.
    let collar = [
        (0.0, 0.0),
        (400.0, 0.0),
        (400.0, 160.0),
        (330.0, 160.0),
        (200.0, 70.0),
        (70.0, 160.0),
        (0.0, 160.0),
    ];
    vec![
        Part {
            mirrored: 1,
            ..Part::new("front", front)
        },
        Part {
            as_drawn: 4,
            ..Part::new("gore", gore)
        },
        Part {
            as_drawn: 2,
            ..Part::new("collar", collar)
        },
        Part::new("band", rectangle(60.0, 760.0)),
        Part {
            as_drawn: 2,
            mirrored: 2,
            tilt_deg: 5.0,
            ..Part::new("pocket", rectangle(150.0, 170.0))
        },
    ]
}

fn quick() -> StripOptions {
    StripOptions {
        budget: 3_000_000,
        ..StripOptions::default()
    }
}

#[test]
fn all_pieces_lie_on_the_length_that_is_said_and_the_share_is_right() {
    let (parts, cloth) = (garment(), Strip::new(1400.0));
    let found = strip(&parts, &cloth, &quick()).unwrap();
    assert_eq!(
        check(&parts, &[cloth.panel(found.length).unwrap()], &found.lay),
        Ok(())
    );
    // A front by its corners, half the sum of x₁y₂ - x₂y₁: 82 150. A gore is a trapezium of 240 000, a collar a rectangle less
    // a triangle of 260 by 90: 52 300.
    let front = (215.0 * 230.0 + (225.0 * 470.0 - 130.0 * 230.0) + 130.0 * 300.0) / 2.0;
    let collar = 400.0 * 160.0 - 90.0 * 260.0 / 2.0;
    let area = 2.0 * front + 4.0 * 240_000.0 + 2.0 * collar + 60.0 * 760.0 + 4.0 * 150.0 * 170.0;
    assert!((found.density - area / (1400.0 * found.length)).abs() < 1e-12);
    assert!(found.density > 0.8, "{}", found.density);
    assert!(!found.out_of_time && found.lay.unplaced.is_empty());
    // A strip any shorter does not hold the lay.
    assert!(
        check(
            &parts,
            &[cloth.panel(found.length - 0.01).unwrap()],
            &found.lay
        )
        .is_err()
    );
}

#[test]
fn the_lay_depends_on_seed_and_budget_alone() {
    let (parts, cloth) = (garment(), Strip::new(1400.0));
    let by = |threads, seed| {
        let options = StripOptions {
            threads,
            seed,
            budget: 200_000,
            ..quick()
        };
        strip(&parts, &cloth, &options).unwrap()
    };
    let one = by(1, 1);
    assert_eq!(one, by(2, 1));
    assert_eq!(one, by(7, 1));
    assert_ne!(one.lay, by(1, 2).lay);
    assert!(one.evaluations >= 200_000);
}

#[test]
fn a_larger_budget_is_never_worse() {
    let (parts, cloth) = (garment(), Strip::new(1400.0));
    let mut last = f64::INFINITY;
    for budget in [0, 1, 100_000, 300_000, 1_000_000] {
        let options = StripOptions { budget, ..quick() };
        let found = strip(&parts, &cloth, &options).unwrap();
        assert_eq!(
            check(&parts, &[cloth.panel(found.length).unwrap()], &found.lay),
            Ok(())
        );
        // Only the stage of tightening comes at another time.
        assert!(found.length <= last * 1.02, "{} after {last}", found.length);
        last = last.min(found.length);
    }
    assert!(last < 1350.0, "{last}");
}

#[test]
fn squares_that_tile_the_cloth_lie_almost_as_short_as_can_be() {
    let squares = [Part {
        as_drawn: 12,
        ..Part::new("square", rectangle(100.0, 100.0))
    }];
    let found = strip(&squares, &Strip::new(305.0), &quick()).unwrap();
    assert!(
        found.length >= 400.0 - 1e-6 && found.length < 410.0,
        "{}",
        found.length
    );
}

#[test]
fn spacing_is_kept() {
    let (parts, cloth) = (garment(), Strip::new(1400.0));
    let options = StripOptions {
        spacing: 8.0,
        ..quick()
    };
    let found = strip(&parts, &cloth, &options).unwrap();
    assert_eq!(found.lay.spacing, 8.0);
    assert_eq!(
        check(&parts, &[cloth.panel(found.length).unwrap()], &found.lay),
        Ok(())
    );
    assert!(found.length > strip(&parts, &cloth, &quick()).unwrap().length);
}

#[test]
fn nap_and_face_are_kept() {
    let (parts, plain) = (garment(), Strip::new(1400.0));
    let velvet = Strip { nap: true, ..plain };
    let found = strip(&parts, &velvet, &quick()).unwrap();
    assert_eq!(
        check(&parts, &[velvet.panel(found.length).unwrap()], &found.lay),
        Ok(())
    );
    let two_faced = Strip {
        faces: Faces::Two,
        ..plain
    };
    let found = strip(&parts, &two_faced, &quick()).unwrap();
    assert_eq!(
        check(
            &parts,
            &[two_faced.panel(found.length).unwrap()],
            &found.lay
        ),
        Ok(())
    );
    assert!(found.lay.placements.iter().any(|at| at.face_down()));
    let found = strip(&parts, &plain, &quick()).unwrap();
    assert!(found.lay.placements.iter().all(|at| !at.face_down()));
    assert_eq!(
        found
            .lay
            .placements
            .iter()
            .filter(|at| at.hand == Hand::Mirrored)
            .count(),
        3
    );
}

#[test]
fn a_piece_that_may_lie_across_does() {
    // Only across the cloth is there room, and only there is it as short.
    let band = Part::new("band", rectangle(90.0, 700.0));
    let across = Part {
        crosswise: true,
        ..band.clone()
    };
    let cloth = Strip::new(710.0);
    let along = strip(&[band], &cloth, &quick()).unwrap();
    let found = strip(core::slice::from_ref(&across), &cloth, &quick()).unwrap();
    assert!((along.length - 700.0).abs() < 1e-6 && (found.length - 90.0).abs() < 1e-6);
    assert_eq!(
        check(
            core::slice::from_ref(&across),
            &[cloth.panel(found.length).unwrap()],
            &found.lay
        ),
        Ok(())
    );
    // Not on a napped cloth.
    let napped = Strip { nap: true, ..cloth };
    assert!((strip(&[across], &napped, &quick()).unwrap().length - 700.0).abs() < 1e-6);
}

#[test]
fn what_cannot_be_laid_says_why() {
    let wide = [Part::new("flounce", rectangle(500.0, 100.0))];
    let error = strip(&wide, &Strip::new(450.0), &quick()).unwrap_err();
    assert_eq!(error.of(), "part \"flounce\" on the strip");
    let error = error.error();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NoSolution, "width")
    );
    // The width that is named will do.
    assert!((error.min() - 500.0).abs() < 1e-9);
    assert!(strip(&wide, &Strip::new(error.min()), &quick()).is_ok());
    let bad =
        |width, options: StripOptions| strip(&wide, &Strip::new(width), &options).unwrap_err();
    assert_eq!(bad(0.5, quick()).error().argument(), "width");
    assert_eq!(bad(f64::NAN, quick()).error().kind(), ErrorKind::NotFinite);
    let spacing = StripOptions {
        spacing: -1.0,
        ..quick()
    };
    assert_eq!(bad(600.0, spacing).error().argument(), "spacing");
    let seconds = StripOptions {
        seconds: Some(f64::INFINITY),
        ..quick()
    };
    assert_eq!(bad(600.0, seconds).error().argument(), "seconds");
    let crossed = [Part::new(
        "bow",
        [(0.0, 0.0), (9.0, 9.0), (9.0, 0.0), (0.0, 9.0)],
    )];
    assert_eq!(
        strip(&crossed, &Strip::new(600.0), &quick())
            .unwrap_err()
            .error()
            .kind(),
        ErrorKind::Outline
    );
}

#[test]
fn nothing_to_lay_takes_no_cloth() {
    let none = [Part {
        as_drawn: 0,
        ..Part::new("none", rectangle(10.0, 10.0))
    }];
    for parts in [&none[..], &[]] {
        let found = strip(parts, &Strip::new(100.0), &quick()).unwrap();
        assert_eq!(
            (found.length, found.density, found.evaluations),
            (0.0, 0.0, 0)
        );
    }
}

#[test]
fn one_piece_takes_its_own_length() {
    let one = [Part::new("band", rectangle(90.0, 700.0))];
    let found = strip(&one, &Strip::new(90.0), &quick()).unwrap();
    assert!((found.length - 700.0).abs() < 1e-6);
}

#[test]
fn progress_is_told_and_a_break_gives_the_best_so_far() {
    let (parts, cloth) = (garment(), Strip::new(1400.0));
    let mut told = Vec::new();
    let found = strip_with(&parts, &cloth, &quick(), |progress| {
        told.push(progress);
        match progress.best.is_some() && told.len() > 10 {
            true => ControlFlow::Break(()),
            false => ControlFlow::Continue(()),
        }
    })
    .unwrap();
    assert!(found.evaluations < quick().budget);
    assert_eq!(
        check(&parts, &[cloth.panel(found.length).unwrap()], &found.lay),
        Ok(())
    );
    assert!(told.windows(2).all(|pair| pair[0].done <= pair[1].done));
    let said = told.last().and_then(|last| last.best).unwrap();
    assert!((said - found.length).abs() < 1e-6);
}

#[test]
fn time_that_is_up_is_said() {
    let options = StripOptions {
        seconds: Some(0.0),
        ..quick()
    };
    let (parts, cloth) = (garment(), Strip::new(1400.0));
    let found = strip(&parts, &cloth, &options).unwrap();
    assert!(found.out_of_time && found.evaluations < quick().budget);
    assert_eq!(
        check(&parts, &[cloth.panel(found.length).unwrap()], &found.lay),
        Ok(())
    );
}

#[test]
fn pieces_with_curves_of_many_points_are_laid_inside_their_true_outlines() {
    let circle: Vec<(f64, f64)> = (0..200)
        .map(|step| {
            let (sin, cos) = libm::sincos(f64::from(step) / 200.0 * core::f64::consts::TAU);
            (90.0 * cos, 90.0 * sin)
        })
        .collect();
    let discs = [Part {
        as_drawn: 9,
        ..Part::new("disc", circle)
    }];
    let cloth = Strip::new(400.0);
    let found = strip(&discs, &cloth, &quick()).unwrap();
    assert_eq!(
        check(&discs, &[cloth.panel(found.length).unwrap()], &found.lay),
        Ok(())
    );
    // Two side by side take 360 of 400, so nine in pairs take five rows: 900. Nested they take less.
    assert!(found.length < 950.0, "{}", found.length);
}

#[test]
fn a_break_before_the_first_lay_gives_the_pieces_one_after_the_other() {
    let (parts, cloth) = (garment(), Strip::new(1400.0));
    let found = strip_with(&parts, &cloth, &quick(), |_| ControlFlow::Break(())).unwrap();
    assert_eq!(
        check(&parts, &[cloth.panel(found.length).unwrap()], &found.lay),
        Ok(())
    );
    assert!(found.evaluations < quick().budget / 2);
    let pieces: u32 = parts.iter().map(|part| part.as_drawn + part.mirrored).sum();
    assert_eq!(found.lay.placements.len(), pieces as usize);
}

#[test]
fn a_tilt_that_makes_a_piece_longer_is_not_taken() {
    // An invented facing, longer tilted one way than the other, that alone says how long the lay is.
    let outline = [
        (0.0, 0.0),
        (90.0, 0.0),
        (75.0, 620.0),
        (160.0, 960.0),
        (110.0, 1010.0),
        (40.0, 900.0),
    ];
    let facing = Part {
        mirrored: 1,
        tilt_deg: 2.0,
        ..Part::new("facing", outline)
    };
    let options = StripOptions {
        budget: 3_000_000,
        threads: 1,
        ..StripOptions::default()
    };
    let found = strip(&[facing], &Strip::new(900.0), &options).unwrap();
    // Straight on the grain it takes 1010.
    assert!(found.length <= 1010.0, "{}", found.length);
}

#[test]
fn a_first_lay_is_found_before_the_budget_is_gone() {
    // Invented facings, collars and pockets of two house-coats; end to end they would take 5140.
    let part =
        |name: &str, outline: &[(f64, f64)], as_drawn: u32, mirrored: u32, tilt_deg: f64| Part {
            as_drawn,
            mirrored,
            tilt_deg,
            ..Part::new(name, outline.iter().copied())
        };
    let facing = [
        (0.0, 0.0),
        (90.0, 0.0),
        (75.0, 620.0),
        (160.0, 960.0),
        (110.0, 1010.0),
        (40.0, 900.0),
    ];
    let collar = [
        (0.0, 0.0),
        (420.0, 0.0),
        (440.0, 85.0),
        (210.0, 70.0),
        (-20.0, 85.0),
    ];
    let pocket = [
        (0.0, 0.0),
        (160.0, 0.0),
        (160.0, 150.0),
        (80.0, 190.0),
        (0.0, 150.0),
    ];
    let parts = [
        part("facing", &facing, 2, 2, 2.0),
        part("collar", &collar, 4, 0, 0.0),
        part("pocket", &pocket, 4, 0, 0.0),
    ];
    for width in [600.0, 700.0, 800.0] {
        for seed in 1..=3 {
            let options = StripOptions {
                budget: 2_000_000,
                seed,
                ..StripOptions::default()
            };
            let found = strip(&parts, &Strip::new(width), &options).unwrap();
            assert!(found.length < 1500.0, "{width} {seed} {}", found.length);
        }
    }
}

#[test]
fn without_any_work_the_pieces_lie_one_against_the_other() {
    let part = |name: &str, long: f64, count| Part {
        as_drawn: count,
        ..Part::new(name, [(0.0, 0.0), (100.0, 0.0), (100.0, long), (0.0, long)])
    };
    let options = StripOptions {
        budget: 0,
        spacing: 10.0,
        ..StripOptions::default()
    };
    // In rows, two to a row of 250: 300 and 300, 300 and 200, 200 by itself. Against each other: 300 and 300; 300 beside two
    // of 200, which together take more; so 300 + 10 + 200 + 10 + 200, and in the other column 300 + 10 + 300.
    let parts = [part("short", 200.0, 2), part("long", 300.0, 3)];
    let cloth = Strip::new(250.0);
    let found = strip(&parts, &cloth, &options).unwrap();
    let panel = cloth.panel(found.length).unwrap();
    assert!(found.length < 720.0 + 1e-3, "{}", found.length);
    assert!(found.length > 719.9, "{}", found.length);
    assert_eq!(check(&parts, &[panel], &found.lay), Ok(()));
    // More than are laid so: 400 in rows of two, 200 rows of 20 and 199 spaces of 10.
    let many = [part("tab", 20.0, 400)];
    let found = strip(&many, &cloth, &options).unwrap();
    assert!((found.length - (200.0 * 20.0 + 199.0 * 10.0)).abs() < 1e-2);
}
