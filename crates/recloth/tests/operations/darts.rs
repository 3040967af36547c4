//! Darts turned, closed, opened and capped.

use super::*;

// By hand. The dart's half angle is atan(10 / 100). Turned to the middle of the side, whose leg is 100 too, it opens by
// 200 sin(atan 0.1) = 19.9007. Of half of it, what opens is 200 sin(atan(0.1) / 2) = 9.9627 at each.
#[test]
fn a_turned_dart_keeps_its_angle() {
    let square = square();
    let (at, off) = square.place((200.0, 100.0));
    assert_eq!(
        (at, off),
        (
            Place {
                edge: 1,
                distance: 100.0
            },
            0.0
        )
    );
    let opening = |share: f64| {
        [Opening {
            name: "side".into(),
            at,
            share,
        }]
    };
    let turned = square.turn_dart("waist", &opening(1.0)).unwrap();
    let half = libm::atan(0.1);
    close(
        dart_of(&turned, "side").intake(),
        200.0 * libm::sin(half),
        1e-9,
    );
    close(19.9007, 200.0 * libm::sin(half), 1e-4);
    for (name, wanted) in [
        ("hem", 200.0),
        ("side", 200.0),
        ("top side", 90.0),
        ("top centre", 90.0),
        ("centre", 200.0),
    ] {
        close(length_of(&turned, name), wanted, 1e-9);
    }
    assert_eq!(turned.edge("mouth"), None);
    // The hole in the turned part went with it: 80 right of and 90 above the point, by 2 atan 0.1 towards the closed dart.
    let Some(Mark::Drill { at: drill, .. }) = turned.marks().iter().find(|m| m.name() == "pocket")
    else {
        panic!("no drill");
    };
    let (sin, cos) = libm::sincos(2.0 * half);
    close(drill.x, 100.0 + 80.0 * cos - 90.0 * sin, 1e-9);
    close(drill.y, 100.0 + 80.0 * sin + 90.0 * cos, 1e-9);
    let halved = square.turn_dart("waist", &opening(0.5)).unwrap();
    close(
        dart_of(&halved, "side").intake(),
        200.0 * libm::sin(half / 2.0),
        1e-9,
    );
    close(9.9627, 200.0 * libm::sin(half / 2.0), 1e-4);
    let leg = libm::hypot(10.0, 100.0);
    close(
        dart_of(&halved, "waist").intake(),
        2.0 * leg * libm::sin(half / 2.0),
        1e-9,
    );
}

#[test]
fn a_dart_turned_there_and_back_is_where_it_was() {
    let panel = panel();
    let (at, _) = panel.place((270.0, -400.0));
    let to = |name: &str, at: Place| {
        [Opening {
            name: name.into(),
            at,
            share: 1.0,
        }]
    };
    let turned = panel.turn_dart("dart 1", &to("hem dart", at)).unwrap();
    for name in [
        "centre",
        "hem",
        "side lower",
        "side upper",
        "waist 1",
        "waist 2",
        "waist 3",
    ] {
        close(
            length_of(&turned, name),
            panel
                .edges()
                .iter()
                .filter(|e| e.name == name)
                .map(Edge::length)
                .sum(),
            1e-9,
        );
    }
    // The cloth outside the wedges is the same.
    let wedge = |piece: &Piece, name: &str| {
        let dart = dart_of(piece, name);
        triangle(dart.point, dart.legs[0], dart.legs[1])
    };
    let before = dart_of(&panel, "dart 1");
    let cap: f64 = panel
        .edges()
        .iter()
        .filter(|e| e.name.starts_with("cap 1"))
        .map(|e| {
            // The mouth's share of the area about the dart's point.
            let (a, b) = (e.curve.start() - before.point, e.curve.end() - before.point);
            let Curve::Segment(s) = e.curve else { panic!() };
            let radius = s.radius();
            let sweep = s.sweep_deg().to_radians();
            a.cross(b) / 2.0 + radius * radius * (sweep - libm::sin(sweep)) / 2.0
        })
        .sum();
    close(
        panel.area() - cap,
        turned.area() - wedge(&turned, "hem dart"),
        1e-6,
    );
    let waist = turned
        .edges()
        .iter()
        .position(|e| e.name == "waist 1")
        .unwrap();
    let back = turned
        .turn_dart(
            "hem dart",
            &to(
                "dart 1",
                Place {
                    edge: waist,
                    distance: 0.0,
                },
            ),
        )
        .unwrap();
    let (there, here) = (dart_of(&back, "dart 1"), dart_of(&panel, "dart 1"));
    close(there.intake(), here.intake(), 1e-9);
    close(there.leg_lengths()[0], here.leg_lengths()[0], 1e-9);
    close(
        length_of(&back, "side lower"),
        length_of(&panel, "side lower"),
        1e-9,
    );
    let other = dart_of(&back, "dart 2");
    close(other.intake(), dart_of(&panel, "dart 2").intake(), 1e-9);
}

// By hand. Closed, the dart of the square opens the hem by 2 · 100 sin(atan 0.1).
#[test]
fn a_closed_dart_flares_the_hem() {
    let square = square();
    let at = Place {
        edge: 0,
        distance: 100.0,
    };
    let flared = square.close_dart("waist", at).unwrap();
    close(
        length_of(&flared, "hem"),
        200.0 + 200.0 * libm::sin(libm::atan(0.1)),
        1e-9,
    );
    assert!(
        flared
            .marks()
            .iter()
            .all(|mark| !matches!(mark, Mark::Dart(_)))
    );
    assert_eq!(flared.edges().len(), 7);
}

// By hand. A dart 20 wide over a leg of 100 has half the angle asin 0.1. At the hem, 100 from the point on the other side,
// each half is trimmed by 100 tan(asin 0.1) = 10.0504.
#[test]
fn an_opened_dart_takes_from_the_other_side() {
    let corners = [(0.0, 0.0), (200.0, 0.0), (200.0, 200.0), (0.0, 200.0)];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
    let names = ["hem", "side", "top", "centre"];
    let plain = Piece::new(
        "plain",
        (0..4)
            .map(|i| Edge::seam(names[i], side(i), 10.0))
            .collect(),
    )
    .unwrap();
    let (at, opposite) = (plain.place((100.0, 200.0)).0, plain.place((100.0, 0.0)).0);
    let opened = plain
        .open_dart("new", (100.0, 100.0), at, 20.0, opposite)
        .unwrap();
    close(dart_of(&opened, "new").intake(), 20.0, 1e-9);
    let lost = 100.0 * libm::tan(libm::asin(0.1));
    close(length_of(&opened, "hem"), 200.0 - 2.0 * lost, 1e-6);
    close(lost, 10.0504, 1e-4);
    close(length_of(&opened, "top"), 200.0, 1e-9);
    let outside = plain
        .open_dart("new", (300.0, 100.0), at, 20.0, opposite)
        .unwrap_err();
    assert_eq!(
        (outside.kind(), outside.argument()),
        (ErrorKind::OutOfRange, "point")
    );
    let wide = plain
        .open_dart("new", (100.0, 100.0), at, 250.0, opposite)
        .unwrap_err();
    assert_eq!((wide.argument(), wide.value()), ("intake", 250.0));
    // Both halves of the hem lie 100 from the point, so they cross 10.0504 from where that is square to them, wherever the cut
    // runs: left of 89.9496 it runs past the crossing. What the error says would do, does.
    let far = plain.place((50.0, 0.0)).0;
    let refused = plain
        .open_dart("new", (100.0, 100.0), at, 20.0, far)
        .unwrap_err();
    assert_eq!(
        (refused.kind(), refused.argument(), refused.at()),
        (ErrorKind::NoSolution, "opposite", Some(0))
    );
    assert!(refused.value() == 50.0 && refused.max().is_nan());
    assert!((89.9496..89.97).contains(&refused.min()), "{refused}");
    let near = Place {
        distance: refused.min(),
        ..far
    };
    assert!(
        plain
            .open_dart("new", (100.0, 100.0), at, 20.0, near)
            .is_ok()
    );
    // Across from itself it cannot open; no place on the top can be that.
    let itself = plain
        .open_dart("new", (100.0, 100.0), at, 20.0, at)
        .unwrap_err();
    assert_eq!(itself.argument(), "opposite");
}

/// Whether every point of the dart's cap, folded onto the edge, lies on the edge.
fn folds_onto(piece: &Piece, dart: &str, onto: &str) {
    let edge = piece
        .edges()
        .iter()
        .find(|e| e.name == onto)
        .expect("an edge");
    let dart = dart_of(piece, dart);
    let caps: Vec<&Edge> = piece
        .edges()
        .iter()
        .filter(|e| e.name.starts_with(&format!("cap {}", dart.name)))
        .collect();
    assert_eq!(caps.len(), 2);
    let touches =
        |e: &Edge, p: Point| size(e.curve.start() - p) < 1e-6 || size(e.curve.end() - p) < 1e-6;
    // The leg that meets the edge, and the other.
    let (leg, other) = if touches(edge, dart.legs[0]) {
        (dart.legs[0], dart.legs[1])
    } else {
        (dart.legs[1], dart.legs[0])
    };
    let angle = |v: Vec2| libm::atan2(v.y, v.x);
    let turn = angle(leg - dart.point) - angle(other - dart.point);
    for cap in caps {
        for step in 0..=20 {
            let point = cap.curve.at(cap.length() * f64::from(step) / 20.0).0;
            let folded = if touches(cap, leg) {
                // Next to the leg it is mirrored about it.
                let u = (leg - dart.point) / size(leg - dart.point);
                let v = point - dart.point;
                dart.point + u * (2.0 * u.dot(v)) - v
            } else {
                let (sin, cos) = libm::sincos(turn);
                let v = point - dart.point;
                dart.point + Vec2::new(cos * v.x - sin * v.y, sin * v.x + cos * v.y)
            };
            let (off, _) = edge.curve.nearest(folded);
            assert!(off < 1e-6, "{off} off the edge");
        }
    }
}

#[test]
fn a_capped_dart_folds_into_its_edge() {
    let square = square();
    for (onto, name) in [(2, "top side"), (4, "top centre")] {
        let capped = square.cap_dart("waist", onto).unwrap();
        folds_onto(&capped, "waist", name);
        assert!(capped.area() > square.area());
    }
    let error = square.cap_dart("waist", 0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NoSolution, "onto")
    );
    // A curved edge, and a dart turned into it.
    let panel = panel();
    let turned = panel
        .turn_dart(
            "dart 1",
            &[Opening {
                name: "side dart".into(),
                at: panel.place((252.0, -150.0)).0,
                share: 1.0,
            }],
        )
        .unwrap();
    let parts: Vec<usize> = (0..turned.edges().len())
        .filter(|&i| turned.edges()[i].name.starts_with("side upper "))
        .collect();
    assert_eq!(parts.len(), 2);
    for onto in parts {
        let name = turned.edges()[onto].name.clone();
        let capped = turned.cap_dart("side dart", onto).unwrap();
        folds_onto(&capped, "side dart", &name);
    }
}
