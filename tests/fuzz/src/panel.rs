//! What is usable of a panel, and the rectangles in it.

use arbitrary::Result;
use kurbo::Point;
use recloth::panel::{largest_rectangle, tallest_rectangle, usable_panel};

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
    Ok(())
}
