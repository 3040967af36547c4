//! The plan: everything worked out from a brief, before anything is written.

use core::ops::ControlFlow;

use kurbo::Point;
use recloth::outline::{CutLine, Piece};
use recloth_lay::{Progress, StripOptions};
use serde::Serialize;

use crate::baths::{BATH_CAUTIONS, BathPlan, bath_plan};
use crate::brief::{Brief, BriefError};
use crate::cloth::{Cloth, cloth};
use crate::components::Bears;
use crate::garment::{self, LINING, Sum};
use crate::giving::{Given, check_gives};
use crate::laying::{Laid, lay};
use crate::measure::Tape;
use crate::order::{Order, order_check};
use crate::steps;

/// How near arcs and flattened cut lines follow the true ones (mm): a tenth of a chalk line.
pub(crate) const TOLERANCE: f64 = 0.05;

/// A piece of a garment, ready to cut.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[non_exhaustive]
pub struct CutPiece {
    /// Its number on the worksheet and in the lays, from 1.
    pub number: usize,
    /// Name of its garment.
    pub garment: String,
    /// Seam lines, marks, grain and cutting instruction.
    pub piece: Piece,
    /// Its cut line.
    pub cut_line: CutLine,
    /// The cut line as corners, within 0.05 mm (mm).
    pub outline: Vec<Point>,
    /// What it is on the garment, where a flaw may lie under such: "lining"; empty for outer cloth.
    pub role: String,
    /// Laid out with the others, but cut only when the order of work says so.
    pub cut_later: bool,
}

/// Everything worked out from a brief.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Plan {
    /// Title of the brief.
    pub title: String,
    /// Its note.
    pub note: String,
    /// The pieces.
    pub pieces: Vec<CutPiece>,
    /// The panels of cloth.
    pub panels: Vec<Cloth>,
    /// The lays, one for each cloth that pieces are cut from.
    pub lays: Vec<Laid>,
    /// The baths.
    pub baths: Vec<BathPlan>,
    /// The order of work.
    pub order: Order,
    /// What may be a slip or needs a second look.
    pub doubts: Vec<String>,
    /// What can hurt.
    pub cautions: Vec<String>,
    pub(crate) tape: Tape,
    pub(crate) sums: Vec<Sum>,
    /// Where each garment stands in the brief: name, line.
    pub(crate) lines: Vec<(String, BriefError)>,
}

/// Cautions of any make.
const CAUTIONS: &[&str] = &[
    "Blades: cut away from the hand, close shears and rotary cutters when they are laid down, stop a seam ripper with a \
     pin; count pins and needles back before a child wears the garment.",
    "Irons: steam burns; press interfacing and unknown fibres through a cloth, coolest first.",
];

/// Works out a plan from the text of a brief; `name` is the brief's name in messages.
///
/// Pure: no file is read or written, and the same text gives the same plan on every machine.
///
/// # Errors
/// [`BriefError`] with the line, what is wrong and what would be right. A piece that fits nowhere is no error: the plan
/// says so ([`Plan::too_large`], [`Plan::unplaced`]).
///
/// # Examples
/// ```
/// let error = recloth_plan::plan("title = \"Coat\"\nprnt_in = \"centimetres\"", "coat.toml").unwrap_err();
/// assert_eq!(error.to_string(), "coat.toml:2: the brief has an unknown key \"prnt_in\"\n  Is \"print_in\" meant?");
/// ```
pub fn plan(text: &str, name: &str) -> Result<Plan, BriefError> {
    plan_with(text, name, &SEARCH, &mut |_, _| ControlFlow::Continue(()))
}

/// How long a plan looks for lays: its budget is that of each cloth that is bought by the length, a few seconds; panels, and
/// what must give there, have thirty times as much.
pub const SEARCH: StripOptions = StripOptions {
    spacing: 0.0,
    seed: 1,
    budget: if cfg!(fuzzing) { 100_000 } else { 10_000_000 },
    seconds: None,
    threads: 0,
};

/// As [`plan()`]; lays are looked for so, and `tell` hears of each: the cloth's name, and how far the search is. At
/// [`ControlFlow::Break`] the best so far is taken. Of the budget see [`SEARCH`].
///
/// # Errors
/// As [`plan()`].
pub fn plan_with(
    text: &str,
    name: &str,
    options: &StripOptions,
    tell: &mut dyn FnMut(&str, Progress) -> ControlFlow<()>,
) -> Result<Plan, BriefError> {
    let brief = Brief::read(text, name)?;
    let tape = brief.tape;
    let mut doubts = Vec::new();
    let mut cautions: Vec<String> = Vec::new();

    let panels = brief
        .panels
        .iter()
        .map(|panel| cloth(&brief, &tape, panel))
        .collect::<Result<Vec<_>, _>>()?;
    doubts.extend(panels.iter().flat_map(|panel| panel.doubts.iter().cloned()));

    let mut pieces: Vec<CutPiece> = Vec::new();
    let (mut sums, mut make_steps, mut lines) = (Vec::new(), Vec::new(), Vec::new());
    for make in &brief.make {
        let mut draft = garment::draft(&brief, make)?;
        draft.add_steps(&mut make_steps);
        lines.push((make.name.clone(), brief.error(&make.span, "", "")));
        for piece in draft.pieces {
            let cut_line = piece.cut_line(TOLERANCE).map_err(|error| {
                brief.error(
                    &make.span,
                    format!(
                        "the {} cannot be cut: {}",
                        make.name,
                        piece.sentence(&error)
                    ),
                    "Give smaller allowances, or larger measures.",
                )
            })?;
            pieces.push(CutPiece {
                number: pieces.len() + 1,
                garment: make.name.clone(),
                outline: cut_line.flatten(TOLERANCE),
                role: match draft.linings.iter().any(|name| name == piece.name()) {
                    true => LINING.to_owned(),
                    false => String::new(),
                },
                cut_later: draft.later.iter().any(|name| name == piece.name()),
                cut_line,
                piece,
            });
        }
        sums.extend(draft.sums);
        doubts.extend(draft.doubts);
        cautions.extend(draft.cautions.into_iter().map(str::to_owned));
    }
    doubts.extend(garment::body_doubts(&brief));

    check_gives(&brief, &pieces)?;
    let lays = lay(&brief, &panels, &pieces, options, tell)?;

    for laid in &lays {
        let why = laid.left_unknown.as_ref();
        doubts.extend(
            why.map(|why| format!("What is left of the {} is not known: {why}", laid.cloth)),
        );
    }

    let mut baths = Vec::new();
    for bath in &brief.baths {
        let planned = bath_plan(&brief, bath)
            .map_err(|error| BriefError::new(&brief.file, None, format!("a bath: {error}"), ""))?;
        for part in planned
            .components
            .iter()
            .filter(|part| part.bears != Bears::Yes)
        {
            let doubt = format!(
                "Baths: {} ({}): {}.",
                part.part,
                part.fibre,
                part.bears.words()
            );
            doubts.push(doubt);
        }
        if planned.lots > 1 {
            let doubt = format!(
                "The pot takes the {} for the baths in {} lots: shades will differ from lot to lot, so keep what is sewn \
                 together in one lot, and never part a panel.",
                planned.cloth, planned.lots
            );
            doubts.push(doubt);
        }
        doubts.extend(planned.doubts.iter().cloned());
        cautions.extend(planned.cautions.iter().cloned());
        baths.push(planned);
    }
    if !baths.is_empty() {
        cautions.extend(BATH_CAUTIONS.iter().map(|text| (*text).to_owned()));
    }
    cautions.extend(CAUTIONS.iter().map(|text| (*text).to_owned()));
    for said in [&mut doubts, &mut cautions] {
        // Two garments of one kind say the same: once is enough.
        let mut once: Vec<String> = Vec::new();
        said.retain(|text| {
            let new = !once.contains(text);
            once.push(text.clone());
            new
        });
    }

    let steps = steps::steps(&brief, make_steps);
    let order = order_check(&steps).map_err(|error| {
        let wrong = format!("the steps cannot be put in order: {error}");
        let right = "Change the kind, the \"of\" or the \"after\" of one of your steps; names are those of the plan.";
        match &brief.steps_span {
            Some(span) => brief.error(span, wrong, right),
            None => BriefError::new(&brief.file, None, wrong, right),
        }
    })?;
    Ok(Plan {
        title: brief.title.clone(),
        note: brief.note.clone(),
        pieces,
        panels,
        lays,
        baths,
        order,
        doubts,
        cautions,
        tape,
        sums,
        lines,
    })
}

impl Plan {
    /// How many pieces are cut in all.
    pub fn count(&self) -> u32 {
        self.pieces
            .iter()
            .map(|piece| piece.piece.cutting().count)
            .sum()
    }

    /// Numbers of the pieces that have no place in the lay found, with how many of each.
    pub fn unplaced(&self) -> Vec<(usize, u32)> {
        let mut unplaced: Vec<(usize, u32)> = Vec::new();
        for laid in &self.lays {
            for missing in &laid.fit.lay.unplaced {
                let number = laid.pieces[missing.part];
                match unplaced.iter_mut().find(|(known, _)| *known == number) {
                    Some((_, count)) => *count += missing.count,
                    None => unplaced.push((number, missing.count)),
                }
            }
        }
        unplaced.sort_unstable();
        unplaced
    }

    /// Pieces that are larger than every panel of their cloth, each with the error that says so; not those of a cloth of which
    /// something may give so that all fit.
    pub fn too_large(&self) -> Vec<BriefError> {
        let mut errors = Vec::new();
        for piece in &self.pieces {
            let of = |laid: &&Laid| laid.pieces.contains(&piece.number);
            let given = (self.lays.iter().find(of)).and_then(|laid| laid.given.as_ref());
            if given.and_then(Given::changed).is_some() {
                continue;
            }
            let Some((wrong, right)) = self.proof(piece.number) else {
                continue;
            };
            let place = self.lines.iter().find(|(name, _)| *name == piece.garment);
            errors.push(match place {
                Some((_, at)) => BriefError::new(at.file(), at.line(), wrong, right),
                None => BriefError::new("", None, wrong, right),
            });
        }
        errors
    }

    /// The piece of this number.
    pub(crate) fn piece(&self, number: usize) -> &CutPiece {
        &self.pieces[number - 1]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const GOOD: &str = include_str!("example.toml");

    /// Everything but the search for a lay, which takes its time.
    fn drafted(text: &str) -> Result<usize, BriefError> {
        let brief = Brief::read(text, "brief.toml")?;
        for panel in &brief.panels {
            cloth(&brief, &brief.tape, panel)?;
        }
        let mut cut = 0;
        for make in &brief.make {
            for piece in garment::draft(&brief, make)?.pieces {
                cut += usize::from(piece.cut_line(TOLERANCE).is_ok());
            }
        }
        Ok(cut)
    }

    /// Seeded numbers: a linear congruence, Knuth's multiplier.
    struct Chance(u64);

    impl Chance {
        fn below(&mut self, end: usize) -> usize {
            self.0 = self
                .0
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            ((self.0 >> 33) as usize) % end
        }
    }

    #[test]
    fn an_outline_may_have_more_corners_than_there_are_letters() {
        let outline = |count: u32| {
            let corner = |i| {
                let (sin, cos) =
                    libm::sincos(std::f64::consts::TAU * f64::from(i) / f64::from(count));
                format!("[\"{:.1} mm\", \"{:.1} mm\"]", 330.0 * cos, 330.0 * sin)
            };
            let corners: Vec<String> = (0..count).map(corner).collect();
            let measured = "across = \"64 cm\"\nalong = \"68 cm\"";
            assert!(GOOD.contains(measured));
            let instead = format!(
                "outline = [{}]\nloss = \"5 mm\"\nlosses = [\"YZ 9 mm\"]\ngrain = \"AZ\"",
                corners.join(", ")
            );
            GOOD.replace(measured, &instead)
        };
        for count in [26, 27, 40, 500] {
            assert_eq!(drafted(&outline(count)), Ok(8), "{count}");
        }
        let error = drafted(&outline(501)).unwrap_err();
        assert!(error.right().contains("3 to 500"), "{error}");
    }

    #[test]
    fn every_key_of_a_whole_brief_is_known() {
        // Reading asks for every key, and asking for one that `KEYS` lacks is refused.
        let demo = include_str!("../../../book/demo/house-coat.toml");
        assert!(Brief::read(demo, "house-coat.toml").is_ok());
    }

    #[test]
    fn no_spoilt_brief_panics_and_every_error_has_its_sentences() {
        assert_eq!(drafted(GOOD), Ok(8));
        let odd = [
            "\"0 mm\"",
            "\"-3 cm\"",
            "\"1e9 m\"",
            "\"6 m\"",
            "\"1 mm\"",
            "\"\"",
            "\"é½\"",
            "0",
            "-1",
            "nan",
            "inf",
            "1e300",
            "99999999999999999999",
            "[]",
            "[[]]",
            "{}",
            "[\"1 cm\", 2]",
            "true",
            "1979-05-27",
            "\"both sides\"",
            "\"AA 1 cm\"",
            "[\"AB 1 cm\", \"AC 1 cm\", \"BC 2 cm\"]",
            "\"ABCDEFGHIJKLMNOPQRSTUVWXYZ\"",
            "\"",
        ];
        let lines: Vec<&str> = GOOD.lines().collect();
        let mut chance = Chance(1);
        let (mut refused, mut kept) = (0, 0);
        for _ in 0..3000 {
            let mut spoilt: Vec<String> = lines.iter().map(|line| (*line).to_owned()).collect();
            for _ in 0..=chance.below(2) {
                let at = chance.below(spoilt.len());
                match (chance.below(4), spoilt[at].split_once('=')) {
                    (0, _) => spoilt[at].clear(),
                    (1, _) => {
                        let other = chance.below(spoilt.len());
                        spoilt.swap(at, other);
                    }
                    (_, Some((key, _))) => {
                        spoilt[at] = format!("{key}= {}", odd[chance.below(odd.len())])
                    }
                    (_, None) => spoilt[at].push(']'),
                }
            }
            match drafted(&spoilt.join("\n")) {
                Ok(_) => kept += 1,
                Err(error) => {
                    refused += 1;
                    assert!(
                        !error.wrong().is_empty() && !error.right().is_empty(),
                        "{error}"
                    );
                    assert!(
                        error
                            .line()
                            .is_none_or(|line| (1..=lines.len() + 1).contains(&line)),
                        "{error}"
                    );
                }
            }
        }
        assert!(
            refused > 1000 && kept > 100,
            "{refused} refused, {kept} kept"
        );
    }
}
