//! The search: pieces laid largest first into corners of panels, then panels cleared and laid again until every piece
//! has a place or the budget is used up.

use std::collections::BTreeMap;
use std::rc::Rc;

use kurbo::{Point, Vec2};

use crate::bounds::{area, grain_turn, usable_area, ways};
use crate::chance::Chance;
use crate::lay::half_turns;
use crate::part::Kept;
use crate::positions::{Blocked, Forbidden, furthest, within};
use crate::shape::{
    Convex, bounds, convex_parts, cover, disc, hull, inward, length, ring, sum, through_origin,
};
use crate::watch::Watch;
use crate::{Flaw, Hand, Panel, Part, Placement, placed};

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

/// How many ways of lying are compared at a time.
const FEW: usize = 4;

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

/// A panel as obstacles.
struct Ground {
    hull: Vec<Point>,
    /// Bays and holes.
    obstacles: Vec<Vec<Point>>,
    /// Each flaw with its margin.
    flaws: Vec<Vec<Vec<Point>>>,
    /// What lies beyond the sides of the hull.
    beyond: Vec<Vec<Point>>,
}

/// Everything computed once and kept.
pub(crate) struct Search<'a> {
    pub(crate) parts: &'a [Part],
    pub(crate) panels: &'a [Panel],
    grounds: Vec<Ground>,
    pub(crate) usable: Vec<f64>,
    covers: Vec<Vec<Point>>,
    areas: Vec<f64>,
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
        choices.iter().find_map(|&attitude| {
            let shift = self.place(attitude, panel, &[], Vec2::new(PUSHES[8].0, PUSHES[8].1))?;
            let placement = self.placement(kind, panel, attitude, shift);
            confirmed(placement).then_some(placement)
        })
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

    fn placement(&self, kind: Kind, panel: usize, attitude: usize, shift: Vec2) -> Placement {
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

impl Ground {
    fn new(panel: &Panel) -> Ground {
        let outline = ring(panel.outline());
        let hull = hull(&outline);
        let mut obstacles = Vec::new();
        for bay in bays(&outline, &hull) {
            obstacles.extend(convex_parts(&cover(&bay)));
        }
        for hole in panel.holes() {
            obstacles.extend(convex_parts(&cover(&ring(hole))));
        }
        let grown = |flaw: &Flaw| -> Vec<Vec<Point>> {
            let parts = match flaw.outline.len() {
                0..=2 => vec![flaw.outline.clone()],
                _ => convex_parts(&cover(&ring(&flaw.outline))),
            };
            let margin = if flaw.margin > 0.0 {
                disc(flaw.margin)
            } else {
                vec![Point::ORIGIN]
            };
            parts.iter().map(|part| sum(part, &margin)).collect()
        };
        let beyond = beyond(&hull);
        Ground {
            hull,
            obstacles,
            flaws: panel.flaws().iter().map(grown).collect(),
            beyond,
        }
    }
}

/// A broad strip along every side of a convex ring that is not square to the axes, outside.
fn beyond(hull: &[Point]) -> Vec<Vec<Point>> {
    let (low, high) = bounds(hull);
    let far = length(high - low);
    (0..hull.len())
        .filter_map(|i| {
            let (a, b) = (hull[i], hull[(i + 1) % hull.len()]);
            let (square, _) = inward(a, b)?;
            let (run, out) = ((b - a) / length(b - a) * far, square * -far);
            (a.x != b.x && a.y != b.y).then(|| vec![a - run + out, b + run + out, b + run, a - run])
        })
        .collect()
}

/// The bays between an outline and its hull, counter-clockwise.
fn bays(outline: &[Point], hull: &[Point]) -> Vec<Vec<Point>> {
    let n = outline.len();
    let on_hull: Vec<usize> = (0..n).filter(|&i| hull.contains(&outline[i])).collect();
    let mut bays = Vec::new();
    for (index, &from) in on_hull.iter().enumerate() {
        let to = on_hull[(index + 1) % on_hull.len()];
        let steps = (to + n - from) % n;
        if steps > 1 {
            // The hull's side first, then back along the outline.
            let mut bay: Vec<Point> = (0..=steps).map(|k| outline[(from + k) % n]).collect();
            bay.reverse();
            let bay = ring(&bay);
            if bay.len() > 2 && area(&bay) > 0.0 {
                bays.push(bay);
            }
        }
    }
    bays
}

/// Pieces laid so far.
#[derive(Clone)]
pub(crate) struct State {
    laid: Vec<Vec<Laid>>,
    /// Kinds for which a panel, as it is laid, has been seen to have no place.
    full: Vec<Vec<Kind>>,
    left: Vec<usize>,
    left_area: f64,
}

impl State {
    /// Nothing laid.
    fn empty(search: &Search<'_>, pieces: &[Kind]) -> State {
        let panels = search.panels.len();
        State {
            laid: vec![Vec::new(); panels],
            full: vec![Vec::new(); panels],
            left: (0..pieces.len()).collect(),
            left_area: pieces.iter().map(|kind| search.areas[kind.part]).sum(),
        }
    }

    /// All pieces laid: for each piece its panel, attitude and shift.
    pub(crate) fn of(
        panels: usize,
        all: impl Iterator<Item = (usize, usize, usize, Vec2)>,
    ) -> State {
        let mut laid = vec![Vec::new(); panels];
        for (piece, panel, attitude, shift) in all {
            laid[panel].push(Laid {
                piece,
                attitude,
                shift,
            });
        }
        State {
            laid,
            full: vec![Vec::new(); panels],
            left: Vec::new(),
            left_area: 0.0,
        }
    }

    pub(crate) fn panels(&self) -> usize {
        self.laid.len()
    }

    /// For each piece laid itself, its panel, attitude and shift.
    pub(crate) fn all(&self) -> impl Iterator<Item = (usize, usize, usize, Vec2)> + '_ {
        let on = |(panel, laid): (usize, &'_ Vec<Laid>)| {
            let each = |at: &Laid| (at.piece, panel, at.attitude, at.shift);
            laid.iter().map(each).collect::<Vec<_>>()
        };
        self.laid.iter().enumerate().flat_map(on)
    }

    /// Whether every piece is laid.
    pub(crate) fn is_whole(&self) -> bool {
        self.left.is_empty()
    }

    /// Share of the area of all pieces that is laid.
    pub(crate) fn share(&self, search: &Search<'_>, pieces: &[Kind]) -> f64 {
        let wanted: f64 = pieces.iter().map(|kind| search.areas[kind.part]).sum();
        1.0 - self.left_area / wanted.max(f64::MIN_POSITIVE)
    }

    fn clear(&mut self, panel: usize) -> Vec<usize> {
        self.full[panel].clear();
        self.laid[panel].drain(..).map(|laid| laid.piece).collect()
    }
}

/// A first lay: the larger pieces first, each on the tightest panel that takes it.
pub(crate) fn first_lay(
    search: &mut Search<'_>,
    pieces: &[Kind],
    places: &[Vec<usize>],
    watch: &mut Watch<'_>,
) -> State {
    let mut state = State::empty(search, pieces);
    let mut room = search.usable.clone();
    // Without shuffling nothing is left to chance.
    let mut chance = Chance::new(0);
    lay_left(
        search,
        pieces,
        places,
        &mut state,
        &mut room,
        None,
        0.0,
        &mut chance,
        watch,
    );
    state
}

/// All pieces on the one panel there is, the larger first, each as far against `push` as it goes; `None` where one has no
/// place. The placements are in the order of the pieces.
pub(crate) fn lay_against(
    search: &mut Search<'_>,
    pieces: &[Kind],
    push: Vec2,
) -> Option<Vec<Placement>> {
    let mut order: Vec<usize> = (0..pieces.len()).collect();
    order.sort_by(|&a, &b| {
        let area = |piece: usize| search.areas[pieces[piece].part];
        area(b).total_cmp(&area(a))
    });
    // Without shuffling nothing is left to chance.
    let mut chance = Chance::new(0);
    let mut laid: Vec<Laid> = Vec::new();
    for piece in order {
        let (attitude, shift) = lay_one(search, pieces[piece], 0, &laid, push, 0.0, &mut chance)?;
        laid.push(Laid {
            piece,
            attitude,
            shift,
        });
    }
    laid.sort_by_key(|at| at.piece);
    let placement = |at: &Laid| search.placement(pieces[at.piece], 0, at.attitude, at.shift);
    Some(laid.iter().map(placement).collect())
}

/// Clears panels and lays them again, as long as pieces are left that have a place somewhere, until the watch says stop.
pub(crate) fn lay_again(
    search: &mut Search<'_>,
    pieces: &[Kind],
    places: &[Vec<usize>],
    best: &mut State,
    seed: u64,
    watch: &mut Watch<'_>,
) {
    let mut chance = Chance::new(seed);
    let panels = search.panels.len();
    let begin = watch.done(search.work);
    let mut state = best.clone();
    loop {
        // Only pieces that have a place somewhere can be helped.
        let wanting: Vec<usize> = state
            .left
            .iter()
            .copied()
            .filter(|&piece| !places[piece].is_empty())
            .collect();
        if wanting.is_empty() || watch.is_over(search.work) {
            break;
        }
        search.work += 16;
        let piece = wanting[chance.pick(wanting.len())];
        let target = places[piece][chance.pick(places[piece].len())];
        let mut next = state.clone();
        let mut cleared = vec![target];
        while cleared.len() < 4 && chance.share() < 0.4 {
            cleared.push(chance.pick(panels));
        }
        for &panel in &cleared {
            let freed = next.clear(panel);
            next.left.extend(freed);
        }
        let mut room = rooms(search, pieces, &next);
        let first = (chance.share() < 0.7).then_some((piece, target));
        lay_left(
            search,
            pieces,
            places,
            &mut next,
            &mut room,
            first,
            0.6,
            &mut chance,
            watch,
        );
        // A slightly worse lay may lead on, less and less so towards the end.
        let spent = (watch.done(search.work) - begin) / (1.0 - begin).max(1e-9);
        let grace = 0.05 * (1.0 - spent.min(1.0)) * chance.share() * best.left_area.max(1.0);
        if next.left_area <= state.left_area + grace {
            state = next;
        }
        if state.left_area < best.left_area {
            *best = state.clone();
            watch.best = Some(best.share(search, pieces));
        } else if state.left_area > 1.5 * best.left_area {
            state = best.clone();
        }
    }
}

/// The placements of a lay, pieces put on grain where there is room for that, and the indices of the pieces left.
pub(crate) fn placements(
    search: &mut Search<'_>,
    pieces: &[Kind],
    mut best: State,
) -> (Vec<Placement>, Vec<usize>) {
    for (panel, laid) in best.laid.iter_mut().enumerate() {
        straighten(search, pieces, panel, laid);
    }
    let mut placements = Vec::new();
    for (panel, laid) in best.laid.iter().enumerate() {
        for laid in laid {
            placements.push((
                laid.piece,
                search.placement(pieces[laid.piece], panel, laid.attitude, laid.shift),
            ));
        }
    }
    placements.sort_by_key(|(piece, _)| *piece);
    best.left.sort_unstable();
    (
        placements
            .into_iter()
            .map(|(_, placement)| placement)
            .collect(),
        best.left,
    )
}

/// Puts pieces that were tilted on grain where there is room for that, as a cutter would.
fn straighten(search: &mut Search<'_>, pieces: &[Kind], panel: usize, laid: &mut [Laid]) {
    for index in 0..laid.len() {
        let Laid {
            piece, attitude, ..
        } = laid[index];
        if search.tilt(attitude, panel) == 0.0 {
            continue;
        }
        let others: Vec<Laid> = laid
            .iter()
            .copied()
            .filter(|other| other.piece != piece)
            .collect();
        let choices = search.choices(pieces[piece], panel);
        let straight = choices.iter().copied().find_map(|attitude| {
            let push = Vec2::new(PUSHES[8].0, PUSHES[8].1);
            let on_grain = search.tilt(attitude, panel) == 0.0;
            let shift = on_grain.then(|| search.place(attitude, panel, &others, push))??;
            Some((attitude, shift))
        });
        if let Some((attitude, shift)) = straight {
            laid[index] = Laid {
                piece,
                attitude,
                shift,
            };
        }
    }
}

/// Area left on every panel.
fn rooms(search: &Search<'_>, pieces: &[Kind], state: &State) -> Vec<f64> {
    (0..search.usable.len())
        .map(|panel| {
            let used: f64 = state.laid[panel]
                .iter()
                .map(|laid| search.areas[pieces[laid.piece].part])
                .sum();
            search.usable[panel] - used
        })
        .collect()
}

/// Lays the pieces that are left, the larger first, each on the tightest panel that takes it; with `shuffle` above 0
/// sizes and tightness are blurred by chance.
#[allow(clippy::too_many_arguments)] // the working data of one step of the search
fn lay_left(
    search: &mut Search<'_>,
    pieces: &[Kind],
    places: &[Vec<usize>],
    state: &mut State,
    room: &mut [f64],
    first: Option<(usize, usize)>,
    shuffle: f64,
    chance: &mut Chance,
    watch: &mut Watch<'_>,
) {
    let mut order: Vec<(f64, usize)> = state
        .left
        .iter()
        .map(|&piece| {
            let blur = 1.0 + shuffle * (chance.share() - 0.5) * 2.0;
            let size = search.areas[pieces[piece].part] * blur;
            let urgent = first.is_some_and(|(urgent, _)| urgent == piece);
            (if urgent { f64::INFINITY } else { size }, piece)
        })
        .collect();
    order.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
    let pushes: Vec<Vec2> = (0..room.len())
        .map(|_| {
            let push = match shuffle > 0.0 {
                true => PUSHES[chance.pick(PUSHES.len())],
                false => PUSHES[8],
            };
            Vec2::new(push.0, push.1)
        })
        .collect();
    state.left.clear();
    state.left_area = 0.0;
    for (_, piece) in order {
        let kind = pieces[piece];
        let size = search.areas[kind.part];
        let mut panels: Vec<(f64, usize)> = places[piece]
            .iter()
            .filter(|&&panel| room[panel] >= size * (1.0 - 1e-9) - 1e-3)
            .map(|&panel| {
                let blur = 1.0 + shuffle * (chance.share() - 0.5);
                let target = first == Some((piece, panel));
                (
                    if target {
                        f64::NEG_INFINITY
                    } else {
                        room[panel] * blur
                    },
                    panel,
                )
            })
            .collect();
        panels.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
        let mut done = false;
        for (_, panel) in panels {
            if watch.is_over(search.work) {
                break;
            }
            if state.full[panel].contains(&kind) {
                continue;
            }
            match lay_one(
                search,
                kind,
                panel,
                &state.laid[panel],
                pushes[panel],
                shuffle,
                chance,
            ) {
                Some((attitude, shift)) => {
                    state.laid[panel].push(Laid {
                        piece,
                        attitude,
                        shift,
                    });
                    room[panel] -= size;
                    done = true;
                    break;
                }
                None => state.full[panel].push(kind),
            }
        }
        if !done {
            state.left.push(piece);
            state.left_area += size;
        }
    }
}

/// One piece on a panel: of its ways of lying the one whose far side stays furthest against the push. A few ways are
/// compared at a time, and the rest only tried where none of these has a place.
fn lay_one(
    search: &mut Search<'_>,
    kind: Kind,
    panel: usize,
    laid: &[Laid],
    push: Vec2,
    shuffle: f64,
    chance: &mut Chance,
) -> Option<(usize, Vec2)> {
    let mut choices = search.choices(kind, panel).to_vec();
    if shuffle > 0.0 {
        for i in (1..choices.len()).rev() {
            choices.swap(i, chance.pick(i + 1));
        }
    }
    for few in choices.chunks(FEW) {
        let mut best: Option<(f64, usize, Vec2)> = None;
        for &attitude in few {
            if let Some(shift) = search.place(attitude, panel, laid, push) {
                let shape = &search.attitudes[attitude];
                let far = shape
                    .hull
                    .iter()
                    .fold(f64::NEG_INFINITY, |far, p| far.max(push.dot(p.to_vec2())));
                let size = length(push) * search.areas[kind.part].sqrt();
                let reach = push.dot(shift) + far + shuffle * 0.2 * size * chance.share();
                if best.is_none_or(|(least, _, _)| reach < least) {
                    best = Some((reach, attitude, shift));
                }
            }
        }
        if let Some((_, attitude, shift)) = best {
            return Some((attitude, shift));
        }
    }
    None
}
