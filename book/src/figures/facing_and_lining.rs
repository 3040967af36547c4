//! Half a jacket's back, the facing of its neck, and its lining.

use recloth::Error;
use recloth::outline::{Curve, Edge, EdgeBy, Facing, Lining, LiningDarts, LiningHem, Piece};
use recloth_sheet::Drawing;
use recloth_sheet::kurbo::Point;

use super::draw::{pattern, words};

const SCALE: f64 = 6.5;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let armhole = Curve::cubic(
        (250.0, 340.0),
        (190.0, 345.0),
        (178.0, 430.0),
        (190.0, 540.0),
    );
    let back = Piece::new(
        "back",
        vec![
            Edge::hem("hem", Curve::line((0.0, 0.0), (250.0, 0.0)), 45.0),
            Edge::seam("side", Curve::line((250.0, 0.0), (250.0, 340.0)), 15.0),
            Edge::seam("armhole", armhole, 10.0),
            Edge::seam("shoulder", Curve::line((190.0, 540.0), (75.0, 580.0)), 15.0),
            Edge::seam("neck", Curve::arc((75.0, 580.0), (0.0, 540.0), -0.25), 10.0),
            Edge::fold("centre", Curve::line((0.0, 540.0), (0.0, 0.0))),
        ],
    )?;
    let facing = back.facing(
        &[4],
        &Facing {
            name: "neck facing".into(),
            depth: 60.0,
            roll: 1.0,
            inner_allowance: 10.0,
        },
    )?;
    let lined = back.lining(&Lining {
        name: "lining".into(),
        cloth: "lining".into(),
        facings: vec![EdgeBy { edge: 4, by: 60.0 }],
        ease: vec![EdgeBy { edge: 1, by: 3.0 }],
        pleats: vec![EdgeBy { edge: 5, by: 25.0 }],
        hem: LiningHem::Jump {
            depth: 45.0,
            clearance: 20.0,
        },
        darts: LiningDarts::Tucks,
        allowance: 10.0,
        shell_change_pct: [0.0; 2],
        lining_change_pct: [0.0; 2],
    })?;

    let mut drawing = Drawing::new("A back, the facing of its neck, and its lining");
    // The facing is drawn twice as large as the others.
    for (piece, name, scale, at, words_at) in [
        (&back, "back", SCALE, (0.0, 0.0), (17.0, -11.5)),
        (
            &facing,
            "neck facing, twice as large",
            SCALE / 2.0,
            (58.0, -85.0),
            (80.0, 48.0),
        ),
        (&lined.piece, "lining", SCALE, (128.0, 0.0), (146.0, -11.5)),
    ] {
        pattern(&mut drawing, piece, scale, Point::from(at))?;
        words(&mut drawing, name, Point::from(words_at));
    }
    Ok(drawing)
}
