//! A shaped waistband in one piece.

use alloc::format;
use alloc::vec;
use kurbo::Point;

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, Sewn, row, row_length};
use super::{Draft, upright};
use crate::Error;
use crate::band::shaped_band;
use crate::outline::{Curve, Cutting, Edge, Hand, Piece, Segment, Way};

/// A shaped waistband in one piece: part of a ring, its upper edge shorter than its lower one, so that it lies on the body.
///
/// The overlap is more of the same ring. Edges: `lower`, `end`, `upper`, `start`. Both long edges have notches `quarter 1` to
/// `quarter 3` and, where the overlap begins, `overlap`. Cut for the outside and the inside; with an overlap as a mirrored
/// pair.
///
/// # Source
/// [`shaped_band`]: the frustum of a cone, unrolled.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ShapedBand {
    /// Finished length of the lower edge round the body, ease included (mm), 1 to 1e4.
    pub lower: f64,
    /// Finished length of the upper edge (mm), 1 to 1e4, less than `lower`.
    pub upper: f64,
    /// Finished depth (mm), 1 to 1000.
    pub depth: f64,
    /// What runs on past the opening along the lower edge (mm), 0 to 1e4.
    pub overlap: f64,
    /// Seam allowance (mm), 0 to 1000.
    pub allowance: f64,
}

impl ShapedBand {
    /// Drafts the band: one piece.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure.
    ///
    /// # Examples
    /// ```
    /// use recloth::draft::ShapedBand;
    /// let band = ShapedBand { lower: 760.0, upper: 720.0, depth: 50.0, overlap: 0.0, allowance: 10.0 };
    /// let piece = &band.draft()?.pieces[0];
    /// assert_eq!(piece.cutting().count, 2);
    /// assert!((piece.edges()[2].length() - 720.0).abs() < 1e-9);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }
}

/// The widest that a ring opens and is still one piece (degrees).
const WIDEST: f64 = 330.0;

impl Measured for ShapedBand {
    fn dials(&mut self) -> Dials<'_> {
        vec![
            ("lower", Dial::Number(&mut self.lower, 1.0, 1e4)),
            ("upper", Dial::Number(&mut self.upper, 1.0, 1e4)),
            ("depth", Dial::Number(&mut self.depth, 1.0, 1e3)),
            ("overlap", Dial::Number(&mut self.overlap, 0.0, 1e4)),
            ("allowance", Dial::Number(&mut self.allowance, 0.0, 1e3)),
        ]
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let &ShapedBand {
            lower,
            upper,
            depth,
            overlap,
            allowance,
        } = self;
        let ring = shaped_band(lower, upper, depth)?;
        let whole = lower + overlap;
        let sweep = ring.angle_deg * whole / lower;
        if sweep > WIDEST {
            // As the upper edge nears the lower one, the ring grows flat.
            let nan = f64::NAN;
            return Err(Error::no_solution("upper", upper, nan, nan));
        }
        let centre = Point::new(0.0, ring.outer_radius);
        let start = -90.0 - sweep / 2.0;
        let below = Segment::about(centre, ring.outer_radius, start, sweep);
        let above = Segment::about(centre, ring.inner_radius, start + sweep, -sweep);
        let edge =
            |name: &str, segment: Segment| Edge::seam(name, Curve::Segment(segment), allowance);
        let (mut lower_edge, mut upper_edge) = (edge("lower", below), edge("upper", above));
        let share = above.length() / below.length();
        for quarter in 1..4 {
            let at = lower * f64::from(quarter) / 4.0;
            let name = format!("quarter {quarter}");
            lower_edge = lower_edge.notch(name.as_str(), at, 1);
            upper_edge = upper_edge.notch(name, (whole - at) * share, 1);
        }
        if overlap > 0.0 {
            lower_edge = lower_edge.notch("overlap", lower, 2);
            upper_edge = upper_edge.notch("overlap", overlap * share, 2);
        }
        let edges = vec![
            lower_edge,
            edge("end", Segment::line(below.end, above.start)),
            upper_edge,
            edge("start", Segment::line(above.end, below.start)),
        ];
        let hand = if overlap > 0.0 {
            Hand::Mirrored
        } else {
            Hand::Identical
        };
        let piece = upright(Piece::new("waistband", edges)?)?.with_cutting(Cutting {
            count: 2,
            hand,
            ..Cutting::default()
        })?;
        let mut draft = Draft::new(vec![piece.clone()], 0);
        draft.sew(Sewn {
            name: "end to start",
            edges: row(&piece, "end"),
            others: row(&piece, "start"),
            way: Way::Against,
            ease: 0.0,
            runs: [Some("lower edge"), Some("upper edge")],
        });
        for (name, wanted) in [("lower", whole), ("upper", upper * whole / lower)] {
            let found = row_length(&row(&piece, name)) - wanted;
            draft.check(
                CheckKind::Seam,
                format!("{name} edge with its overlap"),
                found,
            );
        }
        draft.held("upper", upper)
    }
}
