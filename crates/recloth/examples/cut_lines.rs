//! Prints random pieces and their cut lines as JSON, one a line, for `tests/oracle/outline.py`:
//! `cargo run -p recloth --example cut_lines -- COUNT FIRST_SEED`.
#![allow(clippy::print_stdout)]

#[path = "../tests/pieces/mod.rs"]
mod pieces;

use kurbo::Point;
use pieces::{Kind, random_piece};
use recloth::outline::Piece;

const TOLERANCE: f64 = 0.02;

fn main() {
    let mut arguments = std::env::args().skip(1);
    let mut number = |otherwise| match arguments.next() {
        Some(text) => text.parse().expect("a whole number"),
        None => otherwise,
    };
    let (count, first) = (number(100), number(0));
    for seed in first..first + count {
        for (straight, uniform) in [(true, true), (false, true), (true, false), (false, false)] {
            let kind = Kind {
                straight,
                uniform,
                pointed: true,
            };
            let piece = random_piece(seed, kind);
            let widths: Vec<f64> = piece.edges().iter().map(|e| e.outside()).collect();
            let cut = match piece.cut_line(TOLERANCE) {
                Ok(cut) => points(&cut.flatten(1e-3)),
                Err(_) => "null".into(),
            };
            println!(
                "{{\"seed\": {seed}, \"straight\": {straight}, \"uniform\": {uniform}, \
                 \"tolerance\": {TOLERANCE}, \"limit\": {}, \"widths\": {widths:?}, \
                 \"edges\": [{}], \"cut\": {cut}}}",
                recloth::outline::POINT_LIMIT,
                drawn(&piece).join(", "),
            );
        }
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
        let parts = (segment.sweep_deg().abs() / 0.25).ceil().max(1.0) as u32;
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
