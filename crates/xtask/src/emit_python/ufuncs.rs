//! `ufuncs.py` and its stub.

use std::fmt::Write as _;

use super::{
    NOTE,
    record::{is_record, record_name, ufunc_name},
    stub::of_generic,
};
use crate::{
    emit::Code,
    spec::{Function, Spec},
};

const DOC: &str = r#""""Each answer of each function of numbers as a NumPy ufunc of one output.

Under the name of a function is what it returns, a ufunc in place of each number::

    ufuncs.circle_skirt.hem_length(waists, 600, 1)
    ufuncs.bias_square(lengths, widths)

Inputs are positional, choices are their numbers. An error gives NaN (0 for bits and counts) and
raises the invalid flag, so that ``np.errstate`` decides what becomes of it. Masked arrays, and
columns of pandas, polars, dask and xarray stay what they are.
"""
"#;

fn scalar_functions(spec: &Spec) -> impl Iterator<Item = &Function> {
    spec.functions
        .iter()
        .filter(|function| function.is_scalar())
}

/// The names of all functions that have ufuncs, as `__all__`.
fn all(spec: &Spec) -> String {
    let names = scalar_functions(spec).map(|function| format!("    \"{}\",\n", function.name));
    format!("__all__ = [\n{}]\n", names.collect::<String>())
}

/// `ufuncs.py`.
pub(crate) fn ufuncs(spec: &Spec) -> Code {
    let mut code = format!("{NOTE}{DOC}\nfrom . import _core, _functions\n\n");
    for function in scalar_functions(spec) {
        let parts = function.answer.fields.iter();
        let parts = parts.map(|field| format!("_core.{}", ufunc_name(function, &field.name)));
        let _ = match is_record(function) {
            true => writeln!(
                code,
                "{} = _functions.{}(\n{})",
                function.name,
                record_name(function),
                parts
                    .map(|part| format!("    {part},\n"))
                    .collect::<String>()
            ),
            false => writeln!(code, "{} = {}", function.name, parts.collect::<String>()),
        };
    }
    let _ = write!(code, "\n{}", all(spec));
    Code::text(code)
}

/// `ufuncs.pyi`.
pub(crate) fn ufuncs_stub(spec: &Spec) -> Code {
    let mut code = format!("{NOTE}import numpy as np\nimport recloth\n\n");
    for function in scalar_functions(spec) {
        let ty = match is_record(function) {
            true => format!("recloth.{}", of_generic(function, |_| "np.ufunc")),
            false => "np.ufunc".into(),
        };
        let _ = writeln!(code, "{}: {ty}", function.name);
    }
    let _ = write!(code, "\n{}", all(spec));
    Code::text(code)
}
