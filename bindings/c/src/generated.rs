//! Written by `cargo xtask generate` from the doc comments of the core; do not edit.
use core::ffi::c_char;
use recloth::Error;
use crate::boundary as door;
use crate::boundary::recloth_error_t;
/// What a function returns: 0 for success, else the kind of error. The numbers never change.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_status {
    /// Success.
    Ok = 0,
    /// An argument is not a finite number.
    NotFinite = -1,
    /// An argument is outside its range.
    OutOfRange = -2,
    /// The arguments together leave no solution.
    NoSolution = -3,
    /// A list has the wrong number of items.
    Count = -4,
    /// The room given for the answer is too small.
    Room = -5,
    /// An argument must be a whole number.
    NotWhole = -6,
    /// An argument is not one of the choices offered.
    Choice = -7,
    /// The text cannot be read as a length.
    Syntax = -8,
    /// The number has no unit.
    NoUnit = -9,
    /// The comma or point may mark thousands or decimals.
    TwoReadings = -10,
    /// The outline crosses itself or has no area.
    Outline = -11,
    /// Refused: dangerous, or ruinous to the goods.
    Refused = -12,
    /// The text is not UTF-8.
    NotUtf8 = -20,
    /// A pointer is NULL.
    Null = -21,
    /// Internal error: please report it.
    Panic = -22,
    /// The text or data handed over is not valid.
    Invalid = -23,
}
impl From<recloth::ErrorKind> for recloth_status {
    fn from(kind: recloth::ErrorKind) -> Self {
        match kind {
            recloth::ErrorKind::NotFinite => recloth_status::NotFinite,
            recloth::ErrorKind::OutOfRange => recloth_status::OutOfRange,
            recloth::ErrorKind::NoSolution => recloth_status::NoSolution,
            recloth::ErrorKind::Count => recloth_status::Count,
            recloth::ErrorKind::Room => recloth_status::Room,
            recloth::ErrorKind::NotWhole => recloth_status::NotWhole,
            recloth::ErrorKind::Choice => recloth_status::Choice,
            recloth::ErrorKind::Syntax => recloth_status::Syntax,
            recloth::ErrorKind::NoUnit => recloth_status::NoUnit,
            recloth::ErrorKind::TwoReadings => recloth_status::TwoReadings,
            recloth::ErrorKind::Outline => recloth_status::Outline,
            recloth::ErrorKind::Refused => recloth_status::Refused,
            recloth::ErrorKind::NotUtf8 => recloth_status::NotUtf8,
            recloth::ErrorKind::Null => recloth_status::Null,
            recloth::ErrorKind::Panic => recloth_status::Panic,
            recloth::ErrorKind::Invalid => recloth_status::Invalid,
            _ => recloth_status::Panic,
        }
    }
}
/// This girth is below 300 mm: is it in centimetres or inches, or a part of the girth?
pub const RECLOTH_DOUBT_GIRTH_SMALL: u64 = 1;
/// This girth is above 2000 mm: was it taken twice, or in another unit?
pub const RECLOTH_DOUBT_GIRTH_LARGE: u64 = 2;
/// This body length is below 100 mm: is it in centimetres or inches?
pub const RECLOTH_DOUBT_BODY_LENGTH_SMALL: u64 = 4;
/// This body length is above 2000 mm, more than a tall person's height: is the unit right?
pub const RECLOTH_DOUBT_BODY_LENGTH_LARGE: u64 = 8;
/// The waist is larger than the hip: have they changed places? On some bodies it is so.
pub const RECLOTH_DOUBT_WAIST_OVER_HIP: u64 = 16;
/// The hip is more than 450 mm larger than the waist: was half a waist taken?
pub const RECLOTH_DOUBT_HIP_FAR_OVER_WAIST: u64 = 32;
/// One of front and back is more than one and a half times the other: was one taken whole and one half?
pub const RECLOTH_DOUBT_FRONT_BACK_APART: u64 = 64;
/// The neck is more than half the bust: have they changed places, or was half a bust taken?
pub const RECLOTH_DOUBT_NECK_OVER_HALF_BUST: u64 = 128;
/// This triangle is flat: a slip of the tape moves its point across the base more than 5 times as far.
pub const RECLOTH_DOUBT_TRIANGLE_FLAT: u64 = 256;
/// This triangle is tall on a short base: a slip of the tape moves its point along the base more than 5 times as far.
pub const RECLOTH_DOUBT_TRIANGLE_TALL: u64 = 512;
/// A spare reading misses by more than 0.5 %: measure again; the tape was misread or the cloth lay off grain.
pub const RECLOTH_DOUBT_SPARE_MISFIT: u64 = 1024;
/// A point lies more than 1.5 sizes of the reference beyond it: a small slip at a corner moves it far.
pub const RECLOTH_DOUBT_PHOTO_REACH: u64 = 2048;
/// One dart takes more than 32 mm: it may end in a hard point, so try two.
pub const RECLOTH_DOUBT_DART_WIDE: u64 = 4096;
/// The dart is longer than 178 mm, below where the hip is usually measured.
pub const RECLOTH_DOUBT_DART_LONG: u64 = 8192;
/// Darts spread evenly over this width lie less than 25 mm apart.
pub const RECLOTH_DOUBT_DARTS_CLOSE: u64 = 16384;
/// A dart falls within the button stand: move it, or take its intake at that side seam.
pub const RECLOTH_DOUBT_DART_IN_STAND: u64 = 32768;
/// A dart falls on or beyond the opening edge of the narrow panel: take its intake elsewhere.
pub const RECLOTH_DOUBT_DART_OFF_PANEL: u64 = 65536;
/// The upper edge is longer than the lower: the band stands away from the body.
pub const RECLOTH_DOUBT_BAND_FLARED: u64 = 131072;
/// Gathers of less than 1.2 times look like a mistake.
pub const RECLOTH_DOUBT_GATHERS_SCANT: u64 = 262144;
/// The underlay is deeper than the pleat shows: pleats lie over each other, in more than three layers.
pub const RECLOTH_DOUBT_PLEATS_OVERLAP: u64 = 524288;
/// The last buttonhole is less than 12 mm from the end of the edge.
pub const RECLOTH_DOUBT_HOLE_NEAR_SEAM: u64 = 1048576;
/// The distances above and below the fixed button differ by more than 3.2 mm, which shows.
pub const RECLOTH_DOUBT_PITCH_UNEVEN: u64 = 2097152;
/// A change above 0 says that the cloth grows: shrinkage is a negative change.
pub const RECLOTH_DOUBT_CLOTH_GROWS: u64 = 4194304;
/// A change beyond 15 % is rare: wash and measure a second sample.
pub const RECLOTH_DOUBT_CHANGE_LARGE: u64 = 8388608;
/// After washing the lining is longer than the shell and may show.
pub const RECLOTH_DOUBT_LINING_SHOWS: u64 = 16777216;
/// More than 100 % on weight of fibre: only plant matter is used so; is the mass that of dry goods?
pub const RECLOTH_DOUBT_OWF_LARGE: u64 = 33554432;
/// The liquor ratio is outside 3 to 40 litres a kilogram.
pub const RECLOTH_DOUBT_BATH_RATIO: u64 = 67108864;
/// The loop is more than 2 mm longer than the button needs: it may open by itself.
pub const RECLOTH_DOUBT_LOOP_LOOSE: u64 = 134217728;
/// The loop is shorter than the button needs.
pub const RECLOTH_DOUBT_LOOP_TIGHT: u64 = 268435456;
/// This strength lies beyond usual practice, whose figures stand with the argument: check the number, its unit and the label.
pub const RECLOTH_DOUBT_STRENGTH_BEYOND_USUAL: u64 = 536870912;
/// This is hotter than usual practice, whose figure stands with the argument: is it in degrees Celsius, and what does the care label allow?
pub const RECLOTH_DOUBT_HEAT_BEYOND_USUAL: u64 = 1073741824;
/// This is longer than usual practice, whose figure stands with the argument: is it in minutes, and what does the label allow?
pub const RECLOTH_DOUBT_TIME_BEYOND_USUAL: u64 = 2147483648;
/// Peroxide is sold at 3 to 50 %, and a purity of 1 % or less may be a share: what does the label say?
pub const RECLOTH_DOUBT_PURITY_UNLIKELY: u64 = 4294967296;
/// This percentage is so small that it may be a share, as 0.05 for 5 %.
pub const RECLOTH_DOUBT_PERCENT_SMALL: u64 = 8589934592;
/// This share is above a half: was a percentage meant, 1 for 1 %?
pub const RECLOTH_DOUBT_SHARE_LARGE: u64 = 17179869184;
/// These goods weigh less than 2 g: is the mass in kilograms?
pub const RECLOTH_DOUBT_MASS_SMALL: u64 = 34359738368;
/// This volume is below 50 ml, or less than the goods carry: is it in litres?
pub const RECLOTH_DOUBT_VOLUME_SMALL: u64 = 68719476736;
/// This girth is below 110 mm, less than a child's wrist: is it in centimetres or inches?
pub const RECLOTH_DOUBT_LIMB_SMALL: u64 = 137438953472;
/// This cloth is narrower than 200 mm: is its width in centimetres or inches?
pub const RECLOTH_DOUBT_CLOTH_NARROW: u64 = 274877906944;
/// Gathers of more than 4 times are rare even in sheer cloth: is the ratio right?
pub const RECLOTH_DOUBT_GATHERS_LARGE: u64 = 549755813888;
/// The cap is shorter than its armhole and cannot be sewn in: have the two changed places?
pub const RECLOTH_DOUBT_CAP_SHORT: u64 = 1099511627776;
/// Ease of more than 10 % gathers: is a puff meant?
pub const RECLOTH_DOUBT_CAP_FULL: u64 = 2199023255552;
/// The dart is wider than it is long: have the two changed places?
pub const RECLOTH_DOUBT_DART_FLAT: u64 = 4398046511104;
/// The bow that a lens gives straight lines is not taken out: measure a length or two by tape.
pub const RECLOTH_DOUBT_LENS_BOW: u64 = 8796093022208;
/// The edge is stretched or shrunk by more than 3 % to fit between its landmarks: is a dart open in one piece and closed in the other?
pub const RECLOTH_DOUBT_EDGE_STRETCHED: u64 = 17592186044416;
/// Follow the product's label, the care label, local rules and the advice of people qualified to give it before anything printed here.
pub const RECLOTH_CAUTION_LABEL_FIRST: u64 = 1;
/// Weigh dye, mordant and soda with gloves, eye protection and a dust mask, in vessels never used for food.
pub const RECLOTH_CAUTION_POWDER: u64 = 2;
/// A hot bath scalds and steams: a stable vessel, air, long gloves, no children or animals near, never unattended.
pub const RECLOTH_CAUTION_HOT_BATH: u64 = 4;
/// Elastic is ruined by bleach and by hot baths: bleach and dye first, sew elastic in after.
pub const RECLOTH_CAUTION_ELASTIC_BATH: u64 = 8;
/// Chlorine bleach goes into cold water and is never heated; mixed fresh each time, window open, gloves and eye protection, out of reach of children.
pub const RECLOTH_CAUTION_CHLORINE_COLD: u64 = 16;
/// Chlorine bleach goes with nothing: acids (vinegar, descaler, cleaners) set free chlorine gas, ammonia chloramines, alcohol chloroform, and peroxide cancels it. If it smells sharp, leave the room, air it, and call for advice.
pub const RECLOTH_CAUTION_CHLORINE_ALONE: u64 = 32;
/// Try a swatch or a hidden part of every cloth, thread and trim in the garment first; pull it wet, and stop at the first weakness.
pub const RECLOTH_CAUTION_SWATCH_FIRST: u64 = 64;
/// A neutraliser is a fresh bath of its own after draining and rinsing, never poured into bleach; sulfite and thiosulfate never meet acid, which sets free sulfur dioxide.
pub const RECLOTH_CAUTION_NEUTRALISER_APART: u64 = 128;
/// This is longer than any swatch was tried: test a swatch for that time before the garment.
pub const RECLOTH_CAUTION_BEYOND_TESTED: u64 = 256;
/// Two baths seldom match in shade: put what is seen side by side into one.
pub const RECLOTH_CAUTION_BATHS_DIFFER: u64 = 512;
/// A child's garment: no cord, ribbon, drawstring or elastic at the neck. The safety standard that holds where you are goes before anything printed here.
pub const RECLOTH_CAUTION_CHILD_NECK: u64 = 1024;
/// Buttons can be swallowed: sew each on so that it cannot be pulled off, try it again after washing, and use none for a child under three.
pub const RECLOTH_CAUTION_BUTTONS_HELD: u64 = 2048;
/// How a straight band gets its two layers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_band_make {
    /// One strip folded along its upper edge.
    Folded = 0,
    /// Two strips, an outer and an inner, joined along the upper edge.
    Faced = 1,
}
fn read_band_make(
    argument: &'static str,
    value: i32,
) -> (recloth::band::BandMake, Option<Error>) {
    match value {
        0 => (recloth::band::BandMake::Folded, None),
        1 => (recloth::band::BandMake::Faced, None),
        _ => (recloth::band::BandMake::Folded, Some(door::bad_choice(argument, value))),
    }
}
/// How plant matter is when it is weighed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_basis {
    /// Fresh, or frozen fresh: with its water.
    Fresh = 0,
    /// Dried.
    Dry = 1,
}
fn read_basis(
    argument: &'static str,
    value: i32,
) -> (recloth::dye::Basis, Option<Error>) {
    match value {
        0 => (recloth::dye::Basis::Fresh, None),
        1 => (recloth::dye::Basis::Dry, None),
        _ => (recloth::dye::Basis::Fresh, Some(door::bad_choice(argument, value))),
    }
}
/// The bath a part is to go through.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_bath {
    /// Water, with or without a mild detergent.
    Water = 0,
    /// Chlorine bleach (sodium hypochlorite).
    ChlorineBleach = 1,
    /// A direct dye.
    Direct = 2,
    /// A reactive dye.
    Reactive = 3,
    /// An acid dye.
    Acid = 4,
    /// A vat dye, indigo included.
    Vat = 5,
    /// A sulphur dye.
    Sulphur = 6,
    /// An azoic dye.
    Azoic = 7,
    /// A metal-complex dye.
    MetalComplex = 8,
    /// A disperse dye.
    Disperse = 9,
    /// A basic dye.
    Basic = 10,
    /// A natural dye on a mordant.
    Natural = 11,
}
fn read_bath(
    argument: &'static str,
    value: i32,
) -> (recloth::fibre::Bath, Option<Error>) {
    match value {
        0 => (recloth::fibre::Bath::Water, None),
        1 => (recloth::fibre::Bath::ChlorineBleach, None),
        2 => (recloth::fibre::Bath::Direct, None),
        3 => (recloth::fibre::Bath::Reactive, None),
        4 => (recloth::fibre::Bath::Acid, None),
        5 => (recloth::fibre::Bath::Vat, None),
        6 => (recloth::fibre::Bath::Sulphur, None),
        7 => (recloth::fibre::Bath::Azoic, None),
        8 => (recloth::fibre::Bath::MetalComplex, None),
        9 => (recloth::fibre::Bath::Disperse, None),
        10 => (recloth::fibre::Bath::Basic, None),
        11 => (recloth::fibre::Bath::Natural, None),
        _ => (recloth::fibre::Bath::Water, Some(door::bad_choice(argument, value))),
    }
}
/// How a binding is folded over an edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_binding_fold {
    /// One layer: both long edges are turned in.
    Single = 0,
    /// Two layers, French binding: the strip is folded along its middle, both raw edges sewn in one seam.
    Double = 1,
}
fn read_binding_fold(
    argument: &'static str,
    value: i32,
) -> (recloth::bias::BindingFold, Option<Error>) {
    match value {
        0 => (recloth::bias::BindingFold::Single, None),
        1 => (recloth::bias::BindingFold::Double, None),
        _ => {
            (recloth::bias::BindingFold::Single, Some(door::bad_choice(argument, value)))
        }
    }
}
/// The shape of a button.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_button_shape {
    /// A disc: the loop goes over both faces.
    Flat = 0,
    /// A ball: the loop goes over its greatest circle.
    Ball = 1,
}
fn read_button_shape(
    argument: &'static str,
    value: i32,
) -> (recloth::closure::ButtonShape, Option<Error>) {
    match value {
        0 => (recloth::closure::ButtonShape::Flat, None),
        1 => (recloth::closure::ButtonShape::Ball, None),
        _ => {
            (
                recloth::closure::ButtonShape::Flat,
                Some(door::bad_choice(argument, value)),
            )
        }
    }
}
/// Where on a garment of woven cloth the ease is asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_ease_place {
    /// The bust of a bodice or a dress.
    Bust = 0,
    /// The waist of a dress or a bodice.
    DressWaist = 1,
    /// The waist of a skirt or of trousers, which holds them up.
    SkirtWaist = 2,
    /// The hip of any garment.
    Hip = 3,
    /// The chest of a man's shirt, from fitted to classic.
    ShirtChest = 4,
}
fn read_ease_place(
    argument: &'static str,
    value: i32,
) -> (recloth::ease::EasePlace, Option<Error>) {
    match value {
        0 => (recloth::ease::EasePlace::Bust, None),
        1 => (recloth::ease::EasePlace::DressWaist, None),
        2 => (recloth::ease::EasePlace::SkirtWaist, None),
        3 => (recloth::ease::EasePlace::Hip, None),
        4 => (recloth::ease::EasePlace::ShirtChest, None),
        _ => (recloth::ease::EasePlace::Bust, Some(door::bad_choice(argument, value))),
    }
}
/// Which way an edge curves, seen from the cloth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_edge_curve {
    /// Into the cloth: a neck, an armhole.
    Inward = 0,
    /// Out of the cloth: a rounded corner, a scallop.
    Outward = 1,
}
fn read_edge_curve(
    argument: &'static str,
    value: i32,
) -> (recloth::binding::EdgeCurve, Option<Error>) {
    match value {
        0 => (recloth::binding::EdgeCurve::Inward, None),
        1 => (recloth::binding::EdgeCurve::Outward, None),
        _ => {
            (
                recloth::binding::EdgeCurve::Inward,
                Some(door::bad_choice(argument, value)),
            )
        }
    }
}
/// What a cloth, thread or trim is made of. A blend counts as its most delicate part: ask for each.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_fibre {
    /// Not known, or only guessed.
    Unknown = 0,
    /// Cotton.
    Cotton = 1,
    /// Linen.
    Linen = 2,
    /// Viscose and its kin.
    Viscose = 3,
    /// Polyester.
    Polyester = 4,
    /// Acrylic.
    Acrylic = 5,
    /// Polyamide (nylon).
    Polyamide = 6,
    /// Acetate and triacetate.
    Acetate = 7,
    /// Elastane (spandex).
    Elastane = 8,
    /// Rubber, and elastic of any kind.
    Rubber = 9,
    /// Wool.
    Wool = 10,
    /// Silk.
    Silk = 11,
    /// Mohair and other hair.
    Mohair = 12,
    /// Leather and fur.
    Leather = 13,
}
fn read_fibre(
    argument: &'static str,
    value: i32,
) -> (recloth::fibre::Fibre, Option<Error>) {
    match value {
        0 => (recloth::fibre::Fibre::Unknown, None),
        1 => (recloth::fibre::Fibre::Cotton, None),
        2 => (recloth::fibre::Fibre::Linen, None),
        3 => (recloth::fibre::Fibre::Viscose, None),
        4 => (recloth::fibre::Fibre::Polyester, None),
        5 => (recloth::fibre::Fibre::Acrylic, None),
        6 => (recloth::fibre::Fibre::Polyamide, None),
        7 => (recloth::fibre::Fibre::Acetate, None),
        8 => (recloth::fibre::Fibre::Elastane, None),
        9 => (recloth::fibre::Fibre::Rubber, None),
        10 => (recloth::fibre::Fibre::Wool, None),
        11 => (recloth::fibre::Fibre::Silk, None),
        12 => (recloth::fibre::Fibre::Mohair, None),
        13 => (recloth::fibre::Fibre::Leather, None),
        _ => (recloth::fibre::Fibre::Unknown, Some(door::bad_choice(argument, value))),
    }
}
/// What was done to a cloth that a bath might undo.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_finish {
    /// Not known.
    Unknown = 0,
    /// Known to have no finish, and its colour is fast, or it has none.
    Plain = 1,
    /// Its colour is not fast.
    NotFast = 2,
    /// A flame-retardant finish.
    FlameRetardant = 3,
    /// A resin finish, such as against creases.
    Resin = 4,
}
fn read_finish(
    argument: &'static str,
    value: i32,
) -> (recloth::fibre::Finish, Option<Error>) {
    match value {
        0 => (recloth::fibre::Finish::Unknown, None),
        1 => (recloth::fibre::Finish::Plain, None),
        2 => (recloth::fibre::Finish::NotFast, None),
        3 => (recloth::fibre::Finish::FlameRetardant, None),
        4 => (recloth::fibre::Finish::Resin, None),
        _ => (recloth::fibre::Finish::Unknown, Some(door::bad_choice(argument, value))),
    }
}
/// What else is in a bath, or was and has not been rinsed out of the goods and the vessel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_in_bath {
    /// Not known.
    Unknown = 0,
    /// Water and nothing else.
    WaterOnly = 1,
    /// An acid: vinegar, descaler, cleaners for toilets, drains or rust, a dishwasher's rinse.
    Acid = 2,
    /// Ammonia, many glass cleaners, urine.
    Ammonia = 3,
    /// Alcohol, spirit, sanitiser.
    Alcohol = 4,
    /// Peroxide or another oxygen bleach.
    Peroxide = 5,
    /// Thiosulfate, sulfite or another neutraliser.
    Neutraliser = 6,
    /// Anything else: detergent, dye, mordant.
    Other = 7,
}
fn read_in_bath(
    argument: &'static str,
    value: i32,
) -> (recloth::bleach::InBath, Option<Error>) {
    match value {
        0 => (recloth::bleach::InBath::Unknown, None),
        1 => (recloth::bleach::InBath::WaterOnly, None),
        2 => (recloth::bleach::InBath::Acid, None),
        3 => (recloth::bleach::InBath::Ammonia, None),
        4 => (recloth::bleach::InBath::Alcohol, None),
        5 => (recloth::bleach::InBath::Peroxide, None),
        6 => (recloth::bleach::InBath::Neutraliser, None),
        7 => (recloth::bleach::InBath::Other, None),
        _ => (recloth::bleach::InBath::Unknown, Some(door::bad_choice(argument, value))),
    }
}
/// Where a strip is let in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_insert_place {
    /// A seam that is opened: its edges have their allowances.
    Seam = 0,
    /// A cut through the cloth: its edges lose theirs to the new seams.
    Slash = 1,
}
fn read_insert_place(
    argument: &'static str,
    value: i32,
) -> (recloth::alteration::InsertPlace, Option<Error>) {
    match value {
        0 => (recloth::alteration::InsertPlace::Seam, None),
        1 => (recloth::alteration::InsertPlace::Slash, None),
        _ => {
            (
                recloth::alteration::InsertPlace::Seam,
                Some(door::bad_choice(argument, value)),
            )
        }
    }
}
/// What takes the last chlorine away, and what it turns into: the same salt has more than one answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_reaction {
    /// Sodium thiosulfate crystals (pentahydrate) to tetrathionate: the safe upper figure.
    ThiosulfateToTetrathionate = 0,
    /// Sodium thiosulfate crystals (pentahydrate) to sulfate and sulfur.
    ThiosulfateToSulfur = 1,
    /// Sodium thiosulfate crystals (pentahydrate) to sulfate.
    ThiosulfateToSulfate = 2,
    /// Sodium bisulfite to sulfate.
    Bisulfite = 3,
    /// Sodium metabisulfite to sulfate.
    Metabisulfite = 4,
    /// Sodium sulfite to sulfate.
    Sulfite = 5,
    /// Ascorbic acid (vitamin C).
    AscorbicAcid = 6,
    /// Hydrogen peroxide, to oxygen: it froths.
    Peroxide = 7,
}
fn read_reaction(
    argument: &'static str,
    value: i32,
) -> (recloth::bleach::Reaction, Option<Error>) {
    match value {
        0 => (recloth::bleach::Reaction::ThiosulfateToTetrathionate, None),
        1 => (recloth::bleach::Reaction::ThiosulfateToSulfur, None),
        2 => (recloth::bleach::Reaction::ThiosulfateToSulfate, None),
        3 => (recloth::bleach::Reaction::Bisulfite, None),
        4 => (recloth::bleach::Reaction::Metabisulfite, None),
        5 => (recloth::bleach::Reaction::Sulfite, None),
        6 => (recloth::bleach::Reaction::AscorbicAcid, None),
        7 => (recloth::bleach::Reaction::Peroxide, None),
        _ => {
            (
                recloth::bleach::Reaction::ThiosulfateToTetrathionate,
                Some(door::bad_choice(argument, value)),
            )
        }
    }
}
/// Which graduation a length is rounded to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_rounding {
    /// The nearer graduation; from the middle, the one further from zero.
    Nearest = 0,
    /// The next graduation that is not less.
    Up = 1,
    /// The next graduation that is not more.
    Down = 2,
}
fn read_rounding(
    argument: &'static str,
    value: i32,
) -> (recloth::tape::Rounding, Option<Error>) {
    match value {
        0 => (recloth::tape::Rounding::Nearest, None),
        1 => (recloth::tape::Rounding::Up, None),
        2 => (recloth::tape::Rounding::Down, None),
        _ => (recloth::tape::Rounding::Nearest, Some(door::bad_choice(argument, value))),
    }
}
/// Which ends of a band in sections are cut square to the lower edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_square_ends {
    /// Neither end: the band closes in a ring, or both ends slant.
    Neither = 0,
    /// The first section's free end.
    First = 1,
    /// The last section's free end.
    Last = 2,
    /// Both free ends.
    Both = 3,
}
fn read_square_ends(
    argument: &'static str,
    value: i32,
) -> (recloth::band::SquareEnds, Option<Error>) {
    match value {
        0 => (recloth::band::SquareEnds::Neither, None),
        1 => (recloth::band::SquareEnds::First, None),
        2 => (recloth::band::SquareEnds::Last, None),
        3 => (recloth::band::SquareEnds::Both, None),
        _ => {
            (recloth::band::SquareEnds::Neither, Some(door::bad_choice(argument, value)))
        }
    }
}
/// How far the goods are from the bleach.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_stage {
    /// Still in the bleach.
    InBleach = 0,
    /// Out of it and drained, not rinsed.
    Drained = 1,
    /// Drained and rinsed, in a fresh bath.
    FreshBath = 2,
}
fn read_stage(
    argument: &'static str,
    value: i32,
) -> (recloth::bleach::Stage, Option<Error>) {
    match value {
        0 => (recloth::bleach::Stage::InBleach, None),
        1 => (recloth::bleach::Stage::Drained, None),
        2 => (recloth::bleach::Stage::FreshBath, None),
        _ => (recloth::bleach::Stage::InBleach, Some(door::bad_choice(argument, value))),
    }
}
/// Stitch types whose thread is known from their path, numbered as in ISO 4915.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_stitch_type {
    /// Type 101, single-thread chain stitch.
    ChainSingle = 0,
    /// Type 301, plain lockstitch.
    Lock = 1,
    /// Type 401, two-thread chain stitch.
    ChainDouble = 2,
}
fn read_stitch_type(
    argument: &'static str,
    value: i32,
) -> (recloth::thread::StitchType, Option<Error>) {
    match value {
        0 => (recloth::thread::StitchType::ChainSingle, None),
        1 => (recloth::thread::StitchType::Lock, None),
        2 => (recloth::thread::StitchType::ChainDouble, None),
        _ => {
            (
                recloth::thread::StitchType::ChainSingle,
                Some(door::bad_choice(argument, value)),
            )
        }
    }
}
/// How a length is printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_style {
    /// Millimetres with every digit: reading it gives the same number, to the last bit.
    Exact = 0,
    /// Whole millimetres: `797 mm`.
    Mm = 1,
    /// Half millimetres: `58.5 mm`.
    MmHalf = 2,
    /// Centimetres to the millimetre: `58.4 cm`.
    Cm = 3,
    /// Centimetres to the millimetre with a decimal comma: `58,4 cm`.
    CmComma = 4,
    /// Metres to the centimetre: `1.20 m`.
    Metre = 5,
    /// Metres to the centimetre with a decimal comma: `1,20 m`.
    MetreComma = 6,
    /// Inches and halves: `31 1/2 in`.
    InchHalf = 7,
    /// Inches and quarters: `31 1/4 in`.
    InchQuarter = 8,
    /// Inches and eighths: `31 3/8 in`.
    InchEighth = 9,
    /// Inches and sixteenths: `31 3/16 in`.
    InchSixteenth = 10,
    /// Inches and thirty-seconds: `31 3/32 in`.
    InchThirtySecond = 11,
    /// Inches and eighths as one sign, with the inch mark: `31⅜"`.
    InchMark = 12,
    /// Feet, inches and eighths: `2 ft 3 1/8 in`.
    FootEighth = 13,
    /// Yards, inches and eighths: `2 yd 4 1/8 in`.
    YardEighth = 14,
}
fn read_style(
    argument: &'static str,
    value: i32,
) -> (recloth::tape::Style, Option<Error>) {
    match value {
        0 => (recloth::tape::Style::Exact, None),
        1 => (recloth::tape::Style::Mm, None),
        2 => (recloth::tape::Style::MmHalf, None),
        3 => (recloth::tape::Style::Cm, None),
        4 => (recloth::tape::Style::CmComma, None),
        5 => (recloth::tape::Style::Metre, None),
        6 => (recloth::tape::Style::MetreComma, None),
        7 => (recloth::tape::Style::InchHalf, None),
        8 => (recloth::tape::Style::InchQuarter, None),
        9 => (recloth::tape::Style::InchEighth, None),
        10 => (recloth::tape::Style::InchSixteenth, None),
        11 => (recloth::tape::Style::InchThirtySecond, None),
        12 => (recloth::tape::Style::InchMark, None),
        13 => (recloth::tape::Style::FootEighth, None),
        14 => (recloth::tape::Style::YardEighth, None),
        _ => (recloth::tape::Style::Exact, Some(door::bad_choice(argument, value))),
    }
}
/// How a swatch or hidden part of this very cloth stood the same bath for the same time, wet strength tried by pulling.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum recloth_swatch {
    /// Not tried yet.
    Untried = 0,
    /// It kept its strength and did what was wanted.
    Passed = 1,
    /// It weakened, yellowed or bled.
    Failed = 2,
}
fn read_swatch(
    argument: &'static str,
    value: i32,
) -> (recloth::fibre::Swatch, Option<Error>) {
    match value {
        0 => (recloth::fibre::Swatch::Untried, None),
        1 => (recloth::fibre::Swatch::Passed, None),
        2 => (recloth::fibre::Swatch::Failed, None),
        _ => (recloth::fibre::Swatch::Untried, Some(door::bad_choice(argument, value))),
    }
}
/// An arc drawn from its chord and its rise.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_arc_from_rise_t {
    /// Radius of the arc (mm).
    pub radius: f64,
    /// Length along the arc (mm).
    pub length: f64,
    /// Angle from end to end, seen from the centre (deg).
    pub angle_deg: f64,
}
/// A measure of stock solution.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_stock_volume_t {
    /// Stock solution to measure out (ml).
    pub stock_ml: f64,
    /// What that holds (g).
    pub amount_g: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// Strength of a bottle of bleach.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_available_chlorine_t {
    /// Available chlorine by mass (%).
    pub available_pct: f64,
    /// Available chlorine in grams in 100 ml, which the trade also calls percent (%).
    pub trade_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// Goods shared out over several baths, no garment split.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_batches_t {
    /// Baths needed, shared out as given.
    pub batches: u32,
    /// Fewest that any sharing out could need, by total mass.
    pub least: u32,
    /// Most that the vessel takes at once (g).
    pub capacity_g: f64,
    /// Heaviest bath (g).
    pub heaviest_g: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// A bath for goods of a given mass.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_bath_volume_t {
    /// Volume of liquor (ml).
    pub volume_ml: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// Bias strips cut from a rectangle and joined.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_bias_strips_t {
    /// Number of strips.
    pub strips: u32,
    /// Length of the longest, along its shorter edge (mm).
    pub longest: f64,
    /// All strips joined on the straight grain, what the joins take left off (mm).
    pub joined: f64,
    /// Share of the cloth in them before joining (%).
    pub kept_pct: f64,
}
/// One long bias strip cut from a tube.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_bias_tube_t {
    /// Turns of the strip round the tube.
    pub turns: u32,
    /// Length of the strip (mm).
    pub length: f64,
    /// What is left over along the long side, less than one turn (mm).
    pub leftover: f64,
}
/// Solids of a binder laid on cloth.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_binder_solids_t {
    /// Solids in the diluted binder, least (%).
    pub bath_low_pct: f64,
    /// Solids in the diluted binder, most (%).
    pub bath_high_pct: f64,
    /// Solids on weight of fibre after all dips, least (%).
    pub owf_low_pct: f64,
    /// Solids on weight of fibre after all dips, most (%).
    pub owf_high_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// Strips to join for a binding.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_binding_strips_t {
    /// Number of strips.
    pub count: u32,
    /// What the joined strips are longer than needed (mm).
    pub spare: f64,
}
/// A bleach bath mixed from a bottle.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_bleach_dilution_t {
    /// Bleach from the bottle (ml).
    pub bleach_ml: f64,
    /// Cold water it is added to (ml).
    pub water_ml: f64,
    /// Parts of water to one of bleach.
    pub parts_water: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// Time in the bleach, from timed swatches.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_bleach_time_t {
    /// Time to the shade wanted (min).
    pub time_min: f64,
    /// Time for the next swatch: the time found, but never more than twice the longest swatch (min).
    pub next_swatch_min: f64,
    /// Share of the way to the floor gone in a minute, as a rate: the shade falls by e^-rate.
    pub rate: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// A set of equal box pleats, or of inverted ones.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_box_pleats_t {
    /// Width before pleating, without allowances (mm).
    pub flat: f64,
    /// Width when pleated (mm).
    pub finished: f64,
    /// Number of pleats.
    pub count: u32,
    /// Width from pleat to pleat (mm).
    pub show: f64,
    /// Depth of each of a pleat's two folds (mm).
    pub depth: f64,
    /// Cloth that each pleat takes up, four times its depth (mm).
    pub intake: f64,
    /// Cloth that all pleats take up (mm).
    pub taken_up: f64,
    /// Flat over finished: 3 where the folds just meet behind.
    pub ratio: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// Breadths of cloth sewn into a ring.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_breadths_t {
    /// Number of breadths, which is also the number of seams.
    pub count: u32,
    /// Way round when all are joined at their full width (mm).
    pub round: f64,
    /// What that is more than wanted: gather it in, or cut the last breadth narrower (mm).
    pub spare: f64,
}
/// The button for a slit there is, and how far a cross hole lets the front out.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_button_for_hole_t {
    /// Largest diameter of a flat button (mm).
    pub diameter: f64,
    /// How far the front is let out when a hole meant to start past the line is centred on it; negative lets it in (mm).
    pub creep: f64,
}
/// A loop for a button.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_button_loop_t {
    /// Length of the loop that shows (mm).
    pub visible: f64,
    /// Length to cut (mm).
    pub cut: f64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// The strip beyond a button line.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_button_stand_t {
    /// From the button line to the finished edge (mm).
    pub extension: f64,
    /// From the button's rim to the finished edge (mm).
    pub past_rim: f64,
    /// How far the two sides lie over each other when buttoned (mm).
    pub overlap: f64,
}
/// How a sleeve cap compares with its armhole.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_cap_ease_t {
    /// What the cap is longer; negative when it is too short to be sewn in (mm).
    pub ease: f64,
    /// The same over the armhole (%).
    pub ease_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// Liquor that goods carry out of a bath.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_carried_liquor_t {
    /// Liquor carried (ml).
    pub carried_ml: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// A casing turned down at an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_casing_t {
    /// From the fold to the lower stitching (mm).
    pub depth: f64,
    /// Allowance beyond the fold (mm).
    pub allowance: f64,
}
/// A skirt cut from part of a ring: where to set the compass, and how long the hem comes out.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_circle_skirt_t {
    /// Radius of the waist edge (mm).
    pub waist_radius: f64,
    /// Radius of the hem edge (mm).
    pub hem_radius: f64,
    /// Length of the hem edge (mm).
    pub hem_length: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A skirt cut from part of a ring, in equal pieces, from cloth of a given width.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_circle_skirt_on_cloth_t {
    /// Part of a full ring.
    pub fraction: f64,
    /// Waist edge to hem edge (mm).
    pub length: f64,
    /// Radius of the waist edge (mm).
    pub waist_radius: f64,
    /// Radius of the hem edge (mm).
    pub hem_radius: f64,
    /// Length of the hem edge, all pieces together (mm).
    pub hem_length: f64,
    /// Angle of one piece (deg).
    pub piece_angle_deg: f64,
    /// Cloth one piece takes along the grain (mm).
    pub cloth_length: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// What one part of a garment makes of a bath.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_component_check_t {
    /// 0: it bears the bath; 1: a swatch decides; 2: it does not, so take it off first.
    pub bears: u32,
    /// Colour it takes in this bath: 0 none, 1 some or not sure, 2 well.
    pub colour: u32,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// A mark dyed over until it no longer shows.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_cover_mark_t {
    /// Colour difference of mark and ground as they are, CIEDE2000.
    pub now: f64,
    /// Depth that the dye must add to both, K/S; 0 when nothing is needed.
    pub depth: f64,
    /// Reflectance of the ground then.
    pub ground_after: f64,
    /// Reflectance of the mark then.
    pub mark_after: f64,
    /// Colour difference then.
    pub after: f64,
}
/// A band in sections whose edges are arcs about one centre.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_curved_band_t {
    /// Radius of the upper, shorter edge (mm).
    pub inner_radius: f64,
    /// Radius of the lower, longer edge (mm).
    pub outer_radius: f64,
    /// Angle of all sections together (deg).
    pub angle_deg: f64,
    /// Height of the longest section's lower arc above the straight line between its ends (mm).
    pub sagitta: f64,
}
/// A bias binding on a curved edge.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_curved_binding_t {
    /// Length of the seam that sews the binding on (mm).
    pub seam: f64,
    /// What the strip is stretched along that seam; negative where it is eased (%).
    pub stretch_pct: f64,
    /// Width that a bias strip keeps where it is so stretched; above 100 where it is eased (%).
    pub width_pct: f64,
}
/// A length to cut so that washing brings it to size.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_cut_for_change_t {
    /// Length to cut (mm).
    pub cut: f64,
    /// What is added; negative for cloth that grows (mm).
    pub added: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// Finished and cut width of a drawn piece.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_cut_state_t {
    /// Width between the seam lines (mm).
    pub finished: f64,
    /// Width between the cut edges (mm).
    pub cut: f64,
}
/// A dart with two equal legs.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_dart_t {
    /// Length of each leg, edge to point (mm).
    pub leg: f64,
    /// Angle at the point, which is also the kink of a straight edge when the dart is closed (deg).
    pub angle_deg: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// What takes up as much of an edge as a dart does.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_dart_equivalent_t {
    /// Ease of the seam, if it is eased in (%).
    pub ease_pct: f64,
    /// Ratio of the gathers, if it is gathered.
    pub gather_ratio: f64,
    /// Depth of each tuck or pleat, if it is folded (mm).
    pub tuck_depth: f64,
    /// `GATHERS_SCANT` or `GATHERS_LARGE` when as gathers it would look like a mistake (bits).
    pub doubts: u64,
}
/// A dart that takes up what an edge gapes.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_dart_from_gape_t {
    /// Width of the dart at its own edge (mm).
    pub intake: f64,
    /// Angle at the point (deg).
    pub angle_deg: f64,
}
/// Darts that bring a given panel to a wanted width, and what is left for the side seam.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_dart_in_panel_t {
    /// Intake of each dart (mm).
    pub intake_each: f64,
    /// Width still to be taken, at the side seam (mm).
    pub leftover: f64,
    /// Length of each leg (mm).
    pub leg: f64,
    /// Kink of the straight edge at each closed dart; the edge is trued there before cutting (deg).
    pub kink_deg: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A dart with a point at each end, widest between them.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_double_dart_t {
    /// Length of each upper leg (mm).
    pub upper_leg: f64,
    /// Length of each lower leg (mm).
    pub lower_leg: f64,
    /// Angle at the upper point (deg).
    pub upper_angle_deg: f64,
    /// Angle at the lower point (deg).
    pub lower_angle_deg: f64,
    /// How far each leg turns where the dart is widest, where its fold is snipped (deg).
    pub bend_deg: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// Elastic for an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_elastic_t {
    /// Way round the joined elastic, not stretched (mm).
    pub round: f64,
    /// Length to cut, with its overlap (mm).
    pub cut: f64,
    /// Stretch when worn (%).
    pub worn_pct: f64,
    /// Stretch when the widest part passes through (%).
    pub passing_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Always `ELASTIC_BATH` (bits).
    pub cautions: u64,
}
/// Widths of half a five-gored skirt by a handed-down rule: half the front, a side gore and a back.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_five_gores_t {
    /// Half the front gore at the waist (mm).
    pub front_waist: f64,
    /// Side gore at the waist (mm).
    pub side_waist: f64,
    /// Back gore at the waist, its gathers included (mm).
    pub back_waist: f64,
    /// Half the front gore at the hip (mm).
    pub front_hip: f64,
    /// Side gore at the hip (mm).
    pub side_hip: f64,
    /// Back gore at the hip (mm).
    pub back_hip: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A flounce cut from rings.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_flounce_t {
    /// Radius of the seam line that is sewn on (mm).
    pub inner_radius: f64,
    /// Radius of the finished hem (mm).
    pub outer_radius: f64,
    /// Finished hem of all rings joined (mm).
    pub hem: f64,
    /// Hem over edge: how much it ripples.
    pub ratio: f64,
    /// Side of the square of cloth that each ring takes, without hem allowance (mm).
    pub square: f64,
}
/// The strip a folded band is cut from, with its lines.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_folded_band_t {
    /// Width to cut, raw edge to raw edge (mm).
    pub cut_width: f64,
    /// Fold line from the raw edge that is sewn to the garment (mm).
    pub fold_line: f64,
    /// From the fold to the raw edge of the inner layer (mm).
    pub inner: f64,
}
/// A cone, or a part of one between two level cuts, unrolled.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_frustum_t {
    /// From edge to edge along the cloth (mm).
    pub slant: f64,
    /// Radius of the upper, smaller edge, laid flat (mm).
    pub inner_radius: f64,
    /// Radius of the lower, larger edge, laid flat (mm).
    pub outer_radius: f64,
    /// Angle of the sector (deg).
    pub angle_deg: f64,
    /// Area of the sector, without allowances (mm2).
    pub area_mm2: f64,
}
/// A strip to be gathered.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_gathers_t {
    /// Length of the strip before gathering, without allowances (mm).
    pub flat: f64,
    /// What the gathers take up (mm).
    pub taken_up: f64,
    /// Strip over line: 1.5 is half as much again.
    pub ratio: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A strip to be gathered, divided over the sections of its line.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_gather_sections_t {
    /// Length of the line, all sections together (mm).
    pub finished: f64,
    /// Strip over line, the same in every section.
    pub ratio: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A godet: a sector let into a seam or a slit.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_godet_t {
    /// Angle at the point (deg).
    pub angle_deg: f64,
    /// Straight across the hem from side to side, which is the cloth's width that it takes (mm).
    pub chord: f64,
    /// How far the hem bows below that (mm).
    pub sagitta: f64,
    /// What all godets add to the hem (mm).
    pub added: f64,
}
/// One of several equal gores.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_gore_t {
    /// Width at the waist (mm).
    pub waist_width: f64,
    /// Width at the hip (mm).
    pub hip_width: f64,
    /// Width at the hem (mm).
    pub hem_width: f64,
    /// Length of each side edge, waist to hip to hem (mm).
    pub side_length: f64,
    /// Lean of each side edge below the hip; negative where it tapers in (deg).
    pub flare_deg: f64,
    /// What each side edge is longer than the middle, taken off at the hem's ends so that it hangs level (mm).
    pub hem_rise: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A diamond let into two slits.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_gusset_t {
    /// Angle at each slit's end (deg).
    pub angle_deg: f64,
    /// From slit's end to slit's end (mm).
    pub long_diagonal: f64,
    /// Cut from point to point the long way, allowances included (mm).
    pub cut_long: f64,
    /// Cut from point to point the short way, allowances included (mm).
    pub cut_short: f64,
}
/// An opening that a head, or the widest part of a body, must pass.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_head_opening_t {
    /// Least length of the slit; 0 where none is needed (mm).
    pub least_slit: f64,
    /// What the opening is wider than needed; negative when it does not pass (mm).
    pub spare: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A hem that is let down.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_hem_let_down_t {
    /// Cloth left below the new edge for its hem or facing (mm).
    pub left: f64,
    /// The old edge's crease above the new edge (mm).
    pub crease: f64,
    /// The old hem's stitching above the new edge (mm).
    pub stitching: f64,
    /// The most it can be lowered with a hem of its own (mm).
    pub longest: f64,
    /// The most it can be lowered with a facing sewn on (mm).
    pub longest_faced: f64,
}
/// Cloth that a curved hem has too much of when it is turned up.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_hem_on_curve_t {
    /// What the raw edge is longer than the line it lies on when turned up (%).
    pub excess_pct: f64,
    /// The same over the whole hem, to be eased, shrunk or folded away (mm).
    pub excess: f64,
    /// Length of the raw edge before turning (mm).
    pub raw_edge: f64,
}
/// How much larger a hip is than a waist.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_hip_waist_drop_t {
    /// Hip less waist; negative where the waist is larger (mm).
    pub drop: f64,
    /// Doubts raised, as by `waist_hip_doubts` (bits).
    pub doubts: u64,
}
/// The holes that stay on an edge that is shortened.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_holes_left_t {
    /// Number of holes left.
    pub count: u32,
    /// Place of the last of them, from the same end as the first (mm).
    pub last: f64,
    /// From the last hole to the new end of the edge (mm).
    pub to_end: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A strip let into a garment that is too narrow.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_insert_strip_t {
    /// Width of each strip between its seam lines, as it shows (mm).
    pub finished: f64,
    /// Width to cut each strip (mm).
    pub cut_width: f64,
    /// Cloth that all strips take side by side (mm).
    pub cloth: f64,
}
/// A set of equal knife pleats.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_knife_pleats_t {
    /// Width before pleating, without allowances (mm).
    pub flat: f64,
    /// Width when pleated (mm).
    pub finished: f64,
    /// Number of pleats.
    pub count: u32,
    /// Width of each pleat that shows (mm).
    pub show: f64,
    /// Depth of each pleat's underlay, fold to fold (mm).
    pub depth: f64,
    /// Cloth that each pleat takes up, twice its depth (mm).
    pub intake: f64,
    /// Cloth that all pleats take up (mm).
    pub taken_up: f64,
    /// Flat over finished: 3 where pleats just touch.
    pub ratio: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A colour in CIELAB.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_lab_t {
    /// Lightness L*: 0 is black, 100 white.
    pub l: f64,
    /// a*: green below 0, red above.
    pub a: f64,
    /// b*: blue below 0, yellow above.
    pub b: f64,
}
/// The unknown of a chain of lengths, and how sure it is.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_length_chain_t {
    /// The length sought (mm).
    pub value: f64,
    /// What the known terms with a plus add up to (mm).
    pub plus: f64,
    /// What the known terms with a minus take away (mm).
    pub minus: f64,
    /// How far the value is off at worst, for each mm that every known length may be off.
    pub worst_per_mm: f64,
    /// How far the value is off in the usual case, for each mm that every known length may be off.
    pub likely_per_mm: f64,
}
/// How sure the unknown of a chain of lengths is, and which term does most to it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_chain_shares_t {
    /// The length sought (mm).
    pub value: f64,
    /// How far it is off when every error falls the same way (mm).
    pub worst: f64,
    /// How far it is off when they fall by chance: the root of the sum of their squares (mm).
    pub likely: f64,
    /// Index of the term whose error moves it most, of equals the first; their number is the total.
    pub largest: u32,
    /// What that term's error adds to the worst case (mm).
    pub largest_part: f64,
}
/// What the allowances of a garment give when they are let out.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_let_out_t {
    /// What the garment is too narrow by (mm).
    pub lacking: f64,
    /// Let out at each edge (mm).
    pub each: f64,
    /// Let out at all edges together (mm).
    pub gained: f64,
    /// Still lacking: a strip or a gusset must give it (mm).
    pub short_by: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A hem level with a kept edge, and how far a straight cut would miss it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_level_line_t {
    /// Radius of the line (mm).
    pub radius: f64,
    /// Straight across from end to end of the line (mm).
    pub chord: f64,
    /// How far the line bows below its chord (mm).
    pub sag: f64,
    /// Length along the line (mm).
    pub length: f64,
}
/// Length of a lining that is sewn to the top of the shell's hem, with a fold.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_lining_length_t {
    /// Lining from its upper seam to the seam at the top of the hem, without allowances (mm).
    pub seam_to_seam: f64,
    /// The shell's own distance between these two seams (mm).
    pub straight: f64,
    /// What the lining is longer by, which lies in the fold (mm).
    pub spare: f64,
    /// Depth of the fold, from the hem's top seam down (mm).
    pub fold: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// One liquor shared over several baths.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_liquor_shares_t {
    /// All baths together, topped up (ml).
    pub bath_ml: f64,
    /// Fresh water to top all of them up (ml).
    pub water_ml: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// A loop there is, compared with the one that just passes over its button.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_loop_slack_t {
    /// What the loop is longer than the one that just passes; negative when it is too short (mm).
    pub slack: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// Temperature of a bath put together.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_mix_temperature_t {
    /// Temperature before the pot and the air have taken their part (degC).
    pub temperature_c: f64,
    /// Volume of liquor (ml).
    pub volume_ml: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// Panels wider at one end, laid across the cloth all one way up, or turned every other.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_nap_layout_t {
    /// Panels side by side when all lie one way up.
    pub across_one_way: u32,
    /// Panels side by side when every other is turned upside down.
    pub across_turned: u32,
    /// Length of cloth when all lie one way up (mm).
    pub length_one_way: f64,
    /// Length of cloth when every other is turned (mm).
    pub length_turned: f64,
    /// What the nap takes: the one length less the other (mm).
    pub nap_extra: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A machine needle's blade.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_needle_blade_t {
    /// Diameter of the blade above the scarf (mm).
    pub blade: f64,
    /// Thickest thread that runs freely in its long groove (mm).
    pub thread: f64,
}
/// A garment smaller than the body it is worn on.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_negative_ease_t {
    /// Finished girth of the garment at rest (mm).
    pub girth: f64,
    /// Girth less the body's, so negative (mm).
    pub ease: f64,
    /// Furthest girth that the cloth stretches to (mm).
    pub furthest: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A neutralising bath.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_neutraliser_t {
    /// Available chlorine the goods still carry (g).
    pub chlorine_g: f64,
    /// Neutraliser to weigh out, excess included (g).
    pub amount_g: f64,
    /// Grams of the pure stuff for a gram of available chlorine, excess left out.
    pub ratio: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// The two fronts of a garment that opens off its centre line.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_off_centre_opening_t {
    /// Narrow front, button line to the cut edge at its side (mm).
    pub narrow_to_line: f64,
    /// Wide front, button line to the cut edge at its side (mm).
    pub wide_to_line: f64,
    /// Narrow front, opening edge to the cut edge at its side (mm).
    pub narrow_cut: f64,
    /// Wide front, opening edge to the cut edge at its side (mm).
    pub wide_cut: f64,
    /// Largest shift that the wide panel allows (mm).
    pub largest_shift: f64,
    /// Dart from the narrow front's button line; negative beyond the line, towards the edge (mm).
    pub dart_to_narrow: f64,
    /// Dart from the wide front's button line (mm).
    pub dart_to_wide: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// What a dye over cloth may come to, from pale to deep.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_overdye_t {
    /// Reflectance where the dye takes least.
    pub pale: f64,
    /// Reflectance where the dye takes most.
    pub deep: f64,
    /// Lightness L* of a grey of the pale reflectance.
    pub pale_l: f64,
    /// Lightness L* of a grey of the deep reflectance.
    pub deep_l: f64,
}
/// What goes into a bath.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_owf_t {
    /// Mass to weigh out (g).
    pub amount_g: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// A panel measured at stations along a grain line.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_panel_by_offsets_t {
    /// Area between the first and the last station (mm2).
    pub area: f64,
    /// From the first to the last station (mm).
    pub length: f64,
    /// Greatest width at a station (mm).
    pub widest: f64,
    /// Least width at a station (mm).
    pub narrowest: f64,
    /// Farthest that a side leaves the straight line between its ends, measured across (mm).
    pub largest_bow: f64,
}
/// A panel of corners measured by tape.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_panel_by_triangles_t {
    /// Area within the corners (mm2).
    pub area: f64,
    /// Way round the corners (mm).
    pub perimeter: f64,
    /// Largest misfit of a spare reading, without its sign (mm).
    pub largest_misfit: f64,
    /// The corner whose own triangle holds it least.
    pub weakest_corner: u32,
    /// How far that corner moves at worst along or across its base, for each mm that its readings are off.
    pub weakest_per_mm: f64,
    /// `TRIANGLE_FLAT` and `TRIANGLE_TALL` of any corner, `SPARE_MISFIT` when a spare reading misses by over 0.5 % (bits).
    pub doubts: u64,
}
/// How far points from a photograph may be trusted.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_photo_map_t {
    /// Farthest that a point lies beyond the reference, in sizes of the reference in that direction.
    pub reach: f64,
    /// Largest length that one picture unit stands for at a point (mm).
    pub coarsest: f64,
    /// `PHOTO_REACH` when a point lies more than 1.5 sizes beyond the reference (bits).
    pub doubts: u64,
}
/// Scraps joined to one length.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_pieced_length_t {
    /// Length of all scraps joined, free ends raw (mm).
    pub joined: f64,
    /// What that is longer than needed; negative when it does not reach (mm).
    pub spare: f64,
    /// Number of joins when all are used.
    pub joins: u32,
    /// Fewest scraps that reach, the longest taken first; 0 when all together do not.
    pub fewest: u32,
}
/// Plant matter to collect.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_plant_dyestuff_t {
    /// Least to weigh out, as it is at hand (g).
    pub low_g: f64,
    /// Most to weigh out, as it is at hand (g).
    pub high_g: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// Several liquors of the same stuff poured together.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_pooled_strength_t {
    /// Strength, in the unit of the strengths given (%).
    pub strength_pct: f64,
    /// Volume (ml).
    pub volume_ml: f64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// A cap slashed and spread for a puff.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_puff_spread_t {
    /// Zone after spreading, before gathering (mm).
    pub flat: f64,
    /// What spreading adds in all (mm).
    pub added: f64,
    /// How far each slash opens (mm).
    pub spread_each: f64,
    /// The ratio that the strip to be let in allows.
    pub strip_ratio: f64,
    /// `GATHERS_SCANT` or `GATHERS_LARGE` when the smaller of the ratios asked for looks like a mistake (bits).
    pub doubts: u64,
}
/// Equal lengths cut so that a pattern matches.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_repeats_t {
    /// Whole repeats in one length.
    pub repeats: u32,
    /// Length to cut each (mm).
    pub each: f64,
    /// All lengths together (mm).
    pub total: f64,
    /// What is cut off and lies idle, all lengths together (mm).
    pub waste: f64,
}
/// A folded strip of ribbing.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_ribbing_t {
    /// Way round the joined strip, not stretched (mm).
    pub round: f64,
    /// Length to cut, along the way it stretches (mm).
    pub cut_length: f64,
    /// Width to cut, folded in two when sewn (mm).
    pub cut_width: f64,
    /// Stretch that it is sewn on with (%).
    pub stretch_pct: f64,
}
/// Rinses, as a range.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_rinses_t {
    /// Rinses where the goods carry least.
    pub rinses_low: u32,
    /// Rinses where the goods carry most.
    pub rinses_high: u32,
    /// Share of the first liquor left after the most rinses, where the goods carry most.
    pub left: f64,
    /// Fresh water for the most rinses (ml).
    pub water_ml: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
    /// Cautions raised (bits).
    pub cautions: u64,
}
/// A set of lengths rounded together.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_rounded_set_t {
    /// Sum of the rounded lengths, which is the rounded sum (mm).
    pub total: f64,
    /// Most that any length was changed, up or down (mm).
    pub largest_change: f64,
}
/// Strips for a ruffle.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_ruffle_t {
    /// Length of the joined strip before gathering (mm).
    pub flat: f64,
    /// Width to cut each strip (mm).
    pub cut_width: f64,
    /// Number of strips.
    pub strips: u32,
    /// Cloth that the strips take, lying side by side (mm).
    pub cloth_length: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// Cloth added at a seam for an inverted pleat.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_seam_pleat_t {
    /// Added to the edge whose seam lies in the nearer inner fold (mm).
    pub first_edge: f64,
    /// Added to the edge that makes the rest of the pleat (mm).
    pub next_edge: f64,
    /// Both together, less the seam: what the pleat takes up (mm).
    pub intake: f64,
}
/// A band of straight sections with slanted ends.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_sectioned_band_t {
    /// What each slanted end takes from the upper edge; negative where the band flares (mm).
    pub slant: f64,
    /// Angle of a slanted end from the square (deg).
    pub end_angle_deg: f64,
    /// Kink at each join: a peak of the lower edge and a notch of the upper; 0 without a join (deg).
    pub join_kink_deg: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A band cut as part of a ring.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_shaped_band_t {
    /// Radius of the upper, shorter edge (mm).
    pub inner_radius: f64,
    /// Radius of the lower, longer edge (mm).
    pub outer_radius: f64,
    /// Angle of the sector (deg).
    pub angle_deg: f64,
    /// Height of the lower edge's arc above the straight line between its ends (mm).
    pub sagitta: f64,
    /// Area of the band (mm2).
    pub area_mm2: f64,
}
/// Cloth drawn up by rows of elastic thread.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_shirring_t {
    /// Width before shirring, without allowances (mm).
    pub flat: f64,
    /// Flat over finished.
    pub ratio: f64,
    /// Number of rows.
    pub rows: u32,
    /// All rows together, as sewn on the flat cloth (mm).
    pub stitching: f64,
    /// Always `ELASTIC_BATH` (bits).
    pub cautions: u64,
}
/// A shell and its lining, washed.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_shrink_pair_t {
    /// Shell after washing, if it is sewn as given (mm).
    pub shell_after: f64,
    /// Lining after washing, if it is sewn as given (mm).
    pub lining_after: f64,
    /// How far the lining then hangs below the shell; negative above (mm).
    pub below: f64,
    /// Shell to cut so that washing leaves the length given (mm).
    pub shell_cut: f64,
    /// Lining to cut so that washing leaves the length given (mm).
    pub lining_cut: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// The step from size to size.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_size_step_t {
    /// From one size to the next, all round (mm).
    pub step: f64,
    /// The same at each edge of the pattern (mm).
    pub each_edge: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// Snips or notches that let a curved allowance lie flat.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_snip_spacing_t {
    /// From snip to snip along the seam line (mm).
    pub spacing: f64,
    /// How far a straight fold between two snips leaves the curve (mm).
    pub flat: f64,
}
/// Buttons or holes at nearly a wanted pitch.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_spacing_by_pitch_t {
    /// Number of buttons, the first and last included.
    pub count: u32,
    /// From middle to middle of neighbours (mm).
    pub pitch: f64,
}
/// Buttons spaced through one fixed place.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_spacing_through_t {
    /// From middle to middle before the fixed place (mm).
    pub pitch_before: f64,
    /// From middle to middle after the fixed place (mm).
    pub pitch_after: f64,
    /// Which of the places is the fixed one, from 0.
    pub fixed: u32,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A colour by its screen levels.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_srgb_t {
    /// Red, 0 to 255 where a screen can show it.
    pub red: f64,
    /// Green, 0 to 255 where a screen can show it.
    pub green: f64,
    /// Blue, 0 to 255 where a screen can show it.
    pub blue: f64,
    /// How many of the three a screen cannot show.
    pub outside: u32,
}
/// The strip a straight band is cut from.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_straight_band_t {
    /// Length to cut, allowances included (mm).
    pub cut_length: f64,
    /// Width to cut, allowances included (mm).
    pub cut_width: f64,
    /// How many such strips.
    pub strips: u32,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// What is taken in at the seams of a garment.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_take_in_t {
    /// What the garment is too wide by (mm).
    pub excess: f64,
    /// Taken at each edge, beyond its old seam line (mm).
    pub each: f64,
    /// Taken at all edges together (mm).
    pub taken: f64,
    /// Left for darts or the centre back (mm).
    pub leftover: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// Tiers, each gathered to the one above.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_tiers_t {
    /// Way round the last tier, which is the hem (mm).
    pub hem: f64,
    /// Hem over the top edge.
    pub ratio: f64,
    /// All tiers together, as one strip (mm).
    pub strip: f64,
    /// `GATHERS_SCANT` when any tier is gathered by less than 1.2, `GATHERS_LARGE` by more than 4 (bits).
    pub doubts: u64,
}
/// How far a row of equal seams may be off.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_tolerance_stack_t {
    /// When every error falls the same way (mm).
    pub worst: f64,
    /// When they fall by chance: the root of the sum of their squares (mm).
    pub likely: f64,
}
/// How far a set of unlike terms may be off.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_tolerance_stack_list_t {
    /// When every error falls the same way (mm).
    pub worst: f64,
    /// When they fall by chance: the root of the sum of their squares (mm).
    pub likely: f64,
    /// Index of the term that adds most, of equals the first.
    pub largest: u32,
    /// What that term adds to the worst case (mm).
    pub largest_part: f64,
}
/// A point measured by tape from both ends of a base, and how sure it is.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_trilaterate_t {
    /// From the start along the base, negative behind the start (mm).
    pub along: f64,
    /// Square to the base (mm).
    pub across: f64,
    /// How far along the base the point moves at worst, for each mm that both readings are off.
    pub along_per_mm: f64,
    /// How far across the base the point moves at worst, for each mm that both readings are off.
    pub across_per_mm: f64,
    /// `TRIANGLE_FLAT` when `across_per_mm` passes 5, `TRIANGLE_TALL` when `along_per_mm` does (bits).
    pub doubts: u64,
}
/// A set of equal tucks.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_tucks_t {
    /// Width before tucking, without allowances (mm).
    pub flat: f64,
    /// Cloth that all tucks take up (mm).
    pub taken_up: f64,
    /// From fold line to fold line on the flat cloth (mm).
    pub fold_pitch: f64,
    /// What shows between a tuck's fold and the next one's stitching; 0 for blind tucks (mm).
    pub gap: f64,
    /// Width left beside the first and the last stitching, together (mm).
    pub margin: f64,
    /// `PLEATS_OVERLAP` when tucks lie over each other (bits).
    pub doubts: u64,
}
/// A bundle of cloth that is to pass through an opening.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_turn_through_t {
    /// Diameter of the bundle (mm).
    pub diameter: f64,
    /// Least flat width of an opening that it passes (mm).
    pub least_opening: f64,
    /// What the opening is wider than that; negative when the bundle does not pass (mm).
    pub spare: f64,
}
/// Cloth for a turned hem.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_turned_hem_t {
    /// Hem allowance, from the finished edge to the raw edge (mm).
    pub allowance: f64,
    /// Length to cut, with that allowance and no other (mm).
    pub cut_length: f64,
}
/// One side of a V neck.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_v_neck_t {
    /// Length of the straight edge on one side (mm).
    pub edge: f64,
    /// Angle of the edge from the grain that runs down the middle (deg).
    pub off_grain_deg: f64,
    /// Length of the tape that stays the edge on one side (mm).
    pub stay: f64,
}
/// Cloth after several washes.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_washes_t {
    /// Length after all washes (mm).
    pub after: f64,
    /// Change from the first length to the last (%).
    pub change_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// Ease that authors give, from the least of them to the most.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_wearing_ease_t {
    /// The least that an author gives, all round (mm).
    pub low: f64,
    /// The most that an author gives, all round (mm).
    pub high: f64,
    /// Finished girth with the least (mm).
    pub garment_low: f64,
    /// Finished girth with the most (mm).
    pub garment_high: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A length of cloth turned into one of another width: a range, for a layout does not scale.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_width_conversion_t {
    /// Length of the same area (mm).
    pub by_area: f64,
    /// Least that the printed tables give, 0.9 times the area's (mm).
    pub low: f64,
    /// Most that the printed tables give, 1.12 times the area's (mm).
    pub high: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// Widths of a wrap skirt's parts.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_wrap_skirt_t {
    /// Back at the waist, side seam to side seam (mm).
    pub back_waist: f64,
    /// Back at the hip (mm).
    pub back_hip: f64,
    /// Each front at the waist, side seam to its finished edge (mm).
    pub front_waist: f64,
    /// Each front at the hip (mm).
    pub front_hip: f64,
    /// Waist edge of all three parts, which is the length of its band without ties (mm).
    pub waist_edge: f64,
    /// How far each front reaches past the centre line, as a share of half a front (%).
    pub wrap_pct: f64,
    /// Doubts raised (bits).
    pub doubts: u64,
}
/// A colour by its tristimulus values; white has a `y` of 1.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_xyz_t {
    /// X.
    pub x: f64,
    /// Y, the luminance: share of the white's.
    pub y: f64,
    /// Z.
    pub z: f64,
}
/// A buttonhole worked in zigzag by machine.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_zigzag_buttonhole_t {
    /// Length over all, bars included (mm).
    pub length: f64,
    /// Width over all (mm).
    pub width: f64,
    /// Stitches of the two sides together.
    pub stitches: u32,
}
/// A zip for an opening.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct recloth_zip_length_t {
    /// Length needed, top stop to bottom stop (mm).
    pub needed: f64,
    /// Length to buy, the next that is sold (mm).
    pub buy: f64,
    /// What that is too long, to be taken off by a new bottom stop (mm).
    pub shorten: f64,
    /// Top stop from the raw edge at the top (mm).
    pub top_stop: f64,
    /// Bottom stop from the raw edge at the top (mm).
    pub bottom_stop: f64,
}
/// Radius and length of the curve that rises so far over its chord.
///
/// `radius = (chord² / 4 + rise²) / (2 · rise)`, angle `4 · atan(2 · rise / chord)`, length their product. For a waist,
/// hem or yoke edge on a panel there is: lay a ruler across its ends and measure the rise in the middle, where the curve
/// is near enough an arc. A rise above half the chord is more than a half ring.
///
/// - `chord`: straight from end to end (mm, 1 to 100000).
/// - `rise`: height of the curve over the chord's middle (mm, 0.1 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_arc_from_rise(
    chord: f64,
    rise: f64,
    out: *mut recloth_arc_from_rise_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::arc::arc_from_rise(chord, rise)?;
                out.write(recloth_arc_from_rise_t {
                    radius: answer.radius,
                    length: answer.length,
                    angle_deg: answer.angle_deg,
                });
                Ok(())
            },
        )
    }
}
/// Volume of a stock solution for so many grams in a litre of bath.
///
/// `stock = mass · ratio · grams / (10 · stock_pct)`: salt, soda and other assistants go by the bath, not by the goods. Usual
/// are up to 100 g of salt; more than 150 g in a litre, and a stock outside 0.05 to 50, are doubted.
///
/// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
/// - `ratio`: liquor to goods, by mass (1 to 200).
/// - `grams`: grams in a litre of bath (0 to 500).
/// - `stock_pct`: grams in 100 ml of the stock (%, 0.001 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_assistant_volume(
    mass_g: f64,
    ratio: f64,
    grams: f64,
    stock_pct: f64,
    out: *mut recloth_stock_volume_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::wet::assistant_volume(
                    mass_g,
                    ratio,
                    grams,
                    stock_pct,
                )?;
                out.write(recloth_stock_volume_t {
                    stock_ml: answer.stock_ml,
                    amount_g: answer.amount_g,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Available chlorine of bleach from the sodium hypochlorite on its label.
///
/// `available = NaOCl · 70.906 / 74.442`. Labels mix three percentages: sodium hypochlorite by mass, available chlorine by
/// mass, and grams of available chlorine in 100 ml; a bottle marked 10 or 12.5 usually means the last. Which one a label
/// means changes the answer by up to a fifth. A public health table that takes 5 % hypochlorite as 5 % available chlorine
/// is 5 % off, on purpose. Bleach weakens in store: an old bottle is weaker than its label, never stronger. Outside 1 to
/// 15 % the strength is doubted: 0.05 may be a share for 5 %.
///
/// - `naocl_pct`: sodium hypochlorite by mass (%, 0.1 to 20).
/// - `specific_gravity`: mass of a millilitre of it (g) (1 to 1.3).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_available_chlorine(
    naocl_pct: f64,
    specific_gravity: f64,
    out: *mut recloth_available_chlorine_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::bleach::available_chlorine(
                    naocl_pct,
                    specific_gravity,
                )?;
                out.write(recloth_available_chlorine_t {
                    available_pct: answer.available_pct,
                    trade_pct: answer.trade_pct,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Which garment goes into which bath, when one vessel does not hold all.
///
/// The vessel takes `vessel · fill / ratio` of dry goods. The heaviest garment is placed first, each into the first bath
/// with room (first fit decreasing); where `batches` is `least`, no sharing out needs fewer. A garment is never split, and
/// pieces that are to be one garment belong into one bath: give them as one mass. Two baths seldom match in shade.
///
/// - `masses_g`: dry mass of each garment (g, 0.01 to 1000000, 1 to 100 items).
/// - `vessel_ml`: what the vessel holds to the brim (ml, 1 to 100000000).
/// - `ratio`: liquor to goods, by mass (1 to 200).
/// - `numbers`: filled: number of each garment's bath, from 1 (as many as masses_g).
/// - `fill`: part of the vessel filled with liquor; the rest is goods and room to stir (0.1 to 1).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_batches(
    masses_g: *const f64,
    masses_g_count: usize,
    vessel_ml: f64,
    ratio: f64,
    numbers: *mut f64,
    numbers_count: usize,
    fill: f64,
    out: *mut recloth_batches_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let masses_g = door::list("masses_g", masses_g, masses_g_count)?;
                let numbers = door::list_to_fill("numbers", numbers, numbers_count)?;
                let answer = recloth::wet::batches(
                    masses_g,
                    vessel_ml,
                    ratio,
                    numbers,
                    fill,
                )?;
                out.write(recloth_batches_t {
                    batches: answer.batches,
                    least: answer.least,
                    capacity_g: answer.capacity_g,
                    heaviest_g: answer.heaviest_g,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Volume of a bath from the dry mass of goods and the liquor ratio.
///
/// `volume = mass · ratio`, a litre of liquor taken as a kilogram: 20 is 20 litres a kilogram, often written 1:20. The
/// vessel must hold more than this: the goods, and room to stir.
///
/// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
/// - `ratio`: liquor to goods, by mass (1 to 200).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_bath_volume(
    mass_g: f64,
    ratio: f64,
    out: *mut recloth_bath_volume_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::wet::bath_volume(mass_g, ratio)?;
                out.write(recloth_bath_volume_t {
                    volume_ml: answer.volume_ml,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Distance along the selvedge between the cuts of a true bias strip.
///
/// A strip of width `w`, measured square to its edges, lies at 45° to the selvedge and meets it over `w · √2`. The old
/// rule of a third more comes out 6 % short.
///
/// - `width`: width of the strip, square to its edges (mm, 0.1 to 100000).
/// - `out`: receives the answer. Distance along the selvedge, and equally across the cloth (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_bias_along_selvedge(
    width: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::bias::bias_along_selvedge(width)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Side of the square of cloth that holds a bias strip of a given length and width.
///
/// `side = √(length · width)`: the strip's area as a square, which the continuous tube comes near to. It is the least:
/// add 25 to 50 mm (1 to 2 in) for the seams, more if the strip is pieced from separate strips.
///
/// - `length`: length of strip needed, joins included (mm, 1 to 10000000).
/// - `width`: cut width of the strip, square to its edges (mm, 0.1 to 10000, <= length).
/// - `out`: receives the answer. Side of the square, without seams (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_bias_square(
    length: f64,
    width: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::bias::bias_square(length, width)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Length of bias strip that a square of cloth gives.
///
/// `length = side² / width`, the other way of `bias_square`. It is the most: seams and end triangles take from it (72
/// in by the sum, a 12 in square has given about 60 in of 2 in strip). Take the seams' allowances off the side first.
///
/// - `side`: side of the square, less its seams (mm, 1 to 100000).
/// - `width`: cut width of the strip, square to its edges (mm, 0.1 to 10000, <= side).
/// - `out`: receives the answer. Length of the strip, at most (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_bias_strip_length(
    side: f64,
    width: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::bias::bias_strip_length(side, width)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Strips that a rectangle gives when it is cut across at 45°, and their length when joined.
///
/// The first cut runs from a corner, and the others lie `strip · √2` apart along the selvedge to both sides of it. Between the
/// two corners' cuts the strips are full, `√2` times the shorter side; in the two end triangles each is shorter than the one
/// before. Strips shorter than `shortest`, or than a join takes, are left out. Ends are cut on the straight grain, and each
/// join takes `2 · √2 · allowance` along the strip. Fewer, longer pieces come from `bias_tube`.
///
/// - `length`: one side of the rectangle, on grain (mm, 10 to 100000).
/// - `width`: the other side (mm, 10 to 100000).
/// - `strip`: width of a strip, square to its edges (mm, 1 to 10000).
/// - `allowance`: seam allowance at each join (mm, 0 to 100).
/// - `shortest`: shortest strip worth joining (mm, 0 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_bias_strips(
    length: f64,
    width: f64,
    strip: f64,
    allowance: f64,
    shortest: f64,
    out: *mut recloth_bias_strips_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::bias::bias_strips(
                    length,
                    width,
                    strip,
                    allowance,
                    shortest,
                )?;
                out.write(recloth_bias_strips_t {
                    strips: answer.strips,
                    longest: answer.longest,
                    joined: answer.joined,
                    kept_pct: answer.kept_pct,
                });
                Ok(())
            },
        )
    }
}
/// One long bias strip from a rectangle sewn to a slanted tube.
///
/// A corner is cut off at 45° and sewn to the other end; the slanted piece is marked in strips, its long sides are sewn
/// together one strip out of step, and the spiral is cut. Both seams cross every turn on the straight grain. The first seam
/// takes two allowances of the long side, the second two of the short: `turns = floor((long - 2 · allowance) / (strip · √2))`,
/// `length = turns · (short - 2 · allowance) · √2`. Area alone, `long · short / strip`, promises up to one turn more.
///
/// - `length`: one side of the rectangle, on grain (mm, 10 to 100000).
/// - `width`: the other side (mm, 10 to 100000).
/// - `strip`: width of the strip, square to its edges (mm, 1 to 10000).
/// - `allowance`: allowance of both seams (mm, 0 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_bias_tube(
    length: f64,
    width: f64,
    strip: f64,
    allowance: f64,
    out: *mut recloth_bias_tube_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::bias::bias_tube(length, width, strip, allowance)?;
                out.write(recloth_bias_tube_t {
                    turns: answer.turns,
                    length: answer.length,
                    leftover: answer.leftover,
                });
                Ok(())
            },
        )
    }
}
/// Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.
///
/// `bath = solids / (1 + parts)`; each dip, dried between, leaves `bath · pick_up / 100` on weight of fibre. Homemade soymilk
/// holds about 10 % of bean, bought 3 to 6 % of solids: the two are not the same measure, so read the label. A binder of
/// food goes off: make it fresh, keep it cool, throw it away when it smells, and tell those who have an allergy to it. Solids
/// outside 0.1 to 20 % and a pick-up below 10 % are doubted.
///
/// - `low_pct`: solids of the binder undiluted, least (%, 0.01 to 50).
/// - `high_pct`: solids of the binder undiluted, most (%, 0.01 to 50, >= low_pct).
/// - `parts_water`: parts of water to one of binder (0 to 100).
/// - `pick_up_pct`: liquor held after wringing, on dry mass (%, 1 to 500).
/// - `dips`: dips, dried between (1 to 50).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_binder_solids(
    low_pct: f64,
    high_pct: f64,
    parts_water: f64,
    pick_up_pct: f64,
    dips: u32,
    out: *mut recloth_binder_solids_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::dye::binder_solids(
                    low_pct,
                    high_pct,
                    parts_water,
                    pick_up_pct,
                    dips,
                )?;
                out.write(recloth_binder_solids_t {
                    bath_low_pct: answer.bath_low_pct,
                    bath_high_pct: answer.bath_high_pct,
                    owf_low_pct: answer.owf_low_pct,
                    owf_high_pct: answer.owf_high_pct,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Length of binding for an edge, with what its corners and its two ends take.
///
/// `length = edge + corners · corner + finish`. A corner turned outward with a mitre takes, by the geometry of its fold, no
/// more than the edge itself; what makers allow is for handling and for a fold that is sewn over. One tutorial allows about
/// 16 in over the perimeter of a square for everything; the defaults are that, shared 2 in to a corner and 8 in to the two
/// ends, a share of ours. A neck or an armhole has no corners and takes two allowances to finish. How many strips give the
/// length, with what each join loses: `binding_strips`.
///
/// - `edge`: length of the edge to be bound (mm, 1 to 1000000).
/// - `corners`: corners to be mitred (0 to 1000).
/// - `corner`: allowed for each of them (mm, 0 to 1000).
/// - `finish`: for joining or finishing the two ends (mm, 0 to 10000).
/// - `out`: receives the answer. Length of binding (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_binding_length(
    edge: f64,
    corners: u32,
    corner: f64,
    finish: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::binding::binding_length(
                    edge,
                    corners,
                    corner,
                    finish,
                )?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Number of strips of one length to join for a binding.
///
/// Each join takes `join` off the two strips together: `count` is the least with
/// `count · strip - (count - 1) · join >= length`. Strips with square ends, crossed and joined from corner to corner at 45°,
/// lose their own width at each join; with ends cut at 45°, √2 times the two allowances; joined end to end, the two
/// allowances.
///
/// - `length`: length of binding needed, corners and ends included (mm, 1 to 1000000).
/// - `strip`: length of each strip, measured along one edge (mm, 10 to 100000).
/// - `join`: length lost at each join (mm, 0 to 10000, < strip).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_binding_strips(
    length: f64,
    strip: f64,
    join: f64,
    out: *mut recloth_binding_strips_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::bias::binding_strips(length, strip, join)?;
                out.write(recloth_binding_strips_t {
                    count: answer.count,
                    spare: answer.spare,
                });
                Ok(())
            },
        )
    }
}
/// Width to cut a binding of a given finished width.
///
/// Single: `2 · finished + 2 · turn + thickness`. Double: `2 · (2 · finished + turn + thickness)`. With a turn as wide as
/// the binding shows these are the 4 and 6 times that are usually told. Bias narrows when it is stretched on: try a
/// short piece.
///
/// - `finished`: width that shows on one side (mm, 0.5 to 1000).
/// - `turn`: single: turned in at each long edge; double: seam allowance (mm, 0 to 1000).
/// - `thickness`: way round the edge itself: the thickness of what is bound (mm, 0 to 100).
/// - `fold`: how it is folded (one of `recloth_binding_fold`).
/// - `out`: receives the answer. Width to cut (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_binding_width(
    finished: f64,
    turn: f64,
    thickness: f64,
    fold: i32,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let (fold, fold_bad) = read_binding_fold("fold", fold);
                let answer = door::settle(
                    recloth::bias::binding_width(finished, turn, thickness, fold),
                    &["finished", "turn", "thickness", "fold"],
                    &[fold_bad],
                )?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Bleach and water for a bath of a given strength, for a given cloth and time.
///
/// `bleach = volume · target / stock`, both as available chlorine. "1 : 100" in public health tables is 1 part in 100, that
/// is 1 + 99. The bleach goes into the cold water. A bath is made for a time: `minutes` is how long the goods may stay in
/// at most, by the product's label and by your swatch, and sooner when the colour is reached. Test first: 15 ml bleach in
/// 60 ml water on a hidden seam for a minute, or better a row of timed swatches (`bleach_time`).
///
/// Usual are a target up to 0.46 %, a bottle of 1 to 15 %, up to 30 minutes and at least 50 ml; beyond that there are doubts.
///
/// - `volume_ml`: volume of the bath (ml, 1 to 1000000).
/// - `target_pct`: available chlorine wanted (%, 0.001 to 0.6, <= stock_pct).
/// - `stock_pct`: available chlorine of the bottle (%, 0.1 to 20).
/// - `minutes`: longest that the goods stay in (min, 0.1 to 60).
/// - `fibre`: the most delicate fibre in the goods, thread and trims included (one of `recloth_fibre`).
/// - `finish`: what was done to the cloth (one of `recloth_finish`).
/// - `swatch`: how a swatch stood the same bath (one of `recloth_swatch`).
/// - `in_bath`: what else is in the bath (one of `recloth_in_bath`).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_bleach_dilution(
    volume_ml: f64,
    target_pct: f64,
    stock_pct: f64,
    minutes: f64,
    fibre: i32,
    finish: i32,
    swatch: i32,
    in_bath: i32,
    out: *mut recloth_bleach_dilution_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
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
                out.write(recloth_bleach_dilution_t {
                    bleach_ml: answer.bleach_ml,
                    water_ml: answer.water_ml,
                    parts_water: answer.parts_water,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Time in the bleach to a wanted depth of shade, from swatches taken out at known times.
///
/// The shade, K/S (`k_over_s`), is taken to fall to a floor by a constant share a minute:
/// `ln(shade - floor)` is a straight line in time, fitted by least squares. Swatches of the same cloth, in the same
/// strength and warmth, rinsed, neutralised and dried before they are judged. `swatch` tells how they stood it: pull each
/// one wet; at the first weakness stop, whatever the colour. A time beyond the longest swatch is a guess: test it. A shade at
/// or below the floor will not be reached at all: choose to dye over it.
///
/// - `times_min`: time of each swatch, rising; 0 is not bleached (min, 0 to 60, 2 to 50 items).
/// - `shades`: depth of shade K/S of each (0.001 to 500, as many as times_min).
/// - `target`: depth of shade wanted (0.001 to 500).
/// - `limit_min`: longest time that the product's label allows (min, 0.1 to 60).
/// - `fibre`: the most delicate fibre in the goods (one of `recloth_fibre`).
/// - `finish`: what was done to the cloth (one of `recloth_finish`).
/// - `swatch`: how the swatches stood it, pulled wet (one of `recloth_swatch`).
/// - `in_bath`: what else is in the bath (one of `recloth_in_bath`).
/// - `floor`: depth of shade that bleach does not take away (0 to 500).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_bleach_time(
    times_min: *const f64,
    times_min_count: usize,
    shades: *const f64,
    shades_count: usize,
    target: f64,
    limit_min: f64,
    fibre: i32,
    finish: i32,
    swatch: i32,
    in_bath: i32,
    floor: f64,
    out: *mut recloth_bleach_time_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let times_min = door::list("times_min", times_min, times_min_count)?;
                let shades = door::list("shades", shades, shades_count)?;
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
                )?;
                out.write(recloth_bleach_time_t {
                    time_min: answer.time_min,
                    next_swatch_min: answer.next_swatch_min,
                    rate: answer.rate,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Doubts on a length of the body: back length, shoulder, sleeve, skirt.
///
/// Below 100 mm (`BODY_LENGTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`BODY_LENGTH_LARGE`) it is
/// longer than a tall person. A length over 100 cm given in centimetres passes unseen.
///
/// - `length`: a length of the body (mm, 1 to 100000).
/// - `out`: receives the answer. The doubts (bits).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_body_length_doubts(
    length: f64,
    out: *mut u64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::body::body_length_doubts(length)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Cloth for box pleats, or inverted ones, of a given number and depth.
///
/// A box pleat is two knife pleats folded away from each other, an inverted pleat two folded towards each other: the same
/// cloth seen from its two faces. `flat = finished + 4 · count · depth`. The folds meet behind a box pleat when `depth` is
/// half of `show`, and then the cloth is three times the width. The four functions each find one of `flat`, `finished`,
/// `count` and `depth`, as those of `knife_pleats` do.
///
/// - `finished`: width when pleated (mm, 1 to 1000000).
/// - `count`: number of box or inverted pleats (1 to 1000).
/// - `depth`: depth of each of a pleat's two folds (mm, 0.1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_box_pleats(
    finished: f64,
    count: u32,
    depth: f64,
    out: *mut recloth_box_pleats_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::pleat::box_pleats(finished, count, depth)?;
                out.write(recloth_box_pleats_t {
                    flat: answer.flat,
                    finished: answer.finished,
                    count: answer.count,
                    show: answer.show,
                    depth: answer.depth,
                    intake: answer.intake,
                    taken_up: answer.taken_up,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Number of box pleats of at least a given depth that bring cloth there is to a width.
///
/// The whole number that `(flat - finished) / (4 · depth)` holds, and then the depth at which they take up exactly what
/// there is.
///
/// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
/// - `finished`: width when pleated (mm, 1 to 1000000, < flat).
/// - `depth`: least depth of each of a pleat's two folds (mm, 0.1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_box_pleats_count(
    flat: f64,
    finished: f64,
    depth: f64,
    out: *mut recloth_box_pleats_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::pleat::box_pleats_count(flat, finished, depth)?;
                out.write(recloth_box_pleats_t {
                    flat: answer.flat,
                    finished: answer.finished,
                    count: answer.count,
                    show: answer.show,
                    depth: answer.depth,
                    intake: answer.intake,
                    taken_up: answer.taken_up,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Depth of a given number of box pleats that bring cloth there is to a width.
///
/// `depth = (flat - finished) / (4 · count)`.
///
/// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
/// - `finished`: width when pleated (mm, 1 to 1000000, < flat).
/// - `count`: number of box or inverted pleats (1 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_box_pleats_depth(
    flat: f64,
    finished: f64,
    count: u32,
    out: *mut recloth_box_pleats_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::pleat::box_pleats_depth(flat, finished, count)?;
                out.write(recloth_box_pleats_t {
                    flat: answer.flat,
                    finished: answer.finished,
                    count: answer.count,
                    show: answer.show,
                    depth: answer.depth,
                    intake: answer.intake,
                    taken_up: answer.taken_up,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Width to which a given number of box pleats brings cloth there is.
///
/// `finished = flat - 4 · count · depth`.
///
/// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
/// - `count`: number of box or inverted pleats (1 to 1000).
/// - `depth`: depth of each of a pleat's two folds (mm, 0.1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_box_pleats_finished(
    flat: f64,
    count: u32,
    depth: f64,
    out: *mut recloth_box_pleats_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::pleat::box_pleats_finished(flat, count, depth)?;
                out.write(recloth_box_pleats_t {
                    flat: answer.flat,
                    finished: answer.finished,
                    count: answer.count,
                    show: answer.show,
                    depth: answer.depth,
                    intake: answer.intake,
                    taken_up: answer.taken_up,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Number of breadths of cloth that a ring of a given length takes.
///
/// Each breadth gives its width less an allowance at both sides, and as many seams as breadths close the ring:
/// `count = ceil(flat / (cloth_width - 2 · allowance))`.
///
/// - `flat`: way round before gathering or pleating (mm, 1 to 1000000).
/// - `cloth_width`: width of the cloth, or length of each strip there is (mm, 1 to 100000).
/// - `allowance`: seam allowance at each join (mm, 0 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_breadths(
    flat: f64,
    cloth_width: f64,
    allowance: f64,
    out: *mut recloth_breadths_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::tier::breadths(flat, cloth_width, allowance)?;
                out.write(recloth_breadths_t {
                    count: answer.count,
                    round: answer.round,
                    spare: answer.spare,
                });
                Ok(())
            },
        )
    }
}
/// Diameter of a button from its size in lines.
///
/// A button line is the fortieth part of an inch: `diameter = 0.635 · lines`. It is not the watchmaker's line of
/// 2.26 mm, nor the eleventh of an inch by which hat ribbon is sold.
///
/// - `lines`: size of the button, in lines (1 to 1000).
/// - `out`: receives the answer. The diameter (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_button_diameter(
    lines: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::tape::button_diameter(lines)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Largest flat button for a slit, and the creep of a cross hole.
///
/// `diameter = slit - thickness`. The button sits at the end of a cross hole: a hole that is centred on the line instead
/// of starting `start` beyond it lets the front out by `slit / 2 - start`. A hole that runs along the edge does not creep.
///
/// - `slit`: length of the slit (mm, 1 to 300).
/// - `thickness`: thickness of the button at its thickest (mm, 0 to 100, < slit).
/// - `start`: where a cross hole should start, past the line to the edge (mm, 0 to 300, <= slit).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_button_for_hole(
    slit: f64,
    thickness: f64,
    start: f64,
    out: *mut recloth_button_for_hole_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::closure::button_for_hole(slit, thickness, start)?;
                out.write(recloth_button_for_hole_t {
                    diameter: answer.diameter,
                    creep: answer.creep,
                });
                Ok(())
            },
        )
    }
}
/// Largest button for a stand there is.
///
/// `button_stand` the other way: `diameter = extension / share`. An old front keeps its stand; a button larger than the
/// stand allows hangs over the edge.
///
/// - `extension`: from the button line to the finished edge (mm, 1 to 600).
/// - `share`: extension over diameter (0.5 to 3).
/// - `out`: receives the answer. Diameter of the button (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_button_for_stand(
    extension: f64,
    share: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fastening::button_for_stand(extension, share)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Loop of cord that just passes over a button.
///
/// The way round the button is `P = 2 · (diameter + thickness)` for a flat one, `π · diameter` for a ball; the middle of
/// the cord lies half its thickness further out all round, and its ends are sewn `gap` apart:
/// `visible = (P + π · cord - gap) / (1 + stretch)`, `cut = visible + 2 · seam`. For a loop
/// there is, see `loop_slack`. Try one before cutting all.
///
/// - `diameter`: diameter of the button (mm, 1 to 200).
/// - `thickness`: thickness of a flat button; not used for a ball (mm, 0 to 100).
/// - `cord`: thickness of the cord (mm, 0 to 50).
/// - `gap`: between the loop's two ends where they are sewn (mm, 0 to 500).
/// - `stretch`: how much the cord may stretch: 0.3 is 30 % (0 to 3).
/// - `seam`: length into the seam at each end (mm, 0 to 200).
/// - `shape`: shape of the button (one of `recloth_button_shape`).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_button_loop(
    diameter: f64,
    thickness: f64,
    cord: f64,
    gap: f64,
    stretch: f64,
    seam: f64,
    shape: i32,
    out: *mut recloth_button_loop_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
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
                    &[
                        "diameter",
                        "thickness",
                        "cord",
                        "gap",
                        "stretch",
                        "seam",
                        "shape",
                    ],
                    &[shape_bad],
                )?;
                out.write(recloth_button_loop_t {
                    visible: answer.visible,
                    cut: answer.cut,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Button stand for a button: from the line it sits on to the finished edge.
///
/// `extension = share · diameter`, `past_rim = extension - diameter / 2`, `overlap = 2 · extension`. Authors differ: half the
/// diameter brings the rim to the very edge, a machine manual asks for at least three quarters, others for the whole; for a
/// button of 20 mm that is 10, 15 or 20 mm. Both sides have the same stand, and a waistband's overlap must equal it. A facing
/// or a turn behind it is extra.
///
/// - `diameter`: diameter of the button (mm, 1 to 200).
/// - `share`: extension over diameter (0.5 to 3).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_button_stand(
    diameter: f64,
    share: f64,
    out: *mut recloth_button_stand_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fastening::button_stand(diameter, share)?;
                out.write(recloth_button_stand_t {
                    extension: answer.extension,
                    past_rim: answer.past_rim,
                    overlap: answer.overlap,
                });
                Ok(())
            },
        )
    }
}
/// Length of the slit for a flat button.
///
/// `slit = diameter + thickness + ease`. Authors differ on the ease: a machine manual has none, others add 3 mm (1/8 in)
/// for the cloth; a bound buttonhole needs none. For a square button use its diagonal as diameter. A ball needs half its
/// way round instead: wrap a strip of paper round it and halve that. Always try the button in a slit in a scrap of the
/// same layers before cutting: a slit cannot be made shorter.
///
/// - `diameter`: diameter of the button (mm, 1 to 200).
/// - `thickness`: thickness of the button at its thickest (mm, 0 to 100).
/// - `ease`: extra for the thickness of the cloth (mm, 0 to 20).
/// - `out`: receives the answer. Length of the slit (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_buttonhole(
    diameter: f64,
    thickness: f64,
    ease: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::closure::buttonhole(diameter, thickness, ease)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Ease of a sleeve cap in its armhole.
///
/// `ease = cap - armhole`. Walk both along their seam lines, front and back apart, since a right total can hide a front that
/// is short. A shirt or a dropped shoulder has 0 to 2 %, a set-in sleeve in soft cloth 3 to 6 %; more than about 6 % in firm
/// cloth gathers (common practice, no source).
///
/// A cap shorter than its armhole is doubted, for the two may have changed places, and so is more than 10 % of ease,
/// which gathers (common practice, no source).
///
/// - `armhole`: seam line of the armhole, or of a section of it (mm, 1 to 100000).
/// - `cap`: seam line of the cap, or of the same section (mm, 1 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_cap_ease(
    armhole: f64,
    cap: f64,
    out: *mut recloth_cap_ease_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::sleeve::cap_ease(armhole, cap)?;
                out.write(recloth_cap_ease_t {
                    ease: answer.ease,
                    ease_pct: answer.ease_pct,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Length that a sleeve cap must have for a wanted ease.
///
/// `armhole · (1 + ease_pct / 100)`. Where the cap there is is short of it, raise the cap (by half of what is short, as a
/// first guess, then walk it again), widen it, or lift the underarm of the armhole.
///
/// - `armhole`: seam line of the armhole (mm, 1 to 100000).
/// - `ease_pct`: wanted ease over the armhole (%, -20 to 100).
/// - `out`: receives the answer. Seam line of the cap (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_cap_for_ease(
    armhole: f64,
    ease_pct: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::sleeve::cap_for_ease(armhole, ease_pct)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Widest sleeve that a cap of a given length and height can have.
///
/// `2 · √((cap / 2)² - height²)`, as if each half of the cap were straight. The line curves, so the sleeve is narrower than
/// this: a bound, not a width to cut to. The bound shrinks as the cap is raised.
///
/// - `cap`: seam line of the whole cap (mm, 1 to 100000).
/// - `height`: underarm line up to the top of the cap (mm, 0 to 100000).
/// - `out`: receives the answer. Upper bound of the width at the underarm line (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_cap_width_bound(
    cap: f64,
    height: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::sleeve::cap_width_bound(cap, height)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Liquor that goods carry out of a bath.
///
/// `carried = mass · pick_up / 100`, a litre taken as a kilogram. Weigh the goods dripping, drained and wrung: that is the
/// pick-up, and it differs by several times. It decides how often to rinse. Cloth spun dry holds more than 10 %, so less is
/// doubted. Let hot goods cool before wringing.
///
/// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
/// - `pick_up_pct`: liquor held, on the dry mass (%, 0 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_carried_liquor(
    mass_g: f64,
    pick_up_pct: f64,
    out: *mut recloth_carried_liquor_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::wet::carried_liquor(mass_g, pick_up_pct)?;
                out.write(recloth_carried_liquor_t {
                    carried_ml: answer.carried_ml,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Depth and allowance of a casing for elastic or a cord.
///
/// `depth = width + ease + heading`, `allowance = depth + turn_in`. A tunnel that is too wide lets the elastic roll, one too
/// narrow does not let it through. A heading stands above a second line of stitching.
///
/// - `width`: width of the elastic, or of the cord pressed flat (mm, 1 to 500).
/// - `ease`: what the tunnel is wider (mm, 0 to 100).
/// - `turn_in`: turned in at the raw edge (mm, 0 to 100).
/// - `heading`: stands above the tunnel (mm, 0 to 500).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_casing(
    width: f64,
    ease: f64,
    turn_in: f64,
    heading: f64,
    out: *mut recloth_casing_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::elastic::casing(width, ease, turn_in, heading)?;
                out.write(recloth_casing_t {
                    depth: answer.depth,
                    allowance: answer.allowance,
                });
                Ok(())
            },
        )
    }
}
/// How far apart two colours look, by CIEDE2000.
///
/// With all three weights at 1. About 1 is just seen on plain cloth side by side; what is allowed for a match is yours to
/// say. Where the two hues lie opposite each other the formula has a step, small for cloth.
///
/// - `l1`: L* of one colour (0 to 100).
/// - `a1`: a* of one colour (-200 to 200).
/// - `b1`: b* of one colour (-200 to 200).
/// - `l2`: L* of the other (0 to 100).
/// - `a2`: a* of the other (-200 to 200).
/// - `b2`: b* of the other (-200 to 200).
/// - `out`: receives the answer. Colour difference.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_ciede2000(
    l1: f64,
    a1: f64,
    b1: f64,
    l2: f64,
    a2: f64,
    b2: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::colour::ciede2000(l1, a1, b1, l2, a2, b2)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Radii of a skirt cut from part of a ring.
///
/// The waist edge is an arc: `waist = 2π · fraction · waist_radius`. A fraction above 1 is made of several sectors.
///
/// The waist is doubted as `girth_doubts` does, the length as
/// `body_length_doubts`: 71 may be in centimetres.
///
/// - `waist`: finished waist edge, ease included (mm, 1 to 100000).
/// - `length`: waist edge to hem edge, no allowances (mm, 0 to 100000).
/// - `fraction`: part of a full ring: 0.5 is a half circle (0.01 to 4).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_circle_skirt(
    waist: f64,
    length: f64,
    fraction: f64,
    out: *mut recloth_circle_skirt_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::skirt::circle_skirt(waist, length, fraction)?;
                out.write(recloth_circle_skirt_t {
                    waist_radius: answer.waist_radius,
                    hem_radius: answer.hem_radius,
                    hem_length: answer.hem_length,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Largest part of a ring from which cloth of a given width gives a skirt of a given length.
///
/// The fullest skirt that fits, up to four full rings: pieces and their lay are those of `circle_skirt_longest`, so
/// each piece's width across the cloth, `(waist / (2π · fraction) + length) · across(angle)`, is at most `cloth_width`.
/// There is no formula for the fraction; it is found by halving to the last bit, on the side that fits. A skirt that is
/// less full need not fit: a smaller fraction has a larger radius.
///
/// Doubts as for `circle_skirt`, and on cloth narrower than 200 mm.
///
/// - `waist`: finished waist edge, ease included (mm, 1 to 100000).
/// - `length`: waist edge to hem edge, no allowances (mm, 0 to 100000).
/// - `cloth_width`: width between the selvedges, less allowances (mm, 1 to 100000).
/// - `pieces`: equal pieces the part of a ring is cut in (1 to 64).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_circle_skirt_fraction(
    waist: f64,
    length: f64,
    cloth_width: f64,
    pieces: u32,
    out: *mut recloth_circle_skirt_on_cloth_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::skirt::circle_skirt_fraction(
                    waist,
                    length,
                    cloth_width,
                    pieces,
                )?;
                out.write(recloth_circle_skirt_on_cloth_t {
                    fraction: answer.fraction,
                    length: answer.length,
                    waist_radius: answer.waist_radius,
                    hem_radius: answer.hem_radius,
                    hem_length: answer.hem_length,
                    piece_angle_deg: answer.piece_angle_deg,
                    cloth_length: answer.cloth_length,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Longest skirt of a given part of a ring that cloth of a given width allows.
///
/// The part of a ring is cut in equal pieces, sectors of `angle = 360° · fraction / pieces`. A piece up to a half ring
/// lies with one straight edge along the selvedge and takes, of the width, `hem_radius · sin(angle)` up to a quarter
/// ring and `hem_radius` from there to a half ring. A larger piece lies with its middle straight across the cloth and
/// takes `hem_radius · (1 - cos(angle / 2))`: a full ring without a seam takes twice its hem radius. Folding changes
/// nothing: a full ring cut through four layers is one piece, and `cloth_width` is the width before folding.
///
/// Other ways to lay a piece may save cloth but turn its grain, and pieces may be nested: these are not counted. Seam
/// and hem allowances are the caller's: take them off the cloth's width first.
///
/// Doubts as for `circle_skirt`, and on cloth narrower than 200 mm.
///
/// - `waist`: finished waist edge, ease included (mm, 1 to 100000).
/// - `fraction`: part of a full ring: 0.5 is a half circle (0.01 to 4, <= pieces).
/// - `cloth_width`: width between the selvedges, less allowances (mm, 1 to 100000).
/// - `pieces`: equal pieces the part of a ring is cut in (1 to 64).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_circle_skirt_longest(
    waist: f64,
    fraction: f64,
    cloth_width: f64,
    pieces: u32,
    out: *mut recloth_circle_skirt_on_cloth_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::skirt::circle_skirt_longest(
                    waist,
                    fraction,
                    cloth_width,
                    pieces,
                )?;
                out.write(recloth_circle_skirt_on_cloth_t {
                    fraction: answer.fraction,
                    length: answer.length,
                    waist_radius: answer.waist_radius,
                    hem_radius: answer.hem_radius,
                    hem_length: answer.hem_length,
                    piece_angle_deg: answer.piece_angle_deg,
                    cloth_length: answer.cloth_length,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Mass of a rectangle of cloth.
///
/// `mass = length · width · gsm`. Weigh a cut square of known sides to find the mass per area of cloth you have.
///
/// - `length`: length of the cloth (mm, 0 to 10000000).
/// - `width`: width of the cloth (mm, 0 to 100000).
/// - `gsm`: grams in one square metre (gsm, 0.1 to 10000).
/// - `out`: receives the answer. Mass (g).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_cloth_mass(
    length: f64,
    width: f64,
    gsm: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::quantity::cloth_mass(length, width, gsm)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Length of cloth to buy, with what repeats and nap take, rounded up to what the shop cuts.
///
/// `length + repeat + extra`, up to a whole graduation. For cloth with a nap, or printed one way, all pieces lie the same
/// way up; a table's length that let them lie both ways needs more: a quarter of a yard (228.6 mm) is the habit, and a
/// lay of the real pieces is better than the habit. Cloth that shrinks: lengthen first.
///
/// - `length`: length the pieces take (mm, 0 to 1000000).
/// - `repeat`: one repeat of the pattern, bought to match it (mm, 0 to 10000).
/// - `extra`: for nap, for doubt: 228.6 is a quarter of a yard (mm, 0 to 100000).
/// - `graduation`: what the shop cuts by: 114.3 is an eighth of a yard (mm, 1 to 10000).
/// - `out`: receives the answer. Length to buy (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_cloth_to_buy(
    length: f64,
    repeat: f64,
    extra: f64,
    graduation: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::quantity::cloth_to_buy(
                    length,
                    repeat,
                    extra,
                    graduation,
                )?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Whether one part of a garment bears a bath, and whether it takes colour there.
///
/// Ask for every part: shell, lining, thread, interfacing, elastic, buttons; the garment bears what its weakest part bears. A
/// fibre not known is refused bleach and heat until a swatch has passed, and is never said to take colour well. What bleach
/// ruins whatever the swatch (wool, silk, hair, leather, elastane, acetate, polyamide, rubber; colours not fast;
/// flame-retardant finishes) stays refused. Thread and lining of polyester come out of a plant dye as they went in.
///
/// Usual are chlorine bleach up to 30 °C and 30 minutes, other baths up to 40 °C for an unknown fibre, 60 °C for rubber,
/// elastane, acetate and leather and 4 hours above 60 °C for any; beyond that there are doubts.
///
/// To find a fibre out, a burn test tells the family only, and nothing of a blend, a coated or a fused cloth: a snip the
/// size of a thread, in tweezers, over water or a metal tray, window open, hair tied back, no child near.
///
/// - `fibre`: what the part is made of (one of `recloth_fibre`).
/// - `finish`: what was done to it (one of `recloth_finish`).
/// - `swatch`: how a swatch of it stood the same bath (one of `recloth_swatch`).
/// - `bath`: the bath (one of `recloth_bath`).
/// - `temperature_c`: hottest it gets (degC, 0 to 100).
/// - `minutes`: longest it stays in (min, 0 to 1440).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_component_check(
    fibre: i32,
    finish: i32,
    swatch: i32,
    bath: i32,
    temperature_c: f64,
    minutes: f64,
    out: *mut recloth_component_check_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
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
                out.write(recloth_component_check_t {
                    bears: answer.bears,
                    colour: answer.colour,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Depth of dye that brings a mark within a limit of its ground.
///
/// Mark and ground are taken as greys of their reflectance, the dye as adding the same K/S to both; the depth is where
/// CIEDE2000 of the two first comes down to the limit. A mark of another hue than the ground shows longer than this says.
/// Grease, wax, resin and scorch take dye otherwise: the forecast is void, so try the dye on the mark's own kind first. A
/// ground that fades will show it again. Where no depth will do, hide the mark or recut.
///
/// - `ground`: reflectance of the cloth around the mark (0.001 to 1).
/// - `mark`: reflectance of the mark (0.001 to 1).
/// - `limit`: colour difference that may remain (0.01 to 50).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_cover_mark(
    ground: f64,
    mark: f64,
    limit: f64,
    out: *mut recloth_cover_mark_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::shade::cover_mark(ground, mark, limit)?;
                out.write(recloth_cover_mark_t {
                    now: answer.now,
                    depth: answer.depth,
                    ground_after: answer.ground_after,
                    mark_after: answer.mark_after,
                    after: answer.after,
                });
                Ok(())
            },
        )
    }
}
/// Upper edges of a band in sections, each cut as an arc, so that the joins have no kink.
///
/// All sections are parts of one ring with `outer_radius = bottom · depth / (bottom - top)`, where `bottom` is the sum of
/// the lengths; each top is its length times `top / bottom`. Every end lies on a radius, square to both edges; an end
/// that overlaps is a piece of its own.
///
/// - `lengths`: finished lower edge of each section, in order (mm, 1 to 100000, 1 to 100 items).
/// - `depth`: finished depth, along the radius (mm, 1 to 10000).
/// - `top`: finished upper edge of all sections together (mm, 1 to 10000000).
/// - `tops`: filled: finished upper edge of each section (mm, as many as lengths).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_curved_band(
    lengths: *const f64,
    lengths_count: usize,
    depth: f64,
    top: f64,
    tops: *mut f64,
    tops_count: usize,
    out: *mut recloth_curved_band_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let lengths = door::list("lengths", lengths, lengths_count)?;
                let tops = door::list_to_fill("tops", tops, tops_count)?;
                let answer = recloth::band::curved_band(lengths, depth, top, tops)?;
                out.write(recloth_curved_band_t {
                    inner_radius: answer.inner_radius,
                    outer_radius: answer.outer_radius,
                    angle_deg: answer.angle_deg,
                    sagitta: answer.sagitta,
                });
                Ok(())
            },
        )
    }
}
/// Stretch of a bias strip that is to lie flat on a curved edge.
///
/// The strip is cut as long as the finished edge, where its fold will lie. Its seam lies `finished` further into the cloth:
/// round a neck that is a longer arc, `seam = edge · (radius + finished) / radius`, and the strip is stretched to it by
/// `100 · finished / radius` percent; round an outward corner a shorter one, and it is eased. Cut as long as the seam instead,
/// a neck's binding stands away. A stretched bias strip grows narrower: as a net of threads that keep their length it keeps
/// `√(2 - (1 + stretch)²)` of its width; press it to shape before sewing, and cut it so much wider. A stretch of 41 % would
/// close the net.
///
/// Handed-down rules cut the strip 5 to 10 % shorter than the edge whatever the curve (common practice, no source): that is
/// right for a binding of 7 mm at radii of 70 to 140 mm, too much on a straighter edge, too little on a tighter one.
///
/// - `edge`: length of the finished edge (mm, 1 to 100000).
/// - `radius`: its radius (mm, 1 to 1000000).
/// - `finished`: width of the binding that shows (mm, 0.5 to 1000).
/// - `curve`: which way the edge curves (one of `recloth_edge_curve`).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_curved_binding(
    edge: f64,
    radius: f64,
    finished: f64,
    curve: i32,
    out: *mut recloth_curved_binding_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let (curve, curve_bad) = read_edge_curve("curve", curve);
                let answer = door::settle(
                    recloth::binding::curved_binding(edge, radius, finished, curve),
                    &["edge", "radius", "finished", "curve"],
                    &[curve_bad],
                )?;
                out.write(recloth_curved_binding_t {
                    seam: answer.seam,
                    stretch_pct: answer.stretch_pct,
                    width_pct: answer.width_pct,
                });
                Ok(())
            },
        )
    }
}
/// Length to cut so that washing brings it to a finished length.
///
/// `cut = finished / (1 + change / 100)`. Adding the percentage to the finished length is the usual slip and comes out
/// short. Shrink cloth before cutting where you can; this is for what cannot be shrunk first.
///
/// A change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.
///
/// - `finished`: length wanted after washing (mm, 0 to 1000000).
/// - `change_pct`: dimensional change: shrinkage of 5 % is -5 (%, -90 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_cut_for_change(
    finished: f64,
    change_pct: f64,
    out: *mut recloth_cut_for_change_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::cloth::cut_for_change(finished, change_pct)?;
                out.write(recloth_cut_for_change_t {
                    cut: answer.cut,
                    added: answer.added,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Finished and cut width of a piece, from what its two edges are drawn as.
///
/// An edge drawn as cut line loses its allowance to the seam, one drawn as seam line has it added:
/// `finished = drawn - cut_edges · allowance`, `cut = drawn + (2 - cut_edges) · allowance`. Which of the two a drawing
/// shows is the costliest question of all: a drawn line taken for the other is wrong by two allowances a seam.
///
/// - `drawn`: width as drawn, edge to edge (mm, 1 to 100000).
/// - `allowance`: seam allowance at each edge (mm, 0 to 1000).
/// - `cut_edges`: how many of the two edges are drawn as cut line (0 to 2).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_cut_state(
    drawn: f64,
    allowance: f64,
    cut_edges: u32,
    out: *mut recloth_cut_state_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::seam::cut_state(drawn, allowance, cut_edges)?;
                out.write(recloth_cut_state_t {
                    finished: answer.finished,
                    cut: answer.cut,
                });
                Ok(())
            },
        )
    }
}
/// Leg and angle of a dart from its intake and the length of its centre line.
///
/// `leg = √((intake / 2)² + length²)` and `angle = 2 · atan(intake / (2 · length))`.
///
/// A dart wider than it is long is doubted: the two may have changed places.
///
/// - `intake`: width taken up at the edge (mm, 0 to 10000).
/// - `length`: edge to point along the middle of the dart, not the leg (mm, 1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_dart(
    intake: f64,
    length: f64,
    out: *mut recloth_dart_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::dart::dart(intake, length)?;
                out.write(recloth_dart_t {
                    leg: answer.leg,
                    angle_deg: answer.angle_deg,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Ease, gathers or tucks that take up as much as a dart, along a stretch of its edge.
///
/// `ease = 100 · intake / finished`, `ratio = (finished + intake) / finished`, `depth = intake / (2 · tucks)`. They take
/// the same length of the edge, but not to the same point: ease and gathers give a soft fullness below, tucks are open
/// at their ends. Firm cloth eases in by some 4 to 6 %, soft wool by more: common practice, no source.
///
/// - `intake`: width of the dart at the edge (mm, 0 to 10000).
/// - `finished`: stretch of the edge that takes it, as it is to be sewn (mm, 1 to 100000).
/// - `tucks`: number of tucks or pleats (1 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_dart_equivalent(
    intake: f64,
    finished: f64,
    tucks: u32,
    out: *mut recloth_dart_equivalent_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::dart::dart_equivalent(intake, finished, tucks)?;
                out.write(recloth_dart_equivalent_t {
                    ease_pct: answer.ease_pct,
                    gather_ratio: answer.gather_ratio,
                    tuck_depth: answer.tuck_depth,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Dart that takes up the gape of an edge, turned to another edge.
///
/// Pin the gape to a fold that runs out at the bust point; a dart of the same angle elsewhere takes it:
/// `intake = gape · dart_leg / gape_distance`. A dart that is there already is widened by so much. Pin and count one
/// side only: a fold pinned over the middle is shared by both. The edge is afterwards shorter by the gape.
///
/// - `gape`: what is pinned out at the edge, on one side (mm, 0 to 10000).
/// - `gape_distance`: from there to the bust point (mm, 1 to 10000).
/// - `dart_leg`: bust point to the edge where the dart is to be (mm, 1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_dart_from_gape(
    gape: f64,
    gape_distance: f64,
    dart_leg: f64,
    out: *mut recloth_dart_from_gape_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::dart::dart_from_gape(
                    gape,
                    gape_distance,
                    dart_leg,
                )?;
                out.write(recloth_dart_from_gape_t {
                    intake: answer.intake,
                    angle_deg: answer.angle_deg,
                });
                Ok(())
            },
        )
    }
}
/// Darts that bring a panel there is to the width wanted.
///
/// The panel's own width leads, not the difference of two body measures: what must go is `panel_width - wanted_width`,
/// shared evenly by the darts but no more than `largest_intake` each; the rest goes to the side seam.
/// `kink = 2 · atan(intake / (2 · length))`.
///
/// - `panel_width`: width there is at the edge, between seam lines (mm, 1 to 100000).
/// - `wanted_width`: finished width at the edge, ease included (mm, 1 to 100000, <= panel_width).
/// - `count`: number of darts (1 to 16).
/// - `largest_intake`: the most that one dart may take (mm, 0 to 10000).
/// - `length`: edge to point along the middle of a dart (mm, 1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_dart_in_panel(
    panel_width: f64,
    wanted_width: f64,
    count: u32,
    largest_intake: f64,
    length: f64,
    out: *mut recloth_dart_in_panel_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::dart::dart_in_panel(
                    panel_width,
                    wanted_width,
                    count,
                    largest_intake,
                    length,
                )?;
                out.write(recloth_dart_in_panel_t {
                    intake_each: answer.intake_each,
                    leftover: answer.leftover,
                    leg: answer.leg,
                    kink_deg: answer.kink_deg,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Intake of a dart that is turned about its point to an edge at another distance.
///
/// Turning keeps the angle, so the intake grows with the leg: `intake · new_leg / leg`.
///
/// - `intake`: width of the dart at the edge where it is now (mm, 0 to 10000).
/// - `leg`: edge to point along the leg where it is now (mm, 1 to 10000).
/// - `new_leg`: edge to point along the leg in its new place (mm, 1 to 10000).
/// - `out`: receives the answer. Width of the dart at the new edge (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_dart_turned(
    intake: f64,
    leg: f64,
    new_leg: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::dart::dart_turned(intake, leg, new_leg)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Width of a dart between its point and its edge.
///
/// `width = intake · distance / leg`: what is lost there when the dart is closed, or gained when it is opened.
///
/// - `intake`: width of the dart at the edge (mm, 0 to 10000).
/// - `leg`: edge to point along the leg (mm, 1 to 10000).
/// - `distance`: from the point along the leg (mm, 0 to 10000, <= leg).
/// - `out`: receives the answer. Width of the dart there (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_dart_width_at(
    intake: f64,
    leg: f64,
    distance: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::dart::dart_width_at(intake, leg, distance)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Deepest hem on a flared edge that can still be eased in.
///
/// `hem_on_curve` the other way: `depth = radius · pct / (200 + pct)`.
///
/// - `radius`: radius of the finished hem edge, laid flat (mm, 1 to 1000000).
/// - `excess_pct`: fullness that the cloth eases or shrinks away (%, 0 to 100).
/// - `out`: receives the answer. Depth of the hem (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_deepest_hem(
    radius: f64,
    excess_pct: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::seam::deepest_hem(radius, excess_pct)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Dimensional change of cloth in the wash, in percent; minus is shrinkage.
///
/// `change = 100 · (after - before) / before`. A shrinkage stated as 8.57 % is a change of -8.57. Mark at least 350 mm apart, 50 mm from the edges, along each grain.
///
/// - `before`: distance of the marks before washing (mm, 1 to 1000000).
/// - `after`: distance of the marks after washing (mm, 1 to 1000000).
/// - `out`: receives the answer. Change (%).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_dimensional_change(
    before: f64,
    after: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::cloth::dimensional_change(before, after)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Legs and angles of a dart with a point at each end, as at the waist of a dress.
///
/// Each half is a dart of its own: `leg = √((intake / 2)² + length²)`, `angle = 2 · atan(intake / (2 · length))`. Where
/// the two meet each leg turns by half the sum of the two angles; the fold of the sewn dart is snipped there, or it
/// pulls. The upper and lower legs need not be alike, but the two legs of one half must be, or the side seams hang askew.
///
/// - `intake`: width taken up where the dart is widest (mm, 0 to 10000).
/// - `upper`: from there to the upper point, along the middle (mm, 1 to 10000).
/// - `lower`: from there to the lower point, along the middle (mm, 1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_double_dart(
    intake: f64,
    upper: f64,
    lower: f64,
    out: *mut recloth_double_dart_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::dart::double_dart(intake, upper, lower)?;
                out.write(recloth_double_dart_t {
                    upper_leg: answer.upper_leg,
                    lower_leg: answer.lower_leg,
                    upper_angle_deg: answer.upper_angle_deg,
                    lower_angle_deg: answer.lower_angle_deg,
                    bend_deg: answer.bend_deg,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Length of elastic for a waist or a cuff, and the stretch asked of it.
///
/// `round = girth - shorter`, `cut = round + overlap`. Elastics differ: pin it round the body before cutting, and see that
/// its own full stretch is more than `passing_pct`. The casing's edge must itself be as long as the widest part. Never
/// round a throat; for children's clothes see the safety standards that hold where you are.
///
/// A girth below 110 mm, less than a child's wrist (from memory), is doubted.
///
/// - `girth`: girth of the body where it sits (mm, 1 to 100000).
/// - `widest`: girth that it must pass over, as the hip for a waist (mm, 1 to 100000, >= girth).
/// - `shorter`: what the elastic is shorter than the girth (mm, 0 to 10000, < girth).
/// - `overlap`: overlap where its ends are joined (mm, 0 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_elastic(
    girth: f64,
    widest: f64,
    shorter: f64,
    overlap: f64,
    out: *mut recloth_elastic_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::elastic::elastic(girth, widest, shorter, overlap)?;
                out.write(recloth_elastic_t {
                    round: answer.round,
                    cut: answer.cut,
                    worn_pct: answer.worn_pct,
                    passing_pct: answer.passing_pct,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Pitch of buttons or holes spaced evenly.
///
/// `pitch = (last - first) / (count - 1)`.
///
/// - `first`: place of the first, from the edge's start (mm, 0 to 100000).
/// - `last`: place of the last (mm, 0 to 100000, > first).
/// - `count`: how many (2 to 1000).
/// - `out`: receives the answer. From middle to middle of neighbours (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_even_spacing(
    first: f64,
    last: f64,
    count: u32,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::closure::even_spacing(first, last, count)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Widths of a five-gored skirt's half pattern by a handed-down rule.
///
/// At the waist: front an eighth, side a sixth of it, the back what is left of half. At the hip, 6 in below: the front 1 in
/// wider than above, the side half as wide again, the back what is left of half the hip. The rule is for a full skirt of
/// its time, 2 1/2 to 3 yd round the hem, with its fullness at the back: for gores alike use `gore`. Seams are extra.
///
/// Waist and hip are doubted as the functions of `body` do.
///
/// - `waist`: finished waist, ease included (mm, 1 to 100000).
/// - `hip`: finished hip, ease included (mm, 1 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_five_gores(
    waist: f64,
    hip: f64,
    out: *mut recloth_five_gores_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::gore::five_gores(waist, hip)?;
                out.write(recloth_five_gores_t {
                    front_waist: answer.front_waist,
                    side_waist: answer.side_waist,
                    back_waist: answer.back_waist,
                    front_hip: answer.front_hip,
                    side_hip: answer.side_hip,
                    back_hip: answer.back_hip,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Rings for a flounce that lies flat along its edge and ripples at its hem.
///
/// Each full ring is cut open, and joined to the next or to itself: of its way round it loses an allowance at both cuts.
/// `inner_radius = (edge / rings + 2 · allowance) / 2π`, `hem = rings · (2π · outer_radius - 2 · allowance)`. More rings
/// make it fuller, with a smaller hole. The seam's own allowance lies inside the inner radius and is snipped to lie
/// along the edge. For a part of one ring, see `circle_skirt`.
///
/// - `edge`: edge that the flounce is sewn to, all round (mm, 1 to 1000000).
/// - `depth`: finished depth, seam to hem (mm, 1 to 10000).
/// - `rings`: number of full rings (1 to 200).
/// - `allowance`: seam allowance at each cut (mm, 0 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_flounce(
    edge: f64,
    depth: f64,
    rings: u32,
    allowance: f64,
    out: *mut recloth_flounce_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::tier::flounce(edge, depth, rings, allowance)?;
                out.write(recloth_flounce_t {
                    inner_radius: answer.inner_radius,
                    outer_radius: answer.outer_radius,
                    hem: answer.hem,
                    ratio: answer.ratio,
                    square: answer.square,
                });
                Ok(())
            },
        )
    }
}
/// Width of a strip that is folded along its middle to a band, a cuff or a placket, and where its fold lies.
///
/// `cut_width = 2 · depth + 2 · allowance + turn + past`, `fold_line = allowance + depth + turn / 2`. The turn is the cloth
/// that the fold takes by its thickness, half from either side. An inner layer that is caught by stitching in the seam from
/// the right side must reach `past` below it; sewn down by hand, 0. Interfacing ends at the fold line or goes over it as the
/// cloth asks. For the strip's length see `straight_band`; for the depth of a strip there is,
/// `straight_band_depth` of its width less `past`.
///
/// - `depth`: finished depth (mm, 1 to 10000).
/// - `allowance`: seam allowance at each long edge (mm, 0 to 1000).
/// - `turn`: cloth taken by the thickness of the fold (mm, 0 to 100).
/// - `past`: what the inner layer reaches past the seam (mm, 0 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_folded_band(
    depth: f64,
    allowance: f64,
    turn: f64,
    past: f64,
    out: *mut recloth_folded_band_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::band::folded_band(depth, allowance, turn, past)?;
                out.write(recloth_folded_band_t {
                    cut_width: answer.cut_width,
                    fold_line: answer.fold_line,
                    inner: answer.inner,
                });
                Ok(())
            },
        )
    }
}
/// A length as text, rounded to the nearest graduation of the style.
///
/// From the middle between two graduations it is rounded away from zero. `parse_length` reads every style, and gives
/// back the same number when the length is a whole number of the style's graduations, or for the style `exact` always.
/// Fractions are reduced, and a part that is nothing is left out. `exact` writes very small numbers with an exponent,
/// and a fourth decimal where three could be taken for thousands: `796.9250 mm`.
///
/// - `length`: the length (mm, -10000000 to 10000000).
/// - `style`: how to print it (one of `recloth_style`).
/// - `text`: receives the answer and a closing NUL; 64 bytes hold every answer.
/// - `out`: receives the answer. The length as text..
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_format_length(
    length: f64,
    style: i32,
    out: *mut c_char,
    out_count: usize,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let (style, style_bad) = read_style("style", style);
                let answer = door::settle(
                    recloth::tape::format_length(length, style),
                    &["length", "style"],
                    &[style_bad],
                )?;
                door::write_text("out", answer.as_str(), out, out_count)?;
                Ok(())
            },
        )
    }
}
/// Doubts on a front and a back at one level, together.
///
/// One more than one and a half times the other (`FRONT_BACK_APART`) may be whole against half.
///
/// - `front`: width of the front (mm, 1 to 100000).
/// - `back`: width of the back (mm, 1 to 100000).
/// - `out`: receives the answer. The doubts (bits).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_front_back_doubts(
    front: f64,
    back: f64,
    out: *mut u64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::body::front_back_doubts(front, back)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Part of a ring that rolls up to a cone, or to a part of one, of given diameters and height.
///
/// `slant = √(((lower - upper) / 2)² + height²)`, `outer_radius = lower · slant / (lower - upper)`, `inner_radius = upper ·
/// slant / (lower - upper)`, `angle = 180° · (lower - upper) / slant`. Hats, shades, flared cuffs and the tops of bags
/// are measured so; where the edges and the slant are measured along the cloth use
/// `shaped_band`, which is the same ring.
///
/// - `lower_diameter`: diameter of the larger end (mm, 1 to 100000).
/// - `upper_diameter`: diameter of the smaller end; 0 is a cone (mm, 0 to 100000, < lower_diameter).
/// - `height`: from end to end, straight up (mm, 0 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_frustum(
    lower_diameter: f64,
    upper_diameter: f64,
    height: f64,
    out: *mut recloth_frustum_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::arc::frustum(
                    lower_diameter,
                    upper_diameter,
                    height,
                )?;
                out.write(recloth_frustum_t {
                    slant: answer.slant,
                    inner_radius: answer.inner_radius,
                    outer_radius: answer.outer_radius,
                    angle_deg: answer.angle_deg,
                    area_mm2: answer.area_mm2,
                });
                Ok(())
            },
        )
    }
}
/// Ratio of gathers that a strip there is gives on a line.
///
/// `ratio = flat / finished`.
///
/// A ratio below 1.2 or above 4 is doubted (common practice, no source).
///
/// - `flat`: length of the strip, without allowances (mm, 1 to 20000000).
/// - `finished`: line that the gathers are sewn to (mm, 1 to 1000000, <= flat).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_gather_ratio(
    flat: f64,
    finished: f64,
    out: *mut recloth_gathers_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fullness::gather_ratio(flat, finished)?;
                out.write(recloth_gathers_t {
                    flat: answer.flat,
                    taken_up: answer.taken_up,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Parts of a strip between its marks, so that gathers are even from notch to notch.
///
/// Each section of the line takes its share of the strip: `flat · length / sum of lengths`. Quarter marks of a strip fall on
/// quarter marks of the line only where these are evenly spaced: on a waist whose front is wider than its back they are not.
///
/// A ratio below 1.2 or above 4 is doubted (common practice, no source).
///
/// - `lengths`: sections of the line between its notches, in order (mm, 1 to 100000, 1 to 100 items).
/// - `flat`: length of the strip, without allowances (mm, 1 to 20000000).
/// - `flats`: filled: part of the strip for each section (mm, as many as lengths).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_gather_sections(
    lengths: *const f64,
    lengths_count: usize,
    flat: f64,
    flats: *mut f64,
    flats_count: usize,
    out: *mut recloth_gather_sections_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let lengths = door::list("lengths", lengths, lengths_count)?;
                let flats = door::list_to_fill("flats", flats, flats_count)?;
                let answer = recloth::fullness::gather_sections(lengths, flat, flats)?;
                out.write(recloth_gather_sections_t {
                    finished: answer.finished,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Strip to cut for gathers of a given ratio.
///
/// `flat = finished · ratio`. About 1.5 for a flounce, 2 for a ruche or heavy curtain, up to 3 for sheer cloth; gather a
/// sample of the cloth itself.
///
/// A ratio below 1.2 or above 4 is doubted (common practice, no source).
///
/// - `finished`: line that the gathers are sewn to (mm, 1 to 1000000).
/// - `ratio`: strip over line; "100 % fullness" is a ratio of 2 (1 to 20).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_gathers(
    finished: f64,
    ratio: f64,
    out: *mut recloth_gathers_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fullness::gathers(finished, ratio)?;
                out.write(recloth_gathers_t {
                    flat: answer.flat,
                    taken_up: answer.taken_up,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Doubts on the girth of a trunk: chest, waist or hip.
///
/// Below 300 mm (`GIRTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`GIRTH_LARGE`) taken twice.
///
/// - `girth`: girth of chest, waist or hip (mm, 1 to 100000).
/// - `out`: receives the answer. The doubts (bits).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_girth_doubts(
    girth: f64,
    out: *mut u64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::body::girth_doubts(girth)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Sector for a godet of a given length and hem.
///
/// `angle = hem / length` in radians, `chord = 2 · length · sin(angle / 2)`. Its two sides are as long as the slit; the
/// hem is an arc, or it hangs in a point. A godet of more than half a ring is cut in two parts.
///
/// - `length`: slit from its point to the finished hem (mm, 1 to 10000).
/// - `hem`: finished hem of one godet, along its arc (mm, 1 to 100000).
/// - `count`: number of godets (1 to 64).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_godet(
    length: f64,
    hem: f64,
    count: u32,
    out: *mut recloth_godet_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::gore::godet(length, hem, count)?;
                out.write(recloth_godet_t {
                    angle_deg: answer.angle_deg,
                    chord: answer.chord,
                    sagitta: answer.sagitta,
                    added: answer.added,
                });
                Ok(())
            },
        )
    }
}
/// Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.
///
/// Each width is the whole by the number of gores. A side edge runs over two slopes, `√(((hip - waist) / 2)² +
/// hip_depth²) + √(((hem - hip) / 2)² + (length - hip_depth)²)` for widths of one gore, and is longer than the middle: the
/// hem is curved up by `hem_rise` at its ends. The break at the hip is rounded off when the pattern is drawn.
///
/// Waist, hip and length are doubted as the functions of `body` do, and a hip less than 50 mm below
/// the waist.
///
/// - `waist`: finished waist, ease included (mm, 1 to 100000).
/// - `hip`: finished hip, ease included (mm, 1 to 100000).
/// - `hem`: finished way round the hem (mm, 1 to 1000000).
/// - `length`: waist to hem along the middle of a gore (mm, 1 to 100000).
/// - `hip_depth`: waist to hip along the middle of a gore (mm, 0 to 10000, < length).
/// - `count`: number of gores (1 to 64).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_gore(
    waist: f64,
    hip: f64,
    hem: f64,
    length: f64,
    hip_depth: f64,
    count: u32,
    out: *mut recloth_gore_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::gore::gore(
                    waist,
                    hip,
                    hem,
                    length,
                    hip_depth,
                    count,
                )?;
                out.write(recloth_gore_t {
                    waist_width: answer.waist_width,
                    hip_width: answer.hip_width,
                    hem_width: answer.hem_width,
                    side_length: answer.side_length,
                    flare_deg: answer.flare_deg,
                    hem_rise: answer.hem_rise,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Mass of cloth per square metre from ounces per square yard.
///
/// `gsm = ounces · 33.9057`. Ounces *per running yard* are another thing: divide them by the width in yards first.
///
/// - `ounces`: ounces in one square yard (0.01 to 1000).
/// - `out`: receives the answer. Mass per area (gsm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_gsm_from_ounces(
    ounces: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::quantity::gsm_from_ounces(ounces)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Diamond gusset for two slits that meet in a seam, as under an arm.
///
/// Its four sides are as long as the slits, its short diagonal is what the opened slits add across:
/// `angle = 2 · asin(added / (2 · slit))`, `long_diagonal = √(4 · slit² - added²)`. Cut, an allowance all round makes the long
/// way `2 · allowance / sin(angle / 2)` longer and the short way `2 · allowance / cos(angle / 2)`: sharp points need much
/// cloth. Face the slit's end before it is cut, for it has no allowance there; cut last and only after a try in scrap cloth.
/// The gusset lies on the bias where slits are on grain.
///
/// - `slit`: length of each slit, seam to its end (mm, 1 to 10000).
/// - `added`: what is to be added across, where they meet (mm, 0.1 to 20000).
/// - `allowance`: seam allowance all round the gusset (mm, 0 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_gusset(
    slit: f64,
    added: f64,
    allowance: f64,
    out: *mut recloth_gusset_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::gore::gusset(slit, added, allowance)?;
                out.write(recloth_gusset_t {
                    angle_deg: answer.angle_deg,
                    long_diagonal: answer.long_diagonal,
                    cut_long: answer.cut_long,
                    cut_short: answer.cut_short,
                });
                Ok(())
            },
        )
    }
}
/// Whether a neck with a slit passes over the head, and the least slit.
///
/// A slit opens by its length on both sides: `neck + 2 · slit >= head + ease`. The same sum serves a skirt with a zip that
/// must pass over the hip, with waist and hip for neck and head, where the skirt at the slit's end is no narrower. Measure
/// the finished edge, not the neck of the body. For children no cords or drawstrings at the neck, no small loose buttons,
/// no elastic round the throat: see the safety standards that hold where you are.
///
/// A head below 300 mm or above 2000 mm and an edge below 110 mm are doubted: they may be in centimetres.
///
/// - `head`: girth that must pass (mm, 1 to 100000).
/// - `neck`: finished way round the edge, not stretched (mm, 1 to 100000).
/// - `slit`: length of the slit, button placket or zip (mm, 0 to 10000).
/// - `ease`: what the opening should be wider (mm, 0 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_head_opening(
    head: f64,
    neck: f64,
    slit: f64,
    ease: f64,
    out: *mut recloth_head_opening_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::neck::head_opening(head, neck, slit, ease)?;
                out.write(recloth_head_opening_t {
                    least_slit: answer.least_slit,
                    spare: answer.spare,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// What is left for a hem that is let down, and where its old crease and stitching will show.
///
/// The old hem holds `hem_depth + turn_in` of cloth below its edge. Lowered by `lowered_by`, the new edge has
/// `left = hem_depth + turn_in - lowered_by` for its hem; with less than `keep`, a facing is sewn on (a false hem), which
/// needs `seam`. The old crease lies `lowered_by` above the new edge on the right side, and the old stitching
/// `hem_depth + lowered_by`: a crease that has worn or faded stays, and is covered by a tuck, a braid or stitching, or the hem
/// is left. Unpick and press a hand's breadth before deciding.
///
/// - `hem_depth`: depth of the old hem as it is sewn (mm, 0 to 1000).
/// - `turn_in`: turned in at its raw edge; 0 where it is overcast (mm, 0 to 1000, <= hem_depth).
/// - `lowered_by`: what the garment is to be longer (mm, 0 to 2000).
/// - `keep`: least for a hem of its own, its turn included (mm, 0 to 1000).
/// - `seam`: least for the seam of a facing (mm, 0 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_hem_let_down(
    hem_depth: f64,
    turn_in: f64,
    lowered_by: f64,
    keep: f64,
    seam: f64,
    out: *mut recloth_hem_let_down_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::alteration::hem_let_down(
                    hem_depth,
                    turn_in,
                    lowered_by,
                    keep,
                    seam,
                )?;
                out.write(recloth_hem_let_down_t {
                    left: answer.left,
                    crease: answer.crease,
                    stitching: answer.stitching,
                    longest: answer.longest,
                    longest_faced: answer.longest_faced,
                });
                Ok(())
            },
        )
    }
}
/// Fullness to ease into a hem that is turned up on a flared edge.
///
/// The raw edge lies at `radius + depth`; turned up it must lie at `radius - depth`. So it is too long by
/// `100 · 2 · depth / (radius - depth)` percent of where it lies, and over a hem of length `hem` by
/// `2 · depth · hem / radius`. Radius is that of the hem edge laid flat: `circle_skirt` or
/// `arc_from_rise` give it.
///
/// - `radius`: radius of the finished hem edge, laid flat (mm, 1 to 1000000).
/// - `depth`: depth of the hem (mm, 0 to 10000, < radius).
/// - `hem`: length of the finished hem edge (mm, 1 to 1000000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_hem_on_curve(
    radius: f64,
    depth: f64,
    hem: f64,
    out: *mut recloth_hem_on_curve_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::seam::hem_on_curve(radius, depth, hem)?;
                out.write(recloth_hem_on_curve_t {
                    excess_pct: answer.excess_pct,
                    excess: answer.excess,
                    raw_edge: answer.raw_edge,
                });
                Ok(())
            },
        )
    }
}
/// What the hip is larger than the waist, which may be less than nothing.
///
/// `drop = hip - waist`. On a body whose waist is the larger there is nothing to dart: panels hang straight from the waist, or
/// flare from the hip to it. What darts take in a panel there is follows from the panel, not from this
/// (`dart_in_panel`).
///
/// - `hip`: girth of hip (mm, 1 to 100000).
/// - `waist`: girth of waist (mm, 1 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_hip_waist_drop(
    hip: f64,
    waist: f64,
    out: *mut recloth_hip_waist_drop_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::body::hip_waist_drop(hip, waist)?;
                out.write(recloth_hip_waist_drop_t {
                    drop: answer.drop,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Buttonholes left on an edge that is shortened.
///
/// `count = floor((edge - first) / pitch) + 1`.
///
/// - `edge`: finished length of the edge after shortening (mm, 1 to 100000).
/// - `first`: first hole from the end that stays (mm, 0 to 100000, <= edge).
/// - `pitch`: from hole to hole (mm, 1 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_holes_left(
    edge: f64,
    first: f64,
    pitch: f64,
    out: *mut recloth_holes_left_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::closure::holes_left(edge, first, pitch)?;
                out.write(recloth_holes_left_t {
                    count: answer.count,
                    last: answer.last,
                    to_end: answer.to_end,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Strip to let into a garment for what is lacking in its width.
///
/// Each strip must add its share, `lacking / strips`. In an opened seam the old edges are sewn on their old lines, and it
/// shows just that. In a cut through the cloth both new edges lose an allowance, which the strip replaces as well:
/// `finished = lacking / strips + 2 · allowance`. In both places `cut_width = finished + 2 · allowance`: a strip cut for a
/// seam and let into a slash is two allowances short. Cut it on the garment's own grain, of cloth washed as often. What can
/// be let out first, `let_out` says.
///
/// - `lacking`: what the garment is too narrow by, all round (mm, 0.1 to 10000).
/// - `allowance`: seam allowance at each edge (mm, 0 to 1000).
/// - `strips`: number of strips that share it (1 to 64).
/// - `place`: where they are let in (one of `recloth_insert_place`).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_insert_strip(
    lacking: f64,
    allowance: f64,
    strips: u32,
    place: i32,
    out: *mut recloth_insert_strip_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let (place, place_bad) = read_insert_place("place", place);
                let answer = door::settle(
                    recloth::alteration::insert_strip(lacking, allowance, strips, place),
                    &["lacking", "allowance", "strips", "place"],
                    &[place_bad],
                )?;
                out.write(recloth_insert_strip_t {
                    finished: answer.finished,
                    cut_width: answer.cut_width,
                    cloth: answer.cloth,
                });
                Ok(())
            },
        )
    }
}
/// K/S, the depth of shade, of a reflectance.
///
/// `K/S = (1 - R)² / (2 R)`. Depths add up where reflectances do not: cloth and dyes each give their own. Near black it grows
/// without bounds, so small errors of R are large ones of K/S.
///
/// - `reflectance`: share of the light that comes back (0.001 to 1).
/// - `out`: receives the answer. K/S.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_k_over_s(
    reflectance: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::shade::k_over_s(reflectance)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Cloth for knife pleats of a given number and depth.
///
/// `flat = finished + 2 · count · depth`. The four functions of knife pleats each find one of `flat`, `finished`, `count`
/// and `depth` from the others, and give the same answer. Tucks are the same sum.
///
/// - `finished`: width when pleated (mm, 1 to 1000000).
/// - `count`: number of pleats (1 to 1000).
/// - `depth`: depth of each pleat's underlay, fold to fold (mm, 0.1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_knife_pleats(
    finished: f64,
    count: u32,
    depth: f64,
    out: *mut recloth_knife_pleats_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fullness::knife_pleats(finished, count, depth)?;
                out.write(recloth_knife_pleats_t {
                    flat: answer.flat,
                    finished: answer.finished,
                    count: answer.count,
                    show: answer.show,
                    depth: answer.depth,
                    intake: answer.intake,
                    taken_up: answer.taken_up,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Number of knife pleats of at least a given depth that bring cloth there is to a width.
///
/// The whole number that `(flat - finished) / (2 · depth)` holds, and then the depth at which they take up exactly what
/// there is: the depth wanted or a little more.
///
/// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
/// - `finished`: width when pleated (mm, 1 to 1000000, < flat).
/// - `depth`: least depth of each pleat's underlay (mm, 0.1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_knife_pleats_count(
    flat: f64,
    finished: f64,
    depth: f64,
    out: *mut recloth_knife_pleats_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fullness::knife_pleats_count(
                    flat,
                    finished,
                    depth,
                )?;
                out.write(recloth_knife_pleats_t {
                    flat: answer.flat,
                    finished: answer.finished,
                    count: answer.count,
                    show: answer.show,
                    depth: answer.depth,
                    intake: answer.intake,
                    taken_up: answer.taken_up,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Depth of a given number of knife pleats that bring cloth there is to a width.
///
/// `depth = (flat - finished) / (2 · count)`.
///
/// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
/// - `finished`: width when pleated (mm, 1 to 1000000, < flat).
/// - `count`: number of pleats (1 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_knife_pleats_depth(
    flat: f64,
    finished: f64,
    count: u32,
    out: *mut recloth_knife_pleats_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fullness::knife_pleats_depth(
                    flat,
                    finished,
                    count,
                )?;
                out.write(recloth_knife_pleats_t {
                    flat: answer.flat,
                    finished: answer.finished,
                    count: answer.count,
                    show: answer.show,
                    depth: answer.depth,
                    intake: answer.intake,
                    taken_up: answer.taken_up,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Width to which a given number of knife pleats brings cloth there is.
///
/// `finished = flat - 2 · count · depth`.
///
/// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
/// - `count`: number of pleats (1 to 1000).
/// - `depth`: depth of each pleat's underlay, fold to fold (mm, 0.1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_knife_pleats_finished(
    flat: f64,
    count: u32,
    depth: f64,
    out: *mut recloth_knife_pleats_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fullness::knife_pleats_finished(
                    flat,
                    count,
                    depth,
                )?;
                out.write(recloth_knife_pleats_t {
                    flat: answer.flat,
                    finished: answer.finished,
                    count: answer.count,
                    show: answer.show,
                    depth: answer.depth,
                    intake: answer.intake,
                    taken_up: answer.taken_up,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// CIELAB of a colour given by its screen levels, under daylight D65.
///
/// Of cloth photographed: put a white card beside it, in the same even daylight, and bring the card to equal levels first.
/// Without it the numbers are the lamp's and the camera's. Wet cloth is darker than dry.
///
/// - `red`: red level (0 to 255).
/// - `green`: green level (0 to 255).
/// - `blue`: blue level (0 to 255).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_lab_from_srgb(
    red: f64,
    green: f64,
    blue: f64,
    out: *mut recloth_lab_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::colour::lab_from_srgb(red, green, blue)?;
                out.write(recloth_lab_t {
                    l: answer.l,
                    a: answer.a,
                    b: answer.b,
                });
                Ok(())
            },
        )
    }
}
/// CIELAB of a colour given by its tristimulus values.
///
/// The white is given by its chromaticity; its `Y` is 1.
///
/// - `x`: X (0 to 2).
/// - `y`: Y, the luminance: white has 1 (0 to 2).
/// - `z`: Z (0 to 2).
/// - `white_x`: chromaticity x of the white: daylight D65 (0.05 to 0.8).
/// - `white_y`: chromaticity y of the white (0.05 to 0.8).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_lab_from_xyz(
    x: f64,
    y: f64,
    z: f64,
    white_x: f64,
    white_y: f64,
    out: *mut recloth_lab_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::colour::lab_from_xyz(x, y, z, white_x, white_y)?;
                out.write(recloth_lab_t {
                    l: answer.l,
                    a: answer.a,
                    b: answer.b,
                });
                Ok(())
            },
        )
    }
}
/// Length of lace for a laced opening.
///
/// Crosswise lacing, with one bar straight across at the start: each of the `pairs - 1` steps takes two slanting stretches,
/// `lace = gap + 2 · (pairs - 1) · √(gap² + pitch²) + 2 · tail`. Give the gap at its widest, when the garment is put on, or the
/// lace must be drawn out each time. No lace at a child's neck or hood.
///
/// - `pairs`: pairs of eyelets (1 to 100).
/// - `pitch`: from eyelet to eyelet along one side (mm, 1 to 1000).
/// - `gap`: across from eyelet to eyelet of a pair (mm, 0 to 10000).
/// - `tail`: each end left over for a bow (mm, 0 to 10000).
/// - `out`: receives the answer. Length of lace (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_lacing(
    pairs: u32,
    pitch: f64,
    gap: f64,
    tail: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fastening::lacing(pairs, pitch, gap, tail)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// The one unknown of a chain of lengths.
///
/// The chain is `total = factor · length + factor · length + …`: a factor of 1 for a length that adds, -1 for a seam
/// allowance that is lost, 2 for one that is lost or won on both edges, 0.5 for half a girth. `unknown` is the index of
/// the length sought, or the number of lengths when the total is sought. What stands in the unknown's place is not used,
/// but must be in range: write 0.
///
/// - `lengths`: the lengths (mm, 0 to 100000, 1 to 1000 items).
/// - `factors`: how many times each counts, minus where lost (-100 to 100, as many as lengths).
/// - `total`: what they come to (mm, 0 to 10000000000).
/// - `unknown`: index of the length sought; their number: total (0 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_length_chain(
    lengths: *const f64,
    lengths_count: usize,
    factors: *const f64,
    factors_count: usize,
    total: f64,
    unknown: u32,
    out: *mut recloth_length_chain_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let lengths = door::list("lengths", lengths, lengths_count)?;
                let factors = door::list("factors", factors, factors_count)?;
                let answer = recloth::chain::length_chain(
                    lengths,
                    factors,
                    total,
                    unknown,
                )?;
                out.write(recloth_length_chain_t {
                    value: answer.value,
                    plus: answer.plus,
                    minus: answer.minus,
                    worst_per_mm: answer.worst_per_mm,
                    likely_per_mm: answer.likely_per_mm,
                });
                Ok(())
            },
        )
    }
}
/// Each term's part in a chain of lengths and in its error.
///
/// The chain and its unknown are those of `length_chain`; each length has besides how far it may be off. `parts` says
/// what each term adds to the total, `factor · length`, minus where it is lost; the unknown's own part among them.
/// `misses` says how far each term's error alone moves the unknown: `|factor| · error / |factor of the unknown|`. They add
/// up to the worst case, the total's own among them; the unknown's own is 0. The largest of them is where a second
/// measuring pays.
///
/// - `lengths`: the lengths (mm, 0 to 100000, 1 to 1000 items).
/// - `factors`: how many times each counts, minus where lost (-100 to 100, as many as lengths).
/// - `errors`: how far each may be off (mm, 0 to 1000, as many as lengths).
/// - `total`: what they come to (mm, 0 to 10000000000).
/// - `unknown`: index of the length sought; their number: total (0 to 1000).
/// - `parts`: filled: what each adds to the total (mm, as many as lengths).
/// - `misses`: filled: how far the error of each moves the unknown (mm, as many as lengths).
/// - `total_error`: how far the total may be off (mm, 0 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_length_chain_shares(
    lengths: *const f64,
    lengths_count: usize,
    factors: *const f64,
    factors_count: usize,
    errors: *const f64,
    errors_count: usize,
    total: f64,
    unknown: u32,
    parts: *mut f64,
    parts_count: usize,
    misses: *mut f64,
    misses_count: usize,
    total_error: f64,
    out: *mut recloth_chain_shares_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let lengths = door::list("lengths", lengths, lengths_count)?;
                let factors = door::list("factors", factors, factors_count)?;
                let errors = door::list("errors", errors, errors_count)?;
                let parts = door::list_to_fill("parts", parts, parts_count)?;
                let misses = door::list_to_fill("misses", misses, misses_count)?;
                let answer = recloth::chain::length_chain_shares(
                    lengths,
                    factors,
                    errors,
                    total,
                    unknown,
                    parts,
                    misses,
                    total_error,
                )?;
                out.write(recloth_chain_shares_t {
                    value: answer.value,
                    worst: answer.worst,
                    likely: answer.likely,
                    largest: answer.largest,
                    largest_part: answer.largest_part,
                });
                Ok(())
            },
        )
    }
}
/// What to let out at each edge of a garment that is too narrow, and what is still short.
///
/// `lacking = body + ease - garment`, shared evenly by the edges but no more than `allowance - keep` each. Look first: old seam
/// lines, needle holes, a faded or worn fold and snips that reach into the allowance may show, and then it is worth nothing.
///
/// A body below 110 mm, less than a child's wrist (from memory), is doubted.
///
/// - `garment`: finished garment at this level, all round (mm, 1 to 100000).
/// - `body`: body at this level, all round (mm, 1 to 100000).
/// - `ease`: what the garment is to have more than the body (mm, -10000 to 10000).
/// - `allowance`: allowance there is inside each seam, sound cloth (mm, 0 to 1000).
/// - `edges`: edges that can be let out, two to a seam (1 to 64).
/// - `keep`: allowance that each edge must keep (mm, 0 to 1000, <= allowance).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_let_out(
    garment: f64,
    body: f64,
    ease: f64,
    allowance: f64,
    edges: u32,
    keep: f64,
    out: *mut recloth_let_out_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::alteration::let_out(
                    garment,
                    body,
                    ease,
                    allowance,
                    edges,
                    keep,
                )?;
                out.write(recloth_let_out_t {
                    lacking: answer.lacking,
                    each: answer.each,
                    gained: answer.gained,
                    short_by: answer.short_by,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Line at an even height above a curved hem that is kept.
///
/// Height is measured from the hem on its radius, so the line is an arc about the same centre: `radius = hem_radius -
/// height`, its chord shrinks alike, and `sag = radius - √(radius² - chord² / 4)`. A straight cut through its ends would
/// leave the panel too long by the sag in the middle; one through its middle, too short at the sides. Radius and chord of
/// the hem come from `arc_from_rise`. The panel is a sector of less than half a ring.
///
/// - `hem_radius`: radius of the hem that is kept (mm, 1 to 1000000).
/// - `height`: height of the line above the hem (mm, 0 to 100000, < hem_radius).
/// - `hem_chord`: straight across from end to end of the hem (mm, 1 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_level_line(
    hem_radius: f64,
    height: f64,
    hem_chord: f64,
    out: *mut recloth_level_line_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::arc::level_line(hem_radius, height, hem_chord)?;
                out.write(recloth_level_line_t {
                    radius: answer.radius,
                    chord: answer.chord,
                    sag: answer.sag,
                    length: answer.length,
                });
                Ok(())
            },
        )
    }
}
/// Light of one screen level, as a share of the most.
///
/// With `c = level / 255`: `c / 12.92` up to `c = 0.04045`, above it `((c + 0.055) / 1.055)^2.4`. Levels are not light: the
/// middle level 128 has a fifth of it.
///
/// - `level`: red, green or blue of a picture (0 to 255).
/// - `out`: receives the answer. Share of the most light.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_linear_light(
    level: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::colour::linear_light(level)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Length to cut a lining that hangs free of the shell's hem, below its upper seam line.
///
/// `length - clearance + hem`.
///
/// - `length`: finished shell, upper seam to hem edge (mm, 1 to 100000).
/// - `clearance`: lining's hem edge above the shell's (mm, 0 to 10000, < length).
/// - `hem`: all the cloth of the lining's own hem, turn included (mm, 0 to 10000).
/// - `out`: receives the answer. Upper seam line to the lower cut edge (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_lining_free_length(
    length: f64,
    clearance: f64,
    hem: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::lining::lining_free_length(
                    length,
                    clearance,
                    hem,
                )?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Length of a lining that hangs in a fold over the shell's hem.
///
/// The fold ends `clearance` above the finished edge and runs back up to the top of the hem:
/// `seam_to_seam = (length - clearance) + (hem_depth - clearance)`, `fold = hem_depth - clearance`. Width and shrinkage
/// are other questions; a lining without walking room needs a slit.
///
/// The length is doubted as `body_length_doubts` does.
///
/// - `length`: finished shell, upper seam to hem edge (mm, 1 to 100000).
/// - `hem_depth`: finished depth of the shell's hem (mm, 0 to 10000, <= length).
/// - `clearance`: lining's fold above the hem edge (mm, 0 to 10000, < hem_depth).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_lining_length(
    length: f64,
    hem_depth: f64,
    clearance: f64,
    out: *mut recloth_lining_length_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::lining::lining_length(
                    length,
                    hem_depth,
                    clearance,
                )?;
                out.write(recloth_lining_length_t {
                    seam_to_seam: answer.seam_to_seam,
                    straight: answer.straight,
                    spare: answer.spare,
                    fold: answer.fold,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Width to cut a lining panel that meets a facing.
///
/// `width = (panel - facing) · (1 + ease_pct / 100) + pleat`, between seam lines: the lining must never be what strains, so it
/// is wider than what it lines. A pleat at the centre back gives room to reach. Panels without a facing have `facing = 0`.
///
/// - `panel`: finished shell panel, seam line to edge (mm, 1 to 100000).
/// - `facing`: finished facing, edge to the seam that joins the lining (mm, 0 to 100000, < panel).
/// - `ease_pct`: what the lining is wider than what it lines (%, 0 to 50).
/// - `pleat`: cloth of a pleat, both layers of its fold (mm, 0 to 10000).
/// - `out`: receives the answer. Width of the lining panel between seam lines (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_lining_width(
    panel: f64,
    facing: f64,
    ease_pct: f64,
    pleat: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::lining::lining_width(
                    panel,
                    facing,
                    ease_pct,
                    pleat,
                )?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// A pooled liquor shared by dry mass, and the water that brings every bath to one liquor ratio.
///
/// `share = pooled · mass / (sum of masses)`, topped up to `mass · ratio`. So all goods have the same dye for their mass in
/// the same liquor; they still seldom match, as no two baths heat alike.
///
/// - `masses_g`: dry mass of each bath's goods (g, 0.01 to 1000000, 1 to 100 items).
/// - `pooled_ml`: liquor to share (ml, 0 to 1000000000).
/// - `ratio`: liquor to goods, by mass (1 to 200).
/// - `shares_ml`: filled: pooled liquor for each bath (ml, as many as masses_g).
/// - `waters_ml`: filled: water added to each bath (ml, as many as masses_g).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_liquor_shares(
    masses_g: *const f64,
    masses_g_count: usize,
    pooled_ml: f64,
    ratio: f64,
    shares_ml: *mut f64,
    shares_ml_count: usize,
    waters_ml: *mut f64,
    waters_ml_count: usize,
    out: *mut recloth_liquor_shares_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let masses_g = door::list("masses_g", masses_g, masses_g_count)?;
                let shares_ml = door::list_to_fill(
                    "shares_ml",
                    shares_ml,
                    shares_ml_count,
                )?;
                let waters_ml = door::list_to_fill(
                    "waters_ml",
                    waters_ml,
                    waters_ml_count,
                )?;
                let answer = recloth::wet::liquor_shares(
                    masses_g,
                    pooled_ml,
                    ratio,
                    shares_ml,
                    waters_ml,
                )?;
                out.write(recloth_liquor_shares_t {
                    bath_ml: answer.bath_ml,
                    water_ml: answer.water_ml,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Slack of a loop there is, or of one chosen, on a button.
///
/// `slack = length - visible`, where `visible` is what `button_loop` gives for the same button.
///
/// - `length`: length of the loop that shows, not stretched (mm, 1 to 2000).
/// - `diameter`: diameter of the button (mm, 1 to 200).
/// - `thickness`: thickness of a flat button; not used for a ball (mm, 0 to 100).
/// - `cord`: thickness of the cord (mm, 0 to 50).
/// - `gap`: between the loop's two ends where they are sewn (mm, 0 to 500).
/// - `stretch`: how much the cord may stretch: 0.3 is 30 % (0 to 3).
/// - `shape`: shape of the button (one of `recloth_button_shape`).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_loop_slack(
    length: f64,
    diameter: f64,
    thickness: f64,
    cord: f64,
    gap: f64,
    stretch: f64,
    shape: i32,
    out: *mut recloth_loop_slack_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
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
                    &[
                        "length",
                        "diameter",
                        "thickness",
                        "cord",
                        "gap",
                        "stretch",
                        "shape",
                    ],
                    &[shape_bad],
                )?;
                out.write(recloth_loop_slack_t {
                    slack: answer.slack,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Temperature of liquors of several temperatures poured together, with the goods.
///
/// `T = sum(m c T) / sum(m c)`, water and liquor at 4.18 J/(g °C) and a gram a millilitre. What the vessel takes is left
/// out, so the bath comes out nearer the room's temperature than this: measure it. Pour hot into cold, slowly. Goods warmer
/// than 40 °C are doubted (68 may be in Fahrenheit), and so is less than 50 ml in all.
///
/// - `volumes_ml`: volume of each liquor (ml, 0.01 to 100000000, 1 to 100 items).
/// - `temperatures_c`: temperature of each (degC, 0 to 100, as many as volumes_ml).
/// - `goods_g`: dry mass of the goods (g, 0 to 1000000).
/// - `goods_temperature_c`: temperature of the goods (degC, 0 to 100).
/// - `goods_heat`: specific heat of the goods, J/(g °C) (0.5 to 4.5).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_mix_temperature(
    volumes_ml: *const f64,
    volumes_ml_count: usize,
    temperatures_c: *const f64,
    temperatures_c_count: usize,
    goods_g: f64,
    goods_temperature_c: f64,
    goods_heat: f64,
    out: *mut recloth_mix_temperature_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let volumes_ml = door::list("volumes_ml", volumes_ml, volumes_ml_count)?;
                let temperatures_c = door::list(
                    "temperatures_c",
                    temperatures_c,
                    temperatures_c_count,
                )?;
                let answer = recloth::wet::mix_temperature(
                    volumes_ml,
                    temperatures_c,
                    goods_g,
                    goods_temperature_c,
                    goods_heat,
                )?;
                out.write(recloth_mix_temperature_t {
                    temperature_c: answer.temperature_c,
                    volume_ml: answer.volume_ml,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Length of cloth for equal tapered panels with a nap and without.
///
/// All one way up, each panel takes its wide end of the cloth's width: `floor(cloth_width / wide)` side by side. Turned
/// every other, a narrow end lies beside each wide one and `n` panels take `wide + (n - 1) · (wide + narrow) / 2`. Either
/// way a row takes the panel's length, and there are as many rows as the count asks. On napped cloth (velvet, corduroy,
/// brushed cloth, some satins) and one-way prints a turned panel is of another shade: it cannot be put right afterwards. The
/// habit of a quarter of a yard more for a nap is sometimes nothing and sometimes a whole row: count.
///
/// Cloth below 200 mm is doubted: no cloth is woven so narrow (from memory).
///
/// - `wide`: width of a panel at its wide end, allowances included (mm, 1 to 100000).
/// - `narrow`: width at its narrow end, allowances included (mm, 0 to 100000, <= wide).
/// - `length`: length of a panel, allowances included (mm, 1 to 100000).
/// - `count`: number of panels (1 to 1000).
/// - `cloth_width`: width of the cloth between its selvedges (mm, 1 to 100000, >= wide).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_nap_layout(
    wide: f64,
    narrow: f64,
    length: f64,
    count: u32,
    cloth_width: f64,
    out: *mut recloth_nap_layout_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::nap::nap_layout(
                    wide,
                    narrow,
                    length,
                    count,
                    cloth_width,
                )?;
                out.write(recloth_nap_layout_t {
                    across_one_way: answer.across_one_way,
                    across_turned: answer.across_turned,
                    length_one_way: answer.length_one_way,
                    length_turned: answer.length_turned,
                    nap_extra: answer.nap_extra,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Doubts on a neck and a bust together.
///
/// A neck of more than half the bust (`NECK_OVER_HALF_BUST`) may be the two in each other's place, or half a bust.
///
/// - `neck`: girth of neck (mm, 1 to 100000).
/// - `bust`: girth of bust or chest (mm, 1 to 100000).
/// - `out`: receives the answer. The doubts (bits).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_neck_bust_doubts(
    neck: f64,
    bust: f64,
    out: *mut u64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::body::neck_bust_doubts(neck, bust)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Blade of a machine needle, and the thickest thread for it, from its metric number.
///
/// `blade = metric / 100`, `thread = 0.4 · blade`. A thread too thick for its needle frays and skips; a needle too thick for
/// its cloth leaves holes that stay, which old seams of silk, leather and coated cloth show for ever. A broken needle can
/// fly: change a bent one at once.
///
/// - `metric`: the larger number on a packet, 80 of 80/12 (20 to 300).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_needle_blade(
    metric: u32,
    out: *mut recloth_needle_blade_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::needle::needle_blade(metric)?;
                out.write(recloth_needle_blade_t {
                    blade: answer.blade,
                    thread: answer.thread,
                });
                Ok(())
            },
        )
    }
}
/// Metric number of a machine needle from its US size.
///
/// `metric = 60 + 5 · (us_size - 8)`: 8 is 60, 11 is 75, 18 is 110. The number is the blade's diameter in hundredths of a
/// millimetre (`needle_blade`). From 19 up the two scales no longer run together, so these sizes are not offered; read the
/// packet.
///
/// - `us_size`: the smaller number on a packet (8 to 18).
/// - `out`: receives the answer. Metric number, hundredths of a millimetre.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_needle_metric(
    us_size: u32,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::needle::needle_metric(us_size)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Girth of a garment of stretching cloth, from the share of its stretch that wearing is to use.
///
/// Worn, the garment is stretched to the body: `girth · (1 + share · stretch / 100) = body`. Taking `share · stretch`
/// percent off the body's girth instead gives a smaller garment that uses more of the stretch than was meant. It must also
/// go over the widest part on its way: `girth · (1 + stretch / 100)` must reach that. Seams and elastic stretch less than
/// the cloth: try a stitch that gives.
///
/// A body girth below 110 mm, less than a child's wrist (from memory), is doubted, and a stretch below 5 %: 0.5 may
/// be a share.
///
/// - `body`: girth of the body where it is worn (mm, 10 to 100000).
/// - `stretch_pct`: stretch of the cloth the way it goes round (%, 0 to 500).
/// - `widest`: widest girth it is pulled over; 0: not asked (mm, 0 to 100000).
/// - `share`: part of the stretch used in wear (0 to 1).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_negative_ease(
    body: f64,
    stretch_pct: f64,
    widest: f64,
    share: f64,
    out: *mut recloth_negative_ease_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::stretch::negative_ease(
                    body,
                    stretch_pct,
                    widest,
                    share,
                )?;
                out.write(recloth_negative_ease_t {
                    girth: answer.girth,
                    ease: answer.ease,
                    furthest: answer.furthest,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Neutraliser for the chlorine that goods still carry after draining and rinsing.
///
/// `amount = carried · chlorine / 100 · ratio · (1 + excess / 100) / (purity / 100)`. The ratio is that of the reaction named:
/// for thiosulfate crystals 7.00, 3.50 or 0.875 by what it ends as, which strength and acidity decide, so the largest is the
/// safe one. A test of field doses at pH 7 asked about a tenth more than the others' sums, hence the excess. Anhydrous
/// thiosulfate: 0.637 times as much. It is a separate bath of fresh water, and rinsing well is the main thing: this is for
/// the rest. Fibre is not asked here, as goods that ought never have met bleach need it most.
///
/// Doubted are liquor of more than 0.1 % (rinse again first), peroxide of more than 50 % and any purity of 1 % or less, and
/// an excess below 1 %.
///
/// - `carried_ml`: liquor that the goods carry after rinsing (ml, 0 to 1000000).
/// - `chlorine_pct`: available chlorine in it, grams in 100 ml (%, 0 to 0.6).
/// - `reaction`: what takes the chlorine away, and to what (one of `recloth_reaction`).
/// - `stage`: how far the goods are from the bleach (one of `recloth_stage`).
/// - `in_bath`: what else is in the fresh bath (one of `recloth_in_bath`).
/// - `purity_pct`: share of the pure stuff: 3 for household peroxide (%, 0.1 to 100).
/// - `excess_pct`: more than the reaction asks (%, 0 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_neutraliser(
    carried_ml: f64,
    chlorine_pct: f64,
    reaction: i32,
    stage: i32,
    in_bath: i32,
    purity_pct: f64,
    excess_pct: f64,
    out: *mut recloth_neutraliser_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
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
                out.write(recloth_neutraliser_t {
                    chlorine_g: answer.chlorine_g,
                    amount_g: answer.amount_g,
                    ratio: answer.ratio,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Widths of two fronts whose button line is shifted to one side of the centre front.
///
/// `narrow_to_line = front / 2 - shift + allowance` and `wide_to_line = front / 2 + shift + allowance`; the cut widths
/// add the extension (the button stand; facings are not included). Say which side is narrow and which laps over: the
/// sums are the same for both. The waistband's overlap must equal this extension. A sewing-machine manual asks for an
/// extension of at least three quarters of the button's diameter.
///
/// A front below 100 mm is doubted: it may be in centimetres.
///
/// - `front`: finished front, side seam to side seam (mm, 1 to 100000).
/// - `shift`: button line from the centre front (mm, 0 to 100000).
/// - `extension`: button stand, button line to the finished opening edge (mm, 0 to 1000).
/// - `allowance`: seam allowance at the side seams (mm, 0 to 1000).
/// - `wide_panel`: cloth there is for the wide front, button line to side cut edge (mm, 1 to 100000).
/// - `dart_distance`: middle of each front's dart from the centre front; half the front where there is none (mm, 0 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_off_centre_opening(
    front: f64,
    shift: f64,
    extension: f64,
    allowance: f64,
    wide_panel: f64,
    dart_distance: f64,
    out: *mut recloth_off_centre_opening_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::opening::off_centre_opening(
                    front,
                    shift,
                    extension,
                    allowance,
                    wide_panel,
                    dart_distance,
                )?;
                out.write(recloth_off_centre_opening_t {
                    narrow_to_line: answer.narrow_to_line,
                    wide_to_line: answer.wide_to_line,
                    narrow_cut: answer.narrow_cut,
                    wide_cut: answer.wide_cut,
                    largest_shift: answer.largest_shift,
                    dart_to_narrow: answer.dart_to_narrow,
                    dart_to_wide: answer.dart_to_wide,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Reflectance of cloth dyed over the colour it has, as a band from pale to deep.
///
/// Depths of shade add up: `K/S = (K/S of the ground) + (K/S of the dye)`. Give the dye's as a low and a high, from swatches
/// on white cloth of the same fibre: water, heat, mordant and the next batch all move it. Ask once for each of red, green
/// and blue light. A dye only takes light away, so no part gets lighter. Not foretold: a fibre that takes dye otherwise, a
/// finish, a ground that bleeds, hues that alkali or iron turn. Judge dry cloth, by daylight.
///
/// - `ground`: reflectance of the cloth as it is (0.001 to 1).
/// - `low`: least that the dye adds, K/S (0 to 100).
/// - `high`: most that the dye adds, K/S (0 to 100, >= low).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_overdye(
    ground: f64,
    low: f64,
    high: f64,
    out: *mut recloth_overdye_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::shade::overdye(ground, low, high)?;
                out.write(recloth_overdye_t {
                    pale: answer.pale,
                    deep: answer.deep,
                    pale_l: answer.pale_l,
                    deep_l: answer.deep_l,
                });
                Ok(())
            },
        )
    }
}
/// Mass of a dye, mordant or assistant from its percentage on weight of fibre.
///
/// `amount = mass · pct / 100`, the mass being that of the dry goods. Say of a plant dyestuff whether it is weighed
/// fresh, frozen or dry: the percentages differ by several times. Not for bleach, whose strength and time decide. Above 100 %
/// or below 0.1 %, and for goods of less than 2 g, there are doubts.
///
/// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
/// - `pct`: percentage on weight of fibre (%, 0 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_owf(
    mass_g: f64,
    pct: f64,
    out: *mut recloth_owf_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::wet::owf(mass_g, pct)?;
                out.write(recloth_owf_t {
                    amount_g: answer.amount_g,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Area and sides of a panel measured at stations along a grain line, left and right of it.
///
/// The fast way for an uneven or traced panel: draw one thread's line down it, mark stations, and measure square to the line to
/// both edges. Between stations the sides are taken as straight, so put one at every corner and more where an edge curves; the
/// area is the sum of trapeziums. `left_bow` and `right_bow` tell how far each station lies beyond (positive) or within the
/// straight line between its side's ends, measured across as the readings are: a reading out of row is a slip of the tape, or a side that is no straight seam. What
/// lies off the line makes every width wrong: check that the thread runs true.
///
/// - `stations`: places along the grain line, rising (mm, -100000 to 100000, 2 to 200 items).
/// - `left`: from the line to the left edge at each (mm, 0 to 100000, as many as stations).
/// - `right`: from the line to the right edge at each (mm, 0 to 100000, as many as stations).
/// - `left_bow`: filled: left edge beyond its straight line; negative within (mm, as many as stations).
/// - `right_bow`: filled: right edge beyond its straight line (mm, as many as stations).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_by_offsets(
    stations: *const f64,
    stations_count: usize,
    left: *const f64,
    left_count: usize,
    right: *const f64,
    right_count: usize,
    left_bow: *mut f64,
    left_bow_count: usize,
    right_bow: *mut f64,
    right_bow_count: usize,
    out: *mut recloth_panel_by_offsets_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let stations = door::list("stations", stations, stations_count)?;
                let left = door::list("left", left, left_count)?;
                let right = door::list("right", right, right_count)?;
                let left_bow = door::list_to_fill("left_bow", left_bow, left_bow_count)?;
                let right_bow = door::list_to_fill(
                    "right_bow",
                    right_bow,
                    right_bow_count,
                )?;
                let answer = recloth::offsets::panel_by_offsets(
                    stations,
                    left,
                    right,
                    left_bow,
                    right_bow,
                )?;
                out.write(recloth_panel_by_offsets_t {
                    area: answer.area,
                    length: answer.length,
                    widest: answer.widest,
                    narrowest: answer.narrowest,
                    largest_bow: answer.largest_bow,
                });
                Ok(())
            },
        )
    }
}
/// Corners and area of a panel measured by tape in triangles, with its spare readings checked.
///
/// Number the corners around the panel, from 0, in either direction; corner 1 is `base` from corner 0. Every further
/// corner, in order, is read from two corners before it, `starts` and `ends`, and lies to the left (0) or right (1) as
/// seen from the start towards the end. Any other distance between two corners is a spare reading: at least one, the
/// other diagonal, tells a misread tape, and cloth that lay off grain.
///
/// `along` and `across` get a place for each corner: corner 0 at 0, 0 and corner 1 at `base`, 0; left is positive across.
/// `misfits` gets a length for each spare reading: as the corners have it, less the reading.
///
/// - `base`: from corner 0 to corner 1 (mm, 1 to 100000).
/// - `starts`: corner the first reading is from (0 to 63, 1 to 62 items).
/// - `ends`: corner the second reading is from (0 to 63, as many as starts).
/// - `from_start`: first reading of each further corner (mm, 1 to 100000, as many as starts).
/// - `from_end`: second reading of each further corner (mm, 1 to 100000, as many as starts).
/// - `sides`: 0 left, 1 right, seen from start to end (0 to 1, as many as starts).
/// - `spare_starts`: one corner of each spare reading (0 to 63, 0 to 200 items).
/// - `spare_ends`: the other corner (0 to 63, as many as spare_starts).
/// - `spare_readings`: distance between them (mm, 1 to 100000, as many as spare_starts).
/// - `along`: filled: each corner along the base (mm, 2 more than starts).
/// - `across`: filled: each corner square to it (mm, 2 more than starts).
/// - `misfits`: filled: what each spare reading misses (mm, as many as spare_starts).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_panel_by_triangles(
    base: f64,
    starts: *const u32,
    starts_count: usize,
    ends: *const u32,
    ends_count: usize,
    from_start: *const f64,
    from_start_count: usize,
    from_end: *const f64,
    from_end_count: usize,
    sides: *const u32,
    sides_count: usize,
    spare_starts: *const u32,
    spare_starts_count: usize,
    spare_ends: *const u32,
    spare_ends_count: usize,
    spare_readings: *const f64,
    spare_readings_count: usize,
    along: *mut f64,
    along_count: usize,
    across: *mut f64,
    across_count: usize,
    misfits: *mut f64,
    misfits_count: usize,
    out: *mut recloth_panel_by_triangles_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let starts = door::list("starts", starts, starts_count)?;
                let ends = door::list("ends", ends, ends_count)?;
                let from_start = door::list("from_start", from_start, from_start_count)?;
                let from_end = door::list("from_end", from_end, from_end_count)?;
                let sides = door::list("sides", sides, sides_count)?;
                let spare_starts = door::list(
                    "spare_starts",
                    spare_starts,
                    spare_starts_count,
                )?;
                let spare_ends = door::list("spare_ends", spare_ends, spare_ends_count)?;
                let spare_readings = door::list(
                    "spare_readings",
                    spare_readings,
                    spare_readings_count,
                )?;
                let along = door::list_to_fill("along", along, along_count)?;
                let across = door::list_to_fill("across", across, across_count)?;
                let misfits = door::list_to_fill("misfits", misfits, misfits_count)?;
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
                    along,
                    across,
                    misfits,
                )?;
                out.write(recloth_panel_by_triangles_t {
                    area: answer.area,
                    perimeter: answer.perimeter,
                    largest_misfit: answer.largest_misfit,
                    weakest_corner: answer.weakest_corner,
                    weakest_per_mm: answer.weakest_per_mm,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// A length as it is written.
///
/// Whole and mixed numbers, fractions (`3/8`, `⅜`, `3⁄8`, `31-3/8`), a decimal point or comma, a leading minus sign
/// for the whole. Units: mm, cm, m; in, `"`, ft, `'`, yd; their names in full, one or many; upper or lower case, so `M`
/// is metres; a full stop after an abbreviation. Spaces of any width or none. Several units in one length, each once,
/// larger first, all metric or all imperial: `2 ft 3 1/8 in`, `1 m 20 cm`.
///
/// A number without a unit is refused, zero too, and so are thousands marks: `1,234` may be either. A fraction is less
/// than one, for `313/8` is more likely `31 3/8` without its space. At most 64 characters.
///
/// Metric lengths are correctly rounded; imperial ones are counted in inches, then multiplied by 25.4 once, so that
/// `31 3/8 in` is `31.375 * INCH`.
///
/// - `text`: a length as written (UTF-8, closed by a NUL).
/// - `out`: receives the answer. The length (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_parse_length(
    text: *const c_char,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let text = door::text("text", text)?;
                let answer = recloth::tape::parse_length(text)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// True places of points in a photograph of cloth that lies flat beside a reference of four known points.
///
/// The picture of a plane is its projective map, and four points fix it: the corners of a sheet of paper of known size, say,
/// given in order round it in the picture and in the same order as they truly lie. `along` and `across` get the true place of
/// each point, `scales` the length that one picture unit stands for there, `√` of the map's change of area. Only what lies
/// flat in the reference's own plane is mapped truly, and the bow that a lens gives straight lines is not taken out: stand
/// back, point the camera straight down, use the middle of the picture. Beyond the reference errors grow fast: a slip of
/// 1 picture unit at a corner moves a point one size away by several. Measure one length by tape to see.
///
/// - `picture_x`: reference in the picture, in pixels or any unit (-100000 to 100000, 4 to 4 items).
/// - `picture_y`: the same, up or down (-100000 to 100000, 4 to 4 items).
/// - `true_x`: reference as it truly lies, along (mm, -100000 to 100000, 4 to 4 items).
/// - `true_y`: the same, across (mm, -100000 to 100000, 4 to 4 items).
/// - `x`: points to map, in the picture (-1000000 to 1000000, 1 to 1000 items).
/// - `y`: the same, up or down (-1000000 to 1000000, as many as x).
/// - `along`: filled: true place of each point, along (mm, as many as x).
/// - `across`: filled: true place of each point, across (mm, as many as x).
/// - `scales`: filled: length that one picture unit stands for there (mm, as many as x).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_photo_map(
    picture_x: *const f64,
    picture_x_count: usize,
    picture_y: *const f64,
    picture_y_count: usize,
    true_x: *const f64,
    true_x_count: usize,
    true_y: *const f64,
    true_y_count: usize,
    x: *const f64,
    x_count: usize,
    y: *const f64,
    y_count: usize,
    along: *mut f64,
    along_count: usize,
    across: *mut f64,
    across_count: usize,
    scales: *mut f64,
    scales_count: usize,
    out: *mut recloth_photo_map_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let picture_x = door::list("picture_x", picture_x, picture_x_count)?;
                let picture_y = door::list("picture_y", picture_y, picture_y_count)?;
                let true_x = door::list("true_x", true_x, true_x_count)?;
                let true_y = door::list("true_y", true_y, true_y_count)?;
                let x = door::list("x", x, x_count)?;
                let y = door::list("y", y, y_count)?;
                let along = door::list_to_fill("along", along, along_count)?;
                let across = door::list_to_fill("across", across, across_count)?;
                let scales = door::list_to_fill("scales", scales, scales_count)?;
                let answer = recloth::photo::photo_map(
                    picture_x,
                    picture_y,
                    true_x,
                    true_y,
                    x,
                    y,
                    along,
                    across,
                    scales,
                )?;
                out.write(recloth_photo_map_t {
                    reach: answer.reach,
                    coarsest: answer.coarsest,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Length that scraps give when they are joined end to end, and how few of them reach.
///
/// Each join takes an allowance off both its scraps: `joined = sum of lengths - 2 · allowance · (scraps - 1)`. Two allowances
/// a join are easily forgotten, and then the strip is short when it is too late. Count in `needed` what its own ends take.
/// Keep joins off dart points, pockets and the middle of a back; under a band, in gathers or at a seam they are not seen.
/// Grain, face and nap must run alike in all scraps.
///
/// - `lengths`: the scraps, raw edge to raw edge (mm, 1 to 100000, 1 to 100 items).
/// - `allowance`: seam allowance at each edge of a join (mm, 0 to 1000).
/// - `needed`: length needed, allowances of its ends included (mm, 1 to 1000000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_pieced_length(
    lengths: *const f64,
    lengths_count: usize,
    allowance: f64,
    needed: f64,
    out: *mut recloth_pieced_length_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let lengths = door::list("lengths", lengths, lengths_count)?;
                let answer = recloth::piecing::pieced_length(
                    lengths,
                    allowance,
                    needed,
                )?;
                out.write(recloth_pieced_length_t {
                    joined: answer.joined,
                    spare: answer.spare,
                    joins: answer.joins,
                    fewest: answer.fewest,
                });
                Ok(())
            },
        )
    }
}
/// Width of the strip that covers a cord for piping.
///
/// `π · (cord + thickness) + 2 · allowance`: once round the cord in the middle of the cloth, and an allowance on both sides.
/// Stitched close to the cord, it is a little more than is covered, which the stitching needs. Shrink cotton cord first.
///
/// - `cord`: diameter of the cord (mm, 0 to 200).
/// - `allowance`: seam allowance beside it (mm, 0 to 1000).
/// - `thickness`: thickness of the strip's cloth (mm, 0 to 20).
/// - `out`: receives the answer. Width to cut, square to the edges (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_piping_width(
    cord: f64,
    allowance: f64,
    thickness: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::bias::piping_width(cord, allowance, thickness)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Plant matter for a dye bath, as a range, from a recipe weighed fresh or dry.
///
/// `mass · pct / 100`, low and high; where the recipe weighs it otherwise than it is at hand, turned by the range of fresh
/// to dry. Frozen counts as fresh. Season, soil, part of the plant and water decide the colour more than the scale: dye a
/// swatch. More extractions of the same matter give paler baths of another hue, so they are not added up here. Not every
/// plant is harmless: know what it is, never cook it in vessels for food. Below 1 %, above 100 % of what is dry at hand, and
/// for goods of less than 2 g, there are doubts.
///
/// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
/// - `low_pct`: percentage on weight of fibre, least (%, 0.1 to 2000).
/// - `high_pct`: percentage on weight of fibre, most (%, 0.1 to 2000, >= low_pct).
/// - `recipe`: how the recipe weighs it (one of `recloth_basis`).
/// - `at_hand`: how it is at hand (one of `recloth_basis`).
/// - `fresh_per_dry_low`: grams fresh that dry to one, least (1 to 20).
/// - `fresh_per_dry_high`: grams fresh that dry to one, most (1 to 20, >= fresh_per_dry_low).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_plant_dyestuff(
    mass_g: f64,
    low_pct: f64,
    high_pct: f64,
    recipe: i32,
    at_hand: i32,
    fresh_per_dry_low: f64,
    fresh_per_dry_high: f64,
    out: *mut recloth_plant_dyestuff_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
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
                out.write(recloth_plant_dyestuff_t {
                    low_g: answer.low_g,
                    high_g: answer.high_g,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Strength of several liquors of one and the same stuff poured together.
///
/// `strength = sum(volume · strength) / sum(volume)`. Only for liquors of the same dye, mordant or binder: nothing is ever
/// poured to bleach, and unlike baths are not mixed to be rid of them.
///
/// - `volumes_ml`: volume of each liquor (ml, 0.01 to 100000000, 1 to 100 items).
/// - `strengths_pct`: strength of each (%, 0 to 100, as many as volumes_ml).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_pooled_strength(
    volumes_ml: *const f64,
    volumes_ml_count: usize,
    strengths_pct: *const f64,
    strengths_pct_count: usize,
    out: *mut recloth_pooled_strength_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let volumes_ml = door::list("volumes_ml", volumes_ml, volumes_ml_count)?;
                let strengths_pct = door::list(
                    "strengths_pct",
                    strengths_pct,
                    strengths_pct_count,
                )?;
                let answer = recloth::wet::pooled_strength(volumes_ml, strengths_pct)?;
                out.write(recloth_pooled_strength_t {
                    strength_pct: answer.strength_pct,
                    volume_ml: answer.volume_ml,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Spread of a sleeve cap that is slashed and opened for gathers between two notches.
///
/// `flat = zone · ratio`, `spread_each = (flat - zone) / slashes`. Where the sleeve is cut already, a strip is let in instead,
/// on the sleeve's own grain: one as wide as `strip` allows a ratio of `(zone + strip) / zone`. A sleeve still to be cut needs
/// none. How much the cap is raised as well is taste: fold it in paper first.
///
/// - `zone`: seam line between the notches, where the gathers go (mm, 1 to 10000).
/// - `ratio`: zone after spreading over before (1 to 10).
/// - `slashes`: number of slashes (1 to 100).
/// - `strip`: cloth there is to let in, allowances taken off; 0: none (mm, 0 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_puff_spread(
    zone: f64,
    ratio: f64,
    slashes: u32,
    strip: f64,
    out: *mut recloth_puff_spread_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::sleeve::puff_spread(zone, ratio, slashes, strip)?;
                out.write(recloth_puff_spread_t {
                    flat: answer.flat,
                    added: answer.added,
                    spread_each: answer.spread_each,
                    strip_ratio: answer.strip_ratio,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Reflectance of a depth of shade K/S: `k_over_s` turned round.
///
/// `R = 1 + K/S - √((K/S)² + 2 K/S)`, worked as the reciprocal of `1 + K/S + √(...)`, which loses no digits near black.
///
/// - `k_over_s`: depth of shade (0 to 500).
/// - `out`: receives the answer. Reflectance.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_reflectance(
    k_over_s: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::shade::reflectance(k_over_s)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Strength of a dyeing against another, by their depths of shade, in percent.
///
/// - `k_over_s`: depth of shade of the dyeing (0 to 500).
/// - `standard`: depth of shade it is held against (0.000001 to 500).
/// - `out`: receives the answer. Relative strength (%).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_relative_strength(
    k_over_s: f64,
    standard: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::shade::relative_strength(k_over_s, standard)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Width of the panels still to be made, when the others are given.
///
/// `remaining = (girth + ease - other_width) / parts + intake`, inside the seams: what the given panels leave of the
/// girth, shared over the rest, and the darts or pleats of each added.
///
/// For doubts on the girth see `girth_doubts`.
///
/// - `girth`: girth of the body (mm, 1 to 100000).
/// - `ease`: what the garment has more (mm, -10000 to 10000).
/// - `other_width`: the given panels together, inside seams and darts (mm, 0 to 100000).
/// - `parts`: number of panels still to be made, all equal (1 to 64).
/// - `intake`: darts or pleats in each of them (mm, 0 to 10000).
/// - `out`: receives the answer. The width of each remaining panel inside the seams (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_remaining_width(
    girth: f64,
    ease: f64,
    other_width: f64,
    parts: u32,
    intake: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::body::remaining_width(
                    girth,
                    ease,
                    other_width,
                    parts,
                    intake,
                )?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Lengths rounded up to whole repeats of the pattern, so that all of them begin at the same place in it.
///
/// `each = repeat · ceil(length / repeat)`. The first cut may have to move to where the pattern is wanted: buy one repeat
/// more than the total.
///
/// - `length`: length needed, allowances included (mm, 1 to 100000).
/// - `repeat`: height of the pattern's repeat (mm, 1 to 10000).
/// - `count`: how many lengths (1 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_repeats(
    length: f64,
    repeat: f64,
    count: u32,
    out: *mut recloth_repeats_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::quantity::repeats(length, repeat, count)?;
                out.write(recloth_repeats_t {
                    repeats: answer.repeats,
                    each: answer.each,
                    total: answer.total,
                    waste: answer.waste,
                });
                Ok(())
            },
        )
    }
}
/// Strip of ribbing for a neck, a cuff or a waist.
///
/// `round = edge · share`, joined with an allowance at both ends; folded along its middle, `cut_width = 2 · depth + 2 ·
/// allowance`. A round neck takes less than a waist, lest it stand away. Ribbings differ: pin a strip round the edge first.
/// A neck must still pass over the head, see
/// `head_opening`.
///
/// - `edge`: edge that it is sewn to (mm, 1 to 100000).
/// - `depth`: finished depth (mm, 1 to 1000).
/// - `allowance`: seam allowance at each edge and end (mm, 0 to 100).
/// - `share`: strip over edge (0.3 to 1).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_ribbing(
    edge: f64,
    depth: f64,
    allowance: f64,
    share: f64,
    out: *mut recloth_ribbing_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::elastic::ribbing(edge, depth, allowance, share)?;
                out.write(recloth_ribbing_t {
                    round: answer.round,
                    cut_length: answer.cut_length,
                    cut_width: answer.cut_width,
                    stretch_pct: answer.stretch_pct,
                });
                Ok(())
            },
        )
    }
}
/// Rinses that thin the liquor carried over to a share of what it was, as a range.
///
/// Each rinse leaves `carried / (carried + fresh)` of it. What the goods carry between rinses is the main term and is never
/// known well: give a low and a high. It tells of the liquor between the fibres only; what the fibre itself holds leaves
/// in its own time, so rinse until the water runs clear, or has no smell, whatever is printed here. Less fresh water than the
/// goods carry is doubted (litres?), and so is a share above a half (1 for 1 %?). The first rinse after a hot bath is warm.
///
/// - `carried_low_ml`: least liquor carried from bath to bath (ml, 0.01 to 10000000).
/// - `carried_high_ml`: most liquor carried (ml, 0.01 to 10000000, >= carried_low_ml).
/// - `fresh_ml`: fresh water each rinse (ml, 0.01 to 100000000).
/// - `share_left`: share of the liquor that may be left (0.000000001 to 1).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_rinses(
    carried_low_ml: f64,
    carried_high_ml: f64,
    fresh_ml: f64,
    share_left: f64,
    out: *mut recloth_rinses_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::wet::rinses(
                    carried_low_ml,
                    carried_high_ml,
                    fresh_ml,
                    share_left,
                )?;
                out.write(recloth_rinses_t {
                    rinses_low: answer.rinses_low,
                    rinses_high: answer.rinses_high,
                    left: answer.left,
                    water_ml: answer.water_ml,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Lengths rounded so that the rounded lengths add up to the rounded sum.
///
/// Each is rounded down; what is then missing from the rounded sum is given, a graduation each, to the lengths that lost
/// most, of equals to the earlier. Where two edges are sewn together, round one and give the other the same lengths.
///
/// - `lengths`: the lengths (mm, 0 to 100000, 1 to 1000 items).
/// - `graduation`: distance between two marks: 3.175 is 1/8 in (mm, 0.001 to 10000).
/// - `tapes`: filled: the rounded lengths (mm, as many as lengths).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_round_set(
    lengths: *const f64,
    lengths_count: usize,
    graduation: f64,
    tapes: *mut f64,
    tapes_count: usize,
    out: *mut recloth_rounded_set_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let lengths = door::list("lengths", lengths, lengths_count)?;
                let tapes = door::list_to_fill("tapes", tapes, tapes_count)?;
                let answer = recloth::tape::round_set(lengths, graduation, tapes)?;
                out.write(recloth_rounded_set_t {
                    total: answer.total,
                    largest_change: answer.largest_change,
                });
                Ok(())
            },
        )
    }
}
/// A length rounded to a graduation of the tape.
///
/// A length within a thousand-millionth of a graduation, or of the middle between two, counts as being there: binary
/// arithmetic leaves that much dust.
///
/// - `length`: the length (mm, -10000000 to 10000000).
/// - `graduation`: distance between two marks: 3.175 is 1/8 in (mm, 0.001 to 10000).
/// - `way`: which graduation (one of `recloth_rounding`).
/// - `out`: receives the answer. The rounded length (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_round_to(
    length: f64,
    graduation: f64,
    way: i32,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let (way, way_bad) = read_rounding("way", way);
                let answer = door::settle(
                    recloth::tape::round_to(length, graduation, way),
                    &["length", "graduation", "way"],
                    &[way_bad],
                )?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Strips to cut for a ruffle along an edge.
///
/// `flat = edge · ratio`, `cut_width = depth + allowance + hem`, and as many strips as their length, less an allowance at both
/// ends, makes that up: `strips = ceil(flat / (strip - 2 · allowance))`. A ruffle along an edge with ends has one join fewer
/// and narrow hems instead. Strips across the cloth gather softly, along the selvedge crisply; on the bias no hem frays.
///
/// A ratio below 1.2 or above 4 is doubted (common practice, no source).
///
/// - `edge`: edge that it is sewn to (mm, 1 to 100000).
/// - `ratio`: strip over edge (1 to 10).
/// - `depth`: finished depth, seam to hem edge (mm, 1 to 10000).
/// - `strip`: length of one strip: the cloth's width, or a scrap's length (mm, 10 to 100000).
/// - `allowance`: seam allowance at the gathered edge and each join (mm, 0 to 1000).
/// - `hem`: hem allowance, turn included (mm, 0 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_ruffle(
    edge: f64,
    ratio: f64,
    depth: f64,
    strip: f64,
    allowance: f64,
    hem: f64,
    out: *mut recloth_ruffle_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fullness::ruffle(
                    edge,
                    ratio,
                    depth,
                    strip,
                    allowance,
                    hem,
                )?;
                out.write(recloth_ruffle_t {
                    flat: answer.flat,
                    cut_width: answer.cut_width,
                    strips: answer.strips,
                    cloth_length: answer.cloth_length,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Screen level of an amount of light: `linear_light` turned round.
///
/// - `light`: share of the most light (0 to 1).
/// - `out`: receives the answer. Level, 0 to 255, not rounded.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_screen_level(
    light: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::colour::screen_level(light)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Cloth added at the two edges of a seam that is to hold an inverted pleat.
///
/// The first edge gets one depth and its allowance, the next one three depths and its allowance: the seam then lies hidden
/// in an inner fold, not in the middle of the underlay. At a gored seam both are added along the slanted edge.
///
/// - `depth`: depth of each of the pleat's two folds (mm, 0.1 to 10000).
/// - `allowance`: seam allowance of each edge (mm, 0 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_seam_pleat(
    depth: f64,
    allowance: f64,
    out: *mut recloth_seam_pleat_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::pleat::seam_pleat(depth, allowance)?;
                out.write(recloth_seam_pleat_t {
                    first_edge: answer.first_edge,
                    next_edge: answer.next_edge,
                    intake: answer.intake,
                });
                Ok(())
            },
        )
    }
}
/// Upper edges of a band made of straight sections that slant at their joins.
///
/// What the upper edge is shorter by is shared by the slanted ends: `slant = (sum of lengths - top) / slanted ends`, at
/// the angle `atan(slant / depth)` from the square. At each join the lower edge peaks, and the upper edge notches, by
/// twice that angle, so the edges are trued to a curve or the band is cut curved (`curved_band`). A side seam runs on
/// straight into the band only if the end's angle equals the skirt's side seam's angle from the square at the waist. An
/// end that overlaps must be square.
///
/// - `lengths`: finished lower edge of each section, in order (mm, 1 to 100000, 1 to 100 items).
/// - `depth`: finished depth, square to the lower edge (mm, 1 to 10000).
/// - `top`: finished upper edge of all sections together (mm, 1 to 10000000).
/// - `ends`: which free ends are square (one of `recloth_square_ends`).
/// - `tops`: filled: finished upper edge of each section (mm, as many as lengths).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_sectioned_band(
    lengths: *const f64,
    lengths_count: usize,
    depth: f64,
    top: f64,
    ends: i32,
    tops: *mut f64,
    tops_count: usize,
    out: *mut recloth_sectioned_band_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let lengths = door::list("lengths", lengths, lengths_count)?;
                let (ends, ends_bad) = read_square_ends("ends", ends);
                let tops = door::list_to_fill("tops", tops, tops_count)?;
                let answer = door::settle(
                    recloth::band::sectioned_band(lengths, depth, top, ends, tops),
                    &["lengths", "depth", "top", "ends", "tops"],
                    &[ends_bad],
                )?;
                out.write(recloth_sectioned_band_t {
                    slant: answer.slant,
                    end_angle_deg: answer.end_angle_deg,
                    join_kink_deg: answer.join_kink_deg,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Part of a ring for a shaped band, or for any cone or frustum.
///
/// `outer_radius = lower · depth / (lower - upper)`, `inner_radius = outer_radius - depth`, angle in radians
/// `(lower - upper) / depth`. For a straight band there is no such ring: see `straight_band`. A band that flares
/// upwards is the same ring turned over: give its longer edge as `lower`.
///
/// - `lower`: finished length of the lower edge (mm, 1 to 100000).
/// - `upper`: finished length of the upper edge (mm, 0 to 100000, < lower).
/// - `depth`: from edge to edge, measured along the cloth (mm, 1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_shaped_band(
    lower: f64,
    upper: f64,
    depth: f64,
    out: *mut recloth_shaped_band_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::band::shaped_band(lower, upper, depth)?;
                out.write(recloth_shaped_band_t {
                    inner_radius: answer.inner_radius,
                    outer_radius: answer.outer_radius,
                    angle_deg: answer.angle_deg,
                    sagitta: answer.sagitta,
                    area_mm2: answer.area_mm2,
                });
                Ok(())
            },
        )
    }
}
/// One panel's share of a girth.
///
/// `share = (girth + ease) / parts`, inside the seams. Ease is negative in cloth that stretches.
///
/// For doubts on the girth see `girth_doubts`.
///
/// - `girth`: girth of the body (mm, 1 to 100000).
/// - `ease`: what the garment has more (mm, -10000 to 10000).
/// - `parts`: number of equal panels (1 to 64).
/// - `out`: receives the answer. The width of each panel inside the seams (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_share(
    girth: f64,
    ease: f64,
    parts: u32,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::body::share(girth, ease, parts)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Cloth and rows for shirring with elastic thread.
///
/// `flat = finished · 100 / drawn_pct`, and `rows = floor(depth / pitch) + 1`, the first and last at the edges of the depth.
/// How far it draws up depends on cloth, tension and number of rows, and steam draws it further: shirr a square of known
/// width and measure.
///
/// - `finished`: width when drawn up, not stretched (mm, 1 to 100000).
/// - `depth`: from the first row to the last (mm, 0 to 10000).
/// - `pitch`: from row to row (mm, 1 to 1000).
/// - `drawn_pct`: what the cloth draws up to (%, 10 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_shirring(
    finished: f64,
    depth: f64,
    pitch: f64,
    drawn_pct: f64,
    out: *mut recloth_shirring_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::elastic::shirring(
                    finished,
                    depth,
                    pitch,
                    drawn_pct,
                )?;
                out.write(recloth_shirring_t {
                    flat: answer.flat,
                    ratio: answer.ratio,
                    rows: answer.rows,
                    stitching: answer.stitching,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// What washing does to a shell and its lining, and how to cut both for it.
///
/// Both lengths run from the same upper seam. Sewn as given, each becomes `length · (1 + change / 100)`; to have them as
/// given after washing, each is cut `length / (1 + change / 100)`. Ask once for the length and once for the width.
///
/// A change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.
///
/// - `shell`: finished shell (mm, 0 to 1000000).
/// - `lining`: finished lining (mm, 0 to 1000000).
/// - `shell_change_pct`: dimensional change of the shell's cloth (%, -90 to 100).
/// - `lining_change_pct`: dimensional change of the lining's cloth (%, -90 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_shrink_pair(
    shell: f64,
    lining: f64,
    shell_change_pct: f64,
    lining_change_pct: f64,
    out: *mut recloth_shrink_pair_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::cloth::shrink_pair(
                    shell,
                    lining,
                    shell_change_pct,
                    lining_change_pct,
                )?;
                out.write(recloth_shrink_pair_t {
                    shell_after: answer.shell_after,
                    lining_after: answer.lining_after,
                    below: answer.below,
                    shell_cut: answer.shell_cut,
                    lining_cut: answer.lining_cut,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Step from one size to the next, all round and at each edge of the pattern.
///
/// `step = (larger - smaller) / steps`, `each_edge = step / edges`. Even steps only: in published series the step itself grows
/// in the larger sizes, and lengths do not grow as girths do.
///
/// A girth below 110 mm, less than a child's wrist (from memory), is doubted.
///
/// - `smaller`: girth of the smaller size (mm, 1 to 100000).
/// - `larger`: girth of the larger size (mm, 1 to 100000, >= smaller).
/// - `steps`: number of steps from one to the other (1 to 100).
/// - `edges`: edges that share a step, two to a seam (1 to 64).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_size_step(
    smaller: f64,
    larger: f64,
    steps: u32,
    edges: u32,
    out: *mut recloth_size_step_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::alteration::size_step(
                    smaller,
                    larger,
                    steps,
                    edges,
                )?;
                out.write(recloth_size_step_t {
                    step: answer.step,
                    each_edge: answer.each_edge,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Skew of cloth: how far a weft thread has run off square, in percent of the width.
///
/// `skew = 100 · shift / width`. Pull or follow one weft thread across; measure along the selvedge how far its far end
/// lies from square. Positive and negative are the two ways it may lean.
///
/// - `shift`: along the selvedge, from square to the thread (mm, -100000 to 100000).
/// - `width`: width of the cloth, square across (mm, 1 to 100000).
/// - `out`: receives the answer. Skew (%).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_skew(
    shift: f64,
    width: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::cloth::skew(shift, width)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Skew of a square marked on the cloth, from its two diagonals after washing, in percent.
///
/// `skew = 200 · (first - second) / (first + second)`. For a small skew it is the shift of a side in percent of the side,
/// as `skew` gives; of a large one it falls short by a quarter of the square: 9.975 for a side shifted by 10 %.
///
/// - `first`: one diagonal of the square (mm, 1 to 100000).
/// - `second`: the other (mm, 1 to 100000).
/// - `out`: receives the answer. Skew (%).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_skew_diagonals(
    first: f64,
    second: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::cloth::skew_diagonals(first, second)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Distance between the snips of a curved seam allowance.
///
/// Turned under, an allowance along an inward curve such as a neckline is too short and each snip opens; along an
/// outward one it is too long and each notch cut out closes. Either way a stretch of seam `s` opens or closes by
/// `2 · allowance · s / radius` at the raw edge, so `spacing = opening · radius / (2 · allowance)`. A turned edge is
/// nearly straight between snips and leaves the curve there by `spacing² / (8 · radius)`. Staystitch first, snip to a
/// thread's breadth from it and no further. The blades are sharp: cut away from the hand that holds.
///
/// - `radius`: radius of the seam line (mm, 1 to 1000000).
/// - `allowance`: seam allowance, after trimming (mm, 0.1 to 1000).
/// - `opening`: how far a snip may open, or how wide a notch is (mm, 0.1 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_snip_spacing(
    radius: f64,
    allowance: f64,
    opening: f64,
    out: *mut recloth_snip_spacing_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::seam::snip_spacing(radius, allowance, opening)?;
                out.write(recloth_snip_spacing_t {
                    spacing: answer.spacing,
                    flat: answer.flat,
                });
                Ok(())
            },
        )
    }
}
/// Number of buttons whose even spacing comes nearest to a wanted pitch.
///
/// Of the two whole numbers of spaces about `(last - first) / pitch` the one is taken whose pitch differs less from that
/// wanted; on a tie the closer spacing. Two buttons at least.
///
/// - `first`: place of the first, from the edge's start (mm, 0 to 100000).
/// - `last`: place of the last (mm, 0 to 100000, > first).
/// - `pitch`: pitch wanted (mm, 1 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_spacing_by_pitch(
    first: f64,
    last: f64,
    pitch: f64,
    out: *mut recloth_spacing_by_pitch_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fastening::spacing_by_pitch(first, last, pitch)?;
                out.write(recloth_spacing_by_pitch_t {
                    count: answer.count,
                    pitch: answer.pitch,
                });
                Ok(())
            },
        )
    }
}
/// Places of buttons from a first to a last, one of them at a place that must be met.
///
/// The bust line, or a waist seam, fixes one button. The places before it are even among themselves, and so are those
/// after it; how many go on each side is chosen so that the two pitches differ least (on a tie, fewer before). Where they
/// differ too much to please, move the first or the last, or change the number.
///
/// - `first`: place of the first, from the edge's start (mm, 0 to 100000).
/// - `last`: place of the last (mm, 0 to 100000, > first).
/// - `through`: place that one of them must have (mm, 0 to 100000, > first, < last).
/// - `count`: how many, the first and last included (3 to 1000).
/// - `places`: filled: the places, in order (mm, as many as count).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_spacing_through(
    first: f64,
    last: f64,
    through: f64,
    count: u32,
    places: *mut f64,
    places_count: usize,
    out: *mut recloth_spacing_through_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let places = door::list_to_fill("places", places, places_count)?;
                let answer = recloth::closure::spacing_through(
                    first,
                    last,
                    through,
                    count,
                    places,
                )?;
                out.write(recloth_spacing_through_t {
                    pitch_before: answer.pitch_before,
                    pitch_after: answer.pitch_after,
                    fixed: answer.fixed,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Screen levels of a colour given in CIELAB under daylight D65.
///
/// A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`.
///
/// - `l`: lightness L* (0 to 100).
/// - `a`: a*: green below 0, red above (-200 to 200).
/// - `b`: b*: blue below 0, yellow above (-200 to 200).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_srgb_from_lab(
    l: f64,
    a: f64,
    b: f64,
    out: *mut recloth_srgb_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::colour::srgb_from_lab(l, a, b)?;
                out.write(recloth_srgb_t {
                    red: answer.red,
                    green: answer.green,
                    blue: answer.blue,
                    outside: answer.outside,
                });
                Ok(())
            },
        )
    }
}
/// Screen levels of a colour given by its tristimulus values.
///
/// A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`: its hue is then
/// not true.
///
/// - `x`: X (0 to 2).
/// - `y`: Y, the luminance: white has 1 (0 to 2).
/// - `z`: Z (0 to 2).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_srgb_from_xyz(
    x: f64,
    y: f64,
    z: f64,
    out: *mut recloth_srgb_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::colour::srgb_from_xyz(x, y, z)?;
                out.write(recloth_srgb_t {
                    red: answer.red,
                    green: answer.green,
                    blue: answer.blue,
                    outside: answer.outside,
                });
                Ok(())
            },
        )
    }
}
/// Length of one stitch from the number of stitches in an inch.
///
/// `length = 25.4 / stitches`. Pages that pair 2.5 to 3 mm with 10 to 12 stitches are not consistent: 3 mm is 8.5.
///
/// - `stitches_per_inch`: stitches in one inch (0.5 to 200).
/// - `out`: receives the answer. Length of one stitch (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_stitch_length(
    stitches_per_inch: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::tape::stitch_length(stitches_per_inch)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Volume of a stock solution for a percentage on weight of fibre.
///
/// `stock = mass · pct / stock_pct`, the stock in grams in 100 ml. For dye, mordant or assistant; not for bleach. Usual is a
/// stock of 0.05 to 50; outside it, and as for `owf`, there are doubts.
///
/// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
/// - `pct`: percentage on weight of fibre (%, 0 to 1000).
/// - `stock_pct`: grams in 100 ml of the stock (%, 0.001 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_stock_volume(
    mass_g: f64,
    pct: f64,
    stock_pct: f64,
    out: *mut recloth_stock_volume_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::wet::stock_volume(mass_g, pct, stock_pct)?;
                out.write(recloth_stock_volume_t {
                    stock_ml: answer.stock_ml,
                    amount_g: answer.amount_g,
                    doubts: answer.doubts,
                    cautions: answer.cautions,
                });
                Ok(())
            },
        )
    }
}
/// Strip to cut for a straight band.
///
/// Folded: `cut_width = 2 · depth + 2 · allowance + turn`, one strip. Faced: `cut_width = depth + 2 · allowance + turn`,
/// two strips. `cut_length = waist + overlap + 2 · allowance`. The turn is the cloth that the upper edge takes by its
/// own thickness; fold or sew a sample to learn it.
///
/// The waist is doubted as `girth_doubts` does.
///
/// - `waist`: finished length round the waist, ease included (mm, 1 to 100000).
/// - `overlap`: what runs on past the opening, at both ends together (mm, 0 to 10000).
/// - `depth`: finished depth (mm, 1 to 10000).
/// - `allowance`: seam allowance at each edge and each end (mm, 0 to 1000).
/// - `turn`: cloth taken by the thickness of the upper edge (mm, 0 to 100).
/// - `make`: how the band gets its two layers (one of `recloth_band_make`).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_straight_band(
    waist: f64,
    overlap: f64,
    depth: f64,
    allowance: f64,
    turn: f64,
    make: i32,
    out: *mut recloth_straight_band_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let (make, make_bad) = read_band_make("make", make);
                let answer = door::settle(
                    recloth::band::straight_band(
                        waist,
                        overlap,
                        depth,
                        allowance,
                        turn,
                        make,
                    ),
                    &["waist", "overlap", "depth", "allowance", "turn", "make"],
                    &[make_bad],
                )?;
                out.write(recloth_straight_band_t {
                    cut_length: answer.cut_length,
                    cut_width: answer.cut_width,
                    strips: answer.strips,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Finished depth of a straight band from a strip there is.
///
/// Folded: `depth = (cut_width - 2 · allowance - turn) / 2`. Faced: `depth = cut_width - 2 · allowance - turn`. A strip
/// drawn without allowances still loses them to its seams, which is the usual slip.
///
/// - `cut_width`: width of the strip from raw edge to raw edge (mm, 1 to 100000).
/// - `allowance`: seam allowance at each long edge (mm, 0 to 1000).
/// - `turn`: cloth taken by the thickness of the upper edge (mm, 0 to 100).
/// - `make`: how the band gets its two layers (one of `recloth_band_make`).
/// - `out`: receives the answer. Finished depth of the band (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_straight_band_depth(
    cut_width: f64,
    allowance: f64,
    turn: f64,
    make: i32,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let (make, make_bad) = read_band_make("make", make);
                let answer = door::settle(
                    recloth::band::straight_band_depth(cut_width, allowance, turn, make),
                    &["cut_width", "allowance", "turn", "make"],
                    &[make_bad],
                )?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Stretch of cloth from a marked length and the same length pulled out, in percent.
///
/// `stretch = 100 · (pulled - relaxed) / relaxed`. Fold the cloth across the way it is to stretch, mark 100 mm away from
/// the edge, and pull until it resists, not until it can go no further. Let go and measure again: what stays longer will
/// bag at knee and elbow.
///
/// - `relaxed`: distance of the marks at rest (mm, 1 to 100000).
/// - `pulled`: distance of the marks pulled (mm, 1 to 1000000, >= relaxed).
/// - `out`: receives the answer. Stretch (%).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_stretch_pct(
    relaxed: f64,
    pulled: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::stretch::stretch_pct(relaxed, pulled)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// What to take in at each edge of a garment that is too wide, and what is left over.
///
/// `excess = garment - (body + ease)`, shared evenly by the edges but no more than `limit` each, beyond which side seams leave
/// the body's side and armholes lose their shape. A seam has two edges: both sides are four. A fold pinned out of the cloth
/// takes twice its depth: pinned 8, taken 16. Taken in at the armhole, the sleeve must be taken in too; at the hem, see that
/// the step is still wide enough.
///
/// A body below 110 mm, less than a child's wrist (from memory), is doubted.
///
/// - `garment`: finished garment at this level, all round (mm, 1 to 100000).
/// - `body`: body at this level, all round (mm, 1 to 100000).
/// - `ease`: what the garment is to have more than the body (mm, -10000 to 10000).
/// - `edges`: edges that share it, two to a seam (1 to 64).
/// - `limit`: the most that each edge may take (mm, 0 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_take_in(
    garment: f64,
    body: f64,
    ease: f64,
    edges: u32,
    limit: f64,
    out: *mut recloth_take_in_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::alteration::take_in(
                    garment,
                    body,
                    ease,
                    edges,
                    limit,
                )?;
                out.write(recloth_take_in_t {
                    excess: answer.excess,
                    each: answer.each,
                    taken: answer.taken,
                    leftover: answer.leftover,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Linear density of a yarn or thread from its cotton count (Ne).
///
/// The cotton count is how many hanks of 840 yards weigh a pound: `tex = 590.54 · plies / count`. A larger number is a
/// thinner yarn. A thread marked 40/2 is two plies of count 40. A convention that counts the moisture in has 583.1 in
/// place of 590.54, which is 1.3 % less: do not mix the two.
///
/// - `cotton_count`: cotton count of one ply (0.1 to 1000).
/// - `plies`: equal plies twisted together (1 to 24).
/// - `out`: receives the answer. Linear density of the plied yarn, take-up in twisting left out (tex).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_tex_from_cotton_count(
    cotton_count: f64,
    plies: u32,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::tape::tex_from_cotton_count(cotton_count, plies)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Linear density of a yarn or thread from its denier.
///
/// Tex is grams a kilometre, denier grams in nine kilometres: `tex = denier / 9`. A larger number is a thicker yarn.
///
/// - `denier`: grams in 9 kilometres (0.01 to 1000000).
/// - `out`: receives the answer. Linear density (tex).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_tex_from_denier(
    denier: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::tape::tex_from_denier(denier)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Linear density of a yarn or thread from its metric count (Nm).
///
/// The metric count is how many metres weigh a gram: `tex = 1000 · plies / count`. A larger number is a thinner yarn.
///
/// - `metric_count`: metric count of one ply (0.1 to 2000).
/// - `plies`: equal plies twisted together (1 to 24).
/// - `out`: receives the answer. Linear density of the plied yarn, take-up in twisting left out (tex).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_tex_from_metric_count(
    metric_count: f64,
    plies: u32,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::tape::tex_from_metric_count(metric_count, plies)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Thread for a seam, waste included.
///
/// `thread = seam · ratio · (1 + waste_pct / 100)`. The ratio is measured on an unpicked length, or taken from
/// `thread_ratio` or a maker's table; for one thread of several, give that thread's own. Wind on more than this:
/// tension, thickness and the stitch's length all change it.
///
/// - `seam`: length of all seams of this kind (mm, 0 to 100000000).
/// - `ratio`: thread over seam (0.1 to 100).
/// - `waste_pct`: for ends, tests and what is left on the bobbin (%, 0 to 500).
/// - `out`: receives the answer. Length of thread (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_thread_for_seam(
    seam: f64,
    ratio: f64,
    waste_pct: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::thread::thread_for_seam(seam, ratio, waste_pct)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Thread that a seam takes for its length, from the path of the stitch.
///
/// `ratio = c + 2 · thickness / stitch_length`, with `c` 3 for type 101, 2 for 301, 4 for 401: along the seam on both
/// faces, and through it twice a stitch. The path is drawn tight: makers' rounded ratios are higher, 2.5 for type 301 where
/// thin cloth gives 2.2 here, and 5 for type 101 where it gives 3.1. Overedge stitches have published formulas that disagree, and are left
/// out: for them, unpick a length of seam and measure, or take a maker's ratio.
///
/// - `stitch_length`: length of one stitch (mm, 0.1 to 100).
/// - `thickness`: all layers of the seam, pressed (mm, 0 to 100).
/// - `stitch`: type of the stitch (one of `recloth_stitch_type`).
/// - `out`: receives the answer. Thread over seam, all threads together.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_thread_ratio(
    stitch_length: f64,
    thickness: f64,
    stitch: i32,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let (stitch, stitch_bad) = read_stitch_type("stitch", stitch);
                let answer = door::settle(
                    recloth::thread::thread_ratio(stitch_length, thickness, stitch),
                    &["stitch_length", "thickness", "stitch"],
                    &[stitch_bad],
                )?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Way round each tier of a tiered skirt.
///
/// Each tier is the one above times its ratio, the first the top edge times the first ratio, so that the fullness
/// multiplies: three tiers of 1.5 make a hem of 3.375 times the waist. How the length is shared over the tiers is
/// taste. Allowances and joins are extra (`breadths`).
///
/// - `top`: edge that the first tier is gathered to (mm, 1 to 100000).
/// - `ratios`: tier over the one above, from the top down (1 to 10, 1 to 12 items).
/// - `flats`: filled: way round each tier before gathering (mm, as many as ratios).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_tiers(
    top: f64,
    ratios: *const f64,
    ratios_count: usize,
    flats: *mut f64,
    flats_count: usize,
    out: *mut recloth_tiers_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let ratios = door::list("ratios", ratios, ratios_count)?;
                let flats = door::list_to_fill("flats", flats, flats_count)?;
                let answer = recloth::tier::tiers(top, ratios, flats)?;
                out.write(recloth_tiers_t {
                    hem: answer.hem,
                    ratio: answer.ratio,
                    strip: answer.strip,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// How far a girth made of equal seams may be off.
///
/// A seam sewn `error_each` beside its line takes that much from both of its edges: `worst = 2 · seams · error_each`,
/// `likely = 2 · error_each · √seams`. Where the ease at the waist is less than the worst case, try on before the band is
/// cut.
///
/// - `seams`: number of seams, darts counted as one each (0 to 1000).
/// - `error_each`: how far beside its line a seam may be sewn (mm, 0 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_tolerance_stack(
    seams: u32,
    error_each: f64,
    out: *mut recloth_tolerance_stack_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::chain::tolerance_stack(seams, error_each)?;
                out.write(recloth_tolerance_stack_t {
                    worst: answer.worst,
                    likely: answer.likely,
                });
                Ok(())
            },
        )
    }
}
/// How far a length made of unlike terms may be off, and which of them adds most.
///
/// Each term's error counts once for each of its edges: 2 for a seam, 1 for a fold or a raw edge, 0 for a term that is
/// sure.
///
/// - `errors`: how far each term may be off (mm, 0 to 1000, 1 to 1000 items).
/// - `edges`: how many times each error counts (0 to 100, as many as errors).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_tolerance_stack_list(
    errors: *const f64,
    errors_count: usize,
    edges: *const u32,
    edges_count: usize,
    out: *mut recloth_tolerance_stack_list_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let errors = door::list("errors", errors, errors_count)?;
                let edges = door::list("edges", edges, edges_count)?;
                let answer = recloth::chain::tolerance_stack_list(errors, edges)?;
                out.write(recloth_tolerance_stack_list_t {
                    worst: answer.worst,
                    likely: answer.likely,
                    largest: answer.largest,
                    largest_part: answer.largest_part,
                });
                Ok(())
            },
        )
    }
}
/// A point measured by tape from both ends of a base.
///
/// `along = (from_start² - from_end² + base²) / 2 base`, `across = √(from_start² - along²)`. An error of 1 mm in both
/// readings moves the point by at most `along_per_mm` and `across_per_mm`; that of the base is not counted. Choose bases
/// that make both small: a point about half as far off as the base is long.
///
/// - `base`: between the two known points (mm, 1 to 100000).
/// - `from_start`: reading from the start of the base (mm, 1 to 100000).
/// - `from_end`: reading from the end of the base (mm, 1 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_trilaterate(
    base: f64,
    from_start: f64,
    from_end: f64,
    out: *mut recloth_trilaterate_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::panel::trilaterate(base, from_start, from_end)?;
                out.write(recloth_trilaterate_t {
                    along: answer.along,
                    across: answer.across,
                    along_per_mm: answer.along_per_mm,
                    across_per_mm: answer.across_per_mm,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Cloth and marking for tucks stitched an even distance apart.
///
/// `flat = finished + 2 · count · depth`; fold lines are marked `spacing + 2 · depth` apart on the flat cloth. A tuck covers
/// its depth of the spacing: blind tucks have `spacing = depth`. Tuck the cloth first, then cut the piece from it.
///
/// - `finished`: width when tucked (mm, 1 to 100000).
/// - `count`: number of tucks (1 to 1000).
/// - `depth`: depth of each tuck, stitching to fold (mm, 0.1 to 1000).
/// - `spacing`: from stitching to stitching when tucked (mm, 0.1 to 10000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_tucks(
    finished: f64,
    count: u32,
    depth: f64,
    spacing: f64,
    out: *mut recloth_tucks_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::pleat::tucks(finished, count, depth, spacing)?;
                out.write(recloth_tucks_t {
                    flat: answer.flat,
                    taken_up: answer.taken_up,
                    fold_pitch: answer.fold_pitch,
                    gap: answer.gap,
                    margin: answer.margin,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Whether a garment part can be turned right side out through an opening: an estimate.
///
/// The widest part, gathered in the hand, is a round bundle of its layers' section, of which cloth fills a share
/// `packing`: `diameter = √(4 · width · thickness / (π · packing))`. An opening of flat width `w` is `2 · w` round, and
/// passes it when `2 · w >= π · diameter`. Find the narrowest place on the way: a shoulder seam, a strap, the gap left in
/// a lining; and that there is a way: a ring closed on itself cannot be turned.
///
/// - `width`: widest part that must pass, laid flat (mm, 1 to 100000).
/// - `thickness`: all its layers together, pressed (mm, 0.01 to 1000).
/// - `opening`: flat width of the narrowest place on the way (mm, 1 to 100000).
/// - `packing`: share of the bundle that is cloth (0.1 to 1).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_turn_through(
    width: f64,
    thickness: f64,
    opening: f64,
    packing: f64,
    out: *mut recloth_turn_through_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::seam::turn_through(
                    width,
                    thickness,
                    opening,
                    packing,
                )?;
                out.write(recloth_turn_through_t {
                    diameter: answer.diameter,
                    least_opening: answer.least_opening,
                    spare: answer.spare,
                });
                Ok(())
            },
        )
    }
}
/// Allowance and cut length for a hem that is turned up, its raw edge turned in.
///
/// `allowance = depth + turn_in + folds · roll`: two folds, or one where nothing is turned in. A hem of two equal turns,
/// as for sheer cloth, has `turn_in = depth`. The roll is the cloth that each fold takes by its thickness; fold a sample
/// to learn it.
///
/// - `length`: finished length, upper edge or seam line to hem edge (mm, 1 to 100000).
/// - `depth`: finished depth of the hem (mm, 0 to 10000).
/// - `turn_in`: turned in at the raw edge; 0 where it is overcast or bound (mm, 0 to 10000, <= depth).
/// - `roll`: cloth that each fold takes by its thickness (mm, 0 to 100).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_turned_hem(
    length: f64,
    depth: f64,
    turn_in: f64,
    roll: f64,
    out: *mut recloth_turned_hem_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::seam::turned_hem(length, depth, turn_in, roll)?;
                out.write(recloth_turned_hem_t {
                    allowance: answer.allowance,
                    cut_length: answer.cut_length,
                });
                Ok(())
            },
        )
    }
}
/// Edge of a V neck, how far it lies off grain, and the tape that stays it.
///
/// `edge = √(half_width² + depth²)`, `off_grain = atan(half_width / depth)`, `stay = edge · stay_ratio`. Any edge off grain
/// stretches as it is handled, most of all near 45°: staystitch at once, and sew on a tape cut a little shorter than the
/// edge. A tape below 0.9 puckers, so less is refused. If the point falls below the bust, nothing holds the edge to the
/// body: pin it and see (`dart_from_gape`).
///
/// - `half_width`: middle to the edge's top at the shoulder, straight across (mm, 0 to 10000).
/// - `depth`: from that level down to the point (mm, 1 to 10000).
/// - `stay_ratio`: tape over edge (0.9 to 1).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_v_neck(
    half_width: f64,
    depth: f64,
    stay_ratio: f64,
    out: *mut recloth_v_neck_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::neck::v_neck(half_width, depth, stay_ratio)?;
                out.write(recloth_v_neck_t {
                    edge: answer.edge,
                    off_grain_deg: answer.off_grain_deg,
                    stay: answer.stay,
                });
                Ok(())
            },
        )
    }
}
/// Doubts on a waist and a hip together.
///
/// A waist above the hip (`WAIST_OVER_HIP`) may be the two in each other's place, and is also the shape of some bodies.
/// A hip more than 450 mm above the waist (`HIP_FAR_OVER_WAIST`) may be half a waist.
///
/// - `waist`: girth of waist (mm, 1 to 100000).
/// - `hip`: girth of hip (mm, 1 to 100000).
/// - `out`: receives the answer. The doubts (bits).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_waist_hip_doubts(
    waist: f64,
    hip: f64,
    out: *mut u64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::body::waist_hip_doubts(waist, hip)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// Length after several washes, of which the first usually takes most.
///
/// Changes multiply, they do not add: `after = length · (1 + first / 100) · (1 + later / 100)^(washes - 1)`. Wash a sample
/// until two measures agree: no rule foretells how many times that is.
///
/// A first change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.
///
/// - `length`: length before any wash (mm, 0 to 1000000).
/// - `first_pct`: change in the first wash: shrinkage negative (%, -90 to 100).
/// - `later_pct`: change in each wash after it (%, -90 to 100).
/// - `washes`: how many washes (0 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_washes(
    length: f64,
    first_pct: f64,
    later_pct: f64,
    washes: u32,
    out: *mut recloth_washes_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::cloth::washes(
                    length,
                    first_pct,
                    later_pct,
                    washes,
                )?;
                out.write(recloth_washes_t {
                    after: answer.after,
                    change_pct: answer.change_pct,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Wearing ease of woven cloth, all round, as a range over the authors, and the girths it makes.
///
/// `garment = body + ease`. Ease is what is needed to breathe, sit and reach; what the style has more is taste. Authors differ by as much as an inch:
///
/// - bust: 1 1/2 to 2 in (Robinson), 2 1/2 in (one cited in an encyclopedia), 2 to 3 in (a tailor's notes);
/// - waist of a dress: 3/4 to 1 in, 1 in, 1 to 2 in, in that order;
/// - waist of a skirt or trousers: 1/2 to 3/4 in (Robinson; the others do not tell it apart);
/// - hip: 2 to 2 3/4 in, 3 in, 2 to 3 in;
/// - a man's shirt at the chest: 1 1/2 to 2 1/2 in fitted, up to 3 in classic (Robinson).
///
/// The best ease is that of a garment that fits: measure it and take the body's girth off. Thick cloth and a lining need
/// more, cloth that stretches less (`negative_ease`).
///
/// A girth below 300 mm or above 2000 mm is doubted.
///
/// - `body`: girth of the body there (mm, 1 to 100000).
/// - `place`: where it is asked (one of `recloth_ease_place`).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_wearing_ease(
    body: f64,
    place: i32,
    out: *mut recloth_wearing_ease_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let (place, place_bad) = read_ease_place("place", place);
                let answer = door::settle(
                    recloth::ease::wearing_ease(body, place),
                    &["body", "place"],
                    &[place_bad],
                )?;
                out.write(recloth_wearing_ease_t {
                    low: answer.low,
                    high: answer.high,
                    garment_low: answer.garment_low,
                    garment_high: answer.garment_high,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Length of cloth of one width that does for a length of another, as a range.
///
/// `by_area = length · width / new_width`. Tables handed down for this follow no formula: over all their cells they give
/// 0.90 to 1.12 times the area's length, and so does this. It is for a guess before buying; lay the pieces to know. A
/// piece wider than the new cloth is not seen here.
///
/// Cloth narrower than 200 mm is doubted: 150 may be in centimetres.
///
/// - `length`: length that is enough (mm, 0 to 1000000).
/// - `width`: width of that cloth (mm, 10 to 100000).
/// - `new_width`: width of the cloth to be had (mm, 10 to 100000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_width_conversion(
    length: f64,
    width: f64,
    new_width: f64,
    out: *mut recloth_width_conversion_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::quantity::width_conversion(
                    length,
                    width,
                    new_width,
                )?;
                out.write(recloth_width_conversion_t {
                    by_area: answer.by_area,
                    low: answer.low,
                    high: answer.high,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Widths of a skirt with a back and two fronts that lap over each other.
///
/// A back of half the girth, and fronts of a quarter and half the overlap each: `front = girth / 4 + overlap / 2`. The
/// overlap runs straight down, the same at waist and hip; facings or hems of the two front edges are extra. The skirt
/// opens when a step spreads the hem by more than the overlap there, so sit and stride in it, pinned, before cutting. The
/// lap must equal that of the band, and of the bodice where there is one.
///
/// Waist and hip are doubted alone and together, as `girth_doubts` and
/// `waist_hip_doubts` do.
///
/// - `waist`: finished waist, ease included, darts closed (mm, 1 to 100000).
/// - `hip`: finished hip, ease included (mm, 1 to 100000).
/// - `overlap`: how far one front lies over the other (mm, 0 to 100000, <= waist).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_wrap_skirt(
    waist: f64,
    hip: f64,
    overlap: f64,
    out: *mut recloth_wrap_skirt_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::skirt::wrap_skirt(waist, hip, overlap)?;
                out.write(recloth_wrap_skirt_t {
                    back_waist: answer.back_waist,
                    back_hip: answer.back_hip,
                    front_waist: answer.front_waist,
                    front_hip: answer.front_hip,
                    waist_edge: answer.waist_edge,
                    wrap_pct: answer.wrap_pct,
                    doubts: answer.doubts,
                });
                Ok(())
            },
        )
    }
}
/// Tristimulus values of a colour given in CIELAB, under daylight D65: `lab_from_xyz` turned round.
///
/// - `l`: lightness L* (0 to 100).
/// - `a`: a*: green below 0, red above (-200 to 200).
/// - `b`: b*: blue below 0, yellow above (-200 to 200).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_xyz_from_lab(
    l: f64,
    a: f64,
    b: f64,
    out: *mut recloth_xyz_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::colour::xyz_from_lab(l, a, b)?;
                out.write(recloth_xyz_t {
                    x: answer.x,
                    y: answer.y,
                    z: answer.z,
                });
                Ok(())
            },
        )
    }
}
/// Tristimulus values of a colour given by its screen levels.
///
/// - `red`: red level (0 to 255).
/// - `green`: green level (0 to 255).
/// - `blue`: blue level (0 to 255).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_xyz_from_srgb(
    red: f64,
    green: f64,
    blue: f64,
    out: *mut recloth_xyz_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::colour::xyz_from_srgb(red, green, blue)?;
                out.write(recloth_xyz_t {
                    x: answer.x,
                    y: answer.y,
                    z: answer.z,
                });
                Ok(())
            },
        )
    }
}
/// Size over all of a buttonhole worked in zigzag: two beads and two bars about a slit.
///
/// `length = slit + 2 · bar`, `width = 2 · bead + gap`, and each side takes `ceil(slit / spacing)` stitches. It is the slit that
/// the button passes (`buttonhole`); the whole must lie on the button stand. Work one on a
/// scrap of the same layers. Cut from both ends towards the middle, a pin across each bar.
///
/// - `slit`: length of the slit (mm, 1 to 300).
/// - `bead`: width of the zigzag on each side (mm, 0.1 to 20).
/// - `gap`: between the two sides, where it is cut (mm, 0 to 10).
/// - `bar`: length of the bar at each end (mm, 0 to 20).
/// - `spacing`: stitch length of the zigzag (mm, 0.05 to 10).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_zigzag_buttonhole(
    slit: f64,
    bead: f64,
    gap: f64,
    bar: f64,
    spacing: f64,
    out: *mut recloth_zigzag_buttonhole_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fastening::zigzag_buttonhole(
                    slit,
                    bead,
                    gap,
                    bar,
                    spacing,
                )?;
                out.write(recloth_zigzag_buttonhole_t {
                    length: answer.length,
                    width: answer.width,
                    stitches: answer.stitches,
                });
                Ok(())
            },
        )
    }
}
/// Zip for an opening: its length from stop to stop, and where the stops lie.
///
/// `needed = opening - gap + beyond`, bought in the next length that is sold. The gap leaves room above the slider for a hook
/// or for the turn of a facing; where the teeth end at a band's seam it is small. A concealed zip is sewn before the seam
/// below it and must run on beyond the opening, or its slider cannot be brought down past the last stitch. A zip is shortened
/// at the bottom, by a bar of stitches over the teeth; an open-ended one at the top only. Whether the opening passes the hip
/// is asked of `head_opening`.
///
/// - `opening`: seam line at the top to the lower end of the opening (mm, 10 to 5000).
/// - `gap`: seam line at the top down to the top stop (mm, 0 to 500, < opening).
/// - `beyond`: what the zip runs on below the opening; some 25 if concealed (mm, 0 to 500).
/// - `allowance`: raw edge to seam line at the top (mm, 0 to 1000).
/// - `graduation`: step between the lengths that are sold (mm, 1 to 1000).
/// - `out`: receives the answer.
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_zip_length(
    opening: f64,
    gap: f64,
    beyond: f64,
    allowance: f64,
    graduation: f64,
    out: *mut recloth_zip_length_t,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fastening::zip_length(
                    opening,
                    gap,
                    beyond,
                    allowance,
                    graduation,
                )?;
                out.write(recloth_zip_length_t {
                    needed: answer.needed,
                    buy: answer.buy,
                    shorten: answer.shorten,
                    top_stop: answer.top_stop,
                    bottom_stop: answer.bottom_stop,
                });
                Ok(())
            },
        )
    }
}
/// Opening that a zip there is serves.
///
/// `zip_length` the other way: `opening = zip + gap - beyond`. For a zip saved from the old garment: run it a hundred times
/// first, and see that both stops hold.
///
/// - `zip`: length of the zip, top stop to bottom stop (mm, 10 to 5000).
/// - `gap`: seam line at the top down to the top stop (mm, 0 to 500).
/// - `beyond`: what the zip runs on below the opening (mm, 0 to 500).
/// - `out`: receives the answer. Seam line at the top to the lower end of the opening (mm).
/// - `error`: on failure what was wrong; may be NULL.
///
/// Nothing but `error` is written on failure.
///
/// # Safety
/// Each pointer is NULL or valid for its count of items, and no list overlaps another.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn recloth_zip_opening(
    zip: f64,
    gap: f64,
    beyond: f64,
    out: *mut f64,
    error: *mut recloth_error_t,
) -> recloth_status {
    unsafe {
        door::boundary(
            error,
            || {
                door::not_null("out", out)?;
                let answer = recloth::fastening::zip_opening(zip, gap, beyond)?;
                out.write(answer);
                Ok(())
            },
        )
    }
}
/// One general sentence for a status; NULL for a number that is none. A constant string.
#[unsafe(no_mangle)]
pub extern "C" fn recloth_status_text(status: i32) -> *const c_char {
    match status {
        0 => c"success".as_ptr(),
        -1 => c"an argument is not a finite number".as_ptr(),
        -2 => c"an argument is outside its range".as_ptr(),
        -3 => c"the arguments together leave no solution".as_ptr(),
        -4 => c"a list has the wrong number of items".as_ptr(),
        -5 => c"the room given for the answer is too small".as_ptr(),
        -6 => c"an argument must be a whole number".as_ptr(),
        -7 => c"an argument is not one of the choices offered".as_ptr(),
        -8 => c"the text cannot be read as a length".as_ptr(),
        -9 => c"the number has no unit".as_ptr(),
        -10 => c"the comma or point may mark thousands or decimals".as_ptr(),
        -11 => c"the outline crosses itself or has no area".as_ptr(),
        -12 => c"refused: dangerous, or ruinous to the goods".as_ptr(),
        -20 => c"the text is not UTF-8".as_ptr(),
        -21 => c"a pointer is NULL".as_ptr(),
        -22 => c"internal error: please report it".as_ptr(),
        -23 => c"the text or data handed over is not valid".as_ptr(),
        _ => core::ptr::null(),
    }
}
/// The sentence of one doubt; NULL when the bit is none. A constant string.
#[unsafe(no_mangle)]
pub extern "C" fn recloth_doubt_text(bit: u64) -> *const c_char {
    match bit {
        1 => {
            c"This girth is below 300 mm: is it in centimetres or inches, or a part of the girth?"
                .as_ptr()
        }
        2 => {
            c"This girth is above 2000 mm: was it taken twice, or in another unit?"
                .as_ptr()
        }
        4 => {
            c"This body length is below 100 mm: is it in centimetres or inches?".as_ptr()
        }
        8 => {
            c"This body length is above 2000 mm, more than a tall person's height: is the unit right?"
                .as_ptr()
        }
        16 => {
            c"The waist is larger than the hip: have they changed places? On some bodies it is so."
                .as_ptr()
        }
        32 => {
            c"The hip is more than 450 mm larger than the waist: was half a waist taken?"
                .as_ptr()
        }
        64 => {
            c"One of front and back is more than one and a half times the other: was one taken whole and one half?"
                .as_ptr()
        }
        128 => {
            c"The neck is more than half the bust: have they changed places, or was half a bust taken?"
                .as_ptr()
        }
        256 => {
            c"This triangle is flat: a slip of the tape moves its point across the base more than 5 times as far."
                .as_ptr()
        }
        512 => {
            c"This triangle is tall on a short base: a slip of the tape moves its point along the base more than 5 times as far."
                .as_ptr()
        }
        1024 => {
            c"A spare reading misses by more than 0.5 %: measure again; the tape was misread or the cloth lay off grain."
                .as_ptr()
        }
        2048 => {
            c"A point lies more than 1.5 sizes of the reference beyond it: a small slip at a corner moves it far."
                .as_ptr()
        }
        4096 => {
            c"One dart takes more than 32 mm: it may end in a hard point, so try two."
                .as_ptr()
        }
        8192 => {
            c"The dart is longer than 178 mm, below where the hip is usually measured."
                .as_ptr()
        }
        16384 => {
            c"Darts spread evenly over this width lie less than 25 mm apart.".as_ptr()
        }
        32768 => {
            c"A dart falls within the button stand: move it, or take its intake at that side seam."
                .as_ptr()
        }
        65536 => {
            c"A dart falls on or beyond the opening edge of the narrow panel: take its intake elsewhere."
                .as_ptr()
        }
        131072 => {
            c"The upper edge is longer than the lower: the band stands away from the body."
                .as_ptr()
        }
        262144 => c"Gathers of less than 1.2 times look like a mistake.".as_ptr(),
        524288 => {
            c"The underlay is deeper than the pleat shows: pleats lie over each other, in more than three layers."
                .as_ptr()
        }
        1048576 => {
            c"The last buttonhole is less than 12 mm from the end of the edge.".as_ptr()
        }
        2097152 => {
            c"The distances above and below the fixed button differ by more than 3.2 mm, which shows."
                .as_ptr()
        }
        4194304 => {
            c"A change above 0 says that the cloth grows: shrinkage is a negative change."
                .as_ptr()
        }
        8388608 => {
            c"A change beyond 15 % is rare: wash and measure a second sample.".as_ptr()
        }
        16777216 => {
            c"After washing the lining is longer than the shell and may show.".as_ptr()
        }
        33554432 => {
            c"More than 100 % on weight of fibre: only plant matter is used so; is the mass that of dry goods?"
                .as_ptr()
        }
        67108864 => c"The liquor ratio is outside 3 to 40 litres a kilogram.".as_ptr(),
        134217728 => {
            c"The loop is more than 2 mm longer than the button needs: it may open by itself."
                .as_ptr()
        }
        268435456 => c"The loop is shorter than the button needs.".as_ptr(),
        536870912 => {
            c"This strength lies beyond usual practice, whose figures stand with the argument: check the number, its unit and the label."
                .as_ptr()
        }
        1073741824 => {
            c"This is hotter than usual practice, whose figure stands with the argument: is it in degrees Celsius, and what does the care label allow?"
                .as_ptr()
        }
        2147483648 => {
            c"This is longer than usual practice, whose figure stands with the argument: is it in minutes, and what does the label allow?"
                .as_ptr()
        }
        4294967296 => {
            c"Peroxide is sold at 3 to 50 %, and a purity of 1 % or less may be a share: what does the label say?"
                .as_ptr()
        }
        8589934592 => {
            c"This percentage is so small that it may be a share, as 0.05 for 5 %."
                .as_ptr()
        }
        17179869184 => {
            c"This share is above a half: was a percentage meant, 1 for 1 %?".as_ptr()
        }
        34359738368 => {
            c"These goods weigh less than 2 g: is the mass in kilograms?".as_ptr()
        }
        68719476736 => {
            c"This volume is below 50 ml, or less than the goods carry: is it in litres?"
                .as_ptr()
        }
        137438953472 => {
            c"This girth is below 110 mm, less than a child's wrist: is it in centimetres or inches?"
                .as_ptr()
        }
        274877906944 => {
            c"This cloth is narrower than 200 mm: is its width in centimetres or inches?"
                .as_ptr()
        }
        549755813888 => {
            c"Gathers of more than 4 times are rare even in sheer cloth: is the ratio right?"
                .as_ptr()
        }
        1099511627776 => {
            c"The cap is shorter than its armhole and cannot be sewn in: have the two changed places?"
                .as_ptr()
        }
        2199023255552 => c"Ease of more than 10 % gathers: is a puff meant?".as_ptr(),
        4398046511104 => {
            c"The dart is wider than it is long: have the two changed places?".as_ptr()
        }
        8796093022208 => {
            c"The bow that a lens gives straight lines is not taken out: measure a length or two by tape."
                .as_ptr()
        }
        17592186044416 => {
            c"The edge is stretched or shrunk by more than 3 % to fit between its landmarks: is a dart open in one piece and closed in the other?"
                .as_ptr()
        }
        _ => core::ptr::null(),
    }
}
/// The sentence of one caution; NULL when the bit is none. A constant string.
#[unsafe(no_mangle)]
pub extern "C" fn recloth_caution_text(bit: u64) -> *const c_char {
    match bit {
        1 => {
            c"Follow the product's label, the care label, local rules and the advice of people qualified to give it before anything printed here."
                .as_ptr()
        }
        2 => {
            c"Weigh dye, mordant and soda with gloves, eye protection and a dust mask, in vessels never used for food."
                .as_ptr()
        }
        4 => {
            c"A hot bath scalds and steams: a stable vessel, air, long gloves, no children or animals near, never unattended."
                .as_ptr()
        }
        8 => {
            c"Elastic is ruined by bleach and by hot baths: bleach and dye first, sew elastic in after."
                .as_ptr()
        }
        16 => {
            c"Chlorine bleach goes into cold water and is never heated; mixed fresh each time, window open, gloves and eye protection, out of reach of children."
                .as_ptr()
        }
        32 => {
            c"Chlorine bleach goes with nothing: acids (vinegar, descaler, cleaners) set free chlorine gas, ammonia chloramines, alcohol chloroform, and peroxide cancels it. If it smells sharp, leave the room, air it, and call for advice."
                .as_ptr()
        }
        64 => {
            c"Try a swatch or a hidden part of every cloth, thread and trim in the garment first; pull it wet, and stop at the first weakness."
                .as_ptr()
        }
        128 => {
            c"A neutraliser is a fresh bath of its own after draining and rinsing, never poured into bleach; sulfite and thiosulfate never meet acid, which sets free sulfur dioxide."
                .as_ptr()
        }
        256 => {
            c"This is longer than any swatch was tried: test a swatch for that time before the garment."
                .as_ptr()
        }
        512 => {
            c"Two baths seldom match in shade: put what is seen side by side into one."
                .as_ptr()
        }
        1024 => {
            c"A child's garment: no cord, ribbon, drawstring or elastic at the neck. The safety standard that holds where you are goes before anything printed here."
                .as_ptr()
        }
        2048 => {
            c"Buttons can be swallowed: sew each on so that it cannot be pulled off, try it again after washing, and use none for a child under three."
                .as_ptr()
        }
        _ => core::ptr::null(),
    }
}
pub(crate) const ARGUMENTS: &[&str] = &[
    "a",
    "a1",
    "a2",
    "across",
    "added",
    "after",
    "allowance",
    "along",
    "armhole",
    "at_hand",
    "b",
    "b1",
    "b2",
    "back",
    "bar",
    "base",
    "bath",
    "bead",
    "before",
    "beyond",
    "blue",
    "body",
    "brief",
    "bust",
    "cap",
    "carried_high_ml",
    "carried_low_ml",
    "carried_ml",
    "change_pct",
    "chlorine_pct",
    "chord",
    "clearance",
    "cloth_width",
    "cord",
    "corner",
    "corners",
    "cotton_count",
    "count",
    "curve",
    "cut_edges",
    "cut_width",
    "dart_distance",
    "dart_leg",
    "denier",
    "depth",
    "diameter",
    "dips",
    "distance",
    "drawn",
    "drawn_pct",
    "ease",
    "ease_pct",
    "edge",
    "edges",
    "ends",
    "error_each",
    "errors",
    "excess_pct",
    "extension",
    "extra",
    "facing",
    "factors",
    "fibre",
    "fill",
    "finish",
    "finished",
    "first",
    "first_pct",
    "flat",
    "flats",
    "floor",
    "fold",
    "fraction",
    "fresh_ml",
    "fresh_per_dry_high",
    "fresh_per_dry_low",
    "from_end",
    "from_start",
    "front",
    "gap",
    "gape",
    "gape_distance",
    "garment",
    "girth",
    "goods_g",
    "goods_heat",
    "goods_temperature_c",
    "graduation",
    "grams",
    "green",
    "ground",
    "gsm",
    "half_width",
    "head",
    "heading",
    "height",
    "hem",
    "hem_chord",
    "hem_depth",
    "hem_radius",
    "high",
    "high_pct",
    "hip",
    "hip_depth",
    "in_bath",
    "intake",
    "join",
    "k_over_s",
    "keep",
    "l",
    "l1",
    "l2",
    "lacking",
    "larger",
    "largest_intake",
    "last",
    "later_pct",
    "left",
    "left_bow",
    "leg",
    "length",
    "lengths",
    "level",
    "light",
    "limit",
    "limit_min",
    "lines",
    "lining",
    "lining_change_pct",
    "low",
    "low_pct",
    "lower",
    "lower_diameter",
    "lowered_by",
    "make",
    "mark",
    "mass_g",
    "masses_g",
    "metric",
    "metric_count",
    "minutes",
    "misfits",
    "misses",
    "name",
    "naocl_pct",
    "narrow",
    "neck",
    "needed",
    "new_leg",
    "new_width",
    "numbers",
    "opening",
    "other_width",
    "ounces",
    "out",
    "overlap",
    "packing",
    "pairs",
    "panel",
    "panel_width",
    "parts",
    "parts_water",
    "past",
    "pct",
    "pick_up_pct",
    "picture_x",
    "picture_y",
    "piece",
    "pieces",
    "pitch",
    "place",
    "places",
    "pleat",
    "plies",
    "pooled_ml",
    "pulled",
    "purity_pct",
    "radius",
    "ratio",
    "ratios",
    "reaction",
    "recipe",
    "red",
    "reflectance",
    "relaxed",
    "repeat",
    "right",
    "right_bow",
    "rings",
    "rise",
    "roll",
    "scales",
    "seam",
    "seams",
    "second",
    "shades",
    "shape",
    "share",
    "share_left",
    "shares_ml",
    "shell",
    "shell_change_pct",
    "shift",
    "shorter",
    "shortest",
    "side",
    "sides",
    "slashes",
    "slit",
    "smaller",
    "spacing",
    "spare_ends",
    "spare_readings",
    "spare_starts",
    "specific_gravity",
    "stage",
    "standard",
    "start",
    "starts",
    "stations",
    "stay_ratio",
    "steps",
    "stitch",
    "stitch_length",
    "stitches_per_inch",
    "stock_pct",
    "strengths_pct",
    "stretch",
    "stretch_pct",
    "strip",
    "strips",
    "style",
    "swatch",
    "tail",
    "tapes",
    "target",
    "target_pct",
    "temperature_c",
    "temperatures_c",
    "text",
    "thickness",
    "through",
    "times_min",
    "tolerance",
    "top",
    "tops",
    "total",
    "total_error",
    "true_x",
    "true_y",
    "tucks",
    "turn",
    "turn_in",
    "unknown",
    "upper",
    "upper_diameter",
    "us_size",
    "vessel_ml",
    "volume_ml",
    "volumes_ml",
    "waist",
    "wanted_width",
    "washes",
    "waste_pct",
    "waters_ml",
    "way",
    "white_x",
    "white_y",
    "wide",
    "wide_panel",
    "widest",
    "width",
    "x",
    "y",
    "z",
    "zip",
    "zone",
];
