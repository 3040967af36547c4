//! A bias binding.

use alloc::vec;
use core::f64::consts::SQRT_2;

use kurbo::Line;

use super::Draft;
use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, Sewn, row, row_length};
use crate::Error;
use crate::bias::{BindingFold, binding_strips, binding_width};
use crate::binding::binding_length;
use crate::outline::{Corner, Curve, Cutting, Edge, LineKind, Mark, Piece, Way};

/// A bias binding for an edge, joined from strips that are all cut alike.
///
/// The strips' ends lie on the straight grain, at 45°, so that two laid face to face meet at right angles and the seam runs
/// across the binding aslant. The strip is drawn as it is cut: its edges have no allowances but at the joins. Edges: `long`,
/// `end`, `other long`, `start`; a line `fold` along the middle.
///
/// # Source
/// [`binding_width`], [`binding_length`], [`binding_strips`]; ends on the grain are common practice, no source.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Binding {
    /// Length of the edge to be bound (mm), 1 to 1e5.
    pub edge: f64,
    /// Corners to be mitred, 0 to 1000.
    pub corners: u32,
    /// Allowed for each of them (mm), 0 to 1000; 50.8 is [`binding_length`]'s.
    pub corner: f64,
    /// Allowed for joining or finishing the two ends (mm), 0 to 1e4.
    pub finish: f64,
    /// Width that shows on one side (mm), 0.5 to 500.
    pub finished: f64,
    /// Turned in at each long edge, or the seam allowance of a double binding (mm), 0 to 500.
    pub turn: f64,
    /// Thickness of what is bound (mm), 0 to 100.
    pub thickness: f64,
    /// How it is folded.
    pub fold: BindingFold,
    /// Longest strip that the cloth gives on the bias (mm), 10 to 1e4.
    pub strip: f64,
    /// Seam allowance of the joins (mm), 0 to 100.
    pub allowance: f64,
}

impl Binding {
    /// Drafts the binding: one strip, cut as often as the length asks.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure.
    ///
    /// # Examples
    /// ```
    /// use recloth::{bias::BindingFold, draft::Binding};
    /// let neck = Binding {
    ///     edge: 620.0, corners: 0, corner: 50.8, finish: 20.0, finished: 8.0, turn: 8.0, thickness: 0.0,
    ///     fold: BindingFold::Single, strip: 900.0, allowance: 6.0,
    /// };
    /// let draft = neck.draft()?;
    /// assert_eq!((draft.pieces[0].bounds().height().round(), draft.lengths[0].length), (32.0, 640.0));
    /// assert!((draft.pieces[0].grain_deg() - 45.0).abs() < 1e-9);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }
}

impl Measured for Binding {
    fn dials(&mut self) -> Dials<'_> {
        vec![
            ("edge", Dial::Number(&mut self.edge, 1.0, 1e5)),
            ("corners", Dial::Count(&mut self.corners, 0, 1000)),
            ("corner", Dial::Number(&mut self.corner, 0.0, 1e3)),
            ("finish", Dial::Number(&mut self.finish, 0.0, 1e4)),
            ("finished", Dial::Number(&mut self.finished, 0.5, 500.0)),
            ("turn", Dial::Number(&mut self.turn, 0.0, 500.0)),
            ("thickness", Dial::Number(&mut self.thickness, 0.0, 100.0)),
            ("strip", Dial::Number(&mut self.strip, 10.0, 1e4)),
            ("allowance", Dial::Number(&mut self.allowance, 0.0, 100.0)),
        ]
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let whole = binding_length(self.edge, self.corners, self.corner, self.finish)?;
        let width = binding_width(self.finished, self.turn, self.thickness, self.fold)?;
        // Along its long edges a strip loses two allowances of an end at 45°.
        let join = 2.0 * SQRT_2 * self.allowance;
        let nan = f64::NAN;
        let no_strip = Error::no_solution("strip", self.strip, nan, nan);
        let count = binding_strips(whole + join, self.strip, join)
            .map_err(|_| no_strip)?
            .count;
        if count > 1000 {
            return Err(no_strip);
        }
        let length = whole / f64::from(count);
        let slant = |name: &str, a: (f64, f64), b: (f64, f64)| {
            Edge::seam(name, Curve::line(a, b), self.allowance)
        };
        // The strip is no wider at its ends than elsewhere.
        let long = |name: &str, a: (f64, f64), b: (f64, f64)| {
            Edge::opening(name, Curve::line(a, b), 0.0).corner(Corner::SquaredToThis)
        };
        let edges = vec![
            long("long", (0.0, 0.0), (length, 0.0)),
            slant("end", (length, 0.0), (length + width, width)),
            long("other long", (length + width, width), (width, width)),
            slant("start", (width, width), (0.0, 0.0)),
        ];
        let middle = width / 2.0;
        let fold = Mark::Line {
            name: "fold".into(),
            kind: LineKind::Fold,
            curve: Curve::line((middle, middle), (length + middle, middle)),
        };
        let at = (length + width) / 2.0;
        let reach = width * 0.3;
        let piece = Piece::new("binding", edges)?
            .with_marks(vec![fold])?
            .with_grain(Line::new(
                (at - reach, middle - reach),
                (at + reach, middle + reach),
            ))?
            .with_cutting(Cutting {
                count,
                ..Cutting::default()
            })?;
        let mut draft = Draft::new(vec![piece.clone()], 0);
        draft.sew(Sewn {
            name: "join",
            edges: row(&piece, "end"),
            others: row(&piece, "start"),
            way: Way::Against,
            ease: 0.0,
            runs: [Some("edge"), Some("other edge")],
        });
        let found = row_length(&row(&piece, "long")) * f64::from(count) - whole;
        draft.check(CheckKind::Seam, "edge, all strips".into(), found);
        draft.length("binding, joined", whole);
        draft.held("strip", self.strip)
    }
}
