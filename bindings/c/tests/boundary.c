/* What a C program may do wrong, and what it is told: NULL, bad choices, too little room, text that
 * is not UTF-8. Nothing but the error is written when a call fails. */

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "check.h"
#include "recloth.h"

static void errors_are_told(void) {
  recloth_circle_skirt_t skirt;
  recloth_error_t error;
  char text[160];
  memset(&skirt, 7, sizeof skirt);
  {
    recloth_circle_skirt_t before = skirt;
    CHECK(recloth_circle_skirt(-1, 600, 1, &skirt, &error) == RECLOTH_STATUS_OUT_OF_RANGE);
    CHECK(memcmp(&before, &skirt, sizeof skirt) == 0);
  }
  CHECK(strcmp(error.argument, "waist") == 0);
  CHECK(error.value == -1 && error.min == 1 && error.max == 100000 && error.at == -1);
  CHECK(recloth_error_text(&error, text, sizeof text) == RECLOTH_STATUS_OK);
  CHECK(strcmp(text, "waist = -1 is not between 1 and 100000") == 0);
  CHECK(recloth_error_text(&error, text, 6) == RECLOTH_STATUS_OK);
  CHECK(strcmp(text, "waist") == 0);
  CHECK(recloth_error_text(&error, text, 0) == RECLOTH_STATUS_ROOM);
  CHECK(recloth_error_text(NULL, text, sizeof text) == RECLOTH_STATUS_NULL);
  CHECK(recloth_circle_skirt(-1, 600, 1, &skirt, NULL) == RECLOTH_STATUS_OUT_OF_RANGE);
  CHECK(recloth_circle_skirt(NAN, 600, 1, &skirt, NULL) == RECLOTH_STATUS_NOT_FINITE);
  CHECK(recloth_circle_skirt(710, 600, 1, NULL, &error) == RECLOTH_STATUS_NULL);
  CHECK(strcmp(error.argument, "out") == 0);
  CHECK(recloth_circle_skirt(710, 600, 1, &skirt, &error) == RECLOTH_STATUS_OK);
  CHECK(skirt.hem_radius > 712.99 && skirt.hem_radius < 713.01);
}

static void texts(void) {
  double length = 5;
  char text[64];
  char small[4] = "abc";
  recloth_error_t error;
  CHECK(recloth_parse_length("31 3/8 in", &length, &error) == RECLOTH_STATUS_OK);
  CHECK(length == 31.375 * RECLOTH_INCH);
  CHECK(recloth_parse_length("28", &length, &error) == RECLOTH_STATUS_NO_UNIT);
  CHECK(length == 31.375 * RECLOTH_INCH);
  CHECK(recloth_parse_length("31 inchs", &length, &error) == RECLOTH_STATUS_SYNTAX && error.at >= 0);
  CHECK(recloth_parse_length("\xff\xfe", &length, &error) == RECLOTH_STATUS_NOT_UTF8);
  CHECK(recloth_parse_length(NULL, &length, &error) == RECLOTH_STATUS_NULL);
  CHECK(recloth_format_length(length, RECLOTH_STYLE_INCH_EIGHTH, text, sizeof text, &error) ==
        RECLOTH_STATUS_OK);
  CHECK(strcmp(text, "31 3/8 in") == 0);
  CHECK(recloth_format_length(length, RECLOTH_STYLE_INCH_EIGHTH, small, sizeof small, &error) ==
        RECLOTH_STATUS_ROOM);
  CHECK(strcmp(small, "abc") == 0 && error.min == 10);
  CHECK(recloth_format_length(length, 999, text, sizeof text, &error) == RECLOTH_STATUS_CHOICE);
  CHECK(recloth_format_length(length, -1, text, sizeof text, &error) == RECLOTH_STATUS_CHOICE);
  /* The first bad argument is the one named, also before a choice. */
  CHECK(recloth_format_length(NAN, 999, text, sizeof text, &error) == RECLOTH_STATUS_NOT_FINITE);
}

static void lists(void) {
  double lengths[3] = {10.4, 10.4, 10.2};
  double tapes[3] = {-1, -1, -1};
  recloth_rounded_set_t set;
  recloth_error_t error;
  CHECK(recloth_round_set(lengths, 3, 1, tapes, 2, &set, &error) == RECLOTH_STATUS_ROOM);
  CHECK(strcmp(error.argument, "tapes") == 0 && error.min == 3 && tapes[0] == -1);
  CHECK(recloth_round_set(NULL, 3, 1, tapes, 3, &set, &error) == RECLOTH_STATUS_NULL);
  CHECK(recloth_round_set(lengths, 3, 1, NULL, 3, &set, &error) == RECLOTH_STATUS_NULL);
  CHECK(recloth_round_set(NULL, 0, 1, NULL, 0, &set, &error) == RECLOTH_STATUS_COUNT);
  CHECK(recloth_round_set(lengths, (size_t)-1, 1, tapes, 3, &set, &error) == RECLOTH_STATUS_COUNT);
  lengths[1] = INFINITY;
  CHECK(recloth_round_set(lengths, 3, 1, tapes, 3, &set, &error) == RECLOTH_STATUS_NOT_FINITE);
  CHECK(error.at == 1 && tapes[0] == -1);
  lengths[1] = 10.4;
  CHECK(recloth_round_set(lengths, 3, 1, tapes, 3, &set, &error) == RECLOTH_STATUS_OK);
  CHECK(tapes[0] == 11 && tapes[1] == 10 && tapes[2] == 10 && set.total == 31);
}

static void constants(void) {
  CHECK(recloth_version()[0] >= '0' && recloth_version()[0] <= '9');
  CHECK(strcmp(recloth_status_text(0), "success") == 0);
  CHECK(recloth_status_text(RECLOTH_STATUS_NULL) != NULL && recloth_status_text(12345) == NULL);
  CHECK(recloth_doubt_text(1) != NULL && recloth_doubt_text(0) == NULL && recloth_doubt_text(3) == NULL);
  CHECK(recloth_caution_text(1) != NULL && recloth_caution_text(0) == NULL);
}

int main(void) {
  errors_are_told();
  texts();
  lists();
  constants();
  printf("%d passed, %d failed\n", passed, failed);
  return failed > 0 || passed == 0;
}
