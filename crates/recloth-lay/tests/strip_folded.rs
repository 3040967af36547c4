//! Cloth by the length, cut folded.

use std::ops::ControlFlow;

use kurbo::{Point, Vec2};
use recloth::ErrorKind;
use recloth_lay::{
    Faces, Hand, Part, Placement, Shows, Strip, StripLay, StripOptions, check, placed, strip,
    strip_with,
};

fn rectangle(width: f64, height: f64) -> [(f64, f64); 4] {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
}

/// So wide to both sides of its fold together, so long.
fn on_fold(name: &str, width: f64, length: f64) -> Part {
    let half = rectangle(width / 2.0, length);
    Part::on_fold(name, half, (0.0, 0.0), (0.0, length)).expect("a good half")
}

fn folded(width: f64) -> Strip {
    Strip {
        folded: true,
        ..Strip::new(width)
    }
}

fn quick() -> StripOptions {
    StripOptions {
        budget: 1_000_000,
        ..StripOptions::default()
    }
}

/// What was found, proved again on the cloth folded.
fn laid(parts: &[Part], cloth: &Strip, options: &StripOptions) -> StripLay {
    let found = strip(parts, cloth, options).unwrap_or_else(|error| panic!("{error}"));
    let panel = cloth.panel(found.length).expect("a panel");
    assert_eq!(check(parts, &[panel], &found.lay), Ok(()));
    assert_eq!(found.lay.folds.len(), 1);
    found
}

/// An invented skirt and waistcoat: a skirt front on the fold, backs in a pair, a band on the fold, an odd pocket, a collar of
/// two alike.
fn garment() -> Vec<Part> {
    let half = [(0.0, 0.0), (260.0, 20.0), (190.0, 640.0), (0.0, 620.0)];
    let back = [(0.0, 0.0), (300.0, 0.0), (230.0, 640.0), (0.0, 630.0)];
    let collar = [
        (0.0, 0.0),
        (400.0, 0.0),
        (410.0, 80.0),
        (200.0, 60.0),
        (-10.0, 80.0),
    ];
    vec![
        Part::on_fold("front", half, (0.0, 0.0), (0.0, 620.0)).expect("a good half"),
        Part {
            mirrored: 1,
            tilt_deg: 2.0,
            ..Part::new("back", back)
        },
        on_fold("band", 76.0, 380.0),
        Part::new("pocket", rectangle(150.0, 170.0)),
        Part {
            as_drawn: 2,
            shows: Shows::Either,
            ..Part::new("collar", collar)
        },
    ]
}

#[test]
fn a_front_on_the_fold_lies_beside_a_pair_of_backs() {
    // Half of the front and a back are 300 + 280 across, and the layer is 590: all lie on 700, as opened too.
    let parts = [
        on_fold("front", 600.0, 700.0),
        Part {
            mirrored: 1,
            ..Part::new("back", rectangle(280.0, 700.0))
        },
    ];
    let found = laid(&parts, &folded(1180.0), &quick());
    assert!((found.length - 700.0).abs() < 1e-6, "{}", found.length);
    // 600 × 700 and twice 280 × 700 of 1180 × 700.
    assert!((found.density - 1160.0 / 1180.0).abs() < 1e-9);
    let [front, back, twin] = found.lay.placements[..] else {
        panic!("three pieces")
    };
    assert_eq!([front.part, back.part, twin.part], [0, 1, 1]);
    assert!(back.hand != twin.hand && !back.face_down() && !twin.face_down());
    // The fold of the front lies at half the width.
    let ends = placed(&parts[0].fold.unwrap(), &front);
    assert!(ends.iter().all(|p| (p.y - 590.0).abs() < 1e-7));
    // What is cut folded could be cut opened.
    let mut opened = found.lay.clone();
    opened.folds.clear();
    let panel = Strip::new(1180.0).panel(found.length).unwrap();
    assert_eq!(check(&parts, &[panel], &opened), Ok(()));
}

#[test]
fn an_odd_piece_takes_both_layers() {
    // Three of one hand, each 190 to 200 across: on layers of 305 one after the other, though opened all three lie side by side.
    let parts = [Part {
        as_drawn: 3,
        ..Part::new(
            "panel",
            [(0.0, 0.0), (200.0, 0.0), (190.0, 500.0), (0.0, 500.0)],
        )
    }];
    let found = laid(&parts, &folded(610.0), &quick());
    assert!(
        (found.length - 1500.0).abs() < 1e-3 * 1500.0,
        "{}",
        found.length
    );
    assert!(found.length > 1500.0 - 1e-6);
    let opened = strip(&parts, &Strip::new(610.0), &quick()).unwrap();
    assert!(opened.length < 505.0);
    // Of two-faced cloth two of them are a pair, one of which lies face down.
    let two_faced = Strip {
        faces: Faces::Two,
        ..folded(610.0)
    };
    let found = laid(&parts, &two_faced, &quick());
    assert!(found.length < 1005.0);
    let down = found.lay.placements.iter().filter(|at| at.face_down());
    assert_eq!(down.count(), 1);
    // So they are where either side may show.
    let either = [Part {
        shows: Shows::Either,
        ..parts[0].clone()
    }];
    assert!(laid(&either, &folded(610.0), &quick()).length < 1005.0);
}

#[test]
fn two_alike_are_a_pair_where_the_mirror_image_is_the_same() {
    let alike = |part: Part| {
        [Part {
            as_drawn: 4,
            ..part
        }]
    };
    let takes = |part: Part, cloth: Strip| laid(&alike(part), &cloth, &quick()).length;
    // Each 200 across: on a layer of 305 two pairs one after the other, not four singles.
    let band = Part::new("band", rectangle(200.0, 500.0));
    assert!(takes(band.clone(), folded(610.0)) < 1005.0);
    let found = laid(&alike(band.clone()), &folded(610.0), &quick());
    assert!(found.lay.placements.iter().all(|at| !at.face_down()));
    // Not where the grain is askew, or the seam line has no mirror image.
    let askew = Part {
        grain_deg: 85.0,
        ..band.clone()
    };
    assert!(takes(askew, folded(610.0)) > 2000.0 - 1e-6);
    let seam = [(10.0, 10.0), (180.0, 10.0), (190.0, 490.0), (10.0, 490.0)];
    let sewn = Part {
        seam: seam.map(Point::from).into(),
        ..band
    };
    assert!(takes(sewn, folded(610.0)) > 2000.0 - 1e-6);
    // Its own mirror image about a line square to the grain: where there is a nap, the image points against it.
    let flag = Part::new(
        "flag",
        [
            (0.0, 0.0),
            (290.0, 0.0),
            (250.0, 250.0),
            (290.0, 500.0),
            (0.0, 500.0),
        ],
    );
    assert!(takes(flag.clone(), folded(610.0)) < 1005.0);
    let velvet = Strip {
        nap: true,
        ..folded(610.0)
    };
    assert!(takes(flag.clone(), velvet) > 1500.0);
    let either_way = Part {
        either_way: true,
        ..flag
    };
    assert!(takes(either_way, velvet) < 1005.0);
}

#[test]
fn all_sorts_of_pieces_are_laid_folded() {
    let parts = garment();
    let found = laid(&parts, &folded(1400.0), &quick());
    let count = |part: usize| {
        (found.lay.placements.iter())
            .filter(|at| at.part == part)
            .count()
    };
    assert_eq!(
        [count(0), count(1), count(2), count(3), count(4)],
        [1, 2, 1, 1, 2]
    );
    let area: f64 = 2.0 * (260.0 * 640.0 + 190.0 * 620.0 - 190.0 * 20.0) / 2.0
        + 2.0 * (300.0 * 640.0 + 230.0 * 630.0) / 2.0
        + 76.0 * 380.0
        + 150.0 * 170.0
        // The collar by its corners, half the sum of x₁y₂ - x₂y₁.
        + 2.0 * (400.0 * 80.0 + (410.0 * 60.0 - 200.0 * 80.0) + (200.0 * 80.0 + 10.0 * 60.0)) / 2.0;
    assert!((found.density - area / (1400.0 * found.length)).abs() < 1e-12);
    // A strip any shorter does not hold it.
    let panel = folded(1400.0).panel(found.length - 0.01).unwrap();
    assert!(check(&parts, &[panel], &found.lay).is_err());
}

#[test]
fn spacing_is_kept_and_half_of_it_from_the_fold() {
    let options = StripOptions {
        spacing: 9.0,
        ..quick()
    };
    let parts = garment();
    let found = laid(&parts, &folded(1400.0), &options);
    for at in found
        .lay
        .placements
        .iter()
        .filter(|at| parts[at.part].fold.is_none())
    {
        let outline = placed(&parts[at.part].outline, at);
        let near = outline
            .iter()
            .map(|p| (p.y - 700.0).abs())
            .fold(f64::INFINITY, f64::min);
        assert!(near > 4.5 - 1e-6, "{near}");
    }
}

#[test]
fn the_lay_depends_on_seed_and_budget_alone() {
    let (parts, cloth) = (garment(), folded(1400.0));
    let by = |threads, seed| {
        let options = StripOptions {
            threads,
            seed,
            budget: 200_000,
            ..quick()
        };
        laid(&parts, &cloth, &options)
    };
    let one = by(1, 1);
    assert_eq!(one, by(2, 1));
    assert_eq!(one, by(7, 1));
    assert_ne!(one.lay, by(1, 2).lay);
}

#[test]
fn a_lay_without_a_search_is_right_too() {
    let none = StripOptions {
        budget: 0,
        ..quick()
    };
    for spacing in [0.0, 12.0] {
        let none = StripOptions { spacing, ..none };
        laid(&garment(), &folded(1400.0), &none);
        // Without a piece on the fold the pieces lie against each other, not in rows.
        let pairs = [
            Part {
                as_drawn: 3,
                mirrored: 3,
                ..Part::new("wedge", [(0.0, 0.0), (300.0, 0.0), (0.0, 400.0)])
            },
            Part {
                as_drawn: 2,
                shows: Shows::Either,
                ..Part::new("pocket", rectangle(90.0, 100.0))
            },
        ];
        laid(&pairs, &folded(700.0), &none);
    }
    // A search that is stopped at once.
    let (parts, cloth) = (garment(), folded(1400.0));
    let found = strip_with(&parts, &cloth, &quick(), |_| ControlFlow::Break(())).unwrap();
    let panel = cloth.panel(found.length).unwrap();
    assert_eq!(check(&parts, &[panel], &found.lay), Ok(()));
}

#[test]
fn a_piece_as_wide_as_the_cloth_lies_on_the_fold_and_no_wider() {
    let front = [on_fold("front", 600.0, 700.0)];
    let found = laid(&front, &folded(600.0), &quick());
    assert!((found.length - 700.0).abs() < 1e-6);
    let error = strip(&front, &folded(599.99), &quick()).unwrap_err();
    assert_eq!(error.of(), "part \"front\" on the folded strip");
    let error = error.error();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::NoSolution, "width")
    );
    assert!((error.min() - 600.0).abs() < 1e-9);
}

#[test]
fn what_fits_opened_only_says_so() {
    let back = [Part {
        mirrored: 1,
        ..Part::new("back", rectangle(500.0, 700.0))
    }];
    for (spacing, least) in [(0.0, 1000.0), (10.0, 1010.0)] {
        let options = StripOptions { spacing, ..quick() };
        let error = strip(&back, &folded(990.0), &options).unwrap_err();
        assert_eq!(
            error.of(),
            "part \"back\" on the folded strip, though it fits opened"
        );
        assert!((error.error().min() - least).abs() < 1e-9);
        // The width that is named will do, and no less.
        assert!(strip(&back, &folded(least - 0.01), &options).is_err());
        laid(&back, &folded(error.error().min()), &options);
    }
    let error = strip(&back, &folded(490.0), &quick()).unwrap_err();
    assert_eq!(error.of(), "part \"back\" on the folded strip");
    assert!(strip(&back, &Strip::new(990.0), &quick()).is_ok());
}

#[test]
fn the_grain_must_run_along_the_fold() {
    // The grain lies 3 degrees off the fold.
    let with = |tilt_deg: f64, grain_deg: f64| {
        [Part {
            grain_deg,
            tilt_deg,
            ..on_fold("front", 400.0, 600.0)
        }]
    };
    laid(&with(3.0, 93.0), &folded(500.0), &quick());
    let error = strip(&with(2.9, 93.0), &folded(500.0), &quick()).unwrap_err();
    assert_eq!(
        error.of(),
        "part \"front\" on the folded strip: grain off its fold (deg)"
    );
    let error = error.error();
    assert_eq!(
        (error.kind(), error.argument(), error.max()),
        (ErrorKind::NoSolution, "fold", 2.9)
    );
    assert!((error.value() - 3.0).abs() < 1e-9);
    // A grain across the fold will do where it may lie across.
    assert!(strip(&with(0.0, 0.0), &folded(500.0), &quick()).is_err());
    let across = with(0.0, 0.0).map(|part| Part {
        crosswise: true,
        ..part
    });
    laid(&across, &folded(500.0), &quick());
    // Opened, all of this is as it was.
    assert!(strip(&with(0.0, 93.0), &Strip::new(500.0), &quick()).is_ok());
}

#[test]
fn on_napped_cloth_no_piece_on_the_fold_is_turned_end_for_end() {
    // Two wedges that would lie head to tail.
    let wedge = |either_way| {
        let half = [(0.0, 0.0), (200.0, 0.0), (20.0, 600.0), (0.0, 600.0)];
        [Part {
            as_drawn: 1,
            mirrored: 1,
            either_way,
            ..Part::on_fold("wedge", half, (0.0, 0.0), (0.0, 600.0)).expect("a good half")
        }]
    };
    let velvet = Strip {
        nap: true,
        ..folded(440.0)
    };
    let turns = |parts: &[Part]| -> Vec<f64> {
        let found = laid(parts, &velvet, &quick());
        found.lay.placements.iter().map(|at| at.turn_deg).collect()
    };
    let one_way = turns(&wedge(false));
    assert!(
        one_way.iter().all(|turn| (turn + 90.0).abs() < 1e-9),
        "{one_way:?}"
    );
    turns(&wedge(true));
}

#[test]
fn many_that_may_lie_on_the_fold_are_cut_in_pairs_instead() {
    // Five gores of 420 by 800: on the fold alone they would take five lengths. A pair lies beside another pair on a layer of
    // 900, so one on the fold and two pairs take two lengths at most.
    for hands in [(5, 0), (3, 2), (0, 5)] {
        let gores = [Part {
            as_drawn: hands.0,
            mirrored: hands.1,
            ..on_fold("gore", 420.0, 800.0)
        }];
        let found = laid(&gores, &folded(1800.0), &quick());
        assert!(found.length < 1610.0, "{}", found.length);
        assert_eq!(found.lay.placements.len(), 5);
    }
}

#[test]
fn a_fold_that_lies_askew_on_the_page_is_laid_all_the_same() {
    // Pairs of two alike, of either hand, and of both.
    for (turn, mirrored, hands) in [
        (0.3, false, [5, 0]),
        (1.9, true, [0, 5]),
        (4.4, false, [3, 2]),
    ] {
        let (sin, cos) = libm::sincos(turn);
        let at = |x: f64, y: f64| {
            let x = if mirrored { -x } else { x };
            Point::new(cos * x - sin * y + 350.0, sin * x + cos * y - 90.0)
        };
        let half = [
            at(0.0, 0.0),
            at(200.0, 30.0),
            at(120.0, 700.0),
            at(0.0, 640.0),
        ];
        let front = Part {
            grain_deg: (turn + std::f64::consts::FRAC_PI_2) * 180.0 / std::f64::consts::PI,
            as_drawn: hands[0],
            mirrored: hands[1],
            ..Part::on_fold("front", half, at(0.0, 0.0), at(0.0, 640.0)).unwrap()
        };
        let found = laid(core::slice::from_ref(&front), &folded(900.0), &quick());
        assert!(found.length < 2100.0, "{}", found.length);
        let either = Strip {
            faces: Faces::Two,
            ..folded(900.0)
        };
        laid(&[front], &either, &quick());
    }
}

#[test]
fn opened_cloth_takes_no_notice_of_folds() {
    let parts = garment();
    let without: Vec<Part> = (parts.iter().cloned())
        .map(|part| Part { fold: None, ..part })
        .collect();
    let cloth = Strip::new(1400.0);
    let found = strip(&parts, &cloth, &quick()).unwrap();
    assert_eq!(found, strip(&without, &cloth, &quick()).unwrap());
    assert!(found.lay.folds.is_empty());
}

#[test]
fn nothing_to_lay_takes_no_cloth() {
    let none = [Part {
        as_drawn: 0,
        ..on_fold("none", 10.0, 10.0)
    }];
    for parts in [&none[..], &[]] {
        let found = strip(parts, &folded(100.0), &quick()).unwrap();
        assert_eq!(
            (found.length, found.density, found.evaluations),
            (0.0, 0.0, 0)
        );
        assert!(found.lay.placements.is_empty() && found.lay.folds.is_empty());
    }
}

#[test]
fn two_hundred_pieces_are_laid() {
    let parts = [
        Part {
            as_drawn: 60,
            mirrored: 60,
            ..Part::new(
                "leaf",
                [(0.0, 0.0), (60.0, 10.0), (90.0, 70.0), (20.0, 50.0)],
            )
        },
        Part {
            as_drawn: 40,
            ..on_fold("bow", 40.0, 70.0)
        },
        Part {
            as_drawn: 41,
            shows: Shows::Either,
            ..Part::new("patch", rectangle(30.0, 40.0))
        },
    ];
    let options = StripOptions {
        budget: 3_000_000,
        ..quick()
    };
    let found = laid(&parts, &folded(1000.0), &options);
    assert_eq!(found.lay.placements.len(), 201);
    assert!(found.density > 0.6, "{}", found.density);
}

/// Marsaglia's xorshift64*, apart from the library's own chances.
struct Chance(u64);

impl Chance {
    fn between(&mut self, low: f64, high: f64) -> f64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        let bits = self.0.wrapping_mul(0x2545_f491_4f6c_dd1d);
        low + (high - low) * ((bits >> 11) as f64 / (1_u64 << 53) as f64)
    }

    fn pick(&mut self, count: u32) -> u32 {
        (self.between(0.0, f64::from(count)) as u32).min(count - 1)
    }

    /// A ring seen whole from its middle.
    fn star(&mut self, size: f64) -> Vec<Point> {
        let corners = 3 + self.pick(6);
        let step = std::f64::consts::TAU / f64::from(corners);
        (0..corners)
            .map(|i| {
                let (sin, cos) = libm::sincos(step * (f64::from(i) + self.between(0.1, 0.9)));
                Point::ORIGIN + Vec2::new(cos, sin) * (size * self.between(0.4, 1.0))
            })
            .collect()
    }

    /// Half a star, on a fold along the y axis.
    fn half(&mut self, size: f64) -> (Vec<Point>, [Point; 2]) {
        let corners = 1 + self.pick(5);
        let step = std::f64::consts::PI / f64::from(corners);
        let (low, high) = (
            -size * self.between(0.3, 1.0),
            size * self.between(0.3, 1.0),
        );
        let mut half = vec![Point::new(0.0, low)];
        half.extend((0..corners).map(|i| {
            let angle = step * (f64::from(i) + self.between(0.1, 0.9));
            let (sin, cos) = libm::sincos(angle);
            Point::ORIGIN + Vec2::new(sin, -cos) * (size * self.between(0.4, 1.0))
        }));
        half.push(Point::new(0.0, high));
        (half, [Point::new(0.0, low), Point::new(0.0, high)])
    }

    fn part(&mut self) -> Part {
        let size = self.between(40.0, 120.0);
        let made = match self.pick(2) {
            0 => {
                let (half, [a, b]) = self.half(size);
                Part::on_fold("half", half, a, b).expect("a good half")
            }
            _ => Part::new("star", self.star(size)),
        };
        Part {
            as_drawn: self.pick(4),
            mirrored: self.pick(3),
            tilt_deg: if self.pick(2) == 0 { 0.0 } else { 3.0 },
            shows: [Shows::Right, Shows::Wrong, Shows::Either][self.pick(3) as usize],
            either_way: self.pick(2) == 0,
            crosswise: self.pick(4) == 0,
            ..made
        }
    }
}

#[test]
fn random_pieces_are_laid_folded() {
    let mut chance = Chance(20);
    for _ in 0..60 {
        let parts: Vec<Part> = (0..1 + chance.pick(4)).map(|_| chance.part()).collect();
        if parts.iter().all(|part| part.as_drawn + part.mirrored == 0) {
            continue;
        }
        let cloth = Strip {
            faces: [Faces::One, Faces::Two][chance.pick(2) as usize],
            nap: chance.pick(2) == 0,
            ..folded(chance.between(490.0, 900.0))
        };
        let options = StripOptions {
            spacing: if chance.pick(2) == 0 {
                0.0
            } else {
                chance.between(0.0, 5.0)
            },
            budget: [0, 20_000, 60_000][chance.pick(3) as usize],
            threads: 1,
            ..StripOptions::default()
        };
        let found = laid(&parts, &cloth, &options);
        for (index, part) in parts.iter().enumerate() {
            for hand in Hand::BOTH {
                let of = |at: &&Placement| (at.part, at.hand) == (index, hand);
                let count = found.lay.placements.iter().filter(of).count();
                assert_eq!(count, part.count(hand) as usize);
            }
        }
    }
}
