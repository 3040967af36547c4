//! Lays of any parts on any panels, and lays that come from elsewhere.

use arbitrary::Result;
use kurbo::{Point, Vec2};
use recloth_lay::{
    Change, Faces, Flaw, Give, Hand, Lay, LeftoverOptions, MatchPoint, MatchSide, Needed, Options,
    Outward, Panel, Part, Placement, Repeat, Shows, Step, Unplaced, check, fit, fullest,
    least_change, leftovers, longest, placed,
};
use recloth_sheet::{LayPanel, LayPiece, lay_drawing, svg};

use crate::{edit::edit, input::Input, panel::ring};

pub(crate) fn target(input: &mut Input) -> Result<()> {
    let mut parts = Vec::new();
    for index in 0..input.index(4)? {
        let outline = ring(input, 8, Point::ORIGIN, 200.0)?;
        let seam = match input.once_in(3)? {
            true => outline
                .iter()
                .map(|&p| (p.to_vec2() * 0.8).to_point())
                .collect(),
            false => Vec::new(),
        };
        parts.push(Part {
            role: (*input.0.choose(&["", "", "facing"])?).into(),
            seam,
            grain_deg: input.number([-360.0, 360.0], &[90.0, 0.0])?,
            tilt_deg: input.number([0.0, 20.0], &[0.0])?,
            as_drawn: input.0.int_in_range(0..=2)?,
            mirrored: input.0.int_in_range(0..=1)?,
            shows: *input
                .0
                .choose(&[Shows::Right, Shows::Wrong, Shows::Either, Shows::Both])?,
            either_way: input.once_in(2)?,
            crosswise: input.once_in(4)?,
            matches: matches(input)?,
            ..Part::new(format!("part {index}"), outline)
        });
    }
    let mut panels = Vec::new();
    for index in 0..input.index(3)? {
        let grain_deg = input.number([-360.0, 360.0], &[90.0, 0.0])?;
        let faces = *input.0.choose(&[Faces::One, Faces::Two])?;
        let nap = input.once_in(2)?;
        let outline = ring(input, 9, Point::ORIGIN, 500.0)?;
        let (mut holes, mut flaws) = (Vec::new(), Vec::new());
        if input.once_in(4)? {
            holes.push(ring(input, 5, Point::new(100.0, 50.0), 40.0)?);
        }
        if input.once_in(3)? {
            let flaw = ring(input, 4, Point::new(-60.0, 10.0), 30.0)?;
            let under: &[&str] = input
                .0
                .choose(&[&[][..], &["facing"], &["seam allowance"]])?;
            let flaw = Flaw::new(flaw, input.number([0.0, 50.0], &[0.0])?);
            flaws.push(flaw.under(under.iter().copied()));
        }
        let repeat = match input.once_in(3)? {
            true => Some(
                Repeat::new(
                    input.number([0.0, 300.0], &[0.0, 80.0])?,
                    input.number([0.0, 300.0], &[0.0, 60.0])?,
                )
                .beginning_at((input.number([-99.0, 99.0], &[0.0])?, 7.0)),
            ),
            false => None,
        };
        let plain = Panel::new(format!("panel {index}"), outline);
        let repeated = plain.clone().and_then(|panel| panel.with_repeat(repeat));
        if let (Ok(_), Some(repeat)) = (&plain, repeat) {
            assert_eq!(
                repeated.clone().map(|panel| panel.repeat()),
                repeat.checked().map(Some)
            );
        }
        let panel = repeated
            .and_then(|panel| panel.with_holes(holes))
            .and_then(|panel| panel.with_flaws(flaws))
            .and_then(|panel| panel.with_grain_deg(grain_deg));
        // What is no panel is none here either.
        let Ok(panel) = panel else { continue };
        let panel = panel.with_faces(faces).with_nap(nap);
        panels.push(panel);
    }
    let options = Options {
        spacing: input.number([0.0, 20.0], &[0.0, 5.0])?,
        seed: input.0.arbitrary()?,
        budget: 100_000,
        ..Options::default()
    };
    let lay = match fit(&parts, &panels, &options) {
        Ok(found) => {
            // What is found has passed the checker, and passes it again.
            assert_eq!(
                check(&parts, &panels, &found.lay),
                Ok(()),
                "{parts:?} {panels:?}"
            );
            found.lay
        }
        Err(error) => {
            assert!(!error.to_string().is_empty());
            Lay::default()
        }
    };
    draw(&parts, &panels, &lay);
    match leftovers(&parts, &panels, &lay, &LeftoverOptions::default()) {
        Ok(left) => {
            let there: f64 = panels.iter().map(Panel::area_mm2).sum();
            let all: f64 = left.iter().map(|shape| shape.area_mm2).sum();
            assert!(all <= there + 1e-3, "{all} of {there}");
        }
        Err(error) => assert!(!error.to_string().is_empty()),
    }
    change(&parts, &panels, &options, input)?;
    outward(&parts, &panels, &options, input)?;
    elsewhere(&parts, &panels, lay, input)
}

/// Points to match, of few names.
fn matches(input: &mut Input) -> Result<Vec<MatchPoint>> {
    let mut matches = Vec::new();
    if input.once_in(3)? {
        for _ in 0..input.index(3)? {
            let side = [MatchSide::Own, MatchSide::Other, MatchSide::Both];
            let (x, y) = (
                input.number([-200.0, 200.0], &[0.0])?,
                input.number([-200.0, 200.0], &[0.0])?,
            );
            matches.push(MatchPoint {
                name: (*input.0.choose(&["hip", "hip", "hem"])?).into(),
                at: Point::new(x, y),
                side: *input.0.choose(&side)?,
            });
        }
    }
    Ok(matches)
}

/// What must give: what is found to do passes the checker.
fn change(parts: &[Part], panels: &[Panel], options: &Options, input: &mut Input) -> Result<()> {
    let mut changes = Vec::new();
    for _ in 0..input.index(4)? {
        let direction = input.number([-360.0, 360.0], &[90.0, 0.0])?;
        let place = input.number([-200.0, 200.0], &[0.0])?;
        let kind = match input.index(6)? {
            0 => Give::Tilt {
                to_deg: input.number([0.0, 40.0], &[])?,
            },
            1 => Give::Join {
                across_deg: direction,
                from: place,
                to: input.number([-200.0, 200.0], &[0.0])?,
                allowance: input.number([0.0, 20.0], &[10.0])?,
            },
            2 => Give::Shorter {
                toward_deg: direction,
                beyond: place,
                most: input.number([0.1, 150.0], &[20.0])?,
            },
            3 => Give::Smaller {
                name: "smaller".into(),
                steps: vec![Step {
                    amount: input.number([0.0, 20.0], &[5.0])?,
                    outline: ring(input, 7, Point::ORIGIN, 150.0)?,
                }],
            },
            4 => Give::Instead {
                name: "instead".into(),
                parts: vec![Part::new("other", ring(input, 5, Point::ORIGIN, 100.0)?)],
            },
            _ => Give::Fewer {
                by: input.0.int_in_range(0..=3)?,
            },
        };
        let part = input.index(4)?;
        changes.push(Change { part, kind });
    }
    match least_change(parts, panels, &changes, options) {
        Ok(found) => {
            assert!(found.evaluations <= options.budget);
            match found.answer {
                Needed::Nothing(fit) => assert_eq!(check(parts, panels, &fit.lay), Ok(())),
                Needed::Changed { made, parts, fit } => {
                    assert_eq!(
                        check(&parts, panels, &fit.lay),
                        Ok(()),
                        "{made:?} {parts:?}"
                    );
                    assert!(fit.lay.unplaced.is_empty() && !made.is_empty());
                    assert!(made.iter().all(|made| !made.to_string().is_empty()));
                }
                Needed::Never { .. } | Needed::Undecided => {}
            }
        }
        Err(error) => assert!(!error.to_string().is_empty()),
    }
    Ok(())
}

/// How large a part may be: what is found passes the checker.
fn outward(parts: &[Part], panels: &[Panel], options: &Options, input: &mut Input) -> Result<()> {
    let outward = Outward {
        part: input.index(4)?,
        beyond: input.number([-200.0, 200.0], &[0.0])?,
        most: input.number([0.1, 200.0], &[50.0])?,
        opposite: input.once_in(2)?,
    };
    let further = if input.once_in(2)? { longest } else { fullest };
    match further(parts, outward, panels, options) {
        Ok(found) => {
            if let Some(fit) = &found.fit {
                assert_eq!(check(&found.parts, panels, &fit.lay), Ok(()));
            }
            assert_eq!(found.fit.is_some(), found.value.is_some());
            assert_eq!(found.shortage.is_some(), found.refused.is_some());
        }
        Err(error) => assert!(!error.to_string().is_empty()),
    }
    Ok(())
}

/// The checker judges whatever it is given, and says it in words.
fn elsewhere(parts: &[Part], panels: &[Panel], mut lay: Lay, input: &mut Input) -> Result<()> {
    if input.once_in(2)? {
        lay.placements.push(Placement {
            part: input.index(5)?,
            hand: *input.0.choose(&Hand::BOTH)?,
            panel: input.index(4)?,
            mirrored: input.once_in(2)?,
            turn_deg: input.number([-360.0, 360.0], &[0.0, 90.0])?,
            shift: Vec2::new(
                input.number([-500.0, 500.0], &[0.0])?,
                input.number([-500.0, 500.0], &[0.0])?,
            ),
        });
        lay.unplaced.push(Unplaced {
            part: input.index(5)?,
            hand: *input.0.choose(&Hand::BOTH)?,
            count: input.0.arbitrary()?,
        });
    }
    let mut json = serde_json::to_value(&lay).expect("a lay can be written");
    edit(&mut json, 3, input)?;
    if let Ok(lay) = serde_json::from_value::<Lay>(json)
        && let Err(complaints) = check(parts, panels, &lay)
    {
        assert!(
            complaints
                .iter()
                .all(|complaint| !complaint.to_string().is_empty())
        );
    }
    Ok(())
}

fn draw(parts: &[Part], panels: &[Panel], lay: &Lay) {
    let drawn: Vec<LayPanel> = panels
        .iter()
        .enumerate()
        .map(|(index, panel)| LayPanel {
            outline: panel.outline().to_vec(),
            pieces: lay
                .placements
                .iter()
                .filter(|placement| placement.panel == index)
                .map(|placement| LayPiece {
                    outline: placed(&parts[placement.part].outline, placement),
                    ..LayPiece::default()
                })
                .collect(),
            ..LayPanel::default()
        })
        .collect();
    if let Ok(drawing) = lay_drawing("lay", &drawn, 180.0, 250.0) {
        svg(&drawing).expect("what is drawn can be written");
    }
}
