//! A patch pocket.

use alloc::vec;

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{Sewn, rows};
use super::{Allowances, Draft, upright};
use crate::Error;
use crate::outline::{Corner, Curve, Edge, Piece, Segment, Way};

/// A patch pocket: sewn on along its sides and bottom, turned down at the top.
///
/// The ends of the turned hem are mirrored, so that it lies flat inside. Edges: `bottom`, `right corner`, `right`, `top`,
/// `left`, `left corner` (no corner edges without a radius).
///
/// # Source
/// Plane geometry.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PatchPocket {
    /// Finished width (mm), 10 to 1000.
    pub width: f64,
    /// Finished depth (mm), 10 to 1000.
    pub depth: f64,
    /// Radius of the lower corners (mm), 0 to 500, at most half the width and less than the depth.
    pub corner_radius: f64,
    /// Allowances: of the seam all round, of the hem at the top, which is no deeper than the pocket.
    pub allowances: Allowances,
}

impl PatchPocket {
    /// Drafts the pocket: one piece.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure.
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }
}

impl Measured for PatchPocket {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = vec![
            ("width", Dial::Number(&mut self.width, 10.0, 1e3)),
            ("depth", Dial::Number(&mut self.depth, 10.0, 1e3)),
            (
                "corner_radius",
                Dial::Number(&mut self.corner_radius, 0.0, 500.0),
            ),
        ];
        dials.extend(self.allowances.dials());
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let &PatchPocket {
            width,
            depth,
            corner_radius: radius,
            allowances,
        } = self;
        let widest = (width / 2.0).min(depth - 1.0);
        if radius > widest {
            return Err(Error::no_solution("corner_radius", radius, 0.0, widest));
        }
        if allowances.hem > depth {
            return Err(Error::no_solution("hem", allowances.hem, 0.0, depth));
        }
        let seam = |name: &str, curve| Edge::seam(name, curve, allowances.seam);
        let round = |name: &str, x: f64, start: f64| {
            seam(
                name,
                Curve::Segment(Segment::about((x, radius), radius, start, 90.0)),
            )
        };
        let rounded = radius >= 1e-3;
        let radius_or_0 = if rounded { radius } else { 0.0 };
        let mut edges = vec![];
        if width - 2.0 * radius_or_0 > 1e-3 {
            edges.push(seam(
                "bottom",
                Curve::line((radius_or_0, 0.0), (width - radius_or_0, 0.0)),
            ));
        }
        if rounded {
            edges.push(round("right corner", width - radius, -90.0));
        }
        edges.push(
            seam("right", Curve::line((width, radius_or_0), (width, depth)))
                .corner(Corner::MirroredOnNext),
        );
        edges.push(
            Edge::hem(
                "top",
                Curve::line((width, depth), (0.0, depth)),
                allowances.hem,
            )
            .corner(Corner::MirroredOnThis),
        );
        edges.push(seam("left", Curve::line((0.0, depth), (0.0, radius_or_0))));
        if rounded {
            edges.push(round("left corner", radius, 180.0));
        }
        let piece = upright(Piece::new("patch pocket", edges)?)?;
        let mut draft = Draft::new(vec![piece.clone()], 0);
        draft.sew(Sewn {
            name: "sides, folded on each other",
            edges: rows(&piece, &["right corner", "right"]),
            others: rows(&piece, &["left corner", "left"]),
            way: Way::Against,
            ease: 0.0,
            runs: [None, Some("top")],
        });
        draft.held("width", width)
    }
}
