//! Pages written as PDF, at true scale.

use krilla::color::luma;
use krilla::geom::{PathBuilder, Transform};
use krilla::num::NormalizedF32;
use krilla::page::PageSettings;
use krilla::paint::{Fill, FillRule, LineJoin, Stroke, StrokeDash};
use krilla::surface::Surface;
use krilla::text::{Font, TextDirection};
use krilla::{Document, SerializeSettings};
use kurbo::{BezPath, PathEl, Point, Rect};
use recloth::{Error, ErrorKind};

use crate::font::{FONT, runs, text_width};
use crate::{Anchor, Label, Page, Shape};

/// One point, the unit of PDF, is 1/72 in.
const POINTS_PER_MM: f64 = 72.0 / 25.4;
/// The largest page a reader must take: 14,400 points (ISO 32000-1, annex C).
const LARGEST_PAGE: f64 = 14_400.0 / POINTS_PER_MM;

/// The pages as a PDF with its letters embedded. The same pages give the same bytes on every run.
///
/// # Errors
/// `Count` naming `pages` unless there are 1 to 5000; `OutOfRange` naming `page_width` or `page_height` unless 1 to
/// 5080 mm; what [`Drawing::check`](crate::Drawing::check) says of each page.
pub fn pdf(title: &str, pages: &[Page]) -> Result<Vec<u8>, Error> {
    Error::check_items("pages", pages.len(), 1, 5000)?;
    for (index, page) in pages.iter().enumerate() {
        Error::check("page_width", page.width, 1.0, LARGEST_PAGE)
            .and(Error::check("page_height", page.height, 1.0, LARGEST_PAGE))
            .map_err(|error| error.at_index(index))?;
        page.drawing.check()?;
    }
    write(title, pages).ok_or_else(|| {
        // The font is ours and the numbers are checked, so this says that the PDF writer met its own limits.
        Error::new(
            ErrorKind::Invalid,
            "pages",
            pages.len() as f64,
            f64::NAN,
            f64::NAN,
        )
    })
}

fn write(title: &str, pages: &[Page]) -> Option<Vec<u8>> {
    let font = Font::new(FONT.into(), 0)?;
    let mut document = Document::new_with(SerializeSettings {
        enable_tagging: false,
        ..SerializeSettings::default()
    });
    document.set_metadata(krilla::metadata::Metadata::new().title(title.to_owned()));
    for page in pages {
        let settings = PageSettings::from_wh(points(page.width), points(page.height))?;
        let mut paper = document.start_page_with(settings);
        let mut writer = Writer {
            surface: paper.surface(),
            font: &font,
            height: page.height,
        };
        writer.shapes(&page.drawing.shapes);
        writer.surface.finish();
    }
    document.finish().ok()
}

fn points(mm: f64) -> f32 {
    (mm * POINTS_PER_MM) as f32
}

struct Writer<'a> {
    surface: Surface<'a>,
    font: &'a Font,
    height: f64,
}

impl Writer<'_> {
    /// The place on the page, y turned down.
    fn place(&self, point: Point) -> (f32, f32) {
        (points(point.x), points(self.height - point.y))
    }

    fn shapes(&mut self, shapes: &[Shape]) {
        shapes.iter().for_each(|shape| self.shape(shape));
    }

    fn shape(&mut self, shape: &Shape) {
        match shape {
            Shape::Line { pen, path } => {
                if let Some(path) = self.path(path) {
                    self.surface.set_fill(None);
                    self.surface.set_stroke(Some(Stroke {
                        paint: grey(pen.ink()),
                        width: points(pen.width()),
                        line_join: LineJoin::Round,
                        dash: (!pen.dashes().is_empty()).then(|| StrokeDash {
                            array: pen.dashes().iter().map(|&dash| points(dash)).collect(),
                            offset: 0.0,
                        }),
                        ..Stroke::default()
                    }));
                    self.surface.draw_path(&path);
                }
            }
            Shape::Area { tone, path } => {
                if let Some(path) = self.path(path) {
                    self.fill(tone.ink());
                    self.surface.draw_path(&path);
                }
            }
            Shape::Label(label) => self.label(label),
            Shape::Group(group) => match group.clip {
                None => self.shapes(&group.shapes),
                Some(clip) => {
                    if let Some(window) = self.path(&rectangle(clip)) {
                        self.surface.push_clip_path(&window, &FillRule::NonZero);
                        self.shapes(&group.shapes);
                        self.surface.pop();
                    }
                }
            },
        }
    }

    fn fill(&mut self, ink: f64) {
        self.surface.set_stroke(None);
        self.surface.set_fill(Some(Fill {
            paint: grey(ink),
            opacity: NormalizedF32::ONE,
            rule: FillRule::EvenOdd,
        }));
    }

    fn label(&mut self, label: &Label) {
        if label.text.is_empty() {
            return;
        }
        let width = text_width(&label.text, label.size);
        let start = match label.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => -width / 2.0,
            Anchor::End => -width,
        };
        let (sin, cos) = label.sin_cos();
        let (x, y) = self.place(label.at);
        let (sin, cos) = (sin as f32, cos as f32);
        self.surface
            .push_transform(&Transform::from_row(cos, -sin, sin, cos, x, y));
        self.fill(1.0);
        let mut along = start;
        for (run, leftward) in runs(&label.text) {
            // Controls have no letter to show; the SVG has spaces for them too.
            let run = label.text[run].replace(char::is_control, " ");
            self.surface.draw_text(
                krilla::geom::Point::from_xy(points(along), 0.0),
                self.font.clone(),
                points(label.size),
                &run,
                false,
                match leftward {
                    true => TextDirection::RightToLeft,
                    false => TextDirection::LeftToRight,
                },
            );
            along += text_width(&run, label.size);
        }
        self.surface.pop();
    }

    /// The path on the page; none when there is nothing to draw.
    fn path(&self, path: &BezPath) -> Option<krilla::geom::Path> {
        let mut builder = PathBuilder::new();
        for element in path.elements() {
            match *element {
                PathEl::MoveTo(p) => {
                    let (x, y) = self.place(p);
                    builder.move_to(x, y);
                }
                PathEl::LineTo(p) => {
                    let (x, y) = self.place(p);
                    builder.line_to(x, y);
                }
                PathEl::QuadTo(a, p) => {
                    let ((ax, ay), (x, y)) = (self.place(a), self.place(p));
                    builder.quad_to(ax, ay, x, y);
                }
                PathEl::CurveTo(a, b, p) => {
                    let ((ax, ay), (bx, by), (x, y)) =
                        (self.place(a), self.place(b), self.place(p));
                    builder.cubic_to(ax, ay, bx, by, x, y);
                }
                PathEl::ClosePath => builder.close(),
            }
        }
        builder.finish()
    }
}

fn grey(ink: f64) -> krilla::paint::Paint {
    luma::Color::new(((1.0 - ink) * 255.0).round() as u8).into()
}

fn rectangle(rect: Rect) -> BezPath {
    crate::path::closed_path(&[
        Point::new(rect.x0, rect.y0),
        Point::new(rect.x1, rect.y0),
        Point::new(rect.x1, rect.y1),
        Point::new(rect.x0, rect.y1),
    ])
}
