//! What handles, lists and texts go through on their way out and in.

use std::ffi::{CString, c_char};

use recloth::{Error, ErrorKind};
use serde::{Serialize, de::DeserializeOwned};

use crate::{
    boundary::{boundary, list_to_fill, not_null, recloth_error_t, text, write_text},
    generated::recloth_status,
};

/// What a handle holds.
///
/// # Safety
/// `handle` is NULL or one that this library handed out and that is not freed.
pub(super) unsafe fn borrow<'a, T>(
    argument: &'static str,
    handle: *const T,
) -> Result<&'a T, Error> {
    not_null(argument, handle)?;
    // SAFETY: not NULL, and live by the caller's promise.
    Ok(unsafe { &*handle })
}

/// What is asked of a shape, written to `out`.
///
/// # Safety
/// `handle` is NULL or live; `out` and `error` are NULL or valid for writing.
pub(super) unsafe fn answer<T, A>(
    argument: &'static str,
    handle: *const T,
    out: *mut A,
    error: *mut recloth_error_t,
    ask: impl FnOnce(&T) -> Result<A, Error>,
) -> recloth_status {
    // SAFETY: the caller's promise.
    unsafe {
        boundary(error, || {
            let shape = borrow(argument, handle)?;
            not_null("out", out)?;
            out.write(ask(shape)?);
            Ok(())
        })
    }
}

/// A shape made of what is not one, handed out.
///
/// # Safety
/// `out` and `error` are NULL or valid for writing.
pub(super) unsafe fn made<T>(
    out: *mut *mut T,
    error: *mut recloth_error_t,
    make: impl FnOnce() -> Result<T, Error>,
) -> recloth_status {
    // SAFETY: the caller's promise.
    unsafe {
        boundary(error, || {
            not_null("out", out)?;
            hand_out(out, make()?);
            Ok(())
        })
    }
}

/// A shape as JSON.
///
/// # Safety
/// `handle` is NULL or live; `out` and `error` are NULL or valid for writing.
pub(super) unsafe fn json_of<T, J: Serialize>(
    argument: &'static str,
    handle: *const T,
    out: *mut *mut c_char,
    error: *mut recloth_error_t,
    told: impl FnOnce(&T) -> &J,
) -> recloth_status {
    // SAFETY: the caller's promise.
    unsafe {
        boundary(error, || {
            let shape = borrow(argument, handle)?;
            not_null("out", out)?;
            write_json(told(shape), out)
        })
    }
}

/// A shape made of another, handed out.
///
/// # Safety
/// As of `answer`.
pub(super) unsafe fn changed<T>(
    argument: &'static str,
    handle: *const T,
    out: *mut *mut T,
    error: *mut recloth_error_t,
    change: impl FnOnce(&T) -> Result<T, Error>,
) -> recloth_status {
    // SAFETY: the caller's promise.
    unsafe {
        answer(argument, handle, out, error, |shape| {
            Ok(Box::into_raw(Box::new(change(shape)?)))
        })
    }
}

/// A text of a shape, closed by a NUL.
///
/// # Safety
/// `handle` is NULL or live; `out` NULL or valid for `room` bytes; `error` NULL or valid for writing.
pub(super) unsafe fn text_of<T>(
    argument: &'static str,
    handle: *const T,
    (out, room): (*mut c_char, usize),
    error: *mut recloth_error_t,
    ask: impl FnOnce(&T) -> Result<&str, Error>,
) -> recloth_status {
    // SAFETY: the caller's promise.
    unsafe {
        boundary(error, || {
            let text = ask(borrow(argument, handle)?)?;
            not_null("out", out)?;
            write_text("out", text, out, room)
        })
    }
}

/// Points of a shape, written as x and y in turn.
///
/// # Safety
/// `handle` is NULL or live; `out` NULL or valid for twice `room` numbers; `count` and `error` NULL or valid for writing.
pub(super) unsafe fn points_of<'a, T: 'a, P: Into<std::borrow::Cow<'a, [kurbo::Point]>>>(
    argument: &'static str,
    handle: *const T,
    (out, room, count): (*mut f64, usize, *mut usize),
    error: *mut recloth_error_t,
    ask: impl FnOnce(&'a T) -> Result<P, Error>,
) -> recloth_status {
    // SAFETY: the caller's promise.
    unsafe {
        boundary(error, || {
            let points = ask(borrow(argument, handle)?)?.into();
            write_points(&points, out, room, count)
        })
    }
}

/// Hands a shape out, to be freed by its owner; `out` is not NULL.
///
/// # Safety
/// `out` is valid for writing.
pub(super) unsafe fn hand_out<T>(out: *mut *mut T, shape: T) {
    // SAFETY: the caller's promise.
    unsafe { out.write(Box::into_raw(Box::new(shape))) }
}

/// Frees what a handle holds; NULL is left alone.
///
/// # Safety
/// `handle` is NULL, or was handed out by this library and is not freed yet.
pub(super) unsafe fn free<T>(handle: *mut T) {
    if !handle.is_null() {
        // SAFETY: it came from `hand_out`, by the caller's promise.
        drop(unsafe { Box::from_raw(handle) });
    }
}

/// An error unless a list of this length has room, and there is a place for the length.
pub(super) fn check_list_out(room: usize, needed: usize, count: *mut usize) -> Result<(), Error> {
    Error::check_room("out", room, needed)?;
    not_null("out_count", count)
}

/// Hands several shapes out; nothing where there is no room for all.
///
/// # Safety
/// `out` is NULL or valid for `room` handles, `count` NULL or valid for writing.
pub(super) unsafe fn hand_out_all<T>(
    shapes: Vec<T>,
    out: *mut *mut T,
    room: usize,
    count: *mut usize,
) -> Result<(), Error> {
    check_list_out(room, shapes.len(), count)?;
    // SAFETY: the caller's promise.
    unsafe {
        let places = list_to_fill("out", out, shapes.len())?;
        count.write(shapes.len());
        for (place, shape) in places.iter_mut().zip(shapes) {
            hand_out(place, shape);
        }
    }
    Ok(())
}

/// Writes a list.
///
/// # Safety
/// `out` is NULL or valid for `room` items, `count` NULL or valid for writing.
pub(super) unsafe fn write_all<T: Copy>(
    items: &[T],
    out: *mut T,
    room: usize,
    count: *mut usize,
) -> Result<(), Error> {
    check_list_out(room, items.len(), count)?;
    // SAFETY: the caller's promise.
    unsafe {
        let places = list_to_fill("out", out, items.len())?;
        places.copy_from_slice(items);
        count.write(items.len());
    }
    Ok(())
}

/// Writes points as x and y in turn; `room` and `count` are in points.
///
/// # Safety
/// `out` is NULL or valid for twice `room` numbers, `count` NULL or valid for writing.
pub(super) unsafe fn write_points(
    points: &[kurbo::Point],
    out: *mut f64,
    room: usize,
    count: *mut usize,
) -> Result<(), Error> {
    check_list_out(room, points.len(), count)?;
    // SAFETY: the caller's promise; the room holds twice as many numbers as points.
    unsafe {
        let places = list_to_fill("out", out, 2 * points.len())?;
        for (place, point) in places.chunks_exact_mut(2).zip(points) {
            place.copy_from_slice(&[point.x, point.y]);
        }
        count.write(points.len());
    }
    Ok(())
}

/// Points given as x and y in turn.
///
/// # Safety
/// `points` is NULL or valid for twice `count` numbers.
pub(super) unsafe fn points(
    argument: &'static str,
    points: *const f64,
    count: usize,
) -> Result<Vec<kurbo::Point>, Error> {
    // Checked before it is doubled to a number of numbers.
    Error::check_items(argument, count, 0, isize::MAX as usize / 16)?;
    // SAFETY: the caller's promise.
    let numbers = unsafe { crate::boundary::list(argument, points, 2 * count)? };
    Ok(numbers
        .chunks_exact(2)
        .map(|pair| (pair[0], pair[1]).into())
        .collect())
}

/// A text that its owner frees by recloth_text_free().
fn owned(words: String) -> *mut c_char {
    let words = words.replace('\0', "\u{fffd}");
    // No NUL is left in it.
    CString::new(words).map_or(std::ptr::null_mut(), CString::into_raw)
}

/// Hands a value out as JSON, unless `out` is NULL.
///
/// # Safety
/// `out` is NULL or valid for writing.
pub(super) unsafe fn write_json(
    value: &impl Serialize,
    out: *mut *mut c_char,
) -> Result<(), Error> {
    if out.is_null() {
        return Ok(());
    }
    let invalid = |_| Error::new(ErrorKind::Invalid, "json", f64::NAN, f64::NAN, f64::NAN);
    let json = serde_json::to_string(value).map_err(invalid)?;
    // SAFETY: not NULL, and valid by the caller's promise.
    unsafe { out.write(owned(json)) };
    Ok(())
}

/// Hands a sentence out in `message`, unless that is NULL.
///
/// # Safety
/// `message` is NULL or valid for writing.
pub(super) unsafe fn say(what: &str, message: *mut *mut c_char) {
    if !message.is_null() {
        // SAFETY: not NULL, and valid by the caller's promise.
        unsafe { message.write(owned(what.to_owned())) };
    }
}

/// A value from JSON. What is wrong goes into `message`, unless that is NULL; the error has the line, from 1, in its value.
///
/// # Safety
/// `json` is NULL or a string closed by a NUL, `message` NULL or valid for writing.
pub(super) unsafe fn read_json<T: DeserializeOwned>(
    json: *const c_char,
    message: *mut *mut c_char,
) -> Result<T, Error> {
    // SAFETY: the caller's promise.
    unsafe { read_json_of("json", json, message) }
}

/// The same of an argument of another name.
///
/// # Safety
/// As of `read_json`.
pub(super) unsafe fn read_json_of<T: DeserializeOwned>(
    argument: &'static str,
    json: *const c_char,
    message: *mut *mut c_char,
) -> Result<T, Error> {
    // SAFETY: the caller's promise.
    let json = unsafe { text(argument, json)? };
    serde_json::from_str(json).map_err(|error| {
        // SAFETY: the caller's promise.
        unsafe { say(&error.to_string(), message) };
        let line = error.line() as f64;
        Error::new(ErrorKind::Invalid, argument, line, f64::NAN, f64::NAN)
    })
}
