//! A piece drawn to cut from: its lines, marks, grain, and what a cutter must read on it.

mod marks;

use kurbo::{Point, Vec2};
use recloth::Error;
use recloth::outline::{CutLine, CutSegment, Hand, Piece, Role};
use recloth::tape::{Style, format_length};

use crate::drawing::Group;
use crate::font::{clip, wrap};
use crate::ink::flatten;
use crate::lay::grain_arrow;
use crate::path::{closed_path, runs, scaled};
use crate::place::{Plot, Room, extent, set};
use crate::{Drawing, Label, Pen, Shape, Tone};

/// How a piece is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PieceOptions {
    /// How far the cut line may lie from the true one (mm), 0.001 to 10; 0.05 by default.
    pub tolerance: f64,
    /// Size of the drawing, 0.001 to 10; 1 by default is full size. Widths of lines and sizes of text stay.
    pub scale: f64,
    /// Size of the piece's name (mm), 1 to 50; 7 by default. It shrinks where there is no room, and other text with it.
    pub text: f64,
    /// How allowances are written; in millimetres by default.
    pub style: Style,
    /// Whether to write along each edge what it is and its allowance; so by default.
    pub edges: bool,
}

impl Default for PieceOptions {
    fn default() -> PieceOptions {
        PieceOptions {
            tolerance: 0.05,
            scale: 1.0,
            text: 7.0,
            style: Style::MmHalf,
            edges: true,
        }
    }
}

/// Gap between a line and the text beside it (mm).
const GAP: f64 = 1.6;
/// A notch reaches from the cut line this part of the way to the seam, at most `NOTCH` mm.
const NOTCH: f64 = 6.0;

/// A piece: cut line, seam line, folds, notches, darts, marks, grain, its name, how to cut it, and its allowances.
///
/// Coordinates are those of the piece, times the scale. Text keeps clear of lines where there is room.
///
/// # Errors
/// `NotFinite` or `OutOfRange` naming an option; what [`Piece::cut_line`] says of the piece.
///
/// ```
/// use recloth::outline::{Curve, Edge, Piece};
/// use recloth_sheet::{PieceOptions, piece_drawing, svg};
/// let corners = [(0.0, 0.0), (160.0, 0.0), (160.0, 180.0), (0.0, 180.0)];
/// let edges = (0..4).map(|i| Edge::seam("side", Curve::line(corners[i], corners[(i + 1) % 4]), 10.0));
/// let pocket = Piece::new("Patch pocket", edges.collect())?;
/// let drawing = piece_drawing(&pocket, &PieceOptions::default())?;
/// assert!(svg(&drawing)?.contains("Patch pocket"));
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn piece_drawing(piece: &Piece, options: &PieceOptions) -> Result<Drawing, Error> {
    Error::check("scale", options.scale, 1e-3, 10.0)?;
    Error::check("text", options.text, 1.0, 50.0)?;
    let cut = piece.cut_line(options.tolerance)?;
    let seam = piece.seam_line(options.tolerance)?;
    let mut sketch = Sketch {
        piece,
        options,
        room: Room::new(flatten(&scaled(
            &runs(seam.segments(), &|_| true),
            options.scale,
        ))),
        groups: Vec::new(),
    };
    sketch.lines(&cut, &seam);
    // Before the names of notches and marks, which find room beside it.
    if let Some(line) = piece.grain() {
        sketch.grain(sketch.place(line.p0), sketch.place(line.p1));
    }
    sketch.notches(&cut);
    sketch.marks();
    sketch.fold();
    let mut left_over = if options.edges {
        sketch.edge_texts()
    } else {
        Vec::new()
    };
    for error in cut.unmade() {
        let edge = error.at().and_then(|at| piece.edges().get(at as usize));
        if let Some(edge) = edge {
            left_over.push(format!(
                "a corner of {} is pointed, not as asked",
                edge.name
            ));
        }
    }
    sketch.title(left_over);
    if piece.grain().is_none() {
        sketch.upright_grain();
    }
    let mut drawing = Drawing::new(piece.name());
    drawing.shapes = sketch.groups;
    Ok(drawing)
}

/// The drawing as it grows.
struct Sketch<'a> {
    piece: &'a Piece,
    options: &'a PieceOptions,
    /// Where text can still go, on paper.
    room: Room,
    groups: Vec<Shape>,
}

impl Sketch<'_> {
    /// A point of the piece on paper.
    fn place(&self, point: Point) -> Point {
        (point.to_vec2() * self.options.scale).to_point()
    }

    fn finish(&mut self, id: &str, title: &str, drawing: Drawing) {
        if !drawing.shapes.is_empty() {
            self.groups.push(Shape::Group(Group {
                id: id.into(),
                title: title.into(),
                clip: None,
                shapes: drawing.shapes,
            }));
        }
    }

    /// The cut line, the seam line where it is another, hem lines, and the fold the piece is laid to.
    fn lines(&mut self, cut: &CutLine, seam: &CutLine) {
        let edges = self.piece.edges();
        let role = |part: &CutSegment| part.edge.map(|edge| edges[edge].role);
        let mut drawing = Drawing::new("");
        let mut draw = |pen: Pen, line: &CutLine, wanted: &dyn Fn(&CutSegment) -> bool| {
            let path = runs(line.segments(), wanted);
            if !path.elements().is_empty() {
                drawing.line(pen, scaled(&path, self.options.scale));
            }
        };
        draw(Pen::Cut, cut, &|part| role(part) != Some(Role::Fold));
        draw(Pen::Fold, cut, &|part| role(part) == Some(Role::Fold));
        let wide = |part: &CutSegment| part.edge.is_some_and(|edge| edges[edge].allowance > 0.0);
        draw(Pen::Seam, seam, &|part| {
            wide(part) && role(part) != Some(Role::Hem)
        });
        draw(Pen::Fold, seam, &|part| {
            wide(part) && role(part) == Some(Role::Hem)
        });
        for (line, pen) in [(cut, Pen::Cut), (seam, Pen::Seam)] {
            for (cutout, ring) in self.piece.cutouts().zip(line.cutouts()) {
                // Without an allowance the seam line is the cut line, which is drawn already.
                let wide = |part: &CutSegment| {
                    let sewn = |edge: usize| cutout.edges[edge].allowance > 0.0;
                    pen == Pen::Cut || part.edge.is_some_and(sewn)
                };
                let path = scaled(&runs(ring.segments(), &wide), self.options.scale);
                for line in flatten(&path) {
                    self.room.take_line(&line);
                }
                if !path.elements().is_empty() {
                    drawing.line(pen, path);
                }
            }
        }
        self.finish("lines", "Cut line, seam line and folds", drawing);
    }

    /// A free plot for small text, a little way from a point; none where there is no room.
    fn beside(
        &mut self,
        at: Point,
        way: Vec2,
        angle_deg: f64,
        lines: &[String],
    ) -> Option<(Plot, f64)> {
        if lines.iter().all(String::is_empty) {
            return None;
        }
        let aside = Vec2::new(-way.y, way.x);
        for size in [0.5, 0.42, 0.34].map(|part| self.options.text * part) {
            let (width, height) = extent(lines, size);
            // How far the plot reaches from its middle towards the point, at any turn.
            let along = direction(angle_deg);
            let across = along.dot(way).abs() * width / 2.0 + along.cross(way).abs() * height / 2.0;
            for gap in [GAP, 2.5 * GAP, 5.0 * GAP] {
                for slide in [0.0, 0.6, -0.6] {
                    let plot = Plot {
                        centre: at
                            + way * (across + gap)
                            + aside * (slide * (width + height) / 2.0),
                        width,
                        height,
                        angle_deg,
                    };
                    if self.room.is_free(&plot) {
                        self.room.take(&plot);
                        return Some((plot, size));
                    }
                }
            }
        }
        None
    }

    /// The grain line.
    fn grain(&mut self, from: Point, to: Point) {
        let mut drawing = Drawing::new("");
        grain_arrow(&mut drawing, from, to, (self.options.text * 0.6).min(5.0));
        self.room.take_line(&[from, to]);
        self.finish("grain", "Grain line", drawing);
    }

    /// For a piece without a grain line, whose grain is upright: an arrow where there is room.
    fn upright_grain(&mut self) {
        let height = self.piece.bounds().height() * self.options.scale;
        let plot = [0.5, 0.35, 0.25, 0.15, 0.08]
            .iter()
            .find_map(|part| self.room.find((height * part).max(4.0), 4.0, 90.0));
        if let Some(plot) = plot {
            let half = Vec2::new(0.0, plot.width / 2.0);
            self.grain(plot.centre - half, plot.centre + half);
        }
    }

    /// A bracket on each edge laid to a fold.
    fn fold(&mut self) {
        let mut drawing = Drawing::new("");
        for edge in self.piece.edges() {
            if edge.role == Role::Fold {
                self.fold_bracket(&mut drawing, edge.curve.start(), edge.curve.end());
            }
        }
        self.finish("fold", "To be laid on a fold of the cloth", drawing);
    }

    /// A bracket whose arrows point to the fold.
    fn fold_bracket(&mut self, drawing: &mut Drawing, start: Point, end: Point) {
        let (start, end) = (self.place(start), self.place(end));
        let along = end - start;
        let length = libm::hypot(along.x, along.y);
        let inward = unit(Vec2::new(-along.y, along.x));
        let depth = (self.options.text * 1.2).min(length * 0.1);
        let (from, to) = (start + along * 0.2, start + along * 0.8);
        let inner = [from + inward * depth, to + inward * depth];
        drawing.polyline(
            Pen::Grain,
            &[from + inward, inner[0], inner[1], to + inward],
        );
        let head = unit(along) * (depth * 0.2).min(1.2);
        for tip in [from, to] {
            let base = tip + inward * (depth * 0.4);
            drawing.area(
                Tone::Solid,
                closed_path(&[tip + inward * 0.3, base + head, base - head]),
            );
        }
        self.room.take_line(&[from, inner[0], inner[1], to]);
        let angle_deg = upright(along);
        let lines = ["lay on the fold".to_owned()];
        let middle = inner[0].midpoint(inner[1]);
        if let Some((plot, size)) = self.beside(middle, inward, angle_deg, &lines) {
            write(drawing, &lines, size, &plot);
        }
    }

    /// Along each edge its name and allowance. Gives what found no room, but for edges cut as a named one beside them is,
    /// such as the short ones across a dart: there the lines say enough.
    fn edge_texts(&mut self) -> Vec<String> {
        let mut drawing = Drawing::new("");
        let edges = self.piece.edges();
        let mut named = vec![false; edges.len()];
        let mut left_over: Vec<(usize, String)> = Vec::new();
        for (index, edge) in edges.iter().enumerate() {
            if edge.role == Role::Fold {
                continue;
            }
            let mut text = clip(&edge.name);
            let width = match format_length(edge.allowance, self.options.style) {
                Ok(width) if edge.allowance > 0.0 => width.to_string(),
                _ => "no allowance".to_owned(),
            };
            let what = match edge.role {
                Role::Hem if edge.allowance > 0.0 && !edge.name.contains("hem") => "hem ",
                _ => "",
            };
            if !text.is_empty() {
                text.push_str(": ");
            }
            text.push_str(what);
            text.push_str(&width);
            if edge.outside() == 0.0 && edge.allowance > 0.0 {
                text.push_str(", already cut");
            }
            let lines = [text];
            let found = [0.5, 0.35, 0.65, 0.22, 0.78].iter().find_map(|part| {
                let (point, along) = edge.curve.at(edge.curve.length() * part);
                let inward = Vec2::new(-along.y, along.x);
                let on_seam = self.place(point + inward * edge.inside());
                self.beside(on_seam, inward, upright(along), &lines)
            });
            match found {
                Some((plot, size)) => {
                    write(&mut drawing, &lines, size, &plot);
                    named[index] = true;
                }
                None => left_over.extend(lines.map(|line| (index, line))),
            }
        }
        self.finish("edges", "Edges and their allowances", drawing);
        let alike = |a: usize, b: usize| {
            let (a, b) = (&edges[a], &edges[b]);
            a.role == b.role && a.drawn == b.drawn && a.allowance == b.allowance
        };
        left_over.retain(|&(index, _)| {
            let (before, after) = (index + edges.len() - 1, index + 1);
            ![before, after]
                .map(|beside| beside % edges.len())
                .iter()
                .any(|&beside| named[beside] && alike(index, beside))
        });
        let mut texts: Vec<String> = Vec::new();
        for (_, text) in left_over {
            if !texts.contains(&text) {
                texts.push(text);
            }
        }
        texts
    }

    /// The piece's name and how to cut it, in the middle if there is room, otherwise below the piece.
    fn title(&mut self, left_over: Vec<String>) {
        let mut lines = vec![self.piece.name().to_owned()];
        lines.extend(cutting(self.piece));
        lines.extend(left_over);
        let lines: Vec<String> = lines.iter().map(|line| clip(line)).collect();
        let sizes = [1.0, 0.8, 0.6, 0.45, 0.35].map(|part| self.options.text * part);
        let grain = upright(direction(self.piece.grain_deg()));
        let labels = sizes.iter().find_map(|&size| {
            [0.0, 90.0, grain].iter().find_map(|&angle_deg| {
                [f64::INFINITY, 12.0, 8.0].iter().find_map(|width| {
                    let fold = |line: &String| wrap(line, size, width * size);
                    let lines: Vec<String> = lines.iter().flat_map(fold).collect();
                    self.room.text(&lines, size, angle_deg)
                })
            })
        });
        let labels = labels.unwrap_or_else(|| {
            let below = Drawing {
                title: String::new(),
                shapes: self.groups.clone(),
            };
            let corner = below.bounds().map_or(Point::ZERO, |bounds| bounds.origin());
            let size = sizes[2];
            let line = |(index, line): (usize, &String)| {
                let down = size * (1.4 + 1.3 * index as f64);
                Label::new(line.clone(), corner - Vec2::new(0.0, down), size)
            };
            lines.iter().enumerate().map(line).collect()
        });
        let mut drawing = Drawing::new("");
        drawing.shapes.extend(labels.into_iter().map(Shape::Label));
        self.finish("name", "Name and cutting instruction", drawing);
    }
}

/// Adds lines of text in a plot.
fn write(drawing: &mut Drawing, lines: &[String], size: f64, plot: &Plot) {
    let labels = set(lines, size, plot);
    drawing.shapes.extend(labels.into_iter().map(Shape::Label));
}

/// How to cut a piece, in words, a line each.
fn cutting(piece: &Piece) -> Vec<String> {
    let cutting = piece.cutting();
    let fold = if piece.fold().is_some() {
        " on the fold"
    } else {
        ""
    };
    let count = cutting.count;
    let mut lines = vec![match cutting.hand {
        Hand::Mirrored => format!("cut {count}{fold}: {0} as drawn, {0} mirrored", count / 2),
        Hand::Identical if count > 1 => format!("cut {count}{fold}, all as drawn"),
        Hand::Identical => format!("cut {count}{fold}"),
    }];
    lines.push(match &cutting.interfacing {
        Some(interfacing) => format!("{}, with {interfacing}", cutting.cloth),
        None => cutting.cloth.clone(),
    });
    lines
}

/// The angle of text along a direction, never upside down (degrees, above -90 to 90).
fn upright(along: Vec2) -> f64 {
    let angle_deg = libm::atan2(along.y, along.x).to_degrees();
    if angle_deg > 90.0 {
        angle_deg - 180.0
    } else if angle_deg <= -90.0 {
        angle_deg + 180.0
    } else {
        angle_deg
    }
}

fn direction(angle_deg: f64) -> Vec2 {
    let (sin, cos) = libm::sincos(angle_deg.to_radians());
    Vec2::new(cos, sin)
}

fn unit(v: Vec2) -> Vec2 {
    let length = libm::hypot(v.x, v.y);
    if length > 0.0 {
        v * (1.0 / length)
    } else {
        Vec2::ZERO
    }
}
