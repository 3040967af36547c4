//! A skirt panel with darts, from the width there is and the measures wanted.

use alloc::format;
use alloc::string::String;
use alloc::vec;
use kurbo::{Line, Point, Vec2};

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, Sewn, row, row_length, rows};
use super::waist_line::{WaistLine, towards};
use super::{Allowances, Draft};
use crate::Error;
use crate::dart::dart_in_panel;
use crate::dust::short_of;
use crate::outline::{Corner, Curve, Cutting, Edge, Hand, Piece, Role, Way};

/// What the centre line of a panel is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Centre {
    /// A fold of the cloth: one piece, half of it drawn.
    #[default]
    Fold,
    /// A seam: two pieces, a mirrored pair.
    Seam,
}

/// A panel's side seam, from hem to hip and from hip to waist (mm).
#[derive(Clone, Copy, Debug)]
pub(super) struct SideSeam {
    pub(super) lower: f64,
    /// The waist is trued at the side until the seam is so long; as drawn if none.
    pub(super) upper: Option<f64>,
}

/// The least there is of a skirt below the hip (mm).
pub(super) const LEAST_BELOW: f64 = 10.0;
/// The most a side leans: its sine, of some 70 degrees.
const MOST_FLARED: f64 = 0.94;
/// The most a side seam is trued at the waist to match another (mm).
const MOST_TRUED: f64 = 40.0;

/// Half a skirt front or back with darts at the waist, cut from a panel whose width is given.
///
/// What the panel is wider than the waist goes into the darts, no more than `largest_intake` each; what is left goes at
/// the side seam ([`dart_in_panel`]). Darts lie evenly along the waist. The waist is drawn so that with the darts folded
/// it is one arc, square to every dart leg; each dart has a cap of the same arc on both sides of its middle, so that its
/// fold, pressed to either side, ends in the waist edge. The side is straight from hem to hip and curved above it, square
/// to the waist. The hem is square to centre and side, and as far below the hip at the side as at the centre, so that it
/// hangs level.
///
/// Edges, counter-clockwise: `centre`, `hem`, `side lower`, `side upper` (with a notch `hip` between them), then from the
/// side `waist N`, `cap N side`, `cap N centre`, ... `waist 1`.
///
/// # Source
/// Plane geometry. The places of the darts and the square side are common practice, no source.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SkirtPanel {
    /// Name of the piece.
    pub name: String,
    /// Width there is at the waist, between centre and side seam lines (mm), 1 to 5000.
    pub panel_width: f64,
    /// Finished waist of this half panel, ease included (mm), 1 to 5000, at most `panel_width`.
    pub waist: f64,
    /// Finished width at the hip, ease included (mm), 1 to 5000, at least 0.8 of the drawn waist.
    pub hip: f64,
    /// Waist to hip along the centre (mm), 10 to 1000.
    pub hip_depth: f64,
    /// Waist to hem along the centre (mm), at least 10 more than `hip_depth`, to 5000.
    pub length: f64,
    /// Width at the hem, centre to side (mm), 1 to 10 000; the side leans by no more than 70°.
    pub hem_width: f64,
    /// Number of darts, 0 to 8.
    pub darts: u32,
    /// The most one dart may take in (mm), 0 to 500.
    pub largest_intake: f64,
    /// Waist edge to point along the middle of a dart (mm), 1 to 1000, less than `hip_depth`.
    pub dart_length: f64,
    /// How much higher the waist is at the side than at the centre (mm), 0 to 100. 10 to 12 is common practice, no source.
    pub side_rise: f64,
    /// What the centre line is.
    pub centre: Centre,
    /// Allowances; the waist has that of a seam.
    pub allowances: Allowances,
}

impl SkirtPanel {
    /// Drafts the panel: one piece.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure.
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }

    /// The panel with its lower edge in this role, and its side seam, from hem to hip and from hip to waist, as long as
    /// that of another piece, if there is one.
    pub(super) fn draw(&self, lower: Role, side: Option<SideSeam>) -> Result<(Piece, u64), Error> {
        let &SkirtPanel {
            panel_width,
            waist,
            hip,
            hip_depth,
            length,
            hem_width,
            dart_length,
            side_rise,
            allowances,
            ..
        } = self;
        if waist > panel_width {
            return Err(Error::no_solution("waist", waist, 1.0, panel_width));
        }
        if length - hip_depth < LEAST_BELOW {
            let least = hip_depth + LEAST_BELOW;
            return Err(Error::no_solution("length", length, least, f64::NAN));
        }
        let nan = f64::NAN;
        if self.darts > 0 && dart_length >= hip_depth {
            let most = short_of(hip_depth);
            return Err(Error::no_solution("dart_length", dart_length, nan, most));
        }
        let (mut intake, mut doubts) = (0.0, 0);
        if self.darts > 0 {
            let shared = dart_in_panel(
                panel_width,
                waist,
                self.darts,
                self.largest_intake,
                dart_length,
            )?;
            (intake, doubts) = (shared.intake_each, shared.doubts);
        }
        let darts = if intake > 0.0 { self.darts } else { 0 };
        let line = |rise: f64| WaistLine::rising(waist, darts, intake, dart_length, rise);
        let upper = |line: &WaistLine| self.side_upper(line);
        let mut waist_line = line(side_rise)?;
        if let Some(wanted) = side.and_then(|side| side.upper) {
            // The side that meets another is trued at the waist until both are as long.
            let (mut low, mut high) = (side_rise - MOST_TRUED, side_rise + MOST_TRUED);
            for _ in 0..50 {
                let middle = (low + high) / 2.0;
                if line(middle).is_ok_and(|line| upper(&line).length() < wanted) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            waist_line = line((low + high) / 2.0)?;
        }
        let top = waist_line.end;
        if hip < 0.8 * top.x {
            return Err(Error::no_solution("hip", hip, 0.8 * top.x, nan));
        }

        let drop = length - hip_depth;
        let below = side.map_or(drop, |side| side.lower);
        let widest = below * MOST_FLARED;
        if (hem_width - hip).abs() > widest {
            let (least, most) = ((hip - widest).max(1.0), hip + widest);
            return Err(Error::no_solution("hem_width", hem_width, least, most));
        }
        let hip_point = Point::new(hip, -hip_depth);
        let flare = libm::asin((hem_width - hip) / below);
        let hem_end = hip_point + Vec2::new(hem_width - hip, -below * libm::cos(flare));
        let hem = hem_curve((0.0, -length).into(), hem_end, flare);
        let centre = Curve::line(Point::ORIGIN, (0.0, -length));
        let (centre, cutting) = match self.centre {
            Centre::Fold => (Edge::fold("centre", centre), Cutting::default()),
            Centre::Seam => (
                Edge::seam("centre", centre, allowances.seam),
                Cutting {
                    count: 2,
                    hand: Hand::Mirrored,
                    ..Cutting::default()
                },
            ),
        };
        let (width, before, after) = if lower == Role::Hem {
            (
                allowances.hem,
                Corner::MirroredOnNext,
                Corner::MirroredOnThis,
            )
        } else {
            (allowances.seam, Corner::default(), Corner::default())
        };
        let side_lower = Curve::line(hem_end, hip_point);
        let hip_at = side_lower.length();
        let mut edges = vec![
            centre.corner(before),
            Edge::new("hem", hem, lower, width).corner(after),
            Edge::seam("side lower", side_lower, allowances.seam).notch("hip", hip_at, 1),
            Edge::seam("side upper", upper(&waist_line), allowances.seam),
        ];
        edges.extend(waist_line.edges(allowances.seam));
        let piece = Piece::new(self.name.as_str(), edges)
            .and_then(|piece| piece.with_marks(waist_line.darts()))
            // Whatever is left to go wrong is a side that runs across the waist or the darts.
            .map_err(|_| Error::no_solution("hip", hip, nan, nan))?
            .with_grain(Line::new(
                (hip / 2.0, -0.85 * length),
                (hip / 2.0, -0.5 * length),
            ))?
            .with_cutting(cutting)?;
        Ok((piece, doubts))
    }

    /// The side from the hip to the end of the waist, square to the waist, running on from the flare below.
    fn side_upper(&self, line: &WaistLine) -> Curve {
        let hip = Point::new(self.hip, -self.hip_depth);
        let below = self.length - self.hip_depth;
        let lean = libm::asin(((self.hem_width - self.hip) / below).clamp(-1.0, 1.0));
        let up = towards(core::f64::consts::FRAC_PI_2 + lean);
        let reach = libm::hypot(line.end.x - hip.x, line.end.y - hip.y) / 3.0;
        let (sin, cos) = libm::sincos(line.slope);
        Curve::cubic(
            hip,
            hip + up * reach,
            line.end + Vec2::new(sin, -cos) * reach,
            line.end,
        )
    }

    /// Length of the drawn side seam of a panel.
    pub(super) fn side_seam(piece: &Piece) -> SideSeam {
        SideSeam {
            lower: row_length(&row(piece, "side lower")),
            upper: Some(row_length(&row(piece, "side upper"))),
        }
    }

    /// Adds what can be checked on a panel alone.
    pub(super) fn check_panel(&self, draft: &mut Draft, piece: &Piece) {
        draft.check_runs(piece);
        if self.centre == Centre::Seam {
            let centre = row(piece, "centre");
            draft.sew(Sewn {
                name: &format!("{} centre", piece.name()),
                edges: centre.clone(),
                others: centre,
                way: Way::Along,
                ease: 0.0,
                runs: [Some("waist"), Some("hem")],
            });
        }
        let below = row_length(&row(piece, "side lower")) - (self.length - self.hip_depth);
        let what = format!("hem of {} at the side", piece.name());
        draft.check(CheckKind::Level, what, below);
        let waist = row_length(&rows(piece, &["waist"])) - self.waist;
        let what = format!("waist of {}, darts folded", piece.name());
        draft.check(CheckKind::Seam, what, waist);
    }
}

impl Measured for SkirtPanel {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = vec![
            ("panel_width", Dial::Number(&mut self.panel_width, 1.0, 5e3)),
            ("waist", Dial::Number(&mut self.waist, 1.0, 5e3)),
            ("hip", Dial::Number(&mut self.hip, 1.0, 5e3)),
            ("hip_depth", Dial::Number(&mut self.hip_depth, 10.0, 1e3)),
            ("length", Dial::Number(&mut self.length, 1.0, 5e3)),
            ("hem_width", Dial::Number(&mut self.hem_width, 1.0, 1e4)),
            ("darts", Dial::Count(&mut self.darts, 0, 8)),
            (
                "largest_intake",
                Dial::Number(&mut self.largest_intake, 0.0, 500.0),
            ),
            ("dart_length", Dial::Number(&mut self.dart_length, 1.0, 1e3)),
            ("side_rise", Dial::Number(&mut self.side_rise, 0.0, 100.0)),
        ];
        dials.extend(self.allowances.dials());
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let (piece, doubts) = self.draw(Role::Hem, None)?;
        let mut draft = Draft::new(vec![piece.clone()], doubts);
        self.check_panel(&mut draft, &piece);
        draft.held("hem_width", self.hem_width)
    }
}

/// The hem from the centre, square to it, to the side, square to that, which leans by `flare` (radians). It runs level as far as
/// it can: where the side is squared, it does not dip below the centre by more than a hair.
fn hem_curve(start: Point, end: Point, flare: f64) -> Curve {
    if flare.abs() < 1e-6 {
        return Curve::line(start, end);
    }
    let across = libm::hypot(end.x - start.x, end.y - start.y);
    let along = towards(flare);
    // Steered from where the square to the side meets the level of the centre.
    let level = (end.y - start.y) / along.y;
    let reach = level.clamp(across / 8.0, across / 2.0);
    Curve::cubic(
        start,
        start + Vec2::new(across / 2.0, 0.0),
        end - along * reach,
        end,
    )
}
