//! The waist line of a panel with darts.

use alloc::format;
use alloc::vec::Vec;
use kurbo::{Point, Vec2};

use crate::Error;
use crate::outline::{Curve, Dart, Edge, Mark, Segment};

/// A waist line from the centre to the side, with open darts.
pub(super) struct WaistLine {
    /// Parts of the waist, from the centre, between darts.
    waists: Vec<Segment>,
    /// For each dart: its point, and its cap from the centre's leg to the middle and on to the side's leg.
    caps: Vec<(Point, Segment, Segment)>,
    pub(super) end: Point,
    /// Angle of the line at its end, in radians.
    pub(super) slope: f64,
}

impl WaistLine {
    /// The line that ends this much higher than it starts; `NoSolution` names `side_rise`.
    pub(super) fn rising(
        waist: f64,
        darts: u32,
        intake: f64,
        depth: f64,
        rise: f64,
    ) -> Result<WaistLine, Error> {
        let at = |slope: f64| WaistLine::new(waist, darts, intake, depth, slope);
        let (mut low, mut high) = (-0.6, 0.6);
        let (lowest, highest) = (at(low).end.y, at(high).end.y);
        if lowest > rise || highest < rise {
            return Err(Error::no_solution("side_rise", rise, lowest, highest));
        }
        for _ in 0..60 {
            let middle = (low + high) / 2.0;
            if at(middle).end.y < rise {
                low = middle;
            } else {
                high = middle;
            }
        }
        Ok(at((low + high) / 2.0))
    }

    pub(super) fn new(waist: f64, darts: u32, intake: f64, depth: f64, slope: f64) -> WaistLine {
        let angle = 2.0 * libm::atan2(intake / 2.0, depth);
        let leg = libm::hypot(intake / 2.0, depth);
        // With every dart folded the line is one arc.
        let turn = f64::from(darts) * angle + slope;
        let curvature = turn / waist;
        let parts = f64::from(darts + 1);
        let (mut at, mut heading) = (Point::ORIGIN, 0.0);
        let (mut waists, mut caps) = (Vec::new(), Vec::new());
        for part in 0..=darts {
            let part_turn = turn / parts;
            let half = part_turn / 2.0;
            let shortened = if half.abs() < 1e-4 {
                1.0 - half * half / 6.0
            } else {
                libm::sin(half) / half
            };
            let next = at + towards(heading + half) * (waist / parts * shortened);
            waists.push(Segment::arc(at, next, libm::tan(part_turn / 4.0)));
            heading += part_turn;
            at = next;
            if part == darts {
                break;
            }
            let down = -core::f64::consts::FRAC_PI_2;
            let point = at + towards(heading + down) * leg;
            let back = |turned: f64| towards(heading - down - turned);
            // The middle of the cap: where the arc, run on past the leg, crosses the middle of the dart.
            let (sin, cos) = libm::sincos(angle / 2.0);
            let reach = 1.0 + curvature * leg;
            let middle = (2.0 * leg + curvature * leg * leg)
                / (reach * cos + libm::sqrt((1.0 - reach * reach * sin * sin).max(0.0)));
            let cap_turn = libm::asin((curvature * middle * sin).clamp(-1.0, 1.0));
            let top = point + back(angle / 2.0) * middle;
            let other = point + back(angle) * leg;
            let bulge = libm::tan(cap_turn / 4.0);
            caps.push((
                point,
                Segment::arc(at, top, bulge),
                Segment::arc(top, other, bulge),
            ));
            at = other;
            heading -= angle;
        }
        WaistLine {
            waists,
            caps,
            end: at,
            slope,
        }
    }

    /// Its edges from the side to the centre, as they lie in the ring.
    pub(super) fn edges(&self, allowance: f64) -> Vec<Edge> {
        let mut edges = Vec::new();
        for index in (0..self.waists.len()).rev() {
            let number = index + 1;
            let curve = Curve::Segment(self.waists[index].reversed());
            let span = curve.length();
            let mut waist = Edge::seam(format!("waist {number}"), curve, allowance);
            if index < self.caps.len() {
                waist = waist.notch(format!("dart {number}"), 0.0, 1);
            }
            if index > 0 {
                waist = waist.notch(format!("dart {index}"), span, 1);
            }
            edges.push(waist);
            if index > 0 {
                let (_, centre, side) = self.caps[index - 1];
                let cap = |where_: &str, s: Segment| {
                    let curve = Curve::Segment(s.reversed());
                    Edge::seam(format!("cap {index} {where_}"), curve, allowance)
                };
                edges.push(cap("side", side));
                edges.push(cap("centre", centre));
            }
        }
        edges
    }

    pub(super) fn darts(&self) -> Vec<Mark> {
        let dart = |(index, (point, centre, side)): (usize, &(Point, Segment, Segment))| {
            Mark::Dart(Dart {
                name: format!("dart {}", index + 1),
                point: *point,
                legs: [centre.start, side.end],
            })
        };
        self.caps.iter().enumerate().map(dart).collect()
    }
}

/// A step of length 1 in a direction given in radians.
pub(super) fn towards(angle: f64) -> Vec2 {
    let (sin, cos) = libm::sincos(angle);
    Vec2::new(cos, sin)
}
