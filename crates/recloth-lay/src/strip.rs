//! Cloth by the length: all pieces on a strip of given width, as short as can be found.

use core::ops::ControlFlow;
use std::time::Instant;

use kurbo::{Point, Vec2};
use recloth::ErrorKind;

use crate::bounds::{area, grain_turn, ways};
use crate::chance::Chance;
use crate::crowd::{Attitude, Crowd, Pose, Room, Scene, Stance, Table};
use crate::lay::half_turns;
use crate::search::{Kind, Search, lay_against, neat};
use crate::shape::{close_cover, convex_parts, disc, ring};
use crate::valid::check_inputs;
use crate::{
    Alone, Answer, Error, Faces, Fit, Hand, Lay, Panel, Part, Placement, Progress, Together, check,
    placed,
};

/// Cloth of one width, from the bolt, without flaws. It lies along the x axis from 0, its selvedges at y = 0 and at its
/// width; the grain runs along it, and a nap from the cut end on.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Strip {
    /// Usable width between the selvedges (mm, 1 to 1e5).
    pub width: f64,
    /// How many of its sides may show.
    #[cfg_attr(feature = "serde", serde(default))]
    pub faces: Faces,
    /// Whether it has a nap, pile or one-way print.
    #[cfg_attr(feature = "serde", serde(default))]
    pub nap: bool,
}

impl Strip {
    /// One-faced cloth without nap.
    pub fn new(width: f64) -> Strip {
        Strip {
            width,
            faces: Faces::One,
            nap: false,
        }
    }

    /// So much of the cloth, as a panel: for [`check()`](crate::check()), or to draw.
    ///
    /// # Errors
    /// As of [`Panel::new`]: a length or width that no panel has.
    pub fn panel(&self, length: f64) -> Result<Panel, recloth::Error> {
        let corners = [
            (0.0, 0.0),
            (length, 0.0),
            (length, self.width),
            (0.0, self.width),
        ];
        let panel = Panel::new("strip", corners)?.with_grain_deg(0.0)?;
        Ok(panel.with_faces(self.faces).with_nap(self.nap))
    }
}

/// How to look for a short strip.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(default, deny_unknown_fields)
)]
pub struct StripOptions {
    /// Least distance between the cut lines of two pieces (mm, 0 to 1000). It is not kept from the edges of the cloth.
    pub spacing: f64,
    /// Number the search's chances start from.
    pub seed: u64,
    /// How many evaluations to stop after. One is a glance at how two pieces lie; a million take some tenths of a second.
    pub budget: u64,
    /// Seconds to stop after, if that is sooner (0 to 1e6). How far the search comes in a time depends on the machine, so
    /// then the lay does too.
    pub seconds: Option<f64>,
    /// Threads to work with; 0 for as many as there are processors. The lay does not depend on it.
    pub threads: usize,
}

impl Default for StripOptions {
    /// No spacing, seed 1, some ten seconds of an ordinary processor, and as many threads as there are processors.
    fn default() -> StripOptions {
        StripOptions {
            spacing: 0.0,
            seed: 1,
            budget: 50_000_000,
            seconds: None,
            threads: 0,
        }
    }
}

/// All pieces on a strip.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct StripLay {
    /// Length of cloth it takes (mm).
    pub length: f64,
    /// Share of that cloth which the pieces cover (0 to 1).
    pub density: f64,
    /// Where they lie, on `strip.panel(length)`; confirmed by the checker.
    pub lay: Lay,
    /// How many evaluations were made.
    pub evaluations: u64,
    /// Whether the time was up before the budget was.
    pub out_of_time: bool,
}

impl StripLay {
    /// The lay as [`fit`](crate::fit()) answers of one panel, the strip of this length: each piece has its place, and all have
    /// one together.
    pub fn as_fit(&self, parts: &[Part]) -> Fit {
        let mut alone: Vec<Alone> = Vec::new();
        for (part, _) in parts.iter().enumerate() {
            for hand in Hand::BOTH {
                let placements = &self.lay.placements;
                let first = (placements.iter()).find(|at| (at.part, at.hand) == (part, hand));
                alone.extend(first.map(|&placement| Alone {
                    part,
                    hand,
                    panel: 0,
                    answer: Answer::Fits(placement),
                }));
            }
        }
        Fit {
            alone,
            together: Together::Fit,
            lay: self.lay.clone(),
            shares: vec![self.density],
            share: self.density,
            evaluations: self.evaluations,
            out_of_time: self.out_of_time,
        }
    }
}

/// Searches that run side by side, whatever the number of threads, so that the lay does not depend on it. This and the
/// numbers below have no source; they did well in trials.
const STREAMS: usize = 2;
/// Evaluations between two looks at the clock and at each other.
const STINT: u64 = 60_000;
/// Sweeps without gain after which a search begins again.
const STALL: u32 = 80;
/// The same before the first lay, which more cloth finds sooner than patience.
const FIRST_STALL: u32 = 10;
/// More pieces than this are laid in rows where no search has laid them.
const MANY: usize = 300;
/// Share of the work after which lays are no longer upset, only tightened.
const TIGHTEN: f64 = 0.8;

/// All pieces on a strip of cloth, as short as was found.
///
/// The first lay is loose; then the strip is made shorter step by step, pieces that lie over each other are driven apart,
/// and a lay that stays stuck is upset. The same inputs, seed and budget give the same lay on every machine, unless
/// `seconds` ends the search.
///
/// # Errors
/// A value outside its range, an outline that touches or crosses itself, or more than 2000 pieces, naming the part or
/// option; `NoSolution` for `width` where a part is too wide for the cloth, or shows both sides of one-faced cloth.
///
/// # Examples
/// ```
/// use recloth_lay::{Part, Strip, StripOptions, check, strip};
/// // An invented skirt: four gores from cloth 1400 mm wide.
/// let gore = Part { as_drawn: 4, ..Part::new("gore", [(0.0, 0.0), (420.0, 0.0), (300.0, 800.0), (120.0, 800.0)]) };
/// let cloth = Strip::new(1400.0);
/// let options = StripOptions { budget: 2_000_000, ..StripOptions::default() };
/// let found = strip(&[gore.clone()], &cloth, &options)?;
/// assert!(found.length < 900.0 && found.density > 0.75);
/// assert_eq!(check(&[gore], &[cloth.panel(found.length)?], &found.lay), Ok(()));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn strip(parts: &[Part], strip: &Strip, options: &StripOptions) -> Result<StripLay, Error> {
    strip_with(parts, strip, options, |_| ControlFlow::Continue(()))
}

/// As [`strip()`]; says how far it has come, many times a second, and stops at [`ControlFlow::Break`] with the best so far:
/// before the first lay is found, with the pieces one after the other.
///
/// # Errors
/// As [`strip()`].
pub fn strip_with(
    parts: &[Part],
    strip: &Strip,
    options: &StripOptions,
    mut progress: impl FnMut(Progress) -> ControlFlow<()>,
) -> Result<StripLay, Error> {
    let start = options.seconds.map(|_| Instant::now());
    check_options(strip, options)?;
    check_inputs(parts, &[])?;
    let mut pieces = Vec::new();
    for (part, wanted) in parts.iter().enumerate() {
        for hand in Hand::BOTH {
            pieces.extend((0..wanted.count(hand)).map(|_| Kind { part, hand }));
        }
    }
    recloth::Error::check_items("parts", pieces.len(), 0, 2000)
        .map_err(|error| Error::new("pieces of all parts", error))?;
    let threads = match options.threads {
        0 => std::thread::available_parallelism().map_or(1, usize::from),
        threads => threads,
    }
    .min(STREAMS);
    let cloth = Cloth::new(parts, &pieces, strip, options.spacing, threads)?;
    let covered: f64 = pieces
        .iter()
        .map(|kind| area(&parts[kind.part].outline))
        .sum();
    let mut hunt = Hunt::new(&cloth, options.seed, covered, strip.width);
    let mut out_of_time = false;
    while !pieces.is_empty() && hunt.work < options.budget && !hunt.is_done() {
        let by_work = hunt.work as f64 / options.budget as f64;
        let by_time = match (start, options.seconds) {
            (Some(start), Some(seconds)) => start.elapsed().as_secs_f64() / seconds.max(1e-9),
            _ => 0.0,
        };
        out_of_time = by_time >= 1.0;
        let done = by_work.max(by_time).min(1.0);
        let said = progress(Progress {
            done,
            best: hunt.best.as_ref().map(|_| hunt.length),
        });
        // When the time is up, the first lay is still looked for, however long that takes.
        if said.is_break() || (out_of_time && hunt.best.is_some()) {
            break;
        }
        hunt.stint(done, threads);
    }
    let found = hunt
        .best
        .take()
        .map(|poses| cloth.lay(parts, &pieces, &poses, options.spacing));
    // A search stopped before its first lay still gives one, and so would a search whose rounding let something through.
    let (lay, length) = found
        .filter(|(lay, length)| {
            let panel = strip.panel(*length);
            panel.is_ok_and(|panel| check(parts, &[panel], lay).is_ok())
        })
        .unwrap_or_else(|| cloth.without_search(parts, &pieces, strip, options.spacing));
    Ok(StripLay {
        length,
        density: match length > 0.0 {
            true => covered / (length * strip.width),
            false => 0.0,
        },
        lay,
        evaluations: hunt.work,
        out_of_time,
    })
}

fn check_options(strip: &Strip, options: &StripOptions) -> Result<(), Error> {
    let of = |name: &'static str| move |error| Error::new(name, error);
    recloth::Error::check("width", strip.width, 1.0, 1e5).map_err(of("strip"))?;
    recloth::Error::check("spacing", options.spacing, 0.0, 1000.0).map_err(of("options"))?;
    if let Some(seconds) = options.seconds {
        recloth::Error::check("seconds", seconds, 0.0, 1e6).map_err(of("options"))?;
    }
    Ok(())
}

/// The pieces' attitudes on the cloth.
struct Cloth {
    table: Table,
    /// Whether each attitude is mirrored, and its turn (deg).
    turns: Vec<(bool, f64)>,
    /// The attitudes of each piece.
    ways: Vec<Vec<usize>>,
    width: f64,
}

impl Cloth {
    fn new(
        parts: &[Part],
        pieces: &[Kind],
        strip: &Strip,
        spacing: f64,
        threads: usize,
    ) -> Result<Cloth, Error> {
        let panel = strip.panel(1.0);
        let panel = panel.map_err(|error| Error::new("strip", error))?;
        let mut turns: Vec<(bool, f64)> = Vec::new();
        let mut attitudes: Vec<Attitude> = Vec::new();
        let mut ways_of: Vec<(Kind, Vec<usize>)> = Vec::new();
        for &kind in pieces {
            if ways_of.iter().any(|(other, _)| *other == kind) {
                continue;
            }
            let part = &parts[kind.part];
            let outline = close_cover(&ring(&part.outline));
            let mut own = Vec::new();
            let mut pairs = Vec::new();
            let mut narrowest = f64::INFINITY;
            for mirrored in ways(part, kind.hand, &panel) {
                let square = grain_turn(part, &panel, mirrored);
                let tilts: &[f64] = match part.tilt_deg > 0.0 {
                    true => &[0.0, part.tilt_deg, -part.tilt_deg],
                    false => &[0.0],
                };
                for tilt in tilts {
                    let mut laid: Vec<(f64, usize)> = Vec::new();
                    for half in part.turned(strip.nap) {
                        let turn_deg = half_turns(square + tilt + half);
                        let at = Placement {
                            part: 0,
                            hand: Hand::AsDrawn,
                            panel: 0,
                            mirrored,
                            turn_deg,
                            shift: Vec2::ZERO,
                        };
                        let shape =
                            Attitude::new(convex_parts(&ring(&placed(&outline, &at))), None);
                        let wide = shape.high.y - shape.low.y;
                        narrowest = narrowest.min(wide);
                        if wide <= strip.width {
                            if let Some(&(_, other)) =
                                (laid.iter()).find(|(other, _)| (other - half).abs() == 180.0)
                            {
                                pairs.push((other, attitudes.len()));
                            }
                            laid.push((*half, attitudes.len()));
                            own.push(attitudes.len());
                            turns.push((mirrored, turn_deg));
                            attitudes.push(shape);
                        }
                    }
                }
            }
            for (one, other) in pairs {
                attitudes[one].opposite = Some(other);
                attitudes[other].opposite = Some(one);
            }
            if own.is_empty() {
                let needed = if narrowest.is_finite() {
                    narrowest
                } else {
                    f64::NAN
                };
                let error = recloth::Error::new(
                    ErrorKind::NoSolution,
                    "width",
                    strip.width,
                    needed,
                    f64::NAN,
                );
                return Err(Error::new(
                    format!("part {:?} on the strip", part.name),
                    error,
                ));
            }
            ways_of.push((kind, own));
        }
        let disc = match spacing > 0.0 {
            true => disc(spacing),
            false => Vec::new(),
        };
        let mut work = 0;
        Ok(Cloth {
            table: Table::new(attitudes, &disc, threads, &mut work),
            turns,
            ways: (pieces.iter())
                .filter_map(|kind| ways_of.iter().find(|(other, _)| other == kind))
                .map(|(_, own)| own.clone())
                .collect(),
            width: strip.width,
        })
    }

    fn scene(&self, length: f64) -> Scene<'_> {
        let stance = |(index, attitude): (usize, &Attitude)| Stance {
            attitude: index,
            panel: 0,
            room: Room {
                low: Point::new(-attitude.low.x, -attitude.low.y),
                high: Point::new(
                    (length - attitude.high.x).max(-attitude.low.x),
                    (self.width - attitude.high.y).max(-attitude.low.y),
                ),
            },
            walls: None,
        };
        // A piece tilted one way may be longer than the other, and than the cloth.
        let short = |&attitude: &usize| {
            let shape = &self.table.attitudes[attitude];
            shape.high.x - shape.low.x <= length * (1.0 + 1e-9)
        };
        let ways = |own: &Vec<usize>| -> Vec<usize> { own.iter().copied().filter(short).collect() };
        Scene {
            table: &self.table,
            ways: self.ways.iter().map(ways).collect(),
            stances: (self.table.attitudes.iter().enumerate())
                .map(stance)
                .collect(),
        }
    }

    /// A lay that needs no search: one piece after the other against the end of the cloth, or in rows.
    fn without_search(
        &self,
        parts: &[Part],
        pieces: &[Kind],
        strip: &Strip,
        spacing: f64,
    ) -> (Lay, f64) {
        let rows = self.lay(parts, pieces, &self.in_rows(spacing), spacing);
        if pieces.len() > MANY {
            return rows;
        }
        let laid = strip.panel(rows.1).ok().and_then(|panel| {
            let mut search = Search::new(parts, core::slice::from_ref(&panel), spacing);
            let placements = lay_against(&mut search, pieces, Vec2::new(1.0, 0.03))?;
            let found = measured(parts, placements, spacing);
            let panel = strip.panel(found.1).ok()?;
            (found.1 < rows.1 && check(parts, &[panel], &found.0).is_ok()).then_some(found)
        });
        laid.unwrap_or(rows)
    }

    /// The pieces side by side in rows across the cloth, the longest first.
    fn in_rows(&self, spacing: f64) -> Vec<Pose> {
        // A little more than the spacing, which rounding cannot use up.
        let spacing = spacing * (1.0 + 1e-9) + 1e-6;
        let shape = |piece: usize| &self.table.attitudes[self.ways[piece][0]];
        let long = |piece: usize| shape(piece).high.x - shape(piece).low.x;
        let mut order: Vec<usize> = (0..self.ways.len()).collect();
        order.sort_by(|&a, &b| long(b).total_cmp(&long(a)));
        let mut poses: Vec<Pose> = (self.ways.iter())
            .map(|own| Pose {
                stance: own[0],
                shift: Point::ORIGIN,
            })
            .collect();
        let (mut along, mut across, mut row) = (0.0, 0.0, 0.0);
        for piece in order {
            let shape = shape(piece);
            let wide = shape.high.y - shape.low.y;
            if across > 0.0 && across + wide > self.width {
                along += row + spacing;
                (across, row) = (0.0, 0.0);
            }
            poses[piece].shift = Point::new(along - shape.low.x, across - shape.low.y);
            across += wide + spacing;
            row = long(piece).max(row);
        }
        poses
    }

    /// The lay, and the length of cloth it takes.
    fn lay(&self, parts: &[Part], pieces: &[Kind], poses: &[Pose], spacing: f64) -> (Lay, f64) {
        let placement = |(&kind, pose): (&Kind, &Pose)| {
            let (mirrored, turn_deg) = self.turns[pose.stance];
            Placement {
                part: kind.part,
                hand: kind.hand,
                panel: 0,
                mirrored,
                turn_deg,
                shift: Vec2::new(neat(pose.shift.x), neat(pose.shift.y)),
            }
        };
        let placements = pieces.iter().zip(poses).map(placement).collect();
        measured(parts, placements, spacing)
    }

    /// Length of cloth up to the furthest piece.
    fn length(&self, poses: &[Pose]) -> f64 {
        (poses.iter())
            .map(|pose| pose.shift.x + self.table.attitudes[pose.stance].high.x)
            .fold(0.0, f64::max)
    }
}

/// The lay of some placements, and the length of cloth it takes.
fn measured(parts: &[Part], placements: Vec<Placement>, spacing: f64) -> (Lay, f64) {
    let length = (placements.iter())
        .flat_map(|placement| placed(&parts[placement.part].outline, placement))
        .fold(0.0_f64, |length, p| length.max(p.x));
    let lay = Lay {
        placements,
        unplaced: Vec::new(),
        spacing,
    };
    (lay, length)
}

/// One of the searches that run side by side.
struct Stream {
    crowd: Crowd,
    chance: Chance,
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
        self.least = self.crowd.depth();
        self.stalled = 0;
    }

    /// Drives pieces apart until they are clear of each other, or the work or the patience is used up.
    fn run(&mut self, scene: &Scene<'_>, stall: u32) {
        let end = self.work + STINT;
        while self.least > 0.0 && self.work < end && self.stalled < stall {
            self.crowd.sweep(scene, &mut self.chance, &mut self.work);
            self.crowd.reweigh();
            let depth = self.crowd.depth();
            match depth < 0.98 * self.least {
                true => self.stalled = 0,
                false => self.stalled += 1,
            }
            self.least = self.least.min(depth);
        }
    }
}

/// The search for the shortest strip.
struct Hunt<'a> {
    cloth: &'a Cloth,
    streams: Vec<Stream>,
    /// Length that is tried.
    target: f64,
    /// By what share the next is shorter than the best.
    step: f64,
    failed: u32,
    /// No lay is shorter: the length of the longest piece, and what the area comes to.
    bound: f64,
    best: Option<Vec<Pose>>,
    /// Length of the best.
    length: f64,
    work: u64,
}

impl<'a> Hunt<'a> {
    fn new(cloth: &'a Cloth, seed: u64, covered: f64, width: f64) -> Hunt<'a> {
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
        let target = (covered / width / 0.7).max(longest * 1.02);

        let scene = cloth.scene(target);
        let stream = |index: usize| {
            let mut chance = Chance::new(seed ^ ((index as u64) << 32));
            let poses = scene.strewn(&mut chance);
            let mut work = 0;
            let crowd = Crowd::new(&scene, poses, &mut work);
            let least = crowd.depth();
            Stream {
                crowd,
                chance,
                work,
                least,
                stalled: 0,
            }
        };
        Hunt {
            cloth,
            streams: (0..STREAMS).map(stream).collect(),
            target,
            step: 0.01,
            failed: 0,
            bound,
            best: None,
            length: f64::INFINITY,
            work: 0,
        }
    }

    /// Whether no lay can be shorter than the best.
    fn is_done(&self) -> bool {
        self.best.is_some() && self.length <= self.bound * (1.0 + 1e-9)
    }

    /// Lets every stream work for a stint, then takes what was found.
    fn stint(&mut self, done: f64, threads: usize) {
        let scene = self.cloth.scene(self.target);
        let stall = match self.best {
            None => FIRST_STALL,
            Some(_) => STALL,
        };
        match threads {
            0 | 1 => self
                .streams
                .iter_mut()
                .for_each(|stream| stream.run(&scene, stall)),
            _ => std::thread::scope(|scope| {
                for stream in &mut self.streams {
                    scope.spawn(|| stream.run(&scene, stall));
                }
            }),
        }
        self.work = self.streams.iter().map(|stream| stream.work).sum();
        if let Some(clear) = self.streams.iter().find(|stream| stream.least <= 0.0) {
            let poses = clear.crowd.poses.clone();
            self.length = self.cloth.length(&poses);
            self.best = Some(poses);
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
                let scene = self.cloth.scene(self.target);
                for stream in &mut self.streams {
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
        for index in 0..STREAMS {
            self.restart(index, done);
        }
    }

    /// Begins one stream again from the best lay: cloth taken out at a place of its own, and, unless it is time to tighten,
    /// two pieces changed over.
    fn restart(&mut self, index: usize, done: f64) {
        let scene = self.cloth.scene(self.target);
        let stream = &mut self.streams[index];
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
