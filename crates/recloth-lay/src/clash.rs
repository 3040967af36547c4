//! How deep one shape lies in another: the least shift that parts them.

use kurbo::{Point, Vec2};

use crate::positions::Blocked;
use crate::shape::{Convex, TOUCH, bounds, length};

/// Cells along and across at most. This and [`CELLS_A_SIDE`] have no source; they did well in trials.
const MOST_CELLS: f64 = 32.0;
/// Cells for every side there is.
const CELLS_A_SIDE: f64 = 2.0;

/// A side of what is forbidden, as it is seen from within.
#[derive(Clone, Copy)]
struct Side {
    from: Point,
    run: Vec2,
    /// One by the square of the length.
    scale: f64,
}

impl Side {
    fn new((from, to): (Point, Point)) -> Side {
        let run = to - from;
        Side {
            from,
            run,
            scale: 1.0 / run.hypot2().max(f64::MIN_POSITIVE),
        }
    }

    /// Square of the distance from a point.
    fn square_from(&self, p: Point) -> f64 {
        let (x, y) = (p.x - self.from.x, p.y - self.from.y);
        let along = (x * self.run.x + y * self.run.y) * self.scale;
        let along = along.clamp(0.0, 1.0);
        let (x, y) = (x - along * self.run.x, y - along * self.run.y);
        x * x + y * y
    }
}

/// What matters to positions in one cell, in `Clash::lists`: of each sum that may hold them, how many of its halves may not,
/// and which; then the sides that may be nearest. Without sides no position in it is held; without sums each is.
#[derive(Clone, Copy)]
struct Cell {
    sums: u32,
    sides: u32,
    end: u32,
    /// Not less deep than this is what is held there.
    least: f32,
}

/// What lies to the left of a side: inwards, and how far at least.
#[derive(Clone, Copy)]
struct Half {
    square: Vec2,
    least: f64,
}

impl Half {
    fn height(&self, p: Point) -> f64 {
        self.square.dot(p.to_vec2()) - self.least
    }

    fn holds(&self, p: Point) -> bool {
        self.height(p) > TOUCH
    }

    /// Of the points within so far of another, along and across: whether one may be held, and whether all are, whatever
    /// rounding does.
    fn held(&self, middle: Point, around: Vec2) -> (bool, bool) {
        let height = self.height(middle) - TOUCH;
        let reach = self.square.x.abs() * around.x + self.square.y.abs() * around.y;
        let slack = 1e-12 * (self.least.abs() + middle.x.abs() + middle.y.abs());
        (height + reach + slack > 0.0, height - reach - slack > 0.0)
    }
}

/// The shifts at which a shape lies over an obstacle.
pub(crate) struct Clash {
    halves: Vec<Half>,
    sides: Vec<Side>,
    cells: Vec<Cell>,
    lists: Vec<u32>,
    /// Cells along and across, and how many a millimetre has.
    along: usize,
    across: usize,
    fine: Vec2,
    pub(crate) low: Point,
    pub(crate) high: Point,
}

impl Clash {
    /// From the sums of their convex parts. Adds the work done to `work`.
    pub(crate) fn new(sums: Vec<Convex>, work: &mut u64) -> Clash {
        let (sums, seen) = Blocked::new(sums, work).into_parts();
        let corners: Vec<Point> = sums.iter().flat_map(|sum| [sum.low, sum.high]).collect();
        let (low, high) = bounds(&corners);
        let sides: Vec<Side> = seen.into_iter().map(Side::new).collect();
        // Cells about as long as wide.
        let (long, wide) = ((high.x - low.x).max(TOUCH), (high.y - low.y).max(TOUCH));
        let cells = CELLS_A_SIDE * sides.len() as f64;
        let count = |ratio: f64| (cells * ratio).sqrt().ceil().clamp(1.0, MOST_CELLS);
        let (along, across) = (count(long / wide), count(wide / long));
        let mut halves = Vec::new();
        let mut ends = Vec::new();
        for sum in &sums {
            let half = |&(square, least): &(Vec2, f64)| Half { square, least };
            halves.extend(sum.sides().iter().map(half));
            ends.push(halves.len());
        }
        let mut clash = Clash {
            halves,
            sides,
            cells: Vec::with_capacity((along * across) as usize),
            lists: Vec::new(),
            along: along as usize,
            across: across as usize,
            fine: Vec2::new(along / long, across / wide),
            low,
            high,
        };
        clash.fill(&ends);
        clash
    }

    /// Fills the cells; `ends` tells where each sum's halves end.
    fn fill(&mut self, ends: &[usize]) {
        // A little more than half a cell, so that rounding leaves nothing out.
        let around = Vec2::new(0.5 / self.fine.x, 0.5 / self.fine.y) * (1.0 + 1e-6);
        let reach = length(around);
        let mut squares = vec![0.0; self.sides.len()];
        for cell in 0..self.along * self.across {
            let (row, column) = (cell / self.along, cell % self.along);
            let middle = self.low
                + Vec2::new(
                    (column as f64 + 0.5) / self.fine.x,
                    (row as f64 + 0.5) / self.fine.y,
                );
            let start = self.lists.len();
            let held = self.list_halves(ends, middle, around);
            let sides = self.lists.len();
            let mut least = 0.0;
            if held || sides > start {
                for (square, side) in squares.iter_mut().zip(&self.sides) {
                    *square = side.square_from(middle);
                }
                let nearest = squares.iter().fold(f64::INFINITY, |a, &b| a.min(b)).sqrt();
                // From anywhere in the cell a side is as far as from its middle, give or take `reach`.
                let far = nearest + 2.0 * reach;
                let near = (squares.iter().enumerate()).filter(|(_, square)| **square <= far * far);
                self.lists.extend(near.map(|(index, _)| index as u32));
                // Rounded down, for single numbers are coarse.
                least = (0.999 * (nearest - reach)).max(0.0);
            }
            self.cells.push(Cell {
                sums: start as u32,
                sides: sides as u32,
                end: self.lists.len() as u32,
                least: least as f32,
            });
        }
    }

    /// Lists what decides whether a position in a cell is held; nothing where all are, which it answers.
    fn list_halves(&mut self, ends: &[usize], middle: Point, around: Vec2) -> bool {
        let start = self.lists.len();
        let mut begin = 0;
        for &end in ends {
            let count = self.lists.len();
            self.lists.push(0);
            let mut some = end > begin;
            for half in begin..end {
                let (one, all) = self.halves[half].held(middle, around);
                some &= one;
                if !all {
                    self.lists.push(half as u32);
                    self.lists[count] += 1;
                }
            }
            begin = end;
            match (some, self.lists[count]) {
                (false, _) => self.lists.truncate(count),
                (true, 0) => {
                    self.lists.truncate(start);
                    return true;
                }
                _ => {}
            }
        }
        false
    }

    /// As [`Clash::depth`], for a position that may be far off.
    pub(crate) fn depth_near(&self, p: Point) -> f64 {
        match p.x > self.low.x && p.x < self.high.x && p.y > self.low.y && p.y < self.high.y {
            true => self.depth(p),
            false => 0.0,
        }
    }

    /// The least shift (mm) that brings the shape from this position, which is between `low` and `high`, clear of the
    /// obstacle; 0 where it is clear.
    pub(crate) fn depth(&self, p: Point) -> f64 {
        self.depth_to(p, f64::INFINITY)
    }

    /// As [`Clash::depth`]; where that is more than `most`, something more than `most`.
    pub(crate) fn depth_to(&self, p: Point, most: f64) -> f64 {
        let cell = self.cell(p);
        if !self.holds(cell, p) {
            return 0.0;
        }
        if f64::from(cell.least) > most {
            return f64::from(cell.least);
        }
        let sides = &self.lists[cell.sides as usize..cell.end as usize];
        let square = (sides.iter()).fold(f64::INFINITY, |least, &side| {
            least.min(self.sides[side as usize].square_from(p))
        });
        // What is inside by less than a touch is not inside; so this is more.
        square.sqrt().max(TOUCH)
    }

    fn cell(&self, p: Point) -> &Cell {
        let (column, row) = (
            ((p.x - self.low.x) * self.fine.x) as usize,
            ((p.y - self.low.y) * self.fine.y) as usize,
        );
        &self.cells[row.min(self.across - 1) * self.along + column.min(self.along - 1)]
    }

    fn holds(&self, cell: &Cell, p: Point) -> bool {
        let mut sums = &self.lists[cell.sums as usize..cell.sides as usize];
        if sums.is_empty() {
            return cell.end > cell.sides;
        }
        while let [count, rest @ ..] = sums {
            let (halves, others) = rest.split_at(*count as usize);
            if halves
                .iter()
                .all(|&half| self.halves[half as usize].holds(p))
            {
                return true;
            }
            sums = others;
        }
        false
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chance::Chance;
    use crate::shape::{convex_parts, sum, through_origin};

    /// The sums of two pieces with a bay each.
    fn sums() -> Vec<Convex> {
        let points = |all: &[(f64, f64)]| all.iter().map(|&p| p.into()).collect::<Vec<Point>>();
        let front = points(&[
            (0.0, 0.0),
            (300.0, 0.0),
            (280.0, 90.0),
            (120.0, 110.0),
            (90.0, 420.0),
            (0.0, 400.0),
        ]);
        let facing = points(&[
            (0.0, 0.0),
            (60.0, -20.0),
            (90.0, 160.0),
            (240.0, 170.0),
            (250.0, 230.0),
            (10.0, 210.0),
        ]);
        let mut sums = Vec::new();
        for standing in convex_parts(&front) {
            for moving in convex_parts(&facing) {
                sums.push(Convex::new(sum(&standing, &through_origin(&moving))));
            }
        }
        sums
    }

    #[test]
    fn cells_leave_nothing_out() {
        let clash = Clash::new(sums(), &mut 0);
        let (plain, sides) = Blocked::new(sums(), &mut 0).into_parts();
        let mut chance = Chance::new(5);
        let size = clash.high - clash.low;
        let mut inside = 0;
        for _ in 0..4000 {
            let p = clash.low + Vec2::new(chance.share() * size.x, chance.share() * size.y);
            let depth = match plain.iter().any(|sum| sum.holds(p)) {
                true => (sides.iter().map(|&side| Side::new(side).square_from(p)))
                    .fold(f64::INFINITY, f64::min)
                    .sqrt(),
                false => 0.0,
            };
            inside += usize::from(depth > 0.0);
            assert_eq!(clash.depth(p), depth, "{p}");
            let most = chance.share() * 100.0;
            let to = clash.depth_to(p, most);
            assert!(
                to == depth || (to > most && depth > most),
                "{p}: {to} for {depth}"
            );
        }
        assert!((1000..3900).contains(&inside), "{inside}");
    }
}
