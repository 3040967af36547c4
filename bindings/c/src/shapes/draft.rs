//! Drafts: measures in as JSON, pieces out.

use core::ffi::c_char;

use recloth::{
    Error,
    draft::{self, Draft},
};
use serde::Deserialize;

use super::{
    handle::{hand_out_all, read_json, write_json},
    piece::recloth_piece,
};
use crate::{
    boundary::{boundary, recloth_error_t},
    generated::recloth_status,
};

/// The measures of a draft under the name of its kind.
#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum Measures {
    Binding(draft::Binding),
    CircleSector(draft::CircleSector),
    DartedSkirt(draft::DartedSkirt),
    EdgeBand(draft::EdgeBand),
    GatheredStrip(draft::GatheredStrip),
    GoredSkirt(draft::GoredSkirt),
    NeckTop(draft::NeckTop),
    OffCentreFront(draft::OffCentreFront),
    PanelLining(draft::PanelLining),
    PatchPocket(draft::PatchPocket),
    Pinafore(draft::Pinafore),
    PuffedSleeve(draft::PuffedSleeve),
    RecutSleeve(draft::RecutSleeve),
    SectionedBand(draft::SectionedBand),
    ShapedBand(draft::ShapedBand),
    SkirtPanel(draft::SkirtPanel),
    Sleeve(draft::Sleeve),
    StraightBand(draft::StraightBand),
    TieredSkirt(draft::TieredSkirt),
    WrapSkirt(draft::WrapSkirt),
}

impl Measures {
    fn draft(&self) -> Result<Draft, Error> {
        match self {
            Measures::Binding(measures) => measures.draft(),
            Measures::CircleSector(measures) => measures.draft(),
            Measures::DartedSkirt(measures) => measures.draft(),
            Measures::EdgeBand(measures) => measures.draft(),
            Measures::GatheredStrip(measures) => measures.draft(),
            Measures::GoredSkirt(measures) => measures.draft(),
            Measures::NeckTop(measures) => measures.draft(),
            Measures::OffCentreFront(measures) => measures.draft(),
            Measures::PanelLining(measures) => measures.draft(),
            Measures::PatchPocket(measures) => measures.draft(),
            Measures::Pinafore(measures) => measures.draft(),
            Measures::PuffedSleeve(measures) => measures.draft(),
            Measures::RecutSleeve(measures) => measures.draft(),
            Measures::SectionedBand(measures) => measures.draft(),
            Measures::ShapedBand(measures) => measures.draft(),
            Measures::SkirtPanel(measures) => measures.draft(),
            Measures::Sleeve(measures) => measures.draft(),
            Measures::StraightBand(measures) => measures.draft(),
            Measures::TieredSkirt(measures) => measures.draft(),
            Measures::WrapSkirt(measures) => measures.draft(),
        }
    }
}

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
            let mut words = core::ptr::null_mut();
            if !report.is_null() {
                write_json(&draft, &raw mut words)?;
            }
            let pieces = draft
                .pieces
                .into_iter()
                .map(|piece| recloth_piece { piece });
            let handed = hand_out_all(pieces.collect(), out, room, out_count);
            match handed {
                Ok(()) if !report.is_null() => report.write(words),
                _ => crate::plan::recloth_text_free(words),
            }
            handed
        })
    }
}
