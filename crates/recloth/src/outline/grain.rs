//! Where a grain line is drawn so that it lies on the piece.

use alloc::vec::Vec;
use kurbo::Line;

use super::cross::crossings;
use super::piece::Piece;
use super::ring;
use super::segment::Segment;
use super::vector::{length, unit};
use crate::Error;

/// How near arcs follow cubics where a line is crossed with the outline (mm).
const FINE: f64 = 1e-3;
/// Share of the room there is.
const LONG: f64 = 0.6;
/// No grain line is shorter (mm).
const SHORTEST: f64 = 0.01;

impl Piece {
    /// The piece with this grain line where all of it lies on the piece; else with one parallel to it through the middle of the
    /// piece's box, on the longest stretch of the piece there.
    pub(crate) fn with_grain_within(self, grain: Line) -> Result<Piece, Error> {
        let line = self.within(grain).unwrap_or(grain);
        self.with_grain(line)
    }

    fn within(&self, grain: Line) -> Option<Line> {
        let outline: Vec<Segment> = self.segments(FINE).into_iter().map(|(_, s)| s).collect();
        let on_piece = |point| ring::winding(&outline, point) > 0;
        let crossed = |line: &Segment| {
            let mut at = Vec::new();
            for segment in &outline {
                crossings(segment, line, |_, _, along| at.push(along));
            }
            at.sort_by(f64::total_cmp);
            at
        };
        let along = unit(grain.p1 - grain.p0);
        if on_piece(grain.p0.midpoint(grain.p1))
            && crossed(&Segment::line(grain.p0, grain.p1)).is_empty()
        {
            return Some(grain);
        }
        let (middle, bounds) = (self.bounds().center(), self.bounds());
        let start = middle - along * (bounds.width() + bounds.height());
        let through = Segment::line(start, middle + (middle - start));
        let mut longest = (SHORTEST, None);
        for ends in crossed(&through).windows(2) {
            let center = start + along * ((ends[0] + ends[1]) / 2.0);
            let room = ends[1] - ends[0];
            if room > longest.0 && on_piece(center) {
                let half = along * (LONG / 2.0 * room);
                longest = (room, Some(Line::new(center - half, center + half)));
            }
        }
        longest
            .1
            .filter(|line| length(line.p1 - line.p0) >= SHORTEST)
    }
}
