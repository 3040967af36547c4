//! Edges trued up over seams and darts.

use super::*;
use recloth::outline::{EdgeEnd, Kept, Meeting, true_up};

/// A gore 300 wide at the hem, 180 at the waist, 600 long.
fn gore() -> Piece {
    let corners = [(-150.0, 0.0), (150.0, 0.0), (90.0, 600.0), (-90.0, 600.0)];
    let names = ["hem", "right", "waist", "left"];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
    let edges = (0..4).map(|i| Edge::seam(names[i], side(i), 10.0).notch(names[i], 50.0, 1));
    Piece::new("gore", edges.collect()).expect("a piece")
}

fn side_seam(end: EdgeEnd) -> Meeting {
    Meeting::Seam {
        pieces: [0, 0],
        edges: [1, 3],
        way: Way::Against,
        end,
        kept: Kept::Neither,
    }
}

// By hand. The sides lean by t = atan(60 / 600), so the hems of two gores meet in a peak of 2 t. Turned by t at both ends the
// hem is an arc over a chord of 300: it sags by 150 tan(t / 2) = 7.48.
#[test]
fn hems_of_gores_become_one_line() {
    let lean = libm::atan(0.1);
    let trued = true_up(&[gore()], &[side_seam(EdgeEnd::Start)], 7.5).unwrap();
    close(trued.kinks_deg[0], 2.0 * lean.to_degrees(), 1e-9);
    close(trued.largest, 150.0 * libm::tan(lean / 2.0), 1e-3);
    close(7.48, trued.largest, 5e-3);
    let [hem] = trued.edges.as_slice() else {
        panic!("{:?}", trued.edges)
    };
    assert_eq!((hem.piece, hem.edge), (0, 0));
    close(hem.start_deg, -lean.to_degrees(), 1e-9);
    close(hem.distance, 150.0, 3.0);
    // The arc's radius is 150 / sin t, its length twice that times t.
    close(hem.longer, 300.0 * lean / libm::sin(lean) - 300.0, 1e-9);
    let piece = &trued.pieces[0];
    assert!(matches!(piece.edges()[0].curve, Curve::Segment(s) if !s.is_line()));
    assert_eq!(piece.edges()[0].notches.len(), 1);
    let walk = piece.walk(&[1], piece, &[3], Way::Against).unwrap();
    close(walk.start_kink_deg.unwrap(), 0.0, 1e-9);
    // The waist was not asked for: it still dents by as much.
    close(walk.end_kink_deg.unwrap(), -2.0 * lean.to_degrees(), 1e-9);
    let both = true_up(
        &[gore()],
        &[side_seam(EdgeEnd::Start), side_seam(EdgeEnd::End)],
        10.0,
    )
    .unwrap();
    let piece = &both.pieces[0];
    let walk = piece.walk(&[1], piece, &[3], Way::Against).unwrap();
    close(walk.end_kink_deg.unwrap(), 0.0, 1e-9);
    assert_eq!(both.edges.len(), 2);
    // Too far is refused, with the meeting and by how much.
    let error = true_up(&[gore()], &[side_seam(EdgeEnd::Start)], 7.0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument(), error.at(), error.max()),
        (ErrorKind::OutOfRange, "moved", Some(0), 7.0)
    );
    close(error.value(), 150.0 * libm::tan(lean / 2.0), 1e-3);
    let twice = [side_seam(EdgeEnd::Start), side_seam(EdgeEnd::Start)];
    let error = true_up(&[gore()], &twice, 10.0).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("meetings", Some(1)));
}

// By hand. Two necklines over one shoulder: one arrives square to it, the other leans by 10°: each is turned by 5°.
#[test]
fn a_neckline_runs_on_over_the_shoulder() {
    let bodice = |name: &str, lean_deg: f64| {
        let drop = 80.0 * libm::tan(lean_deg.to_radians());
        Piece::new(
            name,
            vec![
                Edge::seam("shoulder", Curve::line((0.0, 0.0), (0.0, 100.0)), 10.0),
                Edge::seam(
                    "neck",
                    Curve::line((0.0, 100.0), (-80.0, 100.0 - drop)),
                    10.0,
                ),
                Edge::seam(
                    "centre",
                    Curve::line((-80.0, 100.0 - drop), (-80.0, -50.0)),
                    10.0,
                ),
                Edge::seam("rest", Curve::line((-80.0, -50.0), (0.0, 0.0)), 10.0),
            ],
        )
        .unwrap()
    };
    let pieces = [bodice("front", 10.0), bodice("back", 0.0)];
    let meeting = Meeting::Seam {
        pieces: [0, 1],
        edges: [0, 0],
        way: Way::Along,
        end: EdgeEnd::End,
        kept: Kept::Neither,
    };
    let trued = true_up(&pieces, &[meeting], 3.0).unwrap();
    close(trued.kinks_deg[0], 10.0, 1e-9);
    let [front, back] = trued.pieces.as_slice() else {
        panic!()
    };
    close(trued.edges[0].start_deg, -5.0, 1e-9);
    close(trued.edges[1].start_deg, -5.0, 1e-9);
    let walk = front.walk(&[0], back, &[0], Way::Along).unwrap();
    close(walk.end_kink_deg.unwrap(), 0.0, 1e-9);
    // A cubic whose first steering point, a third along, is turned by 5°: 4/9 of its rise, at a third.
    let rise = 80.0 / 3.0 * libm::sin(5.0_f64.to_radians());
    close(trued.edges[1].moved, rise * 4.0 / 9.0, 0.01);
    close(length_of(front, "shoulder"), 100.0, 1e-12);
}

// A drafted waist is one arc when its darts are folded: nothing to true up, and its caps are those of the draft.
#[test]
fn a_drafted_waist_needs_no_truing() {
    let panel = panel();
    let dart = |name: &str, onto: EdgeEnd| Meeting::Dart {
        piece: 0,
        dart: name.into(),
        onto,
    };
    let meetings = [dart("dart 1", EdgeEnd::Start), dart("dart 2", EdgeEnd::End)];
    let trued = true_up(std::slice::from_ref(&panel), &meetings, 0.0).unwrap();
    for kink in &trued.kinks_deg {
        close(*kink, 0.0, 1e-9);
    }
    close(trued.pieces[0].area(), panel.area(), 1e-6);
    assert_eq!(trued.pieces[0].marks(), panel.marks());
}

// By hand. Two level edges and a dart of half angle atan(0.1): folded they dent by 2 atan(0.1), so each ends square to its leg.
#[test]
fn a_dart_is_trued_up_and_capped() {
    for onto in [EdgeEnd::Start, EdgeEnd::End] {
        let meeting = Meeting::Dart {
            piece: 0,
            dart: "waist".into(),
            onto,
        };
        let trued = true_up(&[square()], &[meeting], 3.0).unwrap();
        close(
            trued.kinks_deg[0],
            -2.0 * libm::atan(0.1).to_degrees(),
            1e-9,
        );
        let piece = &trued.pieces[0];
        let dart = dart_of(piece, "waist");
        for (name, leg) in [("top side", dart.legs[1]), ("top centre", dart.legs[0])] {
            let edge = &piece.edges()[piece.edge(name).unwrap()].curve;
            let tangent = if name == "top side" {
                edge.end_tangent()
            } else {
                edge.start_tangent()
            };
            close(
                tangent.dot((leg - dart.point) / size(leg - dart.point)),
                0.0,
                1e-9,
            );
        }
        assert_eq!(
            piece
                .edges()
                .iter()
                .filter(|e| e.name.starts_with("cap waist"))
                .count(),
            2
        );
        assert_eq!(piece.marks().len(), 2);
    }
    let missing = Meeting::Dart {
        piece: 0,
        dart: "none".into(),
        onto: EdgeEnd::Start,
    };
    let error = true_up(&[square()], &[missing], 3.0).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("dart", Some(0)));
}

// Whatever the edges: the kink is gone, seams keep their lengths, notches stay.
#[test]
fn what_is_trued_up_runs_on() {
    let mut random = Random(53);
    let mut done = 0;
    for round in 0..200 {
        let [a, b] = [random.piece(5 + round % 5), random.piece(5 + round % 4)];
        let edge = |random: &mut Random, piece: &Piece| random.place(piece).edge;
        let edges = [edge(&mut random, &a), edge(&mut random, &b)];
        let way = [Way::Along, Way::Against][round % 2];
        let end = [EdgeEnd::Start, EdgeEnd::End][round / 2 % 2];
        let kept = [Kept::Neither, Kept::First, Kept::Second][round % 3];
        let meeting = Meeting::Seam {
            pieces: [0, 1],
            edges,
            way,
            end,
            kept,
        };
        let Ok(trued) = true_up(&[a.clone(), b.clone()], &[meeting], 1000.0) else {
            continue;
        };
        done += 1;
        let seam = |piece: &Piece, index: usize, was: &Piece| {
            let name = &was.edges()[index].name;
            let found = piece.edge(name).expect("the seam");
            close(
                piece.edges()[found].length(),
                was.edges()[index].length(),
                1e-9,
            );
            found
        };
        let [x, y] = trued.pieces.as_slice() else {
            panic!()
        };
        let walk = x
            .walk(&[seam(x, edges[0], &a)], y, &[seam(y, edges[1], &b)], way)
            .unwrap();
        let kink = match end {
            EdgeEnd::Start => walk.start_kink_deg,
            EdgeEnd::End => walk.end_kink_deg,
        };
        close(kink.unwrap(), 0.0, 1e-7);
        let notches = |p: &Piece| p.edges().iter().map(|e| e.notches.len()).sum::<usize>();
        assert_eq!(notches(x), notches(&a));
        let same = (*x == a, *y == b);
        let held = match kept {
            Kept::Neither => (false, false),
            Kept::First => (true, false),
            Kept::Second => (false, true),
        };
        assert_eq!(same, held, "{kept:?}");
    }
    assert!(done > 120, "{done}");
}
