//! Operations on pieces: what is turned, cut and spread keeps its lengths, its cloth and its marks.

mod carried;
mod copied;
mod cuts;
mod darts;
mod lengths;
mod linings;
mod properties;
#[path = "../random/mod.rs"]
mod random;
mod trued;
mod walks;
mod wholes;

use kurbo::{Line, Point, Vec2};
use random::Random;
use recloth::draft::{Allowances, Centre, SkirtPanel};
use recloth::outline::{
    Curve, Cutting, Dart, Edge, Facing, LineKind, Mark, NewSeam, Opening, Piece, Place, Slash, Way,
};
use recloth::{Error, ErrorKind};

impl Random {
    /// A piece that goes round the origin, of lines, arcs and cubics, its corners about 300 out.
    fn piece(&mut self, count: usize) -> Piece {
        let corners: Vec<Point> = (0..count)
            .map(|index| {
                let angle = (index as f64 + self.between(0.3, 0.7)) / count as f64;
                let (sin, cos) = libm::sincos(angle * std::f64::consts::TAU);
                Point::ORIGIN + Vec2::new(cos, sin) * self.between(260.0, 340.0)
            })
            .collect();
        let edges = (0..count).map(|index| {
            let (a, b) = (corners[index], corners[(index + 1) % count]);
            let aside = Vec2::new(b.y - a.y, a.x - b.x) * self.between(-0.15, 0.15);
            let curve = match index % 3 {
                0 => Curve::line(a, b),
                1 => Curve::arc(a, b, self.between(-0.2, 0.2)),
                _ => Curve::cubic(a, a + (b - a) * 0.3 + aside, a + (b - a) * 0.7 - aside, b),
            };
            Edge::seam(format!("edge {index}"), curve, 10.0).notch(format!("n{index}"), 20.0, 1)
        });
        Piece::new("random", edges.collect())
            .expect("a piece")
            .with_cutting(Cutting {
                count: 2,
                ..Cutting::default()
            })
            .expect("a piece")
    }

    /// A place anywhere on the outline, not right at a corner.
    fn place(&mut self, piece: &Piece) -> Place {
        let edge = self.between(0.0, piece.edges().len() as f64) as usize;
        let span = piece.edges()[edge].length();
        Place {
            edge,
            distance: self.between(0.1, 0.9) * span,
        }
    }
}

/// Length of all edges with this name, whole or in numbered parts.
fn length_of(piece: &Piece, name: &str) -> f64 {
    let part = |edge: &&Edge| {
        let rest = edge.name.strip_prefix(name);
        rest.is_some_and(|rest| rest.is_empty() || rest[1..].parse::<u32>().is_ok())
    };
    piece.edges().iter().filter(part).map(Edge::length).sum()
}

fn close(a: f64, b: f64, within: f64) {
    assert!((a - b).abs() <= within, "{a} is not {b}");
}

fn size(v: Vec2) -> f64 {
    libm::hypot(v.x, v.y)
}

fn triangle(a: Point, b: Point, c: Point) -> f64 {
    ((b - a).cross(c - a)).abs() / 2.0
}

fn dart_of<'a>(piece: &'a Piece, name: &str) -> &'a Dart {
    let named = |mark: &'a Mark| match mark {
        Mark::Dart(dart) if dart.name == name => Some(dart),
        _ => None,
    };
    piece.marks().iter().find_map(named).expect(name)
}

/// A square of 200 with a dart 20 wide in the middle of its top, its point in the middle of the square.
fn square() -> Piece {
    let corners = [
        (0.0, 0.0),
        (200.0, 0.0),
        (200.0, 200.0),
        (110.0, 200.0),
        (90.0, 200.0),
        (0.0, 200.0),
    ];
    let names = ["hem", "side", "top side", "mouth", "top centre", "centre"];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 6]);
    let edges = (0..6)
        .map(|i| Edge::seam(names[i], side(i), 10.0))
        .collect();
    let dart = Mark::Dart(Dart {
        name: "waist".into(),
        point: Point::new(100.0, 100.0),
        legs: [Point::new(90.0, 200.0), Point::new(110.0, 200.0)],
    });
    let drill = Mark::Drill {
        name: "pocket".into(),
        at: Point::new(180.0, 190.0),
    };
    Piece::new("square", edges)
        .expect("a piece")
        .with_marks(vec![dart, drill])
        .expect("a piece")
}

fn panel() -> Piece {
    let panel = SkirtPanel {
        name: "front".into(),
        panel_width: 242.0,
        waist: 190.0,
        hip: 250.0,
        hip_depth: 200.0,
        length: 600.0,
        hem_width: 290.0,
        darts: 2,
        largest_intake: 26.0,
        dart_length: 110.0,
        side_rise: 12.0,
        centre: Centre::Seam,
        allowances: Allowances {
            seam: 15.0,
            hem: 40.0,
        },
    };
    panel.draft().expect("a piece").pieces.remove(0)
}
