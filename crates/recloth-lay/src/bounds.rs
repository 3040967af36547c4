//! Bounds that prove that a piece has no place on a panel, or pieces none on several.
//!
//! Each holds for every lay that the checker would accept, its tolerances included.

use core::f64::consts::PI;

use kurbo::{Point, Vec2};

use crate::lay::{half_turns, sin_cos_deg};
use crate::overlap::shared_area;
use crate::part::Kept;
use crate::shape::{hull, length, ring, signed_area};
use crate::valid::side;
use crate::{Faces, Flaw, Hand, Panel, Part, Shows};

/// By how much a bound must be broken before it proves anything (mm): far more than the checker lets pass.
pub(crate) const SLACK: f64 = 1e-4;

/// Shapes with more pairs of sides than this are not taken off: it would take long. The number has no source.
const MOST_SIDES: usize = 200_000;

/// What proves that a piece has no place on a panel.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Bound {
    /// Both sides of the piece show, but the cloth has one face.
    OneFace,
    /// The piece has more area than the panel.
    Area {
        /// Area of the piece (mm²).
        needed_mm2: f64,
        /// Area of the panel, holes and flaws taken off where that is certain (mm²).
        there_mm2: f64,
    },
    /// The piece is wider across the panel's grain than the panel, however it is tilted within its tolerance.
    Across {
        /// Least width of the piece across the grain (mm).
        needed: f64,
        /// Largest width of the panel across the grain (mm).
        there: f64,
    },
    /// The piece is longer along the panel's grain than the panel, however it is tilted within its tolerance.
    Along {
        /// Least length of the piece along the grain (mm).
        needed: f64,
        /// Largest length of the panel along the grain (mm).
        there: f64,
    },
    /// Every position at every tilt was excluded, group by group: in each, some point of the piece would be off the
    /// cloth, or some point of the panel's edge, a hole or a flaw within the piece.
    Everywhere,
}

impl Bound {
    /// By how much the piece is too wide or too long (mm); `None` where the bound is of another kind.
    pub fn short_by(&self) -> Option<f64> {
        match *self {
            Bound::Across { needed, there } | Bound::Along { needed, there } => {
                Some(needed - there)
            }
            _ => None,
        }
    }
}

impl core::fmt::Display for Bound {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match *self {
            Bound::OneFace => write!(f, "both sides show, but the cloth has one face"),
            Bound::Area {
                needed_mm2,
                there_mm2,
            } => write!(
                f,
                "needs an area of {:.0} cm², there are {:.0} cm²",
                needed_mm2 / 100.0,
                there_mm2 / 100.0
            ),
            Bound::Across { needed, there } => write!(
                f,
                "short by {:.1} mm across the grain: needs {needed:.1} mm, there are {there:.1} mm",
                needed - there
            ),
            Bound::Along { needed, there } => write!(
                f,
                "short by {:.1} mm along the grain: needs {needed:.1} mm, there are {there:.1} mm",
                needed - there
            ),
            Bound::Everywhere => write!(f, "no place at any tilt within the tolerance"),
        }
    }
}

/// Area within a ring, whichever way it runs.
pub(crate) fn area(points: &[Point]) -> f64 {
    signed_area(points).abs()
}

/// Area of a panel that pieces of these parts can cover: the outline less holes and the flaws that all of them are kept from
/// wholly. Never less than the truth, but for [`area_slack`] of the panel.
///
/// What each takes of the panel is taken off, and what any two share given back, so that nothing is taken off twice.
pub(crate) fn usable_area<'a>(
    panel: &Panel,
    parts: impl IntoIterator<Item = &'a Part> + Clone,
) -> f64 {
    let whole = |flaw: &&Flaw| {
        let mut parts = parts.clone().into_iter();
        parts.all(|part| part.kept_from(flaw) == Kept::Whole)
    };
    let flaws = panel.flaws().iter().filter(whole);
    let flaws = flaws.map(|flaw| &flaw.outline);
    let taken: Vec<Vec<Point>> = (panel.holes().iter().chain(flaws))
        .filter(|points| points.len() > 2)
        .map(|points| ring(points))
        .collect();
    let outline = ring(panel.outline());
    let mut usable = area(&outline);
    for (index, shape) in taken.iter().enumerate() {
        if shape.len() * outline.len() > MOST_SIDES {
            continue;
        }
        let mut off = shared_area(shape, &outline);
        for other in &taken[..index] {
            off -= match shape.len() * other.len() > MOST_SIDES {
                true => area(other),
                false => shared_area(shape, other),
            };
        }
        usable -= off.max(0.0);
    }
    usable
}

/// Area that pieces may share with each other or the surroundings under the checker's tolerance, generously.
pub(crate) fn area_slack(points: &[Point]) -> f64 {
    SLACK * (1.0 + sides(points).map(|(p, q)| length(q - p)).sum::<f64>())
}

pub(crate) fn sides(points: &[Point]) -> impl Iterator<Item = (Point, Point)> + '_ {
    let n = points.len();
    (0..n).map(move |i| (points[i], points[(i + 1) % n]))
}

/// Whether a point that is not on the ring is inside it.
pub(crate) fn holds(points: &[Point], p: Point) -> bool {
    sides(points)
        .filter(|&(a, b)| (a.y <= p.y) != (b.y <= p.y))
        .filter(|&(a, b)| (side(a, b, p) > 0) == (b.y > a.y))
        .count()
        % 2
        == 1
}

/// Whether the outline may lie mirrored or not, on this panel, for this hand.
pub(crate) fn ways(part: &Part, hand: Hand, panel: &Panel) -> Vec<bool> {
    let face_up = hand == Hand::Mirrored;
    match (panel.faces(), part.shows) {
        (Faces::One, Shows::Both) => vec![],
        (Faces::One, Shows::Right) => vec![face_up],
        (Faces::One, Shows::Wrong) => vec![!face_up],
        _ => vec![face_up, !face_up],
    }
}

/// The turn that brings the grain of the part onto the grain of the panel (deg).
pub(crate) fn grain_turn(part: &Part, panel: &Panel, mirrored: bool) -> f64 {
    let grain_deg = if mirrored {
        180.0 - part.grain_deg
    } else {
        part.grain_deg
    };
    half_turns(panel.grain_deg() - grain_deg)
}

/// A quick bound that proves that one piece of this hand has no place on the panel.
pub(crate) fn quick(part: &Part, hand: Hand, panel: &Panel) -> Option<Bound> {
    let ways = ways(part, hand, panel);
    if ways.is_empty() {
        return Some(Bound::OneFace);
    }
    let panel_hull = hull(panel.outline());
    let part_hull = hull(&part.outline);
    // Least extent of the piece and extent of the panel, square to or along the grain.
    let extent = |off_deg: f64| {
        let there = width(&panel_hull, panel.grain_deg() + off_deg);
        let needed = ways
            .iter()
            .map(|&mirrored| {
                let shape: Vec<Point> = match mirrored {
                    true => part_hull.iter().map(|p| Point::new(-p.x, p.y)).collect(),
                    false => part_hull.clone(),
                };
                // Turning the piece forth is looking at it turned back.
                let turn_deg = grain_turn(part, panel, mirrored);
                (part.turned(panel.nap()).iter())
                    .filter(|half| **half >= 0.0 && **half < 180.0)
                    .map(|half| {
                        let angle_deg = panel.grain_deg() + off_deg - turn_deg - half;
                        least_width(&shape, angle_deg, part.tilt_deg)
                    })
                    .fold(f64::INFINITY, f64::min)
            })
            .fold(f64::INFINITY, f64::min);
        (needed, there)
    };
    let (needed, there) = extent(90.0);
    if needed > there + SLACK {
        return Some(Bound::Across { needed, there });
    }
    let (needed, there) = extent(0.0);
    if needed > there + SLACK {
        return Some(Bound::Along { needed, there });
    }
    let (needed_mm2, there_mm2) = (area(&part.outline), usable_area(panel, [part]));
    (needed_mm2 > there_mm2 + area_slack(&part.outline) + area_slack(panel.outline())).then_some(
        Bound::Area {
            needed_mm2,
            there_mm2,
        },
    )
}

/// Extent of a shape in a direction (deg).
pub(crate) fn width(points: &[Point], angle_deg: f64) -> f64 {
    let (sin, cos) = sin_cos_deg(angle_deg);
    let (low, high) = points
        .iter()
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), p| {
            let far = Vec2::new(cos, sin).dot(p.to_vec2());
            (low.min(far), high.max(far))
        });
    high - low
}

/// Least extent of a convex ring over the directions within a tolerance of one (deg).
///
/// Between two directions square to sides of the ring the extent is that of one fixed pair of corners, a cosine above
/// zero and so without a least value inside: only those directions and the ends need be looked at.
fn least_width(hull: &[Point], middle_deg: f64, tolerance_deg: f64) -> f64 {
    let (low, high) = (middle_deg - tolerance_deg, middle_deg + tolerance_deg);
    let square_deg = sides(hull).map(|(p, q)| {
        let run = q - p;
        let angle = libm::atan2(run.y, run.x) * (180.0 / PI) + 90.0;
        // The direction or its opposite, brought as near the middle as can be.
        let off = half_turns(angle - middle_deg);
        if off > 90.0 {
            middle_deg + (off - 180.0)
        } else if off < -90.0 {
            middle_deg + (off + 180.0)
        } else {
            middle_deg + off
        }
    });
    square_deg
        .filter(|&angle| low <= angle && angle <= high)
        .chain([low, high])
        .fold(f64::INFINITY, |least, angle| least.min(width(hull, angle)))
}
