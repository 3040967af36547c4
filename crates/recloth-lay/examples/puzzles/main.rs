//! Puzzles put together within so many seconds each, and near misses: `puzzles SECONDS COUNT`, or one sort of puzzle by
//! itself: `puzzles SECONDS COUNT PIECES PANELS FLAWS DROPPED SQUARE TILT`. Prints, as JSON, the shares of the puzzles solved
//! and of the near misses refused, or more of one sort.

#![allow(clippy::print_stdout)] // what it is for

mod make;

use std::{env, error::Error, time::Instant};

use make::{Known, Recipe, puzzle};
use recloth_lay::{Options, Together, check, fit};

/// Pieces, panels, flaws, pieces left out, whether square, tilt (deg): what the puzzles are, up to twelve pieces.
const SORTS: [(usize, usize, usize, usize, bool, f64); 12] = [
    (4, 1, 0, 0, false, 0.0),
    (6, 1, 1, 0, false, 0.0),
    (8, 1, 0, 0, false, 3.0),
    (8, 2, 2, 0, false, 0.0),
    (10, 1, 0, 0, true, 0.0),
    (10, 3, 1, 0, false, 4.0),
    (12, 1, 1, 0, false, 0.0),
    (12, 2, 1, 0, true, 0.0),
    (12, 4, 3, 0, false, 0.0),
    (12, 10, 0, 0, false, 0.0),
    (12, 1, 0, 1, false, 0.0),
    (12, 2, 0, 3, false, 0.0),
];

fn main() -> Result<(), Box<dyn Error>> {
    let words: Vec<f64> =
        (env::args().skip(1).map(|word| word.parse())).collect::<Result<_, _>>()?;
    let (seconds, count, sorts, told) = match words[..] {
        [seconds, count] => (seconds, count, SORTS.to_vec(), false),
        [seconds, count, pieces, panels, flaws, dropped, square, tilt] => {
            let whole = |number: f64| number as usize;
            let sort = (
                whole(pieces),
                whole(panels),
                whole(flaws),
                whole(dropped),
                square > 0.0,
                tilt,
            );
            (seconds, count, vec![sort], true)
        }
        _ => {
            return Err(
                "usage: puzzles SECONDS COUNT [PIECES PANELS FLAWS DROPPED SQUARE TILT]".into(),
            );
        }
    };
    let (mut made, mut solved, mut near, mut refused) = (0, 0, 0, 0);
    for (pieces, panels, flaws, dropped, square, tilt_deg) in sorts {
        for known in [Known::Fits, Known::Impossible] {
            let recipes = (1..).map(|seed| Recipe {
                seed,
                pieces,
                panels,
                flaws,
                dropped,
                square,
                tilt_deg,
                known,
            });
            let few = match known {
                Known::Fits => count as usize,
                // Where cloth is to spare a larger piece may fit; what is refused at once is, all the same, laid as far as it
                // goes for the whole time, so that is tried in a short one.
                Known::Impossible if dropped > 0 || told || seconds > 1.0 => 0,
                Known::Impossible => (count as usize).div_ceil(4),
            };
            for puzzle in recipes.filter_map(|recipe| puzzle(&recipe)).take(few) {
                let start = Instant::now();
                let options = Options {
                    budget: u64::MAX,
                    seconds: Some(seconds),
                    ..Options::default()
                };
                let found = fit(&puzzle.parts, &puzzle.panels, &options)?;
                let took = start.elapsed().as_secs_f64();
                check(&puzzle.parts, &puzzle.panels, &found.lay)
                    .map_err(|complaints| format!("{complaints:?}"))?;
                let fits = found.together == Together::Fit;
                match known {
                    Known::Fits => (made, solved) = (made + 1, solved + u32::from(fits)),
                    Known::Impossible if fits => return Err("a near miss is said to fit".into()),
                    Known::Impossible => {
                        let proved = matches!(found.together, Together::Cannot(_));
                        (near, refused) = (near + 1, refused + u32::from(proved));
                    }
                }
                if told {
                    let laid = found.lay.placements.len();
                    println!(
                        "{laid} of {} in {took:.2} s, {:.2e} evaluations{}",
                        puzzle.parts.len(),
                        found.evaluations as f64,
                        if fits { "" } else { ": LEFT" }
                    );
                }
            }
        }
    }
    let share = |some: u32, all: u32| f64::from(some) / f64::from(all.max(1));
    println!(
        "{{\"made\": {made}, \"solved\": {}, \"near_misses\": {near}, \"refused\": {}}}",
        share(solved, made),
        share(refused, near)
    );
    Ok(())
}
