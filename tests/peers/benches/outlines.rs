//! What cut lines cost beside those of a general library, and what a walk and an opened dart cost: prints a name and
//! nanoseconds a line, then the numbers of points and the piece's outline as JSON, for `tests/bench/outlines.py`.
#![allow(clippy::print_stdout, reason = "a bench prints")]

use std::{hint::black_box, time::Instant};

use cavalier_contours::polyline::{PlineSource, PlineSourceMut, Polyline};
use recloth::outline::{Place, Way};
use recloth_peers::{ALLOWANCE, has_dart, skirt_front, waistcoat_front, waistcoat_front_of_arcs};

const TOLERANCE: f64 = 0.01;
const TIMES: usize = 31;

/// The least mean time of some runs (ns): what comes on top of it is other work of the machine.
fn time<T>(calls: u32, call: impl Fn() -> T) -> f64 {
    let run = |_| {
        let start = Instant::now();
        for _ in 0..calls {
            black_box(call());
        }
        start.elapsed().as_nanos() as f64 / f64::from(calls)
    };
    (0..TIMES).map(run).fold(f64::INFINITY, f64::min)
}

fn main() {
    let piece = waistcoat_front().expect("a piece");
    println!(
        "cut_line {}",
        time(20, || piece.cut_line(TOLERANCE).expect("a cut line"))
    );

    let arcs = waistcoat_front_of_arcs().expect("a piece");
    println!(
        "cut_line_of_arcs {}",
        time(200, || arcs.cut_line(TOLERANCE).expect("a cut line"))
    );
    let mut line = Polyline::new_closed();
    for (_, segment) in arcs.segments(TOLERANCE) {
        line.add(segment.start.x, segment.start.y, segment.bulge);
    }
    println!(
        "cavalier_contours {}",
        time(200, || line.parallel_offset(-ALLOWANCE))
    );

    let skirt = skirt_front().expect("a piece");
    println!(
        "walk {}",
        time(2000, || skirt
            .walk(&[1], &skirt, &[3], Way::Against)
            .expect("a walk"))
    );
    let [at, opposite] = [2, 0].map(|edge| Place {
        edge,
        distance: 120.0,
    });
    let open = || {
        skirt
            .open_dart("waist", (130.0, 480.0), at, 24.0, opposite)
            .expect("a dart")
    };
    assert!(has_dart(&open(), "waist"));
    println!("open_dart {}", time(500, open));

    let cut = piece.cut_line(TOLERANCE).expect("a cut line");
    println!("lines_and_arcs {}", cut.segments().len());
    println!("points {}", cut.flatten(TOLERANCE).len());
    let mut outline = Vec::new();
    // The outline itself within the tolerance: half of it for arcs in place of cubics, half for chords.
    for (_, segment) in piece.segments(TOLERANCE / 2.0) {
        let rise = (segment.bulge.abs()
            * libm::hypot(
                segment.end.x - segment.start.x,
                segment.end.y - segment.start.y,
            ))
            / 2.0;
        let parts = libm::sqrt(rise / (TOLERANCE / 2.0)).ceil().max(1.0);
        let length = segment.length();
        outline
            .extend((0..parts as u32).map(|part| segment.at(length * f64::from(part) / parts).0));
    }
    let points: Vec<String> = outline
        .iter()
        .map(|p| format!("[{}, {}]", p.x, p.y))
        .collect();
    println!("outline [{}]", points.join(", "));
}
