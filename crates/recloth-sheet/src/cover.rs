//! The cover: squares to measure, how to paste, and a map of each drawing's pages.

use kurbo::{Point, Rect, Vec2};

use crate::drawing::Group;
use crate::font::{shorten, wrap};
use crate::sheets::{Frame, Grid};
use crate::{Drawing, Label, Pen, Shape};

const MEASURE: &str = "Print every page at 100 % (actual size), not fitted to the paper. Then measure both squares, across \
    and down. If a side is wrong by more than 0.5 mm (1/64 in), do not cut from these pages: correct the print settings \
    and print again.";
const PASTE: &str = "To paste, begin with the upper left page and work along the rows. Trim a page along its left and its \
    upper line, where half lozenges stand on it. Lay the trimmed edge on the thin line of the page to the left or above, so \
    that two halves with one letter make a whole lozenge, and paste.";
const MAPS: &str = "The numbers in a map are pages of this print; r is the row, c the column.";
/// What lines mean, in the order of the key.
const LINES: &[(Pen, &str)] = &[
    (Pen::Cut, "cut"),
    (Pen::Seam, "sew"),
    (Pen::Fold, "fold"),
    (Pen::Placement, "another part is laid here"),
    (Pen::Slash, "slash when it is made up"),
    (Pen::Stripe, "a stripe of the cloth lies here"),
];
const LEFT_OUT: &str = "Crossed places have nothing on them and are not printed.";

/// The cover pages, when the covers take `covers` pages (for the numbers of the pages in the maps).
pub(crate) fn cover(
    title: &str,
    drawings: &[Drawing],
    grids: &[Grid],
    frame: &Frame,
    covers: usize,
) -> Vec<Drawing> {
    let mut flow = Flow::new(title, frame);
    flow.text(&shorten(title, 6.0, 2.0 * frame.width), 6.0);
    flow.gap(2.0);
    flow.text(MEASURE, 3.4);
    flow.squares();
    if grids.iter().any(|grid| grid.printed() > 1) {
        flow.text(PASTE, 3.4);
    }
    flow.key(drawings);
    flow.text(MAPS, 3.4);
    if grids
        .iter()
        .any(|grid| grid.printed() < (grid.columns * grid.rows) as usize)
    {
        flow.text(LEFT_OUT, 3.4);
    }
    flow.gap(3.0);
    let across = match drawings.len() {
        1 => 1,
        2..=4 => 2,
        _ => 3,
    };
    let width = frame.width / f64::from(across);
    let mut page = covers + 1;
    for (pair, line) in drawings
        .chunks(across as usize)
        .zip(grids.chunks(across as usize))
    {
        let maps: Vec<Map> = pair
            .iter()
            .zip(line)
            .map(|(drawing, grid)| {
                let first = page;
                page += grid.printed();
                Map {
                    drawing,
                    grid,
                    first,
                }
            })
            .collect();
        flow.maps(&maps, width);
    }
    flow.pages
}

/// Fills pages from the top.
struct Flow<'a> {
    frame: &'a Frame,
    title: &'a str,
    /// The next free height.
    y: f64,
    pages: Vec<Drawing>,
}

impl<'a> Flow<'a> {
    fn new(title: &'a str, frame: &'a Frame) -> Flow<'a> {
        let mut flow = Flow {
            frame,
            title,
            y: 0.0,
            pages: Vec::new(),
        };
        flow.turn();
        flow
    }

    /// Begins a page.
    fn turn(&mut self) {
        self.y = self.frame.rect().y1;
        self.pages.push(Drawing::new(self.title));
    }

    fn gap(&mut self, height: f64) {
        self.y -= height;
    }

    fn add(&mut self, group: Group) {
        if let Some(page) = self.pages.last_mut() {
            page.group(group);
        }
    }

    /// A paragraph of at most 12 lines.
    fn text(&mut self, text: &str, size: f64) {
        let left = self.frame.margin;
        let mut block = Drawing::new("");
        for line in wrap(text, size, self.frame.width).iter().take(12) {
            self.y -= size * 1.3;
            let line = shorten(line, size, self.frame.width);
            block.label(Label::new(
                line,
                Point::new(left, self.y + size * 0.3),
                size,
            ));
        }
        self.y -= size * 0.5;
        self.add(Group {
            shapes: block.shapes,
            ..Group::default()
        });
    }

    /// The two squares to measure, side by side. The true size is that of the middle of the line.
    fn squares(&mut self) {
        let (small, large) = (50.0, 50.8);
        let left = self.frame.margin + 2.0;
        let base = self.y - large - 2.0;
        let mut block = Drawing::new("");
        for (x, side, text) in [
            (left, small, "50 mm"),
            (left + small + 10.0, large, "2 in (50.8 mm)"),
        ] {
            let square = Rect::new(x, base, x + side, base + side);
            block.polygon(Pen::Join, &corners(square));
            block.label(Label::new(text, square.center(), 5.0).centred());
        }
        self.y = base - 4.0;
        self.add(Group {
            id: "squares".into(),
            title: "Squares to measure: 50 mm and 2 in".into(),
            clip: None,
            shapes: block.shapes,
        });
    }

    /// The lines of the drawings and what each means.
    fn key(&mut self, drawings: &[Drawing]) {
        const SAMPLE: f64 = 22.0;
        const SIZE: f64 = 3.4;
        let drawn = |pen: Pen| drawings.iter().any(|drawing| draws(&drawing.shapes, pen));
        let lines = LINES.iter().filter(|(pen, _)| drawn(*pen));
        let mut block = Drawing::new("");
        let across = (self.frame.width / 84.0).floor().max(1.0);
        let column = self.frame.width / across;
        for (index, &(pen, what)) in lines.enumerate() {
            let place = index as f64 % across;
            if place == 0.0 {
                self.y -= SIZE * 1.5;
            }
            // Half a line's width keeps clear of the margin.
            let left = Point::new(
                self.frame.margin + 0.5 + place * column,
                self.y + SIZE * 0.3,
            );
            let middle = left + Vec2::new(0.0, SIZE * 0.35);
            block.segment(pen, middle, middle + Vec2::new(SAMPLE, 0.0));
            let text = shorten(what, SIZE, column - SAMPLE - 4.5);
            block.label(Label::new(text, left + Vec2::new(SAMPLE + 2.0, 0.0), SIZE));
        }
        if !block.shapes.is_empty() {
            self.y -= SIZE * 0.5;
            self.add(Group {
                id: "key".into(),
                title: "Lines and what they mean".into(),
                clip: None,
                shapes: block.shapes,
            });
        }
    }

    /// Maps side by side, each in a column of this width, on the next page if this one is full.
    fn maps(&mut self, maps: &[Map], width: f64) {
        let most = (width - 6.0, (self.frame.height * 0.42).min(width * 1.3));
        let height = maps.iter().map(|map| map.height(most)).fold(0.0, f64::max);
        if self.y - height < self.frame.rect().y0 {
            self.turn();
        }
        for (index, map) in maps.iter().enumerate() {
            let left = self.frame.margin + index as f64 * width;
            let shapes = map.draw(Point::new(left, self.y), most);
            self.add(Group {
                id: String::new(),
                title: format!("Map of {}", map.drawing.title),
                clip: None,
                shapes,
            });
        }
        self.y -= height + 4.0;
    }
}

/// The map of one drawing: its pages, small, each with its number.
struct Map<'a> {
    drawing: &'a Drawing,
    grid: &'a Grid,
    /// Number of its first page in the print, from 1.
    first: usize,
}

/// Room above a map for its name and the columns, and left of it for the rows.
const HEAD: f64 = 9.0;
const ROWS: f64 = 6.0;

impl Map<'_> {
    /// Everything its pages cover, in the drawing.
    fn whole(&self) -> Rect {
        let last = self.grid.cell(self.grid.rows - 1, self.grid.columns - 1);
        self.grid.cell(0, 0).union(last)
    }

    fn scale(&self, most: (f64, f64)) -> f64 {
        let whole = self.whole();
        ((most.0 - ROWS) / whole.width())
            .min((most.1 - HEAD) / whole.height())
            .min(0.25)
    }

    fn height(&self, most: (f64, f64)) -> f64 {
        HEAD + self.whole().height() * self.scale(most)
    }

    fn draw(&self, corner: Point, most: (f64, f64)) -> Vec<Shape> {
        let (whole, scale) = (self.whole(), self.scale(most));
        let origin = corner + Vec2::new(ROWS, -HEAD);
        let place =
            |p: Point| origin + Vec2::new((p.x - whole.x0) * scale, (p.y - whole.y1) * scale);
        let mut map = Drawing::new("");
        let name = shorten(&self.drawing.title, 3.4, most.0);
        map.label(Label::new(name, corner + Vec2::new(0.0, -3.4), 3.4));

        let outlines = self.drawing.shapes.iter().filter_map(outline);
        let shift = origin - place_of(whole, scale);
        map.shapes
            .extend(outlines.map(|shape| shape.mapped(scale, shift)));

        let mut number = self.first;
        for row in 0..self.grid.rows {
            for column in 0..self.grid.columns {
                let cell = self.grid.cell(row, column);
                let cell = Rect::from_points(
                    place(Point::new(cell.x0, cell.y0)),
                    place(Point::new(cell.x1, cell.y1)),
                );
                map.polygon(Pen::Construction, &corners(cell));
                let size = (cell.width().min(cell.height()) * 0.4).min(4.0);
                if self.grid.is_printed(row, column) {
                    let at = place(self.free_place(row, column));
                    map.label(Label::new(number.to_string(), at, size.max(0.5)).centred());
                    number += 1;
                } else {
                    map.segment(
                        Pen::Construction,
                        cell.origin(),
                        Point::new(cell.x1, cell.y1),
                    );
                    map.segment(
                        Pen::Construction,
                        Point::new(cell.x0, cell.y1),
                        Point::new(cell.x1, cell.y0),
                    );
                }
                let size = (size * 0.8).clamp(0.5, 2.6);
                if row == 0 {
                    let at = Point::new(cell.center().x, cell.y1 + size);
                    map.label(Label::new(format!("c{}", column + 1), at, size).centred());
                }
                if column == 0 {
                    let at = Point::new(cell.x0 - 1.3 * size, cell.center().y);
                    map.label(Label::new(format!("r{}", row + 1), at, size).centred());
                }
            }
        }
        map.shapes
    }
}

impl Map<'_> {
    /// Where in a cell its number crosses no line, in the drawing; the middle if there is no such place.
    fn free_place(&self, row: u32, column: u32) -> Point {
        let cell = self.grid.cell(row, column);
        let (width, height) = (cell.width(), cell.height());
        let room = Vec2::new(width * 0.3, height * 0.15);
        let at = |(x, y): (f64, f64)| cell.center() + Vec2::new(x * width, y * height);
        let places = [0.0, -0.25, 0.25]
            .into_iter()
            .flat_map(|y| [0.0, -0.2, 0.2].map(|x| (x, y)));
        places
            .map(at)
            .find(|&at| {
                !self
                    .grid
                    .ink()
                    .touches(Rect::from_points(at - room, at + room))
            })
            .unwrap_or(cell.center())
    }
}

/// Where the upper left corner of the pages falls when the drawing is scaled about its origin.
fn place_of(whole: Rect, scale: f64) -> Point {
    Point::new(whole.x0 * scale, whole.y1 * scale)
}

/// Whether a line is drawn with a pen.
fn draws(shapes: &[Shape], pen: Pen) -> bool {
    shapes.iter().any(|shape| match shape {
        Shape::Line { pen: own, .. } => *own == pen,
        Shape::Group(group) => draws(&group.shapes, pen),
        _ => false,
    })
}

/// What of a shape a map shows: its cut lines, panels and seams, thin.
fn outline(shape: &Shape) -> Option<Shape> {
    match shape {
        Shape::Line {
            pen: Pen::Cut | Pen::Panel | Pen::Fold,
            path,
        } => Some(Shape::Line {
            pen: Pen::Join,
            path: path.clone(),
        }),
        Shape::Group(group) => Some(Shape::Group(Group {
            shapes: group.shapes.iter().filter_map(outline).collect(),
            ..Group::default()
        })),
        _ => None,
    }
}

fn corners(rect: Rect) -> [Point; 4] {
    [
        Point::new(rect.x0, rect.y0),
        Point::new(rect.x1, rect.y0),
        Point::new(rect.x1, rect.y1),
        Point::new(rect.x0, rect.y1),
    ]
}
