//! Lays: parts and cloth in as JSON, where each piece lies out.

use core::{
    ffi::{c_char, c_int, c_void},
    ops::ControlFlow,
};

use recloth::{Error, ErrorKind};
use recloth_lay::{
    Fit, Lay, Options, Panel, Part, Progress, Strip, StripLay, StripOptions, check, fit_with,
    strip_with,
};
use serde::{Deserialize, Serialize};

use super::{
    handle::{borrow, read_json, say, write_json},
    piece::recloth_piece,
};
use crate::{
    boundary::{boundary, not_null, recloth_error_t},
    generated::recloth_status,
};

/// What a search calls while it works, many times a second, from the thread that called it: `done` is the share
/// of the budget or the time that is used up (0 to 1), `best` the best so far, NaN before there is one: of recloth_fit()
/// the share of the wanted area that is laid (0 to 1), of recloth_strip() the least length (mm); `user` is what was given
/// along. It returns 0 to go on; anything else stops the search.
pub type recloth_progress =
    Option<unsafe extern "C" fn(done: f64, best: f64, user: *mut c_void) -> c_int>;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct FitJob {
    parts: Vec<Part>,
    panels: Vec<Panel>,
    #[serde(default)]
    options: Options,
}

#[derive(Serialize)]
struct Fitted {
    parts: Vec<Part>,
    panels: Vec<Panel>,
    fit: Fit,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct StripJob {
    parts: Vec<Part>,
    strip: Strip,
    #[serde(default)]
    options: StripOptions,
}

#[derive(Serialize)]
struct Stripped {
    parts: Vec<Part>,
    strip: Strip,
    found: StripLay,
}

/// A lay as it was given out, or one of the caller's.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Laid {
    parts: Vec<Part>,
    panels: Option<Vec<Panel>>,
    strip: Option<Strip>,
    lay: Option<Lay>,
    fit: Option<Fit>,
    found: Option<StripLay>,
}

const NO_LAY: &str =
    "a lay is wanted: `parts`, `panels` and `lay`, or what recloth_fit() or recloth_strip() gave";

impl Laid {
    /// The parts, the panels and the lay on them.
    fn taken_apart(self) -> Option<(Vec<Part>, Vec<Panel>, Lay)> {
        let (panels, lay) = match (self.panels, self.lay, self.fit, self.strip, self.found) {
            (Some(panels), Some(lay), None, None, None) => (panels, lay),
            (Some(panels), None, Some(fit), None, None) => (panels, fit.lay),
            // No pieces take no cloth, and no panel has no length.
            (None, None, None, Some(strip), Some(found)) => {
                (strip.panel(found.length).into_iter().collect(), found.lay)
            }
            _ => return None,
        };
        Some((self.parts, panels, lay))
    }
}

/// The part that a piece is laid as, as JSON for recloth_fit() and recloth_strip(): its cut line, its grain and
/// how many of each hand; of a piece on a fold the whole. It may not be tilted, its right side shows.
///
/// - `tolerance`: how near curves are followed (mm, 0.001 to 10).
/// - `out`: receives the part; free it with recloth_text_free().
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_part(
    piece: *const recloth_piece,
    tolerance: f64,
    out: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let piece = borrow("piece", piece)?;
            not_null("out", out)?;
            write_json(&Part::of(&piece.piece, tolerance)?, out)
        })
    }
}

/// Which pieces fit on which panels, where all of them go together, or what proves that they cannot.
///
/// - `json`: parts, panels and options, the fields of `Part`, `Panel` and `Options` in Rust; what may be left out
///   has its default: `{"parts": [{"name": "pocket", "outline": [{"x": 0, "y": 0}, ...], "as_drawn": 2}],
///   "panels": [{"name": "back", "outline": [...]}], "options": {"spacing": 2, "seed": 1, "budget": 200000000,
///   "seconds": null, "threads": 0}}`.
/// - `progress`: called while it works; when it stops the search, `out` receives what there is so far. NULL
///   where nobody is to be told.
/// - `user`: given to `progress`, not looked at.
/// - `out`: receives `parts`, `panels` and `fit` as JSON: for each piece on each panel whether it fits alone,
///   whether all fit together, and the best lay; free it with recloth_text_free().
/// - `message`: as of recloth_piece_from_json(); names the part, the panel or the option too.
///
/// The same input gives the same answer on every machine, for any number of threads, unless `seconds` or `progress`
/// ends the search. Every place was proved as recloth_check_lay() does.
///
/// # Safety
/// `json` is NULL or closed by a NUL; `progress` is NULL or a function that returns; `out`, `message` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_fit(
    json: *const c_char,
    progress: recloth_progress,
    user: *mut c_void,
    out: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let FitJob {
                parts,
                panels,
                options,
            } = read_json(json, message)?;
            not_null("out", out)?;
            let fit = fit_with(&parts, &panels, &options, told_of(progress, user))
                .map_err(|error| told(&error, message))?;
            write_json(&Fitted { parts, panels, fit }, out)
        })
    }
}

/// All pieces on cloth by the length, as short as was found.
///
/// - `json`: parts, the cloth and options, the fields of `Part`, `Strip` and `StripOptions` in Rust; what may be left
///   out has its default: `{"parts": [...], "strip": {"width": 1400, "faces": "one", "nap": false},
///   "options": {"spacing": 0, "seed": 1, "budget": 50000000, "seconds": null, "threads": 0}}`.
/// - `progress`: called while it works; when it stops the search, `out` receives the best lay so far. NULL
///   where nobody is to be told.
/// - `user`: given to `progress`, not looked at.
/// - `out`: receives `parts`, `strip` and `found` as JSON: the length, the share covered and the lay; free it
///   with recloth_text_free().
/// - `message`: as of recloth_fit().
///
/// The same input gives the same lay on every machine, for any number of threads, unless `seconds` or `progress`
/// ends the search.
///
/// # Safety
/// `json` is NULL or closed by a NUL; `progress` is NULL or a function that returns; `out`, `message` and
/// `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_strip(
    json: *const c_char,
    progress: recloth_progress,
    user: *mut c_void,
    out: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let StripJob {
                parts,
                strip,
                options,
            } = read_json(json, message)?;
            not_null("out", out)?;
            let found = strip_with(&parts, &strip, &options, told_of(progress, user))
                .map_err(|error| told(&error, message))?;
            write_json(
                &Stripped {
                    parts,
                    strip,
                    found,
                },
                out,
            )
        })
    }
}

/// What is wrong with a lay: nothing, when it can be cut.
///
/// Proves that every piece is inside its panel, clear of holes, flaws and other pieces, on grain within its
/// tolerance, the right way up, of the right hand, and none too many or too few.
///
/// - `json`: what recloth_fit() or recloth_strip() gave, or `parts`, `panels` and `lay`, the fields of `Lay` in Rust:
///   `{"placements": [{"part": 0, "hand": "as_drawn", "panel": 0, "mirrored": false, "turn_deg": 0,
///   "shift": {"x": 20, "y": 30}}], "unplaced": [], "spacing": 0}`.
/// - `count`: receives how many things are wrong.
/// - `out`: receives a list of sentences as JSON, one for each; free it with recloth_text_free(). NULL
///   when they are not wanted.
/// - `message`: as of recloth_fit().
///
/// # Safety
/// `json` is NULL or closed by a NUL; `count`, `out`, `message` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_check_lay(
    json: *const c_char,
    count: *mut usize,
    out: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let laid: Laid = read_json(json, message)?;
            not_null("count", count)?;
            let Some((parts, panels, lay)) = laid.taken_apart() else {
                say(NO_LAY, message);
                return Err(Error::new(
                    ErrorKind::Invalid,
                    "json",
                    f64::NAN,
                    f64::NAN,
                    f64::NAN,
                ));
            };
            let wrong = check(&parts, &panels, &lay).err().unwrap_or_default();
            for complaint in &wrong {
                if let recloth_lay::Complaint::Input(error) = complaint {
                    return Err(told(error, message));
                }
            }
            let sentences: Vec<String> = wrong.iter().map(ToString::to_string).collect();
            write_json(&sentences, out)?;
            count.write(sentences.len());
            Ok(())
        })
    }
}

/// What tells the caller's function of a search.
///
/// # Safety
/// `progress` is NULL or a function that takes these.
unsafe fn told_of(
    progress: recloth_progress,
    user: *mut c_void,
) -> impl FnMut(Progress) -> ControlFlow<()> {
    move |so_far| {
        let Some(progress) = progress else {
            return ControlFlow::Continue(());
        };
        // SAFETY: the caller's promise.
        let stop = unsafe { progress(so_far.done, so_far.best.unwrap_or(f64::NAN), user) };
        match stop {
            0 => ControlFlow::Continue(()),
            _ => ControlFlow::Break(()),
        }
    }
}

/// What is wrong with a part, a panel or an option; the sentence goes into `message`.
///
/// # Safety
/// `message` is NULL or valid for writing.
unsafe fn told(error: &recloth_lay::Error, message: *mut *mut c_char) -> Error {
    // SAFETY: the caller's promise.
    unsafe { say(&error.to_string(), message) };
    error.error()
}
