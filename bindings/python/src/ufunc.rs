//! Real NumPy ufuncs made from plain functions of numbers.

use std::{
    ffi::{CStr, c_char, c_int, c_void},
    hint::black_box,
    ptr,
};

use numpy::npyffi::{NPY_TYPES, PY_UFUNC_API, npy_intp};
use pyo3::prelude::*;
use recloth::Error;

/// A function of `N` numbers that gives `M` numbers.
pub(crate) trait Scalar<const N: usize, const M: usize> {
    /// Which of the answers are whole numbers (bits and counts).
    const WHOLE: [bool; M];

    /// The core's function; counts and choices come as floats.
    fn call(given: [f64; N]) -> Result<[f64; M], Error>;
}

/// Raises the floating-point flag `invalid`, so that `np.errstate` decides what becomes of an error.
#[cold]
fn flag_invalid() {
    black_box(black_box(0.0_f64) / black_box(0.0_f64));
}

/// Reads row after row, calls the function, hands the answer and the place of the row to `put`.
///
/// # Safety
/// As NumPy promises an inner loop: `args` and `steps` have an entry an operand.
unsafe fn rows<F: Scalar<N, M>, const N: usize, const M: usize>(
    args: *mut *mut c_char,
    dimensions: *mut npy_intp,
    steps: *mut npy_intp,
    put: impl Fn(npy_intp, Result<[f64; M], Error>),
) {
    // SAFETY: NumPy passes one pointer and one step an input, and the number of rows.
    unsafe {
        let step: [npy_intp; N] = std::array::from_fn(|index| *steps.add(index));
        let mut place: [*mut c_char; N] = std::array::from_fn(|index| *args.add(index));
        for row in 0..*dimensions {
            // All inputs are read before an output is written: they may be one array.
            let given = std::array::from_fn(|index| place[index].cast::<f64>().read());
            put(row, F::call(given));
            for index in 0..N {
                place[index] = place[index].wrapping_offset(step[index]);
            }
        }
    }
}

/// The inner loop of one answer, NaN (0 for a whole number) where there is an error.
unsafe extern "C" fn one<F: Scalar<N, M>, const N: usize, const M: usize, const FIELD: usize>(
    args: *mut *mut c_char,
    dimensions: *mut npy_intp,
    steps: *mut npy_intp,
    _: *mut c_void,
) {
    // SAFETY: NumPy passes N inputs and one output, whose step is the last.
    unsafe {
        let (out, step) = (*args.add(N), *steps.add(N));
        rows::<F, N, M>(args, dimensions, steps, |row, answer| {
            let value = answer.map_or_else(
                |_| {
                    flag_invalid();
                    f64::NAN
                },
                |answer| answer[FIELD],
            );
            write::<F, N, M>(FIELD, out.wrapping_offset(row * step), value);
        });
    }
}

/// The inner loop of every answer and the status.
unsafe extern "C" fn every<F: Scalar<N, M>, const N: usize, const M: usize>(
    args: *mut *mut c_char,
    dimensions: *mut npy_intp,
    steps: *mut npy_intp,
    _: *mut c_void,
) {
    // SAFETY: NumPy passes N inputs and M + 1 outputs, each with its step.
    unsafe {
        rows::<F, N, M>(args, dimensions, steps, |row, answer| {
            let place = |index: usize| (*args.add(index)).wrapping_offset(row * *steps.add(index));
            let (answer, status) = match answer {
                Ok(answer) => (answer, 0),
                Err(error) => ([f64::NAN; M], error.kind().code()),
            };
            for (index, value) in answer.into_iter().enumerate() {
                write::<F, N, M>(index, place(N + index), value);
            }
            place(N + M).cast::<c_int>().write(status);
        });
    }
}

/// Writes one answer in its type.
///
/// # Safety
/// `out` is valid for the answer's type.
unsafe fn write<F: Scalar<N, M>, const N: usize, const M: usize>(
    field: usize,
    out: *mut c_char,
    value: f64,
) {
    // SAFETY: the types given to NumPy say what `out` points to.
    unsafe {
        if F::WHOLE[field] {
            // NaN becomes 0.
            out.cast::<u32>().write(value as u32);
        } else {
            out.cast::<f64>().write(value);
        }
    }
}

type Loop = unsafe extern "C" fn(*mut *mut c_char, *mut npy_intp, *mut npy_intp, *mut c_void);

/// Adds the ufunc of one answer.
pub(crate) fn add_one<F: Scalar<N, M>, const N: usize, const M: usize, const FIELD: usize>(
    module: &Bound<'_, PyModule>,
    name: &'static CStr,
    doc: &'static CStr,
) -> PyResult<()> {
    add(
        module,
        name,
        doc,
        one::<F, N, M, FIELD>,
        N,
        &[kind(F::WHOLE[FIELD])],
    )
}

/// Adds the ufunc of every answer and the status, for the package's own use.
pub(crate) fn add_every<F: Scalar<N, M>, const N: usize, const M: usize>(
    module: &Bound<'_, PyModule>,
    name: &'static CStr,
) -> PyResult<()> {
    let mut outputs: Vec<_> = F::WHOLE.iter().map(|&whole| kind(whole)).collect();
    outputs.push(NPY_TYPES::NPY_INT);
    add(
        module,
        name,
        c"Every answer and the status.",
        every::<F, N, M>,
        N,
        &outputs,
    )
}

fn kind(whole: bool) -> NPY_TYPES {
    if whole {
        NPY_TYPES::NPY_UINT
    } else {
        NPY_TYPES::NPY_DOUBLE
    }
}

fn add(
    module: &Bound<'_, PyModule>,
    name: &'static CStr,
    doc: &'static CStr,
    inner: Loop,
    inputs: usize,
    outputs: &[NPY_TYPES],
) -> PyResult<()> {
    let py = module.py();
    let types = (0..inputs)
        .map(|_| NPY_TYPES::NPY_DOUBLE)
        .chain(outputs.iter().copied())
        .map(|kind| kind as c_char)
        .collect::<Vec<_>>();
    // NumPy keeps these pointers for as long as the ufunc lives, which is for good.
    let types = types.leak();
    let loops = Box::leak(Box::new([Some(inner)]));
    let data = Box::leak(Box::new([ptr::null_mut::<c_void>()]));
    // SAFETY: one loop, with a type for each operand; the tables live for good.
    let ufunc = unsafe {
        Bound::from_owned_ptr_or_err(
            py,
            PY_UFUNC_API
                .PyUFunc_FromFuncAndData(
                    py,
                    loops.as_mut_ptr().cast(),
                    data.as_mut_ptr(),
                    types.as_mut_ptr(),
                    1,
                    inputs as c_int,
                    outputs.len() as c_int,
                    -1,
                    name.as_ptr(),
                    doc.as_ptr(),
                    0,
                )
                .cast(),
        )?
    };
    module.add(name.to_string_lossy().as_ref(), ufunc)
}
