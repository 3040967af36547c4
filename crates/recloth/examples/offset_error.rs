//! Prints how far cut lines lie from the true parallels, and of how many arcs and points they are, against the tolerance:
//! `cargo run -p recloth --example offset_error`.
#![allow(clippy::print_stdout)]

#[path = "../tests/offsets/mod.rs"]
mod offsets;

fn main() {
    println!(
        "{:14} {:>12} {:>14} {:>16} {:>8}",
        "curve", "tolerance", "worst error", "lines and arcs", "points"
    );
    for (name, curve) in offsets::curves() {
        for tolerance in [1.0, 0.1, 0.01, 0.001] {
            let found = offsets::found(curve, tolerance);
            println!(
                "{name:14} {tolerance:>12} {:>14.7} {:>16} {:>8}",
                found.worst, found.segments, found.points
            );
        }
    }
}
