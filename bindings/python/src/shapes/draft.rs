//! Drafts: measures of `recloth.draft` in, pieces, seams and checks out.

use kurbo::Vec2;
use pyo3::{
    exceptions::PyTypeError,
    prelude::*,
    types::{PyDict, PyTuple},
};
use recloth::{
    Error,
    draft::{
        Allowances, Armhole, Binding, CircleSector, DartedSkirt, Draft, DraftLining, EdgeBand,
        EdgeName, GatheredStrip, GoredSkirt, Hang, NamedBy, NeckTop, OffCentreFront, PanelLining,
        PatchPocket, Pinafore, PuffedSleeve, RecutSleeve, SectionedBand, ShapedBand, SkirtPanel,
        Sleeve, StraightBand, TieredSkirt, WrapSkirt,
    },
    outline::Piece,
};
use recloth_sheet::{Drawing, PieceOptions, piece_drawing, svg};
use serde::de::DeserializeOwned;

use super::{
    lining::{change, lined_data, read_hem},
    piece::{PyPiece, walk_data},
    read::{Pickled, data, from_json, json, parsed, pickled, short, spelled, tuple, whole, word},
};
use crate::door::{class, number, raise};

/// Space between pieces shown side by side (mm).
const GAP: f64 = 8.0;

/// What a draft gives: pieces, the seams to walk, what was checked. Immutable; equal when every
/// number is. Lengths in millimetres.
///
/// Examples
/// --------
/// >>> from recloth import draft
/// >>> skirt = draft.DartedSkirt(waist=720, hip=980, front_panel=250, back_panel=235).draft()
/// >>> skirt
/// Draft("skirt front", "skirt back", 2 seams)
/// >>> [seam.name for seam in skirt.seams]
/// ['skirt back centre', 'side']
/// >>> all(abs(check.found) <= check.within for check in skirt.checks)
/// True
#[pyclass(name = "Draft", module = "recloth.draft", frozen, eq)]
#[derive(PartialEq)]
pub(crate) struct PyDraft {
    draft: Draft,
}

/// One of the classes of data of `recloth.draft`.
fn made<'py>(
    py: Python<'py>,
    class: &str,
    fields: impl pyo3::call::PyCallArgs<'py>,
) -> PyResult<Bound<'py, PyAny>> {
    py.import("recloth.draft")?.getattr(class)?.call1(fields)
}

impl PyDraft {
    /// Its pieces side by side, as small as all are seen.
    fn drawn(&self, scale: f64) -> Result<String, Error> {
        let options = PieceOptions {
            scale,
            ..PieceOptions::default()
        };
        let mut whole = Drawing::new("draft");
        let mut from = 0.0;
        for piece in &self.draft.pieces {
            let drawing = piece_drawing(piece, &options)?;
            let Some(bounds) = drawing.bounds() else {
                continue;
            };
            let moved = drawing.moved(Vec2::new(from - bounds.x0, -bounds.y1));
            whole.shapes.extend(moved.shapes);
            from += bounds.width() + GAP;
        }
        svg(&whole)
    }

    /// The scale at which the tallest piece is as tall as a notebook shows one.
    fn shown(&self) -> f64 {
        let sizes = self.draft.pieces.iter().map(|piece| {
            let bounds = piece.bounds();
            bounds.width().max(bounds.height())
        });
        (160.0 / sizes.fold(1.0, f64::max)).clamp(1e-3, 1.0)
    }
}

#[pymethods]
impl PyDraft {
    /// The draft that ``to_json`` wrote, its pieces checked again.
    #[staticmethod]
    fn from_json(py: Python<'_>, text: &str) -> PyResult<PyDraft> {
        let draft = from_json::<Draft>(py, "draft.Draft.from_json", text)?;
        Ok(PyDraft { draft })
    }

    /// The draft as JSON, every number to the last bit.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        json(py, "draft.Draft.to_json", &self.draft)
    }

    /// The draft as dicts and lists, as ``to_json`` writes it.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.to_json(py)?)
    }

    /// Its pieces, a tuple of Piece.
    #[getter]
    fn pieces<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let pieces = self.draft.pieces.iter().cloned().map(PyPiece::from);
        PyTuple::new(py, pieces.collect::<Vec<_>>())
    }

    /// The first piece of this name, or None.
    fn piece(&self, name: &str) -> Option<PyPiece> {
        self.draft.piece(name).cloned().map(PyPiece::from)
    }

    /// The seams to walk, with what walking them found: a tuple of Seam.
    #[getter]
    fn seams<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let names = |edges: &[EdgeName]| -> PyResult<Bound<'py, PyTuple>> {
            let pairs = edges.iter().map(|name| (&name.piece, &name.edge));
            PyTuple::new(py, pairs.collect::<Vec<_>>())
        };
        let seams = self.draft.seams.iter().map(|seam| {
            made(
                py,
                "Seam",
                (
                    &seam.name,
                    names(&seam.edges)?,
                    names(&seam.other_edges)?,
                    spelled(seam.way),
                    seam.ease,
                    walk_data(py, &seam.walk)?,
                ),
            )
        });
        tuple(py, seams)
    }

    /// What was checked, all of which holds: a tuple of Check.
    #[getter]
    fn checks<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let checks = self.draft.checks.iter().map(|check| {
            let fields = (&check.what, spelled(check.kind), check.found, check.within);
            made(py, "Check", fields)
        });
        tuple(py, checks)
    }

    /// What is cut without a pattern: a tuple of NamedLength.
    #[getter]
    fn lengths<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let lengths = self.draft.lengths.iter();
        let lengths = lengths.map(|one| made(py, "NamedLength", (&one.name, one.length)));
        tuple(py, lengths)
    }

    /// Doubts raised; ``recloth.doubts`` puts them into words.
    #[getter]
    fn doubts(&self) -> u64 {
        self.draft.doubts
    }

    /// Cautions; ``recloth.cautions`` puts them into words.
    #[getter]
    fn cautions(&self) -> u64 {
        self.draft.cautions
    }

    /// The lining of the draft, or of some of its pieces: each as by ``Piece.lining``, its name that of its piece
    /// and ``lining``. The seams between pieces that are lined are walked again, with the ease meant there.
    ///
    /// Parameters
    /// ----------
    /// pieces : list of str
    ///     names of the pieces that are lined; None for all
    /// cloth : str
    ///     name of the lining's cloth
    /// facings, ease, pleats : dict of name to float, or list of pairs
    ///     as of ``Piece.lining``; an edge is a name, of a seam of the draft too, or a piece's name and an edge's
    /// hem, depth, clearance, hem_allowance, darts, allowance, shell_change_pct, lining_change_pct
    ///     as of ``Piece.lining``; pieces without a hem end level
    ///
    /// Returns
    /// -------
    /// LinedDraft
    ///     the draft of the lining, and the lining of each piece
    ///
    /// Raises
    /// ------
    /// ReclothError
    ///     with the index of a piece that cannot be lined so, or of a ``seam`` whose sides would not meet
    #[pyo3(
        signature = (*, pieces=None, cloth="lining", facings=None, ease=None, pleats=None, hem="level", depth=0.0,
            clearance=0.0, hem_allowance=0.0, darts="tucks", allowance=10.0, shell_change_pct=None,
            lining_change_pct=None),
        text_signature = "($self, *, pieces=None, cloth='lining', facings=None, ease=None, pleats=None, hem='level', depth=0.0, clearance=0.0, hem_allowance=0.0, darts='tucks', allowance=10.0, shell_change_pct=(0.0, 0.0), lining_change_pct=(0.0, 0.0))"
    )]
    #[expect(clippy::too_many_arguments, reason = "named in Python")]
    fn lining<'py>(
        &self,
        py: Python<'py>,
        pieces: Option<Vec<String>>,
        cloth: &str,
        facings: Option<&Bound<'py, PyAny>>,
        ease: Option<&Bound<'py, PyAny>>,
        pleats: Option<&Bound<'py, PyAny>>,
        hem: &str,
        #[pyo3(from_py_with = number)] depth: f64,
        #[pyo3(from_py_with = number)] clearance: f64,
        #[pyo3(from_py_with = number)] hem_allowance: f64,
        darts: &str,
        #[pyo3(from_py_with = number)] allowance: f64,
        shell_change_pct: Option<&Bound<'py, PyAny>>,
        lining_change_pct: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        const LINING: &str = "draft.Draft.lining";
        let named = |given: Option<&Bound<'_, PyAny>>, argument: &str| -> PyResult<Vec<NamedBy>> {
            let named = data(py)?.call_method1("named_widths", (given, LINING, argument))?;
            let named: Vec<(String, String, f64)> = named.extract()?;
            let named = named.into_iter();
            Ok(named
                .map(|(piece, edge, by)| NamedBy { piece, edge, by })
                .collect())
        };
        let asked = DraftLining {
            pieces: pieces.unwrap_or_default(),
            cloth: cloth.to_owned(),
            facings: named(facings, "facings")?,
            ease: named(ease, "ease")?,
            pleats: named(pleats, "pleats")?,
            hem: read_hem(py, LINING, hem, [depth, clearance, hem_allowance])?,
            darts: word(py, LINING, "darts", darts)?,
            allowance,
            shell_change_pct: change(py, LINING, "shell_change_pct", shell_change_pct)?,
            lining_change_pct: change(py, LINING, "lining_change_pct", lining_change_pct)?,
        };
        let lined = self.draft.lining(&asked);
        let lined = lined.map_err(|error| raise(py, LINING, &error))?;
        let linings = PyDict::new(py);
        for one in lined.linings {
            linings.set_item(one.piece, lined_data(py, one.lined)?)?;
        }
        let draft = PyDraft { draft: lined.draft };
        made(py, "LinedDraft", (draft, linings))
    }

    /// The pieces side by side as a notebook shows them; None where one has no cut line.
    fn _repr_svg_(&self) -> Option<String> {
        self.drawn(self.shown()).ok()
    }

    fn __repr__(&self) -> String {
        let pieces = &self.draft.pieces;
        let seams = self.draft.seams.len();
        let named: Vec<String> = pieces.iter().map(|piece| short(piece.name())).collect();
        let text = format!("Draft({}, {seams} seams)", named.join(", "));
        if text.chars().count() < 80 {
            return text;
        }
        format!("Draft({} pieces, {seams} seams)", pieces.len())
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Pickled<'py>> {
        pickled::<PyDraft>(py, self.to_json(py)?)
    }
}

/// One of a draft's measures.
struct Measures<'a, 'py>(&'a Bound<'py, PyAny>);

/// A draft's measures by their kind and name; then what is of another kind.
macro_rules! taken {
    ($from:expr => $draft:ident { $($kind:ident: $($field:ident)*;)* } $($rest:tt)*) => {
        $draft { $($($field: $from.$kind(stringify!($field))?,)*)* $($rest)* }
    };
}

impl<'py> Measures<'_, 'py> {
    fn mm(&self, name: &str) -> PyResult<f64> {
        number(&self.0.getattr(name)?).map_err(|error| self.told(name, &error))
    }

    fn text(&self, name: &str) -> PyResult<String> {
        let text = self.0.getattr(name)?.extract();
        text.map_err(|error| self.told(name, &error))
    }

    fn list(&self, name: &str) -> PyResult<Vec<f64>> {
        self.0.getattr(name)?.extract()
    }

    /// A choice, by its word as the core writes it.
    fn choice<T: DeserializeOwned>(&self, name: &'static str) -> PyResult<T> {
        word(self.0.py(), "draft", name, &self.text(name)?)
    }

    fn piece(&self, name: &str) -> PyResult<Piece> {
        let given = self.0.getattr(name)?;
        match given.cast::<PyPiece>() {
            Ok(piece) => Ok(piece.get().piece.clone()),
            Err(_) => Err(PyTypeError::new_err(format!(
                "draft.{}: {name} must be a Piece, not {}",
                class(self.0),
                class(&given)
            ))),
        }
    }

    /// The error of a measure of the wrong type, with its name.
    fn told(&self, name: &str, error: &PyErr) -> PyErr {
        let what = error.value(self.0.py());
        PyTypeError::new_err(format!("draft.{}: {name}: {what}", class(self.0)))
    }

    fn count(&self, name: &'static str) -> PyResult<u32> {
        whole(self.0.py(), "draft", name, self.mm(name)?)
    }

    fn allowances(&self) -> PyResult<Allowances> {
        Ok(taken!(self => Allowances { mm: seam hem; }))
    }

    fn skirt_panel(&self) -> PyResult<SkirtPanel> {
        Ok(taken!(self => SkirtPanel {
            text: name;
            mm: panel_width waist hip hip_depth length hem_width largest_intake dart_length side_rise;
            count: darts;
            choice: centre;
        } allowances: self.allowances()?))
    }

    fn panel(&self, name: &str) -> PyResult<SkirtPanel> {
        Measures(&self.0.getattr(name)?).skirt_panel()
    }

    fn armhole(&self) -> PyResult<Armhole> {
        Ok(taken!(self => Armhole { piece: front back; mm: ease_pct notch; }))
    }

    fn draft(&self, kind: &str) -> PyResult<Result<Draft, Error>> {
        Ok(match kind {
            "SkirtPanel" => self.skirt_panel()?.draft(),
            "PanelLining" => taken!(self => PanelLining { panel: shell; mm: clearance ease; }
                hang: match self.text("hang")?.as_str() {
                    "folded" => Hang::Folded,
                    _ => Hang::Free {
                        hem: self.mm("hem")?,
                    },
                },
            )
            .draft(),
            "DartedSkirt" => taken!(self => DartedSkirt {
                mm: waist hip hip_depth length flare forward front_panel back_panel largest_intake
                    front_dart_length back_dart_length side_rise;
                count: front_darts back_darts;
                choice: front_centre back_centre;
            } allowances: self.allowances()?)
            .draft(),
            "OffCentreFront" => taken!(self => OffCentreFront {
                panel: front;
                mm: shift extension wide_panel facing;
            })
            .draft(),
            "WrapSkirt" => taken!(self => WrapSkirt {
                mm: waist hip overlap hip_depth length flare largest_intake dart_length side_rise facing;
                count: front_darts back_darts;
                choice: back_centre;
            } allowances: self.allowances()?)
            .draft(),
            "GoredSkirt" => taken!(self => GoredSkirt {
                mm: waist hip hem length hip_depth;
                count: count;
            } allowances: Allowances {
                seam: self.mm("seam")?,
                hem: self.mm("hem_allowance")?,
            })
            .draft(),
            "CircleSector" => taken!(self => CircleSector {
                mm: waist length fraction;
                count: pieces;
            } allowances: self.allowances()?)
            .draft(),
            "TieredSkirt" => taken!(self => TieredSkirt {
                mm: waist cloth_width;
                list: ratios depths;
            } allowances: self.allowances()?)
            .draft(),
            "StraightBand" => taken!(self => StraightBand {
                mm: waist overlap depth turn allowance;
                choice: make;
            })
            .draft(),
            "ShapedBand" => {
                taken!(self => ShapedBand { mm: lower upper depth overlap allowance; }).draft()
            }
            "SectionedBand" => taken!(self => SectionedBand {
                list: lengths;
                mm: depth top allowance;
                choice: ends;
            } curved: self.0.getattr("curved")?.extract()?)
            .draft(),
            "EdgeBand" => taken!(self => EdgeBand { mm: edge share depth allowance; }).draft(),
            "Binding" => taken!(self => Binding {
                mm: edge corner finish finished turn thickness strip allowance;
                count: corners;
                choice: fold;
            })
            .draft(),
            "GatheredStrip" => taken!(self => GatheredStrip {
                mm: finished ratio depth;
                count: strips;
            } allowances: self.allowances()?)
            .draft(),
            "NeckTop" => taken!(self => NeckTop {
                piece: front back;
                choice: shape;
                mm: off_shoulder depth back_depth facing stay_ratio allowance;
            })
            .draft(),
            "Sleeve" => taken!(self => Sleeve { mm: width length hem_width; }
                armhole: self.armhole()?,
                allowances: self.allowances()?,
            )
            .draft(),
            "RecutSleeve" => taken!(self => RecutSleeve { piece: sleeve; mm: largest_lift; }
                armhole: self.armhole()?,
            )
            .draft(),
            "PuffedSleeve" => taken!(self => PuffedSleeve {
                piece: sleeve;
                mm: ratio lift;
                count: slashes;
                choice: hem;
            })
            .draft(),
            "Pinafore" => taken!(self => Pinafore {
                mm: chest ease neck head shoulder armhole_depth yoke_depth band_depth skirt_length
                    fullness opening stand;
                count: panels;
            } allowances: self.allowances()?)
            .draft(),
            _ => taken!(self => PatchPocket { mm: width depth corner_radius; }
                allowances: self.allowances()?,
            )
            .draft(),
        })
    }
}

/// The draft of measures: one of the classes of `recloth.draft`.
#[pyfunction]
pub(crate) fn draft(measures: &Bound<'_, PyAny>) -> PyResult<PyDraft> {
    let py = measures.py();
    let kind = measures.get_type().name()?.to_string();
    let draft = Measures(measures).draft(&kind)?;
    let draft = draft.map_err(|error| raise(py, &format!("draft.{kind}"), &error))?;
    Ok(PyDraft { draft })
}
