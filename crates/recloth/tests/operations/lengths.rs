//! Pieces lengthened and shortened at a line.

use super::*;

/// A skirt, 300 wide at the hem and 240 at the waist, 600 long.
fn skirt() -> Piece {
    let corners = [(0.0, 0.0), (300.0, 0.0), (240.0, 600.0), (0.0, 600.0)];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
    let edges = vec![
        Edge::hem("hem", side(0), 40.0),
        Edge::seam("side", side(1), 15.0).notch("hip", 400.0, 1),
        Edge::seam("waist", side(2), 15.0),
        Edge::fold("centre", side(3)),
    ];
    Piece::new("skirt", edges).expect("a piece")
}

// By hand. Longer by 50 the trapezium of 300 and 240 is 650 high: 270 · 650 = 175 500; shorter by 60, 270 · 540 = 145 800.
#[test]
fn a_piece_is_longer_by_what_is_let_in() {
    let across = Line::new((-10.0, 300.0), (310.0, 300.0));
    let marks = vec![
        Mark::Drill {
            name: "pocket".into(),
            at: Point::new(100.0, 450.0),
        },
        Mark::Drill {
            name: "vent".into(),
            at: Point::new(100.0, 150.0),
        },
        Mark::Line {
            name: "stripe".into(),
            kind: LineKind::Stripe,
            curve: Curve::line((50.0, 100.0), (50.0, 500.0)),
        },
    ];
    let skirt = skirt()
        .with_marks(marks)
        .unwrap()
        .with_grain(Line::new((120.0, 310.0), (120.0, 590.0)))
        .unwrap();
    let longer = skirt.extend(across, 50.0).unwrap();
    close(longer.area(), 175_500.0, 1e-6);
    close(length_of(&longer, "hem"), 300.0, 1e-12);
    close(length_of(&longer, "waist"), 240.0, 1e-12);
    close(
        length_of(&longer, "side"),
        libm::sqrt(650.0 * 650.0 + 60.0 * 60.0),
        1e-9,
    );
    assert_eq!(longer.bounds().y0, -50.0);
    assert!(longer.fold().is_some());
    let at = |piece: &Piece, name: &str| {
        let drill = |mark: &Mark| match mark {
            Mark::Drill { at, .. } if mark.name() == name => Some(*at),
            _ => None,
        };
        piece.marks().iter().find_map(drill).expect("a drill point")
    };
    assert_eq!(at(&longer, "pocket"), Point::new(100.0, 450.0));
    assert_eq!(at(&longer, "vent"), Point::new(100.0, 100.0));
    let Mark::Line { curve, .. } = longer.marks()[2] else {
        panic!("no line")
    };
    close(curve.length(), 450.0, 1e-12);
    // The grain's middle lies above, so it stays.
    assert_eq!(longer.grain(), skirt.grain());
    // The notch above the line stays where it was but for the slope of the new side: its foot is 0.4 % of 50 off.
    let side = &longer.edges()[longer.edge("side").unwrap()];
    let notch = side.curve.at(side.notches[0].distance).0;
    let was = skirt.edges()[1].curve.at(400.0).0;
    assert!(size(notch - was) < 2.0, "{notch}");
    let shorter = skirt.extend(across, -60.0).unwrap();
    close(shorter.area(), 145_800.0, 1e-6);
    // The other way round the upper part moves.
    let back = Line::new(across.p1, across.p0);
    let up = skirt.extend(back, 50.0).unwrap();
    assert_eq!((up.bounds().y0, up.bounds().y1), (0.0, 650.0));
    close(up.area(), 175_500.0, 1e-6);
}

#[test]
fn what_cannot_be_lengthened_there_is_named() {
    let skirt = skirt();
    let across = |y: f64| Line::new((-10.0, y), (310.0, y));
    let error = skirt.extend(across(700.0), 10.0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument(), error.value()),
        (ErrorKind::NoSolution, "line", 0.0)
    );
    // Of 600 less than all must be folded away.
    let error = skirt.extend(across(300.0), -600.0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NoSolution, "by")
    );
    close(error.min(), -600.0, 1e-5);
    assert!(skirt.extend(across(300.0), error.min() + 1e-3).is_ok());
    // Aslant the fold would break.
    let aslant = Line::new((-10.0, 300.0), (310.0, 310.0));
    let error = skirt.extend(aslant, 10.0).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("line", Some(3)));
    let error = skirt.extend(across(f64::NAN), 10.0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NotFinite, "line")
    );
    let error = square().extend(across(150.0), 10.0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument(), error.at()),
        (ErrorKind::NoSolution, "mark", Some(0))
    );
    // A corner on the line stays: the edge that leaves it downward is the longer one.
    let plain = square().with_marks(Vec::new()).unwrap();
    let sloped = plain.extend(across(200.0), 10.0).unwrap();
    close(sloped.area(), 200.0 * 210.0, 1e-6);
}

// By hand. Half a disc of radius a = 100, let down by h = 40 at half its height. Each quarter becomes a cubic from (a, -h), upright,
// to (0, a), level, that reaches K = 4/3 (sqrt 2 - 1) a along its tangents for a chord of sqrt 2 a, so for one of
// sqrt(a² + 140²). Its share of the area is (12 a K + 10 a² + 6 h K - 3 K²) / 20, that of the flat a h.
#[test]
fn curves_keep_their_tangents() {
    let disc = Piece::new(
        "disc",
        vec![
            Edge::seam("flat", Curve::line((-100.0, 0.0), (100.0, 0.0)), 10.0),
            Edge::seam("round", Curve::arc((100.0, 0.0), (-100.0, 0.0), 1.0), 10.0),
        ],
    )
    .unwrap();
    let line = Line::new((-200.0, 50.0), (200.0, 50.0));
    let longer = disc.extend(line, 40.0).unwrap();
    let (a, h) = (100.0, 40.0);
    let reach = 4.0 / 3.0 * (libm::sqrt(2.0) - 1.0) * a;
    let k = reach * libm::hypot(a, a + h) / (libm::sqrt(2.0) * a);
    let quarter = (12.0 * a * k + 10.0 * a * a + 6.0 * h * k - 3.0 * k * k) / 20.0;
    close(longer.area(), 2.0 * quarter + a * h, 1e-6);
    let round: Vec<&Edge> = longer
        .edges()
        .iter()
        .filter(|e| e.name.starts_with("round"))
        .collect();
    assert_eq!(round.len(), 2);
    for pair in round.windows(2) {
        let (a, b) = (pair[0].curve.end_tangent(), pair[1].curve.start_tangent());
        close(a.cross(b), 0.0, 1e-9);
    }
    // Still upright at the flat, still level at the top.
    close(round[0].curve.start_tangent().x, 0.0, 1e-9);
    close(round[0].curve.end_tangent().y, 0.0, 1e-9);
    // One line through an arc twice: a segment that does not reach the ends.
    let bulging = Piece::new(
        "lens",
        vec![
            Edge::seam("left", Curve::arc((0.0, 300.0), (0.0, 0.0), 0.2), 10.0),
            Edge::seam("right", Curve::line((0.0, 0.0), (0.0, 300.0)), 10.0),
        ],
    )
    .unwrap();
    let upright = Line::new((-20.0, 0.0), (-20.0, 300.0));
    let wider = bulging.extend(upright, 15.0).unwrap();
    close(
        wider.bounds().width(),
        bulging.bounds().width() + 15.0,
        1e-6,
    );
}

// There and back is where it was, but for arcs that have become cubics.
#[test]
fn what_is_let_in_can_be_taken_out() {
    let mut random = Random(41);
    let mut done = 0;
    for round in 0..200 {
        let piece = random.piece(5 + round % 6);
        let angle = random.between(0.0, std::f64::consts::TAU);
        let (sin, cos) = libm::sincos(angle);
        let (x, y) = (random.between(-60.0, 60.0), random.between(-60.0, 60.0));
        let line = Line::new((x, y), (x + cos, y + sin));
        let by = random.between(5.0, 80.0);
        let longer = match piece.extend(line, by) {
            Ok(longer) => longer,
            Err(error) => panic!("{round}: {error}"),
        };
        let notches = |p: &Piece| p.edges().iter().map(|e| e.notches.len()).sum::<usize>();
        assert_eq!(notches(&longer), notches(&piece));
        let Ok(back) = longer.extend(line, -by) else {
            continue;
        };
        done += 1;
        close(back.area(), piece.area(), 1e-4 * piece.area());
        let straight = |p: &Piece| length_of(p, "edge 0");
        close(straight(&back), straight(&piece), 1e-6);
        // It grew by its width along the line, to the slant of what crosses there.
        let wide = longer.area() - piece.area();
        assert!(wide > by * 300.0 && wide < by * 800.0, "{wide} for {by}");
    }
    assert!(done > 180, "{done}");
}

// An edge in line with its neighbour but for 1° never meets it again within ten times what is moved: 5 / sin 1° is 286.
#[test]
fn an_edge_almost_in_line_does_not_run_on_far() {
    let kinked = |deg: f64| {
        let lean = 200.0 * libm::tan(deg.to_radians());
        let corners = [
            (0.0, 0.0),
            (200.0, 0.0),
            (200.0, 200.0),
            (200.0 - lean, 400.0),
            (0.0, 400.0),
        ];
        let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 5]);
        let names = ["hem", "lower", "upper", "top", "centre"];
        let edges = (0..5).map(|i| Edge::seam(names[i], side(i), 10.0));
        Piece::new("panel", edges.collect()).expect("a piece")
    };
    let error = kinked(1.0).shift_edges(&[2], 5.0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NoSolution, "by")
    );
    assert!(kinked(1.0).shift_edges(&[1, 2], 5.0).is_ok());
    // At 10° it runs on by 5 / sin 10° = 28.8 along the lower side.
    let wider = kinked(10.0).shift_edges(&[2], 5.0).unwrap();
    close(length_of(&wider, "lower"), 200.0 + 28.794, 1e-3);
    // Inward at a dent the neighbour would run on out of the piece.
    assert_eq!(
        kinked(-1.0).shift_edges(&[2], -5.0).unwrap_err().argument(),
        "by"
    );
}
