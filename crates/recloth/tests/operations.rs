//! Operations on pieces: what is turned, cut and spread keeps its lengths, its cloth and its marks.

use kurbo::{Line, Point, Vec2};
use recloth::draft::{Allowances, Centre, SkirtPanel};
use recloth::outline::{
    Curve, Cutting, Dart, Edge, Facing, Mark, NewSeam, Opening, Piece, Place, Slash, Way,
};
use recloth::{Error, ErrorKind};

/// A linear congruential generator (Knuth's MMIX constants); the high bits are used.
struct Random(u64);

impl Random {
    fn between(&mut self, low: f64, high: f64) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        low + (high - low) * (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }

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

// By hand. The dart's half angle is atan(10 / 100). Turned to the middle of the side, whose leg is 100 too, it opens by
// 200 sin(atan 0.1) = 19.9007. Of half of it, what opens is 200 sin(atan(0.1) / 2) = 9.9627 at each.
#[test]
fn a_turned_dart_keeps_its_angle() {
    let square = square();
    let (at, off) = square.place((200.0, 100.0));
    assert_eq!(
        (at, off),
        (
            Place {
                edge: 1,
                distance: 100.0
            },
            0.0
        )
    );
    let opening = |share: f64| {
        [Opening {
            name: "side".into(),
            at,
            share,
        }]
    };
    let turned = square.turn_dart("waist", &opening(1.0)).unwrap();
    let half = libm::atan(0.1);
    close(
        dart_of(&turned, "side").intake(),
        200.0 * libm::sin(half),
        1e-9,
    );
    close(19.9007, 200.0 * libm::sin(half), 1e-4);
    for (name, wanted) in [
        ("hem", 200.0),
        ("side", 200.0),
        ("top side", 90.0),
        ("top centre", 90.0),
        ("centre", 200.0),
    ] {
        close(length_of(&turned, name), wanted, 1e-9);
    }
    assert_eq!(turned.edge("mouth"), None);
    // The hole in the turned part went with it: 80 right of and 90 above the point, by 2 atan 0.1 towards the closed dart.
    let Some(Mark::Drill { at: drill, .. }) = turned.marks().iter().find(|m| m.name() == "pocket")
    else {
        panic!("no drill");
    };
    let (sin, cos) = libm::sincos(2.0 * half);
    close(drill.x, 100.0 + 80.0 * cos - 90.0 * sin, 1e-9);
    close(drill.y, 100.0 + 80.0 * sin + 90.0 * cos, 1e-9);
    let halved = square.turn_dart("waist", &opening(0.5)).unwrap();
    close(
        dart_of(&halved, "side").intake(),
        200.0 * libm::sin(half / 2.0),
        1e-9,
    );
    close(9.9627, 200.0 * libm::sin(half / 2.0), 1e-4);
    let leg = libm::hypot(10.0, 100.0);
    close(
        dart_of(&halved, "waist").intake(),
        2.0 * leg * libm::sin(half / 2.0),
        1e-9,
    );
}

#[test]
fn a_dart_turned_there_and_back_is_where_it_was() {
    let panel = panel();
    let (at, _) = panel.place((270.0, -400.0));
    let to = |name: &str, at: Place| {
        [Opening {
            name: name.into(),
            at,
            share: 1.0,
        }]
    };
    let turned = panel.turn_dart("dart 1", &to("hem dart", at)).unwrap();
    for name in [
        "centre",
        "hem",
        "side lower",
        "side upper",
        "waist 1",
        "waist 2",
        "waist 3",
    ] {
        close(
            length_of(&turned, name),
            panel
                .edges()
                .iter()
                .filter(|e| e.name == name)
                .map(Edge::length)
                .sum(),
            1e-9,
        );
    }
    // The cloth outside the wedges is the same.
    let wedge = |piece: &Piece, name: &str| {
        let dart = dart_of(piece, name);
        triangle(dart.point, dart.legs[0], dart.legs[1])
    };
    let before = dart_of(&panel, "dart 1");
    let cap: f64 = panel
        .edges()
        .iter()
        .filter(|e| e.name.starts_with("cap 1"))
        .map(|e| {
            // The mouth's share of the area about the dart's point.
            let (a, b) = (e.curve.start() - before.point, e.curve.end() - before.point);
            let Curve::Segment(s) = e.curve else { panic!() };
            let radius = s.radius();
            let sweep = s.sweep_deg().to_radians();
            a.cross(b) / 2.0 + radius * radius * (sweep - libm::sin(sweep)) / 2.0
        })
        .sum();
    close(
        panel.area() - cap,
        turned.area() - wedge(&turned, "hem dart"),
        1e-6,
    );
    let waist = turned
        .edges()
        .iter()
        .position(|e| e.name == "waist 1")
        .unwrap();
    let back = turned
        .turn_dart(
            "hem dart",
            &to(
                "dart 1",
                Place {
                    edge: waist,
                    distance: 0.0,
                },
            ),
        )
        .unwrap();
    let (there, here) = (dart_of(&back, "dart 1"), dart_of(&panel, "dart 1"));
    close(there.intake(), here.intake(), 1e-9);
    close(there.leg_lengths()[0], here.leg_lengths()[0], 1e-9);
    close(
        length_of(&back, "side lower"),
        length_of(&panel, "side lower"),
        1e-9,
    );
    let other = dart_of(&back, "dart 2");
    close(other.intake(), dart_of(&panel, "dart 2").intake(), 1e-9);
}

// By hand. Closed, the dart of the square opens the hem by 2 · 100 sin(atan 0.1).
#[test]
fn a_closed_dart_flares_the_hem() {
    let square = square();
    let at = Place {
        edge: 0,
        distance: 100.0,
    };
    let flared = square.close_dart("waist", at).unwrap();
    close(
        length_of(&flared, "hem"),
        200.0 + 200.0 * libm::sin(libm::atan(0.1)),
        1e-9,
    );
    assert!(
        flared
            .marks()
            .iter()
            .all(|mark| !matches!(mark, Mark::Dart(_)))
    );
    assert_eq!(flared.edges().len(), 7);
}

// By hand. A dart 20 wide over a leg of 100 has half the angle asin 0.1. At the hem, 100 from the point on the other side,
// each half is trimmed by 100 tan(asin 0.1) = 10.0504.
#[test]
fn an_opened_dart_takes_from_the_other_side() {
    let corners = [(0.0, 0.0), (200.0, 0.0), (200.0, 200.0), (0.0, 200.0)];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
    let names = ["hem", "side", "top", "centre"];
    let plain = Piece::new(
        "plain",
        (0..4)
            .map(|i| Edge::seam(names[i], side(i), 10.0))
            .collect(),
    )
    .unwrap();
    let (at, opposite) = (plain.place((100.0, 200.0)).0, plain.place((100.0, 0.0)).0);
    let opened = plain
        .open_dart("new", (100.0, 100.0), at, 20.0, opposite)
        .unwrap();
    close(dart_of(&opened, "new").intake(), 20.0, 1e-9);
    let lost = 100.0 * libm::tan(libm::asin(0.1));
    close(length_of(&opened, "hem"), 200.0 - 2.0 * lost, 1e-6);
    close(lost, 10.0504, 1e-4);
    close(length_of(&opened, "top"), 200.0, 1e-9);
    let outside = plain
        .open_dart("new", (300.0, 100.0), at, 20.0, opposite)
        .unwrap_err();
    assert_eq!(
        (outside.kind(), outside.argument()),
        (ErrorKind::OutOfRange, "point")
    );
    let wide = plain
        .open_dart("new", (100.0, 100.0), at, 250.0, opposite)
        .unwrap_err();
    assert_eq!((wide.argument(), wide.value()), ("intake", 250.0));
}

/// Whether every point of the dart's cap, folded onto the edge, lies on the edge.
fn folds_onto(piece: &Piece, dart: &str, onto: &str) {
    let edge = piece
        .edges()
        .iter()
        .find(|e| e.name == onto)
        .expect("an edge");
    let dart = dart_of(piece, dart);
    let caps: Vec<&Edge> = piece
        .edges()
        .iter()
        .filter(|e| e.name.starts_with(&format!("cap {}", dart.name)))
        .collect();
    assert_eq!(caps.len(), 2);
    let touches =
        |e: &Edge, p: Point| size(e.curve.start() - p) < 1e-6 || size(e.curve.end() - p) < 1e-6;
    // The leg that meets the edge, and the other.
    let (leg, other) = if touches(edge, dart.legs[0]) {
        (dart.legs[0], dart.legs[1])
    } else {
        (dart.legs[1], dart.legs[0])
    };
    let angle = |v: Vec2| libm::atan2(v.y, v.x);
    let turn = angle(leg - dart.point) - angle(other - dart.point);
    for cap in caps {
        for step in 0..=20 {
            let point = cap.curve.at(cap.length() * f64::from(step) / 20.0).0;
            let folded = if touches(cap, leg) {
                // Next to the leg it is mirrored about it.
                let u = (leg - dart.point) / size(leg - dart.point);
                let v = point - dart.point;
                dart.point + u * (2.0 * u.dot(v)) - v
            } else {
                let (sin, cos) = libm::sincos(turn);
                let v = point - dart.point;
                dart.point + Vec2::new(cos * v.x - sin * v.y, sin * v.x + cos * v.y)
            };
            let (off, _) = edge.curve.nearest(folded);
            assert!(off < 1e-6, "{off} off the edge");
        }
    }
}

#[test]
fn a_capped_dart_folds_into_its_edge() {
    let square = square();
    for (onto, name) in [(2, "top side"), (4, "top centre")] {
        let capped = square.cap_dart("waist", onto).unwrap();
        folds_onto(&capped, "waist", name);
        assert!(capped.area() > square.area());
    }
    let error = square.cap_dart("waist", 0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NoSolution, "onto")
    );
    // A curved edge, and a dart turned into it.
    let panel = panel();
    let turned = panel
        .turn_dart(
            "dart 1",
            &[Opening {
                name: "side dart".into(),
                at: panel.place((252.0, -150.0)).0,
                share: 1.0,
            }],
        )
        .unwrap();
    let parts: Vec<usize> = (0..turned.edges().len())
        .filter(|&i| turned.edges()[i].name.starts_with("side upper "))
        .collect();
    assert_eq!(parts.len(), 2);
    for onto in parts {
        let name = turned.edges()[onto].name.clone();
        let capped = turned.cap_dart("side dart", onto).unwrap();
        folds_onto(&capped, "side dart", &name);
    }
}

#[test]
fn both_parts_of_a_split_piece_make_it_up() {
    let mut random = Random(7);
    for round in 0..300 {
        let piece = random.piece(5 + round % 6);
        let marks = vec![
            Mark::Drill {
                name: "d".into(),
                at: Point::new(random.between(-90.0, 90.0), random.between(-90.0, 90.0)),
            },
            Mark::Line {
                name: "l".into(),
                curve: Curve::line((-90.0, 10.0), (90.0, -10.0)),
            },
        ];
        let piece = piece.with_marks(marks).unwrap();
        let end = |angle: f64| {
            let (sin, cos) = libm::sincos(angle);
            Point::new(500.0 * cos, 500.0 * sin)
        };
        let angle = random.between(0.0, 6.0);
        let (a, b) = (end(angle), end(angle + random.between(2.8, 3.5)));
        let cut = match round % 3 {
            0 => Curve::line(a, b),
            1 => Curve::arc(a, b, random.between(-0.3, 0.3)),
            _ => {
                let aside = Vec2::new(b.y - a.y, a.x - b.x) * 0.15;
                Curve::cubic(a, a.lerp(b, 0.3) + aside, b.lerp(a, 0.3) - aside, b)
            }
        };
        let notches = vec![50.0, 120.0];
        let seam = NewSeam {
            name: "cut".into(),
            allowance: 8.0,
            notches,
        };
        let [left, right] = match piece.split(&cut, &seam) {
            Ok(parts) => parts,
            // A wavy cut near a corner may cross more than twice, which is refused.
            Err(error) => {
                assert_eq!(
                    (error.kind(), error.argument()),
                    (ErrorKind::NoSolution, "cut"),
                    "{round}: {error}"
                );
                assert!(error.value() > 2.0);
                continue;
            }
        };
        close(left.area() + right.area(), piece.area(), 1e-3);
        let (l, r) = (left.edge("cut").unwrap(), right.edge("cut").unwrap());
        let walk = left.walk(&[l], &right, &[r], Way::Against).unwrap();
        // The outline is met within a millionth of a millimetre, at both ends.
        close(walk.difference, 0.0, 5e-6);
        assert!(
            walk.notches
                .iter()
                .all(|n| n.difference().unwrap().abs() < 5e-6)
        );
        let notches = |p: &Piece| p.edges().iter().map(|e| e.notches.len()).sum::<usize>();
        assert_eq!(notches(&left) + notches(&right), notches(&piece) + 4);
        let around = |p: &Piece| p.edges().iter().map(Edge::length).sum::<f64>();
        close(
            around(&left) + around(&right),
            around(&piece) + 2.0 * left.edges()[l].length(),
            1e-5,
        );
        let drills = |p: &Piece| p.marks().iter().filter(|m| m.name() == "d").count();
        assert_eq!(drills(&left) + drills(&right), 1);
        let lines = |p: &Piece| {
            let line = |m: &Mark| match m {
                Mark::Line { curve, .. } => curve.length(),
                _ => 0.0,
            };
            p.marks().iter().map(line).sum::<f64>()
        };
        close(lines(&left) + lines(&right), lines(&piece), 1e-9);
        assert_eq!((left.name(), right.cutting().count), ("random 1", 2));
    }
}

// What a spread adds is known: a hinged slash a triangle, a parallel one a rectangle.
#[test]
fn a_spread_adds_what_it_opens() {
    let mut random = Random(11);
    let mut spread = 0;
    for round in 0..300 {
        let piece = random.piece(6 + round % 5);
        let (a, b) = (random.place(&piece), random.place(&piece));
        let point = |p: Place| piece.at(p.edge, p.distance).unwrap().0;
        let long = size(point(a) - point(b));
        if long < 250.0 {
            continue;
        }
        let open_by = random.between(5.0, 60.0);
        let hinge_by = [0.0, open_by][round % 2];
        let slash = Slash {
            open: a,
            hinge: b,
            open_by,
            hinge_by,
        };
        let wider = piece.slash_and_spread(&[slash]).unwrap();
        spread += 1;
        let added = if hinge_by == 0.0 {
            let half = libm::asin(open_by / (2.0 * long));
            long * long * libm::sin(2.0 * half) / 2.0
        } else {
            long * open_by
        };
        close(wider.area(), piece.area() + added, 1e-5);
        let around = |p: &Piece| p.edges().iter().map(Edge::length).sum::<f64>();
        close(around(&wider), around(&piece) + open_by + hinge_by, 1e-6);
    }
    assert!(spread > 150, "{spread}");
}

// By hand. Three slashes at 50, 100, 150 of a strip 200 wide, each opened by 30 at the top and 10 at the foot.
#[test]
fn several_slashes_open_one_after_the_other() {
    let corners = [(0.0, 0.0), (200.0, 0.0), (200.0, 300.0), (0.0, 300.0)];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
    let names = ["foot", "right", "top", "left"];
    let strip = Piece::new(
        "strip",
        (0..4)
            .map(|i| Edge::seam(names[i], side(i), 10.0))
            .collect(),
    )
    .unwrap();
    let slash = |x: f64| Slash {
        open: strip.place((x, 300.0)).0,
        hinge: strip.place((x, 0.0)).0,
        open_by: 30.0,
        hinge_by: 10.0,
    };
    // In any order.
    let wide = strip
        .slash_and_spread(&[slash(100.0), slash(50.0), slash(150.0)])
        .unwrap();
    close(length_of(&wide, "foot"), 230.0, 1e-9);
    for name in ["left", "right"] {
        close(length_of(&wide, name), 300.0, 1e-9);
    }
    assert_eq!(wide.edges().len(), 2 + 2 * 7);
    // Ends of one slash: opened by 10 and turned until 20 more, so 30 apart but for the cosine of the turn.
    let turn = 2.0 * libm::asin(20.0 / 600.0);
    let gap = libm::hypot(
        10.0 + 20.0 * libm::cos(turn / 2.0),
        20.0 * libm::sin(turn / 2.0),
    );
    let top: Vec<f64> = wide
        .edges()
        .iter()
        .filter(|e| e.name.starts_with("top"))
        .map(Edge::length)
        .collect();
    assert_eq!(top.len(), 7);
    close(top[1], gap, 1e-9);
    // A fan: both slashes end at one hinge.
    let hinge = strip.place((100.0, 0.0)).0;
    let fan = |x: f64| Slash {
        hinge,
        open_by: 30.0,
        hinge_by: 0.0,
        ..slash(x)
    };
    let fanned = strip.slash_and_spread(&[fan(50.0), fan(150.0)]).unwrap();
    close(length_of(&fanned, "top"), 260.0, 1e-9);
    // Slashes that cross are not.
    let crossing = [
        Slash {
            hinge: slash(150.0).hinge,
            ..slash(50.0)
        },
        Slash {
            hinge: slash(50.0).hinge,
            ..slash(150.0)
        },
    ];
    let error: Error = strip.slash_and_spread(&crossing).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NoSolution, "slashes")
    );
}

#[test]
fn what_cannot_be_cut_is_named() {
    let square = square();
    let at = |x: f64, y: f64| square.place((x, y)).0;
    let to = |at: Place| {
        [Opening {
            name: "n".into(),
            at,
            share: 1.0,
        }]
    };
    let gone = square.turn_dart("none", &to(at(0.0, 100.0))).unwrap_err();
    assert_eq!(
        (gone.kind(), gone.argument()),
        (ErrorKind::NoSolution, "dart")
    );
    let mouth = square
        .turn_dart("waist", &to(at(100.0, 200.0)))
        .unwrap_err();
    assert_eq!(
        (mouth.kind(), mouth.argument()),
        (ErrorKind::NoSolution, "at")
    );
    let off = square
        .turn_dart(
            "waist",
            &to(Place {
                edge: 9,
                distance: 0.0,
            }),
        )
        .unwrap_err();
    assert_eq!(
        (off.kind(), off.argument(), off.max()),
        (ErrorKind::OutOfRange, "at", 5.0)
    );
    let share = square
        .turn_dart(
            "waist",
            &[Opening {
                name: "n".into(),
                at: at(0.0, 100.0),
                share: f64::NAN,
            }],
        )
        .unwrap_err();
    assert_eq!(
        (share.kind(), share.argument()),
        (ErrorKind::NotFinite, "share")
    );
    let seam = NewSeam {
        name: "yoke".into(),
        allowance: 10.0,
        notches: Vec::new(),
    };
    let dart = square
        .split(&Curve::line((-10.0, 150.0), (210.0, 150.0)), &seam)
        .unwrap_err();
    assert_eq!((dart.argument(), dart.at()), ("mark", Some(0)));
    let beside = square
        .split(&Curve::line((-10.0, 300.0), (210.0, 300.0)), &seam)
        .unwrap_err();
    assert_eq!((beside.argument(), beside.value()), ("cut", 0.0));
    assert!(
        square
            .split(&Curve::line((-10.0, 50.0), (210.0, 50.0)), &seam)
            .is_ok()
    );
    // On a fold only a split may cut.
    let half = Piece::new(
        "half",
        vec![
            Edge::hem("hem", Curve::line((0.0, 0.0), (100.0, 0.0)), 20.0),
            Edge::seam("side", Curve::line((100.0, 0.0), (100.0, 300.0)), 10.0),
            Edge::seam("top", Curve::line((100.0, 300.0), (0.0, 300.0)), 10.0),
            Edge::fold("centre", Curve::line((0.0, 300.0), (0.0, 0.0))),
        ],
    )
    .unwrap();
    let [upper, lower] = half
        .split(&Curve::line((-5.0, 200.0), (105.0, 200.0)), &seam)
        .unwrap();
    assert!(upper.fold().is_some() && lower.fold().is_some());
    let open = half.place((0.0, 150.0)).0;
    let slash = Slash {
        open,
        hinge: half.place((100.0, 150.0)).0,
        open_by: 10.0,
        hinge_by: 0.0,
    };
    let fold = half.slash_and_spread(&[slash]).unwrap_err();
    assert_eq!(
        (fold.kind(), fold.argument(), fold.at()),
        (ErrorKind::NoSolution, "open", Some(0))
    );
}

// By hand. A seam that leans in by 10° on one piece and by 4° on the other: the hems meet at 100° and at 94° or 86°.
#[test]
fn a_walk_tells_the_kinks_at_its_ends() {
    let leaning = |name: &str, deg: f64| {
        let lean = 300.0 * libm::tan(deg.to_radians());
        let corners = [
            (0.0, 0.0),
            (200.0, 0.0),
            (200.0 + lean, 300.0),
            (0.0, 300.0),
        ];
        let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
        let names = ["hem", "side", "top", "centre"];
        Piece::new(
            name,
            (0..4)
                .map(|i| Edge::seam(names[i], side(i), 10.0))
                .collect(),
        )
        .unwrap()
    };
    let (front, back) = (leaning("front", 10.0), leaning("back", -4.0).mirror());
    let side = back.edge("side").unwrap();
    let walk = front.walk(&[1], &back, &[side], Way::Against).unwrap();
    // At the hem the inner angles are 100° and 86°: a dent of 6°. At the top 80° and 94°: a peak of 6°.
    close(walk.start_kink_deg.unwrap(), -6.0, 1e-9);
    close(walk.end_kink_deg.unwrap(), 6.0, 1e-9);
    let same = front
        .walk(&[1], &leaning("other", 10.0), &[1], Way::Along)
        .unwrap();
    close(same.start_kink_deg.unwrap(), -20.0, 1e-9);
    // Beside a fold nothing runs on.
    let fold = Piece::new(
        "fold",
        vec![
            Edge::fold("hem", Curve::line((0.0, 0.0), (200.0, 0.0))),
            Edge::seam("side", Curve::line((200.0, 0.0), (200.0, 300.0)), 10.0),
            Edge::seam("top", Curve::line((200.0, 300.0), (0.0, 0.0)), 10.0),
        ],
    )
    .unwrap();
    let walk = front.walk(&[1], &fold, &[1], Way::Along).unwrap();
    assert_eq!(walk.start_kink_deg, None);
    assert!(walk.end_kink_deg.is_some());
}

#[test]
fn ease_lies_between_notches() {
    let strip = |length: f64, notches: [f64; 2]| {
        let corners = [(0.0, 0.0), (length, 0.0), (length, 50.0), (0.0, 50.0)];
        let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
        let edges = (0..4).map(|i| {
            let edge = Edge::seam(["seam", "end", "top", "start"][i], side(i), 10.0);
            if i > 0 {
                edge
            } else {
                edge.notch("front", notches[0], 1)
                    .notch("back", notches[1], 2)
                    .notch(format!("only {length}"), 5.0, 1)
            }
        });
        Piece::new("strip", edges.collect()).unwrap()
    };
    let (cap, armhole) = (strip(460.0, [130.0, 340.0]), strip(440.0, [130.0, 322.0]));
    let walk = cap.walk(&[0], &armhole, &[0], Way::Along).unwrap();
    let sections = walk.sections();
    let sections: Vec<_> = sections
        .iter()
        .map(|s| (s.to.as_deref(), s.length, s.difference))
        .collect();
    assert_eq!(
        sections,
        [
            (Some("front"), 130.0, 0.0),
            (Some("back"), 210.0, 18.0),
            (None, 120.0, 2.0)
        ]
    );
}

#[test]
fn what_was_split_is_joined_again() {
    let mut random = Random(23);
    let mut joined = 0;
    for round in 0..100 {
        let piece = random.piece(5 + round % 4);
        let angle = random.between(0.0, 6.0);
        let (sin, cos) = libm::sincos(angle);
        let cut = Curve::arc(
            (500.0 * cos, 500.0 * sin),
            (-500.0 * cos, -500.0 * sin),
            random.between(-0.2, 0.2),
        );
        let seam = NewSeam {
            name: "cut".into(),
            allowance: 8.0,
            notches: Vec::new(),
        };
        let Ok([left, right]) = piece.split(&cut, &seam) else {
            continue;
        };
        // However the other part lies.
        let moved = right
            .turned(random.between(-180.0, 180.0))
            .shifted((random.between(-900.0, 900.0), 70.0));
        let one = left
            .join(
                left.edge("cut").unwrap(),
                &moved,
                moved.edge("cut").unwrap(),
                0.01,
            )
            .unwrap();
        joined += 1;
        assert!(one.gap < 1e-5, "{}", one.gap);
        close(one.piece.area(), piece.area(), 2e-2);
        let around = |p: &Piece| p.edges().iter().map(Edge::length).sum::<f64>();
        close(around(&one.piece), around(&piece), 1e-4);
    }
    assert!(joined > 80, "{joined}");
    let square = square();
    let short = square.join(0, &square, 2, 1.0).unwrap_err();
    assert_eq!((short.argument(), short.value()), ("difference", 110.0));
    let mut bent = square.edges().to_vec();
    bent[0].curve = Curve::arc((0.0, 0.0), (200.0, 0.0), 0.05);
    let bent = Piece::new("bent", bent).unwrap();
    let gap = square.join(1, &bent, 0, 3.0).unwrap_err();
    assert_eq!(gap.argument(), "gap");
    // The arc rises 0.05 · 200 / 2 = 5 over its chord.
    close(gap.value(), 5.0, 1e-3);
}

// By hand. A half disc of radius 100 on its flat edge, grain along the flat: stretched to 1 / 0.9 along and 1 / 0.96 across
// it is half an ellipse of that area.
#[test]
fn a_piece_is_cut_for_what_the_wash_will_do() {
    let disc = Piece::new(
        "pocket",
        vec![
            Edge::seam("flat", Curve::line((-100.0, 0.0), (100.0, 0.0)), 10.0)
                .notch("middle", 100.0, 1),
            Edge::seam("round", Curve::arc((100.0, 0.0), (-100.0, 0.0), 1.0), 10.0).notch(
                "top",
                50.0 * std::f64::consts::PI,
                1,
            ),
        ],
    )
    .unwrap();
    let along = disc
        .clone()
        .with_grain(Line::new((-50.0, 20.0), (50.0, 20.0)))
        .unwrap();
    let cut = along.scale_for_change(-10.0, -4.0).unwrap();
    let area = std::f64::consts::PI / 2.0 * 1e4 / (0.9 * 0.96);
    close(cut.area(), area, 0.3);
    close(cut.bounds().width(), 200.0 / 0.9, 1e-6);
    close(cut.bounds().height(), 100.0 / 0.96, 2e-3);
    assert!(cut.edges().iter().any(|e| e.name == "round 2"));
    for edge in cut.edges().iter().filter(|e| e.name.starts_with("round")) {
        for step in 0..=20 {
            let p = edge.curve.at(edge.length() * f64::from(step) / 20.0).0;
            let (x, y) = (p.x * 0.9, p.y * 0.96);
            close(libm::hypot(x, y), 100.0, 1e-3);
        }
    }
    let top: Vec<f64> = cut
        .edges()
        .iter()
        .filter(|e| e.name.starts_with("round"))
        .flat_map(|e| e.notches.iter().map(|n| e.curve.at(n.distance).0.y))
        .collect();
    assert_eq!(top.len(), 1);
    close(top[0], 100.0 / 0.96, 2e-3);
    // Alike both ways it stays an arc, and upright grain swaps the ways.
    let even = along.scale_for_change(-10.0, -10.0).unwrap();
    close(even.area(), std::f64::consts::PI / 2.0 * 1e4 / 0.81, 1e-6);
    assert_eq!(even.edges().len(), 2);
    let upright = disc.scale_for_change(-10.0, -4.0).unwrap();
    close(upright.bounds().width(), 200.0 / 0.96, 1e-9);
    assert_eq!(disc.scale_for_change(0.0, 0.0).unwrap(), disc);
    assert_eq!(
        disc.scale_for_change(-95.0, 0.0).unwrap_err().argument(),
        "along_pct"
    );
}

// By hand. The right half is 4 wider at the top and 2 at the hem: its fellow's middle is 2 and 1 out.
#[test]
fn halves_are_compared_before_they_are_averaged() {
    let whole = Piece::new(
        "back",
        vec![
            Edge::hem("hem right", Curve::line((0.0, 0.0), (202.0, 0.0)), 20.0),
            Edge::seam(
                "side right",
                Curve::line((202.0, 0.0), (184.0, 300.0)),
                10.0,
            ),
            Edge::seam("top right", Curve::line((184.0, 300.0), (0.0, 300.0)), 10.0),
            Edge::seam("top left", Curve::line((0.0, 300.0), (-180.0, 300.0)), 10.0),
            Edge::seam(
                "side left",
                Curve::line((-180.0, 300.0), (-200.0, 0.0)),
                10.0,
            ),
            Edge::hem("hem left", Curve::line((-200.0, 0.0), (0.0, 0.0)), 20.0),
        ],
    )
    .unwrap();
    let axis = Line::new((0.0, 0.0), (0.0, 300.0));
    let halves = whole.symmetrise(axis, 5.0).unwrap();
    close(halves.largest, 4.0, 1e-12);
    assert_eq!(whole.edges()[halves.edge].name, "top left");
    close(halves.half.bounds().x0, -201.0, 1e-12);
    close(length_of(&halves.half, "top left"), 182.0, 1e-12);
    assert!(halves.half.fold().is_some());
    let both = halves.half.unfold().unwrap();
    close(both.area(), (402.0 + 364.0) / 2.0 * 300.0, 1e-6);
    let error = whole.symmetrise(axis, 3.0).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument(), error.at()),
        (ErrorKind::OutOfRange, "difference", Some(3))
    );
    close(error.value(), 4.0, 1e-12);
    let off = whole
        .symmetrise(Line::new((0.0, 0.0), (5.0, 300.0)), 5.0)
        .unwrap_err();
    assert_eq!((off.argument(), off.value()), ("axis", 5.0));
    let odd = whole
        .symmetrise(Line::new((0.0, 0.0), (184.0, 300.0)), 5.0)
        .unwrap_err();
    assert_eq!(
        (odd.kind(), odd.argument()),
        (ErrorKind::NoSolution, "axis")
    );
}

// An edge that ends square to its neighbour but for rounding: its parallel inside leaves no spike there.
#[test]
fn a_parallel_has_no_spikes() {
    let front = neckline(0.0, 50.0);
    let line = front.seam_line(0.04).unwrap();
    assert_eq!(line.segments().len(), 5);
    close(
        line.length(),
        250.0 + 500.0 + 120.0 + 130.0 * std::f64::consts::FRAC_PI_2 + 370.0,
        1e-5,
    );
}

/// Half a front, 250 by 500, with a round neck of radius 80.
fn neckline(seam: f64, neck: f64) -> Piece {
    let corners = [
        (0.0, 0.0),
        (250.0, 0.0),
        (250.0, 500.0),
        (80.0, 500.0),
        (0.0, 420.0),
    ];
    let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 5]);
    let edges = vec![
        Edge::hem("hem", side(0), seam),
        Edge::seam("side", side(1), seam),
        Edge::seam("shoulder", side(2), seam),
        Edge::seam(
            "neck",
            Curve::arc(corners[3], corners[4], -0.41421356),
            neck,
        )
        .already_cut()
        .notch("middle", 60.0, 1),
        Edge::fold("centre", side(4)),
    ];
    Piece::new("front", edges).expect("a front")
}

// By hand. A facing 50 deep of a neck of radius 80 is a quarter of the ring from 80 to 130. Rolled by 2 its outer edge has the
// radius 82. Shoulder and neck faced together make an L.
#[test]
fn a_facing_follows_its_edges() {
    let front = neckline(15.0, 0.0);
    let asked = Facing {
        name: "facing".into(),
        depth: 50.0,
        roll: 0.0,
        inner_allowance: 6.0,
    };
    let neck = front.facing(&[3], &asked).unwrap();
    let quarter =
        |outer: f64, inner: f64| (outer * outer - inner * inner) * std::f64::consts::FRAC_PI_4;
    close(neck.area(), quarter(130.0, 80.0), 1e-3);
    assert!(neck.fold().is_some());
    assert_eq!(neck.edges().len(), 4);
    let shoulder = &neck.edges()[neck.edge("shoulder").unwrap()];
    close(shoulder.length(), 50.0, 1e-6);
    assert_eq!(shoulder.allowance, 15.0);
    assert_eq!(
        neck.edges()[neck.edge("neck").unwrap()].notches[0].distance,
        60.0
    );
    assert_eq!(neck.edges()[neck.edge("inner").unwrap()].allowance, 6.0);
    let rolled = front
        .facing(
            &[3],
            &Facing {
                roll: 2.0,
                ..asked.clone()
            },
        )
        .unwrap();
    close(rolled.area(), quarter(130.0, 82.0), 1e-3);
    close(
        length_of(&rolled, "neck"),
        82.0 * std::f64::consts::FRAC_PI_2,
        1e-4,
    );
    let both = front
        .facing(
            &[2, 3],
            &Facing {
                depth: 40.0,
                ..asked.clone()
            },
        )
        .unwrap();
    // The shoulder's strip, and the neck's ring below it.
    let below = (14_400.0 * libm::acos(40.0 / 120.0) - 40.0 * libm::sqrt(14_400.0 - 1600.0)) / 2.0
        - 6_400.0 * std::f64::consts::FRAC_PI_4
        + 80.0 * 40.0 * libm::sqrt(0.75) / 2.0
        + 6_400.0 * libm::asin(0.5) / 2.0;
    let strip =
        250.0 * 40.0 - (80.0 * 40.0 * libm::sqrt(0.75) / 2.0 + 6_400.0 * libm::asin(0.5) / 2.0);
    close(both.area(), strip + below, 0.05);
    let deep = front
        .facing(
            &[3],
            &Facing {
                depth: 600.0,
                ..asked.clone()
            },
        )
        .unwrap_err();
    assert_eq!(
        (deep.kind(), deep.argument()),
        (ErrorKind::NoSolution, "depth")
    );
    let apart = front.facing(&[1, 3], &asked).unwrap_err();
    assert_eq!((apart.argument(), apart.at()), ("edge", Some(1)));
}

#[test]
fn shifted_edges_stay_parallel() {
    let front = neckline(15.0, 0.0);
    let wider = front.shift_edges(&[1], 12.0).unwrap();
    close(wider.bounds().x1, 262.0, 1e-12);
    close(length_of(&wider, "shoulder"), 182.0, 1e-9);
    // A neck let out inward: smaller by 10, its notch square across.
    let higher = front.shift_edges(&[3], 10.0).unwrap();
    close(
        length_of(&higher, "neck"),
        70.0 * std::f64::consts::FRAC_PI_2,
        1e-4,
    );
    let neck = &higher.edges()[higher.edge("neck").unwrap()];
    close(neck.notches[0].distance, 60.0 * 70.0 / 80.0, 1e-4);
    // There and back.
    let back = higher.shift_edges(&[3], -10.0).unwrap();
    close(back.area(), front.area(), 1e-3);
    let mut random = Random(31);
    for round in 0..60 {
        let piece = random.piece(5 + round % 4);
        let edge = random.place(&piece).edge;
        let by = random.between(-20.0, 20.0);
        let Ok(moved) = piece.shift_edges(&[edge], by) else {
            continue;
        };
        let name = piece.edges()[edge].name.as_str();
        for part in moved
            .edges()
            .iter()
            .filter(|e| e.name == name || e.name.starts_with(&format!("{name} ")))
        {
            let (middle, _) = part.curve.at(part.length() / 2.0);
            let off = piece.edges()[edge].curve.nearest(middle).0;
            // Beyond its ends a moved edge runs on along its tangents.
            assert!(off > by.abs() - 0.03, "{round}: {off} for {by} {name}");
        }
        let notches = |p: &Piece| p.edges().iter().map(|e| e.notches.len()).sum::<usize>();
        assert_eq!(notches(&moved), notches(&piece));
    }
    assert_eq!(front.shift_edges(&[4], 5.0).unwrap_err().argument(), "edge");
    assert_eq!(
        front.shift_edges(&[1], -300.0).unwrap_err().argument(),
        "by"
    );
}
