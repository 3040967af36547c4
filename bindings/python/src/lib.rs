//! The Python door: every function of the core as a NumPy ufunc and as a plain function of floats,
//! and shapes as classes.

mod door;
#[rustfmt::skip]
mod generated;
mod shapes;
mod ufunc;

use pyo3::prelude::*;

/// The compiled half of the package `recloth`; use that.
#[pymodule(gil_used = false)]
fn _core(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add("__version__", recloth::VERSION)?;
    module.add_function(wrap_pyfunction!(door::doubt_text, module)?)?;
    module.add_function(wrap_pyfunction!(door::caution_text, module)?)?;
    shapes::register(module)?;
    generated::register(module)
}
