//! The same pieces on cloth opened and folded.

use recloth::Error;
use recloth_lay::{Part, Strip, StripOptions, placed, strip};
use recloth_sheet::{Drawing, LayPanel, LayPiece, lay_drawing};

/// The pieces of the page.
fn pieces() -> Result<Vec<Part>, Error> {
    let rectangle = |w: f64, h: f64| [(0.0, 0.0), (w, 0.0), (w, h), (0.0, h)];
    Ok(vec![
        Part::on_fold("front", rectangle(280.0, 700.0), (0.0, 0.0), (0.0, 700.0))?,
        Part {
            mirrored: 1,
            ..Part::new("back", rectangle(300.0, 700.0))
        },
        Part::new("pocket bag", rectangle(230.0, 400.0)),
    ])
}

pub(super) fn drawing() -> Result<Drawing, Error> {
    let parts = pieces()?;
    let options = StripOptions {
        budget: 1_000_000,
        ..StripOptions::default()
    };
    let laid = |name: &str, folded: bool| {
        let cloth = Strip {
            folded,
            ..Strip::new(1400.0)
        };
        let found = strip(&parts, &cloth, &options).map_err(|error| error.error())?;
        let pieces = found.lay.placements.iter().map(|at| LayPiece {
            label: parts[at.part].name.clone(),
            outline: placed(&parts[at.part].outline, at),
            grain_deg: None,
        });
        let fold = found.lay.folds.first();
        Ok(LayPanel {
            name: name.to_owned(),
            note: format!("{:.0} mm", found.length),
            fold: fold.map(|fold| [fold.from, fold.to]),
            pieces: pieces.collect(),
            ..LayPanel::from(&cloth.panel(found.length)?)
        })
    };
    let panels: Result<Vec<LayPanel>, Error> = [("cut opened", false), ("cut folded", true)]
        .map(|(name, folded)| laid(name, folded))
        .into_iter()
        .collect();
    lay_drawing(
        "The same pieces cut opened and folded",
        &panels?,
        160.0,
        90.0,
    )
}
