//! Properties that every cut line has, on random pieces.

mod pieces;

use kurbo::{Point, Shape};
use pieces::{Kind, random_piece};
use recloth::ErrorKind;
use recloth::outline::{Corner, Curve, CutLine, Drawn, Edge, Piece, Segment};

const TOLERANCE: f64 = 0.05;
/// What rounding may add.
const HAIR: f64 = 1e-5;

/// Pieces of every kind with their cut lines; counts those whose allowances leave no cut line, which must be few.
fn each(kinds: &[Kind], seeds: std::ops::Range<u64>, check: impl Fn(&Piece, &CutLine, &str)) {
    let (mut made, mut refused) = (0, 0);
    for &kind in kinds {
        for seed in seeds.clone() {
            let piece = random_piece(seed, kind);
            match piece.cut_line(TOLERANCE) {
                Ok(cut) => {
                    made += 1;
                    check(&piece, &cut, &format!("seed {seed}, {kind:?}"));
                }
                Err(error) => {
                    refused += 1;
                    assert_eq!(
                        error.kind(),
                        ErrorKind::NoSolution,
                        "{error} at {seed} {kind:?}"
                    );
                    assert_eq!(error.argument(), "allowance");
                }
            }
        }
    }
    assert!(made > 4 * refused, "{made} made, {refused} refused");
}

const fn kind(straight: bool, uniform: bool, pointed: bool) -> Kind {
    Kind {
        straight,
        uniform,
        pointed,
    }
}

const POINTED: [Kind; 4] = [
    kind(true, true, true),
    kind(true, false, true),
    kind(false, true, true),
    kind(false, false, true),
];

fn samples(segment: &Segment) -> Vec<Point> {
    let length = segment.length();
    let count = (length / 2.0).ceil().clamp(2.0, 400.0);
    (0..=count as u32)
        .map(|i| segment.at(length * f64::from(i) / count).0)
        .collect()
}

fn distance(a: Point, b: Point) -> f64 {
    libm::hypot(a.x - b.x, a.y - b.y)
}

fn turn(a: Point, b: Point, c: Point) -> f64 {
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

/// Whether a polygon crosses itself, by every pair of sides.
fn polygon_crosses_itself(points: &[Point]) -> bool {
    let side = |i: usize| (points[i], points[(i + 1) % points.len()]);
    for i in 0..points.len() {
        let (a, b) = side(i);
        for j in i + 2..points.len() {
            let (c, d) = side(j);
            let apart = a.x.max(b.x) < c.x.min(d.x)
                || c.x.max(d.x) < a.x.min(b.x)
                || a.y.max(b.y) < c.y.min(d.y)
                || c.y.max(d.y) < a.y.min(b.y);
            if apart || (i == 0 && j + 1 == points.len()) {
                continue;
            }
            if turn(a, b, c) * turn(a, b, d) < -1e-9 && turn(c, d, a) * turn(c, d, b) < -1e-9 {
                return true;
            }
        }
    }
    false
}

#[test]
fn it_is_one_closed_ring_that_does_not_cross_itself() {
    let mut kinds = POINTED.to_vec();
    kinds.push(kind(false, false, false));
    each(&kinds, 0..60, |_, cut, which| {
        let segments = cut.segments();
        for (i, part) in segments.iter().enumerate() {
            let next = segments[(i + 1) % segments.len()];
            assert_eq!(part.segment.end, next.segment.start, "{which}");
        }
        assert!(!polygon_crosses_itself(&cut.flatten(1e-3)), "{which}");
    });
}

#[test]
fn it_holds_the_drawn_line() {
    let mut kinds = POINTED.to_vec();
    kinds.push(kind(false, false, false));
    each(&kinds, 1270..1350, |piece, cut, which| {
        assert!(
            cut.area() >= piece.area() - TOLERANCE * cut.length(),
            "{which}"
        );
        for (_, segment) in piece.segments(1e-4) {
            for point in samples(&segment) {
                assert!(
                    cut.contains(point) || cut.distance(point) <= TOLERANCE,
                    "{which}: {point:?}"
                );
            }
        }
    });
}

#[test]
fn no_point_of_it_is_nearer_to_an_edge_than_its_allowance() {
    each(&POINTED, 200..280, |piece, cut, which| {
        let drawn = piece.segments(1e-4);
        let count = piece.edges().len();
        let width = |edge: usize| piece.edges()[edge % count].outside();
        for point in cut.segments().iter().flat_map(|s| samples(&s.segment)) {
            for edge in 0..count {
                let curve = &piece.edges()[edge].curve;
                let (nearest, along, segment) = drawn
                    .iter()
                    .filter(|(owner, _)| *owner == edge)
                    .map(|(_, segment)| {
                        let (distance, along) = segment.nearest(point);
                        (distance, along, segment)
                    })
                    .min_by(|a, b| a.0.total_cmp(&b.0))
                    .unwrap();
                // The inner side of an edge has no allowance: near a sharp corner that of another edge may be cut off.
                let (foot, way) = segment.at(along);
                if way.x * (point.y - foot.y) - way.y * (point.x - foot.x) > 0.0 {
                    continue;
                }
                // Nearest at an end of the edge: there the neighbour's allowance may be the smaller.
                let wanted = if distance(point, curve.start()) <= nearest + TOLERANCE {
                    width(edge).min(width(edge + count - 1))
                } else if distance(point, curve.end()) <= nearest + TOLERANCE {
                    width(edge).min(width(edge + 1))
                } else {
                    width(edge)
                };
                assert!(
                    nearest >= wanted - TOLERANCE - HAIR,
                    "{which}: {point:?} is {nearest} from edge {edge}, not {wanted}"
                );
            }
        }
    });
}

#[test]
fn every_part_of_it_is_the_true_parallel_of_its_edge_or_near_a_corner() {
    let mut kinds = POINTED.to_vec();
    kinds.push(kind(false, false, false));
    each(&kinds, 300..380, |piece, cut, which| {
        let drawn = piece.segments(1e-4);
        let widest = piece
            .edges()
            .iter()
            .map(|e| e.outside())
            .fold(0.0, f64::max);
        for part in cut.segments() {
            for point in samples(&part.segment) {
                match part.edge {
                    Some(edge) => {
                        let wanted = piece.edges()[edge].outside();
                        let far = drawn
                            .iter()
                            .filter(|(owner, _)| *owner == edge)
                            .map(|(_, s)| (s.nearest(point).0 - wanted).abs())
                            .fold(f64::INFINITY, f64::min);
                        assert!(far <= TOLERANCE + HAIR, "{which}: {far} off edge {edge}");
                    }
                    None => {
                        let near = piece
                            .edges()
                            .iter()
                            .map(|e| distance(e.curve.end(), point))
                            .fold(f64::INFINITY, f64::min);
                        assert!(
                            near <= 6.0 * widest + HAIR,
                            "{which}: {near} from any corner"
                        );
                    }
                }
            }
        }
    });
}

#[test]
fn notches_lie_on_it_square_to_their_edge() {
    each(&POINTED, 400..440, |piece, cut, which| {
        assert_eq!(cut.notches().len(), piece.edges().len());
        for notch in cut.notches() {
            let edge = &piece.edges()[notch.edge];
            let (seam, along) = edge.curve.at(edge.notches[0].distance);
            assert_eq!(seam, notch.seam);
            let step = notch.cut - notch.seam;
            let size = libm::hypot(step.x, step.y);
            assert!(size >= edge.outside() - TOLERANCE, "{which}");
            let aslant = (step.x * along.x + step.y * along.y).abs();
            assert!(aslant <= 1e-6 * size.max(1.0), "{which}: {aslant}");
            assert!(cut.distance(notch.cut) <= TOLERANCE, "{which}");
        }
    });
}

#[test]
fn where_nothing_is_added_it_is_the_drawn_line() {
    for seed in 500..530 {
        let piece = random_piece(seed, kind(false, true, true));
        let edges = piece.edges().iter().cloned().map(|e| e.already_cut());
        let piece = Piece::new("cut", edges.collect()).unwrap();
        assert!(piece.edges().iter().all(|e| e.drawn == Drawn::Cut));
        let cut = piece.cut_line(TOLERANCE).unwrap();
        assert!((cut.area() - piece.area()).abs() < TOLERANCE * cut.length());
    }
}

#[test]
fn the_seam_line_of_cut_cloth_lies_inside_by_the_allowance() {
    let mut tried = 0;
    for seed in 600..680 {
        let piece = random_piece(seed, kind(false, true, true));
        let edges = piece.edges().iter().cloned().map(|e| e.already_cut());
        let piece = Piece::new("cut", edges.collect()).unwrap();
        let Ok(seam) = piece.seam_line(TOLERANCE) else {
            continue;
        };
        tried += 1;
        assert!(!polygon_crosses_itself(&seam.flatten(1e-3)), "seed {seed}");
        let width = piece.edges()[0].allowance;
        let drawn = piece.segments(1e-4);
        for point in seam.segments().iter().flat_map(|s| samples(&s.segment)) {
            let near = drawn
                .iter()
                .map(|(_, s)| s.nearest(point).0)
                .fold(f64::INFINITY, f64::min);
            assert!(near >= width - TOLERANCE - HAIR, "seed {seed}: {near}");
        }
        assert!(seam.area() < piece.area());
    }
    assert!(tried > 40, "{tried}");
}

#[test]
fn a_mirrored_piece_has_the_mirrored_cut_line() {
    each(
        &[kind(false, false, false)],
        700..740,
        |piece, cut, which| {
            let other = piece.mirror().cut_line(TOLERANCE).unwrap();
            assert!(
                (other.area() - cut.area()).abs() < 0.02 * TOLERANCE * cut.length(),
                "{which}"
            );
            assert!(
                (other.bounds().x0 + cut.bounds().x1).abs() < TOLERANCE,
                "{which}"
            );
        },
    );
}

#[test]
fn it_can_be_drawn_as_a_path() {
    use kurbo::PathEl;
    each(&[kind(false, true, true)], 800..820, |_, cut, which| {
        let path = cut.path(1e-3);
        let mut at = Point::ORIGIN;
        for element in path.elements() {
            if let PathEl::CurveTo(a, b, c) = *element {
                for i in 0..=20 {
                    let t = f64::from(i) / 20.0;
                    let s = 1.0 - t;
                    let point = at.to_vec2() * (s * s * s)
                        + a.to_vec2() * (3.0 * s * s * t)
                        + b.to_vec2() * (3.0 * s * t * t)
                        + c.to_vec2() * (t * t * t);
                    assert!(cut.distance(point.to_point()) <= 1e-3 + 1e-9, "{which}");
                }
            }
            at = element.end_point().unwrap_or(at);
        }
    });
}

#[test]
fn corners_of_every_kind_have_different_cut_lines() {
    let piece = random_piece(7, kind(true, true, true));
    let area = |corner: Corner| {
        let edges = piece.edges().iter().cloned().map(|e| e.corner(corner));
        let piece = Piece::new("corners", edges.collect()).unwrap();
        piece.cut_line(TOLERANCE).unwrap().area()
    };
    let pointed = area(Corner::default());
    assert!(area(Corner::Pointed { limit: 1.0 }) < pointed);
    assert_ne!(area(Corner::SquaredToThis), pointed);
    assert_ne!(area(Corner::SquaredToThis), area(Corner::SquaredToNext));
    assert_ne!(area(Corner::MirroredOnThis), area(Corner::MirroredOnNext));
}

#[test]
fn nonsense_gets_a_cut_line_or_an_error() {
    use kurbo::CubicBez;
    use recloth::outline::{Curve, Edge};
    let mut random = pieces::Random::new(3);
    let mut made = 0;
    for _ in 0..4000 {
        let count = 1 + random.below(6);
        let scale = [1e-6, 1e-2, 1.0, 100.0, 1e4, 1e5][random.below(6) as usize];
        let odd = [f64::NAN, f64::INFINITY, -1e300, 5e-324, 1e5, 0.0];
        let mut any = |usual: f64| match random.below(60) {
            0 => odd[random.below(6) as usize],
            _ => usual * random.between(-1.0, 1.0),
        };
        let corners: Vec<Point> = (0..count)
            .map(|_| Point::new(any(scale), any(scale)))
            .collect();
        let edges = (0..corners.len()).map(|i| {
            let (a, b) = (corners[i], corners[(i + 1) % corners.len()]);
            let curve = if i % 2 == 0 {
                Curve::arc(a, b, any(0.5))
            } else {
                let mut near = |p: Point| Point::new(p.x + any(scale), p.y + any(scale));
                Curve::Cubic(CubicBez::new(a, near(a), near(b), b))
            };
            Edge::seam("edge", curve, any(30.0).abs()).corner(Corner::MirroredOnThis)
        });
        let Ok(piece) = Piece::new("nonsense", edges.collect()) else {
            continue;
        };
        made += 1;
        for tolerance in [0.5, f64::NAN] {
            if let Ok(cut) = piece.cut_line(tolerance) {
                assert!(cut.area().is_finite() && cut.path(0.1).elements().len() > 2);
            }
        }
        let _ = piece.seam_line(0.5).map(|line| line.flatten(f64::NAN));
        let _ = piece.handed(0.1);
        let _ = piece.unfold();
    }
    assert!(made > 200, "{made}");
}

#[test]
fn an_arc_all_but_straight_is_drawn() {
    // Its radius is beyond the largest number.
    let bulge = 1e-317;
    let edges = vec![
        Edge::seam("bottom", Curve::arc((0.0, 0.0), (300.0, 0.0), bulge), 10.0),
        Edge::seam("end", Curve::line((300.0, 0.0), (0.0, 50.0)), 10.0),
        Edge::seam("start", Curve::line((0.0, 50.0), (0.0, 0.0)), 10.0),
    ];
    let line = Piece::new("strip", edges).unwrap().cut_line(0.05).unwrap();
    assert!(line.path(0.1).is_finite());
    assert!((line.path(0.1).area().abs() - line.area()).abs() < 1e-6);
}
