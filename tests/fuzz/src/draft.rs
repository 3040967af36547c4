//! Drafts from any measures.

use arbitrary::Result;
use kurbo::Point;
use recloth::band::{BandMake, SquareEnds};
use recloth::draft::{
    Allowances, Centre, CircleSector, Draft, GatheredStrip, Hang, PanelLining, PatchPocket,
    SectionedBand, SkirtPanel, StraightBand,
};
use recloth::outline::Piece;

use crate::{input::Input, piece};

/// A draft of measures near good ones, or none.
pub(crate) fn draft(input: &mut Input) -> Result<Option<Draft>> {
    let kind = input.index(7)?;
    let mut near = |good: f64| -> Result<f64> {
        if input.once_in(3)? {
            input.number([0.0, 2.0 * good], &[good])
        } else {
            Ok(good * (0.9 + 0.2 * input.share()?))
        }
    };
    let allowances = Allowances {
        seam: near(15.0)?,
        hem: near(40.0)?,
    };
    let count = |number: f64| number as u32;
    let drafted = match kind {
        0 => PatchPocket {
            width: near(140.0)?,
            depth: near(160.0)?,
            corner_radius: near(20.0)?,
            allowances,
        }
        .draft(),
        1 => CircleSector {
            waist: near(700.0)?,
            length: near(600.0)?,
            fraction: near(0.5)?,
            pieces: count(near(2.0)?),
            allowances,
        }
        .draft(),
        2 => GatheredStrip {
            finished: near(900.0)?,
            ratio: near(1.6)?,
            depth: near(120.0)?,
            strips: count(near(3.0)?),
            allowances,
        }
        .draft(),
        3 => SectionedBand {
            lengths: (0..count(near(4.0)?) % 20)
                .map(|_| near(180.0))
                .collect::<Result<_>>()?,
            depth: near(60.0)?,
            top: near(650.0)?,
            ends: [SquareEnds::Both, SquareEnds::Neither][count(near(1.0)?) as usize % 2],
            curved: near(1.0)? > 1.0,
            allowance: near(10.0)?,
        }
        .draft(),
        4 => StraightBand {
            waist: near(700.0)?,
            overlap: near(40.0)?,
            depth: near(30.0)?,
            turn: near(1.0)?,
            make: [BandMake::Folded, BandMake::Faced][count(near(1.0)?) as usize % 2],
            allowance: near(10.0)?,
        }
        .draft(),
        _ => {
            let shell = SkirtPanel {
                name: "front".into(),
                panel_width: near(260.0)?,
                waist: near(190.0)?,
                hip: near(250.0)?,
                hip_depth: near(200.0)?,
                length: near(600.0)?,
                hem_width: near(290.0)?,
                darts: count(near(2.0)?),
                largest_intake: near(30.0)?,
                dart_length: near(110.0)?,
                side_rise: near(12.0)?,
                centre: [Centre::Fold, Centre::Seam][count(near(1.0)?) as usize % 2],
                allowances,
            };
            if kind == 5 {
                shell.draft()
            } else {
                PanelLining {
                    shell,
                    hang: if near(1.0)? > 1.0 {
                        Hang::Folded
                    } else {
                        Hang::Free { hem: near(25.0)? }
                    },
                    clearance: near(25.0)?,
                    ease: near(4.0)?,
                }
                .draft()
            }
        }
    };
    Ok(drafted.map_err(|error| error.to_string()).ok())
}

/// One good piece of a draft, so that operations have something to work on.
pub(crate) fn piece(input: &mut Input) -> Result<Option<Piece>> {
    let mut pieces = draft(input)?.map_or(Vec::new(), |draft| draft.pieces);
    if pieces.is_empty() {
        return Ok(None);
    }
    let index = input.index(pieces.len())?;
    Ok(Some(pieces.swap_remove(index)))
}

/// Every piece of a draft is a good one.
pub(crate) fn target(input: &mut Input) -> Result<()> {
    let Some(draft) = draft(input)? else {
        return Ok(());
    };
    assert!(draft.doubts < 1 << 53);
    assert!(!draft.pieces.is_empty());
    for drafted in &draft.pieces {
        piece::check(drafted);
        assert!(drafted.bounds().contains(Point::new(
            drafted.bounds().center().x,
            drafted.bounds().center().y
        )));
    }
    Ok(())
}
