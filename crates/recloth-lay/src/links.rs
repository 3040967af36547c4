//! What points to match tie together: groups of pieces, and how far each lies from the others within the repeat.
//!
//! Along its own grain a piece shifted by `s` has a point at `s + a`. Points of one name lie at one place `c` of the repeat, so
//! that `s + a = c` but for whole repeats. Pieces and names are the two kinds of nodes of a graph, each point an edge of it
//! that says how far apart the two are; what hangs together is a group, of which one place is free. A ring of edges that
//! does not add up to whole repeats cannot be matched. Across the grain it is the same by hands.

use std::collections::{BTreeMap, BTreeSet};

use kurbo::Point;

use crate::lay::sin_cos_deg;
use crate::matching::Meets;
use crate::search::Kind;
use crate::{Hand, Part};

/// By how much a ring of points must miss before that proves anything (mm): more than all that the checker lets pass.
const SLACK: f64 = 0.01;

/// The groups of some kinds of pieces.
pub(crate) struct Links {
    pub(crate) kinds: BTreeMap<Kind, Linked>,
    /// How many groups there are along the grain, and across it.
    pub(crate) groups: [usize; 2],
    rings: Vec<Ring>,
}

/// One kind of pieces as its points tie it.
#[derive(Default)]
pub(crate) struct Linked {
    /// Its group along the grain, and across it.
    pub(crate) groups: [Option<usize>; 2],
    pub(crate) points: Vec<Tied>,
}

/// A point to match.
pub(crate) struct Tied {
    pub(crate) at: Point,
    /// Where its name lies along the grain, and across it face up, from its group's free place on (mm).
    pub(crate) place: [Option<f64>; 2],
}

/// A ring of points by which two parts miss each other, but for whole repeats.
#[derive(Clone, Debug)]
struct Ring {
    across: bool,
    name: String,
    parts: [usize; 2],
    miss: f64,
}

/// Points that cannot all match, however their pieces are laid.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Mismatch {
    pub(crate) name: String,
    pub(crate) parts: [usize; 2],
    pub(crate) across: bool,
    pub(crate) off: f64,
    pub(crate) repeat: f64,
}

/// One point as an edge between a kind of pieces and what it meets.
struct Edge<'a> {
    kind: Kind,
    point: usize,
    name: &'a str,
    meets: (&'a str, Option<Meets>),
    place: f64,
}

impl Links {
    /// The groups of these kinds, of which there are so many pieces.
    pub(crate) fn new(parts: &[Part], kinds: &[(Kind, u32)]) -> Links {
        let mut linked: BTreeMap<Kind, Linked> = BTreeMap::new();
        let joined: BTreeSet<&str> = (kinds.iter())
            .flat_map(|(kind, _)| &parts[kind.part].matches)
            .filter(|point| point.meets(Hand::AsDrawn) == Some(Meets::Both))
            .map(|point| point.name.as_str())
            .collect();
        for &(kind, _) in kinds {
            let tied = |point: &crate::MatchPoint| Tied {
                at: point.at,
                place: [None, None],
            };
            let points = parts[kind.part].matches.iter().map(tied).collect();
            let linked = linked.entry(kind).or_default();
            linked.points = points;
        }
        let mut links = Links {
            kinds: linked,
            groups: [0, 0],
            rings: Vec::new(),
        };
        for across in [false, true] {
            let mut edges: Vec<Edge<'_>> = Vec::new();
            let mut pieces: BTreeMap<(&str, Option<Meets>), u32> = BTreeMap::new();
            for &(kind, count) in kinds {
                let part = &parts[kind.part];
                let (sin, cos) = sin_cos_deg(part.grain_deg);
                let sign = if kind.hand == Hand::Mirrored {
                    -1.0
                } else {
                    1.0
                };
                for (point, it) in part.matches.iter().enumerate() {
                    let name = it.name.as_str();
                    let meets = match (across, it.meets(kind.hand)) {
                        (false, _) => (name, None),
                        (true, None) => continue,
                        (true, Some(_)) if joined.contains(name) => (name, Some(Meets::Both)),
                        (true, meets) => (name, meets),
                    };
                    *pieces.entry(meets).or_default() += count;
                    edges.push(Edge {
                        kind,
                        point,
                        name,
                        meets,
                        place: match across {
                            false => cos * it.at.x + sin * it.at.y,
                            true => sign * (cos * it.at.y - sin * it.at.x),
                        },
                    });
                }
            }
            // A name that is there once ties nothing.
            edges.retain(|edge| pieces[&edge.meets] > 1);
            links.tie(&edges, across);
        }
        links
    }

    /// Goes from kind to name to kind, and says where each lies; where it comes round to what has its place, a ring.
    fn tie(&mut self, edges: &[Edge<'_>], across: bool) {
        let axis = usize::from(across);
        let mut of_kind: BTreeMap<Kind, Vec<usize>> = BTreeMap::new();
        let mut of_name: BTreeMap<_, Vec<usize>> = BTreeMap::new();
        for (index, edge) in edges.iter().enumerate() {
            of_kind.entry(edge.kind).or_default().push(index);
            of_name.entry(edge.meets).or_default().push(index);
        }
        let mut shifts: BTreeMap<Kind, f64> = BTreeMap::new();
        let mut places: BTreeMap<(&str, Option<Meets>), (f64, usize)> = BTreeMap::new();
        for &first in of_kind.keys() {
            if shifts.contains_key(&first) {
                continue;
            }
            let group = self.groups[axis];
            self.groups[axis] += 1;
            shifts.insert(first, 0.0);
            let mut next = vec![first];
            while let Some(kind) = next.pop() {
                let shift = shifts[&kind];
                if let Some(linked) = self.kinds.get_mut(&kind) {
                    linked.groups[axis] = Some(group);
                }
                for &index in &of_kind[&kind] {
                    let edge = &edges[index];
                    let place = shift + edge.place;
                    if let Some(&(known, part)) = places.get(&edge.meets) {
                        self.rings.push(Ring {
                            across,
                            name: edge.name.into(),
                            parts: [part, kind.part],
                            miss: place - known,
                        });
                        continue;
                    }
                    places.insert(edge.meets, (place, kind.part));
                    for &other in &of_name[&edge.meets] {
                        let other = &edges[other];
                        shifts.entry(other.kind).or_insert_with(|| {
                            next.push(other.kind);
                            place - other.place
                        });
                    }
                }
            }
        }
        for edge in edges {
            if let Some(linked) = self.kinds.get_mut(&edge.kind) {
                linked.points[edge.point].place[axis] = Some(places[&edge.meets].0);
            }
        }
    }

    /// Points that cannot all match on cloth that repeats so, along the pieces' grain and across it, while no piece is
    /// tilted; the one that misses most.
    pub(crate) fn mismatch(&self, repeat: [f64; 2]) -> Option<Mismatch> {
        let missing = |ring: &Ring| {
            let repeat = repeat[usize::from(ring.across)];
            let off = match repeat > 0.0 {
                true => (ring.miss - (ring.miss / repeat).round() * repeat).abs(),
                false => 0.0,
            };
            (off > SLACK).then(|| Mismatch {
                name: ring.name.clone(),
                parts: ring.parts,
                across: ring.across,
                off,
                repeat,
            })
        };
        let all = self.rings.iter().filter_map(missing);
        all.reduce(|most, one| if one.off > most.off { one } else { most })
    }

    /// Whether a kind of piece is tied to anything.
    pub(crate) fn ties(&self, kind: Kind) -> bool {
        let groups = self.kinds.get(&kind).map(|linked| linked.groups);
        groups.is_some_and(|groups| groups != [None, None])
    }

    /// Whether nothing is tied to anything.
    pub(crate) fn is_empty(&self) -> bool {
        self.groups == [0, 0]
    }
}
