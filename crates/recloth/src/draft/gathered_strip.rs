//! A strip to be gathered onto an edge.

use alloc::format;
use alloc::vec;
use alloc::vec::Vec;

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, Sewn, row, row_length};
use super::{Allowances, Draft, upright};
use crate::Error;
use crate::fullness::gathers;
use crate::outline::{Corner, Curve, Edge, Piece, Way};

/// A strip gathered onto a finished edge, in one length or joined from several.
///
/// Edges: `hem`, `end`, `gathered`, `start`. Notches `quarter 1` to `quarter 3` on the gathered edge meet the quarters of
/// the edge it goes on.
///
/// # Source
/// [`gathers`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct GatheredStrip {
    /// Length of the edge it goes on (mm), 1 to 1e4.
    pub finished: f64,
    /// Strip over finished edge, 1 to 20.
    pub ratio: f64,
    /// Finished depth (mm), 1 to 5000.
    pub depth: f64,
    /// Number of equal lengths it is joined from, 1 to 100.
    pub strips: u32,
    /// Allowances.
    pub allowances: Allowances,
}

impl GatheredStrip {
    /// Drafts the strip: one piece for each length, as their notches differ.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure.
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }
}

impl Measured for GatheredStrip {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = vec![
            ("finished", Dial::Number(&mut self.finished, 1.0, 1e4)),
            ("ratio", Dial::Number(&mut self.ratio, 1.0, 20.0)),
            ("depth", Dial::Number(&mut self.depth, 1.0, 5e3)),
            ("strips", Dial::Count(&mut self.strips, 1, 100)),
        ];
        dials.extend(self.allowances.dials());
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let &GatheredStrip {
            finished,
            ratio,
            depth,
            strips,
            allowances,
        } = self;
        let gathered = gathers(finished, ratio)?;
        let whole = gathered.flat;
        let length = whole / f64::from(strips);
        if length > 9e4 {
            let least = libm::ceil(whole / 9e4);
            return Err(Error::no_solution(
                "strips",
                f64::from(strips),
                least,
                100.0,
            ));
        }
        let mut pieces = Vec::new();
        for strip in 0..strips {
            let seam = |name: &str, a: (f64, f64), b: (f64, f64)| {
                Edge::seam(name, Curve::line(a, b), allowances.seam)
            };
            let mut top = seam("gathered", (length, depth), (0.0, depth));
            for quarter in 1..4 {
                // From the start of this strip; the edge runs the other way.
                let at = whole * f64::from(quarter) / 4.0 - length * f64::from(strip);
                if at > 0.0 && at < length {
                    top = top.notch(format!("quarter {quarter}"), length - at, 1);
                }
            }
            let edges = [
                Edge::hem(
                    "hem",
                    Curve::line((0.0, 0.0), (length, 0.0)),
                    allowances.hem,
                )
                .corner(Corner::MirroredOnThis),
                seam("end", (length, 0.0), (length, depth)),
                top,
                seam("start", (0.0, depth), (0.0, 0.0)).corner(Corner::MirroredOnNext),
            ];
            let name = if strips == 1 {
                "gathered strip".into()
            } else {
                format!("gathered strip {}", strip + 1)
            };
            pieces.push(upright(Piece::new(name, edges.into())?)?);
        }
        let mut draft = Draft::new(pieces.clone(), gathered.doubts);
        for (index, pair) in pieces.windows(2).enumerate() {
            draft.sew(Sewn {
                name: &format!("strip {} to strip {}", index + 1, index + 2),
                edges: row(&pair[0], "end"),
                others: row(&pair[1], "start"),
                way: Way::Against,
                ease: 0.0,
                runs: [Some("hem"), Some("gathered edge")],
            });
        }
        let whole_found: f64 = pieces
            .iter()
            .map(|piece| row_length(&row(piece, "gathered")))
            .sum();
        draft.check(
            CheckKind::Seam,
            "gathered edge, all strips".into(),
            whole_found - gathered.flat,
        );
        draft.held("ratio", ratio)
    }
}
