//! Closed rings of lines and arcs.

use alloc::vec::Vec;
use kurbo::{Point, Rect};

use super::cross::{boxes_meet, crossings};
use super::segment::Segment;
use super::vector::{cross, dot, length};

/// Signed area of a ring (mm²), positive counter-clockwise.
pub(crate) fn area<'a>(ring: impl IntoIterator<Item = &'a Segment>) -> f64 {
    ring.into_iter().map(Segment::area_share).sum()
}

/// On which side of the endless chord a point lies: positive left. A point on it counts as a hair to the right of
/// itself on the page, or a hair above, so that `winding` and `in_cap` agree.
fn chord_side(segment: &Segment, point: Point) -> f64 {
    let chord = segment.end - segment.start;
    let side = cross(chord, point - segment.start);
    if side != 0.0 {
        side
    } else if chord.y != 0.0 {
        -chord.y
    } else {
        chord.x
    }
}

/// How often a closed ring goes round a point, counter-clockwise positive.
pub(crate) fn winding<'a>(ring: impl IntoIterator<Item = &'a Segment>, point: Point) -> i32 {
    ring.into_iter().map(|segment| passes(segment, point)).sum()
}

/// As `winding`, with the box of each segment at hand, which spares most of the work.
pub(crate) fn winding_boxed(ring: &[(Segment, Rect)], point: Point) -> i32 {
    let level = |b: &Rect| b.y0 <= point.y && point.y <= b.y1 && point.x <= b.x1;
    ring.iter()
        .filter(|(_, bounds)| level(bounds))
        .map(|(segment, _)| passes(segment, point))
        .sum()
}

/// By how much one segment of a ring winds round a point: the chord as in a polygon, seen along a ray to the right,
/// and the cap between chord and arc.
fn passes(segment: &Segment, point: Point) -> i32 {
    let side = chord_side(segment, point);
    let (starts, ends) = (segment.start.y <= point.y, segment.end.y <= point.y);
    let chord = if starts && !ends && side > 0.0 {
        1
    } else if !starts && ends && side < 0.0 {
        -1
    } else {
        0
    };
    chord + cap(segment, point, side)
}

/// 1 or -1 where the point lies between an arc and its chord, by the arc's turn; else 0.
fn cap(segment: &Segment, point: Point, side: f64) -> i32 {
    // A counter-clockwise arc lies to the right of its chord.
    if segment.bulge > 0.0 && side < 0.0 && segment.side(point).0 < 0.0 {
        1
    } else if segment.bulge < 0.0 && side > 0.0 && segment.side(point).0 > 0.0 {
        -1
    } else {
        0
    }
}

/// Whether two rings cross or touch.
pub(crate) fn meet(a: &[Segment], b: &[Segment]) -> bool {
    let boxes: Vec<Rect> = b.iter().map(Segment::bounds).collect();
    a.iter().any(|one| {
        let bounds = one.bounds();
        let near = b
            .iter()
            .zip(&boxes)
            .filter(|(_, other)| boxes_meet(&bounds, other));
        near.map(|(other, _)| other).any(|other| {
            let mut met = false;
            crossings(one, other, |_, _, _| met = true);
            met
        })
    })
}

/// Index of a segment at which the ring crosses or touches itself, if it does.
pub(crate) fn self_crossing(ring: &[Segment]) -> Option<usize> {
    const APART: f64 = 1e-6;
    let boxes: Vec<Rect> = ring.iter().map(Segment::bounds).collect();
    let count = ring.len();
    for i in 0..count {
        for j in i + 1..count {
            if !boxes_meet(&boxes[i], &boxes[j]) {
                continue;
            }
            let mut crossed = false;
            crossings(&ring[i], &ring[j], |point, _, _| {
                // Neighbours may share the point where they meet.
                let shared = (j == i + 1 && length(point - ring[i].end) <= APART)
                    || (i == 0 && j == count - 1 && length(point - ring[i].start) <= APART);
                crossed |= !shared;
            });
            // Neighbours that fold back on each other share a stretch shorter than it takes to notice by its ends.
            if j == i + 1 || (i == 0 && j == count - 1) {
                let (first, second) = if j == i + 1 { (i, j) } else { (j, i) };
                let (a, b) = (ring[first].end_tangent(), ring[second].start_tangent());
                let kinked = cross(a, b).abs() < 1e-12 && dot(a, b) < 0.0;
                let close = (ring[first].curvature() + ring[second].curvature()).abs() < 1e-12;
                crossed |= kinked && close;
            }
            if crossed {
                return Some(j);
            }
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A lens: two arcs over the same chord.
    fn lens() -> [Segment; 2] {
        [
            Segment::arc((0.0, 0.0), (10.0, 0.0), 0.5),
            Segment::arc((10.0, 0.0), (0.0, 0.0), 0.5),
        ]
    }

    #[test]
    fn winding_counts_arcs_and_chords_once() {
        let ring = lens();
        // Points on the common chord are inside too.
        for point in [(5.0, 0.0), (5.0, 2.4), (5.0, -2.4), (0.1, 0.0), (9.9, 0.0)] {
            assert_eq!(winding(&ring, point.into()), 1, "{point:?}");
        }
        for point in [
            (5.0, 2.6),
            (5.0, -2.6),
            (-0.1, 0.0),
            (10.1, 0.0),
            (0.2, 2.0),
        ] {
            assert_eq!(winding(&ring, point.into()), 0, "{point:?}");
        }
        let back: Vec<Segment> = ring.iter().rev().map(Segment::reversed).collect();
        assert_eq!(winding(&back, Point::new(5.0, 0.0)), -1);
    }

    #[test]
    fn winding_of_a_ring_with_an_upright_and_a_slanting_chord() {
        // A half disc on an upright chord: points on the chord's line.
        let ring = [
            Segment::arc((0.0, 10.0), (0.0, -10.0), 1.0),
            Segment::line((0.0, -10.0), (30.0, -10.0)),
            Segment::line((30.0, -10.0), (30.0, 10.0)),
            Segment::line((30.0, 10.0), (0.0, 10.0)),
        ];
        for y in [-9.0, 0.0, 9.0] {
            assert_eq!(winding(&ring, Point::new(0.0, y)), 1);
        }
        assert_eq!(winding(&ring, Point::new(-9.9, 0.0)), 1);
        assert_eq!(winding(&ring, Point::new(-9.9, 5.0)), 0);
    }

    #[test]
    fn self_crossings_are_found() {
        assert_eq!(self_crossing(&lens()), None);
        let bow = |x: f64| {
            [
                Segment::line((0.0, 0.0), (10.0, 10.0)),
                Segment::line((10.0, 10.0), (x, 0.0)),
                Segment::line((x, 0.0), (0.0, 10.0)),
                Segment::line((0.0, 10.0), (0.0, 0.0)),
            ]
        };
        assert_eq!(self_crossing(&bow(10.0)), Some(2));
        let spike = [
            Segment::line((0.0, 0.0), (10.0, 0.0)),
            Segment::line((10.0, 0.0), (20.0, 0.0)),
            Segment::line((20.0, 0.0), (10.0, 0.0)),
            Segment::line((10.0, 0.0), (5.0, 8.0)),
            Segment::line((5.0, 8.0), (0.0, 0.0)),
        ];
        assert!(self_crossing(&spike).is_some());
    }
}
