//! A piece: a closed ring of edges with marks, grain and a cutting instruction.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use kurbo::{Affine, Line, Point, Rect, Vec2};

use super::edge::{Corner, Edge, Role, reversed_ring};
use super::fit::fit;
use super::mark::{Cutout, Mark};
use super::ring;
use super::segment::{Segment, sincos_deg};
use super::vector::{length, right};
use crate::{Error, ErrorKind};

/// Largest coordinate (mm).
const FAR: f64 = 1e5;
/// Largest allowance (mm).
const WIDEST: f64 = 1e3;
/// Edges may miss each other by this much where they meet (mm).
const CLOSED: f64 = 1e-6;
/// How near arcs follow a cubic where a ring is checked (mm).
const FINE: f64 = 1e-3;

/// Whether the copies of a piece are all alike or half of them mirrored.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Hand {
    /// All as drawn.
    #[default]
    Identical,
    /// Half as drawn, half mirrored.
    Mirrored,
}

/// How a piece is cut out. Whether it is cut on a fold its edges say: see [`Piece::fold`].
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Cutting {
    /// How many in all, 1 to 1000; even where they are mirrored pairs.
    pub count: u32,
    /// Whether half of them are mirrored.
    #[cfg_attr(feature = "serde", serde(default))]
    pub hand: Hand,
    /// From which cloth.
    pub cloth: String,
    /// With which interfacing, if any.
    #[cfg_attr(feature = "serde", serde(default))]
    pub interfacing: Option<String>,
}

impl Default for Cutting {
    fn default() -> Cutting {
        Cutting {
            count: 1,
            hand: Hand::Identical,
            cloth: "cloth".into(),
            interfacing: None,
        }
    }
}

/// A piece of a garment: a closed ring of edges, with marks inside, a grain line and a cutting instruction.
///
/// The ring runs counter-clockwise with y up, so the cloth lies to the left of every edge; one given clockwise is
/// turned round (its edges then come in the opposite order, each reversed). Lengths in mm.
///
/// ```
/// use recloth::outline::{Curve, Edge, Piece};
/// let strip = Piece::new("strip", vec![
///     Edge::seam("bottom", Curve::line((0.0, 0.0), (300.0, 0.0)), 10.0),
///     Edge::seam("end", Curve::line((300.0, 0.0), (300.0, 50.0)), 10.0),
///     Edge::seam("top", Curve::line((300.0, 50.0), (0.0, 50.0)), 10.0),
///     Edge::seam("start", Curve::line((0.0, 50.0), (0.0, 0.0)), 10.0),
/// ])?;
/// assert_eq!(strip.area(), 15_000.0);
/// let gap = Piece::new("gap", vec![Edge::seam("only", Curve::line((0.0, 0.0), (9.0, 0.0)), 10.0)]);
/// assert_eq!(gap.unwrap_err().to_string(), "gap[0] = 9 is not between 0 and 0.000001");
/// # Ok::<(), recloth::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(try_from = "Parts", into = "Parts"))]
pub struct Piece {
    name: String,
    edges: Vec<Edge>,
    marks: Vec<Mark>,
    grain: Option<Line>,
    cutting: Cutting,
}

/// A piece as it is written down, before it is checked.
#[cfg(feature = "serde")]
#[derive(serde::Serialize, serde::Deserialize)]
struct Parts {
    name: String,
    edges: Vec<Edge>,
    #[serde(default)]
    marks: Vec<Mark>,
    #[serde(default)]
    grain: Option<Line>,
    #[serde(default)]
    cutting: Cutting,
}

#[cfg(feature = "serde")]
impl TryFrom<Parts> for Piece {
    type Error = Error;

    fn try_from(parts: Parts) -> Result<Piece, Error> {
        let piece = Piece::new(parts.name, parts.edges)?
            .with_marks(parts.marks)?
            .with_cutting(parts.cutting)?;
        match parts.grain {
            Some(line) => piece.with_grain(line),
            None => Ok(piece),
        }
    }
}

#[cfg(feature = "serde")]
impl From<Piece> for Parts {
    fn from(piece: Piece) -> Parts {
        Parts {
            name: piece.name,
            edges: piece.edges,
            marks: piece.marks,
            grain: piece.grain,
            cutting: piece.cutting,
        }
    }
}

impl Piece {
    /// A piece of these edges, each starting where the one before ends and the first where the last ends (within 1e-6).
    ///
    /// # Errors
    /// `at` is the index of the edge as given ([`sentence`] names it):
    /// - `Count`: not 1 to 1000 `edges`, or over 1000 `notches` on one;
    /// - `NotFinite`, `OutOfRange`: a `point` (coordinates -1e5 to 1e5), a `bulge` (-1000 to 1000; 0 on a fold), an
    ///   `allowance` (0 to 1000; 0 on a fold), a corner's `limit` (1 to 100), a notch's `distance` (0 to the edge's
    ///   length) or `marks` (1 to 3), an edge's `length` (at least 1e-6), or the `gap` to the next edge (at most 1e-6);
    /// - `OutOfRange`: a trimmed corner's `distance`, a rounded corner's `radius` (0 to 1000), a notch's `depth` (0 to the
    ///   allowance);
    /// - `Outline`: the `edges` cross or touch each other, or hold no area.
    pub fn new(name: impl Into<String>, edges: Vec<Edge>) -> Result<Piece, Error> {
        let (mut edges, area) = closed(edges)?;
        if area < 0.0 {
            edges = reversed_ring(edges);
        }
        Ok(Piece {
            name: name.into(),
            edges,
            marks: Vec::new(),
            grain: None,
            cutting: Cutting::default(),
        })
    }

    /// The piece with these marks in place of those it had.
    ///
    /// # Errors
    /// `at` is the index of the mark: `NotFinite` or `OutOfRange` for a `mark` point (-1e5 to 1e5), or for a dart's
    /// `leg` that ends off the outline (its distance, at most 0.001). `Count`: over 1000 `marks`. For a cut-out what
    /// [`Piece::new`] says of edges; `OutOfRange` where one lies on a `fold`; `Outline` naming `cutout`: it is not wholly
    /// within the piece, or touches the outline or another cut-out.
    pub fn with_marks(mut self, mut marks: Vec<Mark>) -> Result<Piece, Error> {
        Error::check_items("marks", marks.len(), 0, 1000)?;
        if marks.is_empty() {
            self.marks = marks;
            return Ok(self);
        }
        let outline = self.segments(FINE / 10.0);
        check_cutouts(&outline, &mut marks)?;
        for (index, mark) in marks.iter().enumerate() {
            let (points, bulge) = mark.numbers();
            for value in points.iter().flat_map(|p| [p.x, p.y]) {
                Error::check("mark", value, -FAR, FAR).map_err(|error| error.at_index(index))?;
            }
            Error::check("bulge", bulge, -1e3, 1e3).map_err(|error| error.at_index(index))?;
            if let Mark::Dart(dart) = mark {
                for leg in dart.legs {
                    let off = outline
                        .iter()
                        .map(|(_, segment)| segment.nearest(leg).0)
                        .fold(f64::INFINITY, f64::min);
                    Error::check("leg", off, 0.0, FINE).map_err(|error| error.at_index(index))?;
                }
            }
        }
        self.marks = marks;
        Ok(self)
    }

    /// The piece with its grain line: parallel to the warp, from one point to another.
    ///
    /// # Errors
    /// `NotFinite` or `OutOfRange`: a `grain` coordinate (-1e5 to 1e5), or its `length` (at least 1e-3).
    pub fn with_grain(mut self, grain: Line) -> Result<Piece, Error> {
        for value in [grain.p0.x, grain.p0.y, grain.p1.x, grain.p1.y] {
            Error::check("grain", value, -FAR, FAR)?;
        }
        Error::check("length", length(grain.p1 - grain.p0), 1e-3, 4.0 * FAR)?;
        self.grain = Some(grain);
        Ok(self)
    }

    /// The piece with its cutting instruction.
    ///
    /// # Errors
    /// `OutOfRange`: `count` is not 1 to 1000. `NoSolution`: `count` is odd, but pieces are mirrored pairs.
    pub fn with_cutting(mut self, cutting: Cutting) -> Result<Piece, Error> {
        let count = Error::check_count("count", cutting.count, 1, 1000)?;
        if cutting.hand == Hand::Mirrored && count % 2 == 1 {
            let count = f64::from(count);
            return Err(Error::no_solution("count", count, count - 1.0, count + 1.0));
        }
        self.cutting = cutting;
        Ok(self)
    }

    /// The piece under another name.
    pub fn with_name(mut self, name: impl Into<String>) -> Piece {
        self.name = name.into();
        self
    }

    /// The piece's name.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Its edges, counter-clockwise.
    pub fn edges(&self) -> &[Edge] {
        &self.edges
    }

    /// Index of the first edge with this name.
    pub fn edge(&self, name: &str) -> Option<usize> {
        self.edges.iter().position(|edge| edge.name == name)
    }

    /// Its marks.
    pub fn marks(&self) -> &[Mark] {
        &self.marks
    }

    /// What is cut out of it.
    pub fn cutouts(&self) -> impl Iterator<Item = &Cutout> {
        self.marks.iter().filter_map(|mark| match mark {
            Mark::Cutout(cutout) => Some(cutout),
            _ => None,
        })
    }

    /// Its grain line.
    pub fn grain(&self) -> Option<Line> {
        self.grain
    }

    /// Angle of the grain line from the x axis (degrees, -180 to 180, counter-clockwise); 90 where none is set.
    pub fn grain_deg(&self) -> f64 {
        let Some(grain) = self.grain else { return 90.0 };
        let along = grain.p1 - grain.p0;
        libm::atan2(along.y, along.x).to_degrees()
    }

    /// How it is cut out.
    pub fn cutting(&self) -> &Cutting {
        &self.cutting
    }

    /// Index of the edge laid to a fold of the cloth, if there is one: then half the piece is drawn.
    pub fn fold(&self) -> Option<usize> {
        self.edges.iter().position(|edge| edge.role == Role::Fold)
    }

    /// Area inside the drawn lines (mm²), less what is cut out of it, without the other half of a piece on a fold.
    pub fn area(&self) -> f64 {
        let outline: f64 = self.edges.iter().map(|edge| edge.curve.area_share()).sum();
        outline - self.cutouts().map(Cutout::area).sum::<f64>()
    }

    /// The smallest upright box that holds the drawn lines.
    pub fn bounds(&self) -> Rect {
        let mut edges = self.edges.iter().map(|edge| edge.curve.bounds());
        let first = edges.next().unwrap_or(Rect::ZERO);
        edges.fold(first, |all, one| all.union(one))
    }

    /// Point on an edge at a distance from its start (mm, held to its ends), and the direction outward, of length 1.
    /// None where there is no such edge.
    pub fn at(&self, edge: usize, distance: f64) -> Option<(Point, Vec2)> {
        let (point, along) = self.edges.get(edge)?.curve.at(distance);
        Some((point, right(along)))
    }

    /// The drawn ring as lines and arcs within `tolerance` (mm, at least 1e-6), each with the index of its edge.
    pub fn segments(&self, tolerance: f64) -> Vec<(usize, Segment)> {
        let mut all = Vec::new();
        let mut one = Vec::new();
        for (index, edge) in self.edges.iter().enumerate() {
            fit(&edge.curve, tolerance.max(1e-6), &mut one);
            all.extend(one.drain(..).map(|segment| (index, segment)));
        }
        all
    }

    /// The mirror image about the y axis: x becomes -x. Edges come in the opposite order, each reversed.
    pub fn mirror(&self) -> Piece {
        self.transformed(Affine::new([-1.0, 0.0, 0.0, 1.0, 0.0, 0.0]), true)
    }

    /// The piece shifted (mm).
    pub fn shifted(&self, by: impl Into<Vec2>) -> Piece {
        self.transformed(Affine::translate(by.into()), false)
    }

    /// The piece turned about the origin (degrees, counter-clockwise).
    pub fn turned(&self, angle_deg: f64) -> Piece {
        let (sin, cos) = sincos_deg(angle_deg);
        self.transformed(Affine::new([cos, sin, -sin, cos, 0.0, 0.0]), false)
    }

    /// After a rigid motion, which keeps a good piece good.
    pub(crate) fn transformed(&self, motion: Affine, flips: bool) -> Piece {
        let mut edges: Vec<Edge> = self
            .edges
            .iter()
            .map(|edge| Edge {
                curve: edge.curve.moved(motion, flips),
                ..edge.clone()
            })
            .collect();
        if flips {
            edges = reversed_ring(edges);
        }
        Piece {
            name: self.name.clone(),
            edges,
            marks: self.marks.iter().map(|m| m.moved(motion, flips)).collect(),
            grain: self
                .grain
                .map(|line| Line::new(motion * line.p0, motion * line.p1)),
            cutting: self.cutting.clone(),
        }
    }

    /// An error of this piece as a sentence that names the piece and the edge.
    pub fn sentence(&self, error: &Error) -> String {
        sentence(&self.name, &self.edges, error)
    }
}

/// Arguments whose `at` is not the index of an edge but of an item of another list.
const OTHER_LISTS: &[&str] = &[
    "mark", "cutout", "leg", "edge", "share", "notches", "open", "hinge", "open_by", "hinge_by",
];

/// An error of a piece as a sentence that names the piece and, where `at` is the index of one, the edge.
pub fn sentence(piece: &str, edges: &[Edge], error: &Error) -> String {
    let edge = error
        .at()
        .filter(|_| !OTHER_LISTS.contains(&error.argument()))
        .and_then(|at| edges.get(at as usize));
    match edge {
        Some(edge) if error.argument() == "gap" => format!(
            "piece \"{piece}\", edge \"{}\": {error} (mm from its end to the start of the next edge)",
            edge.name
        ),
        Some(edge) => format!("piece \"{piece}\", edge \"{}\": {error}", edge.name),
        None => format!("piece \"{piece}\": {error}"),
    }
}

/// The edges of a closed ring that does not cross itself, each starting exactly where the one before ends, and its signed
/// area.
fn closed(mut edges: Vec<Edge>) -> Result<(Vec<Edge>, f64), Error> {
    Error::check_items("edges", edges.len(), 1, 1000)?;
    for (index, edge) in edges.iter().enumerate() {
        check_edge(edge).map_err(|error| error.at_index(index))?;
    }
    for index in 0..edges.len() {
        let next = (index + 1) % edges.len();
        let end = edges[index].curve.end();
        let gap = length(edges[next].curve.start() - end);
        Error::check("gap", gap, 0.0, CLOSED).map_err(|error| error.at_index(index))?;
        edges[next].curve.set_start(end);
    }
    let mut segments = Vec::new();
    let mut owners = Vec::new();
    for (index, edge) in edges.iter().enumerate() {
        fit(&edge.curve, FINE, &mut segments);
        owners.resize(segments.len(), index);
    }
    let crossed = |index: usize| {
        Error::new(ErrorKind::Outline, "edges", f64::NAN, f64::NAN, f64::NAN).at_index(index)
    };
    if let Some(segment) = ring::self_crossing(&segments) {
        return Err(crossed(owners[segment]));
    }
    let area: f64 = edges.iter().map(|edge| edge.curve.area_share()).sum();
    if area.is_nan() || area.abs() <= 1e-6 {
        return Err(crossed(0));
    }
    Ok((edges, area))
}

/// Sees that cut-outs are closed rings within the outline, apart from it and from each other, and turns them clockwise.
fn check_cutouts(outline: &[(usize, Segment)], marks: &mut [Mark]) -> Result<(), Error> {
    let outline: Vec<Segment> = outline.iter().map(|(_, segment)| *segment).collect();
    let mut rings: Vec<Vec<Segment>> = Vec::new();
    for (index, mark) in marks.iter_mut().enumerate() {
        let Mark::Cutout(cutout) = mark else { continue };
        let at = |error: Error| error.at_index(index);
        let (edges, area) = closed(core::mem::take(&mut cutout.edges)).map_err(at)?;
        cutout.edges = if area > 0.0 {
            reversed_ring(edges)
        } else {
            edges
        };
        let folds = cutout.edges.iter().filter(|edge| edge.role == Role::Fold);
        Error::check("fold", folds.count() as f64, 0.0, 0.0).map_err(at)?;
        let mut ring = Vec::new();
        for edge in &cutout.edges {
            fit(&edge.curve, FINE, &mut ring);
        }
        let start = ring[0].start;
        let within = ring::winding(&outline, start) > 0 && !ring::meet(&ring, &outline);
        let apart = rings.iter().all(|other| {
            ring::winding(other, start) == 0
                && ring::winding(&ring, other[0].start) == 0
                && !ring::meet(&ring, other)
        });
        if !(within && apart) {
            let nan = f64::NAN;
            return Err(at(Error::new(ErrorKind::Outline, "cutout", nan, nan, nan)));
        }
        rings.push(ring);
    }
    Ok(())
}

fn check_edge(edge: &Edge) -> Result<(), Error> {
    let (points, bulge) = edge.curve.numbers();
    for value in points.iter().flat_map(|point| [point.x, point.y]) {
        Error::check("point", value, -FAR, FAR)?;
    }
    let on_fold = edge.role == Role::Fold;
    let (bend, widest) = if on_fold { (0.0, 0.0) } else { (1e3, WIDEST) };
    Error::check("bulge", bulge, -bend, bend)?;
    Error::check("allowance", edge.allowance, 0.0, widest)?;
    match edge.corner {
        Corner::Pointed { limit } => Error::check("limit", limit, 1.0, 100.0)?,
        Corner::Trimmed { distance } => Error::check("distance", distance, 0.0, WIDEST)?,
        Corner::Rounded { radius } => Error::check("radius", radius, 0.0, WIDEST)?,
        _ => 0.0,
    };
    let span = Error::check("length", edge.length(), CLOSED, 1e9)?;
    Error::check_items("notches", edge.notches.len(), 0, 1000)?;
    for notch in &edge.notches {
        Error::check("distance", notch.distance, 0.0, span + CLOSED)?;
        Error::check_count("marks", notch.marks, 1, 3)?;
        Error::check("depth", notch.depth.unwrap_or(0.0), 0.0, edge.allowance)?;
    }
    Ok(())
}
