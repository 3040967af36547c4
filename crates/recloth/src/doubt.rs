//! Doubts and cautions: fixed bits that travel with a result and never change its numbers.
//!
//! A doubt says that a value is unusual and may be a slip; a caution says what can hurt. Bits are never renumbered, and
//! there are at most 53, so that a set is also a whole number that a double, a spreadsheet or JSON holds exactly.

/// One bit of a set, with its name and its sentence.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bit {
    /// The bit, a power of two.
    pub bit: u64,
    /// Name, as the bindings give it.
    pub name: &'static str,
    /// What it says to the reader.
    pub text: &'static str,
}

macro_rules! bits {
    ($list:ident, $what:literal, $($(#[$doc:meta])* $name:ident = $shift:literal, $text:literal;)*) => {
        $(#[doc = $text] pub const $name: u64 = 1 << $shift;)*
        const _: () = assert!(true $(&& $shift < 53)*);
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
    PHOTO_REACH = 11, "A point lies more than 1.5 sizes of the reference beyond it: a small slip at a corner moves it far.";
    DART_WIDE = 12, "One dart takes more than 32 mm: it may end in a hard point, so try two.";
    DART_LONG = 13, "The dart is longer than 178 mm, below where the hip is usually measured.";
    DARTS_CLOSE = 14, "Darts spread evenly over this width lie less than 25 mm apart.";
    DART_IN_STAND = 15, "A dart falls within the button stand: move it, or take its intake at that side seam.";
    DART_OFF_PANEL = 16, "A dart falls on or beyond the opening edge of the narrow panel: take its intake elsewhere.";
    BAND_FLARED = 17, "The upper edge is longer than the lower: the band stands away from the body.";
    GATHERS_SCANT = 18, "Gathers of less than 1.2 times look like a mistake.";
    PLEATS_OVERLAP = 19, "The underlay is deeper than the pleat shows: pleats lie over each other, in more than three layers.";
    HOLE_NEAR_SEAM = 20, "The last buttonhole is less than 12 mm from the end of the edge.";
    PITCH_UNEVEN = 21, "The distances above and below the fixed button differ by more than 3.2 mm, which shows.";
    CLOTH_GROWS = 22, "A change above 0 says that the cloth grows: shrinkage is a negative change.";
    CHANGE_LARGE = 23, "A change beyond 15 % is rare: wash and measure a second sample.";
    LINING_SHOWS = 24, "After washing the lining is longer than the shell and may show.";
    OWF_LARGE = 25, "More than 100 % on weight of fibre: only plant matter is used so; is the mass that of dry goods?";
    BATH_RATIO = 26, "The liquor ratio is outside 3 to 40 litres a kilogram.";
    LOOP_LOOSE = 27, "The loop is more than 2 mm longer than the button needs: it may open by itself.";
    LOOP_TIGHT = 28, "The loop is shorter than the button needs.";
    STRENGTH_BEYOND_USUAL = 29, "This strength lies beyond usual practice, whose figures stand with the argument: check the number, its unit and the label.";
    HEAT_BEYOND_USUAL = 30, "This is hotter than usual practice, whose figure stands with the argument: is it in degrees Celsius, and what does the care label allow?";
    TIME_BEYOND_USUAL = 31, "This is longer than usual practice, whose figure stands with the argument: is it in minutes, and what does the label allow?";
    PURITY_UNLIKELY = 32, "Peroxide is sold at 3 to 50 %, and a purity of 1 % or less may be a share: what does the label say?";
    PERCENT_SMALL = 33, "This percentage is so small that it may be a share, as 0.05 for 5 %.";
    SHARE_LARGE = 34, "This share is above a half: was a percentage meant, 1 for 1 %?";
    MASS_SMALL = 35, "These goods weigh less than 2 g: is the mass in kilograms?";
    VOLUME_SMALL = 36, "This volume is below 50 ml, or less than the goods carry: is it in litres?";
    LIMB_SMALL = 37, "This girth is below 110 mm, less than a child's wrist: is it in centimetres or inches?";
    CLOTH_NARROW = 38, "This cloth is narrower than 200 mm: is its width in centimetres or inches?";
    GATHERS_LARGE = 39, "Gathers of more than 4 times are rare even in sheer cloth: is the ratio right?";
    CAP_SHORT = 40, "The cap is shorter than its armhole and cannot be sewn in: have the two changed places?";
    CAP_FULL = 41, "Ease of more than 10 % gathers: is a puff meant?";
    DART_FLAT = 42, "The dart is wider than it is long: have the two changed places?";
    LENS_BOW = 43, "The bow that a lens gives straight lines is not taken out: measure a length or two by tape.";
    EDGE_STRETCHED = 44, "The edge is stretched or shrunk by more than 3 % to fit between its landmarks: is a dart open in one piece and closed in the other?";
}

bits! { CAUTIONS, "Every caution.",
    LABEL_FIRST = 0, "Follow the product's label, the care label, local rules and the advice of people qualified to give it before anything printed here.";
    POWDER = 1, "Weigh dye, mordant and soda with gloves, eye protection and a dust mask, in vessels never used for food.";
    HOT_BATH = 2, "A hot bath scalds and steams: a stable vessel, air, long gloves, no children or animals near, never unattended.";
    ELASTIC_BATH = 3, "Elastic is ruined by bleach and by hot baths: bleach and dye first, sew elastic in after.";
    CHLORINE_COLD = 4, "Chlorine bleach goes into cold water and is never heated; mixed fresh each time, window open, gloves and eye protection, out of reach of children.";
    CHLORINE_ALONE = 5, "Chlorine bleach goes with nothing: acids (vinegar, descaler, cleaners) set free chlorine gas, ammonia chloramines, alcohol chloroform, and peroxide cancels it. If it smells sharp, leave the room, air it, and call for advice.";
    SWATCH_FIRST = 6, "Try a swatch or a hidden part of every cloth, thread and trim in the garment first; pull it wet, and stop at the first weakness.";
    NEUTRALISER_APART = 7, "A neutraliser is a fresh bath of its own after draining and rinsing, never poured into bleach; sulfite and thiosulfate never meet acid, which sets free sulfur dioxide.";
    BEYOND_TESTED = 8, "This is longer than any swatch was tried: test a swatch for that time before the garment.";
    BATHS_DIFFER = 9, "Two baths seldom match in shade: put what is seen side by side into one.";
    CHILD_NECK = 10, "A child's garment: no cord, ribbon, drawstring or elastic at the neck. The safety standard that holds where you are goes before anything printed here.";
    BUTTONS_HELD = 11, "Buttons can be swallowed: sew each on so that it cannot be pulled off, try it again after washing, and use none for a child under three.";
}

/// The bit, if it is so.
pub(crate) fn when(so: bool, bit: u64) -> u64 {
    if so { bit } else { 0 }
}

/// The sentence of one doubt, if the bit is one.
///
/// ```
/// use recloth::doubt::{GIRTH_SMALL, doubt_text};
/// assert!(doubt_text(GIRTH_SMALL).unwrap().contains("inches"));
/// assert_eq!(doubt_text(0), None);
/// ```
pub fn doubt_text(bit: u64) -> Option<&'static str> {
    DOUBTS
        .iter()
        .find(|known| known.bit == bit)
        .map(|known| known.text)
}

/// The sentence of one caution, if the bit is one.
pub fn caution_text(bit: u64) -> Option<&'static str> {
    CAUTIONS
        .iter()
        .find(|known| known.bit == bit)
        .map(|known| known.text)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_bit_has_its_number_name_and_sentence() {
        for (list, text_of) in [
            (DOUBTS, doubt_text as fn(u64) -> Option<&'static str>),
            (CAUTIONS, caution_text),
        ] {
            for (place, one) in list.iter().enumerate() {
                // Programs hold the numbers, so they run on and are never used again.
                assert_eq!(one.bit, 1 << place, "{}", one.name);
                let letter = |c: char| c.is_ascii_uppercase() || c == '_';
                assert!(one.name.chars().all(letter), "{}", one.name);
                assert!(list[..place].iter().all(|other| other.name != one.name));
                assert!(list[..place].iter().all(|other| other.text != one.text));
                let sentence = one.text.starts_with(|c: char| c.is_uppercase())
                    && one.text.ends_with(['.', '?'])
                    && !one.text.contains("  ");
                assert!(sentence, "{}", one.text);
                assert_eq!(text_of(one.bit), Some(one.text));
            }
            for none in [0, 3, 1 << list.len(), u64::MAX] {
                assert_eq!(text_of(none), None);
            }
        }
        assert_eq!((when(true, 8), when(false, 8)), (8, 0));
    }
}
