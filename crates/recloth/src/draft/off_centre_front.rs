//! A front that opens off its centre.

use alloc::format;
use alloc::vec;
use alloc::vec::Vec;
use kurbo::Point;

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::CheckKind;
use super::{Centre, Draft, SkirtPanel};
use crate::Error;
use crate::dust::short_of;
use crate::opening::off_centre_opening;
use crate::outline::{Curve, Edge, LineKind, Mark, NewSeam, Piece, Role};

/// A skirt front whose button line lies to one side of the centre front: a narrow and a wide front, which lap over each
/// other by twice the button stand.
///
/// The front is unfolded and parted twice, on both sides of the button line, so that each front reaches past it by the stand and
/// lapped they lie on each other. No dart may lie between the centre and the wide front's opening edge: the line would not be
/// straight once the dart is sewn, or the stand would hold the dart. Its intake then goes to that side seam.
///
/// Pieces `NAME narrow` and `NAME wide`, each with an `opening edge` and the button line as a line; the wide one has the centre
/// front as a line too. As drawn, the narrow front is the one with its side at the right.
///
/// # Source
/// [`off_centre_opening`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct OffCentreFront {
    /// Half of the front as it would be on a fold; its `centre` is not used.
    pub front: SkirtPanel,
    /// Button line from the centre front (mm), 0 to 5000, less than half of the front.
    pub shift: f64,
    /// Button stand, from the button line to the opening edges (mm), 0 to 500.
    pub extension: f64,
    /// Cloth there is for the wide front at the waist, button line to side cut edge (mm), 1 to 1e4.
    pub wide_panel: f64,
    /// What is turned in at the opening edges (mm), 0 to 1000.
    pub facing: f64,
}

impl OffCentreFront {
    /// Drafts the fronts: two pieces.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure; those of the front among them.
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }

    /// A front under its name, its opening edge turned in as a facing, with lines marked on it.
    fn front(&self, part: Piece, which: &str, lines: &[(&str, Curve)]) -> Result<Piece, Error> {
        let edges = part
            .edges()
            .iter()
            .cloned()
            .map(|edge| match edge.name.as_str() {
                "opening edge" => Edge {
                    role: Role::Hem,
                    ..edge
                },
                _ => edge,
            });
        let lines = lines.iter().map(|(name, curve)| Mark::Line {
            name: (*name).into(),
            kind: LineKind::Plain,
            curve: *curve,
        });
        let marks: Vec<Mark> = part.marks().iter().cloned().chain(lines).collect();
        let name = format!("{} {which}", self.front.name);
        let piece = Piece::new(name, edges.collect())?.with_marks(marks)?;
        match part.grain() {
            Some(grain) => piece.with_grain(grain),
            None => Ok(piece),
        }
    }

    /// How far the first dart's leg is from the centre, and the middle of the dart.
    fn first_dart(piece: &Piece) -> Option<(f64, f64)> {
        let dart = |mark: &Mark| match mark {
            Mark::Dart(dart) => {
                let [a, b] = dart.legs;
                Some((a.x.min(b.x).min(dart.point.x), (a.x + b.x) / 2.0))
            }
            _ => None,
        };
        let darts = piece.marks().iter().filter_map(dart);
        darts.min_by(|a, b| a.0.total_cmp(&b.0))
    }
}

impl Measured for OffCentreFront {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = self.front.dials();
        dials.extend([
            ("shift", Dial::Number(&mut self.shift, 0.0, 5e3)),
            ("extension", Dial::Number(&mut self.extension, 0.0, 500.0)),
            ("wide_panel", Dial::Number(&mut self.wide_panel, 1.0, 1e4)),
            ("facing", Dial::Number(&mut self.facing, 0.0, 1e3)),
        ]);
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let half = SkirtPanel {
            centre: Centre::Fold,
            ..self.front.clone()
        };
        let (piece, front_doubts) = half.draw(Role::Hem, None)?;
        let dart = OffCentreFront::first_dart(&piece);
        let opening = off_centre_opening(
            2.0 * half.waist,
            self.shift,
            self.extension,
            half.allowances.seam,
            self.wide_panel,
            dart.map_or(half.waist, |(_, middle)| middle.min(half.waist)),
        )?;
        let (shift, stand) = (self.shift, self.extension);
        if let Some((leg, _)) = dart
            && shift + stand >= leg
        {
            let most = short_of(leg - stand);
            return Err(Error::no_solution("shift", shift, 0.0, most));
        }
        let whole = piece.unfold()?;
        let parted = |name: &str, x: f64| -> Result<[Piece; 2], Error> {
            let bounds = whole.bounds();
            // Downward, so that the narrow front lies to the left of the cut.
            let cut = Curve::line((x, bounds.y1 + 10.0), (x, bounds.y0 - 10.0));
            let seam = NewSeam {
                name: name.into(),
                allowance: self.facing,
                notches: vec![],
            };
            whole.split(&cut, &seam)
        };
        let [narrow_to_line, wide_to_line] = parted("button line", shift)?;
        // Each front reaches past the line by the stand, so that lapped they lie on each other.
        let [narrow, _] = parted("opening edge", shift - stand)?;
        let [_, wide] = parted("opening edge", shift + stand)?;
        let button_line = drawn(&narrow_to_line, "button line");
        let centre = drawn(&piece, "centre");
        let narrow = self.front(narrow, "narrow", &[("button line", button_line)])?;
        let wide = if shift > 0.0 {
            let lines = [("button line", button_line), ("centre front", centre)];
            self.front(wide, "wide", &lines)?
        } else {
            self.front(wide, "wide", &[("button line", button_line)])?
        };

        let doubts = front_doubts | opening.doubts;
        let mut draft = Draft::new(vec![narrow.clone(), wide.clone()], doubts);
        half.check_panel(&mut draft, &piece);
        let seam = half.allowances.seam;
        for (part, which, wanted) in [
            (&narrow_to_line, "narrow", opening.narrow_to_line - seam),
            (&wide_to_line, "wide", opening.wide_to_line - seam),
        ] {
            let what = format!("waist of the {which} front to the button line");
            let found: f64 = waists(part).map(Edge::length).sum();
            draft.check(CheckKind::Seam, what, found - wanted);
        }
        draft.held("shift", shift)
    }
}

/// Edges of the waist, with the darts folded.
fn waists(part: &Piece) -> impl Iterator<Item = &Edge> {
    let edges = part.edges().iter();
    edges.filter(|edge| edge.name.starts_with("waist"))
}

/// The curve of an edge of this name.
fn drawn(piece: &Piece, name: &str) -> Curve {
    let edge = piece.edge(name).and_then(|edge| piece.edges().get(edge));
    edge.map_or(Curve::line(Point::ORIGIN, Point::ORIGIN), |edge| edge.curve)
}
