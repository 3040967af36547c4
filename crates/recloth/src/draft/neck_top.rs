//! A V or square neck cut into a bodice there is.

use alloc::format;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;
use kurbo::{Point, Vec2};

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, Sewn, given_row, row, row_length, rows};
use super::trued::trued;
use super::{Draft, upright};
use crate::Error;
use crate::hypotenuse::hypotenuse;
use crate::neck::v_neck;
use crate::outline::{Curve, Edge, Piece, Place, Role, Walked, Way};

/// How much of a shoulder stays at least, and of a centre below the facing (mm).
const LEAST: f64 = 20.0;

/// What shape a neck is cut to in front.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum NeckShape {
    /// Straight from the shoulder to a point at the centre front.
    #[default]
    V,
    /// Down from the shoulder, and square across.
    Square,
}

/// A top with a V or square neck, cut from a bodice there is: front, back and their facings.
///
/// The pieces given are half a front and half a back, each on a fold at its `centre`, with edges `neck` and `shoulder` that
/// meet, drawn with the centre at the left as all drafts here are. Both shoulders are shortened alike from the neck; the back
/// neck meets the front's at the shoulder without a kink, and is square to the centre back. The facings are as long
/// along the neck: trim them a little smaller, so that the seam rolls under.
///
/// Pieces: front and back under their own names, `front neck facing`, `back neck facing`. Lengths: `stay tape`, one side of a V.
///
/// # Source
/// [`v_neck`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct NeckTop {
    /// Half the front, on a fold.
    pub front: Piece,
    /// Half the back, on a fold.
    pub back: Piece,
    /// What shape the front neck gets.
    pub shape: NeckShape,
    /// Taken off the shoulder, from the old neck (mm), 0 to 500, all but 20 of the shoulder at most.
    pub off_shoulder: f64,
    /// From the new neck's end at the shoulder straight down to its lowest place (mm), 10 to 1000.
    pub depth: f64,
    /// From the new neck's end at the back shoulder straight down to the centre back (mm), 5 to 1000.
    pub back_depth: f64,
    /// Depth of the front's facing (mm), 10 to 300; the back's is as deep as meets it at the shoulder.
    pub facing: f64,
    /// Stay tape over the edge of a V, 0.9 to 1.
    pub stay_ratio: f64,
    /// Seam allowance of the neck (mm), 0 to 1000.
    pub allowance: f64,
}

impl NeckTop {
    /// Drafts the top: four pieces.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure; `NoSolution` naming `neck`, `shoulder` or `centre` where a
    /// piece has no such edges.
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }

    /// A piece with a new neck of these curves, from the shoulder to the centre.
    fn cut(&self, piece: &Piece, from: Place, neck: Vec<(String, Curve)>) -> Result<Piece, Error> {
        let end = neck.last().map_or(Point::ORIGIN, |(_, curve)| curve.end());
        let (to, _) = piece.place(end);
        let mut edges = piece.run(to, from);
        edges.extend(
            neck.into_iter()
                .map(|(name, curve)| Edge::new(name, curve, Role::Seam, self.allowance)),
        );
        piece.remade(edges, piece.marks().to_vec(), piece.grain())
    }
}

/// Where a half bodice's new neck starts: the place on the shoulder, the point, and the shoulder's direction to the neck.
struct Start {
    place: Place,
    point: Point,
    along: Vec2,
    centre: f64,
}

impl Start {
    fn new(piece: &Piece, off: f64) -> Result<Start, Error> {
        given_row(piece, "neck")?;
        let shoulder = given_row(piece, "shoulder")?;
        let nan = f64::NAN;
        let no_centre = Error::no_solution("centre", nan, nan, nan);
        let fold = piece.fold().ok_or(no_centre)?;
        let line = &piece.edges()[fold].curve;
        let (down, up) = (line.end(), line.start());
        if (down.x - up.x).abs() > 1e-6 || down.y > up.y {
            return Err(no_centre);
        }
        // The shoulder's last edge ends at the neck.
        let (_, edge) = shoulder[shoulder.len() - 1];
        let length = piece.edges()[edge].length();
        if off > length - LEAST {
            let most = length - LEAST;
            return Err(Error::no_solution("off_shoulder", off, nan, most));
        }
        let distance = length - off;
        let (point, along) = piece.edges()[edge].curve.at(distance);
        Ok(Start {
            place: Place { edge, distance },
            point,
            along,
            centre: up.x,
        })
    }

    /// How far the neck's end lies from the centre.
    fn half_width(&self) -> f64 {
        self.point.x - self.centre
    }

    /// The centre at this depth below the neck's end, if that and the facing below it are on the piece. The facing reaches
    /// `under` the neck there.
    fn below(
        &self,
        piece: &Piece,
        argument: &'static str,
        depth: f64,
        under: impl Fn(f64) -> f64,
    ) -> Result<Point, Error> {
        let fold = piece.fold().map(|fold| &piece.edges()[fold].curve);
        let lowest = fold.map_or(0.0, |line| line.end().y);
        let highest = fold.map_or(0.0, |line| line.start().y);
        let least = (self.point.y - highest).max(0.0);
        let whole = self.point.y - lowest - LEAST;
        if depth < least || depth + under(depth) > whole {
            let (mut low, mut high) = (0.0, whole.max(0.0));
            for _ in 0..50 {
                let middle = (low + high) / 2.0;
                if middle + under(middle) > whole {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return Err(Error::no_solution(argument, depth, least, low));
        }
        Ok(Point::new(self.centre, self.point.y - depth))
    }
}

impl Measured for NeckTop {
    fn dials(&mut self) -> Dials<'_> {
        vec![
            (
                "off_shoulder",
                Dial::Number(&mut self.off_shoulder, 0.0, 500.0),
            ),
            ("depth", Dial::Number(&mut self.depth, 10.0, 1e3)),
            ("back_depth", Dial::Number(&mut self.back_depth, 5.0, 1e3)),
            ("facing", Dial::Number(&mut self.facing, 10.0, 300.0)),
            ("stay_ratio", Dial::Number(&mut self.stay_ratio, 0.9, 1.0)),
            ("allowance", Dial::Number(&mut self.allowance, 0.0, 1e3)),
        ]
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let nan = f64::NAN;
        let front = Start::new(&self.front, self.off_shoulder)?;
        let low = front.below(&self.front, "depth", self.depth, |depth| match self.shape {
            // Measured down the centre, the facing of a V is deeper than square to its edge.
            NeckShape::V => self.facing * hypotenuse(1.0, depth / front.half_width().max(1e-3)),
            NeckShape::Square => self.facing,
        })?;
        let named = |name: &str| String::from(name);
        let neck = match self.shape {
            NeckShape::V => vec![(named("neck"), Curve::line(front.point, low))],
            NeckShape::Square => {
                let corner = Point::new(front.point.x, low.y);
                vec![
                    (named("neck side"), Curve::line(front.point, corner)),
                    (named("neck"), Curve::line(corner, low)),
                ]
            }
        };
        let down = neck[0].1.start_tangent();
        let deep = |_| Error::no_solution("depth", self.depth, nan, nan);
        let front_piece = self.cut(&self.front, front.place, neck).map_err(deep)?;

        // The back neck leaves the shoulder at the angle that the front neck leaves of half a turn.
        let back = Start::new(&self.back, self.off_shoulder)?;
        let back_low = back.below(&self.back, "back_depth", self.back_depth, |_| self.facing)?;
        let (cos, sin) = (
            front.along.x * down.x + front.along.y * down.y,
            front.along.x * down.y - front.along.y * down.x,
        );
        // Turned left by as much as the front's is short of a half turn.
        let (cos, sin) = (-cos, sin);
        let away = Vec2::new(
            back.along.x * cos - back.along.y * sin,
            back.along.x * sin + back.along.y * cos,
        );
        let reach = back.half_width().min(self.back_depth);
        let curve = Curve::cubic(
            back.point,
            back.point + away * (0.55 * reach),
            back_low + Vec2::new(0.55 * back.half_width(), 0.0),
            back_low,
        );
        let deep = |_| Error::no_solution("back_depth", self.back_depth, nan, nan);
        let back_neck = vec![(named("neck"), curve)];
        let back_piece = self.cut(&self.back, back.place, back_neck).map_err(deep)?;

        let front_facing = faced(&front_piece, "front neck facing", self.facing)
            .ok_or(Error::no_solution("facing", self.facing, nan, nan))?;
        // The back's is as deep as meets the front's at the shoulder.
        let wanted = row_length(&row(&front_facing, "shoulder"));
        let (mut low, mut high) = (0.5 * self.facing, 1.5 * self.facing);
        for _ in 0..24 {
            let middle = (low + high) / 2.0;
            let tried = faced(&back_piece, "back neck facing", middle);
            let found = tried.map(|facing| row_length(&row(&facing, "shoulder")));
            if found.is_some_and(|found| found < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        let back_facing = faced(&back_piece, "back neck facing", low).ok_or(Error::no_solution(
            "facing",
            self.facing,
            nan,
            nan,
        ))?;

        let pieces = vec![
            front_piece.clone(),
            back_piece.clone(),
            front_facing.clone(),
            back_facing.clone(),
        ];
        let mut draft = Draft::new(pieces, 0);
        // Front and back have the centre at the left: one of them is sewn mirrored.
        let shoulders = |name: &'static str, one, other, runs| Sewn {
            name,
            edges: row(one, "shoulder"),
            others: row(other, "shoulder"),
            way: Way::Along,
            ease: 0.0,
            runs,
        };
        let lost =
            row_length(&row(&self.front, "shoulder")) - row_length(&row(&self.back, "shoulder"));
        let mut seam = shoulders("shoulder", &front_piece, &back_piece, [None, Some("neck")]);
        // A bodice may ease its back shoulder in: that stays.
        seam.ease = lost;
        draft.sew(seam);
        draft.sew(shoulders(
            "shoulder of the facings",
            &front_facing,
            &back_facing,
            [None, Some("neck")],
        ));
        for (piece, facing) in [(&front_piece, &front_facing), (&back_piece, &back_facing)] {
            let found = row_length(&neck_row(facing)) - row_length(&neck_row(piece));
            let what = format!("neck edge of {} against {}", facing.name(), piece.name());
            draft.check(CheckKind::Seam, what, found);
        }
        if self.shape == NeckShape::V {
            let edge = v_neck(front.half_width().max(0.0), self.depth, self.stay_ratio)?;
            draft.length("stay tape, one side", edge.stay);
        }
        draft.held("back_depth", self.back_depth)
    }
}

/// The facing of a piece's neck, if the piece is large enough: what lies between its neck and the neck moved inward, from the
/// shoulder to the centre.
fn faced(piece: &Piece, name: &str, depth: f64) -> Option<Piece> {
    let edges: Vec<usize> = neck_row(piece).into_iter().map(|(_, edge)| edge).collect();
    let moved = piece.shift_edges(&edges, -depth).ok()?;
    let mut inner: Vec<Curve> = moved
        .edges()
        .iter()
        .filter(|edge| edge.name.starts_with("neck"))
        .map(|edge| edge.curve.reversed())
        .collect();
    if edges.len() == 1 {
        // The parallel of one curve comes in parts.
        inner.reverse();
        let length = inner.iter().map(Curve::length).sum();
        inner = vec![trued(&inner, length)?];
    }
    let (start, end) = (inner.first()?.end(), inner.last()?.start());
    let mut band = piece.run(piece.place(start).0, piece.place(end).0);
    let count = inner.len();
    for (index, curve) in inner.into_iter().rev().enumerate() {
        let name = if count == 1 {
            "inner".into()
        } else {
            format!("inner {}", index + 1)
        };
        band.push(Edge::opening(name, curve, 0.0));
    }
    let made = piece.remade(band, Vec::new(), piece.grain()).ok()?;
    upright(made.with_name(name)).ok()
}

/// The neck's edges from the shoulder to the centre.
fn neck_row(piece: &Piece) -> Vec<Walked<'_>> {
    rows(piece, &["neck side", "neck"])
}
