//! What several figures need: pieces, arcs, dimension lines, and words in the size of the page.

use recloth::Error;
use recloth::outline::Piece;
use recloth_sheet::kurbo::{Affine, BezPath, Point, Vec2};
use recloth_sheet::{Drawing, Group, Label, Pen, PieceOptions, Shape, Tone, piece_drawing};

/// Size of all words in figures (mm on the page).
pub(super) const WORDS: f64 = 3.4;

/// Adds a piece as it is drawn to cut from, without its words, 1 to `scale`, its origin at a place on the page. Grey is
/// the cloth to cut. A grain line is drawn where the piece has one.
pub(super) fn pattern(
    drawing: &mut Drawing,
    piece: &Piece,
    scale: f64,
    at: Point,
) -> Result<(), Error> {
    let options = PieceOptions {
        scale: 1.0 / scale,
        edges: false,
        ..PieceOptions::default()
    };
    let cloth = piece.cut_line(options.tolerance)?.path(0.01);
    drawing.area(
        Tone::Cloth,
        Affine::translate(at.to_vec2()) * (Affine::scale(1.0 / scale) * cloth),
    );
    let drawn = piece_drawing(piece, &options)?.moved(at.to_vec2());
    for shape in drawn.shapes {
        let Shape::Group(group) = shape else { continue };
        let wanted = match group.id.as_str() {
            "lines" | "notches" | "marks" | "fold" => true,
            "grain" => piece.grain().is_some(),
            _ => false,
        };
        if wanted {
            let lines = |shape: &Shape| !matches!(shape, Shape::Label(_));
            let shapes = group.shapes.into_iter().filter(lines).collect();
            drawing.group(Group {
                id: String::new(),
                title: String::new(),
                clip: None,
                shapes,
            });
        }
    }
    Ok(())
}

/// The point at a distance and an angle (degrees, counter-clockwise from the right) from another.
pub(super) fn polar(centre: Point, radius: f64, angle_deg: f64) -> Point {
    let (sin, cos) = libm::sincos(angle_deg.to_radians());
    centre + Vec2::new(radius * cos, radius * sin)
}

/// Carries `path` on along a circle from one angle to another (degrees), starting a path where there is none.
pub(super) fn arc(path: &mut BezPath, centre: Point, radius: f64, from_deg: f64, to_deg: f64) {
    // Cubics of at most 30 degrees lie within a millionth of the radius of the circle.
    let parts = ((to_deg - from_deg).abs() / 30.0).ceil().max(1.0);
    let step = (to_deg - from_deg) / parts;
    let handle = 4.0 / 3.0 * libm::tan(step.to_radians() / 4.0) * radius;
    let start = polar(centre, radius, from_deg);
    if path.elements().is_empty() {
        path.move_to(start);
    } else {
        path.line_to(start);
    }
    for part in 0..parts as u32 {
        let (a, b) = (
            from_deg + step * f64::from(part),
            from_deg + step * f64::from(part + 1),
        );
        path.curve_to(
            polar(polar(centre, radius, a), handle, a + 90.0),
            polar(polar(centre, radius, b), -handle, b + 90.0),
            polar(centre, radius, b),
        );
    }
}

/// A whole circle.
pub(super) fn circle(centre: Point, radius: f64) -> BezPath {
    let mut path = BezPath::new();
    arc(&mut path, centre, radius, 0.0, 360.0);
    path.close_path();
    path
}

/// Straight lines through points and back to the first.
pub(super) fn ring(points: &[Point]) -> BezPath {
    let mut path = BezPath::new();
    for (number, &point) in points.iter().enumerate() {
        if number == 0 {
            path.move_to(point);
        } else {
            path.line_to(point);
        }
    }
    path.close_path();
    path
}

/// Words with their middle at a point.
pub(super) fn words(drawing: &mut Drawing, text: &str, at: Point) {
    drawing.label(Label::new(text, at, WORDS).centred());
}

/// A dimension line from point to point with a short stroke across each end, and its words beside the middle: on the
/// left hand of one who goes along it, or on the right where `side` is negative. `side` is their distance (mm).
pub(super) fn dimension(drawing: &mut Drawing, from: Point, to: Point, text: &str, side: f64) {
    let along = to - from;
    let length = libm::hypot(along.x, along.y);
    if length == 0.0 {
        return;
    }
    let along = along / length;
    let left = Vec2::new(-along.y, along.x);
    drawing.segment(Pen::Construction, from, to);
    for end in [from, to] {
        drawing.segment(Pen::Mark, end - left * 1.3, end + left * 1.3);
    }
    words(drawing, text, from + along * (length / 2.0) + left * side);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_arc_keeps_its_radius() {
        let centre = Point::new(3.0, -2.0);
        for element in circle(centre, 100.0).elements() {
            if let Some(end) = element.end_point() {
                let out = end - centre;
                assert!((libm::hypot(out.x, out.y) - 100.0).abs() < 1e-9);
            }
        }
    }
}
