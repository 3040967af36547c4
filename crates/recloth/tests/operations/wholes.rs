//! Whole pieces: scaled, symmetrised, faced, their edges shifted.

use super::*;

// By hand. A half disc of radius 100 on its flat edge, grain along the flat: stretched to 1 / 0.9 along and 1 / 0.96 across
// it is half an ellipse of that area.
#[test]
fn a_piece_is_cut_for_what_the_wash_will_do() {
    let disc = Piece::new(
        "pocket",
        vec![
            Edge::seam("flat", Curve::line((-100.0, 0.0), (100.0, 0.0)), 10.0)
                .notch("middle", 100.0, 1),
            Edge::seam("round", Curve::arc((100.0, 0.0), (-100.0, 0.0), 1.0), 10.0).notch(
                "top",
                50.0 * std::f64::consts::PI,
                1,
            ),
        ],
    )
    .unwrap();
    let along = disc
        .clone()
        .with_grain(Line::new((-50.0, 20.0), (50.0, 20.0)))
        .unwrap();
    let cut = along.scale_for_change(-10.0, -4.0).unwrap();
    let area = std::f64::consts::PI / 2.0 * 1e4 / (0.9 * 0.96);
    close(cut.area(), area, 0.3);
    close(cut.bounds().width(), 200.0 / 0.9, 1e-6);
    close(cut.bounds().height(), 100.0 / 0.96, 2e-3);
    assert!(cut.edges().iter().any(|e| e.name == "round 2"));
    for edge in cut.edges().iter().filter(|e| e.name.starts_with("round")) {
        for step in 0..=20 {
            let p = edge.curve.at(edge.length() * f64::from(step) / 20.0).0;
            let (x, y) = (p.x * 0.9, p.y * 0.96);
            close(libm::hypot(x, y), 100.0, 1e-3);
        }
    }
    let top: Vec<f64> = cut
        .edges()
        .iter()
        .filter(|e| e.name.starts_with("round"))
        .flat_map(|e| e.notches.iter().map(|n| e.curve.at(n.distance).0.y))
        .collect();
    assert_eq!(top.len(), 1);
    close(top[0], 100.0 / 0.96, 2e-3);
    // Alike both ways it stays an arc, and upright grain swaps the ways.
    let even = along.scale_for_change(-10.0, -10.0).unwrap();
    close(even.area(), std::f64::consts::PI / 2.0 * 1e4 / 0.81, 1e-6);
    assert_eq!(even.edges().len(), 2);
    let upright = disc.scale_for_change(-10.0, -4.0).unwrap();
    close(upright.bounds().width(), 200.0 / 0.96, 1e-9);
    assert_eq!(disc.scale_for_change(0.0, 0.0).unwrap(), disc);
    assert_eq!(
        disc.scale_for_change(-95.0, 0.0).unwrap_err().argument(),
        "along_pct"
    );
}

// By hand. The right half is 4 wider at the top and 2 at the hem: its fellow's middle is 2 and 1 out.
#[test]
fn halves_are_compared_before_they_are_averaged() {
    let whole = Piece::new(
        "back",
        vec![
            Edge::hem("hem right", Curve::line((0.0, 0.0), (202.0, 0.0)), 20.0),
            Edge::seam(
                "side right",
                Curve::line((202.0, 0.0), (184.0, 300.0)),
                10.0,
            ),
            Edge::seam("top right", Curve::line((184.0, 300.0), (0.0, 300.0)), 10.0),
            Edge::seam("top left", Curve::line((0.0, 300.0), (-180.0, 300.0)), 10.0),
            Edge::seam(
                "side left",
                Curve::line((-180.0, 300.0), (-200.0, 0.0)),
                10.0,
            ),
            Edge::hem("hem left", Curve::line((-200.0, 0.0), (0.0, 0.0)), 20.0),
        ],
    )
    .unwrap();
    let axis = Line::new((0.0, 0.0), (0.0, 300.0));
    let halves = whole.symmetrise(axis, 5.0).unwrap();
    close(halves.largest, 4.0, 1e-12);
    assert_eq!(whole.edges()[halves.edge].name, "top left");
    close(halves.half.bounds().x0, -201.0, 1e-12);
    close(length_of(&halves.half, "top left"), 182.0, 1e-12);
    assert!(halves.half.fold().is_some());
    let both = halves.half.unfold().unwrap();
    close(both.area(), (402.0 + 364.0) / 2.0 * 300.0, 1e-6);
    // A button on the left alone, a pair, and one on the axis.
    let drill = |x: f64| Mark::Drill {
        name: "button".into(),
        at: Point::new(x, 100.0),
    };
    let marks = vec![drill(-50.0), drill(-90.0), drill(92.0), drill(0.0)];
    let marked = whole.clone().with_marks(marks).unwrap();
    let marked = marked.symmetrise(axis, 5.0).unwrap();
    assert_eq!((marked.alone, marked.half.marks().len()), (vec![0], 3));
    let error = whole.symmetrise(axis, 3.0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument(), error.at()),
        (ErrorKind::OutOfRange, "difference", Some(3))
    );
    close(error.value(), 4.0, 1e-12);
    let off = whole
        .symmetrise(Line::new((0.0, 0.0), (5.0, 300.0)), 5.0)
        .unwrap_err();
    assert_eq!((off.argument(), off.value()), ("axis", 5.0));
    let odd = whole
        .symmetrise(Line::new((0.0, 0.0), (184.0, 300.0)), 5.0)
        .unwrap_err();
    assert_eq!(
        (odd.kind(), odd.argument()),
        (ErrorKind::NoSolution, "axis")
    );
}

// An edge that ends square to its neighbour but for rounding: its parallel inside leaves no spike there.
#[test]
fn a_parallel_has_no_spikes() {
    let front = neckline(0.0, 50.0);
    let line = front.seam_line(0.04).unwrap();
    assert_eq!(line.segments().len(), 5);
    close(
        line.length(),
        250.0 + 500.0 + 120.0 + 130.0 * std::f64::consts::FRAC_PI_2 + 370.0,
        1e-5,
    );
}

/// Half a front, 250 by 500, with a round neck of radius 80.
fn neckline(seam: f64, neck: f64) -> Piece {
    let corners = [
        (0.0, 0.0),
        (250.0, 0.0),
        (250.0, 500.0),
        (80.0, 500.0),
        (0.0, 420.0),
    ];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 5]);
    let edges = vec![
        Edge::hem("hem", side(0), seam),
        Edge::seam("side", side(1), seam),
        Edge::seam("shoulder", side(2), seam),
        Edge::seam(
            "neck",
            Curve::arc(corners[3], corners[4], -0.41421356),
            neck,
        )
        .already_cut()
        .notch("middle", 60.0, 1),
        Edge::fold("centre", side(4)),
    ];
    Piece::new("front", edges).expect("a front")
}

// By hand. A facing 50 deep of a neck of radius 80 is a quarter of the ring from 80 to 130. Rolled by 2 its outer edge has the
// radius 82. Shoulder and neck faced together make an L.
#[test]
fn a_facing_follows_its_edges() {
    let front = neckline(15.0, 0.0);
    let asked = Facing {
        name: "facing".into(),
        depth: 50.0,
        roll: 0.0,
        inner_allowance: 6.0,
    };
    let neck = front.facing(&[3], &asked).unwrap();
    let quarter =
        |outer: f64, inner: f64| (outer * outer - inner * inner) * std::f64::consts::FRAC_PI_4;
    close(neck.area(), quarter(130.0, 80.0), 1e-3);
    assert!(neck.fold().is_some());
    assert_eq!(neck.edges().len(), 4);
    let shoulder = &neck.edges()[neck.edge("shoulder").unwrap()];
    close(shoulder.length(), 50.0, 1e-6);
    assert_eq!(shoulder.allowance, 15.0);
    assert_eq!(
        neck.edges()[neck.edge("neck").unwrap()].notches[0].distance,
        60.0
    );
    assert_eq!(neck.edges()[neck.edge("inner").unwrap()].allowance, 6.0);
    let rolled = front
        .facing(
            &[3],
            &Facing {
                roll: 2.0,
                ..asked.clone()
            },
        )
        .unwrap();
    close(rolled.area(), quarter(130.0, 82.0), 1e-3);
    close(
        length_of(&rolled, "neck"),
        82.0 * std::f64::consts::FRAC_PI_2,
        1e-4,
    );
    // Marks that lie on the facing go along; of a line that leaves it, the 40 that do not. By hand: 60 right and down of the
    // neck's centre is 84.85 from it, 81 down lies in what is rolled away.
    let at = |radius: f64| {
        let off = radius * std::f64::consts::FRAC_1_SQRT_2;
        Point::new(off, 500.0 - off)
    };
    let drill = |name: &str, at: Point| Mark::Drill {
        name: name.into(),
        at,
    };
    let marked = front
        .clone()
        .with_marks(vec![
            drill("button", at(84.85)),
            drill("edge", at(81.0)),
            drill("pocket", at(200.0)),
            Mark::Line {
                name: "crease".into(),
                kind: LineKind::Fold,
                curve: Curve::line(at(90.0), at(200.0)),
            },
        ])
        .unwrap();
    let kept = |roll: f64| {
        let asked = Facing {
            roll,
            ..asked.clone()
        };
        marked.facing(&[3], &asked).unwrap().marks().to_vec()
    };
    let names = |marks: &[Mark]| -> Vec<String> { marks.iter().map(|m| m.name().into()).collect() };
    assert_eq!(names(&kept(0.0)), ["button", "edge", "crease"]);
    let rolled = kept(2.0);
    assert_eq!(names(&rolled), ["button", "crease"]);
    let Mark::Line { curve, kind, .. } = &rolled[1] else {
        panic!("{rolled:?}")
    };
    close(curve.length(), 40.0, 1e-3);
    assert_eq!(*kind, LineKind::Fold);
    let both = front
        .facing(
            &[2, 3],
            &Facing {
                depth: 40.0,
                ..asked.clone()
            },
        )
        .unwrap();
    // The shoulder's strip, and the neck's ring below it.
    let below = (14_400.0 * libm::acos(40.0 / 120.0) - 40.0 * libm::sqrt(14_400.0 - 1600.0)) / 2.0
        - 6_400.0 * std::f64::consts::FRAC_PI_4
        + 80.0 * 40.0 * libm::sqrt(0.75) / 2.0
        + 6_400.0 * libm::asin(0.5) / 2.0;
    let strip =
        250.0 * 40.0 - (80.0 * 40.0 * libm::sqrt(0.75) / 2.0 + 6_400.0 * libm::asin(0.5) / 2.0);
    close(both.area(), strip + below, 0.05);
    let deep = front
        .facing(
            &[3],
            &Facing {
                depth: 600.0,
                ..asked.clone()
            },
        )
        .unwrap_err();
    assert_eq!(
        (deep.kind(), deep.argument()),
        (ErrorKind::NoSolution, "depth")
    );
    let apart = front.facing(&[1, 3], &asked).unwrap_err();
    assert_eq!((apart.argument(), apart.at()), ("edge", Some(1)));
}

#[test]
fn shifted_edges_stay_parallel() {
    let front = neckline(15.0, 0.0);
    let wider = front.shift_edges(&[1], 12.0).unwrap();
    close(wider.bounds().x1, 262.0, 1e-12);
    close(length_of(&wider, "shoulder"), 182.0, 1e-9);
    // A neck let out inward: smaller by 10, its notch square across.
    let higher = front.shift_edges(&[3], 10.0).unwrap();
    close(
        length_of(&higher, "neck"),
        70.0 * std::f64::consts::FRAC_PI_2,
        1e-4,
    );
    let neck = &higher.edges()[higher.edge("neck").unwrap()];
    close(neck.notches[0].distance, 60.0 * 70.0 / 80.0, 1e-4);
    // There and back.
    let back = higher.shift_edges(&[3], -10.0).unwrap();
    close(back.area(), front.area(), 1e-3);
    let mut random = Random(31);
    for round in 0..60 {
        let piece = random.piece(5 + round % 4);
        let edge = random.place(&piece).edge;
        let by = random.between(-20.0, 20.0);
        let Ok(moved) = piece.shift_edges(&[edge], by) else {
            continue;
        };
        let name = piece.edges()[edge].name.as_str();
        for part in moved
            .edges()
            .iter()
            .filter(|e| e.name == name || e.name.starts_with(&format!("{name} ")))
        {
            let (middle, _) = part.curve.at(part.length() / 2.0);
            let off = piece.edges()[edge].curve.nearest(middle).0;
            // Beyond its ends a moved edge runs on along its tangents.
            assert!(off > by.abs() - 0.03, "{round}: {off} for {by} {name}");
        }
        let notches = |p: &Piece| p.edges().iter().map(|e| e.notches.len()).sum::<usize>();
        assert_eq!(notches(&moved), notches(&piece));
    }
    assert_eq!(front.shift_edges(&[4], 5.0).unwrap_err().argument(), "edge");
    assert_eq!(
        front.shift_edges(&[1], -300.0).unwrap_err().argument(),
        "by"
    );
}
