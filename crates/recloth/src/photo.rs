//! Points of a panel from a photograph.

use crate::Error;
use crate::doubt::PHOTO_REACH;

/// How far points from a photograph may be trusted.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PhotoMap {
    /// Farthest that a point lies beyond the reference, in sizes of the reference in that direction (1).
    pub reach: f64,
    /// Largest length that one picture unit stands for at a point (mm).
    pub coarsest: f64,
    /// `PHOTO_REACH` when a point lies more than 1.5 sizes beyond the reference (bits).
    pub doubts: u64,
}

/// Sizes of the reference beyond which a point is doubted: common practice, no source.
const FAR: f64 = 1.5;

/// True places of points in a photograph of cloth that lies flat beside a reference of four known points.
///
/// The picture of a plane is its projective map, and four points fix it: the corners of a sheet of paper of known size, say,
/// given in order round it in the picture and in the same order as they truly lie. `along` and `across` get the true place of
/// each point, `scales` the length that one picture unit stands for there, `√` of the map's change of area. Only what lies
/// flat in the reference's own plane is mapped truly, and the bow that a lens gives straight lines is not taken out: stand
/// back, point the camera straight down, use the middle of the picture. Beyond the reference errors grow fast: a slip of
/// 1 picture unit at a corner moves a point one size away by several. Measure one length by tape to see.
///
/// | argument    | unit | range                         | default | meaning                                           |
/// |-------------|------|-------------------------------|---------|---------------------------------------------------|
/// | `picture_x` | 1    | -1e5..=1e5 each, 4..=4 items  | -       | reference in the picture, in pixels or any unit   |
/// | `picture_y` | 1    | -1e5..=1e5 each, 4..=4 items  | -       | the same, up or down                              |
/// | `true_x`    | mm   | -1e5..=1e5 each, 4..=4 items  | -       | reference as it truly lies, along                 |
/// | `true_y`    | mm   | -1e5..=1e5 each, 4..=4 items  | -       | the same, across                                  |
/// | `x`         | 1    | -1e6..=1e6 each, 1..=1000 items | -     | points to map, in the picture                     |
/// | `y`         | 1    | -1e6..=1e6 each, as x         | -       | the same, up or down                              |
/// | `along`     | mm   | out, as x                     | -       | true place of each point, along                   |
/// | `across`    | mm   | out, as x                     | -       | true place of each point, across                  |
/// | `scales`    | mm   | out, as x                     | -       | length that one picture unit stands for there     |
///
/// # Errors
/// `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `picture_x` or `true_x` when three of
/// the four points lie in line, or they are not in order round a figure that bulges at every corner; naming `x` when a point
/// lies on or beyond the horizon of the picture.
///
/// # Source
/// P. Heckbert, *Fundamentals of Texture Mapping and Image Warping*, 1989 (square to quadrilateral; from memory).
/// `tests/vectors/photo_map.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::photo::photo_map;
/// // A sheet of 200 by 300 seen at a slant; its diagonals cross at 200, 200 in the picture.
/// let (picture_x, picture_y) = ([0.0, 400.0, 300.0, 100.0], [0.0, 0.0, 300.0, 300.0]);
/// let (true_x, true_y) = ([0.0, 200.0, 200.0, 0.0], [0.0, 0.0, 300.0, 300.0]);
/// let (mut along, mut across, mut scales) = ([0.0], [0.0], [0.0]);
/// let mut map = |x: f64, y: f64| {
///     photo_map(
///         &picture_x, &picture_y, &true_x, &true_y, &[x], &[y],
///         &mut along, &mut across, &mut scales,
///     )
/// };
/// assert_eq!(map(200.0, 700.0).unwrap_err().argument(), "x");
/// map(200.0, 200.0)?;
/// assert!((along[0] - 100.0).abs() < 1e-9 && (across[0] - 150.0).abs() < 1e-9);
/// # Ok::<(), recloth::Error>(())
/// ```
// Flat lists, for C and spreadsheets have no better.
#[allow(clippy::too_many_arguments)]
#[inline]
pub fn photo_map(
    picture_x: &[f64],
    picture_y: &[f64],
    true_x: &[f64],
    true_y: &[f64],
    x: &[f64],
    y: &[f64],
    along: &mut [f64],
    across: &mut [f64],
    scales: &mut [f64],
) -> Result<PhotoMap, Error> {
    let picture_x = Error::check_list("picture_x", picture_x, -1e5, 1e5, (4, 4))?;
    let picture_y = Error::check_list("picture_y", picture_y, -1e5, 1e5, (4, 4))?;
    let true_x = Error::check_list("true_x", true_x, -1e5, 1e5, (4, 4))?;
    let true_y = Error::check_list("true_y", true_y, -1e5, 1e5, (4, 4))?;
    let x = Error::check_list("x", x, -1e6, 1e6, (1, 1000))?;
    let y = Error::check_list("y", y, -1e6, 1e6, (x.len(), x.len()))?;
    for (name, room) in [
        ("along", along.len()),
        ("across", across.len()),
        ("scales", scales.len()),
    ] {
        Error::check_room(name, room, x.len())?;
    }
    let picture = Figure::new("picture_x", picture_x, picture_y)?;
    let truth = Figure::new("true_x", true_x, true_y)?;
    let map = truth.square_map().after(&picture.square_map().adjugate());
    // The sign of the divisor on the reference's own side of the horizon.
    let side = map.divisor(picture.x[0], picture.y[0]);
    let mut answer = PhotoMap {
        reach: 0.0,
        coarsest: 0.0,
        doubts: 0,
    };
    let place = |index: usize| -> Result<(f64, f64, f64), Error> {
        let (along, across, scale) = map.apply(x[index], y[index], side);
        if along.is_finite() && across.is_finite() && scale.is_finite() {
            Ok((along, across, scale))
        } else {
            Err(Error::no_solution("x", x[index], f64::NAN, f64::NAN).at_index(index))
        }
    };
    for index in 0..x.len() {
        let (along, across, scale) = place(index)?;
        answer.reach = answer.reach.max(truth.beyond(along, across));
        answer.coarsest = answer.coarsest.max(scale);
    }
    for index in 0..x.len() {
        (along[index], across[index], scales[index]) = place(index)?;
    }
    if answer.reach > FAR {
        answer.doubts = PHOTO_REACH;
    }
    Ok(answer)
}

/// Four corners in order round a figure that bulges at each.
struct Figure {
    x: [f64; 4],
    y: [f64; 4],
}

impl Figure {
    fn new(name: &'static str, x: &[f64], y: &[f64]) -> Result<Figure, Error> {
        let figure = Figure {
            x: [x[0], x[1], x[2], x[3]],
            y: [y[0], y[1], y[2], y[3]],
        };
        let size = figure.size().0 * figure.size().1;
        let first = figure.corner(0);
        for index in 0..4 {
            let corner = figure.corner(index);
            // A corner of a thousandth of the figure is no corner: readings are not that good.
            if corner * first <= 0.0 || libm::fabs(corner) < 1e-3 * size {
                let error = Error::no_solution(name, figure.x[index], f64::NAN, f64::NAN);
                return Err(error.at_index(index));
            }
        }
        Ok(figure)
    }

    /// Twice the area of the triangle at a corner; its sign tells the way of the turn.
    fn corner(&self, index: usize) -> f64 {
        let (before, after) = ((index + 3) % 4, (index + 1) % 4);
        (self.x[index] - self.x[before]) * (self.y[after] - self.y[index])
            - (self.y[index] - self.y[before]) * (self.x[after] - self.x[index])
    }

    fn span(values: &[f64; 4]) -> (f64, f64) {
        let low = values.iter().copied().fold(f64::INFINITY, f64::min);
        let high = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        (low, high)
    }

    fn size(&self) -> (f64, f64) {
        let ((left, right), (low, high)) = (Figure::span(&self.x), Figure::span(&self.y));
        (right - left, high - low)
    }

    /// How far a point lies outside the figure's own rectangle, in sizes of it.
    fn beyond(&self, x: f64, y: f64) -> f64 {
        let outside = |value: f64, (low, high): (f64, f64)| {
            (low - value).max(value - high).max(0.0) / (high - low)
        };
        outside(x, Figure::span(&self.x)).max(outside(y, Figure::span(&self.y)))
    }

    /// The map from the square 0, 0 to 1, 0 to 1, 1 to 0, 1.
    fn square_map(&self) -> Map {
        let ([x0, x1, x2, x3], [y0, y1, y2, y3]) = (self.x, self.y);
        let (dx1, dx2, sx) = (x1 - x2, x3 - x2, x0 - x1 + x2 - x3);
        let (dy1, dy2, sy) = (y1 - y2, y3 - y2, y0 - y1 + y2 - y3);
        // Not 0: it is the turn at the third corner.
        let turn = dx1 * dy2 - dx2 * dy1;
        let g = (sx * dy2 - dx2 * sy) / turn;
        let h = (dx1 * sy - sx * dy1) / turn;
        Map([
            [x1 - x0 + g * x1, x3 - x0 + h * x3, x0],
            [y1 - y0 + g * y1, y3 - y0 + h * y3, y0],
            [g, h, 1.0],
        ])
    }
}

/// A projective map of the plane.
struct Map([[f64; 3]; 3]);

impl Map {
    /// The inverse, but for a factor that does not matter.
    fn adjugate(&self) -> Map {
        let m = &self.0;
        let minor = |row: usize, column: usize| {
            let (r, s) = ((row + 1) % 3, (row + 2) % 3);
            let (c, d) = ((column + 1) % 3, (column + 2) % 3);
            m[r][c] * m[s][d] - m[r][d] * m[s][c]
        };
        Map(core::array::from_fn(|row| {
            core::array::from_fn(|column| minor(column, row))
        }))
    }

    /// This map after another.
    fn after(&self, first: &Map) -> Map {
        Map(core::array::from_fn(|row| {
            core::array::from_fn(|column| {
                (0..3)
                    .map(|k| self.0[row][k] * first.0[k][column])
                    .sum::<f64>()
            })
        }))
    }

    fn divisor(&self, x: f64, y: f64) -> f64 {
        let [g, h, i] = self.0[2];
        g * x + h * y + i
    }

    /// A point's place and the root of the change of area there; not finite on or beyond the horizon.
    fn apply(&self, x: f64, y: f64, side: f64) -> (f64, f64, f64) {
        let divisor = self.divisor(x, y);
        if divisor * side <= 0.0 {
            return (f64::NAN, f64::NAN, f64::NAN);
        }
        let [a, b, c] = self.0[0];
        let [d, e, f] = self.0[1];
        let [g, h, _] = self.0[2];
        let along = (a * x + b * y + c) / divisor;
        let across = (d * x + e * y + f) / divisor;
        let area = ((a - g * along) * (e - h * across) - (b - h * along) * (d - g * across))
            / (divisor * divisor);
        (along, across, libm::sqrt(libm::fabs(area)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const PICTURE: ([f64; 4], [f64; 4]) = ([12.0, 988.0, 903.0, 65.0], [20.0, 5.0, 700.0, 655.0]);
    const SHEET: ([f64; 4], [f64; 4]) = ([0.0, 297.0, 297.0, 0.0], [0.0, 0.0, 210.0, 210.0]);

    fn map(
        picture: &([f64; 4], [f64; 4]),
        points: &[[f64; 2]],
    ) -> Result<(PhotoMap, [f64; 4], [f64; 4]), Error> {
        let (mut x, mut y) = ([0.0; 4], [0.0; 4]);
        for (index, point) in points.iter().enumerate() {
            (x[index], y[index]) = (point[0], point[1]);
        }
        let n = points.len();
        let (mut along, mut across, mut scales) = ([-1.0; 4], [-1.0; 4], [-1.0; 4]);
        let answer = photo_map(
            &picture.0,
            &picture.1,
            &SHEET.0,
            &SHEET.1,
            &x[..n],
            &y[..n],
            &mut along,
            &mut across,
            &mut scales,
        );
        answer.map(|answer| (answer, along, across))
    }

    #[test]
    fn the_corners_come_to_their_places() {
        let corners: [[f64; 2]; 4] = core::array::from_fn(|k| [PICTURE.0[k], PICTURE.1[k]]);
        let (answer, along, across) = map(&PICTURE, &corners).unwrap();
        for k in 0..4 {
            approx::assert_abs_diff_eq!(along[k], SHEET.0[k], epsilon = 1e-9);
            approx::assert_abs_diff_eq!(across[k], SHEET.1[k], epsilon = 1e-9);
        }
        assert!(answer.reach < 1e-9 && answer.doubts == 0);
    }

    #[test]
    fn crossed_corners_and_corners_in_line_are_refused() {
        let crossed = ([0.0, 100.0, 0.0, 100.0], [0.0, 0.0, 100.0, 100.0]);
        let in_line = ([0.0, 50.0, 100.0, 0.0], [0.0, 0.0, 0.0, 100.0]);
        let one = ([7.0; 4], [7.0; 4]);
        for figure in [crossed, in_line, one] {
            let error = map(&figure, &[[1.0, 1.0]]).unwrap_err();
            assert_eq!(error.argument(), "picture_x");
        }
    }

    #[test]
    fn a_picture_from_straight_above_has_one_scale() {
        let above = ([0.0, 594.0, 594.0, 0.0], [0.0, 0.0, 420.0, 420.0]);
        let (answer, along, _) = map(&above, &[[300.0, 10.0], [1200.0, 2000.0]]).unwrap();
        assert_eq!((answer.coarsest, along[1]), (0.5, 600.0));
        assert_eq!(answer.doubts, PHOTO_REACH);
    }
}
