//! The lining of a skirt panel.

use alloc::format;
use alloc::vec;

use super::measured::{Dial, Dials, Measured, drafted};
use super::skirt_panel::LEAST_BELOW;
use super::{Draft, SkirtPanel};
use crate::Error;
use crate::lining::lining_length;
use crate::outline::{Cutting, Role};

/// How a lining ends at the hem.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Hang {
    /// It hangs free, with a hem of its own this deep (mm), 0 to 1000.
    Free {
        /// Depth of the lining's own hem (mm).
        hem: f64,
    },
    /// It is sewn to the top of the shell's hem, with a fold.
    Folded,
}

/// The lining of a [`SkirtPanel`]: the same waist and darts, ease at the side, its own length.
///
/// Free, it is `clearance` shorter than the shell; sewn to the hem, its length is that of [`lining_length`], and its lower
/// edge is a seam. The hem of the shell is taken to be as deep as its allowance.
///
/// # Source
/// [`lining_length`].
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PanelLining {
    /// The panel to be lined.
    pub shell: SkirtPanel,
    /// How the lining ends.
    pub hang: Hang,
    /// Lining's lower edge or fold above the shell's hem edge (mm), 0 to 1000, less than the shell's hem if folded.
    pub clearance: f64,
    /// What the lining is wider by at hip and hem (mm), 0 to 500.
    pub ease: f64,
}

impl PanelLining {
    /// Drafts the lining: one piece, of the cloth `lining`.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure; those of the shell among them.
    pub fn draft(&self) -> Result<Draft, Error> {
        self.shell.draft()?;
        if let Hang::Free { hem } = self.hang {
            Error::check("hem", hem, 0.0, 1e3)?;
        }
        drafted(self)
    }
}

impl Measured for PanelLining {
    fn dials(&mut self) -> Dials<'_> {
        let mut dials = vec![
            ("clearance", Dial::Number(&mut self.clearance, 0.0, 1e3)),
            ("ease", Dial::Number(&mut self.ease, 0.0, 500.0)),
        ];
        dials.extend(self.shell.dials());
        dials
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let shell = &self.shell;
        let (clearance, ease) = (self.clearance, self.ease);
        let mut allowances = shell.allowances;
        let (length, role) = match self.hang {
            Hang::Free { hem } => {
                allowances.hem = hem;
                (shell.length - clearance, Role::Hem)
            }
            Hang::Folded => {
                let depth = shell.allowances.hem;
                if depth > shell.length {
                    return Err(Error::no_solution("hem", depth, 0.0, shell.length));
                }
                let lining = lining_length(shell.length, depth, clearance)?;
                (lining.seam_to_seam, Role::Seam)
            }
        };
        if length - shell.hip_depth < LEAST_BELOW {
            let most = clearance - (shell.hip_depth + LEAST_BELOW - length);
            return Err(Error::no_solution("clearance", clearance, 0.0, most));
        }
        // The side keeps its slope, so the hem is wider or narrower as the lining is longer or shorter.
        let slope = (shell.hem_width - shell.hip) / (shell.length - shell.hip_depth);
        let panel = SkirtPanel {
            name: format!("{} lining", shell.name),
            hip: shell.hip + ease,
            hem_width: shell.hip + ease + slope * (length - shell.hip_depth),
            length,
            allowances,
            ..shell.clone()
        };
        let (piece, doubts) = panel.draw(role, None)?;
        let cutting = Cutting {
            cloth: "lining".into(),
            ..piece.cutting().clone()
        };
        let piece = piece.with_cutting(cutting)?;
        let mut draft = Draft::new(vec![piece.clone()], doubts);
        panel.check_panel(&mut draft, &piece);
        draft.held("ease", ease)
    }
}
