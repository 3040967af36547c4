//! Panels measured by tape: corners, area, what is usable, and the rectangles in it.

#[cfg(feature = "alloc")]
mod clearance;
#[cfg(feature = "alloc")]
mod path;
#[cfg(feature = "alloc")]
mod path_data;
#[cfg(feature = "alloc")]
mod rectangle;
#[cfg(feature = "alloc")]
mod repeat;
#[cfg(feature = "alloc")]
mod ring;
#[cfg(feature = "alloc")]
mod shape;
#[cfg(feature = "alloc")]
mod taken;
#[cfg(feature = "alloc")]
mod usable;
#[cfg(feature = "alloc")]
mod window;

#[cfg(feature = "alloc")]
pub use path::{Inner, Scale};
#[cfg(feature = "alloc")]
pub use rectangle::{PanelRectangle, largest_rectangle, tallest_rectangle};
#[cfg(feature = "alloc")]
pub use repeat::Repeat;
#[cfg(feature = "alloc")]
pub use shape::{Faces, Flaw, Panel, SEAM_ALLOWANCE};
#[cfg(feature = "alloc")]
pub use taken::{CornerReading, Spare, SpareReading, Taken};
#[cfg(feature = "alloc")]
pub use usable::{UsablePanel, UsablePart, usable_panel};

use crate::hypotenuse::hypotenuse;
use crate::{
    Error,
    doubt::{SPARE_MISFIT, TRIANGLE_FLAT, TRIANGLE_TALL},
    dust::{above, past, short_of},
};

/// A point measured by tape from both ends of a base, and how sure it is.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Trilaterate {
    /// From the start along the base, negative behind the start (mm).
    pub along: f64,
    /// Square to the base (mm).
    pub across: f64,
    /// How far along the base the point moves at worst, for each mm that both readings are off (1).
    pub along_per_mm: f64,
    /// How far across the base the point moves at worst, for each mm that both readings are off (1).
    pub across_per_mm: f64,
    /// `TRIANGLE_FLAT` when `across_per_mm` passes 5, `TRIANGLE_TALL` when `along_per_mm` does (bits).
    pub doubts: u64,
}

/// A panel of corners measured by tape.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PanelByTriangles {
    /// Area within the corners (mm2).
    pub area: f64,
    /// Way round the corners (mm).
    pub perimeter: f64,
    /// Largest misfit of a spare reading, without its sign (mm).
    pub largest_misfit: f64,
    /// The corner whose own triangle holds it least (count).
    pub weakest_corner: u32,
    /// How far that corner moves at worst along or across its base, for each mm that its readings are off (1).
    pub weakest_per_mm: f64,
    /// `TRIANGLE_FLAT` and `TRIANGLE_TALL` of any corner, `SPARE_MISFIT` when a spare reading misses by over 0.5 % (bits).
    pub doubts: u64,
}

/// Most corners of a panel: what a microcontroller's stack holds with ease.
const CORNERS: usize = 64;

/// A point measured by tape from both ends of a base.
///
/// `along = (from_start² - from_end² + base²) / 2 base`, `across = √(from_start² - along²)`. An error of 1 mm in both
/// readings moves the point by at most `along_per_mm` and `across_per_mm`; that of the base is not counted. Choose bases
/// that make both small: a point about half as far off as the base is long.
///
/// | argument     | unit | range   | default | meaning                             |
/// |--------------|------|---------|---------|-------------------------------------|
/// | `base`       | mm   | 1..=1e5 | -       | between the two known points        |
/// | `from_start` | mm   | 1..=1e5 | -       | reading from the start of the base  |
/// | `from_end`   | mm   | 1..=1e5 | -       | reading from the end of the base    |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `from_end`, with the readings between which the
/// three make a triangle.
///
/// # Source
/// Law of cosines; the height by W. Kahan, *Miscalculating Area and Angles of a Needle-like Triangle* (2014), which keeps
/// its digits in flat triangles. Doubt over 5: common practice of survey, no source.
///
/// # Examples
/// ```
/// use recloth::panel::trilaterate;
/// let corner = trilaterate(500.0, 300.0, 400.0)?;
/// assert_eq!((corner.along, corner.across), (180.0, 240.0));
/// assert_eq!((corner.along_per_mm, corner.across_per_mm), (1.4, 1.4));
/// let error = trilaterate(500.0, 300.0, 190.0).unwrap_err();
/// assert_eq!(error.to_string(), "from_end = 190 leaves no solution: it must be more than 200 and less than 800");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn trilaterate(base: f64, from_start: f64, from_end: f64) -> Result<Trilaterate, Error> {
    let base = Error::check("base", base, 1.0, 1e5)?;
    let from_start = Error::check("from_start", from_start, 1.0, 1e5)?;
    let from_end = Error::check("from_end", from_end, 1.0, 1e5)?;
    apex(base, from_start, from_end)
}

/// Corners and area of a panel measured by tape in triangles, with its spare readings checked.
///
/// Number the corners around the panel, from 0, in either direction; corner 1 is `base` from corner 0. Every further
/// corner, in order, is read from two corners before it, `starts` and `ends`, and lies to the left (0) or right (1) as
/// seen from the start towards the end. Any other distance between two corners is a spare reading: at least one, the
/// other diagonal, tells a misread tape, and cloth that lay off grain.
///
/// `along` and `across` get a place for each corner: corner 0 at 0, 0 and corner 1 at `base`, 0; left is positive across.
/// `misfits` gets a length for each spare reading: as the corners have it, less the reading.
///
/// | argument         | unit  | range                       | default | meaning                                    |
/// |------------------|-------|-----------------------------|---------|--------------------------------------------|
/// | `base`           | mm    | 1..=1e5                     | -       | from corner 0 to corner 1                  |
/// | `starts`         | count | 0..=63 each, 1..=62 items   | -       | corner the first reading is from           |
/// | `ends`           | count | 0..=63 each, as starts      | -       | corner the second reading is from          |
/// | `from_start`     | mm    | 1..=1e5 each, as starts     | -       | first reading of each further corner       |
/// | `from_end`       | mm    | 1..=1e5 each, as starts     | -       | second reading of each further corner      |
/// | `sides`          | count | 0..=1 each, as starts       | -       | 0 left, 1 right, seen from start to end    |
/// | `spare_starts`   | count | 0..=63 each, 0..=200 items  | -       | one corner of each spare reading           |
/// | `spare_ends`     | count | 0..=63 each, as spare_starts | -      | the other corner                           |
/// | `spare_readings` | mm    | 1..=1e5 each, as spare_starts | -     | distance between them                      |
/// | `along`          | mm    | out, as starts + 2          | -       | each corner along the base                 |
/// | `across`         | mm    | out, as starts + 2          | -       | each corner square to it                   |
/// | `misfits`        | mm    | out, as spare_starts        | -       | what each spare reading misses             |
///
/// # Errors
/// `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `starts` or `ends`: not a corner
/// before this one, twice the same, or two in one place; `from_end`: no triangle, with the readings that make one;
/// `sides`: the way round the corners crosses itself, most likely at this one; `spare_starts` or `spare_ends`: no such
/// corner, or twice the same.
///
/// # Source
/// Triangles as in [`trilaterate`]; area by the shoelace formula (Gauss). Spare readings to 0.5 %: common practice, no
/// source.
///
/// # Examples
/// ```
/// use recloth::panel::panel_by_triangles;
/// // A rectangle of 400 by 300, both diagonals 500; the side between corners 2 and 3 is spare.
/// let (mut along, mut across, mut misfits) = ([0.0; 4], [0.0; 4], [0.0; 1]);
/// let mut panel = |from_start: &[f64]| {
///     panel_by_triangles(
///         400.0, &[0, 0], &[1, 1], from_start, &[300.0, 500.0], &[0, 0],
///         &[2], &[3], &[401.0], &mut along, &mut across, &mut misfits,
///     )
/// };
/// assert_eq!(panel(&[1000.0, 300.0]).unwrap_err().argument(), "from_end");
/// assert_eq!(panel(&[500.0, 300.0])?.area, 120_000.0);
/// assert_eq!((along, across), ([0.0, 400.0, 400.0, 0.0], [0.0, 0.0, 300.0, 300.0]));
/// assert_eq!(misfits, [-1.0]);
/// # Ok::<(), recloth::Error>(())
/// ```
// Flat lists, for C and spreadsheets have no better.
#[allow(clippy::too_many_arguments)]
#[inline]
pub fn panel_by_triangles(
    base: f64,
    starts: &[u32],
    ends: &[u32],
    from_start: &[f64],
    from_end: &[f64],
    sides: &[u32],
    spare_starts: &[u32],
    spare_ends: &[u32],
    spare_readings: &[f64],
    along: &mut [f64],
    across: &mut [f64],
    misfits: &mut [f64],
) -> Result<PanelByTriangles, Error> {
    let last = CORNERS as u32 - 1;
    let base = Error::check("base", base, 1.0, 1e5)?;
    let starts = Error::check_count_list("starts", starts, 0, last, (1, CORNERS - 2))?;
    let as_starts = (starts.len(), starts.len());
    let ends = Error::check_count_list("ends", ends, 0, last, as_starts)?;
    let from_start = Error::check_list("from_start", from_start, 1.0, 1e5, as_starts)?;
    let from_end = Error::check_list("from_end", from_end, 1.0, 1e5, as_starts)?;
    let sides = Error::check_count_list("sides", sides, 0, 1, as_starts)?;
    let spare_starts = Error::check_count_list("spare_starts", spare_starts, 0, last, (0, 200))?;
    let as_spares = (spare_starts.len(), spare_starts.len());
    let spare_ends = Error::check_count_list("spare_ends", spare_ends, 0, last, as_spares)?;
    let spare_readings = Error::check_list("spare_readings", spare_readings, 1.0, 1e5, as_spares)?;
    let count = starts.len() + 2;
    Error::check_room("along", along.len(), count)?;
    Error::check_room("across", across.len(), count)?;
    Error::check_room("misfits", misfits.len(), spare_starts.len())?;

    let mut corners = [(0.0, 0.0); CORNERS];
    corners[1].0 = base;
    let mut doubts = 0;
    let (mut weakest_corner, mut weakest_per_mm) = (2, 0.0);
    for (index, corner) in (2..count).enumerate() {
        let start = known_corner("starts", starts[index], corner, index)?;
        let end = known_corner("ends", ends[index], corner, index)?;
        let (a, b) = (corners[start], corners[end]);
        let length = distance(a, b);
        if length == 0.0 {
            let end = f64::from(ends[index]);
            return Err(Error::no_solution("ends", end, f64::NAN, f64::NAN).at_index(index));
        }
        let found = apex(length, from_start[index], from_end[index])
            .map_err(|error| error.at_index(index))?;
        let left = if sides[index] == 0 {
            found.across
        } else {
            -found.across
        };
        let (ux, uy) = ((b.0 - a.0) / length, (b.1 - a.1) / length);
        corners[corner] = (
            a.0 + ux * found.along - uy * left,
            a.1 + uy * found.along + ux * left,
        );
        doubts |= found.doubts;
        let per_mm = found.along_per_mm.max(found.across_per_mm);
        if per_mm > weakest_per_mm {
            (weakest_corner, weakest_per_mm) = (corner as u32, per_mm);
        }
    }
    let ring = &corners[..count];
    if let Some(corner) = crossing(ring) {
        let side = f64::from(sides[corner - 2]);
        return Err(Error::no_solution("sides", side, f64::NAN, f64::NAN).at_index(corner - 2));
    }
    for (index, (&start, &end)) in spare_starts.iter().zip(spare_ends).enumerate() {
        known_corner("spare_starts", start, count, index)?;
        known_corner("spare_ends", end, count, index)?;
        if start == end {
            let end = f64::from(end);
            return Err(Error::no_solution("spare_ends", end, f64::NAN, f64::NAN).at_index(index));
        }
    }

    // Nothing can go wrong from here on: write.
    for (index, corner) in ring.iter().enumerate() {
        (along[index], across[index]) = *corner;
    }
    let mut largest_misfit: f64 = 0.0;
    for (index, reading) in spare_readings.iter().enumerate() {
        let (start, end) = (spare_starts[index] as usize, spare_ends[index] as usize);
        let misfit = distance(ring[start], ring[end]) - reading;
        misfits[index] = misfit;
        largest_misfit = largest_misfit.max(misfit.abs());
        if misfit.abs() > 0.005 * reading {
            doubts |= SPARE_MISFIT;
        }
    }
    let (mut twice_area, mut perimeter) = (0.0, 0.0);
    for (a, b) in edges(ring) {
        twice_area += a.0 * b.1 - b.0 * a.1;
        perimeter += distance(a, b);
    }
    Ok(PanelByTriangles {
        area: twice_area.abs() / 2.0,
        perimeter,
        largest_misfit,
        weakest_corner,
        weakest_per_mm,
        doubts,
    })
}

/// The third corner of a triangle of these sides.
#[inline]
fn apex(base: f64, from_start: f64, from_end: f64) -> Result<Trilaterate, Error> {
    // Kahan's product wants the sides in order of length, and its brackets as they are.
    let mut sides = [base, from_start, from_end];
    sides.sort_unstable_by(f64::total_cmp);
    let [short, middle, long] = sides;
    let product = (long + (middle + short))
        * (short - (long - middle))
        * (short + (long - middle))
        * (long + (middle - short));
    let across = libm::sqrt(product) / (2.0 * base);
    // Flat, or no triangle at all: the product is zero or its root is NaN.
    if across.is_nan() || across <= 0.0 {
        let (min, max) = (past((base - from_start).abs()), short_of(base + from_start));
        return Err(Error::no_solution("from_end", from_end, min, max));
    }
    let along = (base + (from_start - from_end) * ((from_start + from_end) / base)) / 2.0;
    let along_per_mm = (from_start + from_end) / base;
    let across_per_mm =
        (from_start * (base - along).abs() + from_end * along.abs()) / (base * across);
    Ok(Trilaterate {
        along,
        across,
        along_per_mm,
        across_per_mm,
        doubts: if above(across_per_mm, 5.0) {
            TRIANGLE_FLAT
        } else {
            0
        } | if above(along_per_mm, 5.0) {
            TRIANGLE_TALL
        } else {
            0
        },
    })
}

/// The index of a corner that must come before corner `below`; `index` is its place in the list.
#[inline]
fn known_corner(
    argument: &'static str,
    corner: u32,
    below: usize,
    index: usize,
) -> Result<usize, Error> {
    let known = corner as usize;
    if known < below {
        Ok(known)
    } else {
        let last = below as f64 - 1.0;
        Err(Error::no_solution(argument, f64::from(corner), 0.0, last).at_index(index))
    }
}

type Point = (f64, f64);

#[inline]
fn distance(a: Point, b: Point) -> f64 {
    hypotenuse(b.0 - a.0, b.1 - a.1)
}

/// The edges of a ring, the one back to its first corner last.
#[inline]
fn edges(ring: &[Point]) -> impl Iterator<Item = (Point, Point)> + Clone + '_ {
    let next = ring.iter().cycle().skip(1);
    ring.iter().copied().zip(next.copied())
}

/// The first corner, 2 or later, at which the ring has crossed itself.
#[inline]
fn crossing(ring: &[Point]) -> Option<usize> {
    for (index, (a, b)) in edges(ring).enumerate() {
        for (c, d) in edges(ring).take(index) {
            if splits(a, b, c, d) && splits(c, d, a, b) {
                return Some((index + 1).min(ring.len() - 1));
            }
        }
    }
    None
}

/// Whether `c` and `d` lie on different sides of the line through `a` and `b`, neither on it.
#[inline]
fn splits(a: Point, b: Point, c: Point, d: Point) -> bool {
    let side = |p: Point| (b.0 - a.0) * (p.1 - a.1) - (b.1 - a.1) * (p.0 - a.0);
    let (c, d) = (side(c), side(d));
    (c < 0.0 && d > 0.0) || (c > 0.0 && d < 0.0)
}

#[cfg(test)]
mod tests;
