//! The one error type: what kind, which argument, what was given, what would do.

use crate::dust::open_limit;
use core::fmt;

/// What went wrong. The numbers are the status codes of every door and never change.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
#[repr(i32)]
pub enum ErrorKind {
    /// The argument is NaN or infinite.
    NotFinite = -1,
    /// The argument is outside its range.
    OutOfRange = -2,
    /// Each argument is in range, but together they leave no solution.
    NoSolution = -3,
    /// A list has too few or too many items, or not as many as its partner.
    Count = -4,
    /// The room given for a list or a text is too small.
    Room = -5,
    /// The number must be whole.
    NotWhole = -6,
    /// The choice is not one of those offered.
    Choice = -7,
    /// The text cannot be read as a length (or, named `path`, as the path of a drawing).
    Syntax = -8,
    /// The number has no unit, so it has several readings.
    NoUnit = -9,
    /// The comma or point may mark thousands or decimals.
    TwoReadings = -10,
    /// The outline crosses itself or has no area.
    Outline = -11,
    /// Refused, whatever the numbers: dangerous, or ruinous to the goods.
    Refused = -12,
    /// The text is not UTF-8 (raised by bindings only).
    NotUtf8 = -20,
    /// A pointer is NULL (raised by bindings only).
    Null = -21,
    /// The library panicked, which is a bug (raised by bindings only).
    Panic = -22,
    /// The text, brief or data handed over is not valid; the message says where (raised by bindings only).
    Invalid = -23,
}

impl ErrorKind {
    /// Every kind, in order of number.
    pub const ALL: &[ErrorKind] = &[
        ErrorKind::NotFinite,
        ErrorKind::OutOfRange,
        ErrorKind::NoSolution,
        ErrorKind::Count,
        ErrorKind::Room,
        ErrorKind::NotWhole,
        ErrorKind::Choice,
        ErrorKind::Syntax,
        ErrorKind::NoUnit,
        ErrorKind::TwoReadings,
        ErrorKind::Outline,
        ErrorKind::Refused,
        ErrorKind::NotUtf8,
        ErrorKind::Null,
        ErrorKind::Panic,
        ErrorKind::Invalid,
    ];

    /// The status number, negative; 0 is success in every door.
    pub const fn code(self) -> i32 {
        self as i32
    }

    /// The kind with this status number.
    pub fn from_code(code: i32) -> Option<ErrorKind> {
        Self::ALL.iter().copied().find(|kind| kind.code() == code)
    }

    /// The kind's name, as the bindings print it.
    pub const fn name(self) -> &'static str {
        match self {
            ErrorKind::NotFinite => "NotFinite",
            ErrorKind::OutOfRange => "OutOfRange",
            ErrorKind::NoSolution => "NoSolution",
            ErrorKind::Count => "Count",
            ErrorKind::Room => "Room",
            ErrorKind::NotWhole => "NotWhole",
            ErrorKind::Choice => "Choice",
            ErrorKind::Syntax => "Syntax",
            ErrorKind::NoUnit => "NoUnit",
            ErrorKind::TwoReadings => "TwoReadings",
            ErrorKind::Outline => "Outline",
            ErrorKind::Refused => "Refused",
            ErrorKind::NotUtf8 => "NotUtf8",
            ErrorKind::Null => "Null",
            ErrorKind::Panic => "Panic",
            ErrorKind::Invalid => "Invalid",
        }
    }

    /// One general sentence, for a door that has only the number.
    pub const fn text(self) -> &'static str {
        match self {
            ErrorKind::NotFinite => "an argument is not a finite number",
            ErrorKind::OutOfRange => "an argument is outside its range",
            ErrorKind::NoSolution => "the arguments together leave no solution",
            ErrorKind::Count => "a list has the wrong number of items",
            ErrorKind::Room => "the room given for the answer is too small",
            ErrorKind::NotWhole => "an argument must be a whole number",
            ErrorKind::Choice => "an argument is not one of the choices offered",
            ErrorKind::Syntax => "the text cannot be read as a length",
            ErrorKind::NoUnit => "the number has no unit",
            ErrorKind::TwoReadings => "the comma or point may mark thousands or decimals",
            ErrorKind::Outline => "the outline crosses itself or has no area",
            ErrorKind::Refused => "refused: dangerous, or ruinous to the goods",
            ErrorKind::NotUtf8 => "the text is not UTF-8",
            ErrorKind::Null => "a pointer is NULL",
            ErrorKind::Panic => "internal error: please report it",
            ErrorKind::Invalid => "the text or data handed over is not valid",
        }
    }
}

/// Why a function gave no answer: the kind, the argument to change, the value given and what would do.
///
/// `min` and `max` are NaN where there is no such bound; where `value` is one of them, it must be passed. A limit that would
/// itself be no solution is kept a millionth of a millimetre within, so that what `min` and `max` say would do, and the
/// sentence then says "more than" or "less than". `at` is the place in a list (an index from 0) or in a text (a character
/// from 0), where there is one.
///
/// ```
/// use recloth::{ErrorKind, skirt::circle_skirt};
/// let error = circle_skirt(-1.0, 600.0, 1.0).unwrap_err();
/// assert_eq!(error.kind(), ErrorKind::OutOfRange);
/// assert_eq!(error.to_string(), "waist = -1 is not between 1 and 100000");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[error("{}", Sentence(self))]
pub struct Error {
    kind: ErrorKind,
    argument: &'static str,
    value: f64,
    min: f64,
    max: f64,
    at: Option<u32>,
}

impl Error {
    /// An error of any kind; the other constructors are shorter.
    pub const fn new(
        kind: ErrorKind,
        argument: &'static str,
        value: f64,
        min: f64,
        max: f64,
    ) -> Error {
        Error {
            kind,
            argument,
            value,
            min,
            max,
            at: None,
        }
    }

    /// `argument = value` is in range, but with the other arguments only `min` to `max` has a solution
    /// (NaN where there is no such bound; both when `min` is more than `max`, for then nothing has).
    pub const fn no_solution(argument: &'static str, value: f64, min: f64, max: f64) -> Error {
        let (min, max) = if min > max {
            (f64::NAN, f64::NAN)
        } else {
            (min, max)
        };
        Error::new(ErrorKind::NoSolution, argument, value, min, max)
    }

    /// The same error, at this index of a list or character of a text.
    pub const fn at_index(mut self, index: usize) -> Error {
        self.at = Some(if index > u32::MAX as usize {
            u32::MAX
        } else {
            index as u32
        });
        self
    }

    /// `value` when it is finite and within `min..=max`, which are finite.
    #[inline]
    pub fn check(argument: &'static str, value: f64, min: f64, max: f64) -> Result<f64, Error> {
        // What is not finite fails one of the two; which error it is, is found out elsewhere, so that here it stays short.
        if value >= min && value <= max {
            Ok(value)
        } else {
            Err(Error::outside(argument, value, min, max))
        }
    }

    /// `count` when it is within `min..=max`.
    #[inline]
    pub fn check_count(
        argument: &'static str,
        count: u32,
        min: u32,
        max: u32,
    ) -> Result<u32, Error> {
        if count >= min && count <= max {
            Ok(count)
        } else {
            let [count, min, max] = [count, min, max].map(f64::from);
            Err(Error::outside(argument, count, min, max))
        }
    }

    /// The error of a value that is not finite, or not within `min..=max`.
    #[cold]
    #[inline(never)]
    fn outside(argument: &'static str, value: f64, min: f64, max: f64) -> Error {
        let kind = if value.is_finite() {
            ErrorKind::OutOfRange
        } else {
            ErrorKind::NotFinite
        };
        Error::new(kind, argument, value, min, max)
    }

    /// `list` when it has `items.0..=items.1` items, each finite and within `min..=max`.
    pub fn check_list<'a>(
        argument: &'static str,
        list: &'a [f64],
        min: f64,
        max: f64,
        items: (usize, usize),
    ) -> Result<&'a [f64], Error> {
        Error::check_items(argument, list.len(), items.0, items.1)?;
        for (index, &value) in list.iter().enumerate() {
            Error::check(argument, value, min, max).map_err(|error| error.at_index(index))?;
        }
        Ok(list)
    }

    /// `list` when it has `items.0..=items.1` items, each within `min..=max`.
    pub fn check_count_list<'a>(
        argument: &'static str,
        list: &'a [u32],
        min: u32,
        max: u32,
        items: (usize, usize),
    ) -> Result<&'a [u32], Error> {
        Error::check_items(argument, list.len(), items.0, items.1)?;
        for (index, &count) in list.iter().enumerate() {
            Error::check_count(argument, count, min, max).map_err(|error| error.at_index(index))?;
        }
        Ok(list)
    }

    /// An error unless a list has `min..=max` items.
    pub fn check_items(
        argument: &'static str,
        items: usize,
        min: usize,
        max: usize,
    ) -> Result<(), Error> {
        if items < min || items > max {
            Err(Error::new(
                ErrorKind::Count,
                argument,
                items as f64,
                min as f64,
                max as f64,
            ))
        } else {
            Ok(())
        }
    }

    /// An error unless the room for an answer holds `needed` items.
    pub fn check_room(argument: &'static str, room: usize, needed: usize) -> Result<(), Error> {
        if room < needed {
            Err(Error::new(
                ErrorKind::Room,
                argument,
                room as f64,
                needed as f64,
                f64::NAN,
            ))
        } else {
            Ok(())
        }
    }

    /// What kind of error.
    pub const fn kind(&self) -> ErrorKind {
        self.kind
    }

    /// The name of the argument to change.
    pub const fn argument(&self) -> &'static str {
        self.argument
    }

    /// The value given (for a count of items or room: how many there were).
    pub const fn value(&self) -> f64 {
        self.value
    }

    /// The least value that would do, NaN where there is none.
    pub const fn min(&self) -> f64 {
        self.min
    }

    /// The largest value that would do, NaN where there is none.
    pub const fn max(&self) -> f64 {
        self.max
    }

    /// The index in the list, or the character in the text, from 0.
    pub const fn at(&self) -> Option<u32> {
        self.at
    }
}

/// Writes an error as one sentence without a full stop.
struct Sentence<'a>(&'a Error);

impl fmt::Display for Sentence<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let e = self.0;
        match (e.kind, e.at) {
            (ErrorKind::Syntax | ErrorKind::NoUnit | ErrorKind::TwoReadings, Some(at)) => {
                write!(f, "{}, character {}: ", e.argument, at + 1)?;
            }
            (ErrorKind::Syntax | ErrorKind::NoUnit | ErrorKind::TwoReadings, None) => {
                write!(f, "{}: ", e.argument)?
            }
            (ErrorKind::Count, _) => {
                return write!(f, "{} has {} items, not {}", e.argument, e.value, Span(e));
            }
            (ErrorKind::Room, _) => {
                return write!(
                    f,
                    "{} has room for {}, needs {}",
                    e.argument, e.value, e.min
                );
            }
            (ErrorKind::Refused, _) => {
                return match crate::refusal::reason(e.argument, e.value) {
                    Some(reason) => write!(f, "{}: refused: {reason}", e.argument),
                    None => write!(f, "{}: {}", e.argument, e.kind.text()),
                };
            }
            (
                ErrorKind::Outline
                | ErrorKind::NotUtf8
                | ErrorKind::Null
                | ErrorKind::Panic
                | ErrorKind::Invalid,
                at,
            ) => {
                write!(f, "{}: {}", e.argument, e.kind.text())?;
                return match at {
                    Some(at) => write!(f, " (at {at})"),
                    None => Ok(()),
                };
            }
            // Of what is no number the place alone can be told.
            (ErrorKind::NoSolution, Some(at)) if e.value.is_nan() => {
                write!(f, "{}[{at}] ", e.argument)?;
            }
            (ErrorKind::NoSolution, None) if e.value.is_nan() => write!(f, "{} ", e.argument)?,
            (_, Some(at)) => write!(f, "{}[{at}] = {} ", e.argument, e.value)?,
            (_, None) => write!(f, "{} = {} ", e.argument, e.value)?,
        }
        match e.kind {
            ErrorKind::NotFinite => write!(f, "is not a finite number"),
            ErrorKind::OutOfRange if matches!(e.argument, "length" | "lengths") => {
                write!(f, "is not {} (lengths are in mm)", Span(e))
            }
            ErrorKind::OutOfRange => write!(f, "is not {}", Span(e)),
            ErrorKind::NoSolution if e.min.is_nan() && e.max.is_nan() => {
                write!(f, "leaves no solution")
            }
            // The bound itself was given, so it is not among what would do.
            ErrorKind::NoSolution if e.value == e.min && e.min != e.max => {
                write!(
                    f,
                    "leaves no solution: it must be more than {}",
                    tidy(e.min)
                )
            }
            ErrorKind::NoSolution if e.value == e.max && e.min != e.max => {
                write!(
                    f,
                    "leaves no solution: it must be less than {}",
                    tidy(e.max)
                )
            }
            ErrorKind::NoSolution => write!(f, "leaves no solution: it must be {}", Span(e)),
            ErrorKind::NotWhole => write!(f, "is not a whole number"),
            ErrorKind::Choice => write!(f, "is not one of the choices"),
            ErrorKind::Syntax if e.argument == "path" => {
                write!(f, "cannot be read from here as the path of an SVG drawing")
            }
            ErrorKind::Syntax => write!(
                f,
                "cannot be read from here; a length is written like 31 3/8 in, 58,4 cm or 2 ft 3 1/8 in"
            ),
            ErrorKind::NoUnit => write!(
                f,
                "{0} has no unit: {0} mm, {0} cm = {1} mm, or {0} in = {2} mm?",
                e.value,
                tidy(e.value * crate::units::CM),
                tidy(e.value * crate::units::INCH)
            ),
            ErrorKind::TwoReadings if e.min == e.max => {
                write!(f, "marks its thousands: write {}", e.min)
            }
            ErrorKind::TwoReadings => write!(
                f,
                "may be {0} or {1}: write {0:.4} for the first, {1} for the second",
                e.min, e.max
            ),
            kind => write!(f, "{}", kind.text()),
        }
    }
}

/// A number without the dust of binary: 28 in is 711.2 mm in a message, not 711.1999999999999. One smaller than the dust
/// stays as it is.
fn tidy(value: f64) -> f64 {
    const PLACES: f64 = 1e9;
    let tidy = libm::round(value * PLACES) / PLACES;
    if libm::fabs(value) < 4e6 && tidy != 0.0 {
        tidy
    } else {
        value
    }
}

/// Writes the bounds of an error in words.
struct Span<'a>(&'a Error);

impl fmt::Display for Span<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (min, max) = (self.0.min, self.0.max);
        let open = |bound| match self.0.kind {
            ErrorKind::NoSolution => open_limit(bound),
            _ => None,
        };
        let (above, below) = (open(min), open(max));
        let low = above.unwrap_or(tidy(min));
        let high = below.unwrap_or(tidy(max));
        let least = if above.is_some() {
            "more than"
        } else {
            "at least"
        };
        let most = if below.is_some() {
            "less than"
        } else {
            "at most"
        };
        if min == max {
            write!(f, "{low}")
        } else if max.is_nan() {
            write!(f, "{least} {low}")
        } else if min.is_nan() {
            write!(f, "{most} {high}")
        } else if above.is_none() && below.is_none() {
            write!(f, "between {low} and {high}")
        } else {
            write!(f, "{least} {low} and {most} {high}")
        }
    }
}

#[cfg(test)]
mod tests {
    extern crate std;
    use super::*;
    use crate::dust::{past, short_of};
    use std::string::ToString;

    #[test]
    fn kinds_have_distinct_negative_codes_that_come_back() {
        for pair in ErrorKind::ALL.windows(2) {
            assert!(pair[1].code() < pair[0].code() && pair[0].code() < 0);
        }
        for (place, &kind) in ErrorKind::ALL.iter().enumerate() {
            assert_eq!(ErrorKind::from_code(kind.code()), Some(kind));
            // The doors print the name that it has here.
            assert_eq!(kind.name(), std::format!("{kind:?}"));
            let others = &ErrorKind::ALL[..place];
            assert!(others.iter().all(|other| other.text() != kind.text()));
            assert!(!kind.text().is_empty());
        }
        assert_eq!(ErrorKind::from_code(0), None);
    }

    #[test]
    fn sentences_name_argument_value_and_range() {
        let says = |error: Error| error.to_string();
        let check = |value| Error::check("waist", value, 1.0, 1e5).unwrap_err();
        assert_eq!(says(check(f64::NAN)), "waist = NaN is not a finite number");
        assert_eq!(
            says(check(0.5).at_index(3)),
            "waist[3] = 0.5 is not between 1 and 100000"
        );
        assert_eq!(
            says(Error::no_solution("depth", 5.0, 6.0, f64::NAN)),
            "depth = 5 leaves no solution: it must be at least 6"
        );
        assert_eq!(
            says(Error::no_solution("shift", 100.0, 0.0, 98.42499999999998)),
            "shift = 100 leaves no solution: it must be between 0 and 98.425"
        );
        assert_eq!(
            says(Error::no_solution("factors", 0.0, 1e-12, f64::NAN)),
            "factors = 0 leaves no solution: it must be at least 0.000000000001"
        );
        assert_eq!(
            says(Error::no_solution("last", 30.0, 30.0, f64::NAN)),
            "last = 30 leaves no solution: it must be more than 30"
        );
        assert_eq!(
            says(Error::no_solution("from_end", 800.0, 200.0, 800.0)),
            "from_end = 800 leaves no solution: it must be less than 800"
        );
        assert_eq!(
            says(Error::no_solution("height", 260.0, 0.0, short_of(250.0))),
            "height = 260 leaves no solution: it must be at least 0 and less than 250"
        );
        assert_eq!(
            says(Error::no_solution("last", 20.0, past(30.0), f64::NAN)),
            "last = 20 leaves no solution: it must be more than 30"
        );
        assert_eq!(
            says(Error::no_solution("clearance", 5.0, 0.0, short_of(0.0))),
            "clearance = 5 leaves no solution"
        );
        let mark = Error::new(ErrorKind::NoSolution, "mark", f64::NAN, f64::NAN, f64::NAN);
        assert_eq!(mark.to_string(), "mark leaves no solution");
        assert_eq!(mark.at_index(0).to_string(), "mark[0] leaves no solution");
        assert_eq!(
            says(Error::check_items("terms", 0, 1, 9).unwrap_err()),
            "terms has 0 items, not between 1 and 9"
        );
        assert_eq!(
            says(Error::check_room("out", 2, 5).unwrap_err()),
            "out has room for 2, needs 5"
        );
        assert_eq!(
            says(Error::new(ErrorKind::NoUnit, "text", 28.0, f64::NAN, f64::NAN).at_index(2)),
            "text, character 3: 28 has no unit: 28 mm, 28 cm = 280 mm, or 28 in = 711.2 mm?"
        );
        assert!(
            says(Error::new(
                ErrorKind::NoUnit,
                "text",
                58.4,
                f64::NAN,
                f64::NAN
            ))
            .ends_with("58.4 cm = 584 mm, or 58.4 in = 1483.36 mm?")
        );
        assert_eq!(
            says(Error::new(
                ErrorKind::TwoReadings,
                "text",
                f64::NAN,
                1.234,
                1234.0
            )),
            "text: may be 1.234 or 1234: write 1.2340 for the first, 1234 for the second"
        );
        assert_eq!(
            says(Error::new(ErrorKind::TwoReadings, "text", f64::NAN, 1234.5, 1234.5).at_index(1)),
            "text, character 2: marks its thousands: write 1234.5"
        );
        assert_eq!(
            says(Error::new(ErrorKind::Syntax, "text", f64::NAN, f64::NAN, f64::NAN).at_index(0)),
            "text, character 1: cannot be read from here; \
             a length is written like 31 3/8 in, 58,4 cm or 2 ft 3 1/8 in"
        );
        assert_eq!(
            says(Error::check("length", 0.5, 1.0, 1e3).unwrap_err()),
            "length = 0.5 is not between 1 and 1000 (lengths are in mm)"
        );
        assert_eq!(
            says(Error::no_solution("cut", 3.0, 2.0, 2.0)),
            "cut = 3 leaves no solution: it must be 2"
        );
        let plain = |kind, argument, value| Error::new(kind, argument, value, f64::NAN, f64::NAN);
        for (error, sentence) in [
            (
                plain(ErrorKind::NotWhole, "darts", 1.5),
                "darts = 1.5 is not a whole number",
            ),
            (
                plain(ErrorKind::Choice, "make", 7.0),
                "make = 7 is not one of the choices",
            ),
            (
                plain(ErrorKind::Syntax, "path", f64::NAN).at_index(4),
                "path, character 5: cannot be read from here as the path of an SVG drawing",
            ),
            (
                plain(ErrorKind::Outline, "outline", f64::NAN).at_index(2),
                "outline: the outline crosses itself or has no area (at 2)",
            ),
            (
                plain(ErrorKind::Null, "piece", f64::NAN),
                "piece: a pointer is NULL",
            ),
            (
                plain(ErrorKind::Refused, "no such argument", 0.0),
                "no such argument: refused: dangerous, or ruinous to the goods",
            ),
        ] {
            assert_eq!(says(error), sentence);
        }
        assert_eq!(
            says(plain(ErrorKind::Syntax, "text", f64::NAN)),
            "text: cannot be read from here; a length is written like 31 3/8 in, 58,4 cm or 2 ft 3 1/8 in"
        );
    }
}
