//! A sleeve cap as a roof of straight lines, and the same length curved.

use core::f64::consts::PI;

use recloth::Error;
use recloth::sleeve::cap_width_bound;
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{arc, dimension, polar, words};

const SCALE: f64 = 3.2;
const CAP: f64 = 418.0;
const HEIGHT: f64 = 130.0;
/// What each of a half cap's two arcs turns (degrees).
const SWEEP: f64 = 60.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    let roof = cap_width_bound(CAP, HEIGHT)?;
    let (left, top, right) = (at(-roof / 2.0, 0.0), at(0.0, HEIGHT), at(roof / 2.0, 0.0));

    // Half a cap as two equal arcs, hollow at the underarm and round at the top. A quarter of the cap in one arc has a
    // radius of its length over its sweep; the two chords lie on one line from the underarm to the top.
    let turn = SWEEP * PI / 180.0;
    let radius = CAP / 4.0 / turn;
    let chord = 4.0 * radius * libm::sin(turn / 2.0);
    let half = libm::sqrt(chord * chord - HEIGHT * HEIGHT);
    let slope = libm::atan2(HEIGHT, half).to_degrees();
    let across = slope + 90.0;
    let mut cap = BezPath::new();
    let middle = at(-half / 2.0, HEIGHT / 2.0);
    let reach = radius / SCALE * libm::cos(turn / 2.0);
    let quarter = chord / 4.0 / SCALE;
    let hollow = polar(polar(middle, -quarter, slope), reach, across);
    let round = polar(polar(middle, quarter, slope), -reach, across);
    let (small, spread) = (radius / SCALE, SWEEP / 2.0);
    arc(
        &mut cap,
        hollow,
        small,
        across + 180.0 - spread,
        across + 180.0 + spread,
    );
    arc(&mut cap, round, small, across + spread, across - spread);
    // The front half is the back half seen in a mirror; a real cap's halves differ.
    let down = 180.0 - across;
    let mirrored = |point: Point| Point::new(-point.x, point.y);
    arc(
        &mut cap,
        mirrored(round),
        small,
        down + spread,
        down - spread,
    );
    arc(
        &mut cap,
        mirrored(hollow),
        small,
        down - 180.0 - spread,
        down - 180.0 + spread,
    );
    cap.close_path();

    let mut drawing = Drawing::new("A sleeve cap, straight and curved");
    drawing.area(Tone::Cloth, cap.clone()).line(Pen::Seam, cap);
    drawing.polyline(Pen::Construction, &[left, top, right]);
    dimension(&mut drawing, at(0.0, 0.0), top, "height", 9.0);
    dimension(
        &mut drawing,
        at(-half, -14.0),
        at(half, -14.0),
        &format!("{:.0}", 2.0 * half),
        -4.0,
    );
    dimension(
        &mut drawing,
        at(-roof / 2.0, -42.0),
        at(roof / 2.0, -42.0),
        &format!("at most {roof:.0}"),
        -4.0,
    );
    words(&mut drawing, "half of 418", at(115.0, 88.0));
    Ok(drawing)
}
