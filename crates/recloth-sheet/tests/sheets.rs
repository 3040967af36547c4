//! Pages, their windows and their joins.

use std::collections::BTreeMap;

use recloth::ErrorKind;
use recloth_sheet::kurbo::{BezPath, ParamCurve, Point, Rect};
use recloth_sheet::{
    Drawing, Group, Label, Paper, Pen, Shape, SheetOptions, Sheets, Tone, pdf, sheets, svg,
    tile_count,
};

fn corners(x: f64, y: f64, w: f64, h: f64) -> [Point; 4] {
    [(x, y), (x + w, y), (x + w, y + h), (x, y + h)].map(Point::from)
}

/// A piece whose ink is exactly `width` by `height`.
fn piece(width: f64, height: f64) -> Drawing {
    let half = Pen::Cut.width() / 2.0;
    let mut drawing = Drawing::new("Piece");
    drawing.polygon(
        Pen::Cut,
        &corners(
            half - 40.0,
            half + 7.0,
            width - 2.0 * half,
            height - 2.0 * half,
        ),
    );
    drawing
}

fn made(drawing: &Drawing, options: &SheetOptions) -> Sheets {
    sheets("Set", core::slice::from_ref(drawing), options).expect("good options")
}

fn groups(shapes: &[Shape]) -> Vec<&Group> {
    shapes
        .iter()
        .map(|shape| match shape {
            Shape::Group(group) => group,
            other => panic!("not a group: {other:?}"),
        })
        .collect()
}

#[test]
fn a_strip_of_500_mm_takes_three_pages_of_a4() {
    // (500 - 10) / (190 - 10) = 2.72 -> 3: worked by hand from the formula in the documentation.
    assert_eq!(tile_count(500.0, 210.0, 10.0, 10.0), Ok(3));
    let set = made(&piece(500.0, 100.0), &SheetOptions::default());
    assert_eq!((set.tilings[0].columns, set.tilings[0].rows), (3, 1));
    assert_eq!(set.pages.len(), 4);
}

#[test]
fn counts_by_hand_at_the_edges() {
    // Printable 190 wide: one page holds 190, two hold 370, three 550.
    for (extent, pages) in [
        (0.0, 1),
        (190.0, 1),
        (190.01, 2),
        (370.0, 2),
        (370.01, 3),
        (550.0, 3),
    ] {
        assert_eq!(tile_count(extent, 210.0, 10.0, 10.0), Ok(pages), "{extent}");
    }
    assert_eq!(tile_count(500.0, 215.9, 10.0, 10.0), Ok(3)); // (500 - 10) / (195.9 - 10) = 2.64
    let kind = |e, p, m, o| tile_count(e, p, m, o).map_err(|e| (e.kind(), e.argument()));
    assert_eq!(
        kind(f64::NAN, 210.0, 10.0, 10.0),
        Err((ErrorKind::NotFinite, "extent"))
    );
    assert_eq!(
        kind(1.0, 210.0, -1.0, 10.0),
        Err((ErrorKind::OutOfRange, "margin"))
    );
    assert_eq!(
        kind(1.0, 30.0, 10.0, 10.0),
        Err((ErrorKind::NoSolution, "page"))
    );
}

#[test]
fn pages_have_the_size_of_the_paper() {
    for (paper, width, height) in [
        (Paper::A4, 210.0, 297.0),
        (Paper::Letter, 8.5 * 25.4, 11.0 * 25.4),
        (
            Paper::Custom {
                width: 420.0,
                height: 297.0,
            },
            420.0,
            297.0,
        ),
    ] {
        let set = made(
            &piece(600.0, 600.0),
            &SheetOptions {
                paper,
                ..SheetOptions::default()
            },
        );
        for page in &set.pages {
            assert!((page.width - width).abs() < 1e-9 && (page.height - height).abs() < 1e-9);
        }
    }
}

/// A slanting band with a curve and a label: many pages, some of them empty.
fn band() -> Drawing {
    let mut path = BezPath::new();
    path.move_to((0.0, 0.0));
    path.curve_to((500.0, 100.0), (700.0, 600.0), (900.0, 1200.0));
    path.line_to((930.0, 1190.0));
    path.curve_to((720.0, 580.0), (510.0, 60.0), (10.0, -40.0));
    path.close_path();
    let mut drawing = Drawing::new("Band");
    drawing.line(Pen::Cut, path.clone()).hatch(&path, 6.0);
    drawing
}

#[test]
fn every_point_of_the_drawing_is_on_a_printed_page() {
    let drawing = band();
    for options in [
        SheetOptions::default(),
        SheetOptions {
            paper: Paper::Letter,
            overlap: 5.0,
            margin: 6.0,
            ..SheetOptions::default()
        },
    ] {
        let set = made(&drawing, &options);
        let tiling = &set.tilings[0];
        assert!(tiling.left_out > 10, "{}", tiling.left_out);
        assert_eq!(
            tiling.tiles.len() as u32 + tiling.left_out,
            tiling.rows * tiling.columns
        );
        let mut points = 0;
        for shape in &drawing.shapes {
            let Shape::Line { path, .. } = shape else {
                continue;
            };
            for segment in path.segments() {
                for i in 0..=50 {
                    let point = segment.eval(f64::from(i) / 50.0);
                    assert!(
                        tiling.tiles.iter().any(|tile| tile.window.contains(point)),
                        "{point:?}"
                    );
                    points += 1;
                }
            }
        }
        assert!(points > 500);
    }
}

#[test]
fn neighbouring_windows_overlap_as_asked() {
    let options = SheetOptions {
        overlap: 12.0,
        margin: 8.0,
        ..SheetOptions::default()
    };
    let set = made(&piece(700.0, 900.0), &options);
    let tiles = &set.tilings[0].tiles;
    for a in tiles {
        assert!(
            (a.window.width() - 194.0).abs() < 1e-9 && (a.window.height() - 281.0).abs() < 1e-9
        );
        for b in tiles {
            if a.row == b.row && a.column + 1 == b.column {
                assert!((a.window.x1 - b.window.x0 - 12.0).abs() < 1e-9);
            }
            if a.column == b.column && a.row + 1 == b.row {
                assert!((b.window.y1 - a.window.y0 - 12.0).abs() < 1e-9);
            }
        }
    }
}

#[test]
fn nothing_is_drawn_outside_the_printable_part() {
    let options = SheetOptions {
        margin: 12.5,
        ..SheetOptions::default()
    };
    let set = sheets(
        "A set with a long name",
        &[band(), piece(100.0, 100.0)],
        &options,
    )
    .unwrap();
    let frame = Rect::new(12.5, 12.5, 210.0 - 12.5, 297.0 - 12.5);
    for page in &set.pages {
        let bounds = page.drawing.bounds().unwrap();
        assert_eq!(bounds.union(frame), frame, "{}", page.drawing.title);
    }
    for page in &set.pages[1..] {
        assert!(
            groups(&page.drawing.shapes)
                .iter()
                .all(|group| group.clip == Some(frame))
        );
    }
}

#[test]
fn the_smallest_paper_holds_the_cover() {
    let paper = Paper::Custom {
        width: 140.0,
        height: 180.0,
    };
    let options = SheetOptions {
        paper,
        ..SheetOptions::default()
    };
    let title = "A waistcoat with a long name ".repeat(200);
    let set = sheets(&title, &[band(), piece(100.0, 100.0)], &options).unwrap();
    let frame = Rect::new(10.0, 10.0, 130.0, 170.0);
    for page in &set.pages {
        let bounds = page.drawing.bounds().unwrap();
        assert_eq!(bounds.union(frame), frame, "{bounds:?}");
    }
}

/// Numbers from a fixed seed, some of them odd.
struct Odd(u64);

impl Odd {
    fn next(&mut self) -> u64 {
        self.0 = self
            .0
            .wrapping_mul(6364136223846793005)
            .wrapping_add(1442695040888963407);
        self.0 >> 33
    }

    fn number(&mut self) -> f64 {
        match self.next() % 40 {
            0 => f64::NAN,
            1 => f64::NEG_INFINITY,
            2 => 1e300,
            3 => 1e6,
            4 => -1e-320,
            5..12 => 0.0,
            _ => (self.next() % 4000) as f64 / 4.0 - 300.0,
        }
    }

    fn point(&mut self) -> Point {
        Point::new(self.number(), self.number())
    }
}

#[test]
fn odd_drawings_give_pages_or_errors_and_no_panic() {
    let mut odd = Odd(20);
    let (mut good, mut bad) = (0, 0);
    for _ in 0..300 {
        let mut drawing = Drawing::new("Größe");
        for _ in 0..odd.next() % 4 {
            let mut path = BezPath::new();
            path.move_to(odd.point());
            for _ in 0..odd.next() % 3 {
                match odd.next() % 5 {
                    0 => path.quad_to(odd.point(), odd.point()),
                    1 => path.curve_to(odd.point(), odd.point(), odd.point()),
                    2 => path.close_path(),
                    3 => path.move_to(odd.point()),
                    _ => path.line_to(odd.point()),
                }
            }
            match odd.next() % 4 {
                0 => drawing.line(Pen::Cut, path),
                1 => drawing.line(Pen::Seam, path),
                2 => drawing.area(Tone::Cloth, path),
                _ => drawing.hatch(&path, 3.0),
            };
        }
        let label = Label::new("ł ⅜ שלום \u{301}\n", odd.point(), odd.number());
        drawing.label(label.turned(odd.number()));
        match svg(&drawing).and(made_of(&drawing)) {
            Ok(bytes) => {
                assert!(bytes.starts_with(b"%PDF"));
                good += 1;
            }
            Err(error) => {
                assert!(!error.argument().is_empty());
                bad += 1;
            }
        }
    }
    assert!(good > 20 && bad > 20, "{good} good, {bad} bad");
}

fn made_of(drawing: &Drawing) -> Result<Vec<u8>, recloth::Error> {
    let set = sheets(
        "Odd",
        core::slice::from_ref(drawing),
        &SheetOptions::default(),
    )?;
    pdf("Odd", &set.pages)
}

#[test]
fn blank_pages_are_left_out_but_not_inside_a_cut_line() {
    // 700 x 900 on A4: 4 x 4 pages, the four in the middle without a line, but inside the piece.
    let outline = piece(700.0, 900.0);
    assert_eq!(
        made(&outline, &SheetOptions::default()).tilings[0].left_out,
        0
    );
    // The same as a panel edge holds no paper together.
    let mut lines = Drawing::new("Panel");
    lines.polygon(Pen::Panel, &corners(0.0, 0.0, 699.3, 899.3));
    assert_eq!(
        made(&lines, &SheetOptions::default()).tilings[0].left_out,
        4
    );
    let all = SheetOptions {
        blank_pages: true,
        ..SheetOptions::default()
    };
    assert_eq!(made(&lines, &all).tilings[0].left_out, 0);
    // A filled area is ink.
    let path: BezPath = match &lines.shapes[0] {
        Shape::Line { path, .. } => path.clone(),
        other => panic!("{other:?}"),
    };
    lines.area(Tone::Cloth, path);
    assert_eq!(
        made(&lines, &SheetOptions::default()).tilings[0].left_out,
        0
    );
}

#[test]
fn every_join_has_the_same_two_lozenges_on_both_its_pages() {
    for drawing in [band(), piece(900.0, 900.0)] {
        let set = made(&drawing, &SheetOptions::default());
        let tiling = &set.tilings[0];
        let printed: Vec<_> = tiling
            .tiles
            .iter()
            .map(|tile| (tile.row, tile.column))
            .collect();
        let joins = printed
            .iter()
            .map(|&(r, c)| {
                usize::from(printed.contains(&(r, c + 1)))
                    + usize::from(printed.contains(&(r + 1, c)))
            })
            .sum::<usize>();
        // Where the bases of the half lozenges lie in the drawing, in 1/1000 mm.
        let mut bases: BTreeMap<[i64; 2], u32> = BTreeMap::new();
        let mut letters: BTreeMap<String, u32> = BTreeMap::new();
        for tile in &tiling.tiles {
            let page = &set.pages[tile.page];
            let marks = groups(&page.drawing.shapes)
                .into_iter()
                .find(|group| group.id == "joins")
                .unwrap();
            for shape in &marks.shapes {
                match shape {
                    Shape::Line {
                        pen: Pen::Join,
                        path,
                    } => {
                        let points: Vec<Point> = path
                            .segments()
                            .map(|s| s.as_path_el().end_point().unwrap())
                            .collect();
                        let start = path.segments().next().unwrap();
                        let base = start.start().midpoint(points[1]);
                        let shift = tile.window.origin() - Point::new(10.0, 10.0);
                        let at = base + shift;
                        let key = [at.x, at.y].map(|v| (v * 1000.0).round() as i64);
                        *bases.entry(key).or_default() += 1;
                    }
                    Shape::Label(label) if label.text.len() <= 2 => {
                        *letters.entry(label.text.clone()).or_default() += 1;
                    }
                    _ => {}
                }
            }
        }
        assert_eq!(bases.len(), 2 * joins);
        assert!(bases.values().all(|&count| count == 2), "{bases:?}");
        assert_eq!(letters.len(), joins);
        assert!(letters.values().all(|&count| count == 4), "{letters:?}");
    }
}

#[test]
fn the_cover_says_which_page_lies_where() {
    let set = sheets(
        "Set",
        &[piece(300.0, 100.0), band()],
        &SheetOptions::default(),
    )
    .unwrap();
    let cover = &set.pages[0].drawing;
    let texts: Vec<String> = groups(&cover.shapes)
        .iter()
        .flat_map(|group| &group.shapes)
        .filter_map(|shape| match shape {
            Shape::Label(label) => Some(label.text.clone()),
            _ => None,
        })
        .collect();
    for tiling in &set.tilings {
        for tile in &tiling.tiles {
            assert!(texts.contains(&(tile.page + 1).to_string()));
            let title = &set.pages[tile.page].drawing.title;
            let place = format!(
                "row {}, column {} · page {} of",
                tile.row,
                tile.column,
                tile.page + 1
            );
            assert!(title.contains(&place), "{title}");
        }
    }
    assert!(texts.iter().any(|text| text.contains("not printed")));
    assert!(texts.contains(&"Band".to_owned()) && texts.contains(&"50 mm".to_owned()));
}

#[test]
fn the_squares_on_the_cover_are_true() {
    // 2 in = 50.8 mm exactly.
    let set = made(&piece(300.0, 100.0), &SheetOptions::default());
    let squares = groups(&set.pages[0].drawing.shapes)
        .into_iter()
        .find(|group| group.id == "squares")
        .unwrap();
    let sides: Vec<(f64, f64)> = squares
        .shapes
        .iter()
        .filter_map(|shape| match shape {
            Shape::Line { path, .. } => {
                let points: Vec<Point> = path.segments().map(|s| s.start()).collect();
                let across = points.iter().map(|p| p.x).fold(f64::MIN, f64::max) - points[0].x;
                let up = points.iter().map(|p| p.y).fold(f64::MIN, f64::max) - points[0].y;
                Some((across, up))
            }
            _ => None,
        })
        .collect();
    assert_eq!(sides.len(), 2);
    for ((across, up), side) in sides.into_iter().zip([50.0, 50.8]) {
        assert!((across - side).abs() < 1e-9 && (up - side).abs() < 1e-9);
    }
}

#[test]
fn a_page_of_a4_is_595_by_842_points() {
    // 210 mm · 72 / 25.4 = 595.276; 297 mm = 841.890 (1 pt = 1/72 in, ISO 32000).
    let set = made(&piece(100.0, 100.0), &SheetOptions::default());
    let bytes = pdf("A4", &set.pages).unwrap();
    let text = String::from_utf8_lossy(&bytes);
    let boxes: Vec<Vec<f64>> = text
        .split("/MediaBox")
        .skip(1)
        .map(|rest| {
            let inside = rest.split(['[', ']']).nth(1).unwrap();
            inside
                .split_whitespace()
                .map(|n| n.parse().unwrap())
                .collect()
        })
        .collect();
    assert_eq!(boxes.len(), set.pages.len());
    for found in boxes {
        assert!(
            (found[2] - 595.276).abs() < 1e-3 && (found[3] - 841.890).abs() < 1e-3,
            "{found:?}"
        );
    }
}

#[test]
fn many_drawings_take_more_covers_and_the_numbers_stay_right() {
    let drawings: Vec<Drawing> = (0..40).map(|_| piece(100.0, 150.0)).collect();
    let set = sheets("Forty pockets", &drawings, &SheetOptions::default()).unwrap();
    let first = set.tilings[0].tiles[0].page;
    assert!(first > 1);
    assert_eq!(set.pages.len(), first + 40);
    assert!(set.pages[first - 1].drawing.title.starts_with("Forty"));
    assert!(set.pages[first].drawing.title.contains(&format!(
        "page {} of {}",
        first + 1,
        first + 40
    )));
}

#[test]
fn the_pdf_is_the_same_twice() {
    let set = || made(&band(), &SheetOptions::default());
    let first = pdf("Band – größer", &set().pages).unwrap();
    assert!(first.starts_with(b"%PDF"));
    assert_eq!(first, pdf("Band – größer", &set().pages).unwrap());
}

#[test]
fn bad_options_are_errors_that_name_them() {
    let refuse = |drawings: &[Drawing], options: SheetOptions| {
        let error = sheets("", drawings, &options).unwrap_err();
        (error.kind(), error.argument())
    };
    let good = SheetOptions::default();
    let pieces = [piece(100.0, 100.0)];
    assert_eq!(refuse(&[], good), (ErrorKind::Count, "drawings"));
    assert_eq!(
        refuse(&[Drawing::new("")], good),
        (ErrorKind::Count, "shapes")
    );
    assert_eq!(
        refuse(
            &pieces,
            SheetOptions {
                margin: f64::NAN,
                ..good
            }
        ),
        (ErrorKind::NotFinite, "margin")
    );
    assert_eq!(
        refuse(
            &pieces,
            SheetOptions {
                margin: 50.0,
                ..good
            }
        ),
        (ErrorKind::NoSolution, "margin")
    );
    assert_eq!(
        refuse(
            &pieces,
            SheetOptions {
                overlap: 4.0,
                ..good
            }
        ),
        (ErrorKind::OutOfRange, "overlap")
    );
    let tiny = Paper::Custom {
        width: 99.0,
        height: 300.0,
    };
    assert_eq!(
        refuse(
            &pieces,
            SheetOptions {
                paper: tiny,
                ..good
            }
        ),
        (ErrorKind::OutOfRange, "paper_width")
    );
    assert_eq!(
        refuse(&[piece(9e5, 9e5)], good),
        (ErrorKind::Count, "pages")
    );
    let mut bad = piece(100.0, 100.0);
    bad.segment(Pen::Seam, Point::ZERO, Point::new(f64::NAN, 0.0));
    assert_eq!(
        refuse(&[bad.clone()], good),
        (ErrorKind::NotFinite, "coordinate")
    );
    assert_eq!(pdf("", &[]).unwrap_err().kind(), ErrorKind::Count);
    assert_eq!(
        piece(6000.0, 10.0)
            .page(0.0)
            .and_then(|p| pdf("", &[p]))
            .unwrap_err()
            .argument(),
        "page_width"
    );
}
