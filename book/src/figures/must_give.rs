//! Pieces that do not fit, with what proves it; and the same after the least change.

use recloth::{Error, ErrorKind};
use recloth_lay::{
    Answer, Bound, Change, Give, LeastChange, Needed, Options, Panel, Part, fit, least_change,
    placed,
};
use recloth_sheet::kurbo::{Point, Vec2};
use recloth_sheet::{Drawing, LayPanel, LayPiece, Pen, Tone, lay_drawing};

use super::draw::{dimension, ring, words};

const SCALE: f64 = 9.0;

/// The panels and parts of the page.
fn given() -> Result<(Vec<Panel>, Vec<Part>), Error> {
    let rectangle = |w: f64, h: f64| [(0.0, 0.0), (w, 0.0), (w, h), (0.0, h)];
    let panels = vec![
        Panel::new("back", rectangle(420.0, 700.0))?,
        Panel::new("sleeve", rectangle(230.0, 420.0))?,
        Panel::new("strip", rectangle(60.0, 260.0))?,
    ];
    let skirt = [(0.0, 0.0), (400.0, 0.0), (330.0, 712.3), (70.0, 712.3)];
    let parts = vec![
        Part::new("skirt back", skirt),
        Part::new("band", rectangle(60.0, 640.0)),
        Part {
            as_drawn: 2,
            ..Part::new("pocket", rectangle(150.0, 160.0))
        },
    ];
    Ok((panels, parts))
}

/// What is no lay is a failure of this build, and the page's own test says more.
fn none() -> Error {
    Error::new(ErrorKind::Invalid, "lay", f64::NAN, f64::NAN, f64::NAN)
}

/// The skirt back on each panel, and what each is short of.
pub(super) fn refused() -> Result<Drawing, Error> {
    let (panels, parts) = given()?;
    let found = fit(&parts, &panels, &Options::default()).map_err(|error| error.error())?;
    let mut drawing = Drawing::new("A skirt back that is longer than any panel");
    let mut x = 0.0;
    for row in found.alone.iter().filter(|row| row.part == 0) {
        let Answer::Cannot(bound) = row.answer else {
            return Err(none());
        };
        let panel = &panels[row.panel];
        let size = panel.bounds().size();
        let (wide, high) = (size.width / SCALE, size.height / SCALE);
        let place = |p: &Point| Point::new(x + p.x / SCALE, p.y / SCALE);
        let cloth = ring(&panel.outline().iter().map(place).collect::<Vec<_>>());
        // The piece with its foot in the middle of the panel's.
        let aside = Vec2::new((wide - 400.0 / SCALE) / 2.0, 0.0);
        let piece: Vec<Point> = parts[0].outline.iter().map(|p| place(p) + aside).collect();
        drawing
            .area(Tone::Cloth, cloth.clone())
            .line(Pen::Panel, cloth)
            .line(Pen::Cut, ring(&piece));
        // The piece on the left or below, the panel on the right or above.
        let (needed, there) = match bound {
            Bound::Along { needed, there } => {
                let (left, right) = (x - 4.0, x + wide + 4.0);
                let ends = |x: f64, y: f64| (Point::new(x, 0.0), Point::new(x, y));
                let sums = (needed / SCALE, high);
                ((ends(left, sums.0), needed), (ends(right, sums.1), there))
            }
            Bound::Across { needed, there } => {
                let (low, top) = (Point::new(piece[0].x, -3.0), Point::new(x, high + 3.0));
                let along = |from: Point, long: f64| (from, from + Vec2::new(long, 0.0));
                let sums = (needed / SCALE, wide);
                ((along(low, sums.0), needed), (along(top, sums.1), there))
            }
            _ => return Err(none()),
        };
        let vertical = matches!(bound, Bound::Along { .. });
        let ((from, to), length) = needed;
        let aside = if vertical { 6.0 } else { -4.5 };
        dimension(&mut drawing, from, to, &short(length), aside);
        let ((from, to), length) = there;
        let aside = if vertical { -5.0 } else { 2.0 };
        dimension(&mut drawing, from, to, &short(length), aside);
        let middle = x + wide / 2.0;
        words(&mut drawing, panel.name(), Point::new(middle, -13.0));
        let way = if vertical { "along" } else { "across" };
        let said = format!("short by {} {way}", short(length_short(&bound)?));
        words(&mut drawing, &said, Point::new(middle, -18.0));
        x += match vertical {
            true => wide + 40.0,
            false => (400.0 / SCALE + wide) / 2.0 + 28.0,
        };
    }
    Ok(drawing)
}

/// Millimetres with a tenth only where there is one.
fn short(length: f64) -> String {
    let text = format!("{length:.1}");
    text.trim_end_matches(".0").to_owned()
}

fn length_short(bound: &Bound) -> Result<f64, Error> {
    bound.short_by().ok_or_else(none)
}

/// The lay after the least change.
pub(super) fn changed() -> Result<Drawing, Error> {
    let (panels, parts) = given()?;
    let changes = [
        Change {
            part: 0,
            kind: Give::Shorter {
                toward_deg: 90.0,
                beyond: 600.0,
                most: 30.0,
            },
        },
        Change {
            part: 1,
            kind: Give::Join {
                across_deg: 90.0,
                from: 80.0,
                to: 560.0,
                allowance: 10.0,
            },
        },
        Change {
            part: 2,
            kind: Give::Fewer { by: 1 },
        },
    ];
    let found = least_change(&parts, &panels, &changes, &Options::default());
    let LeastChange { answer, .. } = found.map_err(|error| error.error())?;
    let Needed::Changed { parts, fit, .. } = answer else {
        return Err(none());
    };
    let laid: Vec<LayPanel> = panels
        .iter()
        .enumerate()
        .map(|(index, panel)| {
            let here = fit.lay.placements.iter().filter(|at| at.panel == index);
            let pieces = here.map(|at| LayPiece {
                label: parts[at.part].name.clone(),
                outline: placed(&parts[at.part].outline, at),
                grain_deg: Some(90.0),
            });
            LayPanel {
                pieces: pieces.collect(),
                ..LayPanel::from(panel)
            }
        })
        .collect();
    lay_drawing("The same pieces after the least change", &laid, 160.0, 80.0)
}
