//! `tests/vectors` of the functions of shapes: usable panels and rectangles.
//!
//! A ring is `x y x y ...`; rings of a list are separated by `;`. The other columns are as in every vectors file; the
//! outputs here are `parts`, `holes` (of all parts), `area_mm2`, `share`, and a rectangle's corner `x` and `y`.

use recloth::Error;
use recloth::panel::{PanelRectangle, largest_rectangle, tallest_rectangle, usable_panel};

use kurbo::Point;

/// One row, by the names of the columns.
struct Row {
    head: csv::StringRecord,
    cells: csv::StringRecord,
}

impl Row {
    fn text(&self, name: &str) -> &str {
        let column = self.head.iter().position(|head| head == name);
        column
            .and_then(|column| self.cells.get(column))
            .unwrap_or_else(|| panic!("no column {name}"))
    }

    fn number(&self, name: &str) -> f64 {
        numbers(self.text(name))[0]
    }

    fn rings(&self, name: &str) -> Vec<Vec<Point>> {
        let rings = self.text(name).split(';').map(|ring| {
            let values = numbers(ring);
            assert!(
                values.len().is_multiple_of(2),
                "{}: odd number of values",
                self.text("id")
            );
            values
                .chunks(2)
                .map(|xy| Point::new(xy[0], xy[1]))
                .collect()
        });
        rings.filter(|ring: &Vec<Point>| !ring.is_empty()).collect()
    }

    /// What is wrong with the outputs of a good row, or with the status and the argument named of a bad one.
    fn complaints(&self, answer: Result<Vec<(&str, f64)>, Error>) -> Vec<String> {
        let id = self.text("id");
        let status: i32 = self.text("status").parse().expect("a status");
        match answer {
            Ok(outputs) if status == 0 => outputs
                .iter()
                .filter(|(name, _)| !self.text(name).is_empty())
                .filter(|&&(name, value)| !self.close(name, value))
                .map(|(name, value)| format!("{id}: {name} is {value}"))
                .collect(),
            Ok(outputs) => vec![format!("{id}: {outputs:?}, not status {status}")],
            Err(error) => {
                let named = self.text("comment").split(':').next();
                if error.kind().code() == status && named == Some(error.argument()) {
                    Vec::new()
                } else {
                    vec![format!("{id}: {:?}, {error}", error.kind())]
                }
            }
        }
    }

    /// Whether an output is as the row has it. Counts are exact; the tolerance is that of lengths and areas, and a share
    /// has the area's over the whole panel, and the rounding of its seventh decimal.
    fn close(&self, name: &str, value: f64) -> bool {
        let want = self.number(name);
        let exact = want.to_bits() == value.to_bits();
        match (name, self.text("tolerance")) {
            ("parts" | "holes", _) | (_, "exact") => exact,
            ("share", tolerance) => {
                let panel = self.number("area_mm2") / want;
                let tolerance: f64 = tolerance.parse().expect("a tolerance");
                (want - value).abs() <= tolerance / panel + 5e-8
            }
            (_, tolerance) => (want - value).abs() <= tolerance.parse().expect("a tolerance"),
        }
    }
}

fn numbers(text: &str) -> Vec<f64> {
    text.split_whitespace()
        .map(|item| {
            item.parse()
                .unwrap_or_else(|_| panic!("{item} is no number"))
        })
        .collect()
}

fn rows(name: &str) -> Vec<Row> {
    let path = format!(
        "{}/../../tests/vectors/{name}.csv",
        env!("CARGO_MANIFEST_DIR")
    );
    let mut reader = csv::Reader::from_path(&path).expect("a vectors file");
    let head = reader.headers().expect("a head").clone();
    let rows: Vec<Row> = reader
        .records()
        .map(|cells| Row {
            head: head.clone(),
            cells: cells.expect("a row as long as the head"),
        })
        .collect();
    assert_eq!(rows[0].text("id"), "base");
    rows
}

#[test]
fn usable_panel_vectors() {
    let mut complaints = Vec::new();
    for row in rows("usable_panel") {
        let answer = usable_panel(
            &row.rings("outline")[0],
            &numbers(row.text("losses")),
            &row.rings("flaws"),
            row.number("margin"),
            row.number("accuracy"),
        );
        complaints.extend(row.complaints(answer.map(|usable| {
            let holes: usize = usable.parts.iter().map(|part| part.holes.len()).sum();
            vec![
                ("parts", usable.parts.len() as f64),
                ("holes", holes as f64),
                ("area_mm2", usable.area_mm2),
                ("share", usable.share),
            ]
        })));
    }
    assert!(complaints.is_empty(), "{complaints:#?}");
}

#[test]
fn largest_rectangle_vectors() {
    let mut complaints = Vec::new();
    for row in rows("largest_rectangle") {
        let answer = largest_rectangle(
            &row.rings("outline")[0],
            &row.rings("holes"),
            row.number("grain_deg"),
        );
        complaints.extend(row.complaints(answer.map(outputs)));
    }
    assert!(complaints.is_empty(), "{complaints:#?}");
}

#[test]
fn tallest_rectangle_vectors() {
    let mut complaints = Vec::new();
    for row in rows("tallest_rectangle") {
        let answer = tallest_rectangle(
            &row.rings("outline")[0],
            row.number("width"),
            &row.rings("holes"),
            row.number("grain_deg"),
        );
        complaints.extend(row.complaints(answer.map(outputs)));
    }
    assert!(complaints.is_empty(), "{complaints:#?}");
}

fn outputs(rectangle: PanelRectangle) -> Vec<(&'static str, f64)> {
    vec![
        ("x", rectangle.corner.x),
        ("y", rectangle.corner.y),
        ("width", rectangle.width),
        ("height", rectangle.height),
        ("area_mm2", rectangle.area_mm2),
    ]
}
