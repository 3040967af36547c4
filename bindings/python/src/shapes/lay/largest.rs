//! `largest`, `longest` and `fullest`: how large a measure may be.

use pyo3::{exceptions::PyTypeError, prelude::*, types::PyDict};
use recloth_lay::{Largest, Options, Outward, Panel, Part, Values};

use super::{
    super::cloth::panel_list,
    data::{part_tuple, read_parts},
    fit::{PyFit, proof},
    search::{Search, Stopped},
    watch::Watch,
};
use crate::door::{class, number, whole};

/// The answer as Python's data; a proof names parts by their place.
fn largest_data<'py>(
    py: Python<'py>,
    found: Largest,
    panels: Vec<Panel>,
    named: &[Part],
) -> PyResult<Bound<'py, PyAny>> {
    let why = found.shortage.as_ref();
    let why = why.map(|shortage| proof(named, &panels, shortage));
    let told = part_tuple(py, &found.parts)?;
    let fit = found.fit.map(|fit| PyFit::new(found.parts, panels, *fit));
    let class = py.import("recloth._changes")?.getattr("Largest")?;
    class.call1((
        found.value,
        found.refused,
        why,
        told,
        fit,
        found.evaluations,
        found.out_of_time,
    ))
}

fn read_values(values: &Bound<'_, PyAny>) -> PyResult<Values> {
    let refused = || {
        PyTypeError::new_err(format!(
            "largest: values must be three numbers, low, high and step, not {}",
            class(values)
        ))
    };
    let items: Vec<Bound<'_, PyAny>> = values.extract().map_err(|_| refused())?;
    let [low, high, step] = &items[..] else {
        return Err(refused());
    };
    let number = |value| number(value).map_err(|_| refused());
    Ok(Values {
        low: number(low)?,
        high: number(high)?,
        step: number(step)?,
    })
}

/// The largest value of a measure at which all pieces fit, as far as is found.
///
/// The largest value is tried, then the least, then those between by halves, as many as it takes to tell two
/// neighbours apart; then again by halves for the least value proved impossible. It is taken for granted that
/// what fits at a value fits at every smaller one.
///
/// Parameters
/// ----------
/// values : tuple (low, high, step)
///     the least value (-1e6 to 1e6), the largest (to 1e6), and from one to the next (1e-6 to 1e6, at most
///     1e9 in all)
/// parts_at : callable
///     called with a value; gives the parts then, as ``fit`` takes them, by a draft or otherwise. An exception
///     in it ends the search and is passed on
/// panels : list of Panel
///     as of ``fit``
/// spacing, seed, budget, seconds, threads
///     as of ``fit``; budget and seconds are for everything together
/// progress : callable or None
///     as of ``fit``, but that nothing is told of the best
///
/// Returns
/// -------
/// Largest
///
/// Raises
/// ------
/// ReclothError
///     naming ``low``, ``high`` or ``step``, the part, panel or option
///
/// Examples
/// --------
/// >>> import recloth
/// >>> cloth = recloth.Panel("back", [(0, 0), (400, 0), (400, 700), (0, 700)])
/// >>> def pocket(depth):
/// ...     return [recloth.Part("pocket", [(0, 0), (150, 0), (150, depth), (0, depth)], as_drawn=4)]
/// >>> recloth.largest((100, 400, 5), pocket, [cloth])
/// Largest(350.0, refused 355.0)
#[pyfunction]
#[pyo3(
    signature = (values, parts_at, panels, **options),
    text_signature = "(values, parts_at, panels, *, spacing=0.0, seed=1, budget=200000000, seconds=None, threads=0, progress=None)"
)]
pub(crate) fn largest<'py>(
    py: Python<'py>,
    values: &Bound<'py, PyAny>,
    parts_at: &Bound<'py, PyAny>,
    panels: &Bound<'py, PyAny>,
    options: Option<&Bound<'py, PyDict>>,
) -> PyResult<Bound<'py, PyAny>> {
    const NAME: &str = "largest";
    let values = read_values(values)?;
    if !parts_at.is_callable() {
        return Err(PyTypeError::new_err(format!(
            "{NAME}: parts_at must be a function of one number, not {}",
            class(parts_at)
        )));
    }
    let parts_at = parts_at.clone().unbind();
    let panels = panel_list(panels)?;
    let search = Search::read(NAME, Options::default(), options)?;
    let mut made: Vec<(f64, Vec<Part>)> = Vec::new();
    let find = |options: &Options, watch: &mut Watch| {
        let parts_at = |value: f64| {
            let parts = Python::attach(|py| read_parts(NAME, &parts_at.bind(py).call1((value,))?));
            let parts = parts.map_err(Stopped::Python)?;
            made.push((value, parts.clone()));
            Ok(parts)
        };
        let say = |so_far| watch.say(so_far);
        recloth_lay::largest_with(values, parts_at, &panels, options, say)
    };
    let found = search.run(py, find, |_, _| None)?;
    let refused = made.iter().find(|(value, _)| Some(*value) == found.refused);
    let named = refused.map_or(&[][..], |(_, parts)| parts);
    largest_data(py, found, panels, named)
}

/// How far an end or a side of a part may move out.
type Further =
    fn(&[Part], Outward, &[Panel], &Options, &mut Watch) -> Result<Largest, recloth_lay::Error>;

/// What is said of the end that moves.
struct End<'a, 'py> {
    part: &'a Bound<'py, PyAny>,
    beyond: f64,
    most: f64,
    opposite: bool,
}

fn further<'py>(
    py: Python<'py>,
    name: &'static str,
    find: Further,
    (parts, panels): (&Bound<'py, PyAny>, &Bound<'py, PyAny>),
    end: &End<'_, 'py>,
    options: Option<&Bound<'py, PyDict>>,
) -> PyResult<Bound<'py, PyAny>> {
    let parts = read_parts(name, parts)?;
    let panels = panel_list(panels)?;
    let part = whole(name, "part", end.part, u64::from(u32::MAX))?;
    let outward = Outward {
        part: usize::try_from(part).unwrap_or(usize::MAX),
        beyond: end.beyond,
        most: end.most,
        opposite: end.opposite,
    };
    let search = Search::read(name, Options::default(), options)?;
    let find =
        |options: &Options, watch: &mut Watch| Ok(find(&parts, outward, &panels, options, watch)?);
    let found = search.run(py, find, |_, _| None)?;
    // A shortage names parts by their place, which a length does not change.
    largest_data(py, found, panels, &parts)
}

/// How much longer a part can be, all pieces fitting: corners beyond a line move out along its grain, to
/// 0.1 mm.
///
/// It is taken for granted that what fits at a length fits at every shorter one. All pieces of the part become
/// longer alike.
///
/// Parameters
/// ----------
/// parts : list of Part or Piece
///     as of ``fit``
/// panels : list of Panel
///     as of ``fit``
/// part : int
///     index of the part
/// beyond : float
///     corners further out than this move: the distance from the origin of the part's axes in the direction
///     they move in (mm)
/// most : float
///     how far at most (mm), 0.1 to 1e5
/// opposite : bool
///     whether the end is the one that the grain points away from
/// spacing, seed, budget, seconds, threads
///     as of ``fit``; budget and seconds are for everything together
/// progress : callable or None
///     as of ``fit``, but that nothing is told of the best
///
/// Returns
/// -------
/// Largest
///
/// Raises
/// ------
/// ReclothError
///     naming the part, panel or option, ``beyond`` (no corner lies beyond it, or all do) or ``most``
///
/// Examples
/// --------
/// >>> import recloth
/// >>> cloth = recloth.Panel("back", [(0, 0), (400, 0), (400, 700), (0, 700)])
/// >>> skirt = recloth.Part("skirt", [(0, 0), (380, 0), (300, 650), (80, 650)])
/// >>> recloth.longest([skirt], [cloth], 0, beyond=-100, most=200, opposite=True)
/// Largest(50.0, refused 50.1)
#[pyfunction]
#[pyo3(
    signature = (parts, panels, part, *, beyond, most, opposite=false, **options),
    text_signature = "(parts, panels, part, *, beyond, most, opposite=False, spacing=0.0, seed=1, budget=200000000, seconds=None, threads=0, progress=None)"
)]
#[allow(
    clippy::too_many_arguments,
    reason = "what is given by keyword is an argument"
)]
pub(crate) fn longest<'py>(
    py: Python<'py>,
    parts: &Bound<'py, PyAny>,
    panels: &Bound<'py, PyAny>,
    part: &Bound<'py, PyAny>,
    #[pyo3(from_py_with = number)] beyond: f64,
    #[pyo3(from_py_with = number)] most: f64,
    opposite: bool,
    options: Option<&Bound<'py, PyDict>>,
) -> PyResult<Bound<'py, PyAny>> {
    let end = End {
        part,
        beyond,
        most,
        opposite,
    };
    let find: Further = |parts, outward, panels, options, watch| {
        recloth_lay::longest_with(parts, outward, panels, options, |so_far| watch.say(so_far))
    };
    further(py, "longest", find, (parts, panels), &end, options)
}

/// How much wider a part can be, all pieces fitting: corners beyond a line move out across its grain, to the
/// right of it, or to its left where ``opposite``. Otherwise as ``longest``.
///
/// Parameters
/// ----------
/// parts, panels, part, beyond, most, opposite, spacing, seed, budget, seconds, threads, progress
///     as of ``longest``
///
/// Returns
/// -------
/// Largest
///
/// Raises
/// ------
/// ReclothError
///     as of ``longest``
///
/// Examples
/// --------
/// >>> import recloth
/// >>> cloth = recloth.Panel("back", [(0, 0), (400, 0), (400, 700), (0, 700)])
/// >>> skirt = recloth.Part("skirt", [(0, 0), (380, 0), (300, 650), (80, 650)])
/// >>> recloth.fullest([skirt], [cloth], 0, beyond=190, most=100).value
/// 20.0
#[pyfunction]
#[pyo3(
    signature = (parts, panels, part, *, beyond, most, opposite=false, **options),
    text_signature = "(parts, panels, part, *, beyond, most, opposite=False, spacing=0.0, seed=1, budget=200000000, seconds=None, threads=0, progress=None)"
)]
#[allow(
    clippy::too_many_arguments,
    reason = "what is given by keyword is an argument"
)]
pub(crate) fn fullest<'py>(
    py: Python<'py>,
    parts: &Bound<'py, PyAny>,
    panels: &Bound<'py, PyAny>,
    part: &Bound<'py, PyAny>,
    #[pyo3(from_py_with = number)] beyond: f64,
    #[pyo3(from_py_with = number)] most: f64,
    opposite: bool,
    options: Option<&Bound<'py, PyDict>>,
) -> PyResult<Bound<'py, PyAny>> {
    let end = End {
        part,
        beyond,
        most,
        opposite,
    };
    let find: Further = |parts, outward, panels, options, watch| {
        recloth_lay::fullest_with(parts, outward, panels, options, |so_far| watch.say(so_far))
    };
    further(py, "fullest", find, (parts, panels), &end, options)
}
