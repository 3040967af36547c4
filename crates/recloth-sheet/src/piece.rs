//! A piece drawn to cut from: its lines, marks, grain, and what a cutter must read on it.

use kurbo::{BezPath, Point, Vec2};
use recloth::Error;
use recloth::outline::{CutLine, CutSegment, Dart, Hand, Mark, Piece, Role, Segment};
use recloth::tape::{Style, format_length};

use crate::drawing::{Group, closed_path};
use crate::font::wrap;
use crate::ink::flatten;
use crate::lay::grain_arrow;
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
        room: Room::new(flatten(&scaled_ring(&seam, options.scale))),
        groups: Vec::new(),
    };
    sketch.lines(&cut, &seam);
    sketch.notches(&cut);
    sketch.marks();
    if let Some(line) = piece.grain() {
        sketch.grain(sketch.place(line.p0), sketch.place(line.p1));
    }
    sketch.fold();
    let left_over = if options.edges {
        sketch.edge_texts()
    } else {
        Vec::new()
    };
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
        self.finish("lines", "Cut line, seam line and folds", drawing);
    }

    /// Notches, from the cut line towards the seam.
    fn notches(&mut self, cut: &CutLine) {
        let mut drawing = Drawing::new("");
        let mut names = Vec::new();
        let notches = self
            .piece
            .edges()
            .iter()
            .enumerate()
            .flat_map(|(index, edge)| edge.notches.iter().map(move |notch| (index, notch)));
        for ((edge, notch), carried) in notches.zip(cut.notches()) {
            let Some((_, outward)) = self.piece.at(edge, notch.distance) else {
                continue;
            };
            let (from, seam) = (self.place(carried.cut), self.place(carried.seam));
            let to_seam = libm::hypot(seam.x - from.x, seam.y - from.y);
            // Where cut line and seam line are one, the notch is only a mark on the piece.
            let reach = if to_seam > 0.1 {
                (to_seam * 0.6).min(NOTCH)
            } else {
                NOTCH / 2.0
            };
            let aside = Vec2::new(-outward.y, outward.x) * 2.5;
            for mark in 0..carried.marks {
                let along = aside * (f64::from(mark) - f64::from(carried.marks - 1) / 2.0);
                let ends = [from + along, from + along - outward * reach];
                drawing.segment(Pen::Notch, ends[0], ends[1]);
                self.room.take_line(&ends);
            }
            names.push((seam, outward, notch.name.clone()));
        }
        for (seam, outward, name) in names {
            let lines = [name];
            if let Some((plot, size)) = self.beside(seam, outward * -1.0, 0.0, &lines) {
                drawing
                    .shapes
                    .extend(set(&lines, size, &plot).into_iter().map(Shape::Label));
            }
        }
        self.finish("notches", "Notches", drawing);
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

    /// Darts, drill points, lines and buttonholes.
    fn marks(&mut self) {
        let mut drawing = Drawing::new("");
        let mut names: Vec<(Point, Vec2, String)> = Vec::new();
        let right = Vec2::new(1.0, 0.0);
        for mark in self.piece.marks() {
            let name = mark.name().to_owned();
            match mark {
                Mark::Dart(dart) => {
                    let tip = self.dart(&mut drawing, dart);
                    names.push((tip.0, tip.1, name));
                }
                Mark::Drill { at, .. } => {
                    let at = self.place(*at);
                    self.drill(&mut drawing, at);
                    names.push((at + right * 1.5, right, name));
                }
                Mark::Line { curve, .. } => {
                    let path = curve_path(curve);
                    let path = scaled(&path, self.options.scale);
                    for line in flatten(&path) {
                        self.room.take_line(&line);
                    }
                    drawing.line(Pen::Mark, path);
                    let (middle, along) = curve.at(curve.length() / 2.0);
                    names.push((self.place(middle), Vec2::new(-along.y, along.x), name));
                }
                Mark::Buttonhole { ends, .. } => {
                    let ends = ends.map(|end| self.place(end));
                    let along = unit(ends[1] - ends[0]);
                    let tick = Vec2::new(-along.y, along.x) * 2.0;
                    drawing.segment(Pen::Mark, ends[0], ends[1]);
                    for end in ends {
                        drawing.segment(Pen::Mark, end - tick, end + tick);
                        self.room.take_line(&[end - tick, end + tick]);
                    }
                    self.room.take_line(&ends);
                    names.push((ends[1] + along * 1.5, along, name));
                }
                _ => {}
            }
        }
        for (at, way, name) in names {
            let lines = [name];
            if let Some((plot, size)) = self.beside(at, way, 0.0, &lines) {
                drawing
                    .shapes
                    .extend(set(&lines, size, &plot).into_iter().map(Shape::Label));
            }
        }
        self.finish("marks", "Darts and marks", drawing);
    }

    /// A dart: its legs are sewn, its middle is folded, its point is a drill point. Gives where its name may stand.
    fn dart(&mut self, drawing: &mut Drawing, dart: &Dart) -> (Point, Vec2) {
        let point = self.place(dart.point);
        let legs = dart.legs.map(|leg| self.place(leg));
        let middle = legs[0].midpoint(legs[1]);
        drawing.polyline(Pen::Seam, &[legs[0], point, legs[1]]);
        drawing.segment(Pen::Construction, middle, point);
        self.room.take_line(&[legs[0], point, legs[1]]);
        self.room.take_line(&[middle, point]);
        self.drill(drawing, point);
        let way = unit(point - middle);
        (point + way * 1.5, way)
    }

    /// A drill point: a ring with its middle marked.
    fn drill(&mut self, drawing: &mut Drawing, at: Point) {
        let half = Segment::about(at, 1.5, 0.0, 180.0);
        let other = Segment::about(at, 1.5, 180.0, 180.0);
        let mut ring = BezPath::new();
        ring.move_to(half.start);
        append(&mut ring, &half);
        append(&mut ring, &other);
        ring.close_path();
        drawing.line(Pen::Mark, ring);
        for arm in [Vec2::new(0.6, 0.0), Vec2::new(0.0, 0.6)] {
            drawing.segment(Pen::Mark, at - arm, at + arm);
        }
        let arm = Vec2::new(1.5, 1.5);
        self.room.take_line(&[at - arm, at + arm]);
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
            drawing
                .shapes
                .extend(set(&lines, size, &plot).into_iter().map(Shape::Label));
        }
    }

    /// Along each edge its name and allowance. Gives what found no room.
    fn edge_texts(&mut self) -> Vec<String> {
        let mut drawing = Drawing::new("");
        let mut left_over: Vec<String> = Vec::new();
        for edge in self.piece.edges() {
            if edge.role == Role::Fold {
                continue;
            }
            let mut text = edge.name.clone();
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
                    drawing
                        .shapes
                        .extend(set(&lines, size, &plot).into_iter().map(Shape::Label));
                }
                None if left_over.contains(&lines[0]) => {}
                None => left_over.extend(lines),
            }
        }
        self.finish("edges", "Edges and their allowances", drawing);
        left_over
    }

    /// The piece's name and how to cut it, in the middle if there is room, otherwise below the piece.
    fn title(&mut self, left_over: Vec<String>) {
        let mut lines = vec![self.piece.name().to_owned()];
        lines.extend(cutting(self.piece));
        lines.extend(left_over);
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

/// The wanted parts of a closed line, each run of neighbours as one sub-path.
fn runs(parts: &[CutSegment], wanted: &dyn Fn(&CutSegment) -> bool) -> BezPath {
    let mut path = BezPath::new();
    let Some(first) = parts.iter().position(|part| !wanted(part)) else {
        // The whole ring.
        for (index, part) in parts.iter().enumerate() {
            if index == 0 {
                path.move_to(part.segment.start);
            }
            append(&mut path, &part.segment);
        }
        if !parts.is_empty() {
            path.close_path();
        }
        return path;
    };
    let mut drawing = false;
    for part in parts[first..].iter().chain(&parts[..first]) {
        if wanted(part) {
            if !drawing {
                path.move_to(part.segment.start);
            }
            append(&mut path, &part.segment);
        }
        drawing = wanted(part);
    }
    path
}

fn scaled_ring(line: &CutLine, scale: f64) -> BezPath {
    scaled(&runs(line.segments(), &|_| true), scale)
}

fn scaled(path: &BezPath, scale: f64) -> BezPath {
    match (Shape::Line {
        pen: Pen::Cut,
        path: path.clone(),
    })
    .mapped(scale, Vec2::ZERO)
    {
        Shape::Line { path, .. } => path,
        _ => BezPath::new(),
    }
}

fn curve_path(curve: &recloth::outline::Curve) -> BezPath {
    let mut path = BezPath::new();
    path.move_to(curve.start());
    match curve {
        recloth::outline::Curve::Segment(segment) => append(&mut path, segment),
        recloth::outline::Curve::Cubic(cubic) => path.curve_to(cubic.p1, cubic.p2, cubic.p3),
    }
    path
}

/// Adds a line or arc to a path that ends where it starts; arcs as cubics that each turn at most 22.5°, which stray from
/// the arc by less than a five-millionth of its radius.
fn append(path: &mut BezPath, segment: &Segment) {
    if segment.is_line() {
        path.line_to(segment.end);
        return;
    }
    let parts = (segment.sweep_deg().abs() / 22.5).ceil().clamp(1.0, 16.0) as u32;
    let step = segment.length() / f64::from(parts);
    for part in 0..parts {
        let mut arc = segment.part(step * f64::from(part), step * f64::from(part + 1));
        if part + 1 == parts {
            arc.end = segment.end;
        }
        // Handles of 4/3 tan(sweep/4) radii along the tangents: the usual cubic for an arc.
        let reach = 4.0 / 3.0 * arc.bulge.abs() * arc.radius();
        path.curve_to(
            arc.start + arc.start_tangent() * reach,
            arc.end - arc.end_tangent() * reach,
            arc.end,
        );
    }
}
