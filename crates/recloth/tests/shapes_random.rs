//! Usable panels and rectangles of many random panels, seeded: what is returned is sound, and nothing better is left.
//! The distances, the insides and the search here are written apart from the library's.

use kurbo::{Point, Vec2};
use recloth::ErrorKind;
use recloth::panel::{
    PanelRectangle, UsablePanel, largest_rectangle, tallest_rectangle, usable_panel,
};

mod random;

use random::Random;

impl Random {
    fn point(&mut self, reach: f64) -> Point {
        Point::new(self.between(-reach, reach), self.between(-reach, reach))
    }

    /// A star-shaped polygon: notched, sloped, and simple because its corners go round the centre.
    fn star(&mut self, centre: Point, reach: f64, count: usize) -> Vec<Point> {
        (0..count)
            .map(|index| {
                let share = (index as f64 + self.between(0.1, 0.9)) / count as f64;
                let angle = share * std::f64::consts::TAU;
                let radius = self.between(0.3, 1.0) * reach;
                centre + radius * Vec2::new(libm::cos(angle), libm::sin(angle))
            })
            .collect()
    }

    /// Random points joined without crossings: two edges that cross are exchanged until none do.
    fn tangle(&mut self, reach: f64, count: usize) -> Vec<Point> {
        let mut points: Vec<Point> = (0..count).map(|_| self.point(reach)).collect();
        while let Some((i, j)) = first_crossing(&points) {
            points[i + 1..=j].reverse();
        }
        points
    }

    /// A polygon whose corners have whole coordinates and whose edges are square to the axes, like steps.
    fn steps(&mut self, count: usize) -> Vec<Point> {
        let mut points = vec![Point::ZERO, Point::new(50.0 * count as f64, 0.0)];
        for index in (0..count).rev() {
            let height = self.between(1.0, 20.0).floor() * 10.0;
            points.push(Point::new(50.0 * (index + 1) as f64, height));
            points.push(Point::new(50.0 * index as f64, height));
        }
        points
    }

    /// A panel of one of three kinds, up to two holes in it, and a grain.
    fn panel(&mut self, case: usize) -> (Vec<Point>, Vec<Vec<Point>>, f64) {
        let count = 3 + case % 10;
        let outline = match case % 3 {
            0 => self.tangle(200.0, count),
            1 => self.star(Point::ZERO, 200.0, count),
            _ => self.steps(count),
        };
        let holes: Vec<Vec<Point>> = (0..(case / 3) % 3)
            .map(|_| {
                let centre = self.point(100.0);
                self.star(centre, 50.0, 5)
            })
            .collect();
        let grain_deg = if case.is_multiple_of(2) {
            90.0
        } else {
            self.between(-360.0, 360.0)
        };
        (outline, holes, grain_deg)
    }
}

fn edges(ring: &[Point]) -> Vec<(Point, Point)> {
    (0..ring.len())
        .map(|index| (ring[index], ring[(index + 1) % ring.len()]))
        .collect()
}

fn turn(a: Point, b: Point, c: Point) -> f64 {
    (b - a).cross(c - a)
}

fn first_crossing(points: &[Point]) -> Option<(usize, usize)> {
    let edges = edges(points);
    for (i, &(a, b)) in edges.iter().enumerate() {
        for (j, &(c, d)) in edges.iter().enumerate().skip(i + 2) {
            if (i, j) != (0, edges.len() - 1)
                && turn(a, b, c) * turn(a, b, d) < 0.0
                && turn(c, d, a) * turn(c, d, b) < 0.0
            {
                return Some((i, j));
            }
        }
    }
    None
}

fn distance(point: Point, a: Point, b: Point) -> f64 {
    let along = b - a;
    let share = ((point - a).dot(along) / along.dot(along).max(1e-300)).clamp(0.0, 1.0);
    let off = point - (a + along * share);
    libm::hypot(off.x, off.y)
}

fn inside(ring: &[Point], point: Point) -> bool {
    edges(ring)
        .iter()
        .filter(|(a, b)| (a.y > point.y) != (b.y > point.y))
        .filter(|(a, b)| a.x + (point.y - a.y) / (b.y - a.y) * (b.x - a.x) > point.x)
        .count()
        % 2
        == 1
}

fn kept(usable: &UsablePanel, point: Point) -> bool {
    usable.parts.iter().any(|part| {
        inside(&part.outline, point) && !part.holes.iter().any(|hole| inside(hole, point))
    })
}

/// How far a point is past the nearest thing it must keep clear of; negative when it is too near.
fn slack(
    point: Point,
    outline: &[Point],
    losses: &[f64],
    flaws: &[Vec<Point>],
    margin: f64,
) -> f64 {
    let mut slack = f64::INFINITY;
    // The loss of an edge of no length counts for nothing.
    let sides = edges(outline).into_iter().zip(losses);
    for ((a, b), loss) in sides.filter(|((a, b), _)| a != b) {
        slack = slack.min(distance(point, a, b) - loss);
    }
    for flaw in flaws {
        for (a, b) in edges(flaw) {
            slack = slack.min(distance(point, a, b) - margin);
        }
    }
    let lost = !inside(outline, point)
        || flaws
            .iter()
            .any(|flaw| flaw.len() > 2 && inside(flaw, point));
    if lost { -slack.abs() } else { slack }
}

#[test]
fn usable_panels_keep_clear_and_keep_all_else() {
    let mut random = Random(1);
    let (mut solved, mut split, mut holed) = (0, 0, 0);
    for case in 0..300 {
        let count = 3 + case % 14;
        let outline = match case % 3 {
            0 => random.tangle(200.0, count),
            1 => random.star(Point::ZERO, 200.0, count),
            _ => random.steps(count),
        };
        let losses: Vec<f64> = outline
            .iter()
            .map(|_| {
                if random.between(0.0, 1.0) < 0.3 {
                    0.0
                } else {
                    random.between(0.0, 15.0)
                }
            })
            .collect();
        let margin = if case % 5 == 0 {
            0.0
        } else {
            random.between(1.0, 8.0)
        };
        // Without a margin only patches take anything off.
        let kinds = if margin == 0.0 { 1 } else { 3 };
        let flaws: Vec<Vec<Point>> = (0..case % 4)
            .map(|index| {
                let centre = outline[0].midpoint(outline[outline.len() / 2]);
                let centre = centre + random.point(60.0).to_vec2();
                match index % kinds {
                    0 => random.star(centre, 20.0, 6),
                    1 => vec![centre],
                    _ => vec![centre, centre + random.point(30.0).to_vec2()],
                }
            })
            .collect();
        let accuracy = 0.05;
        let usable = match usable_panel(&outline, &losses, &flaws, margin, accuracy) {
            Ok(usable) => usable,
            Err(error) => {
                assert_eq!(error.kind(), ErrorKind::NoSolution, "{case}: {error}");
                assert!(
                    ["losses", "flaws"].contains(&error.argument()),
                    "{case}: {error}"
                );
                continue;
            }
        };
        solved += 1;
        split += usize::from(usable.parts.len() > 1);
        let slack = |point| slack(point, &outline, &losses, &flaws, margin);

        // Sound: along every ring returned, ends and between.
        let mut area = 0.0;
        for part in &usable.parts {
            holed += part.holes.len();
            area += part.area_mm2;
            // Good for further use: rings that touch nothing of their own.
            let rectangle = largest_rectangle(&part.outline, &part.holes, 90.0);
            assert!(rectangle.is_ok(), "{case}: {rectangle:?}");
            for ring in [&part.outline].into_iter().chain(&part.holes) {
                for (a, b) in edges(ring) {
                    for step in 0..8 {
                        let point = a.lerp(b, f64::from(step) / 8.0);
                        assert!(
                            slack(point) > -1e-8,
                            "{case}: {point:?} is short by {}",
                            -slack(point)
                        );
                    }
                }
            }
        }
        assert!((area - usable.area_mm2).abs() < 1e-6);
        assert!(usable.share > 0.0 && usable.share <= 1.0);

        // And nothing is kept that must go, nor is anything lost that is clear by more than the accuracy.
        let mut missing = 0;
        for _ in 0..2000 {
            let x = random.between(-200.0, 900.0_f64.min(50.0 * count as f64 + 200.0));
            let point = Point::new(x, random.between(-200.0, 200.0));
            let slack = slack(point);
            if kept(&usable, point) {
                assert!(slack > -1e-8, "{case}: {point:?} is kept with {slack}");
            } else if slack > accuracy + 1e-6 {
                missing += 1;
            }
        }
        assert_eq!(missing, 0, "{case}: {missing} good points are missing");
    }
    assert!(
        solved > 150 && split > 20 && holed > 20,
        "too tame: {solved} solved, {split} fell apart, {holed} holes"
    );
}

/// The best rectangle from `x1` to `x2` in rings turned so that the grain is up, by what blocks the strip between.
fn best_strip(rings: &[Vec<Point>], x1: f64, x2: f64) -> f64 {
    let mut blocked: Vec<[f64; 2]> = Vec::new();
    for (a, b) in rings.iter().flat_map(|ring| edges(ring)) {
        let (a, b) = if a.x < b.x { (a, b) } else { (b, a) };
        if b.x <= x1 || a.x >= x2 {
            continue;
        }
        let at = |x: f64| {
            if a.x == b.x {
                a.y
            } else {
                a.y + (x - a.x) / (b.x - a.x) * (b.y - a.y)
            }
        };
        let (y1, y2) = if a.x == b.x {
            (a.y, b.y)
        } else {
            (at(a.x.max(x1)), at(b.x.min(x2)))
        };
        blocked.push([y1.min(y2), y1.max(y2)]);
    }
    blocked.sort_by(|a, b| a[0].total_cmp(&b[0]));
    let mut best: f64 = 0.0;
    let mut level = f64::INFINITY;
    for [low, high] in blocked {
        if low > level {
            let middle = Point::new((x1 + x2) / 2.0, (level + low) / 2.0);
            if inside(&rings[0], middle) && !rings[1..].iter().any(|hole| inside(hole, middle)) {
                best = best.max((low - level) * (x2 - x1));
            }
            level = high;
        } else if level == f64::INFINITY {
            level = high;
        }
        level = level.max(high);
    }
    best
}

/// The largest rectangle found by trying a net of places and bettering the best of them step by step.
fn searched(rings: &[Vec<Point>]) -> f64 {
    let xs: Vec<f64> = rings.iter().flatten().map(|point| point.x).collect();
    let low = xs.iter().copied().fold(f64::INFINITY, f64::min);
    let high = xs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let mut net: Vec<f64> = (0..=40)
        .map(|step| low + (high - low) * f64::from(step) / 40.0)
        .collect();
    net.extend(&xs);
    let mut starts: Vec<(f64, f64, f64)> = Vec::new();
    for &x1 in &net {
        for &x2 in net.iter().filter(|&&x2| x2 > x1) {
            starts.push((best_strip(rings, x1, x2), x1, x2));
        }
    }
    starts.sort_by(|a, b| b.0.total_cmp(&a.0));
    let mut best: f64 = 0.0;
    for &(mut area, mut x1, mut x2) in starts.iter().take(8) {
        let mut step = (high - low) / 40.0;
        while step > 1e-9 {
            let before = area;
            for (a, b) in [
                (1.0, 0.0),
                (-1.0, 0.0),
                (0.0, 1.0),
                (0.0, -1.0),
                (1.0, 1.0),
                (-1.0, -1.0),
                (1.0, -1.0),
                (-1.0, 1.0),
            ] {
                let (next1, next2) = (x1 + a * step, x2 + b * step);
                if next1 < next2 {
                    let next = best_strip(rings, next1, next2);
                    if next > area {
                        (area, x1, x2) = (next, next1, next2);
                    }
                }
            }
            if area == before {
                step /= 2.0;
            }
        }
        best = best.max(area);
    }
    best
}

fn turned(ring: &[Point], grain_deg: f64) -> Vec<Point> {
    let (sin, cos) = (
        libm::sin(grain_deg.to_radians()),
        libm::cos(grain_deg.to_radians()),
    );
    ring.iter()
        .map(|point| Point::new(sin * point.x - cos * point.y, cos * point.x + sin * point.y))
        .collect()
}

/// Whether a point is not outside a ring, exactly.
fn inside_or_on(ring: &[Point], point: Point) -> bool {
    let coord = |p: Point| robust::Coord { x: p.x, y: p.y };
    let side = |a, b| robust::orient2d(coord(a), coord(b), coord(point));
    let on = |&(a, b): &(Point, Point)| {
        side(a, b) == 0.0
            && kurbo::Rect::from_points(a, b).union_pt(point) == kurbo::Rect::from_points(a, b)
    };
    let crossed = |&(a, b): &(Point, Point)| {
        (a.y > point.y) != (b.y > point.y) && (side(a, b) > 0.0) == (b.y > a.y)
    };
    let edges = edges(ring);
    edges.iter().any(on) || edges.iter().filter(|edge| crossed(edge)).count() % 2 == 1
}

/// The corners exactly, and points of the border drawn in by a hair: all is cloth.
fn assert_inside(rectangle: &PanelRectangle, outline: &[Point], holes: &[Vec<Point>], case: usize) {
    let corners = rectangle.corners();
    let middle = corners[0].midpoint(corners[2]);
    for corner in corners {
        assert!(
            inside_or_on(outline, corner),
            "{case}: {corner:?} of {rectangle:?}"
        );
    }
    for (a, b) in edges(&corners) {
        for step in 0..200 {
            let point = a.lerp(b, f64::from(step) / 200.0).lerp(middle, 1e-9);
            let good = inside(outline, point) && !holes.iter().any(|hole| inside(hole, point));
            assert!(good, "{case}: {point:?} of {rectangle:?} is outside");
        }
    }
}

#[test]
fn rectangles_are_inside_and_none_found_is_larger() {
    let mut random = Random(2);
    for case in 0..160 {
        let (outline, holes, grain_deg) = random.panel(case);
        let rectangle = match largest_rectangle(&outline, &holes, grain_deg) {
            Ok(rectangle) => rectangle,
            Err(error) => panic!("{case}: {error}"),
        };
        assert_inside(&rectangle, &outline, &holes, case);
        let rings: Vec<Vec<Point>> = [&outline]
            .into_iter()
            .chain(&holes)
            .map(|ring| turned(ring, grain_deg))
            .collect();
        let searched = searched(&rings);
        let drawn_in = 2e-6 * (rectangle.width + rectangle.height) + 1e-6;
        assert!(
            rectangle.area_mm2 >= searched - drawn_in,
            "{case}: {rectangle:?}, but {searched} was found"
        );
    }
}

/// Height that is free in a strip across the grain from `left` to `right` about a point, if the point is cloth.
fn free_height(rings: &[Vec<Point>], left: f64, right: f64, point: Point) -> Option<f64> {
    let cloth = inside(&rings[0], point) && !rings[1..].iter().any(|hole| inside(hole, point));
    let (mut low, mut high) = (f64::NEG_INFINITY, f64::INFINITY);
    for (a, b) in rings.iter().flat_map(|ring| edges(ring)) {
        let (a, b) = if a.x <= b.x { (a, b) } else { (b, a) };
        if b.x <= left || a.x >= right {
            continue;
        }
        let level = |x: f64| {
            if a.x == b.x {
                a.y
            } else {
                a.y + (x - a.x) / (b.x - a.x) * (b.y - a.y)
            }
        };
        let (one, other) = (level(a.x.max(left)), level(b.x.min(right)));
        let (bottom, top) = if a.x == b.x {
            (a.y.min(b.y), a.y.max(b.y))
        } else {
            (one.min(other), one.max(other))
        };
        if top <= point.y {
            low = low.max(top);
        } else if bottom >= point.y {
            high = high.min(bottom);
        } else {
            return None;
        }
    }
    cloth.then_some(high - low)
}

#[test]
fn tall_rectangles_are_inside_and_none_found_is_taller() {
    let mut random = Random(7);
    let (mut found, mut tried) = (0, 0);
    for case in 0..160 {
        let (outline, holes, grain_deg) = random.panel(case);
        let largest = largest_rectangle(&outline, &holes, grain_deg).unwrap();
        let rings: Vec<Vec<Point>> = [&outline]
            .into_iter()
            .chain(&holes)
            .map(|ring| turned(ring, grain_deg))
            .collect();
        let mut last = f64::INFINITY;
        for share in [0.1, 0.5, 1.0, 1.5, 3.0] {
            let width = share * largest.width;
            let drawn_in = 2e-6 * (largest.width + largest.height) + 1e-6;
            let height = match tallest_rectangle(&outline, width, &holes, grain_deg) {
                Ok(rectangle) => {
                    found += 1;
                    assert_inside(&rectangle, &outline, &holes, case);
                    assert!((rectangle.width - width).abs() < 3e-6, "{case}");
                    rectangle.height
                }
                Err(error) => {
                    assert!(
                        share > 1.0 && error.argument() == "width",
                        "{case}: {error}"
                    );
                    0.0
                }
            };
            // Wider is never taller, and never larger than the largest.
            assert!(height <= last + 4e-6, "{case}");
            assert!(height * width <= largest.area_mm2 + drawn_in, "{case}");
            if share == 1.0 {
                assert!(height >= largest.height - 4e-6, "{case}");
            }
            last = height;
            for _ in 0..200 {
                let point = random.point(250.0);
                let left = point.x - random.between(0.0, width);
                if let Some(free) = free_height(&rings, left, left + width, point) {
                    tried += 1;
                    assert!(
                        free <= height + 4e-6,
                        "{case}: {free} at {left}, not {height}"
                    );
                }
            }
        }
    }
    assert!(
        found > 500 && tried > 3000,
        "{found} rectangles, {tried} tried"
    );
}

#[test]
fn a_rectangle_of_what_is_usable_is_usable() {
    let mut random = Random(3);
    for case in 0..40 {
        let outline = random.star(Point::ZERO, 300.0, 4 + case % 20);
        let losses = vec![random.between(0.0, 12.0); outline.len()];
        let spot = random.point(40.0);
        let flaws = if inside(&outline, spot) {
            vec![vec![spot]]
        } else {
            Vec::new()
        };
        let Ok(usable) = usable_panel(&outline, &losses, &flaws, 10.0, 0.1) else {
            continue;
        };
        let part = &usable.parts[0];
        let rectangle = largest_rectangle(&part.outline, &part.holes, 80.0).unwrap();
        for (a, b) in edges(&rectangle.corners()) {
            for step in 0..50 {
                let point = a.lerp(b, f64::from(step) / 50.0);
                assert!(
                    slack(point, &outline, &losses, &flaws, 10.0) > -1e-8,
                    "{case}"
                );
            }
        }
    }
}

#[test]
fn the_answer_is_the_same_whichever_way_round_and_wherever_it_starts() {
    let mut random = Random(4);
    for case in 0..40 {
        let outline = random.star(Point::ZERO, 250.0, 5 + case % 9);
        let losses: Vec<f64> = outline.iter().map(|_| random.between(0.0, 9.0)).collect();
        let first = usable_panel(&outline, &losses, &[], 0.0, 0.1).unwrap();
        let mut other = (outline.clone(), losses.clone());
        other.0.rotate_left(2);
        other.1.rotate_left(2);
        other.0.reverse();
        other.1.reverse();
        other.1.rotate_left(1);
        let second = usable_panel(&other.0, &other.1, &[], 0.0, 0.1).unwrap();
        assert_eq!(first.parts.len(), second.parts.len(), "{case}");
        assert!((first.area_mm2 - second.area_mm2).abs() < 1e-3, "{case}");
        let first = largest_rectangle(&outline, &[], 33.0).unwrap();
        let second = largest_rectangle(&other.0, &[], 33.0 - 360.0).unwrap();
        assert!((first.area_mm2 - second.area_mm2).abs() < 0.01, "{case}");
    }
}

#[test]
fn odd_input_gives_an_error_or_an_answer_and_never_a_panic() {
    let values = [
        f64::NAN,
        f64::INFINITY,
        -f64::INFINITY,
        0.0,
        -0.0,
        5e-324,
        1e-9,
        1e-6,
        0.1,
        1.0,
        100.0,
        99_999.999_999,
        1e5,
        1.000_000_1e5,
        1e300,
        -1.0,
        -1e5,
    ];
    let mut random = Random(5);
    let mut odd = || values[random.between(0.0, values.len() as f64) as usize];
    let mut good = 0;
    for case in 0..20_000 {
        // Few values, so that repeated, collinear, touching and hair-thin shapes are common.
        let tame = case % 4 != 0;
        let mut point = || {
            let mut value = || loop {
                let value = odd();
                if !tame || value.abs() <= 1e5 {
                    return value;
                }
            };
            Point::new(value(), value())
        };
        let outline: Vec<Point> = (0..case % 7).map(|_| point()).collect();
        let other: Vec<Point> = (0..case % 5).map(|_| point()).collect();
        let losses: Vec<f64> = outline
            .iter()
            .map(|_| {
                if case % 3 == 0 {
                    odd()
                } else {
                    odd().abs().min(1.0)
                }
            })
            .collect();
        let others = if case % 2 == 0 {
            vec![other]
        } else {
            Vec::new()
        };
        let usable = usable_panel(&outline, &losses, &others, odd(), 0.1);
        let grain_deg = 90.0 * (case % 9) as f64 / 4.0;
        let rectangle = largest_rectangle(&outline, &others, grain_deg);
        let width = odd();
        if let Ok(tall) = tallest_rectangle(&outline, width, &others, grain_deg) {
            good += 1;
            assert!(tall.height > 0.0 && (tall.width - width).abs() < 3e-6);
        }
        if let Ok(usable) = usable {
            good += 1;
            assert!(usable.share > 0.0 && usable.share <= 1.0 && !usable.parts.is_empty());
        }
        if let Ok(rectangle) = rectangle {
            good += 1;
            assert!(rectangle.width > 0.0 && rectangle.height > 0.0);
        }
    }
    assert!(good > 500);
}

#[test]
fn flaws_that_touch_in_a_point_leave_rings_that_can_be_used() {
    let square = |x: f64, y: f64, side: f64| {
        [(x, y), (x + side, y), (x + side, y + side), (x, y + side)]
            .map(Point::from)
            .to_vec()
    };
    let use_of = |flaws: &[Vec<Point>]| {
        let usable = usable_panel(&square(0.0, 0.0, 300.0), &[0.0; 4], flaws, 0.0, 0.1).unwrap();
        for part in &usable.parts {
            largest_rectangle(&part.outline, &part.holes, 90.0).unwrap();
        }
        (usable.parts.len(), usable.area_mm2)
    };
    let diagonal = [square(100.0, 100.0, 50.0), square(150.0, 150.0, 50.0)];
    assert_eq!(use_of(&diagonal), (1, 85_000.0));
    let at_the_edge = [(0.0, 150.0), (50.0, 120.0), (50.0, 180.0)].map(Point::from);
    assert_eq!(use_of(&[at_the_edge.to_vec()]), (1, 88_500.0));
    let corner_to_corner = [(0.0, 150.0), (150.0, 0.0), (300.0, 150.0), (150.0, 300.0)];
    assert_eq!(
        use_of(&[corner_to_corner.map(Point::from).to_vec()]),
        (4, 45_000.0)
    );
    // Four patches round a square of good cloth, touching it and one another at its corners.
    let round = [
        (100.0, 100.0),
        (150.0, 150.0),
        (200.0, 100.0),
        (150.0, 50.0),
    ];
    assert_eq!(
        use_of(&round.map(|(x, y)| square(x, y, 50.0))),
        (2, 80_000.0)
    );
}

#[test]
fn far_from_the_origin_the_answer_is_the_same() {
    let mut random = Random(7);
    for case in 0..100 {
        let outline = random.star(Point::ZERO, 500.0, 3 + case % 20);
        let far = Vec2::new(99_500.0, -99_500.0);
        let moved: Vec<Point> = outline.iter().map(|&point| point + far).collect();
        let grain_deg = random.between(0.0, 360.0);
        let here = largest_rectangle(&outline, &[], grain_deg).unwrap();
        let there = largest_rectangle(&moved, &[], grain_deg).unwrap();
        let drawn_in = 4e-6 * (here.width + here.height);
        assert!((here.area_mm2 - there.area_mm2).abs() < drawn_in, "{case}");
    }
}

#[test]
fn needles_and_hairs() {
    let ring = |points: &[(f64, f64)]| points.iter().map(|&p| Point::from(p)).collect::<Vec<_>>();
    // A needle 1e-3 wide at its foot and 1 m long.
    let needle = ring(&[(0.0, 0.0), (1e-3, 0.0), (0.0, 1000.0)]);
    let rectangle = largest_rectangle(&needle, &[], 90.0).unwrap();
    assert!((rectangle.area_mm2 - 0.25).abs() < 0.01);
    let error = usable_panel(&needle, &[0.0; 3], &[], 0.0, 0.1).unwrap_err();
    assert_eq!(
        (error.kind(), error.argument()),
        (ErrorKind::Outline, "outline")
    );
    // A slit cut by a hair's breadth of air across a panel: the halves are joined at one end.
    let slit = ring(&[
        (0.0, 0.0),
        (400.0, 0.0),
        (400.0, 99.999_999),
        (10.0, 100.0),
        (400.0, 100.000_001),
        (400.0, 200.0),
        (0.0, 200.0),
    ]);
    let rectangle = largest_rectangle(&slit, &[], 90.0).unwrap();
    assert!(
        (rectangle.area_mm2 - 40_000.0).abs() < 0.01,
        "{rectangle:?}"
    );
    let usable = usable_panel(&slit, &[0.0, 0.0, 5.0, 5.0, 0.0, 0.0, 0.0], &[], 0.0, 0.1).unwrap();
    assert_eq!(usable.parts.len(), 1);
    assert!(
        (usable.area_mm2 - (80_000.0 - 390.0 * 10.0 - 39.27)).abs() < 0.5,
        "{usable:?}"
    );
}

#[test]
fn two_hundred_corners_take_well_under_a_second() {
    let mut random = Random(6);
    let outline = random.star(Point::ZERO, 500.0, 200);
    let losses = vec![6.0; 200];
    let clock = std::time::Instant::now();
    let usable = usable_panel(&outline, &losses, &[], 0.0, 0.1).unwrap();
    let cut = clock.elapsed();
    let rectangle = largest_rectangle(&outline, &[], 77.0).unwrap();
    let found = clock.elapsed() - cut;
    // The limit allows for a busy machine and an unoptimised build.
    assert!(cut.as_secs() < 5 && found.as_secs() < 5);
    assert!(rectangle.area_mm2 > 0.0 && usable.share < 1.0);
}
