//! What is on a piece goes with it: forms of notches, kinds of lines, buttonholes, drill points and what is cut out.

use super::*;
use recloth::outline::{Cutout, Notch, NotchForm};

/// An invented front, 200 by 300, with one of everything on it.
fn marked() -> Piece {
    let corners = [(0.0, 0.0), (200.0, 0.0), (200.0, 300.0), (0.0, 300.0)];
    let names = ["hem", "side", "top", "centre"];
    let edges = (0..4).map(|index| {
        let curve = Curve::line(corners[index], corners[(index + 1) % 4]);
        let mut edge = Edge::seam(names[index], curve, 10.0).wedge("balance", 60.0, 2);
        edge.notches[0].depth = Some(4.0);
        edge
    });
    let marks = vec![
        Mark::Drill {
            name: "button".into(),
            at: Point::new(30.0, 250.0),
        },
        Mark::Buttonhole {
            name: "hole".into(),
            ends: [Point::new(40.0, 230.0), Point::new(60.0, 230.0)],
        },
        Mark::Line {
            name: "check".into(),
            kind: LineKind::Stripe,
            curve: Curve::line((0.0, 200.0), (200.0, 200.0)),
        },
        Mark::Line {
            name: "crease".into(),
            kind: LineKind::Fold,
            curve: Curve::arc((20.0, 220.0), (20.0, 280.0), 0.1),
        },
        Mark::Cutout(keyhole((100.0, 250.0))),
    ];
    Piece::new("front", edges.collect())
        .and_then(|piece| piece.with_marks(marks))
        .expect("a piece")
}

/// An eyelet of radius 10 in two halves, the upper with a notch, given counter-clockwise.
fn keyhole(at: (f64, f64)) -> Cutout {
    let (left, right) = ((at.0 - 10.0, at.1), (at.0 + 10.0, at.1));
    Cutout {
        name: "keyhole".into(),
        edges: vec![
            Edge::seam("upper", Curve::arc(right, left, 1.0), 3.0).notch("middle", 5.0, 1),
            Edge::seam("lower", Curve::arc(left, right, 1.0), 5.0),
        ],
    }
}

/// The cut-out, by its middle, and the kinds of its lines.
fn inside(piece: &Piece) -> (Vec<Point>, Vec<LineKind>) {
    let middle = |cutout: &Cutout| {
        let boxes = cutout.edges.iter().map(|edge| edge.curve.bounds());
        boxes.reduce(|a, b| a.union(b)).expect("edges").center()
    };
    let kinds = piece.marks().iter().filter_map(|mark| match mark {
        Mark::Line { kind, .. } => Some(*kind),
        _ => None,
    });
    (piece.cutouts().map(middle).collect(), kinds.collect())
}

fn wedges(piece: &Piece) -> usize {
    let same =
        |notch: &&Notch| (notch.form, notch.depth, notch.marks) == (NotchForm::Wedge, Some(4.0), 2);
    let notches = piece.edges().iter().flat_map(|edge| &edge.notches);
    notches.filter(same).count()
}

fn near(a: Point, b: (f64, f64)) {
    assert!(size(a - Point::from(b)) < 1e-9, "{a} is not {b:?}");
}

#[test]
fn a_cutout_is_turned_so_that_the_cloth_lies_to_its_left_and_its_area_is_lost() {
    let piece = marked();
    let cutout = piece.cutouts().next().expect("a cut-out");
    assert_eq!(cutout.edges[0].name, "lower");
    let rise = cutout.edges[0].curve.at(5.0).0;
    assert!(rise.y < 250.0 && rise.x > 100.0, "{rise}");
    close(cutout.area(), 100.0 * std::f64::consts::PI, 1e-9);
    close(piece.area(), 60_000.0 - cutout.area(), 1e-9);
    // The notch keeps its place: 5 from the right end of the upper half is 5 short of the other end of it now.
    let upper = &cutout.edges[1];
    close(upper.notches[0].distance, upper.length() - 5.0, 1e-9);
}

#[test]
fn a_cutout_that_is_not_wholly_within_is_refused() {
    let plain = marked().with_marks(vec![]).unwrap();
    let refused = |marks: Vec<Mark>| {
        let error = plain.clone().with_marks(marks).unwrap_err();
        (error.kind(), error.argument(), error.at())
    };
    let at = |x: f64, y: f64| Mark::Cutout(keyhole((x, y)));
    let outline = |index| (ErrorKind::Outline, "cutout", Some(index));
    assert_eq!(refused(vec![at(195.0, 100.0)]), outline(0));
    assert_eq!(refused(vec![at(300.0, 100.0)]), outline(0));
    // Touching the edge, crossing each other, one in the other.
    assert_eq!(refused(vec![at(190.0, 100.0)]), outline(0));
    assert_eq!(refused(vec![at(50.0, 50.0), at(60.0, 50.0)]), outline(1));
    let small = Cutout {
        edges: keyhole((50.0, 50.0))
            .edges
            .into_iter()
            .map(|mut edge| {
                let scaled = |p: Point| Point::new(50.0, 50.0) + (p - Point::new(50.0, 50.0)) * 0.2;
                edge.curve = Curve::arc(scaled(edge.curve.start()), scaled(edge.curve.end()), 1.0);
                edge.notches.clear();
                edge
            })
            .collect(),
        ..keyhole((50.0, 50.0))
    };
    assert_eq!(
        refused(vec![at(50.0, 50.0), Mark::Cutout(small)]),
        outline(1)
    );
    let mut open = keyhole((50.0, 50.0));
    open.edges.pop();
    let error = (ErrorKind::OutOfRange, "gap", Some(0));
    assert_eq!(refused(vec![Mark::Cutout(open)]), error);
    let mut folded = keyhole((50.0, 50.0));
    folded.edges = vec![
        Edge::fold("fold", Curve::line((40.0, 50.0), (60.0, 50.0))),
        folded.edges.remove(0),
    ];
    let error = (ErrorKind::OutOfRange, "fold", Some(0));
    assert_eq!(refused(vec![Mark::Cutout(folded)]), error);
}

#[test]
fn a_notch_no_deeper_than_its_allowance() {
    let mut edges = marked().edges().to_vec();
    edges[1].notches[0].depth = Some(10.5);
    let error = Piece::new("front", edges).unwrap_err();
    assert_eq!(
        (error.argument(), error.at(), error.max()),
        ("depth", Some(1), 10.0)
    );
}

#[test]
fn notches_are_cut_in_by_their_depth_or_the_usual() {
    let mut edges = marked().edges().to_vec();
    edges[0].allowance = 30.0;
    edges[0].notches[0].depth = None;
    edges[2].notches[0].depth = None;
    edges[3].allowance = 0.0;
    edges[3].notches[0].depth = None;
    let cut = Piece::new("front", edges).unwrap().cut_line(0.1).unwrap();
    let depths: Vec<f64> = cut.notches().iter().map(|notch| notch.depth).collect();
    // 0.6 of 30 is more than 6; 4 as asked; 0.6 of 10; nothing to cut into.
    assert_eq!(depths, [6.0, 4.0, 6.0, 0.0]);
    assert!(
        cut.notches()
            .iter()
            .all(|notch| notch.form == NotchForm::Wedge)
    );
}

#[test]
fn mirrored_turned_and_shifted() {
    let piece = marked();
    let mirrored = piece.mirror();
    near(inside(&mirrored).0[0], (-100.0, 250.0));
    assert_eq!((wedges(&mirrored), mirrored.mirror()), (4, piece.clone()));
    // Its cloth still lies to the left: the area comes out the same.
    close(mirrored.area(), piece.area(), 1e-9);
    near(inside(&piece.turned(90.0)).0[0], (-250.0, 100.0));
    near(inside(&piece.shifted((1.0, 2.0))).0[0], (101.0, 252.0));
    // With its cut-out in the middle the front is its own mirror image; off it, it is not.
    let only = |x: f64| {
        let marks = vec![Mark::Cutout(Cutout {
            edges: keyhole((x, 250.0))
                .edges
                .into_iter()
                .map(|edge| Edge {
                    notches: vec![],
                    ..edge
                })
                .collect(),
            ..keyhole((x, 250.0))
        })];
        let edges = piece.edges().iter().cloned().map(|edge| Edge {
            notches: vec![],
            ..edge
        });
        let piece = Piece::new("front", edges.collect()).unwrap();
        piece.with_marks(marks).unwrap().handed(0.01).unwrap()
    };
    assert_eq!((only(100.0), only(101.0)), (false, true));
    // A slit is no wedge: without its fellow in the other half the piece is handed.
    let notched = |form: NotchForm| {
        let mut edges = piece.edges().to_vec();
        for edge in &mut edges {
            edge.notches.clear();
        }
        edges[1] = edges[1].clone().notch("a", 100.0, 1);
        edges[3] = edges[3].clone().notch("a", 200.0, 1);
        edges[3].notches[0].form = form;
        Piece::new("front", edges).unwrap().handed(0.01).unwrap()
    };
    assert_eq!(
        (notched(NotchForm::Slit), notched(NotchForm::Wedge)),
        (false, true)
    );
}

#[test]
fn unfolded() {
    let piece = marked();
    let mut edges = piece.edges().to_vec();
    edges[3] = Edge::fold("centre", edges[3].curve);
    let half = Piece::new("front", edges).unwrap();
    let whole = half.with_marks(piece.marks().to_vec()).unwrap();
    let whole = whole.unfold().unwrap();
    let (middles, kinds) = inside(&whole);
    near(middles[0], (100.0, 250.0));
    near(middles[1], (-100.0, 250.0));
    let stripes = kinds.iter().filter(|kind| **kind == LineKind::Stripe);
    assert_eq!((stripes.count(), wedges(&whole)), (2, 6));
    close(whole.area(), 2.0 * piece.area(), 1e-9);
}

#[test]
fn split_and_joined_again() {
    let piece = marked();
    let seam = NewSeam {
        name: "yoke".into(),
        allowance: 10.0,
        notches: vec![],
    };
    let level = |y: f64| Curve::line((-10.0, y), (210.0, y));
    let [upper, lower] = piece.split(&level(150.0), &seam).unwrap();
    near(inside(&upper).0[0], (100.0, 250.0));
    assert_eq!((upper.marks().len(), lower.marks().len()), (5, 0));
    let edge = |piece: &Piece| piece.edge("yoke").unwrap();
    let joined = upper
        .join(edge(&upper), &lower, edge(&lower), 0.01)
        .unwrap();
    assert_eq!(inside(&joined.piece).1, [LineKind::Stripe, LineKind::Fold]);
    close(joined.piece.area(), piece.area(), 1e-9);
    // A cut through the cut-out is refused.
    let error = piece.split(&level(255.0), &seam).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("mark", Some(4)));
}

#[test]
fn spread_and_shifted_at_an_edge() {
    let piece = marked();
    let place = |x: f64, y: f64| piece.place((x, y)).0;
    let slash = Slash {
        open: place(50.0, 0.0),
        hinge: place(50.0, 300.0),
        open_by: 20.0,
        hinge_by: 20.0,
    };
    // The slash would run through the buttonhole, which lies from 40 to 60.
    let error = piece.slash_and_spread(&[slash]).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("mark", Some(1)));
    let slash = Slash {
        open: place(70.0, 0.0),
        hinge: place(70.0, 300.0),
        ..slash
    };
    let spread = piece.slash_and_spread(&[slash]).unwrap();
    close(spread.area(), piece.area() + 6000.0, 1e-6);
    // The right part, with the keyhole, is the larger and stays; the button goes.
    near(inside(&spread).0[0], (100.0, 250.0));
    let kinds = inside(&spread).1;
    let stripes = kinds.iter().filter(|kind| **kind == LineKind::Stripe);
    assert_eq!((stripes.count(), wedges(&spread)), (2, 4));
    let longer = piece.shift_edges(&[0], 30.0).unwrap();
    assert_eq!((longer.marks(), wedges(&longer)), (piece.marks(), 4));
    // Taken in past the keyhole the piece cannot keep it.
    let error = piece.shift_edges(&[2], -60.0).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("cutout", Some(4)));
}

#[test]
fn stretched_for_the_wash() {
    let piece = marked();
    let cut = piece.scale_for_change(-20.0, 0.0).unwrap();
    near(inside(&cut).0[0], (100.0, 312.5));
    let upper = cut.cutouts().next().unwrap();
    close(upper.area(), 125.0 * std::f64::consts::PI, 0.01);
    assert_eq!(
        upper
            .edges
            .iter()
            .map(|edge| edge.notches.len())
            .sum::<usize>(),
        1
    );
    assert_eq!(inside(&cut).1, [LineKind::Stripe, LineKind::Fold]);
    close(cut.area(), piece.area() / 0.8, 0.01);
}

#[test]
fn darts_turn_what_lies_beside_them() {
    let square = square();
    let mut marks = square.marks().to_vec();
    marks.push(Mark::Cutout(keyhole((160.0, 160.0))));
    let square = square.with_marks(marks).unwrap();
    let at = square.place((200.0, 100.0)).0;
    let side = Opening {
        name: "side".into(),
        at,
        share: 1.0,
    };
    let turned = square.turn_dart("waist", &[side]).unwrap();
    let (middle, before) = (inside(&turned).0[0], Point::new(160.0, 160.0));
    let pivot = Point::new(100.0, 100.0);
    close(size(middle - pivot), size(before - pivot), 1e-9);
    // The dart's whole angle, 2 atan 0.1.
    let angle = libm::atan2((middle - pivot).y, (middle - pivot).x);
    close(
        angle - std::f64::consts::FRAC_PI_4,
        2.0 * libm::atan(0.1),
        1e-9,
    );
    close(
        turned.area() + 100.0 * std::f64::consts::PI,
        turned.clone().with_marks(vec![]).unwrap().area(),
        1e-9,
    );
    // Turned to where the cut would run through it, it is in the way.
    let at = square.place((200.0, 195.0)).0;
    let through = Opening {
        name: "corner".into(),
        at,
        share: 1.0,
    };
    let error = square.turn_dart("waist", &[through]).unwrap_err();
    assert_eq!((error.argument(), error.at()), ("mark", Some(2)));
}

#[test]
fn halves_compared_keep_the_left() {
    let piece = marked();
    let mut edges = Vec::new();
    for edge in piece.edges() {
        // Cut at the axis, x = 100.
        let middle = match edge.name.as_str() {
            "hem" => Point::new(100.0, 0.0),
            "top" => Point::new(100.0, 300.0),
            _ => {
                edges.push(edge.clone());
                continue;
            }
        };
        let halves = [(edge.curve.start(), middle), (middle, edge.curve.end())];
        for (index, (from, to)) in halves.into_iter().enumerate() {
            edges.push(Edge {
                name: format!("{} {index}", edge.name),
                curve: Curve::line(from, to),
                ..edge.clone()
            });
        }
    }
    let whole = Piece::new("front", edges).unwrap();
    let marks = vec![
        Mark::Cutout(keyhole((50.0, 250.0))),
        Mark::Cutout(keyhole((150.0, 250.0))),
    ];
    let whole = whole.with_marks(marks).unwrap();
    let axis = Line::new((100.0, 0.0), (100.0, 300.0));
    let half = whole.symmetrise(axis, 0.1).unwrap().half;
    let (middles, _) = inside(&half);
    near(middles[0], (50.0, 250.0));
    assert_eq!(middles.len(), 1);
}
