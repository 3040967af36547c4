//! Measures by name and range: checked before a draft is tried, and turned until it works to say what would do.

use alloc::vec::Vec;

use super::Draft;
use crate::seek::nearest;
use crate::{Error, ErrorKind};

/// How near the cut lines are looked at (mm).
const CUT: f64 = 0.5;

/// A measure that can be changed, with its range.
pub(super) enum Dial<'a> {
    Number(&'a mut f64, f64, f64),
    Count(&'a mut u32, u32, u32),
}

/// Every measure by its name, in the order in which they are checked.
pub(super) type Dials<'a> = Vec<(&'static str, Dial<'a>)>;

/// A draft described by measures.
pub(super) trait Measured: Clone {
    /// All its measures.
    fn dials(&mut self) -> Dials<'_>;

    /// The draft from measures that are in range. Of an error `NoSolution` the bounds are a guess, or not there.
    fn attempt(&self) -> Result<Draft, Error>;
}

/// The draft, or the error of the measure that stops it, with a bound that has been tried.
pub(super) fn drafted<T: Measured>(measures: &T) -> Result<Draft, Error> {
    for (name, dial) in measures.clone().dials() {
        match dial {
            Dial::Number(value, least, most) => {
                Error::check(name, *value, least, most)?;
            }
            Dial::Count(value, least, most) => {
                Error::check_count(name, *value, least, most)?;
            }
        }
    }
    tried(measures).map_err(|error| {
        if error.kind() == ErrorKind::NoSolution && error.at().is_none() {
            bounded(measures, error)
        } else {
            error
        }
    })
}

/// The draft, if its pieces can be cut out with their allowances.
fn tried<T: Measured>(measures: &T) -> Result<Draft, Error> {
    let draft = measures.attempt()?;
    for piece in &draft.pieces {
        let Err(error) = piece.cut_line(CUT) else {
            continue;
        };
        let edge = error.at().and_then(|at| piece.edges().get(at as usize));
        let width = edge.map_or(0.0, |edge| edge.allowance);
        // The measure that this allowance is.
        let mut copy = measures.clone();
        let named = copy.dials().into_iter().find(|(name, dial)| {
            let known = ["allowance", "seam", "hem", "hem_allowance", "facing"].contains(name);
            known && matches!(dial, Dial::Number(value, ..) if **value == width)
        });
        let name = named.map_or(error.argument(), |(name, _)| name);
        return Err(Error::no_solution(name, width, f64::NAN, error.max()));
    }
    Ok(draft)
}

/// The error with bounds that would do: its own, if they do, else the nearest found by trying, else none.
fn bounded<T: Measured>(measures: &T, error: Error) -> Error {
    let name = error.argument();
    let with = |value: f64| -> Result<Draft, Error> {
        let mut changed = measures.clone();
        let named = changed.dials().into_iter().find(|(dial, _)| *dial == name);
        match named {
            Some((_, Dial::Number(place, least, most))) if value >= least && value <= most => {
                *place = value;
            }
            Some((_, Dial::Count(place, least, most)))
                if value >= f64::from(least) && value <= f64::from(most) =>
            {
                *place = value as u32;
            }
            _ => return Err(error),
        }
        tried(&changed)
    };
    let works = |value: f64| with(value).is_ok();
    // Where another measure is wrong too, it is enough that this one no longer stops the draft.
    let passes = |value: f64| with(value).map_or_else(|other| other.argument() != name, |_| true);
    let (min, max) = (error.min(), error.max());
    let offered = [min, max].into_iter().filter(|bound| bound.is_finite());
    if offered.clone().next().is_some() && offered.clone().all(passes) {
        return error;
    }
    let mut copy = measures.clone();
    let dial = copy.dials().into_iter().find(|(dial, _)| *dial == name);
    let tried: [&dyn Fn(f64) -> bool; 2] = [&works, &passes];
    let found = tried.into_iter().find_map(|does| match &dial {
        Some((_, Dial::Number(_, least, most))) => nearest(error.value(), (*least, *most), does),
        Some((_, Dial::Count(_, least, most))) => {
            nearest_count(error.value(), (f64::from(*least), f64::from(*most)), does)
        }
        None => None,
    });
    let nan = f64::NAN;
    let (min, max) = match found {
        Some(found) if found > error.value() => (found, nan),
        Some(found) => (nan, found),
        None => (nan, nan),
    };
    Error::no_solution(name, error.value(), min, max)
}

/// The nearest count that does.
fn nearest_count(value: f64, (least, most): (f64, f64), does: &dyn Fn(f64) -> bool) -> Option<f64> {
    let steps = (most - least) as u32;
    (1..=steps).find_map(|step| {
        let tried = [value + f64::from(step), value - f64::from(step)];
        tried
            .into_iter()
            .find(|&count| count >= least && count <= most && does(count))
    })
}
