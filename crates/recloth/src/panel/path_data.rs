//! Reads the path of an SVG drawing, command by command: SVG 2 (W3C), section 9.3, *Path data*.

use kurbo::Point;

/// One command with its points as written.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Command {
    Move(Point),
    Line(Point),
    Horizontal(f64),
    Vertical(f64),
    Cubic(Point, Point, Point),
    SmoothCubic(Point, Point),
    Quadratic(Point, Point),
    SmoothQuadratic(Point),
    Arc {
        radii: (f64, f64),
        turn_deg: f64,
        large: bool,
        sweep: bool,
        to: Point,
    },
    Close,
}

/// The commands of a path, each with whether it is relative; at a fault, the character that cannot be read, then nothing.
pub(super) struct Commands<'a> {
    text: &'a str,
    /// The next byte.
    at: usize,
    /// The command that numbers without a letter repeat.
    letter: Option<u8>,
}

/// Nothing can be read here.
struct Fault;

impl<'a> Commands<'a> {
    pub(super) fn new(text: &'a str) -> Commands<'a> {
        Commands {
            text,
            at: 0,
            letter: None,
        }
    }

    fn peek(&self) -> Option<u8> {
        self.text.as_bytes().get(self.at).copied()
    }

    fn skip(&mut self, which: fn(u8) -> bool) -> usize {
        let from = self.at;
        while self.peek().is_some_and(which) {
            self.at += 1;
        }
        self.at - from
    }

    fn skip_space(&mut self) {
        self.skip(|byte| matches!(byte, b' ' | b'\t' | b'\n' | b'\r' | 0x0c));
    }

    /// Blanks with at most one comma among them.
    fn skip_comma(&mut self) -> bool {
        self.skip_space();
        let comma = self.take(b",");
        self.skip_space();
        comma
    }

    /// Takes the next byte if it is one of these.
    fn take(&mut self, offered: &[u8]) -> bool {
        let taken = self.peek().is_some_and(|byte| offered.contains(&byte));
        self.at += usize::from(taken);
        taken
    }

    fn command(&mut self) -> Result<(bool, Command), Fault> {
        let letter = match self.peek().ok_or(Fault)? {
            letter if letter.is_ascii_alphabetic() => {
                self.at += 1;
                self.skip_space();
                letter
            }
            // Numbers go on with the command before; after a move they are lines.
            _ => match self.letter.ok_or(Fault)? {
                b'M' => b'L',
                b'm' => b'l',
                b'Z' | b'z' => return Err(Fault),
                letter => letter,
            },
        };
        if self.letter.is_none() && !letter.eq_ignore_ascii_case(&b'm') {
            // The fault is the letter itself, not what follows.
            self.at = 0;
            self.skip_space();
            return Err(Fault);
        }
        let from = self.at;
        let command = match letter.to_ascii_lowercase() {
            b'm' => Command::Move(self.point()?),
            b'l' => Command::Line(self.point()?),
            b'h' => Command::Horizontal(self.number()?),
            b'v' => Command::Vertical(self.number()?),
            b'c' => Command::Cubic(self.point()?, self.next_point()?, self.next_point()?),
            b's' => Command::SmoothCubic(self.point()?, self.next_point()?),
            b'q' => Command::Quadratic(self.point()?, self.next_point()?),
            b't' => Command::SmoothQuadratic(self.point()?),
            b'a' => self.arc()?,
            b'z' => Command::Close,
            _ => {
                self.at = from.saturating_sub(1);
                return Err(Fault);
            }
        };
        self.letter = Some(letter);
        let end = self.at;
        let comma = self.skip_comma();
        // A comma goes on only to further numbers.
        if comma && !self.peek().is_some_and(starts_number) {
            self.at = end;
            self.skip_space();
            return Err(Fault);
        }
        Ok((letter.is_ascii_lowercase(), command))
    }

    fn arc(&mut self) -> Result<Command, Fault> {
        Ok(Command::Arc {
            radii: (self.number()?, self.next_number()?),
            turn_deg: self.next_number()?,
            large: self.next_flag()?,
            sweep: self.next_flag()?,
            to: self.next_point()?,
        })
    }

    fn point(&mut self) -> Result<Point, Fault> {
        Ok(Point::new(self.number()?, self.next_number()?))
    }

    fn next_point(&mut self) -> Result<Point, Fault> {
        self.skip_comma();
        self.point()
    }

    fn next_number(&mut self) -> Result<f64, Fault> {
        self.skip_comma();
        self.number()
    }

    /// A single 0 or 1, which needs nothing after it.
    fn next_flag(&mut self) -> Result<bool, Fault> {
        self.skip_comma();
        let set = self.peek() == Some(b'1');
        if self.take(b"01") {
            Ok(set)
        } else {
            Err(Fault)
        }
    }

    fn number(&mut self) -> Result<f64, Fault> {
        let from = self.at;
        let digit = |byte: u8| byte.is_ascii_digit();
        self.take(b"+-");
        let mut digits = self.skip(digit);
        if self.take(b".") {
            digits += self.skip(digit);
        }
        if digits == 0 {
            self.at = from;
            return Err(Fault);
        }
        let end = self.at;
        if self.take(b"eE") {
            self.take(b"+-");
            if self.skip(digit) == 0 {
                self.at = end;
            }
        }
        self.text[from..self.at].parse().map_err(|_| Fault)
    }
}

fn starts_number(byte: u8) -> bool {
    byte.is_ascii_digit() || matches!(byte, b'+' | b'-' | b'.')
}

impl Iterator for Commands<'_> {
    type Item = Result<(bool, Command), usize>;

    fn next(&mut self) -> Option<Self::Item> {
        self.skip_space();
        self.peek()?;
        let command = self.command();
        Some(command.map_err(|Fault| {
            let fault = self
                .text
                .get(..self.at)
                .map_or(0, |read| read.chars().count());
            self.at = self.text.len();
            fault
        }))
    }
}
