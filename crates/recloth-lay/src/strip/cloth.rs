//! Ways of lying, and lays, on cloth by the length.

use kurbo::{Point, Vec2};
use recloth::ErrorKind;

use crate::bounds::{grain_turn, ways};
use crate::crowd::{Attitude, Pose, Room, Scene, Stance, Table};
use crate::lay::half_turns;
use crate::search::{Kind, Search, lay_against, neat};
use crate::shape::{close_cover, convex_parts, disc, ring};
use crate::{Error, Hand, Lay, Part, Placement, Strip, check, placed};

/// More pieces than this are laid in rows where no search has laid them. The number has no source.
const MANY: usize = 300;

/// The pieces' attitudes on the cloth.
pub(super) struct Cloth {
    pub(super) table: Table,
    /// Whether each attitude is mirrored, and its turn (deg).
    turns: Vec<(bool, f64)>,
    /// The attitudes of each piece.
    pub(super) ways: Vec<Vec<usize>>,
    width: f64,
}

impl Cloth {
    pub(super) fn new(
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

    pub(super) fn scene(&self, length: f64) -> Scene<'_> {
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
    pub(super) fn without_search(
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
    pub(super) fn lay(
        &self,
        parts: &[Part],
        pieces: &[Kind],
        poses: &[Pose],
        spacing: f64,
    ) -> (Lay, f64) {
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
    pub(super) fn length(&self, poses: &[Pose]) -> f64 {
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
