//! What the vectors cannot carry: many panels, and what a failed call leaves behind.

extern crate std;
use core::f64::consts::TAU;
use std::{vec, vec::Vec};

use super::*;
use crate::ErrorKind;

/// Corners on rays around a middle, numbered counter-clockwise: never crossing.
fn star(count: usize, seed: &mut u64) -> Vec<Point> {
    (0..count)
        .map(|index| {
            *seed = seed
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            let reach = 200.0 + (*seed >> 40) as f64 / (1_u64 << 24) as f64 * 300.0;
            let (sin, cos) = libm::sincos(TAU * index as f64 / count as f64);
            (reach * cos, reach * sin)
        })
        .collect()
}

/// The panel as it is measured: every further corner from corners 0 and the one before it.
struct Tape {
    base: f64,
    starts: Vec<u32>,
    ends: Vec<u32>,
    from_start: Vec<f64>,
    from_end: Vec<f64>,
    sides: Vec<u32>,
}

fn measure(ring: &[Point]) -> Tape {
    let further = 2..ring.len();
    let turn = |index: usize| {
        let (a, b, c) = (ring[0], ring[index - 1], ring[index]);
        (b.0 - a.0) * (c.1 - a.1) - (b.1 - a.1) * (c.0 - a.0)
    };
    Tape {
        base: distance(ring[0], ring[1]),
        starts: vec![0; ring.len() - 2],
        ends: further.clone().map(|index| index as u32 - 1).collect(),
        from_start: further
            .clone()
            .map(|index| distance(ring[0], ring[index]))
            .collect(),
        from_end: further
            .clone()
            .map(|index| distance(ring[index - 1], ring[index]))
            .collect(),
        sides: further.map(|index| u32::from(turn(index) < 0.0)).collect(),
    }
}

#[test]
fn a_panel_comes_back_from_its_readings() {
    let mut seed = 4;
    for count in (3..=64).chain(3..=64) {
        let ring = star(count, &mut seed);
        let tape = measure(&ring);
        // Every distance between corners is a spare reading, as far as there is room.
        let pairs: Vec<(usize, usize)> = (0..count)
            .flat_map(|a| (a + 1..count).map(move |b| (a, b)))
            .take(200)
            .collect();
        let spare_starts: Vec<u32> = pairs.iter().map(|pair| pair.0 as u32).collect();
        let spare_ends: Vec<u32> = pairs.iter().map(|pair| pair.1 as u32).collect();
        let readings: Vec<f64> = pairs
            .iter()
            .map(|pair| distance(ring[pair.0], ring[pair.1]))
            .collect();
        let (mut along, mut across) = (vec![0.0; count], vec![0.0; count]);
        let mut misfits = vec![f64::NAN; pairs.len()];
        let panel = panel_by_triangles(
            tape.base,
            &tape.starts,
            &tape.ends,
            &tape.from_start,
            &tape.from_end,
            &tape.sides,
            &spare_starts,
            &spare_ends,
            &readings,
            &mut along,
            &mut across,
            &mut misfits,
        )
        .unwrap();
        // A star's area from its middle: half the product of neighbouring rays and the sine between them.
        let area: f64 = (0..count)
            .map(|index| {
                let (a, b) = (ring[index], ring[(index + 1) % count]);
                let (a, b) = (libm::hypot(a.0, a.1), libm::hypot(b.0, b.1));
                a * b * libm::sin(TAU / count as f64) / 2.0
            })
            .sum();
        assert!(
            (panel.area - area).abs() < 1e-6 * area,
            "{count}: {} and {area}",
            panel.area
        );
        assert!(
            panel.largest_misfit < 1e-6,
            "{count}: {}",
            panel.largest_misfit
        );
        assert!(
            misfits
                .iter()
                .all(|misfit| misfit.abs() <= panel.largest_misfit)
        );
        assert_eq!(panel.doubts & SPARE_MISFIT, 0);
        assert_eq!(
            (along[0], across[0], along[1], across[1]),
            (0.0, 0.0, tape.base, 0.0)
        );
    }
}

#[test]
fn a_corner_on_the_wrong_side_is_named_where_the_way_round_crosses() {
    let square = [(0.0, 0.0), (400.0, 0.0), (400.0, 300.0), (0.0, 300.0)];
    let mut tape = measure(&square);
    tape.sides[1] = 1;
    let error = short_call(&tape, &mut [0.0; 4], &mut [0.0; 4]).unwrap_err();
    // Folded over the diagonal the last corner lies outside the base: its side crosses it.
    assert_eq!(
        (error.kind(), error.argument(), error.at()),
        (ErrorKind::NoSolution, "sides", Some(1))
    );
}

fn short_call(
    tape: &Tape,
    along: &mut [f64],
    across: &mut [f64],
) -> Result<PanelByTriangles, Error> {
    panel_by_triangles(
        tape.base,
        &tape.starts,
        &tape.ends,
        &tape.from_start,
        &tape.from_end,
        &tape.sides,
        &[],
        &[],
        &[],
        along,
        across,
        &mut [],
    )
}

#[test]
fn a_failed_call_writes_nothing() {
    let square = [(0.0, 0.0), (400.0, 0.0), (400.0, 300.0), (0.0, 300.0)];
    let tape = measure(&square);
    let (mut along, mut across) = ([-1.0; 4], [-1.0; 4]);
    let error = short_call(&tape, &mut along[..3], &mut across).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument(), error.min()),
        (ErrorKind::Room, "along", 4.0)
    );
    let mut wrong = measure(&square);
    // The last corner, after the others are known.
    wrong.from_end[1] = 10_000.0;
    let error = short_call(&wrong, &mut along, &mut across).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("from_end", Some(1)));
    assert_eq!((along, across), ([-1.0; 4], [-1.0; 4]));
    // More room than needed is no error, and what is beyond is left alone.
    let mut along = [-1.0; 5];
    assert_eq!(
        short_call(&tape, &mut along, &mut across).unwrap().area,
        120_000.0
    );
    assert_eq!(along[4], -1.0);
}

#[test]
fn errors_of_the_readings_move_the_point_no_further_than_stated() {
    for (base, from_start, from_end) in [
        (500.0, 300.0, 400.0),
        (90.0, 200.0, 250.0),
        (300.0, 900.0, 1000.0),
    ] {
        let corner = trilaterate(base, from_start, from_end).unwrap();
        let slip = 1e-4;
        let mut most = (0.0_f64, 0.0_f64);
        for (a, b) in [(slip, slip), (slip, -slip), (-slip, slip), (-slip, -slip)] {
            let moved = trilaterate(base, from_start + a, from_end + b).unwrap();
            most.0 = most.0.max((moved.along - corner.along).abs() / slip);
            most.1 = most.1.max((moved.across - corner.across).abs() / slip);
        }
        assert!(
            (most.0 - corner.along_per_mm).abs() < 1e-3,
            "{most:?} {corner:?}"
        );
        assert!(
            (most.1 - corner.across_per_mm).abs() < 1e-3,
            "{most:?} {corner:?}"
        );
    }
}
