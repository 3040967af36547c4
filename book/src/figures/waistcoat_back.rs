//! Half a waistcoat's back with every kind of edge, as it is drawn to cut from.

use recloth::Error;
use recloth::outline::{Corner, Curve, Cutout, Edge, Mark, Piece};
use recloth_sheet::kurbo::Line;
use recloth_sheet::{Drawing, PieceOptions, piece_drawing};

/// The piece of the page.
pub(super) fn piece() -> Result<Piece, Error> {
    let ring = [((-12.0, 0.0), (12.0, 0.0)), ((12.0, 0.0), (-12.0, 0.0))].map(|(from, to)| {
        let at = |point: (f64, f64)| (120.0 + point.0, 120.0);
        Edge::opening("eyelet", Curve::arc(at(from), at(to), 1.0), 6.0)
    });
    Piece::new(
        "back",
        vec![
            Edge::hem("hem", Curve::line((0.0, 0.0), (240.0, 0.0)), 30.0)
                .corner(Corner::MirroredOnThis),
            Edge::seam("side", Curve::line((240.0, 0.0), (255.0, 260.0)), 15.0).already_cut(),
            Edge::opening(
                "armhole",
                Curve::cubic(
                    (255.0, 260.0),
                    (190.0, 268.0),
                    (182.0, 350.0),
                    (190.0, 470.0),
                ),
                10.0,
            ),
            Edge::seam("shoulder", Curve::line((190.0, 470.0), (75.0, 500.0)), 15.0),
            Edge::opening("neck", Curve::arc((75.0, 500.0), (0.0, 460.0), -0.25), 6.0),
            Edge::fold("centre back", Curve::line((0.0, 460.0), (0.0, 0.0))),
        ],
    )?
    .with_marks(vec![Mark::Cutout(Cutout {
        name: "eyelet".into(),
        edges: ring.to_vec(),
    })])?
    .with_grain(Line::new((50.0, 80.0), (50.0, 380.0)))
}

pub(super) fn drawing() -> Result<Drawing, Error> {
    let options = PieceOptions {
        scale: 0.3,
        text: 5.0,
        ..PieceOptions::default()
    };
    piece_drawing(&piece()?, &options)
}
