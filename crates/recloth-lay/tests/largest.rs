//! The largest that still fits: cases worked by hand.

use std::error::Error as StdError;

use recloth_lay::{
    Options, Outward, Panel, Part, Shortage, Values, check, fullest, largest, longest,
};

type Outcome<T> = Result<T, Box<dyn StdError>>;

fn rectangle(width: f64, height: f64) -> [(f64, f64); 4] {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
}

fn cloth(width: f64, height: f64) -> Panel {
    Panel::new("cloth", rectangle(width, height)).expect("a good panel")
}

fn options(budget: u64) -> Options {
    Options {
        budget,
        ..Options::default()
    }
}

fn tenths(low: f64, high: f64) -> Values {
    Values {
        low,
        high,
        step: 0.1,
    }
}

#[test]
fn two_of_a_length_on_one_cloth() {
    // 2 x 260.7 = 521.4; one more tenth of each is 521.6, which is proved too much by area, as the cloth is no wider.
    let cloth = [cloth(80.0, 521.5)];
    let parts_at = |length: f64| -> Outcome<_> {
        Ok(vec![Part {
            as_drawn: 2,
            ..Part::new("band", rectangle(80.0, length))
        }])
    };
    let found = largest(tenths(100.0, 500.0), parts_at, &cloth, &options(50_000_000)).unwrap();
    assert_eq!((found.value, found.refused), (Some(260.7), Some(260.8)));
    let fit = found.fit.unwrap();
    assert_eq!(check(&found.parts, &cloth, &fit.lay), Ok(()));
    assert_eq!(fit.lay.placements.len(), 2);
    assert!(matches!(found.shortage, Some(Shortage::Area { .. })));
    assert!(found.evaluations <= 50_000_000);
}

#[test]
fn all_values_fit_or_none_does() {
    let cloth = [cloth(80.0, 500.0)];
    let parts_at =
        |length: f64| -> Outcome<_> { Ok(vec![Part::new("band", rectangle(80.0, length))]) };
    let all = largest(tenths(100.0, 500.0), parts_at, &cloth, &options(1_000_000)).unwrap();
    assert_eq!((all.value, all.refused), (Some(500.0), None));
    let none = largest(tenths(500.5, 600.0), parts_at, &cloth, &options(1_000_000)).unwrap();
    assert_eq!((none.value, none.refused), (None, Some(500.5)));
    assert!(none.fit.is_none() && none.parts.is_empty());
    // Proofs by bounds cost nothing.
    assert_eq!(none.evaluations, 0);
    let one = largest(tenths(400.0, 400.0), parts_at, &cloth, &options(1_000_000)).unwrap();
    assert_eq!(one.value, Some(400.0));
}

#[test]
fn what_is_neither_found_nor_refused_lies_between() {
    // Two triangles as drawn on cloth with a nap: each square of them would need a turn. By area a pair of legs of 100
    // fills the square; as they may lie, side by side and overlapping boxes only, less is had.
    let square = [cloth(100.0, 100.0).with_nap(true)];
    let parts_at = |leg: f64| -> Outcome<_> {
        Ok(vec![Part {
            as_drawn: 2,
            ..Part::new("flap", [(0.0, 0.0), (leg, 0.0), (0.0, leg)])
        }])
    };
    let found = largest(tenths(20.0, 120.0), parts_at, &square, &options(3_000_000)).unwrap();
    // Shifted along the diagonal by half a leg, the two just touch and need a box of 1.5 legs: 100 / 1.5 = 66.6.
    assert_eq!(found.value, Some(66.6));
    // More than 10 000 mm² of triangles: 2 x leg² / 2, a little over 100 for the checker's tolerance.
    assert_eq!(found.refused, Some(100.1));
}

#[test]
fn errors_end_it() {
    let cloth = [cloth(80.0, 500.0)];
    let refuse = |value: f64| -> Outcome<Vec<Part>> { Err(format!("no draft at {value}").into()) };
    let error = largest(tenths(1.0, 2.0), refuse, &cloth, &options(1000)).unwrap_err();
    assert_eq!(error.to_string(), "no draft at 2");
    let crossed = |value: f64| -> Outcome<_> {
        Ok(vec![Part::new(
            "bow",
            [(0.0, 0.0), (value, value), (value, 0.0), (0.0, value)],
        )])
    };
    let error = largest(tenths(1.0, 2.0), crossed, &cloth, &options(1000)).unwrap_err();
    assert_eq!(
        error.to_string(),
        "part \"bow\": outline: the outline crosses itself or has no area (at 0)"
    );
    let bad = [
        (
            2.0,
            1.0,
            0.1,
            "values: high = 1 leaves no solution: it must be at least 2",
        ),
        (
            0.0,
            f64::NAN,
            0.1,
            "values: high = NaN is not a finite number",
        ),
        (
            0.0,
            1.0,
            0.0,
            "values: step = 0 is not between 0.000001 and 1000000",
        ),
        (
            0.0,
            1e4,
            1e-6,
            "values: step = 0.000001 leaves no solution: it must be at least 0.00001",
        ),
    ];
    for (low, high, step, said) in bad {
        let values = Values { low, high, step };
        let error = largest(values, refuse, &cloth, &options(1000)).unwrap_err();
        assert_eq!(error.to_string(), said);
    }
}

#[test]
fn longer_and_fuller_at_either_end() {
    // A skirt 300 by 600 on 340.5 by 655.5, its grain across the page, so that its length is.
    let skirt = [Part {
        grain_deg: 0.0,
        ..Part::new("skirt", rectangle(600.0, 300.0))
    }];
    let cloth = [cloth(340.5, 655.5)];
    let out = |beyond: f64, opposite: bool| Outward {
        part: 0,
        beyond,
        most: 100.0,
        opposite,
    };
    for (beyond, opposite) in [(300.0, false), (-300.0, true)] {
        let found = longest(&skirt, out(beyond, opposite), &cloth, &options(5_000_000)).unwrap();
        assert_eq!((found.value, found.refused), (Some(55.5), Some(55.6)));
        let xs = found.parts[0].outline.iter().map(|p| p.x);
        let (low, high) = xs.fold((f64::MAX, f64::MIN), |(low, high), x| {
            (low.min(x), high.max(x))
        });
        let ends = if opposite {
            (-55.5, 600.0)
        } else {
            (0.0, 655.5)
        };
        assert_eq!((low, high), ends);
    }
    // To the right of grain that runs to the right is down the page.
    for (beyond, opposite) in [(-150.0, false), (150.0, true)] {
        let found = fullest(&skirt, out(beyond, opposite), &cloth, &options(5_000_000)).unwrap();
        assert_eq!((found.value, found.refused), (Some(40.5), Some(40.6)));
    }
    let error = longest(&skirt, out(600.0, false), &cloth, &options(1000)).unwrap_err();
    assert_eq!(
        error.to_string(),
        "outward, of \"skirt\": beyond = 600 leaves no solution: it must be at least 0 and less than 600"
    );
    let nobody = Outward {
        part: 3,
        ..out(300.0, false)
    };
    let error = longest(&skirt, nobody, &cloth, &options(1000)).unwrap_err();
    assert_eq!(
        error.to_string(),
        "outward: part = 3 leaves no solution: it must be 0"
    );
}

#[cfg(feature = "serde")]
#[test]
fn the_answer_goes_out_and_comes_back_as_json() {
    use recloth_lay::Largest;
    let skirt = [Part::new("skirt", rectangle(300.0, 600.0))];
    let text = r#"{"part": 0, "beyond": 300, "most": 50}"#;
    let outward: Outward = serde_json::from_str(text).unwrap();
    let found = longest(&skirt, outward, &[cloth(300.0, 620.0)], &options(5_000_000)).unwrap();
    assert_eq!(found.value, Some(20.0));
    let text = serde_json::to_string(&found).unwrap();
    assert_eq!(serde_json::from_str::<Largest>(&text).unwrap(), found);
}
