//! The lining of a piece.

use alloc::string::String;
use alloc::vec::Vec;
use kurbo::Point;

use super::curve::Curve;
use super::edge::{Drawn, Edge, Notch, Role};
use super::mark::{LineKind, Mark};
use super::piece::Piece;
use super::region::marks_within;
use super::shift::leg_on;
use super::swing::legs_in_order;
use super::vector::length;
use crate::Error;
use crate::dust::short_of;

/// A notch farther from where it was than its edge moved lay on cloth that is no longer there (mm).
const KEPT: f64 = 0.1;

/// An edge, and by how much it is changed.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct EdgeBy {
    /// Index of the edge.
    pub edge: usize,
    /// By how much (mm), 0 to 1000.
    pub by: f64,
}

/// How a lining ends at the hem.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum LiningHem {
    /// It hangs free: its own hem's edge lies above the shell's.
    Free {
        /// By how much it is shorter (mm), 0 to 1000.
        clearance: f64,
        /// Allowance of its own hem (mm), 0 to 1000.
        allowance: f64,
    },
    /// It is sewn to the top of the shell's hem and hangs over it in a fold, the jump.
    Jump {
        /// Finished depth of the shell's hem (mm), 0 to 1000.
        depth: f64,
        /// Its fold above the shell's edge (mm), 0 to 1000, less than the hem's depth.
        clearance: f64,
    },
    /// It ends where the shell does, as where both are sewn together there, with its seam allowance.
    Level,
}

/// What becomes of darts in a lining.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum LiningDarts {
    /// Left open and laid as tucks: two notches of the dart's name in place of its mark. Nothing strains.
    #[default]
    Tucks,
    /// Sewn as in the shell.
    Sewn,
}

/// A lining asked for. Edges are those of the shell.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Lining {
    /// Name of the piece.
    pub name: String,
    /// Name of its cloth.
    pub cloth: String,
    /// Faced edges, and how deep the facing is: the lining begins where it ends.
    pub facings: Vec<EdgeBy>,
    /// Edges let out for ease, and by how much: 2 to 3 mm at each side seam is common practice, no source.
    pub ease: Vec<EdgeBy>,
    /// Straight edges, on a fold or not, beside which a pleat is laid, and its depth there, half its cloth: at a jacket's
    /// centre back 25 mm is common practice, no source.
    pub pleats: Vec<EdgeBy>,
    /// How it ends at the hem: at all edges whose role is a hem.
    pub hem: LiningHem,
    /// What becomes of the darts.
    pub darts: LiningDarts,
    /// Allowance of its seams (mm), 0 to 1000.
    pub allowance: f64,
    /// What the shell, as it is drawn, will do in the wash, along its grain and across it (%, -90 to 100; 0 where it
    /// is washed before it is cut, or drawn as it will be).
    pub shell_change_pct: [f64; 2],
    /// What the lining's cloth will do (%).
    pub lining_change_pct: [f64; 2],
}

/// What an edge of a lining is sewn along.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Lines {
    /// The same seam as the shell's edge.
    Shell,
    /// The inner edge of the facing.
    Facing,
    /// The top of the shell's hem.
    Hem,
}

/// Edges of a lining, and what to walk them along.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LiningSeam {
    /// Index of the shell's edge they came of.
    pub shell: usize,
    /// Their indices in the finished lining.
    pub edges: Vec<usize>,
    /// What they are sewn along.
    pub along: Lines,
    /// Their length (mm).
    pub length: f64,
    /// Length of what they are sewn along (mm).
    pub other_length: f64,
    /// `length - other_length` (mm): ease, a pleat or tuck, or the cloth of the jump; negative for a free hem's clearance.
    pub difference: f64,
}

/// A lining, and what to walk.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Lined {
    /// The lining to cut.
    pub piece: Piece,
    /// The lining as it will be when it and the shell have been washed: to walk.
    pub finished: Piece,
    /// Its edges and what to walk them along, in the order of the shell's edges, without folds and a free hem.
    pub seams: Vec<LiningSeam>,
}

impl Piece {
    /// The lining of the piece: its seam lines less the facings, eased, with pleats for room, ended at the hem as asked, and
    /// cut for what its own cloth will do in the wash.
    ///
    /// A jump makes it longer than the distance from the facing to the top of the hem: its lower edge lies
    /// `depth - 2 clearance` below the shell's. Where a pleat is laid, its line is marked `pleat` where the shell's edge was,
    /// and both ends are notched so. A dart to be closed is closed first, by [`Piece::close_dart`]. Other marks and notches are
    /// carried where they lie on the lining.
    ///
    /// # Errors
    /// - `OutOfRange`, `NotFinite`: an edge there is not (`edge`), a `by`, `allowance`, `depth`, `clearance`, or a change
    ///   (`shell_change_pct`, `lining_change_pct`, with its index);
    /// - `NoSolution`: `clearance` not less than the hem's depth; a hem asked for, but no edge is one (`hem`); a pleat beside a
    ///   curve, or a fold let out otherwise (`edge`, with the index of the shell's edge); an edge of which nothing is left
    ///   (`by`, with its index); `legs` of darts that differ.
    ///
    /// # Source
    /// Geometry. That a lining is eased, pleated and jumps is common practice, no source; for the length of a jump see
    /// [`lining_length`](crate::lining::lining_length).
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Edge, EdgeBy, Lining, LiningDarts, LiningHem, Piece};
    /// let corners = [(0.0, 0.0), (250.0, 0.0), (250.0, 560.0), (0.0, 560.0)];
    /// let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
    /// let back = Piece::new("back", vec![
    ///     Edge::hem("hem", side(0), 45.0),
    ///     Edge::seam("side", side(1), 15.0),
    ///     Edge::seam("neck", side(2), 15.0),
    ///     Edge::fold("centre", side(3)),
    /// ])?;
    /// let lined = back.lining(&Lining {
    ///     name: "back lining".into(),
    ///     cloth: "lining".into(),
    ///     facings: vec![EdgeBy { edge: 2, by: 60.0 }],
    ///     ease: vec![EdgeBy { edge: 1, by: 3.0 }],
    ///     pleats: vec![EdgeBy { edge: 3, by: 25.0 }],
    ///     hem: LiningHem::Jump { depth: 45.0, clearance: 20.0 },
    ///     darts: LiningDarts::Tucks,
    ///     allowance: 10.0,
    ///     shell_change_pct: [0.0; 2],
    ///     lining_change_pct: [0.0; 2],
    /// })?;
    /// // 560 less the facing and 45 of hem is 455 straight; the jump of 25 lies double.
    /// let side = lined.seams.iter().find(|seam| seam.shell == 1).unwrap();
    /// assert!((side.length - 505.0).abs() < 1e-9 && (side.difference - 50.0).abs() < 1e-9);
    /// assert!((lined.piece.bounds().width() - 278.0).abs() < 1e-9);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn lining(&self, lining: &Lining) -> Result<Lined, Error> {
        let allowance = Error::check("allowance", lining.allowance, 0.0, 1e3)?;
        let change = changes(lining)?;
        let hem = hem(self, lining.hem)?;
        // What the shell is where the lining meets it, and what the lining is: outward from the drawn lines.
        let mut met: Vec<f64> = self.edges().iter().map(|edge| -edge.inside()).collect();
        for faced in &lining.facings {
            met[self.changed(faced, false)?] -= faced.by;
        }
        let mut by = met.clone();
        for eased in &lining.ease {
            by[self.changed(eased, false)?] += eased.by;
        }
        for pleat in &lining.pleats {
            by[self.changed(pleat, true)?] += pleat.by;
        }
        for (index, edge) in self.edges().iter().enumerate() {
            if edge.role == Role::Hem {
                met[index] -= hem.top;
                by[index] += hem.lower;
            }
        }
        for each in [&mut met, &mut by] {
            self.with_mouths(each)?;
        }
        let met = self.shifted_by(&met)?;

        let shifted = self.shifted_by(&by)?;
        let faced = |index: usize| lining.facings.iter().any(|faced| faced.edge == index);
        let (owners, edges): (Vec<usize>, Vec<Edge>) = from_first(shifted)
            .map(|(owner, mut edge)| {
                let was = &self.edges()[owner];
                edge.notches
                    .retain(|notch| was.keeps(notch, &edge.curve, by[owner]));
                edge.drawn = Drawn::Seam;
                match edge.role {
                    Role::Fold => {}
                    Role::Hem => {
                        (edge.role, edge.allowance) = hem.role.unwrap_or((Role::Seam, allowance))
                    }
                    _ if faced(owner) => (edge.role, edge.allowance) = (Role::Seam, allowance),
                    _ => edge.allowance = allowance,
                }
                edge.shallow_notches();
                (owner, edge)
            })
            .unzip();
        let marks = marks_within(self.marks_on(edges.iter()), &edges);
        let mut piece = self.remade(edges, marks, self.grain())?;
        for pleat in &lining.pleats {
            piece = piece.pleated(&self.edges()[pleat.edge].curve)?;
        }
        if lining.darts == LiningDarts::Tucks {
            piece = piece.tucked()?;
        }
        let cutting = super::Cutting {
            cloth: lining.cloth.clone(),
            interfacing: None,
            ..self.cutting().clone()
        };
        let finished = piece
            .with_name(lining.name.as_str())
            .with_cutting(cutting)?;
        let mut seams = Vec::new();
        for (index, edge) in self.edges().iter().enumerate() {
            let own: Vec<usize> = (0..owners.len()).filter(|&i| owners[i] == index).collect();
            let along = match edge.role {
                Role::Fold => continue,
                Role::Hem if hem.role.is_some() => continue,
                Role::Hem => Lines::Hem,
                _ if faced(index) => Lines::Facing,
                _ => Lines::Shell,
            };
            let length: f64 = own.iter().map(|&i| finished.edges()[i].length()).sum();
            let theirs = met.iter().filter(|(owner, _)| *owner == index);
            let other_length: f64 = theirs.map(|(_, edge)| edge.length()).sum();
            seams.push(LiningSeam {
                shell: index,
                edges: own,
                along,
                length,
                other_length,
                difference: length - other_length,
            });
        }
        let piece = match change {
            [0.0, 0.0] => finished.clone(),
            [along, across] => finished.scale_for_change(along, across)?,
        };
        Ok(Lined {
            piece,
            finished,
            seams,
        })
    }

    /// The edge that is changed, if it is one and may be; a fold only by a pleat.
    fn changed(&self, change: &EdgeBy, pleat: bool) -> Result<usize, Error> {
        let last = self.edges().len() as f64 - 1.0;
        Error::check("edge", change.edge as f64, 0.0, last)?;
        let edge = &self.edges()[change.edge];
        Error::check("by", change.by, 0.0, 1e3).map_err(|error| error.at_index(change.edge))?;
        let straight = matches!(edge.curve, Curve::Segment(segment) if segment.is_line());
        if (pleat && !straight) || (!pleat && edge.role == Role::Fold) {
            let nan = f64::NAN;
            return Err(Error::no_solution("edge", nan, nan, nan).at_index(change.edge));
        }
        Ok(change.edge)
    }

    /// The mouth of a dart moves with the edges beside it, where both move alike and it was not to move by itself.
    fn with_mouths(&self, by: &mut [f64]) -> Result<(), Error> {
        let count = self.edges().len();
        for mark in self.marks() {
            let Mark::Dart(dart) = mark else { continue };
            let [from, to] = legs_in_order(dart)?.map(|leg| self.place(leg).0);
            let (before, after) = (self.edge_before(from), self.edge_after(to));
            if by[before] != by[after] {
                continue;
            }
            let mut index = (before + 1) % count;
            while index != after && index != before {
                if by[index] == 0.0 {
                    by[index] = by[before];
                }
                index = (index + 1) % count;
            }
        }
        Ok(())
    }

    /// The lining with the line of a pleat marked where an edge of the shell was, and notched at both ends.
    fn pleated(self, edge: &Curve) -> Result<Piece, Error> {
        let middle = edge.start().midpoint(edge.end());
        let outline: Vec<_> = self.segments(1e-4).into_iter().map(|(_, s)| s).collect();
        let ends = [edge.start(), edge.end()].map(|end| leg_on(middle, end, &outline));
        let mut marks = self.marks().to_vec();
        marks.push(Mark::Line {
            name: "pleat".into(),
            kind: LineKind::Fold,
            curve: Curve::line(ends[0], ends[1]),
        });
        self.notched_at(&ends, "pleat")?.with_marks(marks)
    }

    /// The lining with every dart laid as a tuck.
    fn tucked(self) -> Result<Piece, Error> {
        let mut piece = self;
        let marks = piece.marks().to_vec();
        let mut kept = Vec::new();
        for mark in marks {
            match mark {
                Mark::Dart(dart) => piece = piece.notched_at(&dart.legs, &dart.name)?,
                other => kept.push(other),
            }
        }
        piece.with_marks(kept)
    }

    /// The piece with a notch of this name at each of these points on its outline.
    fn notched_at(&self, points: &[Point], name: &str) -> Result<Piece, Error> {
        let mut edges = self.edges().to_vec();
        for point in points {
            let (place, _) = self.place(*point);
            let notch = Notch::new(name, place.distance, 1);
            edges[place.edge].notches.push(notch);
        }
        self.remade(edges, self.marks().to_vec(), self.grain())
    }
}

impl Edge {
    /// Whether a notch that was carried to a curve this edge became, `by` away, lies where it was but for that.
    fn keeps(&self, notch: &Notch, now: &Curve, by: f64) -> bool {
        let there = now.at(notch.distance).0;
        let named = self.notches.iter().filter(|own| own.name == notch.name);
        let off = |own: &Notch| length(self.curve.at(own.distance).0 - there);
        named.map(off).fold(f64::INFINITY, f64::min) <= by.abs() + KEPT
    }
}

/// What a hem asks for: how far its top lies above the shell's edge, how far the lining's lower edge lies below that, and
/// what that edge then is, if it is not a seam.
struct Hem {
    top: f64,
    lower: f64,
    role: Option<(Role, f64)>,
}

fn hem(shell: &Piece, hem: LiningHem) -> Result<Hem, Error> {
    let asked = match hem {
        LiningHem::Free {
            clearance,
            allowance,
        } => Hem {
            top: 0.0,
            lower: -Error::check("clearance", clearance, 0.0, 1e3)?,
            role: Some((Role::Hem, Error::check("allowance", allowance, 0.0, 1e3)?)),
        },
        LiningHem::Jump { depth, clearance } => {
            let top = Error::check("depth", depth, 0.0, 1e3)?;
            let clearance = Error::check("clearance", clearance, 0.0, 1e3)?;
            if clearance >= top {
                return Err(Error::no_solution(
                    "clearance",
                    clearance,
                    0.0,
                    short_of(top),
                ));
            }
            Hem {
                top,
                lower: (top - clearance) - clearance,
                role: None,
            }
        }
        LiningHem::Level => Hem {
            top: 0.0,
            lower: 0.0,
            role: None,
        },
    };
    let none = shell.edges().iter().all(|edge| edge.role != Role::Hem);
    if none && !matches!(hem, LiningHem::Level) {
        let nan = f64::NAN;
        return Err(Error::no_solution("hem", nan, nan, nan));
    }
    Ok(asked)
}

/// What the lining changes by as against the shell, along the grain and across it (%).
fn changes(lining: &Lining) -> Result<[f64; 2], Error> {
    let mut change = [0.0; 2];
    for (index, change) in change.iter_mut().enumerate() {
        let check = |name, pct| {
            Error::check(name, pct, -90.0, 100.0).map_err(|error| error.at_index(index))
        };
        let shell = check("shell_change_pct", lining.shell_change_pct[index])?;
        let own = check("lining_change_pct", lining.lining_change_pct[index])?;
        if own != shell {
            *change = ((100.0 + own) / (100.0 + shell) - 1.0) * 100.0;
        }
    }
    Ok(change)
}

/// The ring begun at the first part of the first edge.
fn from_first(mut edges: Vec<(usize, Edge)>) -> impl Iterator<Item = (usize, Edge)> {
    let count = edges.len();
    let first = |at: usize| edges[at].0 == 0 && edges[(at + count - 1) % count].0 != 0;
    let start = (0..count).find(|&at| first(at)).unwrap_or(0);
    edges.rotate_left(start);
    edges.into_iter()
}
