//! Many pieces on several panels at once, overlaps driven out.

use std::sync::Arc;

use kurbo::Vec2;

use crate::chance::Chance;
use crate::clash::Clash;
use crate::crowd::{Attitude, Crowd, Pose, Room, Scene, Stance, Table};
use crate::links::Links;
use crate::phase::{Phases, Tie, Ties};
use crate::search::{Kind, Search, State};
use crate::shape::bounds;
use crate::watch::Watch;

/// Searches that run side by side, whatever the number of threads. This and the numbers below have no source; they did well
/// in trials.
const STREAMS: usize = 2;
/// Evaluations between two looks at each other.
const STINT: u64 = 40_000;
/// Sweeps without gain after which a search is upset.
const STALL: u32 = 60;
/// How often an upset search is given other places to match at.
const MATCH_ANEW: f64 = 0.5;
/// Ways of lying beyond this are too many to hold every pair of them.
const MANY: usize = 160;

/// The stances of all pieces.
pub(crate) struct Pack {
    table: Table,
    stances: Vec<Stance>,
    /// The attitude of the search that each stance is.
    attitudes: Vec<usize>,
    ways: Vec<Vec<usize>>,
    /// What ties the stances, and the stances of each kind of piece, where points must match.
    ties: Option<(Ties, Vec<Vec<usize>>)>,
}

/// One of the searches that run side by side.
struct Stream {
    crowd: Crowd,
    chance: Chance,
    /// Where on a print its pieces match.
    phases: Phases,
    work: u64,
    /// Least overlap since the last upset, and sweeps since then without gain.
    least: f64,
    stalled: u32,
    /// The poses that were nearest to a lay, and their overlap.
    best: (f64, Vec<Pose>),
    best_phases: Phases,
}

/// How a search ended: the poses nearest to a lay, where they match, and whether they are one.
pub(crate) struct Packed {
    poses: Vec<Pose>,
    phases: Phases,
    is_clear: bool,
}

impl Pack {
    /// `None` where a piece has no panel, or there are too many ways to lie.
    pub(crate) fn new(
        search: &mut Search<'_>,
        pieces: &[Kind],
        places: &[Vec<usize>],
        links: Option<&Links>,
    ) -> Option<Pack> {
        let mut ties: Vec<Option<Tie>> = Vec::new();
        let mut kinds: Vec<(Kind, Vec<usize>)> = Vec::new();
        let mut shapes: Vec<usize> = Vec::new();
        let mut stances: Vec<Stance> = Vec::new();
        let mut attitudes: Vec<usize> = Vec::new();
        for (&kind, panels) in pieces.iter().zip(places) {
            if kinds.iter().any(|(other, _)| *other == kind) {
                continue;
            }
            let mut own = Vec::new();
            for &panel in panels {
                for &attitude in search.choices(kind, panel).iter() {
                    let Some((room, walls)) = search.ground(attitude, panel) else {
                        continue;
                    };
                    if let Some(links) = links {
                        let (mirrored, turn_deg) = search.lie(attitude);
                        let of = (links, search.parts, search.panels);
                        let tie = Tie::new(of, kind, panel, mirrored, turn_deg);
                        if tie.is_none() {
                            continue;
                        }
                        ties.push(tie);
                    }
                    let known = shapes.iter().position(|&other| other == attitude);
                    let shape = known.unwrap_or_else(|| {
                        shapes.push(attitude);
                        shapes.len() - 1
                    });
                    own.push(stances.len());
                    attitudes.push(attitude);
                    let (low, high) = bounds(&room);
                    stances.push(Stance {
                        attitude: shape,
                        panel,
                        room: Room {
                            low,
                            high,
                            grid: None,
                        },
                        walls: (!walls.is_empty())
                            .then(|| Arc::new(Clash::new(walls, &mut search.work))),
                    });
                }
            }
            if own.is_empty() || shapes.len() > MANY {
                return None;
            }
            kinds.push((kind, own));
        }
        let ways = (pieces.iter())
            .filter_map(|kind| kinds.iter().find(|(other, _)| other == kind))
            .map(|(_, own)| own.clone())
            .collect();
        let shapes = (shapes.iter())
            .map(|&attitude| Attitude::new(search.convex(attitude), None))
            .collect();
        let table = Table::new(shapes, &search.spacing, 1, &mut search.work);
        Some(Pack {
            table,
            stances,
            attitudes,
            ways,
            ties: links.map(|links| {
                let own = kinds.into_iter().map(|(_, own)| own).collect();
                (Ties::new(links, ties), own)
            }),
        })
    }

    /// What stays the same while pieces move, once it is chosen where on a print they match.
    fn scene(&self, phases: &Phases) -> Scene<'_> {
        let Some((ties, _)) = &self.ties else {
            return Scene {
                table: &self.table,
                ways: self.ways.clone(),
                stances: self.stances.clone(),
            };
        };
        let on_grid = |(index, stance): (usize, &Stance)| ties.room(index, stance.room, phases);
        let rooms: Vec<Option<Room>> = self.stances.iter().enumerate().map(on_grid).collect();
        let may = |own: &Vec<usize>| -> Vec<usize> {
            let own = own.iter().copied();
            own.filter(|&stance| rooms[stance].is_some()).collect()
        };
        let stance = |(stance, room): (&Stance, &Option<Room>)| Stance {
            room: room.unwrap_or(stance.room),
            ..stance.clone()
        };
        Scene {
            table: &self.table,
            ways: self.ways.iter().map(may).collect(),
            stances: self.stances.iter().zip(&rooms).map(stance).collect(),
        }
    }

    /// Where the points match: as they do, but for a group of them, or all anew. `None` where no choice was found.
    fn phases(&self, base: Option<&Phases>, chance: &mut Chance) -> Option<Phases> {
        let Some((ties, kinds)) = &self.ties else {
            return Some(Phases::default());
        };
        let rooms: Vec<Option<Room>> = self.stances.iter().map(|it| Some(it.room)).collect();
        ties.choose(kinds, &rooms, base, chance)
    }

    /// The pieces as they lie where a search ended, unless they lie over others or over what is not cloth: for each piece its
    /// panel, attitude and shift. Those that come first in `order` stay.
    pub(crate) fn clear(
        &self,
        packed: &Packed,
        order: &[usize],
    ) -> Vec<(usize, usize, usize, Vec2)> {
        let scene = self.scene(&packed.phases);
        let mut kept: Vec<usize> = Vec::new();
        for &piece in order {
            let pose = packed.poses[piece];
            let is_clear = |&other: &usize| scene.overlap(pose, packed.poses[other]) <= 0.0;
            if packed.is_clear || (scene.wall(pose) <= 0.0 && kept.iter().all(is_clear)) {
                kept.push(piece);
            }
        }
        let laid = |piece: usize| {
            let pose = packed.poses[piece];
            let panel = self.stances[pose.stance].panel;
            let attitude = self.attitudes[pose.stance];
            (piece, panel, attitude, pose.shift.to_vec2())
        };
        kept.into_iter().map(laid).collect()
    }

    /// Drives pieces apart, from a lay that lacks some of them, until all lie clear or the work is used up.
    pub(crate) fn run(
        self,
        start: &State,
        seed: u64,
        threads: usize,
        work: &mut u64,
        watch: &mut Watch<'_>,
    ) -> Option<State> {
        let packed = self.drive(Some(start), seed, threads, work, watch)?;
        let all: Vec<usize> = (0..packed.poses.len()).collect();
        let laid = packed.is_clear.then(|| self.clear(&packed, &all))?;
        Some(State::of(start.panels(), laid.into_iter()))
    }

    /// Drives pieces apart until all lie clear or the work is used up; `None` where they have nothing to begin from.
    pub(crate) fn drive(
        &self,
        start: Option<&State>,
        seed: u64,
        threads: usize,
        work: &mut u64,
        watch: &mut Watch<'_>,
    ) -> Option<Packed> {
        let stream = |index: usize| {
            let mut chance = Chance::new(seed ^ ((index as u64 + 1) << 40));
            let phases = self.phases(None, &mut chance)?;
            let scene = self.scene(&phases);
            let mut poses = scene.strewn(&mut chance);
            if let Some(start) = start
                && index == 0
            {
                for (piece, panel, attitude, shift) in start.all() {
                    let stance = (self.ways[piece].iter().copied()).find(|&stance| {
                        self.attitudes[stance] == attitude && scene.stances[stance].panel == panel
                    });
                    if let Some(stance) = stance {
                        poses[piece] = Pose {
                            stance,
                            shift: shift.to_point(),
                        };
                    }
                }
            }
            let mut work = 0;
            let crowd = Crowd::new(&scene, poses, &mut work);
            let overlap = crowd.overlap();
            Some(Stream {
                best: (overlap, crowd.poses.clone()),
                best_phases: phases.clone(),
                crowd,
                chance,
                phases,
                work,
                least: overlap,
                stalled: 0,
            })
        };
        let mut streams: Vec<Stream> = (0..STREAMS).map(stream).collect::<Option<_>>()?;
        let before = *work;
        loop {
            *work = before + streams.iter().map(|stream| stream.work).sum::<u64>();
            let is_over = |stream: &Stream| stream.best.0 <= 0.0;
            let is_clear = streams.iter().any(is_over);
            if is_clear || watch.is_over(*work) {
                let nearer = |one: Stream, other: Stream| match other.best.0 < one.best.0 {
                    true => other,
                    false => one,
                };
                let best = streams.into_iter().reduce(nearer)?;
                return Some(Packed {
                    poses: best.best.1,
                    phases: best.best_phases,
                    is_clear,
                });
            }
            match threads {
                0 | 1 => streams.iter_mut().for_each(|stream| stream.run(self)),
                _ => std::thread::scope(|scope| {
                    for stream in &mut streams {
                        scope.spawn(|| stream.run(self));
                    }
                }),
            }
        }
    }
}

impl Stream {
    fn run(&mut self, pack: &Pack) {
        let mut scene = pack.scene(&self.phases);
        let end = self.work + STINT;
        while self.best.0 > 0.0 && self.work < end {
            if self.stalled >= STALL {
                if pack.ties.is_some() && self.chance.share() < MATCH_ANEW {
                    let base = Some(&self.best_phases).filter(|_| self.chance.share() < 0.7);
                    let anew = pack.phases(base, &mut self.chance);
                    self.phases = anew.unwrap_or_else(|| self.best_phases.clone());
                    scene = pack.scene(&self.phases);
                }
                self.upset(&scene);
            }
            let scene = &scene;
            self.crowd.sweep(scene, &mut self.chance, &mut self.work);
            self.crowd.reweigh();
            let overlap = self.crowd.overlap();
            if overlap < self.best.0 {
                self.best = (overlap, self.crowd.poses.clone());
                self.best_phases = self.phases.clone();
            }
            match overlap < 0.98 * self.least {
                true => self.stalled = 0,
                false => self.stalled += 1,
            }
            self.least = self.least.min(overlap);
        }
    }

    /// Begins again: from the best with a few pieces elsewhere, or from nothing.
    fn upset(&mut self, scene: &Scene<'_>) {
        let count = self.crowd.poses.len();
        let mut poses = match self.chance.share() < 0.1 {
            true => scene.strewn(&mut self.chance),
            false => {
                let mut poses = match self.chance.share() < 0.5 {
                    true => self.best.1.clone(),
                    false => self.crowd.poses.clone(),
                };
                for _ in 0..1 + self.chance.pick(3) {
                    let piece = self.chance.pick(count);
                    poses[piece] = scene.anywhere(&scene.ways[piece], &mut self.chance);
                }
                poses
            }
        };
        // What matches elsewhere now may have to lie another way.
        for (pose, ways) in poses.iter_mut().zip(&scene.ways) {
            if !ways.contains(&pose.stance) {
                *pose = scene.anywhere(ways, &mut self.chance);
            }
        }
        self.crowd = Crowd::new(scene, poses, &mut self.work);
        self.least = self.crowd.overlap();
        self.stalled = 0;
        if self.least < self.best.0 {
            self.best = (self.least, self.crowd.poses.clone());
            self.best_phases = self.phases.clone();
        }
    }
}
