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
    GIRTH_SMALL = 0, "This girth is below 300 mm: is it in centimetres or inches?";
    GIRTH_LARGE = 1, "This girth is above 2000 mm: was it taken twice, or in another unit?";
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
