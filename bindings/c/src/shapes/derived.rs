//! Pieces lengthened, trued up, lined, notched and copied onto: what needs more than numbers comes as JSON.

use core::ffi::c_char;

use kurbo::Line;
use recloth::{
    Error,
    outline::{
        Copied, CopyFit, Dart, Edge, Lining, Meeting, PairedNotch, Piece, measured_edge, true_up,
    },
};

use super::{
    handle::{borrow, hand_out, hand_out_all, points, read_json, write_json},
    operation::{changed, place, read_way},
    piece::{recloth_piece, recloth_place_t},
};
use crate::{
    boundary::{boundary, list, not_null, recloth_error_t, text},
    generated::recloth_status,
};

/// How well an edge fitted where it was copied.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_copied_t {
    /// Length of the edge as it was copied (mm).
    pub length: f64,
    /// Length of what it replaced (mm).
    pub replaced: f64,
    /// How far it was turned, counter-clockwise (deg).
    pub turn_deg: f64,
    /// What it was stretched by (%), negative where it was shrunk.
    pub stretch_pct: f64,
    /// What the landmarks are farther apart than its ends (mm), negative where they are nearer.
    pub gap: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// The piece lengthened at a line across it, or shortened: what lies to the left of the line stays, what
/// lies to its right moves square to it.
///
/// - `start_x`, `start_y`, `end_x`, `end_y`: ends of the line (mm).
/// - `by`: by how much (mm, -10000 to 10000).
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_extend(
    piece: *const recloth_piece,
    start_x: f64,
    start_y: f64,
    end_x: f64,
    end_y: f64,
    by: f64,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            piece.extend(Line::new((start_x, start_y), (end_x, end_y)), by)
        })
    }
}

/// The lining of a piece: its seam lines less the facings, eased, with pleats for room, ended at the hem as
/// asked.
///
/// - `json`: the lining asked for, the fields of `Lining` in Rust, as `{"name": "lining", "cloth":
///   "lining", "facings": [], "ease": [{"edge": 1, "by": 3}], "pleats": [], "hem": {"jump": {"depth": 40,
///   "clearance": 20}}, "darts": "tucks", "allowance": 15, "shell_change_pct": [0, 0],
///   "lining_change_pct": [0, 0]}`.
/// - `out`: receives the lining to cut; free it.
/// - `report`: receives the lining, the lining as it will be when washed, and what to walk as JSON; free it with
///   recloth_text_free(). NULL when it is not wanted.
/// - `message`: as of recloth_piece_from_json().
///
/// # Safety
/// `piece` is NULL or live; `json` NULL or closed by a NUL; `out`, `report`, `message` and `error` are NULL
/// or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_lining(
    piece: *const recloth_piece,
    json: *const c_char,
    out: *mut *mut recloth_piece,
    report: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            let lining: Lining = read_json(json, message)?;
            let lined = piece.lining(&lining)?;
            write_json(&lined, report)?;
            Ok(lined.piece)
        })
    }
}

/// Trues up edges that meet at seams and darts, so that sewn together they run on smoothly; it says what was
/// moved, where and how far.
///
/// - `pieces`: the pieces, `pieces_count` of them, 1 to 1000.
/// - `json`: where edges meet, a list of `Meeting` in Rust, as `[{"seam": {"pieces": [0, 1], "edges": [1,
///   3], "way": "against", "end": "start", "kept": "neither"}}, {"dart": {"piece": 0, "dart": "dart 1",
///   "onto": "start"}}]`; `kept`, which of the two is left as it is, may be left out.
/// - `limit`: the most that an edge may be moved (mm, 0 to 1000).
/// - `out`: receives all the pieces, changed or not: `pieces_count` of them; free each.
/// - `report`: receives what was changed as JSON; free it with recloth_text_free(). NULL when it is not
///   wanted.
/// - `message`: as of recloth_piece_from_json().
///
/// # Safety
/// `pieces` is NULL or valid for its count, each NULL or live; `json` NULL or closed by a NUL; `out` NULL or
/// valid for as many handles; `report`, `message` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_true_up(
    pieces: *const *const recloth_piece,
    pieces_count: usize,
    json: *const c_char,
    limit: f64,
    out: *mut *mut recloth_piece,
    report: *mut *mut c_char,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let mut read: Vec<Piece> = Vec::new();
            for (index, piece) in list("pieces", pieces, pieces_count)?.iter().enumerate() {
                let piece = borrow("pieces", *piece).map_err(|error| error.at_index(index))?;
                read.push(piece.piece.clone());
            }
            let meetings: Vec<Meeting> = read_json(json, message)?;
            not_null("out", out)?;
            let trued = true_up(&read, &meetings, limit)?;
            write_json(&trued, report)?;
            let pieces = trued
                .pieces
                .into_iter()
                .map(|piece| recloth_piece { piece });
            let mut count = 0;
            hand_out_all(pieces.collect(), out, pieces_count, &raw mut count)
        })
    }
}

/// Sets notches on two rows of edges that are sewn together, so that they meet.
///
/// - `edges`, `other_edges`: indices of the edges in the order met.
/// - `way`: which way the others run (one of `recloth_way`).
/// - `json`: the notches, a list of `PairedNotch` in Rust, as `[{"name": "hip", "distance": 200, "ease": 0,
///   "marks": 1}]`.
/// - `out`, `other_out`: receive this piece and the other with the notches; free each.
/// - `message`: as of recloth_piece_from_json().
///
/// # Safety
/// `piece` and `other` are NULL or live; the lists NULL or valid for their counts; `json` NULL or closed by a
/// NUL; `out`, `other_out`, `message` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_pair_notches(
    piece: *const recloth_piece,
    edges: *const usize,
    edges_count: usize,
    other: *const recloth_piece,
    other_edges: *const usize,
    other_edges_count: usize,
    way: i32,
    json: *const c_char,
    out: *mut *mut recloth_piece,
    other_out: *mut *mut recloth_piece,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let piece = &borrow("piece", piece)?.piece;
            let edges = list("edges", edges, edges_count)?;
            let other = &borrow("other", other)?.piece;
            let other_edges = list("other_edges", other_edges, other_edges_count)?;
            let way = read_way(way)?;
            let notches: Vec<PairedNotch> = read_json(json, message)?;
            not_null("out", out)?;
            not_null("other_out", other_out)?;
            let [first, second] = piece.pair_notches(edges, other, other_edges, way, &notches)?;
            hand_out(out, recloth_piece { piece: first });
            hand_out(other_out, recloth_piece { piece: second });
            Ok(())
        })
    }
}

/// Pairs the notches of two pieces by their names.
///
/// - `out`: receives each name with its place on both as JSON; free it with recloth_text_free().
///
/// # Safety
/// `piece` and `other` are NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_match_notches(
    piece: *const recloth_piece,
    other: *const recloth_piece,
    out: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let piece = &borrow("piece", piece)?.piece;
            let other = &borrow("other", other)?.piece;
            not_null("out", out)?;
            write_json(&piece.match_notches(other), out)
        })
    }
}

/// The piece with edges copied onto it, once they are found.
///
/// # Safety
/// `piece` is NULL or live; `out`, `fit` and `error` are NULL or valid for writing.
unsafe fn copied(
    piece: *const recloth_piece,
    out: *mut *mut recloth_piece,
    fit: *mut recloth_copied_t,
    error: *mut recloth_error_t,
    copy: impl FnOnce(&Piece) -> Result<Copied, Error>,
) -> recloth_status {
    // SAFETY: the caller's promise.
    unsafe {
        changed(piece, out, error, |piece| {
            let copied = copy(piece)?;
            if !fit.is_null() {
                fit.write(recloth_copied_t {
                    length: copied.length,
                    replaced: copied.replaced,
                    turn_deg: copied.turn_deg,
                    stretch_pct: copied.stretch_pct,
                    gap: copied.gap,
                    doubts: copied.doubts,
                });
            }
            Ok(copied.piece)
        })
    }
}

/// Copies edges of a piece that fits onto another between two landmarks, in place of its outline there.
///
/// - `from`, `to`: the landmarks on this piece, counter-clockwise.
/// - `other`: the piece that fits; mirror it first where it lies mirrored.
/// - `other_from`, `other_to`: where the copied edges begin and end on it, counter-clockwise.
/// - `gap`: how much nearer or farther apart their ends may be than the landmarks (mm, 0 to 1000).
/// - `stretch_pct`: how much they may be stretched or shrunk (%, 0 to 50); 0 for never.
/// - `out`: receives the piece; free it.
/// - `fit`: receives how well they fitted; NULL when it is not wanted.
///
/// # Safety
/// `piece` and `other` are NULL or live; `out`, `fit` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_copy_edge(
    piece: *const recloth_piece,
    from: recloth_place_t,
    to: recloth_place_t,
    other: *const recloth_piece,
    other_from: recloth_place_t,
    other_to: recloth_place_t,
    gap: f64,
    stretch_pct: f64,
    out: *mut *mut recloth_piece,
    fit: *mut recloth_copied_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        copied(piece, out, fit, error, |piece| {
            let other = &borrow("other", other)?.piece;
            let traced: Vec<Edge> = other.trace(place(other_from), place(other_to))?;
            piece.copy_edge(
                place(from),
                place(to),
                &traced,
                CopyFit { gap, stretch_pct },
            )
        })
    }
}

/// Copies edges of a piece that fits, whose dart is sewn, as they run with that dart open: above the level of its
/// point they move away from it by a share of its width there.
///
/// - `from`, `to`, `other`, `other_from`, `other_to`, `gap`, `stretch_pct`, `out`, `fit`: as of
///   recloth_piece_copy_edge().
/// - `dart`: x and y of its point and of the ends of its legs (mm), 6 numbers, where it lies in the other piece.
/// - `share`: what of it opens towards these edges, 0 to 1.
///
/// # Safety
/// `piece` and `other` are NULL or live; `dart` NULL or valid for 6 numbers; `out`, `fit` and `error` are NULL or
/// valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_copy_opened_edge(
    piece: *const recloth_piece,
    from: recloth_place_t,
    to: recloth_place_t,
    other: *const recloth_piece,
    other_from: recloth_place_t,
    other_to: recloth_place_t,
    dart: *const f64,
    share: f64,
    gap: f64,
    stretch_pct: f64,
    out: *mut *mut recloth_piece,
    fit: *mut recloth_copied_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        copied(piece, out, fit, error, |piece| {
            let other = &borrow("other", other)?.piece;
            let points = points("dart", dart, 3)?;
            let dart = Dart {
                name: String::new(),
                point: points[0],
                legs: [points[1], points[2]],
            };
            let traced = other.trace(place(other_from), place(other_to))?;
            let opened = dart.opened(&traced, share)?;
            piece.copy_edge(
                place(from),
                place(to),
                &opened,
                CopyFit { gap, stretch_pct },
            )
        })
    }
}

/// Copies an edge measured point by point onto a piece between two landmarks.
///
/// - `from`, `to`, `gap`, `stretch_pct`, `out`, `fit`: as of recloth_piece_copy_edge().
/// - `name`: name of the edge, UTF-8.
/// - `measured`: x and y of each point in turn (mm), `measured_count` points, 2 to 1001.
/// - `smooth`: 1 for a curve through all points, 0 for straight edges between them.
///
/// # Safety
/// `piece` is NULL or live; `name` NULL or closed by a NUL; `measured` NULL or valid for twice its count;
/// `out`, `fit` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_copy_measured_edge(
    piece: *const recloth_piece,
    from: recloth_place_t,
    to: recloth_place_t,
    name: *const c_char,
    measured: *const f64,
    measured_count: usize,
    smooth: u32,
    gap: f64,
    stretch_pct: f64,
    out: *mut *mut recloth_piece,
    fit: *mut recloth_copied_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        copied(piece, out, fit, error, |piece| {
            let smooth = Error::check_count("smooth", smooth, 0, 1)? == 1;
            let points = points("measured", measured, measured_count)?;
            let edges = measured_edge(text("name", name)?, &points, smooth)?;
            piece.copy_edge(place(from), place(to), &edges, CopyFit { gap, stretch_pct })
        })
    }
}
