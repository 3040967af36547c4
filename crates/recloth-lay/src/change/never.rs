//! The proof that no amount of the changes will do.
//!
//! A lay after any of the changes leaves room for certain shapes where its pieces lie: of a joined piece, what lies before
//! and beyond every place of the seam; of a shorter or smaller one, the least, where that lies within all others. Where
//! not even these have a place together, and the grain tilted as far as allowed, nothing will do. Nor where the pieces at
//! their smallest have more area than there is.

use super::apply::{joined, most_steps, own, pieces, shaped};
use super::{Change, Give};
use crate::bounds::{area, area_slack, usable_area};
use crate::cleave::{direction, moved};
use crate::shape::{ring, signed_area};
use crate::{Lay, Panel, Part, Placement, Shortage, check};

/// Two numbers no further apart are the same (mm).
const SAME: f64 = 1e-9;

/// What stays of all parts, whatever the changes; a part of which nothing is sure to stay has counts of 0.
pub(super) fn staying(parts: &[Part], changes: &[Change]) -> Vec<Part> {
    let mut others = Vec::new();
    let mut whole: Vec<Part> = parts
        .iter()
        .enumerate()
        .map(|(index, part)| {
            let full = own(changes, index, |change| {
                most_steps(part, &changes[change].kind)
            });
            stays(part, &full, &mut others).unwrap_or_else(|| Part {
                as_drawn: 0,
                mirrored: 0,
                ..part.clone()
            })
        })
        .collect();
    whole.extend(others);
    whole
}

fn stays(part: &Part, full: &[(&Give, u32)], others: &mut Vec<Part>) -> Option<Part> {
    let tilts: Vec<(&Give, u32)> = full
        .iter()
        .copied()
        .filter(|(give, _)| matches!(give, Give::Tilt { .. }))
        .collect();
    let mut kept = shaped(part, &tilts)?;
    let mut shapes = full
        .iter()
        .filter(|(give, _)| !matches!(give, Give::Tilt { .. } | Give::Fewer { .. }));
    let fewer: u32 = full
        .iter()
        .map(|(give, steps)| match give {
            Give::Fewer { .. } => *steps,
            _ => 0,
        })
        .sum();
    let (shape, second) = (shapes.next(), shapes.next());
    if second.is_some() {
        return None;
    }
    if shape.is_some() {
        // What does not match at the largest change may at a smaller.
        kept.matches.clear();
    }
    match shape {
        None => {}
        Some((
            Give::Shorter {
                toward_deg, beyond, ..
            },
            _,
        )) if falls(part, *toward_deg, *beyond) => {
            let least = shaped(part, full)?;
            (kept.outline, kept.seam) = (least.outline, least.seam);
        }
        Some((Give::Smaller { steps, .. }, _)) => {
            let least = &steps.last()?.outline;
            let outlines = steps.iter().map(|step| &step.outline);
            if !outlines
                .chain([&part.outline])
                .all(|other| lies_in(least, other))
            {
                return None;
            }
            kept.outline = least.clone();
        }
        Some((
            Give::Join {
                across_deg,
                from,
                to,
                ..
            },
            _,
        )) if fewer == 0 => {
            let along = direction(*across_deg);
            let [before, _] = joined(&kept, along, *from, 0.0)?;
            let [_, beyond] = joined(&kept, along, *to, 0.0)?;
            others.extend([before, beyond]);
            (kept.as_drawn, kept.mirrored) = (0, 0);
        }
        Some(_) => return None,
    }
    kept.drop_lost_fold();
    for _ in 0..fewer {
        match kept.as_drawn >= kept.mirrored {
            true => kept.as_drawn = kept.as_drawn.saturating_sub(1),
            false => kept.mirrored -= 1,
        }
    }
    Some(kept)
}

/// Whether a part whose corners beyond a line move back lies, but for a shift, within what it was, however far; and its seam
/// line, by the same shift, within what that was.
fn falls(part: &Part, toward_deg: f64, beyond: f64) -> bool {
    let [comes_down, comes_up] = falls_from(&part.outline, toward_deg, beyond);
    let seam = match part.seam.is_empty() {
        true => [true, true],
        false => falls_from(&part.seam, toward_deg, beyond),
    };
    (comes_down && seam[0]) || (comes_up && seam[1])
}

/// Whether it does without a shift, and with that by which the corners move.
///
/// So it is where every line along the move meets the outline in one stretch, and either all corners of the near side stay,
/// so that the far side alone comes down; or all of the far side move, so that, seen from there, the near side comes up.
fn falls_from(outline: &[kurbo::Point], toward_deg: f64, beyond: f64) -> [bool; 2] {
    let along = direction(toward_deg);
    // Across from left to right, and along upwards, keeps a ring counter-clockwise.
    let places: Vec<(f64, f64)> = ring(outline)
        .iter()
        .map(|p| (along.y * p.x - along.x * p.y, along.dot(p.to_vec2())))
        .collect();
    let n = places.len();
    let (left, right) = places.iter().fold(
        (f64::INFINITY, f64::NEG_INFINITY),
        |(left, right), &(x, _)| (left.min(x), right.max(x)),
    );
    let at = |i: usize| places[i % n];
    let is_left = |i: usize| at(i).0 <= left + SAME;
    let is_right = |i: usize| at(i).0 >= right - SAME;
    // The last corner at the left is the lowest there, the last at the right the highest.
    let (Some(low_left), Some(low_right)) = (
        (0..n).find(|&i| is_left(i) && !is_left(i + 1)),
        (0..n)
            .find(|&i| !is_right(i) && is_right(i + 1))
            .map(|i| i + 1),
    ) else {
        return [false, false];
    };
    let (Some(high_right), Some(high_left)) = (
        (0..n).find(|&i| is_right(i) && !is_right(i + 1)),
        (0..n)
            .find(|&i| !is_left(i) && is_left(i + 1))
            .map(|i| i + 1),
    ) else {
        return [false, false];
    };
    let chain = |from: usize, to: usize| -> Vec<(f64, f64)> {
        let steps = (to + n - from % n) % n;
        (0..=steps).map(|k| at(from + k)).collect()
    };
    let (low, high) = (chain(low_left, low_right), chain(high_right, high_left));
    let runs = |chain: &[(f64, f64)], sign: f64| {
        chain
            .windows(2)
            .all(|pair| sign * (pair[1].0 - pair[0].0) >= -SAME)
    };
    let runs = runs(&low, 1.0) && runs(&high, -1.0);
    [
        runs && low.iter().all(|&(_, y)| y <= beyond),
        runs && high.iter().all(|&(_, y)| y > beyond),
    ]
}

/// Whether one outline lies within another, both as given.
fn lies_in(inner: &[kurbo::Point], outer: &[kurbo::Point]) -> bool {
    let part = Part {
        tilt_deg: 180.0,
        ..Part::new("inner", inner.iter().copied())
    };
    let lay = Lay {
        placements: vec![Placement {
            part: 0,
            hand: crate::Hand::AsDrawn,
            panel: 0,
            mirrored: false,
            turn_deg: 0.0,
            shift: kurbo::Vec2::ZERO,
        }],
        ..Lay::default()
    };
    Panel::new("outer", outer.iter().copied())
        .is_ok_and(|panel| check(&[part], &[panel], &lay).is_ok())
}

/// Whether the pieces, each at its smallest, have more area than there is.
pub(super) fn too_much(parts: &[Part], panels: &[Panel], changes: &[Change]) -> Option<Shortage> {
    let (mut needed_mm2, mut slack) = (0.0, 0.0);
    for (index, part) in parts.iter().enumerate() {
        let full = own(changes, index, |change| {
            most_steps(part, &changes[change].kind)
        });
        let fewer: u32 = full
            .iter()
            .map(|(give, steps)| match give {
                Give::Fewer { .. } => *steps,
                _ => 0,
            })
            .sum();
        let count = f64::from(pieces(part).saturating_sub(fewer));
        let (least, loose) = smallest(part, &full);
        needed_mm2 += count * least;
        slack += count * loose;
    }
    let instead = changes.iter().filter_map(|change| match &change.kind {
        Give::Instead { parts, .. } => Some(parts),
        _ => None,
    });
    let all = parts.iter().chain(instead.flatten());
    let there_mm2: f64 = (panels.iter())
        .map(|panel| usable_area(panel, all.clone()))
        .sum();
    let loose: f64 = panels.iter().map(|panel| area_slack(panel.outline())).sum();
    (needed_mm2 > there_mm2 + slack + loose).then(|| Shortage::Area {
        panels: (0..panels.len()).collect(),
        needed_mm2,
        there_mm2,
    })
}

/// The least area one piece can be brought to, and the slack of its edges.
///
/// Corners that move along one line change the area in proportion to how far; moved along several, it is least where each
/// has moved fully or not at all.
fn smallest(part: &Part, full: &[(&Give, u32)]) -> (f64, f64) {
    let mut least = f64::INFINITY;
    // Two halves have at most twice the edge of the whole, and two strips.
    let mut loose = 4.0 * area_slack(&part.outline);
    let outlines = full.iter().filter_map(|(give, _)| match give {
        Give::Smaller { steps, .. } => Some(steps.iter().map(|step| &step.outline)),
        _ => None,
    });
    let backs: Vec<(&Give, u32)> = full
        .iter()
        .copied()
        .filter(|(give, _)| matches!(give, Give::Shorter { .. }))
        .collect();
    if backs.len() > 6 {
        return (0.0, loose);
    }
    for outline in outlines.flatten().chain([&part.outline]) {
        loose = loose.max(4.0 * area_slack(outline));
        for which in 0..1_u32 << backs.len() {
            let mut points = ring(outline);
            for (index, (give, _)) in backs.iter().enumerate() {
                if let (
                    true,
                    Give::Shorter {
                        toward_deg,
                        beyond,
                        most,
                    },
                ) = (which & (1 << index) != 0, give)
                {
                    let along = direction(*toward_deg);
                    points = moved(&points, along, *beyond, -most);
                }
            }
            least = least.min(signed_area(&points).max(0.0));
        }
    }
    for (give, _) in full {
        if let Give::Instead { parts, .. } = give {
            let sum = |value: &dyn Fn(&Part) -> f64| -> f64 {
                parts
                    .iter()
                    .map(|one| f64::from(pieces(one)) * value(one))
                    .sum()
            };
            least = least.min(sum(&|one| area(&one.outline)));
            loose = loose.max(sum(&|one| area_slack(&one.outline)));
        }
    }
    (least, loose)
}

#[cfg(test)]
mod tests {
    use kurbo::{Point, Vec2};

    use super::*;
    use crate::chance::Chance;
    use crate::lay::sin_cos_deg;
    use crate::valid::check_ring;

    /// Where it is said that the outline moved back lies within the outline moved back less, the checker agrees.
    #[test]
    fn what_falls_lies_within_what_it_was() {
        let mut chance = Chance::new(3);
        let (mut said, mut not) = (0, 0);
        for _ in 0..400 {
            let corners = 4 + chance.pick(4);
            let outline: Vec<Point> = (0..corners)
                .map(|i| {
                    let (sin, cos) =
                        sin_cos_deg(360.0 * (i as f64 + 0.7 * chance.share()) / corners as f64);
                    let far = 100.0 + 100.0 * chance.share();
                    Point::new(far * cos, far * sin)
                })
                .collect();
            let toward_deg = 360.0 * chance.share();
            let beyond = 120.0 * (chance.share() - 0.5);
            let part = Part::new("piece", outline.iter().copied());
            if !falls(&part, toward_deg, beyond) {
                not += 1;
                continue;
            }
            let along = direction(toward_deg);
            let (most, less) = (50.0 * chance.share(), chance.share());
            let least = moved(&outline, along, beyond, -most);
            if check_ring(&least).is_err() {
                continue;
            }
            said += 1;
            let other = moved(&outline, along, beyond, -most * less);
            // Seen from the near side or from the far one. An angle seldom turns exactly, so a little is let by.
            let shifts = [Vec2::ZERO, along * (most * (1.0 - less))];
            let grown = |by: f64| -> Vec<Point> {
                let centre = Point::ORIGIN;
                other
                    .iter()
                    .map(|&p| centre + (p - centre) * (1.0 + by))
                    .collect()
            };
            let within = |shift: Vec2| {
                let moved: Vec<Point> = least.iter().map(|&p| p + shift).collect();
                lies_in(&moved, &grown(1e-9))
            };
            assert!(
                shifts.into_iter().any(within),
                "{outline:?} {toward_deg} {beyond} {most}"
            );
        }
        assert!(said > 40 && not > 40, "{said} {not}");
    }

    /// A notch in the side whose lower corner comes up, seen from the top: at 50 mm the side is at 160, and with 40 mm less
    /// at 200 - 80 x 10 / 60 = 186.7, which is further out.
    #[test]
    fn a_notch_in_the_way_is_no_fall() {
        let outline = [
            (0.0, 0.0),
            (200.0, 0.0),
            (120.0, 100.0),
            (220.0, 200.0),
            (0.0, 300.0),
        ];
        let part = Part::new("notched", outline);
        assert!(!falls(&part, 90.0, 50.0));
        let up = direction(90.0);
        let least = moved(&part.outline, up, 50.0, -40.0);
        let from_top: Vec<Point> = least.iter().map(|&p| p + up * 40.0).collect();
        assert!(!lies_in(&from_top, &part.outline));
        // Without the notch it is one.
        let plain = [(0.0, 0.0), (200.0, 0.0), (220.0, 200.0), (0.0, 300.0)];
        assert!(falls(&Part::new("plain", plain), 90.0, 50.0));
    }
}
