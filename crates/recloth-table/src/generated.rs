//! Written by `cargo xtask generate` from the doc comments of the core; do not edit.
use recloth::Error;
use crate::{
    Answer, Argument, Choice, Default, Function, Given, Got, Items, Kind, Module, Variant,
};
static BAND_MAKE: Choice = Choice {
    name: "BandMake",
    summary: "How a straight band gets its two layers.",
    variants: &[
        Variant {
            word: "folded",
            meaning: "One strip folded along its upper edge.",
        },
        Variant {
            word: "faced",
            meaning: "Two strips, an outer and an inner, joined along the upper edge.",
        },
    ],
};
fn read_band_make(given: &Given) -> recloth::band::BandMake {
    match given.text() {
        "folded" => recloth::band::BandMake::Folded,
        _ => recloth::band::BandMake::Faced,
    }
}
static BASIS: Choice = Choice {
    name: "Basis",
    summary: "How plant matter is when it is weighed.",
    variants: &[
        Variant {
            word: "fresh",
            meaning: "Fresh, or frozen fresh: with its water.",
        },
        Variant {
            word: "dry",
            meaning: "Dried.",
        },
    ],
};
fn read_basis(given: &Given) -> recloth::dye::Basis {
    match given.text() {
        "fresh" => recloth::dye::Basis::Fresh,
        _ => recloth::dye::Basis::Dry,
    }
}
static BATH: Choice = Choice {
    name: "Bath",
    summary: "The bath a part is to go through.",
    variants: &[
        Variant {
            word: "water",
            meaning: "Water, with or without a mild detergent.",
        },
        Variant {
            word: "chlorine_bleach",
            meaning: "Chlorine bleach (sodium hypochlorite).",
        },
        Variant {
            word: "direct",
            meaning: "A direct dye.",
        },
        Variant {
            word: "reactive",
            meaning: "A reactive dye.",
        },
        Variant {
            word: "acid",
            meaning: "An acid dye.",
        },
        Variant {
            word: "vat",
            meaning: "A vat dye, indigo included.",
        },
        Variant {
            word: "sulphur",
            meaning: "A sulphur dye.",
        },
        Variant {
            word: "azoic",
            meaning: "An azoic dye.",
        },
        Variant {
            word: "metal_complex",
            meaning: "A metal-complex dye.",
        },
        Variant {
            word: "disperse",
            meaning: "A disperse dye.",
        },
        Variant {
            word: "basic",
            meaning: "A basic dye.",
        },
        Variant {
            word: "natural",
            meaning: "A natural dye on a mordant.",
        },
    ],
};
fn read_bath(given: &Given) -> recloth::fibre::Bath {
    match given.text() {
        "water" => recloth::fibre::Bath::Water,
        "chlorine_bleach" => recloth::fibre::Bath::ChlorineBleach,
        "direct" => recloth::fibre::Bath::Direct,
        "reactive" => recloth::fibre::Bath::Reactive,
        "acid" => recloth::fibre::Bath::Acid,
        "vat" => recloth::fibre::Bath::Vat,
        "sulphur" => recloth::fibre::Bath::Sulphur,
        "azoic" => recloth::fibre::Bath::Azoic,
        "metal_complex" => recloth::fibre::Bath::MetalComplex,
        "disperse" => recloth::fibre::Bath::Disperse,
        "basic" => recloth::fibre::Bath::Basic,
        _ => recloth::fibre::Bath::Natural,
    }
}
static BINDING_FOLD: Choice = Choice {
    name: "BindingFold",
    summary: "How a binding is folded over an edge.",
    variants: &[
        Variant {
            word: "single",
            meaning: "One layer: both long edges are turned in.",
        },
        Variant {
            word: "double",
            meaning: "Two layers, French binding: the strip is folded along its middle, both raw edges sewn in one seam.",
        },
    ],
};
fn read_binding_fold(given: &Given) -> recloth::bias::BindingFold {
    match given.text() {
        "single" => recloth::bias::BindingFold::Single,
        _ => recloth::bias::BindingFold::Double,
    }
}
static BUTTON_SHAPE: Choice = Choice {
    name: "ButtonShape",
    summary: "The shape of a button.",
    variants: &[
        Variant {
            word: "flat",
            meaning: "A disc: the loop goes over both faces.",
        },
        Variant {
            word: "ball",
            meaning: "A ball: the loop goes over its greatest circle.",
        },
    ],
};
fn read_button_shape(given: &Given) -> recloth::closure::ButtonShape {
    match given.text() {
        "flat" => recloth::closure::ButtonShape::Flat,
        _ => recloth::closure::ButtonShape::Ball,
    }
}
static EASE_PLACE: Choice = Choice {
    name: "EasePlace",
    summary: "Where on a garment of woven cloth the ease is asked.",
    variants: &[
        Variant {
            word: "bust",
            meaning: "The bust of a bodice or a dress.",
        },
        Variant {
            word: "dress_waist",
            meaning: "The waist of a dress or a bodice.",
        },
        Variant {
            word: "skirt_waist",
            meaning: "The waist of a skirt or of trousers, which holds them up.",
        },
        Variant {
            word: "hip",
            meaning: "The hip of any garment.",
        },
        Variant {
            word: "shirt_chest",
            meaning: "The chest of a man's shirt, from fitted to classic.",
        },
    ],
};
fn read_ease_place(given: &Given) -> recloth::ease::EasePlace {
    match given.text() {
        "bust" => recloth::ease::EasePlace::Bust,
        "dress_waist" => recloth::ease::EasePlace::DressWaist,
        "skirt_waist" => recloth::ease::EasePlace::SkirtWaist,
        "hip" => recloth::ease::EasePlace::Hip,
        _ => recloth::ease::EasePlace::ShirtChest,
    }
}
static EDGE_CURVE: Choice = Choice {
    name: "EdgeCurve",
    summary: "Which way an edge curves, seen from the cloth.",
    variants: &[
        Variant {
            word: "inward",
            meaning: "Into the cloth: a neck, an armhole.",
        },
        Variant {
            word: "outward",
            meaning: "Out of the cloth: a rounded corner, a scallop.",
        },
    ],
};
fn read_edge_curve(given: &Given) -> recloth::binding::EdgeCurve {
    match given.text() {
        "inward" => recloth::binding::EdgeCurve::Inward,
        _ => recloth::binding::EdgeCurve::Outward,
    }
}
static FIBRE: Choice = Choice {
    name: "Fibre",
    summary: "What a cloth, thread or trim is made of. A blend counts as its most delicate part: ask for each.",
    variants: &[
        Variant {
            word: "unknown",
            meaning: "Not known, or only guessed.",
        },
        Variant {
            word: "cotton",
            meaning: "Cotton.",
        },
        Variant {
            word: "linen",
            meaning: "Linen.",
        },
        Variant {
            word: "viscose",
            meaning: "Viscose and its kin.",
        },
        Variant {
            word: "polyester",
            meaning: "Polyester.",
        },
        Variant {
            word: "acrylic",
            meaning: "Acrylic.",
        },
        Variant {
            word: "polyamide",
            meaning: "Polyamide (nylon).",
        },
        Variant {
            word: "acetate",
            meaning: "Acetate and triacetate.",
        },
        Variant {
            word: "elastane",
            meaning: "Elastane (spandex).",
        },
        Variant {
            word: "rubber",
            meaning: "Rubber, and elastic of any kind.",
        },
        Variant {
            word: "wool",
            meaning: "Wool.",
        },
        Variant {
            word: "silk",
            meaning: "Silk.",
        },
        Variant {
            word: "mohair",
            meaning: "Mohair and other hair.",
        },
        Variant {
            word: "leather",
            meaning: "Leather and fur.",
        },
    ],
};
fn read_fibre(given: &Given) -> recloth::fibre::Fibre {
    match given.text() {
        "unknown" => recloth::fibre::Fibre::Unknown,
        "cotton" => recloth::fibre::Fibre::Cotton,
        "linen" => recloth::fibre::Fibre::Linen,
        "viscose" => recloth::fibre::Fibre::Viscose,
        "polyester" => recloth::fibre::Fibre::Polyester,
        "acrylic" => recloth::fibre::Fibre::Acrylic,
        "polyamide" => recloth::fibre::Fibre::Polyamide,
        "acetate" => recloth::fibre::Fibre::Acetate,
        "elastane" => recloth::fibre::Fibre::Elastane,
        "rubber" => recloth::fibre::Fibre::Rubber,
        "wool" => recloth::fibre::Fibre::Wool,
        "silk" => recloth::fibre::Fibre::Silk,
        "mohair" => recloth::fibre::Fibre::Mohair,
        _ => recloth::fibre::Fibre::Leather,
    }
}
static FINISH: Choice = Choice {
    name: "Finish",
    summary: "What was done to a cloth that a bath might undo.",
    variants: &[
        Variant {
            word: "unknown",
            meaning: "Not known.",
        },
        Variant {
            word: "plain",
            meaning: "Known to have no finish, and its colour is fast, or it has none.",
        },
        Variant {
            word: "not_fast",
            meaning: "Its colour is not fast.",
        },
        Variant {
            word: "flame_retardant",
            meaning: "A flame-retardant finish.",
        },
        Variant {
            word: "resin",
            meaning: "A resin finish, such as against creases.",
        },
    ],
};
fn read_finish(given: &Given) -> recloth::fibre::Finish {
    match given.text() {
        "unknown" => recloth::fibre::Finish::Unknown,
        "plain" => recloth::fibre::Finish::Plain,
        "not_fast" => recloth::fibre::Finish::NotFast,
        "flame_retardant" => recloth::fibre::Finish::FlameRetardant,
        _ => recloth::fibre::Finish::Resin,
    }
}
static IN_BATH: Choice = Choice {
    name: "InBath",
    summary: "What else is in a bath, or was and has not been rinsed out of the goods and the vessel.",
    variants: &[
        Variant {
            word: "unknown",
            meaning: "Not known.",
        },
        Variant {
            word: "water_only",
            meaning: "Water and nothing else.",
        },
        Variant {
            word: "acid",
            meaning: "An acid: vinegar, descaler, cleaners for toilets, drains or rust, a dishwasher's rinse.",
        },
        Variant {
            word: "ammonia",
            meaning: "Ammonia, many glass cleaners, urine.",
        },
        Variant {
            word: "alcohol",
            meaning: "Alcohol, spirit, sanitiser.",
        },
        Variant {
            word: "peroxide",
            meaning: "Peroxide or another oxygen bleach.",
        },
        Variant {
            word: "neutraliser",
            meaning: "Thiosulfate, sulfite or another neutraliser.",
        },
        Variant {
            word: "other",
            meaning: "Anything else: detergent, dye, mordant.",
        },
    ],
};
fn read_in_bath(given: &Given) -> recloth::bleach::InBath {
    match given.text() {
        "unknown" => recloth::bleach::InBath::Unknown,
        "water_only" => recloth::bleach::InBath::WaterOnly,
        "acid" => recloth::bleach::InBath::Acid,
        "ammonia" => recloth::bleach::InBath::Ammonia,
        "alcohol" => recloth::bleach::InBath::Alcohol,
        "peroxide" => recloth::bleach::InBath::Peroxide,
        "neutraliser" => recloth::bleach::InBath::Neutraliser,
        _ => recloth::bleach::InBath::Other,
    }
}
static INSERT_PLACE: Choice = Choice {
    name: "InsertPlace",
    summary: "Where a strip is let in.",
    variants: &[
        Variant {
            word: "seam",
            meaning: "A seam that is opened: its edges have their allowances.",
        },
        Variant {
            word: "slash",
            meaning: "A cut through the cloth: its edges lose theirs to the new seams.",
        },
    ],
};
fn read_insert_place(given: &Given) -> recloth::alteration::InsertPlace {
    match given.text() {
        "seam" => recloth::alteration::InsertPlace::Seam,
        _ => recloth::alteration::InsertPlace::Slash,
    }
}
static REACTION: Choice = Choice {
    name: "Reaction",
    summary: "What takes the last chlorine away, and what it turns into: the same salt has more than one answer.",
    variants: &[
        Variant {
            word: "thiosulfate_to_tetrathionate",
            meaning: "Sodium thiosulfate crystals (pentahydrate) to tetrathionate: the safe upper figure.",
        },
        Variant {
            word: "thiosulfate_to_sulfur",
            meaning: "Sodium thiosulfate crystals (pentahydrate) to sulfate and sulfur.",
        },
        Variant {
            word: "thiosulfate_to_sulfate",
            meaning: "Sodium thiosulfate crystals (pentahydrate) to sulfate.",
        },
        Variant {
            word: "bisulfite",
            meaning: "Sodium bisulfite to sulfate.",
        },
        Variant {
            word: "metabisulfite",
            meaning: "Sodium metabisulfite to sulfate.",
        },
        Variant {
            word: "sulfite",
            meaning: "Sodium sulfite to sulfate.",
        },
        Variant {
            word: "ascorbic_acid",
            meaning: "Ascorbic acid (vitamin C).",
        },
        Variant {
            word: "peroxide",
            meaning: "Hydrogen peroxide, to oxygen: it froths.",
        },
    ],
};
fn read_reaction(given: &Given) -> recloth::bleach::Reaction {
    match given.text() {
        "thiosulfate_to_tetrathionate" => {
            recloth::bleach::Reaction::ThiosulfateToTetrathionate
        }
        "thiosulfate_to_sulfur" => recloth::bleach::Reaction::ThiosulfateToSulfur,
        "thiosulfate_to_sulfate" => recloth::bleach::Reaction::ThiosulfateToSulfate,
        "bisulfite" => recloth::bleach::Reaction::Bisulfite,
        "metabisulfite" => recloth::bleach::Reaction::Metabisulfite,
        "sulfite" => recloth::bleach::Reaction::Sulfite,
        "ascorbic_acid" => recloth::bleach::Reaction::AscorbicAcid,
        _ => recloth::bleach::Reaction::Peroxide,
    }
}
static ROUNDING: Choice = Choice {
    name: "Rounding",
    summary: "Which graduation a length is rounded to.",
    variants: &[
        Variant {
            word: "nearest",
            meaning: "The nearer graduation; from the middle, the one further from zero.",
        },
        Variant {
            word: "up",
            meaning: "The next graduation that is not less.",
        },
        Variant {
            word: "down",
            meaning: "The next graduation that is not more.",
        },
    ],
};
fn read_rounding(given: &Given) -> recloth::tape::Rounding {
    match given.text() {
        "nearest" => recloth::tape::Rounding::Nearest,
        "up" => recloth::tape::Rounding::Up,
        _ => recloth::tape::Rounding::Down,
    }
}
static SQUARE_ENDS: Choice = Choice {
    name: "SquareEnds",
    summary: "Which ends of a band in sections are cut square to the lower edge.",
    variants: &[
        Variant {
            word: "neither",
            meaning: "Neither end: the band closes in a ring, or both ends slant.",
        },
        Variant {
            word: "first",
            meaning: "The first section's free end.",
        },
        Variant {
            word: "last",
            meaning: "The last section's free end.",
        },
        Variant {
            word: "both",
            meaning: "Both free ends.",
        },
    ],
};
fn read_square_ends(given: &Given) -> recloth::band::SquareEnds {
    match given.text() {
        "neither" => recloth::band::SquareEnds::Neither,
        "first" => recloth::band::SquareEnds::First,
        "last" => recloth::band::SquareEnds::Last,
        _ => recloth::band::SquareEnds::Both,
    }
}
static STAGE: Choice = Choice {
    name: "Stage",
    summary: "How far the goods are from the bleach.",
    variants: &[
        Variant {
            word: "in_bleach",
            meaning: "Still in the bleach.",
        },
        Variant {
            word: "drained",
            meaning: "Out of it and drained, not rinsed.",
        },
        Variant {
            word: "fresh_bath",
            meaning: "Drained and rinsed, in a fresh bath.",
        },
    ],
};
fn read_stage(given: &Given) -> recloth::bleach::Stage {
    match given.text() {
        "in_bleach" => recloth::bleach::Stage::InBleach,
        "drained" => recloth::bleach::Stage::Drained,
        _ => recloth::bleach::Stage::FreshBath,
    }
}
static STITCH_TYPE: Choice = Choice {
    name: "StitchType",
    summary: "Stitch types whose thread is known from their path, numbered as in ISO 4915.",
    variants: &[
        Variant {
            word: "chain_single",
            meaning: "Type 101, single-thread chain stitch.",
        },
        Variant {
            word: "lock",
            meaning: "Type 301, plain lockstitch.",
        },
        Variant {
            word: "chain_double",
            meaning: "Type 401, two-thread chain stitch.",
        },
    ],
};
fn read_stitch_type(given: &Given) -> recloth::thread::StitchType {
    match given.text() {
        "chain_single" => recloth::thread::StitchType::ChainSingle,
        "lock" => recloth::thread::StitchType::Lock,
        _ => recloth::thread::StitchType::ChainDouble,
    }
}
static STYLE: Choice = Choice {
    name: "Style",
    summary: "How a length is printed.",
    variants: &[
        Variant {
            word: "exact",
            meaning: "Millimetres with every digit: reading it gives the same number, to the last bit.",
        },
        Variant {
            word: "mm",
            meaning: "Whole millimetres: `797 mm`.",
        },
        Variant {
            word: "mm_half",
            meaning: "Half millimetres: `58.5 mm`.",
        },
        Variant {
            word: "cm",
            meaning: "Centimetres to the millimetre: `58.4 cm`.",
        },
        Variant {
            word: "cm_comma",
            meaning: "Centimetres to the millimetre with a decimal comma: `58,4 cm`.",
        },
        Variant {
            word: "metre",
            meaning: "Metres to the centimetre: `1.20 m`.",
        },
        Variant {
            word: "metre_comma",
            meaning: "Metres to the centimetre with a decimal comma: `1,20 m`.",
        },
        Variant {
            word: "inch_half",
            meaning: "Inches and halves: `31 1/2 in`.",
        },
        Variant {
            word: "inch_quarter",
            meaning: "Inches and quarters: `31 1/4 in`.",
        },
        Variant {
            word: "inch_eighth",
            meaning: "Inches and eighths: `31 3/8 in`.",
        },
        Variant {
            word: "inch_sixteenth",
            meaning: "Inches and sixteenths: `31 3/16 in`.",
        },
        Variant {
            word: "inch_thirty_second",
            meaning: "Inches and thirty-seconds: `31 3/32 in`.",
        },
        Variant {
            word: "inch_mark",
            meaning: "Inches and eighths as one sign, with the inch mark: `31⅜\"`.",
        },
        Variant {
            word: "foot_eighth",
            meaning: "Feet, inches and eighths: `2 ft 3 1/8 in`.",
        },
        Variant {
            word: "yard_eighth",
            meaning: "Yards, inches and eighths: `2 yd 4 1/8 in`.",
        },
    ],
};
fn read_style(given: &Given) -> recloth::tape::Style {
    match given.text() {
        "exact" => recloth::tape::Style::Exact,
        "mm" => recloth::tape::Style::Mm,
        "mm_half" => recloth::tape::Style::MmHalf,
        "cm" => recloth::tape::Style::Cm,
        "cm_comma" => recloth::tape::Style::CmComma,
        "metre" => recloth::tape::Style::Metre,
        "metre_comma" => recloth::tape::Style::MetreComma,
        "inch_half" => recloth::tape::Style::InchHalf,
        "inch_quarter" => recloth::tape::Style::InchQuarter,
        "inch_eighth" => recloth::tape::Style::InchEighth,
        "inch_sixteenth" => recloth::tape::Style::InchSixteenth,
        "inch_thirty_second" => recloth::tape::Style::InchThirtySecond,
        "inch_mark" => recloth::tape::Style::InchMark,
        "foot_eighth" => recloth::tape::Style::FootEighth,
        _ => recloth::tape::Style::YardEighth,
    }
}
static SWATCH: Choice = Choice {
    name: "Swatch",
    summary: "How a swatch or hidden part of this very cloth stood the same bath for the same time, wet strength tried by pulling.",
    variants: &[
        Variant {
            word: "untried",
            meaning: "Not tried yet.",
        },
        Variant {
            word: "passed",
            meaning: "It kept its strength and did what was wanted.",
        },
        Variant {
            word: "failed",
            meaning: "It weakened, yellowed or bled.",
        },
    ],
};
fn read_swatch(given: &Given) -> recloth::fibre::Swatch {
    match given.text() {
        "untried" => recloth::fibre::Swatch::Untried,
        "passed" => recloth::fibre::Swatch::Passed,
        _ => recloth::fibre::Swatch::Failed,
    }
}
fn arc_from_rise(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::arc::arc_from_rise(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.radius), Got::Number(answer.length), Got::Number(answer
            .angle_deg),
        ],
    )
}
fn assistant_volume(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::assistant_volume(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.stock_ml), Got::Number(answer.amount_g), Got::Whole(answer
            .doubts), Got::Whole(answer.cautions),
        ],
    )
}
fn available_chlorine(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bleach::available_chlorine(
        given[0].number(),
        given[1].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.available_pct), Got::Number(answer.trade_pct),
            Got::Whole(answer.doubts), Got::Whole(answer.cautions),
        ],
    )
}
fn batches(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut numbers = given[0].room(0, 1000000);
    let answer = recloth::wet::batches(
        given[0].numbers(),
        given[1].number(),
        given[2].number(),
        &mut numbers,
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Numbers(numbers), Got::Whole(answer.batches.into()), Got::Whole(answer
            .least.into()), Got::Number(answer.capacity_g), Got::Number(answer
            .heaviest_g), Got::Whole(answer.doubts), Got::Whole(answer.cautions),
        ],
    )
}
fn bath_volume(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::bath_volume(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.volume_ml), Got::Whole(answer.doubts), Got::Whole(answer
            .cautions),
        ],
    )
}
fn bias_along_selvedge(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::bias_along_selvedge(given[0].number())?;
    Ok(vec![Got::Number(answer),])
}
fn bias_square(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::bias_square(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer),])
}
fn bias_strip_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::bias_strip_length(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer),])
}
fn bias_strips(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::bias_strips(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
    )?;
    Ok(
        vec![
            Got::Whole(answer.strips.into()), Got::Number(answer.longest),
            Got::Number(answer.joined), Got::Number(answer.kept_pct),
        ],
    )
}
fn bias_tube(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::bias_tube(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Whole(answer.turns.into()), Got::Number(answer.length),
            Got::Number(answer.leftover),
        ],
    )
}
fn binder_solids(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::dye::binder_solids(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].count(),
    )?;
    Ok(
        vec![
            Got::Number(answer.bath_low_pct), Got::Number(answer.bath_high_pct),
            Got::Number(answer.owf_low_pct), Got::Number(answer.owf_high_pct),
            Got::Whole(answer.doubts), Got::Whole(answer.cautions),
        ],
    )
}
fn binding_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::binding::binding_length(
        given[0].number(),
        given[1].count(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn binding_strips(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::binding_strips(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Whole(answer.count.into()), Got::Number(answer.spare),])
}
fn binding_width(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::binding_width(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        read_binding_fold(&given[3]),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn bleach_dilution(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bleach::bleach_dilution(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        read_fibre(&given[4]),
        read_finish(&given[5]),
        read_swatch(&given[6]),
        read_in_bath(&given[7]),
    )?;
    Ok(
        vec![
            Got::Number(answer.bleach_ml), Got::Number(answer.water_ml),
            Got::Number(answer.parts_water), Got::Whole(answer.doubts), Got::Whole(answer
            .cautions),
        ],
    )
}
fn bleach_time(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bleach::bleach_time(
        given[0].numbers(),
        given[1].numbers(),
        given[2].number(),
        given[3].number(),
        read_fibre(&given[4]),
        read_finish(&given[5]),
        read_swatch(&given[6]),
        read_in_bath(&given[7]),
        given[8].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.time_min), Got::Number(answer.next_swatch_min),
            Got::Number(answer.rate), Got::Whole(answer.doubts), Got::Whole(answer
            .cautions),
        ],
    )
}
fn body_length_doubts(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::body_length_doubts(given[0].number())?;
    Ok(vec![Got::Whole(answer),])
}
fn box_pleats(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::pleat::box_pleats(
        given[0].number(),
        given[1].count(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Whole(answer
            .count.into()), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Whole(answer.doubts),
        ],
    )
}
fn box_pleats_count(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::pleat::box_pleats_count(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Whole(answer
            .count.into()), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Whole(answer.doubts),
        ],
    )
}
fn box_pleats_depth(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::pleat::box_pleats_depth(
        given[0].number(),
        given[1].number(),
        given[2].count(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Whole(answer
            .count.into()), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Whole(answer.doubts),
        ],
    )
}
fn box_pleats_finished(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::pleat::box_pleats_finished(
        given[0].number(),
        given[1].count(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Whole(answer
            .count.into()), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Whole(answer.doubts),
        ],
    )
}
fn breadths(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tier::breadths(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Whole(answer.count.into()), Got::Number(answer.round),
            Got::Number(answer.spare),
        ],
    )
}
fn button_diameter(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::button_diameter(given[0].number())?;
    Ok(vec![Got::Number(answer),])
}
fn button_for_hole(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::closure::button_for_hole(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer.diameter), Got::Number(answer.creep),])
}
fn button_for_stand(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fastening::button_for_stand(
        given[0].number(),
        given[1].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn button_loop(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::closure::button_loop(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
        given[5].number(),
        read_button_shape(&given[6]),
    )?;
    Ok(
        vec![
            Got::Number(answer.visible), Got::Number(answer.cut), Got::Whole(answer
            .cautions),
        ],
    )
}
fn button_stand(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fastening::button_stand(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.extension), Got::Number(answer.past_rim),
            Got::Number(answer.overlap),
        ],
    )
}
fn buttonhole(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::closure::buttonhole(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn cap_ease(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::sleeve::cap_ease(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.ease), Got::Number(answer.ease_pct), Got::Whole(answer
            .doubts),
        ],
    )
}
fn cap_for_ease(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::sleeve::cap_for_ease(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer),])
}
fn cap_width_bound(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::sleeve::cap_width_bound(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer),])
}
fn carried_liquor(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::carried_liquor(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.carried_ml), Got::Whole(answer.doubts), Got::Whole(answer
            .cautions),
        ],
    )
}
fn casing(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::elastic::casing(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(vec![Got::Number(answer.depth), Got::Number(answer.allowance),])
}
fn ciede2000(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::colour::ciede2000(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
        given[5].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn circle_skirt(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::skirt::circle_skirt(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.waist_radius), Got::Number(answer.hem_radius),
            Got::Number(answer.hem_length), Got::Whole(answer.doubts),
        ],
    )
}
fn circle_skirt_fraction(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::skirt::circle_skirt_fraction(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].count(),
    )?;
    Ok(
        vec![
            Got::Number(answer.fraction), Got::Number(answer.length), Got::Number(answer
            .waist_radius), Got::Number(answer.hem_radius), Got::Number(answer
            .hem_length), Got::Number(answer.piece_angle_deg), Got::Number(answer
            .cloth_length), Got::Whole(answer.doubts),
        ],
    )
}
fn circle_skirt_longest(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::skirt::circle_skirt_longest(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].count(),
    )?;
    Ok(
        vec![
            Got::Number(answer.fraction), Got::Number(answer.length), Got::Number(answer
            .waist_radius), Got::Number(answer.hem_radius), Got::Number(answer
            .hem_length), Got::Number(answer.piece_angle_deg), Got::Number(answer
            .cloth_length), Got::Whole(answer.doubts),
        ],
    )
}
fn cloth_mass(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::quantity::cloth_mass(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn cloth_to_buy(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::quantity::cloth_to_buy(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn component_check(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fibre::component_check(
        read_fibre(&given[0]),
        read_finish(&given[1]),
        read_swatch(&given[2]),
        read_bath(&given[3]),
        given[4].number(),
        given[5].number(),
    )?;
    Ok(
        vec![
            Got::Whole(answer.bears.into()), Got::Whole(answer.colour.into()),
            Got::Whole(answer.doubts), Got::Whole(answer.cautions),
        ],
    )
}
fn cover_mark(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::shade::cover_mark(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.now), Got::Number(answer.depth), Got::Number(answer
            .ground_after), Got::Number(answer.mark_after), Got::Number(answer.after),
        ],
    )
}
fn curved_band(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut tops = given[0].room(0, 100000);
    let answer = recloth::band::curved_band(
        given[0].numbers(),
        given[1].number(),
        given[2].number(),
        &mut tops,
    )?;
    Ok(
        vec![
            Got::Numbers(tops), Got::Number(answer.inner_radius), Got::Number(answer
            .outer_radius), Got::Number(answer.angle_deg), Got::Number(answer.sagitta),
        ],
    )
}
fn curved_binding(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::binding::curved_binding(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        read_edge_curve(&given[3]),
    )?;
    Ok(
        vec![
            Got::Number(answer.seam), Got::Number(answer.stretch_pct), Got::Number(answer
            .width_pct),
        ],
    )
}
fn cut_for_change(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::cloth::cut_for_change(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.cut), Got::Number(answer.added), Got::Whole(answer
            .doubts),
        ],
    )
}
fn cut_state(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::seam::cut_state(
        given[0].number(),
        given[1].number(),
        given[2].count(),
    )?;
    Ok(vec![Got::Number(answer.finished), Got::Number(answer.cut),])
}
fn dart(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::dart::dart(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.leg), Got::Number(answer.angle_deg), Got::Whole(answer
            .doubts),
        ],
    )
}
fn dart_equivalent(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::dart::dart_equivalent(
        given[0].number(),
        given[1].number(),
        given[2].count(),
    )?;
    Ok(
        vec![
            Got::Number(answer.ease_pct), Got::Number(answer.gather_ratio),
            Got::Number(answer.tuck_depth), Got::Whole(answer.doubts),
        ],
    )
}
fn dart_from_gape(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::dart::dart_from_gape(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer.intake), Got::Number(answer.angle_deg),])
}
fn dart_in_panel(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::dart::dart_in_panel(
        given[0].number(),
        given[1].number(),
        given[2].count(),
        given[3].number(),
        given[4].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.intake_each), Got::Number(answer.leftover),
            Got::Number(answer.leg), Got::Number(answer.kink_deg), Got::Whole(answer
            .doubts),
        ],
    )
}
fn dart_turned(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::dart::dart_turned(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn dart_width_at(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::dart::dart_width_at(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn deepest_hem(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::seam::deepest_hem(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer),])
}
fn dimensional_change(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::cloth::dimensional_change(
        given[0].number(),
        given[1].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn double_dart(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::dart::double_dart(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.upper_leg), Got::Number(answer.lower_leg),
            Got::Number(answer.upper_angle_deg), Got::Number(answer.lower_angle_deg),
            Got::Number(answer.bend_deg), Got::Whole(answer.doubts),
        ],
    )
}
fn elastic(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::elastic::elastic(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.round), Got::Number(answer.cut), Got::Number(answer
            .worn_pct), Got::Number(answer.passing_pct), Got::Whole(answer.doubts),
            Got::Whole(answer.cautions),
        ],
    )
}
fn even_spacing(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::closure::even_spacing(
        given[0].number(),
        given[1].number(),
        given[2].count(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn five_gores(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::gore::five_gores(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.front_waist), Got::Number(answer.side_waist),
            Got::Number(answer.back_waist), Got::Number(answer.front_hip),
            Got::Number(answer.side_hip), Got::Number(answer.back_hip), Got::Whole(answer
            .doubts),
        ],
    )
}
fn flounce(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tier::flounce(
        given[0].number(),
        given[1].number(),
        given[2].count(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.inner_radius), Got::Number(answer.outer_radius),
            Got::Number(answer.hem), Got::Number(answer.ratio), Got::Number(answer
            .square),
        ],
    )
}
fn folded_band(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::band::folded_band(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.cut_width), Got::Number(answer.fold_line),
            Got::Number(answer.inner),
        ],
    )
}
fn format_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::format_length(given[0].number(), read_style(&given[1]))?;
    Ok(vec![Got::Text(answer.to_string())])
}
fn front_back_doubts(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::front_back_doubts(given[0].number(), given[1].number())?;
    Ok(vec![Got::Whole(answer),])
}
fn frustum(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::arc::frustum(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.slant), Got::Number(answer.inner_radius),
            Got::Number(answer.outer_radius), Got::Number(answer.angle_deg),
            Got::Number(answer.area_mm2),
        ],
    )
}
fn gather_ratio(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fullness::gather_ratio(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Whole(answer.doubts),
        ],
    )
}
fn gather_sections(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut flats = given[0].room(0, 100000);
    let answer = recloth::fullness::gather_sections(
        given[0].numbers(),
        given[1].number(),
        &mut flats,
    )?;
    Ok(
        vec![
            Got::Numbers(flats), Got::Number(answer.finished), Got::Number(answer.ratio),
            Got::Whole(answer.doubts),
        ],
    )
}
fn gathers(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fullness::gathers(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Whole(answer.doubts),
        ],
    )
}
fn girth_doubts(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::girth_doubts(given[0].number())?;
    Ok(vec![Got::Whole(answer),])
}
fn godet(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::gore::godet(
        given[0].number(),
        given[1].number(),
        given[2].count(),
    )?;
    Ok(
        vec![
            Got::Number(answer.angle_deg), Got::Number(answer.chord), Got::Number(answer
            .sagitta), Got::Number(answer.added),
        ],
    )
}
fn gore(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::gore::gore(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
        given[5].count(),
    )?;
    Ok(
        vec![
            Got::Number(answer.waist_width), Got::Number(answer.hip_width),
            Got::Number(answer.hem_width), Got::Number(answer.side_length),
            Got::Number(answer.flare_deg), Got::Number(answer.hem_rise),
            Got::Whole(answer.doubts),
        ],
    )
}
fn gsm_from_ounces(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::quantity::gsm_from_ounces(given[0].number())?;
    Ok(vec![Got::Number(answer),])
}
fn gusset(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::gore::gusset(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.angle_deg), Got::Number(answer.long_diagonal),
            Got::Number(answer.cut_long), Got::Number(answer.cut_short),
        ],
    )
}
fn head_opening(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::neck::head_opening(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.least_slit), Got::Number(answer.spare), Got::Whole(answer
            .doubts),
        ],
    )
}
fn hem_let_down(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::alteration::hem_let_down(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.left), Got::Number(answer.crease), Got::Number(answer
            .stitching), Got::Number(answer.longest), Got::Number(answer.longest_faced),
        ],
    )
}
fn hem_on_curve(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::seam::hem_on_curve(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.excess_pct), Got::Number(answer.excess),
            Got::Number(answer.raw_edge),
        ],
    )
}
fn hip_waist_drop(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::hip_waist_drop(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer.drop), Got::Whole(answer.doubts),])
}
fn holes_left(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::closure::holes_left(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Whole(answer.count.into()), Got::Number(answer.last), Got::Number(answer
            .to_end), Got::Whole(answer.doubts),
        ],
    )
}
fn insert_strip(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::alteration::insert_strip(
        given[0].number(),
        given[1].number(),
        given[2].count(),
        read_insert_place(&given[3]),
    )?;
    Ok(
        vec![
            Got::Number(answer.finished), Got::Number(answer.cut_width),
            Got::Number(answer.cloth),
        ],
    )
}
fn k_over_s(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::shade::k_over_s(given[0].number())?;
    Ok(vec![Got::Number(answer),])
}
fn knife_pleats(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fullness::knife_pleats(
        given[0].number(),
        given[1].count(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Whole(answer
            .count.into()), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Whole(answer.doubts),
        ],
    )
}
fn knife_pleats_count(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fullness::knife_pleats_count(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Whole(answer
            .count.into()), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Whole(answer.doubts),
        ],
    )
}
fn knife_pleats_depth(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fullness::knife_pleats_depth(
        given[0].number(),
        given[1].number(),
        given[2].count(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Whole(answer
            .count.into()), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Whole(answer.doubts),
        ],
    )
}
fn knife_pleats_finished(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fullness::knife_pleats_finished(
        given[0].number(),
        given[1].count(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Whole(answer
            .count.into()), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Whole(answer.doubts),
        ],
    )
}
fn lab_from_srgb(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::colour::lab_from_srgb(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer.l), Got::Number(answer.a), Got::Number(answer.b),])
}
fn lab_from_xyz(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::colour::lab_from_xyz(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
    )?;
    Ok(vec![Got::Number(answer.l), Got::Number(answer.a), Got::Number(answer.b),])
}
fn lacing(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fastening::lacing(
        given[0].count(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn length_chain(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::chain::length_chain(
        given[0].numbers(),
        given[1].numbers(),
        given[2].number(),
        given[3].count(),
    )?;
    Ok(
        vec![
            Got::Number(answer.value), Got::Number(answer.plus), Got::Number(answer
            .minus), Got::Number(answer.worst_per_mm), Got::Number(answer.likely_per_mm),
        ],
    )
}
fn length_chain_shares(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut parts = given[0].room(0, 100000);
    let mut misses = given[0].room(0, 100000);
    let answer = recloth::chain::length_chain_shares(
        given[0].numbers(),
        given[1].numbers(),
        given[2].numbers(),
        given[3].number(),
        given[4].count(),
        &mut parts,
        &mut misses,
        given[5].number(),
    )?;
    Ok(
        vec![
            Got::Numbers(parts), Got::Numbers(misses), Got::Number(answer.value),
            Got::Number(answer.worst), Got::Number(answer.likely), Got::Whole(answer
            .largest.into()), Got::Number(answer.largest_part),
        ],
    )
}
fn let_out(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::alteration::let_out(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].count(),
        given[5].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.lacking), Got::Number(answer.each), Got::Number(answer
            .gained), Got::Number(answer.short_by), Got::Whole(answer.doubts),
        ],
    )
}
fn level_line(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::arc::level_line(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.radius), Got::Number(answer.chord), Got::Number(answer
            .sag), Got::Number(answer.length),
        ],
    )
}
fn linear_light(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::colour::linear_light(given[0].number())?;
    Ok(vec![Got::Number(answer),])
}
fn lining_free_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::lining::lining_free_length(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn lining_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::lining::lining_length(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.seam_to_seam), Got::Number(answer.straight),
            Got::Number(answer.spare), Got::Number(answer.fold), Got::Whole(answer
            .doubts),
        ],
    )
}
fn lining_width(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::lining::lining_width(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn liquor_shares(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut shares_ml = given[0].room(0, 1000000);
    let mut waters_ml = given[0].room(0, 1000000);
    let answer = recloth::wet::liquor_shares(
        given[0].numbers(),
        given[1].number(),
        given[2].number(),
        &mut shares_ml,
        &mut waters_ml,
    )?;
    Ok(
        vec![
            Got::Numbers(shares_ml), Got::Numbers(waters_ml), Got::Number(answer
            .bath_ml), Got::Number(answer.water_ml), Got::Whole(answer.doubts),
            Got::Whole(answer.cautions),
        ],
    )
}
fn loop_slack(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::closure::loop_slack(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
        given[5].number(),
        read_button_shape(&given[6]),
    )?;
    Ok(vec![Got::Number(answer.slack), Got::Whole(answer.doubts),])
}
fn mix_temperature(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::mix_temperature(
        given[0].numbers(),
        given[1].numbers(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.temperature_c), Got::Number(answer.volume_ml),
            Got::Whole(answer.doubts), Got::Whole(answer.cautions),
        ],
    )
}
fn nap_layout(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::nap::nap_layout(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].count(),
        given[4].number(),
    )?;
    Ok(
        vec![
            Got::Whole(answer.across_one_way.into()), Got::Whole(answer.across_turned
            .into()), Got::Number(answer.length_one_way), Got::Number(answer
            .length_turned), Got::Number(answer.nap_extra), Got::Whole(answer.doubts),
        ],
    )
}
fn neck_bust_doubts(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::neck_bust_doubts(given[0].number(), given[1].number())?;
    Ok(vec![Got::Whole(answer),])
}
fn needle_blade(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::needle::needle_blade(given[0].count())?;
    Ok(vec![Got::Number(answer.blade), Got::Number(answer.thread),])
}
fn needle_metric(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::needle::needle_metric(given[0].count())?;
    Ok(vec![Got::Number(answer),])
}
fn negative_ease(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::stretch::negative_ease(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.girth), Got::Number(answer.ease), Got::Number(answer
            .furthest), Got::Whole(answer.doubts),
        ],
    )
}
fn neutraliser(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bleach::neutraliser(
        given[0].number(),
        given[1].number(),
        read_reaction(&given[2]),
        read_stage(&given[3]),
        read_in_bath(&given[4]),
        given[5].number(),
        given[6].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.chlorine_g), Got::Number(answer.amount_g),
            Got::Number(answer.ratio), Got::Whole(answer.doubts), Got::Whole(answer
            .cautions),
        ],
    )
}
fn off_centre_opening(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::opening::off_centre_opening(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
        given[5].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.narrow_to_line), Got::Number(answer.wide_to_line),
            Got::Number(answer.narrow_cut), Got::Number(answer.wide_cut),
            Got::Number(answer.largest_shift), Got::Number(answer.dart_to_narrow),
            Got::Number(answer.dart_to_wide), Got::Whole(answer.doubts),
        ],
    )
}
fn overdye(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::shade::overdye(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.pale), Got::Number(answer.deep), Got::Number(answer
            .pale_l), Got::Number(answer.deep_l),
        ],
    )
}
fn owf(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::owf(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.amount_g), Got::Whole(answer.doubts), Got::Whole(answer
            .cautions),
        ],
    )
}
fn panel_by_offsets(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut left_bow = given[0].room(0, 100000);
    let mut right_bow = given[0].room(0, 100000);
    let answer = recloth::offsets::panel_by_offsets(
        given[0].numbers(),
        given[1].numbers(),
        given[2].numbers(),
        &mut left_bow,
        &mut right_bow,
    )?;
    Ok(
        vec![
            Got::Numbers(left_bow), Got::Numbers(right_bow), Got::Number(answer.area),
            Got::Number(answer.length), Got::Number(answer.widest), Got::Number(answer
            .narrowest), Got::Number(answer.largest_bow),
        ],
    )
}
fn panel_by_triangles(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut along = given[1].room(2, 63);
    let mut across = given[1].room(2, 63);
    let mut misfits = given[6].room(0, 63);
    let answer = recloth::panel::panel_by_triangles(
        given[0].number(),
        given[1].counts(),
        given[2].counts(),
        given[3].numbers(),
        given[4].numbers(),
        given[5].counts(),
        given[6].counts(),
        given[7].counts(),
        given[8].numbers(),
        &mut along,
        &mut across,
        &mut misfits,
    )?;
    Ok(
        vec![
            Got::Numbers(along), Got::Numbers(across), Got::Numbers(misfits),
            Got::Number(answer.area), Got::Number(answer.perimeter), Got::Number(answer
            .largest_misfit), Got::Whole(answer.weakest_corner.into()),
            Got::Number(answer.weakest_per_mm), Got::Whole(answer.doubts),
        ],
    )
}
fn parse_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::parse_length(given[0].text())?;
    Ok(vec![Got::Number(answer),])
}
fn photo_map(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut along = given[4].room(0, 1000000);
    let mut across = given[4].room(0, 1000000);
    let mut scales = given[4].room(0, 1000000);
    let answer = recloth::photo::photo_map(
        given[0].numbers(),
        given[1].numbers(),
        given[2].numbers(),
        given[3].numbers(),
        given[4].numbers(),
        given[5].numbers(),
        &mut along,
        &mut across,
        &mut scales,
    )?;
    Ok(
        vec![
            Got::Numbers(along), Got::Numbers(across), Got::Numbers(scales),
            Got::Number(answer.reach), Got::Number(answer.coarsest), Got::Whole(answer
            .doubts),
        ],
    )
}
fn pieced_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::piecing::pieced_length(
        given[0].numbers(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.joined), Got::Number(answer.spare), Got::Whole(answer
            .joins.into()), Got::Whole(answer.fewest.into()),
        ],
    )
}
fn piping_width(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::piping_width(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn plant_dyestuff(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::dye::plant_dyestuff(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        read_basis(&given[3]),
        read_basis(&given[4]),
        given[5].number(),
        given[6].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.low_g), Got::Number(answer.high_g), Got::Whole(answer
            .doubts), Got::Whole(answer.cautions),
        ],
    )
}
fn pooled_strength(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::pooled_strength(given[0].numbers(), given[1].numbers())?;
    Ok(
        vec![
            Got::Number(answer.strength_pct), Got::Number(answer.volume_ml),
            Got::Whole(answer.cautions),
        ],
    )
}
fn puff_spread(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::sleeve::puff_spread(
        given[0].number(),
        given[1].number(),
        given[2].count(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.added), Got::Number(answer
            .spread_each), Got::Number(answer.strip_ratio), Got::Whole(answer.doubts),
        ],
    )
}
fn reflectance(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::shade::reflectance(given[0].number())?;
    Ok(vec![Got::Number(answer),])
}
fn relative_strength(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::shade::relative_strength(
        given[0].number(),
        given[1].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn remaining_width(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::remaining_width(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].count(),
        given[4].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn repeats(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::quantity::repeats(
        given[0].number(),
        given[1].number(),
        given[2].count(),
    )?;
    Ok(
        vec![
            Got::Whole(answer.repeats.into()), Got::Number(answer.each),
            Got::Number(answer.total), Got::Number(answer.waste),
        ],
    )
}
fn ribbing(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::elastic::ribbing(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.round), Got::Number(answer.cut_length), Got::Number(answer
            .cut_width), Got::Number(answer.stretch_pct),
        ],
    )
}
fn rinses(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::rinses(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Whole(answer.rinses_low.into()), Got::Whole(answer.rinses_high.into()),
            Got::Number(answer.left), Got::Number(answer.water_ml), Got::Whole(answer
            .doubts), Got::Whole(answer.cautions),
        ],
    )
}
fn round_set(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut tapes = given[0].room(0, 100000);
    let answer = recloth::tape::round_set(
        given[0].numbers(),
        given[1].number(),
        &mut tapes,
    )?;
    Ok(
        vec![
            Got::Numbers(tapes), Got::Number(answer.total), Got::Number(answer
            .largest_change),
        ],
    )
}
fn round_to(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::round_to(
        given[0].number(),
        given[1].number(),
        read_rounding(&given[2]),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn ruffle(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fullness::ruffle(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
        given[5].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.cut_width), Got::Whole(answer
            .strips.into()), Got::Number(answer.cloth_length), Got::Whole(answer.doubts),
        ],
    )
}
fn screen_level(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::colour::screen_level(given[0].number())?;
    Ok(vec![Got::Number(answer),])
}
fn seam_pleat(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::pleat::seam_pleat(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.first_edge), Got::Number(answer.next_edge),
            Got::Number(answer.intake),
        ],
    )
}
fn sectioned_band(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut tops = given[0].room(0, 100000);
    let answer = recloth::band::sectioned_band(
        given[0].numbers(),
        given[1].number(),
        given[2].number(),
        read_square_ends(&given[3]),
        &mut tops,
    )?;
    Ok(
        vec![
            Got::Numbers(tops), Got::Number(answer.slant), Got::Number(answer
            .end_angle_deg), Got::Number(answer.join_kink_deg), Got::Whole(answer
            .doubts),
        ],
    )
}
fn shaped_band(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::band::shaped_band(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.inner_radius), Got::Number(answer.outer_radius),
            Got::Number(answer.angle_deg), Got::Number(answer.sagitta),
            Got::Number(answer.area_mm2),
        ],
    )
}
fn share(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::share(
        given[0].number(),
        given[1].number(),
        given[2].count(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn shirring(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::elastic::shirring(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.ratio), Got::Whole(answer.rows
            .into()), Got::Number(answer.stitching), Got::Whole(answer.cautions),
        ],
    )
}
fn shrink_pair(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::cloth::shrink_pair(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.shell_after), Got::Number(answer.lining_after),
            Got::Number(answer.below), Got::Number(answer.shell_cut), Got::Number(answer
            .lining_cut), Got::Whole(answer.doubts),
        ],
    )
}
fn size_step(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::alteration::size_step(
        given[0].number(),
        given[1].number(),
        given[2].count(),
        given[3].count(),
    )?;
    Ok(
        vec![
            Got::Number(answer.step), Got::Number(answer.each_edge), Got::Whole(answer
            .doubts),
        ],
    )
}
fn skew(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::cloth::skew(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer),])
}
fn skew_diagonals(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::cloth::skew_diagonals(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer),])
}
fn snip_spacing(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::seam::snip_spacing(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer.spacing), Got::Number(answer.flat),])
}
fn spacing_by_pitch(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fastening::spacing_by_pitch(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Whole(answer.count.into()), Got::Number(answer.pitch),])
}
fn spacing_through(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut places = given[3].room(0, 1000);
    let answer = recloth::closure::spacing_through(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].count(),
        &mut places,
    )?;
    Ok(
        vec![
            Got::Numbers(places), Got::Number(answer.pitch_before), Got::Number(answer
            .pitch_after), Got::Whole(answer.fixed.into()), Got::Whole(answer.doubts),
        ],
    )
}
fn srgb_from_lab(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::colour::srgb_from_lab(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.red), Got::Number(answer.green), Got::Number(answer.blue),
            Got::Whole(answer.outside.into()),
        ],
    )
}
fn srgb_from_xyz(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::colour::srgb_from_xyz(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.red), Got::Number(answer.green), Got::Number(answer.blue),
            Got::Whole(answer.outside.into()),
        ],
    )
}
fn stitch_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::stitch_length(given[0].number())?;
    Ok(vec![Got::Number(answer),])
}
fn stock_volume(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::stock_volume(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.stock_ml), Got::Number(answer.amount_g), Got::Whole(answer
            .doubts), Got::Whole(answer.cautions),
        ],
    )
}
fn straight_band(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::band::straight_band(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
        read_band_make(&given[5]),
    )?;
    Ok(
        vec![
            Got::Number(answer.cut_length), Got::Number(answer.cut_width),
            Got::Whole(answer.strips.into()), Got::Whole(answer.doubts),
        ],
    )
}
fn straight_band_depth(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::band::straight_band_depth(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        read_band_make(&given[3]),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn stretch_pct(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::stretch::stretch_pct(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer),])
}
fn take_in(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::alteration::take_in(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].count(),
        given[4].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.excess), Got::Number(answer.each), Got::Number(answer
            .taken), Got::Number(answer.leftover), Got::Whole(answer.doubts),
        ],
    )
}
fn tex_from_cotton_count(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::tex_from_cotton_count(
        given[0].number(),
        given[1].count(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn tex_from_denier(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::tex_from_denier(given[0].number())?;
    Ok(vec![Got::Number(answer),])
}
fn tex_from_metric_count(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::tex_from_metric_count(
        given[0].number(),
        given[1].count(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn thread_for_seam(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::thread::thread_for_seam(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn thread_ratio(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::thread::thread_ratio(
        given[0].number(),
        given[1].number(),
        read_stitch_type(&given[2]),
    )?;
    Ok(vec![Got::Number(answer),])
}
fn tiers(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut flats = given[1].room(0, 10);
    let answer = recloth::tier::tiers(
        given[0].number(),
        given[1].numbers(),
        &mut flats,
    )?;
    Ok(
        vec![
            Got::Numbers(flats), Got::Number(answer.hem), Got::Number(answer.ratio),
            Got::Number(answer.strip), Got::Whole(answer.doubts),
        ],
    )
}
fn tolerance_stack(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::chain::tolerance_stack(given[0].count(), given[1].number())?;
    Ok(vec![Got::Number(answer.worst), Got::Number(answer.likely),])
}
fn tolerance_stack_list(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::chain::tolerance_stack_list(
        given[0].numbers(),
        given[1].counts(),
    )?;
    Ok(
        vec![
            Got::Number(answer.worst), Got::Number(answer.likely), Got::Whole(answer
            .largest.into()), Got::Number(answer.largest_part),
        ],
    )
}
fn trilaterate(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::panel::trilaterate(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.along), Got::Number(answer.across), Got::Number(answer
            .along_per_mm), Got::Number(answer.across_per_mm), Got::Whole(answer.doubts),
        ],
    )
}
fn tucks(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::pleat::tucks(
        given[0].number(),
        given[1].count(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.taken_up), Got::Number(answer
            .fold_pitch), Got::Number(answer.gap), Got::Number(answer.margin),
            Got::Whole(answer.doubts),
        ],
    )
}
fn turn_through(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::seam::turn_through(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.diameter), Got::Number(answer.least_opening),
            Got::Number(answer.spare),
        ],
    )
}
fn turned_hem(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::seam::turned_hem(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(vec![Got::Number(answer.allowance), Got::Number(answer.cut_length),])
}
fn v_neck(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::neck::v_neck(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.edge), Got::Number(answer.off_grain_deg),
            Got::Number(answer.stay),
        ],
    )
}
fn waist_hip_doubts(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::waist_hip_doubts(given[0].number(), given[1].number())?;
    Ok(vec![Got::Whole(answer),])
}
fn washes(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::cloth::washes(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].count(),
    )?;
    Ok(
        vec![
            Got::Number(answer.after), Got::Number(answer.change_pct), Got::Whole(answer
            .doubts),
        ],
    )
}
fn wearing_ease(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::ease::wearing_ease(
        given[0].number(),
        read_ease_place(&given[1]),
    )?;
    Ok(
        vec![
            Got::Number(answer.low), Got::Number(answer.high), Got::Number(answer
            .garment_low), Got::Number(answer.garment_high), Got::Whole(answer.doubts),
        ],
    )
}
fn width_conversion(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::quantity::width_conversion(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.by_area), Got::Number(answer.low), Got::Number(answer
            .high), Got::Whole(answer.doubts),
        ],
    )
}
fn wrap_skirt(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::skirt::wrap_skirt(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.back_waist), Got::Number(answer.back_hip),
            Got::Number(answer.front_waist), Got::Number(answer.front_hip),
            Got::Number(answer.waist_edge), Got::Number(answer.wrap_pct),
            Got::Whole(answer.doubts),
        ],
    )
}
fn xyz_from_lab(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::colour::xyz_from_lab(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer.x), Got::Number(answer.y), Got::Number(answer.z),])
}
fn xyz_from_srgb(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::colour::xyz_from_srgb(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer.x), Got::Number(answer.y), Got::Number(answer.z),])
}
fn zigzag_buttonhole(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fastening::zigzag_buttonhole(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.length), Got::Number(answer.width), Got::Whole(answer
            .stitches.into()),
        ],
    )
}
fn zip_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fastening::zip_length(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
        given[4].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.needed), Got::Number(answer.buy), Got::Number(answer
            .shorten), Got::Number(answer.top_stop), Got::Number(answer.bottom_stop),
        ],
    )
}
fn zip_opening(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fastening::zip_opening(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer),])
}
/// Every file of the core with functions, in the order of the work.
pub static MODULES: &[Module] = &[
    Module {
        name: "tape",
        summary: "Lengths as they are written on a tape: reading, printing and rounding them.",
    },
    Module {
        name: "chain",
        summary: "Chains of lengths: one unknown, and how errors add up.",
    },
    Module {
        name: "panel",
        summary: "Panels measured by tape: corners, area, what is usable, and the rectangles in it.",
    },
    Module {
        name: "offsets",
        summary: "Panels measured by offsets from a grain line.",
    },
    Module {
        name: "photo",
        summary: "Points of a panel from a photograph.",
    },
    Module {
        name: "arc",
        summary: "Arcs, and cones unrolled.",
    },
    Module {
        name: "body",
        summary: "Body measures: sharing a girth over panels, and doubts on measures.",
    },
    Module {
        name: "ease",
        summary: "Wearing ease: what a garment has more than the body, as authors give it.",
    },
    Module {
        name: "alteration",
        summary: "Taking in and letting out, strips let in, hems let down, and the step from size to size.",
    },
    Module {
        name: "piecing",
        summary: "A length made of scraps joined end to end.",
    },
    Module {
        name: "dart",
        summary: "Darts.",
    },
    Module {
        name: "skirt",
        summary: "Skirts cut from part of a ring.",
    },
    Module {
        name: "gore",
        summary: "Gored skirts, and godets and gussets let in.",
    },
    Module {
        name: "tier",
        summary: "Tiers, flounces and the breadths of cloth they are joined from.",
    },
    Module {
        name: "opening",
        summary: "Openings off the centre line.",
    },
    Module {
        name: "band",
        summary: "Waistbands: straight, folded, shaped and in sections.",
    },
    Module {
        name: "neck",
        summary: "Necks and the openings a head or a body must pass.",
    },
    Module {
        name: "sleeve",
        summary: "Sleeves: the cap against its armhole, and puffs.",
    },
    Module {
        name: "lining",
        summary: "Linings.",
    },
    Module {
        name: "closure",
        summary: "Buttonholes, buttons, loops and their spacing.",
    },
    Module {
        name: "fastening",
        summary: "Rows of buttons by pitch, button stands, worked buttonholes, zips and lacing.",
    },
    Module {
        name: "fullness",
        summary: "Gathers and pleats.",
    },
    Module {
        name: "pleat",
        summary: "Box and inverted pleats, and tucks.",
    },
    Module {
        name: "elastic",
        summary: "Elastic, casings, shirring and ribbing.",
    },
    Module {
        name: "bias",
        summary: "Strips cut on the bias.",
    },
    Module {
        name: "binding",
        summary: "Bindings: how long a strip, and how it goes round a curve.",
    },
    Module {
        name: "seam",
        summary: "Seams and hems: allowances on curves, turned hems, drawn and cut sizes, turning through, thread.",
    },
    Module {
        name: "thread",
        summary: "Sewing thread.",
    },
    Module {
        name: "needle",
        summary: "Machine needles: sizes, blades, and the thread that goes with them.",
    },
    Module {
        name: "cloth",
        summary: "Cloth in the wash: dimensional change and skew.",
    },
    Module {
        name: "quantity",
        summary: "How much cloth: mass, other widths, repeats, what to buy.",
    },
    Module {
        name: "nap",
        summary: "Cloth with a nap, or printed one way: what it takes that all pieces lie the same way up.",
    },
    Module {
        name: "stretch",
        summary: "Cloth that gives: how far, and how much smaller than the body it is cut.",
    },
    Module {
        name: "fibre",
        summary: "What fibres bear and what colour they take; an unknown fibre counts as the most delicate.",
    },
    Module {
        name: "wet",
        summary: "Baths: liquor and what goes into it.",
    },
    Module {
        name: "bleach",
        summary: "Chlorine bleach: how strong, how long, and how it is stopped. Nothing here answers without its cautions.",
    },
    Module {
        name: "dye",
        summary: "Plant dyes and their binders: always from a low to a high, for the stuff itself varies.",
    },
    Module {
        name: "colour",
        summary: "Colours as numbers: screen levels, XYZ, CIELAB, and how far apart two colours look.",
    },
    Module {
        name: "shade",
        summary: "Depth of shade by Kubelka and Munk: what dye over cloth comes to, and how deep it must be to hide a mark.",
    },
];
/// Functions of outlines, which take more than plain values: names and first sentences.
pub static SHAPES: &[(&str, &str)] = &[
    (
        "largest_rectangle",
        "Largest rectangle, one side on grain, that a panel of any shape holds.",
    ),
    (
        "measured_edge",
        "Points measured along an edge as an edge, to be copied onto a piece: straight from point to point, or smoothly through them all (`name 1`, `name 2`: an edge from each point to the next). It is a seam without allowance.",
    ),
    (
        "sentence",
        "An error of a piece as a sentence that names the piece and, where `at` is the index of one, the edge.",
    ),
    (
        "tallest_rectangle",
        "Tallest rectangle of a given width, one side on grain, that a panel of any shape holds.",
    ),
    (
        "true_up",
        "Trues up edges that meet at seams and darts: a waist over darts and side seams, a hem over gores, a neckline over shoulders. Each of two edges that meet in a kink is turned there by half of it, or one by all of it where the other is kept, so that sewn together they run on smoothly. Corners stay where they are, so no seam changes its length; an edge is drawn anew between them with its tangents turned: a line or an arc turned alike at both ends stays an arc, else it becomes a cubic, an arc of more than a quarter circle several (`name 1`, `name 2`). At a dart the mouth then gets the cap of [`Piece::cap_dart`].",
    ),
    (
        "usable_panel",
        "What is left of a panel: its outline less a strip along each edge and less each flaw with a margin round it.",
    ),
];
/// Every function, in order of name.
pub static FUNCTIONS: &[Function] = &[
    Function {
        name: "arc_from_rise",
        module: "arc",
        summary: "Radius and length of the curve that rises so far over its chord.",
        description: "`radius = (chord² / 4 + rise²) / (2 · rise)`, angle `4 · atan(2 · rise / chord)`, length their product. For a waist,\nhem or yoke edge on a panel there is: lay a ruler across its ends and measure the rise in the middle, where the curve\nis near enough an arc. A rise above half the chord is more than a half ring.",
        arguments: &[
            Argument {
                name: "chord",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "straight from end to end",
            },
            Argument {
                name: "rise",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "height of the curve over the chord's middle",
            },
        ],
        answers: &[
            Answer {
                name: "radius",
                unit: "mm",
                meaning: "Radius of the arc",
            },
            Answer {
                name: "length",
                unit: "mm",
                meaning: "Length along the arc",
            },
            Answer {
                name: "angle_deg",
                unit: "deg",
                meaning: "Angle from end to end, seen from the centre",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Plane geometry. *The Practical Designer*, women's volume, Rosenfeld 1918, lesson 73 has a waist so drafted; see\n`tests/vectors/arc_from_rise.csv`.",
        example: &["317.5", "38.1"],
        call: arc_from_rise,
    },
    Function {
        name: "assistant_volume",
        module: "wet",
        summary: "Volume of a stock solution for so many grams in a litre of bath.",
        description: "`stock = mass · ratio · grams / (10 · stock_pct)`: salt, soda and other assistants go by the bath, not by the goods. Usual\nare up to 100 g of salt; more than 150 g in a litre, and a stock outside 0.05 to 50, are doubted.",
        arguments: &[
            Argument {
                name: "mass_g",
                kind: Kind::Number,
                unit: "g",
                range: Some([0.01, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "dry mass of the goods",
            },
            Argument {
                name: "ratio",
                kind: Kind::Number,
                unit: "1",
                range: Some([1.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "liquor to goods, by mass",
            },
            Argument {
                name: "grams",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "grams in a litre of bath",
            },
            Argument {
                name: "stock_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.001, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "grams in 100 ml of the stock",
            },
        ],
        answers: &[
            Answer {
                name: "stock_ml",
                unit: "ml",
                meaning: "Stock solution to measure out",
            },
            Answer {
                name: "amount_g",
                unit: "g",
                meaning: "What that holds",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "R. Sohel, textile calculation pages, 2014-12 and 2015-01. Where doubts begin: common practice, no source.",
        example: &["5", "10", "20", "25"],
        call: assistant_volume,
    },
    Function {
        name: "available_chlorine",
        module: "bleach",
        summary: "Available chlorine of bleach from the sodium hypochlorite on its label.",
        description: "`available = NaOCl · 70.906 / 74.442`. Labels mix three percentages: sodium hypochlorite by mass, available chlorine by\nmass, and grams of available chlorine in 100 ml; a bottle marked 10 or 12.5 usually means the last. Which one a label\nmeans changes the answer by up to a fifth. A public health table that takes 5 % hypochlorite as 5 % available chlorine\nis 5 % off, on purpose. Bleach weakens in store: an old bottle is weaker than its label, never stronger. Outside 1 to\n15 % the strength is doubted: 0.05 may be a share for 5 %.",
        arguments: &[
            Argument {
                name: "naocl_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.1, 20.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "sodium hypochlorite by mass",
            },
            Argument {
                name: "specific_gravity",
                kind: Kind::Number,
                unit: "1",
                range: Some([1.0, 1.3]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.1)),
                meaning: "mass of a millilitre of it (g)",
            },
        ],
        answers: &[
            Answer {
                name: "available_pct",
                unit: "%",
                meaning: "Available chlorine by mass",
            },
            Answer {
                name: "trade_pct",
                unit: "%",
                meaning: "Available chlorine in grams in 100 ml, which the trade also calls percent",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Molar masses of Cl2 and NaOCl. *Handbook of Chlorination*, Van Nostrand Reinhold 1972, after a supplier's product\nprofile (trade percent). A specific gravity of 1.1: a worked example on a pool-chemistry forum. Bottles of 1 to 15 %:\ncommon practice, no source.",
        example: &["5.25", "1.1"],
        call: available_chlorine,
    },
    Function {
        name: "batches",
        module: "wet",
        summary: "Which garment goes into which bath, when one vessel does not hold all.",
        description: "The vessel takes `vessel · fill / ratio` of dry goods. The heaviest garment is placed first, each into the first bath\nwith room (first fit decreasing); where `batches` is `least`, no sharing out needs fewer. A garment is never split, and\npieces that are to be one garment belong into one bath: give them as one mass. Two baths seldom match in shade.",
        arguments: &[
            Argument {
                name: "masses_g",
                kind: Kind::Numbers,
                unit: "g",
                range: Some([0.01, 1000000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 100)),
                default: None,
                meaning: "dry mass of each garment",
            },
            Argument {
                name: "vessel_ml",
                kind: Kind::Number,
                unit: "ml",
                range: Some([1.0, 100000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "what the vessel holds to the brim",
            },
            Argument {
                name: "ratio",
                kind: Kind::Number,
                unit: "1",
                range: Some([1.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "liquor to goods, by mass",
            },
            Argument {
                name: "fill",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.1, 1.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.75)),
                meaning: "part of the vessel filled with liquor; the rest is goods and room to stir",
            },
        ],
        answers: &[
            Answer {
                name: "numbers",
                unit: "1",
                meaning: "number of each garment's bath, from 1",
            },
            Answer {
                name: "batches",
                unit: "count",
                meaning: "Baths needed, shared out as given",
            },
            Answer {
                name: "least",
                unit: "count",
                meaning: "Fewest that any sharing out could need, by total mass",
            },
            Answer {
                name: "capacity_g",
                unit: "g",
                meaning: "Most that the vessel takes at once",
            },
            Answer {
                name: "heaviest_g",
                unit: "g",
                meaning: "Heaviest bath",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room` when `numbers` is too short. `NoSolution` naming\n`vessel_ml` when it does not take the heaviest garment; its `min` is the least vessel that would.",
        source: "Arithmetic; first fit decreasing is a usual method. Three quarters full is common practice, no source.",
        example: &["170 380 120 200", "12000", "18", "0.75"],
        call: batches,
    },
    Function {
        name: "bath_volume",
        module: "wet",
        summary: "Volume of a bath from the dry mass of goods and the liquor ratio.",
        description: "`volume = mass · ratio`, a litre of liquor taken as a kilogram: 20 is 20 litres a kilogram, often written 1:20. The\nvessel must hold more than this: the goods, and room to stir.",
        arguments: &[
            Argument {
                name: "mass_g",
                kind: Kind::Number,
                unit: "g",
                range: Some([0.01, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "dry mass of the goods",
            },
            Argument {
                name: "ratio",
                kind: Kind::Number,
                unit: "1",
                range: Some([1.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "liquor to goods, by mass",
            },
        ],
        answers: &[
            Answer {
                name: "volume_ml",
                unit: "ml",
                meaning: "Volume of liquor",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "R. Sohel, textile calculation pages, 2015 (5 g at 1:10 is 50 ml). The doubt's 3 to 40: the smallest ratio of an\nequipment page and above the largest home recipe seen (37.6); common practice.",
        example: &["380", "20"],
        call: bath_volume,
    },
    Function {
        name: "bias_along_selvedge",
        module: "bias",
        summary: "Distance along the selvedge between the cuts of a true bias strip.",
        description: "A strip of width `w`, measured square to its edges, lies at 45° to the selvedge and meets it over `w · √2`. The old\nrule of a third more comes out 6 % short.",
        arguments: &[
            Argument {
                name: "width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the strip, square to its edges",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Distance along the selvedge, and equally across the cloth",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "L. I. Baldt, *Clothing for Women*, 1916, ch. XXII, table of measures along the selvage: every row within 0.08 in.",
        example: &["100"],
        call: bias_along_selvedge,
    },
    Function {
        name: "bias_square",
        module: "bias",
        summary: "Side of the square of cloth that holds a bias strip of a given length and width.",
        description: "`side = √(length · width)`: the strip's area as a square, which the continuous tube comes near to. It is the least:\nadd 25 to 50 mm (1 to 2 in) for the seams, more if the strip is pieced from separate strips.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of strip needed, joins included",
            },
            Argument {
                name: "width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 10000.0]),
                conditions: &["<= length"],
                items: None,
                default: None,
                meaning: "cut width of the strip, square to its edges",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Side of the square, without seams",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `width` when it is more than the length: the\ntwo are swapped.",
        source: "Equal areas. `tests/vectors/bias_square.csv` has published and hand-worked rows.",
        example: &["4000", "40"],
        call: bias_square,
    },
    Function {
        name: "bias_strip_length",
        module: "bias",
        summary: "Length of bias strip that a square of cloth gives.",
        description: "`length = side² / width`, the other way of `bias_square`. It is the most: seams and end triangles take from it (72\nin by the sum, a 12 in square has given about 60 in of 2 in strip). Take the seams' allowances off the side first.",
        arguments: &[
            Argument {
                name: "side",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "side of the square, less its seams",
            },
            Argument {
                name: "width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 10000.0]),
                conditions: &["<= side"],
                items: None,
                default: None,
                meaning: "cut width of the strip, square to its edges",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Length of the strip, at most",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `width` when it is more than the side.",
        source: "Equal areas. `tests/vectors/bias_strip_length.csv` has published rows.",
        example: &["400", "40"],
        call: bias_strip_length,
    },
    Function {
        name: "bias_strips",
        module: "bias",
        summary: "Strips that a rectangle gives when it is cut across at 45°, and their length when joined.",
        description: "The first cut runs from a corner, and the others lie `strip · √2` apart along the selvedge to both sides of it. Between the\ntwo corners' cuts the strips are full, `√2` times the shorter side; in the two end triangles each is shorter than the one\nbefore. Strips shorter than `shortest`, or than a join takes, are left out. Ends are cut on the straight grain, and each\njoin takes `2 · √2 · allowance` along the strip. Fewer, longer pieces come from `bias_tube`.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([10.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "one side of the rectangle, on grain",
            },
            Argument {
                name: "width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([10.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "the other side",
            },
            Argument {
                name: "strip",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of a strip, square to its edges",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(6.0)),
                meaning: "seam allowance at each join",
            },
            Argument {
                name: "shortest",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(100.0)),
                meaning: "shortest strip worth joining",
            },
        ],
        answers: &[
            Answer {
                name: "strips",
                unit: "count",
                meaning: "Number of strips",
            },
            Answer {
                name: "longest",
                unit: "mm",
                meaning: "Length of the longest, along its shorter edge",
            },
            Answer {
                name: "joined",
                unit: "mm",
                meaning: "All strips joined on the straight grain, what the joins take left off",
            },
            Answer {
                name: "kept_pct",
                unit: "%",
                meaning: "Share of the cloth in them before joining",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `strip` when the cloth holds none so wide; naming\n`allowance` when a join takes the longest strip; naming `shortest` when no strip is as long as that, with the longest as\n`max`.",
        source: "Plane geometry. `tests/vectors/bias_strips.csv` has published and hand-worked rows: a tutorial gets about 60 in of 2 in strips\nfrom a 12 in square, where its area would give 72.",
        example: &["700", "300", "40", "6", "100"],
        call: bias_strips,
    },
    Function {
        name: "bias_tube",
        module: "bias",
        summary: "One long bias strip from a rectangle sewn to a slanted tube.",
        description: "A corner is cut off at 45° and sewn to the other end; the slanted piece is marked in strips, its long sides are sewn\ntogether one strip out of step, and the spiral is cut. Both seams cross every turn on the straight grain. The first seam\ntakes two allowances of the long side, the second two of the short: `turns = floor((long - 2 · allowance) / (strip · √2))`,\n`length = turns · (short - 2 · allowance) · √2`. Area alone, `long · short / strip`, promises up to one turn more.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([10.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "one side of the rectangle, on grain",
            },
            Argument {
                name: "width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([10.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "the other side",
            },
            Argument {
                name: "strip",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the strip, square to its edges",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(6.0)),
                meaning: "allowance of both seams",
            },
        ],
        answers: &[
            Answer {
                name: "turns",
                unit: "count",
                meaning: "Turns of the strip round the tube",
            },
            Answer {
                name: "length",
                unit: "mm",
                meaning: "Length of the strip",
            },
            Answer {
                name: "leftover",
                unit: "mm",
                meaning: "What is left over along the long side, less than one turn",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the short side; naming `strip`\nwhen not one turn is had.",
        source: "Plane geometry. A tutorial counts area, and only one allowance off each side: 22 in square, 3 in strips, 1/4 in: 157.7 in,\nwhere five whole turns give 152. `tests/vectors/bias_tube.csv` has published and hand-worked rows.",
        example: &["700", "300", "40", "6"],
        call: bias_tube,
    },
    Function {
        name: "binder_solids",
        module: "dye",
        summary: "Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.",
        description: "`bath = solids / (1 + parts)`; each dip, dried between, leaves `bath · pick_up / 100` on weight of fibre. Homemade soymilk\nholds about 10 % of bean, bought 3 to 6 % of solids: the two are not the same measure, so read the label. A binder of\nfood goes off: make it fresh, keep it cool, throw it away when it smells, and tell those who have an allergy to it. Solids\noutside 0.1 to 20 % and a pick-up below 10 % are doubted.",
        arguments: &[
            Argument {
                name: "low_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.01, 50.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "solids of the binder undiluted, least",
            },
            Argument {
                name: "high_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.01, 50.0]),
                conditions: &[">= low_pct"],
                items: None,
                default: None,
                meaning: "solids of the binder undiluted, most",
            },
            Argument {
                name: "parts_water",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "parts of water to one of binder",
            },
            Argument {
                name: "pick_up_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([1.0, 500.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "liquor held after wringing, on dry mass",
            },
            Argument {
                name: "dips",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 50.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "dips, dried between",
            },
        ],
        answers: &[
            Answer {
                name: "bath_low_pct",
                unit: "%",
                meaning: "Solids in the diluted binder, least",
            },
            Answer {
                name: "bath_high_pct",
                unit: "%",
                meaning: "Solids in the diluted binder, most",
            },
            Answer {
                name: "owf_low_pct",
                unit: "%",
                meaning: "Solids on weight of fibre after all dips, least",
            },
            Answer {
                name: "owf_high_pct",
                unit: "%",
                meaning: "Solids on weight of fibre after all dips, most",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `high_pct` when it is less than `low_pct`.",
        source: "Arithmetic. Strengths and 1 part to 5 of water: vickifearon.com; rachelbakewell; tondro.com, 2009. Where doubts begin:\ncommon practice, no source.",
        example: &["3", "6", "5", "90", "4"],
        call: binder_solids,
    },
    Function {
        name: "binding_length",
        module: "binding",
        summary: "Length of binding for an edge, with what its corners and its two ends take.",
        description: "`length = edge + corners · corner + finish`. A corner turned outward with a mitre takes, by the geometry of its fold, no\nmore than the edge itself; what makers allow is for handling and for a fold that is sewn over. One tutorial allows about\n16 in over the perimeter of a square for everything; the defaults are that, shared 2 in to a corner and 8 in to the two\nends, a share of ours. A neck or an armhole has no corners and takes two allowances to finish. How many strips give the\nlength, with what each join loses: `binding_strips`.",
        arguments: &[
            Argument {
                name: "edge",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of the edge to be bound",
            },
            Argument {
                name: "corners",
                kind: Kind::Count,
                unit: "count",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "corners to be mitred",
            },
            Argument {
                name: "corner",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(50.8)),
                meaning: "allowed for each of them",
            },
            Argument {
                name: "finish",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(203.2)),
                meaning: "for joining or finishing the two ends",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Length of binding",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic; quiltingboard.com, post 8276918 (64 in square: 256 in and about 16). `tests/vectors/binding_length.csv`.",
        example: &["6502.4", "4", "50.8", "203.2"],
        call: binding_length,
    },
    Function {
        name: "binding_strips",
        module: "bias",
        summary: "Number of strips of one length to join for a binding.",
        description: "Each join takes `join` off the two strips together: `count` is the least with\n`count · strip - (count - 1) · join >= length`. Strips with square ends, crossed and joined from corner to corner at 45°,\nlose their own width at each join; with ends cut at 45°, √2 times the two allowances; joined end to end, the two\nallowances.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of binding needed, corners and ends included",
            },
            Argument {
                name: "strip",
                kind: Kind::Number,
                unit: "mm",
                range: Some([10.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of each strip, measured along one edge",
            },
            Argument {
                name: "join",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &["< strip"],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "length lost at each join",
            },
        ],
        answers: &[
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of strips",
            },
            Answer {
                name: "spare",
                unit: "mm",
                meaning: "What the joined strips are longer than needed",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `join` when it takes a whole strip, or so much\nthat more than 100000 strips are needed.",
        source: "Arithmetic. `tests/vectors/binding_strips.csv` has published and hand-worked rows.",
        example: &["3000", "900", "50"],
        call: binding_strips,
    },
    Function {
        name: "binding_width",
        module: "bias",
        summary: "Width to cut a binding of a given finished width.",
        description: "Single: `2 · finished + 2 · turn + thickness`. Double: `2 · (2 · finished + turn + thickness)`. With a turn as wide as\nthe binding shows these are the 4 and 6 times that are usually told. Bias narrows when it is stretched on: try a\nshort piece.",
        arguments: &[
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.5, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width that shows on one side",
            },
            Argument {
                name: "turn",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "single: turned in at each long edge; double: seam allowance",
            },
            Argument {
                name: "thickness",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "way round the edge itself: the thickness of what is bound",
            },
            Argument {
                name: "fold",
                kind: Kind::Choice(&BINDING_FOLD),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: Some(Default::Word("single")),
                meaning: "how it is folded",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Width to cut",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "The layers added up; 4 and 6 times are common practice, no source. `tests/vectors/binding_width.csv` has hand-worked\nrows.",
        example: &["8", "8", "0", "single"],
        call: binding_width,
    },
    Function {
        name: "bleach_dilution",
        module: "bleach",
        summary: "Bleach and water for a bath of a given strength, for a given cloth and time.",
        description: "`bleach = volume · target / stock`, both as available chlorine. \"1 : 100\" in public health tables is 1 part in 100, that\nis 1 + 99. The bleach goes into the cold water. A bath is made for a time: `minutes` is how long the goods may stay in\nat most, by the product's label and by your swatch, and sooner when the colour is reached. Test first: 15 ml bleach in\n60 ml water on a hidden seam for a minute, or better a row of timed swatches (`bleach_time`).\n\nUsual are a target up to 0.46 %, a bottle of 1 to 15 %, up to 30 minutes and at least 50 ml; beyond that there are doubts.",
        arguments: &[
            Argument {
                name: "volume_ml",
                kind: Kind::Number,
                unit: "ml",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "volume of the bath",
            },
            Argument {
                name: "target_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.001, 0.6]),
                conditions: &["<= stock_pct"],
                items: None,
                default: None,
                meaning: "available chlorine wanted",
            },
            Argument {
                name: "stock_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.1, 20.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "available chlorine of the bottle",
            },
            Argument {
                name: "minutes",
                kind: Kind::Number,
                unit: "min",
                range: Some([0.1, 60.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "longest that the goods stay in",
            },
            Argument {
                name: "fibre",
                kind: Kind::Choice(&FIBRE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "the most delicate fibre in the goods, thread and trims included",
            },
            Argument {
                name: "finish",
                kind: Kind::Choice(&FINISH),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "what was done to the cloth",
            },
            Argument {
                name: "swatch",
                kind: Kind::Choice(&SWATCH),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "how a swatch stood the same bath",
            },
            Argument {
                name: "in_bath",
                kind: Kind::Choice(&IN_BATH),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "what else is in the bath",
            },
        ],
        answers: &[
            Answer {
                name: "bleach_ml",
                unit: "ml",
                meaning: "Bleach from the bottle",
            },
            Answer {
                name: "water_ml",
                unit: "ml",
                meaning: "Cold water it is added to",
            },
            Answer {
                name: "parts_water",
                unit: "1",
                meaning: "Parts of water to one of bleach",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `target_pct` when the bottle is weaker. `Refused`\nnaming `in_bath` for anything but water; naming `fibre`, `finish` or `swatch` for what bleach ruins, and for the\nunknown until a swatch has passed.",
        source: "WHO, *Infection Prevention and Control of Epidemic- and Pandemic-Prone Acute Respiratory Infections in Health Care*,\n2014, Annex G (dilution; 30 minutes of immersion, above which there is a doubt). Northwestern Health Unit, Ontario\n(everyday strengths: 0.01 to 0.45 %). Test on a hidden seam: a supplier's laundry sheet. Bottles of 1 to 15 %: common\npractice, no source.",
        example: &["10000", "0.05", "5", "10", "linen", "plain", "passed", "water_only"],
        call: bleach_dilution,
    },
    Function {
        name: "bleach_time",
        module: "bleach",
        summary: "Time in the bleach to a wanted depth of shade, from swatches taken out at known times.",
        description: "The shade, K/S (`k_over_s`), is taken to fall to a floor by a constant share a minute:\n`ln(shade - floor)` is a straight line in time, fitted by least squares. Swatches of the same cloth, in the same\nstrength and warmth, rinsed, neutralised and dried before they are judged. `swatch` tells how they stood it: pull each\none wet; at the first weakness stop, whatever the colour. A time beyond the longest swatch is a guess: test it. A shade at\nor below the floor will not be reached at all: choose to dye over it.",
        arguments: &[
            Argument {
                name: "times_min",
                kind: Kind::Numbers,
                unit: "min",
                range: Some([0.0, 60.0]),
                conditions: &[],
                items: Some(Items::Between(2, 50)),
                default: None,
                meaning: "time of each swatch, rising; 0 is not bleached",
            },
            Argument {
                name: "shades",
                kind: Kind::Numbers,
                unit: "1",
                range: Some([0.001, 500.0]),
                conditions: &[],
                items: Some(Items::As("times_min")),
                default: None,
                meaning: "depth of shade K/S of each",
            },
            Argument {
                name: "target",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.001, 500.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "depth of shade wanted",
            },
            Argument {
                name: "limit_min",
                kind: Kind::Number,
                unit: "min",
                range: Some([0.1, 60.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "longest time that the product's label allows",
            },
            Argument {
                name: "fibre",
                kind: Kind::Choice(&FIBRE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "the most delicate fibre in the goods",
            },
            Argument {
                name: "finish",
                kind: Kind::Choice(&FINISH),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "what was done to the cloth",
            },
            Argument {
                name: "swatch",
                kind: Kind::Choice(&SWATCH),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "how the swatches stood it, pulled wet",
            },
            Argument {
                name: "in_bath",
                kind: Kind::Choice(&IN_BATH),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "what else is in the bath",
            },
            Argument {
                name: "floor",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "depth of shade that bleach does not take away",
            },
        ],
        answers: &[
            Answer {
                name: "time_min",
                unit: "min",
                meaning: "Time to the shade wanted",
            },
            Answer {
                name: "next_swatch_min",
                unit: "min",
                meaning: "Time for the next swatch: the time found, but never more than twice the longest swatch",
            },
            Answer {
                name: "rate",
                unit: "1",
                meaning: "Share of the way to the floor gone in a minute, as a rate: the shade falls by e^-rate",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite`, `OutOfRange` or `Count`, naming the argument. `Refused` as for `bleach_dilution`, and naming `swatch`\nunless the swatches have passed. `NoSolution` naming `times_min` (not rising), `shades` (at or below the floor, or not\nfalling), `target` (at or below the floor; or not reached within `limit_min`, `min` being the shade reached then).",
        source: "First-order fading, fitted to the user's own swatches. WHO 2014, Annex G: 30 minutes of immersion; a time or a swatch\nlonger than that is doubted.",
        example: &[
            "0 10",
            "4 2.4",
            "1",
            "30",
            "linen",
            "plain",
            "passed",
            "water_only",
            "0",
        ],
        call: bleach_time,
    },
    Function {
        name: "body_length_doubts",
        module: "body",
        summary: "Doubts on a length of the body: back length, shoulder, sleeve, skirt.",
        description: "Below 100 mm (`BODY_LENGTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`BODY_LENGTH_LARGE`) it is\nlonger than a tall person. A length over 100 cm given in centimetres passes unseen.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "a length of the body",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "bits",
                meaning: "The doubts",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Thresholds are common practice, no source, set outside the 5th percentile of women's shoulder length, 120 mm, and the\n95th of men's stature, 1870 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*,\nNATICK/TR-15/007, 2014.",
        example: &["424.5"],
        call: body_length_doubts,
    },
    Function {
        name: "box_pleats",
        module: "pleat",
        summary: "Cloth for box pleats, or inverted ones, of a given number and depth.",
        description: "A box pleat is two knife pleats folded away from each other, an inverted pleat two folded towards each other: the same\ncloth seen from its two faces. `flat = finished + 4 · count · depth`. The folds meet behind a box pleat when `depth` is\nhalf of `show`, and then the cloth is three times the width. The four functions each find one of `flat`, `finished`,\n`count` and `depth`, as those of `knife_pleats` do.",
        arguments: &[
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width when pleated",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of box or inverted pleats",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "depth of each of a pleat's two folds",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Width before pleating, without allowances",
            },
            Answer {
                name: "finished",
                unit: "mm",
                meaning: "Width when pleated",
            },
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of pleats",
            },
            Answer {
                name: "show",
                unit: "mm",
                meaning: "Width from pleat to pleat",
            },
            Answer {
                name: "depth",
                unit: "mm",
                meaning: "Depth of each of a pleat's two folds",
            },
            Answer {
                name: "intake",
                unit: "mm",
                meaning: "Cloth that each pleat takes up, four times its depth",
            },
            Answer {
                name: "taken_up",
                unit: "mm",
                meaning: "Cloth that all pleats take up",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Flat over finished: 3 where the folds just meet behind",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic. `tests/vectors/box_pleats.csv` has hand-worked rows.",
        example: &["720", "12", "30"],
        call: box_pleats,
    },
    Function {
        name: "box_pleats_count",
        module: "pleat",
        summary: "Number of box pleats of at least a given depth that bring cloth there is to a width.",
        description: "The whole number that `(flat - finished) / (4 · depth)` holds, and then the depth at which they take up exactly what\nthere is.",
        arguments: &[
            Argument {
                name: "flat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width before pleating, without allowances",
            },
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &["< flat"],
                items: None,
                default: None,
                meaning: "width when pleated",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "least depth of each of a pleat's two folds",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Width before pleating, without allowances",
            },
            Answer {
                name: "finished",
                unit: "mm",
                meaning: "Width when pleated",
            },
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of pleats",
            },
            Answer {
                name: "show",
                unit: "mm",
                meaning: "Width from pleat to pleat",
            },
            Answer {
                name: "depth",
                unit: "mm",
                meaning: "Depth of each of a pleat's two folds",
            },
            Answer {
                name: "intake",
                unit: "mm",
                meaning: "Cloth that each pleat takes up, four times its depth",
            },
            Answer {
                name: "taken_up",
                unit: "mm",
                meaning: "Cloth that all pleats take up",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Flat over finished: 3 where the folds just meet behind",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat; naming\n`depth` when there is not enough for one pleat, or so much that there would be more than 1000.",
        source: "Arithmetic. `tests/vectors/box_pleats_count.csv` has hand-worked rows.",
        example: &["1500", "700", "30"],
        call: box_pleats_count,
    },
    Function {
        name: "box_pleats_depth",
        module: "pleat",
        summary: "Depth of a given number of box pleats that bring cloth there is to a width.",
        description: "`depth = (flat - finished) / (4 · count)`.",
        arguments: &[
            Argument {
                name: "flat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width before pleating, without allowances",
            },
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &["< flat"],
                items: None,
                default: None,
                meaning: "width when pleated",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of box or inverted pleats",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Width before pleating, without allowances",
            },
            Answer {
                name: "finished",
                unit: "mm",
                meaning: "Width when pleated",
            },
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of pleats",
            },
            Answer {
                name: "show",
                unit: "mm",
                meaning: "Width from pleat to pleat",
            },
            Answer {
                name: "depth",
                unit: "mm",
                meaning: "Depth of each of a pleat's two folds",
            },
            Answer {
                name: "intake",
                unit: "mm",
                meaning: "Cloth that each pleat takes up, four times its depth",
            },
            Answer {
                name: "taken_up",
                unit: "mm",
                meaning: "Cloth that all pleats take up",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Flat over finished: 3 where the folds just meet behind",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat.",
        source: "Arithmetic. `tests/vectors/box_pleats_depth.csv` has hand-worked rows.",
        example: &["1500", "700", "10"],
        call: box_pleats_depth,
    },
    Function {
        name: "box_pleats_finished",
        module: "pleat",
        summary: "Width to which a given number of box pleats brings cloth there is.",
        description: "`finished = flat - 4 · count · depth`.",
        arguments: &[
            Argument {
                name: "flat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width before pleating, without allowances",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of box or inverted pleats",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "depth of each of a pleat's two folds",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Width before pleating, without allowances",
            },
            Answer {
                name: "finished",
                unit: "mm",
                meaning: "Width when pleated",
            },
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of pleats",
            },
            Answer {
                name: "show",
                unit: "mm",
                meaning: "Width from pleat to pleat",
            },
            Answer {
                name: "depth",
                unit: "mm",
                meaning: "Depth of each of a pleat's two folds",
            },
            Answer {
                name: "intake",
                unit: "mm",
                meaning: "Cloth that each pleat takes up, four times its depth",
            },
            Answer {
                name: "taken_up",
                unit: "mm",
                meaning: "Cloth that all pleats take up",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Flat over finished: 3 where the folds just meet behind",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when the pleats take up all the cloth.",
        source: "Arithmetic. `tests/vectors/box_pleats_finished.csv` has hand-worked rows.",
        example: &["2160", "12", "30"],
        call: box_pleats_finished,
    },
    Function {
        name: "breadths",
        module: "tier",
        summary: "Number of breadths of cloth that a ring of a given length takes.",
        description: "Each breadth gives its width less an allowance at both sides, and as many seams as breadths close the ring:\n`count = ceil(flat / (cloth_width - 2 · allowance))`.",
        arguments: &[
            Argument {
                name: "flat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "way round before gathering or pleating",
            },
            Argument {
                name: "cloth_width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the cloth, or length of each strip there is",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "seam allowance at each join",
            },
        ],
        answers: &[
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of breadths, which is also the number of seams",
            },
            Answer {
                name: "round",
                unit: "mm",
                meaning: "Way round when all are joined at their full width",
            },
            Answer {
                name: "spare",
                unit: "mm",
                meaning: "What that is more than wanted: gather it in, or cut the last breadth narrower",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the whole width, or so\nmuch that there would be more than 100000 breadths.",
        source: "Arithmetic. C. C. Ingalls, *Text-Book on Domestic Art*, 1911, \"Kilted or Pleated Skirt\" (4 yd round from 36 in cloth).",
        example: &["3600", "1400", "10"],
        call: breadths,
    },
    Function {
        name: "button_diameter",
        module: "tape",
        summary: "Diameter of a button from its size in lines.",
        description: "A button line is the fortieth part of an inch: `diameter = 0.635 · lines`. It is not the watchmaker's line of\n2.26 mm, nor the eleventh of an inch by which hat ribbon is sold.",
        arguments: &[
            Argument {
                name: "lines",
                kind: Kind::Number,
                unit: "1",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "size of the button, in lines",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "The diameter",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "US Tariff Act of 1922, 42 Stat. ch. 356, par. 1410: a line is one fortieth of an inch.",
        example: &["22"],
        call: button_diameter,
    },
    Function {
        name: "button_for_hole",
        module: "closure",
        summary: "Largest flat button for a slit, and the creep of a cross hole.",
        description: "`diameter = slit - thickness`. The button sits at the end of a cross hole: a hole that is centred on the line instead\nof starting `start` beyond it lets the front out by `slit / 2 - start`. A hole that runs along the edge does not creep.",
        arguments: &[
            Argument {
                name: "slit",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 300.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of the slit",
            },
            Argument {
                name: "thickness",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &["< slit"],
                items: None,
                default: None,
                meaning: "thickness of the button at its thickest",
            },
            Argument {
                name: "start",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 300.0]),
                conditions: &["<= slit"],
                items: None,
                default: Some(Default::Number(3.0)),
                meaning: "where a cross hole should start, past the line to the edge",
            },
        ],
        answers: &[
            Answer {
                name: "diameter",
                unit: "mm",
                meaning: "Largest diameter of a flat button",
            },
            Answer {
                name: "creep",
                unit: "mm",
                meaning: "How far the front is let out when a hole meant to start past the line is centred on it; negative lets it in",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `thickness` or `start` when it is not within the\nslit.",
        source: "The buttonhole rule backwards; start of 3 mm (1/8 in) by a sewing-machine manual, model 1288.\n`tests/vectors/button_for_hole.csv` has hand-worked rows.",
        example: &["22", "3.5", "3"],
        call: button_for_hole,
    },
    Function {
        name: "button_for_stand",
        module: "fastening",
        summary: "Largest button for a stand there is.",
        description: "`button_stand` the other way: `diameter = extension / share`. An old front keeps its stand; a button larger than the\nstand allows hangs over the edge.",
        arguments: &[
            Argument {
                name: "extension",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 600.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from the button line to the finished edge",
            },
            Argument {
                name: "share",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.5, 3.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.75)),
                meaning: "extension over diameter",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Diameter of the button",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "As `button_stand`.",
        example: &["15", "0.75"],
        call: button_for_stand,
    },
    Function {
        name: "button_loop",
        module: "closure",
        summary: "Loop of cord that just passes over a button.",
        description: "The way round the button is `P = 2 · (diameter + thickness)` for a flat one, `π · diameter` for a ball; the middle of\nthe cord lies half its thickness further out all round, and its ends are sewn `gap` apart:\n`visible = (P + π · cord - gap) / (1 + stretch)`, `cut = visible + 2 · seam`. For a loop\nthere is, see `loop_slack`. Try one before cutting all.",
        arguments: &[
            Argument {
                name: "diameter",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "diameter of the button",
            },
            Argument {
                name: "thickness",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "thickness of a flat button; not used for a ball",
            },
            Argument {
                name: "cord",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 50.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "thickness of the cord",
            },
            Argument {
                name: "gap",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "between the loop's two ends where they are sewn",
            },
            Argument {
                name: "stretch",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 3.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "how much the cord may stretch: 0.3 is 30 %",
            },
            Argument {
                name: "seam",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 200.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(12.0)),
                meaning: "length into the seam at each end",
            },
            Argument {
                name: "shape",
                kind: Kind::Choice(&BUTTON_SHAPE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: Some(Default::Word("flat")),
                meaning: "shape of the button",
            },
        ],
        answers: &[
            Answer {
                name: "visible",
                unit: "mm",
                meaning: "Length of the loop that shows",
            },
            Answer {
                name: "cut",
                unit: "mm",
                meaning: "Length to cut",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is as wide as the way round.",
        source: "Plane geometry. `tests/vectors/button_loop.csv` has hand-worked rows. Any stretch raises the caution `ELASTIC_BATH`.",
        example: &["10", "3", "1.5", "4", "0", "12", "flat"],
        call: button_loop,
    },
    Function {
        name: "button_stand",
        module: "fastening",
        summary: "Button stand for a button: from the line it sits on to the finished edge.",
        description: "`extension = share · diameter`, `past_rim = extension - diameter / 2`, `overlap = 2 · extension`. Authors differ: half the\ndiameter brings the rim to the very edge, a machine manual asks for at least three quarters, others for the whole; for a\nbutton of 20 mm that is 10, 15 or 20 mm. Both sides have the same stand, and a waistband's overlap must equal it. A facing\nor a turn behind it is extra.",
        arguments: &[
            Argument {
                name: "diameter",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "diameter of the button",
            },
            Argument {
                name: "share",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.5, 3.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.75)),
                meaning: "extension over diameter",
            },
        ],
        answers: &[
            Answer {
                name: "extension",
                unit: "mm",
                meaning: "From the button line to the finished edge",
            },
            Answer {
                name: "past_rim",
                unit: "mm",
                meaning: "From the button's rim to the finished edge",
            },
            Answer {
                name: "overlap",
                unit: "mm",
                meaning: "How far the two sides lie over each other when buttoned",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Sewing-machine manual, model 1288 (at least 3/4 of the diameter); a half to the whole is common practice, no source.\n`tests/vectors/button_stand.csv`.",
        example: &["20", "0.75"],
        call: button_stand,
    },
    Function {
        name: "buttonhole",
        module: "closure",
        summary: "Length of the slit for a flat button.",
        description: "`slit = diameter + thickness + ease`. Authors differ on the ease: a machine manual has none, others add 3 mm (1/8 in)\nfor the cloth; a bound buttonhole needs none. For a square button use its diagonal as diameter. A ball needs half its\nway round instead: wrap a strip of paper round it and halve that. Always try the button in a slit in a scrap of the\nsame layers before cutting: a slit cannot be made shorter.",
        arguments: &[
            Argument {
                name: "diameter",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "diameter of the button",
            },
            Argument {
                name: "thickness",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "thickness of the button at its thickest",
            },
            Argument {
                name: "ease",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 20.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "extra for the thickness of the cloth",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Length of the slit",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Sewing-machine manual, models 5147/5144 (diameter and thickness). `tests/vectors/buttonhole.csv` has published rows.",
        example: &["18.5", "3.5", "0"],
        call: buttonhole,
    },
    Function {
        name: "cap_ease",
        module: "sleeve",
        summary: "Ease of a sleeve cap in its armhole.",
        description: "`ease = cap - armhole`. Walk both along their seam lines, front and back apart, since a right total can hide a front that\nis short. A shirt or a dropped shoulder has 0 to 2 %, a set-in sleeve in soft cloth 3 to 6 %; more than about 6 % in firm\ncloth gathers (common practice, no source).\n\nA cap shorter than its armhole is doubted, for the two may have changed places, and so is more than 10 % of ease,\nwhich gathers (common practice, no source).",
        arguments: &[
            Argument {
                name: "armhole",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam line of the armhole, or of a section of it",
            },
            Argument {
                name: "cap",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam line of the cap, or of the same section",
            },
        ],
        answers: &[
            Answer {
                name: "ease",
                unit: "mm",
                meaning: "What the cap is longer; negative when it is too short to be sewn in",
            },
            Answer {
                name: "ease_pct",
                unit: "%",
                meaning: "The same over the armhole",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic. `tests/vectors/cap_ease.csv` has hand-worked rows.",
        example: &["440", "452"],
        call: cap_ease,
    },
    Function {
        name: "cap_for_ease",
        module: "sleeve",
        summary: "Length that a sleeve cap must have for a wanted ease.",
        description: "`armhole · (1 + ease_pct / 100)`. Where the cap there is is short of it, raise the cap (by half of what is short, as a\nfirst guess, then walk it again), widen it, or lift the underarm of the armhole.",
        arguments: &[
            Argument {
                name: "armhole",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam line of the armhole",
            },
            Argument {
                name: "ease_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([-20.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(4.0)),
                meaning: "wanted ease over the armhole",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Seam line of the cap",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic; the default ease is common practice, no source. `tests/vectors/cap_for_ease.csv` has hand-worked rows.",
        example: &["440", "4"],
        call: cap_for_ease,
    },
    Function {
        name: "cap_width_bound",
        module: "sleeve",
        summary: "Widest sleeve that a cap of a given length and height can have.",
        description: "`2 · √((cap / 2)² - height²)`, as if each half of the cap were straight. The line curves, so the sleeve is narrower than\nthis: a bound, not a width to cut to. The bound shrinks as the cap is raised.",
        arguments: &[
            Argument {
                name: "cap",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam line of the whole cap",
            },
            Argument {
                name: "height",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "underarm line up to the top of the cap",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Upper bound of the width at the underarm line",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `height` when it is half the cap or more.",
        source: "Plane geometry. `tests/vectors/cap_width_bound.csv` has hand-worked rows.",
        example: &["500", "150"],
        call: cap_width_bound,
    },
    Function {
        name: "carried_liquor",
        module: "wet",
        summary: "Liquor that goods carry out of a bath.",
        description: "`carried = mass · pick_up / 100`, a litre taken as a kilogram. Weigh the goods dripping, drained and wrung: that is the\npick-up, and it differs by several times. It decides how often to rinse. Cloth spun dry holds more than 10 %, so less is\ndoubted. Let hot goods cool before wringing.",
        arguments: &[
            Argument {
                name: "mass_g",
                kind: Kind::Number,
                unit: "g",
                range: Some([0.01, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "dry mass of the goods",
            },
            Argument {
                name: "pick_up_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "liquor held, on the dry mass",
            },
        ],
        answers: &[
            Answer {
                name: "carried_ml",
                unit: "ml",
                meaning: "Liquor carried",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Definition of pick-up. `tests/vectors/carried_liquor.csv` has hand-worked rows. Where doubts begin: common practice, no\nsource.",
        example: &["380", "90"],
        call: carried_liquor,
    },
    Function {
        name: "casing",
        module: "elastic",
        summary: "Depth and allowance of a casing for elastic or a cord.",
        description: "`depth = width + ease + heading`, `allowance = depth + turn_in`. A tunnel that is too wide lets the elastic roll, one too\nnarrow does not let it through. A heading stands above a second line of stitching.",
        arguments: &[
            Argument {
                name: "width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 500.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the elastic, or of the cord pressed flat",
            },
            Argument {
                name: "ease",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(3.2)),
                meaning: "what the tunnel is wider",
            },
            Argument {
                name: "turn_in",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(6.4)),
                meaning: "turned in at the raw edge",
            },
            Argument {
                name: "heading",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "stands above the tunnel",
            },
        ],
        answers: &[
            Answer {
                name: "depth",
                unit: "mm",
                meaning: "From the fold to the lower stitching",
            },
            Answer {
                name: "allowance",
                unit: "mm",
                meaning: "Allowance beyond the fold",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "A magazine's tutorial, allpeoplequilt.com (1/4 in turned in, then 1 3/4 in down, for elastic of 1 1/2 in); 1/8 to 1/4 in\nwider than the elastic.",
        example: &["25", "3", "6", "0"],
        call: casing,
    },
    Function {
        name: "ciede2000",
        module: "colour",
        summary: "How far apart two colours look, by CIEDE2000.",
        description: "With all three weights at 1. About 1 is just seen on plain cloth side by side; what is allowed for a match is yours to\nsay. Where the two hues lie opposite each other the formula has a step, small for cloth.",
        arguments: &[
            Argument {
                name: "l1",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "L* of one colour",
            },
            Argument {
                name: "a1",
                kind: Kind::Number,
                unit: "1",
                range: Some([-200.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "a* of one colour",
            },
            Argument {
                name: "b1",
                kind: Kind::Number,
                unit: "1",
                range: Some([-200.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "b* of one colour",
            },
            Argument {
                name: "l2",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "L* of the other",
            },
            Argument {
                name: "a2",
                kind: Kind::Number,
                unit: "1",
                range: Some([-200.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "a* of the other",
            },
            Argument {
                name: "b2",
                kind: Kind::Number,
                unit: "1",
                range: Some([-200.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "b* of the other",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "1",
                meaning: "Colour difference",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "G. Sharma, W. Wu, E. N. Dalal, *The CIEDE2000 Color-Difference Formula*, Color Res. Appl. 30(1):21-30, 2005, with its\ntest pairs.",
        example: &["50", "2.6772", "-79.7751", "50", "0", "-82.7485"],
        call: ciede2000,
    },
    Function {
        name: "circle_skirt",
        module: "skirt",
        summary: "Radii of a skirt cut from part of a ring.",
        description: "The waist edge is an arc: `waist = 2π · fraction · waist_radius`. A fraction above 1 is made of several sectors.\n\nThe waist is doubted as `girth_doubts` does, the length as\n`body_length_doubts`: 71 may be in centimetres.",
        arguments: &[
            Argument {
                name: "waist",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished waist edge, ease included",
            },
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "waist edge to hem edge, no allowances",
            },
            Argument {
                name: "fraction",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.01, 4.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "part of a full ring: 0.5 is a half circle",
            },
        ],
        answers: &[
            Answer {
                name: "waist_radius",
                unit: "mm",
                meaning: "Radius of the waist edge",
            },
            Answer {
                name: "hem_radius",
                unit: "mm",
                meaning: "Radius of the hem edge",
            },
            Answer {
                name: "hem_length",
                unit: "mm",
                meaning: "Length of the hem edge",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arc length of a sector. `tests/vectors/circle_skirt.csv` has published and hand-worked rows. Handed-down tables that\ndivide the girth by 7 rather than by 2π hide a seam allowance in the radius: a square-dance handout gives 4 in where a\ngirth of 28 in has 4.456, so 11.6 mm less. This function never does: take the allowance off the radius yourself.",
        example: &["710", "600", "0.5"],
        call: circle_skirt,
    },
    Function {
        name: "circle_skirt_fraction",
        module: "skirt",
        summary: "Largest part of a ring from which cloth of a given width gives a skirt of a given length.",
        description: "The fullest skirt that fits, up to four full rings: pieces and their lay are those of `circle_skirt_longest`, so\neach piece's width across the cloth, `(waist / (2π · fraction) + length) · across(angle)`, is at most `cloth_width`.\nThere is no formula for the fraction; it is found by halving to the last bit, on the side that fits. A skirt that is\nless full need not fit: a smaller fraction has a larger radius.\n\nDoubts as for `circle_skirt`, and on cloth narrower than 200 mm.",
        arguments: &[
            Argument {
                name: "waist",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished waist edge, ease included",
            },
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "waist edge to hem edge, no allowances",
            },
            Argument {
                name: "cloth_width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width between the selvedges, less allowances",
            },
            Argument {
                name: "pieces",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 64.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(2.0)),
                meaning: "equal pieces the part of a ring is cut in",
            },
        ],
        answers: &[
            Answer {
                name: "fraction",
                unit: "1",
                meaning: "Part of a full ring",
            },
            Answer {
                name: "length",
                unit: "mm",
                meaning: "Waist edge to hem edge",
            },
            Answer {
                name: "waist_radius",
                unit: "mm",
                meaning: "Radius of the waist edge",
            },
            Answer {
                name: "hem_radius",
                unit: "mm",
                meaning: "Radius of the hem edge",
            },
            Answer {
                name: "hem_length",
                unit: "mm",
                meaning: "Length of the hem edge, all pieces together",
            },
            Answer {
                name: "piece_angle_deg",
                unit: "deg",
                meaning: "Angle of one piece",
            },
            Answer {
                name: "cloth_length",
                unit: "mm",
                meaning: "Cloth one piece takes along the grain",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `cloth_width` when no part of a ring from 0.01\nup fits; its `min` is the least width that would do.",
        source: "Plane geometry. `tests/vectors/circle_skirt_fraction.csv` has hand-worked rows.",
        example: &["710", "600", "1400", "2"],
        call: circle_skirt_fraction,
    },
    Function {
        name: "circle_skirt_longest",
        module: "skirt",
        summary: "Longest skirt of a given part of a ring that cloth of a given width allows.",
        description: "The part of a ring is cut in equal pieces, sectors of `angle = 360° · fraction / pieces`. A piece up to a half ring\nlies with one straight edge along the selvedge and takes, of the width, `hem_radius · sin(angle)` up to a quarter\nring and `hem_radius` from there to a half ring. A larger piece lies with its middle straight across the cloth and\ntakes `hem_radius · (1 - cos(angle / 2))`: a full ring without a seam takes twice its hem radius. Folding changes\nnothing: a full ring cut through four layers is one piece, and `cloth_width` is the width before folding.\n\nOther ways to lay a piece may save cloth but turn its grain, and pieces may be nested: these are not counted. Seam\nand hem allowances are the caller's: take them off the cloth's width first.\n\nDoubts as for `circle_skirt`, and on cloth narrower than 200 mm.",
        arguments: &[
            Argument {
                name: "waist",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished waist edge, ease included",
            },
            Argument {
                name: "fraction",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.01, 4.0]),
                conditions: &["<= pieces"],
                items: None,
                default: None,
                meaning: "part of a full ring: 0.5 is a half circle",
            },
            Argument {
                name: "cloth_width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width between the selvedges, less allowances",
            },
            Argument {
                name: "pieces",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 64.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(2.0)),
                meaning: "equal pieces the part of a ring is cut in",
            },
        ],
        answers: &[
            Answer {
                name: "fraction",
                unit: "1",
                meaning: "Part of a full ring",
            },
            Answer {
                name: "length",
                unit: "mm",
                meaning: "Waist edge to hem edge",
            },
            Answer {
                name: "waist_radius",
                unit: "mm",
                meaning: "Radius of the waist edge",
            },
            Answer {
                name: "hem_radius",
                unit: "mm",
                meaning: "Radius of the hem edge",
            },
            Answer {
                name: "hem_length",
                unit: "mm",
                meaning: "Length of the hem edge, all pieces together",
            },
            Answer {
                name: "piece_angle_deg",
                unit: "deg",
                meaning: "Angle of one piece",
            },
            Answer {
                name: "cloth_length",
                unit: "mm",
                meaning: "Cloth one piece takes along the grain",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `fraction` when one piece would be more than a\nfull ring; naming `cloth_width` when the waist edge alone is wider than the cloth.",
        source: "Plane geometry. `tests/vectors/circle_skirt_longest.csv` has hand-worked rows.",
        example: &["710", "0.5", "1400", "2"],
        call: circle_skirt_longest,
    },
    Function {
        name: "cloth_mass",
        module: "quantity",
        summary: "Mass of a rectangle of cloth.",
        description: "`mass = length · width · gsm`. Weigh a cut square of known sides to find the mass per area of cloth you have.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of the cloth",
            },
            Argument {
                name: "width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the cloth",
            },
            Argument {
                name: "gsm",
                kind: Kind::Number,
                unit: "gsm",
                range: Some([0.1, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "grams in one square metre",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "g",
                meaning: "Mass",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic. `tests/vectors/cloth_mass.csv` has hand-worked rows.",
        example: &["2000", "1400", "150"],
        call: cloth_mass,
    },
    Function {
        name: "cloth_to_buy",
        module: "quantity",
        summary: "Length of cloth to buy, with what repeats and nap take, rounded up to what the shop cuts.",
        description: "`length + repeat + extra`, up to a whole graduation. For cloth with a nap, or printed one way, all pieces lie the same\nway up; a table's length that let them lie both ways needs more: a quarter of a yard (228.6 mm) is the habit, and a\nlay of the real pieces is better than the habit. Cloth that shrinks: lengthen first.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length the pieces take",
            },
            Argument {
                name: "repeat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "one repeat of the pattern, bought to match it",
            },
            Argument {
                name: "extra",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "for nap, for doubt: 228.6 is a quarter of a yard",
            },
            Argument {
                name: "graduation",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(100.0)),
                meaning: "what the shop cuts by: 114.3 is an eighth of a yard",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Length to buy",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Extra for nap: sewwithsarah.com; a repeat more, half a yard in doubt: sew4home.com. Habits, so arguments here.",
        example: &["2130", "0", "0", "100"],
        call: cloth_to_buy,
    },
    Function {
        name: "component_check",
        module: "fibre",
        summary: "Whether one part of a garment bears a bath, and whether it takes colour there.",
        description: "Ask for every part: shell, lining, thread, interfacing, elastic, buttons; the garment bears what its weakest part bears. A\nfibre not known is refused bleach and heat until a swatch has passed, and is never said to take colour well. What bleach\nruins whatever the swatch (wool, silk, hair, leather, elastane, acetate, polyamide, rubber; colours not fast;\nflame-retardant finishes) stays refused. Thread and lining of polyester come out of a plant dye as they went in.\n\nUsual are chlorine bleach up to 30 °C and 30 minutes, other baths up to 40 °C for an unknown fibre, 60 °C for rubber,\nelastane, acetate and leather and 4 hours above 60 °C for any; beyond that there are doubts.\n\nTo find a fibre out, a burn test tells the family only, and nothing of a blend, a coated or a fused cloth: a snip the\nsize of a thread, in tweezers, over water or a metal tray, window open, hair tied back, no child near.",
        arguments: &[
            Argument {
                name: "fibre",
                kind: Kind::Choice(&FIBRE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "what the part is made of",
            },
            Argument {
                name: "finish",
                kind: Kind::Choice(&FINISH),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "what was done to it",
            },
            Argument {
                name: "swatch",
                kind: Kind::Choice(&SWATCH),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "how a swatch of it stood the same bath",
            },
            Argument {
                name: "bath",
                kind: Kind::Choice(&BATH),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "the bath",
            },
            Argument {
                name: "temperature_c",
                kind: Kind::Number,
                unit: "degC",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "hottest it gets",
            },
            Argument {
                name: "minutes",
                kind: Kind::Number,
                unit: "min",
                range: Some([0.0, 1440.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "longest it stays in",
            },
        ],
        answers: &[
            Answer {
                name: "bears",
                unit: "count",
                meaning: "0: it bears the bath; 1: a swatch decides; 2: it does not, so take it off first",
            },
            Answer {
                name: "colour",
                unit: "count",
                meaning: "Colour it takes in this bath: 0 none, 1 some or not sure, 2 well",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `Choice`, from a door that passes numbers.",
        source: "Colour: University of Borås, *Textile chemistry*, dye classes. Chlorine: laundry guides that agree (wool, silk, mohair,\nleather, spandex, colours not fast); thespruce.com, howtodothings.com (acetate, elastic, flame-retardant). From memory:\npolyamide and resin finishes; where heat and time are beyond what is usual (30 minutes of bleach: WHO 2014, Annex G).",
        example: &["cotton", "plain", "untried", "chlorine_bleach", "20", "10"],
        call: component_check,
    },
    Function {
        name: "cover_mark",
        module: "shade",
        summary: "Depth of dye that brings a mark within a limit of its ground.",
        description: "Mark and ground are taken as greys of their reflectance, the dye as adding the same K/S to both; the depth is where\nCIEDE2000 of the two first comes down to the limit. A mark of another hue than the ground shows longer than this says.\nGrease, wax, resin and scorch take dye otherwise: the forecast is void, so try the dye on the mark's own kind first. A\nground that fades will show it again. Where no depth will do, hide the mark or recut.",
        arguments: &[
            Argument {
                name: "ground",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.001, 1.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "reflectance of the cloth around the mark",
            },
            Argument {
                name: "mark",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.001, 1.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "reflectance of the mark",
            },
            Argument {
                name: "limit",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.01, 50.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "colour difference that may remain",
            },
        ],
        answers: &[
            Answer {
                name: "now",
                unit: "1",
                meaning: "Colour difference of mark and ground as they are, CIEDE2000",
            },
            Answer {
                name: "depth",
                unit: "1",
                meaning: "Depth that the dye must add to both, K/S; 0 when nothing is needed",
            },
            Answer {
                name: "ground_after",
                unit: "1",
                meaning: "Reflectance of the ground then",
            },
            Answer {
                name: "mark_after",
                unit: "1",
                meaning: "Reflectance of the mark then",
            },
            Answer {
                name: "after",
                unit: "1",
                meaning: "Colour difference then",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `limit` when cloth dyed as dark as cloth gets\n(a reflectance of 1 %) still shows the mark; `min` is then the difference that remains.",
        source: "E. Allen and G. Sharma, as for `k_over_s` and `ciede2000`. A limit of 1 is common practice,\nno source: about what is just seen.",
        example: &["0.55", "0.42", "2.35"],
        call: cover_mark,
    },
    Function {
        name: "curved_band",
        module: "band",
        summary: "Upper edges of a band in sections, each cut as an arc, so that the joins have no kink.",
        description: "All sections are parts of one ring with `outer_radius = bottom · depth / (bottom - top)`, where `bottom` is the sum of\nthe lengths; each top is its length times `top / bottom`. Every end lies on a radius, square to both edges; an end\nthat overlaps is a piece of its own.",
        arguments: &[
            Argument {
                name: "lengths",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 100)),
                default: None,
                meaning: "finished lower edge of each section, in order",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished depth, along the radius",
            },
            Argument {
                name: "top",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished upper edge of all sections together",
            },
        ],
        answers: &[
            Answer {
                name: "tops",
                unit: "mm",
                meaning: "finished upper edge of each section",
            },
            Answer {
                name: "inner_radius",
                unit: "mm",
                meaning: "Radius of the upper, shorter edge",
            },
            Answer {
                name: "outer_radius",
                unit: "mm",
                meaning: "Radius of the lower, longer edge",
            },
            Answer {
                name: "angle_deg",
                unit: "deg",
                meaning: "Angle of all sections together",
            },
            Answer {
                name: "sagitta",
                unit: "mm",
                meaning: "Height of the longest section's lower arc above the straight line between its ends",
            },
        ],
        errors: "`NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `top` when it is not below the\nsum of the lengths, or so far below that the sections would be more than a full ring.",
        source: "Arc length of a sector. `tests/vectors/curved_band.csv` has hand-worked rows.",
        example: &["140 330 230", "50", "676"],
        call: curved_band,
    },
    Function {
        name: "curved_binding",
        module: "binding",
        summary: "Stretch of a bias strip that is to lie flat on a curved edge.",
        description: "The strip is cut as long as the finished edge, where its fold will lie. Its seam lies `finished` further into the cloth:\nround a neck that is a longer arc, `seam = edge · (radius + finished) / radius`, and the strip is stretched to it by\n`100 · finished / radius` percent; round an outward corner a shorter one, and it is eased. Cut as long as the seam instead,\na neck's binding stands away. A stretched bias strip grows narrower: as a net of threads that keep their length it keeps\n`√(2 - (1 + stretch)²)` of its width; press it to shape before sewing, and cut it so much wider. A stretch of 41 % would\nclose the net.\n\nHanded-down rules cut the strip 5 to 10 % shorter than the edge whatever the curve (common practice, no source): that is\nright for a binding of 7 mm at radii of 70 to 140 mm, too much on a straighter edge, too little on a tighter one.",
        arguments: &[
            Argument {
                name: "edge",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of the finished edge",
            },
            Argument {
                name: "radius",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "its radius",
            },
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.5, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the binding that shows",
            },
            Argument {
                name: "curve",
                kind: Kind::Choice(&EDGE_CURVE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: Some(Default::Word("inward")),
                meaning: "which way the edge curves",
            },
        ],
        answers: &[
            Answer {
                name: "seam",
                unit: "mm",
                meaning: "Length of the seam that sews the binding on",
            },
            Answer {
                name: "stretch_pct",
                unit: "%",
                meaning: "What the strip is stretched along that seam; negative where it is eased",
            },
            Answer {
                name: "width_pct",
                unit: "%",
                meaning: "Width that a bias strip keeps where it is so stretched; above 100 where it is eased",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when bias cannot stretch so far, or when\nthe binding reaches the centre of an outward curve.",
        source: "Arcs about one centre; a net of threads of fixed length, turned from 45° (plane geometry: real cloth gives a little more\nalong its threads). `tests/vectors/curved_binding.csv` has hand-worked rows.",
        example: &["300", "100", "8", "inward"],
        call: curved_binding,
    },
    Function {
        name: "cut_for_change",
        module: "cloth",
        summary: "Length to cut so that washing brings it to a finished length.",
        description: "`cut = finished / (1 + change / 100)`. Adding the percentage to the finished length is the usual slip and comes out\nshort. Shrink cloth before cutting where you can; this is for what cannot be shrunk first.\n\nA change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.",
        arguments: &[
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length wanted after washing",
            },
            Argument {
                name: "change_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([-90.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "dimensional change: shrinkage of 5 % is -5",
            },
        ],
        answers: &[
            Answer {
                name: "cut",
                unit: "mm",
                meaning: "Length to cut",
            },
            Answer {
                name: "added",
                unit: "mm",
                meaning: "What is added; negative for cloth that grows",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "ISO 5077:2007 (definition), solved for the length before. `tests/vectors/cut_for_change.csv` has hand-worked rows.",
        example: &["600", "-5"],
        call: cut_for_change,
    },
    Function {
        name: "cut_state",
        module: "seam",
        summary: "Finished and cut width of a piece, from what its two edges are drawn as.",
        description: "An edge drawn as cut line loses its allowance to the seam, one drawn as seam line has it added:\n`finished = drawn - cut_edges · allowance`, `cut = drawn + (2 - cut_edges) · allowance`. Which of the two a drawing\nshows is the costliest question of all: a drawn line taken for the other is wrong by two allowances a seam.",
        arguments: &[
            Argument {
                name: "drawn",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width as drawn, edge to edge",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance at each edge",
            },
            Argument {
                name: "cut_edges",
                kind: Kind::Count,
                unit: "count",
                range: Some([0.0, 2.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "how many of the two edges are drawn as cut line",
            },
        ],
        answers: &[
            Answer {
                name: "finished",
                unit: "mm",
                meaning: "Width between the seam lines",
            },
            Answer {
                name: "cut",
                unit: "mm",
                meaning: "Width between the cut edges",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when nothing is left between the\nseams.",
        source: "Arithmetic. How wide an allowance is, is habit, so there is no default: 5/8 in in home patterns (common practice, no\nsource), 1/2 in on straight seams and 1/4 in on curves in industry (course cards on ASTM D6193), 3/8 in in Butterick's\npatterns of 1916, 1 in on the long seams of a wool bodice by L. I. Baldt, 1916. Taken for one another, a 1/4 and a 5/8 in\nallowance are 3/4 in (19 mm) apart over the two edges of one piece. For a band folded along its middle see\n`straight_band_depth`.\n`tests/vectors/cut_state.csv` has hand-worked rows.",
        example: &["50", "10", "2"],
        call: cut_state,
    },
    Function {
        name: "dart",
        module: "dart",
        summary: "Leg and angle of a dart from its intake and the length of its centre line.",
        description: "`leg = √((intake / 2)² + length²)` and `angle = 2 · atan(intake / (2 · length))`.\n\nA dart wider than it is long is doubted: the two may have changed places.",
        arguments: &[
            Argument {
                name: "intake",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width taken up at the edge",
            },
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "edge to point along the middle of the dart, not the leg",
            },
        ],
        answers: &[
            Answer {
                name: "leg",
                unit: "mm",
                meaning: "Length of each leg, edge to point",
            },
            Answer {
                name: "angle_deg",
                unit: "deg",
                meaning: "Angle at the point, which is also the kink of a straight edge when the dart is closed",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Plane geometry. `tests/vectors/dart.csv` has hand-worked rows.",
        example: &["30", "110"],
        call: dart,
    },
    Function {
        name: "dart_equivalent",
        module: "dart",
        summary: "Ease, gathers or tucks that take up as much as a dart, along a stretch of its edge.",
        description: "`ease = 100 · intake / finished`, `ratio = (finished + intake) / finished`, `depth = intake / (2 · tucks)`. They take\nthe same length of the edge, but not to the same point: ease and gathers give a soft fullness below, tucks are open\nat their ends. Firm cloth eases in by some 4 to 6 %, soft wool by more: common practice, no source.",
        arguments: &[
            Argument {
                name: "intake",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the dart at the edge",
            },
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "stretch of the edge that takes it, as it is to be sewn",
            },
            Argument {
                name: "tucks",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "number of tucks or pleats",
            },
        ],
        answers: &[
            Answer {
                name: "ease_pct",
                unit: "%",
                meaning: "Ease of the seam, if it is eased in",
            },
            Answer {
                name: "gather_ratio",
                unit: "1",
                meaning: "Ratio of the gathers, if it is gathered",
            },
            Answer {
                name: "tuck_depth",
                unit: "mm",
                meaning: "Depth of each tuck or pleat, if it is folded",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "`GATHERS_SCANT` or `GATHERS_LARGE` when as gathers it would look like a mistake",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic; tucks by L. I. Baldt, *Clothing for Women*, 1916 (twice the depth times the number). The doubt is\n`gathers`'s own, and on the gathers alone.",
        example: &["12", "120", "2"],
        call: dart_equivalent,
    },
    Function {
        name: "dart_from_gape",
        module: "dart",
        summary: "Dart that takes up the gape of an edge, turned to another edge.",
        description: "Pin the gape to a fold that runs out at the bust point; a dart of the same angle elsewhere takes it:\n`intake = gape · dart_leg / gape_distance`. A dart that is there already is widened by so much. Pin and count one\nside only: a fold pinned over the middle is shared by both. The edge is afterwards shorter by the gape.",
        arguments: &[
            Argument {
                name: "gape",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "what is pinned out at the edge, on one side",
            },
            Argument {
                name: "gape_distance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from there to the bust point",
            },
            Argument {
                name: "dart_leg",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "bust point to the edge where the dart is to be",
            },
        ],
        answers: &[
            Answer {
                name: "intake",
                unit: "mm",
                meaning: "Width of the dart at its own edge",
            },
            Answer {
                name: "angle_deg",
                unit: "deg",
                meaning: "Angle at the point",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gape` when it is more than twice its distance.",
        source: "Similar triangles; both distances are legs, from the bust point, although the sewn dart ends short of it.\n`tests/vectors/dart_from_gape.csv` has hand-worked rows.",
        example: &["10", "180", "144"],
        call: dart_from_gape,
    },
    Function {
        name: "dart_in_panel",
        module: "dart",
        summary: "Darts that bring a panel there is to the width wanted.",
        description: "The panel's own width leads, not the difference of two body measures: what must go is `panel_width - wanted_width`,\nshared evenly by the darts but no more than `largest_intake` each; the rest goes to the side seam.\n`kink = 2 · atan(intake / (2 · length))`.",
        arguments: &[
            Argument {
                name: "panel_width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width there is at the edge, between seam lines",
            },
            Argument {
                name: "wanted_width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &["<= panel_width"],
                items: None,
                default: None,
                meaning: "finished width at the edge, ease included",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 16.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of darts",
            },
            Argument {
                name: "largest_intake",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "the most that one dart may take",
            },
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "edge to point along the middle of a dart",
            },
        ],
        answers: &[
            Answer {
                name: "intake_each",
                unit: "mm",
                meaning: "Intake of each dart",
            },
            Answer {
                name: "leftover",
                unit: "mm",
                meaning: "Width still to be taken, at the side seam",
            },
            Answer {
                name: "leg",
                unit: "mm",
                meaning: "Length of each leg",
            },
            Answer {
                name: "kink_deg",
                unit: "deg",
                meaning: "Kink of the straight edge at each closed dart; the edge is trued there before cutting",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `wanted_width` when the panel is narrower than\nthat: it must be pieced or let out.",
        source: "Arithmetic and plane geometry. The limits behind the doubts: `DART_LONG` Butterick, *The New Dressmaker*, 1921 (hip\nline 7 in below the waist); `DART_WIDE` and `DARTS_CLOSE` common practice, no source.",
        example: &["242", "190", "1", "30", "110"],
        call: dart_in_panel,
    },
    Function {
        name: "dart_turned",
        module: "dart",
        summary: "Intake of a dart that is turned about its point to an edge at another distance.",
        description: "Turning keeps the angle, so the intake grows with the leg: `intake · new_leg / leg`.",
        arguments: &[
            Argument {
                name: "intake",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the dart at the edge where it is now",
            },
            Argument {
                name: "leg",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "edge to point along the leg where it is now",
            },
            Argument {
                name: "new_leg",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "edge to point along the leg in its new place",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Width of the dart at the new edge",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `intake` when it is more than `2 · leg`: no\nsuch dart closes.",
        source: "Similar triangles. `tests/vectors/dart_turned.csv` has hand-worked rows.",
        example: &["26", "100", "70"],
        call: dart_turned,
    },
    Function {
        name: "dart_width_at",
        module: "dart",
        summary: "Width of a dart between its point and its edge.",
        description: "`width = intake · distance / leg`: what is lost there when the dart is closed, or gained when it is opened.",
        arguments: &[
            Argument {
                name: "intake",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the dart at the edge",
            },
            Argument {
                name: "leg",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "edge to point along the leg",
            },
            Argument {
                name: "distance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &["<= leg"],
                items: None,
                default: None,
                meaning: "from the point along the leg",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Width of the dart there",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `intake` when it is more than `2 · leg`: no\nsuch dart closes; naming `distance` when it is beyond the edge.",
        source: "Similar triangles. Straight legs only: a curved dart is narrower or wider than this between its ends.\n`tests/vectors/dart_width_at.csv` has hand-worked rows.",
        example: &["26", "100", "70"],
        call: dart_width_at,
    },
    Function {
        name: "deepest_hem",
        module: "seam",
        summary: "Deepest hem on a flared edge that can still be eased in.",
        description: "`hem_on_curve` the other way: `depth = radius · pct / (200 + pct)`.",
        arguments: &[
            Argument {
                name: "radius",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "radius of the finished hem edge, laid flat",
            },
            Argument {
                name: "excess_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(5.0)),
                meaning: "fullness that the cloth eases or shrinks away",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Depth of the hem",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arcs about one centre. How much a cloth eases is habit: firm cotton some 3 to 5 %, wool that shrinks under steam 10 %\nand more (common practice, no source); try a hand's breadth.",
        example: &["840", "10"],
        call: deepest_hem,
    },
    Function {
        name: "dimensional_change",
        module: "cloth",
        summary: "Dimensional change of cloth in the wash, in percent; minus is shrinkage.",
        description: "`change = 100 · (after - before) / before`. A shrinkage stated as 8.57 % is a change of -8.57. Mark at least 350 mm apart, 50 mm from the edges, along each grain.",
        arguments: &[
            Argument {
                name: "before",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "distance of the marks before washing",
            },
            Argument {
                name: "after",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "distance of the marks after washing",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "%",
                meaning: "Change",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "ISO 5077:2007 and AATCC 135 (formula). `tests/vectors/dimensional_change.csv` has published rows.",
        example: &["350", "320"],
        call: dimensional_change,
    },
    Function {
        name: "double_dart",
        module: "dart",
        summary: "Legs and angles of a dart with a point at each end, as at the waist of a dress.",
        description: "Each half is a dart of its own: `leg = √((intake / 2)² + length²)`, `angle = 2 · atan(intake / (2 · length))`. Where\nthe two meet each leg turns by half the sum of the two angles; the fold of the sewn dart is snipped there, or it\npulls. The upper and lower legs need not be alike, but the two legs of one half must be, or the side seams hang askew.",
        arguments: &[
            Argument {
                name: "intake",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width taken up where the dart is widest",
            },
            Argument {
                name: "upper",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from there to the upper point, along the middle",
            },
            Argument {
                name: "lower",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from there to the lower point, along the middle",
            },
        ],
        answers: &[
            Answer {
                name: "upper_leg",
                unit: "mm",
                meaning: "Length of each upper leg",
            },
            Answer {
                name: "lower_leg",
                unit: "mm",
                meaning: "Length of each lower leg",
            },
            Answer {
                name: "upper_angle_deg",
                unit: "deg",
                meaning: "Angle at the upper point",
            },
            Answer {
                name: "lower_angle_deg",
                unit: "deg",
                meaning: "Angle at the lower point",
            },
            Answer {
                name: "bend_deg",
                unit: "deg",
                meaning: "How far each leg turns where the dart is widest, where its fold is snipped",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Plane geometry. The limits behind the doubts are those of `dart_in_panel`; `DART_LONG` asks after `lower`, which\nruns from the waist to the hip. `tests/vectors/double_dart.csv` has hand-worked rows.",
        example: &["25", "150", "120"],
        call: double_dart,
    },
    Function {
        name: "elastic",
        module: "elastic",
        summary: "Length of elastic for a waist or a cuff, and the stretch asked of it.",
        description: "`round = girth - shorter`, `cut = round + overlap`. Elastics differ: pin it round the body before cutting, and see that\nits own full stretch is more than `passing_pct`. The casing's edge must itself be as long as the widest part. Never\nround a throat; for children's clothes see the safety standards that hold where you are.\n\nA girth below 110 mm, less than a child's wrist (from memory), is doubted.",
        arguments: &[
            Argument {
                name: "girth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of the body where it sits",
            },
            Argument {
                name: "widest",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[">= girth"],
                items: None,
                default: None,
                meaning: "girth that it must pass over, as the hip for a waist",
            },
            Argument {
                name: "shorter",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &["< girth"],
                items: None,
                default: Some(Default::Number(75.0)),
                meaning: "what the elastic is shorter than the girth",
            },
            Argument {
                name: "overlap",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(12.7)),
                meaning: "overlap where its ends are joined",
            },
        ],
        answers: &[
            Answer {
                name: "round",
                unit: "mm",
                meaning: "Way round the joined elastic, not stretched",
            },
            Answer {
                name: "cut",
                unit: "mm",
                meaning: "Length to cut, with its overlap",
            },
            Answer {
                name: "worn_pct",
                unit: "%",
                meaning: "Stretch when worn",
            },
            Answer {
                name: "passing_pct",
                unit: "%",
                meaning: "Stretch when the widest part passes through",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Always `ELASTIC_BATH`",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `widest` when it is less than the girth; naming\n`shorter` when no elastic is left.",
        source: "A step-by-step sewing column, hastingstribune.com, 2020 (waist less 2 to 4 in for a snug one, and 1/2 in of overlap);\nthe default of 75 mm, 3 in, is the middle of its range.",
        example: &["720", "980", "70", "12"],
        call: elastic,
    },
    Function {
        name: "even_spacing",
        module: "closure",
        summary: "Pitch of buttons or holes spaced evenly.",
        description: "`pitch = (last - first) / (count - 1)`.",
        arguments: &[
            Argument {
                name: "first",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "place of the first, from the edge's start",
            },
            Argument {
                name: "last",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &["> first"],
                items: None,
                default: None,
                meaning: "place of the last",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([2.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "how many",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "From middle to middle of neighbours",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `last` when it is not beyond `first`.",
        source: "Arithmetic. `tests/vectors/even_spacing.csv` has hand-worked rows.",
        example: &["30", "570", "7"],
        call: even_spacing,
    },
    Function {
        name: "five_gores",
        module: "gore",
        summary: "Widths of a five-gored skirt's half pattern by a handed-down rule.",
        description: "At the waist: front an eighth, side a sixth of it, the back what is left of half. At the hip, 6 in below: the front 1 in\nwider than above, the side half as wide again, the back what is left of half the hip. The rule is for a full skirt of\nits time, 2 1/2 to 3 yd round the hem, with its fullness at the back: for gores alike use `gore`. Seams are extra.\n\nWaist and hip are doubted as the functions of `body` do.",
        arguments: &[
            Argument {
                name: "waist",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished waist, ease included",
            },
            Argument {
                name: "hip",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished hip, ease included",
            },
        ],
        answers: &[
            Answer {
                name: "front_waist",
                unit: "mm",
                meaning: "Half the front gore at the waist",
            },
            Answer {
                name: "side_waist",
                unit: "mm",
                meaning: "Side gore at the waist",
            },
            Answer {
                name: "back_waist",
                unit: "mm",
                meaning: "Back gore at the waist, its gathers included",
            },
            Answer {
                name: "front_hip",
                unit: "mm",
                meaning: "Half the front gore at the hip",
            },
            Answer {
                name: "side_hip",
                unit: "mm",
                meaning: "Side gore at the hip",
            },
            Answer {
                name: "back_hip",
                unit: "mm",
                meaning: "Back gore at the hip",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hip` when nothing of it is left for the back.",
        source: "C. C. Ingalls, *Text-Book on Domestic Art*, 1911, \"Five-Gored Underskirt: Proportions\".",
        example: &["600", "1000"],
        call: five_gores,
    },
    Function {
        name: "flounce",
        module: "tier",
        summary: "Rings for a flounce that lies flat along its edge and ripples at its hem.",
        description: "Each full ring is cut open, and joined to the next or to itself: of its way round it loses an allowance at both cuts.\n`inner_radius = (edge / rings + 2 · allowance) / 2π`, `hem = rings · (2π · outer_radius - 2 · allowance)`. More rings\nmake it fuller, with a smaller hole. The seam's own allowance lies inside the inner radius and is snipped to lie\nalong the edge. For a part of one ring, see `circle_skirt`.",
        arguments: &[
            Argument {
                name: "edge",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "edge that the flounce is sewn to, all round",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished depth, seam to hem",
            },
            Argument {
                name: "rings",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of full rings",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "seam allowance at each cut",
            },
        ],
        answers: &[
            Answer {
                name: "inner_radius",
                unit: "mm",
                meaning: "Radius of the seam line that is sewn on",
            },
            Answer {
                name: "outer_radius",
                unit: "mm",
                meaning: "Radius of the finished hem",
            },
            Answer {
                name: "hem",
                unit: "mm",
                meaning: "Finished hem of all rings joined",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Hem over edge: how much it ripples",
            },
            Answer {
                name: "square",
                unit: "mm",
                meaning: "Side of the square of cloth that each ring takes, without hem allowance",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arc length of a ring. `tests/vectors/flounce.csv` has hand-worked rows.",
        example: &["1200", "120", "3", "10"],
        call: flounce,
    },
    Function {
        name: "folded_band",
        module: "band",
        summary: "Width of a strip that is folded along its middle to a band, a cuff or a placket, and where its fold lies.",
        description: "`cut_width = 2 · depth + 2 · allowance + turn + past`, `fold_line = allowance + depth + turn / 2`. The turn is the cloth\nthat the fold takes by its thickness, half from either side. An inner layer that is caught by stitching in the seam from\nthe right side must reach `past` below it; sewn down by hand, 0. Interfacing ends at the fold line or goes over it as the\ncloth asks. For the strip's length see `straight_band`; for the depth of a strip there is,\n`straight_band_depth` of its width less `past`.",
        arguments: &[
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished depth",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance at each long edge",
            },
            Argument {
                name: "turn",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "cloth taken by the thickness of the fold",
            },
            Argument {
                name: "past",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "what the inner layer reaches past the seam",
            },
        ],
        answers: &[
            Answer {
                name: "cut_width",
                unit: "mm",
                meaning: "Width to cut, raw edge to raw edge",
            },
            Answer {
                name: "fold_line",
                unit: "mm",
                meaning: "Fold line from the raw edge that is sewn to the garment",
            },
            Answer {
                name: "inner",
                unit: "mm",
                meaning: "From the fold to the raw edge of the inner layer",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic; the turn is common practice, no source: fold a sample to learn it. `tests/vectors/folded_band.csv` has\nhand-worked rows.",
        example: &["25", "10", "2", "0"],
        call: folded_band,
    },
    Function {
        name: "format_length",
        module: "tape",
        summary: "A length as text, rounded to the nearest graduation of the style.",
        description: "From the middle between two graduations it is rounded away from zero. `parse_length` reads every style, and gives\nback the same number when the length is a whole number of the style's graduations, or for the style `exact` always.\nFractions are reduced, and a part that is nothing is left out. `exact` writes very small numbers with an exponent,\nand a fourth decimal where three could be taken for thousands: `796.9250 mm`.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([-10000000.0, 10000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "the length",
            },
            Argument {
                name: "style",
                kind: Kind::Choice(&STYLE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: Some(Default::Word("exact")),
                meaning: "how to print it",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "text",
                meaning: "The length as text.",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Tape fractions: nearest is `round(inches · n) / n`, then reduced. Common practice, no source.",
        example: &["796.925", "inch_eighth"],
        call: format_length,
    },
    Function {
        name: "front_back_doubts",
        module: "body",
        summary: "Doubts on a front and a back at one level, together.",
        description: "One more than one and a half times the other (`FRONT_BACK_APART`) may be whole against half.",
        arguments: &[
            Argument {
                name: "front",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the front",
            },
            Argument {
                name: "back",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the back",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "bits",
                meaning: "The doubts",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Common practice, no source: whole against half gives 2, and a threshold of 1.5 leaves room for a full bust or seat.",
        example: &["500", "440"],
        call: front_back_doubts,
    },
    Function {
        name: "frustum",
        module: "arc",
        summary: "Part of a ring that rolls up to a cone, or to a part of one, of given diameters and height.",
        description: "`slant = √(((lower - upper) / 2)² + height²)`, `outer_radius = lower · slant / (lower - upper)`, `inner_radius = upper ·\nslant / (lower - upper)`, `angle = 180° · (lower - upper) / slant`. Hats, shades, flared cuffs and the tops of bags\nare measured so; where the edges and the slant are measured along the cloth use\n`shaped_band`, which is the same ring.",
        arguments: &[
            Argument {
                name: "lower_diameter",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "diameter of the larger end",
            },
            Argument {
                name: "upper_diameter",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &["< lower_diameter"],
                items: None,
                default: None,
                meaning: "diameter of the smaller end; 0 is a cone",
            },
            Argument {
                name: "height",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from end to end, straight up",
            },
        ],
        answers: &[
            Answer {
                name: "slant",
                unit: "mm",
                meaning: "From edge to edge along the cloth",
            },
            Answer {
                name: "inner_radius",
                unit: "mm",
                meaning: "Radius of the upper, smaller edge, laid flat",
            },
            Answer {
                name: "outer_radius",
                unit: "mm",
                meaning: "Radius of the lower, larger edge, laid flat",
            },
            Answer {
                name: "angle_deg",
                unit: "deg",
                meaning: "Angle of the sector",
            },
            Answer {
                name: "area_mm2",
                unit: "mm2",
                meaning: "Area of the sector, without allowances",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `upper_diameter` when it is not the smaller: turn\nthe shape over, and a tube of two equal ends is a rectangle.",
        source: "E. M. Longfield, *Sheet Metal Drafting*, 1921 (slant height; lateral area by half the sum of the circumferences);\nMath Forum, *Building a Cone* (radii and angle). `tests/vectors/frustum.csv` has their numbers.",
        example: &["240", "120", "80"],
        call: frustum,
    },
    Function {
        name: "gather_ratio",
        module: "fullness",
        summary: "Ratio of gathers that a strip there is gives on a line.",
        description: "`ratio = flat / finished`.\n\nA ratio below 1.2 or above 4 is doubted (common practice, no source).",
        arguments: &[
            Argument {
                name: "flat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 20000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of the strip, without allowances",
            },
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &["<= flat"],
                items: None,
                default: None,
                meaning: "line that the gathers are sewn to",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Length of the strip before gathering, without allowances",
            },
            Answer {
                name: "taken_up",
                unit: "mm",
                meaning: "What the gathers take up",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Strip over line: 1.5 is half as much again",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when the strip is shorter than that.",
        source: "Arithmetic. `tests/vectors/gather_ratio.csv` has published and hand-worked rows.",
        example: &["340", "240"],
        call: gather_ratio,
    },
    Function {
        name: "gather_sections",
        module: "fullness",
        summary: "Parts of a strip between its marks, so that gathers are even from notch to notch.",
        description: "Each section of the line takes its share of the strip: `flat · length / sum of lengths`. Quarter marks of a strip fall on\nquarter marks of the line only where these are evenly spaced: on a waist whose front is wider than its back they are not.\n\nA ratio below 1.2 or above 4 is doubted (common practice, no source).",
        arguments: &[
            Argument {
                name: "lengths",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 100)),
                default: None,
                meaning: "sections of the line between its notches, in order",
            },
            Argument {
                name: "flat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 20000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of the strip, without allowances",
            },
        ],
        answers: &[
            Answer {
                name: "flats",
                unit: "mm",
                meaning: "part of the strip for each section",
            },
            Answer {
                name: "finished",
                unit: "mm",
                meaning: "Length of the line, all sections together",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Strip over line, the same in every section",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `flat` when the strip is shorter\nthan its line.",
        source: "Proportion. `tests/vectors/gather_sections.csv` has hand-worked rows.",
        example: &["200 340 180", "1080"],
        call: gather_sections,
    },
    Function {
        name: "gathers",
        module: "fullness",
        summary: "Strip to cut for gathers of a given ratio.",
        description: "`flat = finished · ratio`. About 1.5 for a flounce, 2 for a ruche or heavy curtain, up to 3 for sheer cloth; gather a\nsample of the cloth itself.\n\nA ratio below 1.2 or above 4 is doubted (common practice, no source).",
        arguments: &[
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "line that the gathers are sewn to",
            },
            Argument {
                name: "ratio",
                kind: Kind::Number,
                unit: "1",
                range: Some([1.0, 20.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "strip over line; \"100 % fullness\" is a ratio of 2",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Length of the strip before gathering, without allowances",
            },
            Answer {
                name: "taken_up",
                unit: "mm",
                meaning: "What the gathers take up",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Strip over line: 1.5 is half as much again",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Ratios: C. C. Ingalls, *Text-Book on Domestic Art*, 1911 (flounce 1 1/2); *The New Dressmaker*, Butterick, 1921\n(ruche 2); I. Crouch, Extension Circular A-249, North Dakota, 1956 (draperies 2); a booklet on draperies (sheer\ncurtains 3). The doubt below 1.2 is common practice, no source.",
        example: &["240", "1.75"],
        call: gathers,
    },
    Function {
        name: "girth_doubts",
        module: "body",
        summary: "Doubts on the girth of a trunk: chest, waist or hip.",
        description: "Below 300 mm (`GIRTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`GIRTH_LARGE`) taken twice.",
        arguments: &[
            Argument {
                name: "girth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of chest, waist or hip",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "bits",
                meaning: "The doubts",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Thresholds are common practice, no source, set well outside the 5th and 95th percentiles of chest, waist and hip,\n710 to 1207 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007, 2014.",
        example: &["852"],
        call: girth_doubts,
    },
    Function {
        name: "godet",
        module: "gore",
        summary: "Sector for a godet of a given length and hem.",
        description: "`angle = hem / length` in radians, `chord = 2 · length · sin(angle / 2)`. Its two sides are as long as the slit; the\nhem is an arc, or it hangs in a point. A godet of more than half a ring is cut in two parts.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "slit from its point to the finished hem",
            },
            Argument {
                name: "hem",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished hem of one godet, along its arc",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 64.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "number of godets",
            },
        ],
        answers: &[
            Answer {
                name: "angle_deg",
                unit: "deg",
                meaning: "Angle at the point",
            },
            Answer {
                name: "chord",
                unit: "mm",
                meaning: "Straight across the hem from side to side, which is the cloth's width that it takes",
            },
            Answer {
                name: "sagitta",
                unit: "mm",
                meaning: "How far the hem bows below that",
            },
            Answer {
                name: "added",
                unit: "mm",
                meaning: "What all godets add to the hem",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hem` when it is more than half a ring.",
        source: "Arc length of a sector. `tests/vectors/godet.csv` has hand-worked rows.",
        example: &["300", "471.24", "4"],
        call: godet,
    },
    Function {
        name: "gore",
        module: "gore",
        summary: "Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.",
        description: "Each width is the whole by the number of gores. A side edge runs over two slopes, `√(((hip - waist) / 2)² +\nhip_depth²) + √(((hem - hip) / 2)² + (length - hip_depth)²)` for widths of one gore, and is longer than the middle: the\nhem is curved up by `hem_rise` at its ends. The break at the hip is rounded off when the pattern is drawn.\n\nWaist, hip and length are doubted as the functions of `body` do, and a hip less than 50 mm below\nthe waist.",
        arguments: &[
            Argument {
                name: "waist",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished waist, ease included",
            },
            Argument {
                name: "hip",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished hip, ease included",
            },
            Argument {
                name: "hem",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished way round the hem",
            },
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "waist to hem along the middle of a gore",
            },
            Argument {
                name: "hip_depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &["< length"],
                items: None,
                default: None,
                meaning: "waist to hip along the middle of a gore",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 64.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of gores",
            },
        ],
        answers: &[
            Answer {
                name: "waist_width",
                unit: "mm",
                meaning: "Width at the waist",
            },
            Answer {
                name: "hip_width",
                unit: "mm",
                meaning: "Width at the hip",
            },
            Answer {
                name: "hem_width",
                unit: "mm",
                meaning: "Width at the hem",
            },
            Answer {
                name: "side_length",
                unit: "mm",
                meaning: "Length of each side edge, waist to hip to hem",
            },
            Answer {
                name: "flare_deg",
                unit: "deg",
                meaning: "Lean of each side edge below the hip; negative where it tapers in",
            },
            Answer {
                name: "hem_rise",
                unit: "mm",
                meaning: "What each side edge is longer than the middle, taken off at the hem's ends so that it hangs level",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hip_depth` when it is not above the hem.",
        source: "Plane geometry. How far below the waist the hip lies is where authors differ, so `hip_depth` has no default: 5 to 7 in by\nL. I. Baldt, *Clothing for Women*, 1916, 6 in by I. D. Conover, *A Complete Course in Dressmaking*, v. 5, 7 in by *The New\nDressmaker*, Butterick, 1921. On a gore flared as in the example the side edge changes by 0.2 mm from 5 to 7 in: it is the\nwidth there, not the length, that a slip spoils. `tests/vectors/gore.csv` has hand-worked rows.",
        example: &["720", "1020", "1980", "700", "200", "6"],
        call: gore,
    },
    Function {
        name: "gsm_from_ounces",
        module: "quantity",
        summary: "Mass of cloth per square metre from ounces per square yard.",
        description: "`gsm = ounces · 33.9057`. Ounces *per running yard* are another thing: divide them by the width in yards first.",
        arguments: &[
            Argument {
                name: "ounces",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.01, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "ounces in one square yard",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "gsm",
                meaning: "Mass per area",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Definitions of ounce and yard. NIST SP 811, appendix B.8 (3.390575e-2 kg/m2; figure from memory).",
        example: &["6"],
        call: gsm_from_ounces,
    },
    Function {
        name: "gusset",
        module: "gore",
        summary: "Diamond gusset for two slits that meet in a seam, as under an arm.",
        description: "Its four sides are as long as the slits, its short diagonal is what the opened slits add across:\n`angle = 2 · asin(added / (2 · slit))`, `long_diagonal = √(4 · slit² - added²)`. Cut, an allowance all round makes the long\nway `2 · allowance / sin(angle / 2)` longer and the short way `2 · allowance / cos(angle / 2)`: sharp points need much\ncloth. Face the slit's end before it is cut, for it has no allowance there; cut last and only after a try in scrap cloth.\nThe gusset lies on the bias where slits are on grain.",
        arguments: &[
            Argument {
                name: "slit",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of each slit, seam to its end",
            },
            Argument {
                name: "added",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 20000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "what is to be added across, where they meet",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(10.0)),
                meaning: "seam allowance all round the gusset",
            },
        ],
        answers: &[
            Answer {
                name: "angle_deg",
                unit: "deg",
                meaning: "Angle at each slit's end",
            },
            Answer {
                name: "long_diagonal",
                unit: "mm",
                meaning: "From slit's end to slit's end",
            },
            Answer {
                name: "cut_long",
                unit: "mm",
                meaning: "Cut from point to point the long way, allowances included",
            },
            Answer {
                name: "cut_short",
                unit: "mm",
                meaning: "Cut from point to point the short way, allowances included",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `added` when it is as much as both slits.",
        source: "Plane geometry of a rhombus. `tests/vectors/gusset.csv` has hand-worked rows.",
        example: &["100", "120", "10"],
        call: gusset,
    },
    Function {
        name: "head_opening",
        module: "neck",
        summary: "Whether a neck with a slit passes over the head, and the least slit.",
        description: "A slit opens by its length on both sides: `neck + 2 · slit >= head + ease`. The same sum serves a skirt with a zip that\nmust pass over the hip, with waist and hip for neck and head, where the skirt at the slit's end is no narrower. Measure\nthe finished edge, not the neck of the body. For children no cords or drawstrings at the neck, no small loose buttons,\nno elastic round the throat: see the safety standards that hold where you are.\n\nA head below 300 mm or above 2000 mm and an edge below 110 mm are doubted: they may be in centimetres.",
        arguments: &[
            Argument {
                name: "head",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth that must pass",
            },
            Argument {
                name: "neck",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished way round the edge, not stretched",
            },
            Argument {
                name: "slit",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of the slit, button placket or zip",
            },
            Argument {
                name: "ease",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(20.0)),
                meaning: "what the opening should be wider",
            },
        ],
        answers: &[
            Answer {
                name: "least_slit",
                unit: "mm",
                meaning: "Least length of the slit; 0 where none is needed",
            },
            Answer {
                name: "spare",
                unit: "mm",
                meaning: "What the opening is wider than needed; negative when it does not pass",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic; the ease of 20 mm is common practice, no source. `tests/vectors/head_opening.csv` has hand-worked rows.",
        example: &["520", "440", "60", "20"],
        call: head_opening,
    },
    Function {
        name: "hem_let_down",
        module: "alteration",
        summary: "What is left for a hem that is let down, and where its old crease and stitching will show.",
        description: "The old hem holds `hem_depth + turn_in` of cloth below its edge. Lowered by `lowered_by`, the new edge has\n`left = hem_depth + turn_in - lowered_by` for its hem; with less than `keep`, a facing is sewn on (a false hem), which\nneeds `seam`. The old crease lies `lowered_by` above the new edge on the right side, and the old stitching\n`hem_depth + lowered_by`: a crease that has worn or faded stays, and is covered by a tuck, a braid or stitching, or the hem\nis left. Unpick and press a hand's breadth before deciding.",
        arguments: &[
            Argument {
                name: "hem_depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "depth of the old hem as it is sewn",
            },
            Argument {
                name: "turn_in",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &["<= hem_depth"],
                items: None,
                default: None,
                meaning: "turned in at its raw edge; 0 where it is overcast",
            },
            Argument {
                name: "lowered_by",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 2000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "what the garment is to be longer",
            },
            Argument {
                name: "keep",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(20.0)),
                meaning: "least for a hem of its own, its turn included",
            },
            Argument {
                name: "seam",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(6.0)),
                meaning: "least for the seam of a facing",
            },
        ],
        answers: &[
            Answer {
                name: "left",
                unit: "mm",
                meaning: "Cloth left below the new edge for its hem or facing",
            },
            Answer {
                name: "crease",
                unit: "mm",
                meaning: "The old edge's crease above the new edge",
            },
            Answer {
                name: "stitching",
                unit: "mm",
                meaning: "The old hem's stitching above the new edge",
            },
            Answer {
                name: "longest",
                unit: "mm",
                meaning: "The most it can be lowered with a hem of its own",
            },
            Answer {
                name: "longest_faced",
                unit: "mm",
                meaning: "The most it can be lowered with a facing sewn on",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `turn_in` when it is deeper than the hem; naming\n`lowered_by` when not even a facing can be sewn on, with the most as `max`; naming `seam` when the old hem holds less.",
        source: "Arithmetic; what is least is common practice, no source. `tests/vectors/hem_let_down.csv` has hand-worked rows.",
        example: &["50", "6", "30", "20", "6"],
        call: hem_let_down,
    },
    Function {
        name: "hem_on_curve",
        module: "seam",
        summary: "Fullness to ease into a hem that is turned up on a flared edge.",
        description: "The raw edge lies at `radius + depth`; turned up it must lie at `radius - depth`. So it is too long by\n`100 · 2 · depth / (radius - depth)` percent of where it lies, and over a hem of length `hem` by\n`2 · depth · hem / radius`. Radius is that of the hem edge laid flat: `circle_skirt` or\n`arc_from_rise` give it.",
        arguments: &[
            Argument {
                name: "radius",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "radius of the finished hem edge, laid flat",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &["< radius"],
                items: None,
                default: None,
                meaning: "depth of the hem",
            },
            Argument {
                name: "hem",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1000.0)),
                meaning: "length of the finished hem edge",
            },
        ],
        answers: &[
            Answer {
                name: "excess_pct",
                unit: "%",
                meaning: "What the raw edge is longer than the line it lies on when turned up",
            },
            Answer {
                name: "excess",
                unit: "mm",
                meaning: "The same over the whole hem, to be eased, shrunk or folded away",
            },
            Answer {
                name: "raw_edge",
                unit: "mm",
                meaning: "Length of the raw edge before turning",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when it reaches the centre.",
        source: "Arcs about one centre. T. Johnson, *It's Fun to Sew a Cotton School Dress*, gives 1 1/2 in for a flared skirt and 1/4 in\nor a rolled hem for a full circle, where by this sum (radius 761) 1/4 in leaves 1.7 % and 1 1/2 in would leave 10.5 %.",
        example: &["840", "40", "2000"],
        call: hem_on_curve,
    },
    Function {
        name: "hip_waist_drop",
        module: "body",
        summary: "What the hip is larger than the waist, which may be less than nothing.",
        description: "`drop = hip - waist`. On a body whose waist is the larger there is nothing to dart: panels hang straight from the waist, or\nflare from the hip to it. What darts take in a panel there is follows from the panel, not from this\n(`dart_in_panel`).",
        arguments: &[
            Argument {
                name: "hip",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of hip",
            },
            Argument {
                name: "waist",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of waist",
            },
        ],
        answers: &[
            Answer {
                name: "drop",
                unit: "mm",
                meaning: "Hip less waist; negative where the waist is larger",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised, as by `waist_hip_doubts`",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic. From the data of Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007: women\n57 to 252 mm, men -21 to 164 mm (5th and 95th percentiles), waist taken at the navel.",
        example: &["980", "720"],
        call: hip_waist_drop,
    },
    Function {
        name: "holes_left",
        module: "closure",
        summary: "Buttonholes left on an edge that is shortened.",
        description: "`count = floor((edge - first) / pitch) + 1`.",
        arguments: &[
            Argument {
                name: "edge",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished length of the edge after shortening",
            },
            Argument {
                name: "first",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &["<= edge"],
                items: None,
                default: None,
                meaning: "first hole from the end that stays",
            },
            Argument {
                name: "pitch",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from hole to hole",
            },
        ],
        answers: &[
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of holes left",
            },
            Answer {
                name: "last",
                unit: "mm",
                meaning: "Place of the last of them, from the same end as the first",
            },
            Answer {
                name: "to_end",
                unit: "mm",
                meaning: "From the last hole to the new end of the edge",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `first` when it lies beyond the edge.",
        source: "Arithmetic; the 12 mm behind the doubt are common practice, no source. `tests/vectors/holes_left.csv` has hand-worked\nrows.",
        example: &["610", "30", "90"],
        call: holes_left,
    },
    Function {
        name: "insert_strip",
        module: "alteration",
        summary: "Strip to let into a garment for what is lacking in its width.",
        description: "Each strip must add its share, `lacking / strips`. In an opened seam the old edges are sewn on their old lines, and it\nshows just that. In a cut through the cloth both new edges lose an allowance, which the strip replaces as well:\n`finished = lacking / strips + 2 · allowance`. In both places `cut_width = finished + 2 · allowance`: a strip cut for a\nseam and let into a slash is two allowances short. Cut it on the garment's own grain, of cloth washed as often. What can\nbe let out first, `let_out` says.",
        arguments: &[
            Argument {
                name: "lacking",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "what the garment is too narrow by, all round",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance at each edge",
            },
            Argument {
                name: "strips",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 64.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "number of strips that share it",
            },
            Argument {
                name: "place",
                kind: Kind::Choice(&INSERT_PLACE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: Some(Default::Word("seam")),
                meaning: "where they are let in",
            },
        ],
        answers: &[
            Answer {
                name: "finished",
                unit: "mm",
                meaning: "Width of each strip between its seam lines, as it shows",
            },
            Answer {
                name: "cut_width",
                unit: "mm",
                meaning: "Width to cut each strip",
            },
            Answer {
                name: "cloth",
                unit: "mm",
                meaning: "Cloth that all strips take side by side",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic. `tests/vectors/insert_strip.csv` has hand-worked rows.",
        example: &["60", "10", "2", "seam"],
        call: insert_strip,
    },
    Function {
        name: "k_over_s",
        module: "shade",
        summary: "K/S, the depth of shade, of a reflectance.",
        description: "`K/S = (1 - R)² / (2 R)`. Depths add up where reflectances do not: cloth and dyes each give their own. Near black it grows\nwithout bounds, so small errors of R are large ones of K/S.",
        arguments: &[
            Argument {
                name: "reflectance",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.001, 1.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "share of the light that comes back",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "1",
                meaning: "K/S",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "E. Allen, \"Colorant Formulation and Shading\", in *Optical Radiation Measurements* vol. 2, Academic Press 1980, eq. 19.",
        example: &["0.5"],
        call: k_over_s,
    },
    Function {
        name: "knife_pleats",
        module: "fullness",
        summary: "Cloth for knife pleats of a given number and depth.",
        description: "`flat = finished + 2 · count · depth`. The four functions of knife pleats each find one of `flat`, `finished`, `count`\nand `depth` from the others, and give the same answer. Tucks are the same sum.",
        arguments: &[
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width when pleated",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of pleats",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "depth of each pleat's underlay, fold to fold",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Width before pleating, without allowances",
            },
            Answer {
                name: "finished",
                unit: "mm",
                meaning: "Width when pleated",
            },
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of pleats",
            },
            Answer {
                name: "show",
                unit: "mm",
                meaning: "Width of each pleat that shows",
            },
            Answer {
                name: "depth",
                unit: "mm",
                meaning: "Depth of each pleat's underlay, fold to fold",
            },
            Answer {
                name: "intake",
                unit: "mm",
                meaning: "Cloth that each pleat takes up, twice its depth",
            },
            Answer {
                name: "taken_up",
                unit: "mm",
                meaning: "Cloth that all pleats take up",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Flat over finished: 3 where pleats just touch",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "L. I. Baldt, *Clothing for Women*, 1916 (tucks: twice the depth times the number).",
        example: &["720", "24", "30"],
        call: knife_pleats,
    },
    Function {
        name: "knife_pleats_count",
        module: "fullness",
        summary: "Number of knife pleats of at least a given depth that bring cloth there is to a width.",
        description: "The whole number that `(flat - finished) / (2 · depth)` holds, and then the depth at which they take up exactly what\nthere is: the depth wanted or a little more.",
        arguments: &[
            Argument {
                name: "flat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width before pleating, without allowances",
            },
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &["< flat"],
                items: None,
                default: None,
                meaning: "width when pleated",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "least depth of each pleat's underlay",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Width before pleating, without allowances",
            },
            Answer {
                name: "finished",
                unit: "mm",
                meaning: "Width when pleated",
            },
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of pleats",
            },
            Answer {
                name: "show",
                unit: "mm",
                meaning: "Width of each pleat that shows",
            },
            Answer {
                name: "depth",
                unit: "mm",
                meaning: "Depth of each pleat's underlay, fold to fold",
            },
            Answer {
                name: "intake",
                unit: "mm",
                meaning: "Cloth that each pleat takes up, twice its depth",
            },
            Answer {
                name: "taken_up",
                unit: "mm",
                meaning: "Cloth that all pleats take up",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Flat over finished: 3 where pleats just touch",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat; naming\n`depth` when there is not enough for one pleat, or so much that there would be more than 1000.",
        source: "A booklet on draperies (pinch pleats: 91 in at 7 in each is 13). `tests/vectors/knife_pleats_count.csv`.",
        example: &["1500", "700", "30"],
        call: knife_pleats_count,
    },
    Function {
        name: "knife_pleats_depth",
        module: "fullness",
        summary: "Depth of a given number of knife pleats that bring cloth there is to a width.",
        description: "`depth = (flat - finished) / (2 · count)`.",
        arguments: &[
            Argument {
                name: "flat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width before pleating, without allowances",
            },
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &["< flat"],
                items: None,
                default: None,
                meaning: "width when pleated",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of pleats",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Width before pleating, without allowances",
            },
            Answer {
                name: "finished",
                unit: "mm",
                meaning: "Width when pleated",
            },
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of pleats",
            },
            Answer {
                name: "show",
                unit: "mm",
                meaning: "Width of each pleat that shows",
            },
            Answer {
                name: "depth",
                unit: "mm",
                meaning: "Depth of each pleat's underlay, fold to fold",
            },
            Answer {
                name: "intake",
                unit: "mm",
                meaning: "Cloth that each pleat takes up, twice its depth",
            },
            Answer {
                name: "taken_up",
                unit: "mm",
                meaning: "Cloth that all pleats take up",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Flat over finished: 3 where pleats just touch",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat.",
        source: "I. D. Conover, *A Complete Course in Dressmaking*, vol. 5, 1921 (year from memory): in a pleated skirt, what is to be\npleated away, shared by the pleats. `tests/vectors/knife_pleats_depth.csv` has its numbers.",
        example: &["1500", "700", "16"],
        call: knife_pleats_depth,
    },
    Function {
        name: "knife_pleats_finished",
        module: "fullness",
        summary: "Width to which a given number of knife pleats brings cloth there is.",
        description: "`finished = flat - 2 · count · depth`.",
        arguments: &[
            Argument {
                name: "flat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width before pleating, without allowances",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of pleats",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "depth of each pleat's underlay, fold to fold",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Width before pleating, without allowances",
            },
            Answer {
                name: "finished",
                unit: "mm",
                meaning: "Width when pleated",
            },
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of pleats",
            },
            Answer {
                name: "show",
                unit: "mm",
                meaning: "Width of each pleat that shows",
            },
            Answer {
                name: "depth",
                unit: "mm",
                meaning: "Depth of each pleat's underlay, fold to fold",
            },
            Answer {
                name: "intake",
                unit: "mm",
                meaning: "Cloth that each pleat takes up, twice its depth",
            },
            Answer {
                name: "taken_up",
                unit: "mm",
                meaning: "Cloth that all pleats take up",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Flat over finished: 3 where pleats just touch",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when the pleats take up all the cloth.",
        source: "Arithmetic. `tests/vectors/knife_pleats_finished.csv` has hand-worked rows.",
        example: &["2160", "24", "30"],
        call: knife_pleats_finished,
    },
    Function {
        name: "lab_from_srgb",
        module: "colour",
        summary: "CIELAB of a colour given by its screen levels, under daylight D65.",
        description: "Of cloth photographed: put a white card beside it, in the same even daylight, and bring the card to equal levels first.\nWithout it the numbers are the lamp's and the camera's. Wet cloth is darker than dry.",
        arguments: &[
            Argument {
                name: "red",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 255.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "red level",
            },
            Argument {
                name: "green",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 255.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "green level",
            },
            Argument {
                name: "blue",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 255.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "blue level",
            },
        ],
        answers: &[
            Answer {
                name: "l",
                unit: "1",
                meaning: "Lightness L*: 0 is black, 100 white",
            },
            Answer {
                name: "a",
                unit: "1",
                meaning: "a*: green below 0, red above",
            },
            Answer {
                name: "b",
                unit: "1",
                meaning: "b*: blue below 0, yellow above",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "IEC 61966-2-1 (sRGB, matrix with four decimals) and CIE 15 (CIELAB). A matrix worked out from the primaries gives greys\nan a* and b* of 0, this one up to 0.01.",
        example: &["192", "160", "144"],
        call: lab_from_srgb,
    },
    Function {
        name: "lab_from_xyz",
        module: "colour",
        summary: "CIELAB of a colour given by its tristimulus values.",
        description: "The white is given by its chromaticity; its `Y` is 1.",
        arguments: &[
            Argument {
                name: "x",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 2.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "X",
            },
            Argument {
                name: "y",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 2.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "Y, the luminance: white has 1",
            },
            Argument {
                name: "z",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 2.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "Z",
            },
            Argument {
                name: "white_x",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.05, 0.8]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.3127)),
                meaning: "chromaticity x of the white: daylight D65",
            },
            Argument {
                name: "white_y",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.05, 0.8]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.329)),
                meaning: "chromaticity y of the white",
            },
        ],
        answers: &[
            Answer {
                name: "l",
                unit: "1",
                meaning: "Lightness L*: 0 is black, 100 white",
            },
            Answer {
                name: "a",
                unit: "1",
                meaning: "a*: green below 0, red above",
            },
            Answer {
                name: "b",
                unit: "1",
                meaning: "b*: blue below 0, yellow above",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `white_y` when both together leave no Z: they\nmust sum to less than 1.",
        source: "CIE 15, *Colorimetry*, CIELAB (1976).",
        example: &["0.20654008", "0.12197225", "0.05136952", "0.3127", "0.329"],
        call: lab_from_xyz,
    },
    Function {
        name: "lacing",
        module: "fastening",
        summary: "Length of lace for a laced opening.",
        description: "Crosswise lacing, with one bar straight across at the start: each of the `pairs - 1` steps takes two slanting stretches,\n`lace = gap + 2 · (pairs - 1) · √(gap² + pitch²) + 2 · tail`. Give the gap at its widest, when the garment is put on, or the\nlace must be drawn out each time. No lace at a child's neck or hood.",
        arguments: &[
            Argument {
                name: "pairs",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "pairs of eyelets",
            },
            Argument {
                name: "pitch",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from eyelet to eyelet along one side",
            },
            Argument {
                name: "gap",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "across from eyelet to eyelet of a pair",
            },
            Argument {
                name: "tail",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(250.0)),
                meaning: "each end left over for a bow",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Length of lace",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Plane geometry; the thickness of cloth and lace is left out. The tail for a bow is common practice, no source.\n`tests/vectors/lacing.csv` has hand-worked rows.",
        example: &["9", "30", "40", "250"],
        call: lacing,
    },
    Function {
        name: "length_chain",
        module: "chain",
        summary: "The one unknown of a chain of lengths.",
        description: "The chain is `total = factor · length + factor · length + …`: a factor of 1 for a length that adds, -1 for a seam\nallowance that is lost, 2 for one that is lost or won on both edges, 0.5 for half a girth. `unknown` is the index of\nthe length sought, or the number of lengths when the total is sought. What stands in the unknown's place is not used,\nbut must be in range: write 0.",
        arguments: &[
            Argument {
                name: "lengths",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 1000)),
                default: None,
                meaning: "the lengths",
            },
            Argument {
                name: "factors",
                kind: Kind::Numbers,
                unit: "1",
                range: Some([-100.0, 100.0]),
                conditions: &[],
                items: Some(Items::As("lengths")),
                default: None,
                meaning: "how many times each counts, minus where lost",
            },
            Argument {
                name: "total",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "what they come to",
            },
            Argument {
                name: "unknown",
                kind: Kind::Count,
                unit: "count",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "index of the length sought; their number: total",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "The length sought",
            },
            Answer {
                name: "plus",
                unit: "mm",
                meaning: "What the known terms with a plus add up to",
            },
            Answer {
                name: "minus",
                unit: "mm",
                meaning: "What the known terms with a minus take away",
            },
            Answer {
                name: "worst_per_mm",
                unit: "1",
                meaning: "How far the value is off at worst, for each mm that every known length may be off",
            },
            Answer {
                name: "likely_per_mm",
                unit: "1",
                meaning: "How far the value is off in the usual case, for each mm that every known length may be off",
            },
        ],
        errors: "`NotFinite`, `OutOfRange` or `Count`, naming the argument. `NoSolution` naming `unknown`: there is no such length;\n`factors`: the one at the unknown is below 1e-6 either way; `total`: the answer would be negative, with the totals\nthat would do (or the sum itself, where the total is sought).",
        source: "Arithmetic; errors as in `tolerance_stack`.",
        example: &["640 10 35", "1 -1 1", "0", "3"],
        call: length_chain,
    },
    Function {
        name: "length_chain_shares",
        module: "chain",
        summary: "Each term's part in a chain of lengths and in its error.",
        description: "The chain and its unknown are those of `length_chain`; each length has besides how far it may be off. `parts` says\nwhat each term adds to the total, `factor · length`, minus where it is lost; the unknown's own part among them.\n`misses` says how far each term's error alone moves the unknown: `|factor| · error / |factor of the unknown|`. They add\nup to the worst case, the total's own among them; the unknown's own is 0. The largest of them is where a second\nmeasuring pays.",
        arguments: &[
            Argument {
                name: "lengths",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 1000)),
                default: None,
                meaning: "the lengths",
            },
            Argument {
                name: "factors",
                kind: Kind::Numbers,
                unit: "1",
                range: Some([-100.0, 100.0]),
                conditions: &[],
                items: Some(Items::As("lengths")),
                default: None,
                meaning: "how many times each counts, minus where lost",
            },
            Argument {
                name: "errors",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: Some(Items::As("lengths")),
                default: None,
                meaning: "how far each may be off",
            },
            Argument {
                name: "total",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "what they come to",
            },
            Argument {
                name: "unknown",
                kind: Kind::Count,
                unit: "count",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "index of the length sought; their number: total",
            },
            Argument {
                name: "total_error",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "how far the total may be off",
            },
        ],
        answers: &[
            Answer {
                name: "parts",
                unit: "mm",
                meaning: "what each adds to the total",
            },
            Answer {
                name: "misses",
                unit: "mm",
                meaning: "how far the error of each moves the unknown",
            },
            Answer {
                name: "value",
                unit: "mm",
                meaning: "The length sought",
            },
            Answer {
                name: "worst",
                unit: "mm",
                meaning: "How far it is off when every error falls the same way",
            },
            Answer {
                name: "likely",
                unit: "mm",
                meaning: "How far it is off when they fall by chance: the root of the sum of their squares",
            },
            Answer {
                name: "largest",
                unit: "count",
                meaning: "Index of the term whose error moves it most, of equals the first; their number is the total",
            },
            Answer {
                name: "largest_part",
                unit: "mm",
                meaning: "What that term's error adds to the worst case",
            },
        ],
        errors: "`NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` as `length_chain`.",
        source: "Arithmetic; errors that fall by chance add as the root of the sum of their squares: JCGM 100:2008, *Guide to the\nexpression of uncertainty in measurement*, 5.1.2. `tests/vectors/length_chain_shares.csv` has hand-worked rows.",
        example: &["640 10 0", "1 -2 1", "2 1 0", "680", "2", "3"],
        call: length_chain_shares,
    },
    Function {
        name: "let_out",
        module: "alteration",
        summary: "What to let out at each edge of a garment that is too narrow, and what is still short.",
        description: "`lacking = body + ease - garment`, shared evenly by the edges but no more than `allowance - keep` each. Look first: old seam\nlines, needle holes, a faded or worn fold and snips that reach into the allowance may show, and then it is worth nothing.\n\nA body below 110 mm, less than a child's wrist (from memory), is doubted.",
        arguments: &[
            Argument {
                name: "garment",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished garment at this level, all round",
            },
            Argument {
                name: "body",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "body at this level, all round",
            },
            Argument {
                name: "ease",
                kind: Kind::Number,
                unit: "mm",
                range: Some([-10000.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "what the garment is to have more than the body",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "allowance there is inside each seam, sound cloth",
            },
            Argument {
                name: "edges",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 64.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(4.0)),
                meaning: "edges that can be let out, two to a seam",
            },
            Argument {
                name: "keep",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &["<= allowance"],
                items: None,
                default: Some(Default::Number(5.0)),
                meaning: "allowance that each edge must keep",
            },
        ],
        answers: &[
            Answer {
                name: "lacking",
                unit: "mm",
                meaning: "What the garment is too narrow by",
            },
            Answer {
                name: "each",
                unit: "mm",
                meaning: "Let out at each edge",
            },
            Answer {
                name: "gained",
                unit: "mm",
                meaning: "Let out at all edges together",
            },
            Answer {
                name: "short_by",
                unit: "mm",
                meaning: "Still lacking: a strip or a gusset must give it",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `garment` when it is wide enough already; naming `keep`\nwhen it is more than the allowance.",
        source: "Arithmetic; what must be kept is common practice, no source. `tests/vectors/let_out.csv` has hand-worked rows.",
        example: &["700", "720", "20", "12", "4", "5"],
        call: let_out,
    },
    Function {
        name: "level_line",
        module: "arc",
        summary: "Line at an even height above a curved hem that is kept.",
        description: "Height is measured from the hem on its radius, so the line is an arc about the same centre: `radius = hem_radius -\nheight`, its chord shrinks alike, and `sag = radius - √(radius² - chord² / 4)`. A straight cut through its ends would\nleave the panel too long by the sag in the middle; one through its middle, too short at the sides. Radius and chord of\nthe hem come from `arc_from_rise`. The panel is a sector of less than half a ring.",
        arguments: &[
            Argument {
                name: "hem_radius",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "radius of the hem that is kept",
            },
            Argument {
                name: "height",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &["< hem_radius"],
                items: None,
                default: None,
                meaning: "height of the line above the hem",
            },
            Argument {
                name: "hem_chord",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "straight across from end to end of the hem",
            },
        ],
        answers: &[
            Answer {
                name: "radius",
                unit: "mm",
                meaning: "Radius of the line",
            },
            Answer {
                name: "chord",
                unit: "mm",
                meaning: "Straight across from end to end of the line",
            },
            Answer {
                name: "sag",
                unit: "mm",
                meaning: "How far the line bows below its chord",
            },
            Answer {
                name: "length",
                unit: "mm",
                meaning: "Length along the line",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `height` when it reaches the centre; naming\n`hem_chord` when it is more than twice the radius.",
        source: "Plane geometry. `tests/vectors/level_line.csv` has hand-worked rows.",
        example: &["1500", "600", "500"],
        call: level_line,
    },
    Function {
        name: "linear_light",
        module: "colour",
        summary: "Light of one screen level, as a share of the most.",
        description: "With `c = level / 255`: `c / 12.92` up to `c = 0.04045`, above it `((c + 0.055) / 1.055)^2.4`. Levels are not light: the\nmiddle level 128 has a fifth of it.",
        arguments: &[
            Argument {
                name: "level",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 255.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "red, green or blue of a picture",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "1",
                meaning: "Share of the most light",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "IEC 61966-2-1 (sRGB).",
        example: &["100"],
        call: linear_light,
    },
    Function {
        name: "lining_free_length",
        module: "lining",
        summary: "Length to cut a lining that hangs free of the shell's hem, below its upper seam line.",
        description: "`length - clearance + hem`.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished shell, upper seam to hem edge",
            },
            Argument {
                name: "clearance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &["< length"],
                items: None,
                default: None,
                meaning: "lining's hem edge above the shell's",
            },
            Argument {
                name: "hem",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "all the cloth of the lining's own hem, turn included",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Upper seam line to the lower cut edge",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `clearance` when nothing of the lining is left.",
        source: "Arithmetic. `tests/vectors/lining_free_length.csv` has hand-worked rows.",
        example: &["560", "20", "35"],
        call: lining_free_length,
    },
    Function {
        name: "lining_length",
        module: "lining",
        summary: "Length of a lining that hangs in a fold over the shell's hem.",
        description: "The fold ends `clearance` above the finished edge and runs back up to the top of the hem:\n`seam_to_seam = (length - clearance) + (hem_depth - clearance)`, `fold = hem_depth - clearance`. Width and shrinkage\nare other questions; a lining without walking room needs a slit.\n\nThe length is doubted as `body_length_doubts` does.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished shell, upper seam to hem edge",
            },
            Argument {
                name: "hem_depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &["<= length"],
                items: None,
                default: None,
                meaning: "finished depth of the shell's hem",
            },
            Argument {
                name: "clearance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &["< hem_depth"],
                items: None,
                default: None,
                meaning: "lining's fold above the hem edge",
            },
        ],
        answers: &[
            Answer {
                name: "seam_to_seam",
                unit: "mm",
                meaning: "Lining from its upper seam to the seam at the top of the hem, without allowances",
            },
            Answer {
                name: "straight",
                unit: "mm",
                meaning: "The shell's own distance between these two seams",
            },
            Answer {
                name: "spare",
                unit: "mm",
                meaning: "What the lining is longer by, which lies in the fold",
            },
            Answer {
                name: "fold",
                unit: "mm",
                meaning: "Depth of the fold, from the hem's top seam down",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hem_depth` when the hem is deeper than the\nshell is long; naming `clearance` when no fold is left: then the lining hangs free (`lining_free_length`).",
        source: "Arithmetic on the fold's path; the construction is common practice, no source. `tests/vectors/lining_length.csv` has\nhand-worked rows.",
        example: &["560", "45", "20"],
        call: lining_length,
    },
    Function {
        name: "lining_width",
        module: "lining",
        summary: "Width to cut a lining panel that meets a facing.",
        description: "`width = (panel - facing) · (1 + ease_pct / 100) + pleat`, between seam lines: the lining must never be what strains, so it\nis wider than what it lines. A pleat at the centre back gives room to reach. Panels without a facing have `facing = 0`.",
        arguments: &[
            Argument {
                name: "panel",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished shell panel, seam line to edge",
            },
            Argument {
                name: "facing",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &["< panel"],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "finished facing, edge to the seam that joins the lining",
            },
            Argument {
                name: "ease_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.0, 50.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(2.0)),
                meaning: "what the lining is wider than what it lines",
            },
            Argument {
                name: "pleat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "cloth of a pleat, both layers of its fold",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Width of the lining panel between seam lines",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `facing` when it is as wide as the panel.",
        source: "Arithmetic; the ease is common practice, no source. `tests/vectors/lining_width.csv` has hand-worked rows. What washing\ntakes of shell and lining is another question: `shrink_pair`.",
        example: &["260", "60", "2", "0"],
        call: lining_width,
    },
    Function {
        name: "liquor_shares",
        module: "wet",
        summary: "A pooled liquor shared by dry mass, and the water that brings every bath to one liquor ratio.",
        description: "`share = pooled · mass / (sum of masses)`, topped up to `mass · ratio`. So all goods have the same dye for their mass in\nthe same liquor; they still seldom match, as no two baths heat alike.",
        arguments: &[
            Argument {
                name: "masses_g",
                kind: Kind::Numbers,
                unit: "g",
                range: Some([0.01, 1000000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 100)),
                default: None,
                meaning: "dry mass of each bath's goods",
            },
            Argument {
                name: "pooled_ml",
                kind: Kind::Number,
                unit: "ml",
                range: Some([0.0, 1000000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "liquor to share",
            },
            Argument {
                name: "ratio",
                kind: Kind::Number,
                unit: "1",
                range: Some([1.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "liquor to goods, by mass",
            },
        ],
        answers: &[
            Answer {
                name: "shares_ml",
                unit: "ml",
                meaning: "pooled liquor for each bath",
            },
            Answer {
                name: "waters_ml",
                unit: "ml",
                meaning: "water added to each bath",
            },
            Answer {
                name: "bath_ml",
                unit: "ml",
                meaning: "All baths together, topped up",
            },
            Answer {
                name: "water_ml",
                unit: "ml",
                meaning: "Fresh water to top all of them up",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room`. `NoSolution` naming `pooled_ml` when there is more of\nit than the ratio asks for.",
        source: "Proportion. `tests/vectors/liquor_shares.csv` has a hand-worked row.",
        example: &["380 170", "7000", "20"],
        call: liquor_shares,
    },
    Function {
        name: "loop_slack",
        module: "closure",
        summary: "Slack of a loop there is, or of one chosen, on a button.",
        description: "`slack = length - visible`, where `visible` is what `button_loop` gives for the same button.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 2000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of the loop that shows, not stretched",
            },
            Argument {
                name: "diameter",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "diameter of the button",
            },
            Argument {
                name: "thickness",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "thickness of a flat button; not used for a ball",
            },
            Argument {
                name: "cord",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 50.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "thickness of the cord",
            },
            Argument {
                name: "gap",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "between the loop's two ends where they are sewn",
            },
            Argument {
                name: "stretch",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 3.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "how much the cord may stretch: 0.3 is 30 %",
            },
            Argument {
                name: "shape",
                kind: Kind::Choice(&BUTTON_SHAPE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: Some(Default::Word("flat")),
                meaning: "shape of the button",
            },
        ],
        answers: &[
            Answer {
                name: "slack",
                unit: "mm",
                meaning: "What the loop is longer than the one that just passes; negative when it is too short",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is as wide as the way round.",
        source: "Plane geometry; the 2 mm behind the doubt `LOOP_LOOSE` are common practice, no source. `tests/vectors/loop_slack.csv`\nhas hand-worked rows.",
        example: &["28", "10", "3", "1.5", "4", "0", "flat"],
        call: loop_slack,
    },
    Function {
        name: "mix_temperature",
        module: "wet",
        summary: "Temperature of liquors of several temperatures poured together, with the goods.",
        description: "`T = sum(m c T) / sum(m c)`, water and liquor at 4.18 J/(g °C) and a gram a millilitre. What the vessel takes is left\nout, so the bath comes out nearer the room's temperature than this: measure it. Pour hot into cold, slowly. Goods warmer\nthan 40 °C are doubted (68 may be in Fahrenheit), and so is less than 50 ml in all.",
        arguments: &[
            Argument {
                name: "volumes_ml",
                kind: Kind::Numbers,
                unit: "ml",
                range: Some([0.01, 100000000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 100)),
                default: None,
                meaning: "volume of each liquor",
            },
            Argument {
                name: "temperatures_c",
                kind: Kind::Numbers,
                unit: "degC",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: Some(Items::As("volumes_ml")),
                default: None,
                meaning: "temperature of each",
            },
            Argument {
                name: "goods_g",
                kind: Kind::Number,
                unit: "g",
                range: Some([0.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "dry mass of the goods",
            },
            Argument {
                name: "goods_temperature_c",
                kind: Kind::Number,
                unit: "degC",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(20.0)),
                meaning: "temperature of the goods",
            },
            Argument {
                name: "goods_heat",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.5, 4.5]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.3)),
                meaning: "specific heat of the goods, J/(g °C)",
            },
        ],
        answers: &[
            Answer {
                name: "temperature_c",
                unit: "degC",
                meaning: "Temperature before the pot and the air have taken their part",
            },
            Answer {
                name: "volume_ml",
                unit: "ml",
                meaning: "Volume of liquor",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite`, `OutOfRange` or `Count`, naming the argument.",
        source: "Balance of heat. Cotton 1.22 to 1.35 J/(g °C): table of specific heats in a text on the physics of textile fibres. Water\n4.18: from memory. Wet goods: give the liquor they hold as one of the liquors. Where doubts begin: common practice, no\nsource.",
        example: &["3000 1000", "20 100", "0", "20", "1.3"],
        call: mix_temperature,
    },
    Function {
        name: "nap_layout",
        module: "nap",
        summary: "Length of cloth for equal tapered panels with a nap and without.",
        description: "All one way up, each panel takes its wide end of the cloth's width: `floor(cloth_width / wide)` side by side. Turned\nevery other, a narrow end lies beside each wide one and `n` panels take `wide + (n - 1) · (wide + narrow) / 2`. Either\nway a row takes the panel's length, and there are as many rows as the count asks. On napped cloth (velvet, corduroy,\nbrushed cloth, some satins) and one-way prints a turned panel is of another shade: it cannot be put right afterwards. The\nhabit of a quarter of a yard more for a nap is sometimes nothing and sometimes a whole row: count.\n\nCloth below 200 mm is doubted: no cloth is woven so narrow (from memory).",
        arguments: &[
            Argument {
                name: "wide",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of a panel at its wide end, allowances included",
            },
            Argument {
                name: "narrow",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &["<= wide"],
                items: None,
                default: None,
                meaning: "width at its narrow end, allowances included",
            },
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of a panel, allowances included",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of panels",
            },
            Argument {
                name: "cloth_width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[">= wide"],
                items: None,
                default: None,
                meaning: "width of the cloth between its selvedges",
            },
        ],
        answers: &[
            Answer {
                name: "across_one_way",
                unit: "count",
                meaning: "Panels side by side when all lie one way up",
            },
            Answer {
                name: "across_turned",
                unit: "count",
                meaning: "Panels side by side when every other is turned upside down",
            },
            Answer {
                name: "length_one_way",
                unit: "mm",
                meaning: "Length of cloth when all lie one way up",
            },
            Answer {
                name: "length_turned",
                unit: "mm",
                meaning: "Length of cloth when every other is turned",
            },
            Answer {
                name: "nap_extra",
                unit: "mm",
                meaning: "What the nap takes: the one length less the other",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `narrow` when it is the wider end; naming\n`cloth_width` when one panel is wider.",
        source: "Plane geometry of trapezia with level ends; rows are not nested in each other. A quarter of a yard for one-way cloth:\nsewwithsarah.com. `tests/vectors/nap_layout.csv` has hand-worked rows.",
        example: &["400", "180", "720", "8", "1400"],
        call: nap_layout,
    },
    Function {
        name: "neck_bust_doubts",
        module: "body",
        summary: "Doubts on a neck and a bust together.",
        description: "A neck of more than half the bust (`NECK_OVER_HALF_BUST`) may be the two in each other's place, or half a bust.",
        arguments: &[
            Argument {
                name: "neck",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of neck",
            },
            Argument {
                name: "bust",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of bust or chest",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "bits",
                meaning: "The doubts",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Common practice, no source. The 95th percentile of neck is below half the 5th of chest, women 363 and 824 mm, men 443\nand 922 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007, 2014.",
        example: &["328", "940"],
        call: neck_bust_doubts,
    },
    Function {
        name: "needle_blade",
        module: "needle",
        summary: "Blade of a machine needle, and the thickest thread for it, from its metric number.",
        description: "`blade = metric / 100`, `thread = 0.4 · blade`. A thread too thick for its needle frays and skips; a needle too thick for\nits cloth leaves holes that stay, which old seams of silk, leather and coated cloth show for ever. A broken needle can\nfly: change a bent one at once.",
        arguments: &[
            Argument {
                name: "metric",
                kind: Kind::Count,
                unit: "count",
                range: Some([20.0, 300.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "the larger number on a packet, 80 of 80/12",
            },
        ],
        answers: &[
            Answer {
                name: "blade",
                unit: "mm",
                meaning: "Diameter of the blade above the scarf",
            },
            Answer {
                name: "thread",
                unit: "mm",
                meaning: "Thickest thread that runs freely in its long groove",
            },
        ],
        errors: "`OutOfRange`, naming the argument.",
        source: "DIN 5325:1953 (the number), as told at apparelscience.com; a needle maker's dictionary, schmetzneedles.com, \"long groove\"\n(thread at most 40 % of the needle).",
        example: &["75"],
        call: needle_blade,
    },
    Function {
        name: "needle_metric",
        module: "needle",
        summary: "Metric number of a machine needle from its US size.",
        description: "`metric = 60 + 5 · (us_size - 8)`: 8 is 60, 11 is 75, 18 is 110. The number is the blade's diameter in hundredths of a\nmillimetre (`needle_blade`). From 19 up the two scales no longer run together, so these sizes are not offered; read the\npacket.",
        arguments: &[
            Argument {
                name: "us_size",
                kind: Kind::Count,
                unit: "count",
                range: Some([8.0, 18.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "the smaller number on a packet",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "1",
                meaning: "Metric number, hundredths of a millimetre",
            },
        ],
        errors: "`OutOfRange`, naming the argument.",
        source: "apparelscience.com, needle number system; pairs as commonly printed on packets. `tests/vectors/needle_metric.csv` has\nthem all.",
        example: &["12"],
        call: needle_metric,
    },
    Function {
        name: "negative_ease",
        module: "stretch",
        summary: "Girth of a garment of stretching cloth, from the share of its stretch that wearing is to use.",
        description: "Worn, the garment is stretched to the body: `girth · (1 + share · stretch / 100) = body`. Taking `share · stretch`\npercent off the body's girth instead gives a smaller garment that uses more of the stretch than was meant. It must also\ngo over the widest part on its way: `girth · (1 + stretch / 100)` must reach that. Seams and elastic stretch less than\nthe cloth: try a stitch that gives.\n\nA body girth below 110 mm, less than a child's wrist (from memory), is doubted, and a stretch below 5 %: 0.5 may\nbe a share.",
        arguments: &[
            Argument {
                name: "body",
                kind: Kind::Number,
                unit: "mm",
                range: Some([10.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of the body where it is worn",
            },
            Argument {
                name: "stretch_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "stretch of the cloth the way it goes round",
            },
            Argument {
                name: "widest",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "widest girth it is pulled over; 0: not asked",
            },
            Argument {
                name: "share",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 1.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.5)),
                meaning: "part of the stretch used in wear",
            },
        ],
        answers: &[
            Answer {
                name: "girth",
                unit: "mm",
                meaning: "Finished girth of the garment at rest",
            },
            Answer {
                name: "ease",
                unit: "mm",
                meaning: "Girth less the body's, so negative",
            },
            Answer {
                name: "furthest",
                unit: "mm",
                meaning: "Furthest girth that the cloth stretches to",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `widest` when the cloth does not stretch so far:\nchoose a smaller share, or an opening.",
        source: "Proportion. A share of one half is common practice, no source; swimwear uses more, a loose top less.",
        example: &["180", "50", "210", "0.5"],
        call: negative_ease,
    },
    Function {
        name: "neutraliser",
        module: "bleach",
        summary: "Neutraliser for the chlorine that goods still carry after draining and rinsing.",
        description: "`amount = carried · chlorine / 100 · ratio · (1 + excess / 100) / (purity / 100)`. The ratio is that of the reaction named:\nfor thiosulfate crystals 7.00, 3.50 or 0.875 by what it ends as, which strength and acidity decide, so the largest is the\nsafe one. A test of field doses at pH 7 asked about a tenth more than the others' sums, hence the excess. Anhydrous\nthiosulfate: 0.637 times as much. It is a separate bath of fresh water, and rinsing well is the main thing: this is for\nthe rest. Fibre is not asked here, as goods that ought never have met bleach need it most.\n\nDoubted are liquor of more than 0.1 % (rinse again first), peroxide of more than 50 % and any purity of 1 % or less, and\nan excess below 1 %.",
        arguments: &[
            Argument {
                name: "carried_ml",
                kind: Kind::Number,
                unit: "ml",
                range: Some([0.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "liquor that the goods carry after rinsing",
            },
            Argument {
                name: "chlorine_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.0, 0.6]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "available chlorine in it, grams in 100 ml",
            },
            Argument {
                name: "reaction",
                kind: Kind::Choice(&REACTION),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "what takes the chlorine away, and to what",
            },
            Argument {
                name: "stage",
                kind: Kind::Choice(&STAGE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "how far the goods are from the bleach",
            },
            Argument {
                name: "in_bath",
                kind: Kind::Choice(&IN_BATH),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "what else is in the fresh bath",
            },
            Argument {
                name: "purity_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.1, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(100.0)),
                meaning: "share of the pure stuff: 3 for household peroxide",
            },
            Argument {
                name: "excess_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(10.0)),
                meaning: "more than the reaction asks",
            },
        ],
        answers: &[
            Answer {
                name: "chlorine_g",
                unit: "g",
                meaning: "Available chlorine the goods still carry",
            },
            Answer {
                name: "amount_g",
                unit: "g",
                meaning: "Neutraliser to weigh out, excess included",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Grams of the pure stuff for a gram of available chlorine, excess left out",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `Refused` naming `stage` unless the goods have been drained and rinsed;\nnaming `in_bath` for anything but water: sulfite and thiosulfate with acid give sulfur dioxide.",
        source: "Molar masses. Hach support document TE213 (7.0 mg of thiosulfate crystals for 1 mg of chlorine). AWWA, *Disinfection of\nPipelines and Storage Facilities Field Guide*, table 7-2 (field doses). Where doubts begin: common practice, no source.",
        example: &[
            "500",
            "0.02",
            "thiosulfate_to_tetrathionate",
            "fresh_bath",
            "water_only",
            "100",
            "0",
        ],
        call: neutraliser,
    },
    Function {
        name: "off_centre_opening",
        module: "opening",
        summary: "Widths of two fronts whose button line is shifted to one side of the centre front.",
        description: "`narrow_to_line = front / 2 - shift + allowance` and `wide_to_line = front / 2 + shift + allowance`; the cut widths\nadd the extension (the button stand; facings are not included). Say which side is narrow and which laps over: the\nsums are the same for both. The waistband's overlap must equal this extension. A sewing-machine manual asks for an\nextension of at least three quarters of the button's diameter.\n\nA front below 100 mm is doubted: it may be in centimetres.",
        arguments: &[
            Argument {
                name: "front",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished front, side seam to side seam",
            },
            Argument {
                name: "shift",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "button line from the centre front",
            },
            Argument {
                name: "extension",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "button stand, button line to the finished opening edge",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance at the side seams",
            },
            Argument {
                name: "wide_panel",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "cloth there is for the wide front, button line to side cut edge",
            },
            Argument {
                name: "dart_distance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "middle of each front's dart from the centre front; half the front where there is none",
            },
        ],
        answers: &[
            Answer {
                name: "narrow_to_line",
                unit: "mm",
                meaning: "Narrow front, button line to the cut edge at its side",
            },
            Answer {
                name: "wide_to_line",
                unit: "mm",
                meaning: "Wide front, button line to the cut edge at its side",
            },
            Answer {
                name: "narrow_cut",
                unit: "mm",
                meaning: "Narrow front, opening edge to the cut edge at its side",
            },
            Answer {
                name: "wide_cut",
                unit: "mm",
                meaning: "Wide front, opening edge to the cut edge at its side",
            },
            Answer {
                name: "largest_shift",
                unit: "mm",
                meaning: "Largest shift that the wide panel allows",
            },
            Answer {
                name: "dart_to_narrow",
                unit: "mm",
                meaning: "Dart from the narrow front's button line; negative beyond the line, towards the edge",
            },
            Answer {
                name: "dart_to_wide",
                unit: "mm",
                meaning: "Dart from the wide front's button line",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `wide_panel` when it is too narrow even without\na shift; naming `shift` when the narrow front would vanish or the wide panel is too narrow, with the largest shift as\n`max`; naming `dart_distance` when the dart lies beyond the side seam.",
        source: "Arithmetic. `tests/vectors/off_centre_opening.csv` has hand-worked rows. Least extension: sewing-machine manual, model\n1288.",
        example: &["380", "85", "18", "10", "300", "90"],
        call: off_centre_opening,
    },
    Function {
        name: "overdye",
        module: "shade",
        summary: "Reflectance of cloth dyed over the colour it has, as a band from pale to deep.",
        description: "Depths of shade add up: `K/S = (K/S of the ground) + (K/S of the dye)`. Give the dye's as a low and a high, from swatches\non white cloth of the same fibre: water, heat, mordant and the next batch all move it. Ask once for each of red, green\nand blue light. A dye only takes light away, so no part gets lighter. Not foretold: a fibre that takes dye otherwise, a\nfinish, a ground that bleeds, hues that alkali or iron turn. Judge dry cloth, by daylight.",
        arguments: &[
            Argument {
                name: "ground",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.001, 1.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "reflectance of the cloth as it is",
            },
            Argument {
                name: "low",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "least that the dye adds, K/S",
            },
            Argument {
                name: "high",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 100.0]),
                conditions: &[">= low"],
                items: None,
                default: None,
                meaning: "most that the dye adds, K/S",
            },
        ],
        answers: &[
            Answer {
                name: "pale",
                unit: "1",
                meaning: "Reflectance where the dye takes least",
            },
            Answer {
                name: "deep",
                unit: "1",
                meaning: "Reflectance where the dye takes most",
            },
            Answer {
                name: "pale_l",
                unit: "1",
                meaning: "Lightness L* of a grey of the pale reflectance",
            },
            Answer {
                name: "deep_l",
                unit: "1",
                meaning: "Lightness L* of a grey of the deep reflectance",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `high` when it is less than `low`.",
        source: "E. Allen, as for `k_over_s`; the sum of depths is the one-constant theory's.",
        example: &["0.5", "0.2", "0.875"],
        call: overdye,
    },
    Function {
        name: "owf",
        module: "wet",
        summary: "Mass of a dye, mordant or assistant from its percentage on weight of fibre.",
        description: "`amount = mass · pct / 100`, the mass being that of the dry goods. Say of a plant dyestuff whether it is weighed\nfresh, frozen or dry: the percentages differ by several times. Not for bleach, whose strength and time decide. Above 100 %\nor below 0.1 %, and for goods of less than 2 g, there are doubts.",
        arguments: &[
            Argument {
                name: "mass_g",
                kind: Kind::Number,
                unit: "g",
                range: Some([0.01, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "dry mass of the goods",
            },
            Argument {
                name: "pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "percentage on weight of fibre",
            },
        ],
        answers: &[
            Answer {
                name: "amount_g",
                unit: "g",
                meaning: "Mass to weigh out",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "E. M. Mairet, *A Book on Vegetable Dyes*, 1916, and *Vegetable Dyes*, 1924 (recipes by weight of wool and cotton). Where doubts begin: common practice, no source.",
        example: &["380", "15"],
        call: owf,
    },
    Function {
        name: "panel_by_offsets",
        module: "offsets",
        summary: "Area and sides of a panel measured at stations along a grain line, left and right of it.",
        description: "The fast way for an uneven or traced panel: draw one thread's line down it, mark stations, and measure square to the line to\nboth edges. Between stations the sides are taken as straight, so put one at every corner and more where an edge curves; the\narea is the sum of trapeziums. `left_bow` and `right_bow` tell how far each station lies beyond (positive) or within the\nstraight line between its side's ends, measured across as the readings are: a reading out of row is a slip of the tape, or a side that is no straight seam. What\nlies off the line makes every width wrong: check that the thread runs true.",
        arguments: &[
            Argument {
                name: "stations",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([-100000.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(2, 200)),
                default: None,
                meaning: "places along the grain line, rising",
            },
            Argument {
                name: "left",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: Some(Items::As("stations")),
                default: None,
                meaning: "from the line to the left edge at each",
            },
            Argument {
                name: "right",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: Some(Items::As("stations")),
                default: None,
                meaning: "from the line to the right edge at each",
            },
        ],
        answers: &[
            Answer {
                name: "left_bow",
                unit: "mm",
                meaning: "left edge beyond its straight line; negative within",
            },
            Answer {
                name: "right_bow",
                unit: "mm",
                meaning: "right edge beyond its straight line",
            },
            Answer {
                name: "area",
                unit: "mm2",
                meaning: "Area between the first and the last station",
            },
            Answer {
                name: "length",
                unit: "mm",
                meaning: "From the first to the last station",
            },
            Answer {
                name: "widest",
                unit: "mm",
                meaning: "Greatest width at a station",
            },
            Answer {
                name: "narrowest",
                unit: "mm",
                meaning: "Least width at a station",
            },
            Answer {
                name: "largest_bow",
                unit: "mm",
                meaning: "Farthest that a side leaves the straight line between its ends, measured across",
            },
        ],
        errors: "`NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `stations` when one is not beyond the\none before. `Outline` naming `right` when all widths are 0.",
        source: "Offsets from a base line and the trapezium rule, as in land surveying. `tests/vectors/panel_by_offsets.csv` has hand-worked\nrows.",
        example: &["0 200 400 600", "150 160 200 210", "160 180 180 220"],
        call: panel_by_offsets,
    },
    Function {
        name: "panel_by_triangles",
        module: "panel",
        summary: "Corners and area of a panel measured by tape in triangles, with its spare readings checked.",
        description: "Number the corners around the panel, from 0, in either direction; corner 1 is `base` from corner 0. Every further\ncorner, in order, is read from two corners before it, `starts` and `ends`, and lies to the left (0) or right (1) as\nseen from the start towards the end. Any other distance between two corners is a spare reading: at least one, the\nother diagonal, tells a misread tape, and cloth that lay off grain.\n\n`along` and `across` get a place for each corner: corner 0 at 0, 0 and corner 1 at `base`, 0; left is positive across.\n`misfits` gets a length for each spare reading: as the corners have it, less the reading.",
        arguments: &[
            Argument {
                name: "base",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from corner 0 to corner 1",
            },
            Argument {
                name: "starts",
                kind: Kind::Counts,
                unit: "count",
                range: Some([0.0, 63.0]),
                conditions: &[],
                items: Some(Items::Between(1, 62)),
                default: None,
                meaning: "corner the first reading is from",
            },
            Argument {
                name: "ends",
                kind: Kind::Counts,
                unit: "count",
                range: Some([0.0, 63.0]),
                conditions: &[],
                items: Some(Items::As("starts")),
                default: None,
                meaning: "corner the second reading is from",
            },
            Argument {
                name: "from_start",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: Some(Items::As("starts")),
                default: None,
                meaning: "first reading of each further corner",
            },
            Argument {
                name: "from_end",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: Some(Items::As("starts")),
                default: None,
                meaning: "second reading of each further corner",
            },
            Argument {
                name: "sides",
                kind: Kind::Counts,
                unit: "count",
                range: Some([0.0, 1.0]),
                conditions: &[],
                items: Some(Items::As("starts")),
                default: None,
                meaning: "0 left, 1 right, seen from start to end",
            },
            Argument {
                name: "spare_starts",
                kind: Kind::Counts,
                unit: "count",
                range: Some([0.0, 63.0]),
                conditions: &[],
                items: Some(Items::Between(0, 200)),
                default: None,
                meaning: "one corner of each spare reading",
            },
            Argument {
                name: "spare_ends",
                kind: Kind::Counts,
                unit: "count",
                range: Some([0.0, 63.0]),
                conditions: &[],
                items: Some(Items::As("spare_starts")),
                default: None,
                meaning: "the other corner",
            },
            Argument {
                name: "spare_readings",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: Some(Items::As("spare_starts")),
                default: None,
                meaning: "distance between them",
            },
        ],
        answers: &[
            Answer {
                name: "along",
                unit: "mm",
                meaning: "each corner along the base",
            },
            Answer {
                name: "across",
                unit: "mm",
                meaning: "each corner square to it",
            },
            Answer {
                name: "misfits",
                unit: "mm",
                meaning: "what each spare reading misses",
            },
            Answer {
                name: "area",
                unit: "mm2",
                meaning: "Area within the corners",
            },
            Answer {
                name: "perimeter",
                unit: "mm",
                meaning: "Way round the corners",
            },
            Answer {
                name: "largest_misfit",
                unit: "mm",
                meaning: "Largest misfit of a spare reading, without its sign",
            },
            Answer {
                name: "weakest_corner",
                unit: "count",
                meaning: "The corner whose own triangle holds it least",
            },
            Answer {
                name: "weakest_per_mm",
                unit: "1",
                meaning: "How far that corner moves at worst along or across its base, for each mm that its readings are off",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "`TRIANGLE_FLAT` and `TRIANGLE_TALL` of any corner, `SPARE_MISFIT` when a spare reading misses by over 0.5 %",
            },
        ],
        errors: "`NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `starts` or `ends`: not a corner\nbefore this one, twice the same, or two in one place; `from_end`: no triangle, with the readings that make one;\n`sides`: the way round the corners crosses itself, most likely at this one; `spare_starts` or `spare_ends`: no such\ncorner, or twice the same.",
        source: "Triangles as in `trilaterate`; area by the shoelace formula (Gauss). Spare readings to 0.5 %: common practice, no\nsource.",
        example: &["500", "0", "1", "300", "400", "0", "0", "2", "301"],
        call: panel_by_triangles,
    },
    Function {
        name: "parse_length",
        module: "tape",
        summary: "A length as it is written.",
        description: "Whole and mixed numbers, fractions (`3/8`, `⅜`, `3⁄8`, `31-3/8`), a decimal point or comma, a leading minus sign\nfor the whole. Units: mm, cm, m; in, `\"`, ft, `'`, yd; their names in full, one or many; upper or lower case, so `M`\nis metres; a full stop after an abbreviation. Spaces of any width or none. Several units in one length, each once,\nlarger first, all metric or all imperial: `2 ft 3 1/8 in`, `1 m 20 cm`.\n\nA number without a unit is refused, zero too, and so are thousands marks: `1,234` may be either. A fraction is less\nthan one, for `313/8` is more likely `31 3/8` without its space. At most 64 characters.\n\nMetric lengths are correctly rounded; imperial ones are counted in inches, then multiplied by 25.4 once, so that\n`31 3/8 in` is `31.375 * INCH`.",
        arguments: &[
            Argument {
                name: "text",
                kind: Kind::Text,
                unit: "text",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "a length as written",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "The length",
            },
        ],
        errors: "`Syntax`: it cannot be read, from the character at `at`. `NoUnit`: `value` has several readings. `TwoReadings`: a\nmark after which it may be `min` or `max`; if these are equal, it is a thousands mark. `OutOfRange`: the length is\nover 1e7 mm either way.",
        source: "1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 36 in, exact by the international yard and pound agreement of 1959.",
        example: &["31 3/8 in"],
        call: parse_length,
    },
    Function {
        name: "photo_map",
        module: "photo",
        summary: "True places of points in a photograph of cloth that lies flat beside a reference of four known points.",
        description: "The picture of a plane is its projective map, and four points fix it: the corners of a sheet of paper of known size, say,\ngiven in order round it in the picture and in the same order as they truly lie. `along` and `across` get the true place of\neach point, `scales` the length that one picture unit stands for there, `√` of the map's change of area. Only what lies\nflat in the reference's own plane is mapped truly, and the bow that a lens gives straight lines is not taken out: stand\nback, point the camera straight down, use the middle of the picture. Beyond the reference errors grow fast: a slip of\n1 picture unit at a corner moves a point one size away by several. Measure one length by tape to see.",
        arguments: &[
            Argument {
                name: "picture_x",
                kind: Kind::Numbers,
                unit: "1",
                range: Some([-100000.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(4, 4)),
                default: None,
                meaning: "reference in the picture, in pixels or any unit",
            },
            Argument {
                name: "picture_y",
                kind: Kind::Numbers,
                unit: "1",
                range: Some([-100000.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(4, 4)),
                default: None,
                meaning: "the same, up or down",
            },
            Argument {
                name: "true_x",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([-100000.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(4, 4)),
                default: None,
                meaning: "reference as it truly lies, along",
            },
            Argument {
                name: "true_y",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([-100000.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(4, 4)),
                default: None,
                meaning: "the same, across",
            },
            Argument {
                name: "x",
                kind: Kind::Numbers,
                unit: "1",
                range: Some([-1000000.0, 1000000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 1000)),
                default: None,
                meaning: "points to map, in the picture",
            },
            Argument {
                name: "y",
                kind: Kind::Numbers,
                unit: "1",
                range: Some([-1000000.0, 1000000.0]),
                conditions: &[],
                items: Some(Items::As("x")),
                default: None,
                meaning: "the same, up or down",
            },
        ],
        answers: &[
            Answer {
                name: "along",
                unit: "mm",
                meaning: "true place of each point, along",
            },
            Answer {
                name: "across",
                unit: "mm",
                meaning: "true place of each point, across",
            },
            Answer {
                name: "scales",
                unit: "mm",
                meaning: "length that one picture unit stands for there",
            },
            Answer {
                name: "reach",
                unit: "1",
                meaning: "Farthest that a point lies beyond the reference, in sizes of the reference in that direction",
            },
            Answer {
                name: "coarsest",
                unit: "mm",
                meaning: "Largest length that one picture unit stands for at a point",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "`PHOTO_REACH` when a point lies more than 1.5 sizes beyond the reference",
            },
        ],
        errors: "`NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `picture_x` or `true_x` when three of\nthe four points lie in line, or they are not in order round a figure that bulges at every corner; naming `x` when a point\nlies on or beyond the horizon of the picture.",
        source: "P. Heckbert, *Fundamentals of Texture Mapping and Image Warping*, 1989 (square to quadrilateral; from memory).\n`tests/vectors/photo_map.csv` has hand-worked rows.",
        example: &[
            "0 400 300 100",
            "0 0 300 300",
            "0 200 200 0",
            "0 0 300 300",
            "200",
            "200",
        ],
        call: photo_map,
    },
    Function {
        name: "pieced_length",
        module: "piecing",
        summary: "Length that scraps give when they are joined end to end, and how few of them reach.",
        description: "Each join takes an allowance off both its scraps: `joined = sum of lengths - 2 · allowance · (scraps - 1)`. Two allowances\na join are easily forgotten, and then the strip is short when it is too late. Count in `needed` what its own ends take.\nKeep joins off dart points, pockets and the middle of a back; under a band, in gathers or at a seam they are not seen.\nGrain, face and nap must run alike in all scraps.",
        arguments: &[
            Argument {
                name: "lengths",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 100)),
                default: None,
                meaning: "the scraps, raw edge to raw edge",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance at each edge of a join",
            },
            Argument {
                name: "needed",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length needed, allowances of its ends included",
            },
        ],
        answers: &[
            Answer {
                name: "joined",
                unit: "mm",
                meaning: "Length of all scraps joined, free ends raw",
            },
            Answer {
                name: "spare",
                unit: "mm",
                meaning: "What that is longer than needed; negative when it does not reach",
            },
            Answer {
                name: "joins",
                unit: "count",
                meaning: "Number of joins when all are used",
            },
            Answer {
                name: "fewest",
                unit: "count",
                meaning: "Fewest scraps that reach, the longest taken first; 0 when all together do not",
            },
        ],
        errors: "`NotFinite`, `OutOfRange` or `Count`, naming the argument. `NoSolution` naming `lengths` and the scrap that two allowances\nwould swallow: leave it out.",
        source: "Arithmetic. `tests/vectors/pieced_length.csv` has hand-worked rows.",
        example: &["420 260", "10", "640"],
        call: pieced_length,
    },
    Function {
        name: "piping_width",
        module: "bias",
        summary: "Width of the strip that covers a cord for piping.",
        description: "`π · (cord + thickness) + 2 · allowance`: once round the cord in the middle of the cloth, and an allowance on both sides.\nStitched close to the cord, it is a little more than is covered, which the stitching needs. Shrink cotton cord first.",
        arguments: &[
            Argument {
                name: "cord",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "diameter of the cord",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance beside it",
            },
            Argument {
                name: "thickness",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 20.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "thickness of the strip's cloth",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Width to cut, square to the edges",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when there is neither cord nor allowance.",
        source: "Plane geometry. `tests/vectors/piping_width.csv` has hand-worked rows.",
        example: &["4", "10", "0"],
        call: piping_width,
    },
    Function {
        name: "plant_dyestuff",
        module: "dye",
        summary: "Plant matter for a dye bath, as a range, from a recipe weighed fresh or dry.",
        description: "`mass · pct / 100`, low and high; where the recipe weighs it otherwise than it is at hand, turned by the range of fresh\nto dry. Frozen counts as fresh. Season, soil, part of the plant and water decide the colour more than the scale: dye a\nswatch. More extractions of the same matter give paler baths of another hue, so they are not added up here. Not every\nplant is harmless: know what it is, never cook it in vessels for food. Below 1 %, above 100 % of what is dry at hand, and\nfor goods of less than 2 g, there are doubts.",
        arguments: &[
            Argument {
                name: "mass_g",
                kind: Kind::Number,
                unit: "g",
                range: Some([0.01, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "dry mass of the goods",
            },
            Argument {
                name: "low_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.1, 2000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "percentage on weight of fibre, least",
            },
            Argument {
                name: "high_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.1, 2000.0]),
                conditions: &[">= low_pct"],
                items: None,
                default: None,
                meaning: "percentage on weight of fibre, most",
            },
            Argument {
                name: "recipe",
                kind: Kind::Choice(&BASIS),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "how the recipe weighs it",
            },
            Argument {
                name: "at_hand",
                kind: Kind::Choice(&BASIS),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "how it is at hand",
            },
            Argument {
                name: "fresh_per_dry_low",
                kind: Kind::Number,
                unit: "1",
                range: Some([1.0, 20.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(3.0)),
                meaning: "grams fresh that dry to one, least",
            },
            Argument {
                name: "fresh_per_dry_high",
                kind: Kind::Number,
                unit: "1",
                range: Some([1.0, 20.0]),
                conditions: &[">= fresh_per_dry_low"],
                items: None,
                default: Some(Default::Number(8.0)),
                meaning: "grams fresh that dry to one, most",
            },
        ],
        answers: &[
            Answer {
                name: "low_g",
                unit: "g",
                meaning: "Least to weigh out, as it is at hand",
            },
            Answer {
                name: "high_g",
                unit: "g",
                meaning: "Most to weigh out, as it is at hand",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming the high of a range that is less than its low.",
        source: "Arithmetic. Percentages: E. M. Mairet, *A Book on Vegetable Dyes*, 1916 (madder 50 % on wool, bark 100 %); twice the\nfibre's mass of fresh leaves: northernwisconsin.com. 3 to 8 g fresh to one dry: from memory, common practice; weigh,\ndry and weigh again to know yours.",
        example: &["400", "50", "100", "dry", "fresh", "3", "8"],
        call: plant_dyestuff,
    },
    Function {
        name: "pooled_strength",
        module: "wet",
        summary: "Strength of several liquors of one and the same stuff poured together.",
        description: "`strength = sum(volume · strength) / sum(volume)`. Only for liquors of the same dye, mordant or binder: nothing is ever\npoured to bleach, and unlike baths are not mixed to be rid of them.",
        arguments: &[
            Argument {
                name: "volumes_ml",
                kind: Kind::Numbers,
                unit: "ml",
                range: Some([0.01, 100000000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 100)),
                default: None,
                meaning: "volume of each liquor",
            },
            Argument {
                name: "strengths_pct",
                kind: Kind::Numbers,
                unit: "%",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: Some(Items::As("volumes_ml")),
                default: None,
                meaning: "strength of each",
            },
        ],
        answers: &[
            Answer {
                name: "strength_pct",
                unit: "%",
                meaning: "Strength, in the unit of the strengths given",
            },
            Answer {
                name: "volume_ml",
                unit: "ml",
                meaning: "Volume",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite`, `OutOfRange` or `Count`, naming the argument.",
        source: "Balance of mass, volumes taken to add up.",
        example: &["4000 3000", "0.5 1.2"],
        call: pooled_strength,
    },
    Function {
        name: "puff_spread",
        module: "sleeve",
        summary: "Spread of a sleeve cap that is slashed and opened for gathers between two notches.",
        description: "`flat = zone · ratio`, `spread_each = (flat - zone) / slashes`. Where the sleeve is cut already, a strip is let in instead,\non the sleeve's own grain: one as wide as `strip` allows a ratio of `(zone + strip) / zone`. A sleeve still to be cut needs\nnone. How much the cap is raised as well is taste: fold it in paper first.",
        arguments: &[
            Argument {
                name: "zone",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam line between the notches, where the gathers go",
            },
            Argument {
                name: "ratio",
                kind: Kind::Number,
                unit: "1",
                range: Some([1.0, 10.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "zone after spreading over before",
            },
            Argument {
                name: "slashes",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of slashes",
            },
            Argument {
                name: "strip",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "cloth there is to let in, allowances taken off; 0: none",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Zone after spreading, before gathering",
            },
            Answer {
                name: "added",
                unit: "mm",
                meaning: "What spreading adds in all",
            },
            Answer {
                name: "spread_each",
                unit: "mm",
                meaning: "How far each slash opens",
            },
            Answer {
                name: "strip_ratio",
                unit: "1",
                meaning: "The ratio that the strip to be let in allows",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "`GATHERS_SCANT` or `GATHERS_LARGE` when the smaller of the ratios asked for looks like a mistake",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic; the doubt below 1.2 is common practice, no source. `tests/vectors/puff_spread.csv` has hand-worked rows.",
        example: &["240", "1.75", "6", "100"],
        call: puff_spread,
    },
    Function {
        name: "reflectance",
        module: "shade",
        summary: "Reflectance of a depth of shade K/S: `k_over_s` turned round.",
        description: "`R = 1 + K/S - √((K/S)² + 2 K/S)`, worked as the reciprocal of `1 + K/S + √(...)`, which loses no digits near black.",
        arguments: &[
            Argument {
                name: "k_over_s",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "depth of shade",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "1",
                meaning: "Reflectance",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "E. Allen, \"Colorant Formulation and Shading\", in *Optical Radiation Measurements* vol. 2, Academic Press 1980, eq. 20.",
        example: &["0.25"],
        call: reflectance,
    },
    Function {
        name: "relative_strength",
        module: "shade",
        summary: "Strength of a dyeing against another, by their depths of shade, in percent.",
        description: "",
        arguments: &[
            Argument {
                name: "k_over_s",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "depth of shade of the dyeing",
            },
            Argument {
                name: "standard",
                kind: Kind::Number,
                unit: "1",
                range: Some([1e-6, 500.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "depth of shade it is held against",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "%",
                meaning: "Relative strength",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Common practice in dye houses: the ratio of K/S, both measured at the same wavelength.",
        example: &["17.46", "11.85"],
        call: relative_strength,
    },
    Function {
        name: "remaining_width",
        module: "body",
        summary: "Width of the panels still to be made, when the others are given.",
        description: "`remaining = (girth + ease - other_width) / parts + intake`, inside the seams: what the given panels leave of the\ngirth, shared over the rest, and the darts or pleats of each added.\n\nFor doubts on the girth see `girth_doubts`.",
        arguments: &[
            Argument {
                name: "girth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of the body",
            },
            Argument {
                name: "ease",
                kind: Kind::Number,
                unit: "mm",
                range: Some([-10000.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "what the garment has more",
            },
            Argument {
                name: "other_width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "the given panels together, inside seams and darts",
            },
            Argument {
                name: "parts",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 64.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "number of panels still to be made, all equal",
            },
            Argument {
                name: "intake",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "darts or pleats in each of them",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "The width of each remaining panel inside the seams",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `ease`: it takes the whole girth away;\n`other_width`: the given panels leave nothing.",
        source: "Arithmetic; `tests/vectors/remaining_width.csv` has published rows.",
        example: &["720", "20", "410", "2", "25"],
        call: remaining_width,
    },
    Function {
        name: "repeats",
        module: "quantity",
        summary: "Lengths rounded up to whole repeats of the pattern, so that all of them begin at the same place in it.",
        description: "`each = repeat · ceil(length / repeat)`. The first cut may have to move to where the pattern is wanted: buy one repeat\nmore than the total.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length needed, allowances included",
            },
            Argument {
                name: "repeat",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "height of the pattern's repeat",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "how many lengths",
            },
        ],
        answers: &[
            Answer {
                name: "repeats",
                unit: "count",
                meaning: "Whole repeats in one length",
            },
            Answer {
                name: "each",
                unit: "mm",
                meaning: "Length to cut each",
            },
            Answer {
                name: "total",
                unit: "mm",
                meaning: "All lengths together",
            },
            Answer {
                name: "waste",
                unit: "mm",
                meaning: "What is cut off and lies idle, all lengths together",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic; common practice, no source. One repeat more: sew4home.com.",
        example: &["720", "320", "4"],
        call: repeats,
    },
    Function {
        name: "ribbing",
        module: "elastic",
        summary: "Strip of ribbing for a neck, a cuff or a waist.",
        description: "`round = edge · share`, joined with an allowance at both ends; folded along its middle, `cut_width = 2 · depth + 2 ·\nallowance`. A round neck takes less than a waist, lest it stand away. Ribbings differ: pin a strip round the edge first.\nA neck must still pass over the head, see\n`head_opening`.",
        arguments: &[
            Argument {
                name: "edge",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "edge that it is sewn to",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished depth",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance at each edge and end",
            },
            Argument {
                name: "share",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.3, 1.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.8)),
                meaning: "strip over edge",
            },
        ],
        answers: &[
            Answer {
                name: "round",
                unit: "mm",
                meaning: "Way round the joined strip, not stretched",
            },
            Answer {
                name: "cut_length",
                unit: "mm",
                meaning: "Length to cut, along the way it stretches",
            },
            Answer {
                name: "cut_width",
                unit: "mm",
                meaning: "Width to cut, folded in two when sewn",
            },
            Answer {
                name: "stretch_pct",
                unit: "%",
                meaning: "Stretch that it is sewn on with",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic; a share of 0.75 to 0.9 is common practice, no source. `tests/vectors/ribbing.csv` has hand-worked rows.",
        example: &["250", "60", "7", "0.8"],
        call: ribbing,
    },
    Function {
        name: "rinses",
        module: "wet",
        summary: "Rinses that thin the liquor carried over to a share of what it was, as a range.",
        description: "Each rinse leaves `carried / (carried + fresh)` of it. What the goods carry between rinses is the main term and is never\nknown well: give a low and a high. It tells of the liquor between the fibres only; what the fibre itself holds leaves\nin its own time, so rinse until the water runs clear, or has no smell, whatever is printed here. Less fresh water than the\ngoods carry is doubted (litres?), and so is a share above a half (1 for 1 %?). The first rinse after a hot bath is warm.",
        arguments: &[
            Argument {
                name: "carried_low_ml",
                kind: Kind::Number,
                unit: "ml",
                range: Some([0.01, 10000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "least liquor carried from bath to bath",
            },
            Argument {
                name: "carried_high_ml",
                kind: Kind::Number,
                unit: "ml",
                range: Some([0.01, 10000000.0]),
                conditions: &[">= carried_low_ml"],
                items: None,
                default: None,
                meaning: "most liquor carried",
            },
            Argument {
                name: "fresh_ml",
                kind: Kind::Number,
                unit: "ml",
                range: Some([0.01, 100000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "fresh water each rinse",
            },
            Argument {
                name: "share_left",
                kind: Kind::Number,
                unit: "1",
                range: Some([1e-9, 1.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.01)),
                meaning: "share of the liquor that may be left",
            },
        ],
        answers: &[
            Answer {
                name: "rinses_low",
                unit: "count",
                meaning: "Rinses where the goods carry least",
            },
            Answer {
                name: "rinses_high",
                unit: "count",
                meaning: "Rinses where the goods carry most",
            },
            Answer {
                name: "left",
                unit: "1",
                meaning: "Share of the first liquor left after the most rinses, where the goods carry most",
            },
            Answer {
                name: "water_ml",
                unit: "ml",
                meaning: "Fresh water for the most rinses",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `carried_high_ml` when it is less than the low;\nnaming `fresh_ml` when more than 100 rinses would be needed.",
        source: "Balance of mass, each rinse fully mixed. `tests/vectors/rinses.csv` has hand-worked rows.",
        example: &["300", "1000", "5000", "0.01"],
        call: rinses,
    },
    Function {
        name: "round_set",
        module: "tape",
        summary: "Lengths rounded so that the rounded lengths add up to the rounded sum.",
        description: "Each is rounded down; what is then missing from the rounded sum is given, a graduation each, to the lengths that lost\nmost, of equals to the earlier. Where two edges are sewn together, round one and give the other the same lengths.",
        arguments: &[
            Argument {
                name: "lengths",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 1000)),
                default: None,
                meaning: "the lengths",
            },
            Argument {
                name: "graduation",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.001, 10000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "distance between two marks: 3.175 is 1/8 in",
            },
        ],
        answers: &[
            Answer {
                name: "tapes",
                unit: "mm",
                meaning: "the rounded lengths",
            },
            Answer {
                name: "total",
                unit: "mm",
                meaning: "Sum of the rounded lengths, which is the rounded sum",
            },
            Answer {
                name: "largest_change",
                unit: "mm",
                meaning: "Most that any length was changed, up or down",
            },
        ],
        errors: "`NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room` when `tapes` is too short.",
        source: "The method of largest remainders (Hamilton), as used to share out whole seats by votes.",
        example: &["10.4 10.4 10.2", "1"],
        call: round_set,
    },
    Function {
        name: "round_to",
        module: "tape",
        summary: "A length rounded to a graduation of the tape.",
        description: "A length within a thousand-millionth of a graduation, or of the middle between two, counts as being there: binary\narithmetic leaves that much dust.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([-10000000.0, 10000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "the length",
            },
            Argument {
                name: "graduation",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.001, 10000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "distance between two marks: 3.175 is 1/8 in",
            },
            Argument {
                name: "way",
                kind: Kind::Choice(&ROUNDING),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: Some(Default::Word("nearest")),
                meaning: "which graduation",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "The rounded length",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Common practice, no source: to the nearest mark for a seam, up for cloth to buy, down for cloth there is.",
        example: &["796", "3.175", "nearest"],
        call: round_to,
    },
    Function {
        name: "ruffle",
        module: "fullness",
        summary: "Strips to cut for a ruffle along an edge.",
        description: "`flat = edge · ratio`, `cut_width = depth + allowance + hem`, and as many strips as their length, less an allowance at both\nends, makes that up: `strips = ceil(flat / (strip - 2 · allowance))`. A ruffle along an edge with ends has one join fewer\nand narrow hems instead. Strips across the cloth gather softly, along the selvedge crisply; on the bias no hem frays.\n\nA ratio below 1.2 or above 4 is doubted (common practice, no source).",
        arguments: &[
            Argument {
                name: "edge",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "edge that it is sewn to",
            },
            Argument {
                name: "ratio",
                kind: Kind::Number,
                unit: "1",
                range: Some([1.0, 10.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "strip over edge",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished depth, seam to hem edge",
            },
            Argument {
                name: "strip",
                kind: Kind::Number,
                unit: "mm",
                range: Some([10.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of one strip: the cloth's width, or a scrap's length",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance at the gathered edge and each join",
            },
            Argument {
                name: "hem",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "hem allowance, turn included",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Length of the joined strip before gathering",
            },
            Answer {
                name: "cut_width",
                unit: "mm",
                meaning: "Width to cut each strip",
            },
            Answer {
                name: "strips",
                unit: "count",
                meaning: "Number of strips",
            },
            Answer {
                name: "cloth_length",
                unit: "mm",
                meaning: "Cloth that the strips take, lying side by side",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the whole strip, or so\nmuch that there would be more than 100000 strips.",
        source: "Arithmetic. Ratio: C. C. Ingalls, *Text-Book on Domestic Art*, 1911 (1 1/2); 1.5 to 3 by weight and fullness,\nstitchcoach.blogspot.com, 2017. The doubt is that of `gathers`.",
        example: &["1200", "1.5", "80", "620", "10", "15"],
        call: ruffle,
    },
    Function {
        name: "screen_level",
        module: "colour",
        summary: "Screen level of an amount of light: `linear_light` turned round.",
        description: "",
        arguments: &[
            Argument {
                name: "light",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 1.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "share of the most light",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "1",
                meaning: "Level, 0 to 255, not rounded",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "IEC 61966-2-1 (sRGB).",
        example: &["0.18"],
        call: screen_level,
    },
    Function {
        name: "seam_pleat",
        module: "pleat",
        summary: "Cloth added at the two edges of a seam that is to hold an inverted pleat.",
        description: "The first edge gets one depth and its allowance, the next one three depths and its allowance: the seam then lies hidden\nin an inner fold, not in the middle of the underlay. At a gored seam both are added along the slanted edge.",
        arguments: &[
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "depth of each of the pleat's two folds",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance of each edge",
            },
        ],
        answers: &[
            Answer {
                name: "first_edge",
                unit: "mm",
                meaning: "Added to the edge whose seam lies in the nearer inner fold",
            },
            Answer {
                name: "next_edge",
                unit: "mm",
                meaning: "Added to the edge that makes the rest of the pleat",
            },
            Answer {
                name: "intake",
                unit: "mm",
                meaning: "Both together, less the seam: what the pleat takes up",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "L. I. Baldt, *Clothing for Women*, 1916, Outer Garments pt 4 (inverted pleat at a gored seam: 1 pleat width and a seam on\nthe first edge, 3 and a seam on the next). A pleat that deepens to the hem is asked for twice, at the waist and at the\nhem: the same author adds 2 to 3 in at the waist for a back pleat and twice that at the hem.",
        example: &["50", "10"],
        call: seam_pleat,
    },
    Function {
        name: "sectioned_band",
        module: "band",
        summary: "Upper edges of a band made of straight sections that slant at their joins.",
        description: "What the upper edge is shorter by is shared by the slanted ends: `slant = (sum of lengths - top) / slanted ends`, at\nthe angle `atan(slant / depth)` from the square. At each join the lower edge peaks, and the upper edge notches, by\ntwice that angle, so the edges are trued to a curve or the band is cut curved (`curved_band`). A side seam runs on\nstraight into the band only if the end's angle equals the skirt's side seam's angle from the square at the waist. An\nend that overlaps must be square.",
        arguments: &[
            Argument {
                name: "lengths",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 100)),
                default: None,
                meaning: "finished lower edge of each section, in order",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished depth, square to the lower edge",
            },
            Argument {
                name: "top",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished upper edge of all sections together",
            },
            Argument {
                name: "ends",
                kind: Kind::Choice(&SQUARE_ENDS),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "which free ends are square",
            },
        ],
        answers: &[
            Answer {
                name: "tops",
                unit: "mm",
                meaning: "finished upper edge of each section",
            },
            Answer {
                name: "slant",
                unit: "mm",
                meaning: "What each slanted end takes from the upper edge; negative where the band flares",
            },
            Answer {
                name: "end_angle_deg",
                unit: "deg",
                meaning: "Angle of a slanted end from the square",
            },
            Answer {
                name: "join_kink_deg",
                unit: "deg",
                meaning: "Kink at each join: a peak of the lower edge and a notch of the upper; 0 without a join",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `top` when one section has\nboth ends square and a different top; naming `lengths` when a section is shorter than its slants.",
        source: "Plane geometry. `tests/vectors/sectioned_band.csv` has hand-worked rows.",
        example: &["140 330 230", "50", "676", "both"],
        call: sectioned_band,
    },
    Function {
        name: "shaped_band",
        module: "band",
        summary: "Part of a ring for a shaped band, or for any cone or frustum.",
        description: "`outer_radius = lower · depth / (lower - upper)`, `inner_radius = outer_radius - depth`, angle in radians\n`(lower - upper) / depth`. For a straight band there is no such ring: see `straight_band`. A band that flares\nupwards is the same ring turned over: give its longer edge as `lower`.",
        arguments: &[
            Argument {
                name: "lower",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished length of the lower edge",
            },
            Argument {
                name: "upper",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &["< lower"],
                items: None,
                default: None,
                meaning: "finished length of the upper edge",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from edge to edge, measured along the cloth",
            },
        ],
        answers: &[
            Answer {
                name: "inner_radius",
                unit: "mm",
                meaning: "Radius of the upper, shorter edge",
            },
            Answer {
                name: "outer_radius",
                unit: "mm",
                meaning: "Radius of the lower, longer edge",
            },
            Answer {
                name: "angle_deg",
                unit: "deg",
                meaning: "Angle of the sector",
            },
            Answer {
                name: "sagitta",
                unit: "mm",
                meaning: "Height of the lower edge's arc above the straight line between its ends",
            },
            Answer {
                name: "area_mm2",
                unit: "mm2",
                meaning: "Area of the band",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `upper` when it is not below `lower`, or so far\nbelow that the sector would be more than a full ring.",
        source: "Unrolled frustum: E. M. Longfield, *Sheet Metal Drafting*, 1921 (slant height, area by the mean of the two\ncircumferences); `tests/vectors/shaped_band.csv` has published and hand-worked rows.",
        example: &["700", "676", "50"],
        call: shaped_band,
    },
    Function {
        name: "share",
        module: "body",
        summary: "One panel's share of a girth.",
        description: "`share = (girth + ease) / parts`, inside the seams. Ease is negative in cloth that stretches.\n\nFor doubts on the girth see `girth_doubts`.",
        arguments: &[
            Argument {
                name: "girth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of the body",
            },
            Argument {
                name: "ease",
                kind: Kind::Number,
                unit: "mm",
                range: Some([-10000.0, 10000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "what the garment has more",
            },
            Argument {
                name: "parts",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 64.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(4.0)),
                meaning: "number of equal panels",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "The width of each panel inside the seams",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `ease`: it takes the whole girth away.",
        source: "Arithmetic; `tests/vectors/share.csv` has published rows.",
        example: &["1000", "60", "4"],
        call: share,
    },
    Function {
        name: "shirring",
        module: "elastic",
        summary: "Cloth and rows for shirring with elastic thread.",
        description: "`flat = finished · 100 / drawn_pct`, and `rows = floor(depth / pitch) + 1`, the first and last at the edges of the depth.\nHow far it draws up depends on cloth, tension and number of rows, and steam draws it further: shirr a square of known\nwidth and measure.",
        arguments: &[
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width when drawn up, not stretched",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from the first row to the last",
            },
            Argument {
                name: "pitch",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(10.0)),
                meaning: "from row to row",
            },
            Argument {
                name: "drawn_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([10.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(55.0)),
                meaning: "what the cloth draws up to",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Width before shirring, without allowances",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Flat over finished",
            },
            Answer {
                name: "rows",
                unit: "count",
                meaning: "Number of rows",
            },
            Answer {
                name: "stitching",
                unit: "mm",
                meaning: "All rows together, as sewn on the flat cloth",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Always `ELASTIC_BATH`",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "To 50 or 60 % of its width: common practice, no source; the default is the middle. `tests/vectors/shirring.csv`.",
        example: &["330", "120", "10", "55"],
        call: shirring,
    },
    Function {
        name: "shrink_pair",
        module: "cloth",
        summary: "What washing does to a shell and its lining, and how to cut both for it.",
        description: "Both lengths run from the same upper seam. Sewn as given, each becomes `length · (1 + change / 100)`; to have them as\ngiven after washing, each is cut `length / (1 + change / 100)`. Ask once for the length and once for the width.\n\nA change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.",
        arguments: &[
            Argument {
                name: "shell",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished shell",
            },
            Argument {
                name: "lining",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished lining",
            },
            Argument {
                name: "shell_change_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([-90.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "dimensional change of the shell's cloth",
            },
            Argument {
                name: "lining_change_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([-90.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "dimensional change of the lining's cloth",
            },
        ],
        answers: &[
            Answer {
                name: "shell_after",
                unit: "mm",
                meaning: "Shell after washing, if it is sewn as given",
            },
            Answer {
                name: "lining_after",
                unit: "mm",
                meaning: "Lining after washing, if it is sewn as given",
            },
            Answer {
                name: "below",
                unit: "mm",
                meaning: "How far the lining then hangs below the shell; negative above",
            },
            Answer {
                name: "shell_cut",
                unit: "mm",
                meaning: "Shell to cut so that washing leaves the length given",
            },
            Answer {
                name: "lining_cut",
                unit: "mm",
                meaning: "Lining to cut so that washing leaves the length given",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "ISO 5077:2007 (definition). `tests/vectors/shrink_pair.csv` has hand-worked rows.",
        example: &["600", "580", "-5", "-1"],
        call: shrink_pair,
    },
    Function {
        name: "size_step",
        module: "alteration",
        summary: "Step from one size to the next, all round and at each edge of the pattern.",
        description: "`step = (larger - smaller) / steps`, `each_edge = step / edges`. Even steps only: in published series the step itself grows\nin the larger sizes, and lengths do not grow as girths do.\n\nA girth below 110 mm, less than a child's wrist (from memory), is doubted.",
        arguments: &[
            Argument {
                name: "smaller",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of the smaller size",
            },
            Argument {
                name: "larger",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[">= smaller"],
                items: None,
                default: None,
                meaning: "girth of the larger size",
            },
            Argument {
                name: "steps",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "number of steps from one to the other",
            },
            Argument {
                name: "edges",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 64.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(4.0)),
                meaning: "edges that share a step, two to a seam",
            },
        ],
        answers: &[
            Answer {
                name: "step",
                unit: "mm",
                meaning: "From one size to the next, all round",
            },
            Answer {
                name: "each_edge",
                unit: "mm",
                meaning: "The same at each edge of the pattern",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `larger` when it is the smaller.",
        source: "Arithmetic. EN 13402-3's series steps by 40 mm, then 60 mm, in bust (from memory). `tests/vectors/size_step.csv`.",
        example: &["760", "1040", "7", "4"],
        call: size_step,
    },
    Function {
        name: "skew",
        module: "cloth",
        summary: "Skew of cloth: how far a weft thread has run off square, in percent of the width.",
        description: "`skew = 100 · shift / width`. Pull or follow one weft thread across; measure along the selvedge how far its far end\nlies from square. Positive and negative are the two ways it may lean.",
        arguments: &[
            Argument {
                name: "shift",
                kind: Kind::Number,
                unit: "mm",
                range: Some([-100000.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "along the selvedge, from square to the thread",
            },
            Argument {
                name: "width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the cloth, square across",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "%",
                meaning: "Skew",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "ASTM D3882 (formula from memory).",
        example: &["42", "1400"],
        call: skew,
    },
    Function {
        name: "skew_diagonals",
        module: "cloth",
        summary: "Skew of a square marked on the cloth, from its two diagonals after washing, in percent.",
        description: "`skew = 200 · (first - second) / (first + second)`. For a small skew it is the shift of a side in percent of the side,\nas `skew` gives; of a large one it falls short by a quarter of the square: 9.975 for a side shifted by 10 %.",
        arguments: &[
            Argument {
                name: "first",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "one diagonal of the square",
            },
            Argument {
                name: "second",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "the other",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "%",
                meaning: "Skew",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "AATCC 179, the way by diagonals (formula from memory).",
        example: &["360", "340"],
        call: skew_diagonals,
    },
    Function {
        name: "snip_spacing",
        module: "seam",
        summary: "Distance between the snips of a curved seam allowance.",
        description: "Turned under, an allowance along an inward curve such as a neckline is too short and each snip opens; along an\noutward one it is too long and each notch cut out closes. Either way a stretch of seam `s` opens or closes by\n`2 · allowance · s / radius` at the raw edge, so `spacing = opening · radius / (2 · allowance)`. A turned edge is\nnearly straight between snips and leaves the curve there by `spacing² / (8 · radius)`. Staystitch first, snip to a\nthread's breadth from it and no further. The blades are sharp: cut away from the hand that holds.",
        arguments: &[
            Argument {
                name: "radius",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "radius of the seam line",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance, after trimming",
            },
            Argument {
                name: "opening",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(3.0)),
                meaning: "how far a snip may open, or how wide a notch is",
            },
        ],
        answers: &[
            Answer {
                name: "spacing",
                unit: "mm",
                meaning: "From snip to snip along the seam line",
            },
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "How far a straight fold between two snips leaves the curve",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `opening` when the spacing would be more than a\nquarter ring, where it would no longer be small.",
        source: "Arcs about one centre; the opening of 3 mm is common practice, no source. `tests/vectors/snip_spacing.csv` has\nhand-worked rows.",
        example: &["80", "10", "3"],
        call: snip_spacing,
    },
    Function {
        name: "spacing_by_pitch",
        module: "fastening",
        summary: "Number of buttons whose even spacing comes nearest to a wanted pitch.",
        description: "Of the two whole numbers of spaces about `(last - first) / pitch` the one is taken whose pitch differs less from that\nwanted; on a tie the closer spacing. Two buttons at least.",
        arguments: &[
            Argument {
                name: "first",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "place of the first, from the edge's start",
            },
            Argument {
                name: "last",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &["> first"],
                items: None,
                default: None,
                meaning: "place of the last",
            },
            Argument {
                name: "pitch",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(90.0)),
                meaning: "pitch wanted",
            },
        ],
        answers: &[
            Answer {
                name: "count",
                unit: "count",
                meaning: "Number of buttons, the first and last included",
            },
            Answer {
                name: "pitch",
                unit: "mm",
                meaning: "From middle to middle of neighbours",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `last` when it is not beyond `first`.",
        source: "Arithmetic. A pitch of about 3 1/2 in is usual on a blouse (sunjournal.com; sewing.about.com); the default is that, in\nround millimetres. One button belongs at the bust line: see `spacing_through`.",
        example: &["20", "500", "90"],
        call: spacing_by_pitch,
    },
    Function {
        name: "spacing_through",
        module: "closure",
        summary: "Places of buttons from a first to a last, one of them at a place that must be met.",
        description: "The bust line, or a waist seam, fixes one button. The places before it are even among themselves, and so are those\nafter it; how many go on each side is chosen so that the two pitches differ least (on a tie, fewer before). Where they\ndiffer too much to please, move the first or the last, or change the number.",
        arguments: &[
            Argument {
                name: "first",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "place of the first, from the edge's start",
            },
            Argument {
                name: "last",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &["> first"],
                items: None,
                default: None,
                meaning: "place of the last",
            },
            Argument {
                name: "through",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &["> first", "< last"],
                items: None,
                default: None,
                meaning: "place that one of them must have",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([3.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "how many, the first and last included",
            },
        ],
        answers: &[
            Answer {
                name: "places",
                unit: "mm",
                meaning: "the places, in order",
            },
            Answer {
                name: "pitch_before",
                unit: "mm",
                meaning: "From middle to middle before the fixed place",
            },
            Answer {
                name: "pitch_after",
                unit: "mm",
                meaning: "From middle to middle after the fixed place",
            },
            Answer {
                name: "fixed",
                unit: "count",
                meaning: "Which of the places is the fixed one, from 0",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite`, `OutOfRange` or `Room`, naming the argument. `NoSolution` naming `last` or `through` when the three are\nnot in order.",
        source: "Arithmetic; the doubt at 3.2 mm (1/8 in) is the placement tolerance of a custom clothiers' judging standard.\n`tests/vectors/spacing_through.csv` has hand-worked rows.",
        example: &["20", "500", "200", "7"],
        call: spacing_through,
    },
    Function {
        name: "srgb_from_lab",
        module: "colour",
        summary: "Screen levels of a colour given in CIELAB under daylight D65.",
        description: "A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`.",
        arguments: &[
            Argument {
                name: "l",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "lightness L*",
            },
            Argument {
                name: "a",
                kind: Kind::Number,
                unit: "1",
                range: Some([-200.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "a*: green below 0, red above",
            },
            Argument {
                name: "b",
                kind: Kind::Number,
                unit: "1",
                range: Some([-200.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "b*: blue below 0, yellow above",
            },
        ],
        answers: &[
            Answer {
                name: "red",
                unit: "1",
                meaning: "Red, 0 to 255 where a screen can show it",
            },
            Answer {
                name: "green",
                unit: "1",
                meaning: "Green, 0 to 255 where a screen can show it",
            },
            Answer {
                name: "blue",
                unit: "1",
                meaning: "Blue, 0 to 255 where a screen can show it",
            },
            Answer {
                name: "outside",
                unit: "count",
                meaning: "How many of the three a screen cannot show",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "CIE 15 (CIELAB) and IEC 61966-2-1 (sRGB).",
        example: &["68.2864", "9.3304", "12.7525"],
        call: srgb_from_lab,
    },
    Function {
        name: "srgb_from_xyz",
        module: "colour",
        summary: "Screen levels of a colour given by its tristimulus values.",
        description: "A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`: its hue is then\nnot true.",
        arguments: &[
            Argument {
                name: "x",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 2.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "X",
            },
            Argument {
                name: "y",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 2.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "Y, the luminance: white has 1",
            },
            Argument {
                name: "z",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 2.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "Z",
            },
        ],
        answers: &[
            Answer {
                name: "red",
                unit: "1",
                meaning: "Red, 0 to 255 where a screen can show it",
            },
            Answer {
                name: "green",
                unit: "1",
                meaning: "Green, 0 to 255 where a screen can show it",
            },
            Answer {
                name: "blue",
                unit: "1",
                meaning: "Blue, 0 to 255 where a screen can show it",
            },
            Answer {
                name: "outside",
                unit: "count",
                meaning: "How many of the three a screen cannot show",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "IEC 61966-2-1 (sRGB); the matrix is the inverse of the one in `xyz_from_srgb`, to the last digit, so that a colour\ncomes back.",
        example: &["0.9505", "1", "1.089"],
        call: srgb_from_xyz,
    },
    Function {
        name: "stitch_length",
        module: "tape",
        summary: "Length of one stitch from the number of stitches in an inch.",
        description: "`length = 25.4 / stitches`. Pages that pair 2.5 to 3 mm with 10 to 12 stitches are not consistent: 3 mm is 8.5.",
        arguments: &[
            Argument {
                name: "stitches_per_inch",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.5, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "stitches in one inch",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Length of one stitch",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "1 in = 25.4 mm, exact by the international yard and pound agreement of 1959.",
        example: &["10"],
        call: stitch_length,
    },
    Function {
        name: "stock_volume",
        module: "wet",
        summary: "Volume of a stock solution for a percentage on weight of fibre.",
        description: "`stock = mass · pct / stock_pct`, the stock in grams in 100 ml. For dye, mordant or assistant; not for bleach. Usual is a\nstock of 0.05 to 50; outside it, and as for `owf`, there are doubts.",
        arguments: &[
            Argument {
                name: "mass_g",
                kind: Kind::Number,
                unit: "g",
                range: Some([0.01, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "dry mass of the goods",
            },
            Argument {
                name: "pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "percentage on weight of fibre",
            },
            Argument {
                name: "stock_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.001, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "grams in 100 ml of the stock",
            },
        ],
        answers: &[
            Answer {
                name: "stock_ml",
                unit: "ml",
                meaning: "Stock solution to measure out",
            },
            Answer {
                name: "amount_g",
                unit: "g",
                meaning: "What that holds",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
            Answer {
                name: "cautions",
                unit: "bits",
                meaning: "Cautions raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "R. Sohel, textile calculation pages, 2014-12 to 2015-04. Where doubts begin: common practice, no source.",
        example: &["5", "2", "0.5"],
        call: stock_volume,
    },
    Function {
        name: "straight_band",
        module: "band",
        summary: "Strip to cut for a straight band.",
        description: "Folded: `cut_width = 2 · depth + 2 · allowance + turn`, one strip. Faced: `cut_width = depth + 2 · allowance + turn`,\ntwo strips. `cut_length = waist + overlap + 2 · allowance`. The turn is the cloth that the upper edge takes by its\nown thickness; fold or sew a sample to learn it.\n\nThe waist is doubted as `girth_doubts` does.",
        arguments: &[
            Argument {
                name: "waist",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished length round the waist, ease included",
            },
            Argument {
                name: "overlap",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "what runs on past the opening, at both ends together",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished depth",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance at each edge and each end",
            },
            Argument {
                name: "turn",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "cloth taken by the thickness of the upper edge",
            },
            Argument {
                name: "make",
                kind: Kind::Choice(&BAND_MAKE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: Some(Default::Word("folded")),
                meaning: "how the band gets its two layers",
            },
        ],
        answers: &[
            Answer {
                name: "cut_length",
                unit: "mm",
                meaning: "Length to cut, allowances included",
            },
            Answer {
                name: "cut_width",
                unit: "mm",
                meaning: "Width to cut, allowances included",
            },
            Answer {
                name: "strips",
                unit: "count",
                meaning: "How many such strips",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic; the turn is common practice, no source. `tests/vectors/straight_band.csv` has hand-worked rows.",
        example: &["710", "30", "25", "10", "2", "folded"],
        call: straight_band,
    },
    Function {
        name: "straight_band_depth",
        module: "band",
        summary: "Finished depth of a straight band from a strip there is.",
        description: "Folded: `depth = (cut_width - 2 · allowance - turn) / 2`. Faced: `depth = cut_width - 2 · allowance - turn`. A strip\ndrawn without allowances still loses them to its seams, which is the usual slip.",
        arguments: &[
            Argument {
                name: "cut_width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the strip from raw edge to raw edge",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam allowance at each long edge",
            },
            Argument {
                name: "turn",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "cloth taken by the thickness of the upper edge",
            },
            Argument {
                name: "make",
                kind: Kind::Choice(&BAND_MAKE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: Some(Default::Word("folded")),
                meaning: "how the band gets its two layers",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Finished depth of the band",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when the allowances and the turn\nleave nothing of the strip.",
        source: "Arithmetic. `tests/vectors/straight_band_depth.csv` has hand-worked rows.",
        example: &["50", "10", "0", "folded"],
        call: straight_band_depth,
    },
    Function {
        name: "stretch_pct",
        module: "stretch",
        summary: "Stretch of cloth from a marked length and the same length pulled out, in percent.",
        description: "`stretch = 100 · (pulled - relaxed) / relaxed`. Fold the cloth across the way it is to stretch, mark 100 mm away from\nthe edge, and pull until it resists, not until it can go no further. Let go and measure again: what stays longer will\nbag at knee and elbow.",
        arguments: &[
            Argument {
                name: "relaxed",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "distance of the marks at rest",
            },
            Argument {
                name: "pulled",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000000.0]),
                conditions: &[">= relaxed"],
                items: None,
                default: None,
                meaning: "distance of the marks pulled",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "%",
                meaning: "Stretch",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `pulled` when it is less than `relaxed`.",
        source: "Definition; the way to test is common practice, no source.",
        example: &["100", "135"],
        call: stretch_pct,
    },
    Function {
        name: "take_in",
        module: "alteration",
        summary: "What to take in at each edge of a garment that is too wide, and what is left over.",
        description: "`excess = garment - (body + ease)`, shared evenly by the edges but no more than `limit` each, beyond which side seams leave\nthe body's side and armholes lose their shape. A seam has two edges: both sides are four. A fold pinned out of the cloth\ntakes twice its depth: pinned 8, taken 16. Taken in at the armhole, the sleeve must be taken in too; at the hem, see that\nthe step is still wide enough.\n\nA body below 110 mm, less than a child's wrist (from memory), is doubted.",
        arguments: &[
            Argument {
                name: "garment",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished garment at this level, all round",
            },
            Argument {
                name: "body",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "body at this level, all round",
            },
            Argument {
                name: "ease",
                kind: Kind::Number,
                unit: "mm",
                range: Some([-10000.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "what the garment is to have more than the body",
            },
            Argument {
                name: "edges",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 64.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(4.0)),
                meaning: "edges that share it, two to a seam",
            },
            Argument {
                name: "limit",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(20.0)),
                meaning: "the most that each edge may take",
            },
        ],
        answers: &[
            Answer {
                name: "excess",
                unit: "mm",
                meaning: "What the garment is too wide by",
            },
            Answer {
                name: "each",
                unit: "mm",
                meaning: "Taken at each edge, beyond its old seam line",
            },
            Answer {
                name: "taken",
                unit: "mm",
                meaning: "Taken at all edges together",
            },
            Answer {
                name: "leftover",
                unit: "mm",
                meaning: "Left for darts or the centre back",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `garment` when it is narrower than body and ease: it\nmust be let out (`let_out`).",
        source: "Arithmetic; the limit is common practice, no source. `tests/vectors/take_in.csv` has hand-worked rows.",
        example: &["1120", "960", "60", "4", "20"],
        call: take_in,
    },
    Function {
        name: "tex_from_cotton_count",
        module: "tape",
        summary: "Linear density of a yarn or thread from its cotton count (Ne).",
        description: "The cotton count is how many hanks of 840 yards weigh a pound: `tex = 590.54 · plies / count`. A larger number is a\nthinner yarn. A thread marked 40/2 is two plies of count 40. A convention that counts the moisture in has 583.1 in\nplace of 590.54, which is 1.3 % less: do not mix the two.",
        arguments: &[
            Argument {
                name: "cotton_count",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.1, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "cotton count of one ply",
            },
            Argument {
                name: "plies",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 24.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "equal plies twisted together",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "tex",
                meaning: "Linear density of the plied yarn, take-up in twisting left out",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Definition: 453.59237 g in 840 yards of 0.9144 m. NIMI, *Shawl Weaving Artisan*, p. 72 (20 tex is 29.525).",
        example: &["40", "2"],
        call: tex_from_cotton_count,
    },
    Function {
        name: "tex_from_denier",
        module: "tape",
        summary: "Linear density of a yarn or thread from its denier.",
        description: "Tex is grams a kilometre, denier grams in nine kilometres: `tex = denier / 9`. A larger number is a thicker yarn.",
        arguments: &[
            Argument {
                name: "denier",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.01, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "grams in 9 kilometres",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "tex",
                meaning: "Linear density",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Definitions of the units. Groen Kennisnet wiki, HNPE 7.1.6, yarn numbering (conversion table).",
        example: &["180"],
        call: tex_from_denier,
    },
    Function {
        name: "tex_from_metric_count",
        module: "tape",
        summary: "Linear density of a yarn or thread from its metric count (Nm).",
        description: "The metric count is how many metres weigh a gram: `tex = 1000 · plies / count`. A larger number is a thinner yarn.",
        arguments: &[
            Argument {
                name: "metric_count",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.1, 2000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "metric count of one ply",
            },
            Argument {
                name: "plies",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 24.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "equal plies twisted together",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "tex",
                meaning: "Linear density of the plied yarn, take-up in twisting left out",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Definitions of the units. Groen Kennisnet wiki, HNPE 7.1.6, yarn numbering (conversion table).",
        example: &["50", "1"],
        call: tex_from_metric_count,
    },
    Function {
        name: "thread_for_seam",
        module: "thread",
        summary: "Thread for a seam, waste included.",
        description: "`thread = seam · ratio · (1 + waste_pct / 100)`. The ratio is measured on an unpicked length, or taken from\n`thread_ratio` or a maker's table; for one thread of several, give that thread's own. Wind on more than this:\ntension, thickness and the stitch's length all change it.",
        arguments: &[
            Argument {
                name: "seam",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of all seams of this kind",
            },
            Argument {
                name: "ratio",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.1, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(2.5)),
                meaning: "thread over seam",
            },
            Argument {
                name: "waste_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(15.0)),
                meaning: "for ends, tests and what is left on the bobbin",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Length of thread",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic. Ratio 2.5 for a lockstitch: Coats, *Standard Stitch Type Classification*. Waste of 10 to 15 % by Coats, 15\nto 20 % by American & Efird; in home sewing with many short seams it is more (common practice, no source).",
        example: &["12000", "2.5", "15"],
        call: thread_for_seam,
    },
    Function {
        name: "thread_ratio",
        module: "thread",
        summary: "Thread that a seam takes for its length, from the path of the stitch.",
        description: "`ratio = c + 2 · thickness / stitch_length`, with `c` 3 for type 101, 2 for 301, 4 for 401: along the seam on both\nfaces, and through it twice a stitch. The path is drawn tight: makers' rounded ratios are higher, 2.5 for type 301 where\nthin cloth gives 2.2 here, and 5 for type 101 where it gives 3.1. Overedge stitches have published formulas that disagree, and are left\nout: for them, unpick a length of seam and measure, or take a maker's ratio.",
        arguments: &[
            Argument {
                name: "stitch_length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of one stitch",
            },
            Argument {
                name: "thickness",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "all layers of the seam, pressed",
            },
            Argument {
                name: "stitch",
                kind: Kind::Choice(&STITCH_TYPE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: Some(Default::Word("lock")),
                meaning: "type of the stitch",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "1",
                meaning: "Thread over seam, all threads together",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "A. K. Das, *textilecalculation* blog, 2015 (101, 301); Union Special's chart in a bulletin of American & Efird, 2008\n(401). Ratios: Coats, *Standard Stitch Type Classification* (101 5, 103 4.5, 301 2.5).",
        example: &["2.5", "1", "lock"],
        call: thread_ratio,
    },
    Function {
        name: "tiers",
        module: "tier",
        summary: "Way round each tier of a tiered skirt.",
        description: "Each tier is the one above times its ratio, the first the top edge times the first ratio, so that the fullness\nmultiplies: three tiers of 1.5 make a hem of 3.375 times the waist. How the length is shared over the tiers is\ntaste. Allowances and joins are extra (`breadths`).",
        arguments: &[
            Argument {
                name: "top",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "edge that the first tier is gathered to",
            },
            Argument {
                name: "ratios",
                kind: Kind::Numbers,
                unit: "1",
                range: Some([1.0, 10.0]),
                conditions: &[],
                items: Some(Items::Between(1, 12)),
                default: None,
                meaning: "tier over the one above, from the top down",
            },
        ],
        answers: &[
            Answer {
                name: "flats",
                unit: "mm",
                meaning: "way round each tier before gathering",
            },
            Answer {
                name: "hem",
                unit: "mm",
                meaning: "Way round the last tier, which is the hem",
            },
            Answer {
                name: "ratio",
                unit: "1",
                meaning: "Hem over the top edge",
            },
            Answer {
                name: "strip",
                unit: "mm",
                meaning: "All tiers together, as one strip",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "`GATHERS_SCANT` when any tier is gathered by less than 1.2, `GATHERS_LARGE` by more than 4",
            },
        ],
        errors: "`NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `ratios` when a tier would be\nmore than 10 km round.",
        source: "Arithmetic; a flounce is 1 1/2 times its line by C. C. Ingalls, *Text-Book on Domestic Art*, 1911.\n`tests/vectors/tiers.csv` has hand-worked rows.",
        example: &["800", "1.5 1.5 2"],
        call: tiers,
    },
    Function {
        name: "tolerance_stack",
        module: "chain",
        summary: "How far a girth made of equal seams may be off.",
        description: "A seam sewn `error_each` beside its line takes that much from both of its edges: `worst = 2 · seams · error_each`,\n`likely = 2 · error_each · √seams`. Where the ease at the waist is less than the worst case, try on before the band is\ncut.",
        arguments: &[
            Argument {
                name: "seams",
                kind: Kind::Count,
                unit: "count",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of seams, darts counted as one each",
            },
            Argument {
                name: "error_each",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(1.0)),
                meaning: "how far beside its line a seam may be sewn",
            },
        ],
        answers: &[
            Answer {
                name: "worst",
                unit: "mm",
                meaning: "When every error falls the same way",
            },
            Answer {
                name: "likely",
                unit: "mm",
                meaning: "When they fall by chance: the root of the sum of their squares",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Worst case by arithmetic; independent errors add as the root of the sum of their squares: JCGM 100:2008, *Guide to the\nexpression of uncertainty in measurement*, 5.1.2.",
        example: &["6", "1"],
        call: tolerance_stack,
    },
    Function {
        name: "tolerance_stack_list",
        module: "chain",
        summary: "How far a length made of unlike terms may be off, and which of them adds most.",
        description: "Each term's error counts once for each of its edges: 2 for a seam, 1 for a fold or a raw edge, 0 for a term that is\nsure.",
        arguments: &[
            Argument {
                name: "errors",
                kind: Kind::Numbers,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: Some(Items::Between(1, 1000)),
                default: None,
                meaning: "how far each term may be off",
            },
            Argument {
                name: "edges",
                kind: Kind::Counts,
                unit: "count",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: Some(Items::As("errors")),
                default: None,
                meaning: "how many times each error counts",
            },
        ],
        answers: &[
            Answer {
                name: "worst",
                unit: "mm",
                meaning: "When every error falls the same way",
            },
            Answer {
                name: "likely",
                unit: "mm",
                meaning: "When they fall by chance: the root of the sum of their squares",
            },
            Answer {
                name: "largest",
                unit: "count",
                meaning: "Index of the term that adds most, of equals the first",
            },
            Answer {
                name: "largest_part",
                unit: "mm",
                meaning: "What that term adds to the worst case",
            },
        ],
        errors: "`NotFinite`, `OutOfRange` or `Count`, naming the argument.",
        source: "As `tolerance_stack`.",
        example: &["1 1 1 1 2", "2 2 2 2 1"],
        call: tolerance_stack_list,
    },
    Function {
        name: "trilaterate",
        module: "panel",
        summary: "A point measured by tape from both ends of a base.",
        description: "`along = (from_start² - from_end² + base²) / 2 base`, `across = √(from_start² - along²)`. An error of 1 mm in both\nreadings moves the point by at most `along_per_mm` and `across_per_mm`; that of the base is not counted. Choose bases\nthat make both small: a point about half as far off as the base is long.",
        arguments: &[
            Argument {
                name: "base",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "between the two known points",
            },
            Argument {
                name: "from_start",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "reading from the start of the base",
            },
            Argument {
                name: "from_end",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "reading from the end of the base",
            },
        ],
        answers: &[
            Answer {
                name: "along",
                unit: "mm",
                meaning: "From the start along the base, negative behind the start",
            },
            Answer {
                name: "across",
                unit: "mm",
                meaning: "Square to the base",
            },
            Answer {
                name: "along_per_mm",
                unit: "1",
                meaning: "How far along the base the point moves at worst, for each mm that both readings are off",
            },
            Answer {
                name: "across_per_mm",
                unit: "1",
                meaning: "How far across the base the point moves at worst, for each mm that both readings are off",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "`TRIANGLE_FLAT` when `across_per_mm` passes 5, `TRIANGLE_TALL` when `along_per_mm` does",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `from_end`, with the readings between which the\nthree make a triangle.",
        source: "Law of cosines; the height by W. Kahan, *Miscalculating Area and Angles of a Needle-like Triangle* (2014), which keeps\nits digits in flat triangles. Doubt over 5: common practice of survey, no source.",
        example: &["500", "300", "400"],
        call: trilaterate,
    },
    Function {
        name: "tucks",
        module: "pleat",
        summary: "Cloth and marking for tucks stitched an even distance apart.",
        description: "`flat = finished + 2 · count · depth`; fold lines are marked `spacing + 2 · depth` apart on the flat cloth. A tuck covers\nits depth of the spacing: blind tucks have `spacing = depth`. Tuck the cloth first, then cut the piece from it.",
        arguments: &[
            Argument {
                name: "finished",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width when tucked",
            },
            Argument {
                name: "count",
                kind: Kind::Count,
                unit: "count",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "number of tucks",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "depth of each tuck, stitching to fold",
            },
            Argument {
                name: "spacing",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from stitching to stitching when tucked",
            },
        ],
        answers: &[
            Answer {
                name: "flat",
                unit: "mm",
                meaning: "Width before tucking, without allowances",
            },
            Answer {
                name: "taken_up",
                unit: "mm",
                meaning: "Cloth that all tucks take up",
            },
            Answer {
                name: "fold_pitch",
                unit: "mm",
                meaning: "From fold line to fold line on the flat cloth",
            },
            Answer {
                name: "gap",
                unit: "mm",
                meaning: "What shows between a tuck's fold and the next one's stitching; 0 for blind tucks",
            },
            Answer {
                name: "margin",
                unit: "mm",
                meaning: "Width left beside the first and the last stitching, together",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "`PLEATS_OVERLAP` when tucks lie over each other",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `spacing` when the tucks do not fit in the width.",
        source: "L. I. Baldt, *Clothing for Women*, 1916, Decoration pt 4 (twice the depth times the number).\n`tests/vectors/tucks.csv` has hand-worked rows.",
        example: &["150", "8", "5", "15"],
        call: tucks,
    },
    Function {
        name: "turn_through",
        module: "seam",
        summary: "Whether a garment part can be turned right side out through an opening: an estimate.",
        description: "The widest part, gathered in the hand, is a round bundle of its layers' section, of which cloth fills a share\n`packing`: `diameter = √(4 · width · thickness / (π · packing))`. An opening of flat width `w` is `2 · w` round, and\npasses it when `2 · w >= π · diameter`. Find the narrowest place on the way: a shoulder seam, a strap, the gap left in\na lining; and that there is a way: a ring closed on itself cannot be turned.",
        arguments: &[
            Argument {
                name: "width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "widest part that must pass, laid flat",
            },
            Argument {
                name: "thickness",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.01, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "all its layers together, pressed",
            },
            Argument {
                name: "opening",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "flat width of the narrowest place on the way",
            },
            Argument {
                name: "packing",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.1, 1.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.5)),
                meaning: "share of the bundle that is cloth",
            },
        ],
        answers: &[
            Answer {
                name: "diameter",
                unit: "mm",
                meaning: "Diameter of the bundle",
            },
            Answer {
                name: "least_opening",
                unit: "mm",
                meaning: "Least flat width of an opening that it passes",
            },
            Answer {
                name: "spare",
                unit: "mm",
                meaning: "What the opening is wider than that; negative when the bundle does not pass",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Plane geometry; the packing of a half is a guess from memory, so the answer is an estimate: try with a scrap of as many\nlayers. `tests/vectors/turn_through.csv` has hand-worked rows.",
        example: &["250", "1.6", "60", "0.5"],
        call: turn_through,
    },
    Function {
        name: "turned_hem",
        module: "seam",
        summary: "Allowance and cut length for a hem that is turned up, its raw edge turned in.",
        description: "`allowance = depth + turn_in + folds · roll`: two folds, or one where nothing is turned in. A hem of two equal turns,\nas for sheer cloth, has `turn_in = depth`. The roll is the cloth that each fold takes by its thickness; fold a sample\nto learn it.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished length, upper edge or seam line to hem edge",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished depth of the hem",
            },
            Argument {
                name: "turn_in",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &["<= depth"],
                items: None,
                default: Some(Default::Number(6.0)),
                meaning: "turned in at the raw edge; 0 where it is overcast or bound",
            },
            Argument {
                name: "roll",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "cloth that each fold takes by its thickness",
            },
        ],
        answers: &[
            Answer {
                name: "allowance",
                unit: "mm",
                meaning: "Hem allowance, from the finished edge to the raw edge",
            },
            Answer {
                name: "cut_length",
                unit: "mm",
                meaning: "Length to cut, with that allowance and no other",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `turn_in` when it is deeper than the hem.",
        source: "Arithmetic; a turn of 1/4 in by L. I. Baldt, *Clothing for Women*, 1916, \"Simple Dress of Wool\" (6 mm here). Depths are\nhabit, and authors differ: T. Johnson, *It's Fun to Sew a Cotton School Dress*, 2 to 3 in on moderate flare, 1 1/2 in on\nmore, 1/4 in or a rolled hem on a circle; bellasunshinedesigns.com 1 1/2 to 2 in straight, 1 1/2 A-line, 1 half circle, 1/2\ncircle. What a flare bears, `hem_on_curve` says.",
        example: &["600", "40", "6", "0"],
        call: turned_hem,
    },
    Function {
        name: "v_neck",
        module: "neck",
        summary: "Edge of a V neck, how far it lies off grain, and the tape that stays it.",
        description: "`edge = √(half_width² + depth²)`, `off_grain = atan(half_width / depth)`, `stay = edge · stay_ratio`. Any edge off grain\nstretches as it is handled, most of all near 45°: staystitch at once, and sew on a tape cut a little shorter than the\nedge. A tape below 0.9 puckers, so less is refused. If the point falls below the bust, nothing holds the edge to the\nbody: pin it and see (`dart_from_gape`).",
        arguments: &[
            Argument {
                name: "half_width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "middle to the edge's top at the shoulder, straight across",
            },
            Argument {
                name: "depth",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 10000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "from that level down to the point",
            },
            Argument {
                name: "stay_ratio",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.9, 1.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.97)),
                meaning: "tape over edge",
            },
        ],
        answers: &[
            Answer {
                name: "edge",
                unit: "mm",
                meaning: "Length of the straight edge on one side",
            },
            Answer {
                name: "off_grain_deg",
                unit: "deg",
                meaning: "Angle of the edge from the grain that runs down the middle",
            },
            Answer {
                name: "stay",
                unit: "mm",
                meaning: "Length of the tape that stays the edge on one side",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Plane geometry; the ratio is common practice, no source. `tests/vectors/v_neck.csv` has hand-worked rows.",
        example: &["80", "300", "0.97"],
        call: v_neck,
    },
    Function {
        name: "waist_hip_doubts",
        module: "body",
        summary: "Doubts on a waist and a hip together.",
        description: "A waist above the hip (`WAIST_OVER_HIP`) may be the two in each other's place, and is also the shape of some bodies.\nA hip more than 450 mm above the waist (`HIP_FAR_OVER_WAIST`) may be half a waist.",
        arguments: &[
            Argument {
                name: "waist",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of waist",
            },
            Argument {
                name: "hip",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of hip",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "bits",
                meaning: "The doubts",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Thresholds are common practice, no source. Hip less waist is 57 to 252 mm for women and -21 to 164 mm for men (5th and\n95th percentiles, from the data of Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*,\nNATICK/TR-15/007, 2014; waist taken at the navel): more than one man in twenty has the first doubt.",
        example: &["852", "1016"],
        call: waist_hip_doubts,
    },
    Function {
        name: "washes",
        module: "cloth",
        summary: "Length after several washes, of which the first usually takes most.",
        description: "Changes multiply, they do not add: `after = length · (1 + first / 100) · (1 + later / 100)^(washes - 1)`. Wash a sample\nuntil two measures agree: no rule foretells how many times that is.\n\nA first change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length before any wash",
            },
            Argument {
                name: "first_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([-90.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "change in the first wash: shrinkage negative",
            },
            Argument {
                name: "later_pct",
                kind: Kind::Number,
                unit: "%",
                range: Some([-90.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "change in each wash after it",
            },
            Argument {
                name: "washes",
                kind: Kind::Count,
                unit: "count",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "how many washes",
            },
        ],
        answers: &[
            Answer {
                name: "after",
                unit: "mm",
                meaning: "Length after all washes",
            },
            Answer {
                name: "change_pct",
                unit: "%",
                meaning: "Change from the first length to the last",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `washes` when the length grows past all bounds.",
        source: "ISO 5077:2007 (definition of a change), repeated. `tests/vectors/washes.csv` has hand-worked rows.",
        example: &["600", "-5", "-1", "3"],
        call: washes,
    },
    Function {
        name: "wearing_ease",
        module: "ease",
        summary: "Wearing ease of woven cloth, all round, as a range over the authors, and the girths it makes.",
        description: "`garment = body + ease`. Ease is what is needed to breathe, sit and reach; what the style has more is taste. Authors differ by as much as an inch:\n\n- bust: 1 1/2 to 2 in (Robinson), 2 1/2 in (one cited in an encyclopedia), 2 to 3 in (a tailor's notes);\n- waist of a dress: 3/4 to 1 in, 1 in, 1 to 2 in, in that order;\n- waist of a skirt or trousers: 1/2 to 3/4 in (Robinson; the others do not tell it apart);\n- hip: 2 to 2 3/4 in, 3 in, 2 to 3 in;\n- a man's shirt at the chest: 1 1/2 to 2 1/2 in fitted, up to 3 in classic (Robinson).\n\nThe best ease is that of a garment that fits: measure it and take the body's girth off. Thick cloth and a lining need\nmore, cloth that stretches less (`negative_ease`).\n\nA girth below 300 mm or above 2000 mm is doubted.",
        arguments: &[
            Argument {
                name: "body",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "girth of the body there",
            },
            Argument {
                name: "place",
                kind: Kind::Choice(&EASE_PLACE),
                unit: "choice",
                range: None,
                conditions: &[],
                items: None,
                default: None,
                meaning: "where it is asked",
            },
        ],
        answers: &[
            Answer {
                name: "low",
                unit: "mm",
                meaning: "The least that an author gives, all round",
            },
            Answer {
                name: "high",
                unit: "mm",
                meaning: "The most that an author gives, all round",
            },
            Answer {
                name: "garment_low",
                unit: "mm",
                meaning: "Finished girth with the least",
            },
            Answer {
                name: "garment_high",
                unit: "mm",
                meaning: "Finished girth with the most",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "S. Robinson, costume text, Central Washington University, ch. 16; an encyclopedia's article \"Ease (sewing)\", first of its\ntwo cited sources; vintagetailor.blogspot.com, 2012. `tests/vectors/wearing_ease.csv` has each.",
        example: &["1000", "bust"],
        call: wearing_ease,
    },
    Function {
        name: "width_conversion",
        module: "quantity",
        summary: "Length of cloth of one width that does for a length of another, as a range.",
        description: "`by_area = length · width / new_width`. Tables handed down for this follow no formula: over all their cells they give\n0.90 to 1.12 times the area's length, and so does this. It is for a guess before buying; lay the pieces to know. A\npiece wider than the new cloth is not seen here.\n\nCloth narrower than 200 mm is doubted: 150 may be in centimetres.",
        arguments: &[
            Argument {
                name: "length",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length that is enough",
            },
            Argument {
                name: "width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([10.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of that cloth",
            },
            Argument {
                name: "new_width",
                kind: Kind::Number,
                unit: "mm",
                range: Some([10.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "width of the cloth to be had",
            },
        ],
        answers: &[
            Answer {
                name: "by_area",
                unit: "mm",
                meaning: "Length of the same area",
            },
            Answer {
                name: "low",
                unit: "mm",
                meaning: "Least that the printed tables give, 0.9 times the area's",
            },
            Answer {
                name: "high",
                unit: "mm",
                meaning: "Most that the printed tables give, 1.12 times the area's",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "The extension services' table as copied at sewwithsarah.com, greenspun.com and hookedonsewing.com (credited to Rutgers\nCooperative Extension, from memory); the range is that of its cells.",
        example: &["2000", "900", "1500"],
        call: width_conversion,
    },
    Function {
        name: "wrap_skirt",
        module: "skirt",
        summary: "Widths of a skirt with a back and two fronts that lap over each other.",
        description: "A back of half the girth, and fronts of a quarter and half the overlap each: `front = girth / 4 + overlap / 2`. The\noverlap runs straight down, the same at waist and hip; facings or hems of the two front edges are extra. The skirt\nopens when a step spreads the hem by more than the overlap there, so sit and stride in it, pinned, before cutting. The\nlap must equal that of the band, and of the bodice where there is one.\n\nWaist and hip are doubted alone and together, as `girth_doubts` and\n`waist_hip_doubts` do.",
        arguments: &[
            Argument {
                name: "waist",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished waist, ease included, darts closed",
            },
            Argument {
                name: "hip",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 100000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "finished hip, ease included",
            },
            Argument {
                name: "overlap",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 100000.0]),
                conditions: &["<= waist"],
                items: None,
                default: None,
                meaning: "how far one front lies over the other",
            },
        ],
        answers: &[
            Answer {
                name: "back_waist",
                unit: "mm",
                meaning: "Back at the waist, side seam to side seam",
            },
            Answer {
                name: "back_hip",
                unit: "mm",
                meaning: "Back at the hip",
            },
            Answer {
                name: "front_waist",
                unit: "mm",
                meaning: "Each front at the waist, side seam to its finished edge",
            },
            Answer {
                name: "front_hip",
                unit: "mm",
                meaning: "Each front at the hip",
            },
            Answer {
                name: "waist_edge",
                unit: "mm",
                meaning: "Waist edge of all three parts, which is the length of its band without ties",
            },
            Answer {
                name: "wrap_pct",
                unit: "%",
                meaning: "How far each front reaches past the centre line, as a share of half a front",
            },
            Answer {
                name: "doubts",
                unit: "bits",
                meaning: "Doubts raised",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `overlap` when it goes more than once round.",
        source: "Arithmetic. `tests/vectors/wrap_skirt.csv` has hand-worked rows.",
        example: &["720", "1020", "240"],
        call: wrap_skirt,
    },
    Function {
        name: "xyz_from_lab",
        module: "colour",
        summary: "Tristimulus values of a colour given in CIELAB, under daylight D65: `lab_from_xyz` turned round.",
        description: "",
        arguments: &[
            Argument {
                name: "l",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 100.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "lightness L*",
            },
            Argument {
                name: "a",
                kind: Kind::Number,
                unit: "1",
                range: Some([-200.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "a*: green below 0, red above",
            },
            Argument {
                name: "b",
                kind: Kind::Number,
                unit: "1",
                range: Some([-200.0, 200.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "b*: blue below 0, yellow above",
            },
        ],
        answers: &[
            Answer {
                name: "x",
                unit: "1",
                meaning: "X",
            },
            Answer {
                name: "y",
                unit: "1",
                meaning: "Y, the luminance: share of the white's",
            },
            Answer {
                name: "z",
                unit: "1",
                meaning: "Z",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "CIE 15, *Colorimetry*, CIELAB (1976).",
        example: &["41.52787529", "52.63858304", "26.92317922"],
        call: xyz_from_lab,
    },
    Function {
        name: "xyz_from_srgb",
        module: "colour",
        summary: "Tristimulus values of a colour given by its screen levels.",
        description: "",
        arguments: &[
            Argument {
                name: "red",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 255.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "red level",
            },
            Argument {
                name: "green",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 255.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "green level",
            },
            Argument {
                name: "blue",
                kind: Kind::Number,
                unit: "1",
                range: Some([0.0, 255.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "blue level",
            },
        ],
        answers: &[
            Answer {
                name: "x",
                unit: "1",
                meaning: "X",
            },
            Answer {
                name: "y",
                unit: "1",
                meaning: "Y, the luminance: share of the white's",
            },
            Answer {
                name: "z",
                unit: "1",
                meaning: "Z",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "IEC 61966-2-1 (sRGB), its matrix with four decimals. A matrix worked out from the primaries differs by less than\n0.0001; a grey then has an a* of 0 and not of 0.005.",
        example: &["255", "255", "255"],
        call: xyz_from_srgb,
    },
    Function {
        name: "zigzag_buttonhole",
        module: "fastening",
        summary: "Size over all of a buttonhole worked in zigzag: two beads and two bars about a slit.",
        description: "`length = slit + 2 · bar`, `width = 2 · bead + gap`, and each side takes `ceil(slit / spacing)` stitches. It is the slit that\nthe button passes (`buttonhole`); the whole must lie on the button stand. Work one on a\nscrap of the same layers. Cut from both ends towards the middle, a pin across each bar.",
        arguments: &[
            Argument {
                name: "slit",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 300.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of the slit",
            },
            Argument {
                name: "bead",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.1, 20.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(2.0)),
                meaning: "width of the zigzag on each side",
            },
            Argument {
                name: "gap",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 10.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.5)),
                meaning: "between the two sides, where it is cut",
            },
            Argument {
                name: "bar",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 20.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(2.0)),
                meaning: "length of the bar at each end",
            },
            Argument {
                name: "spacing",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.05, 10.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.4)),
                meaning: "stitch length of the zigzag",
            },
        ],
        answers: &[
            Answer {
                name: "length",
                unit: "mm",
                meaning: "Length over all, bars included",
            },
            Answer {
                name: "width",
                unit: "mm",
                meaning: "Width over all",
            },
            Answer {
                name: "stitches",
                unit: "count",
                meaning: "Stitches of the two sides together",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument.",
        source: "Arithmetic; the defaults are from memory of home machines, no source: measure a hole of your own. Only a bound hole is\notherwise: at most 6 mm wide, each welt 3 mm (frkbustad.blogspot.com, 2010).",
        example: &["22", "2", "0.5", "2", "0.4"],
        call: zigzag_buttonhole,
    },
    Function {
        name: "zip_length",
        module: "fastening",
        summary: "Zip for an opening: its length from stop to stop, and where the stops lie.",
        description: "`needed = opening - gap + beyond`, bought in the next length that is sold. The gap leaves room above the slider for a hook\nor for the turn of a facing; where the teeth end at a band's seam it is small. A concealed zip is sewn before the seam\nbelow it and must run on beyond the opening, or its slider cannot be brought down past the last stitch. A zip is shortened\nat the bottom, by a bar of stitches over the teeth; an open-ended one at the top only. Whether the opening passes the hip\nis asked of `head_opening`.",
        arguments: &[
            Argument {
                name: "opening",
                kind: Kind::Number,
                unit: "mm",
                range: Some([10.0, 5000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "seam line at the top to the lower end of the opening",
            },
            Argument {
                name: "gap",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 500.0]),
                conditions: &["< opening"],
                items: None,
                default: Some(Default::Number(6.0)),
                meaning: "seam line at the top down to the top stop",
            },
            Argument {
                name: "beyond",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "what the zip runs on below the opening; some 25 if concealed",
            },
            Argument {
                name: "allowance",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(15.0)),
                meaning: "raw edge to seam line at the top",
            },
            Argument {
                name: "graduation",
                kind: Kind::Number,
                unit: "mm",
                range: Some([1.0, 1000.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(20.0)),
                meaning: "step between the lengths that are sold",
            },
        ],
        answers: &[
            Answer {
                name: "needed",
                unit: "mm",
                meaning: "Length needed, top stop to bottom stop",
            },
            Answer {
                name: "buy",
                unit: "mm",
                meaning: "Length to buy, the next that is sold",
            },
            Answer {
                name: "shorten",
                unit: "mm",
                meaning: "What that is too long, to be taken off by a new bottom stop",
            },
            Answer {
                name: "top_stop",
                unit: "mm",
                meaning: "Top stop from the raw edge at the top",
            },
            Answer {
                name: "bottom_stop",
                unit: "mm",
                meaning: "Bottom stop from the raw edge at the top",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is the whole opening.",
        source: "Arithmetic; the defaults are common practice, no source. `tests/vectors/zip_length.csv` has hand-worked rows.",
        example: &["200", "6", "0", "15", "20"],
        call: zip_length,
    },
    Function {
        name: "zip_opening",
        module: "fastening",
        summary: "Opening that a zip there is serves.",
        description: "`zip_length` the other way: `opening = zip + gap - beyond`. For a zip saved from the old garment: run it a hundred times\nfirst, and see that both stops hold.",
        arguments: &[
            Argument {
                name: "zip",
                kind: Kind::Number,
                unit: "mm",
                range: Some([10.0, 5000.0]),
                conditions: &[],
                items: None,
                default: None,
                meaning: "length of the zip, top stop to bottom stop",
            },
            Argument {
                name: "gap",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(6.0)),
                meaning: "seam line at the top down to the top stop",
            },
            Argument {
                name: "beyond",
                kind: Kind::Number,
                unit: "mm",
                range: Some([0.0, 500.0]),
                conditions: &[],
                items: None,
                default: Some(Default::Number(0.0)),
                meaning: "what the zip runs on below the opening",
            },
        ],
        answers: &[
            Answer {
                name: "value",
                unit: "mm",
                meaning: "Seam line at the top to the lower end of the opening",
            },
        ],
        errors: "`NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `beyond` when nothing of the opening is left.",
        source: "As `zip_length`.",
        example: &["200", "6", "25"],
        call: zip_opening,
    },
];
