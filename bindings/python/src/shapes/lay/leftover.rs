//! `leftovers`: what a lay leaves of each panel.

use kurbo::Point;
use pyo3::{prelude::*, types::PyTuple};
use recloth_lay::LeftoverOptions;

use super::{
    super::{
        cloth::panel_list,
        panel::PyPanelRectangle,
        read::{Pair, pair, tuple},
    },
    data::{failed, read_lay, read_parts},
};
use crate::door::{number, whole};

fn read_rectangles(count: &Bound<'_, PyAny>) -> PyResult<u32> {
    let count = whole("leftovers", "rectangles", count, u64::from(u32::MAX))?;
    Ok(u32::try_from(count).unwrap_or(u32::MAX))
}

/// What a lay leaves of each panel: panel by panel, the largest shape first.
///
/// The outline less holes, flaws with their margins, and the pieces as they lie; the spacing between pieces
/// is not taken off. A spot or a slit counts as at least 0.1 mm wide on every side. Nothing is listed
/// that is not left; what lies within 0.1 mm of something taken may be missing, and slivers of a mean
/// width below 0.2 mm are.
///
/// Parameters
/// ----------
/// parts : list of Part or Piece
///     as of ``fit``
/// panels : list of Panel
///     as of ``fit``
/// placements : list of Placement
///     as of ``check``
/// folds : list of Fold
///     as of ``check``: what is cut from the other layer and is spare is a shape by itself
/// rectangles : int
///     how many rectangles at most in each shape, 0 to 100
/// least : float
///     not those with a side shorter than this (mm), 0 to 1e5
///
/// Returns
/// -------
/// tuple of Leftover
///
/// Raises
/// ------
/// ReclothError
///     a part, panel, placement or option cannot be used; a panel or a piece on it has over 2000 points
///
/// Examples
/// --------
/// >>> import recloth
/// >>> cloth = recloth.Panel("back", [(0, 0), (400, 0), (400, 700), (0, 700)])
/// >>> skirt = recloth.Part("skirt", [(0, 0), (300, 0), (300, 600), (0, 600)])
/// >>> left = recloth.leftovers([skirt], [cloth], [recloth.Placement(0, 0)])
/// >>> left[0].rectangles
/// (PanelRectangle(100.0 x 700.0 mm), PanelRectangle(300.0 x 100.0 mm))
#[pyfunction]
#[pyo3(signature = (parts, panels, placements, *, folds=None, rectangles=3, least=20.0))]
pub(crate) fn leftovers<'py>(
    py: Python<'py>,
    parts: &Bound<'py, PyAny>,
    panels: &Bound<'py, PyAny>,
    placements: &Bound<'py, PyAny>,
    folds: Option<&Bound<'py, PyAny>>,
    #[pyo3(from_py_with = read_rectangles)] rectangles: u32,
    #[pyo3(from_py_with = number)] least: f64,
) -> PyResult<Bound<'py, PyTuple>> {
    const NAME: &str = "leftovers";
    let parts = read_parts(NAME, parts)?;
    let panels = panel_list(panels)?;
    let lay = read_lay(NAME, placements, None, folds, 0.0)?;
    let options = LeftoverOptions { rectangles, least };
    let left = py.detach(|| recloth_lay::leftovers(&parts, &panels, &lay, &options));
    let left = left.map_err(|error| failed(py, NAME, &error))?;
    let ring = |points: &[Point]| -> PyResult<Bound<'py, PyTuple>> {
        PyTuple::new(py, points.iter().copied().map(pair).collect::<Vec<Pair>>())
    };
    let class = py.import("recloth._changes")?.getattr("Leftover")?;
    tuple(
        py,
        left.into_iter().map(|shape| {
            let holes = shape.holes.iter().map(|hole| ring(hole));
            let holes = PyTuple::new(py, holes.collect::<PyResult<Vec<_>>>()?)?;
            let rectangles = shape.rectangles.iter().copied();
            let rectangles: Vec<PyPanelRectangle> = rectangles.map(Into::into).collect();
            let rectangles = PyTuple::new(py, rectangles)?;
            let outline = ring(&shape.outline)?;
            class.call1((shape.panel, outline, holes, shape.area_mm2, rectangles))
        }),
    )
}
