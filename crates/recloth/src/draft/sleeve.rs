//! A sleeve cut to an armhole: drawn new, or a sleeve there is with a new cap.

use alloc::format;
use alloc::vec;
use alloc::vec::Vec;
use kurbo::{Line, Point, Vec2};

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, Sewn, given_row, row, row_length};
use super::sleeve_cap::Cap;
use super::{Allowances, Draft};
use crate::Error;
use crate::outline::{Corner, Curve, Cutting, Edge, Hand, Piece, Walked, Way, walk_rows};
use crate::sleeve::{cap_ease, cap_for_ease, cap_width_bound};

/// The armhole of a bodice, and how a sleeve is to sit in it.
///
/// The pieces given are half a front and half a back with edges `armhole`, whose ends are the underarm and the shoulder, drawn
/// with the centre at the left as all drafts here are.
///
/// Below the notches the cap is as long as the armhole; all ease lies above them, shared by front and back as their armholes
/// are long. The notches lie at `notch` of each armhole from the underarm: one in front, two behind.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Armhole {
    /// Half the front.
    pub front: Piece,
    /// Half the back.
    pub back: Piece,
    /// Ease of the cap (%), 0 to 15.
    pub ease_pct: f64,
    /// Part of each armhole below its notch, 0.1 to 0.6. A third is common practice, no source.
    pub notch: f64,
}

/// A plain sleeve drawn to an armhole.
///
/// Pieces `sleeve`, and front and back with their notches. Edges of the sleeve: `hem`, `front seam`, `cap front`, `cap back`,
/// `back seam`; the cap has notches `front`, `shoulder` and `back`.
///
/// # Source
/// [`cap_for_ease`], [`cap_width_bound`]. The shape of the cap is common practice, no source.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Sleeve {
    /// What it is sewn into.
    pub armhole: Armhole,
    /// Width at the underarm, ease included (mm), 50 to 2000.
    pub width: f64,
    /// Underarm to hem, along the seam (mm), 10 to 2000.
    pub length: f64,
    /// Width at the hem (mm), 30 to 4000.
    pub hem_width: f64,
    /// Allowances.
    pub allowances: Allowances,
}

/// A sleeve there is, with its cap cut anew to an armhole.
///
/// Its edges `cap front` and `cap back`, or `cap`, are drawn anew between the same underarms; everything else stays. Where the
/// new cap would lie outside the old one, `largest_lift` says how much cloth there is above the old crown: allowance, or a
/// sleeve cut long.
///
/// Pieces: the sleeve under its own name, and front and back with their notches.
///
/// # Source
/// As [`Sleeve`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct RecutSleeve {
    /// What it is sewn into.
    pub armhole: Armhole,
    /// The sleeve; as drawn, its front is at the right.
    pub sleeve: Piece,
    /// How far the new crown may lie above the old one (mm), 0 to 1000.
    pub largest_lift: f64,
}

impl Sleeve {
    /// Drafts the sleeve: three pieces.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure; `NoSolution` naming `armhole` where a piece has no such edge.
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }
}

impl RecutSleeve {
    /// Drafts the sleeve: three pieces.
    ///
    /// # Errors
    /// As [`Sleeve::draft`]; naming `cap` where the sleeve has no such edge, or its edges lie elsewhere.
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }
}

/// Lengths of an armhole and of the cap for it, front and back.
struct Lengths {
    armhole: [f64; 2],
    cap: [f64; 2],
}

impl Armhole {
    fn dials(&mut self) -> Dials<'_> {
        vec![
            ("ease_pct", Dial::Number(&mut self.ease_pct, 0.0, 15.0)),
            ("notch", Dial::Number(&mut self.notch, 0.1, 0.6)),
        ]
    }

    fn lengths(&self) -> Result<Lengths, Error> {
        let front = row_length(&given_row(&self.front, "armhole")?);
        let back = row_length(&given_row(&self.back, "armhole")?);
        Ok(Lengths {
            armhole: [front, back],
            cap: [
                cap_for_ease(front, self.ease_pct)?,
                cap_for_ease(back, self.ease_pct)?,
            ],
        })
    }

    /// A bodice piece with the notch on its armhole, in place of those it had there.
    fn notched(&self, piece: &Piece, name: &str, marks: u32) -> Result<Piece, Error> {
        let row = given_row(piece, "armhole")?;
        let mut left = row_length(&row) * self.notch;
        let mut edges = piece.edges().to_vec();
        for (_, index) in row {
            let edge = &mut edges[index];
            edge.notches.clear();
            let length = edge.length();
            if left >= 0.0 && left <= length {
                *edge = edge.clone().notch(name, left, marks);
                left = -1.0;
            } else {
                left -= length;
            }
        }
        let made = Piece::new(piece.name(), edges)?
            .with_marks(piece.marks().to_vec())?
            .with_cutting(piece.cutting().clone())?;
        match piece.grain() {
            Some(grain) => made.with_grain(grain),
            None => Ok(made),
        }
    }

    /// The two edges of a cap, with their notches.
    fn cap_edges(&self, cap: &Cap, lengths: &Lengths, allowance: f64) -> [Edge; 2] {
        let [front, back] = lengths.armhole.map(|length| length * self.notch);
        let whole = cap.back.length();
        [
            Edge::seam("cap front", cap.front, allowance).notch("front", front, 1),
            Edge::seam("cap back", cap.back, allowance)
                .notch("shoulder", 0.0, 1)
                .notch("back", whole - back, 2),
        ]
    }

    /// The draft of a sleeve in this armhole.
    fn sewn(&self, sleeve: Piece, lengths: &Lengths) -> Result<Draft, Error> {
        let front = self.notched(&self.front, "front", 1)?;
        let back = self.notched(&self.back, "back", 2)?;
        let armhole: f64 = lengths.armhole.iter().sum();
        let cap: f64 = lengths.cap.iter().sum();
        let doubts = cap_ease(armhole, cap)?.doubts;
        let pieces = vec![sleeve.clone(), front.clone(), back.clone()];
        let mut draft = Draft::new(pieces, doubts);
        for (side, piece, way) in [(0, &front, Way::Along), (1, &back, Way::Against)] {
            let (name, edge) = [("front armhole", "cap front"), ("back armhole", "cap back")][side];
            let mine = row(&sleeve, edge);
            let others: Vec<Walked<'_>> = row(piece, "armhole");
            // Where the notches meet, from the underarm: no ease below them.
            let walk = walk_rows(&mine, &others, way);
            for notch in &walk.notches {
                let Some(apart) = notch.difference() else {
                    continue;
                };
                // The back is walked from the shoulder, where its ease lies.
                let ease = if side == 1 { walk.difference } else { 0.0 };
                let what = format!("{name} below the notch");
                draft.check(CheckKind::Seam, what, apart - ease);
            }
            draft.sew(Sewn {
                name,
                edges: mine,
                others,
                way,
                ease: lengths.cap[side] - lengths.armhole[side],
                runs: [None, None],
            });
        }
        draft.length("cap", cap);
        draft.length("armhole", armhole);
        draft.held("ease_pct", self.ease_pct)
    }
}

impl Measured for Sleeve {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = self.armhole.dials();
        dials.extend([
            ("width", Dial::Number(&mut self.width, 50.0, 2e3)),
            ("length", Dial::Number(&mut self.length, 10.0, 2e3)),
            ("hem_width", Dial::Number(&mut self.hem_width, 30.0, 4e3)),
        ]);
        dials.extend(self.allowances.dials());
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let nan = f64::NAN;
        let &Sleeve {
            width,
            length,
            hem_width,
            allowances,
            ..
        } = self;
        let lengths = self.armhole.lengths()?;
        let lean = (hem_width - width) / 2.0;
        if lean.abs() > 0.7 * length {
            let (least, most) = (width - 1.4 * length, width + 1.4 * length);
            return Err(Error::no_solution(
                "hem_width",
                hem_width,
                least.max(30.0),
                most,
            ));
        }
        // Square to the seams, cap and hem run on over the sleeve's seam.
        let slope = libm::asin(lean / length);
        let flat = cap_width_bound(lengths.cap.iter().sum(), 0.0)?;
        if width > flat {
            return Err(Error::no_solution("width", width, nan, flat));
        }
        let cap = Cap::new(width, lengths.cap, [-slope, -slope])
            .ok_or(Error::no_solution("width", width, nan, nan))?;
        let fall = length * libm::cos(slope);
        let (front, back) = (Point::ORIGIN, Point::new(-width, 0.0));
        let hem_front = Point::new(lean, -fall);
        let hem_back = Point::new(-width - lean, -fall);
        let out = Vec2::new(libm::cos(slope), libm::sin(slope));
        let reach = hem_width / 3.0;
        let hem = if slope.abs() < 1e-6 {
            Curve::line(hem_back, hem_front)
        } else {
            Curve::cubic(
                hem_back,
                hem_back + Vec2::new(out.x, -out.y) * reach,
                hem_front - out * reach,
                hem_front,
            )
        };
        let [cap_front, cap_back] = self.armhole.cap_edges(&cap, &lengths, allowances.seam);
        let seam = |name: &str, from, to| Edge::seam(name, Curve::line(from, to), allowances.seam);
        let edges = vec![
            Edge::hem("hem", hem, allowances.hem).corner(Corner::MirroredOnThis),
            seam("front seam", hem_front, front).notch("seam", length / 2.0, 1),
            cap_front,
            cap_back,
            seam("back seam", back, hem_back)
                .notch("seam", length / 2.0, 1)
                .corner(Corner::MirroredOnNext),
        ];
        let crown = cap.front.end().x;
        let piece = Piece::new("sleeve", edges)
            .map_err(|_| Error::no_solution("width", width, nan, nan))?
            .with_grain(Line::new((crown, -0.7 * fall), (crown, 0.3 * cap.height)))?
            .with_cutting(Cutting {
                count: 2,
                hand: Hand::Mirrored,
                ..Cutting::default()
            })?;
        let mut draft = self.armhole.sewn(piece.clone(), &lengths)?;
        draft.sew(Sewn {
            name: "sleeve",
            edges: row(&piece, "front seam"),
            others: row(&piece, "back seam"),
            way: Way::Against,
            ease: 0.0,
            runs: [Some("hem"), Some("cap")],
        });
        draft.held("width", width)
    }
}

impl Measured for RecutSleeve {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = self.armhole.dials();
        dials.push((
            "largest_lift",
            Dial::Number(&mut self.largest_lift, 0.0, 1e3),
        ));
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let nan = f64::NAN;
        let no_cap = Error::no_solution("cap", nan, nan, nan);
        let lengths = self.armhole.lengths()?;
        let all = self.sleeve.edges();
        let count = all.len();
        let is_cap = |index: usize| all[index % count].name.starts_with("cap");
        let first = (0..count)
            .find(|&index| is_cap(index) && !is_cap(index + count - 1))
            .ok_or(no_cap)?;
        let caps = (first..first + count)
            .take_while(|&index| is_cap(index))
            .count();
        if caps == count || (0..count).filter(|&index| is_cap(index)).count() != caps {
            return Err(no_cap);
        }
        let last = (first + caps - 1) % count;
        let (front, back) = (all[first].curve.start(), all[last].curve.end());
        let across = front - back;
        let width = libm::hypot(across.x, across.y);
        if width < 1.0 {
            return Err(no_cap);
        }
        // Square to the seams beside the cap: how much each leans from square to the underarm line.
        let before = all[(first + count - 1) % count].curve.end_tangent();
        let after = all[(last + 1) % count].curve.start_tangent();
        let lean = |seam: Vec2| {
            let along = across * (1.0 / width);
            let out = seam.x * along.x + seam.y * along.y;
            libm::asin(out.clamp(-1.0, 1.0))
        };
        // Up the front seam and down the back one: a sleeve wider at the hem leans back along the line on both.
        let slopes = [lean(before), lean(after)].map(|slope| slope.clamp(-0.8, 0.8));
        let narrow = width / lengths.cap.iter().sum::<f64>();
        let cap = Cap::new(width, lengths.cap, slopes).ok_or({
            let least = 100.0 * (narrow * (1.0 + self.armhole.ease_pct / 100.0) - 1.0);
            Error::no_solution("ease_pct", self.armhole.ease_pct, least, nan)
        })?;
        let new = cap.laid(front, back);
        let above = |point: Point| {
            let up = Vec2::new(-across.y, across.x) * (1.0 / width);
            let from = point - back;
            from.x * up.x + from.y * up.y
        };
        let old_height = (first..first + caps)
            .flat_map(|index| {
                let curve = &all[index % count].curve;
                let span = curve.length();
                (0..=32).map(move |step| above(curve.at(span * f64::from(step) / 32.0).0))
            })
            .fold(0.0, f64::max);
        let raise = cap.height - old_height;
        if raise > self.largest_lift {
            return Err(Error::no_solution(
                "largest_lift",
                self.largest_lift,
                raise,
                nan,
            ));
        }
        let allowance = all[first].allowance;
        let mut edges = Vec::new();
        for step in 0..count - caps {
            edges.push(all[(last + 1 + step) % count].clone());
        }
        edges.extend(self.armhole.cap_edges(&new, &lengths, allowance));
        let piece = self
            .sleeve
            .remade(edges, self.sleeve.marks().to_vec(), self.sleeve.grain())
            .map_err(|_| Error::no_solution("ease_pct", self.armhole.ease_pct, nan, nan))?;
        let mut draft = self.armhole.sewn(piece, &lengths)?;
        draft.length("crown above the old one", raise.max(0.0));
        draft.held("ease_pct", self.armhole.ease_pct)
    }
}
