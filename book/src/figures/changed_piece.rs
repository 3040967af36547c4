//! Half a skirt panel with a dart, and what can be made of it.

use recloth::Error;
use recloth::outline::{Curve, Dart, Edge, Mark, NewSeam, Opening, Piece, Slash};
use recloth_sheet::kurbo::{Line, Point, Vec2};
use recloth_sheet::{Drawing, Pen};

use super::draw::{pattern, words};

const SCALE: f64 = 7.0;
const PITCH: Vec2 = Vec2::new(62.0, 112.0);

pub(super) fn drawing() -> Result<Drawing, Error> {
    let corners = [
        (0.0, 0.0),
        (230.0, 0.0),
        (230.0, 500.0),
        (122.0, 500.0),
        (98.0, 500.0),
        (0.0, 500.0),
    ];
    let names = ["hem", "side", "waist 1", "mouth", "waist 2", "centre"];
    let edges = (0..6).map(|i| {
        let line = Curve::line(corners[i], corners[(i + 1) % 6]);
        match names[i] {
            "centre" => Edge::fold("centre", line),
            "hem" => Edge::hem("hem", line, 40.0),
            name => Edge::seam(name, line, 15.0),
        }
    });
    let dart = Mark::Dart(Dart {
        name: "waist".into(),
        point: (110.0, 380.0).into(),
        legs: [corners[3].into(), corners[4].into()],
    });
    let panel = Piece::new("panel", edges.collect())?.with_marks(vec![dart])?;
    let side = panel.place((230.0, 380.0)).0;
    let turned = panel.turn_dart(
        "waist",
        &[Opening {
            name: "side".into(),
            at: side,
            share: 1.0,
        }],
    )?;
    let flared = panel.close_dart("waist", panel.place((110.0, 0.0)).0)?;
    let seam = NewSeam {
        name: "yoke".into(),
        allowance: 15.0,
        notches: vec![115.0],
    };
    let [yoke, lower] = panel.split(&Curve::line((-9.0, 330.0), (240.0, 330.0)), &seam)?;
    let slashes = [60.0, 115.0, 170.0].map(|x| Slash {
        open: lower.place((x, 0.0)).0,
        hinge: lower.place((x, 330.0)).0,
        open_by: 40.0,
        hinge_by: 0.0,
    });
    let spread = lower.slash_and_spread(&slashes)?;
    let longer = panel.extend(Line::new((-9.0, 200.0), (240.0, 200.0)), 60.0)?;

    let mut drawing = Drawing::new("What becomes of half a panel");
    let pictures: [(&str, &[(&Piece, f64)]); 6] = [
        ("as drafted", &[(&panel, 0.0)]),
        ("dart turned to the side", &[(&turned, 0.0)]),
        ("dart closed, hem flares", &[(&flared, 0.0)]),
        ("split", &[(&yoke, 70.0), (&lower, 0.0)]),
        ("slashed and spread", &[(&spread, 0.0)]),
        ("lengthened at a line", &[(&longer, 60.0)]),
    ];
    for (number, (name, pieces)) in pictures.into_iter().enumerate() {
        let (column, row) = ((number % 3) as f64, (number / 3) as f64);
        let at = Point::new(column * PITCH.x, -row * PITCH.y);
        for &(piece, up) in pieces {
            pattern(&mut drawing, piece, SCALE, at + Vec2::new(0.0, up / SCALE))?;
        }
        words(&mut drawing, name, at + Vec2::new(115.0 / SCALE, -12.0));
        if name == "lengthened at a line" {
            let ends = [-25.0, 255.0].map(|x| at + Vec2::new(x / SCALE, 260.0 / SCALE));
            drawing.segment(Pen::Construction, ends[0], ends[1]);
            let ends = ends.map(|end| end - Vec2::new(0.0, 60.0 / SCALE));
            drawing.segment(Pen::Construction, ends[0], ends[1]);
        }
    }
    Ok(drawing)
}
