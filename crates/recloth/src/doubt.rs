//! Doubts and cautions: fixed bits that travel with a result and never change its numbers.
//!
//! A doubt says that a value is unusual and may be a slip; a caution says what can hurt. Bits are never renumbered.

/// One bit of a set, with its name and its sentence.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bit {
    /// The bit, a power of two.
    pub bit: u32,
    /// Name, as the bindings give it.
    pub name: &'static str,
    /// What it says to the reader.
    pub text: &'static str,
}

macro_rules! bits {
    ($list:ident, $what:literal, $($(#[$doc:meta])* $name:ident = $shift:literal, $text:literal;)*) => {
        $(#[doc = $text] pub const $name: u32 = 1 << $shift;)*
        #[doc = $what]
        pub const $list: &[Bit] = &[$(Bit { bit: $name, name: stringify!($name), text: $text }),*];
    };
}

bits! { DOUBTS, "Every doubt.",
    GIRTH_SMALL = 0, "This girth is below 300 mm: is it in centimetres or inches, or a part of the girth?";
    GIRTH_LARGE = 1, "This girth is above 2000 mm: was it taken twice, or in another unit?";
    BODY_LENGTH_SMALL = 2, "This body length is below 100 mm: is it in centimetres or inches?";
    BODY_LENGTH_LARGE = 3, "This body length is above 2000 mm, more than a tall person's height: is the unit right?";
    WAIST_OVER_HIP = 4, "The waist is larger than the hip: have they changed places? On some bodies it is so.";
    HIP_FAR_OVER_WAIST = 5, "The hip is more than 450 mm larger than the waist: was half a waist taken?";
    FRONT_BACK_APART = 6, "One of front and back is more than one and a half times the other: was one taken whole and one half?";
    NECK_OVER_HALF_BUST = 7, "The neck is more than half the bust: have they changed places, or was half a bust taken?";
    TRIANGLE_FLAT = 8, "This triangle is flat: a slip of the tape moves its point across the base more than 5 times as far.";
    TRIANGLE_TALL = 9, "This triangle is tall on a short base: a slip of the tape moves its point along the base more than 5 times as far.";
    SPARE_MISFIT = 10, "A spare reading misses by more than 0.5 %: measure again; the tape was misread or the cloth lay off grain.";
}

bits! { CAUTIONS, "Every caution.",
    LABEL_FIRST = 0, "Follow the product's label, the care label and local rules before anything printed here.";
}

/// The sentence of one doubt, if the bit is one.
///
/// ```
/// use recloth::doubt::{GIRTH_SMALL, doubt_text};
/// assert!(doubt_text(GIRTH_SMALL).unwrap().contains("inches"));
/// assert_eq!(doubt_text(0), None);
/// ```
pub fn doubt_text(bit: u32) -> Option<&'static str> {
    DOUBTS
        .iter()
        .find(|known| known.bit == bit)
        .map(|known| known.text)
}

/// The sentence of one caution, if the bit is one.
pub fn caution_text(bit: u32) -> Option<&'static str> {
    CAUTIONS
        .iter()
        .find(|known| known.bit == bit)
        .map(|known| known.text)
}
