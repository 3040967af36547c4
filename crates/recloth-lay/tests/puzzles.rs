//! Panels cut up into pieces are put together again; near misses are never said to fit.

#[path = "../examples/puzzles/make.rs"]
mod make;

use core::ops::ControlFlow;

use make::{Known, Puzzle, Recipe, puzzle};
use recloth_lay::{Fit, Options, Together, check, fit, fit_with};

const PLAIN: Recipe = Recipe {
    seed: 0,
    pieces: 12,
    panels: 3,
    flaws: 0,
    dropped: 0,
    square: false,
    tilt_deg: 0.0,
    known: Known::Fits,
};

/// So many puzzles, each with its seed.
fn puzzles(recipe: Recipe, count: usize) -> Vec<Puzzle> {
    let made: Vec<Puzzle> = (1..200)
        .filter_map(|seed| puzzle(&Recipe { seed, ..recipe }))
        .take(count)
        .collect();
    assert_eq!(made.len(), count, "{recipe:?}");
    made
}

fn solved(puzzle: &Puzzle, budget: u64) -> Fit {
    let options = Options {
        budget,
        ..Options::default()
    };
    let found = fit(&puzzle.parts, &puzzle.panels, &options).expect("good input");
    assert_eq!(check(&puzzle.parts, &puzzle.panels, &found.lay), Ok(()));
    found
}

/// How many of some puzzles are solved.
fn count(recipe: Recipe, count: usize, budget: u64) -> usize {
    let whole = |puzzle: &&Puzzle| solved(puzzle, budget).together == Together::Fit;
    puzzles(recipe, count).iter().filter(whole).count()
}

#[test]
fn what_was_cut_from_the_panels_goes_back_onto_them() {
    for (pieces, panels, flaws) in [(4, 1, 0), (8, 2, 2), (12, 1, 1), (12, 10, 0), (30, 3, 2)] {
        let recipe = Recipe {
            pieces,
            panels,
            flaws,
            ..PLAIN
        };
        assert_eq!(count(recipe, 8, 20_000_000), 8, "{recipe:?}");
    }
}

#[test]
fn rectangles_of_one_direction_go_back_too() {
    let recipe = Recipe {
        square: true,
        flaws: 1,
        ..PLAIN
    };
    assert_eq!(count(recipe, 8, 20_000_000), 8);
}

#[test]
fn grains_that_are_off_are_tilted_back() {
    let recipe = Recipe {
        tilt_deg: 4.0,
        pieces: 10,
        panels: 2,
        ..PLAIN
    };
    assert_eq!(count(recipe, 8, 20_000_000), 8);
}

#[test]
fn with_a_piece_left_out_the_others_are_found() {
    let recipe = Recipe {
        dropped: 1,
        panels: 2,
        ..PLAIN
    };
    // Here the pieces are not driven together, so one in eight may be missed.
    let there = count(recipe, 8, 60_000_000);
    assert!(there >= 7, "{there} of 8");
}

#[test]
fn a_piece_a_little_too_large_is_refused_where_the_others_leave_no_cloth() {
    for (panels, flaws) in [(1, 0), (1, 2), (3, 0), (3, 3)] {
        let recipe = Recipe {
            panels,
            flaws,
            known: Known::Impossible,
            ..PLAIN
        };
        for puzzle in puzzles(recipe, 8) {
            let together = solved(&puzzle, 1_000_000).together;
            assert!(matches!(together, Together::Cannot(_)), "{recipe:?}");
        }
    }
}

#[test]
fn what_was_cut_from_panels_is_never_refused() {
    for (pieces, panels, flaws, dropped) in
        [(3, 1, 0, 0), (5, 2, 1, 0), (9, 3, 2, 1), (20, 6, 4, 0)]
    {
        for (square, tilt_deg) in [(false, 0.0), (true, 0.0), (false, 5.0)] {
            let recipe = Recipe {
                pieces,
                panels,
                flaws,
                dropped,
                square,
                tilt_deg,
                ..PLAIN
            };
            for puzzle in puzzles(recipe, 10) {
                let found = solved(&puzzle, 1000);
                let refused = matches!(found.together, Together::Cannot(_));
                assert!(!refused, "{recipe:?}: {:?}", found.together);
            }
        }
    }
}

#[test]
fn a_lay_does_not_depend_on_threads() {
    // Too many pieces for too little work, so that every way of looking has its turn.
    let recipe = Recipe {
        pieces: 16,
        panels: 2,
        dropped: 3,
        ..PLAIN
    };
    for puzzle in puzzles(recipe, 2) {
        let found = [1, 2, 5].map(|threads| {
            let options = Options {
                threads,
                spacing: 2.0,
                budget: 10_000_000,
                ..Options::default()
            };
            fit(&puzzle.parts, &puzzle.panels, &options).expect("good input")
        });
        assert_eq!(found[0], found[1]);
        assert_eq!(found[0], found[2]);
    }
}

#[test]
fn the_search_says_how_far_it_is_and_stops_when_told() {
    let recipe = Recipe {
        known: Known::Impossible,
        pieces: 20,
        ..PLAIN
    };
    let puzzle = &puzzles(recipe, 1)[0];
    let mut said = Vec::new();
    let options = Options {
        budget: u64::MAX,
        spacing: 1.0,
        ..Options::default()
    };
    let found = fit_with(&puzzle.parts, &puzzle.panels, &options, |progress| {
        said.push(progress);
        match said.len() < 20 {
            true => ControlFlow::Continue(()),
            false => ControlFlow::Break(()),
        }
    })
    .expect("good input");
    assert_eq!(said.len(), 20);
    assert!(said.windows(2).all(|pair| pair[0].done <= pair[1].done));
    assert!(
        said.last()
            .is_some_and(|last| last.best.is_some_and(|best| best > 0.3 && best < 1.0))
    );
    assert_eq!(check(&puzzle.parts, &puzzle.panels, &found.lay), Ok(()));
    assert!(!found.out_of_time);
}

#[test]
fn time_ends_the_search_and_that_is_said() {
    let recipe = Recipe {
        known: Known::Impossible,
        pieces: 20,
        ..PLAIN
    };
    let puzzle = &puzzles(recipe, 1)[0];
    let options = Options {
        budget: u64::MAX,
        spacing: 1.0,
        seconds: Some(0.05),
        ..Options::default()
    };
    let found = fit(&puzzle.parts, &puzzle.panels, &options).expect("good input");
    assert!(found.out_of_time);
    let options = Options {
        budget: 1000,
        seconds: Some(1e6),
        ..options
    };
    let found = fit(&puzzle.parts, &puzzle.panels, &options).expect("good input");
    assert!(!found.out_of_time);
}

#[test]
fn many_pieces_with_cloth_to_spare_are_driven_apart() {
    let recipe = Recipe {
        pieces: 20,
        panels: 1,
        dropped: 5,
        ..PLAIN
    };
    let whole = |puzzle: &&Puzzle| {
        // Any spacing at all rules out filling corner after corner.
        let options = Options {
            budget: 150_000_000,
            spacing: 1e-4,
            ..Options::default()
        };
        let found = fit(&puzzle.parts, &puzzle.panels, &options).expect("good input");
        assert_eq!(check(&puzzle.parts, &puzzle.panels, &found.lay), Ok(()));
        found.together == Together::Fit
    };
    let there = puzzles(recipe, 6).iter().filter(whole).count();
    // Panels cleared and laid again alone bring fewer.
    assert!(there >= 5, "{there} of 6");
}
