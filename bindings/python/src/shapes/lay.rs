//! Lays: `fit`, `check`, and the class `Fit`.

use kurbo::{Point, Vec2};
use numpy::PyArray2;
use pyo3::{prelude::*, types::PyTuple};
use recloth_lay::{
    Alone, Answer, Bound as Proof, Complaint, Faces, Fit, Lay, Options, Panel, Part, Placement,
    Shortage, Together, Unplaced,
};
use recloth_sheet::{LayPanel, LayPiece, lay_drawing, svg};
use serde::{Deserialize, Serialize};

use super::cloth::{PyPanel, panel_list};
use super::read::{
    Pair, Pickled, array, data, from_json, invalid, json, made, pair, parsed, pickled, points,
    spelled, tuple, whole, word,
};
use crate::door::{number, raise_text, whole as whole_number};

/// Width and height that a lay is drawn in (mm): the text of a sheet of A4 or Letter.
const SHOWN: (f64, f64) = (180.0, 150.0);

#[derive(FromPyObject)]
struct PartData {
    name: String,
    outline: Vec<Pair>,
    grain_deg: f64,
    tilt_deg: f64,
    #[pyo3(from_py_with = number)]
    as_drawn: f64,
    #[pyo3(from_py_with = number)]
    mirrored: f64,
    shows: String,
    either_way: bool,
}

#[derive(FromPyObject)]
struct PlacementData {
    part: usize,
    panel: usize,
    turn_deg: f64,
    shift: Pair,
    mirrored: bool,
    hand: String,
}

#[derive(FromPyObject)]
struct UnplacedData {
    part: usize,
    hand: String,
    #[pyo3(from_py_with = number)]
    count: f64,
}

fn corners(points: Vec<Pair>) -> Vec<Point> {
    points.into_iter().map(Point::from).collect()
}

fn read_parts(function: &str, parts: &Bound<'_, PyAny>) -> PyResult<Vec<Part>> {
    let py = parts.py();
    let parts: Vec<PartData> = data(py)?.call_method1("part_list", (parts,))?.extract()?;
    parts
        .into_iter()
        .map(|part| {
            Ok(Part {
                name: part.name,
                outline: corners(part.outline),
                grain_deg: part.grain_deg,
                tilt_deg: part.tilt_deg,
                as_drawn: whole(py, function, "as_drawn", part.as_drawn)?,
                mirrored: whole(py, function, "mirrored", part.mirrored)?,
                shows: word(py, function, "shows", &part.shows)?,
                either_way: part.either_way,
                crosswise: false,
            })
        })
        .collect()
}

impl PlacementData {
    fn placement(self, py: Python<'_>, function: &str) -> PyResult<Placement> {
        Ok(Placement {
            part: self.part,
            hand: word(py, function, "hand", &self.hand)?,
            panel: self.panel,
            mirrored: self.mirrored,
            turn_deg: self.turn_deg,
            shift: Vec2::from(self.shift),
        })
    }
}

fn placement_data<'py>(py: Python<'py>, placement: &Placement) -> PyResult<Bound<'py, PyAny>> {
    made(
        py,
        "Placement",
        (
            placement.part,
            placement.panel,
            placement.turn_deg,
            (placement.shift.x, placement.shift.y),
            placement.mirrored,
            spelled(placement.hand),
        ),
    )
}

fn pairs(points: &[Point]) -> Vec<Pair> {
    points.iter().copied().map(pair).collect()
}

fn part_data<'py>(py: Python<'py>, part: &Part) -> PyResult<Bound<'py, PyAny>> {
    made(
        py,
        "Part",
        (
            &part.name,
            pairs(&part.outline),
            part.grain_deg,
            part.tilt_deg,
            part.as_drawn,
            part.mirrored,
            spelled(part.shows),
            part.either_way,
        ),
    )
}

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

fn failed(py: Python<'_>, function: &str, error: &recloth_lay::Error) -> PyErr {
    raise_text(py, function, &error.error(), &error.to_string())
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
        let mut panels: Vec<LayPanel> = self.panels.iter().map(LayPanel::from).collect();
        for placement in &self.fit.lay.placements {
            let part = &self.parts[placement.part];
            let mirrored = match placement.hand {
                recloth_lay::Hand::AsDrawn => "",
                recloth_lay::Hand::Mirrored => ", mirrored",
            };
            // On cloth whose sides look alike a cutter need not care.
            let sided = self.panels[placement.panel].faces() == Faces::One;
            let down = if sided && placement.face_down() {
                ", face down"
            } else {
                ""
            };
            panels[placement.panel].pieces.push(LayPiece {
                label: format!("{}{mirrored}{down}", part.name),
                outline: recloth_lay::placed(&part.outline, placement),
                grain_deg: None,
            });
        }
        svg(&lay_drawing("Lay", &panels, width, height)?)
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
        let part = |part: &usize| {
            self.of
                .parts
                .get(*part)
                .map_or("", |part| part.name.as_str())
        };
        let cm2 = |area: &f64| area / 100.0;
        Some(match shortage {
            Shortage::NoPanel { part: index, hand } => {
                format!(
                    "{:?} ({}) can lie on no panel",
                    part(index),
                    spelled(hand).replace('_', " ")
                )
            }
            Shortage::Area {
                panels,
                needed_mm2,
                there_mm2,
            } => {
                let names: Vec<String> = panels
                    .iter()
                    .filter_map(|&panel| Some(format!("{:?}", self.of.panels.get(panel)?.name())))
                    .collect();
                format!(
                    "pieces that can lie only on {} need {:.0} cm², there are {:.0} cm²",
                    names.join(", "),
                    cm2(needed_mm2),
                    cm2(there_mm2)
                )
            }
            Shortage::TooFew { pieces, taken } => format!(
                "there are {pieces} large pieces, no two of which share a panel, and the panels take {taken}"
            ),
            _ => "a bound proves it".into(),
        })
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
        tuple(
            py,
            self.of
                .fit
                .lay
                .placements
                .iter()
                .map(|placement| placement_data(py, placement)),
        )
    }

    /// The pieces without a place in it, a tuple of Unplaced.
    #[getter]
    fn unplaced<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let unplaced = self.of.fit.lay.unplaced.iter();
        tuple(
            py,
            unplaced.map(|u| made(py, "Unplaced", (u.part, spelled(u.hand), u.count))),
        )
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

    /// How many evaluations were made.
    #[getter]
    fn evaluations(&self) -> u64 {
        self.of.fit.evaluations
    }

    /// The parts, a tuple of Part.
    #[getter]
    fn parts<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        tuple(py, self.of.parts.iter().map(|part| part_data(py, part)))
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
        let placements = self.of.fit.lay.placements.iter();
        placements
            .map(|p| array(py, &recloth_lay::placed(&self.of.parts[p.part].outline, p)))
            .collect()
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

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Pickled<'py>> {
        pickled::<PyFit>(py, self.to_json(py)?)
    }
}

fn read_seed(seed: &Bound<'_, PyAny>) -> PyResult<u64> {
    whole_number("fit", "seed", seed, u64::MAX)
}

fn read_budget(budget: &Bound<'_, PyAny>) -> PyResult<u64> {
    whole_number("fit", "budget", budget, u64::MAX)
}

/// Which pieces fit on which panels, where all of them go together, or what proves that they cannot.
///
/// Placements are always confirmed by ``check``; "cannot" always has a proof; not to have found a
/// place is "undecided". The same inputs, seed and budget give the same answer on every machine.
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
#[pyo3(signature = (parts, panels, *, spacing=0.0, seed=1, budget=200_000_000))]
pub(crate) fn fit(
    py: Python<'_>,
    parts: &Bound<'_, PyAny>,
    panels: &Bound<'_, PyAny>,
    #[pyo3(from_py_with = number)] spacing: f64,
    #[pyo3(from_py_with = read_seed)] seed: u64,
    #[pyo3(from_py_with = read_budget)] budget: u64,
) -> PyResult<PyFit> {
    let parts = read_parts("fit", parts)?;
    let panels = panel_list(panels)?;
    let options = Options {
        spacing,
        seed,
        budget,
    };
    let fit = py.detach(|| recloth_lay::fit(&parts, &panels, &options));
    let fit = fit.map_err(|error| failed(py, "fit", &error))?;
    Ok(PyFit::new(parts, panels, fit))
}

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
#[pyo3(signature = (parts, panels, placements, unplaced=None, *, spacing=0.0))]
pub(crate) fn check(
    py: Python<'_>,
    parts: &Bound<'_, PyAny>,
    panels: &Bound<'_, PyAny>,
    placements: &Bound<'_, PyAny>,
    unplaced: Option<&Bound<'_, PyAny>>,
    #[pyo3(from_py_with = number)] spacing: f64,
) -> PyResult<Vec<String>> {
    let parts = read_parts("check", parts)?;
    let panels = panel_list(panels)?;
    let placements: Vec<PlacementData> = data(py)?
        .call_method1("placement_list", (placements,))?
        .extract()?;
    let placements = placements
        .into_iter()
        .map(|p| p.placement(py, "check"))
        .collect::<PyResult<Vec<_>>>()?;
    let unplaced: Vec<UnplacedData> = match unplaced {
        Some(unplaced) => data(py)?
            .call_method1("unplaced_list", (unplaced,))?
            .extract()?,
        None => Vec::new(),
    };
    let unplaced = unplaced
        .into_iter()
        .map(|u| {
            Ok(Unplaced {
                part: u.part,
                hand: word(py, "check", "hand", &u.hand)?,
                count: whole(py, "check", "count", u.count)?,
            })
        })
        .collect::<PyResult<Vec<_>>>()?;
    let lay = Lay {
        placements,
        unplaced,
        spacing,
    };
    match py.detach(|| recloth_lay::check(&parts, &panels, &lay)) {
        Ok(()) => Ok(Vec::new()),
        Err(complaints) => complaints
            .iter()
            .map(|complaint| match complaint {
                Complaint::Input(error) => Err(failed(py, "check", error)),
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
    let placement: PlacementData = data(py)?
        .call_method1("placement", (placement,))?
        .extract()?;
    let placement = placement.placement(py, "placed")?;
    let finite = [placement.turn_deg, placement.shift.x, placement.shift.y];
    for (argument, value) in ["turn_deg", "shift", "shift"].into_iter().zip(finite) {
        recloth::Error::check(argument, value, -1e9, 1e9)
            .map_err(|error| crate::door::raise(py, "placed", &error))?;
    }
    array(py, &recloth_lay::placed(&outline, &placement))
}
