//! Plans by strings.

use std::{
    ffi::{CString, c_char},
    path::Path,
    ptr,
};

use recloth::{Error, ErrorKind};

use crate::{
    boundary::{boundary, recloth_error_t, text},
    generated::recloth_status,
};

/// Works out a plan from the text of a brief: pieces, lays, sheets and the order of work.
///
/// - `brief`: the text of a brief (TOML), UTF-8.
/// - `name`: the brief's name in messages, as `house-coat.toml`.
/// - `folder`: where to write the worksheet, the sheets and drawings, and `plan.json`: made where it is
///   not there; a plan written there before is replaced, other files stay; all or nothing. NULL writes
///   no file.
/// - `out`: receives the plan as JSON (the text of `plan.json`), closed by a NUL; free it with
///   recloth_text_free(). NULL when it is not wanted.
/// - `message`: on failure receives what is wrong and what would be right, as
///   `house-coat.toml:12: ...`; free it with recloth_text_free(). NULL when it is not wanted. Left
///   alone on success.
/// - `error`: a bad brief is RECLOTH_STATUS_INVALID with argument `brief` and its line, from 1, in
///   `value` (NaN where there is none); a folder that cannot be written is RECLOTH_STATUS_INVALID with
///   argument `folder`.
///
/// A piece that fits nowhere is no error: `answer`, `lays` and `doubts` of the plan tell.
///
/// # Safety
/// `brief`, `name` and `folder` are NULL or strings closed by a NUL; `out`, `message` and `error` are
/// NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_plan(
    brief: *const c_char,
    name: *const c_char,
    folder: *const c_char,
    out: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    let mut words = None;
    // SAFETY: the caller's promise above.
    let status = unsafe {
        boundary(error, || {
            let json = planned(brief, name, folder, !out.is_null(), &mut words);
            if let Err(error) = &json {
                words.get_or_insert_with(|| error.to_string());
            }
            if let (Some(json), false) = (json?, out.is_null()) {
                out.write(owned("out", json)?);
            }
            Ok(())
        })
    };
    if status != recloth_status::Ok && !message.is_null() {
        let words = words.unwrap_or_else(|| ErrorKind::Panic.text().to_owned());
        let words = owned("message", words.replace('\0', "\u{fffd}")).unwrap_or(ptr::null_mut());
        // SAFETY: not NULL, and valid by the caller's promise.
        unsafe { message.write(words) };
    }
    status
}

/// The plan as JSON, if wanted, after its files are written, if there is a folder; what is wrong goes
/// into `words`.
///
/// # Safety
/// As of `recloth_plan`.
unsafe fn planned(
    brief: *const c_char,
    name: *const c_char,
    folder: *const c_char,
    wanted: bool,
    words: &mut Option<String>,
) -> Result<Option<String>, Error> {
    // SAFETY: the caller's promise.
    let (brief, name) = unsafe { (text("brief", brief)?, text("name", name)?) };
    let folder = if folder.is_null() {
        None
    } else {
        // SAFETY: not NULL, and closed by a NUL by the caller's promise.
        Some(Path::new(unsafe { text("folder", folder)? }))
    };
    let plan = recloth_plan::plan(brief, name).map_err(|error| {
        *words = Some(error.to_string());
        let line = error.line().map_or(f64::NAN, |line| line as f64);
        Error::new(ErrorKind::Invalid, "brief", line, f64::NAN, f64::NAN)
    })?;
    if let Some(folder) = folder {
        recloth_plan::write(&plan, folder).map_err(|error| {
            *words = Some(error.to_string());
            Error::new(ErrorKind::Invalid, "folder", f64::NAN, f64::NAN, f64::NAN)
        })?;
    }
    if !wanted {
        return Ok(None);
    }
    let files = plan.files()?;
    let json = files.into_iter().find(|(name, _)| name == "plan.json");
    let json = json.map_or_else(Vec::new, |(_, bytes)| bytes);
    String::from_utf8(json)
        .map(Some)
        .map_err(|_| Error::new(ErrorKind::NotUtf8, "out", f64::NAN, f64::NAN, f64::NAN))
}

/// A text that the caller frees.
fn owned(argument: &'static str, text: String) -> Result<*mut c_char, Error> {
    CString::new(text)
        .map(CString::into_raw)
        .map_err(|_| Error::new(ErrorKind::Invalid, argument, f64::NAN, f64::NAN, f64::NAN))
}

/// Frees a text that a function of this library handed out; NULL is left alone.
///
/// # Safety
/// `text` is NULL, or was handed out by this library as one to free and is not freed yet.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_text_free(text: *mut c_char) {
    if !text.is_null() {
        // SAFETY: it came from `CString::into_raw`, by the caller's promise.
        drop(unsafe { CString::from_raw(text) });
    }
}
