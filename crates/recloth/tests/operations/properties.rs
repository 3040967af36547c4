//! What holds of every piece, whatever is done to it.

use super::*;
use recloth::outline::{
    CopyFit, Cutout, EdgeBy, EdgeEnd, Kept, Lining, LiningDarts, LiningHem, Meeting, PairedNotch,
    true_up,
};

/// A random piece with marks of every kind about its middle, a grain line and a dart.
fn marked(random: &mut Random, count: usize) -> Piece {
    let piece = random.piece(count);
    let window = |a: (f64, f64), b: (f64, f64)| Edge::seam("window", Curve::arc(a, b, 1.0), 3.0);
    let marks = vec![
        Mark::Drill {
            name: "button".into(),
            at: Point::new(random.between(-60.0, -30.0), 40.0),
        },
        Mark::Line {
            name: "pocket".into(),
            kind: LineKind::Placement,
            curve: Curve::line((30.0, -50.0), (60.0, random.between(-60.0, -40.0))),
        },
        Mark::Buttonhole {
            name: "hole".into(),
            ends: [Point::new(-40.0, -40.0), Point::new(-20.0, -42.0)],
        },
        Mark::Cutout(Cutout {
            name: "window".into(),
            edges: vec![
                window((30.0, 40.0), (50.0, 40.0)),
                window((50.0, 40.0), (30.0, 40.0)),
            ],
        }),
    ];
    piece
        .with_grain(Line::new((-20.0, 0.0), (20.0, 5.0)))
        .and_then(|piece| piece.with_marks(marks))
        .expect("a piece")
}

/// Names of all marks and notches, each once.
fn carried(piece: &Piece) -> Vec<String> {
    let marks = piece.marks().iter().map(|mark| mark.name().to_owned());
    let edges = piece.edges().iter().flat_map(|edge| &edge.notches);
    let mut names: Vec<String> = marks.chain(edges.map(|notch| notch.name.clone())).collect();
    names.sort();
    names.dedup();
    names
}

#[test]
fn every_operation_carries_marks_and_notches() {
    let mut random = Random(83);
    let mut done = [0; 9];
    for round in 0..60 {
        let piece = marked(&mut random, 5 + round % 5);
        let place = random.place(&piece);
        let names = carried(&piece);
        let by = random.between(3.0, 9.0);
        let around: Vec<usize> = (0..piece.edges().len()).collect();
        let level = Lining {
            name: "lining".into(),
            cloth: "lining".into(),
            facings: Vec::new(),
            ease: around.iter().map(|&edge| EdgeBy { edge, by }).collect(),
            pleats: Vec::new(),
            hem: LiningHem::Level,
            darts: LiningDarts::Sewn,
            allowance: 10.0,
            shell_change_pct: [0.0; 2],
            lining_change_pct: [-by, 0.0],
        };
        let seam = Meeting::Seam {
            pieces: [0, 0],
            edges: [place.edge, place.edge],
            way: Way::Against,
            end: EdgeEnd::Start,
            kept: Kept::Neither,
        };
        let far = Place {
            edge: (place.edge + 2) % around.len(),
            ..place
        };
        let slash = Slash {
            open: place,
            hinge: far,
            open_by: by,
            hinge_by: by,
        };
        let notch = PairedNotch {
            name: names[0].clone(),
            distance: 30.0,
            ease: 0.0,
            marks: 1,
        };
        let made = [
            Ok(piece.mirror().mirror()),
            piece.scale_for_change(-by, by / 2.0),
            piece.extend(Line::new((0.0, 75.0), (1.0, 75.0)), by),
            piece.shift_edges(&around, by),
            piece.slash_and_spread(&[slash]),
            piece.lining(&level).map(|lined| lined.piece),
            true_up(std::slice::from_ref(&piece), &[seam], 1e3)
                .map(|trued| trued.pieces[0].clone()),
            piece
                .trace(place, far)
                .and_then(|edges| piece.copy_edge(place, far, &edges, CopyFit::default()))
                .map(|copied| copied.piece),
            piece
                .pair_notches(&[far.edge], &piece.mirror(), &[0], Way::Along, &[notch])
                .map(|[first, _]| first),
        ];
        for (count, made) in done.iter_mut().zip(made) {
            if let Ok(made) = made {
                *count += 1;
                assert_eq!(carried(&made), names, "{round}");
                assert!(made.grain().is_some());
                assert_eq!(made.cutting().count, piece.cutting().count);
            }
        }
    }
    assert!(done.iter().all(|count| *count > 25), "{done:?}");
}

/// A random piece with a dart that opens somewhere and points to its middle. The edge that gives way does so where it is
/// nearest to the point, for there its turned part crosses it.
fn darted(random: &mut Random, count: usize) -> Option<Piece> {
    let piece = random.piece(count);
    let point = Point::new(5.0, -5.0);
    let at = random.place(&piece);
    let edge = (at.edge + count / 2) % count;
    let (_, distance) = piece.edges()[edge].curve.nearest(point);
    let opposite = Place { edge, distance };
    let intake = random.between(8.0, 40.0);
    let made = piece.open_dart("dart", point, at, intake, opposite);
    made.ok()
}

#[test]
fn a_dart_turned_away_and_back_is_as_it_was() {
    let mut random = Random(97);
    let mut done = 0;
    for round in 0..200 {
        let Some(piece) = darted(&mut random, 5 + round % 6) else {
            continue;
        };
        let to = |name: &str, at: Place| {
            [Opening {
                name: name.into(),
                at,
                share: 1.0,
            }]
        };
        let at = random.place(&piece);
        let Ok(turned) = piece.turn_dart("dart", &to("other", at)) else {
            continue;
        };
        // Every edge but the mouths keeps its length, whole or in parts.
        let lengths = |piece: &Piece| -> f64 {
            let mouth = |edge: &&Edge| !edge.name.starts_with("cap ");
            piece.edges().iter().filter(mouth).map(Edge::length).sum()
        };
        close(lengths(&turned), lengths(&piece), 1e-8);
        let angle = |piece: &Piece, name: &str| {
            let dart = dart_of(piece, name);
            2.0 * libm::asin(dart.intake() / (2.0 * dart.leg_lengths()[0]))
        };
        close(angle(&turned, "other"), angle(&piece, "dart"), 1e-9);
        // Back to where the legs were joined: one of them stayed in its place.
        let legs = dart_of(&piece, "dart").legs;
        let places = legs.map(|leg| turned.place(leg));
        let joined = places.into_iter().find(|(_, off)| *off < 1e-9);
        let (at, _) = joined.expect("a leg that stayed");
        let Ok(back) = turned.turn_dart("other", &to("dart", at)) else {
            continue;
        };
        done += 1;
        close(back.area(), piece.area(), 1e-6);
        close(
            dart_of(&back, "dart").intake(),
            size(legs[1] - legs[0]),
            1e-9,
        );
        close(lengths(&back), lengths(&piece), 1e-8);
    }
    assert!(done > 60, "{done}");
}

#[test]
fn an_unfolded_piece_is_its_own_mirror_image() {
    let mut random = Random(101);
    let mut done = 0;
    for round in 0..100 {
        let piece = marked(&mut random, 5 + round % 5);
        let mut edges = piece.edges().to_vec();
        let last = edges.len() - 1;
        let curve = edges[last].curve;
        edges[last] = Edge::fold("fold", Curve::line(curve.start(), curve.end()));
        let Ok(half) =
            Piece::new("half", edges).and_then(|half| half.with_marks(piece.marks().to_vec()))
        else {
            continue;
        };
        let Ok(whole) = half.unfold() else {
            continue;
        };
        done += 1;
        close(whole.area(), 2.0 * half.area(), 1e-6);
        assert!(!whole.handed(1e-6).unwrap(), "{round}");
        assert!(!whole.mirror().handed(1e-6).unwrap());
        assert_eq!(whole.marks().len(), 2 * half.marks().len());
        // Compared about its fold, its halves are alike and every mark has its fellow.
        let halves = whole.symmetrise(Line::new(curve.end(), curve.start()), 1e-6);
        let halves = halves.unwrap_or_else(|error| panic!("{round}: {error}"));
        assert!(
            halves.largest < 1e-9 && halves.alone.is_empty(),
            "{round}: {halves:?}"
        );
        close(halves.half.area(), half.area(), 1e-6);
    }
    assert!(done > 60, "{done}");
}

#[test]
fn notches_set_in_pairs_meet() {
    let mut random = Random(103);
    for round in 0..100 {
        let (a, b) = (random.piece(6), random.piece(5 + round % 3));
        let way = [Way::Along, Way::Against][round % 2];
        let rows = (
            [1, 2, 3],
            match way {
                Way::Along => [0, 1, 2],
                Way::Against => [2, 1, 0],
            },
        );
        let walk = a.walk(&rows.0, &b, &rows.1, way).unwrap();
        let reach = walk.length.min(walk.other_length);
        let notch = |name: &str, share: f64, ease: f64| PairedNotch {
            name: name.into(),
            distance: share * reach,
            ease,
            marks: 2,
        };
        let eased = [random.between(-9.0, 9.0), random.between(-9.0, 9.0)];
        let notches = [
            notch("front", random.between(0.1, 0.4), eased[0]),
            notch("back", random.between(0.6, 0.9), eased[1]),
        ];
        let [x, y] = a.pair_notches(&rows.0, &b, &rows.1, way, &notches).unwrap();
        let walk = x.walk(&rows.0, &y, &rows.1, way).unwrap();
        for (name, ease) in [("front", eased[0]), ("back", eased[1])] {
            let met = walk.notches.iter().find(|n| n.name == name).unwrap();
            close(met.difference().unwrap(), ease, 1e-6);
        }
        let found = x.match_notches(&y);
        let both = found
            .iter()
            .filter(|n| ["front", "back"].contains(&n.name.as_str()));
        assert_eq!(both.filter(|n| n.matches()).count(), 2);
        let error = x
            .pair_notches(&rows.0, &y, &rows.1, way, &notches)
            .unwrap_err();
        assert_eq!((error.argument(), error.at()), ("name", Some(0)));
    }
}
