//! Lays: parts and cloth in as JSON, where each piece lies out.

use core::ffi::{c_char, c_void};

use recloth::{Error, ErrorKind};
use recloth_lay::{
    Fit, Lay, Options, Panel, Part, Strip, StripLay, StripOptions, check, fit_with, strip_with,
};
use serde::{Deserialize, Serialize, de::IgnoredAny};

use super::{
    handle::{borrow, read_json, say, write_json},
    piece::recloth_piece,
    search::{Call, recloth_progress, told},
};
use crate::{
    boundary::{boundary, not_null, recloth_error_t},
    generated::recloth_status,
};

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
pub(super) struct Laid {
    parts: Vec<Part>,
    panels: Option<Vec<Panel>>,
    strip: Option<Strip>,
    lay: Option<Lay>,
    fit: Option<Fit>,
    found: Option<StripLay>,
    /// What else is told with a lay.
    #[serde(rename = "answer")]
    _answer: Option<IgnoredAny>,
    #[serde(rename = "made")]
    _made: Option<IgnoredAny>,
    #[serde(rename = "value")]
    _value: Option<IgnoredAny>,
    #[serde(rename = "refused")]
    _refused: Option<IgnoredAny>,
    #[serde(rename = "shortage")]
    _shortage: Option<IgnoredAny>,
    #[serde(rename = "evaluations")]
    _evaluations: Option<IgnoredAny>,
    #[serde(rename = "out_of_time")]
    _out_of_time: Option<IgnoredAny>,
}

const NO_LAY: &str =
    "a lay is wanted: `parts`, `panels` and `lay`, or what recloth_fit() or recloth_strip() gave";

impl Laid {
    /// The parts, the panels and the lay on them; where there is none, `message` says what is wanted.
    ///
    /// # Safety
    /// `message` is NULL or valid for writing.
    pub(super) unsafe fn taken_apart(
        self,
        message: *mut *mut c_char,
    ) -> Result<(Vec<Part>, Vec<Panel>, Lay), Error> {
        let (panels, lay) = match (self.panels, self.lay, self.fit, self.strip, self.found) {
            (Some(panels), Some(lay), None, None, None) => (panels, lay),
            (Some(panels), None, Some(fit), None, None) => (panels, fit.lay),
            // No pieces take no cloth, and no panel has no length.
            (None, None, None, Some(strip), Some(found)) => {
                (strip.panel(found.length).into_iter().collect(), found.lay)
            }
            _ => {
                // SAFETY: the caller's promise.
                unsafe { say(NO_LAY, message) };
                let none = f64::NAN;
                return Err(Error::new(ErrorKind::Invalid, "json", none, none, none));
            }
        };
        Ok((self.parts, panels, lay))
    }
}

/// The part that a piece is laid as, as JSON for recloth_fit() and recloth_strip(): its cut line, seam line,
/// grain and how many of each hand; of a piece on a fold the whole, and the fold. It may not be tilted, its right side shows.
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
        call.answer(|job: FitJob, listener| {
            let FitJob {
                parts,
                panels,
                options,
            } = job;
            let fit = fit_with(&parts, &panels, &options, listener)?;
            Ok(Fitted { parts, panels, fit })
        })
    }
}

/// All pieces on cloth by the length, as short as was found.
///
/// - `json`: parts, the cloth and options, the fields of `Part`, `Strip` and `StripOptions` in Rust; what may be left
///   out has its default: `{"parts": [...], "strip": {"width": 1400, "faces": "one", "nap": false, "folded": false,
///   "repeat": null},
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
        call.answer(|job: StripJob, listener| {
            let StripJob {
                parts,
                strip,
                options,
            } = job;
            let found = strip_with(&parts, &strip, &options, listener)?;
            Ok(Stripped {
                parts,
                strip,
                found,
            })
        })
    }
}

/// What is wrong with a lay: nothing, when it can be cut.
///
/// Proves that every piece is inside its panel, clear of holes, flaws and other pieces, on grain within its
/// tolerance, the right way up, of the right hand, and none too many or too few.
///
/// - `json`: what recloth_fit() or recloth_strip() gave, or recloth_least_change() and its like with a fit, or `parts`, `panels` and `lay`, the fields of `Lay` in Rust:
///   `{"placements": [{"part": 0, "hand": "as_drawn", "panel": 0, "mirrored": false, "turn_deg": 0,
///   "shift": {"x": 20, "y": 30}}], "unplaced": [], "spacing": 0}`; with `"folds": [{"panel": 0, "from": {"x": 0,
///   "y": 700}, "to": {"x": 1, "y": 700}}]` of panels that are folded when they are cut.
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
            let (parts, panels, lay) = laid.taken_apart(message)?;
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
