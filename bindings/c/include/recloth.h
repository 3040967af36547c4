/* Recloth: the arithmetic and geometry of remaking clothes.
 *
 * Lengths are doubles in millimetres, in and out; anything else carries its unit in its name.
 * A function returns 0 (RECLOTH_STATUS_OK) or the kind of error. Answers are written to `out`, on
 * success only. `error` may be NULL; else it says on failure which argument was wrong and what
 * would do, and recloth_error_text() puts it into words. A list NAME comes with the number of its
 * items, NAME_count; one to fill may have more room than it needs, and too little is
 * RECLOTH_STATUS_ROOM with the number needed in `error->min`. A NULL where something is needed is
 * RECLOTH_STATUS_NULL. A text closed by a NUL is UTF-8. No function keeps a pointer or allocates
 * what the caller must free, unless it says so. Every function may be called from any thread.
 *
 * What is declared here stays as it is while the library's soname does: functions and choices are
 * added, but a struct gains a field, or anything changes, only with a new soname.
 *
 * Shapes lie behind handles, recloth_piece and recloth_panel. A function that makes one hands it out
 * through `out`, on success only; whoever receives it frees it once, by recloth_piece_free() or
 * recloth_panel_free(), and texts by recloth_text_free(); free() does not do, and NULL is left alone.
 * A handle never changes: what changes a shape hands out a new one, and the old one stays its owner's.
 * So several threads may use one at once, as long as none frees it. A pointer that is no handle, or
 * a handle used or freed after it was freed, is undefined, as with free().
 */

#ifndef RECLOTH_H
#define RECLOTH_H

/* Written by `cargo xtask generate` from the sources of recloth-c; do not edit. */

#include <stddef.h>
#include <stdint.h>

// One millimetre, the unit of every length.
#define RECLOTH_MM 1.0

// One centimetre in millimetres.
#define RECLOTH_CM 10.0

// One metre in millimetres.
#define RECLOTH_M 1000.0

// One inch in millimetres.
#define RECLOTH_INCH 25.4

// One foot in millimetres.
#define RECLOTH_FOOT 304.8

// One yard in millimetres.
#define RECLOTH_YARD 914.4

// This girth is below 300 mm: is it in centimetres or inches, or a part of the girth?
#define RECLOTH_DOUBT_GIRTH_SMALL 1

// This girth is above 2000 mm: was it taken twice, or in another unit?
#define RECLOTH_DOUBT_GIRTH_LARGE 2

// This body length is below 100 mm: is it in centimetres or inches?
#define RECLOTH_DOUBT_BODY_LENGTH_SMALL 4

// This body length is above 2000 mm, more than a tall person's height: is the unit right?
#define RECLOTH_DOUBT_BODY_LENGTH_LARGE 8

// The waist is larger than the hip: have they changed places? On some bodies it is so.
#define RECLOTH_DOUBT_WAIST_OVER_HIP 16

// The hip is more than 450 mm larger than the waist: was half a waist taken?
#define RECLOTH_DOUBT_HIP_FAR_OVER_WAIST 32

// One of front and back is more than one and a half times the other: was one taken whole and one half?
#define RECLOTH_DOUBT_FRONT_BACK_APART 64

// The neck is more than half the bust: have they changed places, or was half a bust taken?
#define RECLOTH_DOUBT_NECK_OVER_HALF_BUST 128

// This triangle is flat: a slip of the tape moves its point across the base more than 5 times as far.
#define RECLOTH_DOUBT_TRIANGLE_FLAT 256

// This triangle is tall on a short base: a slip of the tape moves its point along the base more than 5 times as far.
#define RECLOTH_DOUBT_TRIANGLE_TALL 512

// A spare reading misses by more than 0.5 %: measure again; the tape was misread or the cloth lay off grain.
#define RECLOTH_DOUBT_SPARE_MISFIT 1024

// A point lies more than 1.5 sizes of the reference beyond it: a small slip at a corner moves it far.
#define RECLOTH_DOUBT_PHOTO_REACH 2048

// One dart takes more than 32 mm: it may end in a hard point, so try two.
#define RECLOTH_DOUBT_DART_WIDE 4096

// The dart is longer than 178 mm, below where the hip is usually measured.
#define RECLOTH_DOUBT_DART_LONG 8192

// Darts spread evenly over this width lie less than 25 mm apart.
#define RECLOTH_DOUBT_DARTS_CLOSE 16384

// A dart falls within the button stand: move it, or take its intake at that side seam.
#define RECLOTH_DOUBT_DART_IN_STAND 32768

// A dart falls on or beyond the opening edge of the narrow panel: take its intake elsewhere.
#define RECLOTH_DOUBT_DART_OFF_PANEL 65536

// The upper edge is longer than the lower: the band stands away from the body.
#define RECLOTH_DOUBT_BAND_FLARED 131072

// Gathers of less than 1.2 times look like a mistake.
#define RECLOTH_DOUBT_GATHERS_SCANT 262144

// The underlay is deeper than the pleat shows: pleats lie over each other, in more than three layers.
#define RECLOTH_DOUBT_PLEATS_OVERLAP 524288

// The last buttonhole is less than 12 mm from the end of the edge.
#define RECLOTH_DOUBT_HOLE_NEAR_SEAM 1048576

// The distances above and below the fixed button differ by more than 3.2 mm, which shows.
#define RECLOTH_DOUBT_PITCH_UNEVEN 2097152

// A change above 0 says that the cloth grows: shrinkage is a negative change.
#define RECLOTH_DOUBT_CLOTH_GROWS 4194304

// A change beyond 15 % is rare: wash and measure a second sample.
#define RECLOTH_DOUBT_CHANGE_LARGE 8388608

// After washing the lining is longer than the shell and may show.
#define RECLOTH_DOUBT_LINING_SHOWS 16777216

// More than 100 % on weight of fibre: only plant matter is used so; is the mass that of dry goods?
#define RECLOTH_DOUBT_OWF_LARGE 33554432

// The liquor ratio is outside 3 to 40 litres a kilogram.
#define RECLOTH_DOUBT_BATH_RATIO 67108864

// The loop is more than 2 mm longer than the button needs: it may open by itself.
#define RECLOTH_DOUBT_LOOP_LOOSE 134217728

// The loop is shorter than the button needs.
#define RECLOTH_DOUBT_LOOP_TIGHT 268435456

// This strength lies beyond usual practice, whose figures stand with the argument: check the number, its unit and the label.
#define RECLOTH_DOUBT_STRENGTH_BEYOND_USUAL 536870912

// This is hotter than usual practice, whose figure stands with the argument: is it in degrees Celsius, and what does the care label allow?
#define RECLOTH_DOUBT_HEAT_BEYOND_USUAL 1073741824

// This is longer than usual practice, whose figure stands with the argument: is it in minutes, and what does the label allow?
#define RECLOTH_DOUBT_TIME_BEYOND_USUAL 2147483648

// Peroxide is sold at 3 to 50 %, and a purity of 1 % or less may be a share: what does the label say?
#define RECLOTH_DOUBT_PURITY_UNLIKELY 4294967296

// This percentage is so small that it may be a share, as 0.05 for 5 %.
#define RECLOTH_DOUBT_PERCENT_SMALL 8589934592

// This share is above a half: was a percentage meant, 1 for 1 %?
#define RECLOTH_DOUBT_SHARE_LARGE 17179869184

// These goods weigh less than 2 g: is the mass in kilograms?
#define RECLOTH_DOUBT_MASS_SMALL 34359738368

// This volume is below 50 ml, or less than the goods carry: is it in litres?
#define RECLOTH_DOUBT_VOLUME_SMALL 68719476736

// This girth is below 110 mm, less than a child's wrist: is it in centimetres or inches?
#define RECLOTH_DOUBT_LIMB_SMALL 137438953472

// This cloth is narrower than 200 mm: is its width in centimetres or inches?
#define RECLOTH_DOUBT_CLOTH_NARROW 274877906944

// Gathers of more than 4 times are rare even in sheer cloth: is the ratio right?
#define RECLOTH_DOUBT_GATHERS_LARGE 549755813888

// The cap is shorter than its armhole and cannot be sewn in: have the two changed places?
#define RECLOTH_DOUBT_CAP_SHORT 1099511627776

// Ease of more than 10 % gathers: is a puff meant?
#define RECLOTH_DOUBT_CAP_FULL 2199023255552

// The dart is wider than it is long: have the two changed places?
#define RECLOTH_DOUBT_DART_FLAT 4398046511104

// The bow that a lens gives straight lines is not taken out: measure a length or two by tape.
#define RECLOTH_DOUBT_LENS_BOW 8796093022208

// The edge is stretched or shrunk by more than 3 % to fit between its landmarks: is a dart open in one piece and closed in the other?
#define RECLOTH_DOUBT_EDGE_STRETCHED 17592186044416

// Follow the product's label, the care label, local rules and the advice of people qualified to give it before anything printed here.
#define RECLOTH_CAUTION_LABEL_FIRST 1

// Weigh dye, mordant and soda with gloves, eye protection and a dust mask, in vessels never used for food.
#define RECLOTH_CAUTION_POWDER 2

// A hot bath scalds and steams: a stable vessel, air, long gloves, no children or animals near, never unattended.
#define RECLOTH_CAUTION_HOT_BATH 4

// Elastic is ruined by bleach and by hot baths: bleach and dye first, sew elastic in after.
#define RECLOTH_CAUTION_ELASTIC_BATH 8

// Chlorine bleach goes into cold water and is never heated; mixed fresh each time, window open, gloves and eye protection, out of reach of children.
#define RECLOTH_CAUTION_CHLORINE_COLD 16

// Chlorine bleach goes with nothing: acids (vinegar, descaler, cleaners) set free chlorine gas, ammonia chloramines, alcohol chloroform, and peroxide cancels it. If it smells sharp, leave the room, air it, and call for advice.
#define RECLOTH_CAUTION_CHLORINE_ALONE 32

// Try a swatch or a hidden part of every cloth, thread and trim in the garment first; pull it wet, and stop at the first weakness.
#define RECLOTH_CAUTION_SWATCH_FIRST 64

// A neutraliser is a fresh bath of its own after draining and rinsing, never poured into bleach; sulfite and thiosulfate never meet acid, which sets free sulfur dioxide.
#define RECLOTH_CAUTION_NEUTRALISER_APART 128

// This is longer than any swatch was tried: test a swatch for that time before the garment.
#define RECLOTH_CAUTION_BEYOND_TESTED 256

// Two baths seldom match in shade: put what is seen side by side into one.
#define RECLOTH_CAUTION_BATHS_DIFFER 512

// A child's garment: no cord, ribbon, drawstring or elastic at the neck. The safety standard that holds where you are goes before anything printed here.
#define RECLOTH_CAUTION_CHILD_NECK 1024

// Buttons can be swallowed: sew each on so that it cannot be pulled off, try it again after washing, and use none for a child under three.
#define RECLOTH_CAUTION_BUTTONS_HELD 2048

// What a function returns: 0 for success, else the kind of error. The numbers never change.
enum recloth_status
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Success.
  RECLOTH_STATUS_OK = 0,
  // An argument is not a finite number.
  RECLOTH_STATUS_NOT_FINITE = -1,
  // An argument is outside its range.
  RECLOTH_STATUS_OUT_OF_RANGE = -2,
  // The arguments together leave no solution.
  RECLOTH_STATUS_NO_SOLUTION = -3,
  // A list has the wrong number of items.
  RECLOTH_STATUS_COUNT = -4,
  // The room given for the answer is too small.
  RECLOTH_STATUS_ROOM = -5,
  // An argument must be a whole number.
  RECLOTH_STATUS_NOT_WHOLE = -6,
  // An argument is not one of the choices offered.
  RECLOTH_STATUS_CHOICE = -7,
  // The text cannot be read as a length.
  RECLOTH_STATUS_SYNTAX = -8,
  // The number has no unit.
  RECLOTH_STATUS_NO_UNIT = -9,
  // The comma or point may mark thousands or decimals.
  RECLOTH_STATUS_TWO_READINGS = -10,
  // The outline crosses itself or has no area.
  RECLOTH_STATUS_OUTLINE = -11,
  // Refused: dangerous, or ruinous to the goods.
  RECLOTH_STATUS_REFUSED = -12,
  // The text is not UTF-8.
  RECLOTH_STATUS_NOT_UTF8 = -20,
  // A pointer is NULL.
  RECLOTH_STATUS_NULL = -21,
  // Internal error: please report it.
  RECLOTH_STATUS_PANIC = -22,
  // The text or data handed over is not valid.
  RECLOTH_STATUS_INVALID = -23,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_status recloth_status;
#else
typedef int32_t recloth_status;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// How a straight band gets its two layers.
enum recloth_band_make
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // One strip folded along its upper edge.
  RECLOTH_BAND_MAKE_FOLDED = 0,
  // Two strips, an outer and an inner, joined along the upper edge.
  RECLOTH_BAND_MAKE_FACED = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_band_make recloth_band_make;
#else
typedef int32_t recloth_band_make;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// How plant matter is when it is weighed.
enum recloth_basis
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Fresh, or frozen fresh: with its water.
  RECLOTH_BASIS_FRESH = 0,
  // Dried.
  RECLOTH_BASIS_DRY = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_basis recloth_basis;
#else
typedef int32_t recloth_basis;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// The bath a part is to go through.
enum recloth_bath
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Water, with or without a mild detergent.
  RECLOTH_BATH_WATER = 0,
  // Chlorine bleach (sodium hypochlorite).
  RECLOTH_BATH_CHLORINE_BLEACH = 1,
  // A direct dye.
  RECLOTH_BATH_DIRECT = 2,
  // A reactive dye.
  RECLOTH_BATH_REACTIVE = 3,
  // An acid dye.
  RECLOTH_BATH_ACID = 4,
  // A vat dye, indigo included.
  RECLOTH_BATH_VAT = 5,
  // A sulphur dye.
  RECLOTH_BATH_SULPHUR = 6,
  // An azoic dye.
  RECLOTH_BATH_AZOIC = 7,
  // A metal-complex dye.
  RECLOTH_BATH_METAL_COMPLEX = 8,
  // A disperse dye.
  RECLOTH_BATH_DISPERSE = 9,
  // A basic dye.
  RECLOTH_BATH_BASIC = 10,
  // A natural dye on a mordant.
  RECLOTH_BATH_NATURAL = 11,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_bath recloth_bath;
#else
typedef int32_t recloth_bath;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// How a binding is folded over an edge.
enum recloth_binding_fold
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // One layer: both long edges are turned in.
  RECLOTH_BINDING_FOLD_SINGLE = 0,
  // Two layers, French binding: the strip is folded along its middle, both raw edges sewn in one seam.
  RECLOTH_BINDING_FOLD_DOUBLE = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_binding_fold recloth_binding_fold;
#else
typedef int32_t recloth_binding_fold;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// The shape of a button.
enum recloth_button_shape
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // A disc: the loop goes over both faces.
  RECLOTH_BUTTON_SHAPE_FLAT = 0,
  // A ball: the loop goes over its greatest circle.
  RECLOTH_BUTTON_SHAPE_BALL = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_button_shape recloth_button_shape;
#else
typedef int32_t recloth_button_shape;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// Where on a garment of woven cloth the ease is asked.
enum recloth_ease_place
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // The bust of a bodice or a dress.
  RECLOTH_EASE_PLACE_BUST = 0,
  // The waist of a dress or a bodice.
  RECLOTH_EASE_PLACE_DRESS_WAIST = 1,
  // The waist of a skirt or of trousers, which holds them up.
  RECLOTH_EASE_PLACE_SKIRT_WAIST = 2,
  // The hip of any garment.
  RECLOTH_EASE_PLACE_HIP = 3,
  // The chest of a man's shirt, from fitted to classic.
  RECLOTH_EASE_PLACE_SHIRT_CHEST = 4,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_ease_place recloth_ease_place;
#else
typedef int32_t recloth_ease_place;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// Which way an edge curves, seen from the cloth.
enum recloth_edge_curve
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Into the cloth: a neck, an armhole.
  RECLOTH_EDGE_CURVE_INWARD = 0,
  // Out of the cloth: a rounded corner, a scallop.
  RECLOTH_EDGE_CURVE_OUTWARD = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_edge_curve recloth_edge_curve;
#else
typedef int32_t recloth_edge_curve;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// What a cloth, thread or trim is made of. A blend counts as its most delicate part: ask for each.
enum recloth_fibre
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Not known, or only guessed.
  RECLOTH_FIBRE_UNKNOWN = 0,
  // Cotton.
  RECLOTH_FIBRE_COTTON = 1,
  // Linen.
  RECLOTH_FIBRE_LINEN = 2,
  // Viscose and its kin.
  RECLOTH_FIBRE_VISCOSE = 3,
  // Polyester.
  RECLOTH_FIBRE_POLYESTER = 4,
  // Acrylic.
  RECLOTH_FIBRE_ACRYLIC = 5,
  // Polyamide (nylon).
  RECLOTH_FIBRE_POLYAMIDE = 6,
  // Acetate and triacetate.
  RECLOTH_FIBRE_ACETATE = 7,
  // Elastane (spandex).
  RECLOTH_FIBRE_ELASTANE = 8,
  // Rubber, and elastic of any kind.
  RECLOTH_FIBRE_RUBBER = 9,
  // Wool.
  RECLOTH_FIBRE_WOOL = 10,
  // Silk.
  RECLOTH_FIBRE_SILK = 11,
  // Mohair and other hair.
  RECLOTH_FIBRE_MOHAIR = 12,
  // Leather and fur.
  RECLOTH_FIBRE_LEATHER = 13,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_fibre recloth_fibre;
#else
typedef int32_t recloth_fibre;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// What was done to a cloth that a bath might undo.
enum recloth_finish
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Not known.
  RECLOTH_FINISH_UNKNOWN = 0,
  // Known to have no finish, and its colour is fast, or it has none.
  RECLOTH_FINISH_PLAIN = 1,
  // Its colour is not fast.
  RECLOTH_FINISH_NOT_FAST = 2,
  // A flame-retardant finish.
  RECLOTH_FINISH_FLAME_RETARDANT = 3,
  // A resin finish, such as against creases.
  RECLOTH_FINISH_RESIN = 4,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_finish recloth_finish;
#else
typedef int32_t recloth_finish;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// What else is in a bath, or was and has not been rinsed out of the goods and the vessel.
enum recloth_in_bath
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Not known.
  RECLOTH_IN_BATH_UNKNOWN = 0,
  // Water and nothing else.
  RECLOTH_IN_BATH_WATER_ONLY = 1,
  // An acid: vinegar, descaler, cleaners for toilets, drains or rust, a dishwasher's rinse.
  RECLOTH_IN_BATH_ACID = 2,
  // Ammonia, many glass cleaners, urine.
  RECLOTH_IN_BATH_AMMONIA = 3,
  // Alcohol, spirit, sanitiser.
  RECLOTH_IN_BATH_ALCOHOL = 4,
  // Peroxide or another oxygen bleach.
  RECLOTH_IN_BATH_PEROXIDE = 5,
  // Thiosulfate, sulfite or another neutraliser.
  RECLOTH_IN_BATH_NEUTRALISER = 6,
  // Anything else: detergent, dye, mordant.
  RECLOTH_IN_BATH_OTHER = 7,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_in_bath recloth_in_bath;
#else
typedef int32_t recloth_in_bath;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// Where a strip is let in.
enum recloth_insert_place
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // A seam that is opened: its edges have their allowances.
  RECLOTH_INSERT_PLACE_SEAM = 0,
  // A cut through the cloth: its edges lose theirs to the new seams.
  RECLOTH_INSERT_PLACE_SLASH = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_insert_place recloth_insert_place;
#else
typedef int32_t recloth_insert_place;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// What takes the last chlorine away, and what it turns into: the same salt has more than one answer.
enum recloth_reaction
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Sodium thiosulfate crystals (pentahydrate) to tetrathionate: the safe upper figure.
  RECLOTH_REACTION_THIOSULFATE_TO_TETRATHIONATE = 0,
  // Sodium thiosulfate crystals (pentahydrate) to sulfate and sulfur.
  RECLOTH_REACTION_THIOSULFATE_TO_SULFUR = 1,
  // Sodium thiosulfate crystals (pentahydrate) to sulfate.
  RECLOTH_REACTION_THIOSULFATE_TO_SULFATE = 2,
  // Sodium bisulfite to sulfate.
  RECLOTH_REACTION_BISULFITE = 3,
  // Sodium metabisulfite to sulfate.
  RECLOTH_REACTION_METABISULFITE = 4,
  // Sodium sulfite to sulfate.
  RECLOTH_REACTION_SULFITE = 5,
  // Ascorbic acid (vitamin C).
  RECLOTH_REACTION_ASCORBIC_ACID = 6,
  // Hydrogen peroxide, to oxygen: it froths.
  RECLOTH_REACTION_PEROXIDE = 7,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_reaction recloth_reaction;
#else
typedef int32_t recloth_reaction;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// Which graduation a length is rounded to.
enum recloth_rounding
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // The nearer graduation; from the middle, the one further from zero.
  RECLOTH_ROUNDING_NEAREST = 0,
  // The next graduation that is not less.
  RECLOTH_ROUNDING_UP = 1,
  // The next graduation that is not more.
  RECLOTH_ROUNDING_DOWN = 2,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_rounding recloth_rounding;
#else
typedef int32_t recloth_rounding;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// Which ends of a band in sections are cut square to the lower edge.
enum recloth_square_ends
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Neither end: the band closes in a ring, or both ends slant.
  RECLOTH_SQUARE_ENDS_NEITHER = 0,
  // The first section's free end.
  RECLOTH_SQUARE_ENDS_FIRST = 1,
  // The last section's free end.
  RECLOTH_SQUARE_ENDS_LAST = 2,
  // Both free ends.
  RECLOTH_SQUARE_ENDS_BOTH = 3,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_square_ends recloth_square_ends;
#else
typedef int32_t recloth_square_ends;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// How far the goods are from the bleach.
enum recloth_stage
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Still in the bleach.
  RECLOTH_STAGE_IN_BLEACH = 0,
  // Out of it and drained, not rinsed.
  RECLOTH_STAGE_DRAINED = 1,
  // Drained and rinsed, in a fresh bath.
  RECLOTH_STAGE_FRESH_BATH = 2,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_stage recloth_stage;
#else
typedef int32_t recloth_stage;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// Stitch types whose thread is known from their path, numbered as in ISO 4915.
enum recloth_stitch_type
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Type 101, single-thread chain stitch.
  RECLOTH_STITCH_TYPE_CHAIN_SINGLE = 0,
  // Type 301, plain lockstitch.
  RECLOTH_STITCH_TYPE_LOCK = 1,
  // Type 401, two-thread chain stitch.
  RECLOTH_STITCH_TYPE_CHAIN_DOUBLE = 2,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_stitch_type recloth_stitch_type;
#else
typedef int32_t recloth_stitch_type;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// How a length is printed.
enum recloth_style
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Millimetres with every digit: reading it gives the same number, to the last bit.
  RECLOTH_STYLE_EXACT = 0,
  // Whole millimetres: `797 mm`.
  RECLOTH_STYLE_MM = 1,
  // Half millimetres: `58.5 mm`.
  RECLOTH_STYLE_MM_HALF = 2,
  // Centimetres to the millimetre: `58.4 cm`.
  RECLOTH_STYLE_CM = 3,
  // Centimetres to the millimetre with a decimal comma: `58,4 cm`.
  RECLOTH_STYLE_CM_COMMA = 4,
  // Metres to the centimetre: `1.20 m`.
  RECLOTH_STYLE_METRE = 5,
  // Metres to the centimetre with a decimal comma: `1,20 m`.
  RECLOTH_STYLE_METRE_COMMA = 6,
  // Inches and halves: `31 1/2 in`.
  RECLOTH_STYLE_INCH_HALF = 7,
  // Inches and quarters: `31 1/4 in`.
  RECLOTH_STYLE_INCH_QUARTER = 8,
  // Inches and eighths: `31 3/8 in`.
  RECLOTH_STYLE_INCH_EIGHTH = 9,
  // Inches and sixteenths: `31 3/16 in`.
  RECLOTH_STYLE_INCH_SIXTEENTH = 10,
  // Inches and thirty-seconds: `31 3/32 in`.
  RECLOTH_STYLE_INCH_THIRTY_SECOND = 11,
  // Inches and eighths as one sign, with the inch mark: `31⅜"`.
  RECLOTH_STYLE_INCH_MARK = 12,
  // Feet, inches and eighths: `2 ft 3 1/8 in`.
  RECLOTH_STYLE_FOOT_EIGHTH = 13,
  // Yards, inches and eighths: `2 yd 4 1/8 in`.
  RECLOTH_STYLE_YARD_EIGHTH = 14,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_style recloth_style;
#else
typedef int32_t recloth_style;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// How a swatch or hidden part of this very cloth stood the same bath for the same time, wet strength tried by pulling.
enum recloth_swatch
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Not tried yet.
  RECLOTH_SWATCH_UNTRIED = 0,
  // It kept its strength and did what was wanted.
  RECLOTH_SWATCH_PASSED = 1,
  // It weakened, yellowed or bled.
  RECLOTH_SWATCH_FAILED = 2,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_swatch recloth_swatch;
#else
typedef int32_t recloth_swatch;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// How the allowances of an edge and the next are joined at an outward corner.
enum recloth_corner
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // Both cut lines run on until they meet, no farther from the corner than 4 times the larger
  // allowance, where the point is cut off square.
  RECLOTH_CORNER_POINTED = 0,
  // The allowance of this edge ends square to this edge.
  RECLOTH_CORNER_SQUARED_TO_THIS = 1,
  // The allowance of the next edge ends square to the next edge.
  RECLOTH_CORNER_SQUARED_TO_NEXT = 2,
  // This edge is a turned hem: the next edge's cut line is mirrored about it.
  RECLOTH_CORNER_MIRRORED_ON_THIS = 3,
  // The next edge is a turned hem: this edge's cut line is mirrored about it.
  RECLOTH_CORNER_MIRRORED_ON_NEXT = 4,
  // The allowance of this edge ends square at the corner, in a step.
  RECLOTH_CORNER_STEPPED_ON_THIS = 5,
  // The allowance of the next edge ends square at the corner, in a step.
  RECLOTH_CORNER_STEPPED_ON_NEXT = 6,
  // Cut off square across, at a distance from the corner: its size, in recloth_piece_from_edges().
  RECLOTH_CORNER_TRIMMED = 7,
  // Rounded by an arc of a radius: its size, in recloth_piece_from_edges().
  RECLOTH_CORNER_ROUNDED = 8,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_corner recloth_corner;
#else
typedef int32_t recloth_corner;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// What the drawn line of an edge is.
enum recloth_drawn
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // The seam line: the cut line lies outside it by the allowance.
  RECLOTH_DRAWN_SEAM = 0,
  // The cut line, as of cloth already cut.
  RECLOTH_DRAWN_CUT = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_drawn recloth_drawn;
#else
typedef int32_t recloth_drawn;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// Which way the other edges of a walk run.
enum recloth_way
#if defined(__cplusplus) || __STDC_VERSION__ >= 202311L
  : int32_t
#endif // defined(__cplusplus) || __STDC_VERSION__ >= 202311L
 {
  // The start of one meets the end of the other, as of two pieces drawn with the same side up.
  RECLOTH_WAY_AGAINST = 0,
  // Start meets start, as where one of the two pieces is cut mirrored.
  RECLOTH_WAY_ALONG = 1,
};
#ifndef __cplusplus
#if __STDC_VERSION__ >= 202311L
typedef enum recloth_way recloth_way;
#else
typedef int32_t recloth_way;
#endif // __STDC_VERSION__ >= 202311L
#endif // __cplusplus

// A panel of cloth as it lies right side up on the table, with its holes and flaws. It never changes, so
// any number of threads may use it at once; free it with recloth_panel_free().
typedef struct recloth_panel recloth_panel;

// A piece of a garment: a closed ring of edges with notches, marks, a grain line and how it is cut. It
// never changes, so any number of threads may use it at once; free it with recloth_piece_free().
typedef struct recloth_piece recloth_piece;

// What was wrong: which argument, what it was and what would do.
typedef struct {
  // The status, as it was returned.
  int32_t status;
  // The argument to change, closed by a NUL.
  char argument[32];
  // The value given (for a list too long or short, its number of items).
  double value;
  // The least value that would do, NaN where there is none.
  double min;
  // The largest value that would do, NaN where there is none.
  double max;
  // The index in the list or the character in the text, from 0; -1 where there is none.
  int64_t at;
} recloth_error_t;

// An arc drawn from its chord and its rise.
typedef struct {
  // Radius of the arc (mm).
  double radius;
  // Length along the arc (mm).
  double length;
  // Angle from end to end, seen from the centre (deg).
  double angle_deg;
} recloth_arc_from_rise_t;

// A measure of stock solution.
typedef struct {
  // Stock solution to measure out (ml).
  double stock_ml;
  // What that holds (g).
  double amount_g;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_stock_volume_t;

// Strength of a bottle of bleach.
typedef struct {
  // Available chlorine by mass (%).
  double available_pct;
  // Available chlorine in grams in 100 ml, which the trade also calls percent (%).
  double trade_pct;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_available_chlorine_t;

// Goods shared out over several baths, no garment split.
typedef struct {
  // Baths needed, shared out as given.
  uint32_t batches;
  // Fewest that any sharing out could need, by total mass.
  uint32_t least;
  // Most that the vessel takes at once (g).
  double capacity_g;
  // Heaviest bath (g).
  double heaviest_g;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_batches_t;

// A bath for goods of a given mass.
typedef struct {
  // Volume of liquor (ml).
  double volume_ml;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_bath_volume_t;

// Bias strips cut from a rectangle and joined.
typedef struct {
  // Number of strips.
  uint32_t strips;
  // Length of the longest, along its shorter edge (mm).
  double longest;
  // All strips joined on the straight grain, what the joins take left off (mm).
  double joined;
  // Share of the cloth in them before joining (%).
  double kept_pct;
} recloth_bias_strips_t;

// One long bias strip cut from a tube.
typedef struct {
  // Turns of the strip round the tube.
  uint32_t turns;
  // Length of the strip (mm).
  double length;
  // What is left over along the long side, less than one turn (mm).
  double leftover;
} recloth_bias_tube_t;

// Solids of a binder laid on cloth.
typedef struct {
  // Solids in the diluted binder, least (%).
  double bath_low_pct;
  // Solids in the diluted binder, most (%).
  double bath_high_pct;
  // Solids on weight of fibre after all dips, least (%).
  double owf_low_pct;
  // Solids on weight of fibre after all dips, most (%).
  double owf_high_pct;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_binder_solids_t;

// Strips to join for a binding.
typedef struct {
  // Number of strips.
  uint32_t count;
  // What the joined strips are longer than needed (mm).
  double spare;
} recloth_binding_strips_t;

// A bleach bath mixed from a bottle.
typedef struct {
  // Bleach from the bottle (ml).
  double bleach_ml;
  // Cold water it is added to (ml).
  double water_ml;
  // Parts of water to one of bleach.
  double parts_water;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_bleach_dilution_t;

// Time in the bleach, from timed swatches.
typedef struct {
  // Time to the shade wanted (min).
  double time_min;
  // Time for the next swatch: the time found, but never more than twice the longest swatch (min).
  double next_swatch_min;
  // Share of the way to the floor gone in a minute, as a rate: the shade falls by e^-rate.
  double rate;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_bleach_time_t;

// A set of equal box pleats, or of inverted ones.
typedef struct {
  // Width before pleating, without allowances (mm).
  double flat;
  // Width when pleated (mm).
  double finished;
  // Number of pleats.
  uint32_t count;
  // Width from pleat to pleat (mm).
  double show;
  // Depth of each of a pleat's two folds (mm).
  double depth;
  // Cloth that each pleat takes up, four times its depth (mm).
  double intake;
  // Cloth that all pleats take up (mm).
  double taken_up;
  // Flat over finished: 3 where the folds just meet behind.
  double ratio;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_box_pleats_t;

// Breadths of cloth sewn into a ring.
typedef struct {
  // Number of breadths, which is also the number of seams.
  uint32_t count;
  // Way round when all are joined at their full width (mm).
  double round;
  // What that is more than wanted: gather it in, or cut the last breadth narrower (mm).
  double spare;
} recloth_breadths_t;

// The button for a slit there is, and how far a cross hole lets the front out.
typedef struct {
  // Largest diameter of a flat button (mm).
  double diameter;
  // How far the front is let out when a hole meant to start past the line is centred on it; negative lets it in (mm).
  double creep;
} recloth_button_for_hole_t;

// A loop for a button.
typedef struct {
  // Length of the loop that shows (mm).
  double visible;
  // Length to cut (mm).
  double cut;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_button_loop_t;

// The strip beyond a button line.
typedef struct {
  // From the button line to the finished edge (mm).
  double extension;
  // From the button's rim to the finished edge (mm).
  double past_rim;
  // How far the two sides lie over each other when buttoned (mm).
  double overlap;
} recloth_button_stand_t;

// How a sleeve cap compares with its armhole.
typedef struct {
  // What the cap is longer; negative when it is too short to be sewn in (mm).
  double ease;
  // The same over the armhole (%).
  double ease_pct;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_cap_ease_t;

// Liquor that goods carry out of a bath.
typedef struct {
  // Liquor carried (ml).
  double carried_ml;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_carried_liquor_t;

// A casing turned down at an edge.
typedef struct {
  // From the fold to the lower stitching (mm).
  double depth;
  // Allowance beyond the fold (mm).
  double allowance;
} recloth_casing_t;

// A skirt cut from part of a ring: where to set the compass, and how long the hem comes out.
typedef struct {
  // Radius of the waist edge (mm).
  double waist_radius;
  // Radius of the hem edge (mm).
  double hem_radius;
  // Length of the hem edge (mm).
  double hem_length;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_circle_skirt_t;

// A skirt cut from part of a ring, in equal pieces, from cloth of a given width.
typedef struct {
  // Part of a full ring.
  double fraction;
  // Waist edge to hem edge (mm).
  double length;
  // Radius of the waist edge (mm).
  double waist_radius;
  // Radius of the hem edge (mm).
  double hem_radius;
  // Length of the hem edge, all pieces together (mm).
  double hem_length;
  // Angle of one piece (deg).
  double piece_angle_deg;
  // Cloth one piece takes along the grain (mm).
  double cloth_length;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_circle_skirt_on_cloth_t;

// What one part of a garment makes of a bath.
typedef struct {
  // 0: it bears the bath; 1: a swatch decides; 2: it does not, so take it off first.
  uint32_t bears;
  // Colour it takes in this bath: 0 none, 1 some or not sure, 2 well.
  uint32_t colour;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_component_check_t;

// A mark dyed over until it no longer shows.
typedef struct {
  // Colour difference of mark and ground as they are, CIEDE2000.
  double now;
  // Depth that the dye must add to both, K/S; 0 when nothing is needed.
  double depth;
  // Reflectance of the ground then.
  double ground_after;
  // Reflectance of the mark then.
  double mark_after;
  // Colour difference then.
  double after;
} recloth_cover_mark_t;

// A band in sections whose edges are arcs about one centre.
typedef struct {
  // Radius of the upper, shorter edge (mm).
  double inner_radius;
  // Radius of the lower, longer edge (mm).
  double outer_radius;
  // Angle of all sections together (deg).
  double angle_deg;
  // Height of the longest section's lower arc above the straight line between its ends (mm).
  double sagitta;
} recloth_curved_band_t;

// A bias binding on a curved edge.
typedef struct {
  // Length of the seam that sews the binding on (mm).
  double seam;
  // What the strip is stretched along that seam; negative where it is eased (%).
  double stretch_pct;
  // Width that a bias strip keeps where it is so stretched; above 100 where it is eased (%).
  double width_pct;
} recloth_curved_binding_t;

// A length to cut so that washing brings it to size.
typedef struct {
  // Length to cut (mm).
  double cut;
  // What is added; negative for cloth that grows (mm).
  double added;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_cut_for_change_t;

// Finished and cut width of a drawn piece.
typedef struct {
  // Width between the seam lines (mm).
  double finished;
  // Width between the cut edges (mm).
  double cut;
} recloth_cut_state_t;

// A dart with two equal legs.
typedef struct {
  // Length of each leg, edge to point (mm).
  double leg;
  // Angle at the point, which is also the kink of a straight edge when the dart is closed (deg).
  double angle_deg;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_dart_t;

// What takes up as much of an edge as a dart does.
typedef struct {
  // Ease of the seam, if it is eased in (%).
  double ease_pct;
  // Ratio of the gathers, if it is gathered.
  double gather_ratio;
  // Depth of each tuck or pleat, if it is folded (mm).
  double tuck_depth;
  // `GATHERS_SCANT` or `GATHERS_LARGE` when as gathers it would look like a mistake (bits).
  uint64_t doubts;
} recloth_dart_equivalent_t;

// A dart that takes up what an edge gapes.
typedef struct {
  // Width of the dart at its own edge (mm).
  double intake;
  // Angle at the point (deg).
  double angle_deg;
} recloth_dart_from_gape_t;

// Darts that bring a given panel to a wanted width, and what is left for the side seam.
typedef struct {
  // Intake of each dart (mm).
  double intake_each;
  // Width still to be taken, at the side seam (mm).
  double leftover;
  // Length of each leg (mm).
  double leg;
  // Kink of the straight edge at each closed dart; the edge is trued there before cutting (deg).
  double kink_deg;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_dart_in_panel_t;

// A dart with a point at each end, widest between them.
typedef struct {
  // Length of each upper leg (mm).
  double upper_leg;
  // Length of each lower leg (mm).
  double lower_leg;
  // Angle at the upper point (deg).
  double upper_angle_deg;
  // Angle at the lower point (deg).
  double lower_angle_deg;
  // How far each leg turns where the dart is widest, where its fold is snipped (deg).
  double bend_deg;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_double_dart_t;

// Elastic for an edge.
typedef struct {
  // Way round the joined elastic, not stretched (mm).
  double round;
  // Length to cut, with its overlap (mm).
  double cut;
  // Stretch when worn (%).
  double worn_pct;
  // Stretch when the widest part passes through (%).
  double passing_pct;
  // Doubts raised (bits).
  uint64_t doubts;
  // Always `ELASTIC_BATH` (bits).
  uint64_t cautions;
} recloth_elastic_t;

// Widths of half a five-gored skirt by a handed-down rule: half the front, a side gore and a back.
typedef struct {
  // Half the front gore at the waist (mm).
  double front_waist;
  // Side gore at the waist (mm).
  double side_waist;
  // Back gore at the waist, its gathers included (mm).
  double back_waist;
  // Half the front gore at the hip (mm).
  double front_hip;
  // Side gore at the hip (mm).
  double side_hip;
  // Back gore at the hip (mm).
  double back_hip;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_five_gores_t;

// A flounce cut from rings.
typedef struct {
  // Radius of the seam line that is sewn on (mm).
  double inner_radius;
  // Radius of the finished hem (mm).
  double outer_radius;
  // Finished hem of all rings joined (mm).
  double hem;
  // Hem over edge: how much it ripples.
  double ratio;
  // Side of the square of cloth that each ring takes, without hem allowance (mm).
  double square;
} recloth_flounce_t;

// The strip a folded band is cut from, with its lines.
typedef struct {
  // Width to cut, raw edge to raw edge (mm).
  double cut_width;
  // Fold line from the raw edge that is sewn to the garment (mm).
  double fold_line;
  // From the fold to the raw edge of the inner layer (mm).
  double inner;
} recloth_folded_band_t;

// A cone, or a part of one between two level cuts, unrolled.
typedef struct {
  // From edge to edge along the cloth (mm).
  double slant;
  // Radius of the upper, smaller edge, laid flat (mm).
  double inner_radius;
  // Radius of the lower, larger edge, laid flat (mm).
  double outer_radius;
  // Angle of the sector (deg).
  double angle_deg;
  // Area of the sector, without allowances (mm2).
  double area_mm2;
} recloth_frustum_t;

// A strip to be gathered.
typedef struct {
  // Length of the strip before gathering, without allowances (mm).
  double flat;
  // What the gathers take up (mm).
  double taken_up;
  // Strip over line: 1.5 is half as much again.
  double ratio;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_gathers_t;

// A strip to be gathered, divided over the sections of its line.
typedef struct {
  // Length of the line, all sections together (mm).
  double finished;
  // Strip over line, the same in every section.
  double ratio;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_gather_sections_t;

// A godet: a sector let into a seam or a slit.
typedef struct {
  // Angle at the point (deg).
  double angle_deg;
  // Straight across the hem from side to side, which is the cloth's width that it takes (mm).
  double chord;
  // How far the hem bows below that (mm).
  double sagitta;
  // What all godets add to the hem (mm).
  double added;
} recloth_godet_t;

// One of several equal gores.
typedef struct {
  // Width at the waist (mm).
  double waist_width;
  // Width at the hip (mm).
  double hip_width;
  // Width at the hem (mm).
  double hem_width;
  // Length of each side edge, waist to hip to hem (mm).
  double side_length;
  // Lean of each side edge below the hip; negative where it tapers in (deg).
  double flare_deg;
  // What each side edge is longer than the middle, taken off at the hem's ends so that it hangs level (mm).
  double hem_rise;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_gore_t;

// A diamond let into two slits.
typedef struct {
  // Angle at each slit's end (deg).
  double angle_deg;
  // From slit's end to slit's end (mm).
  double long_diagonal;
  // Cut from point to point the long way, allowances included (mm).
  double cut_long;
  // Cut from point to point the short way, allowances included (mm).
  double cut_short;
} recloth_gusset_t;

// An opening that a head, or the widest part of a body, must pass.
typedef struct {
  // Least length of the slit; 0 where none is needed (mm).
  double least_slit;
  // What the opening is wider than needed; negative when it does not pass (mm).
  double spare;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_head_opening_t;

// A hem that is let down.
typedef struct {
  // Cloth left below the new edge for its hem or facing (mm).
  double left;
  // The old edge's crease above the new edge (mm).
  double crease;
  // The old hem's stitching above the new edge (mm).
  double stitching;
  // The most it can be lowered with a hem of its own (mm).
  double longest;
  // The most it can be lowered with a facing sewn on (mm).
  double longest_faced;
} recloth_hem_let_down_t;

// Cloth that a curved hem has too much of when it is turned up.
typedef struct {
  // What the raw edge is longer than the line it lies on when turned up (%).
  double excess_pct;
  // The same over the whole hem, to be eased, shrunk or folded away (mm).
  double excess;
  // Length of the raw edge before turning (mm).
  double raw_edge;
} recloth_hem_on_curve_t;

// How much larger a hip is than a waist.
typedef struct {
  // Hip less waist; negative where the waist is larger (mm).
  double drop;
  // Doubts raised, as by `waist_hip_doubts` (bits).
  uint64_t doubts;
} recloth_hip_waist_drop_t;

// The holes that stay on an edge that is shortened.
typedef struct {
  // Number of holes left.
  uint32_t count;
  // Place of the last of them, from the same end as the first (mm).
  double last;
  // From the last hole to the new end of the edge (mm).
  double to_end;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_holes_left_t;

// A strip let into a garment that is too narrow.
typedef struct {
  // Width of each strip between its seam lines, as it shows (mm).
  double finished;
  // Width to cut each strip (mm).
  double cut_width;
  // Cloth that all strips take side by side (mm).
  double cloth;
} recloth_insert_strip_t;

// A set of equal knife pleats.
typedef struct {
  // Width before pleating, without allowances (mm).
  double flat;
  // Width when pleated (mm).
  double finished;
  // Number of pleats.
  uint32_t count;
  // Width of each pleat that shows (mm).
  double show;
  // Depth of each pleat's underlay, fold to fold (mm).
  double depth;
  // Cloth that each pleat takes up, twice its depth (mm).
  double intake;
  // Cloth that all pleats take up (mm).
  double taken_up;
  // Flat over finished: 3 where pleats just touch.
  double ratio;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_knife_pleats_t;

// A colour in CIELAB.
typedef struct {
  // Lightness L*: 0 is black, 100 white.
  double l;
  // a*: green below 0, red above.
  double a;
  // b*: blue below 0, yellow above.
  double b;
} recloth_lab_t;

// The unknown of a chain of lengths, and how sure it is.
typedef struct {
  // The length sought (mm).
  double value;
  // What the known terms with a plus add up to (mm).
  double plus;
  // What the known terms with a minus take away (mm).
  double minus;
  // How far the value is off at worst, for each mm that every known length may be off.
  double worst_per_mm;
  // How far the value is off in the usual case, for each mm that every known length may be off.
  double likely_per_mm;
} recloth_length_chain_t;

// How sure the unknown of a chain of lengths is, and which term does most to it.
typedef struct {
  // The length sought (mm).
  double value;
  // How far it is off when every error falls the same way (mm).
  double worst;
  // How far it is off when they fall by chance: the root of the sum of their squares (mm).
  double likely;
  // Index of the term whose error moves it most, of equals the first; their number is the total.
  uint32_t largest;
  // What that term's error adds to the worst case (mm).
  double largest_part;
} recloth_chain_shares_t;

// What the allowances of a garment give when they are let out.
typedef struct {
  // What the garment is too narrow by (mm).
  double lacking;
  // Let out at each edge (mm).
  double each;
  // Let out at all edges together (mm).
  double gained;
  // Still lacking: a strip or a gusset must give it (mm).
  double short_by;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_let_out_t;

// A hem level with a kept edge, and how far a straight cut would miss it.
typedef struct {
  // Radius of the line (mm).
  double radius;
  // Straight across from end to end of the line (mm).
  double chord;
  // How far the line bows below its chord (mm).
  double sag;
  // Length along the line (mm).
  double length;
} recloth_level_line_t;

// Length of a lining that is sewn to the top of the shell's hem, with a fold.
typedef struct {
  // Lining from its upper seam to the seam at the top of the hem, without allowances (mm).
  double seam_to_seam;
  // The shell's own distance between these two seams (mm).
  double straight;
  // What the lining is longer by, which lies in the fold (mm).
  double spare;
  // Depth of the fold, from the hem's top seam down (mm).
  double fold;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_lining_length_t;

// One liquor shared over several baths.
typedef struct {
  // All baths together, topped up (ml).
  double bath_ml;
  // Fresh water to top all of them up (ml).
  double water_ml;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_liquor_shares_t;

// A loop there is, compared with the one that just passes over its button.
typedef struct {
  // What the loop is longer than the one that just passes; negative when it is too short (mm).
  double slack;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_loop_slack_t;

// Temperature of a bath put together.
typedef struct {
  // Temperature before the pot and the air have taken their part (degC).
  double temperature_c;
  // Volume of liquor (ml).
  double volume_ml;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_mix_temperature_t;

// Panels wider at one end, laid across the cloth all one way up, or turned every other.
typedef struct {
  // Panels side by side when all lie one way up.
  uint32_t across_one_way;
  // Panels side by side when every other is turned upside down.
  uint32_t across_turned;
  // Length of cloth when all lie one way up (mm).
  double length_one_way;
  // Length of cloth when every other is turned (mm).
  double length_turned;
  // What the nap takes: the one length less the other (mm).
  double nap_extra;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_nap_layout_t;

// A machine needle's blade.
typedef struct {
  // Diameter of the blade above the scarf (mm).
  double blade;
  // Thickest thread that runs freely in its long groove (mm).
  double thread;
} recloth_needle_blade_t;

// A garment smaller than the body it is worn on.
typedef struct {
  // Finished girth of the garment at rest (mm).
  double girth;
  // Girth less the body's, so negative (mm).
  double ease;
  // Furthest girth that the cloth stretches to (mm).
  double furthest;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_negative_ease_t;

// A neutralising bath.
typedef struct {
  // Available chlorine the goods still carry (g).
  double chlorine_g;
  // Neutraliser to weigh out, excess included (g).
  double amount_g;
  // Grams of the pure stuff for a gram of available chlorine, excess left out.
  double ratio;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_neutraliser_t;

// The two fronts of a garment that opens off its centre line.
typedef struct {
  // Narrow front, button line to the cut edge at its side (mm).
  double narrow_to_line;
  // Wide front, button line to the cut edge at its side (mm).
  double wide_to_line;
  // Narrow front, opening edge to the cut edge at its side (mm).
  double narrow_cut;
  // Wide front, opening edge to the cut edge at its side (mm).
  double wide_cut;
  // Largest shift that the wide panel allows (mm).
  double largest_shift;
  // Dart from the narrow front's button line; negative beyond the line, towards the edge (mm).
  double dart_to_narrow;
  // Dart from the wide front's button line (mm).
  double dart_to_wide;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_off_centre_opening_t;

// What a dye over cloth may come to, from pale to deep.
typedef struct {
  // Reflectance where the dye takes least.
  double pale;
  // Reflectance where the dye takes most.
  double deep;
  // Lightness L* of a grey of the pale reflectance.
  double pale_l;
  // Lightness L* of a grey of the deep reflectance.
  double deep_l;
} recloth_overdye_t;

// What goes into a bath.
typedef struct {
  // Mass to weigh out (g).
  double amount_g;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_owf_t;

// A panel measured at stations along a grain line.
typedef struct {
  // Area between the first and the last station (mm2).
  double area;
  // From the first to the last station (mm).
  double length;
  // Greatest width at a station (mm).
  double widest;
  // Least width at a station (mm).
  double narrowest;
  // Farthest that a side leaves the straight line between its ends, measured across (mm).
  double largest_bow;
} recloth_panel_by_offsets_t;

// A panel of corners measured by tape.
typedef struct {
  // Area within the corners (mm2).
  double area;
  // Way round the corners (mm).
  double perimeter;
  // Largest misfit of a spare reading, without its sign (mm).
  double largest_misfit;
  // The corner whose own triangle holds it least.
  uint32_t weakest_corner;
  // How far that corner moves at worst along or across its base, for each mm that its readings are off.
  double weakest_per_mm;
  // `TRIANGLE_FLAT` and `TRIANGLE_TALL` of any corner, `SPARE_MISFIT` when a spare reading misses by over 0.5 % (bits).
  uint64_t doubts;
} recloth_panel_by_triangles_t;

// How far points from a photograph may be trusted.
typedef struct {
  // Farthest that a point lies beyond the reference, in sizes of the reference in that direction.
  double reach;
  // Largest length that one picture unit stands for at a point (mm).
  double coarsest;
  // `PHOTO_REACH` when a point lies more than 1.5 sizes beyond the reference (bits).
  uint64_t doubts;
} recloth_photo_map_t;

// Scraps joined to one length.
typedef struct {
  // Length of all scraps joined, free ends raw (mm).
  double joined;
  // What that is longer than needed; negative when it does not reach (mm).
  double spare;
  // Number of joins when all are used.
  uint32_t joins;
  // Fewest scraps that reach, the longest taken first; 0 when all together do not.
  uint32_t fewest;
} recloth_pieced_length_t;

// Plant matter to collect.
typedef struct {
  // Least to weigh out, as it is at hand (g).
  double low_g;
  // Most to weigh out, as it is at hand (g).
  double high_g;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_plant_dyestuff_t;

// Several liquors of the same stuff poured together.
typedef struct {
  // Strength, in the unit of the strengths given (%).
  double strength_pct;
  // Volume (ml).
  double volume_ml;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_pooled_strength_t;

// A cap slashed and spread for a puff.
typedef struct {
  // Zone after spreading, before gathering (mm).
  double flat;
  // What spreading adds in all (mm).
  double added;
  // How far each slash opens (mm).
  double spread_each;
  // The ratio that the strip to be let in allows.
  double strip_ratio;
  // `GATHERS_SCANT` or `GATHERS_LARGE` when the smaller of the ratios asked for looks like a mistake (bits).
  uint64_t doubts;
} recloth_puff_spread_t;

// Equal lengths cut so that a pattern matches.
typedef struct {
  // Whole repeats in one length.
  uint32_t repeats;
  // Length to cut each (mm).
  double each;
  // All lengths together (mm).
  double total;
  // What is cut off and lies idle, all lengths together (mm).
  double waste;
} recloth_repeats_t;

// A folded strip of ribbing.
typedef struct {
  // Way round the joined strip, not stretched (mm).
  double round;
  // Length to cut, along the way it stretches (mm).
  double cut_length;
  // Width to cut, folded in two when sewn (mm).
  double cut_width;
  // Stretch that it is sewn on with (%).
  double stretch_pct;
} recloth_ribbing_t;

// Rinses, as a range.
typedef struct {
  // Rinses where the goods carry least.
  uint32_t rinses_low;
  // Rinses where the goods carry most.
  uint32_t rinses_high;
  // Share of the first liquor left after the most rinses, where the goods carry most.
  double left;
  // Fresh water for the most rinses (ml).
  double water_ml;
  // Doubts raised (bits).
  uint64_t doubts;
  // Cautions raised (bits).
  uint64_t cautions;
} recloth_rinses_t;

// A set of lengths rounded together.
typedef struct {
  // Sum of the rounded lengths, which is the rounded sum (mm).
  double total;
  // Most that any length was changed, up or down (mm).
  double largest_change;
} recloth_rounded_set_t;

// Strips for a ruffle.
typedef struct {
  // Length of the joined strip before gathering (mm).
  double flat;
  // Width to cut each strip (mm).
  double cut_width;
  // Number of strips.
  uint32_t strips;
  // Cloth that the strips take, lying side by side (mm).
  double cloth_length;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_ruffle_t;

// Cloth added at a seam for an inverted pleat.
typedef struct {
  // Added to the edge whose seam lies in the nearer inner fold (mm).
  double first_edge;
  // Added to the edge that makes the rest of the pleat (mm).
  double next_edge;
  // Both together, less the seam: what the pleat takes up (mm).
  double intake;
} recloth_seam_pleat_t;

// A band of straight sections with slanted ends.
typedef struct {
  // What each slanted end takes from the upper edge; negative where the band flares (mm).
  double slant;
  // Angle of a slanted end from the square (deg).
  double end_angle_deg;
  // Kink at each join: a peak of the lower edge and a notch of the upper; 0 without a join (deg).
  double join_kink_deg;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_sectioned_band_t;

// A band cut as part of a ring.
typedef struct {
  // Radius of the upper, shorter edge (mm).
  double inner_radius;
  // Radius of the lower, longer edge (mm).
  double outer_radius;
  // Angle of the sector (deg).
  double angle_deg;
  // Height of the lower edge's arc above the straight line between its ends (mm).
  double sagitta;
  // Area of the band (mm2).
  double area_mm2;
} recloth_shaped_band_t;

// Cloth drawn up by rows of elastic thread.
typedef struct {
  // Width before shirring, without allowances (mm).
  double flat;
  // Flat over finished.
  double ratio;
  // Number of rows.
  uint32_t rows;
  // All rows together, as sewn on the flat cloth (mm).
  double stitching;
  // Always `ELASTIC_BATH` (bits).
  uint64_t cautions;
} recloth_shirring_t;

// A shell and its lining, washed.
typedef struct {
  // Shell after washing, if it is sewn as given (mm).
  double shell_after;
  // Lining after washing, if it is sewn as given (mm).
  double lining_after;
  // How far the lining then hangs below the shell; negative above (mm).
  double below;
  // Shell to cut so that washing leaves the length given (mm).
  double shell_cut;
  // Lining to cut so that washing leaves the length given (mm).
  double lining_cut;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_shrink_pair_t;

// The step from size to size.
typedef struct {
  // From one size to the next, all round (mm).
  double step;
  // The same at each edge of the pattern (mm).
  double each_edge;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_size_step_t;

// Snips or notches that let a curved allowance lie flat.
typedef struct {
  // From snip to snip along the seam line (mm).
  double spacing;
  // How far a straight fold between two snips leaves the curve (mm).
  double flat;
} recloth_snip_spacing_t;

// Buttons or holes at nearly a wanted pitch.
typedef struct {
  // Number of buttons, the first and last included.
  uint32_t count;
  // From middle to middle of neighbours (mm).
  double pitch;
} recloth_spacing_by_pitch_t;

// Buttons spaced through one fixed place.
typedef struct {
  // From middle to middle before the fixed place (mm).
  double pitch_before;
  // From middle to middle after the fixed place (mm).
  double pitch_after;
  // Which of the places is the fixed one, from 0.
  uint32_t fixed;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_spacing_through_t;

// A colour by its screen levels.
typedef struct {
  // Red, 0 to 255 where a screen can show it.
  double red;
  // Green, 0 to 255 where a screen can show it.
  double green;
  // Blue, 0 to 255 where a screen can show it.
  double blue;
  // How many of the three a screen cannot show.
  uint32_t outside;
} recloth_srgb_t;

// The strip a straight band is cut from.
typedef struct {
  // Length to cut, allowances included (mm).
  double cut_length;
  // Width to cut, allowances included (mm).
  double cut_width;
  // How many such strips.
  uint32_t strips;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_straight_band_t;

// What is taken in at the seams of a garment.
typedef struct {
  // What the garment is too wide by (mm).
  double excess;
  // Taken at each edge, beyond its old seam line (mm).
  double each;
  // Taken at all edges together (mm).
  double taken;
  // Left for darts or the centre back (mm).
  double leftover;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_take_in_t;

// Tiers, each gathered to the one above.
typedef struct {
  // Way round the last tier, which is the hem (mm).
  double hem;
  // Hem over the top edge.
  double ratio;
  // All tiers together, as one strip (mm).
  double strip;
  // `GATHERS_SCANT` when any tier is gathered by less than 1.2, `GATHERS_LARGE` by more than 4 (bits).
  uint64_t doubts;
} recloth_tiers_t;

// How far a row of equal seams may be off.
typedef struct {
  // When every error falls the same way (mm).
  double worst;
  // When they fall by chance: the root of the sum of their squares (mm).
  double likely;
} recloth_tolerance_stack_t;

// How far a set of unlike terms may be off.
typedef struct {
  // When every error falls the same way (mm).
  double worst;
  // When they fall by chance: the root of the sum of their squares (mm).
  double likely;
  // Index of the term that adds most, of equals the first.
  uint32_t largest;
  // What that term adds to the worst case (mm).
  double largest_part;
} recloth_tolerance_stack_list_t;

// A point measured by tape from both ends of a base, and how sure it is.
typedef struct {
  // From the start along the base, negative behind the start (mm).
  double along;
  // Square to the base (mm).
  double across;
  // How far along the base the point moves at worst, for each mm that both readings are off.
  double along_per_mm;
  // How far across the base the point moves at worst, for each mm that both readings are off.
  double across_per_mm;
  // `TRIANGLE_FLAT` when `across_per_mm` passes 5, `TRIANGLE_TALL` when `along_per_mm` does (bits).
  uint64_t doubts;
} recloth_trilaterate_t;

// A set of equal tucks.
typedef struct {
  // Width before tucking, without allowances (mm).
  double flat;
  // Cloth that all tucks take up (mm).
  double taken_up;
  // From fold line to fold line on the flat cloth (mm).
  double fold_pitch;
  // What shows between a tuck's fold and the next one's stitching; 0 for blind tucks (mm).
  double gap;
  // Width left beside the first and the last stitching, together (mm).
  double margin;
  // `PLEATS_OVERLAP` when tucks lie over each other (bits).
  uint64_t doubts;
} recloth_tucks_t;

// A bundle of cloth that is to pass through an opening.
typedef struct {
  // Diameter of the bundle (mm).
  double diameter;
  // Least flat width of an opening that it passes (mm).
  double least_opening;
  // What the opening is wider than that; negative when the bundle does not pass (mm).
  double spare;
} recloth_turn_through_t;

// Cloth for a turned hem.
typedef struct {
  // Hem allowance, from the finished edge to the raw edge (mm).
  double allowance;
  // Length to cut, with that allowance and no other (mm).
  double cut_length;
} recloth_turned_hem_t;

// One side of a V neck.
typedef struct {
  // Length of the straight edge on one side (mm).
  double edge;
  // Angle of the edge from the grain that runs down the middle (deg).
  double off_grain_deg;
  // Length of the tape that stays the edge on one side (mm).
  double stay;
} recloth_v_neck_t;

// Cloth after several washes.
typedef struct {
  // Length after all washes (mm).
  double after;
  // Change from the first length to the last (%).
  double change_pct;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_washes_t;

// Ease that authors give, from the least of them to the most.
typedef struct {
  // The least that an author gives, all round (mm).
  double low;
  // The most that an author gives, all round (mm).
  double high;
  // Finished girth with the least (mm).
  double garment_low;
  // Finished girth with the most (mm).
  double garment_high;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_wearing_ease_t;

// A length of cloth turned into one of another width: a range, for a layout does not scale.
typedef struct {
  // Length of the same area (mm).
  double by_area;
  // Least that the printed tables give, 0.9 times the area's (mm).
  double low;
  // Most that the printed tables give, 1.12 times the area's (mm).
  double high;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_width_conversion_t;

// Widths of a wrap skirt's parts.
typedef struct {
  // Back at the waist, side seam to side seam (mm).
  double back_waist;
  // Back at the hip (mm).
  double back_hip;
  // Each front at the waist, side seam to its finished edge (mm).
  double front_waist;
  // Each front at the hip (mm).
  double front_hip;
  // Waist edge of all three parts, which is the length of its band without ties (mm).
  double waist_edge;
  // How far each front reaches past the centre line, as a share of half a front (%).
  double wrap_pct;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_wrap_skirt_t;

// A colour by its tristimulus values; white has a `y` of 1.
typedef struct {
  // X.
  double x;
  // Y, the luminance: share of the white's.
  double y;
  // Z.
  double z;
} recloth_xyz_t;

// A buttonhole worked in zigzag by machine.
typedef struct {
  // Length over all, bars included (mm).
  double length;
  // Width over all (mm).
  double width;
  // Stitches of the two sides together.
  uint32_t stitches;
} recloth_zigzag_buttonhole_t;

// A zip for an opening.
typedef struct {
  // Length needed, top stop to bottom stop (mm).
  double needed;
  // Length to buy, the next that is sold (mm).
  double buy;
  // What that is too long, to be taken off by a new bottom stop (mm).
  double shorten;
  // Top stop from the raw edge at the top (mm).
  double top_stop;
  // Bottom stop from the raw edge at the top (mm).
  double bottom_stop;
} recloth_zip_length_t;

// What a piece is, in numbers.
typedef struct {
  // Number of edges.
  size_t edges;
  // Number of marks.
  size_t marks;
  // How many are cut in all.
  uint32_t count;
  // 1 where half of them are cut mirrored, else 0.
  uint32_t mirrored;
  // Index of the edge on the fold of the cloth; -1 where there is none.
  int64_t fold;
  // Area inside the drawn lines (mm2).
  double area_mm2;
  // Least x of the drawn lines (mm).
  double left;
  // Least y (mm).
  double bottom;
  // Largest x (mm).
  double right;
  // Largest y (mm).
  double top;
  // Direction of the grain, counter-clockwise from the x axis (deg).
  double grain_deg;
} recloth_piece_facts_t;

// A place on the outline of a piece.
typedef struct {
  // Index of the edge.
  size_t edge;
  // Distance from its start along it (mm).
  double distance;
} recloth_place_t;

// A line or arc of a cut line or seam line.
typedef struct {
  // Start (mm).
  double start_x;
  // Start (mm).
  double start_y;
  // End (mm).
  double end_x;
  // End (mm).
  double end_y;
  // 0 for a line, for an arc the tangent of a quarter of its sweep, positive counter-clockwise.
  double bulge;
  // Index of the edge it is parallel to; -1 in a corner.
  int64_t edge;
} recloth_segment_t;

// A notch carried from the drawn line to the cut line.
typedef struct {
  // Index of its edge.
  size_t edge;
  // How many marks side by side.
  uint32_t marks;
  // How it is cut: 0 a slit, 1 a wedge.
  int32_t form;
  // How far it is cut in from the cut line (mm).
  double depth;
  // Where it is on the drawn line (mm).
  double seam_x;
  // Where it is on the drawn line (mm).
  double seam_y;
  // Where it is on the cut line (mm).
  double cut_x;
  // Where it is on the cut line (mm).
  double cut_y;
} recloth_cut_notch_t;

// Where a dart is turned to.
typedef struct {
  // Name of the new dart, UTF-8, closed by a NUL.
  const char *name;
  // Where on the outline it opens.
  recloth_place_t at;
  // Its share of the turned dart's angle, above 0 to 1.
  double share;
} recloth_opening_t;

// A straight slash across a piece, and how far it is spread.
typedef struct {
  // The end that is spread.
  recloth_place_t open;
  // The other end.
  recloth_place_t hinge;
  // How far it opens at its start (mm, 0 to 10000).
  double open_by;
  // How far at its end (mm, 0 to 10000): 0 for a hinge, as much as `open_by` for a parallel spread.
  double hinge_by;
} recloth_slash_t;

// A line, arc or cubic curve.
typedef struct {
  // Start (mm).
  double start_x;
  // Start (mm).
  double start_y;
  // End (mm).
  double end_x;
  // End (mm).
  double end_y;
  // 0 for a line, for an arc the tangent of a quarter of its sweep, positive counter-clockwise; not
  // used for a cubic.
  double bulge;
  // 1 for a cubic Bezier curve, whose steering points follow, else 0.
  uint32_t cubic;
  // First steering point (mm).
  double first_x;
  // First steering point (mm).
  double first_y;
  // Second steering point (mm).
  double second_x;
  // Second steering point (mm).
  double second_y;
} recloth_curve_t;

// Two rows of edges walked along each other.
typedef struct {
  // Length of these edges (mm).
  double length;
  // Length of the other edges (mm).
  double other_length;
  // `length - other_length` (mm): what must be eased in, if positive.
  double difference;
  // Kink of the edges that run on across the seam where the walk starts, once it is sewn (deg): 0 smooth,
  // positive a peak, negative a dent; NaN where one of them lies on a fold.
  double start_kink_deg;
  // The same where the walk ends.
  double end_kink_deg;
} recloth_walk_t;

// How well an edge fitted where it was copied.
typedef struct {
  // Length of the edge as it was copied (mm).
  double length;
  // Length of what it replaced (mm).
  double replaced;
  // How far it was turned, counter-clockwise (deg).
  double turn_deg;
  // What it was stretched by (%), negative where it was shrunk.
  double stretch_pct;
  // What the landmarks are farther apart than its ends (mm), negative where they are nearer.
  double gap;
  // Doubts raised (bits).
  uint64_t doubts;
} recloth_copied_t;

// What a panel is, in numbers.
typedef struct {
  // Number of points of its outline.
  size_t points;
  // Number of holes.
  size_t holes;
  // Number of flaws.
  size_t flaws;
  // Number of spare readings.
  size_t spares;
  // How many of its sides may show, 1 or 2.
  uint32_t faces;
  // 1 where it has a nap, pile or one-way print, else 0.
  uint32_t nap;
  // Area of cloth, holes taken off, flaws included (mm2).
  double area_mm2;
  // Least x (mm).
  double left;
  // Least y (mm).
  double bottom;
  // Largest x (mm).
  double right;
  // Largest y (mm).
  double top;
  // Direction of the lengthwise grain, counter-clockwise from the x axis (deg).
  double grain_deg;
  // Largest misfit of a spare reading, without its sign (mm); NaN where there is none.
  double largest_misfit;
  // Doubts about the measuring (bits); recloth_doubt_text() puts each into words.
  uint64_t doubts;
} recloth_panel_facts_t;

// A rectangle on grain in a panel.
typedef struct {
  // The corner from which the width runs across the grain, and the height along it to its left (mm).
  double x;
  // The same corner (mm).
  double y;
  // Width across the grain (mm).
  double width;
  // Height along the grain (mm).
  double height;
  // Direction of the grain, counter-clockwise from the x axis (deg).
  double grain_deg;
  // Area (mm2).
  double area_mm2;
} recloth_rectangle_t;

// What a search calls while it works, many times a second, from the thread that called it: `done` is the share
// of the budget or the time that is used up (0 to 1), `best` the best so far, NaN before there is one: of recloth_fit()
// the share of the wanted area that is laid (0 to 1), of recloth_strip() the least length (mm), of others always NaN;
// `user` is what was given along. It returns 0 to go on; anything else stops the search.
typedef int (*recloth_progress)(double done, double best, void *user);

// What makes the parts of a value for recloth_largest(), from the thread that called it: `parts` receives a list of
// parts as JSON, as of recloth_fit(), closed by a NUL; it is read before the next call and stays the caller's, who may
// keep it in `user`. It returns 0; anything else ends the search, which then fails with RECLOTH_STATUS_INVALID of
// `parts_at` and that number in the error's value.
typedef int (*recloth_parts_at)(double value, const char **parts, void *user);

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

// The version of the library, as `0.1.0`; a constant string.
const char *recloth_version(void);

// Puts an error into words, as `waist = -1 is not between 1 and 100000`.
//
// - `error`: as a function filled it.
// - `out`: receives the sentence, cut short where the room ends, and a closing NUL.
// - `out_count`: room in bytes; 160 hold every sentence.
//
// `error` is NULL or valid; `out` is NULL or valid for `out_count` bytes.
recloth_status recloth_error_text(const recloth_error_t *error, char *out, size_t out_count);

// Radius and length of the curve that rises so far over its chord.
//
// `radius = (chord² / 4 + rise²) / (2 · rise)`, angle `4 · atan(2 · rise / chord)`, length their product. For a waist,
// hem or yoke edge on a panel there is: lay a ruler across its ends and measure the rise in the middle, where the curve
// is near enough an arc. A rise above half the chord is more than a half ring.
//
// - `chord`: straight from end to end (mm, 1 to 100000).
// - `rise`: height of the curve over the chord's middle (mm, 0.1 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_arc_from_rise(double chord,
                                     double rise,
                                     recloth_arc_from_rise_t *out,
                                     recloth_error_t *error);

// Volume of a stock solution for so many grams in a litre of bath.
//
// `stock = mass · ratio · grams / (10 · stock_pct)`: salt, soda and other assistants go by the bath, not by the goods. Usual
// are up to 100 g of salt; more than 150 g in a litre, and a stock outside 0.05 to 50, are doubted.
//
// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
// - `ratio`: liquor to goods, by mass (1 to 200).
// - `grams`: grams in a litre of bath (0 to 500).
// - `stock_pct`: grams in 100 ml of the stock (%, 0.001 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_assistant_volume(double mass_g,
                                        double ratio,
                                        double grams,
                                        double stock_pct,
                                        recloth_stock_volume_t *out,
                                        recloth_error_t *error);

// Available chlorine of bleach from the sodium hypochlorite on its label.
//
// `available = NaOCl · 70.906 / 74.442`. Labels mix three percentages: sodium hypochlorite by mass, available chlorine by
// mass, and grams of available chlorine in 100 ml; a bottle marked 10 or 12.5 usually means the last. Which one a label
// means changes the answer by up to a fifth. A public health table that takes 5 % hypochlorite as 5 % available chlorine
// is 5 % off, on purpose. Bleach weakens in store: an old bottle is weaker than its label, never stronger. Outside 1 to
// 15 % the strength is doubted: 0.05 may be a share for 5 %.
//
// - `naocl_pct`: sodium hypochlorite by mass (%, 0.1 to 20).
// - `specific_gravity`: mass of a millilitre of it (g) (1 to 1.3).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_available_chlorine(double naocl_pct,
                                          double specific_gravity,
                                          recloth_available_chlorine_t *out,
                                          recloth_error_t *error);

// Which garment goes into which bath, when one vessel does not hold all.
//
// The vessel takes `vessel · fill / ratio` of dry goods. The heaviest garment is placed first, each into the first bath
// with room (first fit decreasing); where `batches` is `least`, no sharing out needs fewer. A garment is never split, and
// pieces that are to be one garment belong into one bath: give them as one mass. Two baths seldom match in shade.
//
// - `masses_g`: dry mass of each garment (g, 0.01 to 1000000, 1 to 100 items).
// - `vessel_ml`: what the vessel holds to the brim (ml, 1 to 100000000).
// - `ratio`: liquor to goods, by mass (1 to 200).
// - `numbers`: filled: number of each garment's bath, from 1 (as many as masses_g).
// - `fill`: part of the vessel filled with liquor; the rest is goods and room to stir (0.1 to 1).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_batches(const double *masses_g,
                               size_t masses_g_count,
                               double vessel_ml,
                               double ratio,
                               double *numbers,
                               size_t numbers_count,
                               double fill,
                               recloth_batches_t *out,
                               recloth_error_t *error);

// Volume of a bath from the dry mass of goods and the liquor ratio.
//
// `volume = mass · ratio`, a litre of liquor taken as a kilogram: 20 is 20 litres a kilogram, often written 1:20. The
// vessel must hold more than this: the goods, and room to stir.
//
// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
// - `ratio`: liquor to goods, by mass (1 to 200).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_bath_volume(double mass_g,
                                   double ratio,
                                   recloth_bath_volume_t *out,
                                   recloth_error_t *error);

// Distance along the selvedge between the cuts of a true bias strip.
//
// A strip of width `w`, measured square to its edges, lies at 45° to the selvedge and meets it over `w · √2`. The old
// rule of a third more comes out 6 % short.
//
// - `width`: width of the strip, square to its edges (mm, 0.1 to 100000).
// - `out`: receives the answer. Distance along the selvedge, and equally across the cloth (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_bias_along_selvedge(double width,
                                           double *out,
                                           recloth_error_t *error);

// Side of the square of cloth that holds a bias strip of a given length and width.
//
// `side = √(length · width)`: the strip's area as a square, which the continuous tube comes near to. It is the least:
// add 25 to 50 mm (1 to 2 in) for the seams, more if the strip is pieced from separate strips.
//
// - `length`: length of strip needed, joins included (mm, 1 to 10000000).
// - `width`: cut width of the strip, square to its edges (mm, 0.1 to 10000, <= length).
// - `out`: receives the answer. Side of the square, without seams (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_bias_square(double length,
                                   double width,
                                   double *out,
                                   recloth_error_t *error);

// Length of bias strip that a square of cloth gives.
//
// `length = side² / width`, the other way of `bias_square`. It is the most: seams and end triangles take from it (72
// in by the sum, a 12 in square has given about 60 in of 2 in strip). Take the seams' allowances off the side first.
//
// - `side`: side of the square, less its seams (mm, 1 to 100000).
// - `width`: cut width of the strip, square to its edges (mm, 0.1 to 10000, <= side).
// - `out`: receives the answer. Length of the strip, at most (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_bias_strip_length(double side,
                                         double width,
                                         double *out,
                                         recloth_error_t *error);

// Strips that a rectangle gives when it is cut across at 45°, and their length when joined.
//
// The first cut runs from a corner, and the others lie `strip · √2` apart along the selvedge to both sides of it. Between the
// two corners' cuts the strips are full, `√2` times the shorter side; in the two end triangles each is shorter than the one
// before. Strips shorter than `shortest`, or than a join takes, are left out. Ends are cut on the straight grain, and each
// join takes `2 · √2 · allowance` along the strip. Fewer, longer pieces come from `bias_tube`.
//
// - `length`: one side of the rectangle, on grain (mm, 10 to 100000).
// - `width`: the other side (mm, 10 to 100000).
// - `strip`: width of a strip, square to its edges (mm, 1 to 10000).
// - `allowance`: seam allowance at each join (mm, 0 to 100).
// - `shortest`: shortest strip worth joining (mm, 0 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_bias_strips(double length,
                                   double width,
                                   double strip,
                                   double allowance,
                                   double shortest,
                                   recloth_bias_strips_t *out,
                                   recloth_error_t *error);

// One long bias strip from a rectangle sewn to a slanted tube.
//
// A corner is cut off at 45° and sewn to the other end; the slanted piece is marked in strips, its long sides are sewn
// together one strip out of step, and the spiral is cut. Both seams cross every turn on the straight grain. The first seam
// takes two allowances of the long side, the second two of the short: `turns = floor((long - 2 · allowance) / (strip · √2))`,
// `length = turns · (short - 2 · allowance) · √2`. Area alone, `long · short / strip`, promises up to one turn more.
//
// - `length`: one side of the rectangle, on grain (mm, 10 to 100000).
// - `width`: the other side (mm, 10 to 100000).
// - `strip`: width of the strip, square to its edges (mm, 1 to 10000).
// - `allowance`: allowance of both seams (mm, 0 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_bias_tube(double length,
                                 double width,
                                 double strip,
                                 double allowance,
                                 recloth_bias_tube_t *out,
                                 recloth_error_t *error);

// Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.
//
// `bath = solids / (1 + parts)`; each dip, dried between, leaves `bath · pick_up / 100` on weight of fibre. Homemade soymilk
// holds about 10 % of bean, bought 3 to 6 % of solids: the two are not the same measure, so read the label. A binder of
// food goes off: make it fresh, keep it cool, throw it away when it smells, and tell those who have an allergy to it. Solids
// outside 0.1 to 20 % and a pick-up below 10 % are doubted.
//
// - `low_pct`: solids of the binder undiluted, least (%, 0.01 to 50).
// - `high_pct`: solids of the binder undiluted, most (%, 0.01 to 50, >= low_pct).
// - `parts_water`: parts of water to one of binder (0 to 100).
// - `pick_up_pct`: liquor held after wringing, on dry mass (%, 1 to 500).
// - `dips`: dips, dried between (1 to 50).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_binder_solids(double low_pct,
                                     double high_pct,
                                     double parts_water,
                                     double pick_up_pct,
                                     uint32_t dips,
                                     recloth_binder_solids_t *out,
                                     recloth_error_t *error);

// Length of binding for an edge, with what its corners and its two ends take.
//
// `length = edge + corners · corner + finish`. A corner turned outward with a mitre takes, by the geometry of its fold, no
// more than the edge itself; what makers allow is for handling and for a fold that is sewn over. One tutorial allows about
// 16 in over the perimeter of a square for everything; the defaults are that, shared 2 in to a corner and 8 in to the two
// ends, a share of ours. A neck or an armhole has no corners and takes two allowances to finish. How many strips give the
// length, with what each join loses: `binding_strips`.
//
// - `edge`: length of the edge to be bound (mm, 1 to 1000000).
// - `corners`: corners to be mitred (0 to 1000).
// - `corner`: allowed for each of them (mm, 0 to 1000).
// - `finish`: for joining or finishing the two ends (mm, 0 to 10000).
// - `out`: receives the answer. Length of binding (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_binding_length(double edge,
                                      uint32_t corners,
                                      double corner,
                                      double finish,
                                      double *out,
                                      recloth_error_t *error);

// Number of strips of one length to join for a binding.
//
// Each join takes `join` off the two strips together: `count` is the least with
// `count · strip - (count - 1) · join >= length`. Strips with square ends, crossed and joined from corner to corner at 45°,
// lose their own width at each join; with ends cut at 45°, √2 times the two allowances; joined end to end, the two
// allowances.
//
// - `length`: length of binding needed, corners and ends included (mm, 1 to 1000000).
// - `strip`: length of each strip, measured along one edge (mm, 10 to 100000).
// - `join`: length lost at each join (mm, 0 to 10000, < strip).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_binding_strips(double length,
                                      double strip,
                                      double join,
                                      recloth_binding_strips_t *out,
                                      recloth_error_t *error);

// Width to cut a binding of a given finished width.
//
// Single: `2 · finished + 2 · turn + thickness`. Double: `2 · (2 · finished + turn + thickness)`. With a turn as wide as
// the binding shows these are the 4 and 6 times that are usually told. Bias narrows when it is stretched on: try a
// short piece.
//
// - `finished`: width that shows on one side (mm, 0.5 to 1000).
// - `turn`: single: turned in at each long edge; double: seam allowance (mm, 0 to 1000).
// - `thickness`: way round the edge itself: the thickness of what is bound (mm, 0 to 100).
// - `fold`: how it is folded (one of `recloth_binding_fold`).
// - `out`: receives the answer. Width to cut (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_binding_width(double finished,
                                     double turn,
                                     double thickness,
                                     int32_t fold,
                                     double *out,
                                     recloth_error_t *error);

// Bleach and water for a bath of a given strength, for a given cloth and time.
//
// `bleach = volume · target / stock`, both as available chlorine. "1 : 100" in public health tables is 1 part in 100, that
// is 1 + 99. The bleach goes into the cold water. A bath is made for a time: `minutes` is how long the goods may stay in
// at most, by the product's label and by your swatch, and sooner when the colour is reached. Test first: 15 ml bleach in
// 60 ml water on a hidden seam for a minute, or better a row of timed swatches (`bleach_time`).
//
// Usual are a target up to 0.46 %, a bottle of 1 to 15 %, up to 30 minutes and at least 50 ml; beyond that there are doubts.
//
// - `volume_ml`: volume of the bath (ml, 1 to 1000000).
// - `target_pct`: available chlorine wanted (%, 0.001 to 0.6, <= stock_pct).
// - `stock_pct`: available chlorine of the bottle (%, 0.1 to 20).
// - `minutes`: longest that the goods stay in (min, 0.1 to 60).
// - `fibre`: the most delicate fibre in the goods, thread and trims included (one of `recloth_fibre`).
// - `finish`: what was done to the cloth (one of `recloth_finish`).
// - `swatch`: how a swatch stood the same bath (one of `recloth_swatch`).
// - `in_bath`: what else is in the bath (one of `recloth_in_bath`).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_bleach_dilution(double volume_ml,
                                       double target_pct,
                                       double stock_pct,
                                       double minutes,
                                       int32_t fibre,
                                       int32_t finish,
                                       int32_t swatch,
                                       int32_t in_bath,
                                       recloth_bleach_dilution_t *out,
                                       recloth_error_t *error);

// Time in the bleach to a wanted depth of shade, from swatches taken out at known times.
//
// The shade, K/S (`k_over_s`), is taken to fall to a floor by a constant share a minute:
// `ln(shade - floor)` is a straight line in time, fitted by least squares. Swatches of the same cloth, in the same
// strength and warmth, rinsed, neutralised and dried before they are judged. `swatch` tells how they stood it: pull each
// one wet; at the first weakness stop, whatever the colour. A time beyond the longest swatch is a guess: test it. A shade at
// or below the floor will not be reached at all: choose to dye over it.
//
// - `times_min`: time of each swatch, rising; 0 is not bleached (min, 0 to 60, 2 to 50 items).
// - `shades`: depth of shade K/S of each (0.001 to 500, as many as times_min).
// - `target`: depth of shade wanted (0.001 to 500).
// - `limit_min`: longest time that the product's label allows (min, 0.1 to 60).
// - `fibre`: the most delicate fibre in the goods (one of `recloth_fibre`).
// - `finish`: what was done to the cloth (one of `recloth_finish`).
// - `swatch`: how the swatches stood it, pulled wet (one of `recloth_swatch`).
// - `in_bath`: what else is in the bath (one of `recloth_in_bath`).
// - `floor`: depth of shade that bleach does not take away (0 to 500).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_bleach_time(const double *times_min,
                                   size_t times_min_count,
                                   const double *shades,
                                   size_t shades_count,
                                   double target,
                                   double limit_min,
                                   int32_t fibre,
                                   int32_t finish,
                                   int32_t swatch,
                                   int32_t in_bath,
                                   double floor,
                                   recloth_bleach_time_t *out,
                                   recloth_error_t *error);

// Doubts on a length of the body: back length, shoulder, sleeve, skirt.
//
// Below 100 mm (`BODY_LENGTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`BODY_LENGTH_LARGE`) it is
// longer than a tall person. A length over 100 cm given in centimetres passes unseen.
//
// - `length`: a length of the body (mm, 1 to 100000).
// - `out`: receives the answer. The doubts (bits).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_body_length_doubts(double length,
                                          uint64_t *out,
                                          recloth_error_t *error);

// Cloth for box pleats, or inverted ones, of a given number and depth.
//
// A box pleat is two knife pleats folded away from each other, an inverted pleat two folded towards each other: the same
// cloth seen from its two faces. `flat = finished + 4 · count · depth`. The folds meet behind a box pleat when `depth` is
// half of `show`, and then the cloth is three times the width. The four functions each find one of `flat`, `finished`,
// `count` and `depth`, as those of `knife_pleats` do.
//
// - `finished`: width when pleated (mm, 1 to 1000000).
// - `count`: number of box or inverted pleats (1 to 1000).
// - `depth`: depth of each of a pleat's two folds (mm, 0.1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_box_pleats(double finished,
                                  uint32_t count,
                                  double depth,
                                  recloth_box_pleats_t *out,
                                  recloth_error_t *error);

// Number of box pleats of at least a given depth that bring cloth there is to a width.
//
// The whole number that `(flat - finished) / (4 · depth)` holds, and then the depth at which they take up exactly what
// there is.
//
// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
// - `finished`: width when pleated (mm, 1 to 1000000, < flat).
// - `depth`: least depth of each of a pleat's two folds (mm, 0.1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_box_pleats_count(double flat,
                                        double finished,
                                        double depth,
                                        recloth_box_pleats_t *out,
                                        recloth_error_t *error);

// Depth of a given number of box pleats that bring cloth there is to a width.
//
// `depth = (flat - finished) / (4 · count)`.
//
// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
// - `finished`: width when pleated (mm, 1 to 1000000, < flat).
// - `count`: number of box or inverted pleats (1 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_box_pleats_depth(double flat,
                                        double finished,
                                        uint32_t count,
                                        recloth_box_pleats_t *out,
                                        recloth_error_t *error);

// Width to which a given number of box pleats brings cloth there is.
//
// `finished = flat - 4 · count · depth`.
//
// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
// - `count`: number of box or inverted pleats (1 to 1000).
// - `depth`: depth of each of a pleat's two folds (mm, 0.1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_box_pleats_finished(double flat,
                                           uint32_t count,
                                           double depth,
                                           recloth_box_pleats_t *out,
                                           recloth_error_t *error);

// Number of breadths of cloth that a ring of a given length takes.
//
// Each breadth gives its width less an allowance at both sides, and as many seams as breadths close the ring:
// `count = ceil(flat / (cloth_width - 2 · allowance))`.
//
// - `flat`: way round before gathering or pleating (mm, 1 to 1000000).
// - `cloth_width`: width of the cloth, or length of each strip there is (mm, 1 to 100000).
// - `allowance`: seam allowance at each join (mm, 0 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_breadths(double flat,
                                double cloth_width,
                                double allowance,
                                recloth_breadths_t *out,
                                recloth_error_t *error);

// Diameter of a button from its size in lines.
//
// A button line is the fortieth part of an inch: `diameter = 0.635 · lines`. It is not the watchmaker's line of
// 2.26 mm, nor the eleventh of an inch by which hat ribbon is sold.
//
// - `lines`: size of the button, in lines (1 to 1000).
// - `out`: receives the answer. The diameter (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_button_diameter(double lines,
                                       double *out,
                                       recloth_error_t *error);

// Largest flat button for a slit, and the creep of a cross hole.
//
// `diameter = slit - thickness`. The button sits at the end of a cross hole: a hole that is centred on the line instead
// of starting `start` beyond it lets the front out by `slit / 2 - start`. A hole that runs along the edge does not creep.
//
// - `slit`: length of the slit (mm, 1 to 300).
// - `thickness`: thickness of the button at its thickest (mm, 0 to 100, < slit).
// - `start`: where a cross hole should start, past the line to the edge (mm, 0 to 300, <= slit).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_button_for_hole(double slit,
                                       double thickness,
                                       double start,
                                       recloth_button_for_hole_t *out,
                                       recloth_error_t *error);

// Largest button for a stand there is.
//
// `button_stand` the other way: `diameter = extension / share`. An old front keeps its stand; a button larger than the
// stand allows hangs over the edge.
//
// - `extension`: from the button line to the finished edge (mm, 1 to 600).
// - `share`: extension over diameter (0.5 to 3).
// - `out`: receives the answer. Diameter of the button (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_button_for_stand(double extension,
                                        double share,
                                        double *out,
                                        recloth_error_t *error);

// Loop of cord that just passes over a button.
//
// The way round the button is `P = 2 · (diameter + thickness)` for a flat one, `π · diameter` for a ball; the middle of
// the cord lies half its thickness further out all round, and its ends are sewn `gap` apart:
// `visible = (P + π · cord - gap) / (1 + stretch)`, `cut = visible + 2 · seam`. For a loop
// there is, see `loop_slack`. Try one before cutting all.
//
// - `diameter`: diameter of the button (mm, 1 to 200).
// - `thickness`: thickness of a flat button; not used for a ball (mm, 0 to 100).
// - `cord`: thickness of the cord (mm, 0 to 50).
// - `gap`: between the loop's two ends where they are sewn (mm, 0 to 500).
// - `stretch`: how much the cord may stretch: 0.3 is 30 % (0 to 3).
// - `seam`: length into the seam at each end (mm, 0 to 200).
// - `shape`: shape of the button (one of `recloth_button_shape`).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_button_loop(double diameter,
                                   double thickness,
                                   double cord,
                                   double gap,
                                   double stretch,
                                   double seam,
                                   int32_t shape,
                                   recloth_button_loop_t *out,
                                   recloth_error_t *error);

// Button stand for a button: from the line it sits on to the finished edge.
//
// `extension = share · diameter`, `past_rim = extension - diameter / 2`, `overlap = 2 · extension`. Authors differ: half the
// diameter brings the rim to the very edge, a machine manual asks for at least three quarters, others for the whole; for a
// button of 20 mm that is 10, 15 or 20 mm. Both sides have the same stand, and a waistband's overlap must equal it. A facing
// or a turn behind it is extra.
//
// - `diameter`: diameter of the button (mm, 1 to 200).
// - `share`: extension over diameter (0.5 to 3).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_button_stand(double diameter,
                                    double share,
                                    recloth_button_stand_t *out,
                                    recloth_error_t *error);

// Length of the slit for a flat button.
//
// `slit = diameter + thickness + ease`. Authors differ on the ease: a machine manual has none, others add 3 mm (1/8 in)
// for the cloth; a bound buttonhole needs none. For a square button use its diagonal as diameter. A ball needs half its
// way round instead: wrap a strip of paper round it and halve that. Always try the button in a slit in a scrap of the
// same layers before cutting: a slit cannot be made shorter.
//
// - `diameter`: diameter of the button (mm, 1 to 200).
// - `thickness`: thickness of the button at its thickest (mm, 0 to 100).
// - `ease`: extra for the thickness of the cloth (mm, 0 to 20).
// - `out`: receives the answer. Length of the slit (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_buttonhole(double diameter,
                                  double thickness,
                                  double ease,
                                  double *out,
                                  recloth_error_t *error);

// Ease of a sleeve cap in its armhole.
//
// `ease = cap - armhole`. Walk both along their seam lines, front and back apart, since a right total can hide a front that
// is short. A shirt or a dropped shoulder has 0 to 2 %, a set-in sleeve in soft cloth 3 to 6 %; more than about 6 % in firm
// cloth gathers (common practice, no source).
//
// A cap shorter than its armhole is doubted, for the two may have changed places, and so is more than 10 % of ease,
// which gathers (common practice, no source).
//
// - `armhole`: seam line of the armhole, or of a section of it (mm, 1 to 100000).
// - `cap`: seam line of the cap, or of the same section (mm, 1 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_cap_ease(double armhole,
                                double cap,
                                recloth_cap_ease_t *out,
                                recloth_error_t *error);

// Length that a sleeve cap must have for a wanted ease.
//
// `armhole · (1 + ease_pct / 100)`. Where the cap there is is short of it, raise the cap (by half of what is short, as a
// first guess, then walk it again), widen it, or lift the underarm of the armhole.
//
// - `armhole`: seam line of the armhole (mm, 1 to 100000).
// - `ease_pct`: wanted ease over the armhole (%, -20 to 100).
// - `out`: receives the answer. Seam line of the cap (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_cap_for_ease(double armhole,
                                    double ease_pct,
                                    double *out,
                                    recloth_error_t *error);

// Widest sleeve that a cap of a given length and height can have.
//
// `2 · √((cap / 2)² - height²)`, as if each half of the cap were straight. The line curves, so the sleeve is narrower than
// this: a bound, not a width to cut to. The bound shrinks as the cap is raised.
//
// - `cap`: seam line of the whole cap (mm, 1 to 100000).
// - `height`: underarm line up to the top of the cap (mm, 0 to 100000).
// - `out`: receives the answer. Upper bound of the width at the underarm line (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_cap_width_bound(double cap,
                                       double height,
                                       double *out,
                                       recloth_error_t *error);

// Liquor that goods carry out of a bath.
//
// `carried = mass · pick_up / 100`, a litre taken as a kilogram. Weigh the goods dripping, drained and wrung: that is the
// pick-up, and it differs by several times. It decides how often to rinse. Cloth spun dry holds more than 10 %, so less is
// doubted. Let hot goods cool before wringing.
//
// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
// - `pick_up_pct`: liquor held, on the dry mass (%, 0 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_carried_liquor(double mass_g,
                                      double pick_up_pct,
                                      recloth_carried_liquor_t *out,
                                      recloth_error_t *error);

// Depth and allowance of a casing for elastic or a cord.
//
// `depth = width + ease + heading`, `allowance = depth + turn_in`. A tunnel that is too wide lets the elastic roll, one too
// narrow does not let it through. A heading stands above a second line of stitching.
//
// - `width`: width of the elastic, or of the cord pressed flat (mm, 1 to 500).
// - `ease`: what the tunnel is wider (mm, 0 to 100).
// - `turn_in`: turned in at the raw edge (mm, 0 to 100).
// - `heading`: stands above the tunnel (mm, 0 to 500).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_casing(double width,
                              double ease,
                              double turn_in,
                              double heading,
                              recloth_casing_t *out,
                              recloth_error_t *error);

// How far apart two colours look, by CIEDE2000.
//
// With all three weights at 1. About 1 is just seen on plain cloth side by side; what is allowed for a match is yours to
// say. Where the two hues lie opposite each other the formula has a step, small for cloth.
//
// - `l1`: L* of one colour (0 to 100).
// - `a1`: a* of one colour (-200 to 200).
// - `b1`: b* of one colour (-200 to 200).
// - `l2`: L* of the other (0 to 100).
// - `a2`: a* of the other (-200 to 200).
// - `b2`: b* of the other (-200 to 200).
// - `out`: receives the answer. Colour difference.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_ciede2000(double l1,
                                 double a1,
                                 double b1,
                                 double l2,
                                 double a2,
                                 double b2,
                                 double *out,
                                 recloth_error_t *error);

// Radii of a skirt cut from part of a ring.
//
// The waist edge is an arc: `waist = 2π · fraction · waist_radius`. A fraction above 1 is made of several sectors.
//
// The waist is doubted as `girth_doubts` does, the length as
// `body_length_doubts`: 71 may be in centimetres.
//
// - `waist`: finished waist edge, ease included (mm, 1 to 100000).
// - `length`: waist edge to hem edge, no allowances (mm, 0 to 100000).
// - `fraction`: part of a full ring: 0.5 is a half circle (0.01 to 4).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_circle_skirt(double waist,
                                    double length,
                                    double fraction,
                                    recloth_circle_skirt_t *out,
                                    recloth_error_t *error);

// Largest part of a ring from which cloth of a given width gives a skirt of a given length.
//
// The fullest skirt that fits, up to four full rings: pieces and their lay are those of `circle_skirt_longest`, so
// each piece's width across the cloth, `(waist / (2π · fraction) + length) · across(angle)`, is at most `cloth_width`.
// There is no formula for the fraction; it is found by halving to the last bit, on the side that fits. A skirt that is
// less full need not fit: a smaller fraction has a larger radius.
//
// Doubts as for `circle_skirt`, and on cloth narrower than 200 mm.
//
// - `waist`: finished waist edge, ease included (mm, 1 to 100000).
// - `length`: waist edge to hem edge, no allowances (mm, 0 to 100000).
// - `cloth_width`: width between the selvedges, less allowances (mm, 1 to 100000).
// - `pieces`: equal pieces the part of a ring is cut in (1 to 64).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_circle_skirt_fraction(double waist,
                                             double length,
                                             double cloth_width,
                                             uint32_t pieces,
                                             recloth_circle_skirt_on_cloth_t *out,
                                             recloth_error_t *error);

// Longest skirt of a given part of a ring that cloth of a given width allows.
//
// The part of a ring is cut in equal pieces, sectors of `angle = 360° · fraction / pieces`. A piece up to a half ring
// lies with one straight edge along the selvedge and takes, of the width, `hem_radius · sin(angle)` up to a quarter
// ring and `hem_radius` from there to a half ring. A larger piece lies with its middle straight across the cloth and
// takes `hem_radius · (1 - cos(angle / 2))`: a full ring without a seam takes twice its hem radius. Folding changes
// nothing: a full ring cut through four layers is one piece, and `cloth_width` is the width before folding.
//
// Other ways to lay a piece may save cloth but turn its grain, and pieces may be nested: these are not counted. Seam
// and hem allowances are the caller's: take them off the cloth's width first.
//
// Doubts as for `circle_skirt`, and on cloth narrower than 200 mm.
//
// - `waist`: finished waist edge, ease included (mm, 1 to 100000).
// - `fraction`: part of a full ring: 0.5 is a half circle (0.01 to 4, <= pieces).
// - `cloth_width`: width between the selvedges, less allowances (mm, 1 to 100000).
// - `pieces`: equal pieces the part of a ring is cut in (1 to 64).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_circle_skirt_longest(double waist,
                                            double fraction,
                                            double cloth_width,
                                            uint32_t pieces,
                                            recloth_circle_skirt_on_cloth_t *out,
                                            recloth_error_t *error);

// Mass of a rectangle of cloth.
//
// `mass = length · width · gsm`. Weigh a cut square of known sides to find the mass per area of cloth you have.
//
// - `length`: length of the cloth (mm, 0 to 10000000).
// - `width`: width of the cloth (mm, 0 to 100000).
// - `gsm`: grams in one square metre (gsm, 0.1 to 10000).
// - `out`: receives the answer. Mass (g).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_cloth_mass(double length,
                                  double width,
                                  double gsm,
                                  double *out,
                                  recloth_error_t *error);

// Length of cloth to buy, with what repeats and nap take, rounded up to what the shop cuts.
//
// `length + repeat + extra`, up to a whole graduation. For cloth with a nap, or printed one way, all pieces lie the same
// way up; a table's length that let them lie both ways needs more: a quarter of a yard (228.6 mm) is the habit, and a
// lay of the real pieces is better than the habit. Cloth that shrinks: lengthen first.
//
// - `length`: length the pieces take (mm, 0 to 1000000).
// - `repeat`: one repeat of the pattern, bought to match it (mm, 0 to 10000).
// - `extra`: for nap, for doubt: 228.6 is a quarter of a yard (mm, 0 to 100000).
// - `graduation`: what the shop cuts by: 114.3 is an eighth of a yard (mm, 1 to 10000).
// - `out`: receives the answer. Length to buy (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_cloth_to_buy(double length,
                                    double repeat,
                                    double extra,
                                    double graduation,
                                    double *out,
                                    recloth_error_t *error);

// Whether one part of a garment bears a bath, and whether it takes colour there.
//
// Ask for every part: shell, lining, thread, interfacing, elastic, buttons; the garment bears what its weakest part bears. A
// fibre not known is refused bleach and heat until a swatch has passed, and is never said to take colour well. What bleach
// ruins whatever the swatch (wool, silk, hair, leather, elastane, acetate, polyamide, rubber; colours not fast;
// flame-retardant finishes) stays refused. Thread and lining of polyester come out of a plant dye as they went in.
//
// Usual are chlorine bleach up to 30 °C and 30 minutes, other baths up to 40 °C for an unknown fibre, 60 °C for rubber,
// elastane, acetate and leather and 4 hours above 60 °C for any; beyond that there are doubts.
//
// To find a fibre out, a burn test tells the family only, and nothing of a blend, a coated or a fused cloth: a snip the
// size of a thread, in tweezers, over water or a metal tray, window open, hair tied back, no child near.
//
// - `fibre`: what the part is made of (one of `recloth_fibre`).
// - `finish`: what was done to it (one of `recloth_finish`).
// - `swatch`: how a swatch of it stood the same bath (one of `recloth_swatch`).
// - `bath`: the bath (one of `recloth_bath`).
// - `temperature_c`: hottest it gets (degC, 0 to 100).
// - `minutes`: longest it stays in (min, 0 to 1440).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_component_check(int32_t fibre,
                                       int32_t finish,
                                       int32_t swatch,
                                       int32_t bath,
                                       double temperature_c,
                                       double minutes,
                                       recloth_component_check_t *out,
                                       recloth_error_t *error);

// Depth of dye that brings a mark within a limit of its ground.
//
// Mark and ground are taken as greys of their reflectance, the dye as adding the same K/S to both; the depth is where
// CIEDE2000 of the two first comes down to the limit. A mark of another hue than the ground shows longer than this says.
// Grease, wax, resin and scorch take dye otherwise: the forecast is void, so try the dye on the mark's own kind first. A
// ground that fades will show it again. Where no depth will do, hide the mark or recut.
//
// - `ground`: reflectance of the cloth around the mark (0.001 to 1).
// - `mark`: reflectance of the mark (0.001 to 1).
// - `limit`: colour difference that may remain (0.01 to 50).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_cover_mark(double ground,
                                  double mark,
                                  double limit,
                                  recloth_cover_mark_t *out,
                                  recloth_error_t *error);

// Upper edges of a band in sections, each cut as an arc, so that the joins have no kink.
//
// All sections are parts of one ring with `outer_radius = bottom · depth / (bottom - top)`, where `bottom` is the sum of
// the lengths; each top is its length times `top / bottom`. Every end lies on a radius, square to both edges; an end
// that overlaps is a piece of its own.
//
// - `lengths`: finished lower edge of each section, in order (mm, 1 to 100000, 1 to 100 items).
// - `depth`: finished depth, along the radius (mm, 1 to 10000).
// - `top`: finished upper edge of all sections together (mm, 1 to 10000000).
// - `tops`: filled: finished upper edge of each section (mm, as many as lengths).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_curved_band(const double *lengths,
                                   size_t lengths_count,
                                   double depth,
                                   double top,
                                   double *tops,
                                   size_t tops_count,
                                   recloth_curved_band_t *out,
                                   recloth_error_t *error);

// Stretch of a bias strip that is to lie flat on a curved edge.
//
// The strip is cut as long as the finished edge, where its fold will lie. Its seam lies `finished` further into the cloth:
// round a neck that is a longer arc, `seam = edge · (radius + finished) / radius`, and the strip is stretched to it by
// `100 · finished / radius` percent; round an outward corner a shorter one, and it is eased. Cut as long as the seam instead,
// a neck's binding stands away. A stretched bias strip grows narrower: as a net of threads that keep their length it keeps
// `√(2 - (1 + stretch)²)` of its width; press it to shape before sewing, and cut it so much wider. A stretch of 41 % would
// close the net.
//
// Handed-down rules cut the strip 5 to 10 % shorter than the edge whatever the curve (common practice, no source): that is
// right for a binding of 7 mm at radii of 70 to 140 mm, too much on a straighter edge, too little on a tighter one.
//
// - `edge`: length of the finished edge (mm, 1 to 100000).
// - `radius`: its radius (mm, 1 to 1000000).
// - `finished`: width of the binding that shows (mm, 0.5 to 1000).
// - `curve`: which way the edge curves (one of `recloth_edge_curve`).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_curved_binding(double edge,
                                      double radius,
                                      double finished,
                                      int32_t curve,
                                      recloth_curved_binding_t *out,
                                      recloth_error_t *error);

// Length to cut so that washing brings it to a finished length.
//
// `cut = finished / (1 + change / 100)`. Adding the percentage to the finished length is the usual slip and comes out
// short. Shrink cloth before cutting where you can; this is for what cannot be shrunk first.
//
// A change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.
//
// - `finished`: length wanted after washing (mm, 0 to 1000000).
// - `change_pct`: dimensional change: shrinkage of 5 % is -5 (%, -90 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_cut_for_change(double finished,
                                      double change_pct,
                                      recloth_cut_for_change_t *out,
                                      recloth_error_t *error);

// Finished and cut width of a piece, from what its two edges are drawn as.
//
// An edge drawn as cut line loses its allowance to the seam, one drawn as seam line has it added:
// `finished = drawn - cut_edges · allowance`, `cut = drawn + (2 - cut_edges) · allowance`. Which of the two a drawing
// shows is the costliest question of all: a drawn line taken for the other is wrong by two allowances a seam.
//
// - `drawn`: width as drawn, edge to edge (mm, 1 to 100000).
// - `allowance`: seam allowance at each edge (mm, 0 to 1000).
// - `cut_edges`: how many of the two edges are drawn as cut line (0 to 2).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_cut_state(double drawn,
                                 double allowance,
                                 uint32_t cut_edges,
                                 recloth_cut_state_t *out,
                                 recloth_error_t *error);

// Leg and angle of a dart from its intake and the length of its centre line.
//
// `leg = √((intake / 2)² + length²)` and `angle = 2 · atan(intake / (2 · length))`.
//
// A dart wider than it is long is doubted: the two may have changed places.
//
// - `intake`: width taken up at the edge (mm, 0 to 10000).
// - `length`: edge to point along the middle of the dart, not the leg (mm, 1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_dart(double intake,
                            double length,
                            recloth_dart_t *out,
                            recloth_error_t *error);

// Ease, gathers or tucks that take up as much as a dart, along a stretch of its edge.
//
// `ease = 100 · intake / finished`, `ratio = (finished + intake) / finished`, `depth = intake / (2 · tucks)`. They take
// the same length of the edge, but not to the same point: ease and gathers give a soft fullness below, tucks are open
// at their ends. Firm cloth eases in by some 4 to 6 %, soft wool by more: common practice, no source.
//
// - `intake`: width of the dart at the edge (mm, 0 to 10000).
// - `finished`: stretch of the edge that takes it, as it is to be sewn (mm, 1 to 100000).
// - `tucks`: number of tucks or pleats (1 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_dart_equivalent(double intake,
                                       double finished,
                                       uint32_t tucks,
                                       recloth_dart_equivalent_t *out,
                                       recloth_error_t *error);

// Dart that takes up the gape of an edge, turned to another edge.
//
// Pin the gape to a fold that runs out at the bust point; a dart of the same angle elsewhere takes it:
// `intake = gape · dart_leg / gape_distance`. A dart that is there already is widened by so much. Pin and count one
// side only: a fold pinned over the middle is shared by both. The edge is afterwards shorter by the gape.
//
// - `gape`: what is pinned out at the edge, on one side (mm, 0 to 10000).
// - `gape_distance`: from there to the bust point (mm, 1 to 10000).
// - `dart_leg`: bust point to the edge where the dart is to be (mm, 1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_dart_from_gape(double gape,
                                      double gape_distance,
                                      double dart_leg,
                                      recloth_dart_from_gape_t *out,
                                      recloth_error_t *error);

// Darts that bring a panel there is to the width wanted.
//
// The panel's own width leads, not the difference of two body measures: what must go is `panel_width - wanted_width`,
// shared evenly by the darts but no more than `largest_intake` each; the rest goes to the side seam.
// `kink = 2 · atan(intake / (2 · length))`.
//
// - `panel_width`: width there is at the edge, between seam lines (mm, 1 to 100000).
// - `wanted_width`: finished width at the edge, ease included (mm, 1 to 100000, <= panel_width).
// - `count`: number of darts (1 to 16).
// - `largest_intake`: the most that one dart may take (mm, 0 to 10000).
// - `length`: edge to point along the middle of a dart (mm, 1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_dart_in_panel(double panel_width,
                                     double wanted_width,
                                     uint32_t count,
                                     double largest_intake,
                                     double length,
                                     recloth_dart_in_panel_t *out,
                                     recloth_error_t *error);

// Intake of a dart that is turned about its point to an edge at another distance.
//
// Turning keeps the angle, so the intake grows with the leg: `intake · new_leg / leg`.
//
// - `intake`: width of the dart at the edge where it is now (mm, 0 to 10000).
// - `leg`: edge to point along the leg where it is now (mm, 1 to 10000).
// - `new_leg`: edge to point along the leg in its new place (mm, 1 to 10000).
// - `out`: receives the answer. Width of the dart at the new edge (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_dart_turned(double intake,
                                   double leg,
                                   double new_leg,
                                   double *out,
                                   recloth_error_t *error);

// Width of a dart between its point and its edge.
//
// `width = intake · distance / leg`: what is lost there when the dart is closed, or gained when it is opened.
//
// - `intake`: width of the dart at the edge (mm, 0 to 10000).
// - `leg`: edge to point along the leg (mm, 1 to 10000).
// - `distance`: from the point along the leg (mm, 0 to 10000, <= leg).
// - `out`: receives the answer. Width of the dart there (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_dart_width_at(double intake,
                                     double leg,
                                     double distance,
                                     double *out,
                                     recloth_error_t *error);

// Deepest hem on a flared edge that can still be eased in.
//
// `hem_on_curve` the other way: `depth = radius · pct / (200 + pct)`.
//
// - `radius`: radius of the finished hem edge, laid flat (mm, 1 to 1000000).
// - `excess_pct`: fullness that the cloth eases or shrinks away (%, 0 to 100).
// - `out`: receives the answer. Depth of the hem (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_deepest_hem(double radius,
                                   double excess_pct,
                                   double *out,
                                   recloth_error_t *error);

// Dimensional change of cloth in the wash, in percent; minus is shrinkage.
//
// `change = 100 · (after - before) / before`. A shrinkage stated as 8.57 % is a change of -8.57. Mark at least 350 mm apart, 50 mm from the edges, along each grain.
//
// - `before`: distance of the marks before washing (mm, 1 to 1000000).
// - `after`: distance of the marks after washing (mm, 1 to 1000000).
// - `out`: receives the answer. Change (%).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_dimensional_change(double before,
                                          double after,
                                          double *out,
                                          recloth_error_t *error);

// Legs and angles of a dart with a point at each end, as at the waist of a dress.
//
// Each half is a dart of its own: `leg = √((intake / 2)² + length²)`, `angle = 2 · atan(intake / (2 · length))`. Where
// the two meet each leg turns by half the sum of the two angles; the fold of the sewn dart is snipped there, or it
// pulls. The upper and lower legs need not be alike, but the two legs of one half must be, or the side seams hang askew.
//
// - `intake`: width taken up where the dart is widest (mm, 0 to 10000).
// - `upper`: from there to the upper point, along the middle (mm, 1 to 10000).
// - `lower`: from there to the lower point, along the middle (mm, 1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_double_dart(double intake,
                                   double upper,
                                   double lower,
                                   recloth_double_dart_t *out,
                                   recloth_error_t *error);

// Length of elastic for a waist or a cuff, and the stretch asked of it.
//
// `round = girth - shorter`, `cut = round + overlap`. Elastics differ: pin it round the body before cutting, and see that
// its own full stretch is more than `passing_pct`. The casing's edge must itself be as long as the widest part. Never
// round a throat; for children's clothes see the safety standards that hold where you are.
//
// A girth below 110 mm, less than a child's wrist (from memory), is doubted.
//
// - `girth`: girth of the body where it sits (mm, 1 to 100000).
// - `widest`: girth that it must pass over, as the hip for a waist (mm, 1 to 100000, >= girth).
// - `shorter`: what the elastic is shorter than the girth (mm, 0 to 10000, < girth).
// - `overlap`: overlap where its ends are joined (mm, 0 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_elastic(double girth,
                               double widest,
                               double shorter,
                               double overlap,
                               recloth_elastic_t *out,
                               recloth_error_t *error);

// Pitch of buttons or holes spaced evenly.
//
// `pitch = (last - first) / (count - 1)`.
//
// - `first`: place of the first, from the edge's start (mm, 0 to 100000).
// - `last`: place of the last (mm, 0 to 100000, > first).
// - `count`: how many (2 to 1000).
// - `out`: receives the answer. From middle to middle of neighbours (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_even_spacing(double first,
                                    double last,
                                    uint32_t count,
                                    double *out,
                                    recloth_error_t *error);

// Widths of a five-gored skirt's half pattern by a handed-down rule.
//
// At the waist: front an eighth, side a sixth of it, the back what is left of half. At the hip, 6 in below: the front 1 in
// wider than above, the side half as wide again, the back what is left of half the hip. The rule is for a full skirt of
// its time, 2 1/2 to 3 yd round the hem, with its fullness at the back: for gores alike use `gore`. Seams are extra.
//
// Waist and hip are doubted as the functions of `body` do.
//
// - `waist`: finished waist, ease included (mm, 1 to 100000).
// - `hip`: finished hip, ease included (mm, 1 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_five_gores(double waist,
                                  double hip,
                                  recloth_five_gores_t *out,
                                  recloth_error_t *error);

// Rings for a flounce that lies flat along its edge and ripples at its hem.
//
// Each full ring is cut open, and joined to the next or to itself: of its way round it loses an allowance at both cuts.
// `inner_radius = (edge / rings + 2 · allowance) / 2π`, `hem = rings · (2π · outer_radius - 2 · allowance)`. More rings
// make it fuller, with a smaller hole. The seam's own allowance lies inside the inner radius and is snipped to lie
// along the edge. For a part of one ring, see `circle_skirt`.
//
// - `edge`: edge that the flounce is sewn to, all round (mm, 1 to 1000000).
// - `depth`: finished depth, seam to hem (mm, 1 to 10000).
// - `rings`: number of full rings (1 to 200).
// - `allowance`: seam allowance at each cut (mm, 0 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_flounce(double edge,
                               double depth,
                               uint32_t rings,
                               double allowance,
                               recloth_flounce_t *out,
                               recloth_error_t *error);

// Width of a strip that is folded along its middle to a band, a cuff or a placket, and where its fold lies.
//
// `cut_width = 2 · depth + 2 · allowance + turn + past`, `fold_line = allowance + depth + turn / 2`. The turn is the cloth
// that the fold takes by its thickness, half from either side. An inner layer that is caught by stitching in the seam from
// the right side must reach `past` below it; sewn down by hand, 0. Interfacing ends at the fold line or goes over it as the
// cloth asks. For the strip's length see `straight_band`; for the depth of a strip there is,
// `straight_band_depth` of its width less `past`.
//
// - `depth`: finished depth (mm, 1 to 10000).
// - `allowance`: seam allowance at each long edge (mm, 0 to 1000).
// - `turn`: cloth taken by the thickness of the fold (mm, 0 to 100).
// - `past`: what the inner layer reaches past the seam (mm, 0 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_folded_band(double depth,
                                   double allowance,
                                   double turn,
                                   double past,
                                   recloth_folded_band_t *out,
                                   recloth_error_t *error);

// A length as text, rounded to the nearest graduation of the style.
//
// From the middle between two graduations it is rounded away from zero. `parse_length` reads every style, and gives
// back the same number when the length is a whole number of the style's graduations, or for the style `exact` always.
// Fractions are reduced, and a part that is nothing is left out. `exact` writes very small numbers with an exponent,
// and a fourth decimal where three could be taken for thousands: `796.9250 mm`.
//
// - `length`: the length (mm, -10000000 to 10000000).
// - `style`: how to print it (one of `recloth_style`).
// - `text`: receives the answer and a closing NUL; 64 bytes hold every answer.
// - `out`: receives the answer. The length as text..
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_format_length(double length,
                                     int32_t style,
                                     char *out,
                                     size_t out_count,
                                     recloth_error_t *error);

// Doubts on a front and a back at one level, together.
//
// One more than one and a half times the other (`FRONT_BACK_APART`) may be whole against half.
//
// - `front`: width of the front (mm, 1 to 100000).
// - `back`: width of the back (mm, 1 to 100000).
// - `out`: receives the answer. The doubts (bits).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_front_back_doubts(double front,
                                         double back,
                                         uint64_t *out,
                                         recloth_error_t *error);

// Part of a ring that rolls up to a cone, or to a part of one, of given diameters and height.
//
// `slant = √(((lower - upper) / 2)² + height²)`, `outer_radius = lower · slant / (lower - upper)`, `inner_radius = upper ·
// slant / (lower - upper)`, `angle = 180° · (lower - upper) / slant`. Hats, shades, flared cuffs and the tops of bags
// are measured so; where the edges and the slant are measured along the cloth use
// `shaped_band`, which is the same ring.
//
// - `lower_diameter`: diameter of the larger end (mm, 1 to 100000).
// - `upper_diameter`: diameter of the smaller end; 0 is a cone (mm, 0 to 100000, < lower_diameter).
// - `height`: from end to end, straight up (mm, 0 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_frustum(double lower_diameter,
                               double upper_diameter,
                               double height,
                               recloth_frustum_t *out,
                               recloth_error_t *error);

// Ratio of gathers that a strip there is gives on a line.
//
// `ratio = flat / finished`.
//
// A ratio below 1.2 or above 4 is doubted (common practice, no source).
//
// - `flat`: length of the strip, without allowances (mm, 1 to 20000000).
// - `finished`: line that the gathers are sewn to (mm, 1 to 1000000, <= flat).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_gather_ratio(double flat,
                                    double finished,
                                    recloth_gathers_t *out,
                                    recloth_error_t *error);

// Parts of a strip between its marks, so that gathers are even from notch to notch.
//
// Each section of the line takes its share of the strip: `flat · length / sum of lengths`. Quarter marks of a strip fall on
// quarter marks of the line only where these are evenly spaced: on a waist whose front is wider than its back they are not.
//
// A ratio below 1.2 or above 4 is doubted (common practice, no source).
//
// - `lengths`: sections of the line between its notches, in order (mm, 1 to 100000, 1 to 100 items).
// - `flat`: length of the strip, without allowances (mm, 1 to 20000000).
// - `flats`: filled: part of the strip for each section (mm, as many as lengths).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_gather_sections(const double *lengths,
                                       size_t lengths_count,
                                       double flat,
                                       double *flats,
                                       size_t flats_count,
                                       recloth_gather_sections_t *out,
                                       recloth_error_t *error);

// Strip to cut for gathers of a given ratio.
//
// `flat = finished · ratio`. About 1.5 for a flounce, 2 for a ruche or heavy curtain, up to 3 for sheer cloth; gather a
// sample of the cloth itself.
//
// A ratio below 1.2 or above 4 is doubted (common practice, no source).
//
// - `finished`: line that the gathers are sewn to (mm, 1 to 1000000).
// - `ratio`: strip over line; "100 % fullness" is a ratio of 2 (1 to 20).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_gathers(double finished,
                               double ratio,
                               recloth_gathers_t *out,
                               recloth_error_t *error);

// Doubts on the girth of a trunk: chest, waist or hip.
//
// Below 300 mm (`GIRTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`GIRTH_LARGE`) taken twice.
//
// - `girth`: girth of chest, waist or hip (mm, 1 to 100000).
// - `out`: receives the answer. The doubts (bits).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_girth_doubts(double girth,
                                    uint64_t *out,
                                    recloth_error_t *error);

// Sector for a godet of a given length and hem.
//
// `angle = hem / length` in radians, `chord = 2 · length · sin(angle / 2)`. Its two sides are as long as the slit; the
// hem is an arc, or it hangs in a point. A godet of more than half a ring is cut in two parts.
//
// - `length`: slit from its point to the finished hem (mm, 1 to 10000).
// - `hem`: finished hem of one godet, along its arc (mm, 1 to 100000).
// - `count`: number of godets (1 to 64).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_godet(double length,
                             double hem,
                             uint32_t count,
                             recloth_godet_t *out,
                             recloth_error_t *error);

// Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.
//
// Each width is the whole by the number of gores. A side edge runs over two slopes, `√(((hip - waist) / 2)² +
// hip_depth²) + √(((hem - hip) / 2)² + (length - hip_depth)²)` for widths of one gore, and is longer than the middle: the
// hem is curved up by `hem_rise` at its ends. The break at the hip is rounded off when the pattern is drawn.
//
// Waist, hip and length are doubted as the functions of `body` do, and a hip less than 50 mm below
// the waist.
//
// - `waist`: finished waist, ease included (mm, 1 to 100000).
// - `hip`: finished hip, ease included (mm, 1 to 100000).
// - `hem`: finished way round the hem (mm, 1 to 1000000).
// - `length`: waist to hem along the middle of a gore (mm, 1 to 100000).
// - `hip_depth`: waist to hip along the middle of a gore (mm, 0 to 10000, < length).
// - `count`: number of gores (1 to 64).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_gore(double waist,
                            double hip,
                            double hem,
                            double length,
                            double hip_depth,
                            uint32_t count,
                            recloth_gore_t *out,
                            recloth_error_t *error);

// Mass of cloth per square metre from ounces per square yard.
//
// `gsm = ounces · 33.9057`. Ounces *per running yard* are another thing: divide them by the width in yards first.
//
// - `ounces`: ounces in one square yard (0.01 to 1000).
// - `out`: receives the answer. Mass per area (gsm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_gsm_from_ounces(double ounces,
                                       double *out,
                                       recloth_error_t *error);

// Diamond gusset for two slits that meet in a seam, as under an arm.
//
// Its four sides are as long as the slits, its short diagonal is what the opened slits add across:
// `angle = 2 · asin(added / (2 · slit))`, `long_diagonal = √(4 · slit² - added²)`. Cut, an allowance all round makes the long
// way `2 · allowance / sin(angle / 2)` longer and the short way `2 · allowance / cos(angle / 2)`: sharp points need much
// cloth. Face the slit's end before it is cut, for it has no allowance there; cut last and only after a try in scrap cloth.
// The gusset lies on the bias where slits are on grain.
//
// - `slit`: length of each slit, seam to its end (mm, 1 to 10000).
// - `added`: what is to be added across, where they meet (mm, 0.1 to 20000).
// - `allowance`: seam allowance all round the gusset (mm, 0 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_gusset(double slit,
                              double added,
                              double allowance,
                              recloth_gusset_t *out,
                              recloth_error_t *error);

// Whether a neck with a slit passes over the head, and the least slit.
//
// A slit opens by its length on both sides: `neck + 2 · slit >= head + ease`. The same sum serves a skirt with a zip that
// must pass over the hip, with waist and hip for neck and head, where the skirt at the slit's end is no narrower. Measure
// the finished edge, not the neck of the body. For children no cords or drawstrings at the neck, no small loose buttons,
// no elastic round the throat: see the safety standards that hold where you are.
//
// A head below 300 mm or above 2000 mm and an edge below 110 mm are doubted: they may be in centimetres.
//
// - `head`: girth that must pass (mm, 1 to 100000).
// - `neck`: finished way round the edge, not stretched (mm, 1 to 100000).
// - `slit`: length of the slit, button placket or zip (mm, 0 to 10000).
// - `ease`: what the opening should be wider (mm, 0 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_head_opening(double head,
                                    double neck,
                                    double slit,
                                    double ease,
                                    recloth_head_opening_t *out,
                                    recloth_error_t *error);

// What is left for a hem that is let down, and where its old crease and stitching will show.
//
// The old hem holds `hem_depth + turn_in` of cloth below its edge. Lowered by `lowered_by`, the new edge has
// `left = hem_depth + turn_in - lowered_by` for its hem; with less than `keep`, a facing is sewn on (a false hem), which
// needs `seam`. The old crease lies `lowered_by` above the new edge on the right side, and the old stitching
// `hem_depth + lowered_by`: a crease that has worn or faded stays, and is covered by a tuck, a braid or stitching, or the hem
// is left. Unpick and press a hand's breadth before deciding.
//
// - `hem_depth`: depth of the old hem as it is sewn (mm, 0 to 1000).
// - `turn_in`: turned in at its raw edge; 0 where it is overcast (mm, 0 to 1000, <= hem_depth).
// - `lowered_by`: what the garment is to be longer (mm, 0 to 2000).
// - `keep`: least for a hem of its own, its turn included (mm, 0 to 1000).
// - `seam`: least for the seam of a facing (mm, 0 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_hem_let_down(double hem_depth,
                                    double turn_in,
                                    double lowered_by,
                                    double keep,
                                    double seam,
                                    recloth_hem_let_down_t *out,
                                    recloth_error_t *error);

// Fullness to ease into a hem that is turned up on a flared edge.
//
// The raw edge lies at `radius + depth`; turned up it must lie at `radius - depth`. So it is too long by
// `100 · 2 · depth / (radius - depth)` percent of where it lies, and over a hem of length `hem` by
// `2 · depth · hem / radius`. Radius is that of the hem edge laid flat: `circle_skirt` or
// `arc_from_rise` give it.
//
// - `radius`: radius of the finished hem edge, laid flat (mm, 1 to 1000000).
// - `depth`: depth of the hem (mm, 0 to 10000, < radius).
// - `hem`: length of the finished hem edge (mm, 1 to 1000000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_hem_on_curve(double radius,
                                    double depth,
                                    double hem,
                                    recloth_hem_on_curve_t *out,
                                    recloth_error_t *error);

// What the hip is larger than the waist, which may be less than nothing.
//
// `drop = hip - waist`. On a body whose waist is the larger there is nothing to dart: panels hang straight from the waist, or
// flare from the hip to it. What darts take in a panel there is follows from the panel, not from this
// (`dart_in_panel`).
//
// - `hip`: girth of hip (mm, 1 to 100000).
// - `waist`: girth of waist (mm, 1 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_hip_waist_drop(double hip,
                                      double waist,
                                      recloth_hip_waist_drop_t *out,
                                      recloth_error_t *error);

// Buttonholes left on an edge that is shortened.
//
// `count = floor((edge - first) / pitch) + 1`.
//
// - `edge`: finished length of the edge after shortening (mm, 1 to 100000).
// - `first`: first hole from the end that stays (mm, 0 to 100000, <= edge).
// - `pitch`: from hole to hole (mm, 1 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_holes_left(double edge,
                                  double first,
                                  double pitch,
                                  recloth_holes_left_t *out,
                                  recloth_error_t *error);

// Strip to let into a garment for what is lacking in its width.
//
// Each strip must add its share, `lacking / strips`. In an opened seam the old edges are sewn on their old lines, and it
// shows just that. In a cut through the cloth both new edges lose an allowance, which the strip replaces as well:
// `finished = lacking / strips + 2 · allowance`. In both places `cut_width = finished + 2 · allowance`: a strip cut for a
// seam and let into a slash is two allowances short. Cut it on the garment's own grain, of cloth washed as often. What can
// be let out first, `let_out` says.
//
// - `lacking`: what the garment is too narrow by, all round (mm, 0.1 to 10000).
// - `allowance`: seam allowance at each edge (mm, 0 to 1000).
// - `strips`: number of strips that share it (1 to 64).
// - `place`: where they are let in (one of `recloth_insert_place`).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_insert_strip(double lacking,
                                    double allowance,
                                    uint32_t strips,
                                    int32_t place,
                                    recloth_insert_strip_t *out,
                                    recloth_error_t *error);

// K/S, the depth of shade, of a reflectance.
//
// `K/S = (1 - R)² / (2 R)`. Depths add up where reflectances do not: cloth and dyes each give their own. Near black it grows
// without bounds, so small errors of R are large ones of K/S.
//
// - `reflectance`: share of the light that comes back (0.001 to 1).
// - `out`: receives the answer. K/S.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_k_over_s(double reflectance,
                                double *out,
                                recloth_error_t *error);

// Cloth for knife pleats of a given number and depth.
//
// `flat = finished + 2 · count · depth`. The four functions of knife pleats each find one of `flat`, `finished`, `count`
// and `depth` from the others, and give the same answer. Tucks are the same sum.
//
// - `finished`: width when pleated (mm, 1 to 1000000).
// - `count`: number of pleats (1 to 1000).
// - `depth`: depth of each pleat's underlay, fold to fold (mm, 0.1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_knife_pleats(double finished,
                                    uint32_t count,
                                    double depth,
                                    recloth_knife_pleats_t *out,
                                    recloth_error_t *error);

// Number of knife pleats of at least a given depth that bring cloth there is to a width.
//
// The whole number that `(flat - finished) / (2 · depth)` holds, and then the depth at which they take up exactly what
// there is: the depth wanted or a little more.
//
// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
// - `finished`: width when pleated (mm, 1 to 1000000, < flat).
// - `depth`: least depth of each pleat's underlay (mm, 0.1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_knife_pleats_count(double flat,
                                          double finished,
                                          double depth,
                                          recloth_knife_pleats_t *out,
                                          recloth_error_t *error);

// Depth of a given number of knife pleats that bring cloth there is to a width.
//
// `depth = (flat - finished) / (2 · count)`.
//
// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
// - `finished`: width when pleated (mm, 1 to 1000000, < flat).
// - `count`: number of pleats (1 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_knife_pleats_depth(double flat,
                                          double finished,
                                          uint32_t count,
                                          recloth_knife_pleats_t *out,
                                          recloth_error_t *error);

// Width to which a given number of knife pleats brings cloth there is.
//
// `finished = flat - 2 · count · depth`.
//
// - `flat`: width before pleating, without allowances (mm, 1 to 100000000).
// - `count`: number of pleats (1 to 1000).
// - `depth`: depth of each pleat's underlay, fold to fold (mm, 0.1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_knife_pleats_finished(double flat,
                                             uint32_t count,
                                             double depth,
                                             recloth_knife_pleats_t *out,
                                             recloth_error_t *error);

// CIELAB of a colour given by its screen levels, under daylight D65.
//
// Of cloth photographed: put a white card beside it, in the same even daylight, and bring the card to equal levels first.
// Without it the numbers are the lamp's and the camera's. Wet cloth is darker than dry.
//
// - `red`: red level (0 to 255).
// - `green`: green level (0 to 255).
// - `blue`: blue level (0 to 255).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_lab_from_srgb(double red,
                                     double green,
                                     double blue,
                                     recloth_lab_t *out,
                                     recloth_error_t *error);

// CIELAB of a colour given by its tristimulus values.
//
// The white is given by its chromaticity; its `Y` is 1.
//
// - `x`: X (0 to 2).
// - `y`: Y, the luminance: white has 1 (0 to 2).
// - `z`: Z (0 to 2).
// - `white_x`: chromaticity x of the white: daylight D65 (0.05 to 0.8).
// - `white_y`: chromaticity y of the white (0.05 to 0.8).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_lab_from_xyz(double x,
                                    double y,
                                    double z,
                                    double white_x,
                                    double white_y,
                                    recloth_lab_t *out,
                                    recloth_error_t *error);

// Length of lace for a laced opening.
//
// Crosswise lacing, with one bar straight across at the start: each of the `pairs - 1` steps takes two slanting stretches,
// `lace = gap + 2 · (pairs - 1) · √(gap² + pitch²) + 2 · tail`. Give the gap at its widest, when the garment is put on, or the
// lace must be drawn out each time. No lace at a child's neck or hood.
//
// - `pairs`: pairs of eyelets (1 to 100).
// - `pitch`: from eyelet to eyelet along one side (mm, 1 to 1000).
// - `gap`: across from eyelet to eyelet of a pair (mm, 0 to 10000).
// - `tail`: each end left over for a bow (mm, 0 to 10000).
// - `out`: receives the answer. Length of lace (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_lacing(uint32_t pairs,
                              double pitch,
                              double gap,
                              double tail,
                              double *out,
                              recloth_error_t *error);

// The one unknown of a chain of lengths.
//
// The chain is `total = factor · length + factor · length + …`: a factor of 1 for a length that adds, -1 for a seam
// allowance that is lost, 2 for one that is lost or won on both edges, 0.5 for half a girth. `unknown` is the index of
// the length sought, or the number of lengths when the total is sought. What stands in the unknown's place is not used,
// but must be in range: write 0.
//
// - `lengths`: the lengths (mm, 0 to 100000, 1 to 1000 items).
// - `factors`: how many times each counts, minus where lost (-100 to 100, as many as lengths).
// - `total`: what they come to (mm, 0 to 10000000000).
// - `unknown`: index of the length sought; their number: total (0 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_length_chain(const double *lengths,
                                    size_t lengths_count,
                                    const double *factors,
                                    size_t factors_count,
                                    double total,
                                    uint32_t unknown,
                                    recloth_length_chain_t *out,
                                    recloth_error_t *error);

// Each term's part in a chain of lengths and in its error.
//
// The chain and its unknown are those of `length_chain`; each length has besides how far it may be off. `parts` says
// what each term adds to the total, `factor · length`, minus where it is lost; the unknown's own part among them.
// `misses` says how far each term's error alone moves the unknown: `|factor| · error / |factor of the unknown|`. They add
// up to the worst case, the total's own among them; the unknown's own is 0. The largest of them is where a second
// measuring pays.
//
// - `lengths`: the lengths (mm, 0 to 100000, 1 to 1000 items).
// - `factors`: how many times each counts, minus where lost (-100 to 100, as many as lengths).
// - `errors`: how far each may be off (mm, 0 to 1000, as many as lengths).
// - `total`: what they come to (mm, 0 to 10000000000).
// - `unknown`: index of the length sought; their number: total (0 to 1000).
// - `parts`: filled: what each adds to the total (mm, as many as lengths).
// - `misses`: filled: how far the error of each moves the unknown (mm, as many as lengths).
// - `total_error`: how far the total may be off (mm, 0 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_length_chain_shares(const double *lengths,
                                           size_t lengths_count,
                                           const double *factors,
                                           size_t factors_count,
                                           const double *errors,
                                           size_t errors_count,
                                           double total,
                                           uint32_t unknown,
                                           double *parts,
                                           size_t parts_count,
                                           double *misses,
                                           size_t misses_count,
                                           double total_error,
                                           recloth_chain_shares_t *out,
                                           recloth_error_t *error);

// What to let out at each edge of a garment that is too narrow, and what is still short.
//
// `lacking = body + ease - garment`, shared evenly by the edges but no more than `allowance - keep` each. Look first: old seam
// lines, needle holes, a faded or worn fold and snips that reach into the allowance may show, and then it is worth nothing.
//
// A body below 110 mm, less than a child's wrist (from memory), is doubted.
//
// - `garment`: finished garment at this level, all round (mm, 1 to 100000).
// - `body`: body at this level, all round (mm, 1 to 100000).
// - `ease`: what the garment is to have more than the body (mm, -10000 to 10000).
// - `allowance`: allowance there is inside each seam, sound cloth (mm, 0 to 1000).
// - `edges`: edges that can be let out, two to a seam (1 to 64).
// - `keep`: allowance that each edge must keep (mm, 0 to 1000, <= allowance).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_let_out(double garment,
                               double body,
                               double ease,
                               double allowance,
                               uint32_t edges,
                               double keep,
                               recloth_let_out_t *out,
                               recloth_error_t *error);

// Line at an even height above a curved hem that is kept.
//
// Height is measured from the hem on its radius, so the line is an arc about the same centre: `radius = hem_radius -
// height`, its chord shrinks alike, and `sag = radius - √(radius² - chord² / 4)`. A straight cut through its ends would
// leave the panel too long by the sag in the middle; one through its middle, too short at the sides. Radius and chord of
// the hem come from `arc_from_rise`. The panel is a sector of less than half a ring.
//
// - `hem_radius`: radius of the hem that is kept (mm, 1 to 1000000).
// - `height`: height of the line above the hem (mm, 0 to 100000, < hem_radius).
// - `hem_chord`: straight across from end to end of the hem (mm, 1 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_level_line(double hem_radius,
                                  double height,
                                  double hem_chord,
                                  recloth_level_line_t *out,
                                  recloth_error_t *error);

// Light of one screen level, as a share of the most.
//
// With `c = level / 255`: `c / 12.92` up to `c = 0.04045`, above it `((c + 0.055) / 1.055)^2.4`. Levels are not light: the
// middle level 128 has a fifth of it.
//
// - `level`: red, green or blue of a picture (0 to 255).
// - `out`: receives the answer. Share of the most light.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_linear_light(double level,
                                    double *out,
                                    recloth_error_t *error);

// Length to cut a lining that hangs free of the shell's hem, below its upper seam line.
//
// `length - clearance + hem`.
//
// - `length`: finished shell, upper seam to hem edge (mm, 1 to 100000).
// - `clearance`: lining's hem edge above the shell's (mm, 0 to 10000, < length).
// - `hem`: all the cloth of the lining's own hem, turn included (mm, 0 to 10000).
// - `out`: receives the answer. Upper seam line to the lower cut edge (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_lining_free_length(double length,
                                          double clearance,
                                          double hem,
                                          double *out,
                                          recloth_error_t *error);

// Length of a lining that hangs in a fold over the shell's hem.
//
// The fold ends `clearance` above the finished edge and runs back up to the top of the hem:
// `seam_to_seam = (length - clearance) + (hem_depth - clearance)`, `fold = hem_depth - clearance`. Width and shrinkage
// are other questions; a lining without walking room needs a slit.
//
// The length is doubted as `body_length_doubts` does.
//
// - `length`: finished shell, upper seam to hem edge (mm, 1 to 100000).
// - `hem_depth`: finished depth of the shell's hem (mm, 0 to 10000, <= length).
// - `clearance`: lining's fold above the hem edge (mm, 0 to 10000, < hem_depth).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_lining_length(double length,
                                     double hem_depth,
                                     double clearance,
                                     recloth_lining_length_t *out,
                                     recloth_error_t *error);

// Width to cut a lining panel that meets a facing.
//
// `width = (panel - facing) · (1 + ease_pct / 100) + pleat`, between seam lines: the lining must never be what strains, so it
// is wider than what it lines. A pleat at the centre back gives room to reach. Panels without a facing have `facing = 0`.
//
// - `panel`: finished shell panel, seam line to edge (mm, 1 to 100000).
// - `facing`: finished facing, edge to the seam that joins the lining (mm, 0 to 100000, < panel).
// - `ease_pct`: what the lining is wider than what it lines (%, 0 to 50).
// - `pleat`: cloth of a pleat, both layers of its fold (mm, 0 to 10000).
// - `out`: receives the answer. Width of the lining panel between seam lines (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_lining_width(double panel,
                                    double facing,
                                    double ease_pct,
                                    double pleat,
                                    double *out,
                                    recloth_error_t *error);

// A pooled liquor shared by dry mass, and the water that brings every bath to one liquor ratio.
//
// `share = pooled · mass / (sum of masses)`, topped up to `mass · ratio`. So all goods have the same dye for their mass in
// the same liquor; they still seldom match, as no two baths heat alike.
//
// - `masses_g`: dry mass of each bath's goods (g, 0.01 to 1000000, 1 to 100 items).
// - `pooled_ml`: liquor to share (ml, 0 to 1000000000).
// - `ratio`: liquor to goods, by mass (1 to 200).
// - `shares_ml`: filled: pooled liquor for each bath (ml, as many as masses_g).
// - `waters_ml`: filled: water added to each bath (ml, as many as masses_g).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_liquor_shares(const double *masses_g,
                                     size_t masses_g_count,
                                     double pooled_ml,
                                     double ratio,
                                     double *shares_ml,
                                     size_t shares_ml_count,
                                     double *waters_ml,
                                     size_t waters_ml_count,
                                     recloth_liquor_shares_t *out,
                                     recloth_error_t *error);

// Slack of a loop there is, or of one chosen, on a button.
//
// `slack = length - visible`, where `visible` is what `button_loop` gives for the same button.
//
// - `length`: length of the loop that shows, not stretched (mm, 1 to 2000).
// - `diameter`: diameter of the button (mm, 1 to 200).
// - `thickness`: thickness of a flat button; not used for a ball (mm, 0 to 100).
// - `cord`: thickness of the cord (mm, 0 to 50).
// - `gap`: between the loop's two ends where they are sewn (mm, 0 to 500).
// - `stretch`: how much the cord may stretch: 0.3 is 30 % (0 to 3).
// - `shape`: shape of the button (one of `recloth_button_shape`).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_loop_slack(double length,
                                  double diameter,
                                  double thickness,
                                  double cord,
                                  double gap,
                                  double stretch,
                                  int32_t shape,
                                  recloth_loop_slack_t *out,
                                  recloth_error_t *error);

// Temperature of liquors of several temperatures poured together, with the goods.
//
// `T = sum(m c T) / sum(m c)`, water and liquor at 4.18 J/(g °C) and a gram a millilitre. What the vessel takes is left
// out, so the bath comes out nearer the room's temperature than this: measure it. Pour hot into cold, slowly. Goods warmer
// than 40 °C are doubted (68 may be in Fahrenheit), and so is less than 50 ml in all.
//
// - `volumes_ml`: volume of each liquor (ml, 0.01 to 100000000, 1 to 100 items).
// - `temperatures_c`: temperature of each (degC, 0 to 100, as many as volumes_ml).
// - `goods_g`: dry mass of the goods (g, 0 to 1000000).
// - `goods_temperature_c`: temperature of the goods (degC, 0 to 100).
// - `goods_heat`: specific heat of the goods, J/(g °C) (0.5 to 4.5).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_mix_temperature(const double *volumes_ml,
                                       size_t volumes_ml_count,
                                       const double *temperatures_c,
                                       size_t temperatures_c_count,
                                       double goods_g,
                                       double goods_temperature_c,
                                       double goods_heat,
                                       recloth_mix_temperature_t *out,
                                       recloth_error_t *error);

// Length of cloth for equal tapered panels with a nap and without.
//
// All one way up, each panel takes its wide end of the cloth's width: `floor(cloth_width / wide)` side by side. Turned
// every other, a narrow end lies beside each wide one and `n` panels take `wide + (n - 1) · (wide + narrow) / 2`. Either
// way a row takes the panel's length, and there are as many rows as the count asks. On napped cloth (velvet, corduroy,
// brushed cloth, some satins) and one-way prints a turned panel is of another shade: it cannot be put right afterwards. The
// habit of a quarter of a yard more for a nap is sometimes nothing and sometimes a whole row: count.
//
// Cloth below 200 mm is doubted: no cloth is woven so narrow (from memory).
//
// - `wide`: width of a panel at its wide end, allowances included (mm, 1 to 100000).
// - `narrow`: width at its narrow end, allowances included (mm, 0 to 100000, <= wide).
// - `length`: length of a panel, allowances included (mm, 1 to 100000).
// - `count`: number of panels (1 to 1000).
// - `cloth_width`: width of the cloth between its selvedges (mm, 1 to 100000, >= wide).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_nap_layout(double wide,
                                  double narrow,
                                  double length,
                                  uint32_t count,
                                  double cloth_width,
                                  recloth_nap_layout_t *out,
                                  recloth_error_t *error);

// Doubts on a neck and a bust together.
//
// A neck of more than half the bust (`NECK_OVER_HALF_BUST`) may be the two in each other's place, or half a bust.
//
// - `neck`: girth of neck (mm, 1 to 100000).
// - `bust`: girth of bust or chest (mm, 1 to 100000).
// - `out`: receives the answer. The doubts (bits).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_neck_bust_doubts(double neck,
                                        double bust,
                                        uint64_t *out,
                                        recloth_error_t *error);

// Blade of a machine needle, and the thickest thread for it, from its metric number.
//
// `blade = metric / 100`, `thread = 0.4 · blade`. A thread too thick for its needle frays and skips; a needle too thick for
// its cloth leaves holes that stay, which old seams of silk, leather and coated cloth show for ever. A broken needle can
// fly: change a bent one at once.
//
// - `metric`: the larger number on a packet, 80 of 80/12 (20 to 300).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_needle_blade(uint32_t metric,
                                    recloth_needle_blade_t *out,
                                    recloth_error_t *error);

// Metric number of a machine needle from its US size.
//
// `metric = 60 + 5 · (us_size - 8)`: 8 is 60, 11 is 75, 18 is 110. The number is the blade's diameter in hundredths of a
// millimetre (`needle_blade`). From 19 up the two scales no longer run together, so these sizes are not offered; read the
// packet.
//
// - `us_size`: the smaller number on a packet (8 to 18).
// - `out`: receives the answer. Metric number, hundredths of a millimetre.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_needle_metric(uint32_t us_size,
                                     double *out,
                                     recloth_error_t *error);

// Girth of a garment of stretching cloth, from the share of its stretch that wearing is to use.
//
// Worn, the garment is stretched to the body: `girth · (1 + share · stretch / 100) = body`. Taking `share · stretch`
// percent off the body's girth instead gives a smaller garment that uses more of the stretch than was meant. It must also
// go over the widest part on its way: `girth · (1 + stretch / 100)` must reach that. Seams and elastic stretch less than
// the cloth: try a stitch that gives.
//
// A body girth below 110 mm, less than a child's wrist (from memory), is doubted, and a stretch below 5 %: 0.5 may
// be a share.
//
// - `body`: girth of the body where it is worn (mm, 10 to 100000).
// - `stretch_pct`: stretch of the cloth the way it goes round (%, 0 to 500).
// - `widest`: widest girth it is pulled over; 0: not asked (mm, 0 to 100000).
// - `share`: part of the stretch used in wear (0 to 1).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_negative_ease(double body,
                                     double stretch_pct,
                                     double widest,
                                     double share,
                                     recloth_negative_ease_t *out,
                                     recloth_error_t *error);

// Neutraliser for the chlorine that goods still carry after draining and rinsing.
//
// `amount = carried · chlorine / 100 · ratio · (1 + excess / 100) / (purity / 100)`. The ratio is that of the reaction named:
// for thiosulfate crystals 7.00, 3.50 or 0.875 by what it ends as, which strength and acidity decide, so the largest is the
// safe one. A test of field doses at pH 7 asked about a tenth more than the others' sums, hence the excess. Anhydrous
// thiosulfate: 0.637 times as much. It is a separate bath of fresh water, and rinsing well is the main thing: this is for
// the rest. Fibre is not asked here, as goods that ought never have met bleach need it most.
//
// Doubted are liquor of more than 0.1 % (rinse again first), peroxide of more than 50 % and any purity of 1 % or less, and
// an excess below 1 %.
//
// - `carried_ml`: liquor that the goods carry after rinsing (ml, 0 to 1000000).
// - `chlorine_pct`: available chlorine in it, grams in 100 ml (%, 0 to 0.6).
// - `reaction`: what takes the chlorine away, and to what (one of `recloth_reaction`).
// - `stage`: how far the goods are from the bleach (one of `recloth_stage`).
// - `in_bath`: what else is in the fresh bath (one of `recloth_in_bath`).
// - `purity_pct`: share of the pure stuff: 3 for household peroxide (%, 0.1 to 100).
// - `excess_pct`: more than the reaction asks (%, 0 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_neutraliser(double carried_ml,
                                   double chlorine_pct,
                                   int32_t reaction,
                                   int32_t stage,
                                   int32_t in_bath,
                                   double purity_pct,
                                   double excess_pct,
                                   recloth_neutraliser_t *out,
                                   recloth_error_t *error);

// Widths of two fronts whose button line is shifted to one side of the centre front.
//
// `narrow_to_line = front / 2 - shift + allowance` and `wide_to_line = front / 2 + shift + allowance`; the cut widths
// add the extension (the button stand; facings are not included). Say which side is narrow and which laps over: the
// sums are the same for both. The waistband's overlap must equal this extension. A sewing-machine manual asks for an
// extension of at least three quarters of the button's diameter.
//
// A front below 100 mm is doubted: it may be in centimetres.
//
// - `front`: finished front, side seam to side seam (mm, 1 to 100000).
// - `shift`: button line from the centre front (mm, 0 to 100000).
// - `extension`: button stand, button line to the finished opening edge (mm, 0 to 1000).
// - `allowance`: seam allowance at the side seams (mm, 0 to 1000).
// - `wide_panel`: cloth there is for the wide front, button line to side cut edge (mm, 1 to 100000).
// - `dart_distance`: middle of each front's dart from the centre front; half the front where there is none (mm, 0 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_off_centre_opening(double front,
                                          double shift,
                                          double extension,
                                          double allowance,
                                          double wide_panel,
                                          double dart_distance,
                                          recloth_off_centre_opening_t *out,
                                          recloth_error_t *error);

// Reflectance of cloth dyed over the colour it has, as a band from pale to deep.
//
// Depths of shade add up: `K/S = (K/S of the ground) + (K/S of the dye)`. Give the dye's as a low and a high, from swatches
// on white cloth of the same fibre: water, heat, mordant and the next batch all move it. Ask once for each of red, green
// and blue light. A dye only takes light away, so no part gets lighter. Not foretold: a fibre that takes dye otherwise, a
// finish, a ground that bleeds, hues that alkali or iron turn. Judge dry cloth, by daylight.
//
// - `ground`: reflectance of the cloth as it is (0.001 to 1).
// - `low`: least that the dye adds, K/S (0 to 100).
// - `high`: most that the dye adds, K/S (0 to 100, >= low).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_overdye(double ground,
                               double low,
                               double high,
                               recloth_overdye_t *out,
                               recloth_error_t *error);

// Mass of a dye, mordant or assistant from its percentage on weight of fibre.
//
// `amount = mass · pct / 100`, the mass being that of the dry goods. Say of a plant dyestuff whether it is weighed
// fresh, frozen or dry: the percentages differ by several times. Not for bleach, whose strength and time decide. Above 100 %
// or below 0.1 %, and for goods of less than 2 g, there are doubts.
//
// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
// - `pct`: percentage on weight of fibre (%, 0 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_owf(double mass_g,
                           double pct,
                           recloth_owf_t *out,
                           recloth_error_t *error);

// Area and sides of a panel measured at stations along a grain line, left and right of it.
//
// The fast way for an uneven or traced panel: draw one thread's line down it, mark stations, and measure square to the line to
// both edges. Between stations the sides are taken as straight, so put one at every corner and more where an edge curves; the
// area is the sum of trapeziums. `left_bow` and `right_bow` tell how far each station lies beyond (positive) or within the
// straight line between its side's ends, measured across as the readings are: a reading out of row is a slip of the tape, or a side that is no straight seam. What
// lies off the line makes every width wrong: check that the thread runs true.
//
// - `stations`: places along the grain line, rising (mm, -100000 to 100000, 2 to 200 items).
// - `left`: from the line to the left edge at each (mm, 0 to 100000, as many as stations).
// - `right`: from the line to the right edge at each (mm, 0 to 100000, as many as stations).
// - `left_bow`: filled: left edge beyond its straight line; negative within (mm, as many as stations).
// - `right_bow`: filled: right edge beyond its straight line (mm, as many as stations).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_panel_by_offsets(const double *stations,
                                        size_t stations_count,
                                        const double *left,
                                        size_t left_count,
                                        const double *right,
                                        size_t right_count,
                                        double *left_bow,
                                        size_t left_bow_count,
                                        double *right_bow,
                                        size_t right_bow_count,
                                        recloth_panel_by_offsets_t *out,
                                        recloth_error_t *error);

// Corners and area of a panel measured by tape in triangles, with its spare readings checked.
//
// Number the corners around the panel, from 0, in either direction; corner 1 is `base` from corner 0. Every further
// corner, in order, is read from two corners before it, `starts` and `ends`, and lies to the left (0) or right (1) as
// seen from the start towards the end. Any other distance between two corners is a spare reading: at least one, the
// other diagonal, tells a misread tape, and cloth that lay off grain.
//
// `along` and `across` get a place for each corner: corner 0 at 0, 0 and corner 1 at `base`, 0; left is positive across.
// `misfits` gets a length for each spare reading: as the corners have it, less the reading.
//
// - `base`: from corner 0 to corner 1 (mm, 1 to 100000).
// - `starts`: corner the first reading is from (0 to 63, 1 to 62 items).
// - `ends`: corner the second reading is from (0 to 63, as many as starts).
// - `from_start`: first reading of each further corner (mm, 1 to 100000, as many as starts).
// - `from_end`: second reading of each further corner (mm, 1 to 100000, as many as starts).
// - `sides`: 0 left, 1 right, seen from start to end (0 to 1, as many as starts).
// - `spare_starts`: one corner of each spare reading (0 to 63, 0 to 200 items).
// - `spare_ends`: the other corner (0 to 63, as many as spare_starts).
// - `spare_readings`: distance between them (mm, 1 to 100000, as many as spare_starts).
// - `along`: filled: each corner along the base (mm, 2 more than starts).
// - `across`: filled: each corner square to it (mm, 2 more than starts).
// - `misfits`: filled: what each spare reading misses (mm, as many as spare_starts).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_panel_by_triangles(double base,
                                          const uint32_t *starts,
                                          size_t starts_count,
                                          const uint32_t *ends,
                                          size_t ends_count,
                                          const double *from_start,
                                          size_t from_start_count,
                                          const double *from_end,
                                          size_t from_end_count,
                                          const uint32_t *sides,
                                          size_t sides_count,
                                          const uint32_t *spare_starts,
                                          size_t spare_starts_count,
                                          const uint32_t *spare_ends,
                                          size_t spare_ends_count,
                                          const double *spare_readings,
                                          size_t spare_readings_count,
                                          double *along,
                                          size_t along_count,
                                          double *across,
                                          size_t across_count,
                                          double *misfits,
                                          size_t misfits_count,
                                          recloth_panel_by_triangles_t *out,
                                          recloth_error_t *error);

// A length as it is written.
//
// Whole and mixed numbers, fractions (`3/8`, `⅜`, `3⁄8`, `31-3/8`), a decimal point or comma, a leading minus sign
// for the whole. Units: mm, cm, m; in, `"`, ft, `'`, yd; their names in full, one or many; upper or lower case, so `M`
// is metres; a full stop after an abbreviation. Spaces of any width or none. Several units in one length, each once,
// larger first, all metric or all imperial: `2 ft 3 1/8 in`, `1 m 20 cm`.
//
// A number without a unit is refused, zero too, and so are thousands marks: `1,234` may be either. A fraction is less
// than one, for `313/8` is more likely `31 3/8` without its space. At most 64 characters.
//
// Metric lengths are correctly rounded; imperial ones are counted in inches, then multiplied by 25.4 once, so that
// `31 3/8 in` is `31.375 * INCH`.
//
// - `text`: a length as written (UTF-8, closed by a NUL).
// - `out`: receives the answer. The length (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_parse_length(const char *text,
                                    double *out,
                                    recloth_error_t *error);

// True places of points in a photograph of cloth that lies flat beside a reference of four known points.
//
// The picture of a plane is its projective map, and four points fix it: the corners of a sheet of paper of known size, say,
// given in order round it in the picture and in the same order as they truly lie. `along` and `across` get the true place of
// each point, `scales` the length that one picture unit stands for there, `√` of the map's change of area. Only what lies
// flat in the reference's own plane is mapped truly, and the bow that a lens gives straight lines is not taken out: stand
// back, point the camera straight down, use the middle of the picture. Beyond the reference errors grow fast: a slip of
// 1 picture unit at a corner moves a point one size away by several. Measure one length by tape to see.
//
// - `picture_x`: reference in the picture, in pixels or any unit (-100000 to 100000, 4 to 4 items).
// - `picture_y`: the same, up or down (-100000 to 100000, 4 to 4 items).
// - `true_x`: reference as it truly lies, along (mm, -100000 to 100000, 4 to 4 items).
// - `true_y`: the same, across (mm, -100000 to 100000, 4 to 4 items).
// - `x`: points to map, in the picture (-1000000 to 1000000, 1 to 1000 items).
// - `y`: the same, up or down (-1000000 to 1000000, as many as x).
// - `along`: filled: true place of each point, along (mm, as many as x).
// - `across`: filled: true place of each point, across (mm, as many as x).
// - `scales`: filled: length that one picture unit stands for there (mm, as many as x).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_photo_map(const double *picture_x,
                                 size_t picture_x_count,
                                 const double *picture_y,
                                 size_t picture_y_count,
                                 const double *true_x,
                                 size_t true_x_count,
                                 const double *true_y,
                                 size_t true_y_count,
                                 const double *x,
                                 size_t x_count,
                                 const double *y,
                                 size_t y_count,
                                 double *along,
                                 size_t along_count,
                                 double *across,
                                 size_t across_count,
                                 double *scales,
                                 size_t scales_count,
                                 recloth_photo_map_t *out,
                                 recloth_error_t *error);

// Length that scraps give when they are joined end to end, and how few of them reach.
//
// Each join takes an allowance off both its scraps: `joined = sum of lengths - 2 · allowance · (scraps - 1)`. Two allowances
// a join are easily forgotten, and then the strip is short when it is too late. Count in `needed` what its own ends take.
// Keep joins off dart points, pockets and the middle of a back; under a band, in gathers or at a seam they are not seen.
// Grain, face and nap must run alike in all scraps.
//
// - `lengths`: the scraps, raw edge to raw edge (mm, 1 to 100000, 1 to 100 items).
// - `allowance`: seam allowance at each edge of a join (mm, 0 to 1000).
// - `needed`: length needed, allowances of its ends included (mm, 1 to 1000000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_pieced_length(const double *lengths,
                                     size_t lengths_count,
                                     double allowance,
                                     double needed,
                                     recloth_pieced_length_t *out,
                                     recloth_error_t *error);

// Width of the strip that covers a cord for piping.
//
// `π · (cord + thickness) + 2 · allowance`: once round the cord in the middle of the cloth, and an allowance on both sides.
// Stitched close to the cord, it is a little more than is covered, which the stitching needs. Shrink cotton cord first.
//
// - `cord`: diameter of the cord (mm, 0 to 200).
// - `allowance`: seam allowance beside it (mm, 0 to 1000).
// - `thickness`: thickness of the strip's cloth (mm, 0 to 20).
// - `out`: receives the answer. Width to cut, square to the edges (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_piping_width(double cord,
                                    double allowance,
                                    double thickness,
                                    double *out,
                                    recloth_error_t *error);

// Plant matter for a dye bath, as a range, from a recipe weighed fresh or dry.
//
// `mass · pct / 100`, low and high; where the recipe weighs it otherwise than it is at hand, turned by the range of fresh
// to dry. Frozen counts as fresh. Season, soil, part of the plant and water decide the colour more than the scale: dye a
// swatch. More extractions of the same matter give paler baths of another hue, so they are not added up here. Not every
// plant is harmless: know what it is, never cook it in vessels for food. Below 1 %, above 100 % of what is dry at hand, and
// for goods of less than 2 g, there are doubts.
//
// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
// - `low_pct`: percentage on weight of fibre, least (%, 0.1 to 2000).
// - `high_pct`: percentage on weight of fibre, most (%, 0.1 to 2000, >= low_pct).
// - `recipe`: how the recipe weighs it (one of `recloth_basis`).
// - `at_hand`: how it is at hand (one of `recloth_basis`).
// - `fresh_per_dry_low`: grams fresh that dry to one, least (1 to 20).
// - `fresh_per_dry_high`: grams fresh that dry to one, most (1 to 20, >= fresh_per_dry_low).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_plant_dyestuff(double mass_g,
                                      double low_pct,
                                      double high_pct,
                                      int32_t recipe,
                                      int32_t at_hand,
                                      double fresh_per_dry_low,
                                      double fresh_per_dry_high,
                                      recloth_plant_dyestuff_t *out,
                                      recloth_error_t *error);

// Strength of several liquors of one and the same stuff poured together.
//
// `strength = sum(volume · strength) / sum(volume)`. Only for liquors of the same dye, mordant or binder: nothing is ever
// poured to bleach, and unlike baths are not mixed to be rid of them.
//
// - `volumes_ml`: volume of each liquor (ml, 0.01 to 100000000, 1 to 100 items).
// - `strengths_pct`: strength of each (%, 0 to 100, as many as volumes_ml).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_pooled_strength(const double *volumes_ml,
                                       size_t volumes_ml_count,
                                       const double *strengths_pct,
                                       size_t strengths_pct_count,
                                       recloth_pooled_strength_t *out,
                                       recloth_error_t *error);

// Spread of a sleeve cap that is slashed and opened for gathers between two notches.
//
// `flat = zone · ratio`, `spread_each = (flat - zone) / slashes`. Where the sleeve is cut already, a strip is let in instead,
// on the sleeve's own grain: one as wide as `strip` allows a ratio of `(zone + strip) / zone`. A sleeve still to be cut needs
// none. How much the cap is raised as well is taste: fold it in paper first.
//
// - `zone`: seam line between the notches, where the gathers go (mm, 1 to 10000).
// - `ratio`: zone after spreading over before (1 to 10).
// - `slashes`: number of slashes (1 to 100).
// - `strip`: cloth there is to let in, allowances taken off; 0: none (mm, 0 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_puff_spread(double zone,
                                   double ratio,
                                   uint32_t slashes,
                                   double strip,
                                   recloth_puff_spread_t *out,
                                   recloth_error_t *error);

// Reflectance of a depth of shade K/S: `k_over_s` turned round.
//
// `R = 1 + K/S - √((K/S)² + 2 K/S)`, worked as the reciprocal of `1 + K/S + √(...)`, which loses no digits near black.
//
// - `k_over_s`: depth of shade (0 to 500).
// - `out`: receives the answer. Reflectance.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_reflectance(double k_over_s,
                                   double *out,
                                   recloth_error_t *error);

// Strength of a dyeing against another, by their depths of shade, in percent.
//
// - `k_over_s`: depth of shade of the dyeing (0 to 500).
// - `standard`: depth of shade it is held against (0.000001 to 500).
// - `out`: receives the answer. Relative strength (%).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_relative_strength(double k_over_s,
                                         double standard,
                                         double *out,
                                         recloth_error_t *error);

// Width of the panels still to be made, when the others are given.
//
// `remaining = (girth + ease - other_width) / parts + intake`, inside the seams: what the given panels leave of the
// girth, shared over the rest, and the darts or pleats of each added.
//
// For doubts on the girth see `girth_doubts`.
//
// - `girth`: girth of the body (mm, 1 to 100000).
// - `ease`: what the garment has more (mm, -10000 to 10000).
// - `other_width`: the given panels together, inside seams and darts (mm, 0 to 100000).
// - `parts`: number of panels still to be made, all equal (1 to 64).
// - `intake`: darts or pleats in each of them (mm, 0 to 10000).
// - `out`: receives the answer. The width of each remaining panel inside the seams (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_remaining_width(double girth,
                                       double ease,
                                       double other_width,
                                       uint32_t parts,
                                       double intake,
                                       double *out,
                                       recloth_error_t *error);

// Lengths rounded up to whole repeats of the pattern, so that all of them begin at the same place in it.
//
// `each = repeat · ceil(length / repeat)`. The first cut may have to move to where the pattern is wanted: buy one repeat
// more than the total.
//
// - `length`: length needed, allowances included (mm, 1 to 100000).
// - `repeat`: height of the pattern's repeat (mm, 1 to 10000).
// - `count`: how many lengths (1 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_repeats(double length,
                               double repeat,
                               uint32_t count,
                               recloth_repeats_t *out,
                               recloth_error_t *error);

// Strip of ribbing for a neck, a cuff or a waist.
//
// `round = edge · share`, joined with an allowance at both ends; folded along its middle, `cut_width = 2 · depth + 2 ·
// allowance`. A round neck takes less than a waist, lest it stand away. Ribbings differ: pin a strip round the edge first.
// A neck must still pass over the head, see
// `head_opening`.
//
// - `edge`: edge that it is sewn to (mm, 1 to 100000).
// - `depth`: finished depth (mm, 1 to 1000).
// - `allowance`: seam allowance at each edge and end (mm, 0 to 100).
// - `share`: strip over edge (0.3 to 1).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_ribbing(double edge,
                               double depth,
                               double allowance,
                               double share,
                               recloth_ribbing_t *out,
                               recloth_error_t *error);

// Rinses that thin the liquor carried over to a share of what it was, as a range.
//
// Each rinse leaves `carried / (carried + fresh)` of it. What the goods carry between rinses is the main term and is never
// known well: give a low and a high. It tells of the liquor between the fibres only; what the fibre itself holds leaves
// in its own time, so rinse until the water runs clear, or has no smell, whatever is printed here. Less fresh water than the
// goods carry is doubted (litres?), and so is a share above a half (1 for 1 %?). The first rinse after a hot bath is warm.
//
// - `carried_low_ml`: least liquor carried from bath to bath (ml, 0.01 to 10000000).
// - `carried_high_ml`: most liquor carried (ml, 0.01 to 10000000, >= carried_low_ml).
// - `fresh_ml`: fresh water each rinse (ml, 0.01 to 100000000).
// - `share_left`: share of the liquor that may be left (0.000000001 to 1).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_rinses(double carried_low_ml,
                              double carried_high_ml,
                              double fresh_ml,
                              double share_left,
                              recloth_rinses_t *out,
                              recloth_error_t *error);

// Lengths rounded so that the rounded lengths add up to the rounded sum.
//
// Each is rounded down; what is then missing from the rounded sum is given, a graduation each, to the lengths that lost
// most, of equals to the earlier. Where two edges are sewn together, round one and give the other the same lengths.
//
// - `lengths`: the lengths (mm, 0 to 100000, 1 to 1000 items).
// - `graduation`: distance between two marks: 3.175 is 1/8 in (mm, 0.001 to 10000).
// - `tapes`: filled: the rounded lengths (mm, as many as lengths).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_round_set(const double *lengths,
                                 size_t lengths_count,
                                 double graduation,
                                 double *tapes,
                                 size_t tapes_count,
                                 recloth_rounded_set_t *out,
                                 recloth_error_t *error);

// A length rounded to a graduation of the tape.
//
// A length within a thousand-millionth of a graduation, or of the middle between two, counts as being there: binary
// arithmetic leaves that much dust.
//
// - `length`: the length (mm, -10000000 to 10000000).
// - `graduation`: distance between two marks: 3.175 is 1/8 in (mm, 0.001 to 10000).
// - `way`: which graduation (one of `recloth_rounding`).
// - `out`: receives the answer. The rounded length (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_round_to(double length,
                                double graduation,
                                int32_t way,
                                double *out,
                                recloth_error_t *error);

// Strips to cut for a ruffle along an edge.
//
// `flat = edge · ratio`, `cut_width = depth + allowance + hem`, and as many strips as their length, less an allowance at both
// ends, makes that up: `strips = ceil(flat / (strip - 2 · allowance))`. A ruffle along an edge with ends has one join fewer
// and narrow hems instead. Strips across the cloth gather softly, along the selvedge crisply; on the bias no hem frays.
//
// A ratio below 1.2 or above 4 is doubted (common practice, no source).
//
// - `edge`: edge that it is sewn to (mm, 1 to 100000).
// - `ratio`: strip over edge (1 to 10).
// - `depth`: finished depth, seam to hem edge (mm, 1 to 10000).
// - `strip`: length of one strip: the cloth's width, or a scrap's length (mm, 10 to 100000).
// - `allowance`: seam allowance at the gathered edge and each join (mm, 0 to 1000).
// - `hem`: hem allowance, turn included (mm, 0 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_ruffle(double edge,
                              double ratio,
                              double depth,
                              double strip,
                              double allowance,
                              double hem,
                              recloth_ruffle_t *out,
                              recloth_error_t *error);

// Screen level of an amount of light: `linear_light` turned round.
//
// - `light`: share of the most light (0 to 1).
// - `out`: receives the answer. Level, 0 to 255, not rounded.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_screen_level(double light, double *out, recloth_error_t *error);

// Cloth added at the two edges of a seam that is to hold an inverted pleat.
//
// The first edge gets one depth and its allowance, the next one three depths and its allowance: the seam then lies hidden
// in an inner fold, not in the middle of the underlay. At a gored seam both are added along the slanted edge.
//
// - `depth`: depth of each of the pleat's two folds (mm, 0.1 to 10000).
// - `allowance`: seam allowance of each edge (mm, 0 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_seam_pleat(double depth,
                                  double allowance,
                                  recloth_seam_pleat_t *out,
                                  recloth_error_t *error);

// Upper edges of a band made of straight sections that slant at their joins.
//
// What the upper edge is shorter by is shared by the slanted ends: `slant = (sum of lengths - top) / slanted ends`, at
// the angle `atan(slant / depth)` from the square. At each join the lower edge peaks, and the upper edge notches, by
// twice that angle, so the edges are trued to a curve or the band is cut curved (`curved_band`). A side seam runs on
// straight into the band only if the end's angle equals the skirt's side seam's angle from the square at the waist. An
// end that overlaps must be square.
//
// - `lengths`: finished lower edge of each section, in order (mm, 1 to 100000, 1 to 100 items).
// - `depth`: finished depth, square to the lower edge (mm, 1 to 10000).
// - `top`: finished upper edge of all sections together (mm, 1 to 10000000).
// - `ends`: which free ends are square (one of `recloth_square_ends`).
// - `tops`: filled: finished upper edge of each section (mm, as many as lengths).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_sectioned_band(const double *lengths,
                                      size_t lengths_count,
                                      double depth,
                                      double top,
                                      int32_t ends,
                                      double *tops,
                                      size_t tops_count,
                                      recloth_sectioned_band_t *out,
                                      recloth_error_t *error);

// Part of a ring for a shaped band, or for any cone or frustum.
//
// `outer_radius = lower · depth / (lower - upper)`, `inner_radius = outer_radius - depth`, angle in radians
// `(lower - upper) / depth`. For a straight band there is no such ring: see `straight_band`. A band that flares
// upwards is the same ring turned over: give its longer edge as `lower`.
//
// - `lower`: finished length of the lower edge (mm, 1 to 100000).
// - `upper`: finished length of the upper edge (mm, 0 to 100000, < lower).
// - `depth`: from edge to edge, measured along the cloth (mm, 1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_shaped_band(double lower,
                                   double upper,
                                   double depth,
                                   recloth_shaped_band_t *out,
                                   recloth_error_t *error);

// One panel's share of a girth.
//
// `share = (girth + ease) / parts`, inside the seams. Ease is negative in cloth that stretches.
//
// For doubts on the girth see `girth_doubts`.
//
// - `girth`: girth of the body (mm, 1 to 100000).
// - `ease`: what the garment has more (mm, -10000 to 10000).
// - `parts`: number of equal panels (1 to 64).
// - `out`: receives the answer. The width of each panel inside the seams (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_share(double girth,
                             double ease,
                             uint32_t parts,
                             double *out,
                             recloth_error_t *error);

// Cloth and rows for shirring with elastic thread.
//
// `flat = finished · 100 / drawn_pct`, and `rows = floor(depth / pitch) + 1`, the first and last at the edges of the depth.
// How far it draws up depends on cloth, tension and number of rows, and steam draws it further: shirr a square of known
// width and measure.
//
// - `finished`: width when drawn up, not stretched (mm, 1 to 100000).
// - `depth`: from the first row to the last (mm, 0 to 10000).
// - `pitch`: from row to row (mm, 1 to 1000).
// - `drawn_pct`: what the cloth draws up to (%, 10 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_shirring(double finished,
                                double depth,
                                double pitch,
                                double drawn_pct,
                                recloth_shirring_t *out,
                                recloth_error_t *error);

// What washing does to a shell and its lining, and how to cut both for it.
//
// Both lengths run from the same upper seam. Sewn as given, each becomes `length · (1 + change / 100)`; to have them as
// given after washing, each is cut `length / (1 + change / 100)`. Ask once for the length and once for the width.
//
// A change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.
//
// - `shell`: finished shell (mm, 0 to 1000000).
// - `lining`: finished lining (mm, 0 to 1000000).
// - `shell_change_pct`: dimensional change of the shell's cloth (%, -90 to 100).
// - `lining_change_pct`: dimensional change of the lining's cloth (%, -90 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_shrink_pair(double shell,
                                   double lining,
                                   double shell_change_pct,
                                   double lining_change_pct,
                                   recloth_shrink_pair_t *out,
                                   recloth_error_t *error);

// Step from one size to the next, all round and at each edge of the pattern.
//
// `step = (larger - smaller) / steps`, `each_edge = step / edges`. Even steps only: in published series the step itself grows
// in the larger sizes, and lengths do not grow as girths do.
//
// A girth below 110 mm, less than a child's wrist (from memory), is doubted.
//
// - `smaller`: girth of the smaller size (mm, 1 to 100000).
// - `larger`: girth of the larger size (mm, 1 to 100000, >= smaller).
// - `steps`: number of steps from one to the other (1 to 100).
// - `edges`: edges that share a step, two to a seam (1 to 64).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_size_step(double smaller,
                                 double larger,
                                 uint32_t steps,
                                 uint32_t edges,
                                 recloth_size_step_t *out,
                                 recloth_error_t *error);

// Skew of cloth: how far a weft thread has run off square, in percent of the width.
//
// `skew = 100 · shift / width`. Pull or follow one weft thread across; measure along the selvedge how far its far end
// lies from square. Positive and negative are the two ways it may lean.
//
// - `shift`: along the selvedge, from square to the thread (mm, -100000 to 100000).
// - `width`: width of the cloth, square across (mm, 1 to 100000).
// - `out`: receives the answer. Skew (%).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_skew(double shift,
                            double width,
                            double *out,
                            recloth_error_t *error);

// Skew of a square marked on the cloth, from its two diagonals after washing, in percent.
//
// `skew = 200 · (first - second) / (first + second)`. For a small skew it is the shift of a side in percent of the side,
// as `skew` gives; of a large one it falls short by a quarter of the square: 9.975 for a side shifted by 10 %.
//
// - `first`: one diagonal of the square (mm, 1 to 100000).
// - `second`: the other (mm, 1 to 100000).
// - `out`: receives the answer. Skew (%).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_skew_diagonals(double first,
                                      double second,
                                      double *out,
                                      recloth_error_t *error);

// Distance between the snips of a curved seam allowance.
//
// Turned under, an allowance along an inward curve such as a neckline is too short and each snip opens; along an
// outward one it is too long and each notch cut out closes. Either way a stretch of seam `s` opens or closes by
// `2 · allowance · s / radius` at the raw edge, so `spacing = opening · radius / (2 · allowance)`. A turned edge is
// nearly straight between snips and leaves the curve there by `spacing² / (8 · radius)`. Staystitch first, snip to a
// thread's breadth from it and no further. The blades are sharp: cut away from the hand that holds.
//
// - `radius`: radius of the seam line (mm, 1 to 1000000).
// - `allowance`: seam allowance, after trimming (mm, 0.1 to 1000).
// - `opening`: how far a snip may open, or how wide a notch is (mm, 0.1 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_snip_spacing(double radius,
                                    double allowance,
                                    double opening,
                                    recloth_snip_spacing_t *out,
                                    recloth_error_t *error);

// Number of buttons whose even spacing comes nearest to a wanted pitch.
//
// Of the two whole numbers of spaces about `(last - first) / pitch` the one is taken whose pitch differs less from that
// wanted; on a tie the closer spacing. Two buttons at least.
//
// - `first`: place of the first, from the edge's start (mm, 0 to 100000).
// - `last`: place of the last (mm, 0 to 100000, > first).
// - `pitch`: pitch wanted (mm, 1 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_spacing_by_pitch(double first,
                                        double last,
                                        double pitch,
                                        recloth_spacing_by_pitch_t *out,
                                        recloth_error_t *error);

// Places of buttons from a first to a last, one of them at a place that must be met.
//
// The bust line, or a waist seam, fixes one button. The places before it are even among themselves, and so are those
// after it; how many go on each side is chosen so that the two pitches differ least (on a tie, fewer before). Where they
// differ too much to please, move the first or the last, or change the number.
//
// - `first`: place of the first, from the edge's start (mm, 0 to 100000).
// - `last`: place of the last (mm, 0 to 100000, > first).
// - `through`: place that one of them must have (mm, 0 to 100000, > first, < last).
// - `count`: how many, the first and last included (3 to 1000).
// - `places`: filled: the places, in order (mm, as many as count).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_spacing_through(double first,
                                       double last,
                                       double through,
                                       uint32_t count,
                                       double *places,
                                       size_t places_count,
                                       recloth_spacing_through_t *out,
                                       recloth_error_t *error);

// Screen levels of a colour given in CIELAB under daylight D65.
//
// A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`.
//
// - `l`: lightness L* (0 to 100).
// - `a`: a*: green below 0, red above (-200 to 200).
// - `b`: b*: blue below 0, yellow above (-200 to 200).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_srgb_from_lab(double l,
                                     double a,
                                     double b,
                                     recloth_srgb_t *out,
                                     recloth_error_t *error);

// Screen levels of a colour given by its tristimulus values.
//
// A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`: its hue is then
// not true.
//
// - `x`: X (0 to 2).
// - `y`: Y, the luminance: white has 1 (0 to 2).
// - `z`: Z (0 to 2).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_srgb_from_xyz(double x,
                                     double y,
                                     double z,
                                     recloth_srgb_t *out,
                                     recloth_error_t *error);

// Length of one stitch from the number of stitches in an inch.
//
// `length = 25.4 / stitches`. Pages that pair 2.5 to 3 mm with 10 to 12 stitches are not consistent: 3 mm is 8.5.
//
// - `stitches_per_inch`: stitches in one inch (0.5 to 200).
// - `out`: receives the answer. Length of one stitch (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_stitch_length(double stitches_per_inch,
                                     double *out,
                                     recloth_error_t *error);

// Volume of a stock solution for a percentage on weight of fibre.
//
// `stock = mass · pct / stock_pct`, the stock in grams in 100 ml. For dye, mordant or assistant; not for bleach. Usual is a
// stock of 0.05 to 50; outside it, and as for `owf`, there are doubts.
//
// - `mass_g`: dry mass of the goods (g, 0.01 to 1000000).
// - `pct`: percentage on weight of fibre (%, 0 to 1000).
// - `stock_pct`: grams in 100 ml of the stock (%, 0.001 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_stock_volume(double mass_g,
                                    double pct,
                                    double stock_pct,
                                    recloth_stock_volume_t *out,
                                    recloth_error_t *error);

// Strip to cut for a straight band.
//
// Folded: `cut_width = 2 · depth + 2 · allowance + turn`, one strip. Faced: `cut_width = depth + 2 · allowance + turn`,
// two strips. `cut_length = waist + overlap + 2 · allowance`. The turn is the cloth that the upper edge takes by its
// own thickness; fold or sew a sample to learn it.
//
// The waist is doubted as `girth_doubts` does.
//
// - `waist`: finished length round the waist, ease included (mm, 1 to 100000).
// - `overlap`: what runs on past the opening, at both ends together (mm, 0 to 10000).
// - `depth`: finished depth (mm, 1 to 10000).
// - `allowance`: seam allowance at each edge and each end (mm, 0 to 1000).
// - `turn`: cloth taken by the thickness of the upper edge (mm, 0 to 100).
// - `make`: how the band gets its two layers (one of `recloth_band_make`).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_straight_band(double waist,
                                     double overlap,
                                     double depth,
                                     double allowance,
                                     double turn,
                                     int32_t make,
                                     recloth_straight_band_t *out,
                                     recloth_error_t *error);

// Finished depth of a straight band from a strip there is.
//
// Folded: `depth = (cut_width - 2 · allowance - turn) / 2`. Faced: `depth = cut_width - 2 · allowance - turn`. A strip
// drawn without allowances still loses them to its seams, which is the usual slip.
//
// - `cut_width`: width of the strip from raw edge to raw edge (mm, 1 to 100000).
// - `allowance`: seam allowance at each long edge (mm, 0 to 1000).
// - `turn`: cloth taken by the thickness of the upper edge (mm, 0 to 100).
// - `make`: how the band gets its two layers (one of `recloth_band_make`).
// - `out`: receives the answer. Finished depth of the band (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_straight_band_depth(double cut_width,
                                           double allowance,
                                           double turn,
                                           int32_t make,
                                           double *out,
                                           recloth_error_t *error);

// Stretch of cloth from a marked length and the same length pulled out, in percent.
//
// `stretch = 100 · (pulled - relaxed) / relaxed`. Fold the cloth across the way it is to stretch, mark 100 mm away from
// the edge, and pull until it resists, not until it can go no further. Let go and measure again: what stays longer will
// bag at knee and elbow.
//
// - `relaxed`: distance of the marks at rest (mm, 1 to 100000).
// - `pulled`: distance of the marks pulled (mm, 1 to 1000000, >= relaxed).
// - `out`: receives the answer. Stretch (%).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_stretch_pct(double relaxed,
                                   double pulled,
                                   double *out,
                                   recloth_error_t *error);

// What to take in at each edge of a garment that is too wide, and what is left over.
//
// `excess = garment - (body + ease)`, shared evenly by the edges but no more than `limit` each, beyond which side seams leave
// the body's side and armholes lose their shape. A seam has two edges: both sides are four. A fold pinned out of the cloth
// takes twice its depth: pinned 8, taken 16. Taken in at the armhole, the sleeve must be taken in too; at the hem, see that
// the step is still wide enough.
//
// A body below 110 mm, less than a child's wrist (from memory), is doubted.
//
// - `garment`: finished garment at this level, all round (mm, 1 to 100000).
// - `body`: body at this level, all round (mm, 1 to 100000).
// - `ease`: what the garment is to have more than the body (mm, -10000 to 10000).
// - `edges`: edges that share it, two to a seam (1 to 64).
// - `limit`: the most that each edge may take (mm, 0 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_take_in(double garment,
                               double body,
                               double ease,
                               uint32_t edges,
                               double limit,
                               recloth_take_in_t *out,
                               recloth_error_t *error);

// Linear density of a yarn or thread from its cotton count (Ne).
//
// The cotton count is how many hanks of 840 yards weigh a pound: `tex = 590.54 · plies / count`. A larger number is a
// thinner yarn. A thread marked 40/2 is two plies of count 40. A convention that counts the moisture in has 583.1 in
// place of 590.54, which is 1.3 % less: do not mix the two.
//
// - `cotton_count`: cotton count of one ply (0.1 to 1000).
// - `plies`: equal plies twisted together (1 to 24).
// - `out`: receives the answer. Linear density of the plied yarn, take-up in twisting left out (tex).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_tex_from_cotton_count(double cotton_count,
                                             uint32_t plies,
                                             double *out,
                                             recloth_error_t *error);

// Linear density of a yarn or thread from its denier.
//
// Tex is grams a kilometre, denier grams in nine kilometres: `tex = denier / 9`. A larger number is a thicker yarn.
//
// - `denier`: grams in 9 kilometres (0.01 to 1000000).
// - `out`: receives the answer. Linear density (tex).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_tex_from_denier(double denier,
                                       double *out,
                                       recloth_error_t *error);

// Linear density of a yarn or thread from its metric count (Nm).
//
// The metric count is how many metres weigh a gram: `tex = 1000 · plies / count`. A larger number is a thinner yarn.
//
// - `metric_count`: metric count of one ply (0.1 to 2000).
// - `plies`: equal plies twisted together (1 to 24).
// - `out`: receives the answer. Linear density of the plied yarn, take-up in twisting left out (tex).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_tex_from_metric_count(double metric_count,
                                             uint32_t plies,
                                             double *out,
                                             recloth_error_t *error);

// Thread for a seam, waste included.
//
// `thread = seam · ratio · (1 + waste_pct / 100)`. The ratio is measured on an unpicked length, or taken from
// `thread_ratio` or a maker's table; for one thread of several, give that thread's own. Wind on more than this:
// tension, thickness and the stitch's length all change it.
//
// - `seam`: length of all seams of this kind (mm, 0 to 100000000).
// - `ratio`: thread over seam (0.1 to 100).
// - `waste_pct`: for ends, tests and what is left on the bobbin (%, 0 to 500).
// - `out`: receives the answer. Length of thread (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_thread_for_seam(double seam,
                                       double ratio,
                                       double waste_pct,
                                       double *out,
                                       recloth_error_t *error);

// Thread that a seam takes for its length, from the path of the stitch.
//
// `ratio = c + 2 · thickness / stitch_length`, with `c` 3 for type 101, 2 for 301, 4 for 401: along the seam on both
// faces, and through it twice a stitch. The path is drawn tight: makers' rounded ratios are higher, 2.5 for type 301 where
// thin cloth gives 2.2 here, and 5 for type 101 where it gives 3.1. Overedge stitches have published formulas that disagree, and are left
// out: for them, unpick a length of seam and measure, or take a maker's ratio.
//
// - `stitch_length`: length of one stitch (mm, 0.1 to 100).
// - `thickness`: all layers of the seam, pressed (mm, 0 to 100).
// - `stitch`: type of the stitch (one of `recloth_stitch_type`).
// - `out`: receives the answer. Thread over seam, all threads together.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_thread_ratio(double stitch_length,
                                    double thickness,
                                    int32_t stitch,
                                    double *out,
                                    recloth_error_t *error);

// Way round each tier of a tiered skirt.
//
// Each tier is the one above times its ratio, the first the top edge times the first ratio, so that the fullness
// multiplies: three tiers of 1.5 make a hem of 3.375 times the waist. How the length is shared over the tiers is
// taste. Allowances and joins are extra (`breadths`).
//
// - `top`: edge that the first tier is gathered to (mm, 1 to 100000).
// - `ratios`: tier over the one above, from the top down (1 to 10, 1 to 12 items).
// - `flats`: filled: way round each tier before gathering (mm, as many as ratios).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_tiers(double top,
                             const double *ratios,
                             size_t ratios_count,
                             double *flats,
                             size_t flats_count,
                             recloth_tiers_t *out,
                             recloth_error_t *error);

// How far a girth made of equal seams may be off.
//
// A seam sewn `error_each` beside its line takes that much from both of its edges: `worst = 2 · seams · error_each`,
// `likely = 2 · error_each · √seams`. Where the ease at the waist is less than the worst case, try on before the band is
// cut.
//
// - `seams`: number of seams, darts counted as one each (0 to 1000).
// - `error_each`: how far beside its line a seam may be sewn (mm, 0 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_tolerance_stack(uint32_t seams,
                                       double error_each,
                                       recloth_tolerance_stack_t *out,
                                       recloth_error_t *error);

// How far a length made of unlike terms may be off, and which of them adds most.
//
// Each term's error counts once for each of its edges: 2 for a seam, 1 for a fold or a raw edge, 0 for a term that is
// sure.
//
// - `errors`: how far each term may be off (mm, 0 to 1000, 1 to 1000 items).
// - `edges`: how many times each error counts (0 to 100, as many as errors).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_tolerance_stack_list(const double *errors,
                                            size_t errors_count,
                                            const uint32_t *edges,
                                            size_t edges_count,
                                            recloth_tolerance_stack_list_t *out,
                                            recloth_error_t *error);

// A point measured by tape from both ends of a base.
//
// `along = (from_start² - from_end² + base²) / 2 base`, `across = √(from_start² - along²)`. An error of 1 mm in both
// readings moves the point by at most `along_per_mm` and `across_per_mm`; that of the base is not counted. Choose bases
// that make both small: a point about half as far off as the base is long.
//
// - `base`: between the two known points (mm, 1 to 100000).
// - `from_start`: reading from the start of the base (mm, 1 to 100000).
// - `from_end`: reading from the end of the base (mm, 1 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_trilaterate(double base,
                                   double from_start,
                                   double from_end,
                                   recloth_trilaterate_t *out,
                                   recloth_error_t *error);

// Cloth and marking for tucks stitched an even distance apart.
//
// `flat = finished + 2 · count · depth`; fold lines are marked `spacing + 2 · depth` apart on the flat cloth. A tuck covers
// its depth of the spacing: blind tucks have `spacing = depth`. Tuck the cloth first, then cut the piece from it.
//
// - `finished`: width when tucked (mm, 1 to 100000).
// - `count`: number of tucks (1 to 1000).
// - `depth`: depth of each tuck, stitching to fold (mm, 0.1 to 1000).
// - `spacing`: from stitching to stitching when tucked (mm, 0.1 to 10000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_tucks(double finished,
                             uint32_t count,
                             double depth,
                             double spacing,
                             recloth_tucks_t *out,
                             recloth_error_t *error);

// Whether a garment part can be turned right side out through an opening: an estimate.
//
// The widest part, gathered in the hand, is a round bundle of its layers' section, of which cloth fills a share
// `packing`: `diameter = √(4 · width · thickness / (π · packing))`. An opening of flat width `w` is `2 · w` round, and
// passes it when `2 · w >= π · diameter`. Find the narrowest place on the way: a shoulder seam, a strap, the gap left in
// a lining; and that there is a way: a ring closed on itself cannot be turned.
//
// - `width`: widest part that must pass, laid flat (mm, 1 to 100000).
// - `thickness`: all its layers together, pressed (mm, 0.01 to 1000).
// - `opening`: flat width of the narrowest place on the way (mm, 1 to 100000).
// - `packing`: share of the bundle that is cloth (0.1 to 1).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_turn_through(double width,
                                    double thickness,
                                    double opening,
                                    double packing,
                                    recloth_turn_through_t *out,
                                    recloth_error_t *error);

// Allowance and cut length for a hem that is turned up, its raw edge turned in.
//
// `allowance = depth + turn_in + folds · roll`: two folds, or one where nothing is turned in. A hem of two equal turns,
// as for sheer cloth, has `turn_in = depth`. The roll is the cloth that each fold takes by its thickness; fold a sample
// to learn it.
//
// - `length`: finished length, upper edge or seam line to hem edge (mm, 1 to 100000).
// - `depth`: finished depth of the hem (mm, 0 to 10000).
// - `turn_in`: turned in at the raw edge; 0 where it is overcast or bound (mm, 0 to 10000, <= depth).
// - `roll`: cloth that each fold takes by its thickness (mm, 0 to 100).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_turned_hem(double length,
                                  double depth,
                                  double turn_in,
                                  double roll,
                                  recloth_turned_hem_t *out,
                                  recloth_error_t *error);

// Edge of a V neck, how far it lies off grain, and the tape that stays it.
//
// `edge = √(half_width² + depth²)`, `off_grain = atan(half_width / depth)`, `stay = edge · stay_ratio`. Any edge off grain
// stretches as it is handled, most of all near 45°: staystitch at once, and sew on a tape cut a little shorter than the
// edge. A tape below 0.9 puckers, so less is refused. If the point falls below the bust, nothing holds the edge to the
// body: pin it and see (`dart_from_gape`).
//
// - `half_width`: middle to the edge's top at the shoulder, straight across (mm, 0 to 10000).
// - `depth`: from that level down to the point (mm, 1 to 10000).
// - `stay_ratio`: tape over edge (0.9 to 1).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_v_neck(double half_width,
                              double depth,
                              double stay_ratio,
                              recloth_v_neck_t *out,
                              recloth_error_t *error);

// Doubts on a waist and a hip together.
//
// A waist above the hip (`WAIST_OVER_HIP`) may be the two in each other's place, and is also the shape of some bodies.
// A hip more than 450 mm above the waist (`HIP_FAR_OVER_WAIST`) may be half a waist.
//
// - `waist`: girth of waist (mm, 1 to 100000).
// - `hip`: girth of hip (mm, 1 to 100000).
// - `out`: receives the answer. The doubts (bits).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_waist_hip_doubts(double waist,
                                        double hip,
                                        uint64_t *out,
                                        recloth_error_t *error);

// Length after several washes, of which the first usually takes most.
//
// Changes multiply, they do not add: `after = length · (1 + first / 100) · (1 + later / 100)^(washes - 1)`. Wash a sample
// until two measures agree: no rule foretells how many times that is.
//
// A first change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.
//
// - `length`: length before any wash (mm, 0 to 1000000).
// - `first_pct`: change in the first wash: shrinkage negative (%, -90 to 100).
// - `later_pct`: change in each wash after it (%, -90 to 100).
// - `washes`: how many washes (0 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_washes(double length,
                              double first_pct,
                              double later_pct,
                              uint32_t washes,
                              recloth_washes_t *out,
                              recloth_error_t *error);

// Wearing ease of woven cloth, all round, as a range over the authors, and the girths it makes.
//
// `garment = body + ease`. Ease is what is needed to breathe, sit and reach; what the style has more is taste. Authors differ by as much as an inch:
//
// - bust: 1 1/2 to 2 in (Robinson), 2 1/2 in (one cited in an encyclopedia), 2 to 3 in (a tailor's notes);
// - waist of a dress: 3/4 to 1 in, 1 in, 1 to 2 in, in that order;
// - waist of a skirt or trousers: 1/2 to 3/4 in (Robinson; the others do not tell it apart);
// - hip: 2 to 2 3/4 in, 3 in, 2 to 3 in;
// - a man's shirt at the chest: 1 1/2 to 2 1/2 in fitted, up to 3 in classic (Robinson).
//
// The best ease is that of a garment that fits: measure it and take the body's girth off. Thick cloth and a lining need
// more, cloth that stretches less (`negative_ease`).
//
// A girth below 300 mm or above 2000 mm is doubted.
//
// - `body`: girth of the body there (mm, 1 to 100000).
// - `place`: where it is asked (one of `recloth_ease_place`).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_wearing_ease(double body,
                                    int32_t place,
                                    recloth_wearing_ease_t *out,
                                    recloth_error_t *error);

// Length of cloth of one width that does for a length of another, as a range.
//
// `by_area = length · width / new_width`. Tables handed down for this follow no formula: over all their cells they give
// 0.90 to 1.12 times the area's length, and so does this. It is for a guess before buying; lay the pieces to know. A
// piece wider than the new cloth is not seen here.
//
// Cloth narrower than 200 mm is doubted: 150 may be in centimetres.
//
// - `length`: length that is enough (mm, 0 to 1000000).
// - `width`: width of that cloth (mm, 10 to 100000).
// - `new_width`: width of the cloth to be had (mm, 10 to 100000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_width_conversion(double length,
                                        double width,
                                        double new_width,
                                        recloth_width_conversion_t *out,
                                        recloth_error_t *error);

// Widths of a skirt with a back and two fronts that lap over each other.
//
// A back of half the girth, and fronts of a quarter and half the overlap each: `front = girth / 4 + overlap / 2`. The
// overlap runs straight down, the same at waist and hip; facings or hems of the two front edges are extra. The skirt
// opens when a step spreads the hem by more than the overlap there, so sit and stride in it, pinned, before cutting. The
// lap must equal that of the band, and of the bodice where there is one.
//
// Waist and hip are doubted alone and together, as `girth_doubts` and
// `waist_hip_doubts` do.
//
// - `waist`: finished waist, ease included, darts closed (mm, 1 to 100000).
// - `hip`: finished hip, ease included (mm, 1 to 100000).
// - `overlap`: how far one front lies over the other (mm, 0 to 100000, <= waist).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_wrap_skirt(double waist,
                                  double hip,
                                  double overlap,
                                  recloth_wrap_skirt_t *out,
                                  recloth_error_t *error);

// Tristimulus values of a colour given in CIELAB, under daylight D65: `lab_from_xyz` turned round.
//
// - `l`: lightness L* (0 to 100).
// - `a`: a*: green below 0, red above (-200 to 200).
// - `b`: b*: blue below 0, yellow above (-200 to 200).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_xyz_from_lab(double l,
                                    double a,
                                    double b,
                                    recloth_xyz_t *out,
                                    recloth_error_t *error);

// Tristimulus values of a colour given by its screen levels.
//
// - `red`: red level (0 to 255).
// - `green`: green level (0 to 255).
// - `blue`: blue level (0 to 255).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_xyz_from_srgb(double red,
                                     double green,
                                     double blue,
                                     recloth_xyz_t *out,
                                     recloth_error_t *error);

// Size over all of a buttonhole worked in zigzag: two beads and two bars about a slit.
//
// `length = slit + 2 · bar`, `width = 2 · bead + gap`, and each side takes `ceil(slit / spacing)` stitches. It is the slit that
// the button passes (`buttonhole`); the whole must lie on the button stand. Work one on a
// scrap of the same layers. Cut from both ends towards the middle, a pin across each bar.
//
// - `slit`: length of the slit (mm, 1 to 300).
// - `bead`: width of the zigzag on each side (mm, 0.1 to 20).
// - `gap`: between the two sides, where it is cut (mm, 0 to 10).
// - `bar`: length of the bar at each end (mm, 0 to 20).
// - `spacing`: stitch length of the zigzag (mm, 0.05 to 10).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_zigzag_buttonhole(double slit,
                                         double bead,
                                         double gap,
                                         double bar,
                                         double spacing,
                                         recloth_zigzag_buttonhole_t *out,
                                         recloth_error_t *error);

// Zip for an opening: its length from stop to stop, and where the stops lie.
//
// `needed = opening - gap + beyond`, bought in the next length that is sold. The gap leaves room above the slider for a hook
// or for the turn of a facing; where the teeth end at a band's seam it is small. A concealed zip is sewn before the seam
// below it and must run on beyond the opening, or its slider cannot be brought down past the last stitch. A zip is shortened
// at the bottom, by a bar of stitches over the teeth; an open-ended one at the top only. Whether the opening passes the hip
// is asked of `head_opening`.
//
// - `opening`: seam line at the top to the lower end of the opening (mm, 10 to 5000).
// - `gap`: seam line at the top down to the top stop (mm, 0 to 500, < opening).
// - `beyond`: what the zip runs on below the opening; some 25 if concealed (mm, 0 to 500).
// - `allowance`: raw edge to seam line at the top (mm, 0 to 1000).
// - `graduation`: step between the lengths that are sold (mm, 1 to 1000).
// - `out`: receives the answer.
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_zip_length(double opening,
                                  double gap,
                                  double beyond,
                                  double allowance,
                                  double graduation,
                                  recloth_zip_length_t *out,
                                  recloth_error_t *error);

// Opening that a zip there is serves.
//
// `zip_length` the other way: `opening = zip + gap - beyond`. For a zip saved from the old garment: run it a hundred times
// first, and see that both stops hold.
//
// - `zip`: length of the zip, top stop to bottom stop (mm, 10 to 5000).
// - `gap`: seam line at the top down to the top stop (mm, 0 to 500).
// - `beyond`: what the zip runs on below the opening (mm, 0 to 500).
// - `out`: receives the answer. Seam line at the top to the lower end of the opening (mm).
// - `error`: on failure what was wrong; may be NULL.
//
// Nothing but `error` is written on failure.
//
// Each pointer is NULL or valid for its count of items, and no list overlaps another.
recloth_status recloth_zip_opening(double zip,
                                   double gap,
                                   double beyond,
                                   double *out,
                                   recloth_error_t *error);

// One general sentence for a status; NULL for a number that is none. A constant string.
const char *recloth_status_text(int32_t status);

// The sentence of one doubt; NULL when the bit is none. A constant string.
const char *recloth_doubt_text(uint64_t bit);

// The sentence of one caution; NULL when the bit is none. A constant string.
const char *recloth_caution_text(uint64_t bit);

// The line to cut a piece along, as a polygon.
//
// A piece is a closed ring of edges, lines and arcs, each from its point to the next and the last back
// to the first, y up. One given clockwise is turned round: the cut line always runs counter-clockwise.
// Every edge is cut at its own allowance. Where allowances run into each other the line is trimmed, so
// that it keeps every allowance whole. `cut_line` in Rust says more.
//
// - `points`: where each edge starts, x and y in turn (mm, -100000 to 100000): 2 * `count` numbers.
// - `bulges`: for each edge 0 for a line, for an arc the tangent of a quarter of its sweep, positive
//   counter-clockwise (-1000 to 1000); NULL when all are lines.
// - `allowances`: of each edge (mm, 0 to 1000).
// - `corners`: of each edge, how its allowance joins that of the next (one of `recloth_corner` without a
//   size); NULL when all are pointed.
// - `drawn`: of each edge, what it is (one of `recloth_drawn`); NULL when all are seam lines.
// - `count`: number of edges, 2 to 1000.
// - `tolerance`: how near arcs are followed (mm, 0.001 to 10).
// - `out`: receives the corners of the cut line, x and y in turn (mm), the first not repeated.
// - `room`: how many points `out` holds (2 numbers each). Too few gives RECLOTH_STATUS_ROOM with the
//   number needed in `error->min`; ask with NULL and 0.
// - `out_count`: receives how many points there are.
// - `error`: `at` is the index of the edge: `gap` or `edges` where the ring crosses itself or holds no
//   area (RECLOTH_STATUS_OUTLINE), `allowance` where nothing is left of the cut line of an edge.
//
// Every list is NULL or valid for its number of items, `out_count` and `error` NULL or valid.
recloth_status recloth_cut_line(const double *points,
                                const double *bulges,
                                const double *allowances,
                                const int32_t *corners,
                                const int32_t *drawn,
                                size_t count,
                                double tolerance,
                                double *out,
                                size_t room,
                                size_t *out_count,
                                recloth_error_t *error);

// Works out a plan from the text of a brief: pieces, lays, sheets and the order of work.
//
// - `brief`: the text of a brief (TOML), UTF-8.
// - `name`: the brief's name in messages, as `house-coat.toml`.
// - `folder`: where to write the worksheet, the sheets and drawings, and `plan.json`: made where it is
//   not there; a plan written there before is replaced, other files stay; all or nothing. NULL writes
//   no file.
// - `out`: receives the plan as JSON (the text of `plan.json`), closed by a NUL; free it with
//   recloth_text_free(). NULL when it is not wanted.
// - `message`: on failure receives what is wrong and what would be right, as
//   `house-coat.toml:12: ...`; free it with recloth_text_free(). NULL when it is not wanted. Left
//   alone on success.
// - `error`: a bad brief is RECLOTH_STATUS_INVALID with argument `brief` and its line, from 1, in
//   `value` (NaN where there is none); a folder that cannot be written is RECLOTH_STATUS_INVALID with
//   argument `folder`.
//
// A piece that fits nowhere is no error: `answer`, `lays` and `doubts` of the plan tell.
//
// `brief`, `name` and `folder` are NULL or strings closed by a NUL; `out`, `message` and `error` are
// NULL or valid for writing.
recloth_status recloth_plan(const char *brief,
                            const char *name,
                            const char *folder,
                            char **out,
                            char **message,
                            recloth_error_t *error);

// Frees a text that a function of this library handed out; NULL is left alone.
//
// `text` is NULL, or was handed out by this library as one to free and is not freed yet.
void recloth_text_free(char *text);

// A piece of lines and arcs: the edges of recloth_cut_line(), each named by its index.
//
// Names, notches, marks, grain and cubic curves come in by recloth_piece_from_json().
//
// - `name`: name of the piece, UTF-8.
// - `points`, `bulges`, `allowances`, `drawn`, `count`: as of recloth_cut_line().
// - `corners`: of each edge, how its allowance joins that of the next (one of `recloth_corner`); NULL when
//   all are pointed.
// - `sizes`: of each corner its size: of a pointed one the farthest its point may reach, in larger
//   allowances (1 to 100; 0 for 4), of a trimmed one its distance, of a rounded one its radius (mm, 0 to
//   1000). NULL where none needs one.
// - `out`: receives the piece; free it with recloth_piece_free().
//
// As of recloth_cut_line(); `name` is NULL or closed by a NUL, `out` NULL or valid for writing.
recloth_status recloth_piece_from_edges(const char *name,
                                        const double *points,
                                        const double *bulges,
                                        const double *allowances,
                                        const int32_t *corners,
                                        const double *sizes,
                                        const int32_t *drawn,
                                        size_t count,
                                        recloth_piece **out,
                                        recloth_error_t *error);

// The piece that recloth_piece_to_json() wrote, or that was written by hand in the same words.
//
// - `json`: the piece as JSON, UTF-8.
// - `out`: receives the piece; free it with recloth_piece_free().
// - `message`: on JSON that is no piece receives what is wrong, as `unknown field "grian" at line 3
//   column 8`; free it with recloth_text_free(). NULL when it is not wanted. Else left alone.
// - `error`: JSON that is no piece is RECLOTH_STATUS_INVALID, with its line, from 1, in `value`.
//
// `json` is NULL or closed by a NUL; `out`, `message` and `error` are NULL or valid for writing.
recloth_status recloth_piece_from_json(const char *json,
                                       recloth_piece **out,
                                       char **message,
                                       recloth_error_t *error);

// A piece as JSON, every number to the last bit.
//
// - `out`: receives the text, closed by a NUL; free it with recloth_text_free().
//
// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_to_json(const recloth_piece *piece,
                                     char **out,
                                     recloth_error_t *error);

// Frees a piece; NULL is left alone. Each is freed once: as with free(), a second time is undefined.
//
// `piece` is NULL, or was handed out by this library and is not freed yet.
void recloth_piece_free(recloth_piece *piece);

// Name of a piece.
//
// - `out`: receives the name, closed by a NUL, into `out_count` bytes.
//
// `piece` is NULL or live; `out` is NULL or valid for `out_count` bytes; `error` NULL or valid.
recloth_status recloth_piece_name(const recloth_piece *piece,
                                  char *out,
                                  size_t out_count,
                                  recloth_error_t *error);

// What a piece is, in numbers.
//
// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_facts(const recloth_piece *piece,
                                   recloth_piece_facts_t *out,
                                   recloth_error_t *error);

// Name of an edge.
//
// - `edge`: its index.
// - `out`: receives the name, closed by a NUL, into `out_count` bytes.
//
// As of recloth_piece_name().
recloth_status recloth_piece_edge_name(const recloth_piece *piece,
                                       size_t edge,
                                       char *out,
                                       size_t out_count,
                                       recloth_error_t *error);

// Index of the first edge with this name.
//
// - `error`: RECLOTH_STATUS_NO_SOLUTION naming `name` where there is none.
//
// `piece` is NULL or live; `name` NULL or closed by a NUL; `out` and `error` NULL or valid for writing.
recloth_status recloth_piece_edge(const recloth_piece *piece,
                                  const char *name,
                                  size_t *out,
                                  recloth_error_t *error);

// Length of an edge along its drawn line (mm).
//
// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_edge_length(const recloth_piece *piece,
                                         size_t edge,
                                         double *out,
                                         recloth_error_t *error);

// The point on an edge at a distance from its start, and the direction outward there, of length 1.
//
// - `distance`: from the start of the edge along it (mm), held to its ends.
// - `out`: receives x, y, and x and y of the direction: 4 numbers.
//
// `piece` is NULL or live; `out` NULL or valid for 4 numbers; `error` NULL or valid for writing.
recloth_status recloth_piece_at(const recloth_piece *piece,
                                size_t edge,
                                double distance,
                                double *out,
                                recloth_error_t *error);

// The place on the outline nearest to a point.
//
// - `x`, `y`: the point (mm, -100000 to 100000).
// - `out`: receives the place.
// - `off`: receives how far off the outline the point lies (mm); NULL when it is not wanted.
//
// `piece` is NULL or live; `out`, `off` and `error` are NULL or valid for writing.
recloth_status recloth_piece_place(const recloth_piece *piece,
                                   double x,
                                   double y,
                                   recloth_place_t *out,
                                   double *off,
                                   recloth_error_t *error);

// Whether a piece is handed: no turn lays it onto its own mirror image.
//
// - `tolerance`: by how much corners and curves may differ (mm, 0 to 1000).
// - `out`: receives 1 if it is, else 0.
//
// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_handed(const recloth_piece *piece,
                                    double tolerance,
                                    uint32_t *out,
                                    recloth_error_t *error);

// The line to cut a piece along, as a polygon.
//
// - `tolerance`: how near curves are followed (mm, 0.001 to 10).
// - `out`: receives its corners, x and y in turn (mm), the first not repeated.
// - `room`: how many points `out` holds (2 numbers each). Too few gives RECLOTH_STATUS_ROOM with the
//   number needed in `error->min`; ask with NULL and 0.
// - `out_count`: receives how many points there are.
// - `error`: `at` is the index of the edge where nothing is left of its cut line.
//
// `piece` is NULL or live; `out` NULL or valid for twice `room` numbers, `out_count` and `error` NULL or
// valid for writing.
recloth_status recloth_piece_cut_line(const recloth_piece *piece,
                                      double tolerance,
                                      double *out,
                                      size_t room,
                                      size_t *out_count,
                                      recloth_error_t *error);

// The line a piece is sewn along, as a polygon: the drawn line, and where an edge is drawn as cut, its
// allowance within.
//
// - `tolerance`, `out`, `room`, `out_count`, `error`: as of recloth_piece_cut_line().
//
// As of recloth_piece_cut_line().
recloth_status recloth_piece_seam_line(const recloth_piece *piece,
                                       double tolerance,
                                       double *out,
                                       size_t room,
                                       size_t *out_count,
                                       recloth_error_t *error);

// The line to cut a piece along, as lines and arcs.
//
// - `tolerance`: how near cubic curves are followed (mm, 0.001 to 10).
// - `out`: receives the lines and arcs, counter-clockwise; each starts where the one before ends.
// - `room`: how many `out` holds. Too few gives RECLOTH_STATUS_ROOM with the number needed in
//   `error->min`; ask with NULL and 0.
// - `out_count`: receives how many there are.
//
// `piece` is NULL or live; `out` NULL or valid for `room` records, `out_count` and `error` NULL or valid
// for writing.
recloth_status recloth_piece_cut_segments(const recloth_piece *piece,
                                          double tolerance,
                                          recloth_segment_t *out,
                                          size_t room,
                                          size_t *out_count,
                                          recloth_error_t *error);

// The notches of a piece, carried to its cut line, edge by edge.
//
// - `tolerance`: as of recloth_piece_cut_segments().
// - `out`, `room`, `out_count`: as of recloth_piece_cut_segments(); their names are in the JSON of the
//   piece.
//
// As of recloth_piece_cut_segments().
recloth_status recloth_piece_cut_notches(const recloth_piece *piece,
                                         double tolerance,
                                         recloth_cut_notch_t *out,
                                         size_t room,
                                         size_t *out_count,
                                         recloth_error_t *error);

// The corners of a piece that cannot be made as asked, and are pointed in its cut line.
//
// - `tolerance`: as of recloth_piece_cut_segments().
// - `out`: receives an error a corner, for recloth_error_text(): its argument is the measure of the corner
//   that does not do, with what would, and `at` the index of the edge that the corner ends.
// - `room`, `out_count`: as of recloth_piece_cut_segments(); none is as it should be.
//
// As of recloth_piece_cut_segments().
recloth_status recloth_piece_cut_unmade(const recloth_piece *piece,
                                        double tolerance,
                                        recloth_error_t *out,
                                        size_t room,
                                        size_t *out_count,
                                        recloth_error_t *error);

// The mirror image about the y axis: x becomes -x. Edges come in the opposite order, each reversed.
//
// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_mirror(const recloth_piece *piece,
                                    recloth_piece **out,
                                    recloth_error_t *error);

// The piece shifted.
//
// - `x`, `y`: by how much (mm, -100000 to 100000).
//
// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_shifted(const recloth_piece *piece,
                                     double x,
                                     double y,
                                     recloth_piece **out,
                                     recloth_error_t *error);

// The piece turned about the origin.
//
// - `angle_deg`: counter-clockwise (deg, -1000000 to 1000000).
//
// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_turned(const recloth_piece *piece,
                                    double angle_deg,
                                    recloth_piece **out,
                                    recloth_error_t *error);

// A piece on the fold of the cloth folded open: the whole piece.
//
// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_unfold(const recloth_piece *piece,
                                    recloth_piece **out,
                                    recloth_error_t *error);

// The piece with a dart turned to other places, whole or shared among them; what is not shared out
// stays in the dart.
//
// - `dart`: name of the dart, UTF-8.
// - `openings`: where to, `openings_count` of them.
// - `error`: `at` is the index of the opening at fault.
//
// `piece` is NULL or live; `dart` and the names of the openings NULL or closed by a NUL; `openings` NULL or
// valid for its count; `out` and `error` NULL or valid for writing.
recloth_status recloth_piece_turn_dart(const recloth_piece *piece,
                                       const char *dart,
                                       const recloth_opening_t *openings,
                                       size_t openings_count,
                                       recloth_piece **out,
                                       recloth_error_t *error);

// The piece with a dart closed, and the cloth opened at another place of the outline, for gathers or
// ease there.
//
// - `dart`: name of the dart, UTF-8.
// - `at`: where it opens.
//
// `piece` is NULL or live; `dart` NULL or closed by a NUL; `out` and `error` NULL or valid for writing.
recloth_status recloth_piece_close_dart(const recloth_piece *piece,
                                        const char *dart,
                                        recloth_place_t at,
                                        recloth_piece **out,
                                        recloth_error_t *error);

// The piece opened into a new dart: slashed from the outline to a point, and from there to the place
// opposite, where it swings as at a hinge.
//
// - `name`: name of the new dart, UTF-8.
// - `x`, `y`: its point, within the piece (mm).
// - `at`: where it opens.
// - `intake`: how far it opens there (mm).
// - `opposite`: the hinge on the outline.
//
// `piece` is NULL or live; `name` NULL or closed by a NUL; `out` and `error` NULL or valid for writing.
recloth_status recloth_piece_open_dart(const recloth_piece *piece,
                                       const char *name,
                                       double x,
                                       double y,
                                       recloth_place_t at,
                                       double intake,
                                       recloth_place_t opposite,
                                       recloth_piece **out,
                                       recloth_error_t *error);

// The piece with the cap of a dart drawn, so that its seam edge runs on straight when the dart is
// folded.
//
// - `dart`: name of the dart, UTF-8.
// - `onto`: index of the edge beside the dart that the folded cloth lies on.
//
// `piece` is NULL or live; `dart` NULL or closed by a NUL; `out` and `error` NULL or valid for writing.
recloth_status recloth_piece_cap_dart(const recloth_piece *piece,
                                      const char *dart,
                                      size_t onto,
                                      recloth_piece **out,
                                      recloth_error_t *error);

// The piece slashed across and spread: for flare from a hinge, for gathers or pleats parallel.
//
// - `slashes`: side by side, `slashes_count` of them.
//
// `piece` is NULL or live; `slashes` NULL or valid for its count; `out` and `error` NULL or valid for
// writing.
recloth_status recloth_piece_slash_and_spread(const recloth_piece *piece,
                                              const recloth_slash_t *slashes,
                                              size_t slashes_count,
                                              recloth_piece **out,
                                              recloth_error_t *error);

// The piece scaled for what washing will take, so that it has its size after it.
//
// - `along_pct`, `across_pct`: change along and across the grain (%; minus is shrinkage).
//
// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_scale_for_change(const recloth_piece *piece,
                                              double along_pct,
                                              double across_pct,
                                              recloth_piece **out,
                                              recloth_error_t *error);

// The piece with edges that follow each other shifted parallel, outward if positive.
//
// - `edges`: their indices, `edges_count` of them.
// - `by`: how far (mm, -1000 to 1000).
//
// `piece` is NULL or live; `edges` NULL or valid for its count; `out` and `error` NULL or valid for writing.
recloth_status recloth_piece_shift_edges(const recloth_piece *piece,
                                         const size_t *edges,
                                         size_t edges_count,
                                         double by,
                                         recloth_piece **out,
                                         recloth_error_t *error);

// The facing of edges that follow each other: a band of even depth along them.
//
// - `edges`: their indices in order round the piece, `edges_count` of them.
// - `name`: name of the facing, UTF-8.
// - `depth`: square to the faced edges (mm, 1 to 1000).
// - `roll`: by how much its faced edges lie within those of the piece, so that the seam rolls under (mm,
//   0 to 10).
// - `inner_allowance`: of its inner edge (mm, 0 to 1000).
//
// `piece` is NULL or live; `edges` NULL or valid for its count; `name` NULL or closed by a NUL; `out` and
// `error` NULL or valid for writing.
recloth_status recloth_piece_facing(const recloth_piece *piece,
                                    const size_t *edges,
                                    size_t edges_count,
                                    const char *name,
                                    double depth,
                                    double roll,
                                    double inner_allowance,
                                    recloth_piece **out,
                                    recloth_error_t *error);

// Cuts a piece in two along a line or curve that crosses its outline twice.
//
// - `cut`: the line or curve.
// - `name`: name of the new edge in both parts, UTF-8.
// - `allowance`: its seam allowance in both (mm, 0 to 1000).
// - `notches`: where both are notched, distances from the start of the cut along it (mm),
//   `notches_count` of them.
// - `left`, `right`: receive the part to the left of the cut and that to its right; free each.
//
// `piece` is NULL or live; `cut` NULL or valid; `name` NULL or closed by a NUL; `notches` NULL or valid for
// its count; `left`, `right` and `error` NULL or valid for writing.
recloth_status recloth_piece_split(const recloth_piece *piece,
                                   const recloth_curve_t *cut,
                                   const char *name,
                                   double allowance,
                                   const double *notches,
                                   size_t notches_count,
                                   recloth_piece **left,
                                   recloth_piece **right,
                                   recloth_error_t *error);

// Lays another piece along an edge of this one and makes one piece of both, without the seam.
//
// - `edge`, `other_edge`: the edges, by index.
// - `tolerance`: how far the two edges may lie apart or over each other (mm, 0 to 1000).
// - `out`: receives the one piece; free it.
// - `gap`: receives the farthest that they do (mm); NULL when it is not wanted.
//
// `piece` and `other` are NULL or live; `out`, `gap` and `error` are NULL or valid for writing.
recloth_status recloth_piece_join(const recloth_piece *piece,
                                  size_t edge,
                                  const recloth_piece *other,
                                  size_t other_edge,
                                  double tolerance,
                                  recloth_piece **out,
                                  double *gap,
                                  recloth_error_t *error);

// Folds a piece along an axis from corner to corner and gives the middle of both halves, on a fold along
// the axis; it says by how much they differ.
//
// - `start_x`, `start_y`, `end_x`, `end_y`: ends of the axis (mm).
// - `tolerance`: how near a corner must lie to each (mm, 0 to 1000).
// - `out`: receives the half; free it.
// - `largest`: receives the farthest that a point of one half lies from its fellow in the other (mm);
//   NULL when it is not wanted.
// - `edge`: receives the index of the edge where that is; NULL when it is not wanted.
//
// `piece` is NULL or live; `out`, `largest`, `edge` and `error` are NULL or valid for writing.
recloth_status recloth_piece_symmetrise(const recloth_piece *piece,
                                        double start_x,
                                        double start_y,
                                        double end_x,
                                        double end_y,
                                        double tolerance,
                                        recloth_piece **out,
                                        double *largest,
                                        size_t *edge,
                                        recloth_error_t *error);

// Walks edges of a piece along edges of another, by the drawn lines: do they go together, and where lies
// the ease.
//
// - `edges`, `other_edges`: their indices in the order met.
// - `way`: which way the others run (one of `recloth_way`).
// - `out`: receives lengths and kinks.
// - `details`: receives the walk with its notches and the sections between them as JSON; free it with
//   recloth_text_free(). NULL when it is not wanted.
//
// `piece` and `other` are NULL or live; the lists NULL or valid for their counts; `out`, `details` and
// `error` NULL or valid for writing.
recloth_status recloth_piece_walk(const recloth_piece *piece,
                                  const size_t *edges,
                                  size_t edges_count,
                                  const recloth_piece *other,
                                  const size_t *other_edges,
                                  size_t other_edges_count,
                                  int32_t way,
                                  recloth_walk_t *out,
                                  char **details,
                                  recloth_error_t *error);

// The piece lengthened at a line across it, or shortened: what lies to the left of the line stays, what
// lies to its right moves square to it.
//
// - `start_x`, `start_y`, `end_x`, `end_y`: ends of the line (mm).
// - `by`: by how much (mm, -10000 to 10000).
//
// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_extend(const recloth_piece *piece,
                                    double start_x,
                                    double start_y,
                                    double end_x,
                                    double end_y,
                                    double by,
                                    recloth_piece **out,
                                    recloth_error_t *error);

// The lining of a piece: its seam lines less the facings, eased, with pleats for room, ended at the hem as
// asked.
//
// - `json`: the lining asked for, the fields of `Lining` in Rust, as `{"name": "lining", "cloth":
//   "lining", "facings": [], "ease": [{"edge": 1, "by": 3}], "pleats": [], "hem": {"jump": {"depth": 40,
//   "clearance": 20}}, "darts": "tucks", "allowance": 15, "shell_change_pct": [0, 0],
//   "lining_change_pct": [0, 0]}`.
// - `out`: receives the lining to cut; free it.
// - `report`: receives the lining, the lining as it will be when washed, and what to walk as JSON; free it with
//   recloth_text_free(). NULL when it is not wanted.
// - `message`: as of recloth_piece_from_json().
//
// `piece` is NULL or live; `json` NULL or closed by a NUL; `out`, `report`, `message` and `error` are NULL
// or valid for writing.
recloth_status recloth_piece_lining(const recloth_piece *piece,
                                    const char *json,
                                    recloth_piece **out,
                                    char **report,
                                    char **message,
                                    recloth_error_t *error);

// Trues up edges that meet at seams and darts, so that sewn together they run on smoothly; it says what was
// moved, where and how far.
//
// - `pieces`: the pieces, `pieces_count` of them, 1 to 1000.
// - `json`: where edges meet, a list of `Meeting` in Rust, as `[{"seam": {"pieces": [0, 1], "edges": [1,
//   3], "way": "against", "end": "start", "kept": "neither"}}, {"dart": {"piece": 0, "dart": "dart 1",
//   "onto": "start"}}]`; `kept`, which of the two is left as it is, may be left out.
// - `limit`: the most that an edge may be moved (mm, 0 to 1000).
// - `out`: receives all the pieces, changed or not: `pieces_count` of them; free each.
// - `report`: receives what was changed as JSON; free it with recloth_text_free(). NULL when it is not
//   wanted.
// - `message`: as of recloth_piece_from_json().
//
// `pieces` is NULL or valid for its count, each NULL or live; `json` NULL or closed by a NUL; `out` NULL or
// valid for as many handles; `report`, `message` and `error` are NULL or valid for writing.
recloth_status recloth_true_up(const recloth_piece *const *pieces,
                               size_t pieces_count,
                               const char *json,
                               double limit,
                               recloth_piece **out,
                               char **report,
                               char **message,
                               recloth_error_t *error);

// Sets notches on two rows of edges that are sewn together, so that they meet.
//
// - `edges`, `other_edges`: indices of the edges in the order met.
// - `way`: which way the others run (one of `recloth_way`).
// - `json`: the notches, a list of `PairedNotch` in Rust, as `[{"name": "hip", "distance": 200, "ease": 0,
//   "marks": 1}]`.
// - `out`, `other_out`: receive this piece and the other with the notches; free each.
// - `message`: as of recloth_piece_from_json().
//
// `piece` and `other` are NULL or live; the lists NULL or valid for their counts; `json` NULL or closed by a
// NUL; `out`, `other_out`, `message` and `error` are NULL or valid for writing.
recloth_status recloth_piece_pair_notches(const recloth_piece *piece,
                                          const size_t *edges,
                                          size_t edges_count,
                                          const recloth_piece *other,
                                          const size_t *other_edges,
                                          size_t other_edges_count,
                                          int32_t way,
                                          const char *json,
                                          recloth_piece **out,
                                          recloth_piece **other_out,
                                          char **message,
                                          recloth_error_t *error);

// Pairs the notches of two pieces by their names.
//
// - `out`: receives each name with its place on both as JSON; free it with recloth_text_free().
//
// `piece` and `other` are NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_match_notches(const recloth_piece *piece,
                                           const recloth_piece *other,
                                           char **out,
                                           recloth_error_t *error);

// Copies edges of a piece that fits onto another between two landmarks, in place of its outline there.
//
// - `from`, `to`: the landmarks on this piece, counter-clockwise.
// - `other`: the piece that fits; mirror it first where it lies mirrored.
// - `other_from`, `other_to`: where the copied edges begin and end on it, counter-clockwise.
// - `gap`: how much nearer or farther apart their ends may be than the landmarks (mm, 0 to 1000).
// - `stretch_pct`: how much they may be stretched or shrunk (%, 0 to 50); 0 for never.
// - `out`: receives the piece; free it.
// - `fit`: receives how well they fitted; NULL when it is not wanted.
//
// `piece` and `other` are NULL or live; `out`, `fit` and `error` are NULL or valid for writing.
recloth_status recloth_piece_copy_edge(const recloth_piece *piece,
                                       recloth_place_t from,
                                       recloth_place_t to,
                                       const recloth_piece *other,
                                       recloth_place_t other_from,
                                       recloth_place_t other_to,
                                       double gap,
                                       double stretch_pct,
                                       recloth_piece **out,
                                       recloth_copied_t *fit,
                                       recloth_error_t *error);

// Copies edges of a piece that fits, whose dart is sewn, as they run with that dart open: above the level of its
// point they move away from it by a share of its width there.
//
// - `from`, `to`, `other`, `other_from`, `other_to`, `gap`, `stretch_pct`, `out`, `fit`: as of
//   recloth_piece_copy_edge().
// - `dart`: x and y of its point and of the ends of its legs (mm), 6 numbers, where it lies in the other piece.
// - `share`: what of it opens towards these edges, 0 to 1.
//
// `piece` and `other` are NULL or live; `dart` NULL or valid for 6 numbers; `out`, `fit` and `error` are NULL or
// valid for writing.
recloth_status recloth_piece_copy_opened_edge(const recloth_piece *piece,
                                              recloth_place_t from,
                                              recloth_place_t to,
                                              const recloth_piece *other,
                                              recloth_place_t other_from,
                                              recloth_place_t other_to,
                                              const double *dart,
                                              double share,
                                              double gap,
                                              double stretch_pct,
                                              recloth_piece **out,
                                              recloth_copied_t *fit,
                                              recloth_error_t *error);

// Copies an edge measured point by point onto a piece between two landmarks.
//
// - `from`, `to`, `gap`, `stretch_pct`, `out`, `fit`: as of recloth_piece_copy_edge().
// - `name`: name of the edge, UTF-8.
// - `measured`: x and y of each point in turn (mm), `measured_count` points, 2 to 1001.
// - `smooth`: 1 for a curve through all points, 0 for straight edges between them.
//
// `piece` is NULL or live; `name` NULL or closed by a NUL; `measured` NULL or valid for twice its count;
// `out`, `fit` and `error` are NULL or valid for writing.
recloth_status recloth_piece_copy_measured_edge(const recloth_piece *piece,
                                                recloth_place_t from,
                                                recloth_place_t to,
                                                const char *name,
                                                const double *measured,
                                                size_t measured_count,
                                                uint32_t smooth,
                                                double gap,
                                                double stretch_pct,
                                                recloth_piece **out,
                                                recloth_copied_t *fit,
                                                recloth_error_t *error);

// A panel by the corners of its outline.
//
// - `name`: what the maker calls it, UTF-8.
// - `outline`: x and y of each corner in turn (mm, -100000 to 100000), either way round.
// - `outline_count`: number of corners, 3 to 5000.
// - `out`: receives the panel; free it with recloth_panel_free().
//
// `name` is NULL or closed by a NUL; `outline` NULL or valid for twice its count; `out` and `error` NULL or
// valid for writing.
recloth_status recloth_panel_new(const char *name,
                                 const double *outline,
                                 size_t outline_count,
                                 recloth_panel **out,
                                 recloth_error_t *error);

// A panel measured by tape in triangles: corner 1 lies `base` from corner 0, straight along x; each further
// corner, in order round the panel, is found by two readings from corners before it.
//
// - `name`: what the maker calls it, UTF-8.
// - `base`, `starts`, `ends`, `from_start`, `from_end`, `sides`: as of recloth_panel_by_triangles(), each
//   list of `count` items.
// - `out`: receives the panel; check it by recloth_panel_with_spares(), free it with
//   recloth_panel_free().
//
// `name` is NULL or closed by a NUL; each list NULL or valid for `count` items; `out` and `error` NULL or
// valid for writing.
recloth_status recloth_panel_from_triangles(const char *name,
                                            double base,
                                            const uint32_t *starts,
                                            const uint32_t *ends,
                                            const double *from_start,
                                            const double *from_end,
                                            const uint32_t *sides,
                                            size_t count,
                                            recloth_panel **out,
                                            recloth_error_t *error);

// A panel measured square from a line drawn on the straight grain, which is the y axis: corners are those
// of the right edge upward, then those of the left edge downward.
//
// - `name`: what the maker calls it, UTF-8.
// - `stations`, `left`, `right`: as of recloth_panel_by_offsets(), each list of `count` items.
// - `out`: receives the panel; free it with recloth_panel_free().
//
// As of recloth_panel_from_triangles().
recloth_status recloth_panel_from_offsets(const char *name,
                                          const double *stations,
                                          const double *left,
                                          const double *right,
                                          size_t count,
                                          recloth_panel **out,
                                          recloth_error_t *error);

// A panel photographed flat beside a reference of four known points. The bow that a lens gives straight
// lines is not taken out, which its doubts say.
//
// - `name`: what the maker calls it, UTF-8.
// - `picture`: x and y of the four points in the picture: 8 numbers.
// - `truth`: x and y of the same points as they truly lie, in the same order (mm): 8 numbers.
// - `outline`: x and y of each corner of the panel in the picture.
// - `outline_count`: number of corners, 3 to 1000.
// - `out`: receives the panel; free it with recloth_panel_free().
//
// `name` is NULL or closed by a NUL; `picture` and `truth` NULL or valid for 8 numbers, `outline` NULL or
// valid for twice its count; `out` and `error` NULL or valid for writing.
recloth_status recloth_panel_from_photo(const char *name,
                                        const double *picture,
                                        const double *truth,
                                        const double *outline,
                                        size_t outline_count,
                                        recloth_panel **out,
                                        recloth_error_t *error);

// A panel from the path of an SVG drawing (the attribute `d`): its first subpath is the outline, the
// others are holes or flaws. y runs down in a drawing, and up in the panel.
//
// - `name`: what the maker calls it, UTF-8.
// - `path`: the path, UTF-8.
// - `mm_per_unit`: what one unit of the drawing stands for (mm, 0.0001 to 10000).
// - `margin`: NaN where later subpaths are holes; else they are flaws with this margin (mm, 0 to 10000), of
//   one point a spot, of two a slit.
// - `accuracy`: how near curves are followed (mm, 0.001 to 10).
// - `out`: receives the panel; free it with recloth_panel_free().
// - `error`: RECLOTH_STATUS_SYNTAX naming `path`, with the character, from 0, in `at`.
//
// `name` and `path` are NULL or closed by a NUL; `out` and `error` NULL or valid for writing.
recloth_status recloth_panel_from_svg_path(const char *name,
                                           const char *path,
                                           double mm_per_unit,
                                           double margin,
                                           double accuracy,
                                           recloth_panel **out,
                                           recloth_error_t *error);

// The panel that recloth_panel_to_json() wrote, or that was written by hand in the same words.
//
// - `json`, `message`, `error`: as of recloth_piece_from_json().
// - `out`: receives the panel; free it with recloth_panel_free().
//
// As of recloth_piece_from_json().
recloth_status recloth_panel_from_json(const char *json,
                                       recloth_panel **out,
                                       char **message,
                                       recloth_error_t *error);

// A panel as JSON, every number to the last bit.
//
// - `out`: receives the text, closed by a NUL; free it with recloth_text_free().
//
// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_panel_to_json(const recloth_panel *panel,
                                     char **out,
                                     recloth_error_t *error);

// Frees a panel; NULL is left alone. Each is freed once: as with free(), a second time is undefined.
//
// `panel` is NULL, or was handed out by this library and is not freed yet.
void recloth_panel_free(recloth_panel *panel);

// The panel with one more hole.
//
// - `outline`: x and y of each corner of the hole in turn (mm), `outline_count` corners, 3 to 5000.
//
// `panel` is NULL or live; `outline` NULL or valid for twice its count; `out` and `error` NULL or valid for
// writing.
recloth_status recloth_panel_with_hole(const recloth_panel *panel,
                                       const double *outline,
                                       size_t outline_count,
                                       recloth_panel **out,
                                       recloth_error_t *error);

// The panel with one more flaw: a stain, worn place, slit, or row of needle holes.
//
// - `what`: what it is, UTF-8; NULL where it has no name.
// - `outline`: x and y of each point in turn (mm): one is a spot, two are a slit, 3 to 5000 an area.
// - `margin`: how far every piece keeps from it (mm, 0 to 10000).
//
// `panel` is NULL or live; `what` NULL or closed by a NUL; `outline` NULL or valid for twice its count;
// `out` and `error` NULL or valid for writing.
recloth_status recloth_panel_with_flaw(const recloth_panel *panel,
                                       const char *what,
                                       const double *outline,
                                       size_t outline_count,
                                       double margin,
                                       recloth_panel **out,
                                       recloth_error_t *error);

// The panel of this cloth.
//
// - `grain_deg`: direction of the lengthwise grain, counter-clockwise from the x axis (deg, -360 to 360); with
//   a nap, the way it runs.
// - `faces`: how many of its sides may show, 1 or 2.
// - `nap`: 1 where every piece must point the same way, else 0.
//
// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_panel_with_cloth(const recloth_panel *panel,
                                        double grain_deg,
                                        uint32_t faces,
                                        uint32_t nap,
                                        recloth_panel **out,
                                        recloth_error_t *error);

// The panel with a stripe, check or print that repeats, for parts with points to match; both lengths 0 take it away.
//
// - `along`, `across`: length of the repeat along the lengthwise grain and across it (mm, 1 to 2000; 0 for none).
// - `from_x`, `from_y`: a point of the cloth where a repeat begins (mm, -1e5 to 1e5).
//
// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_panel_with_repeat(const recloth_panel *panel,
                                         double along,
                                         double across,
                                         double from_x,
                                         double from_y,
                                         recloth_panel **out,
                                         recloth_error_t *error);

// The panel with its lengthwise grain from one corner of the outline towards another.
//
// - `from`, `to`: the corners, by index.
//
// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_panel_with_grain_between(const recloth_panel *panel,
                                                size_t from,
                                                size_t to,
                                                recloth_panel **out,
                                                recloth_error_t *error);

// The panel with these spare readings, which move no corner but tell by what they miss.
//
// - `from`, `to`: the corners each is read between, by index.
// - `readings`: the distances as read (mm, 1 to 100000).
// - `count`: how many there are, up to 1000.
// - `misfits`: receives for each the distance as the corners have it, less the reading (mm): `count`
//   numbers; NULL when they are not wanted.
//
// `panel` is NULL or live; the lists NULL or valid for `count` items; `out` and `error` NULL or valid for
// writing.
recloth_status recloth_panel_with_spares(const recloth_panel *panel,
                                         const size_t *from,
                                         const size_t *to,
                                         const double *readings,
                                         size_t count,
                                         double *misfits,
                                         recloth_panel **out,
                                         recloth_error_t *error);

// What a panel is, in numbers.
//
// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_panel_facts(const recloth_panel *panel,
                                   recloth_panel_facts_t *out,
                                   recloth_error_t *error);

// The outline of a panel.
//
// - `out`: receives its corners, x and y in turn (mm), as given.
// - `room`, `out_count`: as of recloth_piece_cut_line().
//
// `panel` is NULL or live; `out` NULL or valid for twice `room` numbers; `out_count` and `error` NULL or
// valid for writing.
recloth_status recloth_panel_outline(const recloth_panel *panel,
                                     double *out,
                                     size_t room,
                                     size_t *out_count,
                                     recloth_error_t *error);

// A hole of a panel.
//
// - `hole`: its index.
// - `out`, `room`, `out_count`: as of recloth_panel_outline().
//
// As of recloth_panel_outline().
recloth_status recloth_panel_hole(const recloth_panel *panel,
                                  size_t hole,
                                  double *out,
                                  size_t room,
                                  size_t *out_count,
                                  recloth_error_t *error);

// What can be cut from: a panel less a strip along each edge, its holes, and its flaws with their margins.
//
// - `losses`: lost along the edge from each corner of the outline to the next (mm, 0 to 1000).
// - `losses_count`: as many as the outline has corners.
// - `accuracy`: most that rounding may cost at any place (mm, 0.01 to 10).
// - `out`: receives the parts it falls into, the largest first; free each with recloth_panel_free().
// - `room`: how many `out` holds. Too few gives RECLOTH_STATUS_ROOM with the number needed in
//   `error->min`, and no part is handed out; ask with NULL and 0.
// - `out_count`: receives how many there are.
//
// `panel` is NULL or live; `losses` NULL or valid for its count; `out` NULL or valid for `room` handles;
// `out_count` and `error` NULL or valid for writing.
recloth_status recloth_panel_usable(const recloth_panel *panel,
                                    const double *losses,
                                    size_t losses_count,
                                    double accuracy,
                                    recloth_panel **out,
                                    size_t room,
                                    size_t *out_count,
                                    recloth_error_t *error);

// The largest rectangle, one side on the straight grain, that a panel holds clear of its holes and flaws.
//
// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_panel_largest_rectangle(const recloth_panel *panel,
                                               recloth_rectangle_t *out,
                                               recloth_error_t *error);

// The tallest rectangle of a width across the straight grain that a panel holds clear of its holes and
// flaws.
//
// - `width`: allowances included (mm, 0.1 to 200000).
//
// `panel` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_panel_tallest_rectangle(const recloth_panel *panel,
                                               double width,
                                               recloth_rectangle_t *out,
                                               recloth_error_t *error);

// Drafts pieces from measures.
//
// - `json`: the kind of draft and its measures (mm), as
//   `{"patch_pocket": {"width": 150, "depth": 170, "corner_radius": 20, "allowances": {"seam": 10, "hem": 30}}}`;
//   kinds and measures are those of the drafts in Rust, `PatchPocket` and so on, in these small letters.
// - `out`: receives the pieces; free each with recloth_piece_free().
// - `room`: how many `out` holds. Too few gives RECLOTH_STATUS_ROOM with the number needed in
//   `error->min`, and no piece is handed out; ask with NULL and 0.
// - `out_count`: receives how many there are.
// - `report`: receives all that the draft gives as JSON: pieces, what to walk, what was checked, doubts; free
//   it with recloth_text_free(). NULL when it is not wanted.
// - `message`: as of recloth_piece_from_json().
// - `error`: a draft that cannot be made names the measure to change, and what would do.
//
// `json` is NULL or closed by a NUL; `out` NULL or valid for `room` handles; `out_count`, `report`,
// `message` and `error` NULL or valid for writing.
recloth_status recloth_draft(const char *json,
                             recloth_piece **out,
                             size_t room,
                             size_t *out_count,
                             char **report,
                             char **message,
                             recloth_error_t *error);

// The lining of a whole draft, or of some of its pieces.
//
// - `draft`: what recloth_draft() wrote into `report`.
// - `json`: the lining asked for, a `DraftLining` in Rust, as `{"pieces": [], "cloth": "lining", "facings":
//   [{"edge": "waist", "by": 40}], "ease": [{"piece": "skirt front", "edge": "side", "by": 3}], "pleats": [],
//   "hem": {"free": {"clearance": 25, "allowance": 20}}, "darts": "tucks", "allowance": 10,
//   "shell_change_pct": [0, 0], "lining_change_pct": [0, 0]}`; an edge may be a seam of the draft.
// - `out`, `room`, `out_count`, `message`: as of recloth_draft().
// - `report`: receives the lining as JSON: `draft`, as of recloth_draft(), and `linings`, piece by piece what each
//   is sewn along; free it with recloth_text_free(). NULL when it is not wanted.
//
// `draft` and `json` are NULL or closed by a NUL; `out` NULL or valid for `room` handles; `out_count`, `report`,
// `message` and `error` NULL or valid for writing.
recloth_status recloth_draft_lining(const char *draft,
                                    const char *json,
                                    recloth_piece **out,
                                    size_t room,
                                    size_t *out_count,
                                    char **report,
                                    char **message,
                                    recloth_error_t *error);

// The least change that makes all pieces fit, as far as is found.
//
// - `json`: parts, panels, what the maker would allow (what she minds least first) and options, the fields of `Part`,
//   `Panel`, `Change` and `Options` in Rust: `{"parts": [...], "panels": [...], "changes": [
//   {"part": 0, "kind": {"tilt": {"to_deg": 5}}},
//   {"part": 0, "kind": {"join": {"across_deg": 90, "from": 100, "to": 540, "allowance": 10}}},
//   {"part": 0, "kind": {"shorter": {"toward_deg": 90, "beyond": 500, "most": 40}}},
//   {"part": 0, "kind": {"smaller": {"name": "narrower allowance", "steps": [{"amount": 5, "outline": [...]}]}}},
//   {"part": 0, "kind": {"instead": {"name": "in two", "parts": [...]}}},
//   {"part": 0, "kind": {"fewer": {"by": 1}}}], "options": {...}}`.
// - `progress`: as of recloth_fit(), `best` is always NaN; when it stops the search, `out` receives what there is so far.
// - `user`: given to `progress`, not looked at.
// - `out`: receives JSON: `answer` ("nothing" gives, "changed", "never": proved by `shortage`, or "undecided"), `made` (each
//   change made, its amount, and in `words`), `parts` and `panels` then and `fit`, how they lie, with `evaluations` and
//   `out_of_time`; recloth_check_lay() takes it where there is a fit. Free it with recloth_text_free().
// - `message`: as of recloth_fit(); names the change too.
//
// `json` is NULL or closed by a NUL; `progress` is NULL or a function that returns; `out`, `message` and `error` are NULL or valid for writing.
recloth_status recloth_least_change(const char *json,
                                    recloth_progress progress,
                                    void *user,
                                    char **out,
                                    char **message,
                                    recloth_error_t *error);

// How much longer a part can be, all pieces fitting: corners beyond a line move out along its grain, to 0.1 mm.
//
// - `json`: parts, panels, which end moves and options, the fields of `Part`, `Panel`, `Outward` and `Options` in Rust:
//   `{"parts": [...], "panels": [...], "outward": {"part": 0, "beyond": 500, "most": 100, "opposite": false},
//   "options": {...}}`. Corners further than `beyond` from the origin (mm, in the direction they move in) move by `most` at
//   most; `opposite` is the end that the grain points away from.
// - `progress`: as of recloth_fit(), `best` is always NaN; when it stops the search, `out` receives what there is so far.
// - `user`: given to `progress`, not looked at.
// - `out`: receives JSON: `value`, the length gained (mm; null where nothing was found to fit), `refused`, the least tried
//   that is proved not to fit, and by `shortage`, with `parts`, `panels` and `fit` at that value, `evaluations` and
//   `out_of_time`; recloth_check_lay() takes it where there is a fit. Free it with recloth_text_free().
// - `message`: as of recloth_fit().
//
// `json` is NULL or closed by a NUL; `progress` is NULL or a function that returns; `out`, `message` and `error` are NULL or valid for writing.
recloth_status recloth_longest(const char *json,
                               recloth_progress progress,
                               void *user,
                               char **out,
                               char **message,
                               recloth_error_t *error);

// How much wider a part can be, all pieces fitting: corners beyond a line move out across its grain, to the right of it,
// or to its left where `opposite`. Otherwise as recloth_longest().
//
// - `json`: as of recloth_longest().
// - `progress`: as of recloth_longest().
// - `user`: given to `progress`, not looked at.
// - `out`: as of recloth_longest(); `value` is the width gained (mm).
// - `message`: as of recloth_fit().
//
// `json` is NULL or closed by a NUL; `progress` is NULL or a function that returns; `out`, `message` and `error` are NULL or valid for writing.
recloth_status recloth_fullest(const char *json,
                               recloth_progress progress,
                               void *user,
                               char **out,
                               char **message,
                               recloth_error_t *error);

// The largest value of a measure at which all pieces fit, as far as is found.
//
// The largest value is tried, then the least, then those between by halves, then again by halves for the least that is
// proved impossible. It is taken for granted that what fits at a value fits at every smaller one.
//
// - `json`: the values, the panels and options, the fields of `Values`, `Panel` and `Options` in Rust:
//   `{"values": {"low": 100, "high": 400, "step": 5}, "panels": [...], "options": {...}}`.
// - `parts_at`: makes the parts of a value.
// - `progress`: as of recloth_longest().
// - `user`: given to both, not looked at.
// - `out`: as of recloth_longest(); `value` is the largest value found to fit.
// - `message`: as of recloth_fit(); where the parts of a value cannot be read, it says of which.
//
// `json` is NULL or closed by a NUL; `parts_at` is NULL or a function that returns and gives NULL or a text closed by a NUL;
// `progress` is NULL or a function that returns; `out`, `message` and `error` are NULL or valid for writing.
recloth_status recloth_largest(const char *json,
                               recloth_parts_at parts_at,
                               recloth_progress progress,
                               void *user,
                               char **out,
                               char **message,
                               recloth_error_t *error);

// What a lay leaves of each panel: panel by panel, the largest shape first.
//
// The outline less holes, flaws with their margins, and the pieces as they lie; the spacing between pieces is not taken
// off. A spot or a slit counts as at least 0.1 mm wide on every side.
//
// - `json`: a lay, as of recloth_check_lay().
// - `rectangles`: how many rectangles on grain at most in each shape (0 to 100).
// - `least`: not those with a side shorter than this (mm, 0 to 1e5).
// - `out`: receives a list as JSON, of each shape the index of its `panel`, `outline`, `holes`, `area_mm2` and `rectangles`
//   (`corner`, `width` and `height` in mm, `grain_deg`, `area_mm2`); free it with recloth_text_free().
// - `message`: as of recloth_fit().
//
// `json` is NULL or closed by a NUL; `out`, `message` and `error` are NULL or valid for writing.
recloth_status recloth_leftovers(const char *json,
                                 uint32_t rectangles,
                                 double least,
                                 char **out,
                                 char **message,
                                 recloth_error_t *error);

// The part that a piece is laid as, as JSON for recloth_fit() and recloth_strip(): its cut line, seam line,
// grain and how many of each hand; of a piece on a fold the whole, and the fold. It may not be tilted, its right side shows.
//
// - `tolerance`: how near curves are followed (mm, 0.001 to 10).
// - `out`: receives the part; free it with recloth_text_free().
//
// `piece` is NULL or live; `out` and `error` are NULL or valid for writing.
recloth_status recloth_piece_part(const recloth_piece *piece,
                                  double tolerance,
                                  char **out,
                                  recloth_error_t *error);

// Which pieces fit on which panels, where all of them go together, or what proves that they cannot.
//
// - `json`: parts, panels and options, the fields of `Part`, `Panel` and `Options` in Rust; what may be left out
//   has its default: `{"parts": [{"name": "pocket", "outline": [{"x": 0, "y": 0}, ...], "as_drawn": 2}],
//   "panels": [{"name": "back", "outline": [...]}], "options": {"spacing": 2, "seed": 1, "budget": 200000000,
//   "seconds": null, "threads": 0}}`.
// - `progress`: called while it works; when it stops the search, `out` receives what there is so far. NULL
//   where nobody is to be told.
// - `user`: given to `progress`, not looked at.
// - `out`: receives `parts`, `panels` and `fit` as JSON: for each piece on each panel whether it fits alone,
//   whether all fit together, and the best lay; free it with recloth_text_free().
// - `message`: as of recloth_piece_from_json(); names the part, the panel or the option too.
//
// The same input gives the same answer on every machine, for any number of threads, unless `seconds` or `progress`
// ends the search. Every place was proved as recloth_check_lay() does.
//
// `json` is NULL or closed by a NUL; `progress` is NULL or a function that returns; `out`, `message` and `error` are NULL or valid for writing.
recloth_status recloth_fit(const char *json,
                           recloth_progress progress,
                           void *user,
                           char **out,
                           char **message,
                           recloth_error_t *error);

// All pieces on cloth by the length, as short as was found.
//
// - `json`: parts, the cloth and options, the fields of `Part`, `Strip` and `StripOptions` in Rust; what may be left
//   out has its default: `{"parts": [...], "strip": {"width": 1400, "faces": "one", "nap": false, "folded": false,
//   "repeat": null},
//   "options": {"spacing": 0, "seed": 1, "budget": 50000000, "seconds": null, "threads": 0}}`.
// - `progress`: called while it works; when it stops the search, `out` receives the best lay so far. NULL
//   where nobody is to be told.
// - `user`: given to `progress`, not looked at.
// - `out`: receives `parts`, `strip` and `found` as JSON: the length, the share covered and the lay; free it
//   with recloth_text_free().
// - `message`: as of recloth_fit().
//
// The same input gives the same lay on every machine, for any number of threads, unless `seconds` or `progress`
// ends the search.
//
// `json` is NULL or closed by a NUL; `progress` is NULL or a function that returns; `out`, `message` and
// `error` are NULL or valid for writing.
recloth_status recloth_strip(const char *json,
                             recloth_progress progress,
                             void *user,
                             char **out,
                             char **message,
                             recloth_error_t *error);

// What is wrong with a lay: nothing, when it can be cut.
//
// Proves that every piece is inside its panel, clear of holes, flaws and other pieces, on grain within its
// tolerance, the right way up, of the right hand, and none too many or too few.
//
// - `json`: what recloth_fit() or recloth_strip() gave, or recloth_least_change() and its like with a fit, or `parts`, `panels` and `lay`, the fields of `Lay` in Rust:
//   `{"placements": [{"part": 0, "hand": "as_drawn", "panel": 0, "mirrored": false, "turn_deg": 0,
//   "shift": {"x": 20, "y": 30}}], "unplaced": [], "spacing": 0}`; with `"folds": [{"panel": 0, "from": {"x": 0,
//   "y": 700}, "to": {"x": 1, "y": 700}}]` of panels that are folded when they are cut.
// - `count`: receives how many things are wrong.
// - `out`: receives a list of sentences as JSON, one for each; free it with recloth_text_free(). NULL
//   when they are not wanted.
// - `message`: as of recloth_fit().
//
// `json` is NULL or closed by a NUL; `count`, `out`, `message` and `error` are NULL or valid for writing.
recloth_status recloth_check_lay(const char *json,
                                 size_t *count,
                                 char **out,
                                 char **message,
                                 recloth_error_t *error);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* RECLOTH_H */
