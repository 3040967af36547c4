//! Edges copied between landmarks.

use super::*;
use recloth::doubt::EDGE_STRETCHED;
use recloth::outline::{CopyFit, Drawn, measured_edge};

/// Half a back, its centre on the left: so wide at the waist, 235 at the hip 190 below.
fn half_back(waist: f64, side: Curve) -> Piece {
    let edges = vec![
        Edge::seam("hip", Curve::line((0.0, 0.0), (235.0, 0.0)), 10.0),
        Edge::seam("side", side, 15.0).notch("high hip", 90.0, 1),
        Edge::seam("waist", Curve::line((waist, 190.0), (0.0, 190.0)), 10.0),
        Edge::seam("centre", Curve::line((0.0, 190.0), (0.0, 0.0)), 10.0),
    ];
    Piece::new("back", edges).expect("a piece")
}

fn fitting() -> Piece {
    half_back(175.0, Curve::arc((235.0, 0.0), (175.0, 190.0), -0.12))
}

fn landmarks(piece: &Piece, from: (f64, f64), to: (f64, f64)) -> (Place, Place) {
    (piece.place(from).0, piece.place(to).0)
}

// By hand. The side of the garment that fits runs over sqrt(60² + 190²) = 199.25. With a dart of 25 open the new panel's
// waist is 200, so its landmarks are sqrt(35² + 190²) = 193.20 apart: 6.05 nearer, or 3.04 % less.
#[test]
fn an_open_dart_makes_a_copied_side_misfit() {
    let source = fitting();
    let (from, to) = landmarks(&source, (235.0, 0.0), (175.0, 190.0));
    let side = source.trace(from, to).unwrap();
    let open = half_back(200.0, Curve::line((235.0, 0.0), (200.0, 190.0)));
    let (from, to) = landmarks(&open, (235.0, 0.0), (200.0, 190.0));
    let error = open
        .copy_edge(from, to, &side, CopyFit::default())
        .unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::OutOfRange, "misfit")
    );
    close(error.value(), 193.20 - 199.25, 0.01);
    let fit = |gap: f64, stretch_pct: f64| CopyFit { gap, stretch_pct };
    let error = open.copy_edge(from, to, &side, fit(0.0, 3.0)).unwrap_err();
    assert_eq!(error.argument(), "stretch");
    close(error.value(), -3.04, 0.005);
    let stretched = open.copy_edge(from, to, &side, fit(0.0, 4.0)).unwrap();
    close(stretched.stretch_pct, -3.04, 0.005);
    assert_eq!((stretched.doubts, stretched.gap), (EDGE_STRETCHED, 0.0));
    close(stretched.length, side[0].length() * 193.197 / 199.249, 1e-3);
    close(stretched.replaced, 193.197, 1e-3);
    // The chord turns from atan(60 / 190) to atan(35 / 190) off the upright.
    let turn = libm::atan(60.0 / 190.0) - libm::atan(35.0 / 190.0);
    close(stretched.turn_deg, -turn.to_degrees(), 1e-9);
    let edge = &stretched.piece.edges()[1];
    assert_eq!((edge.name.as_str(), edge.allowance), ("side", 15.0));
    close(edge.notches[0].distance, 90.0 * 193.197 / 199.249, 1e-3);
    // Moved only, its ends miss by 3.03 each, along the chord, and hip and waist are drawn to meet them.
    let moved = open.copy_edge(from, to, &side, fit(7.0, 0.0)).unwrap();
    close(moved.gap, 193.197 - 199.249, 1e-3);
    assert_eq!((moved.stretch_pct, moved.doubts), (0.0, 0));
    close(moved.piece.edges()[1].length(), side[0].length(), 1e-9);
    let (start, end) = (
        moved.piece.edges()[1].curve.start(),
        moved.piece.edges()[1].curve.end(),
    );
    close(size(start - Point::new(235.0, 0.0)), 3.026, 1e-3);
    close(size(end - Point::new(200.0, 190.0)), 3.026, 1e-3);
    // With the dart folded away the side simply fits.
    let closed = half_back(175.0, Curve::line((235.0, 0.0), (175.0, 190.0)));
    let (from, to) = landmarks(&closed, (235.0, 0.0), (175.0, 190.0));
    let copied = closed
        .copy_edge(from, to, &side, CopyFit::default())
        .unwrap();
    assert_eq!((copied.gap, copied.stretch_pct), (0.0, 0.0));
    close(copied.piece.area(), source.area(), 1e-6);
}

#[test]
fn part_of_an_edge_is_copied_within_another() {
    let source = fitting().turned(70.0).shifted((400.0, -30.0));
    let place = |edge: usize, distance: f64| Place { edge, distance };
    let traced = source.trace(place(1, 50.0), place(1, 150.0)).unwrap();
    close(traced.iter().map(Edge::length).sum(), 100.0, 1e-9);
    let chord = size(traced[0].curve.end() - traced[0].curve.start());
    let plain = half_back(235.0, Curve::line((235.0, 0.0), (235.0, 190.0)));
    let (from, to) = (place(1, 40.0), place(1, 40.0 + chord));
    let copied = plain
        .copy_edge(from, to, &traced, CopyFit::default())
        .unwrap();
    let names: Vec<&str> = copied
        .piece
        .edges()
        .iter()
        .map(|e| e.name.as_str())
        .collect();
    assert_eq!(
        names,
        ["hip", "side 1", "side 2", "side 3", "waist", "centre"]
    );
    // It bends inward as it did: the arc's share over its chord.
    let Curve::Segment(arc) = traced[0].curve else {
        panic!()
    };
    let (radius, sweep) = (arc.radius(), arc.sweep_deg().abs().to_radians());
    let cap = radius * radius * (sweep - libm::sin(sweep)) / 2.0;
    close(copied.piece.area(), plain.area() - cap, 1e-6);
    // Cloth drawn as already cut stays so, with its own allowance.
    let mut cut = traced.clone();
    (cut[0].drawn, cut[0].allowance) = (Drawn::Cut, 6.0);
    let copied = plain.copy_edge(from, to, &cut, CopyFit::default()).unwrap();
    let edge = &copied.piece.edges()[copied.piece.edge("side 2").unwrap()];
    assert_eq!((edge.drawn, edge.allowance), (Drawn::Cut, 6.0));
}

// A quarter of a circle of radius 100, measured at 7 points: the curve through them strays by less than 0.1.
#[test]
fn measured_points_become_a_smooth_edge() {
    let points: Vec<Point> = (0..7)
        .map(|i| {
            let (sin, cos) = libm::sincos(f64::from(i) * std::f64::consts::FRAC_PI_2 / 6.0);
            Point::new(100.0 * cos, 100.0 * sin)
        })
        .collect();
    let smooth = measured_edge("armhole", &points, true).unwrap();
    assert_eq!((smooth.len(), smooth[5].name.as_str()), (6, "armhole 6"));
    for edge in &smooth {
        for step in 0..=10 {
            let p = edge.curve.at(edge.length() * f64::from(step) / 10.0).0;
            close(size(p.to_vec2()), 100.0, 0.1);
        }
    }
    for pair in smooth.windows(2) {
        let (a, b) = (pair[0].curve.end_tangent(), pair[1].curve.start_tangent());
        close(a.cross(b), 0.0, 1e-9);
    }
    let length: f64 = smooth.iter().map(Edge::length).sum();
    close(length, 50.0 * std::f64::consts::PI, 0.1);
    // Straight from point to point: six chords of 15 degrees.
    let straight = measured_edge("armhole", &points, false).unwrap();
    let chords: f64 = straight.iter().map(Edge::length).sum();
    close(chords, 1200.0 * libm::sin(7.5_f64.to_radians()), 1e-9);
    // Onto a piece.
    let corners = [(0.0, 0.0), (100.0, 0.0), (0.0, 100.0)];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 3]);
    let corner = Piece::new(
        "corner",
        (0..3)
            .map(|i| Edge::seam(["hem", "armhole", "side"][i], side(i), 10.0))
            .collect(),
    )
    .unwrap();
    let (from, to) = landmarks(&corner, (100.0, 0.0), (0.0, 100.0));
    let copied = corner
        .copy_edge(from, to, &smooth, CopyFit::default())
        .unwrap();
    close(copied.piece.area(), 2500.0 * std::f64::consts::PI, 10.0);
    let error = measured_edge("armhole", &points[..1], true).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::Count, "points")
    );
    let twice = [points[0], points[1], points[1]];
    let error = measured_edge("armhole", &twice, true).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("points", Some(1)));
}

#[test]
fn what_cannot_be_copied_is_named() {
    let piece = fitting();
    let place = |edge: usize, distance: f64| Place { edge, distance };
    let fails = |from: Place, to: Place, copied: &[Edge]| {
        let error = piece
            .copy_edge(from, to, copied, CopyFit::default())
            .unwrap_err();
        (error.kind(), error.argument())
    };
    let side = piece.trace(place(1, 0.0), place(2, 0.0)).unwrap();
    assert_eq!(
        fails(place(9, 0.0), place(2, 0.0), &side),
        (ErrorKind::OutOfRange, "from")
    );
    assert_eq!(
        fails(place(1, 5.0), place(1, 5.0), &side),
        (ErrorKind::NoSolution, "to")
    );
    assert_eq!(
        fails(place(1, 0.0), place(2, 0.0), &[]),
        (ErrorKind::Count, "copied")
    );
    let gap = [side[0].clone(), side[0].clone()];
    assert_eq!(
        fails(place(1, 0.0), place(2, 0.0), &gap),
        (ErrorKind::Outline, "copied")
    );
    let ring: Vec<Edge> = piece.edges().to_vec();
    assert_eq!(
        fails(place(1, 0.0), place(2, 0.0), &ring),
        (ErrorKind::NoSolution, "copied")
    );
    assert_eq!(
        piece
            .trace(place(1, 0.0), place(1, 0.0))
            .unwrap_err()
            .argument(),
        "to"
    );
    assert_eq!(
        piece
            .trace(place(1, f64::NAN), place(1, 0.0))
            .unwrap_err()
            .kind(),
        ErrorKind::NotFinite
    );
}

// Any stretch of a piece copied onto itself leaves it as it was, wherever the copy lay.
#[test]
fn a_copy_of_itself_changes_nothing() {
    let mut random = Random(61);
    for round in 0..200 {
        let piece = random.piece(4 + round % 6);
        let (from, to) = (random.place(&piece), random.place(&piece));
        let traced = piece.trace(from, to).unwrap();
        let elsewhere = piece
            .turned(random.between(-180.0, 180.0))
            .shifted((random.between(-500.0, 500.0), 80.0))
            .trace(from, to)
            .unwrap();
        for copied in [traced, elsewhere] {
            let same = piece.copy_edge(from, to, &copied, CopyFit::default());
            let same = same.unwrap_or_else(|error| panic!("{round}: {error}"));
            close(same.piece.area(), piece.area(), 1e-5);
            close(same.length, same.replaced, 1e-6);
            let notches = |p: &Piece| p.edges().iter().map(|e| e.notches.len()).sum::<usize>();
            assert_eq!(notches(&same.piece), notches(&piece));
        }
    }
}

// By hand, the example above: with its dart of 25 open from its point at 70, the side that fits is 200 from the centre at the
// waist, 190 up; half way up the dart it is 12.5 farther out than it was.
#[test]
fn a_side_measured_with_its_dart_sewn_fits_an_open_one() {
    let dart = Dart {
        name: "waist".into(),
        point: Point::new(90.0, 70.0),
        legs: [Point::new(102.5, 190.0), Point::new(77.5, 190.0)],
    };
    let points = [(235.0, 0.0), (175.0, 190.0)].map(Point::from);
    let side = measured_edge("side", &points, false).unwrap();
    let side = [side[0]
        .clone()
        .notch("high hip", side[0].length() * 130.0 / 190.0, 1)];
    let open = dart.opened(&side, 1.0).unwrap();
    let [lower, upper] = open.as_slice() else {
        panic!("{open:?}")
    };
    assert_eq!(
        (lower.name.as_str(), upper.name.as_str()),
        ("side 1", "side 2")
    );
    // Up to the level of the point nothing moves.
    let level = 235.0 - 60.0 * 70.0 / 190.0;
    close(size(lower.curve.end() - Point::new(level, 70.0)), 0.0, 1e-6);
    close(
        size(upper.curve.end() - Point::new(200.0, 190.0)),
        0.0,
        1e-9,
    );
    // The notch lies half way up the dart, where that is 12.5 wide.
    let notch = upper.curve.at(upper.notches[0].distance).0;
    let sewn = 235.0 - 60.0 * 130.0 / 190.0;
    close(size(notch - Point::new(sewn + 12.5, 130.0)), 0.0, 1e-6);
    let panel = half_back(200.0, Curve::line((235.0, 0.0), (200.0, 190.0)));
    let (from, to) = landmarks(&panel, (235.0, 0.0), (200.0, 190.0));
    let copied = panel
        .copy_edge(from, to, &open, CopyFit::default())
        .unwrap();
    assert_eq!((copied.gap, copied.stretch_pct), (0.0, 0.0));
    // None of it open: nothing moves. Half of it: half as far.
    let shut = dart.opened(&side, 0.0).unwrap();
    close(size(shut[1].curve.end() - points[1]), 0.0, 1e-9);
    let half = dart.opened(&side, 0.5).unwrap();
    close(half[1].curve.end().x, 187.5, 1e-9);
    // On the other side it moves the other way.
    let centre = measured_edge("centre", &[Point::new(0.0, 190.0), Point::ZERO], false).unwrap();
    close(
        dart.opened(&centre, 1.0).unwrap()[0].curve.start().x,
        -25.0,
        1e-9,
    );
    // An arc moves as its points do.
    let arc = Curve::arc((235.0, 0.0), (175.0, 190.0), -0.12);
    let curved = dart.opened(&[Edge::seam("side", arc, 15.0)], 1.0).unwrap();
    for step in 0..=20 {
        let point = arc.at(arc.length() * f64::from(step) / 20.0).0;
        let out = 25.0 * ((point.y - 70.0) / 120.0).max(0.0);
        let there = Point::new(point.x + out, point.y);
        let off = curved.iter().map(|edge| edge.curve.nearest(there).0);
        close(off.fold(f64::INFINITY, f64::min), 0.0, 2e-3);
    }
    // A waist that runs over the dart is torn apart, which this cannot do.
    let waist = measured_edge("waist", &[points[1], Point::new(0.0, 190.0)], false).unwrap();
    let error = dart.opened(&waist, 1.0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument(), error.at()),
        (ErrorKind::NoSolution, "edges", Some(0))
    );
    // What follows each other still does, with the dart's level in the middle of the second edge.
    let points = [(235.0, 0.0), (225.0, 40.0), (185.0, 150.0), (175.0, 190.0)].map(Point::from);
    let chain = measured_edge("side", &points, true).unwrap();
    let open = dart.opened(&chain, 1.0).unwrap();
    assert_eq!(open.len(), 4);
    for pair in open.windows(2) {
        assert_eq!(pair[0].curve.end(), pair[1].curve.start());
    }
    let end = Point::new(185.0 + 25.0 * 80.0 / 120.0, 150.0);
    close(size(open[2].curve.end() - end), 0.0, 1e-9);
    let flat = Dart {
        point: Point::new(90.0, 190.0),
        ..dart.clone()
    };
    let error = flat.opened(&side, 1.0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NoSolution, "dart")
    );
    let error = dart.opened(&side, 1.5).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::OutOfRange, "share")
    );
}
