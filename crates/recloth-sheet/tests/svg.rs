//! The SVG read back by an XML parser.

use recloth::ErrorKind;
use recloth_sheet::kurbo::{BezPath, Point, Rect};
use recloth_sheet::{
    Anchor, Background, Drawing, Group, Label, Pen, Tone, svg, svg_on, text_width,
};
use roxmltree::{Document, Node};

fn corners(x: f64, y: f64, w: f64, h: f64) -> [Point; 4] {
    [(x, y), (x + w, y), (x + w, y + h), (x, y + h)].map(Point::from)
}

fn sample() -> Drawing {
    let mut drawing = Drawing::new("Bib & \"straps\" <ö ł ő ž ⅜ ½ ″ –>");
    drawing.polygon(Pen::Cut, &corners(10.0, 20.0, 200.0, 100.0));
    drawing.polyline(
        Pen::Seam,
        &[Point::new(-0.00001, 30.0), Point::new(1.0 / 3.0, 0.1 + 0.2)],
    );
    let mut group = Drawing::new("");
    group.label(
        Label::new("a<b & c\u{1}", (50.0, 60.0), 5.0)
            .anchored(Anchor::End)
            .turned(30.0),
    );
    drawing.group(Group {
        id: "inner marks/1".into(),
        title: "Inner marks".into(),
        clip: Some(Rect::new(0.0, 0.0, 90.0, 90.0)),
        shapes: group.shapes,
    });
    drawing
}

fn elements<'a>(document: &'a Document, name: &'static str) -> Vec<Node<'a, 'a>> {
    document
        .descendants()
        .filter(|node| node.has_tag_name(name))
        .collect()
}

#[test]
fn the_sheet_is_at_true_scale_and_holds_all_ink() {
    let mut drawing = Drawing::new("Pocket");
    drawing.polygon(Pen::Cut, &corners(10.0, 20.0, 200.0, 100.0));
    let text = svg(&drawing).unwrap();
    let document = Document::parse(&text).unwrap();
    let root = document.root_element();
    // The pen is 0.5 mm wide: a quarter of a millimetre outside the corners on each side. y is turned down.
    assert_eq!(root.attribute("width"), Some("200.5mm"));
    assert_eq!(root.attribute("height"), Some("100.5mm"));
    assert_eq!(root.attribute("viewBox"), Some("9.75 -120.25 200.5 100.5"));
    assert_eq!(
        elements(&document, "path")[0].attribute("d"),
        Some("M10 -20L210 -20L210 -120L10 -120Z")
    );
}

#[test]
fn text_is_escaped_and_comes_back() {
    let text = svg(&sample()).unwrap();
    let document = Document::parse(&text).unwrap();
    let titles: Vec<_> = elements(&document, "title")
        .iter()
        .map(|n| n.text().unwrap().to_owned())
        .collect();
    assert_eq!(
        titles,
        ["Bib & \"straps\" <ö ł ő ž ⅜ ½ ″ –>", "Inner marks"]
    );
    let label = elements(&document, "text")[0];
    assert_eq!(label.text(), Some("a<b & c "));
    assert_eq!(label.attribute("transform"), Some("rotate(-30 50 -60)"));
    assert_eq!(label.attribute("text-anchor"), Some("end"));
    assert_eq!(
        elements(&document, "g")[0].attribute("id"),
        Some("inner-marks-1")
    );
    assert_eq!(document.root_element().attribute("role"), Some("img"));
}

/// A name that overrides the writing direction leaves the measure behind it as it is: 25, not 52.
#[test]
fn a_name_does_not_turn_round_what_stands_beside_it() {
    let mut drawing = Drawing::new("Bib");
    for turn in "\u{202a}\u{202b}\u{202c}\u{202d}\u{202e}\u{2066}\u{2067}\u{2068}\u{2069}".chars() {
        drawing.label(Label::new(format!("bib{turn}, 25 mm"), (0.0, 0.0), 5.0));
    }
    // A leftward name is left as it is: its letters say how it is set.
    drawing.label(Label::new("כיס, 25 mm", (0.0, 0.0), 5.0));
    let text = svg(&drawing).unwrap();
    let document = Document::parse(&text).unwrap();
    let labels = elements(&document, "text");
    let said: Vec<_> = labels.iter().filter_map(Node::text).collect();
    assert_eq!(said[..9], ["bib, 25 mm"; 9]);
    assert_eq!(said[9], "כיס, 25 mm");
}

#[test]
fn numbers_are_plain_and_the_text_is_the_same_twice() {
    let text = svg(&sample()).unwrap();
    assert_eq!(text, svg(&sample()).unwrap());
    assert!(text.contains("M0 -30L0.3333 -0.3"), "{text}");
    let document = Document::parse(&text).unwrap();
    for path in elements(&document, "path") {
        let data = path.attribute("d").unwrap();
        let numbers = data.split(|letter: char| letter.is_ascii_alphabetic() || letter == ' ');
        for number in numbers.filter(|number| !number.is_empty()) {
            assert!(number.parse::<f64>().is_ok() && number != "-0", "{number}");
        }
        assert!(!data.contains(['e', 'N', 'i']), "{data}");
    }
}

#[test]
fn without_a_background_the_ink_takes_the_colour_around() {
    let mut drawing = sample();
    let mut path = BezPath::new();
    path.move_to((0.0, 0.0));
    path.quad_to((5.0, 9.0), (10.0, 0.0));
    drawing
        .area(Tone::Paper, path.clone())
        .area(Tone::Cloth, path);
    let text = svg_on(&drawing, Background::None).unwrap();
    let document = Document::parse(&text).unwrap();
    assert!(elements(&document, "rect").is_empty());
    assert!(!text.contains('#'));
    assert!(
        elements(&document, "path")
            .iter()
            .any(|p| p.attribute("stroke") == Some("currentColor"))
    );
    assert_eq!(
        elements(&Document::parse(&svg(&drawing).unwrap()).unwrap(), "rect").len(),
        1
    );
}

#[test]
fn every_pen_is_told_from_every_other() {
    use Pen::*;
    let pens = [
        Cut,
        Seam,
        Fold,
        Grain,
        Mark,
        Panel,
        Flaw,
        Hatch,
        Construction,
        Join,
    ];
    for (i, a) in pens.iter().enumerate() {
        for b in &pens[..i] {
            let look = |pen: &Pen| (pen.width(), pen.dashes(), pen.ink());
            // Grain lines have heads and marks are short: they share a plain line.
            assert!(
                look(a) != look(b) || (*a, *b) == (Mark, Grain),
                "{a:?} {b:?}"
            );
        }
    }
}

#[test]
fn bounds_hold_curves_labels_and_windows() {
    let mut curve = BezPath::new();
    curve.move_to((0.0, 0.0));
    curve.curve_to((0.0, 100.0), (100.0, 100.0), (100.0, 0.0));
    let mut drawing = Drawing::new("");
    drawing.area(Tone::Cloth, curve);
    // Highest at t = 1/2: 3/4 of the way to the handles.
    assert!((drawing.bounds().unwrap().y1 - 75.0).abs() <= 0.011);

    let mut text = Drawing::new("");
    text.label(Label::new("Hem", (0.0, 0.0), 10.0).turned(90.0));
    let bounds = text.bounds().unwrap();
    assert!((bounds.height() - text_width("Hem", 10.0)).abs() < 1e-9);
    assert!(bounds.x0 < -9.0 && bounds.x1 > 2.0);

    let mut window = Drawing::new("");
    window.group(Group {
        clip: Some(Rect::new(10.0, 10.0, 20.0, 20.0)),
        shapes: drawing.shapes.clone(),
        ..Group::default()
    });
    assert_eq!(window.bounds(), Some(Rect::new(10.0, 10.0, 20.0, 20.0)));
    assert_eq!(Drawing::new("").bounds(), None);
}

#[test]
fn a_scaled_picture_keeps_its_pens_and_says_its_scale() {
    let mut drawing = sample().scaled(0.25);
    drawing.scale_bar(100.0, 4.0);
    let text = svg(&drawing).unwrap();
    let document = Document::parse(&text).unwrap();
    assert_eq!(
        elements(&document, "path")[0].attribute("d"),
        Some("M2.5 -5L52.5 -5L52.5 -30L2.5 -30Z")
    );
    assert_eq!(
        elements(&document, "path")[0].attribute("stroke-width"),
        Some("0.5")
    );
    assert_eq!(
        elements(&document, "text").last().unwrap().text(),
        Some("100 mm, scale 1 : 4")
    );
}

#[test]
fn bad_numbers_are_errors_that_name_them() {
    let refuse = |make: &dyn Fn(&mut Drawing)| {
        let mut drawing = Drawing::new("");
        make(&mut drawing);
        let error = svg(&drawing).unwrap_err();
        (error.kind(), error.argument())
    };
    for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        let found = refuse(&|d| {
            d.segment(Pen::Cut, Point::ZERO, Point::new(1.0, bad));
        });
        assert_eq!(found, (ErrorKind::NotFinite, "coordinate"));
    }
    let found = refuse(&|d| {
        d.segment(Pen::Cut, Point::ZERO, Point::new(1e300, 0.0));
    });
    assert_eq!(found, (ErrorKind::OutOfRange, "coordinate"));
    let found = refuse(&|d| {
        d.label(Label::new("x", Point::ZERO, 0.0));
    });
    assert_eq!(found, (ErrorKind::OutOfRange, "size"));
    let found = refuse(&|d| {
        d.label(Label::new("x", Point::ZERO, 3.0).turned(f64::NAN));
    });
    assert_eq!(found, (ErrorKind::NotFinite, "angle_deg"));
    let found = refuse(&|d| {
        d.group(Group {
            clip: Some(Rect::new(0.0, 0.0, f64::NAN, 1.0)),
            ..Group::default()
        });
    });
    assert_eq!(found, (ErrorKind::NotFinite, "coordinate"));
}

#[test]
fn nothing_at_all_is_still_an_svg() {
    let text = svg(&Drawing::default()).unwrap();
    assert!(Document::parse(&text).is_ok());
}

#[test]
fn odd_drawings_do_not_panic() {
    let mut drawing = Drawing::new("\u{0}\u{FFFF}");
    drawing
        .polygon(Pen::Cut, &[])
        .polyline(Pen::Seam, &[Point::ZERO]);
    drawing.label(Label::new("", Point::ZERO, 3.0));
    drawing.label(
        Label::new(
            "a\nb\tc \u{200d} שלום עולם 漢字 🪡 e\u{301}",
            Point::ZERO,
            3.0,
        )
        .centred(),
    );
    let mut only_close = BezPath::new();
    only_close.move_to((0.0, 0.0));
    only_close.close_path();
    drawing
        .line(Pen::Cut, only_close.clone())
        .hatch(&only_close, 0.0)
        .hatch(&only_close, -1.0);
    drawing.scale_bar(0.0, 1.0);
    assert!(Document::parse(&svg(&drawing).unwrap()).is_ok());
    assert!(
        recloth_sheet::pdf("", &[drawing.page(0.0).unwrap()])
            .unwrap()
            .len()
            > 500
    );
    // Unusable numbers in the helpers come out as errors.
    let mut drawing = Drawing::new("");
    drawing.scale_bar(f64::NAN, 0.0);
    assert!(svg(&drawing).is_err() && drawing.page(1.0).is_err());
    assert!(
        Drawing::new("")
            .moved((f64::NAN, 0.0).into())
            .page(1.0)
            .is_err()
    );
}
