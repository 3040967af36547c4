//! Written by `cargo xtask generate` from the doc comments of the core; do not edit.
use crate::boundary::*;
use core::ffi::c_char;
use recloth::Error;
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
            recloth::ErrorKind::NotUtf8 => recloth_status::NotUtf8,
            recloth::ErrorKind::Null => recloth_status::Null,
            recloth::ErrorKind::Panic => recloth_status::Panic,
            recloth::ErrorKind::Invalid => recloth_status::Invalid,
            _ => recloth_status::Panic,
        }
    }
}
/// This girth is below 300 mm: is it in centimetres or inches?
pub const RECLOTH_DOUBT_GIRTH_SMALL: u32 = 1;
/// This girth is above 2000 mm: was it taken twice, or in another unit?
pub const RECLOTH_DOUBT_GIRTH_LARGE: u32 = 2;
/// Follow the product's label, the care label and local rules before anything printed here.
pub const RECLOTH_CAUTION_LABEL_FIRST: u32 = 1;
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
}
/// Radii of a skirt cut from part of a ring.
///
/// The waist edge is an arc: `waist = 2π · fraction · waist_radius`. A fraction above 1 is made of several sectors.
///
/// - `waist`: finished waist edge, ease included (mm, 1 to 100000).
/// - `length`: waist edge to hem edge, no allowances (mm, 0 to 100000).
/// - `fraction`: part of a full ring: 0.5 is a half circle (0.01 to 4).
/// - `out`: the answer.
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
        boundary(error, || {
            not_null("out", out)?;
            let answer = recloth::skirt::circle_skirt(waist, length, fraction)?;
            out.write(recloth_circle_skirt_t {
                waist_radius: answer.waist_radius,
                hem_radius: answer.hem_radius,
                hem_length: answer.hem_length,
            });
            Ok(())
        })
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
        -20 => c"the text is not UTF-8".as_ptr(),
        -21 => c"a pointer is NULL".as_ptr(),
        -22 => c"internal error: please report it".as_ptr(),
        -23 => c"the text or data handed over is not valid".as_ptr(),
        _ => core::ptr::null(),
    }
}
/// The sentence of one doubt; NULL when the bit is none. A constant string.
#[unsafe(no_mangle)]
pub extern "C" fn recloth_doubt_text(bit: u32) -> *const c_char {
    match bit {
        1 => c"This girth is below 300 mm: is it in centimetres or inches?".as_ptr(),
        2 => c"This girth is above 2000 mm: was it taken twice, or in another unit?".as_ptr(),
        _ => core::ptr::null(),
    }
}
/// The sentence of one caution; NULL when the bit is none. A constant string.
#[unsafe(no_mangle)]
pub extern "C" fn recloth_caution_text(bit: u32) -> *const c_char {
    match bit {
        1 => {
            c"Follow the product's label, the care label and local rules before anything printed here."
                .as_ptr()
        }
        _ => core::ptr::null(),
    }
}
pub(crate) const ARGUMENTS: &[&str] = &[
    "brief",
    "edges",
    "fraction",
    "length",
    "name",
    "out",
    "piece",
    "tolerance",
    "waist",
];
