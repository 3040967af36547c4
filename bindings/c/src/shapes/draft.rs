//! Drafts: measures in as JSON, pieces out.

use core::ffi::c_char;

use recloth::{
    Error,
    draft::{Draft, DraftLining, Measures},
};
use serde::Serialize;

use super::{
    handle::{hand_out_all, read_json, read_json_of, write_json},
    piece::recloth_piece,
};
use crate::{
    boundary::{boundary, recloth_error_t},
    generated::recloth_status,
};

/// Drafts pieces from measures.
///
/// - `json`: the kind of draft and its measures (mm), as
///   `{"patch_pocket": {"width": 150, "depth": 170, "corner_radius": 20, "allowances": {"seam": 10, "hem": 30}}}`;
///   kinds and measures are those of the drafts in Rust, `PatchPocket` and so on, in these small letters.
/// - `out`: receives the pieces; free each with recloth_piece_free().
/// - `room`: how many `out` holds. Too few gives RECLOTH_STATUS_ROOM with the number needed in
///   `error->min`, and no piece is handed out; ask with NULL and 0.
/// - `out_count`: receives how many there are.
/// - `report`: receives all that the draft gives as JSON: pieces, what to walk, what was checked, doubts; free
///   it with recloth_text_free(). NULL when it is not wanted.
/// - `message`: as of recloth_piece_from_json().
/// - `error`: a draft that cannot be made names the measure to change, and what would do.
///
/// # Safety
/// `json` is NULL or closed by a NUL; `out` NULL or valid for `room` handles; `out_count`, `report`,
/// `message` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_draft(
    json: *const c_char,
    out: *mut *mut recloth_piece,
    room: usize,
    out_count: *mut usize,
    report: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let measures: Measures = read_json(json, message)?;
            let draft = measures.draft()?;
            hand_out_draft(&draft, &draft, out, room, out_count, report)
        })
    }
}

/// The lining of a whole draft, or of some of its pieces.
///
/// - `draft`: what recloth_draft() wrote into `report`.
/// - `json`: the lining asked for, a `DraftLining` in Rust, as `{"pieces": [], "cloth": "lining", "facings":
///   [{"edge": "waist", "by": 40}], "ease": [{"piece": "skirt front", "edge": "side", "by": 3}], "pleats": [],
///   "hem": {"free": {"clearance": 25, "allowance": 20}}, "darts": "tucks", "allowance": 10,
///   "shell_change_pct": [0, 0], "lining_change_pct": [0, 0]}`; an edge may be a seam of the draft.
/// - `out`, `room`, `out_count`, `message`: as of recloth_draft().
/// - `report`: receives the lining as JSON: `draft`, as of recloth_draft(), and `linings`, piece by piece what each
///   is sewn along; free it with recloth_text_free(). NULL when it is not wanted.
///
/// # Safety
/// `draft` and `json` are NULL or closed by a NUL; `out` NULL or valid for `room` handles; `out_count`, `report`,
/// `message` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_draft_lining(
    draft: *const c_char,
    json: *const c_char,
    out: *mut *mut recloth_piece,
    room: usize,
    out_count: *mut usize,
    report: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let draft: Draft = read_json_of("draft", draft, message)?;
            let asked: DraftLining = read_json(json, message)?;
            let lined = draft.lining(&asked)?;
            hand_out_draft(&lined, &lined.draft, out, room, out_count, report)
        })
    }
}

/// Hands out the pieces of a draft, and what is told of it.
///
/// # Safety
/// As of `recloth_draft()`.
unsafe fn hand_out_draft(
    told: &impl Serialize,
    draft: &Draft,
    out: *mut *mut recloth_piece,
    room: usize,
    out_count: *mut usize,
    report: *mut *mut c_char,
) -> Result<(), Error> {
    // SAFETY: the caller's promise.
    unsafe {
        let mut words = core::ptr::null_mut();
        if !report.is_null() {
            write_json(told, &raw mut words)?;
        }
        let pieces = draft.pieces.iter().cloned();
        let pieces = pieces.map(|piece| recloth_piece { piece }).collect();
        let handed = hand_out_all(pieces, out, room, out_count);
        match handed {
            Ok(()) if !report.is_null() => report.write(words),
            _ => crate::plan::recloth_text_free(words),
        }
        handed
    }
}
