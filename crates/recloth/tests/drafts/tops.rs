//! Necks, sleeves and the pinafore, worked by hand.

use recloth::ErrorKind::NoSolution;
use recloth::doubt::{BUTTONS_HELD, CHILD_NECK};
use recloth::draft::*;
use recloth::outline::{Edge, Piece};

use super::{close, cut_length, fails, length, names, notch, piece, samples, seam, sound};

fn edge<'a>(piece: &'a Piece, name: &str) -> &'a Edge {
    &piece.edges()[piece.edge(name).unwrap_or_else(|| panic!("{name}"))]
}

#[test]
fn a_v_neck_is_cut_as_worked() {
    let draft = samples::neck_top(NeckShape::V).draft().unwrap();
    assert_eq!(
        names(&draft),
        [
            "bodice front",
            "bodice back",
            "front neck facing",
            "back neck facing"
        ]
    );
    // By hand: the shoulder falls 28 on 98, so 15 along it from (74, 420) is (88.42, 415.88); 170 below lies the point. The
    // edge is the root of 88.42² + 170² = 191.62, the tape 0.97 of it.
    let front = piece(&draft, "bodice front");
    close(edge(front, "neck").length(), 191.62, 0.01);
    close(cut_length(&draft, "stay tape, one side"), 185.87, 0.01);
    close(edge(front, "neck").curve.end().y, 245.88, 0.01);
    let back = piece(&draft, "bodice back");
    close(edge(back, "neck").curve.end().y, 355.88, 0.01);
    // Square to the centre back.
    close(edge(back, "neck").curve.end_tangent().y, 0.0, 1e-9);
    // Both shoulders lost 15 of 101.92.
    for piece in [front, back] {
        close(edge(piece, "shoulder").length(), 86.92, 0.01);
    }
    let shoulder = &seam(&draft, "shoulder").walk;
    close(shoulder.end_kink_deg.unwrap(), 0.0, 1e-6);
    // The armhole and the rest are as they were.
    assert_eq!(
        edge(front, "armhole").curve,
        edge(&samples::bodice(false), "armhole").curve
    );
    for name in ["front neck facing", "back neck facing"] {
        assert!(piece(&draft, name).fold().is_some());
    }
}

#[test]
fn a_square_neck_has_a_square_corner() {
    let draft = samples::neck_top(NeckShape::Square).draft().unwrap();
    let front = piece(&draft, "bodice front");
    close(edge(front, "neck side").length(), 170.0, 1e-9);
    close(edge(front, "neck").length(), 88.42, 0.01);
    assert!(draft.lengths.is_empty());
    // Its facing is as deep: 50 at the centre front.
    close(
        edge(piece(&draft, "front neck facing"), "centre").length(),
        50.0,
        0.05,
    );
}

#[test]
fn a_neck_that_cannot_be_cut_says_what_would_do() {
    let top = samples::neck_top(NeckShape::V);
    let deep = NeckTop {
        depth: 700.0,
        ..top.clone()
    };
    let error = fails(deep.draft(), NoSolution, "depth");
    // Of 415.88 down the centre 20 stay, and the facing, which along the centre of a V is as much deeper than 50 as its edge is
    // longer than wide: at 247.3 the edge is √(247.3² + 88.42²) = 262.6, the facing 50 · 262.6 / 88.42 = 148.5, together 395.8.
    close(error.max(), 247.34, 0.05);
    sound(
        &NeckTop {
            depth: error.max(),
            ..deep
        }
        .draft()
        .unwrap(),
    );
    // The front neck was 75 below its new end's level of 415.88 - 345.
    let shallow = NeckTop {
        depth: 60.0,
        ..top.clone()
    };
    close(
        fails(shallow.draft(), NoSolution, "depth").min(),
        70.88,
        0.01,
    );
    let wide = NeckTop {
        off_shoulder: 95.0,
        ..top.clone()
    };
    let error = fails(wide.draft(), NoSolution, "off_shoulder");
    close(error.max(), 81.92, 0.01);
    let nameless = Piece::new(
        "x",
        top.front
            .edges()
            .iter()
            .map(|e| Edge {
                name: "e".into(),
                ..e.clone()
            })
            .collect(),
    );
    fails(
        NeckTop {
            front: nameless.unwrap(),
            ..top
        }
        .draft(),
        NoSolution,
        "neck",
    );
}

#[test]
fn a_sleeve_has_its_ease_above_the_notches() {
    let draft = samples::sleeve().draft().unwrap();
    let sleeve = piece(&draft, "sleeve");
    for (name, cap, bodice) in [
        ("front armhole", "cap front", "bodice front"),
        ("back armhole", "cap back", "bodice back"),
    ] {
        let armhole = length(piece(&draft, bodice), "armhole");
        let walk = &seam(&draft, name).walk;
        close(walk.other_length, armhole, 1e-9);
        // 4 % more.
        close(edge(sleeve, cap).length(), 1.04 * armhole, 1e-6);
        // A third of the armhole below the notch, on both.
        let (mine, theirs) = notch(walk, name.split(' ').next().unwrap());
        let from_underarm = |at: f64, whole: f64| if cap == "cap front" { at } else { whole - at };
        close(from_underarm(mine, walk.length), armhole / 3.0, 1e-6);
        close(
            from_underarm(theirs, walk.other_length),
            armhole / 3.0,
            1e-6,
        );
    }
    // As wide as asked at the underarm and the hem, its seams as long.
    let (front, back) = (
        edge(sleeve, "cap front").curve.start(),
        edge(sleeve, "cap back").curve.end(),
    );
    close(front.x - back.x, 340.0, 1e-9);
    close(front.y - back.y, 0.0, 1e-9);
    close(edge(sleeve, "front seam").length(), 430.0, 1e-9);
    let hem = edge(sleeve, "hem").curve;
    close(hem.end().x - hem.start().x, 250.0, 1e-9);
    // A flat cap is as wide as it is long: no wider sleeve has it.
    let cap = cut_length(&draft, "cap");
    let wide = Sleeve {
        width: 600.0,
        ..samples::sleeve()
    };
    let error = fails(wide.draft(), NoSolution, "width");
    assert!(error.max() <= cap && error.max() > 0.95 * cap, "{error}");
    sound(
        &Sleeve {
            width: error.max(),
            ..wide
        }
        .draft()
        .unwrap(),
    );
}

#[test]
fn a_sleeve_there_is_gets_a_new_cap() {
    let plain = samples::plain_sleeve();
    let draft = samples::recut_sleeve().draft().unwrap();
    let sleeve = piece(&draft, "sleeve");
    for name in ["hem", "front seam", "back seam"] {
        assert_eq!(edge(sleeve, name).curve, edge(&plain, name).curve);
    }
    // 2 % of ease in place of 4 %: a lower cap.
    assert!(sleeve.bounds().y1 < plain.bounds().y1);
    assert_eq!(cut_length(&draft, "crown above the old one"), 0.0);
    // With 4 % it is the same cap again.
    let same = RecutSleeve {
        armhole: samples::armhole(),
        ..samples::recut_sleeve()
    };
    let again = same.draft().unwrap();
    let crown = |piece: &Piece| edge(piece, "cap front").curve.end();
    close(crown(piece(&again, "sleeve")).y, crown(&plain).y, 1e-6);
    close(crown(piece(&again, "sleeve")).x, crown(&plain).x, 1e-6);
    // More ease needs more cloth than there is.
    let high = RecutSleeve {
        armhole: Armhole {
            ease_pct: 12.0,
            ..samples::armhole()
        },
        largest_lift: 3.0,
        ..samples::recut_sleeve()
    };
    let error = fails(high.draft(), NoSolution, "largest_lift");
    sound(
        &RecutSleeve {
            largest_lift: error.min(),
            ..high
        }
        .draft()
        .unwrap(),
    );
}

#[test]
fn a_puff_is_as_full_and_as_high_as_asked() {
    for hem in [PuffHem::Kept, PuffHem::Gathered] {
        let puff = samples::puffed_sleeve(hem);
        let draft = puff.draft().unwrap();
        let sleeve = &draft.pieces[0];
        let zone = cut_length(&draft, "zone before");
        // 1.75 times, as F16's 240 that becomes 420.
        close(length(sleeve, "puff"), 1.75 * zone, 0.01);
        // What lies below the notches stays.
        close(length(sleeve, "cap front"), 228.26 / 3.0, 0.01);
        // 30 higher over the line of the notches.
        let height = |piece: &Piece, first: &str, low: f64| {
            let start = piece.edges()[piece.edge(first).unwrap()].curve.at(low).0;
            let end = piece.edges()[piece.edge("cap back").unwrap()].clone();
            let back = end
                .curve
                .at(end
                    .notches
                    .iter()
                    .find(|n| n.name == "back")
                    .unwrap()
                    .distance)
                .0;
            let crown = edge(
                piece,
                if first == "cap front" {
                    first
                } else {
                    "puff front"
                },
            )
            .curve
            .end();
            let line = start - back;
            let up = crown - back;
            (line.x * up.y - line.y * up.x) / libm::hypot(line.x, line.y)
        };
        let before = height(&puff.sleeve, "cap front", 228.26 / 3.0);
        let after = height(sleeve, "puff front", 0.0);
        close(after - before, 30.0, 0.05);
        let grown = length(sleeve, "hem") - length(&puff.sleeve, "hem");
        if hem == PuffHem::Kept {
            close(grown, 0.0, 0.5);
        } else {
            // Spread parallel, six times as far at the hem as at the cap.
            assert!(grown > 150.0 && grown < 260.0, "{grown}");
        }
    }
    let high = PuffedSleeve {
        ratio: 1.2,
        lift: 200.0,
        ..samples::puffed_sleeve(PuffHem::Gathered)
    };
    let error = fails(high.draft(), NoSolution, "lift");
    sound(
        &PuffedSleeve {
            lift: error.max(),
            ..high
        }
        .draft()
        .unwrap(),
    );
}

#[test]
fn a_pinafore_is_as_worked() {
    let draft = samples::pinafore().draft().unwrap();
    let (front, back) = (piece(&draft, "yoke front"), piece(&draft, "yoke back"));
    // (580 + 80) / 4 = 165; the stand of 15 is extra.
    close(edge(front, "lower").length(), 165.0, 1e-9);
    close(edge(back, "lower").length(), 165.0, 1e-9);
    close(edge(back, "lower past centre").length(), 15.0, 1e-9);
    // The neck: 360 round, 360 / 6 = 60 to each side.
    close(
        2.0 * (edge(front, "neck").length() + edge(back, "neck").length()),
        360.0,
        1e-6,
    );
    close(edge(front, "neck").curve.start().x, 60.0, 1e-9);
    close(edge(front, "shoulder").length(), 70.0, 1e-9);
    close(edge(front, "side").length(), 170.0 - 140.0, 1e-9);
    // The skirt: 660 · 1.8 = 1188, in two widths of 594; open 200 - 170 = 30 below the yoke.
    let skirt = piece(&draft, "skirt 1");
    close(skirt.bounds().width(), 594.0, 1e-9);
    close(edge(skirt, "start").notches[0].distance, 30.0, 1e-9);
    close(seam(&draft, "skirt to yoke").ease, 1188.0 - 660.0, 1e-9);
    assert_eq!(draft.cautions, CHILD_NECK | BUTTONS_HELD);
    assert_eq!((front.cutting().count, back.cutting().count), (2, 4));
    // With a band.
    let banded = Pinafore {
        band_depth: 30.0,
        opening: 200.0,
        ..samples::pinafore()
    }
    .draft()
    .unwrap();
    sound(&banded);
    close(piece(&banded, "band").bounds().width(), 675.0, 1e-9);
    // F21: a neck of 360 and a head of 700 need (700 + 20 - 360) / 2 = 180.
    let tight = Pinafore {
        opening: 175.0,
        head: 700.0,
        ..samples::pinafore()
    };
    assert_eq!(fails(tight.draft(), NoSolution, "opening").min(), 180.0);
    let broad = Pinafore {
        shoulder: 150.0,
        ..samples::pinafore()
    };
    let error = fails(broad.draft(), NoSolution, "shoulder");
    sound(
        &Pinafore {
            shoulder: error.max(),
            ..broad
        }
        .draft()
        .unwrap(),
    );
    let shallow = Pinafore {
        yoke_depth: 145.0,
        ..samples::pinafore()
    };
    assert_eq!(
        fails(shallow.draft(), NoSolution, "yoke_depth").min(),
        150.0
    );
}
