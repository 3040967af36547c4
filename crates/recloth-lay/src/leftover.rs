//! What a lay leaves of each panel, and the largest rectangles on grain in it.
//!
//! Shapes to look at, to draw, to lay small things on. They are output: whether a lay is right, the checker says by itself.

use kurbo::Point;
use recloth::ErrorKind;
use recloth::panel::{PanelRectangle, largest_rectangle};

use crate::bounds::{area, holds, sides};
use crate::check::Ring;
use crate::lay::sin_cos_deg;
use crate::part::{check_line, mirrored};
use crate::shape::{bounds, ring, sum};
use crate::valid::{check_inputs, meet};
use crate::{Error, Flaw, Lay, Panel, Part, placed};

/// What rounding may cost at any place; and the least that is kept from a spot or a slit (mm).
const ACCURACY: f64 = 0.1;
/// The widest margin that is cut away with round corners (mm).
const WIDEST: f64 = 1000.0;

/// Which rectangles to list.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(default, deny_unknown_fields)
)]
pub struct LeftoverOptions {
    /// How many at most in each shape (0 to 100).
    pub rectangles: u32,
    /// Not those with a side shorter than this (mm, 0 to 1e5).
    pub least: f64,
}

impl Default for LeftoverOptions {
    /// Three in each, at least 20 mm wide.
    fn default() -> LeftoverOptions {
        LeftoverOptions {
            rectangles: 3,
            least: 20.0,
        }
    }
}

/// One connected piece of cloth that is left.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct Leftover {
    /// Index of the panel.
    pub panel: usize,
    /// Its outline, counter-clockwise (mm).
    pub outline: Vec<Point>,
    /// Its holes, clockwise (mm).
    pub holes: Vec<Vec<Point>>,
    /// Its area, without the holes (mm²).
    pub area_mm2: f64,
    /// The largest rectangle on the straight grain in it, the largest in what that leaves, and so on.
    pub rectangles: Vec<PanelRectangle>,
}

/// What a lay leaves of each panel: panel by panel, the largest shape first.
///
/// The outline less holes, flaws with their margins (whatever they may lie under), and the pieces as they lie. The spacing
/// between pieces is not taken off. What both layers of a folded panel lose is cut from both: where it is spare, it is a shape by
/// itself. A spot, a slit or a cut in spare cloth counts as at least 0.1 mm wide on every side. Nothing is listed that is
/// not left; what is left is listed save what lies within 0.1 mm of something taken, and slivers of a mean width below 0.2
/// mm. Rectangles are the largest by area in turn, clear of each other; the first with a shorter side than wanted ends the
/// list.
///
/// # Errors
/// `NoSolution` naming `part` or `panel`, of a placement or fold that has no such; of a `fold` that is no line. `Count` of a panel's `outline`, `holes` (the
/// pieces among them) or `flaws`: over 2000 points, or over 1000 of them. `NoSolution` naming `accuracy` where the shapes could
/// not be proved right. Otherwise as of [`fit`](crate::fit()), and naming `rectangles` or `least`.
///
/// # Examples
/// ```
/// use recloth_lay::{Hand, Lay, LeftoverOptions, Panel, Part, Placement, leftovers};
/// let rectangle = |width: f64, height: f64| [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)];
/// let cloth = [Panel::new("back", rectangle(400.0, 700.0))?];
/// let skirt = [Part::new("skirt", rectangle(300.0, 600.0))];
/// let placement = Placement {
///     part: 0, hand: Hand::AsDrawn, panel: 0, mirrored: false, turn_deg: 0.0, shift: (0.0, 0.0).into(),
/// };
/// let lay = Lay { placements: vec![placement], ..Lay::default() };
/// let left = leftovers(&skirt, &cloth, &lay, &LeftoverOptions::default())?;
/// // 400 x 700 less 300 x 600; in the L that is left, 100 x 700 beside it, then 300 x 100 above.
/// assert_eq!(left.len(), 1);
/// assert!((left[0].area_mm2 - 100_000.0).abs() < 1.0);
/// let sides: Vec<_> = left[0].rectangles.iter().map(|r| (r.width.round(), r.height.round())).collect();
/// assert_eq!(sides, [(100.0, 700.0), (300.0, 100.0)]);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn leftovers(
    parts: &[Part],
    panels: &[Panel],
    lay: &Lay,
    options: &LeftoverOptions,
) -> Result<Vec<Leftover>, Error> {
    use recloth::Error as E;
    check_inputs(parts, panels)?;
    let of = |error: E| Error::new("options", error);
    E::check_count("rectangles", options.rectangles, 0, 100).map_err(of)?;
    E::check("least", options.least, 0.0, 1e5).map_err(of)?;
    let mut taken: Vec<Vec<Vec<Point>>> = vec![Vec::new(); panels.len()];
    for (index, placement) in lay.placements.iter().enumerate() {
        let none = |argument, value: usize, count: usize| {
            let error = E::no_solution(argument, value as f64, 0.0, count as f64 - 1.0);
            Error::new(format!("placement {index}"), error)
        };
        let part = parts
            .get(placement.part)
            .ok_or_else(|| none("part", placement.part, parts.len()))?;
        taken
            .get_mut(placement.panel)
            .ok_or_else(|| none("panel", placement.panel, panels.len()))?
            .push(placed(&part.outline, placement));
    }
    let mut cuts = vec![Vec::new(); panels.len()];
    for (index, fold) in lay.folds.iter().enumerate() {
        let of = |error: E| Error::new(format!("fold {index}"), error);
        let line = [fold.from, fold.to];
        check_line(line, 1e6).map_err(of)?;
        let pieces = taken.get(fold.panel).ok_or_else(|| {
            let last = panels.len() as f64 - 1.0;
            of(E::no_solution("panel", fold.panel as f64, 0.0, last))
        })?;
        cuts[fold.panel].extend(spare(pieces, line));
    }
    let mut left = Vec::new();
    for (index, ((panel, mut pieces), cuts)) in panels.iter().zip(taken).zip(cuts).enumerate() {
        pieces.extend(cuts);
        let shapes = left_of(panel, pieces)
            .map_err(|error| Error::new(format!("panel {:?}", panel.name()), error))?;
        left.extend(shapes.into_iter().map(|shape| Leftover {
            panel: index,
            area_mm2: shape.area_mm2(),
            rectangles: rectangles(&shape, options),
            outline: shape.outline().to_vec(),
            holes: shape.holes().to_vec(),
        }));
    }
    Ok(left)
}

/// The cuts round what is cut from the other layer with some pieces and is none of them, as narrow shapes.
fn spare(pieces: &[Vec<Point>], line: [Point; 2]) -> Vec<Vec<Point>> {
    let rings: Vec<Ring> = pieces.iter().map(|piece| Ring::new(piece)).collect();
    let images = pieces.iter().map(|piece| mirrored(piece, line));
    images
        .filter(|image| {
            let image = Ring::new(image);
            !rings.iter().any(|ring| image.is_same(ring))
        })
        .flat_map(|image| {
            let cut = |(from, to)| sum(&edge(from, to), &round(ACCURACY));
            sides(&image).map(cut).collect::<Vec<_>>()
        })
        .collect()
}

/// What is left of a panel, the largest first.
fn left_of(panel: &Panel, pieces: Vec<Vec<Point>>) -> Result<Vec<Panel>, recloth::Error> {
    let (mut holes, mut flaws) = (pieces, Vec::new());
    holes.extend(panel.holes().iter().cloned());
    for flaw in panel.flaws() {
        let margin = match flaw.outline.len() {
            1 | 2 => flaw.margin.max(ACCURACY),
            _ => flaw.margin,
        };
        if margin <= WIDEST && touches(panel.outline(), &flaw.outline) {
            flaws.push(Flaw::new(flaw.outline.iter().copied(), margin));
            continue;
        }
        // Beside the cloth, or kept clear of far and wide: the flaw, and all within the margin of each of its edges.
        if flaw.outline.len() > 2 {
            holes.push(flaw.outline.clone());
        }
        if margin > 0.0 {
            let edges = sides(&flaw.outline);
            holes.extend(edges.map(|(from, to)| sum(&edge(from, to), &round(margin))));
        }
    }
    holes.retain(|hole| touches(panel.outline(), hole));
    let nothing_taken = holes.is_empty() && flaws.is_empty();
    let panel = panel.clone().with_holes(holes)?.with_flaws(flaws)?;
    if nothing_taken {
        return Ok(vec![panel]);
    }
    let losses = vec![0.0; panel.outline().len()];
    match panel.usable(&losses, ACCURACY) {
        Ok(shapes) => Ok(shapes),
        // All that is taken lies on the cloth, so this says that nothing is left.
        Err(error)
            if matches!(
                (error.kind(), error.argument()),
                (ErrorKind::NoSolution, "holes" | "flaws" | "margin")
                    | (ErrorKind::Outline, "outline")
            ) =>
        {
            Ok(Vec::new())
        }
        Err(error) => Err(error),
    }
}

/// A polygon round a disc about the origin, nowhere further out than the accuracy.
fn round(radius: f64) -> Vec<Point> {
    // A side of half a turn `a` is out by radius / cos a - radius at its ends, which is about half of radius a².
    let widest = (2.0 * ACCURACY / (radius + ACCURACY)).sqrt();
    let count = (core::f64::consts::PI / widest).ceil().max(8.0);
    let (_, cos) = sin_cos_deg(180.0 / count);
    (0..count as u32)
        .map(|i| {
            let (sin, along) = sin_cos_deg(360.0 * f64::from(i) / count);
            Point::new(radius / cos * along, radius / cos * sin)
        })
        .collect()
}

/// An edge as a ring of its ends, or one point.
fn edge(from: Point, to: Point) -> Vec<Point> {
    match from == to {
        true => vec![from],
        false => vec![from, to],
    }
}

/// Whether a panel and a shape, a spot or a slit share a point.
fn touches(panel: &[Point], shape: &[Point]) -> bool {
    let (low, high) = bounds(panel);
    let (shape_low, shape_high) = bounds(shape);
    if low.x > shape_high.x || shape_low.x > high.x || low.y > shape_high.y || shape_low.y > high.y
    {
        return false;
    }
    let crossing = sides(shape).any(|a| sides(panel).any(|b| meet(a, b)));
    crossing || holds(panel, shape[0]) || (shape.len() > 2 && holds(shape, panel[0]))
}

/// The largest rectangles of a shape, each clear of those before it.
fn rectangles(shape: &Panel, options: &LeftoverOptions) -> Vec<PanelRectangle> {
    let outline = ring(shape.outline());
    let mut away = shape.holes().to_vec();
    let mut found = Vec::new();
    while (found.len() as u32) < options.rectangles {
        let Ok(rectangle) = largest_rectangle(&outline, &away, shape.grain_deg()) else {
            break;
        };
        let corners = rectangle.corners().to_vec();
        if rectangle.width.min(rectangle.height) < options.least || area(&corners) == 0.0 {
            break;
        }
        away.push(corners);
        found.push(rectangle);
    }
    found
}
