//! Proofs that pieces which each have a place have none together.
//!
//! Each holds for every lay that the checker would accept, its tolerances included.

use std::collections::BTreeMap;

use crate::bounds::{SLACK, area, area_slack, usable_area, width};
use crate::inner::{Inner, Way};
use crate::search::Kind;
use crate::shape::hull;
use crate::{Hand, Panel, Part};

/// What proves that not all pieces have a place together.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Shortage {
    /// A piece that can lie on no panel at all.
    NoPanel {
        /// Index of the part.
        part: usize,
        /// Which hand.
        hand: Hand,
    },
    /// Pieces that can lie on certain panels only and have more area than these.
    Area {
        /// Indices of those panels.
        panels: Vec<usize>,
        /// Area of the pieces that can lie nowhere else (mm²).
        needed_mm2: f64,
        /// Area of those panels (mm²).
        there_mm2: f64,
    },
    /// Large pieces, no two of which share a panel, by area or by their width and length, that outnumber what the panels can
    /// take.
    TooFew {
        /// How many large pieces there are.
        pieces: u32,
        /// How many of them the panels can take at most.
        taken: u32,
    },
    /// Pieces that can lie on certain panels only, each over half as long there as the longest of these, which must
    /// therefore lie side by side, and together are wider.
    Across {
        /// Indices of those panels.
        panels: Vec<usize>,
        /// How many pieces there are.
        pieces: u32,
        /// Width they need across the grain, spacing between them included (mm).
        needed: f64,
        /// Width of those panels together (mm).
        there: f64,
    },
    /// Pieces that can lie on certain panels only, each over half as wide as the widest of these, which must therefore lie
    /// one after the other along the grain, and together are longer.
    Along {
        /// Indices of those panels.
        panels: Vec<usize>,
        /// How many pieces there are.
        pieces: u32,
        /// Length they need along the grain, spacing between them included (mm).
        needed: f64,
        /// Length of those panels together (mm).
        there: f64,
    },
    /// Points of pieces that may not be tilted and cannot all match on the repeat that all panels have: matched elsewhere,
    /// these two miss each other.
    Unmatched {
        /// Name of the points.
        name: String,
        /// Index of one part.
        part: usize,
        /// Index of the other.
        other: usize,
        /// Whether it is across the grain that they miss.
        across: bool,
        /// By how much (mm).
        off: f64,
        /// Length of the repeat (mm).
        repeat: f64,
    },
}

/// What the proofs are about.
struct Wants<'a> {
    parts: &'a [Part],
    pieces: &'a [Kind],
    /// The panels that each piece can lie on, as far as is known.
    allowed: Vec<Vec<usize>>,
    spacing: f64,
    areas: Vec<f64>,
    slacks: Vec<f64>,
    panels: Vec<Room>,
}

/// What a panel has at most.
struct Room {
    usable: f64,
    loose: f64,
    across: f64,
    along: f64,
}

impl Room {
    fn new<'a>(panel: &Panel, parts: impl IntoIterator<Item = &'a Part> + Clone) -> Room {
        let shape = hull(panel.outline());
        Room {
            usable: usable_area(panel, parts),
            loose: area_slack(panel.outline()),
            across: width(&shape, panel.grain_deg() + 90.0),
            along: width(&shape, panel.grain_deg()),
        }
    }

    fn extent(&self, way: Way) -> f64 {
        match way {
            Way::Across => self.across,
            Way::Along => self.along,
        }
    }
}

/// A proof that not all pieces have a place together, if there is one; `may` says where each may lie.
pub(crate) fn shortage(
    parts: &[Part],
    panels: &[Panel],
    pieces: &[Kind],
    may: &dyn Fn(Kind, usize) -> bool,
    spacing: f64,
) -> Option<Shortage> {
    let on = |&kind: &Kind| -> Vec<usize> {
        (0..panels.len())
            .filter(|&panel| may(kind, panel))
            .collect()
    };
    let mut of: BTreeMap<Kind, Vec<usize>> = BTreeMap::new();
    for kind in pieces {
        of.entry(*kind).or_insert_with(|| on(kind));
    }
    let allowed: Vec<Vec<usize>> = pieces.iter().map(|kind| of[kind].clone()).collect();
    if let Some(piece) = allowed.iter().position(Vec::is_empty) {
        return Some(Shortage::NoPanel {
            part: pieces[piece].part,
            hand: pieces[piece].hand,
        });
    }
    let wanted = || pieces.iter().map(|kind| &parts[kind.part]);
    let wants = Wants {
        parts,
        pieces,
        allowed,
        spacing,
        areas: parts.iter().map(|part| area(&part.outline)).collect(),
        slacks: parts.iter().map(|part| area_slack(&part.outline)).collect(),
        panels: (panels.iter())
            .map(|panel| Room::new(panel, wanted()))
            .collect(),
    };
    let mut inner = Inner::new(parts);
    let mut sets: Vec<Vec<usize>> = wants.allowed.clone();
    sets.push((0..panels.len()).collect());
    sets.sort();
    sets.dedup();
    // The simplest proof first.
    let by_area = sets.iter().find_map(|set| wants.area(set));
    by_area.or_else(|| wants.too_few(&mut inner)).or_else(|| {
        let ways = [Way::Across, Way::Along];
        let mut each = sets.iter().flat_map(|set| ways.map(|way| (set, way)));
        each.find_map(|(set, way)| wants.in_a_row(set, way, &mut inner))
    })
}

impl Wants<'_> {
    /// The pieces that can lie nowhere but on these panels.
    fn bound(&self, set: &[usize]) -> impl Iterator<Item = usize> {
        let inside = |piece: &usize| {
            let mut panels = self.allowed[*piece].iter();
            panels.all(|panel| set.binary_search(panel).is_ok())
        };
        (0..self.pieces.len()).filter(inside)
    }

    /// More area than the panels it can go to.
    fn area(&self, set: &[usize]) -> Option<Shortage> {
        let (mut needed_mm2, mut slack) = (0.0, 0.0);
        for piece in self.bound(set) {
            needed_mm2 += self.areas[self.pieces[piece].part];
            slack += self.slacks[self.pieces[piece].part];
        }
        let there_mm2: f64 = set.iter().map(|&panel| self.panels[panel].usable).sum();
        let loose: f64 = set.iter().map(|&panel| self.panels[panel].loose).sum();
        (needed_mm2 > there_mm2 + slack + loose).then(|| Shortage::Area {
            panels: set.to_vec(),
            needed_mm2,
            there_mm2,
        })
    }

    /// More large pieces than panels: each has over half the area of every panel it can go to, or cannot share one with any
    /// of the others.
    fn too_few(&self, inner: &mut Inner<'_>) -> Option<Shortage> {
        /// More pieces than this are not compared with each other. The number has no source.
        const MOST: usize = 200;
        let over_half = |&piece: &usize| {
            let part = self.pieces[piece].part;
            let half = |&panel: &usize| {
                let room = &self.panels[panel];
                self.areas[part] - self.slacks[part] > (room.usable + room.loose) / 2.0
            };
            self.allowed[piece].iter().all(half)
        };
        let mut apart: Vec<usize> = (0..self.pieces.len()).filter(over_half).collect();
        let mut others: Vec<usize> = (0..self.pieces.len())
            .filter(|piece| !apart.contains(piece))
            .collect();
        let size = |piece: usize| self.areas[self.pieces[piece].part];
        others.sort_by(|&a, &b| size(b).total_cmp(&size(a)));
        let mut known: BTreeMap<(Kind, Kind), bool> = BTreeMap::new();
        for piece in others {
            let alone = apart.len() < MOST
                && apart.iter().all(|&other| {
                    let pair = (self.pieces[piece], self.pieces[other]);
                    let never = known.get(&pair).copied();
                    never.unwrap_or_else(|| {
                        let never = self.never_share(piece, other, inner);
                        known.insert(pair, never);
                        never
                    })
                });
            if alone {
                apart.push(piece);
            }
        }
        let taken = matched(&apart, &self.allowed, self.panels.len());
        (taken < apart.len()).then_some(Shortage::TooFew {
            pieces: apart.len() as u32,
            taken: taken as u32,
        })
    }

    /// Whether two pieces cannot lie on one panel together: they have more area than it, or rectangles in them, which keep to
    /// the grain, have room neither side by side nor one after the other.
    fn never_share(&self, one: usize, other: usize, inner: &mut Inner<'_>) -> bool {
        let (a, b) = (self.pieces[one].part, self.pieces[other].part);
        let mut shared = (self.allowed[one].iter())
            .filter(|panel| self.allowed[other].binary_search(panel).is_ok())
            .map(|&panel| &self.panels[panel]);
        shared.all(|room| {
            let area = self.areas[a] + self.areas[b] - self.slacks[a] - self.slacks[b];
            let past = |way: Way| {
                let both = inner.largest(a, way)? + inner.largest(b, way)?;
                Some(both + self.spacing > room.extent(way) + 4.0 * SLACK)
            };
            let mut past = [Way::Across, Way::Along].map(past).into_iter();
            area > room.usable + room.loose || past.all(|past| past == Some(true))
        })
    }

    /// Pieces that pass the middle of any panel they are on, and are together more than the panels have the other way.
    fn in_a_row(&self, set: &[usize], way: Way, inner: &mut Inner<'_>) -> Option<Shortage> {
        let there: f64 = (set.iter())
            .map(|&panel| self.panels[panel].extent(way))
            .sum();
        let most = (set.iter())
            .map(|&panel| self.panels[panel].extent(way.other()))
            .fold(0.0, f64::max);
        let past_middle = most / 2.0 + 2.0 * SLACK;
        let mut counts: BTreeMap<usize, u32> = BTreeMap::new();
        for piece in self.bound(set) {
            *counts.entry(self.pieces[piece].part).or_default() += 1;
        }
        // On each panel there is one space fewer than pieces.
        let with_spaces = |(pieces, sum): (u32, f64)| {
            let spaces = f64::from(pieces) - set.len() as f64;
            sum + self.spacing * spaces.max(0.0)
        };
        let total = |each: &mut dyn FnMut(usize) -> Option<f64>| {
            (counts.iter()).fold((0, 0.0), |(pieces, sum), (&part, &count)| {
                match each(part) {
                    Some(room) => (pieces + count, sum + room * f64::from(count)),
                    None => (pieces, sum),
                }
            })
        };
        let enough = |all: (u32, f64)| with_spaces(all) > there + f64::from(all.0 + 1) * SLACK;
        // Rectangles in the pieces are sought only where the pieces as a whole would be too much.
        let whole = total(&mut |part| {
            let shape = hull(&self.parts[part].outline);
            let grain_deg = self.parts[part].grain_deg;
            let (across, along) = (width(&shape, grain_deg + 90.0), width(&shape, grain_deg));
            let [here, square] = match way {
                Way::Across => [across, along],
                Way::Along => [along, across],
            };
            (square > past_middle).then_some(here)
        });
        let all = enough(whole)
            .then(|| total(&mut |part| inner.wide(part, way, past_middle)))
            .filter(|&all| enough(all))?;
        let (pieces, needed, panels) = (all.0, with_spaces(all), set.to_vec());
        Some(match way {
            Way::Across => Shortage::Across {
                panels,
                pieces,
                needed,
                there,
            },
            Way::Along => Shortage::Along {
                panels,
                pieces,
                needed,
                there,
            },
        })
    }
}

/// How many pieces can have a panel each (augmenting paths).
fn matched(pieces: &[usize], allowed: &[Vec<usize>], panels: usize) -> usize {
    fn give(
        piece: usize,
        allowed: &[Vec<usize>],
        holder: &mut [Option<usize>],
        seen: &mut [bool],
    ) -> bool {
        for &panel in &allowed[piece] {
            if !seen[panel] {
                seen[panel] = true;
                if holder[panel].is_none_or(|other| give(other, allowed, holder, seen)) {
                    holder[panel] = Some(piece);
                    return true;
                }
            }
        }
        false
    }
    let mut holder = vec![None; panels];
    pieces
        .iter()
        .filter(|&&piece| give(piece, allowed, &mut holder, &mut vec![false; panels]))
        .count()
}
