//! What is usable of a panel, and the rectangles in it.

use arbitrary::Result;
use kurbo::Point;
use recloth::panel::{
    CornerReading, Flaw, Inner, Panel, Scale, Spare, SpareReading, largest_rectangle,
    tallest_rectangle, usable_panel,
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
        .map(|flaw| Flaw::new(flaw, margin).under(["pocket bag"]))
        .collect();
    for flaw in &flaws {
        assert!(flaw.may_lie_under("pocket bag") && !flaw.may_lie_under(""));
    }
    let panel = Panel::new("panel", outline).and_then(|panel| panel.with_flaws(flaws));
    if let Ok(panel) = panel.and_then(|panel| panel.with_grain_deg(grain_deg)) {
        cut_down(&panel, &losses, accuracy);
    }
    if let Some(panel) = taken(input)? {
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

/// A panel from readings of every kind, near good ones, with what else may be said of it.
fn taken(input: &mut Input) -> Result<Option<Panel>> {
    let mut near = |good: f64| -> Result<f64> {
        if input.once_in(4)? {
            input.number([0.0, 2.0 * good], &[good, 0.0])
        } else {
            Ok(good * (0.98 + 0.04 * input.share()?))
        }
    };
    let made = match near(2.0)? {
        way if way < 1.97 => {
            let corner = |start, end, from_start, from_end| CornerReading {
                start,
                end,
                from_start,
                from_end,
                right: false,
            };
            let readings = [
                corner(0, 1, near(500.0)?, near(300.0)?),
                corner(0, 1, near(300.0)?, near(500.0)?),
                corner(near(1.0)? as u32, 2, near(320.0)?, near(300.0)?),
            ];
            let count = (near(2.0)? as usize).min(readings.len());
            Panel::by_triangles("triangles", near(400.0)?, &readings[..count])
        }
        way if way < 2.01 => {
            let stations = [0.0, near(100.0)?, near(200.0)?, near(300.0)?];
            let left = [near(-90.0)?, near(-80.0)?, near(-85.0)?, near(-60.0)?];
            let right = [near(90.0)?, near(80.0)?, near(85.0)?, near(60.0)?];
            Panel::by_offsets("offsets", &stations, &left, &right)
        }
        _ => {
            let mut corner = |x: f64, y: f64| Ok(Point::new(near(x)?, near(y)?));
            let truth = [(0.0, 0.0), (200.0, 0.0), (200.0, 300.0), (0.0, 300.0)].map(Point::from);
            let picture = [
                corner(100.0, 90.0)?,
                corner(900.0, 120.0)?,
                corner(800.0, 950.0)?,
                corner(150.0, 900.0)?,
            ];
            let outline = [
                corner(80.0, 100.0)?,
                corner(950.0, 100.0)?,
                corner(500.0, 970.0)?,
            ];
            Panel::from_photo("photo", &picture, &truth, &outline)
        }
    };
    let spare = SpareReading {
        from: near(1.0)? as usize,
        to: near(2.0)? as usize,
        reading: near(320.0)?,
    };
    let ends = (near(0.0)? as usize, near(2.0)? as usize);
    let Ok(panel) = made else { return Ok(None) };
    let corners = panel.outline().to_vec();
    let row = Flaw::stitching(corners.iter().take(2).copied(), 3.0);
    let more = panel
        .clone()
        .with_spares(&[spare])
        .and_then(|panel| panel.with_grain_between(ends.0, ends.1))
        .and_then(|panel| panel.with_flaws(row));
    Ok(Some(match more {
        Ok(panel) => {
            let spares = panel.spares();
            assert_eq!(spares.iter().map(Spare::read).collect::<Vec<_>>(), [spare]);
            assert_eq!(panel.largest_misfit(), Some(spares[0].misfit.abs()));
            panel
        }
        Err(_) => panel,
    }))
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
    assert!(panel.doubts() < 1 << 53, "{panel:?}");
    assert!(panel.grain_deg().abs() <= 360.0, "{panel:?}");
    let called: Vec<Flaw> = panel
        .flaws()
        .iter()
        .map(|flaw| flaw.clone().called("it"))
        .collect();
    let same = panel.clone().with_flaws(called);
    let same = same.and_then(|same| same.with_holes(panel.holes().to_vec()));
    let same = same.map(|same| same.with_faces(panel.faces()).with_nap(panel.nap()));
    assert!(
        same.is_ok_and(|same| same.taken() == panel.taken()),
        "{panel:?}"
    );
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
