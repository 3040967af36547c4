//! Edges trued up: drawn anew so that they run on smoothly over seams and darts once these are sewn.

use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;
use kurbo::Vec2;

use super::curve::Curve;
use super::edge::Role;
use super::piece::Piece;
use super::place::{NOTHING, redrawn};
use super::segment::Segment;
use super::swing::{angle, legs_in_order};
use super::vector::length;
use super::walk::{Way, kink};
use crate::Error;

/// Steps at which an edge is compared with what it was.
const STEPS: u32 = 64;

/// An end of an edge.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum EdgeEnd {
    /// Where it starts.
    #[default]
    Start,
    /// Where it ends.
    End,
}

impl EdgeEnd {
    fn other(self) -> EdgeEnd {
        match self {
            EdgeEnd::Start => EdgeEnd::End,
            EdgeEnd::End => EdgeEnd::Start,
        }
    }
}

/// Which of the two pieces of a seam is left as it is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Kept {
    /// Neither: each takes half of the kink.
    #[default]
    Neither,
    /// The first: the second takes all of it.
    First,
    /// The second: the first takes all of it.
    Second,
}

/// Where edges are to run on into each other once a garment is sewn. Pieces are given by their index in the list.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Meeting {
    /// One end of a seam: the edges beside it meet there.
    Seam {
        /// The two pieces; the same twice where a piece is sewn to itself or to its like.
        pieces: [usize; 2],
        /// The edge of each that is sewn, at this end of the seam.
        edges: [usize; 2],
        /// Which way the second runs along the first.
        way: Way,
        /// The end of the first edge that is meant.
        end: EdgeEnd,
        /// Which of the two is left as it is: one that is cut already, say.
        #[cfg_attr(feature = "serde", serde(default))]
        kept: Kept,
    },
    /// A dart: the edges at both sides of its mouth meet when it is folded, and its mouth gets its cap.
    Dart {
        /// The piece.
        piece: usize,
        /// Name of the dart.
        dart: String,
        /// Onto which edge it is pressed: the one at the start of the mouth, or the one at its end, counter-clockwise.
        onto: EdgeEnd,
    },
}

/// An edge that was drawn anew.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TruedEdge {
    /// Index of the piece.
    pub piece: usize,
    /// Index of the edge in the piece as it was given.
    pub edge: usize,
    /// How far it was turned at its start (degrees, counter-clockwise).
    pub start_deg: f64,
    /// How far it was turned at its end (degrees, counter-clockwise).
    pub end_deg: f64,
    /// The farthest that it lies from where it was (mm).
    pub moved: f64,
    /// Where that is, from its start along the edge as it was (mm).
    pub distance: f64,
    /// What it has become longer by (mm).
    pub longer: f64,
}

/// Pieces whose edges run on smoothly.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TruedUp {
    /// All the pieces, changed or not.
    pub pieces: Vec<Piece>,
    /// The edges that were drawn anew.
    pub edges: Vec<TruedEdge>,
    /// The farthest that any of them lies from where it was (mm).
    pub largest: f64,
    /// The kink there was at each meeting (degrees): positive a peak, negative a dent.
    pub kinks_deg: Vec<f64>,
}

/// Trues up edges that meet at seams and darts: a waist over darts and side seams, a hem over gores, a neckline over
/// shoulders. Each of two edges that meet in a kink is turned there by half of it, or one by all of it where the other is kept,
/// so that sewn together they run on smoothly. Corners stay where they are, so no seam changes its length; an edge is drawn anew between them with its
/// tangents turned: a line or an arc turned alike at both ends stays an arc, else it becomes a cubic, an arc of more than a
/// quarter circle several (`name 1`, `name 2`). At a dart the mouth then gets the cap of [`Piece::cap_dart`].
///
/// Nothing is changed silently: what was moved, where and how far is told, and more than `limit` (mm) is refused.
///
/// # Errors
/// - `Count`: not 1 to 1000 `pieces` or `meetings`; `NotFinite`, `OutOfRange`: `limit` (0 to 1000);
/// - with the index of the meeting: `OutOfRange`: no such `piece` or `edge`; an edge that would be `moved` by more than
///   the limit; `legs` of a dart that differ by more than 0.001. `NoSolution`: no such `dart`; a dart that opens within an edge
///   (`dart`); the edge beside a seam lies on a fold, or was trued up at that end already (`meetings`); an edge too short
///   for the cap (`onto`);
/// - `Outline`: an edge drawn anew would cross another.
///
/// # Source
/// Geometry; to true up by eye with a curve is common practice, no source.
///
/// # Examples
/// ```
/// use recloth::outline::{Curve, Edge, EdgeEnd, Kept, Meeting, Piece, Way, true_up};
/// // Half a gore, its hem square to the centre fold: sewn to its like, the hems meet in a peak.
/// let corners = [(0.0, 0.0), (150.0, 0.0), (90.0, 600.0), (0.0, 600.0)];
/// let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
/// let gore = Piece::new("gore", vec![
///     Edge::hem("hem", side(0), 30.0),
///     Edge::seam("side", side(1), 15.0),
///     Edge::seam("waist", side(2), 15.0),
///     Edge::fold("centre", side(3)),
/// ])?.unfold()?;
/// let sides = [gore.edge("side").unwrap(), gore.edge("side, mirrored").unwrap()];
/// let meeting = Meeting::Seam { pieces: [0, 0], edges: sides, way: Way::Against, end: EdgeEnd::Start, kept: Kept::Neither };
/// let trued = true_up(&[gore], &[meeting], 12.0)?;
/// // The side leans by atan(60 / 600) on each gore.
/// assert!((trued.kinks_deg[0] - 2.0 * 0.1_f64.atan().to_degrees()).abs() < 1e-9);
/// let gore = &trued.pieces[0];
/// let walk = gore.walk(&[sides[0]], gore, &[sides[1]], Way::Against)?;
/// assert!(walk.start_kink_deg.unwrap().abs() < 1e-9);
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn true_up(pieces: &[Piece], meetings: &[Meeting], limit: f64) -> Result<TruedUp, Error> {
    Error::check_items("pieces", pieces.len(), 1, 1000)?;
    Error::check_items("meetings", meetings.len(), 1, 1000)?;
    let limit = Error::check("limit", limit, 0.0, 1e3)?;
    let mut turns: Vec<Turn> = Vec::new();
    let mut kinks_deg = Vec::new();
    for (index, meeting) in meetings.iter().enumerate() {
        let (kink, ends) = met(pieces, meeting).map_err(|error| error.at_index(index))?;
        kinks_deg.push(kink.to_degrees());
        for (share, end) in ends {
            let by = match end.end {
                EdgeEnd::Start => -kink * share,
                EdgeEnd::End => kink * share,
            };
            let own = |turn: &&mut Turn| (turn.piece, turn.edge) == (end.piece, end.edge);
            let turn = match turns.iter_mut().find(own) {
                Some(turn) => turn,
                None => {
                    turns.push(Turn {
                        piece: end.piece,
                        edge: end.edge,
                        by: [None; 2],
                        meeting: index,
                    });
                    let last = turns.len() - 1;
                    &mut turns[last]
                }
            };
            if turn.by[end.end as usize].replace(by).is_some() {
                let nan = f64::NAN;
                return Err(Error::no_solution("meetings", nan, nan, nan).at_index(index));
            }
        }
    }
    turns.sort_by_key(|turn| (turn.piece, turn.edge));
    let mut trued = TruedUp {
        pieces: pieces.to_vec(),
        edges: Vec::new(),
        largest: 0.0,
        kinks_deg,
    };
    for (index, piece) in pieces.iter().enumerate() {
        let mut mine = turns.iter().filter(|turn| turn.piece == index).peekable();
        if mine.peek().is_none() {
            continue;
        }
        let mut edges = Vec::new();
        for (place, edge) in piece.edges().iter().enumerate() {
            let Some(turn) = mine.next_if(|turn| turn.edge == place) else {
                edges.push(edge.clone());
                continue;
            };
            let [start, end] = turn.by.map(|by| by.unwrap_or(0.0));
            let curves = turned(&edge.curve, start, end);
            let (moved, distance) = farthest(&edge.curve, &curves);
            Error::check("moved", moved, 0.0, limit.max(NOTHING))
                .map_err(|error| error.at_index(turn.meeting))?;
            trued.largest = trued.largest.max(moved);
            trued.edges.push(TruedEdge {
                piece: index,
                edge: place,
                start_deg: start.to_degrees(),
                end_deg: end.to_degrees(),
                moved,
                distance,
                longer: curves.iter().map(Curve::length).sum::<f64>() - edge.length(),
            });
            edges.extend(redrawn(edge, curves, |point| point));
        }
        trued.pieces[index] = piece.remade(edges, piece.marks().to_vec(), piece.grain())?;
    }
    for (index, meeting) in meetings.iter().enumerate() {
        let Meeting::Dart { piece, dart, onto } = meeting else {
            continue;
        };
        let one = &trued.pieces[*piece];
        let capped = one.beside_dart(dart).and_then(|[before, after]| {
            let onto = match onto {
                EdgeEnd::Start => before,
                EdgeEnd::End => after,
            };
            one.cap_dart(dart, onto)
        });
        trued.pieces[*piece] = capped.map_err(|error| error.at_index(index))?;
    }
    Ok(trued)
}

/// An edge, and how far it is turned at its start and at its end (radians, counter-clockwise).
struct Turn {
    piece: usize,
    edge: usize,
    by: [Option<f64>; 2],
    /// The first meeting that asked for it.
    meeting: usize,
}

/// One end of an edge of a piece.
struct Ending {
    piece: usize,
    edge: usize,
    end: EdgeEnd,
}

/// The kink at a meeting (radians, positive a peak), and the ends that are turned, each with its share of it.
fn met(pieces: &[Piece], meeting: &Meeting) -> Result<(f64, Vec<(f64, Ending)>), Error> {
    let piece = |index: usize| -> Result<&Piece, Error> {
        Error::check("piece", index as f64, 0.0, pieces.len() as f64 - 1.0)?;
        Ok(&pieces[index])
    };
    match meeting {
        Meeting::Seam {
            pieces: both,
            edges,
            way,
            end,
            kept,
        } => {
            let ends = match way {
                Way::Along => [*end; 2],
                Way::Against => [*end, end.other()],
            };
            let mut corners = [0.0; 2];
            let mut beside = [0; 2];
            for side in 0..2 {
                let piece = piece(both[side])?;
                let count = piece.edges().len();
                Error::check("edge", edges[side] as f64, 0.0, count as f64 - 1.0)?;
                let (corner, neighbour) = match ends[side] {
                    EdgeEnd::Start => (
                        piece.corner_before(edges[side]),
                        (edges[side] + count - 1) % count,
                    ),
                    EdgeEnd::End => (piece.corner_after(edges[side]), (edges[side] + 1) % count),
                };
                let nan = f64::NAN;
                corners[side] = corner.ok_or(Error::no_solution("meetings", nan, nan, nan))?;
                beside[side] = neighbour;
            }
            // The edge before a seam ends at the seam's start.
            let ending = |side: usize| Ending {
                piece: both[side],
                edge: beside[side],
                end: ends[side].other(),
            };
            let turned = match kept {
                Kept::Neither => vec![(0.5, ending(0)), (0.5, ending(1))],
                Kept::First => vec![(1.0, ending(1))],
                Kept::Second => vec![(1.0, ending(0))],
            };
            Ok((kink(corners[0], corners[1]), turned))
        }
        Meeting::Dart {
            piece: index, dart, ..
        } => {
            let piece = piece(*index)?;
            let [before, after] = piece.beside_dart(dart)?;
            let (_, dart) = piece.dart(dart)?;
            let [from, to] = legs_in_order(dart)?.map(|leg| leg - dart.point);
            let arrives = piece.edges()[before].curve.end_tangent();
            let leaves = piece.edges()[after].curve.start_tangent();
            // Folded, the second leg lies on the first.
            let kink = angle(arrives, rotated(leaves, -angle(from, to)));
            let ending = |edge: usize, end: EdgeEnd| Ending {
                piece: *index,
                edge,
                end,
            };
            let turned = vec![
                (0.5, ending(before, EdgeEnd::End)),
                (0.5, ending(after, EdgeEnd::Start)),
            ];
            Ok((kink, turned))
        }
    }
}

impl Piece {
    /// The edge that ends at a dart's mouth, and that which starts there.
    fn beside_dart(&self, name: &str) -> Result<[usize; 2], Error> {
        let (_, dart) = self.dart(name)?;
        let [start, end] = legs_in_order(dart)?.map(|leg| self.place(leg).0);
        let beside = [self.edge_before(start), self.edge_after(end)];
        let edges = self.edges();
        let meets = length(edges[beside[0]].curve.end() - self.point_at(start)) <= NOTHING
            && length(edges[beside[1]].curve.start() - self.point_at(end)) <= NOTHING;
        let on_fold = beside.iter().any(|&edge| edges[edge].role == Role::Fold);
        if !meets || on_fold {
            let nan = f64::NAN;
            return Err(Error::no_solution("dart", nan, nan, nan));
        }
        Ok(beside)
    }
}

/// A curve between the same ends with its tangents turned there (radians, counter-clockwise).
fn turned(curve: &Curve, start: f64, end: f64) -> Vec<Curve> {
    let bent = |[a, b, c, d]: [kurbo::Point; 4], start: f64, end: f64| {
        Curve::cubic(a, a + rotated(b - a, start), d + rotated(c - d, end), d)
    };
    match curve {
        Curve::Cubic(c) => vec![bent([c.p0, c.p1, c.p2, c.p3], start, end)],
        // Turned alike at both ends it sweeps more, or less, by both.
        Curve::Segment(s) if (start + end).abs() < 1e-12 => {
            let sweep = s.sweep_deg().to_radians() + end - start;
            vec![Curve::arc(s.start, s.end, libm::tan(sweep / 4.0))]
        }
        Curve::Segment(s) => {
            let parts = s.parts(core::f64::consts::FRAC_PI_2);
            let whole = s.length();
            let at = |index: u32| whole * f64::from(index) / f64::from(parts);
            let mut from = s.start;
            (0..parts)
                .map(|index| {
                    let mut part: Segment = s.part(at(index), at(index + 1));
                    part.start = from;
                    if index + 1 == parts {
                        part.end = s.end;
                    }
                    from = part.end;
                    let start = if index == 0 { start } else { 0.0 };
                    let end = if index + 1 == parts { end } else { 0.0 };
                    if start == 0.0 && end == 0.0 {
                        Curve::Segment(part)
                    } else {
                        bent(part.as_cubic(), start, end)
                    }
                })
                .collect()
        }
    }
}

fn rotated(v: Vec2, angle: f64) -> Vec2 {
    let (sin, cos) = libm::sincos(angle);
    Vec2::new(cos * v.x - sin * v.y, sin * v.x + cos * v.y)
}

/// The farthest that curves drawn anew lie from the one before (mm), and where along that (mm).
fn farthest(before: &Curve, now: &[Curve]) -> (f64, f64) {
    let mut most = (0.0, 0.0);
    for curve in now {
        // All along, then closer about the farthest.
        let (mut from, mut span) = (0.0, curve.length());
        for _ in 0..3 {
            let step = span / f64::from(STEPS);
            let mut best = (-1.0, 0.0, 0.0);
            for index in 0..=STEPS {
                let at = from + step * f64::from(index);
                let (off, along) = before.nearest(curve.at(at).0);
                if off > best.0 {
                    best = (off, along, at);
                }
            }
            if best.0 > most.0 {
                most = (best.0, best.1);
            }
            (from, span) = (best.2 - step, 2.0 * step);
        }
    }
    most
}
