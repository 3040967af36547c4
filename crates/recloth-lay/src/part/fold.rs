//! Parts that may lie on a fold: made whole from their half, and proved to be their own mirror image.

use kurbo::{Point, Vec2};
use recloth::ErrorKind;

use super::Part;
use crate::check::{DEPTH, Ring};
use crate::lay::sin_cos_deg;
use crate::shape::length;
use crate::valid::check_ring;

/// A line by two of its points.
pub(crate) type Line = [Point; 2];

/// How far an outline may be from its own mirror image (mm): half of what the checker lets pass, so that rounding where the
/// piece lies cannot use it up.
pub(crate) const SYMMETRY: f64 = DEPTH / 2.0;
/// How near the fold a point of a half lies on it (mm).
const ON: f64 = 1e-6;

/// How far to the left of a line a point lies (mm), and the unit direction to the left, which is exact for level and upright
/// lines.
fn off(p: Point, [a, b]: Line) -> (f64, Vec2) {
    let along = b - a;
    let left = Vec2::new(-along.y, along.x) / length(along);
    ((p - a).dot(left), left)
}

/// The mirror image of a point in a line.
pub(crate) fn mirror(p: Point, line: Line) -> Point {
    let (far, left) = off(p, line);
    p - left * (2.0 * far)
}

/// The mirror images of points in a line.
pub(crate) fn mirrored(points: &[Point], line: Line) -> Vec<Point> {
    points.iter().map(|&p| mirror(p, line)).collect()
}

/// An error unless the points are numbers within reach, and apart.
pub(crate) fn check_line([a, b]: Line, reach: f64) -> Result<(), recloth::Error> {
    for (index, p) in [a, b].into_iter().enumerate() {
        for value in [p.x, p.y] {
            recloth::Error::check("fold", value, -reach, reach)
                .map_err(|error| error.at_index(index))?;
        }
    }
    let long = length(b - a);
    match long < SHORTEST {
        true => Err(recloth::Error::no_solution(
            "fold",
            long,
            SHORTEST,
            f64::NAN,
        )),
        false => Ok(()),
    }
}

/// Least distance between the two points of a fold (mm).
const SHORTEST: f64 = 0.01;

/// An error unless the outline is its own mirror image in the line.
pub(crate) fn check_symmetry(outline: &[Point], line: Line) -> Result<(), recloth::Error> {
    let (ring, image) = (Ring::new(outline), Ring::new(&mirrored(outline, line)));
    match ring.strays(&image, SYMMETRY) {
        Some(far) => Err(recloth::Error::no_solution("fold", far, f64::NAN, SYMMETRY)),
        None => Ok(()),
    }
}

impl Part {
    /// A part cut once, that may lie on a fold: from its half, which has the fold from `a` to `b` as its straight edge. The
    /// outline is the whole.
    ///
    /// A point within 1e-6 mm of the fold lies on it. Otherwise as [`Part::new`].
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange`: a point of `fold`. `NoSolution`: of `fold`, whose points are less than 0.01 mm apart; of
    /// `outline`, a point beyond the fold, by so many mm. `Outline`: the half touches the fold not at all, in one point or
    /// in several places, or the whole crosses itself.
    ///
    /// ```
    /// use recloth_lay::Part;
    /// // Half a skirt front: 230 at the hem, 180 at the waist.
    /// let half = [(0.0, 0.0), (230.0, 0.0), (180.0, 600.0), (0.0, 600.0)];
    /// let front = Part::on_fold("front", half, (0.0, 0.0), (0.0, 600.0))?;
    /// assert_eq!(front.outline.len(), 6);
    /// assert!(front.outline.contains(&(-230.0, 0.0).into()));
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn on_fold<P: Into<Point>>(
        name: impl Into<String>,
        half: impl IntoIterator<Item = P>,
        a: impl Into<Point>,
        b: impl Into<Point>,
    ) -> Result<Part, recloth::Error> {
        let half: Vec<Point> = half.into_iter().map(Into::into).collect();
        let fold = [a.into(), b.into()];
        check_line(fold, 1e5)?;
        Ok(Part {
            fold: Some(fold),
            ..Part::new(name, opened(&half, fold)?)
        })
    }

    /// Without its fold where the outline is no longer its own mirror image.
    pub(crate) fn drop_lost_fold(&mut self) {
        self.fold = (self.fold).filter(|&line| check_symmetry(&self.outline, line).is_ok());
    }
}

/// A line along or, where that will do, square to the grain, in which outline and seam line of a part are their own mirror image.
pub(crate) fn axis(part: &Part, square_too: bool) -> Option<Line> {
    let middle = centroid(&part.outline);
    let turns: &[f64] = if square_too { &[0.0, 90.0] } else { &[0.0] };
    (turns.iter())
        .map(|turn| {
            let (sin, cos) = sin_cos_deg(part.grain_deg + turn);
            [middle, middle + Vec2::new(cos, sin) * 1000.0]
        })
        .find(|&line| {
            check_symmetry(&part.outline, line).is_ok()
                && (part.seam.is_empty() || check_symmetry(&part.seam, line).is_ok())
        })
}

/// The middle of the area within a ring.
fn centroid(points: &[Point]) -> Point {
    let origin = points.first().copied().unwrap_or_default();
    let (mut sum, mut area) = (Vec2::ZERO, 0.0);
    for pair in points.windows(2) {
        let (a, b) = (pair[0] - origin, pair[1] - origin);
        let cross = a.cross(b);
        sum += (a + b) * (cross / 3.0);
        area += cross;
    }
    origin + sum / area
}

/// The whole of a half that lies on a line.
fn opened(half: &[Point], line: Line) -> Result<Vec<Point>, recloth::Error> {
    check_ring(half)?;
    let offs: Vec<f64> = half.iter().map(|&p| off(p, line).0).collect();
    let furthest = offs.iter().fold(
        0.0,
        |far: f64, &d| if d.abs() > far.abs() { d } else { far },
    );
    let off_of = |index: usize| offs[index] * furthest.signum();
    let count = half.len();
    if let Some(beyond) = (0..count).find(|&index| off_of(index) < -ON) {
        let error = recloth::Error::no_solution("outline", off_of(beyond), 0.0, f64::NAN);
        return Err(error.at_index(beyond));
    }
    let on = |index: usize| off_of(index % count) <= ON;
    let starts: Vec<usize> = (0..count)
        .filter(|&index| on(index) && !on(index + 1))
        .collect();
    let &[first] = starts.as_slice() else {
        let nan = f64::NAN;
        return Err(recloth::Error::new(
            ErrorKind::Outline,
            "outline",
            nan,
            nan,
            nan,
        ));
    };
    let flat = |index: usize| {
        let p = half[index % count];
        let (far, left) = off(p, line);
        p - left * far
    };
    let mut whole = vec![flat(first)];
    let away: Vec<Point> = (first + 1..first + count)
        .take_while(|&index| !on(index))
        .map(|index| half[index % count])
        .collect();
    whole.extend(&away);
    whole.push(flat(first + 1 + away.len()));
    whole.extend(away.iter().rev().map(|&p| mirror(p, line)));
    check_ring(&whole)?;
    Ok(whole)
}

/// An outline, near to its own mirror image, made so exactly: what lies to the left of the line stays, and is mirrored.
pub(super) fn evened(outline: &[Point], line: Line) -> Result<Vec<Point>, recloth::Error> {
    let off_of = |p: Point| off(p, line).0;
    let mut half = Vec::new();
    for (index, &p) in outline.iter().enumerate() {
        let before = outline[(index + outline.len() - 1) % outline.len()];
        let (here, there) = (off_of(p), off_of(before));
        if (here > ON && there < -ON) || (here < -ON && there > ON) {
            half.push(before + (p - before) * (there / (there - here)));
        }
        if here >= -ON {
            half.push(p);
        }
    }
    opened(&half, line)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_outline_that_is_uneven_by_a_hair_becomes_its_own_mirror_image() {
        // The left half is drawn a ten-thousandth wider, its curve with a point more, and no point lies on the fold.
        let outline = [
            (60.0, 0.0),
            (40.0, 80.0),
            (-40.0001, 80.0),
            (-50.0, 42.0),
            (-60.0001, 0.0),
        ];
        let outline: Vec<Point> = outline.into_iter().map(Point::from).collect();
        let fold = [Point::new(0.0, 80.0), Point::new(0.0, 0.0)];
        assert!(check_symmetry(&outline, fold).is_err());
        // Down the fold, what is kept lies to the left, at x above 0.
        let even = evened(&outline, fold).unwrap();
        assert_eq!(check_symmetry(&even, fold), Ok(()));
        let mut corners: Vec<(f64, f64)> = even.iter().map(|p| (p.x, p.y)).collect();
        corners.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)));
        assert_eq!(corners.len(), 6);
        assert_eq!([corners[0], corners[5]], [(-60.0, 0.0), (60.0, 0.0)]);
        assert_eq!([corners[1], corners[4]], [(-40.0, 80.0), (40.0, 80.0)]);
    }
}
