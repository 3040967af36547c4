//! A patch pocket with a turned hem.

use recloth::draft::{Allowances, PatchPocket};
use recloth::outline::Hand;

use super::{Draft, Impossible, draw};
use crate::brief::{Brief, Make, Pocket};
use crate::order::{Kind, Step};

pub(super) fn draft(brief: &Brief, make: &Make, p: &Pocket) -> Result<Draft, Impossible> {
    let pocket = PatchPocket {
        width: p.width,
        depth: p.height,
        corner_radius: p.corner_radius,
        allowances: Allowances {
            seam: brief.allowances.seam,
            hem: p.hem,
        },
    };
    let [pocket] = &pocket.draft()?.pieces[..] else {
        return Err(Impossible::new(
            "it cannot be drawn",
            "Look at its measures.",
        ));
    };
    let pocket = pocket.clone().with_name(&make.name);
    // Off the middle, where the name stands.
    let pocket = draw::grain(
        pocket,
        (0.2 * p.width, 0.3 * p.height),
        (0.2 * p.width, 0.7 * p.height),
    )?;
    let cloth = &brief.cloths[make.cloth].name;
    let step = |text: String, kind| Step::new(text, kind, p.on.clone());
    let press = format!(
        "{}: turn and stitch the hem, press the other edges under",
        make.name
    );
    Ok(Draft {
        pieces: vec![draw::cut(pocket, p.count, Hand::Identical, cloth, None)?],
        steps: vec![
            step(press.clone(), Kind::Press),
            step(
                format!("{}: sew to the {}", make.name, p.on),
                Kind::Topstitch,
            ),
        ],
        onto: Some(p.on.clone()),
        ..Draft::default()
    })
}
