//! A piece lengthened or shortened at a line across it.

use alloc::vec;
use alloc::vec::Vec;
use kurbo::{Line, Point, Vec2};

use super::cross::crossings;
use super::curve::Curve;
use super::edge::Role;
use super::fit::fit;
use super::mark::{Cutout, Mark};
use super::piece::Piece;
use super::place::{NOTHING, redrawn};
use super::segment::Segment;
use super::vector::{cross, dot, length, right, unit};
use crate::Error;

/// How near arcs follow a cubic where the line crosses it (mm).
const FINE: f64 = 1e-3;

impl Piece {
    /// Lengthens a piece at a line across it by so much (mm), or shortens it where `by` is negative: as paper is cut at
    /// "lengthen or shorten here" and spread, or folded over. What lies to the left of the line stays; what lies to its
    /// right moves square to it. Widths at both ends stay as they are, which [`Piece::shift_edges`] at the hem does not
    /// keep.
    ///
    /// An edge that crosses the line is drawn anew from end to end: a straight one straight, a curve smoothly with the
    /// tangents it had at its ends. An arc becomes a cubic, one of more than a quarter circle several (`name 1`, `name 2`).
    /// Notches and marks go with the side they lie on.
    ///
    /// # Errors
    /// - `NotFinite`, `OutOfRange`: the `line` (coordinates -1e5 to 1e5, at least 0.001 long), `by` (-1e4 to 1e4);
    /// - `NoSolution` naming `line`: it crosses no edge, or, with the edge's index, a fold that is not square to it; naming
    ///   `by`: an edge is too short to be shortened so; naming `mark`, with its index: a dart or a buttonhole is crossed;
    /// - `OutOfRange` naming `leg`: a dart opens within an edge that is drawn anew. `Outline`: edges would cross.
    ///
    /// # Source
    /// Common practice, no source: commercial patterns print the line.
    ///
    /// # Examples
    /// ```
    /// use kurbo::Line;
    /// use recloth::outline::{Curve, Edge, Piece};
    /// let corners = [(0.0, 0.0), (300.0, 0.0), (240.0, 600.0), (0.0, 600.0)];
    /// let side = |i: usize| Edge::seam(["hem", "side", "waist", "centre"][i], Curve::line(corners[i], corners[(i + 1) % 4]), 10.0);
    /// let skirt = Piece::new("skirt", (0..4).map(side).collect())?;
    /// // The line runs from left to right, so the waist stays and the hem moves down.
    /// let longer = skirt.extend(Line::new((-10.0, 300.0), (310.0, 300.0)), 50.0)?;
    /// assert_eq!((longer.bounds().y0, longer.edges()[0].length(), longer.edges()[2].length()), (-50.0, 300.0, 240.0));
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn extend(&self, line: Line, by: f64) -> Result<Piece, Error> {
        for value in [line.p0.x, line.p0.y, line.p1.x, line.p1.y] {
            Error::check("line", value, -1e5, 1e5)?;
        }
        Error::check("line", length(line.p1 - line.p0), 1e-3, 4e5)?;
        let by = Error::check("by", by, -1e4, 1e4)?;
        let along = unit(line.p1 - line.p0);
        let cut = Cut {
            from: line.p0,
            along,
            by: right(along) * by,
        };
        let (mut edges, mut crossed, mut shortest) = (Vec::new(), 0, f64::INFINITY);
        for (index, edge) in self.edges().iter().enumerate() {
            let (curves, across) = cut.apart(&edge.curve);
            let aside = dot(edge.curve.end() - edge.curve.start(), along);
            if edge.role == Role::Fold && !across.is_empty() && aside.abs() > NOTHING {
                let nan = f64::NAN;
                return Err(Error::no_solution("line", aside, nan, nan).at_index(index));
            }
            crossed += across.len();
            shortest = across.into_iter().fold(shortest, f64::min);
            edges.extend(redrawn(edge, curves, |point| cut.there(point)));
        }
        if crossed == 0 {
            return Err(Error::no_solution("line", 0.0, 2.0, f64::NAN));
        }
        let mut marks = Vec::new();
        for (index, mark) in self.marks().iter().enumerate() {
            match mark {
                Mark::Line { name, kind, curve } => {
                    let (curves, _) = cut.apart(curve);
                    marks.extend(curves.into_iter().map(|curve| Mark::Line {
                        name: name.clone(),
                        kind: *kind,
                        curve,
                    }));
                }
                Mark::Cutout(Cutout { name, edges }) => {
                    let drawn = edges.iter().flat_map(|edge| {
                        let (curves, across) = cut.apart(&edge.curve);
                        shortest = across.into_iter().fold(shortest, f64::min);
                        redrawn(edge, curves, |point| cut.there(point))
                    });
                    let (name, edges) = (name.clone(), drawn.collect());
                    marks.push(Mark::Cutout(Cutout { name, edges }));
                }
                _ => {
                    let (points, _) = mark.numbers();
                    let moves = cut.moves(points[0]);
                    if points.iter().any(|point| cut.moves(*point) != moves) {
                        let nan = f64::NAN;
                        return Err(Error::no_solution("mark", nan, nan, nan).at_index(index));
                    }
                    marks.push(mark.shifted(if moves { cut.by } else { Vec2::ZERO }));
                }
            }
        }
        if by + shortest <= NOTHING {
            return Err(Error::no_solution("by", by, NOTHING - shortest, f64::NAN));
        }
        let grain = self.grain().map(|grain| {
            let middle = grain.p0.midpoint(grain.p1);
            let by = cut.there(middle) - middle;
            Line::new(grain.p0 + by, grain.p1 + by)
        });
        self.remade(edges, marks, grain)
    }
}

/// An endless line, and the shift of what lies to its right.
struct Cut {
    from: Point,
    along: Vec2,
    by: Vec2,
}

impl Cut {
    /// How far to the left of the line a point lies (mm).
    fn left_of(&self, point: Point) -> f64 {
        cross(self.along, point - self.from)
    }

    fn moves(&self, point: Point) -> bool {
        self.left_of(point) < -NOTHING
    }

    fn there(&self, point: Point) -> Point {
        if self.moves(point) {
            point + self.by
        } else {
            point
        }
    }

    /// A curve after the cut, and how far each of its parts that cross the line reached across it (mm).
    fn apart(&self, curve: &Curve) -> (Vec<Curve>, Vec<f64>) {
        let (mut curves, mut across) = (Vec::new(), Vec::new());
        for part in self.crossed_once(curve) {
            let [starts, ends] = [part.start(), part.end()].map(|point| self.moves(point));
            let by = |moves: bool| if moves { self.by } else { Vec2::ZERO };
            if starts == ends {
                curves.push(part.shifted(by(starts)));
                continue;
            }
            across.push((self.left_of(part.start()) - self.left_of(part.end())).abs());
            let (from, to) = (by(starts), by(ends));
            match part {
                Curve::Segment(segment) if segment.is_line() => {
                    curves.push(Curve::line(segment.start + from, segment.end + to));
                }
                // A quarter circle at most, which one cubic follows.
                Curve::Segment(segment) => {
                    curves.push(stretched(segment.as_cubic(), from, to));
                }
                Curve::Cubic(c) => curves.push(stretched([c.p0, c.p1, c.p2, c.p3], from, to)),
            }
        }
        (curves, across)
    }

    /// The curve in parts that each cross the line once at most, arcs in quarter circles at most.
    fn crossed_once(&self, curve: &Curve) -> Vec<Curve> {
        let mut bits = Vec::new();
        fit(curve, FINE, &mut bits);
        let bounds = curve.bounds();
        let reach = bounds.width() + bounds.height() + 1.0;
        let foot = self.from + self.along * dot(bounds.center() - self.from, self.along);
        let line = Segment::line(foot - self.along * reach, foot + self.along * reach);
        let mut crossed = Vec::new();
        let mut before = 0.0;
        for bit in &bits {
            crossings(bit, &line, |_, at, _| crossed.push(before + at));
            before += bit.length();
        }
        crossed.sort_by(f64::total_cmp);
        let whole = curve.length();
        crossed.retain(|at| *at > 10.0 * FINE && *at < whole - 10.0 * FINE);
        crossed.dedup_by(|a, b| (*a - *b).abs() <= 10.0 * FINE);
        let straight = matches!(curve, Curve::Segment(segment) if segment.is_line());
        let one_side = self.moves(curve.start()) == self.moves(curve.end());
        if straight || (crossed.is_empty() && one_side) {
            return vec![*curve];
        }
        let mut breaks: Vec<f64> = crossed
            .windows(2)
            .map(|pair| (pair[0] + pair[1]) / 2.0)
            .collect();
        if let Curve::Segment(arc) = curve {
            let parts = arc.parts(core::f64::consts::FRAC_PI_2);
            breaks.extend((1..parts).map(|i| whole * f64::from(i) / f64::from(parts)));
            breaks.sort_by(f64::total_cmp);
            breaks.dedup_by(|a, b| (*a - *b).abs() <= 10.0 * FINE);
        }
        let ends = breaks.iter().copied().chain([whole]);
        let starts = [0.0].into_iter().chain(breaks.iter().copied());
        let mut end = curve.start();
        starts
            .zip(ends)
            .map(|(from, to)| {
                let mut part = curve.part(from, to);
                part.set_start(end);
                end = part.end();
                part
            })
            .collect()
    }
}

/// A cubic whose ends are moved. Its tangents stay, and reach as far for its new chord as they did for the old one.
fn stretched([a, b, c, d]: [Point; 4], from: Vec2, to: Vec2) -> Curve {
    let (start, end) = (a + from, d + to);
    let chord = length(d - a);
    let share = if chord > NOTHING {
        length(end - start) / chord
    } else {
        1.0
    };
    Curve::cubic(start, start + (b - a) * share, end + (c - d) * share, end)
}
