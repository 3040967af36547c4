//! Many pieces on several panels at once, overlaps driven out.

use crate::chance::Chance;
use crate::clash::Clash;
use crate::crowd::{Attitude, Crowd, Pose, Room, Scene, Stance, Table};
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
/// Ways of lying beyond this are too many to hold every pair of them.
const MANY: usize = 160;

/// The stances of all pieces.
pub(crate) struct Pack {
    table: Table,
    stances: Vec<Stance>,
    /// The attitude of the search that each stance is.
    attitudes: Vec<usize>,
    ways: Vec<Vec<usize>>,
}

/// One of the searches that run side by side.
struct Stream {
    crowd: Crowd,
    chance: Chance,
    work: u64,
    /// Least depth since the last upset, and sweeps since then without gain.
    least: f64,
    stalled: u32,
    /// The poses that were nearest to a lay, and their depth.
    best: (f64, Vec<Pose>),
}

impl Pack {
    /// `None` where a piece has no panel, or there are too many ways to lie.
    pub(crate) fn new(
        search: &mut Search<'_>,
        pieces: &[Kind],
        places: &[Vec<usize>],
    ) -> Option<Pack> {
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
                        room: Room { low, high },
                        walls: (!walls.is_empty()).then(|| Clash::new(walls, &mut search.work)),
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
        })
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
        let scene = Scene {
            table: &self.table,
            ways: self.ways.clone(),
            stances: self.stances,
        };
        let stream = |index: usize| {
            let mut chance = Chance::new(seed ^ ((index as u64 + 1) << 40));
            let mut poses = scene.strewn(&mut chance);
            if index == 0 {
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
            let depth = crowd.depth();
            Stream {
                best: (depth, crowd.poses.clone()),
                crowd,
                chance,
                work,
                least: depth,
                stalled: 0,
            }
        };
        let mut streams: Vec<Stream> = (0..STREAMS).map(stream).collect();
        let before = *work;
        loop {
            *work = before + streams.iter().map(|stream| stream.work).sum::<u64>();
            let clear = streams.iter().find(|stream| stream.best.0 <= 0.0);
            if let Some(clear) = clear {
                let laid = (clear.best.1.iter().enumerate()).map(|(piece, pose)| {
                    let panel = scene.stances[pose.stance].panel;
                    (
                        piece,
                        panel,
                        self.attitudes[pose.stance],
                        pose.shift.to_vec2(),
                    )
                });
                return Some(State::of(start.panels(), laid));
            }
            if watch.is_over(*work) {
                return None;
            }
            match threads {
                0 | 1 => streams.iter_mut().for_each(|stream| stream.run(&scene)),
                _ => std::thread::scope(|scope| {
                    for stream in &mut streams {
                        scope.spawn(|| stream.run(&scene));
                    }
                }),
            }
        }
    }
}

impl Stream {
    fn run(&mut self, scene: &Scene<'_>) {
        let end = self.work + STINT;
        while self.best.0 > 0.0 && self.work < end {
            if self.stalled >= STALL {
                self.upset(scene);
            }
            self.crowd.sweep(scene, &mut self.chance, &mut self.work);
            self.crowd.reweigh();
            let depth = self.crowd.depth();
            if depth < self.best.0 {
                self.best = (depth, self.crowd.poses.clone());
            }
            match depth < 0.98 * self.least {
                true => self.stalled = 0,
                false => self.stalled += 1,
            }
            self.least = self.least.min(depth);
        }
    }

    /// Begins again: from the best with a few pieces elsewhere, or from nothing.
    fn upset(&mut self, scene: &Scene<'_>) {
        let count = self.crowd.poses.len();
        let poses = match self.chance.share() < 0.1 {
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
        self.crowd = Crowd::new(scene, poses, &mut self.work);
        self.least = self.crowd.depth();
        self.stalled = 0;
        if self.least < self.best.0 {
            self.best = (self.least, self.crowd.poses.clone());
        }
    }
}
