//! Bindings: how long a strip, and how it goes round a curve.

use core::f64::consts::SQRT_2;

use crate::Error;
use crate::dust::short_of;

/// Length of binding for an edge, with what its corners and its two ends take.
///
/// `length = edge + corners · corner + finish`. A corner turned outward with a mitre takes, by the geometry of its fold, no
/// more than the edge itself; what makers allow is for handling and for a fold that is sewn over. One tutorial allows about
/// 16 in over the perimeter of a square for everything; the defaults are that, shared 2 in to a corner and 8 in to the two
/// ends, a share of ours. A neck or an armhole has no corners and takes two allowances to finish. How many strips give the
/// length, with what each join loses: [`binding_strips`](crate::bias::binding_strips).
///
/// | argument  | unit  | range    | default | meaning                                                |
/// |-----------|-------|----------|---------|--------------------------------------------------------|
/// | `edge`    | mm    | 1..=1e6  | -       | length of the edge to be bound                         |
/// | `corners` | count | 0..=1000 | 0       | corners to be mitred                                   |
/// | `corner`  | mm    | 0..=1e3  | 50.8    | allowed for each of them                               |
/// | `finish`  | mm    | 0..=1e4  | 203.2   | for joining or finishing the two ends                  |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Length of binding (mm).
///
/// # Source
/// Arithmetic; quiltingboard.com, post 8276918 (64 in square: 256 in and about 16). `tests/vectors/binding_length.csv`.
///
/// # Examples
/// ```
/// use recloth::{binding::binding_length, units::INCH};
/// let square = binding_length(4.0 * 64.0 * INCH, 4, 2.0 * INCH, 8.0 * INCH)?;
/// assert!((square / INCH - 272.0).abs() < 1e-9);
/// assert_eq!(binding_length(620.0, 0, 0.0, 20.0)?, 640.0);
/// assert_eq!(binding_length(0.0, 0, 0.0, 20.0).unwrap_err().argument(), "edge");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn binding_length(edge: f64, corners: u32, corner: f64, finish: f64) -> Result<f64, Error> {
    let edge = Error::check("edge", edge, 1.0, 1e6)?;
    let corners = f64::from(Error::check_count("corners", corners, 0, 1000)?);
    let corner = Error::check("corner", corner, 0.0, 1e3)?;
    let finish = Error::check("finish", finish, 0.0, 1e4)?;
    Ok(edge + corners * corner + finish)
}

/// Which way an edge curves, seen from the cloth.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
#[repr(i32)]
pub enum EdgeCurve {
    /// Into the cloth: a neck, an armhole.
    Inward = 0,
    /// Out of the cloth: a rounded corner, a scallop.
    Outward = 1,
}

/// A bias binding on a curved edge.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CurvedBinding {
    /// Length of the seam that sews the binding on (mm).
    pub seam: f64,
    /// What the strip is stretched along that seam; negative where it is eased (%).
    pub stretch_pct: f64,
    /// Width that a bias strip keeps where it is so stretched; above 100 where it is eased (%).
    pub width_pct: f64,
}

/// Stretch of a bias strip that is to lie flat on a curved edge.
///
/// The strip is cut as long as the finished edge, where its fold will lie. Its seam lies `finished` further into the cloth:
/// round a neck that is a longer arc, `seam = edge · (radius + finished) / radius`, and the strip is stretched to it by
/// `100 · finished / radius` percent; round an outward corner a shorter one, and it is eased. Cut as long as the seam instead,
/// a neck's binding stands away. A stretched bias strip grows narrower: as a net of threads that keep their length it keeps
/// `√(2 - (1 + stretch)²)` of its width; press it to shape before sewing, and cut it so much wider. A stretch of 41 % would
/// close the net.
///
/// Handed-down rules cut the strip 5 to 10 % shorter than the edge whatever the curve (common practice, no source): that is
/// right for a binding of 7 mm at radii of 70 to 140 mm, too much on a straighter edge, too little on a tighter one.
///
/// | argument   | unit   | range     | default | meaning                                          |
/// |------------|--------|-----------|---------|--------------------------------------------------|
/// | `edge`     | mm     | 1..=1e5   | -       | length of the finished edge                      |
/// | `radius`   | mm     | 1..=1e6   | -       | its radius                                       |
/// | `finished` | mm     | 0.5..=1e3 | -       | width of the binding that shows                  |
/// | `curve`    | choice | -         | inward  | which way the edge curves                        |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when bias cannot stretch so far, or when
/// the binding reaches the centre of an outward curve.
///
/// # Source
/// Arcs about one centre; a net of threads of fixed length, turned from 45° (plane geometry: real cloth gives a little more
/// along its threads). `tests/vectors/curved_binding.csv` has hand-worked rows.
///
/// # Examples
/// ```
/// use recloth::binding::{EdgeCurve, curved_binding};
/// let neck = curved_binding(300.0, 100.0, 8.0, EdgeCurve::Inward)?;
/// assert_eq!((neck.seam, neck.stretch_pct), (324.0, 8.0));
/// assert!((neck.width_pct - 91.3).abs() < 0.05);
/// let error = curved_binding(300.0, 10.0, 8.0, EdgeCurve::Inward).unwrap_err();
/// assert_eq!(error.argument(), "finished");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn curved_binding(
    edge: f64,
    radius: f64,
    finished: f64,
    curve: EdgeCurve,
) -> Result<CurvedBinding, Error> {
    let edge = Error::check("edge", edge, 1.0, 1e5)?;
    let radius = Error::check("radius", radius, 1.0, 1e6)?;
    let finished = Error::check("finished", finished, 0.5, 1e3)?;
    let (way, most) = match curve {
        EdgeCurve::Inward => (1.0, SQRT_2 - 1.0),
        EdgeCurve::Outward => (-1.0, 1.0),
    };
    if finished >= most * radius {
        let widest = most * radius;
        return Err(Error::no_solution(
            "finished",
            finished,
            f64::NAN,
            short_of(widest),
        ));
    }
    let stretch = way * finished / radius;
    let length = 1.0 + stretch;
    Ok(CurvedBinding {
        seam: edge * length,
        stretch_pct: 100.0 * stretch,
        // Near the limit the rounding of a square must not pass 2.
        width_pct: 100.0 * libm::sqrt((2.0 - length * length).max(0.0)),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn threads_keep_their_length() {
        // Half a mesh of the net: its diagonals are √2 · length and √2 · width, its side stays 1.
        for finished in [0.5, 3.0, 8.0, 20.0, 41.0] {
            for curve in [EdgeCurve::Inward, EdgeCurve::Outward] {
                let bound = curved_binding(300.0, 100.0, finished, curve).unwrap();
                let (length, width) = (bound.seam / 300.0, bound.width_pct / 100.0);
                let side = libm::sqrt((length * length + width * width) / 2.0);
                approx::assert_relative_eq!(side, 1.0, max_relative = 1e-12);
            }
        }
    }

    #[test]
    fn the_bound_an_error_names_is_the_limit() {
        for curve in [EdgeCurve::Inward, EdgeCurve::Outward] {
            let bind = |finished| curved_binding(300.0, 10.0, finished, curve);
            let widest = bind(20.0).unwrap_err().max();
            assert!(bind(widest).is_ok() && bind(widest + 1e-6).is_err());
        }
    }
}
