//! Panels by corners, tape, offsets and photograph.

use crate::apart;
use kurbo::Point;
use recloth::ErrorKind;
use recloth::doubt::{LENS_BOW, PHOTO_REACH, SPARE_MISFIT, TRIANGLE_FLAT};
use recloth::panel::{CornerReading, Faces, Flaw, Panel, SpareReading, Taken};

pub(crate) fn rectangle(width: f64, height: f64) -> Vec<Point> {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
        .map(Point::from)
        .into()
}

fn corner(start: u32, end: u32, from_start: f64, from_end: f64) -> CornerReading {
    CornerReading {
        start,
        end,
        from_start,
        from_end,
        right: false,
    }
}

fn spare(from: usize, to: usize, reading: f64) -> SpareReading {
    SpareReading { from, to, reading }
}

#[test]
fn a_panel_is_what_was_given() {
    let panel = Panel::new("back", rectangle(400.0, 700.0))
        .unwrap()
        .with_faces(Faces::Two)
        .with_nap(true)
        .with_name("skirt back")
        .with_grain_deg(-90.0)
        .unwrap();
    assert_eq!(panel.outline(), rectangle(400.0, 700.0));
    assert_eq!(
        (panel.name(), panel.faces(), panel.nap()),
        ("skirt back", Faces::Two, true)
    );
    assert_eq!(
        (panel.grain_deg(), panel.taken(), panel.doubts()),
        (-90.0, Taken::Outline, 0)
    );
    assert_eq!(
        (panel.bounds().width(), panel.bounds().height()),
        (400.0, 700.0)
    );
    assert_eq!(
        (panel.area_mm2(), panel.largest_misfit()),
        (280_000.0, None)
    );
}

#[test]
fn holes_that_overlap_are_taken_off_once() {
    let hole = |x: f64| -> Vec<Point> {
        rectangle(20.0, 20.0)
            .iter()
            .map(|p| Point::new(p.x + x, p.y + 50.0))
            .collect()
    };
    let whole = Panel::new("back", rectangle(100.0, 100.0)).unwrap();
    // Two squares of 400, 10 by 20 of them common.
    let holed = whole
        .clone()
        .with_holes(vec![hole(10.0), hole(20.0)])
        .unwrap();
    assert!((holed.area_mm2() - 9400.0).abs() < 1e-9);
    // Half of the square hangs over the edge.
    let notched = whole.with_holes(vec![hole(90.0)]).unwrap();
    assert!((notched.area_mm2() - 9800.0).abs() < 1e-9);
}

#[test]
fn a_frame_of_readings_gives_corners_and_what_spares_miss() {
    // 300, 400, 500: by hand. The third corner from 0 and 1, the fourth from 0 and 2.
    let readings = [corner(0, 1, 500.0, 400.0), corner(0, 2, 400.0, 300.0)];
    let panel = Panel::by_triangles("front", 300.0, &readings).unwrap();
    for (found, want) in
        panel
            .outline()
            .iter()
            .zip([(0.0, 0.0), (300.0, 0.0), (300.0, 400.0), (0.0, 400.0)])
    {
        assert!(apart(*found, want) < 1e-9, "{found:?}");
    }
    assert!(
        matches!(panel.taken(), Taken::Triangles { weakest_per_mm, .. } if weakest_per_mm < 5.0)
    );
    let checked = panel
        .clone()
        .with_spares(&[spare(1, 3, 502.0), spare(3, 1, 510.0)])
        .unwrap();
    assert!((checked.spares()[0].misfit + 2.0).abs() < 1e-9);
    assert!((checked.largest_misfit().unwrap() - 10.0).abs() < 1e-9);
    // 2 mm of 502 are within 0.5 %, 10 of 510 are not.
    assert_eq!(checked.doubts(), SPARE_MISFIT);
    assert_eq!(
        checked.with_spares(&[spare(1, 3, 502.0)]).unwrap().doubts(),
        0
    );
    // The grain from corner 0 to corner 3 is straight up.
    assert!((panel.with_grain_between(0, 3).unwrap().grain_deg() - 90.0).abs() < 1e-9);
    // A corner almost in line with its base raises its doubt, which the panel keeps.
    let flat = Panel::by_triangles("strip", 300.0, &[corner(0, 1, 150.5, 150.5)]).unwrap();
    assert_eq!(flat.with_nap(true).doubts(), TRIANGLE_FLAT);
}

#[test]
fn offsets_stand_right_and_left_of_the_grain() {
    let panel = Panel::by_offsets(
        "sleeve",
        &[0.0, 100.0, 300.0],
        &[50.0, 60.0, 40.0],
        &[0.0, 30.0, 20.0],
    )
    .unwrap();
    let corners = [
        (0.0, 0.0),
        (30.0, 100.0),
        (20.0, 300.0),
        (-40.0, 300.0),
        (-60.0, 100.0),
        (-50.0, 0.0),
    ];
    assert_eq!(panel.outline(), corners.map(Point::from));
    // Trapeziums: 100 (50 + 90) / 2 + 200 (90 + 60) / 2.
    assert_eq!((panel.area_mm2(), panel.grain_deg()), (22_000.0, 90.0));
    // The right side leaves its straight line from 0 to 20 by 30 - 20/3 at the middle station.
    assert!(
        matches!(panel.taken(), Taken::Offsets { largest_bow } if (largest_bow - (30.0 - 20.0 / 3.0)).abs() < 1e-12)
    );
    // It comes to a point.
    let point = Panel::by_offsets("gore", &[0.0, 90.0], &[20.0, 0.0], &[20.0, 0.0]).unwrap();
    assert_eq!((point.area_mm2(), point.outline().len()), (1800.0, 4));
    let waisted = Panel::by_offsets(
        "bow",
        &[0.0, 50.0, 90.0],
        &[9.0, 0.0, 9.0],
        &[9.0, 0.0, 9.0],
    )
    .unwrap_err();
    assert_eq!(
        (waisted.kind(), waisted.argument()),
        (ErrorKind::Outline, "outline")
    );
}

#[test]
fn a_photograph_is_doubted_for_its_lens() {
    // Straight from above, a quarter of true size, y down; the sheet is 200 by 300.
    let picture = [(10.0, 10.0), (60.0, 10.0), (60.0, 85.0), (10.0, 85.0)].map(Point::from);
    let truth = [(0.0, 300.0), (200.0, 300.0), (200.0, 0.0), (0.0, 0.0)].map(Point::from);
    let outline = [(10.0, 10.0), (110.0, 10.0), (10.0, 110.0)].map(Point::from);
    let panel = Panel::from_photo("yoke", &picture, &truth, &outline).unwrap();
    for (found, want) in panel
        .outline()
        .iter()
        .zip([(0.0, 300.0), (400.0, 300.0), (0.0, -100.0)])
    {
        assert!(apart(*found, want) < 1e-9, "{found:?}");
    }
    assert_eq!(panel.doubts(), LENS_BOW);
    assert!(
        matches!(panel.taken(), Taken::Photo { coarsest, reach } if (coarsest - 4.0).abs() < 1e-9 && (reach - 1.0).abs() < 1e-9)
    );
    let far = outline.map(|p| Point::new(p.x * 3.0, p.y));
    let far = Panel::from_photo("yoke", &picture, &truth, &far).unwrap();
    assert_eq!(far.doubts(), LENS_BOW | PHOTO_REACH);

    let twisted = [picture[1], picture[0], picture[2], picture[3]];
    let error = Panel::from_photo("yoke", &twisted, &truth, &outline).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NoSolution, "picture")
    );
    let lost = [outline[0], Point::new(f64::NAN, 0.0), outline[2]];
    let error = Panel::from_photo("yoke", &picture, &truth, &lost).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument(), error.at()),
        (ErrorKind::NotFinite, "outline", Some(1))
    );
    let error = Panel::from_photo("yoke", &picture, &truth, &outline[..2]).unwrap_err();
    assert_eq!(error.kind(), ErrorKind::Count);
}

#[test]
fn what_is_no_panel_is_refused_by_name_and_place() {
    let says = |panel: Result<Panel, recloth::Error>| panel.unwrap_err().to_string();
    let panel = || Panel::new("left back", rectangle(50.0, 50.0)).unwrap();
    let nan = Point::new(f64::NAN, 0.0);
    for (found, want) in [
        (
            Panel::new("a", [(0.0, 0.0), (1.0, 0.0)]),
            "outline has 2 items, not between 3 and 5000",
        ),
        (
            Panel::new("a", [(0.0, 0.0), (1e6, 0.0), (0.0, 1.0)]),
            "outline[1] = 1000000 is not between -100000 and 100000",
        ),
        (
            Panel::new("a", [(0.0, 0.0), (1e-3, 0.0), (0.0, 1e-3)]),
            "outline: the outline crosses itself or has no area (at 0)",
        ),
        (
            panel().with_holes(vec![rectangle(1.0, 1.0), vec![]]),
            "holes has 0 items, not between 3 and 5000",
        ),
        (
            panel().with_flaws(vec![Flaw::new([(1.0, 1.0)], f64::NAN)]),
            "margin[0] = NaN is not a finite number",
        ),
        (
            panel().with_flaws(vec![Flaw::new([nan], 1.0)]),
            "flaws[0] = NaN is not a finite number",
        ),
        (
            panel().with_flaws(vec![Flaw::new(rectangle(0.0, 0.0), 1.0)]),
            "flaws: the outline crosses itself or has no area (at 0)",
        ),
        (
            panel().with_grain_deg(361.0),
            "grain_deg = 361 is not between -360 and 360",
        ),
        (
            panel().with_grain_between(0, 4),
            "to = 4 leaves no solution: it must be between 0 and 3",
        ),
        (
            panel().with_grain_between(2, 2),
            "to = 2 leaves no solution",
        ),
        (
            panel().with_spares(&[spare(0, 9, 5.0)]),
            "to[0] = 9 leaves no solution: it must be between 0 and 3",
        ),
        (
            panel().with_spares(&[spare(0, 2, 0.0)]),
            "reading[0] = 0 is not between 1 and 100000",
        ),
        (
            Panel::by_triangles("a", 300.0, &[corner(0, 1, 100.0, 100.0)]),
            "from_end[0] = 100 leaves no solution: it must be more than 200 and less than 400",
        ),
        (
            Panel::by_offsets("a", &[0.0, 0.0], &[1.0, 1.0], &[1.0, 1.0]),
            "stations[1] = 0 leaves no solution: it must be at least 0.000001",
        ),
    ] {
        assert_eq!(says(found), want);
    }
    let error = Panel::new("a", [(0.0, 0.0)]).unwrap_err();
    assert_eq!(
        panel().sentence(&error),
        "panel \"left back\": outline has 1 items, not between 3 and 5000"
    );
}
