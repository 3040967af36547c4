//! Puzzles with known answers: invented panels cut up into pieces, which therefore fill them, and near misses.

use kurbo::{Point, Vec2};
use recloth_lay::{Flaw, Panel, Part};

/// What is known of a puzzle from how it was made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Known {
    /// The pieces are all that the panels were cut into.
    Fits,
    /// One piece is a little more than there is cloth.
    Impossible,
}

/// A puzzle.
#[derive(Clone, Debug)]
pub(crate) struct Puzzle {
    pub(crate) parts: Vec<Part>,
    pub(crate) panels: Vec<Panel>,
}

/// How to make a puzzle.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Recipe {
    pub(crate) seed: u64,
    pub(crate) pieces: usize,
    pub(crate) panels: usize,
    /// Pieces of cloth that are made flaws.
    pub(crate) flaws: usize,
    /// Pieces that are left out, so that there is cloth to spare.
    pub(crate) dropped: usize,
    /// Whether the panels are rectangles and cut along and across only, so that many pieces fit in many places.
    pub(crate) square: bool,
    /// How far grains are off and may be tilted back (deg).
    pub(crate) tilt_deg: f64,
    pub(crate) known: Known,
}

/// The numbers of a linear congruential generator (Knuth, The Art of Computer Programming 2, 1997, section 3.3.4, table 1,
/// line 26: MMIX), the high half of each.
struct Chance(u64);

impl Chance {
    fn share(&mut self) -> f64 {
        self.0 = (self.0)
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 32) as f64 / 4_294_967_296.0
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + self.share() * (high - low)
    }

    fn pick(&mut self, count: usize) -> usize {
        ((self.share() * count as f64) as usize).min(count - 1)
    }
}

/// A piece of cloth: the panel it is of, and its outline.
type Cut = (usize, Vec<Point>);

/// Makes a puzzle; `None` where chance gave one that cannot be cut up so far.
pub(crate) fn puzzle(recipe: &Recipe) -> Option<Puzzle> {
    let mut chance = Chance(recipe.seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ 0x5eed);
    (0..8).for_each(|_| {
        chance.share();
    });
    let outlines: Vec<Vec<Point>> = (0..recipe.panels)
        .map(|_| panel(&mut chance, recipe.square))
        .collect();
    let mut cuts: Vec<Cut> = outlines.iter().cloned().enumerate().collect();
    let wanted = recipe.pieces + recipe.flaws + recipe.dropped;
    let mut tries = 0;
    while cuts.len() < wanted {
        tries += 1;
        if tries > 2000 {
            return None;
        }
        // The larger of two.
        let (one, other) = (chance.pick(cuts.len()), chance.pick(cuts.len()));
        let from = match area(&cuts[one].1) > area(&cuts[other].1) {
            true => one,
            false => other,
        };
        let (panel, outline) = cuts[from].clone();
        if let Some((left, right)) = parted(&outline, &mut chance, recipe.square) {
            cuts[from] = (panel, left);
            cuts.push((panel, right));
        }
    }
    let mut flaws: Vec<Vec<Flaw>> = vec![Vec::new(); recipe.panels];
    for _ in 0..recipe.flaws {
        let (panel, outline) = cuts.swap_remove(chance.pick(cuts.len()));
        flaws[panel].push(Flaw::new(outline, 0.0));
    }
    for _ in 0..recipe.dropped {
        cuts.swap_remove(chance.pick(cuts.len()));
    }
    let nap = chance.share() < 0.5;
    let mut panels = Vec::new();
    for (outline, flaws) in outlines.into_iter().zip(flaws) {
        let made = Panel::new(format!("panel {}", panels.len() + 1), outline).ok()?;
        panels.push(made.with_nap(nap).with_flaws(flaws).ok()?);
    }
    for i in (1..cuts.len()).rev() {
        cuts.swap(i, chance.pick(i + 1));
    }
    let turned = chance.share() < 0.5;
    let mut parts: Vec<Part> = (cuts.iter().enumerate())
        .map(|(index, (_, outline))| {
            let turn_deg = if turned {
                chance.between(-180.0, 180.0)
            } else {
                0.0
            };
            let off_deg = recipe.tilt_deg * chance.between(-0.9, 0.9);
            Part {
                grain_deg: 90.0 + turn_deg + off_deg,
                tilt_deg: recipe.tilt_deg,
                ..Part::new(format!("piece {}", index + 1), moved(outline, turn_deg))
            }
        })
        .collect();
    if recipe.known == Known::Impossible {
        let pick = chance.pick(parts.len());
        for p in &mut parts[pick].outline {
            *p = (p.to_vec2() * 1.004).to_point();
        }
    }
    Some(Puzzle { parts, panels })
}

/// An invented panel: a length of skirt, a sleeve, a front with its armhole, or a bent remnant.
fn panel(chance: &mut Chance, square: bool) -> Vec<Point> {
    let (w, h) = (chance.between(280.0, 620.0), chance.between(380.0, 900.0));
    let points: Vec<(f64, f64)> = match chance.pick(if square { 1 } else { 5 }) {
        0 => vec![(0.0, 0.0), (w, 0.0), (w, h), (0.0, h)],
        1 => {
            let (a, b) = (chance.between(0.05, 0.2) * w, chance.between(0.05, 0.2) * w);
            vec![(0.0, 0.0), (w, 0.0), (w - a, h), (b, h)]
        }
        2 => {
            let round = 0.3 * w;
            let mut points = vec![(0.0, 0.0), (w, 0.0), (w, 0.6 * h)];
            points.extend((1..6).map(|i| {
                let (sin, cos) = libm::sincos(f64::from(i) * 15.0_f64.to_radians());
                (w - round * (1.0 - cos), 0.6 * h + 0.35 * h * sin)
            }));
            points.extend([(w - round, h), (0.25 * w, h), (0.0, 0.85 * h)]);
            points
        }
        3 => vec![
            (0.0, 0.0),
            (w, 0.0),
            (w, 0.45 * h),
            (0.55 * w, 0.5 * h),
            (0.5 * w, h),
            (0.0, h),
        ],
        _ => {
            let lean = chance.between(-0.1, 0.1) * w;
            vec![(0.0, 0.0), (w, 0.04 * h), (w + lean, h), (lean, 0.93 * h)]
        }
    };
    points.into_iter().map(Point::from).collect()
}

fn length(v: Vec2) -> f64 {
    libm::hypot(v.x, v.y)
}

fn area(points: &[Point]) -> f64 {
    let n = points.len();
    (0..n)
        .map(|i| points[i].to_vec2().cross(points[(i + 1) % n].to_vec2()))
        .sum::<f64>()
        / 2.0
}

fn moved(points: &[Point], turn_deg: f64) -> Vec<Point> {
    let (sin, cos) = libm::sincos(turn_deg.to_radians());
    let to = points[0].to_vec2();
    (points.iter().map(|p| *p - to))
        .map(|p| Point::new(cos * p.x - sin * p.y, sin * p.x + cos * p.y))
        .collect()
}

/// A piece parted in two by a straight or bent cut, along or across the grain or neither; `None` where that gives slivers.
fn parted(points: &[Point], chance: &mut Chance, square: bool) -> Option<(Vec<Point>, Vec<Point>)> {
    let n = points.len();
    let middle = points.iter().fold(Vec2::ZERO, |sum, p| sum + p.to_vec2()) / n as f64;
    let (low, high) = points.iter().fold(
        (Vec2::new(1e9, 1e9), Vec2::new(-1e9, -1e9)),
        |(low, high), p| {
            (
                Vec2::new(low.x.min(p.x), low.y.min(p.y)),
                Vec2::new(high.x.max(p.x), high.y.max(p.y)),
            )
        },
    );
    let size = high - low;
    let through = middle
        + Vec2::new(
            size.x * chance.between(-0.25, 0.25),
            size.y * chance.between(-0.25, 0.25),
        );
    let angle_deg: f64 = match chance.pick(if square { 2 } else { 4 }) {
        0 => 0.0,
        1 => 90.0,
        _ => chance.between(0.0, 180.0),
    };
    let (sin, cos) = libm::sincos(angle_deg.to_radians());
    let run = Vec2::new(cos, sin);
    let side = |p: Point| run.cross(p.to_vec2() - through);
    let crossed: Vec<(usize, Point)> = (0..n)
        .filter_map(|i| {
            let (p, q) = (points[i], points[(i + 1) % n]);
            let (a, b) = (side(p), side(q));
            ((a > 0.0) != (b > 0.0)).then(|| (i, p.lerp(q, a / (a - b))))
        })
        .collect();
    let &[(i, p), (j, q)] = &crossed[..] else {
        return None;
    };
    let near =
        |p: Point, i: usize| length(p - points[i]) < 12.0 || length(p - points[(i + 1) % n]) < 12.0;
    if near(p, i) || near(q, j) {
        return None;
    }
    let mut between = Vec::new();
    if !square && chance.share() < 0.3 {
        let off = Vec2::new(-run.y, run.x) * length(q - p) * chance.between(-0.25, 0.25);
        let bend = p.lerp(q, chance.between(0.3, 0.7)) + off;
        let free = (0..n).all(|k| {
            let (a, b) = (points[k], points[(k + 1) % n]);
            (k == i || !meets(p, bend, a, b)) && (k == j || !meets(bend, q, a, b))
        });
        if !free || !inside(points, bend) {
            return None;
        }
        between.push(bend);
    }
    // From q back along the outline to p, and from p on to q.
    let mut left: Vec<Point> = vec![p];
    left.extend((i + 1..=j).map(|k| points[k]));
    left.push(q);
    left.extend(between.iter().rev());
    let mut right: Vec<Point> = vec![q];
    right.extend((j + 1..=n + i).map(|k| points[k % n]));
    right.push(p);
    right.extend(between);
    let sound = |points: &[Point]| {
        let m = points.len();
        let round: f64 = (0..m)
            .map(|k| length(points[(k + 1) % m] - points[k]))
            .sum();
        area(points) > 2500.0 && area(points) > 0.018 * round * round
    };
    (sound(&left) && sound(&right)).then_some((left, right))
}

fn meets(a: Point, b: Point, c: Point, d: Point) -> bool {
    let turn = |a: Point, b: Point, c: Point| (b - a).cross(c - a);
    turn(a, b, c) * turn(a, b, d) <= 0.0 && turn(c, d, a) * turn(c, d, b) <= 0.0
}

fn inside(points: &[Point], p: Point) -> bool {
    let n = points.len();
    (0..n)
        .filter(|&i| {
            let (a, b) = (points[i], points[(i + 1) % n]);
            (a.y <= p.y) != (b.y <= p.y) && ((b - a).cross(p - a) > 0.0) == (b.y > a.y)
        })
        .count()
        % 2
        == 1
}
