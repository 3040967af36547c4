//! What a plan is written as: worksheet, sheets, drawings, and the plan itself for machines.

use recloth::Error;
use recloth_lay::{Lay, Part, placed};
use recloth_sheet::{
    Drawing, LayPanel, LayPiece, Paper, PieceOptions, SheetOptions, lay_drawing, pdf,
    piece_drawing, sheets, svg,
};
use serde::Serialize;

use crate::baths::BathPlan;
use crate::cloth::Cloth;
use crate::files::PLAN;
use crate::giving::Given;
use crate::laying::Laid;
use crate::order::Order;
use crate::plan::{CutPiece, Plan, TOLERANCE};
use crate::worksheet::worksheet;

/// Width and height that a panel is drawn in (mm): two side by side on A4 or Letter. With its pen it is narrower than a
/// figure of the worksheet, so that no browser shrinks it and its scale stays true.
const LAY: (f64, f64) = (84.0, 150.0);

impl Plan {
    /// The plan's files, as name and content; names use `/`.
    ///
    /// `plan.json` (first: it lists the others), `worksheet.html`, `sheets-a4.pdf`, `sheets-letter.pdf` (all pieces at
    /// full size) and `pieces/NUMBER-NAME.svg`. The same plan gives the same bytes.
    ///
    /// # Errors
    /// [`Error`] when a drawing is beyond what a page can hold.
    pub fn files(&self) -> Result<Vec<(String, Vec<u8>)>, Error> {
        let drawings = self.drawings()?;
        let mut files = Vec::new();
        let lays = self
            .lays
            .iter()
            .map(|laid| {
                Ok([
                    self.svgs(self.lay_panels(laid))?,
                    self.svgs(self.changed_panels(laid))?,
                ])
            })
            .collect::<Result<Vec<_>, Error>>()?;
        files.push((
            String::from("worksheet.html"),
            worksheet(self, &lays)?.into_bytes(),
        ));
        for (name, paper) in [
            ("sheets-a4.pdf", Paper::A4),
            ("sheets-letter.pdf", Paper::Letter),
        ] {
            let options = SheetOptions {
                paper,
                ..SheetOptions::default()
            };
            let pages = sheets(&self.title, &drawings, &options)?.pages;
            files.push((name.to_owned(), pdf(&self.title, &pages)?));
        }
        for (piece, drawing) in self.pieces.iter().zip(&drawings) {
            files.push((
                format!("pieces/{}.svg", file_name(piece)),
                svg(drawing)?.into_bytes(),
            ));
        }
        let names: Vec<&str> = std::iter::once(PLAN)
            .chain(files.iter().map(|(name, _)| name.as_str()))
            .collect();
        let json = self.json(&names);
        files.insert(0, (PLAN.to_owned(), json.into_bytes()));
        Ok(files)
    }

    fn drawings(&self) -> Result<Vec<Drawing>, Error> {
        let options = PieceOptions {
            tolerance: TOLERANCE,
            style: self.tape.style,
            ..PieceOptions::default()
        };
        self.pieces
            .iter()
            .map(|piece| {
                let titled = piece.piece.clone().with_name(format!(
                    "{}. {}",
                    piece.number,
                    piece.piece.name()
                ));
                piece_drawing(&titled, &options)
            })
            .collect()
    }

    /// The panels of a lay, each with its name, its size and the pieces that lie on it, to be drawn.
    pub fn lay_panels(&self, laid: &Laid) -> Vec<LayPanel> {
        let changed = laid.given.as_ref().and_then(Given::changed);
        // What is left is told of the lay that has all pieces.
        self.drawn(laid, &laid.parts, &laid.fit.lay, changed.is_none())
    }

    /// The panels with the pieces as they lie once something gives, as [`Plan::lay_panels`]; none where nothing does.
    pub fn changed_panels(&self, laid: &Laid) -> Vec<LayPanel> {
        let changed = laid.given.as_ref().and_then(Given::changed);
        changed.map_or(Vec::new(), |(_, parts, fit)| {
            self.drawn(laid, parts, &fit.lay, true)
        })
    }

    fn drawn(&self, laid: &Laid, parts: &[Part], lay: &Lay, with_left: bool) -> Vec<LayPanel> {
        let panels = laid.panels.iter().enumerate();
        panels
            .map(|(index, panel)| {
                let measured = laid.panel_of.get(index).map(|&place| &self.panels[place]);
                let on_it = lay
                    .placements
                    .iter()
                    .filter(|placement| placement.panel == index);
                let pieces = on_it.map(|placement| {
                    let part = &parts[placement.part];
                    let (number, half) = laid.piece_of(parts, placement.part);
                    // A piece that is its own mirror image lies the same either way.
                    let handed = self.piece(number).piece.handed(TOLERANCE).unwrap_or(true);
                    let over = if placement.mirrored && handed {
                        " over"
                    } else {
                        ""
                    };
                    LayPiece {
                        label: format!("{number}{half}{over}"),
                        outline: placed(&part.outline, placement),
                        grain_deg: None,
                    }
                });
                let bounds = panel.bounds();
                let size = format!(
                    "{} by {}",
                    self.tape.text(bounds.width()),
                    self.tape.text(bounds.height())
                );
                let left = laid
                    .left
                    .iter()
                    .filter(|shape| with_left && shape.panel == index);
                LayPanel {
                    note: size,
                    flaws: measured
                        .iter()
                        .flat_map(|cloth| &cloth.flaws)
                        .map(|flaw| flaw.outline.clone())
                        .collect(),
                    fold: (laid.fit.lay.folds.iter())
                        .find(|fold| fold.panel == index)
                        .map(|fold| [fold.from, fold.to]),
                    pieces: pieces.collect(),
                    left: left
                        .flat_map(|shape| &shape.rectangles)
                        .map(|rectangle| rectangle.corners().to_vec())
                        .collect(),
                    ..LayPanel::from(panel)
                }
            })
            .collect()
    }

    /// A drawing of each panel with what lies on it.
    fn svgs(&self, panels: Vec<LayPanel>) -> Result<Vec<String>, Error> {
        panels
            .into_iter()
            .map(|panel| {
                let name = panel.name.clone();
                svg(&lay_drawing(&name, &[panel], LAY.0, LAY.1)?)
            })
            .collect()
    }

    /// The plan for machines, as JSON.
    fn json(&self, files: &[&str]) -> String {
        let mut text = serde_json::to_string_pretty(&Json {
            made_by: "recloth",
            unit: "mm",
            title: &self.title,
            note: &self.note,
            answer: self.answer(),
            files,
            pieces: &self.pieces,
            panels: &self.panels,
            lays: &self.lays,
            sums: self
                .sums
                .iter()
                .map(|sum| {
                    let (tapes, total) = self.tape.set(
                        &sum.terms
                            .iter()
                            .map(|(_, length)| *length)
                            .collect::<Vec<_>>(),
                    );
                    JsonSum {
                        what: &sum.what,
                        terms: sum
                            .terms
                            .iter()
                            .zip(tapes)
                            .map(|((name, length), tape)| JsonTerm {
                                name,
                                length: *length,
                                tape,
                            })
                            .collect(),
                        total,
                    }
                })
                .collect(),
            baths: &self.baths,
            order: &self.order,
            doubts: &self.doubts,
            cautions: &self.cautions,
        })
        // Every field is plain data with text keys, so this cannot fail; an empty plan would be told by its reader.
        .unwrap_or_default();
        text.push('\n');
        text
    }
}

#[derive(Serialize)]
struct Json<'a> {
    made_by: &'static str,
    unit: &'static str,
    title: &'a str,
    note: &'a str,
    answer: String,
    files: &'a [&'a str],
    pieces: &'a [CutPiece],
    panels: &'a [Cloth],
    lays: &'a [Laid],
    sums: Vec<JsonSum<'a>>,
    baths: &'a [BathPlan],
    order: &'a Order,
    doubts: &'a [String],
    cautions: &'a [String],
}

#[derive(Serialize)]
struct JsonSum<'a> {
    what: &'a str,
    terms: Vec<JsonTerm<'a>>,
    total: f64,
}

#[derive(Serialize)]
struct JsonTerm<'a> {
    name: &'a str,
    length: f64,
    tape: f64,
}

/// A name that every file system takes: number and name, letters and digits of ASCII, the rest as hyphens.
fn file_name(piece: &CutPiece) -> String {
    let mut name = format!("{:02}-", piece.number);
    for c in piece.piece.name().chars().take(60) {
        if c.is_ascii_alphanumeric() {
            name.push(c.to_ascii_lowercase());
        } else if !name.ends_with('-') {
            name.push('-');
        }
    }
    name.trim_end_matches('-').to_owned()
}
