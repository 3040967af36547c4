//! What is usable of a panel, and the rectangles in it.

use arbitrary::Result;
use kurbo::Point;
use recloth::panel::{
    Flaw, Inner, Panel, Scale, largest_rectangle, tallest_rectangle, usable_panel,
};

use crate::input::Input;

/// A ring about a point, seldom a good one.
pub(crate) fn ring(input: &mut Input, most: usize, centre: Point, size: f64) -> Result<Vec<Point>> {
    let count = input.index(most + 1)?;
    let wild = input.once_in(4)?;
    let mut points: Vec<Point> = Vec::new();
    for index in 0..count {
        let turn = (index as f64 + 0.9 * input.share()?) / count as f64 * std::f64::consts::TAU;
        let radius = size * (0.2 + 0.8 * input.share()?);
        let (sin, cos) = libm::sincos(turn);
        let mut point = Point::new(centre.x + radius * cos, centre.y + radius * sin);
        if wild && input.once_in(4)? {
            let near: Vec<f64> = points.iter().flat_map(|point| [point.x, point.y]).collect();
            point.x = input.number([-1e5, 1e5], &near)?;
        }
        // On a grid, so that points fall on lines and on each other.
        if input.once_in(2)? {
            point = point.round();
        }
        points.push(point);
    }
    Ok(points)
}

pub(crate) fn target(input: &mut Input) -> Result<()> {
    let outline = ring(input, 12, Point::ORIGIN, 400.0)?;
    let losses: Vec<f64> = (0..outline.len())
        .map(|_| input.number([0.0, 60.0], &[0.0, 15.0]))
        .collect::<Result<_>>()?;
    let mut flaws = Vec::new();
    for _ in 0..input.index(4)? {
        let at = Point::new(
            400.0 * input.share()? - 200.0,
            400.0 * input.share()? - 200.0,
        );
        flaws.push(ring(input, 5, at, 60.0)?);
    }
    let margin = input.number([0.0, 50.0], &[0.0, 10.0])?;
    let accuracy = input.number([0.01, 10.0], &[0.1, 0.01])?;
    if let Ok(usable) = usable_panel(&outline, &losses, &flaws, margin, accuracy) {
        assert!((0.0..=1.0 + 1e-9).contains(&usable.share), "{usable:?}");
        assert!(
            usable.area_mm2 > 0.0 && !usable.parts.is_empty(),
            "{usable:?}"
        );
    }
    let grain_deg = input.number([-360.0, 360.0], &[0.0, 90.0])?;
    let rectangle = largest_rectangle(&outline, &flaws, grain_deg);
    if let Ok(largest) = &rectangle {
        let area = largest.width * largest.height;
        assert!(area > 0.0 && area.is_finite(), "{outline:?}: {largest:?}");
        let width = input.number([0.1, 2e5], &[largest.width])?;
        if let Ok(tallest) = tallest_rectangle(&outline, width, &flaws, grain_deg) {
            let larger = tallest.width * tallest.height > area * (1.0 + 1e-6) + 1e-3;
            assert!(
                !larger,
                "{outline:?}, {flaws:?}, {width}: {tallest:?} beats {largest:?}"
            );
            assert!(tallest.corners().iter().all(|corner| corner.is_finite()));
        }
    }
    let flaws: Vec<Flaw> = flaws
        .into_iter()
        .map(|flaw| Flaw::new(flaw, margin))
        .collect();
    let panel = Panel::new("panel", outline).and_then(|panel| panel.with_flaws(flaws));
    if let Ok(panel) = panel.and_then(|panel| panel.with_grain_deg(grain_deg)) {
        cut_down(&panel, &losses, accuracy);
    }
    // The words of a path in any order.
    let path: Vec<&str> = (0..input.index(24)?)
        .map(|_| input.0.choose(WORDS).copied())
        .collect::<Result<_>>()?;
    let scale = Scale::MmPerUnit(input.number([1e-4, 1e4], &[1.0])?);
    if let Ok(panel) = Panel::from_svg_path("drawn", &path.concat(), scale, Inner::Holes, accuracy)
    {
        cut_down(&panel, &losses, accuracy);
    }
    Ok(())
}

const WORDS: &[&str] = &[
    "M0 0",
    "M",
    "m",
    "L",
    "l",
    "H",
    "h",
    "V",
    "v",
    "C",
    "c",
    "S",
    "s",
    "Q",
    "q",
    "T",
    "t",
    "A5 9 30 ",
    "a1e9 1 0 ",
    "Z",
    "z",
    " ",
    ",",
    "0",
    "01",
    "1 ",
    "-5 ",
    "+30",
    ".5",
    "100 ",
    "1e5 ",
    "1e400 ",
    "-7e-3",
    "\u{e9}",
];

/// What is left of a panel is no more than there was, and its parts are panels again.
fn cut_down(panel: &Panel, losses: &[f64], accuracy: f64) {
    let whole = panel.area_mm2();
    assert!(whole >= 0.0 && whole.is_finite(), "{panel:?}");
    let _ = panel.largest_rectangle();
    if let Ok(parts) = panel.usable(losses, accuracy) {
        let left: f64 = parts.iter().map(Panel::area_mm2).sum();
        assert!(
            left > 0.0 && left <= whole * (1.0 + 1e-9) + 1e-3,
            "{panel:?} {losses:?}: {parts:?}"
        );
        for part in &parts {
            assert!(
                Panel::new("part", part.outline().iter().copied()).is_ok(),
                "{panel:?} {losses:?}: {part:?}"
            );
        }
    }
}
