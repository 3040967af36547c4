//! Parts, panels, options and answers as JSON, as the bindings hand them over.
#![cfg(feature = "serde")]

use recloth_lay::{
    Fit, Fold, Lay, MatchSide, Options, Panel, Part, Repeat, Shows, Strip, StripLay, StripOptions,
    check, fit, strip,
};
use serde_json::{from_str, json, to_value};

#[test]
fn what_is_left_out_has_its_default() {
    let outline = r#"[{"x":0,"y":0},{"x":100,"y":0},{"x":0,"y":50}]"#;
    let part: Part = from_str(&format!(r#"{{"name":"pocket","outline":{outline}}}"#)).unwrap();
    assert_eq!(
        part,
        Part::new("pocket", [(0.0, 0.0), (100.0, 0.0), (0.0, 50.0)])
    );
    let panel: Panel = from_str(&format!(
        r#"{{"name":"back","outline":{outline},"flaws":[{{"outline":[{{"x":9,"y":9}}]}}],"faces":"two"}}"#
    ))
    .unwrap();
    assert_eq!(
        (panel.grain_deg(), panel.nap(), panel.flaws()[0].margin),
        (90.0, false, 0.0)
    );
    assert_eq!(from_str::<Options>("{}").unwrap(), Options::default());
    let sided: Part = from_str(&format!(
        r#"{{"name":"a","outline":{outline},"shows":"either"}}"#
    ))
    .unwrap();
    assert_eq!(sided.shows, Shows::Either);
}

#[test]
fn points_to_match_and_repeats_come_and_go() {
    let outline = r#"[{"x":0,"y":0},{"x":100,"y":0},{"x":0,"y":50}]"#;
    let part: Part = from_str(&format!(
        r#"{{"name":"back","outline":{outline},"matches":[{{"name":"hip","at":{{"x":9,"y":8}}}},{{"name":"waist","at":{{"x":1,"y":2}},"side":"both"}}]}}"#
    ))
    .unwrap();
    assert_eq!(part.matches[0].side, MatchSide::Own);
    assert_eq!(part.matches[1].side, MatchSide::Both);
    assert_eq!(to_value(&part).unwrap()["matches"][1]["side"], "both");
    let panel = |repeat: &str| {
        from_str::<Panel>(&format!(
            r#"{{"name":"back","outline":{outline},"repeat":{repeat}}}"#
        ))
    };
    let checked = panel(r#"{"along":80,"from":{"x":3,"y":4}}"#).unwrap();
    assert_eq!(
        checked.repeat(),
        Some(Repeat::new(80.0, 0.0).beginning_at((3.0, 4.0)))
    );
    assert_eq!(
        from_str::<Panel>(&serde_json::to_string(&checked).unwrap()).unwrap(),
        checked
    );
    assert!(
        panel(r#"{"along":0.5}"#)
            .unwrap_err()
            .to_string()
            .contains("along = 0.5 is not between 1 and 2000")
    );
}

#[test]
fn a_slip_in_a_name_is_refused() {
    let text = r#"{"name":"pocket","outline":[],"grain":90}"#;
    assert!(
        from_str::<Part>(text)
            .unwrap_err()
            .to_string()
            .contains("unknown field `grain`")
    );
    assert!(from_str::<Options>(r#"{"effort":3}"#).is_err());
}

#[test]
fn answers_go_out_and_come_back() {
    let rectangle = |w: f64, h: f64| [(0.0, 0.0), (w, 0.0), (w, h), (0.0, h)];
    let parts = [
        Part::new("pocket", rectangle(50.0, 60.0)),
        Part::new("band", rectangle(50.0, 210.0)),
    ];
    let panels = [Panel::new("back", rectangle(100.0, 200.0)).unwrap()];
    let found = fit(&parts, &panels, &Options::default()).unwrap();
    let text = serde_json::to_string(&found).unwrap();
    assert_eq!(from_str::<Fit>(&text).unwrap(), found);
    let value = to_value(&found).unwrap();
    assert_eq!(
        value["alone"][1]["answer"],
        json!({"cannot": {"along": {"needed": 210.0, "there": 200.0}}})
    );
    assert_eq!(
        value["together"],
        json!({"cannot": {"no_panel": {"part": 1, "hand": "as_drawn"}}})
    );
    let mut lay = found.lay;
    lay.placements[0].shift.x += 1000.0;
    let complaints = to_value(check(&parts, &panels, &lay).unwrap_err()).unwrap();
    assert_eq!(complaints[0]["outside"]["part"], "pocket");
}

#[test]
fn folds_are_written_where_there_are_some_and_read_back() {
    let half = [(0.0, 0.0), (60.0, 0.0), (40.0, 80.0), (0.0, 80.0)];
    let front = Part::on_fold("front", half, (0.0, 0.0), (0.0, 80.0)).unwrap();
    let value = to_value(&front).unwrap();
    assert_eq!(
        value["fold"],
        json!([{"x": 0.0, "y": 0.0}, {"x": 0.0, "y": 80.0}])
    );
    assert_eq!(from_str::<Part>(&value.to_string()).unwrap(), front);
    let cloth: Strip = from_str(r#"{"width": 130, "folded": true}"#).unwrap();
    let options = StripOptions {
        budget: 1000,
        ..StripOptions::default()
    };
    let found = strip(&[front], &cloth, &options).unwrap();
    let value = to_value(&found).unwrap();
    let ends =
        json!({"panel": 0, "from": {"x": 0.0, "y": 65.0}, "to": {"x": found.length, "y": 65.0}});
    assert_eq!(value["lay"]["folds"], json!([ends]));
    assert_eq!(from_str::<StripLay>(&value.to_string()).unwrap(), found);
    // Without folds nothing is said of them, and what says nothing has none.
    let plain = Part::new("pocket", half);
    assert!(to_value(&plain).unwrap().get("fold").is_none());
    assert!(to_value(Strip::new(9.0)).unwrap().get("folded").is_none());
    let opened = r#"{"placements":[],"unplaced":[],"spacing":0.0}"#;
    assert_eq!(serde_json::to_string(&Lay::default()).unwrap(), opened);
    assert_eq!(from_str::<Lay>(opened).unwrap(), Lay::default());
    assert!(from_str::<Fold>(r#"{"panel":0,"from":{"x":0,"y":0}}"#).is_err());
}
