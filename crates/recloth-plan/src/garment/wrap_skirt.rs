//! A wrap skirt: two backs with a centre seam, two fronts that lie over each other, darts, and a band in sections.
//!
//! Every panel is as wide at the waist as at the hip; darts and the side seam take the difference (what the panel has
//! leads, not half a waist less half a hip). Each front runs on past the centre by half of the overlap.

use kurbo::Point;
use recloth::band::{SquareEnds, sectioned_band};
use recloth::dart::{DartInPanel, dart_in_panel};
use recloth::doubt::DOUBTS;
use recloth::outline::{Corner, Curve, Dart, Edge, Hand, Mark, Piece};

use super::{Draft, Impossible, Sum, draw};
use crate::brief::{Brief, Make, WrapSkirt};
use crate::order::{Kind, Step};

/// One panel's widths (mm).
struct Panel {
    /// From the centre line or the wrap edge to the side, at the hip.
    hip: f64,
    /// The same at the waist, darts closed.
    waist: f64,
    /// From the wrap edge to the centre line; 0 at the back.
    past_centre: f64,
    darts: u32,
    shaping: DartInPanel,
}

impl Panel {
    fn new(s: &WrapSkirt, past_centre: f64, darts: u32) -> Result<Panel, Impossible> {
        let hip = (s.hip + s.hip_ease) / 4.0 + past_centre;
        let waist = (s.waist + s.waist_ease) / 4.0 + past_centre;
        if waist > hip {
            return Err(Impossible::new(
                "the waist with its ease is larger than the hip with its ease",
                "Look at waist and hip: have they changed places? Where the body is so, give more hip_ease.",
            ));
        }
        let largest = if darts == 0 { 0.0 } else { s.largest_dart };
        let shaping = dart_in_panel(hip, waist, darts.max(1), largest, s.dart_length)?;
        // What a side seam can take over the hip bone before it pulls: common practice, no source.
        if shaping.leftover > s.hip_depth / 2.0 {
            return Err(Impossible::new(
                format!(
                    "its side seam would have to take {:.0} mm from hip to waist",
                    shaping.leftover
                ),
                "Give more darts (back_darts, front_darts) or a larger largest_dart.",
            ));
        }
        Ok(Panel {
            hip,
            waist,
            past_centre,
            darts,
            shaping,
        })
    }

    /// Where each dart opens on the waist edge, from the centre out: the nearer leg's place.
    fn dart_places(&self) -> Vec<f64> {
        let quarter = self.waist - self.past_centre;
        let shares = f64::from(self.darts + 1);
        (0..self.darts)
            .map(|i| {
                let i = f64::from(i);
                self.past_centre + quarter * (i + 1.0) / shares + i * self.shaping.intake_each
            })
            .collect()
    }
}

pub(super) fn draft(brief: &Brief, make: &Make, s: &WrapSkirt) -> Result<Draft, Impossible> {
    if s.length <= s.hip_depth {
        return Err(Impossible::new(
            "it is no longer than from waist to hip",
            "Give a longer length, or look at hip_depth.",
        ));
    }
    if s.dart_length > s.hip_depth {
        return Err(Impossible::new(
            "its darts reach below the hip",
            format!(
                "Give a dart_length of at most {}.",
                brief.tape.text(s.hip_depth)
            ),
        ));
    }
    let name = &make.name;
    let cloth = &brief.cloths[make.cloth].name;
    let (back, front) = (
        Panel::new(s, 0.0, s.back_darts)?,
        Panel::new(s, s.overlap / 2.0, s.front_darts)?,
    );
    let mut pieces = vec![
        draw::cut(
            panel(brief, s, &back, &format!("{name} back"), false)?,
            2,
            Hand::Mirrored,
            cloth,
            None,
        )?,
        draw::cut(
            panel(brief, s, &front, &format!("{name} front"), true)?,
            2,
            Hand::Mirrored,
            cloth,
            None,
        )?,
    ];
    let mut doubts = Vec::new();
    for bit in DOUBTS
        .iter()
        .filter(|bit| (back.shaping.doubts | front.shaping.doubts) & bit.bit != 0)
    {
        doubts.push(format!("{name}: {}", bit.text));
    }

    let lower = [front.waist, 2.0 * back.waist, front.waist];
    let mut upper = [0.0; 3];
    let top = lower.iter().sum::<f64>() - s.band_taper;
    let band = sectioned_band(&lower, s.band_depth, top, SquareEnds::Both, &mut upper)?;
    if band.join_kink_deg > 5.0 {
        doubts.push(format!(
            "{name}: the band's sections meet in a kink of {:.1} degrees: true both edges to a curve across each join.",
            band.join_kink_deg
        ));
    }
    for (section, index, count, hand) in [
        ("front", 0, 4, Hand::Mirrored),
        ("back", 1, 2, Hand::Identical),
    ] {
        let piece = band_section(
            brief,
            s,
            &format!("{name} {section} band"),
            lower[index],
            upper[index],
            index == 0,
        )?;
        pieces.push(draw::cut(
            piece,
            count,
            hand,
            cloth,
            Some("the outer layer, without allowances"),
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
        steps: steps(name),
        doubts,
        ..Draft::default()
    })
}

/// A panel from the centre (x = 0) to the side, hem at y = 0.
fn panel(
    brief: &Brief,
    s: &WrapSkirt,
    p: &Panel,
    name: &str,
    wraps: bool,
) -> Result<Piece, Impossible> {
    let seam = brief.allowances.seam;
    let hip_level = s.length - s.hip_depth;
    let waist_end = p.hip - p.shaping.leftover;
    let intake = p.shaping.intake_each;
    let side_top = Point::new(waist_end, s.length);
    let mut edges = vec![
        Edge::hem(
            "hem",
            Curve::line((0.0, 0.0), (p.hip, 0.0)),
            brief.allowances.hem,
        )
        .corner(Corner::MirroredOnThis),
        Edge::seam("side", Curve::line((p.hip, 0.0), (p.hip, hip_level)), seam)
            .notch("hip", hip_level, 1),
    ];
    edges.push(Edge::seam(
        "side above the hip",
        if p.shaping.leftover > 0.0 {
            Curve::cubic(
                (p.hip, hip_level),
                (p.hip, hip_level + 0.4 * s.hip_depth),
                (
                    waist_end + 0.25 * p.shaping.leftover,
                    s.length - 0.35 * s.hip_depth,
                ),
                side_top,
            )
        } else {
            Curve::line((p.hip, hip_level), side_top)
        },
        seam,
    ));
    // The waist edge from the side to the centre; each dart's cap is trued, so that it lies along the edge when folded:
    // the waist edge mirrored over the leg meets the middle of the dart this much higher.
    let kink = p.shaping.kink_deg.to_radians();
    let cap = intake / 2.0 * libm::tan(kink);
    let mut at = side_top;
    let mut marks = Vec::new();
    for (index, place) in p.dart_places().into_iter().enumerate().rev() {
        if intake <= 0.0 {
            continue;
        }
        let legs = [
            Point::new(place, s.length),
            Point::new(place + intake, s.length),
        ];
        let middle = place + intake / 2.0;
        edges.push(Edge::seam("waist", Curve::line(at, legs[1]), seam));
        edges.push(Edge::seam(
            "dart cap",
            Curve::line(legs[1], (middle, s.length + cap)),
            seam,
        ));
        edges.push(Edge::seam(
            "dart cap",
            Curve::line((middle, s.length + cap), legs[0]),
            seam,
        ));
        marks.push(Mark::Dart(Dart {
            name: format!("dart {}", index + 1),
            point: Point::new(middle, s.length - s.dart_length),
            legs,
        }));
        at = legs[0];
    }
    marks.reverse();
    let corner = Point::new(0.0, s.length);
    edges.push(Edge::seam("waist", Curve::line(at, corner), seam));
    let down = Curve::line(corner, (0.0, 0.0));
    if wraps {
        edges.push(
            Edge::new("wrap edge", down, recloth::outline::Role::Hem, s.facing)
                .corner(Corner::SquaredToThis),
        );
        let centre = Curve::line((p.past_centre, s.length), (p.past_centre, 0.0));
        marks.push(Mark::Line {
            name: String::from("centre front"),
            curve: centre,
        });
    } else {
        edges.push(Edge::seam("centre back", down, seam));
    }
    if let Some(hem) = edges.first_mut() {
        hem.notches.clear();
    }
    let piece = Piece::new(name, edges)?.with_marks(marks)?;
    let x = 0.6 * p.hip;
    Ok(draw::grain(
        piece,
        (x, 0.2 * s.length),
        (x, 0.7 * s.length),
    )?)
}

/// A section of the band: its lower edge along x; a front's outer end (x = 0) is square.
fn band_section(
    brief: &Brief,
    s: &WrapSkirt,
    name: &str,
    lower: f64,
    upper: f64,
    outer_end: bool,
) -> Result<Piece, Impossible> {
    let seam = brief.allowances.seam;
    let taken = lower - upper;
    let (left, right) = if outer_end {
        (0.0, taken)
    } else {
        (taken / 2.0, taken / 2.0)
    };
    let top = s.band_depth;
    let corners = [(0.0, 0.0), (lower, 0.0), (lower - right, top), (left, top)];
    let ends = if outer_end {
        ["side", "outer end"]
    } else {
        ["left side", "right side"]
    };
    let names = ["lower edge", ends[0], "upper edge", ends[1]];
    let edges = (0..4).map(|i| {
        Edge::seam(
            names[i],
            Curve::line(corners[i], corners[(i + 1) % 4]),
            seam,
        )
    });
    let piece = Piece::new(name, edges.collect())?;
    Ok(draw::grain(
        piece,
        (0.25 * lower, top / 2.0),
        (0.75 * lower, top / 2.0),
    )?)
}

fn steps(name: &str) -> Vec<Step> {
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
            .after(format!("{name}: baste the side seams")),
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
        // Its own work: the band is cut after the seams, so the rule for interfacing binds only what follows it.
        Step::new(
            format!("{name}: fuse the band's outer layer"),
            Kind::Fuse,
            format!("{name}, band"),
        )
        .after(format!(
            "{name}: cut the band's sections, the outer layer and its facing"
        ))
        .why("interfacing is cut by the piece it backs"),
        step(
            "join the band's sections, sew it on, close its ends",
            Kind::CloseBand,
        )
        .after(format!("{name}: fuse the band's outer layer"))
        .why("interfacing goes on while the piece lies flat and single"),
        step("work the band's buttonholes", Kind::Buttonhole),
        step("slit the buttonholes", Kind::Slit),
        step("sew the buttons on", Kind::Button),
        step("let it hang for a day", Kind::Hang),
        step("level the hem from the floor", Kind::LevelHem),
        step("turn up the hem", Kind::Hem),
    ]
}
