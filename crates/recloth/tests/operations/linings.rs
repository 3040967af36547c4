//! Linings of pieces.

use super::*;
use recloth::lining::lining_length;
use recloth::outline::{EdgeBy, Lines, Lining, LiningDarts, LiningHem};

fn by(edge: usize, by: f64) -> EdgeBy {
    EdgeBy { edge, by }
}

fn asked(hem: LiningHem) -> Lining {
    Lining {
        name: "lining".into(),
        cloth: "lining".into(),
        facings: Vec::new(),
        ease: Vec::new(),
        pleats: Vec::new(),
        hem,
        darts: LiningDarts::Tucks,
        allowance: 10.0,
        shell_change_pct: [0.0; 2],
        lining_change_pct: [0.0; 2],
    }
}

/// A skirt panel 300 by 560 with a dart 20 wide and 100 deep in the middle of its waist.
fn skirt() -> Piece {
    let corners = [
        (0.0, 0.0),
        (300.0, 0.0),
        (300.0, 560.0),
        (160.0, 560.0),
        (140.0, 560.0),
        (0.0, 560.0),
    ];
    let names = [
        "hem",
        "side",
        "waist side",
        "mouth",
        "waist centre",
        "centre",
    ];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 6]);
    let edges = (0..6)
        .map(|i| match i {
            0 => Edge::hem(names[i], side(i), 45.0),
            1 => Edge::seam(names[i], side(i), 15.0)
                .notch("hip", 360.0, 1)
                .notch("waist", 540.0, 1),
            _ => Edge::seam(names[i], side(i), 15.0),
        })
        .collect();
    let marks = vec![
        Mark::Dart(Dart {
            name: "dart".into(),
            point: Point::new(150.0, 460.0),
            legs: [Point::new(160.0, 560.0), Point::new(140.0, 560.0)],
        }),
        Mark::Drill {
            name: "pocket".into(),
            at: Point::new(200.0, 400.0),
        },
        Mark::Buttonhole {
            name: "band".into(),
            ends: [Point::new(20.0, 550.0), Point::new(40.0, 550.0)],
        },
    ];
    Piece::new("skirt", edges)
        .and_then(|piece| piece.with_marks(marks))
        .and_then(|piece| piece.with_grain(Line::new((100.0, 100.0), (100.0, 400.0))))
        .expect("a piece")
}

// By hand (the lengths of the core's `lining_length`): 560 long, hem 45, clearance 20: 540 + 25 = 565 to sew onto 515.
#[test]
fn a_jump_hem_is_as_long_as_the_folds_path() {
    let lined = skirt()
        .lining(&asked(LiningHem::Jump {
            depth: 45.0,
            clearance: 20.0,
        }))
        .unwrap();
    let told = lining_length(560.0, 45.0, 20.0).unwrap();
    let side = &lined.seams[1];
    assert_eq!((side.shell, side.along), (1, Lines::Shell));
    close(side.length, 565.0, 1e-9);
    close(side.other_length, 515.0, 1e-9);
    close(side.difference, told.spare, 1e-9);
    let hem = &lined.seams[0];
    assert_eq!((hem.shell, hem.along), (0, Lines::Hem));
    close(hem.difference, 0.0, 1e-9);
    let edge = &lined.piece.edges()[hem.edges[0]];
    assert_eq!(
        (edge.role, edge.allowance),
        (recloth::outline::Role::Seam, 10.0)
    );
    assert_eq!(lined.piece.cutting().cloth, "lining");
    close(lined.piece.bounds().y0, -5.0, 1e-9);
    // The dart is a tuck: two notches 20 apart, and no mark; the others stay.
    let tuck: Vec<Point> = lined
        .piece
        .edges()
        .iter()
        .flat_map(|e| e.notches.iter().map(move |n| (e, n)))
        .filter(|(_, n)| n.name == "dart")
        .map(|(e, n)| e.curve.at(n.distance).0)
        .collect();
    assert_eq!(tuck.len(), 2);
    close(size(tuck[1] - tuck[0]), 20.0, 1e-9);
    let marks: Vec<&str> = lined.piece.marks().iter().map(Mark::name).collect();
    assert_eq!(marks, ["pocket", "band"]);
}

// By hand. A waist facing 50 deep: the dart is 20 · 50 / 100 = 10 wide where the lining begins, and the buttonhole within
// the facing is not the lining's. The side's upper notch was on the facing; the other stays.
#[test]
fn a_facing_is_taken_off_with_what_is_on_it() {
    let lining = Lining {
        facings: vec![by(2, 50.0), by(4, 50.0)],
        ease: vec![by(1, 3.0)],
        darts: LiningDarts::Sewn,
        ..asked(LiningHem::Free {
            clearance: 25.0,
            allowance: 30.0,
        })
    };
    let lined = skirt().lining(&lining).unwrap();
    let bounds = lined.piece.bounds();
    close(bounds.y1, 510.0, 1e-9);
    close(bounds.y0, 25.0, 1e-9);
    close(bounds.x1, 303.0, 1e-9);
    let dart = dart_of(&lined.piece, "dart");
    close(dart.intake(), 10.0, 1e-9);
    close(dart.legs[0].y, 510.0, 1e-9);
    assert!(lined.piece.marks().iter().all(|mark| mark.name() != "band"));
    let side = &lined.piece.edges()[lined.seams[0].edges[0]];
    let notches: Vec<&str> = side.notches.iter().map(|n| n.name.as_str()).collect();
    assert_eq!(notches, ["hip"]);
    // From the shell's hem at 0 to the facing at 510, less the clearance.
    close(lined.seams[0].difference, -25.0, 1e-9);
    let waist: Vec<_> = lined
        .seams
        .iter()
        .filter(|seam| seam.along == Lines::Facing)
        .map(|seam| (seam.shell, seam.difference))
        .collect();
    // The side waist alone is wider, by the ease; a free hem is not walked.
    assert_eq!(waist.len(), 2);
    close(waist[0].1, 3.0, 1e-9);
    close(waist[1].1, 0.0, 1e-9);
    assert!(lined.seams.iter().all(|seam| seam.shell != 0));
    let hem = lined.piece.edges()[lined.piece.edge("hem").unwrap()].clone();
    assert_eq!(
        (hem.role, hem.allowance),
        (recloth::outline::Role::Hem, 30.0)
    );
}

// By hand. A back on the fold with a pleat of 25: wider by 25 at neck and hem, its line where the shell's fold was.
#[test]
fn a_pleat_lies_beside_the_fold() {
    let corners = [
        (0.0, 0.0),
        (250.0, 0.0),
        (250.0, 500.0),
        (80.0, 520.0),
        (0.0, 500.0),
    ];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 5]);
    let back = Piece::new(
        "back",
        vec![
            Edge::hem("hem", side(0), 40.0),
            Edge::seam("side", side(1), 15.0),
            Edge::seam("shoulder", side(2), 15.0),
            // A neck that ends square to the fold.
            Edge::seam(
                "neck",
                Curve::cubic((80.0, 520.0), (60.0, 500.0), (40.0, 500.0), (0.0, 500.0)),
                10.0,
            ),
            Edge::fold("centre", side(4)),
        ],
    )
    .unwrap();
    let lining = Lining {
        pleats: vec![by(4, 25.0)],
        ..asked(LiningHem::Level)
    };
    let lined = back.lining(&lining).unwrap();
    close(lined.piece.area(), back.area() + 25.0 * 500.0, 1e-3);
    assert!(lined.piece.fold().is_some());
    close(lined.piece.bounds().x0, -25.0, 1e-9);
    let Mark::Line { name, curve, .. } = &lined.piece.marks()[0] else {
        panic!("no line")
    };
    assert_eq!(name, "pleat");
    close(size(curve.start() - Point::new(0.0, 500.0)), 0.0, 1e-6);
    close(size(curve.end() - Point::new(0.0, 0.0)), 0.0, 1e-6);
    let notched: Vec<f64> = lined
        .piece
        .edges()
        .iter()
        .flat_map(|e| e.notches.iter().map(move |n| (e, n)))
        .filter(|(_, n)| n.name == "pleat")
        .map(|(e, n)| e.curve.at(n.distance).0.x)
        .collect();
    assert_eq!(notched.len(), 2);
    for x in notched {
        close(x, 0.0, 1e-6);
    }
    let difference = |shell: usize| {
        let seam = lined.seams.iter().find(|seam| seam.shell == shell);
        seam.expect("a seam").difference
    };
    close(difference(0), 25.0, 1e-9);
    close(difference(3), 25.0, 1e-3);
    close(difference(1), 0.0, 1e-9);
}

// By hand. A shell that will lose 5 % along the grain, 560 drawn, ends at 532; a lining that loses 1 % is cut 532 / 0.99 = 537.37.
// Across, neither changes.
#[test]
fn shell_and_lining_shrink_by_their_own() {
    let lining = Lining {
        shell_change_pct: [-5.0, 0.0],
        lining_change_pct: [-1.0, 0.0],
        ..asked(LiningHem::Level)
    };
    let lined = skirt().lining(&lining).unwrap();
    close(lined.piece.bounds().height(), 560.0 * 0.95 / 0.99, 1e-9);
    close(537.37, lined.piece.bounds().height(), 5e-3);
    close(lined.piece.bounds().width(), 300.0, 1e-9);
    close(lined.finished.bounds().height(), 560.0, 1e-9);
    let same = Lining {
        shell_change_pct: [-5.0, -2.0],
        lining_change_pct: [-5.0, -2.0],
        ..asked(LiningHem::Level)
    };
    let same = skirt().lining(&same).unwrap();
    assert_eq!(same.piece, same.finished);
}

// A shell drawn as cut cloth is lined from its seam lines.
#[test]
fn cut_cloth_is_lined_from_its_seams() {
    let edges = skirt()
        .edges()
        .iter()
        .cloned()
        .map(|edge| {
            if edge.name == "side" || edge.name == "centre" {
                edge.already_cut()
            } else {
                edge
            }
        })
        .collect();
    let cut = Piece::new("skirt", edges).unwrap();
    let lined = cut.lining(&asked(LiningHem::Level)).unwrap();
    close(lined.piece.bounds().width(), 300.0 - 2.0 * 15.0, 1e-9);
    let side = &lined.piece.edges()[lined.seams[1].edges[0]];
    assert_eq!(
        (side.allowance, side.drawn),
        (10.0, recloth::outline::Drawn::Seam)
    );
}

#[test]
fn a_lining_that_cannot_be_is_refused() {
    let fails = |lining: Lining| {
        let error = skirt().lining(&lining).unwrap_err();
        (error.kind(), error.argument(), error.at())
    };
    let level = || asked(LiningHem::Level);
    let jump = asked(LiningHem::Jump {
        depth: 40.0,
        clearance: 40.0,
    });
    assert_eq!(fails(jump), (ErrorKind::NoSolution, "clearance", None));
    let off = Lining {
        facings: vec![by(9, 50.0)],
        ..level()
    };
    assert_eq!(fails(off), (ErrorKind::OutOfRange, "edge", None));
    let deep = Lining {
        facings: vec![by(1, 400.0)],
        ..level()
    };
    assert_eq!(fails(deep).1, "by");
    let nan = Lining {
        ease: vec![by(1, f64::NAN)],
        ..level()
    };
    assert_eq!(fails(nan), (ErrorKind::NotFinite, "by", Some(1)));
    let change = Lining {
        lining_change_pct: [0.0, -95.0],
        ..level()
    };
    assert_eq!(
        fails(change),
        (ErrorKind::OutOfRange, "lining_change_pct", Some(1))
    );
    let free = LiningHem::Free {
        clearance: 20.0,
        allowance: 20.0,
    };
    let error = square().lining(&asked(free)).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NoSolution, "hem")
    );
    let curved = neckline_fold();
    let pleat = Lining {
        pleats: vec![by(1, 20.0)],
        ..level()
    };
    let error = curved.lining(&pleat).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("edge", Some(1)));
    let eased = Lining {
        ease: vec![by(2, 3.0)],
        ..level()
    };
    let error = curved.lining(&eased).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("edge", Some(2)));
}

/// A half round on a fold.
fn neckline_fold() -> Piece {
    Piece::new(
        "half round",
        vec![
            Edge::hem("hem", Curve::line((0.0, 0.0), (100.0, 0.0)), 10.0),
            Edge::seam(
                "round",
                Curve::arc((100.0, 0.0), (0.0, 100.0), 0.41421356),
                10.0,
            ),
            Edge::fold("fold", Curve::line((0.0, 100.0), (0.0, 0.0))),
        ],
    )
    .expect("a piece")
}

// The lining of any piece: its area is about the shell's less facing, plus ease (shapely judges it closely: tests/oracle).
#[test]
fn linings_of_random_pieces_keep_their_edges() {
    let mut random = Random(71);
    let mut done = 0;
    for round in 0..150 {
        let piece = random.piece(5 + round % 5);
        let count = piece.edges().len();
        let (faced, eased) = (round % count, (round + 2) % count);
        let lining = Lining {
            facings: vec![by(faced, random.between(10.0, 60.0))],
            ease: vec![by(eased, random.between(1.0, 6.0))],
            ..asked(LiningHem::Level)
        };
        let Ok(lined) = piece.lining(&lining) else {
            continue;
        };
        done += 1;
        let (off, on) = (lining.facings[0].by, lining.ease[0].by);
        let (a, b) = (&piece.edges()[faced], &piece.edges()[eased]);
        // Strips between parallels, as long as their middles.
        let now = |shell: usize| {
            let seam = lined.seams.iter().find(|seam| seam.shell == shell);
            seam.expect("a seam").length
        };
        let strip = |edge: &Edge, index: usize| (edge.length() + now(index)) / 2.0;
        let wanted = piece.area() - off * strip(a, faced) + on * strip(b, eased);
        close(lined.piece.area(), wanted, 0.005 * wanted);
        // Every edge of the lining came of one of the shell.
        let mut all: Vec<usize> = lined.seams.iter().flat_map(|s| s.edges.clone()).collect();
        all.sort_unstable();
        assert_eq!(all, (0..lined.finished.edges().len()).collect::<Vec<_>>());
        for seam in &lined.seams {
            let name = piece.edges()[seam.shell].name.as_str();
            for &edge in &seam.edges {
                assert!(lined.finished.edges()[edge].name.starts_with(name));
            }
            assert!(seam.difference.abs() < 60.0, "{round}: {seam:?}");
        }
    }
    assert!(done > 120, "{done}");
}
