//! What a moving piece meets.

use kurbo::{Point, Vec2};

use crate::clash::Clash;
use crate::crowd::Room;

/// Columns and rows. No source; they did well in trials.
const BINS: usize = 32;
/// Bits of a word.
const WORD: usize = 64;

/// Another piece as a moving one meets it.
pub(crate) struct Near<'a> {
    low: Point,
    high: Point,
    clash: &'a Clash,
    sign: f64,
    shift: Point,
    weight: f64,
}

impl<'a> Near<'a> {
    /// A clash, that of the shift reversed where `sign` is -1, with a piece that lies so far shifted.
    pub(crate) fn new(clash: &'a Clash, sign: f64, shift: Point, weight: f64) -> Near<'a> {
        let (low, high) = match sign > 0.0 {
            true => (clash.low, clash.high),
            false => (
                Point::new(-clash.high.x, -clash.high.y),
                Point::new(-clash.low.x, -clash.low.y),
            ),
        };
        Near {
            low: low + shift.to_vec2(),
            high: high + shift.to_vec2(),
            clash,
            sign,
            shift,
            weight,
        }
    }
}

/// All that a piece meets in one stance, with a set of those that reach into each column and each row of the room.
pub(crate) struct Nears<'a> {
    items: Vec<Near<'a>>,
    low: Point,
    /// Bins a millimetre has.
    fine: Vec2,
    words: usize,
    columns: Vec<u64>,
    rows: Vec<u64>,
}

impl<'a> Nears<'a> {
    pub(crate) fn new(items: Vec<Near<'a>>, room: &Room) -> Nears<'a> {
        let words = items.len().div_ceil(WORD);
        let size = room.high - room.low;
        let fine = |size: f64| BINS as f64 / size.max(f64::MIN_POSITIVE);
        let mut nears = Nears {
            low: room.low,
            fine: Vec2::new(fine(size.x), fine(size.y)),
            words,
            columns: vec![0; BINS * words],
            rows: vec![0; BINS * words],
            items,
        };
        for (index, near) in nears.items.iter().enumerate() {
            let (word, bit) = (index / WORD, 1 << (index % WORD));
            // Those beyond the room fall into its last bins, where they do no harm.
            let (first, last) = (
                bins(near.low, nears.low, nears.fine),
                bins(near.high, nears.low, nears.fine),
            );
            (first.0..=last.0).for_each(|column| nears.columns[column * words + word] |= bit);
            (first.1..=last.1).for_each(|row| nears.rows[row * words + word] |= bit);
        }
        nears
    }

    /// The fault of a piece at a place in its room; where it is more than `bound`, something more than that.
    pub(crate) fn fault(&self, p: Point, bound: f64, work: &mut u64) -> f64 {
        *work += 1 + self.items.len() as u64 / 16;
        let (column, row) = bins(p, self.low, self.fine);
        let column = &self.columns[column * self.words..][..self.words];
        let row = &self.rows[row * self.words..][..self.words];
        let mut fault = 0.0;
        for (word, (column, row)) in column.iter().zip(row).enumerate() {
            let mut left = column & row;
            while left != 0 {
                let near = &self.items[word * WORD + left.trailing_zeros() as usize];
                left &= left - 1;
                if p.x > near.low.x && p.x < near.high.x && p.y > near.low.y && p.y < near.high.y {
                    *work += 1;
                    let at = ((p - near.shift) * near.sign).to_point();
                    fault += near.weight * near.clash.depth_to(at, (bound - fault) / near.weight);
                    if fault > bound {
                        return fault;
                    }
                }
            }
        }
        fault
    }
}

/// Column and row.
fn bins(p: Point, low: Point, fine: Vec2) -> (usize, usize) {
    let bin = |at: f64| (at as usize).min(BINS - 1);
    (bin((p.x - low.x) * fine.x), bin((p.y - low.y) * fine.y))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chance::Chance;
    use crate::shape::Convex;

    #[test]
    fn bins_leave_nothing_out() {
        let square = [(-10.0, -20.0), (30.0, -20.0), (30.0, 40.0), (-10.0, 40.0)];
        let square = Convex::new(square.iter().map(|&p| p.into()).collect());
        let clash = Clash::new(vec![square], &mut 0);
        let room = Room {
            low: Point::new(5.0, 5.0),
            high: Point::new(905.0, 405.0),
            grid: None,
        };
        let mut chance = Chance::new(3);
        let mut any = || {
            Vec2::new(
                chance.share() * 1000.0 - 50.0,
                chance.share() * 500.0 - 50.0,
            )
        };
        // More than a word of them, every other one reversed, some beyond the room.
        let near = |index: usize| {
            let sign = if index.is_multiple_of(2) { 1.0 } else { -1.0 };
            (sign, any().to_point(), 1.0 + index as f64)
        };
        let items: Vec<(f64, Point, f64)> = (0..90).map(near).collect();
        let all =
            |&(sign, shift, weight): &(f64, Point, f64)| Near::new(&clash, sign, shift, weight);
        let nears = Nears::new(items.iter().map(all).collect(), &room);
        let mut met = 0;
        for _ in 0..2000 {
            let p = room.nearest(any().to_point());
            let plain = items.iter().fold(0.0, |fault, &(sign, shift, weight)| {
                fault + weight * clash.depth_near(((p - shift) * sign).to_point())
            });
            met += usize::from(plain > 0.0);
            assert_eq!(nears.fault(p, f64::INFINITY, &mut 0), plain, "{p}");
            let bound = 0.5 * plain;
            assert!(plain == 0.0 || nears.fault(p, bound, &mut 0) > bound);
        }
        assert!(met > 500, "{met}");
    }
}
