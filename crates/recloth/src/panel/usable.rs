//! What is left of a panel when its worn edges and its flaws are taken off.

use alloc::{vec, vec::Vec};
use core::f64::consts::{FRAC_PI_2, PI};

use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay::{IntOverlayOptions, Overlay, ShapeType};
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::core::solver::Solver;
use i_overlay::i_float::int::point::IntPoint;
use kurbo::{Point, Vec2};

use super::clearance::{Barrier, too_near};
use super::ring::{self, Place, Ring};
use crate::{Error, ErrorKind};

/// Steps in one mm of the whole-number grid the cutting is done on. A decimal grid, so that lengths written in decimals
/// (and inches down to 1/64) come back as they were written.
const GRID: f64 = 1e6;

/// The first extra distance given to an edge that rounding left short (mm); each later one is four times the last.
const FIRST_EXTRA: f64 = 1e-5;

/// The most points an outline or a flaw may have: the work of a cut grows with their number squared.
pub(super) const MOST_POINTS: usize = 2000;

/// What is left of a panel.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct UsablePanel {
    /// The parts it falls into, the largest first; at least one.
    pub parts: Vec<UsablePart>,
    /// Area of all parts (mm2).
    pub area_mm2: f64,
    /// Share of the panel's area that is kept; all of it is one (1).
    pub share: f64,
}

/// One connected part of a panel.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct UsablePart {
    /// Corners, counter-clockwise (mm).
    pub outline: Vec<Point>,
    /// Corners of each hole, clockwise (mm).
    pub holes: Vec<Vec<Point>>,
    /// Area, the holes taken off (mm2).
    pub area_mm2: f64,
}

/// What is left of a panel: its outline less a strip along each edge and less each flaw with a margin round it.
///
/// | argument    | unit | range                             | default | meaning                                    |
/// |-------------|------|-----------------------------------|---------|--------------------------------------------|
/// | `outline`   | mm   | -1e5..=1e5 each, 3..=2000 points  | -       | corners in order, either way round         |
/// | `losses`    | mm   | 0..=1e3 each, as outline          | -       | lost along the edge from each corner to the next |
/// | `flaws`     | mm   | -1e5..=1e5 each, 0..=1000 flaws of 1..=2000 points | - | a spot (1 point), a tear (2) or a patch (its corners) each |
/// | `margin`    | mm   | 0..=1e3                           | 0       | left round each flaw                       |
/// | `accuracy`  | mm   | 0.01..=10                         | 0.1     | most that rounding may cost at any place   |
///
/// Every point returned is at least the loss from each old edge and the margin from each flaw, measured straight, also
/// across a notch. Turned corners of what is lost are arcs; they are cut as chords on the safe side. All that could be
/// kept is kept, save what is within `accuracy` of what is lost, and slivers of a mean width below twice the accuracy.
/// The cut is made on a grid of 1e-6 mm, then proved on the coordinates returned to 1e-9 mm; where it is short, the
/// strip is widened by a little and the cut made again. A hole may touch the outline or another hole in single points. A
/// corner given twice running is one corner; the loss of the edge of no length between them counts for nothing.
///
/// An outline traced from a picture may have more points than are taken: leave out every point that lies within a quarter of
/// the accuracy of the straight line between those that are kept. The edges between have one loss, the largest of theirs.
///
/// # Errors
/// - `NotFinite`, `OutOfRange`, `Count`, naming the argument and the place in its list.
/// - `Outline`: the outline, or a flaw of three or more points, touches or crosses itself or has no area;
///   or nothing is lost, yet the outline is nowhere wide enough to keep.
/// - `NoSolution` naming `flaws`: this flaw lies wholly outside the panel. Naming `margin`: a spot or a tear has no area
///   of its own and needs a margin of at least the accuracy. Naming `losses` (the largest), `margin` or `flaws`: nothing
///   is left. Naming `accuracy`: the cut could not be proved within it.
///
/// # Source
/// Distance from a segment; working by hand and an independent program in `tests/vectors/usable_panel.csv` and
/// `tests/oracle/panel.py`.
///
/// # Examples
/// A panel 420 by 700 mm that loses 15 mm at each side, 40 mm at the hem and 10 mm at the top:
/// ```
/// use recloth::panel::usable_panel;
/// let outline = [(0.0, 0.0), (420.0, 0.0), (420.0, 700.0), (0.0, 700.0)].map(kurbo::Point::from);
/// let usable = usable_panel(&outline, &[40.0, 15.0, 10.0, 15.0], &[], 0.0, 0.1)?;
/// assert_eq!(usable.area_mm2, 390.0 * 650.0);
/// assert_eq!((usable.share * 1000.0).round(), 862.0);
///
/// let error = usable_panel(&outline, &[40.0, 210.0, 10.0, 210.0], &[], 0.0, 0.1).unwrap_err();
/// assert_eq!((error.kind(), error.argument()), (recloth::ErrorKind::NoSolution, "losses"));
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn usable_panel(
    outline: &[Point],
    losses: &[f64],
    flaws: &[Vec<Point>],
    margin: f64,
    accuracy: f64,
) -> Result<UsablePanel, Error> {
    let panel = Ring::new("outline", outline, MOST_POINTS, None)?;
    let items = (outline.len(), outline.len());
    let losses = Error::check_list("losses", losses, 0.0, 1e3, items)?;
    Error::check_items("flaws", flaws.len(), 0, 1000)?;
    let away = flaws
        .iter()
        .enumerate()
        .map(|(index, flaw)| Away::new("flaws", index, flaw, margin))
        .collect::<Result<Vec<_>, _>>()?;
    let margin = Error::check("margin", margin, 0.0, 1e3)?;
    let parts = cut_away(&panel, losses, &away, accuracy).map_err(|error| {
        // All have one margin, so it is none of a certain flaw's.
        match error.argument() {
            "margin" => Error::no_solution("margin", margin, error.min(), error.max()),
            _ => error,
        }
    })?;
    let area_mm2: f64 = parts.iter().map(|part| part.area_mm2).sum();
    let share = (area_mm2 / ring::area(&panel.points)).min(1.0);
    Ok(UsablePanel {
        parts,
        area_mm2,
        share,
    })
}

/// What is cut out of a panel: a hole or a flaw, with the margin to keep from it.
pub(super) struct Away {
    /// The list it stands in, and its place there.
    argument: &'static str,
    index: usize,
    /// A spot, a slit, or a patch counter-clockwise.
    points: Vec<Point>,
    margin: f64,
}

impl Away {
    pub(super) fn new(
        argument: &'static str,
        index: usize,
        points: &[Point],
        margin: f64,
    ) -> Result<Away, Error> {
        let points = if points.len() >= 3 {
            Ring::new(argument, points, MOST_POINTS, Some(index))?.points
        } else {
            ring::check_points(argument, points, (1, 2), Some(index))?;
            let mut points = points.to_vec();
            points.dedup();
            points
        };
        Ok(Away {
            argument,
            index,
            points,
            margin,
        })
    }
}

/// The panel less a strip along each edge and less each that is cut away, proved; the largest part first, at least one.
/// Losses and margins are in range.
pub(super) fn cut_away(
    panel: &Ring,
    losses: &[f64],
    away: &[Away],
    accuracy: f64,
) -> Result<Vec<UsablePart>, Error> {
    let accuracy = Error::check("accuracy", accuracy, 0.01, 10.0)?;
    for one in away {
        if !touches(&panel.points, &one.points) {
            let none = Error::no_solution(one.argument, one.index as f64, f64::NAN, f64::NAN);
            return Err(none.at_index(one.index));
        }
        if one.points.len() < 3 && one.margin < accuracy {
            let thin = Error::no_solution("margin", one.margin, accuracy, f64::NAN);
            return Err(thin.at_index(one.index));
        }
    }

    let mut rings = vec![Lost::edges(panel, losses)];
    rings.extend(away.iter().map(Lost::away));
    let mut extra = FIRST_EXTRA;
    while extra < accuracy / 2.0 {
        let parts = cut(&panel.points, &rings, accuracy);
        if parts.is_empty() {
            return Err(nothing_left(losses, away));
        }
        let kept: Vec<Vec<Point>> = parts
            .iter()
            .flat_map(|part| [&part.outline].into_iter().chain(&part.holes))
            .cloned()
            .collect();
        let barriers: Vec<Barrier> = rings
            .iter()
            .flat_map(|ring| ring.barriers.clone())
            .collect();
        let near = too_near(&kept, &barriers, &panel.points);
        if !near.contains(&true) {
            return Ok(parts);
        }
        let all = rings.iter_mut().flat_map(|ring| &mut ring.barriers);
        for (barrier, _) in all.zip(near).filter(|(_, near)| *near) {
            barrier.extra = extra;
        }
        extra *= 4.0;
    }
    Err(Error::no_solution("accuracy", accuracy, f64::NAN, f64::NAN))
}

/// The area of a panel less holes that may overlap, to a rounding of 1e-6 mm (mm2).
pub(super) fn area_less(outline: &[Point], holes: &[Vec<Point>]) -> f64 {
    let holes = holes.iter().map(|hole| {
        let mut points = hole.clone();
        if ring::area(hole) < 0.0 {
            points.reverse();
        }
        Lost {
            barriers: Vec::new(),
            patch: points,
        }
    });
    let parts = cut(outline, &holes.collect::<Vec<_>>(), 0.0);
    parts.iter().map(|part| part.area_mm2).sum()
}

/// Whether a flaw and a panel share a point.
fn touches(panel: &[Point], flaw: &[Point]) -> bool {
    ring::place(panel, flaw[0]) != Place::Outside
        || (flaw.len() > 2 && ring::place(flaw, panel[0]) != Place::Outside)
        || ring::edges(flaw).any(|(a, b)| ring::edges(panel).any(|(c, d)| ring::meet(a, b, c, d)))
}

/// Why nothing is left: the largest loss, else the largest margin, else what is cut away.
fn nothing_left(losses: &[f64], away: &[Away]) -> Error {
    let error = |argument, value| Error::no_solution(argument, value, f64::NAN, f64::NAN);
    let largest = |values: &mut dyn Iterator<Item = f64>| {
        values.enumerate().fold(
            (0, 0.0),
            |best, (index, value)| {
                if value > best.1 { (index, value) } else { best }
            },
        )
    };
    let (edge, loss) = largest(&mut losses.iter().copied());
    let (place, margin) = largest(&mut away.iter().map(|one| one.margin));
    match away.first() {
        _ if loss > 0.0 => error("losses", loss).at_index(edge),
        Some(_) if margin > 0.0 => error("margin", margin).at_index(away[place].index),
        Some(first) => error(first.argument, away.len() as f64),
        // Nothing is lost, yet nothing is wide enough to keep.
        None => Error::new(ErrorKind::Outline, "outline", f64::NAN, f64::NAN, f64::NAN),
    }
}

/// A ring with the kept cloth on its left, and a strip to lose along each edge.
struct Lost {
    barriers: Vec<Barrier>,
    /// Lost whole as well, when the ring is a patch.
    patch: Vec<Point>,
}

impl Lost {
    fn edges(panel: &Ring, losses: &[f64]) -> Lost {
        let sides = ring::edges(&panel.points).zip(&panel.edges);
        let barriers = sides.map(|((from, to), &edge)| Barrier {
            from,
            to,
            clear: losses[edge],
            extra: 0.0,
        });
        Lost {
            barriers: barriers.collect(),
            patch: Vec::new(),
        }
    }

    fn away(away: &Away) -> Lost {
        let sides = ring::edges(&away.points).map(|(to, from)| Barrier {
            from,
            to,
            clear: away.margin,
            extra: 0.0,
        });
        let mut barriers: Vec<Barrier> = sides.collect();
        barriers.reverse();
        Lost {
            barriers,
            patch: if away.points.len() > 2 {
                away.points.clone()
            } else {
                Vec::new()
            },
        }
    }

    /// What is lost, as counter-clockwise polygons that may overlap.
    fn polygons(&self, accuracy: f64) -> Vec<Vec<Point>> {
        let count = self.barriers.len();
        let mut polygons = Vec::with_capacity(count + 1);
        if !self.patch.is_empty() {
            polygons.push(self.patch.clone());
        }
        for (index, here) in self.barriers.iter().enumerate() {
            let radius = here.clear + here.extra;
            if radius > 0.0 {
                let before = &self.barriers[(index + count - 1) % count];
                let after = &self.barriers[(index + 1) % count];
                polygons.push(strip(before, here, after, radius, accuracy / 2.0));
            }
        }
        polygons
    }
}

/// Everything within `radius` of an edge: a counter-clockwise polygon whose long sides are exact and whose round ends
/// are tangents, nowhere more than `over` outside the arc.
///
/// Where the ring turns right, neighbours share an arc. Both divide it alike, from the normal of the one to that of the
/// other, so that their chords fall together.
fn strip(before: &Barrier, here: &Barrier, after: &Barrier, radius: f64, over: f64) -> Vec<Point> {
    let Some(along) = direction(here) else {
        return arc(here.from, Vec2::new(0.0, 1.0), 2.0 * PI, radius, over);
    };
    let normal = left(along);
    let mut polygon = Vec::new();
    let shared = right_turn(along, direction(after));
    let next = direction(after).map_or(normal, left);
    let rest_from = if shared > 0.0 { next } else { normal };
    polygon.extend(arc(here.to, rest_from, PI - shared, radius, over));
    polygon.extend(arc(here.to, normal, shared, radius, over));
    let shared = right_turn_between(direction(before), along);
    let previous = direction(before).map_or(normal, left);
    polygon.extend(arc(here.from, previous, shared, radius, over));
    polygon.extend(arc(here.from, -normal, PI - shared, radius, over));
    polygon
}

/// Corners of tangents to an arc that runs clockwise from `normal` through `turn`, given counter-clockwise.
fn arc(centre: Point, normal: Vec2, turn: f64, radius: f64, over: f64) -> Vec<Point> {
    let widest = (2.0 * libm::acos(radius / (radius + over))).min(FRAC_PI_2);
    let steps = libm::ceil(turn / widest).max(0.0) as usize;
    let step = turn / steps.max(1) as f64;
    let reach = radius / libm::cos(step / 2.0);
    let corner = |index: usize| {
        let (sin, cos) = libm::sincos(-(index as f64 + 0.5) * step);
        let turned = Vec2::new(
            cos * normal.x - sin * normal.y,
            sin * normal.x + cos * normal.y,
        );
        centre + reach * turned
    };
    (0..steps).rev().map(corner).collect()
}

/// Unit vector along an edge, if it has a length.
fn direction(edge: &Barrier) -> Option<Vec2> {
    let along = edge.to - edge.from;
    let length = libm::hypot(along.x, along.y);
    (length > 0.0).then(|| along / length)
}

/// A unit vector turned left by a right angle.
fn left(along: Vec2) -> Vec2 {
    Vec2::new(-along.y, along.x)
}

/// How far to the right the second direction is from the first (radians, 0 to π); 0 when it turns left.
fn right_turn(first: Vec2, second: Option<Vec2>) -> f64 {
    let Some(second) = second else { return 0.0 };
    let turn = -libm::atan2(first.cross(second), first.dot(second));
    // Straight back is a turn of π either way: the end of a tear.
    if turn <= -PI { PI } else { turn.max(0.0) }
}

fn right_turn_between(first: Option<Vec2>, second: Vec2) -> f64 {
    first.map_or(0.0, |first| right_turn(first, Some(second)))
}

/// The outline less all that is lost, the largest part first.
fn cut(outline: &[Point], lost: &[Lost], accuracy: f64) -> Vec<UsablePart> {
    let on_grid = |point: &Point| {
        let whole = |value: f64| libm::round(value * GRID) as i64;
        IntPoint::new(whole(point.x), whole(point.y))
    };
    // One thread: the answer must not depend on features another crate turns on.
    let solver = Solver {
        multithreading: None,
        ..Solver::AUTO
    };
    let mut overlay = Overlay::<i64>::new_custom(outline.len(), IntOverlayOptions::ogc(), solver);
    overlay.add_path_iter(outline.iter().map(on_grid), ShapeType::Subject);
    for polygon in lost.iter().flat_map(|ring| ring.polygons(accuracy)) {
        overlay.add_path_iter(polygon.iter().map(on_grid), ShapeType::Clip);
    }
    let shapes = overlay.overlay(OverlayRule::Difference, FillRule::NonZero);
    let mut parts: Vec<UsablePart> = shapes
        .into_iter()
        .filter_map(|shape| {
            let mut rings = shape.into_iter().map(|contour| {
                let off_grid = |p: IntPoint<i64>| Point::new(p.x as f64 / GRID, p.y as f64 / GRID);
                contour.into_iter().map(off_grid).collect::<Vec<_>>()
            });
            let outline = rings.next()?;
            let holes: Vec<_> = rings.collect();
            // Holes run the other way, so their areas are negative.
            let area_mm2 =
                ring::area(&outline) + holes.iter().map(|hole| ring::area(hole)).sum::<f64>();
            let girth: f64 = ring::edges(&outline)
                .map(|(a, b)| libm::hypot(b.x - a.x, b.y - a.y))
                .sum();
            // Mean width is area over half the way round.
            (area_mm2 > accuracy * girth).then_some(UsablePart {
                outline,
                holes,
                area_mm2,
            })
        })
        .collect();
    parts.sort_by(|a, b| b.area_mm2.total_cmp(&a.area_mm2));
    parts
}
