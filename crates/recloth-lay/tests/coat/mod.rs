//! Invented: a long linen house-coat, and what it is to become.

use kurbo::{Point, Vec2};
use recloth_lay::{Flaw, Panel, Part};

/// A smooth edge between two points that bulges to the right by `bulge`, as a run of straight ones without its end.
fn curve(from: (f64, f64), to: (f64, f64), bulge: f64) -> Vec<(f64, f64)> {
    let (along, size) = {
        let run = Vec2::new(to.0 - from.0, to.1 - from.1);
        (run, libm::hypot(run.x, run.y))
    };
    (0..12)
        .map(|i| {
            let t = f64::from(i) / 12.0;
            let off = 4.0 * bulge * t * (1.0 - t) / size;
            (
                from.0 + along.x * t + along.y * off,
                from.1 + along.y * t - along.x * off,
            )
        })
        .collect()
}

fn outline(edges: &[((f64, f64), f64)]) -> Vec<Point> {
    let n = edges.len();
    (0..n)
        .flat_map(|i| match edges[i].1 {
            0.0 => vec![edges[i].0],
            bulge => curve(edges[i].0, edges[(i + 1) % n].0, bulge),
        })
        .map(Point::from)
        .collect()
}

/// A good panel.
fn cloth(name: &str, outline: Vec<Point>) -> Panel {
    Panel::new(name, outline).expect("a good panel")
}

/// Invented: the panels of a long linen house-coat, and pieces of a wrap skirt, a waistcoat and a child's pinafore.
pub(super) fn house_coat() -> (Vec<Part>, Vec<Panel>) {
    let front = outline(&[
        ((0.0, 0.0), 0.0),
        ((480.0, 0.0), 0.0),
        ((360.0, 900.0), -10.0),
        ((230.0, 1250.0), 0.0),
        ((0.0, 1150.0), 0.0),
    ]);
    let mirrored: Vec<Point> = front.iter().map(|p| Point::new(-p.x, p.y)).collect();
    let back = outline(&[
        ((0.0, 0.0), 12.0),
        ((620.0, 0.0), 0.0),
        ((520.0, 920.0), -40.0),
        ((400.0, 1280.0), -15.0),
        ((220.0, 1280.0), 0.0),
        ((100.0, 920.0), 0.0),
    ]);
    let sleeve = outline(&[
        ((0.0, 0.0), 0.0),
        ((250.0, 0.0), 0.0),
        ((360.0, 430.0), 60.0),
        ((-110.0, 430.0), 0.0),
    ]);
    let sleeves = |name: &str, flaw: Option<Flaw>| {
        let sleeve = cloth(name, sleeve.clone());
        sleeve
            .with_flaws(flaw.into_iter().collect())
            .expect("a good flaw")
    };
    let scorch = Flaw::new([(200.0, 380.0), (240.0, 390.0), (230.0, 425.0)], 8.0);
    let left = cloth("left front", front)
        .with_flaws(vec![scorch])
        .expect("a good flaw");
    let hole = [
        (-40.0, 700.0),
        (-32.0, 700.0),
        (-32.0, 708.0),
        (-40.0, 708.0),
    ];
    let hole = hole.map(Point::from).into();
    let right = cloth("right front", mirrored)
        .with_holes(vec![hole])
        .expect("a good hole");
    let panels = vec![
        left,
        right,
        cloth("back", back),
        sleeves("left sleeve", None),
        sleeves("right sleeve", Some(Flaw::new([(150.0, 250.0)], 25.0))),
        cloth(
            "left facing",
            outline(&[
                ((0.0, 0.0), 0.0),
                ((75.0, 0.0), 0.0),
                ((90.0, 1100.0), 0.0),
                ((0.0, 1100.0), 0.0),
            ]),
        ),
        cloth(
            "right facing",
            outline(&[
                ((0.0, 0.0), 0.0),
                ((75.0, 0.0), 0.0),
                ((75.0, 1100.0), 0.0),
                ((-15.0, 1100.0), 0.0),
            ]),
        ),
        cloth("left pocket", rectangle(190.0, 230.0)),
        cloth("right pocket", rectangle(190.0, 230.0)),
        cloth(
            "collar",
            outline(&[
                ((0.0, 0.0), 0.0),
                ((460.0, 0.0), 0.0),
                ((440.0, 110.0), 10.0),
                ((20.0, 110.0), 0.0),
            ]),
        ),
    ];
    let skirt = outline(&[
        ((0.0, 0.0), 8.0),
        ((360.0, 0.0), 0.0),
        ((320.0, 480.0), 12.0),
        ((270.0, 640.0), -6.0),
        ((0.0, 640.0), 0.0),
    ]);
    let waistcoat_front = outline(&[
        ((0.0, 0.0), 0.0),
        ((240.0, 20.0), 0.0),
        ((245.0, 210.0), -25.0),
        ((170.0, 430.0), 0.0),
        ((90.0, 450.0), 0.0),
        ((0.0, 230.0), 0.0),
    ]);
    let waistcoat_back = outline(&[
        ((0.0, 0.0), 0.0),
        ((235.0, 0.0), 0.0),
        ((240.0, 210.0), -22.0),
        ((180.0, 440.0), 0.0),
        ((70.0, 460.0), -10.0),
        ((0.0, 440.0), 0.0),
    ]);
    let bodice = outline(&[
        ((0.0, 0.0), 0.0),
        ((150.0, 0.0), 0.0),
        ((145.0, 90.0), -15.0),
        ((105.0, 190.0), 0.0),
        ((50.0, 190.0), -12.0),
        ((0.0, 140.0), 0.0),
    ]);
    let part = |name: &str, outline: Vec<Point>, as_drawn, mirrored, tilt_deg| Part {
        as_drawn,
        mirrored,
        tilt_deg,
        ..Part::new(name, outline)
    };
    let parts = vec![
        part("skirt panel", skirt, 1, 1, 2.0),
        part(
            "skirt back",
            outline(&[
                ((0.0, 0.0), 8.0),
                ((430.0, 0.0), 0.0),
                ((390.0, 640.0), -4.0),
                ((40.0, 640.0), 0.0),
            ]),
            1,
            0,
            2.0,
        ),
        part("waistband section", rectangle(70.0, 380.0), 3, 0, 1.0),
        part("waistcoat front", waistcoat_front, 1, 1, 2.0),
        part("waistcoat back", waistcoat_back, 1, 1, 2.0),
        part("pocket", rectangle(150.0, 170.0), 2, 0, 3.0),
        part("tie", rectangle(60.0, 520.0), 2, 0, 3.0),
        part("pinafore bodice", bodice, 2, 2, 3.0),
        part("pinafore strap", rectangle(55.0, 330.0), 2, 0, 5.0),
    ];
    (parts, panels)
}

fn rectangle(width: f64, height: f64) -> Vec<Point> {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
        .map(Point::from)
        .into()
}
