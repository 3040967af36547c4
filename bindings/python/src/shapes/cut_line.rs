//! The class `CutLine`.

use kurbo::Point;
use numpy::PyArray2;
use pyo3::{prelude::*, types::PyTuple};
use recloth::{Error, outline::CutLine};
use recloth_sheet::{Drawing, Pen, svg};

use super::{
    piece::PyPiece,
    read::{Pair, array, corners, made, pair, point, short, spelled, tuple},
};
use crate::door::{number, raise};

/// The line to cut or sew along: a closed ring of lines and arcs, counter-clockwise.
///
/// Made by ``Piece.cut_line`` and ``Piece.seam_line``. Lengths in millimetres.
#[pyclass(name = "CutLine", module = "recloth", frozen)]
pub(crate) struct PyCutLine {
    pub(crate) line: CutLine,
    /// The piece and the method that made it, for pickling.
    pub(crate) piece: Py<PyPiece>,
    pub(crate) method: &'static str,
    pub(crate) tolerance: f64,
}

impl PyCutLine {
    /// How far chords may lie from the line: as asked, else as the line was made.
    fn chords(
        &self,
        py: Python<'_>,
        function: &str,
        asked: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<f64> {
        let tolerance = asked.map_or(Ok(self.tolerance), number)?;
        Error::check("tolerance", tolerance, 1e-6, 10.0)
            .map_err(|error| raise(py, function, &error))
    }
}

#[pymethods]
impl PyCutLine {
    /// Corners of a polygon whose sides are chords near the line, counter-clockwise, the first not
    /// repeated.
    ///
    /// Parameters
    /// ----------
    /// tolerance : float or None
    ///     how far a chord may lie from the line (mm), 1e-6 to 10; as the line was made by default
    ///
    /// Returns
    /// -------
    /// numpy.ndarray of shape (n, 2)
    #[pyo3(signature = (tolerance=None))]
    fn points<'py>(
        &self,
        py: Python<'py>,
        tolerance: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Bound<'py, PyArray2<f64>>> {
        let tolerance = self.chords(py, "CutLine.points", tolerance)?;
        array(py, &self.line.flatten(tolerance))
    }

    /// Area of the cloth within (mm2), less its cut-outs.
    #[getter]
    fn area(&self) -> f64 {
        self.line.area()
    }

    /// Length of the whole line (mm).
    #[getter]
    fn length(&self) -> f64 {
        self.line.length()
    }

    /// The smallest upright box that holds it: left, bottom, right, top (mm).
    #[getter]
    fn bounds(&self) -> (f64, f64, f64, f64) {
        corners(self.line.bounds())
    }

    /// Its lines and arcs, a tuple of CutSegment; each starts where the one before ends.
    #[getter]
    fn segments<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        tuple(
            py,
            self.line.segments().iter().map(|part| {
                let segment = part.segment;
                let ends = (pair(segment.start), pair(segment.end));
                made(py, "CutSegment", (ends.0, ends.1, segment.bulge, part.edge))
            }),
        )
    }

    /// The notches carried to it, a tuple of CutNotch, edge by edge.
    #[getter]
    fn notches<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        tuple(
            py,
            self.line.notches().iter().map(|notch| {
                let ends = (pair(notch.seam), pair(notch.cut));
                made(
                    py,
                    "CutNotch",
                    (
                        notch.edge,
                        &notch.name,
                        notch.marks,
                        ends.0,
                        ends.1,
                        spelled(notch.form),
                        notch.depth,
                    ),
                )
            }),
        )
    }

    /// The lines along which the cut-outs of the piece are cut, a tuple of arrays of the corners of
    /// polygons, shape (n, 2), clockwise.
    #[pyo3(signature = (tolerance=None))]
    fn cutouts<'py>(
        &self,
        py: Python<'py>,
        tolerance: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Bound<'py, PyTuple>> {
        let tolerance = self.chords(py, "CutLine.cutouts", tolerance)?;
        let cutouts = self.line.cutouts().iter();
        tuple(
            py,
            cutouts.map(|cutout| Ok(array(py, &cutout.flatten(tolerance))?.into_any())),
        )
    }

    /// The corners that could not be made as asked and are pointed instead, a tuple of sentences
    /// that name the edge and say what would do.
    #[getter]
    fn unmade<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let piece = &self.piece.get().piece;
        let unmade = self.line.unmade().iter();
        PyTuple::new(
            py,
            unmade
                .map(|error| piece.sentence(error))
                .collect::<Vec<_>>(),
        )
    }

    /// Whether a point (x, y) lies inside.
    fn contains(&self, #[pyo3(from_py_with = point)] point: Pair) -> bool {
        self.line.contains(Point::from(point))
    }

    /// Distance of a point (x, y) from the line (mm).
    fn distance(&self, #[pyo3(from_py_with = point)] point: Pair) -> f64 {
        self.line.distance(Point::from(point))
    }

    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        other
            .cast::<PyCutLine>()
            .is_ok_and(|other| other.get().line == self.line)
    }

    fn __repr__(&self) -> String {
        let parts = self.line.segments().len();
        format!(
            "CutLine({}, {parts} lines and arcs)",
            short(self.piece.get().piece.name())
        )
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, (Py<PyPiece>,))> {
        let caller = py
            .import("operator")?
            .call_method1("methodcaller", (self.method, self.tolerance))?;
        Ok((caller, (self.piece.clone_ref(py),)))
    }

    /// The line as SVG; None where it is beyond what can be drawn.
    fn _repr_svg_(&self) -> Option<String> {
        let bounds = self.line.bounds();
        let scale = (160.0 / bounds.width().max(bounds.height())).min(1.0);
        let mut drawing = Drawing::new(self.piece.get().piece.name());
        drawing.line(Pen::Cut, self.line.path(self.tolerance));
        svg(&drawing.scaled(scale)).ok()
    }
}
