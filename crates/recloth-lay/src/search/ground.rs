//! A panel as obstacles.

use kurbo::Point;

use crate::bounds::area;
use crate::shape::{bounds, convex_parts, cover, disc, hull, inward, length, ring, sum};
use crate::{Flaw, Panel};

/// A panel as obstacles.
pub(super) struct Ground {
    pub(super) hull: Vec<Point>,
    /// Bays and holes.
    pub(super) obstacles: Vec<Vec<Point>>,
    /// Each flaw with its margin.
    pub(super) flaws: Vec<Vec<Vec<Point>>>,
    /// What lies beyond the sides of the hull.
    pub(super) beyond: Vec<Vec<Point>>,
}

impl Ground {
    pub(super) fn new(panel: &Panel) -> Ground {
        let outline = ring(panel.outline());
        let hull = hull(&outline);
        let mut obstacles = Vec::new();
        for bay in bays(&outline, &hull) {
            obstacles.extend(convex_parts(&cover(&bay)));
        }
        for hole in panel.holes() {
            obstacles.extend(convex_parts(&cover(&ring(hole))));
        }
        let grown = |flaw: &Flaw| -> Vec<Vec<Point>> {
            let parts = match flaw.outline.len() {
                0..=2 => vec![flaw.outline.clone()],
                _ => convex_parts(&cover(&ring(&flaw.outline))),
            };
            let margin = if flaw.margin > 0.0 {
                disc(flaw.margin)
            } else {
                vec![Point::ORIGIN]
            };
            parts.iter().map(|part| sum(part, &margin)).collect()
        };
        let beyond = beyond(&hull);
        Ground {
            hull,
            obstacles,
            flaws: panel.flaws().iter().map(grown).collect(),
            beyond,
        }
    }
}

/// A broad strip along every side of a convex ring that is not square to the axes, outside.
fn beyond(hull: &[Point]) -> Vec<Vec<Point>> {
    let (low, high) = bounds(hull);
    let far = length(high - low);
    (0..hull.len())
        .filter_map(|i| {
            let (a, b) = (hull[i], hull[(i + 1) % hull.len()]);
            let (square, _) = inward(a, b)?;
            let (run, out) = ((b - a) / length(b - a) * far, square * -far);
            (a.x != b.x && a.y != b.y).then(|| vec![a - run + out, b + run + out, b + run, a - run])
        })
        .collect()
}

/// The bays between an outline and its hull, counter-clockwise.
fn bays(outline: &[Point], hull: &[Point]) -> Vec<Vec<Point>> {
    let n = outline.len();
    let on_hull: Vec<usize> = (0..n).filter(|&i| hull.contains(&outline[i])).collect();
    let mut bays = Vec::new();
    for (index, &from) in on_hull.iter().enumerate() {
        let to = on_hull[(index + 1) % on_hull.len()];
        let steps = (to + n - from) % n;
        if steps > 1 {
            // The hull's side first, then back along the outline.
            let mut bay: Vec<Point> = (0..=steps).map(|k| outline[(from + k) % n]).collect();
            bay.reverse();
            let bay = ring(&bay);
            if bay.len() > 2 && area(&bay) > 0.0 {
                bays.push(bay);
            }
        }
    }
    bays
}
