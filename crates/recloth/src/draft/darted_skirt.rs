//! A skirt of a front and a back with darts.

use alloc::vec;

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{Sewn, rows};
use super::{Allowances, Centre, Draft, SkirtPanel};
use crate::Error;
use crate::body::{share, waist_hip_doubts};
use crate::outline::{Piece, Role, Way};

/// A skirt of a front and a back with darts at the waist, whose side seams match.
///
/// Each quarter has its quarter of waist and hip, the front `forward` more and the back as much less. What the panels there
/// are, `front_panel` and `back_panel`, are wider than that at the waist goes into darts, and what the darts leave into the
/// side seam. The back is trued at the side of the waist until its side seam is as long as the front's.
///
/// Pieces `skirt front` and `skirt back`, each half a [`SkirtPanel`] with its edges and notches.
///
/// # Source
/// [`SkirtPanel`]; a front 10 mm wider than the back, and 10 to 12 mm of rise at the side, are common practice, no source.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DartedSkirt {
    /// Finished waist of the whole skirt, ease included (mm), 1 to 1e4.
    pub waist: f64,
    /// Finished hip of the whole skirt, ease included (mm), 1 to 1e4.
    pub hip: f64,
    /// Waist to hip along the centres (mm), 10 to 1000.
    pub hip_depth: f64,
    /// Waist to hem along the centres (mm), at least 10 more than `hip_depth`, to 5000.
    pub length: f64,
    /// What each quarter is wider at the hem than at the hip (mm), -1000 to 5000.
    pub flare: f64,
    /// What a front quarter is wider than a quarter, and a back quarter narrower (mm), 0 to 200.
    pub forward: f64,
    /// Width there is for half the front at the waist (mm), 1 to 5000.
    pub front_panel: f64,
    /// Width there is for half the back at the waist (mm), 1 to 5000.
    pub back_panel: f64,
    /// Number of darts in half the front, 0 to 8.
    pub front_darts: u32,
    /// Number of darts in half the back, 0 to 8.
    pub back_darts: u32,
    /// The most one dart may take in (mm), 0 to 500.
    pub largest_intake: f64,
    /// Waist edge to point of a front dart (mm), 1 to 1000, less than `hip_depth`.
    pub front_dart_length: f64,
    /// Waist edge to point of a back dart (mm), 1 to 1000, less than `hip_depth`.
    pub back_dart_length: f64,
    /// How much higher the waist is at the sides than at the centres (mm), 0 to 100.
    pub side_rise: f64,
    /// What the centre front is.
    pub front_centre: Centre,
    /// What the centre back is.
    pub back_centre: Centre,
    /// Allowances; the waist has that of a seam.
    pub allowances: Allowances,
}

impl DartedSkirt {
    /// Drafts the skirt: two pieces.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure.
    ///
    /// # Examples
    /// ```
    /// use recloth::draft::{Allowances, Centre, DartedSkirt};
    /// let skirt = DartedSkirt {
    ///     waist: 720.0, hip: 980.0, hip_depth: 200.0, length: 600.0, flare: 30.0, forward: 10.0,
    ///     front_panel: 250.0, back_panel: 240.0, front_darts: 1, back_darts: 2, largest_intake: 30.0,
    ///     front_dart_length: 90.0, back_dart_length: 120.0, side_rise: 12.0,
    ///     front_centre: Centre::Fold, back_centre: Centre::Seam, allowances: Allowances::default(),
    /// };
    /// let draft = skirt.draft()?;
    /// let side = draft.seams.iter().find(|seam| seam.name == "side").unwrap();
    /// assert!(side.walk.difference.abs() < 1e-6);
    /// let error = DartedSkirt { front_panel: 185.0, ..skirt }.draft().unwrap_err();
    /// assert_eq!(error.to_string(), "front_panel = 185 leaves no solution: it must be at least 190");
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }

    /// Its front and its back.
    fn panels(&self) -> Result<[SkirtPanel; 2], Error> {
        let (waist, hip) = (share(self.waist, 0.0, 4)?, share(self.hip, 0.0, 4)?);
        let back_waist = waist - self.forward;
        if back_waist < 1.0 {
            return Err(Error::no_solution(
                "forward",
                self.forward,
                0.0,
                waist - 1.0,
            ));
        }
        let front = SkirtPanel {
            name: "skirt front".into(),
            panel_width: self.front_panel,
            waist: waist + self.forward,
            hip: hip + self.forward,
            hip_depth: self.hip_depth,
            length: self.length,
            hem_width: hip + self.forward + self.flare,
            darts: self.front_darts,
            largest_intake: self.largest_intake,
            dart_length: self.front_dart_length,
            side_rise: self.side_rise,
            centre: self.front_centre,
            allowances: self.allowances,
        };
        let back = SkirtPanel {
            name: "skirt back".into(),
            panel_width: self.back_panel,
            waist: back_waist,
            hip: hip - self.forward,
            hem_width: hip - self.forward + self.flare,
            darts: self.back_darts,
            dart_length: self.back_dart_length,
            centre: self.back_centre,
            ..front.clone()
        };
        Ok([front, back])
    }
}

/// An error of one of two panels as one of the measures of the whole.
pub(super) fn whole_error(error: Error, names: &[(&'static str, &'static str, f64)]) -> Error {
    let nan = f64::NAN;
    let named = names.iter().find(|(part, _, _)| *part == error.argument());
    match named {
        Some(&(_, whole, value)) => Error::no_solution(whole, value, nan, nan),
        None => error,
    }
}

/// Sews the side seams of a front and a back, both drawn with the centre at the left.
pub(super) fn sew_sides(draft: &mut Draft, name: &str, front: &Piece, back: &Piece) {
    let side = |piece| rows(piece, &["side lower", "side upper"]);
    draft.sew(Sewn {
        name,
        edges: side(front),
        others: side(back),
        way: Way::Along,
        ease: 0.0,
        runs: [Some("hem"), Some("waist")],
    });
}

impl Measured for DartedSkirt {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = vec![
            ("waist", Dial::Number(&mut self.waist, 1.0, 1e4)),
            ("hip", Dial::Number(&mut self.hip, 1.0, 1e4)),
            ("hip_depth", Dial::Number(&mut self.hip_depth, 10.0, 1e3)),
            ("length", Dial::Number(&mut self.length, 1.0, 5e3)),
            ("flare", Dial::Number(&mut self.flare, -1e3, 5e3)),
            ("forward", Dial::Number(&mut self.forward, 0.0, 200.0)),
            ("front_panel", Dial::Number(&mut self.front_panel, 1.0, 5e3)),
            ("back_panel", Dial::Number(&mut self.back_panel, 1.0, 5e3)),
            ("front_darts", Dial::Count(&mut self.front_darts, 0, 8)),
            ("back_darts", Dial::Count(&mut self.back_darts, 0, 8)),
            (
                "largest_intake",
                Dial::Number(&mut self.largest_intake, 0.0, 500.0),
            ),
            (
                "front_dart_length",
                Dial::Number(&mut self.front_dart_length, 1.0, 1e3),
            ),
            (
                "back_dart_length",
                Dial::Number(&mut self.back_dart_length, 1.0, 1e3),
            ),
            ("side_rise", Dial::Number(&mut self.side_rise, 0.0, 100.0)),
        ];
        dials.extend(self.allowances.dials());
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let [front, back] = self.panels()?;
        let common = [("hip", "hip", self.hip), ("hem_width", "flare", self.flare)];
        let (front_piece, front_doubts) = front.draw(Role::Hem, None).map_err(|error| {
            let own = [
                ("waist", "front_panel", self.front_panel),
                ("dart_length", "front_dart_length", self.front_dart_length),
            ];
            whole_error(error, &[&common[..], &own].concat())
        })?;
        let side = SkirtPanel::side_seam(&front_piece);
        let (back_piece, back_doubts) = back.draw(Role::Hem, Some(side)).map_err(|error| {
            let own = [
                ("waist", "back_panel", self.back_panel),
                ("dart_length", "back_dart_length", self.back_dart_length),
            ];
            whole_error(error, &[&common[..], &own].concat())
        })?;
        let doubts = front_doubts | back_doubts | waist_hip_doubts(self.waist, self.hip)?;
        let mut draft = Draft::new(vec![front_piece.clone(), back_piece.clone()], doubts);
        front.check_panel(&mut draft, &front_piece);
        back.check_panel(&mut draft, &back_piece);
        sew_sides(&mut draft, "side", &front_piece, &back_piece);
        draft.held("side_rise", self.side_rise)
    }
}
