//! Operations on pieces. Each hands out new pieces and leaves the old as they are.

use core::ffi::c_char;

use kurbo::{Line, Point};
use recloth::{
    Error,
    outline::{Curve, Facing, NewSeam, Opening, Piece, Place, Slash, Way},
};

use super::{
    handle::{self, borrow, hand_out, write_json},
    piece::{recloth_piece, recloth_place_t},
};
use crate::{
    boundary::{bad_choice, boundary, list, not_null, recloth_error_t, text},
    generated::recloth_status,
};

/// Which way the other edges of a walk run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_way {
    /// The start of one meets the end of the other, as of two pieces drawn with the same side up.
    Against = 0,
    /// Start meets start, as where one of the two pieces is cut mirrored.
    Along = 1,
}

/// A line, arc or cubic curve.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_curve_t {
    /// Start (mm).
    pub start_x: f64,
    /// Start (mm).
    pub start_y: f64,
    /// End (mm).
    pub end_x: f64,
    /// End (mm).
    pub end_y: f64,
    /// 0 for a line, for an arc the tangent of a quarter of its sweep, positive counter-clockwise; not
    /// used for a cubic.
    pub bulge: f64,
    /// 1 for a cubic Bezier curve, whose steering points follow, else 0.
    pub cubic: u32,
    /// First steering point (mm).
    pub first_x: f64,
    /// First steering point (mm).
    pub first_y: f64,
    /// Second steering point (mm).
    pub second_x: f64,
    /// Second steering point (mm).
    pub second_y: f64,
}

/// Where a dart is turned to.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_opening_t {
    /// Name of the new dart, UTF-8, closed by a NUL.
    pub name: *const c_char,
    /// Where on the outline it opens.
    pub at: recloth_place_t,
    /// Its share of the turned dart's angle, above 0 to 1.
    pub share: f64,
}

/// A straight slash across a piece, and how far it is spread.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_slash_t {
    /// The end that is spread.
    pub open: recloth_place_t,
    /// The other end.
    pub hinge: recloth_place_t,
    /// How far it opens at its start (mm, 0 to 10000).
    pub open_by: f64,
    /// How far at its end (mm, 0 to 10000): 0 for a hinge, as much as `open_by` for a parallel spread.
    pub hinge_by: f64,
}

/// Two rows of edges walked along each other.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_walk_t {
    /// Length of these edges (mm).
    pub length: f64,
    /// Length of the other edges (mm).
    pub other_length: f64,
    /// `length - other_length` (mm): what must be eased in, if positive.
    pub difference: f64,
    /// Kink of the edges that run on across the seam where the walk starts, once it is sewn (deg): 0 smooth,
    /// positive a peak, negative a dent; NaN where one of them lies on a fold.
    pub start_kink_deg: f64,
    /// The same where the walk ends.
    pub end_kink_deg: f64,
}

pub(super) fn place(place: recloth_place_t) -> Place {
    Place {
        edge: place.edge,
        distance: place.distance,
    }
}

fn curve(curve: &recloth_curve_t) -> Curve {
    let (start, end) = ((curve.start_x, curve.start_y), (curve.end_x, curve.end_y));
    if curve.cubic == 0 {
        return Curve::arc(start, end, curve.bulge);
    }
    let first = (curve.first_x, curve.first_y);
    Curve::cubic(start, first, (curve.second_x, curve.second_y), end)
}

pub(super) fn read_way(way: i32) -> Result<Way, Error> {
    match way {
        0 => Ok(Way::Against),
        1 => Ok(Way::Along),
        other => Err(bad_choice("way", other)),
    }
}

/// Hands out a piece made of another.
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
pub(super) unsafe fn changed(
    piece: *const recloth_piece,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
    change: impl FnOnce(&Piece) -> Result<Piece, Error>,
) -> recloth_status {
    // SAFETY: the caller's promise.
    unsafe {
        handle::changed("piece", piece, out, error, |piece| {
            change(&piece.piece).map(|piece| recloth_piece { piece })
        })
    }
}

/// The mirror image about the y axis: x becomes -x. Edges come in the opposite order, each reversed.
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_mirror(
    piece: *const recloth_piece,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe { changed(piece, out, error, |piece| Ok(piece.mirror())) }
}

/// The piece shifted.
///
/// - `x`, `y`: by how much (mm, -100000 to 100000).
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_shifted(
    piece: *const recloth_piece,
    x: f64,
    y: f64,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            let x = Error::check("x", x, -1e5, 1e5)?;
            let y = Error::check("y", y, -1e5, 1e5)?;
            Ok(piece.shifted((x, y)))
        })
    }
}

/// The piece turned about the origin.
///
/// - `angle_deg`: counter-clockwise (deg, -1000000 to 1000000).
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_turned(
    piece: *const recloth_piece,
    angle_deg: f64,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            Ok(piece.turned(Error::check("angle_deg", angle_deg, -1e6, 1e6)?))
        })
    }
}

/// A piece on the fold of the cloth folded open: the whole piece.
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_unfold(
    piece: *const recloth_piece,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe { changed(piece, out, error, Piece::unfold) }
}

/// The piece with a dart turned to other places, whole or shared among them; what is not shared out
/// stays in the dart.
///
/// - `dart`: name of the dart, UTF-8.
/// - `openings`: where to, `openings_count` of them.
/// - `error`: `at` is the index of the opening at fault.
///
/// # Safety
/// `piece` is NULL or live; `dart` and the names of the openings NULL or closed by a NUL; `openings` NULL or
/// valid for its count; `out` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_turn_dart(
    piece: *const recloth_piece,
    dart: *const c_char,
    openings: *const recloth_opening_t,
    openings_count: usize,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            let dart = text("dart", dart)?;
            let mut read = Vec::with_capacity(openings_count.min(1000));
            for (index, opening) in list("openings", openings, openings_count)?
                .iter()
                .enumerate()
            {
                read.push(Opening {
                    name: text("name", opening.name)
                        .map_err(|error| error.at_index(index))?
                        .to_owned(),
                    at: place(opening.at),
                    share: opening.share,
                });
            }
            piece.turn_dart(dart, &read)
        })
    }
}

/// The piece with a dart closed, and the cloth opened at another place of the outline, for gathers or
/// ease there.
///
/// - `dart`: name of the dart, UTF-8.
/// - `at`: where it opens.
///
/// # Safety
/// `piece` is NULL or live; `dart` NULL or closed by a NUL; `out` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_close_dart(
    piece: *const recloth_piece,
    dart: *const c_char,
    at: recloth_place_t,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            piece.close_dart(text("dart", dart)?, place(at))
        })
    }
}

/// The piece opened into a new dart: slashed from the outline to a point, and from there to the place
/// opposite, where it swings as at a hinge.
///
/// - `name`: name of the new dart, UTF-8.
/// - `x`, `y`: its point, within the piece (mm).
/// - `at`: where it opens.
/// - `intake`: how far it opens there (mm).
/// - `opposite`: the hinge on the outline.
///
/// # Safety
/// `piece` is NULL or live; `name` NULL or closed by a NUL; `out` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_open_dart(
    piece: *const recloth_piece,
    name: *const c_char,
    x: f64,
    y: f64,
    at: recloth_place_t,
    intake: f64,
    opposite: recloth_place_t,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            piece.open_dart(
                text("name", name)?,
                Point::new(x, y),
                place(at),
                intake,
                place(opposite),
            )
        })
    }
}

/// The piece with the cap of a dart drawn, so that its seam edge runs on straight when the dart is
/// folded.
///
/// - `dart`: name of the dart, UTF-8.
/// - `onto`: index of the edge beside the dart that the folded cloth lies on.
///
/// # Safety
/// `piece` is NULL or live; `dart` NULL or closed by a NUL; `out` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_cap_dart(
    piece: *const recloth_piece,
    dart: *const c_char,
    onto: usize,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            piece.cap_dart(text("dart", dart)?, onto)
        })
    }
}

/// The piece slashed across and spread: for flare from a hinge, for gathers or pleats parallel.
///
/// - `slashes`: side by side, `slashes_count` of them.
///
/// # Safety
/// `piece` is NULL or live; `slashes` NULL or valid for its count; `out` and `error` NULL or valid for
/// writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_slash_and_spread(
    piece: *const recloth_piece,
    slashes: *const recloth_slash_t,
    slashes_count: usize,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            let slash = |slash: &recloth_slash_t| Slash {
                open: place(slash.open),
                hinge: place(slash.hinge),
                open_by: slash.open_by,
                hinge_by: slash.hinge_by,
            };
            let slashes = list("slashes", slashes, slashes_count)?;
            piece.slash_and_spread(&slashes.iter().map(slash).collect::<Vec<_>>())
        })
    }
}

/// The piece scaled for what washing will take, so that it has its size after it.
///
/// - `along_pct`, `across_pct`: change along and across the grain (%; minus is shrinkage).
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_scale_for_change(
    piece: *const recloth_piece,
    along_pct: f64,
    across_pct: f64,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            piece.scale_for_change(along_pct, across_pct)
        })
    }
}

/// The piece with edges that follow each other shifted parallel, outward if positive.
///
/// - `edges`: their indices, `edges_count` of them.
/// - `by`: how far (mm, -1000 to 1000).
///
/// # Safety
/// `piece` is NULL or live; `edges` NULL or valid for its count; `out` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_shift_edges(
    piece: *const recloth_piece,
    edges: *const usize,
    edges_count: usize,
    by: f64,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            piece.shift_edges(list("edges", edges, edges_count)?, by)
        })
    }
}

/// The facing of edges that follow each other: a band of even depth along them.
///
/// - `edges`: their indices in order round the piece, `edges_count` of them.
/// - `name`: name of the facing, UTF-8.
/// - `depth`: square to the faced edges (mm, 1 to 1000).
/// - `roll`: by how much its faced edges lie within those of the piece, so that the seam rolls under (mm,
///   0 to 10).
/// - `inner_allowance`: of its inner edge (mm, 0 to 1000).
///
/// # Safety
/// `piece` is NULL or live; `edges` NULL or valid for its count; `name` NULL or closed by a NUL; `out` and
/// `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_facing(
    piece: *const recloth_piece,
    edges: *const usize,
    edges_count: usize,
    name: *const c_char,
    depth: f64,
    roll: f64,
    inner_allowance: f64,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            let edges = list("edges", edges, edges_count)?;
            let facing = Facing {
                name: text("name", name)?.to_owned(),
                depth,
                roll,
                inner_allowance,
            };
            piece.facing(edges, &facing)
        })
    }
}

/// Cuts a piece in two along a line or curve that crosses its outline twice.
///
/// - `cut`: the line or curve.
/// - `name`: name of the new edge in both parts, UTF-8.
/// - `allowance`: its seam allowance in both (mm, 0 to 1000).
/// - `notches`: where both are notched, distances from the start of the cut along it (mm),
///   `notches_count` of them.
/// - `left`, `right`: receive the part to the left of the cut and that to its right; free each.
///
/// # Safety
/// `piece` is NULL or live; `cut` NULL or valid; `name` NULL or closed by a NUL; `notches` NULL or valid for
/// its count; `left`, `right` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_split(
    piece: *const recloth_piece,
    cut: *const recloth_curve_t,
    name: *const c_char,
    allowance: f64,
    notches: *const f64,
    notches_count: usize,
    left: *mut *mut recloth_piece,
    right: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let piece = &borrow("piece", piece)?.piece;
            let cut = curve(borrow("cut", cut)?);
            let seam = NewSeam {
                name: text("name", name)?.to_owned(),
                allowance,
                notches: list("notches", notches, notches_count)?.to_vec(),
            };
            not_null("left", left)?;
            not_null("right", right)?;
            let [first, second] = piece.split(&cut, &seam)?;
            hand_out(left, recloth_piece { piece: first });
            hand_out(right, recloth_piece { piece: second });
            Ok(())
        })
    }
}

/// Lays another piece along an edge of this one and makes one piece of both, without the seam.
///
/// - `edge`, `other_edge`: the edges, by index.
/// - `tolerance`: how far the two edges may lie apart or over each other (mm, 0 to 1000).
/// - `out`: receives the one piece; free it.
/// - `gap`: receives the farthest that they do (mm); NULL when it is not wanted.
///
/// # Safety
/// `piece` and `other` are NULL or live; `out`, `gap` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_join(
    piece: *const recloth_piece,
    edge: usize,
    other: *const recloth_piece,
    other_edge: usize,
    tolerance: f64,
    out: *mut *mut recloth_piece,
    gap: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            let other = borrow("other", other)?;
            let joined = piece.join(edge, &other.piece, other_edge, tolerance)?;
            if !gap.is_null() {
                gap.write(joined.gap);
            }
            Ok(joined.piece)
        })
    }
}

/// Folds a piece along an axis from corner to corner and gives the middle of both halves, on a fold along
/// the axis; it says by how much they differ.
///
/// - `start_x`, `start_y`, `end_x`, `end_y`: ends of the axis (mm).
/// - `tolerance`: how near a corner must lie to each (mm, 0 to 1000).
/// - `out`: receives the half; free it.
/// - `largest`: receives the farthest that a point of one half lies from its fellow in the other (mm);
///   NULL when it is not wanted.
/// - `edge`: receives the index of the edge where that is; NULL when it is not wanted.
///
/// # Safety
/// `piece` is NULL or live; `out`, `largest`, `edge` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_symmetrise(
    piece: *const recloth_piece,
    start_x: f64,
    start_y: f64,
    end_x: f64,
    end_y: f64,
    tolerance: f64,
    out: *mut *mut recloth_piece,
    largest: *mut f64,
    edge: *mut usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(piece, out, error, |piece| {
            let axis = Line::new((start_x, start_y), (end_x, end_y));
            let symmetry = piece.symmetrise(axis, tolerance)?;
            if !largest.is_null() {
                largest.write(symmetry.largest);
            }
            if !edge.is_null() {
                edge.write(symmetry.edge);
            }
            Ok(symmetry.half)
        })
    }
}

/// Walks edges of a piece along edges of another, by the drawn lines: do they go together, and where lies
/// the ease.
///
/// - `edges`, `other_edges`: their indices in the order met.
/// - `way`: which way the others run (one of `recloth_way`).
/// - `out`: receives lengths and kinks.
/// - `details`: receives the walk with its notches and the sections between them as JSON; free it with
///   recloth_text_free(). NULL when it is not wanted.
///
/// # Safety
/// `piece` and `other` are NULL or live; the lists NULL or valid for their counts; `out`, `details` and
/// `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_walk(
    piece: *const recloth_piece,
    edges: *const usize,
    edges_count: usize,
    other: *const recloth_piece,
    other_edges: *const usize,
    other_edges_count: usize,
    way: i32,
    out: *mut recloth_walk_t,
    details: *mut *mut c_char,
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
            not_null("out", out)?;
            let walk = piece.walk(edges, other, other_edges, way)?;
            write_json(
                &serde_json::json!({ "walk": &walk, "sections": walk.sections() }),
                details,
            )?;
            out.write(recloth_walk_t {
                length: walk.length,
                other_length: walk.other_length,
                difference: walk.difference,
                start_kink_deg: walk.start_kink_deg.unwrap_or(f64::NAN),
                end_kink_deg: walk.end_kink_deg.unwrap_or(f64::NAN),
            });
            Ok(())
        })
    }
}
