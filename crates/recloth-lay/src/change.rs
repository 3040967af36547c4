//! What must give so that all pieces fit: of the changes the maker would allow, as few and as small as are found to do.

mod apply;
mod never;
mod seek;

use core::fmt;
use core::ops::ControlFlow;

use kurbo::Point;

use crate::{Error, Fit, Options, Panel, Part, Progress, Shortage};

/// One change that the maker would allow.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Change {
    /// Index of the part that gives.
    pub part: usize,
    /// What it gives.
    pub kind: Give,
}

/// What a part may give. Directions and lengths are in the axes of its outline.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case", deny_unknown_fields)
)]
pub enum Give {
    /// The grain may be tilted further.
    Tilt {
        /// Up to so much either way (deg, more than the part's own tilt, to 180).
        to_deg: f64,
    },
    /// A piece may be joined of two halves, by a straight seam. Half 1 lies before it, half 2 beyond. A strip as wide as the
    /// allowance is added to both, square to the seam. They keep the part's grain, tilt and sides.
    Join {
        /// Direction square to the seam, counter-clockwise from the x axis (deg, -360 to 360).
        across_deg: f64,
        /// The seam lies at least so far along that direction from the origin (mm).
        from: f64,
        /// The seam lies at most so far (mm). All between must part the outline in exactly two.
        to: f64,
        /// Seam allowance added to each half (mm, 0 to 1000).
        allowance: f64,
    },
    /// The piece may be shorter, or narrower: all corners beyond a line move back square to it.
    Shorter {
        /// Direction towards the end that moves back, counter-clockwise from the x axis (deg, -360 to 360).
        toward_deg: f64,
        /// Corners further than this along it from the origin move (mm).
        beyond: f64,
        /// By so much at most (mm, 0.1 to 1e5).
        most: f64,
    },
    /// The piece may have another outline, step by step: with narrower allowances, say.
    Smaller {
        /// What that is, for the words: "narrower seam allowance".
        name: String,
        /// 1 to 100 steps, in growing amount.
        steps: Vec<Step>,
    },
    /// A piece may be replaced by others: a waistband by three sections.
    Instead {
        /// What that is, for the words: "in three sections".
        name: String,
        /// What takes the place of one piece as drawn, 1 to 100 parts; of one mirrored, the same with hands exchanged.
        parts: Vec<Part>,
    },
    /// There may be fewer of it.
    Fewer {
        /// So many fewer at most (1 to as many as there are).
        by: u32,
    },
}

/// One step of [`Give::Smaller`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
pub struct Step {
    /// How much is given (mm, 0 to 1e5).
    pub amount: f64,
    /// The whole cut line then, on the same axes as the part's (mm).
    pub outline: Vec<Point>,
}

/// A change that was made.
///
/// As text it is a line for the worksheet: "skirt back: 12.3 mm shorter", "band: 1 of 2 joined, 310 mm from its end".
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct Made {
    /// Index in the list of changes.
    pub change: usize,
    /// Name of the part.
    pub part: String,
    /// How much is given.
    pub amount: Amount,
}

/// How much of a change is made.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Amount {
    /// The grain may be tilted this far.
    Tilt {
        /// Either way (deg).
        to_deg: f64,
    },
    /// Pieces are joined.
    Join {
        /// So many.
        pieces: u32,
        /// Of so many.
        of: u32,
        /// Where the seam lies along the direction across it, from the origin (mm).
        at: f64,
        /// The same from the end of the piece that half 1 has (mm).
        from_end: f64,
    },
    /// The pieces are shorter or narrower.
    Shorter {
        /// By this (mm).
        by: f64,
    },
    /// The pieces have the outline of a step.
    Smaller {
        /// Index of the step.
        step: usize,
        /// Its amount (mm).
        by: f64,
        /// What it is called.
        name: String,
    },
    /// Pieces are replaced.
    Instead {
        /// So many.
        pieces: u32,
        /// Of so many.
        of: u32,
        /// By what.
        name: String,
    },
    /// There are fewer.
    Fewer {
        /// By so many.
        by: u32,
        /// Of so many.
        of: u32,
    },
}

/// Millimetres to a tenth, degrees to a hundredth, without needless noughts.
fn neat(value: f64, places: usize) -> String {
    let text = format!("{value:.places$}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

impl fmt::Display for Made {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: ", self.part)?;
        match &self.amount {
            Amount::Tilt { to_deg } => {
                write!(f, "grain tilted by up to {} degrees", neat(*to_deg, 2))
            }
            Amount::Join {
                pieces,
                of,
                from_end,
                ..
            } => {
                let end = neat(*from_end, 1);
                match of {
                    1 => write!(f, "joined, {end} mm from its end"),
                    _ => write!(f, "{pieces} of {of} joined, {end} mm from its end"),
                }
            }
            Amount::Shorter { by } => write!(f, "{} mm shorter", neat(*by, 1)),
            Amount::Smaller { by, name, .. } => write!(f, "{name}, by {} mm", neat(*by, 1)),
            Amount::Instead { of: 1, name, .. } => write!(f, "{name}"),
            Amount::Instead { pieces, of, name } => write!(f, "{pieces} of {of} {name}"),
            Amount::Fewer { by, of } => write!(f, "{by} fewer of {of}"),
        }
    }
}

/// What must give.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[non_exhaustive]
pub struct LeastChange {
    /// The answer.
    pub answer: Needed,
    /// How many evaluations were made.
    pub evaluations: u64,
    /// Whether the time was up before all was tried.
    #[cfg_attr(feature = "serde", serde(default))]
    pub out_of_time: bool,
}

/// Which changes are needed.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum Needed {
    /// None: all pieces fit as they are, and so.
    Nothing(Box<Fit>),
    /// These, and then all pieces fit.
    Changed {
        /// What gives, in the maker's order.
        made: Vec<Made>,
        /// The parts then: first those given, each with what is left of it whole, then halves and replacements.
        parts: Vec<Part>,
        /// How these fit.
        fit: Box<Fit>,
    },
    /// No amount of the changes will do, and this proves it.
    Never {
        /// What stays of the parts whatever is given; a part of which nothing is sure to stay has counts of 0.
        parts: Vec<Part>,
        /// Why not even these have a place together. An area needed is that of all pieces at their smallest.
        shortage: Shortage,
    },
    /// Nothing was found to do, and nothing proves that nothing would.
    Undecided,
}

/// The least change that makes all pieces fit, as far as is found.
///
/// `changes` are what the maker would allow, what she minds least first; of one part there may be several. First nothing is
/// changed. If that does not fit, the first change is allowed to its fullest, then the second too, and so on, until all
/// pieces fit. Then changes that are not needed are left out again, the last first, and the amount of each other, the last
/// first, is brought down as far as is found to fit: to 0.1 mm, 0.01 degrees, a step, or a piece.
///
/// It is the least that was *found*. Bringing an amount down takes for granted that more helps where less does; joins and
/// replacements, of which that is not true, are tried piece by piece. A join is tried in the middle of where it may lie,
/// then where each half just uses up a panel, then at nine places evenly spread; in the end it is brought to the middle of
/// what the panels allow that its halves lie on. Joined pieces of one part have their seam at one place. A piece is joined
/// or replaced once. Where some of a part's pieces give and others do not, those as drawn give first, in turn with those
/// mirrored.
///
/// `options.budget` is for everything together; what can be proved impossible costs none of it. The same inputs give the
/// same answer on every machine.
///
/// # Errors
/// As of [`fit`](crate::fit()), of options, parts, and what takes their place. Of a change, named by its index and part:
/// - `NoSolution` naming `part`: there is none.
/// - `NoSolution` naming `to_deg`: no more than the part's tilt.
/// - `NoSolution` naming `from` or `to`: there the line would not part the outline in exactly two; `min` and `max` are
///   the nearest stretch that would do.
/// - `NoSolution` naming `beyond`: no corner lies beyond it, or all do. Naming `most`: the outline would cross itself; `max`
///   would do.
/// - `NoSolution` naming `steps`: an amount that is not more than the one before it.
/// - `NotFinite`, `OutOfRange`, `Count` or `Outline` as usual.
///
/// # Examples
/// A band 640 long, and two scraps. Joined with 10 mm allowance on both sides of the seam, they give 660: 20 to spare.
/// ```
/// use recloth_lay::{Change, Give, Needed, Options, Panel, Part, least_change};
/// let strip = |length: f64| [(0.0, 0.0), (60.0, 0.0), (60.0, length), (0.0, length)];
/// let scraps = [Panel::new("left scrap", strip(420.0))?, Panel::new("right scrap", strip(260.0))?];
/// let band = [Part::new("band", strip(640.0))];
/// let join = Give::Join { across_deg: 90.0, from: 100.0, to: 540.0, allowance: 10.0 };
/// let found = least_change(&band, &scraps, &[Change { part: 0, kind: join }], &Options::default())?;
/// let Needed::Changed { made, parts, fit } = found.answer else { unreachable!() };
/// assert_eq!(made[0].to_string(), "band: joined, 240 mm from its end");
/// assert_eq!((parts[1].name.as_str(), parts[2].name.as_str()), ("band, half 1", "band, half 2"));
/// assert_eq!(fit.lay.placements.len(), 2);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn least_change(
    parts: &[Part],
    panels: &[Panel],
    changes: &[Change],
    options: &Options,
) -> Result<LeastChange, Error> {
    least_change_with(parts, panels, changes, options, |_| {
        ControlFlow::Continue(())
    })
}

/// As [`least_change`]; says how far it has come, many times a second, with nothing for the best, and stops at
/// [`ControlFlow::Break`] with what it has.
///
/// # Errors
/// As [`least_change`].
pub fn least_change_with(
    parts: &[Part],
    panels: &[Panel],
    changes: &[Change],
    options: &Options,
    mut progress: impl FnMut(Progress) -> ControlFlow<()>,
) -> Result<LeastChange, Error> {
    seek::seek(parts, panels, changes, options, &mut progress)
}
