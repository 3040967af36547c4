//! Proofs that pieces which each have a place have none together, worked by hand.

use recloth_lay::{Options, Panel, Part, Shortage, Together, fit};

fn rectangle(width: f64, height: f64) -> [(f64, f64); 4] {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
}

fn cloth(name: &str, width: f64, height: f64) -> Panel {
    Panel::new(name, rectangle(width, height)).expect("a good panel")
}

/// So many pieces of one outline.
fn some(as_drawn: u32, outline: &[(f64, f64)]) -> Part {
    Part {
        as_drawn,
        ..Part::new("piece", outline.iter().copied())
    }
}

fn together(parts: &[Part], panels: &[Panel], spacing: f64) -> Together {
    let options = Options {
        spacing,
        budget: 3_000_000,
        ..Options::default()
    };
    fit(parts, panels, &options).expect("good input").together
}

/// The panels, pieces, room needed and room there of a row that is too long, and whether it runs across the grain.
fn row(together: Together) -> (Vec<usize>, u32, f64, f64, bool) {
    match together {
        Together::Cannot(Shortage::Across {
            panels,
            pieces,
            needed,
            there,
        }) => (panels, pieces, needed, there, true),
        Together::Cannot(Shortage::Along {
            panels,
            pieces,
            needed,
            there,
        }) => (panels, pieces, needed, there, false),
        other => panic!("{other:?}"),
    }
}

fn near(found: f64, worked: f64) -> bool {
    (found - worked).abs() < 0.01
}

#[test]
fn bands_over_half_as_long_as_the_cloth_lie_side_by_side() {
    // Five of 100 need 500 and the cloth is 480 wide, though 0.73 of its area would do: no two lie one after the other,
    // 2 x 700 > 1000.
    let panels = [cloth("back", 480.0, 1000.0)];
    let bands = |count: u32, width: f64| [some(count, &rectangle(width, 700.0))];
    let (on, pieces, needed, there, across) = row(together(&bands(5, 100.0), &panels, 0.0));
    assert_eq!((on, pieces, there, across), (vec![0], 5, 480.0, true));
    assert!(near(needed, 500.0), "{needed}");
    assert_eq!(together(&bands(4, 120.0), &panels, 0.0), Together::Fit);
    // Four of 118 are 472, with three spaces of 4 between them 484.
    let (_, pieces, needed, ..) = row(together(&bands(4, 118.0), &panels, 4.0));
    assert!(pieces == 4 && near(needed, 484.0), "{needed}");
    assert_eq!(together(&bands(4, 117.0), &panels, 4.0), Together::Fit);
}

#[test]
fn bands_over_half_as_wide_as_the_cloth_lie_one_after_the_other() {
    let panels = [cloth("back", 1000.0, 480.0)];
    let (on, pieces, needed, there, across) =
        row(together(&[some(5, &rectangle(700.0, 100.0))], &panels, 0.0));
    assert_eq!((on, pieces, there, across), (vec![0], 5, 480.0, false));
    assert!(near(needed, 500.0), "{needed}");
}

#[test]
fn pieces_of_several_kinds_on_several_panels_are_counted_together() {
    // On panels 300 and 180 wide, both 1000 long: two of 120 by 600 and three of 90 by 510 need 510 of 480. A pocket that
    // passes no middle is not among them.
    let panels = [cloth("left", 300.0, 1000.0), cloth("right", 180.0, 1000.0)];
    let pocket = some(1, &rectangle(50.0, 50.0));
    let parts = [
        some(2, &rectangle(120.0, 600.0)),
        some(3, &rectangle(90.0, 510.0)),
        pocket.clone(),
    ];
    let (on, pieces, needed, there, across) = row(together(&parts, &panels, 0.0));
    assert_eq!((on, pieces, there, across), (vec![0, 1], 5, 480.0, true));
    assert!(near(needed, 510.0), "{needed}");
    // A wide piece that goes on the left only makes no difference to the right.
    let parts = [
        some(1, &rectangle(190.0, 600.0)),
        some(2, &rectangle(90.0, 510.0)),
        pocket,
    ];
    assert_eq!(together(&parts, &panels, 0.0), Together::Fit);
}

#[test]
fn a_gore_counts_as_wide_as_it_is_over_the_length_that_passes_the_middle() {
    // 200 wide at the hem, 100 at the waist, 700 long: over the lowest 500 it is at least 200 - 100 x 5/7 = 128.57 wide.
    let gore = [(0.0, 0.0), (200.0, 0.0), (150.0, 700.0), (50.0, 700.0)];
    let (_, pieces, needed, there, _) = row(together(
        &[some(4, &gore)],
        &[cloth("back", 514.0, 1000.0)],
        0.0,
    ));
    assert_eq!((pieces, there), (4, 514.0));
    assert!(near(needed, 4.0 * (200.0 - 500.0 / 7.0)), "{needed}");
    // Head to foot four take (200 + 100) / 2 each and half a gore's slant at either end.
    assert_eq!(
        together(&[some(4, &gore)], &[cloth("back", 650.0, 1000.0)], 0.0),
        Together::Fit
    );
}

#[test]
fn what_may_be_tilted_counts_for_less() {
    // Tilted by up to 2 degrees, a band 100 wide is at least 100 - 500 sin 2° = 82.55 wide over the 500 that pass the middle.
    let panels = [cloth("back", 480.0, 1000.0)];
    let bands = |count: u32, tilt_deg: f64| Part {
        tilt_deg,
        ..some(count, &rectangle(100.0, 900.0))
    };
    let (_, pieces, needed, ..) = row(together(&[bands(5, 0.0)], &panels, 0.0));
    assert!(pieces == 5 && near(needed, 500.0), "{needed}");
    assert_eq!(
        together(&[bands(5, 2.0)], &panels, 0.0),
        Together::Undecided
    );
    // 5 x (100 - 575 sin 2°) = 399.7; by area there is enough.
    let narrow = [cloth("back", 395.0, 1150.0)];
    let sine = libm::sin(2.0_f64.to_radians());
    let (_, pieces, needed, ..) = row(together(&[bands(5, 2.0)], &narrow, 0.0));
    assert!(
        pieces == 5 && near(needed, 5.0 * (100.0 - 575.0 * sine)),
        "{needed}"
    );
    // Nothing is said of what may also lie across.
    let either = Part {
        crosswise: true,
        ..some(5, &rectangle(100.0, 700.0))
    };
    assert_eq!(together(&[either], &panels, 0.0), Together::Undecided);
}

#[test]
fn two_pieces_with_room_neither_side_by_side_nor_one_after_the_other_share_no_panel() {
    // 700 + 350 > 1000 and 400 + 650 > 1000, with half the area to spare.
    let pair = [
        some(1, &rectangle(700.0, 400.0)),
        some(1, &rectangle(350.0, 650.0)),
    ];
    let panel = || cloth("back", 1000.0, 1000.0);
    assert_eq!(
        together(&pair, &[panel()], 0.0),
        Together::Cannot(Shortage::TooFew {
            pieces: 2,
            taken: 1
        })
    );
    assert_eq!(together(&pair, &[panel(), panel()], 0.0), Together::Fit);
    // 10 longer each, and tilted by up to 3 degrees, they hold (700 - 410 sin 3°) / cos² 3° = 680.4 and 316.3 across the
    // grain: 996.7, which is no proof.
    let tilted = [(700.0, 410.0), (350.0, 660.0)].map(|(width, height)| Part {
        tilt_deg: 3.0,
        ..some(1, &rectangle(width, height))
    });
    assert!(!matches!(
        together(&tilted, &[panel()], 0.0),
        Together::Cannot(_)
    ));
    let less = [some(1, &rectangle(700.0, 350.0)), pair[1].clone()];
    assert_eq!(together(&less, &[panel()], 0.0), Together::Fit);
    // 5 mm between them do not go into the nothing that is left.
    assert!(matches!(
        together(&less, &[panel()], 5.0),
        Together::Cannot(_)
    ));
}

#[test]
fn a_flaw_at_the_edge_and_two_that_overlap_take_what_they_cover() {
    use recloth_lay::Flaw;
    // 400 by 500, less a flaw of 100 by 100 half of which lies beyond the edge, and two of 100 by 100 that share a quarter:
    // 200 000 - 5000 - 17 500 = 177 500.
    let square = |x: f64, y: f64| {
        let corners = [
            (x, y),
            (x + 100.0, y),
            (x + 100.0, y + 100.0),
            (x, y + 100.0),
        ];
        Flaw::new(corners, 0.0)
    };
    let flaws = vec![
        square(-50.0, 200.0),
        square(200.0, 200.0),
        square(250.0, 250.0),
    ];
    let panels = [cloth("back", 400.0, 500.0)
        .with_flaws(flaws)
        .expect("good flaws")];
    let small = |count: u32| [some(count, &rectangle(10.0, 25.0))];
    let Together::Cannot(Shortage::Area { there_mm2, .. }) = together(&small(711), &panels, 0.0)
    else {
        panic!()
    };
    assert!(near(there_mm2, 177_500.0), "{there_mm2}");
    assert!(!matches!(
        together(&small(710), &panels, 0.0),
        Together::Cannot(_)
    ));
}
