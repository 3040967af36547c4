//! Every kind of corner, cut from the same two edges.

use recloth::Error;
use recloth::outline::{Corner, Curve, Edge, Piece, Role};
use recloth_sheet::kurbo::{Affine, BezPath, Point, Rect, Vec2};
use recloth_sheet::{Drawing, Group, Pen, Tone};

use super::draw::{polar, ring, words};

const SCALE: f64 = 2.4;
/// Room of a picture round its corner, and from picture to picture (mm on the page).
const WINDOW: Rect = Rect::new(-29.0, -21.0, 19.0, 25.0);
const PITCH: Vec2 = Vec2::new(55.0, 58.0);
const COLUMNS: usize = 3;

struct Kind {
    name: &'static str,
    /// Inner angle of the corner (degrees).
    inner_deg: f64,
    /// Allowances of the two edges (mm).
    widths: [f64; 2],
    corner: Corner,
}

const fn kind(name: &'static str, inner_deg: f64, widths: [f64; 2], corner: Corner) -> Kind {
    Kind {
        name,
        inner_deg,
        widths,
        corner,
    }
}

const KINDS: [Kind; 9] = [
    kind(
        "pointed",
        76.0,
        [36.0, 15.0],
        Corner::Pointed { limit: 4.0 },
    ),
    kind(
        "pointed, limit 2",
        40.0,
        [20.0, 20.0],
        Corner::Pointed { limit: 2.0 },
    ),
    kind(
        "trimmed",
        76.0,
        [20.0, 20.0],
        Corner::Trimmed { distance: 14.0 },
    ),
    kind(
        "rounded",
        76.0,
        [20.0, 20.0],
        Corner::Rounded { radius: 20.0 },
    ),
    kind("squared to this", 76.0, [36.0, 15.0], Corner::SquaredToThis),
    kind("squared to next", 76.0, [36.0, 15.0], Corner::SquaredToNext),
    kind(
        "mirrored on this",
        76.0,
        [36.0, 15.0],
        Corner::MirroredOnThis,
    ),
    kind(
        "stepped on this",
        140.0,
        [36.0, 15.0],
        Corner::SteppedOnThis,
    ),
    kind(
        "inward",
        235.0,
        [20.0, 20.0],
        Corner::Pointed { limit: 4.0 },
    ),
];

pub(super) fn drawing() -> Result<Drawing, Error> {
    let mut drawing = Drawing::new("Nine corners");
    for (number, kind) in KINDS.iter().enumerate() {
        let (column, row) = ((number % COLUMNS) as f64, (number / COLUMNS) as f64);
        let at = Point::new(column * PITCH.x, -row * PITCH.y);
        drawing.group(Group {
            id: String::new(),
            title: String::new(),
            clip: Some(WINDOW + at.to_vec2()),
            shapes: picture(kind, at)?.shapes,
        });
        words(
            &mut drawing,
            kind.name,
            at + Vec2::new(WINDOW.center().x, WINDOW.y0 - 4.0),
        );
    }
    Ok(drawing)
}

/// The corner at its place on the page.
fn picture(kind: &Kind, at: Point) -> Result<Drawing, Error> {
    // Long edges, so that the other corners lie outside the picture.
    const FAR: f64 = 300.0;
    let (from, corner) = (Point::new(-FAR, 0.0), Point::ORIGIN);
    let to = polar(corner, FAR, 180.0 - kind.inner_deg);
    let mut corners = vec![from, corner, to];
    if kind.inner_deg > 180.0 {
        corners.extend([(FAR, -FAR), (FAR, FAR), (-FAR, FAR)].map(Point::from));
    }
    let edges = (0..corners.len()).map(|index| {
        let curve = Curve::line(corners[index], corners[(index + 1) % corners.len()]);
        let width = kind.widths.get(index).copied().unwrap_or(10.0);
        let corner = if index == 0 {
            kind.corner
        } else {
            Corner::default()
        };
        Edge::new(index.to_string(), curve, Role::Seam, width).corner(corner)
    });
    let piece = Piece::new(kind.name, edges.collect())?;
    let cut = piece.cut_line(0.01)?;
    let on_page = Affine::translate(at.to_vec2()) * Affine::scale(1.0 / SCALE);
    let (cut, seam): (BezPath, BezPath) = (on_page * cut.path(0.01), on_page * ring(&corners));

    let mut drawing = Drawing::new("");
    drawing.area(Tone::Piece, cut.clone());
    drawing.area(Tone::Paper, seam.clone());
    drawing.line(Pen::Cut, cut).line(Pen::Seam, seam);
    let (below, beside, off) = match kind.inner_deg < 60.0 {
        true => (-11.0, 24.0, 5.0),
        false => (-22.0, 17.0, 5.5),
    };
    words(&mut drawing, "this", at + Vec2::new(below, 3.6));
    let beside = polar(Point::ORIGIN, beside, 180.0 - kind.inner_deg);
    let inward = polar(Point::ORIGIN, off, 270.0 - kind.inner_deg);
    words(
        &mut drawing,
        "next",
        at + beside.to_vec2() + inward.to_vec2(),
    );
    Ok(drawing)
}
