//! Skirts, worked by hand.

use recloth::ErrorKind::{self, NoSolution};
use recloth::draft::*;
use recloth::outline::{LiningDarts, LiningHem, Mark, Piece, Role};

use super::{close, fails, length, names, notch, piece, samples, seam, sound};

fn intakes(piece: &Piece) -> Vec<f64> {
    let intake = |mark: &Mark| match mark {
        Mark::Dart(dart) => Some(dart.intake()),
        _ => None,
    };
    piece.marks().iter().filter_map(intake).collect()
}

#[test]
fn a_darted_skirt_has_the_measures_asked_for() {
    let draft = samples::darted_skirt().draft().unwrap();
    let (front, back) = (piece(&draft, "skirt front"), piece(&draft, "skirt back"));
    // A quarter of 720 is 180; the front has 10 more, the back 10 less.
    close(length(front, "waist"), 190.0, 1e-6);
    close(length(back, "waist"), 170.0, 1e-6);
    // Front: 250 - 190 = 60, of which one dart takes 30. Back: 235 - 170 = 65, of which two take 30 each.
    close(intakes(front)[0], 30.0, 1e-9);
    assert_eq!(intakes(back).len(), 2);
    close(intakes(back)[1], 30.0, 1e-9);
    // 980 / 4 = 245, and 30 of flare.
    close(front.bounds().width(), 285.0, 1e-6);
    close(back.bounds().width(), 265.0, 1e-6);
    // From hip to hem 400 at the side as at the centre.
    for piece in [front, back] {
        close(length(piece, "side lower"), 400.0, 1e-6);
    }
    let side = seam(&draft, "side");
    let (hip, other) = notch(&side.walk, "hip");
    close(hip, 400.0, 1e-6);
    close(other, 400.0, 1e-6);
    assert_eq!(front.fold().is_some(), back.fold().is_none());
}

#[test]
fn a_darted_skirt_that_cannot_be_made_says_what_would_do() {
    let skirt = samples::darted_skirt();
    let with = |change: &dyn Fn(&mut DartedSkirt)| {
        let mut skirt = skirt.clone();
        change(&mut skirt);
        skirt.draft()
    };
    // A front of 190 needs a panel of 190.
    let error = fails(with(&|s| s.front_panel = 185.0), NoSolution, "front_panel");
    close(error.min(), 190.0, 1e-6);
    sound(&with(&|s| s.front_panel = error.min()).unwrap());
    let error = fails(
        with(&|s| s.back_dart_length = 230.0),
        NoSolution,
        "back_dart_length",
    );
    assert!(error.max() <= 200.0);
    sound(&with(&|s| s.back_dart_length = error.max()).unwrap());
    let error = fails(with(&|s| s.length = 205.0), NoSolution, "length");
    assert_eq!(error.min(), 210.0);
    let error = fails(with(&|s| s.hip = 600.0), NoSolution, "hip");
    sound(&with(&|s| s.hip = error.min()).unwrap());
    let error = fails(with(&|s| s.flare = 900.0), NoSolution, "flare");
    sound(&with(&|s| s.flare = error.max()).unwrap());
}

#[test]
fn a_front_opens_off_its_centre_as_worked() {
    // F9 without darts: front 380, shift 85: 105 and 275 to the line, 115 and 285 with an allowance of 10.
    let mut front = samples::off_centre_front();
    front.front.darts = 0;
    front.front.panel_width = 190.0;
    front.shift = 85.0;
    let draft = front.draft().unwrap();
    sound(&draft);
    assert_eq!(names(&draft), ["front narrow", "front wide"]);
    // With a stand of 18 each.
    close(
        length(piece(&draft, "front narrow"), "waist"),
        105.0 + 18.0,
        0.3,
    );
    close(
        length(piece(&draft, "front wide"), "waist"),
        275.0 + 18.0,
        0.3,
    );
    let edge = &piece(&draft, "front wide").edges()
        [piece(&draft, "front wide").edge("opening edge").unwrap()];
    assert_eq!((edge.role, edge.allowance), (Role::Hem, 40.0));
    // A wide panel of 300 allows 300 - 190 - 10 = 100.
    let wide = OffCentreFront {
        shift: 120.0,
        ..front.clone()
    };
    assert_eq!(fails(wide.draft(), NoSolution, "shift").max(), 100.0);
    // A dart there is near 95 from the centre: a line at 85 with a stand of 18 would run into it.
    let darted = OffCentreFront {
        shift: 85.0,
        ..samples::off_centre_front()
    };
    let error = fails(darted.draft(), NoSolution, "shift");
    assert!(error.max() > 70.0 && error.max() < 80.0, "{error}");
    sound(
        &OffCentreFront {
            shift: error.max(),
            ..darted
        }
        .draft()
        .unwrap(),
    );
}

#[test]
fn a_wrap_skirt_overlaps_as_asked() {
    let draft = samples::wrap_skirt().draft().unwrap();
    let (front, back) = (piece(&draft, "skirt front"), piece(&draft, "skirt back"));
    // 720 / 4 + 300 / 2 = 330, and 720 / 4 = 180.
    close(length(front, "waist"), 330.0, 1e-6);
    close(length(back, "waist"), 180.0, 1e-6);
    // Laid on each other, two fronts of 330 cover the front half of 360 and 300 more.
    close(2.0 * length(front, "waist") - 360.0, 300.0, 1e-6);
    // The wrap edge is as long as the centre, and straight down.
    close(length(front, "wrap edge"), 600.0, 1e-9);
    assert_eq!(
        front.edges()[front.edge("wrap edge").unwrap()].allowance,
        40.0
    );
    assert!(front.marks().iter().any(|mark| mark.name() == "centre"));
    let much = WrapSkirt {
        overlap: 800.0,
        ..samples::wrap_skirt()
    };
    assert_eq!(fails(much.draft(), NoSolution, "overlap").max(), 720.0);
}

#[test]
fn a_gore_is_as_worked() {
    let draft = samples::gored_skirt().draft().unwrap();
    let gore = piece(&draft, "gore");
    // Six gores: 720 / 6 = 120 at the waist, 1980 / 6 = 330 at the hem.
    close(length(gore, "waist"), 120.0, 1e-6);
    close(gore.bounds().width(), 330.0, 1e-6);
    // By hand: the side leans in by 25 on 200, so the waist rises at its ends by 60 · tan(7.125° / 2) = 3.74; from there to
    // the hip is the root of 25² + 203.74² = 205.3. Below the hip it leans out by 80 on 700 - 205.3 = 494.7, 9.31°, so its end
    // lies 200 + 494.7 · cos 9.31° = 688.2 below the waist's middle, 11.8 above the hem's.
    let side = gore.edges()[gore.edge("side lower").unwrap()].curve.start();
    close(side.y, -688.2, 0.1);
    close(gore.bounds().y0, -700.0, 1e-6);
    close(gore.bounds().y1, 3.74, 0.02);
    close(
        length(gore, "side lower") + length(gore, "side upper"),
        2.0 * 700.0,
        1e-6,
    );
    assert_eq!(gore.cutting().count, 6);
    assert!(!gore.handed(1e-3).unwrap());
    let wide = GoredSkirt {
        hem: 9000.0,
        ..samples::gored_skirt()
    };
    let error = fails(wide.draft(), NoSolution, "hem");
    sound(
        &GoredSkirt {
            hem: error.max(),
            ..wide
        }
        .draft()
        .unwrap(),
    );
}

#[test]
fn tiers_multiply_and_their_quarters_meet() {
    let draft = samples::tiered_skirt().draft().unwrap();
    // 800 · 1.5 = 1200, · 1.5 = 1800, · 1.6 = 2880. Strips of 1400 - 2 · 15 = 1370: one, two of 900, three of 960.
    let widths: Vec<f64> = draft
        .pieces
        .iter()
        .map(|piece| piece.bounds().width())
        .collect();
    assert_eq!(widths, [1200.0, 900.0, 900.0, 960.0, 960.0, 960.0]);
    let joined = seam(&draft, "tier 2 to tier 1");
    close(joined.ease, 600.0, 1e-9);
    // Quarters of 1800 on quarters of 1200, from the far end; the middle of the lower tier is a seam.
    assert_eq!(notch(&joined.walk, "quarter 3"), (450.0, 300.0));
    assert_eq!(notch(&joined.walk, "quarter 1"), (1350.0, 900.0));
    let last = piece(&draft, "tier 3, strip 1");
    assert_eq!(last.edges()[0].role, Role::Hem);
    assert_eq!(piece(&draft, "tier 1").edges()[0].role, Role::Seam);
    let scrap = TieredSkirt {
        cloth_width: 30.0,
        ..samples::tiered_skirt()
    };
    fails(scrap.draft(), NoSolution, "allowance");
}

// By hand. Free of the hem by 25 and faced 40 deep at the waist, a side seam is shorter by about 65 along the centre, the side
// a little more as it slants; both sides alike. Its ease lets it out by 3; 25 above the hem it is narrower by as much of the
// flare of 30 over 400.
#[test]
fn a_whole_skirt_is_lined() {
    let shell = samples::darted_skirt().draft().unwrap();
    let by = |piece: &str, edge: &str, by: f64| NamedBy {
        piece: piece.into(),
        edge: edge.into(),
        by,
    };
    let asked = DraftLining {
        pieces: Vec::new(),
        cloth: "lining".into(),
        facings: vec![by("", "waist", 40.0)],
        ease: vec![by("", "side", 3.0)],
        pleats: Vec::new(),
        hem: LiningHem::Free {
            clearance: 25.0,
            allowance: 20.0,
        },
        darts: LiningDarts::Sewn,
        allowance: 10.0,
        shell_change_pct: [0.0; 2],
        lining_change_pct: [0.0; 2],
    };
    let lined = shell.lining(&asked).unwrap();
    assert_eq!(
        names(&lined.draft),
        ["skirt front lining", "skirt back lining"]
    );
    assert_eq!(lined.draft.seams.len(), shell.seams.len());
    for (lining, shell) in lined.draft.seams.iter().zip(&shell.seams) {
        assert_eq!((&lining.name, lining.ease), (&shell.name, shell.ease));
        close(lining.walk.difference, shell.ease, 0.5);
        let shorter = shell.walk.length - lining.walk.length;
        assert!((60.0..75.0).contains(&shorter), "{}: {shorter}", shell.name);
    }
    for (index, one) in lined.linings.iter().enumerate() {
        assert_eq!(one.piece, shell.pieces[index].name());
        assert_eq!(one.lined.piece, lined.draft.pieces[index]);
        close(
            one.lined.piece.bounds().width() - shell.pieces[index].bounds().width(),
            3.0 - 25.0 * 30.0 / 400.0,
            0.05,
        );
        let hem = one
            .lined
            .piece
            .edges()
            .iter()
            .find(|edge| edge.name.starts_with("hem"));
        assert_eq!(hem.map(|hem| hem.allowance), Some(20.0));
    }
    // Some of the pieces: seams to those that are not lined are left out.
    let front = DraftLining {
        pieces: vec!["skirt front".into()],
        ..asked.clone()
    };
    let front = shell.lining(&front).unwrap();
    assert_eq!((front.linings.len(), front.draft.seams.len()), (1, 0));
    // Facings of two depths do not meet at the side.
    let uneven = DraftLining {
        facings: vec![
            by("skirt front", "waist", 40.0),
            by("skirt back", "waist", 60.0),
        ],
        ..asked.clone()
    };
    let error = shell.lining(&uneven).unwrap_err();
    let side = shell.seams.iter().position(|seam| seam.name == "side");
    assert_eq!(
        (
            error.kind(),
            error.argument(),
            error.at().map(|at| at as usize)
        ),
        (ErrorKind::OutOfRange, "seam", side)
    );
    let nowhere = |facings: Vec<NamedBy>, pieces: Vec<String>| {
        let asked = DraftLining {
            facings,
            pieces,
            ..asked.clone()
        };
        let error = shell.lining(&asked).unwrap_err();
        (error.kind(), error.argument(), error.at())
    };
    let none = NoSolution;
    let (good, bad) = (by("", "waist", 40.0), by("", "neck", 40.0));
    assert_eq!(
        nowhere(vec![good.clone(), bad], Vec::new()),
        (none, "facings", Some(1))
    );
    assert_eq!(
        nowhere(vec![good], vec!["sleeve".into()]),
        (none, "pieces", Some(0))
    );
    // Of the back nothing would be left.
    let deep = vec![by("skirt back", "waist", 900.0)];
    assert_eq!(nowhere(deep, Vec::new()), (none, "by", Some(1)));
}

// By hand. A quarter of the waist is 180; at least 1 is left of a back's.
#[test]
fn a_front_that_takes_all_of_the_back_is_refused() {
    let skirt = DartedSkirt {
        forward: 190.0,
        ..samples::darted_skirt()
    };
    let error = fails(skirt.draft(), NoSolution, "forward");
    assert!(error.max() <= 179.0, "{error}");
}
