//! Fullness let into a piece: slashed across, and spread.

use alloc::vec::Vec;
use kurbo::{Affine, Point, Vec2};

use super::edge::Edge;
use super::piece::Piece;
use super::place::{NOTHING, Place, across};
use super::region::{Region, moved_grain, moved_marks, share_marks};
use super::segment::Segment;
use super::swing::{about, still};
use super::vector::{left, length, unit};
use crate::Error;

/// A straight slash across a piece, and how far it is spread.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Slash {
    /// Where it starts: the end that is spread.
    pub open: Place,
    /// Where it ends: the end that is the hinge, or is spread too.
    pub hinge: Place,
    /// How far it opens at its start (mm), 0 to 10 000.
    pub open_by: f64,
    /// How far it opens at its end (mm), 0 to 10 000: 0 for a hinge, as much as `open_by` for a parallel spread.
    pub hinge_by: f64,
}

impl Piece {
    /// Slashes a piece across and spreads it: for flare from a hinge, for gathers or pleats parallel. The slashes lie side
    /// by side: all start on one stretch of the outline and end on another, and may share a hinge. What opens is bridged
    /// straight by edges of the same name: smooth them where they should curve.
    ///
    /// A slash opens by `hinge_by` along its whole length, square to it, and turns about its end until its start has
    /// opened as much farther as `open_by` asks, measured straight across. The longest part of the outline, or that with
    /// the fold, stays in its place; marks and grain go with the part they lie in, and lines are cut where a slash crosses
    /// them.
    ///
    /// # Errors
    /// - `OutOfRange`: a slash's `open` or `hinge` place, `open_by`, `hinge_by` (`at` is the index of the slash);
    ///   more than its length in turning (`open_by`);
    /// - `NoSolution`: slashes that cross or do not lie side by side (`slashes`); a dart or buttonhole in the way of one
    ///   (`mark`, with its index); an end within an edge on a fold (`open`, `hinge`: unfold the piece first);
    /// - `Count`: not 1 to 100 `slashes`. `Outline`: the spread parts would lie over each other.
    ///
    /// # Examples
    /// ```
    /// use recloth::outline::{Curve, Edge, Piece, Slash};
    /// let corners = [(0.0, 0.0), (300.0, 0.0), (300.0, 600.0), (0.0, 600.0)];
    /// let names = ["hem", "side", "waist", "centre"];
    /// let edges = (0..4).map(|i| Edge::seam(names[i], Curve::line(corners[i], corners[(i + 1) % 4]), 10.0)).collect();
    /// let skirt = Piece::new("skirt", edges)?;
    /// // Spread 60 at the middle of the hem, hinged at the waist.
    /// let (open, hinge) = (skirt.place((150.0, 0.0)).0, skirt.place((150.0, 600.0)).0);
    /// let flared = skirt.slash_and_spread(&[Slash { open, hinge, open_by: 60.0, hinge_by: 0.0 }])?;
    /// let hem: f64 = flared.edges().iter().filter(|e| e.name.starts_with("hem")).map(|e| e.length()).sum();
    /// assert!((hem - 360.0).abs() < 1e-9);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn slash_and_spread(&self, slashes: &[Slash]) -> Result<Piece, Error> {
        Error::check_items("slashes", slashes.len(), 1, 100)?;
        let mut checked = Vec::new();
        for (index, slash) in slashes.iter().enumerate() {
            let check = || -> Result<Slash, Error> {
                let open = self.check_place("open", slash.open)?;
                let hinge = self.check_place("hinge", slash.hinge)?;
                let hinge_by = Error::check("hinge_by", slash.hinge_by, 0.0, 1e4)?;
                let span = length(self.point_at(open) - self.point_at(hinge));
                let most = (hinge_by + span).min(1e4);
                let open_by = Error::check("open_by", slash.open_by, 0.0, most)?;
                Error::check("hinge_by", hinge_by, 0.0, open_by + span)?;
                Ok(Slash {
                    open,
                    hinge,
                    open_by,
                    hinge_by,
                })
            };
            checked.push(check().map_err(|error| error.at_index(index))?);
        }
        let nan = f64::NAN;
        let slashes = self.side_by_side(&checked).ok_or(Error::no_solution(
            "slashes",
            slashes.len() as f64,
            nan,
            nan,
        ))?;

        let cuts: Vec<Segment> = slashes
            .iter()
            .map(|slash| Segment::line(self.point_at(slash.open), self.point_at(slash.hinge)))
            .collect();
        // Region 0 lies before the first slash, region i after slash i - 1. Each has a stretch of the outline before the
        // starts and one after the ends.
        let count = slashes.len();
        let mut regions = Vec::new();
        let mut firsts = Vec::new();
        let mut motion = Affine::IDENTITY;
        for index in 0..=count {
            let before = index.checked_sub(1).map(|i| (slashes[i], cuts[i]));
            let after = slashes.get(index).map(|slash| (*slash, cuts[index]));
            let mut border: Vec<Segment> = Vec::new();
            border.extend(after.map(|(_, cut)| cut));
            border.extend(before.map(|(_, cut)| cut.reversed()));
            if let Some((slash, cut)) = before {
                motion *= spread(&slash, &cut);
            }
            let (first, second) = match (before, after) {
                (None, Some((next, _))) => (self.run(next.hinge, next.open), Vec::new()),
                (Some((last, _)), Some((next, _))) => (
                    self.run(last.open, next.open),
                    self.run(next.hinge, last.hinge),
                ),
                (Some((last, _)), None) => (self.run(last.open, last.hinge), Vec::new()),
                (None, None) => (self.edges().to_vec(), Vec::new()),
            };
            firsts.push(first.len());
            let edges = first.into_iter().chain(second).collect();
            regions.push(Region::new(edges, &border, motion));
        }
        let back = regions[still(&regions)].motion.inverse();
        for region in &mut regions {
            region.motion = if region.motion == back.inverse() {
                Affine::IDENTITY
            } else {
                back * region.motion
            };
        }
        let marks = moved_marks(share_marks(self, &regions, &cuts, None)?, &regions);
        // Out along the starts, back along the ends, with a bridge over every gap.
        let mut ring = Ring { edges: Vec::new() };
        for (index, region) in regions.iter().enumerate() {
            ring.edges.extend(region.moved().take(firsts[index]));
            if let Some(slash) = slashes.get(index) {
                let ends = [region.motion, regions[index + 1].motion];
                ring.bridge(self, slash.open, ends);
            }
        }
        for index in (0..count).rev() {
            let ends = [regions[index + 1].motion, regions[index].motion];
            ring.bridge(self, slashes[index].hinge, ends);
            ring.edges
                .extend(regions[index].moved().skip(firsts[index]));
        }
        self.remade(ring.edges, marks, moved_grain(self, &regions))
    }

    /// The slashes in the order of the ring, if they lie side by side.
    fn side_by_side(&self, slashes: &[Slash]) -> Option<Vec<Slash>> {
        let whole: f64 = self.edges().iter().map(Edge::length).sum();
        slashes.iter().find_map(|base| {
            let from = self.along(base.open);
            let onward = |place: Place| {
                let gap = self.along(place) - from;
                if gap < -NOTHING { gap + whole } else { gap }
            };
            let mut order = slashes.to_vec();
            order.sort_by(|a, b| {
                let (a, b) = (
                    (onward(a.open), -onward(a.hinge)),
                    (onward(b.open), -onward(b.hinge)),
                );
                a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1))
            });
            let apart = |pair: &[Slash]| {
                let (open, hinge) = (
                    onward(pair[1].open) - onward(pair[0].open),
                    onward(pair[0].hinge) - onward(pair[1].hinge),
                );
                open >= 0.0 && hinge >= -NOTHING && open + hinge > NOTHING
            };
            let last = order.last()?;
            let clear = onward(last.hinge) > onward(last.open) + NOTHING;
            (clear && order.windows(2).all(apart)).then_some(order)
        })
    }
}

/// The motion of what lies beyond a slash.
fn spread(slash: &Slash, cut: &Segment) -> Affine {
    let (open, hinge) = (cut.start, cut.end);
    let reach = length(open - hinge);
    let onward: Vec2 = left(unit(open - hinge)) * slash.hinge_by;
    let turn = 2.0 * libm::asin((slash.open_by - slash.hinge_by) / (2.0 * reach));
    about(hinge + onward, turn) * Affine::translate(onward)
}

/// A ring of edges as it is put together.
struct Ring {
    edges: Vec<Edge>,
}

impl Ring {
    /// Adds an edge over the gap at a place that two motions have torn apart.
    fn bridge(&mut self, piece: &Piece, at: Place, ends: [Affine; 2]) {
        let point: Point = piece.point_at(at);
        let [start, end] = ends.map(|motion| motion * point);
        if length(end - start) > NOTHING {
            let start = self.edges.last().map_or(start, |edge| edge.curve.end());
            self.edges
                .push(across(&piece.edges()[piece.edge_before(at)], start, end));
        }
    }
}
