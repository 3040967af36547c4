//! `fit` and the class `Fit`.

use numpy::PyArray2;
use pyo3::{
    prelude::*,
    types::{PyDict, PyTuple},
};
use recloth_lay::{
    Alone, Answer, Bound as Proof, Complaint, Fit, Options, Panel, Part, Shortage, Together,
};
use serde::{Deserialize, Serialize};

use super::{
    super::{
        cloth::{PyPanel, panel_list},
        read::{Pickled, data, from_json, invalid, json, made, parsed, pickled, spelled, tuple},
    },
    check::complaints,
    data::{outlines, part_tuple, placement_data, placement_tuple, read_parts, unplaced_tuple},
    drawing::{SHOWN, drawn},
    search::Search,
    watch::Watch,
};
use crate::door::number;

fn answer_data<'py>(py: Python<'py>, alone: &Alone) -> PyResult<Bound<'py, PyAny>> {
    let (placement, bound) = match alone.answer {
        Answer::Fits(placement) => (Some(placement_data(py, &placement)?), None),
        Answer::Cannot(bound) => (None, Some(bound)),
        Answer::Undecided => (None, None),
    };
    let (needed, there) = match bound {
        Some(Proof::Across { needed, there } | Proof::Along { needed, there }) => {
            (Some(needed), Some(there))
        }
        Some(Proof::Area {
            needed_mm2,
            there_mm2,
        }) => (Some(needed_mm2), Some(there_mm2)),
        _ => (None, None),
    };
    made(
        py,
        "Answer",
        (
            alone.part,
            spelled(alone.hand),
            alone.panel,
            spelled(alone.answer),
            placement,
            bound.map(spelled),
            needed,
            there,
            bound.map(|bound| bound.to_string()),
        ),
    )
}

/// What proves that not all pieces have a place together, as a sentence.
pub(super) fn proof(parts: &[Part], panels: &[Panel], shortage: &Shortage) -> String {
    let part = |part: &usize| parts.get(*part).map_or("", |part| part.name.as_str());
    let cm2 = |area: &f64| area / 100.0;
    let names = |of: &[usize]| -> String {
        let names = of.iter().filter_map(|&panel| panels.get(panel));
        let names: Vec<String> = names.map(|panel| format!("{:?}", panel.name())).collect();
        names.join(", ")
    };
    match shortage {
        Shortage::NoPanel { part: index, hand } => {
            format!(
                "{:?} ({}) can lie on no panel",
                part(index),
                spelled(hand).replace('_', " ")
            )
        }
        Shortage::Area {
            panels: of,
            needed_mm2,
            there_mm2,
        } => {
            format!(
                "pieces that can lie only on {} need {:.0} cm², there are {:.0} cm²",
                names(of),
                cm2(needed_mm2),
                cm2(there_mm2)
            )
        }
        Shortage::TooFew { pieces, taken } => format!(
            "there are {pieces} large pieces, no two of which share a panel, and the panels take {taken}"
        ),
        Shortage::Across {
            panels: of,
            pieces,
            needed,
            there,
        } => format!(
            "{pieces} pieces that can lie only side by side, on {}, need {needed:.1} mm across the grain, there are {there:.1} mm",
            names(of)
        ),
        Shortage::Along {
            panels: of,
            pieces,
            needed,
            there,
        } => format!(
            "{pieces} pieces that can lie only one after the other, on {}, need {needed:.1} mm along the grain, there are {there:.1} mm",
            names(of)
        ),
        Shortage::Unmatched {
            name,
            part: first,
            other,
            across,
            off,
            repeat,
        } => format!(
            "matched elsewhere, {:?} lies {off:.1} mm off {:?} at {name:?}, {} the repeat of {repeat} mm",
            part(other),
            part(first),
            if *across { "across" } else { "along" },
        ),
        _ => "a bound proves it".into(),
    }
}

/// Which pieces fit on which panels, and where; made by ``fit``.
///
/// Every placement has been proved by ``check``. Immutable; a notebook shows the panels with the
/// pieces on them.
#[pyclass(name = "Fit", module = "recloth", frozen, eq)]
#[derive(PartialEq)]
pub(crate) struct PyFit {
    of: Laid,
}

/// A fit with what it is of.
#[derive(PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Laid {
    parts: Vec<Part>,
    panels: Vec<Panel>,
    fit: Fit,
}

impl PyFit {
    /// A fit that `recloth_lay::fit` gave for these.
    pub(crate) fn new(parts: Vec<Part>, panels: Vec<Panel>, fit: Fit) -> PyFit {
        PyFit {
            of: Laid { parts, panels, fit },
        }
    }
}

impl Laid {
    /// What is wrong with a fit that was read, if anything: its lay is proved again.
    fn wrong(&self) -> Option<String> {
        if let Err(complaints) = recloth_lay::check(&self.parts, &self.panels, &self.fit.lay) {
            return complaints.first().map(Complaint::to_string);
        }
        let known = |row: &Alone| row.part < self.parts.len() && row.panel < self.panels.len();
        if !self.fit.alone.iter().all(known) {
            return Some("a row of the table is of no part or panel".into());
        }
        let complete = self.fit.lay.unplaced.is_empty();
        if complete != (self.fit.together == Together::Fit) {
            return Some("the answer for all together is not that of the lay".into());
        }
        None
    }

    fn drawing(&self, width: f64, height: f64) -> Result<String, recloth::Error> {
        let panels: Vec<_> = self.panels.iter().map(|p| (p, String::new())).collect();
        drawn(&self.parts, &panels, &self.fit.lay, (width, height))
    }
}

#[pymethods]
impl PyFit {
    /// Whether all pieces have a place together: "fit", "cannot" or "undecided" (not found, and
    /// nothing proves that there is none).
    #[getter]
    fn together(&self) -> String {
        spelled(&self.of.fit.together)
    }

    /// What proves that they cannot, as a sentence; None where nothing does.
    #[getter]
    fn why(&self) -> Option<String> {
        let Together::Cannot(shortage) = &self.of.fit.together else {
            return None;
        };
        Some(proof(&self.of.parts, &self.of.panels, shortage))
    }

    /// For each part and wanted hand, for each panel, whether the piece alone has a place there: a
    /// tuple of Answer.
    #[getter]
    fn table<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        tuple(
            py,
            self.of.fit.alone.iter().map(|alone| answer_data(py, alone)),
        )
    }

    /// The best lay found, a tuple of Placement.
    #[getter]
    fn placements<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        placement_tuple(py, &self.of.fit.lay)
    }

    /// The pieces without a place in it, a tuple of Unplaced.
    #[getter]
    fn unplaced<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        unplaced_tuple(py, &self.of.fit.lay)
    }

    /// Least distance between the cut lines of two pieces (mm).
    #[getter]
    fn spacing(&self) -> f64 {
        self.of.fit.lay.spacing
    }

    /// Share of each panel that the lay covers (0 to 1).
    #[getter]
    fn shares(&self) -> Vec<f64> {
        self.of.fit.shares.clone()
    }

    /// Share of all panels together that the lay covers (0 to 1).
    #[getter]
    fn share(&self) -> f64 {
        self.of.fit.share
    }

    /// Whether the time was up before the budget was.
    #[getter]
    fn out_of_time(&self) -> bool {
        self.of.fit.out_of_time
    }

    /// How many evaluations were made.
    #[getter]
    fn evaluations(&self) -> u64 {
        self.of.fit.evaluations
    }

    /// The parts, a tuple of Part.
    #[getter]
    fn parts<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        part_tuple(py, &self.of.parts)
    }

    /// The panels, a tuple of Panel.
    #[getter]
    fn panels<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let panels = self.of.panels.iter().cloned();
        PyTuple::new(
            py,
            panels.map(|panel| PyPanel { panel }).collect::<Vec<_>>(),
        )
    }

    /// The cut line of each placed piece where it lies on its panel (mm): a list of arrays (n, 2), in
    /// the order of ``placements``.
    fn outlines<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyArray2<f64>>>> {
        outlines(py, &self.of.parts, &self.of.fit.lay)
    }

    /// What is wrong with the lay, a sentence each, as ``check`` says it: nothing.
    fn check(&self, py: Python<'_>) -> PyResult<Vec<String>> {
        let Laid { parts, panels, fit } = &self.of;
        complaints(py, "Fit.check", parts, panels, &fit.lay)
    }

    /// The fit that ``to_json`` wrote; its lay is proved again.
    #[staticmethod]
    fn from_json(py: Python<'_>, text: &str) -> PyResult<PyFit> {
        const NAME: &str = "Fit.from_json";
        let of: Laid = from_json(py, NAME, text)?;
        match of.wrong() {
            Some(what) => Err(invalid(py, NAME, "text", &what)),
            None => Ok(PyFit { of }),
        }
    }

    /// The fit with its parts and panels as JSON, every number to the last bit.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        json(py, "Fit.to_json", &self.of)
    }

    /// The fit with its parts and panels as dicts and lists, as ``to_json`` writes it.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.to_json(py)?)
    }

    /// The panels with the pieces on them as SVG, to one scale.
    ///
    /// Parameters
    /// ----------
    /// width, height : float
    ///     of the drawing (mm), 40 to 5000; no panel is drawn higher than the height
    #[pyo3(signature = (width=SHOWN.0, height=SHOWN.1))]
    fn svg(
        &self,
        py: Python<'_>,
        #[pyo3(from_py_with = number)] width: f64,
        #[pyo3(from_py_with = number)] height: f64,
    ) -> PyResult<String> {
        let drawn = self.of.drawing(width, height);
        drawn.map_err(|error| crate::door::raise(py, "Fit.svg", &error))
    }

    /// The lay as a notebook shows it; None where it is beyond what can be drawn.
    fn _repr_svg_(&self) -> Option<String> {
        self.of.drawing(SHOWN.0, SHOWN.1).ok()
    }

    fn __repr__(&self) -> String {
        let (laid, panels) = (self.of.fit.lay.placements.len(), self.of.panels.len());
        let left: u64 = self
            .of
            .fit
            .lay
            .unplaced
            .iter()
            .map(|u| u64::from(u.count))
            .sum();
        format!(
            "Fit({:?}: {laid} placed on {panels} panel{}, {left} not)",
            self.together(),
            if panels == 1 { "" } else { "s" }
        )
    }

    /// A line a piece, a column a panel, and in words whether that piece alone has a place there; then
    /// whether all have one together.
    fn __str__<'py>(slf: &Bound<'py, PyFit>) -> PyResult<Bound<'py, PyAny>> {
        data(slf.py())?.call_method1("fit_table", (slf,))
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Pickled<'py>> {
        pickled::<PyFit>(py, self.to_json(py)?)
    }
}

/// Which pieces fit on which panels, where all of them go together, or what proves that they cannot.
///
/// Placements are always confirmed by ``check``; "cannot" always has a proof; not to have found a
/// place is "undecided". The same inputs, seed and budget give the same answer on every machine, unless
/// ``seconds`` ends the search. Ctrl-C ends it with KeyboardInterrupt; other threads of Python run meanwhile.
///
/// Parameters
/// ----------
/// parts : list of Part or Piece
///     or dicts with the fields of Part, or tuples in their order; of a Piece its ``part()``
/// panels : list of Panel
///     or dicts, or tuples
/// spacing : float
///     least distance between the cut lines of two pieces (mm), 0 to 1000; not kept from the
///     panel's edge
/// seed : int
///     number the search's chances start from, 0 to 2**64 - 1
/// budget : int
///     how many evaluations to stop after; the default is about two seconds of one processor
/// seconds : float or None
///     seconds to stop after, if that is sooner, 0 to 1e6; then the lay depends on the machine's speed
/// threads : int
///     threads to work with; 0 for as many as there are processors
/// progress : callable or None
///     called some ten times a second with the share of the budget or the time that is used up (0 to 1)
///     and the share of the wanted area that is laid so far, None before there is a lay; an exception in
///     it ends the search and is passed on
///
/// Returns
/// -------
/// Fit
///
/// Raises
/// ------
/// ReclothError
///     naming the part, panel or option: a number out of range, an outline that touches or crosses
///     itself, more than 2000 pieces
///
/// Examples
/// --------
/// >>> import recloth
/// >>> cloth = recloth.Panel("skirt back", [(0, 0), (400, 0), (400, 700), (0, 700)])
/// >>> band = recloth.Part("band", [(0, 0), (60, 0), (60, 710), (0, 710)])
/// >>> recloth.fit([band], [cloth]).table[0].short_by
/// 10.0
#[pyfunction]
#[pyo3(
    signature = (parts, panels, **options),
    text_signature = "(parts, panels, *, spacing=0.0, seed=1, budget=200000000, seconds=None, threads=0, progress=None)"
)]
pub(crate) fn fit(
    py: Python<'_>,
    parts: &Bound<'_, PyAny>,
    panels: &Bound<'_, PyAny>,
    options: Option<&Bound<'_, PyDict>>,
) -> PyResult<PyFit> {
    let parts = read_parts("fit", parts)?;
    let panels = panel_list(panels)?;
    let search = Search::read("fit", Options::default(), options)?;
    let find = |options: &Options, watch: &mut Watch| {
        let say = |so_far| watch.say(so_far);
        Ok(recloth_lay::fit_with(&parts, &panels, options, say)?)
    };
    let fit = search.run(py, find, |_, last| last)?;
    Ok(PyFit::new(parts, panels, fit))
}
