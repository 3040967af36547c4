//! Written by `cargo xtask generate` from the doc comments of the core; do not edit.
use numpy::{IntoPyArray, PyReadonlyArray1};
use pyo3::{prelude::*, IntoPyObjectExt};
use recloth::Error;
use crate::{door, ufunc::{Scalar, Type, add_every, add_one, add_status}};
fn read_band_make(
    argument: &'static str,
    value: f64,
) -> (recloth::band::BandMake, Option<Error>) {
    match value {
        0.0 => (recloth::band::BandMake::Folded, None),
        1.0 => (recloth::band::BandMake::Faced, None),
        _ => (recloth::band::BandMake::Folded, Some(door::bad_choice(argument, value))),
    }
}
fn read_basis(
    argument: &'static str,
    value: f64,
) -> (recloth::dye::Basis, Option<Error>) {
    match value {
        0.0 => (recloth::dye::Basis::Fresh, None),
        1.0 => (recloth::dye::Basis::Dry, None),
        _ => (recloth::dye::Basis::Fresh, Some(door::bad_choice(argument, value))),
    }
}
fn read_bath(
    argument: &'static str,
    value: f64,
) -> (recloth::fibre::Bath, Option<Error>) {
    match value {
        0.0 => (recloth::fibre::Bath::Water, None),
        1.0 => (recloth::fibre::Bath::ChlorineBleach, None),
        2.0 => (recloth::fibre::Bath::Direct, None),
        3.0 => (recloth::fibre::Bath::Reactive, None),
        4.0 => (recloth::fibre::Bath::Acid, None),
        5.0 => (recloth::fibre::Bath::Vat, None),
        6.0 => (recloth::fibre::Bath::Sulphur, None),
        7.0 => (recloth::fibre::Bath::Azoic, None),
        8.0 => (recloth::fibre::Bath::MetalComplex, None),
        9.0 => (recloth::fibre::Bath::Disperse, None),
        10.0 => (recloth::fibre::Bath::Basic, None),
        11.0 => (recloth::fibre::Bath::Natural, None),
        _ => (recloth::fibre::Bath::Water, Some(door::bad_choice(argument, value))),
    }
}
fn read_binding_fold(
    argument: &'static str,
    value: f64,
) -> (recloth::bias::BindingFold, Option<Error>) {
    match value {
        0.0 => (recloth::bias::BindingFold::Single, None),
        1.0 => (recloth::bias::BindingFold::Double, None),
        _ => {
            (recloth::bias::BindingFold::Single, Some(door::bad_choice(argument, value)))
        }
    }
}
fn read_button_shape(
    argument: &'static str,
    value: f64,
) -> (recloth::closure::ButtonShape, Option<Error>) {
    match value {
        0.0 => (recloth::closure::ButtonShape::Flat, None),
        1.0 => (recloth::closure::ButtonShape::Ball, None),
        _ => {
            (
                recloth::closure::ButtonShape::Flat,
                Some(door::bad_choice(argument, value)),
            )
        }
    }
}
fn read_ease_place(
    argument: &'static str,
    value: f64,
) -> (recloth::ease::EasePlace, Option<Error>) {
    match value {
        0.0 => (recloth::ease::EasePlace::Bust, None),
        1.0 => (recloth::ease::EasePlace::DressWaist, None),
        2.0 => (recloth::ease::EasePlace::SkirtWaist, None),
        3.0 => (recloth::ease::EasePlace::Hip, None),
        4.0 => (recloth::ease::EasePlace::ShirtChest, None),
        _ => (recloth::ease::EasePlace::Bust, Some(door::bad_choice(argument, value))),
    }
}
fn read_edge_curve(
    argument: &'static str,
    value: f64,
) -> (recloth::binding::EdgeCurve, Option<Error>) {
    match value {
        0.0 => (recloth::binding::EdgeCurve::Inward, None),
        1.0 => (recloth::binding::EdgeCurve::Outward, None),
        _ => {
            (
                recloth::binding::EdgeCurve::Inward,
                Some(door::bad_choice(argument, value)),
            )
        }
    }
}
fn read_fibre(
    argument: &'static str,
    value: f64,
) -> (recloth::fibre::Fibre, Option<Error>) {
    match value {
        0.0 => (recloth::fibre::Fibre::Unknown, None),
        1.0 => (recloth::fibre::Fibre::Cotton, None),
        2.0 => (recloth::fibre::Fibre::Linen, None),
        3.0 => (recloth::fibre::Fibre::Viscose, None),
        4.0 => (recloth::fibre::Fibre::Polyester, None),
        5.0 => (recloth::fibre::Fibre::Acrylic, None),
        6.0 => (recloth::fibre::Fibre::Polyamide, None),
        7.0 => (recloth::fibre::Fibre::Acetate, None),
        8.0 => (recloth::fibre::Fibre::Elastane, None),
        9.0 => (recloth::fibre::Fibre::Rubber, None),
        10.0 => (recloth::fibre::Fibre::Wool, None),
        11.0 => (recloth::fibre::Fibre::Silk, None),
        12.0 => (recloth::fibre::Fibre::Mohair, None),
        13.0 => (recloth::fibre::Fibre::Leather, None),
        _ => (recloth::fibre::Fibre::Unknown, Some(door::bad_choice(argument, value))),
    }
}
fn read_finish(
    argument: &'static str,
    value: f64,
) -> (recloth::fibre::Finish, Option<Error>) {
    match value {
        0.0 => (recloth::fibre::Finish::Unknown, None),
        1.0 => (recloth::fibre::Finish::Plain, None),
        2.0 => (recloth::fibre::Finish::NotFast, None),
        3.0 => (recloth::fibre::Finish::FlameRetardant, None),
        4.0 => (recloth::fibre::Finish::Resin, None),
        _ => (recloth::fibre::Finish::Unknown, Some(door::bad_choice(argument, value))),
    }
}
fn read_in_bath(
    argument: &'static str,
    value: f64,
) -> (recloth::bleach::InBath, Option<Error>) {
    match value {
        0.0 => (recloth::bleach::InBath::Unknown, None),
        1.0 => (recloth::bleach::InBath::WaterOnly, None),
        2.0 => (recloth::bleach::InBath::Acid, None),
        3.0 => (recloth::bleach::InBath::Ammonia, None),
        4.0 => (recloth::bleach::InBath::Alcohol, None),
        5.0 => (recloth::bleach::InBath::Peroxide, None),
        6.0 => (recloth::bleach::InBath::Neutraliser, None),
        7.0 => (recloth::bleach::InBath::Other, None),
        _ => (recloth::bleach::InBath::Unknown, Some(door::bad_choice(argument, value))),
    }
}
fn read_insert_place(
    argument: &'static str,
    value: f64,
) -> (recloth::alteration::InsertPlace, Option<Error>) {
    match value {
        0.0 => (recloth::alteration::InsertPlace::Seam, None),
        1.0 => (recloth::alteration::InsertPlace::Slash, None),
        _ => {
            (
                recloth::alteration::InsertPlace::Seam,
                Some(door::bad_choice(argument, value)),
            )
        }
    }
}
fn read_reaction(
    argument: &'static str,
    value: f64,
) -> (recloth::bleach::Reaction, Option<Error>) {
    match value {
        0.0 => (recloth::bleach::Reaction::ThiosulfateToTetrathionate, None),
        1.0 => (recloth::bleach::Reaction::ThiosulfateToSulfur, None),
        2.0 => (recloth::bleach::Reaction::ThiosulfateToSulfate, None),
        3.0 => (recloth::bleach::Reaction::Bisulfite, None),
        4.0 => (recloth::bleach::Reaction::Metabisulfite, None),
        5.0 => (recloth::bleach::Reaction::Sulfite, None),
        6.0 => (recloth::bleach::Reaction::AscorbicAcid, None),
        7.0 => (recloth::bleach::Reaction::Peroxide, None),
        _ => {
            (
                recloth::bleach::Reaction::ThiosulfateToTetrathionate,
                Some(door::bad_choice(argument, value)),
            )
        }
    }
}
fn read_rounding(
    argument: &'static str,
    value: f64,
) -> (recloth::tape::Rounding, Option<Error>) {
    match value {
        0.0 => (recloth::tape::Rounding::Nearest, None),
        1.0 => (recloth::tape::Rounding::Up, None),
        2.0 => (recloth::tape::Rounding::Down, None),
        _ => (recloth::tape::Rounding::Nearest, Some(door::bad_choice(argument, value))),
    }
}
fn read_square_ends(
    argument: &'static str,
    value: f64,
) -> (recloth::band::SquareEnds, Option<Error>) {
    match value {
        0.0 => (recloth::band::SquareEnds::Neither, None),
        1.0 => (recloth::band::SquareEnds::First, None),
        2.0 => (recloth::band::SquareEnds::Last, None),
        3.0 => (recloth::band::SquareEnds::Both, None),
        _ => {
            (recloth::band::SquareEnds::Neither, Some(door::bad_choice(argument, value)))
        }
    }
}
fn read_stage(
    argument: &'static str,
    value: f64,
) -> (recloth::bleach::Stage, Option<Error>) {
    match value {
        0.0 => (recloth::bleach::Stage::InBleach, None),
        1.0 => (recloth::bleach::Stage::Drained, None),
        2.0 => (recloth::bleach::Stage::FreshBath, None),
        _ => (recloth::bleach::Stage::InBleach, Some(door::bad_choice(argument, value))),
    }
}
fn read_stitch_type(
    argument: &'static str,
    value: f64,
) -> (recloth::thread::StitchType, Option<Error>) {
    match value {
        0.0 => (recloth::thread::StitchType::ChainSingle, None),
        1.0 => (recloth::thread::StitchType::Lock, None),
        2.0 => (recloth::thread::StitchType::ChainDouble, None),
        _ => {
            (
                recloth::thread::StitchType::ChainSingle,
                Some(door::bad_choice(argument, value)),
            )
        }
    }
}
fn read_style(
    argument: &'static str,
    value: f64,
) -> (recloth::tape::Style, Option<Error>) {
    match value {
        0.0 => (recloth::tape::Style::Exact, None),
        1.0 => (recloth::tape::Style::Mm, None),
        2.0 => (recloth::tape::Style::MmHalf, None),
        3.0 => (recloth::tape::Style::Cm, None),
        4.0 => (recloth::tape::Style::CmComma, None),
        5.0 => (recloth::tape::Style::Metre, None),
        6.0 => (recloth::tape::Style::MetreComma, None),
        7.0 => (recloth::tape::Style::InchHalf, None),
        8.0 => (recloth::tape::Style::InchQuarter, None),
        9.0 => (recloth::tape::Style::InchEighth, None),
        10.0 => (recloth::tape::Style::InchSixteenth, None),
        11.0 => (recloth::tape::Style::InchThirtySecond, None),
        12.0 => (recloth::tape::Style::InchMark, None),
        13.0 => (recloth::tape::Style::FootEighth, None),
        14.0 => (recloth::tape::Style::YardEighth, None),
        _ => (recloth::tape::Style::Exact, Some(door::bad_choice(argument, value))),
    }
}
fn read_swatch(
    argument: &'static str,
    value: f64,
) -> (recloth::fibre::Swatch, Option<Error>) {
    match value {
        0.0 => (recloth::fibre::Swatch::Untried, None),
        1.0 => (recloth::fibre::Swatch::Passed, None),
        2.0 => (recloth::fibre::Swatch::Failed, None),
        _ => (recloth::fibre::Swatch::Untried, Some(door::bad_choice(argument, value))),
    }
}
/// `recloth::arc::arc_from_rise`.
#[allow(non_camel_case_types)]
struct arc_from_rise {}
impl Scalar<2, 3> for arc_from_rise {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [0.1, 100000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 3], Error> {
        let [chord, rise] = given;
        let answer = recloth::arc::arc_from_rise(chord, rise)?;
        Ok([answer.radius, answer.length, answer.angle_deg])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_arc_from_rise<'py>(
    py: Python<'py>,
    chord: f64,
    rise: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = arc_from_rise::call([chord, rise])
        .map_err(|error| door::raise(py, "arc_from_rise", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::wet::assistant_volume`.
#[allow(non_camel_case_types)]
struct assistant_volume {}
impl Scalar<4, 4> for assistant_volume {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Bits, Type::Bits];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [0.01, 1000000.0],
        [1.0, 200.0],
        [0.0, 500.0],
        [0.001, 100.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 4], Error> {
        let [mass_g, ratio, grams, stock_pct] = given;
        let answer = recloth::wet::assistant_volume(mass_g, ratio, grams, stock_pct)?;
        Ok([
            answer.stock_ml,
            answer.amount_g,
            answer.doubts as f64,
            answer.cautions as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_assistant_volume<'py>(
    py: Python<'py>,
    mass_g: f64,
    ratio: f64,
    grams: f64,
    stock_pct: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = assistant_volume::call([mass_g, ratio, grams, stock_pct])
        .map_err(|error| door::raise(py, "assistant_volume", &error))?;
    (answer[0], answer[1], answer[2] as u64, answer[3] as u64).into_bound_py_any(py)
}
/// `recloth::bleach::available_chlorine`.
#[allow(non_camel_case_types)]
struct available_chlorine {}
impl Scalar<2, 4> for available_chlorine {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Bits, Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[0.1, 20.0], [1.0, 1.3]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 4], Error> {
        let [naocl_pct, specific_gravity] = given;
        let answer = recloth::bleach::available_chlorine(naocl_pct, specific_gravity)?;
        Ok([
            answer.available_pct,
            answer.trade_pct,
            answer.doubts as f64,
            answer.cautions as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_available_chlorine<'py>(
    py: Python<'py>,
    naocl_pct: f64,
    specific_gravity: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = available_chlorine::call([naocl_pct, specific_gravity])
        .map_err(|error| door::raise(py, "available_chlorine", &error))?;
    (answer[0], answer[1], answer[2] as u64, answer[3] as u64).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_batches<'py>(
    py: Python<'py>,
    masses_g: PyReadonlyArray1<'py, f64>,
    vessel_ml: f64,
    ratio: f64,
    fill: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let masses_g = masses_g.as_slice()?;
    let mut numbers = vec![0.0; door::room(masses_g.len(), 0, usize::MAX)];
    let answer = recloth::wet::batches(masses_g, vessel_ml, ratio, &mut numbers, fill)
        .map_err(|error| door::raise(py, "batches", &error))?;
    (
        numbers.into_pyarray(py),
        answer.batches,
        answer.least,
        answer.capacity_g,
        answer.heaviest_g,
        answer.doubts,
        answer.cautions,
    )
        .into_bound_py_any(py)
}
/// `recloth::wet::bath_volume`.
#[allow(non_camel_case_types)]
struct bath_volume {}
impl Scalar<2, 3> for bath_volume {
    const TYPES: [Type; 3] = [Type::Number, Type::Bits, Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[0.01, 1000000.0], [1.0, 200.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 3], Error> {
        let [mass_g, ratio] = given;
        let answer = recloth::wet::bath_volume(mass_g, ratio)?;
        Ok([answer.volume_ml, answer.doubts as f64, answer.cautions as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_bath_volume<'py>(
    py: Python<'py>,
    mass_g: f64,
    ratio: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = bath_volume::call([mass_g, ratio])
        .map_err(|error| door::raise(py, "bath_volume", &error))?;
    (answer[0], answer[1] as u64, answer[2] as u64).into_bound_py_any(py)
}
/// `recloth::bias::bias_along_selvedge`.
#[allow(non_camel_case_types)]
struct bias_along_selvedge {}
impl Scalar<1, 1> for bias_along_selvedge {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 1]> = Some([[0.1, 100000.0]]);
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [width] = given;
        let answer = recloth::bias::bias_along_selvedge(width)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_bias_along_selvedge<'py>(
    py: Python<'py>,
    width: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = bias_along_selvedge::call([width])
        .map_err(|error| door::raise(py, "bias_along_selvedge", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::bias::bias_square`.
#[allow(non_camel_case_types)]
struct bias_square {}
impl Scalar<2, 1> for bias_square {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 10000000.0], [0.1, 10000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [length, width] = given;
        let answer = recloth::bias::bias_square(length, width)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_bias_square<'py>(
    py: Python<'py>,
    length: f64,
    width: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = bias_square::call([length, width])
        .map_err(|error| door::raise(py, "bias_square", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::bias::bias_strip_length`.
#[allow(non_camel_case_types)]
struct bias_strip_length {}
impl Scalar<2, 1> for bias_strip_length {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [0.1, 10000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [side, width] = given;
        let answer = recloth::bias::bias_strip_length(side, width)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_bias_strip_length<'py>(
    py: Python<'py>,
    side: f64,
    width: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = bias_strip_length::call([side, width])
        .map_err(|error| door::raise(py, "bias_strip_length", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::bias::bias_strips`.
#[allow(non_camel_case_types)]
struct bias_strips {}
impl Scalar<5, 4> for bias_strips {
    const TYPES: [Type; 4] = [Type::Count, Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 5]> = Some([
        [10.0, 100000.0],
        [10.0, 100000.0],
        [1.0, 10000.0],
        [0.0, 100.0],
        [0.0, 100000.0],
    ]);
    #[inline]
    fn call(given: [f64; 5]) -> Result<[f64; 4], Error> {
        let [length, width, strip, allowance, shortest] = given;
        let answer = recloth::bias::bias_strips(
            length,
            width,
            strip,
            allowance,
            shortest,
        )?;
        Ok([f64::from(answer.strips), answer.longest, answer.joined, answer.kept_pct])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_bias_strips<'py>(
    py: Python<'py>,
    length: f64,
    width: f64,
    strip: f64,
    allowance: f64,
    shortest: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = bias_strips::call([length, width, strip, allowance, shortest])
        .map_err(|error| door::raise(py, "bias_strips", &error))?;
    (answer[0] as u64, answer[1], answer[2], answer[3]).into_bound_py_any(py)
}
/// `recloth::bias::bias_tube`.
#[allow(non_camel_case_types)]
struct bias_tube {}
impl Scalar<4, 3> for bias_tube {
    const TYPES: [Type; 3] = [Type::Count, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [10.0, 100000.0],
        [10.0, 100000.0],
        [1.0, 10000.0],
        [0.0, 100.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 3], Error> {
        let [length, width, strip, allowance] = given;
        let answer = recloth::bias::bias_tube(length, width, strip, allowance)?;
        Ok([f64::from(answer.turns), answer.length, answer.leftover])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_bias_tube<'py>(
    py: Python<'py>,
    length: f64,
    width: f64,
    strip: f64,
    allowance: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = bias_tube::call([length, width, strip, allowance])
        .map_err(|error| door::raise(py, "bias_tube", &error))?;
    (answer[0] as u64, answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::dye::binder_solids`.
#[allow(non_camel_case_types)]
struct binder_solids {}
impl Scalar<5, 6> for binder_solids {
    const TYPES: [Type; 6] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 5]> = None;
    #[inline]
    fn call(given: [f64; 5]) -> Result<[f64; 6], Error> {
        let [low_pct, high_pct, parts_water, pick_up_pct, dips] = given;
        let (dips, dips_bad) = door::count("dips", dips, 1);
        let answer = door::settle(
            recloth::dye::binder_solids(
                low_pct,
                high_pct,
                parts_water,
                pick_up_pct,
                dips,
            ),
            &["low_pct", "high_pct", "parts_water", "pick_up_pct", "dips"],
            &[dips_bad],
        )?;
        Ok([
            answer.bath_low_pct,
            answer.bath_high_pct,
            answer.owf_low_pct,
            answer.owf_high_pct,
            answer.doubts as f64,
            answer.cautions as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_binder_solids<'py>(
    py: Python<'py>,
    low_pct: f64,
    high_pct: f64,
    parts_water: f64,
    pick_up_pct: f64,
    #[pyo3(from_py_with = door::number)]
    dips: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = binder_solids::call([low_pct, high_pct, parts_water, pick_up_pct, dips])
        .map_err(|error| door::raise(py, "binder_solids", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4] as u64, answer[5] as u64)
        .into_bound_py_any(py)
}
/// `recloth::binding::binding_length`.
#[allow(non_camel_case_types)]
struct binding_length {}
impl Scalar<4, 1> for binding_length {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 1], Error> {
        let [edge, corners, corner, finish] = given;
        let (corners, corners_bad) = door::count("corners", corners, 0);
        let answer = door::settle(
            recloth::binding::binding_length(edge, corners, corner, finish),
            &["edge", "corners", "corner", "finish"],
            &[corners_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_binding_length<'py>(
    py: Python<'py>,
    edge: f64,
    #[pyo3(from_py_with = door::number)]
    corners: f64,
    corner: f64,
    finish: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = binding_length::call([edge, corners, corner, finish])
        .map_err(|error| door::raise(py, "binding_length", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::bias::binding_strips`.
#[allow(non_camel_case_types)]
struct binding_strips {}
impl Scalar<3, 2> for binding_strips {
    const TYPES: [Type; 2] = [Type::Count, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 1000000.0],
        [10.0, 100000.0],
        [0.0, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 2], Error> {
        let [length, strip, join] = given;
        let answer = recloth::bias::binding_strips(length, strip, join)?;
        Ok([f64::from(answer.count), answer.spare])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_binding_strips<'py>(
    py: Python<'py>,
    length: f64,
    strip: f64,
    join: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = binding_strips::call([length, strip, join])
        .map_err(|error| door::raise(py, "binding_strips", &error))?;
    (answer[0] as u64, answer[1]).into_bound_py_any(py)
}
/// `recloth::bias::binding_width`.
#[allow(non_camel_case_types)]
struct binding_width {}
impl Scalar<4, 1> for binding_width {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 1], Error> {
        let [finished, turn, thickness, fold] = given;
        let (fold, fold_bad) = read_binding_fold("fold", fold);
        let answer = door::settle(
            recloth::bias::binding_width(finished, turn, thickness, fold),
            &["finished", "turn", "thickness", "fold"],
            &[fold_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_binding_width<'py>(
    py: Python<'py>,
    finished: f64,
    turn: f64,
    thickness: f64,
    fold: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = binding_width::call([finished, turn, thickness, fold])
        .map_err(|error| door::raise(py, "binding_width", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::bleach::bleach_dilution`.
#[allow(non_camel_case_types)]
struct bleach_dilution {}
impl Scalar<8, 5> for bleach_dilution {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 8]> = None;
    #[inline]
    fn call(given: [f64; 8]) -> Result<[f64; 5], Error> {
        let [volume_ml, target_pct, stock_pct, minutes, fibre, finish, swatch, in_bath,
        ] = given;
        let (fibre, fibre_bad) = read_fibre("fibre", fibre);
        let (finish, finish_bad) = read_finish("finish", finish);
        let (swatch, swatch_bad) = read_swatch("swatch", swatch);
        let (in_bath, in_bath_bad) = read_in_bath("in_bath", in_bath);
        let answer = door::settle(
            recloth::bleach::bleach_dilution(
                volume_ml,
                target_pct,
                stock_pct,
                minutes,
                fibre,
                finish,
                swatch,
                in_bath,
            ),
            &[
                "volume_ml",
                "target_pct",
                "stock_pct",
                "minutes",
                "fibre",
                "finish",
                "swatch",
                "in_bath",
            ],
            &[fibre_bad, finish_bad, swatch_bad, in_bath_bad],
        )?;
        Ok([
            answer.bleach_ml,
            answer.water_ml,
            answer.parts_water,
            answer.doubts as f64,
            answer.cautions as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_bleach_dilution<'py>(
    py: Python<'py>,
    volume_ml: f64,
    target_pct: f64,
    stock_pct: f64,
    minutes: f64,
    fibre: f64,
    finish: f64,
    swatch: f64,
    in_bath: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = bleach_dilution::call([
            volume_ml,
            target_pct,
            stock_pct,
            minutes,
            fibre,
            finish,
            swatch,
            in_bath,
        ])
        .map_err(|error| door::raise(py, "bleach_dilution", &error))?;
    (answer[0], answer[1], answer[2], answer[3] as u64, answer[4] as u64)
        .into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_bleach_time<'py>(
    py: Python<'py>,
    times_min: PyReadonlyArray1<'py, f64>,
    shades: PyReadonlyArray1<'py, f64>,
    target: f64,
    limit_min: f64,
    fibre: f64,
    finish: f64,
    swatch: f64,
    in_bath: f64,
    floor: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let times_min = times_min.as_slice()?;
    let shades = shades.as_slice()?;
    let (fibre, fibre_bad) = read_fibre("fibre", fibre);
    let (finish, finish_bad) = read_finish("finish", finish);
    let (swatch, swatch_bad) = read_swatch("swatch", swatch);
    let (in_bath, in_bath_bad) = read_in_bath("in_bath", in_bath);
    let answer = door::settle(
            recloth::bleach::bleach_time(
                times_min,
                shades,
                target,
                limit_min,
                fibre,
                finish,
                swatch,
                in_bath,
                floor,
            ),
            &[
                "times_min",
                "shades",
                "target",
                "limit_min",
                "fibre",
                "finish",
                "swatch",
                "in_bath",
                "floor",
            ],
            &[fibre_bad, finish_bad, swatch_bad, in_bath_bad],
        )
        .map_err(|error| door::raise(py, "bleach_time", &error))?;
    (
        answer.time_min,
        answer.next_swatch_min,
        answer.rate,
        answer.doubts,
        answer.cautions,
    )
        .into_bound_py_any(py)
}
/// `recloth::body::body_length_doubts`.
#[allow(non_camel_case_types)]
struct body_length_doubts {}
impl Scalar<1, 1> for body_length_doubts {
    const TYPES: [Type; 1] = [Type::Bits];
    const RANGES: Option<[[f64; 2]; 1]> = Some([[1.0, 100000.0]]);
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [length] = given;
        let answer = recloth::body::body_length_doubts(length)?;
        Ok([answer as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_body_length_doubts<'py>(
    py: Python<'py>,
    length: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = body_length_doubts::call([length])
        .map_err(|error| door::raise(py, "body_length_doubts", &error))?;
    (answer[0] as u64).into_bound_py_any(py)
}
/// `recloth::pleat::box_pleats`.
#[allow(non_camel_case_types)]
struct box_pleats {}
impl Scalar<3, 9> for box_pleats {
    const TYPES: [Type; 9] = [
        Type::Number,
        Type::Number,
        Type::Count,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 9], Error> {
        let [finished, count, depth] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::pleat::box_pleats(finished, count, depth),
            &["finished", "count", "depth"],
            &[count_bad],
        )?;
        Ok([
            answer.flat,
            answer.finished,
            f64::from(answer.count),
            answer.show,
            answer.depth,
            answer.intake,
            answer.taken_up,
            answer.ratio,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_box_pleats<'py>(
    py: Python<'py>,
    finished: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
    depth: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = box_pleats::call([finished, count, depth])
        .map_err(|error| door::raise(py, "box_pleats", &error))?;
    (
        answer[0],
        answer[1],
        answer[2] as u64,
        answer[3],
        answer[4],
        answer[5],
        answer[6],
        answer[7],
        answer[8] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::pleat::box_pleats_count`.
#[allow(non_camel_case_types)]
struct box_pleats_count {}
impl Scalar<3, 9> for box_pleats_count {
    const TYPES: [Type; 9] = [
        Type::Number,
        Type::Number,
        Type::Count,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 100000000.0],
        [1.0, 1000000.0],
        [0.1, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 9], Error> {
        let [flat, finished, depth] = given;
        let answer = recloth::pleat::box_pleats_count(flat, finished, depth)?;
        Ok([
            answer.flat,
            answer.finished,
            f64::from(answer.count),
            answer.show,
            answer.depth,
            answer.intake,
            answer.taken_up,
            answer.ratio,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_box_pleats_count<'py>(
    py: Python<'py>,
    flat: f64,
    finished: f64,
    depth: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = box_pleats_count::call([flat, finished, depth])
        .map_err(|error| door::raise(py, "box_pleats_count", &error))?;
    (
        answer[0],
        answer[1],
        answer[2] as u64,
        answer[3],
        answer[4],
        answer[5],
        answer[6],
        answer[7],
        answer[8] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::pleat::box_pleats_depth`.
#[allow(non_camel_case_types)]
struct box_pleats_depth {}
impl Scalar<3, 9> for box_pleats_depth {
    const TYPES: [Type; 9] = [
        Type::Number,
        Type::Number,
        Type::Count,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 9], Error> {
        let [flat, finished, count] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::pleat::box_pleats_depth(flat, finished, count),
            &["flat", "finished", "count"],
            &[count_bad],
        )?;
        Ok([
            answer.flat,
            answer.finished,
            f64::from(answer.count),
            answer.show,
            answer.depth,
            answer.intake,
            answer.taken_up,
            answer.ratio,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_box_pleats_depth<'py>(
    py: Python<'py>,
    flat: f64,
    finished: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = box_pleats_depth::call([flat, finished, count])
        .map_err(|error| door::raise(py, "box_pleats_depth", &error))?;
    (
        answer[0],
        answer[1],
        answer[2] as u64,
        answer[3],
        answer[4],
        answer[5],
        answer[6],
        answer[7],
        answer[8] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::pleat::box_pleats_finished`.
#[allow(non_camel_case_types)]
struct box_pleats_finished {}
impl Scalar<3, 9> for box_pleats_finished {
    const TYPES: [Type; 9] = [
        Type::Number,
        Type::Number,
        Type::Count,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 9], Error> {
        let [flat, count, depth] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::pleat::box_pleats_finished(flat, count, depth),
            &["flat", "count", "depth"],
            &[count_bad],
        )?;
        Ok([
            answer.flat,
            answer.finished,
            f64::from(answer.count),
            answer.show,
            answer.depth,
            answer.intake,
            answer.taken_up,
            answer.ratio,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_box_pleats_finished<'py>(
    py: Python<'py>,
    flat: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
    depth: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = box_pleats_finished::call([flat, count, depth])
        .map_err(|error| door::raise(py, "box_pleats_finished", &error))?;
    (
        answer[0],
        answer[1],
        answer[2] as u64,
        answer[3],
        answer[4],
        answer[5],
        answer[6],
        answer[7],
        answer[8] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::tier::breadths`.
#[allow(non_camel_case_types)]
struct breadths {}
impl Scalar<3, 3> for breadths {
    const TYPES: [Type; 3] = [Type::Count, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 1000000.0],
        [1.0, 100000.0],
        [0.0, 1000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 3], Error> {
        let [flat, cloth_width, allowance] = given;
        let answer = recloth::tier::breadths(flat, cloth_width, allowance)?;
        Ok([f64::from(answer.count), answer.round, answer.spare])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_breadths<'py>(
    py: Python<'py>,
    flat: f64,
    cloth_width: f64,
    allowance: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = breadths::call([flat, cloth_width, allowance])
        .map_err(|error| door::raise(py, "breadths", &error))?;
    (answer[0] as u64, answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::tape::button_diameter`.
#[allow(non_camel_case_types)]
struct button_diameter {}
impl Scalar<1, 1> for button_diameter {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 1]> = Some([[1.0, 1000.0]]);
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [lines] = given;
        let answer = recloth::tape::button_diameter(lines)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_button_diameter<'py>(py: Python<'py>, lines: f64) -> PyResult<Bound<'py, PyAny>> {
    let answer = button_diameter::call([lines])
        .map_err(|error| door::raise(py, "button_diameter", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::closure::button_for_hole`.
#[allow(non_camel_case_types)]
struct button_for_hole {}
impl Scalar<3, 2> for button_for_hole {
    const TYPES: [Type; 2] = [Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 300.0],
        [0.0, 100.0],
        [0.0, 300.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 2], Error> {
        let [slit, thickness, start] = given;
        let answer = recloth::closure::button_for_hole(slit, thickness, start)?;
        Ok([answer.diameter, answer.creep])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_button_for_hole<'py>(
    py: Python<'py>,
    slit: f64,
    thickness: f64,
    start: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = button_for_hole::call([slit, thickness, start])
        .map_err(|error| door::raise(py, "button_for_hole", &error))?;
    (answer[0], answer[1]).into_bound_py_any(py)
}
/// `recloth::fastening::button_for_stand`.
#[allow(non_camel_case_types)]
struct button_for_stand {}
impl Scalar<2, 1> for button_for_stand {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 600.0], [0.5, 3.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [extension, share] = given;
        let answer = recloth::fastening::button_for_stand(extension, share)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_button_for_stand<'py>(
    py: Python<'py>,
    extension: f64,
    share: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = button_for_stand::call([extension, share])
        .map_err(|error| door::raise(py, "button_for_stand", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::closure::button_loop`.
#[allow(non_camel_case_types)]
struct button_loop {}
impl Scalar<7, 3> for button_loop {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 7]> = None;
    #[inline]
    fn call(given: [f64; 7]) -> Result<[f64; 3], Error> {
        let [diameter, thickness, cord, gap, stretch, seam, shape] = given;
        let (shape, shape_bad) = read_button_shape("shape", shape);
        let answer = door::settle(
            recloth::closure::button_loop(
                diameter,
                thickness,
                cord,
                gap,
                stretch,
                seam,
                shape,
            ),
            &["diameter", "thickness", "cord", "gap", "stretch", "seam", "shape"],
            &[shape_bad],
        )?;
        Ok([answer.visible, answer.cut, answer.cautions as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_button_loop<'py>(
    py: Python<'py>,
    diameter: f64,
    thickness: f64,
    cord: f64,
    gap: f64,
    stretch: f64,
    seam: f64,
    shape: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = button_loop::call([
            diameter,
            thickness,
            cord,
            gap,
            stretch,
            seam,
            shape,
        ])
        .map_err(|error| door::raise(py, "button_loop", &error))?;
    (answer[0], answer[1], answer[2] as u64).into_bound_py_any(py)
}
/// `recloth::fastening::button_stand`.
#[allow(non_camel_case_types)]
struct button_stand {}
impl Scalar<2, 3> for button_stand {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 200.0], [0.5, 3.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 3], Error> {
        let [diameter, share] = given;
        let answer = recloth::fastening::button_stand(diameter, share)?;
        Ok([answer.extension, answer.past_rim, answer.overlap])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_button_stand<'py>(
    py: Python<'py>,
    diameter: f64,
    share: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = button_stand::call([diameter, share])
        .map_err(|error| door::raise(py, "button_stand", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::closure::buttonhole`.
#[allow(non_camel_case_types)]
struct buttonhole {}
impl Scalar<3, 1> for buttonhole {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 200.0],
        [0.0, 100.0],
        [0.0, 20.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [diameter, thickness, ease] = given;
        let answer = recloth::closure::buttonhole(diameter, thickness, ease)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_buttonhole<'py>(
    py: Python<'py>,
    diameter: f64,
    thickness: f64,
    ease: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = buttonhole::call([diameter, thickness, ease])
        .map_err(|error| door::raise(py, "buttonhole", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::sleeve::cap_ease`.
#[allow(non_camel_case_types)]
struct cap_ease {}
impl Scalar<2, 3> for cap_ease {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [1.0, 100000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 3], Error> {
        let [armhole, cap] = given;
        let answer = recloth::sleeve::cap_ease(armhole, cap)?;
        Ok([answer.ease, answer.ease_pct, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_cap_ease<'py>(
    py: Python<'py>,
    armhole: f64,
    cap: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = cap_ease::call([armhole, cap])
        .map_err(|error| door::raise(py, "cap_ease", &error))?;
    (answer[0], answer[1], answer[2] as u64).into_bound_py_any(py)
}
/// `recloth::sleeve::cap_for_ease`.
#[allow(non_camel_case_types)]
struct cap_for_ease {}
impl Scalar<2, 1> for cap_for_ease {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [-20.0, 100.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [armhole, ease_pct] = given;
        let answer = recloth::sleeve::cap_for_ease(armhole, ease_pct)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_cap_for_ease<'py>(
    py: Python<'py>,
    armhole: f64,
    ease_pct: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = cap_for_ease::call([armhole, ease_pct])
        .map_err(|error| door::raise(py, "cap_for_ease", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::sleeve::cap_width_bound`.
#[allow(non_camel_case_types)]
struct cap_width_bound {}
impl Scalar<2, 1> for cap_width_bound {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [0.0, 100000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [cap, height] = given;
        let answer = recloth::sleeve::cap_width_bound(cap, height)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_cap_width_bound<'py>(
    py: Python<'py>,
    cap: f64,
    height: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = cap_width_bound::call([cap, height])
        .map_err(|error| door::raise(py, "cap_width_bound", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::wet::carried_liquor`.
#[allow(non_camel_case_types)]
struct carried_liquor {}
impl Scalar<2, 3> for carried_liquor {
    const TYPES: [Type; 3] = [Type::Number, Type::Bits, Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[0.01, 1000000.0], [0.0, 1000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 3], Error> {
        let [mass_g, pick_up_pct] = given;
        let answer = recloth::wet::carried_liquor(mass_g, pick_up_pct)?;
        Ok([answer.carried_ml, answer.doubts as f64, answer.cautions as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_carried_liquor<'py>(
    py: Python<'py>,
    mass_g: f64,
    pick_up_pct: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = carried_liquor::call([mass_g, pick_up_pct])
        .map_err(|error| door::raise(py, "carried_liquor", &error))?;
    (answer[0], answer[1] as u64, answer[2] as u64).into_bound_py_any(py)
}
/// `recloth::elastic::casing`.
#[allow(non_camel_case_types)]
struct casing {}
impl Scalar<4, 2> for casing {
    const TYPES: [Type; 2] = [Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [1.0, 500.0],
        [0.0, 100.0],
        [0.0, 100.0],
        [0.0, 500.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 2], Error> {
        let [width, ease, turn_in, heading] = given;
        let answer = recloth::elastic::casing(width, ease, turn_in, heading)?;
        Ok([answer.depth, answer.allowance])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_casing<'py>(
    py: Python<'py>,
    width: f64,
    ease: f64,
    turn_in: f64,
    heading: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = casing::call([width, ease, turn_in, heading])
        .map_err(|error| door::raise(py, "casing", &error))?;
    (answer[0], answer[1]).into_bound_py_any(py)
}
/// `recloth::colour::ciede2000`.
#[allow(non_camel_case_types)]
struct ciede2000 {}
impl Scalar<6, 1> for ciede2000 {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 6]> = Some([
        [0.0, 100.0],
        [-200.0, 200.0],
        [-200.0, 200.0],
        [0.0, 100.0],
        [-200.0, 200.0],
        [-200.0, 200.0],
    ]);
    #[inline]
    fn call(given: [f64; 6]) -> Result<[f64; 1], Error> {
        let [l1, a1, b1, l2, a2, b2] = given;
        let answer = recloth::colour::ciede2000(l1, a1, b1, l2, a2, b2)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_ciede2000<'py>(
    py: Python<'py>,
    l1: f64,
    a1: f64,
    b1: f64,
    l2: f64,
    a2: f64,
    b2: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = ciede2000::call([l1, a1, b1, l2, a2, b2])
        .map_err(|error| door::raise(py, "ciede2000", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::skirt::circle_skirt`.
#[allow(non_camel_case_types)]
struct circle_skirt {}
impl Scalar<3, 4> for circle_skirt {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 100000.0],
        [0.0, 100000.0],
        [0.01, 4.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [waist, length, fraction] = given;
        let answer = recloth::skirt::circle_skirt(waist, length, fraction)?;
        Ok([
            answer.waist_radius,
            answer.hem_radius,
            answer.hem_length,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_circle_skirt<'py>(
    py: Python<'py>,
    waist: f64,
    length: f64,
    fraction: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = circle_skirt::call([waist, length, fraction])
        .map_err(|error| door::raise(py, "circle_skirt", &error))?;
    (answer[0], answer[1], answer[2], answer[3] as u64).into_bound_py_any(py)
}
/// `recloth::skirt::circle_skirt_fraction`.
#[allow(non_camel_case_types)]
struct circle_skirt_fraction {}
impl Scalar<4, 8> for circle_skirt_fraction {
    const TYPES: [Type; 8] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 8], Error> {
        let [waist, length, cloth_width, pieces] = given;
        let (pieces, pieces_bad) = door::count("pieces", pieces, 1);
        let answer = door::settle(
            recloth::skirt::circle_skirt_fraction(waist, length, cloth_width, pieces),
            &["waist", "length", "cloth_width", "pieces"],
            &[pieces_bad],
        )?;
        Ok([
            answer.fraction,
            answer.length,
            answer.waist_radius,
            answer.hem_radius,
            answer.hem_length,
            answer.piece_angle_deg,
            answer.cloth_length,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_circle_skirt_fraction<'py>(
    py: Python<'py>,
    waist: f64,
    length: f64,
    cloth_width: f64,
    #[pyo3(from_py_with = door::number)]
    pieces: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = circle_skirt_fraction::call([waist, length, cloth_width, pieces])
        .map_err(|error| door::raise(py, "circle_skirt_fraction", &error))?;
    (
        answer[0],
        answer[1],
        answer[2],
        answer[3],
        answer[4],
        answer[5],
        answer[6],
        answer[7] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::skirt::circle_skirt_longest`.
#[allow(non_camel_case_types)]
struct circle_skirt_longest {}
impl Scalar<4, 8> for circle_skirt_longest {
    const TYPES: [Type; 8] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 8], Error> {
        let [waist, fraction, cloth_width, pieces] = given;
        let (pieces, pieces_bad) = door::count("pieces", pieces, 1);
        let answer = door::settle(
            recloth::skirt::circle_skirt_longest(waist, fraction, cloth_width, pieces),
            &["waist", "fraction", "cloth_width", "pieces"],
            &[pieces_bad],
        )?;
        Ok([
            answer.fraction,
            answer.length,
            answer.waist_radius,
            answer.hem_radius,
            answer.hem_length,
            answer.piece_angle_deg,
            answer.cloth_length,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_circle_skirt_longest<'py>(
    py: Python<'py>,
    waist: f64,
    fraction: f64,
    cloth_width: f64,
    #[pyo3(from_py_with = door::number)]
    pieces: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = circle_skirt_longest::call([waist, fraction, cloth_width, pieces])
        .map_err(|error| door::raise(py, "circle_skirt_longest", &error))?;
    (
        answer[0],
        answer[1],
        answer[2],
        answer[3],
        answer[4],
        answer[5],
        answer[6],
        answer[7] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::quantity::cloth_mass`.
#[allow(non_camel_case_types)]
struct cloth_mass {}
impl Scalar<3, 1> for cloth_mass {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 10000000.0],
        [0.0, 100000.0],
        [0.1, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [length, width, gsm] = given;
        let answer = recloth::quantity::cloth_mass(length, width, gsm)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_cloth_mass<'py>(
    py: Python<'py>,
    length: f64,
    width: f64,
    gsm: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = cloth_mass::call([length, width, gsm])
        .map_err(|error| door::raise(py, "cloth_mass", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::quantity::cloth_to_buy`.
#[allow(non_camel_case_types)]
struct cloth_to_buy {}
impl Scalar<4, 1> for cloth_to_buy {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [0.0, 1000000.0],
        [0.0, 10000.0],
        [0.0, 100000.0],
        [1.0, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 1], Error> {
        let [length, repeat, extra, graduation] = given;
        let answer = recloth::quantity::cloth_to_buy(length, repeat, extra, graduation)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_cloth_to_buy<'py>(
    py: Python<'py>,
    length: f64,
    repeat: f64,
    extra: f64,
    graduation: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = cloth_to_buy::call([length, repeat, extra, graduation])
        .map_err(|error| door::raise(py, "cloth_to_buy", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::fibre::component_check`.
#[allow(non_camel_case_types)]
struct component_check {}
impl Scalar<6, 4> for component_check {
    const TYPES: [Type; 4] = [Type::Count, Type::Count, Type::Bits, Type::Bits];
    const RANGES: Option<[[f64; 2]; 6]> = None;
    #[inline]
    fn call(given: [f64; 6]) -> Result<[f64; 4], Error> {
        let [fibre, finish, swatch, bath, temperature_c, minutes] = given;
        let (fibre, fibre_bad) = read_fibre("fibre", fibre);
        let (finish, finish_bad) = read_finish("finish", finish);
        let (swatch, swatch_bad) = read_swatch("swatch", swatch);
        let (bath, bath_bad) = read_bath("bath", bath);
        let answer = door::settle(
            recloth::fibre::component_check(
                fibre,
                finish,
                swatch,
                bath,
                temperature_c,
                minutes,
            ),
            &["fibre", "finish", "swatch", "bath", "temperature_c", "minutes"],
            &[fibre_bad, finish_bad, swatch_bad, bath_bad],
        )?;
        Ok([
            f64::from(answer.bears),
            f64::from(answer.colour),
            answer.doubts as f64,
            answer.cautions as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_component_check<'py>(
    py: Python<'py>,
    fibre: f64,
    finish: f64,
    swatch: f64,
    bath: f64,
    temperature_c: f64,
    minutes: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = component_check::call([
            fibre,
            finish,
            swatch,
            bath,
            temperature_c,
            minutes,
        ])
        .map_err(|error| door::raise(py, "component_check", &error))?;
    (answer[0] as u64, answer[1] as u64, answer[2] as u64, answer[3] as u64)
        .into_bound_py_any(py)
}
/// `recloth::shade::cover_mark`.
#[allow(non_camel_case_types)]
struct cover_mark {}
impl Scalar<3, 5> for cover_mark {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.001, 1.0],
        [0.001, 1.0],
        [0.01, 50.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 5], Error> {
        let [ground, mark, limit] = given;
        let answer = recloth::shade::cover_mark(ground, mark, limit)?;
        Ok([
            answer.now,
            answer.depth,
            answer.ground_after,
            answer.mark_after,
            answer.after,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_cover_mark<'py>(
    py: Python<'py>,
    ground: f64,
    mark: f64,
    limit: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = cover_mark::call([ground, mark, limit])
        .map_err(|error| door::raise(py, "cover_mark", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4]).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_curved_band<'py>(
    py: Python<'py>,
    lengths: PyReadonlyArray1<'py, f64>,
    depth: f64,
    top: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let lengths = lengths.as_slice()?;
    let mut tops = vec![0.0; door::room(lengths.len(), 0, usize::MAX)];
    let answer = recloth::band::curved_band(lengths, depth, top, &mut tops)
        .map_err(|error| door::raise(py, "curved_band", &error))?;
    (
        tops.into_pyarray(py),
        answer.inner_radius,
        answer.outer_radius,
        answer.angle_deg,
        answer.sagitta,
    )
        .into_bound_py_any(py)
}
/// `recloth::binding::curved_binding`.
#[allow(non_camel_case_types)]
struct curved_binding {}
impl Scalar<4, 3> for curved_binding {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 3], Error> {
        let [edge, radius, finished, curve] = given;
        let (curve, curve_bad) = read_edge_curve("curve", curve);
        let answer = door::settle(
            recloth::binding::curved_binding(edge, radius, finished, curve),
            &["edge", "radius", "finished", "curve"],
            &[curve_bad],
        )?;
        Ok([answer.seam, answer.stretch_pct, answer.width_pct])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_curved_binding<'py>(
    py: Python<'py>,
    edge: f64,
    radius: f64,
    finished: f64,
    curve: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = curved_binding::call([edge, radius, finished, curve])
        .map_err(|error| door::raise(py, "curved_binding", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::cloth::cut_for_change`.
#[allow(non_camel_case_types)]
struct cut_for_change {}
impl Scalar<2, 3> for cut_for_change {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[0.0, 1000000.0], [-90.0, 100.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 3], Error> {
        let [finished, change_pct] = given;
        let answer = recloth::cloth::cut_for_change(finished, change_pct)?;
        Ok([answer.cut, answer.added, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_cut_for_change<'py>(
    py: Python<'py>,
    finished: f64,
    change_pct: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = cut_for_change::call([finished, change_pct])
        .map_err(|error| door::raise(py, "cut_for_change", &error))?;
    (answer[0], answer[1], answer[2] as u64).into_bound_py_any(py)
}
/// `recloth::seam::cut_state`.
#[allow(non_camel_case_types)]
struct cut_state {}
impl Scalar<3, 2> for cut_state {
    const TYPES: [Type; 2] = [Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 2], Error> {
        let [drawn, allowance, cut_edges] = given;
        let (cut_edges, cut_edges_bad) = door::count("cut_edges", cut_edges, 0);
        let answer = door::settle(
            recloth::seam::cut_state(drawn, allowance, cut_edges),
            &["drawn", "allowance", "cut_edges"],
            &[cut_edges_bad],
        )?;
        Ok([answer.finished, answer.cut])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_cut_state<'py>(
    py: Python<'py>,
    drawn: f64,
    allowance: f64,
    #[pyo3(from_py_with = door::number)]
    cut_edges: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = cut_state::call([drawn, allowance, cut_edges])
        .map_err(|error| door::raise(py, "cut_state", &error))?;
    (answer[0], answer[1]).into_bound_py_any(py)
}
/// `recloth::dart::dart`.
#[allow(non_camel_case_types)]
struct dart {}
impl Scalar<2, 3> for dart {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[0.0, 10000.0], [1.0, 10000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 3], Error> {
        let [intake, length] = given;
        let answer = recloth::dart::dart(intake, length)?;
        Ok([answer.leg, answer.angle_deg, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_dart<'py>(
    py: Python<'py>,
    intake: f64,
    length: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = dart::call([intake, length])
        .map_err(|error| door::raise(py, "dart", &error))?;
    (answer[0], answer[1], answer[2] as u64).into_bound_py_any(py)
}
/// `recloth::dart::dart_equivalent`.
#[allow(non_camel_case_types)]
struct dart_equivalent {}
impl Scalar<3, 4> for dart_equivalent {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [intake, finished, tucks] = given;
        let (tucks, tucks_bad) = door::count("tucks", tucks, 1);
        let answer = door::settle(
            recloth::dart::dart_equivalent(intake, finished, tucks),
            &["intake", "finished", "tucks"],
            &[tucks_bad],
        )?;
        Ok([
            answer.ease_pct,
            answer.gather_ratio,
            answer.tuck_depth,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_dart_equivalent<'py>(
    py: Python<'py>,
    intake: f64,
    finished: f64,
    #[pyo3(from_py_with = door::number)]
    tucks: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = dart_equivalent::call([intake, finished, tucks])
        .map_err(|error| door::raise(py, "dart_equivalent", &error))?;
    (answer[0], answer[1], answer[2], answer[3] as u64).into_bound_py_any(py)
}
/// `recloth::dart::dart_from_gape`.
#[allow(non_camel_case_types)]
struct dart_from_gape {}
impl Scalar<3, 2> for dart_from_gape {
    const TYPES: [Type; 2] = [Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 10000.0],
        [1.0, 10000.0],
        [1.0, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 2], Error> {
        let [gape, gape_distance, dart_leg] = given;
        let answer = recloth::dart::dart_from_gape(gape, gape_distance, dart_leg)?;
        Ok([answer.intake, answer.angle_deg])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_dart_from_gape<'py>(
    py: Python<'py>,
    gape: f64,
    gape_distance: f64,
    dart_leg: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = dart_from_gape::call([gape, gape_distance, dart_leg])
        .map_err(|error| door::raise(py, "dart_from_gape", &error))?;
    (answer[0], answer[1]).into_bound_py_any(py)
}
/// `recloth::dart::dart_in_panel`.
#[allow(non_camel_case_types)]
struct dart_in_panel {}
impl Scalar<5, 5> for dart_in_panel {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 5]> = None;
    #[inline]
    fn call(given: [f64; 5]) -> Result<[f64; 5], Error> {
        let [panel_width, wanted_width, count, largest_intake, length] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::dart::dart_in_panel(
                panel_width,
                wanted_width,
                count,
                largest_intake,
                length,
            ),
            &["panel_width", "wanted_width", "count", "largest_intake", "length"],
            &[count_bad],
        )?;
        Ok([
            answer.intake_each,
            answer.leftover,
            answer.leg,
            answer.kink_deg,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_dart_in_panel<'py>(
    py: Python<'py>,
    panel_width: f64,
    wanted_width: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
    largest_intake: f64,
    length: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = dart_in_panel::call([
            panel_width,
            wanted_width,
            count,
            largest_intake,
            length,
        ])
        .map_err(|error| door::raise(py, "dart_in_panel", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4] as u64).into_bound_py_any(py)
}
/// `recloth::dart::dart_turned`.
#[allow(non_camel_case_types)]
struct dart_turned {}
impl Scalar<3, 1> for dart_turned {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 10000.0],
        [1.0, 10000.0],
        [1.0, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [intake, leg, new_leg] = given;
        let answer = recloth::dart::dart_turned(intake, leg, new_leg)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_dart_turned<'py>(
    py: Python<'py>,
    intake: f64,
    leg: f64,
    new_leg: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = dart_turned::call([intake, leg, new_leg])
        .map_err(|error| door::raise(py, "dart_turned", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::dart::dart_width_at`.
#[allow(non_camel_case_types)]
struct dart_width_at {}
impl Scalar<3, 1> for dart_width_at {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 10000.0],
        [1.0, 10000.0],
        [0.0, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [intake, leg, distance] = given;
        let answer = recloth::dart::dart_width_at(intake, leg, distance)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_dart_width_at<'py>(
    py: Python<'py>,
    intake: f64,
    leg: f64,
    distance: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = dart_width_at::call([intake, leg, distance])
        .map_err(|error| door::raise(py, "dart_width_at", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::seam::deepest_hem`.
#[allow(non_camel_case_types)]
struct deepest_hem {}
impl Scalar<2, 1> for deepest_hem {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 1000000.0], [0.0, 100.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [radius, excess_pct] = given;
        let answer = recloth::seam::deepest_hem(radius, excess_pct)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_deepest_hem<'py>(
    py: Python<'py>,
    radius: f64,
    excess_pct: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = deepest_hem::call([radius, excess_pct])
        .map_err(|error| door::raise(py, "deepest_hem", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::cloth::dimensional_change`.
#[allow(non_camel_case_types)]
struct dimensional_change {}
impl Scalar<2, 1> for dimensional_change {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 1000000.0], [1.0, 1000000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [before, after] = given;
        let answer = recloth::cloth::dimensional_change(before, after)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_dimensional_change<'py>(
    py: Python<'py>,
    before: f64,
    after: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = dimensional_change::call([before, after])
        .map_err(|error| door::raise(py, "dimensional_change", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::dart::double_dart`.
#[allow(non_camel_case_types)]
struct double_dart {}
impl Scalar<3, 6> for double_dart {
    const TYPES: [Type; 6] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 10000.0],
        [1.0, 10000.0],
        [1.0, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 6], Error> {
        let [intake, upper, lower] = given;
        let answer = recloth::dart::double_dart(intake, upper, lower)?;
        Ok([
            answer.upper_leg,
            answer.lower_leg,
            answer.upper_angle_deg,
            answer.lower_angle_deg,
            answer.bend_deg,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_double_dart<'py>(
    py: Python<'py>,
    intake: f64,
    upper: f64,
    lower: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = double_dart::call([intake, upper, lower])
        .map_err(|error| door::raise(py, "double_dart", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4], answer[5] as u64)
        .into_bound_py_any(py)
}
/// `recloth::elastic::elastic`.
#[allow(non_camel_case_types)]
struct elastic {}
impl Scalar<4, 6> for elastic {
    const TYPES: [Type; 6] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [1.0, 100000.0],
        [1.0, 100000.0],
        [0.0, 10000.0],
        [0.0, 1000.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 6], Error> {
        let [girth, widest, shorter, overlap] = given;
        let answer = recloth::elastic::elastic(girth, widest, shorter, overlap)?;
        Ok([
            answer.round,
            answer.cut,
            answer.worn_pct,
            answer.passing_pct,
            answer.doubts as f64,
            answer.cautions as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_elastic<'py>(
    py: Python<'py>,
    girth: f64,
    widest: f64,
    shorter: f64,
    overlap: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = elastic::call([girth, widest, shorter, overlap])
        .map_err(|error| door::raise(py, "elastic", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4] as u64, answer[5] as u64)
        .into_bound_py_any(py)
}
/// `recloth::closure::even_spacing`.
#[allow(non_camel_case_types)]
struct even_spacing {}
impl Scalar<3, 1> for even_spacing {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [first, last, count] = given;
        let (count, count_bad) = door::count("count", count, 2);
        let answer = door::settle(
            recloth::closure::even_spacing(first, last, count),
            &["first", "last", "count"],
            &[count_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_even_spacing<'py>(
    py: Python<'py>,
    first: f64,
    last: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = even_spacing::call([first, last, count])
        .map_err(|error| door::raise(py, "even_spacing", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::gore::five_gores`.
#[allow(non_camel_case_types)]
struct five_gores {}
impl Scalar<2, 7> for five_gores {
    const TYPES: [Type; 7] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [1.0, 100000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 7], Error> {
        let [waist, hip] = given;
        let answer = recloth::gore::five_gores(waist, hip)?;
        Ok([
            answer.front_waist,
            answer.side_waist,
            answer.back_waist,
            answer.front_hip,
            answer.side_hip,
            answer.back_hip,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_five_gores<'py>(
    py: Python<'py>,
    waist: f64,
    hip: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = five_gores::call([waist, hip])
        .map_err(|error| door::raise(py, "five_gores", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4], answer[5], answer[6] as u64)
        .into_bound_py_any(py)
}
/// `recloth::tier::flounce`.
#[allow(non_camel_case_types)]
struct flounce {}
impl Scalar<4, 5> for flounce {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
    ];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 5], Error> {
        let [edge, depth, rings, allowance] = given;
        let (rings, rings_bad) = door::count("rings", rings, 1);
        let answer = door::settle(
            recloth::tier::flounce(edge, depth, rings, allowance),
            &["edge", "depth", "rings", "allowance"],
            &[rings_bad],
        )?;
        Ok([
            answer.inner_radius,
            answer.outer_radius,
            answer.hem,
            answer.ratio,
            answer.square,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_flounce<'py>(
    py: Python<'py>,
    edge: f64,
    depth: f64,
    #[pyo3(from_py_with = door::number)]
    rings: f64,
    allowance: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = flounce::call([edge, depth, rings, allowance])
        .map_err(|error| door::raise(py, "flounce", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4]).into_bound_py_any(py)
}
/// `recloth::band::folded_band`.
#[allow(non_camel_case_types)]
struct folded_band {}
impl Scalar<4, 3> for folded_band {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [1.0, 10000.0],
        [0.0, 1000.0],
        [0.0, 100.0],
        [0.0, 100.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 3], Error> {
        let [depth, allowance, turn, past] = given;
        let answer = recloth::band::folded_band(depth, allowance, turn, past)?;
        Ok([answer.cut_width, answer.fold_line, answer.inner])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_folded_band<'py>(
    py: Python<'py>,
    depth: f64,
    allowance: f64,
    turn: f64,
    past: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = folded_band::call([depth, allowance, turn, past])
        .map_err(|error| door::raise(py, "folded_band", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_format_length<'py>(
    py: Python<'py>,
    length: f64,
    style: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let (style, style_bad) = read_style("style", style);
    let answer = door::settle(
            recloth::tape::format_length(length, style),
            &["length", "style"],
            &[style_bad],
        )
        .map_err(|error| door::raise(py, "format_length", &error))?;
    answer.as_str().into_bound_py_any(py)
}
/// `recloth::body::front_back_doubts`.
#[allow(non_camel_case_types)]
struct front_back_doubts {}
impl Scalar<2, 1> for front_back_doubts {
    const TYPES: [Type; 1] = [Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [1.0, 100000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [front, back] = given;
        let answer = recloth::body::front_back_doubts(front, back)?;
        Ok([answer as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_front_back_doubts<'py>(
    py: Python<'py>,
    front: f64,
    back: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = front_back_doubts::call([front, back])
        .map_err(|error| door::raise(py, "front_back_doubts", &error))?;
    (answer[0] as u64).into_bound_py_any(py)
}
/// `recloth::arc::frustum`.
#[allow(non_camel_case_types)]
struct frustum {}
impl Scalar<3, 5> for frustum {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 100000.0],
        [0.0, 100000.0],
        [0.0, 100000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 5], Error> {
        let [lower_diameter, upper_diameter, height] = given;
        let answer = recloth::arc::frustum(lower_diameter, upper_diameter, height)?;
        Ok([
            answer.slant,
            answer.inner_radius,
            answer.outer_radius,
            answer.angle_deg,
            answer.area_mm2,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_frustum<'py>(
    py: Python<'py>,
    lower_diameter: f64,
    upper_diameter: f64,
    height: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = frustum::call([lower_diameter, upper_diameter, height])
        .map_err(|error| door::raise(py, "frustum", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4]).into_bound_py_any(py)
}
/// `recloth::fullness::gather_ratio`.
#[allow(non_camel_case_types)]
struct gather_ratio {}
impl Scalar<2, 4> for gather_ratio {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 20000000.0], [1.0, 1000000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 4], Error> {
        let [flat, finished] = given;
        let answer = recloth::fullness::gather_ratio(flat, finished)?;
        Ok([answer.flat, answer.taken_up, answer.ratio, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_gather_ratio<'py>(
    py: Python<'py>,
    flat: f64,
    finished: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = gather_ratio::call([flat, finished])
        .map_err(|error| door::raise(py, "gather_ratio", &error))?;
    (answer[0], answer[1], answer[2], answer[3] as u64).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_gather_sections<'py>(
    py: Python<'py>,
    lengths: PyReadonlyArray1<'py, f64>,
    flat: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let lengths = lengths.as_slice()?;
    let mut flats = vec![0.0; door::room(lengths.len(), 0, usize::MAX)];
    let answer = recloth::fullness::gather_sections(lengths, flat, &mut flats)
        .map_err(|error| door::raise(py, "gather_sections", &error))?;
    (flats.into_pyarray(py), answer.finished, answer.ratio, answer.doubts)
        .into_bound_py_any(py)
}
/// `recloth::fullness::gathers`.
#[allow(non_camel_case_types)]
struct gathers {}
impl Scalar<2, 4> for gathers {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 1000000.0], [1.0, 20.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 4], Error> {
        let [finished, ratio] = given;
        let answer = recloth::fullness::gathers(finished, ratio)?;
        Ok([answer.flat, answer.taken_up, answer.ratio, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_gathers<'py>(
    py: Python<'py>,
    finished: f64,
    ratio: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = gathers::call([finished, ratio])
        .map_err(|error| door::raise(py, "gathers", &error))?;
    (answer[0], answer[1], answer[2], answer[3] as u64).into_bound_py_any(py)
}
/// `recloth::body::girth_doubts`.
#[allow(non_camel_case_types)]
struct girth_doubts {}
impl Scalar<1, 1> for girth_doubts {
    const TYPES: [Type; 1] = [Type::Bits];
    const RANGES: Option<[[f64; 2]; 1]> = Some([[1.0, 100000.0]]);
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [girth] = given;
        let answer = recloth::body::girth_doubts(girth)?;
        Ok([answer as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_girth_doubts<'py>(py: Python<'py>, girth: f64) -> PyResult<Bound<'py, PyAny>> {
    let answer = girth_doubts::call([girth])
        .map_err(|error| door::raise(py, "girth_doubts", &error))?;
    (answer[0] as u64).into_bound_py_any(py)
}
/// `recloth::gore::godet`.
#[allow(non_camel_case_types)]
struct godet {}
impl Scalar<3, 4> for godet {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [length, hem, count] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::gore::godet(length, hem, count),
            &["length", "hem", "count"],
            &[count_bad],
        )?;
        Ok([answer.angle_deg, answer.chord, answer.sagitta, answer.added])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_godet<'py>(
    py: Python<'py>,
    length: f64,
    hem: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = godet::call([length, hem, count])
        .map_err(|error| door::raise(py, "godet", &error))?;
    (answer[0], answer[1], answer[2], answer[3]).into_bound_py_any(py)
}
/// `recloth::gore::gore`.
#[allow(non_camel_case_types)]
struct gore {}
impl Scalar<6, 7> for gore {
    const TYPES: [Type; 7] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 6]> = None;
    #[inline]
    fn call(given: [f64; 6]) -> Result<[f64; 7], Error> {
        let [waist, hip, hem, length, hip_depth, count] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::gore::gore(waist, hip, hem, length, hip_depth, count),
            &["waist", "hip", "hem", "length", "hip_depth", "count"],
            &[count_bad],
        )?;
        Ok([
            answer.waist_width,
            answer.hip_width,
            answer.hem_width,
            answer.side_length,
            answer.flare_deg,
            answer.hem_rise,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_gore<'py>(
    py: Python<'py>,
    waist: f64,
    hip: f64,
    hem: f64,
    length: f64,
    hip_depth: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = gore::call([waist, hip, hem, length, hip_depth, count])
        .map_err(|error| door::raise(py, "gore", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4], answer[5], answer[6] as u64)
        .into_bound_py_any(py)
}
/// `recloth::quantity::gsm_from_ounces`.
#[allow(non_camel_case_types)]
struct gsm_from_ounces {}
impl Scalar<1, 1> for gsm_from_ounces {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 1]> = Some([[0.01, 1000.0]]);
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [ounces] = given;
        let answer = recloth::quantity::gsm_from_ounces(ounces)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_gsm_from_ounces<'py>(
    py: Python<'py>,
    ounces: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = gsm_from_ounces::call([ounces])
        .map_err(|error| door::raise(py, "gsm_from_ounces", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::gore::gusset`.
#[allow(non_camel_case_types)]
struct gusset {}
impl Scalar<3, 4> for gusset {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 10000.0],
        [0.1, 20000.0],
        [0.0, 100.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [slit, added, allowance] = given;
        let answer = recloth::gore::gusset(slit, added, allowance)?;
        Ok([answer.angle_deg, answer.long_diagonal, answer.cut_long, answer.cut_short])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_gusset<'py>(
    py: Python<'py>,
    slit: f64,
    added: f64,
    allowance: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = gusset::call([slit, added, allowance])
        .map_err(|error| door::raise(py, "gusset", &error))?;
    (answer[0], answer[1], answer[2], answer[3]).into_bound_py_any(py)
}
/// `recloth::neck::head_opening`.
#[allow(non_camel_case_types)]
struct head_opening {}
impl Scalar<4, 3> for head_opening {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [1.0, 100000.0],
        [1.0, 100000.0],
        [0.0, 10000.0],
        [0.0, 1000.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 3], Error> {
        let [head, neck, slit, ease] = given;
        let answer = recloth::neck::head_opening(head, neck, slit, ease)?;
        Ok([answer.least_slit, answer.spare, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_head_opening<'py>(
    py: Python<'py>,
    head: f64,
    neck: f64,
    slit: f64,
    ease: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = head_opening::call([head, neck, slit, ease])
        .map_err(|error| door::raise(py, "head_opening", &error))?;
    (answer[0], answer[1], answer[2] as u64).into_bound_py_any(py)
}
/// `recloth::alteration::hem_let_down`.
#[allow(non_camel_case_types)]
struct hem_let_down {}
impl Scalar<5, 5> for hem_let_down {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
    ];
    const RANGES: Option<[[f64; 2]; 5]> = Some([
        [0.0, 1000.0],
        [0.0, 1000.0],
        [0.0, 2000.0],
        [0.0, 1000.0],
        [0.0, 1000.0],
    ]);
    #[inline]
    fn call(given: [f64; 5]) -> Result<[f64; 5], Error> {
        let [hem_depth, turn_in, lowered_by, keep, seam] = given;
        let answer = recloth::alteration::hem_let_down(
            hem_depth,
            turn_in,
            lowered_by,
            keep,
            seam,
        )?;
        Ok([
            answer.left,
            answer.crease,
            answer.stitching,
            answer.longest,
            answer.longest_faced,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_hem_let_down<'py>(
    py: Python<'py>,
    hem_depth: f64,
    turn_in: f64,
    lowered_by: f64,
    keep: f64,
    seam: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = hem_let_down::call([hem_depth, turn_in, lowered_by, keep, seam])
        .map_err(|error| door::raise(py, "hem_let_down", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4]).into_bound_py_any(py)
}
/// `recloth::seam::hem_on_curve`.
#[allow(non_camel_case_types)]
struct hem_on_curve {}
impl Scalar<3, 3> for hem_on_curve {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 1000000.0],
        [0.0, 10000.0],
        [1.0, 1000000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 3], Error> {
        let [radius, depth, hem] = given;
        let answer = recloth::seam::hem_on_curve(radius, depth, hem)?;
        Ok([answer.excess_pct, answer.excess, answer.raw_edge])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_hem_on_curve<'py>(
    py: Python<'py>,
    radius: f64,
    depth: f64,
    hem: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = hem_on_curve::call([radius, depth, hem])
        .map_err(|error| door::raise(py, "hem_on_curve", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::body::hip_waist_drop`.
#[allow(non_camel_case_types)]
struct hip_waist_drop {}
impl Scalar<2, 2> for hip_waist_drop {
    const TYPES: [Type; 2] = [Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [1.0, 100000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 2], Error> {
        let [hip, waist] = given;
        let answer = recloth::body::hip_waist_drop(hip, waist)?;
        Ok([answer.drop, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_hip_waist_drop<'py>(
    py: Python<'py>,
    hip: f64,
    waist: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = hip_waist_drop::call([hip, waist])
        .map_err(|error| door::raise(py, "hip_waist_drop", &error))?;
    (answer[0], answer[1] as u64).into_bound_py_any(py)
}
/// `recloth::closure::holes_left`.
#[allow(non_camel_case_types)]
struct holes_left {}
impl Scalar<3, 4> for holes_left {
    const TYPES: [Type; 4] = [Type::Count, Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 100000.0],
        [0.0, 100000.0],
        [1.0, 100000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [edge, first, pitch] = given;
        let answer = recloth::closure::holes_left(edge, first, pitch)?;
        Ok([f64::from(answer.count), answer.last, answer.to_end, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_holes_left<'py>(
    py: Python<'py>,
    edge: f64,
    first: f64,
    pitch: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = holes_left::call([edge, first, pitch])
        .map_err(|error| door::raise(py, "holes_left", &error))?;
    (answer[0] as u64, answer[1], answer[2], answer[3] as u64).into_bound_py_any(py)
}
/// `recloth::alteration::insert_strip`.
#[allow(non_camel_case_types)]
struct insert_strip {}
impl Scalar<4, 3> for insert_strip {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 3], Error> {
        let [lacking, allowance, strips, place] = given;
        let (strips, strips_bad) = door::count("strips", strips, 1);
        let (place, place_bad) = read_insert_place("place", place);
        let answer = door::settle(
            recloth::alteration::insert_strip(lacking, allowance, strips, place),
            &["lacking", "allowance", "strips", "place"],
            &[strips_bad, place_bad],
        )?;
        Ok([answer.finished, answer.cut_width, answer.cloth])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_insert_strip<'py>(
    py: Python<'py>,
    lacking: f64,
    allowance: f64,
    #[pyo3(from_py_with = door::number)]
    strips: f64,
    place: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = insert_strip::call([lacking, allowance, strips, place])
        .map_err(|error| door::raise(py, "insert_strip", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::shade::k_over_s`.
#[allow(non_camel_case_types)]
struct k_over_s {}
impl Scalar<1, 1> for k_over_s {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 1]> = Some([[0.001, 1.0]]);
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [reflectance] = given;
        let answer = recloth::shade::k_over_s(reflectance)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_k_over_s<'py>(py: Python<'py>, reflectance: f64) -> PyResult<Bound<'py, PyAny>> {
    let answer = k_over_s::call([reflectance])
        .map_err(|error| door::raise(py, "k_over_s", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::fullness::knife_pleats`.
#[allow(non_camel_case_types)]
struct knife_pleats {}
impl Scalar<3, 9> for knife_pleats {
    const TYPES: [Type; 9] = [
        Type::Number,
        Type::Number,
        Type::Count,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 9], Error> {
        let [finished, count, depth] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::fullness::knife_pleats(finished, count, depth),
            &["finished", "count", "depth"],
            &[count_bad],
        )?;
        Ok([
            answer.flat,
            answer.finished,
            f64::from(answer.count),
            answer.show,
            answer.depth,
            answer.intake,
            answer.taken_up,
            answer.ratio,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_knife_pleats<'py>(
    py: Python<'py>,
    finished: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
    depth: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = knife_pleats::call([finished, count, depth])
        .map_err(|error| door::raise(py, "knife_pleats", &error))?;
    (
        answer[0],
        answer[1],
        answer[2] as u64,
        answer[3],
        answer[4],
        answer[5],
        answer[6],
        answer[7],
        answer[8] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::fullness::knife_pleats_count`.
#[allow(non_camel_case_types)]
struct knife_pleats_count {}
impl Scalar<3, 9> for knife_pleats_count {
    const TYPES: [Type; 9] = [
        Type::Number,
        Type::Number,
        Type::Count,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 100000000.0],
        [1.0, 1000000.0],
        [0.1, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 9], Error> {
        let [flat, finished, depth] = given;
        let answer = recloth::fullness::knife_pleats_count(flat, finished, depth)?;
        Ok([
            answer.flat,
            answer.finished,
            f64::from(answer.count),
            answer.show,
            answer.depth,
            answer.intake,
            answer.taken_up,
            answer.ratio,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_knife_pleats_count<'py>(
    py: Python<'py>,
    flat: f64,
    finished: f64,
    depth: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = knife_pleats_count::call([flat, finished, depth])
        .map_err(|error| door::raise(py, "knife_pleats_count", &error))?;
    (
        answer[0],
        answer[1],
        answer[2] as u64,
        answer[3],
        answer[4],
        answer[5],
        answer[6],
        answer[7],
        answer[8] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::fullness::knife_pleats_depth`.
#[allow(non_camel_case_types)]
struct knife_pleats_depth {}
impl Scalar<3, 9> for knife_pleats_depth {
    const TYPES: [Type; 9] = [
        Type::Number,
        Type::Number,
        Type::Count,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 9], Error> {
        let [flat, finished, count] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::fullness::knife_pleats_depth(flat, finished, count),
            &["flat", "finished", "count"],
            &[count_bad],
        )?;
        Ok([
            answer.flat,
            answer.finished,
            f64::from(answer.count),
            answer.show,
            answer.depth,
            answer.intake,
            answer.taken_up,
            answer.ratio,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_knife_pleats_depth<'py>(
    py: Python<'py>,
    flat: f64,
    finished: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = knife_pleats_depth::call([flat, finished, count])
        .map_err(|error| door::raise(py, "knife_pleats_depth", &error))?;
    (
        answer[0],
        answer[1],
        answer[2] as u64,
        answer[3],
        answer[4],
        answer[5],
        answer[6],
        answer[7],
        answer[8] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::fullness::knife_pleats_finished`.
#[allow(non_camel_case_types)]
struct knife_pleats_finished {}
impl Scalar<3, 9> for knife_pleats_finished {
    const TYPES: [Type; 9] = [
        Type::Number,
        Type::Number,
        Type::Count,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 9], Error> {
        let [flat, count, depth] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::fullness::knife_pleats_finished(flat, count, depth),
            &["flat", "count", "depth"],
            &[count_bad],
        )?;
        Ok([
            answer.flat,
            answer.finished,
            f64::from(answer.count),
            answer.show,
            answer.depth,
            answer.intake,
            answer.taken_up,
            answer.ratio,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_knife_pleats_finished<'py>(
    py: Python<'py>,
    flat: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
    depth: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = knife_pleats_finished::call([flat, count, depth])
        .map_err(|error| door::raise(py, "knife_pleats_finished", &error))?;
    (
        answer[0],
        answer[1],
        answer[2] as u64,
        answer[3],
        answer[4],
        answer[5],
        answer[6],
        answer[7],
        answer[8] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::colour::lab_from_srgb`.
#[allow(non_camel_case_types)]
struct lab_from_srgb {}
impl Scalar<3, 3> for lab_from_srgb {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 255.0],
        [0.0, 255.0],
        [0.0, 255.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 3], Error> {
        let [red, green, blue] = given;
        let answer = recloth::colour::lab_from_srgb(red, green, blue)?;
        Ok([answer.l, answer.a, answer.b])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_lab_from_srgb<'py>(
    py: Python<'py>,
    red: f64,
    green: f64,
    blue: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = lab_from_srgb::call([red, green, blue])
        .map_err(|error| door::raise(py, "lab_from_srgb", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::colour::lab_from_xyz`.
#[allow(non_camel_case_types)]
struct lab_from_xyz {}
impl Scalar<5, 3> for lab_from_xyz {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 5]> = Some([
        [0.0, 2.0],
        [0.0, 2.0],
        [0.0, 2.0],
        [0.05, 0.8],
        [0.05, 0.8],
    ]);
    #[inline]
    fn call(given: [f64; 5]) -> Result<[f64; 3], Error> {
        let [x, y, z, white_x, white_y] = given;
        let answer = recloth::colour::lab_from_xyz(x, y, z, white_x, white_y)?;
        Ok([answer.l, answer.a, answer.b])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_lab_from_xyz<'py>(
    py: Python<'py>,
    x: f64,
    y: f64,
    z: f64,
    white_x: f64,
    white_y: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = lab_from_xyz::call([x, y, z, white_x, white_y])
        .map_err(|error| door::raise(py, "lab_from_xyz", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::fastening::lacing`.
#[allow(non_camel_case_types)]
struct lacing {}
impl Scalar<4, 1> for lacing {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 1], Error> {
        let [pairs, pitch, gap, tail] = given;
        let (pairs, pairs_bad) = door::count("pairs", pairs, 1);
        let answer = door::settle(
            recloth::fastening::lacing(pairs, pitch, gap, tail),
            &["pairs", "pitch", "gap", "tail"],
            &[pairs_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_lacing<'py>(
    py: Python<'py>,
    #[pyo3(from_py_with = door::number)]
    pairs: f64,
    pitch: f64,
    gap: f64,
    tail: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = lacing::call([pairs, pitch, gap, tail])
        .map_err(|error| door::raise(py, "lacing", &error))?;
    (answer[0]).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_length_chain<'py>(
    py: Python<'py>,
    lengths: PyReadonlyArray1<'py, f64>,
    factors: PyReadonlyArray1<'py, f64>,
    total: f64,
    unknown: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let lengths = lengths.as_slice()?;
    let factors = factors.as_slice()?;
    let (unknown, unknown_bad) = door::count("unknown", unknown, 0);
    let answer = door::settle(
            recloth::chain::length_chain(lengths, factors, total, unknown),
            &["lengths", "factors", "total", "unknown"],
            &[unknown_bad],
        )
        .map_err(|error| door::raise(py, "length_chain", &error))?;
    (answer.value, answer.plus, answer.minus, answer.worst_per_mm, answer.likely_per_mm)
        .into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_length_chain_shares<'py>(
    py: Python<'py>,
    lengths: PyReadonlyArray1<'py, f64>,
    factors: PyReadonlyArray1<'py, f64>,
    errors: PyReadonlyArray1<'py, f64>,
    total: f64,
    unknown: f64,
    total_error: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let lengths = lengths.as_slice()?;
    let factors = factors.as_slice()?;
    let errors = errors.as_slice()?;
    let (unknown, unknown_bad) = door::count("unknown", unknown, 0);
    let mut parts = vec![0.0; door::room(lengths.len(), 0, usize::MAX)];
    let mut misses = vec![0.0; door::room(lengths.len(), 0, usize::MAX)];
    let answer = door::settle(
            recloth::chain::length_chain_shares(
                lengths,
                factors,
                errors,
                total,
                unknown,
                &mut parts,
                &mut misses,
                total_error,
            ),
            &[
                "lengths",
                "factors",
                "errors",
                "total",
                "unknown",
                "parts",
                "misses",
                "total_error",
            ],
            &[unknown_bad],
        )
        .map_err(|error| door::raise(py, "length_chain_shares", &error))?;
    (
        parts.into_pyarray(py),
        misses.into_pyarray(py),
        answer.value,
        answer.worst,
        answer.likely,
        answer.largest,
        answer.largest_part,
    )
        .into_bound_py_any(py)
}
/// `recloth::alteration::let_out`.
#[allow(non_camel_case_types)]
struct let_out {}
impl Scalar<6, 5> for let_out {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 6]> = None;
    #[inline]
    fn call(given: [f64; 6]) -> Result<[f64; 5], Error> {
        let [garment, body, ease, allowance, edges, keep] = given;
        let (edges, edges_bad) = door::count("edges", edges, 1);
        let answer = door::settle(
            recloth::alteration::let_out(garment, body, ease, allowance, edges, keep),
            &["garment", "body", "ease", "allowance", "edges", "keep"],
            &[edges_bad],
        )?;
        Ok([
            answer.lacking,
            answer.each,
            answer.gained,
            answer.short_by,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_let_out<'py>(
    py: Python<'py>,
    garment: f64,
    body: f64,
    ease: f64,
    allowance: f64,
    #[pyo3(from_py_with = door::number)]
    edges: f64,
    keep: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = let_out::call([garment, body, ease, allowance, edges, keep])
        .map_err(|error| door::raise(py, "let_out", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4] as u64).into_bound_py_any(py)
}
/// `recloth::arc::level_line`.
#[allow(non_camel_case_types)]
struct level_line {}
impl Scalar<3, 4> for level_line {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 1000000.0],
        [0.0, 100000.0],
        [1.0, 100000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [hem_radius, height, hem_chord] = given;
        let answer = recloth::arc::level_line(hem_radius, height, hem_chord)?;
        Ok([answer.radius, answer.chord, answer.sag, answer.length])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_level_line<'py>(
    py: Python<'py>,
    hem_radius: f64,
    height: f64,
    hem_chord: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = level_line::call([hem_radius, height, hem_chord])
        .map_err(|error| door::raise(py, "level_line", &error))?;
    (answer[0], answer[1], answer[2], answer[3]).into_bound_py_any(py)
}
/// `recloth::colour::linear_light`.
#[allow(non_camel_case_types)]
struct linear_light {}
impl Scalar<1, 1> for linear_light {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 1]> = Some([[0.0, 255.0]]);
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [level] = given;
        let answer = recloth::colour::linear_light(level)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_linear_light<'py>(py: Python<'py>, level: f64) -> PyResult<Bound<'py, PyAny>> {
    let answer = linear_light::call([level])
        .map_err(|error| door::raise(py, "linear_light", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::lining::lining_free_length`.
#[allow(non_camel_case_types)]
struct lining_free_length {}
impl Scalar<3, 1> for lining_free_length {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 100000.0],
        [0.0, 10000.0],
        [0.0, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [length, clearance, hem] = given;
        let answer = recloth::lining::lining_free_length(length, clearance, hem)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_lining_free_length<'py>(
    py: Python<'py>,
    length: f64,
    clearance: f64,
    hem: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = lining_free_length::call([length, clearance, hem])
        .map_err(|error| door::raise(py, "lining_free_length", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::lining::lining_length`.
#[allow(non_camel_case_types)]
struct lining_length {}
impl Scalar<3, 5> for lining_length {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 100000.0],
        [0.0, 10000.0],
        [0.0, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 5], Error> {
        let [length, hem_depth, clearance] = given;
        let answer = recloth::lining::lining_length(length, hem_depth, clearance)?;
        Ok([
            answer.seam_to_seam,
            answer.straight,
            answer.spare,
            answer.fold,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_lining_length<'py>(
    py: Python<'py>,
    length: f64,
    hem_depth: f64,
    clearance: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = lining_length::call([length, hem_depth, clearance])
        .map_err(|error| door::raise(py, "lining_length", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4] as u64).into_bound_py_any(py)
}
/// `recloth::lining::lining_width`.
#[allow(non_camel_case_types)]
struct lining_width {}
impl Scalar<4, 1> for lining_width {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [1.0, 100000.0],
        [0.0, 100000.0],
        [0.0, 50.0],
        [0.0, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 1], Error> {
        let [panel, facing, ease_pct, pleat] = given;
        let answer = recloth::lining::lining_width(panel, facing, ease_pct, pleat)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_lining_width<'py>(
    py: Python<'py>,
    panel: f64,
    facing: f64,
    ease_pct: f64,
    pleat: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = lining_width::call([panel, facing, ease_pct, pleat])
        .map_err(|error| door::raise(py, "lining_width", &error))?;
    (answer[0]).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_liquor_shares<'py>(
    py: Python<'py>,
    masses_g: PyReadonlyArray1<'py, f64>,
    pooled_ml: f64,
    ratio: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let masses_g = masses_g.as_slice()?;
    let mut shares_ml = vec![0.0; door::room(masses_g.len(), 0, usize::MAX)];
    let mut waters_ml = vec![0.0; door::room(masses_g.len(), 0, usize::MAX)];
    let answer = recloth::wet::liquor_shares(
            masses_g,
            pooled_ml,
            ratio,
            &mut shares_ml,
            &mut waters_ml,
        )
        .map_err(|error| door::raise(py, "liquor_shares", &error))?;
    (
        shares_ml.into_pyarray(py),
        waters_ml.into_pyarray(py),
        answer.bath_ml,
        answer.water_ml,
        answer.doubts,
        answer.cautions,
    )
        .into_bound_py_any(py)
}
/// `recloth::closure::loop_slack`.
#[allow(non_camel_case_types)]
struct loop_slack {}
impl Scalar<7, 2> for loop_slack {
    const TYPES: [Type; 2] = [Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 7]> = None;
    #[inline]
    fn call(given: [f64; 7]) -> Result<[f64; 2], Error> {
        let [length, diameter, thickness, cord, gap, stretch, shape] = given;
        let (shape, shape_bad) = read_button_shape("shape", shape);
        let answer = door::settle(
            recloth::closure::loop_slack(
                length,
                diameter,
                thickness,
                cord,
                gap,
                stretch,
                shape,
            ),
            &["length", "diameter", "thickness", "cord", "gap", "stretch", "shape"],
            &[shape_bad],
        )?;
        Ok([answer.slack, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_loop_slack<'py>(
    py: Python<'py>,
    length: f64,
    diameter: f64,
    thickness: f64,
    cord: f64,
    gap: f64,
    stretch: f64,
    shape: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = loop_slack::call([
            length,
            diameter,
            thickness,
            cord,
            gap,
            stretch,
            shape,
        ])
        .map_err(|error| door::raise(py, "loop_slack", &error))?;
    (answer[0], answer[1] as u64).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_mix_temperature<'py>(
    py: Python<'py>,
    volumes_ml: PyReadonlyArray1<'py, f64>,
    temperatures_c: PyReadonlyArray1<'py, f64>,
    goods_g: f64,
    goods_temperature_c: f64,
    goods_heat: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let volumes_ml = volumes_ml.as_slice()?;
    let temperatures_c = temperatures_c.as_slice()?;
    let answer = recloth::wet::mix_temperature(
            volumes_ml,
            temperatures_c,
            goods_g,
            goods_temperature_c,
            goods_heat,
        )
        .map_err(|error| door::raise(py, "mix_temperature", &error))?;
    (answer.temperature_c, answer.volume_ml, answer.doubts, answer.cautions)
        .into_bound_py_any(py)
}
/// `recloth::nap::nap_layout`.
#[allow(non_camel_case_types)]
struct nap_layout {}
impl Scalar<5, 6> for nap_layout {
    const TYPES: [Type; 6] = [
        Type::Count,
        Type::Count,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 5]> = None;
    #[inline]
    fn call(given: [f64; 5]) -> Result<[f64; 6], Error> {
        let [wide, narrow, length, count, cloth_width] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::nap::nap_layout(wide, narrow, length, count, cloth_width),
            &["wide", "narrow", "length", "count", "cloth_width"],
            &[count_bad],
        )?;
        Ok([
            f64::from(answer.across_one_way),
            f64::from(answer.across_turned),
            answer.length_one_way,
            answer.length_turned,
            answer.nap_extra,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_nap_layout<'py>(
    py: Python<'py>,
    wide: f64,
    narrow: f64,
    length: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
    cloth_width: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = nap_layout::call([wide, narrow, length, count, cloth_width])
        .map_err(|error| door::raise(py, "nap_layout", &error))?;
    (
        answer[0] as u64,
        answer[1] as u64,
        answer[2],
        answer[3],
        answer[4],
        answer[5] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::body::neck_bust_doubts`.
#[allow(non_camel_case_types)]
struct neck_bust_doubts {}
impl Scalar<2, 1> for neck_bust_doubts {
    const TYPES: [Type; 1] = [Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [1.0, 100000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [neck, bust] = given;
        let answer = recloth::body::neck_bust_doubts(neck, bust)?;
        Ok([answer as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_neck_bust_doubts<'py>(
    py: Python<'py>,
    neck: f64,
    bust: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = neck_bust_doubts::call([neck, bust])
        .map_err(|error| door::raise(py, "neck_bust_doubts", &error))?;
    (answer[0] as u64).into_bound_py_any(py)
}
/// `recloth::needle::needle_blade`.
#[allow(non_camel_case_types)]
struct needle_blade {}
impl Scalar<1, 2> for needle_blade {
    const TYPES: [Type; 2] = [Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 1]> = None;
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 2], Error> {
        let [metric] = given;
        let (metric, metric_bad) = door::count("metric", metric, 20);
        let answer = door::settle(
            recloth::needle::needle_blade(metric),
            &["metric"],
            &[metric_bad],
        )?;
        Ok([answer.blade, answer.thread])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_needle_blade<'py>(
    py: Python<'py>,
    #[pyo3(from_py_with = door::number)]
    metric: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = needle_blade::call([metric])
        .map_err(|error| door::raise(py, "needle_blade", &error))?;
    (answer[0], answer[1]).into_bound_py_any(py)
}
/// `recloth::needle::needle_metric`.
#[allow(non_camel_case_types)]
struct needle_metric {}
impl Scalar<1, 1> for needle_metric {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 1]> = None;
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [us_size] = given;
        let (us_size, us_size_bad) = door::count("us_size", us_size, 8);
        let answer = door::settle(
            recloth::needle::needle_metric(us_size),
            &["us_size"],
            &[us_size_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_needle_metric<'py>(
    py: Python<'py>,
    #[pyo3(from_py_with = door::number)]
    us_size: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = needle_metric::call([us_size])
        .map_err(|error| door::raise(py, "needle_metric", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::stretch::negative_ease`.
#[allow(non_camel_case_types)]
struct negative_ease {}
impl Scalar<4, 4> for negative_ease {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [10.0, 100000.0],
        [0.0, 500.0],
        [0.0, 100000.0],
        [0.0, 1.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 4], Error> {
        let [body, stretch_pct, widest, share] = given;
        let answer = recloth::stretch::negative_ease(body, stretch_pct, widest, share)?;
        Ok([answer.girth, answer.ease, answer.furthest, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_negative_ease<'py>(
    py: Python<'py>,
    body: f64,
    stretch_pct: f64,
    widest: f64,
    share: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = negative_ease::call([body, stretch_pct, widest, share])
        .map_err(|error| door::raise(py, "negative_ease", &error))?;
    (answer[0], answer[1], answer[2], answer[3] as u64).into_bound_py_any(py)
}
/// `recloth::bleach::neutraliser`.
#[allow(non_camel_case_types)]
struct neutraliser {}
impl Scalar<7, 5> for neutraliser {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 7]> = None;
    #[inline]
    fn call(given: [f64; 7]) -> Result<[f64; 5], Error> {
        let [carried_ml, chlorine_pct, reaction, stage, in_bath, purity_pct, excess_pct,
        ] = given;
        let (reaction, reaction_bad) = read_reaction("reaction", reaction);
        let (stage, stage_bad) = read_stage("stage", stage);
        let (in_bath, in_bath_bad) = read_in_bath("in_bath", in_bath);
        let answer = door::settle(
            recloth::bleach::neutraliser(
                carried_ml,
                chlorine_pct,
                reaction,
                stage,
                in_bath,
                purity_pct,
                excess_pct,
            ),
            &[
                "carried_ml",
                "chlorine_pct",
                "reaction",
                "stage",
                "in_bath",
                "purity_pct",
                "excess_pct",
            ],
            &[reaction_bad, stage_bad, in_bath_bad],
        )?;
        Ok([
            answer.chlorine_g,
            answer.amount_g,
            answer.ratio,
            answer.doubts as f64,
            answer.cautions as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_neutraliser<'py>(
    py: Python<'py>,
    carried_ml: f64,
    chlorine_pct: f64,
    reaction: f64,
    stage: f64,
    in_bath: f64,
    purity_pct: f64,
    excess_pct: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = neutraliser::call([
            carried_ml,
            chlorine_pct,
            reaction,
            stage,
            in_bath,
            purity_pct,
            excess_pct,
        ])
        .map_err(|error| door::raise(py, "neutraliser", &error))?;
    (answer[0], answer[1], answer[2], answer[3] as u64, answer[4] as u64)
        .into_bound_py_any(py)
}
/// `recloth::opening::off_centre_opening`.
#[allow(non_camel_case_types)]
struct off_centre_opening {}
impl Scalar<6, 8> for off_centre_opening {
    const TYPES: [Type; 8] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 6]> = Some([
        [1.0, 100000.0],
        [0.0, 100000.0],
        [0.0, 1000.0],
        [0.0, 1000.0],
        [1.0, 100000.0],
        [0.0, 100000.0],
    ]);
    #[inline]
    fn call(given: [f64; 6]) -> Result<[f64; 8], Error> {
        let [front, shift, extension, allowance, wide_panel, dart_distance] = given;
        let answer = recloth::opening::off_centre_opening(
            front,
            shift,
            extension,
            allowance,
            wide_panel,
            dart_distance,
        )?;
        Ok([
            answer.narrow_to_line,
            answer.wide_to_line,
            answer.narrow_cut,
            answer.wide_cut,
            answer.largest_shift,
            answer.dart_to_narrow,
            answer.dart_to_wide,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_off_centre_opening<'py>(
    py: Python<'py>,
    front: f64,
    shift: f64,
    extension: f64,
    allowance: f64,
    wide_panel: f64,
    dart_distance: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = off_centre_opening::call([
            front,
            shift,
            extension,
            allowance,
            wide_panel,
            dart_distance,
        ])
        .map_err(|error| door::raise(py, "off_centre_opening", &error))?;
    (
        answer[0],
        answer[1],
        answer[2],
        answer[3],
        answer[4],
        answer[5],
        answer[6],
        answer[7] as u64,
    )
        .into_bound_py_any(py)
}
/// `recloth::shade::overdye`.
#[allow(non_camel_case_types)]
struct overdye {}
impl Scalar<3, 4> for overdye {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.001, 1.0],
        [0.0, 100.0],
        [0.0, 100.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [ground, low, high] = given;
        let answer = recloth::shade::overdye(ground, low, high)?;
        Ok([answer.pale, answer.deep, answer.pale_l, answer.deep_l])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_overdye<'py>(
    py: Python<'py>,
    ground: f64,
    low: f64,
    high: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = overdye::call([ground, low, high])
        .map_err(|error| door::raise(py, "overdye", &error))?;
    (answer[0], answer[1], answer[2], answer[3]).into_bound_py_any(py)
}
/// `recloth::wet::owf`.
#[allow(non_camel_case_types)]
struct owf {}
impl Scalar<2, 3> for owf {
    const TYPES: [Type; 3] = [Type::Number, Type::Bits, Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[0.01, 1000000.0], [0.0, 1000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 3], Error> {
        let [mass_g, pct] = given;
        let answer = recloth::wet::owf(mass_g, pct)?;
        Ok([answer.amount_g, answer.doubts as f64, answer.cautions as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_owf<'py>(py: Python<'py>, mass_g: f64, pct: f64) -> PyResult<Bound<'py, PyAny>> {
    let answer = owf::call([mass_g, pct])
        .map_err(|error| door::raise(py, "owf", &error))?;
    (answer[0], answer[1] as u64, answer[2] as u64).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_panel_by_offsets<'py>(
    py: Python<'py>,
    stations: PyReadonlyArray1<'py, f64>,
    left: PyReadonlyArray1<'py, f64>,
    right: PyReadonlyArray1<'py, f64>,
) -> PyResult<Bound<'py, PyAny>> {
    let stations = stations.as_slice()?;
    let left = left.as_slice()?;
    let right = right.as_slice()?;
    let mut left_bow = vec![0.0; door::room(stations.len(), 0, usize::MAX)];
    let mut right_bow = vec![0.0; door::room(stations.len(), 0, usize::MAX)];
    let answer = recloth::offsets::panel_by_offsets(
            stations,
            left,
            right,
            &mut left_bow,
            &mut right_bow,
        )
        .map_err(|error| door::raise(py, "panel_by_offsets", &error))?;
    (
        left_bow.into_pyarray(py),
        right_bow.into_pyarray(py),
        answer.area,
        answer.length,
        answer.widest,
        answer.narrowest,
        answer.largest_bow,
    )
        .into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_panel_by_triangles<'py>(
    py: Python<'py>,
    base: f64,
    starts: PyReadonlyArray1<'py, u32>,
    ends: PyReadonlyArray1<'py, u32>,
    from_start: PyReadonlyArray1<'py, f64>,
    from_end: PyReadonlyArray1<'py, f64>,
    sides: PyReadonlyArray1<'py, u32>,
    spare_starts: PyReadonlyArray1<'py, u32>,
    spare_ends: PyReadonlyArray1<'py, u32>,
    spare_readings: PyReadonlyArray1<'py, f64>,
) -> PyResult<Bound<'py, PyAny>> {
    let starts = starts.as_slice()?;
    let ends = ends.as_slice()?;
    let from_start = from_start.as_slice()?;
    let from_end = from_end.as_slice()?;
    let sides = sides.as_slice()?;
    let spare_starts = spare_starts.as_slice()?;
    let spare_ends = spare_ends.as_slice()?;
    let spare_readings = spare_readings.as_slice()?;
    let mut along = vec![0.0; door::room(starts.len(), 2, usize::MAX)];
    let mut across = vec![0.0; door::room(starts.len(), 2, usize::MAX)];
    let mut misfits = vec![0.0; door::room(spare_starts.len(), 0, usize::MAX)];
    let answer = recloth::panel::panel_by_triangles(
            base,
            starts,
            ends,
            from_start,
            from_end,
            sides,
            spare_starts,
            spare_ends,
            spare_readings,
            &mut along,
            &mut across,
            &mut misfits,
        )
        .map_err(|error| door::raise(py, "panel_by_triangles", &error))?;
    (
        along.into_pyarray(py),
        across.into_pyarray(py),
        misfits.into_pyarray(py),
        answer.area,
        answer.perimeter,
        answer.largest_misfit,
        answer.weakest_corner,
        answer.weakest_per_mm,
        answer.doubts,
    )
        .into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_parse_length<'py>(py: Python<'py>, text: &str) -> PyResult<Bound<'py, PyAny>> {
    let answer = recloth::tape::parse_length(text)
        .map_err(|error| door::raise(py, "parse_length", &error))?;
    answer.into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_photo_map<'py>(
    py: Python<'py>,
    picture_x: PyReadonlyArray1<'py, f64>,
    picture_y: PyReadonlyArray1<'py, f64>,
    true_x: PyReadonlyArray1<'py, f64>,
    true_y: PyReadonlyArray1<'py, f64>,
    x: PyReadonlyArray1<'py, f64>,
    y: PyReadonlyArray1<'py, f64>,
) -> PyResult<Bound<'py, PyAny>> {
    let picture_x = picture_x.as_slice()?;
    let picture_y = picture_y.as_slice()?;
    let true_x = true_x.as_slice()?;
    let true_y = true_y.as_slice()?;
    let x = x.as_slice()?;
    let y = y.as_slice()?;
    let mut along = vec![0.0; door::room(x.len(), 0, usize::MAX)];
    let mut across = vec![0.0; door::room(x.len(), 0, usize::MAX)];
    let mut scales = vec![0.0; door::room(x.len(), 0, usize::MAX)];
    let answer = recloth::photo::photo_map(
            picture_x,
            picture_y,
            true_x,
            true_y,
            x,
            y,
            &mut along,
            &mut across,
            &mut scales,
        )
        .map_err(|error| door::raise(py, "photo_map", &error))?;
    (
        along.into_pyarray(py),
        across.into_pyarray(py),
        scales.into_pyarray(py),
        answer.reach,
        answer.coarsest,
        answer.doubts,
    )
        .into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_pieced_length<'py>(
    py: Python<'py>,
    lengths: PyReadonlyArray1<'py, f64>,
    allowance: f64,
    needed: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let lengths = lengths.as_slice()?;
    let answer = recloth::piecing::pieced_length(lengths, allowance, needed)
        .map_err(|error| door::raise(py, "pieced_length", &error))?;
    (answer.joined, answer.spare, answer.joins, answer.fewest).into_bound_py_any(py)
}
/// `recloth::bias::piping_width`.
#[allow(non_camel_case_types)]
struct piping_width {}
impl Scalar<3, 1> for piping_width {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 200.0],
        [0.0, 1000.0],
        [0.0, 20.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [cord, allowance, thickness] = given;
        let answer = recloth::bias::piping_width(cord, allowance, thickness)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_piping_width<'py>(
    py: Python<'py>,
    cord: f64,
    allowance: f64,
    thickness: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = piping_width::call([cord, allowance, thickness])
        .map_err(|error| door::raise(py, "piping_width", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::dye::plant_dyestuff`.
#[allow(non_camel_case_types)]
struct plant_dyestuff {}
impl Scalar<7, 4> for plant_dyestuff {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Bits, Type::Bits];
    const RANGES: Option<[[f64; 2]; 7]> = None;
    #[inline]
    fn call(given: [f64; 7]) -> Result<[f64; 4], Error> {
        let [mass_g, low_pct, high_pct, recipe, at_hand, fresh_per_dry_low,
        fresh_per_dry_high] = given;
        let (recipe, recipe_bad) = read_basis("recipe", recipe);
        let (at_hand, at_hand_bad) = read_basis("at_hand", at_hand);
        let answer = door::settle(
            recloth::dye::plant_dyestuff(
                mass_g,
                low_pct,
                high_pct,
                recipe,
                at_hand,
                fresh_per_dry_low,
                fresh_per_dry_high,
            ),
            &[
                "mass_g",
                "low_pct",
                "high_pct",
                "recipe",
                "at_hand",
                "fresh_per_dry_low",
                "fresh_per_dry_high",
            ],
            &[recipe_bad, at_hand_bad],
        )?;
        Ok([answer.low_g, answer.high_g, answer.doubts as f64, answer.cautions as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_plant_dyestuff<'py>(
    py: Python<'py>,
    mass_g: f64,
    low_pct: f64,
    high_pct: f64,
    recipe: f64,
    at_hand: f64,
    fresh_per_dry_low: f64,
    fresh_per_dry_high: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = plant_dyestuff::call([
            mass_g,
            low_pct,
            high_pct,
            recipe,
            at_hand,
            fresh_per_dry_low,
            fresh_per_dry_high,
        ])
        .map_err(|error| door::raise(py, "plant_dyestuff", &error))?;
    (answer[0], answer[1], answer[2] as u64, answer[3] as u64).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_pooled_strength<'py>(
    py: Python<'py>,
    volumes_ml: PyReadonlyArray1<'py, f64>,
    strengths_pct: PyReadonlyArray1<'py, f64>,
) -> PyResult<Bound<'py, PyAny>> {
    let volumes_ml = volumes_ml.as_slice()?;
    let strengths_pct = strengths_pct.as_slice()?;
    let answer = recloth::wet::pooled_strength(volumes_ml, strengths_pct)
        .map_err(|error| door::raise(py, "pooled_strength", &error))?;
    (answer.strength_pct, answer.volume_ml, answer.cautions).into_bound_py_any(py)
}
/// `recloth::sleeve::puff_spread`.
#[allow(non_camel_case_types)]
struct puff_spread {}
impl Scalar<4, 5> for puff_spread {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 5], Error> {
        let [zone, ratio, slashes, strip] = given;
        let (slashes, slashes_bad) = door::count("slashes", slashes, 1);
        let answer = door::settle(
            recloth::sleeve::puff_spread(zone, ratio, slashes, strip),
            &["zone", "ratio", "slashes", "strip"],
            &[slashes_bad],
        )?;
        Ok([
            answer.flat,
            answer.added,
            answer.spread_each,
            answer.strip_ratio,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_puff_spread<'py>(
    py: Python<'py>,
    zone: f64,
    ratio: f64,
    #[pyo3(from_py_with = door::number)]
    slashes: f64,
    strip: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = puff_spread::call([zone, ratio, slashes, strip])
        .map_err(|error| door::raise(py, "puff_spread", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4] as u64).into_bound_py_any(py)
}
/// `recloth::shade::reflectance`.
#[allow(non_camel_case_types)]
struct reflectance {}
impl Scalar<1, 1> for reflectance {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 1]> = Some([[0.0, 500.0]]);
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [k_over_s] = given;
        let answer = recloth::shade::reflectance(k_over_s)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_reflectance<'py>(py: Python<'py>, k_over_s: f64) -> PyResult<Bound<'py, PyAny>> {
    let answer = reflectance::call([k_over_s])
        .map_err(|error| door::raise(py, "reflectance", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::shade::relative_strength`.
#[allow(non_camel_case_types)]
struct relative_strength {}
impl Scalar<2, 1> for relative_strength {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[0.0, 500.0], [1e-6, 500.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [k_over_s, standard] = given;
        let answer = recloth::shade::relative_strength(k_over_s, standard)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_relative_strength<'py>(
    py: Python<'py>,
    k_over_s: f64,
    standard: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = relative_strength::call([k_over_s, standard])
        .map_err(|error| door::raise(py, "relative_strength", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::body::remaining_width`.
#[allow(non_camel_case_types)]
struct remaining_width {}
impl Scalar<5, 1> for remaining_width {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 5]> = None;
    #[inline]
    fn call(given: [f64; 5]) -> Result<[f64; 1], Error> {
        let [girth, ease, other_width, parts, intake] = given;
        let (parts, parts_bad) = door::count("parts", parts, 1);
        let answer = door::settle(
            recloth::body::remaining_width(girth, ease, other_width, parts, intake),
            &["girth", "ease", "other_width", "parts", "intake"],
            &[parts_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_remaining_width<'py>(
    py: Python<'py>,
    girth: f64,
    ease: f64,
    other_width: f64,
    #[pyo3(from_py_with = door::number)]
    parts: f64,
    intake: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = remaining_width::call([girth, ease, other_width, parts, intake])
        .map_err(|error| door::raise(py, "remaining_width", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::quantity::repeats`.
#[allow(non_camel_case_types)]
struct repeats {}
impl Scalar<3, 4> for repeats {
    const TYPES: [Type; 4] = [Type::Count, Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [length, repeat, count] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::quantity::repeats(length, repeat, count),
            &["length", "repeat", "count"],
            &[count_bad],
        )?;
        Ok([f64::from(answer.repeats), answer.each, answer.total, answer.waste])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_repeats<'py>(
    py: Python<'py>,
    length: f64,
    repeat: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = repeats::call([length, repeat, count])
        .map_err(|error| door::raise(py, "repeats", &error))?;
    (answer[0] as u64, answer[1], answer[2], answer[3]).into_bound_py_any(py)
}
/// `recloth::elastic::ribbing`.
#[allow(non_camel_case_types)]
struct ribbing {}
impl Scalar<4, 4> for ribbing {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [1.0, 100000.0],
        [1.0, 1000.0],
        [0.0, 100.0],
        [0.3, 1.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 4], Error> {
        let [edge, depth, allowance, share] = given;
        let answer = recloth::elastic::ribbing(edge, depth, allowance, share)?;
        Ok([answer.round, answer.cut_length, answer.cut_width, answer.stretch_pct])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_ribbing<'py>(
    py: Python<'py>,
    edge: f64,
    depth: f64,
    allowance: f64,
    share: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = ribbing::call([edge, depth, allowance, share])
        .map_err(|error| door::raise(py, "ribbing", &error))?;
    (answer[0], answer[1], answer[2], answer[3]).into_bound_py_any(py)
}
/// `recloth::wet::rinses`.
#[allow(non_camel_case_types)]
struct rinses {}
impl Scalar<4, 6> for rinses {
    const TYPES: [Type; 6] = [
        Type::Count,
        Type::Count,
        Type::Number,
        Type::Number,
        Type::Bits,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [0.01, 10000000.0],
        [0.01, 10000000.0],
        [0.01, 100000000.0],
        [1e-9, 1.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 6], Error> {
        let [carried_low_ml, carried_high_ml, fresh_ml, share_left] = given;
        let answer = recloth::wet::rinses(
            carried_low_ml,
            carried_high_ml,
            fresh_ml,
            share_left,
        )?;
        Ok([
            f64::from(answer.rinses_low),
            f64::from(answer.rinses_high),
            answer.left,
            answer.water_ml,
            answer.doubts as f64,
            answer.cautions as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_rinses<'py>(
    py: Python<'py>,
    carried_low_ml: f64,
    carried_high_ml: f64,
    fresh_ml: f64,
    share_left: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = rinses::call([carried_low_ml, carried_high_ml, fresh_ml, share_left])
        .map_err(|error| door::raise(py, "rinses", &error))?;
    (
        answer[0] as u64,
        answer[1] as u64,
        answer[2],
        answer[3],
        answer[4] as u64,
        answer[5] as u64,
    )
        .into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_round_set<'py>(
    py: Python<'py>,
    lengths: PyReadonlyArray1<'py, f64>,
    graduation: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let lengths = lengths.as_slice()?;
    let mut tapes = vec![0.0; door::room(lengths.len(), 0, usize::MAX)];
    let answer = recloth::tape::round_set(lengths, graduation, &mut tapes)
        .map_err(|error| door::raise(py, "round_set", &error))?;
    (tapes.into_pyarray(py), answer.total, answer.largest_change).into_bound_py_any(py)
}
/// `recloth::tape::round_to`.
#[allow(non_camel_case_types)]
struct round_to {}
impl Scalar<3, 1> for round_to {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [length, graduation, way] = given;
        let (way, way_bad) = read_rounding("way", way);
        let answer = door::settle(
            recloth::tape::round_to(length, graduation, way),
            &["length", "graduation", "way"],
            &[way_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_round_to<'py>(
    py: Python<'py>,
    length: f64,
    graduation: f64,
    way: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = round_to::call([length, graduation, way])
        .map_err(|error| door::raise(py, "round_to", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::fullness::ruffle`.
#[allow(non_camel_case_types)]
struct ruffle {}
impl Scalar<6, 5> for ruffle {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Count,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 6]> = Some([
        [1.0, 100000.0],
        [1.0, 10.0],
        [1.0, 10000.0],
        [10.0, 100000.0],
        [0.0, 1000.0],
        [0.0, 1000.0],
    ]);
    #[inline]
    fn call(given: [f64; 6]) -> Result<[f64; 5], Error> {
        let [edge, ratio, depth, strip, allowance, hem] = given;
        let answer = recloth::fullness::ruffle(
            edge,
            ratio,
            depth,
            strip,
            allowance,
            hem,
        )?;
        Ok([
            answer.flat,
            answer.cut_width,
            f64::from(answer.strips),
            answer.cloth_length,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_ruffle<'py>(
    py: Python<'py>,
    edge: f64,
    ratio: f64,
    depth: f64,
    strip: f64,
    allowance: f64,
    hem: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = ruffle::call([edge, ratio, depth, strip, allowance, hem])
        .map_err(|error| door::raise(py, "ruffle", &error))?;
    (answer[0], answer[1], answer[2] as u64, answer[3], answer[4] as u64)
        .into_bound_py_any(py)
}
/// `recloth::colour::screen_level`.
#[allow(non_camel_case_types)]
struct screen_level {}
impl Scalar<1, 1> for screen_level {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 1]> = Some([[0.0, 1.0]]);
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [light] = given;
        let answer = recloth::colour::screen_level(light)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_screen_level<'py>(py: Python<'py>, light: f64) -> PyResult<Bound<'py, PyAny>> {
    let answer = screen_level::call([light])
        .map_err(|error| door::raise(py, "screen_level", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::pleat::seam_pleat`.
#[allow(non_camel_case_types)]
struct seam_pleat {}
impl Scalar<2, 3> for seam_pleat {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[0.1, 10000.0], [0.0, 1000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 3], Error> {
        let [depth, allowance] = given;
        let answer = recloth::pleat::seam_pleat(depth, allowance)?;
        Ok([answer.first_edge, answer.next_edge, answer.intake])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_seam_pleat<'py>(
    py: Python<'py>,
    depth: f64,
    allowance: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = seam_pleat::call([depth, allowance])
        .map_err(|error| door::raise(py, "seam_pleat", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_sectioned_band<'py>(
    py: Python<'py>,
    lengths: PyReadonlyArray1<'py, f64>,
    depth: f64,
    top: f64,
    ends: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let lengths = lengths.as_slice()?;
    let (ends, ends_bad) = read_square_ends("ends", ends);
    let mut tops = vec![0.0; door::room(lengths.len(), 0, usize::MAX)];
    let answer = door::settle(
            recloth::band::sectioned_band(lengths, depth, top, ends, &mut tops),
            &["lengths", "depth", "top", "ends", "tops"],
            &[ends_bad],
        )
        .map_err(|error| door::raise(py, "sectioned_band", &error))?;
    (
        tops.into_pyarray(py),
        answer.slant,
        answer.end_angle_deg,
        answer.join_kink_deg,
        answer.doubts,
    )
        .into_bound_py_any(py)
}
/// `recloth::band::shaped_band`.
#[allow(non_camel_case_types)]
struct shaped_band {}
impl Scalar<3, 5> for shaped_band {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 100000.0],
        [0.0, 100000.0],
        [1.0, 10000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 5], Error> {
        let [lower, upper, depth] = given;
        let answer = recloth::band::shaped_band(lower, upper, depth)?;
        Ok([
            answer.inner_radius,
            answer.outer_radius,
            answer.angle_deg,
            answer.sagitta,
            answer.area_mm2,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_shaped_band<'py>(
    py: Python<'py>,
    lower: f64,
    upper: f64,
    depth: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = shaped_band::call([lower, upper, depth])
        .map_err(|error| door::raise(py, "shaped_band", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4]).into_bound_py_any(py)
}
/// `recloth::body::share`.
#[allow(non_camel_case_types)]
struct share {}
impl Scalar<3, 1> for share {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [girth, ease, parts] = given;
        let (parts, parts_bad) = door::count("parts", parts, 1);
        let answer = door::settle(
            recloth::body::share(girth, ease, parts),
            &["girth", "ease", "parts"],
            &[parts_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_share<'py>(
    py: Python<'py>,
    girth: f64,
    ease: f64,
    #[pyo3(from_py_with = door::number)]
    parts: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = share::call([girth, ease, parts])
        .map_err(|error| door::raise(py, "share", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::elastic::shirring`.
#[allow(non_camel_case_types)]
struct shirring {}
impl Scalar<4, 5> for shirring {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Count,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [1.0, 100000.0],
        [0.0, 10000.0],
        [1.0, 1000.0],
        [10.0, 100.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 5], Error> {
        let [finished, depth, pitch, drawn_pct] = given;
        let answer = recloth::elastic::shirring(finished, depth, pitch, drawn_pct)?;
        Ok([
            answer.flat,
            answer.ratio,
            f64::from(answer.rows),
            answer.stitching,
            answer.cautions as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_shirring<'py>(
    py: Python<'py>,
    finished: f64,
    depth: f64,
    pitch: f64,
    drawn_pct: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = shirring::call([finished, depth, pitch, drawn_pct])
        .map_err(|error| door::raise(py, "shirring", &error))?;
    (answer[0], answer[1], answer[2] as u64, answer[3], answer[4] as u64)
        .into_bound_py_any(py)
}
/// `recloth::cloth::shrink_pair`.
#[allow(non_camel_case_types)]
struct shrink_pair {}
impl Scalar<4, 6> for shrink_pair {
    const TYPES: [Type; 6] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [0.0, 1000000.0],
        [0.0, 1000000.0],
        [-90.0, 100.0],
        [-90.0, 100.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 6], Error> {
        let [shell, lining, shell_change_pct, lining_change_pct] = given;
        let answer = recloth::cloth::shrink_pair(
            shell,
            lining,
            shell_change_pct,
            lining_change_pct,
        )?;
        Ok([
            answer.shell_after,
            answer.lining_after,
            answer.below,
            answer.shell_cut,
            answer.lining_cut,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_shrink_pair<'py>(
    py: Python<'py>,
    shell: f64,
    lining: f64,
    shell_change_pct: f64,
    lining_change_pct: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = shrink_pair::call([shell, lining, shell_change_pct, lining_change_pct])
        .map_err(|error| door::raise(py, "shrink_pair", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4], answer[5] as u64)
        .into_bound_py_any(py)
}
/// `recloth::alteration::size_step`.
#[allow(non_camel_case_types)]
struct size_step {}
impl Scalar<4, 3> for size_step {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 3], Error> {
        let [smaller, larger, steps, edges] = given;
        let (steps, steps_bad) = door::count("steps", steps, 1);
        let (edges, edges_bad) = door::count("edges", edges, 1);
        let answer = door::settle(
            recloth::alteration::size_step(smaller, larger, steps, edges),
            &["smaller", "larger", "steps", "edges"],
            &[steps_bad, edges_bad],
        )?;
        Ok([answer.step, answer.each_edge, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_size_step<'py>(
    py: Python<'py>,
    smaller: f64,
    larger: f64,
    #[pyo3(from_py_with = door::number)]
    steps: f64,
    #[pyo3(from_py_with = door::number)]
    edges: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = size_step::call([smaller, larger, steps, edges])
        .map_err(|error| door::raise(py, "size_step", &error))?;
    (answer[0], answer[1], answer[2] as u64).into_bound_py_any(py)
}
/// `recloth::cloth::skew`.
#[allow(non_camel_case_types)]
struct skew {}
impl Scalar<2, 1> for skew {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[-100000.0, 100000.0], [1.0, 100000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [shift, width] = given;
        let answer = recloth::cloth::skew(shift, width)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_skew<'py>(
    py: Python<'py>,
    shift: f64,
    width: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = skew::call([shift, width])
        .map_err(|error| door::raise(py, "skew", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::cloth::skew_diagonals`.
#[allow(non_camel_case_types)]
struct skew_diagonals {}
impl Scalar<2, 1> for skew_diagonals {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [1.0, 100000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [first, second] = given;
        let answer = recloth::cloth::skew_diagonals(first, second)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_skew_diagonals<'py>(
    py: Python<'py>,
    first: f64,
    second: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = skew_diagonals::call([first, second])
        .map_err(|error| door::raise(py, "skew_diagonals", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::seam::snip_spacing`.
#[allow(non_camel_case_types)]
struct snip_spacing {}
impl Scalar<3, 2> for snip_spacing {
    const TYPES: [Type; 2] = [Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 1000000.0],
        [0.1, 1000.0],
        [0.1, 100.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 2], Error> {
        let [radius, allowance, opening] = given;
        let answer = recloth::seam::snip_spacing(radius, allowance, opening)?;
        Ok([answer.spacing, answer.flat])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_snip_spacing<'py>(
    py: Python<'py>,
    radius: f64,
    allowance: f64,
    opening: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = snip_spacing::call([radius, allowance, opening])
        .map_err(|error| door::raise(py, "snip_spacing", &error))?;
    (answer[0], answer[1]).into_bound_py_any(py)
}
/// `recloth::fastening::spacing_by_pitch`.
#[allow(non_camel_case_types)]
struct spacing_by_pitch {}
impl Scalar<3, 2> for spacing_by_pitch {
    const TYPES: [Type; 2] = [Type::Count, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 100000.0],
        [0.0, 100000.0],
        [1.0, 100000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 2], Error> {
        let [first, last, pitch] = given;
        let answer = recloth::fastening::spacing_by_pitch(first, last, pitch)?;
        Ok([f64::from(answer.count), answer.pitch])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_spacing_by_pitch<'py>(
    py: Python<'py>,
    first: f64,
    last: f64,
    pitch: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = spacing_by_pitch::call([first, last, pitch])
        .map_err(|error| door::raise(py, "spacing_by_pitch", &error))?;
    (answer[0] as u64, answer[1]).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_spacing_through<'py>(
    py: Python<'py>,
    first: f64,
    last: f64,
    through: f64,
    count: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let (count, count_bad) = door::count("count", count, 3);
    let mut places = vec![0.0; door::room(count as usize, 0, 1000)];
    let answer = door::settle(
            recloth::closure::spacing_through(first, last, through, count, &mut places),
            &["first", "last", "through", "count", "places"],
            &[count_bad],
        )
        .map_err(|error| door::raise(py, "spacing_through", &error))?;
    (
        places.into_pyarray(py),
        answer.pitch_before,
        answer.pitch_after,
        answer.fixed,
        answer.doubts,
    )
        .into_bound_py_any(py)
}
/// `recloth::colour::srgb_from_lab`.
#[allow(non_camel_case_types)]
struct srgb_from_lab {}
impl Scalar<3, 4> for srgb_from_lab {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Count];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 100.0],
        [-200.0, 200.0],
        [-200.0, 200.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [l, a, b] = given;
        let answer = recloth::colour::srgb_from_lab(l, a, b)?;
        Ok([answer.red, answer.green, answer.blue, f64::from(answer.outside)])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_srgb_from_lab<'py>(
    py: Python<'py>,
    l: f64,
    a: f64,
    b: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = srgb_from_lab::call([l, a, b])
        .map_err(|error| door::raise(py, "srgb_from_lab", &error))?;
    (answer[0], answer[1], answer[2], answer[3] as u64).into_bound_py_any(py)
}
/// `recloth::colour::srgb_from_xyz`.
#[allow(non_camel_case_types)]
struct srgb_from_xyz {}
impl Scalar<3, 4> for srgb_from_xyz {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Count];
    const RANGES: Option<[[f64; 2]; 3]> = Some([[0.0, 2.0], [0.0, 2.0], [0.0, 2.0]]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [x, y, z] = given;
        let answer = recloth::colour::srgb_from_xyz(x, y, z)?;
        Ok([answer.red, answer.green, answer.blue, f64::from(answer.outside)])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_srgb_from_xyz<'py>(
    py: Python<'py>,
    x: f64,
    y: f64,
    z: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = srgb_from_xyz::call([x, y, z])
        .map_err(|error| door::raise(py, "srgb_from_xyz", &error))?;
    (answer[0], answer[1], answer[2], answer[3] as u64).into_bound_py_any(py)
}
/// `recloth::tape::stitch_length`.
#[allow(non_camel_case_types)]
struct stitch_length {}
impl Scalar<1, 1> for stitch_length {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 1]> = Some([[0.5, 200.0]]);
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [stitches_per_inch] = given;
        let answer = recloth::tape::stitch_length(stitches_per_inch)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_stitch_length<'py>(
    py: Python<'py>,
    stitches_per_inch: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = stitch_length::call([stitches_per_inch])
        .map_err(|error| door::raise(py, "stitch_length", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::wet::stock_volume`.
#[allow(non_camel_case_types)]
struct stock_volume {}
impl Scalar<3, 4> for stock_volume {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Bits, Type::Bits];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.01, 1000000.0],
        [0.0, 1000.0],
        [0.001, 100.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [mass_g, pct, stock_pct] = given;
        let answer = recloth::wet::stock_volume(mass_g, pct, stock_pct)?;
        Ok([
            answer.stock_ml,
            answer.amount_g,
            answer.doubts as f64,
            answer.cautions as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_stock_volume<'py>(
    py: Python<'py>,
    mass_g: f64,
    pct: f64,
    stock_pct: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = stock_volume::call([mass_g, pct, stock_pct])
        .map_err(|error| door::raise(py, "stock_volume", &error))?;
    (answer[0], answer[1], answer[2] as u64, answer[3] as u64).into_bound_py_any(py)
}
/// `recloth::band::straight_band`.
#[allow(non_camel_case_types)]
struct straight_band {}
impl Scalar<6, 4> for straight_band {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Count, Type::Bits];
    const RANGES: Option<[[f64; 2]; 6]> = None;
    #[inline]
    fn call(given: [f64; 6]) -> Result<[f64; 4], Error> {
        let [waist, overlap, depth, allowance, turn, make] = given;
        let (make, make_bad) = read_band_make("make", make);
        let answer = door::settle(
            recloth::band::straight_band(waist, overlap, depth, allowance, turn, make),
            &["waist", "overlap", "depth", "allowance", "turn", "make"],
            &[make_bad],
        )?;
        Ok([
            answer.cut_length,
            answer.cut_width,
            f64::from(answer.strips),
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_straight_band<'py>(
    py: Python<'py>,
    waist: f64,
    overlap: f64,
    depth: f64,
    allowance: f64,
    turn: f64,
    make: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = straight_band::call([waist, overlap, depth, allowance, turn, make])
        .map_err(|error| door::raise(py, "straight_band", &error))?;
    (answer[0], answer[1], answer[2] as u64, answer[3] as u64).into_bound_py_any(py)
}
/// `recloth::band::straight_band_depth`.
#[allow(non_camel_case_types)]
struct straight_band_depth {}
impl Scalar<4, 1> for straight_band_depth {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 1], Error> {
        let [cut_width, allowance, turn, make] = given;
        let (make, make_bad) = read_band_make("make", make);
        let answer = door::settle(
            recloth::band::straight_band_depth(cut_width, allowance, turn, make),
            &["cut_width", "allowance", "turn", "make"],
            &[make_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_straight_band_depth<'py>(
    py: Python<'py>,
    cut_width: f64,
    allowance: f64,
    turn: f64,
    make: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = straight_band_depth::call([cut_width, allowance, turn, make])
        .map_err(|error| door::raise(py, "straight_band_depth", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::stretch::stretch_pct`.
#[allow(non_camel_case_types)]
struct stretch_pct {}
impl Scalar<2, 1> for stretch_pct {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [1.0, 1000000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [relaxed, pulled] = given;
        let answer = recloth::stretch::stretch_pct(relaxed, pulled)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_stretch_pct<'py>(
    py: Python<'py>,
    relaxed: f64,
    pulled: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = stretch_pct::call([relaxed, pulled])
        .map_err(|error| door::raise(py, "stretch_pct", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::alteration::take_in`.
#[allow(non_camel_case_types)]
struct take_in {}
impl Scalar<5, 5> for take_in {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 5]> = None;
    #[inline]
    fn call(given: [f64; 5]) -> Result<[f64; 5], Error> {
        let [garment, body, ease, edges, limit] = given;
        let (edges, edges_bad) = door::count("edges", edges, 1);
        let answer = door::settle(
            recloth::alteration::take_in(garment, body, ease, edges, limit),
            &["garment", "body", "ease", "edges", "limit"],
            &[edges_bad],
        )?;
        Ok([
            answer.excess,
            answer.each,
            answer.taken,
            answer.leftover,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_take_in<'py>(
    py: Python<'py>,
    garment: f64,
    body: f64,
    ease: f64,
    #[pyo3(from_py_with = door::number)]
    edges: f64,
    limit: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = take_in::call([garment, body, ease, edges, limit])
        .map_err(|error| door::raise(py, "take_in", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4] as u64).into_bound_py_any(py)
}
/// `recloth::tape::tex_from_cotton_count`.
#[allow(non_camel_case_types)]
struct tex_from_cotton_count {}
impl Scalar<2, 1> for tex_from_cotton_count {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = None;
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [cotton_count, plies] = given;
        let (plies, plies_bad) = door::count("plies", plies, 1);
        let answer = door::settle(
            recloth::tape::tex_from_cotton_count(cotton_count, plies),
            &["cotton_count", "plies"],
            &[plies_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_tex_from_cotton_count<'py>(
    py: Python<'py>,
    cotton_count: f64,
    #[pyo3(from_py_with = door::number)]
    plies: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = tex_from_cotton_count::call([cotton_count, plies])
        .map_err(|error| door::raise(py, "tex_from_cotton_count", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::tape::tex_from_denier`.
#[allow(non_camel_case_types)]
struct tex_from_denier {}
impl Scalar<1, 1> for tex_from_denier {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 1]> = Some([[0.01, 1000000.0]]);
    #[inline]
    fn call(given: [f64; 1]) -> Result<[f64; 1], Error> {
        let [denier] = given;
        let answer = recloth::tape::tex_from_denier(denier)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_tex_from_denier<'py>(
    py: Python<'py>,
    denier: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = tex_from_denier::call([denier])
        .map_err(|error| door::raise(py, "tex_from_denier", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::tape::tex_from_metric_count`.
#[allow(non_camel_case_types)]
struct tex_from_metric_count {}
impl Scalar<2, 1> for tex_from_metric_count {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = None;
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [metric_count, plies] = given;
        let (plies, plies_bad) = door::count("plies", plies, 1);
        let answer = door::settle(
            recloth::tape::tex_from_metric_count(metric_count, plies),
            &["metric_count", "plies"],
            &[plies_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_tex_from_metric_count<'py>(
    py: Python<'py>,
    metric_count: f64,
    #[pyo3(from_py_with = door::number)]
    plies: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = tex_from_metric_count::call([metric_count, plies])
        .map_err(|error| door::raise(py, "tex_from_metric_count", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::thread::thread_for_seam`.
#[allow(non_camel_case_types)]
struct thread_for_seam {}
impl Scalar<3, 1> for thread_for_seam {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 100000000.0],
        [0.1, 100.0],
        [0.0, 500.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [seam, ratio, waste_pct] = given;
        let answer = recloth::thread::thread_for_seam(seam, ratio, waste_pct)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_thread_for_seam<'py>(
    py: Python<'py>,
    seam: f64,
    ratio: f64,
    waste_pct: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = thread_for_seam::call([seam, ratio, waste_pct])
        .map_err(|error| door::raise(py, "thread_for_seam", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// `recloth::thread::thread_ratio`.
#[allow(non_camel_case_types)]
struct thread_ratio {}
impl Scalar<3, 1> for thread_ratio {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = None;
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [stitch_length, thickness, stitch] = given;
        let (stitch, stitch_bad) = read_stitch_type("stitch", stitch);
        let answer = door::settle(
            recloth::thread::thread_ratio(stitch_length, thickness, stitch),
            &["stitch_length", "thickness", "stitch"],
            &[stitch_bad],
        )?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_thread_ratio<'py>(
    py: Python<'py>,
    stitch_length: f64,
    thickness: f64,
    stitch: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = thread_ratio::call([stitch_length, thickness, stitch])
        .map_err(|error| door::raise(py, "thread_ratio", &error))?;
    (answer[0]).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_tiers<'py>(
    py: Python<'py>,
    top: f64,
    ratios: PyReadonlyArray1<'py, f64>,
) -> PyResult<Bound<'py, PyAny>> {
    let ratios = ratios.as_slice()?;
    let mut flats = vec![0.0; door::room(ratios.len(), 0, usize::MAX)];
    let answer = recloth::tier::tiers(top, ratios, &mut flats)
        .map_err(|error| door::raise(py, "tiers", &error))?;
    (flats.into_pyarray(py), answer.hem, answer.ratio, answer.strip, answer.doubts)
        .into_bound_py_any(py)
}
/// `recloth::chain::tolerance_stack`.
#[allow(non_camel_case_types)]
struct tolerance_stack {}
impl Scalar<2, 2> for tolerance_stack {
    const TYPES: [Type; 2] = [Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 2]> = None;
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 2], Error> {
        let [seams, error_each] = given;
        let (seams, seams_bad) = door::count("seams", seams, 0);
        let answer = door::settle(
            recloth::chain::tolerance_stack(seams, error_each),
            &["seams", "error_each"],
            &[seams_bad],
        )?;
        Ok([answer.worst, answer.likely])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_tolerance_stack<'py>(
    py: Python<'py>,
    #[pyo3(from_py_with = door::number)]
    seams: f64,
    error_each: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = tolerance_stack::call([seams, error_each])
        .map_err(|error| door::raise(py, "tolerance_stack", &error))?;
    (answer[0], answer[1]).into_bound_py_any(py)
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_tolerance_stack_list<'py>(
    py: Python<'py>,
    errors: PyReadonlyArray1<'py, f64>,
    edges: PyReadonlyArray1<'py, u32>,
) -> PyResult<Bound<'py, PyAny>> {
    let errors = errors.as_slice()?;
    let edges = edges.as_slice()?;
    let answer = recloth::chain::tolerance_stack_list(errors, edges)
        .map_err(|error| door::raise(py, "tolerance_stack_list", &error))?;
    (answer.worst, answer.likely, answer.largest, answer.largest_part)
        .into_bound_py_any(py)
}
/// `recloth::panel::trilaterate`.
#[allow(non_camel_case_types)]
struct trilaterate {}
impl Scalar<3, 5> for trilaterate {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 100000.0],
        [1.0, 100000.0],
        [1.0, 100000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 5], Error> {
        let [base, from_start, from_end] = given;
        let answer = recloth::panel::trilaterate(base, from_start, from_end)?;
        Ok([
            answer.along,
            answer.across,
            answer.along_per_mm,
            answer.across_per_mm,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_trilaterate<'py>(
    py: Python<'py>,
    base: f64,
    from_start: f64,
    from_end: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = trilaterate::call([base, from_start, from_end])
        .map_err(|error| door::raise(py, "trilaterate", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4] as u64).into_bound_py_any(py)
}
/// `recloth::pleat::tucks`.
#[allow(non_camel_case_types)]
struct tucks {}
impl Scalar<4, 6> for tucks {
    const TYPES: [Type; 6] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 6], Error> {
        let [finished, count, depth, spacing] = given;
        let (count, count_bad) = door::count("count", count, 1);
        let answer = door::settle(
            recloth::pleat::tucks(finished, count, depth, spacing),
            &["finished", "count", "depth", "spacing"],
            &[count_bad],
        )?;
        Ok([
            answer.flat,
            answer.taken_up,
            answer.fold_pitch,
            answer.gap,
            answer.margin,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_tucks<'py>(
    py: Python<'py>,
    finished: f64,
    #[pyo3(from_py_with = door::number)]
    count: f64,
    depth: f64,
    spacing: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = tucks::call([finished, count, depth, spacing])
        .map_err(|error| door::raise(py, "tucks", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4], answer[5] as u64)
        .into_bound_py_any(py)
}
/// `recloth::seam::turn_through`.
#[allow(non_camel_case_types)]
struct turn_through {}
impl Scalar<4, 3> for turn_through {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [1.0, 100000.0],
        [0.01, 1000.0],
        [1.0, 100000.0],
        [0.1, 1.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 3], Error> {
        let [width, thickness, opening, packing] = given;
        let answer = recloth::seam::turn_through(width, thickness, opening, packing)?;
        Ok([answer.diameter, answer.least_opening, answer.spare])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_turn_through<'py>(
    py: Python<'py>,
    width: f64,
    thickness: f64,
    opening: f64,
    packing: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = turn_through::call([width, thickness, opening, packing])
        .map_err(|error| door::raise(py, "turn_through", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::seam::turned_hem`.
#[allow(non_camel_case_types)]
struct turned_hem {}
impl Scalar<4, 2> for turned_hem {
    const TYPES: [Type; 2] = [Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 4]> = Some([
        [1.0, 100000.0],
        [0.0, 10000.0],
        [0.0, 10000.0],
        [0.0, 100.0],
    ]);
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 2], Error> {
        let [length, depth, turn_in, roll] = given;
        let answer = recloth::seam::turned_hem(length, depth, turn_in, roll)?;
        Ok([answer.allowance, answer.cut_length])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_turned_hem<'py>(
    py: Python<'py>,
    length: f64,
    depth: f64,
    turn_in: f64,
    roll: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = turned_hem::call([length, depth, turn_in, roll])
        .map_err(|error| door::raise(py, "turned_hem", &error))?;
    (answer[0], answer[1]).into_bound_py_any(py)
}
/// `recloth::neck::v_neck`.
#[allow(non_camel_case_types)]
struct v_neck {}
impl Scalar<3, 3> for v_neck {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 10000.0],
        [1.0, 10000.0],
        [0.9, 1.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 3], Error> {
        let [half_width, depth, stay_ratio] = given;
        let answer = recloth::neck::v_neck(half_width, depth, stay_ratio)?;
        Ok([answer.edge, answer.off_grain_deg, answer.stay])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_v_neck<'py>(
    py: Python<'py>,
    half_width: f64,
    depth: f64,
    stay_ratio: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = v_neck::call([half_width, depth, stay_ratio])
        .map_err(|error| door::raise(py, "v_neck", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::body::waist_hip_doubts`.
#[allow(non_camel_case_types)]
struct waist_hip_doubts {}
impl Scalar<2, 1> for waist_hip_doubts {
    const TYPES: [Type; 1] = [Type::Bits];
    const RANGES: Option<[[f64; 2]; 2]> = Some([[1.0, 100000.0], [1.0, 100000.0]]);
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 1], Error> {
        let [waist, hip] = given;
        let answer = recloth::body::waist_hip_doubts(waist, hip)?;
        Ok([answer as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_waist_hip_doubts<'py>(
    py: Python<'py>,
    waist: f64,
    hip: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = waist_hip_doubts::call([waist, hip])
        .map_err(|error| door::raise(py, "waist_hip_doubts", &error))?;
    (answer[0] as u64).into_bound_py_any(py)
}
/// `recloth::cloth::washes`.
#[allow(non_camel_case_types)]
struct washes {}
impl Scalar<4, 3> for washes {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 4]> = None;
    #[inline]
    fn call(given: [f64; 4]) -> Result<[f64; 3], Error> {
        let [length, first_pct, later_pct, washes] = given;
        let (washes, washes_bad) = door::count("washes", washes, 0);
        let answer = door::settle(
            recloth::cloth::washes(length, first_pct, later_pct, washes),
            &["length", "first_pct", "later_pct", "washes"],
            &[washes_bad],
        )?;
        Ok([answer.after, answer.change_pct, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_washes<'py>(
    py: Python<'py>,
    length: f64,
    first_pct: f64,
    later_pct: f64,
    #[pyo3(from_py_with = door::number)]
    washes: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = washes::call([length, first_pct, later_pct, washes])
        .map_err(|error| door::raise(py, "washes", &error))?;
    (answer[0], answer[1], answer[2] as u64).into_bound_py_any(py)
}
/// `recloth::ease::wearing_ease`.
#[allow(non_camel_case_types)]
struct wearing_ease {}
impl Scalar<2, 5> for wearing_ease {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 2]> = None;
    #[inline]
    fn call(given: [f64; 2]) -> Result<[f64; 5], Error> {
        let [body, place] = given;
        let (place, place_bad) = read_ease_place("place", place);
        let answer = door::settle(
            recloth::ease::wearing_ease(body, place),
            &["body", "place"],
            &[place_bad],
        )?;
        Ok([
            answer.low,
            answer.high,
            answer.garment_low,
            answer.garment_high,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_wearing_ease<'py>(
    py: Python<'py>,
    body: f64,
    place: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = wearing_ease::call([body, place])
        .map_err(|error| door::raise(py, "wearing_ease", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4] as u64).into_bound_py_any(py)
}
/// `recloth::quantity::width_conversion`.
#[allow(non_camel_case_types)]
struct width_conversion {}
impl Scalar<3, 4> for width_conversion {
    const TYPES: [Type; 4] = [Type::Number, Type::Number, Type::Number, Type::Bits];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 1000000.0],
        [10.0, 100000.0],
        [10.0, 100000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 4], Error> {
        let [length, width, new_width] = given;
        let answer = recloth::quantity::width_conversion(length, width, new_width)?;
        Ok([answer.by_area, answer.low, answer.high, answer.doubts as f64])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_width_conversion<'py>(
    py: Python<'py>,
    length: f64,
    width: f64,
    new_width: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = width_conversion::call([length, width, new_width])
        .map_err(|error| door::raise(py, "width_conversion", &error))?;
    (answer[0], answer[1], answer[2], answer[3] as u64).into_bound_py_any(py)
}
/// `recloth::skirt::wrap_skirt`.
#[allow(non_camel_case_types)]
struct wrap_skirt {}
impl Scalar<3, 7> for wrap_skirt {
    const TYPES: [Type; 7] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Bits,
    ];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [1.0, 100000.0],
        [1.0, 100000.0],
        [0.0, 100000.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 7], Error> {
        let [waist, hip, overlap] = given;
        let answer = recloth::skirt::wrap_skirt(waist, hip, overlap)?;
        Ok([
            answer.back_waist,
            answer.back_hip,
            answer.front_waist,
            answer.front_hip,
            answer.waist_edge,
            answer.wrap_pct,
            answer.doubts as f64,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_wrap_skirt<'py>(
    py: Python<'py>,
    waist: f64,
    hip: f64,
    overlap: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = wrap_skirt::call([waist, hip, overlap])
        .map_err(|error| door::raise(py, "wrap_skirt", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4], answer[5], answer[6] as u64)
        .into_bound_py_any(py)
}
/// `recloth::colour::xyz_from_lab`.
#[allow(non_camel_case_types)]
struct xyz_from_lab {}
impl Scalar<3, 3> for xyz_from_lab {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 100.0],
        [-200.0, 200.0],
        [-200.0, 200.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 3], Error> {
        let [l, a, b] = given;
        let answer = recloth::colour::xyz_from_lab(l, a, b)?;
        Ok([answer.x, answer.y, answer.z])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_xyz_from_lab<'py>(
    py: Python<'py>,
    l: f64,
    a: f64,
    b: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = xyz_from_lab::call([l, a, b])
        .map_err(|error| door::raise(py, "xyz_from_lab", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::colour::xyz_from_srgb`.
#[allow(non_camel_case_types)]
struct xyz_from_srgb {}
impl Scalar<3, 3> for xyz_from_srgb {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [0.0, 255.0],
        [0.0, 255.0],
        [0.0, 255.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 3], Error> {
        let [red, green, blue] = given;
        let answer = recloth::colour::xyz_from_srgb(red, green, blue)?;
        Ok([answer.x, answer.y, answer.z])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_xyz_from_srgb<'py>(
    py: Python<'py>,
    red: f64,
    green: f64,
    blue: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = xyz_from_srgb::call([red, green, blue])
        .map_err(|error| door::raise(py, "xyz_from_srgb", &error))?;
    (answer[0], answer[1], answer[2]).into_bound_py_any(py)
}
/// `recloth::fastening::zigzag_buttonhole`.
#[allow(non_camel_case_types)]
struct zigzag_buttonhole {}
impl Scalar<5, 3> for zigzag_buttonhole {
    const TYPES: [Type; 3] = [Type::Number, Type::Number, Type::Count];
    const RANGES: Option<[[f64; 2]; 5]> = Some([
        [1.0, 300.0],
        [0.1, 20.0],
        [0.0, 10.0],
        [0.0, 20.0],
        [0.05, 10.0],
    ]);
    #[inline]
    fn call(given: [f64; 5]) -> Result<[f64; 3], Error> {
        let [slit, bead, gap, bar, spacing] = given;
        let answer = recloth::fastening::zigzag_buttonhole(
            slit,
            bead,
            gap,
            bar,
            spacing,
        )?;
        Ok([answer.length, answer.width, f64::from(answer.stitches)])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_zigzag_buttonhole<'py>(
    py: Python<'py>,
    slit: f64,
    bead: f64,
    gap: f64,
    bar: f64,
    spacing: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = zigzag_buttonhole::call([slit, bead, gap, bar, spacing])
        .map_err(|error| door::raise(py, "zigzag_buttonhole", &error))?;
    (answer[0], answer[1], answer[2] as u64).into_bound_py_any(py)
}
/// `recloth::fastening::zip_length`.
#[allow(non_camel_case_types)]
struct zip_length {}
impl Scalar<5, 5> for zip_length {
    const TYPES: [Type; 5] = [
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
        Type::Number,
    ];
    const RANGES: Option<[[f64; 2]; 5]> = Some([
        [10.0, 5000.0],
        [0.0, 500.0],
        [0.0, 500.0],
        [0.0, 1000.0],
        [1.0, 1000.0],
    ]);
    #[inline]
    fn call(given: [f64; 5]) -> Result<[f64; 5], Error> {
        let [opening, gap, beyond, allowance, graduation] = given;
        let answer = recloth::fastening::zip_length(
            opening,
            gap,
            beyond,
            allowance,
            graduation,
        )?;
        Ok([
            answer.needed,
            answer.buy,
            answer.shorten,
            answer.top_stop,
            answer.bottom_stop,
        ])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_zip_length<'py>(
    py: Python<'py>,
    opening: f64,
    gap: f64,
    beyond: f64,
    allowance: f64,
    graduation: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = zip_length::call([opening, gap, beyond, allowance, graduation])
        .map_err(|error| door::raise(py, "zip_length", &error))?;
    (answer[0], answer[1], answer[2], answer[3], answer[4]).into_bound_py_any(py)
}
/// `recloth::fastening::zip_opening`.
#[allow(non_camel_case_types)]
struct zip_opening {}
impl Scalar<3, 1> for zip_opening {
    const TYPES: [Type; 1] = [Type::Number];
    const RANGES: Option<[[f64; 2]; 3]> = Some([
        [10.0, 5000.0],
        [0.0, 500.0],
        [0.0, 500.0],
    ]);
    #[inline]
    fn call(given: [f64; 3]) -> Result<[f64; 1], Error> {
        let [zip, gap, beyond] = given;
        let answer = recloth::fastening::zip_opening(zip, gap, beyond)?;
        Ok([answer])
    }
}
#[pyfunction]
#[allow(clippy::too_many_arguments)]
fn one_zip_opening<'py>(
    py: Python<'py>,
    zip: f64,
    gap: f64,
    beyond: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let answer = zip_opening::call([zip, gap, beyond])
        .map_err(|error| door::raise(py, "zip_opening", &error))?;
    (answer[0]).into_bound_py_any(py)
}
/// Adds everything generated to the compiled module.
pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    add_one::<
        arc_from_rise,
        2,
        3,
        0,
    >(
        module,
        c"arc_from_rise__radius",
        c"Radius and length of the curve that rises so far over its chord.\n\nRadius of the arc (mm).\nInputs: chord (mm, 1 to 100000); rise (mm, 0.1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        arc_from_rise,
        2,
        3,
        1,
    >(
        module,
        c"arc_from_rise__length",
        c"Radius and length of the curve that rises so far over its chord.\n\nLength along the arc (mm).\nInputs: chord (mm, 1 to 100000); rise (mm, 0.1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        arc_from_rise,
        2,
        3,
        2,
    >(
        module,
        c"arc_from_rise__angle_deg",
        c"Radius and length of the curve that rises so far over its chord.\n\nAngle from end to end, seen from the centre (deg).\nInputs: chord (mm, 1 to 100000); rise (mm, 0.1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<arc_from_rise, 2, 3>(module, c"all_arc_from_rise")?;
    add_status::<arc_from_rise, 2, 3>(module, c"status_arc_from_rise")?;
    module.add_function(wrap_pyfunction!(one_arc_from_rise, module)?)?;
    add_one::<
        assistant_volume,
        4,
        4,
        0,
    >(
        module,
        c"assistant_volume__stock_ml",
        c"Volume of a stock solution for so many grams in a litre of bath.\n\nStock solution to measure out (ml).\nInputs: mass_g (g, 0.01 to 1000000); ratio (1 to 200); grams (0 to 500); stock_pct (%, 0.001 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        assistant_volume,
        4,
        4,
        1,
    >(
        module,
        c"assistant_volume__amount_g",
        c"Volume of a stock solution for so many grams in a litre of bath.\n\nWhat that holds (g).\nInputs: mass_g (g, 0.01 to 1000000); ratio (1 to 200); grams (0 to 500); stock_pct (%, 0.001 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        assistant_volume,
        4,
        4,
        2,
    >(
        module,
        c"assistant_volume__doubts",
        c"Volume of a stock solution for so many grams in a litre of bath.\n\nDoubts raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); ratio (1 to 200); grams (0 to 500); stock_pct (%, 0.001 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        assistant_volume,
        4,
        4,
        3,
    >(
        module,
        c"assistant_volume__cautions",
        c"Volume of a stock solution for so many grams in a litre of bath.\n\nCautions raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); ratio (1 to 200); grams (0 to 500); stock_pct (%, 0.001 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<assistant_volume, 4, 4>(module, c"all_assistant_volume")?;
    add_status::<assistant_volume, 4, 4>(module, c"status_assistant_volume")?;
    module.add_function(wrap_pyfunction!(one_assistant_volume, module)?)?;
    add_one::<
        available_chlorine,
        2,
        4,
        0,
    >(
        module,
        c"available_chlorine__available_pct",
        c"Available chlorine of bleach from the sodium hypochlorite on its label.\n\nAvailable chlorine by mass (%).\nInputs: naocl_pct (%, 0.1 to 20); specific_gravity (1 to 1.3).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        available_chlorine,
        2,
        4,
        1,
    >(
        module,
        c"available_chlorine__trade_pct",
        c"Available chlorine of bleach from the sodium hypochlorite on its label.\n\nAvailable chlorine in grams in 100 ml, which the trade also calls percent (%).\nInputs: naocl_pct (%, 0.1 to 20); specific_gravity (1 to 1.3).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        available_chlorine,
        2,
        4,
        2,
    >(
        module,
        c"available_chlorine__doubts",
        c"Available chlorine of bleach from the sodium hypochlorite on its label.\n\nDoubts raised (bits).\nInputs: naocl_pct (%, 0.1 to 20); specific_gravity (1 to 1.3).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        available_chlorine,
        2,
        4,
        3,
    >(
        module,
        c"available_chlorine__cautions",
        c"Available chlorine of bleach from the sodium hypochlorite on its label.\n\nCautions raised (bits).\nInputs: naocl_pct (%, 0.1 to 20); specific_gravity (1 to 1.3).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<available_chlorine, 2, 4>(module, c"all_available_chlorine")?;
    add_status::<available_chlorine, 2, 4>(module, c"status_available_chlorine")?;
    module.add_function(wrap_pyfunction!(one_available_chlorine, module)?)?;
    module.add_function(wrap_pyfunction!(one_batches, module)?)?;
    add_one::<
        bath_volume,
        2,
        3,
        0,
    >(
        module,
        c"bath_volume__volume_ml",
        c"Volume of a bath from the dry mass of goods and the liquor ratio.\n\nVolume of liquor (ml).\nInputs: mass_g (g, 0.01 to 1000000); ratio (1 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        bath_volume,
        2,
        3,
        1,
    >(
        module,
        c"bath_volume__doubts",
        c"Volume of a bath from the dry mass of goods and the liquor ratio.\n\nDoubts raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); ratio (1 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        bath_volume,
        2,
        3,
        2,
    >(
        module,
        c"bath_volume__cautions",
        c"Volume of a bath from the dry mass of goods and the liquor ratio.\n\nCautions raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); ratio (1 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<bath_volume, 2, 3>(module, c"all_bath_volume")?;
    add_status::<bath_volume, 2, 3>(module, c"status_bath_volume")?;
    module.add_function(wrap_pyfunction!(one_bath_volume, module)?)?;
    add_one::<
        bias_along_selvedge,
        1,
        1,
        0,
    >(
        module,
        c"bias_along_selvedge",
        c"Distance along the selvedge between the cuts of a true bias strip.\n\nDistance along the selvedge, and equally across the cloth (mm).\nInputs: width (mm, 0.1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<bias_along_selvedge, 1, 1>(module, c"all_bias_along_selvedge")?;
    add_status::<bias_along_selvedge, 1, 1>(module, c"status_bias_along_selvedge")?;
    module.add_function(wrap_pyfunction!(one_bias_along_selvedge, module)?)?;
    add_one::<
        bias_square,
        2,
        1,
        0,
    >(
        module,
        c"bias_square",
        c"Side of the square of cloth that holds a bias strip of a given length and width.\n\nSide of the square, without seams (mm).\nInputs: length (mm, 1 to 10000000); width (mm, 0.1 to 10000, <= length).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<bias_square, 2, 1>(module, c"all_bias_square")?;
    add_status::<bias_square, 2, 1>(module, c"status_bias_square")?;
    module.add_function(wrap_pyfunction!(one_bias_square, module)?)?;
    add_one::<
        bias_strip_length,
        2,
        1,
        0,
    >(
        module,
        c"bias_strip_length",
        c"Length of bias strip that a square of cloth gives.\n\nLength of the strip, at most (mm).\nInputs: side (mm, 1 to 100000); width (mm, 0.1 to 10000, <= side).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<bias_strip_length, 2, 1>(module, c"all_bias_strip_length")?;
    add_status::<bias_strip_length, 2, 1>(module, c"status_bias_strip_length")?;
    module.add_function(wrap_pyfunction!(one_bias_strip_length, module)?)?;
    add_one::<
        bias_strips,
        5,
        4,
        0,
    >(
        module,
        c"bias_strips__strips",
        c"Strips that a rectangle gives when it is cut across at 45°, and their length when joined.\n\nNumber of strips.\nInputs: length (mm, 10 to 100000); width (mm, 10 to 100000); strip (mm, 1 to 10000); allowance (mm, 0 to 100); shortest (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        bias_strips,
        5,
        4,
        1,
    >(
        module,
        c"bias_strips__longest",
        c"Strips that a rectangle gives when it is cut across at 45°, and their length when joined.\n\nLength of the longest, along its shorter edge (mm).\nInputs: length (mm, 10 to 100000); width (mm, 10 to 100000); strip (mm, 1 to 10000); allowance (mm, 0 to 100); shortest (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        bias_strips,
        5,
        4,
        2,
    >(
        module,
        c"bias_strips__joined",
        c"Strips that a rectangle gives when it is cut across at 45°, and their length when joined.\n\nAll strips joined on the straight grain, what the joins take left off (mm).\nInputs: length (mm, 10 to 100000); width (mm, 10 to 100000); strip (mm, 1 to 10000); allowance (mm, 0 to 100); shortest (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        bias_strips,
        5,
        4,
        3,
    >(
        module,
        c"bias_strips__kept_pct",
        c"Strips that a rectangle gives when it is cut across at 45°, and their length when joined.\n\nShare of the cloth in them before joining (%).\nInputs: length (mm, 10 to 100000); width (mm, 10 to 100000); strip (mm, 1 to 10000); allowance (mm, 0 to 100); shortest (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<bias_strips, 5, 4>(module, c"all_bias_strips")?;
    add_status::<bias_strips, 5, 4>(module, c"status_bias_strips")?;
    module.add_function(wrap_pyfunction!(one_bias_strips, module)?)?;
    add_one::<
        bias_tube,
        4,
        3,
        0,
    >(
        module,
        c"bias_tube__turns",
        c"One long bias strip from a rectangle sewn to a slanted tube.\n\nTurns of the strip round the tube.\nInputs: length (mm, 10 to 100000); width (mm, 10 to 100000); strip (mm, 1 to 10000); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        bias_tube,
        4,
        3,
        1,
    >(
        module,
        c"bias_tube__length",
        c"One long bias strip from a rectangle sewn to a slanted tube.\n\nLength of the strip (mm).\nInputs: length (mm, 10 to 100000); width (mm, 10 to 100000); strip (mm, 1 to 10000); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        bias_tube,
        4,
        3,
        2,
    >(
        module,
        c"bias_tube__leftover",
        c"One long bias strip from a rectangle sewn to a slanted tube.\n\nWhat is left over along the long side, less than one turn (mm).\nInputs: length (mm, 10 to 100000); width (mm, 10 to 100000); strip (mm, 1 to 10000); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<bias_tube, 4, 3>(module, c"all_bias_tube")?;
    add_status::<bias_tube, 4, 3>(module, c"status_bias_tube")?;
    module.add_function(wrap_pyfunction!(one_bias_tube, module)?)?;
    add_one::<
        binder_solids,
        5,
        6,
        0,
    >(
        module,
        c"binder_solids__bath_low_pct",
        c"Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.\n\nSolids in the diluted binder, least (%).\nInputs: low_pct (%, 0.01 to 50); high_pct (%, 0.01 to 50, >= low_pct); parts_water (0 to 100); pick_up_pct (%, 1 to 500); dips (1 to 50).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        binder_solids,
        5,
        6,
        1,
    >(
        module,
        c"binder_solids__bath_high_pct",
        c"Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.\n\nSolids in the diluted binder, most (%).\nInputs: low_pct (%, 0.01 to 50); high_pct (%, 0.01 to 50, >= low_pct); parts_water (0 to 100); pick_up_pct (%, 1 to 500); dips (1 to 50).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        binder_solids,
        5,
        6,
        2,
    >(
        module,
        c"binder_solids__owf_low_pct",
        c"Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.\n\nSolids on weight of fibre after all dips, least (%).\nInputs: low_pct (%, 0.01 to 50); high_pct (%, 0.01 to 50, >= low_pct); parts_water (0 to 100); pick_up_pct (%, 1 to 500); dips (1 to 50).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        binder_solids,
        5,
        6,
        3,
    >(
        module,
        c"binder_solids__owf_high_pct",
        c"Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.\n\nSolids on weight of fibre after all dips, most (%).\nInputs: low_pct (%, 0.01 to 50); high_pct (%, 0.01 to 50, >= low_pct); parts_water (0 to 100); pick_up_pct (%, 1 to 500); dips (1 to 50).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        binder_solids,
        5,
        6,
        4,
    >(
        module,
        c"binder_solids__doubts",
        c"Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.\n\nDoubts raised (bits).\nInputs: low_pct (%, 0.01 to 50); high_pct (%, 0.01 to 50, >= low_pct); parts_water (0 to 100); pick_up_pct (%, 1 to 500); dips (1 to 50).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        binder_solids,
        5,
        6,
        5,
    >(
        module,
        c"binder_solids__cautions",
        c"Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.\n\nCautions raised (bits).\nInputs: low_pct (%, 0.01 to 50); high_pct (%, 0.01 to 50, >= low_pct); parts_water (0 to 100); pick_up_pct (%, 1 to 500); dips (1 to 50).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<binder_solids, 5, 6>(module, c"all_binder_solids")?;
    add_status::<binder_solids, 5, 6>(module, c"status_binder_solids")?;
    module.add_function(wrap_pyfunction!(one_binder_solids, module)?)?;
    add_one::<
        binding_length,
        4,
        1,
        0,
    >(
        module,
        c"binding_length",
        c"Length of binding for an edge, with what its corners and its two ends take.\n\nLength of binding (mm).\nInputs: edge (mm, 1 to 1000000); corners (0 to 1000); corner (mm, 0 to 1000); finish (mm, 0 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<binding_length, 4, 1>(module, c"all_binding_length")?;
    add_status::<binding_length, 4, 1>(module, c"status_binding_length")?;
    module.add_function(wrap_pyfunction!(one_binding_length, module)?)?;
    add_one::<
        binding_strips,
        3,
        2,
        0,
    >(
        module,
        c"binding_strips__count",
        c"Number of strips of one length to join for a binding.\n\nNumber of strips.\nInputs: length (mm, 1 to 1000000); strip (mm, 10 to 100000); join (mm, 0 to 10000, < strip).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        binding_strips,
        3,
        2,
        1,
    >(
        module,
        c"binding_strips__spare",
        c"Number of strips of one length to join for a binding.\n\nWhat the joined strips are longer than needed (mm).\nInputs: length (mm, 1 to 1000000); strip (mm, 10 to 100000); join (mm, 0 to 10000, < strip).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<binding_strips, 3, 2>(module, c"all_binding_strips")?;
    add_status::<binding_strips, 3, 2>(module, c"status_binding_strips")?;
    module.add_function(wrap_pyfunction!(one_binding_strips, module)?)?;
    add_one::<
        binding_width,
        4,
        1,
        0,
    >(
        module,
        c"binding_width",
        c"Width to cut a binding of a given finished width.\n\nWidth to cut (mm).\nInputs: finished (mm, 0.5 to 1000); turn (mm, 0 to 1000); thickness (mm, 0 to 100); fold.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<binding_width, 4, 1>(module, c"all_binding_width")?;
    add_status::<binding_width, 4, 1>(module, c"status_binding_width")?;
    module.add_function(wrap_pyfunction!(one_binding_width, module)?)?;
    add_one::<
        bleach_dilution,
        8,
        5,
        0,
    >(
        module,
        c"bleach_dilution__bleach_ml",
        c"Bleach and water for a bath of a given strength, for a given cloth and time.\n\nBleach from the bottle (ml).\nInputs: volume_ml (ml, 1 to 1000000); target_pct (%, 0.001 to 0.6, <= stock_pct); stock_pct (%, 0.1 to 20); minutes (min, 0.1 to 60); fibre; finish; swatch; in_bath.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        bleach_dilution,
        8,
        5,
        1,
    >(
        module,
        c"bleach_dilution__water_ml",
        c"Bleach and water for a bath of a given strength, for a given cloth and time.\n\nCold water it is added to (ml).\nInputs: volume_ml (ml, 1 to 1000000); target_pct (%, 0.001 to 0.6, <= stock_pct); stock_pct (%, 0.1 to 20); minutes (min, 0.1 to 60); fibre; finish; swatch; in_bath.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        bleach_dilution,
        8,
        5,
        2,
    >(
        module,
        c"bleach_dilution__parts_water",
        c"Bleach and water for a bath of a given strength, for a given cloth and time.\n\nParts of water to one of bleach.\nInputs: volume_ml (ml, 1 to 1000000); target_pct (%, 0.001 to 0.6, <= stock_pct); stock_pct (%, 0.1 to 20); minutes (min, 0.1 to 60); fibre; finish; swatch; in_bath.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        bleach_dilution,
        8,
        5,
        3,
    >(
        module,
        c"bleach_dilution__doubts",
        c"Bleach and water for a bath of a given strength, for a given cloth and time.\n\nDoubts raised (bits).\nInputs: volume_ml (ml, 1 to 1000000); target_pct (%, 0.001 to 0.6, <= stock_pct); stock_pct (%, 0.1 to 20); minutes (min, 0.1 to 60); fibre; finish; swatch; in_bath.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        bleach_dilution,
        8,
        5,
        4,
    >(
        module,
        c"bleach_dilution__cautions",
        c"Bleach and water for a bath of a given strength, for a given cloth and time.\n\nCautions raised (bits).\nInputs: volume_ml (ml, 1 to 1000000); target_pct (%, 0.001 to 0.6, <= stock_pct); stock_pct (%, 0.1 to 20); minutes (min, 0.1 to 60); fibre; finish; swatch; in_bath.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<bleach_dilution, 8, 5>(module, c"all_bleach_dilution")?;
    add_status::<bleach_dilution, 8, 5>(module, c"status_bleach_dilution")?;
    module.add_function(wrap_pyfunction!(one_bleach_dilution, module)?)?;
    module.add_function(wrap_pyfunction!(one_bleach_time, module)?)?;
    add_one::<
        body_length_doubts,
        1,
        1,
        0,
    >(
        module,
        c"body_length_doubts",
        c"Doubts on a length of the body: back length, shoulder, sleeve, skirt.\n\nThe doubts (bits).\nInputs: length (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<body_length_doubts, 1, 1>(module, c"all_body_length_doubts")?;
    add_status::<body_length_doubts, 1, 1>(module, c"status_body_length_doubts")?;
    module.add_function(wrap_pyfunction!(one_body_length_doubts, module)?)?;
    add_one::<
        box_pleats,
        3,
        9,
        0,
    >(
        module,
        c"box_pleats__flat",
        c"Cloth for box pleats, or inverted ones, of a given number and depth.\n\nWidth before pleating, without allowances (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats,
        3,
        9,
        1,
    >(
        module,
        c"box_pleats__finished",
        c"Cloth for box pleats, or inverted ones, of a given number and depth.\n\nWidth when pleated (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats,
        3,
        9,
        2,
    >(
        module,
        c"box_pleats__count",
        c"Cloth for box pleats, or inverted ones, of a given number and depth.\n\nNumber of pleats.\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats,
        3,
        9,
        3,
    >(
        module,
        c"box_pleats__show",
        c"Cloth for box pleats, or inverted ones, of a given number and depth.\n\nWidth from pleat to pleat (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats,
        3,
        9,
        4,
    >(
        module,
        c"box_pleats__depth",
        c"Cloth for box pleats, or inverted ones, of a given number and depth.\n\nDepth of each of a pleat's two folds (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats,
        3,
        9,
        5,
    >(
        module,
        c"box_pleats__intake",
        c"Cloth for box pleats, or inverted ones, of a given number and depth.\n\nCloth that each pleat takes up, four times its depth (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats,
        3,
        9,
        6,
    >(
        module,
        c"box_pleats__taken_up",
        c"Cloth for box pleats, or inverted ones, of a given number and depth.\n\nCloth that all pleats take up (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats,
        3,
        9,
        7,
    >(
        module,
        c"box_pleats__ratio",
        c"Cloth for box pleats, or inverted ones, of a given number and depth.\n\nFlat over finished: 3 where the folds just meet behind.\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats,
        3,
        9,
        8,
    >(
        module,
        c"box_pleats__doubts",
        c"Cloth for box pleats, or inverted ones, of a given number and depth.\n\nDoubts raised (bits).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<box_pleats, 3, 9>(module, c"all_box_pleats")?;
    add_status::<box_pleats, 3, 9>(module, c"status_box_pleats")?;
    module.add_function(wrap_pyfunction!(one_box_pleats, module)?)?;
    add_one::<
        box_pleats_count,
        3,
        9,
        0,
    >(
        module,
        c"box_pleats_count__flat",
        c"Number of box pleats of at least a given depth that bring cloth there is to a width.\n\nWidth before pleating, without allowances (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_count,
        3,
        9,
        1,
    >(
        module,
        c"box_pleats_count__finished",
        c"Number of box pleats of at least a given depth that bring cloth there is to a width.\n\nWidth when pleated (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_count,
        3,
        9,
        2,
    >(
        module,
        c"box_pleats_count__count",
        c"Number of box pleats of at least a given depth that bring cloth there is to a width.\n\nNumber of pleats.\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_count,
        3,
        9,
        3,
    >(
        module,
        c"box_pleats_count__show",
        c"Number of box pleats of at least a given depth that bring cloth there is to a width.\n\nWidth from pleat to pleat (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_count,
        3,
        9,
        4,
    >(
        module,
        c"box_pleats_count__depth",
        c"Number of box pleats of at least a given depth that bring cloth there is to a width.\n\nDepth of each of a pleat's two folds (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_count,
        3,
        9,
        5,
    >(
        module,
        c"box_pleats_count__intake",
        c"Number of box pleats of at least a given depth that bring cloth there is to a width.\n\nCloth that each pleat takes up, four times its depth (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_count,
        3,
        9,
        6,
    >(
        module,
        c"box_pleats_count__taken_up",
        c"Number of box pleats of at least a given depth that bring cloth there is to a width.\n\nCloth that all pleats take up (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_count,
        3,
        9,
        7,
    >(
        module,
        c"box_pleats_count__ratio",
        c"Number of box pleats of at least a given depth that bring cloth there is to a width.\n\nFlat over finished: 3 where the folds just meet behind.\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_count,
        3,
        9,
        8,
    >(
        module,
        c"box_pleats_count__doubts",
        c"Number of box pleats of at least a given depth that bring cloth there is to a width.\n\nDoubts raised (bits).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<box_pleats_count, 3, 9>(module, c"all_box_pleats_count")?;
    add_status::<box_pleats_count, 3, 9>(module, c"status_box_pleats_count")?;
    module.add_function(wrap_pyfunction!(one_box_pleats_count, module)?)?;
    add_one::<
        box_pleats_depth,
        3,
        9,
        0,
    >(
        module,
        c"box_pleats_depth__flat",
        c"Depth of a given number of box pleats that bring cloth there is to a width.\n\nWidth before pleating, without allowances (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_depth,
        3,
        9,
        1,
    >(
        module,
        c"box_pleats_depth__finished",
        c"Depth of a given number of box pleats that bring cloth there is to a width.\n\nWidth when pleated (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_depth,
        3,
        9,
        2,
    >(
        module,
        c"box_pleats_depth__count",
        c"Depth of a given number of box pleats that bring cloth there is to a width.\n\nNumber of pleats.\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_depth,
        3,
        9,
        3,
    >(
        module,
        c"box_pleats_depth__show",
        c"Depth of a given number of box pleats that bring cloth there is to a width.\n\nWidth from pleat to pleat (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_depth,
        3,
        9,
        4,
    >(
        module,
        c"box_pleats_depth__depth",
        c"Depth of a given number of box pleats that bring cloth there is to a width.\n\nDepth of each of a pleat's two folds (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_depth,
        3,
        9,
        5,
    >(
        module,
        c"box_pleats_depth__intake",
        c"Depth of a given number of box pleats that bring cloth there is to a width.\n\nCloth that each pleat takes up, four times its depth (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_depth,
        3,
        9,
        6,
    >(
        module,
        c"box_pleats_depth__taken_up",
        c"Depth of a given number of box pleats that bring cloth there is to a width.\n\nCloth that all pleats take up (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_depth,
        3,
        9,
        7,
    >(
        module,
        c"box_pleats_depth__ratio",
        c"Depth of a given number of box pleats that bring cloth there is to a width.\n\nFlat over finished: 3 where the folds just meet behind.\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_depth,
        3,
        9,
        8,
    >(
        module,
        c"box_pleats_depth__doubts",
        c"Depth of a given number of box pleats that bring cloth there is to a width.\n\nDoubts raised (bits).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<box_pleats_depth, 3, 9>(module, c"all_box_pleats_depth")?;
    add_status::<box_pleats_depth, 3, 9>(module, c"status_box_pleats_depth")?;
    module.add_function(wrap_pyfunction!(one_box_pleats_depth, module)?)?;
    add_one::<
        box_pleats_finished,
        3,
        9,
        0,
    >(
        module,
        c"box_pleats_finished__flat",
        c"Width to which a given number of box pleats brings cloth there is.\n\nWidth before pleating, without allowances (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_finished,
        3,
        9,
        1,
    >(
        module,
        c"box_pleats_finished__finished",
        c"Width to which a given number of box pleats brings cloth there is.\n\nWidth when pleated (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_finished,
        3,
        9,
        2,
    >(
        module,
        c"box_pleats_finished__count",
        c"Width to which a given number of box pleats brings cloth there is.\n\nNumber of pleats.\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_finished,
        3,
        9,
        3,
    >(
        module,
        c"box_pleats_finished__show",
        c"Width to which a given number of box pleats brings cloth there is.\n\nWidth from pleat to pleat (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_finished,
        3,
        9,
        4,
    >(
        module,
        c"box_pleats_finished__depth",
        c"Width to which a given number of box pleats brings cloth there is.\n\nDepth of each of a pleat's two folds (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_finished,
        3,
        9,
        5,
    >(
        module,
        c"box_pleats_finished__intake",
        c"Width to which a given number of box pleats brings cloth there is.\n\nCloth that each pleat takes up, four times its depth (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_finished,
        3,
        9,
        6,
    >(
        module,
        c"box_pleats_finished__taken_up",
        c"Width to which a given number of box pleats brings cloth there is.\n\nCloth that all pleats take up (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_finished,
        3,
        9,
        7,
    >(
        module,
        c"box_pleats_finished__ratio",
        c"Width to which a given number of box pleats brings cloth there is.\n\nFlat over finished: 3 where the folds just meet behind.\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        box_pleats_finished,
        3,
        9,
        8,
    >(
        module,
        c"box_pleats_finished__doubts",
        c"Width to which a given number of box pleats brings cloth there is.\n\nDoubts raised (bits).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<box_pleats_finished, 3, 9>(module, c"all_box_pleats_finished")?;
    add_status::<box_pleats_finished, 3, 9>(module, c"status_box_pleats_finished")?;
    module.add_function(wrap_pyfunction!(one_box_pleats_finished, module)?)?;
    add_one::<
        breadths,
        3,
        3,
        0,
    >(
        module,
        c"breadths__count",
        c"Number of breadths of cloth that a ring of a given length takes.\n\nNumber of breadths, which is also the number of seams.\nInputs: flat (mm, 1 to 1000000); cloth_width (mm, 1 to 100000); allowance (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        breadths,
        3,
        3,
        1,
    >(
        module,
        c"breadths__round",
        c"Number of breadths of cloth that a ring of a given length takes.\n\nWay round when all are joined at their full width (mm).\nInputs: flat (mm, 1 to 1000000); cloth_width (mm, 1 to 100000); allowance (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        breadths,
        3,
        3,
        2,
    >(
        module,
        c"breadths__spare",
        c"Number of breadths of cloth that a ring of a given length takes.\n\nWhat that is more than wanted: gather it in, or cut the last breadth narrower (mm).\nInputs: flat (mm, 1 to 1000000); cloth_width (mm, 1 to 100000); allowance (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<breadths, 3, 3>(module, c"all_breadths")?;
    add_status::<breadths, 3, 3>(module, c"status_breadths")?;
    module.add_function(wrap_pyfunction!(one_breadths, module)?)?;
    add_one::<
        button_diameter,
        1,
        1,
        0,
    >(
        module,
        c"button_diameter",
        c"Diameter of a button from its size in lines.\n\nThe diameter (mm).\nInputs: lines (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<button_diameter, 1, 1>(module, c"all_button_diameter")?;
    add_status::<button_diameter, 1, 1>(module, c"status_button_diameter")?;
    module.add_function(wrap_pyfunction!(one_button_diameter, module)?)?;
    add_one::<
        button_for_hole,
        3,
        2,
        0,
    >(
        module,
        c"button_for_hole__diameter",
        c"Largest flat button for a slit, and the creep of a cross hole.\n\nLargest diameter of a flat button (mm).\nInputs: slit (mm, 1 to 300); thickness (mm, 0 to 100, < slit); start (mm, 0 to 300, <= slit).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        button_for_hole,
        3,
        2,
        1,
    >(
        module,
        c"button_for_hole__creep",
        c"Largest flat button for a slit, and the creep of a cross hole.\n\nHow far the front is let out when a hole meant to start past the line is centred on it; negative lets it in (mm).\nInputs: slit (mm, 1 to 300); thickness (mm, 0 to 100, < slit); start (mm, 0 to 300, <= slit).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<button_for_hole, 3, 2>(module, c"all_button_for_hole")?;
    add_status::<button_for_hole, 3, 2>(module, c"status_button_for_hole")?;
    module.add_function(wrap_pyfunction!(one_button_for_hole, module)?)?;
    add_one::<
        button_for_stand,
        2,
        1,
        0,
    >(
        module,
        c"button_for_stand",
        c"Largest button for a stand there is.\n\nDiameter of the button (mm).\nInputs: extension (mm, 1 to 600); share (0.5 to 3).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<button_for_stand, 2, 1>(module, c"all_button_for_stand")?;
    add_status::<button_for_stand, 2, 1>(module, c"status_button_for_stand")?;
    module.add_function(wrap_pyfunction!(one_button_for_stand, module)?)?;
    add_one::<
        button_loop,
        7,
        3,
        0,
    >(
        module,
        c"button_loop__visible",
        c"Loop of cord that just passes over a button.\n\nLength of the loop that shows (mm).\nInputs: diameter (mm, 1 to 200); thickness (mm, 0 to 100); cord (mm, 0 to 50); gap (mm, 0 to 500); stretch (0 to 3); seam (mm, 0 to 200); shape.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        button_loop,
        7,
        3,
        1,
    >(
        module,
        c"button_loop__cut",
        c"Loop of cord that just passes over a button.\n\nLength to cut (mm).\nInputs: diameter (mm, 1 to 200); thickness (mm, 0 to 100); cord (mm, 0 to 50); gap (mm, 0 to 500); stretch (0 to 3); seam (mm, 0 to 200); shape.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        button_loop,
        7,
        3,
        2,
    >(
        module,
        c"button_loop__cautions",
        c"Loop of cord that just passes over a button.\n\nCautions raised (bits).\nInputs: diameter (mm, 1 to 200); thickness (mm, 0 to 100); cord (mm, 0 to 50); gap (mm, 0 to 500); stretch (0 to 3); seam (mm, 0 to 200); shape.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<button_loop, 7, 3>(module, c"all_button_loop")?;
    add_status::<button_loop, 7, 3>(module, c"status_button_loop")?;
    module.add_function(wrap_pyfunction!(one_button_loop, module)?)?;
    add_one::<
        button_stand,
        2,
        3,
        0,
    >(
        module,
        c"button_stand__extension",
        c"Button stand for a button: from the line it sits on to the finished edge.\n\nFrom the button line to the finished edge (mm).\nInputs: diameter (mm, 1 to 200); share (0.5 to 3).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        button_stand,
        2,
        3,
        1,
    >(
        module,
        c"button_stand__past_rim",
        c"Button stand for a button: from the line it sits on to the finished edge.\n\nFrom the button's rim to the finished edge (mm).\nInputs: diameter (mm, 1 to 200); share (0.5 to 3).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        button_stand,
        2,
        3,
        2,
    >(
        module,
        c"button_stand__overlap",
        c"Button stand for a button: from the line it sits on to the finished edge.\n\nHow far the two sides lie over each other when buttoned (mm).\nInputs: diameter (mm, 1 to 200); share (0.5 to 3).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<button_stand, 2, 3>(module, c"all_button_stand")?;
    add_status::<button_stand, 2, 3>(module, c"status_button_stand")?;
    module.add_function(wrap_pyfunction!(one_button_stand, module)?)?;
    add_one::<
        buttonhole,
        3,
        1,
        0,
    >(
        module,
        c"buttonhole",
        c"Length of the slit for a flat button.\n\nLength of the slit (mm).\nInputs: diameter (mm, 1 to 200); thickness (mm, 0 to 100); ease (mm, 0 to 20).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<buttonhole, 3, 1>(module, c"all_buttonhole")?;
    add_status::<buttonhole, 3, 1>(module, c"status_buttonhole")?;
    module.add_function(wrap_pyfunction!(one_buttonhole, module)?)?;
    add_one::<
        cap_ease,
        2,
        3,
        0,
    >(
        module,
        c"cap_ease__ease",
        c"Ease of a sleeve cap in its armhole.\n\nWhat the cap is longer; negative when it is too short to be sewn in (mm).\nInputs: armhole (mm, 1 to 100000); cap (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        cap_ease,
        2,
        3,
        1,
    >(
        module,
        c"cap_ease__ease_pct",
        c"Ease of a sleeve cap in its armhole.\n\nThe same over the armhole (%).\nInputs: armhole (mm, 1 to 100000); cap (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        cap_ease,
        2,
        3,
        2,
    >(
        module,
        c"cap_ease__doubts",
        c"Ease of a sleeve cap in its armhole.\n\nDoubts raised (bits).\nInputs: armhole (mm, 1 to 100000); cap (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<cap_ease, 2, 3>(module, c"all_cap_ease")?;
    add_status::<cap_ease, 2, 3>(module, c"status_cap_ease")?;
    module.add_function(wrap_pyfunction!(one_cap_ease, module)?)?;
    add_one::<
        cap_for_ease,
        2,
        1,
        0,
    >(
        module,
        c"cap_for_ease",
        c"Length that a sleeve cap must have for a wanted ease.\n\nSeam line of the cap (mm).\nInputs: armhole (mm, 1 to 100000); ease_pct (%, -20 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<cap_for_ease, 2, 1>(module, c"all_cap_for_ease")?;
    add_status::<cap_for_ease, 2, 1>(module, c"status_cap_for_ease")?;
    module.add_function(wrap_pyfunction!(one_cap_for_ease, module)?)?;
    add_one::<
        cap_width_bound,
        2,
        1,
        0,
    >(
        module,
        c"cap_width_bound",
        c"Widest sleeve that a cap of a given length and height can have.\n\nUpper bound of the width at the underarm line (mm).\nInputs: cap (mm, 1 to 100000); height (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<cap_width_bound, 2, 1>(module, c"all_cap_width_bound")?;
    add_status::<cap_width_bound, 2, 1>(module, c"status_cap_width_bound")?;
    module.add_function(wrap_pyfunction!(one_cap_width_bound, module)?)?;
    add_one::<
        carried_liquor,
        2,
        3,
        0,
    >(
        module,
        c"carried_liquor__carried_ml",
        c"Liquor that goods carry out of a bath.\n\nLiquor carried (ml).\nInputs: mass_g (g, 0.01 to 1000000); pick_up_pct (%, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        carried_liquor,
        2,
        3,
        1,
    >(
        module,
        c"carried_liquor__doubts",
        c"Liquor that goods carry out of a bath.\n\nDoubts raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); pick_up_pct (%, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        carried_liquor,
        2,
        3,
        2,
    >(
        module,
        c"carried_liquor__cautions",
        c"Liquor that goods carry out of a bath.\n\nCautions raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); pick_up_pct (%, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<carried_liquor, 2, 3>(module, c"all_carried_liquor")?;
    add_status::<carried_liquor, 2, 3>(module, c"status_carried_liquor")?;
    module.add_function(wrap_pyfunction!(one_carried_liquor, module)?)?;
    add_one::<
        casing,
        4,
        2,
        0,
    >(
        module,
        c"casing__depth",
        c"Depth and allowance of a casing for elastic or a cord.\n\nFrom the fold to the lower stitching (mm).\nInputs: width (mm, 1 to 500); ease (mm, 0 to 100); turn_in (mm, 0 to 100); heading (mm, 0 to 500).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        casing,
        4,
        2,
        1,
    >(
        module,
        c"casing__allowance",
        c"Depth and allowance of a casing for elastic or a cord.\n\nAllowance beyond the fold (mm).\nInputs: width (mm, 1 to 500); ease (mm, 0 to 100); turn_in (mm, 0 to 100); heading (mm, 0 to 500).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<casing, 4, 2>(module, c"all_casing")?;
    add_status::<casing, 4, 2>(module, c"status_casing")?;
    module.add_function(wrap_pyfunction!(one_casing, module)?)?;
    add_one::<
        ciede2000,
        6,
        1,
        0,
    >(
        module,
        c"ciede2000",
        c"How far apart two colours look, by CIEDE2000.\n\nColour difference.\nInputs: l1 (0 to 100); a1 (-200 to 200); b1 (-200 to 200); l2 (0 to 100); a2 (-200 to 200); b2 (-200 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<ciede2000, 6, 1>(module, c"all_ciede2000")?;
    add_status::<ciede2000, 6, 1>(module, c"status_ciede2000")?;
    module.add_function(wrap_pyfunction!(one_ciede2000, module)?)?;
    add_one::<
        circle_skirt,
        3,
        4,
        0,
    >(
        module,
        c"circle_skirt__waist_radius",
        c"Radii of a skirt cut from part of a ring.\n\nRadius of the waist edge (mm).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); fraction (0.01 to 4).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt,
        3,
        4,
        1,
    >(
        module,
        c"circle_skirt__hem_radius",
        c"Radii of a skirt cut from part of a ring.\n\nRadius of the hem edge (mm).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); fraction (0.01 to 4).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt,
        3,
        4,
        2,
    >(
        module,
        c"circle_skirt__hem_length",
        c"Radii of a skirt cut from part of a ring.\n\nLength of the hem edge (mm).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); fraction (0.01 to 4).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt,
        3,
        4,
        3,
    >(
        module,
        c"circle_skirt__doubts",
        c"Radii of a skirt cut from part of a ring.\n\nDoubts raised (bits).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); fraction (0.01 to 4).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<circle_skirt, 3, 4>(module, c"all_circle_skirt")?;
    add_status::<circle_skirt, 3, 4>(module, c"status_circle_skirt")?;
    module.add_function(wrap_pyfunction!(one_circle_skirt, module)?)?;
    add_one::<
        circle_skirt_fraction,
        4,
        8,
        0,
    >(
        module,
        c"circle_skirt_fraction__fraction",
        c"Largest part of a ring from which cloth of a given width gives a skirt of a given length.\n\nPart of a full ring.\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_fraction,
        4,
        8,
        1,
    >(
        module,
        c"circle_skirt_fraction__length",
        c"Largest part of a ring from which cloth of a given width gives a skirt of a given length.\n\nWaist edge to hem edge (mm).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_fraction,
        4,
        8,
        2,
    >(
        module,
        c"circle_skirt_fraction__waist_radius",
        c"Largest part of a ring from which cloth of a given width gives a skirt of a given length.\n\nRadius of the waist edge (mm).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_fraction,
        4,
        8,
        3,
    >(
        module,
        c"circle_skirt_fraction__hem_radius",
        c"Largest part of a ring from which cloth of a given width gives a skirt of a given length.\n\nRadius of the hem edge (mm).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_fraction,
        4,
        8,
        4,
    >(
        module,
        c"circle_skirt_fraction__hem_length",
        c"Largest part of a ring from which cloth of a given width gives a skirt of a given length.\n\nLength of the hem edge, all pieces together (mm).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_fraction,
        4,
        8,
        5,
    >(
        module,
        c"circle_skirt_fraction__piece_angle_deg",
        c"Largest part of a ring from which cloth of a given width gives a skirt of a given length.\n\nAngle of one piece (deg).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_fraction,
        4,
        8,
        6,
    >(
        module,
        c"circle_skirt_fraction__cloth_length",
        c"Largest part of a ring from which cloth of a given width gives a skirt of a given length.\n\nCloth one piece takes along the grain (mm).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_fraction,
        4,
        8,
        7,
    >(
        module,
        c"circle_skirt_fraction__doubts",
        c"Largest part of a ring from which cloth of a given width gives a skirt of a given length.\n\nDoubts raised (bits).\nInputs: waist (mm, 1 to 100000); length (mm, 0 to 100000); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<circle_skirt_fraction, 4, 8>(module, c"all_circle_skirt_fraction")?;
    add_status::<circle_skirt_fraction, 4, 8>(module, c"status_circle_skirt_fraction")?;
    module.add_function(wrap_pyfunction!(one_circle_skirt_fraction, module)?)?;
    add_one::<
        circle_skirt_longest,
        4,
        8,
        0,
    >(
        module,
        c"circle_skirt_longest__fraction",
        c"Longest skirt of a given part of a ring that cloth of a given width allows.\n\nPart of a full ring.\nInputs: waist (mm, 1 to 100000); fraction (0.01 to 4, <= pieces); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_longest,
        4,
        8,
        1,
    >(
        module,
        c"circle_skirt_longest__length",
        c"Longest skirt of a given part of a ring that cloth of a given width allows.\n\nWaist edge to hem edge (mm).\nInputs: waist (mm, 1 to 100000); fraction (0.01 to 4, <= pieces); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_longest,
        4,
        8,
        2,
    >(
        module,
        c"circle_skirt_longest__waist_radius",
        c"Longest skirt of a given part of a ring that cloth of a given width allows.\n\nRadius of the waist edge (mm).\nInputs: waist (mm, 1 to 100000); fraction (0.01 to 4, <= pieces); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_longest,
        4,
        8,
        3,
    >(
        module,
        c"circle_skirt_longest__hem_radius",
        c"Longest skirt of a given part of a ring that cloth of a given width allows.\n\nRadius of the hem edge (mm).\nInputs: waist (mm, 1 to 100000); fraction (0.01 to 4, <= pieces); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_longest,
        4,
        8,
        4,
    >(
        module,
        c"circle_skirt_longest__hem_length",
        c"Longest skirt of a given part of a ring that cloth of a given width allows.\n\nLength of the hem edge, all pieces together (mm).\nInputs: waist (mm, 1 to 100000); fraction (0.01 to 4, <= pieces); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_longest,
        4,
        8,
        5,
    >(
        module,
        c"circle_skirt_longest__piece_angle_deg",
        c"Longest skirt of a given part of a ring that cloth of a given width allows.\n\nAngle of one piece (deg).\nInputs: waist (mm, 1 to 100000); fraction (0.01 to 4, <= pieces); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_longest,
        4,
        8,
        6,
    >(
        module,
        c"circle_skirt_longest__cloth_length",
        c"Longest skirt of a given part of a ring that cloth of a given width allows.\n\nCloth one piece takes along the grain (mm).\nInputs: waist (mm, 1 to 100000); fraction (0.01 to 4, <= pieces); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        circle_skirt_longest,
        4,
        8,
        7,
    >(
        module,
        c"circle_skirt_longest__doubts",
        c"Longest skirt of a given part of a ring that cloth of a given width allows.\n\nDoubts raised (bits).\nInputs: waist (mm, 1 to 100000); fraction (0.01 to 4, <= pieces); cloth_width (mm, 1 to 100000); pieces (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<circle_skirt_longest, 4, 8>(module, c"all_circle_skirt_longest")?;
    add_status::<circle_skirt_longest, 4, 8>(module, c"status_circle_skirt_longest")?;
    module.add_function(wrap_pyfunction!(one_circle_skirt_longest, module)?)?;
    add_one::<
        cloth_mass,
        3,
        1,
        0,
    >(
        module,
        c"cloth_mass",
        c"Mass of a rectangle of cloth.\n\nMass (g).\nInputs: length (mm, 0 to 10000000); width (mm, 0 to 100000); gsm (gsm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<cloth_mass, 3, 1>(module, c"all_cloth_mass")?;
    add_status::<cloth_mass, 3, 1>(module, c"status_cloth_mass")?;
    module.add_function(wrap_pyfunction!(one_cloth_mass, module)?)?;
    add_one::<
        cloth_to_buy,
        4,
        1,
        0,
    >(
        module,
        c"cloth_to_buy",
        c"Length of cloth to buy, with what repeats and nap take, rounded up to what the shop cuts.\n\nLength to buy (mm).\nInputs: length (mm, 0 to 1000000); repeat (mm, 0 to 10000); extra (mm, 0 to 100000); graduation (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<cloth_to_buy, 4, 1>(module, c"all_cloth_to_buy")?;
    add_status::<cloth_to_buy, 4, 1>(module, c"status_cloth_to_buy")?;
    module.add_function(wrap_pyfunction!(one_cloth_to_buy, module)?)?;
    add_one::<
        component_check,
        6,
        4,
        0,
    >(
        module,
        c"component_check__bears",
        c"Whether one part of a garment bears a bath, and whether it takes colour there.\n\n0: it bears the bath; 1: a swatch decides; 2: it does not, so take it off first.\nInputs: fibre; finish; swatch; bath; temperature_c (degC, 0 to 100); minutes (min, 0 to 1440).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        component_check,
        6,
        4,
        1,
    >(
        module,
        c"component_check__colour",
        c"Whether one part of a garment bears a bath, and whether it takes colour there.\n\nColour it takes in this bath: 0 none, 1 some or not sure, 2 well.\nInputs: fibre; finish; swatch; bath; temperature_c (degC, 0 to 100); minutes (min, 0 to 1440).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        component_check,
        6,
        4,
        2,
    >(
        module,
        c"component_check__doubts",
        c"Whether one part of a garment bears a bath, and whether it takes colour there.\n\nDoubts raised (bits).\nInputs: fibre; finish; swatch; bath; temperature_c (degC, 0 to 100); minutes (min, 0 to 1440).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        component_check,
        6,
        4,
        3,
    >(
        module,
        c"component_check__cautions",
        c"Whether one part of a garment bears a bath, and whether it takes colour there.\n\nCautions raised (bits).\nInputs: fibre; finish; swatch; bath; temperature_c (degC, 0 to 100); minutes (min, 0 to 1440).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<component_check, 6, 4>(module, c"all_component_check")?;
    add_status::<component_check, 6, 4>(module, c"status_component_check")?;
    module.add_function(wrap_pyfunction!(one_component_check, module)?)?;
    add_one::<
        cover_mark,
        3,
        5,
        0,
    >(
        module,
        c"cover_mark__now",
        c"Depth of dye that brings a mark within a limit of its ground.\n\nColour difference of mark and ground as they are, CIEDE2000.\nInputs: ground (0.001 to 1); mark (0.001 to 1); limit (0.01 to 50).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        cover_mark,
        3,
        5,
        1,
    >(
        module,
        c"cover_mark__depth",
        c"Depth of dye that brings a mark within a limit of its ground.\n\nDepth that the dye must add to both, K/S; 0 when nothing is needed.\nInputs: ground (0.001 to 1); mark (0.001 to 1); limit (0.01 to 50).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        cover_mark,
        3,
        5,
        2,
    >(
        module,
        c"cover_mark__ground_after",
        c"Depth of dye that brings a mark within a limit of its ground.\n\nReflectance of the ground then.\nInputs: ground (0.001 to 1); mark (0.001 to 1); limit (0.01 to 50).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        cover_mark,
        3,
        5,
        3,
    >(
        module,
        c"cover_mark__mark_after",
        c"Depth of dye that brings a mark within a limit of its ground.\n\nReflectance of the mark then.\nInputs: ground (0.001 to 1); mark (0.001 to 1); limit (0.01 to 50).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        cover_mark,
        3,
        5,
        4,
    >(
        module,
        c"cover_mark__after",
        c"Depth of dye that brings a mark within a limit of its ground.\n\nColour difference then.\nInputs: ground (0.001 to 1); mark (0.001 to 1); limit (0.01 to 50).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<cover_mark, 3, 5>(module, c"all_cover_mark")?;
    add_status::<cover_mark, 3, 5>(module, c"status_cover_mark")?;
    module.add_function(wrap_pyfunction!(one_cover_mark, module)?)?;
    module.add_function(wrap_pyfunction!(one_curved_band, module)?)?;
    add_one::<
        curved_binding,
        4,
        3,
        0,
    >(
        module,
        c"curved_binding__seam",
        c"Stretch of a bias strip that is to lie flat on a curved edge.\n\nLength of the seam that sews the binding on (mm).\nInputs: edge (mm, 1 to 100000); radius (mm, 1 to 1000000); finished (mm, 0.5 to 1000); curve.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        curved_binding,
        4,
        3,
        1,
    >(
        module,
        c"curved_binding__stretch_pct",
        c"Stretch of a bias strip that is to lie flat on a curved edge.\n\nWhat the strip is stretched along that seam; negative where it is eased (%).\nInputs: edge (mm, 1 to 100000); radius (mm, 1 to 1000000); finished (mm, 0.5 to 1000); curve.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        curved_binding,
        4,
        3,
        2,
    >(
        module,
        c"curved_binding__width_pct",
        c"Stretch of a bias strip that is to lie flat on a curved edge.\n\nWidth that a bias strip keeps where it is so stretched; above 100 where it is eased (%).\nInputs: edge (mm, 1 to 100000); radius (mm, 1 to 1000000); finished (mm, 0.5 to 1000); curve.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<curved_binding, 4, 3>(module, c"all_curved_binding")?;
    add_status::<curved_binding, 4, 3>(module, c"status_curved_binding")?;
    module.add_function(wrap_pyfunction!(one_curved_binding, module)?)?;
    add_one::<
        cut_for_change,
        2,
        3,
        0,
    >(
        module,
        c"cut_for_change__cut",
        c"Length to cut so that washing brings it to a finished length.\n\nLength to cut (mm).\nInputs: finished (mm, 0 to 1000000); change_pct (%, -90 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        cut_for_change,
        2,
        3,
        1,
    >(
        module,
        c"cut_for_change__added",
        c"Length to cut so that washing brings it to a finished length.\n\nWhat is added; negative for cloth that grows (mm).\nInputs: finished (mm, 0 to 1000000); change_pct (%, -90 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        cut_for_change,
        2,
        3,
        2,
    >(
        module,
        c"cut_for_change__doubts",
        c"Length to cut so that washing brings it to a finished length.\n\nDoubts raised (bits).\nInputs: finished (mm, 0 to 1000000); change_pct (%, -90 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<cut_for_change, 2, 3>(module, c"all_cut_for_change")?;
    add_status::<cut_for_change, 2, 3>(module, c"status_cut_for_change")?;
    module.add_function(wrap_pyfunction!(one_cut_for_change, module)?)?;
    add_one::<
        cut_state,
        3,
        2,
        0,
    >(
        module,
        c"cut_state__finished",
        c"Finished and cut width of a piece, from what its two edges are drawn as.\n\nWidth between the seam lines (mm).\nInputs: drawn (mm, 1 to 100000); allowance (mm, 0 to 1000); cut_edges (0 to 2).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        cut_state,
        3,
        2,
        1,
    >(
        module,
        c"cut_state__cut",
        c"Finished and cut width of a piece, from what its two edges are drawn as.\n\nWidth between the cut edges (mm).\nInputs: drawn (mm, 1 to 100000); allowance (mm, 0 to 1000); cut_edges (0 to 2).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<cut_state, 3, 2>(module, c"all_cut_state")?;
    add_status::<cut_state, 3, 2>(module, c"status_cut_state")?;
    module.add_function(wrap_pyfunction!(one_cut_state, module)?)?;
    add_one::<
        dart,
        2,
        3,
        0,
    >(
        module,
        c"dart__leg",
        c"Leg and angle of a dart from its intake and the length of its centre line.\n\nLength of each leg, edge to point (mm).\nInputs: intake (mm, 0 to 10000); length (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        dart,
        2,
        3,
        1,
    >(
        module,
        c"dart__angle_deg",
        c"Leg and angle of a dart from its intake and the length of its centre line.\n\nAngle at the point, which is also the kink of a straight edge when the dart is closed (deg).\nInputs: intake (mm, 0 to 10000); length (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        dart,
        2,
        3,
        2,
    >(
        module,
        c"dart__doubts",
        c"Leg and angle of a dart from its intake and the length of its centre line.\n\nDoubts raised (bits).\nInputs: intake (mm, 0 to 10000); length (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<dart, 2, 3>(module, c"all_dart")?;
    add_status::<dart, 2, 3>(module, c"status_dart")?;
    module.add_function(wrap_pyfunction!(one_dart, module)?)?;
    add_one::<
        dart_equivalent,
        3,
        4,
        0,
    >(
        module,
        c"dart_equivalent__ease_pct",
        c"Ease, gathers or tucks that take up as much as a dart, along a stretch of its edge.\n\nEase of the seam, if it is eased in (%).\nInputs: intake (mm, 0 to 10000); finished (mm, 1 to 100000); tucks (1 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        dart_equivalent,
        3,
        4,
        1,
    >(
        module,
        c"dart_equivalent__gather_ratio",
        c"Ease, gathers or tucks that take up as much as a dart, along a stretch of its edge.\n\nRatio of the gathers, if it is gathered.\nInputs: intake (mm, 0 to 10000); finished (mm, 1 to 100000); tucks (1 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        dart_equivalent,
        3,
        4,
        2,
    >(
        module,
        c"dart_equivalent__tuck_depth",
        c"Ease, gathers or tucks that take up as much as a dart, along a stretch of its edge.\n\nDepth of each tuck or pleat, if it is folded (mm).\nInputs: intake (mm, 0 to 10000); finished (mm, 1 to 100000); tucks (1 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        dart_equivalent,
        3,
        4,
        3,
    >(
        module,
        c"dart_equivalent__doubts",
        c"Ease, gathers or tucks that take up as much as a dart, along a stretch of its edge.\n\n`GATHERS_SCANT` or `GATHERS_LARGE` when as gathers it would look like a mistake (bits).\nInputs: intake (mm, 0 to 10000); finished (mm, 1 to 100000); tucks (1 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<dart_equivalent, 3, 4>(module, c"all_dart_equivalent")?;
    add_status::<dart_equivalent, 3, 4>(module, c"status_dart_equivalent")?;
    module.add_function(wrap_pyfunction!(one_dart_equivalent, module)?)?;
    add_one::<
        dart_from_gape,
        3,
        2,
        0,
    >(
        module,
        c"dart_from_gape__intake",
        c"Dart that takes up the gape of an edge, turned to another edge.\n\nWidth of the dart at its own edge (mm).\nInputs: gape (mm, 0 to 10000); gape_distance (mm, 1 to 10000); dart_leg (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        dart_from_gape,
        3,
        2,
        1,
    >(
        module,
        c"dart_from_gape__angle_deg",
        c"Dart that takes up the gape of an edge, turned to another edge.\n\nAngle at the point (deg).\nInputs: gape (mm, 0 to 10000); gape_distance (mm, 1 to 10000); dart_leg (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<dart_from_gape, 3, 2>(module, c"all_dart_from_gape")?;
    add_status::<dart_from_gape, 3, 2>(module, c"status_dart_from_gape")?;
    module.add_function(wrap_pyfunction!(one_dart_from_gape, module)?)?;
    add_one::<
        dart_in_panel,
        5,
        5,
        0,
    >(
        module,
        c"dart_in_panel__intake_each",
        c"Darts that bring a panel there is to the width wanted.\n\nIntake of each dart (mm).\nInputs: panel_width (mm, 1 to 100000); wanted_width (mm, 1 to 100000, <= panel_width); count (1 to 16); largest_intake (mm, 0 to 10000); length (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        dart_in_panel,
        5,
        5,
        1,
    >(
        module,
        c"dart_in_panel__leftover",
        c"Darts that bring a panel there is to the width wanted.\n\nWidth still to be taken, at the side seam (mm).\nInputs: panel_width (mm, 1 to 100000); wanted_width (mm, 1 to 100000, <= panel_width); count (1 to 16); largest_intake (mm, 0 to 10000); length (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        dart_in_panel,
        5,
        5,
        2,
    >(
        module,
        c"dart_in_panel__leg",
        c"Darts that bring a panel there is to the width wanted.\n\nLength of each leg (mm).\nInputs: panel_width (mm, 1 to 100000); wanted_width (mm, 1 to 100000, <= panel_width); count (1 to 16); largest_intake (mm, 0 to 10000); length (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        dart_in_panel,
        5,
        5,
        3,
    >(
        module,
        c"dart_in_panel__kink_deg",
        c"Darts that bring a panel there is to the width wanted.\n\nKink of the straight edge at each closed dart; the edge is trued there before cutting (deg).\nInputs: panel_width (mm, 1 to 100000); wanted_width (mm, 1 to 100000, <= panel_width); count (1 to 16); largest_intake (mm, 0 to 10000); length (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        dart_in_panel,
        5,
        5,
        4,
    >(
        module,
        c"dart_in_panel__doubts",
        c"Darts that bring a panel there is to the width wanted.\n\nDoubts raised (bits).\nInputs: panel_width (mm, 1 to 100000); wanted_width (mm, 1 to 100000, <= panel_width); count (1 to 16); largest_intake (mm, 0 to 10000); length (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<dart_in_panel, 5, 5>(module, c"all_dart_in_panel")?;
    add_status::<dart_in_panel, 5, 5>(module, c"status_dart_in_panel")?;
    module.add_function(wrap_pyfunction!(one_dart_in_panel, module)?)?;
    add_one::<
        dart_turned,
        3,
        1,
        0,
    >(
        module,
        c"dart_turned",
        c"Intake of a dart that is turned about its point to an edge at another distance.\n\nWidth of the dart at the new edge (mm).\nInputs: intake (mm, 0 to 10000); leg (mm, 1 to 10000); new_leg (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<dart_turned, 3, 1>(module, c"all_dart_turned")?;
    add_status::<dart_turned, 3, 1>(module, c"status_dart_turned")?;
    module.add_function(wrap_pyfunction!(one_dart_turned, module)?)?;
    add_one::<
        dart_width_at,
        3,
        1,
        0,
    >(
        module,
        c"dart_width_at",
        c"Width of a dart between its point and its edge.\n\nWidth of the dart there (mm).\nInputs: intake (mm, 0 to 10000); leg (mm, 1 to 10000); distance (mm, 0 to 10000, <= leg).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<dart_width_at, 3, 1>(module, c"all_dart_width_at")?;
    add_status::<dart_width_at, 3, 1>(module, c"status_dart_width_at")?;
    module.add_function(wrap_pyfunction!(one_dart_width_at, module)?)?;
    add_one::<
        deepest_hem,
        2,
        1,
        0,
    >(
        module,
        c"deepest_hem",
        c"Deepest hem on a flared edge that can still be eased in.\n\nDepth of the hem (mm).\nInputs: radius (mm, 1 to 1000000); excess_pct (%, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<deepest_hem, 2, 1>(module, c"all_deepest_hem")?;
    add_status::<deepest_hem, 2, 1>(module, c"status_deepest_hem")?;
    module.add_function(wrap_pyfunction!(one_deepest_hem, module)?)?;
    add_one::<
        dimensional_change,
        2,
        1,
        0,
    >(
        module,
        c"dimensional_change",
        c"Dimensional change of cloth in the wash, in percent; minus is shrinkage.\n\nChange (%).\nInputs: before (mm, 1 to 1000000); after (mm, 1 to 1000000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<dimensional_change, 2, 1>(module, c"all_dimensional_change")?;
    add_status::<dimensional_change, 2, 1>(module, c"status_dimensional_change")?;
    module.add_function(wrap_pyfunction!(one_dimensional_change, module)?)?;
    add_one::<
        double_dart,
        3,
        6,
        0,
    >(
        module,
        c"double_dart__upper_leg",
        c"Legs and angles of a dart with a point at each end, as at the waist of a dress.\n\nLength of each upper leg (mm).\nInputs: intake (mm, 0 to 10000); upper (mm, 1 to 10000); lower (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        double_dart,
        3,
        6,
        1,
    >(
        module,
        c"double_dart__lower_leg",
        c"Legs and angles of a dart with a point at each end, as at the waist of a dress.\n\nLength of each lower leg (mm).\nInputs: intake (mm, 0 to 10000); upper (mm, 1 to 10000); lower (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        double_dart,
        3,
        6,
        2,
    >(
        module,
        c"double_dart__upper_angle_deg",
        c"Legs and angles of a dart with a point at each end, as at the waist of a dress.\n\nAngle at the upper point (deg).\nInputs: intake (mm, 0 to 10000); upper (mm, 1 to 10000); lower (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        double_dart,
        3,
        6,
        3,
    >(
        module,
        c"double_dart__lower_angle_deg",
        c"Legs and angles of a dart with a point at each end, as at the waist of a dress.\n\nAngle at the lower point (deg).\nInputs: intake (mm, 0 to 10000); upper (mm, 1 to 10000); lower (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        double_dart,
        3,
        6,
        4,
    >(
        module,
        c"double_dart__bend_deg",
        c"Legs and angles of a dart with a point at each end, as at the waist of a dress.\n\nHow far each leg turns where the dart is widest, where its fold is snipped (deg).\nInputs: intake (mm, 0 to 10000); upper (mm, 1 to 10000); lower (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        double_dart,
        3,
        6,
        5,
    >(
        module,
        c"double_dart__doubts",
        c"Legs and angles of a dart with a point at each end, as at the waist of a dress.\n\nDoubts raised (bits).\nInputs: intake (mm, 0 to 10000); upper (mm, 1 to 10000); lower (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<double_dart, 3, 6>(module, c"all_double_dart")?;
    add_status::<double_dart, 3, 6>(module, c"status_double_dart")?;
    module.add_function(wrap_pyfunction!(one_double_dart, module)?)?;
    add_one::<
        elastic,
        4,
        6,
        0,
    >(
        module,
        c"elastic__round",
        c"Length of elastic for a waist or a cuff, and the stretch asked of it.\n\nWay round the joined elastic, not stretched (mm).\nInputs: girth (mm, 1 to 100000); widest (mm, 1 to 100000, >= girth); shorter (mm, 0 to 10000, < girth); overlap (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        elastic,
        4,
        6,
        1,
    >(
        module,
        c"elastic__cut",
        c"Length of elastic for a waist or a cuff, and the stretch asked of it.\n\nLength to cut, with its overlap (mm).\nInputs: girth (mm, 1 to 100000); widest (mm, 1 to 100000, >= girth); shorter (mm, 0 to 10000, < girth); overlap (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        elastic,
        4,
        6,
        2,
    >(
        module,
        c"elastic__worn_pct",
        c"Length of elastic for a waist or a cuff, and the stretch asked of it.\n\nStretch when worn (%).\nInputs: girth (mm, 1 to 100000); widest (mm, 1 to 100000, >= girth); shorter (mm, 0 to 10000, < girth); overlap (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        elastic,
        4,
        6,
        3,
    >(
        module,
        c"elastic__passing_pct",
        c"Length of elastic for a waist or a cuff, and the stretch asked of it.\n\nStretch when the widest part passes through (%).\nInputs: girth (mm, 1 to 100000); widest (mm, 1 to 100000, >= girth); shorter (mm, 0 to 10000, < girth); overlap (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        elastic,
        4,
        6,
        4,
    >(
        module,
        c"elastic__doubts",
        c"Length of elastic for a waist or a cuff, and the stretch asked of it.\n\nDoubts raised (bits).\nInputs: girth (mm, 1 to 100000); widest (mm, 1 to 100000, >= girth); shorter (mm, 0 to 10000, < girth); overlap (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        elastic,
        4,
        6,
        5,
    >(
        module,
        c"elastic__cautions",
        c"Length of elastic for a waist or a cuff, and the stretch asked of it.\n\nAlways `ELASTIC_BATH` (bits).\nInputs: girth (mm, 1 to 100000); widest (mm, 1 to 100000, >= girth); shorter (mm, 0 to 10000, < girth); overlap (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<elastic, 4, 6>(module, c"all_elastic")?;
    add_status::<elastic, 4, 6>(module, c"status_elastic")?;
    module.add_function(wrap_pyfunction!(one_elastic, module)?)?;
    add_one::<
        even_spacing,
        3,
        1,
        0,
    >(
        module,
        c"even_spacing",
        c"Pitch of buttons or holes spaced evenly.\n\nFrom middle to middle of neighbours (mm).\nInputs: first (mm, 0 to 100000); last (mm, 0 to 100000, > first); count (2 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<even_spacing, 3, 1>(module, c"all_even_spacing")?;
    add_status::<even_spacing, 3, 1>(module, c"status_even_spacing")?;
    module.add_function(wrap_pyfunction!(one_even_spacing, module)?)?;
    add_one::<
        five_gores,
        2,
        7,
        0,
    >(
        module,
        c"five_gores__front_waist",
        c"Widths of a five-gored skirt's half pattern by a handed-down rule.\n\nHalf the front gore at the waist (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        five_gores,
        2,
        7,
        1,
    >(
        module,
        c"five_gores__side_waist",
        c"Widths of a five-gored skirt's half pattern by a handed-down rule.\n\nSide gore at the waist (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        five_gores,
        2,
        7,
        2,
    >(
        module,
        c"five_gores__back_waist",
        c"Widths of a five-gored skirt's half pattern by a handed-down rule.\n\nBack gore at the waist, its gathers included (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        five_gores,
        2,
        7,
        3,
    >(
        module,
        c"five_gores__front_hip",
        c"Widths of a five-gored skirt's half pattern by a handed-down rule.\n\nHalf the front gore at the hip (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        five_gores,
        2,
        7,
        4,
    >(
        module,
        c"five_gores__side_hip",
        c"Widths of a five-gored skirt's half pattern by a handed-down rule.\n\nSide gore at the hip (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        five_gores,
        2,
        7,
        5,
    >(
        module,
        c"five_gores__back_hip",
        c"Widths of a five-gored skirt's half pattern by a handed-down rule.\n\nBack gore at the hip (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        five_gores,
        2,
        7,
        6,
    >(
        module,
        c"five_gores__doubts",
        c"Widths of a five-gored skirt's half pattern by a handed-down rule.\n\nDoubts raised (bits).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<five_gores, 2, 7>(module, c"all_five_gores")?;
    add_status::<five_gores, 2, 7>(module, c"status_five_gores")?;
    module.add_function(wrap_pyfunction!(one_five_gores, module)?)?;
    add_one::<
        flounce,
        4,
        5,
        0,
    >(
        module,
        c"flounce__inner_radius",
        c"Rings for a flounce that lies flat along its edge and ripples at its hem.\n\nRadius of the seam line that is sewn on (mm).\nInputs: edge (mm, 1 to 1000000); depth (mm, 1 to 10000); rings (1 to 200); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        flounce,
        4,
        5,
        1,
    >(
        module,
        c"flounce__outer_radius",
        c"Rings for a flounce that lies flat along its edge and ripples at its hem.\n\nRadius of the finished hem (mm).\nInputs: edge (mm, 1 to 1000000); depth (mm, 1 to 10000); rings (1 to 200); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        flounce,
        4,
        5,
        2,
    >(
        module,
        c"flounce__hem",
        c"Rings for a flounce that lies flat along its edge and ripples at its hem.\n\nFinished hem of all rings joined (mm).\nInputs: edge (mm, 1 to 1000000); depth (mm, 1 to 10000); rings (1 to 200); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        flounce,
        4,
        5,
        3,
    >(
        module,
        c"flounce__ratio",
        c"Rings for a flounce that lies flat along its edge and ripples at its hem.\n\nHem over edge: how much it ripples.\nInputs: edge (mm, 1 to 1000000); depth (mm, 1 to 10000); rings (1 to 200); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        flounce,
        4,
        5,
        4,
    >(
        module,
        c"flounce__square",
        c"Rings for a flounce that lies flat along its edge and ripples at its hem.\n\nSide of the square of cloth that each ring takes, without hem allowance (mm).\nInputs: edge (mm, 1 to 1000000); depth (mm, 1 to 10000); rings (1 to 200); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<flounce, 4, 5>(module, c"all_flounce")?;
    add_status::<flounce, 4, 5>(module, c"status_flounce")?;
    module.add_function(wrap_pyfunction!(one_flounce, module)?)?;
    add_one::<
        folded_band,
        4,
        3,
        0,
    >(
        module,
        c"folded_band__cut_width",
        c"Width of a strip that is folded along its middle to a band, a cuff or a placket, and where its fold lies.\n\nWidth to cut, raw edge to raw edge (mm).\nInputs: depth (mm, 1 to 10000); allowance (mm, 0 to 1000); turn (mm, 0 to 100); past (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        folded_band,
        4,
        3,
        1,
    >(
        module,
        c"folded_band__fold_line",
        c"Width of a strip that is folded along its middle to a band, a cuff or a placket, and where its fold lies.\n\nFold line from the raw edge that is sewn to the garment (mm).\nInputs: depth (mm, 1 to 10000); allowance (mm, 0 to 1000); turn (mm, 0 to 100); past (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        folded_band,
        4,
        3,
        2,
    >(
        module,
        c"folded_band__inner",
        c"Width of a strip that is folded along its middle to a band, a cuff or a placket, and where its fold lies.\n\nFrom the fold to the raw edge of the inner layer (mm).\nInputs: depth (mm, 1 to 10000); allowance (mm, 0 to 1000); turn (mm, 0 to 100); past (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<folded_band, 4, 3>(module, c"all_folded_band")?;
    add_status::<folded_band, 4, 3>(module, c"status_folded_band")?;
    module.add_function(wrap_pyfunction!(one_folded_band, module)?)?;
    module.add_function(wrap_pyfunction!(one_format_length, module)?)?;
    add_one::<
        front_back_doubts,
        2,
        1,
        0,
    >(
        module,
        c"front_back_doubts",
        c"Doubts on a front and a back at one level, together.\n\nThe doubts (bits).\nInputs: front (mm, 1 to 100000); back (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<front_back_doubts, 2, 1>(module, c"all_front_back_doubts")?;
    add_status::<front_back_doubts, 2, 1>(module, c"status_front_back_doubts")?;
    module.add_function(wrap_pyfunction!(one_front_back_doubts, module)?)?;
    add_one::<
        frustum,
        3,
        5,
        0,
    >(
        module,
        c"frustum__slant",
        c"Part of a ring that rolls up to a cone, or to a part of one, of given diameters and height.\n\nFrom edge to edge along the cloth (mm).\nInputs: lower_diameter (mm, 1 to 100000); upper_diameter (mm, 0 to 100000, < lower_diameter); height (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        frustum,
        3,
        5,
        1,
    >(
        module,
        c"frustum__inner_radius",
        c"Part of a ring that rolls up to a cone, or to a part of one, of given diameters and height.\n\nRadius of the upper, smaller edge, laid flat (mm).\nInputs: lower_diameter (mm, 1 to 100000); upper_diameter (mm, 0 to 100000, < lower_diameter); height (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        frustum,
        3,
        5,
        2,
    >(
        module,
        c"frustum__outer_radius",
        c"Part of a ring that rolls up to a cone, or to a part of one, of given diameters and height.\n\nRadius of the lower, larger edge, laid flat (mm).\nInputs: lower_diameter (mm, 1 to 100000); upper_diameter (mm, 0 to 100000, < lower_diameter); height (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        frustum,
        3,
        5,
        3,
    >(
        module,
        c"frustum__angle_deg",
        c"Part of a ring that rolls up to a cone, or to a part of one, of given diameters and height.\n\nAngle of the sector (deg).\nInputs: lower_diameter (mm, 1 to 100000); upper_diameter (mm, 0 to 100000, < lower_diameter); height (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        frustum,
        3,
        5,
        4,
    >(
        module,
        c"frustum__area_mm2",
        c"Part of a ring that rolls up to a cone, or to a part of one, of given diameters and height.\n\nArea of the sector, without allowances (mm2).\nInputs: lower_diameter (mm, 1 to 100000); upper_diameter (mm, 0 to 100000, < lower_diameter); height (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<frustum, 3, 5>(module, c"all_frustum")?;
    add_status::<frustum, 3, 5>(module, c"status_frustum")?;
    module.add_function(wrap_pyfunction!(one_frustum, module)?)?;
    add_one::<
        gather_ratio,
        2,
        4,
        0,
    >(
        module,
        c"gather_ratio__flat",
        c"Ratio of gathers that a strip there is gives on a line.\n\nLength of the strip before gathering, without allowances (mm).\nInputs: flat (mm, 1 to 20000000); finished (mm, 1 to 1000000, <= flat).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gather_ratio,
        2,
        4,
        1,
    >(
        module,
        c"gather_ratio__taken_up",
        c"Ratio of gathers that a strip there is gives on a line.\n\nWhat the gathers take up (mm).\nInputs: flat (mm, 1 to 20000000); finished (mm, 1 to 1000000, <= flat).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gather_ratio,
        2,
        4,
        2,
    >(
        module,
        c"gather_ratio__ratio",
        c"Ratio of gathers that a strip there is gives on a line.\n\nStrip over line: 1.5 is half as much again.\nInputs: flat (mm, 1 to 20000000); finished (mm, 1 to 1000000, <= flat).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gather_ratio,
        2,
        4,
        3,
    >(
        module,
        c"gather_ratio__doubts",
        c"Ratio of gathers that a strip there is gives on a line.\n\nDoubts raised (bits).\nInputs: flat (mm, 1 to 20000000); finished (mm, 1 to 1000000, <= flat).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<gather_ratio, 2, 4>(module, c"all_gather_ratio")?;
    add_status::<gather_ratio, 2, 4>(module, c"status_gather_ratio")?;
    module.add_function(wrap_pyfunction!(one_gather_ratio, module)?)?;
    module.add_function(wrap_pyfunction!(one_gather_sections, module)?)?;
    add_one::<
        gathers,
        2,
        4,
        0,
    >(
        module,
        c"gathers__flat",
        c"Strip to cut for gathers of a given ratio.\n\nLength of the strip before gathering, without allowances (mm).\nInputs: finished (mm, 1 to 1000000); ratio (1 to 20).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gathers,
        2,
        4,
        1,
    >(
        module,
        c"gathers__taken_up",
        c"Strip to cut for gathers of a given ratio.\n\nWhat the gathers take up (mm).\nInputs: finished (mm, 1 to 1000000); ratio (1 to 20).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gathers,
        2,
        4,
        2,
    >(
        module,
        c"gathers__ratio",
        c"Strip to cut for gathers of a given ratio.\n\nStrip over line: 1.5 is half as much again.\nInputs: finished (mm, 1 to 1000000); ratio (1 to 20).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gathers,
        2,
        4,
        3,
    >(
        module,
        c"gathers__doubts",
        c"Strip to cut for gathers of a given ratio.\n\nDoubts raised (bits).\nInputs: finished (mm, 1 to 1000000); ratio (1 to 20).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<gathers, 2, 4>(module, c"all_gathers")?;
    add_status::<gathers, 2, 4>(module, c"status_gathers")?;
    module.add_function(wrap_pyfunction!(one_gathers, module)?)?;
    add_one::<
        girth_doubts,
        1,
        1,
        0,
    >(
        module,
        c"girth_doubts",
        c"Doubts on the girth of a trunk: chest, waist or hip.\n\nThe doubts (bits).\nInputs: girth (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<girth_doubts, 1, 1>(module, c"all_girth_doubts")?;
    add_status::<girth_doubts, 1, 1>(module, c"status_girth_doubts")?;
    module.add_function(wrap_pyfunction!(one_girth_doubts, module)?)?;
    add_one::<
        godet,
        3,
        4,
        0,
    >(
        module,
        c"godet__angle_deg",
        c"Sector for a godet of a given length and hem.\n\nAngle at the point (deg).\nInputs: length (mm, 1 to 10000); hem (mm, 1 to 100000); count (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        godet,
        3,
        4,
        1,
    >(
        module,
        c"godet__chord",
        c"Sector for a godet of a given length and hem.\n\nStraight across the hem from side to side, which is the cloth's width that it takes (mm).\nInputs: length (mm, 1 to 10000); hem (mm, 1 to 100000); count (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        godet,
        3,
        4,
        2,
    >(
        module,
        c"godet__sagitta",
        c"Sector for a godet of a given length and hem.\n\nHow far the hem bows below that (mm).\nInputs: length (mm, 1 to 10000); hem (mm, 1 to 100000); count (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        godet,
        3,
        4,
        3,
    >(
        module,
        c"godet__added",
        c"Sector for a godet of a given length and hem.\n\nWhat all godets add to the hem (mm).\nInputs: length (mm, 1 to 10000); hem (mm, 1 to 100000); count (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<godet, 3, 4>(module, c"all_godet")?;
    add_status::<godet, 3, 4>(module, c"status_godet")?;
    module.add_function(wrap_pyfunction!(one_godet, module)?)?;
    add_one::<
        gore,
        6,
        7,
        0,
    >(
        module,
        c"gore__waist_width",
        c"Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.\n\nWidth at the waist (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); hem (mm, 1 to 1000000); length (mm, 1 to 100000); hip_depth (mm, 0 to 10000, < length); count (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gore,
        6,
        7,
        1,
    >(
        module,
        c"gore__hip_width",
        c"Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.\n\nWidth at the hip (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); hem (mm, 1 to 1000000); length (mm, 1 to 100000); hip_depth (mm, 0 to 10000, < length); count (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gore,
        6,
        7,
        2,
    >(
        module,
        c"gore__hem_width",
        c"Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.\n\nWidth at the hem (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); hem (mm, 1 to 1000000); length (mm, 1 to 100000); hip_depth (mm, 0 to 10000, < length); count (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gore,
        6,
        7,
        3,
    >(
        module,
        c"gore__side_length",
        c"Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.\n\nLength of each side edge, waist to hip to hem (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); hem (mm, 1 to 1000000); length (mm, 1 to 100000); hip_depth (mm, 0 to 10000, < length); count (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gore,
        6,
        7,
        4,
    >(
        module,
        c"gore__flare_deg",
        c"Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.\n\nLean of each side edge below the hip; negative where it tapers in (deg).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); hem (mm, 1 to 1000000); length (mm, 1 to 100000); hip_depth (mm, 0 to 10000, < length); count (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gore,
        6,
        7,
        5,
    >(
        module,
        c"gore__hem_rise",
        c"Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.\n\nWhat each side edge is longer than the middle, taken off at the hem's ends so that it hangs level (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); hem (mm, 1 to 1000000); length (mm, 1 to 100000); hip_depth (mm, 0 to 10000, < length); count (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gore,
        6,
        7,
        6,
    >(
        module,
        c"gore__doubts",
        c"Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.\n\nDoubts raised (bits).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); hem (mm, 1 to 1000000); length (mm, 1 to 100000); hip_depth (mm, 0 to 10000, < length); count (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<gore, 6, 7>(module, c"all_gore")?;
    add_status::<gore, 6, 7>(module, c"status_gore")?;
    module.add_function(wrap_pyfunction!(one_gore, module)?)?;
    add_one::<
        gsm_from_ounces,
        1,
        1,
        0,
    >(
        module,
        c"gsm_from_ounces",
        c"Mass of cloth per square metre from ounces per square yard.\n\nMass per area (gsm).\nInputs: ounces (0.01 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<gsm_from_ounces, 1, 1>(module, c"all_gsm_from_ounces")?;
    add_status::<gsm_from_ounces, 1, 1>(module, c"status_gsm_from_ounces")?;
    module.add_function(wrap_pyfunction!(one_gsm_from_ounces, module)?)?;
    add_one::<
        gusset,
        3,
        4,
        0,
    >(
        module,
        c"gusset__angle_deg",
        c"Diamond gusset for two slits that meet in a seam, as under an arm.\n\nAngle at each slit's end (deg).\nInputs: slit (mm, 1 to 10000); added (mm, 0.1 to 20000); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gusset,
        3,
        4,
        1,
    >(
        module,
        c"gusset__long_diagonal",
        c"Diamond gusset for two slits that meet in a seam, as under an arm.\n\nFrom slit's end to slit's end (mm).\nInputs: slit (mm, 1 to 10000); added (mm, 0.1 to 20000); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gusset,
        3,
        4,
        2,
    >(
        module,
        c"gusset__cut_long",
        c"Diamond gusset for two slits that meet in a seam, as under an arm.\n\nCut from point to point the long way, allowances included (mm).\nInputs: slit (mm, 1 to 10000); added (mm, 0.1 to 20000); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        gusset,
        3,
        4,
        3,
    >(
        module,
        c"gusset__cut_short",
        c"Diamond gusset for two slits that meet in a seam, as under an arm.\n\nCut from point to point the short way, allowances included (mm).\nInputs: slit (mm, 1 to 10000); added (mm, 0.1 to 20000); allowance (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<gusset, 3, 4>(module, c"all_gusset")?;
    add_status::<gusset, 3, 4>(module, c"status_gusset")?;
    module.add_function(wrap_pyfunction!(one_gusset, module)?)?;
    add_one::<
        head_opening,
        4,
        3,
        0,
    >(
        module,
        c"head_opening__least_slit",
        c"Whether a neck with a slit passes over the head, and the least slit.\n\nLeast length of the slit; 0 where none is needed (mm).\nInputs: head (mm, 1 to 100000); neck (mm, 1 to 100000); slit (mm, 0 to 10000); ease (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        head_opening,
        4,
        3,
        1,
    >(
        module,
        c"head_opening__spare",
        c"Whether a neck with a slit passes over the head, and the least slit.\n\nWhat the opening is wider than needed; negative when it does not pass (mm).\nInputs: head (mm, 1 to 100000); neck (mm, 1 to 100000); slit (mm, 0 to 10000); ease (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        head_opening,
        4,
        3,
        2,
    >(
        module,
        c"head_opening__doubts",
        c"Whether a neck with a slit passes over the head, and the least slit.\n\nDoubts raised (bits).\nInputs: head (mm, 1 to 100000); neck (mm, 1 to 100000); slit (mm, 0 to 10000); ease (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<head_opening, 4, 3>(module, c"all_head_opening")?;
    add_status::<head_opening, 4, 3>(module, c"status_head_opening")?;
    module.add_function(wrap_pyfunction!(one_head_opening, module)?)?;
    add_one::<
        hem_let_down,
        5,
        5,
        0,
    >(
        module,
        c"hem_let_down__left",
        c"What is left for a hem that is let down, and where its old crease and stitching will show.\n\nCloth left below the new edge for its hem or facing (mm).\nInputs: hem_depth (mm, 0 to 1000); turn_in (mm, 0 to 1000, <= hem_depth); lowered_by (mm, 0 to 2000); keep (mm, 0 to 1000); seam (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        hem_let_down,
        5,
        5,
        1,
    >(
        module,
        c"hem_let_down__crease",
        c"What is left for a hem that is let down, and where its old crease and stitching will show.\n\nThe old edge's crease above the new edge (mm).\nInputs: hem_depth (mm, 0 to 1000); turn_in (mm, 0 to 1000, <= hem_depth); lowered_by (mm, 0 to 2000); keep (mm, 0 to 1000); seam (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        hem_let_down,
        5,
        5,
        2,
    >(
        module,
        c"hem_let_down__stitching",
        c"What is left for a hem that is let down, and where its old crease and stitching will show.\n\nThe old hem's stitching above the new edge (mm).\nInputs: hem_depth (mm, 0 to 1000); turn_in (mm, 0 to 1000, <= hem_depth); lowered_by (mm, 0 to 2000); keep (mm, 0 to 1000); seam (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        hem_let_down,
        5,
        5,
        3,
    >(
        module,
        c"hem_let_down__longest",
        c"What is left for a hem that is let down, and where its old crease and stitching will show.\n\nThe most it can be lowered with a hem of its own (mm).\nInputs: hem_depth (mm, 0 to 1000); turn_in (mm, 0 to 1000, <= hem_depth); lowered_by (mm, 0 to 2000); keep (mm, 0 to 1000); seam (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        hem_let_down,
        5,
        5,
        4,
    >(
        module,
        c"hem_let_down__longest_faced",
        c"What is left for a hem that is let down, and where its old crease and stitching will show.\n\nThe most it can be lowered with a facing sewn on (mm).\nInputs: hem_depth (mm, 0 to 1000); turn_in (mm, 0 to 1000, <= hem_depth); lowered_by (mm, 0 to 2000); keep (mm, 0 to 1000); seam (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<hem_let_down, 5, 5>(module, c"all_hem_let_down")?;
    add_status::<hem_let_down, 5, 5>(module, c"status_hem_let_down")?;
    module.add_function(wrap_pyfunction!(one_hem_let_down, module)?)?;
    add_one::<
        hem_on_curve,
        3,
        3,
        0,
    >(
        module,
        c"hem_on_curve__excess_pct",
        c"Fullness to ease into a hem that is turned up on a flared edge.\n\nWhat the raw edge is longer than the line it lies on when turned up (%).\nInputs: radius (mm, 1 to 1000000); depth (mm, 0 to 10000, < radius); hem (mm, 1 to 1000000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        hem_on_curve,
        3,
        3,
        1,
    >(
        module,
        c"hem_on_curve__excess",
        c"Fullness to ease into a hem that is turned up on a flared edge.\n\nThe same over the whole hem, to be eased, shrunk or folded away (mm).\nInputs: radius (mm, 1 to 1000000); depth (mm, 0 to 10000, < radius); hem (mm, 1 to 1000000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        hem_on_curve,
        3,
        3,
        2,
    >(
        module,
        c"hem_on_curve__raw_edge",
        c"Fullness to ease into a hem that is turned up on a flared edge.\n\nLength of the raw edge before turning (mm).\nInputs: radius (mm, 1 to 1000000); depth (mm, 0 to 10000, < radius); hem (mm, 1 to 1000000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<hem_on_curve, 3, 3>(module, c"all_hem_on_curve")?;
    add_status::<hem_on_curve, 3, 3>(module, c"status_hem_on_curve")?;
    module.add_function(wrap_pyfunction!(one_hem_on_curve, module)?)?;
    add_one::<
        hip_waist_drop,
        2,
        2,
        0,
    >(
        module,
        c"hip_waist_drop__drop",
        c"What the hip is larger than the waist, which may be less than nothing.\n\nHip less waist; negative where the waist is larger (mm).\nInputs: hip (mm, 1 to 100000); waist (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        hip_waist_drop,
        2,
        2,
        1,
    >(
        module,
        c"hip_waist_drop__doubts",
        c"What the hip is larger than the waist, which may be less than nothing.\n\nDoubts raised, as by `waist_hip_doubts` (bits).\nInputs: hip (mm, 1 to 100000); waist (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<hip_waist_drop, 2, 2>(module, c"all_hip_waist_drop")?;
    add_status::<hip_waist_drop, 2, 2>(module, c"status_hip_waist_drop")?;
    module.add_function(wrap_pyfunction!(one_hip_waist_drop, module)?)?;
    add_one::<
        holes_left,
        3,
        4,
        0,
    >(
        module,
        c"holes_left__count",
        c"Buttonholes left on an edge that is shortened.\n\nNumber of holes left.\nInputs: edge (mm, 1 to 100000); first (mm, 0 to 100000, <= edge); pitch (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        holes_left,
        3,
        4,
        1,
    >(
        module,
        c"holes_left__last",
        c"Buttonholes left on an edge that is shortened.\n\nPlace of the last of them, from the same end as the first (mm).\nInputs: edge (mm, 1 to 100000); first (mm, 0 to 100000, <= edge); pitch (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        holes_left,
        3,
        4,
        2,
    >(
        module,
        c"holes_left__to_end",
        c"Buttonholes left on an edge that is shortened.\n\nFrom the last hole to the new end of the edge (mm).\nInputs: edge (mm, 1 to 100000); first (mm, 0 to 100000, <= edge); pitch (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        holes_left,
        3,
        4,
        3,
    >(
        module,
        c"holes_left__doubts",
        c"Buttonholes left on an edge that is shortened.\n\nDoubts raised (bits).\nInputs: edge (mm, 1 to 100000); first (mm, 0 to 100000, <= edge); pitch (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<holes_left, 3, 4>(module, c"all_holes_left")?;
    add_status::<holes_left, 3, 4>(module, c"status_holes_left")?;
    module.add_function(wrap_pyfunction!(one_holes_left, module)?)?;
    add_one::<
        insert_strip,
        4,
        3,
        0,
    >(
        module,
        c"insert_strip__finished",
        c"Strip to let into a garment for what is lacking in its width.\n\nWidth of each strip between its seam lines, as it shows (mm).\nInputs: lacking (mm, 0.1 to 10000); allowance (mm, 0 to 1000); strips (1 to 64); place.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        insert_strip,
        4,
        3,
        1,
    >(
        module,
        c"insert_strip__cut_width",
        c"Strip to let into a garment for what is lacking in its width.\n\nWidth to cut each strip (mm).\nInputs: lacking (mm, 0.1 to 10000); allowance (mm, 0 to 1000); strips (1 to 64); place.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        insert_strip,
        4,
        3,
        2,
    >(
        module,
        c"insert_strip__cloth",
        c"Strip to let into a garment for what is lacking in its width.\n\nCloth that all strips take side by side (mm).\nInputs: lacking (mm, 0.1 to 10000); allowance (mm, 0 to 1000); strips (1 to 64); place.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<insert_strip, 4, 3>(module, c"all_insert_strip")?;
    add_status::<insert_strip, 4, 3>(module, c"status_insert_strip")?;
    module.add_function(wrap_pyfunction!(one_insert_strip, module)?)?;
    add_one::<
        k_over_s,
        1,
        1,
        0,
    >(
        module,
        c"k_over_s",
        c"K/S, the depth of shade, of a reflectance.\n\nK/S.\nInputs: reflectance (0.001 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<k_over_s, 1, 1>(module, c"all_k_over_s")?;
    add_status::<k_over_s, 1, 1>(module, c"status_k_over_s")?;
    module.add_function(wrap_pyfunction!(one_k_over_s, module)?)?;
    add_one::<
        knife_pleats,
        3,
        9,
        0,
    >(
        module,
        c"knife_pleats__flat",
        c"Cloth for knife pleats of a given number and depth.\n\nWidth before pleating, without allowances (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats,
        3,
        9,
        1,
    >(
        module,
        c"knife_pleats__finished",
        c"Cloth for knife pleats of a given number and depth.\n\nWidth when pleated (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats,
        3,
        9,
        2,
    >(
        module,
        c"knife_pleats__count",
        c"Cloth for knife pleats of a given number and depth.\n\nNumber of pleats.\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats,
        3,
        9,
        3,
    >(
        module,
        c"knife_pleats__show",
        c"Cloth for knife pleats of a given number and depth.\n\nWidth of each pleat that shows (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats,
        3,
        9,
        4,
    >(
        module,
        c"knife_pleats__depth",
        c"Cloth for knife pleats of a given number and depth.\n\nDepth of each pleat's underlay, fold to fold (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats,
        3,
        9,
        5,
    >(
        module,
        c"knife_pleats__intake",
        c"Cloth for knife pleats of a given number and depth.\n\nCloth that each pleat takes up, twice its depth (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats,
        3,
        9,
        6,
    >(
        module,
        c"knife_pleats__taken_up",
        c"Cloth for knife pleats of a given number and depth.\n\nCloth that all pleats take up (mm).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats,
        3,
        9,
        7,
    >(
        module,
        c"knife_pleats__ratio",
        c"Cloth for knife pleats of a given number and depth.\n\nFlat over finished: 3 where pleats just touch.\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats,
        3,
        9,
        8,
    >(
        module,
        c"knife_pleats__doubts",
        c"Cloth for knife pleats of a given number and depth.\n\nDoubts raised (bits).\nInputs: finished (mm, 1 to 1000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<knife_pleats, 3, 9>(module, c"all_knife_pleats")?;
    add_status::<knife_pleats, 3, 9>(module, c"status_knife_pleats")?;
    module.add_function(wrap_pyfunction!(one_knife_pleats, module)?)?;
    add_one::<
        knife_pleats_count,
        3,
        9,
        0,
    >(
        module,
        c"knife_pleats_count__flat",
        c"Number of knife pleats of at least a given depth that bring cloth there is to a width.\n\nWidth before pleating, without allowances (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_count,
        3,
        9,
        1,
    >(
        module,
        c"knife_pleats_count__finished",
        c"Number of knife pleats of at least a given depth that bring cloth there is to a width.\n\nWidth when pleated (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_count,
        3,
        9,
        2,
    >(
        module,
        c"knife_pleats_count__count",
        c"Number of knife pleats of at least a given depth that bring cloth there is to a width.\n\nNumber of pleats.\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_count,
        3,
        9,
        3,
    >(
        module,
        c"knife_pleats_count__show",
        c"Number of knife pleats of at least a given depth that bring cloth there is to a width.\n\nWidth of each pleat that shows (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_count,
        3,
        9,
        4,
    >(
        module,
        c"knife_pleats_count__depth",
        c"Number of knife pleats of at least a given depth that bring cloth there is to a width.\n\nDepth of each pleat's underlay, fold to fold (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_count,
        3,
        9,
        5,
    >(
        module,
        c"knife_pleats_count__intake",
        c"Number of knife pleats of at least a given depth that bring cloth there is to a width.\n\nCloth that each pleat takes up, twice its depth (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_count,
        3,
        9,
        6,
    >(
        module,
        c"knife_pleats_count__taken_up",
        c"Number of knife pleats of at least a given depth that bring cloth there is to a width.\n\nCloth that all pleats take up (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_count,
        3,
        9,
        7,
    >(
        module,
        c"knife_pleats_count__ratio",
        c"Number of knife pleats of at least a given depth that bring cloth there is to a width.\n\nFlat over finished: 3 where pleats just touch.\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_count,
        3,
        9,
        8,
    >(
        module,
        c"knife_pleats_count__doubts",
        c"Number of knife pleats of at least a given depth that bring cloth there is to a width.\n\nDoubts raised (bits).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<knife_pleats_count, 3, 9>(module, c"all_knife_pleats_count")?;
    add_status::<knife_pleats_count, 3, 9>(module, c"status_knife_pleats_count")?;
    module.add_function(wrap_pyfunction!(one_knife_pleats_count, module)?)?;
    add_one::<
        knife_pleats_depth,
        3,
        9,
        0,
    >(
        module,
        c"knife_pleats_depth__flat",
        c"Depth of a given number of knife pleats that bring cloth there is to a width.\n\nWidth before pleating, without allowances (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_depth,
        3,
        9,
        1,
    >(
        module,
        c"knife_pleats_depth__finished",
        c"Depth of a given number of knife pleats that bring cloth there is to a width.\n\nWidth when pleated (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_depth,
        3,
        9,
        2,
    >(
        module,
        c"knife_pleats_depth__count",
        c"Depth of a given number of knife pleats that bring cloth there is to a width.\n\nNumber of pleats.\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_depth,
        3,
        9,
        3,
    >(
        module,
        c"knife_pleats_depth__show",
        c"Depth of a given number of knife pleats that bring cloth there is to a width.\n\nWidth of each pleat that shows (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_depth,
        3,
        9,
        4,
    >(
        module,
        c"knife_pleats_depth__depth",
        c"Depth of a given number of knife pleats that bring cloth there is to a width.\n\nDepth of each pleat's underlay, fold to fold (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_depth,
        3,
        9,
        5,
    >(
        module,
        c"knife_pleats_depth__intake",
        c"Depth of a given number of knife pleats that bring cloth there is to a width.\n\nCloth that each pleat takes up, twice its depth (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_depth,
        3,
        9,
        6,
    >(
        module,
        c"knife_pleats_depth__taken_up",
        c"Depth of a given number of knife pleats that bring cloth there is to a width.\n\nCloth that all pleats take up (mm).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_depth,
        3,
        9,
        7,
    >(
        module,
        c"knife_pleats_depth__ratio",
        c"Depth of a given number of knife pleats that bring cloth there is to a width.\n\nFlat over finished: 3 where pleats just touch.\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_depth,
        3,
        9,
        8,
    >(
        module,
        c"knife_pleats_depth__doubts",
        c"Depth of a given number of knife pleats that bring cloth there is to a width.\n\nDoubts raised (bits).\nInputs: flat (mm, 1 to 100000000); finished (mm, 1 to 1000000, < flat); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<knife_pleats_depth, 3, 9>(module, c"all_knife_pleats_depth")?;
    add_status::<knife_pleats_depth, 3, 9>(module, c"status_knife_pleats_depth")?;
    module.add_function(wrap_pyfunction!(one_knife_pleats_depth, module)?)?;
    add_one::<
        knife_pleats_finished,
        3,
        9,
        0,
    >(
        module,
        c"knife_pleats_finished__flat",
        c"Width to which a given number of knife pleats brings cloth there is.\n\nWidth before pleating, without allowances (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_finished,
        3,
        9,
        1,
    >(
        module,
        c"knife_pleats_finished__finished",
        c"Width to which a given number of knife pleats brings cloth there is.\n\nWidth when pleated (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_finished,
        3,
        9,
        2,
    >(
        module,
        c"knife_pleats_finished__count",
        c"Width to which a given number of knife pleats brings cloth there is.\n\nNumber of pleats.\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_finished,
        3,
        9,
        3,
    >(
        module,
        c"knife_pleats_finished__show",
        c"Width to which a given number of knife pleats brings cloth there is.\n\nWidth of each pleat that shows (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_finished,
        3,
        9,
        4,
    >(
        module,
        c"knife_pleats_finished__depth",
        c"Width to which a given number of knife pleats brings cloth there is.\n\nDepth of each pleat's underlay, fold to fold (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_finished,
        3,
        9,
        5,
    >(
        module,
        c"knife_pleats_finished__intake",
        c"Width to which a given number of knife pleats brings cloth there is.\n\nCloth that each pleat takes up, twice its depth (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_finished,
        3,
        9,
        6,
    >(
        module,
        c"knife_pleats_finished__taken_up",
        c"Width to which a given number of knife pleats brings cloth there is.\n\nCloth that all pleats take up (mm).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_finished,
        3,
        9,
        7,
    >(
        module,
        c"knife_pleats_finished__ratio",
        c"Width to which a given number of knife pleats brings cloth there is.\n\nFlat over finished: 3 where pleats just touch.\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        knife_pleats_finished,
        3,
        9,
        8,
    >(
        module,
        c"knife_pleats_finished__doubts",
        c"Width to which a given number of knife pleats brings cloth there is.\n\nDoubts raised (bits).\nInputs: flat (mm, 1 to 100000000); count (1 to 1000); depth (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<knife_pleats_finished, 3, 9>(module, c"all_knife_pleats_finished")?;
    add_status::<knife_pleats_finished, 3, 9>(module, c"status_knife_pleats_finished")?;
    module.add_function(wrap_pyfunction!(one_knife_pleats_finished, module)?)?;
    add_one::<
        lab_from_srgb,
        3,
        3,
        0,
    >(
        module,
        c"lab_from_srgb__l",
        c"CIELAB of a colour given by its screen levels, under daylight D65.\n\nLightness L*: 0 is black, 100 white.\nInputs: red (0 to 255); green (0 to 255); blue (0 to 255).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        lab_from_srgb,
        3,
        3,
        1,
    >(
        module,
        c"lab_from_srgb__a",
        c"CIELAB of a colour given by its screen levels, under daylight D65.\n\na*: green below 0, red above.\nInputs: red (0 to 255); green (0 to 255); blue (0 to 255).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        lab_from_srgb,
        3,
        3,
        2,
    >(
        module,
        c"lab_from_srgb__b",
        c"CIELAB of a colour given by its screen levels, under daylight D65.\n\nb*: blue below 0, yellow above.\nInputs: red (0 to 255); green (0 to 255); blue (0 to 255).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<lab_from_srgb, 3, 3>(module, c"all_lab_from_srgb")?;
    add_status::<lab_from_srgb, 3, 3>(module, c"status_lab_from_srgb")?;
    module.add_function(wrap_pyfunction!(one_lab_from_srgb, module)?)?;
    add_one::<
        lab_from_xyz,
        5,
        3,
        0,
    >(
        module,
        c"lab_from_xyz__l",
        c"CIELAB of a colour given by its tristimulus values.\n\nLightness L*: 0 is black, 100 white.\nInputs: x (0 to 2); y (0 to 2); z (0 to 2); white_x (0.05 to 0.8); white_y (0.05 to 0.8).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        lab_from_xyz,
        5,
        3,
        1,
    >(
        module,
        c"lab_from_xyz__a",
        c"CIELAB of a colour given by its tristimulus values.\n\na*: green below 0, red above.\nInputs: x (0 to 2); y (0 to 2); z (0 to 2); white_x (0.05 to 0.8); white_y (0.05 to 0.8).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        lab_from_xyz,
        5,
        3,
        2,
    >(
        module,
        c"lab_from_xyz__b",
        c"CIELAB of a colour given by its tristimulus values.\n\nb*: blue below 0, yellow above.\nInputs: x (0 to 2); y (0 to 2); z (0 to 2); white_x (0.05 to 0.8); white_y (0.05 to 0.8).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<lab_from_xyz, 5, 3>(module, c"all_lab_from_xyz")?;
    add_status::<lab_from_xyz, 5, 3>(module, c"status_lab_from_xyz")?;
    module.add_function(wrap_pyfunction!(one_lab_from_xyz, module)?)?;
    add_one::<
        lacing,
        4,
        1,
        0,
    >(
        module,
        c"lacing",
        c"Length of lace for a laced opening.\n\nLength of lace (mm).\nInputs: pairs (1 to 100); pitch (mm, 1 to 1000); gap (mm, 0 to 10000); tail (mm, 0 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<lacing, 4, 1>(module, c"all_lacing")?;
    add_status::<lacing, 4, 1>(module, c"status_lacing")?;
    module.add_function(wrap_pyfunction!(one_lacing, module)?)?;
    module.add_function(wrap_pyfunction!(one_length_chain, module)?)?;
    module.add_function(wrap_pyfunction!(one_length_chain_shares, module)?)?;
    add_one::<
        let_out,
        6,
        5,
        0,
    >(
        module,
        c"let_out__lacking",
        c"What to let out at each edge of a garment that is too narrow, and what is still short.\n\nWhat the garment is too narrow by (mm).\nInputs: garment (mm, 1 to 100000); body (mm, 1 to 100000); ease (mm, -10000 to 10000); allowance (mm, 0 to 1000); edges (1 to 64); keep (mm, 0 to 1000, <= allowance).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        let_out,
        6,
        5,
        1,
    >(
        module,
        c"let_out__each",
        c"What to let out at each edge of a garment that is too narrow, and what is still short.\n\nLet out at each edge (mm).\nInputs: garment (mm, 1 to 100000); body (mm, 1 to 100000); ease (mm, -10000 to 10000); allowance (mm, 0 to 1000); edges (1 to 64); keep (mm, 0 to 1000, <= allowance).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        let_out,
        6,
        5,
        2,
    >(
        module,
        c"let_out__gained",
        c"What to let out at each edge of a garment that is too narrow, and what is still short.\n\nLet out at all edges together (mm).\nInputs: garment (mm, 1 to 100000); body (mm, 1 to 100000); ease (mm, -10000 to 10000); allowance (mm, 0 to 1000); edges (1 to 64); keep (mm, 0 to 1000, <= allowance).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        let_out,
        6,
        5,
        3,
    >(
        module,
        c"let_out__short_by",
        c"What to let out at each edge of a garment that is too narrow, and what is still short.\n\nStill lacking: a strip or a gusset must give it (mm).\nInputs: garment (mm, 1 to 100000); body (mm, 1 to 100000); ease (mm, -10000 to 10000); allowance (mm, 0 to 1000); edges (1 to 64); keep (mm, 0 to 1000, <= allowance).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        let_out,
        6,
        5,
        4,
    >(
        module,
        c"let_out__doubts",
        c"What to let out at each edge of a garment that is too narrow, and what is still short.\n\nDoubts raised (bits).\nInputs: garment (mm, 1 to 100000); body (mm, 1 to 100000); ease (mm, -10000 to 10000); allowance (mm, 0 to 1000); edges (1 to 64); keep (mm, 0 to 1000, <= allowance).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<let_out, 6, 5>(module, c"all_let_out")?;
    add_status::<let_out, 6, 5>(module, c"status_let_out")?;
    module.add_function(wrap_pyfunction!(one_let_out, module)?)?;
    add_one::<
        level_line,
        3,
        4,
        0,
    >(
        module,
        c"level_line__radius",
        c"Line at an even height above a curved hem that is kept.\n\nRadius of the line (mm).\nInputs: hem_radius (mm, 1 to 1000000); height (mm, 0 to 100000, < hem_radius); hem_chord (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        level_line,
        3,
        4,
        1,
    >(
        module,
        c"level_line__chord",
        c"Line at an even height above a curved hem that is kept.\n\nStraight across from end to end of the line (mm).\nInputs: hem_radius (mm, 1 to 1000000); height (mm, 0 to 100000, < hem_radius); hem_chord (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        level_line,
        3,
        4,
        2,
    >(
        module,
        c"level_line__sag",
        c"Line at an even height above a curved hem that is kept.\n\nHow far the line bows below its chord (mm).\nInputs: hem_radius (mm, 1 to 1000000); height (mm, 0 to 100000, < hem_radius); hem_chord (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        level_line,
        3,
        4,
        3,
    >(
        module,
        c"level_line__length",
        c"Line at an even height above a curved hem that is kept.\n\nLength along the line (mm).\nInputs: hem_radius (mm, 1 to 1000000); height (mm, 0 to 100000, < hem_radius); hem_chord (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<level_line, 3, 4>(module, c"all_level_line")?;
    add_status::<level_line, 3, 4>(module, c"status_level_line")?;
    module.add_function(wrap_pyfunction!(one_level_line, module)?)?;
    add_one::<
        linear_light,
        1,
        1,
        0,
    >(
        module,
        c"linear_light",
        c"Light of one screen level, as a share of the most.\n\nShare of the most light.\nInputs: level (0 to 255).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<linear_light, 1, 1>(module, c"all_linear_light")?;
    add_status::<linear_light, 1, 1>(module, c"status_linear_light")?;
    module.add_function(wrap_pyfunction!(one_linear_light, module)?)?;
    add_one::<
        lining_free_length,
        3,
        1,
        0,
    >(
        module,
        c"lining_free_length",
        c"Length to cut a lining that hangs free of the shell's hem, below its upper seam line.\n\nUpper seam line to the lower cut edge (mm).\nInputs: length (mm, 1 to 100000); clearance (mm, 0 to 10000, < length); hem (mm, 0 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<lining_free_length, 3, 1>(module, c"all_lining_free_length")?;
    add_status::<lining_free_length, 3, 1>(module, c"status_lining_free_length")?;
    module.add_function(wrap_pyfunction!(one_lining_free_length, module)?)?;
    add_one::<
        lining_length,
        3,
        5,
        0,
    >(
        module,
        c"lining_length__seam_to_seam",
        c"Length of a lining that hangs in a fold over the shell's hem.\n\nLining from its upper seam to the seam at the top of the hem, without allowances (mm).\nInputs: length (mm, 1 to 100000); hem_depth (mm, 0 to 10000, <= length); clearance (mm, 0 to 10000, < hem_depth).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        lining_length,
        3,
        5,
        1,
    >(
        module,
        c"lining_length__straight",
        c"Length of a lining that hangs in a fold over the shell's hem.\n\nThe shell's own distance between these two seams (mm).\nInputs: length (mm, 1 to 100000); hem_depth (mm, 0 to 10000, <= length); clearance (mm, 0 to 10000, < hem_depth).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        lining_length,
        3,
        5,
        2,
    >(
        module,
        c"lining_length__spare",
        c"Length of a lining that hangs in a fold over the shell's hem.\n\nWhat the lining is longer by, which lies in the fold (mm).\nInputs: length (mm, 1 to 100000); hem_depth (mm, 0 to 10000, <= length); clearance (mm, 0 to 10000, < hem_depth).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        lining_length,
        3,
        5,
        3,
    >(
        module,
        c"lining_length__fold",
        c"Length of a lining that hangs in a fold over the shell's hem.\n\nDepth of the fold, from the hem's top seam down (mm).\nInputs: length (mm, 1 to 100000); hem_depth (mm, 0 to 10000, <= length); clearance (mm, 0 to 10000, < hem_depth).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        lining_length,
        3,
        5,
        4,
    >(
        module,
        c"lining_length__doubts",
        c"Length of a lining that hangs in a fold over the shell's hem.\n\nDoubts raised (bits).\nInputs: length (mm, 1 to 100000); hem_depth (mm, 0 to 10000, <= length); clearance (mm, 0 to 10000, < hem_depth).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<lining_length, 3, 5>(module, c"all_lining_length")?;
    add_status::<lining_length, 3, 5>(module, c"status_lining_length")?;
    module.add_function(wrap_pyfunction!(one_lining_length, module)?)?;
    add_one::<
        lining_width,
        4,
        1,
        0,
    >(
        module,
        c"lining_width",
        c"Width to cut a lining panel that meets a facing.\n\nWidth of the lining panel between seam lines (mm).\nInputs: panel (mm, 1 to 100000); facing (mm, 0 to 100000, < panel); ease_pct (%, 0 to 50); pleat (mm, 0 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<lining_width, 4, 1>(module, c"all_lining_width")?;
    add_status::<lining_width, 4, 1>(module, c"status_lining_width")?;
    module.add_function(wrap_pyfunction!(one_lining_width, module)?)?;
    module.add_function(wrap_pyfunction!(one_liquor_shares, module)?)?;
    add_one::<
        loop_slack,
        7,
        2,
        0,
    >(
        module,
        c"loop_slack__slack",
        c"Slack of a loop there is, or of one chosen, on a button.\n\nWhat the loop is longer than the one that just passes; negative when it is too short (mm).\nInputs: length (mm, 1 to 2000); diameter (mm, 1 to 200); thickness (mm, 0 to 100); cord (mm, 0 to 50); gap (mm, 0 to 500); stretch (0 to 3); shape.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        loop_slack,
        7,
        2,
        1,
    >(
        module,
        c"loop_slack__doubts",
        c"Slack of a loop there is, or of one chosen, on a button.\n\nDoubts raised (bits).\nInputs: length (mm, 1 to 2000); diameter (mm, 1 to 200); thickness (mm, 0 to 100); cord (mm, 0 to 50); gap (mm, 0 to 500); stretch (0 to 3); shape.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<loop_slack, 7, 2>(module, c"all_loop_slack")?;
    add_status::<loop_slack, 7, 2>(module, c"status_loop_slack")?;
    module.add_function(wrap_pyfunction!(one_loop_slack, module)?)?;
    module.add_function(wrap_pyfunction!(one_mix_temperature, module)?)?;
    add_one::<
        nap_layout,
        5,
        6,
        0,
    >(
        module,
        c"nap_layout__across_one_way",
        c"Length of cloth for equal tapered panels with a nap and without.\n\nPanels side by side when all lie one way up.\nInputs: wide (mm, 1 to 100000); narrow (mm, 0 to 100000, <= wide); length (mm, 1 to 100000); count (1 to 1000); cloth_width (mm, 1 to 100000, >= wide).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        nap_layout,
        5,
        6,
        1,
    >(
        module,
        c"nap_layout__across_turned",
        c"Length of cloth for equal tapered panels with a nap and without.\n\nPanels side by side when every other is turned upside down.\nInputs: wide (mm, 1 to 100000); narrow (mm, 0 to 100000, <= wide); length (mm, 1 to 100000); count (1 to 1000); cloth_width (mm, 1 to 100000, >= wide).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        nap_layout,
        5,
        6,
        2,
    >(
        module,
        c"nap_layout__length_one_way",
        c"Length of cloth for equal tapered panels with a nap and without.\n\nLength of cloth when all lie one way up (mm).\nInputs: wide (mm, 1 to 100000); narrow (mm, 0 to 100000, <= wide); length (mm, 1 to 100000); count (1 to 1000); cloth_width (mm, 1 to 100000, >= wide).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        nap_layout,
        5,
        6,
        3,
    >(
        module,
        c"nap_layout__length_turned",
        c"Length of cloth for equal tapered panels with a nap and without.\n\nLength of cloth when every other is turned (mm).\nInputs: wide (mm, 1 to 100000); narrow (mm, 0 to 100000, <= wide); length (mm, 1 to 100000); count (1 to 1000); cloth_width (mm, 1 to 100000, >= wide).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        nap_layout,
        5,
        6,
        4,
    >(
        module,
        c"nap_layout__nap_extra",
        c"Length of cloth for equal tapered panels with a nap and without.\n\nWhat the nap takes: the one length less the other (mm).\nInputs: wide (mm, 1 to 100000); narrow (mm, 0 to 100000, <= wide); length (mm, 1 to 100000); count (1 to 1000); cloth_width (mm, 1 to 100000, >= wide).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        nap_layout,
        5,
        6,
        5,
    >(
        module,
        c"nap_layout__doubts",
        c"Length of cloth for equal tapered panels with a nap and without.\n\nDoubts raised (bits).\nInputs: wide (mm, 1 to 100000); narrow (mm, 0 to 100000, <= wide); length (mm, 1 to 100000); count (1 to 1000); cloth_width (mm, 1 to 100000, >= wide).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<nap_layout, 5, 6>(module, c"all_nap_layout")?;
    add_status::<nap_layout, 5, 6>(module, c"status_nap_layout")?;
    module.add_function(wrap_pyfunction!(one_nap_layout, module)?)?;
    add_one::<
        neck_bust_doubts,
        2,
        1,
        0,
    >(
        module,
        c"neck_bust_doubts",
        c"Doubts on a neck and a bust together.\n\nThe doubts (bits).\nInputs: neck (mm, 1 to 100000); bust (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<neck_bust_doubts, 2, 1>(module, c"all_neck_bust_doubts")?;
    add_status::<neck_bust_doubts, 2, 1>(module, c"status_neck_bust_doubts")?;
    module.add_function(wrap_pyfunction!(one_neck_bust_doubts, module)?)?;
    add_one::<
        needle_blade,
        1,
        2,
        0,
    >(
        module,
        c"needle_blade__blade",
        c"Blade of a machine needle, and the thickest thread for it, from its metric number.\n\nDiameter of the blade above the scarf (mm).\nInputs: metric (20 to 300).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        needle_blade,
        1,
        2,
        1,
    >(
        module,
        c"needle_blade__thread",
        c"Blade of a machine needle, and the thickest thread for it, from its metric number.\n\nThickest thread that runs freely in its long groove (mm).\nInputs: metric (20 to 300).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<needle_blade, 1, 2>(module, c"all_needle_blade")?;
    add_status::<needle_blade, 1, 2>(module, c"status_needle_blade")?;
    module.add_function(wrap_pyfunction!(one_needle_blade, module)?)?;
    add_one::<
        needle_metric,
        1,
        1,
        0,
    >(
        module,
        c"needle_metric",
        c"Metric number of a machine needle from its US size.\n\nMetric number, hundredths of a millimetre.\nInputs: us_size (8 to 18).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<needle_metric, 1, 1>(module, c"all_needle_metric")?;
    add_status::<needle_metric, 1, 1>(module, c"status_needle_metric")?;
    module.add_function(wrap_pyfunction!(one_needle_metric, module)?)?;
    add_one::<
        negative_ease,
        4,
        4,
        0,
    >(
        module,
        c"negative_ease__girth",
        c"Girth of a garment of stretching cloth, from the share of its stretch that wearing is to use.\n\nFinished girth of the garment at rest (mm).\nInputs: body (mm, 10 to 100000); stretch_pct (%, 0 to 500); widest (mm, 0 to 100000); share (0 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        negative_ease,
        4,
        4,
        1,
    >(
        module,
        c"negative_ease__ease",
        c"Girth of a garment of stretching cloth, from the share of its stretch that wearing is to use.\n\nGirth less the body's, so negative (mm).\nInputs: body (mm, 10 to 100000); stretch_pct (%, 0 to 500); widest (mm, 0 to 100000); share (0 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        negative_ease,
        4,
        4,
        2,
    >(
        module,
        c"negative_ease__furthest",
        c"Girth of a garment of stretching cloth, from the share of its stretch that wearing is to use.\n\nFurthest girth that the cloth stretches to (mm).\nInputs: body (mm, 10 to 100000); stretch_pct (%, 0 to 500); widest (mm, 0 to 100000); share (0 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        negative_ease,
        4,
        4,
        3,
    >(
        module,
        c"negative_ease__doubts",
        c"Girth of a garment of stretching cloth, from the share of its stretch that wearing is to use.\n\nDoubts raised (bits).\nInputs: body (mm, 10 to 100000); stretch_pct (%, 0 to 500); widest (mm, 0 to 100000); share (0 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<negative_ease, 4, 4>(module, c"all_negative_ease")?;
    add_status::<negative_ease, 4, 4>(module, c"status_negative_ease")?;
    module.add_function(wrap_pyfunction!(one_negative_ease, module)?)?;
    add_one::<
        neutraliser,
        7,
        5,
        0,
    >(
        module,
        c"neutraliser__chlorine_g",
        c"Neutraliser for the chlorine that goods still carry after draining and rinsing.\n\nAvailable chlorine the goods still carry (g).\nInputs: carried_ml (ml, 0 to 1000000); chlorine_pct (%, 0 to 0.6); reaction; stage; in_bath; purity_pct (%, 0.1 to 100); excess_pct (%, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        neutraliser,
        7,
        5,
        1,
    >(
        module,
        c"neutraliser__amount_g",
        c"Neutraliser for the chlorine that goods still carry after draining and rinsing.\n\nNeutraliser to weigh out, excess included (g).\nInputs: carried_ml (ml, 0 to 1000000); chlorine_pct (%, 0 to 0.6); reaction; stage; in_bath; purity_pct (%, 0.1 to 100); excess_pct (%, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        neutraliser,
        7,
        5,
        2,
    >(
        module,
        c"neutraliser__ratio",
        c"Neutraliser for the chlorine that goods still carry after draining and rinsing.\n\nGrams of the pure stuff for a gram of available chlorine, excess left out.\nInputs: carried_ml (ml, 0 to 1000000); chlorine_pct (%, 0 to 0.6); reaction; stage; in_bath; purity_pct (%, 0.1 to 100); excess_pct (%, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        neutraliser,
        7,
        5,
        3,
    >(
        module,
        c"neutraliser__doubts",
        c"Neutraliser for the chlorine that goods still carry after draining and rinsing.\n\nDoubts raised (bits).\nInputs: carried_ml (ml, 0 to 1000000); chlorine_pct (%, 0 to 0.6); reaction; stage; in_bath; purity_pct (%, 0.1 to 100); excess_pct (%, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        neutraliser,
        7,
        5,
        4,
    >(
        module,
        c"neutraliser__cautions",
        c"Neutraliser for the chlorine that goods still carry after draining and rinsing.\n\nCautions raised (bits).\nInputs: carried_ml (ml, 0 to 1000000); chlorine_pct (%, 0 to 0.6); reaction; stage; in_bath; purity_pct (%, 0.1 to 100); excess_pct (%, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<neutraliser, 7, 5>(module, c"all_neutraliser")?;
    add_status::<neutraliser, 7, 5>(module, c"status_neutraliser")?;
    module.add_function(wrap_pyfunction!(one_neutraliser, module)?)?;
    add_one::<
        off_centre_opening,
        6,
        8,
        0,
    >(
        module,
        c"off_centre_opening__narrow_to_line",
        c"Widths of two fronts whose button line is shifted to one side of the centre front.\n\nNarrow front, button line to the cut edge at its side (mm).\nInputs: front (mm, 1 to 100000); shift (mm, 0 to 100000); extension (mm, 0 to 1000); allowance (mm, 0 to 1000); wide_panel (mm, 1 to 100000); dart_distance (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        off_centre_opening,
        6,
        8,
        1,
    >(
        module,
        c"off_centre_opening__wide_to_line",
        c"Widths of two fronts whose button line is shifted to one side of the centre front.\n\nWide front, button line to the cut edge at its side (mm).\nInputs: front (mm, 1 to 100000); shift (mm, 0 to 100000); extension (mm, 0 to 1000); allowance (mm, 0 to 1000); wide_panel (mm, 1 to 100000); dart_distance (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        off_centre_opening,
        6,
        8,
        2,
    >(
        module,
        c"off_centre_opening__narrow_cut",
        c"Widths of two fronts whose button line is shifted to one side of the centre front.\n\nNarrow front, opening edge to the cut edge at its side (mm).\nInputs: front (mm, 1 to 100000); shift (mm, 0 to 100000); extension (mm, 0 to 1000); allowance (mm, 0 to 1000); wide_panel (mm, 1 to 100000); dart_distance (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        off_centre_opening,
        6,
        8,
        3,
    >(
        module,
        c"off_centre_opening__wide_cut",
        c"Widths of two fronts whose button line is shifted to one side of the centre front.\n\nWide front, opening edge to the cut edge at its side (mm).\nInputs: front (mm, 1 to 100000); shift (mm, 0 to 100000); extension (mm, 0 to 1000); allowance (mm, 0 to 1000); wide_panel (mm, 1 to 100000); dart_distance (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        off_centre_opening,
        6,
        8,
        4,
    >(
        module,
        c"off_centre_opening__largest_shift",
        c"Widths of two fronts whose button line is shifted to one side of the centre front.\n\nLargest shift that the wide panel allows (mm).\nInputs: front (mm, 1 to 100000); shift (mm, 0 to 100000); extension (mm, 0 to 1000); allowance (mm, 0 to 1000); wide_panel (mm, 1 to 100000); dart_distance (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        off_centre_opening,
        6,
        8,
        5,
    >(
        module,
        c"off_centre_opening__dart_to_narrow",
        c"Widths of two fronts whose button line is shifted to one side of the centre front.\n\nDart from the narrow front's button line; negative beyond the line, towards the edge (mm).\nInputs: front (mm, 1 to 100000); shift (mm, 0 to 100000); extension (mm, 0 to 1000); allowance (mm, 0 to 1000); wide_panel (mm, 1 to 100000); dart_distance (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        off_centre_opening,
        6,
        8,
        6,
    >(
        module,
        c"off_centre_opening__dart_to_wide",
        c"Widths of two fronts whose button line is shifted to one side of the centre front.\n\nDart from the wide front's button line (mm).\nInputs: front (mm, 1 to 100000); shift (mm, 0 to 100000); extension (mm, 0 to 1000); allowance (mm, 0 to 1000); wide_panel (mm, 1 to 100000); dart_distance (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        off_centre_opening,
        6,
        8,
        7,
    >(
        module,
        c"off_centre_opening__doubts",
        c"Widths of two fronts whose button line is shifted to one side of the centre front.\n\nDoubts raised (bits).\nInputs: front (mm, 1 to 100000); shift (mm, 0 to 100000); extension (mm, 0 to 1000); allowance (mm, 0 to 1000); wide_panel (mm, 1 to 100000); dart_distance (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<off_centre_opening, 6, 8>(module, c"all_off_centre_opening")?;
    add_status::<off_centre_opening, 6, 8>(module, c"status_off_centre_opening")?;
    module.add_function(wrap_pyfunction!(one_off_centre_opening, module)?)?;
    add_one::<
        overdye,
        3,
        4,
        0,
    >(
        module,
        c"overdye__pale",
        c"Reflectance of cloth dyed over the colour it has, as a band from pale to deep.\n\nReflectance where the dye takes least.\nInputs: ground (0.001 to 1); low (0 to 100); high (0 to 100, >= low).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        overdye,
        3,
        4,
        1,
    >(
        module,
        c"overdye__deep",
        c"Reflectance of cloth dyed over the colour it has, as a band from pale to deep.\n\nReflectance where the dye takes most.\nInputs: ground (0.001 to 1); low (0 to 100); high (0 to 100, >= low).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        overdye,
        3,
        4,
        2,
    >(
        module,
        c"overdye__pale_l",
        c"Reflectance of cloth dyed over the colour it has, as a band from pale to deep.\n\nLightness L* of a grey of the pale reflectance.\nInputs: ground (0.001 to 1); low (0 to 100); high (0 to 100, >= low).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        overdye,
        3,
        4,
        3,
    >(
        module,
        c"overdye__deep_l",
        c"Reflectance of cloth dyed over the colour it has, as a band from pale to deep.\n\nLightness L* of a grey of the deep reflectance.\nInputs: ground (0.001 to 1); low (0 to 100); high (0 to 100, >= low).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<overdye, 3, 4>(module, c"all_overdye")?;
    add_status::<overdye, 3, 4>(module, c"status_overdye")?;
    module.add_function(wrap_pyfunction!(one_overdye, module)?)?;
    add_one::<
        owf,
        2,
        3,
        0,
    >(
        module,
        c"owf__amount_g",
        c"Mass of a dye, mordant or assistant from its percentage on weight of fibre.\n\nMass to weigh out (g).\nInputs: mass_g (g, 0.01 to 1000000); pct (%, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        owf,
        2,
        3,
        1,
    >(
        module,
        c"owf__doubts",
        c"Mass of a dye, mordant or assistant from its percentage on weight of fibre.\n\nDoubts raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); pct (%, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        owf,
        2,
        3,
        2,
    >(
        module,
        c"owf__cautions",
        c"Mass of a dye, mordant or assistant from its percentage on weight of fibre.\n\nCautions raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); pct (%, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<owf, 2, 3>(module, c"all_owf")?;
    add_status::<owf, 2, 3>(module, c"status_owf")?;
    module.add_function(wrap_pyfunction!(one_owf, module)?)?;
    module.add_function(wrap_pyfunction!(one_panel_by_offsets, module)?)?;
    module.add_function(wrap_pyfunction!(one_panel_by_triangles, module)?)?;
    module.add_function(wrap_pyfunction!(one_parse_length, module)?)?;
    module.add_function(wrap_pyfunction!(one_photo_map, module)?)?;
    module.add_function(wrap_pyfunction!(one_pieced_length, module)?)?;
    add_one::<
        piping_width,
        3,
        1,
        0,
    >(
        module,
        c"piping_width",
        c"Width of the strip that covers a cord for piping.\n\nWidth to cut, square to the edges (mm).\nInputs: cord (mm, 0 to 200); allowance (mm, 0 to 1000); thickness (mm, 0 to 20).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<piping_width, 3, 1>(module, c"all_piping_width")?;
    add_status::<piping_width, 3, 1>(module, c"status_piping_width")?;
    module.add_function(wrap_pyfunction!(one_piping_width, module)?)?;
    add_one::<
        plant_dyestuff,
        7,
        4,
        0,
    >(
        module,
        c"plant_dyestuff__low_g",
        c"Plant matter for a dye bath, as a range, from a recipe weighed fresh or dry.\n\nLeast to weigh out, as it is at hand (g).\nInputs: mass_g (g, 0.01 to 1000000); low_pct (%, 0.1 to 2000); high_pct (%, 0.1 to 2000, >= low_pct); recipe; at_hand; fresh_per_dry_low (1 to 20); fresh_per_dry_high (1 to 20, >= fresh_per_dry_low).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        plant_dyestuff,
        7,
        4,
        1,
    >(
        module,
        c"plant_dyestuff__high_g",
        c"Plant matter for a dye bath, as a range, from a recipe weighed fresh or dry.\n\nMost to weigh out, as it is at hand (g).\nInputs: mass_g (g, 0.01 to 1000000); low_pct (%, 0.1 to 2000); high_pct (%, 0.1 to 2000, >= low_pct); recipe; at_hand; fresh_per_dry_low (1 to 20); fresh_per_dry_high (1 to 20, >= fresh_per_dry_low).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        plant_dyestuff,
        7,
        4,
        2,
    >(
        module,
        c"plant_dyestuff__doubts",
        c"Plant matter for a dye bath, as a range, from a recipe weighed fresh or dry.\n\nDoubts raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); low_pct (%, 0.1 to 2000); high_pct (%, 0.1 to 2000, >= low_pct); recipe; at_hand; fresh_per_dry_low (1 to 20); fresh_per_dry_high (1 to 20, >= fresh_per_dry_low).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        plant_dyestuff,
        7,
        4,
        3,
    >(
        module,
        c"plant_dyestuff__cautions",
        c"Plant matter for a dye bath, as a range, from a recipe weighed fresh or dry.\n\nCautions raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); low_pct (%, 0.1 to 2000); high_pct (%, 0.1 to 2000, >= low_pct); recipe; at_hand; fresh_per_dry_low (1 to 20); fresh_per_dry_high (1 to 20, >= fresh_per_dry_low).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<plant_dyestuff, 7, 4>(module, c"all_plant_dyestuff")?;
    add_status::<plant_dyestuff, 7, 4>(module, c"status_plant_dyestuff")?;
    module.add_function(wrap_pyfunction!(one_plant_dyestuff, module)?)?;
    module.add_function(wrap_pyfunction!(one_pooled_strength, module)?)?;
    add_one::<
        puff_spread,
        4,
        5,
        0,
    >(
        module,
        c"puff_spread__flat",
        c"Spread of a sleeve cap that is slashed and opened for gathers between two notches.\n\nZone after spreading, before gathering (mm).\nInputs: zone (mm, 1 to 10000); ratio (1 to 10); slashes (1 to 100); strip (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        puff_spread,
        4,
        5,
        1,
    >(
        module,
        c"puff_spread__added",
        c"Spread of a sleeve cap that is slashed and opened for gathers between two notches.\n\nWhat spreading adds in all (mm).\nInputs: zone (mm, 1 to 10000); ratio (1 to 10); slashes (1 to 100); strip (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        puff_spread,
        4,
        5,
        2,
    >(
        module,
        c"puff_spread__spread_each",
        c"Spread of a sleeve cap that is slashed and opened for gathers between two notches.\n\nHow far each slash opens (mm).\nInputs: zone (mm, 1 to 10000); ratio (1 to 10); slashes (1 to 100); strip (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        puff_spread,
        4,
        5,
        3,
    >(
        module,
        c"puff_spread__strip_ratio",
        c"Spread of a sleeve cap that is slashed and opened for gathers between two notches.\n\nThe ratio that the strip to be let in allows.\nInputs: zone (mm, 1 to 10000); ratio (1 to 10); slashes (1 to 100); strip (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        puff_spread,
        4,
        5,
        4,
    >(
        module,
        c"puff_spread__doubts",
        c"Spread of a sleeve cap that is slashed and opened for gathers between two notches.\n\n`GATHERS_SCANT` or `GATHERS_LARGE` when the smaller of the ratios asked for looks like a mistake (bits).\nInputs: zone (mm, 1 to 10000); ratio (1 to 10); slashes (1 to 100); strip (mm, 0 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<puff_spread, 4, 5>(module, c"all_puff_spread")?;
    add_status::<puff_spread, 4, 5>(module, c"status_puff_spread")?;
    module.add_function(wrap_pyfunction!(one_puff_spread, module)?)?;
    add_one::<
        reflectance,
        1,
        1,
        0,
    >(
        module,
        c"reflectance",
        c"Reflectance of a depth of shade K/S: `k_over_s` turned round.\n\nReflectance.\nInputs: k_over_s (0 to 500).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<reflectance, 1, 1>(module, c"all_reflectance")?;
    add_status::<reflectance, 1, 1>(module, c"status_reflectance")?;
    module.add_function(wrap_pyfunction!(one_reflectance, module)?)?;
    add_one::<
        relative_strength,
        2,
        1,
        0,
    >(
        module,
        c"relative_strength",
        c"Strength of a dyeing against another, by their depths of shade, in percent.\n\nRelative strength (%).\nInputs: k_over_s (0 to 500); standard (0.000001 to 500).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<relative_strength, 2, 1>(module, c"all_relative_strength")?;
    add_status::<relative_strength, 2, 1>(module, c"status_relative_strength")?;
    module.add_function(wrap_pyfunction!(one_relative_strength, module)?)?;
    add_one::<
        remaining_width,
        5,
        1,
        0,
    >(
        module,
        c"remaining_width",
        c"Width of the panels still to be made, when the others are given.\n\nThe width of each remaining panel inside the seams (mm).\nInputs: girth (mm, 1 to 100000); ease (mm, -10000 to 10000); other_width (mm, 0 to 100000); parts (1 to 64); intake (mm, 0 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<remaining_width, 5, 1>(module, c"all_remaining_width")?;
    add_status::<remaining_width, 5, 1>(module, c"status_remaining_width")?;
    module.add_function(wrap_pyfunction!(one_remaining_width, module)?)?;
    add_one::<
        repeats,
        3,
        4,
        0,
    >(
        module,
        c"repeats__repeats",
        c"Lengths rounded up to whole repeats of the pattern, so that all of them begin at the same place in it.\n\nWhole repeats in one length.\nInputs: length (mm, 1 to 100000); repeat (mm, 1 to 10000); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        repeats,
        3,
        4,
        1,
    >(
        module,
        c"repeats__each",
        c"Lengths rounded up to whole repeats of the pattern, so that all of them begin at the same place in it.\n\nLength to cut each (mm).\nInputs: length (mm, 1 to 100000); repeat (mm, 1 to 10000); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        repeats,
        3,
        4,
        2,
    >(
        module,
        c"repeats__total",
        c"Lengths rounded up to whole repeats of the pattern, so that all of them begin at the same place in it.\n\nAll lengths together (mm).\nInputs: length (mm, 1 to 100000); repeat (mm, 1 to 10000); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        repeats,
        3,
        4,
        3,
    >(
        module,
        c"repeats__waste",
        c"Lengths rounded up to whole repeats of the pattern, so that all of them begin at the same place in it.\n\nWhat is cut off and lies idle, all lengths together (mm).\nInputs: length (mm, 1 to 100000); repeat (mm, 1 to 10000); count (1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<repeats, 3, 4>(module, c"all_repeats")?;
    add_status::<repeats, 3, 4>(module, c"status_repeats")?;
    module.add_function(wrap_pyfunction!(one_repeats, module)?)?;
    add_one::<
        ribbing,
        4,
        4,
        0,
    >(
        module,
        c"ribbing__round",
        c"Strip of ribbing for a neck, a cuff or a waist.\n\nWay round the joined strip, not stretched (mm).\nInputs: edge (mm, 1 to 100000); depth (mm, 1 to 1000); allowance (mm, 0 to 100); share (0.3 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        ribbing,
        4,
        4,
        1,
    >(
        module,
        c"ribbing__cut_length",
        c"Strip of ribbing for a neck, a cuff or a waist.\n\nLength to cut, along the way it stretches (mm).\nInputs: edge (mm, 1 to 100000); depth (mm, 1 to 1000); allowance (mm, 0 to 100); share (0.3 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        ribbing,
        4,
        4,
        2,
    >(
        module,
        c"ribbing__cut_width",
        c"Strip of ribbing for a neck, a cuff or a waist.\n\nWidth to cut, folded in two when sewn (mm).\nInputs: edge (mm, 1 to 100000); depth (mm, 1 to 1000); allowance (mm, 0 to 100); share (0.3 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        ribbing,
        4,
        4,
        3,
    >(
        module,
        c"ribbing__stretch_pct",
        c"Strip of ribbing for a neck, a cuff or a waist.\n\nStretch that it is sewn on with (%).\nInputs: edge (mm, 1 to 100000); depth (mm, 1 to 1000); allowance (mm, 0 to 100); share (0.3 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<ribbing, 4, 4>(module, c"all_ribbing")?;
    add_status::<ribbing, 4, 4>(module, c"status_ribbing")?;
    module.add_function(wrap_pyfunction!(one_ribbing, module)?)?;
    add_one::<
        rinses,
        4,
        6,
        0,
    >(
        module,
        c"rinses__rinses_low",
        c"Rinses that thin the liquor carried over to a share of what it was, as a range.\n\nRinses where the goods carry least.\nInputs: carried_low_ml (ml, 0.01 to 10000000); carried_high_ml (ml, 0.01 to 10000000, >= carried_low_ml); fresh_ml (ml, 0.01 to 100000000); share_left (0.000000001 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        rinses,
        4,
        6,
        1,
    >(
        module,
        c"rinses__rinses_high",
        c"Rinses that thin the liquor carried over to a share of what it was, as a range.\n\nRinses where the goods carry most.\nInputs: carried_low_ml (ml, 0.01 to 10000000); carried_high_ml (ml, 0.01 to 10000000, >= carried_low_ml); fresh_ml (ml, 0.01 to 100000000); share_left (0.000000001 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        rinses,
        4,
        6,
        2,
    >(
        module,
        c"rinses__left",
        c"Rinses that thin the liquor carried over to a share of what it was, as a range.\n\nShare of the first liquor left after the most rinses, where the goods carry most.\nInputs: carried_low_ml (ml, 0.01 to 10000000); carried_high_ml (ml, 0.01 to 10000000, >= carried_low_ml); fresh_ml (ml, 0.01 to 100000000); share_left (0.000000001 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        rinses,
        4,
        6,
        3,
    >(
        module,
        c"rinses__water_ml",
        c"Rinses that thin the liquor carried over to a share of what it was, as a range.\n\nFresh water for the most rinses (ml).\nInputs: carried_low_ml (ml, 0.01 to 10000000); carried_high_ml (ml, 0.01 to 10000000, >= carried_low_ml); fresh_ml (ml, 0.01 to 100000000); share_left (0.000000001 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        rinses,
        4,
        6,
        4,
    >(
        module,
        c"rinses__doubts",
        c"Rinses that thin the liquor carried over to a share of what it was, as a range.\n\nDoubts raised (bits).\nInputs: carried_low_ml (ml, 0.01 to 10000000); carried_high_ml (ml, 0.01 to 10000000, >= carried_low_ml); fresh_ml (ml, 0.01 to 100000000); share_left (0.000000001 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        rinses,
        4,
        6,
        5,
    >(
        module,
        c"rinses__cautions",
        c"Rinses that thin the liquor carried over to a share of what it was, as a range.\n\nCautions raised (bits).\nInputs: carried_low_ml (ml, 0.01 to 10000000); carried_high_ml (ml, 0.01 to 10000000, >= carried_low_ml); fresh_ml (ml, 0.01 to 100000000); share_left (0.000000001 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<rinses, 4, 6>(module, c"all_rinses")?;
    add_status::<rinses, 4, 6>(module, c"status_rinses")?;
    module.add_function(wrap_pyfunction!(one_rinses, module)?)?;
    module.add_function(wrap_pyfunction!(one_round_set, module)?)?;
    add_one::<
        round_to,
        3,
        1,
        0,
    >(
        module,
        c"round_to",
        c"A length rounded to a graduation of the tape.\n\nThe rounded length (mm).\nInputs: length (mm, -10000000 to 10000000); graduation (mm, 0.001 to 10000); way.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<round_to, 3, 1>(module, c"all_round_to")?;
    add_status::<round_to, 3, 1>(module, c"status_round_to")?;
    module.add_function(wrap_pyfunction!(one_round_to, module)?)?;
    add_one::<
        ruffle,
        6,
        5,
        0,
    >(
        module,
        c"ruffle__flat",
        c"Strips to cut for a ruffle along an edge.\n\nLength of the joined strip before gathering (mm).\nInputs: edge (mm, 1 to 100000); ratio (1 to 10); depth (mm, 1 to 10000); strip (mm, 10 to 100000); allowance (mm, 0 to 1000); hem (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        ruffle,
        6,
        5,
        1,
    >(
        module,
        c"ruffle__cut_width",
        c"Strips to cut for a ruffle along an edge.\n\nWidth to cut each strip (mm).\nInputs: edge (mm, 1 to 100000); ratio (1 to 10); depth (mm, 1 to 10000); strip (mm, 10 to 100000); allowance (mm, 0 to 1000); hem (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        ruffle,
        6,
        5,
        2,
    >(
        module,
        c"ruffle__strips",
        c"Strips to cut for a ruffle along an edge.\n\nNumber of strips.\nInputs: edge (mm, 1 to 100000); ratio (1 to 10); depth (mm, 1 to 10000); strip (mm, 10 to 100000); allowance (mm, 0 to 1000); hem (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        ruffle,
        6,
        5,
        3,
    >(
        module,
        c"ruffle__cloth_length",
        c"Strips to cut for a ruffle along an edge.\n\nCloth that the strips take, lying side by side (mm).\nInputs: edge (mm, 1 to 100000); ratio (1 to 10); depth (mm, 1 to 10000); strip (mm, 10 to 100000); allowance (mm, 0 to 1000); hem (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        ruffle,
        6,
        5,
        4,
    >(
        module,
        c"ruffle__doubts",
        c"Strips to cut for a ruffle along an edge.\n\nDoubts raised (bits).\nInputs: edge (mm, 1 to 100000); ratio (1 to 10); depth (mm, 1 to 10000); strip (mm, 10 to 100000); allowance (mm, 0 to 1000); hem (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<ruffle, 6, 5>(module, c"all_ruffle")?;
    add_status::<ruffle, 6, 5>(module, c"status_ruffle")?;
    module.add_function(wrap_pyfunction!(one_ruffle, module)?)?;
    add_one::<
        screen_level,
        1,
        1,
        0,
    >(
        module,
        c"screen_level",
        c"Screen level of an amount of light: `linear_light` turned round.\n\nLevel, 0 to 255, not rounded.\nInputs: light (0 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<screen_level, 1, 1>(module, c"all_screen_level")?;
    add_status::<screen_level, 1, 1>(module, c"status_screen_level")?;
    module.add_function(wrap_pyfunction!(one_screen_level, module)?)?;
    add_one::<
        seam_pleat,
        2,
        3,
        0,
    >(
        module,
        c"seam_pleat__first_edge",
        c"Cloth added at the two edges of a seam that is to hold an inverted pleat.\n\nAdded to the edge whose seam lies in the nearer inner fold (mm).\nInputs: depth (mm, 0.1 to 10000); allowance (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        seam_pleat,
        2,
        3,
        1,
    >(
        module,
        c"seam_pleat__next_edge",
        c"Cloth added at the two edges of a seam that is to hold an inverted pleat.\n\nAdded to the edge that makes the rest of the pleat (mm).\nInputs: depth (mm, 0.1 to 10000); allowance (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        seam_pleat,
        2,
        3,
        2,
    >(
        module,
        c"seam_pleat__intake",
        c"Cloth added at the two edges of a seam that is to hold an inverted pleat.\n\nBoth together, less the seam: what the pleat takes up (mm).\nInputs: depth (mm, 0.1 to 10000); allowance (mm, 0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<seam_pleat, 2, 3>(module, c"all_seam_pleat")?;
    add_status::<seam_pleat, 2, 3>(module, c"status_seam_pleat")?;
    module.add_function(wrap_pyfunction!(one_seam_pleat, module)?)?;
    module.add_function(wrap_pyfunction!(one_sectioned_band, module)?)?;
    add_one::<
        shaped_band,
        3,
        5,
        0,
    >(
        module,
        c"shaped_band__inner_radius",
        c"Part of a ring for a shaped band, or for any cone or frustum.\n\nRadius of the upper, shorter edge (mm).\nInputs: lower (mm, 1 to 100000); upper (mm, 0 to 100000, < lower); depth (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shaped_band,
        3,
        5,
        1,
    >(
        module,
        c"shaped_band__outer_radius",
        c"Part of a ring for a shaped band, or for any cone or frustum.\n\nRadius of the lower, longer edge (mm).\nInputs: lower (mm, 1 to 100000); upper (mm, 0 to 100000, < lower); depth (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shaped_band,
        3,
        5,
        2,
    >(
        module,
        c"shaped_band__angle_deg",
        c"Part of a ring for a shaped band, or for any cone or frustum.\n\nAngle of the sector (deg).\nInputs: lower (mm, 1 to 100000); upper (mm, 0 to 100000, < lower); depth (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shaped_band,
        3,
        5,
        3,
    >(
        module,
        c"shaped_band__sagitta",
        c"Part of a ring for a shaped band, or for any cone or frustum.\n\nHeight of the lower edge's arc above the straight line between its ends (mm).\nInputs: lower (mm, 1 to 100000); upper (mm, 0 to 100000, < lower); depth (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shaped_band,
        3,
        5,
        4,
    >(
        module,
        c"shaped_band__area_mm2",
        c"Part of a ring for a shaped band, or for any cone or frustum.\n\nArea of the band (mm2).\nInputs: lower (mm, 1 to 100000); upper (mm, 0 to 100000, < lower); depth (mm, 1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<shaped_band, 3, 5>(module, c"all_shaped_band")?;
    add_status::<shaped_band, 3, 5>(module, c"status_shaped_band")?;
    module.add_function(wrap_pyfunction!(one_shaped_band, module)?)?;
    add_one::<
        share,
        3,
        1,
        0,
    >(
        module,
        c"share",
        c"One panel's share of a girth.\n\nThe width of each panel inside the seams (mm).\nInputs: girth (mm, 1 to 100000); ease (mm, -10000 to 10000); parts (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<share, 3, 1>(module, c"all_share")?;
    add_status::<share, 3, 1>(module, c"status_share")?;
    module.add_function(wrap_pyfunction!(one_share, module)?)?;
    add_one::<
        shirring,
        4,
        5,
        0,
    >(
        module,
        c"shirring__flat",
        c"Cloth and rows for shirring with elastic thread.\n\nWidth before shirring, without allowances (mm).\nInputs: finished (mm, 1 to 100000); depth (mm, 0 to 10000); pitch (mm, 1 to 1000); drawn_pct (%, 10 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shirring,
        4,
        5,
        1,
    >(
        module,
        c"shirring__ratio",
        c"Cloth and rows for shirring with elastic thread.\n\nFlat over finished.\nInputs: finished (mm, 1 to 100000); depth (mm, 0 to 10000); pitch (mm, 1 to 1000); drawn_pct (%, 10 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shirring,
        4,
        5,
        2,
    >(
        module,
        c"shirring__rows",
        c"Cloth and rows for shirring with elastic thread.\n\nNumber of rows.\nInputs: finished (mm, 1 to 100000); depth (mm, 0 to 10000); pitch (mm, 1 to 1000); drawn_pct (%, 10 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shirring,
        4,
        5,
        3,
    >(
        module,
        c"shirring__stitching",
        c"Cloth and rows for shirring with elastic thread.\n\nAll rows together, as sewn on the flat cloth (mm).\nInputs: finished (mm, 1 to 100000); depth (mm, 0 to 10000); pitch (mm, 1 to 1000); drawn_pct (%, 10 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shirring,
        4,
        5,
        4,
    >(
        module,
        c"shirring__cautions",
        c"Cloth and rows for shirring with elastic thread.\n\nAlways `ELASTIC_BATH` (bits).\nInputs: finished (mm, 1 to 100000); depth (mm, 0 to 10000); pitch (mm, 1 to 1000); drawn_pct (%, 10 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<shirring, 4, 5>(module, c"all_shirring")?;
    add_status::<shirring, 4, 5>(module, c"status_shirring")?;
    module.add_function(wrap_pyfunction!(one_shirring, module)?)?;
    add_one::<
        shrink_pair,
        4,
        6,
        0,
    >(
        module,
        c"shrink_pair__shell_after",
        c"What washing does to a shell and its lining, and how to cut both for it.\n\nShell after washing, if it is sewn as given (mm).\nInputs: shell (mm, 0 to 1000000); lining (mm, 0 to 1000000); shell_change_pct (%, -90 to 100); lining_change_pct (%, -90 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shrink_pair,
        4,
        6,
        1,
    >(
        module,
        c"shrink_pair__lining_after",
        c"What washing does to a shell and its lining, and how to cut both for it.\n\nLining after washing, if it is sewn as given (mm).\nInputs: shell (mm, 0 to 1000000); lining (mm, 0 to 1000000); shell_change_pct (%, -90 to 100); lining_change_pct (%, -90 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shrink_pair,
        4,
        6,
        2,
    >(
        module,
        c"shrink_pair__below",
        c"What washing does to a shell and its lining, and how to cut both for it.\n\nHow far the lining then hangs below the shell; negative above (mm).\nInputs: shell (mm, 0 to 1000000); lining (mm, 0 to 1000000); shell_change_pct (%, -90 to 100); lining_change_pct (%, -90 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shrink_pair,
        4,
        6,
        3,
    >(
        module,
        c"shrink_pair__shell_cut",
        c"What washing does to a shell and its lining, and how to cut both for it.\n\nShell to cut so that washing leaves the length given (mm).\nInputs: shell (mm, 0 to 1000000); lining (mm, 0 to 1000000); shell_change_pct (%, -90 to 100); lining_change_pct (%, -90 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shrink_pair,
        4,
        6,
        4,
    >(
        module,
        c"shrink_pair__lining_cut",
        c"What washing does to a shell and its lining, and how to cut both for it.\n\nLining to cut so that washing leaves the length given (mm).\nInputs: shell (mm, 0 to 1000000); lining (mm, 0 to 1000000); shell_change_pct (%, -90 to 100); lining_change_pct (%, -90 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        shrink_pair,
        4,
        6,
        5,
    >(
        module,
        c"shrink_pair__doubts",
        c"What washing does to a shell and its lining, and how to cut both for it.\n\nDoubts raised (bits).\nInputs: shell (mm, 0 to 1000000); lining (mm, 0 to 1000000); shell_change_pct (%, -90 to 100); lining_change_pct (%, -90 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<shrink_pair, 4, 6>(module, c"all_shrink_pair")?;
    add_status::<shrink_pair, 4, 6>(module, c"status_shrink_pair")?;
    module.add_function(wrap_pyfunction!(one_shrink_pair, module)?)?;
    add_one::<
        size_step,
        4,
        3,
        0,
    >(
        module,
        c"size_step__step",
        c"Step from one size to the next, all round and at each edge of the pattern.\n\nFrom one size to the next, all round (mm).\nInputs: smaller (mm, 1 to 100000); larger (mm, 1 to 100000, >= smaller); steps (1 to 100); edges (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        size_step,
        4,
        3,
        1,
    >(
        module,
        c"size_step__each_edge",
        c"Step from one size to the next, all round and at each edge of the pattern.\n\nThe same at each edge of the pattern (mm).\nInputs: smaller (mm, 1 to 100000); larger (mm, 1 to 100000, >= smaller); steps (1 to 100); edges (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        size_step,
        4,
        3,
        2,
    >(
        module,
        c"size_step__doubts",
        c"Step from one size to the next, all round and at each edge of the pattern.\n\nDoubts raised (bits).\nInputs: smaller (mm, 1 to 100000); larger (mm, 1 to 100000, >= smaller); steps (1 to 100); edges (1 to 64).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<size_step, 4, 3>(module, c"all_size_step")?;
    add_status::<size_step, 4, 3>(module, c"status_size_step")?;
    module.add_function(wrap_pyfunction!(one_size_step, module)?)?;
    add_one::<
        skew,
        2,
        1,
        0,
    >(
        module,
        c"skew",
        c"Skew of cloth: how far a weft thread has run off square, in percent of the width.\n\nSkew (%).\nInputs: shift (mm, -100000 to 100000); width (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<skew, 2, 1>(module, c"all_skew")?;
    add_status::<skew, 2, 1>(module, c"status_skew")?;
    module.add_function(wrap_pyfunction!(one_skew, module)?)?;
    add_one::<
        skew_diagonals,
        2,
        1,
        0,
    >(
        module,
        c"skew_diagonals",
        c"Skew of a square marked on the cloth, from its two diagonals after washing, in percent.\n\nSkew (%).\nInputs: first (mm, 1 to 100000); second (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<skew_diagonals, 2, 1>(module, c"all_skew_diagonals")?;
    add_status::<skew_diagonals, 2, 1>(module, c"status_skew_diagonals")?;
    module.add_function(wrap_pyfunction!(one_skew_diagonals, module)?)?;
    add_one::<
        snip_spacing,
        3,
        2,
        0,
    >(
        module,
        c"snip_spacing__spacing",
        c"Distance between the snips of a curved seam allowance.\n\nFrom snip to snip along the seam line (mm).\nInputs: radius (mm, 1 to 1000000); allowance (mm, 0.1 to 1000); opening (mm, 0.1 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        snip_spacing,
        3,
        2,
        1,
    >(
        module,
        c"snip_spacing__flat",
        c"Distance between the snips of a curved seam allowance.\n\nHow far a straight fold between two snips leaves the curve (mm).\nInputs: radius (mm, 1 to 1000000); allowance (mm, 0.1 to 1000); opening (mm, 0.1 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<snip_spacing, 3, 2>(module, c"all_snip_spacing")?;
    add_status::<snip_spacing, 3, 2>(module, c"status_snip_spacing")?;
    module.add_function(wrap_pyfunction!(one_snip_spacing, module)?)?;
    add_one::<
        spacing_by_pitch,
        3,
        2,
        0,
    >(
        module,
        c"spacing_by_pitch__count",
        c"Number of buttons whose even spacing comes nearest to a wanted pitch.\n\nNumber of buttons, the first and last included.\nInputs: first (mm, 0 to 100000); last (mm, 0 to 100000, > first); pitch (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        spacing_by_pitch,
        3,
        2,
        1,
    >(
        module,
        c"spacing_by_pitch__pitch",
        c"Number of buttons whose even spacing comes nearest to a wanted pitch.\n\nFrom middle to middle of neighbours (mm).\nInputs: first (mm, 0 to 100000); last (mm, 0 to 100000, > first); pitch (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<spacing_by_pitch, 3, 2>(module, c"all_spacing_by_pitch")?;
    add_status::<spacing_by_pitch, 3, 2>(module, c"status_spacing_by_pitch")?;
    module.add_function(wrap_pyfunction!(one_spacing_by_pitch, module)?)?;
    module.add_function(wrap_pyfunction!(one_spacing_through, module)?)?;
    add_one::<
        srgb_from_lab,
        3,
        4,
        0,
    >(
        module,
        c"srgb_from_lab__red",
        c"Screen levels of a colour given in CIELAB under daylight D65.\n\nRed, 0 to 255 where a screen can show it.\nInputs: l (0 to 100); a (-200 to 200); b (-200 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        srgb_from_lab,
        3,
        4,
        1,
    >(
        module,
        c"srgb_from_lab__green",
        c"Screen levels of a colour given in CIELAB under daylight D65.\n\nGreen, 0 to 255 where a screen can show it.\nInputs: l (0 to 100); a (-200 to 200); b (-200 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        srgb_from_lab,
        3,
        4,
        2,
    >(
        module,
        c"srgb_from_lab__blue",
        c"Screen levels of a colour given in CIELAB under daylight D65.\n\nBlue, 0 to 255 where a screen can show it.\nInputs: l (0 to 100); a (-200 to 200); b (-200 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        srgb_from_lab,
        3,
        4,
        3,
    >(
        module,
        c"srgb_from_lab__outside",
        c"Screen levels of a colour given in CIELAB under daylight D65.\n\nHow many of the three a screen cannot show.\nInputs: l (0 to 100); a (-200 to 200); b (-200 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<srgb_from_lab, 3, 4>(module, c"all_srgb_from_lab")?;
    add_status::<srgb_from_lab, 3, 4>(module, c"status_srgb_from_lab")?;
    module.add_function(wrap_pyfunction!(one_srgb_from_lab, module)?)?;
    add_one::<
        srgb_from_xyz,
        3,
        4,
        0,
    >(
        module,
        c"srgb_from_xyz__red",
        c"Screen levels of a colour given by its tristimulus values.\n\nRed, 0 to 255 where a screen can show it.\nInputs: x (0 to 2); y (0 to 2); z (0 to 2).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        srgb_from_xyz,
        3,
        4,
        1,
    >(
        module,
        c"srgb_from_xyz__green",
        c"Screen levels of a colour given by its tristimulus values.\n\nGreen, 0 to 255 where a screen can show it.\nInputs: x (0 to 2); y (0 to 2); z (0 to 2).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        srgb_from_xyz,
        3,
        4,
        2,
    >(
        module,
        c"srgb_from_xyz__blue",
        c"Screen levels of a colour given by its tristimulus values.\n\nBlue, 0 to 255 where a screen can show it.\nInputs: x (0 to 2); y (0 to 2); z (0 to 2).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        srgb_from_xyz,
        3,
        4,
        3,
    >(
        module,
        c"srgb_from_xyz__outside",
        c"Screen levels of a colour given by its tristimulus values.\n\nHow many of the three a screen cannot show.\nInputs: x (0 to 2); y (0 to 2); z (0 to 2).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<srgb_from_xyz, 3, 4>(module, c"all_srgb_from_xyz")?;
    add_status::<srgb_from_xyz, 3, 4>(module, c"status_srgb_from_xyz")?;
    module.add_function(wrap_pyfunction!(one_srgb_from_xyz, module)?)?;
    add_one::<
        stitch_length,
        1,
        1,
        0,
    >(
        module,
        c"stitch_length",
        c"Length of one stitch from the number of stitches in an inch.\n\nLength of one stitch (mm).\nInputs: stitches_per_inch (0.5 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<stitch_length, 1, 1>(module, c"all_stitch_length")?;
    add_status::<stitch_length, 1, 1>(module, c"status_stitch_length")?;
    module.add_function(wrap_pyfunction!(one_stitch_length, module)?)?;
    add_one::<
        stock_volume,
        3,
        4,
        0,
    >(
        module,
        c"stock_volume__stock_ml",
        c"Volume of a stock solution for a percentage on weight of fibre.\n\nStock solution to measure out (ml).\nInputs: mass_g (g, 0.01 to 1000000); pct (%, 0 to 1000); stock_pct (%, 0.001 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        stock_volume,
        3,
        4,
        1,
    >(
        module,
        c"stock_volume__amount_g",
        c"Volume of a stock solution for a percentage on weight of fibre.\n\nWhat that holds (g).\nInputs: mass_g (g, 0.01 to 1000000); pct (%, 0 to 1000); stock_pct (%, 0.001 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        stock_volume,
        3,
        4,
        2,
    >(
        module,
        c"stock_volume__doubts",
        c"Volume of a stock solution for a percentage on weight of fibre.\n\nDoubts raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); pct (%, 0 to 1000); stock_pct (%, 0.001 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        stock_volume,
        3,
        4,
        3,
    >(
        module,
        c"stock_volume__cautions",
        c"Volume of a stock solution for a percentage on weight of fibre.\n\nCautions raised (bits).\nInputs: mass_g (g, 0.01 to 1000000); pct (%, 0 to 1000); stock_pct (%, 0.001 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<stock_volume, 3, 4>(module, c"all_stock_volume")?;
    add_status::<stock_volume, 3, 4>(module, c"status_stock_volume")?;
    module.add_function(wrap_pyfunction!(one_stock_volume, module)?)?;
    add_one::<
        straight_band,
        6,
        4,
        0,
    >(
        module,
        c"straight_band__cut_length",
        c"Strip to cut for a straight band.\n\nLength to cut, allowances included (mm).\nInputs: waist (mm, 1 to 100000); overlap (mm, 0 to 10000); depth (mm, 1 to 10000); allowance (mm, 0 to 1000); turn (mm, 0 to 100); make.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        straight_band,
        6,
        4,
        1,
    >(
        module,
        c"straight_band__cut_width",
        c"Strip to cut for a straight band.\n\nWidth to cut, allowances included (mm).\nInputs: waist (mm, 1 to 100000); overlap (mm, 0 to 10000); depth (mm, 1 to 10000); allowance (mm, 0 to 1000); turn (mm, 0 to 100); make.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        straight_band,
        6,
        4,
        2,
    >(
        module,
        c"straight_band__strips",
        c"Strip to cut for a straight band.\n\nHow many such strips.\nInputs: waist (mm, 1 to 100000); overlap (mm, 0 to 10000); depth (mm, 1 to 10000); allowance (mm, 0 to 1000); turn (mm, 0 to 100); make.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        straight_band,
        6,
        4,
        3,
    >(
        module,
        c"straight_band__doubts",
        c"Strip to cut for a straight band.\n\nDoubts raised (bits).\nInputs: waist (mm, 1 to 100000); overlap (mm, 0 to 10000); depth (mm, 1 to 10000); allowance (mm, 0 to 1000); turn (mm, 0 to 100); make.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<straight_band, 6, 4>(module, c"all_straight_band")?;
    add_status::<straight_band, 6, 4>(module, c"status_straight_band")?;
    module.add_function(wrap_pyfunction!(one_straight_band, module)?)?;
    add_one::<
        straight_band_depth,
        4,
        1,
        0,
    >(
        module,
        c"straight_band_depth",
        c"Finished depth of a straight band from a strip there is.\n\nFinished depth of the band (mm).\nInputs: cut_width (mm, 1 to 100000); allowance (mm, 0 to 1000); turn (mm, 0 to 100); make.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<straight_band_depth, 4, 1>(module, c"all_straight_band_depth")?;
    add_status::<straight_band_depth, 4, 1>(module, c"status_straight_band_depth")?;
    module.add_function(wrap_pyfunction!(one_straight_band_depth, module)?)?;
    add_one::<
        stretch_pct,
        2,
        1,
        0,
    >(
        module,
        c"stretch_pct",
        c"Stretch of cloth from a marked length and the same length pulled out, in percent.\n\nStretch (%).\nInputs: relaxed (mm, 1 to 100000); pulled (mm, 1 to 1000000, >= relaxed).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<stretch_pct, 2, 1>(module, c"all_stretch_pct")?;
    add_status::<stretch_pct, 2, 1>(module, c"status_stretch_pct")?;
    module.add_function(wrap_pyfunction!(one_stretch_pct, module)?)?;
    add_one::<
        take_in,
        5,
        5,
        0,
    >(
        module,
        c"take_in__excess",
        c"What to take in at each edge of a garment that is too wide, and what is left over.\n\nWhat the garment is too wide by (mm).\nInputs: garment (mm, 1 to 100000); body (mm, 1 to 100000); ease (mm, -10000 to 10000); edges (1 to 64); limit (mm, 0 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        take_in,
        5,
        5,
        1,
    >(
        module,
        c"take_in__each",
        c"What to take in at each edge of a garment that is too wide, and what is left over.\n\nTaken at each edge, beyond its old seam line (mm).\nInputs: garment (mm, 1 to 100000); body (mm, 1 to 100000); ease (mm, -10000 to 10000); edges (1 to 64); limit (mm, 0 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        take_in,
        5,
        5,
        2,
    >(
        module,
        c"take_in__taken",
        c"What to take in at each edge of a garment that is too wide, and what is left over.\n\nTaken at all edges together (mm).\nInputs: garment (mm, 1 to 100000); body (mm, 1 to 100000); ease (mm, -10000 to 10000); edges (1 to 64); limit (mm, 0 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        take_in,
        5,
        5,
        3,
    >(
        module,
        c"take_in__leftover",
        c"What to take in at each edge of a garment that is too wide, and what is left over.\n\nLeft for darts or the centre back (mm).\nInputs: garment (mm, 1 to 100000); body (mm, 1 to 100000); ease (mm, -10000 to 10000); edges (1 to 64); limit (mm, 0 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        take_in,
        5,
        5,
        4,
    >(
        module,
        c"take_in__doubts",
        c"What to take in at each edge of a garment that is too wide, and what is left over.\n\nDoubts raised (bits).\nInputs: garment (mm, 1 to 100000); body (mm, 1 to 100000); ease (mm, -10000 to 10000); edges (1 to 64); limit (mm, 0 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<take_in, 5, 5>(module, c"all_take_in")?;
    add_status::<take_in, 5, 5>(module, c"status_take_in")?;
    module.add_function(wrap_pyfunction!(one_take_in, module)?)?;
    add_one::<
        tex_from_cotton_count,
        2,
        1,
        0,
    >(
        module,
        c"tex_from_cotton_count",
        c"Linear density of a yarn or thread from its cotton count (Ne).\n\nLinear density of the plied yarn, take-up in twisting left out (tex).\nInputs: cotton_count (0.1 to 1000); plies (1 to 24).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<tex_from_cotton_count, 2, 1>(module, c"all_tex_from_cotton_count")?;
    add_status::<tex_from_cotton_count, 2, 1>(module, c"status_tex_from_cotton_count")?;
    module.add_function(wrap_pyfunction!(one_tex_from_cotton_count, module)?)?;
    add_one::<
        tex_from_denier,
        1,
        1,
        0,
    >(
        module,
        c"tex_from_denier",
        c"Linear density of a yarn or thread from its denier.\n\nLinear density (tex).\nInputs: denier (0.01 to 1000000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<tex_from_denier, 1, 1>(module, c"all_tex_from_denier")?;
    add_status::<tex_from_denier, 1, 1>(module, c"status_tex_from_denier")?;
    module.add_function(wrap_pyfunction!(one_tex_from_denier, module)?)?;
    add_one::<
        tex_from_metric_count,
        2,
        1,
        0,
    >(
        module,
        c"tex_from_metric_count",
        c"Linear density of a yarn or thread from its metric count (Nm).\n\nLinear density of the plied yarn, take-up in twisting left out (tex).\nInputs: metric_count (0.1 to 2000); plies (1 to 24).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<tex_from_metric_count, 2, 1>(module, c"all_tex_from_metric_count")?;
    add_status::<tex_from_metric_count, 2, 1>(module, c"status_tex_from_metric_count")?;
    module.add_function(wrap_pyfunction!(one_tex_from_metric_count, module)?)?;
    add_one::<
        thread_for_seam,
        3,
        1,
        0,
    >(
        module,
        c"thread_for_seam",
        c"Thread for a seam, waste included.\n\nLength of thread (mm).\nInputs: seam (mm, 0 to 100000000); ratio (0.1 to 100); waste_pct (%, 0 to 500).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<thread_for_seam, 3, 1>(module, c"all_thread_for_seam")?;
    add_status::<thread_for_seam, 3, 1>(module, c"status_thread_for_seam")?;
    module.add_function(wrap_pyfunction!(one_thread_for_seam, module)?)?;
    add_one::<
        thread_ratio,
        3,
        1,
        0,
    >(
        module,
        c"thread_ratio",
        c"Thread that a seam takes for its length, from the path of the stitch.\n\nThread over seam, all threads together.\nInputs: stitch_length (mm, 0.1 to 100); thickness (mm, 0 to 100); stitch.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<thread_ratio, 3, 1>(module, c"all_thread_ratio")?;
    add_status::<thread_ratio, 3, 1>(module, c"status_thread_ratio")?;
    module.add_function(wrap_pyfunction!(one_thread_ratio, module)?)?;
    module.add_function(wrap_pyfunction!(one_tiers, module)?)?;
    add_one::<
        tolerance_stack,
        2,
        2,
        0,
    >(
        module,
        c"tolerance_stack__worst",
        c"How far a girth made of equal seams may be off.\n\nWhen every error falls the same way (mm).\nInputs: seams (0 to 1000); error_each (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        tolerance_stack,
        2,
        2,
        1,
    >(
        module,
        c"tolerance_stack__likely",
        c"How far a girth made of equal seams may be off.\n\nWhen they fall by chance: the root of the sum of their squares (mm).\nInputs: seams (0 to 1000); error_each (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<tolerance_stack, 2, 2>(module, c"all_tolerance_stack")?;
    add_status::<tolerance_stack, 2, 2>(module, c"status_tolerance_stack")?;
    module.add_function(wrap_pyfunction!(one_tolerance_stack, module)?)?;
    module.add_function(wrap_pyfunction!(one_tolerance_stack_list, module)?)?;
    add_one::<
        trilaterate,
        3,
        5,
        0,
    >(
        module,
        c"trilaterate__along",
        c"A point measured by tape from both ends of a base.\n\nFrom the start along the base, negative behind the start (mm).\nInputs: base (mm, 1 to 100000); from_start (mm, 1 to 100000); from_end (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        trilaterate,
        3,
        5,
        1,
    >(
        module,
        c"trilaterate__across",
        c"A point measured by tape from both ends of a base.\n\nSquare to the base (mm).\nInputs: base (mm, 1 to 100000); from_start (mm, 1 to 100000); from_end (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        trilaterate,
        3,
        5,
        2,
    >(
        module,
        c"trilaterate__along_per_mm",
        c"A point measured by tape from both ends of a base.\n\nHow far along the base the point moves at worst, for each mm that both readings are off.\nInputs: base (mm, 1 to 100000); from_start (mm, 1 to 100000); from_end (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        trilaterate,
        3,
        5,
        3,
    >(
        module,
        c"trilaterate__across_per_mm",
        c"A point measured by tape from both ends of a base.\n\nHow far across the base the point moves at worst, for each mm that both readings are off.\nInputs: base (mm, 1 to 100000); from_start (mm, 1 to 100000); from_end (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        trilaterate,
        3,
        5,
        4,
    >(
        module,
        c"trilaterate__doubts",
        c"A point measured by tape from both ends of a base.\n\n`TRIANGLE_FLAT` when `across_per_mm` passes 5, `TRIANGLE_TALL` when `along_per_mm` does (bits).\nInputs: base (mm, 1 to 100000); from_start (mm, 1 to 100000); from_end (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<trilaterate, 3, 5>(module, c"all_trilaterate")?;
    add_status::<trilaterate, 3, 5>(module, c"status_trilaterate")?;
    module.add_function(wrap_pyfunction!(one_trilaterate, module)?)?;
    add_one::<
        tucks,
        4,
        6,
        0,
    >(
        module,
        c"tucks__flat",
        c"Cloth and marking for tucks stitched an even distance apart.\n\nWidth before tucking, without allowances (mm).\nInputs: finished (mm, 1 to 100000); count (1 to 1000); depth (mm, 0.1 to 1000); spacing (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        tucks,
        4,
        6,
        1,
    >(
        module,
        c"tucks__taken_up",
        c"Cloth and marking for tucks stitched an even distance apart.\n\nCloth that all tucks take up (mm).\nInputs: finished (mm, 1 to 100000); count (1 to 1000); depth (mm, 0.1 to 1000); spacing (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        tucks,
        4,
        6,
        2,
    >(
        module,
        c"tucks__fold_pitch",
        c"Cloth and marking for tucks stitched an even distance apart.\n\nFrom fold line to fold line on the flat cloth (mm).\nInputs: finished (mm, 1 to 100000); count (1 to 1000); depth (mm, 0.1 to 1000); spacing (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        tucks,
        4,
        6,
        3,
    >(
        module,
        c"tucks__gap",
        c"Cloth and marking for tucks stitched an even distance apart.\n\nWhat shows between a tuck's fold and the next one's stitching; 0 for blind tucks (mm).\nInputs: finished (mm, 1 to 100000); count (1 to 1000); depth (mm, 0.1 to 1000); spacing (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        tucks,
        4,
        6,
        4,
    >(
        module,
        c"tucks__margin",
        c"Cloth and marking for tucks stitched an even distance apart.\n\nWidth left beside the first and the last stitching, together (mm).\nInputs: finished (mm, 1 to 100000); count (1 to 1000); depth (mm, 0.1 to 1000); spacing (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        tucks,
        4,
        6,
        5,
    >(
        module,
        c"tucks__doubts",
        c"Cloth and marking for tucks stitched an even distance apart.\n\n`PLEATS_OVERLAP` when tucks lie over each other (bits).\nInputs: finished (mm, 1 to 100000); count (1 to 1000); depth (mm, 0.1 to 1000); spacing (mm, 0.1 to 10000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<tucks, 4, 6>(module, c"all_tucks")?;
    add_status::<tucks, 4, 6>(module, c"status_tucks")?;
    module.add_function(wrap_pyfunction!(one_tucks, module)?)?;
    add_one::<
        turn_through,
        4,
        3,
        0,
    >(
        module,
        c"turn_through__diameter",
        c"Whether a garment part can be turned right side out through an opening: an estimate.\n\nDiameter of the bundle (mm).\nInputs: width (mm, 1 to 100000); thickness (mm, 0.01 to 1000); opening (mm, 1 to 100000); packing (0.1 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        turn_through,
        4,
        3,
        1,
    >(
        module,
        c"turn_through__least_opening",
        c"Whether a garment part can be turned right side out through an opening: an estimate.\n\nLeast flat width of an opening that it passes (mm).\nInputs: width (mm, 1 to 100000); thickness (mm, 0.01 to 1000); opening (mm, 1 to 100000); packing (0.1 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        turn_through,
        4,
        3,
        2,
    >(
        module,
        c"turn_through__spare",
        c"Whether a garment part can be turned right side out through an opening: an estimate.\n\nWhat the opening is wider than that; negative when the bundle does not pass (mm).\nInputs: width (mm, 1 to 100000); thickness (mm, 0.01 to 1000); opening (mm, 1 to 100000); packing (0.1 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<turn_through, 4, 3>(module, c"all_turn_through")?;
    add_status::<turn_through, 4, 3>(module, c"status_turn_through")?;
    module.add_function(wrap_pyfunction!(one_turn_through, module)?)?;
    add_one::<
        turned_hem,
        4,
        2,
        0,
    >(
        module,
        c"turned_hem__allowance",
        c"Allowance and cut length for a hem that is turned up, its raw edge turned in.\n\nHem allowance, from the finished edge to the raw edge (mm).\nInputs: length (mm, 1 to 100000); depth (mm, 0 to 10000); turn_in (mm, 0 to 10000, <= depth); roll (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        turned_hem,
        4,
        2,
        1,
    >(
        module,
        c"turned_hem__cut_length",
        c"Allowance and cut length for a hem that is turned up, its raw edge turned in.\n\nLength to cut, with that allowance and no other (mm).\nInputs: length (mm, 1 to 100000); depth (mm, 0 to 10000); turn_in (mm, 0 to 10000, <= depth); roll (mm, 0 to 100).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<turned_hem, 4, 2>(module, c"all_turned_hem")?;
    add_status::<turned_hem, 4, 2>(module, c"status_turned_hem")?;
    module.add_function(wrap_pyfunction!(one_turned_hem, module)?)?;
    add_one::<
        v_neck,
        3,
        3,
        0,
    >(
        module,
        c"v_neck__edge",
        c"Edge of a V neck, how far it lies off grain, and the tape that stays it.\n\nLength of the straight edge on one side (mm).\nInputs: half_width (mm, 0 to 10000); depth (mm, 1 to 10000); stay_ratio (0.9 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        v_neck,
        3,
        3,
        1,
    >(
        module,
        c"v_neck__off_grain_deg",
        c"Edge of a V neck, how far it lies off grain, and the tape that stays it.\n\nAngle of the edge from the grain that runs down the middle (deg).\nInputs: half_width (mm, 0 to 10000); depth (mm, 1 to 10000); stay_ratio (0.9 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        v_neck,
        3,
        3,
        2,
    >(
        module,
        c"v_neck__stay",
        c"Edge of a V neck, how far it lies off grain, and the tape that stays it.\n\nLength of the tape that stays the edge on one side (mm).\nInputs: half_width (mm, 0 to 10000); depth (mm, 1 to 10000); stay_ratio (0.9 to 1).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<v_neck, 3, 3>(module, c"all_v_neck")?;
    add_status::<v_neck, 3, 3>(module, c"status_v_neck")?;
    module.add_function(wrap_pyfunction!(one_v_neck, module)?)?;
    add_one::<
        waist_hip_doubts,
        2,
        1,
        0,
    >(
        module,
        c"waist_hip_doubts",
        c"Doubts on a waist and a hip together.\n\nThe doubts (bits).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<waist_hip_doubts, 2, 1>(module, c"all_waist_hip_doubts")?;
    add_status::<waist_hip_doubts, 2, 1>(module, c"status_waist_hip_doubts")?;
    module.add_function(wrap_pyfunction!(one_waist_hip_doubts, module)?)?;
    add_one::<
        washes,
        4,
        3,
        0,
    >(
        module,
        c"washes__after",
        c"Length after several washes, of which the first usually takes most.\n\nLength after all washes (mm).\nInputs: length (mm, 0 to 1000000); first_pct (%, -90 to 100); later_pct (%, -90 to 100); washes (0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        washes,
        4,
        3,
        1,
    >(
        module,
        c"washes__change_pct",
        c"Length after several washes, of which the first usually takes most.\n\nChange from the first length to the last (%).\nInputs: length (mm, 0 to 1000000); first_pct (%, -90 to 100); later_pct (%, -90 to 100); washes (0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        washes,
        4,
        3,
        2,
    >(
        module,
        c"washes__doubts",
        c"Length after several washes, of which the first usually takes most.\n\nDoubts raised (bits).\nInputs: length (mm, 0 to 1000000); first_pct (%, -90 to 100); later_pct (%, -90 to 100); washes (0 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<washes, 4, 3>(module, c"all_washes")?;
    add_status::<washes, 4, 3>(module, c"status_washes")?;
    module.add_function(wrap_pyfunction!(one_washes, module)?)?;
    add_one::<
        wearing_ease,
        2,
        5,
        0,
    >(
        module,
        c"wearing_ease__low",
        c"Wearing ease of woven cloth, all round, as a range over the authors, and the girths it makes.\n\nThe least that an author gives, all round (mm).\nInputs: body (mm, 1 to 100000); place.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        wearing_ease,
        2,
        5,
        1,
    >(
        module,
        c"wearing_ease__high",
        c"Wearing ease of woven cloth, all round, as a range over the authors, and the girths it makes.\n\nThe most that an author gives, all round (mm).\nInputs: body (mm, 1 to 100000); place.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        wearing_ease,
        2,
        5,
        2,
    >(
        module,
        c"wearing_ease__garment_low",
        c"Wearing ease of woven cloth, all round, as a range over the authors, and the girths it makes.\n\nFinished girth with the least (mm).\nInputs: body (mm, 1 to 100000); place.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        wearing_ease,
        2,
        5,
        3,
    >(
        module,
        c"wearing_ease__garment_high",
        c"Wearing ease of woven cloth, all round, as a range over the authors, and the girths it makes.\n\nFinished girth with the most (mm).\nInputs: body (mm, 1 to 100000); place.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        wearing_ease,
        2,
        5,
        4,
    >(
        module,
        c"wearing_ease__doubts",
        c"Wearing ease of woven cloth, all round, as a range over the authors, and the girths it makes.\n\nDoubts raised (bits).\nInputs: body (mm, 1 to 100000); place.\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<wearing_ease, 2, 5>(module, c"all_wearing_ease")?;
    add_status::<wearing_ease, 2, 5>(module, c"status_wearing_ease")?;
    module.add_function(wrap_pyfunction!(one_wearing_ease, module)?)?;
    add_one::<
        width_conversion,
        3,
        4,
        0,
    >(
        module,
        c"width_conversion__by_area",
        c"Length of cloth of one width that does for a length of another, as a range.\n\nLength of the same area (mm).\nInputs: length (mm, 0 to 1000000); width (mm, 10 to 100000); new_width (mm, 10 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        width_conversion,
        3,
        4,
        1,
    >(
        module,
        c"width_conversion__low",
        c"Length of cloth of one width that does for a length of another, as a range.\n\nLeast that the printed tables give, 0.9 times the area's (mm).\nInputs: length (mm, 0 to 1000000); width (mm, 10 to 100000); new_width (mm, 10 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        width_conversion,
        3,
        4,
        2,
    >(
        module,
        c"width_conversion__high",
        c"Length of cloth of one width that does for a length of another, as a range.\n\nMost that the printed tables give, 1.12 times the area's (mm).\nInputs: length (mm, 0 to 1000000); width (mm, 10 to 100000); new_width (mm, 10 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        width_conversion,
        3,
        4,
        3,
    >(
        module,
        c"width_conversion__doubts",
        c"Length of cloth of one width that does for a length of another, as a range.\n\nDoubts raised (bits).\nInputs: length (mm, 0 to 1000000); width (mm, 10 to 100000); new_width (mm, 10 to 100000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<width_conversion, 3, 4>(module, c"all_width_conversion")?;
    add_status::<width_conversion, 3, 4>(module, c"status_width_conversion")?;
    module.add_function(wrap_pyfunction!(one_width_conversion, module)?)?;
    add_one::<
        wrap_skirt,
        3,
        7,
        0,
    >(
        module,
        c"wrap_skirt__back_waist",
        c"Widths of a skirt with a back and two fronts that lap over each other.\n\nBack at the waist, side seam to side seam (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); overlap (mm, 0 to 100000, <= waist).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        wrap_skirt,
        3,
        7,
        1,
    >(
        module,
        c"wrap_skirt__back_hip",
        c"Widths of a skirt with a back and two fronts that lap over each other.\n\nBack at the hip (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); overlap (mm, 0 to 100000, <= waist).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        wrap_skirt,
        3,
        7,
        2,
    >(
        module,
        c"wrap_skirt__front_waist",
        c"Widths of a skirt with a back and two fronts that lap over each other.\n\nEach front at the waist, side seam to its finished edge (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); overlap (mm, 0 to 100000, <= waist).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        wrap_skirt,
        3,
        7,
        3,
    >(
        module,
        c"wrap_skirt__front_hip",
        c"Widths of a skirt with a back and two fronts that lap over each other.\n\nEach front at the hip (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); overlap (mm, 0 to 100000, <= waist).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        wrap_skirt,
        3,
        7,
        4,
    >(
        module,
        c"wrap_skirt__waist_edge",
        c"Widths of a skirt with a back and two fronts that lap over each other.\n\nWaist edge of all three parts, which is the length of its band without ties (mm).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); overlap (mm, 0 to 100000, <= waist).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        wrap_skirt,
        3,
        7,
        5,
    >(
        module,
        c"wrap_skirt__wrap_pct",
        c"Widths of a skirt with a back and two fronts that lap over each other.\n\nHow far each front reaches past the centre line, as a share of half a front (%).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); overlap (mm, 0 to 100000, <= waist).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        wrap_skirt,
        3,
        7,
        6,
    >(
        module,
        c"wrap_skirt__doubts",
        c"Widths of a skirt with a back and two fronts that lap over each other.\n\nDoubts raised (bits).\nInputs: waist (mm, 1 to 100000); hip (mm, 1 to 100000); overlap (mm, 0 to 100000, <= waist).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<wrap_skirt, 3, 7>(module, c"all_wrap_skirt")?;
    add_status::<wrap_skirt, 3, 7>(module, c"status_wrap_skirt")?;
    module.add_function(wrap_pyfunction!(one_wrap_skirt, module)?)?;
    add_one::<
        xyz_from_lab,
        3,
        3,
        0,
    >(
        module,
        c"xyz_from_lab__x",
        c"Tristimulus values of a colour given in CIELAB, under daylight D65: `lab_from_xyz` turned round.\n\nX.\nInputs: l (0 to 100); a (-200 to 200); b (-200 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        xyz_from_lab,
        3,
        3,
        1,
    >(
        module,
        c"xyz_from_lab__y",
        c"Tristimulus values of a colour given in CIELAB, under daylight D65: `lab_from_xyz` turned round.\n\nY, the luminance: share of the white's.\nInputs: l (0 to 100); a (-200 to 200); b (-200 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        xyz_from_lab,
        3,
        3,
        2,
    >(
        module,
        c"xyz_from_lab__z",
        c"Tristimulus values of a colour given in CIELAB, under daylight D65: `lab_from_xyz` turned round.\n\nZ.\nInputs: l (0 to 100); a (-200 to 200); b (-200 to 200).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<xyz_from_lab, 3, 3>(module, c"all_xyz_from_lab")?;
    add_status::<xyz_from_lab, 3, 3>(module, c"status_xyz_from_lab")?;
    module.add_function(wrap_pyfunction!(one_xyz_from_lab, module)?)?;
    add_one::<
        xyz_from_srgb,
        3,
        3,
        0,
    >(
        module,
        c"xyz_from_srgb__x",
        c"Tristimulus values of a colour given by its screen levels.\n\nX.\nInputs: red (0 to 255); green (0 to 255); blue (0 to 255).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        xyz_from_srgb,
        3,
        3,
        1,
    >(
        module,
        c"xyz_from_srgb__y",
        c"Tristimulus values of a colour given by its screen levels.\n\nY, the luminance: share of the white's.\nInputs: red (0 to 255); green (0 to 255); blue (0 to 255).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        xyz_from_srgb,
        3,
        3,
        2,
    >(
        module,
        c"xyz_from_srgb__z",
        c"Tristimulus values of a colour given by its screen levels.\n\nZ.\nInputs: red (0 to 255); green (0 to 255); blue (0 to 255).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<xyz_from_srgb, 3, 3>(module, c"all_xyz_from_srgb")?;
    add_status::<xyz_from_srgb, 3, 3>(module, c"status_xyz_from_srgb")?;
    module.add_function(wrap_pyfunction!(one_xyz_from_srgb, module)?)?;
    add_one::<
        zigzag_buttonhole,
        5,
        3,
        0,
    >(
        module,
        c"zigzag_buttonhole__length",
        c"Size over all of a buttonhole worked in zigzag: two beads and two bars about a slit.\n\nLength over all, bars included (mm).\nInputs: slit (mm, 1 to 300); bead (mm, 0.1 to 20); gap (mm, 0 to 10); bar (mm, 0 to 20); spacing (mm, 0.05 to 10).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        zigzag_buttonhole,
        5,
        3,
        1,
    >(
        module,
        c"zigzag_buttonhole__width",
        c"Size over all of a buttonhole worked in zigzag: two beads and two bars about a slit.\n\nWidth over all (mm).\nInputs: slit (mm, 1 to 300); bead (mm, 0.1 to 20); gap (mm, 0 to 10); bar (mm, 0 to 20); spacing (mm, 0.05 to 10).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        zigzag_buttonhole,
        5,
        3,
        2,
    >(
        module,
        c"zigzag_buttonhole__stitches",
        c"Size over all of a buttonhole worked in zigzag: two beads and two bars about a slit.\n\nStitches of the two sides together.\nInputs: slit (mm, 1 to 300); bead (mm, 0.1 to 20); gap (mm, 0 to 10); bar (mm, 0 to 20); spacing (mm, 0.05 to 10).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<zigzag_buttonhole, 5, 3>(module, c"all_zigzag_buttonhole")?;
    add_status::<zigzag_buttonhole, 5, 3>(module, c"status_zigzag_buttonhole")?;
    module.add_function(wrap_pyfunction!(one_zigzag_buttonhole, module)?)?;
    add_one::<
        zip_length,
        5,
        5,
        0,
    >(
        module,
        c"zip_length__needed",
        c"Zip for an opening: its length from stop to stop, and where the stops lie.\n\nLength needed, top stop to bottom stop (mm).\nInputs: opening (mm, 10 to 5000); gap (mm, 0 to 500, < opening); beyond (mm, 0 to 500); allowance (mm, 0 to 1000); graduation (mm, 1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        zip_length,
        5,
        5,
        1,
    >(
        module,
        c"zip_length__buy",
        c"Zip for an opening: its length from stop to stop, and where the stops lie.\n\nLength to buy, the next that is sold (mm).\nInputs: opening (mm, 10 to 5000); gap (mm, 0 to 500, < opening); beyond (mm, 0 to 500); allowance (mm, 0 to 1000); graduation (mm, 1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        zip_length,
        5,
        5,
        2,
    >(
        module,
        c"zip_length__shorten",
        c"Zip for an opening: its length from stop to stop, and where the stops lie.\n\nWhat that is too long, to be taken off by a new bottom stop (mm).\nInputs: opening (mm, 10 to 5000); gap (mm, 0 to 500, < opening); beyond (mm, 0 to 500); allowance (mm, 0 to 1000); graduation (mm, 1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        zip_length,
        5,
        5,
        3,
    >(
        module,
        c"zip_length__top_stop",
        c"Zip for an opening: its length from stop to stop, and where the stops lie.\n\nTop stop from the raw edge at the top (mm).\nInputs: opening (mm, 10 to 5000); gap (mm, 0 to 500, < opening); beyond (mm, 0 to 500); allowance (mm, 0 to 1000); graduation (mm, 1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_one::<
        zip_length,
        5,
        5,
        4,
    >(
        module,
        c"zip_length__bottom_stop",
        c"Zip for an opening: its length from stop to stop, and where the stops lie.\n\nBottom stop from the raw edge at the top (mm).\nInputs: opening (mm, 10 to 5000); gap (mm, 0 to 500, < opening); beyond (mm, 0 to 500); allowance (mm, 0 to 1000); graduation (mm, 1 to 1000).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<zip_length, 5, 5>(module, c"all_zip_length")?;
    add_status::<zip_length, 5, 5>(module, c"status_zip_length")?;
    module.add_function(wrap_pyfunction!(one_zip_length, module)?)?;
    add_one::<
        zip_opening,
        3,
        1,
        0,
    >(
        module,
        c"zip_opening",
        c"Opening that a zip there is serves.\n\nSeam line at the top to the lower end of the opening (mm).\nInputs: zip (mm, 10 to 5000); gap (mm, 0 to 500); beyond (mm, 0 to 500).\nNaN, with the invalid flag raised, where there is an error.",
    )?;
    add_every::<zip_opening, 3, 1>(module, c"all_zip_opening")?;
    add_status::<zip_opening, 3, 1>(module, c"status_zip_opening")?;
    module.add_function(wrap_pyfunction!(one_zip_opening, module)?)?;
    Ok(())
}
