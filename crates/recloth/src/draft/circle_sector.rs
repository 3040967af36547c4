//! A sector of a circle skirt.

use alloc::vec;
use kurbo::Point;

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, Sewn, row, row_length};
use super::{Allowances, Draft, upright};
use crate::Error;
use crate::outline::{Corner, Curve, Cutting, Edge, Piece, Segment, Way};
use crate::skirt::circle_skirt;

/// One of the equal sectors a circle skirt is made of.
///
/// Edges: `hem`, `side`, `waist`, `other side`. Waist and hem have a notch `middle`, both sides one `side middle`. A full
/// ring cannot be one piece; a hem on so strong a curve must be shallow.
///
/// # Source
/// [`circle_skirt`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct CircleSector {
    /// Finished waist edge of the whole skirt, ease included (mm), 1 to 1e4.
    pub waist: f64,
    /// Waist edge to hem edge (mm), 1 to 5000.
    pub length: f64,
    /// Part of a full ring, 0.01 to 4.
    pub fraction: f64,
    /// Number of equal sectors, 1 to 64; none of them more than 330°.
    pub pieces: u32,
    /// Allowances; the waist has that of a seam.
    pub allowances: Allowances,
}

impl CircleSector {
    /// Drafts the sector: one piece, cut `pieces` times.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure.
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }
}

impl Measured for CircleSector {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = vec![
            ("waist", Dial::Number(&mut self.waist, 1.0, 1e4)),
            ("length", Dial::Number(&mut self.length, 1.0, 5e3)),
            ("fraction", Dial::Number(&mut self.fraction, 0.01, 4.0)),
            ("pieces", Dial::Count(&mut self.pieces, 1, 64)),
        ];
        dials.extend(self.allowances.dials());
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let &CircleSector {
            waist,
            length,
            fraction,
            pieces,
            allowances,
        } = self;
        let sweep = 360.0 * fraction / f64::from(pieces);
        if sweep > 330.0 {
            let least = libm::ceil(360.0 * fraction / 330.0);
            return Err(Error::no_solution("pieces", f64::from(pieces), least, 64.0));
        }
        let skirt = circle_skirt(waist, length, fraction)?;
        let start = -90.0 - sweep / 2.0;
        let hem = Segment::about(Point::ORIGIN, skirt.hem_radius, start, sweep);
        let top = Segment::about(Point::ORIGIN, skirt.waist_radius, start + sweep, -sweep);
        let edges = vec![
            Edge::hem("hem", Curve::Segment(hem), allowances.hem)
                .corner(Corner::MirroredOnThis)
                .notch("middle", hem.length() / 2.0, 1),
            Edge::seam("side", Curve::line(hem.end, top.start), allowances.seam).notch(
                "side middle",
                length / 2.0,
                1,
            ),
            Edge::seam("waist", Curve::Segment(top), allowances.seam).notch(
                "middle",
                top.length() / 2.0,
                1,
            ),
            Edge::seam(
                "other side",
                Curve::line(top.end, hem.start),
                allowances.seam,
            )
            .notch("side middle", length / 2.0, 1)
            .corner(Corner::MirroredOnNext),
        ];
        let piece = Piece::new("skirt sector", edges)
            .map_err(|_| Error::no_solution("pieces", f64::from(pieces), f64::NAN, f64::NAN))?
            .with_cutting(Cutting {
                count: pieces,
                ..Cutting::default()
            })?;
        let piece = upright(piece)?;
        let mut draft = Draft::new(vec![piece.clone()], skirt.doubts);
        draft.sew(Sewn {
            name: "side",
            edges: row(&piece, "side"),
            others: row(&piece, "other side"),
            way: Way::Against,
            ease: 0.0,
            runs: [Some("hem"), Some("waist")],
        });
        let edge = |name: &str| row_length(&row(&piece, name)) * f64::from(pieces);
        let found = edge("waist") - waist;
        draft.check(CheckKind::Seam, "waist, all sectors".into(), found);
        let found = edge("hem") - skirt.hem_length;
        draft.check(CheckKind::Seam, "hem, all sectors".into(), found);
        draft.held("pieces", f64::from(pieces))
    }
}
