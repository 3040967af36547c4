//! The parts of a garment shared out over baths, in two pots.

use recloth::Error;
use recloth::wet::batches;
use recloth_sheet::kurbo::Point;
use recloth_sheet::{Drawing, Label, Pen, Tone};

use super::draw::{WORDS, ring, words};

/// Grams to a millimetre of the page.
const SCALE: f64 = 7.5;
const RATIO: f64 = 25.0;
const FILL: f64 = 0.75;
const PARTS: [(&str, f64); 4] = [
    ("back", 420.0),
    ("both fronts", 620.0),
    ("sleeves", 240.0),
    ("rest", 120.0),
];
const DEEP: f64 = 8.0;
const STEP: f64 = 11.0;

pub(super) fn drawing() -> Result<Drawing, Error> {
    let masses = PARTS.map(|(_, mass)| mass);
    let mut drawing = Drawing::new("Parts of a coat shared out over baths");
    let mut top = 0.0;
    for pot in [24.0, 25.0] {
        let mut numbers = [0.0; 4];
        let plan = batches(&masses, pot * 1000.0, RATIO, &mut numbers, FILL)?;
        let text = format!("{pot} litres, {} baths", plan.batches);
        drawing.label(Label::new(text, (0.0, top), WORDS));
        for bath in 1..=plan.batches {
            let low = top - STEP * f64::from(bath);
            let mut from = 0.0;
            for (number, (name, mass)) in PARTS.into_iter().enumerate() {
                if numbers[number] != f64::from(bath) {
                    continue;
                }
                let to = from + mass / SCALE;
                let corners = [
                    Point::new(from, low),
                    Point::new(to, low),
                    Point::new(to, low + DEEP),
                    Point::new(from, low + DEEP),
                ];
                drawing
                    .area(Tone::Cloth, ring(&corners))
                    .polygon(Pen::Panel, &corners);
                let middle = Point::new((from + to) / 2.0, low + DEEP / 2.0);
                words(&mut drawing, &format!("{name} {mass}"), middle);
                from = to;
            }
        }
        let low = top - STEP * f64::from(plan.batches);
        let end = plan.capacity_g / SCALE;
        drawing.segment(
            Pen::Mark,
            Point::new(end, low - 1.5),
            Point::new(end, top - 1.0),
        );
        words(
            &mut drawing,
            &format!("{:.0} g", plan.capacity_g),
            Point::new(end, top + 1.4),
        );
        top = low - 9.0;
    }
    Ok(drawing)
}
