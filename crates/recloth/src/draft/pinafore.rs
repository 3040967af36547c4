//! A child's pinafore.

use alloc::format;
use alloc::vec;
use alloc::vec::Vec;

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, Sewn, row, row_length};
use super::run_past::{Past, run_past};
use super::yoke::Yoke;
use super::{Allowances, Centre, Draft, GatheredStrip, StraightBand};
use crate::Error;
use crate::band::BandMake;
use crate::body::{girth_doubts, neck_bust_doubts};
use crate::doubt::{BUTTONS_HELD, CHILD_NECK};
use crate::neck::head_opening;
use crate::outline::{Cutting, Edge, Hand, Piece, Role, Walked, Way};

/// A child's pinafore: a yoke that buttons at the back, a band where one is wanted, and a gathered skirt.
///
/// The yoke is drawn straight from the measures, front and back alike but for the neck; the front neck is as deep as the neck
/// edge asks. It is cut twice, for the outside and the inside. The head must pass the neck with the back open.
///
/// Pieces `yoke front`, `yoke back`, `band`, and `skirt` or `skirt N`. The skirt's ends are its centre back seam, with a
/// notch `opening` where that is left open.
///
/// # Source
/// [`head_opening`], [`gathers`](crate::fullness::gathers). The proportions of the yoke are common practice, no source; a first
/// fitting decides. Cautions on children's clothes are the usual ones: safety standards, where you are, go before them.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Pinafore {
    /// Girth of the chest (mm), 200 to 2000.
    pub chest: f64,
    /// What the yoke is wider all round (mm), 0 to 500.
    pub ease: f64,
    /// Finished way round the neck edge (mm), 100 to 1000.
    pub neck: f64,
    /// Girth of the head (mm), 100 to 1000.
    pub head: f64,
    /// Length of the shoulder, neck edge to armhole edge (mm), 10 to 300.
    pub shoulder: f64,
    /// Nape to the level of the underarm (mm), 20 to 500.
    pub armhole_depth: f64,
    /// Nape to the lower edge of the yoke (mm), at least 10 below armhole and neck, to 1000.
    pub yoke_depth: f64,
    /// Finished depth of a band between yoke and skirt (mm), 0 to 300; 0 is none, else at least 5.
    pub band_depth: f64,
    /// Skirt, from yoke or band to the hem (mm), 10 to 2000.
    pub skirt_length: f64,
    /// Skirt before gathering over the edge it goes on, 1 to 10.
    pub fullness: f64,
    /// Number of widths the skirt is joined from, 1 to 20.
    pub panels: u32,
    /// How far the back opens from the neck (mm), 0 to 2000, at least yoke and band, at most all but 10 of the length.
    pub opening: f64,
    /// Button stand, centre back to the opening edge (mm), 0 to 100.
    pub stand: f64,
    /// Allowances.
    pub allowances: Allowances,
}

impl Pinafore {
    /// Drafts the pinafore.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure; `opening` where the head would not pass.
    ///
    /// # Examples
    /// ```
    /// use recloth::draft::{Allowances, Pinafore};
    /// let pinafore = Pinafore {
    ///     chest: 580.0, ease: 80.0, neck: 360.0, head: 520.0, shoulder: 70.0, armhole_depth: 140.0, yoke_depth: 170.0,
    ///     band_depth: 0.0, skirt_length: 330.0, fullness: 1.8, panels: 2, opening: 170.0, stand: 15.0,
    ///     allowances: Allowances { seam: 10.0, hem: 30.0 },
    /// };
    /// let draft = pinafore.draft()?;
    /// assert_eq!(draft.pieces.len(), 4);
    /// // A head of 700 would need (700 + 20 - 360) / 2 = 180.
    /// let tight = Pinafore { yoke_depth: 160.0, head: 700.0, ..pinafore };
    /// assert_eq!(tight.draft().unwrap_err().to_string(), "opening = 170 leaves no solution: it must be between 180 and 480");
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }

    /// Way round the yoke's lower edge.
    fn round(&self) -> f64 {
        self.chest + self.ease
    }
}

/// What the neck must be wider than the head (mm): common practice, no source.
const HEAD_EASE: f64 = 20.0;
/// How much of the skirt's back seam stays closed at least (mm).
const LEAST_CLOSED: f64 = 10.0;

impl Measured for Pinafore {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = vec![
            ("chest", Dial::Number(&mut self.chest, 200.0, 2e3)),
            ("ease", Dial::Number(&mut self.ease, 0.0, 500.0)),
            ("neck", Dial::Number(&mut self.neck, 100.0, 1e3)),
            ("head", Dial::Number(&mut self.head, 100.0, 1e3)),
            ("shoulder", Dial::Number(&mut self.shoulder, 10.0, 300.0)),
            (
                "armhole_depth",
                Dial::Number(&mut self.armhole_depth, 20.0, 500.0),
            ),
            ("yoke_depth", Dial::Number(&mut self.yoke_depth, 30.0, 1e3)),
            ("band_depth", Dial::Number(&mut self.band_depth, 0.0, 300.0)),
            (
                "skirt_length",
                Dial::Number(&mut self.skirt_length, 10.0, 2e3),
            ),
            ("fullness", Dial::Number(&mut self.fullness, 1.0, 10.0)),
            ("panels", Dial::Count(&mut self.panels, 1, 20)),
            ("opening", Dial::Number(&mut self.opening, 0.0, 2e3)),
            ("stand", Dial::Number(&mut self.stand, 0.0, 100.0)),
        ];
        dials.extend(self.allowances.dials());
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let (round, seam) = (self.round(), self.allowances.seam);
        let yoke = Yoke {
            width: round / 4.0,
            neck: self.neck,
            shoulder: self.shoulder,
            armhole_depth: self.armhole_depth,
            depth: self.yoke_depth,
            seam,
        };
        yoke.check()?;
        let band_depth = self.band_depth;
        if band_depth > 0.0 && band_depth < 5.0 {
            return Err(Error::no_solution("band_depth", band_depth, 5.0, f64::NAN));
        }
        let above = self.yoke_depth + band_depth;
        let longest = above + self.skirt_length - LEAST_CLOSED;
        let head = head_opening(self.head, self.neck, self.opening, HEAD_EASE)?;
        let least = above.max(head.least_slit);
        if self.opening < least || self.opening > longest {
            return Err(Error::no_solution("opening", self.opening, least, longest));
        }

        // Cut for the outside and the inside.
        let twice = |piece: Piece, count, hand| {
            piece.with_cutting(Cutting {
                count,
                hand,
                ..Cutting::default()
            })
        };
        let front = yoke.half("yoke front", yoke.front_neck_depth(), Centre::Fold)?;
        let front = twice(front, 2, Hand::Identical)?;
        let back_half = yoke.half("yoke back", 0.0, Centre::Seam)?;
        let past = Past {
            edge: "centre",
            by: self.stand,
            outer: "opening edge",
            role: Role::Seam,
            allowance: seam,
        };
        let back = twice(run_past(&back_half, &past)?, 4, Hand::Mirrored)?;
        let strip = GatheredStrip {
            finished: round,
            ratio: self.fullness,
            depth: self.skirt_length,
            strips: self.panels,
            allowances: self.allowances,
        };
        let skirt = strip.attempt()?;
        let panels = self.skirt(&skirt.pieces)?;

        let mut pieces = vec![front.clone(), back.clone()];
        let band = if band_depth > 0.0 {
            let band = StraightBand {
                waist: round,
                overlap: self.stand,
                depth: band_depth,
                turn: 0.0,
                make: BandMake::Faced,
                allowance: seam,
            };
            let mut band = band.attempt()?.pieces;
            band.pop().map(|band| band.with_name("band"))
        } else {
            None
        };
        pieces.extend(band.clone());
        pieces.extend(panels.iter().cloned());
        let doubts = skirt.doubts
            | head.doubts
            | girth_doubts(self.chest)?
            | neck_bust_doubts(self.neck, self.chest)?;
        let mut draft = Draft::new(pieces, doubts);
        draft.cautions = CHILD_NECK | BUTTONS_HELD;
        draft.checks.extend(skirt.checks);
        draft.check_runs(&front);
        for (name, runs) in [
            ("shoulder", [Some("armhole"), Some("neck")]),
            ("side", [Some("lower edge"), Some("armhole")]),
        ] {
            draft.sew(Sewn {
                name,
                edges: row(&front, name),
                others: row(&back, name),
                way: Way::Along,
                ease: 0.0,
                runs,
            });
        }
        let neck = row_length(&row(&front, "neck")) + row_length(&row(&back, "neck"));
        let found = 2.0 * neck - self.neck;
        draft.check(
            CheckKind::Seam,
            "neck edge, without the stand".into(),
            found,
        );
        // From the centre back round to the centre back again, seen from outside from right to left.
        let (left, middle) = (back.mirror(), front.unfold()?);
        let lower: Vec<Walked<'_>> = [
            row(&left, "lower"),
            row(&middle, "lower"),
            row(&middle, "lower, mirrored"),
            row(&back, "lower"),
        ]
        .concat();
        let gathered: Vec<Walked<'_>> = panels
            .iter()
            .rev()
            .flat_map(|p| row(p, "gathered"))
            .collect();
        let flat = row_length(&gathered);
        draft.sew(Sewn {
            name: if band.is_some() {
                "skirt to yoke, by the band"
            } else {
                "skirt to yoke"
            },
            edges: gathered,
            others: lower,
            way: Way::Against,
            ease: flat - round,
            runs: [None, None],
        });
        draft.held("chest", self.chest)
    }
}

impl Pinafore {
    /// The skirt's panels by their names, with the end of the opening on the centre back seam.
    fn skirt(&self, strips: &[Piece]) -> Result<Vec<Piece>, Error> {
        let open = self.opening - self.yoke_depth - self.band_depth;
        let last = strips.len() - 1;
        let mut panels = Vec::new();
        for (index, strip) in strips.iter().enumerate() {
            let edges = strip.edges().iter().map(|edge| {
                let notch = |edge: &Edge, at: f64| edge.clone().notch("opening", at, 1);
                match edge.name.as_str() {
                    "start" if open > 0.0 && index == 0 => notch(edge, open),
                    "end" if open > 0.0 && index == last => notch(edge, edge.length() - open),
                    _ => edge.clone(),
                }
            });
            let name = if last == 0 {
                "skirt".into()
            } else {
                format!("skirt {}", index + 1)
            };
            let panel = Piece::new(name, edges.collect::<Vec<Edge>>())?;
            panels.push(match strip.grain() {
                Some(grain) => panel.with_grain(grain)?,
                None => panel,
            });
        }
        Ok(panels)
    }
}
