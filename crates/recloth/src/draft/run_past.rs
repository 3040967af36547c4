//! A piece run on past a straight edge: a button stand, an overlap.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::vec::Vec;

use crate::Error;
use crate::outline::{Corner, Curve, Edge, LineKind, Mark, Piece, Role};

/// What a piece is run on with.
pub(super) struct Past<'a> {
    /// Name of the straight edge that is run past; a line is marked there.
    pub(super) edge: &'a str,
    /// How far (mm).
    pub(super) by: f64,
    /// Name of the new outer edge.
    pub(super) outer: &'a str,
    /// Its role.
    pub(super) role: Role,
    /// Its allowance (mm).
    pub(super) allowance: f64,
}

/// The piece run on past an edge. The edges beside it run on straight, named as they are with `past` and the edge's name.
pub(super) fn run_past(piece: &Piece, past: &Past<'_>) -> Result<Piece, Error> {
    let all = piece.edges();
    let count = all.len();
    let Some(index) = piece.edge(past.edge) else {
        let nan = f64::NAN;
        return Err(Error::no_solution("edge", nan, nan, nan));
    };
    let (before, after) = ((index + count - 1) % count, (index + 1) % count);
    let line = &all[index].curve;
    let along = line.start_tangent();
    // The cloth lies to the left, so out is to the right.
    let out = kurbo::Vec2::new(along.y, -along.x);
    let step = |way: kurbo::Vec2| {
        let reach = way.x * out.x + way.y * out.y;
        way * (past.by / reach)
    };
    let first = line.start() + step(all[before].curve.end_tangent());
    let last = line.end() + step(-all[after].curve.start_tangent());
    let stem = |edge: &Edge| {
        let (name, number) = edge.name.rsplit_once(' ').unwrap_or((&edge.name, ""));
        if number.parse::<u32>().is_ok() {
            name.to_owned()
        } else {
            edge.name.clone()
        }
    };
    let mut edges: Vec<Edge> = Vec::new();
    for (at, edge) in all.iter().enumerate() {
        if at != index {
            edges.push(edge.clone());
            continue;
        }
        let outer = Edge::new(
            past.outer,
            Curve::line(first, last),
            past.role,
            past.allowance,
        );
        if past.by > 0.0 {
            let beside = |at: usize, start, end| Edge {
                name: format!("{} past {}", stem(&all[at]), past.edge),
                curve: Curve::line(start, end),
                corner: Corner::default(),
                notches: Vec::new(),
                ..all[at].clone()
            };
            edges.push(beside(before, line.start(), first));
            edges.push(outer);
            edges.push(beside(after, last, line.end()));
        } else {
            edges.push(outer);
        }
    }
    // Beside what runs on there is no corner any more.
    if past.by > 0.0 {
        let before = &all[before];
        if let Some(edge) = edges.iter_mut().find(|edge| edge.name == before.name) {
            edge.corner = Corner::default();
        }
    }
    let mut marks = piece.marks().to_vec();
    if past.by > 0.0 {
        marks.push(Mark::Line {
            name: past.edge.into(),
            kind: LineKind::Plain,
            curve: *line,
        });
    }
    let longer = Piece::new(piece.name(), edges)?
        .with_marks(marks)?
        .with_cutting(piece.cutting().clone())?;
    match piece.grain() {
        Some(grain) => longer.with_grain(grain),
        None => Ok(longer),
    }
}
