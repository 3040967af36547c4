//! The lay of the demo: its linen panels with everything that is cut from them.

use recloth::{Error, ErrorKind};
use recloth_sheet::{Drawing, lay_drawing};

/// The cloth whose lay is drawn.
const CLOTH: &str = "linen";

pub(super) fn drawing() -> Result<Drawing, Error> {
    let brief = include_str!("../../demo/house-coat.toml");
    // A brief that cannot be planned is a failure of this build, and its own tests say more.
    let plan = recloth_plan::plan(brief, "house-coat.toml")
        .map_err(|_| Error::new(ErrorKind::Invalid, "brief", f64::NAN, f64::NAN, f64::NAN))?;
    let panels: Vec<_> = plan
        .lays
        .iter()
        .filter(|laid| laid.cloth == CLOTH)
        .flat_map(|laid| plan.lay_panels(laid))
        .collect();
    lay_drawing("The lay of the house-coat's linen", &panels, 190.0, 88.0)
}
