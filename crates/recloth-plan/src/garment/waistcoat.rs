//! A lined waistcoat with a buttoned front: fronts and backs with a centre back seam, lined edge to edge, bagged out.
//!
//! The block is a plain one, drawn straight from the body's measures: each back and each front has a quarter of the
//! bust with its ease; the shoulder falls by an eighth of an inch to the half inch of its length; the armhole passes
//! at half the width across the back. Proportions: common practice, no source; a first fitting decides.

use kurbo::Point;
use recloth::closure::{buttonhole, even_spacing};
use recloth::outline::{Curve, Edge, Hand, LineKind, Mark, Piece};

use super::draw::{self, QUARTER};
use super::{Draft, Impossible, Sum};
use crate::brief::{Brief, Make, Waistcoat};
use crate::order::{Kind, Step};

/// How far the neck rises from the nape to the shoulder at the neck (mm); common practice, no source.
const NECK_RISE: f64 = 20.0;
/// How far the shoulder falls to its length; common practice, no source.
const SHOULDER_FALL: f64 = 0.25;

/// The frame common to front and back: x from the centre line, y from the hem.
struct Block {
    width: f64,
    nape: f64,
    underarm: Point,
    neck_point: Point,
    shoulder_tip: Point,
    across: f64,
}

impl Block {
    fn new(w: &Waistcoat) -> Result<Block, Impossible> {
        let width = (w.bust + w.ease) / 4.0;
        let nape = w.back_length + w.below_waist;
        let neck_width = w.neck / 6.0 + QUARTER;
        let fall = w.shoulder * SHOULDER_FALL;
        let neck_point = Point::new(neck_width, nape + NECK_RISE);
        let shoulder_tip = Point::new(
            neck_width + (w.shoulder * w.shoulder - fall * fall).sqrt(),
            neck_point.y - fall,
        );
        let underarm = Point::new(width, nape - w.armhole_depth);
        let across = w.across_back / 2.0;
        if across >= width {
            return Err(Impossible::new(
                "half of across_back is not less than a quarter of the bust with its ease",
                "Measure across_back between the armholes, or give more ease.",
            ));
        }
        if shoulder_tip.x >= width {
            return Err(Impossible::new(
                "the shoulder reaches beyond the side seam",
                "Measure the shoulder from the neck to the bone only, or give more ease.",
            ));
        }
        if underarm.y < 30.0 {
            return Err(Impossible::new(
                "the armholes reach down to the hem",
                "Look at armhole_depth, back_length and below_waist.",
            ));
        }
        Ok(Block {
            width,
            nape,
            underarm,
            neck_point,
            shoulder_tip,
            across,
        })
    }

    /// From the underarm up to the shoulder: level at the one, square to the other.
    fn armhole(&self) -> Curve {
        let rise = self.shoulder_tip.y - self.underarm.y;
        Curve::cubic(
            self.underarm,
            (
                self.across - 0.1 * (self.width - self.across),
                self.underarm.y,
            ),
            (self.across, self.shoulder_tip.y - 0.55 * rise),
            self.shoulder_tip,
        )
    }
}

/// What the fronts and backs have in common: a grain line, two of them mirrored, each cloth.
fn finish(
    piece: Piece,
    from: (f64, f64),
    to: (f64, f64),
    cloth: &str,
    strip: Option<&str>,
) -> Result<Piece, recloth::Error> {
    draw::cut(
        draw::grain(piece, from, to)?,
        2,
        Hand::Mirrored,
        cloth,
        strip,
    )
}

pub(super) fn draft(brief: &Brief, make: &Make, w: &Waistcoat) -> Result<Draft, Impossible> {
    let block = Block::new(w)?;
    let seam = brief.allowances.seam;
    let name = &make.name;
    let shell = &brief.cloths[make.cloth].name;
    let lining = &brief.cloths[w.lining].name;
    // The stand beyond the centre is as wide as the button: common practice, no source.
    let stand = w.buttons.diameter;
    let neck_bottom = block.neck_point.y - w.neck_depth;
    let hole = buttonhole(w.buttons.diameter, w.buttons.thickness, 0.0)?;
    let last = 2.0 * w.buttons.diameter;
    if neck_bottom - last < w.buttons.diameter * f64::from(w.buttons.count) {
        return Err(Impossible::new(
            "the front below the neck has no room for its buttons",
            "Give a smaller neck_depth, or fewer or smaller buttons.",
        ));
    }

    let back_edges = vec![
        Edge::seam("hem", Curve::line((0.0, 0.0), (block.width, 0.0)), seam),
        Edge::seam(
            "side",
            Curve::line((block.width, 0.0), block.underarm),
            seam,
        )
        .notch("side", block.underarm.y / 2.0, 1),
        Edge::seam("armhole", block.armhole(), seam),
        Edge::seam(
            "shoulder",
            Curve::line(block.shoulder_tip, block.neck_point),
            seam,
        ),
        Edge::seam(
            "neck",
            Curve::cubic(
                block.neck_point,
                (block.neck_point.x, block.nape + 0.35 * NECK_RISE),
                (0.55 * block.neck_point.x, block.nape),
                (0.0, block.nape),
            ),
            seam,
        ),
        Edge::seam(
            "centre back",
            Curve::line((0.0, block.nape), (0.0, 0.0)),
            seam,
        )
        .notch("waist", w.back_length, 1),
    ];
    let front_edges = vec![
        Edge::seam("hem", Curve::line((-stand, 0.0), (block.width, 0.0)), seam),
        Edge::seam(
            "side",
            Curve::line((block.width, 0.0), block.underarm),
            seam,
        )
        .notch("side", block.underarm.y / 2.0, 1),
        Edge::seam("armhole", block.armhole(), seam),
        Edge::seam(
            "shoulder",
            Curve::line(block.shoulder_tip, block.neck_point),
            seam,
        ),
        Edge::seam(
            "neck",
            Curve::line(block.neck_point, (-stand, neck_bottom)),
            seam,
        ),
        Edge::seam(
            "front edge",
            Curve::line((-stand, neck_bottom), (-stand, 0.0)),
            seam,
        ),
    ];
    let mut marks = vec![Mark::Line {
        kind: LineKind::Plain,
        name: String::from("centre front"),
        curve: Curve::line((0.0, 0.0), (0.0, neck_bottom)),
    }];
    // The first button sits at the end of the neck, the last two buttons' widths above the hem.
    let first = neck_bottom - 0.5 * w.buttons.diameter;
    let mut places = vec![first];
    if w.buttons.count > 1 {
        let pitch = even_spacing(last, first, w.buttons.count)?;
        places = (0..w.buttons.count)
            .map(|i| first - f64::from(i) * pitch)
            .collect();
    }
    for (index, &y) in places.iter().enumerate() {
        // A cross hole begins a little beyond the centre, where the shank will sit: 3 mm, common practice, no source.
        marks.push(Mark::Buttonhole {
            name: format!("{}", index + 1),
            ends: [Point::new(-3.0, y), Point::new(hole - 3.0, y)],
        });
    }
    let height = block.nape;
    let grain = (
        (0.6 * block.width, 0.15 * height),
        (0.6 * block.width, 0.55 * height),
    );
    let back = |cloth: &str, layer: &str| {
        finish(
            Piece::new(format!("{name} back{layer}"), back_edges.clone())?,
            grain.0,
            grain.1,
            cloth,
            None,
        )
    };
    let front = |cloth: &str, layer: &str, marks: Vec<Mark>, strip: Option<&str>| {
        let piece =
            Piece::new(format!("{name} front{layer}"), front_edges.clone())?.with_marks(marks)?;
        finish(piece, grain.0, grain.1, cloth, strip)
    };
    let pieces = vec![
        front(
            shell,
            "",
            marks,
            Some("interfacing in a strip down the front edge, twice the stand wide"),
        )?,
        back(shell, "")?,
        front(lining, " lining", Vec::new(), None)?,
        back(lining, " lining")?,
    ];
    let gaps = places.windows(2).enumerate();
    let mut down_the_front = vec![(String::from("neck to the first"), neck_bottom - first)];
    down_the_front
        .extend(gaps.map(|(i, pair)| (format!("to button {}", i + 2), pair[0] - pair[1])));
    down_the_front.push((
        String::from("to the hem"),
        places.last().copied().unwrap_or(first),
    ));
    Ok(Draft {
        linings: vec![
            format!("{name} front lining"),
            format!("{name} back lining"),
        ],
        pieces,
        sums: vec![
            Sum {
                what: format!("{name}: buttons down the front edge"),
                terms: down_the_front,
            },
            Sum {
                what: format!("{name}: round the bust, seam to seam"),
                terms: [
                    "left front to its centre",
                    "left back",
                    "right back",
                    "right front to its centre",
                ]
                .map(|part| (part.to_owned(), block.width))
                .to_vec(),
            },
        ],
        steps: steps(name, &draw::buttonholes(&brief.tape, &w.buttons)?),
        doubts: vec![format!(
            "{name}: the block is a plain one, drawn from measures by common proportions. Sew it up in waste cloth \
             first if you can."
        )],
        ..Draft::default()
    })
}

fn steps(name: &str, holes: &str) -> Vec<Step> {
    let step = |text: &str, kind| Step::new(format!("{name}: {text}"), kind, name);
    vec![
        step("cut the lining", Kind::CutLining),
        step("staystitch neck and armholes", Kind::Staystitch),
        step("fuse the strips down the fronts", Kind::Fuse),
        step("sew the centre back seams, shell and lining", Kind::Join),
        step("sew the shoulders, shell and lining", Kind::Shoulders),
        step("baste the sides and try on; then take the basting out", Kind::TryOn)
            .after(format!("{name}: sew the shoulders, shell and lining"))
            .why("it hangs from its shoulders"),
        step("trim neck and armholes where the try-on asks, shell and lining alike", Kind::CutOpening),
        step("sew shell to lining, right sides together: fronts, neck, armholes, hems but for the sides", Kind::BagOut)
            .after(format!("{name}: trim neck and armholes where the try-on asks, shell and lining alike"))
            .why("shell and lining are sewn along the final edges"),
        step("clip the curves, trim the corners", Kind::Clip),
        step("turn the fronts through the shoulders and out at the back's sides", Kind::Turn),
        step("press the edges, lining rolled a little inwards", Kind::Press),
        step("sew the side seams: shell by machine, lining closed by hand", Kind::Sides),
        step("topstitch the edges", Kind::Topstitch),
        step(holes, Kind::Buttonhole),
        step("slit the buttonholes", Kind::Slit),
        step("sew the buttons on, left front", Kind::Button),
    ]
}
