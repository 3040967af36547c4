//! Pieces written as JSON and read back.

use recloth::draft::{Allowances, Centre, SkirtPanel};
use recloth::outline::{Curve, Edge, Piece};

fn front() -> Piece {
    let panel = SkirtPanel {
        name: "front".into(),
        panel_width: 242.0,
        waist: 190.0,
        hip: 250.0,
        hip_depth: 200.0,
        length: 600.0,
        hem_width: 290.0,
        darts: 1,
        largest_intake: 30.0,
        dart_length: 110.0,
        side_rise: 12.0,
        centre: Centre::Fold,
        allowances: Allowances::default(),
    };
    panel
        .draft()
        .expect("a panel that can be made")
        .pieces
        .remove(0)
}

#[test]
fn a_piece_comes_back_the_same() {
    let piece = front();
    let text = serde_json::to_string(&piece).unwrap();
    let back: Piece = serde_json::from_str(&text).unwrap();
    assert_eq!(back, piece);
}

#[test]
fn a_piece_is_written_with_little() {
    let text = r#"{"name": "triangle", "edges": [
        {"name": "a", "curve": {"segment": {"start": {"x": 0, "y": 0}, "end": {"x": 9, "y": 0}}}},
        {"name": "b", "curve": {"segment": {"start": {"x": 9, "y": 0}, "end": {"x": 0, "y": 9}, "bulge": 0.2}},
         "role": "hem", "allowance": 3, "drawn": "cut", "corner": "mirrored_on_this"},
        {"name": "c", "curve": {"cubic": {"p0": {"x": 0, "y": 9}, "p1": {"x": 0, "y": 6}, "p2": {"x": 0, "y": 3},
         "p3": {"x": 0, "y": 0}}}, "corner": {"pointed": {"limit": 2}}}
    ]}"#;
    let piece: Piece = serde_json::from_str(text).unwrap();
    assert_eq!(piece.edges()[1].allowance, 3.0);
    assert!(piece.cut_line(0.1).is_ok());
}

#[test]
fn a_bad_piece_is_refused_with_the_reason() {
    let mut value = serde_json::to_value(front()).unwrap();
    value["edges"][0]["curve"]["segment"]["end"]["y"] = 0.5.into();
    let error = serde_json::from_value::<Piece>(value).unwrap_err();
    assert!(error.to_string().starts_with("gap[0] = "), "{error}");
}

#[test]
fn a_piece_walked_the_other_way_comes_back_too() {
    // A notch may stand a rounding beyond the end of its edge; mirrored, that was before its start.
    let piece = Piece::new(
        "strip",
        vec![
            Edge::seam("bottom", Curve::line((0.0, 0.0), (300.0, 0.0)), 10.0).notch(
                "end",
                300.0 + 5e-7,
                1,
            ),
            Edge::seam("end", Curve::line((300.0, 0.0), (0.0, 50.0)), 10.0),
            Edge::seam("start", Curve::line((0.0, 50.0), (0.0, 0.0)), 10.0),
        ],
    );
    let mirrored = piece.unwrap().mirror();
    let text = serde_json::to_string(&mirrored).unwrap();
    assert_eq!(serde_json::from_str::<Piece>(&text).unwrap(), mirrored);
}

#[test]
fn a_panel_comes_back_the_same_and_is_checked() {
    use recloth::panel::{CornerReading, Flaw, Panel, SpareReading};
    let corner = |start, end, from_start, from_end| CornerReading {
        start,
        end,
        from_start,
        from_end,
        right: false,
    };
    let panel = Panel::by_triangles(
        "front",
        300.0,
        &[corner(0, 1, 500.0, 400.0), corner(0, 2, 400.0, 300.0)],
    )
    .and_then(|panel| {
        panel.with_spares(&[SpareReading {
            from: 1,
            to: 3,
            reading: 490.0,
        }])
    })
    .and_then(|panel| panel.with_flaws(vec![Flaw::new([(9.0, 9.0)], 3.0).called("burn")]))
    .unwrap();
    let text = serde_json::to_string(&panel).unwrap();
    assert_eq!(serde_json::from_str::<Panel>(&text).unwrap(), panel);
    // A part of it keeps the doubt without the reading.
    let part = panel.usable(&[0.0; 4], 0.1).unwrap().remove(0);
    let text = serde_json::to_string(&part).unwrap();
    assert!(!text.contains("spares"), "{text}");
    assert_eq!(
        serde_json::from_str::<Panel>(&text).unwrap().doubts(),
        panel.doubts()
    );

    let outline = r#"[{"x":0,"y":0},{"x":9,"y":9},{"x":9,"y":0},{"x":0,"y":9}]"#;
    let crossed = serde_json::from_str::<Panel>(&format!(r#"{{"name":"a","outline":{outline}}}"#));
    assert!(crossed.unwrap_err().to_string().contains("crosses itself"));
    let unknown = serde_json::from_str::<Panel>(r#"{"name":"a","outline":[],"face":"two"}"#);
    assert!(
        unknown
            .unwrap_err()
            .to_string()
            .contains("unknown field `face`")
    );
}
