//! A tiered skirt.

use alloc::format;
use alloc::vec;
use alloc::vec::Vec;

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{Sewn, row};
use super::{Allowances, Draft, GatheredStrip};
use crate::Error;
use crate::outline::{Corner, Edge, Piece, Role, Walked, Way};
use crate::tier::{breadths, tiers};

/// The most strips a tier is joined from.
const MOST_STRIPS: u32 = 100;
/// The longest way round a tier (mm).
const LONGEST: f64 = 1e5;

/// A skirt of tiers, each gathered onto the one above, the first onto a waist edge.
///
/// Each tier is joined from as few strips as the cloth's width allows, all equally long ([`breadths`]). Gathered edges and the
/// edges they go on have notches `quarter 1` to `quarter 3`, so that the gathers are shared out evenly.
///
/// Pieces `tier N`, or `tier N, strip M`, each with the edges `gathered`, `end`, `start`, and `hem`: the next tier's seam, in
/// the last the hem.
///
/// # Source
/// [`tiers`]. How the length is shared over the tiers is taste.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct TieredSkirt {
    /// Edge that the first tier is gathered to (mm), 1 to 1e4.
    pub waist: f64,
    /// Each tier over the one above, from the top, 1 to 10, 1 to 12 tiers.
    pub ratios: Vec<f64>,
    /// Finished depth of each tier, from the top (mm), 1 to 5000, as many.
    pub depths: Vec<f64>,
    /// Width of the cloth, selvedges off, or length of each strip there is (mm), 10 to 1e5.
    pub cloth_width: f64,
    /// Allowances.
    pub allowances: Allowances,
}

impl TieredSkirt {
    /// Drafts the skirt: a piece for each strip of each tier.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange`, `Count` or `NoSolution`, naming the measure.
    ///
    /// # Examples
    /// ```
    /// use recloth::draft::{Allowances, TieredSkirt};
    /// let skirt = TieredSkirt {
    ///     waist: 800.0, ratios: vec![1.5, 1.5], depths: vec![300.0, 350.0], cloth_width: 1400.0,
    ///     allowances: Allowances { seam: 15.0, hem: 20.0 },
    /// };
    /// let draft = skirt.draft()?;
    /// // 1200 in one strip of 1370 and 1800 in two.
    /// assert_eq!(draft.pieces.len(), 3);
    /// assert!((draft.pieces[1].bounds().width() - 900.0).abs() < 1e-9);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn draft(&self) -> Result<Draft, Error> {
        let count = self.ratios.len();
        Error::check_list("ratios", &self.ratios, 1.0, 10.0, (1, 12))?;
        Error::check_list("depths", &self.depths, 1.0, 5e3, (count, count))?;
        drafted(self)
    }

    /// One tier: strips of `strips` equal lengths, with the quarters of the next tier on the lower edge.
    fn tier(&self, index: usize, above: f64, strips: u32) -> Result<Draft, Error> {
        let last = index + 1 == self.ratios.len();
        let ratio = self.ratios[index];
        let strip = GatheredStrip {
            finished: above,
            ratio,
            depth: self.depths[index],
            strips,
            allowances: if last {
                self.allowances
            } else {
                Allowances {
                    hem: self.allowances.seam,
                    ..self.allowances
                }
            },
        };
        let mut draft = strip.attempt()?;
        let whole = above * ratio;
        let length = whole / f64::from(strips);
        for (number, piece) in draft.pieces.iter_mut().enumerate() {
            let from = length * number as f64;
            let edges = piece.edges().iter().map(|edge| {
                let mut edge = edge.clone();
                if edge.role == Role::Hem && !last {
                    edge = Edge::seam("lower", edge.curve, edge.allowance);
                    for quarter in 1..4 {
                        let at = whole * f64::from(quarter) / 4.0 - from;
                        if at > 0.0 && at < length {
                            edge = edge.notch(format!("quarter {quarter}"), at, 1);
                        }
                    }
                } else if !last {
                    edge.corner = Corner::default();
                }
                edge
            });
            let name = if strips == 1 {
                format!("tier {}", index + 1)
            } else {
                format!("tier {}, strip {}", index + 1, number + 1)
            };
            let made = Piece::new(name, edges.collect())?.with_cutting(piece.cutting().clone())?;
            *piece = match piece.grain() {
                Some(grain) => made.with_grain(grain)?,
                None => made,
            };
        }
        Ok(draft)
    }
}

impl Measured for TieredSkirt {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = vec![
            ("waist", Dial::Number(&mut self.waist, 1.0, 1e4)),
            (
                "cloth_width",
                Dial::Number(&mut self.cloth_width, 10.0, 1e5),
            ),
        ];
        dials.extend(self.allowances.dials());
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let mut flats = vec![0.0; self.ratios.len()];
        let skirt = tiers(self.waist, &self.ratios, &mut flats)?;
        let mut whole = Draft::new(Vec::new(), skirt.doubts);
        let mut above = self.waist;
        let mut upper: Vec<Piece> = Vec::new();
        for (index, &flat) in flats.iter().enumerate() {
            if flat > LONGEST {
                let most = self.ratios[index] * LONGEST / flat;
                let error = Error::no_solution("ratios", self.ratios[index], 1.0, most);
                return Err(error.at_index(index));
            }
            let joined = breadths(flat, self.cloth_width, self.allowances.seam)?;
            if joined.count > MOST_STRIPS {
                let each = flat / f64::from(MOST_STRIPS) + 2.0 * self.allowances.seam;
                let width = self.cloth_width;
                return Err(Error::no_solution("cloth_width", width, each, f64::NAN));
            }
            let tier = self.tier(index, above, joined.count)?;
            whole.checks.extend(tier.checks);
            let names: Vec<&str> = tier.pieces.iter().map(Piece::name).collect();
            for (mut seam, pair) in tier.seams.into_iter().zip(names.windows(2)) {
                seam.name = format!("{} to {}", pair[0], pair[1]);
                seam.edges
                    .iter_mut()
                    .for_each(|edge| edge.piece = pair[0].into());
                seam.other_edges
                    .iter_mut()
                    .for_each(|edge| edge.piece = pair[1].into());
                whole.seams.push(seam);
            }
            if !upper.is_empty() {
                // Gathered edges run from right to left, and so the strips come.
                let gathered: Vec<Walked<'_>> = tier
                    .pieces
                    .iter()
                    .rev()
                    .flat_map(|p| row(p, "gathered"))
                    .collect();
                let lower: Vec<Walked<'_>> =
                    upper.iter().rev().flat_map(|p| row(p, "lower")).collect();
                whole.sew(Sewn {
                    name: &format!("tier {} to tier {}", index + 1, index),
                    edges: gathered,
                    others: lower,
                    way: Way::Against,
                    ease: flat - above,
                    runs: [None, None],
                });
            }
            above = flat;
            whole.pieces.extend(tier.pieces.iter().cloned());
            upper = tier.pieces;
        }
        whole.held("waist", self.waist)
    }
}
