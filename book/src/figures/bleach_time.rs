//! Depth of shade over time in bleach: three swatches, the line through them, and where it is a guess.

use recloth::Error;
use recloth::bleach::{InBath, bleach_time};
use recloth::fibre::{Fibre, Finish, Swatch};
use recloth_sheet::kurbo::{BezPath, Point};
use recloth_sheet::{Drawing, Pen, Tone};

use super::draw::{circle, ring, words};

/// Millimetres of the page to a minute, and to a unit of K/S.
const MINUTE: f64 = 3.4;
const SHADE: f64 = 13.0;
const TIMES: [f64; 3] = [0.0, 5.0, 10.0];
const SHADES: [f64; 3] = [4.0, 3.1, 2.4];
const TARGET: f64 = 1.0;
const LIMIT: f64 = 30.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let plan = bleach_time(
        &TIMES,
        &SHADES,
        TARGET,
        LIMIT,
        Fibre::Linen,
        Finish::Plain,
        Swatch::Passed,
        InBath::WaterOnly,
        0.0,
    )?;
    let at = |minutes: f64, shade: f64| Point::new(minutes * MINUTE, shade * SHADE);
    // The fitted line meets the target at its time, which fixes it together with the rate.
    let shade = |minutes: f64| TARGET * libm::exp(plan.rate * (plan.time_min - minutes));
    let tested = TIMES[TIMES.len() - 1];

    let mut drawing = Drawing::new("Depth of shade over the time in bleach");
    let beyond = ring(&[
        at(tested, 0.0),
        at(LIMIT, 0.0),
        at(LIMIT, 4.4),
        at(tested, 4.4),
    ]);
    drawing.area(Tone::Cloth, beyond);
    drawing
        .segment(Pen::Mark, at(0.0, 0.0), at(LIMIT, 0.0))
        .segment(Pen::Mark, at(0.0, 0.0), at(0.0, 4.4));
    for shade in [1.0, 2.0, 3.0, 4.0] {
        drawing.segment(Pen::Mark, at(-0.4, shade), at(0.0, shade));
        words(&mut drawing, &format!("{shade}"), at(-1.6, shade));
    }
    for minutes in [0.0, 5.0, 10.0, 20.0, 30.0] {
        drawing.segment(Pen::Mark, at(minutes, -0.1), at(minutes, 0.0));
        words(&mut drawing, &format!("{minutes}"), at(minutes, -0.35));
    }
    words(&mut drawing, "K/S", at(-1.6, 4.55));
    words(&mut drawing, "minutes", at(15.0, -0.75));

    let curve = |from: f64, to: f64| {
        let mut path = BezPath::new();
        path.move_to(at(from, shade(from)));
        for part in 1..=40 {
            let minutes = from + (to - from) * f64::from(part) / 40.0;
            path.line_to(at(minutes, shade(minutes)));
        }
        path
    };
    drawing
        .line(Pen::Cut, curve(0.0, tested))
        .line(Pen::Seam, curve(tested, plan.time_min));
    drawing
        .segment(
            Pen::Construction,
            at(0.0, TARGET),
            at(plan.time_min, TARGET),
        )
        .segment(
            Pen::Construction,
            at(plan.time_min, 0.0),
            at(plan.time_min, TARGET),
        );
    for (minutes, shade) in TIMES.into_iter().zip(SHADES) {
        drawing.area(Tone::Solid, circle(at(minutes, shade), 1.1));
    }
    let next = circle(at(plan.next_swatch_min, shade(plan.next_swatch_min)), 1.3);
    drawing
        .area(Tone::Paper, next.clone())
        .line(Pen::Mark, next);
    words(&mut drawing, "swatches", at(5.0, 3.75));
    words(&mut drawing, "next swatch", at(20.6, 1.85));
    words(
        &mut drawing,
        &format!("{:.1}", plan.time_min),
        at(plan.time_min, -0.35),
    );
    words(&mut drawing, "beyond the longest swatch", at(20.0, 4.1));
    Ok(drawing)
}
