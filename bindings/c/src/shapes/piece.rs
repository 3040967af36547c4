//! Pieces: in from edges and JSON, out as numbers, lines and JSON.

use core::ffi::c_char;

use kurbo::Rect;
use recloth::{
    Error,
    outline::{CutLine, Edge, Piece},
};

use super::handle::{
    answer, borrow, free, json_of, made, points_of, read_json, text_of, write_all,
};
use crate::{
    boundary::{boundary, recloth_error_t, record, text},
    generated::recloth_status,
    outline::edges,
};

/// A piece of a garment: a closed ring of edges with notches, marks, a grain line and how it is cut. It
/// never changes, so any number of threads may use it at once; free it with recloth_piece_free().
pub struct recloth_piece {
    pub(super) piece: Piece,
}

/// What a piece is, in numbers.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_piece_facts_t {
    /// Number of edges.
    pub edges: usize,
    /// Number of marks.
    pub marks: usize,
    /// How many are cut in all.
    pub count: u32,
    /// 1 where half of them are cut mirrored, else 0.
    pub mirrored: u32,
    /// Index of the edge on the fold of the cloth; -1 where there is none.
    pub fold: i64,
    /// Area inside the drawn lines (mm2).
    pub area_mm2: f64,
    /// Least x of the drawn lines (mm).
    pub left: f64,
    /// Least y (mm).
    pub bottom: f64,
    /// Largest x (mm).
    pub right: f64,
    /// Largest y (mm).
    pub top: f64,
    /// Direction of the grain, counter-clockwise from the x axis (deg).
    pub grain_deg: f64,
}

/// A line or arc of a cut line or seam line.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_segment_t {
    /// Start (mm).
    pub start_x: f64,
    /// Start (mm).
    pub start_y: f64,
    /// End (mm).
    pub end_x: f64,
    /// End (mm).
    pub end_y: f64,
    /// 0 for a line, for an arc the tangent of a quarter of its sweep, positive counter-clockwise.
    pub bulge: f64,
    /// Index of the edge it is parallel to; -1 in a corner.
    pub edge: i64,
}

/// A notch carried from the drawn line to the cut line.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_cut_notch_t {
    /// Index of its edge.
    pub edge: usize,
    /// How many marks side by side.
    pub marks: u32,
    /// How it is cut: 0 a slit, 1 a wedge.
    pub form: i32,
    /// How far it is cut in from the cut line (mm).
    pub depth: f64,
    /// Where it is on the drawn line (mm).
    pub seam_x: f64,
    /// Where it is on the drawn line (mm).
    pub seam_y: f64,
    /// Where it is on the cut line (mm).
    pub cut_x: f64,
    /// Where it is on the cut line (mm).
    pub cut_y: f64,
}

/// A place on the outline of a piece.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_place_t {
    /// Index of the edge.
    pub edge: usize,
    /// Distance from its start along it (mm).
    pub distance: f64,
}

/// A piece of lines and arcs: the edges of recloth_cut_line(), each named by its index.
///
/// Names, notches, marks, grain and cubic curves come in by recloth_piece_from_json().
///
/// - `name`: name of the piece, UTF-8.
/// - `points`, `bulges`, `allowances`, `drawn`, `count`: as of recloth_cut_line().
/// - `corners`: of each edge, how its allowance joins that of the next (one of `recloth_corner`); NULL when
///   all are pointed.
/// - `sizes`: of each corner its size: of a pointed one the farthest its point may reach, in larger
///   allowances (1 to 100; 0 for 4), of a trimmed one its distance, of a rounded one its radius (mm, 0 to
///   1000). NULL where none needs one.
/// - `out`: receives the piece; free it with recloth_piece_free().
///
/// # Safety
/// As of recloth_cut_line(); `name` is NULL or closed by a NUL, `out` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_from_edges(
    name: *const c_char,
    points: *const f64,
    bulges: *const f64,
    allowances: *const f64,
    corners: *const i32,
    sizes: *const f64,
    drawn: *const i32,
    count: usize,
    out: *mut *mut recloth_piece,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        made(out, error, || {
            let name = text("name", name)?;
            let edges = edges(points, bulges, allowances, corners, sizes, drawn, count)?;
            Piece::new(name, edges).map(|piece| recloth_piece { piece })
        })
    }
}

/// The piece that recloth_piece_to_json() wrote, or that was written by hand in the same words.
///
/// - `json`: the piece as JSON, UTF-8.
/// - `out`: receives the piece; free it with recloth_piece_free().
/// - `message`: on JSON that is no piece receives what is wrong, as `unknown field "grian" at line 3
///   column 8`; free it with recloth_text_free(). NULL when it is not wanted. Else left alone.
/// - `error`: JSON that is no piece is RECLOTH_STATUS_INVALID, with its line, from 1, in `value`.
///
/// # Safety
/// `json` is NULL or closed by a NUL; `out`, `message` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_from_json(
    json: *const c_char,
    out: *mut *mut recloth_piece,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        made(out, error, || {
            read_json(json, message).map(|piece| recloth_piece { piece })
        })
    }
}

/// A piece as JSON, every number to the last bit.
///
/// - `out`: receives the text, closed by a NUL; free it with recloth_text_free().
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_to_json(
    piece: *const recloth_piece,
    out: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe { json_of("piece", piece, out, error, |piece| &piece.piece) }
}

/// Frees a piece; NULL is left alone. Each is freed once: as with free(), a second time is undefined.
///
/// # Safety
/// `piece` is NULL, or was handed out by this library and is not freed yet.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_free(piece: *mut recloth_piece) {
    // SAFETY: the caller's promise above.
    unsafe { free(piece) }
}

/// Name of a piece.
///
/// - `out`: receives the name, closed by a NUL, into `out_count` bytes.
///
/// # Safety
/// `piece` is NULL or live; `out` is NULL or valid for `out_count` bytes; `error` NULL or valid.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_name(
    piece: *const recloth_piece,
    out: *mut c_char,
    out_count: usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        text_of("piece", piece, (out, out_count), error, |piece| {
            Ok(piece.piece.name())
        })
    }
}

/// What a piece is, in numbers.
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_facts(
    piece: *const recloth_piece,
    out: *mut recloth_piece_facts_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        answer("piece", piece, out, error, |piece| {
            let piece = &piece.piece;
            let Rect { x0, y0, x1, y1 } = piece.bounds();
            Ok(recloth_piece_facts_t {
                edges: piece.edges().len(),
                marks: piece.marks().len(),
                count: piece.cutting().count,
                mirrored: u32::from(piece.cutting().hand == recloth::outline::Hand::Mirrored),
                fold: index(piece.fold()),
                area_mm2: piece.area(),
                left: x0,
                bottom: y0,
                right: x1,
                top: y1,
                grain_deg: piece.grain_deg(),
            })
        })
    }
}

/// An index that may be none.
fn index(index: Option<usize>) -> i64 {
    index.map_or(-1, |index| index as i64)
}

/// An edge of a piece, if there is one of this index.
fn edge_of(piece: &Piece, edge: usize) -> Result<&Edge, Error> {
    let last = piece.edges().len() as f64 - 1.0;
    let none = Error::no_solution("edge", edge as f64, 0.0, last);
    piece.edges().get(edge).ok_or(none)
}

/// Name of an edge.
///
/// - `edge`: its index.
/// - `out`: receives the name, closed by a NUL, into `out_count` bytes.
///
/// # Safety
/// As of recloth_piece_name().
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_edge_name(
    piece: *const recloth_piece,
    edge: usize,
    out: *mut c_char,
    out_count: usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        text_of("piece", piece, (out, out_count), error, |piece| {
            Ok(&edge_of(&piece.piece, edge)?.name)
        })
    }
}

/// Index of the first edge with this name.
///
/// - `error`: RECLOTH_STATUS_NO_SOLUTION naming `name` where there is none.
///
/// # Safety
/// `piece` is NULL or live; `name` NULL or closed by a NUL; `out` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_edge(
    piece: *const recloth_piece,
    name: *const c_char,
    out: *mut usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        answer("piece", piece, out, error, |piece| {
            let none = Error::no_solution("name", f64::NAN, f64::NAN, f64::NAN);
            piece.piece.edge(text("name", name)?).ok_or(none)
        })
    }
}

/// Length of an edge along its drawn line (mm).
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_edge_length(
    piece: *const recloth_piece,
    edge: usize,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        answer("piece", piece, out, error, |piece| {
            Ok(edge_of(&piece.piece, edge)?.length())
        })
    }
}

/// The point on an edge at a distance from its start, and the direction outward there, of length 1.
///
/// - `distance`: from the start of the edge along it (mm), held to its ends.
/// - `out`: receives x, y, and x and y of the direction: 4 numbers.
///
/// # Safety
/// `piece` is NULL or live; `out` NULL or valid for 4 numbers; `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_at(
    piece: *const recloth_piece,
    edge: usize,
    distance: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        answer("piece", piece, out.cast::<[f64; 4]>(), error, |piece| {
            let distance = Error::check("distance", distance, -1e9, 1e9)?;
            edge_of(&piece.piece, edge)?;
            let found = piece.piece.at(edge, distance);
            let (point, outward) = found.unwrap_or_default();
            Ok([point.x, point.y, outward.x, outward.y])
        })
    }
}

/// The place on the outline nearest to a point.
///
/// - `x`, `y`: the point (mm, -100000 to 100000).
/// - `out`: receives the place.
/// - `off`: receives how far off the outline the point lies (mm); NULL when it is not wanted.
///
/// # Safety
/// `piece` is NULL or live; `out`, `off` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_place(
    piece: *const recloth_piece,
    x: f64,
    y: f64,
    out: *mut recloth_place_t,
    off: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        answer("piece", piece, out, error, |piece| {
            let x = Error::check("x", x, -1e5, 1e5)?;
            let y = Error::check("y", y, -1e5, 1e5)?;
            let (place, away) = piece.piece.place((x, y));
            if !off.is_null() {
                off.write(away);
            }
            Ok(recloth_place_t {
                edge: place.edge,
                distance: place.distance,
            })
        })
    }
}

/// Whether a piece is handed: no turn lays it onto its own mirror image.
///
/// - `tolerance`: by how much corners and curves may differ (mm, 0 to 1000).
/// - `out`: receives 1 if it is, else 0.
///
/// # Safety
/// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_handed(
    piece: *const recloth_piece,
    tolerance: f64,
    out: *mut u32,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        answer("piece", piece, out, error, |piece| {
            piece.piece.handed(tolerance).map(u32::from)
        })
    }
}

/// The line to cut a piece along, as a polygon.
///
/// - `tolerance`: how near curves are followed (mm, 0.001 to 10).
/// - `out`: receives its corners, x and y in turn (mm), the first not repeated.
/// - `room`: how many points `out` holds (2 numbers each). Too few gives RECLOTH_STATUS_ROOM with the
///   number needed in `error->min`; ask with NULL and 0.
/// - `out_count`: receives how many points there are.
/// - `error`: `at` is the index of the edge where nothing is left of its cut line.
///
/// # Safety
/// `piece` is NULL or live; `out` NULL or valid for twice `room` numbers, `out_count` and `error` NULL or
/// valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_cut_line(
    piece: *const recloth_piece,
    tolerance: f64,
    out: *mut f64,
    room: usize,
    out_count: *mut usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        points_of("piece", piece, (out, room, out_count), error, |piece| {
            Ok(piece.piece.cut_line(tolerance)?.flatten(tolerance))
        })
    }
}

/// The line a piece is sewn along, as a polygon: the drawn line, and where an edge is drawn as cut, its
/// allowance within.
///
/// - `tolerance`, `out`, `room`, `out_count`, `error`: as of recloth_piece_cut_line().
///
/// # Safety
/// As of recloth_piece_cut_line().
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_seam_line(
    piece: *const recloth_piece,
    tolerance: f64,
    out: *mut f64,
    room: usize,
    out_count: *mut usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        points_of("piece", piece, (out, room, out_count), error, |piece| {
            Ok(piece.piece.seam_line(tolerance)?.flatten(tolerance))
        })
    }
}

/// The lines and arcs of a line.
fn segments(line: &CutLine) -> Vec<recloth_segment_t> {
    let segment = |part: &recloth::outline::CutSegment| recloth_segment_t {
        start_x: part.segment.start.x,
        start_y: part.segment.start.y,
        end_x: part.segment.end.x,
        end_y: part.segment.end.y,
        bulge: part.segment.bulge,
        edge: index(part.edge),
    };
    line.segments().iter().map(segment).collect()
}

/// The line to cut a piece along, as lines and arcs.
///
/// - `tolerance`: how near cubic curves are followed (mm, 0.001 to 10).
/// - `out`: receives the lines and arcs, counter-clockwise; each starts where the one before ends.
/// - `room`: how many `out` holds. Too few gives RECLOTH_STATUS_ROOM with the number needed in
///   `error->min`; ask with NULL and 0.
/// - `out_count`: receives how many there are.
///
/// # Safety
/// `piece` is NULL or live; `out` NULL or valid for `room` records, `out_count` and `error` NULL or valid
/// for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_cut_segments(
    piece: *const recloth_piece,
    tolerance: f64,
    out: *mut recloth_segment_t,
    room: usize,
    out_count: *mut usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let line = borrow("piece", piece)?.piece.cut_line(tolerance)?;
            write_all(&segments(&line), out, room, out_count)
        })
    }
}

/// The notches of a piece, carried to its cut line, edge by edge.
///
/// - `tolerance`: as of recloth_piece_cut_segments().
/// - `out`, `room`, `out_count`: as of recloth_piece_cut_segments(); their names are in the JSON of the
///   piece.
///
/// # Safety
/// As of recloth_piece_cut_segments().
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_cut_notches(
    piece: *const recloth_piece,
    tolerance: f64,
    out: *mut recloth_cut_notch_t,
    room: usize,
    out_count: *mut usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let line = borrow("piece", piece)?.piece.cut_line(tolerance)?;
            let notch = |notch: &recloth::outline::CutNotch| recloth_cut_notch_t {
                edge: notch.edge,
                marks: notch.marks,
                form: notch.form as i32,
                depth: notch.depth,
                seam_x: notch.seam.x,
                seam_y: notch.seam.y,
                cut_x: notch.cut.x,
                cut_y: notch.cut.y,
            };
            let notches: Vec<_> = line.notches().iter().map(notch).collect();
            write_all(&notches, out, room, out_count)
        })
    }
}

/// The corners of a piece that cannot be made as asked, and are pointed in its cut line.
///
/// - `tolerance`: as of recloth_piece_cut_segments().
/// - `out`: receives an error a corner, for recloth_error_text(): its argument is the measure of the corner
///   that does not do, with what would, and `at` the index of the edge that the corner ends.
/// - `room`, `out_count`: as of recloth_piece_cut_segments(); none is as it should be.
///
/// # Safety
/// As of recloth_piece_cut_segments().
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piece_cut_unmade(
    piece: *const recloth_piece,
    tolerance: f64,
    out: *mut recloth_error_t,
    room: usize,
    out_count: *mut usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let line = borrow("piece", piece)?.piece.cut_line(tolerance)?;
            let unmade: Vec<_> = line.unmade().iter().map(record).collect();
            write_all(&unmade, out, room, out_count)
        })
    }
}
