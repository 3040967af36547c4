//! The checker: proves a lay right, by itself. It shares no geometry with the search.
//!
//! Everything is said of the f64 coordinates that [`placed`](crate::placed()) gives. A point *intrudes* on a ring when it
//! is inside it and further than [`DEPTH`] from its edge. Two pieces overlap when a point of either's edge intrudes on
//! the other, however thin the part that intrudes, or when a point inside both intrudes on both. So pieces may touch
//! along edges, at points, all round, and a needle between two pieces is still seen.
//!
//! On an edge, the points within `DEPTH` of one segment of a ring are an interval, because they are where a line meets
//! a convex shape. What the intervals leave are the stretches further than `DEPTH` from the ring. No such stretch
//! crosses the ring, so one point of it tells whether it is inside; and that point is so far from the ring that
//! rounding cannot move it across.

use std::cell::OnceCell;

use kurbo::{Point, Vec2};
use robust::{Coord, orient2d};

use crate::lay::half_turns;
use crate::part::Kept;
use crate::valid::check_inputs;
use crate::{Error, Faces, Hand, Lay, Panel, Part, Placement, Shows, placed};

/// Depth up to which two pieces count as touching (mm). It is kept within 1e-7.
pub const DEPTH: f64 = 1e-6;

/// Angle by which a tilt may pass its tolerance, for rounding (deg).
pub const TILT: f64 = 1e-9;

/// A stretch shorter than this between two touching stretches counts as touching (mm).
const STRETCH: f64 = 1e-7;

/// What is wrong with a lay. `placement`, `first` and `second` are indices of placements.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
#[allow(missing_docs)] // the sentence of each says what its fields are
pub enum Complaint {
    /// A part, panel or the spacing cannot be used.
    #[error("{0}")]
    Input(Error),
    /// The part is not there.
    #[error("placement {placement}: there is no part {part}")]
    NoSuchPart { placement: usize, part: usize },
    /// The panel is not there.
    #[error("placement {placement}: there is no panel {panel}")]
    NoSuchPanel { placement: usize, panel: usize },
    /// The turn or the shift is not a number, or absurdly large.
    #[error(
        "placement {placement}: {part} is turned or shifted by something that is not a number or is too large"
    )]
    Position { placement: usize, part: String },
    /// More or fewer than wanted.
    #[error("{part} {}: {placed} placed and {unplaced} not, but {wanted} wanted", .hand.words())]
    Count {
        part: String,
        hand: Hand,
        placed: u32,
        unplaced: u32,
        wanted: u32,
    },
    /// The piece leaves the panel.
    #[error("placement {placement}: {part} leaves {panel} at ({}, {})", .at.x, .at.y)]
    Outside {
        placement: usize,
        part: String,
        panel: String,
        at: Point,
    },
    /// The piece lies over a hole.
    #[error("placement {placement}: {part} lies over hole {hole} of {panel} at ({}, {})", .at.x, .at.y)]
    OnHole {
        placement: usize,
        part: String,
        panel: String,
        hole: usize,
        at: Point,
    },
    /// The piece lies over a flaw.
    #[error("placement {placement}: {part} lies over flaw {flaw} of {panel} at ({}, {})", .at.x, .at.y)]
    OnFlaw {
        placement: usize,
        part: String,
        panel: String,
        flaw: usize,
        at: Point,
    },
    /// The piece lies within the margin of a flaw.
    #[error(
        "placement {placement}: {part} is {distance} mm from flaw {flaw} of {panel}, not {margin} mm"
    )]
    NearFlaw {
        placement: usize,
        part: String,
        panel: String,
        flaw: usize,
        distance: f64,
        margin: f64,
    },
    /// Two pieces overlap.
    #[error("placements {first} and {second}: {part} and {other} overlap on {panel} at ({}, {})", .at.x, .at.y)]
    Overlap {
        first: usize,
        second: usize,
        part: String,
        other: String,
        panel: String,
        at: Point,
    },
    /// Two pieces are nearer than the spacing.
    #[error(
        "placements {first} and {second}: {part} and {other} are {distance} mm apart, not {spacing} mm"
    )]
    TooClose {
        first: usize,
        second: usize,
        part: String,
        other: String,
        distance: f64,
        spacing: f64,
    },
    /// The grain is tilted too far.
    #[error(
        "placement {placement}: the grain of {part} is {tilt_deg} degrees off the grain of {panel}, not at most {allowed_deg}"
    )]
    OffGrain {
        placement: usize,
        part: String,
        panel: String,
        tilt_deg: f64,
        allowed_deg: f64,
    },
    /// The piece points against the nap or one-way print.
    #[error("placement {placement}: {part} points against the nap of {panel}")]
    AgainstNap {
        placement: usize,
        part: String,
        panel: String,
    },
    /// The wrong side would show.
    #[error("placement {placement}: {part} shows the wrong side of {panel}")]
    WrongSide {
        placement: usize,
        part: String,
        panel: String,
    },
    /// Both sides show, but the cloth has one face.
    #[error(
        "placement {placement}: both sides of {part} show, but {panel} has only one to be seen"
    )]
    OneFace {
        placement: usize,
        part: String,
        panel: String,
    },
}

/// Proves that a lay can be cut: every piece inside its panel, clear of holes, flaws and other pieces, on grain within
/// its tolerance, the right way up, of the right hand, and none too many or too few.
///
/// A flaw keeps clear what [`Flaw::under`](crate::Flaw) leaves of a piece: all of it, its seam line, or nothing.
/// Touching is allowed, an overlap deeper than [`DEPTH`] is not; the same tolerance holds for margins and the spacing.
/// The work grows with the square of the number of points.
///
/// # Errors
/// Everything that is wrong, in order of placement. Where an input cannot be used, that alone.
///
/// # Examples
/// ```
/// use recloth_lay::{Hand, Lay, Panel, Part, Placement, check};
/// let square = |side: f64| [(0.0, 0.0), (side, 0.0), (side, side), (0.0, side)];
/// let (pocket, cloth) = (Part::new("pocket", square(150.0)), Panel::new("back", square(200.0))?);
/// let mut lay = Lay::default();
/// lay.placements.push(Placement {
///     part: 0, hand: Hand::AsDrawn, panel: 0, mirrored: false, turn_deg: 0.0, shift: (50.0, 50.0).into(),
/// });
/// assert_eq!(check(&[pocket.clone()], &[cloth.clone()], &lay), Ok(()));
/// lay.placements[0].shift.x = 50.01;
/// let complaints = check(&[pocket], &[cloth], &lay).unwrap_err();
/// assert!(complaints[0].to_string().starts_with("placement 0: pocket leaves back at "));
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn check(parts: &[Part], panels: &[Panel], lay: &Lay) -> Result<(), Vec<Complaint>> {
    check_inputs(parts, panels).map_err(|error| vec![Complaint::Input(error)])?;
    recloth::Error::check("spacing", lay.spacing, 0.0, 1000.0)
        .map_err(|error| vec![Complaint::Input(Error::new("lay", error))])?;
    let cloths: Vec<Cloth> = panels.iter().map(Cloth::new).collect();
    let mut complaints = Vec::new();
    let mut laid: Vec<Laid> = Vec::new();
    for (index, placement) in lay.placements.iter().enumerate() {
        match check_placement(parts, panels, index, placement) {
            Err(complaint) => complaints.push(complaint),
            Ok((part, panel)) => {
                check_lie(part, panel, index, placement, &mut complaints);
                let piece = Laid {
                    index,
                    part,
                    panel: placement.panel,
                    ring: Ring::new(&placed(&part.outline, placement)),
                    seam: Ring::new(&placed(&part.seam, placement)),
                };
                check_place(&piece, &cloths[piece.panel], &mut complaints);
                for other in laid.iter().filter(|other| other.panel == piece.panel) {
                    check_pair(other, &piece, panel, lay.spacing, &mut complaints);
                }
                laid.push(piece);
            }
        }
    }
    check_counts(parts, lay, &mut complaints);
    if complaints.is_empty() {
        Ok(())
    } else {
        Err(complaints)
    }
}

/// A piece where it lies.
struct Laid<'a> {
    index: usize,
    part: &'a Part,
    panel: usize,
    ring: Ring,
    /// Its seam line; of no use where the part has none.
    seam: Ring,
}

/// A panel made ready.
struct Cloth<'a> {
    panel: &'a Panel,
    outline: Ring,
    holes: Vec<Ring>,
    flaws: Vec<(Ring, f64)>,
}

impl Cloth<'_> {
    fn new(panel: &Panel) -> Cloth<'_> {
        Cloth {
            panel,
            outline: Ring::new(panel.outline()),
            holes: panel.holes().iter().map(|hole| Ring::new(hole)).collect(),
            flaws: panel
                .flaws()
                .iter()
                .map(|flaw| (Ring::new(&flaw.outline), flaw.margin))
                .collect(),
        }
    }
}

fn check_placement<'a>(
    parts: &'a [Part],
    panels: &'a [Panel],
    index: usize,
    placement: &Placement,
) -> Result<(&'a Part, &'a Panel), Complaint> {
    let part = parts.get(placement.part).ok_or(Complaint::NoSuchPart {
        placement: index,
        part: placement.part,
    })?;
    let panel = panels.get(placement.panel).ok_or(Complaint::NoSuchPanel {
        placement: index,
        panel: placement.panel,
    })?;
    let within = |value: f64, limit: f64| value.abs() <= limit;
    if within(placement.turn_deg, 720.0)
        && within(placement.shift.x, 1e6)
        && within(placement.shift.y, 1e6)
    {
        Ok((part, panel))
    } else {
        Err(Complaint::Position {
            placement: index,
            part: part.name.clone(),
        })
    }
}

/// Counts of every part and hand, those without a place included.
fn check_counts(parts: &[Part], lay: &Lay, complaints: &mut Vec<Complaint>) {
    for (index, part) in parts.iter().enumerate() {
        for hand in Hand::BOTH {
            let placed = lay
                .placements
                .iter()
                .filter(|placement| placement.part == index && placement.hand == hand)
                .count();
            let placed = u32::try_from(placed).unwrap_or(u32::MAX);
            let unplaced = lay
                .unplaced
                .iter()
                .filter(|unplaced| unplaced.part == index && unplaced.hand == hand)
                .fold(0_u32, |sum, unplaced| sum.saturating_add(unplaced.count));
            let wanted = part.count(hand);
            if placed.saturating_add(unplaced) != wanted {
                complaints.push(Complaint::Count {
                    part: part.name.clone(),
                    hand,
                    placed,
                    unplaced,
                    wanted,
                });
            }
        }
    }
    for unplaced in &lay.unplaced {
        if unplaced.part >= parts.len() {
            complaints.push(Complaint::Count {
                part: format!("part {} (not there)", unplaced.part),
                hand: unplaced.hand,
                placed: 0,
                unplaced: unplaced.count,
                wanted: 0,
            });
        }
    }
}

/// Grain, nap and side.
fn check_lie(
    part: &Part,
    panel: &Panel,
    index: usize,
    placement: &Placement,
    complaints: &mut Vec<Complaint>,
) {
    let (part_name, panel_name) = (part.name.clone(), panel.name().to_owned());
    let grain_deg = if placement.mirrored {
        180.0 - part.grain_deg
    } else {
        part.grain_deg
    };
    let off_deg = half_turns(grain_deg + placement.turn_deg - panel.grain_deg()).abs();
    let reversed_deg = 180.0 - off_deg;
    let allowed_deg = part.tilt_deg + TILT;
    let one_way = panel.nap() && !part.either_way;
    if one_way && off_deg > allowed_deg && reversed_deg <= allowed_deg {
        complaints.push(Complaint::AgainstNap {
            placement: index,
            part: part_name.clone(),
            panel: panel_name.clone(),
        });
    } else {
        let tilt_deg = match (one_way, part.crosswise) {
            (true, _) => off_deg,
            (false, false) => off_deg.min(reversed_deg),
            (false, true) => off_deg.min(reversed_deg).min((off_deg - 90.0).abs()),
        };
        if tilt_deg > allowed_deg {
            complaints.push(Complaint::OffGrain {
                placement: index,
                part: part_name.clone(),
                panel: panel_name.clone(),
                tilt_deg,
                allowed_deg: part.tilt_deg,
            });
        }
    }
    if panel.faces() == Faces::One {
        let face_down = placement.face_down();
        match part.shows {
            Shows::Both => complaints.push(Complaint::OneFace {
                placement: index,
                part: part_name,
                panel: panel_name,
            }),
            Shows::Right if face_down => complaints.push(Complaint::WrongSide {
                placement: index,
                part: part_name,
                panel: panel_name,
            }),
            Shows::Wrong if !face_down => complaints.push(Complaint::WrongSide {
                placement: index,
                part: part_name,
                panel: panel_name,
            }),
            _ => {}
        }
    }
}

/// The piece inside its panel, clear of holes and flaws.
fn check_place(piece: &Laid, cloth: &Cloth, complaints: &mut Vec<Complaint>) {
    let placement = piece.index;
    let names = || (piece.part.name.clone(), cloth.panel.name().to_owned());
    if let Some(at) = piece.ring.leaves(&cloth.outline) {
        let (part, panel) = names();
        complaints.push(Complaint::Outside {
            placement,
            part,
            panel,
            at,
        });
    }
    for (hole, ring) in cloth.holes.iter().enumerate() {
        if let Some(at) = piece.ring.overlaps(ring) {
            let (part, panel) = names();
            complaints.push(Complaint::OnHole {
                placement,
                part,
                panel,
                hole,
                at,
            });
        }
    }
    for (index, (shape, margin)) in cloth.flaws.iter().enumerate() {
        let ring = match piece.part.kept_from(&cloth.panel.flaws()[index]) {
            Kept::Nothing => continue,
            Kept::Seam => &piece.seam,
            Kept::Whole => &piece.ring,
        };
        if let Some(at) = ring.overlaps(shape) {
            let (part, panel) = names();
            complaints.push(Complaint::OnFlaw {
                placement,
                part,
                panel,
                flaw: index,
                at,
            });
        } else if let Some(distance) = ring.nearer(shape, *margin) {
            let (part, panel) = names();
            complaints.push(Complaint::NearFlaw {
                placement,
                part,
                panel,
                flaw: index,
                distance,
                margin: *margin,
            });
        }
    }
}

/// Two pieces of one panel clear of each other.
fn check_pair(
    first: &Laid,
    second: &Laid,
    panel: &Panel,
    spacing: f64,
    complaints: &mut Vec<Complaint>,
) {
    let (part, other) = (first.part.name.clone(), second.part.name.clone());
    if let Some(at) = first.ring.overlaps(&second.ring) {
        complaints.push(Complaint::Overlap {
            first: first.index,
            second: second.index,
            part,
            other,
            panel: panel.name().to_owned(),
            at,
        });
    } else if let Some(distance) = first.ring.nearer(&second.ring, spacing) {
        complaints.push(Complaint::TooClose {
            first: first.index,
            second: second.index,
            part,
            other,
            distance,
            spacing,
        });
    }
}

/// A closed ring, or a spot (one edge without length) or a slit (one edge), which have no inside.
struct Ring {
    closed: bool,
    edges: Vec<Edge>,
    low: Point,
    high: Point,
    /// Points a little inside every edge of the ring that is long enough, to tell apart two rings that share all their
    /// edges. Each is further from the ring than twice [`DEPTH`].
    inner: OnceCell<Vec<Point>>,
}

impl Ring {
    fn new(points: &[Point]) -> Ring {
        let n = points.len();
        let all = || (0..n).map(|i| Edge::new(points[i], points[(i + 1) % n]));
        let mut edges: Vec<Edge> = all().filter(|edge| edge.length > 0.0).collect();
        if edges.is_empty() || n < 3 {
            // A spot, a slit, or a ring so small that its points coincide where it lies.
            edges = all().take(1).collect();
        }
        let low = points
            .iter()
            .fold(Point::new(f64::INFINITY, f64::INFINITY), |low, p| {
                Point::new(low.x.min(p.x), low.y.min(p.y))
            });
        let high = points.iter().fold(
            Point::new(f64::NEG_INFINITY, f64::NEG_INFINITY),
            |high, p| Point::new(high.x.max(p.x), high.y.max(p.y)),
        );
        Ring {
            closed: n > 2,
            edges,
            low,
            high,
            inner: OnceCell::new(),
        }
    }

    fn inner(&self) -> &[Point] {
        self.inner.get_or_init(|| {
            self.edges
                .iter()
                .filter(|edge| edge.length > 8.0 * DEPTH)
                .flat_map(|edge| {
                    let middle = edge.at(edge.length / 2.0);
                    let square = edge.square() * (4.0 * DEPTH);
                    [middle + square, middle - square]
                })
                .filter(|&p| self.holds(p) && self.distance(p) > 2.0 * DEPTH)
                .collect()
        })
    }

    /// Whether the point is inside, for a point that is not on the edge: how often a ray to the right crosses the ring.
    /// Exact.
    fn holds(&self, p: Point) -> bool {
        let at = |p: Point| Coord { x: p.x, y: p.y };
        let mut inside = false;
        if !self.closed
            || p.x < self.low.x
            || p.x > self.high.x
            || p.y < self.low.y
            || p.y > self.high.y
        {
            return false;
        }
        for edge in &self.edges {
            let (a, b) = (edge.start, edge.end);
            if (a.y <= p.y) != (b.y <= p.y) {
                let area = orient2d(at(a), at(b), at(p));
                if (b.y > a.y) == (area > 0.0) && area != 0.0 {
                    inside = !inside;
                }
            }
        }
        inside
    }

    fn distance(&self, p: Point) -> f64 {
        self.edges
            .iter()
            .fold(f64::INFINITY, |least, edge| least.min(edge.distance(p)))
    }

    /// A point of each stretch of the edge that is further than [`DEPTH`] from this ring.
    fn clear_points(&self, edge: &Edge) -> Vec<Point> {
        let mut near: Vec<(f64, f64)> = self
            .edges
            .iter()
            .filter(|other| edge.may_be_within(other, DEPTH))
            .filter_map(|other| edge.within(other, DEPTH))
            .collect();
        if edge.length <= STRETCH {
            return match near.is_empty() {
                true => vec![edge.at(edge.length / 2.0)],
                false => Vec::new(),
            };
        }
        near.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut points = Vec::new();
        let mut from = 0.0;
        for (low, high) in near.into_iter().chain([(edge.length, edge.length)]) {
            if low - from > STRETCH {
                points.push(edge.at(from + (low - from) / 2.0));
            }
            from = high.max(from);
        }
        points
    }

    /// A point of this ring's edge that intrudes on the other.
    fn intrudes(&self, other: &Ring) -> Option<Point> {
        self.edges
            .iter()
            .filter(|edge| edge.may_be_in(other))
            .flat_map(|edge| other.clear_points(edge))
            .find(|&p| other.holds(p) && other.distance(p) > DEPTH)
    }

    /// A point of both that intrudes on both.
    fn overlaps(&self, other: &Ring) -> Option<Point> {
        if self.apart(other, -DEPTH) {
            return None;
        }
        let shared = |a: &Ring, b: &Ring| {
            a.inner()
                .iter()
                .copied()
                .find(|&p| b.holds(p) && b.distance(p) > DEPTH)
        };
        self.intrudes(other)
            .or_else(|| other.intrudes(self))
            .or_else(|| shared(self, other))
            .or_else(|| shared(other, self))
    }

    /// A point of this ring further than [`DEPTH`] outside the other.
    fn leaves(&self, other: &Ring) -> Option<Point> {
        let outside = |p: &Point| !other.holds(*p) && other.distance(*p) > DEPTH;
        self.edges
            .iter()
            .flat_map(|edge| other.clear_points(edge))
            .find(outside)
            .or_else(|| other.intrudes(self))
            .or_else(|| self.inner().iter().copied().find(outside))
    }

    /// The distance between the edges of two rings that do not overlap, if it is less than `least`.
    fn nearer(&self, other: &Ring, least: f64) -> Option<f64> {
        if least <= DEPTH || self.apart(other, least) {
            return None;
        }
        let mut distance = f64::INFINITY;
        for a in &self.edges {
            for b in &other.edges {
                if a.may_be_within(b, least) {
                    distance = distance.min(a.gap(b));
                }
            }
        }
        (distance < least - DEPTH).then_some(distance)
    }

    /// Whether the boxes round the rings are at least `gap` apart.
    fn apart(&self, other: &Ring, gap: f64) -> bool {
        self.high.x + gap <= other.low.x
            || other.high.x + gap <= self.low.x
            || self.high.y + gap <= other.low.y
            || other.high.y + gap <= self.low.y
    }
}

/// A straight edge with its length and direction.
struct Edge {
    start: Point,
    end: Point,
    length: f64,
    along: Vec2,
}

impl Edge {
    fn new(start: Point, end: Point) -> Edge {
        let run = end - start;
        let length = libm::hypot(run.x, run.y);
        let along = if length > 0.0 {
            run / length
        } else {
            Vec2::new(1.0, 0.0)
        };
        Edge {
            start,
            end,
            length,
            along,
        }
    }

    /// The point this far along.
    fn at(&self, far: f64) -> Point {
        self.start + self.along * far
    }

    /// Unit direction square to the edge.
    fn square(&self) -> Vec2 {
        Vec2::new(-self.along.y, self.along.x)
    }

    fn may_be_within(&self, other: &Edge, gap: f64) -> bool {
        let apart =
            |a: f64, b: f64, c: f64, d: f64| a.max(b) + gap < c.min(d) || c.max(d) + gap < a.min(b);
        !apart(self.start.x, self.end.x, other.start.x, other.end.x)
            && !apart(self.start.y, self.end.y, other.start.y, other.end.y)
    }

    /// Whether some point of the edge may be inside the ring, by their boxes.
    fn may_be_in(&self, ring: &Ring) -> bool {
        self.start.x.max(self.end.x) > ring.low.x
            && self.start.x.min(self.end.x) < ring.high.x
            && self.start.y.max(self.end.y) > ring.low.y
            && self.start.y.min(self.end.y) < ring.high.y
    }

    /// Distance of a point from the edge.
    fn distance(&self, p: Point) -> f64 {
        let to = p - self.start;
        let far = to.dot(self.along);
        if far <= 0.0 {
            libm::hypot(to.x, to.y)
        } else if far >= self.length {
            let to = p - self.end;
            libm::hypot(to.x, to.y)
        } else {
            self.along.cross(to).abs()
        }
    }

    /// Distance of two edges that do not cross; two that do are taken for 0 apart.
    fn gap(&self, other: &Edge) -> f64 {
        let at = |p: Point| Coord { x: p.x, y: p.y };
        let side = |edge: &Edge, p: Point| orient2d(at(edge.start), at(edge.end), at(p));
        let parted = |edge: &Edge, other: &Edge| {
            let (a, b) = (side(edge, other.start), side(edge, other.end));
            (a > 0.0 && b < 0.0) || (a < 0.0 && b > 0.0)
        };
        if parted(self, other) && parted(other, self) {
            return 0.0;
        }
        self.distance(other.start)
            .min(self.distance(other.end))
            .min(other.distance(self.start))
            .min(other.distance(self.end))
    }

    /// The part of this edge within `reach` of another, as distances along this one.
    fn within(&self, other: &Edge, reach: f64) -> Option<(f64, f64)> {
        let mut span: Option<(f64, f64)> = None;
        let mut add = |low: f64, high: f64| {
            let (low, high) = (low.max(0.0), high.min(self.length));
            if low <= high {
                span = Some(match span {
                    None => (low, high),
                    Some((a, b)) => (a.min(low), b.max(high)),
                });
            }
        };
        // The round ends.
        for end in [other.start, other.end] {
            let to = end - self.start;
            let (far, off) = (to.dot(self.along), self.along.cross(to));
            let half = reach * reach - off * off;
            if half >= 0.0 {
                let half = half.sqrt();
                add(far - half, far + half);
            }
        }
        // The straight part: where this edge is beside the other and within reach of its line.
        let to = self.start - other.start;
        let beside = clip(
            to.dot(other.along),
            self.along.dot(other.along),
            0.0,
            other.length,
        );
        let close = clip(
            other.along.cross(to),
            other.along.cross(self.along),
            -reach,
            reach,
        );
        if let (Some(a), Some(b)) = (beside, close) {
            add(a.0.max(b.0), a.1.min(b.1));
        }
        span
    }
}

/// Where `start + slope * s` is within `low..=high`.
fn clip(start: f64, slope: f64, low: f64, high: f64) -> Option<(f64, f64)> {
    if slope == 0.0 {
        return (low <= start && start <= high).then_some((f64::NEG_INFINITY, f64::INFINITY));
    }
    let (a, b) = ((low - start) / slope, (high - start) / slope);
    Some((a.min(b), a.max(b)))
}
