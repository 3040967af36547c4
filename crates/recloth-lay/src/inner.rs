//! Rectangles on grain that lie within a piece however it is tilted: what two pieces are at least.

use std::collections::BTreeMap;

use recloth::panel::{largest_rectangle, tallest_rectangle};

use crate::Part;

/// Across the grain or along it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Way {
    Across,
    Along,
}

impl Way {
    pub(crate) fn other(self) -> Way {
        match self {
            Way::Across => Way::Along,
            Way::Along => Way::Across,
        }
    }
}

/// Outlines of more points are not looked into: the work grows with their square. The number has no
/// source.
const MOST_POINTS: usize = 1000;

/// The rectangles that were sought, kept.
pub(crate) struct Inner<'a> {
    parts: &'a [Part],
    largest: BTreeMap<usize, Option<(f64, f64)>>,
    wide: BTreeMap<(usize, Way, u64), Option<f64>>,
}

impl<'a> Inner<'a> {
    pub(crate) fn new(parts: &'a [Part]) -> Inner<'a> {
        Inner {
            parts,
            largest: BTreeMap::new(),
            wide: BTreeMap::new(),
        }
    }

    /// The part, and the sine of its tilt, where its grain lies one way only and there is something to be said.
    fn part(&self, part: usize) -> Option<(&'a Part, f64)> {
        let part = &self.parts[part];
        let plain = !part.crosswise && part.tilt_deg <= 45.0 && part.outline.len() <= MOST_POINTS;
        plain.then(|| {
            let tilt = (part.tilt_deg + 1e-6).to_radians();
            (
                part,
                if part.tilt_deg > 0.0 {
                    libm::sin(tilt)
                } else {
                    0.0
                },
            )
        })
    }

    /// Width or length of a rectangle that a piece of the part holds.
    pub(crate) fn largest(&mut self, index: usize, way: Way) -> Option<f64> {
        let (part, sine) = self.part(index)?;
        let sides = *self.largest.entry(index).or_insert_with(|| {
            let found = largest_rectangle(&part.outline, &[], part.grain_deg).ok()?;
            // Tilted, a rectangle w by h holds every one of a by b for which a + b sin ≤ w and b + a sin ≤ h.
            let (w, h, rest) = (found.width, found.height, 1.0 - sine * sine);
            let (across, along) = ((w - h * sine) / rest, (h - w * sine) / rest);
            (across > 0.0 && along > 0.0).then_some((across, along))
        });
        sides.map(|(across, along)| match way {
            Way::Across => across,
            Way::Along => along,
        })
    }

    /// How much a rectangle that a piece of the part holds has this way, if it has so much the other way.
    pub(crate) fn wide(&mut self, index: usize, way: Way, other: f64) -> Option<f64> {
        let (part, sine) = self.part(index)?;
        let sought = || {
            let square_deg = match way {
                Way::Across => part.grain_deg + 90.0,
                Way::Along => part.grain_deg,
            };
            let of = |other: f64| {
                let found =
                    tallest_rectangle(&part.outline, other, &[], square_deg % 360.0).ok()?;
                Some((found.height, found.width))
            };
            let (untilted, _) = of(other)?;
            if sine == 0.0 {
                return Some(untilted);
            }
            // As above: of a rectangle as much higher as the tilt takes.
            let (this, that) = of(other + untilted * sine)?;
            let left = (this - other * sine).min((that - other) / sine);
            (left > 0.0).then_some(left)
        };
        *self
            .wide
            .entry((index, way, other.to_bits()))
            .or_insert_with(sought)
    }
}
