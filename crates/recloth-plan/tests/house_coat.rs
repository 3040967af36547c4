//! The invented house-coat, from the brief in the book to the files on the table.

use std::path::Path;
use std::sync::LazyLock;

use recloth_lay::{Together, check};
use recloth_plan::{Plan, plan, recloth_lay};

fn brief() -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../book/demo/house-coat.toml");
    std::fs::read_to_string(path).expect("the brief is in the book")
}

/// Worked out once for all tests.
fn house_coat() -> &'static Plan {
    static PLAN: LazyLock<Plan> =
        LazyLock::new(|| plan(&brief(), "house-coat.toml").expect("the brief is good"));
    &PLAN
}

#[test]
fn all_pieces_are_laid_and_the_checker_agrees() {
    let plan = house_coat();
    assert_eq!(plan.unplaced(), []);
    assert!(plan.too_large().is_empty());
    assert_eq!(plan.lays.len(), 3);
    let mut placed = 0;
    for laid in &plan.lays {
        assert_eq!(laid.fit.together, Together::Fit, "{}", laid.cloth);
        assert_eq!(
            check(&laid.parts, &laid.panels, &laid.fit.lay),
            Ok(()),
            "{}",
            laid.cloth
        );
        placed += laid.fit.lay.placements.len();
    }
    assert_eq!(placed, plan.count() as usize);
    assert!(plan.answer().starts_with("Everything fits"));
}

#[test]
fn the_same_brief_gives_the_same_bytes() {
    let again = plan(&brief(), "house-coat.toml").expect("the brief is good");
    let (once, again) = (house_coat().files().unwrap(), again.files().unwrap());
    assert_eq!(once.len(), 4 + house_coat().pieces.len());
    for ((name, first), (_, second)) in once.iter().zip(&again) {
        assert!(first == second, "{name}");
    }
}

fn file(plan: &Plan, name: &str) -> String {
    let files = plan.files().expect("it can be drawn");
    let (_, bytes) = files
        .into_iter()
        .find(|(known, _)| known == name)
        .expect("the file is there");
    String::from_utf8(bytes).expect("UTF-8")
}

#[test]
fn the_worksheet_is_well_formed_and_whole() {
    let plan = house_coat();
    let html = file(plan, "worksheet.html");
    let page = scraper::Html::parse_document(&html);
    assert_eq!(page.errors, Vec::<String>::new());
    for outside in ["http://", "https://", "src=", "<script", "url("] {
        let named = html.replace("http://www.w3.org/", "");
        assert!(
            !named.contains(outside),
            "{outside}: the page stands by itself"
        );
    }
    let text: String = page.root_element().text().collect();
    for piece in &plan.pieces {
        assert!(text.contains(piece.piece.name()), "{}", piece.piece.name());
    }
    for said in plan.doubts.iter().chain(&plan.cautions) {
        assert!(text.contains(said), "{said}");
    }
    for placed in &plan.order.steps {
        let name = placed.step.name.rsplit(": ").next().expect("a name");
        assert!(text.contains(name), "{name}");
    }
    let rows = scraper::Selector::parse("#lays figure").expect("a selector");
    let drawn: usize = plan.lays.iter().map(|laid| laid.panels.len()).sum();
    assert_eq!(page.select(&rows).count(), drawn);
}

#[test]
fn lengths_on_the_worksheet_add_up_on_the_tape() {
    let plan = house_coat();
    let json: serde_json::Value = serde_json::from_str(&file(plan, "plan.json")).expect("JSON");
    let sums = json["sums"].as_array().expect("a list");
    assert!(sums.len() >= 8);
    for sum in sums {
        // In eighths of an inch everything is whole.
        let eighths = |value: &serde_json::Value| value.as_f64().expect("a length") / 3.175;
        let terms: Vec<f64> = sum["terms"]
            .as_array()
            .expect("a list")
            .iter()
            .map(|term| eighths(&term["tape"]))
            .collect();
        let total = eighths(&sum["total"]);
        for value in terms.iter().chain([&total]) {
            assert!(
                (value - value.round()).abs() < 1e-9,
                "{} of {}",
                value,
                sum["what"]
            );
        }
        assert!(
            (terms.iter().sum::<f64>() - total).abs() < 1e-9,
            "{}",
            sum["what"]
        );
    }
    // By hand, from the brief: (29 1/2 + 1/2)/4 + 10/2 = 12 1/2 in for a front, 15 in for the back, 40 in in all.
    let band = &sums[0];
    let tape = |i: usize| band["terms"][i]["tape"].as_f64().expect("a length");
    for (i, inches) in [(0, 12.5), (1, 15.0), (2, 12.5)] {
        assert!((tape(i) - inches * 25.4).abs() < 1e-9, "{}", tape(i));
    }
    assert!((band["total"].as_f64().expect("a length") - 1016.0).abs() < 1e-9);
}

#[test]
fn pieces_have_the_measures_of_the_brief() {
    let plan = house_coat();
    let piece = |name: &str| {
        plan.pieces
            .iter()
            .find(|p| p.piece.name() == name)
            .expect("the piece is there")
    };
    let edges = |name: &str, edge: &str| -> f64 {
        let edges = piece(name)
            .piece
            .edges()
            .iter()
            .filter(|e| e.name.starts_with(edge));
        edges.map(|e| e.length()).sum()
    };
    // By hand, from the brief, in inches: a front of the skirt 12 1/2 at the waist, (39 1/2 + 2)/4 + 5 = 15 3/8 at the hem.
    assert!((edges("wrap skirt front", "waist") - 317.5).abs() < 0.01);
    assert!((edges("wrap skirt front", "hem") - 390.525).abs() < 0.01);
    // Joined edges are as long as each other.
    for side in ["side lower", "side upper"] {
        assert!((edges("wrap skirt front", side) - edges("wrap skirt back", side)).abs() < 1e-9);
    }
    assert!(
        (edges("wrap skirt front", "waist") - edges("wrap skirt front band", "lower")).abs() < 0.01
    );
    for seam in ["shoulder", "side", "armhole"] {
        assert!((edges("waistcoat front", seam) - edges("waistcoat back", seam)).abs() < 1e-9);
    }
    // (36 1/2 + 3 1/2)/4 = 10 in; the back's hem.
    assert!((edges("waistcoat back", "hem") - 254.0).abs() < 1e-9);
    // The child's band (21 + 1) with 1 1/2 lapped; skirt 1.5 times 22 in two panels.
    assert!((edges("pinafore band", "skirt edge") - 23.5 * 25.4).abs() < 1e-9);
    assert!((edges("pinafore skirt", "gathered edge") - 16.5 * 25.4).abs() < 1e-9);
}

#[test]
fn the_work_is_in_the_trades_order() {
    let plan = house_coat();
    let at = |text: &str| {
        plan.order
            .steps
            .iter()
            .position(|placed| placed.step.name.contains(text))
            .expect("the step is there")
    };
    for (first, then) in [
        ("Take off: elastic", "Scour the linen"),
        ("swatch", "Scour the linen"),
        ("Wash and dry", "measure them again"),
        ("Mordant the linen", "Dye the linen"),
        ("Dye the linen", "Lay out all pieces"),
        ("wrap skirt: sew the darts", "measure the waist edge"),
        ("measure the waist edge", "cut the band's sections"),
        ("skirt pocket: turn and stitch", "embroider the pocket hems"),
        ("embroider the pocket hems", "skirt pocket: sew to"),
        (
            "waistcoat: sew the shoulders",
            "waistcoat: sew shell to lining",
        ),
        (
            "waistcoat: turn the fronts",
            "waistcoat: sew the side seams",
        ),
        ("let it hang", "level the hem"),
    ] {
        assert!(at(first) < at(then), "{first} before {then}");
    }
    let halts = plan
        .order
        .steps
        .iter()
        .filter(|placed| placed.no_return.is_some());
    assert!(halts.clone().count() > 10);
    assert!(
        halts
            .filter(|placed| placed.before.is_empty())
            .all(|placed| placed.step.name.starts_with("Unpick"))
    );
}

#[test]
fn every_bath_has_its_cautions_and_what_may_not_go_in_comes_off() {
    let plan = house_coat();
    assert_eq!(plan.baths.len(), 3);
    let all = plan.cautions.join(" ");
    for word in [
        "label",
        "scald",
        "gloves",
        "mask",
        "local rules",
        "Blades",
        "Irons",
        "under three",
    ] {
        assert!(all.contains(word), "{word}");
    }
    // By hand: 1.4 kg at 25 litres a kilogram; 15 % of 1400 g.
    let mordant = &plan.baths[1];
    assert_eq!((mordant.volume_ml, mordant.lots), (35_000.0, 2));
    assert_eq!(
        (mordant.with[0].what.as_str(), mordant.with[0].mass_g),
        ("alum", 210.0)
    );
}

#[test]
fn drawings_and_sheets_are_what_they_say() {
    let plan = house_coat();
    let files = plan.files().expect("it can be drawn");
    for (name, bytes) in &files {
        if name.ends_with(".svg") {
            let text = std::str::from_utf8(bytes).expect("UTF-8");
            let svg = roxmltree::Document::parse(text).expect("XML");
            assert_eq!(svg.root_element().tag_name().name(), "svg", "{name}");
        } else if name.ends_with(".pdf") {
            assert!(bytes.starts_with(b"%PDF"), "{name}");
        }
    }
}

#[test]
fn panels_lose_what_the_wash_the_edges_and_the_flaws_take() {
    let plan = house_coat();
    let panel = |name: &str| {
        plan.panels
            .iter()
            .find(|panel| panel.name == name)
            .expect("the panel is there")
    };
    // By hand: 6 by 64 in, 1 and 2 % lost in the wash, 1/8 in at every edge: 5.69 by 62.47 in.
    let sash = panel("sash");
    assert_eq!(sash.usable.len(), 1);
    assert!((sash.usable[0].area_mm2 - 5.69 * 62.47 * 25.4 * 25.4).abs() < 1e-3);
    // The worn elbow, 3 by 3 1/2 in with 1/2 in kept clear all round, is a hole of 4 by 4 1/2 in, washed.
    let sleeve = panel("left sleeve");
    let [hole] = &sleeve.usable[0].holes[..] else {
        panic!("one hole")
    };
    let area: f64 = (0..hole.len())
        .map(|i| {
            let (a, b) = (hole[i], hole[(i + 1) % hole.len()]);
            (a.x * b.y - b.x * a.y) / 2.0
        })
        .sum();
    assert!(
        (area.abs() - 4.0 * 0.99 * 4.5 * 0.98 * 25.4 * 25.4).abs() < 2.0,
        "{area}"
    );
    // Left and right were measured by themselves, and come out as each other's mirror image to the tape's eighths.
    for (left, right) in [
        ("left front", "right front"),
        ("left back", "right back"),
        ("left sleeve", "right sleeve"),
    ] {
        let size = |name: &str| {
            let outline = &panel(name).outline;
            let span = |pick: fn(&kurbo::Point) -> f64| {
                let values: Vec<f64> = outline.iter().map(pick).collect();
                values.iter().copied().fold(f64::MIN, f64::max)
                    - values.iter().copied().fold(f64::MAX, f64::min)
            };
            (span(|p| p.x), span(|p| p.y))
        };
        let ((lw, lh), (rw, rh)) = (size(left), size(right));
        assert!(
            (lw - rw).abs() < 6.4 && (lh - rh).abs() < 6.4,
            "{left} {lw} {lh}, {right} {rw} {rh}"
        );
    }
}

#[test]
fn buttonholes_are_as_long_as_button_and_thickness() {
    let plan = house_coat();
    // By hand: a button 5/8 in across and 3 mm thick (the default) wants 15.875 + 3 = 18.875 mm.
    for (name, count) in [("wrap skirt front band", 2), ("waistcoat front", 5)] {
        let piece = &plan
            .pieces
            .iter()
            .find(|p| p.piece.name() == name)
            .expect("the piece is there");
        let slits: Vec<f64> = piece
            .piece
            .marks()
            .iter()
            .filter_map(|mark| match mark {
                recloth::outline::Mark::Buttonhole { ends: [a, b], .. } => {
                    assert!(
                        piece.cut_line.contains(*a) && piece.cut_line.contains(*b),
                        "{name}"
                    );
                    Some(libm::hypot(b.x - a.x, b.y - a.y))
                }
                _ => None,
            })
            .collect();
        assert_eq!(slits.len(), count, "{name}");
        assert!(
            slits.iter().all(|slit| (slit - 18.875).abs() < 1e-9),
            "{name}: {slits:?}"
        );
    }
}
