//! Panels measured by offsets from a grain line.

use crate::dust::past;
use crate::{Error, ErrorKind};

/// A panel measured at stations along a grain line.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PanelByOffsets {
    /// Area between the first and the last station (mm2).
    pub area: f64,
    /// From the first to the last station (mm).
    pub length: f64,
    /// Greatest width at a station (mm).
    pub widest: f64,
    /// Least width at a station (mm).
    pub narrowest: f64,
    /// Farthest that a side leaves the straight line between its ends, measured across (mm).
    pub largest_bow: f64,
}

/// Area and sides of a panel measured at stations along a grain line, left and right of it.
///
/// The fast way for an uneven or traced panel: draw one thread's line down it, mark stations, and measure square to the line to
/// both edges. Between stations the sides are taken as straight, so put one at every corner and more where an edge curves; the
/// area is the sum of trapeziums. `left_bow` and `right_bow` tell how far each station lies beyond (positive) or within the
/// straight line between its side's ends, measured across as the readings are: a reading out of row is a slip of the tape, or a side that is no straight seam. What
/// lies off the line makes every width wrong: check that the thread runs true.
///
/// | argument    | unit | range                        | default | meaning                                            |
/// |-------------|------|------------------------------|---------|----------------------------------------------------|
/// | `stations`  | mm   | -1e5..=1e5 each, 2..=200 items | -     | places along the grain line, rising                |
/// | `left`      | mm   | 0..=1e5 each, as stations    | -       | from the line to the left edge at each             |
/// | `right`     | mm   | 0..=1e5 each, as stations    | -       | from the line to the right edge at each            |
/// | `left_bow`  | mm   | out, as stations             | -       | left edge beyond its straight line; negative within |
/// | `right_bow` | mm   | out, as stations             | -       | right edge beyond its straight line                |
///
/// # Errors
/// `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `stations` when one is not beyond the
/// one before. `Outline` naming `right` when all widths are 0.
///
/// # Source
/// Offsets from a base line and the trapezium rule, as in land surveying. `tests/vectors/panel_by_offsets.csv` has hand-worked
/// rows.
///
/// # Examples
/// ```
/// use recloth::offsets::panel_by_offsets;
/// let (mut left_bow, mut right_bow) = ([0.0; 4], [0.0; 4]);
/// let stations = [0.0, 200.0, 400.0, 600.0];
/// let left = [150.0, 160.0, 200.0, 210.0];
/// let right = [160.0, 180.0, 180.0, 220.0];
/// let panel = panel_by_offsets(&stations, &left, &right, &mut left_bow, &mut right_bow)?;
/// assert_eq!((panel.area, panel.widest), (218_000.0, 430.0));
/// assert_eq!(left_bow, [0.0, -10.0, 10.0, 0.0]);
/// let back = panel_by_offsets(&[0.0, 0.0], &[1.0; 2], &[1.0; 2], &mut left_bow, &mut right_bow);
/// assert_eq!(back.unwrap_err().argument(), "stations");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn panel_by_offsets(
    stations: &[f64],
    left: &[f64],
    right: &[f64],
    left_bow: &mut [f64],
    right_bow: &mut [f64],
) -> Result<PanelByOffsets, Error> {
    let stations = Error::check_list("stations", stations, -1e5, 1e5, (2, 200))?;
    let items = stations.len();
    let left = Error::check_list("left", left, 0.0, 1e5, (items, items))?;
    let right = Error::check_list("right", right, 0.0, 1e5, (items, items))?;
    Error::check_room("left_bow", left_bow.len(), items)?;
    Error::check_room("right_bow", right_bow.len(), items)?;
    for (index, pair) in stations.windows(2).enumerate() {
        if pair[1] <= pair[0] {
            let error = Error::no_solution("stations", pair[1], past(pair[0]), f64::NAN);
            return Err(error.at_index(index + 1));
        }
    }
    let width = |index: usize| left[index] + right[index];
    let (mut area, mut widest, mut narrowest) = (0.0, width(0), width(0));
    for index in 1..items {
        let step = stations[index] - stations[index - 1];
        area += step * (width(index - 1) + width(index)) / 2.0;
        widest = f64::max(widest, width(index));
        narrowest = f64::min(narrowest, width(index));
    }
    if area <= 0.0 {
        let kind = ErrorKind::Outline;
        return Err(Error::new(kind, "right", right[0], f64::NAN, f64::NAN));
    }
    let (first, last) = (stations[0], stations[items - 1]);
    let length = last - first;
    let mut largest_bow = 0.0;
    for (side, bows) in [(left, left_bow), (right, right_bow)] {
        let (start, end) = (side[0], side[items - 1]);
        for (index, bow) in bows.iter_mut().take(items).enumerate() {
            // The two ends lie on it exactly, whatever the rounding.
            *bow = if index == 0 || index == items - 1 {
                0.0
            } else {
                let along = (stations[index] - first) / length;
                let straight = start + (end - start) * along;
                side[index] - straight
            };
            largest_bow = f64::max(largest_bow, libm::fabs(*bow));
        }
    }
    Ok(PanelByOffsets {
        area,
        length,
        widest,
        narrowest,
        largest_bow,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_straight_panel_has_no_bow_and_its_own_area() {
        let (mut left, mut right) = ([9.0; 3], [9.0; 3]);
        let panel = panel_by_offsets(
            &[-100.0, 50.0, 200.0],
            &[100.0, 110.0, 120.0],
            &[0.0, 20.0, 40.0],
            &mut left,
            &mut right,
        )
        .unwrap();
        assert_eq!((panel.area, panel.largest_bow), (300.0 * 130.0, 0.0));
        assert_eq!((left, right), ([0.0; 3], [0.0; 3]));
    }

    #[test]
    fn nothing_is_written_on_an_error() {
        let (mut left, mut right) = ([-1.0; 2], [-1.0; 2]);
        for (stations, width) in [([0.0, 0.0], 1.0), ([0.0, 9.0], 0.0)] {
            let flat = [width; 2];
            assert!(panel_by_offsets(&stations, &flat, &flat, &mut left, &mut right).is_err());
        }
        assert_eq!((left, right), ([-1.0; 2], [-1.0; 2]));
    }
}
