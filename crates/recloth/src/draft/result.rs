//! What a draft gives: pieces, the seams to walk, and what was checked.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use crate::Error;
use crate::outline::{Mark, Piece, Role, Walk, Walked, Way, walk_rows};

/// Seams may miss their ease by this much (mm).
const SEAM: f64 = 0.5;
/// Edges that run on over a seam may kink by this much (degrees).
const RUN: f64 = 1.0;
/// A hem may be off level by this much (mm).
const LEVEL: f64 = 0.5;

/// An edge of a piece, by name.
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct EdgeName {
    /// Name of the piece.
    pub piece: String,
    /// Name of the edge.
    pub edge: String,
}

/// A seam of a draft: edges to be walked along other edges before cutting.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Seam {
    /// What it is.
    pub name: String,
    /// Edges on one side, in the order met.
    pub edges: Vec<EdgeName>,
    /// Edges on the other side, in the order met.
    pub other_edges: Vec<EdgeName>,
    /// Which way the others run.
    pub way: Way,
    /// What `edges` are meant to be longer (mm): ease or fullness; negative where they are stretched.
    pub ease: f64,
    /// What walking them found.
    pub walk: Walk,
}

/// What a check is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum CheckKind {
    /// Two edges sewn together differ by the ease meant (mm).
    Seam,
    /// An edge runs on smoothly over a seam, a fold or a closed dart (degrees).
    Run,
    /// A hem hangs level (mm).
    Level,
}

/// Something a draft found right about itself.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Check {
    /// What was looked at.
    pub what: String,
    /// What kind of check it is, which says the unit.
    pub kind: CheckKind,
    /// By how much it misses (mm, or degrees for `Run`).
    pub found: f64,
    /// By how much it may miss, either way.
    pub within: f64,
}

/// A length to be cut that needs no pattern: tape, elastic, a strip.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct NamedLength {
    /// What it is of.
    pub name: String,
    /// The length (mm).
    pub length: f64,
}

/// What a draft gives.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct Draft {
    /// The pieces.
    pub pieces: Vec<Piece>,
    /// The seams to walk, with what walking them found.
    pub seams: Vec<Seam>,
    /// What was checked. All of it holds: a draft in which something does not is an error.
    pub checks: Vec<Check>,
    /// What is cut without a pattern.
    pub lengths: Vec<NamedLength>,
    /// Doubts raised (bits of [`crate::doubt`]).
    pub doubts: u64,
    /// Cautions (bits of [`crate::doubt`]).
    pub cautions: u64,
}

/// Edges walked along others.
pub(super) struct Sewn<'a> {
    pub(super) name: &'a str,
    pub(super) edges: Vec<Walked<'a>>,
    pub(super) others: Vec<Walked<'a>>,
    pub(super) way: Way,
    /// What `edges` are meant to be longer (mm).
    pub(super) ease: f64,
    /// What must run on smoothly over the start and the end of the seam, if anything.
    pub(super) runs: [Option<&'a str>; 2],
}

impl Draft {
    pub(super) fn new(pieces: Vec<Piece>, doubts: u64) -> Draft {
        Draft {
            pieces,
            doubts,
            ..Draft::default()
        }
    }

    /// The first piece of this name.
    pub fn piece(&self, name: &str) -> Option<&Piece> {
        self.pieces.iter().find(|piece| piece.name() == name)
    }

    /// Walks a seam, keeps what it finds, and checks it.
    pub(super) fn sew(&mut self, sewn: Sewn<'_>) {
        let walk = walk_rows(&sewn.edges, &sewn.others, sewn.way);
        self.check(
            CheckKind::Seam,
            format!("seam {}", sewn.name),
            walk.difference - sewn.ease,
        );
        let kinks = [walk.start_kink_deg, walk.end_kink_deg];
        for (what, kink) in sewn.runs.into_iter().zip(kinks) {
            if let (Some(what), Some(kink)) = (what, kink) {
                self.check(
                    CheckKind::Run,
                    format!("{what} over seam {}", sewn.name),
                    kink,
                );
            }
        }
        for notch in walk.notches.iter().filter(|notch| notch.other.is_some()) {
            // Within a seam without ease all notches meet; elsewhere the ease lies where the sections put it.
            if sewn.ease == 0.0 {
                let apart = notch.difference().unwrap_or(0.0);
                let what = format!("notch {} of seam {}", notch.name, sewn.name);
                self.check(CheckKind::Seam, what, apart);
            }
        }
        let names = |edges: &[Walked<'_>]| {
            edges
                .iter()
                .map(|&(piece, edge)| EdgeName {
                    piece: piece.name().into(),
                    edge: piece.edges()[edge].name.clone(),
                })
                .collect()
        };
        self.seams.push(Seam {
            name: sewn.name.into(),
            edges: names(&sewn.edges),
            other_edges: names(&sewn.others),
            way: sewn.way,
            ease: sewn.ease,
            walk,
        });
    }

    /// Keeps a check.
    pub(super) fn check(&mut self, kind: CheckKind, what: String, found: f64) {
        let within = match kind {
            CheckKind::Seam => SEAM,
            CheckKind::Run => RUN,
            CheckKind::Level => LEVEL,
        };
        self.checks.push(Check {
            what,
            kind,
            found,
            within,
        });
    }

    /// Checks that edges run on over the fold of a piece, and over its darts when they are folded.
    pub(super) fn check_runs(&mut self, piece: &Piece) {
        let edges = piece.edges();
        let count = edges.len();
        for (index, edge) in edges.iter().enumerate() {
            let (before, after) = ((index + count - 1) % count, (index + 1) % count);
            if edge.role == Role::Fold {
                for (first, second, beside) in [(before, index, before), (index, after, after)] {
                    let turn = turn_deg(piece, first, second);
                    self.check(
                        CheckKind::Run,
                        format!("{} of {} over its fold", edges[beside].name, piece.name()),
                        2.0 * turn - 180.0,
                    );
                }
            }
        }
        for mark in piece.marks() {
            let Mark::Dart(dart) = mark else { continue };
            let mut kink = -180.0;
            for leg in dart.legs {
                // Of the edges that meet at the leg's end, the cap lies within the dart.
                let other = if leg == dart.legs[0] {
                    dart.legs[1]
                } else {
                    dart.legs[0]
                };
                let away = edges.iter().find_map(|edge| {
                    let (start, end) = (edge.curve.start(), edge.curve.end());
                    let here = |p: kurbo::Point| libm::hypot(p.x - leg.x, p.y - leg.y) < 1e-6;
                    let along = if here(start) {
                        edge.curve.start_tangent()
                    } else if here(end) {
                        -edge.curve.end_tangent()
                    } else {
                        return None;
                    };
                    let mouth = other - leg;
                    (along.x * mouth.x + along.y * mouth.y < 0.0).then_some(along)
                });
                let Some(away) = away else { continue };
                let down = dart.point - leg;
                let cross = away.x * down.y - away.y * down.x;
                let dot = away.x * down.x + away.y * down.y;
                kink += libm::atan2(cross.abs(), dot).to_degrees();
            }
            self.check(
                CheckKind::Run,
                format!("edge over dart {} of {}, folded", dart.name, piece.name()),
                kink,
            );
        }
    }

    /// Adds the length of something cut without a pattern.
    pub(super) fn length(&mut self, name: impl Into<String>, length: f64) {
        let name = name.into();
        self.lengths.push(NamedLength { name, length });
    }

    /// The draft, if all checks hold; else an error that names this measure.
    pub(super) fn held(self, argument: &'static str, value: f64) -> Result<Draft, Error> {
        let holds = |check: &Check| check.found.abs() <= check.within;
        if self.checks.iter().all(holds) {
            Ok(self)
        } else {
            Err(Error::no_solution(argument, value, f64::NAN, f64::NAN))
        }
    }
}

/// How much the outline turns to the left from one edge to the next (degrees).
pub(super) fn turn_deg(piece: &Piece, first: usize, second: usize) -> f64 {
    let a = piece.edges()[first].curve.end_tangent();
    let b = piece.edges()[second].curve.start_tangent();
    libm::atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y).to_degrees()
}

/// The edges named `stem`, or `stem` and a number, in the order of the ring.
pub(super) fn row<'a>(piece: &'a Piece, stem: &str) -> Vec<Walked<'a>> {
    let named: Vec<bool> = piece
        .edges()
        .iter()
        .map(|edge| {
            let rest = edge.name.strip_prefix(stem);
            rest.is_some_and(|rest| {
                rest.is_empty()
                    || rest
                        .strip_prefix(' ')
                        .is_some_and(|number| number.parse::<u32>().is_ok())
            })
        })
        .collect();
    let count = named.len();
    // The row may run over the end of the list.
    let start = (0..count)
        .find(|&index| named[index] && !named[(index + count - 1) % count])
        .unwrap_or(0);
    (0..count)
        .map(|step| (start + step) % count)
        .filter(|&index| named[index])
        .map(|index| (piece, index))
        .collect()
}

/// Several such rows one after another.
pub(super) fn rows<'a>(piece: &'a Piece, stems: &[&str]) -> Vec<Walked<'a>> {
    stems.iter().flat_map(|stem| row(piece, stem)).collect()
}

/// Length of a row (mm).
pub(super) fn row_length(row: &[Walked<'_>]) -> f64 {
    row.iter()
        .map(|&(piece, edge)| piece.edges()[edge].length())
        .sum()
}

/// The row of a given piece, or an error that names it.
pub(super) fn given_row<'a>(
    piece: &'a Piece,
    stem: &'static str,
) -> Result<Vec<Walked<'a>>, Error> {
    let row = row(piece, stem);
    if row.is_empty() {
        let nan = f64::NAN;
        return Err(Error::no_solution(stem, nan, nan, nan));
    }
    Ok(row)
}
