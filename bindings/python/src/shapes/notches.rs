//! Notches of two pieces that are sewn together.

use pyo3::{prelude::*, types::PyTuple};
use recloth::outline::{PairedNotch, Place, Way};

use super::{
    piece::PyPiece,
    read::{data, made, tuple, whole, word},
};

#[pymethods]
impl PyPiece {
    /// Pairs the notches of this piece with those of another by their names, the first of a name with the
    /// first. Where they are to meet, and how far off they are, a walk along the seam tells.
    ///
    /// Parameters
    /// ----------
    /// other : Piece
    ///     the other piece
    ///
    /// Returns
    /// -------
    /// tuple of NotchMatch
    ///     in the order of this piece's edges, then those that only the other has
    fn match_notches<'py>(&self, other: &Bound<'py, PyPiece>) -> PyResult<Bound<'py, PyTuple>> {
        let py = other.py();
        let place = |place: Option<Place>| {
            let made = |place: Place| made(py, "Place", (place.edge, place.distance));
            place.map(made).transpose()
        };
        let found = self.piece.match_notches(&other.get().piece);
        let found = found.iter().map(|notch| {
            let places = (place(notch.here)?, place(notch.there)?);
            let marks = (notch.marks, notch.other_marks);
            made(
                py,
                "NotchMatch",
                (&notch.name, places.0, places.1, marks.0, marks.1),
            )
        });
        tuple(py, found)
    }

    /// Sets notches that meet on edges of this piece and of another, which are walked along each other: at
    /// equal distances from where the walk starts, but for the ease asked for.
    ///
    /// Parameters
    /// ----------
    /// edges, other, other_edges, way
    ///     as of ``walk``
    /// notches : list of PairedNotch
    ///     or dicts, or tuples (name, distance, ease, marks); no edge may have one of that name yet
    ///
    /// Returns
    /// -------
    /// tuple of two Piece
    ///     this piece and the other, notched
    #[pyo3(signature = (edges, other, other_edges, notches, way="against"))]
    fn pair_notches(
        &self,
        edges: &Bound<'_, PyAny>,
        other: &Bound<'_, PyPiece>,
        other_edges: &Bound<'_, PyAny>,
        notches: &Bound<'_, PyAny>,
        way: &str,
    ) -> PyResult<(PyPiece, PyPiece)> {
        const PAIR: &str = "Piece.pair_notches";
        let py = edges.py();
        let other = other.get();
        let way: Way = word(py, PAIR, "way", way)?;
        let edges = self.indices(PAIR, "edges", edges)?;
        let other_edges = other.indices(PAIR, "other_edges", other_edges)?;
        let listed = data(py)?.call_method1("paired_notch_list", (notches,))?;
        let mut read = Vec::new();
        for notch in listed.try_iter()? {
            let notch = notch?;
            let marks = crate::door::number(&notch.getattr("marks")?)?;
            read.push(PairedNotch {
                name: notch.getattr("name")?.extract()?,
                distance: notch.getattr("distance")?.extract()?,
                ease: notch.getattr("ease")?.extract()?,
                marks: whole(py, PAIR, "marks", marks)?,
            });
        }
        let paired = self
            .piece
            .pair_notches(&edges, &other.piece, &other_edges, way, &read);
        let [first, second] = paired.map_err(|error| self.failed(py, PAIR, &error))?;
        Ok((first.into(), second.into()))
    }
}
