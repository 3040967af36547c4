//! Drawings cut into pages of home-printer paper at true scale.

use kurbo::{Point, Rect, Vec2};
use recloth::{Error, ErrorKind};

use crate::cover::cover;
use crate::drawing::Group;
use crate::font::{ASCENT, DESCENT, shorten, text_width};
use crate::ink::Ink;
use crate::join::Joins;
use crate::{Drawing, Label, Page, Paper};

/// The paper and how pages overlap.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SheetOptions {
    /// The paper; [`Paper::A4`] by default.
    pub paper: Paper,
    /// What the printer cannot print at each edge (mm), 0 to 50; 10 by default.
    pub margin: f64,
    /// How far neighbouring pages show the same (mm), 5 to 50; 10 by default.
    pub overlap: f64,
    /// Whether to print pages on which nothing is drawn, too; not by default. Those inside a cut line are always
    /// printed, since they hold the pasted sheet together.
    pub blank_pages: bool,
}

impl Default for SheetOptions {
    fn default() -> SheetOptions {
        SheetOptions {
            paper: Paper::A4,
            margin: 10.0,
            overlap: 10.0,
            blank_pages: false,
        }
    }
}

/// Pages to print, and where on them each drawing lies.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Sheets {
    /// The pages in order of printing: the cover, then the pages of each drawing.
    pub pages: Vec<Page>,
    /// How each drawing was cut into pages, in the order given.
    pub tilings: Vec<Tiling>,
}

/// How one drawing was cut into pages.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Tiling {
    /// Pages side by side.
    pub columns: u32,
    /// Pages one below the other.
    pub rows: u32,
    /// Places of the grid with nothing to print, left out.
    pub left_out: u32,
    /// The pages printed, row by row from the top, each row from the left.
    pub tiles: Vec<Tile>,
}

/// One page of a drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Tile {
    /// Row, from 1 at the top.
    pub row: u32,
    /// Column, from 1 at the left.
    pub column: u32,
    /// Index in [`Sheets::pages`].
    pub page: usize,
    /// The part of the drawing that is printed on it, overlaps included (mm, in the drawing's own coordinates).
    pub window: Rect,
}

/// How many pages it takes to cover a length.
///
/// Of `page - 2 · margin` mm each page but the first adds all but the overlap:
/// `ceil((extent - overlap) / (page - 2 · margin - overlap))`, and at least one.
///
/// # Errors
/// `NotFinite` or `OutOfRange` naming `extent` (0 to 1e6 mm), `page` (1 to 5000 mm), `margin` or `overlap` (0 to 50 mm);
/// `NoSolution` naming `page` when margins and overlap leave nothing of it.
///
/// ```
/// use recloth_sheet::tile_count;
/// assert_eq!(tile_count(500.0, 210.0, 10.0, 10.0)?, 3); // (500 - 10) / (190 - 10) = 2.72
/// assert_eq!(tile_count(500.0, 25.0, 10.0, 10.0).unwrap_err().argument(), "page");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn tile_count(extent: f64, page: f64, margin: f64, overlap: f64) -> Result<u32, Error> {
    let extent = Error::check("extent", extent, 0.0, 1e6)?;
    let page = Error::check("page", page, 1.0, 5000.0)?;
    let margin = Error::check("margin", margin, 0.0, 50.0)?;
    let overlap = Error::check("overlap", overlap, 0.0, 50.0)?;
    let step = page - 2.0 * margin - overlap;
    if step < 1.0 {
        let least = 2.0 * margin + overlap + 1.0;
        return Err(Error::no_solution("page", page, least, f64::NAN));
    }
    // A nanometre too much is no reason for another page.
    let pages = ((extent - overlap - 1e-6) / step).ceil();
    Ok(pages.max(1.0) as u32)
}

/// The drawings at true scale on pages of home-printer paper.
///
/// The first page is a cover: two squares to measure before cutting, how to paste, and a map of every drawing that says
/// which page lies where (more pages if the maps need them). Pages join along their left and upper edges, which are
/// trimmed and laid over the neighbour until half lozenges with one letter make whole ones.
///
/// # Errors
/// `Count` naming `drawings` unless there are 1 to 500, naming `shapes` when one has none, naming `pages` above 5000
/// pages; `NotFinite` or `OutOfRange` naming an option, or what [`Drawing::check`] says; `NoSolution` naming `margin` when
/// the paper keeps less than 120 x 160 mm.
pub fn sheets(title: &str, drawings: &[Drawing], options: &SheetOptions) -> Result<Sheets, Error> {
    Error::check_items("drawings", drawings.len(), 1, 500)?;
    let frame = Frame::new(options)?;
    let grids = drawings
        .iter()
        .map(|drawing| Grid::new(drawing, &frame, options))
        .collect::<Result<Vec<_>, Error>>()?;

    let covers = cover(title, drawings, &grids, &frame, 0).len();
    let total = covers + grids.iter().map(Grid::printed).sum::<usize>();
    Error::check_items("pages", total, 1, 5000)?;
    let mut pages: Vec<Page> = cover(title, drawings, &grids, &frame, covers)
        .into_iter()
        .map(|drawing| frame.page(drawing))
        .collect();
    let mut tilings = Vec::new();
    for (drawing, grid) in drawings.iter().zip(&grids) {
        tilings.push(Tiling {
            columns: grid.columns,
            rows: grid.rows,
            left_out: grid.columns * grid.rows - grid.printed() as u32,
            tiles: grid
                .cells()
                .enumerate()
                .map(|(index, (row, column))| Tile {
                    row: row + 1,
                    column: column + 1,
                    page: pages.len() + index,
                    window: grid.window(row, column),
                })
                .collect(),
        });
        let first = pages.len();
        for (index, (row, column)) in grid.cells().enumerate() {
            let place = format!(
                "row {}, column {} · page {} of {total}",
                row + 1,
                column + 1,
                first + index + 1
            );
            pages.push(frame.page(grid.sheet(drawing, &frame, row, column, &place)));
        }
    }
    Ok(Sheets { pages, tilings })
}

/// The printable part of the paper.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Frame {
    pub(crate) paper: (f64, f64),
    pub(crate) margin: f64,
    pub(crate) overlap: f64,
    /// Width and height of the printable part.
    pub(crate) width: f64,
    pub(crate) height: f64,
}

impl Frame {
    fn new(options: &SheetOptions) -> Result<Frame, Error> {
        let paper = options.paper.size()?;
        let margin = Error::check("margin", options.margin, 0.0, 50.0)?;
        let overlap = Error::check("overlap", options.overlap, 5.0, 50.0)?;
        let (width, height) = (paper.0 - 2.0 * margin, paper.1 - 2.0 * margin);
        if width < 120.0 || height < 160.0 {
            let most = ((paper.0 - 120.0) / 2.0).min((paper.1 - 160.0) / 2.0);
            let most = if most < 0.0 { f64::NAN } else { most };
            return Err(Error::no_solution("margin", margin, f64::NAN, most));
        }
        Ok(Frame {
            paper,
            margin,
            overlap,
            width,
            height,
        })
    }

    /// The printable part on the page.
    pub(crate) fn rect(&self) -> Rect {
        let corner = Point::new(self.margin, self.margin);
        Rect::from_origin_size(corner, (self.width, self.height))
    }

    /// From a page to the next, across and down.
    fn step(&self) -> Vec2 {
        Vec2::new(self.width - self.overlap, self.height - self.overlap)
    }

    fn page(&self, drawing: Drawing) -> Page {
        Page {
            width: self.paper.0,
            height: self.paper.1,
            drawing,
        }
    }
}

/// The pages of one drawing, and which of them are printed.
#[derive(Debug)]
pub(crate) struct Grid {
    pub(crate) columns: u32,
    pub(crate) rows: u32,
    /// The upper left corner of the grid, in the drawing.
    corner: Point,
    step: Vec2,
    size: Vec2,
    ink: Ink,
    printed: Vec<bool>,
}

impl Grid {
    fn new(drawing: &Drawing, frame: &Frame, options: &SheetOptions) -> Result<Grid, Error> {
        drawing.check()?;
        let bounds = drawing.some_bounds()?;
        let (width, height) = frame.paper;
        let columns = tile_count(bounds.width(), width, frame.margin, frame.overlap)?;
        let rows = tile_count(bounds.height(), height, frame.margin, frame.overlap)?;
        let places = u64::from(columns) * u64::from(rows);
        if places > 20_000 {
            let count = places as f64;
            return Err(Error::new(ErrorKind::Count, "pages", count, 1.0, 5000.0));
        }
        let step = frame.step();
        let whole = Vec2::new(
            f64::from(columns) * step.x + frame.overlap,
            f64::from(rows) * step.y + frame.overlap,
        );
        let mut grid = Grid {
            columns,
            rows,
            // The drawing lies in the middle of its pages.
            corner: bounds.center() + Vec2::new(-whole.x / 2.0, whole.y / 2.0),
            step,
            size: Vec2::new(frame.width, frame.height),
            ink: Ink::of(&drawing.shapes),
            printed: Vec::new(),
        };
        grid.printed = (0..rows)
            .flat_map(|row| (0..columns).map(move |column| (row, column)))
            .map(|(row, column)| {
                let cell = grid.cell(row, column);
                options.blank_pages || grid.ink.touches(cell) || grid.ink.holds(cell)
            })
            .collect();
        Ok(grid)
    }

    /// The part of the drawing printed on a page, overlaps included.
    pub(crate) fn window(&self, row: u32, column: u32) -> Rect {
        let x = self.corner.x + f64::from(column) * self.step.x;
        let y = self.corner.y - f64::from(row) * self.step.y;
        Rect::new(x, y - self.size.y, x + self.size.x, y)
    }

    /// The part of the drawing seen of a page when all are pasted: the cells of all pages cover the drawing once.
    pub(crate) fn cell(&self, row: u32, column: u32) -> Rect {
        let mut cell = self.window(row, column);
        if column + 1 < self.columns {
            cell.x1 = cell.x0 + self.step.x;
        }
        if row + 1 < self.rows {
            cell.y0 = cell.y1 - self.step.y;
        }
        cell
    }

    /// Whether there is such a page and it is printed; rows and columns count from 0.
    pub(crate) fn is_printed(&self, row: u32, column: u32) -> bool {
        column < self.columns
            && row < self.rows
            && self.printed[(row * self.columns + column) as usize]
    }

    /// Rows and columns, from 0, of the pages that are printed.
    pub(crate) fn cells(&self) -> impl Iterator<Item = (u32, u32)> {
        let columns = self.columns;
        self.printed
            .iter()
            .zip(0u32..)
            .filter(|(printed, _)| **printed)
            .map(move |(_, place)| (place / columns, place % columns))
    }

    pub(crate) fn printed(&self) -> usize {
        self.cells().count()
    }

    pub(crate) fn ink(&self) -> &Ink {
        &self.ink
    }

    /// One page: the drawing through its window, joining marks and the page's name.
    fn sheet(
        &self,
        drawing: &Drawing,
        frame: &Frame,
        row: u32,
        column: u32,
        place: &str,
    ) -> Drawing {
        let window = self.window(row, column);
        let to_page = Vec2::new(frame.margin - window.x0, frame.margin - window.y0);
        let seen = drawing
            .shapes
            .iter()
            .filter(|shape| shape.bounds().is_some_and(|bounds| bounds.overlaps(window)))
            .map(|shape| shape.mapped(1.0, to_page))
            .collect();
        let mut marks = Drawing::new("");
        Joins::new(self, row, column).draw(&mut marks);
        for label in self.name([&drawing.title, place], window) {
            marks.label(label);
        }
        let marks = marks.moved(to_page);

        let mut page = Drawing::new(format!("{} · {place}", drawing.title));
        for (id, title, shapes) in [
            ("piece", drawing.title.as_str(), seen),
            ("joins", "Joining marks", marks.shapes),
        ] {
            page.group(Group {
                id: id.into(),
                title: title.into(),
                clip: Some(frame.rect()),
                shapes,
            });
        }
        page
    }

    /// The page's name in two lines, where it crosses no line of the drawing if there is such a place.
    fn name(&self, lines: [&str; 2], window: Rect) -> [Label; 2] {
        const SIZE: f64 = 2.8;
        const ROOM: f64 = 1.0;
        let lines = lines.map(|line| shorten(line, SIZE, window.width() - 12.0));
        let width = lines
            .iter()
            .map(|line| text_width(line, SIZE))
            .fold(0.0, f64::max);
        let (low, high) = (SIZE * DESCENT + ROOM, SIZE * (1.25 + ASCENT) + ROOM);
        let around =
            |at: &Point| Rect::new(at.x - ROOM, at.y - low, at.x + width + ROOM, at.y + high);
        let parts = |first: u32, count: u32| {
            (0..=count).map(move |i| f64::from((first + i) % (count + 1)) / f64::from(count))
        };
        let places = || {
            let slack = (window.width() - 12.0 - width, window.height() - low - high);
            parts(0, 12).flat_map(move |up| {
                parts(6, 12).map(move |along| {
                    Point::new(
                        window.x0 + 6.0 + along * slack.0,
                        window.y0 + low + up * slack.1,
                    )
                })
            })
        };
        let free = |at: &Point| !self.ink.touches(around(at));
        let at = places().find(free).or(places().next());
        let at = at.unwrap_or(window.origin());
        let [upper, lower] = lines;
        [
            Label::new(upper, at + Vec2::new(0.0, SIZE * 1.25), SIZE),
            Label::new(lower, at, SIZE),
        ]
    }
}
