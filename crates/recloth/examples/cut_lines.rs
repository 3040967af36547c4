//! Prints random pieces and their cut lines as JSON, one a line, for `tests/oracle/outline.py`:
//! `cargo run -p recloth --example cut_lines -- COUNT FIRST_SEED`.
#![allow(clippy::print_stdout)]

#[path = "../tests/pieces/mod.rs"]
mod pieces;

use kurbo::Point;
use pieces::{Kind, random_piece};
use recloth::outline::{Corner, Curve, Cutout, Edge, Mark, Piece, Role};

const TOLERANCE: f64 = 0.02;
/// Allowance inside the cut-outs (mm).
const INSIDE: f64 = 3.0;

/// What is asked at the corners of a piece.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Corners {
    /// Pointed, with the usual limit.
    Pointed,
    /// Rounded about the corner itself, as wide as the allowance.
    Round,
    /// Every treatment there is.
    Any,
}

fn main() {
    let mut arguments = std::env::args().skip(1);
    let mut number = |otherwise| match arguments.next() {
        Some(text) => text.parse().expect("a whole number"),
        None => otherwise,
    };
    let (count, first) = (number(100), number(0));
    for seed in first..first + count {
        for (straight, uniform, corners) in [
            (true, true, Corners::Pointed),
            (false, true, Corners::Pointed),
            (true, false, Corners::Pointed),
            (false, false, Corners::Pointed),
            (true, true, Corners::Round),
            (false, true, Corners::Round),
            (false, false, Corners::Any),
        ] {
            let kind = Kind {
                straight,
                uniform,
                pointed: corners != Corners::Any,
            };
            println!("{{\"seed\": {seed}, {}}}", case(seed, kind, corners));
        }
    }
}

/// A random piece and its cut line, as fields of JSON.
fn case(seed: u64, kind: Kind, corners: Corners) -> String {
    let mut piece = random_piece(seed, kind);
    if corners == Corners::Round {
        let round = |edge: Edge| {
            let radius = edge.allowance;
            edge.corner(Corner::Rounded { radius })
        };
        piece = with_edges(&piece, round);
    }
    if !kind.uniform && seed.is_multiple_of(3) {
        let straight = piece
            .edges()
            .iter()
            .position(|edge| matches!(edge.curve, Curve::Segment(s) if s.is_line()));
        let fold = straight.map(|index| piece.edges()[index].name.clone());
        piece = with_edges(&piece, |mut edge| {
            if Some(&edge.name) == fold.as_ref() {
                (edge.role, edge.allowance) = (Role::Fold, 0.0);
            }
            edge
        });
    }
    let cutout = cutout(&piece);
    let with = piece.clone().with_marks(vec![Mark::Cutout(cutout.clone())]);
    let opening = with.ok().map(|piece| match piece.cut_line(TOLERANCE) {
        Ok(cut) => points(&cut.cutouts()[0].flatten(TOLERANCE / 4.0)),
        Err(error) if error.argument() == "cutout" => "\"none left\"".into(),
        Err(_) => "null".into(),
    });
    let widths: Vec<f64> = piece.edges().iter().map(|e| e.outside()).collect();
    let fold = (piece.edges().iter()).position(|edge| edge.role == Role::Fold);
    let fold = fold.map_or("null".into(), |index| index.to_string());
    let cut = piece.cut_line(TOLERANCE);
    format!(
        "\"straight\": {}, \"uniform\": {}, \"corners\": \"{corners:?}\", \"tolerance\": {TOLERANCE}, \
         \"limit\": {}, \"widths\": {widths:?}, \"fold\": {fold}, \"edges\": [{}], \"cut\": {}, \"inside\": {INSIDE}, \
         \"cutout\": [{}], \"opening\": {}",
        kind.straight,
        kind.uniform,
        recloth::outline::POINT_LIMIT,
        drawn(&piece).join(", "),
        cut.map_or("null".into(), |cut| points(&cut.flatten(TOLERANCE / 4.0))),
        Piece::new("cut-out", cutout.edges).map_or(String::new(), |ring| drawn(&ring).join(", ")),
        opening.unwrap_or("null".into()),
    )
}

fn with_edges(piece: &Piece, change: impl Fn(Edge) -> Edge) -> Piece {
    let edges = piece.edges().iter().cloned().map(change);
    Piece::new(piece.name(), edges.collect()).expect("a piece")
}

/// The outline at a quarter of its size, about the origin: within most pieces, for they go round it.
fn cutout(piece: &Piece) -> Cutout {
    let small = |point: Point| Point::new(point.x / 4.0, point.y / 4.0);
    let edges = piece.edges().iter().map(|edge| {
        let curve = match edge.curve {
            Curve::Segment(s) => Curve::arc(small(s.start), small(s.end), s.bulge),
            Curve::Cubic(c) => Curve::cubic(small(c.p0), small(c.p1), small(c.p2), small(c.p3)),
        };
        Edge::seam(edge.name.as_str(), curve, INSIDE)
    });
    Cutout {
        name: "cut-out".into(),
        edges: edges.collect(),
    }
}

/// Each edge as a fine polyline.
fn drawn(piece: &Piece) -> Vec<String> {
    let mut edges: Vec<Vec<Point>> = piece
        .edges()
        .iter()
        .map(|e| vec![e.curve.start()])
        .collect();
    for (edge, segment) in piece.segments(1e-4) {
        // Chords within 0.002 mm, and of 1 degree at most.
        let chord_deg = (2.0 * libm::acos((1.0 - 0.002 / segment.radius()).max(0.0))).to_degrees();
        let parts = (segment.sweep_deg().abs() / chord_deg.min(1.0))
            .ceil()
            .max(1.0) as u32;
        let length = segment.length();
        edges[edge]
            .extend((1..=parts).map(|i| segment.at(length * f64::from(i) / f64::from(parts)).0));
    }
    edges.iter().map(|edge| points(edge)).collect()
}

fn points(list: &[Point]) -> String {
    let list: Vec<String> = list.iter().map(|p| format!("[{}, {}]", p.x, p.y)).collect();
    format!("[{}]", list.join(", "))
}
