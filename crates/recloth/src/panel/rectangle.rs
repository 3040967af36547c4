//! The largest rectangle on grain in a panel of any shape.

use alloc::vec::Vec;

use kurbo::{Point, Vec2};

use super::ring::{self, Place, Ring};
use super::window::{self, Span};
use crate::Error;
use crate::dust::DUST;

/// The most points an outline or a hole may have.
const MOST_POINTS: usize = 10_000;
/// The least width that is asked for, and the least height of a width that is offered instead (mm).
const LEAST: f64 = 0.1;
/// A height that differs by no more is the same: twice what the proof may draw in at each of two sides (mm).
const DRAWN_IN: f64 = 4e-6;

/// A rectangle on grain in a panel.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct PanelRectangle {
    /// The corner from which the width runs across the grain, and the height along it to the left of the width (mm).
    pub corner: Point,
    /// Width across the grain (mm).
    pub width: f64,
    /// Height along the grain (mm).
    pub height: f64,
    /// Direction of the grain, counter-clockwise from the x axis (deg).
    pub grain_deg: f64,
    /// Area (mm2).
    pub area_mm2: f64,
}

impl PanelRectangle {
    /// The four corners, counter-clockwise from [`corner`](Self::corner) (mm).
    pub fn corners(&self) -> [Point; 4] {
        let (across, along) = axes(self.grain_deg);
        let (width, height) = (self.width * across, self.height * along);
        let corner = self.corner;
        [
            corner,
            corner + width,
            corner + width + height,
            corner + height,
        ]
    }
}

/// Largest rectangle, one side on grain, that a panel of any shape holds.
///
/// | argument    | unit | range                             | default | meaning                                   |
/// |-------------|------|-----------------------------------|---------|-------------------------------------------|
/// | `outline`   | mm   | -1e5..=1e5 each, 3..=10000 points | -       | corners in order, either way round        |
/// | `holes`     | mm   | -1e5..=1e5 each, 0..=1000 holes of 3..=10000 points | - | corners of each hole, either way round |
/// | `grain_deg` | deg  | -360..=360                        | 90      | the grain, counter-clockwise from the x axis; 90 is up |
///
/// The rectangle may touch the outline and the holes. Holes may overlap the outline and one another. It is the largest
/// there is, but for rounding: its corners as returned by [`PanelRectangle::corners`] are proved, exactly, to enclose
/// only cloth, and where rounding put one outside, each side is drawn in by at most 1e-6 mm. Of several of one size it is
/// always the same one.
///
/// # Errors
/// - `NotFinite`, `OutOfRange`, `Count`, naming the argument and the place in its list.
/// - `Outline`: the outline or a hole touches or crosses itself or has no area.
/// - `NoSolution` naming `holes`: they leave no cloth. Naming `outline`: it is too thin to hold a rectangle.
///
/// # Source
/// Plane geometry, shown in `window.rs`; known answers, working by hand and an independent program in
/// `tests/vectors/largest_rectangle.csv` and `tests/oracle/panel.py`.
///
/// # Examples
/// A gore 400 mm wide at the hem, 600 mm high: half its area, half its height.
/// ```
/// use recloth::panel::largest_rectangle;
/// let gore = [(0.0, 0.0), (400.0, 0.0), (200.0, 600.0)].map(kurbo::Point::from);
/// let rectangle = largest_rectangle(&gore, &[], 90.0)?;
/// assert!((rectangle.width - 200.0).abs() < 1e-5);
/// assert!((rectangle.height - 300.0).abs() < 1e-5);
///
/// let crossed = [(0.0, 0.0), (400.0, 600.0), (400.0, 0.0), (0.0, 500.0)].map(kurbo::Point::from);
/// let error = largest_rectangle(&crossed, &[], 90.0).unwrap_err();
/// assert_eq!(error.kind(), recloth::ErrorKind::Outline);
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn largest_rectangle(
    outline: &[Point],
    holes: &[Vec<Point>],
    grain_deg: f64,
) -> Result<PanelRectangle, Error> {
    let mut rings = alloc::vec![Ring::new("outline", outline, MOST_POINTS, None)?.points];
    rings.extend(checked_holes(holes)?);
    let grain_deg = Error::check("grain_deg", grain_deg, -360.0, 360.0)?;
    window::largest(&turned_to(&rings, grain_deg))
        .and_then(|span| proved(span, grain_deg, &rings))
        .ok_or_else(|| {
            let (argument, value) = match holes.len() {
                0 => ("outline", ring::area(&rings[0])),
                count => ("holes", count as f64),
            };
            Error::no_solution(argument, value, f64::NAN, f64::NAN)
        })
}

/// Tallest rectangle of a given width, one side on grain, that a panel of any shape holds.
///
/// For a piece that must be so wide and is wanted as long as the cloth allows: a skirt's panel, a strip for a band. The
/// largest rectangle ([`largest_rectangle`]) may be wide and short where a piece is narrow and long. A width within 1e-9 mm
/// of what the panel has is had.
///
/// | argument    | unit | range                             | default | meaning                                   |
/// |-------------|------|-----------------------------------|---------|-------------------------------------------|
/// | `outline`   | mm   | -1e5..=1e5 each, 3..=10000 points | -       | corners in order, either way round        |
/// | `width`     | mm   | 0.1..=2e5                         | -       | width across the grain, allowances included |
/// | `holes`     | mm   | -1e5..=1e5 each, 0..=1000 holes of 3..=10000 points | - | corners of each hole, either way round |
/// | `grain_deg` | deg  | -360..=360                        | 90      | the grain, counter-clockwise from the x axis; 90 is up |
///
/// The rectangle may touch the outline and the holes, and is proved as [`largest_rectangle`]'s is: where rounding put a
/// corner outside, each side is drawn in by at most 1e-6 mm, its width too. Of several of one height it is always the same
/// one.
///
/// # Errors
/// - `NotFinite`, `OutOfRange`, `Count`, naming the argument and the place in its list.
/// - `Outline`: the outline or a hole touches or crosses itself or has no area.
/// - `NoSolution` naming `width`: nowhere is there a rectangle so wide; `max` is the widest that is 0.1 mm high.
///
/// # Source
/// Plane geometry, shown in `window.rs`; known answers, working by hand and an independent program in
/// `tests/vectors/tallest_rectangle.csv` and `tests/oracle/panel.py`.
///
/// # Examples
/// A gore 400 mm wide at the hem, 600 mm high: a piece 100 wide may be 450 high.
/// ```
/// use recloth::panel::tallest_rectangle;
/// let gore = [(0.0, 0.0), (400.0, 0.0), (200.0, 600.0)].map(kurbo::Point::from);
/// let rectangle = tallest_rectangle(&gore, 100.0, &[], 90.0)?;
/// assert!((rectangle.width - 100.0).abs() < 1e-5);
/// assert!((rectangle.height - 450.0).abs() < 1e-5);
/// assert_eq!(tallest_rectangle(&gore, 401.0, &[], 90.0).unwrap_err().argument(), "width");
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn tallest_rectangle(
    outline: &[Point],
    width: f64,
    holes: &[Vec<Point>],
    grain_deg: f64,
) -> Result<PanelRectangle, Error> {
    let mut rings = alloc::vec![Ring::new("outline", outline, MOST_POINTS, None)?.points];
    let width = Error::check("width", width, LEAST, 2e5)?;
    rings.extend(checked_holes(holes)?);
    let grain_deg = Error::check("grain_deg", grain_deg, -360.0, 360.0)?;
    let turned = turned_to(&rings, grain_deg);
    let found = |width: f64| {
        window::tallest(&turned, width).and_then(|span| proved(span, grain_deg, &rings))
    };
    let exact = found(width);
    // A width that only rounding makes too wide counts as had, wherever that gives a taller one.
    let height = exact.map_or(0.0, |exact| exact.height);
    found(width - DUST)
        .filter(|near| near.height > height + DRAWN_IN)
        .or(exact)
        .ok_or_else(|| {
            let across = turned_to(&rings, grain_deg + 90.0);
            let widest =
                window::tallest(&across, LEAST).map_or(f64::NAN, |span| span.y[1] - span.y[0]);
            Error::no_solution("width", width, f64::NAN, widest)
        })
}

/// The holes, each a ring that does not cross itself.
fn checked_holes(holes: &[Vec<Point>]) -> Result<Vec<Vec<Point>>, Error> {
    Error::check_items("holes", holes.len(), 0, 1000)?;
    holes
        .iter()
        .enumerate()
        .map(|(index, hole)| Ok(Ring::new("holes", hole, MOST_POINTS, Some(index))?.points))
        .collect()
}

/// The rings with a grain along y.
fn turned_to(rings: &[Vec<Point>], grain_deg: f64) -> Vec<Vec<Point>> {
    let (across, along) = axes(grain_deg);
    let on_grain = |point: &Point| {
        let point = point.to_vec2();
        Point::new(point.dot(across), point.dot(along))
    };
    rings
        .iter()
        .map(|ring| ring.iter().map(on_grain).collect())
        .collect()
}

/// The rectangle drawn in by as little as proves it to enclose only cloth.
fn proved(span: Span, grain_deg: f64, rings: &[Vec<Point>]) -> Option<PanelRectangle> {
    let (across, along) = axes(grain_deg);
    [0.0, 1e-10, 1e-9, 1e-8, 1e-7, 1e-6]
        .into_iter()
        .map(|inset| {
            let (x, y) = (span.x[0] + inset, span.y[0] + inset);
            let (width, height) = (span.x[1] - inset - x, span.y[1] - inset - y);
            PanelRectangle {
                corner: (x * across + y * along).to_point(),
                width,
                height,
                grain_deg,
                area_mm2: width * height,
            }
        })
        .find(|rectangle| {
            rectangle.width > 0.0
                && rectangle.height > 0.0
                && encloses_only_cloth(&rectangle.corners(), rings)
        })
}

/// Whether a convex quadrilateral lies in the first ring and clear of the others, touching allowed: no edge enters it,
/// and its middle is cloth.
fn encloses_only_cloth(corners: &[Point; 4], rings: &[Vec<Point>]) -> bool {
    let sides: Vec<(Point, Point)> = ring::edges(corners).collect();
    let enters = |a: Point, b: Point| {
        // A segment and a convex shape that do not overlap are parted by the line of the segment or of a side.
        let parted_by_side = sides
            .iter()
            .any(|&(c, d)| ring::side(c, d, a) <= 0.0 && ring::side(c, d, b) <= 0.0);
        let beside = |sign: f64| {
            corners
                .iter()
                .all(|&corner| sign * ring::side(a, b, corner) >= 0.0)
        };
        !parted_by_side && !beside(1.0) && !beside(-1.0)
    };
    let middle = corners[0].midpoint(corners[2]);
    ring::place(&rings[0], middle) == Place::Inside
        && rings[1..]
            .iter()
            .all(|hole| ring::place(hole, middle) == Place::Outside)
        && !rings
            .iter()
            .flat_map(|ring| ring::edges(ring))
            .any(|(a, b)| enters(a, b))
}

/// Unit vectors across the grain (its right-hand side) and along it; exact for right angles.
fn axes(grain_deg: f64) -> (Vec2, Vec2) {
    let along = match libm::fmod(grain_deg + 360.0, 360.0) {
        0.0 => Vec2::new(1.0, 0.0),
        90.0 => Vec2::new(0.0, 1.0),
        180.0 => Vec2::new(-1.0, 0.0),
        270.0 => Vec2::new(0.0, -1.0),
        angle_deg => {
            let (sin, cos) = libm::sincos(angle_deg.to_radians());
            Vec2::new(cos, sin)
        }
    };
    (Vec2::new(along.y, -along.x), along)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square(low: f64, high: f64) -> Vec<Point> {
        [(low, low), (high, low), (high, high), (low, high)]
            .map(Point::from)
            .to_vec()
    }

    #[test]
    fn the_proof_refuses_the_last_bit_outside_and_allows_touching() {
        let rings = [square(0.0, 100.0), square(40.0, 60.0)];
        let encloses = |left, bottom, right, top| {
            let corners = [(left, bottom), (right, bottom), (right, top), (left, top)];
            encloses_only_cloth(&corners.map(Point::from), &rings)
        };
        assert!(encloses(0.0, 0.0, 100.0, 40.0));
        assert!(encloses(60.0, 0.0, 100.0, 100.0));
        let hair = 40.0 + 1e-14;
        assert!(hair > 40.0 && !encloses(0.0, 0.0, 100.0, hair));
        assert!(!encloses(0.0, 0.0, 100.0 + 2e-14, 40.0));
        // Round the hole, in the hole, and beside the panel: no edge enters, yet there is no cloth, or not only.
        assert!(!encloses(0.0, 0.0, 100.0, 100.0));
        assert!(!encloses(40.0, 40.0, 60.0, 60.0));
        assert!(!encloses(45.0, 45.0, 55.0, 55.0));
        assert!(!encloses(100.0, 0.0, 200.0, 100.0));
    }

    #[test]
    fn the_width_an_error_asks_for_would_do() {
        let gore = [(0.0, 0.0), (400.0, 0.0), (200.0, 600.0)].map(Point::from);
        for grain_deg in [90.0, 0.0, 33.0, -360.0] {
            let tall = |width| tallest_rectangle(&gore, width, &[], grain_deg);
            let widest = tall(1e4).unwrap_err().max();
            assert!(
                tall(widest * (1.0 - 1e-9)).unwrap().height > 0.09,
                "{grain_deg}"
            );
            assert!(tall(widest + 0.2).is_err(), "{grain_deg}");
        }
        // Where there is no cloth there is nothing to ask for.
        let hole = square(-1000.0, 1000.0);
        let error = tallest_rectangle(&gore, 1.0, &[hole], 90.0).unwrap_err();
        assert!(error.max().is_nan());
    }

    #[test]
    fn right_angles_are_exact() {
        for (grain_deg, along) in [
            (0.0, (1.0, 0.0)),
            (-270.0, (0.0, 1.0)),
            (180.0, (-1.0, 0.0)),
        ] {
            assert_eq!(axes(grain_deg).1, Vec2::from(along));
            assert_eq!(
                axes(grain_deg - if grain_deg > 0.0 { 360.0 } else { 0.0 }).1,
                Vec2::from(along)
            );
        }
        let (across, along) = axes(30.0);
        assert!((along.y - 0.5).abs() < 1e-15 && (across.x - 0.5).abs() < 1e-15);
        // The grain lies to the left of the width.
        assert!(across.cross(along) > 0.0);
    }
}
