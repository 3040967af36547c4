//! `least_change`, `longest` and `fullest`: what must give, and how large a part may be.

use pyo3::{exceptions::PyTypeError, prelude::*, types::PyTuple};
use recloth_lay::{
    Amount, Change, Error, Give, Largest, Needed, Options, Outward, Panel, Part, Step,
};

use super::{
    super::{
        cloth::panel_list,
        read::{Pair, tuple},
    },
    data::{corners, failed, part_tuple, read_parts},
    fit::{PyFit, proof},
    watch::Watch,
};
use crate::door::{number, whole};

/// The fields of a `Change` of Python; which of them are there, its class has seen to.
#[derive(FromPyObject)]
struct ChangeData<'py> {
    part: usize,
    give: String,
    to_deg: Option<f64>,
    across_deg: Option<f64>,
    start: Option<f64>,
    end: Option<f64>,
    allowance: Option<f64>,
    toward_deg: Option<f64>,
    beyond: Option<f64>,
    most: Option<f64>,
    name: Option<String>,
    steps: Option<Vec<(f64, Vec<Pair>)>>,
    parts: Option<Bound<'py, PyAny>>,
    by: Option<u32>,
}

impl ChangeData<'_> {
    fn change(self, function: &str) -> PyResult<Change> {
        let kind = match self.give.as_str() {
            "tilt" => Give::Tilt {
                to_deg: told(self.to_deg)?,
            },
            "join" => Give::Join {
                across_deg: told(self.across_deg)?,
                from: told(self.start)?,
                to: told(self.end)?,
                allowance: told(self.allowance)?,
            },
            "shorter" => Give::Shorter {
                toward_deg: told(self.toward_deg)?,
                beyond: told(self.beyond)?,
                most: told(self.most)?,
            },
            "smaller" => Give::Smaller {
                name: told(self.name)?,
                steps: (told(self.steps)?.into_iter())
                    .map(|(amount, outline)| Step {
                        amount,
                        outline: corners(outline),
                    })
                    .collect(),
            },
            "instead" => Give::Instead {
                name: told(self.name)?,
                parts: read_parts(function, &told(self.parts)?)?,
            },
            _ => Give::Fewer { by: told(self.by)? },
        };
        Ok(Change {
            part: self.part,
            kind,
        })
    }
}

fn told<T>(value: Option<T>) -> PyResult<T> {
    value.ok_or_else(|| PyTypeError::new_err("a change lacks what its kind is told by"))
}

fn read_changes(function: &str, changes: &Bound<'_, PyAny>) -> PyResult<Vec<Change>> {
    let module = changes.py().import("recloth._changes")?;
    let changes: Vec<ChangeData<'_>> = module.call_method1("change_list", (changes,))?.extract()?;
    changes
        .into_iter()
        .map(|change| change.change(function))
        .collect()
}

/// How the seed and the budget of a function are read, so that an error names the function.
macro_rules! counts {
    ($name:literal, $seed:ident, $budget:ident) => {
        fn $seed(seed: &Bound<'_, PyAny>) -> PyResult<u64> {
            whole($name, "seed", seed, u64::MAX)
        }

        fn $budget(budget: &Bound<'_, PyAny>) -> PyResult<u64> {
            whole($name, "budget", budget, u64::MAX)
        }
    };
}

counts!("least_change", change_seed, change_budget);
counts!("longest", longest_seed, longest_budget);
counts!("fullest", fullest_seed, fullest_budget);

/// What kind of change, how much, and where its seam lies.
fn amount(amount: &Amount) -> (&'static str, f64, Option<f64>) {
    match *amount {
        Amount::Tilt { to_deg } => ("tilt", to_deg, None),
        Amount::Join { pieces, at, .. } => ("join", f64::from(pieces), Some(at)),
        Amount::Shorter { by } => ("shorter", by, None),
        Amount::Smaller { by, .. } => ("smaller", by, None),
        Amount::Instead { pieces, .. } => ("instead", f64::from(pieces), None),
        Amount::Fewer { by, .. } => ("fewer", f64::from(by), None),
        _ => ("", f64::NAN, None),
    }
}

/// The least change that makes all pieces fit, as far as is found.
///
/// First nothing is changed. If that does not fit, the first change is allowed to its fullest, then the
/// second too, and so on, until all pieces fit. Then changes that are not needed are left out again, the
/// last first, and the amount of each other is brought down as far as is found to fit: to 0.1 mm, 0.01
/// degrees, a step, or a piece. It is the least that was found.
///
/// Parameters
/// ----------
/// parts : list of Part or Piece
///     as of ``fit``
/// panels : list of Panel
///     as of ``fit``
/// changes : list of Change
///     what the maker would allow, what she minds least first, up to 100; or dicts with their fields
/// spacing : float
///     least distance between the cut lines of two pieces (mm), 0 to 1000
/// seed : int
///     number the search's chances start from, 0 to 2**64 - 1
/// budget : int
///     how many evaluations to stop after, for everything together
///
/// Returns
/// -------
/// LeastChange
///
/// Raises
/// ------
/// ReclothError
///     naming the part, panel, option or change and what is wrong with it
///
/// Examples
/// --------
/// >>> import recloth
/// >>> def strip(length):
/// ...     return [(0, 0), (60, 0), (60, length), (0, length)]
/// >>> scraps = [recloth.Panel("left", strip(420)), recloth.Panel("right", strip(260))]
/// >>> join = recloth.Change(0, "join", across_deg=90, start=100, end=540, allowance=10)
/// >>> print(recloth.least_change([recloth.Part("band", strip(640))], scraps, [join]))
/// band: joined, 240 mm from its end
#[pyfunction]
#[pyo3(signature = (parts, panels, changes, *, spacing=0.0, seed=1, budget=200_000_000))]
pub(crate) fn least_change<'py>(
    py: Python<'py>,
    parts: &Bound<'py, PyAny>,
    panels: &Bound<'py, PyAny>,
    changes: &Bound<'py, PyAny>,
    #[pyo3(from_py_with = number)] spacing: f64,
    #[pyo3(from_py_with = change_seed)] seed: u64,
    #[pyo3(from_py_with = change_budget)] budget: u64,
) -> PyResult<Bound<'py, PyAny>> {
    const NAME: &str = "least_change";
    let parts = read_parts(NAME, parts)?;
    let panels = panel_list(panels)?;
    let changes = read_changes(NAME, changes)?;
    let options = Options {
        spacing,
        seed,
        budget,
        ..Options::default()
    };
    // Signals are looked at while it works.
    let mut watch = Watch::new(NAME, None)?;
    let found = py.detach(|| {
        let say = |so_far| watch.say(so_far);
        recloth_lay::least_change_with(&parts, &panels, &changes, &options, say)
    });
    let found = found.map_err(|error| failed(py, NAME, &error))?;
    watch.end(py, None)?;
    let (answer, made, parts, fit, why) = match found.answer {
        Needed::Nothing(fit) => ("nothing", Vec::new(), parts, Some(*fit), None),
        Needed::Changed { made, parts, fit } => ("changed", made, parts, Some(*fit), None),
        Needed::Never { parts, shortage } => {
            let why = proof(&parts, &panels, &shortage);
            ("never", Vec::new(), parts, None, Some(why))
        }
        Needed::Undecided => ("undecided", Vec::new(), parts, None, None),
    };
    let module = py.import("recloth._changes")?;
    let class = module.getattr("Made")?;
    let made = tuple(
        py,
        made.iter().map(|made| {
            let (give, amount, at) = amount(&made.amount);
            class.call1((made.change, &made.part, give, amount, at, made.to_string()))
        }),
    )?;
    let told = part_tuple(py, &parts)?;
    let fit = fit.map(|fit| PyFit::new(parts, panels, fit));
    module
        .getattr("LeastChange")?
        .call1((answer, made, told, fit, why, found.evaluations))
}

/// How far an end or a side of a part may move out.
type Further = fn(&[Part], Outward, &[Panel], &Options, &mut Watch) -> Result<Largest, Error>;

/// What is said of the end that moves, and how to look.
struct Asked<'a, 'py> {
    part: &'a Bound<'py, PyAny>,
    beyond: f64,
    most: f64,
    opposite: bool,
    options: Options,
}

fn further<'py>(
    py: Python<'py>,
    name: &str,
    find: Further,
    parts: &Bound<'py, PyAny>,
    panels: &Bound<'py, PyAny>,
    asked: &Asked<'_, 'py>,
) -> PyResult<Bound<'py, PyAny>> {
    let parts = read_parts(name, parts)?;
    let panels = panel_list(panels)?;
    let part = whole(name, "part", asked.part, u64::from(u32::MAX))?;
    let outward = Outward {
        part: usize::try_from(part).unwrap_or(usize::MAX),
        beyond: asked.beyond,
        most: asked.most,
        opposite: asked.opposite,
    };
    let options = asked.options;
    let mut watch = Watch::new(name, None)?;
    let found = py.detach(|| find(&parts, outward, &panels, &options, &mut watch));
    let found = found.map_err(|error| failed(py, name, &error))?;
    watch.end(py, None)?;
    let why = found.shortage.as_ref();
    let why = why.map(|shortage| proof(&parts, &panels, shortage));
    let told: Bound<'_, PyTuple> = part_tuple(py, &found.parts)?;
    let fit = found.fit.map(|fit| PyFit::new(found.parts, panels, *fit));
    let class = py.import("recloth._changes")?.getattr("Largest")?;
    class.call1((
        found.value,
        found.refused,
        why,
        told,
        fit,
        found.evaluations,
    ))
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
/// spacing, seed, budget
///     as of ``fit``; the budget is for everything together
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
#[pyo3(signature = (
    parts, panels, part, *, beyond, most, opposite=false, spacing=0.0, seed=1, budget=200_000_000
))]
#[allow(
    clippy::too_many_arguments,
    reason = "options by keyword are arguments"
)]
pub(crate) fn longest<'py>(
    py: Python<'py>,
    parts: &Bound<'py, PyAny>,
    panels: &Bound<'py, PyAny>,
    part: &Bound<'py, PyAny>,
    #[pyo3(from_py_with = number)] beyond: f64,
    #[pyo3(from_py_with = number)] most: f64,
    opposite: bool,
    #[pyo3(from_py_with = number)] spacing: f64,
    #[pyo3(from_py_with = longest_seed)] seed: u64,
    #[pyo3(from_py_with = longest_budget)] budget: u64,
) -> PyResult<Bound<'py, PyAny>> {
    let options = Options {
        spacing,
        seed,
        budget,
        ..Options::default()
    };
    let asked = Asked {
        part,
        beyond,
        most,
        opposite,
        options,
    };
    let find: Further = |parts, outward, panels, options, watch| {
        recloth_lay::longest_with(parts, outward, panels, options, |so_far| watch.say(so_far))
    };
    further(py, "longest", find, parts, panels, &asked)
}

/// How much wider a part can be, all pieces fitting: corners beyond a line move out across its grain, to the
/// right of it, or to its left where ``opposite``. Otherwise as ``longest``.
///
/// Parameters
/// ----------
/// parts, panels, part, beyond, most, opposite, spacing, seed, budget
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
#[pyo3(signature = (
    parts, panels, part, *, beyond, most, opposite=false, spacing=0.0, seed=1, budget=200_000_000
))]
#[allow(
    clippy::too_many_arguments,
    reason = "options by keyword are arguments"
)]
pub(crate) fn fullest<'py>(
    py: Python<'py>,
    parts: &Bound<'py, PyAny>,
    panels: &Bound<'py, PyAny>,
    part: &Bound<'py, PyAny>,
    #[pyo3(from_py_with = number)] beyond: f64,
    #[pyo3(from_py_with = number)] most: f64,
    opposite: bool,
    #[pyo3(from_py_with = number)] spacing: f64,
    #[pyo3(from_py_with = fullest_seed)] seed: u64,
    #[pyo3(from_py_with = fullest_budget)] budget: u64,
) -> PyResult<Bound<'py, PyAny>> {
    let options = Options {
        spacing,
        seed,
        budget,
        ..Options::default()
    };
    let asked = Asked {
        part,
        beyond,
        most,
        opposite,
        options,
    };
    let find: Further = |parts, outward, panels, options, watch| {
        recloth_lay::fullest_with(parts, outward, panels, options, |so_far| watch.say(so_far))
    };
    further(py, "fullest", find, parts, panels, &asked)
}
