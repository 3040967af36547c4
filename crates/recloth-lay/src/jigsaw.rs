//! Pieces that fill the cloth, or all but: corner after corner of what is left free is given the piece that fits into it.
//!
//! Where no cloth is to spare, every corner of the free cloth is filled, and the piece along its first side has a corner of
//! its own there. So the pieces that may lie in a corner are few, their place is given, and where one corner takes none, what
//! was laid before is wrong. The corner that takes fewest is filled first. Where there is a little to spare a corner may be
//! left as waste, at first none, then one, and so on.
//!
//! The free cloth is kept as its boundary alone: directed sides between numbered points, free cloth on the left. A piece
//! that lies within it takes its own sides off the boundary where they run along it and adds them, reversed, where they do
//! not, so nothing is ever intersected or rounded.

use core::f64::consts::PI;
use std::collections::BTreeSet;

use kurbo::{Point, Vec2};

use crate::bounds::{area, grain_turn, ways};
use crate::chance::Chance;
use crate::lay::half_turns;
use crate::part::Kept;
use crate::search::{Kind, neat};
use crate::shape::{bounds, length, ring, turn};
use crate::watch::Watch;
use crate::{Hand, Panel, Part, Placement, placed};

/// Points nearer than this are one, and sides nearer run along each other (mm). Far above rounding, far below a cutter's eye;
/// the checker has the last word.
const NEAR: f64 = 1e-5;
/// Directions that differ by less are one (rad).
const STRAIGHT: f64 = 1e-8;
/// Corners with more in them than this stay as they are: there is no telling such a corner from a straight side (rad).
const CORNER: f64 = PI - 1e-6;
/// More points than this on one piece or panel are not worked through.
const MANY: usize = 400;
/// Evaluations after which a run is begun again; half as many more each time. No source; it did well in trials.
const PATIENCE: u64 = 3_000_000;
/// Most corners that are left as waste; more are not worth looking at. No source; it did well in trials.
const MOST_WASTE: usize = 12;

/// Free cloth on one panel.
#[derive(Clone, Default)]
struct Free {
    points: Vec<Point>,
    sides: Vec<(usize, usize)>,
}

/// A corner of the free cloth.
#[derive(Clone, Copy)]
struct Corner {
    at: usize,
    /// The side that leaves it, and the side that comes to it, both seen from the corner.
    out: Vec2,
    back: Vec2,
    angle: f64,
}

impl Free {
    /// The panel less its holes and flaws; `None` where these do not lie within it or are grown by a margin.
    fn new(panel: &Panel) -> Option<Free> {
        let mut free = Free::default();
        let outline = plain(&ring(panel.outline()));
        if outline.len() > MANY {
            return None;
        }
        let numbers: Vec<usize> = outline.iter().map(|&p| free.number(p)).collect();
        free.sides = pairs(&numbers).collect();
        let flaws =
            (panel.flaws().iter()).filter(|flaw| flaw.outline.len() > 2 || flaw.margin > 0.0);
        for flaw in flaws.clone() {
            if flaw.margin > 0.0 || flaw.outline.len() < 3 {
                return None;
            }
        }
        let taken = (panel.holes().iter()).chain(flaws.map(|flaw| &flaw.outline));
        for shape in taken {
            let shape = plain(&ring(shape));
            free = (shape.len() <= MANY).then(|| free.without(&shape))??;
        }
        Some(free)
    }

    fn number(&mut self, p: Point) -> usize {
        let known = self.points.iter().position(|&other| near(p, other));
        known.unwrap_or_else(|| {
            self.points.push(p);
            self.points.len() - 1
        })
    }

    fn area(&self) -> f64 {
        (self.sides.iter())
            .map(|&(a, b)| self.points[a].to_vec2().cross(self.points[b].to_vec2()))
            .sum::<f64>()
            / 2.0
    }

    fn side(&self, (a, b): (usize, usize)) -> (Point, Point) {
        (self.points[a], self.points[b])
    }

    /// Whether a point is on the cloth; for one on the boundary it says either.
    fn holds(&self, p: Point) -> bool {
        (self.sides.iter())
            .map(|&side| self.side(side))
            .filter(|&(a, b)| (a.y <= p.y) != (b.y <= p.y))
            .filter(|&(a, b)| (turn(a, b, p) > 0.0) == (b.y > a.y))
            .count()
            % 2
            == 1
    }

    /// The cloth without a piece; `None` where the piece does not lie within it.
    fn without(&self, shape: &[Point]) -> Option<Free> {
        let mut free = self.clone();
        let own: Vec<usize> = shape.iter().map(|&p| free.number(p)).collect();
        // A piece whose points are not all its own cannot be told from its neighbours.
        let distinct: BTreeSet<usize> = own.iter().copied().collect();
        if distinct.len() < own.len() {
            return None;
        }
        // Sides of the cloth divided where points of the piece lie on them, and the piece's where points of the cloth do.
        let mut sides = Vec::with_capacity(self.sides.len() + shape.len());
        for &(a, b) in &self.sides {
            free.divide((a, b), &own, &mut sides);
        }
        let there: BTreeSet<usize> = (self.sides.iter()).flat_map(|&(a, b)| [a, b]).collect();
        let there: Vec<usize> = there.into_iter().collect();
        let mut edges = Vec::with_capacity(shape.len());
        for edge in pairs(&own) {
            free.divide(edge, &there, &mut edges);
        }
        // No part of the boundary within the piece.
        for &at in &there {
            if !distinct.contains(&at) && within(shape, free.points[at]) {
                return None;
            }
        }
        for &(a, b) in &edges {
            if let Some(index) = sides.iter().position(|&side| side == (a, b)) {
                sides.swap_remove(index);
                continue;
            }
            if sides.contains(&(b, a)) {
                return None;
            }
            let (p, q) = free.side((a, b));
            if !self.holds(p.midpoint(q))
                || self
                    .sides
                    .iter()
                    .any(|&side| cross((p, q), self.side(side)))
            {
                return None;
            }
            sides.push((b, a));
        }
        free.sides = sides;
        Some(free)
    }

    /// A side divided at those of some points that lie on it.
    fn divide(&self, (a, b): (usize, usize), at: &[usize], into: &mut Vec<(usize, usize)>) {
        let (p, q) = self.side((a, b));
        let run = q - p;
        let size = length(run);
        let (low, high) = bounds(&[p, q]);
        let mut on: Vec<(f64, usize)> = (at.iter())
            .filter(|&&other| other != a && other != b)
            .filter_map(|&other| {
                let r = self.points[other];
                let off = r.x < low.x - NEAR
                    || r.x > high.x + NEAR
                    || r.y < low.y - NEAR
                    || r.y > high.y + NEAR;
                (!off && (run.cross(r - p)).abs() < NEAR * size).then(|| (run.dot(r - p), other))
            })
            .collect();
        on.sort_by(|x, y| x.0.total_cmp(&y.0));
        let mut from = a;
        for (_, to) in on {
            if to != from {
                into.push((from, to));
                from = to;
            }
        }
        into.push((from, b));
    }

    fn corners(&self) -> Vec<Corner> {
        let mut corners = Vec::new();
        for &(at, to) in &self.sides {
            let p = self.points[at];
            let out = self.points[to] - p;
            let back = (self.sides.iter())
                .filter(|&&(_, end)| end == at)
                .map(|&(from, _)| self.points[from] - p)
                .map(|back| (between(out, back), back))
                .min_by(|x, y| x.0.total_cmp(&y.0));
            if let Some((angle, back)) = back
                && angle < CORNER
            {
                corners.push(Corner {
                    at,
                    out: out / length(out),
                    back: back / length(back),
                    angle,
                });
            }
        }
        corners
    }
}

/// Brings things into an order of chance, where there is one.
fn shuffle<T>(things: &mut [T], chance: Option<&mut Chance>) {
    if let Some(chance) = chance {
        for i in (1..things.len()).rev() {
            things.swap(i, chance.pick(i + 1));
        }
    }
}

/// Turn from one direction to another, counter-clockwise (rad, 0 excluded to 2 pi).
fn between(from: Vec2, to: Vec2) -> f64 {
    let angle = libm::atan2(from.cross(to), from.dot(to));
    if angle > STRAIGHT {
        angle
    } else {
        angle + 2.0 * PI
    }
}

fn near(p: Point, q: Point) -> bool {
    (p.x - q.x).abs() < NEAR && (p.y - q.y).abs() < NEAR
}

fn pairs(ring: &[usize]) -> impl Iterator<Item = (usize, usize)> + '_ {
    (0..ring.len()).map(|i| (ring[i], ring[(i + 1) % ring.len()]))
}

/// Whether two segments cross, each with both ends clear of the other.
fn cross((a, b): (Point, Point), (c, d): (Point, Point)) -> bool {
    let sides = |p: Point, q: Point, r: Point, s: Point| {
        let least = NEAR * length(q - p);
        let (one, other) = (turn(p, q, r), turn(p, q, s));
        (one > least && other < -least) || (one < -least && other > least)
    };
    sides(a, b, c, d) && sides(c, d, a, b)
}

/// Whether a point is inside a ring and not near its sides.
fn within(shape: &[Point], p: Point) -> bool {
    let n = shape.len();
    let mut inside = false;
    for i in 0..n {
        let (a, b) = (shape[i], shape[(i + 1) % n]);
        if (a.y <= p.y) != (b.y <= p.y) && (turn(a, b, p) > 0.0) == (b.y > a.y) {
            inside = !inside;
        }
        let run = b - a;
        let along = (run.dot(p - a) / run.hypot2()).clamp(0.0, 1.0);
        if (a + run * along - p).hypot2() < NEAR * NEAR {
            return false;
        }
    }
    inside
}

/// Points a little way in from the corners of a ring.
fn inner(ring: &[Point]) -> impl Iterator<Item = Point> + '_ {
    let n = ring.len();
    (0..n).filter_map(move |i| {
        let (before, at, after) = (ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n]);
        let (out, back) = (after - at, before - at);
        let half = out / length(out) + back / length(back);
        let size = length(half);
        // Further in from a sharp corner, whose sides are soon left; none from one that is hardly a corner.
        let step = 100.0 * NEAR * out.cross(back).signum() / size / (size / 2.0).clamp(0.1, 1.0);
        (size > 0.1).then(|| at + half * step)
    })
}

/// A ring without points along straight sides.
fn plain(points: &[Point]) -> Vec<Point> {
    let mut kept = points.to_vec();
    let mut i = 0;
    while i < kept.len() && kept.len() > 3 {
        let n = kept.len();
        let (a, b, c) = (kept[(i + n - 1) % n], kept[i], kept[(i + 1) % n]);
        if turn(a, b, c).abs() < NEAR / 10.0 * length(c - a) && (b - a).dot(c - b) > 0.0 {
            kept.remove(i);
        } else {
            i += 1;
        }
    }
    kept
}

/// A kind of piece lying one way on one panel, on grain.
struct Attitude {
    kind: usize,
    mirrored: bool,
    turn_deg: f64,
    tilt_deg: f64,
    ring: Vec<Point>,
    /// At each corner the direction of the side that leaves, of the one that comes, and the angle between.
    corners: Vec<(Vec2, Vec2, f64)>,
}

/// A piece in a corner.
#[derive(Clone)]
struct Move {
    panel: usize,
    attitude: usize,
    turn_deg: f64,
    ring: Vec<Point>,
    shift: Vec2,
    /// Whether it fills the corner from side to side.
    full: bool,
}

/// The pieces and panels, worked up.
pub(crate) struct Jigsaw<'a> {
    parts: &'a [Part],
    kinds: Vec<Kind>,
    areas: Vec<f64>,
    attitudes: Vec<Vec<Attitude>>,
    begin: State,
    spare: f64,
}

/// What is laid so far.
#[derive(Clone)]
struct State {
    free: Vec<Free>,
    left: Vec<u32>,
    /// Corners given up: panel and place.
    waste: Vec<(usize, Point)>,
}

/// One way of looking, with what it may do.
struct Solver<'a, 'b, 'c> {
    of: &'a Jigsaw<'a>,
    work: u64,
    /// Work after which this run is given up.
    until: u64,
    watch: &'b mut Watch<'c>,
    /// What settles choices that are as good as each other; none at first.
    chance: Option<Chance>,
    laid: Vec<Move>,
}

impl<'a> Jigsaw<'a> {
    /// `None` where this way of looking is no use: flaws across edges, with margins, or that do not matter to all; or very many
    /// points.
    pub(crate) fn new(
        parts: &'a [Part],
        panels: &[Panel],
        pieces: &[Kind],
        fits: &dyn Fn(Kind, usize) -> bool,
    ) -> Option<Jigsaw<'a>> {
        let mut kinds: Vec<Kind> = pieces.to_vec();
        kinds.dedup();
        let left: Vec<u32> = (kinds.iter())
            .map(|kind| pieces.iter().filter(|other| *other == kind).count() as u32)
            .collect();
        // What is free to one piece and not to another is not worked through.
        let mut flaws = panels.iter().flat_map(Panel::flaws);
        if flaws.any(|flaw| parts.iter().any(|part| part.kept_from(flaw) != Kept::Whole)) {
            return None;
        }
        let free: Vec<Free> = panels.iter().map(Free::new).collect::<Option<_>>()?;
        let areas: Vec<f64> = (kinds.iter())
            .map(|kind| area(&parts[kind.part].outline))
            .collect();
        let wanted: f64 = (areas.iter().zip(&left))
            .map(|(area, &left)| area * f64::from(left))
            .sum();
        let spare = free.iter().map(Free::area).sum::<f64>() - wanted;
        // Some pieces must lie over flaws that they may hide, which here count as lost.
        if spare < -1.0 {
            return None;
        }
        let mut attitudes = Vec::new();
        for (index, panel) in panels.iter().enumerate() {
            let mut own = Vec::new();
            for (kind, &which) in kinds.iter().enumerate() {
                let part = &parts[which.part];
                if part.outline.len() > MANY {
                    return None;
                }
                if !fits(which, index) {
                    continue;
                }
                for mirrored in ways(part, which.hand, panel) {
                    let square = grain_turn(part, panel, mirrored);
                    own.extend((part.turned(panel.nap()).iter()).map(|half| {
                        Attitude::new(part, kind, mirrored, half_turns(square + half))
                    }));
                }
            }
            attitudes.push(own);
        }
        Some(Jigsaw {
            parts,
            kinds,
            spare,
            areas,
            attitudes,
            begin: State {
                free,
                left,
                waste: Vec::new(),
            },
        })
    }

    /// Whether there is no cloth to spare, by a thousandth of the least piece.
    pub(crate) fn is_tight(&self) -> bool {
        let least = self.areas.iter().copied().fold(f64::INFINITY, f64::min);
        self.spare < 1e-3 * least
    }

    /// Looks for a lay of all the pieces. Adds the work done to `work`.
    ///
    /// A wrong choice early on can cost more than all others together, so what takes long is begun again by chance.
    pub(crate) fn fill(
        &self,
        seed: u64,
        work: &mut u64,
        watch: &mut Watch<'_>,
    ) -> Option<Vec<Placement>> {
        let mut solver = Solver {
            of: self,
            work: *work,
            until: 0,
            watch,
            chance: None,
            laid: Vec::new(),
        };
        // Where cloth is to spare, corners may be left, one more each time.
        let most = if self.is_tight() { 0 } else { MOST_WASTE };
        let mut patience = PATIENCE;
        let found = loop {
            let mut through = true;
            let found = (0..=most).any(|wasted| {
                solver.until = solver.work + patience;
                let found = solver.lay(&self.begin, wasted);
                through &= solver.work < solver.until;
                found
            });
            // When all has been looked at there is no more to find.
            if found || through || solver.watch.is_over(solver.work) {
                break found;
            }
            patience += patience / 2;
            solver.chance.get_or_insert_with(|| Chance::new(seed));
        };
        *work = solver.work;
        found.then(|| solver.laid.iter().map(|at| self.placement(at)).collect())
    }

    fn placement(&self, laid: &Move) -> Placement {
        let attitude = &self.attitudes[laid.panel][laid.attitude];
        let kind = self.kinds[attitude.kind];
        Placement {
            part: kind.part,
            hand: kind.hand,
            panel: laid.panel,
            mirrored: attitude.mirrored,
            turn_deg: laid.turn_deg,
            shift: Vec2::new(neat(laid.shift.x), neat(laid.shift.y)),
        }
    }
}

impl Attitude {
    fn new(part: &Part, kind: usize, mirrored: bool, turn_deg: f64) -> Attitude {
        let mut made = Attitude {
            kind,
            mirrored,
            turn_deg,
            tilt_deg: part.tilt_deg,
            ring: Vec::new(),
            corners: Vec::new(),
        };
        made.ring = made.turned(part, turn_deg);
        let n = made.ring.len();
        made.corners = (0..n)
            .map(|i| {
                let (before, at, after) = (
                    made.ring[(i + n - 1) % n],
                    made.ring[i],
                    made.ring[(i + 1) % n],
                );
                let (out, back) = (after - at, before - at);
                (out / length(out), back / length(back), between(out, back))
            })
            .collect();
        made
    }

    fn turned(&self, part: &Part, turn_deg: f64) -> Vec<Point> {
        let at = Placement {
            part: 0,
            hand: Hand::AsDrawn,
            panel: 0,
            mirrored: self.mirrored,
            turn_deg,
            shift: Vec2::ZERO,
        };
        plain(&ring(&placed(&part.outline, &at)))
    }
}

impl Solver<'_, '_, '_> {
    fn is_over(&mut self) -> bool {
        self.work >= self.until || self.watch.is_over(self.work)
    }

    /// Lays all that is left, if it can; `wasted` corners may stay empty.
    fn lay(&mut self, state: &State, wasted: usize) -> bool {
        if state.left.iter().all(|&left| left == 0) {
            return true;
        }
        if self.is_over() {
            return false;
        }
        let Some((panel, corner, mut moves)) = self.tightest(state, wasted > 0) else {
            return false;
        };
        let kind = |at: &Move| self.of.attitudes[at.panel][at.attitude].kind;
        let mut blur = || match &mut self.chance {
            Some(chance) => 0.5 + chance.share(),
            None => 1.0,
        };
        let mut ranked: Vec<(bool, f64, Move)> = (moves.drain(..))
            .map(|at| (at.full, self.of.areas[kind(&at)] * blur(), at))
            .collect();
        ranked.sort_by(|x, y| y.0.cmp(&x.0).then(y.1.total_cmp(&x.1)));
        for (_, _, at) in ranked {
            let Some(free) = state.free[panel].without(&at.ring) else {
                continue;
            };
            let mut next = state.clone();
            next.free[panel] = free;
            next.left[self.of.attitudes[panel][at.attitude].kind] -= 1;
            self.laid.push(at);
            if self.lay(&next, wasted) {
                return true;
            }
            self.laid.pop();
            if self.is_over() {
                return false;
            }
        }
        if wasted > 0 {
            let mut next = state.clone();
            next.waste.push((panel, corner));
            return self.lay(&next, wasted - 1);
        }
        false
    }

    /// The corner that takes fewest pieces, and those.
    fn tightest(&mut self, state: &State, loose: bool) -> Option<(usize, Point, Vec<Move>)> {
        let mut best: Option<(usize, Point, Vec<Move>)> = None;
        let mut panels: Vec<usize> = (0..state.free.len()).collect();
        shuffle(&mut panels, self.chance.as_mut());
        for panel in panels {
            let free = &state.free[panel];
            let mut corners = free.corners();
            shuffle(&mut corners, self.chance.as_mut());
            for corner in corners {
                let at = free.points[corner.at];
                if state
                    .waste
                    .iter()
                    .any(|&(other, place)| other == panel && near(place, at))
                {
                    continue;
                }
                let most = best
                    .as_ref()
                    .map_or(usize::MAX, |(_, _, moves)| moves.len());
                if let Some(moves) = self.moves(state, panel, free, &corner, loose, most) {
                    let none = moves.is_empty();
                    best = Some((panel, at, moves));
                    if none {
                        return best;
                    }
                }
            }
        }
        best
    }

    /// The pieces that fit into a corner; `None` where these are not fewer than `most`.
    fn moves(
        &mut self,
        state: &State,
        panel: usize,
        free: &Free,
        corner: &Corner,
        loose: bool,
        most: usize,
    ) -> Option<Vec<Move>> {
        let at = free.points[corner.at];
        let mut moves: Vec<Move> = Vec::new();
        self.work += 1 + self.of.attitudes[panel].len() as u64 / 4;
        for (index, attitude) in self.of.attitudes[panel].iter().enumerate() {
            if state.left[attitude.kind] == 0 {
                continue;
            }
            for (point, &(out, back, angle)) in attitude.corners.iter().enumerate() {
                if angle > corner.angle + STRAIGHT {
                    continue;
                }
                let full = angle > corner.angle - STRAIGHT;
                // Along the first side, or, where corners may be left, along the other.
                let sides: &[(Vec2, Vec2)] = match loose && !full {
                    true => &[(corner.out, out), (corner.back, back)],
                    false => &[(corner.out, out)],
                };
                for &(side, own) in sides {
                    let off = libm::atan2(own.cross(side), own.dot(side));
                    if off.abs() > attitude.tilt_deg * (PI / 180.0) + STRAIGHT {
                        continue;
                    }
                    let (ring, turn_deg) = match off.abs() > STRAIGHT {
                        true => {
                            let off_deg =
                                (off * (180.0 / PI)).clamp(-attitude.tilt_deg, attitude.tilt_deg);
                            let turn_deg = half_turns(attitude.turn_deg + off_deg);
                            let part = &self.of.parts[self.of.kinds[attitude.kind].part];
                            (attitude.turned(part, turn_deg), turn_deg)
                        }
                        false => (attitude.ring.clone(), attitude.turn_deg),
                    };
                    let Some(&own) = ring.get(point) else {
                        continue;
                    };
                    let shift = at - own;
                    let ring: Vec<Point> = ring.iter().map(|p| *p + shift).collect();
                    self.work += (ring.len() * free.sides.len()) as u64 / 4 + 1;
                    if !inner(&ring).all(|p| free.holds(p)) {
                        continue;
                    }
                    self.work += (ring.len() * free.sides.len()) as u64;
                    let twin = moves.iter().any(|other: &Move| {
                        let kind = self.of.attitudes[panel][other.attitude].kind;
                        kind == attitude.kind
                            && other.turn_deg == turn_deg
                            && near(other.shift.to_point(), shift.to_point())
                            && other.attitude == index
                    });
                    if twin || free.without(&ring).is_none() {
                        continue;
                    }
                    if moves.len() + 1 >= most {
                        return None;
                    }
                    moves.push(Move {
                        panel,
                        attitude: index,
                        turn_deg,
                        ring,
                        shift,
                        full,
                    });
                }
            }
        }
        Some(moves)
    }
}
