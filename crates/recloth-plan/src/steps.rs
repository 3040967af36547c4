//! The steps of the whole job: taking apart, baths, measuring, cutting, then each garment's own.

use crate::brief::{BathKind, Brief};
use crate::components::{Bears, component};
use crate::order::{Kind, Step};

/// Every step of the brief, in the order in which they are met; [`crate::order::order_check`] puts them right.
pub(crate) fn steps(brief: &Brief, make: Vec<Step>) -> Vec<Step> {
    let job = |name: &str, kind| Step::new(name, kind, "");
    let mut steps = vec![
        job(
            "Photograph the garment and note its grain, its right side and where each part sat",
            Kind::Record,
        ),
        job(
            "Unpick it, seam by seam; mark the right side and the warp of each panel",
            Kind::Unpick,
        ),
    ];
    for part in brief.parts.iter().filter(|part| !part.stays) {
        steps.push(job(&format!("Take off: {}", part.name), Kind::Strip));
    }
    // What a bath would spoil comes off whatever the brief hoped.
    for part in brief.parts.iter().filter(|part| part.stays) {
        let spoilt = brief
            .baths
            .iter()
            .any(|bath| component(&part.name, part.fibre, part.sure, bath.kind).bears == Bears::No);
        if spoilt {
            steps.push(job(
                &format!("Take off: {} (a bath would spoil it)", part.name),
                Kind::Strip,
            ));
        }
    }
    let shrinks = brief
        .cloths
        .iter()
        .filter(|cloth| cloth.change_pct != (0.0, 0.0));
    let shrinks: Vec<&str> = shrinks.map(|cloth| cloth.name.as_str()).collect();
    if !brief.baths.is_empty() || !shrinks.is_empty() {
        steps.push(job(
            "Put a swatch through the washing and the baths, dry it and look at it",
            Kind::Swatch,
        ));
    }
    let wash = "Wash and dry the panels as the garments will be washed";
    if !shrinks.is_empty() {
        steps.push(job(
            &format!("{wash}: {}", shrinks.join(", ")),
            Kind::Shrink,
        ));
    }
    let mut before: Option<String> = shrinks
        .first()
        .map(|_| format!("{wash}: {}", shrinks.join(", ")));
    for (index, bath) in brief.baths.iter().enumerate() {
        let cloth = &brief.cloths[bath.cloth].name;
        let what = match bath.kind {
            BathKind::Scour => "Scour",
            BathKind::Tannin => "Tannin bath for",
            BathKind::Mordant => "Mordant",
            BathKind::Dye => "Dye",
        };
        let twin = brief.baths[..index]
            .iter()
            .any(|b| b.kind == bath.kind && b.cloth == bath.cloth);
        let again = if twin {
            format!(", bath {}", index + 1)
        } else {
            String::new()
        };
        let mut step = job(&format!("{what} the {cloth}{again}"), Kind::Bath);
        if let Some(before) = &before {
            step = step
                .after(before.clone())
                .why("each bath builds on the one before, on clean cloth that has shrunk");
        }
        before = Some(step.name.clone());
        steps.push(step);
    }
    steps.push(job(
        "Press the panels, measure them again, and correct the brief where they differ",
        Kind::Measure,
    ));
    steps.push(job(
        "Lay out all pieces as the lays show, then cut; linings, and what is marked later, stay uncut for now",
        Kind::Cut,
    ));
    steps.extend(make);
    for step in &brief.steps {
        let awaited = steps
            .iter()
            .rposition(|other| step.after.contains(&other.name));
        steps.insert(awaited.map_or(steps.len(), |at| at + 1), step.clone());
    }
    steps
}
