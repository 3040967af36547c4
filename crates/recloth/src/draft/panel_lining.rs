//! The lining of a skirt panel.

use alloc::format;

use super::{Draft, SkirtPanel};
use crate::Error;
use crate::lining::lining_length;
use crate::outline::Role;

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
        let shell = &self.shell;
        shell.draft()?;
        let clearance = Error::check("clearance", self.clearance, 0.0, 1e3)?;
        let ease = Error::check("ease", self.ease, 0.0, 500.0)?;
        let mut allowances = shell.allowances;
        let (length, role) = match self.hang {
            Hang::Free { hem } => {
                allowances.hem = Error::check("hem", hem, 0.0, 1e3)?;
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
        if length <= shell.hip_depth {
            let most = clearance - (shell.hip_depth - length);
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
        let mut draft = panel.draft_with(role)?;
        for piece in &mut draft.pieces {
            let mut cutting = piece.cutting().clone();
            cutting.cloth = "lining".into();
            *piece = piece.clone().with_cutting(cutting)?;
        }
        Ok(draft)
    }
}
