//! The search for the shortest strip: shorter step by step, overlaps driven out.

use super::cloth::Cloth;
use crate::chance::Chance;
use crate::crowd::{Crowd, Pose, Scene};
use crate::phase::Phases;

/// Searches that run side by side, whatever the number of threads, so that the lay does not depend on it. This and the
/// numbers below have no source; they did well in trials.
pub(super) const STREAMS: usize = 2;
/// Evaluations between two looks at the clock and at each other.
const STINT: u64 = 60_000;
/// Sweeps without gain after which a search begins again.
const STALL: u32 = 80;
/// The same before the first lay, which more cloth finds sooner than patience.
const FIRST_STALL: u32 = 10;
/// How often the next length is brought nearer to the best where it leaves some piece no place. No source.
const HALVES: u32 = 6;
/// Share of the work after which lays are no longer upset, only tightened.
const TIGHTEN: f64 = 0.8;

/// One of the searches that run side by side.
struct Stream {
    crowd: Crowd,
    chance: Chance,
    /// Where on a print its pieces match.
    phases: Phases,
    work: u64,
    least: f64,
    stalled: u32,
}

impl Stream {
    fn begin(&mut self, scene: &Scene<'_>, mut poses: Vec<Pose>) {
        for (pose, ways) in poses.iter_mut().zip(&scene.ways) {
            match ways.first() {
                Some(&first) if !ways.contains(&pose.stance) => pose.stance = first,
                _ => {}
            }
        }
        self.crowd = Crowd::new(scene, poses, &mut self.work);
        self.least = self.crowd.overlap();
        self.stalled = 0;
    }

    /// As [`Stream::run`], on so much cloth.
    fn run_on(&mut self, cloth: &Cloth, length: f64, stall: u32) {
        let scene = cloth.scene(length, &self.phases);
        self.run(&scene, stall);
    }

    /// Drives pieces apart until they are clear of each other, or the work or the patience is used up.
    fn run(&mut self, scene: &Scene<'_>, stall: u32) {
        let end = self.work + STINT;
        while self.least > 0.0 && self.work < end && self.stalled < stall {
            self.crowd.sweep(scene, &mut self.chance, &mut self.work);
            self.crowd.reweigh();
            let overlap = self.crowd.overlap();
            match overlap < 0.98 * self.least {
                true => self.stalled = 0,
                false => self.stalled += 1,
            }
            self.least = self.least.min(overlap);
        }
    }
}

/// The search for the shortest strip.
pub(super) struct Hunt<'a> {
    cloth: &'a Cloth,
    streams: Vec<Stream>,
    /// Length that is tried.
    target: f64,
    /// By what share the next is shorter than the best.
    step: f64,
    failed: u32,
    /// No lay is shorter: the length of the longest piece, and what the area comes to.
    bound: f64,
    pub(super) best: Option<Vec<Pose>>,
    best_phases: Option<Phases>,
    /// Whether no shorter cloth leaves every piece a place where it matches.
    stuck: bool,
    /// Length of the best.
    pub(super) length: f64,
    pub(super) work: u64,
}

impl<'a> Hunt<'a> {
    /// `None` where no choice of where the pieces match leaves every one of them a place.
    pub(super) fn new(cloth: &'a Cloth, seed: u64, covered: f64, width: f64) -> Option<Hunt<'a>> {
        let longest = (cloth.ways.iter())
            .map(|own| {
                let long = |&attitude: &usize| {
                    let shape = &cloth.table.attitudes[attitude];
                    shape.high.x - shape.low.x
                };
                own.iter().map(long).fold(f64::INFINITY, f64::min)
            })
            .fold(0.0, f64::max);
        let bound = longest.max(covered / width);
        // A little loose, so that the longest piece need not lie in one way of all.
        let target = (covered / width / 0.7).max(longest * 1.02) + cloth.slack();

        let stream = |index: usize| {
            let mut chance = Chance::new(seed ^ ((index as u64) << 32));
            let phases = cloth.phases(target, None, &mut chance)?;
            let scene = cloth.scene(target, &phases);
            let poses = scene.strewn(&mut chance);
            let mut work = 0;
            let crowd = Crowd::new(&scene, poses, &mut work);
            let least = crowd.overlap();
            Some(Stream {
                crowd,
                chance,
                phases,
                work,
                least,
                stalled: 0,
            })
        };
        Some(Hunt {
            cloth,
            streams: (0..STREAMS).map(stream).collect::<Option<_>>()?,
            target,
            step: 0.01,
            failed: 0,
            bound,
            best: None,
            best_phases: None,
            stuck: false,
            length: f64::INFINITY,
            work: 0,
        })
    }

    /// Whether no lay can be shorter than the best.
    pub(super) fn is_done(&self) -> bool {
        self.best.is_some() && (self.stuck || self.length <= self.bound * (1.0 + 1e-9))
    }

    /// Lets every stream work for a stint, then takes what was found.
    pub(super) fn stint(&mut self, done: f64, threads: usize) {
        let (cloth, target) = (self.cloth, self.target);
        let stall = match self.best {
            None => FIRST_STALL,
            Some(_) => STALL,
        };
        match threads {
            0 | 1 => self
                .streams
                .iter_mut()
                .for_each(|stream| stream.run_on(cloth, target, stall)),
            _ => std::thread::scope(|scope| {
                for stream in &mut self.streams {
                    scope.spawn(|| stream.run_on(cloth, target, stall));
                }
            }),
        }
        self.work = self.streams.iter().map(|stream| stream.work).sum();
        if let Some(clear) = self.streams.iter().find(|stream| stream.least <= 0.0) {
            let poses = clear.crowd.poses.clone();
            self.length = self.cloth.length(&poses);
            self.best = Some(poses);
            self.best_phases = Some(clear.phases.clone());
            self.failed = 0;
            self.step = (self.step * 1.25).min(0.02);
            self.shorten(done);
            return;
        }
        let stuck: Vec<usize> = (0..STREAMS)
            .filter(|&index| self.streams[index].stalled >= stall)
            .collect();
        self.failed += stuck.len() as u32;
        match (&self.best, self.failed >= 2 * STREAMS as u32) {
            // Not even loosely: more cloth.
            (None, true) => {
                self.failed = 0;
                self.target *= 1.1;
                for stream in &mut self.streams {
                    let anew = self.cloth.phases(self.target, None, &mut stream.chance);
                    // What had a place on less cloth has it on more.
                    stream.phases = anew.unwrap_or_else(|| stream.phases.clone());
                    let scene = self.cloth.scene(self.target, &stream.phases);
                    let poses = scene.strewn(&mut stream.chance);
                    stream.begin(&scene, poses);
                }
            }
            (Some(_), true) => {
                self.failed = 0;
                self.step *= 0.5;
                if self.step < 2e-4 {
                    self.step = 4e-3;
                }
                self.shorten(done);
            }
            _ => {
                for index in stuck {
                    self.restart(index, done);
                }
            }
        }
    }

    /// The next target, for every stream.
    fn shorten(&mut self, done: f64) {
        let step = match done > TIGHTEN {
            true => self.step.min(2e-3),
            false => self.step,
        };
        self.target = (self.length * (1.0 - step)).max(self.bound);
        // So much shorter there may be no place for all; then a little shorter.
        let base = self.best_phases.as_ref();
        let has_places = |target: f64| {
            let phases = self.cloth.phases(target, base, &mut Chance::new(0));
            phases.is_some()
        };
        for _ in 0..HALVES {
            if has_places(self.target) {
                break;
            }
            self.target = self.target.midpoint(self.length);
        }
        for index in 0..STREAMS {
            self.restart(index, done);
        }
    }

    /// Begins one stream again from the best lay: cloth taken out at a place of its own, and, unless it is time to tighten,
    /// two pieces changed over.
    fn restart(&mut self, index: usize, done: f64) {
        let stream = &mut self.streams[index];
        let base = self.best_phases.as_ref();
        match self.cloth.phases(self.target, base, &mut stream.chance) {
            Some(phases) => stream.phases = phases,
            None => {
                self.stuck = true;
                return;
            }
        }
        let scene = self.cloth.scene(self.target, &stream.phases);
        let mut poses = match &self.best {
            Some(best) => best.clone(),
            None => scene.strewn(&mut stream.chance),
        };
        if self.best.is_some() {
            let cut = stream.chance.share() * self.target;
            let shorter = self.length - self.target;
            for pose in poses.iter_mut().filter(|pose| pose.shift.x > cut) {
                pose.shift.x -= shorter;
            }
            if self.failed > 0 && done <= TIGHTEN {
                let (one, other) = (
                    stream.chance.pick(poses.len()),
                    stream.chance.pick(poses.len()),
                );
                let shift = poses[one].shift;
                poses[one].shift = poses[other].shift;
                poses[other].shift = shift;
            }
        }
        stream.begin(&scene, poses);
    }
}
