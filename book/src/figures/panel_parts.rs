//! A panel with all that ails it, the two parts that are left, and the largest rectangle in them.

use recloth::Error;
use recloth::panel::{Flaw, Panel};
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{ring, words};

const SCALE: f64 = 7.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let hole = [(150.0, 250.0), (200.0, 250.0), (175.0, 290.0)].map(Point::from);
    let panel = Panel::new(
        "front",
        [(0.0, 0.0), (480.0, 0.0), (430.0, 900.0), (40.0, 900.0)],
    )?
    .with_holes(vec![hole.to_vec()])?
    .with_flaws(vec![
        Flaw::new([(300.0, 460.0), (340.0, 460.0), (320.0, 520.0)], 10.0).called("scorch"),
        Flaw::new([(10.0, 640.0), (460.0, 660.0)], 5.0).called("tear"),
    ])?;
    let parts = panel.usable(&[40.0, 15.0, 10.0, 15.0], 0.1)?;
    let small = |point: &Point| Point::new(point.x / SCALE, point.y / SCALE);
    let at = |x: f64, y: f64| Point::new(x / SCALE, y / SCALE);
    let path =
        |points: &[Point]| -> BezPath { ring(&points.iter().map(small).collect::<Vec<_>>()) };

    let mut drawing = Drawing::new("A panel, what is left of it, and the largest rectangle");
    let outline = path(panel.outline());
    let mut lost = outline.clone();
    for part in &parts {
        let mut kept = path(part.outline());
        for hole in part.holes() {
            kept.extend(path(hole));
        }
        lost.extend(kept.clone());
        drawing.area(Tone::Cloth, kept);
    }
    lost.extend(path(&hole));
    drawing.hatch(&lost, 1.6);
    let rectangle = path(&parts[0].largest_rectangle()?.corners());
    drawing
        .area(Tone::Piece, rectangle.clone())
        .line(Pen::Cut, rectangle);
    for part in &parts {
        drawing.line(Pen::Flaw, path(part.outline()));
        for hole in part.holes() {
            drawing.line(Pen::Flaw, path(hole));
        }
    }
    drawing
        .line(Pen::Panel, outline)
        .line(Pen::Panel, path(&hole));
    for flaw in panel.flaws() {
        drawing.line(Pen::Mark, path(&flaw.outline));
    }
    for (text, x, y) in [
        ("0", -18.0, -14.0),
        ("1", 498.0, -14.0),
        ("2", 448.0, 914.0),
        ("3", 22.0, 914.0),
        ("hole", 108.0, 268.0),
        ("scorch", 395.0, 485.0),
        ("tear", 250.0, 680.0),
        ("front", 100.0, 120.0),
        ("front, part 2", 240.0, 790.0),
    ] {
        words(&mut drawing, text, at(x, y));
    }
    Ok(drawing)
}
