//! Pieces as a whole.

extern crate std;
use alloc::vec;
use alloc::vec::Vec;
use kurbo::{Line, Point};
use std::string::ToString;

use super::*;
use crate::{Error, ErrorKind};

/// A front of an invented waistcoat: an arc, a cubic, lines, a fold, notches.
fn front() -> Piece {
    Piece::new(
        "front",
        vec![
            Edge::hem("hem", Curve::line((0.0, 0.0), (200.0, 0.0)), 30.0)
                .corner(Corner::MirroredOnThis),
            Edge::seam("side", Curve::line((200.0, 0.0), (210.0, 300.0)), 10.0)
                .notch("waist", 90.0, 2),
            Edge::seam(
                "armhole",
                Curve::cubic(
                    (210.0, 300.0),
                    (140.0, 310.0),
                    (160.0, 420.0),
                    (150.0, 500.0),
                ),
                10.0,
            ),
            Edge::seam("shoulder", Curve::line((150.0, 500.0), (70.0, 520.0)), 15.0),
            Edge::opening("neck", Curve::arc((70.0, 520.0), (0.0, 440.0), -0.3), 6.0),
            Edge::fold("centre", Curve::line((0.0, 440.0), (0.0, 0.0))),
        ],
    )
    .unwrap()
    .with_grain(Line::new((50.0, 50.0), (50.0, 350.0)))
    .unwrap()
}

fn square(edge: impl Fn(Edge) -> Edge) -> Result<Piece, Error> {
    let corners = [(0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0)];
    let sides = (0..4).map(|i| {
        let curve = Curve::line(corners[i], corners[(i + 1) % 4]);
        edge(Edge::seam(i.to_string(), curve, 10.0))
    });
    Piece::new("square", sides.collect())
}

#[test]
fn a_clockwise_ring_is_turned_round_with_its_corners_and_notches() {
    let corners: [Point; 4] = [(0.0, 0.0), (0.0, 50.0), (80.0, 50.0), (80.0, 0.0)].map(Point::from);
    let edges = (0..4)
        .map(|i| {
            Edge::seam(
                i.to_string(),
                Curve::line(corners[i], corners[(i + 1) % 4]),
                10.0,
            )
            .corner(if i == 0 {
                Corner::SquaredToThis
            } else {
                Corner::default()
            })
            .notch("quarter", 10.0, 1)
        })
        .collect();
    let piece = Piece::new("panel", edges).unwrap();
    assert_eq!(piece.area(), 4000.0);
    let names: Vec<&str> = piece.edges().iter().map(|e| e.name.as_str()).collect();
    assert_eq!(names, ["3", "2", "1", "0"]);
    // The corner at the end of "0", at (0, 50), is now at the end of "1", whose next edge is "0".
    let one = &piece.edges()[piece.edge("1").unwrap()];
    assert_eq!(one.curve.end(), Point::new(0.0, 50.0));
    assert_eq!(one.corner, Corner::SquaredToNext);
    assert_eq!(one.notches[0].distance, 70.0);
    let (point, out) = piece.at(piece.edge("0").unwrap(), 40.0).unwrap();
    assert_eq!((point, out.x), (Point::new(0.0, 10.0), -1.0));
}

#[test]
fn a_mirror_image_has_the_same_measures_and_mirrors_back() {
    let piece = front();
    let mirrored = piece.mirror();
    assert!((mirrored.area() - piece.area()).abs() < 1e-6);
    assert_eq!(mirrored.bounds().x0, -piece.bounds().x1);
    assert_eq!(mirrored.edges()[0].name, "centre");
    assert_eq!(mirrored.mirror(), piece);
    assert_eq!(piece.fold(), Some(5));
    assert_eq!(piece.turned(90.0).grain_deg(), 180.0);
    assert!((piece.turned(37.0).area() - piece.area()).abs() < 1e-6);
}

#[test]
fn bad_pieces_are_refused_and_the_edge_is_named() {
    let kind = |result: Result<Piece, Error>| {
        let error = result.unwrap_err();
        (error.kind(), error.argument(), error.at())
    };
    let nan = |e: Edge| Edge {
        allowance: f64::NAN,
        ..e
    };
    assert_eq!(
        kind(square(nan)),
        (ErrorKind::NotFinite, "allowance", Some(0))
    );
    let wide = |e: Edge| Edge {
        allowance: 2000.0,
        ..e
    };
    assert_eq!(
        kind(square(wide)),
        (ErrorKind::OutOfRange, "allowance", Some(0))
    );
    let far = |e: Edge| e.notch("far", 100.1, 1);
    assert_eq!(
        kind(square(far)),
        (ErrorKind::OutOfRange, "distance", Some(0))
    );
    let many = |e: Edge| e.notch("many", 50.0, 4);
    assert_eq!(
        kind(square(many)),
        (ErrorKind::OutOfRange, "marks", Some(0))
    );
    let blunt = |e: Edge| e.corner(Corner::Pointed { limit: 0.5 });
    assert_eq!(
        kind(square(blunt)),
        (ErrorKind::OutOfRange, "limit", Some(0))
    );
    assert_eq!(
        kind(Piece::new("none", vec![])),
        (ErrorKind::Count, "edges", None)
    );
    let bow: Vec<Edge> = [(0.0, 0.0), (9.0, 9.0), (9.0, 0.0), (0.0, 9.0), (0.0, 0.0)]
        .windows(2)
        .map(|p| Edge::seam("bow", Curve::line(p[0], p[1]), 1.0))
        .collect();
    let error = Piece::new("bow", bow.clone()).unwrap_err();
    assert_eq!(
        sentence("tie", &bow, &error),
        "piece \"tie\", edge \"bow\": edges: the outline crosses itself or has no area (at 2)"
    );
    let flat = |y: f64| {
        Piece::new(
            "flat",
            vec![
                Edge::seam("there", Curve::line((0.0, 0.0), (9.0, 0.0)), 1.0),
                Edge::seam("back", Curve::arc((9.0, 0.0), (0.0, 0.0), y), 1.0),
            ],
        )
    };
    assert_eq!(kind(flat(0.0)).0, ErrorKind::Outline);
    assert!(flat(0.1).is_ok());
    assert_eq!(
        kind(flat(f64::INFINITY)),
        (ErrorKind::NotFinite, "bulge", Some(1))
    );
}

#[test]
fn marks_and_instructions_are_checked() {
    let piece = square(|e| e).unwrap();
    let dart = |y: f64| {
        vec![Mark::Dart(Dart {
            name: "dart".into(),
            point: (50.0, 40.0).into(),
            legs: [(40.0, y).into(), (60.0, y).into()],
        })]
    };
    assert!(piece.clone().with_marks(dart(100.0)).is_ok());
    let error = piece.clone().with_marks(dart(99.0)).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("leg", Some(0)));
    let pair = |count| Cutting {
        count,
        hand: Hand::Mirrored,
        ..Cutting::default()
    };
    assert!(piece.clone().with_cutting(pair(2)).is_ok());
    let odd = piece.clone().with_cutting(pair(3)).unwrap_err();
    assert_eq!((odd.min(), odd.max()), (2.0, 4.0));
    assert!(piece.with_grain(Line::new((0.0, 0.0), (0.0, 0.0))).is_err());
}
