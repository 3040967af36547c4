//! What every C function goes through: pointers checked, panics caught, errors handed out.

use core::{
    ffi::{CStr, c_char},
    fmt::Write,
    slice,
};

use recloth::{Error, ErrorKind};

use crate::generated::{ARGUMENTS, recloth_status};

/// One millimetre, the unit of every length.
pub const RECLOTH_MM: f64 = 1.0;
/// One centimetre in millimetres.
pub const RECLOTH_CM: f64 = 10.0;
/// One metre in millimetres.
pub const RECLOTH_M: f64 = 1000.0;
/// One inch in millimetres.
pub const RECLOTH_INCH: f64 = 25.4;
/// One foot in millimetres.
pub const RECLOTH_FOOT: f64 = 304.8;
/// One yard in millimetres.
pub const RECLOTH_YARD: f64 = 914.4;

/// Room for the name of an argument and its NUL.
const ARGUMENT: usize = 32;

/// What was wrong: which argument, what it was and what would do.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_error_t {
    /// The status, as it was returned.
    pub status: i32,
    /// The argument to change, closed by a NUL.
    pub argument: [c_char; 32],
    /// The value given (for a list too long or short, its number of items).
    pub value: f64,
    /// The least value that would do, NaN where there is none.
    pub min: f64,
    /// The largest value that would do, NaN where there is none.
    pub max: f64,
    /// The index in the list or the character in the text, from 0; -1 where there is none.
    pub at: i64,
}

/// Runs a function's body, turns its error into a status and fills `error` when there is one.
///
/// # Safety
/// `error` is NULL or valid for writing.
pub(crate) unsafe fn boundary(
    error: *mut recloth_error_t,
    body: impl FnOnce() -> Result<(), Error>,
) -> recloth_status {
    match caught(body) {
        Ok(()) => recloth_status::Ok,
        // SAFETY: the caller's promise above.
        Err(failure) => unsafe { fail(&failure, error) },
    }
}

/// The end of every call that fails. One for all, field by field and letter by letter: so a device's program holds it once,
/// and no general copy of memory for it.
///
/// # Safety
/// `error` is NULL or valid for writing.
#[cold]
#[inline(never)]
unsafe fn fail(failure: &Error, error: *mut recloth_error_t) -> recloth_status {
    if !error.is_null() {
        let name = failure.argument().as_bytes();
        // SAFETY: not NULL, and valid by the caller's promise.
        unsafe {
            (&raw mut (*error).status).write(failure.kind().code());
            let argument = (&raw mut (*error).argument).cast::<c_char>();
            for index in 0..ARGUMENT {
                let letter = name.get(index).map_or(0, |&byte| byte as c_char);
                argument.add(index).write(letter);
            }
            argument.add(ARGUMENT - 1).write(0);
            (&raw mut (*error).value).write(failure.value());
            (&raw mut (*error).min).write(failure.min());
            (&raw mut (*error).max).write(failure.max());
            (&raw mut (*error).at).write(failure.at().map_or(-1, i64::from));
        }
    }
    failure.kind().into()
}

/// An error as a record, where it is an answer.
#[cfg(feature = "std")]
pub(crate) fn record(failure: &Error) -> recloth_error_t {
    let mut record = recloth_error_t {
        status: 0,
        argument: [0; ARGUMENT],
        value: 0.0,
        min: 0.0,
        max: 0.0,
        at: 0,
    };
    // SAFETY: valid for writing.
    unsafe { fail(failure, &mut record) };
    record
}

#[cfg(feature = "std")]
fn caught(body: impl FnOnce() -> Result<(), Error>) -> Result<(), Error> {
    // Nothing is shared with the body but plain memory that it writes last.
    std::panic::catch_unwind(std::panic::AssertUnwindSafe(body)).unwrap_or(Err(Error::new(
        ErrorKind::Panic,
        "out",
        f64::NAN,
        f64::NAN,
        f64::NAN,
    )))
}

#[cfg(not(feature = "std"))]
fn caught(body: impl FnOnce() -> Result<(), Error>) -> Result<(), Error> {
    body()
}

fn null(argument: &'static str) -> Error {
    Error::new(ErrorKind::Null, argument, f64::NAN, f64::NAN, f64::NAN)
}

/// An error when the pointer is NULL.
pub(crate) fn not_null<T>(argument: &'static str, pointer: *const T) -> Result<(), Error> {
    if pointer.is_null() {
        Err(null(argument))
    } else {
        Ok(())
    }
}

/// The list at `pointer`; NULL is an empty list when the count is 0.
///
/// # Safety
/// `pointer` is NULL or valid for `count` items.
pub(crate) unsafe fn list<'a, T>(
    argument: &'static str,
    pointer: *const T,
    count: usize,
) -> Result<&'a [T], Error> {
    fits::<T>(argument, count)?;
    match (pointer.is_null(), count) {
        (_, 0) => Ok(&[]),
        (true, _) => Err(null(argument)),
        // SAFETY: not NULL, and valid by the caller's promise.
        (false, _) => Ok(unsafe { slice::from_raw_parts(pointer, count) }),
    }
}

/// The list to fill at `pointer`.
///
/// # Safety
/// `pointer` is NULL or valid for `count` items, which nothing else refers to.
pub(crate) unsafe fn list_to_fill<'a, T>(
    argument: &'static str,
    pointer: *mut T,
    count: usize,
) -> Result<&'a mut [T], Error> {
    fits::<T>(argument, count)?;
    match (pointer.is_null(), count) {
        (_, 0) => Ok(&mut []),
        (true, _) => Err(null(argument)),
        // SAFETY: not NULL, and valid by the caller's promise.
        (false, _) => Ok(unsafe { slice::from_raw_parts_mut(pointer, count) }),
    }
}

/// An error for a count no memory can hold, such as a negative number made unsigned.
fn fits<T>(argument: &'static str, count: usize) -> Result<(), Error> {
    Error::check_items(argument, count, 0, isize::MAX as usize / size_of::<T>())
}

/// The text at `pointer`.
///
/// # Safety
/// `pointer` is NULL or a string closed by a NUL.
pub(crate) unsafe fn text<'a>(
    argument: &'static str,
    pointer: *const c_char,
) -> Result<&'a str, Error> {
    not_null(argument, pointer)?;
    // SAFETY: not NULL, and closed by a NUL by the caller's promise.
    unsafe { CStr::from_ptr(pointer) }
        .to_str()
        .map_err(|_| Error::new(ErrorKind::NotUtf8, argument, f64::NAN, f64::NAN, f64::NAN))
}

/// Writes a text and its closing NUL; the room must hold both.
///
/// # Safety
/// `out` is valid for `room` bytes.
pub(crate) unsafe fn write_text(
    argument: &'static str,
    answer: &str,
    out: *mut c_char,
    room: usize,
) -> Result<(), Error> {
    Error::check_room(argument, room, answer.len() + 1)?;
    for (index, byte) in answer.bytes().chain([0]).enumerate() {
        // SAFETY: index is at most answer.len(), which is below room.
        unsafe { out.add(index).write(byte as c_char) };
    }
    Ok(())
}

/// The error for a choice that is not offered.
pub(crate) fn bad_choice(argument: &'static str, value: i32) -> Error {
    Error::new(
        ErrorKind::Choice,
        argument,
        f64::from(value),
        f64::NAN,
        f64::NAN,
    )
}

/// The answer, or the first error in the order of the arguments: `bad` holds choices that could not
/// be read, for which the core was called with a stand-in.
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

/// The version of the library, as `0.1.0`; a constant string.
#[unsafe(no_mangle)]
pub extern "C" fn recloth_version() -> *const c_char {
    concat!(env!("CARGO_PKG_VERSION"), "\0").as_ptr().cast()
}

/// Puts an error into words, as `waist = -1 is not between 1 and 100000`.
///
/// - `error`: as a function filled it.
/// - `out`: receives the sentence, cut short where the room ends, and a closing NUL.
/// - `out_count`: room in bytes; 160 hold every sentence.
///
/// # Safety
/// `error` is NULL or valid; `out` is NULL or valid for `out_count` bytes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_error_text(
    error: *const recloth_error_t,
    out: *mut c_char,
    out_count: usize,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(core::ptr::null_mut(), || {
            not_null("error", error)?;
            not_null("out", out)?;
            Error::check_room("out", out_count, 1)?;
            let error = &*error;
            let mut line = Line {
                out,
                room: out_count - 1,
                length: 0,
                skip: 0,
            };
            // The writer cannot fail: it cuts short.
            let _ = match (words(error), argument(error)) {
                (None, _) => write!(line, "no error"),
                (Some(words), name) if words.argument() == UNNAMED && !name.is_empty() => {
                    let _ = line.write_str(name);
                    // Every sentence begins with the argument.
                    line.skip = UNNAMED.len();
                    write!(line, "{words}")
                }
                (Some(words), _) => write!(line, "{words}"),
            };
            out.add(line.length).write(0);
            Ok(())
        })
    }
}

/// What an error is of that the core's functions of numbers do not know by name.
const UNNAMED: &str = "an argument";

/// The argument of an error, as far as it is text.
fn argument(error: &recloth_error_t) -> &str {
    // SAFETY: letters are bytes, of which there are as many.
    let name = unsafe { slice::from_raw_parts(error.argument.as_ptr().cast::<u8>(), ARGUMENT) };
    let length = name.iter().position(|&byte| byte == 0);
    let name = name.get(..length.unwrap_or(ARGUMENT)).unwrap_or_default();
    core::str::from_utf8(name).unwrap_or_default()
}

/// The error as the core knows it, if it is one. Of an argument of a shape its sentence begins with [`UNNAMED`].
fn words(error: &recloth_error_t) -> Option<Error> {
    let kind = ErrorKind::from_code(error.status)?;
    let name = argument(error);
    let argument = ARGUMENTS
        .iter()
        .chain(&["path"])
        .find(|known| **known == name)
        .copied()
        .unwrap_or(UNNAMED);
    let words = Error::new(kind, argument, error.value, error.min, error.max);
    Some(usize::try_from(error.at).map_or(words, |at| words.at_index(at)))
}

/// Writes into the caller's room and stops, at a whole character, where it ends.
struct Line {
    out: *mut c_char,
    room: usize,
    length: usize,
    /// Letters that are not written.
    skip: usize,
}

impl Write for Line {
    fn write_str(&mut self, text: &str) -> core::fmt::Result {
        for letter in text.chars() {
            if self.skip > 0 {
                self.skip -= 1;
                continue;
            }
            let mut bytes = [0; 4];
            let bytes = letter.encode_utf8(&mut bytes).as_bytes();
            if self.length + bytes.len() > self.room {
                self.room = self.length;
                break;
            }
            for &byte in bytes {
                // SAFETY: length is below the room the caller promised.
                unsafe { self.out.add(self.length).write(byte as c_char) };
                self.length += 1;
            }
        }
        Ok(())
    }
}
