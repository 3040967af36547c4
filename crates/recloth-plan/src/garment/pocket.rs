//! A patch pocket with a turned hem.

use recloth::outline::{Corner, Edge, Hand};

use super::{Draft, Impossible, draw};
use crate::brief::{Brief, Make, Pocket};
use crate::order::{Kind, Step};

pub(super) fn draft(brief: &Brief, make: &Make, p: &Pocket) -> Result<Draft, Impossible> {
    let seam = brief.allowances.seam;
    let pocket = draw::rectangle(
        &make.name,
        (p.width, p.height),
        [
            ("bottom", Edge::seam, seam),
            (
                "side",
                |name, curve, allowance| {
                    Edge::seam(name, curve, allowance).corner(Corner::MirroredOnNext)
                },
                seam,
            ),
            (
                "top",
                |name, curve, allowance| {
                    Edge::hem(name, curve, allowance).corner(Corner::MirroredOnThis)
                },
                p.hem,
            ),
            ("side", Edge::seam, seam),
        ],
        false,
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
