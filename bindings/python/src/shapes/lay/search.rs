//! What every search takes, and how it runs: without the interpreter's lock, told of and stopped.

use pyo3::{
    exceptions::PyTypeError,
    prelude::*,
    types::{PyDict, PyString},
};
use recloth_lay::{Error, Options};

use super::{data::failed, watch::Watch};
use crate::door::{number, whole};

/// The text signatures of searches end in these, which one by one go to `Search::read`. Their meaning is told with `fit`.
const OPTIONS: [&str; 6] = [
    "spacing", "seed", "budget", "seconds", "threads", "progress",
];

/// Why a search ended early: something given cannot be used, or Python raised.
pub(super) enum Stopped {
    Lay(Error),
    Python(PyErr),
}

impl From<Error> for Stopped {
    fn from(error: Error) -> Stopped {
        Stopped::Lay(error)
    }
}

/// A search that is about to begin.
pub(super) struct Search {
    function: &'static str,
    options: Options,
    watch: Watch,
}

impl Search {
    /// What was given by keyword to a function, the rest as of `options`.
    pub(super) fn read(
        function: &'static str,
        mut options: Options,
        given: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<Search> {
        let mut progress = None;
        for (key, value) in given.into_iter().flatten() {
            let key = key.cast_into::<PyString>()?.to_string();
            let named = |error| of_argument(value.py(), &key, error);
            match key.as_str() {
                "spacing" => options.spacing = number(&value).map_err(named)?,
                "seed" => options.seed = whole(function, "seed", &value, u64::MAX)?,
                "budget" => options.budget = whole(function, "budget", &value, u64::MAX)?,
                "seconds" if value.is_none() => options.seconds = None,
                "seconds" => options.seconds = Some(number(&value).map_err(named)?),
                "threads" => {
                    let threads = whole(function, "threads", &value, u64::from(u32::MAX))?;
                    options.threads = usize::try_from(threads).unwrap_or(usize::MAX);
                }
                "progress" => progress = (!value.is_none()).then_some(value),
                _ => {
                    return Err(PyTypeError::new_err(format!(
                        "{function}() got an unexpected keyword argument '{key}'; it takes {}",
                        OPTIONS.join(", ")
                    )));
                }
            }
        }
        Ok(Search {
            function,
            options,
            watch: Watch::new(function, progress.as_ref())?,
        })
    }

    /// Runs it; `best` is what `progress` is told of its answer at the end.
    pub(super) fn run<T: Send>(
        mut self,
        py: Python<'_>,
        find: impl FnOnce(&Options, &mut Watch) -> Result<T, Stopped> + Send,
        best: impl FnOnce(&T, Option<f64>) -> Option<f64>,
    ) -> PyResult<T> {
        let found = py.detach(|| find(&self.options, &mut self.watch));
        let found = found.map_err(|stopped| match stopped {
            Stopped::Lay(error) => failed(py, self.function, &error),
            Stopped::Python(error) => error,
        })?;
        let last = self.watch.best();
        self.watch.end(py, best(&found, last))?;
        Ok(found)
    }
}

/// A wrong type as of an argument, as Python's own readers of arguments tell it.
fn of_argument(py: Python<'_>, name: &str, error: PyErr) -> PyErr {
    match error.is_instance_of::<PyTypeError>(py) {
        true => PyTypeError::new_err(format!("argument '{name}': {}", error.value(py))),
        false => error,
    }
}
