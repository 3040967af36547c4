//! Written by `cargo xtask generate` from the doc comments of the core; do not edit.
use recloth::Error;
use crate::value::{self, Given, Got};
fn read_band_make(given: &Given) -> recloth::band::BandMake {
    match given.text() {
        "folded" => recloth::band::BandMake::Folded,
        "faced" => recloth::band::BandMake::Faced,
        other => panic!("{other} is no choice of BandMake"),
    }
}
fn read_basis(given: &Given) -> recloth::dye::Basis {
    match given.text() {
        "fresh" => recloth::dye::Basis::Fresh,
        "dry" => recloth::dye::Basis::Dry,
        other => panic!("{other} is no choice of Basis"),
    }
}
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
        "natural" => recloth::fibre::Bath::Natural,
        other => panic!("{other} is no choice of Bath"),
    }
}
fn read_binding_fold(given: &Given) -> recloth::bias::BindingFold {
    match given.text() {
        "single" => recloth::bias::BindingFold::Single,
        "double" => recloth::bias::BindingFold::Double,
        other => panic!("{other} is no choice of BindingFold"),
    }
}
fn read_button_shape(given: &Given) -> recloth::closure::ButtonShape {
    match given.text() {
        "flat" => recloth::closure::ButtonShape::Flat,
        "ball" => recloth::closure::ButtonShape::Ball,
        other => panic!("{other} is no choice of ButtonShape"),
    }
}
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
        "leather" => recloth::fibre::Fibre::Leather,
        other => panic!("{other} is no choice of Fibre"),
    }
}
fn read_finish(given: &Given) -> recloth::fibre::Finish {
    match given.text() {
        "unknown" => recloth::fibre::Finish::Unknown,
        "plain" => recloth::fibre::Finish::Plain,
        "not_fast" => recloth::fibre::Finish::NotFast,
        "flame_retardant" => recloth::fibre::Finish::FlameRetardant,
        "resin" => recloth::fibre::Finish::Resin,
        other => panic!("{other} is no choice of Finish"),
    }
}
fn read_in_bath(given: &Given) -> recloth::bleach::InBath {
    match given.text() {
        "unknown" => recloth::bleach::InBath::Unknown,
        "water_only" => recloth::bleach::InBath::WaterOnly,
        "acid" => recloth::bleach::InBath::Acid,
        "ammonia" => recloth::bleach::InBath::Ammonia,
        "alcohol" => recloth::bleach::InBath::Alcohol,
        "peroxide" => recloth::bleach::InBath::Peroxide,
        "neutraliser" => recloth::bleach::InBath::Neutraliser,
        "other" => recloth::bleach::InBath::Other,
        other => panic!("{other} is no choice of InBath"),
    }
}
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
        "peroxide" => recloth::bleach::Reaction::Peroxide,
        other => panic!("{other} is no choice of Reaction"),
    }
}
fn read_rounding(given: &Given) -> recloth::tape::Rounding {
    match given.text() {
        "nearest" => recloth::tape::Rounding::Nearest,
        "up" => recloth::tape::Rounding::Up,
        "down" => recloth::tape::Rounding::Down,
        other => panic!("{other} is no choice of Rounding"),
    }
}
fn read_square_ends(given: &Given) -> recloth::band::SquareEnds {
    match given.text() {
        "neither" => recloth::band::SquareEnds::Neither,
        "first" => recloth::band::SquareEnds::First,
        "last" => recloth::band::SquareEnds::Last,
        "both" => recloth::band::SquareEnds::Both,
        other => panic!("{other} is no choice of SquareEnds"),
    }
}
fn read_stage(given: &Given) -> recloth::bleach::Stage {
    match given.text() {
        "in_bleach" => recloth::bleach::Stage::InBleach,
        "drained" => recloth::bleach::Stage::Drained,
        "fresh_bath" => recloth::bleach::Stage::FreshBath,
        other => panic!("{other} is no choice of Stage"),
    }
}
fn read_stitch_type(given: &Given) -> recloth::thread::StitchType {
    match given.text() {
        "chain_single" => recloth::thread::StitchType::ChainSingle,
        "lock" => recloth::thread::StitchType::Lock,
        "chain_double" => recloth::thread::StitchType::ChainDouble,
        other => panic!("{other} is no choice of StitchType"),
    }
}
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
        "yard_eighth" => recloth::tape::Style::YardEighth,
        other => panic!("{other} is no choice of Style"),
    }
}
fn read_swatch(given: &Given) -> recloth::fibre::Swatch {
    match given.text() {
        "untried" => recloth::fibre::Swatch::Untried,
        "passed" => recloth::fibre::Swatch::Passed,
        "failed" => recloth::fibre::Swatch::Failed,
        other => panic!("{other} is no choice of Swatch"),
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
            Got::Number(answer.stock_ml), Got::Number(answer.amount_g), Got::Count(answer
            .doubts), Got::Count(answer.cautions),
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
            Got::Count(answer.cautions),
        ],
    )
}
fn batches(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut numbers = vec![0.0; value::room(& given[0], 0)];
    let answer = recloth::wet::batches(
        given[0].numbers(),
        given[1].number(),
        given[2].number(),
        &mut numbers,
        given[3].number(),
    )?;
    Ok(
        vec![
            Got::Numbers(numbers), Got::Count(answer.batches), Got::Count(answer.least),
            Got::Number(answer.capacity_g), Got::Number(answer.heaviest_g),
            Got::Count(answer.cautions),
        ],
    )
}
fn bath_volume(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::bath_volume(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.volume_ml), Got::Count(answer.doubts), Got::Count(answer
            .cautions),
        ],
    )
}
fn bias_along_selvedge(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::bias_along_selvedge(given[0].number())?;
    Ok(vec![Got::Number(answer)])
}
fn bias_square(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::bias_square(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer)])
}
fn bias_strip_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::bias_strip_length(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer)])
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
            Got::Count(answer.strips), Got::Number(answer.longest), Got::Number(answer
            .joined), Got::Number(answer.kept_pct),
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
            Got::Count(answer.turns), Got::Number(answer.length), Got::Number(answer
            .leftover),
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
            Got::Count(answer.cautions),
        ],
    )
}
fn binding_strips(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::binding_strips(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Count(answer.count), Got::Number(answer.spare),])
}
fn binding_width(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::binding_width(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        read_binding_fold(&given[3]),
    )?;
    Ok(vec![Got::Number(answer)])
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
            Got::Number(answer.parts_water), Got::Count(answer.cautions),
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
            Got::Number(answer.rate), Got::Count(answer.cautions),
        ],
    )
}
fn body_length_doubts(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::body_length_doubts(given[0].number())?;
    Ok(vec![Got::Count(answer)])
}
fn box_pleats(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::pleat::box_pleats(
        given[0].number(),
        given[1].count(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Count(answer
            .count), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Count(answer.doubts),
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
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Count(answer
            .count), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Count(answer.doubts),
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
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Count(answer
            .count), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Count(answer.doubts),
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
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Count(answer
            .count), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Count(answer.doubts),
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
            Got::Count(answer.count), Got::Number(answer.round), Got::Number(answer
            .spare),
        ],
    )
}
fn button_diameter(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::button_diameter(given[0].number())?;
    Ok(vec![Got::Number(answer)])
}
fn button_for_hole(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::closure::button_for_hole(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer.diameter), Got::Number(answer.creep),])
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
            Got::Number(answer.visible), Got::Number(answer.cut), Got::Count(answer
            .cautions),
        ],
    )
}
fn buttonhole(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::closure::buttonhole(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer)])
}
fn cap_ease(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::sleeve::cap_ease(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer.ease), Got::Number(answer.ease_pct),])
}
fn cap_for_ease(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::sleeve::cap_for_ease(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer)])
}
fn cap_width_bound(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::sleeve::cap_width_bound(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer)])
}
fn carried_liquor(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::carried_liquor(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer)])
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
    Ok(vec![Got::Number(answer)])
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
            Got::Number(answer.hem_length),
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
            .cloth_length),
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
            .cloth_length),
        ],
    )
}
fn cloth_mass(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::quantity::cloth_mass(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer)])
}
fn cloth_to_buy(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::quantity::cloth_to_buy(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(vec![Got::Number(answer)])
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
            Got::Count(answer.bears), Got::Count(answer.colour), Got::Count(answer
            .cautions),
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
    let mut tops = vec![0.0; value::room(& given[0], 0)];
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
fn cut_for_change(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::cloth::cut_for_change(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.cut), Got::Number(answer.added), Got::Count(answer
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
    Ok(vec![Got::Number(answer.leg), Got::Number(answer.angle_deg),])
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
            Got::Number(answer.tuck_depth), Got::Count(answer.doubts),
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
            Got::Number(answer.leg), Got::Number(answer.kink_deg), Got::Count(answer
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
    Ok(vec![Got::Number(answer)])
}
fn dart_width_at(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::dart::dart_width_at(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer)])
}
fn deepest_hem(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::seam::deepest_hem(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer)])
}
fn dimensional_change(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::cloth::dimensional_change(
        given[0].number(),
        given[1].number(),
    )?;
    Ok(vec![Got::Number(answer)])
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
            Got::Number(answer.bend_deg), Got::Count(answer.doubts),
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
            .worn_pct), Got::Number(answer.passing_pct), Got::Count(answer.cautions),
        ],
    )
}
fn even_spacing(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::closure::even_spacing(
        given[0].number(),
        given[1].number(),
        given[2].count(),
    )?;
    Ok(vec![Got::Number(answer)])
}
fn five_gores(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::gore::five_gores(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.front_waist), Got::Number(answer.side_waist),
            Got::Number(answer.back_waist), Got::Number(answer.front_hip),
            Got::Number(answer.side_hip), Got::Number(answer.back_hip),
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
fn format_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::format_length(given[0].number(), read_style(&given[1]))?;
    Ok(vec![Got::Text(answer.to_string())])
}
fn front_back_doubts(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::front_back_doubts(given[0].number(), given[1].number())?;
    Ok(vec![Got::Count(answer)])
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
            .ratio), Got::Count(answer.doubts),
        ],
    )
}
fn gather_sections(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut flats = vec![0.0; value::room(& given[0], 0)];
    let answer = recloth::fullness::gather_sections(
        given[0].numbers(),
        given[1].number(),
        &mut flats,
    )?;
    Ok(
        vec![
            Got::Numbers(flats), Got::Number(answer.finished), Got::Number(answer.ratio),
            Got::Count(answer.doubts),
        ],
    )
}
fn gathers(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fullness::gathers(given[0].number(), given[1].number())?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Count(answer.doubts),
        ],
    )
}
fn girth_doubts(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::girth_doubts(given[0].number())?;
    Ok(vec![Got::Count(answer)])
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
        ],
    )
}
fn gsm_from_ounces(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::quantity::gsm_from_ounces(given[0].number())?;
    Ok(vec![Got::Number(answer)])
}
fn head_opening(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::neck::head_opening(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].number(),
    )?;
    Ok(vec![Got::Number(answer.least_slit), Got::Number(answer.spare),])
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
    Ok(vec![Got::Number(answer.drop), Got::Count(answer.doubts),])
}
fn holes_left(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::closure::holes_left(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Count(answer.count), Got::Number(answer.last), Got::Number(answer
            .to_end), Got::Count(answer.doubts),
        ],
    )
}
fn k_over_s(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::shade::k_over_s(given[0].number())?;
    Ok(vec![Got::Number(answer)])
}
fn knife_pleats(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::fullness::knife_pleats(
        given[0].number(),
        given[1].count(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Count(answer
            .count), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Count(answer.doubts),
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
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Count(answer
            .count), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Count(answer.doubts),
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
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Count(answer
            .count), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Count(answer.doubts),
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
            Got::Number(answer.flat), Got::Number(answer.finished), Got::Count(answer
            .count), Got::Number(answer.show), Got::Number(answer.depth),
            Got::Number(answer.intake), Got::Number(answer.taken_up), Got::Number(answer
            .ratio), Got::Count(answer.doubts),
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
    Ok(vec![Got::Number(answer)])
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
            .gained), Got::Number(answer.short_by),
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
    Ok(vec![Got::Number(answer)])
}
fn lining_free_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::lining::lining_free_length(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer)])
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
            Got::Number(answer.spare), Got::Number(answer.fold),
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
    Ok(vec![Got::Number(answer)])
}
fn liquor_shares(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut shares_ml = vec![0.0; value::room(& given[0], 0)];
    let mut waters_ml = vec![0.0; value::room(& given[0], 0)];
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
            .bath_ml), Got::Number(answer.water_ml), Got::Count(answer.cautions),
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
    Ok(vec![Got::Number(answer.slack), Got::Count(answer.doubts),])
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
            Got::Count(answer.cautions),
        ],
    )
}
fn neck_bust_doubts(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::neck_bust_doubts(given[0].number(), given[1].number())?;
    Ok(vec![Got::Count(answer)])
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
            .furthest),
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
            Got::Number(answer.ratio), Got::Count(answer.cautions),
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
            Got::Number(answer.dart_to_wide), Got::Count(answer.doubts),
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
            Got::Number(answer.amount_g), Got::Count(answer.doubts), Got::Count(answer
            .cautions),
        ],
    )
}
fn panel_by_offsets(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut left_bow = vec![0.0; value::room(& given[0], 0)];
    let mut right_bow = vec![0.0; value::room(& given[0], 0)];
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
    let mut along = vec![0.0; value::room(& given[1], 2)];
    let mut across = vec![0.0; value::room(& given[1], 2)];
    let mut misfits = vec![0.0; value::room(& given[6], 0)];
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
            .largest_misfit), Got::Count(answer.weakest_corner), Got::Number(answer
            .weakest_per_mm), Got::Count(answer.doubts),
        ],
    )
}
fn parse_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::parse_length(given[0].text())?;
    Ok(vec![Got::Number(answer)])
}
fn photo_map(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut along = vec![0.0; value::room(& given[4], 0)];
    let mut across = vec![0.0; value::room(& given[4], 0)];
    let mut scales = vec![0.0; value::room(& given[4], 0)];
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
            Got::Number(answer.reach), Got::Number(answer.coarsest), Got::Count(answer
            .doubts),
        ],
    )
}
fn piping_width(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::bias::piping_width(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer)])
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
            Got::Number(answer.low_g), Got::Number(answer.high_g), Got::Count(answer
            .doubts), Got::Count(answer.cautions),
        ],
    )
}
fn pooled_strength(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::pooled_strength(given[0].numbers(), given[1].numbers())?;
    Ok(
        vec![
            Got::Number(answer.strength_pct), Got::Number(answer.volume_ml),
            Got::Count(answer.cautions),
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
            .spread_each), Got::Number(answer.strip_ratio), Got::Count(answer.doubts),
        ],
    )
}
fn reflectance(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::shade::reflectance(given[0].number())?;
    Ok(vec![Got::Number(answer)])
}
fn relative_strength(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::shade::relative_strength(
        given[0].number(),
        given[1].number(),
    )?;
    Ok(vec![Got::Number(answer)])
}
fn remaining_width(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::body::remaining_width(
        given[0].number(),
        given[1].number(),
        given[2].number(),
        given[3].count(),
        given[4].number(),
    )?;
    Ok(vec![Got::Number(answer)])
}
fn repeats(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::quantity::repeats(
        given[0].number(),
        given[1].number(),
        given[2].count(),
    )?;
    Ok(
        vec![
            Got::Count(answer.repeats), Got::Number(answer.each), Got::Number(answer
            .total), Got::Number(answer.waste),
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
            Got::Count(answer.rinses_low), Got::Count(answer.rinses_high),
            Got::Number(answer.left), Got::Number(answer.water_ml), Got::Count(answer
            .cautions),
        ],
    )
}
fn round_set(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut tapes = vec![0.0; value::room(& given[0], 0)];
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
    Ok(vec![Got::Number(answer)])
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
            Got::Number(answer.flat), Got::Number(answer.cut_width), Got::Count(answer
            .strips), Got::Number(answer.cloth_length), Got::Count(answer.doubts),
        ],
    )
}
fn screen_level(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::colour::screen_level(given[0].number())?;
    Ok(vec![Got::Number(answer)])
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
    let mut tops = vec![0.0; value::room(& given[0], 0)];
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
            .end_angle_deg), Got::Number(answer.join_kink_deg), Got::Count(answer
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
    Ok(vec![Got::Number(answer)])
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
            Got::Number(answer.flat), Got::Number(answer.ratio), Got::Count(answer.rows),
            Got::Number(answer.stitching), Got::Count(answer.cautions),
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
            .lining_cut), Got::Count(answer.doubts),
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
    Ok(vec![Got::Number(answer.step), Got::Number(answer.each_edge),])
}
fn skew(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::cloth::skew(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer)])
}
fn skew_diagonals(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::cloth::skew_diagonals(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer)])
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
    Ok(vec![Got::Count(answer.count), Got::Number(answer.pitch),])
}
fn spacing_through(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut places = vec![0.0; value::room(& given[3], 0)];
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
            .pitch_after), Got::Count(answer.fixed), Got::Count(answer.doubts),
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
            Got::Count(answer.outside),
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
            Got::Count(answer.outside),
        ],
    )
}
fn stitch_length(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::stitch_length(given[0].number())?;
    Ok(vec![Got::Number(answer)])
}
fn stock_volume(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::wet::stock_volume(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(
        vec![
            Got::Number(answer.stock_ml), Got::Number(answer.amount_g), Got::Count(answer
            .doubts), Got::Count(answer.cautions),
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
            Got::Count(answer.strips),
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
    Ok(vec![Got::Number(answer)])
}
fn stretch_pct(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::stretch::stretch_pct(given[0].number(), given[1].number())?;
    Ok(vec![Got::Number(answer)])
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
            .taken), Got::Number(answer.leftover),
        ],
    )
}
fn tex_from_cotton_count(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::tex_from_cotton_count(
        given[0].number(),
        given[1].count(),
    )?;
    Ok(vec![Got::Number(answer)])
}
fn tex_from_denier(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::tex_from_denier(given[0].number())?;
    Ok(vec![Got::Number(answer)])
}
fn tex_from_metric_count(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::tape::tex_from_metric_count(
        given[0].number(),
        given[1].count(),
    )?;
    Ok(vec![Got::Number(answer)])
}
fn thread_for_seam(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::thread::thread_for_seam(
        given[0].number(),
        given[1].number(),
        given[2].number(),
    )?;
    Ok(vec![Got::Number(answer)])
}
fn thread_ratio(given: &[Given]) -> Result<Vec<Got>, Error> {
    let answer = recloth::thread::thread_ratio(
        given[0].number(),
        given[1].number(),
        read_stitch_type(&given[2]),
    )?;
    Ok(vec![Got::Number(answer)])
}
fn tiers(given: &[Given]) -> Result<Vec<Got>, Error> {
    let mut flats = vec![0.0; value::room(& given[1], 0)];
    let answer = recloth::tier::tiers(
        given[0].number(),
        given[1].numbers(),
        &mut flats,
    )?;
    Ok(
        vec![
            Got::Numbers(flats), Got::Number(answer.hem), Got::Number(answer.ratio),
            Got::Number(answer.strip), Got::Count(answer.doubts),
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
            Got::Number(answer.worst), Got::Number(answer.likely), Got::Count(answer
            .largest), Got::Number(answer.largest_part),
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
            .along_per_mm), Got::Number(answer.across_per_mm), Got::Count(answer.doubts),
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
            Got::Count(answer.doubts),
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
    Ok(vec![Got::Count(answer)])
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
            Got::Number(answer.after), Got::Number(answer.change_pct), Got::Count(answer
            .doubts),
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
            .high),
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
            Got::Number(answer.length), Got::Number(answer.width), Got::Count(answer
            .stitches),
        ],
    )
}
/// Calls a function by its name; None when there is no such function.
pub fn call(name: &str, given: &[Given]) -> Option<Result<Vec<Got>, Error>> {
    Some(
        match name {
            "arc_from_rise" => arc_from_rise(given),
            "assistant_volume" => assistant_volume(given),
            "available_chlorine" => available_chlorine(given),
            "batches" => batches(given),
            "bath_volume" => bath_volume(given),
            "bias_along_selvedge" => bias_along_selvedge(given),
            "bias_square" => bias_square(given),
            "bias_strip_length" => bias_strip_length(given),
            "bias_strips" => bias_strips(given),
            "bias_tube" => bias_tube(given),
            "binder_solids" => binder_solids(given),
            "binding_strips" => binding_strips(given),
            "binding_width" => binding_width(given),
            "bleach_dilution" => bleach_dilution(given),
            "bleach_time" => bleach_time(given),
            "body_length_doubts" => body_length_doubts(given),
            "box_pleats" => box_pleats(given),
            "box_pleats_count" => box_pleats_count(given),
            "box_pleats_depth" => box_pleats_depth(given),
            "box_pleats_finished" => box_pleats_finished(given),
            "breadths" => breadths(given),
            "button_diameter" => button_diameter(given),
            "button_for_hole" => button_for_hole(given),
            "button_loop" => button_loop(given),
            "buttonhole" => buttonhole(given),
            "cap_ease" => cap_ease(given),
            "cap_for_ease" => cap_for_ease(given),
            "cap_width_bound" => cap_width_bound(given),
            "carried_liquor" => carried_liquor(given),
            "casing" => casing(given),
            "ciede2000" => ciede2000(given),
            "circle_skirt" => circle_skirt(given),
            "circle_skirt_fraction" => circle_skirt_fraction(given),
            "circle_skirt_longest" => circle_skirt_longest(given),
            "cloth_mass" => cloth_mass(given),
            "cloth_to_buy" => cloth_to_buy(given),
            "component_check" => component_check(given),
            "cover_mark" => cover_mark(given),
            "curved_band" => curved_band(given),
            "cut_for_change" => cut_for_change(given),
            "cut_state" => cut_state(given),
            "dart" => dart(given),
            "dart_equivalent" => dart_equivalent(given),
            "dart_from_gape" => dart_from_gape(given),
            "dart_in_panel" => dart_in_panel(given),
            "dart_turned" => dart_turned(given),
            "dart_width_at" => dart_width_at(given),
            "deepest_hem" => deepest_hem(given),
            "dimensional_change" => dimensional_change(given),
            "double_dart" => double_dart(given),
            "elastic" => elastic(given),
            "even_spacing" => even_spacing(given),
            "five_gores" => five_gores(given),
            "flounce" => flounce(given),
            "format_length" => format_length(given),
            "front_back_doubts" => front_back_doubts(given),
            "frustum" => frustum(given),
            "gather_ratio" => gather_ratio(given),
            "gather_sections" => gather_sections(given),
            "gathers" => gathers(given),
            "girth_doubts" => girth_doubts(given),
            "godet" => godet(given),
            "gore" => gore(given),
            "gsm_from_ounces" => gsm_from_ounces(given),
            "head_opening" => head_opening(given),
            "hem_on_curve" => hem_on_curve(given),
            "hip_waist_drop" => hip_waist_drop(given),
            "holes_left" => holes_left(given),
            "k_over_s" => k_over_s(given),
            "knife_pleats" => knife_pleats(given),
            "knife_pleats_count" => knife_pleats_count(given),
            "knife_pleats_depth" => knife_pleats_depth(given),
            "knife_pleats_finished" => knife_pleats_finished(given),
            "lab_from_srgb" => lab_from_srgb(given),
            "lab_from_xyz" => lab_from_xyz(given),
            "lacing" => lacing(given),
            "length_chain" => length_chain(given),
            "let_out" => let_out(given),
            "level_line" => level_line(given),
            "linear_light" => linear_light(given),
            "lining_free_length" => lining_free_length(given),
            "lining_length" => lining_length(given),
            "lining_width" => lining_width(given),
            "liquor_shares" => liquor_shares(given),
            "loop_slack" => loop_slack(given),
            "mix_temperature" => mix_temperature(given),
            "neck_bust_doubts" => neck_bust_doubts(given),
            "negative_ease" => negative_ease(given),
            "neutraliser" => neutraliser(given),
            "off_centre_opening" => off_centre_opening(given),
            "overdye" => overdye(given),
            "owf" => owf(given),
            "panel_by_offsets" => panel_by_offsets(given),
            "panel_by_triangles" => panel_by_triangles(given),
            "parse_length" => parse_length(given),
            "photo_map" => photo_map(given),
            "piping_width" => piping_width(given),
            "plant_dyestuff" => plant_dyestuff(given),
            "pooled_strength" => pooled_strength(given),
            "puff_spread" => puff_spread(given),
            "reflectance" => reflectance(given),
            "relative_strength" => relative_strength(given),
            "remaining_width" => remaining_width(given),
            "repeats" => repeats(given),
            "ribbing" => ribbing(given),
            "rinses" => rinses(given),
            "round_set" => round_set(given),
            "round_to" => round_to(given),
            "ruffle" => ruffle(given),
            "screen_level" => screen_level(given),
            "seam_pleat" => seam_pleat(given),
            "sectioned_band" => sectioned_band(given),
            "shaped_band" => shaped_band(given),
            "share" => share(given),
            "shirring" => shirring(given),
            "shrink_pair" => shrink_pair(given),
            "size_step" => size_step(given),
            "skew" => skew(given),
            "skew_diagonals" => skew_diagonals(given),
            "snip_spacing" => snip_spacing(given),
            "spacing_by_pitch" => spacing_by_pitch(given),
            "spacing_through" => spacing_through(given),
            "srgb_from_lab" => srgb_from_lab(given),
            "srgb_from_xyz" => srgb_from_xyz(given),
            "stitch_length" => stitch_length(given),
            "stock_volume" => stock_volume(given),
            "straight_band" => straight_band(given),
            "straight_band_depth" => straight_band_depth(given),
            "stretch_pct" => stretch_pct(given),
            "take_in" => take_in(given),
            "tex_from_cotton_count" => tex_from_cotton_count(given),
            "tex_from_denier" => tex_from_denier(given),
            "tex_from_metric_count" => tex_from_metric_count(given),
            "thread_for_seam" => thread_for_seam(given),
            "thread_ratio" => thread_ratio(given),
            "tiers" => tiers(given),
            "tolerance_stack" => tolerance_stack(given),
            "tolerance_stack_list" => tolerance_stack_list(given),
            "trilaterate" => trilaterate(given),
            "tucks" => tucks(given),
            "turn_through" => turn_through(given),
            "turned_hem" => turned_hem(given),
            "v_neck" => v_neck(given),
            "waist_hip_doubts" => waist_hip_doubts(given),
            "washes" => washes(given),
            "width_conversion" => width_conversion(given),
            "wrap_skirt" => wrap_skirt(given),
            "xyz_from_lab" => xyz_from_lab(given),
            "xyz_from_srgb" => xyz_from_srgb(given),
            "zigzag_buttonhole" => zigzag_buttonhole(given),
            _ => return None,
        },
    )
}
