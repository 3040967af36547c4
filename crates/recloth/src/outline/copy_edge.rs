//! An edge copied between two landmarks: from another piece, or from points measured on a garment.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use kurbo::{Affine, Point};

use super::curve::Curve;
use super::edge::{Drawn, Edge, Role};
use super::mirror::laying;
use super::piece::Piece;
use super::place::{NOTHING, Place, redrawn};
use super::swing::angle;
use super::vector::length;
use crate::doubt::EDGE_STRETCHED;
use crate::dust::above;
use crate::{Error, ErrorKind};

/// What an edge may be stretched by before it is doubted (%): common practice, no source.
const USUAL_PCT: f64 = 3.0;
/// Ends of edges that follow each other may miss by this (mm).
const CLOSED: f64 = 1e-6;

/// How an edge that is copied may be made to fit. The default moves and turns it only.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct CopyFit {
    /// How much nearer or farther apart its ends may be than the landmarks (mm), 0 to 1000. Both ends share what they miss
    /// by, and the edges beside them are drawn to meet them.
    pub gap: f64,
    /// How much it may be stretched or shrunk to fit (%), 0 to 50, along and across alike: 0 for never.
    pub stretch_pct: f64,
}

/// A piece with an edge copied onto it.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Copied {
    /// The piece.
    pub piece: Piece,
    /// Length of the edge as it was copied (mm).
    pub length: f64,
    /// Length of what it replaced (mm).
    pub replaced: f64,
    /// How far it was turned (degrees, counter-clockwise).
    pub turn_deg: f64,
    /// What it was stretched by (%), negative where it was shrunk.
    pub stretch_pct: f64,
    /// What the landmarks are farther apart than its ends (mm), negative where they are nearer; 0 where it was stretched.
    pub gap: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

impl Piece {
    /// The edges from one place of the outline forward to another, counter-clockwise, those cut through in part: to be
    /// copied onto another piece by [`Piece::copy_edge`].
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange`: a place off the outline (`from`, `to`). `NoSolution` naming `to`: it is `from` again.
    pub fn trace(&self, from: Place, to: Place) -> Result<Vec<Edge>, Error> {
        let [from, to] = [("from", from), ("to", to)].map(|(name, place)| {
            let last = self.edges().len() as f64 - 1.0;
            Error::check(name, place.edge as f64, 0.0, last)?;
            let span = self.edges()[place.edge].length();
            let distance = Error::check(name, place.distance, 0.0, span + NOTHING)?.min(span);
            Ok::<Place, Error>(Place { distance, ..place })
        });
        let to = to?;
        let edges = self.run(from?, to);
        if edges.is_empty() {
            let nan = f64::NAN;
            return Err(Error::no_solution("to", to.distance, nan, nan).at_index(to.edge));
        }
        Ok(edges)
    }

    /// Copies an edge onto the piece between two landmarks, in place of its outline from the one forward to the other: the
    /// side of a garment that fits, an armhole traced, a neckline measured. The edge runs the same way; where the other
    /// piece lies mirrored, mirror it first. It is moved and turned, and stretched only if that is asked for.
    ///
    /// The new edges have name, role and corner of the piece's own edge at the first landmark (`name 1`, `name 2` where
    /// there are several), and its allowance; but where the other is drawn as already cut, they keep that and its allowance.
    /// Notches are those of the copy. A dart that is open in one of the two and closed in the other makes them misfit: close
    /// or open it first.
    ///
    /// # Errors
    /// - `NotFinite`, `OutOfRange`: `fit`'s `gap` and `stretch_pct`; a place off the outline (`from`, `to`); ends that miss the
    ///   landmarks by more than is allowed (`misfit`, mm: how much farther apart the landmarks are; or `stretch`, %, if
    ///   stretching was asked for);
    /// - `NoSolution`: the landmarks are one point or a fold lies between them (`to`), or the ends of the copied edge are one
    ///   (`copied`); `Count`: no `copied` edges, or over 1000; `Outline` naming `copied`: they do not follow each other;
    /// - what [`Piece::new`] refuses: edges that would cross, say.
    ///
    /// # Source
    /// Geometry; that more than 3 % of stretch is doubted is common practice, no source.
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{CopyFit, Curve, Edge, Piece};
    /// let names = ["hem", "side", "waist", "centre"];
    /// let panel = |side: Curve| {
    ///     let (from, to) = (side.start(), side.end());
    ///     let curves = [Curve::line((0.0, 0.0), from), side, Curve::line(to, (0.0, to.y)), Curve::line((0.0, to.y), (0.0, 0.0))];
    ///     Piece::new("panel", names.iter().zip(curves).map(|(name, curve)| Edge::seam(*name, curve, 10.0)).collect())
    /// };
    /// // The curved side of a skirt that fits, onto a new one cut straight.
    /// let fits = panel(Curve::arc((235.0, 0.0), (200.0, 190.0), -0.1))?;
    /// let new = panel(Curve::line((245.0, 0.0), (210.0, 190.0)))?;
    /// let ends = |piece: &Piece, from: (f64, f64), to: (f64, f64)| (piece.place(from).0, piece.place(to).0);
    /// let (from, to) = ends(&fits, (235.0, 0.0), (200.0, 190.0));
    /// let side = fits.trace(from, to)?;
    /// let (from, to) = ends(&new, (245.0, 0.0), (210.0, 190.0));
    /// let copied = new.copy_edge(from, to, &side, CopyFit::default())?;
    /// assert!((copied.length - side[0].length()).abs() < 1e-9);
    /// assert!((copied.gap, copied.stretch_pct) == (0.0, 0.0) && copied.turn_deg.abs() < 1e-9);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn copy_edge(
        &self,
        from: Place,
        to: Place,
        copied: &[Edge],
        fit: CopyFit,
    ) -> Result<Copied, Error> {
        let allowed = Error::check("gap", fit.gap, 0.0, 1e3)?;
        let stretch = Error::check("stretch_pct", fit.stretch_pct, 0.0, 50.0)?;
        Error::check_items("copied", copied.len(), 1, 1000)?;
        let [from, to] = [self.check_place("from", from)?, self.check_place("to", to)?];
        let replaced = self.trace(from, to)?;
        let [start, end] = [from, to].map(|place| self.point_at(place));
        let apart = length(end - start);
        let nan = f64::NAN;
        if apart <= NOTHING || replaced.iter().any(|edge| edge.role == Role::Fold) {
            return Err(Error::no_solution("to", to.distance, nan, nan).at_index(to.edge));
        }
        let (first, last) = (
            copied[0].curve.start(),
            copied[copied.len() - 1].curve.end(),
        );
        for (index, pair) in copied.windows(2).enumerate() {
            let gap = length(pair[1].curve.start() - pair[0].curve.end());
            if gap.is_nan() || gap > CLOSED {
                let open = Error::new(ErrorKind::Outline, "copied", gap, 0.0, CLOSED);
                return Err(open.at_index(index));
            }
        }
        let chord = length(last - first);
        if chord.is_nan() || chord <= NOTHING {
            return Err(Error::no_solution("copied", chord, nan, nan));
        }
        // Rounding alone must not keep an edge from its place.
        let misfit = if (apart - chord).abs() <= NOTHING {
            0.0
        } else {
            apart - chord
        };
        let scale = if stretch > 0.0 { apart / chord } else { 1.0 };
        if stretch > 0.0 {
            Error::check("stretch", 100.0 * (scale - 1.0), -stretch, stretch)?;
        } else {
            Error::check("misfit", misfit, -allowed, allowed)?;
        }
        let laid = laying(first, last, start, end);
        let along = (end - start) * (0.5 * (apart - chord * scale) / apart);
        let grown = Affine::translate(first.to_vec2())
            * Affine::scale(scale)
            * Affine::translate(-first.to_vec2());
        let motion = Affine::translate(along) * laid * grown;

        let like = &self.edges()[self.edge_after(from)];
        let mut edges: Vec<Edge> = copied
            .iter()
            .map(|edge| {
                let mut one = Edge {
                    curve: edge.curve.moved(motion, false),
                    notches: edge.notches.clone(),
                    ..like.clone()
                };
                if edge.drawn == Drawn::Cut {
                    (one.drawn, one.allowance) = (Drawn::Cut, edge.allowance);
                }
                for notch in &mut one.notches {
                    notch.distance *= scale;
                }
                one.shallow_notches();
                one
            })
            .collect();
        let whole = edges.iter().map(Edge::length).sum();
        edges.extend(self.run(to, from));
        close(&mut edges, copied.len(), allowed + 10.0 * NOTHING);
        let marks = self.marks_on(edges.iter());
        let stretch_pct = 100.0 * (scale - 1.0);
        let doubted = above(stretch_pct.abs(), USUAL_PCT);
        Ok(Copied {
            piece: self.remade(edges, marks, self.grain())?,
            length: whole,
            replaced: replaced.iter().map(Edge::length).sum(),
            turn_deg: angle(last - first, end - start).to_degrees(),
            stretch_pct,
            gap: if stretch > 0.0 { 0.0 } else { misfit },
            doubts: if doubted { EDGE_STRETCHED } else { 0 },
        })
    }
}

/// Draws the edges beside the first `count` so that they meet these, where they miss by no more than `most` (mm).
fn close(edges: &mut [Edge], count: usize, most: f64) {
    let all = edges.len();
    let ends = (edges[0].curve.start(), edges[count - 1].curve.end());
    if all == count {
        return;
    }
    for (index, starts) in [(count, true), (all - 1, false)] {
        let curve = edges[index].curve;
        let met = if starts {
            curve.between(ends.1, curve.end())
        } else {
            curve.between(curve.start(), ends.0)
        };
        let moved = length(met.start() - curve.start()).max(length(met.end() - curve.end()));
        if moved <= most {
            let drawn = redrawn(&edges[index], alloc::vec![met], |point| point);
            edges[index] = drawn.into_iter().next().unwrap_or(edges[index].clone());
        }
    }
}

/// Points measured along an edge as an edge, to be copied onto a piece: straight from point to point, or smoothly through
/// them all (`name 1`, `name 2`: an edge from each point to the next). It is a seam without allowance.
///
/// Smooth, it is the curve of Catmull and Rom with centripetal parameters; the first and the last stretch are parabolas.
///
/// # Errors
/// `Count`: not 2 to 1001 `points`. `NotFinite`, `OutOfRange`: a `point` (-1e5 to 1e5), with its index. `NoSolution` naming
/// `points`: one that lies on the next (within 1e-6 mm).
///
/// # Source
/// C. Yuksel, S. Schaefer and J. Keyser, *On the Parameterization of Catmull-Rom Curves*, 2009 SIAM/ACM Joint Conference on
/// Geometric and Physical Modeling: no loops or cusps between points, with these parameters.
///
/// # Examples
/// ```
/// use recloth::outline::measured_edge;
/// let armhole = measured_edge("armhole", &[(0.0, 0.0).into(), (30.0, 20.0).into(), (40.0, 90.0).into()], true)?;
/// assert_eq!((armhole.len(), armhole[1].name.as_str()), (2, "armhole 2"));
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn measured_edge(
    name: impl Into<String>,
    points: &[Point],
    smooth: bool,
) -> Result<Vec<Edge>, Error> {
    Error::check_items("points", points.len(), 2, 1001)?;
    for (index, point) in points.iter().enumerate() {
        for value in [point.x, point.y] {
            Error::check("point", value, -1e5, 1e5).map_err(|error| error.at_index(index))?;
        }
    }
    for (index, pair) in points.windows(2).enumerate() {
        let apart = length(pair[1] - pair[0]);
        if apart <= NOTHING {
            return Err(Error::no_solution("points", apart, NOTHING, f64::NAN).at_index(index));
        }
    }
    let count = points.len() - 1;
    let name = name.into();
    let curves = (0..count).map(|index| {
        let (start, end) = (points[index], points[index + 1]);
        if !smooth || count == 1 {
            return Curve::line(start, end);
        }
        let before = index.checked_sub(1).map(|i| points[i]);
        let after = points.get(index + 2).copied();
        let first = before.map(|before| steering(before, start, end));
        let second = after.map(|after| steering(after, end, start));
        // A parabola's steering points both lie two thirds of the way to where its end tangents cross.
        let parabola = |known: Point, from: Point, to: Point| {
            let cross = from + (known - from) * 1.5;
            to + (cross - to) * (2.0 / 3.0)
        };
        match (first, second) {
            (Some(first), Some(second)) => Curve::cubic(start, first, second, end),
            (Some(first), None) => Curve::cubic(start, first, parabola(first, start, end), end),
            (None, Some(second)) => Curve::cubic(start, parabola(second, end, start), second, end),
            (None, None) => Curve::line(start, end),
        }
    });
    Ok(curves
        .enumerate()
        .map(|(index, curve)| {
            let name = if count > 1 {
                format!("{name} {}", index + 1)
            } else {
                name.clone()
            };
            Edge::seam(name, curve, 0.0)
        })
        .collect())
}

/// The point that steers a curve at `at`, from the points before and after it.
fn steering(before: Point, at: Point, after: Point) -> Point {
    let (a, b) = (length(at - before), length(after - at));
    // Centripetal: parameters grow by the roots of the distances.
    let (d, e) = (libm::sqrt(a), libm::sqrt(b));
    let weight = 3.0 * d * (d + e);
    let (p, q, r) = (before.to_vec2(), at.to_vec2(), after.to_vec2());
    let sum = r * a - p * b + q * (2.0 * a + 3.0 * d * e + b);
    (sum / weight).to_point()
}
