//! Many pieces at once: overlaps are let stand, weighed, and driven out.
//!
//! Every piece lies somewhere in its room, over others if need be. The fault of a lay is the sum, over pairs that overlap,
//! of the least shift that would part them by their size, about the area that lies over, times a weight of the pair. Piece
//! after piece that overlaps moves to where its own share of the fault is least: places tried at random, the best of them
//! improved step by step. Pairs that go on overlapping grow heavier, so that a lay stuck in one place is lifted out of it
//! (guided local search: Voudouris and Tsang, 1999; applied to lays by Egeblad, Nielsen and Odgaard, European Journal of
//! Operational Research 183, 2007; the measure by the shift that parts is that of Imamichi, Yagiura and Nagamochi, Discrete
//! Optimization 6, 2009; by the size of the pieces too is our own, and did well in trials).

use std::collections::BTreeMap;
use std::sync::Arc;

use kurbo::{Point, Vec2};

use crate::chance::Chance;
use crate::clash::Clash;
use crate::grid::Grid;
use crate::near::{Near, Nears};
use crate::shape::{Convex, bounds, length, sum, through_origin};

/// A shape lying one way, not yet shifted.
pub(crate) struct Attitude {
    /// Its convex parts.
    pub(crate) parts: Vec<Vec<Point>>,
    /// The same shape turned end for end, if that is among the attitudes.
    pub(crate) opposite: Option<usize>,
    pub(crate) low: Point,
    pub(crate) high: Point,
    /// Root of its size (mm), the mean of length and width: a long seam over a long seam is harder to part than two small
    /// pieces as deep in each other.
    heft: f64,
}

impl Attitude {
    pub(crate) fn new(parts: Vec<Vec<Point>>, opposite: Option<usize>) -> Attitude {
        let corners: Vec<Point> = parts.iter().flatten().copied().collect();
        let (low, high) = bounds(&corners);
        Attitude {
            parts,
            opposite,
            low,
            high,
            heft: ((high.x - low.x) * (high.y - low.y)).sqrt().sqrt(),
        }
    }
}

/// How deep any attitude lies in any other.
pub(crate) struct Table {
    pub(crate) attitudes: Vec<Attitude>,
    clashes: Vec<Clash>,
    /// For a moving and a standing attitude: which clash, and whether it is that of the shift reversed.
    index: Vec<Vec<(usize, f64)>>,
}

impl Table {
    /// Every pair, parted by at least `disc`, a convex shape about the origin; worked by so many threads. Adds the work done
    /// to `work`.
    pub(crate) fn new(
        attitudes: Vec<Attitude>,
        disc: &[Point],
        threads: usize,
        work: &mut u64,
    ) -> Table {
        let count = attitudes.len();
        let mut known: BTreeMap<(usize, usize), usize> = BTreeMap::new();
        let mut pairs = Vec::new();
        let mut index = vec![vec![(0, 1.0); count]; count];
        for moving in 0..count {
            for standing in 0..count {
                // Seen from the other, and turned end for end, it is the same pair.
                let mut same = vec![((moving, standing), 1.0), ((standing, moving), -1.0)];
                if let (Some(a), Some(b)) =
                    (attitudes[moving].opposite, attitudes[standing].opposite)
                {
                    same.extend([((a, b), -1.0), ((b, a), 1.0)]);
                }
                let known_as = same
                    .iter()
                    .find_map(|(pair, sign)| Some((*known.get(pair)?, *sign)));
                index[moving][standing] = known_as.unwrap_or_else(|| {
                    known.insert((moving, standing), pairs.len());
                    pairs.push((moving, standing));
                    (pairs.len() - 1, 1.0)
                });
            }
        }
        let clash = |&(moving, standing): &(usize, usize)| {
            let mut sums = Vec::new();
            for obstacle in &attitudes[standing].parts {
                for part in &attitudes[moving].parts {
                    let points = sum(obstacle, &through_origin(part));
                    sums.push(Convex::new(match disc.is_empty() {
                        true => points,
                        false => sum(&points, disc),
                    }));
                }
            }
            let mut work = 0;
            (Clash::new(sums, &mut work), work)
        };
        let chunk = pairs.len().div_ceil(threads.max(1)).max(1);
        let made: Vec<(Clash, u64)> = match threads {
            0 | 1 => pairs.iter().map(clash).collect(),
            _ => std::thread::scope(|scope| {
                let running: Vec<_> = pairs
                    .chunks(chunk)
                    .map(|pairs| scope.spawn(move || pairs.iter().map(clash).collect::<Vec<_>>()))
                    .collect();
                running
                    .into_iter()
                    .flat_map(|thread| thread.join().unwrap_or_default())
                    .collect()
            }),
        };
        *work += made.iter().map(|(_, work)| work).sum::<u64>();
        Table {
            attitudes,
            clashes: made.into_iter().map(|(clash, _)| clash).collect(),
            index,
        }
    }
}

/// Where the shifts of an attitude may lie.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Room {
    pub(crate) low: Point,
    pub(crate) high: Point,
    /// Places they keep to, where points of pieces must match.
    pub(crate) grid: Option<Grid>,
}

impl Room {
    /// Whether its grid has a place in it.
    pub(crate) fn has_place(&self) -> bool {
        let middle = self.low.midpoint(self.high);
        let on_grid = |grid: Grid| grid.nearest(middle, self.low, self.high).is_some();
        self.grid.is_none_or(on_grid)
    }

    pub(crate) fn nearest(&self, p: Point) -> Point {
        if let Some(grid) = self.grid {
            return grid.nearest(p, self.low, self.high).unwrap_or(p);
        }
        Point::new(
            p.x.min(self.high.x).max(self.low.x),
            p.y.min(self.high.y).max(self.low.y),
        )
    }

    fn any(&self, chance: &mut Chance) -> Point {
        let p = Point::new(
            self.low.x + chance.share() * (self.high.x - self.low.x),
            self.low.y + chance.share() * (self.high.y - self.low.y),
        );
        match self.grid {
            Some(_) => self.nearest(p),
            None => p,
        }
    }
}

/// A shape lying one way on one panel.
#[derive(Clone)]
pub(crate) struct Stance {
    /// Index of the attitude in the table.
    pub(crate) attitude: usize,
    pub(crate) panel: usize,
    pub(crate) room: Room,
    /// What the room has that is not cloth: beyond a slanting edge, in a bay, a hole, a flaw.
    pub(crate) walls: Option<Arc<Clash>>,
}

/// One piece as it lies.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Pose {
    pub(crate) stance: usize,
    pub(crate) shift: Point,
}

/// What stays the same while pieces move.
pub(crate) struct Scene<'a> {
    pub(crate) table: &'a Table,
    /// The stances each piece may have.
    pub(crate) ways: Vec<Vec<usize>>,
    pub(crate) stances: Vec<Stance>,
}

impl Scene<'_> {
    /// Every piece somewhere in its room, one way or another.
    pub(crate) fn strewn(&self, chance: &mut Chance) -> Vec<Pose> {
        (self.ways.iter())
            .map(|own| self.anywhere(own, chance))
            .collect()
    }

    /// Somewhere in one of some stances.
    pub(crate) fn anywhere(&self, own: &[usize], chance: &mut Chance) -> Pose {
        let stance = own[chance.pick(own.len())];
        Pose {
            stance,
            shift: self.stances[stance].room.any(chance),
        }
    }

    /// The shape of a stance.
    pub(crate) fn shape(&self, stance: usize) -> &Attitude {
        &self.table.attitudes[self.stances[stance].attitude]
    }

    /// How much one pose lies over another: how deep, by the size of both.
    pub(crate) fn overlap(&self, pose: Pose, their: Pose) -> f64 {
        let (one, other) = (&self.stances[pose.stance], &self.stances[their.stance]);
        if one.panel != other.panel {
            return 0.0;
        }
        let (clash, sign) = self.table.index[one.attitude][other.attitude];
        let p = ((pose.shift - their.shift) * sign).to_point();
        self.table.clashes[clash].depth_near(p) * self.size(pose.stance, their.stance)
    }

    /// How much a pose lies over what is not cloth.
    pub(crate) fn wall(&self, pose: Pose) -> f64 {
        let walls = self.stances[pose.stance].walls.as_ref();
        let size = self.size(pose.stance, pose.stance);
        walls.map_or(0.0, |walls| walls.depth_near(pose.shift) * size)
    }

    /// Mean size of two shapes.
    fn size(&self, one: usize, other: usize) -> f64 {
        self.shape(one).heft * self.shape(other).heft
    }
}

/// The pieces as they lie, how much they lie over each other, and what each pair weighs; a piece with itself stands for the
/// piece and what is not cloth.
#[derive(Clone)]
pub(crate) struct Crowd {
    pub(crate) poses: Vec<Pose>,
    overlaps: Vec<f64>,
    weights: Vec<f64>,
}

/// Places tried at random all over the room, and about where the piece lies; these numbers, and the steps of `improve`, have
/// no source; they did well in trials.
const WIDE: usize = 12;
const CLOSE: usize = 4;
/// How many of them are improved.
const KEPT: usize = 3;

impl Crowd {
    /// Pieces brought into their rooms, all pairs of one weight.
    pub(crate) fn new(scene: &Scene<'_>, poses: Vec<Pose>, work: &mut u64) -> Crowd {
        let count = poses.len();
        let mut crowd = Crowd {
            poses,
            overlaps: vec![0.0; count * count],
            weights: vec![1.0; count * count],
        };
        for pose in &mut crowd.poses {
            pose.shift = scene.stances[pose.stance].room.nearest(pose.shift);
        }
        for piece in 0..count {
            crowd.measure_one(scene, piece, work);
        }
        crowd
    }

    pub(crate) fn measure_one(&mut self, scene: &Scene<'_>, piece: usize, work: &mut u64) {
        let count = self.poses.len();
        let pose = self.poses[piece];
        for other in 0..count {
            let overlap = match other == piece {
                true => scene.wall(pose),
                false => scene.overlap(pose, self.poses[other]),
            };
            self.overlaps[piece * count + other] = overlap;
            self.overlaps[other * count + piece] = overlap;
        }
        *work += 1 + count as u64 / 8;
    }

    /// The sum of all overlaps.
    pub(crate) fn overlap(&self) -> f64 {
        let count = self.poses.len();
        let walls: f64 = (0..count)
            .map(|piece| self.overlaps[piece * (count + 1)])
            .sum();
        (self.overlaps.iter().sum::<f64>() + walls) / 2.0
    }

    fn fault_of(&self, piece: usize) -> f64 {
        let row = piece * self.poses.len()..(piece + 1) * self.poses.len();
        let each = self.overlaps[row.clone()].iter().zip(&self.weights[row]);
        each.map(|(overlap, weight)| overlap * weight).sum()
    }

    /// Pairs that overlap grow heavier, the worst most; others lose what they gained. By how much has no source; it did
    /// well in trials.
    pub(crate) fn reweigh(&mut self) {
        let most = self
            .overlaps
            .iter()
            .fold(0.0_f64, |most, &overlap| most.max(overlap));
        for (weight, &overlap) in self.weights.iter_mut().zip(&self.overlaps) {
            *weight *= match overlap > 0.0 {
                true => 1.2 + 0.8 * overlap / most,
                false => 0.95,
            };
            *weight = weight.max(1.0);
        }
    }

    /// Moves every piece that overlaps, in random order.
    pub(crate) fn sweep(&mut self, scene: &Scene<'_>, chance: &mut Chance, work: &mut u64) {
        let mut order: Vec<usize> = (0..self.poses.len())
            .filter(|&piece| self.fault_of(piece) > 0.0)
            .collect();
        for i in (1..order.len()).rev() {
            order.swap(i, chance.pick(i + 1));
        }
        for piece in order {
            if self.fault_of(piece) > 0.0 {
                self.relocate(scene, piece, chance, work);
            }
        }
    }

    /// What a piece meets in a stance.
    fn nears<'a>(&self, scene: &'a Scene<'_>, piece: usize, stance: usize) -> Nears<'a> {
        let count = self.poses.len();
        let own = &scene.stances[stance];
        let mut nears = Vec::with_capacity(count);
        if let Some(clash) = &own.walls {
            let weight = self.weights[piece * (count + 1)] * scene.size(stance, stance);
            nears.push(Near::new(clash, 1.0, Point::ORIGIN, weight));
        }
        for (other, their) in self.poses.iter().enumerate() {
            let standing = &scene.stances[their.stance];
            if other != piece && standing.panel == own.panel {
                let (clash, sign) = scene.table.index[own.attitude][standing.attitude];
                let weight = self.weights[piece * count + other] * scene.size(stance, their.stance);
                nears.push(Near::new(
                    &scene.table.clashes[clash],
                    sign,
                    their.shift,
                    weight,
                ));
            }
        }
        Nears::new(nears, &own.room)
    }

    /// Moves one piece to where its fault is least, of the places tried.
    fn relocate(&mut self, scene: &Scene<'_>, piece: usize, chance: &mut Chance, work: &mut u64) {
        let now = self.poses[piece];
        let ways = &scene.ways[piece];
        let mut kept: Vec<(f64, usize, Point)> = Vec::with_capacity(KEPT + 1);
        let nears: Vec<Nears<'_>> = ways
            .iter()
            .map(|&stance| self.nears(scene, piece, stance))
            .collect();
        let keep = |kept: &mut Vec<(f64, usize, Point)>, fault: f64, way: usize, p: Point| {
            if kept.len() == KEPT && fault >= kept[KEPT - 1].0 {
                return;
            }
            let place = kept
                .iter()
                .position(|other| fault < other.0)
                .unwrap_or(kept.len());
            kept.insert(place, (fault, way, p));
            kept.truncate(KEPT);
        };
        for (way, (&stance, near)) in ways.iter().zip(&nears).enumerate() {
            let room = &scene.stances[stance].room;
            let shape = scene.shape(stance);
            let reach = 0.1 * length(shape.high - shape.low);
            if stance == now.stance {
                let fault = near.fault(now.shift, f64::INFINITY, work);
                keep(&mut kept, fault, way, now.shift);
            }
            for round in 0..WIDE + CLOSE {
                let p = match round < WIDE {
                    true => room.any(chance),
                    false => room.nearest(
                        now.shift
                            + Vec2::new(chance.share() - 0.5, chance.share() - 0.5) * (2.0 * reach),
                    ),
                };
                let bound = match kept.len() == KEPT {
                    true => kept[KEPT - 1].0,
                    false => f64::INFINITY,
                };
                let fault = near.fault(p, bound, work);
                if fault < bound {
                    keep(&mut kept, fault, way, p);
                }
            }
        }
        let mut best: Option<(f64, usize, Point)> = None;
        for &(fault, way, p) in &kept {
            let stance = ways[way];
            let shape = scene.shape(stance);
            let size = length(shape.high - shape.low);
            let (fault, p) = improve(
                &nears[way],
                &scene.stances[stance].room,
                (fault, p),
                (0.05 * size, 0.002 * size),
                chance,
                work,
            );
            if best.is_none_or(|(least, _, _)| fault < least) {
                best = Some((fault, way, p));
            }
        }
        if let Some((fault, way, p)) = best {
            let stance = ways[way];
            let shape = scene.shape(stance);
            let size = length(shape.high - shape.low);
            let (_, p) = improve(
                &nears[way],
                &scene.stances[stance].room,
                (fault, p),
                (0.002 * size, 2e-5 * size),
                chance,
                work,
            );
            self.poses[piece] = Pose { stance, shift: p };
            self.measure_one(scene, piece, work);
        }
    }
}

/// Goes downhill, a step along or across or both, longer after a step that helped, shorter after one that did not.
fn improve(
    near: &Nears<'_>,
    room: &Room,
    start: (f64, Point),
    (first, last): (f64, f64),
    chance: &mut Chance,
    work: &mut u64,
) -> (f64, Point) {
    let (mut fault, mut at) = start;
    let mut step = first;
    while step > last && fault > 0.0 {
        let [along, across] = match room.grid {
            Some(grid) => grid.steps(step),
            None => [Vec2::new(step, 0.0), Vec2::new(0.0, step)],
        };
        let turn = match chance.pick(3) {
            0 => along,
            1 => across,
            _ => match chance.pick(2) {
                0 => along + across,
                _ => along - across,
            },
        };
        let mut better = false;
        for p in [at + turn, at - turn] {
            let p = room.nearest(p);
            let there = near.fault(p, fault, work);
            if there < fault {
                (fault, at) = (there, p);
                better = true;
                break;
            }
        }
        step *= if better { 1.1 } else { 0.6 };
    }
    (fault, at)
}
