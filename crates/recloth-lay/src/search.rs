//! What a search knows: the ways each piece may lie, where a panel has room for it, and where it would lie over another.

mod ground;
mod laying;

use std::collections::BTreeMap;
use std::rc::Rc;

use kurbo::{Point, Vec2};

use crate::bounds::{area, grain_turn, usable_area, ways};
use crate::lay::half_turns;
use crate::part::Kept;
use crate::positions::{Blocked, Forbidden, furthest, within};
use crate::shape::{
    Convex, bounds, convex_parts, cover, disc, hull, length, ring, sum, through_origin,
};
use crate::{Hand, Panel, Part, Placement, placed};
use ground::Ground;
pub(crate) use laying::{State, first_lay, lay_again, lay_against, placements};

/// A part in one hand: what the search lays.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Kind {
    pub(crate) part: usize,
    pub(crate) hand: Hand,
}

/// Directions into which pieces are pushed: along an edge first, then across, or into a corner evenly.
const PUSHES: [(f64, f64); 12] = [
    (1.0, 0.03),
    (1.0, -0.03),
    (-1.0, 0.03),
    (-1.0, -0.03),
    (0.03, 1.0),
    (-0.03, 1.0),
    (0.03, -1.0),
    (-0.03, -1.0),
    (0.9, 1.1),
    (-0.9, 1.1),
    (0.9, -1.1),
    (-0.9, -1.1),
];

/// A part turned and mirrored one way, not yet shifted.
struct Attitude {
    part: usize,
    mirrored: bool,
    turn_deg: f64,
    hull: Vec<Point>,
    parts: Vec<Vec<Point>>,
    /// Convex parts within the seam line, if it has one.
    seam: Vec<Vec<Point>>,
}

/// A piece laid.
#[derive(Clone, Copy)]
struct Laid {
    /// Index in the list of pieces.
    piece: usize,
    attitude: usize,
    shift: Vec2,
}

/// What a panel allows one attitude: its positions within the hull, and sums it must not lie in.
struct Free {
    region: Vec<Point>,
    blocked: Blocked,
}

/// Everything computed once and kept.
pub(crate) struct Search<'a> {
    pub(crate) parts: &'a [Part],
    pub(crate) panels: &'a [Panel],
    grounds: Vec<Ground>,
    pub(crate) usable: Vec<f64>,
    covers: Vec<Vec<Point>>,
    pub(crate) areas: Vec<f64>,
    pub(crate) spacing: Vec<Point>,
    attitudes: Vec<Attitude>,
    attitude_index: BTreeMap<(usize, bool, u64), usize>,
    choices: BTreeMap<(Kind, usize), Rc<Vec<usize>>>,
    free: BTreeMap<(usize, usize), Rc<Free>>,
    between: BTreeMap<(usize, usize), Rc<Blocked>>,
    /// Work done so far: positions and pairs of edges looked at.
    pub(crate) work: u64,
}

impl<'a> Search<'a> {
    pub(crate) fn new(parts: &'a [Part], panels: &'a [Panel], spacing: f64) -> Search<'a> {
        Search {
            parts,
            panels,
            grounds: panels.iter().map(Ground::new).collect(),
            usable: panels
                .iter()
                .map(|panel| usable_area(panel, parts))
                .collect(),
            covers: parts
                .iter()
                .map(|part| cover(&ring(&part.outline)))
                .collect(),
            areas: parts.iter().map(|part| area(&part.outline)).collect(),
            spacing: if spacing > 0.0 {
                disc(spacing)
            } else {
                Vec::new()
            },
            attitudes: Vec::new(),
            attitude_index: BTreeMap::new(),
            choices: BTreeMap::new(),
            free: BTreeMap::new(),
            between: BTreeMap::new(),
            work: 0,
        }
    }

    /// A place for one piece alone on a panel that is confirmed.
    pub(crate) fn alone(
        &mut self,
        kind: Kind,
        panel: usize,
        confirmed: &dyn Fn(Placement) -> bool,
    ) -> Option<Placement> {
        let choices = self.choices(kind, panel);
        // A piece that fills the panel from side to side goes there or nowhere: no need to know where it meets the edge.
        let filling = choices.iter().find_map(|&attitude| {
            let shift = self.filling(attitude, panel)?;
            let placement = self.placement(kind, panel, attitude, shift);
            confirmed(placement).then_some(placement)
        });
        if filling.is_some() {
            return filling;
        }
        choices.iter().find_map(|&attitude| {
            let shift = self.place(attitude, panel, &[], Vec2::new(PUSHES[8].0, PUSHES[8].1))?;
            let placement = self.placement(kind, panel, attitude, shift);
            confirmed(placement).then_some(placement)
        })
    }

    /// Where an attitude fills the box about a panel, if it does.
    fn filling(&self, attitude: usize, panel: usize) -> Option<Vec2> {
        /// How much wider or narrower than the box counts as the same (mm): what the checker lets pass, and rounding.
        const SAME: f64 = 1e-5;
        let Attitude {
            part,
            mirrored,
            turn_deg,
            ..
        } = self.attitudes[attitude];
        let at = Placement {
            part,
            hand: Hand::AsDrawn,
            panel,
            mirrored,
            turn_deg,
            shift: Vec2::ZERO,
        };
        let (low, high) = bounds(&placed(&self.parts[part].outline, &at));
        let (cloth_low, cloth_high) = bounds(self.panels[panel].outline());
        let more = (high - low) - (cloth_high - cloth_low);
        let same = more.x.abs() <= SAME && more.y.abs() <= SAME;
        same.then(|| cloth_low.midpoint(cloth_high) - low.midpoint(high))
    }

    /// The ways a piece may lie on a panel: on grain, tilted as far as allowed and half as far, and tilted so that an
    /// edge of it runs along an edge of the panel; turned end for end and over where it may be.
    pub(crate) fn choices(&mut self, kind: Kind, panel: usize) -> Rc<Vec<usize>> {
        if let Some(choices) = self.choices.get(&(kind, panel)) {
            return Rc::clone(choices);
        }
        let (part, cloth) = (&self.parts[kind.part], &self.panels[panel]);
        let mut found: Vec<(usize, usize)> = Vec::new();
        for mirrored in ways(part, kind.hand, cloth) {
            let square = grain_turn(part, cloth, mirrored);
            for (rank, tilt) in self
                .tilts(kind.part, panel, mirrored, square)
                .into_iter()
                .enumerate()
            {
                for half in part.turned(cloth.nap()) {
                    let turn_deg = half_turns(square + half + tilt);
                    found.push((rank, self.attitude(kind.part, mirrored, turn_deg)));
                }
            }
        }
        found.sort_by_key(|(rank, _)| *rank);
        let mut choices: Vec<usize> = Vec::new();
        for (_, attitude) in found {
            if !choices.contains(&attitude) {
                choices.push(attitude);
            }
        }
        let choices = Rc::new(choices);
        self.choices.insert((kind, panel), Rc::clone(&choices));
        choices
    }

    fn tilts(&self, part: usize, panel: usize, mirrored: bool, square: f64) -> Vec<f64> {
        let most = self.parts[part].tilt_deg;
        let mut tilts = vec![0.0];
        if most == 0.0 {
            return tilts;
        }
        let at = Placement {
            part,
            hand: Hand::AsDrawn,
            panel,
            mirrored,
            turn_deg: square,
            shift: Vec2::ZERO,
        };
        let own = long_sides(&placed(&self.covers[part], &at));
        let cloth = long_sides(&self.grounds[panel].hull);
        let mut along: Vec<(f64, f64)> = Vec::new();
        for &(angle, long) in &own {
            for &(other, wide) in &cloth {
                let off = half_turns(2.0 * (other - angle)) / 2.0;
                for off in [off, off - 180.0, off + 180.0] {
                    if off.abs() <= most {
                        along.push((-long.min(wide), off));
                    }
                }
            }
        }
        along.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)));
        let spread = [most, -most, most / 2.0, -most / 2.0];
        let most_tilts = if most > 10.0 { 12 } else { 5 };
        for tilt in along
            .into_iter()
            .map(|(_, tilt)| tilt)
            .take(24)
            .chain(spread)
        {
            if tilts.len() < most_tilts
                && tilts.iter().all(|other: &f64| (other - tilt).abs() > 1e-4)
            {
                tilts.push(tilt);
            }
        }
        tilts
    }

    fn attitude(&mut self, part: usize, mirrored: bool, turn_deg: f64) -> usize {
        let key = (part, mirrored, turn_deg.to_bits());
        if let Some(&index) = self.attitude_index.get(&key) {
            return index;
        }
        let at = Placement {
            part,
            hand: Hand::AsDrawn,
            panel: 0,
            mirrored,
            turn_deg,
            shift: Vec2::ZERO,
        };
        let shape = ring(&placed(&self.covers[part], &at));
        let seam = match self.parts[part].seam.is_empty() {
            true => Vec::new(),
            false => convex_parts(&cover(&ring(&placed(&self.parts[part].seam, &at)))),
        };
        let index = self.attitudes.len();
        self.attitudes.push(Attitude {
            part,
            mirrored,
            turn_deg,
            hull: hull(&shape),
            parts: convex_parts(&shape),
            seam,
        });
        self.attitude_index.insert(key, index);
        index
    }

    /// How far the grain of an attitude is off the grain of a panel (deg).
    fn tilt(&self, attitude: usize, panel: usize) -> f64 {
        let Attitude {
            part,
            mirrored,
            turn_deg,
            ..
        } = self.attitudes[attitude];
        let square = grain_turn(&self.parts[part], &self.panels[panel], mirrored);
        let off = half_turns(2.0 * (turn_deg - square)) / 2.0;
        if off.abs() < 1e-9 { 0.0 } else { off }
    }

    pub(crate) fn placement(
        &self,
        kind: Kind,
        panel: usize,
        attitude: usize,
        shift: Vec2,
    ) -> Placement {
        let attitude = &self.attitudes[attitude];
        Placement {
            part: attitude.part,
            hand: kind.hand,
            panel,
            mirrored: attitude.mirrored,
            turn_deg: attitude.turn_deg,
            shift: Vec2::new(neat(shift.x), neat(shift.y)),
        }
    }

    /// The place of an attitude on a panel that is furthest against `push`, clear of what lies there.
    fn place(&mut self, attitude: usize, panel: usize, laid: &[Laid], push: Vec2) -> Option<Vec2> {
        self.work += 16;
        let free = self.free(attitude, panel);
        if free.region.is_empty() {
            return None;
        }
        let between: Vec<(Rc<Blocked>, Vec2)> = laid
            .iter()
            .map(|other| (self.between(attitude, other.attitude), other.shift))
            .collect();
        let mut forbidden = vec![Forbidden {
            blocked: &free.blocked,
            shift: Vec2::ZERO,
        }];
        forbidden.extend(between.iter().map(|(blocked, shift)| Forbidden {
            blocked,
            shift: *shift,
        }));
        furthest(&free.region, &forbidden, push, &mut self.work).map(Point::to_vec2)
    }

    fn free(&mut self, attitude: usize, panel: usize) -> Rc<Free> {
        if let Some(free) = self.free.get(&(attitude, panel)) {
            return Rc::clone(free);
        }
        let (shape, ground) = (&self.attitudes[attitude], &self.grounds[panel]);
        let region = within(&ground.hull, &shape.hull);
        let sums = match region.is_empty() {
            true => Vec::new(),
            false => self.walls(attitude, panel),
        };
        let blocked = Blocked::new(sums, &mut self.work);
        let free = Rc::new(Free { region, blocked });
        self.free.insert((attitude, panel), Rc::clone(&free));
        free
    }

    /// The sums in which an attitude would lie over what is not cloth, or over a flaw it is kept from.
    fn walls(&self, attitude: usize, panel: usize) -> Vec<Convex> {
        let (shape, ground) = (&self.attitudes[attitude], &self.grounds[panel]);
        let mut walls = sums(&ground.obstacles, &shape.parts, &[]);
        for (flaw, obstacles) in self.panels[panel].flaws().iter().zip(&ground.flaws) {
            let kept: &[Vec<Point>] = match self.parts[shape.part].kept_from(flaw) {
                Kept::Nothing => &[],
                Kept::Seam => &shape.seam,
                Kept::Whole => &shape.parts,
            };
            walls.extend(sums(obstacles, kept, &[]));
        }
        walls
    }

    /// The positions of an attitude within the hull of a panel, and those among them, or about, where it lies over what is not
    /// cloth; `None` where it does not go into the hull.
    pub(crate) fn ground(
        &self,
        attitude: usize,
        panel: usize,
    ) -> Option<(Vec<Point>, Vec<Convex>)> {
        let (shape, ground) = (&self.attitudes[attitude], &self.grounds[panel]);
        let region = within(&ground.hull, &shape.hull);
        (!region.is_empty()).then(|| {
            let mut walls = self.walls(attitude, panel);
            walls.extend(sums(
                &ground.beyond,
                core::slice::from_ref(&shape.hull),
                &[],
            ));
            (region, walls)
        })
    }

    /// Whether an attitude is mirrored, and its turn (deg).
    pub(crate) fn lie(&self, attitude: usize) -> (bool, f64) {
        let at = &self.attitudes[attitude];
        (at.mirrored, at.turn_deg)
    }

    /// The convex parts of an attitude.
    pub(crate) fn convex(&self, attitude: usize) -> Vec<Vec<Point>> {
        self.attitudes[attitude].parts.clone()
    }

    fn between(&mut self, attitude: usize, other: usize) -> Rc<Blocked> {
        if let Some(between) = self.between.get(&(attitude, other)) {
            return Rc::clone(between);
        }
        let (shape, obstacle) = (&self.attitudes[attitude], &self.attitudes[other]);
        let sums = sums(&obstacle.parts, &shape.parts, &self.spacing);
        let between = Rc::new(Blocked::new(sums, &mut self.work));
        self.between.insert((attitude, other), Rc::clone(&between));
        between
    }
}

/// A shift on a grid a few millionths of a micrometre wide, so that a piece laid at nought says nought.
pub(crate) fn neat(shift: f64) -> f64 {
    const GRID: f64 = 268_435_456.0; // 2^28 to the millimetre
    (shift * GRID).round() / GRID + 0.0
}

/// The sums in which a shape would lie over an obstacle, grown by a disc where there is one.
fn sums(obstacles: &[Vec<Point>], shape: &[Vec<Point>], disc: &[Point]) -> Vec<Convex> {
    let mut sums = Vec::new();
    for obstacle in obstacles {
        for part in shape {
            let mut points = sum(obstacle, &through_origin(part));
            if !disc.is_empty() {
                points = sum(&points, disc);
            }
            sums.push(Convex::new(points));
        }
    }
    sums
}

/// Direction (deg) and length of the sides that are not short.
fn long_sides(points: &[Point]) -> Vec<(f64, f64)> {
    let n = points.len();
    let sides: Vec<Vec2> = (0..n).map(|i| points[(i + 1) % n] - points[i]).collect();
    let longest = sides
        .iter()
        .fold(0.0, |long: f64, &side| long.max(length(side)));
    sides
        .into_iter()
        .filter(|&side| length(side) > 0.15 * longest)
        .map(|side| {
            (
                libm::atan2(side.y, side.x) * (180.0 / core::f64::consts::PI),
                length(side),
            )
        })
        .collect()
}
