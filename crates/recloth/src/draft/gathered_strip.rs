//! A strip to be gathered onto an edge.

use alloc::format;
use alloc::vec::Vec;

use super::{Allowances, Draft, upright};
use crate::Error;
use crate::fullness::gathers;
use crate::outline::{Corner, Curve, Edge, Piece};

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
        let finished = Error::check("finished", self.finished, 1.0, 1e4)?;
        let ratio = Error::check("ratio", self.ratio, 1.0, 20.0)?;
        let depth = Error::check("depth", self.depth, 1.0, 5e3)?;
        let strips = Error::check_count("strips", self.strips, 1, 100)?;
        let allowances = self.allowances.check()?;
        let gathered = gathers(finished, ratio)?;
        let whole = finished * ratio;
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
        Ok(Draft::new(pieces, gathered.doubts))
    }
}
