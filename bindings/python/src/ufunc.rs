//! Real NumPy ufuncs made from plain functions of numbers.

use std::{
    ffi::{CStr, c_char, c_int, c_ulong, c_void},
    hint::black_box,
    ptr,
};

use numpy::npyffi::{NPY_TYPES, PY_UFUNC_API, npy_intp};
use pyo3::prelude::*;
use recloth::Error;

/// What an answer is, and goes out as.
#[derive(Clone, Copy, PartialEq)]
pub(crate) enum Type {
    Number,
    Count,
    Bits,
}

impl Type {
    fn in_numpy(self) -> NPY_TYPES {
        match self {
            Type::Number => NPY_TYPES::NPY_DOUBLE,
            Type::Count => NPY_TYPES::NPY_UINT,
            // The type that NumPy itself calls uint64: the first of C's that is so wide.
            Type::Bits if size_of::<c_ulong>() == size_of::<u64>() => NPY_TYPES::NPY_ULONG,
            Type::Bits => NPY_TYPES::NPY_ULONGLONG,
        }
    }
}

/// A function of `N` numbers that gives `M` numbers.
pub(crate) trait Scalar<const N: usize, const M: usize> {
    /// The type of each answer.
    const TYPES: [Type; M];

    /// The ranges of its arguments, if all are plain numbers.
    const RANGES: Option<[[f64; 2]; N]>;

    /// The core's function; counts, choices and bits cross as floats.
    fn call(given: [f64; N]) -> Result<[f64; M], Error>;
}

/// Raises the floating-point flag `invalid`, so that `np.errstate` decides what becomes of an error.
#[cold]
fn flag_invalid() {
    black_box(black_box(0.0_f64) / black_box(0.0_f64));
}

/// Rows worked at once where all of them are in range.
const BLOCK: usize = 128;

/// Reads numbers that lie `step` bytes apart.
///
/// # Safety
/// There is a number at each of `values.len()` places.
unsafe fn gather(first: *const c_char, step: npy_intp, values: &mut [f64]) {
    // SAFETY: as here.
    unsafe {
        for (row, value) in values.iter_mut().enumerate() {
            *value = first
                .wrapping_offset(row as npy_intp * step)
                .cast::<f64>()
                .read();
        }
    }
}

/// As `gather`, the other way.
///
/// # Safety
/// There is room for a number at each of `values.len()` places.
unsafe fn scatter(values: &[f64], first: *mut c_char, step: npy_intp) {
    // SAFETY: as here.
    unsafe {
        if step == size_of::<f64>() as npy_intp {
            ptr::copy_nonoverlapping(values.as_ptr(), first.cast(), values.len());
            return;
        }
        for (row, value) in values.iter().enumerate() {
            first
                .wrapping_offset(row as npy_intp * step)
                .cast::<f64>()
                .write(*value);
        }
    }
}

/// The inner loop of one answer that is a number, by blocks: one whose rows are all in range has its checks behind it, and
/// the compiler works several rows at once. The numbers are those of the loop by rows.
///
/// # Safety
/// As NumPy promises an inner loop: `args` and `steps` have an entry an operand.
#[inline(always)]
unsafe fn blocks<F: Scalar<N, M>, const N: usize, const M: usize, const FIELD: usize>(
    args: *mut *mut c_char,
    count: npy_intp,
    steps: *mut npy_intp,
) {
    // A constant, like the function's own checks, so that these are seen to have been made.
    let ranges = const {
        match F::RANGES {
            Some(ranges) => ranges,
            None => [[f64::NEG_INFINITY, f64::INFINITY]; N],
        }
    };
    let within = |given: &[f64; N]| {
        let each = given.iter().zip(&ranges);
        each.fold(true, |all, (value, [low, high])| {
            all & (value >= low) & (value <= high)
        })
    };
    // SAFETY: NumPy passes N inputs and one output, each with its step, for `count` rows.
    unsafe {
        let mut copies = [[0.0_f64; BLOCK]; N];
        for (index, copy) in copies.iter_mut().enumerate() {
            // One number for all rows is copied once.
            if *steps.add(index) == 0 {
                *copy = [(*args.add(index)).cast::<f64>().read(); BLOCK];
            }
        }
        let mut got = [0.0_f64; BLOCK];
        let mut row: npy_intp = 0;
        while row < count {
            let rows = BLOCK.min((count - row) as usize);
            let given: [*const f64; N] = std::array::from_fn(|index| {
                let step = *steps.add(index);
                let first = (*args.add(index)).wrapping_offset(row * step);
                // Numbers that lie side by side are read where they are.
                if step == size_of::<f64>() as npy_intp {
                    return first.cast::<f64>().cast_const();
                }
                if step != 0 {
                    gather(first, step, &mut copies[index][..rows]);
                }
                copies[index].as_ptr()
            });
            let at = |place: usize| -> [f64; N] {
                std::array::from_fn(|index| *given[index].add(place))
            };
            let mut all = true;
            for place in 0..rows {
                all &= within(&at(place));
            }
            let mut refused = false;
            if all {
                for (place, got) in got[..rows].iter_mut().enumerate() {
                    let given = at(place);
                    std::hint::assert_unchecked(within(&given));
                    *got = F::call(given).map_or(f64::NAN, |answer| answer[FIELD]);
                }
                // Without a solution it is NaN, which no answer is.
                for got in &got[..rows] {
                    refused |= got.is_nan();
                }
            } else {
                for (place, got) in got[..rows].iter_mut().enumerate() {
                    let answer = F::call(at(place));
                    refused |= answer.is_err();
                    *got = answer.map_or(f64::NAN, |answer| answer[FIELD]);
                }
            }
            if refused {
                flag_invalid();
            }
            let step = *steps.add(N);
            scatter(
                &got[..rows],
                (*args.add(N)).wrapping_offset(row * step),
                step,
            );
            row += rows as npy_intp;
        }
    }
}

/// The same for a processor that works four rows at once.
///
/// # Safety
/// As `blocks`, on a processor with AVX2.
#[cfg(target_arch = "x86_64")]
#[target_feature(enable = "avx2")]
unsafe fn blocks_wide<F: Scalar<N, M>, const N: usize, const M: usize, const FIELD: usize>(
    args: *mut *mut c_char,
    count: npy_intp,
    steps: *mut npy_intp,
) {
    // SAFETY: as here.
    unsafe { blocks::<F, N, M, FIELD>(args, count, steps) }
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

/// The inner loop of one answer, NaN (0 for a whole number) where there is an error. `FLOAT`: a whole
/// number goes out as a float.
unsafe extern "C" fn one<
    F: Scalar<N, M>,
    const N: usize,
    const M: usize,
    const FIELD: usize,
    const FLOAT: bool,
>(
    args: *mut *mut c_char,
    dimensions: *mut npy_intp,
    steps: *mut npy_intp,
    _: *mut c_void,
) {
    // SAFETY: NumPy passes N inputs and one output, whose step is the last.
    unsafe {
        if F::RANGES.is_some() && F::TYPES[FIELD] == Type::Number {
            #[cfg(target_arch = "x86_64")]
            if std::arch::is_x86_feature_detected!("avx2") {
                return blocks_wide::<F, N, M, FIELD>(args, *dimensions, steps);
            }
            return blocks::<F, N, M, FIELD>(args, *dimensions, steps);
        }
        let (out, step) = (*args.add(N), *steps.add(N));
        rows::<F, N, M>(args, dimensions, steps, |row, answer| {
            let answer_type = F::TYPES[FIELD];
            let none = if answer_type == Type::Number {
                f64::NAN
            } else {
                0.0
            };
            let value = answer.map_or_else(
                |_| {
                    flag_invalid();
                    none
                },
                |answer| answer[FIELD],
            );
            write(
                out.wrapping_offset(row * step),
                value,
                if FLOAT { Type::Number } else { answer_type },
            );
        });
    }
}

/// The inner loop of the status, as a float.
unsafe extern "C" fn status<F: Scalar<N, M>, const N: usize, const M: usize>(
    args: *mut *mut c_char,
    dimensions: *mut npy_intp,
    steps: *mut npy_intp,
    _: *mut c_void,
) {
    // SAFETY: NumPy passes N inputs and one output, whose step is the last.
    unsafe {
        let (out, step) = (*args.add(N), *steps.add(N));
        rows::<F, N, M>(args, dimensions, steps, |row, answer| {
            let status = answer.map_or_else(|error| error.kind().code(), |_| 0);
            write(
                out.wrapping_offset(row * step),
                f64::from(status),
                Type::Number,
            );
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
                write(place(N + index), value, F::TYPES[index]);
            }
            place(N + M).cast::<c_int>().write(status);
        });
    }
}

/// Writes one answer in its type.
///
/// # Safety
/// `out` is valid for that type: `f64`, `u32` or `u64`.
unsafe fn write(out: *mut c_char, value: f64, answer_type: Type) {
    // SAFETY: the types given to NumPy say what `out` points to.
    unsafe {
        match answer_type {
            Type::Number => out.cast::<f64>().write(value),
            // NaN becomes 0.
            Type::Count => out.cast::<u32>().write(value as u32),
            Type::Bits => out.cast::<u64>().write(value as u64),
        }
    }
}

type Loop = unsafe extern "C" fn(*mut *mut c_char, *mut npy_intp, *mut npy_intp, *mut c_void);

/// Adds the ufunc of one answer. A whole number has a second loop, which gives a float: polars has one
/// type for what goes into a ufunc and what comes out.
pub(crate) fn add_one<F: Scalar<N, M>, const N: usize, const M: usize, const FIELD: usize>(
    module: &Bound<'_, PyModule>,
    name: &'static CStr,
    doc: &'static CStr,
) -> PyResult<()> {
    let float: (Loop, _) = (one::<F, N, M, FIELD, true>, vec![NPY_TYPES::NPY_DOUBLE]);
    if F::TYPES[FIELD] == Type::Number {
        add(module, name, doc, N, [float])
    } else {
        let whole: (Loop, _) = (
            one::<F, N, M, FIELD, false>,
            vec![F::TYPES[FIELD].in_numpy()],
        );
        add(module, name, doc, N, [whole, float])
    }
}

/// Adds the ufunc of the status alone, for the package's own use on columns that take one output.
pub(crate) fn add_status<F: Scalar<N, M>, const N: usize, const M: usize>(
    module: &Bound<'_, PyModule>,
    name: &'static CStr,
) -> PyResult<()> {
    let float: (Loop, _) = (status::<F, N, M>, vec![NPY_TYPES::NPY_DOUBLE]);
    add(module, name, c"The status.", N, [float])
}

/// Adds the ufunc of every answer and the status, for the package's own use.
pub(crate) fn add_every<F: Scalar<N, M>, const N: usize, const M: usize>(
    module: &Bound<'_, PyModule>,
    name: &'static CStr,
) -> PyResult<()> {
    let mut outputs: Vec<_> = F::TYPES.iter().map(|answer| answer.in_numpy()).collect();
    outputs.push(NPY_TYPES::NPY_INT);
    let every: (Loop, _) = (every::<F, N, M>, outputs);
    add(module, name, c"Every answer and the status.", N, [every])
}

/// Adds a ufunc with these loops, each with the types of its outputs, of which all have as many; the inputs are floats.
fn add<const LOOPS: usize>(
    module: &Bound<'_, PyModule>,
    name: &'static CStr,
    doc: &'static CStr,
    inputs: usize,
    loops: [(Loop, Vec<NPY_TYPES>); LOOPS],
) -> PyResult<()> {
    let py = module.py();
    let outputs = loops.first().map_or(0, |(_, outputs)| outputs.len());
    let types: Vec<c_char> = loops
        .iter()
        .flat_map(|(_, outputs)| {
            let given = std::iter::repeat_n(NPY_TYPES::NPY_DOUBLE, inputs);
            given.chain(outputs.iter().copied())
        })
        .map(|kind| kind as c_char)
        .collect();
    // NumPy keeps these pointers for as long as the ufunc lives, which is for good.
    let types = types.leak();
    let loops = Box::leak(Box::new(loops.map(|(inner, _)| Some(inner))));
    let data = Box::leak(Box::new([ptr::null_mut::<c_void>(); LOOPS]));
    // SAFETY: each loop has a type for each operand; the tables live for good.
    let ufunc = unsafe {
        Bound::from_owned_ptr_or_err(
            py,
            PY_UFUNC_API
                .PyUFunc_FromFuncAndData(
                    py,
                    loops.as_mut_ptr().cast(),
                    data.as_mut_ptr(),
                    types.as_mut_ptr(),
                    LOOPS as c_int,
                    inputs as c_int,
                    outputs as c_int,
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
