//! A wrap skirt.

use alloc::vec;

use super::darted_skirt::{sew_sides, whole_error};
use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, row_length, rows};
use super::run_past::{Past, run_past};
use super::{Allowances, Centre, Draft, SkirtPanel};
use crate::Error;
use crate::outline::Role;
use crate::skirt::wrap_skirt;

/// A wrap skirt: a back, and two fronts that lie over each other by the whole `overlap`.
///
/// Back and fronts are quarters with darts as of a [`SkirtPanel`]; each front runs on past the centre front by half of the
/// overlap, straight down, and ends in a wrap edge that is turned in as its own facing.
///
/// Pieces `skirt back` and `skirt front`. The front has `wrap edge`, `waist past centre` and `hem past centre`, and the
/// centre front as a line `centre`.
///
/// # Source
/// [`wrap_skirt`], [`SkirtPanel`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct WrapSkirt {
    /// Finished waist round the body, ease included (mm), 1 to 1e4.
    pub waist: f64,
    /// Finished hip round the body, ease included (mm), 1 to 1e4.
    pub hip: f64,
    /// How far the fronts lie over each other (mm), 0 to 1e4, at most `waist`.
    pub overlap: f64,
    /// Waist to hip along the centres (mm), 10 to 1000.
    pub hip_depth: f64,
    /// Waist to hem along the centres (mm), at least 10 more than `hip_depth`, to 5000.
    pub length: f64,
    /// What each quarter is wider at the hem than at the hip (mm), -1000 to 5000.
    pub flare: f64,
    /// Number of darts in each front, 0 to 8.
    pub front_darts: u32,
    /// Number of darts in half the back, 0 to 8.
    pub back_darts: u32,
    /// The most one dart may take in (mm), 0 to 500.
    pub largest_intake: f64,
    /// Waist edge to point of a dart (mm), 1 to 1000, less than `hip_depth`.
    pub dart_length: f64,
    /// How much higher the waist is at the sides than at the centres (mm), 0 to 100.
    pub side_rise: f64,
    /// What the centre back is.
    pub back_centre: Centre,
    /// What is turned in at the wrap edges (mm), 0 to 1000.
    pub facing: f64,
    /// Allowances; the waist has that of a seam.
    pub allowances: Allowances,
}

impl WrapSkirt {
    /// Drafts the skirt: two pieces.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure.
    ///
    /// # Examples
    /// ```
    /// use recloth::draft::{Allowances, Centre, WrapSkirt};
    /// let skirt = WrapSkirt {
    ///     waist: 720.0, hip: 980.0, overlap: 300.0, hip_depth: 200.0, length: 600.0, flare: 30.0,
    ///     front_darts: 1, back_darts: 1, largest_intake: 30.0, dart_length: 100.0, side_rise: 12.0,
    ///     back_centre: Centre::Fold, facing: 40.0, allowances: Allowances::default(),
    /// };
    /// let draft = skirt.draft()?;
    /// // A quarter of the waist, and half of the overlap.
    /// let front = draft.piece("skirt front").unwrap();
    /// let waist: f64 = front.edges().iter().filter(|edge| edge.name.starts_with("waist")).map(|edge| edge.length()).sum();
    /// assert!((waist - 330.0).abs() < 1e-6);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }
}

impl Measured for WrapSkirt {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = vec![
            ("waist", Dial::Number(&mut self.waist, 1.0, 1e4)),
            ("hip", Dial::Number(&mut self.hip, 1.0, 1e4)),
            ("overlap", Dial::Number(&mut self.overlap, 0.0, 1e4)),
            ("hip_depth", Dial::Number(&mut self.hip_depth, 10.0, 1e3)),
            ("length", Dial::Number(&mut self.length, 1.0, 5e3)),
            ("flare", Dial::Number(&mut self.flare, -1e3, 5e3)),
            ("front_darts", Dial::Count(&mut self.front_darts, 0, 8)),
            ("back_darts", Dial::Count(&mut self.back_darts, 0, 8)),
            (
                "largest_intake",
                Dial::Number(&mut self.largest_intake, 0.0, 500.0),
            ),
            ("dart_length", Dial::Number(&mut self.dart_length, 1.0, 1e3)),
            ("side_rise", Dial::Number(&mut self.side_rise, 0.0, 100.0)),
            ("facing", Dial::Number(&mut self.facing, 0.0, 1e3)),
        ];
        dials.extend(self.allowances.dials());
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let widths = wrap_skirt(self.waist, self.hip, self.overlap)?;
        let quarter = |name: &str, darts, centre| SkirtPanel {
            name: name.into(),
            panel_width: widths.back_hip / 2.0,
            waist: widths.back_waist / 2.0,
            hip: widths.back_hip / 2.0,
            hip_depth: self.hip_depth,
            length: self.length,
            hem_width: widths.back_hip / 2.0 + self.flare,
            darts,
            largest_intake: self.largest_intake,
            dart_length: self.dart_length,
            side_rise: self.side_rise,
            centre,
            allowances: self.allowances,
        };
        let whole = |error| {
            let names = [
                ("waist", "waist", self.waist),
                ("hip", "hip", self.hip),
                ("hem_width", "flare", self.flare),
            ];
            whole_error(error, &names)
        };
        let back = quarter("skirt back", self.back_darts, self.back_centre);
        let front = quarter("skirt front", self.front_darts, Centre::Seam);
        let (back_piece, back_doubts) = back.draw(Role::Hem, None).map_err(whole)?;
        let side = SkirtPanel::side_seam(&back_piece);
        let (quarter_piece, front_doubts) = front.draw(Role::Hem, Some(side)).map_err(whole)?;
        let past = Past {
            edge: "centre",
            by: self.overlap / 2.0,
            outer: "wrap edge",
            role: Role::Hem,
            allowance: self.facing,
        };
        let front_piece = run_past(&quarter_piece, &past)?;
        let doubts = widths.doubts | back_doubts | front_doubts;
        let mut draft = Draft::new(vec![back_piece.clone(), front_piece.clone()], doubts);
        back.check_panel(&mut draft, &back_piece);
        front.check_panel(&mut draft, &quarter_piece);
        draft.seams.retain(|seam| seam.name != "skirt front centre");
        sew_sides(&mut draft, "side", &front_piece, &back_piece);
        let waist = |piece| row_length(&rows(piece, &["waist", "waist past centre"]));
        let found = 2.0 * (waist(&front_piece) + waist(&back_piece)) - widths.waist_edge;
        draft.check(CheckKind::Seam, "whole waist edge, laid open".into(), found);
        draft.held("overlap", self.overlap)
    }
}
