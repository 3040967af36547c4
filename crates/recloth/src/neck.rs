//! Necks and the openings a head or a body must pass.

use crate::Error;
use crate::body::{limb, trunk};
use crate::hypotenuse::hypotenuse;

/// One side of a V neck.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct VNeck {
    /// Length of the straight edge on one side (mm).
    pub edge: f64,
    /// Angle of the edge from the grain that runs down the middle (deg).
    pub off_grain_deg: f64,
    /// Length of the tape that stays the edge on one side (mm).
    pub stay: f64,
}

/// Edge of a V neck, how far it lies off grain, and the tape that stays it.
///
/// `edge = √(half_width² + depth²)`, `off_grain = atan(half_width / depth)`, `stay = edge · stay_ratio`. Any edge off grain
/// stretches as it is handled, most of all near 45°: staystitch at once, and sew on a tape cut a little shorter than the
/// edge. A tape below 0.9 puckers, so less is refused. If the point falls below the bust, nothing holds the edge to the
/// body: pin it and see ([`dart_from_gape`](crate::dart::dart_from_gape)).
///
/// | argument     | unit | range   | default | meaning                                             |
/// |--------------|------|---------|---------|-----------------------------------------------------|
/// | `half_width` | mm   | 0..=1e4 | -       | middle to the edge's top at the shoulder, straight across |
/// | `depth`      | mm   | 1..=1e4 | -       | from that level down to the point                   |
/// | `stay_ratio` | 1    | 0.9..=1 | 0.97    | tape over edge                                      |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Plane geometry; the ratio is common practice, no source. `tests/vectors/v_neck.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::neck::v_neck;
/// let side = v_neck(80.0, 300.0, 0.97)?;
/// assert!((side.edge - 310.5).abs() < 0.05 && (side.off_grain_deg - 14.9).abs() < 0.05);
/// assert_eq!(v_neck(80.0, 300.0, 0.8).unwrap_err().argument(), "stay_ratio");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn v_neck(half_width: f64, depth: f64, stay_ratio: f64) -> Result<VNeck, Error> {
    let half_width = Error::check("half_width", half_width, 0.0, 1e4)?;
    let depth = Error::check("depth", depth, 1.0, 1e4)?;
    let stay_ratio = Error::check("stay_ratio", stay_ratio, 0.9, 1.0)?;
    let edge = hypotenuse(half_width, depth);
    Ok(VNeck {
        edge,
        off_grain_deg: libm::atan2(half_width, depth).to_degrees(),
        stay: edge * stay_ratio,
    })
}

/// An opening that a head, or the widest part of a body, must pass.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HeadOpening {
    /// Least length of the slit; 0 where none is needed (mm).
    pub least_slit: f64,
    /// What the opening is wider than needed; negative when it does not pass (mm).
    pub spare: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}

/// Whether a neck with a slit passes over the head, and the least slit.
///
/// A slit opens by its length on both sides: `neck + 2 · slit >= head + ease`. The same sum serves a skirt with a zip that
/// must pass over the hip, with waist and hip for neck and head, where the skirt at the slit's end is no narrower. Measure
/// the finished edge, not the neck of the body. For children no cords or drawstrings at the neck, no small loose buttons,
/// no elastic round the throat: see the safety standards that hold where you are.
///
/// A head below 300 mm or above 2000 mm and an edge below 110 mm are doubted: they may be in centimetres.
///
/// | argument | unit | range   | default | meaning                                                |
/// |----------|------|---------|---------|--------------------------------------------------------|
/// | `head`   | mm   | 1..=1e5 | -       | girth that must pass                                   |
/// | `neck`   | mm   | 1..=1e5 | -       | finished way round the edge, not stretched             |
/// | `slit`   | mm   | 0..=1e4 | -       | length of the slit, button placket or zip              |
/// | `ease`   | mm   | 0..=1e3 | 20      | what the opening should be wider                       |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// Arithmetic; the ease of 20 mm is common practice, no source. `tests/vectors/head_opening.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::neck::head_opening;
/// let child = head_opening(520.0, 440.0, 60.0, 20.0)?;
/// assert_eq!((child.least_slit, child.spare), (50.0, 20.0));
/// assert!(head_opening(520.0, 440.0, 40.0, 20.0)?.spare < 0.0);
/// assert_eq!(head_opening(0.0, 440.0, 60.0, 20.0).unwrap_err().argument(), "head");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn head_opening(head: f64, neck: f64, slit: f64, ease: f64) -> Result<HeadOpening, Error> {
    let head = Error::check("head", head, 1.0, 1e5)?;
    let neck = Error::check("neck", neck, 1.0, 1e5)?;
    let slit = Error::check("slit", slit, 0.0, 1e4)?;
    let ease = Error::check("ease", ease, 0.0, 1e3)?;
    let lacking = head + ease - neck;
    Ok(HeadOpening {
        least_slit: (lacking / 2.0).max(0.0),
        spare: 2.0 * slit - lacking,
        doubts: trunk(head) | limb(neck),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_least_slit_has_nothing_to_spare() {
        for neck in [300.0, 440.0, 539.0] {
            let least = head_opening(520.0, neck, 0.0, 20.0).unwrap().least_slit;
            assert_eq!(head_opening(520.0, neck, least, 20.0).unwrap().spare, 0.0);
        }
        assert_eq!(
            head_opening(520.0, 600.0, 0.0, 20.0).unwrap().least_slit,
            0.0
        );
    }
}
