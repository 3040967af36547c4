//! Places within the repeat: where a piece may be shifted to so that its points match, once it is chosen where on the print
//! they meet.

use kurbo::{Point, Vec2};

use crate::chance::Chance;
use crate::crowd::Room;
use crate::grid::{Grid, Line};
use crate::lay::{half_turns, sin_cos_deg};
use crate::links::Links;
use crate::search::Kind;
use crate::{Hand, Panel, Part, Placement, placed};

/// How far the points of a piece may miss each other (mm): well within what the checker lets pass.
const MISS: f64 = 4e-7;
/// How often a choice is tried before it is given up. No source.
const TRIES: usize = 60;

/// A piece lying one way on one panel, as its points tie it.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Tie {
    /// The group that lies the same way round, the way, in quarter turns from the panel's grain, and which repeat.
    way: Option<(usize, i32, usize)>,
    /// The group that has the same side up, and whether this one lies face down.
    face: Option<(usize, bool)>,
    /// Direction of its own grain on the panel, untilted.
    along: Vec2,
    /// Along its grain and across it: the group, how far the shift is from the group's place, and the repeat.
    lines: [Option<(usize, f64, f64)>; 2],
}

/// All stances of all kinds of pieces that are tied, with what ties them.
pub(crate) struct Ties {
    /// How many groups there are along and across.
    groups: [usize; 2],
    /// For each stance; `None` for one whose points cannot all match.
    ties: Vec<Option<Tie>>,
    /// The groups across that lie in each group along.
    inner: Vec<Vec<usize>>,
}

/// What is chosen for each group.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Phases {
    ways: Vec<Option<(i32, usize)>>,
    faces: Vec<Option<bool>>,
    /// Places along the grain and across it (mm); none while they are not chosen.
    places: [Vec<Option<f64>>; 2],
}

impl Tie {
    /// What ties a piece that lies so on a panel; `None` where its points cannot all match.
    pub(crate) fn new(
        (links, parts, panels): (&Links, &[Part], &[Panel]),
        kind: Kind,
        panel: usize,
        mirrored: bool,
        turn_deg: f64,
    ) -> Option<Tie> {
        let (Some(repeat), Some(linked)) = (panels[panel].repeat(), links.kinds.get(&kind)) else {
            return Some(Tie::default());
        };
        let part = &parts[kind.part];
        let grain_deg = match mirrored {
            true => 180.0 - part.grain_deg,
            false => part.grain_deg,
        };
        let off_deg = half_turns(grain_deg + turn_deg - panels[panel].grain_deg());
        let quarter = ((off_deg / 90.0).round() as i32).rem_euclid(4);
        let (sin, cos) = sin_cos_deg(panels[panel].grain_deg() + 90.0 * f64::from(quarter));
        let along = Vec2::new(cos, sin);
        let across = Vec2::new(-sin, cos);
        let lengths = match quarter % 2 {
            0 => [repeat.along, repeat.across],
            _ => [repeat.across, repeat.along],
        };
        let face_down = mirrored != (kind.hand == Hand::Mirrored);
        let at = Placement {
            part: 0,
            hand: Hand::AsDrawn,
            panel: 0,
            mirrored,
            turn_deg,
            shift: Vec2::ZERO,
        };
        let mut lines = [None, None];
        for (axis, direction) in [(0, along), (1, across)] {
            let (Some(group), length) = (linked.groups[axis], lengths[axis]) else {
                continue;
            };
            if length == 0.0 {
                continue;
            }
            let sign = if axis == 1 && face_down { -1.0 } else { 1.0 };
            let mut from: Option<f64> = None;
            for point in &linked.points {
                let Some(place) = point.place[axis] else {
                    continue;
                };
                let lies = placed(&[point.at], &at)[0] - repeat.from;
                let own = sign * place - lies.dot(direction);
                let first = *from.get_or_insert(own);
                let apart = own - first;
                if (apart - (apart / length).round() * length).abs() > MISS {
                    return None;
                }
            }
            lines[axis] = from.map(|from| (group, from, length));
        }
        let same = |other: &Panel| {
            other
                .repeat()
                .is_some_and(|it| (it.along, it.across) == (repeat.along, repeat.across))
        };
        let which = panels.iter().position(same).unwrap_or(panel);
        // Where nothing repeats along the grain, only what matches across it lies the same way round.
        let along_matters = panels
            .iter()
            .any(|panel| panel.repeat().is_some_and(|it| it.along > 0.0))
            || parts.iter().any(|part| part.crosswise);
        let way = match along_matters {
            true => linked.groups[0],
            false => linked.groups[1].map(|group| links.groups[0] + group),
        };
        Some(Tie {
            way: way.map(|group| (group, quarter, which)),
            face: lines[1].map(|(group, _, _)| (group, face_down)),
            along,
            lines,
        })
    }
}

impl Ties {
    pub(crate) fn new(links: &Links, ties: Vec<Option<Tie>>) -> Ties {
        let mut inner: Vec<Vec<usize>> = vec![Vec::new(); links.groups[0]];
        for linked in links.kinds.values() {
            if let [Some(along), Some(across)] = linked.groups
                && !inner[along].contains(&across)
            {
                inner[along].push(across);
            }
        }
        Ties {
            groups: links.groups,
            ties,
            inner,
        }
    }

    /// Where a stance may lie once places are chosen: anywhere, on a grid, or, `None`, nowhere.
    fn lines(&self, stance: usize, phases: &Phases) -> Option<Option<Grid>> {
        let tie = self.ties[stance]?;
        if let Some((group, quarter, repeat)) = tie.way
            && phases.ways[group].is_some_and(|chosen| chosen != (quarter, repeat))
        {
            return None;
        }
        if let Some((group, face_down)) = tie.face
            && phases.faces[group].is_some_and(|chosen| chosen != face_down)
        {
            return None;
        }
        let [along, across] = [0, 1].map(|axis| {
            let (group, from, step) = tie.lines[axis]?;
            let place = phases.places[axis][group]?;
            Some(Line {
                offset: place + from,
                step,
            })
        });
        Some((along.is_some() || across.is_some()).then_some(Grid {
            axis: tie.along,
            along,
            across,
        }))
    }

    /// The room of a stance with its grid; `None` where it has no place.
    pub(crate) fn room(&self, stance: usize, room: Room, phases: &Phases) -> Option<Room> {
        let grid = self.lines(stance, phases)?;
        let room = Room { grid, ..room };
        room.has_place().then_some(room)
    }

    /// Places for all groups, at random and so that every kind of piece has a stance with a place: as they were but for one
    /// group, where that is asked for. `None` where none were found.
    pub(crate) fn choose(
        &self,
        ways: &[Vec<usize>],
        rooms: &[Option<Room>],
        base: Option<&Phases>,
        chance: &mut Chance,
    ) -> Option<Phases> {
        let mut phases = match base {
            Some(base) => base.clone(),
            None => self.nothing(),
        };
        let only = base.map(|_| chance.pick(self.inner.len()));
        for (index, across) in self.inner.iter().enumerate() {
            if only.is_some_and(|only| only != index) {
                continue;
            }
            let mut found = None;
            for _ in 0..TRIES {
                let mut tried = phases.clone();
                self.clear(&mut tried, index);
                if !self.seed(&mut tried, (0, index), ways, rooms, chance) {
                    continue;
                }
                let all = across.iter().all(|&group| {
                    (0..TRIES).any(|_| {
                        let mut inner = tried.clone();
                        let seeded = self.seed(&mut inner, (1, group), ways, rooms, chance);
                        if seeded {
                            tried = inner;
                        }
                        seeded
                    })
                });
                if all {
                    found = Some(tried);
                    break;
                }
            }
            phases = found?;
        }
        self.suits(ways, rooms, &phases, |_| true).then_some(phases)
    }

    /// Whether all kinds of pieces have a stance with a place.
    pub(crate) fn suit(
        &self,
        ways: &[Vec<usize>],
        rooms: &[Option<Room>],
        phases: &Phases,
    ) -> bool {
        self.suits(ways, rooms, phases, |_| true)
    }

    fn suits(
        &self,
        ways: &[Vec<usize>],
        rooms: &[Option<Room>],
        phases: &Phases,
        which: impl Fn(&Tie) -> bool,
    ) -> bool {
        let asked = |own: &Vec<usize>| {
            own.iter()
                .any(|&stance| self.ties[stance].is_some_and(|tie| which(&tie)))
        };
        let has_place = |&stance: &usize| {
            rooms[stance].is_some_and(|room| self.room(stance, room, phases).is_some())
        };
        ways.iter()
            .all(|own| !asked(own) || own.iter().any(has_place))
    }

    /// A place for one group: where one of its stances lies in a corner of its room, or anywhere. False where some kind of
    /// piece of the group then has none.
    fn seed(
        &self,
        phases: &mut Phases,
        (axis, group): (usize, usize),
        ways: &[Vec<usize>],
        rooms: &[Option<Room>],
        chance: &mut Chance,
    ) -> bool {
        let ours = |tie: &Tie| match axis {
            0 => {
                tie.way.is_some_and(|(own, ..)| own == group)
                    || tie.lines[0].is_some_and(|(own, ..)| own == group)
            }
            _ => tie.lines[1].is_some_and(|(own, ..)| own == group),
        };
        let stances: Vec<usize> = (0..self.ties.len())
            .filter(|&stance| {
                rooms[stance].is_some() && self.ties[stance].is_some_and(|tie| ours(&tie))
            })
            .filter(|&stance| self.lines(stance, phases).is_some())
            .collect();
        if stances.is_empty() {
            // A group of no panel with a repeat is not tied.
            return true;
        }
        let stance = stances[chance.pick(stances.len())];
        let (Some(tie), Some(room)) = (self.ties[stance], rooms[stance]) else {
            return false;
        };
        if let Some((group, quarter, repeat)) = tie.way {
            phases.ways[group] = Some((quarter, repeat));
        }
        if axis == 1
            && let Some((group, face_down)) = tie.face
        {
            phases.faces[group] = Some(face_down);
        }
        if let Some((group, from, step)) = tie.lines[axis] {
            let corner = Point::new(
                [room.low.x, room.high.x][chance.pick(2)],
                [room.low.y, room.high.y][chance.pick(2)],
            );
            let direction = match axis {
                0 => tie.along,
                _ => Vec2::new(-tie.along.y, tie.along.x),
            };
            phases.places[axis][group] = Some(match chance.share() < 0.6 {
                true => corner.to_vec2().dot(direction) - from,
                false => chance.share() * step,
            });
        }
        self.suits(ways, rooms, phases, ours)
    }

    fn nothing(&self) -> Phases {
        let [along, across] = self.groups;
        Phases {
            ways: vec![None; along + across],
            faces: vec![None; across],
            places: [vec![None; along], vec![None; across]],
        }
    }

    fn clear(&self, phases: &mut Phases, index: usize) {
        phases.ways[index] = None;
        phases.places[0][index] = None;
        for &group in &self.inner[index] {
            phases.ways[self.groups[0] + group] = None;
            phases.faces[group] = None;
            phases.places[1][group] = None;
        }
    }
}
