//! What a search says while it works, and what stops it: the caller's function, or a signal such as Ctrl-C.

use core::ops::ControlFlow;
use std::time::{Duration, Instant};

use pyo3::{exceptions::PyTypeError, prelude::*};
use recloth_lay::Progress;

use crate::door::class;

/// Time between two looks at signals. Each takes the interpreter's lock, for which other threads would wait.
const EVERY: Duration = Duration::from_millis(100);

/// Stands between a search that runs without the interpreter's lock and Python.
pub(crate) struct Watch {
    progress: Option<Py<PyAny>>,
    last: Option<Instant>,
    best: Option<f64>,
    failed: Option<PyErr>,
}

impl Watch {
    /// One that tells `progress`, if there is one.
    pub(crate) fn new(function: &str, progress: Option<&Bound<'_, PyAny>>) -> PyResult<Watch> {
        if let Some(progress) = progress.filter(|progress| !progress.is_callable()) {
            return Err(PyTypeError::new_err(format!(
                "{function}: progress must be a function of two numbers, not {}",
                class(progress)
            )));
        }
        Ok(Watch {
            progress: progress.map(|progress| progress.clone().unbind()),
            last: None,
            best: None,
            failed: None,
        })
    }

    /// Says how far the search is, unless it did so a moment ago; breaks at a signal or an exception.
    pub(crate) fn say(&mut self, so_far: Progress) -> ControlFlow<()> {
        self.best = so_far.best;
        if self.last.is_some_and(|last| last.elapsed() < EVERY) {
            return ControlFlow::Continue(());
        }
        let heard = Python::attach(|py| {
            py.check_signals()?;
            self.tell(py, so_far.done, so_far.best)
        });
        self.last = Some(Instant::now());
        match heard {
            Ok(()) => ControlFlow::Continue(()),
            Err(error) => {
                self.failed = Some(error);
                ControlFlow::Break(())
            }
        }
    }

    /// The best that the search has said so far.
    pub(crate) fn best(&self) -> Option<f64> {
        self.best
    }

    /// Raises what stopped the search, or says that it is through.
    pub(crate) fn end(self, py: Python<'_>, best: Option<f64>) -> PyResult<()> {
        match self.failed {
            Some(error) => Err(error),
            None => self.tell(py, 1.0, best),
        }
    }

    fn tell(&self, py: Python<'_>, done: f64, best: Option<f64>) -> PyResult<()> {
        if let Some(progress) = &self.progress {
            progress.call1(py, (done, best))?;
        }
        Ok(())
    }
}
