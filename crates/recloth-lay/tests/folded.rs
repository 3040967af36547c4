//! Pieces on a fold, and lays cut folded. Every lay is laid out by hand; the answer follows from the figure.

use kurbo::{Point, Vec2};
use recloth::ErrorKind;
use recloth::outline::{Curve, Cutting, Edge, Piece};
use recloth_lay::{
    Complaint, Fold, Hand, Lay, LeftoverOptions, Panel, Part, Placement, check, leftovers,
};

fn rectangle(width: f64, height: f64) -> [(f64, f64); 4] {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
}

/// Cloth 400 long and 200 wide, its grain along it, folded lengthwise at 100.
fn cloth() -> Panel {
    Panel::new("cloth", rectangle(400.0, 200.0))
        .and_then(|panel| panel.with_grain_deg(0.0))
        .expect("a good panel")
}

const FOLD: Fold = Fold {
    panel: 0,
    from: Point::new(0.0, 100.0),
    to: Point::new(400.0, 100.0),
};

fn at(part: usize, hand: Hand, turn_deg: f64, (x, y): (f64, f64)) -> Placement {
    Placement {
        part,
        hand,
        panel: 0,
        mirrored: hand == Hand::Mirrored,
        turn_deg,
        shift: Vec2::new(x, y),
    }
}

fn lay(placements: impl Into<Vec<Placement>>) -> Lay {
    Lay {
        placements: placements.into(),
        folds: vec![FOLD],
        ..Lay::default()
    }
}

/// A sleeve that tapers to one side, in a pair; it is drawn with its grain along the x axis.
fn sleeve() -> Part {
    Part {
        mirrored: 1,
        grain_deg: 0.0,
        ..Part::new(
            "sleeve",
            [(0.0, 0.0), (150.0, 0.0), (120.0, 60.0), (0.0, 60.0)],
        )
    }
}

/// A front on the fold, 80 long, 60 wide to each side at one end and 40 at the other.
fn front() -> Part {
    let half = [(0.0, 0.0), (60.0, 0.0), (40.0, 80.0), (0.0, 80.0)];
    Part::on_fold("front", half, (0.0, 0.0), (0.0, 80.0)).expect("a good half")
}

/// The mirror image of the sleeve in y = 100 is the mirrored one, its x turned about and turned by 180.
fn pair_and_front() -> Lay {
    lay([
        at(0, Hand::AsDrawn, 0.0, (10.0, 20.0)),
        at(0, Hand::Mirrored, 180.0, (10.0, 180.0)),
        // Its fold line runs along the fold; its end at 0 lies at 300, its other at 220.
        at(1, Hand::AsDrawn, 90.0, (300.0, 100.0)),
    ])
}

fn complaints(parts: &[Part], lay: &Lay) -> Vec<Complaint> {
    check(parts, &[cloth()], lay).expect_err("the lay should be refused")
}

#[test]
fn a_pair_and_a_piece_on_the_fold_are_cut_folded() {
    let parts = [sleeve(), front()];
    assert_eq!(check(&parts, &[cloth()], &pair_and_front()), Ok(()));
    // Opened, the same lay is right as well.
    let opened = Lay {
        folds: Vec::new(),
        ..pair_and_front()
    };
    assert_eq!(check(&parts, &[cloth()], &opened), Ok(()));
}

#[test]
fn an_odd_piece_leaves_its_image_to_nobody() {
    let single = Part {
        mirrored: 0,
        ..sleeve()
    };
    let alone = lay([at(0, Hand::AsDrawn, 0.0, (10.0, 20.0))]);
    assert_eq!(
        check(core::slice::from_ref(&single), &[cloth()], &alone),
        Ok(())
    );
    // 20 below the fold, its image lies 40 away from it: a spacing of 40 is kept, one of 41 is not.
    let spaced = |spacing: f64| Lay {
        spacing,
        ..alone.clone()
    };
    assert_eq!(
        check(core::slice::from_ref(&single), &[cloth()], &spaced(40.0)),
        Ok(())
    );
    let found = complaints(&[single], &spaced(41.0));
    assert!(
        matches!(found[..], [Complaint::CutsNear { placement: 0, other: 0, distance, spacing, .. }]
            if (distance - 40.0).abs() < 1e-9 && spacing == 41.0),
        "{found:?}"
    );
    assert_eq!(
        found[0].to_string(),
        "placement 0: sleeve, cut through both layers, is cut 40 mm from placement 0, sleeve, not 41 mm"
    );
}

#[test]
fn what_would_be_cut_from_the_other_layer_is_seen() {
    // Two singles on different layers, the one over the other: each cuts into the other.
    let parts = [
        Part::new("pocket", rectangle(50.0, 50.0)),
        Part::new("facing", rectangle(50.0, 50.0)),
    ];
    let turned = |part, x, y| at(part, Hand::AsDrawn, 90.0, (x, y));
    let over = lay([turned(0, 60.0, 20.0), turned(1, 109.99, 130.0)]);
    let found = complaints(&parts, &over);
    assert!(
        matches!(
            found[..],
            [
                Complaint::CutsInto { placement: 0, other: 1, at: first, .. },
                Complaint::CutsInto { placement: 1, other: 0, at: second, .. },
            ] if first.y > 100.0 && second.y < 100.0 && (first.x - 60.0).abs() < 0.02
        ),
        "{found:?}"
    );
    // A tenth of a millimetre on, they lie clear.
    let beside = lay([turned(0, 60.0, 20.0), turned(1, 110.0, 130.0)]);
    assert_eq!(check(&parts, &[cloth()], &beside), Ok(()));
}

#[test]
fn a_piece_across_the_fold_must_be_on_it() {
    let parts = [sleeve(), front()];
    // A hundredth off the fold: cut through both layers, the front comes out two hundredths too wide.
    let mut off = pair_and_front();
    off.placements[2].shift.y += 0.01;
    let found = complaints(&parts, &off);
    assert!(
        matches!(
            found[..],
            [Complaint::CutsInto {
                placement: 2,
                other: 2,
                ..
            }]
        ),
        "{found:?}"
    );
    // A ten-millionth is less than can be told.
    off.placements[2].shift.y = 100.0 + 1e-7;
    assert_eq!(check(&parts, &[cloth()], &off), Ok(()));
}

#[test]
fn a_twin_a_hundredth_off_is_none() {
    let parts = [sleeve(), front()];
    for shift in [Vec2::new(0.01, 0.0), Vec2::new(0.0, -0.01)] {
        let mut off = pair_and_front();
        off.placements[1].shift += shift;
        let found = complaints(&parts, &off);
        assert!(
            matches!(
                found[..],
                [
                    Complaint::CutsInto {
                        placement: 0,
                        other: 1,
                        ..
                    },
                    Complaint::CutsInto {
                        placement: 1,
                        other: 0,
                        ..
                    }
                ]
            ),
            "{found:?}"
        );
    }
}

#[test]
fn bad_folds_are_refused() {
    let with = |folds: Vec<Fold>| Lay {
        folds,
        ..pair_and_front()
    };
    let parts = [sleeve(), front()];
    let spot = Fold {
        to: FOLD.from,
        ..FOLD
    };
    let nowhere = Fold {
        to: Point::new(f64::NAN, 100.0),
        ..FOLD
    };
    let far = Fold {
        to: Point::new(2e6, 100.0),
        ..FOLD
    };
    for bad in [spot, nowhere, far] {
        assert_eq!(
            complaints(&parts, &with(vec![bad])),
            [Complaint::NoFold { fold: 0 }]
        );
    }
    let other = Fold { panel: 1, ..FOLD };
    assert_eq!(
        complaints(&parts, &with(vec![FOLD, other])),
        [Complaint::NoSuchFolded { fold: 1, panel: 1 }]
    );
    assert_eq!(
        complaints(&parts, &with(vec![FOLD, FOLD])),
        [Complaint::FoldedTwice {
            first: 0,
            second: 1,
            panel: String::from("cloth")
        }]
    );
}

#[test]
fn what_is_cut_from_the_other_layer_is_left_as_a_piece_of_its_own() {
    let single = Part {
        mirrored: 0,
        ..sleeve()
    };
    let laid = lay([at(0, Hand::AsDrawn, 0.0, (10.0, 20.0))]);
    let left = |lay: &Lay| {
        let found = leftovers(
            core::slice::from_ref(&single),
            &[cloth()],
            lay,
            &LeftoverOptions::default(),
        );
        let areas = found.unwrap().into_iter().map(|shape| shape.area_mm2);
        areas.collect::<Vec<_>>()
    };
    // The sleeve is (150 + 120) / 2 × 60 = 8100, and the cut round its image takes a tenth of a millimetre either way.
    let [rest, image] = left(&laid)[..] else {
        panic!("two shapes")
    };
    assert!((image - 8100.0).abs() < 50.0, "{image}");
    assert!((rest - (80_000.0 - 2.0 * 8100.0)).abs() < 50.0, "{rest}");
    // Opened, nothing is cut there.
    let opened = Lay {
        folds: Vec::new(),
        ..laid.clone()
    };
    assert_eq!(left(&opened).len(), 1);
    // A twin is no spare, nor is what lies on the fold.
    let parts = [sleeve(), front()];
    let both = leftovers(
        &parts,
        &[cloth()],
        &pair_and_front(),
        &LeftoverOptions::default(),
    );
    assert_eq!(both.unwrap().len(), 1);
    let bad = |fold: Fold| {
        let lay = Lay {
            folds: vec![fold],
            ..laid.clone()
        };
        let error = leftovers(
            core::slice::from_ref(&single),
            &[cloth()],
            &lay,
            &LeftoverOptions::default(),
        )
        .unwrap_err();
        (error.of().to_owned(), error.error().argument())
    };
    assert_eq!(bad(Fold { panel: 1, ..FOLD }), ("fold 0".into(), "panel"));
    let spot = Fold {
        to: FOLD.from,
        ..FOLD
    };
    assert_eq!(bad(spot), ("fold 0".into(), "fold"));
}

#[test]
fn a_slanting_fold_is_a_fold_too() {
    // Folded on the diagonal, a square and its image touch it at a corner each.
    let fold = Fold {
        panel: 0,
        from: Point::new(0.0, 0.0),
        to: Point::new(200.0, 200.0),
    };
    let pocket = Part {
        as_drawn: 2,
        crosswise: true,
        ..Part::new("pocket", rectangle(50.0, 50.0))
    };
    let mut both = Lay {
        folds: vec![fold],
        ..lay([
            at(0, Hand::AsDrawn, 0.0, (100.0, 50.0)),
            at(0, Hand::AsDrawn, 0.0, (50.0, 100.0)),
        ])
    };
    assert_eq!(
        check(core::slice::from_ref(&pocket), &[cloth()], &both),
        Ok(())
    );
    both.placements[1].shift.x -= 0.01;
    assert_eq!(complaints(&[pocket], &both).len(), 2);
}

#[test]
fn a_part_is_made_whole_from_its_half() {
    let front = front();
    assert_eq!(front.fold, Some([(0.0, 0.0).into(), (0.0, 80.0).into()]));
    let mut corners = front.outline.clone();
    corners.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    let expected = [
        (-60.0, 0.0),
        (-40.0, 80.0),
        (0.0, 0.0),
        (0.0, 80.0),
        (40.0, 80.0),
        (60.0, 0.0),
    ];
    assert_eq!(corners, expected.map(Point::from));
    // Points between the ends of the fold are no corners of the whole; what is on the fold by a hair is on it.
    let half = [
        (1e-7, 0.0),
        (60.0, 0.0),
        (40.0, 80.0),
        (0.0, 80.0),
        (0.0, 30.0),
    ];
    let again = Part::on_fold("front", half, (0.0, -5.0), (0.0, 5.0)).unwrap();
    assert_eq!(again.outline.len(), 6);
    assert!(
        check(&[again], &[], &Lay::default())
            .is_err_and(|all| all.len() == 1 && matches!(all[0], Complaint::Count { .. }))
    );
}

#[test]
fn a_half_that_is_none_says_why() {
    let on = |half: &[(f64, f64)], a: (f64, f64), b: (f64, f64)| {
        Part::on_fold("front", half.iter().copied(), a, b).unwrap_err()
    };
    let half = rectangle(60.0, 80.0);
    // A corner 5 mm beyond the fold.
    let across = on(&half, (5.0, 0.0), (5.0, 80.0));
    assert_eq!(
        (across.kind(), across.argument(), across.at()),
        (ErrorKind::NoSolution, "outline", Some(0))
    );
    assert!((across.value() + 5.0).abs() < 1e-9);
    // It touches the fold not at all, at one corner only, or in two places with a hole between.
    let bay = [
        (0.0, 0.0),
        (60.0, 0.0),
        (60.0, 80.0),
        (0.0, 80.0),
        (0.0, 60.0),
        (20.0, 40.0),
        (0.0, 20.0),
    ];
    let corner = [(0.0, 0.0), (60.0, -40.0), (60.0, 40.0)];
    for (half, x) in [(&half[..], -5.0), (&corner, 0.0), (&bay, 0.0)] {
        let error = on(half, (x, 0.0), (x, 80.0));
        assert_eq!(
            (error.kind(), error.argument()),
            (ErrorKind::Outline, "outline")
        );
    }
    let spot = on(&half, (0.0, 0.0), (0.0, 0.0));
    assert_eq!(
        (spot.kind(), spot.argument()),
        (ErrorKind::NoSolution, "fold")
    );
    let nan = on(&half, (0.0, f64::NAN), (0.0, 1.0));
    assert_eq!((nan.kind(), nan.argument()), (ErrorKind::NotFinite, "fold"));
}

#[test]
fn an_outline_that_is_not_its_own_image_is_refused() {
    let with = |outline: &[(f64, f64)]| Part {
        fold: Some([(0.0, 0.0).into(), (0.0, 80.0).into()]),
        ..Part::new("front", outline.iter().copied())
    };
    let refused = |part: Part| match &check(&[part], &[], &Lay::default()).unwrap_err()[..] {
        [Complaint::Input(error)] => Some(error.error()),
        _ => None,
    };
    assert_eq!(
        refused(with(&[
            (-60.0, 0.0),
            (60.0, 0.0),
            (40.0, 80.0),
            (-40.0, 80.0)
        ])),
        None
    );
    // A point more on one side, on the edge: the same outline.
    let more = [
        (-60.0, 0.0),
        (60.0, 0.0),
        (50.0, 40.0),
        (40.0, 80.0),
        (-40.0, 80.0),
    ];
    assert_eq!(refused(with(&more)), None);
    for off in [0.01, 1e-6] {
        let skew = [(-60.0, 0.0), (60.0 + off, 0.0), (40.0, 80.0), (-40.0, 80.0)];
        let error = refused(with(&skew)).unwrap();
        assert_eq!(
            (error.kind(), error.argument()),
            (ErrorKind::NoSolution, "fold")
        );
        assert!(
            error.value() > 0.4 * off && error.value() < 1.1 * off,
            "{error}"
        );
    }
    // Corners that mirror onto corners are not enough: the bay is on one side.
    let bay = [
        (-60.0, 0.0),
        (60.0, 0.0),
        (60.0, 80.0),
        (30.0, 40.0),
        (-60.0, 80.0),
    ];
    assert!(refused(with(&bay)).is_some());
}

/// A skirt front, half drawn: the hem a slight curve, the side a curve, the waist hollow; cut on the fold.
fn drawn_front() -> Piece {
    let curve = |a: (f64, f64), b: (f64, f64), bulge: f64| Curve::arc(a, b, bulge);
    Piece::new(
        "front",
        vec![
            Edge::seam("hem", curve((0.0, 0.0), (230.0, 12.0), 0.03), 40.0),
            Edge::seam(
                "side",
                Curve::cubic(
                    (230.0, 12.0),
                    (215.0, 160.0),
                    (245.0, 470.0),
                    (180.0, 600.0),
                ),
                15.0,
            ),
            Edge::seam("waist", curve((180.0, 600.0), (0.0, 590.0), -0.04), 10.0),
            Edge::fold("centre", Curve::line((0.0, 590.0), (0.0, 0.0))),
        ],
    )
    .expect("a good piece")
}

#[test]
fn a_drawn_piece_on_a_fold_becomes_a_part_on_one() {
    for (turn_deg, tolerance) in [(0.0, 0.05), (33.0, 0.2), (-71.0, 0.5)] {
        let piece = drawn_front()
            .turned(turn_deg)
            .with_cutting(Cutting::default())
            .unwrap();
        let part = Part::of(&piece, tolerance).unwrap();
        let [a, b] = part.fold.unwrap();
        assert!((libm::hypot(b.x - a.x, b.y - a.y) - 590.0).abs() < 1e-9);
        // Proved its own image, and as near to the true cut line as was asked.
        let whole = piece.unfold().unwrap().cut_line(tolerance).unwrap();
        for &p in &part.outline {
            assert!(whole.distance(p) <= 2.0 * tolerance, "{p:?}");
        }
        let none = Part {
            as_drawn: 0,
            ..part.clone()
        };
        assert_eq!(check(&[none], &[], &Lay::default()), Ok(()));
        // Its seam line lies 10 to 40 within.
        let seam = piece.unfold().unwrap().seam_line(tolerance).unwrap();
        assert!(part.seam.len() > 6 && part.seam.iter().all(|&p| seam.distance(p) < 1e-6));
    }
    let plain = drawn_front();
    let no_fold = Part::of(&plain.unfold().unwrap(), 0.05).unwrap();
    assert_eq!(no_fold.fold, None);
}
