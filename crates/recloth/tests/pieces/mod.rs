//! Random pieces, the same on every machine: for the tests of cut lines and the program that prints them.

use kurbo::Point;
use recloth::outline::{Corner, Curve, Edge, Piece};

#[path = "../random/mod.rs"]
mod random;

pub(crate) use random::Random;

impl Random {
    /// Numbers from a seed, which need not look random itself.
    pub(crate) fn new(seed: u64) -> Random {
        Random(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ 0x5851_f42d)
    }

    /// A whole number below `count`.
    pub(crate) fn below(&mut self, count: u32) -> u32 {
        (self.unit() * f64::from(count)) as u32
    }
}

/// What the edges of a random piece may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Kind {
    /// Straight edges only.
    pub(crate) straight: bool,
    /// The same allowance on every edge; else each its own, some 0, some already cut.
    pub(crate) uniform: bool,
    /// Corners: pointed, or all treatments.
    pub(crate) pointed: bool,
}

/// A random simple piece, with deep inward corners, needles and tight curves among them.
pub(crate) fn random_piece(seed: u64, kind: Kind) -> Piece {
    let mut random = Random::new(seed);
    loop {
        if let Some(piece) = attempt(&mut random, kind, seed) {
            return piece;
        }
    }
}

fn attempt(random: &mut Random, kind: Kind, seed: u64) -> Option<Piece> {
    let count = 3 + random.below(8);
    let wild = random.below(3) == 0;
    let smallest = if wild { 8.0 } else { 80.0 };
    let corners: Vec<Point> = (0..count)
        .map(|i| {
            let turn = (f64::from(i) + random.between(0.0, 0.8)) / f64::from(count);
            let radius = random.between(smallest, 300.0);
            let (sin, cos) = libm::sincos(turn * std::f64::consts::TAU);
            Point::new(radius * cos, radius * sin)
        })
        .collect();
    let allowance = [5.0, 10.0, 15.0, 40.0][random.below(4) as usize];
    let edges = (0..corners.len())
        .map(|i| {
            let (a, b) = (corners[i], corners[(i + 1) % corners.len()]);
            let size = libm::hypot(b.x - a.x, b.y - a.y);
            let curve = match if kind.straight { 0 } else { random.below(4) } {
                1 => Curve::arc(a, b, random.between(-0.9, 0.9)),
                2 => {
                    let mut near = |p: Point| {
                        (
                            p.x + random.between(-0.6, 0.6) * size,
                            p.y + random.between(-0.6, 0.6) * size,
                        )
                    };
                    let (first, second) = (near(a), near(b));
                    Curve::cubic(a, first, second, b)
                }
                _ => Curve::line(a, b),
            };
            let width = if kind.uniform {
                allowance
            } else {
                [0.0, 6.0, 10.0, 15.0, 40.0][random.below(5) as usize]
            };
            let mut edge = Edge::seam(format!("edge {i}"), curve, width);
            if !kind.uniform && random.below(6) == 0 {
                edge = edge.already_cut();
            }
            if !kind.pointed {
                edge = edge.corner(match random.below(9) {
                    0 => Corner::SquaredToThis,
                    1 => Corner::SquaredToNext,
                    2 => Corner::MirroredOnThis,
                    3 => Corner::MirroredOnNext,
                    4 => Corner::SteppedOnThis,
                    5 => Corner::SteppedOnNext,
                    6 => Corner::Trimmed {
                        distance: random.between(0.0, 30.0),
                    },
                    7 => Corner::Rounded {
                        radius: random.between(0.0, 15.0),
                    },
                    _ => Corner::Pointed {
                        limit: random.between(1.0, 6.0),
                    },
                });
            }
            let length = edge.length();
            edge.notch("middle", length / 2.0, 1)
        })
        .collect();
    Piece::new(format!("random {seed}"), edges).ok()
}
