//! A checked skirt laid as short as it goes, and laid so that the check meets at its seams.

use recloth::{Error, ErrorKind};
use recloth_lay::{
    MatchPoint, MatchSide, Part, Repeat, Strip, StripLay, StripOptions, placed, strip,
};
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{circle, dimension, ring, words};

const SCALE: f64 = 11.0;
const WIDTH: f64 = 900.0;
/// The check (mm), along the cloth and across it.
const CHECK: (f64, f64) = (160.0, 85.0);
/// How far the two lays are apart (mm).
const APART: f64 = 420.0;

/// The parts of the page.
fn parts() -> Vec<Part> {
    let point = |name: &str, at: (f64, f64), side| MatchPoint {
        name: name.into(),
        at: at.into(),
        side,
    };
    let front = Part {
        matches: vec![
            point("hip", (495.0, 500.0), MatchSide::Own),
            point("hip", (65.0, 500.0), MatchSide::Other),
        ],
        ..Part::new(
            "front",
            [(0.0, 0.0), (560.0, 0.0), (490.0, 700.0), (70.0, 700.0)],
        )
    };
    let back = Part {
        mirrored: 1,
        matches: vec![
            point("hip", (65.0, 510.0), MatchSide::Own),
            point("centre back", (275.0, 300.0), MatchSide::Both),
        ],
        ..Part::new(
            "back",
            [(0.0, 0.0), (290.0, 0.0), (290.0, 710.0), (70.0, 710.0)],
        )
    };
    vec![front, back]
}

/// What is no lay is a failure of this build, and the page's own test says more.
fn none(error: &recloth_lay::Error) -> Error {
    let nan = f64::NAN;
    match error.error().kind() {
        kind @ ErrorKind::NoSolution => Error::new(kind, "lay", nan, nan, nan),
        _ => error.error(),
    }
}

pub(super) fn drawing() -> Result<Drawing, Error> {
    let parts = parts();
    let options = StripOptions {
        budget: 4_000_000,
        ..StripOptions::default()
    };
    let plain = Strip::new(WIDTH);
    let checked = Strip {
        repeat: Some(Repeat::new(CHECK.0, CHECK.1)),
        ..plain
    };
    let mut drawing = Drawing::new("A checked skirt laid plain, and laid to match");
    let mut top = 0.0;
    for (cloth, how) in [(plain, "not matched"), (checked, "matched")] {
        let lay = strip(&parts, &cloth, &options).map_err(|error| none(&error))?;
        draw(&mut drawing, &parts, &lay, top, how);
        top -= WIDTH + APART;
    }
    Ok(drawing)
}

fn draw(drawing: &mut Drawing, parts: &[Part], lay: &StripLay, low: f64, how: &str) {
    let at = |p: Point| Point::new(p.x / SCALE, (p.y + low) / SCALE);
    let place = |x: f64, y: f64| at(Point::new(x, y));
    let long = lay.length;
    let edge = ring(&[
        place(0.0, 0.0),
        place(long, 0.0),
        place(long, WIDTH),
        place(0.0, WIDTH),
    ]);
    drawing.area(Tone::Cloth, edge.clone());
    for laid in &lay.lay.placements {
        let outline = placed(&parts[laid.part].outline, laid);
        let outline: Vec<Point> = outline.into_iter().map(at).collect();
        drawing.area(Tone::Piece, ring(&outline));
    }
    // The check: a thin line where each repeat begins.
    for number in 1..=(long / CHECK.0) as u32 {
        let x = f64::from(number) * CHECK.0;
        drawing.segment(Pen::Construction, place(x, 0.0), place(x, WIDTH));
    }
    for number in 1..=(WIDTH / CHECK.1) as u32 {
        let y = f64::from(number) * CHECK.1;
        drawing.segment(Pen::Construction, place(0.0, y), place(long, y));
    }
    for laid in &lay.lay.placements {
        let part = &parts[laid.part];
        let outline: Vec<Point> = placed(&part.outline, laid).into_iter().map(at).collect();
        drawing.line(Pen::Cut, ring(&outline));
        let sum = outline
            .iter()
            .fold((0.0, 0.0), |sum, p| (sum.0 + p.x, sum.1 + p.y));
        let count = outline.len() as f64;
        words(
            drawing,
            &part.name,
            Point::new(sum.0 / count, sum.1 / count - 1.0),
        );
        for point in &part.matches {
            let spot = at(placed(&[point.at], laid)[0]);
            drawing.area(Tone::Solid, circle(spot, 1.3));
        }
    }
    drawing.line(Pen::Panel, edge);
    let under = |x: f64| place(x, -60.0);
    dimension(drawing, under(0.0), under(long), "", 0.0);
    words(
        drawing,
        &format!("{how}: {long:.0}"),
        place(long / 2.0, -190.0),
    );
}
