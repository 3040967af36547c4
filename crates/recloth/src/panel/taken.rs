//! Panels from tape readings, offsets and photographs, and how well each of these holds.

use alloc::string::String;
use alloc::vec::Vec;

use kurbo::Point;

use super::{Panel, panel_by_triangles};
use crate::{Error, doubt::LENS_BOW, offsets::panel_by_offsets, photo::photo_map};

/// How the outline of a panel was found, and how well.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Taken {
    /// Its corners were given.
    #[default]
    Outline,
    /// By tape, in triangles.
    Triangles {
        /// The corner whose own triangle holds it least.
        weakest_corner: u32,
        /// How far that corner moves at worst along or across its base, for each mm that its readings are off.
        weakest_per_mm: f64,
    },
    /// By offsets from a line drawn on the straight grain.
    Offsets {
        /// Farthest that a side leaves the straight line between its ends, measured across (mm).
        largest_bow: f64,
    },
    /// From a photograph.
    Photo {
        /// Farthest that a corner lies beyond the reference, in sizes of the reference.
        reach: f64,
        /// Largest length that one picture unit stands for at a corner (mm).
        coarsest: f64,
    },
    /// From a drawing.
    Path {
        /// Its scale (mm for one unit of the drawing).
        mm_per_unit: f64,
    },
}

#[cfg(feature = "serde")]
impl Taken {
    pub(super) fn is_outline(&self) -> bool {
        *self == Taken::Outline
    }
}

/// Where a corner lies by tape: two readings from corners before it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct CornerReading {
    /// The corner the first reading is from.
    pub start: u32,
    /// The corner the second reading is from.
    pub end: u32,
    /// First reading (mm, 1 to 1e5).
    pub from_start: f64,
    /// Second reading (mm, 1 to 1e5).
    pub from_end: f64,
    /// Whether the corner lies to the right, as seen from `start` towards `end`; left otherwise.
    #[cfg_attr(feature = "serde", serde(default))]
    pub right: bool,
}

/// A distance read between two corners that found neither.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SpareReading {
    /// One corner.
    pub from: usize,
    /// The other.
    pub to: usize,
    /// The distance as read (mm, 1 to 1e5).
    pub reading: f64,
}

/// A spare reading and what it misses.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Spare {
    /// One corner.
    pub from: usize,
    /// The other.
    pub to: usize,
    /// The distance as read (mm).
    pub reading: f64,
    /// The distance as the corners have it, less the reading (mm).
    pub misfit: f64,
}

impl Spare {
    /// The reading alone.
    pub fn read(&self) -> SpareReading {
        SpareReading {
            from: self.from,
            to: self.to,
            reading: self.reading,
        }
    }
}

impl Panel {
    /// A panel measured by tape in triangles: corner 1 lies `base` from corner 0 (mm, 1 to 1e5), straight along the x axis;
    /// each further corner, in order round the panel, is found by two readings from corners before it.
    ///
    /// Check it by [`Panel::with_spares`]: at least one more reading, the other diagonal, tells a misread tape, and cloth
    /// that lay off grain. Give the grain by [`Panel::with_grain_between`] or [`Panel::with_grain_deg`].
    ///
    /// # Errors
    /// As of [`panel_by_triangles`].
    ///
    /// ```
    /// use recloth::panel::{CornerReading, Panel, SpareReading};
    /// // A rectangle of 400 by 300, both diagonals 500.
    /// let corner = |from_start, from_end| CornerReading { start: 0, end: 1, from_start, from_end, right: false };
    /// let panel = Panel::by_triangles("cuff", 400.0, &[corner(500.0, 300.0), corner(300.0, 500.0)])?
    ///     .with_spares(&[SpareReading { from: 2, to: 3, reading: 401.0 }])?;
    /// assert_eq!((panel.area_mm2(), panel.largest_misfit()), (120_000.0, Some(1.0)));
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn by_triangles(
        name: impl Into<String>,
        base: f64,
        corners: &[CornerReading],
    ) -> Result<Panel, Error> {
        let count = |of: fn(&CornerReading) -> u32| corners.iter().map(of).collect::<Vec<u32>>();
        let length = |of: fn(&CornerReading) -> f64| corners.iter().map(of).collect::<Vec<f64>>();
        let mut along = alloc::vec![0.0; corners.len() + 2];
        let mut across = along.clone();
        let found = panel_by_triangles(
            base,
            &count(|corner| corner.start),
            &count(|corner| corner.end),
            &length(|corner| corner.from_start),
            &length(|corner| corner.from_end),
            &count(|corner| u32::from(corner.right)),
            &[],
            &[],
            &[],
            &mut along,
            &mut across,
            &mut [],
        )?;
        let outline = along.into_iter().zip(across).map(Point::from).collect();
        let taken = Taken::Triangles {
            weakest_corner: found.weakest_corner,
            weakest_per_mm: found.weakest_per_mm,
        };
        Panel::taken_as(name.into(), outline, taken, found.doubts)
    }

    /// A panel measured square from a line drawn on the straight grain, at stations rising along it (mm): to the `left` and the
    /// `right` edge at each.
    ///
    /// The line is the y axis, the grain runs up it. With n stations the corners are those of the right edge, upward, 0 to n - 1,
    /// then those of the left edge, downward, n to 2n - 1; so edge n - 1 is the upper end, and the last edge the lower.
    ///
    /// # Errors
    /// As of [`panel_by_offsets`]; `Outline` naming `outline` where the panel has no width between its ends.
    ///
    /// ```
    /// use recloth::panel::Panel;
    /// let sleeve = Panel::by_offsets("sleeve", &[0.0, 400.0], &[120.0, 200.0], &[130.0, 180.0])?;
    /// assert_eq!((sleeve.area_mm2(), sleeve.grain_deg()), (126_000.0, 90.0));
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn by_offsets(
        name: impl Into<String>,
        stations: &[f64],
        left: &[f64],
        right: &[f64],
    ) -> Result<Panel, Error> {
        let mut bows = (
            alloc::vec![0.0; stations.len()],
            alloc::vec![0.0; stations.len()],
        );
        let found = panel_by_offsets(stations, left, right, &mut bows.0, &mut bows.1)?;
        let rising = right.iter().zip(stations);
        let falling = left.iter().zip(stations).rev();
        let outline = rising
            .map(|(&x, &y)| Point::new(x, y))
            .chain(falling.map(|(&x, &y)| Point::new(0.0 - x, y)))
            .collect();
        let taken = Taken::Offsets {
            largest_bow: found.largest_bow,
        };
        Panel::taken_as(name.into(), outline, taken, 0)
    }

    /// A panel photographed flat beside a reference of four known points, such as the corners of a sheet of paper: where they
    /// are in the picture, and how they truly lie (mm), in the same order; and the panel's `outline` in the picture, 3 to 1000
    /// points.
    ///
    /// The doubt `LENS_BOW` is always raised: the bow that a lens gives straight lines is not taken out. `PHOTO_REACH` is
    /// raised as by [`photo_map`]. Check it by [`Panel::with_spares`]: measure a length or two by tape.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution` naming `picture` or `truth` (three points in line, or out of order), with the
    /// index of the point; the same and `Count` naming `outline`, on or beyond the horizon of the picture among them;
    /// `Outline` naming `outline` where it crosses itself.
    ///
    /// ```
    /// use recloth::{doubt::LENS_BOW, panel::Panel};
    /// // A sheet of 200 by 300 mm seen at a slant.
    /// let picture = [(0.0, 0.0), (400.0, 0.0), (300.0, 300.0), (100.0, 300.0)].map(Into::into);
    /// let truth = [(0.0, 0.0), (200.0, 0.0), (200.0, 300.0), (0.0, 300.0)].map(Into::into);
    /// let yoke = Panel::from_photo("yoke", &picture, &truth, &picture)?;
    /// assert!((yoke.area_mm2() - 60_000.0).abs() < 1e-6);
    /// assert_eq!(yoke.doubts(), LENS_BOW);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn from_photo(
        name: impl Into<String>,
        picture: &[Point; 4],
        truth: &[Point; 4],
        outline: &[Point],
    ) -> Result<Panel, Error> {
        Error::check_items("outline", outline.len(), 3, 1000)?;
        let split = |points: &[Point]| -> (Vec<f64>, Vec<f64>) {
            points.iter().map(|point| (point.x, point.y)).unzip()
        };
        let (picture_x, picture_y) = split(picture);
        let (true_x, true_y) = split(truth);
        let (x, y) = split(outline);
        let mut along = alloc::vec![0.0; outline.len()];
        let (mut across, mut scales) = (along.clone(), along.clone());
        let found = photo_map(
            &picture_x,
            &picture_y,
            &true_x,
            &true_y,
            &x,
            &y,
            &mut along,
            &mut across,
            &mut scales,
        )
        .map_err(as_points)?;
        let outline = along.into_iter().zip(across).map(Point::from).collect();
        let taken = Taken::Photo {
            reach: found.reach,
            coarsest: found.coarsest,
        };
        Panel::taken_as(name.into(), outline, taken, found.doubts | LENS_BOW)
    }
}

/// An error of the map in terms of points.
fn as_points(error: Error) -> Error {
    let argument = match error.argument() {
        "picture_x" | "picture_y" => "picture",
        "true_x" | "true_y" => "truth",
        _ => "outline",
    };
    let named = Error::new(
        error.kind(),
        argument,
        error.value(),
        error.min(),
        error.max(),
    );
    error.at().map_or(named, |at| named.at_index(at as usize))
}
