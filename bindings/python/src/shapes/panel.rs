//! Panels: what is usable of one, and the largest rectangle on grain.

use kurbo::Point;
use numpy::PyArray2;
use pyo3::prelude::*;
use recloth::panel::{PanelRectangle, UsablePanel, UsablePart};
use recloth_sheet::{Drawing, LayPanel, Pen, lay_drawing, svg};

use super::read::{
    Pair, Pickled, array, data, from_json, json, pair, parsed, pickled, points, rings,
};
use crate::door::{number, raise};

/// Width and height a panel is shown in (mm).
const SHOWN: f64 = 160.0;

fn shown(title: &str, parts: &[UsablePart]) -> Option<String> {
    let panels: Vec<LayPanel> = parts
        .iter()
        .enumerate()
        .map(|(index, part)| LayPanel {
            name: format!("part {}", index + 1),
            note: format!("{:.0} cm²", part.area_mm2 / 100.0),
            outline: part.outline.clone(),
            holes: part.holes.clone(),
            grain_deg: 90.0,
            ..LayPanel::default()
        })
        .collect();
    svg(&lay_drawing(title, &panels, SHOWN, SHOWN).ok()?).ok()
}

/// One connected part of a panel, of ``UsablePanel.parts``. Immutable.
#[pyclass(name = "UsablePart", module = "recloth", frozen, eq)]
#[derive(PartialEq)]
pub(crate) struct PyUsablePart {
    part: UsablePart,
}

#[pymethods]
impl PyUsablePart {
    /// Corners, counter-clockwise (mm): an array of shape (n, 2).
    #[getter]
    fn outline<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyArray2<f64>>> {
        array(py, &self.part.outline)
    }

    /// Corners of each hole, clockwise (mm): a list of arrays of shape (n, 2).
    #[getter]
    fn holes<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyArray2<f64>>>> {
        self.part.holes.iter().map(|hole| array(py, hole)).collect()
    }

    /// Area, the holes taken off (mm2).
    #[getter]
    fn area_mm2(&self) -> f64 {
        self.part.area_mm2
    }

    /// The part that ``to_json`` wrote.
    #[staticmethod]
    fn from_json(py: Python<'_>, text: &str) -> PyResult<PyUsablePart> {
        from_json(py, "UsablePart.from_json", text).map(|part| PyUsablePart { part })
    }

    /// The part as JSON, every number to the last bit.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        json(py, "UsablePart.to_json", &self.part)
    }

    fn __repr__(&self) -> String {
        let (corners, holes) = (self.part.outline.len(), self.part.holes.len());
        format!(
            "UsablePart({corners} corners, {holes} holes, {:.0} mm2)",
            self.part.area_mm2
        )
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Pickled<'py>> {
        pickled::<PyUsablePart>(py, self.to_json(py)?)
    }

    /// The part as SVG; None where it is beyond what can be drawn.
    fn _repr_svg_(&self) -> Option<String> {
        shown("Usable part", std::slice::from_ref(&self.part))
    }
}

/// What is left of a panel, made by ``usable_panel``. Immutable.
#[pyclass(name = "UsablePanel", module = "recloth", frozen, eq)]
#[derive(PartialEq)]
pub(crate) struct PyUsablePanel {
    panel: UsablePanel,
}

#[pymethods]
impl PyUsablePanel {
    /// The parts it falls into, a list of UsablePart, the largest first; at least one.
    #[getter]
    fn parts(&self) -> Vec<PyUsablePart> {
        self.panel
            .parts
            .iter()
            .map(|part| PyUsablePart { part: part.clone() })
            .collect()
    }

    /// Area of all parts (mm2).
    #[getter]
    fn area_mm2(&self) -> f64 {
        self.panel.area_mm2
    }

    /// Share of the panel's area that is kept; all of it is 1.
    #[getter]
    fn share(&self) -> f64 {
        self.panel.share
    }

    /// The panel that ``to_json`` wrote.
    #[staticmethod]
    fn from_json(py: Python<'_>, text: &str) -> PyResult<PyUsablePanel> {
        from_json(py, "UsablePanel.from_json", text).map(|panel| PyUsablePanel { panel })
    }

    /// The panel as JSON, every number to the last bit.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        json(py, "UsablePanel.to_json", &self.panel)
    }

    /// The panel as dicts and lists, as ``to_json`` writes it.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.to_json(py)?)
    }

    fn __repr__(&self) -> String {
        let parts = self.panel.parts.len();
        let s = if parts == 1 { "" } else { "s" };
        format!(
            "UsablePanel({parts} part{s}, {:.1} % kept)",
            self.panel.share * 100.0
        )
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Pickled<'py>> {
        pickled::<PyUsablePanel>(py, self.to_json(py)?)
    }

    /// The parts as SVG; None where they are beyond what can be drawn.
    fn _repr_svg_(&self) -> Option<String> {
        shown("Usable panel", &self.panel.parts)
    }
}

/// A rectangle on grain in a panel, made by ``largest_rectangle`` or ``tallest_rectangle``. Immutable.
#[pyclass(name = "PanelRectangle", module = "recloth", frozen, eq)]
#[derive(PartialEq)]
pub(crate) struct PyPanelRectangle {
    rectangle: PanelRectangle,
}

impl From<PanelRectangle> for PyPanelRectangle {
    fn from(rectangle: PanelRectangle) -> PyPanelRectangle {
        PyPanelRectangle { rectangle }
    }
}

#[pymethods]
impl PyPanelRectangle {
    /// The corner (x, y) from which the width runs across the grain, and the height along it to the
    /// left of the width (mm).
    #[getter]
    fn corner(&self) -> Pair {
        pair(self.rectangle.corner)
    }

    /// Width across the grain (mm).
    #[getter]
    fn width(&self) -> f64 {
        self.rectangle.width
    }

    /// Height along the grain (mm).
    #[getter]
    fn height(&self) -> f64 {
        self.rectangle.height
    }

    /// Direction of the grain, counter-clockwise from the x axis (degrees).
    #[getter]
    fn grain_deg(&self) -> f64 {
        self.rectangle.grain_deg
    }

    /// Area (mm2).
    #[getter]
    fn area_mm2(&self) -> f64 {
        self.rectangle.area_mm2
    }

    /// The four corners, counter-clockwise from ``corner`` (mm): an array of shape (4, 2).
    #[getter]
    fn corners<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyArray2<f64>>> {
        array(py, &self.rectangle.corners())
    }

    /// The rectangle that ``to_json`` wrote.
    #[staticmethod]
    fn from_json(py: Python<'_>, text: &str) -> PyResult<PyPanelRectangle> {
        from_json(py, "PanelRectangle.from_json", text)
            .map(|rectangle: PanelRectangle| rectangle.into())
    }

    /// The rectangle as JSON, every number to the last bit.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        json(py, "PanelRectangle.to_json", &self.rectangle)
    }

    fn __repr__(&self) -> String {
        format!(
            "PanelRectangle({:.1} x {:.1} mm)",
            self.rectangle.width, self.rectangle.height
        )
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Pickled<'py>> {
        pickled::<PyPanelRectangle>(py, self.to_json(py)?)
    }

    /// The rectangle as SVG; None where it is beyond what can be drawn.
    fn _repr_svg_(&self) -> Option<String> {
        let mut drawing = Drawing::new("Rectangle on grain");
        drawing.polygon(Pen::Cut, &self.rectangle.corners());
        let size = self.rectangle.width.max(self.rectangle.height);
        svg(&drawing.scaled((SHOWN / size).min(1.0))).ok()
    }
}

/// What is left of a panel: its outline less a strip along each edge and less each flaw.
///
/// Every point kept is at least the loss from each old edge and the margin from each flaw.
///
/// Parameters
/// ----------
/// outline : points
///     corners in order, either way round (mm), shape (n, 2), 3 to 2000 points
/// losses : float or list of float
///     lost along every edge, or along each, from each corner to the next (mm), 0 to 1e4
/// flaws : list of points
///     up to 1000: a spot (1 point), a tear (2) or a patch (its corners) each
/// margin : float
///     left round each flaw (mm), 0 to 1e4
/// accuracy : float
///     most that rounding may cost at any place (mm), 0.01 to 10
///
/// Returns
/// -------
/// UsablePanel
///
/// Raises
/// ------
/// ReclothError
///     naming the argument: a number out of range, an outline that crosses itself, a flaw that lies
///     off the panel, or losses that leave nothing
///
/// Examples
/// --------
/// >>> import recloth
/// >>> corners = [(0, 0), (420, 0), (420, 700), (0, 700)]
/// >>> recloth.usable_panel(corners, [40, 15, 10, 15])
/// UsablePanel(1 part, 86.2 % kept)
#[pyfunction]
#[pyo3(signature = (outline, losses, flaws=None, margin=0.0, accuracy=0.1))]
pub(crate) fn usable_panel(
    py: Python<'_>,
    outline: &Bound<'_, PyAny>,
    losses: &Bound<'_, PyAny>,
    flaws: Option<&Bound<'_, PyAny>>,
    #[pyo3(from_py_with = number)] margin: f64,
    #[pyo3(from_py_with = number)] accuracy: f64,
) -> PyResult<PyUsablePanel> {
    let outline = points(outline, "outline")?;
    let losses = (losses, outline.len(), "usable_panel", "losses");
    let losses: Vec<f64> = data(py)?.call_method1("per_edge", losses)?.extract()?;
    let flaws: Vec<Vec<Point>> = flaws.map_or(Ok(Vec::new()), |flaws| rings(flaws, "flaws"))?;
    py.detach(|| recloth::panel::usable_panel(&outline, &losses, &flaws, margin, accuracy))
        .map(|panel| PyUsablePanel { panel })
        .map_err(|error| raise(py, "usable_panel", &error))
}

/// Largest rectangle, one side on grain, that a panel of any shape holds.
///
/// It may touch the outline and the holes, and is proved to hold only cloth.
///
/// Parameters
/// ----------
/// outline : points
///     corners in order, either way round (mm), shape (n, 2), 3 to 10000 points
/// holes : list of points
///     up to 1000, each of shape (n, 2)
/// grain_deg : float
///     the grain, counter-clockwise from the x axis (degrees, -360 to 360); 90 is up
///
/// Returns
/// -------
/// PanelRectangle
///
/// Raises
/// ------
/// ReclothError
///     naming the argument: a number out of range, an outline that crosses itself, no cloth left
///
/// Examples
/// --------
/// >>> import recloth
/// >>> recloth.largest_rectangle([(0, 0), (400, 0), (200, 600)])
/// PanelRectangle(200.0 x 300.0 mm)
#[pyfunction]
#[pyo3(signature = (outline, holes=None, grain_deg=90.0))]
pub(crate) fn largest_rectangle(
    py: Python<'_>,
    outline: &Bound<'_, PyAny>,
    holes: Option<&Bound<'_, PyAny>>,
    #[pyo3(from_py_with = number)] grain_deg: f64,
) -> PyResult<PyPanelRectangle> {
    let outline = points(outline, "outline")?;
    let holes = holes.map_or(Ok(Vec::new()), |holes| rings(holes, "holes"))?;
    py.detach(|| recloth::panel::largest_rectangle(&outline, &holes, grain_deg))
        .map(PyPanelRectangle::from)
        .map_err(|error| raise(py, "largest_rectangle", &error))
}

/// Tallest rectangle of a given width, one side on grain, that a panel of any shape holds.
///
/// It may touch the outline and the holes, and is proved to hold only cloth.
///
/// Parameters
/// ----------
/// outline : points
///     corners in order, either way round (mm), shape (n, 2), 3 to 10000 points
/// width : float
///     width across the grain, allowances included (mm), 0.1 to 2e5
/// holes : list of points
///     up to 1000, each of shape (n, 2)
/// grain_deg : float
///     the grain, counter-clockwise from the x axis (degrees, -360 to 360); 90 is up
///
/// Returns
/// -------
/// PanelRectangle
///
/// Raises
/// ------
/// ReclothError
///     naming the argument: a number out of range, an outline that crosses itself, nowhere so wide
///
/// Examples
/// --------
/// >>> import recloth
/// >>> recloth.tallest_rectangle([(0, 0), (400, 0), (200, 600)], 100)
/// PanelRectangle(100.0 x 450.0 mm)
#[pyfunction]
#[pyo3(signature = (outline, width, holes=None, grain_deg=90.0))]
pub(crate) fn tallest_rectangle(
    py: Python<'_>,
    outline: &Bound<'_, PyAny>,
    #[pyo3(from_py_with = number)] width: f64,
    holes: Option<&Bound<'_, PyAny>>,
    #[pyo3(from_py_with = number)] grain_deg: f64,
) -> PyResult<PyPanelRectangle> {
    let outline = points(outline, "outline")?;
    let holes = holes.map_or(Ok(Vec::new()), |holes| rings(holes, "holes"))?;
    py.detach(|| recloth::panel::tallest_rectangle(&outline, width, &holes, grain_deg))
        .map(PyPanelRectangle::from)
        .map_err(|error| raise(py, "tallest_rectangle", &error))
}
