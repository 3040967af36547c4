//! Panels with a repeat: what fit says and gives, and that it never gives what the checker refuses.

use recloth_lay::{
    Change, Give, MatchPoint, MatchSide, Needed, Options, Outward, Panel, Part, Repeat, Shortage,
    Together, check, fit, least_change, longest,
};

fn rectangle(width: f64, height: f64) -> [(f64, f64); 4] {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
}

fn panel(name: &str, width: f64, height: f64, repeat: Repeat) -> Panel {
    Panel::new(name, rectangle(width, height))
        .and_then(|panel| panel.with_repeat(Some(repeat)))
        .expect("a good panel")
}

fn quick() -> Options {
    Options {
        budget: 10_000_000,
        ..Options::default()
    }
}

/// A front and a back of an invented skirt, their hips 200 and 150 up.
fn skirt() -> Vec<Part> {
    vec![
        Part::new("front", rectangle(200.0, 300.0)).matching("hip", (200.0, 200.0)),
        Part::new("back", rectangle(180.0, 250.0)).matching("hip", (0.0, 150.0)),
    ]
}

#[test]
fn pieces_of_two_panels_match() {
    let parts = skirt();
    let check_of = |x: f64, y: f64| Repeat::new(80.0, 60.0).beginning_at((x, y));
    let panels = [
        panel("left", 330.0, 350.0, check_of(13.0, 7.0)),
        panel("right", 350.0, 330.0, check_of(40.0, 55.0))
            .with_grain_deg(0.0)
            .unwrap(),
    ];
    let found = fit(&parts, &panels, &quick()).unwrap();
    assert_eq!(found.together, Together::Fit);
    assert_eq!(check(&parts, &panels, &found.lay), Ok(()));
    let spoilt = [
        panels[0].clone(),
        panel("right", 350.0, 330.0, check_of(41.0, 55.0))
            .with_grain_deg(0.0)
            .unwrap(),
    ];
    assert!(check(&parts, &spoilt, &found.lay).is_err());
}

#[test]
fn the_room_decides() {
    // The hips are 50 apart: side by side one lies 50 up, or the other 30. That takes 330 of cloth, and 329.9 will not do.
    let parts = skirt();
    let on = |height: f64| {
        let panels = [panel("cloth", 380.0, height, Repeat::new(80.0, 0.0))];
        let found = fit(&parts, &panels, &quick()).unwrap();
        assert_eq!(check(&parts, &panels, &found.lay), Ok(()));
        (found.together, found.lay.placements.len())
    };
    // 250 + 50 is 300: the front at the foot, the back 50 up.
    assert_eq!(on(300.0), (Together::Fit, 2));
    assert_eq!(on(299.95).1, 1);
}

#[test]
fn grain_may_run_at_any_angle() {
    let parts = skirt();
    for grain_deg in [0.0, 30.0, 117.0, -45.0, 180.0] {
        let repeat = Repeat::new(80.0, 60.0).beginning_at((3.0, 4.0));
        let panels = [panel("scrap", 900.0, 900.0, repeat)
            .with_grain_deg(grain_deg)
            .unwrap()];
        let found = fit(&parts, &panels, &quick()).unwrap();
        assert_eq!(found.together, Together::Fit, "{grain_deg}");
        assert_eq!(check(&parts, &panels, &found.lay), Ok(()), "{grain_deg}");
    }
}

#[test]
fn points_that_never_match_are_a_proof() {
    // Hip and hem are 180 apart on the front, 140 on the back: 40 off on a repeat of 80, none on one of 40.
    let [front, back] = [0, 1].map(|part| skirt()[part].clone());
    let parts = [
        front.matching("hem", (200.0, 20.0)),
        back.matching("hem", (0.0, 10.0)),
    ];
    let on = |along: f64| [panel("cloth", 900.0, 900.0, Repeat::new(along, 0.0))];
    let found = fit(&parts, &on(80.0), &quick()).unwrap();
    let Together::Cannot(Shortage::Unmatched {
        part,
        other,
        across,
        off,
        repeat,
        ..
    }) = found.together
    else {
        panic!("{:?}", found.together)
    };
    assert_eq!(
        (part.min(other), part.max(other), across, repeat),
        (0, 1, false, 80.0)
    );
    assert!((off - 40.0).abs() < 1e-9);
    // What is placed matches.
    assert_eq!(check(&parts, &on(80.0), &found.lay), Ok(()));
    assert_eq!(found.lay.placements.len(), 1);
    assert_eq!(
        fit(&parts, &on(40.0), &quick()).unwrap().together,
        Together::Fit
    );
    // Of a part that may be tilted nothing is proved, nor where a plain panel is there, which takes both.
    let tilted = parts.clone().map(|part| Part {
        tilt_deg: 3.0,
        ..part
    });
    let found = fit(&tilted, &on(80.0), &quick()).unwrap();
    assert!(!matches!(found.together, Together::Cannot(_)));
    let plain = Panel::new("plain", rectangle(900.0, 900.0)).unwrap();
    let panels = [on(80.0)[0].clone(), plain];
    assert_eq!(
        fit(&parts, &panels, &quick()).unwrap().together,
        Together::Fit
    );
}

#[test]
fn panels_of_other_repeats_take_pieces_that_do_not_match() {
    // Each takes one piece: front and back cannot match on two repeats, so one is left; a pocket is not asked.
    let mut parts = skirt();
    parts.push(Part::new("pocket", rectangle(150.0, 150.0)));
    let panels = [
        panel("checked", 210.0, 310.0, Repeat::new(80.0, 0.0)),
        panel("striped", 210.0, 310.0, Repeat::new(70.0, 0.0)),
    ];
    let found = fit(&parts, &panels, &quick()).unwrap();
    assert_eq!(check(&parts, &panels, &found.lay), Ok(()));
    assert_ne!(found.together, Together::Fit);
    assert_eq!(found.lay.placements.len(), 2);
}

#[test]
fn the_same_seed_gives_the_same_lay_whatever_the_threads() {
    let parts: Vec<Part> = (skirt().into_iter())
        .map(|part| Part {
            mirrored: 1,
            ..part
        })
        .collect();
    let panels = [panel("cloth", 520.0, 640.0, Repeat::new(80.0, 60.0))];
    let by = |threads| {
        let options = Options { threads, ..quick() };
        fit(&parts, &panels, &options).unwrap()
    };
    let found = by(1);
    assert_eq!(found, by(2));
    assert_eq!(check(&parts, &panels, &found.lay), Ok(()));
    assert!(found.lay.placements.len() >= 3);
}

#[test]
fn a_repeat_with_nothing_to_match_changes_nothing() {
    let parts: Vec<Part> = (skirt().into_iter())
        .map(|part| Part {
            matches: Vec::new(),
            as_drawn: 3,
            ..part
        })
        .collect();
    let plain = [Panel::new("cloth", rectangle(600.0, 700.0)).unwrap()];
    let checked = [panel("cloth", 600.0, 700.0, Repeat::new(80.0, 60.0))];
    assert_eq!(
        fit(&parts, &checked, &quick()).unwrap(),
        fit(&parts, &plain, &quick()).unwrap()
    );
}

#[test]
fn what_must_give_and_how_long_it_may_be_match_too() {
    let parts = skirt();
    let panels = [panel("cloth", 380.0, 299.0, Repeat::new(80.0, 0.0))];
    // 300 is needed. The front gives 10 at the hem, below its hip: 290, and its hip 190 up, 40 over 150: 290 again, as the
    // back then lies 40 up, or the front 40 lower, which is all the same to the checker.
    let shorter = Change {
        part: 0,
        kind: Give::Shorter {
            toward_deg: -90.0,
            beyond: -100.0,
            most: 60.0,
        },
    };
    let found = least_change(&parts, &panels, &[shorter], &quick()).unwrap();
    let Needed::Changed {
        parts: changed,
        fit,
        ..
    } = found.answer
    else {
        panic!("{:?}", found.answer)
    };
    assert_eq!(check(&changed, &panels, &fit.lay), Ok(()));
    assert!(fit.lay.unplaced.is_empty());
    let outward = Outward {
        part: 0,
        beyond: 250.0,
        most: 200.0,
        opposite: false,
    };
    let panels = [panel("cloth", 380.0, 400.0, Repeat::new(80.0, 0.0))];
    let found = longest(&parts, outward, &panels, &quick()).unwrap();
    // The front grows at its top, beyond the hip: to 400, and the back lies 50 up beside it.
    let fit = found.fit.expect("it fits as it is");
    assert_eq!(check(&found.parts, &panels, &fit.lay), Ok(()));
    assert_eq!(found.value, Some(100.0));
}

/// Steele, Lea and Flood's SplitMix64 (2014), for random cloth.
fn chance(state: &mut u64) -> f64 {
    *state = state.wrapping_add(0x9e37_79b9_7f4a_7c15);
    let mut z = *state;
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    (z >> 11) as f64 / (1_u64 << 53) as f64
}

#[test]
fn whatever_is_given_no_lay_is_refused() {
    let mut state = 7;
    let mut laid = 0;
    for _ in 0..40 {
        let mut any = |low: f64, high: f64| low + (high - low) * chance(&mut state);
        let sides = [
            MatchSide::Own,
            MatchSide::Other,
            MatchSide::Both,
            MatchSide::Level,
        ];
        let parts: Vec<Part> = (0..4)
            .map(|index| {
                let (wide, high) = (any(60.0, 200.0), any(60.0, 200.0));
                let matches = (0..any(0.0, 3.0) as usize)
                    .map(|_| MatchPoint {
                        name: ["hip", "hem", "waist"][any(0.0, 3.0) as usize].into(),
                        at: (any(0.0, wide), any(0.0, high)).into(),
                        side: sides[any(0.0, 4.0) as usize],
                    })
                    .collect();
                Part {
                    grain_deg: any(-180.0, 180.0),
                    tilt_deg: [0.0, 0.0, 4.0, 60.0][any(0.0, 4.0) as usize],
                    mirrored: any(0.0, 2.0) as u32,
                    crosswise: any(0.0, 1.0) < 0.3,
                    either_way: any(0.0, 1.0) < 0.3,
                    matches,
                    ..Part::new(format!("part {index}"), rectangle(wide, high))
                }
            })
            .collect();
        let panels: Vec<Panel> = (0..2)
            .map(|index| {
                let repeat = Repeat::new([80.0, 0.0][index], any(20.0, 90.0))
                    .beginning_at((any(-90.0, 90.0), any(-90.0, 90.0)));
                panel(
                    ["a", "b"][index],
                    any(300.0, 600.0),
                    any(300.0, 600.0),
                    repeat,
                )
                .with_grain_deg(any(-180.0, 180.0))
                .unwrap()
                .with_nap(any(0.0, 1.0) < 0.3)
            })
            .collect();
        let options = Options {
            budget: 400_000,
            ..quick()
        };
        let found = fit(&parts, &panels, &options).unwrap();
        assert_eq!(check(&parts, &panels, &found.lay), Ok(()));
        laid += found.lay.placements.len();
    }
    assert!(laid > 100, "{laid}");
}
