//! The drawing: a list of shapes in millimetres, y up.

use kurbo::{BezPath, PathEl, Point, Rect, Vec2};
use recloth::{Error, ErrorKind};

use crate::font::{ASCENT, CAPITAL, DESCENT, text_width};
use crate::hatch::hatch;
use crate::ink::bounds_of;
use crate::path::{closed_path, map_path, open_path};
use crate::{Page, Pen, Tone};

/// Shapes at true scale: lengths in mm, x to the right, y up. Later shapes lie on top of earlier ones.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Drawing {
    /// What is drawn, for people and for screen readers.
    pub title: String,
    /// The shapes.
    pub shapes: Vec<Shape>,
}

/// One shape of a drawing.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum Shape {
    /// A line along a path.
    Line {
        /// What the line means, and so its width and dashes.
        pen: Pen,
        /// The path (mm).
        path: BezPath,
    },
    /// A filled area; where outlines lie inside each other, every second one is a hole (even-odd rule).
    Area {
        /// What the area means, and so its grey.
        tone: Tone,
        /// The outlines (mm).
        path: BezPath,
    },
    /// A line of text.
    Label(Label),
    /// Shapes that belong together.
    Group(Group),
}

/// Shapes that belong together, with a name for tools and for screen readers.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Group {
    /// Identifier in the SVG; none when empty. Letters other than a-z, A-Z, 0-9, `-` and `_` become `-`.
    pub id: String,
    /// Title in the SVG; none when empty.
    pub title: String,
    /// Nothing outside this rectangle is drawn (mm).
    pub clip: Option<Rect>,
    /// The shapes.
    pub shapes: Vec<Shape>,
}

/// Which part of a label lies at its place.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Anchor {
    /// The beginning of the base line.
    #[default]
    Start,
    /// The middle of the base line.
    Middle,
    /// The end of the base line.
    End,
}

/// A line of text in one writing direction.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    /// The text.
    pub text: String,
    /// Where the anchor of the base line lies (mm).
    pub at: Point,
    /// Size of the text (mm), 0.1 to 1000; a capital letter is about 0.73 of it high.
    pub size: f64,
    /// Turn of the base line, counter-clockwise (degrees), -360 to 360.
    pub angle_deg: f64,
    /// Which part of the base line lies at `at`.
    pub anchor: Anchor,
}

/// Whether a letter is an embedding, override or isolate of UAX #9, or their end.
fn turns(letter: char) -> bool {
    matches!(letter, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

impl Label {
    /// Level text that begins at a point. Characters that turn the writing direction of what follows are left out: one in
    /// a name would turn round the measure written after it.
    pub fn new(text: impl Into<String>, at: impl Into<Point>, size: f64) -> Label {
        Label {
            text: text.into().replace(turns, ""),
            at: at.into(),
            size,
            angle_deg: 0.0,
            anchor: Anchor::Start,
        }
    }

    /// The same text with another part of its base line at the point.
    pub fn anchored(mut self, anchor: Anchor) -> Label {
        self.anchor = anchor;
        self
    }

    /// The same text turned counter-clockwise about the point (degrees).
    pub fn turned(mut self, angle_deg: f64) -> Label {
        self.angle_deg = angle_deg;
        self
    }

    /// The same text, its capitals standing with their middle at the point both ways.
    pub fn centred(mut self) -> Label {
        let (sin, cos) = self.sin_cos();
        let down = self.size * CAPITAL / 2.0;
        self.at += Vec2::new(sin * down, -cos * down);
        self.anchor = Anchor::Middle;
        self
    }

    /// The corners of the box round the text as set in a PDF (mm), counter-clockwise from the start of the base line.
    pub fn corners(&self) -> [Point; 4] {
        let width = text_width(&self.text, self.size);
        let start = match self.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => -width / 2.0,
            Anchor::End => -width,
        };
        let (sin, cos) = self.sin_cos();
        let corner = |along: f64, up: f64| {
            self.at + Vec2::new(along * cos - up * sin, along * sin + up * cos)
        };
        let (low, high) = (-DESCENT * self.size, ASCENT * self.size);
        [
            corner(start, low),
            corner(start + width, low),
            corner(start + width, high),
            corner(start, high),
        ]
    }

    /// Sine and cosine of the turn, exact for level text.
    pub(crate) fn sin_cos(&self) -> (f64, f64) {
        if self.angle_deg == 0.0 {
            (0.0, 1.0)
        } else {
            libm::sincos(self.angle_deg.to_radians())
        }
    }
}

impl Drawing {
    /// A drawing without shapes.
    pub fn new(title: impl Into<String>) -> Drawing {
        Drawing {
            title: title.into(),
            shapes: Vec::new(),
        }
    }

    /// Adds a line along a path.
    pub fn line(&mut self, pen: Pen, path: BezPath) -> &mut Drawing {
        self.add(Shape::Line { pen, path })
    }

    /// Adds a straight line from point to point.
    pub fn segment(&mut self, pen: Pen, from: Point, to: Point) -> &mut Drawing {
        self.line(pen, open_path(&[from, to]))
    }

    /// Adds straight lines through points.
    pub fn polyline(&mut self, pen: Pen, points: &[Point]) -> &mut Drawing {
        self.line(pen, open_path(points))
    }

    /// Adds straight lines through points and back to the first.
    pub fn polygon(&mut self, pen: Pen, points: &[Point]) -> &mut Drawing {
        self.line(pen, closed_path(points))
    }

    /// Adds a filled area.
    pub fn area(&mut self, tone: Tone, path: BezPath) -> &mut Drawing {
        self.add(Shape::Area { tone, path })
    }

    /// Adds slanting lines `spacing` mm apart over an area (at most some thousand: the spacing grows with the area).
    pub fn hatch(&mut self, path: &BezPath, spacing: f64) -> &mut Drawing {
        let lines = hatch(path, spacing);
        self.line(Pen::Hatch, lines)
    }

    /// Adds a label.
    pub fn label(&mut self, label: Label) -> &mut Drawing {
        self.add(Shape::Label(label))
    }

    /// Adds a group.
    pub fn group(&mut self, group: Group) -> &mut Drawing {
        self.add(Shape::Group(group))
    }

    /// Adds a shape.
    pub fn add(&mut self, shape: Shape) -> &mut Drawing {
        self.shapes.push(shape);
        self
    }

    /// Adds a bar under the drawing that stands for `length` mm where 1 mm on paper is `mm_per_mm` mm of the real
    /// thing (1 at true scale), with the length as its text.
    pub fn scale_bar(&mut self, length: f64, mm_per_mm: f64) -> &mut Drawing {
        let drawn = length / mm_per_mm;
        let below = self.bounds().unwrap_or(Rect::ZERO);
        let (x, y) = (below.x0, below.y0 - 6.0);
        let at = |along: f64, up: f64| Point::new(x + along, y + up);
        let mut bar = Drawing::new("");
        bar.segment(Pen::Mark, at(0.0, 0.0), at(drawn, 0.0));
        for end in [0.0, drawn] {
            bar.segment(Pen::Mark, at(end, -1.2), at(end, 1.2));
        }
        let scale = if mm_per_mm == 1.0 {
            String::new()
        } else {
            format!(
                ", scale 1 : {}",
                crate::svg::number(round_to(mm_per_mm, 0.01))
            )
        };
        bar.label(Label::new(
            format!("{} mm{scale}", crate::svg::number(length)),
            at(drawn + 2.0, -1.1),
            3.0,
        ));
        self.group(Group {
            id: "scale".into(),
            title: "Scale bar".into(),
            clip: None,
            shapes: bar.shapes,
        })
    }

    /// The least upright rectangle round everything drawn, widths of lines and boxes of labels included; none when
    /// nothing is. Along curves it may be up to 0.01 mm too large.
    pub fn bounds(&self) -> Option<Rect> {
        self.shapes
            .iter()
            .filter_map(Shape::bounds)
            .reduce(|a, b| a.union(b))
    }

    /// The same drawing moved.
    pub fn moved(&self, by: Vec2) -> Drawing {
        Drawing {
            title: self.title.clone(),
            shapes: self
                .shapes
                .iter()
                .map(|shape| shape.mapped(1.0, by))
                .collect(),
        }
    }

    /// The same drawing with its paths and places `scale` times as large about the origin. Widths of lines and sizes of
    /// text stay, so that a small picture can be read.
    pub fn scaled(&self, scale: f64) -> Drawing {
        Drawing {
            title: self.title.clone(),
            shapes: self
                .shapes
                .iter()
                .map(|shape| shape.mapped(scale, Vec2::ZERO))
                .collect(),
        }
    }

    /// One page as large as the drawing and `margin` mm round it, for a wide printer or a plotter.
    ///
    /// # Errors
    /// As [`crate::pdf()`]; `OutOfRange` naming `margin` outside 0..=200; `Count` naming `shapes` when there are none.
    pub fn page(&self, margin: f64) -> Result<Page, Error> {
        let margin = Error::check("margin", margin, 0.0, 200.0)?;
        self.check()?;
        let bounds = self.some_bounds()?;
        Ok(Page {
            width: bounds.width() + 2.0 * margin,
            height: bounds.height() + 2.0 * margin,
            drawing: self.moved(Vec2::new(margin - bounds.x0, margin - bounds.y0)),
        })
    }

    /// An error unless every number is finite and every coordinate within 1e6 mm of the origin.
    ///
    /// # Errors
    /// `NotFinite` or `OutOfRange`, naming `coordinate`, `size` or `angle_deg`.
    pub fn check(&self) -> Result<(), Error> {
        self.shapes.iter().try_for_each(Shape::check)
    }

    /// The bounds, or the error that nothing is drawn.
    pub(crate) fn some_bounds(&self) -> Result<Rect, Error> {
        self.bounds()
            .ok_or_else(|| Error::new(ErrorKind::Count, "shapes", 0.0, 1.0, f64::NAN))
    }
}

impl Shape {
    /// The least upright rectangle round what the shape draws.
    pub(crate) fn bounds(&self) -> Option<Rect> {
        match self {
            Shape::Line { pen, path } => bounds_of(path, pen.width() / 2.0),
            Shape::Area { path, .. } => bounds_of(path, 0.0),
            Shape::Label(label) if label.text.is_empty() => None,
            Shape::Label(label) => bounds_of(&open_path(&label.corners()), 0.0),
            Shape::Group(group) => {
                let inner = group
                    .shapes
                    .iter()
                    .filter_map(Shape::bounds)
                    .reduce(|a, b| a.union(b))?;
                match group.clip {
                    Some(clip) if clip.overlaps(inner) => Some(clip.intersect(inner)),
                    Some(_) => None,
                    None => Some(inner),
                }
            }
        }
    }

    /// The shape with every place multiplied by `scale` and then moved.
    pub(crate) fn mapped(&self, scale: f64, by: Vec2) -> Shape {
        let map = |point: Point| (point.to_vec2() * scale + by).to_point();
        match self {
            Shape::Line { pen, path } => Shape::Line {
                pen: *pen,
                path: map_path(path, map),
            },
            Shape::Area { tone, path } => Shape::Area {
                tone: *tone,
                path: map_path(path, map),
            },
            Shape::Label(label) => Shape::Label(Label {
                at: map(label.at),
                ..label.clone()
            }),
            Shape::Group(group) => Shape::Group(Group {
                id: group.id.clone(),
                title: group.title.clone(),
                clip: group.clip.map(|clip| {
                    Rect::from_points(map(clip.origin()), map(Point::new(clip.x1, clip.y1)))
                }),
                shapes: group
                    .shapes
                    .iter()
                    .map(|shape| shape.mapped(scale, by))
                    .collect(),
            }),
        }
    }

    fn check(&self) -> Result<(), Error> {
        match self {
            Shape::Line { path, .. } | Shape::Area { path, .. } => {
                path.elements().iter().try_for_each(check_element)
            }
            Shape::Label(label) => {
                check_point(label.at)?;
                Error::check("size", label.size, 0.1, 1000.0)?;
                Error::check("angle_deg", label.angle_deg, -360.0, 360.0)?;
                Ok(())
            }
            Shape::Group(group) => {
                if let Some(clip) = group.clip {
                    check_point(clip.origin())?;
                    check_point(Point::new(clip.x1, clip.y1))?;
                }
                group.shapes.iter().try_for_each(Shape::check)
            }
        }
    }
}

fn check_element(element: &PathEl) -> Result<(), Error> {
    match *element {
        PathEl::MoveTo(p) | PathEl::LineTo(p) => check_point(p),
        PathEl::QuadTo(a, p) => check_point(a).and(check_point(p)),
        PathEl::CurveTo(a, b, p) => check_point(a).and(check_point(b)).and(check_point(p)),
        PathEl::ClosePath => Ok(()),
    }
}

fn check_point(point: Point) -> Result<(), Error> {
    Error::check("coordinate", point.x, -1e6, 1e6)?;
    Error::check("coordinate", point.y, -1e6, 1e6)?;
    Ok(())
}

fn round_to(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}
