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

#[test]
fn a_piece_on_a_fold_is_unfolded_to_twice_its_area() {
    let half = front();
    let whole = half.unfold().unwrap();
    assert!((whole.area() - 2.0 * half.area()).abs() < 1e-6);
    assert_eq!(whole.edges().len(), 10);
    assert_eq!(whole.fold(), None);
    assert_eq!(whole.bounds().x0, -210.0);
    // The whole is its own mirror image; the half alone, with a seam in place of the fold, is not.
    assert!(!whole.handed(0.01).unwrap());
    let seamed = half.edges().iter().cloned().map(|e| match e.role {
        Role::Fold => Edge {
            role: Role::Seam,
            ..e
        },
        _ => e,
    });
    assert!(
        Piece::new("half", seamed.collect())
            .unwrap()
            .handed(0.01)
            .unwrap()
    );
    // Both cut lines are the same, but for where cubics are fitted.
    let (one, two) = (half.cut_line(0.01).unwrap(), whole.cut_line(0.01).unwrap());
    assert!((2.0 * one.area() - two.area()).abs() < 0.01 * two.length());
}

#[test]
fn what_is_on_a_piece_makes_it_handed() {
    let plain = square(|e| e).unwrap();
    assert!(!plain.handed(0.1).unwrap());
    assert!(plain.handed(f64::NAN).is_err());
    let drill = |x: f64, y: f64| Mark::Drill {
        name: "pocket".into(),
        at: (x, y).into(),
    };
    let marked = |marks| {
        plain
            .clone()
            .with_marks(marks)
            .unwrap()
            .handed(0.1)
            .unwrap()
    };
    assert!(!marked(vec![drill(30.0, 50.0)]));
    assert!(!marked(vec![drill(30.0, 30.0)]));
    assert!(marked(vec![drill(30.0, 20.0)]));
    // Two marks that are each other's mirror image.
    assert!(!marked(vec![drill(30.0, 20.0), drill(70.0, 20.0)]));
    // The diagonal is a mirror line of the square, but not of one with upright grain and a mark off the middle.
    let upright = Line::new((50.0, 10.0), (50.0, 90.0));
    let grained = plain.clone().with_grain(upright).unwrap();
    assert!(!grained.handed(0.1).unwrap());
    let corner = grained.with_marks(vec![drill(30.0, 30.0)]).unwrap();
    assert!(corner.handed(0.1).unwrap());
    // One edge with another allowance: still its own mirror image; two neighbours with different ones: not.
    let wide = |names: &'static [&'static str]| {
        square(move |e| match names.iter().position(|n| *n == e.name) {
            Some(i) => Edge {
                allowance: 20.0 + i as f64,
                ..e
            },
            None => e,
        })
        .unwrap()
        .handed(0.1)
        .unwrap()
    };
    assert!(!wide(&["1"]));
    assert!(wide(&["1", "2"]));
}

#[test]
fn walking_pairs_notches_and_counts_the_difference() {
    let notched = |length: f64, at: &[(&str, f64)]| {
        let corners = [(0.0, 0.0), (length, 0.0), (length, 9.0), (0.0, 9.0)];
        let edges = (0..4).map(|i| {
            let edge = Edge::seam(
                i.to_string(),
                Curve::line(corners[i], corners[(i + 1) % 4]),
                1.0,
            );
            if i > 0 {
                return edge;
            }
            at.iter()
                .fold(edge, |edge, (name, far)| edge.notch(*name, *far, 1))
        });
        Piece::new("strip", edges.collect()).unwrap()
    };
    let sleeve = notched(452.0, &[("front", 100.0), ("top", 230.0), ("back", 340.0)]);
    let armhole = notched(440.0, &[("back", 110.0), ("front", 342.0), ("lost", 9.0)]);
    let walk = sleeve.walk(&[0], &armhole, &[0], Way::Against).unwrap();
    assert_eq!(
        (walk.length, walk.other_length, walk.difference),
        (452.0, 440.0, 12.0)
    );
    let found: Vec<_> = walk
        .notches
        .iter()
        .map(|n| (n.name.as_str(), n.difference()))
        .collect();
    assert_eq!(
        found,
        [
            ("front", Some(2.0)),
            ("top", None),
            ("back", Some(10.0)),
            ("lost", None)
        ]
    );
    let along = sleeve.walk(&[0, 1], &armhole, &[0], Way::Along).unwrap();
    assert_eq!(along.difference, 21.0);
    assert_eq!(along.notches[0].difference(), Some(-242.0));
    let error = sleeve.walk(&[0], &armhole, &[4], Way::Along).unwrap_err();
    assert_eq!((error.argument(), error.max()), ("edge", 3.0));
    assert!(sleeve.walk(&[], &armhole, &[0], Way::Along).is_err());
}

#[test]
fn far_apart_edges_that_collide_close_the_gap_or_are_refused() {
    // A comb: a slot 15 wide and 100 deep, allowance 10. Both long sides of the slot lose their cut line.
    let comb = |slot: f64| {
        let x = 100.0 + slot;
        let corners: [(f64, f64); 8] = [
            (0.0, 0.0),
            (300.0, 0.0),
            (300.0, 200.0),
            (x, 200.0),
            (x, 100.0),
            (100.0, 100.0),
            (100.0, 200.0),
            (0.0, 200.0),
        ];
        let edges = (0..8).map(|i| {
            Edge::seam(
                i.to_string(),
                Curve::line(corners[i], corners[(i + 1) % 8]),
                10.0,
            )
        });
        Piece::new("comb", edges.collect()).unwrap()
    };
    // Below half of 15 there is a gap to cut through.
    let error = comb(15.0).cut_line(0.1).unwrap_err();
    assert_eq!((error.kind(), error.at()), (ErrorKind::NoSolution, Some(3)));
    assert_eq!(
        comb(15.0).sentence(&error),
        "piece \"comb\", edge \"3\": allowance[3] = 10 leaves no solution: it must be between 0 and 7.4"
    );
    // With a slot of 50, what is left of it is 30 wide and 100 deep: by hand, 320 · 220 less 30 · 100.
    let cut = comb(50.0).cut_line(0.1).unwrap();
    assert!((cut.area() - (320.0 * 220.0 - 30.0 * 100.0)).abs() < 1e-9);
}

#[test]
fn an_edge_lost_under_another_allowance_names_the_other() {
    // A slot 15 wide: its left side has no allowance, its right side 20, which covers the left side altogether. The hem
    // below is wider still, but has nothing to do with it. By hand: less than 15 leaves the left side bare.
    let corners: [(f64, f64); 8] = [
        (0.0, 0.0),
        (300.0, 0.0),
        (300.0, 200.0),
        (115.0, 200.0),
        (115.0, 100.0),
        (100.0, 100.0),
        (100.0, 200.0),
        (0.0, 200.0),
    ];
    let widths = [40.0, 5.0, 5.0, 20.0, 5.0, 0.0, 5.0, 5.0];
    let edges = (0..8).map(|i| {
        let curve = Curve::line(corners[i], corners[(i + 1) % 8]);
        Edge::seam(i.to_string(), curve, widths[i])
    });
    let piece = Piece::new("slot", edges.collect()).unwrap();
    let error = piece.cut_line(0.1).unwrap_err();
    assert_eq!(
        piece.sentence(&error),
        "piece \"slot\", edge \"3\": allowance[3] = 20 leaves no solution: it must be between 0 and 14.9"
    );
}

#[test]
fn inward_arcs_tighter_than_the_allowance_come_to_a_point() {
    // An inward corner rounded with radius 5, allowance 10: the parallels of both straight sides meet at (90, 90).
    let piece = Piece::new(
        "inner",
        vec![
            Edge::seam("bottom", Curve::line((0.0, 0.0), (200.0, 0.0)), 10.0),
            Edge::seam("right", Curve::line((200.0, 0.0), (200.0, 80.0)), 10.0),
            Edge::seam("step", Curve::line((200.0, 80.0), (85.0, 80.0)), 10.0),
            Edge::seam(
                "round",
                Curve::Segment(Segment::about((85.0, 85.0), 5.0, 270.0, -90.0)),
                10.0,
            ),
            Edge::seam("wall", Curve::line((80.0, 85.0), (80.0, 200.0)), 10.0),
            Edge::seam("top", Curve::line((80.0, 200.0), (0.0, 200.0)), 10.0),
            Edge::seam("left", Curve::line((0.0, 200.0), (0.0, 0.0)), 10.0),
        ],
    )
    .unwrap();
    let cut = piece.cut_line(0.1).unwrap();
    assert!(cut.distance((90.0, 90.0)) < 1e-9);
    // By hand: the L of 220 · 220 less 120 · 120, from corner (90, 90) to (210, 210).
    assert!((cut.area() - (220.0 * 220.0 - 120.0 * 120.0)).abs() < 1e-9);
    assert!(cut.segments().iter().all(|s| s.segment.is_line()));
}

#[test]
fn cloth_already_cut_has_its_seam_line_inside() {
    // F13 by hand: a strip drawn 50 as cut, allowance 10: 30 is left between seams; 300 less 20 along it.
    let corners = [(0.0, 0.0), (300.0, 0.0), (300.0, 50.0), (0.0, 50.0)];
    let strip = |allowance: f64| {
        let edges = (0..4).map(|i| {
            Edge::seam(
                "edge",
                Curve::line(corners[i], corners[(i + 1) % 4]),
                allowance,
            )
            .already_cut()
        });
        Piece::new("strip", edges.collect()).unwrap()
    };
    let seam = strip(10.0).seam_line(0.1).unwrap();
    assert!((seam.area() - 280.0 * 30.0).abs() < 1e-9);
    assert_eq!(strip(10.0).cut_line(0.1).unwrap().area(), 15_000.0);
    let error = strip(26.0).seam_line(0.1).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument(), error.at()),
        (ErrorKind::NoSolution, "allowance", Some(0))
    );
    assert_eq!(error.max(), 24.9);
    // One edge already cut, the others not: the cut line runs on along it.
    let mixed = Piece::new(
        "mixed",
        strip(10.0)
            .edges()
            .iter()
            .cloned()
            .enumerate()
            .map(|(i, e)| {
                if i == 0 {
                    e
                } else {
                    Edge {
                        drawn: Drawn::Seam,
                        ..e
                    }
                }
            })
            .collect(),
    )
    .unwrap();
    assert_eq!(mixed.cut_line(0.1).unwrap().area(), 320.0 * 60.0);
    assert_eq!(mixed.seam_line(0.1).unwrap().area(), 300.0 * 40.0);
    assert!(mixed.cut_line(f64::NAN).is_err() && mixed.cut_line(1e-9).is_err());
}

#[test]
fn a_turned_hem_folds_back_onto_the_piece_with_its_allowances() {
    // Sides that lean out and in by different amounts, straight hem, hem allowance 30.
    for (left, right) in [
        (0.0, 0.0),
        (-40.0, 60.0),
        (50.0, 20.0),
        (-120.0, -120.0),
        (90.0, -90.0),
    ] {
        let corners = [
            (0.0, 0.0),
            (200.0, 0.0),
            (200.0 + right, 200.0),
            (left, 200.0),
        ];
        let side = |name: &str, i: usize| {
            Edge::seam(
                name,
                Curve::line(corners[i], corners[(i + 1) % 4]),
                [0.0, 10.0, 10.0, 15.0][i],
            )
        };
        let hem = Edge::hem("hem", Curve::line(corners[0], corners[1]), 30.0);
        let edges = vec![
            hem.corner(Corner::MirroredOnThis),
            side("right", 1),
            side("top", 2),
            side("left", 3).corner(Corner::MirroredOnNext),
        ];
        let piece = Piece::new("panel", edges).unwrap();
        let cut = piece.cut_line(0.1).unwrap();
        let below: Vec<Point> = cut.flatten(0.1).into_iter().filter(|p| p.y < 0.0).collect();
        let folded = |p: &Point| Point::new(p.x, -p.y);
        assert!(
            below
                .iter()
                .all(|p| cut.contains(folded(p)) || cut.distance(folded(p)) < 1e-9)
        );
        // Its two corners lie on the cut lines of the sides, where the allowances of hem and side are sewn together.
        for corner in [
            below.iter().min_by(|a, b| a.x.total_cmp(&b.x)),
            below.iter().max_by(|a, b| a.x.total_cmp(&b.x)),
        ] {
            assert!(
                cut.distance(folded(corner.unwrap())) < 1e-9,
                "{left} {right}"
            );
        }
        // By hand: what is below the hem line is as wide in the mean as the cut piece from 0 to 30 above it.
        let (slope_l, slope_r) = (left / 200.0, right / 200.0);
        let wide = |slope: f64, allowance: f64| allowance * libm::sqrt(1.0 + slope * slope);
        let width = 200.0 + wide(slope_l, 15.0) + wide(slope_r, 10.0);
        let hem_area = 30.0 * (width + 15.0 * (slope_r - slope_l));
        let height = 210.0;
        let above = height * (width + height / 2.0 * (slope_r - slope_l));
        assert!(
            (cut.area() - hem_area - above).abs() < 1e-6,
            "{left} {right}"
        );
    }
}

/// A square of 100 with an allowance of 10, its upper right corner treated.
fn cornered(corner: Corner) -> CutLine {
    let piece = square(|edge| match edge.name.as_str() {
        "1" => edge.corner(corner),
        _ => edge,
    });
    piece.unwrap().cut_line(0.01).unwrap()
}

#[test]
fn every_treatment_of_a_right_angle_takes_what_it_should() {
    // By hand: 120 · 120 with all corners pointed. Trimmed at d, the point is √2 · 10 from the corner, and a triangle of
    // (√2 · 10 - d)² goes. Rounded at r, (1 - π/4) r² goes.
    let root = libm::sqrt(200.0);
    let missing = |corner| 14_400.0 - cornered(corner).area();
    let pi = core::f64::consts::PI;
    for (corner, wanted) in [
        (Corner::default(), 0.0),
        (
            Corner::Trimmed { distance: 10.0 },
            (root - 10.0) * (root - 10.0),
        ),
        (
            Corner::Trimmed { distance: 3.0 },
            (root - 3.0) * (root - 3.0),
        ),
        (Corner::Trimmed { distance: 0.0 }, 200.0),
        (Corner::Rounded { radius: 10.0 }, (1.0 - pi / 4.0) * 100.0),
        (Corner::Rounded { radius: 4.0 }, (1.0 - pi / 4.0) * 16.0),
        (Corner::SquaredToThis, 0.0),
        (Corner::MirroredOnThis, 0.0),
        (Corner::MirroredOnNext, 0.0),
    ] {
        assert!(
            (missing(corner) - wanted).abs() < 1e-9,
            "{corner:?}: {}",
            missing(corner)
        );
        assert_eq!(cornered(corner).unmade(), []);
    }
    // A right angle has no step: it is pointed, and says so.
    let stepped = cornered(Corner::SteppedOnThis);
    assert_eq!(stepped.area(), 14_400.0);
    let piece = square(|edge| edge).unwrap();
    // The inner angle is at least 90° + asin 1/4.
    assert_eq!(
        piece.sentence(&stepped.unmade()[0]),
        "piece \"square\", edge \"1\": corner_deg[1] = 90 leaves no solution: it must be between 104.477512186 and 180"
    );
}

#[test]
fn an_extension_ends_early_in_a_step() {
    // A centre back seam, allowance 15, above a vent extension of 50, in one line; at the top of the extension it ends square.
    let edges = |corner: Corner| {
        vec![
            Edge::hem("hem", Curve::line((0.0, 0.0), (200.0, 0.0)), 40.0),
            Edge::seam("vent", Curve::line((200.0, 0.0), (200.0, 180.0)), 50.0).corner(corner),
            Edge::seam(
                "centre back",
                Curve::line((200.0, 180.0), (200.0, 600.0)),
                15.0,
            ),
            Edge::seam("waist", Curve::line((200.0, 600.0), (0.0, 600.0)), 10.0),
            Edge::seam("side", Curve::line((0.0, 600.0), (0.0, 0.0)), 15.0),
        ]
    };
    for corner in [Corner::default(), Corner::SteppedOnThis] {
        let cut = Piece::new("back", edges(corner))
            .unwrap()
            .cut_line(0.1)
            .unwrap();
        // By hand: 230 · 650 and the vent's 35 more, 220 high from the hem's cut line to its top.
        assert!((cut.area() - (230.0 * 650.0 + 35.0 * 220.0)).abs() < 1e-9);
        assert!(cut.distance((250.0, 180.0)) < 1e-9 && cut.distance((215.0, 180.0)) < 1e-9);
        assert_eq!(cut.unmade(), []);
    }
    // Where the seam above leans in by 30°, the step alone keeps the top of the vent square to the vent.
    let lean = |corner: Corner| {
        let mut edges = edges(corner);
        edges[2].curve = Curve::line((200.0, 180.0), (100.0, 180.0 + 100.0 * libm::sqrt(3.0)));
        edges[3].curve = Curve::line((100.0, 180.0 + 100.0 * libm::sqrt(3.0)), (0.0, 600.0));
        Piece::new("back", edges).unwrap().cut_line(0.1).unwrap()
    };
    assert!(lean(Corner::SteppedOnThis).distance((250.0, 180.0)) < 1e-9);
    // By hand: the seam's cut line meets the vent's square end 15 / cos 30° from the corner.
    let met = 200.0 + 15.0 / libm::cos(30.0_f64.to_radians());
    assert!(lean(Corner::SteppedOnThis).distance((met, 180.0)) < 1e-9);
    assert!(lean(Corner::default()).distance((met, 180.0)) < 1e-9);
}

#[test]
fn a_trimmed_corner_of_curved_edges_ends_on_their_true_parallels() {
    // A half disc of radius 100: at each end of its diameter it turns by a right angle. Trimmed at 3 mm, the cut runs along
    // x + y = c, c from the corner (100, 0) by 3 mm across: it leaves the arc's parallel, of radius 110, where that lies on
    // the line. On the inward half of the arc there is none.
    let disc = |corner| {
        let edges = vec![
            Edge::seam("diameter", Curve::line((-100.0, 0.0), (100.0, 0.0)), 10.0).corner(corner),
            Edge::seam("arc", Curve::arc((100.0, 0.0), (-100.0, 0.0), 1.0), 10.0),
        ];
        Piece::new("disc", edges).unwrap().cut_line(0.01).unwrap()
    };
    let cut = disc(Corner::Trimmed { distance: 3.0 });
    assert_eq!(cut.unmade(), []);
    // By hand: the line x - y = 100 + 3 √2 and y = -10; and the circle x² + y² = 110² with y > 0.
    let c = 100.0 + 3.0 * core::f64::consts::SQRT_2;
    assert!(cut.distance((c - 10.0, -10.0)) < 1e-9);
    let y = (-c + libm::sqrt(2.0 * 12_100.0 - c * c)) / 2.0;
    assert!(cut.distance((c + y, y)) < 1e-9);
    let trim = cut
        .segments()
        .iter()
        .find(|part| part.edge.is_none() && part.segment.start.x > 0.0);
    let trim = trim.unwrap().segment;
    assert!(libm::hypot(trim.end.x - c - y, trim.end.y - y) < 1e-9);
    // Below nothing: what the line would have to be to reach the end of the allowance of a short edge.
    let unmade = square(|edge| edge.corner(Corner::Trimmed { distance: 20.0 }));
    let unmade = unmade.unwrap().cut_line(0.01).unwrap();
    assert_eq!(unmade.unmade().len(), 4);
    assert!((unmade.unmade()[0].max() - libm::sqrt(200.0)).abs() < 1e-9);
}

#[test]
fn a_hem_too_deep_to_mirror_is_pointed_and_says_how_deep_it_may_be() {
    // The side beside the hem is 60 long, the hem 80 deep: mirrored, the side's cut line reaches 60 and its allowance.
    let panel = |hem: f64| {
        let edges = vec![
            Edge::hem("hem", Curve::line((0.0, 0.0), (200.0, 0.0)), hem)
                .corner(Corner::MirroredOnThis),
            Edge::seam("side", Curve::line((200.0, 0.0), (200.0, 60.0)), 10.0),
            Edge::seam("waist", Curve::line((200.0, 60.0), (0.0, 90.0)), 10.0),
            Edge::seam("centre", Curve::line((0.0, 90.0), (0.0, 0.0)), 10.0),
        ];
        let piece = Piece::new("panel", edges).unwrap();
        let cut = piece.cut_line(0.1).unwrap();
        let unmade: Vec<_> = cut
            .unmade()
            .iter()
            .map(|error| piece.sentence(error))
            .collect();
        unmade
    };
    assert!(panel(50.0).is_empty());
    assert_eq!(
        panel(80.0),
        [
            "piece \"panel\", edge \"hem\": allowance[0] = 80 leaves no solution: it must be at most 60"
        ]
    );
}

#[test]
fn a_cutout_is_cut_inside_by_its_allowances() {
    // A window of 60 · 40 with 10 above and below, 5 at the sides, in a square of 100; its ring runs clockwise.
    let corners = [(20.0, 30.0), (20.0, 70.0), (80.0, 70.0), (80.0, 30.0)];
    let window = |wide: f64| {
        let edges = (0..4).map(|i| {
            let curve = Curve::line(corners[i], corners[(i + 1) % 4]);
            Edge::seam(
                ["left", "top", "right", "bottom"][i],
                curve,
                [5.0, wide, 5.0, wide][i],
            )
            .notch("n", 10.0, 1)
        });
        let cutout = Cutout {
            name: "window".into(),
            edges: edges.collect(),
        };
        let piece = square(|edge| edge).unwrap();
        piece.with_marks(vec![Mark::Cutout(cutout)]).unwrap()
    };
    let cut = window(10.0).cut_line(0.1).unwrap();
    let opening = &cut.cutouts()[0];
    assert_eq!(
        (opening.area(), cut.area()),
        (50.0 * 20.0, 14_400.0 - 1000.0)
    );
    assert_eq!(opening.bounds(), kurbo::Rect::new(25.0, 40.0, 75.0, 60.0));
    assert!(!cut.contains((50.0, 50.0)) && cut.contains((50.0, 65.0)));
    assert_eq!(cut.distance((50.0, 65.0)), 5.0);
    assert_eq!(cut.length(), 480.0 + 140.0);
    let closes = |el: &kurbo::PathEl| matches!(el, kurbo::PathEl::ClosePath);
    assert_eq!(
        cut.path(0.1)
            .elements()
            .iter()
            .filter(|el| closes(el))
            .count(),
        2
    );
    // The notch of its left edge, 10 above its start, is moved into the opening by 5; 0.6 of that deep.
    let notch = &opening.notches()[0];
    assert_eq!(
        (notch.seam, notch.cut),
        (Point::new(20.0, 40.0), Point::new(25.0, 40.0))
    );
    assert_eq!(notch.depth, 3.0);
    // Its edges are also those of its segments.
    assert!(opening.segments().iter().all(|part| part.edge.is_some()));
    // Too wide above and below: 20 leaves nothing.
    let piece = window(20.0);
    let error = piece.cut_line(0.1).unwrap_err();
    assert_eq!(
        piece.sentence(&error),
        "piece \"square\": cutout[0] = 20 leaves no solution: it must be at most 19.9"
    );
    // Already cut, the drawn ring is the opening and the seam lies outside it, in the cloth.
    let mut marks = window(10.0).marks().to_vec();
    if let Mark::Cutout(cutout) = &mut marks[0] {
        for edge in &mut cutout.edges {
            edge.drawn = Drawn::Cut;
        }
    }
    let piece = square(|edge| edge).unwrap().with_marks(marks).unwrap();
    assert_eq!(piece.cut_line(0.1).unwrap().cutouts()[0].area(), 2400.0);
    assert_eq!(
        piece.seam_line(0.1).unwrap().cutouts()[0].area(),
        70.0 * 60.0
    );
}

#[test]
fn a_short_edge_between_inward_corners_may_be_covered_a_longer_one_may_not() {
    // A notched corner: two inward right angles with a step of s between them, all allowances 10. By hand: the bands of the
    // neighbours cover it from both ends while s is at most 20; then a slot of that width is closed, and its sides are lost.
    let stair = |step: f64| {
        let corners = [
            (0.0, 0.0),
            (300.0, 0.0),
            (300.0, 100.0),
            (200.0, 100.0),
            (200.0 - step, 100.0 + step),
            (200.0 - step, 200.0),
            (0.0, 200.0),
        ];
        let edges = (0..7).map(|i| {
            let curve = Curve::line(corners[i], corners[(i + 1) % 7]);
            Edge::seam(i.to_string(), curve, 10.0)
        });
        Piece::new("stair", edges.collect())
            .unwrap()
            .cut_line(0.1)
            .unwrap()
    };
    // Two corners of 135° inside: a chamfer of length s √2 keeps (s √2 - 2 · 10 tan 22.5°) of its cut line.
    let left = |step: f64| {
        let cut = stair(step);
        let lengths = cut.segments().iter().filter(|part| part.edge == Some(3));
        lengths.map(|part| part.segment.length()).sum::<f64>()
    };
    let kept = |step: f64| {
        (step * core::f64::consts::SQRT_2 - 20.0 * libm::tan(22.5_f64.to_radians())).max(0.0)
    };
    for step in [2.0, 5.0, 5.8, 5.9, 10.0, 40.0] {
        assert!(
            (left(step) - kept(step)).abs() < 1e-9,
            "{step}: {} {}",
            left(step),
            kept(step)
        );
    }
}

/// A V neck comes down to the fold at a blunt corner: its allowance square to it would lie beyond the fold.
#[test]
fn nothing_is_cut_beyond_a_fold() {
    let half = |neck: Curve, mirrored: bool| {
        let (top, foot) = (neck.start(), neck.end());
        let edges = vec![
            Edge::hem("hem", Curve::line((0.0, 0.0), (200.0, 0.0)), 30.0),
            Edge::seam("side", Curve::line((200.0, 0.0), (200.0, 400.0)), 15.0),
            Edge::seam("shoulder", Curve::line((200.0, 400.0), top), 15.0),
            Edge::opening("neck", neck, 8.0),
            Edge::fold("centre", Curve::line(foot, (0.0, 0.0))),
        ];
        let piece = Piece::new("front", edges).unwrap();
        if mirrored { piece.mirror() } else { piece }
    };
    let straight = Curve::line((90.0, 430.0), (0.0, 250.0));
    let round = Curve::arc((90.0, 430.0), (0.0, 250.0), 0.2);
    for neck in [straight, round] {
        for mirrored in [false, true] {
            let front = half(neck, mirrored);
            let cut = front.cut_line(0.01).unwrap();
            let beyond = if mirrored {
                cut.bounds().x1
            } else {
                cut.bounds().x0
            };
            assert_eq!(beyond, 0.0);
            // Unfolded, the two allowances meet on the fold.
            let whole = front.unfold().unwrap().cut_line(0.01).unwrap();
            assert!((whole.area() - 2.0 * cut.area()).abs() < 1e-6);
        }
    }
    // 8 square to the neck is 8 / sin along the fold: √(90² + 180²) / 90 = √5.
    let cut = half(straight, false).cut_line(0.01).unwrap();
    assert!(cut.distance((0.0, 250.0 + 8.0 * libm::sqrt(5.0))) < 1e-9);
}

/// The facing of a round neck lies to one side of the front's grain line, and gets its own, upright and within.
#[test]
fn a_facing_has_its_grain_line_on_itself() {
    let front = front();
    let neck = front.edge("neck").unwrap();
    let facing = Facing {
        name: "facing".into(),
        depth: 40.0,
        roll: 0.0,
        inner_allowance: 0.0,
    };
    let facing = front.facing(&[neck], &facing).unwrap();
    let grain = facing.grain().unwrap();
    assert_eq!(facing.grain_deg(), 90.0);
    let seam = facing.seam_line(0.01).unwrap();
    for share in [0.0, 0.25, 0.5, 0.75, 1.0] {
        assert!(seam.contains(grain.p0.lerp(grain.p1, share)));
    }
    // The front's own, which lies on it, stays.
    assert_eq!(front.grain().unwrap().p0, Point::new(50.0, 50.0));
}
