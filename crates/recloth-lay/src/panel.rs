//! A panel of cloth: what there is to cut from.

use kurbo::Point;

/// How many of the cloth's sides are fit to show.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
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

/// A stain, worn place, hole or slit to keep clear of.
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
}

impl Flaw {
    /// A flaw with the margin to keep from it.
    pub fn new<P: Into<Point>>(outline: impl IntoIterator<Item = P>, margin: f64) -> Flaw {
        Flaw {
            outline: outline.into_iter().map(Into::into).collect(),
            margin,
        }
    }
}

/// A panel of cloth as it lies right side up on the table.
///
/// Outline and holes are in mm, y up the page, either direction round; the first point may be repeated at the end. None
/// may touch or cross itself. Holes may touch the outline and each other.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Panel {
    /// What the maker calls it; used in messages.
    pub name: String,
    /// The edge of the usable cloth: 3 to 5000 points (mm, each coordinate -1e5 to 1e5).
    pub outline: Vec<Point>,
    /// Holes, each as the outline is (up to 1000).
    #[cfg_attr(feature = "serde", serde(default))]
    pub holes: Vec<Vec<Point>>,
    /// Flaws to keep clear of (up to 1000).
    #[cfg_attr(feature = "serde", serde(default))]
    pub flaws: Vec<Flaw>,
    /// Direction of the lengthwise grain, counter-clockwise from the x axis; with a nap or one-way print, the way it
    /// runs (deg, -360 to 360).
    #[cfg_attr(feature = "serde", serde(default = "crate::part::up_the_page"))]
    pub grain_deg: f64,
    /// How many of its sides may show.
    #[cfg_attr(feature = "serde", serde(default))]
    pub faces: Faces,
    /// Whether it has a nap, pile or one-way print, so that every piece must point the same way.
    #[cfg_attr(feature = "serde", serde(default))]
    pub nap: bool,
}

impl Panel {
    /// A sound panel of one-faced cloth without nap, grain straight up the page.
    pub fn new<P: Into<Point>>(
        name: impl Into<String>,
        outline: impl IntoIterator<Item = P>,
    ) -> Panel {
        Panel {
            name: name.into(),
            outline: outline.into_iter().map(Into::into).collect(),
            holes: Vec::new(),
            flaws: Vec::new(),
            grain_deg: 90.0,
            faces: Faces::One,
            nap: false,
        }
    }
}
