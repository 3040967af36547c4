//! Folded panels: what is cut is cut through both layers.

use super::ring::Ring;
use super::{Complaint, Laid};
use crate::part::{check_line, mirrored};
use crate::{Lay, Panel, placed};

/// Every panel with one fold at most; and the mirror image of every piece on it another's place, its own, or nobody's.
pub(super) fn check_folds(
    panels: &[Panel],
    lay: &Lay,
    laid: &[Laid],
    complaints: &mut Vec<Complaint>,
) {
    for (index, fold) in lay.folds.iter().enumerate() {
        let Some(panel) = panels.get(fold.panel) else {
            complaints.push(Complaint::NoSuchFolded {
                fold: index,
                panel: fold.panel,
            });
            continue;
        };
        let line = [fold.from, fold.to];
        if check_line(line, 1e6).is_err() {
            complaints.push(Complaint::NoFold { fold: index });
            continue;
        }
        let first = lay.folds[..index]
            .iter()
            .position(|other| other.panel == fold.panel);
        if let Some(first) = first {
            complaints.push(Complaint::FoldedTwice {
                first,
                second: index,
                panel: panel.name().to_owned(),
            });
            continue;
        }
        let on: Vec<&Laid> = laid
            .iter()
            .filter(|piece| piece.panel == fold.panel)
            .collect();
        for piece in &on {
            let outline = placed(&piece.part.outline, &lay.placements[piece.index]);
            let image = Ring::new(&mirrored(&outline, line));
            if !on.iter().any(|other| image.is_same(&other.ring)) {
                check_image(piece, &image, &on, panel, lay.spacing, complaints);
            }
        }
    }
}

/// What is cut from the other layer clear of all pieces.
fn check_image(
    piece: &Laid,
    image: &Ring,
    on: &[&Laid],
    panel: &Panel,
    spacing: f64,
    complaints: &mut Vec<Complaint>,
) {
    for other in on {
        let (placement, part) = (piece.index, piece.part.name.clone());
        if let Some(at) = image.overlaps(&other.ring) {
            complaints.push(Complaint::CutsInto {
                placement,
                other: other.index,
                part,
                into: other.part.name.clone(),
                panel: panel.name().to_owned(),
                at,
            });
        } else if let Some(distance) = image.nearer(&other.ring, spacing) {
            complaints.push(Complaint::CutsNear {
                placement,
                other: other.index,
                part,
                near: other.part.name.clone(),
                distance,
                spacing,
            });
        }
    }
}
