//! A skirt panel with darts, from the width there is and the measures wanted.

use alloc::format;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;
use kurbo::{Line, Point, Vec2};

use super::{Allowances, Draft};
use crate::Error;
use crate::dart::dart_in_panel;
use crate::outline::{Corner, Curve, Cutting, Dart, Edge, Hand, Mark, Piece, Role, Segment};

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

/// Half a skirt front or back with darts at the waist, cut from a panel whose width is given.
///
/// What the panel is wider than the waist goes into the darts, no more than `largest_intake` each; what is left goes at
/// the side seam ([`dart_in_panel`]). Darts lie evenly along the waist. The waist is drawn so that with the darts folded
/// it is one arc, square to every dart leg; each dart has a cap of the same arc on both sides of its middle, so that its
/// fold, pressed to either side, ends in the waist edge. The side is straight from hem to hip and curved above it, square
/// to the waist. A flared hem is an arc square to centre and side.
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
    /// Waist to hem along the centre (mm), more than `hip_depth`, to 5000.
    pub length: f64,
    /// Width straight across at the hem (mm), 1 to 10 000.
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
        self.draft_with(Role::Hem)
    }

    /// As `draft`, with the lower edge in this role.
    pub(super) fn draft_with(&self, lower: Role) -> Result<Draft, Error> {
        let panel_width = Error::check("panel_width", self.panel_width, 1.0, 5e3)?;
        let waist = Error::check("waist", self.waist, 1.0, 5e3)?;
        let hip = Error::check("hip", self.hip, 1.0, 5e3)?;
        let hip_depth = Error::check("hip_depth", self.hip_depth, 10.0, 1e3)?;
        let length = Error::check("length", self.length, 1.0, 5e3)?;
        let hem_width = Error::check("hem_width", self.hem_width, 1.0, 1e4)?;
        Error::check_count("darts", self.darts, 0, 8)?;
        Error::check("largest_intake", self.largest_intake, 0.0, 500.0)?;
        let dart_length = Error::check("dart_length", self.dart_length, 1.0, 1e3)?;
        let side_rise = Error::check("side_rise", self.side_rise, 0.0, 100.0)?;
        let allowances = self.allowances.check()?;
        if waist > panel_width {
            return Err(Error::no_solution("waist", waist, 1.0, panel_width));
        }
        if length <= hip_depth {
            return Err(Error::no_solution("length", length, hip_depth, f64::NAN));
        }
        if self.darts > 0 && dart_length >= hip_depth {
            return Err(Error::no_solution(
                "dart_length",
                dart_length,
                f64::NAN,
                hip_depth,
            ));
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
        let line = WaistLine::rising(waist, darts, intake, dart_length, side_rise).ok_or(
            Error::no_solution("side_rise", side_rise, f64::NAN, f64::NAN),
        )?;
        let top = line.end;
        if hip < 0.8 * top.x {
            return Err(Error::no_solution("hip", hip, 0.8 * top.x, f64::NAN));
        }

        let hip_point = Point::new(hip, -hip_depth);
        let (hem, hem_end) = hem_arc(hip_point, hem_width, length);
        let up = unit(hip_point - hem_end);
        let reach = libm::hypot(top.x - hip_point.x, top.y - hip_point.y) / 3.0;
        let (sin, cos) = libm::sincos(line.slope);
        let side = Curve::cubic(
            hip_point,
            hip_point + up * reach,
            top + Vec2::new(sin, -cos) * reach,
            top,
        );
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
        let lower_width = if lower == Role::Hem {
            allowances.hem
        } else {
            allowances.seam
        };
        let (before, after) = if lower == Role::Hem {
            (Corner::MirroredOnNext, Corner::MirroredOnThis)
        } else {
            (Corner::default(), Corner::default())
        };
        let side_lower = Curve::line(hem_end, hip_point);
        let hip_at = side_lower.length();
        let mut edges = vec![
            centre.corner(before),
            Edge::new("hem", Curve::Segment(hem), lower, lower_width).corner(after),
            Edge::seam("side lower", side_lower, allowances.seam).notch("hip", hip_at, 1),
            Edge::seam("side upper", side, allowances.seam),
        ];
        edges.extend(line.edges(allowances.seam));
        let piece = Piece::new(self.name.as_str(), edges)
            .and_then(|piece| piece.with_marks(line.darts()))
            // Whatever is left to go wrong is a side that runs across the waist or the darts.
            .map_err(|_| Error::no_solution("hip", hip, top.x, f64::NAN))?
            .with_grain(Line::new(
                (hip / 2.0, -0.85 * length),
                (hip / 2.0, -0.5 * length),
            ))?
            .with_cutting(cutting)?;
        Ok(Draft::new(vec![piece], doubts))
    }
}

/// The hem: straight, or an arc square to the centre and to the side, which runs from the hip to `width` at the hem.
fn hem_arc(hip: Point, width: f64, length: f64) -> (Segment, Point) {
    let start = Point::new(0.0, -length);
    let flare = libm::atan2(width - hip.x, hip.y + length);
    if flare.abs() < 1e-6 {
        let end = Point::new(width, -length);
        return (Segment::line(start, end), end);
    }
    let (sin, cos) = libm::sincos(flare);
    // Where the side, run on, meets the centre line: below the hem, and the radius negative, if the skirt narrows.
    let apex = hip.y + hip.x * cos / sin;
    let radius = apex + length;
    let end = Point::new(radius * sin, apex - radius * cos);
    (Segment::arc(start, end, libm::tan(flare / 4.0)), end)
}

/// A waist line from the centre to the side, with open darts.
struct WaistLine {
    /// Parts of the waist, from the centre, between darts.
    waists: Vec<Segment>,
    /// For each dart: its point, and its cap from the centre's leg to the middle and on to the side's leg.
    caps: Vec<(Point, Segment, Segment)>,
    end: Point,
    /// Angle of the line at its end, in radians.
    slope: f64,
}

impl WaistLine {
    /// The line that ends this much higher than it starts.
    fn rising(waist: f64, darts: u32, intake: f64, depth: f64, rise: f64) -> Option<WaistLine> {
        let at = |slope: f64| WaistLine::new(waist, darts, intake, depth, slope);
        let (mut low, mut high) = (-0.6, 0.6);
        if at(low).end.y > rise || at(high).end.y < rise {
            return None;
        }
        for _ in 0..60 {
            let middle = (low + high) / 2.0;
            if at(middle).end.y < rise {
                low = middle;
            } else {
                high = middle;
            }
        }
        Some(at((low + high) / 2.0))
    }

    fn new(waist: f64, darts: u32, intake: f64, depth: f64, slope: f64) -> WaistLine {
        let angle = 2.0 * libm::atan2(intake / 2.0, depth);
        let leg = libm::hypot(intake / 2.0, depth);
        // With every dart folded the line is one arc.
        let turn = f64::from(darts) * angle + slope;
        let curvature = turn / waist;
        let parts = f64::from(darts + 1);
        let (mut at, mut heading) = (Point::ORIGIN, 0.0);
        let (mut waists, mut caps) = (Vec::new(), Vec::new());
        for part in 0..=darts {
            let part_turn = turn / parts;
            let half = part_turn / 2.0;
            let shortened = if half.abs() < 1e-4 {
                1.0 - half * half / 6.0
            } else {
                libm::sin(half) / half
            };
            let next = at + towards(heading + half) * (waist / parts * shortened);
            waists.push(Segment::arc(at, next, libm::tan(part_turn / 4.0)));
            heading += part_turn;
            at = next;
            if part == darts {
                break;
            }
            let down = -core::f64::consts::FRAC_PI_2;
            let point = at + towards(heading + down) * leg;
            let back = |turned: f64| towards(heading - down - turned);
            // The middle of the cap: where the arc, run on past the leg, crosses the middle of the dart.
            let (sin, cos) = libm::sincos(angle / 2.0);
            let reach = 1.0 + curvature * leg;
            let middle = (2.0 * leg + curvature * leg * leg)
                / (reach * cos + libm::sqrt((1.0 - reach * reach * sin * sin).max(0.0)));
            let cap_turn = libm::asin((curvature * middle * sin).clamp(-1.0, 1.0));
            let top = point + back(angle / 2.0) * middle;
            let other = point + back(angle) * leg;
            let bulge = libm::tan(cap_turn / 4.0);
            caps.push((
                point,
                Segment::arc(at, top, bulge),
                Segment::arc(top, other, bulge),
            ));
            at = other;
            heading -= angle;
        }
        WaistLine {
            waists,
            caps,
            end: at,
            slope,
        }
    }

    /// Its edges from the side to the centre, as they lie in the ring.
    fn edges(&self, allowance: f64) -> Vec<Edge> {
        let mut edges = Vec::new();
        for index in (0..self.waists.len()).rev() {
            let number = index + 1;
            let curve = Curve::Segment(self.waists[index].reversed());
            let span = curve.length();
            let mut waist = Edge::seam(format!("waist {number}"), curve, allowance);
            if index < self.caps.len() {
                waist = waist.notch(format!("dart {number}"), 0.0, 1);
            }
            if index > 0 {
                waist = waist.notch(format!("dart {index}"), span, 1);
            }
            edges.push(waist);
            if index > 0 {
                let (_, centre, side) = self.caps[index - 1];
                let cap = |where_: &str, s: Segment| {
                    let curve = Curve::Segment(s.reversed());
                    Edge::seam(format!("cap {index} {where_}"), curve, allowance)
                };
                edges.push(cap("side", side));
                edges.push(cap("centre", centre));
            }
        }
        edges
    }

    fn darts(&self) -> Vec<Mark> {
        let dart = |(index, (point, centre, side)): (usize, &(Point, Segment, Segment))| {
            Mark::Dart(Dart {
                name: format!("dart {}", index + 1),
                point: *point,
                legs: [centre.start, side.end],
            })
        };
        self.caps.iter().enumerate().map(dart).collect()
    }
}

/// A step of length 1 in a direction given in radians.
fn towards(angle: f64) -> Vec2 {
    let (sin, cos) = libm::sincos(angle);
    Vec2::new(cos, sin)
}

fn unit(v: Vec2) -> Vec2 {
    v * (1.0 / libm::hypot(v.x, v.y))
}
