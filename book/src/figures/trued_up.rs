//! Two gores laid together as sewn, before and after their hems and waists are trued up.

use recloth::Error;
use recloth::outline::{
    Curve, Edge, EdgeEnd, Joined, Kept, LineKind, Mark, Meeting, Piece, Way, true_up,
};
use recloth_sheet::Drawing;
use recloth_sheet::kurbo::Point;

use super::draw::{pattern, words};

const SCALE: f64 = 6.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let corners = [(-110.0, 0.0), (110.0, 0.0), (55.0, 300.0), (-55.0, 300.0)];
    let names = ["hem", "right", "waist", "left"];
    let edges =
        (0..4).map(|i| Edge::seam(names[i], Curve::line(corners[i], corners[(i + 1) % 4]), 0.0));
    let gore = Piece::new("gore", edges.collect())?;
    let meeting = |end: EdgeEnd| Meeting::Seam {
        pieces: [0, 0],
        edges: [1, 3],
        way: Way::Against,
        end,
        kept: Kept::Neither,
    };
    let trued = true_up(
        std::slice::from_ref(&gore),
        &[meeting(EdgeEnd::Start), meeting(EdgeEnd::End)],
        20.0,
    )?;
    let mut drawing = Drawing::new("Two gores, before and after truing up");
    for (number, (gore, name)) in [
        (&gore, "as drafted: a peak"),
        (&trued.pieces[0], "trued up"),
    ]
    .into_iter()
    .enumerate()
    {
        let Joined { piece, .. } = gore.join(1, gore, 3, 0.5)?;
        let seam = Mark::Line {
            name: "seam".into(),
            kind: LineKind::Stitching,
            curve: Curve::line(corners[1], corners[2]),
        };
        // Turned so that the seam is upright.
        let lean = libm::atan2(55.0, 300.0).to_degrees();
        let piece = piece.with_marks(vec![seam])?.turned(-lean);
        let at = Point::new(number as f64 * 88.0, 0.0);
        pattern(&mut drawing, &piece, SCALE, at)?;
        words(&mut drawing, name, Point::new(at.x + 18.0, -17.0));
    }
    Ok(drawing)
}
