//! Sample drafts, of invented measures: for the tests, and for the program that draws them.

use recloth::band::{BandMake, SquareEnds};
use recloth::bias::BindingFold;
use recloth::draft::*;
use recloth::outline::{Curve, Edge, Piece};

pub(crate) const ALLOWANCES: Allowances = Allowances {
    seam: 15.0,
    hem: 40.0,
};

/// F8's panel: 242 inside seams, 190 wanted, largest dart 30.
pub(crate) fn panel() -> SkirtPanel {
    SkirtPanel {
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
        allowances: ALLOWANCES,
    }
}

pub(crate) fn darted_skirt() -> DartedSkirt {
    DartedSkirt {
        waist: 720.0,
        hip: 980.0,
        hip_depth: 200.0,
        length: 600.0,
        flare: 30.0,
        forward: 10.0,
        front_panel: 250.0,
        back_panel: 235.0,
        front_darts: 1,
        back_darts: 2,
        largest_intake: 30.0,
        front_dart_length: 90.0,
        back_dart_length: 120.0,
        side_rise: 12.0,
        front_centre: Centre::Fold,
        back_centre: Centre::Seam,
        allowances: ALLOWANCES,
    }
}

/// F9: a front of 380, its button line shifted by 85, a stand of 18; its dart is 116 from the centre.
pub(crate) fn off_centre_front() -> OffCentreFront {
    OffCentreFront {
        front: SkirtPanel {
            allowances: Allowances {
                seam: 10.0,
                hem: 40.0,
            },
            ..panel()
        },
        shift: 60.0,
        extension: 18.0,
        wide_panel: 300.0,
        facing: 40.0,
    }
}

pub(crate) fn wrap_skirt() -> WrapSkirt {
    WrapSkirt {
        waist: 720.0,
        hip: 980.0,
        overlap: 300.0,
        hip_depth: 200.0,
        length: 600.0,
        flare: 30.0,
        front_darts: 1,
        back_darts: 2,
        largest_intake: 30.0,
        dart_length: 100.0,
        side_rise: 12.0,
        back_centre: Centre::Fold,
        facing: 40.0,
        allowances: ALLOWANCES,
    }
}

pub(crate) fn gored_skirt() -> GoredSkirt {
    GoredSkirt {
        waist: 720.0,
        hip: 1020.0,
        hem: 1980.0,
        length: 700.0,
        hip_depth: 200.0,
        count: 6,
        allowances: ALLOWANCES,
    }
}

pub(crate) fn circle_sector() -> CircleSector {
    CircleSector {
        waist: 710.0,
        length: 600.0,
        fraction: 0.5,
        pieces: 2,
        allowances: Allowances {
            seam: 10.0,
            hem: 15.0,
        },
    }
}

pub(crate) fn tiered_skirt() -> TieredSkirt {
    TieredSkirt {
        waist: 800.0,
        ratios: vec![1.5, 1.5, 1.6],
        depths: vec![200.0, 230.0, 260.0],
        cloth_width: 1400.0,
        allowances: Allowances {
            seam: 15.0,
            hem: 20.0,
        },
    }
}

pub(crate) fn straight_band() -> StraightBand {
    StraightBand {
        waist: 720.0,
        overlap: 30.0,
        depth: 35.0,
        turn: 2.0,
        make: BandMake::Folded,
        allowance: 10.0,
    }
}

pub(crate) fn shaped_band() -> ShapedBand {
    ShapedBand {
        lower: 760.0,
        upper: 720.0,
        depth: 50.0,
        overlap: 40.0,
        allowance: 10.0,
    }
}

/// F12's sections.
pub(crate) fn sectioned_band(curved: bool) -> SectionedBand {
    SectionedBand {
        lengths: vec![140.0, 330.0, 230.0],
        depth: 50.0,
        top: 676.0,
        ends: SquareEnds::Both,
        curved,
        allowance: 10.0,
    }
}

pub(crate) fn edge_band() -> EdgeBand {
    EdgeBand {
        edge: 440.0,
        share: 0.8,
        depth: 25.0,
        allowance: 8.0,
    }
}

pub(crate) fn binding() -> Binding {
    Binding {
        edge: 1200.0,
        corners: 0,
        corner: 0.0,
        finish: 20.0,
        finished: 8.0,
        turn: 8.0,
        thickness: 1.0,
        fold: BindingFold::Single,
        strip: 700.0,
        allowance: 6.0,
    }
}

/// Half a bodice: front or back, on a fold, its armhole about 220 long.
pub(crate) fn bodice(back: bool) -> Piece {
    let (name, neck, width) = if back {
        ("bodice back", 405.0, 235.0)
    } else {
        ("bodice front", 345.0, 245.0)
    };
    let tip = (172.0, 392.0);
    let underarm = (width, 200.0);
    let scoop = if back { 0.35 } else { 0.5 };
    let edges = vec![
        Edge::seam("waist", Curve::line((0.0, 0.0), (width - 20.0, 0.0)), 15.0),
        Edge::seam("side", Curve::line((width - 20.0, 0.0), underarm), 15.0),
        Edge::seam(
            "armhole",
            Curve::cubic(
                underarm,
                (width - 20.0 - 60.0 * scoop, 200.0),
                (tip.0 - 30.0 * scoop - 10.0, 290.0),
                tip,
            ),
            12.0,
        ),
        Edge::seam("shoulder", Curve::line(tip, (74.0, 420.0)), 15.0),
        Edge::seam(
            "neck",
            Curve::cubic(
                (74.0, 420.0),
                (66.0, 420.0 - 0.6 * (420.0 - neck)),
                (45.0, neck),
                (0.0, neck),
            ),
            8.0,
        ),
        Edge::fold("centre", Curve::line((0.0, neck), (0.0, 0.0))),
    ];
    Piece::new(name, edges).expect("a bodice")
}

pub(crate) fn neck_top(shape: NeckShape) -> NeckTop {
    NeckTop {
        front: bodice(false),
        back: bodice(true),
        shape,
        off_shoulder: 15.0,
        depth: 170.0,
        back_depth: 60.0,
        facing: 50.0,
        stay_ratio: 0.97,
        allowance: 8.0,
    }
}

pub(crate) fn armhole() -> Armhole {
    Armhole {
        front: bodice(false),
        back: bodice(true),
        ease_pct: 4.0,
        notch: 1.0 / 3.0,
    }
}

pub(crate) fn sleeve() -> Sleeve {
    Sleeve {
        armhole: armhole(),
        width: 340.0,
        length: 430.0,
        hem_width: 250.0,
        allowances: ALLOWANCES,
    }
}

pub(crate) fn plain_sleeve() -> Piece {
    sleeve().draft().expect("a sleeve").pieces.remove(0)
}

pub(crate) fn recut_sleeve() -> RecutSleeve {
    RecutSleeve {
        armhole: Armhole {
            ease_pct: 2.0,
            ..armhole()
        },
        sleeve: plain_sleeve(),
        largest_lift: 20.0,
    }
}

pub(crate) fn puffed_sleeve(hem: PuffHem) -> PuffedSleeve {
    let short = Sleeve {
        length: 120.0,
        hem_width: 320.0,
        ..sleeve()
    };
    PuffedSleeve {
        sleeve: short.draft().expect("a sleeve").pieces.remove(0),
        ratio: 1.75,
        slashes: 6,
        lift: 30.0,
        hem,
    }
}

pub(crate) fn pinafore() -> Pinafore {
    Pinafore {
        chest: 580.0,
        ease: 80.0,
        neck: 360.0,
        head: 520.0,
        shoulder: 70.0,
        armhole_depth: 140.0,
        yoke_depth: 170.0,
        band_depth: 0.0,
        skirt_length: 330.0,
        fullness: 1.8,
        panels: 2,
        opening: 200.0,
        stand: 15.0,
        allowances: Allowances {
            seam: 10.0,
            hem: 30.0,
        },
    }
}

pub(crate) fn patch_pocket() -> PatchPocket {
    PatchPocket {
        width: 150.0,
        depth: 170.0,
        corner_radius: 25.0,
        allowances: Allowances {
            seam: 10.0,
            hem: 30.0,
        },
    }
}

/// The lining of a panel, sewn to the top of its hem.
pub(crate) fn panel_lining() -> PanelLining {
    PanelLining {
        shell: panel(),
        hang: Hang::Folded,
        clearance: 20.0,
        ease: 10.0,
    }
}

pub(crate) fn gathered_strip() -> GatheredStrip {
    GatheredStrip {
        finished: 900.0,
        ratio: 1.6,
        depth: 120.0,
        strips: 3,
        allowances: Allowances {
            seam: 10.0,
            hem: 20.0,
        },
    }
}

/// Measures of each kind of draft, by name.
pub(crate) fn all() -> Vec<(&'static str, Measures)> {
    let free = PanelLining {
        hang: Hang::Free { hem: 20.0 },
        ..panel_lining()
    };
    vec![
        ("skirt panel", Measures::SkirtPanel(panel())),
        ("panel lining", Measures::PanelLining(panel_lining())),
        ("panel lining, free", Measures::PanelLining(free)),
        ("darted skirt", Measures::DartedSkirt(darted_skirt())),
        (
            "off-centre front",
            Measures::OffCentreFront(off_centre_front()),
        ),
        ("wrap skirt", Measures::WrapSkirt(wrap_skirt())),
        ("gored skirt", Measures::GoredSkirt(gored_skirt())),
        ("circle sector", Measures::CircleSector(circle_sector())),
        ("tiered skirt", Measures::TieredSkirt(tiered_skirt())),
        ("gathered strip", Measures::GatheredStrip(gathered_strip())),
        ("straight band", Measures::StraightBand(straight_band())),
        ("shaped band", Measures::ShapedBand(shaped_band())),
        (
            "sectioned band",
            Measures::SectionedBand(sectioned_band(false)),
        ),
        ("curved band", Measures::SectionedBand(sectioned_band(true))),
        ("edge band", Measures::EdgeBand(edge_band())),
        ("binding", Measures::Binding(binding())),
        ("V neck top", Measures::NeckTop(neck_top(NeckShape::V))),
        (
            "square neck top",
            Measures::NeckTop(neck_top(NeckShape::Square)),
        ),
        ("sleeve", Measures::Sleeve(sleeve())),
        ("recut sleeve", Measures::RecutSleeve(recut_sleeve())),
        (
            "puffed sleeve",
            Measures::PuffedSleeve(puffed_sleeve(PuffHem::Kept)),
        ),
        (
            "puffed sleeve, gathered",
            Measures::PuffedSleeve(puffed_sleeve(PuffHem::Gathered)),
        ),
        ("pinafore", Measures::Pinafore(pinafore())),
        ("patch pocket", Measures::PatchPocket(patch_pocket())),
    ]
}
