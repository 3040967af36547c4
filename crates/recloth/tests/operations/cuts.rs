//! Pieces split, joined again, slashed and spread.

use super::*;

#[test]
fn both_parts_of_a_split_piece_make_it_up() {
    let mut random = Random(7);
    for round in 0..300 {
        let piece = random.piece(5 + round % 6);
        let marks = vec![
            Mark::Drill {
                name: "d".into(),
                at: Point::new(random.between(-90.0, 90.0), random.between(-90.0, 90.0)),
            },
            Mark::Line {
                kind: LineKind::Placement,
                name: "l".into(),
                curve: Curve::line((-90.0, 10.0), (90.0, -10.0)),
            },
        ];
        let piece = piece.with_marks(marks).unwrap();
        let end = |angle: f64| {
            let (sin, cos) = libm::sincos(angle);
            Point::new(500.0 * cos, 500.0 * sin)
        };
        let angle = random.between(0.0, 6.0);
        let (a, b) = (end(angle), end(angle + random.between(2.8, 3.5)));
        let cut = match round % 3 {
            0 => Curve::line(a, b),
            1 => Curve::arc(a, b, random.between(-0.3, 0.3)),
            _ => {
                let aside = Vec2::new(b.y - a.y, a.x - b.x) * 0.15;
                Curve::cubic(a, a.lerp(b, 0.3) + aside, b.lerp(a, 0.3) - aside, b)
            }
        };
        let notches = vec![50.0, 120.0];
        let seam = NewSeam {
            name: "cut".into(),
            allowance: 8.0,
            notches,
        };
        let [left, right] = match piece.split(&cut, &seam) {
            Ok(parts) => parts,
            // A wavy cut near a corner may cross more than twice, which is refused.
            Err(error) => {
                assert_eq!(
                    (error.kind(), error.argument()),
                    (ErrorKind::NoSolution, "cut"),
                    "{round}: {error}"
                );
                assert!(error.value() > 2.0);
                continue;
            }
        };
        close(left.area() + right.area(), piece.area(), 1e-3);
        let (l, r) = (left.edge("cut").unwrap(), right.edge("cut").unwrap());
        let walk = left.walk(&[l], &right, &[r], Way::Against).unwrap();
        // The outline is met within a millionth of a millimetre, at both ends.
        close(walk.difference, 0.0, 5e-6);
        assert!(
            walk.notches
                .iter()
                .all(|n| n.difference().unwrap().abs() < 5e-6)
        );
        let notches = |p: &Piece| p.edges().iter().map(|e| e.notches.len()).sum::<usize>();
        assert_eq!(notches(&left) + notches(&right), notches(&piece) + 4);
        let around = |p: &Piece| p.edges().iter().map(Edge::length).sum::<f64>();
        close(
            around(&left) + around(&right),
            around(&piece) + 2.0 * left.edges()[l].length(),
            1e-5,
        );
        let drills = |p: &Piece| p.marks().iter().filter(|m| m.name() == "d").count();
        assert_eq!(drills(&left) + drills(&right), 1);
        let lines = |p: &Piece| {
            let line = |m: &Mark| match m {
                Mark::Line { curve, .. } => curve.length(),
                _ => 0.0,
            };
            p.marks().iter().map(line).sum::<f64>()
        };
        close(lines(&left) + lines(&right), lines(&piece), 1e-9);
        assert_eq!((left.name(), right.cutting().count), ("random 1", 2));
    }
}

// What a spread adds is known: a hinged slash a triangle, a parallel one a rectangle.
#[test]
fn a_spread_adds_what_it_opens() {
    let mut random = Random(11);
    let mut spread = 0;
    for round in 0..300 {
        let piece = random.piece(6 + round % 5);
        let (a, b) = (random.place(&piece), random.place(&piece));
        let point = |p: Place| piece.at(p.edge, p.distance).unwrap().0;
        let long = size(point(a) - point(b));
        if long < 250.0 {
            continue;
        }
        let open_by = random.between(5.0, 60.0);
        let hinge_by = [0.0, open_by][round % 2];
        let slash = Slash {
            open: a,
            hinge: b,
            open_by,
            hinge_by,
        };
        let wider = piece.slash_and_spread(&[slash]).unwrap();
        spread += 1;
        let added = if hinge_by == 0.0 {
            let half = libm::asin(open_by / (2.0 * long));
            long * long * libm::sin(2.0 * half) / 2.0
        } else {
            long * open_by
        };
        close(wider.area(), piece.area() + added, 1e-5);
        let around = |p: &Piece| p.edges().iter().map(Edge::length).sum::<f64>();
        close(around(&wider), around(&piece) + open_by + hinge_by, 1e-6);
    }
    assert!(spread > 150, "{spread}");
}

// By hand. Three slashes at 50, 100, 150 of a strip 200 wide, each opened by 30 at the top and 10 at the foot.
#[test]
fn several_slashes_open_one_after_the_other() {
    let corners = [(0.0, 0.0), (200.0, 0.0), (200.0, 300.0), (0.0, 300.0)];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
    let names = ["foot", "right", "top", "left"];
    let strip = Piece::new(
        "strip",
        (0..4)
            .map(|i| Edge::seam(names[i], side(i), 10.0))
            .collect(),
    )
    .unwrap();
    let slash = |x: f64| Slash {
        open: strip.place((x, 300.0)).0,
        hinge: strip.place((x, 0.0)).0,
        open_by: 30.0,
        hinge_by: 10.0,
    };
    // In any order.
    let wide = strip
        .slash_and_spread(&[slash(100.0), slash(50.0), slash(150.0)])
        .unwrap();
    close(length_of(&wide, "foot"), 230.0, 1e-9);
    for name in ["left", "right"] {
        close(length_of(&wide, name), 300.0, 1e-9);
    }
    assert_eq!(wide.edges().len(), 2 + 2 * 7);
    // Ends of one slash: opened by 10 and turned until 20 more, so 30 apart but for the cosine of the turn.
    let turn = 2.0 * libm::asin(20.0 / 600.0);
    let gap = libm::hypot(
        10.0 + 20.0 * libm::cos(turn / 2.0),
        20.0 * libm::sin(turn / 2.0),
    );
    let top: Vec<f64> = wide
        .edges()
        .iter()
        .filter(|e| e.name.starts_with("top"))
        .map(Edge::length)
        .collect();
    assert_eq!(top.len(), 7);
    close(top[1], gap, 1e-9);
    // A fan: both slashes end at one hinge.
    let hinge = strip.place((100.0, 0.0)).0;
    let fan = |x: f64| Slash {
        hinge,
        open_by: 30.0,
        hinge_by: 0.0,
        ..slash(x)
    };
    let fanned = strip.slash_and_spread(&[fan(50.0), fan(150.0)]).unwrap();
    close(length_of(&fanned, "top"), 260.0, 1e-9);
    // Slashes that cross are not.
    let crossing = [
        Slash {
            hinge: slash(150.0).hinge,
            ..slash(50.0)
        },
        Slash {
            hinge: slash(50.0).hinge,
            ..slash(150.0)
        },
    ];
    let error: Error = strip.slash_and_spread(&crossing).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NoSolution, "slashes")
    );
}

#[test]
fn what_cannot_be_cut_is_named() {
    let square = square();
    let at = |x: f64, y: f64| square.place((x, y)).0;
    let to = |at: Place| {
        [Opening {
            name: "n".into(),
            at,
            share: 1.0,
        }]
    };
    let gone = square.turn_dart("none", &to(at(0.0, 100.0))).unwrap_err();
    assert_eq!(
        (gone.kind(), gone.argument()),
        (ErrorKind::NoSolution, "dart")
    );
    let mouth = square
        .turn_dart("waist", &to(at(100.0, 200.0)))
        .unwrap_err();
    assert_eq!(
        (mouth.kind(), mouth.argument()),
        (ErrorKind::NoSolution, "at")
    );
    let off = square
        .turn_dart(
            "waist",
            &to(Place {
                edge: 9,
                distance: 0.0,
            }),
        )
        .unwrap_err();
    assert_eq!(
        (off.kind(), off.argument(), off.max()),
        (ErrorKind::OutOfRange, "at", 5.0)
    );
    let share = square
        .turn_dart(
            "waist",
            &[Opening {
                name: "n".into(),
                at: at(0.0, 100.0),
                share: f64::NAN,
            }],
        )
        .unwrap_err();
    assert_eq!(
        (share.kind(), share.argument()),
        (ErrorKind::NotFinite, "share")
    );
    let seam = NewSeam {
        name: "yoke".into(),
        allowance: 10.0,
        notches: Vec::new(),
    };
    let dart = square
        .split(&Curve::line((-10.0, 150.0), (210.0, 150.0)), &seam)
        .unwrap_err();
    assert_eq!((dart.argument(), dart.at()), ("mark", Some(0)));
    let beside = square
        .split(&Curve::line((-10.0, 300.0), (210.0, 300.0)), &seam)
        .unwrap_err();
    assert_eq!((beside.argument(), beside.value()), ("cut", 0.0));
    assert!(
        square
            .split(&Curve::line((-10.0, 50.0), (210.0, 50.0)), &seam)
            .is_ok()
    );
    // On a fold only a split may cut.
    let half = Piece::new(
        "half",
        vec![
            Edge::hem("hem", Curve::line((0.0, 0.0), (100.0, 0.0)), 20.0),
            Edge::seam("side", Curve::line((100.0, 0.0), (100.0, 300.0)), 10.0),
            Edge::seam("top", Curve::line((100.0, 300.0), (0.0, 300.0)), 10.0),
            Edge::fold("centre", Curve::line((0.0, 300.0), (0.0, 0.0))),
        ],
    )
    .unwrap();
    let [upper, lower] = half
        .split(&Curve::line((-5.0, 200.0), (105.0, 200.0)), &seam)
        .unwrap();
    assert!(upper.fold().is_some() && lower.fold().is_some());
    let open = half.place((0.0, 150.0)).0;
    let slash = Slash {
        open,
        hinge: half.place((100.0, 150.0)).0,
        open_by: 10.0,
        hinge_by: 0.0,
    };
    let fold = half.slash_and_spread(&[slash]).unwrap_err();
    assert_eq!(
        (fold.kind(), fold.argument(), fold.at()),
        (ErrorKind::NoSolution, "open", Some(0))
    );
}

#[test]
fn what_was_split_is_joined_again() {
    let mut random = Random(23);
    let mut joined = 0;
    for round in 0..100 {
        let piece = random.piece(5 + round % 4);
        let angle = random.between(0.0, 6.0);
        let (sin, cos) = libm::sincos(angle);
        let cut = Curve::arc(
            (500.0 * cos, 500.0 * sin),
            (-500.0 * cos, -500.0 * sin),
            random.between(-0.2, 0.2),
        );
        let seam = NewSeam {
            name: "cut".into(),
            allowance: 8.0,
            notches: Vec::new(),
        };
        let Ok([left, right]) = piece.split(&cut, &seam) else {
            continue;
        };
        // However the other part lies.
        let moved = right
            .turned(random.between(-180.0, 180.0))
            .shifted((random.between(-900.0, 900.0), 70.0));
        let one = left
            .join(
                left.edge("cut").unwrap(),
                &moved,
                moved.edge("cut").unwrap(),
                0.01,
            )
            .unwrap();
        joined += 1;
        assert!(one.gap < 1e-5, "{}", one.gap);
        close(one.piece.area(), piece.area(), 2e-2);
        let around = |p: &Piece| p.edges().iter().map(Edge::length).sum::<f64>();
        close(around(&one.piece), around(&piece), 1e-4);
    }
    assert!(joined > 80, "{joined}");
    let square = square();
    let short = square.join(0, &square, 2, 1.0).unwrap_err();
    assert_eq!((short.argument(), short.value()), ("difference", 110.0));
    let mut bent = square.edges().to_vec();
    bent[0].curve = Curve::arc((0.0, 0.0), (200.0, 0.0), 0.05);
    let bent = Piece::new("bent", bent).unwrap();
    let gap = square.join(1, &bent, 0, 3.0).unwrap_err();
    assert_eq!(gap.argument(), "gap");
    // The arc rises 0.05 · 200 / 2 = 5 over its chord.
    close(gap.value(), 5.0, 1e-3);
}
