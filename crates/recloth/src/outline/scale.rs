//! A piece made larger or smaller for what the cloth will do in the wash.

use alloc::vec::Vec;
use kurbo::{Affine, Line, Point};

use super::curve::Curve;
use super::edge::Edge;
use super::mark::{Cutout, Mark};
use super::piece::Piece;
use super::place::redrawn;
use super::segment::{Segment, sincos_deg};
use crate::Error;

/// How near cubics follow an arc that is stretched (mm).
const FINE: f64 = 1e-3;

impl Piece {
    /// The piece cut larger or smaller, so that after a change of `along_pct` along the grain and `across_pct` across it
    /// (minus is shrinkage) it is what it is now: `cut = finished / (1 + change / 100)`, each way. Without a grain line the
    /// grain is upright. Allowances stay as they are: they are sewn, or trimmed, after the wash that cloth was
    /// given, and shrink later by too little to matter.
    ///
    /// Stretched unevenly an arc is none: it becomes one or several cubics (`name 1`, `name 2`) within 0.001 mm. Notches
    /// keep their places on the cloth.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange`: `along_pct` or `across_pct` (-90 to 100), or a piece that becomes too large (`point`).
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Edge, Piece};
    /// let corners = [(0.0, 0.0), (190.0, 0.0), (190.0, 475.0), (0.0, 475.0)];
    /// let panel = Piece::new("panel", (0..4).map(|i| Edge::seam("side", Curve::line(corners[i], corners[(i + 1) % 4]), 10.0)).collect())?;
    /// // The cloth shrinks by 5 % along the grain and not across.
    /// let cut = panel.scale_for_change(-5.0, 0.0)?;
    /// assert_eq!((cut.bounds().width(), cut.bounds().height()), (190.0, 500.0));
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn scale_for_change(&self, along_pct: f64, across_pct: f64) -> Result<Piece, Error> {
        let factor = |name: &'static str, pct: f64| -> Result<f64, Error> {
            Ok(1.0 / (1.0 + Error::check(name, pct, -90.0, 100.0)? / 100.0))
        };
        let (along, across) = (
            factor("along_pct", along_pct)?,
            factor("across_pct", across_pct)?,
        );
        // With the grain upright: turned, stretched, and turned back.
        let (sin, cos) = sincos_deg(90.0 - self.grain_deg());
        let turned = Affine::new([cos, sin, -sin, cos, 0.0, 0.0]);
        let back = Affine::new([cos, -sin, sin, cos, 0.0, 0.0]);
        let motion = if sin == 0.0 {
            Affine::new([across, 0.0, 0.0, along, 0.0, 0.0])
        } else {
            back * Affine::new([across, 0.0, 0.0, along, 0.0, 0.0]) * turned
        };
        let even = along == across;
        let edges = stretched_edges(self.edges(), motion, even);
        let marks = self.marks().iter().flat_map(|mark| match mark {
            Mark::Line { name, kind, curve } => stretched(curve, motion, even)
                .into_iter()
                .map(|curve| Mark::Line {
                    name: name.clone(),
                    kind: *kind,
                    curve,
                })
                .collect(),
            Mark::Cutout(cutout) => alloc::vec![Mark::Cutout(Cutout {
                name: cutout.name.clone(),
                edges: stretched_edges(&cutout.edges, motion, even),
            })],
            other => alloc::vec![other.moved(motion, false)],
        });
        let grain = self
            .grain()
            .map(|g| Line::new(motion * g.p0, motion * g.p1));
        let piece = Piece::new(self.name(), edges)?
            .with_marks(marks.collect())?
            .with_cutting(self.cutting().clone())?;
        match grain {
            Some(grain) => piece.with_grain(grain),
            None => Ok(piece),
        }
    }
}

/// A ring of edges after a stretch, with their notches at their places on the cloth.
fn stretched_edges(ring: &[Edge], motion: Affine, even: bool) -> Vec<Edge> {
    let drawn = ring.iter().flat_map(|edge| {
        let curves = stretched(&edge.curve, motion, even);
        redrawn(edge, curves, |point| motion * point)
    });
    drawn.collect()
}

/// A curve after a stretch, even in all directions or not.
fn stretched(curve: &Curve, motion: Affine, even: bool) -> Vec<Curve> {
    match curve {
        Curve::Segment(segment) if !segment.is_line() && !even => cubics(segment, motion),
        other => alloc::vec![other.moved(motion, false)],
    }
}

/// Cubics near an arc, stretched.
fn cubics(segment: &Segment, motion: Affine) -> Vec<Curve> {
    let [a, b, c, d, _, _] = motion.as_coeffs();
    let largest = [a, b, c, d]
        .iter()
        .fold(1.0, |most: f64, value| most.max(value.abs()));
    let mut curves = Vec::new();
    segment.as_cubics(FINE / (2.0 * largest), |cubic: [Point; 4]| {
        let [p, q, r, s] = cubic.map(|point| motion * point);
        curves.push(Curve::cubic(p, q, r, s));
    });
    curves
}
