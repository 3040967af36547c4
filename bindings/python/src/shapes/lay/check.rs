//! `check` and `placed`.

use numpy::PyArray2;
use pyo3::prelude::*;
use recloth_lay::{Complaint, Lay, Panel, Part};

use super::{
    super::{
        cloth::panel_list,
        read::{array, points},
    },
    data::{failed, read_lay, read_parts, read_placement},
};
use crate::door::number;

/// What is wrong with a lay: nothing, when it can be cut.
///
/// Proves that every piece is inside its panel, clear of holes, flaws and other pieces, on grain
/// within its tolerance, the right way up, of the right hand, and none too many or too few. Touching
/// is allowed; an overlap deeper than 1e-6 mm is not.
///
/// Parameters
/// ----------
/// parts : list of Part or Piece
///     as of ``fit``
/// panels : list of Panel
///     as of ``fit``
/// placements : list of Placement
///     or dicts with its fields, or tuples in their order
/// unplaced : list of Unplaced
///     pieces left out on purpose; with the placements they make up the counts of the parts
/// folds : list of Fold
///     the lines on which panels are folded when they are cut, or dicts, or tuples in the order of its
///     fields; then what each piece cuts from the other layer must be another's place, or spare
/// spacing : float
///     least distance between the cut lines of two pieces (mm), 0 to 1000
///
/// Returns
/// -------
/// list of str
///     a sentence for each thing wrong, in order of placement; empty when all is right
///
/// Raises
/// ------
/// ReclothError
///     a part, panel or the spacing cannot be used
///
/// Examples
/// --------
/// >>> import recloth
/// >>> cloth = recloth.Panel("back", [(0, 0), (200, 0), (200, 200), (0, 200)])
/// >>> pocket = recloth.Part("pocket", [(0, 0), (150, 0), (150, 150), (0, 150)])
/// >>> recloth.check([pocket], [cloth], [recloth.Placement(0, 0, shift=(20, 30))])
/// []
#[pyfunction]
#[pyo3(signature = (parts, panels, placements, unplaced=None, *, folds=None, spacing=0.0))]
pub(crate) fn check(
    py: Python<'_>,
    parts: &Bound<'_, PyAny>,
    panels: &Bound<'_, PyAny>,
    placements: &Bound<'_, PyAny>,
    unplaced: Option<&Bound<'_, PyAny>>,
    folds: Option<&Bound<'_, PyAny>>,
    #[pyo3(from_py_with = number)] spacing: f64,
) -> PyResult<Vec<String>> {
    let parts = read_parts("check", parts)?;
    let panels = panel_list(panels)?;
    let lay = read_lay("check", placements, unplaced, folds, spacing)?;
    complaints(py, "check", &parts, &panels, &lay)
}

/// What is wrong with a lay, a sentence each.
pub(super) fn complaints(
    py: Python<'_>,
    function: &str,
    parts: &[Part],
    panels: &[Panel],
    lay: &Lay,
) -> PyResult<Vec<String>> {
    match py.detach(|| recloth_lay::check(parts, panels, lay)) {
        Ok(()) => Ok(Vec::new()),
        Err(complaints) => complaints
            .iter()
            .map(|complaint| match complaint {
                Complaint::Input(error) => Err(failed(py, function, error)),
                other => Ok(other.to_string()),
            })
            .collect(),
    }
}

/// An outline as it lies on a panel: mirrored if so, turned, then shifted.
///
/// Parameters
/// ----------
/// outline : points
///     shape (n, 2) (mm)
/// placement : Placement
///     where it lies
///
/// Returns
/// -------
/// numpy.ndarray of shape (n, 2)
#[pyfunction]
pub(crate) fn placed<'py>(
    py: Python<'py>,
    outline: &Bound<'py, PyAny>,
    placement: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyArray2<f64>>> {
    let outline = points(outline, "outline")?;
    let placement = read_placement("placed", placement)?;
    let finite = [placement.turn_deg, placement.shift.x, placement.shift.y];
    for (argument, value) in ["turn_deg", "shift", "shift"].into_iter().zip(finite) {
        recloth::Error::check(argument, value, -1e9, 1e9)
            .map_err(|error| crate::door::raise(py, "placed", &error))?;
    }
    array(py, &recloth_lay::placed(&outline, &placement))
}
