/* Lays as a C program sees them: JSON in and out, a search told of and stopped. Figures are worked by hand beside each
 * check; measures are invented. Run under valgrind, it leaves nothing unfreed. */

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "check.h"
#include "recloth.h"

#define OK(call) CHECK((call) == RECLOTH_STATUS_OK)
#define FAILS(call, kind, name) CHECK((call) == RECLOTH_STATUS_##kind && strcmp(error.argument, name) == 0)

/* A rectangle as JSON. */
#define RECTANGLE(w, h) \
  "[{\"x\": 0, \"y\": 0}, {\"x\": " #w ", \"y\": 0}, {\"x\": " #w ", \"y\": " #h "}, {\"x\": 0, \"y\": " #h "}]"
#define POCKETS "\"parts\": [{\"name\": \"pocket\", \"outline\": " RECTANGLE(150, 180) ", \"as_drawn\": 2}]"
#define BACK "\"panels\": [{\"name\": \"back\", \"outline\": " RECTANGLE(310, 200) "}]"

/* The number that stands behind a key. */
static double number(const char *json, const char *key) {
  const char *at = json == NULL ? NULL : strstr(json, key);
  return at == NULL ? NAN : strtod(at + strlen(key), NULL);
}

static void drop(char **text) {
  recloth_text_free(*text);
  *text = NULL;
}

static int stop(double done, double best, void *user) {
  CHECK(done >= 0 && done <= 1 && (isnan(best) || best <= 1) && user == NULL);
  return 1;
}

static void fits(void) {
  recloth_error_t error;
  char *out = NULL, *message = NULL, *wrong = NULL;
  size_t count = 77;

  /* Two of 150 beside each other with 2 between: 302 of 310. */
  OK(recloth_fit("{" POCKETS ", " BACK ", \"options\": {\"spacing\": 2}}", NULL, NULL, &out, &message, &error));
  CHECK(out != NULL && message == NULL && strstr(out, "\"together\":\"fit\"") != NULL);
  CHECK(number(out, "\"spacing\":") == 2);
  OK(recloth_check_lay(out, &count, &wrong, &message, &error));
  CHECK(count == 0 && wrong != NULL && strcmp(wrong, "[]") == 0);
  drop(&out);
  drop(&wrong);
  /* Stopped at once, it says what is known then. */
  OK(recloth_fit("{" POCKETS ", " BACK "}", stop, NULL, &out, NULL, NULL));
  OK(recloth_check_lay(out, &count, NULL, NULL, NULL));
  CHECK(count == 0);
  drop(&out);
  /* With 11 between they would need 311. */
  OK(recloth_fit("{" POCKETS ", " BACK ", \"options\": {\"spacing\": 11, \"budget\": 2000000}}", NULL, NULL, &out, NULL, NULL));
  CHECK(strstr(out, "\"together\":\"undecided\"") != NULL && strstr(out, "\"count\":1") != NULL);
  drop(&out);
  /* 190 long, where there are 180. */
  OK(recloth_fit("{\"parts\": [{\"name\": \"band\", \"outline\": " RECTANGLE(50, 190) "}], "
                 "\"panels\": [{\"name\": \"cuff\", \"outline\": " RECTANGLE(100, 180) "}]}", NULL, NULL, &out, NULL, NULL));
  CHECK(strstr(out, "\"cannot\"") != NULL && number(out, "\"needed\":") == 190 && number(out, "\"there\":") == 180);
  drop(&out);

  FAILS(recloth_fit("{" POCKETS ", " BACK ", \"options\": {\"spacing\": -1}}", NULL, NULL, &out, &message, &error), OUT_OF_RANGE, "spacing");
  CHECK(out == NULL && error.value == -1 && message != NULL && strstr(message, "options: spacing") != NULL);
  drop(&message);
  FAILS(recloth_fit("{\"parts\": [{\"name\": \"bow\", \"outline\": [{\"x\": 0, \"y\": 0}]}], \"panels\": []}", NULL, NULL, &out, &message, &error),
        COUNT, "outline");
  CHECK(message != NULL && strstr(message, "part \"bow\"") != NULL);
  drop(&message);
  FAILS(recloth_fit("{" POCKETS ",\n \"panel\": []}", NULL, NULL, &out, &message, &error), INVALID, "json");
  CHECK(error.value == 2 && message != NULL && strstr(message, "panel") != NULL);
  drop(&message);
  FAILS(recloth_fit("{" POCKETS "}", NULL, NULL, &out, NULL, &error), INVALID, "json");
  FAILS(recloth_fit(NULL, NULL, NULL, &out, NULL, &error), NULL, "json");
  FAILS(recloth_fit("\xff", NULL, NULL, &out, NULL, &error), NOT_UTF8, "json");
  FAILS(recloth_fit("{" POCKETS ", " BACK "}", NULL, NULL, NULL, NULL, &error), NULL, "out");
  CHECK(out == NULL);
}

/* What a caller's own data may be. */
struct told {
  int calls, stop_after;
  double done, best;
};

static int progress(double done, double best, void *user) {
  struct told *told = (struct told *)user;
  CHECK(done >= told->done && done <= 1 && (isnan(best) || isnan(told->best) || best <= told->best));
  told->done = done;
  told->best = best;
  told->calls++;
  return told->stop_after > 0 && told->calls >= told->stop_after;
}

#define GORES "\"parts\": [{\"name\": \"gore\", \"outline\": [{\"x\": 0, \"y\": 0}, {\"x\": 420, \"y\": 0}, " \
  "{\"x\": 300, \"y\": 800}, {\"x\": 120, \"y\": 800}], \"as_drawn\": 6, \"mirrored\": 2}]"

static void strips(void) {
  recloth_error_t error;
  struct told told = {0, 0, 0, NAN};
  char *out = NULL, *again = NULL, *message = NULL;
  size_t count = 77;

  /* Two side by side on 310 of width: as long as one. */
  OK(recloth_strip("{" POCKETS ", \"strip\": {\"width\": 310}}", NULL, NULL, &out, NULL, NULL));
  CHECK(fabs(number(out, "\"length\":") - 180) < 1e-6);
  OK(recloth_check_lay(out, &count, NULL, NULL, NULL));
  CHECK(count == 0);
  drop(&out);

  OK(recloth_strip("{" GORES ", \"strip\": {\"width\": 1400}, \"options\": {\"budget\": 3000000}}", progress, &told, &out, &message, &error));
  CHECK(told.calls > 2 && message == NULL);
  /* Eight gores of (420 + 180) / 2 * 800 are 1.92 m2, on 1.4 m at least 1371 mm. */
  CHECK(number(out, "\"length\":") > 1371 && number(out, "\"length\":") < 2100);
  OK(recloth_strip("{" GORES ", \"strip\": {\"width\": 1400}, \"options\": {\"budget\": 3000000, \"threads\": 1}}", NULL, NULL, &again, NULL, NULL));
  CHECK(strcmp(out, again) == 0);
  drop(&out);
  drop(&again);
  /* A search without end but for the word of its caller. */
  told.calls = 0;
  told.stop_after = 40;
  told.done = 0;
  told.best = NAN;
  OK(recloth_strip("{" GORES ", \"strip\": {\"width\": 1400}, \"options\": {\"budget\": 10000000000000}}", progress, &told, &out, NULL, NULL));
  CHECK(told.calls == 40);
  OK(recloth_check_lay(out, &count, NULL, NULL, NULL));
  CHECK(count == 0);
  drop(&out);

  FAILS(recloth_strip("{" GORES ", \"strip\": {\"width\": 300}}", NULL, NULL, &out, &message, &error), NO_SOLUTION, "width");
  CHECK(out == NULL && fabs(error.min - 420) < 1e-3 && message != NULL && strstr(message, "gore") != NULL);
  drop(&message);
  FAILS(recloth_strip("{" GORES ", \"strip\": {\"width\": 1400}}", NULL, NULL, NULL, NULL, &error), NULL, "out");
  FAILS(recloth_strip("{}", NULL, NULL, &out, &message, &error), INVALID, "json");
  drop(&message);
}

#define AT(x) "{\"part\": 0, \"hand\": \"as_drawn\", \"panel\": 0, \"mirrored\": false, \"turn_deg\": 0, \"shift\": {\"x\": " #x ", \"y\": 10}}"
#define LAY(x) "{" POCKETS ", " BACK ", \"lay\": {\"placements\": [" AT(0) ", " AT(x) "], \"unplaced\": [], \"spacing\": 0}}"

static void checks(void) {
  recloth_error_t error;
  char *wrong = NULL, *message = NULL;
  size_t count = 77;

  OK(recloth_check_lay(LAY(150), &count, &wrong, &message, &error));
  CHECK(count == 0 && strcmp(wrong, "[]") == 0);
  drop(&wrong);
  /* One hundredth of a millimetre over the other, one over the edge. */
  OK(recloth_check_lay(LAY(149.99), &count, &wrong, NULL, NULL));
  CHECK(count == 1 && strstr(wrong, "overlap") != NULL);
  drop(&wrong);
  OK(recloth_check_lay(LAY(160.01), &count, &wrong, NULL, NULL));
  CHECK(count == 1 && strstr(wrong, "leaves") != NULL);
  drop(&wrong);
  OK(recloth_check_lay("{" POCKETS ", " BACK ", \"lay\": {\"placements\": [], \"unplaced\": [], \"spacing\": 0}}", &count, NULL, NULL, NULL));
  CHECK(count == 1);

  FAILS(recloth_check_lay("{" POCKETS ", " BACK "}", &count, &wrong, &message, &error), INVALID, "json");
  CHECK(count == 1 && wrong == NULL && message != NULL && strstr(message, "a lay is wanted") != NULL);
  drop(&message);
  FAILS(recloth_check_lay("{\"parts\": [{\"name\": \"bow\", \"outline\": []}], \"panels\": [], \"lay\": "
                          "{\"placements\": [], \"unplaced\": [], \"spacing\": 0}}", &count, &wrong, &message, &error),
        COUNT, "outline");
  CHECK(message != NULL && strstr(message, "part \"bow\"") != NULL);
  drop(&message);
  FAILS(recloth_check_lay(LAY(150), NULL, &wrong, NULL, &error), NULL, "count");
  CHECK(wrong == NULL);
}

static void parts(void) {
  static const double corners[] = {0, 0, 130, 0, 130, 160, 0, 160}, allowances[] = {10, 10, 10, 10};
  recloth_error_t error;
  recloth_piece *piece = NULL;
  char *part = NULL, *out = NULL, job[4096];
  size_t count = 77;

  OK(recloth_piece_from_edges("pocket", corners, NULL, allowances, NULL, NULL, NULL, 4, &piece, NULL));
  OK(recloth_piece_part(piece, 0.05, &part, &error));
  CHECK(part != NULL && strstr(part, "\"name\":\"pocket\"") != NULL && number(part, "\"as_drawn\":") == 1);
  /* Its cut line is 150 by 180. */
  sprintf(job, "{\"parts\": [%s, %s], \"strip\": {\"width\": 300}}", part, part);
  OK(recloth_strip(job, NULL, NULL, &out, NULL, NULL));
  CHECK(fabs(number(out, "\"length\":") - 180) < 1e-6);
  OK(recloth_check_lay(out, &count, NULL, NULL, NULL));
  CHECK(count == 0);
  drop(&part);
  drop(&out);
  FAILS(recloth_piece_part(piece, 0, &part, &error), OUT_OF_RANGE, "tolerance");
  FAILS(recloth_piece_part(NULL, 0.05, &part, &error), NULL, "piece");
  FAILS(recloth_piece_part(piece, 0.05, NULL, &error), NULL, "out");
  CHECK(part == NULL);
  recloth_piece_free(piece);
}

int main(void) {
  setvbuf(stdout, NULL, _IONBF, 0);
  fits();
  strips();
  checks();
  parts();
  printf("%d passed, %d failed\n", passed, failed);
  return failed > 0 || passed == 0;
}
