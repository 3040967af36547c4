//! The class `Panel`.

use kurbo::Point;
use numpy::PyArray2;
use pyo3::{
    exceptions::PyTypeError,
    prelude::*,
    types::{PyDict, PyTuple},
};
use recloth::{
    Error,
    panel::{CornerReading, Flaw, Inner, Panel, Repeat, Scale, SpareReading},
};
use recloth_sheet::{LayPanel, lay_drawing, svg};
use serde_json::Value;

use super::{
    panel::PyPanelRectangle,
    read::{
        Pair, Pickled, array, corners, data, from_json, json, made, pair, parsed, pickled, point,
        points, rings, short, spelled, tuple, whole, word,
    },
};
use crate::door::{number, raise, raise_text};

/// Width and height that a panel is drawn in (mm): the text of a sheet of A4 or Letter.
const SHOWN: (f64, f64) = (180.0, 150.0);

#[derive(FromPyObject)]
struct FlawData {
    outline: Vec<Pair>,
    margin: f64,
    what: String,
    under: Vec<String>,
}

#[derive(FromPyObject)]
struct CornerData {
    start: u32,
    end: u32,
    from_start: f64,
    from_end: f64,
    right: bool,
}

#[derive(FromPyObject)]
struct SpareData {
    start: u32,
    end: u32,
    reading: f64,
}

#[derive(FromPyObject)]
struct RepeatData {
    along: f64,
    across: f64,
    start: Pair,
}

/// The repeat given, one of Repeat or what makes one; None, or nothing at all, for none.
pub(super) fn read_repeat(repeat: &Bound<'_, PyAny>) -> PyResult<Option<Repeat>> {
    let repeat: Option<RepeatData> = data(repeat.py())?
        .call_method1("cloth_repeat", (repeat,))?
        .extract()?;
    Ok(repeat.map(|of| Repeat::new(of.along, of.across).beginning_at(of.start)))
}

/// The repeat as Python's data; None where there is none.
pub(super) fn repeat_data<'py>(
    py: Python<'py>,
    repeat: Option<Repeat>,
) -> PyResult<Option<Bound<'py, PyAny>>> {
    let made = |repeat: Repeat| {
        let fields = (repeat.along, repeat.across, pair(repeat.from));
        made(py, "Repeat", fields)
    };
    repeat.map(made).transpose()
}

/// A panel of cloth as it lies right side up on the table. Immutable; equal when every number is.
///
/// ``Panel.by_triangles``, ``Panel.by_offsets``, ``Panel.from_photo`` and ``Panel.from_svg_path`` make
/// one of what was measured. Edge ``i`` of the outline runs from point ``i`` to the next. Lengths in
/// millimetres, y up. Shapely takes a panel by ``shapely.geometry.shape(panel)``.
///
/// Parameters
/// ----------
/// name : str
///     what the maker calls it
/// outline : points
///     the edge of the cloth, shape (n, 2), 3 to 5000 points, either way round
/// holes : list of points
///     holes, each as the outline is, up to 1000
/// flaws : list of Flaw
///     or dicts, or tuples (outline, margin, what, under), up to 1000
/// grain_deg : float
///     direction of the lengthwise grain, counter-clockwise from the x axis (degrees, -360 to 360);
///     with a nap, the way it runs
/// faces : str
///     how many of its sides may show: "one" or "two"
/// nap : bool
///     whether every piece must point the same way
/// repeat : Repeat or None
///     how a stripe, check or print repeats, for parts with points to match; or a dict, or a tuple
///     (along, across, start)
///
/// Raises
/// ------
/// ReclothError
///     naming what is no panel: ``outline``, ``holes`` or ``flaws`` that cross themselves, numbers out
///     of range
///
/// Examples
/// --------
/// >>> import recloth
/// >>> front = recloth.Panel("front", [(0, 0), (480, 0), (430, 900), (40, 900)])
/// >>> front.usable([40, 15, 10, 15])[0].largest_rectangle()
/// PanelRectangle(362.2 x 850.0 mm)
#[pyclass(name = "Panel", module = "recloth", frozen, eq)]
#[derive(PartialEq)]
pub(crate) struct PyPanel {
    pub(crate) panel: Panel,
}

/// The panels of a lay, each given as one, as a dict or as a tuple.
pub(crate) fn panel_list(panels: &Bound<'_, PyAny>) -> PyResult<Vec<Panel>> {
    let panels = data(panels.py())?.call_method1("panel_list", (panels,))?;
    let panels: Vec<PyRef<'_, PyPanel>> = panels.extract()?;
    Ok(panels.iter().map(|panel| panel.panel.clone()).collect())
}

fn flaws(values: &Bound<'_, PyAny>) -> PyResult<Vec<Flaw>> {
    let flaws: Vec<FlawData> = data(values.py())?
        .call_method1("flaw_list", (values,))?
        .extract()?;
    Ok(flaws
        .into_iter()
        .map(|flaw| {
            let bare = Flaw::new(flaw.outline, flaw.margin);
            bare.called(flaw.what).under(flaw.under)
        })
        .collect())
}

/// What may be said of a panel beside its outline, each if it is given.
#[derive(Default)]
struct Changes<'a, 'py> {
    holes: Option<&'a Bound<'py, PyAny>>,
    flaws: Option<&'a Bound<'py, PyAny>>,
    grain_deg: Option<f64>,
    grain: Option<&'a Bound<'py, PyAny>>,
    faces: Option<&'a Bound<'py, PyAny>>,
    nap: Option<&'a Bound<'py, PyAny>>,
    repeat: Option<&'a Bound<'py, PyAny>>,
    spares: Option<&'a Bound<'py, PyAny>>,
}

impl Changes<'_, '_> {
    fn made(self, py: Python<'_>, function: &str, mut panel: Panel) -> PyResult<PyPanel> {
        let failed = |error: Error| raise(py, function, &error);
        if let Some(holes) = self.holes {
            panel = panel.with_holes(rings(holes, "holes")?).map_err(failed)?;
        }
        if let Some(values) = self.flaws {
            panel = panel.with_flaws(flaws(values)?).map_err(failed)?;
        }
        if let Some(grain_deg) = self.grain_deg {
            panel = panel.with_grain_deg(grain_deg).map_err(failed)?;
        }
        if let Some(grain) = self.grain {
            let (from, to) = point(grain)?;
            let from = whole(py, function, "grain", from)? as usize;
            let to = whole(py, function, "grain", to)? as usize;
            panel = panel.with_grain_between(from, to).map_err(failed)?;
        }
        if let Some(faces) = self.faces {
            let faces: String = data(py)?
                .call_method1("faces", (faces, function))?
                .extract()?;
            panel = panel.with_faces(word(py, function, "faces", &faces)?);
        }
        if let Some(nap) = self.nap {
            let nap = data(py)?.call_method1("flag", (nap, function, "nap"))?;
            panel = panel.with_nap(nap.extract()?);
        }
        if let Some(repeat) = self.repeat {
            panel = panel.with_repeat(read_repeat(repeat)?).map_err(failed)?;
        }
        if let Some(spares) = self.spares {
            let spares: Vec<SpareData> =
                data(py)?.call_method1("spare_list", (spares,))?.extract()?;
            let readings: Vec<SpareReading> = spares
                .iter()
                .map(|spare| SpareReading {
                    from: spare.start as usize,
                    to: spare.end as usize,
                    reading: spare.reading,
                })
                .collect();
            panel = panel.with_spares(&readings).map_err(failed)?;
        }
        Ok(PyPanel { panel })
    }
}

/// The panel, or what the core says of it; then changed by the other keywords of a maker.
fn measured<'py>(
    py: Python<'py>,
    function: &str,
    panel: Result<Panel, Error>,
    rest: Option<&Bound<'py, PyDict>>,
) -> PyResult<Bound<'py, PyAny>> {
    let panel = panel.map_err(|error| raise(py, function, &error))?;
    let panel = Bound::new(py, PyPanel { panel })?.into_any();
    match rest {
        Some(rest) if !rest.is_empty() => panel.call_method("replace", (), Some(rest)),
        _ => Ok(panel),
    }
}

impl PyPanel {
    fn failed(&self, py: Python<'_>, function: &str, error: &Error) -> PyErr {
        raise_text(py, function, error, &self.panel.sentence(error))
    }
}

#[pymethods]
impl PyPanel {
    #[new]
    #[pyo3(
        signature = (name, outline, holes=None, flaws=None, grain_deg=90.0, faces=None, nap=None, repeat=None),
        text_signature = "(name, outline, holes=(), flaws=(), grain_deg=90.0, faces='one', nap=False, repeat=None)"
    )]
    #[allow(clippy::too_many_arguments)]
    fn new(
        py: Python<'_>,
        name: String,
        outline: &Bound<'_, PyAny>,
        holes: Option<&Bound<'_, PyAny>>,
        flaws: Option<&Bound<'_, PyAny>>,
        #[pyo3(from_py_with = number)] grain_deg: f64,
        faces: Option<&Bound<'_, PyAny>>,
        nap: Option<&Bound<'_, PyAny>>,
        repeat: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<PyPanel> {
        let panel = Panel::new(name, points(outline, "outline")?);
        let changes = Changes {
            holes,
            flaws,
            grain_deg: Some(grain_deg),
            faces,
            nap,
            repeat,
            ..Changes::default()
        };
        let panel = panel.map_err(|error| raise(py, "Panel", &error))?;
        changes.made(py, "Panel", panel)
    }

    /// A panel measured by tape in triangles: corner 1 lies ``base`` from corner 0, straight along x;
    /// each further corner, in order round the panel, is found by two readings from corners before it.
    ///
    /// Check it by ``spares``: one more reading at least, the other diagonal, tells a misread tape and
    /// cloth that lay off grain.
    ///
    /// Parameters
    /// ----------
    /// name : str
    ///     what the maker calls it
    /// base : float
    ///     from corner 0 to corner 1 (mm), 1 to 1e5
    /// corners : list of CornerReading
    ///     or dicts, or tuples (start, end, from_start, from_end, right), 1 to 62
    /// **rest
    ///     as of ``replace``: ``spares``, ``grain``, ``flaws`` ...
    ///
    /// Returns
    /// -------
    /// Panel
    ///
    /// Examples
    /// --------
    /// >>> import recloth
    /// >>> cuff = recloth.Panel.by_triangles(
    /// ...     "cuff", 400, [(0, 1, 500, 300), (0, 1, 300, 500)], spares=[(2, 3, 401)], grain=(0, 3)
    /// ... )
    /// >>> cuff, cuff.spares[0].misfit
    /// (Panel("cuff", 4 corners), -1.0)
    #[staticmethod]
    #[pyo3(signature = (name, base, corners, **rest))]
    fn by_triangles<'py>(
        py: Python<'py>,
        name: String,
        #[pyo3(from_py_with = number)] base: f64,
        corners: &Bound<'py, PyAny>,
        rest: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let corners: Vec<CornerData> = data(py)?
            .call_method1("corner_list", (corners,))?
            .extract()?;
        let corners: Vec<CornerReading> = corners
            .into_iter()
            .map(|corner| CornerReading {
                start: corner.start,
                end: corner.end,
                from_start: corner.from_start,
                from_end: corner.from_end,
                right: corner.right,
            })
            .collect();
        let panel = Panel::by_triangles(name, base, &corners);
        measured(py, "Panel.by_triangles", panel, rest)
    }

    /// A panel measured square from a line drawn on the straight grain, at stations rising along it.
    ///
    /// The line is the y axis, the grain runs up it. Corners are those of the right edge upward, then
    /// those of the left edge downward.
    ///
    /// Parameters
    /// ----------
    /// name : str
    ///     what the maker calls it
    /// stations : list of float
    ///     places along the grain line, rising (mm), 2 to 200
    /// left, right : list of float
    ///     from the line to the left and to the right edge at each (mm), 0 to 1e5
    /// **rest
    ///     as of ``replace``
    ///
    /// Returns
    /// -------
    /// Panel
    ///
    /// Examples
    /// --------
    /// >>> import recloth
    /// >>> recloth.Panel.by_offsets("sleeve", [0, 400], [120, 200], [130, 180]).area_mm2
    /// 126000.0
    #[staticmethod]
    #[pyo3(signature = (name, stations, left, right, **rest))]
    fn by_offsets<'py>(
        py: Python<'py>,
        name: String,
        stations: &Bound<'py, PyAny>,
        left: &Bound<'py, PyAny>,
        right: &Bound<'py, PyAny>,
        rest: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        const NAME: &str = "Panel.by_offsets";
        let list = |value: &Bound<'py, PyAny>, argument: &str| -> PyResult<Vec<f64>> {
            let list = data(py)?.call_method1("numbers", (value, NAME, argument))?;
            list.extract()
        };
        let (stations, left, right) = (
            list(stations, "stations")?,
            list(left, "left")?,
            list(right, "right")?,
        );
        let panel = Panel::by_offsets(name, &stations, &left, &right);
        measured(py, NAME, panel, rest)
    }

    /// A panel photographed flat beside a reference of four known points, such as the corners of a sheet
    /// of paper.
    ///
    /// The bow that a lens gives straight lines is not taken out, which ``doubts`` says: check it by
    /// ``spares``, a length or two by tape.
    ///
    /// Parameters
    /// ----------
    /// name : str
    ///     what the maker calls it
    /// picture, truth : four points
    ///     the reference in the picture (in pixels, say), and as it truly lies (mm), in the same order
    /// outline : points
    ///     the panel in the picture, shape (n, 2), 3 to 1000 points
    /// **rest
    ///     as of ``replace``
    ///
    /// Returns
    /// -------
    /// Panel
    ///
    /// Examples
    /// --------
    /// >>> import recloth
    /// >>> sheet = [(0, 300), (200, 300), (200, 0), (0, 0)]
    /// >>> seen = [(10, 10), (60, 10), (60, 85), (10, 85)]
    /// >>> yoke = recloth.Panel.from_photo("yoke", seen, sheet, [(10, 10), (90, 10), (10, 80)])
    /// >>> recloth.doubts(yoke.doubts)
    /// ['The bow that a lens gives straight lines is not taken out: measure a length or two by tape.']
    #[staticmethod]
    #[pyo3(signature = (name, picture, truth, outline, **rest))]
    fn from_photo<'py>(
        py: Python<'py>,
        name: String,
        picture: &Bound<'py, PyAny>,
        truth: &Bound<'py, PyAny>,
        outline: &Bound<'py, PyAny>,
        rest: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        const NAME: &str = "Panel.from_photo";
        let four = |value: &Bound<'py, PyAny>, argument: &'static str| -> PyResult<[Point; 4]> {
            let given = points(value, argument)?;
            let count = given.len();
            given.try_into().map_err(|_| {
                let kind = recloth::ErrorKind::Count;
                raise(
                    py,
                    NAME,
                    &Error::new(kind, argument, count as f64, 4.0, 4.0),
                )
            })
        };
        let (picture, truth) = (four(picture, "picture")?, four(truth, "truth")?);
        let panel = Panel::from_photo(name, &picture, &truth, &points(outline, "outline")?);
        measured(py, NAME, panel, rest)
    }

    /// A panel from the path of an SVG drawing (the attribute ``d``): its first subpath is the outline,
    /// the others are holes, or flaws where they are given a margin.
    ///
    /// In a drawing y runs down the page; the panel is as the drawing looks, with y up. Curves are
    /// followed by straight edges.
    ///
    /// Parameters
    /// ----------
    /// name : str
    ///     what the maker calls it
    /// path : str
    ///     the path, every command of SVG 2
    /// mm_per_unit : float or None
    ///     what one unit of the drawing stands for (mm), 1e-4 to 1e4
    /// known : (point, point, float) or None
    ///     in its place two points of the drawing and how far they truly lie apart (mm)
    /// margin : float or None
    ///     None where later subpaths are holes; else they are flaws with this margin (mm), of one point
    ///     a spot, of two a slit
    /// accuracy : float
    ///     how near curves are followed (mm), 0.001 to 10
    /// **rest
    ///     as of ``replace``
    ///
    /// Returns
    /// -------
    /// Panel
    ///
    /// Examples
    /// --------
    /// >>> import recloth
    /// >>> recloth.Panel.from_svg_path("pocket", "M0 0H40V52a8 8 0 0 1-8 8H8a8 8 0 0 1-8-8z", 10).bounds
    /// (0.0, -600.0, 400.0, 0.0)
    #[staticmethod]
    #[pyo3(signature = (name, path, mm_per_unit=None, *, known=None, margin=None, accuracy=0.05, **rest))]
    #[allow(clippy::too_many_arguments)]
    fn from_svg_path<'py>(
        py: Python<'py>,
        name: String,
        path: &str,
        mm_per_unit: Option<&Bound<'py, PyAny>>,
        known: Option<(Bound<'py, PyAny>, Bound<'py, PyAny>, Bound<'py, PyAny>)>,
        margin: Option<&Bound<'py, PyAny>>,
        #[pyo3(from_py_with = number)] accuracy: f64,
        rest: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        const NAME: &str = "Panel.from_svg_path";
        let scale = match (mm_per_unit, known) {
            (Some(scale), None) => Scale::MmPerUnit(number(scale)?),
            (None, Some((from, to, length))) => Scale::Known {
                from: point(&from)?.into(),
                to: point(&to)?.into(),
                length: number(&length)?,
            },
            _ => {
                return Err(PyTypeError::new_err(format!(
                    "{NAME}: give its scale, either mm_per_unit or known"
                )));
            }
        };
        let inner = match margin {
            None => Inner::Holes,
            Some(margin) => Inner::Flaws {
                margin: number(margin)?,
            },
        };
        let panel = Panel::from_svg_path(name, path, scale, inner, accuracy);
        measured(py, NAME, panel, rest)
    }

    /// The panel with what is given in place of what it had.
    ///
    /// Parameters
    /// ----------
    /// name, holes, flaws, grain_deg, faces, nap, repeat
    ///     as of ``Panel``; repeat=() takes a repeat away
    /// grain : two corners
    ///     the lengthwise grain runs from the one towards the other: indices of the outline's points
    /// spares : list of Spare
    ///     or tuples (start, end, reading): distances between two corners that found neither (mm); they
    ///     move no corner, but tell by their ``misfit``, and by a doubt over 0.5 %
    #[pyo3(signature = (*, name=None, holes=None, flaws=None, grain_deg=None, grain=None, faces=None, nap=None, repeat=None, spares=None))]
    #[allow(clippy::too_many_arguments)]
    fn replace(
        &self,
        py: Python<'_>,
        name: Option<String>,
        holes: Option<&Bound<'_, PyAny>>,
        flaws: Option<&Bound<'_, PyAny>>,
        grain_deg: Option<&Bound<'_, PyAny>>,
        grain: Option<&Bound<'_, PyAny>>,
        faces: Option<&Bound<'_, PyAny>>,
        nap: Option<&Bound<'_, PyAny>>,
        repeat: Option<&Bound<'_, PyAny>>,
        spares: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<PyPanel> {
        let mut panel = self.panel.clone();
        if let Some(name) = name {
            panel = panel.with_name(name);
        }
        let changes = Changes {
            holes,
            flaws,
            grain_deg: grain_deg.map(number).transpose()?,
            grain,
            faces,
            nap,
            repeat,
            spares,
        };
        changes.made(py, "Panel.replace", panel)
    }

    /// What the maker calls it.
    #[getter]
    fn name(&self) -> &str {
        self.panel.name()
    }

    /// The edge of the cloth (mm), as given: an array of shape (n, 2).
    #[getter]
    fn outline<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyArray2<f64>>> {
        array(py, self.panel.outline())
    }

    /// Holes (mm): a list of arrays of shape (n, 2).
    #[getter]
    fn holes<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyArray2<f64>>>> {
        self.panel
            .holes()
            .iter()
            .map(|hole| array(py, hole))
            .collect()
    }

    /// Flaws to keep clear of: a tuple of Flaw.
    #[getter]
    fn flaws<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let flaws = self.panel.flaws().iter().map(|flaw| {
            let outline: Vec<Pair> = flaw.outline.iter().copied().map(pair).collect();
            let under = PyTuple::new(py, &flaw.under)?;
            made(py, "Flaw", (outline, flaw.margin, &flaw.what, under))
        });
        tuple(py, flaws)
    }

    /// Direction of the lengthwise grain, counter-clockwise from the x axis (degrees).
    #[getter]
    fn grain_deg(&self) -> f64 {
        self.panel.grain_deg()
    }

    /// How many of its sides may show: "one" or "two".
    #[getter]
    fn faces(&self) -> String {
        spelled(self.panel.faces())
    }

    /// Whether it has a nap, pile or one-way print.
    #[getter]
    fn nap(&self) -> bool {
        self.panel.nap()
    }

    /// How a stripe, check or print repeats on it: a Repeat, or None.
    #[getter]
    fn repeat<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        repeat_data(py, self.panel.repeat())
    }

    /// How its outline was found, and how well: a dict whose "way" is "outline", "triangles", "offsets",
    /// "photo" or "path".
    #[getter]
    fn taken<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let taken = json(py, "Panel.taken", &self.panel.taken())?;
        let said = match from_json(py, "Panel.taken", &taken)? {
            Value::Object(ways) => ways
                .into_iter()
                .next()
                .map(|(way, mut how)| {
                    how["way"] = Value::from(way);
                    how
                })
                .unwrap_or_default(),
            way => serde_json::json!({ "way": way }),
        };
        parsed(py, &said.to_string())
    }

    /// Spare readings and what each misses: a tuple of Spare.
    #[getter]
    fn spares<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        let spares = self.panel.spares().iter();
        tuple(
            py,
            spares.map(|s| made(py, "Spare", (s.from, s.to, s.reading, s.misfit))),
        )
    }

    /// Largest misfit of a spare reading, without its sign (mm); None where there is none.
    #[getter]
    fn largest_misfit(&self) -> Option<f64> {
        self.panel.largest_misfit()
    }

    /// Doubts about the measuring; ``recloth.doubts`` puts them into words.
    #[getter]
    fn doubts(&self) -> u64 {
        self.panel.doubts()
    }

    /// Area of cloth: within the outline, outside the holes, flaws included (mm2).
    #[getter]
    fn area_mm2(&self) -> f64 {
        self.panel.area_mm2()
    }

    /// Left, bottom, right and top (mm).
    #[getter]
    fn bounds(&self) -> (f64, f64, f64, f64) {
        corners(self.panel.bounds())
    }

    /// What can be cut from: the panel less a strip along each edge, its holes, and its flaws with their
    /// margins.
    ///
    /// Parameters
    /// ----------
    /// losses : float or list of float
    ///     lost along every edge, or along each, from each point of the outline to the next (mm), 0 to
    ///     1000
    /// accuracy : float
    ///     most that rounding may cost at any place (mm), 0.01 to 10; a spot or slit needs as large a
    ///     margin
    ///
    /// Returns
    /// -------
    /// tuple of Panel
    ///     the parts it falls into, the largest first, with its grain, faces, nap and doubts
    #[pyo3(signature = (losses=None, accuracy=0.1), text_signature = "($self, losses=0.0, accuracy=0.1)")]
    fn usable<'py>(
        &self,
        py: Python<'py>,
        losses: Option<&Bound<'py, PyAny>>,
        #[pyo3(from_py_with = number)] accuracy: f64,
    ) -> PyResult<Bound<'py, PyTuple>> {
        const NAME: &str = "Panel.usable";
        let edges = self.panel.outline().len();
        let losses: Vec<f64> = match losses {
            Some(losses) => data(py)?
                .call_method1("per_edge", (losses, edges, NAME, "losses"))?
                .extract()?,
            None => vec![0.0; edges],
        };
        let parts = py
            .detach(|| self.panel.usable(&losses, accuracy))
            .map_err(|error| self.failed(py, NAME, &error))?;
        PyTuple::new(
            py,
            parts
                .into_iter()
                .map(|panel| PyPanel { panel })
                .collect::<Vec<_>>(),
        )
    }

    /// The largest rectangle, one side on the straight grain, that it holds clear of its holes and flaws.
    fn largest_rectangle(&self, py: Python<'_>) -> PyResult<PyPanelRectangle> {
        py.detach(|| self.panel.largest_rectangle())
            .map(PyPanelRectangle::from)
            .map_err(|error| self.failed(py, "Panel.largest_rectangle", &error))
    }

    /// The tallest rectangle of this width across the straight grain (mm), 0.1 to 2e5, that it holds
    /// clear of its holes and flaws.
    fn tallest_rectangle(
        &self,
        py: Python<'_>,
        #[pyo3(from_py_with = number)] width: f64,
    ) -> PyResult<PyPanelRectangle> {
        py.detach(|| self.panel.tallest_rectangle(width))
            .map(PyPanelRectangle::from)
            .map_err(|error| self.failed(py, "Panel.tallest_rectangle", &error))
    }

    /// The outline as an array of shape (n, 2), as ``outline``.
    fn to_numpy<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyArray2<f64>>> {
        self.outline(py)
    }

    /// The panel as a polygon with holes, by the protocol that shapely and others read.
    #[getter(__geo_interface__)]
    fn geo_interface<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let ring = |points: &[Point]| -> PyResult<Bound<'py, PyTuple>> {
            let closed = points.iter().chain(points.first());
            PyTuple::new(py, closed.copied().map(pair).collect::<Vec<_>>())
        };
        let rings = [self.panel.outline()]
            .into_iter()
            .chain(self.panel.holes().iter().map(Vec::as_slice));
        let geometry = PyDict::new(py);
        geometry.set_item("type", "Polygon")?;
        let rings = rings.map(ring).collect::<PyResult<Vec<_>>>()?;
        geometry.set_item("coordinates", PyTuple::new(py, rings)?)?;
        Ok(geometry)
    }

    /// The panel that ``to_json`` wrote.
    #[staticmethod]
    fn from_json(py: Python<'_>, text: &str) -> PyResult<PyPanel> {
        from_json(py, "Panel.from_json", text).map(|panel| PyPanel { panel })
    }

    /// The panel as JSON, every number to the last bit.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        json(py, "Panel.to_json", &self.panel)
    }

    /// The panel as dicts and lists, as ``to_json`` writes it.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.to_json(py)?)
    }

    /// The panel as a notebook shows it, with a scale bar; None where it is beyond what can be drawn.
    fn _repr_svg_(&self) -> Option<String> {
        let panels = [LayPanel::from(&self.panel)];
        svg(&lay_drawing("Panel", &panels, SHOWN.0, SHOWN.1).ok()?).ok()
    }

    fn __repr__(&self) -> String {
        let mut what = format!("{} corners", self.panel.outline().len());
        for (count, one) in [
            (self.panel.holes().len(), "hole"),
            (self.panel.flaws().len(), "flaw"),
        ] {
            if count > 0 {
                what += &format!(", {count} {one}{}", if count == 1 { "" } else { "s" });
            }
        }
        format!("Panel({}, {what})", short(self.panel.name()))
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Pickled<'py>> {
        pickled::<PyPanel>(py, self.to_json(py)?)
    }
}
