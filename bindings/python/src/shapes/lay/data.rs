//! Parts, placements and the cloth of a strip, between Python's data and Rust's.

use kurbo::{Point, Vec2};
use numpy::PyArray2;
use pyo3::{IntoPyObjectExt, prelude::*, types::PyTuple};
use recloth_lay::{Fold, Lay, MatchPoint, Part, Placement, Strip, Unplaced};

use super::super::cloth::{read_repeat, repeat_data};
use super::super::read::{Pair, array, data, made, pair, points, spelled, tuple, whole, word};
use crate::door::{number, raise, raise_text};

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
    crosswise: bool,
    role: String,
    seam: Vec<Pair>,
    fold: Option<(Pair, Pair)>,
    matches: Vec<MatchData>,
}

#[derive(FromPyObject)]
struct MatchData {
    name: String,
    at: Pair,
    side: String,
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

#[derive(FromPyObject)]
struct FoldData {
    panel: usize,
    start: Pair,
    end: Pair,
}

#[derive(FromPyObject)]
struct StripData<'py> {
    width: f64,
    faces: String,
    nap: bool,
    folded: bool,
    repeat: Bound<'py, PyAny>,
}

pub(super) fn corners(points: Vec<Pair>) -> Vec<Point> {
    points.into_iter().map(Point::from).collect()
}

/// The parts given to a function.
pub(super) fn read_parts(function: &str, parts: &Bound<'_, PyAny>) -> PyResult<Vec<Part>> {
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
                crosswise: part.crosswise,
                role: part.role,
                seam: corners(part.seam),
                fold: part.fold.map(|(a, b)| [a.into(), b.into()]),
                matches: (part.matches.into_iter())
                    .map(|point| {
                        Ok(MatchPoint {
                            name: point.name,
                            at: point.at.into(),
                            side: word(py, function, "side", &point.side)?,
                        })
                    })
                    .collect::<PyResult<_>>()?,
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

/// One placement given to a function.
pub(super) fn read_placement(function: &str, at: &Bound<'_, PyAny>) -> PyResult<Placement> {
    let py = at.py();
    let placement: PlacementData = data(py)?.call_method1("placement", (at,))?.extract()?;
    placement.placement(py, function)
}

/// The lay given to a function.
pub(super) fn read_lay(
    function: &str,
    placements: &Bound<'_, PyAny>,
    unplaced: Option<&Bound<'_, PyAny>>,
    folds: Option<&Bound<'_, PyAny>>,
    spacing: f64,
) -> PyResult<Lay> {
    let py = placements.py();
    let placements: Vec<PlacementData> = data(py)?
        .call_method1("placement_list", (placements,))?
        .extract()?;
    let placements = placements
        .into_iter()
        .map(|placement| placement.placement(py, function))
        .collect::<PyResult<_>>()?;
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
                hand: word(py, function, "hand", &u.hand)?,
                count: whole(py, function, "count", u.count)?,
            })
        })
        .collect::<PyResult<_>>()?;
    let folds: Vec<FoldData> = match folds {
        Some(folds) => data(py)?.call_method1("fold_list", (folds,))?.extract()?,
        None => Vec::new(),
    };
    let fold = |fold: FoldData| Fold {
        panel: fold.panel,
        from: fold.start.into(),
        to: fold.end.into(),
    };
    Ok(Lay {
        placements,
        unplaced,
        spacing,
        folds: folds.into_iter().map(fold).collect(),
    })
}

/// The cloth by the length given to a function.
pub(super) fn read_strip(function: &str, strip: &Bound<'_, PyAny>) -> PyResult<Strip> {
    let py = strip.py();
    let strip: StripData<'_> = data(py)?.call_method1("cloth_strip", (strip,))?.extract()?;
    Ok(Strip {
        width: strip.width,
        faces: word(py, function, "faces", &strip.faces)?,
        nap: strip.nap,
        folded: strip.folded,
        repeat: read_repeat(&strip.repeat)?,
    })
}

/// The cloth by the length as Python's data.
pub(super) fn strip_data<'py>(py: Python<'py>, strip: &Strip) -> PyResult<Bound<'py, PyAny>> {
    let repeat = repeat_data(py, strip.repeat)?;
    let faces = spelled(strip.faces);
    let fields = (strip.width, faces, strip.nap, strip.folded, repeat);
    made(py, "Strip", fields)
}

/// The placement as Python's data.
pub(super) fn placement_data<'py>(
    py: Python<'py>,
    placement: &Placement,
) -> PyResult<Bound<'py, PyAny>> {
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

/// The points to match of a part as Python's data.
fn match_tuple<'py>(py: Python<'py>, points: &[MatchPoint]) -> PyResult<Bound<'py, PyTuple>> {
    let each = |point: &MatchPoint| {
        let fields = (&point.name, pair(point.at), spelled(point.side));
        made(py, "MatchPoint", fields)
    };
    tuple(py, points.iter().map(each))
}

/// The part as Python's data.
pub(crate) fn part_data<'py>(py: Python<'py>, part: &Part) -> PyResult<Bound<'py, PyAny>> {
    let fields = [
        (&part.name).into_bound_py_any(py)?,
        pairs(&part.outline).into_bound_py_any(py)?,
        part.grain_deg.into_bound_py_any(py)?,
        part.tilt_deg.into_bound_py_any(py)?,
        part.as_drawn.into_bound_py_any(py)?,
        part.mirrored.into_bound_py_any(py)?,
        spelled(part.shows).into_bound_py_any(py)?,
        part.either_way.into_bound_py_any(py)?,
        part.crosswise.into_bound_py_any(py)?,
        (&part.role).into_bound_py_any(py)?,
        pairs(&part.seam).into_bound_py_any(py)?,
        (part.fold.map(|[a, b]| (pair(a), pair(b)))).into_bound_py_any(py)?,
        match_tuple(py, &part.matches)?.into_any(),
    ];
    made(py, "Part", PyTuple::new(py, fields)?)
}

/// A part that may lie on a fold, made of its half; called by ``Part.on_fold``.
#[pyfunction]
pub(crate) fn part_on_fold<'py>(
    py: Python<'py>,
    name: &str,
    half: &Bound<'py, PyAny>,
    start: Pair,
    end: Pair,
) -> PyResult<Bound<'py, PyAny>> {
    let part = Part::on_fold(name, points(half, "half")?, start, end);
    part_data(
        py,
        &part.map_err(|error| raise(py, "Part.on_fold", &error))?,
    )
}

/// Parts as Python's data.
pub(super) fn part_tuple<'py>(py: Python<'py>, parts: &[Part]) -> PyResult<Bound<'py, PyTuple>> {
    tuple(py, parts.iter().map(|part| part_data(py, part)))
}

/// The placements of a lay as Python's data.
pub(super) fn placement_tuple<'py>(py: Python<'py>, lay: &Lay) -> PyResult<Bound<'py, PyTuple>> {
    let placements = lay.placements.iter();
    tuple(
        py,
        placements.map(|placement| placement_data(py, placement)),
    )
}

/// What a lay leaves out as Python's data.
pub(super) fn unplaced_tuple<'py>(py: Python<'py>, lay: &Lay) -> PyResult<Bound<'py, PyTuple>> {
    let unplaced = lay.unplaced.iter();
    tuple(
        py,
        unplaced.map(|u| made(py, "Unplaced", (u.part, spelled(u.hand), u.count))),
    )
}

/// The folds of a lay as Python's data.
pub(super) fn fold_tuple<'py>(py: Python<'py>, lay: &Lay) -> PyResult<Bound<'py, PyTuple>> {
    let fold = |fold: &Fold| made(py, "Fold", (fold.panel, pair(fold.from), pair(fold.to)));
    tuple(py, lay.folds.iter().map(fold))
}

/// The cut lines of a lay's pieces where they lie.
pub(super) fn outlines<'py>(
    py: Python<'py>,
    parts: &[Part],
    lay: &Lay,
) -> PyResult<Vec<Bound<'py, PyArray2<f64>>>> {
    let placements = lay.placements.iter();
    placements
        .map(|p| array(py, &recloth_lay::placed(&parts[p.part].outline, p)))
        .collect()
}

/// The exception for what is wrong with a part, a panel or an option.
pub(super) fn failed(py: Python<'_>, function: &str, error: &recloth_lay::Error) -> PyErr {
    raise_text(py, function, &error.error(), &error.to_string())
}
