//! Panels of cloth: measured in each way, cut down to what is usable.

use core::ffi::c_char;

use kurbo::Point;
use recloth::{
    Error,
    panel::{
        CornerReading, Faces, Flaw, Inner, Panel, PanelRectangle, Repeat, Scale, SpareReading,
    },
};

use super::handle::{self, answer, borrow, free, hand_out_all, points, points_of, read_json};
use crate::{
    boundary::{boundary, list, list_to_fill, recloth_error_t, text},
    generated::recloth_status,
};

/// A panel of cloth as it lies right side up on the table, with its holes and flaws. It never changes, so
/// any number of threads may use it at once; free it with recloth_panel_free().
pub struct recloth_panel {
    panel: Panel,
}

/// What a panel is, in numbers.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_panel_facts_t {
    /// Number of points of its outline.
    pub points: usize,
    /// Number of holes.
    pub holes: usize,
    /// Number of flaws.
    pub flaws: usize,
    /// Number of spare readings.
    pub spares: usize,
    /// How many of its sides may show, 1 or 2.
    pub faces: u32,
    /// 1 where it has a nap, pile or one-way print, else 0.
    pub nap: u32,
    /// Area of cloth, holes taken off, flaws included (mm2).
    pub area_mm2: f64,
    /// Least x (mm).
    pub left: f64,
    /// Least y (mm).
    pub bottom: f64,
    /// Largest x (mm).
    pub right: f64,
    /// Largest y (mm).
    pub top: f64,
    /// Direction of the lengthwise grain, counter-clockwise from the x axis (deg).
    pub grain_deg: f64,
    /// Largest misfit of a spare reading, without its sign (mm); NaN where there is none.
    pub largest_misfit: f64,
    /// Doubts about the measuring (bits); recloth_doubt_text() puts each into words.
    pub doubts: u64,
}

/// A rectangle on grain in a panel.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct recloth_rectangle_t {
    /// The corner from which the width runs across the grain, and the height along it to its left (mm).
    pub x: f64,
    /// The same corner (mm).
    pub y: f64,
    /// Width across the grain (mm).
    pub width: f64,
    /// Height along the grain (mm).
    pub height: f64,
    /// Direction of the grain, counter-clockwise from the x axis (deg).
    pub grain_deg: f64,
    /// Area (mm2).
    pub area_mm2: f64,
}

/// Hands out a panel that is made.
///
/// # Safety
/// `out` and `error` are NULL or valid for writing.
unsafe fn made(
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
    make: impl FnOnce() -> Result<Panel, Error>,
) -> recloth_status {
    // SAFETY: the caller's promise.
    unsafe { handle::made(out, error, || make().map(|panel| recloth_panel { panel })) }
}

/// Hands out a panel made of another.
///
/// # Safety
/// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
unsafe fn changed(
    panel: *const recloth_panel,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
    change: impl FnOnce(Panel) -> Result<Panel, Error>,
) -> recloth_status {
    // SAFETY: the caller's promise.
    unsafe {
        handle::changed("panel", panel, out, error, |panel| {
            change(panel.panel.clone()).map(|panel| recloth_panel { panel })
        })
    }
}

/// A panel by the corners of its outline.
///
/// - `name`: what the maker calls it, UTF-8.
/// - `outline`: x and y of each corner in turn (mm, -100000 to 100000), either way round.
/// - `outline_count`: number of corners, 3 to 5000.
/// - `out`: receives the panel; free it with recloth_panel_free().
///
/// # Safety
/// `name` is NULL or closed by a NUL; `outline` NULL or valid for twice its count; `out` and `error` NULL or
/// valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_new(
    name: *const c_char,
    outline: *const f64,
    outline_count: usize,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        made(out, error, || {
            Panel::new(
                text("name", name)?,
                points("outline", outline, outline_count)?,
            )
        })
    }
}

/// A panel measured by tape in triangles: corner 1 lies `base` from corner 0, straight along x; each further
/// corner, in order round the panel, is found by two readings from corners before it.
///
/// - `name`: what the maker calls it, UTF-8.
/// - `base`, `starts`, `ends`, `from_start`, `from_end`, `sides`: as of recloth_panel_by_triangles(), each
///   list of `count` items.
/// - `out`: receives the panel; check it by recloth_panel_with_spares(), free it with
///   recloth_panel_free().
///
/// # Safety
/// `name` is NULL or closed by a NUL; each list NULL or valid for `count` items; `out` and `error` NULL or
/// valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_from_triangles(
    name: *const c_char,
    base: f64,
    starts: *const u32,
    ends: *const u32,
    from_start: *const f64,
    from_end: *const f64,
    sides: *const u32,
    count: usize,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        made(out, error, || {
            let name = text("name", name)?;
            let (starts, ends) = (list("starts", starts, count)?, list("ends", ends, count)?);
            let from_start = list("from_start", from_start, count)?;
            let from_end = list("from_end", from_end, count)?;
            let sides = Error::check_count_list(
                "sides",
                list("sides", sides, count)?,
                0,
                1,
                (0, usize::MAX),
            )?;
            let corner = |index: usize| CornerReading {
                start: starts[index],
                end: ends[index],
                from_start: from_start[index],
                from_end: from_end[index],
                right: sides[index] == 1,
            };
            let corners: Vec<CornerReading> = (0..count).map(corner).collect();
            Panel::by_triangles(name, base, &corners)
        })
    }
}

/// A panel measured square from a line drawn on the straight grain, which is the y axis: corners are those
/// of the right edge upward, then those of the left edge downward.
///
/// - `name`: what the maker calls it, UTF-8.
/// - `stations`, `left`, `right`: as of recloth_panel_by_offsets(), each list of `count` items.
/// - `out`: receives the panel; free it with recloth_panel_free().
///
/// # Safety
/// As of recloth_panel_from_triangles().
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_from_offsets(
    name: *const c_char,
    stations: *const f64,
    left: *const f64,
    right: *const f64,
    count: usize,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        made(out, error, || {
            Panel::by_offsets(
                text("name", name)?,
                list("stations", stations, count)?,
                list("left", left, count)?,
                list("right", right, count)?,
            )
        })
    }
}

/// A panel photographed flat beside a reference of four known points. The bow that a lens gives straight
/// lines is not taken out, which its doubts say.
///
/// - `name`: what the maker calls it, UTF-8.
/// - `picture`: x and y of the four points in the picture: 8 numbers.
/// - `truth`: x and y of the same points as they truly lie, in the same order (mm): 8 numbers.
/// - `outline`: x and y of each corner of the panel in the picture.
/// - `outline_count`: number of corners, 3 to 1000.
/// - `out`: receives the panel; free it with recloth_panel_free().
///
/// # Safety
/// `name` is NULL or closed by a NUL; `picture` and `truth` NULL or valid for 8 numbers, `outline` NULL or
/// valid for twice its count; `out` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_from_photo(
    name: *const c_char,
    picture: *const f64,
    truth: *const f64,
    outline: *const f64,
    outline_count: usize,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        made(out, error, || {
            let name = text("name", name)?;
            let four = |argument: &'static str, pointer| -> Result<[Point; 4], Error> {
                let four = points(argument, pointer, 4)?;
                Ok([four[0], four[1], four[2], four[3]])
            };
            let (picture, truth) = (four("picture", picture)?, four("truth", truth)?);
            let outline = points("outline", outline, outline_count)?;
            Panel::from_photo(name, &picture, &truth, &outline)
        })
    }
}

/// A panel from the path of an SVG drawing (the attribute `d`): its first subpath is the outline, the
/// others are holes or flaws. y runs down in a drawing, and up in the panel.
///
/// - `name`: what the maker calls it, UTF-8.
/// - `path`: the path, UTF-8.
/// - `mm_per_unit`: what one unit of the drawing stands for (mm, 0.0001 to 10000).
/// - `margin`: NaN where later subpaths are holes; else they are flaws with this margin (mm, 0 to 10000), of
///   one point a spot, of two a slit.
/// - `accuracy`: how near curves are followed (mm, 0.001 to 10).
/// - `out`: receives the panel; free it with recloth_panel_free().
/// - `error`: RECLOTH_STATUS_SYNTAX naming `path`, with the character, from 0, in `at`.
///
/// # Safety
/// `name` and `path` are NULL or closed by a NUL; `out` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_from_svg_path(
    name: *const c_char,
    path: *const c_char,
    mm_per_unit: f64,
    margin: f64,
    accuracy: f64,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        made(out, error, || {
            let inner = if margin.is_nan() {
                Inner::Holes
            } else {
                Inner::Flaws { margin }
            };
            let scale = Scale::MmPerUnit(mm_per_unit);
            Panel::from_svg_path(
                text("name", name)?,
                text("path", path)?,
                scale,
                inner,
                accuracy,
            )
        })
    }
}

/// The panel that recloth_panel_to_json() wrote, or that was written by hand in the same words.
///
/// - `json`, `message`, `error`: as of recloth_piece_from_json().
/// - `out`: receives the panel; free it with recloth_panel_free().
///
/// # Safety
/// As of recloth_piece_from_json().
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_from_json(
    json: *const c_char,
    out: *mut *mut recloth_panel,
    message: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe { made(out, error, || read_json(json, message)) }
}

/// A panel as JSON, every number to the last bit.
///
/// - `out`: receives the text, closed by a NUL; free it with recloth_text_free().
///
/// # Safety
/// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_to_json(
    panel: *const recloth_panel,
    out: *mut *mut c_char,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe { handle::json_of("panel", panel, out, error, |panel| &panel.panel) }
}

/// Frees a panel; NULL is left alone. Each is freed once: as with free(), a second time is undefined.
///
/// # Safety
/// `panel` is NULL, or was handed out by this library and is not freed yet.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_free(panel: *mut recloth_panel) {
    // SAFETY: the caller's promise above.
    unsafe { free(panel) }
}

/// The panel with one more hole.
///
/// - `outline`: x and y of each corner of the hole in turn (mm), `outline_count` corners, 3 to 5000.
///
/// # Safety
/// `panel` is NULL or live; `outline` NULL or valid for twice its count; `out` and `error` NULL or valid for
/// writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_with_hole(
    panel: *const recloth_panel,
    outline: *const f64,
    outline_count: usize,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(panel, out, error, |panel| {
            let mut holes = panel.holes().to_vec();
            holes.push(points("outline", outline, outline_count)?);
            panel.with_holes(holes)
        })
    }
}

/// The panel with one more flaw: a stain, worn place, slit, or row of needle holes.
///
/// - `what`: what it is, UTF-8; NULL where it has no name.
/// - `outline`: x and y of each point in turn (mm): one is a spot, two are a slit, 3 to 5000 an area.
/// - `margin`: how far every piece keeps from it (mm, 0 to 10000).
///
/// # Safety
/// `panel` is NULL or live; `what` NULL or closed by a NUL; `outline` NULL or valid for twice its count;
/// `out` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_with_flaw(
    panel: *const recloth_panel,
    what: *const c_char,
    outline: *const f64,
    outline_count: usize,
    margin: f64,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(panel, out, error, |panel| {
            let mut flaw = Flaw::new(points("outline", outline, outline_count)?, margin);
            if !what.is_null() {
                flaw = flaw.called(text("what", what)?);
            }
            let mut flaws = panel.flaws().to_vec();
            flaws.push(flaw);
            panel.with_flaws(flaws)
        })
    }
}

/// The panel of this cloth.
///
/// - `grain_deg`: direction of the lengthwise grain, counter-clockwise from the x axis (deg, -360 to 360); with
///   a nap, the way it runs.
/// - `faces`: how many of its sides may show, 1 or 2.
/// - `nap`: 1 where every piece must point the same way, else 0.
///
/// # Safety
/// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_with_cloth(
    panel: *const recloth_panel,
    grain_deg: f64,
    faces: u32,
    nap: u32,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(panel, out, error, |panel| {
            let panel = panel.with_grain_deg(grain_deg)?;
            let faces = match Error::check_count("faces", faces, 1, 2)? {
                1 => Faces::One,
                _ => Faces::Two,
            };
            let nap = Error::check_count("nap", nap, 0, 1)? == 1;
            Ok(panel.with_faces(faces).with_nap(nap))
        })
    }
}

/// The panel with a stripe, check or print that repeats, for parts with points to match; both lengths 0 take it away.
///
/// - `along`, `across`: length of the repeat along the lengthwise grain and across it (mm, 1 to 2000; 0 for none).
/// - `from_x`, `from_y`: a point of the cloth where a repeat begins (mm, -1e5 to 1e5).
///
/// # Safety
/// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_with_repeat(
    panel: *const recloth_panel,
    along: f64,
    across: f64,
    from_x: f64,
    from_y: f64,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(panel, out, error, |panel| {
            let repeat = Repeat::new(along, across).beginning_at((from_x, from_y));
            panel.with_repeat((along != 0.0 || across != 0.0).then_some(repeat))
        })
    }
}

/// The panel with its lengthwise grain from one corner of the outline towards another.
///
/// - `from`, `to`: the corners, by index.
///
/// # Safety
/// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_with_grain_between(
    panel: *const recloth_panel,
    from: usize,
    to: usize,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(panel, out, error, |panel| {
            panel.with_grain_between(from, to)
        })
    }
}

/// The panel with these spare readings, which move no corner but tell by what they miss.
///
/// - `from`, `to`: the corners each is read between, by index.
/// - `readings`: the distances as read (mm, 1 to 100000).
/// - `count`: how many there are, up to 1000.
/// - `misfits`: receives for each the distance as the corners have it, less the reading (mm): `count`
///   numbers; NULL when they are not wanted.
///
/// # Safety
/// `panel` is NULL or live; the lists NULL or valid for `count` items; `out` and `error` NULL or valid for
/// writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_with_spares(
    panel: *const recloth_panel,
    from: *const usize,
    to: *const usize,
    readings: *const f64,
    count: usize,
    misfits: *mut f64,
    out: *mut *mut recloth_panel,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        changed(panel, out, error, |panel| {
            let (from, to) = (list("from", from, count)?, list("to", to, count)?);
            let readings = list("readings", readings, count)?;
            let spare = |index: usize| SpareReading {
                from: from[index],
                to: to[index],
                reading: readings[index],
            };
            let panel = panel.with_spares(&(0..count).map(spare).collect::<Vec<_>>())?;
            if !misfits.is_null() {
                let misfits = list_to_fill("misfits", misfits, count)?;
                for (place, spare) in misfits.iter_mut().zip(panel.spares()) {
                    *place = spare.misfit;
                }
            }
            Ok(panel)
        })
    }
}

/// What a panel is, in numbers.
///
/// # Safety
/// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_facts(
    panel: *const recloth_panel,
    out: *mut recloth_panel_facts_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        answer("panel", panel, out, error, |panel| {
            let panel = &panel.panel;
            let bounds = panel.bounds();
            Ok(recloth_panel_facts_t {
                points: panel.outline().len(),
                holes: panel.holes().len(),
                flaws: panel.flaws().len(),
                spares: panel.spares().len(),
                faces: match panel.faces() {
                    Faces::One => 1,
                    Faces::Two => 2,
                },
                nap: u32::from(panel.nap()),
                area_mm2: panel.area_mm2(),
                left: bounds.x0,
                bottom: bounds.y0,
                right: bounds.x1,
                top: bounds.y1,
                grain_deg: panel.grain_deg(),
                largest_misfit: panel.largest_misfit().unwrap_or(f64::NAN),
                doubts: panel.doubts(),
            })
        })
    }
}

/// The outline of a panel.
///
/// - `out`: receives its corners, x and y in turn (mm), as given.
/// - `room`, `out_count`: as of recloth_piece_cut_line().
///
/// # Safety
/// `panel` is NULL or live; `out` NULL or valid for twice `room` numbers; `out_count` and `error` NULL or
/// valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_outline(
    panel: *const recloth_panel,
    out: *mut f64,
    room: usize,
    out_count: *mut usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        points_of("panel", panel, (out, room, out_count), error, |panel| {
            Ok(panel.panel.outline())
        })
    }
}

/// A hole of a panel.
///
/// - `hole`: its index.
/// - `out`, `room`, `out_count`: as of recloth_panel_outline().
///
/// # Safety
/// As of recloth_panel_outline().
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_hole(
    panel: *const recloth_panel,
    hole: usize,
    out: *mut f64,
    room: usize,
    out_count: *mut usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        points_of("panel", panel, (out, room, out_count), error, |panel| {
            let holes = panel.panel.holes();
            let none = Error::no_solution("hole", hole as f64, 0.0, holes.len() as f64 - 1.0);
            holes.get(hole).map(Vec::as_slice).ok_or(none)
        })
    }
}

/// What can be cut from: a panel less a strip along each edge, its holes, and its flaws with their margins.
///
/// - `losses`: lost along the edge from each corner of the outline to the next (mm, 0 to 1000).
/// - `losses_count`: as many as the outline has corners.
/// - `accuracy`: most that rounding may cost at any place (mm, 0.01 to 10).
/// - `out`: receives the parts it falls into, the largest first; free each with recloth_panel_free().
/// - `room`: how many `out` holds. Too few gives RECLOTH_STATUS_ROOM with the number needed in
///   `error->min`, and no part is handed out; ask with NULL and 0.
/// - `out_count`: receives how many there are.
///
/// # Safety
/// `panel` is NULL or live; `losses` NULL or valid for its count; `out` NULL or valid for `room` handles;
/// `out_count` and `error` NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_usable(
    panel: *const recloth_panel,
    losses: *const f64,
    losses_count: usize,
    accuracy: f64,
    out: *mut *mut recloth_panel,
    room: usize,
    out_count: *mut usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        boundary(error, || {
            let panel = &borrow("panel", panel)?.panel;
            let losses = list("losses", losses, losses_count)?;
            let parts = panel.usable(losses, accuracy)?;
            let parts = parts.into_iter().map(|panel| recloth_panel { panel });
            hand_out_all(parts.collect(), out, room, out_count)
        })
    }
}

fn rectangle(found: PanelRectangle) -> recloth_rectangle_t {
    recloth_rectangle_t {
        x: found.corner.x,
        y: found.corner.y,
        width: found.width,
        height: found.height,
        grain_deg: found.grain_deg,
        area_mm2: found.area_mm2,
    }
}

/// The largest rectangle, one side on the straight grain, that a panel holds clear of its holes and flaws.
///
/// # Safety
/// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_largest_rectangle(
    panel: *const recloth_panel,
    out: *mut recloth_rectangle_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        answer("panel", panel, out, error, |panel| {
            panel.panel.largest_rectangle().map(rectangle)
        })
    }
}

/// The tallest rectangle of a width across the straight grain that a panel holds clear of its holes and
/// flaws.
///
/// - `width`: allowances included (mm, 0.1 to 200000).
///
/// # Safety
/// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_tallest_rectangle(
    panel: *const recloth_panel,
    width: f64,
    out: *mut recloth_rectangle_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    // SAFETY: the caller's promise above.
    unsafe {
        answer("panel", panel, out, error, |panel| {
            panel.panel.tallest_rectangle(width).map(rectangle)
        })
    }
}
