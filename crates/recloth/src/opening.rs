//! Openings off the centre line.

use crate::Error;
use crate::doubt::{BODY_LENGTH_SMALL, DART_IN_STAND, DART_OFF_PANEL, when};
use crate::dust::{above, below, short_of};

/// The two fronts of a garment that opens off its centre line.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct OffCentreOpening {
    /// Narrow front, button line to the cut edge at its side (mm).
    pub narrow_to_line: f64,
    /// Wide front, button line to the cut edge at its side (mm).
    pub wide_to_line: f64,
    /// Narrow front, opening edge to the cut edge at its side (mm).
    pub narrow_cut: f64,
    /// Wide front, opening edge to the cut edge at its side (mm).
    pub wide_cut: f64,
    /// Largest shift that the wide panel allows (mm).
    pub largest_shift: f64,
    /// Dart from the narrow front's button line; negative beyond the line, towards the edge (mm).
    pub dart_to_narrow: f64,
    /// Dart from the wide front's button line (mm).
    pub dart_to_wide: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Widths of two fronts whose button line is shifted to one side of the centre front.
///
/// `narrow_to_line = front / 2 - shift + allowance` and `wide_to_line = front / 2 + shift + allowance`; the cut widths
/// add the extension (the button stand; facings are not included). Say which side is narrow and which laps over: the
/// sums are the same for both. The waistband's overlap must equal this extension. A sewing-machine manual asks for an
/// extension of at least three quarters of the button's diameter.
///
/// A front below 100 mm is doubted: it may be in centimetres.
///
/// | argument        | unit | range   | default | meaning                                                       |
/// |-----------------|------|---------|---------|---------------------------------------------------------------|
/// | `front`         | mm   | 1..=1e5 | -       | finished front, side seam to side seam                        |
/// | `shift`         | mm   | 0..=1e5 | -       | button line from the centre front                             |
/// | `extension`     | mm   | 0..=1e3 | -       | button stand, button line to the finished opening edge        |
/// | `allowance`     | mm   | 0..=1e3 | -       | seam allowance at the side seams                              |
/// | `wide_panel`    | mm   | 1..=1e5 | -       | cloth there is for the wide front, button line to side cut edge |
/// | `dart_distance` | mm   | 0..=1e5 | -       | middle of each front's dart from the centre front; half the front where there is none |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `wide_panel` when it is too narrow even without
/// a shift; naming `shift` when the narrow front would vanish or the wide panel is too narrow, with the largest shift as
/// `max`; naming `dart_distance` when the dart lies beyond the side seam.
///
/// # Source
/// Arithmetic. `tests/vectors/off_centre_opening.csv` has hand-worked rows. Least extension: sewing-machine manual, model
/// 1288.
///
/// # Examples
/// ```
/// use recloth::{doubt::DART_IN_STAND, opening::off_centre_opening};
/// let fronts = off_centre_opening(380.0, 85.0, 18.0, 10.0, 300.0, 90.0)?;
/// assert_eq!((fronts.narrow_cut, fronts.wide_cut), (133.0, 303.0));
/// assert_eq!((fronts.dart_to_narrow, fronts.doubts), (5.0, DART_IN_STAND));
/// let error = off_centre_opening(380.0, 120.0, 18.0, 10.0, 300.0, 90.0).unwrap_err();
/// assert_eq!((error.argument(), error.max()), ("shift", 100.0));
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn off_centre_opening(
    front: f64,
    shift: f64,
    extension: f64,
    allowance: f64,
    wide_panel: f64,
    dart_distance: f64,
) -> Result<OffCentreOpening, Error> {
    let front = Error::check("front", front, 1.0, 1e5)?;
    let shift = Error::check("shift", shift, 0.0, 1e5)?;
    let extension = Error::check("extension", extension, 0.0, 1e3)?;
    let allowance = Error::check("allowance", allowance, 0.0, 1e3)?;
    let wide_panel = Error::check("wide_panel", wide_panel, 1.0, 1e5)?;
    let dart_distance = Error::check("dart_distance", dart_distance, 0.0, 1e5)?;
    let half = front / 2.0;
    let largest_shift = wide_panel - half - allowance;
    if below(largest_shift, 0.0) {
        let least = half + allowance;
        return Err(Error::no_solution(
            "wide_panel",
            wide_panel,
            least,
            f64::NAN,
        ));
    }
    let largest_shift = largest_shift.max(0.0);
    if above(shift, largest_shift) || !below(shift, half) {
        let largest = largest_shift.min(short_of(half));
        return Err(Error::no_solution("shift", shift, 0.0, largest));
    }
    if above(dart_distance, half) {
        return Err(Error::no_solution(
            "dart_distance",
            dart_distance,
            0.0,
            half,
        ));
    }
    let narrow_to_line = half - shift + allowance;
    let wide_to_line = half + shift + allowance;
    let dart_to_narrow = dart_distance - shift;
    let dart_to_wide = dart_distance + shift;
    let mut doubts = when(front < 100.0, BODY_LENGTH_SMALL);
    // The wide front's dart is never nearer to its line than the narrow front's.
    if !above(dart_to_narrow, -extension) {
        doubts |= DART_OFF_PANEL;
    } else if below(dart_to_narrow, extension) {
        doubts |= DART_IN_STAND;
    }
    Ok(OffCentreOpening {
        narrow_to_line,
        wide_to_line,
        narrow_cut: narrow_to_line + extension,
        wide_cut: wide_to_line + extension,
        largest_shift,
        dart_to_narrow,
        dart_to_wide,
        doubts,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_two_fronts_make_the_front_whatever_the_shift() {
        for shift in [0.0, 12.5, 85.0, 100.0] {
            let fronts = off_centre_opening(380.0, shift, 18.0, 10.0, 300.0, 90.0).unwrap();
            let finished = fronts.narrow_to_line + fronts.wide_to_line - 2.0 * 10.0;
            assert_eq!(finished, 380.0);
            assert!(
                off_centre_opening(380.0, shift, 18.0, 10.0, fronts.wide_to_line, 90.0).is_ok()
            );
        }
    }

    #[test]
    fn the_largest_shift_is_possible_and_no_more() {
        let at = |shift| off_centre_opening(380.0, shift, 18.0, 10.0, 300.0, 90.0);
        assert!(at(at(0.0).unwrap().largest_shift).is_ok());
        assert!(at(100.001).is_err());
    }

    #[test]
    fn what_an_error_asks_for_would_do() {
        let panel = |wide| off_centre_opening(380.0, 0.0, 18.0, 10.0, wide, 90.0);
        let least = panel(150.0).unwrap_err().min();
        assert_eq!(least, 200.0);
        assert!(panel(least).is_ok());
        // With cloth enough, half the front is the bound, and the narrow front must keep something of it.
        let shift = |shift| off_centre_opening(380.0, shift, 18.0, 10.0, 900.0, 90.0);
        let most = shift(300.0).unwrap_err().max();
        assert!(shift(190.0).is_err() && shift(most).is_ok() && most > 189.999);
        let dart = |distance| off_centre_opening(380.0, 0.0, 18.0, 10.0, 300.0, distance);
        assert!(dart(dart(191.0).unwrap_err().max()).is_ok());
    }
}
