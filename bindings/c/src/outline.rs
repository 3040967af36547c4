//! Cut lines by arrays.

use recloth::{
    Error,
    outline::{Corner, Curve, Drawn, Edge, Piece, Role},
};

use crate::{
    boundary::{bad_choice, boundary, list, list_to_fill, not_null, recloth_error_t},
    generated::recloth_status,
};

/// How the allowances of an edge and the next are joined at an outward corner.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_corner {
    /// Both cut lines run on until they meet, no farther from the corner than 4 times the larger
    /// allowance, where the point is cut off square.
    Pointed = 0,
    /// The allowance of this edge ends square to this edge.
    SquaredToThis = 1,
    /// The allowance of the next edge ends square to the next edge.
    SquaredToNext = 2,
    /// This edge is a turned hem: the next edge's cut line is mirrored about it.
    MirroredOnThis = 3,
    /// The next edge is a turned hem: this edge's cut line is mirrored about it.
    MirroredOnNext = 4,
    /// The allowance of this edge ends square at the corner, in a step.
    SteppedOnThis = 5,
    /// The allowance of the next edge ends square at the corner, in a step.
    SteppedOnNext = 6,
    /// Cut off square across, at a distance from the corner: its size, in recloth_piece_from_edges().
    Trimmed = 7,
    /// Rounded by an arc of a radius: its size, in recloth_piece_from_edges().
    Rounded = 8,
}

/// What the drawn line of an edge is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_drawn {
    /// The seam line: the cut line lies outside it by the allowance.
    Seam = 0,
    /// The cut line, as of cloth already cut.
    Cut = 1,
}

/// The line to cut a piece along, as a polygon.
///
/// A piece is a closed ring of edges, lines and arcs, each from its point to the next and the last back
/// to the first, y up. One given clockwise is turned round: the cut line always runs counter-clockwise.
/// Every edge is cut at its own allowance. Where allowances run into each other the line is trimmed, so
/// that it keeps every allowance whole. `cut_line` in Rust says more.
///
/// - `points`: where each edge starts, x and y in turn (mm, -100000 to 100000): 2 * `count` numbers.
/// - `bulges`: for each edge 0 for a line, for an arc the tangent of a quarter of its sweep, positive
///   counter-clockwise (-1000 to 1000); NULL when all are lines.
/// - `allowances`: of each edge (mm, 0 to 1000).
/// - `corners`: of each edge, how its allowance joins that of the next (one of `recloth_corner` without a
///   size); NULL when all are pointed.
/// - `drawn`: of each edge, what it is (one of `recloth_drawn`); NULL when all are seam lines.
/// - `count`: number of edges, 2 to 1000.
/// - `tolerance`: how near arcs are followed (mm, 0.001 to 10).
/// - `out`: receives the corners of the cut line, x and y in turn (mm), the first not repeated.
/// - `room`: how many points `out` holds (2 numbers each). Too few gives RECLOTH_STATUS_ROOM with the
///   number needed in `error->min`; ask with NULL and 0.
/// - `out_count`: receives how many points there are.
/// - `error`: `at` is the index of the edge: `gap` or `edges` where the ring crosses itself or holds no
///   area (RECLOTH_STATUS_OUTLINE), `allowance` where nothing is left of the cut line of an edge.
///
/// # Safety
/// Every list is NULL or valid for its number of items, `out_count` and `error` NULL or valid.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_cut_line(
    points: *const f64,
    bulges: *const f64,
    allowances: *const f64,
    corners: *const i32,
    drawn: *const i32,
    count: usize,
    tolerance: f64,
    out: *mut f64,
    room: usize,
    out_count: *mut usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let edges = edges(
                points,
                bulges,
                allowances,
                corners,
                core::ptr::null(),
                drawn,
                count,
            )?;
            // Checked before it is doubled to a number of numbers.
            Error::check_items("out", room, 0, isize::MAX as usize / 16)?;
            let out = list_to_fill("out", out, 2 * room)?;
            not_null("out_count", out_count)?;
            let piece = Piece::new("", edges)?;
            // A ring turned round has its edges in the opposite order; their names are as given.
            let given = |error: Error| {
                let edge = error.at().and_then(|at| piece.edges().get(at as usize));
                let index = edge.and_then(|edge| edge.name.parse().ok());
                index.map_or(error, |index| error.at_index(index))
            };
            let line = piece.cut_line(tolerance).map_err(given)?.flatten(tolerance);
            Error::check_room("out", room, line.len())?;
            for (index, corner) in line.iter().enumerate() {
                out[2 * index] = corner.x;
                out[2 * index + 1] = corner.y;
            }
            out_count.write(line.len());
            Ok(())
        })
    }
}

/// Lines and arcs from point to point, each edge named by its index.
///
/// # Safety
/// Every list is NULL or valid for its number of items.
pub(crate) unsafe fn edges(
    points: *const f64,
    bulges: *const f64,
    allowances: *const f64,
    corners: *const i32,
    sizes: *const f64,
    drawn: *const i32,
    count: usize,
) -> Result<Vec<Edge>, Error> {
    Error::check_items("points", count, 2, 1000)?;
    // SAFETY: the caller's promise.
    let (points, bulges, allowances, corners, sizes, drawn) = unsafe {
        (
            list("points", points, 2 * count)?,
            optional("bulges", bulges, count)?,
            list("allowances", allowances, count)?,
            optional("corners", corners, count)?,
            optional("sizes", sizes, count)?,
            optional("drawn", drawn, count)?,
        )
    };
    let point = |index: usize| {
        let index = index % count;
        (points[2 * index], points[2 * index + 1])
    };
    let mut edges = Vec::with_capacity(count);
    for index in 0..count {
        let at = |error: Error| error.at_index(index);
        let bulge = bulges.map_or(0.0, |bulges| bulges[index]);
        edges.push(Edge {
            name: index.to_string(),
            curve: Curve::arc(point(index), point(index + 1), bulge),
            role: Role::Seam,
            allowance: allowances[index],
            drawn: read_drawn(drawn.map_or(0, |drawn| drawn[index])).map_err(at)?,
            corner: read_corner(
                corners.map_or(0, |corners| corners[index]),
                sizes.map(|sizes| sizes[index]),
            )
            .map_err(at)?,
            notches: Vec::new(),
        });
    }
    Ok(edges)
}

/// A list that may be left out.
///
/// # Safety
/// As of `list`.
unsafe fn optional<'a, T>(
    argument: &'static str,
    pointer: *const T,
    count: usize,
) -> Result<Option<&'a [T]>, Error> {
    if pointer.is_null() {
        return Ok(None);
    }
    // SAFETY: the caller's promise.
    unsafe { list(argument, pointer, count) }.map(Some)
}

fn read_corner(value: i32, size: Option<f64>) -> Result<Corner, Error> {
    Ok(match (value, size) {
        (0, Some(limit)) if limit != 0.0 => Corner::Pointed { limit },
        (7, Some(distance)) => Corner::Trimmed { distance },
        (8, Some(radius)) => Corner::Rounded { radius },
        _ => return plain_corner(value),
    })
}

/// A corner that needs no size.
fn plain_corner(value: i32) -> Result<Corner, Error> {
    Ok(match value {
        0 => Corner::default(),
        1 => Corner::SquaredToThis,
        2 => Corner::SquaredToNext,
        3 => Corner::MirroredOnThis,
        4 => Corner::MirroredOnNext,
        5 => Corner::SteppedOnThis,
        6 => Corner::SteppedOnNext,
        other => return Err(bad_choice("corners", other)),
    })
}

fn read_drawn(value: i32) -> Result<Drawn, Error> {
    match value {
        0 => Ok(Drawn::Seam),
        1 => Ok(Drawn::Cut),
        other => Err(bad_choice("drawn", other)),
    }
}
