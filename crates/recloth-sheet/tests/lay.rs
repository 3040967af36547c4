//! Panels and the pieces on them, as drawn.

mod common;

use common::{bounds, depth, labels, lines, points, texts};
use recloth::ErrorKind;
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Group, LayPanel, LayPiece, Pen, Shape, lay_drawing, svg};

fn polygon(corners: &[(f64, f64)]) -> Vec<Point> {
    corners.iter().copied().map(Point::from).collect()
}

/// A panel 800 by 1000 with a hole, a flaw and two pieces, one of them tiny.
fn cloth() -> LayPanel {
    let piece = |label: &str, corners: &[(f64, f64)]| LayPiece {
        label: label.into(),
        outline: polygon(corners),
        grain_deg: Some(90.0),
    };
    LayPanel {
        name: "Back".into(),
        note: "800 × 1000 mm".into(),
        outline: polygon(&[(0.0, 0.0), (800.0, 0.0), (800.0, 1000.0), (0.0, 1000.0)]),
        holes: vec![polygon(&[(600.0, 600.0), (650.0, 600.0), (650.0, 650.0)])],
        flaws: vec![
            polygon(&[(100.0, 700.0), (200.0, 700.0), (150.0, 800.0)]),
            polygon(&[(400.0, 900.0)]),
        ],
        grain_deg: 90.0,
        fold: None,
        left: Vec::new(),
        pieces: vec![
            piece(
                "Skirt, front",
                &[(50.0, 50.0), (450.0, 50.0), (400.0, 600.0), (100.0, 600.0)],
            ),
            piece(
                "Button loop",
                &[(500.0, 50.0), (510.0, 50.0), (510.0, 60.0), (500.0, 60.0)],
            ),
        ],
    }
}

#[test]
fn a_lay_is_to_one_round_scale_and_says_it() {
    // 800 x 1000 in 103 x 200: the width rules, 7.77, so 1 : 8; the sleeve beside it (or below) is to the same scale.
    let sleeve = LayPanel {
        name: "Sleeve".into(),
        outline: polygon(&[(10.0, 10.0), (250.0, 10.0), (250.0, 410.0), (10.0, 410.0)]),
        ..LayPanel::default()
    };
    let drawing = lay_drawing("Lay", &[cloth(), sleeve], 103.0, 200.0).unwrap();
    let panels = lines(&drawing, Pen::Panel);
    let first = bounds(&points([panels[0]]));
    assert!((first.width() - 100.0).abs() < 1e-9 && (first.height() - 125.0).abs() < 1e-9);
    let second = bounds(&points([panels[1]]));
    assert!((second.width() - 30.0).abs() < 1e-9 && (second.height() - 50.0).abs() < 1e-9);
    assert!(second.y1 < first.y0, "below the first, where there is room");
    let texts = texts(&drawing);
    assert!(texts.contains(&"500 mm, scale 1 : 8"), "{texts:?}");
    for wanted in ["Back", "800 × 1000 mm", "Sleeve", "Skirt, front"] {
        assert!(texts.contains(&wanted), "{wanted} in {texts:?}");
    }
}

#[test]
fn a_lay_is_no_wider_than_asked_so_that_its_scale_stays_true() {
    let panel = |width: f64, height: f64| LayPanel {
        name: "Panel".into(),
        outline: polygon(&[(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]),
        ..LayPanel::default()
    };
    for (width, height) in [
        (540.0, 690.0),
        (150.0, 1590.0),
        (480.0, 100.0),
        (60.0, 60.0),
        (900.0, 1200.0),
    ] {
        for wide in [84.0, 100.0, 180.0] {
            let drawing = lay_drawing("Lay", &[panel(width, height)], wide, 150.0).unwrap();
            let drawn = drawing.bounds().unwrap().width();
            assert!(
                drawn <= wide + 1.5,
                "{width} by {height} in {wide}: {drawn}"
            );
        }
    }
}

#[test]
fn a_piece_too_small_for_its_name_has_a_number_explained_below() {
    let drawing = lay_drawing("Lay", &[cloth()], 100.0, 200.0).unwrap();
    let texts = texts(&drawing);
    assert!(
        texts.contains(&"1") && texts.contains(&"1 = Button loop"),
        "{texts:?}"
    );
}

#[test]
fn text_of_a_lay_lies_on_no_line() {
    let drawing = lay_drawing("Lay", &[cloth()], 180.0, 200.0).unwrap();
    let groups: Vec<&Group> = drawing
        .shapes
        .iter()
        .filter_map(|shape| match shape {
            Shape::Group(group) if group.id.is_empty() => Some(group),
            _ => None,
        })
        .collect();
    assert_eq!(groups.len(), 1);
    let ink: Vec<&BezPath> = groups[0]
        .shapes
        .iter()
        .filter_map(|shape| match shape {
            Shape::Line { path, .. } => Some(path),
            _ => None,
        })
        .collect();
    let ink = points(ink);
    for label in labels(&drawing) {
        let corners = label.corners();
        assert!(
            ink.iter().all(|&point| depth(corners, point) <= 0.0),
            "{:?}",
            label.text
        );
    }
}

#[test]
fn a_fold_is_drawn_across_its_panel_and_no_words_lie_over_it() {
    // Two points of the line, of which one lies far outside the panel; 1 : 8, as above.
    let mut folded = cloth();
    folded.holes.clear();
    let drawn = |x: f64, y: f64| {
        let fold = Some([Point::new(x, 300.0), Point::new(y, 9000.0)]);
        let panel = LayPanel {
            fold,
            ..folded.clone()
        };
        lay_drawing("Lay", &[panel], 103.0, 200.0).unwrap()
    };
    let drawing = drawn(250.0, 250.0);
    let fold = lines(&drawing, Pen::Fold);
    assert_eq!(fold.len(), 1);
    let (fold, cloth) = (
        bounds(&points([fold[0]])),
        bounds(&points([lines(&drawing, Pen::Panel)[0]])),
    );
    assert!((fold.x0 - cloth.x0 - 250.0 / 8.0).abs() < 1e-9 && fold.width() < 1e-9);
    assert!((fold.y0 - cloth.y0).abs() < 1e-9 && (fold.y1 - cloth.y1).abs() < 1e-9);
    for label in labels(&drawing) {
        let corners = label.corners();
        for step in 0..=100 {
            let y = fold.y0 + fold.height() * f64::from(step) / 100.0;
            assert!(
                depth(corners, Point::new(fold.x0, y)) <= 0.0,
                "{:?}",
                label.text
            );
        }
    }
    // A line that passes the panel by is not drawn.
    assert!(lines(&drawn(900.0, 900.0), Pen::Fold).is_empty());
}

#[test]
fn bad_lays_are_errors_that_name_them() {
    let refuse = |panels: &[LayPanel], width| {
        let error = lay_drawing("", panels, width, 200.0).unwrap_err();
        (error.kind(), error.argument(), error.at())
    };
    assert_eq!(refuse(&[], 100.0), (ErrorKind::Count, "panels", None));
    assert_eq!(
        refuse(&[cloth()], 0.0),
        (ErrorKind::OutOfRange, "width", None)
    );
    assert_eq!(
        refuse(&[cloth(), LayPanel::default()], 100.0),
        (ErrorKind::Count, "outline", Some(1))
    );
    let mut bad = cloth();
    bad.pieces[0].outline[1].x = f64::NAN;
    assert_eq!(
        refuse(&[bad], 100.0),
        (ErrorKind::NotFinite, "coordinate", Some(0))
    );
    let mut bad = cloth();
    bad.grain_deg = f64::INFINITY;
    assert_eq!(
        refuse(&[bad], 100.0),
        (ErrorKind::NotFinite, "grain_deg", Some(0))
    );
}

#[test]
fn what_is_left_is_a_fine_line_on_the_cloth() {
    let with = LayPanel {
        left: vec![
            [(0.0, 0.0), (40.0, 0.0), (40.0, 30.0), (0.0, 30.0)]
                .map(Point::from)
                .to_vec(),
        ],
        ..cloth()
    };
    let [plain, with] = [cloth(), with].map(|panel| {
        let drawing = lay_drawing("lay", &[panel], 200.0, 200.0).unwrap();
        svg(&drawing).unwrap().matches("<path").count()
    });
    assert_eq!(with, plain + 1);
    let beyond = LayPanel {
        left: vec![vec![Point::new(2e5, 0.0); 3]],
        ..cloth()
    };
    let error = lay_drawing("lay", &[beyond], 200.0, 200.0).unwrap_err();
    assert_eq!(error.argument(), "coordinate");
}
