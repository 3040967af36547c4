//! Invented pieces that cut lines are compared and timed on.

use recloth::Error;
use recloth::outline::{Corner, Curve, Dart, Edge, Mark, Piece};

/// Allowance on every edge (mm).
pub const ALLOWANCE: f64 = 10.0;

/// A front of an invented waistcoat: 12 edges, of them 4 lines, 4 arcs and 4 cubics, the same allowance all round.
///
/// # Errors
/// None that is known: the piece is a good one.
pub fn waistcoat_front() -> Result<Piece, Error> {
    front(true)
}

/// The same with arcs in place of the cubics, and corners rounded about the corners of the seam line: what a library makes
/// that knows lines, arcs and one distance.
///
/// # Errors
/// None that is known: the piece is a good one.
pub fn waistcoat_front_of_arcs() -> Result<Piece, Error> {
    front(false)
}

fn front(cubics: bool) -> Result<Piece, Error> {
    let corners = [
        (0.0, 0.0),
        (60.0, -40.0),
        (120.0, 0.0),
        (255.0, 15.0),
        (250.0, 120.0),
        (262.0, 260.0),
        (215.0, 330.0),
        (205.0, 420.0),
        (100.0, 455.0),
        (70.0, 400.0),
        (10.0, 290.0),
        (0.0, 150.0),
    ];
    let names = [
        "point 1",
        "point 2",
        "hem",
        "side 1",
        "side 2",
        "armhole 1",
        "armhole 2",
        "shoulder",
        "neck 1",
        "neck 2",
        "breast",
        "front edge",
    ];
    // Of an arc its bulge; of a cubic how far its steering points lie to the left, in chords.
    let bends = [
        0.0, 0.0, 0.08, -0.06, 0.05, -0.2, -0.15, 0.0, -0.12, 0.1, 0.06, 0.0,
    ];
    let edges = (0..12).map(|index| {
        let (a, b) = (corners[index], corners[(index + 1) % 12]);
        let bend = bends[index];
        let curve = if bend == 0.0 || index % 2 == 0 || !cubics {
            Curve::arc(a, b, bend)
        } else {
            let along = (b.0 - a.0, b.1 - a.1);
            let point = |part: f64, aside: f64| {
                (
                    a.0 + along.0 * part + along.1 * aside,
                    a.1 + along.1 * part - along.0 * aside,
                )
            };
            Curve::cubic(a, point(0.3, bend), point(0.75, 1.4 * bend), b)
        };
        let edge = Edge::seam(names[index], curve, ALLOWANCE);
        if cubics {
            edge
        } else {
            edge.corner(Corner::Rounded { radius: ALLOWANCE })
        }
    });
    Piece::new("front", edges.collect())
}

/// Half a skirt front, 240 by 600, that a dart is opened in.
///
/// # Errors
/// None that is known: the piece is a good one.
pub fn skirt_front() -> Result<Piece, Error> {
    let corners = [(0.0, 0.0), (290.0, 0.0), (240.0, 600.0), (0.0, 600.0)];
    let names = ["hem", "side", "waist", "centre"];
    let edges = (0..4).map(|index| {
        let curve = Curve::line(corners[index], corners[(index + 1) % 4]);
        Edge::seam(names[index], curve, ALLOWANCE).notch("balance", 100.0, 1)
    });
    Piece::new("skirt front", edges.collect())?.with_marks(vec![Mark::Drill {
        name: "pocket".into(),
        at: (200.0, 400.0).into(),
    }])
}

/// Whether the piece has a dart of this name: for the bench, which must not time an error.
pub fn has_dart(piece: &Piece, name: &str) -> bool {
    let named = |mark: &Mark| matches!(mark, Mark::Dart(Dart { name: own, .. }) if own == name);
    piece.marks().iter().any(named)
}
