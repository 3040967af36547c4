//! A wrap skirt: two backs with a centre seam, two fronts that lie over each other, darts, and a band in sections.
//!
//! Every panel is as wide at the waist as at the hip; darts and the side seam take the difference (what the panel has
//! leads, not half a waist less half a hip). Each front runs on past the centre by half of the overlap.

use recloth::band::{SquareEnds, curved_band, sectioned_band};
use recloth::closure::buttonhole;
use recloth::doubt::DOUBTS;
use recloth::draft::{Allowances, Centre, SectionedBand, SkirtPanel};
use recloth::outline::{Curve, Edge, Hand, LineKind, Mark, Piece, Role};

use super::{Draft, Impossible, Sum, draw};
use crate::brief::{Brief, Make, WrapSkirt};
use crate::order::{Kind, Step};

/// How much higher the waist is at the side than at the centre (mm): common practice, no source.
const SIDE_RISE: f64 = 10.0;
/// Side seams of front and back may differ by this much (mm) and be eased: common practice, no source.
const EASED: f64 = 3.0;

pub(super) fn draft(brief: &Brief, make: &Make, s: &WrapSkirt) -> Result<Draft, Impossible> {
    let name = &make.name;
    let cloth = &brief.cloths[make.cloth].name;
    let quarter_waist = (s.waist + s.waist_ease) / 4.0;
    let quarter_hip = (s.hip + s.hip_ease) / 4.0;
    check(brief, s, quarter_waist, quarter_hip)?;
    let quarter = |side: &str, darts: u32| {
        SkirtPanel {
            name: format!("{name} {side}"),
            panel_width: quarter_hip,
            waist: quarter_waist,
            hip: quarter_hip,
            hip_depth: s.hip_depth,
            length: s.length,
            hem_width: quarter_hip + s.flare,
            darts,
            largest_intake: s.largest_dart,
            dart_length: s.dart_length,
            side_rise: SIDE_RISE,
            centre: Centre::Seam,
            allowances: Allowances {
                seam: brief.allowances.seam,
                hem: brief.allowances.hem,
            },
        }
        .draft()
    };
    let (back, front) = (
        quarter("back", s.back_darts)?,
        quarter("front", s.front_darts)?,
    );
    let mut doubts: Vec<String> = DOUBTS
        .iter()
        .filter(|bit| (back.doubts | front.doubts) & bit.bit != 0)
        .map(|bit| format!("{name}: {}", bit.text))
        .collect();
    let ([back], [front]) = (&back.pieces[..], &front.pieces[..]) else {
        return Err(Impossible::new(
            "its panels cannot be drawn",
            "Look at its measures.",
        ));
    };
    let apart = (side_length(back) - side_length(front)).abs();
    if apart > EASED {
        doubts.push(format!(
            "{name}: the side seams of front and back differ by {}: give front and back the same number of darts.",
            brief.tape.text(apart)
        ));
    }
    let past_centre = s.overlap / 2.0;
    let front = past(front, past_centre, s.length, s.facing)?;
    let mut pieces = vec![
        draw::cut(back.clone(), 2, Hand::Mirrored, cloth, None)?,
        draw::cut(front, 2, Hand::Mirrored, cloth, None)?,
    ];

    let front_waist = quarter_waist + past_centre;
    let lower = [front_waist, 2.0 * quarter_waist, front_waist];
    let top = lower.iter().sum::<f64>() - s.band_taper;
    let curved = s.band_curved && s.band_taper > 0.0;
    let mut upper = [0.0; 3];
    if curved {
        curved_band(&lower, s.band_depth, top, &mut upper)?;
    } else {
        let band = sectioned_band(&lower, s.band_depth, top, SquareEnds::Both, &mut upper)?;
        if band.join_kink_deg > 5.0 {
            doubts.push(format!(
                "{name}: the band's sections meet in a kink of {:.1} degrees: true both edges to a curve across each \
                 join, or have the band curved.",
                band.join_kink_deg
            ));
        }
    }
    let band = SectionedBand {
        lengths: lower.to_vec(),
        depth: s.band_depth,
        top,
        ends: SquareEnds::Both,
        curved,
        allowance: brief.allowances.seam,
    }
    .draft()?;
    // The third section is the first one mirrored. Two of each: the outer layer and its facing.
    for (section, title, count) in [(0, "front band", 4), (1, "back band", 2)] {
        let piece = band.pieces[section]
            .clone()
            .with_name(format!("{name} {title}"));
        let bounds = piece.bounds();
        let (x0, x1) = (
            bounds.x0 + 0.25 * bounds.width(),
            bounds.x0 + 0.75 * bounds.width(),
        );
        let piece = draw::grain(piece, (x0, bounds.center().y), (x1, bounds.center().y))?;
        let piece = if section == 0 {
            with_buttonholes(piece, s)?
        } else {
            piece
        };
        let hand = if section == 0 {
            Hand::Mirrored
        } else {
            Hand::Identical
        };
        pieces.push(draw::cut(
            piece,
            count,
            hand,
            cloth,
            Some("interfacing on the outer layer, without allowances"),
        )?);
    }
    let later = pieces[2..]
        .iter()
        .map(|piece| piece.name().to_owned())
        .collect();
    let sections = ["right front", "back", "left front"];
    let terms = |lengths: [f64; 3]| {
        sections
            .map(str::to_owned)
            .into_iter()
            .zip(lengths)
            .collect()
    };
    Ok(Draft {
        pieces,
        later,
        sums: vec![
            Sum {
                what: format!("{name}: waist edge, darts closed, and the band's lower edge"),
                terms: terms(lower),
            },
            Sum {
                what: format!("{name}: the band's upper edge"),
                terms: terms(upper),
            },
        ],
        steps: steps(name, &draw::buttonholes(&brief.tape, &s.buttons)?),
        doubts,
        ..Draft::default()
    })
}

/// Slips that the draft itself would tell in its own words.
fn check(brief: &Brief, s: &WrapSkirt, waist: f64, hip: f64) -> Result<(), Impossible> {
    if waist > hip {
        return Err(Impossible::new(
            "the waist with its ease is larger than the hip with its ease",
            "Look at waist and hip: have they changed places? Where the body is so, give more hip_ease.",
        ));
    }
    if s.length <= s.hip_depth {
        return Err(Impossible::new(
            "it is no longer than from waist to hip",
            "Give a longer length, or look at hip_depth.",
        ));
    }
    if s.front_darts + s.back_darts > 0 && s.dart_length >= s.hip_depth {
        return Err(Impossible::new(
            "its darts reach below the hip",
            format!(
                "Give a dart_length of less than {}.",
                brief.tape.text(s.hip_depth)
            ),
        ));
    }
    for darts in [s.back_darts, s.front_darts] {
        let left = hip - waist - f64::from(darts) * s.largest_dart;
        // What a side seam takes over the hip bone before it pulls: common practice, no source.
        if left > s.hip_depth / 2.0 {
            return Err(Impossible::new(
                format!(
                    "a side seam would have to take {} from hip to waist",
                    brief.tape.text(left)
                ),
                "Give more darts (back_darts, front_darts) or a larger largest_dart.",
            ));
        }
    }
    Ok(())
}

/// Length of a panel's side seam.
fn side_length(piece: &Piece) -> f64 {
    piece
        .edges()
        .iter()
        .filter(|edge| edge.name.starts_with("side"))
        .map(Edge::length)
        .sum()
}

/// The front run on past its centre line, square to it, and ended by a wrap edge with a facing turned in.
fn past(front: &Piece, by: f64, length: f64, facing: f64) -> Result<Piece, recloth::Error> {
    let moved = front.shifted((by, 0.0));
    let mut edges = Vec::new();
    for edge in moved.edges() {
        if edge.name != "centre" {
            edges.push(edge.clone());
            continue;
        }
        let hem = moved
            .edges()
            .iter()
            .find(|edge| edge.role == Role::Hem)
            .map_or(0.0, |edge| edge.allowance);
        if by > 0.0 {
            edges.push(Edge::seam(
                "waist past centre",
                Curve::line((by, 0.0), (0.0, 0.0)),
                edge.allowance,
            ));
        }
        edges.push(Edge::new(
            "wrap edge",
            Curve::line((0.0, 0.0), (0.0, -length)),
            Role::Hem,
            facing,
        ));
        if by > 0.0 {
            edges.push(Edge::hem(
                "hem past centre",
                Curve::line((0.0, -length), (by, -length)),
                hem,
            ));
        }
    }
    let mut marks = moved.marks().to_vec();
    if by > 0.0 {
        marks.push(Mark::Line {
            kind: LineKind::Plain,
            name: String::from("centre front"),
            curve: Curve::line((by, 0.0), (by, -length)),
        });
    }
    let piece = Piece::new(front.name(), edges)?.with_marks(marks)?;
    match moved.grain() {
        Some(grain) => piece.with_grain(grain),
        None => Ok(piece),
    }
}

/// The front's section with its buttonholes, lengthwise in the middle of its outer end. The first begins as far from
/// the end as the button is wide, the others follow by two and a half of that: common practice, no source.
fn with_buttonholes(piece: Piece, s: &WrapSkirt) -> Result<Piece, recloth::Error> {
    let width = s.buttons.diameter;
    let slit = buttonhole(width, s.buttons.thickness, 0.0)?;
    let end = piece
        .edge("start")
        .and_then(|edge| piece.at(edge, piece.edges()[edge].length() / 2.0));
    let Some((middle, outward)) = end else {
        return Ok(piece);
    };
    let holes = (0..s.buttons.count).map(|i| {
        let start = width * (1.0 + 2.5 * f64::from(i));
        Mark::Buttonhole {
            name: format!("{}", i + 1),
            ends: [middle - outward * start, middle - outward * (start + slit)],
        }
    });
    piece.with_marks(holes.collect())
}

fn steps(name: &str, holes: &str) -> Vec<Step> {
    let step = |text: &str, kind| Step::new(format!("{name}: {text}"), kind, name);
    vec![
        step("sew the darts", Kind::SewDarts),
        step(
            "turn and stitch the facings of the wrap edges",
            Kind::Facing,
        ),
        step("sew the centre back seam", Kind::Join),
        step("baste the side seams", Kind::Join),
        step("try on, wrapped as it will be worn", Kind::TryOn)
            .after(format!("{name}: baste the side seams"))
            .why("a basted seam can still be moved"),
        step("sew the side seams", Kind::Sides)
            .after(format!("{name}: try on, wrapped as it will be worn"))
            .why("a basted seam is moved in a minute"),
        step(
            "measure the waist edge as sewn, section by section",
            Kind::MeasureWaist,
        )
        .after(format!("{name}: sew the side seams"))
        .why("every seam joined takes its own small share of the waist"),
        step(
            "cut the band's sections, the outer layer and its facing",
            Kind::CutBand,
        ),
        step("fuse the band's outer layer", Kind::FuseBand),
        step(
            "join the band's sections, sew it on, close its ends",
            Kind::CloseBand,
        ),
        step(holes, Kind::Buttonhole),
        step("slit the buttonholes", Kind::Slit),
        step("sew the buttons on", Kind::Button),
        step("let it hang for a day", Kind::Hang),
        step("level the hem from the floor", Kind::LevelHem),
        step("turn up the hem", Kind::Hem),
    ]
}
