//! Panels from a path of an SVG drawing.

use alloc::string::String;
use alloc::vec::Vec;

use kurbo::{Point, Vec2};

use super::{
    Flaw, Panel, Taken,
    path_data::{Command, Commands},
    shape::MOST_POINTS,
};
use crate::{Error, ErrorKind, hypotenuse::hypotenuse};

/// The farthest a point of a path may lie from the origin along either axis (mm).
const FARTHEST: f64 = 1e5;
/// The largest radius of an arc (mm).
const ROUNDEST: f64 = 1e7;
/// Points nearer to each other are one (mm): relative commands add up with rounding.
const SAME: f64 = 1e-6;

/// The scale of a drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Scale {
    /// What one unit of the drawing stands for (mm, 1e-4 to 1e4).
    MmPerUnit(f64),
    /// A length that is known, between two points of the drawing.
    Known {
        /// One point, in units of the drawing.
        from: Point,
        /// The other.
        to: Point,
        /// How far they truly lie apart (mm, 1 to 1e5).
        length: f64,
    },
}

/// What the subpaths after the first are.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum Inner {
    /// Holes.
    #[default]
    Holes,
    /// Flaws, with the margin to keep from each (mm, 0 to 1e4).
    Flaws {
        /// The margin.
        margin: f64,
    },
}

impl Panel {
    /// A panel from the path of an SVG drawing (the attribute `d`): its first subpath is the outline, the others are holes
    /// or flaws; a subpath of one point is a spot, of two a slit. Every subpath counts as closed.
    ///
    /// In a drawing y runs down the page; the panel is as the drawing looks, with y up. Transforms of the drawing are not
    /// known here: give the scale as drawn. Every command is read, relative ones and arcs too. Curves are followed by
    /// straight edges within `accuracy` (mm, 0.001 to 10).
    ///
    /// # Errors
    /// - `Syntax` naming `path`, with the character that cannot be read; `NotFinite` or `OutOfRange` naming `path`, with the
    ///   index of the command, for a point beyond 1e5 mm or a radius beyond 1e7 mm; `Count` when it has no subpath.
    /// - `NotFinite` or `OutOfRange` naming `mm_per_unit`, `length`, `accuracy` or `margin`; `NoSolution` naming `length`
    ///   when its two points lie in one place, or the scale would be out of range.
    /// - As of [`Panel::new`], [`Panel::with_holes`] and [`Panel::with_flaws`].
    ///
    /// # Source
    /// SVG 2 (W3C), chapter 9 *Paths*, and its implementation notes on elliptical arcs.
    ///
    /// ```
    /// use recloth::panel::{Inner, Panel, Scale};
    /// // Drawn a tenth of true size: 40 by 60 with rounded lower corners, and a hole.
    /// let path = "M0 0H40V52a8 8 0 0 1-8 8H8a8 8 0 0 1-8-8z M10 10h2v2h-2z";
    /// let pocket = Panel::from_svg_path("pocket", path, Scale::MmPerUnit(10.0), Inner::Holes, 0.01)?;
    /// assert_eq!((pocket.bounds().width(), pocket.bounds().height()), (400.0, 600.0));
    /// assert_eq!(pocket.holes().len(), 1);
    /// let error = Panel::from_svg_path("pocket", "M0 0 L 9", Scale::MmPerUnit(1.0), Inner::Holes, 0.1).unwrap_err();
    /// assert_eq!(error.to_string(), "path, character 9: cannot be read from here as the path of an SVG drawing");
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn from_svg_path(
        name: impl Into<String>,
        path: &str,
        scale: Scale,
        inner: Inner,
        accuracy: f64,
    ) -> Result<Panel, Error> {
        let mm_per_unit = scale.mm_per_unit()?;
        let accuracy = Error::check("accuracy", accuracy, 1e-3, 10.0)?;
        if let Inner::Flaws { margin } = inner {
            Error::check("margin", margin, 0.0, 1e4)?;
        }
        let mut rings = subpaths(path, mm_per_unit, accuracy)?.into_iter();
        let outline = rings
            .next()
            .ok_or_else(|| Error::new(ErrorKind::Count, "path", 0.0, 1.0, f64::NAN))?;
        let panel = Panel::taken_as(name.into(), outline, Taken::Path { mm_per_unit }, 0)?;
        match inner {
            Inner::Holes => panel.with_holes(rings.collect()),
            Inner::Flaws { margin } => {
                panel.with_flaws(rings.map(|ring| Flaw::new(ring, margin)).collect())
            }
        }
    }
}

impl Scale {
    fn mm_per_unit(self) -> Result<f64, Error> {
        let (least, most) = (1e-4, 1e4);
        match self {
            Scale::MmPerUnit(scale) => Error::check("mm_per_unit", scale, least, most),
            Scale::Known { from, to, length } => {
                let length = Error::check("length", length, 1.0, 1e5)?;
                for value in [from.x, from.y, to.x, to.y] {
                    Error::check("known", value, -1e9, 1e9)?;
                }
                let units = libm::hypot(to.x - from.x, to.y - from.y);
                let scale = length / units;
                if scale >= least && scale <= most {
                    Ok(scale)
                } else {
                    let (min, max) = (least * units, most * units);
                    Err(Error::no_solution("length", length, min.max(1.0), max))
                }
            }
        }
    }
}

/// The subpaths as rings of points in mm, y up.
fn subpaths(path: &str, mm_per_unit: f64, accuracy: f64) -> Result<Vec<Vec<Point>>, Error> {
    let mut pen = Pen {
        mm_per_unit,
        accuracy,
        rings: Vec::new(),
        at: Point::ZERO,
        start: Point::ZERO,
        steer: None,
        closed: true,
    };
    for (index, command) in Commands::new(path).enumerate() {
        let (relative, command) = command.map_err(|character| {
            Error::new(ErrorKind::Syntax, "path", f64::NAN, f64::NAN, f64::NAN).at_index(character)
        })?;
        pen.draw(relative, command)
            .map_err(|error| error.at_index(index))?;
    }
    for ring in &mut pen.rings {
        // What comes back to its start ends there once.
        while ring.len() > 1 && same(ring[0], ring[ring.len() - 1]) {
            ring.pop();
        }
    }
    Ok(pen.rings)
}

fn same(a: Point, b: Point) -> bool {
    hypotenuse(b.x - a.x, b.y - a.y) < SAME
}

/// The last point that steered a curve: a smooth curve of the same kind goes on from it.
enum Steer {
    Cubic(Point),
    Quadratic(Point),
}

/// Follows the commands of a path, in units of the drawing.
struct Pen {
    mm_per_unit: f64,
    accuracy: f64,
    rings: Vec<Vec<Point>>,
    at: Point,
    start: Point,
    steer: Option<Steer>,
    /// The next line or curve begins a subpath.
    closed: bool,
}

impl Pen {
    fn draw(&mut self, relative: bool, command: Command) -> Result<(), Error> {
        let origin = if relative {
            self.at.to_vec2()
        } else {
            Vec2::ZERO
        };
        let before = self.steer.take();
        match command {
            Command::Move(to) => {
                self.at = to + origin;
                self.start = self.at;
                self.begin()
            }
            Command::Close => {
                self.at = self.start;
                self.closed = true;
                Ok(())
            }
            Command::Line(to) => self.line(to + origin),
            Command::Horizontal(x) => self.line(Point::new(x + origin.x, self.at.y)),
            Command::Vertical(y) => self.line(Point::new(self.at.x, y + origin.y)),
            Command::Cubic(first, second, to) => {
                self.cubic(first + origin, second + origin, to + origin)
            }
            Command::SmoothCubic(second, to) => {
                let first = match before {
                    Some(Steer::Cubic(steer)) => self.at + (self.at - steer),
                    _ => self.at,
                };
                self.cubic(first, second + origin, to + origin)
            }
            Command::Quadratic(steer, to) => self.quadratic(steer + origin, to + origin),
            Command::SmoothQuadratic(to) => {
                let steer = match before {
                    Some(Steer::Quadratic(steer)) => self.at + (self.at - steer),
                    _ => self.at,
                };
                self.quadratic(steer, to + origin)
            }
            Command::Arc {
                radii,
                turn_deg,
                large,
                sweep,
                to,
            } => {
                let arc = Arc {
                    radii,
                    turn_deg,
                    large,
                    sweep,
                };
                self.arc(&arc, to + origin)
            }
        }
    }

    /// A point of the drawing as a point of the panel.
    fn mm(&self, point: Point) -> Result<Point, Error> {
        let check = |value: f64| Error::check("path", value, -FARTHEST, FARTHEST);
        Ok(Point::new(
            check(point.x * self.mm_per_unit)?,
            check(0.0 - point.y * self.mm_per_unit)?,
        ))
    }

    /// Begins a subpath where the pen is.
    fn begin(&mut self) -> Result<(), Error> {
        let at = self.mm(self.at)?;
        self.rings.push(alloc::vec![at]);
        self.closed = false;
        Ok(())
    }

    fn add(&mut self, point: Point) -> Result<(), Error> {
        let most = MOST_POINTS as f64;
        if let Some(ring) = self.rings.last_mut()
            && ring.last().is_none_or(|&last| !same(last, point))
        {
            if ring.len() > MOST_POINTS {
                return Err(Error::new(ErrorKind::Count, "path", most + 1.0, 3.0, most));
            }
            ring.push(point);
        }
        Ok(())
    }

    fn line(&mut self, to: Point) -> Result<(), Error> {
        if self.closed {
            self.begin()?;
        }
        self.at = to;
        let to = self.mm(to)?;
        self.add(to)
    }

    fn quadratic(&mut self, steer: Point, to: Point) -> Result<(), Error> {
        // The same curve, raised to a cubic.
        let towards = |end: Point| end + (steer - end) * (2.0 / 3.0);
        self.cubic(towards(self.at), towards(to), to)?;
        self.steer = Some(Steer::Quadratic(steer));
        Ok(())
    }

    fn cubic(&mut self, first: Point, second: Point, to: Point) -> Result<(), Error> {
        if self.closed {
            self.begin()?;
        }
        let (a, b) = (self.mm(self.at)?, self.mm(first)?);
        let (c, d) = (self.mm(second)?, self.mm(to)?);
        // The second derivative is at most 6 times the larger of these, and a chord over a step of 1/n strays by at most
        // an eighth of it over n² (Taylor).
        let bend =
            |p: Point, q: Point, r: Point| hypotenuse(p.x - 2.0 * q.x + r.x, p.y - 2.0 * q.y + r.y);
        let most = bend(a, b, c).max(bend(b, c, d));
        let steps = self.steps(libm::sqrt(0.75 * most / self.accuracy))?;
        for step in 1..steps {
            let t = step as f64 / steps as f64;
            let s = 1.0 - t;
            let at = a.to_vec2() * (s * s * s)
                + b.to_vec2() * (3.0 * s * s * t)
                + c.to_vec2() * (3.0 * s * t * t)
                + d.to_vec2() * (t * t * t);
            self.add(at.to_point())?;
        }
        self.add(d)?;
        self.at = to;
        self.steer = Some(Steer::Cubic(second));
        Ok(())
    }

    /// A number of steps, at least one, unless it is more than an outline holds.
    fn steps(&self, wanted: f64) -> Result<usize, Error> {
        let most = MOST_POINTS as f64;
        if wanted > most {
            return Err(Error::new(
                ErrorKind::Count,
                "path",
                libm::ceil(wanted),
                3.0,
                most,
            ));
        }
        Ok((libm::ceil(wanted) as usize).max(1))
    }

    fn arc(&mut self, arc: &Arc, to: Point) -> Result<(), Error> {
        if self.closed {
            self.begin()?;
        }
        let (from, end) = (self.at, self.mm(to)?);
        for radius in [arc.radii.0, arc.radii.1] {
            let radius = libm::fabs(radius) * self.mm_per_unit;
            Error::check("path", radius, 0.0, ROUNDEST)?;
        }
        Error::check("path", arc.turn_deg, -1e6, 1e6)?;
        if let Some(round) = arc.round(from, to) {
            let widest = round.radii.0.max(round.radii.1) * self.mm_per_unit;
            // A chord of an ellipse strays no farther than that of its larger radius.
            let step = 2.0 * libm::acos((1.0 - self.accuracy / widest).max(0.0));
            let steps = self.steps(libm::fabs(round.sweep) / step)?;
            for index in 1..steps {
                let at = round.at(index as f64 / steps as f64);
                let at = self.mm(at)?;
                self.add(at)?;
            }
        }
        self.at = to;
        self.add(end)
    }
}

/// An elliptical arc as a path writes it.
struct Arc {
    radii: (f64, f64),
    turn_deg: f64,
    large: bool,
    sweep: bool,
}

/// The same by its centre.
struct Round {
    centre: Point,
    radii: (f64, f64),
    /// Sine and cosine of the turn of its axes.
    turn: (f64, f64),
    /// Where it starts, as an angle of the circle it is stretched from, and how far it runs (radians).
    start: f64,
    sweep: f64,
}

impl Arc {
    /// By its centre; None for a straight line. SVG 2, implementation notes B.2.4 and B.2.5.
    fn round(&self, from: Point, to: Point) -> Option<Round> {
        let (mut rx, mut ry) = (libm::fabs(self.radii.0), libm::fabs(self.radii.1));
        let half = (from - to) / 2.0;
        let turn = libm::sincos((self.turn_deg % 360.0).to_radians());
        let (sin, cos) = turn;
        let (x, y) = (cos * half.x + sin * half.y, cos * half.y - sin * half.x);
        if rx == 0.0 || ry == 0.0 || (x == 0.0 && y == 0.0) {
            return None;
        }
        // On the unit circle the ends lie at ±(u, v); radii too small to reach are made larger alike.
        let (mut u, mut v) = (x / rx, y / ry);
        let reach = hypotenuse(u, v);
        if reach > 1.0 {
            (rx, ry) = (rx * reach, ry * reach);
            (u, v) = (u / reach, v / reach);
        }
        let square = u * u + v * v;
        let mut aside = libm::sqrt(((1.0 - square) / square).max(0.0));
        if self.large == self.sweep {
            aside = -aside;
        }
        let (cu, cv) = (aside * v, -aside * u);
        let middle = from.midpoint(to);
        let (cx, cy) = (cu * rx, cv * ry);
        let centre = middle + Vec2::new(cos * cx - sin * cy, sin * cx + cos * cy);
        let start = libm::atan2(v - cv, u - cu);
        let end = libm::atan2(-v - cv, -u - cu);
        let mut sweep = end - start;
        if self.sweep && sweep < 0.0 {
            sweep += core::f64::consts::TAU;
        } else if !self.sweep && sweep > 0.0 {
            sweep -= core::f64::consts::TAU;
        }
        let round = Round {
            centre,
            radii: (rx, ry),
            turn,
            start,
            sweep,
        };
        (centre.is_finite() && sweep.is_finite() && rx.is_finite() && ry.is_finite())
            .then_some(round)
    }
}

impl Round {
    /// The point at this share of the way.
    fn at(&self, share: f64) -> Point {
        let (sin, cos) = libm::sincos(self.start + self.sweep * share);
        let (x, y) = (self.radii.0 * cos, self.radii.1 * sin);
        let (turn_sin, turn_cos) = self.turn;
        self.centre + Vec2::new(turn_cos * x - turn_sin * y, turn_sin * x + turn_cos * y)
    }
}
