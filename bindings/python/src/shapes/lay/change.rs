//! `least_change`: what must give.

use pyo3::{exceptions::PyTypeError, prelude::*, types::PyDict};
use recloth_lay::{Amount, Change, Give, Needed, Options, Step};

use super::{
    super::{
        cloth::panel_list,
        read::{Pair, tuple},
    },
    data::{corners, part_tuple, read_parts},
    fit::{PyFit, proof},
    search::Search,
    watch::Watch,
};

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
/// spacing, seed, budget, seconds, threads
///     as of ``fit``; budget and seconds are for everything together
/// progress : callable or None
///     as of ``fit``, but that nothing is told of the best
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
#[pyo3(
    signature = (parts, panels, changes, **options),
    text_signature = "(parts, panels, changes, *, spacing=0.0, seed=1, budget=200000000, seconds=None, threads=0, progress=None)"
)]
pub(crate) fn least_change<'py>(
    py: Python<'py>,
    parts: &Bound<'py, PyAny>,
    panels: &Bound<'py, PyAny>,
    changes: &Bound<'py, PyAny>,
    options: Option<&Bound<'py, PyDict>>,
) -> PyResult<Bound<'py, PyAny>> {
    const NAME: &str = "least_change";
    let parts = read_parts(NAME, parts)?;
    let panels = panel_list(panels)?;
    let changes = read_changes(NAME, changes)?;
    let search = Search::read(NAME, Options::default(), options)?;
    let find = |options: &Options, watch: &mut Watch| {
        let say = |so_far| watch.say(so_far);
        Ok(recloth_lay::least_change_with(
            &parts, &panels, &changes, options, say,
        )?)
    };
    let found = search.run(py, find, |_, _| None)?;
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
    module.getattr("LeastChange")?.call1((
        answer,
        made,
        told,
        fit,
        why,
        found.evaluations,
        found.out_of_time,
    ))
}
