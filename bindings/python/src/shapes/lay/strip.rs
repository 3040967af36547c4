//! `strip` and the class `StripLay`.

use numpy::PyArray2;
use pyo3::{
    prelude::*,
    types::{PyDict, PyTuple},
};
use recloth_lay::{Complaint, Options, Panel, Part, Strip, StripLay, StripOptions, strip_with};
use serde::{Deserialize, Serialize};

use super::{
    super::{
        cloth::PyPanel,
        read::{Pickled, data, from_json, invalid, json, parsed, pickled},
    },
    check::complaints,
    data::{fold_tuple, outlines, part_tuple, placement_tuple, read_parts, read_strip, strip_data},
    drawing::{SHOWN, drawn},
    search::Search,
    watch::Watch,
};
use crate::door::{number, raise};

/// All pieces on cloth by the length; made by ``strip``.
///
/// Proved by ``check``. Immutable; a notebook shows the cloth with the pieces on it.
#[pyclass(name = "StripLay", module = "recloth", frozen, eq)]
#[derive(PartialEq)]
pub(crate) struct PyStripLay {
    of: Laid,
}

/// A lay with what it is of.
#[derive(PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Laid {
    parts: Vec<Part>,
    strip: Strip,
    found: StripLay,
}

impl Laid {
    fn panel(&self) -> Result<Panel, recloth::Error> {
        self.strip.panel(self.found.length)
    }

    /// What is wrong with a lay that was read, if anything: it is proved again.
    fn wrong(&self) -> Option<String> {
        let panel = match self.panel() {
            Ok(panel) => panel,
            // No cloth is needed for no pieces, and no panel has no length.
            Err(_) if self.found.length == 0.0 && self.found.lay.placements.is_empty() => {
                return None;
            }
            Err(error) => return Some(error.to_string()),
        };
        let complaints = recloth_lay::check(&self.parts, &[panel], &self.found.lay).err()?;
        complaints.first().map(Complaint::to_string)
    }

    fn drawing(&self, width: f64, height: f64) -> Result<String, recloth::Error> {
        let note = format!(
            "{:.0} mm of cloth {:.0} mm wide{}, {:.1} % covered",
            self.found.length,
            self.strip.width,
            if self.strip.folded {
                ", cut folded"
            } else {
                ""
            },
            100.0 * self.found.density
        );
        let panel = self.panel()?;
        let panels = [(&panel, note)];
        drawn(&self.parts, &panels, &self.found.lay, (width, height))
    }
}

#[pymethods]
impl PyStripLay {
    /// Length of cloth it takes (mm).
    #[getter]
    fn length(&self) -> f64 {
        self.of.found.length
    }

    /// Share of that cloth which the pieces cover (0 to 1).
    #[getter]
    fn density(&self) -> f64 {
        self.of.found.density
    }

    /// How many evaluations were made.
    #[getter]
    fn evaluations(&self) -> u64 {
        self.of.found.evaluations
    }

    /// Whether the time was up before the budget was.
    #[getter]
    fn out_of_time(&self) -> bool {
        self.of.found.out_of_time
    }

    /// Least distance between the cut lines of two pieces (mm).
    #[getter]
    fn spacing(&self) -> f64 {
        self.of.found.lay.spacing
    }

    /// Where the pieces lie on ``panel``, a tuple of Placement.
    #[getter]
    fn placements<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        placement_tuple(py, &self.of.found.lay)
    }

    /// The lines on which the cloth is folded when it is cut, a tuple of Fold; empty where it is cut opened.
    #[getter]
    fn folds<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        fold_tuple(py, &self.of.found.lay)
    }

    /// The parts, a tuple of Part.
    #[getter]
    fn parts<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        part_tuple(py, &self.of.parts)
    }

    /// The cloth by the length.
    #[getter]
    fn strip<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        strip_data(py, &self.of.strip)
    }

    /// So much of the cloth as a Panel: along the x axis from 0, its selvedges at y = 0 and at its width.
    #[getter]
    fn panel(&self, py: Python<'_>) -> PyResult<PyPanel> {
        match self.of.panel() {
            Ok(panel) => Ok(PyPanel { panel }),
            Err(error) => Err(raise(py, "StripLay.panel", &error)),
        }
    }

    /// The cut line of each piece where it lies on the cloth (mm): a list of arrays (n, 2), in the order
    /// of ``placements``.
    fn outlines<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyArray2<f64>>>> {
        outlines(py, &self.of.parts, &self.of.found.lay)
    }

    /// What is wrong with the lay, a sentence each, as ``check`` says it: nothing.
    fn check(&self, py: Python<'_>) -> PyResult<Vec<String>> {
        match self.of.panel() {
            Ok(panel) => complaints(
                py,
                "StripLay.check",
                &self.of.parts,
                &[panel],
                &self.of.found.lay,
            ),
            Err(_) => Ok(self.of.wrong().into_iter().collect()),
        }
    }

    /// The lay that ``to_json`` wrote, proved again.
    #[staticmethod]
    fn from_json(py: Python<'_>, text: &str) -> PyResult<PyStripLay> {
        const NAME: &str = "StripLay.from_json";
        let of: Laid = from_json(py, NAME, text)?;
        match of.wrong() {
            Some(what) => Err(invalid(py, NAME, "text", &what)),
            None => Ok(PyStripLay { of }),
        }
    }

    /// The lay with its parts and its cloth as JSON, every number to the last bit.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        json(py, "StripLay.to_json", &self.of)
    }

    /// The lay with its parts and its cloth as dicts and lists, as ``to_json`` writes it.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.to_json(py)?)
    }

    /// The cloth with the pieces on it as SVG.
    ///
    /// Parameters
    /// ----------
    /// width, height : float
    ///     of the drawing (mm), 40 to 5000; the cloth is drawn no wider and no higher
    #[pyo3(signature = (width=SHOWN.0, height=SHOWN.1))]
    fn svg(
        &self,
        py: Python<'_>,
        #[pyo3(from_py_with = number)] width: f64,
        #[pyo3(from_py_with = number)] height: f64,
    ) -> PyResult<String> {
        let drawn = self.of.drawing(width, height);
        drawn.map_err(|error| raise(py, "StripLay.svg", &error))
    }

    /// The lay as a notebook shows it; None where there is none to draw, or it is too long.
    fn _repr_svg_(&self) -> Option<String> {
        self.of.drawing(SHOWN.0, SHOWN.1).ok()
    }

    fn __repr__(&self) -> String {
        let found = &self.of.found;
        let pieces = found.lay.placements.len();
        format!(
            "StripLay({pieces} piece{} on {:.1} mm, {:.1} % covered)",
            if pieces == 1 { "" } else { "s" },
            found.length,
            100.0 * found.density
        )
    }

    /// What it takes, then a line a piece: where it lies, in words.
    fn __str__<'py>(slf: &Bound<'py, PyStripLay>) -> PyResult<Bound<'py, PyAny>> {
        data(slf.py())?.call_method1("strip_table", (slf,))
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Pickled<'py>> {
        pickled::<PyStripLay>(py, self.to_json(py)?)
    }
}

/// All pieces on cloth by the length, as short as was found.
///
/// The same inputs, seed and budget give the same lay on every machine, for any number of threads, unless
/// ``seconds`` ends the search. Ctrl-C ends it with KeyboardInterrupt; other threads of Python run meanwhile.
///
/// Parameters
/// ----------
/// parts : list of Part or Piece
///     or dicts with the fields of Part, or tuples in their order; of a Piece its ``part()``
/// strip : Strip
///     the cloth, or a dict, or a tuple (width, faces, nap, folded, repeat)
/// spacing : float
///     least distance between the cut lines of two pieces (mm), 0 to 1000; not kept from the edges of
///     the cloth
/// seed : int
///     number the search's chances start from, 0 to 2**64 - 1
/// budget : int
///     how many evaluations to stop after; the default is some ten seconds of one processor
/// seconds : float or None
///     seconds to stop after, if that is sooner, 0 to 1e6; then the lay depends on the machine's speed
/// threads : int
///     threads to work with; 0 for as many as there are processors
/// progress : callable or None
///     called some ten times a second with the share of the budget or the time that is used up (0 to 1)
///     and the least length so far (mm), None before there is one; an exception in it ends the search
///     and is passed on
///
/// Returns
/// -------
/// StripLay
///
/// Raises
/// ------
/// ReclothError
///     naming the part or option: a number out of range, an outline that touches or crosses itself, more
///     than 2000 pieces, a part that is too wide for the cloth, points to match that never do, or on folded
///     cloth a part whose grain does not run along its fold
///
/// Examples
/// --------
/// >>> import recloth
/// >>> gore = recloth.Part("gore", [(0, 0), (420, 0), (300, 800), (120, 800)], as_drawn=4)
/// >>> lay = recloth.strip([gore], recloth.Strip(1400), budget=2_000_000)
/// >>> lay.length < 900 and lay.check() == []
/// True
#[pyfunction]
#[pyo3(
    signature = (parts, strip, **options),
    text_signature = "(parts, strip, *, spacing=0.0, seed=1, budget=50000000, seconds=None, threads=0, progress=None)"
)]
pub(crate) fn strip(
    py: Python<'_>,
    parts: &Bound<'_, PyAny>,
    strip: &Bound<'_, PyAny>,
    options: Option<&Bound<'_, PyDict>>,
) -> PyResult<PyStripLay> {
    let parts = read_parts("strip", parts)?;
    let strip = read_strip("strip", strip)?;
    let usual = Options {
        budget: StripOptions::default().budget,
        ..Options::default()
    };
    let search = Search::read("strip", usual, options)?;
    let find = |options: &Options, watch: &mut Watch| {
        let Options {
            spacing,
            seed,
            budget,
            seconds,
            threads,
        } = *options;
        let options = StripOptions {
            spacing,
            seed,
            budget,
            seconds,
            threads,
        };
        let say = |so_far| watch.say(so_far);
        Ok(strip_with(&parts, &strip, &options, say)?)
    };
    let found = search.run(py, find, |found: &StripLay, _| Some(found.length))?;
    Ok(PyStripLay {
        of: Laid {
            parts,
            strip,
            found,
        },
    })
}
