/* Recloth: the arithmetic and geometry of remaking clothes.
 *
 * Lengths are doubles in millimetres, in and out; anything else carries its unit in its name.
 * A function returns 0 (RECLOTH_STATUS_OK) or the kind of error. Answers are written to `out`, on
 * success only. `error` may be NULL; else it says on failure which argument was wrong and what
 * would do, and recloth_error_text() puts it into words. No function keeps a pointer or allocates
 * what the caller must free, unless it says so. Every function may be called from any thread.
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

// This girth is below 300 mm: is it in centimetres or inches?
#define RECLOTH_DOUBT_GIRTH_SMALL 1

// This girth is above 2000 mm: was it taken twice, or in another unit?
#define RECLOTH_DOUBT_GIRTH_LARGE 2

// Follow the product's label, the care label and local rules before anything printed here.
#define RECLOTH_CAUTION_LABEL_FIRST 1

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

// A skirt cut from part of a ring: where to set the compass, and how long the hem comes out.
typedef struct {
  // Radius of the waist edge (mm).
  double waist_radius;
  // Radius of the hem edge (mm).
  double hem_radius;
  // Length of the hem edge (mm).
  double hem_length;
} recloth_circle_skirt_t;

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

// Radii of a skirt cut from part of a ring.
//
// The waist edge is an arc: `waist = 2π · fraction · waist_radius`. A fraction above 1 is made of several sectors.
//
// - `waist`: finished waist edge, ease included (mm, 1 to 100000).
// - `length`: waist edge to hem edge, no allowances (mm, 0 to 100000).
// - `fraction`: part of a full ring: 0.5 is a half circle (0.01 to 4).
// - `out`: the answer.
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

// One general sentence for a status; NULL for a number that is none. A constant string.
const char *recloth_status_text(int32_t status);

// The sentence of one doubt; NULL when the bit is none. A constant string.
const char *recloth_doubt_text(uint32_t bit);

// The sentence of one caution; NULL when the bit is none. A constant string.
const char *recloth_caution_text(uint32_t bit);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* RECLOTH_H */
