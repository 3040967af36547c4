//! From tape readings to usable cloth: corners, what the wash takes, what edges and flaws lose.

use kurbo::{Affine, Point};
use recloth::ErrorKind;
use recloth::doubt::{SPARE_MISFIT, TRIANGLE_FLAT, TRIANGLE_TALL, doubt_text};
use recloth::panel::{UsablePart, panel_by_triangles, usable_panel};
use serde::Serialize;

use crate::brief::{Brief, BriefError, Corners, GivenFlaw, GivenPanel, Grain, Reading};
use crate::measure::Tape;

/// How near the usable outline follows what is lost (mm): well under a chalk line.
const ACCURACY: f64 = 0.1;

/// A panel ready for the lay.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[non_exhaustive]
pub struct Cloth {
    /// The panel's name.
    pub name: String,
    /// Which cloth it is.
    pub cloth: String,
    /// Index of that cloth in the brief.
    #[serde(skip)]
    pub(crate) cloth_index: usize,
    /// Corners as measured, the warp up the page, the wash taken off (mm, anticlockwise).
    pub outline: Vec<Point>,
    /// What can be cut from, the largest part first (mm).
    pub usable: Vec<UsablePart>,
    /// Flaws with their clearance, as corners (mm).
    pub flaws: Vec<Flaw>,
    /// Share of the measured panel that can be used (1 is all).
    pub share: f64,
    /// Doubts about the measuring.
    #[serde(skip)]
    pub(crate) doubts: Vec<String>,
}

/// A flaw on a panel.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[non_exhaustive]
pub struct Flaw {
    /// What it is.
    pub what: String,
    /// Its corners (mm).
    pub outline: Vec<Point>,
    /// Under what it may lie: "seam allowance", "lining". One that may lie under nothing is cut away from what is usable.
    pub under: Vec<String>,
}

/// Works out one panel of the brief.
pub(crate) fn cloth(brief: &Brief, tape: &Tape, panel: &GivenPanel) -> Result<Cloth, BriefError> {
    let mut doubts = Vec::new();
    let corners = match &panel.corners {
        Corners::Points(points) => points.iter().map(|&point| Point::from(point)).collect(),
        Corners::Readings { letters, readings } => {
            from_readings(brief, tape, panel, letters, readings, &mut doubts)?
        }
    };
    let grain_deg = match panel.grain {
        Grain::Angle(angle) => angle,
        Grain::Between(from, to) => {
            let along = corners[to] - corners[from];
            libm::atan2(along.y, along.x).to_degrees()
        }
    };
    let kind = &brief.cloths[panel.cloth];
    // The panel is turned so that its warp runs up the page, which is how a cutter lays it, and then washed.
    let wash = wash(kind.change_pct) * turn(90.0 - grain_deg);
    let outline: Vec<Point> = corners.iter().map(|&corner| wash * corner).collect();
    let flaws: Vec<Flaw> = panel.flaws.iter().map(|given| flaw(given, wash)).collect();
    let lost: Vec<&Flaw> = flaws.iter().filter(|flaw| flaw.under.is_empty()).collect();
    let shapes: Vec<Vec<Point>> = lost.iter().map(|flaw| flaw.outline.clone()).collect();
    let usable = usable_panel(&outline, &panel.losses, &shapes, 0.0, ACCURACY).map_err(|error| {
        let at = error.at().and_then(|at| lost.get(at as usize)).filter(|_| error.argument() == "flaws");
        let right = match (error.kind(), error.argument(), at) {
            (_, _, Some(flaw)) => format!(
                "The {} lies outside the panel: \"at\" is its middle, along the first edge from the first corner, then \
                 up square to it.",
                flaw.what
            ),
            (ErrorKind::Outline, ..) => {
                String::from("Give the corners in order anticlockwise, so that no two edges cross.")
            }
            (ErrorKind::NoSolution, ..) => {
                String::from("Nothing is left to cut from: look at the losses and the flaws.")
            }
            _ => String::from("Look at its measures; lengths in this message are in mm."),
        };
        brief.error(&panel.span, format!("panel \"{}\" cannot be used: {error}", panel.name), right)
    })?;
    Ok(Cloth {
        name: panel.name.clone(),
        cloth: kind.name.clone(),
        cloth_index: panel.cloth,
        outline,
        usable: usable.parts,
        flaws,
        share: usable.share,
        doubts,
    })
}

/// What the wash does to a panel whose warp runs up the page.
fn wash((along_pct, across_pct): (f64, f64)) -> Affine {
    Affine::scale_non_uniform(1.0 + across_pct / 100.0, 1.0 + along_pct / 100.0)
}

/// A turn about the origin, anticlockwise; exact where there is nothing to turn.
fn turn(angle_deg: f64) -> Affine {
    if angle_deg == 0.0 {
        return Affine::IDENTITY;
    }
    let (sin, cos) = libm::sincos(angle_deg.to_radians());
    Affine::new([cos, sin, -sin, cos, 0.0, 0.0])
}

fn flaw(given: &GivenFlaw, wash: Affine) -> Flaw {
    let (wide, high) = (
        given.wide / 2.0 + given.clear,
        given.high / 2.0 + given.clear,
    );
    let corners = [(-wide, -high), (wide, -high), (wide, high), (-wide, high)];
    Flaw {
        what: given.what.clone(),
        outline: corners
            .iter()
            .map(|(x, y)| wash * Point::new(given.at.0 + x, given.at.1 + y))
            .collect(),
        under: given.under.clone(),
    }
}

fn from_readings(
    brief: &Brief,
    tape: &Tape,
    panel: &GivenPanel,
    letters: &[char],
    readings: &[Reading],
    doubts: &mut Vec<String>,
) -> Result<Vec<Point>, BriefError> {
    let mut used = vec![false; readings.len()];
    let between = |a: usize, b: usize| {
        readings
            .iter()
            .position(|r| (r.from, r.to) == (a, b) || (r.from, r.to) == (b, a))
    };
    let Some(base) = between(0, 1) else {
        return Err(brief.error(
            &panel.span,
            format!(
                "panel \"{}\" has no reading {}{}",
                panel.name, letters[0], letters[1]
            ),
            "The first edge is the base from which the corners are found: measure it.",
        ));
    };
    used[base] = true;
    let (mut starts, mut ends) = (Vec::new(), Vec::new());
    let (mut from_start, mut from_end) = (Vec::new(), Vec::new());
    let mut last_reading = Vec::new();
    for corner in 2..letters.len() {
        // The first two readings listed find the corner, the others are spare: the maker chooses the better triangle.
        let mut found: Vec<(usize, usize)> = (0..corner)
            .filter_map(|known| between(known, corner).map(|r| (known, r)))
            .collect();
        found.sort_by_key(|&(_, reading)| reading);
        if found.len() < 2 {
            let letter = letters[corner];
            return Err(brief.error(
                &panel.span,
                format!(
                    "corner {letter} of panel \"{}\" has {} readings from the corners before it",
                    panel.name,
                    ["no", "one"][found.len()]
                ),
                format!(
                    "A corner is found by two readings: {}{letter} and {}{letter}, say.",
                    letters[0], letters[1]
                ),
            ));
        }
        found.truncate(2);
        let [(start, first), (end, second)] = [found[0], found[1]];
        used[first] = true;
        used[second] = true;
        starts.push(start as u32);
        ends.push(end as u32);
        from_start.push(readings[first].length);
        from_end.push(readings[second].length);
        last_reading.push(second);
    }
    let spare: Vec<usize> = (0..readings.len())
        .filter(|&reading| !used[reading])
        .collect();
    let corner_of = |pick: fn(&Reading) -> usize| {
        spare
            .iter()
            .map(|&reading| pick(&readings[reading]) as u32)
            .collect::<Vec<u32>>()
    };
    let lengths: Vec<f64> = spare
        .iter()
        .map(|&reading| readings[reading].length)
        .collect();
    let (mut along, mut across) = (vec![0.0; letters.len()], vec![0.0; letters.len()]);
    let mut misfits = vec![0.0; spare.len()];
    // Corners go anticlockwise, so each lies to the left of two that come before it.
    let sides = vec![0; starts.len()];
    let found = panel_by_triangles(
        readings[base].length,
        &starts,
        &ends,
        &from_start,
        &from_end,
        &sides,
        &corner_of(|r| r.from),
        &corner_of(|r| r.to),
        &lengths,
        &mut along,
        &mut across,
        &mut misfits,
    )
    .map_err(|error| {
        let at = error.at().map_or(0, |at| at as usize);
        match (error.argument(), last_reading.get(at)) {
            ("from_end", Some(&reading)) => {
                let name = |r: &Reading| format!("{}{}", letters[r.from], letters[r.to]);
                brief.error(
                    &readings[reading].span,
                    format!(
                        "panel \"{}\": the readings {} to {}, {} and {} make no triangle",
                        panel.name,
                        letters[starts[at] as usize],
                        letters[ends[at] as usize],
                        name(&readings[between(starts[at] as usize, at + 2).unwrap_or(reading)]),
                        name(&readings[reading]),
                    ),
                    format!(
                        "With the others as they are, {} would be between {} and {}: measure again.",
                        name(&readings[reading]),
                        tape.text(error.min()),
                        tape.text(error.max())
                    ),
                )
            }
            _ => brief.error(
                &panel.span,
                format!(
                    "panel \"{}\" crosses itself, most likely at corner {}",
                    panel.name,
                    letters.get(at + 2).unwrap_or(&letters[0])
                ),
                "Name the corners anticlockwise, as the panel lies right side up, and measure again.",
            ),
        }
    })?;
    for (&reading, misfit) in spare.iter().zip(&misfits) {
        // The core's limit, 0.5 % of the reading; but less than a graduation of the tape says nothing.
        let reading = &readings[reading];
        let misfit: f64 = *misfit;
        if misfit.abs() > (0.005 * reading.length).max(tape.graduation) {
            doubts.push(format!(
                "Panel {}: {}{} was read as {}, but the other readings make it {}. Measure again: the tape was misread, \
                 or the cloth lay off grain.",
                panel.name,
                letters[reading.from],
                letters[reading.to],
                tape.text(reading.length),
                tape.text(reading.length + misfit)
            ));
        }
    }
    for bit in [TRIANGLE_FLAT, TRIANGLE_TALL] {
        if let (true, Some(text)) = (found.doubts & bit != 0, doubt_text(bit)) {
            doubts.push(format!("Panel {}: {text}", panel.name));
        }
    }
    debug_assert!(found.doubts & !(TRIANGLE_FLAT | TRIANGLE_TALL | SPARE_MISFIT) == 0);
    Ok(along.into_iter().zip(across).map(Point::from).collect())
}
