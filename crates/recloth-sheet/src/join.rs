//! Marks that show how pages join: half a lozenge on each page, and the same letter in both.

use kurbo::{Point, Rect, Vec2};

use crate::sheets::Grid;
use crate::{Drawing, Label, Pen};

/// From the line to the tip of a half lozenge, and along the line to each side (mm).
const TIP: f64 = 6.0;
const SIDE: f64 = 6.5;

/// Where along a join the first mark may stand, as parts of its length; the second stands as far from the other end.
const PLACES: [f64; 8] = [0.25, 0.2, 0.3, 0.15, 0.35, 0.1, 0.4, 0.05];

/// The joins of one page.
pub(crate) struct Joins<'a> {
    grid: &'a Grid,
    row: u32,
    column: u32,
}

/// One join, seen from one of its two pages, in the drawing's coordinates.
struct Join {
    /// The ends of the join.
    from: Point,
    to: Point,
    /// One unit from the join into the part of the page that stays seen.
    inward: Vec2,
    /// The letters in the lozenges.
    name: String,
}

impl<'a> Joins<'a> {
    pub(crate) fn new(grid: &'a Grid, row: u32, column: u32) -> Joins<'a> {
        Joins { grid, row, column }
    }

    /// Draws the trim lines, the lines to lay a neighbour's edge on, and the half lozenges.
    pub(crate) fn draw(&self, marks: &mut Drawing) {
        let (row, column) = (self.row, self.column);
        let window = self.grid.window(row, column);
        let cell = self.grid.cell(row, column);
        // Trimmed along the left and above, laid over the tab of the neighbour there.
        if column > 0 && self.grid.is_printed(row, column - 1) {
            let (from, to) = (Point::new(cell.x0, cell.y1), Point::new(cell.x0, cell.y0));
            marks.segment(Pen::Trim, from, Point::new(cell.x0, window.y0));
            self.lozenges(
                marks,
                from,
                to,
                Vec2::new(1.0, 0.0),
                (row, column - 1, false),
            );
        }
        if row > 0 && self.grid.is_printed(row - 1, column) {
            let (from, to) = (Point::new(cell.x0, cell.y1), Point::new(cell.x1, cell.y1));
            marks.segment(Pen::Trim, from, Point::new(window.x1, cell.y1));
            self.lozenges(
                marks,
                from,
                to,
                Vec2::new(0.0, -1.0),
                (row - 1, column, true),
            );
        }
        // On the right and below the tab for the neighbour begins.
        if self.grid.is_printed(row, column + 1) {
            let (from, to) = (Point::new(cell.x1, cell.y1), Point::new(cell.x1, cell.y0));
            marks.segment(Pen::Construction, from, Point::new(cell.x1, window.y0));
            self.lozenges(marks, from, to, Vec2::new(-1.0, 0.0), (row, column, false));
        }
        if self.grid.is_printed(row + 1, column) {
            let (from, to) = (Point::new(cell.x0, cell.y0), Point::new(cell.x1, cell.y0));
            marks.segment(Pen::Construction, from, Point::new(window.x1, cell.y0));
            self.lozenges(marks, from, to, Vec2::new(0.0, 1.0), (row, column, true));
        }
    }

    /// Two half lozenges on a join, the same for both its pages. `key` is the page left of or above the join, and whether
    /// the join is below that page.
    fn lozenges(
        &self,
        marks: &mut Drawing,
        from: Point,
        to: Point,
        inward: Vec2,
        key: (u32, u32, bool),
    ) {
        let join = Join {
            from,
            to,
            inward,
            name: letters(self.number(key)),
        };
        for from_end in [false, true] {
            let part = self.place(&join, from_end);
            join.half_lozenge(marks, part);
        }
    }

    /// Where along the join a mark stands: the first place that crosses no line of the drawing.
    fn place(&self, join: &Join, from_end: bool) -> f64 {
        let part = |&place: &f64| if from_end { 1.0 - place } else { place };
        let free = |part: &f64| {
            let at = join.at(*part);
            let around = Rect::from_points(at, at).inflate(SIDE + 1.0, SIDE + 1.0);
            !self.grid.ink().touches(around)
        };
        let mut parts = PLACES.iter().map(part);
        parts.find(free).unwrap_or(part(&PLACES[0]))
    }

    /// The number of a join among those of the drawing: page by page, the one on the right before the one below.
    fn number(&self, (row, column, below): (u32, u32, bool)) -> u32 {
        let grid = self.grid;
        let mut number = 0;
        for (r, c) in grid.cells() {
            if (r, c) == (row, column) {
                return number + u32::from(below && grid.is_printed(r, c + 1));
            }
            number += u32::from(grid.is_printed(r, c + 1)) + u32::from(grid.is_printed(r + 1, c));
        }
        number
    }
}

impl Join {
    fn at(&self, part: f64) -> Point {
        self.from + (self.to - self.from) * part
    }

    fn half_lozenge(&self, marks: &mut Drawing, part: f64) {
        let at = self.at(part);
        let along = Vec2::new(self.inward.y, self.inward.x) * SIDE;
        marks.polyline(Pen::Join, &[at + along, at + self.inward * TIP, at - along]);
        let size = if self.name.len() > 1 { 2.6 } else { 3.4 };
        marks.label(Label::new(self.name.clone(), at + self.inward * (TIP * 0.38), size).centred());
    }
}

/// The name of a join: A to Z, then AA, AB and so on.
fn letters(mut number: u32) -> String {
    let mut name = Vec::new();
    loop {
        name.insert(0, char::from(b'A' + (number % 26) as u8));
        if number < 26 {
            return name.into_iter().collect();
        }
        number = number / 26 - 1;
    }
}

#[cfg(test)]
mod tests {
    use super::letters;

    #[test]
    fn letters_go_on_after_z() {
        let names = [0, 25, 26, 51, 52, 701, 702].map(letters);
        assert_eq!(names, ["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]);
    }
}
