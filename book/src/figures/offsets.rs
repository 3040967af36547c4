//! A panel measured at stations along a thread, what is lost of it, and the largest rectangle left.

use recloth::Error;
use recloth::offsets::panel_by_offsets;
use recloth::panel::{largest_rectangle, usable_panel};
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{dimension, ring, words};

const SCALE: f64 = 5.4;
const STATIONS: [f64; 4] = [0.0, 200.0, 400.0, 600.0];
const LEFT: f64 = 150.0;
const RIGHT: [f64; 4] = [320.0, 290.0, 260.0, 230.0];
/// What was read first at the third station.
const MISREAD: f64 = 270.0;
const LOSSES: [f64; 4] = [25.0, 10.0, 10.0, 10.0];
const SCORCH: [(f64, f64); 4] = [(60.0, 380.0), (100.0, 380.0), (100.0, 430.0), (60.0, 430.0)];
const MARGIN: f64 = 6.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let (mut left_bow, mut right_bow) = ([0.0; 4], [0.0; 4]);
    let first = [RIGHT[0], RIGHT[1], MISREAD, RIGHT[3]];
    panel_by_offsets(&STATIONS, &[LEFT; 4], &first, &mut left_bow, &mut right_bow)?;
    let outline = [
        (-LEFT, 0.0),
        (RIGHT[0], 0.0),
        (RIGHT[3], 600.0),
        (-LEFT, 600.0),
    ];
    let outline = outline.map(Point::from);
    let scorch = SCORCH.map(Point::from);
    let usable = usable_panel(&outline, &LOSSES, &[scorch.to_vec()], MARGIN, 0.1)?;
    let part = &usable.parts[0];
    let largest = largest_rectangle(&part.outline, &part.holes, 90.0)?;

    let small = |point: &Point| Point::new(point.x / SCALE, point.y / SCALE);
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    let path =
        |points: &[Point]| -> BezPath { ring(&points.iter().map(small).collect::<Vec<_>>()) };
    let mut drawing = Drawing::new("A panel by offsets from a thread");
    // Lost is what lies in the panel and not in the part that is left: hatching goes by the even-odd rule.
    let panel = path(&outline);
    let mut left_over = path(&part.outline);
    for hole in &part.holes {
        left_over.extend(path(hole));
    }
    let mut lost = panel.clone();
    lost.extend(left_over.clone());
    drawing.hatch(&lost, 1.6).line(Pen::Flaw, left_over);
    drawing
        .area(Tone::Piece, path(&largest.corners()))
        .line(Pen::Cut, path(&largest.corners()));
    drawing.line(Pen::Panel, panel);

    // The thread and the offsets.
    drawing.segment(Pen::Grain, at(0.0, -35.0), at(0.0, 640.0));
    words(&mut drawing, "thread", at(0.0, 660.0));
    for (station, right) in STATIONS.into_iter().zip(first) {
        drawing.segment(Pen::Construction, at(-LEFT, station), at(right, station));
        words(
            &mut drawing,
            &format!("{station}"),
            at(-LEFT - 26.0, station),
        );
        words(&mut drawing, &format!("{right}"), at(right + 28.0, station));
    }
    let slip = at(MISREAD, STATIONS[2]);
    drawing.line(Pen::Mark, super::draw::circle(slip, 0.9));
    words(
        &mut drawing,
        &format!("{} beyond", right_bow[2].round()),
        at(MISREAD + 46.0, STATIONS[2] - 28.0),
    );
    let corner = largest.corner;
    dimension(
        &mut drawing,
        at(corner.x, corner.y + 50.0),
        at(corner.x + largest.width, corner.y + 50.0),
        &format!("{:.0}", largest.width),
        3.6,
    );
    dimension(
        &mut drawing,
        at(corner.x + 50.0, corner.y),
        at(corner.x + 50.0, corner.y + largest.height),
        "",
        0.0,
    );
    words(
        &mut drawing,
        &format!("{:.0}", largest.height),
        at(corner.x + 76.0, 120.0),
    );
    words(&mut drawing, "scorch", at(142.0, 405.0));
    Ok(drawing)
}
