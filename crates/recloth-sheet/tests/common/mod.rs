//! Looking into drawings.
#![allow(dead_code, reason = "each test file uses a part")]

use recloth_sheet::kurbo::{BezPath, ParamCurve, PathSeg, Point, Rect};
use recloth_sheet::{Drawing, Label, Pen, Shape};

/// Every shape, out of its groups.
pub(crate) fn flat(shapes: &[Shape]) -> Vec<&Shape> {
    shapes
        .iter()
        .flat_map(|shape| match shape {
            Shape::Group(group) => flat(&group.shapes),
            other => vec![other],
        })
        .collect()
}

pub(crate) fn labels(drawing: &Drawing) -> Vec<&Label> {
    flat(&drawing.shapes)
        .into_iter()
        .filter_map(|shape| match shape {
            Shape::Label(label) => Some(label),
            _ => None,
        })
        .collect()
}

pub(crate) fn texts(drawing: &Drawing) -> Vec<&str> {
    labels(drawing)
        .into_iter()
        .map(|label| label.text.as_str())
        .collect()
}

pub(crate) fn lines(drawing: &Drawing, wanted: Pen) -> Vec<&BezPath> {
    flat(&drawing.shapes)
        .into_iter()
        .filter_map(|shape| match shape {
            Shape::Line { pen, path } if *pen == wanted => Some(path),
            _ => None,
        })
        .collect()
}

/// Points close together along paths.
pub(crate) fn points<'a>(paths: impl IntoIterator<Item = &'a BezPath>) -> Vec<Point> {
    let along = |segment: PathSeg| (0..=400).map(move |i| segment.eval(f64::from(i) / 400.0));
    paths
        .into_iter()
        .flat_map(|path| path.segments().flat_map(along))
        .collect()
}

pub(crate) fn bounds(points: &[Point]) -> Rect {
    points
        .iter()
        .fold(Rect::from_points(points[0], points[0]), |rect, &p| {
            rect.union_pt(p)
        })
}

pub(crate) fn hypot(x: f64, y: f64) -> f64 {
    (x * x + y * y).sqrt()
}

/// How deep a point lies inside a label's box, given by its corners; negative outside.
pub(crate) fn depth(corners: [Point; 4], point: Point) -> f64 {
    let [a, b, _, d] = corners;
    let axis = |to: Point| {
        let v = to - a;
        let length = hypot(v.x, v.y);
        let along = (point - a).dot(v) / length;
        along.min(length - along)
    };
    axis(b).min(axis(d))
}
