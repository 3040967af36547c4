//! A lay: which piece lies where.

use core::f64::consts::PI;

use kurbo::{Point, Vec2};

use crate::Hand;

/// One piece laid on a panel.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Placement {
    /// Index of the part.
    pub part: usize,
    /// The hand this piece serves as.
    pub hand: Hand,
    /// Index of the panel.
    pub panel: usize,
    /// Whether the outline is mirrored (x to -x) before it is turned. A piece lies face down when this differs from
    /// what its hand asks for.
    pub mirrored: bool,
    /// Turn about the origin, counter-clockwise (deg).
    pub turn_deg: f64,
    /// Shift after the turn (mm).
    pub shift: Vec2,
}

impl Placement {
    /// Whether the piece lies with its showing side against the table.
    pub fn face_down(&self) -> bool {
        self.mirrored != (self.hand == Hand::Mirrored)
    }
}

/// Pieces of one part and hand that were given no place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Unplaced {
    /// Index of the part.
    pub part: usize,
    /// Which hand.
    pub hand: Hand,
    /// How many.
    pub count: u32,
}

/// Where every piece lies, and which have no place.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Lay {
    /// The pieces laid.
    pub placements: Vec<Placement>,
    /// The pieces without a place; together with the placements they make up the counts of the parts.
    pub unplaced: Vec<Unplaced>,
    /// Least distance between the cut lines of two pieces (mm, 0 to 1000). It is not kept from the panel's edge.
    pub spacing: f64,
    /// The lines on which panels are folded when they are cut, one a panel at most; the lay is of the panels opened.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "Vec::is_empty")
    )]
    pub folds: Vec<Fold>,
}

/// The line on which a panel is folded when it is cut, by two of its points: both layers are cut at once.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Fold {
    /// Index of the panel.
    pub panel: usize,
    /// A point of the line, on the panel's axes (mm, each coordinate -1e6 to 1e6).
    pub from: Point,
    /// Another, at least 0.01 mm away.
    pub to: Point,
}

/// The outline as it lies on the panel: mirrored if so, turned, then shifted.
///
/// These f64 coordinates are what [`check`](crate::check()) judges and what a caller should draw and cut. The sine and
/// cosine are exact at whole quarter turns.
pub fn placed(outline: &[Point], placement: &Placement) -> Vec<Point> {
    let (sin, cos) = sin_cos_deg(placement.turn_deg);
    outline
        .iter()
        .map(|p| {
            let x = if placement.mirrored { -p.x } else { p.x };
            Point::new(
                cos * x - sin * p.y + placement.shift.x,
                sin * x + cos * p.y + placement.shift.y,
            )
        })
        .collect()
}

/// Sine and cosine of an angle in degrees, exact at whole quarter turns.
pub(crate) fn sin_cos_deg(angle_deg: f64) -> (f64, f64) {
    let turn = angle_deg % 360.0;
    let quarter = (turn / 90.0).round();
    let (sin, cos) = libm::sincos((turn - 90.0 * quarter) * (PI / 180.0));
    match (quarter as i32).rem_euclid(4) {
        0 => (sin, cos),
        1 => (cos, -sin),
        2 => (-sin, -cos),
        _ => (-cos, sin),
    }
}

/// The angle brought to -180 (excluded) to 180 (deg).
pub(crate) fn half_turns(angle_deg: f64) -> f64 {
    let angle = angle_deg % 360.0;
    if angle > 180.0 {
        angle - 360.0
    } else if angle <= -180.0 {
        angle + 360.0
    } else {
        angle
    }
}
