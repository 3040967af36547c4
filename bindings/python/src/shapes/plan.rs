//! The class `Plan`.

use std::{path::PathBuf, sync::OnceLock};

use pyo3::{
    exceptions::{PyOSError, PyTypeError},
    prelude::*,
    types::{PyBytes, PyDict, PyString, PyType},
};
use recloth::Error;
use recloth_lay::Progress;
use recloth_plan::{BriefError, Plan};

use super::{
    lay::{fit::PyFit, watch::Watch},
    piece::PyPiece,
    read::{parsed, short},
};
use crate::door::raise;

/// A plan's files, as name and content.
type Files = Vec<(String, Vec<u8>)>;

/// Everything worked out from a brief; made by ``plan``.
///
/// Immutable; equal when all of it is. A notebook shows its worksheet.
#[pyclass(name = "Plan", module = "recloth", frozen)]
pub(crate) struct PyPlan {
    plan: Plan,
    brief: String,
    name: String,
    /// Written on first use: the sheets take longer than the plan.
    files: OnceLock<Result<Files, Error>>,
}

impl PyPlan {
    fn all(&self, py: Python<'_>) -> PyResult<&Files> {
        let files = py.detach(|| self.files.get_or_init(|| self.plan.files()));
        files
            .as_ref()
            .map_err(|error| raise(py, "Plan.files", error))
    }

    fn text(&self, py: Python<'_>, name: &str) -> PyResult<String> {
        let files = self.all(py)?;
        let bytes = files
            .iter()
            .find(|(known, _)| known == name)
            .map_or(&[][..], |(_, bytes)| bytes);
        Ok(String::from_utf8_lossy(bytes).into_owned())
    }
}

#[pymethods]
impl PyPlan {
    /// Title of the brief.
    #[getter]
    fn title(&self) -> &str {
        &self.plan.title
    }

    /// The text of the brief.
    #[getter]
    fn brief(&self) -> &str {
        &self.brief
    }

    /// Name of the brief, as given to ``plan``.
    #[getter]
    fn name(&self) -> &str {
        &self.name
    }

    /// Title, whether everything fits, what is larger than every panel, and doubts, a line each.
    #[getter]
    fn summary(&self) -> String {
        let mut lines = vec![self.plan.title.clone(), self.plan.answer()];
        lines.extend(self.too_large());
        lines.extend(
            self.plan
                .doubts
                .iter()
                .map(|doubt| format!("Doubt: {doubt}")),
        );
        lines.join("\n")
    }

    /// The pieces with their seam lines, a list of Piece.
    #[getter]
    fn pieces(&self) -> Vec<PyPiece> {
        self.plan
            .pieces
            .iter()
            .map(|piece| piece.piece.clone().into())
            .collect()
    }

    /// The lays by cloth, a dict of Fit.
    #[getter]
    fn lays<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let lays = PyDict::new(py);
        for laid in &self.plan.lays {
            let fit = PyFit::new(laid.parts.clone(), laid.panels.clone(), laid.fit.clone());
            lays.set_item(&laid.cloth, fit)?;
        }
        Ok(lays)
    }

    /// Pieces with no place in the lays, a dict of how many by name.
    #[getter]
    fn unplaced<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let unplaced = PyDict::new(py);
        for (number, count) in self.plan.unplaced() {
            if let Some(piece) = self.plan.pieces.iter().find(|piece| piece.number == number) {
                unplaced.set_item(piece.piece.name(), count)?;
            }
        }
        Ok(unplaced)
    }

    /// Pieces that are larger than every panel of their cloth: a sentence each, which proves it.
    #[getter]
    fn too_large(&self) -> Vec<String> {
        self.plan
            .too_large()
            .iter()
            .map(BriefError::to_string)
            .collect()
    }

    /// What may be a slip or needs a second look, a list of sentences.
    #[getter]
    fn doubts(&self) -> Vec<String> {
        self.plan.doubts.clone()
    }

    /// What can hurt, a list of sentences.
    #[getter]
    fn cautions(&self) -> Vec<String> {
        self.plan.cautions.clone()
    }

    /// What ``write`` writes: a dict of bytes by name, ``"worksheet.html"`` and ``"plan.json"`` among
    /// them. The same brief gives the same bytes.
    ///
    /// Raises
    /// ------
    /// ReclothError
    ///     a drawing is beyond what a page can hold
    #[getter]
    fn files<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let files = PyDict::new(py);
        for (name, bytes) in self.all(py)? {
            files.set_item(name, PyBytes::new(py, bytes))?;
        }
        Ok(files)
    }

    /// The plan as JSON: pieces, cut lines, placements, answers.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        self.text(py, "plan.json")
    }

    /// The plan as dicts and lists, as ``to_json`` writes it.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.to_json(py)?)
    }

    /// Writes the files into a folder, which is made where it is not there.
    ///
    /// A plan written there before is replaced; other files stay as they are. All or nothing.
    ///
    /// Parameters
    /// ----------
    /// folder : str or os.PathLike
    ///     where to
    ///
    /// Raises
    /// ------
    /// OSError
    ///     naming the path, what is wrong and what would be right
    fn write(&self, py: Python<'_>, folder: PathBuf) -> PyResult<()> {
        py.detach(|| recloth_plan::write(&self.plan, &folder))
            .map_err(|error| PyOSError::new_err(error.to_string()))
    }

    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        other
            .cast::<PyPlan>()
            .is_ok_and(|other| other.get().plan == self.plan)
    }

    fn __repr__(&self) -> String {
        format!(
            "Plan({}, {} pieces)",
            short(&self.plan.title),
            self.plan.count()
        )
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, (&str, &str))> {
        // The same brief gives the same plan.
        Ok((
            py.import("recloth")?.getattr("plan")?,
            (&self.brief, &self.name),
        ))
    }

    /// The worksheet as a notebook shows it, in a frame of its own; None where it cannot be drawn.
    fn _repr_html_(&self, py: Python<'_>) -> Option<String> {
        let page = self.text(py, "worksheet.html").ok()?;
        let page = page.replace('&', "&amp;").replace('"', "&quot;");
        Some(format!(
            "<iframe title=\"Worksheet\" style=\"width:100%;height:40em\" srcdoc=\"{page}\"></iframe>"
        ))
    }
}

/// Works out a plan from the text of a brief: pieces, lays, sheets and the order of work.
///
/// No file is read or written; the same brief gives the same plan on every machine. A piece that fits
/// nowhere is no error: ``Plan.too_large`` and ``Plan.unplaced`` tell.
///
/// Parameters
/// ----------
/// brief : str
///     the text of a brief (TOML): measures, the cloth there is, what to make of it
/// name : str
///     the brief's name in messages
///
/// Returns
/// -------
/// Plan
///
/// Raises
/// ------
/// BriefError
///     with the line, what is wrong and what would be right
///
/// Examples
/// --------
/// >>> import recloth
/// >>> recloth.plan('title = "Coat"\\nprnt_in = "centimetres"', "coat.toml")
/// Traceback (most recent call last):
///     ...
/// recloth.BriefError: coat.toml:2: the brief has an unknown key "prnt_in"
///   Is "print_in" meant?
#[pyfunction]
#[pyo3(signature = (brief, name="brief.toml"))]
pub(crate) fn plan(py: Python<'_>, brief: &Bound<'_, PyAny>, name: &str) -> PyResult<PyPlan> {
    let brief = brief.cast::<PyString>().map_err(|_| {
        let kind = brief.get_type();
        PyTypeError::new_err(format!(
            "plan: brief must be a str, the text of the brief, not {kind}"
        ))
    })?;
    let brief = brief.to_str()?;
    let mut watch = Watch::new("plan", None)?;
    let plan = py.detach(|| {
        let mut tell = |_: &str, so_far: Progress| watch.say(so_far);
        recloth_plan::plan_with(brief, name, &recloth_plan::SEARCH, &mut tell)
    });
    let plan = plan.map_err(|error| bad_brief(py, &error))?;
    watch.end(py, None)?;
    let (brief, name) = (brief.to_owned(), name.to_owned());
    Ok(PyPlan {
        plan,
        brief,
        name,
        files: OnceLock::new(),
    })
}

/// The exception `recloth.BriefError`.
fn bad_brief(py: Python<'_>, error: &BriefError) -> PyErr {
    let made = (|| {
        let class = py
            .import("recloth._errors")?
            .getattr("BriefError")?
            .cast_into::<PyType>()?;
        let text = error.to_string();
        class.call1((
            error.file(),
            error.line(),
            error.wrong(),
            error.right(),
            text,
        ))
    })();
    made.map_or_else(|failure| failure, PyErr::from_value)
}
