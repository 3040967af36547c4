//! Cloth with a repeat: what the checker says of lays that match and lays that do not. Every number is worked by hand beside
//! its test.

use kurbo::Vec2;
use recloth::ErrorKind;
use recloth_lay::{
    Complaint, Faces, Hand, Lay, MatchPoint, MatchSide, Panel, Part, Placement, Repeat, check,
};

fn rectangle(width: f64, height: f64) -> [(f64, f64); 4] {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
}

/// 1000 square, the grain up the page: along it is y, across it is x.
fn checked(along: f64, across: f64) -> Panel {
    let cloth = Panel::new("cloth", rectangle(1000.0, 1000.0));
    cloth
        .and_then(|cloth| cloth.with_repeat(Some(Repeat::new(along, across))))
        .expect("a good panel")
}

/// A front whose hip is 200 up its right edge, at 100 across; a back whose hip is 150 up its left edge, at 0 across.
fn skirt() -> [Part; 2] {
    [
        Part::new("front", rectangle(100.0, 300.0)).matching("hip", (100.0, 200.0)),
        Part::new("back", rectangle(120.0, 250.0)).matching("hip", (0.0, 150.0)),
    ]
}

fn at(part: usize, x: f64, y: f64) -> Placement {
    Placement {
        part,
        hand: Hand::AsDrawn,
        panel: 0,
        mirrored: false,
        turn_deg: 0.0,
        shift: Vec2::new(x, y),
    }
}

/// The mirrored hand, laid by its mirrored outline.
fn other_hand(part: usize, x: f64, y: f64) -> Placement {
    Placement {
        hand: Hand::Mirrored,
        mirrored: true,
        ..at(part, x, y)
    }
}

fn said(parts: &[Part], panels: &[Panel], placements: &[Placement]) -> Vec<String> {
    let lay = Lay {
        placements: placements.to_vec(),
        ..Lay::default()
    };
    match check(parts, panels, &lay) {
        Ok(()) => Vec::new(),
        Err(complaints) => complaints.iter().map(Complaint::to_string).collect(),
    }
}

#[test]
fn hips_lie_at_the_same_place_of_the_repeat() {
    let (parts, cloth) = (skirt(), [checked(80.0, 0.0)]);
    // The front's hip is at 200 = 2 · 80 + 40. The back's is at its shift + 150: 50, 130 and 690 up it is at 200, 280, 840,
    // all 40 over a whole number of repeats.
    for up in [50.0, 130.0, 690.0] {
        assert_eq!(
            said(&parts, &cloth, &[at(0, 0.0, 0.0), at(1, 100.0, up)]),
            [""; 0]
        );
    }
    assert_eq!(
        said(&parts, &cloth, &[at(0, 0.0, 0.0), at(1, 100.0, 62.0)]),
        ["placements 0 and 1: hip: back lies 12 mm off front along the repeat of 80 mm"]
    );
    // 75 further is 5 short of a repeat.
    assert_eq!(
        said(&parts, &cloth, &[at(0, 0.0, 0.0), at(1, 100.0, 125.0)]),
        ["placements 0 and 1: hip: back lies 5 mm off front along the repeat of 80 mm"]
    );
}

#[test]
fn a_hundredth_of_a_millimetre_off_is_refused_along_and_across() {
    let (parts, cloth) = (skirt(), [checked(80.0, 60.0)]);
    // Across, the hips are at 100 and at the back's shift: 160 is one repeat of 60 further.
    let good = |x: f64, y: f64| {
        let lay = Lay {
            placements: vec![at(0, 0.0, 0.0), at(1, 160.0 + x, 50.0 + y)],
            ..Lay::default()
        };
        check(&parts, &cloth, &lay)
    };
    assert_eq!(good(0.0, 0.0), Ok(()));
    assert_eq!(good(5e-7, -5e-7), Ok(()));
    for sign in [1.0, -1.0] {
        let found = good(0.0, sign * 0.01).unwrap_err();
        assert!(
            matches!(&found[..], [Complaint::OffAlong { off, repeat: 80.0, .. }] if (off - 0.01).abs() < 1e-9),
            "{found:?}"
        );
        let found = good(sign * 0.01, 0.0).unwrap_err();
        assert!(
            matches!(&found[..], [Complaint::OffAcross { off, repeat: 60.0, .. }] if (off - 0.01).abs() < 1e-9),
            "{found:?}"
        );
    }
    assert_eq!(good(0.01, 0.01).unwrap_err().len(), 2);
}

#[test]
fn plain_cloth_other_names_and_a_name_that_is_there_once_ask_for_nothing() {
    let plain = Panel::new("cloth", rectangle(1000.0, 1000.0)).unwrap();
    let [front, back] = skirt();
    let placements = [at(0, 0.0, 0.0), at(1, 110.0, 13.0)];
    assert_eq!(
        said(&[front.clone(), back.clone()], &[plain], &placements),
        [""; 0]
    );
    let knee = Part {
        matches: Vec::new(),
        ..back
    }
    .matching("knee", (0.0, 150.0));
    assert_eq!(
        said(&[front, knee], &[checked(80.0, 60.0)], &placements),
        [""; 0]
    );
}

#[test]
fn along_the_grain_both_hands_are_level_across_it_each_by_itself() {
    let [front, back] = skirt().map(|part| Part {
        mirrored: 1,
        ..part
    });
    let parts = [front, back];
    let cloth = [checked(80.0, 60.0)];
    // As drawn the hips are at x 100 and 160; mirrored, the front's is at 507 - 100 = 407, the back's at its shift, 707: five
    // repeats apart. The two hands are 7 apart, over five repeats, which asks for nothing.
    let placements = [
        at(0, 0.0, 0.0),
        at(1, 160.0, 50.0),
        other_hand(0, 507.0, 80.0),
        other_hand(1, 707.0, 130.0 + 240.0),
    ];
    assert_eq!(said(&parts, &cloth, &placements), [""; 0]);
    let mut spoilt = placements;
    spoilt[3].shift.x += 4.0;
    assert_eq!(
        said(&parts, &cloth, &spoilt),
        ["placements 2 and 3: hip: back lies 4 mm off front across the repeat of 60 mm"]
    );
    // Along, the other hand is level with the first laid.
    let mut spoilt = placements;
    spoilt[2].shift.y += 4.0;
    assert_eq!(
        said(&parts, &cloth, &spoilt),
        ["placements 0 and 2: hip: front lies 4 mm off front along the repeat of 80 mm"]
    );
}

#[test]
fn a_seam_that_joins_the_hands_matches_across_as_well() {
    let centre = MatchPoint {
        name: "centre back".into(),
        at: (0.0, 100.0).into(),
        side: MatchSide::Both,
    };
    let back = Part {
        mirrored: 1,
        matches: vec![centre],
        ..Part::new("back", rectangle(120.0, 250.0))
    };
    let cloth = [checked(0.0, 60.0)];
    // The centre back is at x 0 and, mirrored, at the shift: 240 is four repeats.
    assert_eq!(
        said(
            core::slice::from_ref(&back),
            &cloth,
            &[at(0, 0.0, 0.0), other_hand(0, 240.0, 0.0)]
        ),
        [""; 0]
    );
    assert_eq!(
        said(
            &[back],
            &cloth,
            &[at(0, 0.0, 0.0), other_hand(0, 250.0, 0.0)]
        ),
        ["placements 0 and 1: centre back: back lies 10 mm off back across the repeat of 60 mm"]
    );
}

#[test]
fn the_mirrored_half_of_a_piece_on_a_fold_meets_the_other_hand() {
    let hip = |x: f64, side| MatchPoint {
        name: "hip".into(),
        at: (x, 200.0).into(),
        side,
    };
    // A whole front 200 wide about x = 100: its drawn half is the right one.
    let front = Part {
        matches: vec![hip(200.0, MatchSide::Own), hip(0.0, MatchSide::Other)],
        ..Part::new("front", rectangle(200.0, 300.0))
    };
    let back = Part {
        mirrored: 1,
        ..Part::new("back", rectangle(120.0, 300.0)).matching("hip", (0.0, 200.0))
    };
    let parts = [front, back];
    let cloth = [checked(80.0, 70.0)];
    // The front's hips are at 200 and at 0. The back as drawn has its hip at its shift: 270. Mirrored at its shift: 560.
    let placements = [
        at(0, 0.0, 0.0),
        at(1, 270.0, 0.0),
        other_hand(1, 560.0, 0.0),
    ];
    assert_eq!(said(&parts, &cloth, &placements), [""; 0]);
    let mut spoilt = placements;
    spoilt[2].shift.x = 555.0;
    assert_eq!(
        said(&parts, &cloth, &spoilt),
        ["placements 0 and 2: hip: back lies 5 mm off front across the repeat of 70 mm"]
    );
}

#[test]
fn a_piece_turned_end_for_end_has_the_print_upside_down() {
    let (parts, cloth) = (skirt(), [checked(80.0, 0.0)]);
    // Turned by 180 degrees the back's hip is at its shift - 150: 350 puts it at 200, where the front's is.
    let turned = Placement {
        turn_deg: 180.0,
        ..at(1, 220.0, 350.0)
    };
    assert_eq!(
        said(&parts, &cloth, &[at(0, 0.0, 0.0), turned]),
        ["placements 0 and 1: front and back match at hip but lie different ways round"]
    );
    // Both turned they lie the same way round: the front's hip is at 800 - 200 = 600, the back's at 680 - 150 - 10 = 520.
    let both = [
        Placement {
            turn_deg: 180.0,
            ..at(0, 100.0, 800.0)
        },
        Placement {
            turn_deg: 180.0,
            ..at(1, 220.0, 670.0)
        },
    ];
    assert_eq!(said(&parts, &cloth, &both), [""; 0]);
}

#[test]
fn on_two_faced_cloth_the_same_side_is_up_where_the_print_repeats_across() {
    let parts = skirt();
    let two_faced = |along, across| [checked(along, across).with_faces(Faces::Two)];
    // Turned over the back's hip is at its shift: 160, as if it were not; 120 of it lie left of there.
    let over = Placement {
        mirrored: true,
        ..at(1, 340.0, 50.0)
    };
    let placements = [at(0, 0.0, 0.0), over];
    assert_eq!(
        said(&parts, &two_faced(80.0, 60.0), &placements),
        ["placements 0 and 1: front and back match at hip but not the same side of them is up"]
    );
    assert_eq!(said(&parts, &two_faced(80.0, 0.0), &placements), [""; 0]);
}

#[test]
fn two_panels_match_from_where_each_repeat_begins_along_its_own_grain() {
    let parts = skirt();
    let upright = checked(80.0, 0.0);
    // Grain to the right; a repeat begins at x = 30.
    let lying = Panel::new("other", rectangle(1000.0, 1000.0))
        .unwrap()
        .with_grain_deg(0.0)
        .unwrap();
    let from = |along, x: f64| {
        let repeat = Repeat::new(along, 0.0).beginning_at((x, 500.0));
        lying.clone().with_repeat(Some(repeat)).unwrap()
    };
    // Turned by -90 degrees (x, y) lies at (y, -x): the hip at 150 of the back is at x = shift + 150. With a shift of 80 it is
    // 200 from 30: 40 over two repeats, as the front's.
    let back = Placement {
        panel: 1,
        turn_deg: -90.0,
        ..at(1, 80.0, 500.0)
    };
    let placements = [at(0, 0.0, 0.0), back];
    assert_eq!(
        said(&parts, &[upright.clone(), from(80.0, 30.0)], &placements),
        [""; 0]
    );
    assert_eq!(
        said(&parts, &[upright.clone(), from(80.0, 37.0)], &placements),
        ["placements 0 and 1: hip: back lies 7 mm off front along the repeat of 80 mm"]
    );
    assert_eq!(
        said(&parts, &[upright, from(90.0, 30.0)], &placements),
        ["placements 0 and 1: at hip cloth and other cannot match, for their repeats differ"]
    );
}

#[test]
fn a_tilted_piece_meets_the_print_at_its_points() {
    let [front, back] = skirt();
    let back = Part {
        tilt_deg: 3.0,
        ..back
    };
    // Turned by 3 degrees the back's hip, 150 up, is at (-150 sin 3, 150 cos 3) = (-7.850 393 44, 149.794 430 21).
    let (sin, cos) = (0.052_335_956_242_943_83, 0.998_629_534_754_573_9);
    let tilted = |up: f64| Placement {
        turn_deg: 3.0,
        ..at(1, 160.0 + 150.0 * sin, up)
    };
    let up = 280.0 - 150.0 * cos;
    let parts = [front, back];
    let cloth = [checked(80.0, 60.0)];
    assert_eq!(
        said(&parts, &cloth, &[at(0, 0.0, 0.0), tilted(up)]),
        [""; 0]
    );
    let off = said(&parts, &cloth, &[at(0, 0.0, 0.0), tilted(up + 1.0)]);
    assert!(off[0].contains("along the repeat of 80"), "{off:?}");
    assert_eq!(off.len(), 1);
}

#[test]
fn of_pieces_across_the_cloth_along_is_across() {
    let parts = skirt().map(|part| Part {
        crosswise: true,
        mirrored: 1,
        ..part
    });
    // Turned by -90 degrees (x, y) lies at (y, -x). The front's hip is at x 200, y 900 - 100; the back's at x = shift + 150,
    // y = its shift: along the pieces is across the cloth, a repeat of 60.
    let across = |part, x: f64, y: f64, mirrored| Placement {
        turn_deg: -90.0,
        mirrored,
        hand: if mirrored {
            Hand::Mirrored
        } else {
            Hand::AsDrawn
        },
        ..at(part, x, y)
    };
    // As drawn: y 800 and 480 = 800 - 4 · 80. Mirrored: (x, y) lies at (y, x), the front's hip at y = shift + 100.
    let placements = [
        across(0, 0.0, 900.0, false),
        across(1, 50.0, 480.0, false),
        across(0, 600.0, 13.0, true),
        across(1, 650.0, 273.0, true),
    ];
    assert_eq!(said(&parts, &[checked(80.0, 60.0)], &placements), [""; 0]);
    let mut spoilt = placements;
    spoilt[3].shift.y += 5.0;
    assert_eq!(
        said(&parts, &[checked(80.0, 60.0)], &spoilt),
        ["placements 2 and 3: hip: back lies 5 mm off front across the repeat of 80 mm"]
    );
    let mut spoilt = placements;
    spoilt[2].shift.x += 6.0;
    assert_eq!(
        said(&parts, &[checked(80.0, 60.0)], &spoilt),
        ["placements 0 and 2: hip: front lies 6 mm off front along the repeat of 60 mm"]
    );
}

#[test]
fn points_to_match_are_within_their_range() {
    let [front, back] = skirt();
    let bad = [front.matching("hem", (f64::NAN, 0.0)), back];
    assert_eq!(
        said(&bad, &[checked(80.0, 0.0)], &[]),
        ["part \"front\": matches[1] = NaN is not a finite number"]
    );
    let many = Part::new("front", rectangle(9.0, 9.0));
    let many = (0..1001).fold(many, |part, _| part.matching("hip", (0.0, 0.0)));
    let lay = Lay::default();
    let Complaint::Input(error) = &check(&[many], &[], &lay).unwrap_err()[0] else {
        unreachable!()
    };
    assert_eq!(error.error().kind(), ErrorKind::Count);
}
