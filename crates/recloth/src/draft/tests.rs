//! Drafts as a whole.

use alloc::vec::Vec;
use kurbo::Point;

use super::*;
use crate::band::{BandMake, SquareEnds};
use crate::outline::{Curve, Hand, Mark, Role, Way};
use crate::{Error, ErrorKind};

/// F8's panel: 242 inside seams, 190 wanted, largest 30.
fn panel(darts: u32) -> SkirtPanel {
    SkirtPanel {
        name: "front".into(),
        panel_width: 242.0,
        waist: 190.0,
        hip: 250.0,
        hip_depth: 200.0,
        length: 600.0,
        hem_width: 290.0,
        darts,
        largest_intake: 30.0,
        dart_length: 110.0,
        side_rise: 12.0,
        centre: Centre::Fold,
        allowances: Allowances {
            seam: 15.0,
            hem: 40.0,
        },
    }
}

fn only(draft: Result<Draft, Error>) -> Piece {
    draft.unwrap().pieces.remove(0)
}

fn waist(piece: &Piece) -> f64 {
    let waists = piece.edges().iter().filter(|e| e.name.starts_with("waist"));
    waists.map(|edge| edge.length()).sum()
}

fn named(piece: &Piece, name: &str) -> usize {
    piece.edge(name).unwrap()
}

fn far(a: Point, b: Point) -> f64 {
    libm::hypot(a.x - b.x, a.y - b.y)
}

fn check(error: Result<Draft, Error>, kind: ErrorKind, argument: &str) {
    let error = error.unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (kind, argument),
        "{error}"
    );
}

#[test]
fn a_panel_has_the_measures_asked_for() {
    for darts in 0..4 {
        let piece = only(panel(darts).draft());
        assert!((waist(&piece) - 190.0).abs() < 1e-9);
        let darts_drawn = piece.marks().len();
        assert_eq!(darts_drawn, darts as usize);
        // F8: one dart takes 30, two take 26 each; a third of 52 is what three take.
        let intake = [0.0, 30.0, 26.0, 52.0 / 3.0][darts as usize];
        for mark in piece.marks() {
            let Mark::Dart(dart) = mark else { panic!() };
            assert!((dart.intake() - intake).abs() < 1e-9);
            let [a, b] = dart.leg_lengths();
            assert!((a - b).abs() < 1e-9);
            // By hand: a leg is the root of 110² and half the intake squared.
            assert!((a - libm::sqrt(110.0 * 110.0 + intake * intake / 4.0)).abs() < 1e-9);
        }
        let side = &piece.edges()[named(&piece, "side upper")];
        assert!((side.curve.end().y - 12.0).abs() < 1e-6);
        assert_eq!(side.curve.start(), Point::new(250.0, -200.0));
        // Square to the waist.
        let top = &piece.edges()[named(&piece, "side upper") + 1];
        let (a, b) = (side.curve.end_tangent(), top.curve.start_tangent());
        assert!((a.x * b.x + a.y * b.y).abs() < 1e-9);
        assert!(piece.cut_line(0.1).is_ok());
    }
}

#[test]
fn with_the_darts_folded_the_waist_is_smooth_and_the_caps_end_in_it() {
    let piece = only(panel(2).draft());
    let mut folded = 0;
    for (index, mark) in piece.marks().iter().enumerate() {
        let Mark::Dart(dart) = mark else { panic!() };
        let edge = |name: &str| {
            let name = alloc::format!("{name} {}", index + 1);
            piece.edges()[named(&piece, &name)].curve
        };
        let next = piece.edges()[named(&piece, &alloc::format!("waist {}", index + 2))].curve;
        let this = edge("waist");
        // Each waist edge runs from side to centre: this ends the fold's centre side, the next its other side.
        let [a, b] = dart.legs;
        assert!(far(this.start(), a) < 1e-9 && far(next.end(), b) < 1e-9);
        // Both are square to their leg, so that they run on into each other when the legs meet.
        for (leg, along) in [(a, this.start_tangent()), (b, next.end_tangent())] {
            let leg = leg - dart.point;
            assert!(
                (leg.x * along.x + leg.y * along.y).abs()
                    < 1e-9 * far(leg.to_point(), Point::ORIGIN)
            );
        }
        // The dart's fold pressed to the centre: a point of the cap, mirrored about the leg, lies on the waist edge.
        let cap = edge_named(&piece, index, "centre");
        let other = edge_named(&piece, index, "side");
        for (cap, leg, waist, start) in [(cap, a, this, cap.end()), (other, b, next, other.start())]
        {
            assert!(far(start, leg) < 1e-9);
            for part in 0..=10 {
                let (point, _) = cap.at(cap.length() * f64::from(part) / 10.0);
                let mirrored = reflect(point, dart.point, leg);
                let Curve::Segment(arc) = waist else { panic!() };
                assert!(
                    arc.nearest(mirrored).0 < 1e-9,
                    "{}",
                    arc.nearest(mirrored).0
                );
                folded += 1;
            }
        }
        // And the two halves of the cap are each other's mirror image about the dart's middle.
        let top = cap.start();
        assert!((far(top, a) - far(top, b)).abs() < 1e-9);
    }
    assert_eq!(folded, 44);
}

fn edge_named(piece: &Piece, dart: usize, half: &str) -> Curve {
    let name = alloc::format!("cap {} {half}", dart + 1);
    piece.edges()[named(piece, &name)].curve
}

fn reflect(point: Point, a: Point, b: Point) -> Point {
    let (u, v) = (b - a, point - a);
    let along = (u.x * v.x + u.y * v.y) / (u.x * u.x + u.y * u.y);
    a + u * (2.0 * along) - v
}

#[test]
fn a_panel_that_cannot_be_made_names_the_measure() {
    use ErrorKind::{NoSolution, NotFinite, OutOfRange};
    let with = |change: fn(&mut SkirtPanel)| {
        let mut panel = panel(1);
        change(&mut panel);
        panel.draft()
    };
    check(with(|p| p.waist = 243.0), NoSolution, "waist");
    check(with(|p| p.length = 200.0), NoSolution, "length");
    check(with(|p| p.dart_length = 200.0), NoSolution, "dart_length");
    check(with(|p| p.hip = 100.0), NoSolution, "hip");
    check(with(|p| p.hip = f64::NAN), NotFinite, "hip");
    check(with(|p| p.darts = 9), OutOfRange, "darts");
    check(with(|p| p.side_rise = -1.0), OutOfRange, "side_rise");
    check(with(|p| p.allowances.hem = 1e4), OutOfRange, "hem");
    check(with(|p| p.waist = 1.0), NoSolution, "side_rise");
}

#[test]
fn the_hem_of_a_flared_panel_is_square_to_centre_and_side() {
    for hem_width in [290.0, 250.0, 200.0] {
        let piece = only(
            SkirtPanel {
                hem_width,
                centre: Centre::Seam,
                ..panel(1)
            }
            .draft(),
        );
        let edge = |name| piece.edges()[named(&piece, name)].curve;
        let (hem, side) = (edge("hem"), edge("side lower"));
        let square = |a: kurbo::Vec2, b: kurbo::Vec2| (a.x * b.x + a.y * b.y).abs() < 1e-9;
        assert!(square(edge("centre").end_tangent(), hem.start_tangent()));
        assert!(square(hem.end_tangent(), side.start_tangent()));
        assert!((hem.end().x - hem_width).abs() < 2.5);
        assert_eq!(piece.cutting().hand, Hand::Mirrored);
        assert_eq!(piece.cutting().count, 2);
    }
}

#[test]
fn a_straight_band_is_a_strip_that_matches_the_waist() {
    // F13: finished 25, allowance 10, turn 2: cut 72 wide.
    let band = |make| StraightBand {
        waist: 700.0,
        overlap: 30.0,
        depth: 25.0,
        turn: 2.0,
        make,
        allowance: 10.0,
    };
    let folded = only(band(BandMake::Folded).draft());
    let cut = folded.cut_line(0.1).unwrap();
    assert_eq!((cut.bounds().width(), cut.bounds().height()), (750.0, 72.0));
    assert_eq!(folded.marks().len(), 1);
    // Lower and upper edge, folded on each other, have their notches together.
    let walk = folded.walk(&[0], &folded, &[2], Way::Against).unwrap();
    assert_eq!(walk.difference, 0.0);
    assert!(walk.notches.iter().all(|n| n.difference() == Some(0.0)));
    assert_eq!(walk.notches.len(), 4);
    let faced = only(band(BandMake::Faced).draft());
    assert_eq!(faced.cutting().count, 2);
    check(
        StraightBand {
            depth: 0.0,
            ..band(BandMake::Faced)
        }
        .draft(),
        ErrorKind::OutOfRange,
        "depth",
    );
    check(
        StraightBand {
            allowance: -1.0,
            ..band(BandMake::Faced)
        }
        .draft(),
        ErrorKind::OutOfRange,
        "allowance",
    );
}

#[test]
fn a_band_in_sections_is_that_of_the_worked_example() {
    // F12: sections 140, 330, 230, ends square, depth 50, top 676.
    let band = |curved| SectionedBand {
        lengths: [140.0, 330.0, 230.0].to_vec(),
        depth: 50.0,
        top: 676.0,
        ends: SquareEnds::Both,
        curved,
        allowance: 10.0,
    };
    let upper = |pieces: &[Piece]| -> Vec<f64> {
        pieces
            .iter()
            .map(|p| p.edges()[named(p, "upper")].length())
            .collect()
    };
    let straight = band(false).draft().unwrap().pieces;
    assert_eq!(upper(&straight), [134.0, 318.0, 224.0]);
    let hands: Vec<Hand> = straight.iter().map(|p| p.cutting().hand).collect();
    // The outer sections have one square and one slanted end; the middle one is its own mirror image.
    assert_eq!(hands, [Hand::Mirrored, Hand::Identical, Hand::Mirrored]);
    let curved = band(true).draft().unwrap().pieces;
    for (found, wanted) in upper(&curved).iter().zip([135.2, 318.7, 222.1]) {
        assert!((found - wanted).abs() < 0.05);
    }
    let Curve::Segment(lower) = curved[1].edges()[0].curve else {
        panic!()
    };
    assert!((lower.radius() - 1458.33).abs() < 0.01);
    for pieces in [&straight, &curved] {
        for pair in pieces.windows(2) {
            let (end, start) = (named(&pair[0], "end"), named(&pair[1], "start"));
            let walk = pair[0]
                .walk(&[end], &pair[1], &[start], Way::Against)
                .unwrap();
            assert!(walk.difference.abs() < 1e-9);
            assert_eq!(walk.notches.len(), 1);
            assert!(walk.notches[0].difference().unwrap().abs() < 1e-9);
        }
    }
    check(
        SectionedBand {
            top: 800.0,
            ..band(true)
        }
        .draft(),
        ErrorKind::NoSolution,
        "top",
    );
    check(
        SectionedBand {
            lengths: [5.0, 695.0].to_vec(),
            ..band(false)
        }
        .draft(),
        ErrorKind::NoSolution,
        "lengths",
    );
}

#[test]
fn sectors_of_a_circle_skirt_add_up_to_the_waist() {
    // Waist 710 in a half circle, length 600: hem 2595 in all (the worked example of the book).
    let skirt = CircleSector {
        waist: 710.0,
        length: 600.0,
        fraction: 0.5,
        pieces: 2,
        allowances: Allowances {
            seam: 10.0,
            hem: 15.0,
        },
    };
    let piece = only(skirt.draft());
    assert!((piece.edges()[named(&piece, "waist")].length() - 355.0).abs() < 1e-9);
    assert!((piece.edges()[named(&piece, "hem")].length() * 2.0 - 2595.0).abs() < 0.1);
    let sides = (named(&piece, "side"), named(&piece, "other side"));
    let walk = piece
        .walk(&[sides.0], &piece, &[sides.1], Way::Against)
        .unwrap();
    assert!(walk.difference.abs() < 1e-9 && walk.notches[0].difference().unwrap().abs() < 1e-9);
    assert!(!piece.handed(1e-6).unwrap());
    assert!(piece.cut_line(0.1).is_ok());
    let whole = CircleSector {
        fraction: 1.0,
        pieces: 1,
        ..skirt.clone()
    };
    check(whole.draft(), ErrorKind::NoSolution, "pieces");
    check(
        CircleSector {
            waist: f64::INFINITY,
            ..skirt
        }
        .draft(),
        ErrorKind::NotFinite,
        "waist",
    );
}

#[test]
fn a_gathered_strip_has_its_quarters() {
    let strip = |strips| GatheredStrip {
        finished: 600.0,
        ratio: 2.0,
        depth: 150.0,
        strips,
        allowances: Allowances {
            seam: 10.0,
            hem: 20.0,
        },
    };
    let one = only(strip(1).draft());
    assert_eq!(one.area(), 1200.0 * 150.0);
    let three = strip(3).draft().unwrap().pieces;
    let notches: Vec<_> = three
        .iter()
        .flat_map(|p| &p.edges()[named(p, "gathered")].notches)
        .map(|n| (n.name.as_str(), n.distance))
        .collect();
    // Quarters at 300, 600, 900 of 1200; strips of 400, each edge from its far end.
    assert_eq!(
        notches,
        [
            ("quarter 1", 100.0),
            ("quarter 2", 200.0),
            ("quarter 3", 300.0)
        ]
    );
    check(
        GatheredStrip {
            ratio: 0.5,
            ..strip(1)
        }
        .draft(),
        ErrorKind::OutOfRange,
        "ratio",
    );
    let long = GatheredStrip {
        finished: 1e4,
        ratio: 20.0,
        ..strip(1)
    };
    check(long.draft(), ErrorKind::NoSolution, "strips");
}

#[test]
fn the_hem_of_a_patch_pocket_folds_back_onto_it() {
    let pocket = |corner_radius| PatchPocket {
        width: 150.0,
        depth: 170.0,
        corner_radius,
        allowances: Allowances {
            seam: 10.0,
            hem: 30.0,
        },
    };
    let cut = only(pocket(0.0).draft()).cut_line(0.1).unwrap();
    // By hand: 170 wide, 170 + 10 + 30 deep.
    assert!((cut.area() - 170.0 * 210.0).abs() < 1e-9);
    let round = only(pocket(25.0).draft());
    // By hand: two corners of radius 25 take (4 - π)/2 · 25² away.
    let gone = (4.0 - core::f64::consts::PI) / 2.0 * 625.0;
    assert!((round.area() - (150.0 * 170.0 - gone)).abs() < 1e-9);
    assert!(!round.handed(1e-6).unwrap());
    assert_eq!(only(pocket(75.0).draft()).edges().len(), 5);
    check(pocket(80.0).draft(), ErrorKind::NoSolution, "corner_radius");
    let deep = PatchPocket {
        allowances: Allowances {
            seam: 10.0,
            hem: 171.0,
        },
        ..pocket(0.0)
    };
    check(deep.draft(), ErrorKind::NoSolution, "hem");
}

#[test]
fn a_lining_has_the_length_of_the_worked_example() {
    // F11: shell 560, hem 45, clearance 20: 565 from seam to seam.
    let mut shell = panel(1);
    shell.length = 560.0;
    shell.allowances.hem = 45.0;
    let lining = |hang, clearance| PanelLining {
        shell: shell.clone(),
        hang,
        clearance,
        ease: 10.0,
    };
    let folded = only(lining(Hang::Folded, 20.0).draft());
    let length = |piece: &Piece| piece.edges()[named(piece, "centre")].length();
    assert_eq!(length(&folded), 565.0);
    assert_eq!(folded.edges()[named(&folded, "hem")].role, Role::Seam);
    assert_eq!(folded.cutting().cloth, "lining");
    assert_eq!(folded.name(), "front lining");
    // The same waist, 10 more at the hip.
    let outer = only(shell.draft());
    assert!((waist(&folded) - waist(&outer)).abs() < 1e-9);
    assert_eq!(
        folded.edges()[named(&folded, "side upper")].curve.start().x,
        260.0
    );
    let free = only(lining(Hang::Free { hem: 25.0 }, 20.0).draft());
    assert_eq!(length(&free), 540.0);
    assert_eq!(free.edges()[named(&free, "hem")].allowance, 25.0);
    check(
        lining(Hang::Folded, 45.0).draft(),
        ErrorKind::NoSolution,
        "clearance",
    );
    check(
        lining(Hang::Free { hem: 25.0 }, 400.0).draft(),
        ErrorKind::NoSolution,
        "clearance",
    );
}

/// Numbers from 0 to below 1, the same everywhere.
fn random(state: &mut u64) -> f64 {
    *state = state
        .wrapping_mul(6_364_136_223_846_793_005)
        .wrapping_add(1_442_695_040_888_963_407);
    (*state >> 11) as f64 / (1u64 << 53) as f64
}

#[test]
fn any_measures_give_a_piece_that_can_be_cut_or_name_a_measure() {
    const MEASURES: [&str; 11] = [
        "panel_width",
        "waist",
        "hip",
        "hip_depth",
        "length",
        "hem_width",
        "darts",
        "largest_intake",
        "dart_length",
        "side_rise",
        "hem",
    ];
    let mut state = 5;
    let (mut made, mut refused) = (0, 0);
    for round in 0..900 {
        let wild = round % 3 == 0;
        let mut any = |usual: f64| {
            let r = random(&mut state);
            let odd = [f64::NAN, f64::INFINITY, -1.0, 0.0, 1e-9, 1e9];
            if wild && r > 0.97 {
                odd[(random(&mut state) * 6.0) as usize]
            } else {
                usual * if wild { 4.0 * r * r } else { 0.7 + 0.6 * r }
            }
        };
        let panel = SkirtPanel {
            name: "any".into(),
            panel_width: any(260.0),
            waist: any(190.0),
            hip: any(260.0),
            hip_depth: any(200.0),
            length: any(600.0),
            hem_width: any(300.0),
            darts: any(2.0) as u32,
            largest_intake: any(30.0),
            dart_length: any(110.0),
            side_rise: any(12.0),
            centre: Centre::Seam,
            allowances: Allowances {
                seam: 10.0,
                hem: 30.0,
            },
        };
        match panel.draft() {
            Ok(draft) => {
                made += 1;
                let piece = &draft.pieces[0];
                assert!((waist(piece) - panel.waist).abs() < 1e-6, "{panel:?}");
                let cut = piece.cut_line(0.1);
                assert!(wild || cut.is_ok(), "{panel:?}: {cut:?}");
                let lining = PanelLining {
                    shell: panel,
                    hang: Hang::Folded,
                    clearance: 10.0,
                    ease: 8.0,
                };
                assert!(wild || lining.draft().is_ok());
            }
            Err(error) => {
                refused += 1;
                assert!(MEASURES.contains(&error.argument()), "{error}: {panel:?}");
            }
        }
    }
    assert!(
        made > 300 && refused > 150,
        "{made} made, {refused} refused"
    );
}
