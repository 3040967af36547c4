//! What must give, how large a measure may be, and what a lay leaves: JSON in and out, as of lays.

use core::{
    ffi::{c_char, c_int, c_void},
    ptr,
};

use recloth::{Error, ErrorKind};
use recloth_lay::{
    Change, Fit, Largest, LeastChange, LeftoverOptions, Made, Needed, Options, Outward, Panel,
    Part, Shortage, Values, fullest_with, largest_with, least_change_with, leftovers, longest_with,
};
use serde::{Deserialize, Serialize};

use super::{
    handle::{read_json, write_json},
    lay::Laid,
    search::{Call, Stopped, recloth_progress, told},
};
use crate::{
    boundary::{boundary, not_null, recloth_error_t, text},
    generated::recloth_status,
};

/// What makes the parts of a value for recloth_largest(), from the thread that called it: `parts` receives a list of
/// parts as JSON, as of recloth_fit(), closed by a NUL; it is read before the next call and stays the caller's, who may
/// keep it in `user`. It returns 0; anything else ends the search, which then fails with RECLOTH_STATUS_INVALID of
/// `parts_at` and that number in the error's value.
pub type recloth_parts_at =
    Option<unsafe extern "C" fn(value: f64, parts: *mut *const c_char, user: *mut c_void) -> c_int>;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ChangeJob {
    parts: Vec<Part>,
    panels: Vec<Panel>,
    changes: Vec<Change>,
    #[serde(default)]
    options: Options,
}

/// What must give, told as a lay that recloth_check_lay() takes.
#[derive(Serialize)]
struct Needs {
    answer: &'static str,
    made: Vec<InWords>,
    parts: Vec<Part>,
    panels: Vec<Panel>,
    fit: Option<Box<Fit>>,
    shortage: Option<Shortage>,
    evaluations: u64,
    out_of_time: bool,
}

#[derive(Serialize)]
struct InWords {
    #[serde(flatten)]
    made: Made,
    words: String,
}

impl Needs {
    fn new(parts: Vec<Part>, panels: Vec<Panel>, found: LeastChange) -> Needs {
        let (answer, made, parts, fit, shortage) = match found.answer {
            Needed::Nothing(fit) => ("nothing", Vec::new(), parts, Some(fit), None),
            Needed::Changed { made, parts, fit } => ("changed", made, parts, Some(fit), None),
            Needed::Never { parts, shortage } => ("never", Vec::new(), parts, None, Some(shortage)),
            Needed::Undecided => ("undecided", Vec::new(), parts, None, None),
        };
        let in_words = |made: Made| InWords {
            words: made.to_string(),
            made,
        };
        Needs {
            answer,
            made: made.into_iter().map(in_words).collect(),
            parts,
            panels,
            fit,
            shortage,
            evaluations: found.evaluations,
            out_of_time: found.out_of_time,
        }
    }
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct OutwardJob {
    parts: Vec<Part>,
    panels: Vec<Panel>,
    outward: Outward,
    #[serde(default)]
    options: Options,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct LargestJob {
    values: Values,
    panels: Vec<Panel>,
    #[serde(default)]
    options: Options,
}

/// How large a measure may be, told as a lay that recloth_check_lay() takes.
#[derive(Serialize)]
struct Reached {
    panels: Vec<Panel>,
    #[serde(flatten)]
    found: Largest,
}

/// The least change that makes all pieces fit, as far as is found.
///
/// - `json`: parts, panels, what the maker would allow (what she minds least first) and options, the fields of `Part`,
///   `Panel`, `Change` and `Options` in Rust: `{"parts": [...], "panels": [...], "changes": [
///   {"part": 0, "kind": {"tilt": {"to_deg": 5}}},
///   {"part": 0, "kind": {"join": {"across_deg": 90, "from": 100, "to": 540, "allowance": 10}}},
///   {"part": 0, "kind": {"shorter": {"toward_deg": 90, "beyond": 500, "most": 40}}},
///   {"part": 0, "kind": {"smaller": {"name": "narrower allowance", "steps": [{"amount": 5, "outline": [...]}]}}},
///   {"part": 0, "kind": {"instead": {"name": "in two", "parts": [...]}}},
///   {"part": 0, "kind": {"fewer": {"by": 1}}}], "options": {...}}`.
/// - `progress`: as of recloth_fit(), `best` is always NaN; when it stops the search, `out` receives what there is so far.
/// - `user`: given to `progress`, not looked at.
/// - `out`: receives JSON: `answer` ("nothing" gives, "changed", "never": proved by `shortage`, or "undecided"), `made` (each
///   change made, its amount, and in `words`), `parts` and `panels` then and `fit`, how they lie, with `evaluations` and
///   `out_of_time`; recloth_check_lay() takes it where there is a fit. Free it with recloth_text_free().
/// - `message`: as of recloth_fit(); names the change too.
///
/// # Safety
/// `json` is NULL or closed by a NUL; `progress` is NULL or a function that returns; `out`, `message` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_least_change(
    json: *const c_char,
    progress: recloth_progress,
    user: *mut c_void,
    out: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    let call = Call {
        json,
        progress,
        user,
        out,
        message,
        error,
    };
    // SAFETY: the caller's promise above.
    unsafe {
        call.answer(|job: ChangeJob, listener| {
            let ChangeJob {
                parts,
                panels,
                changes,
                options,
            } = job;
            let found = least_change_with(&parts, &panels, &changes, &options, listener)?;
            Ok(Needs::new(parts, panels, found))
        })
    }
}

/// How much longer a part can be, all pieces fitting: corners beyond a line move out along its grain, to 0.1 mm.
///
/// - `json`: parts, panels, which end moves and options, the fields of `Part`, `Panel`, `Outward` and `Options` in Rust:
///   `{"parts": [...], "panels": [...], "outward": {"part": 0, "beyond": 500, "most": 100, "opposite": false},
///   "options": {...}}`. Corners further than `beyond` from the origin (mm, in the direction they move in) move by `most` at
///   most; `opposite` is the end that the grain points away from.
/// - `progress`: as of recloth_fit(), `best` is always NaN; when it stops the search, `out` receives what there is so far.
/// - `user`: given to `progress`, not looked at.
/// - `out`: receives JSON: `value`, the length gained (mm; null where nothing was found to fit), `refused`, the least tried
///   that is proved not to fit, and by `shortage`, with `parts`, `panels` and `fit` at that value, `evaluations` and
///   `out_of_time`; recloth_check_lay() takes it where there is a fit. Free it with recloth_text_free().
/// - `message`: as of recloth_fit().
///
/// # Safety
/// `json` is NULL or closed by a NUL; `progress` is NULL or a function that returns; `out`, `message` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_longest(
    json: *const c_char,
    progress: recloth_progress,
    user: *mut c_void,
    out: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    let call = Call {
        json,
        progress,
        user,
        out,
        message,
        error,
    };
    // SAFETY: the caller's promise above.
    unsafe {
        call.answer(|job: OutwardJob, listener| {
            let found = longest_with(&job.parts, job.outward, &job.panels, &job.options, listener)?;
            Ok(Reached {
                panels: job.panels,
                found,
            })
        })
    }
}

/// How much wider a part can be, all pieces fitting: corners beyond a line move out across its grain, to the right of it,
/// or to its left where `opposite`. Otherwise as recloth_longest().
///
/// - `json`: as of recloth_longest().
/// - `progress`: as of recloth_longest().
/// - `user`: given to `progress`, not looked at.
/// - `out`: as of recloth_longest(); `value` is the width gained (mm).
/// - `message`: as of recloth_fit().
///
/// # Safety
/// `json` is NULL or closed by a NUL; `progress` is NULL or a function that returns; `out`, `message` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_fullest(
    json: *const c_char,
    progress: recloth_progress,
    user: *mut c_void,
    out: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    let call = Call {
        json,
        progress,
        user,
        out,
        message,
        error,
    };
    // SAFETY: the caller's promise above.
    unsafe {
        call.answer(|job: OutwardJob, listener| {
            let found = fullest_with(&job.parts, job.outward, &job.panels, &job.options, listener)?;
            Ok(Reached {
                panels: job.panels,
                found,
            })
        })
    }
}

/// The largest value of a measure at which all pieces fit, as far as is found.
///
/// The largest value is tried, then the least, then those between by halves, then again by halves for the least that is
/// proved impossible. It is taken for granted that what fits at a value fits at every smaller one.
///
/// - `json`: the values, the panels and options, the fields of `Values`, `Panel` and `Options` in Rust:
///   `{"values": {"low": 100, "high": 400, "step": 5}, "panels": [...], "options": {...}}`.
/// - `parts_at`: makes the parts of a value.
/// - `progress`: as of recloth_longest().
/// - `user`: given to both, not looked at.
/// - `out`: as of recloth_longest(); `value` is the largest value found to fit.
/// - `message`: as of recloth_fit(); where the parts of a value cannot be read, it says of which.
///
/// # Safety
/// `json` is NULL or closed by a NUL; `parts_at` is NULL or a function that returns and gives NULL or a text closed by a NUL;
/// `progress` is NULL or a function that returns; `out`, `message` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_largest(
    json: *const c_char,
    parts_at: recloth_parts_at,
    progress: recloth_progress,
    user: *mut c_void,
    out: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    let call = Call {
        json,
        progress,
        user,
        out,
        message,
        error,
    };
    // SAFETY: the caller's promise above.
    unsafe {
        call.answer(|job: LargestJob, listener| {
            let Some(parts_at) = parts_at else {
                return Err(Stopped::own(ErrorKind::Null, "parts_at", f64::NAN));
            };
            let made = |value: f64| {
                let mut parts = ptr::null();
                match parts_at(value, &raw mut parts, user) {
                    0 => read_parts(value, parts),
                    stop => Err(Stopped::own(
                        ErrorKind::Invalid,
                        "parts_at",
                        f64::from(stop),
                    )),
                }
            };
            let found = largest_with(job.values, made, &job.panels, &job.options, listener)?;
            Ok(Reached {
                panels: job.panels,
                found,
            })
        })
    }
}

/// The parts of a value, as the caller's function gave them.
///
/// # Safety
/// `parts` is NULL or closed by a NUL.
unsafe fn read_parts(value: f64, parts: *const c_char) -> Result<Vec<Part>, Stopped> {
    // SAFETY: the caller's promise.
    let parts =
        unsafe { text("parts", parts) }.map_err(|error| Stopped::Own(error, String::new()))?;
    serde_json::from_str(parts).map_err(|error| {
        let line = error.line() as f64;
        Stopped::Own(
            Error::new(ErrorKind::Invalid, "parts", line, f64::NAN, f64::NAN),
            format!("parts of {value}: {error}"),
        )
    })
}

/// What a lay leaves of each panel: panel by panel, the largest shape first.
///
/// The outline less holes, flaws with their margins, and the pieces as they lie; the spacing between pieces is not taken
/// off. A spot or a slit counts as at least 0.1 mm wide on every side.
///
/// - `json`: a lay, as of recloth_check_lay().
/// - `rectangles`: how many rectangles on grain at most in each shape (0 to 100).
/// - `least`: not those with a side shorter than this (mm, 0 to 1e5).
/// - `out`: receives a list as JSON, of each shape the index of its `panel`, `outline`, `holes`, `area_mm2` and `rectangles`
///   (`corner`, `width` and `height` in mm, `grain_deg`, `area_mm2`); free it with recloth_text_free().
/// - `message`: as of recloth_fit().
///
/// # Safety
/// `json` is NULL or closed by a NUL; `out`, `message` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_leftovers(
    json: *const c_char,
    rectangles: u32,
    least: f64,
    out: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let laid: Laid = read_json(json, message)?;
            not_null("out", out)?;
            let (parts, panels, lay) = laid.taken_apart(message)?;
            let options = LeftoverOptions { rectangles, least };
            let left = leftovers(&parts, &panels, &lay, &options)
                .map_err(|error| told(&error, message))?;
            write_json(&left, out)
        })
    }
}
