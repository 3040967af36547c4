//! What a call costs: `cargo bench --bench calls` prints a name and nanoseconds a line, checks included.
#![allow(clippy::print_stdout, reason = "a bench prints")]

use std::{hint::black_box, time::Instant};

use recloth::*;

const CALLS: u32 = 20_000;
const TIMES: usize = 31;

/// The least of some runs: what comes on top of it is other work of the machine.
fn time<G: Copy, T>(name: &str, given: G, call: impl Fn(G) -> Result<T, Error>) {
    assert!(call(given).is_ok(), "{name} gives no answer");
    let least = (0..TIMES)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..CALLS {
                // The arguments are hidden, so that no check can be left out.
                let _ = black_box(call(black_box(given)));
            }
            start.elapsed().as_nanos() as f64 / f64::from(CALLS)
        })
        .fold(f64::INFINITY, f64::min);
    println!("{name} {least:.1}");
}

fn main() {
    time(
        "circle_skirt",
        (710.0, 600.0, 0.5),
        |(waist, length, part)| skirt::circle_skirt(waist, length, part),
    );
    time(
        "circle_skirt_fraction",
        (710.0, 600.0, 1400.0),
        |(waist, length, width)| skirt::circle_skirt_fraction(waist, length, width, 2),
    );
    time("dart", (25.0, 110.0), |(intake, length)| {
        dart::dart(intake, length)
    });
    time(
        "frustum",
        (300.0, 120.0, 180.0),
        |(lower, upper, height)| arc::frustum(lower, upper, height),
    );
    time("arc_from_rise", (350.0, 20.0), |(chord, rise)| {
        arc::arc_from_rise(chord, rise)
    });
    time("godet", (250.0, 200.0, 4), |(length, hem, count)| {
        gore::godet(length, hem, count)
    });
    time(
        "trilaterate",
        (800.0, 600.0, 500.0),
        |(base, start, end)| panel::trilaterate(base, start, end),
    );
    time("even_spacing", (40.0, 600.0, 7), |(first, last, count)| {
        closure::even_spacing(first, last, count)
    });
    time(
        "cloth_mass",
        (2000.0, 1400.0, 150.0),
        |(length, width, gsm)| quantity::cloth_mass(length, width, gsm),
    );
    time(
        "lab_from_srgb",
        (120.0, 90.0, 60.0),
        |(red, green, blue)| colour::lab_from_srgb(red, green, blue),
    );
    // The first pair of Sharma, Wu and Dalal, Color Research & Application 30 (2005), table 1.
    time(
        "ciede2000",
        [50.0, 2.6772, -79.7751, 50.0, 0.0, -82.7485],
        |[l, a, b, m, c, d]| colour::ciede2000(l, a, b, m, c, d),
    );
    time("parse_length", "31 3/8 in", tape::parse_length);
    time("format_length", 797.0, |length| {
        tape::format_length(length, tape::Style::Cm)
    });
}
