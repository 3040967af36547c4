//! A panel of cloth as it lies on the table: what there is to cut from.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use kurbo::{Point, Rect};

use super::rectangle::{PanelRectangle, largest_rectangle, tallest_rectangle};
use super::repeat::Repeat;
use super::ring::{self, Ring};
use super::taken::{Spare, SpareReading, Taken};
use super::usable::{self, Away, area_less, cut_away};
use crate::{Error, ErrorKind, doubt::SPARE_MISFIT, hypotenuse::hypotenuse};

/// The most points an outline, a hole or a flaw may have.
pub(super) const MOST_POINTS: usize = 5000;
/// The most holes, flaws or spare readings.
const MOST_ITEMS: usize = 1000;
/// The widest strip or margin that is cut away (mm).
const WIDEST: f64 = 1e3;
/// Least width or height of a ring, the larger of the two (mm). Anything smaller is a spot.
const SMALLEST: f64 = 0.01;
/// How near a rectangle comes to a flaw's margin (mm).
const NEAR: f64 = 0.1;

/// How many of the cloth's sides are fit to show.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum Faces {
    /// One: the cloth has a right side and a wrong side. Its outline is drawn right side up.
    #[default]
    One,
    /// Two: both sides look alike, so any piece may be turned over.
    Two,
}

/// A stain, worn place, hole, slit or row of old stitching to keep clear of.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Flaw {
    /// One point is a spot, two are a slit, 3 to 5000 the outline of an area (mm).
    pub outline: Vec<Point>,
    /// How far every piece keeps from it (mm, 0 to 1e4).
    #[cfg_attr(feature = "serde", serde(default))]
    pub margin: f64,
    /// What it is, as the maker calls it: "scorch", "worn elbow"; may be empty.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "String::is_empty")
    )]
    pub what: String,
    /// Roles of pieces it does not matter for: a stain under a "pocket bag". Under "seam allowance" it may lie between the cut
    /// line and the seam line of any piece, not within the seam line.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "Vec::is_empty")
    )]
    pub under: Vec<String>,
}

/// The word of [`Flaw::under`] for what lies between cut line and seam line.
pub const SEAM_ALLOWANCE: &str = "seam allowance";

impl Flaw {
    /// A flaw with the margin to keep from it.
    pub fn new<P: Into<Point>>(outline: impl IntoIterator<Item = P>, margin: f64) -> Flaw {
        Flaw {
            outline: outline.into_iter().map(Into::into).collect(),
            margin,
            what: String::new(),
            under: Vec::new(),
        }
    }

    /// The needle holes of an old seam, dart or hem along a row of points: a slit from each point to the next. None where
    /// there are fewer than two points.
    ///
    /// ```
    /// use recloth::panel::Flaw;
    /// let dart = Flaw::stitching([(150.0, 700.0), (160.0, 600.0), (170.0, 700.0)], 2.0);
    /// assert_eq!((dart.len(), dart[1].what.as_str()), (2, "old stitching"));
    /// ```
    pub fn stitching<P: Into<Point>>(row: impl IntoIterator<Item = P>, margin: f64) -> Vec<Flaw> {
        let row: Vec<Point> = row.into_iter().map(Into::into).collect();
        row.windows(2)
            .map(|ends| Flaw {
                what: "old stitching".into(),
                ..Flaw::new(ends.iter().copied(), margin)
            })
            .collect()
    }

    /// The same flaw, called this.
    pub fn called(self, what: impl Into<String>) -> Flaw {
        Flaw {
            what: what.into(),
            ..self
        }
    }

    /// The same flaw, which may lie under pieces of these roles.
    ///
    /// ```
    /// use recloth::panel::{Flaw, SEAM_ALLOWANCE};
    /// let stain = Flaw::new([(300.0, 500.0)], 8.0).under(["pocket bag", SEAM_ALLOWANCE]);
    /// assert!(stain.may_lie_under("pocket bag") && !stain.may_lie_under("facing"));
    /// ```
    pub fn under<S: Into<String>>(self, roles: impl IntoIterator<Item = S>) -> Flaw {
        Flaw {
            under: roles.into_iter().map(Into::into).collect(),
            ..self
        }
    }

    /// Whether it does not matter under a piece of this role, or under "seam allowance" (which "" never is).
    pub fn may_lie_under(&self, role: &str) -> bool {
        !role.is_empty() && self.under.iter().any(|other| other == role)
    }
}

/// A panel of cloth as it lies right side up on the table. Immutable: each `with_` gives the panel changed.
///
/// Made from its corners by [`Panel::new`], from tape readings by [`Panel::by_triangles`], from offsets by
/// [`Panel::by_offsets`], from a photograph by [`Panel::from_photo`], or from a drawing by [`Panel::from_svg_path`].
/// Outline and holes keep their points as given, y up the page, either direction round. None may touch or cross itself;
/// holes may touch or overlap the outline, flaws and each other. Edge `i` of the outline runs from point `i` to the next.
///
/// ```
/// use recloth::panel::{Flaw, Panel};
/// // Invented: half the front of a house-coat, with a scorch mark and the needle holes of its pocket.
/// let front = Panel::new("front", [(0.0, 0.0), (480.0, 0.0), (430.0, 900.0), (40.0, 900.0)])?
///     .with_flaws(vec![
///         Flaw::new([(300.0, 500.0), (340.0, 500.0), (320.0, 560.0)], 10.0).called("scorch"),
///         Flaw::new([(150.0, 300.0), (290.0, 300.0)], 2.0).called("old stitching"),
///     ])?;
/// assert_eq!(front.area_mm2(), 391_500.0);
/// // 15 mm of each seam and 40 mm of the hem are worn or pricked.
/// let usable = front.usable(&[40.0, 15.0, 10.0, 15.0], 0.1)?;
/// assert_eq!((usable.len(), usable[0].holes().len()), (1, 2));
/// assert_eq!(usable[0].largest_rectangle()?.grain_deg, 90.0);
/// let crossed = Panel::new("bow", [(0.0, 0.0), (9.0, 9.0), (9.0, 0.0), (0.0, 9.0)]).unwrap_err();
/// assert_eq!(crossed.to_string(), "outline: the outline crosses itself or has no area (at 0)");
/// # Ok::<(), recloth::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(try_from = "Written", into = "Written"))]
pub struct Panel {
    name: String,
    outline: Vec<Point>,
    holes: Vec<Vec<Point>>,
    flaws: Vec<Flaw>,
    grain_deg: f64,
    faces: Faces,
    nap: bool,
    repeat: Option<Repeat>,
    taken: Taken,
    spares: Vec<Spare>,
    doubts: u64,
}

impl Panel {
    /// A sound panel of one-faced cloth without nap, grain straight up the page: 3 to 5000 points (mm, each coordinate
    /// -1e5 to 1e5). The first may be repeated at the end.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `Count` naming `outline`; `Outline` when it touches or crosses itself, or has no area.
    /// `at` is the index of the point.
    pub fn new<P: Into<Point>>(
        name: impl Into<String>,
        outline: impl IntoIterator<Item = P>,
    ) -> Result<Panel, Error> {
        Panel::taken_as(
            name.into(),
            outline.into_iter().map(Into::into).collect(),
            Taken::Outline,
            0,
        )
    }

    /// A panel of this outline, checked, and how it was taken.
    pub(super) fn taken_as(
        name: String,
        outline: Vec<Point>,
        taken: Taken,
        doubts: u64,
    ) -> Result<Panel, Error> {
        check_ring("outline", &outline, None)?;
        Ok(Panel {
            name,
            outline,
            holes: Vec::new(),
            flaws: Vec::new(),
            grain_deg: 90.0,
            faces: Faces::One,
            nap: false,
            repeat: None,
            taken,
            spares: Vec::new(),
            doubts,
        })
    }

    /// The panel with these holes (up to 1000) in place of those it had.
    ///
    /// # Errors
    /// As of [`Panel::new`], naming `holes`; `at` is the index of the hole.
    pub fn with_holes(self, holes: Vec<Vec<Point>>) -> Result<Panel, Error> {
        Error::check_items("holes", holes.len(), 0, MOST_ITEMS)?;
        for (index, hole) in holes.iter().enumerate() {
            check_ring("holes", hole, Some(index))?;
        }
        Ok(Panel { holes, ..self })
    }

    /// The panel with these flaws (up to 1000) in place of those it had.
    ///
    /// # Errors
    /// `at` is the index of the flaw: as of [`Panel::new`], naming `flaws`, or `margin` (0 to 1e4).
    pub fn with_flaws(self, flaws: Vec<Flaw>) -> Result<Panel, Error> {
        Error::check_items("flaws", flaws.len(), 0, MOST_ITEMS)?;
        for (index, flaw) in flaws.iter().enumerate() {
            match flaw.outline.len() {
                1 | 2 => ring::check_points("flaws", &flaw.outline, (1, 2), Some(index))?,
                _ => check_ring("flaws", &flaw.outline, Some(index))?,
            }
            Error::check("margin", flaw.margin, 0.0, 1e4).map_err(|error| error.at_index(index))?;
        }
        Ok(Panel { flaws, ..self })
    }

    /// The panel with this direction of the lengthwise grain, counter-clockwise from the x axis; with a nap or one-way print,
    /// the way it runs (degrees, -360 to 360; 90 is up the page).
    ///
    /// # Errors
    /// `NotFinite` or `OutOfRange` naming `grain_deg`.
    pub fn with_grain_deg(self, grain_deg: f64) -> Result<Panel, Error> {
        let grain_deg = Error::check("grain_deg", grain_deg, -360.0, 360.0)?;
        Ok(Panel { grain_deg, ..self })
    }

    /// The panel with its lengthwise grain from one corner of the outline towards another.
    ///
    /// # Errors
    /// `NoSolution` naming `from` or `to`: no such corner, or both in one place.
    pub fn with_grain_between(self, from: usize, to: usize) -> Result<Panel, Error> {
        let along = self.corner("to", to)? - self.corner("from", from)?;
        if along.x == 0.0 && along.y == 0.0 {
            return Err(Error::no_solution("to", to as f64, f64::NAN, f64::NAN));
        }
        let grain_deg = libm::atan2(along.y, along.x).to_degrees();
        Ok(Panel { grain_deg, ..self })
    }

    /// The panel with this many sides that may show.
    pub fn with_faces(self, faces: Faces) -> Panel {
        Panel { faces, ..self }
    }

    /// The panel with a nap, pile or one-way print, so that every piece must point the same way; or without.
    pub fn with_nap(self, nap: bool) -> Panel {
        Panel { nap, ..self }
    }

    /// The panel with a stripe, check or print that repeats; or without.
    ///
    /// ```
    /// use recloth::panel::{Panel, Repeat};
    /// let corners = [(0.0, 0.0), (480.0, 0.0), (480.0, 900.0), (0.0, 900.0)];
    /// // A check, 80 along the grain and 60 across, whose first whole square begins here.
    /// let check = Repeat::new(80.0, 60.0).beginning_at((22.0, 35.0));
    /// let checked = Panel::new("back", corners)?.with_repeat(Some(check))?;
    /// assert_eq!(checked.repeat(), Some(check));
    /// let none = checked.with_repeat(Some(Repeat::new(0.5, 60.0))).unwrap_err();
    /// assert_eq!(none.to_string(), "along = 0.5 is not between 1 and 2000");
    /// # Ok::<(), recloth::Error>(())
    /// ```
    ///
    /// # Errors
    /// As of [`Repeat::checked`].
    pub fn with_repeat(self, repeat: Option<Repeat>) -> Result<Panel, Error> {
        let repeat = repeat.map(Repeat::checked).transpose()?;
        Ok(Panel { repeat, ..self })
    }

    /// The panel under another name.
    pub fn with_name(self, name: impl Into<String>) -> Panel {
        Panel {
            name: name.into(),
            ..self
        }
    }

    /// The panel with these spare readings between its corners (up to 1000) in place of those it had, each with what it
    /// misses. One that misses by over 0.5 % raises the doubt `SPARE_MISFIT`. They never move a corner.
    ///
    /// # Errors
    /// `at` is the index of the reading: `NotFinite` or `OutOfRange` naming `reading` (1 to 1e5); `NoSolution` naming
    /// `from` or `to`, when it is no corner of the outline, or both are the same.
    pub fn with_spares(self, readings: &[SpareReading]) -> Result<Panel, Error> {
        Error::check_items("spares", readings.len(), 0, MOST_ITEMS)?;
        let mut spares = Vec::with_capacity(readings.len());
        let mut doubts = self.doubts & !SPARE_MISFIT;
        for (index, &spare) in readings.iter().enumerate() {
            let SpareReading { from, to, reading } = spare;
            let here = |error: Error| error.at_index(index);
            let ends = (
                self.corner("from", from).map_err(here)?,
                self.corner("to", to).map_err(here)?,
            );
            if from == to {
                return Err(here(Error::no_solution(
                    "to",
                    to as f64,
                    f64::NAN,
                    f64::NAN,
                )));
            }
            let reading = Error::check("reading", reading, 1.0, 1e5).map_err(here)?;
            let there = hypotenuse(ends.1.x - ends.0.x, ends.1.y - ends.0.y);
            let misfit = there - reading;
            if misfit.abs() > 0.005 * reading {
                doubts |= SPARE_MISFIT;
            }
            spares.push(Spare {
                from,
                to,
                reading,
                misfit,
            });
        }
        Ok(Panel {
            spares,
            doubts,
            ..self
        })
    }

    fn corner(&self, argument: &'static str, index: usize) -> Result<Point, Error> {
        let last = self.outline.len() as f64 - 1.0;
        let none = Error::no_solution(argument, index as f64, 0.0, last);
        self.outline.get(index).copied().ok_or(none)
    }

    /// What the maker calls it; used in messages.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The edge of the cloth (mm), as given.
    pub fn outline(&self) -> &[Point] {
        &self.outline
    }

    /// Holes (mm), as given.
    pub fn holes(&self) -> &[Vec<Point>] {
        &self.holes
    }

    /// Flaws to keep clear of.
    pub fn flaws(&self) -> &[Flaw] {
        &self.flaws
    }

    /// Direction of the lengthwise grain, counter-clockwise from the x axis (degrees).
    pub fn grain_deg(&self) -> f64 {
        self.grain_deg
    }

    /// How many of its sides may show.
    pub fn faces(&self) -> Faces {
        self.faces
    }

    /// Whether it has a nap, pile or one-way print.
    pub fn nap(&self) -> bool {
        self.nap
    }

    /// How a stripe, check or print repeats on it, if one does.
    pub fn repeat(&self) -> Option<Repeat> {
        self.repeat
    }

    /// How its outline was found, and how well.
    pub fn taken(&self) -> Taken {
        self.taken
    }

    /// Spare readings and what each misses.
    pub fn spares(&self) -> &[Spare] {
        &self.spares
    }

    /// The largest misfit of a spare reading, without its sign (mm); None where there is no spare reading.
    pub fn largest_misfit(&self) -> Option<f64> {
        let misfits = self.spares.iter().map(|spare| spare.misfit.abs());
        misfits.reduce(f64::max)
    }

    /// Doubts about the measuring, a set of bits of [`doubt`](crate::doubt).
    pub fn doubts(&self) -> u64 {
        self.doubts
    }

    /// Area of cloth: within the outline and outside the holes, flaws included (mm2).
    pub fn area_mm2(&self) -> f64 {
        match self.holes.len() {
            0 => ring::area(&self.outline).abs(),
            // Holes may overlap: they are cut out rather than added up.
            _ => area_less(&self.outline, &self.holes),
        }
    }

    /// The smallest upright box that holds it.
    pub fn bounds(&self) -> Rect {
        let mut points = self.outline.iter();
        let first = points
            .next()
            .map_or(Rect::ZERO, |&p| Rect::from_points(p, p));
        points.fold(first, |all, &point| all.union_pt(point))
    }

    /// What can be cut from: the panel less a strip along each edge, its holes, and its flaws with their margins. The
    /// largest part comes first; where the panel falls apart, the others are named after it ("front, part 2"). Grain, faces,
    /// nap, repeat and doubts are the panel's; spare readings, whose corners are gone, are not carried on.
    ///
    /// - `losses`: lost along the edge from each point of the outline to the next (mm, 0 to 1000): worn, frayed, or with the
    ///   needle holes of the old seam.
    /// - `accuracy`: most that rounding may cost at any place (mm, 0.01 to 10). A spot or a slit needs as large a margin.
    ///
    /// # Errors
    /// - `NotFinite`, `OutOfRange`, `Count` naming `losses` or `accuracy`; `Count` naming `outline`, `holes` or `flaws` of
    ///   over 2000 points: one traced from a picture is thinned as at [`usable_panel`](super::usable_panel).
    /// - `NoSolution` naming `flaws` or `holes`: this one lies wholly outside the panel. Naming `margin`: that of this spot or
    ///   slit is below the accuracy, or over 1000. Naming `losses` (the largest), `margin` (the largest), `holes` or `flaws`:
    ///   nothing is left. Naming `accuracy`: the cut could not be proved within it.
    pub fn usable(&self, losses: &[f64], accuracy: f64) -> Result<Vec<Panel>, Error> {
        let ring = Ring::new("outline", &self.outline, usable::MOST_POINTS, None)?;
        let edges = (self.outline.len(), self.outline.len());
        let losses = Error::check_list("losses", losses, 0.0, WIDEST, edges)?;
        let mut away = Vec::with_capacity(self.holes.len() + self.flaws.len());
        for (index, hole) in self.holes.iter().enumerate() {
            away.push(Away::new("holes", index, hole, 0.0)?);
        }
        for (index, flaw) in self.flaws.iter().enumerate() {
            if flaw.margin > WIDEST {
                let wide = Error::no_solution("margin", flaw.margin, 0.0, WIDEST);
                return Err(wide.at_index(index));
            }
            away.push(Away::new("flaws", index, &flaw.outline, flaw.margin)?);
        }
        let parts = cut_away(&ring, losses, &away, accuracy)?;
        let named = |index: usize| match index {
            0 => self.name.clone(),
            _ => format!("{}, part {}", self.name, index + 1),
        };
        Ok(parts
            .into_iter()
            .enumerate()
            .map(|(index, part)| Panel {
                name: named(index),
                outline: part.outline,
                holes: part.holes,
                flaws: Vec::new(),
                grain_deg: self.grain_deg,
                faces: self.faces,
                nap: self.nap,
                repeat: self.repeat,
                taken: self.taken,
                spares: Vec::new(),
                doubts: self.doubts,
            })
            .collect())
    }

    /// The largest rectangle, one side on the straight grain, that it holds clear of its holes and flaws.
    ///
    /// # Errors
    /// As of [`largest_rectangle`] and [`Panel::usable`].
    pub fn largest_rectangle(&self) -> Result<PanelRectangle, Error> {
        let larger = |a: &PanelRectangle, b: &PanelRectangle| a.area_mm2 > b.area_mm2;
        self.best_rectangle(
            |panel| largest_rectangle(&panel.outline, &panel.holes, panel.grain_deg),
            larger,
        )
    }

    /// The tallest rectangle of this width across the straight grain (mm, 0.1 to 2e5) that it holds clear of its holes and
    /// flaws.
    ///
    /// # Errors
    /// As of [`tallest_rectangle`] and [`Panel::usable`].
    pub fn tallest_rectangle(&self, width: f64) -> Result<PanelRectangle, Error> {
        let taller = |a: &PanelRectangle, b: &PanelRectangle| a.height > b.height;
        self.best_rectangle(
            |panel| tallest_rectangle(&panel.outline, width, &panel.holes, panel.grain_deg),
            taller,
        )
    }

    /// The best of the rectangles in its parts; where none has one, why the first has none.
    fn best_rectangle(
        &self,
        find: impl Fn(&Panel) -> Result<PanelRectangle, Error>,
        better: impl Fn(&PanelRectangle, &PanelRectangle) -> bool,
    ) -> Result<PanelRectangle, Error> {
        if self.flaws.is_empty() {
            return find(self);
        }
        let losses = alloc::vec![0.0; self.outline.len()];
        let mut best: Option<Result<PanelRectangle, Error>> = None;
        for part in self.usable(&losses, NEAR)? {
            let found = find(&part);
            best = match (best, found) {
                (Some(Ok(old)), Ok(new)) if better(&new, &old) => Some(Ok(new)),
                (None | Some(Err(_)), Ok(new)) => Some(Ok(new)),
                (Some(old), _) => Some(old),
                (None, none) => Some(none),
            };
        }
        let none = || Error::no_solution("flaws", self.flaws.len() as f64, f64::NAN, f64::NAN);
        best.unwrap_or_else(|| Err(none()))
    }

    /// An error of this panel as a sentence that names it.
    pub fn sentence(&self, error: &Error) -> String {
        format!("panel \"{}\": {error}", self.name)
    }
}

/// An error unless the ring is simple and large enough to see.
fn check_ring(argument: &'static str, points: &[Point], at: Option<usize>) -> Result<(), Error> {
    Ring::new(argument, points, MOST_POINTS, at)?;
    let (mut low, mut high) = (points[0], points[0]);
    for point in points {
        low = Point::new(low.x.min(point.x), low.y.min(point.y));
        high = Point::new(high.x.max(point.x), high.y.max(point.y));
    }
    if (high.x - low.x).max(high.y - low.y) < SMALLEST {
        let spot = Error::new(ErrorKind::Outline, argument, f64::NAN, f64::NAN, f64::NAN);
        return Err(spot.at_index(at.unwrap_or(0)));
    }
    Ok(())
}

/// A panel as it is written down, before it is checked.
#[cfg(feature = "serde")]
#[derive(serde::Serialize, serde::Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    name: String,
    outline: Vec<Point>,
    #[serde(default)]
    holes: Vec<Vec<Point>>,
    #[serde(default)]
    flaws: Vec<Flaw>,
    #[serde(default = "up_the_page")]
    grain_deg: f64,
    #[serde(default)]
    faces: Faces,
    #[serde(default)]
    nap: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    repeat: Option<Repeat>,
    #[serde(default, skip_serializing_if = "Taken::is_outline")]
    taken: Taken,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    spares: Vec<SpareReading>,
    #[serde(default, skip_serializing_if = "none")]
    doubts: u64,
}

#[cfg(feature = "serde")]
fn up_the_page() -> f64 {
    90.0
}

#[cfg(feature = "serde")]
fn none(doubts: &u64) -> bool {
    *doubts == 0
}

#[cfg(feature = "serde")]
impl TryFrom<Written> for Panel {
    type Error = Error;

    fn try_from(written: Written) -> Result<Panel, Error> {
        let taken = written.taken;
        let known = crate::doubt::DOUBTS
            .iter()
            .fold(0, |all, doubt| all | doubt.bit);
        let panel = Panel::taken_as(written.name, written.outline, taken, written.doubts & known)?
            .with_holes(written.holes)?
            .with_flaws(written.flaws)?
            .with_grain_deg(written.grain_deg)?
            .with_faces(written.faces)
            .with_nap(written.nap)
            .with_repeat(written.repeat)?;
        if written.spares.is_empty() {
            // A part keeps the doubts of the panel it was cut from.
            return Ok(panel);
        }
        panel.with_spares(&written.spares)
    }
}

#[cfg(feature = "serde")]
impl From<Panel> for Written {
    fn from(panel: Panel) -> Written {
        Written {
            name: panel.name,
            outline: panel.outline,
            holes: panel.holes,
            flaws: panel.flaws,
            grain_deg: panel.grain_deg,
            faces: panel.faces,
            nap: panel.nap,
            repeat: panel.repeat,
            taken: panel.taken,
            spares: panel.spares.iter().map(Spare::read).collect(),
            doubts: panel.doubts,
        }
    }
}
