//! Edges trued up over seams and darts.

use pyo3::{prelude::*, types::PyTuple};
use recloth::outline::{self, Meeting, Piece};

use super::{
    piece::PyPiece,
    read::{data, invalid, made, tuple, word},
};
use crate::door::{number, raise};

const TRUE_UP: &str = "true_up";

/// Trues up edges that meet at seams and darts: a waist over darts and side seams, a hem over gores, a
/// neckline over shoulders. Each of two edges that meet in a kink is turned there by half of it, or one by
/// all of it where the other is kept, and drawn anew; corners stay, so no seam changes its length. At a dart the mouth then gets its cap.
///
/// Parameters
/// ----------
/// pieces : list of Piece
///     the pieces
/// meetings : list of SeamEnd and DartMouth
///     where edges are to run on into each other; pieces are given by their index
/// limit : float
///     how far an edge may be moved (mm), 0 to 1000: more is refused
///
/// Returns
/// -------
/// TruedUp
///     the pieces, what was moved, where and how far, and the kinks there were
///
/// Raises
/// ------
/// ReclothError
///     with the index of the meeting: no such piece, edge or dart, an edge beside a fold, an edge moved
///     too far (``moved``)
#[pyfunction]
pub(crate) fn true_up<'py>(
    pieces: &Bound<'py, PyAny>,
    meetings: &Bound<'py, PyAny>,
    #[pyo3(from_py_with = number)] limit: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let py = pieces.py();
    let given: Vec<Bound<'py, PyPiece>> = pieces
        .try_iter()?
        .map(|piece| Ok(piece?.cast_into::<PyPiece>()?))
        .collect::<PyResult<_>>()?;
    let edge =
        |index: usize, edge: &Bound<'py, PyAny>, argument: &'static str| match given.get(index) {
            Some(piece) => piece.get().one(TRUE_UP, argument, edge),
            None => Err(invalid(
                py,
                TRUE_UP,
                "piece",
                "there is no piece of that index",
            )),
        };
    let listed: Vec<(String, Bound<'py, PyAny>)> = data(py)?
        .call_method1("meeting_list", (meetings,))?
        .extract()?;
    let mut read = Vec::new();
    for (kind, meeting) in listed {
        let field = |name: &str| meeting.getattr(name);
        let text = |name: &str| -> PyResult<String> { field(name)?.extract() };
        let piece: usize = field("piece")?.extract()?;
        read.push(if kind == "dart" {
            Meeting::Dart {
                piece,
                dart: text("dart")?,
                onto: word(py, TRUE_UP, "onto", &text("onto")?)?,
            }
        } else {
            let other: usize = field("other")?.extract()?;
            Meeting::Seam {
                pieces: [piece, other],
                edges: [
                    edge(piece, &field("edge")?, "edge")?,
                    edge(other, &field("other_edge")?, "other_edge")?,
                ],
                way: word(py, TRUE_UP, "way", &text("way")?)?,
                end: word(py, TRUE_UP, "end", &text("end")?)?,
                kept: word(py, TRUE_UP, "kept", &text("kept")?)?,
            }
        });
    }
    let pieces: Vec<Piece> = given
        .iter()
        .map(|piece| piece.get().piece.clone())
        .collect();
    let trued = outline::true_up(&pieces, &read, limit);
    let trued = trued.map_err(|error| raise(py, TRUE_UP, &error))?;
    let pieces = trued.pieces.into_iter().map(PyPiece::from);
    let pieces = PyTuple::new(py, pieces.collect::<Vec<_>>())?;
    let edges = trued.edges.iter().map(|edge| {
        let turns = (edge.start_deg, edge.end_deg);
        let change = (edge.moved, edge.distance, edge.longer);
        made(
            py,
            "TruedEdge",
            (
                edge.piece, edge.edge, turns.0, turns.1, change.0, change.1, change.2,
            ),
        )
    });
    let edges = tuple(py, edges)?;
    let kinks = PyTuple::new(py, &trued.kinks_deg)?;
    made(py, "TruedUp", (pieces, edges, trued.largest, kinks))
}
