//! What a line or an area means, and how it is drawn so that a black-and-white print tells them apart.

/// What a line means. The true line is the middle of the drawn one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Pen {
    /// Where to cut.
    Cut,
    /// Where to sew.
    Seam,
    /// Where to fold, or to lay on a fold.
    Fold,
    /// Along the warp.
    Grain,
    /// Where two edges meet.
    Notch,
    /// Drill points, buttonholes and other marks inside a piece.
    Mark,
    /// Where another part is laid or sewn on.
    Placement,
    /// Where a piece is slashed when it is made up.
    Slash,
    /// Where a stripe of the cloth lies.
    Stripe,
    /// The edge of a panel of cloth.
    Panel,
    /// Round a flaw, or a hole.
    Flaw,
    /// The lines that fill a hatched area.
    Hatch,
    /// Helping lines, and what belongs to the paper and not to the piece.
    Construction,
    /// Joining marks of pages.
    Join,
    /// The edge to trim a page to; the half of its width outside the printed part is not drawn.
    Trim,
}

impl Pen {
    /// Width of the line (mm).
    pub const fn width(self) -> f64 {
        match self {
            Pen::Panel => 0.7,
            Pen::Cut | Pen::Notch | Pen::Slash | Pen::Stripe | Pen::Trim => 0.5,
            Pen::Fold => 0.4,
            Pen::Grain | Pen::Mark => 0.35,
            Pen::Seam | Pen::Flaw | Pen::Placement => 0.3,
            Pen::Join => 0.25,
            Pen::Construction => 0.18,
            Pen::Hatch => 0.13,
        }
    }

    /// Lengths of dashes and gaps in turn (mm); empty for an unbroken line.
    pub const fn dashes(self) -> &'static [f64] {
        match self {
            Pen::Seam => &[6.0, 2.5],
            Pen::Fold => &[12.0, 2.0, 2.0, 2.0],
            Pen::Flaw => &[1.5, 1.5],
            Pen::Placement => &[3.0, 1.2],
            Pen::Slash => &[8.0, 1.2, 1.0, 1.2, 1.0, 1.2],
            Pen::Stripe => &[0.7, 1.6],
            _ => &[],
        }
    }

    /// Darkness of the ink: 1 is black, 0 is white.
    pub const fn ink(self) -> f64 {
        match self {
            Pen::Construction | Pen::Hatch => 0.55,
            _ => 1.0,
        }
    }
}

/// What a filled area means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Tone {
    /// Bare paper: covers what was drawn before.
    Paper,
    /// A piece lying on cloth.
    Piece,
    /// Cloth that is there.
    Cloth,
    /// Solid: arrow heads and drill points.
    Solid,
}

impl Tone {
    /// Darkness of the ink: 1 is black, 0 is white.
    pub const fn ink(self) -> f64 {
        match self {
            Tone::Paper => 0.0,
            Tone::Piece => 0.2,
            Tone::Cloth => 0.07,
            Tone::Solid => 1.0,
        }
    }
}
