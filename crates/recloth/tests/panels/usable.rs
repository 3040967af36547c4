//! What is left of a panel.

use crate::apart;
use kurbo::Point;
use recloth::ErrorKind;
use recloth::doubt::SPARE_MISFIT;
use recloth::panel::{Faces, Flaw, Panel, SpareReading, usable_panel};

use crate::made::rectangle;

fn back() -> Panel {
    Panel::new("back", rectangle(420.0, 700.0)).unwrap()
}

fn square(x: f64, y: f64, side: f64) -> Vec<Point> {
    rectangle(side, side)
        .iter()
        .map(|p| Point::new(p.x + x, p.y + y))
        .collect()
}

#[test]
fn strips_holes_and_flaws_are_cut_away() {
    let panel = back()
        .with_faces(Faces::Two)
        .with_nap(true)
        .with_holes(vec![square(100.0, 100.0, 20.0)])
        .unwrap()
        .with_flaws(vec![Flaw::new(square(200.0, 300.0, 10.0), 5.0)])
        .unwrap();
    let usable = panel.usable(&[40.0, 15.0, 10.0, 15.0], 0.01).unwrap();
    assert_eq!(usable.len(), 1);
    let part = &usable[0];
    // 390 by 650, less 20 by 20, less 10 by 10 with 5 all round: 100 + 4·50 + 25π, its quarter circles as chords outside.
    let want = 390.0 * 650.0 - 400.0 - (300.0 + 25.0 * std::f64::consts::PI);
    assert!(
        part.area_mm2() < want && part.area_mm2() > want - 0.2,
        "{}",
        part.area_mm2()
    );
    assert_eq!(
        (part.name(), part.faces(), part.nap(), part.grain_deg()),
        ("back", Faces::Two, true, 90.0)
    );
    assert_eq!((part.holes().len(), part.flaws().len()), (2, 0));
}

#[test]
fn a_panel_that_falls_apart_gives_its_parts_and_they_keep_its_doubts() {
    let slit = Flaw::new([(-10.0, 500.0), (430.0, 500.0)], 5.0);
    let panel = back()
        .with_spares(&[SpareReading {
            from: 0,
            to: 2,
            reading: 700.0,
        }])
        .unwrap()
        .with_flaws(vec![slit])
        .unwrap();
    assert_eq!(panel.doubts(), SPARE_MISFIT);
    let parts = panel.usable(&[0.0; 4], 0.1).unwrap();
    let seen: Vec<_> = parts
        .iter()
        .map(|part| {
            (
                part.name(),
                part.area_mm2(),
                part.doubts(),
                part.spares().len(),
            )
        })
        .collect();
    assert_eq!(
        seen,
        [
            ("back", 420.0 * 495.0, SPARE_MISFIT, 0),
            ("back, part 2", 420.0 * 195.0, SPARE_MISFIT, 0)
        ]
    );
}

#[test]
fn each_flaw_keeps_its_own_margin_and_a_row_of_stitching_is_one_of_slits() {
    let row = Flaw::stitching([(100.0, 200.0), (100.0, 300.0), (200.0, 300.0)], 3.0);
    assert_eq!(row.len(), 2);
    let panel = back()
        .with_flaws([row, vec![Flaw::new([(300.0, 300.0)], 20.0).called("burn")]].concat())
        .unwrap();
    let part = &panel.usable(&[0.0; 4], 0.1).unwrap()[0];
    // Every corner left is so far from each.
    for hole in part.holes() {
        for p in hole {
            assert!(apart(*p, (300.0, 300.0)) >= 20.0 - 1e-9);
            let along = Point::new(p.x.clamp(100.0, 200.0), 300.0);
            assert!(apart(*p, along) >= 3.0 - 1e-9);
        }
    }
    assert_eq!(part.holes().len(), 2);
    assert_eq!(panel.flaws()[2].what, "burn");
    // With one margin for all it is what the function gives.
    let outline = rectangle(420.0, 700.0);
    let spot = vec![Point::new(300.0, 300.0)];
    let one = back()
        .with_flaws(vec![Flaw::new(spot.clone(), 20.0)])
        .unwrap();
    let losses = [40.0, 15.0, 10.0, 15.0];
    let all = usable_panel(&outline, &losses, &[spot], 20.0, 0.1).unwrap();
    assert_eq!(
        one.usable(&losses, 0.1).unwrap()[0].outline(),
        all.parts[0].outline
    );
}

#[test]
fn rectangles_keep_clear_of_flaws() {
    assert_eq!(back().largest_rectangle().unwrap().area_mm2, 420.0 * 700.0);
    // A slit across at 500 with 5 to each side leaves 495 below.
    let torn = back()
        .with_flaws(vec![Flaw::new([(-10.0, 500.0), (430.0, 500.0)], 5.0)])
        .unwrap();
    let largest = torn.largest_rectangle().unwrap();
    assert!(
        (largest.area_mm2 - 420.0 * 495.0).abs() < 0.01,
        "{largest:?}"
    );
    assert!((torn.tallest_rectangle(400.0).unwrap().height - 495.0).abs() < 1e-3);
    assert_eq!(
        torn.tallest_rectangle(421.0).unwrap_err().argument(),
        "width"
    );
    // The grain across the panel turns the rectangle with it.
    let across = back()
        .with_grain_deg(0.0)
        .unwrap()
        .tallest_rectangle(600.0)
        .unwrap();
    assert!((across.height - 420.0).abs() < 1e-3);
}

#[test]
fn what_leaves_nothing_or_cannot_be_cut_is_named() {
    let why = |panel: &Panel, losses: [f64; 4]| {
        let error = panel.usable(&losses, 0.1).unwrap_err();
        (error.kind(), error.argument(), error.at())
    };
    let none = ErrorKind::NoSolution;
    assert_eq!(
        why(&back(), [0.0, 210.0, 0.0, 211.0]),
        (none, "losses", Some(3))
    );
    assert_eq!(
        why(&back(), [0.0, -1.0, 0.0, 0.0]),
        (ErrorKind::OutOfRange, "losses", Some(1))
    );
    assert_eq!(
        back().usable(&[0.0; 3], 0.1).unwrap_err().kind(),
        ErrorKind::Count
    );
    assert_eq!(
        back().usable(&[0.0; 4], 11.0).unwrap_err().argument(),
        "accuracy"
    );
    let flawed = |flaw: Flaw| {
        back()
            .with_flaws(vec![Flaw::new(square(9.0, 9.0, 9.0), 0.0), flaw])
            .unwrap()
    };
    let off = flawed(Flaw::new([(900.0, 0.0)], 5.0));
    assert_eq!(why(&off, [0.0; 4]), (none, "flaws", Some(1)));
    let thin = flawed(Flaw::new([(50.0, 50.0)], 0.05));
    assert_eq!(why(&thin, [0.0; 4]), (none, "margin", Some(1)));
    let broad = flawed(Flaw::new([(50.0, 50.0)], 900.0));
    assert_eq!(why(&broad, [0.0; 4]), (none, "margin", Some(1)));
    let beyond = flawed(Flaw::new([(50.0, 50.0)], 2000.0));
    assert_eq!(why(&beyond, [0.0; 4]), (none, "margin", Some(1)));
    let hole = back().with_holes(vec![square(-1.0, -1.0, 800.0)]).unwrap();
    assert_eq!(why(&hole, [0.0; 4]), (none, "holes", None));
    let away = back().with_holes(vec![square(900.0, 0.0, 9.0)]).unwrap();
    assert_eq!(why(&away, [0.0; 4]), (none, "holes", Some(0)));
}
