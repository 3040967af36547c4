//! A lay as a notebook shows it.

use recloth_lay::{Faces, Hand, Lay, Panel, Part, placed};
use recloth_sheet::{LayPanel, LayPiece, lay_drawing, svg};

/// Width and height that a lay is drawn in (mm): the text of a sheet of A4 or Letter.
pub(super) const SHOWN: (f64, f64) = (180.0, 150.0);

/// Panels, each with a note, and the pieces on them as SVG, to one scale.
pub(super) fn drawn(
    parts: &[Part],
    panels: &[(&Panel, String)],
    lay: &Lay,
    (width, height): (f64, f64),
) -> Result<String, recloth::Error> {
    let mut shown: Vec<LayPanel> = panels
        .iter()
        .enumerate()
        .map(|(index, (panel, note))| LayPanel {
            note: note.clone(),
            fold: (lay.folds.iter())
                .find(|fold| fold.panel == index)
                .map(|fold| [fold.from, fold.to]),
            ..LayPanel::from(*panel)
        })
        .collect();
    for placement in &lay.placements {
        let part = &parts[placement.part];
        let mirrored = match placement.hand {
            Hand::AsDrawn => "",
            Hand::Mirrored => ", mirrored",
        };
        // On cloth whose sides look alike a cutter need not care.
        let sided = panels[placement.panel].0.faces() == Faces::One;
        let down = if sided && placement.face_down() {
            ", face down"
        } else {
            ""
        };
        shown[placement.panel].pieces.push(LayPiece {
            label: format!("{}{mirrored}{down}", part.name),
            outline: placed(&part.outline, placement),
            grain_deg: None,
        });
    }
    svg(&lay_drawing("Lay", &shown, width, height)?)
}
