//! A gored skirt.

use alloc::vec;
use kurbo::Line;

use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, Sewn, row_length, rows};
use super::skirt_panel::SideSeam;
use super::{Allowances, Centre, Draft, SkirtPanel};
use crate::Error;
use crate::gore::gore;
use crate::outline::{Cutting, Role, Way};

/// A skirt of equal gores: fitted from waist to hip, flared from hip to hem, by its seams alone.
///
/// The sides run straight from hem to hip and are rounded above it; waist and hem are curved so that they are square to
/// every seam, and every seam is as long as the middle of a gore, so that the hem hangs level.
///
/// One piece `gore`, cut `count` times. Edges of its right half as of a [`SkirtPanel`], of its left half the same with
/// `, mirrored`.
///
/// # Source
/// [`gore`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct GoredSkirt {
    /// Finished waist of the whole skirt, ease included (mm), 1 to 1e4.
    pub waist: f64,
    /// Finished hip of the whole skirt, ease included (mm), 1 to 1e4.
    pub hip: f64,
    /// Finished way round the hem (mm), 1 to 1e5.
    pub hem: f64,
    /// Waist to hem along the middle of a gore and along its seams (mm), at least 10 more than `hip_depth`, to 5000.
    pub length: f64,
    /// Waist to hip along the middle of a gore (mm), 10 to 1000.
    pub hip_depth: f64,
    /// Number of gores, 2 to 64.
    pub count: u32,
    /// Allowances; the waist has that of a seam.
    pub allowances: Allowances,
}

impl GoredSkirt {
    /// Drafts the skirt: one piece.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure.
    ///
    /// # Examples
    /// ```
    /// use recloth::draft::{Allowances, GoredSkirt};
    /// let skirt = GoredSkirt {
    ///     waist: 720.0, hip: 1020.0, hem: 1980.0, length: 700.0, hip_depth: 200.0, count: 6,
    ///     allowances: Allowances::default(),
    /// };
    /// let gore = &skirt.draft()?.pieces[0];
    /// assert_eq!(gore.cutting().count, 6);
    /// assert!((gore.bounds().width() - 330.0).abs() < 1e-6);
    /// # Ok::<(), recloth::Error>(())
    /// ```
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }
}

impl Measured for GoredSkirt {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = vec![
            ("waist", Dial::Number(&mut self.waist, 1.0, 1e4)),
            ("hip", Dial::Number(&mut self.hip, 1.0, 1e4)),
            ("hem", Dial::Number(&mut self.hem, 1.0, 1e5)),
            ("length", Dial::Number(&mut self.length, 1.0, 5e3)),
            ("hip_depth", Dial::Number(&mut self.hip_depth, 10.0, 1e3)),
            ("count", Dial::Count(&mut self.count, 2, 64)),
        ];
        // The way round the hem has the name that its allowance would have.
        let allowances = self.allowances.dials().into_iter();
        dials.extend(allowances.map(|(name, dial)| match name {
            "hem" => ("hem_allowance", dial),
            _ => (name, dial),
        }));
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let &GoredSkirt {
            waist,
            hip,
            hem,
            length,
            hip_depth,
            count,
            allowances,
        } = self;
        let widths = gore(waist, hip, hem, length, hip_depth, count)?;
        let [top, middle, bottom] =
            [widths.waist_width, widths.hip_width, widths.hem_width].map(|width| width / 2.0);
        // Square to a side that leans in from the hip, the waist rises toward it as the arc about where the sides meet.
        let lean = libm::atan2(middle - top, hip_depth);
        let half = SkirtPanel {
            name: "gore".into(),
            panel_width: top,
            waist: top,
            hip: middle,
            hip_depth,
            length,
            hem_width: bottom,
            darts: 0,
            largest_intake: 0.0,
            dart_length: 1.0,
            side_rise: top * libm::tan(lean / 2.0),
            centre: Centre::Fold,
            allowances,
        };
        let named = |error: Error| {
            let nan = f64::NAN;
            match error.argument() {
                "hem_width" => Error::no_solution("hem", hem, nan, nan),
                "side_rise" | "hip" => Error::no_solution("hip", hip, nan, nan),
                _ => error,
            }
        };
        let (first, _) = half.draw(Role::Hem, None).map_err(named)?;
        // The upper part of the side is longer than the middle there; what is left of the length goes below the hip.
        let upper = row_length(&rows(&first, &["side upper"]));
        let below = length - upper;
        if below < 1.0 {
            let nan = f64::NAN;
            return Err(Error::no_solution("length", length, nan, nan));
        }
        let side = SideSeam {
            lower: below,
            upper: None,
        };
        let (half, _) = half.draw(Role::Hem, Some(side)).map_err(named)?;
        let grain = Line::new((0.0, -0.85 * length), (0.0, -0.5 * length));
        let piece = half.unfold()?.with_grain(grain)?.with_cutting(Cutting {
            count,
            ..Cutting::default()
        })?;
        let mut draft = Draft::new(vec![piece.clone()], widths.doubts);
        draft.check_runs(&half);
        draft.sew(Sewn {
            name: "gore to gore",
            edges: rows(&piece, &["side lower", "side upper"]),
            others: rows(&piece, &["side lower, mirrored", "side upper, mirrored"]),
            way: Way::Against,
            ease: 0.0,
            runs: [Some("hem"), Some("waist")],
        });
        let side = row_length(&rows(&piece, &["side lower", "side upper"]));
        let what = "seam of a gore against its middle".into();
        draft.check(CheckKind::Level, what, side - length);
        let edge = row_length(&rows(&half, &["waist"])) * 2.0 * f64::from(count);
        let what = "waist, all gores".into();
        draft.check(CheckKind::Seam, what, edge - waist);
        draft.held("hip", hip)
    }
}
