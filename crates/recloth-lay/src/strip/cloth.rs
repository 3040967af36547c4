//! Ways of lying, and lays, on cloth by the length.

use kurbo::{Point, Vec2};
use recloth::ErrorKind;

use super::matched::{Matched, links, unmatched};
use super::unit::{self, Cut, Unit};
use crate::bounds::grain_turn;
use crate::crowd::{Attitude, Pose, Room, Scene, Stance, Table};
use crate::lay::half_turns;
use crate::phase::{Phases, Tie, Ties};
use crate::search::{Kind, Search, lay_against, neat};
use crate::shape::{close_cover, convex_parts, disc, ring};
use crate::{Error, Fold, Lay, Part, Placement, Strip, check, placed};

/// More pieces than this are laid in rows where no search has laid them. The number has no source.
const MANY: usize = 300;
/// By how much a piece may be too wide for folded cloth (mm): so much rounding may do where it just goes in.
const HAIR: f64 = 1e-9;

/// The units' attitudes on the cloth, or on one layer of it.
pub(super) struct Cloth {
    pub(super) table: Table,
    /// How each attitude lies, not yet shifted.
    lies: Vec<Placement>,
    /// How far across each attitude may reach, and whether it lies on the fold, where it has no other place across.
    reaches: Vec<(f64, bool)>,
    /// The attitudes of each unit.
    pub(super) ways: Vec<Vec<usize>>,
    width: f64,
    folded: bool,
    /// Where they may lie so that they match; none where there is nothing to match.
    pub(super) matched: Option<Matched>,
}

impl Cloth {
    pub(super) fn new(
        parts: &[Part],
        units: &[Unit],
        strip: &Strip,
        spacing: f64,
        threads: usize,
    ) -> Result<Cloth, Error> {
        let panel = strip.panel(1.0);
        let panel = panel.map_err(|error| Error::new("strip", error))?;
        let mut lies: Vec<Placement> = Vec::new();
        let mut reaches: Vec<(f64, bool)> = Vec::new();
        let links = links(parts, units, strip)?;
        let tie = |kind, at: &Placement| match &links {
            None => Some(Tie::default()),
            Some(links) => {
                let of = (links, parts, core::slice::from_ref(&panel));
                Tie::new(of, kind, 0, at.mirrored, at.turn_deg)
            }
        };
        let mut ties: Vec<Option<Tie>> = Vec::new();
        let mut attitudes: Vec<Attitude> = Vec::new();
        let mut ways_of: Vec<(Unit, Vec<usize>)> = Vec::new();
        for &unit in units {
            if ways_of.iter().any(|(other, _)| *other == unit) {
                continue;
            }
            let part = &parts[unit.part];
            let outline = close_cover(&ring(&part.outline));
            let mut own = Vec::new();
            let mut pairs = Vec::new();
            let mut narrowest = f64::INFINITY;
            let reach = reach(strip, spacing);
            if unit.cut == Cut::OnFold {
                let ways = unit.on_fold(part, &panel).map_err(|off| {
                    let error = recloth::Error::no_solution("fold", off, f64::NAN, part.tilt_deg);
                    unit::refused(part, strip, ": grain off its fold (deg)", error)
                })?;
                for (mirrored, turn_deg) in ways {
                    let at = unit.lying(unit.hand, mirrored, turn_deg);
                    let whole = convex_parts(&ring(&placed(&outline, &at)));
                    let shape =
                        Attitude::new(unit::below(&whole, unit::fold_height(part, &at)), None);
                    let wide = shape.high.y - shape.low.y;
                    narrowest = narrowest.min(wide);
                    if wide <= strip.width / 2.0 + HAIR {
                        own.push(attitudes.len());
                        lies.push(at);
                        reaches.push((strip.width / 2.0, true));
                        attitudes.push(shape);
                    }
                }
            } else {
                for (hand, mirrored) in unit.sides(part, &panel) {
                    let square = grain_turn(part, &panel, mirrored);
                    let tilts: &[f64] = match part.tilt_deg > 0.0 {
                        true => &[0.0, part.tilt_deg, -part.tilt_deg],
                        false => &[0.0],
                    };
                    for tilt in tilts {
                        let mut laid: Vec<(f64, usize)> = Vec::new();
                        for half in part.turned(strip.nap) {
                            let at = unit.lying(hand, mirrored, half_turns(square + tilt + half));
                            let shape =
                                Attitude::new(convex_parts(&ring(&placed(&outline, &at))), None);
                            let wide = shape.high.y - shape.low.y;
                            narrowest = narrowest.min(wide);
                            let tied = tie(unit.kind(), &at);
                            let hair = if strip.folded { HAIR } else { 0.0 };
                            if wide <= reach + hair && tied.is_some() {
                                ties.push(tied);
                                if let Some(&(_, other)) =
                                    (laid.iter()).find(|(other, _)| (other - half).abs() == 180.0)
                                {
                                    pairs.push((other, attitudes.len()));
                                }
                                laid.push((*half, attitudes.len()));
                                own.push(attitudes.len());
                                lies.push(at);
                                reaches.push((reach, false));
                                attitudes.push(shape);
                            }
                        }
                    }
                }
            }
            for (one, other) in pairs {
                attitudes[one].opposite = Some(other);
                attitudes[other].opposite = Some(one);
            }
            if own.is_empty()
                && narrowest <= strip.width
                && let (Some(links), Some(repeat)) = (&links, strip.repeat)
                && let Some(mismatch) = links.mismatch([repeat.along, repeat.across])
            {
                return Err(unmatched(parts, &mismatch));
            }
            if own.is_empty() {
                let (needed, more) = match (strip.folded, unit.cut) {
                    _ if !narrowest.is_finite() => (f64::NAN, ""),
                    (false, _) => (narrowest, ""),
                    (true, Cut::OnFold) => (2.0 * narrowest, ""),
                    (true, _) if narrowest <= strip.width => {
                        (2.0 * narrowest + spacing, ", though it fits opened")
                    }
                    (true, _) => (2.0 * narrowest + spacing, ""),
                };
                let error = recloth::Error::new(
                    ErrorKind::NoSolution,
                    "width",
                    strip.width,
                    needed,
                    f64::NAN,
                );
                return Err(unit::refused(part, strip, more, error));
            }
            ways_of.push((unit, own));
        }
        let disc = match spacing > 0.0 {
            true => disc(spacing),
            false => Vec::new(),
        };
        let mut work = 0;
        Ok(Cloth {
            table: Table::new(attitudes, &disc, threads, &mut work),
            lies,
            reaches,
            ways: (units.iter())
                .filter_map(|unit| ways_of.iter().find(|(other, _)| other == unit))
                .map(|(_, own)| own.clone())
                .collect(),
            width: strip.width,
            folded: strip.folded,
            matched: links.map(|links| Matched {
                ties: Ties::new(&links, ties),
                kinds: ways_of.into_iter().map(|(_, own)| own).collect(),
                longest: (strip.repeat).map_or(0.0, |it| it.along.max(it.across)),
            }),
        })
    }

    /// What the pieces meet on so much cloth, and where they may lie, once it is chosen where on a print they match.
    pub(super) fn scene(&self, length: f64, phases: &Phases) -> Scene<'_> {
        let matched = |(index, room): (usize, Option<Room>)| match &self.matched {
            Some(matched) => matched.ties.room(index, room?, phases),
            None => room,
        };
        let rooms: Vec<Option<Room>> = (self.rooms(length).into_iter().enumerate())
            .map(matched)
            .collect();
        let stance = |index: usize| Stance {
            attitude: index,
            panel: 0,
            room: rooms[index].unwrap_or_else(|| self.room(index, length)),
            walls: None,
        };
        let may = |own: &Vec<usize>| -> Vec<usize> {
            (own.iter().copied())
                .filter(|&attitude| rooms[attitude].is_some())
                .collect()
        };
        Scene {
            table: &self.table,
            ways: self.ways.iter().map(may).collect(),
            stances: (0..self.table.attitudes.len()).map(stance).collect(),
        }
    }

    /// Where the shifts of an attitude may lie on so much cloth.
    pub(super) fn room(&self, attitude: usize, length: f64) -> Room {
        let shape = &self.table.attitudes[attitude];
        let (reach, on_fold) = self.reaches[attitude];
        let low = Point::new(-shape.low.x, -shape.low.y);
        let high = Point::new(
            (length - shape.high.x).max(low.x),
            (reach - shape.high.y).max(low.y),
        );
        let grid = None;
        match on_fold {
            true => Room {
                low: Point::new(low.x, reach - shape.high.y),
                high: Point::new(high.x, reach - shape.high.y),
                grid,
            },
            false => Room { low, high, grid },
        }
    }

    /// A lay that needs no search: one piece after the other against the end of the cloth, or in rows.
    pub(super) fn without_search(
        &self,
        parts: &[Part],
        units: &[Unit],
        strip: &Strip,
        spacing: f64,
    ) -> (Lay, f64) {
        let matched = self.matched.as_ref();
        let matched = matched.and_then(|matched| self.in_matched_rows(matched, spacing));
        let is_matched = matched.is_some();
        let rows = matched.unwrap_or_else(|| self.in_rows(spacing));
        let rows = self.lay(parts, units, &rows, spacing);
        let on_fold = |unit: &Unit| unit.cut == Cut::OnFold;
        if units.len() > MANY || is_matched || units.iter().any(on_fold) {
            return rows;
        }
        let layer = Strip {
            width: reach(strip, spacing),
            ..*strip
        };
        let laid = layer.panel(rows.1).ok().and_then(|panel| {
            let kinds: Vec<Kind> = units.iter().map(Unit::kind).collect();
            let mut search = Search::new(parts, core::slice::from_ref(&panel), spacing);
            let placements = lay_against(&mut search, &kinds, Vec2::new(1.0, 0.03))?;
            let found = self.measured(parts, units, placements, spacing);
            let panel = strip.panel(found.1).ok()?;
            (found.1 < rows.1 && check(parts, &[panel], &found.0).is_ok()).then_some(found)
        });
        laid.unwrap_or(rows)
    }

    /// The units side by side in rows across the cloth, the longest first; one on the fold ends its row.
    fn in_rows(&self, spacing: f64) -> Vec<Pose> {
        // A little more than the spacing, which rounding cannot use up.
        let spacing = spacing * (1.0 + 1e-9) + 1e-6;
        let shape = |unit: usize| &self.table.attitudes[self.ways[unit][0]];
        let long = |unit: usize| shape(unit).high.x - shape(unit).low.x;
        let mut order: Vec<usize> = (0..self.ways.len()).collect();
        order.sort_by(|&a, &b| long(b).total_cmp(&long(a)));
        let mut poses: Vec<Pose> = (self.ways.iter())
            .map(|own| Pose {
                stance: own[0],
                shift: Point::ORIGIN,
            })
            .collect();
        let (mut along, mut across, mut row) = (0.0, 0.0, 0.0);
        for unit in order {
            let shape = shape(unit);
            let (reach, on_fold) = self.reaches[self.ways[unit][0]];
            let wide = shape.high.y - shape.low.y;
            if across > 0.0 && across + wide > reach {
                along += row + spacing;
                (across, row) = (0.0, 0.0);
            }
            let height = if on_fold { reach - wide } else { across };
            poses[unit].shift = Point::new(along - shape.low.x, height - shape.low.y);
            across = height + (wide + spacing);
            row = long(unit).max(row);
        }
        poses
    }

    /// The lay, and the length of cloth it takes.
    pub(super) fn lay(
        &self,
        parts: &[Part],
        units: &[Unit],
        poses: &[Pose],
        spacing: f64,
    ) -> (Lay, f64) {
        let placement = |pose: &Pose| Placement {
            shift: Vec2::new(neat(pose.shift.x), neat(pose.shift.y)),
            ..self.lies[pose.stance]
        };
        let placements = poses.iter().map(placement).collect();
        self.measured(parts, units, placements, spacing)
    }

    /// The lay of units that lie so, on the cloth opened, and the length of cloth it takes.
    fn measured(
        &self,
        parts: &[Part],
        units: &[Unit],
        laid: Vec<Placement>,
        spacing: f64,
    ) -> (Lay, f64) {
        let placements: Vec<Placement> = (units.iter().zip(laid))
            .flat_map(|(unit, at)| unit.cut(at, self.width))
            .collect();
        let length = (placements.iter())
            .flat_map(|placement| placed(&parts[placement.part].outline, placement))
            .fold(0.0_f64, |length, p| length.max(p.x));
        let fold = Fold {
            panel: 0,
            from: Point::new(0.0, self.width / 2.0),
            to: Point::new(length.max(1.0), self.width / 2.0),
        };
        let folded = self.folded && !placements.is_empty();
        let lay = Lay {
            placements,
            unplaced: Vec::new(),
            spacing,
            folds: folded.then_some(fold).into_iter().collect(),
        };
        (lay, length)
    }

    /// Length of cloth up to the furthest piece.
    pub(super) fn length(&self, poses: &[Pose]) -> f64 {
        (poses.iter())
            .map(|pose| pose.shift.x + self.table.attitudes[pose.stance].high.x)
            .fold(0.0, f64::max)
    }
}

/// How far across the cloth a piece may reach: to the other selvedge, or half the spacing from the fold.
fn reach(strip: &Strip, spacing: f64) -> f64 {
    match strip.folded {
        true => (strip.width - spacing) / 2.0,
        false => strip.width,
    }
}
