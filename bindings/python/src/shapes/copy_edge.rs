//! Edges copied between landmarks, and measured ones.

use pyo3::{prelude::*, types::PyTuple};
use recloth::outline::{self, CopyFit, Edge, Mark};

use super::{
    piece::{PyPiece, edge_data, read_edges, read_mark},
    read::{data, invalid, made, points, tuple},
};
use crate::door::{number, raise};

#[pymethods]
impl PyPiece {
    /// The edges from one place of the outline forward to another, counter-clockwise, those cut through in
    /// part: to be copied onto another piece.
    ///
    /// Parameters
    /// ----------
    /// start, end : Place, or (edge, distance)
    ///     the two places
    ///
    /// Returns
    /// -------
    /// tuple of Edge
    fn trace<'py>(
        &self,
        start: &Bound<'py, PyAny>,
        end: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyTuple>> {
        const TRACE: &str = "Piece.trace";
        let py = start.py();
        let from = self.read_place(TRACE, "start", start)?;
        let to = self.read_place(TRACE, "end", end)?;
        let traced = self.piece.trace(from, to);
        let traced = traced.map_err(|error| self.failed(py, TRACE, &error))?;
        edge_tuple(py, &traced)
    }

    /// Copies an edge onto the piece between two landmarks, in place of its outline from the one forward to
    /// the other: the side of a garment that fits, an armhole traced, a neckline measured. It is moved and
    /// turned, and stretched only if that is asked for.
    ///
    /// Parameters
    /// ----------
    /// start, end : Place, or (edge, distance)
    ///     the landmarks on this piece, counter-clockwise
    /// copied : list of Edge
    ///     the edge, from ``trace`` of another piece or from ``measured_edge``
    /// gap : float
    ///     how much nearer or farther apart its ends may be than the landmarks (mm), 0 to 1000; both ends
    ///     share what they miss by
    /// stretch_pct : float
    ///     how much it may be stretched or shrunk to fit (%), 0 to 50; 0 for never
    ///
    /// Returns
    /// -------
    /// Copied
    ///
    /// Raises
    /// ------
    /// ReclothError
    ///     the ends miss the landmarks by more (``misfit``, or ``stretch``), a fold lies between them
    #[pyo3(signature = (start, end, copied, *, gap=0.0, stretch_pct=0.0))]
    fn copy_edge<'py>(
        &self,
        start: &Bound<'py, PyAny>,
        end: &Bound<'py, PyAny>,
        copied: &Bound<'py, PyAny>,
        #[pyo3(from_py_with = number)] gap: f64,
        #[pyo3(from_py_with = number)] stretch_pct: f64,
    ) -> PyResult<Bound<'py, PyAny>> {
        const COPY: &str = "Piece.copy_edge";
        let py = start.py();
        let from = self.read_place(COPY, "start", start)?;
        let to = self.read_place(COPY, "end", end)?;
        let edges = read_edges(COPY, copied)?;
        let fit = CopyFit { gap, stretch_pct };
        let copied = self.piece.copy_edge(from, to, &edges, fit);
        let copied = copied.map_err(|error| self.failed(py, COPY, &error))?;
        made(
            py,
            "Copied",
            (
                PyPiece::from(copied.piece),
                copied.length,
                copied.replaced,
                copied.turn_deg,
                copied.stretch_pct,
                copied.gap,
                copied.doubts,
            ),
        )
    }
}

/// Points measured along an edge as an edge, to be copied onto a piece.
///
/// Parameters
/// ----------
/// name : str
///     its name
/// points : points
///     2 to 1001, in order (mm), shape (n, 2)
/// smooth : bool
///     whether it runs smoothly through them, or straight from point to point
///
/// Returns
/// -------
/// tuple of Edge
///     one from each point to the next
#[pyfunction]
#[pyo3(signature = (name, points, smooth=true))]
pub(crate) fn measured_edge<'py>(
    name: &str,
    points: &Bound<'py, PyAny>,
    smooth: bool,
) -> PyResult<Bound<'py, PyTuple>> {
    let py = points.py();
    let points = self::points(points, "points")?;
    let measured = outline::measured_edge(name, &points, smooth);
    let measured = measured.map_err(|error| raise(py, "measured_edge", &error))?;
    edge_tuple(py, &measured)
}

/// Edges measured on a garment with a dart sewn, as they run with it open, to be copied onto a piece that has
/// it: above the level of its point they move away from it by a share of its width there.
///
/// Parameters
/// ----------
/// dart : DartMark
///     the dart, where it lies beside the edges
/// edges : list of Edge
///     the edges, all on one side of it
/// share : float
///     what of the dart opens towards them, 0 to 1
///
/// Returns
/// -------
/// tuple of Edge
#[pyfunction]
#[pyo3(signature = (dart, edges, share=1.0))]
pub(crate) fn opened_edge<'py>(
    dart: &Bound<'py, PyAny>,
    edges: &Bound<'py, PyAny>,
    #[pyo3(from_py_with = number)] share: f64,
) -> PyResult<Bound<'py, PyTuple>> {
    const OPENED: &str = "opened_edge";
    let py = dart.py();
    data(py)?.call_method1("dart_mark", (dart,))?;
    let Mark::Dart(dart) = read_mark(OPENED, "dart", dart)? else {
        return Err(invalid(py, OPENED, "dart", "it is no dart"));
    };
    let edges = read_edges(OPENED, edges)?;
    let opened = dart.opened(&edges, share);
    let opened = opened.map_err(|error| raise(py, OPENED, &error))?;
    edge_tuple(py, &opened)
}

fn edge_tuple<'py>(py: Python<'py>, edges: &[Edge]) -> PyResult<Bound<'py, PyTuple>> {
    tuple(py, edges.iter().map(|edge| edge_data(py, edge)))
}
