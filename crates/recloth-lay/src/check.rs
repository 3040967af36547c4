//! The checker: proves a lay right, by itself. It shares no geometry with the search.
//!
//! Everything is said of the f64 coordinates that [`placed`](crate::placed()) gives. A point *intrudes* on a ring when it
//! is inside it and further than [`DEPTH`] from its edge. Two pieces overlap when a point of either's edge intrudes on
//! the other, however thin the part that intrudes, or when a point inside both intrudes on both. So pieces may touch
//! along edges, at points, all round, and a needle between two pieces is still seen.
//!
//! On an edge, the points within `DEPTH` of one segment of a ring are an interval, because they are where a line meets
//! a convex shape. What the intervals leave are the stretches further than `DEPTH` from the ring. No such stretch
//! crosses the ring, so one point of it tells whether it is inside; and that point is so far from the ring that
//! rounding cannot move it across.

mod folded;
mod repeat;
mod ring;

use kurbo::Point;

use crate::lay::half_turns;
use crate::part::Kept;
use crate::valid::check_inputs;
use crate::{Error, Faces, Hand, Lay, Panel, Part, Placement, Shows, placed};
use repeat::check_repeat;
pub(crate) use ring::Ring;

/// Depth up to which two pieces count as touching (mm). It is kept within 1e-7.
pub const DEPTH: f64 = 1e-6;

/// Angle by which a tilt may pass its tolerance, for rounding (deg).
pub const TILT: f64 = 1e-9;

/// What is wrong with a lay. `placement`, `first` and `second` are indices of placements.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
#[allow(missing_docs)] // the sentence of each says what its fields are
pub enum Complaint {
    /// A part, panel or the spacing cannot be used.
    #[error("{0}")]
    Input(Error),
    /// The part is not there.
    #[error("placement {placement}: there is no part {part}")]
    NoSuchPart { placement: usize, part: usize },
    /// The panel is not there.
    #[error("placement {placement}: there is no panel {panel}")]
    NoSuchPanel { placement: usize, panel: usize },
    /// The turn or the shift is not a number, or absurdly large.
    #[error(
        "placement {placement}: {part} is turned or shifted by something that is not a number or is too large"
    )]
    Position { placement: usize, part: String },
    /// More or fewer than wanted.
    #[error("{part} {}: {placed} placed and {unplaced} not, but {wanted} wanted", .hand.words())]
    Count {
        part: String,
        hand: Hand,
        placed: u32,
        unplaced: u32,
        wanted: u32,
    },
    /// The piece leaves the panel.
    #[error("placement {placement}: {part} leaves {panel} at ({}, {})", .at.x, .at.y)]
    Outside {
        placement: usize,
        part: String,
        panel: String,
        at: Point,
    },
    /// The piece lies over a hole.
    #[error("placement {placement}: {part} lies over hole {hole} of {panel} at ({}, {})", .at.x, .at.y)]
    OnHole {
        placement: usize,
        part: String,
        panel: String,
        hole: usize,
        at: Point,
    },
    /// The piece lies over a flaw.
    #[error("placement {placement}: {part} lies over flaw {flaw} of {panel} at ({}, {})", .at.x, .at.y)]
    OnFlaw {
        placement: usize,
        part: String,
        panel: String,
        flaw: usize,
        at: Point,
    },
    /// The piece lies within the margin of a flaw.
    #[error(
        "placement {placement}: {part} is {distance} mm from flaw {flaw} of {panel}, not {margin} mm"
    )]
    NearFlaw {
        placement: usize,
        part: String,
        panel: String,
        flaw: usize,
        distance: f64,
        margin: f64,
    },
    /// Two pieces overlap.
    #[error("placements {first} and {second}: {part} and {other} overlap on {panel} at ({}, {})", .at.x, .at.y)]
    Overlap {
        first: usize,
        second: usize,
        part: String,
        other: String,
        panel: String,
        at: Point,
    },
    /// Two pieces are nearer than the spacing.
    #[error(
        "placements {first} and {second}: {part} and {other} are {distance} mm apart, not {spacing} mm"
    )]
    TooClose {
        first: usize,
        second: usize,
        part: String,
        other: String,
        distance: f64,
        spacing: f64,
    },
    /// The grain is tilted too far.
    #[error(
        "placement {placement}: the grain of {part} is {tilt_deg} degrees off the grain of {panel}, not at most {allowed_deg}"
    )]
    OffGrain {
        placement: usize,
        part: String,
        panel: String,
        tilt_deg: f64,
        allowed_deg: f64,
    },
    /// The piece points against the nap or one-way print.
    #[error("placement {placement}: {part} points against the nap of {panel}")]
    AgainstNap {
        placement: usize,
        part: String,
        panel: String,
    },
    /// The wrong side would show.
    #[error("placement {placement}: {part} shows the wrong side of {panel}")]
    WrongSide {
        placement: usize,
        part: String,
        panel: String,
    },
    /// The panel that is folded is not there.
    #[error("fold {fold}: there is no panel {panel}")]
    NoSuchFolded { fold: usize, panel: usize },
    /// The line of a fold is none.
    #[error(
        "fold {fold}: two points at least 0.01 mm apart make its line, each number at most 1e6 either way"
    )]
    NoFold { fold: usize },
    /// A panel with two folds.
    #[error("folds {first} and {second}: {panel} can be cut with one fold only")]
    FoldedTwice {
        first: usize,
        second: usize,
        panel: String,
    },
    /// Both layers are cut, and the other layer has another piece there, or the piece itself.
    #[error(
        "placement {placement}: {part}, cut through both layers of {panel}, cuts into placement {other}, {into}, at ({}, {})", .at.x, .at.y
    )]
    CutsInto {
        placement: usize,
        other: usize,
        part: String,
        into: String,
        panel: String,
        at: Point,
    },
    /// Both layers are cut, and the other layer has a piece nearer than the spacing.
    #[error(
        "placement {placement}: {part}, cut through both layers, is cut {distance} mm from placement {other}, {near}, not {spacing} mm"
    )]
    CutsNear {
        placement: usize,
        other: usize,
        part: String,
        near: String,
        distance: f64,
        spacing: f64,
    },
    /// Both sides show, but the cloth has one face.
    #[error(
        "placement {placement}: both sides of {part} show, but {panel} has only one to be seen"
    )]
    OneFace {
        placement: usize,
        part: String,
        panel: String,
    },
    /// Points of one name lie on different cloth.
    #[error(
        "placements {first} and {second}: at {name} {panel} and {other} cannot match, for their repeats differ"
    )]
    OtherRepeat {
        name: String,
        first: usize,
        second: usize,
        panel: String,
        other: String,
    },
    /// The grains of two pieces that match point different ways, and with them the print.
    #[error(
        "placements {first} and {second}: {part} and {other} match at {name} but lie different ways round"
    )]
    OtherWay {
        name: String,
        first: usize,
        second: usize,
        part: String,
        other: String,
    },
    /// Of two pieces that match across the grain one lies face up, the other face down.
    #[error(
        "placements {first} and {second}: {part} and {other} match at {name} but not the same side of them is up"
    )]
    OtherFace {
        name: String,
        first: usize,
        second: usize,
        part: String,
        other: String,
    },
    /// The print does not meet along the grain of the pieces.
    #[error(
        "placements {first} and {second}: {name}: {other} lies {off} mm off {part} along the repeat of {repeat} mm"
    )]
    OffAlong {
        name: String,
        first: usize,
        second: usize,
        part: String,
        other: String,
        off: f64,
        repeat: f64,
    },
    /// The print does not meet across the grain of the pieces.
    #[error(
        "placements {first} and {second}: {name}: {other} lies {off} mm off {part} across the repeat of {repeat} mm"
    )]
    OffAcross {
        name: String,
        first: usize,
        second: usize,
        part: String,
        other: String,
        off: f64,
        repeat: f64,
    },
}

/// Proves that a lay can be cut: every piece inside its panel, clear of holes, flaws and other pieces, on grain within
/// its tolerance, the right way up, of the right hand, matched where the cloth has a repeat, and none too many or too few.
///
/// A flaw keeps clear what [`Flaw::under`](crate::Flaw) leaves of a piece: all of it, its seam line, or nothing.
/// On a panel with a [`Fold`](crate::Fold) what is cut is cut through both layers: the mirror image of each piece in the fold
/// is the piece itself, or another, or lies clear of all of them, and what is cut there is spare.
/// Touching is allowed, an overlap deeper than [`DEPTH`] is not; the same tolerance holds for margins and the spacing.
/// The work grows with the square of the number of points.
///
/// On panels with a [`Repeat`](crate::Repeat) the print must run on across the seams. Points of one name
/// ([`Part::matches`]) lie at the same place of the repeat, within [`DEPTH`], measured on each panel from where its
/// repeat begins:
/// - along the grain of the pieces all of them, of all parts, copies and hands: a stripe is level all round. The pieces
///   lie the same way round, for a piece turned end for end has the print upside down;
/// - across it those of one hand ([`MatchSide`](crate::MatchSide)), the same way round and the same side up; a mirrored
///   piece meets the print mirrored, and may have it elsewhere. On a slanting seam that can be one point, and all round a
///   garment only where its girth there is a whole number of repeats.
///
/// Of a piece whose grain runs across the cloth, along and across are its own. A tilted piece meets the print at its
/// points only, and at a bend. Panels of different repeats cannot match; one without a repeat asks for nothing; nor does
/// a name that is there once.
///
/// # Errors
/// Everything that is wrong, in order of placement. Where an input cannot be used, that alone.
///
/// # Examples
/// ```
/// use recloth_lay::{Hand, Lay, Panel, Part, Placement, check};
/// let square = |side: f64| [(0.0, 0.0), (side, 0.0), (side, side), (0.0, side)];
/// let (pocket, cloth) = (Part::new("pocket", square(150.0)), Panel::new("back", square(200.0))?);
/// let mut lay = Lay::default();
/// lay.placements.push(Placement {
///     part: 0, hand: Hand::AsDrawn, panel: 0, mirrored: false, turn_deg: 0.0, shift: (50.0, 50.0).into(),
/// });
/// assert_eq!(check(&[pocket.clone()], &[cloth.clone()], &lay), Ok(()));
/// lay.placements[0].shift.x = 50.01;
/// let complaints = check(&[pocket], &[cloth], &lay).unwrap_err();
/// assert!(complaints[0].to_string().starts_with("placement 0: pocket leaves back at "));
/// # Ok::<(), recloth::Error>(())
/// ```
pub fn check(parts: &[Part], panels: &[Panel], lay: &Lay) -> Result<(), Vec<Complaint>> {
    check_inputs(parts, panels).map_err(|error| vec![Complaint::Input(error)])?;
    recloth::Error::check("spacing", lay.spacing, 0.0, 1000.0)
        .map_err(|error| vec![Complaint::Input(Error::new("lay", error))])?;
    let cloths: Vec<Cloth> = panels.iter().map(Cloth::new).collect();
    let mut complaints = Vec::new();
    let mut laid: Vec<Laid> = Vec::new();
    for (index, placement) in lay.placements.iter().enumerate() {
        match check_placement(parts, panels, index, placement) {
            Err(complaint) => complaints.push(complaint),
            Ok((part, panel)) => {
                check_lie(part, panel, index, placement, &mut complaints);
                let piece = Laid {
                    index,
                    part,
                    panel: placement.panel,
                    ring: Ring::new(&placed(&part.outline, placement)),
                    seam: Ring::new(&placed(&part.seam, placement)),
                };
                check_place(&piece, &cloths[piece.panel], &mut complaints);
                for other in laid.iter().filter(|other| other.panel == piece.panel) {
                    check_pair(other, &piece, panel, lay.spacing, &mut complaints);
                }
                laid.push(piece);
            }
        }
    }
    folded::check_folds(panels, lay, &laid, &mut complaints);
    let on_cloth = (laid.iter()).map(|piece| {
        let placement = &lay.placements[piece.index];
        (piece.index, piece.part, &panels[piece.panel], placement)
    });
    check_repeat(on_cloth, &mut complaints);
    check_counts(parts, lay, &mut complaints);
    if complaints.is_empty() {
        Ok(())
    } else {
        Err(complaints)
    }
}

/// A piece where it lies.
struct Laid<'a> {
    index: usize,
    part: &'a Part,
    panel: usize,
    ring: Ring,
    /// Its seam line; of no use where the part has none.
    seam: Ring,
}

/// A panel made ready.
struct Cloth<'a> {
    panel: &'a Panel,
    outline: Ring,
    holes: Vec<Ring>,
    flaws: Vec<(Ring, f64)>,
}

impl Cloth<'_> {
    fn new(panel: &Panel) -> Cloth<'_> {
        Cloth {
            panel,
            outline: Ring::new(panel.outline()),
            holes: panel.holes().iter().map(|hole| Ring::new(hole)).collect(),
            flaws: panel
                .flaws()
                .iter()
                .map(|flaw| (Ring::new(&flaw.outline), flaw.margin))
                .collect(),
        }
    }
}

fn check_placement<'a>(
    parts: &'a [Part],
    panels: &'a [Panel],
    index: usize,
    placement: &Placement,
) -> Result<(&'a Part, &'a Panel), Complaint> {
    let part = parts.get(placement.part).ok_or(Complaint::NoSuchPart {
        placement: index,
        part: placement.part,
    })?;
    let panel = panels.get(placement.panel).ok_or(Complaint::NoSuchPanel {
        placement: index,
        panel: placement.panel,
    })?;
    let within = |value: f64, limit: f64| value.abs() <= limit;
    if within(placement.turn_deg, 720.0)
        && within(placement.shift.x, 1e6)
        && within(placement.shift.y, 1e6)
    {
        Ok((part, panel))
    } else {
        Err(Complaint::Position {
            placement: index,
            part: part.name.clone(),
        })
    }
}

/// Counts of every part and hand, those without a place included.
fn check_counts(parts: &[Part], lay: &Lay, complaints: &mut Vec<Complaint>) {
    for (index, part) in parts.iter().enumerate() {
        for hand in Hand::BOTH {
            let placed = lay
                .placements
                .iter()
                .filter(|placement| placement.part == index && placement.hand == hand)
                .count();
            let placed = u32::try_from(placed).unwrap_or(u32::MAX);
            let unplaced = lay
                .unplaced
                .iter()
                .filter(|unplaced| unplaced.part == index && unplaced.hand == hand)
                .fold(0_u32, |sum, unplaced| sum.saturating_add(unplaced.count));
            let wanted = part.count(hand);
            if placed.saturating_add(unplaced) != wanted {
                complaints.push(Complaint::Count {
                    part: part.name.clone(),
                    hand,
                    placed,
                    unplaced,
                    wanted,
                });
            }
        }
    }
    for unplaced in &lay.unplaced {
        if unplaced.part >= parts.len() {
            complaints.push(Complaint::Count {
                part: format!("part {} (not there)", unplaced.part),
                hand: unplaced.hand,
                placed: 0,
                unplaced: unplaced.count,
                wanted: 0,
            });
        }
    }
}

/// Grain, nap and side.
fn check_lie(
    part: &Part,
    panel: &Panel,
    index: usize,
    placement: &Placement,
    complaints: &mut Vec<Complaint>,
) {
    let (part_name, panel_name) = (part.name.clone(), panel.name().to_owned());
    let grain_deg = if placement.mirrored {
        180.0 - part.grain_deg
    } else {
        part.grain_deg
    };
    let off_deg = half_turns(grain_deg + placement.turn_deg - panel.grain_deg()).abs();
    let reversed_deg = 180.0 - off_deg;
    let allowed_deg = part.tilt_deg + TILT;
    let one_way = panel.nap() && !part.either_way;
    if one_way && off_deg > allowed_deg && reversed_deg <= allowed_deg {
        complaints.push(Complaint::AgainstNap {
            placement: index,
            part: part_name.clone(),
            panel: panel_name.clone(),
        });
    } else {
        let tilt_deg = match (one_way, part.crosswise) {
            (true, _) => off_deg,
            (false, false) => off_deg.min(reversed_deg),
            (false, true) => off_deg.min(reversed_deg).min((off_deg - 90.0).abs()),
        };
        if tilt_deg > allowed_deg {
            complaints.push(Complaint::OffGrain {
                placement: index,
                part: part_name.clone(),
                panel: panel_name.clone(),
                tilt_deg,
                allowed_deg: part.tilt_deg,
            });
        }
    }
    if panel.faces() == Faces::One {
        let face_down = placement.face_down();
        match part.shows {
            Shows::Both => complaints.push(Complaint::OneFace {
                placement: index,
                part: part_name,
                panel: panel_name,
            }),
            Shows::Right if face_down => complaints.push(Complaint::WrongSide {
                placement: index,
                part: part_name,
                panel: panel_name,
            }),
            Shows::Wrong if !face_down => complaints.push(Complaint::WrongSide {
                placement: index,
                part: part_name,
                panel: panel_name,
            }),
            _ => {}
        }
    }
}

/// The piece inside its panel, clear of holes and flaws.
fn check_place(piece: &Laid, cloth: &Cloth, complaints: &mut Vec<Complaint>) {
    let placement = piece.index;
    let names = || (piece.part.name.clone(), cloth.panel.name().to_owned());
    if let Some(at) = piece.ring.leaves(&cloth.outline) {
        let (part, panel) = names();
        complaints.push(Complaint::Outside {
            placement,
            part,
            panel,
            at,
        });
    }
    for (hole, ring) in cloth.holes.iter().enumerate() {
        if let Some(at) = piece.ring.overlaps(ring) {
            let (part, panel) = names();
            complaints.push(Complaint::OnHole {
                placement,
                part,
                panel,
                hole,
                at,
            });
        }
    }
    for (index, (shape, margin)) in cloth.flaws.iter().enumerate() {
        let ring = match piece.part.kept_from(&cloth.panel.flaws()[index]) {
            Kept::Nothing => continue,
            Kept::Seam => &piece.seam,
            Kept::Whole => &piece.ring,
        };
        if let Some(at) = ring.overlaps(shape) {
            let (part, panel) = names();
            complaints.push(Complaint::OnFlaw {
                placement,
                part,
                panel,
                flaw: index,
                at,
            });
        } else if let Some(distance) = ring.nearer(shape, *margin) {
            let (part, panel) = names();
            complaints.push(Complaint::NearFlaw {
                placement,
                part,
                panel,
                flaw: index,
                distance,
                margin: *margin,
            });
        }
    }
}

/// Two pieces of one panel clear of each other.
fn check_pair(
    first: &Laid,
    second: &Laid,
    panel: &Panel,
    spacing: f64,
    complaints: &mut Vec<Complaint>,
) {
    let (part, other) = (first.part.name.clone(), second.part.name.clone());
    if let Some(at) = first.ring.overlaps(&second.ring) {
        complaints.push(Complaint::Overlap {
            first: first.index,
            second: second.index,
            part,
            other,
            panel: panel.name().to_owned(),
            at,
        });
    } else if let Some(distance) = first.ring.nearer(&second.ring, spacing) {
        complaints.push(Complaint::TooClose {
            first: first.index,
            second: second.index,
            part,
            other,
            distance,
            spacing,
        });
    }
}
