//! What every Python function goes through: whole numbers read, errors raised.

use pyo3::{
    exceptions::{PyOverflowError, PyTypeError},
    intern,
    prelude::*,
    sync::PyOnceLock,
    types::{PyBool, PyType},
};
use recloth::{Error, ErrorKind};

/// A number as Python gives it. One beyond what a float holds is an infinity, which is then refused
/// by name; True is no measure.
pub(crate) fn number(value: &Bound<'_, PyAny>) -> PyResult<f64> {
    let refused = || PyTypeError::new_err(format!("a number is wanted, not {}", class(value)));
    if value.is_instance_of::<PyBool>() {
        return Err(refused());
    }
    match value.extract::<f64>() {
        Err(error) if error.is_instance_of::<PyOverflowError>(value.py()) => Ok(if value.gt(0)? {
            f64::INFINITY
        } else {
            f64::NEG_INFINITY
        }),
        answer => answer.map_err(|_| refused()),
    }
}

/// A whole number from 0 to `most`, beyond what a float tells apart.
pub(crate) fn whole(
    function: &str,
    argument: &'static str,
    value: &Bound<'_, PyAny>,
    most: u64,
) -> PyResult<u64> {
    let py = value.py();
    let out = || {
        let given = number(value).unwrap_or(f64::NAN);
        raise(
            py,
            function,
            &Error::new(ErrorKind::OutOfRange, argument, given, 0.0, most as f64),
        )
    };
    if value.is_instance_of::<PyBool>() {
        return Err(not_whole(function, argument, value));
    }
    match value.extract::<u64>() {
        Ok(whole) if whole <= most => Ok(whole),
        Ok(_) => Err(out()),
        Err(error) if error.is_instance_of::<PyOverflowError>(py) => Err(out()),
        Err(_) => Err(not_whole(function, argument, value)),
    }
}

fn not_whole(function: &str, argument: &str, value: &Bound<'_, PyAny>) -> PyErr {
    let class = class(value);
    PyTypeError::new_err(format!(
        "{function}: {argument} must be a whole number, not {class}"
    ))
}

/// The name of a value's class.
pub(crate) fn class(value: &Bound<'_, PyAny>) -> String {
    let name = value.get_type().name();
    name.map_or_else(|_| "what was given".into(), |name| name.to_string())
}

/// A count from a float: the count and nothing, or `stand_in` and what is wrong.
pub(crate) fn count(argument: &'static str, value: f64, stand_in: u32) -> (u32, Option<Error>) {
    let bad = |kind| {
        (
            stand_in,
            Some(Error::new(kind, argument, value, 0.0, f64::from(u32::MAX))),
        )
    };
    if !value.is_finite() {
        bad(ErrorKind::NotFinite)
    } else if value != value.trunc() {
        bad(ErrorKind::NotWhole)
    } else if value < 0.0 || value > f64::from(u32::MAX) {
        bad(ErrorKind::OutOfRange)
    } else {
        (value as u32, None)
    }
}

/// The error for a choice that is not offered.
pub(crate) fn bad_choice(argument: &'static str, value: f64) -> Error {
    Error::new(ErrorKind::Choice, argument, value, f64::NAN, f64::NAN)
}

/// The answer, or the first error in the order of the arguments: `bad` holds arguments that could
/// not be read, for which the core was called with a stand-in.
pub(crate) fn settle<T>(
    answer: Result<T, Error>,
    names: &[&str],
    bad: &[Option<Error>],
) -> Result<T, Error> {
    let place = |error: &Error| names.iter().position(|name| *name == error.argument());
    match (answer, bad.iter().flatten().next()) {
        (Err(error), Some(bad))
            if error.kind() != ErrorKind::NoSolution && place(&error) < place(bad) =>
        {
            Err(error)
        }
        (_, Some(bad)) => Err(*bad),
        (answer, None) => answer,
    }
}

/// How many items a list to fill has: none when the count is one the core refuses anyway.
pub(crate) fn room(count: usize, plus: i32, most: usize) -> usize {
    if count > most {
        0
    } else {
        count.saturating_add_signed(plus as isize)
    }
}

/// The exception `recloth.ReclothError` for an error of this function.
pub(crate) fn raise(py: Python<'_>, function: &str, error: &Error) -> PyErr {
    raise_text(py, function, error, &error.to_string())
}

/// The same with a sentence that says more: which edge, which panel.
pub(crate) fn raise_text(py: Python<'_>, function: &str, error: &Error, text: &str) -> PyErr {
    static CLASS: PyOnceLock<Py<PyType>> = PyOnceLock::new();
    let made = (|| {
        let class = CLASS.get_or_try_init(py, || {
            py.import("recloth._errors")?
                .getattr(intern!(py, "ReclothError"))?
                .cast_into::<PyType>()
                .map(Bound::unbind)
                .map_err(PyErr::from)
        })?;
        class.bind(py).call1((
            function,
            error.kind().name(),
            error.kind().code(),
            error.argument(),
            error.value(),
            error.min(),
            error.max(),
            error.at(),
            text,
        ))
    })();
    made.map_or_else(|failure| failure, PyErr::from_value)
}

/// The sentence of one doubt, or None when the bit is none.
#[pyfunction]
pub(crate) fn doubt_text(bit: &Bound<'_, PyAny>) -> PyResult<Option<&'static str>> {
    Ok(one_bit("doubt_text", bit)?.and_then(recloth::doubt::doubt_text))
}

/// The sentence of one caution, or None when the bit is none.
#[pyfunction]
pub(crate) fn caution_text(bit: &Bound<'_, PyAny>) -> PyResult<Option<&'static str>> {
    Ok(one_bit("caution_text", bit)?.and_then(recloth::doubt::caution_text))
}

/// A number that may be one of the bits; none where it is too large or negative.
fn one_bit(function: &str, bit: &Bound<'_, PyAny>) -> PyResult<Option<u64>> {
    if bit.is_instance_of::<PyBool>() {
        return Err(not_whole(function, "bit", bit));
    }
    match bit.extract() {
        Ok(bit) => Ok(Some(bit)),
        Err(error) if error.is_instance_of::<PyOverflowError>(bit.py()) => Ok(None),
        Err(_) => Err(not_whole(function, "bit", bit)),
    }
}
