//! The class `Piece`.

use kurbo::{Line, Point};
use pyo3::{
    exceptions::PyTypeError,
    prelude::*,
    types::{PyDict, PyString, PyTuple},
};
use recloth::{
    Error,
    outline::{
        Corner, Curve, Cutout, Cutting, Dart, Edge, Mark, Notch, Piece, Walk, WalkSection, Way,
        sentence,
    },
};
use recloth_lay::Part;
use recloth_sheet::{PieceOptions, piece_drawing, svg};

use super::{
    cut_line::PyCutLine,
    lay::data::part_data,
    read::{
        Pair, Pickled, corners, data, from_json, invalid, json, made, pair, parsed, pickled, short,
        spelled, tuple, whole, word,
    },
};
use crate::door::{class, number, raise, raise_text, whole as whole_number};

#[derive(FromPyObject)]
struct NotchData {
    name: String,
    distance: f64,
    #[pyo3(from_py_with = number)]
    marks: f64,
    form: String,
    depth: Option<f64>,
}

#[derive(FromPyObject)]
pub(crate) struct EdgeData {
    name: String,
    start: Pair,
    end: Pair,
    allowance: f64,
    role: String,
    bulge: f64,
    steer: Option<(Pair, Pair)>,
    drawn: String,
    corner: String,
    limit: f64,
    notches: Vec<NotchData>,
    corner_size: f64,
}

pub(crate) fn curve(start: Pair, end: Pair, bulge: f64, steer: Option<(Pair, Pair)>) -> Curve {
    match steer {
        Some((first, second)) => Curve::cubic(start, first, second, end),
        None => Curve::arc(start, end, bulge),
    }
}

impl EdgeData {
    fn edge(self, py: Python<'_>, function: &str) -> PyResult<Edge> {
        let corner = match self.corner.as_str() {
            "pointed" => Corner::Pointed { limit: self.limit },
            "trimmed" => Corner::Trimmed {
                distance: self.corner_size,
            },
            "rounded" => Corner::Rounded {
                radius: self.corner_size,
            },
            other => word(py, function, "corner", other)?,
        };
        let notch = |notch: NotchData| {
            Ok(Notch {
                name: notch.name,
                distance: notch.distance,
                marks: whole(py, function, "marks", notch.marks)?,
                form: word(py, function, "form", &notch.form)?,
                depth: notch.depth,
            })
        };
        Ok(Edge {
            name: self.name,
            curve: curve(self.start, self.end, self.bulge, self.steer),
            role: word(py, function, "role", &self.role)?,
            allowance: self.allowance,
            drawn: word(py, function, "drawn", &self.drawn)?,
            corner,
            notches: self
                .notches
                .into_iter()
                .map(notch)
                .collect::<PyResult<_>>()?,
        })
    }
}

/// A curve as the fields of Python's data: start, end, bulge, steer.
type CurveFields = (Pair, Pair, f64, Option<(Pair, Pair)>);

fn curve_fields(curve: &Curve) -> CurveFields {
    match curve {
        Curve::Segment(s) => (pair(s.start), pair(s.end), s.bulge, None),
        Curve::Cubic(c) => (pair(c.p0), pair(c.p3), 0.0, Some((pair(c.p1), pair(c.p2)))),
    }
}

pub(crate) fn edge_data<'py>(py: Python<'py>, edge: &Edge) -> PyResult<Bound<'py, PyAny>> {
    let (start, end, bulge, steer) = curve_fields(&edge.curve);
    let (limit, size) = match edge.corner {
        Corner::Pointed { limit } => (limit, 0.0),
        Corner::Trimmed { distance: size } | Corner::Rounded { radius: size } => {
            (recloth::outline::POINT_LIMIT, size)
        }
        _ => (recloth::outline::POINT_LIMIT, 0.0),
    };
    let notches = edge
        .notches
        .iter()
        .map(|n| (&n.name, n.distance, n.marks, spelled(n.form), n.depth));
    made(
        py,
        "Edge",
        (
            &edge.name,
            start,
            end,
            edge.allowance,
            spelled(edge.role),
            bulge,
            steer,
            spelled(edge.drawn),
            spelled(edge.corner),
            limit,
            PyTuple::new(py, notches.collect::<Vec<_>>())?,
            size,
        ),
    )
}

/// Edges that are given, as data, dicts or tuples.
pub(crate) fn read_edges(function: &str, edges: &Bound<'_, PyAny>) -> PyResult<Vec<Edge>> {
    let py = edges.py();
    let edges: Vec<EdgeData> = data(py)?.call_method1("edge_list", (edges,))?.extract()?;
    let edge = |edge: EdgeData| edge.edge(py, function);
    edges.into_iter().map(edge).collect()
}

pub(crate) fn read_mark(function: &str, kind: &str, mark: &Bound<'_, PyAny>) -> PyResult<Mark> {
    let py = mark.py();
    let name: String = mark.getattr("name")?.extract()?;
    let ends = |field: &str| -> PyResult<[Point; 2]> {
        let (first, second): (Pair, Pair) = mark.getattr(field)?.extract()?;
        Ok([first.into(), second.into()])
    };
    let at =
        |field: &str| -> PyResult<Point> { Ok(mark.getattr(field)?.extract::<Pair>()?.into()) };
    Ok(match kind {
        "dart" => Mark::Dart(Dart {
            name,
            point: at("point")?,
            legs: ends("legs")?,
        }),
        "drill" => Mark::Drill {
            name,
            at: at("at")?,
        },
        "line" => {
            let start = mark.getattr("start")?.extract()?;
            let end = mark.getattr("end")?.extract()?;
            let bulge = mark.getattr("bulge")?.extract()?;
            let kind: String = mark.getattr("kind")?.extract()?;
            Mark::Line {
                name,
                kind: word(py, function, "kind", &kind)?,
                curve: curve(start, end, bulge, mark.getattr("steer")?.extract()?),
            }
        }
        "cutout" => Mark::Cutout(Cutout {
            name,
            edges: read_edges(function, &mark.getattr("edges")?)?,
        }),
        _ => Mark::Buttonhole {
            name,
            ends: ends("ends")?,
        },
    })
}

fn mark_data<'py>(py: Python<'py>, mark: &Mark) -> PyResult<Bound<'py, PyAny>> {
    match mark {
        Mark::Dart(dart) => {
            let legs = dart.legs.map(pair);
            made(
                py,
                "DartMark",
                (&dart.name, pair(dart.point), (legs[0], legs[1])),
            )
        }
        Mark::Drill { name, at } => made(py, "DrillMark", (name, pair(*at))),
        Mark::Line { name, kind, curve } => {
            let (start, end, bulge, steer) = curve_fields(curve);
            made(
                py,
                "LineMark",
                (name, start, end, bulge, steer, spelled(kind)),
            )
        }
        Mark::Buttonhole { name, ends } => {
            made(py, "ButtonholeMark", (name, (pair(ends[0]), pair(ends[1]))))
        }
        Mark::Cutout(Cutout { name, edges }) => {
            let edges = tuple(py, edges.iter().map(|edge| edge_data(py, edge)))?;
            made(py, "CutoutMark", (name, edges))
        }
        other => Err(invalid(
            py,
            "Piece.marks",
            "marks",
            &format!("{} has no door", other.name()),
        )),
    }
}

/// A walk as Python has it.
pub(crate) fn walk_data<'py>(py: Python<'py>, walk: &Walk) -> PyResult<Bound<'py, PyAny>> {
    let notches = walk.notches.iter();
    let notches =
        notches.map(|notch| made(py, "WalkNotch", (&notch.name, notch.distance, notch.other)));
    let notches = tuple(py, notches)?;
    let sections = walk.sections();
    let sections = sections.iter().map(|section| {
        let WalkSection {
            to,
            length,
            other_length,
            difference,
            ..
        } = section;
        made(py, "WalkSection", (to, *length, *other_length, *difference))
    });
    let fields = (
        walk.length,
        walk.other_length,
        walk.difference,
        notches,
        tuple(py, sections)?,
        walk.start_kink_deg,
        walk.end_kink_deg,
    );
    made(py, "Walk", fields)
}

/// A piece of a garment: a closed ring of edges, with marks inside, a grain line and how it is cut.
///
/// The ring runs counter-clockwise with y up, so the cloth lies to the left of every edge; one given
/// clockwise is turned round (its edges then come in the opposite order, each reversed). Immutable;
/// equal when every number is. Lengths in millimetres.
///
/// Parameters
/// ----------
/// name : str
///     the piece's name
/// edges : list of Edge
///     1 to 1000, or dicts with the fields of Edge, or tuples in their order; each starts where the
///     one before ends, within 1e-6 mm, the first where the last ends
/// marks : list of DartMark, DrillMark, LineMark, ButtonholeMark or CutoutMark
///     up to 1000; a dart's legs end on the outline, a cut-out lies within it
/// grain : two points or None
///     the grain line, parallel to the warp; straight up where none is given
/// count : int
///     how many are cut in all, 1 to 1000; even where they are mirrored pairs
/// hand : str
///     "identical", or "mirrored": half of them are cut mirrored
/// cloth : str
///     from which cloth
/// interfacing : str or None
///     with which interfacing
///
/// Raises
/// ------
/// ReclothError
///     naming the piece, the edge and what would do: the ring does not close (``gap``), edges cross
///     or touch (kind "Outline"), a number is out of range
///
/// Examples
/// --------
/// >>> import recloth
/// >>> strip = recloth.Piece("strip", [
/// ...     ("bottom", (0, 0), (300, 0), 10), ("end", (300, 0), (300, 50), 10),
/// ...     ("top", (300, 50), (0, 50), 10), ("start", (0, 50), (0, 0), 10),
/// ... ])
/// >>> strip.cut_line().bounds
/// (-10.0, -10.0, 310.0, 60.0)
#[pyclass(name = "Piece", module = "recloth", frozen, eq)]
#[derive(PartialEq)]
pub(crate) struct PyPiece {
    pub(crate) piece: Piece,
}

impl From<Piece> for PyPiece {
    fn from(piece: Piece) -> PyPiece {
        PyPiece { piece }
    }
}

impl PyPiece {
    /// An error of this piece, which names it and the edge.
    pub(crate) fn failed(&self, py: Python<'_>, function: &str, error: &Error) -> PyErr {
        raise_text(py, function, error, &self.piece.sentence(error))
    }

    /// The smallest scale at which a notebook shows the whole piece, at most full size.
    fn shown(&self) -> f64 {
        let bounds = self.piece.bounds();
        (160.0 / bounds.width().max(bounds.height())).clamp(1e-3, 1.0)
    }

    fn drawn(&self, scale: f64, edges: bool) -> Result<String, Error> {
        let options = PieceOptions {
            scale,
            edges,
            ..PieceOptions::default()
        };
        svg(&piece_drawing(&self.piece, &options)?)
    }

    /// Indices of edges given by name or index, one or several.
    pub(crate) fn indices(
        &self,
        function: &str,
        argument: &'static str,
        edges: &Bound<'_, PyAny>,
    ) -> PyResult<Vec<usize>> {
        let listed = match edges.is_instance_of::<PyString>() {
            true => None,
            false => edges.try_iter().ok(),
        };
        let Some(listed) = listed else {
            return Ok(vec![self.one(function, argument, edges)?]);
        };
        listed
            .map(|edge| self.one(function, argument, &edge?))
            .collect()
    }

    /// Index of an edge given by name or index.
    pub(crate) fn one(
        &self,
        function: &str,
        argument: &'static str,
        edge: &Bound<'_, PyAny>,
    ) -> PyResult<usize> {
        let py = edge.py();
        if let Ok(name) = edge.extract::<String>() {
            return self.index(py, function, argument, &name);
        }
        let last = self.piece.edges().len().saturating_sub(1) as u64;
        let index = whole_number(function, argument, edge, last).map_err(|error| match error
            .is_instance_of::<PyTypeError>(
            py,
        ) {
            true => PyTypeError::new_err(format!(
                "{function}: {argument} must be names or indices of edges, not {}",
                class(edge)
            )),
            false => error,
        })?;
        usize::try_from(index).map_err(|error| invalid(py, function, argument, &error.to_string()))
    }

    fn index(
        &self,
        py: Python<'_>,
        function: &str,
        argument: &'static str,
        name: &str,
    ) -> PyResult<usize> {
        self.piece.edge(name).ok_or_else(|| {
            let piece = short(self.piece.name());
            invalid(
                py,
                function,
                argument,
                &format!("piece {piece} has no edge {}", short(name)),
            )
        })
    }
}

#[pymethods]
impl PyPiece {
    #[new]
    #[pyo3(
        signature = (name, edges, *, marks=None, grain=None, count=1.0, hand="identical", cloth="cloth", interfacing=None),
        text_signature = "(name, edges, *, marks=None, grain=None, count=1, hand='identical', cloth='cloth', interfacing=None)"
    )]
    #[expect(clippy::too_many_arguments, reason = "named in Python")]
    fn new(
        py: Python<'_>,
        name: String,
        edges: &Bound<'_, PyAny>,
        marks: Option<&Bound<'_, PyAny>>,
        grain: Option<&Bound<'_, PyAny>>,
        #[pyo3(from_py_with = number)] count: f64,
        hand: &str,
        cloth: &str,
        interfacing: Option<String>,
    ) -> PyResult<PyPiece> {
        const NEW: &str = "Piece";
        let edges = read_edges(NEW, edges)?;
        let named = |error: Error| raise_text(py, NEW, &error, &sentence(&name, &edges, &error));
        let mut piece = Piece::new(name.clone(), edges.clone()).map_err(named)?;
        if let Some(marks) = marks {
            let marks: Vec<(String, Bound<'_, PyAny>)> =
                data(py)?.call_method1("mark_list", (marks,))?.extract()?;
            let marks = marks
                .iter()
                .map(|(kind, mark)| read_mark(NEW, kind, mark))
                .collect::<PyResult<_>>()?;
            piece = piece.with_marks(marks).map_err(named)?;
        }
        if let Some(grain) = grain {
            let ends = data(py)?.call_method1("pair", (grain, "grain"))?;
            let (from, to): (Pair, Pair) = ends.extract()?;
            piece = piece.with_grain(Line::new(from, to)).map_err(named)?;
        }
        let cutting = Cutting {
            count: whole(py, NEW, "count", count)?,
            hand: word(py, NEW, "hand", hand)?,
            cloth: cloth.to_owned(),
            interfacing,
        };
        Ok(piece.with_cutting(cutting).map_err(named)?.into())
    }

    /// A piece with straight edges from corner to corner.
    ///
    /// Parameters
    /// ----------
    /// name : str
    ///     the piece's name
    /// points : points
    ///     its corners, either way round (mm), shape (n, 2)
    /// allowance : float or list of float
    ///     of every edge, or of each: the first runs from the first corner to the second (mm)
    /// names : list of str or None
    ///     of the edges; "edge 1" and so on by default
    /// **cutting
    ///     what else Piece takes
    #[classmethod]
    #[pyo3(signature = (name, points, allowance, names=None, **cutting))]
    fn polygon<'py>(
        class: &Bound<'py, pyo3::types::PyType>,
        name: &str,
        points: &Bound<'py, PyAny>,
        allowance: &Bound<'py, PyAny>,
        names: Option<&Bound<'py, PyAny>>,
        cutting: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let py = class.py();
        let edges = data(py)?.call_method1("polygon", (points, allowance, names))?;
        class.call((name, edges), cutting)
    }

    /// The piece that ``to_json`` wrote, checked again.
    #[staticmethod]
    fn from_json(py: Python<'_>, text: &str) -> PyResult<PyPiece> {
        Ok(from_json::<Piece>(py, "Piece.from_json", text)?.into())
    }

    /// The piece as JSON, every number to the last bit.
    fn to_json(&self, py: Python<'_>) -> PyResult<String> {
        json(py, "Piece.to_json", &self.piece)
    }

    /// The piece as dicts and lists, as ``to_json`` writes it.
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        parsed(py, &self.to_json(py)?)
    }

    /// The piece's name.
    #[getter]
    fn name(&self) -> &str {
        self.piece.name()
    }

    /// Its edges, a tuple of Edge, counter-clockwise.
    #[getter]
    fn edges<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        tuple(
            py,
            self.piece.edges().iter().map(|edge| edge_data(py, edge)),
        )
    }

    /// Its marks, a tuple of DartMark, DrillMark, LineMark, ButtonholeMark and CutoutMark.
    #[getter]
    fn marks<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        tuple(
            py,
            self.piece.marks().iter().map(|mark| mark_data(py, mark)),
        )
    }

    /// The first edge of this name.
    fn edge<'py>(&self, py: Python<'py>, name: &str) -> PyResult<Bound<'py, PyAny>> {
        let index = self.index(py, "Piece.edge", "name", name)?;
        edge_data(py, &self.piece.edges()[index])
    }

    /// Its grain line as two points, or None.
    #[getter]
    fn grain(&self) -> Option<(Pair, Pair)> {
        self.piece
            .grain()
            .map(|line| (pair(line.p0), pair(line.p1)))
    }

    /// Angle of the grain line from the x axis (degrees, counter-clockwise); 90 where none is set.
    #[getter]
    fn grain_deg(&self) -> f64 {
        self.piece.grain_deg()
    }

    /// How many are cut in all.
    #[getter]
    fn count(&self) -> u32 {
        self.piece.cutting().count
    }

    /// "identical", or "mirrored" where half of them are cut mirrored.
    #[getter]
    fn hand(&self) -> String {
        spelled(self.piece.cutting().hand)
    }

    /// From which cloth it is cut.
    #[getter]
    fn cloth(&self) -> &str {
        &self.piece.cutting().cloth
    }

    /// With which interfacing, or None.
    #[getter]
    fn interfacing(&self) -> Option<&str> {
        self.piece.cutting().interfacing.as_deref()
    }

    /// Index of the edge laid to a fold of the cloth, or None; with one, half the piece is drawn.
    #[getter]
    fn fold(&self) -> Option<usize> {
        self.piece.fold()
    }

    /// Area inside the drawn lines (mm2), without the other half of a piece on a fold.
    #[getter]
    fn area(&self) -> f64 {
        self.piece.area()
    }

    /// The smallest upright box that holds the drawn lines: left, bottom, right, top (mm).
    #[getter]
    fn bounds(&self) -> (f64, f64, f64, f64) {
        corners(self.piece.bounds())
    }

    /// The line to cut along: every edge at its allowance, joined by the corner treatments.
    ///
    /// Parameters
    /// ----------
    /// tolerance : float
    ///     how near curves are followed (mm), 0.001 to 10; lines and arcs have exact parallels
    ///
    /// Returns
    /// -------
    /// CutLine
    ///
    /// Raises
    /// ------
    /// ReclothError
    ///     nothing is left of the cut line of an edge: ``argument`` is "allowance" and the text names the
    ///     edge whose allowance to change, which is the lost one or one that lies across it
    #[pyo3(signature = (tolerance=0.05))]
    fn cut_line(
        slf: &Bound<'_, PyPiece>,
        #[pyo3(from_py_with = number)] tolerance: f64,
    ) -> PyResult<PyCutLine> {
        let this = slf.get();
        let line = this.piece.cut_line(tolerance);
        let line = line.map_err(|error| this.failed(slf.py(), "Piece.cut_line", &error))?;
        Ok(PyCutLine {
            line,
            piece: slf.clone().unbind(),
            method: "cut_line",
            tolerance,
        })
    }

    /// The line to sew along: as drawn, or inside where an edge is drawn as already cut.
    ///
    /// Parameters, result and errors are those of ``cut_line``.
    #[pyo3(signature = (tolerance=0.05))]
    fn seam_line(
        slf: &Bound<'_, PyPiece>,
        #[pyo3(from_py_with = number)] tolerance: f64,
    ) -> PyResult<PyCutLine> {
        let this = slf.get();
        let line = this.piece.seam_line(tolerance);
        let line = line.map_err(|error| this.failed(slf.py(), "Piece.seam_line", &error))?;
        Ok(PyCutLine {
            line,
            piece: slf.clone().unbind(),
            method: "seam_line",
            tolerance,
        })
    }

    /// Point on an edge at a distance from its start, and the direction outward, of length 1.
    ///
    /// Parameters
    /// ----------
    /// edge : str or int
    ///     its name or index
    /// distance : float
    ///     along the edge (mm), held to its ends
    fn at(
        &self,
        edge: &Bound<'_, PyAny>,
        #[pyo3(from_py_with = number)] distance: f64,
    ) -> PyResult<(Pair, Pair)> {
        let py = edge.py();
        let index = self.one("Piece.at", "edge", edge)?;
        let distance = Error::check("distance", distance, f64::MIN, f64::MAX);
        let distance = distance.map_err(|error| raise(py, "Piece.at", &error))?;
        let missing = || invalid(py, "Piece.at", "edge", "the piece has no such edge");
        let (point, out) = self.piece.at(index, distance).ok_or_else(missing)?;
        Ok((pair(point), (out.x, out.y)))
    }

    /// The mirror image about the y axis: x becomes -x.
    fn mirror(&self) -> PyPiece {
        self.piece.mirror().into()
    }

    /// The piece shifted (mm).
    fn shifted(
        &self,
        py: Python<'_>,
        #[pyo3(from_py_with = number)] x: f64,
        #[pyo3(from_py_with = number)] y: f64,
    ) -> PyResult<PyPiece> {
        for (name, value) in [("x", x), ("y", y)] {
            Error::check(name, value, -1e5, 1e5)
                .map_err(|error| raise(py, "Piece.shifted", &error))?;
        }
        Ok(self.piece.shifted((x, y)).into())
    }

    /// The piece turned about the origin (degrees, counter-clockwise, -360 to 360).
    fn turned(
        &self,
        py: Python<'_>,
        #[pyo3(from_py_with = number)] angle_deg: f64,
    ) -> PyResult<PyPiece> {
        Error::check("angle_deg", angle_deg, -360.0, 360.0)
            .map_err(|error| raise(py, "Piece.turned", &error))?;
        Ok(self.piece.turned(angle_deg).into())
    }

    /// The whole piece of one cut on a fold: the drawn half and its mirror image about the fold. A piece
    /// without a fold comes back as it is.
    ///
    /// Raises
    /// ------
    /// ReclothError
    ///     the half lies on both sides of its fold
    fn unfold(&self, py: Python<'_>) -> PyResult<PyPiece> {
        let whole = self.piece.unfold();
        whole
            .map(PyPiece::from)
            .map_err(|error| self.failed(py, "Piece.unfold", &error))
    }

    /// Whether the piece differs from its mirror image, so that left and right are not the same.
    ///
    /// Parameters
    /// ----------
    /// tolerance : float
    ///     how far they may differ (mm), 0 to 1000
    #[pyo3(signature = (tolerance=0.001))]
    fn handed(
        &self,
        py: Python<'_>,
        #[pyo3(from_py_with = number)] tolerance: f64,
    ) -> PyResult<bool> {
        let handed = self.piece.handed(tolerance);
        handed.map_err(|error| raise(py, "Piece.handed", &error))
    }

    /// Walks edges along those of another piece they are sewn to, length and notch for notch.
    ///
    /// Parameters
    /// ----------
    /// edges : str, int, or list of them
    ///     edges of this piece by name or index, in the order they are met
    /// other : Piece
    ///     the other piece
    /// other_edges : str, int, or list of them
    ///     its edges, in the order they are met
    /// way : str
    ///     "against": the start of one meets the end of the other, as of two pieces drawn with the
    ///     same side up; "along": start meets start, as where one of them is cut mirrored
    ///
    /// Returns
    /// -------
    /// Walk
    #[pyo3(signature = (edges, other, other_edges, way="against"))]
    fn walk<'py>(
        &self,
        edges: &Bound<'py, PyAny>,
        other: &Bound<'py, PyPiece>,
        other_edges: &Bound<'py, PyAny>,
        way: &str,
    ) -> PyResult<Bound<'py, PyAny>> {
        const WALK: &str = "Piece.walk";
        let py = edges.py();
        let other = other.get();
        let way: Way = word(py, WALK, "way", way)?;
        let edges = self.indices(WALK, "edges", edges)?;
        let other_edges = other.indices(WALK, "other_edges", other_edges)?;
        let walk = self
            .piece
            .walk(&edges, &other.piece, &other_edges, way)
            .map_err(|error| raise(py, WALK, &error))?;
        walk_data(py, &walk)
    }

    /// The piece as it is laid: its cut line, seam line, grain and how many of each hand; of a piece on a
    /// fold the whole, and the fold.
    ///
    /// Parameters
    /// ----------
    /// tilt_deg : float
    ///     how far its grain may be tilted either way (degrees, 0 to 180)
    /// shows : str
    ///     the side of the cloth that may show: "right", "wrong", "either", "both"
    /// either_way : bool
    ///     whether it may be turned end for end on cloth with a nap
    /// crosswise : bool
    ///     whether its grain may also run across the cloth
    /// tolerance : float
    ///     how near curves are followed (mm), 0.001 to 10
    /// matches : list of str
    ///     notches that are to meet those of the same name on other parts, on cloth with a repeat
    ///
    /// Returns
    /// -------
    /// Part
    #[pyo3(signature = (tilt_deg=0.0, *, shows="right", either_way=false, crosswise=false, tolerance=0.05, matches=vec![]))]
    #[pyo3(
        text_signature = "($self, tilt_deg=0.0, *, shows='right', either_way=False, crosswise=False, tolerance=0.05, matches=())"
    )]
    #[allow(clippy::too_many_arguments)]
    fn part<'py>(
        &self,
        py: Python<'py>,
        #[pyo3(from_py_with = number)] tilt_deg: f64,
        shows: &str,
        either_way: bool,
        crosswise: bool,
        #[pyo3(from_py_with = number)] tolerance: f64,
        matches: Vec<String>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let failed = |error: Error| self.failed(py, "Piece.part", &error);
        let mut part = Part {
            tilt_deg,
            shows: word(py, "Part", "shows", shows)?,
            either_way,
            crosswise,
            ..Part::of(&self.piece, tolerance).map_err(failed)?
        };
        for name in &matches {
            part = part.matching_notch(&self.piece, name).map_err(failed)?;
        }
        part_data(py, &part)
    }

    /// The piece as SVG, drawn to cut from: cut and seam lines, notches, marks, grain, allowances.
    ///
    /// Parameters
    /// ----------
    /// scale : float
    ///     0.001 to 10; 1 is full size. Widths of lines and sizes of text stay
    /// edges : bool
    ///     whether to write along each edge what it is and its allowance
    #[pyo3(signature = (scale=1.0, edges=true))]
    fn svg(
        &self,
        py: Python<'_>,
        #[pyo3(from_py_with = number)] scale: f64,
        edges: bool,
    ) -> PyResult<String> {
        self.drawn(scale, edges)
            .map_err(|error| self.failed(py, "Piece.svg", &error))
    }

    /// The piece as a notebook shows it; None where it has no cut line.
    fn _repr_svg_(&self) -> Option<String> {
        self.drawn(self.shown(), true).ok()
    }

    fn __repr__(&self) -> String {
        format!(
            "Piece({}, {} edges)",
            short(self.piece.name()),
            self.piece.edges().len()
        )
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Pickled<'py>> {
        pickled::<PyPiece>(py, self.to_json(py)?)
    }
}

/// Length of an edge (mm).
#[pyfunction]
pub(crate) fn edge_length(py: Python<'_>, edge: EdgeData) -> PyResult<f64> {
    Ok(edge.edge(py, "Edge")?.length())
}
