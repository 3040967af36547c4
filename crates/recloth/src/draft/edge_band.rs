//! A band round an edge: ribbing, a cuff, a neck band.

use alloc::format;
use alloc::vec;
use kurbo::Line;

use super::Draft;
use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{Sewn, row};
use crate::Error;
use crate::elastic::ribbing;
use crate::outline::{Curve, Edge, LineKind, Mark, Piece, Way};

/// A folded band joined to a ring and sewn round an edge: a cuff or neck band as long as it, or a stretched one of ribbing.
///
/// Edges: `lower`, `end`, `upper`, `start`; a line `fold`. Both long edges have notches `quarter 1` to `quarter 3`, which meet
/// the quarters of the edge. Its grain, and the way that ribbing stretches, lies along it.
///
/// # Source
/// [`ribbing`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct EdgeBand {
    /// Way round the edge that it is sewn to (mm), 1 to 1e4.
    pub edge: f64,
    /// Band over edge, 0.3 to 1: 1 of cloth that does not stretch.
    pub share: f64,
    /// Finished depth (mm), 1 to 1000.
    pub depth: f64,
    /// Seam allowance (mm), 0 to 100.
    pub allowance: f64,
}

impl EdgeBand {
    /// Drafts the band: one piece.
    ///
    /// # Errors
    /// `NotFinite` or `OutOfRange`, naming the measure.
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }
}

impl Measured for EdgeBand {
    fn dials(&mut self) -> Dials<'_> {
        vec![
            ("edge", Dial::Number(&mut self.edge, 1.0, 1e4)),
            ("share", Dial::Number(&mut self.share, 0.3, 1.0)),
            ("depth", Dial::Number(&mut self.depth, 1.0, 1e3)),
            ("allowance", Dial::Number(&mut self.allowance, 0.0, 100.0)),
        ]
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let strip = ribbing(self.edge, self.depth, self.allowance, self.share)?;
        let (length, width) = (strip.round, 2.0 * self.depth);
        let side = |name: &str, a: (f64, f64), b: (f64, f64)| {
            Edge::seam(name, Curve::line(a, b), self.allowance)
        };
        let mut lower = side("lower", (0.0, 0.0), (length, 0.0));
        let mut upper = side("upper", (length, width), (0.0, width));
        for quarter in 1..4 {
            let at = length * f64::from(quarter) / 4.0;
            lower = lower.notch(format!("quarter {quarter}"), at, 1);
            upper = upper.notch(format!("quarter {quarter}"), length - at, 1);
        }
        let edges = vec![
            lower,
            side("end", (length, 0.0), (length, width)),
            upper,
            side("start", (0.0, width), (0.0, 0.0)),
        ];
        let fold = Mark::Line {
            name: "fold".into(),
            kind: LineKind::Fold,
            curve: Curve::line((0.0, self.depth), (length, self.depth)),
        };
        let piece = Piece::new("band", edges)?
            .with_marks(vec![fold])?
            .with_grain(Line::new(
                (length * 0.3, width * 0.3),
                (length * 0.7, width * 0.3),
            ))?;
        let mut draft = Draft::new(vec![piece.clone()], 0);
        for (name, edges, others, runs) in [
            (
                "ring",
                "end",
                "start",
                [Some("lower edge"), Some("upper edge")],
            ),
            (
                "lower edge to upper edge, folded",
                "lower",
                "upper",
                [None, None],
            ),
        ] {
            draft.sew(Sewn {
                name,
                edges: row(&piece, edges),
                others: row(&piece, others),
                way: Way::Against,
                ease: 0.0,
                runs,
            });
        }
        draft.held("edge", self.edge)
    }
}
