//! Cloth by the length with a repeat: lays are matched, whatever is asked.

use recloth::ErrorKind;
use recloth_lay::{
    Error, Faces, MatchPoint, MatchSide, Part, Repeat, Strip, StripLay, StripOptions, check, strip,
};

fn rectangle(width: f64, height: f64) -> [(f64, f64); 4] {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
}

fn quick() -> StripOptions {
    StripOptions {
        budget: 1_000_000,
        ..StripOptions::default()
    }
}

/// So much work that a lay a little better than that of the quick search is found.
fn patient() -> StripOptions {
    StripOptions {
        budget: 5_000_000,
        ..StripOptions::default()
    }
}

/// Cloth 1400 wide with this repeat.
fn checked(along: f64, across: f64) -> Strip {
    Strip {
        repeat: Some(Repeat::new(along, across)),
        ..Strip::new(1400.0)
    }
}

/// An invented skirt of a whole front and two backs, matched at hip and hem of the side seams, and at the centre back; and a
/// band that matches nothing. At the hip it is 490 + 2 · 255 = 1000 round: 20 repeats of 50.
fn skirt() -> Vec<Part> {
    let point = |name: &str, at: (f64, f64), side| MatchPoint {
        name: name.into(),
        at: at.into(),
        side,
    };
    let front = Part {
        matches: vec![
            point("hip", (505.0, 500.0), MatchSide::Own),
            point("hem", (520.0, 20.0), MatchSide::Level),
            point("hip", (15.0, 500.0), MatchSide::Other),
            point("hem", (0.0, 20.0), MatchSide::Level),
        ],
        ..Part::new(
            "front",
            [(0.0, 0.0), (520.0, 0.0), (500.0, 700.0), (20.0, 700.0)],
        )
    };
    let back = Part {
        mirrored: 1,
        matches: vec![
            point("hip", (15.0, 510.0), MatchSide::Own),
            point("hem", (0.0, 30.0), MatchSide::Level),
            point("centre back", (270.0, 300.0), MatchSide::Both),
        ],
        ..Part::new(
            "back",
            [(0.0, 0.0), (280.0, 0.0), (270.0, 720.0), (20.0, 710.0)],
        )
    };
    vec![front, back, Part::new("band", rectangle(70.0, 760.0))]
}

/// The lay, which the checker accepts.
fn sound(parts: &[Part], cloth: &Strip, options: &StripOptions) -> StripLay {
    let found = strip(parts, cloth, options).expect("cloth that does");
    let panel = cloth.panel(found.length).expect("cloth that does");
    assert_eq!(check(parts, &[panel], &found.lay), Ok(()));
    assert!(found.lay.unplaced.is_empty());
    found
}

fn refused(parts: &[Part], cloth: &Strip) -> Error {
    strip(parts, cloth, &quick()).expect_err("no lay")
}

#[test]
fn a_skirt_is_matched_on_stripes_and_checks() {
    let parts = skirt();
    // A matched lay is a plain one too, so a patient search for plain lays comes as near.
    let plain = sound(&parts, &Strip::new(800.0), &patient());
    for (along, across) in [(80.0, 0.0), (0.0, 50.0), (80.0, 50.0)] {
        let cloth = Strip {
            width: 800.0,
            ..checked(along, across)
        };
        let found = sound(&parts, &cloth, &quick());
        // Matching costs cloth, and no more than a repeat for each of the three rows that a row by row lay has.
        assert!(found.length >= plain.length - 1e-6);
        assert!(
            found.length <= plain.length + 3.0 * along.max(across),
            "{}",
            found.length
        );
    }
}

#[test]
fn two_panels_side_by_side_or_one_repeat_further() {
    // Two panels, 700 wide each, side by side on 1400: their hips are 200 and 150 up, so the one lies 50, or 30 the other way,
    // further: 80 - 50. The shortest is 600 + 30: by hand.
    let panel = |name: &str, up: f64| {
        let part = Part::new(name, rectangle(700.0, 600.0));
        part.matching("hip", (0.0, up))
    };
    let parts = [panel("front", 200.0), panel("back", 150.0)];
    let found = sound(&parts, &checked(80.0, 0.0), &quick());
    assert!((found.length - 630.0).abs() < 1e-6, "{}", found.length);
}

#[test]
fn across_the_cloth_the_selvedge_leaves_few_places() {
    // Panels 660 wide, whose hips are 650 and 10 across: the shift of the back is that of the front and 640, but for repeats
    // of 100. Side by side it can be 740 more, 1400 in all, or 660 less: 1320 in all.
    let panel = |name: &str, over: f64| {
        let part = Part {
            grain_deg: 0.0,
            ..Part::new(name, rectangle(600.0, 660.0))
        };
        part.matching("hip", (300.0, over))
    };
    let parts = [panel("front", 650.0), panel("back", 10.0)];
    let on = |width| {
        let cloth = Strip {
            width,
            ..checked(0.0, 100.0)
        };
        sound(&parts, &cloth, &patient()).length
    };
    assert!((on(1320.0) - 600.0).abs() < 1e-6);
    // Along the cloth they lie where they like, so the search comes near.
    let narrow = on(1319.0);
    assert!((1200.0..1201.0).contains(&narrow), "{narrow}");
}

#[test]
fn all_round_a_garment_the_girth_is_a_whole_number_of_repeats() {
    // 1000 round is 17 repeats of 60 less 20.
    let error = refused(&skirt(), &checked(0.0, 60.0));
    assert!(error.to_string().contains("20 mm off"), "{error}");
    // Without the centre back it can be: each seam for itself.
    let mut parts = skirt();
    parts[1].matches.pop();
    sound(&parts, &checked(0.0, 60.0), &quick());
}

#[test]
fn what_cannot_be_matched_says_by_how_much() {
    // Hip and hem are 480 apart on the front, 470 on the back: 10 off, however they lie.
    let mut parts = skirt();
    parts[1].matches[1].at.y = 40.0;
    let error = refused(&parts, &checked(80.0, 0.0));
    assert_eq!(error.error().argument(), "matches");
    assert_eq!(error.error().kind(), ErrorKind::NoSolution);
    assert!((error.error().value() - 10.0).abs() < 1e-9);
    assert!(error.to_string().contains("10 mm off"), "{error}");
    // Across the cloth it matters not.
    sound(&parts, &checked(0.0, 50.0), &quick());
    // A whole repeat more is no difference.
    parts[1].matches[1].at.y = 30.0 - 80.0;
    sound(&parts, &checked(80.0, 0.0), &quick());
}

#[test]
fn a_repeat_without_room_across_the_cloth_is_refused() {
    // Two pieces 1390 wide of 1400, whose hips are 50 apart across: no repeat of 80 lets both lie within the selvedges.
    let panel = |name: &str, over: f64| {
        let part = Part {
            grain_deg: 0.0,
            ..Part::new(name, rectangle(300.0, 1390.0))
        };
        part.matching("hip", (150.0, over))
    };
    let parts = [panel("front", 700.0), panel("back", 750.0)];
    let error = refused(&parts, &checked(0.0, 80.0));
    assert_eq!(error.error().argument(), "repeat");
    // 5 apart they can.
    let parts = [panel("front", 700.0), panel("back", 705.0)];
    sound(&parts, &checked(0.0, 80.0), &quick());
}

#[test]
fn every_kind_of_cloth_and_piece_is_matched() {
    let base = skirt();
    let velvet = Strip {
        nap: true,
        ..checked(80.0, 50.0)
    };
    sound(&base, &velvet, &quick());
    let two_faced = Strip {
        faces: Faces::Two,
        ..checked(80.0, 50.0)
    };
    sound(&base, &two_faced, &quick());
    // A repeat as long as the girth, and one longer than the pieces and than the cloth is wide.
    sound(&base, &checked(1900.0, 1000.0), &quick());
    // Pieces whose grain may run across, and some that may be tilted.
    let crosswise: Vec<Part> = (base.iter().cloned())
        .map(|part| Part {
            crosswise: true,
            ..part
        })
        .collect();
    sound(&crosswise, &checked(80.0, 50.0), &quick());
    let tilted: Vec<Part> = (base.iter().cloned())
        .map(|part| Part {
            tilt_deg: 2.0,
            ..part
        })
        .collect();
    sound(&tilted, &checked(80.0, 0.0), &quick());
    // Two groups that know nothing of each other, in several copies.
    let many: Vec<Part> = [("gore", "hip"), ("godet", "seam")]
        .map(|(name, point)| Part {
            as_drawn: 3,
            mirrored: 2,
            ..Part::new(
                name,
                [(0.0, 0.0), (300.0, 0.0), (220.0, 500.0), (80.0, 500.0)],
            )
            .matching(point, (240.0, 377.0))
        })
        .into();
    sound(&many, &checked(80.0, 50.0), &quick());
    let none = strip(&[], &checked(80.0, 50.0), &quick()).unwrap();
    assert_eq!(none.length, 0.0);
}

#[test]
fn without_work_and_with_spacing_lays_are_matched_too() {
    let none = StripOptions {
        budget: 0,
        ..quick()
    };
    for (along, across) in [(80.0, 0.0), (0.0, 50.0), (80.0, 50.0)] {
        sound(&skirt(), &checked(along, across), &none);
        let spaced = StripOptions {
            spacing: 7.0,
            ..none
        };
        sound(&skirt(), &checked(along, across), &spaced);
        let spaced = StripOptions {
            spacing: 7.0,
            ..quick()
        };
        sound(&skirt(), &checked(along, across), &spaced);
    }
}

#[test]
fn the_same_seed_gives_the_same_lay_whatever_the_threads() {
    let (parts, cloth) = (skirt(), checked(80.0, 50.0));
    let by = |threads, seed| {
        let options = StripOptions {
            threads,
            seed,
            ..quick()
        };
        strip(&parts, &cloth, &options).unwrap()
    };
    assert_eq!(by(1, 1), by(2, 1));
    assert_ne!(by(1, 1).lay, by(1, 2).lay);
}

#[test]
fn a_repeat_with_nothing_to_match_changes_nothing() {
    let parts: Vec<Part> = (skirt().into_iter())
        .map(|part| Part {
            matches: Vec::new(),
            ..part
        })
        .collect();
    let plain = strip(&parts, &Strip::new(1400.0), &quick()).unwrap();
    assert_eq!(
        strip(&parts, &checked(80.0, 50.0), &quick()).unwrap(),
        plain
    );
    // Nor do points on cloth without a repeat.
    assert_eq!(
        strip(&skirt(), &Strip::new(1400.0), &quick()).unwrap(),
        plain
    );
}

#[test]
fn a_repeat_out_of_range_is_refused() {
    let error = refused(&skirt(), &checked(0.5, 50.0));
    assert_eq!(
        error.to_string(),
        "strip: along = 0.5 is not between 1 and 2000"
    );
    let error = refused(&skirt(), &checked(0.0, 0.0));
    assert_eq!(error.error().argument(), "along");
}
