//! A straight waistband.

use alloc::format;
use alloc::vec;
use kurbo::Line;

use super::Draft;
use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{Sewn, row};
use crate::Error;
use crate::band::{BandMake, straight_band};
use crate::outline::{Curve, Cutting, Edge, LineKind, Mark, Piece, Way};

/// A straight waistband: one strip folded along its upper edge, or an outer and an inner strip.
///
/// Edges: `lower`, `end`, `upper`, `start`. The lower edge has notches `quarter 1` to `quarter 3` and, where the overlap
/// begins, `overlap`; a folded strip has them on its upper edge too, and a line `fold`.
///
/// # Source
/// [`straight_band`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StraightBand {
    /// Finished length round the waist, ease included (mm), 1 to 1e4.
    pub waist: f64,
    /// What runs on past the opening (mm), 0 to 1e4.
    pub overlap: f64,
    /// Finished depth (mm), 1 to 1e3.
    pub depth: f64,
    /// Cloth taken by the thickness of the upper edge (mm), 0 to 100.
    pub turn: f64,
    /// How the band gets its two layers.
    pub make: BandMake,
    /// Seam allowance (mm), 0 to 1000.
    pub allowance: f64,
}

impl StraightBand {
    /// Drafts the band: one piece, cut once or, of two strips, twice.
    ///
    /// # Errors
    /// `NotFinite` or `OutOfRange`, naming the measure.
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }
}

impl Measured for StraightBand {
    fn dials(&mut self) -> Dials<'_> {
        vec![
            ("waist", Dial::Number(&mut self.waist, 1.0, 1e4)),
            ("overlap", Dial::Number(&mut self.overlap, 0.0, 1e4)),
            ("depth", Dial::Number(&mut self.depth, 1.0, 1e3)),
            ("turn", Dial::Number(&mut self.turn, 0.0, 100.0)),
            ("allowance", Dial::Number(&mut self.allowance, 0.0, 1e3)),
        ]
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let &StraightBand {
            waist,
            overlap,
            depth,
            ..
        } = self;
        let strip = straight_band(waist, overlap, depth, self.allowance, self.turn, self.make)?;
        let length = waist + overlap;
        let width = strip.cut_width - 2.0 * self.allowance;
        let folded = self.make == BandMake::Folded;
        let side = |name: &str, a: (f64, f64), b: (f64, f64)| {
            Edge::seam(name, Curve::line(a, b), self.allowance)
        };
        let mut lower = side("lower", (0.0, 0.0), (length, 0.0));
        let mut upper = side("upper", (length, width), (0.0, width));
        for quarter in 1..4 {
            let name = format!("quarter {quarter}");
            let at = waist * f64::from(quarter) / 4.0;
            lower = lower.notch(name.as_str(), at, 1);
            if folded {
                upper = upper.notch(name, length - at, 1);
            }
        }
        if overlap > 0.0 {
            lower = lower.notch("overlap", waist, 2);
            if folded {
                upper = upper.notch("overlap", overlap, 2);
            }
        }
        let edges = vec![
            lower,
            side("end", (length, 0.0), (length, width)),
            upper,
            side("start", (0.0, width), (0.0, 0.0)),
        ];
        let fold = Mark::Line {
            kind: LineKind::Fold,
            name: "fold".into(),
            curve: Curve::line((0.0, width / 2.0), (length, width / 2.0)),
        };
        let piece = Piece::new("waistband", edges)?
            .with_marks(if folded { vec![fold] } else { vec![] })?
            .with_grain(Line::new(
                (length * 0.3, width * 0.3),
                (length * 0.7, width * 0.3),
            ))?
            .with_cutting(Cutting {
                count: strip.strips,
                ..Cutting::default()
            })?;
        let mut draft = Draft::new(vec![piece.clone()], strip.doubts);
        if folded {
            draft.sew(Sewn {
                name: "lower edge to upper edge, folded",
                edges: row(&piece, "lower"),
                others: row(&piece, "upper"),
                way: Way::Against,
                ease: 0.0,
                runs: [None, None],
            });
        }
        draft.held("waist", waist)
    }
}
