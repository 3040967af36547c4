//! Pieces as drawn.

mod common;

use common::{bounds, depth, flat, hypot, labels, lines, points, texts};
use recloth::ErrorKind;
use recloth::outline::{Corner, Curve, Cutout, Cutting, Dart, Edge, Hand, LineKind, Mark, Piece};
use recloth::tape::Style;
use recloth_sheet::kurbo::{BezPath, Line, ParamCurve, Point, Rect, Vec2};
use recloth_sheet::{
    Drawing, Pen, PieceOptions, Shape, SheetOptions, Tone, pdf, piece_drawing, sheets, svg,
};

fn ring(corners: &[(f64, f64)], edge: impl Fn(usize, Curve) -> Edge) -> Vec<Edge> {
    let next = |i: usize| corners[(i + 1) % corners.len()];
    (0..corners.len())
        .map(|i| edge(i, Curve::line(corners[i], next(i))))
        .collect()
}

/// A pocket 160 by 180, with allowances of 10.
fn pocket() -> Piece {
    let corners = [(0.0, 0.0), (160.0, 0.0), (160.0, 180.0), (0.0, 180.0)];
    Piece::new(
        "Patch pocket",
        ring(&corners, |_, curve| Edge::seam("side", curve, 10.0)),
    )
    .expect("a good piece")
}

/// Half a waistcoat front on the fold, invented.
fn front() -> Piece {
    let edges = vec![
        Edge::hem("hem", Curve::line((0.0, 0.0), (200.0, 0.0)), 30.0)
            .corner(Corner::MirroredOnThis),
        Edge::seam("side", Curve::line((200.0, 0.0), (210.0, 300.0)), 10.0).notch("waist", 90.0, 2),
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
    ];
    let marks = vec![
        Mark::Dart(Dart {
            name: "dart".into(),
            point: Point::new(110.0, 140.0),
            legs: [Point::new(100.0, 0.0), Point::new(120.0, 0.0)],
        }),
        Mark::Drill {
            name: "button".into(),
            at: Point::new(30.0, 400.0),
        },
        Mark::Buttonhole {
            name: "loop".into(),
            ends: [Point::new(30.0, 350.0), Point::new(30.0, 330.0)],
        },
        Mark::Line {
            kind: LineKind::Placement,
            name: "welt".into(),
            curve: Curve::line((80.0, 200.0), (180.0, 210.0)),
        },
    ];
    let cutting = Cutting {
        count: 1,
        hand: Hand::Identical,
        cloth: "linen".into(),
        interfacing: Some("canvas".into()),
    };
    Piece::new("Waistcoat, front", edges)
        .and_then(|piece| piece.with_marks(marks))
        .and_then(|piece| piece.with_cutting(cutting))
        .and_then(|piece| piece.with_grain(Line::new((60.0, 60.0), (60.0, 300.0))))
        .expect("a good piece")
}

fn drawn(piece: &Piece, options: PieceOptions) -> Drawing {
    piece_drawing(piece, &options).expect("a good piece")
}

#[test]
fn cut_line_and_seam_line_are_where_the_piece_has_them() {
    let drawing = drawn(&pocket(), PieceOptions::default());
    assert_eq!(
        bounds(&points(lines(&drawing, Pen::Cut))),
        Rect::new(-10.0, -10.0, 170.0, 190.0)
    );
    assert_eq!(
        bounds(&points(lines(&drawing, Pen::Seam))),
        Rect::new(0.0, 0.0, 160.0, 180.0)
    );
    assert!(lines(&drawing, Pen::Fold).is_empty());
}

#[test]
fn a_cutout_is_drawn_inside_and_a_wedge_as_deep_as_it_is_cut() {
    let window = ring(
        &[(60.0, 60.0), (100.0, 60.0), (100.0, 90.0), (60.0, 90.0)],
        |_, curve| Edge::seam("window", curve, 5.0),
    );
    let marks = vec![
        Mark::Cutout(Cutout {
            name: "window".into(),
            edges: window,
        }),
        Mark::Line {
            kind: LineKind::Fold,
            name: "fold".into(),
            curve: Curve::line((0.0, 150.0), (160.0, 150.0)),
        },
    ];
    let mut edges = pocket().edges().to_vec();
    edges[0] = edges[0].clone().wedge("middle", 80.0, 1);
    edges[0].notches[0].depth = Some(4.0);
    edges[2].corner = Corner::SteppedOnThis;
    let piece = Piece::new("Patch pocket", edges)
        .and_then(|piece| piece.with_marks(marks))
        .expect("a good piece");
    let drawing = drawn(&piece, PieceOptions::default());
    let cut = points(lines(&drawing, Pen::Cut));
    // By hand: 5 within the window.
    let inner: Vec<Point> = cut
        .into_iter()
        .filter(|p| p.x > 10.0 && p.x < 150.0 && p.y > 10.0 && p.y < 150.0)
        .collect();
    assert_eq!(bounds(&inner), Rect::new(65.0, 65.0, 95.0, 85.0));
    let seam = points(lines(&drawing, Pen::Seam));
    assert!(seam.contains(&Point::new(60.0, 60.0)) && seam.contains(&Point::new(100.0, 90.0)));
    // A wedge 4 deep and 4 wide, from the cut line at y = -10.
    assert_eq!(
        bounds(&points(lines(&drawing, Pen::Notch))),
        Rect::new(78.0, -10.0, 82.0, -6.0)
    );
    assert_eq!(
        bounds(&points(lines(&drawing, Pen::Fold))),
        Rect::new(0.0, 150.0, 160.0, 150.0)
    );
    // What cannot be made at a corner is said on the piece.
    let texts = texts(&drawing).join(" ");
    assert!(texts.contains("pointed, not as asked"), "{texts}");
}

#[test]
fn curves_are_drawn_true() {
    // The neck is an arc of bulge -0.3 on a chord of √(70² + 80²): its radius is chord (1 + b²) / (4 b). Its parallel at
    // 6 mm has the same centre.
    let piece = front();
    let drawing = drawn(&piece, PieceOptions::default());
    let chord = (70.0_f64 * 70.0 + 80.0 * 80.0).sqrt();
    let radius = chord * (1.0 + 0.09) / 1.2;
    // The centre lies outside the piece, on the normal of the chord's middle, at radius (1 - b²) / (1 + b²).
    let middle = Point::new(35.0, 480.0);
    let outward = Vec2::new(-80.0 / chord, 70.0 / chord);
    let centre = middle + outward * (radius * (1.0 - 0.09) / (1.0 + 0.09));
    let off = |p: &Point| hypot(p.x - centre.x, p.y - centre.y);
    let near = |paths: Vec<&BezPath>, wanted: f64| {
        points(paths)
            .iter()
            .filter(|p| (off(p) - wanted).abs() < 1e-3 && p.x < 75.0 && p.y > 430.0)
            .count()
    };
    assert!(near(lines(&drawing, Pen::Seam), radius) > 800);
    assert!(near(lines(&drawing, Pen::Cut), radius - 6.0) > 800);
}

#[test]
fn an_edge_on_the_fold_is_not_cut() {
    let drawing = drawn(&front(), PieceOptions::default());
    let on_fold = |p: &Point| p.x.abs() < 1e-9 && p.y > 1.0 && p.y < 439.0;
    assert!(!points(lines(&drawing, Pen::Cut)).iter().any(on_fold));
    assert!(points(lines(&drawing, Pen::Fold)).iter().any(on_fold));
    let texts = texts(&drawing);
    assert!(
        texts.contains(&"lay on the fold") && texts.contains(&"cut 1 on the fold"),
        "{texts:?}"
    );
}

#[test]
fn a_cutter_reads_name_count_hand_cloth_and_allowances() {
    let texts_of = |piece: &Piece, style| {
        let drawing = drawn(
            piece,
            PieceOptions {
                style,
                ..PieceOptions::default()
            },
        );
        texts(&drawing).join("\n")
    };
    let text = texts_of(&front(), Style::Mm);
    for wanted in [
        "Waistcoat, front",
        "linen, with canvas",
        "hem: 30 mm",
        "side: 10 mm",
        "armhole: 10 mm",
        "shoulder: 15 mm",
        "neck: 6 mm",
        "waist",
        "dart",
        "button",
        "loop",
        "welt",
    ] {
        assert!(text.contains(wanted), "{wanted} in {text}");
    }
    assert!(texts_of(&front(), Style::InchEighth).contains("side: 3/8 in"));
    let pair = Cutting {
        count: 4,
        hand: Hand::Mirrored,
        ..Cutting::default()
    };
    let pair = pocket().with_cutting(pair).unwrap();
    assert!(texts_of(&pair, Style::Mm).contains("cut 4: 2 as drawn, 2 mirrored"));
    let corners = [(0.0, 0.0), (300.0, 0.0), (300.0, 90.0), (0.0, 90.0)];
    let edges = ring(&corners, |i, curve| {
        let edge = Edge::seam(
            ["long", "end", "long", "end"][i],
            curve,
            if i == 1 { 0.0 } else { 6.0 },
        );
        if i == 0 { edge.already_cut() } else { edge }
    });
    let text = texts_of(&Piece::new("Band", edges).unwrap(), Style::Mm);
    assert!(
        text.contains("long: 6 mm, already cut") && text.contains("end: no allowance"),
        "{text}"
    );
}

#[test]
fn a_short_edge_cut_as_its_neighbour_need_not_be_named() {
    let corners = [
        (0.0, 0.0),
        (200.0, 0.0),
        (200.0, 200.0),
        (196.0, 204.0),
        (0.0, 204.0),
    ];
    let named = |short: f64| {
        let edges = ring(&corners, |i, curve| {
            Edge::seam(
                ["hem", "side", "snipped corner", "top", "centre"][i],
                curve,
                if i == 2 { short } else { 10.0 },
            )
        });
        let piece = Piece::new("Flap", edges).unwrap();
        texts(&drawn(&piece, PieceOptions::default())).join("\n")
    };
    assert!(!named(10.0).contains("snipped"), "{}", named(10.0));
    assert!(
        named(4.0).contains("snipped corner: 4 mm"),
        "{}",
        named(4.0)
    );
}

#[test]
fn an_edge_already_cut_is_its_own_cut_line() {
    let corners = [(0.0, 0.0), (300.0, 0.0), (300.0, 90.0), (0.0, 90.0)];
    let edges = ring(&corners, |_, curve| {
        Edge::seam("edge", curve, 6.0).already_cut()
    });
    let drawing = drawn(&Piece::new("Band", edges).unwrap(), PieceOptions::default());
    assert_eq!(
        bounds(&points(lines(&drawing, Pen::Cut))),
        Rect::new(0.0, 0.0, 300.0, 90.0)
    );
    let seam = bounds(&points(lines(&drawing, Pen::Seam)));
    assert!((seam.x0 - 6.0).abs() < 1e-9 && (seam.y1 - 84.0).abs() < 1e-9);
}

#[test]
fn notches_reach_from_the_cut_line_towards_the_seam() {
    let drawing = drawn(&front(), PieceOptions::default());
    let notches: Vec<Point> = lines(&drawing, Pen::Notch)
        .into_iter()
        .flat_map(|path| path.segments())
        .map(|segment| segment.start())
        .collect();
    assert_eq!(notches.len(), 2, "two marks side by side");
    // 90 mm up the side seam, a line from (200, 0) to (210, 300), and 10 mm out.
    let length = hypot(10.0, 300.0);
    let (along, out) = (
        (10.0 / length, 300.0 / length),
        (300.0 / length, -10.0 / length),
    );
    let at = Point::new(
        200.0 + 90.0 * along.0 + 10.0 * out.0,
        90.0 * along.1 + 10.0 * out.1,
    );
    let middle = notches[0].midpoint(notches[1]);
    assert!(
        hypot(middle.x - at.x, middle.y - at.y) < 1e-6,
        "{middle:?} {at:?}"
    );
    for notch in lines(&drawing, Pen::Notch) {
        let end = notch.segments().next().expect("a line").end();
        // 6 mm of the 10 mm of the way: a snip stops before the seam.
        let from_seam = (end.x - 200.0) * out.0 + end.y * out.1;
        assert!((from_seam - 4.0).abs() < 1e-6, "{from_seam}");
    }
}

#[test]
fn text_lies_on_no_line_and_on_no_other_text() {
    for (piece, scale, text) in [
        (front(), 1.0, 7.0),
        (pocket(), 1.0, 7.0),
        (front(), 0.3, 3.5),
    ] {
        let drawing = drawn(
            &piece,
            PieceOptions {
                scale,
                text,
                ..PieceOptions::default()
            },
        );
        let ink: Vec<&BezPath> = flat(&drawing.shapes)
            .into_iter()
            .filter_map(|shape| match shape {
                Shape::Line { path, .. } => Some(path),
                _ => None,
            })
            .collect();
        let ink = points(ink);
        let labels = labels(&drawing);
        assert!(labels.len() > 4);
        for (index, label) in labels.iter().enumerate() {
            let corners = label.corners();
            let worst = ink
                .iter()
                .map(|&point| depth(corners, point))
                .fold(f64::MIN, f64::max);
            assert!(worst <= 0.0, "{:?} is {worst} deep on a line", label.text);
            for other in &labels[..index] {
                let [a, b, c, d] = other.corners();
                let middle = a.midpoint(c);
                for point in [a, b, c, d, middle, a.midpoint(b), c.midpoint(d)] {
                    assert!(
                        depth(corners, point) <= 1e-9,
                        "{:?} on {:?}",
                        label.text,
                        other.text
                    );
                }
            }
        }
    }
}

#[test]
fn a_piece_too_narrow_for_text_has_it_below() {
    let corners = [(0.0, 0.0), (200.0, 0.0), (200.0, 4.0), (0.0, 4.0)];
    let edges = ring(&corners, |_, curve| Edge::seam("edge", curve, 3.0));
    let drawing = drawn(
        &Piece::new("Strap", edges).unwrap(),
        PieceOptions::default(),
    );
    let name = labels(&drawing)
        .into_iter()
        .find(|label| label.text == "Strap")
        .unwrap();
    assert!(name.at.y < -3.0);
    assert!(texts(&drawing).contains(&"edge: 3 mm"));
}

#[test]
fn a_small_picture_has_its_lines_to_scale() {
    let drawing = drawn(
        &pocket(),
        PieceOptions {
            scale: 0.25,
            text: 3.0,
            ..PieceOptions::default()
        },
    );
    assert_eq!(
        bounds(&points(lines(&drawing, Pen::Cut))),
        Rect::new(-2.5, -2.5, 42.5, 47.5)
    );
}

#[test]
fn the_grain_of_a_piece_without_a_grain_line_is_upright() {
    let drawing = drawn(&pocket(), PieceOptions::default());
    let grain = lines(&drawing, Pen::Grain);
    let ends = grain[0].segments().next().unwrap();
    assert_eq!(ends.start().x, ends.end().x);
    let heads = flat(&drawing.shapes)
        .iter()
        .filter(|s| {
            matches!(
                s,
                Shape::Area {
                    tone: Tone::Solid,
                    ..
                }
            )
        })
        .count();
    assert_eq!(heads, 2);
}

#[test]
fn pieces_go_through_to_paper_and_are_the_same_twice() {
    let make = || {
        let pieces = [
            drawn(&front(), PieceOptions::default()),
            drawn(&pocket(), PieceOptions::default()),
        ];
        let set = sheets("Waistcoat", &pieces, &SheetOptions::default()).unwrap();
        (
            svg(&pieces[0]).unwrap(),
            pdf("Waistcoat", &set.pages).unwrap(),
        )
    };
    assert_eq!(make(), make());
}

#[test]
fn bad_options_are_errors_that_name_them() {
    let refuse = |options| {
        let error = piece_drawing(&pocket(), &options).unwrap_err();
        (error.kind(), error.argument())
    };
    let good = PieceOptions::default();
    assert_eq!(
        refuse(PieceOptions {
            scale: f64::NAN,
            ..good
        }),
        (ErrorKind::NotFinite, "scale")
    );
    assert_eq!(
        refuse(PieceOptions { text: 0.0, ..good }),
        (ErrorKind::OutOfRange, "text")
    );
    assert_eq!(
        refuse(PieceOptions {
            tolerance: 0.0,
            ..good
        }),
        (ErrorKind::OutOfRange, "tolerance")
    );
}

#[test]
fn each_kind_of_line_has_its_own_stroke_and_says_what_for() {
    let kinds = [
        (LineKind::Plain, Pen::Mark, "row 0"),
        (LineKind::Fold, Pen::Fold, "row 1 (fold)"),
        (LineKind::Placement, Pen::Placement, "row 2 (place)"),
        (LineKind::Stitching, Pen::Seam, "row 3 (stitch)"),
        (LineKind::Slash, Pen::Slash, "row 4 (slash)"),
        (LineKind::Stripe, Pen::Stripe, "row 5 (stripe)"),
    ];
    let place = |index: usize| {
        let y = 30.0 + 25.0 * index as f64;
        [Point::new(20.0, y), Point::new(140.0, y)]
    };
    let marks = kinds.iter().enumerate().map(|(index, &(kind, ..))| {
        let [start, end] = place(index);
        Mark::Line {
            name: format!("row {index}"),
            kind,
            curve: Curve::line(start, end),
        }
    });
    let piece = pocket().with_marks(marks.collect()).expect("a good piece");
    let drawing = drawn(&piece, PieceOptions::default());
    let texts = texts(&drawing);
    for (index, (_, pen, text)) in kinds.into_iter().enumerate() {
        let ends = place(index);
        let found = lines(&drawing, pen)
            .iter()
            .any(|path| bounds(&points([*path])) == Rect::from_points(ends[0], ends[1]));
        assert!(found, "{text}");
        assert!(texts.contains(&text), "{text}: {texts:?}");
    }
    let looks = kinds.map(|(_, pen, _)| (pen.dashes(), (pen.width() * 100.0) as u32));
    for (index, one) in looks.iter().enumerate() {
        assert!(!looks[..index].contains(one), "{index}");
    }
    // The cover says so again, of the lines there are.
    let set = sheets("Set", &[drawing], &SheetOptions::default()).expect("sheets");
    let cover = &set.pages[0].drawing;
    let said = common::texts(cover);
    for what in [
        "cut",
        "sew",
        "slash when it is made up",
        "a stripe of the cloth lies here",
    ] {
        assert!(said.contains(&what), "{what}: {said:?}");
    }
    assert!(!lines(cover, Pen::Slash).is_empty());
    let plain = sheets(
        "Set",
        &[drawn(&pocket(), PieceOptions::default())],
        &SheetOptions::default(),
    );
    assert!(lines(&plain.expect("sheets").pages[0].drawing, Pen::Slash).is_empty());
}
