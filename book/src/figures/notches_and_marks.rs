//! Half a waistcoat's front with its notches and marks, as it is drawn to cut from.

use recloth::Error;
use recloth::outline::{Curve, Edge, LineKind, Mark, Notch, NotchForm, Piece};
use recloth_sheet::kurbo::{Line, Point};
use recloth_sheet::{Drawing, PieceOptions, piece_drawing};

pub(super) fn drawing() -> Result<Drawing, Error> {
    let line = |from: (f64, f64), to: (f64, f64)| Curve::line(from, to);
    let armhole = Curve::cubic(
        (220.0, 300.0),
        (165.0, 306.0),
        (155.0, 380.0),
        (160.0, 470.0),
    );
    let mut side =
        Edge::seam("side", line((220.0, 0.0), (220.0, 300.0)), 15.0).notch("hip", 95.0, 1);
    side.notches.push(Notch {
        form: NotchForm::Wedge,
        ..Notch::new("bust", 180.0, 2)
    });
    let buttonhole = |name: &str, y: f64| Mark::Buttonhole {
        name: name.into(),
        ends: [Point::new(5.0, y), Point::new(27.0, y)],
    };
    let mark = |name: &str, kind: LineKind, from: (f64, f64), to: (f64, f64)| Mark::Line {
        name: name.into(),
        kind,
        curve: line(from, to),
    };
    let piece = Piece::new(
        "front",
        vec![
            Edge::hem("hem", line((0.0, 0.0), (220.0, 0.0)), 30.0),
            side,
            Edge::seam("armhole", armhole, 10.0).notch("front", 90.0, 1),
            Edge::seam("shoulder", line((160.0, 470.0), (70.0, 490.0)), 15.0),
            Edge::opening("neck", line((70.0, 490.0), (0.0, 300.0)), 10.0),
            Edge::opening("front edge", line((0.0, 300.0), (0.0, 0.0)), 10.0),
        ],
    )?
    .with_marks(vec![
        buttonhole("top", 240.0),
        buttonhole("low", 110.0),
        mark("welt", LineKind::Placement, (60.0, 150.0), (160.0, 158.0)),
        Mark::Drill {
            name: "pocket end".into(),
            at: Point::new(150.0, 120.0),
        },
        mark("stripe", LineKind::Stripe, (0.0, 60.0), (220.0, 60.0)),
        mark("roll", LineKind::Fold, (0.0, 270.0), (84.0, 487.0)),
    ])?
    .with_grain(Line::new((110.0, 190.0), (110.0, 360.0)))?;
    let options = PieceOptions {
        scale: 0.34,
        text: 5.0,
        edges: false,
        ..PieceOptions::default()
    };
    piece_drawing(&piece, &options)
}
