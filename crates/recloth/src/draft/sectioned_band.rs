//! A waistband in sections.

use alloc::format;
use alloc::vec;
use alloc::vec::Vec;

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, Sewn, row, row_length};
use super::{Draft, upright};
use crate::Error;
use crate::band::{SquareEnds, curved_band, sectioned_band};
use crate::outline::{Curve, Cutting, Edge, Hand, Piece, Segment, Way};

/// A shaped waistband in sections, straight with slanted ends or curved.
///
/// Straight sections kink at their joins, and are trued there ([`sectioned_band`]); curved ones are parts of one ring, all
/// their ends square to the edges ([`curved_band`]). Each section is cut for the outside and the inside of the band, as a
/// mirrored pair where it is handed. Edges: `lower`, `end`, `upper`, `start`; joins have a notch `join N` in their middle.
///
/// # Source
/// [`sectioned_band`], [`curved_band`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SectionedBand {
    /// Finished lower edge of each section, in order (mm), 1 to 1e4 each, 1 to 100 sections.
    pub lengths: Vec<f64>,
    /// Finished depth (mm), 1 to 1e3.
    pub depth: f64,
    /// Finished upper edge of all sections together (mm), 1 to 1e6.
    pub top: f64,
    /// Which free ends are square; of curved sections all are.
    pub ends: SquareEnds,
    /// Whether the sections are curved.
    pub curved: bool,
    /// Seam allowance (mm), 0 to 1000.
    pub allowance: f64,
}

impl SectionedBand {
    /// Drafts the band: one piece a section, in order.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange`, `Count` or `NoSolution`, naming the measure.
    pub fn draft(&self) -> Result<Draft, Error> {
        Error::check_list("lengths", &self.lengths, 1.0, 1e4, (1, 100))?;
        drafted(self)
    }

    fn section(
        &self,
        index: usize,
        last: usize,
        lower: Segment,
        upper: Segment,
    ) -> Result<Piece, Error> {
        let edge = |name: &str, s: Segment| Edge::seam(name, Curve::Segment(s), self.allowance);
        let end = Segment::line(lower.end, upper.start);
        let start = Segment::line(upper.end, lower.start);
        let mut edges = vec![
            edge("lower", lower),
            edge("end", end),
            edge("upper", upper),
            edge("start", start),
        ];
        if index < last {
            edges[1] = edge("end", end).notch(format!("join {}", index + 1), end.length() / 2.0, 1);
        }
        if index > 0 {
            edges[3] = edge("start", start).notch(format!("join {index}"), start.length() / 2.0, 1);
        }
        let piece = upright(Piece::new(format!("waistband {}", index + 1), edges)?)?;
        let hand = if piece.handed(1e-6)? {
            Hand::Mirrored
        } else {
            Hand::Identical
        };
        piece.with_cutting(Cutting {
            count: 2,
            hand,
            ..Cutting::default()
        })
    }
}

impl Measured for SectionedBand {
    fn dials(&mut self) -> Dials<'_> {
        vec![
            ("depth", Dial::Number(&mut self.depth, 1.0, 1e3)),
            ("top", Dial::Number(&mut self.top, 1.0, 1e6)),
            ("allowance", Dial::Number(&mut self.allowance, 0.0, 1e3)),
        ]
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let &SectionedBand {
            ref lengths,
            depth,
            top,
            ..
        } = self;
        let mut tops = vec![0.0; lengths.len()];
        let last = lengths.len() - 1;
        let mut pieces = Vec::new();
        let mut doubts = 0;
        if self.curved {
            let band = curved_band(lengths, depth, top, &mut tops)?;
            let outer = band.outer_radius;
            for (index, &length) in lengths.iter().enumerate() {
                let half = (length / outer).to_degrees() / 2.0;
                // The ring's centre lies above: its lower, longer edge is the outer one.
                let lower = Segment::about((0.0, outer), outer, -90.0 - half, 2.0 * half);
                let upper =
                    Segment::about((0.0, outer), band.inner_radius, half - 90.0, -2.0 * half);
                pieces.push(self.section(index, last, lower, upper)?);
            }
        } else {
            let band = sectioned_band(lengths, depth, top, self.ends, &mut tops)?;
            doubts = band.doubts;
            for (index, (&length, &top)) in lengths.iter().zip(&tops).enumerate() {
                let square =
                    index == 0 && matches!(self.ends, SquareEnds::First | SquareEnds::Both);
                let left = if square { 0.0 } else { band.slant };
                let lower = Segment::line((0.0, 0.0), (length, 0.0));
                let upper = Segment::line((left + top, depth), (left, depth));
                pieces.push(self.section(index, last, lower, upper)?);
            }
        }
        let mut draft = Draft::new(pieces.clone(), doubts);
        for (index, pair) in pieces.windows(2).enumerate() {
            // Straight sections kink at their joins, as they must.
            let runs = if self.curved {
                [Some("lower edge"), Some("upper edge")]
            } else {
                [None, None]
            };
            draft.sew(Sewn {
                name: &format!("join {}", index + 1),
                edges: row(&pair[0], "end"),
                others: row(&pair[1], "start"),
                way: Way::Against,
                ease: 0.0,
                runs,
            });
        }
        let upper: f64 = pieces
            .iter()
            .map(|piece| row_length(&row(piece, "upper")))
            .sum();
        draft.check(
            CheckKind::Seam,
            "upper edge, all sections".into(),
            upper - top,
        );
        draft.held("top", top)
    }
}
