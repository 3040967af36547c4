//! Panels from the path of an SVG drawing.

use crate::apart;
use kurbo::Point;
use recloth::ErrorKind;
use recloth::panel::{Inner, Panel, Scale, Taken};
use svgtypes::PathParser;

use crate::random::Random;

fn drawn(path: &str, scale: f64) -> Result<Panel, recloth::Error> {
    Panel::from_svg_path("drawn", path, Scale::MmPerUnit(scale), Inner::Holes, 0.01)
}

fn corners(path: &str) -> Vec<(f64, f64)> {
    let panel = drawn(path, 1.0).unwrap();
    panel.outline().iter().map(|p| (p.x, p.y)).collect()
}

#[test]
fn every_straight_command_is_read_y_up() {
    let square = [(0.0, 0.0), (10.0, 0.0), (10.0, -20.0), (0.0, -20.0)];
    for path in [
        "M0 0L10 0L10 20L0 20Z",
        "M 0,0 10,0 10,20 0,20",
        "m0 0h10v20h-10z",
        "M0,0H10V20H0V0z",
        "  m 0 0 10 0 0 20 -10 0 0 -20 z",
        "M0 0l+1e1-0l0 2E+1-10.0.0Z",
    ] {
        assert_eq!(corners(path), square, "{path}");
    }
}

#[test]
fn a_known_length_gives_the_scale() {
    let known = |length: f64| Scale::Known {
        from: Point::new(0.0, 0.0),
        to: Point::new(30.0, 40.0),
        length,
    };
    let path = "M0 0H10V20H0z";
    let panel = Panel::from_svg_path("a", path, known(100.0), Inner::Holes, 0.1).unwrap();
    assert_eq!(panel.area_mm2(), 20.0 * 40.0);
    assert_eq!(panel.taken(), Taken::Path { mm_per_unit: 2.0 });
    let far = Panel::from_svg_path("a", path, known(2e5), Inner::Holes, 0.1).unwrap_err();
    assert_eq!(
        (far.kind(), far.argument()),
        (ErrorKind::OutOfRange, "length")
    );
    let same = Scale::Known {
        from: Point::ZERO,
        to: Point::ZERO,
        length: 10.0,
    };
    let none = Panel::from_svg_path("a", path, same, Inner::Holes, 0.1).unwrap_err();
    assert_eq!(
        (none.kind(), none.argument()),
        (ErrorKind::NoSolution, "length")
    );
}

#[test]
fn later_subpaths_are_holes_or_flaws() {
    let path = "M0 0H100V100H0Z m10 10h20v20h-20z M70 70 L80 80 M50 20";
    let flaws = Panel::from_svg_path(
        "a",
        path,
        Scale::MmPerUnit(1.0),
        Inner::Flaws { margin: 3.0 },
        0.1,
    )
    .unwrap();
    let sizes: Vec<usize> = flaws
        .flaws()
        .iter()
        .map(|flaw| flaw.outline.len())
        .collect();
    assert_eq!(sizes, [4, 2, 1]);
    // After a close the pen is back at the start of its subpath.
    assert_eq!(flaws.flaws()[0].outline[0], Point::new(10.0, -10.0));
    assert_eq!(flaws.flaws()[0].margin, 3.0);
    let open = drawn(path, 1.0).unwrap_err();
    assert_eq!((open.kind(), open.argument()), (ErrorKind::Count, "holes"));
    let holed = drawn("M0 0H100V100H0Z m10 10h20v20h-20z", 1.0).unwrap();
    assert!((holed.area_mm2() - 9600.0).abs() < 1e-9);
}

#[test]
fn arcs_are_round() {
    use std::f64::consts::PI;
    // A full circle of radius 50 in two arcs; polygons inside it within 0.01 mm are smaller by at most 0.01 of girth.
    let circle = drawn("M0 0a50 50 0 1 0 100 0a50,50,0,1,0-100,0z", 1.0).unwrap();
    let area = circle.area_mm2();
    assert!(
        area < PI * 2500.0 && area > PI * 2500.0 - 0.01 * 100.0 * PI,
        "{area}"
    );
    for p in circle.outline() {
        assert!((apart(*p, (50.0, 0.0)) - 50.0).abs() < 1e-9);
    }
    // Flags need no blank; an ellipse on its side, 30 by 20, has an area of 600 π.
    let ellipse = drawn("M-30 0A20 30 90 0030 0 20 30 90 00-30 0", 1.0).unwrap();
    assert!(
        (ellipse.area_mm2() - 600.0 * PI).abs() < 0.01 * 160.0,
        "{}",
        ellipse.area_mm2()
    );
    // Radii too small are made to reach: a half circle over 100.
    let half = drawn("M0 0A1 1 0 0 1 100 0Z", 1.0).unwrap();
    assert!((half.area_mm2() - PI * 1250.0).abs() < 0.01 * 260.0);
    // The four arcs between two points at a right angle: quarter and three quarter discs of radius 10.
    for (flags, share) in [("0 0", 0.25), ("0 1", 0.25), ("1 0", 0.75), ("1 1", 0.75)] {
        let path = format!("M10 0A10 10 0 {flags} 0 10Z");
        let segment = 100.0 * (share * PI - if share < 0.5 { 0.5 } else { -0.5 });
        let found = drawn(&path, 1.0).unwrap().area_mm2();
        assert!((found - segment).abs() < 0.5, "{flags}: {found}, {segment}");
    }
    // An arc without a radius is a line.
    assert_eq!(corners("M0 0A0 5 0 1 1 9 0L9 9Z").len(), 3);
}

#[test]
fn curves_are_followed_within_the_accuracy() {
    // A parabola y = x² / 100 from -100 to 100 under a chord: 2/3 of its box of 200 by 100. As a quadratic, as the same
    // cubic, and smooth on after half of it.
    for path in [
        "M-100 100Q0-100 100 100Z",
        "M-100 100C-33.333333333333336-33.333333333333336 33.333333333333336-33.333333333333336 100 100Z",
        "M-100 100Q-50 0 0 0T100 100Z",
    ] {
        let panel = drawn(path, 1.0).unwrap();
        for p in panel.outline() {
            assert!((-p.y - p.x * p.x / 100.0).abs() < 1e-9, "{path}: {p:?}");
        }
        let area = panel.area_mm2();
        let want = 200.0 * 100.0 * 2.0 / 3.0;
        assert!(
            area < want + 1e-9 && area > want - 0.01 * 300.0,
            "{path}: {area}"
        );
    }
    // A coarser accuracy needs fewer points.
    let points = |accuracy| {
        let path = "M0 0C0 100 100 100 100 0Z";
        let panel = Panel::from_svg_path("a", path, Scale::MmPerUnit(1.0), Inner::Holes, accuracy);
        panel.unwrap().outline().len()
    };
    assert!(points(1.0) < points(0.1) && points(0.1) < points(0.001));
    // A smooth cubic mirrors the steering point before it.
    let smooth = corners("M0 0C0 50 50 50 50 0S100-50 100 0L100 200L-50 200Z");
    let plain = corners("M0 0C0 50 50 50 50 0C50-50 100-50 100 0L100 200L-50 200Z");
    assert_eq!(smooth, plain);
}

#[test]
fn what_cannot_be_read_is_told_by_character() {
    for (path, at) in [
        ("L0 0", 0),
        ("M0 0 L 9", 8),
        ("M0 0 9 9 x", 9),
        ("M0 0 L9,,9", 8),
        ("M0 0Z9 9", 5),
        ("M0 0A5 5 0 2 0 9 9", 11),
        ("M0 0L9 9,", 8),
        ("Mé", 1),
    ] {
        let error = drawn(path, 1.0).unwrap_err();
        assert_eq!(
            (error.kind(), error.argument(), error.at()),
            (ErrorKind::Syntax, "path", Some(at)),
            "{path}"
        );
    }
    let empty = drawn(" ", 1.0).unwrap_err();
    assert_eq!(empty.to_string(), "path has 0 items, not at least 1");
    let wide = drawn("M0 0H10V1e9H0z", 1.0).unwrap_err();
    assert_eq!(
        (wide.kind(), wide.argument(), wide.at()),
        (ErrorKind::OutOfRange, "path", Some(2))
    );
    let endless = drawn("M0 0H1e999V1H0z", 1.0).unwrap_err();
    assert_eq!(
        (endless.kind(), endless.at()),
        (ErrorKind::NotFinite, Some(1))
    );
    let round = drawn("M0 0A1e9 1 0 0 0 9 9V0z", 1.0).unwrap_err();
    assert_eq!((round.kind(), round.at()), (ErrorKind::OutOfRange, Some(1)));
    let crossed = drawn("M0 0L9 9V0L0 9z", 1.0).unwrap_err();
    assert_eq!(crossed.kind(), ErrorKind::Outline);
    let scale = drawn("M0 0H1V1z", 0.0).unwrap_err();
    assert_eq!(
        (scale.kind(), scale.argument()),
        (ErrorKind::OutOfRange, "mm_per_unit")
    );
}

#[test]
fn the_grammar_is_that_of_another_reader() {
    // Words of the grammar thrown together: what svgtypes reads is read here, and what it refuses is refused.
    const WORDS: &[&str] = &[
        "M", "m", "L", "l", "h", "V", "C", "s", "Q", "t", "a", "A", "Z", "z", " ", ",", "0", "1",
        "-5", "+3", ".5", "2.", "1e1", "-.5e-1", "7e", "\n", "x",
    ];
    let below = |most: usize, random: &mut Random| random.between(0.0, most as f64) as usize;
    let mut random = Random(11);
    let (mut good, mut bad) = (0, 0);
    for _ in 0..20_000 {
        let mut path = String::from("M0 0");
        for _ in 0..below(9, &mut random) {
            path.push_str(WORDS[below(WORDS.len(), &mut random)]);
        }
        let theirs = PathParser::from(path.as_str()).all(|segment| segment.is_ok());
        let ours = match drawn(&path, 1.0) {
            // What lies too far off is told before what comes after it is read.
            Err(error) if error.kind() == ErrorKind::OutOfRange => continue,
            Err(error) => error.kind() != ErrorKind::Syntax,
            Ok(_) => true,
        };
        // The standard has a comma between numbers only; the other reader lets one pass anywhere after a number.
        let stray = path.split(',').skip(1).any(|rest| {
            let next = rest.trim_start().chars().next();
            !next.is_some_and(|c| c.is_ascii_digit() || "+-.".contains(c))
        });
        assert_eq!(ours, theirs && !stray, "{path:?}");
        if ours { good += 1 } else { bad += 1 }
    }
    assert!(good > 1000 && bad > 1000, "{good} {bad}");
}
