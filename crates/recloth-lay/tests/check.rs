//! The checker against sound and spoilt lays. Every lay is laid out by hand; the answer follows from the figure.

use kurbo::{Point, Vec2};
use recloth_lay::{
    Complaint, Faces, Flaw, Hand, Lay, Panel, Part, Placement, Shows, Unplaced, check,
};

fn rectangle(width: f64, height: f64) -> Vec<Point> {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
        .map(Point::from)
        .into()
}

/// A good panel.
fn cloth<P: Into<Point>>(name: &str, outline: impl IntoIterator<Item = P>) -> Panel {
    Panel::new(name, outline).expect("a good panel")
}

fn with_hole(panel: Panel, hole: Vec<Point>) -> Panel {
    panel.with_holes(vec![hole]).expect("a good hole")
}

fn moved(outline: &[Point], x: f64, y: f64) -> Vec<Point> {
    outline.iter().map(|&p| p + Vec2::new(x, y)).collect()
}

/// The first hand of a part on the first panel, shifted only.
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

fn lay(placements: impl Into<Vec<Placement>>) -> Lay {
    Lay {
        placements: placements.into(),
        ..Lay::default()
    }
}

fn complaints(parts: &[Part], panels: &[Panel], lay: &Lay) -> Vec<Complaint> {
    check(parts, panels, lay).expect_err("the lay should be refused")
}

/// Two parts, once each, on one panel of 200 by 100 mm.
fn two(a: Vec<Point>, b: Vec<Point>) -> ([Part; 2], [Panel; 1]) {
    (
        [Part::new("a", a), Part::new("b", b)],
        [cloth("cloth", rectangle(200.0, 100.0))],
    )
}

#[test]
fn nothing_on_nothing_is_right() {
    assert_eq!(check(&[], &[], &Lay::default()), Ok(()));
}

#[test]
fn pieces_may_touch_along_an_edge_and_fill_the_panel() {
    let (parts, panels) = two(rectangle(100.0, 100.0), rectangle(100.0, 100.0));
    assert_eq!(
        check(&parts, &panels, &lay([at(0, 0.0, 0.0), at(1, 100.0, 0.0)])),
        Ok(())
    );
}

#[test]
fn a_hundredth_of_a_millimetre_into_each_other_or_out_of_the_panel_is_refused() {
    let (parts, panels) = two(rectangle(100.0, 100.0), rectangle(99.0, 100.0));
    let found = complaints(&parts, &panels, &lay([at(0, 0.0, 0.0), at(1, 99.99, 0.0)]));
    assert!(
        matches!(
            found[..],
            [Complaint::Overlap {
                first: 0,
                second: 1,
                ..
            }]
        ),
        "{found:?}"
    );
    for (x, y) in [(-0.01, 0.0), (100.01, 0.0), (0.0, -0.01), (0.0, 0.01)] {
        let found = complaints(&parts[..1], &panels, &lay([at(0, x, y)]));
        assert!(
            matches!(found[..], [Complaint::Outside { placement: 0, .. }]),
            "{found:?}"
        );
    }
}

#[test]
fn the_tolerance_is_where_it_says() {
    let (parts, panels) = two(rectangle(100.0, 100.0), rectangle(99.0, 100.0));
    let overlapping = |by: f64| lay([at(0, 0.0, 0.0), at(1, 100.0 - by, 0.0)]);
    assert_eq!(check(&parts, &panels, &overlapping(0.9e-6)), Ok(()));
    assert!(check(&parts, &panels, &overlapping(1.2e-6)).is_err());
    let turned = |turn_deg: f64| {
        let tilting = Part {
            tilt_deg: 1.0,
            ..Part::new("a", rectangle(10.0, 10.0))
        };
        check(
            &[tilting],
            &panels,
            &lay([Placement {
                turn_deg,
                ..at(0, 50.0, 50.0)
            }]),
        )
    };
    assert_eq!(turned(1.0), Ok(()));
    assert_eq!(turned(-1.0), Ok(()));
    assert!(turned(1.000_001).is_err());
}

#[test]
fn a_vertex_on_an_edge_touches() {
    // A diamond whose corner meets the middle of the square's edge.
    let diamond = [(0.0, 20.0), (20.0, 0.0), (40.0, 20.0), (20.0, 40.0)].map(Point::from);
    let (parts, panels) = two(rectangle(100.0, 100.0), diamond.into());
    assert_eq!(
        check(&parts, &panels, &lay([at(0, 0.0, 0.0), at(1, 100.0, 30.0)])),
        Ok(())
    );
    assert!(check(&parts, &panels, &lay([at(0, 0.0, 0.0), at(1, 99.99, 30.0)])).is_err());
}

#[test]
fn the_same_piece_twice_in_the_same_place_overlaps() {
    // No point of one edge is inside the other piece: only the inner points tell.
    let part = Part {
        as_drawn: 2,
        ..Part::new("a", rectangle(60.0, 40.0))
    };
    let panels = [cloth("cloth", rectangle(200.0, 100.0))];
    let found = complaints(
        &[part],
        &panels,
        &lay([at(0, 10.0, 10.0), at(0, 10.0, 10.0)]),
    );
    assert!(
        matches!(found[..], [Complaint::Overlap { .. }]),
        "{found:?}"
    );
}

#[test]
fn a_piece_that_fills_a_hole_lies_over_it() {
    let (parts, mut panels) = two(rectangle(30.0, 30.0), rectangle(30.0, 30.0));
    panels = panels.map(|panel| with_hole(panel, moved(&rectangle(30.0, 30.0), 50.0, 20.0)));
    let found = complaints(&parts[..1], &panels, &lay([at(0, 50.0, 20.0)]));
    assert!(
        matches!(found[..], [Complaint::OnHole { hole: 0, .. }]),
        "{found:?}"
    );
    // Beside it is right, and so is the other side.
    assert_eq!(
        check(
            &parts,
            &panels,
            &lay([at(0, 20.0, 20.0), at(1, 80.0, 20.0)])
        ),
        Ok(())
    );
    // A hole within the piece.
    let big = Part::new("big", rectangle(90.0, 90.0));
    let found = complaints(&[big], &panels, &lay([at(0, 20.0, 5.0)]));
    assert!(matches!(found[..], [Complaint::OnHole { .. }]), "{found:?}");
}

#[test]
fn a_piece_that_crosses_another_without_a_vertex_inside_overlaps() {
    let (parts, panels) = two(rectangle(90.0, 10.0), rectangle(10.0, 90.0));
    let found = complaints(&parts, &panels, &lay([at(0, 0.0, 40.0), at(1, 40.0, 0.0)]));
    assert!(
        matches!(found[..], [Complaint::Overlap { .. }]),
        "{found:?}"
    );
}

#[test]
fn a_needle_is_seen_however_thin() {
    // A needle a ten-millionth of a millimetre wide runs 50 mm into the square: no disc of the tolerance fits in what
    // they share, but a cut along it would spoil the square.
    let needle = [(0.0, 0.0), (100.0, 0.0), (100.0, 1e-7), (0.0, 1e-7)].map(Point::from);
    let (parts, panels) = two(rectangle(100.0, 100.0), needle.into());
    assert!(check(&parts, &panels, &lay([at(0, 0.0, 0.0), at(1, 50.0, 50.0)])).is_err());
    assert_eq!(
        check(&parts, &panels, &lay([at(0, 0.0, 0.0), at(1, 100.0, 50.0)])),
        Ok(())
    );
}

#[test]
fn an_island_may_lie_in_a_bay_of_its_own_shape() {
    // A square with a bay 40 wide, and a tongue of 40 that fills it.
    let bay = [
        (0.0, 0.0),
        (100.0, 0.0),
        (100.0, 30.0),
        (50.0, 30.0),
        (50.0, 70.0),
        (100.0, 70.0),
        (100.0, 100.0),
        (0.0, 100.0),
    ];
    let (parts, panels) = two(bay.map(Point::from).into(), rectangle(50.0, 40.0));
    assert_eq!(
        check(&parts, &panels, &lay([at(0, 0.0, 0.0), at(1, 50.0, 30.0)])),
        Ok(())
    );
    assert!(check(&parts, &panels, &lay([at(0, 0.0, 0.0), at(1, 49.99, 30.0)])).is_err());
    assert!(check(&parts, &panels, &lay([at(0, 0.0, 0.0), at(1, 50.0, 30.01)])).is_err());
}

#[test]
fn a_plug_outside_a_ring_that_all_but_closes_leaves_the_panel() {
    // The panel is a frame with a slit a ten-millionth of a millimetre wide; the piece fills what the frame leaves
    // open, so all its edge is on the panel's edge but none of it on the cloth.
    let frame = [
        (50.0, 0.0),
        (100.0, 0.0),
        (100.0, 100.0),
        (0.0, 100.0),
        (0.0, 0.0),
        (50.0 - 1e-7, 0.0),
        (50.0 - 1e-7, 30.0),
        (30.0, 30.0),
        (30.0, 70.0),
        (70.0, 70.0),
        (70.0, 30.0),
        (50.0, 30.0),
    ];
    let (parts, panels) = (
        [Part::new("plug", rectangle(40.0, 40.0))],
        [cloth("frame", frame)],
    );
    let found = complaints(&parts, &panels, &lay([at(0, 30.0, 30.0)]));
    assert!(
        matches!(found[..], [Complaint::Outside { .. }]),
        "{found:?}"
    );
}

#[test]
fn a_hole_may_share_a_point_with_the_outline() {
    let (parts, mut panels) = two(rectangle(50.0, 50.0), rectangle(50.0, 50.0));
    let triangle = [(100.0, 0.0), (120.0, 50.0), (80.0, 50.0)];
    panels = panels.map(|panel| with_hole(panel, triangle.map(Point::from).into()));
    let beside = |x: f64| check(&parts, &panels, &lay([at(0, x, 0.0), at(1, 120.0, 0.0)]));
    assert_eq!(beside(30.0), Ok(()));
    assert!(beside(30.01).is_err());
}

#[test]
fn spots_slits_and_areas_are_kept_clear() {
    let flawed = |outline: &[(f64, f64)], margin: f64| {
        let flaw = Flaw::new(outline.iter().copied(), margin);
        [cloth("cloth", rectangle(200.0, 100.0))
            .with_flaws(vec![flaw])
            .expect("a good flaw")]
    };
    let part = [Part::new("a", rectangle(50.0, 50.0))];
    let spot = &[(75.0, 25.0)][..];
    let slit = &[(75.0, 10.0), (75.0, 90.0)][..];
    let area = &[(75.0, 10.0), (90.0, 10.0), (90.0, 40.0)][..];
    for shape in [spot, slit, area] {
        // At x = 25 the piece ends at 75: it touches the flaw.
        assert_eq!(
            check(&part, &flawed(shape, 0.0), &lay([at(0, 25.0, 0.0)])),
            Ok(())
        );
        let found = complaints(&part, &flawed(shape, 0.0), &lay([at(0, 25.01, 0.0)]));
        assert!(
            matches!(found[..], [Complaint::OnFlaw { flaw: 0, .. }]),
            "{found:?}"
        );
        assert_eq!(
            check(&part, &flawed(shape, 5.0), &lay([at(0, 20.0, 0.0)])),
            Ok(())
        );
        let found = complaints(&part, &flawed(shape, 5.0), &lay([at(0, 20.01, 0.0)]));
        let [Complaint::NearFlaw { distance, .. }] = found[..] else {
            panic!("{found:?}")
        };
        assert!((distance - 4.99).abs() < 1e-9);
    }
}

#[test]
fn spacing_is_kept_between_pieces_and_not_from_the_edge() {
    let (parts, panels) = two(rectangle(90.0, 100.0), rectangle(90.0, 100.0));
    let spaced = |x: f64| Lay {
        spacing: 5.0,
        ..lay([at(0, 0.0, 0.0), at(1, x, 0.0)])
    };
    assert_eq!(check(&parts, &panels, &spaced(95.0)), Ok(()));
    let found = complaints(&parts, &panels, &spaced(94.9));
    assert!(
        matches!(found[..], [Complaint::TooClose { .. }]),
        "{found:?}"
    );
}

#[test]
fn grain_nap_and_turn() {
    let mut panel = cloth("cloth", rectangle(200.0, 100.0));
    let part = Part {
        tilt_deg: 2.0,
        ..Part::new("a", rectangle(40.0, 20.0))
    };
    let verdict = |part: &Part, panel: &Panel, turn_deg: f64| {
        let placement = Placement {
            turn_deg,
            ..at(0, 100.0, 50.0)
        };
        check(
            std::slice::from_ref(part),
            std::slice::from_ref(panel),
            &lay([placement]),
        )
    };
    assert_eq!(verdict(&part, &panel, 182.0), Ok(()));
    assert_eq!(verdict(&part, &panel, -358.5), Ok(()));
    for turn in [3.0, 90.0, 177.0] {
        let found = verdict(&part, &panel, turn).unwrap_err();
        assert!(
            matches!(found[..], [Complaint::OffGrain { .. }]),
            "{found:?}"
        );
    }
    panel = panel.with_nap(true);
    assert_eq!(verdict(&part, &panel, 1.0), Ok(()));
    let found = verdict(&part, &panel, 181.0).unwrap_err();
    assert!(
        matches!(found[..], [Complaint::AgainstNap { .. }]),
        "{found:?}"
    );
    assert_eq!(
        verdict(
            &Part {
                either_way: true,
                ..part.clone()
            },
            &panel,
            181.0
        ),
        Ok(())
    );
    // Across the grain where it may, within the same tolerance; against a nap only where it may lie either way.
    let across = Part {
        crosswise: true,
        ..part.clone()
    };
    assert!(verdict(&across, &panel, 90.0).is_err());
    let across = Part {
        either_way: true,
        ..across
    };
    for turn in [90.0, -91.0, 269.0, 181.0] {
        assert_eq!(verdict(&across, &panel, turn), Ok(()));
    }
    assert!(verdict(&across, &panel, 93.0).is_err());
    // The cloth's grain lies along x: the piece must be turned a quarter.
    panel = panel.with_grain_deg(0.0).expect("a good angle");
    assert_eq!(verdict(&part, &panel, -90.0), Ok(()));
    assert!(verdict(&part, &panel, 90.0).is_err());
}

#[test]
fn a_mirrored_piece_has_a_mirrored_grain() {
    // The grain of the part runs at 60 degrees; mirrored it runs at 120.
    let part = Part {
        grain_deg: 60.0,
        as_drawn: 0,
        mirrored: 1,
        ..Part::new("a", rectangle(40.0, 20.0))
    };
    let panels = [cloth("cloth", rectangle(200.0, 100.0))
        .with_grain_deg(120.0)
        .expect("a good angle")];
    let placement = Placement {
        hand: Hand::Mirrored,
        mirrored: true,
        ..at(0, 100.0, 50.0)
    };
    assert_eq!(check(&[part], &panels, &lay([placement])), Ok(()));
}

#[test]
fn sides_and_hands() {
    let verdict = |shows: Shows, faces: Faces, hand: Hand, mirrored: bool| {
        let part = Part {
            shows,
            as_drawn: u32::from(hand == Hand::AsDrawn),
            mirrored: u32::from(hand == Hand::Mirrored),
            ..Part::new("a", rectangle(40.0, 20.0))
        };
        let panels = [cloth("cloth", rectangle(200.0, 100.0)).with_faces(faces)];
        check(
            &[part],
            &panels,
            &lay([Placement {
                hand,
                mirrored,
                ..at(0, 100.0, 50.0)
            }]),
        )
    };
    for hand in Hand::BOTH {
        for mirrored in [false, true] {
            let face_down = mirrored != (hand == Hand::Mirrored);
            assert_eq!(
                verdict(Shows::Right, Faces::One, hand, mirrored).is_ok(),
                !face_down
            );
            assert_eq!(
                verdict(Shows::Wrong, Faces::One, hand, mirrored).is_ok(),
                face_down
            );
            assert_eq!(verdict(Shows::Either, Faces::One, hand, mirrored), Ok(()));
            for shows in [Shows::Right, Shows::Wrong, Shows::Either, Shows::Both] {
                assert_eq!(verdict(shows, Faces::Two, hand, mirrored), Ok(()));
            }
            let found = verdict(Shows::Both, Faces::One, hand, mirrored).unwrap_err();
            assert!(
                matches!(found[..], [Complaint::OneFace { .. }]),
                "{found:?}"
            );
        }
    }
    let found = verdict(Shows::Right, Faces::One, Hand::AsDrawn, true).unwrap_err();
    assert!(
        matches!(found[..], [Complaint::WrongSide { .. }]),
        "{found:?}"
    );
}

#[test]
fn counts_of_every_hand() {
    let part = [Part {
        as_drawn: 1,
        mirrored: 1,
        ..Part::new("a", rectangle(40.0, 20.0))
    }];
    let panels = [cloth("cloth", rectangle(200.0, 100.0))];
    // Two of the same hand where a pair is wanted.
    let found = complaints(&part, &panels, &lay([at(0, 0.0, 0.0), at(0, 50.0, 0.0)]));
    assert!(
        matches!(
            found[..],
            [
                Complaint::Count {
                    hand: Hand::AsDrawn,
                    placed: 2,
                    wanted: 1,
                    ..
                },
                Complaint::Count {
                    hand: Hand::Mirrored,
                    placed: 0,
                    wanted: 1,
                    ..
                }
            ]
        ),
        "{found:?}"
    );
    let rest = |part, count| Unplaced {
        part,
        hand: Hand::Mirrored,
        count,
    };
    let with = |unplaced| Lay {
        unplaced,
        ..lay([at(0, 0.0, 0.0)])
    };
    assert_eq!(check(&part, &panels, &with(vec![rest(0, 1)])), Ok(()));
    assert!(check(&part, &panels, &with(vec![rest(0, 2)])).is_err());
    assert!(check(&part, &panels, &with(vec![rest(0, 1), rest(7, 1)])).is_err());
    assert!(check(&part, &panels, &with(vec![rest(0, u32::MAX), rest(0, 2)])).is_err());
}

#[test]
fn strangers_and_numbers_that_are_none() {
    let (parts, panels) = two(rectangle(10.0, 10.0), rectangle(10.0, 10.0));
    let first = |placement: Placement| complaints(&parts, &panels, &lay([placement])).remove(0);
    assert!(matches!(
        first(at(9, 0.0, 0.0)),
        Complaint::NoSuchPart {
            placement: 0,
            part: 9
        }
    ));
    assert!(matches!(
        first(Placement {
            panel: 3,
            ..at(0, 0.0, 0.0)
        }),
        Complaint::NoSuchPanel { panel: 3, .. }
    ));
    for bad in [f64::NAN, f64::INFINITY, 1e300] {
        assert!(matches!(first(at(0, bad, 0.0)), Complaint::Position { .. }));
        assert!(matches!(first(at(0, 0.0, bad)), Complaint::Position { .. }));
        assert!(matches!(
            first(Placement {
                turn_deg: bad,
                ..at(0, 0.0, 0.0)
            }),
            Complaint::Position { .. }
        ));
        let spaced = Lay {
            spacing: bad,
            ..Lay::default()
        };
        assert!(matches!(
            check(&parts, &panels, &spaced).unwrap_err()[..],
            [Complaint::Input(_)]
        ));
    }
}

#[test]
fn outlines_that_are_none_are_refused() {
    let says = |points: &[(f64, f64)]| {
        let part = Part::new("a", points.iter().copied());
        complaints(&[part], &[], &Lay::default())[0].to_string()
    };
    let bow = says(&[(0.0, 0.0), (10.0, 10.0), (10.0, 0.0), (0.0, 10.0)]);
    assert_eq!(
        bow,
        "part \"a\": outline: the outline crosses itself or has no area (at 0)"
    );
    for points in [
        // No area; folded back; touching itself at a point, along an edge; a point only.
        &[(0.0, 0.0), (5.0, 0.0), (10.0, 0.0)][..],
        &[(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (10.0, -5.0)],
        &[
            (0.0, 0.0),
            (10.0, 0.0),
            (5.0, 5.0),
            (10.0, 10.0),
            (0.0, 10.0),
            (5.0, 5.0),
        ],
        &[(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (5.0, 0.0)],
        &[(1.0, 1.0), (1.0, 1.0), (1.0, 1.0)],
        // Too small to be anything but a spot.
        &[(0.0, 0.0), (1e-3, 0.0), (0.0, 1e-3)],
        &[(0.0, 0.0), (1e-300, 0.0), (0.0, 1e-300)],
    ] {
        assert!(
            says(points).contains("crosses itself or has no area"),
            "{points:?}"
        );
    }
    assert_eq!(
        says(&[(0.0, 0.0), (1.0, 0.0)]),
        "part \"a\": outline has 2 items, not between 3 and 5000"
    );
    assert!(says(&[(0.0, 0.0), (1e6, 0.0), (0.0, 1.0)]).contains("outline[1] = 1000000 is not"));
    // A repeated first point and repeated points are harmless.
    let closed = [
        (0.0, 0.0),
        (10.0, 0.0),
        (10.0, 0.0),
        (0.0, 10.0),
        (0.0, 0.0),
    ];
    let panel = cloth("cloth", closed);
    assert_eq!(
        check(&[Part::new("a", closed)], &[panel], &lay([at(0, 0.0, 0.0)])),
        Ok(())
    );
}
