//! Between Python's data and Rust's: points, words, JSON, and the classes of `recloth._shapes`.

use kurbo::{Point, Rect};
use numpy::{PyArray1, PyArray2, PyArrayMethods, PyReadonlyArray2};
use pyo3::{prelude::*, types::PyTuple};
use recloth::{Error, ErrorKind};
use serde::{Serialize, de::DeserializeOwned};
use serde_json::Value;

use crate::door::{count, raise, raise_text};

/// A point as Python has it.
pub(crate) type Pair = (f64, f64);

/// A point as Python takes it.
pub(crate) fn pair(point: Point) -> Pair {
    (point.x, point.y)
}

/// A box as left, bottom, right, top.
pub(crate) fn corners(bounds: Rect) -> (f64, f64, f64, f64) {
    (bounds.x0, bounds.y0, bounds.x1, bounds.y1)
}

/// The module of plain data.
pub(crate) fn data(py: Python<'_>) -> PyResult<Bound<'_, PyModule>> {
    py.import("recloth._shapes")
}

/// One of its classes, made from these arguments.
pub(crate) fn made<'py>(
    py: Python<'py>,
    class: &str,
    arguments: impl pyo3::call::PyCallArgs<'py>,
) -> PyResult<Bound<'py, PyAny>> {
    data(py)?.getattr(class)?.call1(arguments)
}

/// Several of them.
pub(crate) fn tuple<'py>(
    py: Python<'py>,
    items: impl IntoIterator<Item = PyResult<Bound<'py, PyAny>>>,
) -> PyResult<Bound<'py, PyTuple>> {
    PyTuple::new(py, items.into_iter().collect::<PyResult<Vec<_>>>()?)
}

/// Points from anything of shape (n, 2).
pub(crate) fn points(value: &Bound<'_, PyAny>, argument: &str) -> PyResult<Vec<Point>> {
    let array = data(value.py())?.call_method1("points", (value, argument))?;
    let array: PyReadonlyArray2<'_, f64> = array.extract()?;
    let view = array.as_array();
    Ok(view
        .rows()
        .into_iter()
        .map(|row| Point::new(row[0], row[1]))
        .collect())
}

/// A list of numbers from anything of one dimension.
pub(crate) fn numbers(
    value: &Bound<'_, PyAny>,
    function: &str,
    argument: &str,
) -> PyResult<Vec<f64>> {
    let module = value.py().import("recloth._numbers")?;
    let list = module.call_method1("list_of", (value, function, argument))?;
    list.extract()
}

/// A point from anything of two numbers.
pub(crate) fn point(value: &Bound<'_, PyAny>) -> PyResult<Pair> {
    let point = data(value.py())?.call_method1("point", (value, "point"))?;
    point.extract()
}

/// Several rings of points.
pub(crate) fn rings(value: &Bound<'_, PyAny>, argument: &str) -> PyResult<Vec<Vec<Point>>> {
    value
        .try_iter()?
        .map(|ring| points(&ring?, argument))
        .collect()
}

/// Points as an array of shape (n, 2).
pub(crate) fn array<'py>(py: Python<'py>, points: &[Point]) -> PyResult<Bound<'py, PyArray2<f64>>> {
    let flat = points.iter().flat_map(|p| [p.x, p.y]).collect();
    PyArray1::from_vec(py, flat).reshape([points.len(), 2])
}

/// A choice by its word, as the core writes it; the classes of data let no other word through.
pub(crate) fn word<T: DeserializeOwned>(
    py: Python<'_>,
    function: &str,
    argument: &'static str,
    word: &str,
) -> PyResult<T> {
    serde_json::from_value(Value::from(word)).map_err(|_| {
        let error = Error::new(ErrorKind::Choice, argument, f64::NAN, f64::NAN, f64::NAN);
        raise_text(
            py,
            function,
            &error,
            &format!("{argument} = {} is not one of the choices", short(word)),
        )
    })
}

/// The word of a choice.
pub(crate) fn spelled(choice: impl Serialize) -> String {
    match serde_json::to_value(choice) {
        Ok(Value::String(word)) => word,
        Ok(Value::Object(fields)) => fields
            .into_iter()
            .map(|(word, _)| word)
            .next()
            .unwrap_or_default(),
        _ => String::new(),
    }
}

/// A count given as a number.
pub(crate) fn whole(
    py: Python<'_>,
    function: &str,
    argument: &'static str,
    value: f64,
) -> PyResult<u32> {
    match count(argument, value, 0) {
        (count, None) => Ok(count),
        (_, Some(error)) => Err(raise(py, function, &error)),
    }
}

/// A value as JSON. All of ours is plain data with text keys.
pub(crate) fn json(py: Python<'_>, function: &str, value: &impl Serialize) -> PyResult<String> {
    serde_json::to_string(value).map_err(|error| invalid(py, function, "self", &error.to_string()))
}

/// A value from JSON.
pub(crate) fn from_json<T: DeserializeOwned>(
    py: Python<'_>,
    function: &str,
    text: &str,
) -> PyResult<T> {
    serde_json::from_str(text).map_err(|error| invalid(py, function, "text", &error.to_string()))
}

/// JSON as dicts and lists.
pub(crate) fn parsed<'py>(py: Python<'py>, text: &str) -> PyResult<Bound<'py, PyAny>> {
    py.import("json")?.call_method1("loads", (text,))
}

/// Data that says what cannot be.
pub(crate) fn invalid(py: Python<'_>, function: &str, argument: &'static str, what: &str) -> PyErr {
    let error = Error::new(ErrorKind::Invalid, argument, f64::NAN, f64::NAN, f64::NAN);
    raise_text(py, function, &error, &format!("{argument}: {what}"))
}

/// How a value is unpickled: by this class method, from this JSON.
pub(crate) type Pickled<'py> = (Bound<'py, PyAny>, (String,));

/// Pickles a value through its JSON.
pub(crate) fn pickled<'py, T: pyo3::PyTypeInfo>(
    py: Python<'py>,
    json: String,
) -> PyResult<Pickled<'py>> {
    Ok((py.get_type::<T>().getattr("from_json")?, (json,)))
}

/// At most this many letters of a name, in quotes.
pub(crate) fn short(name: &str) -> String {
    let mut letters = name.chars();
    let start: String = letters.by_ref().take(30).collect();
    let dots = if letters.next().is_some() { "..." } else { "" };
    format!("\"{start}{dots}\"").replace(|c: char| c.is_control(), " ")
}
