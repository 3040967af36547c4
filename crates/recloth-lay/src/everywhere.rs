//! The proof by exclusion: all positions of a piece on a panel, at all tilts, in groups that are each shown impossible.
//!
//! A group is a box of shifts and turns. Over a box no point of the piece moves from where it is at the middle by more
//! than half the box's diagonal and its own distance from the pivot times half the span of turns. So when a point of
//! the piece is off the cloth by more than that at the middle, or a point of the panel's edge lies within the piece by
//! more than that, the whole box is impossible; otherwise the box is halved. Points are off or within by more than the
//! checker's tolerance too, so what is excluded here no checker would accept. A middle where nothing is wrong is offered
//! as a place.

use core::f64::consts::PI;

use kurbo::{Point, Vec2};

use crate::bounds::{grain_turn, ways};
use crate::lay::sin_cos_deg;
use crate::part::Kept;
use crate::shape::{bounds, length};
use crate::watch::Watch;
use crate::{Hand, Panel, Part, Placement};

/// Rounding and the checker's tolerances together, generously (mm).
const SLACK: f64 = 1e-5;
/// Boxes within which no point moves further than this are given up (mm).
const LEAST: f64 = 0.02;

/// What came of looking everywhere.
pub(crate) enum Outcome {
    /// Nothing is wrong here, as far as this can see.
    Place(Placement),
    /// Every box is excluded.
    Nowhere,
    /// Neither, within the work allowed.
    Unknown,
}

/// Looks everywhere on a panel for a place for one piece.
pub(crate) fn look(
    part: (usize, &Part),
    hand: Hand,
    panel: (usize, &Panel),
    budget: u64,
    work: &mut u64,
    watch: &mut Watch<'_>,
) -> Outcome {
    let (part_index, part) = part;
    let (panel_index, panel) = panel;
    let scene = Scene::new(part, panel);
    let (low, high) = bounds(panel.outline());
    let end = *work + budget;
    let mut known = true;
    for mirrored in ways(part, hand, panel) {
        let pivot = scene.pivot(mirrored);
        let square = grain_turn(part, panel, mirrored);
        // The pivot is within the hull of the piece, so within the panel's box wherever the piece is on the cloth.
        let mut boxes: Vec<Group> = (part.turned(panel.nap()).iter())
            .map(|half| Group {
                middle: low.midpoint(high),
                half: (high - low) / 2.0 + Vec2::new(SLACK, SLACK),
                turn_deg: square + half,
                half_turn_deg: part.tilt_deg + 1e-8,
            })
            .collect();
        while let Some(group) = boxes.pop() {
            if *work > end || watch.is_over(*work) {
                return Outcome::Unknown;
            }
            let by_turn = scene.radius * group.half_turn_deg * (PI / 180.0);
            let reach = Reach {
                shift: length(group.half),
                turn: group.half_turn_deg * (PI / 180.0),
                most: length(group.half) + by_turn,
            };
            let placement = Placement {
                part: part_index,
                hand,
                panel: panel_index,
                mirrored,
                turn_deg: group.turn_deg,
                shift: pivot.shift_to(group.middle, group.turn_deg),
            };
            match scene.judge(&pivot, group.middle, group.turn_deg, &reach, work) {
                Judgement::Impossible => {}
                Judgement::Clear => return Outcome::Place(placement),
                Judgement::Unclear if reach.most < LEAST => known = false,
                Judgement::Unclear => boxes.extend(group.halves(by_turn)),
            }
        }
    }
    match known {
        true => Outcome::Nowhere,
        false => Outcome::Unknown,
    }
}

/// A box of positions.
struct Group {
    middle: Point,
    half: Vec2,
    turn_deg: f64,
    half_turn_deg: f64,
}

impl Group {
    /// Halved across whatever moves the piece most.
    fn halves(&self, by_turn: f64) -> [Group; 2] {
        let Group {
            middle,
            half,
            turn_deg,
            half_turn_deg,
        } = *self;
        if by_turn > half.x.max(half.y) {
            let quarter = half_turn_deg / 2.0;
            [-quarter, quarter].map(|off| Group {
                middle,
                half,
                turn_deg: turn_deg + off,
                half_turn_deg: quarter,
            })
        } else {
            let step = match half.x > half.y {
                true => Vec2::new(half.x / 2.0, 0.0),
                false => Vec2::new(0.0, half.y / 2.0),
            };
            [-1.0, 1.0].map(|sign| Group {
                middle: middle + step * sign,
                half: half - step,
                turn_deg,
                half_turn_deg,
            })
        }
    }
}

/// How far points move over a box: shift and turn (rad), and the most any point of the piece moves.
struct Reach {
    shift: f64,
    turn: f64,
    most: f64,
}

enum Judgement {
    Impossible,
    Clear,
    Unclear,
}

/// The piece about its pivot, and the panel, each as edges and as points spread along them.
struct Scene {
    edges: Vec<(Point, Point)>,
    spread: Vec<Point>,
    /// Its seam line, where some flaws are kept from that only.
    seam: Shape,
    centre: Point,
    radius: f64,
    outline: Shape,
    holes: Vec<Shape>,
    /// Flaws that the whole piece is kept from, and that only its seam line is.
    flaws: Vec<(Shape, f64)>,
    seam_flaws: Vec<(Shape, f64)>,
}

struct Shape {
    edges: Vec<(Point, Point)>,
    closed: bool,
    spread: Vec<Point>,
}

/// The piece mirrored or not, about its centre.
struct Pivot {
    centre: Point,
    edges: Vec<(Point, Point)>,
    spread: Vec<Point>,
    seam: Shape,
}

impl Pivot {
    /// The shift of a placement that brings the pivot to a point.
    fn shift_to(&self, to: Point, turn_deg: f64) -> Vec2 {
        let (sin, cos) = sin_cos_deg(turn_deg);
        let c = self.centre;
        to - Point::new(cos * c.x - sin * c.y, sin * c.x + cos * c.y)
    }
}

impl Scene {
    fn new(part: &Part, panel: &Panel) -> Scene {
        let (low, high) = bounds(&part.outline);
        let centre = low.midpoint(high);
        let piece = Shape::new(&part.outline);
        let radius = part
            .outline
            .iter()
            .chain(&part.seam)
            .fold(0.0, |far: f64, &p| far.max(length(p - centre)));
        let kept = |kept: Kept| -> Vec<(Shape, f64)> {
            let flaws = panel.flaws().iter();
            flaws
                .filter(|flaw| part.kept_from(flaw) == kept)
                .map(|flaw| (Shape::new(&flaw.outline), flaw.margin))
                .collect()
        };
        Scene {
            edges: piece.edges,
            spread: piece.spread,
            seam: Shape::new(&part.seam),
            centre,
            radius,
            outline: Shape::new(panel.outline()),
            holes: panel.holes().iter().map(|hole| Shape::new(hole)).collect(),
            flaws: kept(Kept::Whole),
            seam_flaws: kept(Kept::Seam),
        }
    }

    fn pivot(&self, mirrored: bool) -> Pivot {
        let sign = if mirrored { -1.0 } else { 1.0 };
        let flip = |p: Point| Point::new(sign * p.x, p.y);
        let about = |p: &Point| flip(*p) - flip(self.centre).to_vec2();
        Pivot {
            centre: flip(self.centre),
            edges: self
                .edges
                .iter()
                .map(|(p, q)| (about(p), about(q)))
                .collect(),
            spread: self.spread.iter().map(about).collect(),
            seam: Shape {
                edges: (self.seam.edges.iter())
                    .map(|(p, q)| (about(p), about(q)))
                    .collect(),
                closed: true,
                spread: self.seam.spread.iter().map(about).collect(),
            },
        }
    }

    /// Judges all positions of a box by its middle.
    fn judge(
        &self,
        pivot: &Pivot,
        middle: Point,
        turn_deg: f64,
        reach: &Reach,
        work: &mut u64,
    ) -> Judgement {
        let (sin, cos) = sin_cos_deg(turn_deg);
        let lie = |p: Point| {
            Point::new(
                cos * p.x - sin * p.y + middle.x,
                sin * p.x + cos * p.y + middle.y,
            )
        };
        let mut clear = true;
        for &point in &pivot.spread {
            let moves = reach.shift + length(point.to_vec2()) * reach.turn + SLACK;
            let p = lie(point);
            *work += self.outline.edges.len() as u64;
            // Positive where the point is on the cloth.
            let mut room = self.outline.depth(p);
            for hole in &self.holes {
                *work += hole.edges.len() as u64;
                room = room.min(-hole.depth(p));
            }
            for (flaw, margin) in &self.flaws {
                *work += flaw.edges.len() as u64;
                room = room.min(-flaw.depth(p) - margin);
            }
            if room < -moves {
                return Judgement::Impossible;
            }
            clear &= room > 0.0;
        }
        for &point in &pivot.seam.spread {
            if self.seam_flaws.is_empty() {
                break;
            }
            let moves = reach.shift + length(point.to_vec2()) * reach.turn + SLACK;
            let p = lie(point);
            for (flaw, margin) in &self.seam_flaws {
                *work += flaw.edges.len() as u64;
                let room = -flaw.depth(p) - margin;
                if room < -moves {
                    return Judgement::Impossible;
                }
                clear &= room > 0.0;
            }
        }
        let lying = |edges: &[(Point, Point)]| Shape {
            edges: edges.iter().map(|&(p, q)| (lie(p), lie(q))).collect(),
            closed: true,
            spread: Vec::new(),
        };
        let shapes = self
            .holes
            .iter()
            .chain(self.flaws.iter().map(|(flaw, _)| flaw))
            .chain([&self.outline]);
        let seam_flaws = self.seam_flaws.iter().map(|(flaw, _)| flaw);
        let (piece, seam) = (lying(&pivot.edges), lying(&pivot.seam.edges));
        let pairs = shapes.map(|shape| (&piece, shape));
        for (piece, shape) in pairs.chain(seam_flaws.map(|flaw| (&seam, flaw))) {
            for &point in &shape.spread {
                *work += piece.edges.len() as u64;
                let depth = piece.depth(point);
                if depth > reach.most + SLACK {
                    return Judgement::Impossible;
                }
                clear &= depth < 0.0;
            }
        }
        match clear {
            true => Judgement::Clear,
            false => Judgement::Unclear,
        }
    }
}

impl Shape {
    fn new(points: &[Point]) -> Shape {
        let n = points.len();
        let count = if n > 2 { n } else { n.min(1) };
        let edges: Vec<(Point, Point)> = (0..count)
            .map(|i| (points[i], points[(i + 1) % n]))
            .collect();
        let around: f64 = edges.iter().map(|&(p, q)| length(q - p)).sum();
        let step = (around / 48.0).max(f64::MIN_POSITIVE);
        let spread = edges
            .iter()
            .flat_map(|&(p, q)| {
                let pieces = (length(q - p) / step).ceil().clamp(1.0, 48.0);
                (0..pieces as u32).map(move |i| p.lerp(q, f64::from(i) / pieces))
            })
            .chain((n == 2).then(|| points[1]))
            .collect();
        Shape {
            edges,
            closed: n > 2,
            spread,
        }
    }

    /// How deep a point is inside; negative outside: the distance from the edge.
    fn depth(&self, p: Point) -> f64 {
        let mut distance = f64::INFINITY;
        let mut inside = false;
        for &(a, b) in &self.edges {
            let (run, to) = (b - a, p - a);
            let square = run.dot(run);
            let far = if square > 0.0 {
                (to.dot(run) / square).clamp(0.0, 1.0)
            } else {
                0.0
            };
            let off = to - run * far;
            distance = distance.min(off.dot(off));
            if (a.y <= p.y) != (b.y <= p.y) && (run.cross(to) > 0.0) == (b.y > a.y) {
                inside = !inside;
            }
        }
        let distance = distance.sqrt();
        if inside && self.closed {
            distance
        } else {
            -distance
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chance::Chance;
    use crate::{Flaw, Lay, check, placed};

    /// A notched panel, and the same shape scaled, turned end for end or over and tilted, as a piece that allows it.
    fn case(chance: &mut Chance, scale: f64) -> (Part, Hand, Panel) {
        let corners = 4 + chance.pick(5);
        let outline: Vec<Point> = (0..corners)
            .map(|i| {
                let angle = 360.0 * (i as f64 + 0.6 * chance.share()) / corners as f64;
                let (sin, cos) = sin_cos_deg(angle);
                let far = 150.0 + 150.0 * chance.share();
                Point::new(far * cos, far * sin)
            })
            .collect();
        let hand = Hand::BOTH[chance.pick(2)];
        let tilt_deg = 20.0 * chance.share();
        let tilt = tilt_deg * (2.0 * chance.share() - 1.0);
        let half = 180.0 * chance.pick(2) as f64;
        let cloth_deg = 360.0 * chance.share();
        // Back from the cloth to the piece: turn first, then mirror.
        let turn = 360.0 * chance.share();
        let back = Placement {
            part: 0,
            hand,
            panel: 0,
            mirrored: false,
            turn_deg: -turn,
            shift: Vec2::ZERO,
        };
        let mirrored = hand == Hand::Mirrored;
        let shape: Vec<Point> = placed(&outline, &back)
            .into_iter()
            .map(|p| Point::new(if mirrored { -p.x } else { p.x } * scale, p.y * scale))
            .collect();
        let lying = cloth_deg + tilt + half - turn;
        let part = Part {
            grain_deg: (if mirrored { 180.0 - lying } else { lying }) % 360.0,
            tilt_deg,
            as_drawn: u32::from(!mirrored),
            mirrored: u32::from(mirrored),
            ..Part::new("same", shape)
        };
        let panel = Panel::new("cloth", outline)
            .and_then(|panel| panel.with_grain_deg(cloth_deg))
            .expect("a good panel");
        (part, hand, panel)
    }

    fn looked(part: &Part, hand: Hand, panel: &Panel) -> Outcome {
        let mut heedless = |_| core::ops::ControlFlow::Continue(());
        let mut watch = Watch::new(u64::MAX, None, &mut heedless);
        look((0, part), hand, (0, panel), 20_000_000, &mut 0, &mut watch)
    }

    #[test]
    fn a_place_that_is_there_is_never_excluded_and_one_that_cannot_be_is_never_offered() {
        let mut chance = Chance::new(7);
        let mut found = 0;
        for _ in 0..40 {
            let (part, hand, panel) = case(&mut chance, 0.97);
            match looked(&part, hand, &panel) {
                Outcome::Nowhere => panic!("excluded: {part:?} {panel:?}"),
                Outcome::Unknown => {}
                Outcome::Place(placement) => {
                    let lay = Lay {
                        placements: vec![placement],
                        ..Lay::default()
                    };
                    assert_eq!(check(&[part], &[panel], &lay), Ok(()));
                    found += 1;
                }
            }
        }
        assert!(found > 30, "{found}");
        let mut excluded = 0;
        for _ in 0..40 {
            let (part, hand, panel) = case(&mut chance, 1.03);
            match looked(&part, hand, &panel) {
                Outcome::Nowhere => excluded += 1,
                Outcome::Unknown => {}
                Outcome::Place(place) => panic!("offered {place:?}: {part:?} {panel:?}"),
            }
        }
        assert!(excluded > 30, "{excluded}");
    }

    /// Flaws between cut line and seam line exclude nothing; within the seam line they do.
    #[test]
    fn a_flaw_under_the_seam_allowance_is_never_taken_for_one_within_the_seam_line() {
        let mut chance = Chance::new(11);
        let (mut found, mut excluded) = (0, 0);
        for round in 0..60 {
            let (part, hand, panel) = case(&mut chance, 0.97);
            // Seen from the middle the seam line lies at 0.9 of the cut line, which is 0.873 of the panel.
            let seam = part
                .outline
                .iter()
                .map(|&p| Point::ORIGIN + p.to_vec2() * 0.9);
            let part = Part {
                seam: seam.collect(),
                ..part
            };
            let corner = chance.pick(panel.outline().len());
            let (p, q) = (
                panel.outline()[corner].to_vec2(),
                panel.outline()[(corner + 1) % panel.outline().len()].to_vec2(),
            );
            // A strip along one edge: beside the seam line, or well within it.
            let (near, far) = if round % 2 == 0 {
                (0.88, 0.95)
            } else {
                (0.6, 0.8)
            };
            let strip = [p * near, q * near, q * far, p * far];
            let flaw = Flaw::new(strip.map(Vec2::to_point), 0.0).under([crate::SEAM_ALLOWANCE]);
            let panel = panel.with_flaws(vec![flaw]).expect("a good flaw");
            match looked(&part, hand, &panel) {
                Outcome::Nowhere if round % 2 == 0 => panic!("excluded: {part:?} {panel:?}"),
                Outcome::Nowhere => excluded += 1,
                Outcome::Place(placement) => {
                    let lay = Lay {
                        placements: vec![placement],
                        ..Lay::default()
                    };
                    assert_eq!(check(&[part], &[panel], &lay), Ok(()));
                    found += 1;
                }
                Outcome::Unknown => {}
            }
        }
        assert!(found > 20 && excluded > 20, "{found} {excluded}");
    }
}
