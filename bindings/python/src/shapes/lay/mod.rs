//! Lays: `fit`, `strip` and `check`, what must give and what is left, and the classes of what they answer.

mod change;
mod check;
pub(super) mod data;
mod drawing;
pub(super) mod fit;
mod largest;
mod leftover;
mod search;
mod strip;
pub(super) mod watch;

use pyo3::prelude::*;

/// Adds the functions and classes of lays.
pub(super) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_class::<fit::PyFit>()?;
    module.add_class::<strip::PyStripLay>()?;
    module.add_function(wrap_pyfunction!(fit::fit, module)?)?;
    module.add_function(wrap_pyfunction!(change::least_change, module)?)?;
    module.add_function(wrap_pyfunction!(largest::largest, module)?)?;
    module.add_function(wrap_pyfunction!(largest::longest, module)?)?;
    module.add_function(wrap_pyfunction!(largest::fullest, module)?)?;
    module.add_function(wrap_pyfunction!(leftover::leftovers, module)?)?;
    module.add_function(wrap_pyfunction!(strip::strip, module)?)?;
    module.add_function(wrap_pyfunction!(data::part_on_fold, module)?)?;
    module.add_function(wrap_pyfunction!(check::check, module)?)?;
    module.add_function(wrap_pyfunction!(check::placed, module)?)
}
