//! The lining of a whole draft.

use alloc::string::String;
use alloc::vec::Vec;

use super::result::{Sewn, row};
use super::{Draft, EdgeName, Seam};
use crate::Error;
use crate::outline::{EdgeBy, Lined, Lining, LiningDarts, LiningHem, Piece, Role, Walked, Way};

/// Edges of a draft's pieces by name, and by how much they are changed.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct NamedBy {
    /// Name of the piece; blank for every piece that is lined and has such an edge.
    #[cfg_attr(feature = "serde", serde(default))]
    pub piece: String,
    /// Name of the edge, where `waist` is `waist 1` and `waist 2` too, or of a seam of the draft: its edges on both sides.
    pub edge: String,
    /// By how much (mm), 0 to 1000.
    pub by: f64,
}

/// A lining asked for of a whole draft: as [`Lining`], but that edges are named.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DraftLining {
    /// Names of the pieces that are lined; none for all.
    pub pieces: Vec<String>,
    /// Name of the lining's cloth.
    pub cloth: String,
    /// Faced edges, and how deep the facing is.
    pub facings: Vec<NamedBy>,
    /// Edges let out for ease, and by how much.
    pub ease: Vec<NamedBy>,
    /// Straight edges beside which a pleat is laid, and its depth.
    pub pleats: Vec<NamedBy>,
    /// How it ends at the hem of each piece that has one; other pieces end level.
    pub hem: LiningHem,
    /// What becomes of the darts.
    pub darts: LiningDarts,
    /// Allowance of its seams (mm), 0 to 1000.
    pub allowance: f64,
    /// What the shell will do in the wash, along its grain and across it (%, -90 to 100).
    pub shell_change_pct: [f64; 2],
    /// What the lining's cloth will do (%).
    pub lining_change_pct: [f64; 2],
}

/// The lining of one piece of a draft.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LinedPiece {
    /// Name of the piece.
    pub piece: String,
    /// Its lining, and what that is sewn along.
    pub lined: Lined,
}

/// The lining of a draft.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LinedDraft {
    /// The pieces to cut; the draft's seams between pieces that are lined, walked along the linings as they will be once
    /// washed; and what was checked.
    pub draft: Draft,
    /// Piece by piece, in the draft's order.
    pub linings: Vec<LinedPiece>,
}

impl Draft {
    /// The lining of the draft, or of some of its pieces: each by [`Piece::lining`], named as its piece and `lining`. The
    /// draft's seams are kept: those that have both sides lined are walked again, with the ease meant there.
    ///
    /// # Errors
    /// - `NoSolution` naming `pieces`, `facings`, `ease` or `pleats`, with the index in that list: there is no such piece or
    ///   edge;
    /// - what [`Piece::lining`] says, with the index of the piece in the draft;
    /// - `OutOfRange` naming `seam`, with its index in the draft: its sides, or notches on them, would miss each other by so much
    ///   (mm, at most 0.5 either way) once lined: facings of two depths meet there, say.
    ///
    /// # Source
    /// As of [`Piece::lining`].
    ///
    /// # Examples
    /// ```
    /// use recloth::draft::{Allowances, Centre, DartedSkirt, DraftLining, NamedBy};
    /// use recloth::outline::{LiningDarts, LiningHem};
    /// let skirt = DartedSkirt {
    ///     waist: 720.0, hip: 980.0, hip_depth: 200.0, length: 600.0, flare: 30.0, forward: 10.0, front_panel: 250.0,
    ///     back_panel: 235.0, front_darts: 1, back_darts: 2, largest_intake: 30.0, front_dart_length: 90.0,
    ///     back_dart_length: 120.0, side_rise: 12.0, front_centre: Centre::Fold, back_centre: Centre::Seam,
    ///     allowances: Allowances { seam: 15.0, hem: 40.0 },
    /// };
    /// let by = |edge: &str, by: f64| NamedBy { piece: String::new(), edge: edge.into(), by };
    /// let lined = skirt.draft()?.lining(&DraftLining {
    ///     pieces: Vec::new(),
    ///     cloth: "lining".into(),
    ///     facings: Vec::new(),
    ///     ease: vec![by("side", 3.0)],
    ///     pleats: Vec::new(),
    ///     hem: LiningHem::Free { clearance: 25.0, allowance: 20.0 },
    ///     darts: LiningDarts::Tucks,
    ///     allowance: 10.0,
    ///     shell_change_pct: [0.0; 2],
    ///     lining_change_pct: [0.0; 2],
    /// })?;
    /// assert_eq!(lined.draft.pieces[0].name(), "skirt front lining");
    /// assert!(lined.draft.seams.iter().all(|seam| (seam.walk.difference - seam.ease).abs() <= 0.5));
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn lining(&self, asked: &DraftLining) -> Result<LinedDraft, Error> {
        let nan = f64::NAN;
        let wanted = |piece: &Piece| {
            asked.pieces.is_empty() || asked.pieces.iter().any(|name| name == piece.name())
        };
        for (index, name) in asked.pieces.iter().enumerate() {
            if self.piece(name).is_none() {
                return Err(Error::no_solution("pieces", nan, nan, nan).at_index(index));
            }
        }
        let lists = [
            ("facings", &asked.facings),
            ("ease", &asked.ease),
            ("pleats", &asked.pleats),
        ];
        for (argument, list) in lists {
            for (index, named) in list.iter().enumerate() {
                let met = |piece: &Piece| wanted(piece) && !self.named(piece, named).is_empty();
                if !self.pieces.iter().any(met) {
                    return Err(Error::no_solution(argument, nan, nan, nan).at_index(index));
                }
            }
        }
        let mut linings = Vec::new();
        for (index, piece) in self.pieces.iter().enumerate() {
            if !wanted(piece) {
                continue;
            }
            let edges = |list: &[NamedBy]| -> Vec<EdgeBy> {
                let by = |named: &NamedBy| {
                    let by = named.by;
                    let edges = self.named(piece, named).into_iter();
                    edges.map(move |edge| EdgeBy { edge, by })
                };
                list.iter().flat_map(by).collect()
            };
            let hemmed = piece.edges().iter().any(|edge| edge.role == Role::Hem);
            let lining = Lining {
                name: alloc::format!("{} lining", piece.name()),
                cloth: asked.cloth.clone(),
                facings: edges(&asked.facings),
                ease: edges(&asked.ease),
                pleats: edges(&asked.pleats),
                hem: if hemmed { asked.hem } else { LiningHem::Level },
                darts: asked.darts,
                allowance: asked.allowance,
                shell_change_pct: asked.shell_change_pct,
                lining_change_pct: asked.lining_change_pct,
            };
            let lined = piece.lining(&lining);
            linings.push(LinedPiece {
                piece: piece.name().into(),
                lined: lined.map_err(|error| error.at_index(index))?,
            });
        }
        let pieces = linings.iter().map(|one| one.lined.piece.clone());
        let mut draft = Draft::new(pieces.collect(), 0);
        for (index, seam) in self.seams.iter().enumerate() {
            let sides = (
                self.lined_row(&linings, &seam.edges, Way::Along),
                self.lined_row(&linings, &seam.other_edges, seam.way),
            );
            if let (Some(edges), Some(others)) = sides {
                draft
                    .sew_lined(seam, edges, others)
                    .map_err(|error| error.at_index(index))?;
            }
        }
        Ok(LinedDraft { draft, linings })
    }

    /// The edges of a piece that are meant.
    fn named(&self, piece: &Piece, named: &NamedBy) -> Vec<usize> {
        if !named.piece.is_empty() && named.piece != piece.name() {
            return Vec::new();
        }
        let own = row(piece, &named.edge).into_iter().map(|(_, edge)| edge);
        let seams = self.seams.iter().filter(|seam| seam.name == named.edge);
        let sewn = seams
            .flat_map(|seam| seam.edges.iter().chain(&seam.other_edges))
            .filter(|edge| edge.piece == piece.name())
            .filter_map(|edge| piece.edge(&edge.edge));
        let mut edges: Vec<usize> = own.chain(sewn).collect();
        edges.sort_unstable();
        edges.dedup();
        edges
    }

    /// The edges of linings that came of these, in the order met; none where one of them has no lining.
    fn lined_row<'a>(
        &self,
        linings: &'a [LinedPiece],
        names: &[EdgeName],
        way: Way,
    ) -> Option<Vec<Walked<'a>>> {
        let mut edges = Vec::new();
        for name in names {
            let shell = self.piece(&name.piece)?.edge(&name.edge)?;
            let one = linings.iter().find(|one| one.piece == name.piece)?;
            let seam = one.lined.seams.iter().find(|seam| seam.shell == shell)?;
            let own = seam.edges.iter().map(|&edge| (&one.lined.finished, edge));
            match way {
                Way::Along => edges.extend(own),
                Way::Against => edges.extend(own.rev()),
            }
        }
        (!edges.is_empty()).then_some(edges)
    }

    /// Walks a seam of the shell along its lining; an error where it misses.
    fn sew_lined(
        &mut self,
        seam: &Seam,
        edges: Vec<Walked<'_>>,
        others: Vec<Walked<'_>>,
    ) -> Result<(), Error> {
        let before = self.checks.len();
        self.sew(Sewn {
            name: &seam.name,
            edges,
            others,
            way: seam.way,
            ease: seam.ease,
            runs: [None; 2],
        });
        for check in &self.checks[before..] {
            Error::check("seam", check.found, -check.within, check.within)?;
        }
        Ok(())
    }
}
