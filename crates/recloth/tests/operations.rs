//! Operations on pieces: what is turned, cut and spread keeps its lengths, its cloth and its marks.

use kurbo::{Point, Vec2};
use recloth::draft::{Allowances, Centre, SkirtPanel};
use recloth::outline::{
    Curve, Cutting, Dart, Edge, Mark, NewSeam, Opening, Piece, Place, Slash, Way,
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
            .unwrap()
            .with_cutting(Cutting {
                count: 2,
                ..Cutting::default()
            })
            .unwrap()
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
        .unwrap()
        .with_marks(vec![dart, drill])
        .unwrap()
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
    panel.draft().unwrap().pieces.remove(0)
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
    let edge = piece.edges().iter().find(|e| e.name == onto).unwrap();
    let dart = dart_of(piece, dart);
    let caps: Vec<&Edge> = piece
        .edges()
        .iter()
        .filter(|e| e.name.starts_with(&format!("cap {}", dart.name)))
        .collect();
    assert_eq!(caps.len(), 2);
    let touches = |e: &Edge, p: Point| {
        (e.curve.start() - p).hypot() < 1e-6 || (e.curve.end() - p).hypot() < 1e-6
    };
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
                let u = (leg - dart.point).normalize();
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
        let long = (point(a) - point(b)).hypot();
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
