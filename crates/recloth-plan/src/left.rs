//! What the lays leave: of each part that is left, the largest rectangle on grain.

use recloth_lay::{Fit, Leftover, LeftoverOptions, Panel, PanelRectangle, Part, leftovers};

use crate::laying::Laid;
use crate::plan::Plan;

/// The narrowest scrap that is listed (mm): two fingers wide; common practice, no source.
const SCRAP: f64 = 50.0;

/// What a lay leaves; nothing where it cannot be worked out, and then why.
pub(crate) fn left(parts: &[Part], panels: &[Panel], fit: &Fit) -> (Vec<Leftover>, Option<String>) {
    let options = LeftoverOptions {
        rectangles: 1,
        least: SCRAP,
    };
    match leftovers(parts, panels, &fit.lay, &options) {
        Ok(mut left) => {
            left.retain(|shape| !shape.rectangles.is_empty());
            (left, None)
        }
        Err(error) => (Vec::new(), Some(error.to_string())),
    }
}

impl Plan {
    /// The largest rectangle on grain in each part of the cloth that a lay leaves, the largest first, with its panel's index.
    pub fn rectangles_left<'a>(&self, laid: &'a Laid) -> Vec<(usize, &'a PanelRectangle)> {
        let shapes = laid.left.iter();
        let mut found: Vec<_> = shapes
            .flat_map(|shape| (shape.rectangles.iter()).map(|rectangle| (shape.panel, rectangle)))
            .collect();
        found.sort_by(|(_, a), (_, b)| b.area_mm2.total_cmp(&a.area_mm2));
        found
    }

    /// A rectangle as the tape reads it: across the grain by along it.
    pub(crate) fn rectangle_text(&self, rectangle: &PanelRectangle) -> String {
        // A cutter measures what is there, so never more than that.
        let down = |length: f64| {
            let graduation = self.tape.graduation;
            self.tape
                .text((length / graduation + 1e-9).floor() * graduation)
        };
        format!("{} by {}", down(rectangle.width), down(rectangle.height))
    }
}
