//! Darts turned, closed and opened: the parts of a piece swing about the dart's point.
//!
//! Cloth is flat and a dart makes a cone of it. A cone can be cut open anywhere from its point, and what one cut opens
//! another closes: the angles round the point always come to a full turn.

use alloc::format;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;
use kurbo::{Affine, Point, Vec2};

use super::cross::crossings;
use super::edge::{Edge, Role};
use super::fit::fit;
use super::mark::{Dart, Mark};
use super::piece::Piece;
use super::place::{NOTHING, Place, across, part};
use super::region::{Region, moved_grain, moved_marks, share_marks};
use super::segment::Segment;
use super::vector::{cross, dot, length};
use crate::seek::nearest;
use crate::{Error, ErrorKind};

/// Legs of a dart that is closed may differ by this (mm).
const LEGS: f64 = 1e-3;
/// How near arcs follow cubics where overlapping edges are trimmed (mm).
const FINE: f64 = 1e-5;

/// Where a dart is turned to, and how much of it.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Opening {
    /// Name of the new dart.
    pub name: String,
    /// Where on the outline it opens.
    pub at: Place,
    /// Its share of the turned dart's angle, above 0 to 1.
    pub share: f64,
}

/// A cut from the outline to the point the parts swing about.
struct Cut {
    /// Where the outline breaks off and where it goes on: one place, or the two legs of a dart.
    from: Place,
    to: Place,
    /// Angle by which it opens, in radians; negative where it closes.
    angle: f64,
    /// What the open mouth becomes.
    mouth: Mouth,
}

enum Mouth {
    /// A dart of this name.
    Dart(String),
    /// Cloth: the edge goes straight across.
    Cloth,
}

impl Piece {
    /// Index among the marks and the dart itself.
    pub(crate) fn dart(&self, name: &str) -> Result<(usize, &Dart), Error> {
        let darts = self.marks().iter().enumerate();
        let mut named = darts.filter_map(|(index, mark)| match mark {
            Mark::Dart(dart) if dart.name == name => Some((index, dart)),
            _ => None,
        });
        let nan = f64::NAN;
        named
            .next()
            .ok_or(Error::no_solution("dart", nan, nan, nan))
    }

    /// Turns a dart about its point: it is closed where it is, by the shares asked, and opens at other places of the
    /// outline. What the shares leave of 1 stays. The mouth of each new dart is straight: see [`Piece::cap_dart`].
    ///
    /// Lengths of all other edges stay as they are. The longest part of the outline, or that with the fold, stays in its
    /// place; marks and grain go with the part they lie in.
    ///
    /// # Errors
    /// - `NoSolution`: no `dart` of that name; an opening `at` within its mouth, or within an edge on a fold (`at` is its
    ///   index); a cut would run through another dart or a buttonhole (`mark`, with its index);
    /// - `OutOfRange`: an opening's edge or distance (`at`), its `share`, their sum (`shares`, at most 1); legs whose
    ///   lengths differ (`legs`, at most 0.001);
    /// - `Count`: not 1 to 16 `openings`. `Outline`: the turned parts would lie over each other.
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Dart, Edge, Mark, Opening, Piece};
    /// // A square of 200 with a dart 20 wide in the middle of its top, 100 deep.
    /// let point = |x: f64, y: f64| (x, y);
    /// let corners = [point(0.0, 0.0), point(200.0, 0.0), point(200.0, 200.0), point(110.0, 200.0), point(90.0, 200.0), point(0.0, 200.0)];
    /// let names = ["hem", "side", "top 1", "mouth", "top 2", "centre"];
    /// let edges = (0..6).map(|i| Edge::seam(names[i], Curve::line(corners[i], corners[(i + 1) % 6]), 10.0)).collect();
    /// let dart = Mark::Dart(Dart { name: "waist".into(), point: (100.0, 100.0).into(), legs: [(110.0, 200.0).into(), (90.0, 200.0).into()] });
    /// let square = Piece::new("square", edges)?.with_marks(vec![dart])?;
    /// let (at, _) = square.place((200.0, 100.0));
    /// let turned = square.turn_dart("waist", &[Opening { name: "side".into(), at, share: 1.0 }])?;
    /// let Mark::Dart(dart) = &turned.marks()[0] else { panic!() };
    /// // The angle stays: 2 · atan(10 / 100), now over a leg of 100.
    /// assert!((dart.intake() - 200.0 * f64::sin(f64::atan(0.1))).abs() < 1e-9);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn turn_dart(&self, dart: &str, openings: &[Opening]) -> Result<Piece, Error> {
        Error::check_items("openings", openings.len(), 1, 16)?;
        let mut sum = 0.0;
        for (index, opening) in openings.iter().enumerate() {
            Error::check("share", opening.share, 1e-6, 1.0).map_err(|e| e.at_index(index))?;
            sum += opening.share;
        }
        Error::check("shares", sum, 0.0, 1.0 + 1e-9)?;
        let left = if sum > 1.0 - 1e-9 { 0.0 } else { 1.0 - sum };
        let cuts = openings
            .iter()
            .map(|o| (o.at, o.share, Mouth::Dart(o.name.clone())));
        self.swung(dart, left, cuts.collect())
    }

    /// Closes a dart and lets the piece flare instead: it is cut from the dart's point to a place on the outline, which
    /// opens by the dart's angle. The edge runs straight across what opens: smooth it where it should curve.
    ///
    /// # Errors
    /// As [`Piece::turn_dart`].
    pub fn close_dart(&self, dart: &str, at: Place) -> Result<Piece, Error> {
        self.swung(dart, 0.0, vec![(at, 1.0, Mouth::Cloth)])
    }

    /// `left` is the share of the dart that stays where it is; the others are where it opens.
    fn swung(
        &self,
        name: &str,
        left: f64,
        openings: Vec<(Place, f64, Mouth)>,
    ) -> Result<Piece, Error> {
        let (index, dart) = self.dart(name)?;
        let pivot = dart.point;
        let legs = legs_in_order(dart)?;
        let angle = angle(legs[0] - pivot, legs[1] - pivot);
        let [from, to] = legs.map(|leg| self.place(leg).0);
        let mouth = if left > 0.0 {
            Mouth::Dart(dart.name.clone())
        } else {
            Mouth::Cloth
        };
        let mut cuts = vec![Cut {
            from,
            to,
            angle: angle * (left - 1.0),
            mouth,
        }];
        let whole: f64 = self.edges().iter().map(Edge::length).sum();
        let onward = |place: Place| {
            let gap = self.along(place) - self.along(from);
            if gap < 0.0 { gap + whole } else { gap }
        };
        for (at, share, mouth) in openings {
            let at = self.check_place("at", at)?;
            if onward(at) < onward(to) + NOTHING || onward(at) > whole - NOTHING {
                let nan = f64::NAN;
                return Err(Error::no_solution("at", at.distance, nan, nan).at_index(at.edge));
            }
            cuts.push(Cut {
                from: at,
                to: at,
                angle: angle * share,
                mouth,
            });
        }
        cuts[1..].sort_by(|a, b| onward(a.from).total_cmp(&onward(b.from)));
        self.swing(pivot, &cuts, Some(index))
    }

    /// Opens a dart in a piece that has none there, as of a garment whose dart is sewn and which was measured flat: cut
    /// from `at` to `point` and on to `opposite`, one side is turned about the point until the cut is `intake` wide at its
    /// edge. At `opposite` the sides then lie over each other, and the edge loses about `intake · r / leg`, `r`
    /// being its distance from the point; it is trimmed where both sides cross, at a straight edge square to the cut
    /// `2 r tan(α / 2)` for a dart of the angle α.
    ///
    /// # Errors
    /// As [`Piece::turn_dart`], for both places; `OutOfRange`: the `point` is not within the piece (its distance from it,
    /// at most 0), `intake` (0.001 up to twice the leg). `NoSolution` naming `opposite`: what overlaps there does not cross, or
    /// it is `at` again, or lies within a fold; `min` or `max` is the distance nearest to it that would do, on the same edge, if
    /// there is one.
    pub fn open_dart(
        &self,
        name: &str,
        point: impl Into<Point>,
        at: Place,
        intake: f64,
        opposite: Place,
    ) -> Result<Piece, Error> {
        let point = point.into();
        let at = self.check_place("at", at)?;
        let edge = opposite.edge;
        let to = |distance: f64| self.opened(name, point, at, intake, Place { edge, distance });
        to(opposite.distance).map_err(|error| {
            if error.kind() != ErrorKind::NoSolution || error.argument() != "opposite" {
                return error;
            }
            let range = (0.0, self.edges()[edge].length());
            let (value, nan) = (opposite.distance, f64::NAN);
            let (min, max) = match nearest(value, range, &|distance| to(distance).is_ok()) {
                Some(found) if found > value => (found, nan),
                Some(found) => (nan, found),
                None => (nan, nan),
            };
            Error::no_solution("opposite", value, min, max).at_index(edge)
        })
    }

    /// The same, but that nothing is said of what would do.
    fn opened(
        &self,
        name: &str,
        point: Point,
        at: Place,
        intake: f64,
        opposite: Place,
    ) -> Result<Piece, Error> {
        let opposite = self.check_place("opposite", opposite)?;
        let inside = Region::new(self.edges().to_vec(), &[], Affine::IDENTITY);
        Error::check("point", inside.outside(point), 0.0, 0.0)?;
        let leg = length(self.point_at(at) - point);
        let intake = Error::check("intake", intake, 1e-3, 2.0 * leg * (1.0 - 1e-9))?;
        if self.along(at) == self.along(opposite) {
            let nan = f64::NAN;
            return Err(Error::no_solution("opposite", opposite.distance, nan, nan));
        }
        let angle = 2.0 * libm::asin(intake / (2.0 * leg));
        let mouth = Mouth::Dart(name.into());
        let mut cuts = [
            Cut {
                from: at,
                to: at,
                angle,
                mouth,
            },
            Cut {
                from: opposite,
                to: opposite,
                angle: -angle,
                mouth: Mouth::Cloth,
            },
        ];
        if self.along(at) > self.along(opposite) {
            cuts.reverse();
        }
        self.swing(point, &cuts, None)
    }

    /// The piece with its parts swung about a point, the cuts given in the order of the ring. `gone` is a dart that is
    /// turned.
    fn swing(&self, pivot: Point, cuts: &[Cut], gone: Option<usize>) -> Result<Piece, Error> {
        let count = cuts.len();
        let spoke = |place: Place| Segment::line(pivot, self.point_at(place));
        // The region after each cut, and how far it is turned against that after the first.
        let (mut regions, mut turns) = (Vec::new(), Vec::new());
        let mut turn = 0.0;
        for (index, cut) in cuts.iter().enumerate() {
            let next = &cuts[(index + 1) % count];
            turn += if index == 0 { 0.0 } else { cut.angle };
            let border = [spoke(next.from).reversed(), spoke(cut.to)];
            let edges = self.run(cut.to, next.from);
            regions.push(Region::new(edges, &border, Affine::IDENTITY));
            turns.push(turn);
        }
        let still = turns[still(&regions)];
        for (region, turn) in regions.iter_mut().zip(&turns) {
            if *turn != still {
                region.motion = about(pivot, turn - still);
            }
        }
        let spokes: Vec<Segment> = cuts
            .iter()
            .flat_map(|cut| [spoke(cut.from), spoke(cut.to)])
            .collect();
        let mut marks = moved_marks(share_marks(self, &regions, &spokes, gone)?, &regions);
        let mut parts: Vec<Vec<Edge>> = regions
            .iter()
            .map(|region| region.moved().collect())
            .collect();
        let mut mouths = Vec::new();
        for (index, cut) in cuts.iter().enumerate() {
            let before = (index + count - 1) % count;
            if cut.angle < 0.0 && matches!(cut.mouth, Mouth::Cloth) {
                if cut.from == cut.to {
                    trim_overlap(&mut parts, before, index)?;
                }
                weld(&mut parts, before, index);
                mouths.push(None);
                continue;
            }
            let ends = (parts[before].last(), parts[index].first());
            let (Some(last), Some(first)) = ends else {
                mouths.push(None);
                continue;
            };
            let (start, end) = (last.curve.end(), first.curve.start());
            let mut mouth = across(&self.edges()[cut.from.edge], start, end);
            if let Mouth::Dart(name) = &cut.mouth {
                mouth.name = format!("cap {name}");
                marks.push(Mark::Dart(Dart {
                    name: name.clone(),
                    point: pivot,
                    legs: [start, end],
                }));
            }
            mouths.push(Some(mouth));
        }
        let mut edges: Vec<Edge> = Vec::new();
        for (mouth, part) in mouths.into_iter().zip(parts) {
            edges.extend(mouth);
            edges.extend(part);
        }
        self.remade(edges, marks, moved_grain(self, &regions))
    }
}

/// The ends of a dart's legs in the order of the ring, counter-clockwise about its point, if they are alike.
pub(crate) fn legs_in_order(dart: &Dart) -> Result<[Point; 2], Error> {
    let lengths = dart.leg_lengths();
    Error::check("legs", (lengths[0] - lengths[1]).abs(), 0.0, LEGS)?;
    let arms = dart.legs.map(|leg| leg - dart.point);
    let [first, second] = dart.legs;
    Ok(if cross(arms[0], arms[1]) > 0.0 {
        [first, second]
    } else {
        [second, first]
    })
}

/// Angle from one direction to another, counter-clockwise, in radians.
pub(crate) fn angle(from: Vec2, to: Vec2) -> f64 {
    libm::atan2(cross(from, to), dot(from, to))
}

/// The turn about a point by an angle in radians.
pub(crate) fn about(pivot: Point, angle: f64) -> Affine {
    let (sin, cos) = libm::sincos(angle);
    let shift = Vec2::new(
        pivot.x - cos * pivot.x + sin * pivot.y,
        pivot.y - sin * pivot.x - cos * pivot.y,
    );
    Affine::new([cos, sin, -sin, cos, shift.x, shift.y])
}

/// The region that stays in its place: that with the fold, else the one with the longest edge.
pub(crate) fn still(regions: &[Region]) -> usize {
    let folded = |region: &Region| region.edges.iter().any(|edge| edge.role == Role::Fold);
    regions.iter().position(folded).unwrap_or_else(|| {
        let mut longest = 0;
        for (index, region) in regions.iter().enumerate() {
            if region.length() > regions[longest].length() {
                longest = index;
            }
        }
        longest
    })
}

/// Trims the last edge of one part and the first of the next where they lie over each other.
fn trim_overlap(parts: &mut [Vec<Edge>], before: usize, after: usize) -> Result<(), Error> {
    let nan = f64::NAN;
    let failed = Error::no_solution("opposite", nan, nan, nan);
    let (Some(last), Some(first)) = (parts[before].last(), parts[after].first()) else {
        return Err(failed);
    };
    let (mut ending, mut starting) = (Vec::new(), Vec::new());
    fit(&last.curve, FINE, &mut ending);
    fit(&first.curve, FINE, &mut starting);
    // The crossing that takes least away.
    let mut best: Option<(f64, f64, f64)> = None;
    let span = last.length();
    let mut before_a = 0.0;
    for a in &ending {
        let mut before_b = 0.0;
        for b in &starting {
            crossings(a, b, |_, on_a, on_b| {
                let (at_a, at_b) = (before_a + on_a, before_b + on_b);
                let lost = span - at_a + at_b;
                if best.is_none_or(|(least, _, _)| lost < least) {
                    best = Some((lost, at_a, at_b));
                }
            });
            before_b += b.length();
        }
        before_a += a.length();
    }
    let (_, at_a, at_b) = best.ok_or(failed)?;
    let end_of_first = first.length();
    if at_a <= NOTHING || at_b >= end_of_first - NOTHING {
        return Err(failed);
    }
    if let Some(last) = parts[before].last_mut() {
        *last = part(last, 0.0, at_a);
    }
    if let Some(first) = parts[after].first_mut() {
        *first = part(first, at_b, end_of_first);
    }
    Ok(())
}

/// Makes the next part start where the one before ends, which it does but for rounding.
fn weld(parts: &mut [Vec<Edge>], before: usize, after: usize) {
    let end = parts[before].last().map(|edge| edge.curve.end());
    if let (Some(end), Some(first)) = (end, parts[after].first_mut()) {
        first.curve.set_start(end);
    }
}
