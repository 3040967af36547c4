//! Pieces laid largest first into corners, then panels cleared and laid again until every piece has a place or the
//! budget is used up.

use kurbo::Vec2;

use super::{Kind, Laid, PUSHES, Search};
use crate::Placement;
use crate::chance::Chance;
use crate::shape::length;
use crate::watch::Watch;

/// How many ways of lying are compared at a time.
const FEW: usize = 4;

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
