//! `ufuncs.py` and its stub.

use std::fmt::Write as _;

use super::{NOTE, record::ufunc_name};
use crate::{
    emit::Code,
    spec::{Function, Spec},
};

fn scalar_functions(spec: &Spec) -> impl Iterator<Item = &Function> {
    spec.functions
        .iter()
        .filter(|function| function.is_scalar())
}

/// `ufuncs.py`.
pub(crate) fn ufuncs(spec: &Spec) -> Code {
    let mut code = format!(
        "{NOTE}\"\"\"Each answer of each function of numbers as a NumPy ufunc of one output.\n\n\
         Inputs are positional. An error gives NaN and raises the invalid flag, so that\n\
         ``np.errstate`` decides what becomes of it. They take masked arrays, pandas, polars,\n\
         dask and xarray columns.\n\"\"\"\n\nfrom ._core import (\n"
    );
    let names = ufunc_names(spec);
    for name in &names {
        let _ = writeln!(code, "    {name},");
    }
    code.push_str(")\n\n__all__ = [\n");
    for name in &names {
        let _ = writeln!(code, "    \"{name}\",");
    }
    code.push_str("]\n");
    Code::text(code)
}

fn ufunc_names(spec: &Spec) -> Vec<String> {
    scalar_functions(spec)
        .flat_map(|function| {
            function
                .answer
                .fields
                .iter()
                .map(|field| ufunc_name(function, &field.name))
        })
        .collect()
}

/// `ufuncs.pyi`.
pub(crate) fn ufuncs_stub(spec: &Spec) -> Code {
    let mut code = format!("{NOTE}import numpy as np\n\n");
    let names = ufunc_names(spec);
    for name in &names {
        let _ = writeln!(code, "{name}: np.ufunc");
    }
    let _ = writeln!(
        code,
        "\n__all__ = [\n{}]",
        names
            .iter()
            .map(|name| format!("    \"{name}\",\n"))
            .collect::<String>()
    );
    Code::text(code)
}
