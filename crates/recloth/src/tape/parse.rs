//! Reading a length: numbers, each with a unit, until the text ends.

use arrayvec::ArrayString;

use super::LONGEST;
use crate::{Error, ErrorKind, units::INCH};

/// Most characters that are read.
const CHARACTERS: usize = 64;
/// Largest denominator of a fraction; tapes have 64ths at most.
const DENOMINATOR: u32 = 1000;

/// The length that `text` says, in mm.
pub(super) fn length(text: &str) -> Result<f64, Error> {
    let mut reader = Reader { rest: text, at: 0 };
    if text.chars().nth(CHARACTERS).is_some() {
        return Err(syntax(CHARACTERS));
    }
    reader.spaces();
    let negative = reader.eat(is_minus);
    let mut last: Option<Unit> = None;
    let mut total = 0.0;
    loop {
        reader.spaces();
        if let Some(unit) = last
            && reader.rest.is_empty()
        {
            let length = if unit.metric { total } else { total * INCH };
            return within(if negative { -length } else { length });
        }
        let number = reader.number()?;
        reader.spaces();
        let unit_at = reader.at;
        let Some(unit) = reader.unit()? else {
            return Err(if reader.rest.is_empty() {
                let none = f64::NAN;
                Error::new(ErrorKind::NoUnit, "text", number.plain(), none, none)
                    .at_index(number.at)
            } else {
                syntax(unit_at)
            });
        };
        if last.is_some_and(|last| last.metric != unit.metric || last.size <= unit.size) {
            return Err(syntax(unit_at));
        }
        total += number.times(unit);
        last = Some(unit);
    }
}

fn within(length: f64) -> Result<f64, Error> {
    if length.abs() <= LONGEST {
        Ok(length)
    } else {
        Err(Error::new(
            ErrorKind::OutOfRange,
            "text",
            length,
            -LONGEST,
            LONGEST,
        ))
    }
}

fn syntax(at: usize) -> Error {
    Error::new(ErrorKind::Syntax, "text", f64::NAN, f64::NAN, f64::NAN).at_index(at)
}

/// Metric units in millimetres, imperial ones in inches.
#[derive(Clone, Copy)]
struct Unit {
    metric: bool,
    size: u32,
}

const UNITS: &[(u32, bool, &[&str])] = &[
    (
        1,
        true,
        &[
            "mm",
            "millimetre",
            "millimetres",
            "millimeter",
            "millimeters",
        ],
    ),
    (
        10,
        true,
        &[
            "cm",
            "centimetre",
            "centimetres",
            "centimeter",
            "centimeters",
        ],
    ),
    (1000, true, &["m", "metre", "metres", "meter", "meters"]),
    (1, false, &["in", "inch", "inches"]),
    (12, false, &["ft", "foot", "feet"]),
    (36, false, &["yd", "yds", "yard", "yards"]),
];

/// A number as it is written, kept as digits so that nothing is rounded before its unit is known.
struct Number {
    /// The whole number or decimal, with a point.
    digits: ArrayString<CHARACTERS>,
    /// Power of ten it is multiplied by.
    exponent: i32,
    /// Numerator and denominator of the fraction after it.
    part: Option<(u32, u32)>,
    /// The character where it begins.
    at: usize,
}

impl Number {
    /// The number without a unit.
    fn plain(&self) -> f64 {
        self.times(Unit {
            metric: false,
            size: 1,
        })
    }

    /// So many of a unit: in mm or in inches.
    fn times(&self, unit: Unit) -> f64 {
        let size = f64::from(unit.size);
        match self.part {
            // One division of whole numbers, so it is rounded once.
            Some((numerator, denominator)) => {
                let whole = self.decimal(0);
                let denominator = f64::from(denominator);
                (whole * denominator + f64::from(numerator)) * size / denominator
            }
            None if unit.metric => self.decimal(match unit.size {
                1 => 0,
                10 => 1,
                _ => 3,
            }),
            None => self.decimal(0) * size,
        }
    }

    /// The digits with the point moved, correctly rounded.
    fn decimal(&self, places: i32) -> f64 {
        use core::fmt::Write;
        let mut text = ArrayString::<{ CHARACTERS + 16 }>::new();
        // There is room, and what is written is a number: neither can fail.
        let written = write!(text, "{}e{}", self.digits, self.exponent + places);
        written
            .ok()
            .and_then(|()| text.parse().ok())
            .unwrap_or(f64::NAN)
    }
}

/// The text not yet read, and how many characters were.
#[derive(Clone, Copy)]
struct Reader<'a> {
    rest: &'a str,
    at: usize,
}

impl<'a> Reader<'a> {
    fn peek(&self) -> Option<char> {
        self.rest.chars().next()
    }

    fn eat(&mut self, wanted: impl Fn(char) -> bool) -> bool {
        match self.peek() {
            Some(next) if wanted(next) => {
                self.rest = &self.rest[next.len_utf8()..];
                self.at += 1;
                true
            }
            _ => false,
        }
    }

    /// Whether there were any.
    fn spaces(&mut self) -> bool {
        let before = self.at;
        while self.eat(char::is_whitespace) {}
        self.at > before
    }

    /// The longest run of such ASCII characters, maybe none.
    fn run(&mut self, wanted: impl Fn(char) -> bool) -> &'a str {
        let start = self.rest;
        while self.eat(|next| next.is_ascii() && wanted(next)) {}
        &start[..start.len() - self.rest.len()]
    }

    fn digits(&mut self) -> &'a str {
        self.run(|next| next.is_ascii_digit())
    }

    /// A mark of decimals or thousands and the digits after it.
    fn group(&mut self) -> Option<(char, &'a str)> {
        let mut ahead = *self;
        let mark = ahead.peek()?;
        if !ahead.eat(|next| next == '.' || next == ',') {
            return None;
        }
        let digits = ahead.digits();
        if digits.is_empty() {
            return None;
        }
        *self = ahead;
        Some((mark, digits))
    }

    fn number(&mut self) -> Result<Number, Error> {
        let at = self.at;
        let whole = Number {
            digits: text("0"),
            exponent: 0,
            part: None,
            at,
        };
        if let Some(part) = self.fraction()? {
            return Ok(Number {
                part: Some(part),
                ..whole
            });
        }
        let integer = self.digits();
        let mark_at = self.at;
        if let Some((mark, decimals)) = self.group() {
            return self.decimal(whole, integer, mark, decimals, mark_at);
        }
        if integer.is_empty() {
            return Err(syntax(at));
        }
        let mut number = Number {
            digits: text(integer),
            ..whole
        };
        if let Some(exponent) = self.exponent() {
            number.exponent = exponent;
            return Ok(number);
        }
        // A fraction after a hyphen, after spaces, or as one sign right after the digits.
        let mut ahead = *self;
        let apart = ahead.eat(|next| next == '-') || ahead.spaces();
        if let Some(part) = ahead.fraction()? {
            *self = ahead;
            number.part = Some(part);
        } else if apart && ahead.peek().is_some_and(|next| next.is_ascii_digit()) {
            // Two numbers side by side: thousands with a space, or a fraction without its line.
            return Err(syntax(ahead.at));
        }
        Ok(number)
    }

    /// The rest of a number that has a mark in it, after the first group behind that.
    fn decimal(
        &mut self,
        mut number: Number,
        integer: &str,
        mark: char,
        decimals: &str,
        mark_at: usize,
    ) -> Result<Number, Error> {
        let mut digits = ArrayString::new();
        let thousands = (1..=3).contains(&integer.len()) && !integer.starts_with('0');
        let second_at = self.at;
        let Some((second_mark, second)) = self.group() else {
            join(&mut digits, &[integer, ".", decimals]);
            number.digits = digits;
            number.exponent = match self.exponent() {
                Some(exponent) => exponent,
                None if thousands && decimals.len() == 3 => {
                    let mut whole = ArrayString::new();
                    join(&mut whole, &[integer, decimals]);
                    let whole = Number {
                        digits: whole,
                        ..number
                    };
                    return Err(two_readings(number.plain(), whole.plain(), mark_at));
                }
                None => 0,
            };
            return Ok(number);
        };
        // More marks: groups of three digits, perhaps decimals at the end behind the other mark.
        let (mut last_mark, mut last) = (second_mark, second);
        join(&mut digits, &[integer, decimals]);
        let mut good = thousands && decimals.len() == 3;
        while last_mark == mark {
            good &= last.len() == 3;
            join(&mut digits, &[last]);
            match self.group() {
                Some(next) => (last_mark, last) = next,
                None => break,
            }
        }
        if last_mark != mark {
            join(&mut digits, &[".", last]);
            good &= self.group().is_none();
        }
        if !good {
            return Err(syntax(second_at));
        }
        number.digits = digits;
        let value = number.plain();
        Err(two_readings(value, value, mark_at))
    }

    /// A power of ten right after a number: printed for very small lengths, so read too.
    fn exponent(&mut self) -> Option<i32> {
        let mut ahead = *self;
        if !ahead.eat(|next| next == 'e' || next == 'E') {
            return None;
        }
        let negative = ahead.eat(|next| next == '-');
        let digits = ahead.digits();
        if digits.is_empty() || digits.len() > 3 {
            return None;
        }
        let size: i32 = digits.parse().ok()?;
        *self = ahead;
        Some(if negative { -size } else { size })
    }

    /// A fraction below one, as one sign or as two numbers with a line between.
    fn fraction(&mut self) -> Result<Option<(u32, u32)>, Error> {
        let at = self.at;
        if let Some(part) = self.peek().and_then(vulgar) {
            self.eat(|_| true);
            return Ok(Some(part));
        }
        let mut ahead = *self;
        let numerator = ahead.digits();
        if numerator.is_empty() || !ahead.eat(|next| matches!(next, '/' | '\u{2044}' | '\u{2215}'))
        {
            return Ok(None);
        }
        let denominator_at = ahead.at;
        let denominator = ahead.digits();
        *self = ahead;
        match (numerator.parse::<u32>(), denominator.parse::<u32>()) {
            (_, Ok(0) | Err(_)) => Err(syntax(denominator_at)),
            (_, Ok(denominator)) if denominator > DENOMINATOR => Err(syntax(denominator_at)),
            (Ok(numerator), Ok(denominator)) if numerator < denominator => {
                Ok(Some((numerator, denominator)))
            }
            _ => Err(syntax(at)),
        }
    }

    /// The unit that comes next; none when no letter or mark does.
    fn unit(&mut self) -> Result<Option<Unit>, Error> {
        let at = self.at;
        if self.eat(is_prime) {
            // Two single marks are typed for a double one.
            let size = if self.eat(is_prime) { 1 } else { 12 };
            // Feet are joined to inches by a hyphen: 2'-3".
            let mut ahead = *self;
            if size == 12 && ahead.eat(|next| next == '-') && ahead.number().is_ok() {
                self.eat(|_| true);
            }
            return Ok(Some(Unit {
                metric: false,
                size,
            }));
        }
        if self.eat(|next| matches!(next, '"' | '\u{2033}' | '\u{201d}')) {
            return Ok(Some(Unit {
                metric: false,
                size: 1,
            }));
        }
        let word = self.run(|next| next.is_ascii_alphabetic());
        if word.is_empty() {
            return Ok(None);
        }
        let (size, metric, _) = UNITS
            .iter()
            .find(|(_, _, names)| names.iter().any(|name| name.eq_ignore_ascii_case(word)))
            .ok_or_else(|| syntax(at))?;
        let stop_at = self.at;
        if self.eat(|next| next == '.') && self.peek().is_some_and(|next| next.is_ascii_digit()) {
            // 2 ft.5 in: five inches, or half an inch?
            return Err(syntax(stop_at));
        }
        Ok(Some(Unit {
            metric: *metric,
            size: *size,
        }))
    }
}

fn two_readings(decimal: f64, whole: f64, at: usize) -> Error {
    Error::new(ErrorKind::TwoReadings, "text", f64::NAN, decimal, whole).at_index(at)
}

/// A text no longer than what was read.
fn text(part: &str) -> ArrayString<CHARACTERS> {
    let mut text = ArrayString::new();
    join(&mut text, &[part]);
    text
}

/// Parts of what was read, or a point for a mark of it: there is always room.
fn join(text: &mut ArrayString<CHARACTERS>, parts: &[&str]) {
    for part in parts {
        let room = text.try_push_str(part);
        debug_assert!(room.is_ok());
    }
}

fn is_minus(next: char) -> bool {
    matches!(next, '-' | '\u{2212}')
}

/// Foot marks: straight, prime, and the curly apostrophe that replaces the straight one as people type.
fn is_prime(next: char) -> bool {
    matches!(next, '\'' | '\u{2032}' | '\u{2019}')
}

/// The fractions that are one character (Unicode, Number Forms and Latin-1).
fn vulgar(sign: char) -> Option<(u32, u32)> {
    Some(match sign {
        '¼' => (1, 4),
        '½' => (1, 2),
        '¾' => (3, 4),
        '⅐' => (1, 7),
        '⅑' => (1, 9),
        '⅒' => (1, 10),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '⅕' => (1, 5),
        '⅖' => (2, 5),
        '⅗' => (3, 5),
        '⅘' => (4, 5),
        '⅙' => (1, 6),
        '⅚' => (5, 6),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        '↉' => (0, 3),
        _ => return None,
    })
}
