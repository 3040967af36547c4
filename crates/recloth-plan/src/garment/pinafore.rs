//! A child's pinafore: a bib with straps, a band, a gathered skirt and a gathered ruffle.

use recloth::draft::{Allowances, GatheredStrip};
use recloth::fullness::gathers;
use recloth::outline::{Edge, Hand, Piece};

use super::draw::{self, QUARTER};
use super::{Draft, Impossible, Sum};
use crate::brief::{Brief, Make, Pinafore};
use crate::order::{Kind, Step};

pub(super) fn draft(brief: &Brief, make: &Make, p: &Pinafore) -> Result<Draft, Impossible> {
    let seam = brief.allowances.seam;
    let name = &make.name;
    let cloth = &brief.cloths[make.cloth].name;
    let band = p.waist + p.ease;
    if p.bib_width >= band {
        return Err(Impossible::new(
            "the bib is wider than the waist",
            "Give a smaller bib_width, or look at the child's waist.",
        ));
    }
    if p.skirt_length <= p.ruffle_depth {
        return Err(Impossible::new(
            "the ruffle is as deep as the whole skirt",
            "skirt_length counts the ruffle in: give a longer skirt or a shallower ruffle.",
        ));
    }
    let skirt_all = gathers(band, p.fullness)?.flat;
    let skirt_each = skirt_all / f64::from(p.skirt_panels);
    let ruffle_each = gathers(skirt_all, p.ruffle_fullness)?.flat / f64::from(p.ruffle_pieces);
    // A narrow hem is turned twice: common practice, no source.
    let narrow = 2.0 * QUARTER;
    let piece = |title: &str, piece: Piece, count| {
        draw::cut(
            piece.with_name(format!("{name} {title}")),
            count,
            Hand::Identical,
            cloth,
            None,
        )
    };
    let seams = |bottom, right, top, left| -> [draw::Side<'static>; 4] {
        [
            (bottom, Edge::seam, seam),
            (right, Edge::seam, seam),
            (top, Edge::seam, seam),
            (left, Edge::seam, seam),
        ]
    };
    let mut skirt_sides = seams("ruffle edge", "side", "gathered edge", "side");
    if p.skirt_panels == 1 {
        skirt_sides[1] = ("opening", Edge::opening, seam);
        skirt_sides[3] = ("opening", Edge::opening, seam);
    }
    let mut pieces = vec![
        piece(
            "bib",
            draw::rectangle(
                "",
                (p.bib_width, p.bib_height),
                seams("band edge", "side", "top", "side"),
                false,
            )?,
            2,
        )?,
        piece(
            "skirt",
            draw::rectangle(
                "",
                (skirt_each, p.skirt_length - p.ruffle_depth),
                skirt_sides,
                false,
            )?,
            p.skirt_panels,
        )?,
        piece(
            "band",
            draw::rectangle(
                "",
                (band + p.band_overlap, p.band_depth),
                seams("skirt edge", "end", "bib edge", "end"),
                true,
            )?,
            2,
        )?,
        piece(
            "strap",
            // Folded lengthwise: twice the finished width between its seams.
            draw::rectangle(
                "",
                (p.strap_length, 2.0 * p.strap_width),
                seams("long edge", "end", "long edge", "end"),
                true,
            )?,
            2,
        )?,
    ];
    let ruffle = GatheredStrip {
        finished: skirt_all,
        ratio: p.ruffle_fullness,
        depth: p.ruffle_depth,
        strips: p.ruffle_pieces,
        allowances: Allowances { seam, hem: narrow },
    };
    for (index, strip) in ruffle.draft()?.pieces.into_iter().enumerate() {
        let (width, y) = (strip.bounds().width(), 0.25 * p.ruffle_depth);
        let strip = draw::grain(strip, (0.1 * width, y), (0.4 * width, y))?;
        pieces.push(piece(&format!("ruffle {}", index + 1), strip, 1)?);
    }
    let equal = |count: u32, what: &str, each: f64| {
        (0..count)
            .map(|i| (format!("{what} {}", i + 1), each))
            .collect::<Vec<_>>()
    };
    Ok(Draft {
        pieces,
        sums: vec![
            Sum {
                what: format!("{name}: skirt before gathering, seam to seam"),
                terms: equal(p.skirt_panels, "panel", skirt_each),
            },
            Sum {
                what: format!("{name}: quarter marks of the band, without its overlap"),
                terms: equal(4, "quarter", band / 4.0),
            },
            Sum {
                what: format!("{name}: ruffle before gathering, seam to seam"),
                terms: equal(p.ruffle_pieces, "strip", ruffle_each),
            },
            Sum {
                what: format!("{name}: band edge to hem"),
                terms: vec![
                    (String::from("skirt"), p.skirt_length - p.ruffle_depth),
                    (String::from("ruffle"), p.ruffle_depth),
                ],
            },
        ],
        steps: steps(name, &draw::buttonholes(&brief.tape, &p.buttons)?),
        doubts: Vec::new(),
        cautions: vec![
            "A child's garment: no cord, ribbon or elastic at the neck; straps cross at the back and button to the band.",
            "Buttons can be swallowed: sew each on so that it cannot be pulled off, try it again after washing, and use \
             none for a child under three. The safety standard of your country goes before this.",
        ],
        ..Draft::default()
    })
}

fn steps(name: &str, holes: &str) -> Vec<Step> {
    let step = |text: &str, kind| Step::new(format!("{name}: {text}"), kind, name);
    vec![
        step("make the straps: fold, sew, turn, press", Kind::Loops),
        step("sew the two bibs together, top and sides, the straps caught between", Kind::Facing),
        step("clip the bib's corners", Kind::Clip),
        step("turn the bib", Kind::Turn),
        step("press the bib", Kind::Press),
        step("topstitch the bib", Kind::Topstitch),
        step("join the ruffle strips and turn their narrow hem", Kind::Join),
        step("join the skirt panels, leaving the back opening", Kind::Join),
        step("gather the ruffle between quarter marks and sew it to the skirt", Kind::Join)
            .after(format!("{name}: join the ruffle strips and turn their narrow hem"))
            .after(format!("{name}: join the skirt panels, leaving the back opening"))
            .why("gathers are spread over whole joined edges"),
        step("gather the skirt between quarter marks; sew it and the bib between the two bands", Kind::CloseBand)
            .after(format!("{name}: gather the ruffle between quarter marks and sew it to the skirt"))
            .after(format!("{name}: topstitch the bib"))
            .why("the band closes over both"),
        step("try on: mark where the straps cross and button", Kind::TryOn)
            .after(format!("{name}: gather the skirt between quarter marks; sew it and the bib between the two bands"))
            .why("straps are measured from the finished band"),
        step(holes, Kind::Buttonhole)
            .after(format!("{name}: try on: mark where the straps cross and button"))
            .why("the child decides where they sit"),
        step("slit the buttonholes", Kind::Slit),
        step("sew the buttons on", Kind::Button),
    ]
}
