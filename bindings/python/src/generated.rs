//! Written by `cargo xtask generate` from the doc comments of the core; do not edit.
use crate::{
    door::{bad_choice, count, raise, room, settle},
    ufunc::{Scalar, add_every, add_one},
};
use numpy::{IntoPyArray, PyReadonlyArray1};
use pyo3::{IntoPyObjectExt, prelude::*, types::PyTuple};
use recloth::Error;
/// `recloth::skirt::circle_skirt`.
#[allow(non_camel_case_types)]
struct circle_skirt;
impl Scalar<3, 3> for circle_skirt {
    const WHOLE: [bool; 3] = [false, false, false];
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 3], Error> {
        let [waist, length, fraction] = given;
        let answer = recloth::skirt::circle_skirt(waist, length, fraction)?;
        Ok([answer.waist_radius, answer.hem_radius, answer.hem_length])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_circle_skirt<'py>(
    py: Python<'py>,
    waist: f64,
    length: f64,
    fraction: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = circle_skirt::call([waist, length, fraction])
        .map_err(|error| raise(py, "circle_skirt", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// Adds everything generated to the compiled module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    add_one::<
        circle_skirt,
        3,
        3,
        0,
    >(
        module,
        c"circle_skirt_waist_radius",
        c"Radii of a skirt cut from part of a ring.\n\nRadius of the waist edge (mm).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); fraction (0.01 to 4).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt,
        3,
        3,
        1,
    >(
        module,
        c"circle_skirt_hem_radius",
        c"Radii of a skirt cut from part of a ring.\n\nRadius of the hem edge (mm).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); fraction (0.01 to 4).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt,
        3,
        3,
        2,
    >(
        module,
        c"circle_skirt_hem_length",
        c"Radii of a skirt cut from part of a ring.\n\nLength of the hem edge (mm).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); fraction (0.01 to 4).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<circle_skirt, 3, 3>(module, c"all_circle_skirt")?;
    module.add_function(wrap_pyfunction!(one_circle_skirt, module)?)?;
    Ok(())
}
